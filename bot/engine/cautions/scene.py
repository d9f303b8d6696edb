"""What the checks look at: a patient at a moment under a policy, and the rows that apply to each drain."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any, NamedTuple

from bot.engine.entries import Checked, Incident, What
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.policy import Policy, Rule
from bot.engine.rates import Rate
from bot.engine.series import Series, series_of
from bot.engine.values import Caution

BLOODY = frozenset({"sanguineous", "bright_red", "dark_red"})
_PLACES = frozenset(
    {"left", "right", "pleural", "apical", "basal", "basilar", "anterior", "posterior", "lateral"}
)
_HOUR = timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class Subject:
    """One drain, or several of the patient taken together, with their totals over time."""

    drains: tuple[Ledger, ...]
    series: Series
    weight_kg: float | None
    measured: dict[timedelta | None, Rate | None] = field(default_factory=dict, compare=False)
    """The highest amounts by window, and with none the highest rate: several rows look at the same."""

    @property
    def drain(self) -> Ledger | None:
        """The drain when it is one alone; none for the sum of several."""
        return self.drains[0] if len(self.drains) == 1 else None

    @property
    def begun_at(self) -> datetime | None:
        """The later of placement and first line here; of several drains the latest."""
        known = [at for drain in self.drains for at in (drain.placed_at, drain.first_at) if at]
        return max(known, default=None)

    def inside(self, rule: Rule, begin: datetime, end: datetime) -> bool:
        """True when a stretch lies within the hours that the row looks at; unknown counts as within.

        An hour is placed by its middle; a longer stretch must lie within as a whole, give or take 15 min.
        """
        since = self.begun_at
        if since is None:
            return True
        after = since + timedelta(hours=rule.after_h or 0)
        until = since + timedelta(hours=rule.within_h) if rule.within_h is not None else None
        if end - begin <= _HOUR * 1.25:
            middle = begin + (end - begin) / 2
            return (not rule.after_h or middle >= after) and (until is None or middle < until)
        slack = _HOUR / 4
        return (not rule.after_h or begin >= after - slack) and (until is None or end <= until + slack)


@dataclass(slots=True)
class Scene:
    """A patient's drains now, under the unit's policy. Made once per reckoning."""

    patient: Patient
    now: datetime
    policy: Policy
    _subjects: dict[tuple[str, ...], Subject] = field(default_factory=dict)

    def rules(self, code: str) -> tuple[Rule, ...]:
        """The rows of that code that are on for the unit's population."""
        return self.policy.rows(code)

    def covered(self, rule: Rule) -> tuple[Ledger, ...]:
        """The drains that the row is for."""
        if rule.is_for_all:
            return self.patient.drains
        return tuple(drain for drain in self.patient.drains if _covers(rule, drain))

    def met(self, code: str) -> Iterator[tuple[Rule, Ledger]]:
        """Each row of that code with each drain that it is for."""
        return ((rule, drain) for rule in self.rules(code) for drain in self.covered(rule))

    def subjects(self, rule: Rule) -> Iterator[Subject]:
        """Each drain that the row is for, then their sum where there are several."""
        covered = self.covered(rule)
        for drain in covered:
            yield self._subject((drain,))
        if len(covered) > 1:
            yield self._subject(covered)

    def _subject(self, drains: tuple[Ledger, ...]) -> Subject:
        key = tuple(drain.drain for drain in drains)
        if key not in self._subjects:
            self._subjects[key] = Subject(drains, series_of(drains), self.patient.weight_kg)
        return self._subjects[key]


def _covers(rule: Rule, drain: Ledger) -> bool:
    return (
        rule.is_for(drain.reason)
        and (not rule.mediastinal or may_be_mediastinal(drain))
        and (not rule.bloody or _may_be_bloody(drain))
    )


def raised(rule: Rule, drain: Ledger | None, **said: object) -> Caution:
    """The caution of a row, on a drain (on the patient's drains together where it is none)."""
    return Caution(
        code=rule.code,
        severity=rule.severity,
        rule=rule.id,
        source=rule.source,
        drain=drain.drain if drain else None,
        tube=drain.tube if drain else None,
        **said,  # type: ignore[arg-type]
    )


def may_be_mediastinal(drain: Ledger) -> bool:
    """True for a mediastinal tube, and for one whose name says no place (none, `A`, `1`)."""
    names = drain.joined or (drain.tube or "",)
    return any("mediastinal" in name or not _PLACES & {*name.split()} for name in names)


def is_mediastinal(drain: Ledger) -> bool:
    """True when every tube of the drain is told to be mediastinal."""
    return all("mediastinal" in name for name in drain.joined or (drain.tube or "",))


def _may_be_bloody(drain: Ledger) -> bool:
    """True where the fluid was last named so, or was never named."""
    fluid = last_found(drain, "fluid")
    return fluid is None or fluid.value in BLOODY


class Found(NamedTuple):
    """What a check found of one thing, and when."""

    value: Any
    at: datetime


def all_found(drain: Ledger, slot: str) -> Iterator[Found]:
    """All that checks found of one thing, the latest first; where nobody looked at it is nothing."""
    checks = reversed(drain.of_kind(Checked))
    return (Found(value, entry.at) for entry, check in checks if (value := getattr(check, slot)) is not None)


def last_found(drain: Ledger, slot: str) -> Found | None:
    """What was found of it last; none when nobody looked at it."""
    return next(all_found(drain, slot), None)


def clamped_spells(drain: Ledger) -> tuple[tuple[datetime, datetime | None], ...]:
    """When the tube was clamped, from and until (none: it still is)."""
    spells: list[tuple[datetime, datetime | None]] = []
    for entry, incident in drain.of_kind(Incident):
        on = bool(spells) and spells[-1][1] is None
        if incident.what is What.CLAMPED and not on:
            spells.append((entry.at, None))
        elif incident.what is What.UNCLAMPED and on:
            spells[-1] = (spells[-1][0], entry.at)
    return tuple(spells)
