"""What an answer leads to, as values; and what answers of every kind share.

`answers` chooses by the question; `settling` acts on the verdict.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import TypeAlias

from bot.dialogue.bedside import Bedside
from bot.dialogue.pending import Grant, Pending, is_query
from bot.dialogue.said import Amount, Answered, Fix, Report, Said, Slots
from bot.engine.entries import Line
from bot.wording.readback import dropped_text


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
    """The statement is not recorded, or nothing changes; `text` says so."""

    text: str


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


def not_recorded(pending: Pending, then: str = "") -> Dropped:
    """What is not recorded, by its name; `then`: what to do about it."""
    what = "" if is_query(pending) else pending.brief
    return Dropped(f"{dropped_text(what)} {then}".rstrip())


def declined(pending: Pending, answer: Answered) -> Verdict:
    """What becomes of a reading at an answer that names nothing for it: a "no" drops it."""
    return not_recorded(pending) if answer.yes is False else NoAnswer()


def heard(bedside: Bedside, grant: Grant) -> Grant:
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


def granted(pending: Pending) -> Grant:
    """What is granted once the nurse says that it is right."""
    accepted = tuple(dict.fromkeys((*pending.grant.accepted, *pending.asked)))
    return replace(pending.grant, accepted=accepted, heard=True)


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
