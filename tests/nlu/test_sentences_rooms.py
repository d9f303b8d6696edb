"""Beds told by where they stand: in a bay, or as a side room; and what a new canister starts with."""

from __future__ import annotations

import pytest

from .saying import BEDS, reading

WARD = (*BEDS, "SR1", "SR2")
BAYS = tuple(f"Bay {bay} Bed {bed}" for bay in range(1, 4) for bed in range(1, 7))


@pytest.mark.parametrize(
    ("text", "bed"),
    [
        ("side room 2 drain 75 at 1840", "SR2"),
        ("side rm 2 75 at 1840", "SR2"),
        ("s/r 2 75 at 1840", "SR2"),
        ("patient in side room two line 75 at 1840", "SR2"),
        ("bay 3 bed 14 marked 75 at 1840", "14"),
        ("bed 14 bay 3 75 at 1840", "14"),
        ("bay 3 line 75 at 1840", "3"),
    ],
)
def test_a_side_room_is_its_own_label_and_a_bay_beside_a_bed_only_its_place(text: str, bed: str) -> None:
    assert reading(text, beds=WARD) == f"mark bed={bed} at=18:40 level_ml=75"


@pytest.mark.parametrize(
    ("text", "bed"),
    [
        ("side room two eighty at eighteen forty", "SR2"),
        ("at side room two line eighty at eighteen forty", "SR2"),
        ("bay three bed fourteen mark eighty at eighteen forty", "14"),
    ],
)
def test_a_dictated_place_is_read_as_a_typed_one(text: str, bed: str) -> None:
    assert reading(text, beds=WARD, channel="voice") == f"mark bed={bed} at=18:40 level_ml=80"


@pytest.mark.parametrize(
    ("text", "beds"),
    [
        ("side rooms 1 and 2 no leak at 1840", ("SR1", "SR2")),
        ("side room 1 and side room 2 no leak at 1840", ("SR1", "SR2")),
        ("side room 1 and bed 2 no leak at 1840", ("SR1", "2")),
        ("bay 2 beds 7 and 8 no leak at 1840", ("7", "8")),
        ("bay 2 bed 7 and bay 3 bed 14 no leak at 1840", ("7", "14")),
    ],
)
def test_rooms_and_beds_in_a_row_are_each_what_they_are(text: str, beds: tuple[str, ...]) -> None:
    assert reading(text, beds=WARD) == "; ".join(f"checked bed={bed} at=18:40 air_leak=none" for bed in beds)


@pytest.mark.parametrize(
    ("text", "beds"),
    [
        ("side room 3 line 75 at 1840", WARD),
        ("side room 2 line 75 at 1840", BEDS),
        ("bay 3 bed 40 line 75 at 1840", BEDS),
        ("bay 3 14 line 75 at 1840", BEDS),
        ("bay 3 bed 14 line 75 at 1840", BAYS),
    ],
)
def test_a_room_or_bed_that_the_unit_does_not_have_is_asked(text: str, beds: tuple[str, ...]) -> None:
    assert reading(text, beds=beds) == "ask bed"


def test_side_rooms_that_the_unit_does_not_have_are_both_asked() -> None:
    assert reading("side rooms 1 and 2 no leak", beds=BEDS) == "ask bed; ask bed"


def test_a_bay_tells_one_bed_from_another_where_labels_have_it() -> None:
    assert reading("bay 3 bed 4 line 75 at 1840", beds=BAYS) == "mark bed=Bay 3 Bed 4 at=18:40 level_ml=75"


def test_a_patient_moves_into_a_side_room_and_from_a_bay() -> None:
    assert reading("bed 5 moved to side room 2 at 1840", beds=WARD) == "moved bed=5 at=18:40 to_bed=SR2"
    assert reading("moved from bay 3 bed 14 to bay 4 bed 19", beds=WARD) == "moved bed=14 to_bed=19"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 8 new chamber on at 1840, prev one read 1480. new one opened with 10 in it",
            "exchanged bed=8 at=18:40 final_ml=1480 opening_ml=10",
        ),
        (
            "bed 8 box changed 1840, old read 1480, opened with 10",
            "exchanged bed=8 at=18:40 final_ml=1480 opening_ml=10",
        ),
        (
            "bed 8 bottle changed at 1840 old one was 1490, new one on 20 now",
            "exchanged bed=8 at=18:40 final_ml=1490; mark bed=8 at=19:05 level_ml=20",
        ),
        ("new drain for bed 8 at 1840, old bottle final 1490", "exchanged bed=8 at=18:40 final_ml=1490"),
        ("bed 8 got a new drain at 1840, old one read 1490", "exchanged bed=8 at=18:40 final_ml=1490"),
        ("new drain bed 8 left side at 1840", "placed bed=8 tube=left at=18:40"),
        ("new chest tube bed 8 at 1840, old one 1490", "ask level_ml"),
        ("bed 8 changed the canister old 1490, new one on 1840", "exchanged bed=8 at=18:40 final_ml=1490"),
    ],
)
def test_a_new_canister_opens_with_what_was_in_it_and_is_on_what_it_reads_now(text: str, read: str) -> None:
    assert reading(text) == read
