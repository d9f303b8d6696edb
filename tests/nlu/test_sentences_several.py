"""Several statements in one message, as nurses type them: who has which time, which line closes the shift."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "closing for bed 3: right apical 120, right basal 290. closing for bed 16: 310",
            "mark bed=3 tube=right apical level_ml=120 closing; "
            "mark bed=3 tube=right basal level_ml=290 closing; mark bed=16 level_ml=310 closing",
        ),
        (
            "bed 3 120 at 0650. closing for bed 16: 310",
            "mark bed=3 at=06:50 level_ml=120; mark bed=16 at=06:50 level_ml=310 closing",
        ),
        (
            "bed 3 120 at 0650, closing. bed 16 310",
            "mark bed=3 at=06:50 level_ml=120 closing; mark bed=16 at=06:50 level_ml=310",
        ),
        (
            "bed 9 is 65 and bed 2 is 110 at 06:50, last lines from my side",
            "mark bed=9 at=06:50 level_ml=65 closing; mark bed=2 at=06:50 level_ml=110 closing",
        ),
        (
            "last ones b4 i go: bed 13 190 at 0650, bed 16 365 at 0655",
            "mark bed=13 at=06:50 level_ml=190 closing; mark bed=16 at=06:55 level_ml=365 closing",
        ),
        ("bed 9 65 at 0650, thats my last line", "mark bed=9 at=06:50 level_ml=65 closing"),
        ("bed 4 final line of the shift is 480 at 6:50 am", "mark bed=4 at=06:50 level_ml=480 closing"),
        ("delete my last line bed 9", "withdrawn bed=9"),
    ],
)
def test_each_line_is_the_last_of_the_shift_where_that_is_said_of_it(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 4 final line of the shift is 480 at 6:50 am. Handoff for bed 4 please!",
            "mark bed=4 at=06:50 level_ml=480 closing; asked bed=4 topic=handoff",
        ),
        (
            "End of shift line, bed 10, 1,465 mL at 6:45. Kindly give me the total for the shift for bed 10.",
            "mark bed=10 at=06:45 level_ml=1465 closing; asked bed=10 topic=total window=shift",
        ),
        (
            "bed 19 drain's sitting at 1120 at 0645, and whit's due on 19?",
            "mark bed=19 at=06:45 level_ml=1120; asked bed=19 topic=due",
        ),
        ("bed 10 1465 at 0645, is that right?", "ask level_ml"),
        ("bed 10 1465 at 0645, wrong bed? last line on 14?", "ask to_bed"),
    ],
)
def test_a_line_and_what_is_asked_behind_it(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 5 tube out at 1845, final 220. bed 7 moved to 10",
            "removed bed=5 at=18:45 level_ml=220; moved bed=7 to_bed=10",
        ),
        (
            "bed 5 tube out at 1845, bed 7 moved to 10",
            "removed bed=5 at=18:45; moved bed=7 to_bed=10",
        ),
        (
            "bed 5 tube out and bed 7 moved to 10 at 1845",
            "removed bed=5 at=18:45; moved bed=7 at=18:45 to_bed=10",
        ),
        (
            "at 1840 bed 7 tipped, bed 8 clamped",
            "incident bed=7 at=18:40 what=tipped; incident bed=8 at=18:40 what=clamped",
        ),
        (
            "bed 5 tube out. bed 7 mark 340 at 1845",
            "removed bed=5; mark bed=7 at=18:45 level_ml=340",
        ),
    ],
)
def test_an_event_of_another_bed_has_not_the_time_of_the_one_before(text: str, read: str) -> None:
    assert reading(text) == read


TWO_LINES = "mark bed=3 at=18:50 level_ml=610; mark bed=5 at=18:55 level_ml=20"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 and 5 done: bed 3 610 at 1850, bed 5 20 at 1855", TWO_LINES),
        ("beds 3 and 5. 3 610 at 1850, 5 20 at 1855", TWO_LINES),
        ("marks for 3, 5: 3 610 at 1850, 5 20 at 1855", TWO_LINES),
        (
            "picked up 3, 5 and 9. 3 is 418, 5 is 242, 9 is 771, all at 1850",
            "mark bed=3 at=18:50 level_ml=418; mark bed=5 at=18:50 level_ml=242; "
            "mark bed=9 at=18:50 level_ml=771",
        ),
        ("3 and 5: 3 610 at 1850", "ask level_ml"),
        ("3 and 5 wrong: bed 3 610 at 1850, bed 5 20 at 1855", "ask level_ml"),
        ("5 and 3 done: bed 3 610 at 1850, bed 5 20 at 1855", "ask level_ml"),
        ("dont chart 3, 5 and 9. 3 is 418, 5 is 242, 9 is 771, all at 1850", "ask kind"),
    ],
)
def test_a_heading_of_beds_tells_nothing_of_its_own(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 22 R 160 L 330 at 1900. left has a continuous leak",
            "mark bed=22 tube=right at=19:00 level_ml=160; mark bed=22 tube=left at=19:00 level_ml=330; "
            "checked bed=22 tube=left at=19:00 air_leak=continuous",
        ),
        (
            "bed 22 R 160 L 330 at 1900, no leak",
            "mark bed=22 tube=right at=19:00 level_ml=160; mark bed=22 tube=left at=19:00 level_ml=330; "
            "ask tube",
        ),
        (
            "rounds: bed 2 mark 415 at 1900 no leak. bed 9 clamped at 1840",
            "mark bed=2 at=19:00 level_ml=415; checked bed=2 at=19:00 air_leak=none; "
            "incident bed=9 at=18:40 what=clamped",
        ),
        (
            "bed 5 mark 1140 at 1855, thats my end of shift line. seal is 2, suction 20",
            "mark bed=5 at=18:55 level_ml=1140 closing; checked bed=5 at=18:55 seal_cm=2 suction_cmh2o=20",
        ),
        (
            "pulled left ct on 20 at 1820, final level 455. right one stays",
            "removed bed=20 tube=left at=18:20 level_ml=455",
        ),
        ("bed 20 left tube out, right stays, 455", "ask level_ml"),
    ],
)
def test_what_stands_in_the_next_sentence_is_of_the_tube_that_it_names(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 8 change bottle at 1850, old 1890, new one start 0",
            "exchanged bed=8 at=18:50 final_ml=1890 opening_ml=0",
        ),
        (
            "changed the left canister on 6 at 1840, old one 1320 ml",
            "exchanged bed=6 tube=left at=18:40 final_ml=1320",
        ),
        ("changed bed 7 box at 1840, old one 1890", "exchanged bed=7 at=18:40 final_ml=1890"),
        (
            "4 mark 560 at 1830 and changed 7 at 1835 old one 1495",
            "mark bed=4 at=18:30 level_ml=560; exchanged bed=7 at=18:35 final_ml=1495",
        ),
        ("changed meds 7 at 1835, old 20", "ask kind"),
        ("changed 4 to suction 20, old 10", "ask kind; ask kind"),
        ("changed bed 7 battery at 1835, old one 12", "ask kind"),
        ("changed 7 at 1835, new one 20", "ask level_ml"),
    ],
)
def test_what_was_changed_is_a_canister_where_the_old_one_is_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 10 drained 60mls from 1900hrs", "drained bed=10 volume_ml=60"),
        ("bed 10 drained 60 from 1800 at 1845", "drained bed=10 at=18:45 volume_ml=60"),
        ("bed 9 gave 40 since the change", "drained bed=9 volume_ml=40"),
        ("bed 9 drained 40 since the canister was changed", "drained bed=9 volume_ml=40"),
        ("bed 9 is at 40 since the change", "mark bed=9 level_ml=40"),
        ("bed 6 nill drained, still 350mls at 1900hrs", "mark bed=6 at=19:00 level_ml=350"),
        ("bed 6 nil drained", "drained bed=6 volume_ml=0"),
    ],
)
def test_since_when_an_amount_came_is_not_when_it_was_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("mistake, bed 6 13:00 was not 45 but 54", "corrected bed=6 at=13:00 was_ml=45 level_ml=54"),
        ("bed 12 1300 was not 945 but 954", "corrected bed=12 at=13:00 was_ml=945 level_ml=954"),
        ("bed 12 not 950 but 905", "corrected bed=12 was_ml=950 level_ml=905"),
        ("bed 12 is not at 950 but 905", "ask kind"),
        ("bed 12 suction not 10 but 20", "ask kind"),
        ("bed 12 did not drain 50 but 60", "ask kind"),
        ("bed 12 was not 1800 but 1810", "ask at"),
    ],
)
def test_not_this_but_that_puts_a_line_right(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "fix bed 6 1800 to 304. bed 6 330 at 1900",
            "corrected bed=6 at=18:00 level_ml=304; mark bed=6 at=19:00 level_ml=330",
        ),
        (
            "delete bed 6 1800. bed 6 330 at 1900",
            "withdrawn bed=6 at=18:00; mark bed=6 at=19:00 level_ml=330",
        ),
        (
            "moved bed 5 to 15 at 1810. bed 15 line 660 at 1900",
            "moved bed=5 at=18:10 to_bed=15; mark bed=15 at=19:00 level_ml=660",
        ),
        ("bed 6 340 at 1800. sorry bed 7 340 at 1800", "ask bed"),
        ("dont chart bed 6. bed 7 mark 340 at 1800", "ask bed"),
        ("wrong bed. bed 7 340 at 1800. bed 8 210 at 1800", "ask level_ml"),
        ("bed 6 urine 340 at 1800. bed 7 340 at 1800", "ask kind"),
        (
            "18 old canister final 1990 at 1855. new canister 15 at 1900",
            "exchanged bed=18 at=18:55 final_ml=1990; ask level_ml",
        ),
    ],
)
def test_sentences_are_read_one_by_one_where_each_is_whole_and_names_its_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 9 l 430 r 110 at 1900. changed the left box at 1830, old was 1700",
            "mark bed=9 tube=left at=19:00 level_ml=430; mark bed=9 tube=right at=19:00 level_ml=110; "
            "exchanged bed=9 tube=left at=18:30 final_ml=1700",
        ),
        (
            "bed 10 end of shift 430. changed canister at 1830, old 1980",
            "mark bed=10 level_ml=430 closing; exchanged bed=10 at=18:30 final_ml=1980",
        ),
        (
            "end of shift: bed 9 l 430 r 110, bed 10 220. all 1900",
            "mark bed=9 tube=left at=19:00 level_ml=430 closing; "
            "mark bed=9 tube=right at=19:00 level_ml=110 closing; mark bed=10 at=19:00 level_ml=220 closing",
        ),
        (
            "bed 13 300 at 1900 suction off since 1830",
            "mark bed=13 at=19:00 level_ml=300; incident bed=13 at=18:30 what=suction_off",
        ),
        (
            "bed 20 discharged at 1800, final line 275",
            "mark bed=20 at=18:00 level_ml=275; left bed=20 at=18:00",
        ),
        (
            "at 1900 bed 3 80 bed 14 420 no leaks",
            "mark bed=3 at=19:00 level_ml=80; mark bed=14 at=19:00 level_ml=420; "
            "checked bed=14 at=19:00 air_leak=none",
        ),
        (
            "bed 12 1050, bed 14 220 at 1900, both no leak",
            "mark bed=12 at=19:00 level_ml=1050; checked bed=12 at=19:00 air_leak=none; "
            "mark bed=14 at=19:00 level_ml=220; checked bed=14 at=19:00 air_leak=none",
        ),
        (
            "beds 1, 2 and 3 all no leak at 1900",
            "checked bed=1 at=19:00 air_leak=none; checked bed=2 at=19:00 air_leak=none; "
            "checked bed=3 at=19:00 air_leak=none",
        ),
        ("bed 18 1990 changed it at 1855", "ask level_ml"),
        ("bed 18 mark 1990 at 1855, changed the box", "ask level_ml"),
        (
            "bed 4 to OR at 1745, mark before he left 720 at 1740",
            "away bed=4 at=17:45; mark bed=4 at=17:40 level_ml=720",
        ),
    ],
)
def test_every_statement_has_the_time_of_its_own_sentence(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 L 210 R 95", "mark bed=3 tube=left level_ml=210; mark bed=3 tube=right level_ml=95"),
        (
            "3L 210/R 95 at 0645",
            "mark bed=3 tube=left at=06:45 level_ml=210; mark bed=3 tube=right at=06:45 level_ml=95",
        ),
        (
            "9 1620, 5 L 210 and right 95",
            "mark bed=9 level_ml=1620; mark bed=5 tube=left level_ml=210; mark bed=5 tube=right level_ml=95",
        ),
    ],
)
def test_a_bed_with_both_its_sides_is_no_number_of_litres(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 R 1 L 0640", "mark bed=12 tube=right at=06:40 level_ml=1000"),
        ("bed 12, 1 L 0640 R side", "mark bed=12 tube=right at=06:40 level_ml=1000"),
        ("2 L 0640 R 300", "ask level_ml"),
        ("12, 2 L 0640 R 300", "ask bed"),
        ("bed 12, 2 L 0640 R 300", "ask level_ml"),
        ("12 R 95, 1 L 0640", "ask bed"),
    ],
)
def test_litres_stay_litres_where_a_time_stands_behind_them(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 8 clamped 1800. bed 9 to ct 1810, back 1840. bed 10 410 at 1900",
            "incident bed=8 at=18:00 what=clamped; away bed=9 at=18:10; back bed=9 at=18:40; "
            "mark bed=10 at=19:00 level_ml=410",
        ),
        ("clamped at 1800, bed 9", "incident bed=9 at=18:00 what=clamped"),
        (
            "bed 3 dumped 200 when turned, now 860 at 1845",
            "drained bed=3 at=18:45 volume_ml=200; mark bed=3 at=18:45 level_ml=860",
        ),
        ("bed 4 730 at 1900, going home", "ask level_ml"),
        ("going home, bed 4 730 at 1900", "ask kind"),
        ("bed 4 going home at 1900", "left bed=4 at=19:00"),
        (
            "canister in 6 changed by dayshift at 1830, 1960 in old",
            "exchanged bed=6 at=18:30 final_ml=1960",
        ),
        ("bed 6 box 340, changed to suction 20 at 1830, old setting 10", "ask kind"),
        ("canister in 6 changed position at 1830, old 1960", "ask kind"),
    ],
)
def test_what_happened_is_of_the_bed_that_its_sentence_named_last(text: str, read: str) -> None:
    assert reading(text) == read
