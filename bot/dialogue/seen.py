"""A caution was seen, or a chart amended: told with its bed; without one, what it may be about.

That nobody said which bed keeps nothing off a ledger, so it waits for the sender's next message only.
"""

from __future__ import annotations

from collections.abc import Container, Iterable

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Pending, is_seen
from bot.dialogue.queries.desk import Desk, desk_of
from bot.dialogue.queries.telling import standing
from bot.dialogue.queries.waiting import reading_text
from bot.dialogue.queries.where import patients
from bot.dialogue.said import Answered, NotSure, Query, Said, SeenIt, Slots
from bot.dialogue.said_json import loaded
from bot.engine.amend import outstanding
from bot.engine.entries import Seen
from bot.engine.patient import Patient
from bot.engine.values import Severity
from bot.notices.plan import LASTS
from bot.store.notices import Notice
from bot.wording import seen as words
from bot.wording.gsm import gsm_only
from bot.wording.readback import no_longer_asked_text


def take_seen(bedside: Bedside, said: SeenIt) -> Part:
    """The bed's cautions were seen, or its chart amended, on every open drain of the bed.

    Seen, the notices about the bed go to nobody else.
    """
    drains = bedside.patient(said.bed).drains
    if not said.amended:
        bedside.book.acknowledge(said.bed, (each.drain for each in drains))
    if said.bed not in bedside.context.unit.beds or not drains:
        text = gsm_only(f"Bed {said.bed} has no open drain here.")
        return Part(status="told", kind=Seen.kind, bed=said.bed, text=text)
    seen = Seen(amended=said.amended)
    entries = tuple(bedside.record(each.drain, bedside.now, seen).id for each in drains)
    done = "chart amended" if said.amended else "seen"
    text = gsm_only(f"Bed {said.bed}, {bedside.view.clock(bedside.now)}, {done}. Noted.")
    return Part(status="recorded", kind=Seen.kind, bed=said.bed, text=text, entries=entries)


def ask_seen(bedside: Bedside, slots: Slots) -> Part:
    """Which bed, of those where something waits for that; where nothing does, so it is told."""
    amended = bool(dict(slots.values).get("amended"))
    desk = desk_of(Query(topic="beds"), bedside.context, bedside.book)
    waiting = () if amended else _notices(bedside)
    beds = _beds(desk, amended, {each.bed for each in waiting})
    told = _of_no_bed(desk, {each.message for each in waiting if each.bed is None})
    if beds and not bedside.open_questions():
        pending = Pending(ask=Ask.SLOT, said=slots, slot="bed", brief=words.done_words(amended))
        wording = words.which_bed(amended, beds)
        return bedside.ask(pending, wording, About(bed=None, slot="bed", kind=Seen.kind))
    head = words.nothing_waits(amended, desk.context.unit.name)
    if beds:
        head = words.say_the_bed(amended, beds)
    elif told:
        head = words.NO_BED_YET
    return Part(status="told", kind=Seen.kind, text="\n".join((head, *told)))


def _of_no_bed(desk: Desk, messages: Container[str]) -> tuple[str, ...]:
    """What was sent round before its bed was known, and still waits for it."""
    asked = (each for each in desk.book.unsettled() if each.bed is None and each.message in messages)
    return tuple(reading_text(desk, each) for each in asked)


def seen_gives_way(bedside: Bedside, items: Iterable[Said | NotSure]) -> list[Part]:
    """The sender's "seen" without a bed is let go by whatever they say next that names none for it."""
    said = tuple(items)
    if any(isinstance(each, Answered) and (each.bed or each.level_ml is not None) for each in said):
        return []
    again = any(isinstance(each, SeenIt) or _is_seen(each) for each in said)
    parts = []
    for question in bedside.book.unsettled(sender=bedside.context.person.id):
        pending = loaded(question.said_json, Pending)
        if is_seen(pending):
            bedside.book.settle(question.id, "replaced")
            text = "" if again else no_longer_asked_text(pending.brief, question.asked_at, bedside.view)
            parts.append(Part(status="told", kind="replaced", text=text))
    return parts


def _is_seen(item: Said | NotSure) -> bool:
    return isinstance(item, NotSure) and item.partial is not None and item.partial.kind == Seen.kind


def _notices(bedside: Bedside) -> tuple[Notice, ...]:
    """What was sent round lately and nobody has seen."""
    filed = bedside.book.filed(bedside.now - LASTS)
    return tuple(each.notice for each in filed if each.seen_at is None and not each.over)


def _beds(desk: Desk, amended: bool, told: Container[str | None]) -> tuple[str, ...]:
    """The beds where a chart is to be amended, or a caution or notice was not seen, in the unit's order."""
    waits = _to_amend if amended else _unseen
    here = {each.bed for each in patients(desk) if each.bed in told or waits(desk, each)}
    return tuple(bed for bed in desk.context.unit.beds if bed in here)


def _to_amend(desk: Desk, patient: Patient) -> bool:
    return any(outstanding(each, desk.schedule, desk.policy.chart_by) for each in patient.drains)


def _unseen(desk: Desk, patient: Patient) -> bool:
    """Whether a caution stands that is more than a note, and is newer than the last "seen"."""
    seen = [each.at for ledger in patient.drains for each in ledger.live if isinstance(each.payload, Seen)]
    last = max(seen, default=None)
    grave = (each for each in standing(desk, patient) if each.severity is not Severity.LOW)
    return any(last is None or (each.end or each.begin or last) > last for each in grave)
