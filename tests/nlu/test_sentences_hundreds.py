"""A ward whose beds are 401 to 420: each label could be a time of the day."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading

WARD = tuple(str(number) for number in range(401, 421))
THREE = "; ".join(
    f"mark bed={bed} at=18:50 level_ml={level}" for bed, level in ((404, 265), (406, 720), (410, 1180))
)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("412 1900 was 650 not 640 my bad", "corrected bed=412 at=19:00 was_ml=640 level_ml=650"),
        ("412 1855 should be 650 not 640", "corrected bed=412 at=18:55 was_ml=640 level_ml=650"),
        ("correct 412 1900 650", "corrected bed=412 at=19:00 level_ml=650"),
        ("disregard the last one on 405", "withdrawn bed=405"),
        ("cancel 418 1900 mark wrong pt", "withdrawn bed=418 at=19:00"),
        ("cancel the 1900 mark for 418", "withdrawn bed=418 at=19:00"),
        ("delete 409 0415", "withdrawn bed=409 at=04:15"),
        ("delete 418 at 1855", "withdrawn bed=418 at=18:55"),
        ("give me sbar on 411", "asked bed=411 topic=handoff"),
        ("trend 411 since 1500", "asked bed=411 topic=trend window=15:00"),
        ("EOS line 409 is 870", "mark bed=409 level_ml=870 closing"),
        ("420 canister at 1900 is 755", "mark bed=420 at=19:00 level_ml=755"),
        ("404 line 265, 406 line 720, 410 line 1180 all 1850", THREE),
        ("404 265, 406 720, 410 1180 all at 1850", THREE),
        ("404 line 265 at 1850, 406 line 720 at 1850, 410 line 1180 at 1850", THREE),
    ],
)
def test_a_label_that_looks_like_a_time_is_the_bed(text: str, read: str) -> None:
    assert reading(text, beds=WARD) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("409 check 0415: suction -20, no leak", "checked bed=409 at=04:15 suction_cmh2o=20 air_leak=none"),
        ("401 0415 new air leak", "checked bed=401 at=04:15 air_leak=present"),
        ("0415: 409 340, 410 560", "mark bed=409 at=04:15 level_ml=340; mark bed=410 at=04:15 level_ml=560"),
    ],
)
def test_four_digits_with_a_leading_nought_are_a_time_and_no_bed(text: str, read: str) -> None:
    assert reading(text, beds=WARD, arrived=MORNING.replace(hour=4, minute=20)) == read


@pytest.mark.parametrize(
    "text",
    [
        "delete 418 405",
        "disregard 405",
        "412 405 was 650 not 640",
        "delete 405 line on 411",
    ],
)
def test_where_a_number_may_be_a_bed_or_a_time_it_is_asked(text: str) -> None:
    assert reading(text, beds=WARD).startswith("ask ")
