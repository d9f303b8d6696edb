"""What is to be sent to whom now, and what was given up: decided from the outbox, pure.

At least once: a send counts only when its attempt is kept, so what a crash lost is sent again, under the
same id. A notice goes to the first person on the unit's list; to the next when nobody said "seen" in time,
or when the one before cannot be reached.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.store.notices import Attempt, Filed, Notice
from bot.unit import Notify

REMINDERS = frozenset({"overdue", "unconfirmed"})
"""Codes that `penline remind` queues: less pressing than a danger."""

LASTS = timedelta(hours=24)
"""A notice that old is news to nobody: neither sent nor passed on, it stands in the list of the dead."""

NOBODY = ""
"""Whom a letter goes to while nobody of the unit can be told."""

_GROWS = (1, 3, 6, 12, 24, 60, 120, 360, 720, 1440, 2880)
"""The waits after the first, second ... failure, in units of the first wait."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Letter:
    """A notice on its way to one person; `id` is the same at every attempt, `rung` their place."""

    id: str
    filed: Filed
    person: str
    rung: int

    @property
    def attempts(self) -> tuple[Attempt, ...]:
        """What was tried to reach this person."""
        return tuple(each for each in self.filed.attempts if each.person == self.person)

    @property
    def delivered(self) -> bool:
        """Whether the receiver took it."""
        return any(each.outcome == "delivered" for each in self.attempts)


@dataclass(frozen=True, slots=True, kw_only=True)
class Round:
    """Who is there to be told at this moment, and how patiently it is tried again."""

    people: tuple[str, ...]
    notify: Notify
    first_wait: timedelta
    now: datetime


def sends(outbox: Iterable[Filed], at: Round) -> tuple[Letter, ...]:
    """The letters that are to be sent now: dangers before reminders, then in the order of queueing."""
    due = (letter for filed in _loud(outbox, at.notify) for letter in _due(filed, at))
    return tuple(
        sorted(due, key=lambda each: (_is_reminder(each.filed.notice), each.filed.number, each.rung))
    )


def dead(outbox: Iterable[Filed], at: Round) -> tuple[Letter, ...]:
    """The letters that were given up: refused, tried often enough, or too old before anyone had them.

    What grew old while there was nobody to tell is listed too, to no person.
    """
    return tuple(
        letter
        for filed in _loud(outbox, at.notify)
        for letter in _letters(filed, at) or _to_nobody(filed)
        if not letter.delivered and _is_dead(letter, at)
    )


def is_repeat(notice: Notice, earlier: Iterable[Notice], notify: Notify) -> bool:
    """Whether one of these, queued shortly before, says the same of the same drain, be it by another rule."""
    return any(
        _says_the_same(each, notice) and timedelta() <= notice.queued_at - each.queued_at < notify.quiet
        for each in earlier
    )


def _loud(outbox: Iterable[Filed], notify: Notify) -> Iterator[Filed]:
    """The notices that somebody must still hear of. What was over before counts as no earlier notice."""
    told: list[Notice] = []
    for filed in outbox:
        if is_repeat(filed.notice, told, notify):
            continue
        if not filed.over:
            told.append(filed.notice)
            if filed.seen_at is None:
                yield filed


def _says_the_same(one: Notice, other: Notice) -> bool:
    """A rule that sums a bed's drains names none of them."""
    drains = {one.drain, other.drain} - {None}
    return _words(one) == _words(other) and len(drains) < 2


def _words(notice: Notice) -> tuple[object, ...]:
    return (notice.bed, notice.unconfirmed, notice.about, notice.text)


def _letters(filed: Filed, at: Round) -> tuple[Letter, ...]:
    return tuple(
        Letter(id=letter_id(filed, person), filed=filed, person=person, rung=rung)
        for rung, person in enumerate(at.people, start=1)
    )


def _to_nobody(filed: Filed) -> tuple[Letter, ...]:
    return (Letter(id=letter_id(filed, NOBODY), filed=filed, person=NOBODY, rung=0),)


def _due(filed: Filed, at: Round) -> Iterator[Letter]:
    """Those whose turn has come, who have not got it, and whose last attempt is long enough ago."""
    turn: datetime | None = filed.notice.queued_at
    for letter in _letters(filed, at):
        if turn is None or turn > at.now:
            return
        if not letter.delivered and not _is_dead(letter, at) and _next_try(letter, at) <= at.now:
            yield letter
        turn = _next_turn(letter, at)


def _next_turn(letter: Letter, at: Round) -> datetime | None:
    """When the next person is told; None while this one was not tried yet."""
    if not letter.attempts:
        return at.now if _is_dead(letter, at) else None
    if not letter.delivered and _is_dead(letter, at):
        return letter.attempts[-1].at
    reminder = _is_reminder(letter.filed.notice)
    return letter.attempts[0].at + (at.notify.escalate_reminders if reminder else at.notify.escalate)


def _next_try(letter: Letter, at: Round) -> datetime:
    tried = letter.attempts
    if not tried:
        return letter.filed.notice.queued_at
    return tried[-1].at + at.first_wait * _GROWS[min(len(tried), len(_GROWS)) - 1]


def _is_dead(letter: Letter, at: Round) -> bool:
    tried: Sequence[Attempt] = letter.attempts
    refused = any(each.outcome == "refused" for each in tried)
    return refused or len(tried) > len(_GROWS) or at.now - letter.filed.notice.queued_at > LASTS


def _is_reminder(notice: Notice) -> bool:
    return notice.code in REMINDERS


def letter_id(filed: Filed, person: str) -> str:
    """The id by which a receiver knows a letter again: of this notice, to this person."""
    whose = f"{filed.notice.unit}\n{filed.notice.message}\n{person}"
    return f"notice-{filed.number}-{hashlib.sha256(whose.encode()).hexdigest()[:16]}"
