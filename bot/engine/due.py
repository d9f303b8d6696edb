"""What is expected of a bed: the next line, the closing line of the shift, the next check.

Nothing is due while the patient is away; after that, what fell due meanwhile is due at the return.
Hourly lines: Royal Marsden Manual, procedure 8.4. Checks hourly in children and after surgery, at least
4-hourly on adult wards: SCHN 2015-9017, NSW ACI. Both are settings.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from bot.engine.entries import Checked
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.policy import Policy
from bot.engine.shifts import CLOSING_REACH, boundary, shift_at
from bot.engine.values import Due

_LATE = timedelta(minutes=15)
"""As an hour is 45 to 75 min, so a line is overdue when over 15 min late. Common practice, no source."""


def due(patient: Patient, now: datetime, policy: Policy) -> tuple[Due, ...]:
    """What is expected at the bed's open drains, the soonest first; nothing while the patient is away."""
    found = [
        one
        for drain in patient.drains
        if drain.is_open() and not drain.away
        for one in _due(drain, now, policy)
    ]
    return tuple(sorted(found, key=lambda one: (one.at, one.what, one.drain)))


def last_check(drain: Ledger) -> datetime | None:
    """When the drain was last checked; none when it never was."""
    checks = drain.of_kind(Checked)
    return checks[-1][0].at if checks else None


def begun_at(drain: Ledger) -> datetime | None:
    """When the drain was first heard of here."""
    return drain.live[0].at if drain.live else None


def _due(drain: Ledger, now: datetime, policy: Policy) -> Iterator[Due]:
    since = begun_at(drain)
    if since is None:
        return
    last = drain.last
    every = timedelta(hours=policy.lines_every_h(drain.reason))
    yield _item(drain, "line", last.at + every if last else since, now, _LATE)
    yield from _closing(drain, now, policy)
    every = timedelta(hours=policy.check_every_h)
    yield _item(drain, "check", (last_check(drain) or since) + every, now, _LATE)


def _closing(drain: Ledger, now: datetime, policy: Policy) -> Iterator[Due]:
    """The line of the shift's end; that of the shift before while it can still be told (2 h)."""
    shift = shift_at(policy.schedule, now)
    first = drain.first_at
    if first is not None and first < shift.start and now - shift.start <= CLOSING_REACH:
        found = boundary(drain, policy.schedule, shift.start)
        if found is None or not found.lined:
            yield _item(drain, "closing", shift.start, now, policy.schedule.grace)
    ahead = boundary(drain, policy.schedule, shift.end)
    if ahead is None or ahead.how != "closing":
        yield _item(drain, "closing", shift.end, now, policy.schedule.grace)


def _item(drain: Ledger, what: str, at: datetime, now: datetime, grace: timedelta) -> Due:
    moment = max(at, drain.back_at) if drain.back_at else at
    return Due(what=what, drain=drain.drain, at=moment, overdue=now - moment > grace)  # type: ignore[arg-type]
