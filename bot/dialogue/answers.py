"""What an answer leads to, by the question that it answers.

A verdict is a value: take the statement again with what was granted; ask something else; say that it is
no answer; or drop the statement. `settling` acts on it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any, Final, TypeAlias

from bot.dialogue.bedside import Bedside
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Amount, Answered, Fix, Report, Said, Slots, TakeBack, Value
from bot.dialogue.slots import Lacking, built, filled
from bot.engine.entries import Line, Moved


@dataclass(frozen=True, slots=True)
class Retake:
    """The statement as it is now, with what is granted."""

    said: Said
    grant: Grant


@dataclass(frozen=True, slots=True)
class AskLevel:
    """The level was misread and the right one was not said."""


@dataclass(frozen=True, slots=True)
class NewCanister:
    """The canister was changed between the two lines; `final_ml` of the old one if it was said."""

    final_ml: int | None


@dataclass(frozen=True, slots=True)
class OtherWrong:
    """The other line was wrong; `level_ml` None: what it was is to be asked."""

    entry: str
    level_ml: int | None
    unknown: bool = False


@dataclass(frozen=True, slots=True)
class NoAnswer:
    """Not an answer to this question: it stays open and is asked again."""


@dataclass(frozen=True, slots=True)
class Dropped:
    """The statement is not recorded."""

    text: str = "Not recorded."


@dataclass(frozen=True, slots=True)
class FinalTold:
    """A final level for the event that waits for one."""

    level_ml: int


@dataclass(frozen=True, slots=True)
class Swap:
    """Two patients change beds."""


@dataclass(frozen=True, slots=True)
class StillLacks:
    """The answer filled one slot and another one lacks."""

    slots: Slots
    slot: str


Verdict: TypeAlias = (
    Retake | AskLevel | NewCanister | OtherWrong | NoAnswer | Dropped | FinalTold | Swap | StillLacks
)


def verdict(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """What the answer means for the question."""
    turned = _turned(bedside, pending, answer)
    return turned or _BY_ASK[pending.ask](bedside, pending, answer)


_OWN_PLACE: Final = frozenset({Ask.BED, Ask.SLOT, Ask.READING, Ask.OCCUPIED})


def _turned(bedside: Bedside, pending: Pending, answer: Answered) -> Retake | None:
    """ "No, I meant bed 9": the same reading at another bed, tube or time, judged anew there."""
    said = pending.said
    if pending.ask in _OWN_PLACE or answer.yes is True or not isinstance(said, Report | Amount):
        return None
    changed: dict[str, Any] = {}
    tube = bedside.ledger(pending.drains[0]).tube if pending.drains else said.tube
    if answer.bed is not None and answer.bed != said.bed:
        changed["bed"] = answer.bed
    if (
        answer.tube is not None
        and pending.ask not in (Ask.TUBE, Ask.OTHER_TUBE)
        and answer.tube not in (tube, said.tube)
    ):
        changed["tube"] = answer.tube
    if answer.at is not None and answer.at != said.at:
        changed["at"] = answer.at
    if not changed:
        return None
    turned = replace(said, **changed)
    moved = turned if answer.level_ml is None else with_level(turned, answer.level_ml)
    return Retake(moved, _heard(bedside, Grant()))


def _heard(bedside: Bedside, grant: Grant) -> Grant:
    """What is typed need not be read back before it is recorded; what was dictated anew must."""
    return replace(grant, heard=bedside.context.channel == "text")


def with_level(said: Report | Amount | Fix, level_ml: int) -> Report | Fix:
    """The same statement with another level."""
    match said:
        case Report(fact=Line() as line):
            return replace(said, fact=replace(line, level_ml=level_ml, told_ml=None, accepted=()))
        case Report():
            return replace(said, final_ml=level_ml)
        case Fix():
            return replace(said, level_ml=level_ml)
        case Amount():
            return Report(bed=said.bed, tube=said.tube, at=said.at, fact=Line(level_ml=level_ml))


def level_of(said: Said | Slots | None) -> int | None:
    """The level that the statement holds, in mL."""
    match said:
        case Report(fact=Line(level_ml=level)):
            return level
        case Report(final_ml=level) | Fix(level_ml=level):
            return level
        case _:
            return None


def _doubt(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """Misread, new canister, the other line wrong, or right."""
    said = pending.said
    if not isinstance(said, Report | Fix):
        return NoAnswer()
    match answer:
        case Answered(choice="new_canister", level_ml=level):
            return NewCanister(level)
        case Answered(choice="earlier_wrong", level_ml=level) if pending.targets:
            return OtherWrong(pending.targets[0], level)
        case Answered(choice="misread" | None, level_ml=int(level)) if level != level_of(said):
            return Retake(with_level(said, level), _heard(bedside, replace(pending.grant, accepted=())))
        case Answered(choice="misread") | Answered(choice=None, yes=False):
            return AskLevel()
        case Answered(choice=None, yes=True) | Answered(choice=None, yes=None, level_ml=int()):
            return Retake(said, granted(pending))
        case _:
            return NoAnswer()


def granted(pending: Pending) -> Grant:
    """What is granted once the nurse says that it is right."""
    accepted = tuple(dict.fromkeys((*pending.grant.accepted, *pending.asked)))
    return replace(pending.grant, accepted=accepted, heard=True)


def _conflict(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    if not isinstance(said, Report | Fix) or not pending.targets:
        return NoAnswer()
    other = bedside.ledger(pending.targets[0].rpartition("-")[0]).level_of(pending.targets[0])
    match answer:
        case Answered(choice="first"):
            return Dropped("The first line stays.")
        case Answered(choice="second" | "earlier_wrong") if isinstance(said, Fix):
            return Dropped("Nothing was changed. Take one of the two lines back first.")
        case Answered(choice="second" | "earlier_wrong", level_ml=None):
            return OtherWrong(pending.targets[0], level_of(said))
        case Answered(choice="misread", level_ml=None):
            return AskLevel()
        case Answered(level_ml=int(level)) if other is not None and level == other.level_ml:
            return Dropped("The first line stays.")
        case Answered(level_ml=int(level)) if level == level_of(said):
            return OtherWrong(pending.targets[0], level)
        case Answered(at=datetime() as at) if isinstance(said, Fix):
            return Retake(replace(said, to_at=at), _heard(bedside, pending.grant))
        case _:
            return NoAnswer()


def _silence(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    if not isinstance(said, Report | Fix):
        return NoAnswer()
    match answer:
        case Answered(yes=True) | Answered(choice="first"):
            return Retake(said, granted(pending))
        case Answered(yes=False) | Answered(choice="second"):
            closes = pending.drains[0] if pending.drains else None
            return Retake(said, replace(granted(pending), fresh=True, drain=None, closes=closes))
        case Answered(level_ml=int(level)):
            return Retake(with_level(said, level), replace(pending.grant, accepted=()))
        case _:
            return NoAnswer()


def _gone(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report | Amount)
    match answer.yes:
        case True:
            return Retake(pending.said, replace(granted(pending), fresh=True, drain=None))
        case False:
            return Dropped("Not recorded. Say it again with the right bed or time.")
        case None:
            return NoAnswer()


def _not_yet(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report | Amount)
    at = hhmm(bedside, answer.level_ml) if answer.level_ml is not None else None
    if at is not None:
        return Retake(replace(pending.said, at=at), pending.grant)
    return Dropped("Not recorded.") if answer.yes is False else NoAnswer()


def _amount(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report)
    match answer:
        case Answered(level_ml=int(level)) if level != level_of(pending.said):
            return Retake(with_level(pending.said, level), _heard(bedside, pending.grant))
        case Answered(yes=True) | Answered(level_ml=int()):
            return Retake(pending.said, granted(pending))
        case Answered(yes=False) | Answered(choice="misread"):
            return AskLevel()
        case _:
            return NoAnswer()


def _level(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    if answer.level_ml is not None and isinstance(said, Report | Fix | Amount):
        return Retake(with_level(said, answer.level_ml), _heard(bedside, pending.grant))
    return Dropped("Not recorded.") if answer.yes is False else NoAnswer()


def _bed(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    bed = answer.bed or (str(answer.level_ml) if answer.level_ml is not None else None)
    said = pending.said
    if bed is None:
        return Dropped("Not recorded.") if answer.yes is False else NoAnswer()
    match said:
        case Report(fact=Moved() as fact) if pending.slot == "to_bed":
            return Retake(replace(said, fact=replace(fact, to_bed=bed)), pending.grant)
        case Report(fact=Moved() as fact):
            return Retake(replace(said, bed=bed, fact=replace(fact, from_bed=bed)), pending.grant)
        case Report() | Amount() | Fix() | TakeBack():
            return Retake(replace(said, bed=bed), _heard(bedside, pending.grant))
        case _:
            return NoAnswer()


def _tube(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Report | Amount)
    drain = _named(bedside, pending, answer)
    if drain is not None:
        return Retake(pending.said, replace(pending.grant, drain=drain))
    if answer.tube is not None:
        return Retake(replace(pending.said, tube=answer.tube), pending.grant)
    return Dropped("Not recorded.") if answer.yes is False else NoAnswer()


def _named(bedside: Bedside, pending: Pending, answer: Answered) -> str | None:
    """The candidate drain that the answer names: by its tube, its number, or its place."""
    said = answer.tube or (str(answer.level_ml) if answer.level_ml is not None else None)
    for drain in pending.drains:
        ledger = bedside.ledger(drain)
        if said is not None and (ledger.tube == said or said in ledger.joined):
            return drain
    place = {"first": 0, "second": 1}.get(answer.choice or "")
    return pending.drains[place] if place is not None and place < len(pending.drains) else None


def _other_tube(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
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


def _slot(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    value = slot_value(bedside, pending, answer)
    if value is None:
        return Dropped("Not recorded.") if answer.yes is False else NoAnswer()
    assert isinstance(pending.said, Slots)
    slots = filled(pending.said, pending.slot, value)
    whole = built(slots)
    if isinstance(whole, Lacking):
        return StillLacks(slots, whole.slot)
    return Retake(whole, _heard(bedside, pending.grant))


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
        case "kind" | "what" | "reason" | "topic" | "window":
            return None
        case _:
            return answer.level_ml


def _reading(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    chosen = _chosen(bedside, pending, answer)
    if chosen is not None and chosen < len(pending.readings):
        return Retake(pending.readings[chosen], _heard(bedside, pending.grant))
    if answer.yes is False:
        return Dropped("Not recorded. Say it again.")
    if isinstance(pending.said, Slots) and pending.slot not in ("kind", "at") and answer.level_ml is not None:
        return _slot(bedside, replace(pending, choices=()), answer)
    return NoAnswer()


def _chosen(bedside: Bedside, pending: Pending, answer: Answered) -> int | None:
    """The place of the one choice that the answer names; None when it names none, or several."""
    place = {"first": 0, "second": 1}.get(answer.choice or "")
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


def _heard_answer(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    said = pending.said
    match answer:
        case Answered(level_ml=int(level)) if isinstance(said, Report | Fix) and level != level_of(said):
            return Retake(with_level(said, level), _heard(bedside, pending.grant))
        case Answered(yes=True) | Answered(yes=None, level_ml=int()) if isinstance(
            said, Report | Fix | Amount
        ):
            return Retake(said, granted(pending))
        case Answered(yes=False) | Answered(choice="misread"):
            return Dropped("Not recorded. Say it again.")
        case _:
            return NoAnswer()


def _final(_: Bedside, __: Pending, answer: Answered) -> Verdict:
    if answer.level_ml is not None:
        return FinalTold(answer.level_ml)
    if answer.yes is False:
        return Dropped('Not read: sums across this exchange stay "at least".')
    return NoAnswer()


def _opening(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    ledger = bedside.ledger(pending.drains[0])
    if answer.level_ml is None or ledger.bed is None:
        return (
            Dropped("No opening level: the first line will be the baseline.")
            if answer.yes is False
            else NoAnswer()
        )
    reading = Report(bed=ledger.bed, tube=ledger.tube, at=answer.at, fact=Line(level_ml=answer.level_ml))
    return Retake(reading, _heard(bedside, Grant(drain=ledger.drain)))


def _yes_no(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """A placement on an open drain, or an exchange told twice: again, or not."""
    assert isinstance(pending.said, Report | Fix)
    match answer.yes:
        case True:
            fresh = pending.ask is Ask.ON_OPEN
            return Retake(pending.said, replace(granted(pending), fresh=fresh))
        case False:
            return Dropped("Nothing was changed.")
        case None:
            return NoAnswer()


def _other_level(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
    if answer.level_ml is not None:
        return OtherWrong(pending.targets[0], answer.level_ml)
    return OtherWrong(pending.targets[0], None, unknown=True) if answer.yes is False else NoAnswer()


def _which(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    assert isinstance(pending.said, Fix | TakeBack)
    target = _target_named(bedside, pending, answer)
    if target is None:
        return Dropped("Nothing was changed.") if answer.yes is False else NoAnswer()
    grant = replace(pending.grant, target=target, drain=target.rpartition("-")[0])
    return Retake(pending.said, grant)


def _target_named(bedside: Bedside, pending: Pending, answer: Answered) -> str | None:
    place = {"first": 0, "second": 1}.get(answer.choice or "")
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


def _occupied(_: Bedside, pending: Pending, answer: Answered) -> Verdict:
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


def hhmm(bedside: Bedside, number: int) -> datetime | None:
    """The latest moment, not after now, that a bare 24-hour number names (1900); None when it names none."""
    hour, minute = divmod(number, 100)
    if not (100 <= number <= 2359 and hour < 24 and minute < 60) and number != 0:
        return None
    zone = bedside.context.unit.zone
    local = bedside.context.said_at.astimezone(zone)
    moment = local.replace(hour=hour, minute=minute, second=0, microsecond=0)
    if moment > local:
        moment = (local - timedelta(days=1)).replace(hour=hour, minute=minute, second=0, microsecond=0)
    return moment.astimezone(bedside.now.tzinfo)


_BY_ASK: Final[Mapping[Ask, Callable[[Bedside, Pending, Answered], Verdict]]] = {
    Ask.DOUBT: _doubt,
    Ask.CONFLICT: _conflict,
    Ask.SILENCE: _silence,
    Ask.GONE: _gone,
    Ask.NOT_YET: _not_yet,
    Ask.AMOUNT: _amount,
    Ask.LEVEL: _level,
    Ask.BED: _bed,
    Ask.TUBE: _tube,
    Ask.OTHER_TUBE: _other_tube,
    Ask.SLOT: _slot,
    Ask.READING: _reading,
    Ask.HEARD: _heard_answer,
    Ask.FINAL: _final,
    Ask.OPENING: _opening,
    Ask.ON_OPEN: _yes_no,
    Ask.CHANGED_AGAIN: _yes_no,
    Ask.OTHER_LEVEL: _other_level,
    Ask.WHICH: _which,
    Ask.SURE: _yes_no,
    Ask.OCCUPIED: _occupied,
}
