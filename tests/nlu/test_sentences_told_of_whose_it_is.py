"""A line told behind whose it is, what surprises, where somebody sat, and who was sent elsewhere."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, BEDS, Channel, reading

HUNDREDS = tuple(str(number) for number in range(201, 231))
CARDIAC = (*(str(number) for number in range(1, 13)), *(f"CT{number}" for number in range(1, 9)))


def said(text: str, arrived: str, beds: tuple[str, ...], channel: Channel = "text") -> str:
    """One message that came at an hour such as "0304"."""
    at = ARRIVED.replace(hour=int(arrived[:2]), minute=int(arrived[2:]))
    return reading(text, beds=beds, channel=channel, arrived=at)


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1506", BEDS, "the 1500 line for bed 19 its 570", "mark bed=19 at=15:00 level_ml=570"),
        ("1506", BEDS, "1500 mark for bed 19, it's 570", "mark bed=19 at=15:00 level_ml=570"),
        ("1506", BEDS, "the line for bed 19 its 570 at 1500", "mark bed=19 at=15:00 level_ml=570"),
        ("1004", HUNDREDS, "1000 mark 216 = 555", "mark bed=216 at=10:00 level_ml=555"),
    ],
)
def test_the_line_of_a_time_and_a_bed_is_told_behind_them(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1506", BEDS, "the 1500 line for bed 19 its swinging", "checked bed=19 at=15:00 tidaling=True"),
        ("1506", BEDS, "cant do the line for bed 19 its clamped", "ask kind"),
        ("1506", BEDS, "the line for bed 19 its 2 hours late", "ask kind"),
        ("1506", BEDS, "the 1500 line for bed 19 its 20 past already", "ask kind"),
        ("1506", BEDS, "bed 16 1430 mark 12 = 555", "ask level_ml"),
        ("1506", BEDS, "1430 mark 16 = 1430", "ask level_ml"),
    ],
)
def test_what_else_is_said_of_it_is_no_line(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "2312",
            BEDS,
            (
                "Um hi, bed 3 is not tidaling anymore?? level is 390 mL at 2300. Vitals fine. "
                "Calling my preceptor"
            ),
            "mark bed=3 at=23:00 level_ml=390; checked bed=3 at=23:00 tidaling=False",
        ),
        (
            "2312",
            BEDS,
            "bed 3 isn't swinging any more??? level is 390 mL at 2300",
            "mark bed=3 at=23:00 level_ml=390; checked bed=3 at=23:00 tidaling=False",
        ),
    ],
)
def test_who_is_surprised_tells_what_was_found(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("2312", BEDS, "is bed 3 not tidaling anymore?? level is 390 mL at 2300", "ask at; ask level_ml"),
        ("2312", BEDS, "bed 3 is not tidaling anymore? level is 390 mL at 2300", "ask at; ask level_ml"),
        ("2312", BEDS, "bed 3 has no leak?? 390 at 2300", "ask at; ask level_ml"),
    ],
)
def test_who_asks_does_not(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1610",
            BEDS,
            (
                "So the grandson sat on the tubing in bed 8, whole thing kinked, I have freed it "
                "up and no harm done. Kids!!"
            ),
            "incident bed=8 what=kinked",
        ),
        (
            "1905",
            BEDS,
            "After the cough assist bed 15's leak is back, grade 3",
            "checked bed=15 air_leak=present leak_grade=3",
        ),
        (
            "2002",
            CARDIAC,
            "CT5 post op hour 4, pressors off, mediastinal line 450 at 2000",
            "mark bed=CT5 tube=mediastinal at=20:00 level_ml=450",
        ),
        (
            "2035",
            BEDS,
            (
                "Evening! Back for another one. Bed 8 says hello, he's on his third pudding. 865 "
                "mL at 2030, swinging away nicely"
            ),
            "mark bed=8 at=20:30 level_ml=865; checked bed=8 at=20:30 tidaling=True",
        ),
        (
            "0815",
            BEDS,
            "tues 2200 bed 14 was 510 - found it on my paper",
            "mark bed=14 at=03-Mar-22:00 level_ml=510",
        ),
        (
            "1520",
            BEDS,
            (
                "FYI the float nurse was pulled to ED before she could send hers: bed 3 was 255, "
                "bed 7 was 690, bed 8 was 130, all at 1500"
            ),
            (
                "mark bed=3 at=15:00 level_ml=255; mark bed=7 at=15:00 level_ml=690; mark bed=8 "
                "at=15:00 level_ml=130"
            ),
        ),
        ("1900", BEDS, "Which beds have I got drains in", "asked topic=beds"),
    ],
)
def test_what_is_told_around_it_changes_nothing(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1506", BEDS, "bed 4 is back for more", "back bed=4"),
        ("1506", BEDS, "bed 8 post op hour 4 450 at 1500", "ask level_ml"),
        ("1506", BEDS, "bed 8 sats 94 sat on the chair", "ask level_ml"),
        ("1506", BEDS, "bed 8 canister changed, the whole lot 1200", "ask final_ml"),
        ("1506", BEDS, "bed 14 was 510, found it on the floor", "mark bed=14 level_ml=510"),
    ],
)
def test_what_only_looks_like_it_is_not_left_out(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "2307",
            BEDS,
            ("Nothing at all since the last one from bed 3, not a drop, she's sound asleep so I let her be"),
            "drained bed=3 volume_ml=0",
        ),
        ("2307", BEDS, "bed 3 not a drop since the last one", "drained bed=3 volume_ml=0"),
        ("2307", BEDS, "not a drop out of bed 3 since 2200", "drained bed=3 volume_ml=0"),
        ("2307", BEDS, "Bed 3 had a rough hour, 340 at 2300", "mark bed=3 at=23:00 level_ml=340"),
        (
            "2307",
            BEDS,
            "Bed 14 265 mL at 2300, surgeon plans to pull it today",
            "mark bed=14 at=23:00 level_ml=265",
        ),
    ],
)
def test_nothing_is_told_in_many_words(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("2307", BEDS, "bed 3 rough 340 at 2300", "ask level_ml"),
        ("2307", BEDS, "bed 3 340 at 2300 rough", "mark bed=3 at=23:00 level_ml=340 about"),
        ("2307", BEDS, "bed 3 not a drop of urine since 2200", "ask kind"),
        ("2307", BEDS, "bed 3 not a drop spilled", "ask kind"),
        ("2307", BEDS, "not a drop from bed 3", "ask kind"),
        ("2307", BEDS, "bed 3 plan to pull tube today", "ask kind"),
        ("2307", BEDS, "bed 3 340 at 2300, team wants to clamp it tonight", "ask level_ml"),
    ],
)
def test_what_is_rough_or_of_another_thing_is_not(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1848",
            BEDS,
            "Bed 7 is at 1195 mls at 1845, last one from me today.",
            "mark bed=7 at=18:45 level_ml=1195",
        ),
        ("1848", BEDS, "bed 7 340 at 1845 thats the last one from me", "mark bed=7 at=18:45 level_ml=340"),
        ("1848", BEDS, "bed 7 last one from me was 340", "mark bed=7 level_ml=340 closing"),
        ("1848", BEDS, "last one from me today bed 7 340", "ask at"),
    ],
)
def test_the_last_one_from_somebody_ends_it(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read
