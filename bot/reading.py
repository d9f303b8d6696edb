"""What a message says in ledger words: the only module of the bot that knows the reader.

Moments leave here in UTC. What could not be read one way only becomes a `NotSure`, which the dialogue asks.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import fields, replace
from datetime import UTC, datetime
from typing import Final, Literal

import nlu
from bot.dialogue.said import Answered, Fix, Message, NotSure, Query, Report, Said, Slots, Value
from bot.dialogue.slots import Lacking, built, filled, lacks_number
from bot.engine.entries import Exchanged, Left, Line
from bot.unit import Unit
from nlu.patterns.numerals import ONES, SCALES, TEENS, TENS
from nlu.statements import Corrected, Mark, Parsed, Statement, Unclear
from nlu.statements import Exchanged as ChangedCanister

_OWN: Final = frozenset({"bed", "tube", "at", "spans"})
_AMENDED: Final = re.compile(r"\bamend", re.IGNORECASE)
_PAGE: Final = re.compile(r"[\s,]+page\s+(\d{1,2})\s*[.?]?\s*$", re.IGNORECASE)
_FINAL: Final = re.compile(r"\b(?:final|old (?:one|canister|box|chamber|bottle|unit))\b", re.IGNORECASE)
_CHANGE: Final = re.compile(r"\b(?:chang|swap|switch|replac|exchang|new\b)", re.IGNORECASE)
_OLD: Final = re.compile(r"\bold\b|\bfinal level\b", re.IGNORECASE)
_RIGHT_BED: Final = r"(?:\b(?:was|is|its|be|been|for|meant?)|it's)\s+(?:for\s+)?(?:(?:bed|room|rm)\s*)?{}\b"
_SORRY: Final = re.compile(r"\b(?:i\s+meant?|meant?|sorry|oops|whoops|my bad)\b", re.IGNORECASE)
_WAS: Final = re.compile(r"\b(?:was|is|it's|should|at)\b|=", re.IGNORECASE)
_STARRED: Final = re.compile(r"^\s*\*|\*\s*$")
_MEANT: Final = re.compile(r"\b(?:meant|mean)\b", re.IGNORECASE)
_FOR_A_BED: Final = re.compile(
    r"\s*(?:(?:bed|room|rm|b)\s*)?(?P<bed>[A-Za-z0-9-]{1,8})[\s,:]+"
    r"(?P<answer>(?:mis-?read|new (?:canister|one)|(?:the )?(?:earlier|previous)|first|second)\b.*)$",
    re.IGNORECASE | re.DOTALL,
)
_SPOKEN: Final = "|".join(sorted({*ONES, *TEENS, *TENS, *SCALES, "zero", "oh"} - {"one"}))
_NUMBER: Final = re.compile(
    rf"\d(?:[\d:.,]*\d)?|\b(?:{_SPOKEN})(?:[ -](?:and )?(?:{_SPOKEN}))*\b", re.IGNORECASE
)


def read(
    text: str,
    unit: Unit,
    arrived: datetime,
    channel: Literal["text", "voice"] = "text",
    alternatives: Sequence[tuple[str, float]] = (),
) -> Message:
    """All that the message says, for this unit; `alternatives` are a recogniser's other hypotheses.

    A query may end with the page that is wanted of a long reply: "history bed 7 page 2".
    """
    page = _PAGE.search(text)
    if page is not None:
        message = _read(text[: page.start()], unit, arrived, channel, ())
        if _only_queries(message):
            queries = (replace(each, page=int(page[1])) for each in message.said if isinstance(each, Query))
            return replace(message, said=tuple(queries))
    for_a_bed = _answer_for_a_bed(text, unit, arrived, channel)
    return for_a_bed or _read(text, unit, arrived, channel, alternatives)


def _answer_for_a_bed(
    text: str, unit: Unit, arrived: datetime, channel: Literal["text", "voice"]
) -> Message | None:
    """ "9 misread, 110": an answer with the bed that it is for."""
    found = _FOR_A_BED.match(text)
    label = found["bed"].upper() if found else ""
    if found is None or label not in unit.beds:
        return None
    message = _read(found["answer"], unit, arrived, channel, ())
    match message:
        case Message(said=(Answered(bed=None) as answer,), unclear=()):
            return replace(message, said=(replace(answer, bed=label),), text=text)
        case _:
            return None


def _only_queries(message: Message) -> bool:
    queries = [isinstance(each, Query) for each in message.said]
    return bool(queries) and all(queries) and not message.unclear


def _read(
    text: str,
    unit: Unit,
    arrived: datetime,
    channel: Literal["text", "voice"],
    alternatives: Sequence[tuple[str, float]],
) -> Message:
    parsed = nlu.parse(
        text,
        arrived=arrived.astimezone(unit.zone),
        beds=unit.beds,
        shifts=unit.policy.schedule.starts,
        capacity_ml=unit.policy.capacity_ml,
        alternatives=tuple(alternatives),
        channel=channel,
    )
    return in_ledger_words(parsed)


def in_ledger_words(parsed: Parsed) -> Message:
    """What was read, in the words of the ledger; the order is the order of the message."""
    said: list[Said] = []
    unclear: list[NotSure] = []
    beside = _beside(parsed) if parsed.unclear else ()
    for item in parsed.unclear:
        whole_fix = _moved_fix(item)
        if whole_fix is None:
            unclear.append(_not_sure(item, parsed.text, beside))
        else:
            said.append(whole_fix)
    for statement in parsed.statements:
        doubtful = None if _has_its_final(statement, parsed) else _line_or_final(statement, parsed.text)
        if doubtful is not None:
            unclear.append(doubtful)
            continue
        slots = _seen_or_amended(slots_of(_named(statement, parsed.text)), parsed.text)
        match built(slots):
            case Lacking(slot):
                unclear.append(NotSure(slot=slot, text=parsed.text, partial=slots))
            case whole:
                said.append(_of_final(_of_old(whole, parsed.text), parsed.text))
    if not said and unclear and all(map(_is_one_of_many, unclear)):
        unclear = [NotSure(slot="kind", text=parsed.text, beside=beside)]
    reply = _as_reply(parsed.text, said)
    fix = _as_fix(parsed.text, said, reply)
    return Message(
        said=tuple(said),
        unclear=tuple(unclear),
        reply=reply,
        fix=fix,
        text=parsed.text,
        unread=parsed.unread,
    )


def slots_of(statement: Statement) -> Slots:
    """The statement by the names of its slots; what was not said is left out."""
    values = tuple(
        (field.name, _plain(value))
        for field in fields(statement)
        if field.name not in _OWN and (value := getattr(statement, field.name)) is not None
    )
    return Slots(
        kind=statement.kind,
        bed=statement.bed,
        tube=statement.tube,
        at=statement.at.astimezone(UTC) if statement.at else None,
        values=values,
    )


def _seen_or_amended(slots: Slots, text: str) -> Slots:
    """A chart that was amended, told from cautions that were seen."""
    if slots.kind == "acknowledged" and _AMENDED.search(text):
        return filled(slots, "amended", True)
    return slots


def _has_its_final(statement: Statement, parsed: Parsed) -> bool:
    """Whether the message tells the old canister's level as such: then another level is the new one's."""
    return any(
        isinstance(each, ChangedCanister) and each.bed == statement.bed and each.final_ml is not None
        for each in parsed.statements
    )


def _line_or_final(statement: Statement, text: str) -> NotSure | None:
    """A level told with the word of an old canister's end: a line on the new one would be wrong for ever."""
    if not isinstance(statement, Mark) or not _FINAL.search(text):
        return None
    slots = slots_of(statement)
    end = Slots(kind="exchanged", bed=slots.bed, tube=slots.tube, at=slots.at)
    final = filled(end, "final_ml", statement.level_ml or 0)
    wholes = (each for each in (built(slots), built(final)) if not isinstance(each, Lacking))
    readings = tuple(_of_old(each, text) for each in wholes)
    if len(readings) < 2:
        return None
    return NotSure(slot="kind", text=text, choices=("mark", "exchanged"), readings=readings, partial=slots)


def _named(statement: Statement, text: str) -> Statement:
    """A correction with each number and bed in its part: what is wrong, and what is right."""
    if not isinstance(statement, Corrected) or statement.at is not None or statement.was_ml is not None:
        return statement
    if statement.to_bed is None and statement.bed is not None and _MEANT.search(text):
        return replace(statement, bed=None, to_bed=statement.bed)
    right = statement.to_bed or statement.to_tube
    if statement.bed is None or right is None or statement.level_ml is None:
        return statement
    if re.search(rf"\b{statement.level_ml}\b.*\bto\b.*\b{re.escape(right)}\b", text, re.IGNORECASE):
        return replace(statement, level_ml=None, was_ml=statement.level_ml)
    return statement


def _moved_fix(item: Unclear) -> Fix | None:
    """A line at the wrong bed or tube, which needs no level: the number that was said names the line."""
    statement = item.statement
    if _names_right_bed(item):
        return Fix(to_bed=statement.bed if statement else None)
    if item.slot != "level_ml" or item.choices or not isinstance(statement, Corrected):
        return None
    whole = built(slots_of(replace(statement, level_ml=None, was_ml=statement.was_ml or statement.level_ml)))
    if not isinstance(whole, Fix) or (whole.to_bed is None and whole.to_tube is None and whole.to_at is None):
        return None
    return whole


def _names_right_bed(item: Unclear) -> bool:
    """ "Oops, that was bed 9": the bed where the last line belongs, not the one where it is wrong."""
    statement = item.statement
    if item.slot not in ("level_ml", "to_bed") or item.choices or not isinstance(statement, Corrected):
        return False
    if statement.bed is None or statement != Corrected(bed=statement.bed):
        return False
    return re.search(_RIGHT_BED.format(re.escape(statement.bed)), item.text, re.IGNORECASE) is not None


def _of_old(said: Said, text: str) -> Said:
    """A final level told with no word of a change may be that of an exchange which is recorded already."""
    if not _OLD.search(text) or _CHANGE.search(text):
        return said
    match said:
        case Report(fact=Exchanged(), at=None, final_ml=int()):
            return replace(said, of_old=True)
        case _:
            return said


def _of_final(said: Said, text: str) -> Said:
    """ "Correct bed 5 final level to 985" is not about the last line of the new canister."""
    return replace(said, of_final=True) if isinstance(said, Fix) and _FINAL.search(text) else said


def _not_sure(unclear: Unclear, text: str, beside: tuple[str, ...]) -> NotSure:
    wholes = [built(slots_of(reading)) for reading in unclear.readings]
    readings = tuple(_of_old(whole, text) for whole in wholes if not isinstance(whole, Lacking))
    complete = len(readings) == len(unclear.choices) or not unclear.choices
    return NotSure(
        slot=unclear.slot,
        text=unclear.text,
        choices=tuple(_plain(choice) for choice in unclear.choices),
        readings=readings if complete else (),
        partial=_partial(unclear.statement, text),
        beside=() if unclear.readings else beside,
    )


def _beside(parsed: Parsed) -> tuple[str, ...]:
    """The numbers that were said and stand in no statement and no question."""
    asked = (each for item in parsed.unclear for each in (item.statement, *item.readings))
    told = [span for each in (*parsed.statements, *asked) if each is not None for span in each.spans.values()]
    return tuple(
        found[0]
        for found in _NUMBER.finditer(parsed.text)
        if not any(span.start < found.end() and found.start() < span.end for span in told)
    )


def _is_one_of_many(item: NotSure) -> bool:
    """Whether it asks for the amount of one line where many were told: an answer would lose the others.

    "1300 rounds 1A 330, 1B 905, 5A 1480": what is asked about may be none of them.
    """
    lacks = item.partial is not None and lacks_number(item.partial)
    return lacks and item.leaves_out_much and len(item.choices) < 2 and not item.readings


def _partial(statement: Statement | None, text: str) -> Slots | None:
    """What is sure of a statement; None where not even its kind is."""
    if statement is None or type(statement) is Statement:
        return None
    return _seen_or_amended(slots_of(statement), text)


def _plain(value: Value) -> Value:
    return value.astimezone(UTC) if isinstance(value, datetime) else value


def _as_reply(text: str, said: Sequence[Said]) -> Answered | None:
    """What the message answers if something was asked: "bed 9" may name the bed, "12 left" the tube."""
    match said:
        case [Query(topic="last", bed=str(bed), at=None) as query] if _is_bare(text, bed):
            return Answered(bed=bed, tube=query.tube)
        case [Report(fact=Left(), at=None) as report]:
            return Answered(bed=report.bed, tube="left")
        case _:
            return None


def _as_fix(text: str, said: Sequence[Said], reply: Answered | None) -> Fix | None:
    """What "sorry, bed 9", "sorry 12 was 1090", "*1090" puts right if the last message told a line."""
    match said:
        case [Query()] if reply is not None and _SORRY.search(text):
            return Fix(to_bed=reply.bed, to_tube=reply.tube)
        case [Answered(bed=str(bed), tube=tube) as told] if told == Answered(bed=bed, tube=tube):
            return Fix(to_bed=bed, to_tube=tube) if _SORRY.search(text) else None
        case [Report(fact=Line(level_ml=level), at=None) as line] if _WAS.search(text) and _SORRY.search(
            text
        ):
            return Fix(bed=line.bed, tube=line.tube, level_ml=level)
        case [Answered(level_ml=int(level)) as number] if number == Answered(level_ml=level):
            return Fix(level_ml=level) if _SORRY.search(text) or _STARRED.search(text) else None
        case _:
            return None


def _is_bare(text: str, bed: str) -> bool:
    """Whether nothing but a bed was said, and not as a question."""
    said = _SORRY.sub("", text)
    left = re.sub(rf"\b(bed|room|rm|b)\b|\b{re.escape(bed)}\b|[.,!#\s]", "", said, flags=re.IGNORECASE)
    return left.casefold() in ("", "its", "itis", "no")
