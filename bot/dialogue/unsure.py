"""Asking about what could not be read one way only."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import BARE, brief, what
from bot.dialogue.canisters import take_exchange, waits_for_final
from bot.dialogue.dangers import dangers_at_its_bed, in_question
from bot.dialogue.hearing import ask_heard_whole
from bot.dialogue.locate import is_tube
from bot.dialogue.part import BedCaution, Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.queries import OF_UNIT
from bot.dialogue.said import Amount, NotSure, Query, Report, Said, Slots, Value
from bot.dialogue.seen import ask_seen
from bot.dialogue.slots import Lacking, built, filled, whose
from bot.dialogue.take import take, take_query
from bot.dialogue.targets import with_bed_of_last
from bot.engine.entries import Line
from bot.wording import formats, questions, small_talk
from bot.wording.gsm import gsm_only
from bot.wording.queries import nothing
from bot.wording.queries.asking import WINDOWS
from bot.wording.queries.view import place

_NAMED_BED = re.compile(r"\b(?:bed|room|rm)\s*([A-Za-z]{0,3}\d{1,4}[A-Za-z]?)\b", re.IGNORECASE)
_ASKABLE = 6
"""More choices than this are not offered: the slot is asked for."""


def ask_not_sure(bedside: Bedside, item: NotSure) -> Part:
    """The question about it; a stretch that means nothing to us is told so.

    Numbers of the message that no answer to it would record are named.
    """
    part = _asked(bedside, item)
    if part.question is None or not item.leaves_out_much:
        return part
    return replace(part, last=questions.beside_text(item.beside))


def _asked(bedside: Bedside, item: NotSure) -> Part:
    if small_talk.answered(item.text):
        return Part(status="told", kind="talk", text=small_talk.REPLY)
    if item.partial is None and not item.readings:
        return _not_understood(bedside, item)
    kind = whose(item.partial, item.slot) if item.partial is not None else None
    if item.partial is not None and kind is not None:
        return _ask_apart(bedside, item, item.partial, kind)
    readings = tuple(with_bed_of_last(bedside, each) for each in item.readings) or _readings(item)
    choices = item.choices or ()
    late = _late_final(bedside, readings)
    if late is not None:
        return take_exchange(bedside, late, Grant())
    if 1 < len(readings) <= _ASKABLE or 1 < len(choices) <= _ASKABLE:
        return _ask_which(bedside, item, readings)
    if item.slot == "kind" and len(item.readings) == 1:
        return ask_heard_whole(bedside, item.readings)  # "bed 7 closing 310, not sure though"
    if item.partial is None or item.slot == "kind":
        return _not_understood(bedside, item)
    of_unit = _of_unit(item)
    if of_unit is not None:
        return take_query(bedside, of_unit)
    told = item.choices if item.readings else ()  # "the tech says 31 is at 500": no time, and not hers
    return ask_slot(bedside, item.partial, item.slot, item.text, told)


def _of_unit(item: NotSure) -> Query | None:
    """What was asked without a bed and can be told of every bed."""
    if item.slot != "bed" or item.choices or item.partial is None or item.partial.tube is not None:
        return None
    query = built(item.partial)
    return query if isinstance(query, Query) and query.topic in OF_UNIT else None


def _not_understood(bedside: Bedside, item: NotSure) -> Part:
    """Told so; a bed that the unit does not have may be why."""
    bed = _unknown_bed(bedside, item.text)
    text = questions.not_understood(item.text, many=item.leaves_out_much)
    if bed is not None:
        text = f"{nothing.unknown_bed(bed, bedside.context.unit.name)} {text}"
    return Part(status="told", kind="unclear", text=text)


def _ask_apart(bedside: Bedside, item: NotSure, partial: Slots, kind: str) -> Part:
    """The question about a statement of its own; what is sure beside it waits for the answer.

    Where this message has asked that already, what is sure is taken now.
    """
    whole, waiting = built(partial), bedside.waiting
    if not isinstance(whole, Lacking) and _asked_already(bedside, partial.bed, item.slot):
        return take(bedside, whole, Grant())
    bedside.waiting = waiting if isinstance(whole, Lacking) else (whole, *waiting)
    own = Slots(kind=kind, bed=partial.bed, tube=partial.tube, at=partial.at)
    part = ask_not_sure(bedside, replace(item, partial=own, readings=()))
    bedside.waiting = waiting
    return part


def _asked_already(bedside: Bedside, bed: str | None, slot: str) -> bool:
    asked = (each for each in bedside.open_questions() if each.message == bedside.context.message_id)
    return any((each.bed, each.slot) == (bed, slot) for each in asked)


def _late_final(bedside: Bedside, readings: tuple[Said, ...]) -> Report | None:
    """The reading that is the final level which an exchange of its bed still lacks: it is wanted there."""
    for each in readings:
        if isinstance(each, Report) and each.of_old:
            drains = bedside.patient(each.bed).drains
            fits = [ledger for ledger in drains if each.tube is None or is_tube(ledger, each.tube)]
            if len(fits) == 1 and waits_for_final(fits[0], each):
                return each
    return None


def _readings(item: NotSure) -> tuple[Said, ...]:
    """The whole statements that the choices make of what is sure; none unless every one is whole."""
    if item.partial is None:
        return ()
    wholes = [built(filled(item.partial, item.slot, choice)) for choice in item.choices]
    return () if any(isinstance(whole, Lacking) for whole in wholes) else tuple(wholes)  # type: ignore[arg-type]


def ask_slot(
    bedside: Bedside, slots: Slots, slot: str, text: str = "", choices: tuple[Value, ...] = ()
) -> Part:
    """The question for a slot that was not said, or of which the one value heard may be something else."""
    if slots.kind == "acknowledged":
        return ask_seen(bedside, slots)
    if dict(slots.values).get("what") in ("disconnected", "dislodged"):
        told = str(dict(slots.values)["what"])
        bedside.tell(
            _own(bedside, slots.bed), told, gsm_only(f"If right: {_known(bedside, slots)}."), None, True
        )
    number = time_or_level(slots, slot, choices)
    pending = Pending(
        ask=Ask.SLOT,
        said=slots,
        slot=slot,
        choices=() if number is None else (number,),
        brief=_known(bedside, slots),
    )
    wording = questions.missing(slot, formats.capital(_head(bedside, slots, number)))
    named = _unknown_bed(bedside, text) if slot == "bed" else None
    if named is not None:
        wording = questions.unknown_bed(named, _known(bedside, slots), bedside.context.unit.name)
    about = About(bed=_own(bedside, slots.bed), tube=slots.tube, slot=slot, kind=slots.kind)
    whole = in_question(slots, bedside.now)
    return bedside.ask(pending, wording, about, dangers=_dangers(bedside, (whole,)) if whole else ())


def time_or_level(slots: Slots, slot: str, choices: tuple[Value, ...]) -> int | None:
    """The lone number of "bed 12 at 1900", which may be the line or the time that it was read."""
    match choices:
        case (int(number),) if slot == "level_ml" and slots.at is None and slots.kind == "mark":
            return number if 0 <= number <= 2359 and number % 100 < 60 else None
        case _:
            return None


def _unknown_bed(bedside: Bedside, text: str) -> str | None:
    """The bed that was named, where the unit has none of that label."""
    found = _NAMED_BED.search(text)
    label = found[1].upper() if found else None
    return label if label is not None and label not in bedside.context.unit.beds else None


def _ask_which(bedside: Bedside, item: NotSure, readings: tuple[Said, ...]) -> Part:
    """Which of several: by whole readings where there are such, else by the values of the slot."""
    labels = _labels(bedside, item, readings)
    bed = _own(bedside, _bed(item, readings))
    pending = Pending(
        ask=Ask.READING if readings else Ask.SLOT,
        said=item.partial,
        slot=item.slot,
        choices=item.choices,
        readings=readings,
        brief=_reminder(bedside, item, readings),
    )
    where = f"{place(bed, None)}: " if bed else ""
    return bedside.ask(
        pending,
        questions.one_of(where, labels),
        About(bed=bed, slot=item.slot, kind=item.partial.kind if item.partial else "unclear"),
        dangers=_dangers(bedside, readings),
    )


def _reminder(bedside: Bedside, item: NotSure, readings: tuple[Said, ...]) -> str:
    if item.partial is not None:
        return _known(bedside, item.partial)
    return brief(readings[0], bedside.view) if readings else f'"{item.text}"'


def _labels(bedside: Bedside, item: NotSure, readings: tuple[Said, ...]) -> tuple[str, ...]:
    whole = tuple(brief(each, bedside.view) for each in readings)
    if whole and len(set(whole)) == len(whole):
        bed = _own(bedside, _bed(item, readings))
        return tuple(_plainly(each, text, bed) for each, text in zip(readings, whole, strict=True))
    return tuple(_value_text(bedside, item.slot, choice) for choice in item.choices)


def _plainly(reading: Said, text: str, bed: str | None) -> str:
    """A level and an amount of the same number must not look alike; the bed of them all is said once."""
    text = text.removeprefix(f"bed {bed} ") if bed is not None else text
    level = isinstance(reading, Report) and isinstance(reading.fact, Line)
    return f"{text} (the line)" if level else f"{text} (an amount)" if isinstance(reading, Amount) else text


def _value_text(bedside: Bedside, slot: str, value: Value) -> str:
    match value:
        case datetime():
            return bedside.view.clock(value)
        case str() if slot in ("bed", "to_bed"):
            return f"bed {value}"
        case str() if slot == "window":
            return WINDOWS[value]
        case bool() | str():
            return str(value).replace("_", " ")
        case int() if slot.endswith("_ml"):
            return formats.ml(value)
        case int() | float():
            return formats.number(value)
        case _:
            return str(value)


def _dangers(bedside: Bedside, readings: tuple[Said, ...]) -> tuple[BedCaution, ...]:
    """What any of the readings would mean, were it right; each rule once."""
    found: dict[str, BedCaution] = {}
    for reading in readings:
        if isinstance(reading, Report | Amount):
            for danger in dangers_at_its_bed(bedside, reading):
                found.setdefault(danger.caution.key, danger)
    return tuple(found.values())


def _bed(item: NotSure, readings: tuple[Said, ...]) -> str | None:
    beds = {getattr(each, "bed", None) for each in readings}
    if len(beds) == 1:
        return next(iter(beds))
    return item.partial.bed if item.partial and item.slot != "bed" else None


def _own(bedside: Bedside, bed: str | None) -> str | None:
    """The bed, where the unit has it."""
    return bed if bed in bedside.context.unit.beds else None


def _known(bedside: Bedside, slots: Slots) -> str:
    told = what(slots)
    where = f"bed {slots.bed} " if slots.bed else ""
    tube = f"{slots.tube} " if slots.tube else ""
    time = f" at {bedside.view.clock(slots.at)}" if slots.at else ""
    return gsm_only(f"{where}{tube}{told}{time}")


def _head(bedside: Bedside, slots: Slots, number: int | None) -> str:
    """What is known of it, as the question begins: "bed 12 left, 19:00, 840 mL"."""
    if slots.kind == "asked":
        return ""
    where = " ".join(word for word in (f"bed {slots.bed}" if slots.bed else "", slots.tube or "") if word)
    told = "" if where and what(slots) in BARE else what(slots)
    if number is not None:
        told = f"{number // 100:02}:{number % 100:02} or {formats.ml(number)}"
    time = bedside.view.clock(slots.at) if slots.at else ""
    return gsm_only(", ".join(part for part in (where, time, told) if part))
