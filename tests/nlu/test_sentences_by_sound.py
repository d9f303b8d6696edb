"""What is dictated where a word may be a number by its sound: then for ten, under for hundred, to for two."""

from __future__ import annotations

import pytest

from .test_sentences_aloud import heard


@pytest.mark.parametrize(
    ("text", "time"),
    [
        ("bed sixteen mark one hundred and sixty at five to then", "10:03"),
        ("bed eight mark seventeen hundred forty at then", "10:02"),
        ("bed six mark three then bed fifteen mark five hundred both at thirteen fifty", "14:01"),
        ("bed then sixteen forty", "23:38"),
        ("bed eighteen mark then fifty at seven oh five", "19:16"),
        ("bed fifteen is then thirty at eighteen thirty five", "18:42"),
        ("bed nineteen at six then mark one hundred ten", "06:12"),
        ("bed fifteen seven hundred and then ten past five", "05:19"),
        ("at one thirty bed nineteen was nine then", "13:38"),
        ("bed twenty two mark seven under", "07:35"),
        ("tube out bed eleven at eight forty final four under and forty", "08:41"),
        ("bed one four under and thirty", "03:47"),
        ("bed twenty line seventy at for ten", "04:21"),
        ("bed seven drained none sixty at four fifty", "04:54"),
        ("changed canister bed eight final to ninety at twelve twenty five", "12:28"),
        ("at two ten bed twelve was to twenty", "02:17"),
        ("bed five one hundred and sixty at ten to to", "01:51"),
        ("bed twenty for mark four hundred at eleven fifteen", "11:19"),
        ("ten two eleven bed twenty one five fifty", "22:58"),
        ("half past to bed twenty two three fifty", "14:40"),
        ("at fife o'clock bed ten was nine hundred eighty", "17:08"),
        ("ate sixty for bed nineteen at twenty two thirty five", "22:40"),
        ("bed twenty four at ten to ate eighty", "08:02"),
        ("bed two oh five mark six hundred", "07:15"),
        ("bed nine had four ten out", "07:15"),
        ("bed nine ten in the last hour", "07:15"),
        ("bed seven at 3 800", "03:17"),
        ("bed ten mark one hundred twenty five past four", "04:26"),
        ("bed eleven five twenty six", "06:10"),
    ],
)
def test_a_number_that_may_have_lost_a_part_is_asked(text: str, time: str) -> None:
    assert "ask " in heard(text, time)


@pytest.mark.parametrize(
    ("text", "time", "read"),
    [
        (
            "bed sixteen mark 160 at five to ten then bed four mark 90 at ten",
            "10:03",
            "mark bed=16 at=09:55 level_ml=160; mark bed=4 at=10:00 level_ml=90",
        ),
        ("quarter to ate bed twelve six fifty", "08:09", "mark bed=12 at=07:45 level_ml=650"),
        ("bed ate mark six fifty at seven", "07:09", "mark bed=8 at=07:00 level_ml=650"),
        ("bed six was then 340 at seven", "07:09", "mark bed=6 at=07:00 level_ml=340"),
        ("correct bed twelve mark to ten sixty", "19:05", "corrected bed=12 level_ml=1060"),
        ("bed eleven mark five twenty six at six", "06:10", "mark bed=11 at=06:00 level_ml=526"),
        ("bed eleven five twenty six", "12:10", "mark bed=11 level_ml=526"),
        ("bed eleven five twenty five", "05:10", "mark bed=11 level_ml=525"),
        ("bed three sixty at twenty to ten", "09:50", "mark bed=3 at=09:40 level_ml=60"),
        ("bed three sixty at twenty two ten", "22:15", "mark bed=3 at=22:10 level_ml=60"),
        ("bed twelve ate fifty percent of lunch mark 340", "13:05", "mark bed=12 level_ml=340"),
    ],
)
def test_the_same_words_in_their_own_sense_are_read(text: str, time: str, read: str) -> None:
    assert heard(text, time) == read


@pytest.mark.parametrize(
    ("text", "time"),
    [
        ("bed three sixty at twenty two ten", "09:46"),
        ("bed ten is at twelve seventy at twenty to twenty", "22:40"),
        ("tube out bed eighteen at twenty two eleven final eight eighty", "10:52"),
    ],
)
def test_twenty_two_and_twenty_to_are_asked_where_the_other_is_near(text: str, time: str) -> None:
    assert "ask " in heard(text, time)
