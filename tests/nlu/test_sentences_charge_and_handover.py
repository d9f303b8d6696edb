"""What charge nurses ask, put right and take back, and what is handed over of beds with several tubes."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, MORNING, reading


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("whats still due before report", "asked topic=due"),
        ("what checks are missing on 12 before I hand over", "asked bed=12 topic=checks"),
        ("anything overdue before handover?", "asked topic=due"),
        ("handover on 5 please", "asked bed=5 topic=handoff"),
        ("report please before I go", "asked topic=handoff"),
    ],
)
def test_before_when_it_is_wanted_is_not_what_is_asked_for(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("is anybody close to full?", "asked topic=capacity"),
        ("which canisters are nearly full", "asked topic=capacity"),
        ("does anyone have a leak right now", "asked topic=checks"),
        ("rate on all beds", "asked topic=rate"),
        ("list everyone with a drain", "asked topic=beds"),
        ("which tube is leaking on 5", "asked bed=5 topic=checks"),
        ("any of them on wall suction right now", "asked topic=checks"),
        ("has anyone seen the portable suction machine?", "ask bed"),
        ("anyone got spare suction tubing?", "ask bed"),
        ("how full is it", "ask bed"),
        ("is anyone leaking", "asked topic=checks"),
        ("which box will fill first", "asked topic=capacity"),
        ("who still needs their 1800", "asked topic=due"),
        ("is everyone ok", "ask kind"),
    ],
)
def test_what_is_asked_of_every_bed_needs_no_bed(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("so is bed 2 draining faster than it was?", "asked bed=2 topic=trend"),
        ("has 18 slowed down any", "asked bed=18 topic=trend"),
        ("is 17 draining more than this morning?", "asked bed=17 topic=trend"),
        ("how does 9 compare with yesterday", "asked bed=9 topic=trend"),
        ("9 over the last 4 hours?", "asked bed=9 topic=total window=4h"),
        ("can you show me how bed 5 has gone since 1800?", "asked bed=5 topic=trend window=18:00"),
        ("what did days get on 12", "asked bed=12 topic=total window=last_shift"),
        ("what did the day girls get from 9", "asked bed=9 topic=total window=last_shift"),
        ("last shifts total for 12?", "asked bed=12 topic=total window=last_shift"),
        ("total for 3, nights", "ask window"),
        ("anything on 6 since midnight", "asked bed=6 topic=history"),
        ("has 9 been checked since he came back?", "asked bed=9 topic=checks"),
        ("is the left one on 9 still swinging", "asked bed=9 tube=left topic=checks"),
        ("what about 20", "asked bed=20 topic=last"),
        ("and 21?", "asked bed=21 topic=last"),
        ("how about 5 right", "asked bed=5 tube=right topic=last"),
        ("what about 340 for 5", "ask level_ml"),
        ("9 was checked and no leak", "checked bed=9 air_leak=none"),
    ],
)
def test_a_question_in_ones_own_words_has_its_topic(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("16 I fat fingered, 1140 not 1410", "corrected bed=16 was_ml=1410 level_ml=1140"),
        ("9 had 690, i read the 960 upside down lol", "corrected bed=9 was_ml=960 level_ml=690"),
        ("5 is 690, I misread it as 960", "corrected bed=5 was_ml=960 level_ml=690"),
        (
            "bed 8, the 2 pm reading was 1060, someone typed 1600",
            "corrected bed=8 at=14:00 was_ml=1600 level_ml=1060",
        ),
        ("7 is the right bed but the level should be 252", "corrected bed=7 level_ml=252"),
        (
            "15 1600 was 455 not 445, the 1500 is fine",
            "corrected bed=15 at=16:00 was_ml=445 level_ml=455",
        ),
        ("7's 1500 entry has the digits swapped, it's 285", "corrected bed=7 at=15:00 level_ml=285"),
        ("bed 6 1700 line belongs on bed 5", "corrected bed=6 at=17:00 to_bed=5"),
        ("7 box swapped at 1500", "exchanged bed=7 at=15:00"),
        ("6 is right but 5 should be 340", "ask kind"),
        ("the left on 5 should be 340, right is ok", "corrected bed=5 tube=left level_ml=340"),
        ("5 right is fine but left should be 340", "corrected bed=5 tube=left level_ml=340"),
        ("5 left should be right", "corrected bed=5 tube=left to_tube=right"),
        ("5 is 690, resident read it as 640", "ask level_ml"),
        (
            "bed 9 read 340 at 1800 box upside down",
            "mark bed=9 at=18:00 level_ml=340; incident bed=9 at=18:00 what=tipped",
        ),
    ],
)
def test_how_a_line_was_wrong_is_told_in_ones_own_words(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("3 1800 should be 1830, same number", "corrected bed=3 at=18:00 to_at=18:30"),
        ("3 1800 should say 1830", "ask at"),
        (
            "the time on my 11 line is wrong, I put 1800 but read it 1730",
            "corrected bed=11 at=18:00 to_at=17:30",
        ),
        ("I wrote 0400 for 12 but it was 0430", "corrected bed=12 at=04:00 to_at=04:30"),
        ("I put 400 for 12 but it was 430", "corrected bed=12 was_ml=400 level_ml=430"),
        ("I put 12 at 0400 but it was 340", "ask level_ml"),
        ("the 1700 for 19 was taken at 1640", "ask kind"),
        ("5 the 1600 is fine", "ask level_ml"),
    ],
)
def test_a_time_is_put_right_where_it_can_be_nothing_else(said: str, read: str) -> None:
    assert reading(said, arrived=ARRIVED if "0400" not in said else MORNING) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("remove the 18:00 line on bed 7, I read the catheter bag by mistake", "withdrawn bed=7 at=18:00"),
        ("please take out the second 12 entry at 1800, it went twice", "withdrawn bed=12 at=18:00"),
        ("my 1800 on 16 is in twice. remove one", "withdrawn bed=16 at=18:00"),
        ("the 1800 on 16 went in twice, take one out", "withdrawn bed=16 at=18:00"),
        ("bin my 1800 on 8", "withdrawn bed=8 at=18:00"),
        ("remove the 18:00 line on bed 7, I read 340", "ask kind"),
        ("can we lose the 1800 on 9", "withdrawn bed=9 at=18:00"),
        ("no need for that last entry on 2", "ask kind"),
        ("bin 8", "ask kind"),
        ("delete that leak, it was the bed 14 one", "ask kind"),
        ("delete that for bed 14", "withdrawn bed=14"),
        ("8 has two drains in, pull one at 1800", "ask bed"),
    ],
)
def test_a_line_is_taken_back_in_ones_own_words(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 5 transferred to stepdown with the tube in at 1840", "left bed=5 at=18:40"),
        ("bed 15 to HDU at 1840, drain still in", "left bed=15 at=18:40"),
        ("bed 4 moved across to 12 at 1845 drain and all", "moved bed=4 at=18:45 to_bed=12"),
        ("bed 5 chest drain in at 1840", "placed bed=5 at=18:40"),
        ("bed 15 tube pulled at 1840, drain still in", "ask level_ml"),
        (
            "3 has a new drain on the right for an effusion, went in at 1810",
            "placed bed=3 tube=right at=18:10 reason=effusion",
        ),
        ("bed 3 new drain, nurse went in at 1810", "ask level_ml"),
        ("13 dialled up to 30 at 1830", "checked bed=13 at=18:30 suction_cmh2o=30"),
        ("bed 3 to start on suction 10 per dr at 1800", "ordered bed=3 at=18:00 suction_cmh2o=10"),
        ("5 off suction now, was 20", "ask level_ml"),
        ("5 on water seal, was on 20", "checked bed=5 suction_cmh2o=0; ask level_ml"),
        (
            "5 off suction at 1800, was 340",
            "mark bed=5 at=18:00 level_ml=340; checked bed=5 at=18:00 suction_cmh2o=0",
        ),
    ],
)
def test_who_goes_with_the_drain_in_and_what_is_dialled(said: str, read: str) -> None:
    assert reading(said) == read


BOTH = "mark bed=8 tube=right at=18:00 level_ml=310; mark bed=8 tube=left at=18:00 level_ml=95"


@pytest.mark.parametrize(
    ("said", "found"),
    [
        ("no leak on the right", "checked bed=8 tube=right at=18:00 air_leak=none"),
        (
            "no leak on right, left has a leak",
            "checked bed=8 tube=right at=18:00 air_leak=none; "
            "checked bed=8 tube=left at=18:00 air_leak=present",
        ),
        ("dark blood in the left", "checked bed=8 tube=left at=18:00 fluid=dark_red"),
        ("left is on 20", "checked bed=8 tube=left at=18:00 suction_cmh2o=20"),
        ("no leak", "ask tube"),
        ("no leak, left on 20", "checked bed=8 tube=left at=18:00 suction_cmh2o=20; ask tube"),
    ],
)
def test_what_is_found_behind_two_tubes_is_of_the_one_that_is_named(said: str, found: str) -> None:
    assert reading(f"8 right 310 left 95 at 1800, {said}") == f"{BOTH}; {found}"


@pytest.mark.parametrize(
    "said", ["right leaking", "right is leaking", "leak on 12", "left swinging, right not"]
)
def test_what_one_tube_is_not_and_what_leaks_in_unclear_words_is_asked(said: str) -> None:
    assert "ask" in reading(f"8 right 310 left 95 at 1800. {said}")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "10 has two drains. right 310 left 180 at 1845, right has an air leak",
            "mark bed=10 tube=right at=18:45 level_ml=310; mark bed=10 tube=left at=18:45 level_ml=180; "
            "checked bed=10 tube=right at=18:45 air_leak=present",
        ),
        (
            "8 right 310 left 95 at 1800, left swinging, no leak on either",
            "mark bed=8 tube=right at=18:00 level_ml=310; checked bed=8 tube=right at=18:00 air_leak=none; "
            "mark bed=8 tube=left at=18:00 level_ml=95; "
            "checked bed=8 tube=left at=18:00 air_leak=none tidaling=True",
        ),
        ("8 no leak but now leaking", "ask kind"),
        ("8 340 at 1800, dressing leaking", "mark bed=8 at=18:00 level_ml=340"),
        (
            "bed 8 340 with leak at 18:00",
            "mark bed=8 at=18:00 level_ml=340; checked bed=8 at=18:00 air_leak=present",
        ),
        ("8 leak at 3", "checked bed=8 air_leak=present leak_grade=3"),
        ("11 grade 2 leak at 1845", "checked bed=11 at=18:45 air_leak=present leak_grade=2"),
    ],
)
def test_a_leak_is_told_with_its_tube_and_its_time(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 7 was 340 at 6, that is the right one", "mark bed=7 at=18:00 level_ml=340"),
        ("bed 7 340 at 1800 right one", "mark bed=7 tube=right at=18:00 level_ml=340"),
        ("bed 4 closing 80 read at 1845", "mark bed=4 at=18:45 level_ml=80 closing"),
        ("put 12 in as 905 at 1820, I was held up in a code", "mark bed=12 at=18:20 level_ml=905"),
        ("3 already 700 at 1828", "mark bed=3 at=18:28 level_ml=700"),
        ("600 already out of 16", "ask level_ml"),
        ("5 reads 345 now at 1850", "mark bed=5 at=18:50 level_ml=345"),
        ("5 was 940 now at 1850", "ask level_ml"),
        ("24 still bubbling a lot, no change from evening", "checked bed=24 air_leak=present; ask volume_ml"),
        (
            "4 on gravity, 155 at 1830, no swing",
            "mark bed=4 at=18:30 level_ml=155; checked bed=4 at=18:30 suction_cmh2o=0 tidaling=False",
        ),
    ],
)
def test_a_line_that_comes_late_or_again_is_read(said: str, read: str) -> None:
    assert reading(said) == read


ROWS = (
    "mark bed=1 level_ml=190 closing; checked bed=1 {found}; "
    "mark bed=2 level_ml=720 closing; checked bed=2 {found}"
)


@pytest.mark.parametrize(
    "said",
    [
        "shift end 1 190 no leak, 2 720 no leak",
        "shift end: 1 190 no leak, 2 720 no leak",
        "closing: 1 190 no leak, 2 720 no leak",
    ],
)
def test_a_bed_and_its_line_behind_a_heading_are_no_thousand(said: str) -> None:
    assert reading(said) == ROWS.format(found="air_leak=none")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "closing: 1 190 no leak, 2 720 no leak, 3 640 no leak",
            ROWS.format(found="air_leak=none") + "; ask kind",
        ),
        ("line: 1 190 on bed 4", "mark bed=4 level_ml=1190"),
        ("closing one hundred ninety on bed four", "mark bed=4 level_ml=190 closing"),
        (
            "4 190 at 1800 ws no leak",
            "mark bed=4 at=18:00 level_ml=190; checked bed=4 at=18:00 suction_cmh2o=0 air_leak=none",
        ),
        ("4 190 ws", "mark bed=4 level_ml=190; checked bed=4 suction_cmh2o=0"),
        (
            "4 190 at 1800 water seal 2",
            "mark bed=4 at=18:00 level_ml=190; checked bed=4 at=18:00 seal_cm=2",
        ),
        ("4 190 water seal fine no leak", "ask seal_cm; ask seal_cm"),
        ("tube out bed 19 at 1830, 1220 total in box", "removed bed=19 at=18:30 level_ml=1220"),
        (
            "19 tube out at 1830, 1220 total since midnight",
            "removed bed=19 at=18:30; ask kind",
        ),
    ],
)
def test_what_is_told_at_the_end_of_a_shift(said: str, read: str) -> None:
    assert reading(said) == read


LINE = "mark bed=22 at=18:45 level_ml=410"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("water seal since 1500, no leak", f"{LINE}; checked bed=22 at=18:45 suction_cmh2o=0 air_leak=none"),
        ("suction 20 since 1500", f"{LINE}; checked bed=22 at=18:45 suction_cmh2o=20"),
        ("no leak since 1500", f"{LINE}; checked bed=22 at=18:45 air_leak=none"),
        ("suction off since 1500", f"{LINE}; incident bed=22 at=15:00 what=suction_off"),
        ("200 since 1500", "ask level_ml"),
        ("leaking since 1500", "ask level_ml"),
    ],
)
def test_since_when_something_is_so_is_no_time_of_the_line(said: str, read: str) -> None:
    assert reading(f"22 410 at 1845, {said}") == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("missed sending 13's 1500, it was 1240", "mark bed=13 at=15:00 level_ml=1240"),
        ("didn't get to send 13 at 1500, it was 1240", "mark bed=13 at=15:00 level_ml=1240"),
        ("I owe you a 1500 for bed 2, 1240", "mark bed=2 at=15:00 level_ml=1240"),
        ("missed 13 at 1500", "ask kind"),
        ("missed 13's 1500", "ask kind"),
        ("forgot bed 13 at 1500", "ask kind"),
        ("didn't you get 13 at 1500", "ask kind"),
    ],
)
def test_a_line_that_was_forgotten_is_told_late_or_is_none(said: str, read: str) -> None:
    assert reading(said) == read
