"""What a question holds back: the statement, what is granted already, and what its answers lead to.

Stored as JSON with the question, so that it survives a restart and is decided on the ledger as it is then.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from bot.dialogue.said import NotSure, Query, Said, Slots, Value
from bot.dialogue.said_json import known, loaded
from bot.dialogue.slots import lacks_number
from bot.store.questions import Question


class Ask(StrEnum):
    """Why a question was asked; chooses how its answers are taken."""

    DOUBT = "doubt"
    """The level fell, is over the capacity, or far above the line before."""
    CONFLICT = "conflict"
    SILENCE = "silence"
    GONE = "gone"
    NOT_YET = "not_yet"
    CAME = "came"
    """The drain that is in this bed now was in another one at the moment that was said."""
    AMOUNT = "amount"
    LEVEL = "level"
    BED = "bed"
    TUBE = "tube"
    OTHER_TUBE = "other_tube"
    SLOT = "slot"
    READING = "reading"
    HEARD = "heard"
    FINAL = "final"
    OPENING = "opening"
    ON_OPEN = "on_open"
    OTHER_LEVEL = "other_level"
    WHICH = "which"
    SURE = "sure"
    CHANGED_AGAIN = "changed_again"
    READ_ON = "read_on"
    """An exchange told late: whether the line behind it was read on the new canister."""
    OCCUPIED = "occupied"
    WHO = "who"


NO_READING = frozenset({Ask.FINAL, Ask.OPENING})
"""Questions that hold back nothing: what was told is recorded, only more was asked for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Grant:
    """What was asked about a statement and settled, so that it is not asked again.

    accepted: marks of the doubts that the nurse was asked about and kept. heard: read back and right.
    drain: the drain that it is about. fresh: a new drain is wanted. closes: the drain in whose place that
    comes. target: the entry that it puts right.
    """

    accepted: tuple[str, ...] = ()
    heard: bool = False
    drain: str | None = None
    fresh: bool = False
    closes: str | None = None
    target: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Pending:
    """One question's statement.

    asked: marks of the doubts that a yes accepts. drains, targets: the candidates, in the order in which
    they were named. choices, readings: the values and whole statements that stand. rest: what was said
    after it and waits for it. brief: what reminders call it.
    """

    ask: Ask
    said: Said | Slots | None = None
    grant: Grant = Grant()
    asked: tuple[str, ...] = ()
    drains: tuple[str, ...] = ()
    targets: tuple[str, ...] = ()
    slot: str = ""
    choices: tuple[Value, ...] = ()
    readings: tuple[Said, ...] = ()
    rest: tuple[Said | NotSure, ...] = ()
    brief: str = ""


def holds_reading(pending: Pending) -> bool:
    """Whether something that may belong on a ledger waits for the answer."""
    return pending.ask not in NO_READING and not is_passing(pending) and not is_bare(pending)


def is_unconfirmed(question: Question, now: datetime) -> bool:
    """Whether a reading hangs on the question, and nobody answered in time."""
    return question.lapsed(now) and holds_reading(loaded(question.said_json, Pending))


def is_bare(pending: Pending) -> bool:
    """Whether only an amount was asked for of which no number is known: nothing is lost with it."""
    bare = isinstance(pending.said, Slots) and lacks_number(pending.said)
    return bare and not (pending.choices or pending.readings or pending.rest)


def is_passing(pending: Pending) -> bool:
    """Whether nothing but a query or a "seen" waits: no ledger lacks it, no reply recalls it."""
    return is_query(pending) or is_seen(pending)


def is_seen(pending: Pending) -> bool:
    """Whether only a "seen" waits, for its bed."""
    return isinstance(pending.said, Slots) and pending.said.kind == "acknowledged"


def is_query(pending: Pending) -> bool:
    """Whether only something asked of the bot waits for the answer."""
    match pending.said:
        case Query() | Slots(kind="asked"):
            return True
        case None:
            return bool(pending.readings) and all(isinstance(each, Query) for each in pending.readings)
        case _:
            return False


known((Ask, Grant, Pending))
