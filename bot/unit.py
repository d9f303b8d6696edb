"""A unit, which is a ward: its beds, time zone, shifts, people and policy, read from one TOML file.

`load_unit(path)` gives a frozen `Unit`, checked, or raises ConfigError naming the file and the key.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta
from enum import StrEnum
from importlib import resources
from itertools import pairwise
from pathlib import Path
from typing import Literal, cast
from zoneinfo import ZoneInfo

from bot.config import ConfigError, Table, read_toml
from bot.engine.entries import Reason
from bot.engine.policy import (
    Policy,
    PolicyError,
    Rule,
    RuleOverride,
    Schedule,
    amended_rules,
    default_rules,
)

_BED = re.compile(r"[A-Z0-9]{1,8}(-[A-Z0-9]{1,4})?")
_RANGE = re.compile(r"(\d{1,3})-(\d{1,3})")
_HHMM = re.compile(r"([01]\d|2[0-3]):([0-5]\d)")
_MOST_BEDS = 500
_SHORTEST_SHIFT = timedelta(hours=1)


class Role(StrEnum):
    """What a person may do: read and write; correct earlier shifts too; only read."""

    NURSE = "nurse"
    CHARGE = "charge"
    READER = "reader"


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone on the unit's list. `id` is what the gateway sends as sender; `until` None: for good.

    `shared`: a ward phone that several people write from; it asks who is writing.
    """

    id: str
    name: str
    role: Role
    until: datetime | None = None
    shared: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Notify:
    """Who is told of what they did not ask about, in this order of ids, the next one when nobody says "seen".

    Someone may be named here and enrolled later; who is not on the unit's list is passed over.
    `escalate` for what is urgent, `escalate_reminders` for overdue lines and unconfirmed readings. A notice
    that says the same as one of the last `quiet` is not sent again.
    """

    people: tuple[str, ...] = ()
    escalate: timedelta = timedelta(minutes=10)
    escalate_reminders: timedelta = timedelta(minutes=30)
    quiet: timedelta = timedelta(minutes=60)


@dataclass(frozen=True, slots=True, kw_only=True)
class Unit:
    """A ward as its file describes it."""

    id: str
    name: str
    zone: ZoneInfo
    beds: tuple[str, ...]
    people: tuple[Person, ...] = ()
    policy: Policy
    voice_confirm: Literal["always", "unsure"] = "always"
    checklists: bool = True
    undo_min: int = 30
    month_first: bool = True
    notify: Notify = Notify()
    names: Mapping[str, str] = field(init=False, repr=False, compare=False)
    """What everyone on the list is called, by id."""
    _by_id: Mapping[str, Person] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        by_id = {person.id: person for person in self.people}
        object.__setattr__(self, "_by_id", by_id)
        object.__setattr__(self, "names", {person.id: person.name for person in by_id.values()})

    def person(self, sender: str) -> Person | None:
        """Who sends under that id, by the unit file."""
        return self._by_id.get(sender)


def load_unit(path: str | Path) -> Unit:
    """The unit that the file describes."""
    return _unit(read_toml(Path(path)))


def demo_unit() -> Unit:
    """An invented ward, for the terminal and the tests."""
    with resources.as_file(resources.files("bot") / "demo.toml") as path:
        return load_unit(path)


def load_units(paths: Iterable[str | Path]) -> tuple[Unit, ...]:
    """The units of a deployment; two of one id are refused."""
    units: dict[str, Unit] = {}
    for path in paths:
        unit = load_unit(path)
        if unit.id in units:
            raise ConfigError(str(path), "id", f"another unit is called {unit.id} too")
        units[unit.id] = unit
    return tuple(units.values())


def _unit(table: Table) -> Unit:
    name = _label(table, "name")
    zone = _zone(table)
    policy = _policy(table, _schedule(table, zone))
    unit = Unit(
        id=_slug(table, name),
        name=name,
        zone=zone,
        beds=_beds(table),
        people=_people(table),
        policy=policy,
        voice_confirm=cast(
            Literal["always", "unsure"], table.one_of("voice_confirm", ("always", "unsure"), "always")
        ),
        checklists=table.taken("checklists", bool, True),
        undo_min=table.whole("undo_min", 30, 0, 240),
        month_first=table.taken("month_first", bool, True),
        notify=_notify(table.table("notify")),
    )
    table.done()
    return unit


def _label(table: Table, key: str) -> str:
    value = table.taken(key, str).strip()
    if not (0 < len(value) <= 40 and value.isprintable()):
        raise table.error(key, "must be 1 to 40 printable characters")
    return value


def _slug(table: Table, name: str) -> str:
    slug = table.taken("id", str, re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-"))
    if not re.fullmatch(r"[a-z0-9][a-z0-9-]{0,39}", slug):
        raise table.error("id", "must be 1 to 40 lower-case letters, digits and hyphens")
    return slug


def _zone(table: Table) -> ZoneInfo:
    key = table.taken("zone", str)
    try:
        return ZoneInfo(key)
    except (OSError, ValueError, LookupError) as error:
        raise table.error("zone", f"{key!r} is not a time zone (such as America/New_York)") from error


def _beds(table: Table) -> tuple[str, ...]:
    beds = _bed_list(table) if not isinstance(table.peek("beds"), str) else _bed_ranges(table)
    doubled = next((bed for bed in beds if beds.count(bed) > 1), None)
    if doubled is not None:
        raise table.error("beds", f"bed {doubled} is there twice")
    if not 0 < len(beds) <= _MOST_BEDS:
        raise table.error("beds", f"must be from 1 to {_MOST_BEDS} beds")
    return beds


def _bed_list(table: Table) -> tuple[str, ...]:
    return tuple(_bed(table, label) for label in table.words("beds"))


def _bed_ranges(table: Table) -> tuple[str, ...]:
    """ "1-24", or several ranges and labels with commas between."""
    beds: list[str] = []
    for part in table.taken("beds", str).split(","):
        ends = _RANGE.fullmatch(part.strip())
        if ends is None:
            beds.append(_bed(table, part))
            continue
        first, last = int(ends[1]), int(ends[2])
        if first >= last:
            raise table.error("beds", f"{part.strip()} is not a range that rises")
        beds.extend(str(number) for number in range(first, last + 1))
    return tuple(beds)


def _bed(table: Table, label: str) -> str:
    bed = label.strip().upper()
    if not _BED.fullmatch(bed):
        raise table.error("beds", f"{label!r} is not a bed label (such as 12, 12A, CT4)")
    return bed


def _schedule(table: Table, zone: ZoneInfo) -> Schedule:
    starts = tuple(_clock(table, "shifts", text) for text in table.words("shifts", ("07:00", "19:00")))
    if not starts:
        raise table.error("shifts", "must name at least one start")
    shortest = _shortest(table, starts)
    grace = timedelta(minutes=table.whole("boundary_grace_min", 30, 0, 240))
    if grace * 2 > shortest:
        raise table.error("boundary_grace_min", "must be at most half of the shortest shift")
    day_starts = _clock(table, "day_starts", table.taken("day_starts", str, "07:00"))
    return Schedule(zone=zone, starts=starts, day_starts=day_starts, grace=grace)


def _shortest(table: Table, starts: tuple[time, ...]) -> timedelta:
    """The shortest shift; starts out of order, twice or too near each other are refused."""
    minutes = [start.hour * 60 + start.minute for start in starts]
    if any(later <= earlier for earlier, later in pairwise(minutes)):
        raise table.error("shifts", "must be in the order of the day, each start once")
    lengths = [later - earlier for earlier, later in pairwise([*minutes, minutes[0] + 24 * 60])]
    shortest = timedelta(minutes=min(lengths))
    if shortest < _SHORTEST_SHIFT:
        raise table.error("shifts", "overlap: starts must be at least 1 h apart")
    return shortest


def _clock(table: Table, key: str, text: str) -> time:
    found = _HHMM.fullmatch(text)
    if found is None:
        raise table.error(key, f"{text!r} is not a time such as 07:00")
    return time(int(found[1]), int(found[2]))


def _policy(table: Table, schedule: Schedule) -> Policy:
    return Policy(
        schedule=schedule,
        capacity_ml=table.whole("capacity_ml", 2000, 50, 10_000),
        chart_by=cast(Literal["mark", "shift"], table.one_of("chart_by", ("mark", "shift"), "mark")),
        population=cast(Literal["adult", "child"], table.one_of("population", ("adult", "child"), "adult")),
        jump_ml=table.whole("jump_ml", 500, 10, 5_000),
        line_every_h=_hours(table, "line_every_h", 1.0),
        check_every_h=_hours(table, "check_every_h", 4.0),
        line_every_by=_hours_by_reason(table),
        rules=_rules(table),
    )


def _rules(table: Table) -> tuple[Rule, ...]:
    """The default rows with what the unit's `[[policy]]` tables change."""
    try:
        overrides = [RuleOverride.from_table(row.rest()) for row in table.tables("policy")]
        return amended_rules(default_rules(), overrides)
    except PolicyError as wrong:
        raise table.error(f"policy.{wrong.row_id}", wrong.why) from wrong


def _hours_by_reason(table: Table) -> tuple[tuple[str, float], ...]:
    """Hours between lines, for the reasons that the unit's `[line_every_by]` table names."""
    row = table.table("line_every_by")
    hours = tuple(
        (reason.value, _hours(row, reason.value, 0.0)) for reason in Reason if row.has(reason.value)
    )
    row.done()
    return hours


def _hours(table: Table, key: str, default: float) -> float:
    value = float(table.taken(key, float, default))
    if not 0.25 <= value <= 48:
        raise table.error(key, f"must be from 0.25 to 48 hours, not {value}")
    return value


def _people(table: Table) -> tuple[Person, ...]:
    people: dict[str, Person] = {}
    for row in table.tables("people"):
        person = _person(row)
        if person.id in people:
            raise row.error("id", f"{person.id!r} is there twice")
        people[person.id] = person
    return tuple(people.values())


def _person(row: Table) -> Person:
    sender = row.taken("id", str)
    _check_sender(row, "id", sender)
    until = row.optional("until", datetime)
    if until is not None and until.tzinfo is None:
        raise row.error("until", "must be a moment with its offset")
    person = Person(
        id=sender,
        name=_label(row, "name"),
        role=Role(row.one_of("role", tuple(Role))),
        until=None if until is None else until.astimezone(UTC),
        shared=row.taken("shared", bool, False),
    )
    row.done()
    return person


def _check_sender(row: Table, key: str, sender: str) -> None:
    if not (0 < len(sender) <= 128 and sender.isprintable()):
        raise row.error(key, "must be 1 to 128 printable characters")


def _notify(row: Table) -> Notify:
    """Someone named there need not be in the file: people are enrolled by command too."""
    ids = row.words("people", ())
    for place, sender in enumerate(ids):
        _check_sender(row, "people", sender)
        if sender in ids[:place]:
            raise row.error("people", f"{sender!r} is there twice")
    standard = Notify()
    notify = Notify(
        people=ids,
        escalate=_minutes(row, "escalate_min", standard.escalate),
        escalate_reminders=_minutes(row, "escalate_reminders_min", standard.escalate_reminders),
        quiet=_minutes(row, "quiet_min", standard.quiet),
    )
    row.done()
    return notify


def _minutes(row: Table, key: str, standard: timedelta) -> timedelta:
    return timedelta(minutes=row.whole(key, standard // timedelta(minutes=1), 1, 24 * 60))
