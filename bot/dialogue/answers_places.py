"""Answers to questions about what is meant: which bed, tube, line or reading; again or not."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from bot.dialogue.bedside import Bedside
from bot.dialogue.pending import Ask, Pending
from bot.dialogue.said import Amount, Answered, Fix, Report, Slots, TakeBack, Value
from bot.dialogue.slots import NUMBER_OF, Lacking, built, filled
from bot.dialogue.verdicts import (
    Dropped,
    NoAnswer,
    Retake,
    StillLacks,
    Swap,
    Verdict,
    declined,
    granted,
    heard,
    hhmm,
    level_of,
    not_recorded,
)
from bot.engine.entries import Moved
from bot.wording.questions import WHEN_CHANGED

_NUMBERS = frozenset(
    {
        "level_ml", "volume_ml", "final_ml", "opening_ml", "was_ml", "seal_cm", "suction_cmh2o", "wall_mmhg",
        "leak_grade", "weight_kg",
    }
)  # fmt: skip
"""The slots that a bare number can fill: it is never a leak, a fluid or a reason."""
NEAR_ML = 50
"""So close a level may be the number that was taken for a time."""


def bed(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    bed = answer.bed or (str(answer.level_ml) if answer.level_ml is not None else None)
    said = pending.said
    if bed is None:
        return declined(pending, answer)
    match said:
        case Report(fact=Moved() as fact) if pending.slot == "to_bed":
            return Retake(replace(said, fact=replace(fact, to_bed=bed)), pending.grant)
        case Report(fact=Moved() as fact):
            return Retake(replace(said, bed=bed, fact=replace(fact, from_bed=bed)), pending.grant)
        case Report() | Amount() | Fix() | TakeBack():
            return Retake(replace(said, bed=bed), heard(bedside, pending.grant))
        case _:
            return NoAnswer()


def tube(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report | Amount)
    drain = _named(bedside, pending, answer)
    if drain is not None:
        return Retake(pending.said, replace(pending.grant, drain=drain))
    if answer.tube is not None:
        return Retake(replace(pending.said, tube=answer.tube), pending.grant)
    return declined(pending, answer)


def _named(bedside: Bedside, pending: Pending, answer: Answered) -> str | None:
    """The candidate drain that the answer names: by its tube, its number, or its place."""
    said = answer.tube or (str(answer.level_ml) if answer.level_ml is not None else None)
    for drain in pending.drains:
        ledger = bedside.ledger(drain)
        if said is not None and (ledger.tube == said or said in ledger.joined):
            return drain
    place = answer.place
    return pending.drains[place] if place is not None and place < len(pending.drains) else None


def other_tube(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report | Amount)
    existing = bedside.ledger(pending.drains[0]).tube
    match answer:
        case Answered(choice="first") | Answered(yes=True):
            return Retake(pending.said, replace(pending.grant, drain=pending.drains[0]))
        case Answered(choice="second") | Answered(yes=False):
            return Retake(pending.said, replace(pending.grant, fresh=True))
        case Answered(tube=str(tube)) if tube == existing:
            return Retake(replace(pending.said, tube=tube), replace(pending.grant, drain=pending.drains[0]))
        case _:
            return NoAnswer()


def slot(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    value = slot_value(bedside, pending, answer)
    if value is None:
        return declined(pending, answer)
    assert isinstance(pending.said, Slots)
    if (numbered := _with_number(bedside, pending.said, pending.slot, answer)) is not None:
        return StillLacks(numbered, pending.slot)
    slots = filled(pending.said, pending.slot, value)
    if (
        pending.slot == "level_ml"
        and (at := answer.at or _as_time(bedside, pending, answer, value)) is not None
    ):
        if answer.at is None and _is_near(value, pending):
            return StillLacks(slots, "at")
        slots = filled(slots, "at", at)
    whole = built(slots)
    if isinstance(whole, Lacking):
        return StillLacks(slots, whole.slot)
    return Retake(whole, heard(bedside, pending.grant))


def _with_number(bedside: Bedside, said: Slots, slot: str, answer: Answered) -> Slots | None:
    """What was said, with a bare number that is no bed, where the bed was asked for and it lacks that too."""
    number = answer.level_ml
    if slot != "bed" or number is None or str(number) in bedside.context.unit.beds:
        return None
    lacks = NUMBER_OF.get(said.kind)
    return None if lacks is None or lacks in dict(said.values) else filled(said, lacks, number)


def _as_time(bedside: Bedside, pending: Pending, answer: Answered, level_ml: Value) -> datetime | None:
    """The lone number of "bed 12 at 1900", once the level is another one: it was the time.

    But "no, 735" to "07:45 or 745 mL" says that it was no 745.
    """
    match pending.choices:
        case (int(number),) if number != level_ml and answer.yes is not False:
            return hhmm(bedside, number)
        case _:
            return None


def _is_near(level_ml: Value, pending: Pending) -> bool:
    """Whether the lone number may have been that level, misheard or mistyped: 745 for 735."""
    match pending.choices, level_ml:
        case (int(number),), int(level):
            return abs(number - level) <= NEAR_ML
        case _:
            return False


def slot_value(bedside: Bedside, pending: Pending, answer: Answered) -> Value | None:
    """The value that the answer gives to the slot that was asked about."""
    if pending.choices and (chosen := _chosen(bedside, pending, answer)) is not None:
        return pending.choices[chosen]
    match pending.slot:
        case "bed" | "to_bed":
            return answer.bed or (str(answer.level_ml) if answer.level_ml is not None else None)
        case "tube" | "to_tube":
            return answer.tube
        case "at" | "to_at":
            return answer.at or (hhmm(bedside, answer.level_ml) if answer.level_ml is not None else None)
        case name if name in _NUMBERS:
            return answer.level_ml
        case _:
            return None


def reading(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    chosen = _chosen(bedside, pending, answer)
    if chosen is not None and chosen < len(pending.readings):
        return Retake(pending.readings[chosen], heard(bedside, pending.grant))
    if answer.yes is False:
        return not_recorded(pending, "Say it again.")
    if isinstance(pending.said, Slots) and pending.slot not in ("kind", "at") and answer.level_ml is not None:
        return slot(bedside, replace(pending, choices=()), answer)
    return NoAnswer()


def _chosen(bedside: Bedside, pending: Pending, answer: Answered) -> int | None:
    """The place of the one choice that the answer names; None when it names none, or several."""
    place = answer.place
    if place is not None:
        return place if place < max(len(pending.choices), len(pending.readings)) else None
    fits = [at for at, choice in enumerate(pending.choices) if _names(bedside, choice, answer)]
    return fits[0] if len(fits) == 1 else None


def _names(bedside: Bedside, choice: Value, answer: Answered) -> bool:
    told = (answer.bed, answer.tube, answer.level_ml, answer.at)
    match choice:
        case datetime():
            local = choice.astimezone(bedside.context.unit.zone)
            number = answer.level_ml
            return answer.at == choice or number in (local.hour * 100 + local.minute, local.hour)
        case str():
            return choice in told or (answer.level_ml is not None and choice == str(answer.level_ml))
        case _:
            return choice == answer.level_ml


def yes_no(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """A placement on an open drain, an exchange told twice, a line that is meant: yes, or not."""
    assert isinstance(pending.said, Report | Fix | TakeBack)
    match answer:
        case Answered(choice="first") if (
            pending.ask is Ask.CHANGED_AGAIN and level_of(pending.said) is not None
        ):
            return Retake(pending.said, replace(granted(pending), target=pending.targets[0]))
        case Answered(yes=True) | Answered(choice="second"):
            fresh = pending.ask is Ask.ON_OPEN
            return Retake(pending.said, replace(granted(pending), fresh=fresh))
        case Answered(yes=False):
            return Dropped("Nothing was changed.")
        case _:
            return NoAnswer()


def read_on(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """Whether the line behind an exchange was read on the new canister; if not, its time is wrong."""
    match answer:
        case Answered(yes=True) | Answered(choice="new_canister"):
            assert isinstance(pending.said, Report)
            return Retake(pending.said, granted(pending))
        case Answered(yes=False):
            return not_recorded(pending, WHEN_CHANGED)
        case _:
            return NoAnswer()


def which(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Fix | TakeBack)
    target = _target_named(bedside, pending, answer)
    if target is None:
        return Dropped("Nothing was changed.") if answer.yes is False else NoAnswer()
    grant = replace(pending.grant, target=target, drain=target.rpartition("-")[0])
    return Retake(pending.said, grant)


def _target_named(bedside: Bedside, pending: Pending, answer: Answered) -> str | None:
    place = answer.place
    if place is not None:
        return pending.targets[place] if place < len(pending.targets) else None
    fits = []
    for entry_id in pending.targets:
        ledger = bedside.ledger(entry_id.rpartition("-")[0])
        level = ledger.level_of(entry_id)
        if level is not None and _fits(bedside, level.at, level.level_ml, ledger.tube, answer):
            fits.append(entry_id)
    return fits[0] if len(fits) == 1 else None


def _fits(bedside: Bedside, at: datetime, level_ml: int, tube: str | None, answer: Answered) -> bool:
    if answer.at is not None:
        return abs(at - answer.at) < timedelta(minutes=1)
    if answer.tube is not None:
        return answer.tube == tube
    return answer.level_ml is not None and (
        answer.level_ml == level_ml or hhmm(bedside, answer.level_ml) == at
    )


def who(_: Bedside, __: Pending, ___: Answered) -> Verdict:
    """A name is no statement: `phone` looks for it before anything else is read."""
    return NoAnswer()


def occupied(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    match answer:
        case Answered(choice="first"):
            return Swap()
        case Answered(choice="second"):
            assert isinstance(pending.said, Report)
            return Retake(pending.said, granted(pending))
        case Answered(yes=False):
            return Dropped("Nothing was changed.")
        case _:
            return NoAnswer()
