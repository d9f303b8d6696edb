"""What a recogniser writes for a word of the ward."""

from __future__ import annotations

import pytest

import nlu
from nlu.statements import Mark

from .saying import ARRIVED, BEDS, LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("at 12 Mark 1050 at 1900.", "mark bed=12 at=19:00 level_ml=1050"),
        ("Dead 17 mark 950 at 1850", "mark bed=17 at=18:50 level_ml=950"),
        ("Bit 12 change canister at 1820 old one 1980", "exchanged bed=12 at=18:20 final_ml=1980"),
        ("bad three right mark six fifty at nineteen oh five", "mark bed=3 tube=right at=19:05 level_ml=650"),
        ("bed 12 mark 340 at O700 this morning", "mark bed=12 at=07:00 level_ml=340"),
        ("bed 12 mark 340 at O-900", "mark bed=12 at=09:00 level_ml=340"),
        ("bed 12 mark 340 at 0 900", "mark bed=12 at=09:00 level_ml=340"),
    ],
)
def test_a_misheard_bed_or_nought_is_put_right(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "at 12 mark 1050",
        "drained a bit 40 ml",
        "bed 3 serous and bonus mark 980 at 1900",
        "bed 9 Sarah's fluid no air leak",
        "bed 7 mark 128 7 oh 2 pm",
        "the leak oh last reading for bed three",
        "to leave the last reading for bed three",
        "and ah and sixty",
        "and three on ah it's it's the ah the the",
    ],
)
def test_words_that_show_that_something_was_lost_are_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7 tube A the canister is reading 2.14 L", "mark bed=7 tube=A level_ml=2140"),
        ("bed 12 tube A okay at 755", "mark bed=12 tube=A level_ml=755"),
        (
            "bed twelve tube a three forty tube b one twenty at nineteen hundred",
            "mark bed=12 tube=A at=19:00 level_ml=340; mark bed=12 tube=B at=19:00 level_ml=120",
        ),
        ("bed ten right tube the level is thirty two ml", "mark bed=10 tube=right level_ml=32"),
        ("bed five marked at seven hundred and five o'clock pm", "mark bed=5 at=17:00 level_ml=700"),
        ("bed 12 line five hundred and twenty minutes to six p m", "mark bed=12 at=17:40 level_ml=500"),
        ("bed 12 mark nine forty eight seven o'clock", "mark bed=12 at=19:00 level_ml=948"),
        ("bed six mark oh point nine two litres at nineteen hundred", "mark bed=6 at=19:00 level_ml=920"),
        ("18:50 bed 6 marked at 3 60", "mark bed=6 at=18:50 level_ml=360"),
        ("bed six mark 1452 ml at okay uh nineteen hundred", "mark bed=6 at=19:00 level_ml=1452"),
        ("bed twelve mark ten-fifty at nineteen-hundred", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed twelve's canister is at nine forty at nineteen hundred", "mark bed=12 at=19:00 level_ml=940"),
        ("bed nine's tube got pulled out by accident", "incident bed=9 what=dislodged"),
        ("when will bed three's canister be full", "asked bed=3 topic=capacity"),
        ("put down six twenty for bed nine at nineteen hundred", "mark bed=9 at=19:00 level_ml=620"),
        ("bed nine fluid turned milky", "checked bed=9 fluid=chylous"),
        ("no no", "answered answer=no"),
    ],
)
def test_what_a_careful_listener_understands_is_read(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve at seven", "ask level_ml"),
        ("Bed to tube 1 marked at 700 and 11 a.m.", "ask level_ml"),
        ("bed five uh shows twenty five thirty one", "ask level_ml"),
    ],
)
def test_two_ways_to_hear_a_number_are_asked(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


def test_the_letter_of_a_bed_is_not_taken_for_the_article_of_another_line() -> None:
    text = "at eighteen fifty bed two A line at twenty one hundred thirty"

    assert "level_ml=1850" not in reading(text, beds=LETTERED, channel="voice")


@pytest.mark.parametrize(
    ("own", "other", "level"),
    [
        ("red twelve marked zen fifty", "bed twelve mark ten fifty at nineteen hundred", None),
        ("head five marked zen at nineteen hundred", "bed five mark ten at nineteen hundred", 10),
        ("room six mark 1920 minutes to seven", "room six at 1840 the level is 1895", None),
        ("Bed to left at uh so 3:53 so so the lane is reading 7 26", "15 53 bed 4 left mark is 726", None),
        ("bed 6 mark 250 at 1855", "then i'm sure it's a march", 250),
        ("bed 6 mark 250 at 1855", "bed 6 mark 215 at 1855", None),
        ("bed 6 mark 250 at 1855", "bed 6 mark 250 at 1855", 250),
        ("bed 6 mark 83 at 1855", "bed twenty four uh eighty three ml at six fifty five", None),
    ],
)
def test_another_hypothesis_counts_only_where_no_number_of_the_first_speaks_against_it(
    own: str, other: str, level: int | None
) -> None:
    parsed = nlu.parse(own, arrived=ARRIVED, beds=BEDS, channel="voice", alternatives=[(other, 0.9)])

    assert [s.level_ml for s in parsed.statements if isinstance(s, Mark)] == ([level] if level else [])
    assert bool(parsed.unclear) == (level is None)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed two mark to fifty five at six ten pm", "ask level_ml"),
        ("bed nine level to eighty at six pm", "ask level_ml"),
        ("bed four mark up to three forty at six pm", "mark bed=4 at=18:00 level_ml=340"),
        (
            "correct bed twelve the eighteen hundred mark to ten oh five",
            "corrected bed=12 at=18:00 level_ml=1005",
        ),
    ],
)
def test_to_before_a_level_may_be_a_two(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed thirteen mark two ten, correction, two twenty", "ask level_ml"),
        ("Bed thirteen mark two ten. Correction. Two twenty.", "ask level_ml"),
        ("bed thirteen mark two ten, no, two twenty", "ask level_ml"),
        ("bed thirteen, sorry, fourteen, mark two ten", "ask bed"),
    ],
)
def test_commas_do_not_part_a_word_of_repair_from_its_number(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read
