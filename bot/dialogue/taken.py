"""What a message says if something was asked: words that would be a statement of their own, or none at all.

"Bed 9" asks for a last line, unless a bed was asked for; "no I meant bed 9" corrects the last message, unless
that one was asked about; "the canister was changed" lacks a bed, unless a fall was asked about.
"""

from __future__ import annotations

import re
from datetime import datetime
from typing import Final, TypeAlias

from bot.dialogue.bedside import Bedside
from bot.dialogue.pending import Ask, Pending, holds_reading
from bot.dialogue.said import Answered, Fix, Message, NotSure, Query, Report, Said
from bot.dialogue.said_json import loaded
from bot.engine.entries import Exchanged, Line
from bot.store.questions import Question

Items: TypeAlias = tuple[Said | NotSure, ...]

_ASKS_BED: Final = frozenset({Ask.BED, Ask.SLOT, Ask.READING, Ask.OCCUPIED, Ask.GONE})
_ASKS_TUBE: Final = frozenset({Ask.TUBE, Ask.OTHER_TUBE, Ask.SLOT, Ask.READING})
_ASKS_LEVEL: Final = frozenset({Ask.LEVEL, Ask.FINAL, Ask.OPENING, Ask.OTHER_LEVEL, Ask.AMOUNT})
_LEVELS: Final = ("level_ml", "final_ml", "opening_ml")
_OF_PATIENT: Final = re.compile(
    r"\b(same|new|other|another|different)\s+(?:patient|drain|one|tube)\b", re.IGNORECASE
)
_NEW_ONE: Final = re.compile(
    r"^\s*(?:it'?s\s+)?(?:a\s+|the\s+)?new\s+(?:one|canister|box|chamber|bottle|unit)\b", re.IGNORECASE
)
_NOT_KNOWN: Final = re.compile(
    r"\b(?:not|never|no|(?:do|did|could|was|had)n'?t|dunno|unknown|forgot|missed|gone|thrown|binned|tossed"
    r"|discarded|disposed|dumped)\b",
    re.IGNORECASE,
)
"""In answer to what a canister read: nobody knows any more."""
_EVENTS: Final = frozenset(
    {"incident", "removed", "exchanged", "placed", "moved", "away", "back", "left", "ordered"}
)
_YES_NO: Final = re.compile(r"^\s*(yes|yep|yeah|no|nope)\b", re.IGNORECASE)


def as_reply(bedside: Bedside, message: Message) -> Items:
    """The statements of a message; one that also answers what was asked is taken as the answer."""
    items: Items = (*message.said, *message.unclear)
    asked = [(each, loaded(each.said_json, Pending)) for each in bedside.open_questions()]
    fix = message.fix
    if fix is not None and (fix.level_ml is None or not asked) and _told_a_line(bedside, fix.bed):
        items = (fix,)
    elif fix is not None and not asked and items == (Answered(bed=fix.to_bed, tube=fix.to_tube),):
        items = (Query(topic="last", bed=fix.to_bed, tube=fix.to_tube),)  # behind a query: "sorry, bed 9"
    if not asked:
        return items
    if message.reply is not None and any(_wants(message.reply, *pair) for pair in asked):
        return (message.reply,)
    answer = _final_told(items, asked)
    if answer is None and len(asked) == 1:
        answer = _to_the_only(bedside, message, items, *asked[0])
    return items if answer is None else (answer,)


def _told_a_line(bedside: Bedside, bed: str | None) -> bool:
    """Whether the sender's last message told a line (of that bed), be it recorded or asked about."""
    last = bedside.book.last_message(bedside.context.sender)
    if last is None:
        return False
    asked = (loaded(each.said_json, Pending) for each in bedside.open_questions() if each.message == last.id)
    lines = [e for e in bedside.book.entries_of_message(last.id) if isinstance(e.payload, Line)]
    if bed is not None:
        return any(bedside.ledger(each.drain).bed == bed for each in lines)
    return bool(lines) or any(map(holds_reading, asked))


def _wants(reply: Answered, question: Question, pending: Pending) -> bool:
    if reply.tube is not None:
        return pending.ask in _ASKS_TUBE and question.slot == "tube" and reply.bed == question.bed
    return pending.ask in _ASKS_BED and question.slot in ("bed", "to_bed")


def _final_told(items: Items, asked: list[tuple[Question, Pending]]) -> Answered | None:
    """ "Bed 12 old one was 1860", said while the final level of that bed is asked for."""
    match items:
        case (Report(fact=Exchanged(opening_ml=0), final_ml=int(level), at=None) as said,):
            finals = [each for each, pending in asked if pending.ask is Ask.FINAL and each.bed == said.bed]
            return Answered(bed=said.bed, level_ml=level) if len(finals) == 1 else None
        case _:
            return None


def _to_the_only(
    bedside: Bedside, message: Message, items: Items, question: Question, pending: Pending
) -> Answered | None:
    """The answer to the only open question, where the words are nothing else."""
    match items:
        case (Fix(bed=None, at=None, was_ml=None) as fix,) if _is_last(bedside, question):
            return Answered(yes=False, bed=fix.to_bed, tube=fix.to_tube, at=fix.to_at, level_ml=fix.level_ml)
        case (NotSure() as item,) if (told := _of_unsure(item, pending)) is not None:
            return told
        case (Report(fact=Line(level_ml=level), at=None) as said,) if _is_last(bedside, question):
            return Answered(level_ml=level) if _is_asked_line(said, level, question, pending) else None
        case () | (NotSure(),) | (Answered(),):
            return _in_words(message.text, items, pending, _is_last(bedside, question))
        case _:
            return None


def _is_asked_line(said: Report, level_ml: int, question: Question, pending: Pending) -> bool:
    """ "Bed 6 250", said where the line of bed 6 was asked for: what was told before waits for it."""
    tubes = (None, getattr(pending.said, "tube", None))
    plain = Report(bed=said.bed, tube=said.tube, fact=Line(level_ml=level_ml))
    return said == plain and said.bed == question.bed and said.tube in tubes and _asks_line(pending)


def _in_words(text: str, items: Items, pending: Pending, last: bool) -> Answered | None:
    """What the words say where nothing else was read in them; a final level is asked for afterwards.

    Words that were not read follow a yes or no only right after the question (`last`): later they may be
    about anything.
    """
    read = any(isinstance(each, Answered) for each in items)
    if pending.ask is Ask.DOUBT and _NEW_ONE.match(text) and not read:
        return Answered(choice="new_canister")
    if not read and _asks_level(pending) and _NOT_KNOWN.search(text) and not re.search(r"\d", text):
        return Answered(yes=False)
    told = any(isinstance(each, NotSure) and _tells_an_event(each) for each in items)
    return _of_patient(text, pending) or (_plain_word(text, items) if last and not told else None)


def _is_last(bedside: Bedside, question: Question) -> bool:
    """Whether it was asked in answer to the sender's last message."""
    last = bedside.book.last_message(bedside.context.sender)
    return last is not None and last.id == question.message


def _of_unsure(item: NotSure, pending: Pending) -> Answered | None:
    """A level, a time or an exchange told without its bed, as one answers "what does it read?", "when?"."""
    if (moment := _time_told(item)) is not None and _asks_time(pending):
        return Answered(at=moment)
    if item.slot != "bed" or item.choices or item.partial is None:
        return None
    values, at = dict(item.partial.values), item.partial.at
    found = [value for slot in _LEVELS if isinstance(value := values.get(slot), int)]
    if len(found) == 1 and _asks_level(pending) and (at is None or _asks_line(pending)):
        return Answered(level_ml=found[0], at=at)
    if pending.ask is Ask.DOUBT and item.partial.kind == "exchanged":
        final = values.get("final_ml")
        return Answered(choice="new_canister", level_ml=final if isinstance(final, int) else None)
    return None


def _time_told(item: NotSure) -> datetime | None:
    """ "It was changed at 0652": only a time, of a line that has no level or of an exchange."""
    told = item.partial
    if told is None or item.choices or item.slot not in ("bed", "level_ml") or told.bed is not None:
        return None
    values = dict(told.values)
    if told.kind not in ("mark", "answered", "exchanged") or values.get("answer") == "yes":
        return None
    return None if any(values.get(slot) is not None for slot in _LEVELS) else told.at


def _asks_time(pending: Pending) -> bool:
    return pending.ask is Ask.READ_ON or (pending.ask is Ask.SLOT and pending.slot == "at")


def _asks_level(pending: Pending) -> bool:
    return pending.ask in _ASKS_LEVEL or _asks_line(pending)


def _asks_line(pending: Pending) -> bool:
    """Whether a line is asked for whose time may be said with it."""
    return pending.ask is Ask.LEVEL or (pending.ask is Ask.SLOT and pending.slot == "level_ml")


def _of_patient(text: str, pending: Pending) -> Answered | None:
    """ "Same patient", "new drain", where that was the question."""
    found = _OF_PATIENT.search(text)
    if found is None or re.search(r"\d", text):
        return None
    same = found[1].casefold() == "same"
    if pending.ask is Ask.SILENCE:
        return Answered(yes=same)
    return Answered(yes=not same) if pending.ask in (Ask.GONE, Ask.ON_OPEN) else None


def _tells_an_event(item: NotSure) -> bool:
    """ "Yes but the tube came out": it must not be lost behind the yes."""
    return item.partial is not None and item.partial.kind in _EVENTS


def _plain_word(text: str, items: Items) -> Answered | None:
    """A yes or no with words that were not read and hold no number."""
    found = _YES_NO.match(text)
    if found is None or re.search(r"\d", text) or any(isinstance(each, Answered) for each in items):
        return None
    return Answered(yes=found[1].casefold().startswith("y"))
