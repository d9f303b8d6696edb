"""What must be asked, and what is never a line, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 1900 1050", "ask level_ml"),
        ("bed 12 at 1900", "ask level_ml"),
        ("bed 12 1900", "ask level_ml"),
        ("bed 12 1900 mark late", "ask level_ml"),
        ("bed 12 tube out 340", "ask level_ml"),
        ("bed 12 tube out 1900", "ask level_ml"),
        ("bed 12 canister changed 1980", "ask final_ml"),
        ("bed 12 canister changed 1850", "ask final_ml"),
        ("correct bed 12 1530 to 1505", "ask at"),
    ],
)
def test_a_number_that_may_be_a_level_or_a_time_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 output 210", "ask kind"),
        ("bed 12 mark 400.5 mL at 1900", "ask level_ml"),
        ("bed 12 mark 40 oz at 1900", "ask level_ml"),
        ("bed 12 mark 10l0 at 1900", "ask level_ml"),
        ("bed 12 mark -50 at 1900", "ask level_ml"),
        ("bed 12 mark 300-350 at 1900", "ask level_ml"),
        ("bed 12 mark 300 or 350 at 1900", "ask level_ml"),
        ("bed 12 mark > 1000 at 1900", "ask level_ml"),
        ("bed 12 mark <50", "ask level_ml"),
        ("bed 12 50 mL/h", "ask level_ml"),
        ("bed 12 drained 50 an hour", "ask level_ml"),
        ("bed 12 up 50 since 1800", "ask level_ml"),
        ("bed 12 mark 1050 i mean 1005", "ask level_ml"),
        ("bed 12 mark between 1000 and 1050 at 1900", "ask level_ml"),
    ],
)
def test_a_number_that_is_no_sure_level_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 mark 400 at half seven", "ask at"),
        ("bed 12 mark 400 at 2100", "ask at"),
        ("bed 12 mark 1050 at 1911", "ask at"),
        ("bed 12 mark 1050 at 0600", "ask at"),
        ("12 is at 1000 and 57 pm", "ask kind"),
        ("bed 12 mark 1050 in 20 min", "ask kind"),
    ],
)
def test_a_time_that_is_not_sure_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("mark 840 at 1900", "ask bed"),
        ("bed 40 mark 100", "ask bed"),
        ("bed 12 or 13 mark 1050 at 1900", "ask bed"),
        ("bed 12 left or right mark 1050", "ask tube"),
        ("bed 12 meds tube 60 at 1900", "ask level_ml"),
        ("bed 12 mark 1050 at 1900 - wrong bed", "ask to_bed"),
        ("no 12", "ask level_ml"),
    ],
)
def test_a_bed_or_a_tube_that_is_not_sure_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 urine 300 at 1900", ""),
        ("bed 12 BP 120/80", ""),
        ("JP drain bed 12 300 at 1900", ""),
        ("bed 12 hb 82", ""),
        ("bed 12 got 500 ml saline bolus at 1800", ""),
        ("call 1234 re bed 12", "ask level_ml"),
        ("bed 12 did not drain 300", "ask kind"),
        ("don't chart bed 12 300", "ask kind"),
        ("bed 12 goal under 300", ""),
        ("bed 12 will be at 1050 by 1900", "ask kind"),
        ("bed 12 if it reaches 300 call me", "ask kind"),
        ("if 5 goes over 200 an hour page me", "ask kind"),
        ("no mark for bed 12 at 1900", "ask kind"),
        ("bed 12 1900 mark missed", "ask kind"),
        ("bed 12 no drain", "ask kind"),
        ("bed 12 may move to 14", "ask kind"),
        ("bed 12 needs new canister at 1900", "ask kind"),
        ("bed 12 change canister please", "ask kind"),
        ("can I clamp bed 12", "ask kind"),
        ("is bed 12 at 1050?", "ask level_ml"),
        ("bed 12 tipped?", "ask kind"),
        ("bed 12 same as bed 13", "ask kind"),
        ("bed 12 last mark was 1050 at 1900", "ask level_ml"),
    ],
)
def test_what_is_not_ours_not_so_planned_or_asked_is_never_a_mark(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 11 45 ml last hour", "ask level_ml"),
        ("bed 12 300 this shift", "ask level_ml"),
        ("bed 9 300 since 1800", "ask level_ml"),
        ("bed 12 dr aware of 300 out", "ask kind"),
        ("oops left not right", "ask kind"),
        ("correct bed 12", "ask level_ml"),
    ],
)
def test_an_amount_over_a_length_of_time_is_no_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["6 total 7-7", "6 340 max", "mark 6 340 minimum", "bed 6 max 340"])
def test_a_limit_and_a_sum_are_no_line(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize("text", ["2 9 14 all same", "beds 2 to 4 no leak", "14 box #2 up at 1830 old 2040"])
def test_several_beds_are_no_time_and_no_move_and_the_second_no_level(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("22's canister change was at 1400 not 1500", "ask kind"),
        ("the clamp on 12 was at 1400 not 1500", "ask kind"),
        ("the tube on 9 wasnt pulled, that was 19", "ask kind"),
        ("12 was at 1040 not 1050", "corrected bed=12 was_ml=1050 level_ml=1040"),
        ("12 exchange old was 1840 not 1480", "corrected bed=12 was_ml=1480 level_ml=1840"),
    ],
)
def test_an_event_that_is_put_right_is_no_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("pt 16 pulled at tubing, 205 @1850 still swinging", "ask level_ml"),
        ("changed the canister on the wall suction bed 12", ""),
        ("8 clamped 1845 for xray", "incident bed=8 at=18:45 what=clamped"),
        ("21 at 640, i mean bed 22", "ask level_ml"),
        ("16 r&l on one box 540 at 1900", "ask level_ml"),
        ("12 y tube 220 at 1900", "mark bed=12 at=19:00 level_ml=220"),
        ("10 draining again", "ask level_ml"),
    ],
)
def test_what_is_said_beside_a_bed_is_not_read_as_something_else(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["2 no blood", "10 draining", "10 draining well again"])
def test_a_bed_of_which_something_is_said_is_no_level(text: str) -> None:
    assert "level_ml=" not in reading(text)
    assert "repeat" not in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 at 470 at 1900, 4 the same", "mark bed=3 at=19:00 level_ml=470; ask volume_ml"),
        ("bed 3 470, 4 is the same", "mark bed=3 level_ml=470; ask volume_ml"),
        ("3 470, 4 no change", "mark bed=3 level_ml=470; drained bed=4 volume_ml=0"),
        ("4 same as 3", "ask volume_ml"),
        ("bed 4 same", "drained bed=4 volume_ml=0"),
    ],
)
def test_the_same_behind_another_bed_is_no_change_or_its_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("16 drainage bright red 400 since 1800", "ask kind"),
        ("16 drainage 400 since 1800", "ask kind"),
        ("16 drainage since 1800", "asked bed=16 topic=total window=18:00"),
    ],
)
def test_an_amount_since_a_time_is_no_query(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "is that bed 3 410 at 1850", "is it still bed 5 210 at 1850", "is this bed 5 210",
        "are we at 410 on 12",
        "do we have 410 on 12", "am i right that 12 is 410 at 1850", "isn't 12 at 410", "so is 12 at 410",
        "hey is 12 at 410 right now", "why is 12 at 410", "was that 410 on 12", "have we got 410 for 12",
    ],
)  # fmt: skip
def test_a_line_that_is_asked_about_without_a_sign_is_no_line(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    ["is bed twelve at four ten", "are we at four ten on bed twelve", "should bed twelve be at four ten"],
)
def test_a_line_that_is_asked_about_aloud_is_no_line(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")
