"""Cautions of the system: what happened to the drain, and what checks of it found."""

from __future__ import annotations

import pytest

from bot.engine.entries import (
    Checked,
    Exchanged,
    Incident,
    Line,
    Ordered,
    Payload,
    Reason,
    What,
)
from bot.engine.values import Severity
from tests.engine.sheet import at, codes, hourly, only


@pytest.mark.parametrize(
    ("what", "severity"),
    [
        (What.DISCONNECTED, Severity.HIGH),
        (What.DISLODGED, Severity.HIGH),
        (What.TIPPED, Severity.MODERATE),
        (What.DAMAGED, Severity.MODERATE),
        (What.RAISED, Severity.MODERATE),
        (What.KINKED, Severity.LOW),
        (What.SUCTION_OFF, Severity.LOW),
        (What.CLAMPED, Severity.LOW),
    ],
)
def test_what_happened_to_the_drain_is_told_with_its_severity(what: What, severity: Severity) -> None:
    sheet = hourly(20)
    sheet.happens("09:05", what)
    found = only(sheet, code=what.value)
    assert (found.severity, found.begin) == (severity, at("09:05"))


@pytest.mark.parametrize(
    ("what", "undone_by"),
    [
        (What.TIPPED, Exchanged()),
        (What.DAMAGED, Exchanged()),
        (What.DISCONNECTED, Exchanged()),
        (What.DISCONNECTED, Checked(air_leak="none")),
        (What.DISLODGED, Checked(air_leak="none")),
        (What.RAISED, Line(level_ml=30)),
        (What.KINKED, Checked(tidaling=True)),
        (What.SUCTION_OFF, Incident(what=What.SUCTION_ON)),
        (What.SUCTION_OFF, Checked(suction_cmh2o=20)),
        (What.SUCTION_OFF, Ordered(suction_cmh2o=0)),
        (What.CLAMPED, Incident(what=What.UNCLAMPED)),
    ],
)
def test_what_happened_stands_until_something_told_undoes_it(what: What, undone_by: Payload) -> None:
    sheet = hourly(20)
    sheet.happens("09:05", what)
    assert what.value in codes(sheet)
    sheet.tells("09:10", undone_by)
    assert what.value not in codes(sheet)


@pytest.mark.parametrize("undone_by", [Line(level_ml=30), Checked(air_leak="none")])
def test_a_tipped_canister_stays_so_until_it_is_changed(undone_by: Payload) -> None:
    sheet = hourly(20)
    sheet.happens("09:05", What.TIPPED)
    sheet.tells("09:10", undone_by)
    assert "tipped" in codes(sheet)


@pytest.mark.parametrize(("leak", "severity"), [("continuous", Severity.HIGH), ("none", Severity.LOW)])
def test_a_clamp_with_an_air_leak_is_urgent_at_once(leak: str, severity: Severity) -> None:
    sheet = hourly(20)
    sheet.tells("09:01", Checked(air_leak=leak))  # type: ignore[arg-type]
    sheet.happens("09:02", What.CLAMPED)
    assert only(sheet, code="clamped").severity is severity


def test_a_dial_that_is_not_as_ordered_is_told_with_the_order() -> None:
    sheet = hourly(20)
    sheet.tells("09:01", Ordered(suction_cmh2o=20))
    sheet.tells("09:02", Checked(suction_cmh2o=15))
    found = only(sheet, code="dial_suction")
    assert (found.value, found.limit, found.comparison) == (15, 20, "")
    sheet.tells("09:03", Checked(suction_cmh2o=20))
    assert "dial_suction" not in codes(sheet)


def test_an_order_outside_the_usual_range_is_the_order() -> None:
    sheet = hourly(20)
    sheet.tells("09:01", Ordered(suction_cmh2o=5))
    sheet.tells("09:02", Checked(suction_cmh2o=5))
    assert "dial_suction" not in codes(sheet)


@pytest.mark.parametrize(("suction", "told"), [(20, True), (None, True), (0, False)])
def test_the_indicator_is_judged_on_suction_only(suction: int | None, told: bool) -> None:
    sheet = hourly(20)
    sheet.tells("09:01", Checked(suction_cmh2o=suction, suction_indicator="not_in_range"))
    assert ("suction_indicator" in codes(sheet)) is told


def test_without_a_dial_reading_an_order_of_water_seal_only_silences_the_wall_rule() -> None:
    sheet = hourly(20)
    sheet.tells("09:01", Ordered(suction_cmh2o=0))
    sheet.tells("09:02", Checked(wall_mmhg=10))
    assert "wall_suction" not in codes(sheet)


@pytest.mark.parametrize(
    ("reason", "leaks", "told"),
    [
        (Reason.CARDIAC, ("none", "intermittent"), True),
        (Reason.AIR, ("none", "intermittent"), True),
        (Reason.AIR, ("intermittent", "continuous"), True),
        (Reason.AIR, ("continuous", "continuous"), False),
        (Reason.AIR, ("continuous",), False),
        (Reason.LUNG, ("continuous", "intermittent"), False),
        (Reason.AIR, ("none", "continuous", "continuous"), True),
        (Reason.AIR, ("none", "continuous", "none"), False),
        (Reason.CARDIAC, ("continuous",), True),
        (Reason.GENERAL, ("none",), False),
    ],
)
def test_a_leak_is_told_when_new_or_worse_and_stands_until_it_is_gone(
    reason: Reason, leaks: tuple[str, ...], told: bool
) -> None:
    sheet = hourly(20, reason=reason)
    for minute, leak in enumerate(leaks, start=1):
        sheet.tells(f"09:{minute:02}", Checked(air_leak=leak))  # type: ignore[arg-type]
    assert ("leak" in codes(sheet)) is told


def test_a_leak_grade_that_rises_is_told() -> None:
    sheet = hourly(20, reason=Reason.AIR)
    sheet.tells("09:01", Checked(leak_grade=2))
    assert "leak" not in codes(sheet)
    sheet.tells("09:02", Checked(leak_grade=3))
    assert only(sheet, code="leak").detail == "grade 3"


@pytest.mark.parametrize(
    ("tube", "told"), [(None, True), ("left", True), ("mediastinal", False), ("left mediastinal", False)]
)
def test_tidaling_is_never_expected_of_a_mediastinal_tube(tube: str | None, told: bool) -> None:
    sheet = hourly(20, tube=tube)
    sheet.tells("09:01", Checked(tidaling=False, suction_cmh2o=20))
    assert ("tidaling_lost" in codes(sheet)) is told
    if told:
        assert only(sheet, code="tidaling_lost").detail == "on suction"


@pytest.mark.parametrize(
    ("fluids", "told"),
    [
        (("serous", "sanguineous"), True),
        (("serosanguineous", "chylous"), True),
        (("serous", "purulent"), True),
        (("sanguineous", "bright_red"), True),
        (("sanguineous", "serous"), False),
        (("serous", "serosanguineous"), False),
        (("sanguineous",), False),
        (("serous", "sanguineous", "sanguineous"), True),
    ],
)
def test_fluid_that_turned_bloody_purulent_or_chylous_is_told(fluids: tuple[str, ...], told: bool) -> None:
    sheet = hourly(20)
    for minute, fluid in enumerate(fluids, start=1):
        sheet.tells(f"09:{minute:02}", Checked(fluid=fluid))
    assert ("fluid_changed" in codes(sheet)) is told
