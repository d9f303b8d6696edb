"""The chat's clock: the real one, or one that the user set and that goes on ticking from there."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta, tzinfo

_HHMM = re.compile(r"([01]\d|2[0-3]):?([0-5]\d)")
_MINUTES = re.compile(r"\+(\d{1,4})(?: ?min(?:utes?)?)?")
_DAY = timedelta(days=1)


class ClockError(ValueError):
    """The clock cannot be set to that; says why."""


class Clock:
    """The moment of the next message. After the first message it only goes forward."""

    def __init__(self, zone: tzinfo, real: Callable[[], datetime] | None = None) -> None:
        self._zone = zone
        self._real = real or (lambda: datetime.now(UTC))
        self._ahead = timedelta()
        self._used: datetime | None = None

    def now(self) -> datetime:
        """The moment, in UTC."""
        return self._real().astimezone(UTC) + self._ahead

    def stamp(self) -> datetime:
        """The moment, given to a message: from here on the clock only goes forward."""
        self._used = self.now()
        return self._used

    def set(self, told: str) -> None:
        """Set to "18:55" (today; once used, the next such moment), "+45 minutes", or "real"."""
        if told == "real":
            self._jump(self._real())
        elif minutes := _MINUTES.fullmatch(told):
            self._jump(self.now() + timedelta(minutes=int(minutes[1])))
        elif hhmm := _HHMM.fullmatch(told):
            self._jump(self._at(int(hhmm[1]), int(hhmm[2])))
        else:
            raise ClockError("say 18:55, +45 minutes or real")

    def _at(self, hour: int, minute: int) -> datetime:
        local = self.now().astimezone(self._zone)
        moment = local.replace(hour=hour, minute=minute, second=0, microsecond=0)
        if self._used is not None and moment < self._used:
            moment += _DAY
        return moment

    def _jump(self, moment: datetime) -> None:
        if self._used is not None and moment < self._used:
            raise ClockError("a clock that was used does not go back")
        self._ahead = moment.astimezone(UTC) - self._real().astimezone(UTC)
