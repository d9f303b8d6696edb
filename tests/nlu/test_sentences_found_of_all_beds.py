"""What is found of all beds of a list, of one of them, and signs each with its plus or minus."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

THREE = (("3", 280), ("5", 310), ("8", 95))


@pytest.mark.parametrize(
    ("head", "tail", "found"),
    [
        ("no leaks: ", "", "air_leak=none"),
        ("no leaks on any of them. ", "", "air_leak=none"),
        ("all three on 20, no leaks: ", "", "suction_cmh2o=20 air_leak=none"),
        ("all three on 20: ", "", "suction_cmh2o=20"),
        ("all swinging: ", "", "tidaling=True"),
        ("", ", all three on 20", "suction_cmh2o=20"),
        ("", ", no leaks", "air_leak=none"),
        ("", ", none leaking", "air_leak=none"),
        ("", ", no leaks on any", "air_leak=none"),
    ],
)
def test_what_is_found_of_all_beds_of_a_list_is_of_each(head: str, tail: str, found: str) -> None:
    told = "; ".join(
        f"mark bed={bed} at=06:30 level_ml={line}; checked bed={bed} at=06:30 {found}" for bed, line in THREE
    )
    assert reading(f"{head}3 280, 5 310, 8 95 at 0630{tail}", arrived=MORNING) == told


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "3 280, 5 310 at 0630, swinging",
            "mark bed=3 at=06:30 level_ml=280; mark bed=5 at=06:30 level_ml=310; "
            "checked bed=5 at=06:30 tidaling=True",
        ),
        (
            "3 280, 5 310 all six thirty",
            "mark bed=3 at=06:30 level_ml=280; mark bed=5 at=06:30 level_ml=310",
        ),
        (
            "3 280 no leak, 5 310 leak on cough at 0630",
            "mark bed=3 at=06:30 level_ml=280; checked bed=3 at=06:30 air_leak=none; "
            "mark bed=5 at=06:30 level_ml=310; checked bed=5 at=06:30 air_leak=intermittent",
        ),
        (
            "no leak bed 3 280, leak bed 5 310",
            "mark bed=3 level_ml=280; checked bed=3 air_leak=none; "
            "mark bed=5 level_ml=310; checked bed=5 air_leak=present",
        ),
    ],
)
def test_what_is_found_of_one_bed_stays_with_it(said: str, read: str) -> None:
    assert reading(said, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("said", "found"),
    [
        ("AL- tid+", "air_leak=none tidaling=True"),
        ("leak- tid+", "air_leak=none tidaling=True"),
        ("AL- swing+", "air_leak=none tidaling=True"),
        ("AL+ tid-", "air_leak=present tidaling=False"),
        ("+tid -AL", "air_leak=none tidaling=True"),
    ],
)
def test_a_minus_glued_behind_its_sign_is_not_of_the_next_one(said: str, found: str) -> None:
    line = "mark bed=4 at=06:30 level_ml=155; checked bed=4 at=06:30"
    assert reading(f"4 155 0630 {said}", arrived=MORNING) == f"{line} {found}"


def test_a_since_before_a_stop_takes_no_line_for_its_time() -> None:
    said = "16 found disconnected 0300 reconnected 0301, no leak since, 330 at 0630"
    read = "incident bed=16 at=03:00 what=disconnected; mark bed=16 at=06:30 level_ml=330; "
    assert reading(said, arrived=MORNING) == read + "checked bed=16 at=06:30 air_leak=none"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("can you tell me what 6 was at when days left", "asked bed=6 topic=last"),
        ("cancel the one before last", "ask at"),
        ("delete the last one", "withdrawn"),
        ("that last one was for 7", "ask kind"),
        ("6 1700 was missed", "ask level_ml"),
        ("6 no 1700 line, we were in scan", "ask kind"),
        ("no 340", "answered answer=no level_ml=340"),
    ],
)
def test_a_line_that_is_none_and_one_before_the_last_are_asked(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "6 box is at 780, old one 1990 changed at 1100",
            "mark bed=6 level_ml=780; exchanged bed=6 at=11:00 final_ml=1990",
        ),
        (
            "6 now 780, box changed at 1100",
            "mark bed=6 at=19:05 level_ml=780; exchanged bed=6 at=11:00",
        ),
        (
            "6 line 780, clamped at 1700",
            "mark bed=6 at=17:00 level_ml=780; incident bed=6 at=17:00 what=clamped",
        ),
    ],
)
def test_a_line_before_an_exchange_that_tells_the_old_one_has_not_its_time(said: str, read: str) -> None:
    assert reading(said) == read
