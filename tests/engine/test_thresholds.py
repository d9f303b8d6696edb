"""Every threshold at, just under and just over its boundary, named with whose rule it is."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from bot.engine.entries import Checked, Incident, Reason, What
from bot.engine.policy import Policy, default_rules
from tests.engine.sheet import ADULT, CHILD, Sheet, at, hourly, rules

# Put before the hour measured, so that the rows of the first hours stay out.
_QUIET = (40, 40, 40, 40, 40, 40, 40)


def _hour(reason: Reason, *, quiet: bool = False) -> Callable[[int], Sheet]:
    """One hour of that amount, the first after placement or after seven quiet ones."""
    return lambda amount: hourly(*(_QUIET if quiet else ()), amount, reason=reason)


def _hours(count: int, reason: Reason, weight_kg: float | None = None) -> Callable[[int], Sheet]:
    """So many hours in a row of that amount, after seven quiet ones."""
    return lambda amount: hourly(*_QUIET, *[amount] * count, reason=reason, weight_kg=weight_kg)


def _first_hours(count: int, reason: Reason, weight_kg: float | None = None) -> Callable[[int], Sheet]:
    """So many hours in a row of that amount, from placement on."""
    return lambda amount: hourly(*[amount] * count, reason=reason, weight_kg=weight_kg)


def _second_hour(amount: int) -> Sheet:
    return hourly(10, amount, reason=Reason.CARDIAC)


def _third_hour(amount: int) -> Sheet:
    return hourly(10, 10, amount, reason=Reason.CARDIAC)


def _day(reason: Reason) -> Callable[[int], Sheet]:
    """That amount spread over 24 h."""
    return lambda amount: hourly(*[amount // 24] * 23, amount - 23 * (amount // 24), reason=reason)


def _effusion(amount: int) -> Sheet:
    return hourly(amount - 100, 100, reason=Reason.EFFUSION)


def _insertion(amount: int) -> Sheet:
    sheet = Sheet()
    sheet.placed("08:00", reason=Reason.TRAUMA)
    sheet.mark("08:45", amount)
    return sheet


TABLE: list[tuple[str, str, Policy, Callable[[int], Sheet], int, str]] = [
    ("NSW ACI: over 100 mL", "rate_high.general", ADULT, _hour(Reason.GENERAL), 100, "over"),
    ("NSW ACI: over 100 mL", "rate_high.general", ADULT, _hour(Reason.TRAUMA, quiet=True), 100, "over"),
    ("NSW ACI: over 100 mL", "rate_high.general", ADULT, _hour(Reason.AIR), 100, "over"),
    ("Am J Surg: over 300 in hour 1", "rate_high.cardiac.hour1", ADULT, _hour(Reason.CARDIAC), 300, "over"),
    ("Am J Surg: over 250 in hour 2", "rate_high.cardiac.hour2", ADULT, _second_hour, 250, "over"),
    ("Am J Surg: over 150 later", "rate_high.cardiac.later", ADULT, _third_hour, 150, "over"),
    ("Christensen: 200 or more in 1 h", "rate_high.cardiac.early", ADULT, _hour(Reason.CARDIAC), 200, "at"),
    ("Hasumi: 100 mL/h or more", "rate_high.lung.bloody", ADULT, _hours(2, Reason.LUNG), 100, "at"),
    ("ATLS: over 200 mL/h for 2 h", "rate_sustained.2h", ADULT, _hours(2, Reason.TRAUMA), 200, "over"),
    ("ATLS: over 200 mL/h for 2 h", "rate_sustained.2h", ADULT, _hours(2, Reason.GENERAL), 200, "over"),
    ("Melanson: over 500 in 1 h", "ladder.cardiac.1h", ADULT, _hours(1, Reason.CARDIAC), 500, "over"),
    ("Melanson: over 400 for 2 h", "ladder.cardiac.2h", ADULT, _hours(2, Reason.CARDIAC), 400, "over"),
    ("Melanson: over 300 for 3 h", "ladder.cardiac.3h", ADULT, _hours(3, Reason.CARDIAC), 300, "over"),
    ("Melanson: over 200 for 4 h", "ladder.cardiac.4h", ADULT, _hours(4, Reason.CARDIAC), 200, "over"),
    ("Melanson's first rung", "amount_at_once.60min", ADULT, _hour(Reason.GENERAL, quiet=True), 500, "over"),
    ("ATLS: 1,500 at insertion", "amount_at_once.insertion", ADULT, _insertion, 1500, "at"),
    ("EAST: 1,500 in any 24 h", "amount_24h.any", ADULT, _day(Reason.TRAUMA), 1500, "at"),
    ("BARC type 4: 2 L or more in 24 h", "amount_24h.cardiac", ADULT, _day(Reason.CARDIAC), 2000, "at"),
    (
        "Christensen: 2 mL/kg/h for 2 h, 80 kg",
        "per_kg.cardiac.early",
        ADULT,
        _first_hours(2, Reason.CARDIAC, 80),
        160,
        "at",
    ),
    ("Wong: 5 mL/kg in 1 h, 8 kg", "per_kg.child.1h", CHILD, _first_hours(1, Reason.CARDIAC, 8), 40, "at"),
    (
        "Wong: over 3 mL/kg/h for over 3 h, 8 kg",
        "per_kg.child.3h",
        CHILD,
        _first_hours(4, Reason.CARDIAC, 8),
        24,
        "over",
    ),
    ("NSW ACI: 1,000 at one time", "effusion_limit.1000", ADULT, _effusion, 1000, "at"),
    ("NSW ACI: 1,500 at one time", "effusion_limit.1500", ADULT, _effusion, 1500, "at"),
    ("BTS: at most 1.5 L at one time", "effusion_limit.bts", ADULT, _effusion, 1500, "over"),
]


@pytest.mark.parametrize(
    ("row", "policy", "drained", "limit", "met_from"),
    [line[1:] for line in TABLE],
    ids=[f"{line[0]} ({line[1]}, {place})" for place, line in enumerate(TABLE)],
)
def test_a_row_is_met_at_its_boundary_and_not_a_millilitre_before(
    row: str, policy: Policy, drained: Callable[[int], Sheet], limit: int, met_from: str
) -> None:
    first = limit if met_from == "at" else limit + 1
    assert row in rules(drained(first), policy=policy)
    assert row in rules(drained(first + 1), policy=policy)
    assert row not in rules(drained(first - 1), policy=policy)


OFF = {"rate_high.texts.70", "rate_high.texts.first_2h", "rate_high.texts.after_2h"}


@pytest.mark.parametrize(
    ("row", "drained", "limit"),
    [
        ("rate_high.texts.70", _hour(Reason.GENERAL), 70),
        ("rate_high.texts.first_2h", _hour(Reason.GENERAL), 150),
        ("rate_high.texts.after_2h", _third_hour, 100),
    ],
)
def test_rows_of_texts_that_disagree_are_off_until_a_unit_turns_them_on(
    row: str, drained: Callable[[int], Sheet], limit: int
) -> None:
    on = replace(ADULT, rules=tuple(replace(rule, on=rule.on or rule.id == row) for rule in default_rules()))
    assert row not in rules(drained(limit + 1))
    assert row in rules(drained(limit + 1), policy=on)
    assert row not in rules(drained(limit), policy=on)


@pytest.mark.parametrize(
    ("amounts", "rungs"),
    [
        ((501,), {1}),
        ((500,), set()),
        ((401, 401), {2}),
        ((450, 350), set()),
        ((301, 301, 301), {3}),
        ((201, 201, 201, 201), {4}),
        ((200, 200, 200, 200), set()),
        ((501, 501, 501, 501), {1, 2, 3, 4}),
        ((501, 90), set()),
    ],
)
def test_the_ladder_looks_at_each_hour_and_not_at_the_mean(amounts: tuple[int, ...], rungs: set[int]) -> None:
    met = rules(hourly(*amounts, reason=Reason.CARDIAC))
    assert {rule for rule in met if rule.startswith("ladder")} == {
        f"ladder.cardiac.{rung}h" for rung in rungs
    }


def test_four_hours_of_exactly_200_meet_200_or_more_within_the_first_six_hours() -> None:
    assert "rate_high.cardiac.early" in rules(hourly(200, 200, 200, 200, reason=Reason.CARDIAC))


@pytest.mark.parametrize(("hours_before", "met"), [(5, True), (6, False)])
def test_the_early_row_ends_six_hours_after_the_later_of_placement_and_first_line(
    hours_before: int, met: bool
) -> None:
    sheet = hourly(*[20] * hours_before, 220, reason=Reason.CARDIAC)
    assert ("rate_high.cardiac.early" in rules(sheet)) is met


def test_a_canister_taken_over_counts_as_within_the_first_six_hours_from_its_first_line() -> None:
    sheet = Sheet()
    sheet.marks(t0800=400, t0900=610)
    sheet.placed("06:00", opening_ml=None, reason=Reason.CARDIAC)
    assert "rate_high.cardiac.early" in rules(sheet)


@pytest.mark.parametrize("reason", [Reason.GENERAL, Reason.LUNG, Reason.TRAUMA, Reason.AIR, Reason.EFFUSION])
def test_the_rows_of_heart_surgery_are_for_heart_surgery_only(reason: Reason) -> None:
    met = rules(hourly(510, 510, 510, 510, reason=reason))
    assert not {rule for rule in met if "cardiac" in rule}


def test_an_effusion_has_its_limit_and_no_rate_row() -> None:
    met = rules(hourly(900, 300, reason=Reason.EFFUSION))
    assert not {rule for rule in met if rule.startswith(("rate", "amount_at_once", "ladder"))}
    assert "effusion_limit.1000" in met


@pytest.mark.parametrize(("minutes", "counted_afresh"), [(14, False), (15, True)])
def test_an_effusion_is_counted_afresh_after_a_clamped_pause_of_15_min(
    minutes: int, counted_afresh: bool
) -> None:
    sheet = hourly(800, 250, reason=Reason.EFFUSION)
    sheet.happens("10:01", What.CLAMPED)
    sheet.happens(f"10:{1 + minutes:02}", What.UNCLAMPED)
    sheet.mark("11:00", 1200)
    assert ("effusion_limit.1000" not in rules(sheet)) is counted_afresh


def test_lung_surgery_asks_for_bloody_fluid_and_takes_unnamed_fluid_for_bloody() -> None:
    sheet = hourly(100, 100, reason=Reason.LUNG)
    assert "rate_high.lung.bloody" in rules(sheet)
    sheet.tells("10:00", Checked(fluid="serous"))
    assert "rate_high.lung.bloody" not in rules(sheet)
    sheet.tells("10:01", Checked(fluid="bright_red"))
    assert "rate_high.lung.bloody" in rules(sheet)


def test_three_hours_exactly_are_not_over_three_hours() -> None:
    assert "per_kg.child.3h" not in rules(
        hourly(30, 30, 30, reason=Reason.CARDIAC, weight_kg=8), policy=CHILD
    )
    slower = hourly(30, 30, 30, reason=Reason.CARDIAC, weight_kg=8, every=61)
    assert "per_kg.child.3h" in rules(slower, policy=CHILD)


@pytest.mark.parametrize(("weight_kg", "met"), [(8.0, False), (7.9, False), (7.8, True)])
def test_the_same_amount_is_judged_by_the_childs_weight(weight_kg: float, met: bool) -> None:
    sheet = hourly(39, reason=Reason.CARDIAC, weight_kg=weight_kg)
    assert ("per_kg.child.1h" in rules(sheet, policy=CHILD)) is met


def test_of_a_child_without_a_weight_it_is_said_that_no_rate_rule_can_be_checked() -> None:
    met = rules(hourly(90, 90, 90, 90, reason=Reason.CARDIAC), policy=CHILD)
    assert "per_kg.no_weight" in met
    assert not {rule for rule in met if rule.startswith(("per_kg.child", "rate"))}
    weighed = rules(hourly(90, reason=Reason.CARDIAC, weight_kg=8), policy=CHILD)
    assert "per_kg.no_weight" not in weighed


def test_a_weight_told_with_one_drain_holds_for_the_patient() -> None:
    left = hourly(10, tube="left", weight_kg=8, drain="1" * 16)
    right = hourly(45, tube="right", drain="2" * 16)
    assert "per_kg.child.1h" in rules(left, right, policy=CHILD)


@pytest.mark.parametrize(
    ("check", "row", "met"),
    [
        (Checked(seal_cm=2), "seal.low", False),
        (Checked(seal_cm=1.9), "seal.low", True),
        (Checked(wall_mmhg=80, suction_cmh2o=20), "wall_suction.low", False),
        (Checked(wall_mmhg=79, suction_cmh2o=20), "wall_suction.low", True),
        (Checked(wall_mmhg=100, suction_cmh2o=20), "wall_suction.high", False),
        (Checked(wall_mmhg=101, suction_cmh2o=20), "wall_suction.high", True),
        (Checked(wall_mmhg=40, suction_cmh2o=0), "wall_suction.low", False),
        (Checked(suction_cmh2o=10), "dial_suction.low", False),
        (Checked(suction_cmh2o=9), "dial_suction.low", True),
        (Checked(suction_cmh2o=0), "dial_suction.low", False),
        (Checked(suction_cmh2o=40), "dial_suction.high", False),
        (Checked(suction_cmh2o=41), "dial_suction.high", True),
    ],
)
def test_what_a_check_finds_is_judged_at_its_boundary(check: Checked, row: str, met: bool) -> None:
    sheet = hourly(20)
    sheet.tells("09:10", check)
    assert (row in rules(sheet)) is met


@pytest.mark.parametrize(
    ("level_ml", "code"),
    [
        (1499, None),
        (1500, "three_quarters_full"),
        (1999, "three_quarters_full"),
        (2000, "full"),
        (2001, "full"),
    ],
)
def test_a_canister_is_three_quarters_full_and_full_at_the_boundary(level_ml: int, code: str | None) -> None:
    sheet = Sheet()
    sheet.mark("08:00", level_ml)
    assert rules(sheet) & {"three_quarters_full", "full"} == ({code} if code else set())
    assert ("over_capacity" in rules(sheet)) is (level_ml > 2000)


@pytest.mark.parametrize(("clock", "row"), [("09:15", False), ("09:16", True)])
def test_a_clamp_left_on_for_over_15_min_is_told(clock: str, row: bool) -> None:
    sheet = hourly(20)
    sheet.tells("09:00", Incident(what=What.CLAMPED))
    assert ("clamped.minutes" in rules(sheet, now=at(clock))) is row
