"""Short words with two letters swapped or a vowel lost, and bare hours in corrections."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, BEDS, Channel, reading


def said(text: str, arrived: str, beds: tuple[str, ...], channel: Channel = "text") -> str:
    """One message that came at an hour such as "0304"."""
    at = ARRIVED.replace(hour=int(arrived[:2]), minute=int(arrived[2:]))
    return reading(text, beds=beds, channel=channel, arrived=at)


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "0304",
            BEDS,
            "bed 8 lne 350 at 0300 no laek",
            "mark bed=8 at=03:00 level_ml=350; checked bed=8 at=03:00 air_leak=none",
        ),
        (
            "1940",
            BEDS,
            "bed 24 cahnged the box at 1925 old oen 1795 pt watching telly",
            "exchanged bed=24 at=19:25 final_ml=1795",
        ),
        (
            "0304",
            BEDS,
            "changed teh bxo on 4 at 0250 odl noe 1795 nwe one on",
            "exchanged bed=4 at=02:50 final_ml=1795",
        ),
        ("0304", BEDS, "teh line for bde 5 wsa 230 at 0300", "mark bed=5 at=03:00 level_ml=230"),
        (
            "0304",
            BEDS,
            "bed 8 aws 350 at 0300 adn no lak",
            "mark bed=8 at=03:00 level_ml=350; checked bed=8 at=03:00 air_leak=none",
        ),
        ("0304", BEDS, "bed 8 back from xry at 0240", "back bed=8 at=02:40"),
        ("0304", BEDS, "lne 350 ofr bed 8 becuase i forgot it", "mark bed=8 level_ml=350"),
        ("0304", BEDS, "odl box 350 bed 8", "exchanged bed=8 final_ml=350"),
    ],
)
def test_short_words_are_put_right(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("0304", BEDS, "bed lne 350 at 0300", "ask bed"),
        ("0304", BEDS, "bed 8 one lne 350", "ask level_ml"),
        ("0304", BEDS, "bed oen lne 350", "ask bed"),
        ("0304", BEDS, "bed 8 oen 350", "ask level_ml"),
        ("0304", BEDS, "bed 8 lne out 0250", "ask level_ml"),
        ("0304", BEDS, "bed 8 nwo 350 at 0300", "ask level_ml"),
        ("0304", BEDS, "bed 8 tub 350 at 0300", "ask level_ml"),
        ("0304", BEDS, "bed 8 upt 350", "ask level_ml"),
        ("0304", BEDS, "bed 8 3lne50 at 0300", "ask bed"),
    ],
)
def test_what_may_be_a_number_or_another_word_is_not_put_right(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("0325", BEDS, "can you delete what i put for bed 19 at 3", "withdrawn bed=19 at=03:00"),
        ("0325", BEDS, "delete the bed 19 mark at 3", "withdrawn bed=19 at=03:00"),
        ("0325", BEDS, "scratch what i sent for 9 at 2", "withdrawn bed=9 at=02:00"),
        ("0325", BEDS, "remove my entry for bed 12 at 3", "withdrawn bed=12 at=03:00"),
        ("0325", BEDS, "delete bed 4 at 9", "ask at"),
        ("0325", BEDS, "delete the line at 3", "ask at"),
    ],
)
def test_a_bare_hour_says_which_line_is_taken_back(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "0330",
            BEDS,
            "bed 22 should of been 1240 at 3 not 1340",
            "corrected bed=22 at=03:00 was_ml=1340 level_ml=1240",
        ),
        ("0330", BEDS, "correct bed 22 at 3 to 1240", "corrected bed=22 at=03:00 level_ml=1240"),
        (
            "0330",
            BEDS,
            "bed 22 at 3 was 1240 not 1340",
            "corrected bed=22 at=03:00 was_ml=1340 level_ml=1240",
        ),
        ("0330", BEDS, "my mark at 3 for bed 4 should be 560", "corrected bed=4 at=03:00 level_ml=560"),
        (
            "0330",
            BEDS,
            "the line at 3 for bed 22 is wrong it was 1240",
            "corrected bed=22 at=03:00 level_ml=1240",
        ),
        (
            "0330",
            BEDS,
            "change bed 5s line at 3 to 560 not 650",
            "corrected bed=5 at=03:00 was_ml=650 level_ml=560",
        ),
        (
            "0330",
            BEDS,
            "bed 4 at 3 i put 650 should be 560",
            "corrected bed=4 at=03:00 was_ml=650 level_ml=560",
        ),
        (
            "0330",
            BEDS,
            "bed 22 should be 1240 at 0300 not 1340",
            "corrected bed=22 at=03:00 was_ml=1340 level_ml=1240",
        ),
        ("0330", BEDS, "correct bed 4 at 9 to 340", "ask at"),
        ("0330", BEDS, "bed 4 at 10 should be 100", "corrected bed=4 was_ml=10 level_ml=100"),
        ("0330", BEDS, "bed 4 line is at 3 should be 340", "corrected bed=4 was_ml=3 level_ml=340"),
        ("0330", BEDS, "bed 4 was 340 at 3 not 4", "ask level_ml"),
        ("0330", BEDS, "correct the mark at 3 to 340", "ask bed"),
        ("1930", BEDS, "bed 22 should be 1840 at 1900 not 1830", "ask at"),
    ],
)
def test_a_bare_hour_says_which_line_was_wrong(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1905", BEDS, "bed 9 not tidaling, sel 2", "checked bed=9 seal_cm=2 tidaling=False"),
        ("1905", BEDS, "total lst shift bed 20", "asked bed=20 topic=total window=last_shift"),
        ("1905", BEDS, "20 imn ago bed 16 was on 1005", "mark bed=16 at=18:45 level_ml=1005"),
        (
            "1905",
            BEDS,
            "bed 16 340 at 1850 iar leak",
            "mark bed=16 at=18:50 level_ml=340; checked bed=16 at=18:50 air_leak=present",
        ),
        ("1905", BEDS, "bed 9 tube otu at 1850", "removed bed=9 at=18:50"),
        (
            "1905",
            BEDS,
            "rm 5 / 790 mL / 1850 / sxn 20 / lak none",
            ("mark bed=5 at=18:50 level_ml=790; checked bed=5 at=18:50 suction_cmh2o=20 air_leak=none"),
        ),
        ("1905", BEDS, "bed 9 dwn to xray 1850", "away bed=9 at=18:50"),
    ],
)
def test_more_short_words_are_put_right(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1905", BEDS, "bed 7 lst his tidaling at 1830", "ask kind"),
        ("1905", BEDS, "bed 9 wll need a change", "ask level_ml"),
        ("1905", BEDS, "bed 9 tbe out at 1850", "ask level_ml"),
        ("1905", BEDS, "bed 9 sel 340 at 1900", "ask level_ml"),
        ("1905", BEDS, "tube not otu bed 9", "ask kind"),
    ],
)
def test_where_two_words_may_be_meant_it_is_left(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read
