"""Cautions of a bed: several drains together, averages, the record, and what an entry changes."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from bot.engine.cautions import CHECKS, CautionNews, cautions_if, entry_cautions
from bot.engine.entries import (
    Checked,
    Correction,
    FinalLevel,
    Incident,
    Line,
    Reason,
    Removed,
    Seen,
    What,
)
from bot.engine.overrides import MEASURES_OF
from bot.engine.patient import Patient
from bot.engine.values import Severity
from tests.engine.sheet import ADULT, Sheet, at, codes, hourly, only, raised, rules

LEFT, RIGHT = "1" * 16, "2" * 16


def bed(*sheets: Sheet) -> Patient:
    return Patient(bed="12", drains=tuple(sheet.ledger for sheet in sheets))


def news(before: Patient, after: Patient, clock: str) -> CautionNews:
    return entry_cautions(before, after, at(clock), ADULT)


def test_two_drains_bleed_together_where_neither_does_alone() -> None:
    left = hourly(260, tube="left", drain=LEFT, reason=Reason.TRAUMA)
    right = hourly(260, tube="right", drain=RIGHT, reason=Reason.TRAUMA)
    found = only(left, right, code="amount_at_once")
    assert (found.drain, found.value, found.severity) == (None, 520, Severity.HIGH)
    assert "amount_at_once" not in codes(left) | codes(right)


def test_what_one_drain_meets_alone_is_told_of_that_drain_and_not_again_of_the_bed() -> None:
    left = hourly(520, tube="left", drain=LEFT)
    right = hourly(20, tube="right", drain=RIGHT)
    assert only(left, right, code="amount_at_once").tube == "left"


def test_drains_whose_lines_are_minutes_apart_are_summed_and_hours_apart_are_not() -> None:
    left = hourly(210, 210, 210, tube="left", drain=LEFT, reason=Reason.CARDIAC)
    near, far = (
        hourly(210, 210, 210, tube="right", drain=RIGHT, reason=Reason.CARDIAC, begin=begin)
        for begin in ("08:10", "08:30")
    )
    assert "ladder.cardiac.3h" in rules(left, near)
    assert "ladder.cardiac.3h" not in rules(left, far)


def test_an_effusion_is_not_added_to_the_bleeding_beside_it() -> None:
    trauma = hourly(90, tube="left", drain=LEFT, reason=Reason.TRAUMA)
    effusion = hourly(450, tube="right", drain=RIGHT, reason=Reason.EFFUSION)
    assert "rate_high" not in codes(trauma, effusion)
    assert "amount_at_once" not in codes(trauma, effusion)


def test_a_second_drain_placed_later_adds_from_its_placement_on() -> None:
    left = hourly(60, 60, 60, tube="left", drain=LEFT)
    right = hourly(60, 60, tube="right", drain=RIGHT, begin="09:00")
    found = only(left, right, code="rate_high")
    assert (found.drain, found.value) == (None, 120)


def test_one_long_stretch_claims_no_rung_and_says_average() -> None:
    """One line of 820 after 4 h: mean 205 mL/h, the hours are unknown."""
    sheet = Sheet()
    sheet.placed("08:00", reason=Reason.CARDIAC)
    sheet.mark("12:00", 820)
    met = rules(sheet)
    assert not {rule for rule in met if rule.startswith(("ladder", "rate_sustained"))}
    found = only(sheet, code="average_only")
    assert (found.value, found.severity) == (205, Severity.LOW)
    assert only(sheet, code="rate_high").average


def test_an_average_proves_that_some_hour_was_over() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 0)
    sheet.mark("11:00", 1510)
    found = only(sheet, code="amount_at_once")
    assert (round(found.value or 0), found.average) == (503, True)


def test_an_average_over_a_long_quiet_stretch_is_not_remarked() -> None:
    sheet = Sheet()
    sheet.marks(t0800=0, t1500=210)
    assert "average_only" not in codes(sheet)


def test_an_hour_that_was_over_stands_until_the_next_hour_is_known() -> None:
    sheet = hourly(150)
    assert "rate_high" in codes(sheet)
    sheet.mark("09:30", 155)
    assert "rate_high" in codes(sheet)
    sheet.mark("10:00", 160)
    assert "rate_high" not in codes(sheet)


def test_a_missing_final_level_is_noted_until_it_is_told() -> None:
    sheet = hourly(20)
    exchange = sheet.exchanged("09:10")
    assert "at_least" in codes(sheet)
    sheet.tells("09:20", FinalLevel(level_ml=25, exchange=exchange))
    assert "at_least" not in codes(sheet)


def test_an_old_canister_does_not_fill_the_new_one() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 1980)
    sheet.exchanged("08:30", final_ml=1990)
    assert not codes(sheet) & {"three_quarters_full", "full"}


@pytest.mark.parametrize("code", ["line_fell", "jump", "time_conflict"])
def test_what_the_nurse_kept_is_told_with_the_line(code: str) -> None:
    sheet = Sheet()
    sheet.mark("08:00", 1000)
    level = 1700 if code == "jump" else 900
    sheet.tells("08:10", Line(level_ml=level, accepted=(code,)))
    assert code in codes(sheet)
    sheet.mark("08:20", level + 10)
    assert code not in codes(sheet)


@pytest.mark.parametrize(
    ("line", "now", "told"),
    [
        ("18:00", "19:31", True),
        ("18:00", "19:30", False),
        ("18:40", "19:31", False),
        ("19:00", "22:00", False),
    ],
)
def test_a_shift_that_started_without_a_line_is_noted(line: str, now: str, told: bool) -> None:
    sheet = Sheet()
    sheet.mark(line, 100)
    assert ("no_boundary_line" in codes(sheet, now=at(now))) is told


def test_an_amendment_is_noted_until_it_was_made() -> None:
    sheet = Sheet()
    sheet.mark("08:00", 100)
    line = sheet.mark("09:00", 150)
    sheet.tells("09:05", Correction(target=line, level_ml=130))
    assert "amended" in codes(sheet)
    sheet.tells("09:10", Seen(amended=True))
    assert "amended" not in codes(sheet)


def test_of_one_code_the_most_severe_row_is_told_of_a_drain() -> None:
    effusion = hourly(1600, reason=Reason.EFFUSION)
    assert only(effusion, code="effusion_limit").severity is Severity.HIGH
    found = raised(hourly(600, 600, 600, 600, reason=Reason.CARDIAC))
    assert [one.rule for one in found if one.code == "ladder"] == ["ladder.cardiac.1h"]


def test_the_most_severe_come_first() -> None:
    sheet = hourly(600, reason=Reason.CARDIAC)
    sheet.happens("09:00", What.KINKED)
    sheet.happens("09:00", What.DAMAGED)
    found = [one.severity for one in raised(sheet)]
    assert found == sorted(found, key=["high", "moderate", "low"].index)


def test_a_row_that_is_off_is_not_raised() -> None:
    off = replace(ADULT, rules=tuple(replace(rule, on=rule.code != "rate_high") for rule in ADULT.rules))
    assert "rate_high" in codes(hourly(150))
    assert "rate_high" not in codes(hourly(150), policy=off)


def test_every_code_has_a_row_and_every_check_is_told_once() -> None:
    assert {rule.code for rule in ADULT.rules} == set(MEASURES_OF)
    assert len(set(CHECKS)) == len(CHECKS)


def test_an_entry_tells_what_is_new_what_stands_and_what_cleared() -> None:
    first, second, third = hourly(120), hourly(120, 130), hourly(120, 130, 40)
    opened = news(bed(hourly()), bed(first), "09:01")
    assert "rate_high" in {one.code for one in opened.new}
    standing = news(bed(first), bed(second), "10:01")
    assert [(one.code, one.value) for one in standing.still if one.code == "rate_high"] == [
        ("rate_high", 130)
    ]
    cleared = news(bed(second), bed(third), "11:01")
    assert "rate_high" in {one.code for one in cleared.cleared}


def test_nothing_is_cleared_while_another_row_of_its_code_stands_on_the_drain() -> None:
    before, after = (hourly(*volumes, reason=Reason.CARDIAC) for volumes in ((150, 220), (150, 220, 230)))
    assert rules(before) & {"rate_high.cardiac.early"}
    assert rules(after) & {"rate_high.cardiac.later"}
    found = news(bed(before), bed(after), "11:01")
    assert "rate_high" not in {one.code for one in found.cleared}


def test_a_canister_that_fills_up_is_not_cleared_of_being_nearly_full() -> None:
    sheet = hourly(1700)
    before = bed(sheet)
    assert "three_quarters_full" in rules(sheet)
    sheet.mark("10:00", 2000)
    found = news(before, bed(sheet), "10:01")
    assert "full" in {one.code for one in found.new}
    assert not found.cleared
    before = bed(sheet)
    sheet.exchanged("10:30", final_ml=2000)
    assert "full" in {one.code for one in news(before, bed(sheet), "10:31").cleared}


def test_an_overdue_line_that_comes_is_not_announced_as_cleared() -> None:
    sheet = hourly(20)
    before = bed(sheet)
    sheet.mark("12:00", 60)
    found = news(before, bed(sheet), "12:01")
    assert not found.cleared


def test_the_cautions_of_a_drain_that_is_out_end_without_a_word() -> None:
    sheet = hourly(150)
    before = bed(sheet)
    sheet.tells("09:05", Removed())
    assert news(before, Patient(bed="12"), "09:06") == CautionNews()


def test_a_repeated_line_and_a_placement_are_told_with_their_entry_only() -> None:
    sheet = Sheet()
    sheet.placed("08:00")
    placed = news(Patient(bed="12"), bed(sheet), "08:01")
    assert "two_identifiers" in {one.code for one in placed.new}
    sheet.mark("09:00", 20)
    before = bed(sheet)
    sheet.mark("09:02", 20)
    repeated = news(before, bed(sheet), "09:03")
    assert [one.code for one in repeated.new] == ["duplicate"]


def test_a_reading_that_is_asked_about_carries_the_danger_that_it_would_mean() -> None:
    sheet = hourly(20)
    ledger = sheet.ledger
    entry = ledger.next_entry(Line(level_ml=640), at("10:00"), at("10:01"))
    found = cautions_if(bed(sheet), entry, at("10:01"), ADULT)
    urgent = [one for one in found if one.severity is Severity.HIGH]
    assert [(one.code, one.value, one.if_right) for one in urgent] == [("amount_at_once", 620, True)]


def test_a_reading_that_changes_nothing_carries_no_danger() -> None:
    sheet = hourly(20)
    sheet.happens("09:30", What.DISCONNECTED)
    entry = sheet.ledger.next_entry(Line(level_ml=40), at("10:00"), at("10:01"))
    assert cautions_if(bed(sheet), entry, at("10:01"), ADULT) == ()


def test_a_danger_is_seen_on_a_drain_that_is_not_there_yet() -> None:
    other = hourly(20, drain=RIGHT)
    entry = Sheet(drain=LEFT).ledger.next_entry(Incident(what=What.DISLODGED), at("10:00"), at("10:00"))
    found = cautions_if(bed(other), replace(entry, drain=LEFT), at("10:01"), ADULT)
    assert "dislodged" in {one.code for one in found}


def test_a_check_is_overdue_only_where_checks_are_told() -> None:
    sheet = hourly(20, 20, 20, 20, 20, 20, 20)
    assert "overdue" not in codes(sheet)
    sheet.tells("09:00", Checked(seal_cm=2))
    assert only(sheet, code="overdue").detail == "check"


def test_a_line_that_does_not_come_is_overdue_after_15_min() -> None:
    sheet = hourly(20)
    assert "overdue" not in codes(sheet, now=at("10:15"))
    found = only(sheet, code="overdue", now=at("10:16"))
    assert (found.detail, found.begin, found.end) == ("line", at("09:00"), at("10:00"))
    assert found.value == timedelta(minutes=16) / timedelta(minutes=1)
