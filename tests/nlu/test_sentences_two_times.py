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
