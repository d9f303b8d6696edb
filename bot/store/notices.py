"""A notice as it is kept: something that must reach a person who did not ask, and what became of it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

Outcome = Literal["delivered", "failed", "refused"]
"""Taken by the receiver; not taken, to be tried again; not taken, and not to be sent there again."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """What happened to which bed; `unconfirmed` when it rests on a reading that is still asked about.

    `about`: the question that a reminder of an unconfirmed reading is about.
    """

    unit: str
    bed: str | None
    drain: str | None
    code: str
    text: str
    queued_at: datetime
    message: str
    unconfirmed: bool = False
    about: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Attempt:
    """One time that a notice was sent to a person; `status` is the HTTP answer, None without one."""

    notice: int
    person: str
    at: datetime
    outcome: Outcome
    status: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Filed:
    """A notice in the outbox under its number, with every attempt in order.

    `seen_at`: when someone said so; `over`: what it was about was settled or taken up since.
    """

    number: int
    notice: Notice
    attempts: tuple[Attempt, ...] = ()
    seen_at: datetime | None = None
    over: bool = False
