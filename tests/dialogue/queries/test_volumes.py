"""Volumes to copy, totals over every window, the trend: real ends named, nothing interpolated."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from bot.dialogue.said import Window
from bot.engine.entries import Exchanged, Line, Placed
from bot.links import Links, Shown
from tests.dialogue.queries.ward import WARD_4, Ward, moment
from tests.web.client import SECRET

LINKS = Links("https://penline.example.org", (SECRET,))


@pytest.fixture
def ward() -> Ward:
    """A drain with a line at each shift start and hours between."""
    ward = Ward()
    ward.lines("12", "3 07:00 100, 19:00 400, 4 07:00 700, 08:00 730, 09:00 775, 15:00 840, 18:00 1000")
    return ward


def test_the_chart_of_this_shift_gives_each_step_to_copy(ward: Ward) -> None:
    assert ward.asks("4 18:10", "chart", "12").lines == (
        "Bed 12: Day shift so far 300 mL, 07:00-18:00. To chart:",
        "07:00-08:00 30 mL",
        "08:00-09:00 45 mL",
        "09:00-15:00 65 mL",
        "15:00-18:00 160 mL",
    )


def test_the_chart_of_the_last_shift_is_that_of_the_last_shift(ward: Ward) -> None:
    assert ward.asks("4 18:10", "chart", "12", window="last_shift").lines == (
        "Bed 12: Night shift 300 mL, Tue 3 Mar 19:00 to 07:00. To chart:",
        "Tue 3 Mar 19:00 to 07:00 300 mL",
    )


def test_the_steps_of_a_chart_add_up_to_the_sum_that_it_names(ward: Ward) -> None:
    steps = ward.asks("4 18:10", "chart", "12").lines[1:]
    assert sum(int(step.split(" ")[-2].replace(",", "")) for step in steps) == 300


def test_a_step_over_an_unlined_shift_start_says_what_it_includes() -> None:
    ward = Ward()
    ward.lines("12", "4 05:00 600, 09:00 700, 10:00 730")

    assert ward.asks("4 10:10", "chart", "12").lines == (
        "Bed 12: Day shift so far 130 mL, 05:00-10:00 (includes before 07:00). To chart:",
        "05:00-09:00 100 mL (includes before 07:00)",
        "09:00-10:00 30 mL",
    )


def test_a_unit_that_charts_by_shift_is_told_what_is_not_to_be_charted() -> None:
    ward = Ward(unit=replace(WARD_4, policy=replace(WARD_4.policy, chart_by="shift")))
    ward.lines("12", "4 07:00 700, 08:00 730")

    assert ward.asks("4 08:10", "chart", "12").lines[0] == (
        "Bed 12: Day shift so far 30 mL, 07:00-08:00."
        " Charted once, at the closing line; from line to line, not to chart:"
    )


def test_while_nothing_of_a_shift_is_to_chart_the_one_before_is_told_with_it(ward: Ward) -> None:
    told = ward.asks("4 20:00", "chart", "12").lines
    assert told[0].startswith(
        "Bed 12: Night shift so far: no line (last 18:00). Day shift 300 mL, 07:00-18:00"
    )
    assert told[1] == "07:00-08:00 30 mL"


def test_a_shift_that_was_asked_for_is_told_alone(ward: Ward) -> None:
    told = ward.asks("4 20:00", "chart", "12", window="shift").lines
    assert told == ("Bed 12: Night shift so far: no line (last 18:00).",)


def test_a_total_right_after_a_shift_holds_the_one_before(ward: Ward) -> None:
    (told,) = ward.asks("4 20:00", "total", "12").lines[:1]
    assert "Night shift so far: no line (last 18:00); Day shift 300 mL, 07:00-18:00" in told


@pytest.mark.parametrize(
    ("window", "told"),
    [
        ("shift", "Day shift so far 300 mL, 07:00-18:00"),
        ("last_shift", "Night shift 300 mL, Tue 3 Mar 19:00 to 07:00"),
        ("day", "This 24 h day so far 300 mL, 07:00-18:00"),
        ("last_day", "Last 24 h day 600 mL, Tue 3 Mar 07:00 to 07:00"),
        ("24h", "Last 24 h 900 mL, Tue 3 Mar 07:00 to 18:00 (includes before Tue 3 Mar 18:10)"),
        ("placement", "In all 900 mL, Tue 3 Mar 07:00 to 18:00"),
    ],
)
def test_a_total_names_its_window_and_its_real_ends(ward: Ward, window: Window, told: str) -> None:
    assert ward.asks("4 18:10", "total", "12", window=window).lines == (f"Bed 12: {told}.",)


def test_a_total_over_hours_is_cut_at_lines_and_says_where(ward: Ward) -> None:
    assert ward.asks("4 18:10", "total", "12", window=timedelta(hours=3)).lines == (
        "Bed 12: Last 3 h 160 mL, 15:00-18:00.",
    )


def test_a_total_since_a_time_is_cut_at_the_line_near_it(ward: Ward) -> None:
    assert ward.asks("4 18:10", "total", "12", window=moment("4 09:10")).lines == (
        "Bed 12: Since 09:10 225 mL, 09:00-18:00.",
    )


def test_a_total_with_no_window_gives_the_shift_24_hours_and_all(ward: Ward) -> None:
    (told,) = ward.asks("4 18:10", "total", "12").lines
    assert told.startswith("Bed 12: Day shift so far 300 mL")
    assert "; Last 24 h 900 mL" in told
    assert "; In all 900 mL" in told


def test_a_drain_first_seen_in_the_shift_says_since_when_and_that_there_was_no_line() -> None:
    ward = Ward()
    ward.lines("7", "4 10:00 600, 11:00 650")

    assert ward.asks("4 11:10", "total", "7", window="shift").lines == (
        "Bed 7: Day shift so far 50 mL, 10:00-11:00 (no line at 07:00).",
    )


def test_a_drain_placed_in_the_shift_counts_from_its_opening_level() -> None:
    ward = Ward()
    ward.tell("4 10:00", "7", Placed(bed="7", opening_ml=0))
    ward.lines("7", "4 11:00 50")

    assert ward.asks("4 11:10", "total", "7", window="shift").lines == (
        "Bed 7: Day shift so far 50 mL, 10:00-11:00 (from the opening level).",
    )


def test_what_drained_before_the_first_line_of_a_shift_is_said_to_be_left_out() -> None:
    ward = Ward()
    ward.lines("7", "3 08:00 100, 4 10:00 600, 11:00 650")

    assert ward.asks("4 11:10", "total", "7", window="shift").lines == (
        "Bed 7: Day shift so far 50 mL, 10:00-11:00"
        " (no line at 07:00; what drained before its first line is not in it).",
    )


def test_a_total_past_a_missing_final_level_is_at_least(ward: Ward) -> None:
    ward.tell("4 18:30", "12", Exchanged())
    ward.lines("12", "4 18:50 20")

    assert "Day shift so far at least 320 mL" in ward.asks("4 18:55", "total", "12", window="shift").text


def test_the_tubes_of_a_bed_are_added_up_and_told_one_by_one() -> None:
    ward = Ward()
    ward.lines("12", "4 07:00 300, 18:00 340", tube="left")
    ward.lines("12", "4 07:00 100, 18:00 120", tube="right")

    assert ward.asks("4 18:10", "total", "12", window="shift").lines == (
        "Bed 12: Day shift so far, all tubes 60 mL.",
        "Bed 12 left: Day shift so far 40 mL, 07:00-18:00.",
        "Bed 12 right: Day shift so far 20 mL, 07:00-18:00.",
    )


def test_a_tube_without_a_line_is_named_in_the_sum_of_the_bed() -> None:
    ward = Ward()
    ward.lines("12", "4 07:00 300, 18:00 340", tube="left")
    ward.lines("12", "4 07:00 100", tube="right")

    assert ward.asks("4 18:10", "total", "12", window="shift").lines[0] == (
        "Bed 12: Day shift so far, all tubes 40 mL (1 of 2 tubes without a sum)."
    )


def test_one_tube_alone_is_not_added_to_the_others() -> None:
    ward = Ward()
    ward.lines("12", "4 07:00 300, 18:00 340", tube="left")
    ward.lines("12", "4 07:00 100, 18:00 120", tube="right")

    assert ward.asks("4 18:10", "total", "12", tube="left", window="shift").lines == (
        "Bed 12 left: Day shift so far 40 mL, 07:00-18:00.",
    )


def test_the_totals_of_the_unit_are_one_row_a_tube(ward: Ward) -> None:
    ward.lines("3", "4 07:00 50, 18:00 80")

    assert ward.asks("4 18:10", "total").lines == (
        "Ward 4, totals, 2 beds with drains:",
        "Bed 3: Day shift so far 30 mL, 07:00-18:00.",
        "Bed 12: Day shift so far 300 mL, 07:00-18:00.",
    )


def test_a_sum_over_a_clock_change_takes_the_true_ends() -> None:
    ward = Ward()
    ward.lines("12", "7 19:00 100, 8 01:30 150, 03:30 180, 07:00 300")

    assert ward.asks("8 07:10", "total", "12", window="last_shift").lines == (
        "Bed 12: Night shift 200 mL, Sat 7 Mar 19:00 to 07:00.",
    )


def test_the_trend_gives_each_step_and_calls_a_long_one_an_average(ward: Ward) -> None:
    assert ward.asks("4 18:10", "trend", "12", window="shift").lines == (
        "Bed 12: Day shift so far 300 mL, 07:00-18:00.",
        "07:00-08:00 30 mL",
        "08:00-09:00 45 mL",
        "09:00-15:00 65 mL (average 11 mL/h)",
        "15:00-18:00 160 mL (average 53 mL/h)",
    )


def test_the_trend_goes_back_eight_hours_unless_told_otherwise(ward: Ward) -> None:
    reply = ward.asks("4 18:10", "trend", "12")
    assert reply.lines[0].startswith("Bed 12: Last 8 h ")
    assert "07:00-08:00" not in reply.text


def test_a_long_chart_is_cut_into_pages_that_lose_nothing() -> None:
    ward = Ward()
    ward.tell("4 07:00", "12", Line(level_ml=0))
    for quarter in range(1, 45):
        ward.tell(f"4 {7 + quarter // 4:02}:{quarter % 4 * 15:02}", "12", Line(level_ml=quarter * 5))

    pages = [ward.asks("4 18:10", "chart", "12", page=number).lines for number in (1, 2, 3)]
    steps = [line for page in pages for line in page[1:-1]]

    assert pages[0][-1] == 'Page 1 of 3: say more ("chart bed 12 page 2").'
    assert len(steps) == 44
    assert len(set(steps)) == 44


@pytest.mark.parametrize("topic", ["chart", "trend", "history"])
def test_what_needs_a_bed_asks_for_one(topic: str) -> None:
    reply = Ward().asks("4 19:00", topic)  # type: ignore[arg-type]
    assert reply.lines == (f'Which bed? For example: "{topic} bed 12".',)


def opened(line: str, at: str) -> Shown | None:
    """What the link at the end of a line opens."""
    return LINKS.shown(line.rpartition("/")[2], moment(at))


def test_a_trend_ends_with_a_link_to_its_picture_where_there_is_an_address(ward: Ward) -> None:
    without = ward.asks("4 18:10", "trend", "12").lines
    *told, last = replace(ward, links=LINKS).asks("4 18:10", "trend", "12").lines
    assert tuple(told) == without
    assert last.startswith("Picture until 19:10: https://penline.example.org/trend/")
    [drain] = ward.drains.values()
    assert opened(last, "4 19:09") == Shown(drains=(drain,), begin=moment("4 10:10"))
    assert opened(last, "4 19:10") is None


def test_the_picture_of_a_shift_that_is_over_ends_with_it(ward: Ward) -> None:
    last = replace(ward, links=LINKS).asks("4 18:10", "trend", "12", window="last_shift").lines[-1]
    shown = opened(last, "4 18:11")
    assert shown is not None
    assert (shown.begin, shown.end) == (moment("3 19:00"), moment("4 07:00"))


def test_one_picture_link_stands_for_all_tubes_of_a_bed() -> None:
    ward = Ward(links=LINKS)
    ward.lines("12", "4 07:00 100, 08:00 140", tube="left")
    ward.lines("12", "4 07:30 20, 08:00 25", tube="right")
    lines = ward.asks("4 08:10", "trend", "12", window="placement").lines
    assert [line for line in lines if "Picture" in line] == [lines[-1]]
    shown = opened(lines[-1], "4 08:11")
    assert shown is not None
    assert (len(shown.drains), shown.begin) == (2, moment("4 07:00"))


def test_a_drain_with_no_line_has_no_picture() -> None:
    ward = Ward(links=LINKS)
    ward.tell("4 07:00", "12", Placed(bed="12"))
    assert "Picture" not in ward.asks("4 08:10", "trend", "12").text


def test_of_the_first_line_of_all_it_is_said_that_none_is_before_it() -> None:
    ward = Ward()
    ward.lines("12", "4 18:00 300")
    (told,) = ward.asks("4 18:05", "total", "12").lines
    assert "Day shift so far: no line before 18:00; " in told
    assert told.endswith("In all: no line before 18:00.")
    (later,) = ward.asks("4 19:05", "total", "12", window="shift").lines
    assert later == "Bed 12: Night shift so far: no line (last 18:00)."
