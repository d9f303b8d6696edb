"""Ledgers for the export tests, told the way a nurse would: moments in ward time, entries in order."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from bot.engine.entries import Entry, Payload
from bot.engine.ledger import Ledger, fold
from bot.engine.policy import Policy, Schedule
from bot.unit import Person, Role, Unit

ZONE = ZoneInfo("America/New_York")
DRAIN = "00d1a2b3c4d5e6f7"
UNIT = Unit(
    id="ward-4",
    name="Ward 4",
    zone=ZONE,
    beds=tuple(str(bed) for bed in range(1, 25)),
    people=(Person(id="rn-1", name="Amy", role=Role.NURSE),),
    policy=Policy(schedule=Schedule(zone=ZONE), rules=()),
)


def moment(told: str) -> datetime:
    """Ward time as UTC: "4 19:00" is 4 March 2026 at 19:00."""
    day, clock = told.split()
    hour, minute = clock.split(":")
    return datetime(2026, 3, int(day), int(hour), int(minute), tzinfo=ZONE).astimezone(UTC)


@dataclass
class Rows:
    """A drain's entries, told one after the other."""

    drain: str = DRAIN
    entries: list[Entry] = field(default_factory=list)

    def tell(self, at: str, payload: Payload, *, entered: str | None = None, who: str = "rn-1") -> Entry:
        """One more entry, recorded two minutes after it happened unless said."""
        position = len(self.entries) + 1
        happened = moment(at)
        recorded = moment(entered) if entered else happened + timedelta(minutes=2)
        entry = Entry(
            drain=self.drain,
            position=position,
            at=happened,
            entered=recorded,
            who=who,
            message=f"msg-{position}",
            payload=payload,
        )
        self.entries.append(entry)
        return entry

    @property
    def ledger(self) -> Ledger:
        """The ledger of all that was told."""
        return fold(self.entries)
