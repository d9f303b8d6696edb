"""A drain's sheet for tests: entries told one by one, in ward words, on an invented day in one zone."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.engine.cautions import all_cautions, cautions
from bot.engine.entries import (
    Correction,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Payload,
    Placed,
    Reason,
    What,
    Withdrawal,
)
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.policy import Policy, Schedule
from bot.engine.values import Caution

ZONE = ZoneInfo("America/New_York")
SCHEDULE = Schedule(zone=ZONE)
THREE_SHIFTS = Schedule(zone=ZONE, starts=(time(7), time(15), time(23)))
ADULT = Policy(schedule=SCHEDULE)
CHILD = replace(ADULT, population="child")


def at(clock: str, day: int = 4, month: int = 3) -> datetime:
    """The moment of a wall-clock time of 2026 (4 March is a Wednesday), in UTC; "24:30" is the next day."""
    hours, minutes = (int(part) for part in clock.split(":"))
    local = datetime(2026, month, day, tzinfo=ZONE) + timedelta(days=hours // 24)
    return local.replace(hour=hours % 24, minute=minutes).astimezone(UTC)


@dataclass(slots=True)
class Sheet:
    """Entries of one drain, in the order told. Each method gives the id of its entry."""

    drain: str = "a" * 16
    entries: list[Entry] = field(default_factory=list)

    def tells(self, moment: datetime | str, payload: Payload, *, told: datetime | str | None = None) -> str:
        """Anything that can be told."""
        happened = at(moment) if isinstance(moment, str) else moment
        entered = at(told) if isinstance(told, str) else told or happened
        entry = Entry(
            drain=self.drain,
            position=len(self.entries) + 1,
            at=happened,
            entered=entered,
            who="rn-1",
            message=f"msg-{len(self.entries) + 1}",
            payload=payload,
        )
        self.entries.append(entry)
        return entry.id

    def placed(
        self,
        moment: datetime | str,
        *,
        tube: str | None = None,
        opening_ml: int | None = 0,
        reason: Reason | None = None,
        weight_kg: float | None = None,
    ) -> str:
        """A placement; the canister opens at 0 unless said."""
        return self.tells(
            moment, Placed(bed="12", tube=tube, opening_ml=opening_ml, reason=reason, weight_kg=weight_kg)
        )

    def mark(self, moment: datetime | str, level_ml: int, *, closing: bool = False) -> str:
        """A line."""
        return self.tells(moment, Line(level_ml=level_ml, closing=closing))

    def marks(self, **levels: int) -> None:
        """Several lines: marks(t1900=1050, t2000=1080)."""
        for clock, level_ml in levels.items():
            self.mark(f"{clock[1:3]}:{clock[3:]}", level_ml)

    def exchanged(self, moment: datetime | str, final_ml: int | None = None, opening_ml: int = 0) -> str:
        """An exchange, the old canister's final level before it where it is told."""
        if final_ml is not None:
            self.tells(moment, FinalLevel(level_ml=final_ml))
        return self.tells(moment, Exchanged(opening_ml=opening_ml))

    def happens(self, moment: datetime | str, what: What) -> str:
        """An incident."""
        return self.tells(moment, Incident(what=what))

    def corrects(self, target: str, level_ml: int | None = None, moment: datetime | None = None) -> str:
        """A correction of the entry named."""
        return self.tells(self.entries[-1].entered, Correction(target=target, level_ml=level_ml, at=moment))

    def withdraws(self, target: str) -> str:
        """A withdrawal of the entry named."""
        return self.tells(self.entries[-1].entered, Withdrawal(target=target))

    @property
    def ledger(self) -> Ledger:
        """The ledger of all entries told."""
        return fold(self.entries)

    def totals(self) -> tuple[int, ...]:
        """The total at each level."""
        return tuple(level.total_ml for level in self.ledger.levels)


def hourly(
    *amounts: int,
    reason: Reason | None = None,
    tube: str | None = None,
    weight_kg: float | None = None,
    drain: str = "a" * 16,
    begin: str = "08:00",
    every: int = 60,
) -> Sheet:
    """A drain placed at 08:00 on an empty canister, with a line every hour that adds these amounts."""
    sheet = Sheet(drain=drain)
    sheet.placed(begin, reason=reason, tube=tube, weight_kg=weight_kg)
    level = 0
    for number, amount in enumerate(amounts, start=1):
        level += amount
        sheet.mark(at(begin) + number * timedelta(minutes=every), level)
    return sheet


def raised(
    *sheets: Sheet, policy: Policy = ADULT, now: datetime | None = None, every_row: bool = False
) -> tuple[Caution, ...]:
    """The cautions of a bed with these drains, a minute after the last thing that happened."""
    patient = Patient(bed="12", drains=tuple(sheet.ledger for sheet in sheets))
    last = max(entry.at for sheet in sheets for entry in sheet.entries)
    return (all_cautions if every_row else cautions)(patient, now or last + timedelta(minutes=1), policy)


def rules(*sheets: Sheet, policy: Policy = ADULT, now: datetime | None = None) -> set[str]:
    """The ids of all rows that are met."""
    return {caution.rule for caution in raised(*sheets, policy=policy, now=now, every_row=True)}


def codes(*sheets: Sheet, policy: Policy = ADULT, now: datetime | None = None) -> set[str]:
    """The codes of the cautions raised."""
    return {caution.code for caution in raised(*sheets, policy=policy, now=now)}


def only(*sheets: Sheet, code: str, policy: Policy = ADULT, now: datetime | None = None) -> Caution:
    """The one caution of that code."""
    (found,) = (one for one in raised(*sheets, policy=policy, now=now) if one.code == code)
    return found
