"""The checks on the record itself: what is missing, late, or was kept as the nurse said."""

from __future__ import annotations

from collections.abc import Iterator

from bot.engine.amend import outstanding
from bot.engine.cautions.scene import Scene, raised
from bot.engine.due import begun_at, due, last_check
from bot.engine.entries import Checked
from bot.engine.ledger import Ledger
from bot.engine.policy import Rule
from bot.engine.shifts import boundary, shift_at
from bot.engine.values import Caution, Due, Level


def line_fell(scene: Scene) -> Iterator[Caution]:
    """The last line is below the one before it, on the same canister."""
    for rule, drain in scene.met("line_fell"):
        last = drain.last
        if last and "line_fell" in last.codes:
            before = _before(drain, last)
            limit = before.level_ml if before and before.canister == last.canister else None
            yield raised(
                rule, drain, value=last.level_ml, limit=limit, unit="mL", comparison="under", end=last.at
            )


def jump(scene: Scene) -> Iterator[Caution]:
    """The last line is a large step up, kept as the nurse confirmed."""
    for rule, drain in scene.met("jump"):
        last = drain.last
        before = _before(drain, last) if last else None
        if last and before and "jump" in last.codes:
            volume = last.total_ml - before.total_ml
            yield raised(rule, drain, value=volume, unit="mL", begin=before.at, end=last.at)


def time_conflict(scene: Scene) -> Iterator[Caution]:
    """The last line was kept beside another level of the same minute."""
    for rule, drain in scene.met("time_conflict"):
        last = drain.last
        if last and "time_conflict" in last.codes:
            yield raised(rule, drain, value=last.level_ml, unit="mL", end=last.at)


def at_least(scene: Scene) -> Iterator[Caution]:
    """An old canister has no final level yet."""
    for rule, drain in scene.met("at_least"):
        missing = drain.effective(drain.final_missing[-1]) if drain.final_missing else None
        if missing is not None:
            yield raised(rule, drain, end=missing.at, detail="final level")


def no_boundary_line(scene: Scene) -> Iterator[Caution]:
    """No line was read near the start of the running shift, though there were lines before it."""
    schedule = scene.policy.schedule
    shift = shift_at(schedule, scene.now)
    for rule, drain in scene.met("no_boundary_line"):
        if (
            drain.first_at is None
            or drain.first_at >= shift.start
            or scene.now - shift.start <= schedule.grace
        ):
            continue
        found = boundary(drain, schedule, shift.start)
        if found is None or not found.lined:
            yield raised(rule, drain, begin=found.level.at if found else None, end=shift.start)


def overdue(scene: Scene) -> Iterator[Caution]:
    """A line, a closing line or a check that was expected and did not come.

    A check only where checks are told here at all: a unit that never tells one is not told so at each line.
    """
    expected: dict[tuple[str, str], list[Due]] = {}
    for one in due(scene.patient, scene.now, scene.policy):
        expected.setdefault((one.drain, f"overdue.{one.what}"), []).append(one)
    for rule, drain in scene.met("overdue"):
        for one in expected.get((drain.drain, rule.id), ()):
            minutes = (scene.now - one.at).total_seconds() / 60
            if rule.met_by(minutes) and not (one.what == "check" and not drain.of_kind(Checked)):
                yield _late(rule, drain, one, minutes)


def _late(rule: Rule, drain: Ledger, one: Due, minutes: float) -> Caution:
    return raised(
        rule,
        drain,
        value=minutes,
        limit=rule.value,
        unit="min",
        comparison=rule.comparison,
        begin=_last_done(drain, one),
        end=one.at,
        detail="closing line" if one.what == "closing" else one.what,
    )


def amended(scene: Scene) -> Iterator[Caution]:
    """Volumes that were given out have changed, and nobody has said that the chart was amended."""
    for rule, drain in scene.met("amended"):
        changes = outstanding(drain, scene.policy.schedule, scene.policy.chart_by)
        if changes:
            yield raised(rule, drain, begin=changes[0].begin, end=changes[-1].end)


def _last_done(drain: Ledger, one: Due) -> object:
    if one.what == "check":
        return last_check(drain) or begun_at(drain)
    return drain.last.at if drain.last else None


def _before(drain: Ledger, level: Level) -> Level | None:
    place = drain.place_of(level.entry)
    return drain.levels[place - 1] if place else None
