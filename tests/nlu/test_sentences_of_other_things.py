"""Words of an event, an amount or an order that are of something else."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 suction 20, ordered water seal", "ordered bed=3 suction_cmh2o=0; checked bed=3 suction_cmh2o=20"),
        (
            "3 suction 20. surgeon wants water seal",
            "ordered bed=3 suction_cmh2o=0; checked bed=3 suction_cmh2o=20",
        ),
        ("3 water seal, ordered suction 20", "ordered bed=3 suction_cmh2o=20; checked bed=3 suction_cmh2o=0"),
        ("3 water seal ordered, suction 20 now", "ask kind"),
        ("3 order suction 20 then water seal", "ask kind"),
    ],
)
def test_what_is_ordered_is_not_how_it_is_set(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("18 pulled the tube off the canister", "incident bed=18 what=disconnected"),
        ("18 toddler pulled the tubing off the box", "incident bed=18 what=disconnected"),
        ("18 he yanked the tube off the box", "incident bed=18 what=disconnected"),
        ("18 pulled the tube at 1830", "removed bed=18 at=18:30"),
    ],
)
def test_a_tube_pulled_off_the_box_is_not_out(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 no drainage at the site", "ask kind"),
        ("3 640, no drainage around the site", "mark bed=3 level_ml=640"),
        ("3 no drainage", "drained bed=3 volume_ml=0"),
        ("13 same suction 20", "checked bed=13 suction_cmh2o=20"),
        ("CT1 AVR + CABGx3", "described bed=CT1 reason=cardiac"),
        ("that disconnect was bed 12 not 13. time is right", "corrected bed=13 to_bed=12"),
        ("16 is in bed 20 now", "ask level_ml"),
        ("back in 5", "ask kind"),
        ("brb, back in 5", "ask kind"),
        ("3 BP 98/54, gave 250 mL bolus 1035", "ask volume_ml"),
        ("9 new box is at 40", "mark bed=9 level_ml=40"),
        ("bed 18 the mark at 1700 was the right tube not the left", "ask level_ml"),
        ("turned suction on 12 back on to 20", "ask at"),
    ],
)
def test_a_number_is_of_what_stands_around_it(text: str, read: str) -> None:
    beds = ("CT1", *(str(number) for number in range(1, 25)))
    assert reading(text, beds=beds) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed eight clamped no wait not clamped kinked at eighteen fifty",
        "bed eight clamped sorry kinked at eighteen fifty",
    ],
)
def test_an_event_put_in_the_place_of_another_is_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize("text", ["9 clamp for transport", "9 discharge home", "bed 9 clamp it"])
def test_what_is_to_be_done_is_asked_where_no_time_says_that_it_was(text: str) -> None:
    assert reading(text).startswith("ask ")


def test_with_its_time_it_was_done() -> None:
    assert reading("9 clamp 1840") == "incident bed=9 at=18:40 what=clamped"


@pytest.mark.parametrize("text", ["4 reads 540 but tilted", "4 540, box was crooked", "4 700 up to 750"])
def test_a_level_read_askew_or_beside_what_it_was_is_asked(text: str) -> None:
    assert reading(text).startswith("ask level_ml")


@pytest.mark.parametrize(
    "text",
    [
        "14 gave 1 unit prbc 280ml",
        "17 npwt 125 mmhg",
        "bed 18 tipped or bed 19",
    ],
)
def test_what_it_was_before_and_what_is_of_another_is_asked(text: str) -> None:
    parsed = reading(text)
    assert "ask " in parsed
    assert not any(wrong in parsed for wrong in ("bed=2 ", "bed=10", "level_ml="))


def test_a_line_that_was_told_beside_a_check_is_read() -> None:
    assert (
        reading("14 seal 2, line was 540 at 1845")
        == "mark bed=14 at=18:45 level_ml=540; checked bed=14 at=18:45 seal_cm=2"
    )
