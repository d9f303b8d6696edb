"""Every caution as the line that a nurse reads."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from bot.engine.values import Caution, Severity
from bot.wording.caution_bodies import BODIES
from bot.wording.cautions import by_severity, caution_text, cleared_text, short_source
from bot.wording.gsm import segments
from tests.wording.language import faults

NEW_YORK = ZoneInfo("America/New_York")
NOW = datetime(2026, 3, 4, 19, 5, tzinfo=NEW_YORK).astimezone(UTC)
HOUR_AGO = NOW - timedelta(hours=1)
# fmt: off
MEASURED = (
    "rate_high", "rate_sustained", "ladder", "amount_at_once", "amount_24h", "per_kg", "effusion_limit",
    "sudden_rise", "sudden_stop", "line_fell", "over_capacity", "three_quarters_full", "full", "seal",
    "wall_suction", "dial_suction", "jump", "average_only",
)
TOLD = (
    "tipped", "damaged", "disconnected", "dislodged", "raised", "kinked", "clamped", "suction_off",
    "suction_indicator", "leak", "tidaling_lost", "fluid_changed", "overdue", "no_boundary_line", "at_least",
    "duplicate", "time_conflict", "amended", "unconfirmed", "two_identifiers",
)
# fmt: on
CODES = MEASURED + TOLD

URGENT = Caution(
    code="amount_at_once",
    severity=Severity.HIGH,
    rule="amount_at_once.60min",
    source="Melanson, McGill 2001, quoted in an open ICU handbook",
    drain="d" * 16,
    value=620,
    limit=500,
    unit="mL",
    comparison="over",
    begin=HOUR_AGO,
    end=NOW,
)


def text(caution: Caution, *, still: bool = False) -> str:
    return caution_text(caution, NEW_YORK, NOW, still=still)


def test_every_code_of_the_contract_has_a_sentence_and_no_other() -> None:
    assert set(BODIES) == set(CODES)


def test_an_urgent_caution_says_what_was_measured_the_rule_and_whose_it_is() -> None:
    assert text(URGENT) == (
        "URGENT: 620 mL in 60 min, over 500 mL (Melanson). "
        "Assess the patient; tell the provider per unit policy."
    )


def test_a_caution_about_a_reading_still_asked_says_if_right() -> None:
    assert text(replace(URGENT, if_right=True)) == (
        "URGENT if right: 620 mL in 60 min, over 500 mL (Melanson). Assess the patient now."
    )


def test_a_caution_that_stood_before_says_still() -> None:
    assert text(URGENT, still=True).startswith("URGENT still: 620 mL")


def test_if_right_and_still_do_not_run_into_the_tube() -> None:
    left = replace(URGENT, tube="left")
    assert text(replace(left, if_right=True)).startswith("URGENT if right, left: 620 mL")
    assert text(left, still=True).startswith("URGENT still, left: 620 mL")


def test_a_reply_about_several_beds_names_bed_and_tube() -> None:
    told = caution_text(replace(URGENT, tube="left"), NEW_YORK, NOW, bed="12")
    assert told.startswith("URGENT bed 12 left: ")


def test_a_rule_met_by_the_sum_of_the_tubes_says_so() -> None:
    assert text(replace(URGENT, drain=None)).startswith("URGENT all tubes: 620 mL")


def test_a_proof_from_a_long_interval_says_that_it_is_an_average() -> None:
    told = text(replace(URGENT, average=True, hours=1, value=205, limit=200, begin=NOW - timedelta(hours=4)))
    assert told.startswith(
        "URGENT: at least 205 mL in some hour of 15:05-19:05, over 200 mL, an average (Melanson)."
    )


def test_an_amount_over_a_little_more_than_its_window_says_both_what_was_measured_and_what_that_makes() -> (
    None
):
    told = text(replace(URGENT, hours=1, value=572, begin=NOW - timedelta(minutes=65)))
    assert told.startswith("URGENT: 620 mL in 65 min (572 mL in 60 min), over 500 mL (Melanson).")


def test_a_rule_for_each_hour_says_the_lowest_of_them() -> None:
    hourly = replace(
        URGENT, code="ladder", unit="mL/h", value=410, limit=400, hours=2, begin=NOW - timedelta(hours=2)
    )
    assert text(hourly).startswith("URGENT: over 400 mL/h in each hour of 17:05-19:05, the lowest 410 mL/h")


def test_what_came_in_much_less_than_an_hour_is_told_as_an_amount() -> None:
    early = replace(
        URGENT, code="rate_high", unit="mL/h", value=120, limit=100, begin=NOW - timedelta(minutes=4)
    )
    assert text(early).startswith("URGENT: 120 mL in 4 min, over 100 mL/h (Melanson).")


@pytest.mark.parametrize(
    ("caution", "told"),
    [
        (replace(URGENT, code="rate_high", unit="mL/h"), "Cleared: rate high, over 500 mL/h."),
        (replace(URGENT, code="dial_suction", comparison=""), "Cleared: dial suction."),
        (replace(URGENT, code="sudden_stop"), "Cleared: sudden stop."),
        (replace(URGENT, code="per_kg", limit=None, detail="no_weight"), "Cleared: no weight."),
        (replace(URGENT, code="kinked", limit=None, tube="left"), "Cleared left: kinked."),
    ],
)
def test_a_cleared_caution_says_which_rule_no_longer_holds(caution: Caution, told: str) -> None:
    assert cleared_text(caution) == told


@pytest.mark.parametrize("minutes", [60, 65])
def test_the_first_rung_is_told_in_the_words_of_the_amount_rule_that_it_is(minutes: int) -> None:
    amount = replace(URGENT, hours=1, value=560, begin=NOW - timedelta(minutes=minutes))
    rung = replace(amount, code="ladder", rule="ladder.cardiac.1h", unit="mL/h")
    assert text(rung) == text(amount)


def test_a_first_rung_from_less_than_an_hour_is_a_rate() -> None:
    rung = replace(URGENT, code="ladder", unit="mL/h", hours=1, value=600, begin=NOW - timedelta(minutes=50))
    assert text(rung).startswith("URGENT: 600 mL/h 18:15-19:05, over 500 mL/h")


def test_a_rise_does_not_call_its_multiple_millilitres() -> None:
    rise = replace(URGENT, code="sudden_rise", limit=3, value=240, detail="40 mL/h before")
    assert "sudden rise, 240 mL 18:05-19:05, 40 mL/h before" in text(rise)
    assert "3 mL" not in text(rise) + cleared_text(rise)


def test_an_overdue_closing_line_is_not_told_with_a_line_after_it() -> None:
    overdue = Caution(
        code="overdue",
        severity=Severity.MODERATE,
        rule="overdue.closing",
        source="",
        detail="closing_line",
        end=HOUR_AGO,
    )
    assert text(overdue) == "CAUTION: closing line overdue, due at 18:05."
    assert text(replace(overdue, begin=NOW)) == text(overdue)
    assert "the last at 17:05" in text(replace(overdue, begin=HOUR_AGO - timedelta(hours=1)))


def test_a_child_without_a_weight_gets_a_note_about_that() -> None:
    note = Caution(
        code="per_kg",
        severity=Severity.LOW,
        rule="per_kg.no_weight",
        source="",
        drain="d",
        detail="no_weight",
    )
    assert text(note) == "NOTE: no weight is known, so no rate rule can be checked."


@pytest.mark.parametrize(
    ("severity", "prefix", "assess"),
    [
        (Severity.HIGH, "URGENT: ", True),
        (Severity.MODERATE, "CAUTION: ", False),
        (Severity.LOW, "NOTE: ", False),
    ],
)
def test_severity_is_a_word_and_only_the_high_one_asks_to_assess_the_patient(
    severity: Severity, prefix: str, assess: bool
) -> None:
    told = text(replace(URGENT, severity=severity))
    assert told.startswith(prefix)
    assert ("Assess the patient" in told) is assess


FULL = replace(URGENT, hours=3, detail="bright_red", average=True, tube="left")


@pytest.mark.parametrize("code", CODES)
@pytest.mark.parametrize("if_right", [True, False])
def test_every_sentence_is_one_clean_line(code: str, if_right: bool) -> None:
    told = text(replace(FULL, code=code, if_right=if_right))
    assert not faults(told), told
    assert "\n" not in told
    assert segments(told) <= 2, told


@pytest.mark.parametrize("code", TOLD)
@pytest.mark.parametrize("severity", Severity)
def test_a_caution_without_numbers_is_a_clean_line_too(code: str, severity: Severity) -> None:
    told = text(Caution(code=code, severity=severity, rule=code, source=""))
    assert not faults(told), told


@pytest.mark.parametrize("code", CODES)
def test_a_cleared_caution_is_told_in_words(code: str) -> None:
    assert not faults(cleared_text(replace(URGENT, code=code), bed="12"))


def test_a_time_of_yesterday_says_its_day() -> None:
    told = text(
        Caution(
            code="tipped", severity=Severity.MODERATE, rule="tipped", source="", begin=NOW - timedelta(days=1)
        )
    )
    assert "Tue 3 Mar 19:05" in told


def test_the_most_serious_comes_first_and_equals_keep_their_order() -> None:
    low, moderate = (replace(URGENT, severity=severity) for severity in (Severity.LOW, Severity.MODERATE))
    other = replace(moderate, code="full")
    assert by_severity([low, moderate, URGENT, other]) == (URGENT, moderate, other, low)


@pytest.mark.parametrize(
    ("source", "short"),
    [
        ("NSW ACI, Pleural Drains in Adults s.3", "NSW ACI"),
        ("ATLS, as quoted by RCEM Learning (chest trauma)", "ATLS"),
        ("Christensen et al., J Cardiothorac Vasc Anesth 2012;26:46-51", "Christensen et al. 2012"),
        ("common practice, no source", "common practice"),
        ("Ward 4 policy", "Ward 4 policy"),
    ],
)
def test_a_source_is_named_briefly(source: str, short: str) -> None:
    assert short_source(source) == short


def test_a_rate_just_over_the_limit_is_not_told_as_the_limit() -> None:
    rate = replace(URGENT, code="rate_high", unit="mL/h", value=100.4, limit=100)
    assert text(rate).startswith("URGENT: 100.4 mL/h 18:05-19:05, over 100 mL/h (Melanson).")
