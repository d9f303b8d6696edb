"""Taking back: "scratch that" undoes the sender's last message whole; a bed and time take back one line."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta
from itertools import pairwise

from bot.dialogue.bedside import Bedside
from bot.dialogue.corrections import gone_text
from bot.dialogue.part import Part
from bot.dialogue.pending import Grant, Pending
from bot.dialogue.said import TakeBack
from bot.dialogue.said_json import loaded
from bot.dialogue.targets import Target, repeats_of, target_to_change, tell_author
from bot.engine.entries import Correction, Entry, Opened, Placed, Withdrawal
from bot.store.claims import MessageRow
from bot.store.questions import Question
from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.rows import row_text
from bot.wording.readback import Where, fallen_text, withdrawn_text


def take_back(bedside: Bedside, said: TakeBack, grant: Grant) -> Part:
    """What was taken back, or the question which line is meant."""
    if said.bed is None and grant.target is None:
        return _last_message(bedside)
    asked = _own_questions(bedside, said) if grant.target is None else ()
    if asked:
        return _withdraw_questions(bedside, asked)
    found = target_to_change(bedside, said, grant, "withdrawn")
    return found if isinstance(found, Part) else withdraw_line(bedside, found)


def withdraw_line(bedside: Bedside, found: Target) -> Part:
    """One line withdrawn; the one who entered it is told."""
    for repeat in repeats_of(found):
        bedside.record(found.ledger.drain, found.level.at, Withdrawal(target=repeat))
    entry = bedside.record(found.ledger.drain, found.level.at, Withdrawal(target=found.level.entry))
    told = tell_author(bedside, found, "withdrawn")
    gone = gone_text(bedside, found, found.level.at)
    text = "\n".join(line for line in (gone, told, *_fallen(bedside, (found.ledger.drain,))) if line)
    spot = found.spot()
    return Part(
        status="recorded", kind="withdrawn", bed=spot.bed, tube=spot.tube, text=text, entries=(entry.id,)
    )


def _own_questions(bedside: Bedside, said: TakeBack) -> tuple[Question, ...]:
    """The bed's questions that this sender left unsettled; with a time, the unconfirmed readings of it."""
    if said.at is None:
        return bedside.book.unsettled(bed=said.bed, sender=bedside.context.person.id)
    return tuple(
        each
        for each in bedside.book.unsettled(bed=said.bed)
        if (each.sender == bedside.context.person.id or each.lapsed(bedside.now))
        and getattr(loaded(each.said_json, Pending).said, "at", None) == said.at
    )


def _withdraw_questions(bedside: Bedside, asked: tuple[Question, ...]) -> Part:
    for question in asked:
        bedside.book.settle(question.id, "withdrawn")
    return Part(
        status="recorded",
        kind="withdrawn",
        bed=asked[0].bed,
        text=gsm_only("Taken back; nothing was recorded."),
    )


def _last_message(bedside: Bedside) -> Part:
    last = bedside.book.last_message(bedside.context.sender)
    undo = timedelta(minutes=bedside.context.unit.undo_min)
    if last is None or bedside.now - last.arrived > undo:
        return _nothing(f"Your last message is over {undo.seconds // 60} min old. Name the bed and the time.")
    entries = _standing(bedside, last)
    asked = [
        each for each in bedside.book.unsettled(sender=bedside.context.person.id) if each.message == last.id
    ]
    if not entries and not asked:
        return _nothing("Your last message recorded nothing. Name the bed and the time to take back.")
    for question in asked:
        bedside.book.settle(question.id, "withdrawn")
    return _undo(bedside, entries)


def _standing(bedside: Bedside, last: MessageRow) -> tuple[Entry, ...]:
    """What the message recorded and nothing has withdrawn."""
    found = []
    for entry in bedside.book.entries_of_message(last.id):
        if entry.who != bedside.context.person.id:
            continue
        rows = bedside.book.entries(entry.drain)
        if not any(isinstance(row.payload, Withdrawal) and row.payload.target == entry.id for row in rows):
            found.append(entry)
    return tuple(found)


def _undo(bedside: Bedside, entries: tuple[Entry, ...]) -> Part:
    """Every entry withdrawn, the last first, so that what hangs on another goes before it."""
    lines, done = [], []
    for entry in reversed(entries):
        if _others_hang_on(bedside, entry):
            continue
        line = _line(bedside, entry)
        done.append(bedside.record(entry.drain, entry.at, Withdrawal(target=entry.id)).id)
        lines.append(f"{line}{_holds_again(bedside, entry)}")
    bed = bedside.ledger(entries[0].drain).bed_at(entries[0].at) if entries else None
    lines = [line for line in reversed(lines) if line] or ["Taken back; nothing was recorded."]
    text = "\n".join((*lines, *_fallen(bedside, dict.fromkeys(entry.drain for entry in entries))))
    return Part(status="recorded", kind="withdrawn", bed=bed, text=gsm_only(text), entries=tuple(done))


def _fallen(bedside: Bedside, drains: Iterable[str]) -> list[str]:
    """The lines that lie below the line before them only since this message took something back."""
    found = []
    for drain in drains:
        was, ledger = bedside.before.get(drain), bedside.ledger(drain)
        known = {level.entry for level in was.levels if "line_fell" in level.codes} if was else set()
        for before, level in pairwise(ledger.levels):
            if "line_fell" in level.codes and level.entry not in known:
                where = Where(bed=ledger.bed_at(level.at) or ledger.bed or "", tube=ledger.tube)
                found.append(fallen_text(where, level, before, bedside.view))
    return found


def _others_hang_on(bedside: Bedside, entry: Entry) -> bool:
    """Whether the drain was begun by this entry and other messages have written to it since."""
    if not isinstance(entry.payload, Opened | Placed):
        return False
    return any(each.message != entry.message for each in bedside.ledger(entry.drain).live)


def _line(bedside: Bedside, entry: Entry) -> str:
    """What one entry said; an entry that only opened a ledger goes without a word."""
    if isinstance(entry.payload, Opened):
        return ""
    ledger = bedside.ledger(entry.drain)
    held = ledger.effective(entry.id)
    where = Where(bed=ledger.bed_at(entry.at) or ledger.bed or "", tube=ledger.tube)
    payload = held.payload if held else entry.payload
    return withdrawn_text(where, row_text(payload), entry.at, bedside.view)


def _holds_again(bedside: Bedside, entry: Entry) -> str:
    """The line that counts as before, once its correction or withdrawal is taken back."""
    if not isinstance(entry.payload, Correction | Withdrawal):
        return ""
    ledger = bedside.ledger(entry.drain)
    level, event = ledger.level_of(entry.payload.target), ledger.effective(entry.payload.target)
    if level is not None:
        return f" The line is {formats.ml(level.level_ml)} again."
    return f" It holds again: {row_text(event.payload)}." if event is not None else ""


def _nothing(text: str) -> Part:
    return Part(status="told", kind="withdrawn", text=text)
