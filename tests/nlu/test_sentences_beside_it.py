"""What stands behind an event, and what is so today or settled by now: none of it makes a question."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading

AROUND_AN_EVENT = [
    ("clamped 20 at 1815 after tea", "incident bed=20 at=18:15 what=clamped"),
    ("bed 5 clamped at 1800 for the X ray", "incident bed=5 at=18:00 what=clamped"),
    ("unclamped 14 just after bed bath", "incident bed=14 what=unclamped"),
    ("bed 7 clamped at 1850 near the lift", "incident bed=7 at=18:50 what=clamped"),
    ("3 got tipped over at 1730 by the lunch cart", "incident bed=3 at=17:30 what=tipped"),
    ("box of bed 9 knocked over by a visitor's handbag", "incident bed=9 what=tipped"),
    ("bed 3 discharged at own request", "left bed=3"),
    ("bed 3 discharged home at 1800 at the family's request", "left bed=3 at=18:00"),
    ("swapped the canister on 4 before handover, final 1760", "exchanged bed=4 final_ml=1760"),
    ("bed 5 tube out at 1815 straight after dinner", "removed bed=5 at=18:15"),
    ("8 drain went over when the pole fell on it at 1825", "incident bed=8 at=18:25 what=tipped"),
    ("bed 8 did go to CT at 1700, back at 1730", "away bed=8 at=17:00; back bed=8 at=17:30"),
    ("16 wet around the site, bottle cracked at the bottom", "incident bed=16 what=damaged"),
    ("unclamped 14 during breakfast", "incident bed=14 what=unclamped"),
    ("clamped 6 at 1800 for the ultrasound", "incident bed=6 at=18:00 what=clamped"),
]
DOUBTED = [
    "ok back in with a light, bed 12 1050 at 1900",
    "clamped 6 with the catheter at 1800",
    "bed 5 tube out after lunch",
    "bed 5 tube out before rounds please",
    "tube out bed 5 for discussion",
    "clamped 20 after tea tomorrow",
    "bed 7 clamped at 1850 but not really",
    "bed 14 removed for swap",
    "bed 7 clamped on the wrong side",
    "clamped 20 at 1850 because it was pouring",
    "bed 8 has to go to CT at 1800",
    "bed 7 clamped at 1850 as though for transfer",
]


@pytest.mark.parametrize(("text", "said"), AROUND_AN_EVENT)
def test_when_where_why_and_by_whom_it_was_need_not_be_understood(text: str, said: str) -> None:
    assert reading(text) == said


@pytest.mark.parametrize("text", DOUBTED)
def test_what_may_be_planned_or_of_the_drain_behind_an_event_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


SO_BY_NOW = [
    ("12 much calmer today, line 900 at 0900", "mark bed=12 at=09:00 level_ml=900"),
    ("bed 12 1050 at 1900, much happier today", "mark bed=12 at=19:00 level_ml=1050"),
    ("calmer now, bed 12 1050 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
    ("2's drain came disconnected at 1745, back together now", "incident bed=2 at=17:45 what=disconnected"),
    ("foam settled, 3 reads 700 at 1815", "mark bed=3 at=18:15 level_ml=700"),
    ("label peeled now, 3 reads 700 at 1815", "mark bed=3 at=18:15 level_ml=700"),
    ("bed 12 1050 at 1900, label back on the door", "mark bed=12 at=19:00 level_ml=1050"),
    ("bed 12 1050 at 1900, mask back on", "mark bed=12 at=19:00 level_ml=1050"),
    ("went back to look: 6 is 330 at 1855", "mark bed=6 at=18:55 level_ml=330"),
    ("ok went back in with a light, 3 is 1490", "mark bed=3 level_ml=1490"),
    ("16 285 at 1800 pt pulled dressing off, drain ok", "mark bed=16 at=18:00 level_ml=285"),
    (
        "12 stripped tubing per protocol, big clot moved, line 335 at 1830",
        "mark bed=12 at=18:30 level_ml=335",
    ),
    ("12 350 at 1800, curtain moved", "mark bed=12 at=18:00 level_ml=350"),
]
NOT_SO = [
    "12 went back in, 330 at 1855",
    "12 moved, 350 at 1800",
    "pt moved, bed 12 350 at 1800",
    "12 clot moved to 14",
    "pt went back to bed, 12 330 at 1855",
    "16 285 at 1800, pt pulled his dressing and tube out",
    "foam not settled, 3 reads 700 at 1815",
    "3 700 at 1815, lots of foam",
    "16 870 at 1840, I was told",
    "bed 12 1050 at 1900, back on",
    "bed 12 today 900 at 0900",
    "much happier today, bed 12 1050",
]


@pytest.mark.parametrize(("text", "said"), SO_BY_NOW)
def test_what_is_so_today_or_over_by_now_changes_nothing_of_the_line(text: str, said: str) -> None:
    assert reading(text) == said


@pytest.mark.parametrize("text", NOT_SO)
def test_what_still_hides_the_line_or_may_be_its_time_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


AT_ITS_TIME = [
    ("bed 5 the line at 1900 was 150", "mark bed=5 at=19:00 level_ml=150"),
    ("the reading at 1855 in bed 14 was 820 ml", "mark bed=14 at=18:55 level_ml=820"),
    ("bed 5 level at 7pm is 640", "mark bed=5 at=19:00 level_ml=640"),
    (
        "bed 9 line at 1800 was 440, line at 1900 was 470",
        "mark bed=9 at=18:00 level_ml=440; mark bed=9 at=19:00 level_ml=470",
    ),
    (
        "bed 3 line at 1900 was 510, bed 4 line at 1900 was 95",
        "mark bed=3 at=19:00 level_ml=510; mark bed=4 at=19:00 level_ml=95",
    ),
    ("13 exactly on the 1100 mark at 1900", "mark bed=13 at=19:00 level_ml=1100"),
    ("bed 11 is at 1100, calm today, read at 1855", "mark bed=11 at=18:55 level_ml=1100"),
    ("4 got to 1600, coffee time. read at 1855", "mark bed=4 at=18:55 level_ml=1600"),
    ("marked 10 at 1850, it's 640 and on the sheet", "mark bed=10 at=18:50 level_ml=640"),
    ("marked 23 at 0900 as planned, 600", "mark bed=23 at=09:00 level_ml=600"),
    ("got 650 on 17 at 1845", "mark bed=17 at=18:45 level_ml=650"),
    ("12 chest 880 at 1815", "mark bed=12 at=18:15 level_ml=880"),
    ("bed 14 at 255, bloody", "mark bed=14 level_ml=255; checked bed=14 fluid=sanguineous"),
    ("17 end of shift 150 serous", "mark bed=17 level_ml=150 closing; checked bed=17 fluid=serous"),
    ("pulled the drain in 9 at 1500, it was at 150", "removed bed=9 at=15:00 level_ml=150"),
    ("100% on this one: 14 line 860 at 1900", "mark bed=14 at=19:00 level_ml=860"),
    ("bed 21 = 810 at 1850 two of us looked", "mark bed=21 at=18:50 level_ml=810"),
    ("bed 5 550 at 1900 na", "mark bed=5 at=19:00 level_ml=550"),
    ("bed 5 was 15 at 3pm and 55 at 6pm", "mark bed=5 at=15:00 level_ml=15; mark bed=5 at=18:00 level_ml=55"),
]
LINE_OR_TIME = [
    "bed 5 550 po",
    "bed 7 at 630, dark red",
    "bed 5 line at 1900 was 1850",
    "bed 5 line at 1845 was 1900",
    "bed 5 line at 1230 was 1180",
    "bed 5 line at 1900",
    "4 is at 1830 read at 1855",
]


@pytest.mark.parametrize(("text", "said"), AT_ITS_TIME)
def test_a_line_told_with_its_time_before_it_is_read(text: str, said: str) -> None:
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bed five the line at nineteen hundred was one fifty", "mark bed=5 at=19:00 level_ml=150"),
        ("the line at nineteen hundred on bed nine was four forty", "mark bed=9 at=19:00 level_ml=440"),
    ],
)
def test_and_so_is_one_that_is_dictated(text: str, said: str) -> None:
    assert reading(text, channel="voice") == said


@pytest.mark.parametrize("text", LINE_OR_TIME)
def test_two_numbers_that_may_both_be_the_line_are_asked(text: str) -> None:
    assert reading(text).startswith("ask ")
