"""Lines put right or taken back, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correct bed 12 1900 to 1005", "corrected bed=12 at=19:00 level_ml=1005"),
        ("correct bed 14 1855 to 515", "corrected bed=14 at=18:55 level_ml=515"),
        ("correct bed 12 1530 to 4", "corrected bed=12 at=15:30 level_ml=4"),
        ("correct 12's 1800 to 905", "corrected bed=12 at=18:00 level_ml=905"),
        ("change bed 12 1800 to 240", "corrected bed=12 at=18:00 level_ml=240"),
        ("bed 12 1800 should be 240", "corrected bed=12 at=18:00 level_ml=240"),
        ("wrong one, bed 12 at 1800 should be 240", "corrected bed=12 at=18:00 level_ml=240"),
        ("correct bed 12 right 1800 to 240", "corrected bed=12 tube=right at=18:00 level_ml=240"),
        ("bed 12 1800 mark should have been 905", "corrected bed=12 at=18:00 level_ml=905"),
        ("bed 12 1800 was wrong, its 905", "corrected bed=12 at=18:00 level_ml=905"),
        ("correction for bed 12 at 1800: 905", "corrected bed=12 at=18:00 level_ml=905"),
    ],
)
def test_a_bare_clock_time_before_what_is_right_is_the_time_of_the_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correction bed 12: 1005 not 1050", "corrected bed=12 was_ml=1050 level_ml=1005"),
        ("bed 3 I put 890, should have been 980", "corrected bed=3 was_ml=890 level_ml=980"),
        ("bed 12 mark was 950, should be 905", "corrected bed=12 was_ml=950 level_ml=905"),
        ("bed 12 not 950, 905", "corrected bed=12 was_ml=950 level_ml=905"),
        ("typo - bed 12 is 905 not 950", "corrected bed=12 was_ml=950 level_ml=905"),
        ("bed 12 1900 was 1005 not 1050", "corrected bed=12 at=19:00 was_ml=1050 level_ml=1005"),
        ("bed 12 last mark should be 240", "corrected bed=12 level_ml=240"),
        ("bed 12 last mark wrong, 905", "corrected bed=12 level_ml=905"),
    ],
)
def test_a_level_that_was_wrong_is_told_by_its_value(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the bed 12 1900 mark was bed 13", "corrected bed=12 at=19:00 to_bed=13"),
        ("1800 mark on bed 13 belongs to bed 12", "corrected bed=13 at=18:00 to_bed=12"),
        ("wrong bed, 1800 mark for 12 belongs to 14", "corrected bed=12 at=18:00 to_bed=14"),
        ("the 1800 mark was for bed 14 not bed 12", "corrected bed=12 at=18:00 to_bed=14"),
        ("correct bed 15 1000, it was bed 13", "corrected bed=15 at=10:00 to_bed=13"),
        ("no I meant bed 9", "corrected to_bed=9"),
        ("no I meant bed 15, 550", "corrected level_ml=550 to_bed=15"),
        ("no, meant bed 19", "corrected to_bed=19"),
        ("correct bed 16 left 1000 to right", "corrected bed=16 tube=left at=10:00 to_tube=right"),
        ("bed 12 1800 line belongs to right tube", "corrected bed=12 at=18:00 to_tube=right"),
        (
            "bed 12 1800 line was the left tube not the right",
            "corrected bed=12 tube=right at=18:00 to_tube=left",
        ),
        ("the 1800 for bed 12 should have been at 1830", "corrected bed=12 at=18:00 to_at=18:30"),
    ],
)
def test_a_line_belongs_to_another_bed_tube_or_time(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("scratch that", "withdrawn"),
        ("undo", "withdrawn"),
        ("cancel that", "withdrawn"),
        ("never mind", "withdrawn"),
        ("pls void my last msg", "withdrawn"),
        ("delete the 1900 mark bed 12", "withdrawn bed=12 at=19:00"),
        ("bed 12 last entry was wrong, remove it", "withdrawn bed=12"),
        ("delete bed 12 right 1800", "withdrawn bed=12 tube=right at=18:00"),
        ("scratch 12", "withdrawn bed=12"),
    ],
)
def test_a_line_or_a_message_is_taken_back(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 not 13", "corrected bed=13 to_bed=12"),
        ("not bed 12, bed 14", "corrected bed=12 to_bed=14"),
        ("the last one i sent was for bed 7 not 17", "corrected bed=17 to_bed=7"),
        ("sorry bed 12 at 1800 is 560 not 650", "corrected bed=12 at=18:00 was_ml=650 level_ml=560"),
        (
            "amend bed 3 right tube 1800 from 200 to 220",
            "corrected bed=3 tube=right at=18:00 was_ml=200 level_ml=220",
        ),
        ("i meant 560", "corrected level_ml=560"),
    ],
)
def test_a_denial_with_two_beds_says_which_is_right(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("make that 638 for bed 4", "corrected bed=4 level_ml=638"),
        ("sorry should be 638 for bed 4", "corrected bed=4 level_ml=638"),
        ("should be 638 bed 4", "corrected bed=4 level_ml=638"),
        ("make that bed 4 638", "corrected level_ml=638 to_bed=4"),
        ("the 340 should be for 12", "corrected was_ml=340 to_bed=12"),
        ("wrong bed 340 should be bed 12", "corrected was_ml=340 to_bed=12"),
        ("bed 9 i meant", "corrected to_bed=9"),
        ("bed 9 i meant. 80 at 1830", "ask bed"),
        ("9 i meant 80 at 1830", "corrected bed=9 at=18:30 level_ml=80"),
        ("219 should be 18", "ask level_ml"),
        ("i put 340, should be 12", "ask level_ml"),
        ("right number wrong bed, 340 belongs to 9 not 12", "corrected bed=12 was_ml=340 to_bed=9"),
    ],
)
def test_a_bed_behind_the_right_level_is_where_its_line_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "wrong patient, that 340 is bed 4 alright but the time was 1845",
            "corrected bed=4 was_ml=340 to_at=18:45",
        ),
        ("wrong time, bed 12 340 was 1845", "corrected bed=12 was_ml=340 to_at=18:45"),
        ("bed 12 340 time should be 1845", "corrected bed=12 was_ml=340 to_at=18:45"),
        ("change the time of the 340 on 12 to 1845", "corrected bed=12 was_ml=340 to_at=18:45"),
        ("right level wrong time, bed 12 was 1845", "corrected bed=12 to_at=18:45"),
        ("time should be 1845 on bed 12", "corrected bed=12 to_at=18:45"),
        ("the time was 1845 not 1900 for bed 12", "corrected bed=12 at=19:00 to_at=18:45"),
        ("correct the time on bed 12 from 1630 to 1645", "corrected bed=12 at=16:30 to_at=16:45"),
        ("bed 12 340, the time was 1845", "mark bed=12 at=18:45 level_ml=340"),
        ("bed 12 mark 340 at 1900 - wrong time", "ask level_ml"),
        ("that 340 on bed 12 was 1845 not 1900", "ask at"),
    ],
)
def test_the_right_time_is_never_taken_for_that_of_the_wrong_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "i put 420 for 7 at 1700 shoulda been 402",
        "i put 420 for 7 at 1700 should of been 402",
        "i put 420 for bed 7 at 1700 shouldve been 402",
        "i put 420 for 7 at 1700 should've put 402",
    ],
)
def test_should_have_may_be_typed_as_it_is_said(text: str) -> None:
    assert reading(text) == "corrected bed=7 at=17:00 was_ml=420 level_ml=402"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("219 closing is 18 not 15", "corrected bed=219 was_ml=15 level_ml=18"),
        ("219 is 18 not 15", "corrected bed=219 was_ml=15 level_ml=18"),
        ("219 should be 18", "ask bed"),
    ],
)
def test_a_label_that_looks_like_a_time_is_the_bed_where_no_other_number_is_one(text: str, read: str) -> None:
    assert reading(text, beds=tuple(str(bed) for bed in range(210, 231))) == read


@pytest.mark.parametrize(
    "text",
    [
        "pus is in 9 only, 5 is clear please correct",
        "correct bed 9 leak to intermittent",
        "bed 9 leak is intermittent not continuous",
        "remove the 1400 tube for bed 5",
        "remove the left tube on 5",
        "withdraw the drain on 5",
    ],
)
def test_a_finding_is_no_line_and_a_tube_that_may_be_taken_out_is_asked(text: str) -> None:
    assert reading(text) == "ask kind"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("remove the 1400 reading from bed 5 left tube", "withdrawn bed=5 tube=left at=14:00"),
        ("please remove bed 5 chest tube entry", "withdrawn bed=5"),
        ("delete the 1400 tube for bed 5", "withdrawn bed=5 at=14:00"),
        ("scratch the left tube on 5", "withdrawn bed=5 tube=left"),
    ],
)
def test_an_entry_of_a_tube_is_taken_back(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("mark seven twenty bed ten actually make that bed twelve oh one hundred", "ask bed"),
        ("bed ten mark seven twenty actually make that bed twelve", "ask bed"),
        ("bed ten mark seven twenty make that bed twelve", "ask bed"),
        ("actually make that bed twelve", "corrected to_bed=12"),
        ("actually make that six ninety", "corrected level_ml=690"),
    ],
)
def test_a_line_that_is_mended_where_it_is_told_is_no_correction(text: str, asked: str) -> None:
    assert reading(text, channel="voice") == asked


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("pls move my last entry from bed 5 to bed 6", "corrected bed=5 to_bed=6"),
        ("move bed 6's 1800 line to bed 7", "corrected bed=6 at=18:00 to_bed=7"),
        ("move my 1800 from 5 to 6", "corrected bed=5 at=18:00 to_bed=6"),
        ("move the 1800 mark from 5 to 6 please", "corrected bed=5 at=18:00 to_bed=6"),
        ("can you move the 340 from bed 5 to bed 6", "corrected bed=5 was_ml=340 to_bed=6"),
        ("move the 340 at 1800 from bed 5 to 6", "corrected bed=5 at=18:00 was_ml=340 to_bed=6"),
        ("switch the 1800 line from bed 5 to 6", "corrected bed=5 at=18:00 to_bed=6"),
        ("move my last to bed 6", "corrected to_bed=6"),
        ("move bed 5 to bed 6", "moved bed=5 to_bed=6"),
        ("moved 5 to 6 at 1800", "moved bed=5 at=18:00 to_bed=6"),
        ("move the line to bed 6", "ask bed"),
        ("moved the 1800 line on 5", "ask to_bed"),
    ],
)
def test_a_line_that_is_to_be_moved_is_put_right_and_nobody_moves(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("that was for bed 6", "corrected to_bed=6"),
        ("that 340 was bed 6", "corrected was_ml=340 to_bed=6"),
        ("oops wrong bed, its 6", "corrected to_bed=6"),
        ("i charted 340 on 5 but it was 6", "corrected bed=5 was_ml=340 to_bed=6"),
        ("i put bed 5 340 but its 304", "corrected bed=5 was_ml=340 level_ml=304"),
        ("i put bed 5 120 but its 12", "ask level_ml"),
        ("put 340 in bed 5 by mistake, it's bed 6", "corrected bed=5 was_ml=340 to_bed=6"),
        ("entered 340 under bed 5, should be under bed 6", "corrected bed=5 was_ml=340 to_bed=6"),
        ("bed 5 340 should have gone to bed 6", "corrected bed=5 was_ml=340 to_bed=6"),
        ("bed 6 was 340", "mark bed=6 level_ml=340"),
        ("the 340 is bed 6", "mark bed=6 level_ml=340"),
    ],
)
def test_a_line_told_of_the_wrong_bed_is_put_on_the_right_one(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("correction: bed 5 340 at 1800", "corrected bed=5 at=18:00 level_ml=340"),
        ("bed 5 correction 340 at 1800", "corrected bed=5 at=18:00 level_ml=340"),
        ("extra zero on bed 5, should be 340", "corrected bed=5 level_ml=340"),
        ("bed 5 340 i meant", "corrected bed=5 level_ml=340"),
        ("correct bed 5 from 0 to 340", "corrected bed=5 was_ml=0 level_ml=340"),
        ("bed 5 340 at 1800 correction 430", "ask at"),
    ],
)
def test_the_right_level_with_its_time_is_no_time_of_another_line(text: str, read: str) -> None:
    assert reading(text) == read


FOUR_HUNDREDS = tuple(str(bed) for bed in range(401, 425))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("412 should be 413", "ask level_ml"),
        ("the 1800 on 412 is actually 413", "ask level_ml"),
        ("412 should be 340", "corrected bed=412 level_ml=340"),
        ("412 1800 should be 340", "corrected bed=412 at=18:00 level_ml=340"),
        ("wrong room, 413 not 412", "corrected bed=412 to_bed=413"),
    ],
)
def test_a_right_value_that_is_a_bed_too_is_asked(text: str, read: str) -> None:
    assert reading(text, beds=FOUR_HUNDREDS) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 should be 13", "ask level_ml"),
        ("bed 12 should read 13", "corrected bed=12 level_ml=13"),
        ("12 should be 18 not 15", "corrected bed=12 was_ml=15 level_ml=18"),
        ("correct bed 12 1530 to 4", "corrected bed=12 at=15:30 level_ml=4"),
    ],
)
def test_a_small_value_alone_is_the_right_bed_or_the_right_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 at 1800 I wrote 451, it's 415", "corrected bed=3 at=18:00 was_ml=451 level_ml=415"),
        ("bed 3 is 415, I put 451 by accident", "corrected bed=3 was_ml=451 level_ml=415"),
        ("accidentally put 451 for bed 3, it's 415", "corrected bed=3 was_ml=451 level_ml=415"),
        ("I logged 415 on 4, was supposed to be on 3", "corrected bed=4 was_ml=415 to_bed=3"),
        ("was supposed to say 415 for bed 3", "corrected bed=3 level_ml=415"),
        ("415 on bed 3 was actually at 1800", "corrected bed=3 was_ml=415 to_at=18:00"),
        ("i meant bed 3 at 415", "corrected level_ml=415 to_bed=3"),
        ("i meant bed 3 at 1800", "corrected to_bed=3 to_at=18:00"),
        ("the 340 was for bed 6", "corrected was_ml=340 to_bed=6"),
        ("reverse that, 12 is 340, 13 is 220", "ask level_ml"),
        ("i put 340 on bed 5 at 1800, it's 360 at 1900", "ask level_ml"),
    ],
)
def test_what_was_written_and_what_it_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("yes 340 is correct", "answered answer=yes level_ml=340"),
        ("bed 12 340 correct", "answered bed=12 answer=yes level_ml=340"),
        ("correct 340", "corrected level_ml=340"),
        ("bed 12 correct 340", "corrected bed=12 level_ml=340"),
        ("bed 12 wrong 340 correct", "corrected bed=12 level_ml=340"),
        ("update: bed 3 is now 415", "mark bed=3 at=19:05 level_ml=415"),
        ("update bed 3 to 415", "corrected bed=3 level_ml=415"),
        ("void the 415 on bed 3", "ask at"),
        ("void the 1800 on bed 3", "withdrawn bed=3 at=18:00"),
    ],
)
def test_correct_behind_a_number_agrees_and_an_update_tells_what_is_new(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_dictated_last_entry_is_no_bed_that_was_lost() -> None:
    assert reading("move my last entry to bed six", channel="voice") == "corrected to_bed=6"
