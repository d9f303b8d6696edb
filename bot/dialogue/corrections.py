"""Putting a line right: another level, another time, another bed or tube. The original stays and is named."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from functools import partial

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.doubts import admitted_correction, ask_doubt
from bot.dialogue.hearing import ask_heard, is_unheard
from bot.dialogue.lines import take_line
from bot.dialogue.locate import Spot, is_tube
from bot.dialogue.part import Part, Recorded
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Fix, Report
from bot.dialogue.said_json import loaded
from bot.dialogue.targets import Target, candidates, repeats_of, target_to_change, tell_author
from bot.engine.entries import Correction, FinalLevel, Line, Withdrawal
from bot.wording import formats, questions
from bot.wording.gsm import gsm_only
from bot.wording.readback import Where, withdrawn_text


def take_fix(bedside: Bedside, said: Fix, grant: Grant) -> Part:
    """A correction recorded, or the question that it needs first."""
    unconfirmed = _unconfirmed(bedside, said) if grant.target is None else None
    if unconfirmed is not None:
        return unconfirmed
    found = target_to_change(bedside, said, grant, "corrected")
    if isinstance(found, Part):
        return found
    held = replace(grant, drain=found.ledger.drain, target=found.level.entry)
    if said.to_bed is not None or said.to_tube is not None:
        return _elsewhere(bedside, said, found, held)
    if said.level_ml is None and said.to_at is None:
        return ask_right_level(bedside, said, found, held)
    return _in_place(bedside, said, found, held)


def _unconfirmed(bedside: Bedside, said: Fix) -> Part | None:
    """A reading of that minute which was asked about and is not on the ledger: its right level is taken."""
    if said.bed is None or said.at is None or said.level_ml is None or candidates(bedside, said, said.at):
        return None
    for question in bedside.questions_at(said.bed):
        held = loaded(question.said_json, Pending).said
        mine = question.sender == bedside.context.person.id or question.lapsed(bedside.now)
        if mine and isinstance(held, Report) and isinstance(held.fact, Line) and held.at == said.at:
            line = replace(held.fact, level_ml=said.level_ml, told_ml=None, accepted=())
            grant = Grant(drain=question.drain, heard=bedside.context.channel == "text")
            return bedside.answered(question, partial(take_line, bedside, replace(held, fact=line), grant))
    return None


def ask_right_level(bedside: Bedside, said: Fix | Report | None, found: Target, grant: Grant) -> Part:
    """The question what a line should have been; `said`: the correction, or the line that waits for it."""
    pending = Pending(
        ask=Ask.OTHER_LEVEL,
        said=said,
        grant=grant,
        targets=(found.level.entry,),
        drains=(found.ledger.drain,),
        brief="" if said else f"correction of bed {found.spot().bed}",
    )
    clock = bedside.view.clock(found.level.at)
    return bedside.ask(
        pending,
        questions.other_level(found.spot().where(), clock, found.level.level_ml),
        About(
            bed=found.spot().bed,
            tube=found.ledger.tube,
            drain=found.ledger.drain,
            slot="level_ml",
            kind="corrected",
        ),
    )


def _in_place(bedside: Bedside, said: Fix, found: Target, grant: Grant) -> Part:
    """Another level or another time on the same ledger."""
    level, at = found.level, said.to_at or found.level.at
    told = said.level_ml if said.level_ml is not None else level.level_ml
    if told == level.level_ml and at == level.at:
        return _same(bedside, found)
    correction = Correction(
        target=level.entry,
        level_ml=told if told != level.level_ml else None,
        at=at if at != level.at else None,
    )
    gone = (Withdrawal(target=each) for each in repeats_of(found, own=True))
    alone = bedside.supposed(found.ledger, level.at, *gone)
    correction, open_doubts = admitted_correction(bedside, alone, correction, told, grant)
    spot = Spot(bed=found.spot().bed, tube=found.ledger.tube, at=at, ledger=found.ledger)
    if open_doubts:
        reading = FinalLevel(level_ml=told) if level.kind == "final" else Line(level_ml=told)
        return ask_doubt(bedside, spot, said, reading, open_doubts, grant)
    if is_unheard(bedside, said, found.ledger, grant):
        return ask_heard(bedside, said, spot, grant)
    return record_fix(bedside, found, correction)


def record_fix(bedside: Bedside, found: Target, correction: Correction) -> Part:
    """The correction on the ledger; the one who entered the line is told."""
    at = correction.at or found.level.at
    for repeat in repeats_of(found, own=True):
        bedside.record(found.ledger.drain, found.level.at, Withdrawal(target=repeat))
    entry = bedside.record(found.ledger.drain, at, correction)
    told = tell_author(bedside, found, "corrected")
    spot = found.spot()
    recorded = Recorded(
        entry=correction.target,
        drain=found.ledger.drain,
        said_bed=spot.bed,
        said_tube=spot.tube,
        was=found.level,
    )
    return Part(
        status="recorded",
        kind="corrected",
        bed=spot.bed,
        tube=spot.tube,
        recorded=(recorded,),
        entries=(entry.id,),
        last=told,
    )


def _same(bedside: Bedside, found: Target) -> Part:
    spot, level = found.spot(), found.level
    at = bedside.view.clock(level.at)
    text = f"{spot.where().text}: the line at {at} is {formats.ml(level.level_ml)} already."
    return Part(status="told", kind="corrected", bed=spot.bed, tube=spot.tube, text=gsm_only(text))


def _elsewhere(bedside: Bedside, said: Fix, found: Target, grant: Grant) -> Part:
    """The line belongs elsewhere: it is asked about there first, then written there and withdrawn here."""
    level, spot = found.level, found.spot()
    bed = said.to_bed or spot.bed
    if bed == spot.bed and (said.to_tube is None or is_tube(found.ledger, said.to_tube)):
        return _same(bedside, found)
    moved = Report(
        bed=bed,
        tube=said.to_tube or (None if said.to_bed else spot.tube),
        at=said.to_at or level.at,
        fact=Line(
            level_ml=said.level_ml if said.level_ml is not None else level.level_ml,
            closing=level.closing,
            about=level.about,
            moved_from=level.entry,
        ),
    )
    return take_moved_line(bedside, moved, replace(grant, drain=None, target=None))


def take_moved_line(bedside: Bedside, moved: Report, grant: Grant) -> Part:
    """A line at its right place; once it is there it is withdrawn where it was wrong."""
    part = take_line(bedside, moved, grant)
    if part.status != "recorded" or not isinstance(moved.fact, Line) or moved.fact.moved_from is None:
        return part
    source, drain = moved.fact.moved_from, moved.fact.moved_from.rpartition("-")[0]
    ledger = bedside.ledger(drain)
    level = ledger.level_of(source)
    if level is None:
        return part
    return _withdraw_source(bedside, Target(ledger=ledger, level=level), part)


def _withdraw_source(bedside: Bedside, found: Target, part: Part) -> Part:
    new_id = part.entries[0]
    level = found.level
    entry = bedside.record(found.ledger.drain, level.at, Withdrawal(target=level.entry, moved_to=new_id))
    told = tell_author(bedside, found, "moved to another bed or tube")
    gone = gone_text(bedside, found, level.at)
    last = "\n".join(line for line in (gone, told) if line)
    return replace(part, kind="corrected", entries=(*part.entries, entry.id), last=last)


def gone_text(bedside: Bedside, found: Target, at: datetime) -> str:
    """What no longer counts, and whose it was."""
    what = f"line {formats.ml(found.level.level_ml)}"
    where: Where = found.spot().where()
    return withdrawn_text(where, what, at, bedside.view, who=found.level.who)
