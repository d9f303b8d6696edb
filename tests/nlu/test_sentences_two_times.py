"""Messages with a time for what happened and another one for the line."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 7 tipped over at 1700, reads 560 now",
            "incident bed=7 at=17:00 what=tipped; mark bed=7 at=19:05 level_ml=560",
        ),
        (
            "bed 7 tipped 1830, no leak, 560 at 1900",
            "incident bed=7 at=18:30 what=tipped; mark bed=7 at=19:00 level_ml=560; "
            "checked bed=7 at=19:00 air_leak=none",
        ),
        (
            "bed 7 560 at 1900, tipped at 1830",
            "mark bed=7 at=19:00 level_ml=560; incident bed=7 at=18:30 what=tipped",
        ),
        (
            "bed 12 seal 2 at 1800 reads 1050 now",
            "checked bed=12 at=18:00 seal_cm=2; mark bed=12 at=19:05 level_ml=1050",
        ),
        (
            "bed 7 clamped at 1600, 5 pm line 455",
            "incident bed=7 at=16:00 what=clamped; mark bed=7 at=17:00 level_ml=455",
        ),
    ],
)
def test_a_line_with_a_time_of_its_own_keeps_it_beside_what_happened_at_another(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("17 tipped 1630 at 455", "mark bed=17 at=16:30 level_ml=455; incident bed=17 at=16:30 what=tipped"),
        (
            "17 clamped 1630 at 455",
            "mark bed=17 at=16:30 level_ml=455; incident bed=17 at=16:30 what=clamped",
        ),
        ("17 back 1830 at 85", "back bed=17 at=18:30; mark bed=17 at=18:30 level_ml=85"),
        ("17 tipped 1830 at 85", "mark bed=17 at=18:30 level_ml=85; incident bed=17 at=18:30 what=tipped"),
    ],
)
def test_the_clock_time_behind_an_event_is_its_time_and_at_then_says_the_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text", ["17 back 1630 at 620", "17 back 1630, at 620", "17 back, 1630 at 620", "17 back 1830 at 620"]
)
def test_behind_an_event_a_number_that_may_be_its_time_and_an_at_that_may_be_either_are_asked(
    text: str,
) -> None:
    assert reading(text).startswith("ask ")


def test_the_same_holds_in_the_morning() -> None:
    assert reading("bed 7 tipped over at 0300, reads 560 now", arrived=MORNING) == (
        "incident bed=7 at=03:00 what=tipped; mark bed=7 at=06:55 level_ml=560"
    )


@pytest.mark.parametrize(
    "text",
    [
        "beds 4 and 9 both fine. end of shift: 4 is 660 and 9 is 1430",
        "4 and 9 fine. eos 4 660, 9 1430",
    ],
)
def test_the_end_of_the_shift_is_of_every_line_told_behind_it(text: str) -> None:
    assert reading(text) == "mark bed=4 level_ml=660 closing; mark bed=9 level_ml=1430 closing"


def test_the_end_of_the_shift_told_of_one_bed_is_not_of_the_next() -> None:
    said = "bed 4 end of shift 660, bed 9 1430"

    assert reading(said) == "mark bed=4 level_ml=660 closing; mark bed=9 level_ml=1430"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("what do i write for 15 at 1500", "asked bed=15 at=15:00 topic=chart"),
        ("what do I chart for 12 now", "asked bed=12 topic=chart"),
        ("chart 12 since 1500", "asked bed=12 topic=chart window=15:00"),
        ("total 12 from 0900", "asked bed=12 topic=total window=09:00"),
    ],
)
def test_what_is_to_chart_at_a_time_is_no_window_from_then(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    ["chart 610 for bed 3 at 1800", "chart 1050 bed 12", "how much did 3 do between 0500 and 0600"],
)
def test_a_level_to_be_charted_and_a_stretch_of_time_are_no_moment_to_chart(text: str) -> None:
    assert reading(text).startswith("ask ")


def test_a_line_with_no_time_before_lines_of_different_times_is_asked() -> None:
    assert "ask " in reading("3 610, 4 220 @1800, 5 90 @1830")
    assert reading("3 610, 4 220 at 1800") == (
        "mark bed=3 at=18:00 level_ml=610; mark bed=4 at=18:00 level_ml=220"
    )


def test_a_clock_time_of_the_last_hours_beside_now_is_no_level() -> None:
    assert reading("bed 5 fluid bloody 1800 serosang now") == "ask at"
    assert reading("bed 5 1800 now") == "ask level_ml"


def test_when_a_sign_was_seen_is_asked_beside_lines_that_are() -> None:
    assert reading("rm 7 chest tube at 815 now, was 760 at 5, serosang no bubble") == "ask level_ml"


def test_an_end_of_shift_line_stays_one_before_a_later_sign() -> None:
    assert reading("bed 12 end of shift line 1050 at 1800 no leak at 1830") == (
        "mark bed=12 at=18:00 level_ml=1050 closing; checked bed=12 at=18:30 air_leak=none"
    )
