"""A tube, a canister and a shift by the names that they have in Britain and Australia."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 UWSD 460 at 1900", "mark bed=3 at=19:00 level_ml=460"),
        ("bed 12 ICC 1080mls @ 1900hrs", "mark bed=12 at=19:00 level_ml=1080"),
        ("9 drainage bottle at 480 1840", "mark bed=9 at=18:40 level_ml=480"),
        ("9 underwater seal drain 480 18:40", "mark bed=9 at=18:40 level_ml=480"),
        ("9 underwater seal 480 18:40", "mark bed=9 at=18:40 level_ml=480"),
        ("9 underwater seal 2 no leak", "checked bed=9 seal_cm=2 air_leak=none"),
        (
            "bed 7 L ICC 290 R ICC 110 1900",
            "mark bed=7 tube=left at=19:00 level_ml=290; mark bed=7 tube=right at=19:00 level_ml=110",
        ),
        (
            "bed 7 left intercostal catheter 290 right 110 at 1900",
            "mark bed=7 tube=left at=19:00 level_ml=290; mark bed=7 tube=right at=19:00 level_ml=110",
        ),
        ("bed 3 UWSD on suction -20", "checked bed=3 suction_cmh2o=20"),
        ("bed 3 UWSD on wall suction 80", "checked bed=3 wall_mmhg=80"),
        ("bed 12 UWSD obs swinging, nil bubbling", "checked bed=12 air_leak=none tidaling=True"),
        ("bed 3 canister on suction 20", "checked bed=3 suction_cmh2o=20"),
        ("ICC out bed 2 at 1615 final 1060", "removed bed=2 at=16:15 level_ml=1060"),
        ("bed 8 UWSD tipped over at 1905", "incident bed=8 at=19:05 what=tipped"),
        ("new UWSD bed 12 at 1840, final 1255", "exchanged bed=12 at=18:40 final_ml=1255"),
        ("underwater seal changed bed 12 at 1840, final 1255", "exchanged bed=12 at=18:40 final_ml=1255"),
        ("drain bottle changed bed 2 1840 final 1140", "exchanged bed=2 at=18:40 final_ml=1140"),
        (
            "new drain bottle bed 2 1840, final on old 1140 new starts at 0",
            "exchanged bed=2 at=18:40 final_ml=1140 opening_ml=0",
        ),
        ("fresh chest drain bottle on bed 2 at 1840", "exchanged bed=2 at=18:40"),
    ],
)
def test_a_tube_and_a_canister_are_read_by_their_british_and_australian_names(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve icc ten eighty at nineteen hundred", "mark bed=12 at=19:00 level_ml=1080"),
        ("bed three u w s d four sixty at nineteen hundred", "mark bed=3 at=19:00 level_ml=460"),
        ("bed two i c c out at sixteen fifteen final ten sixty", "removed bed=2 at=16:15 level_ml=1060"),
    ],
)
def test_letters_of_a_name_are_read_as_dictated(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 swinging nil leak", "checked bed=9 air_leak=none tidaling=True"),
        ("bed 9 swinging nil bubbling", "checked bed=9 air_leak=none tidaling=True"),
        ("bed 9 tidaling neg leak", "checked bed=9 air_leak=none tidaling=True"),
        ("bed 9 swing nil leak nil", "checked bed=9 air_leak=none tidaling=False"),
        ("bed 9 swing nil, leak nil", "checked bed=9 air_leak=none tidaling=False"),
        (
            "bed 12 ICC obs 1830 - swinging, nil bubbling, -20 suction",
            "checked bed=12 at=18:30 suction_cmh2o=20 air_leak=none tidaling=True",
        ),
        (
            "bed 7 L ICC bubbling cont, R ICC no bubbling",
            "checked bed=7 tube=left air_leak=continuous; checked bed=7 tube=right air_leak=none",
        ),
    ],
)
def test_a_nil_between_two_findings_is_of_the_second_unless_that_has_its_own(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 8 chest tube disconnected from canister at 1905",
        "bed 8 tubing came off the box at 1905",
        "bed 8 ICC disconnected from UWSD at 1905, reconnected",
    ],
)
def test_what_a_tube_came_off_is_timed_and_has_no_level(text: str) -> None:
    assert reading(text) == "incident bed=8 at=19:05 what=disconnected"


@pytest.mark.parametrize(
    "text",
    [
        "bed 9 end of night line 1240ml at 1840",
        "bed 9 end of nights 1240 at 1840",
        "end of late shift bed 9 1240 at 1840",
        "bed 9 early shift closing 1240 at 1840",
        "EOS line 9 is 1240 at 1840",
    ],
)
def test_the_line_at_the_end_of_a_shift_is_closing_by_any_name_of_the_shift(text: str) -> None:
    assert reading(text) == "mark bed=9 at=18:40 level_ml=1240 closing"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "Bed 19 R CTT 300 6pm; Bed 20 L CTT 1090 6pm",
            "mark bed=19 tube=right at=18:00 level_ml=300; mark bed=20 tube=left at=18:00 level_ml=1090",
        ),
        ("bed 20 L CTT 1215 at 6:45pm, end of duty", "mark bed=20 tube=left at=18:45 level_ml=1215 closing"),
        ("4 CTT bottle changed 1840, old bottle 1500", "exchanged bed=4 at=18:40 final_ml=1500"),
        ("bed 4 ctt out 1830, final 220", "removed bed=4 at=18:30 level_ml=220"),
        ("bed 4 ICDT 340 at 1830", "mark bed=4 at=18:30 level_ml=340"),
        ("4 UWD 340 at 1830", "mark bed=4 at=18:30 level_ml=340"),
        ("4 intercostal chest drain 340 at 1830", "mark bed=4 at=18:30 level_ml=340"),
        ("bed 4 340 at 1830 for endorsement", "mark bed=4 at=18:30 level_ml=340 closing"),
        ("bed 4 NGT 340 at 1830", ""),
        ("bed 4 EVD 340 at 1830", ""),
    ],
)
def test_other_countries_have_other_words_for_the_tube_and_for_the_end_of_a_shift(
    text: str, read: str
) -> None:
    assert reading(text) == read
