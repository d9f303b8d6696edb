"""What is put as by whoever has learnt English later, what a comma sets apart, what is cried out first."""

from __future__ import annotations

import pytest

from .saying import reading

LEARNT = [
    (
        "bed 20 make 50 ml more from last time, is little bit bloody",
        "drained bed=20 volume_ml=50; checked bed=20 fluid=sanguineous",
    ),
    ("bed 20 drain 50 ml from last time", "drained bed=20 volume_ml=50"),
    ("bed 20 give 50 ml from last check", "drained bed=20 volume_ml=50"),
    ("the drain from bed 20 it falled on the floor at 1840", "incident bed=20 at=18:40 what=tipped"),
    ("bed 20 the canister it breaked at 1840", "incident bed=20 at=18:40 what=damaged"),
    ("bed 12 the tube was make a kink under the leg at 1845, I fix", "incident bed=12 at=18:45 what=kinked"),
    ("please delete the 1600 mark of bed 12, it was other patient", "withdrawn bed=12 at=16:00"),
    ("delete the 1600 mark of bed 12, it is of other patient", "withdrawn bed=12 at=16:00"),
    (
        "how many total the bed 12 make since the placement?",
        "asked bed=12 topic=total window=placement",
    ),
    (
        "please amend bed 15: the 1700 line was 480, I had written 840.",
        "corrected bed=15 at=17:00 was_ml=840 level_ml=480",
    ),
    (
        "bed 12: suction was found off at 1840 and turned back on at 1842",
        "incident bed=12 at=18:40 what=suction_off; incident bed=12 at=18:42 what=suction_on",
    ),
    ("no change on 18 since last time resting comfortably", "drained bed=18 volume_ml=0"),
    (
        "bed 5 165 at 1900, not leaking, not swinging",
        "mark bed=5 at=19:00 level_ml=165; checked bed=5 at=19:00 air_leak=none tidaling=False",
    ),
    (
        "bed 5 165 at 1900, swinging, not leaking",
        "mark bed=5 at=19:00 level_ml=165; checked bed=5 at=19:00 air_leak=none tidaling=True",
    ),
    (
        "bed 19 disconected at the conector at 1840, reconnected strait away",
        "incident bed=19 at=18:40 what=disconnected",
    ),
]
NOT_LEARNT = [
    ("bed 20 if tube make a kink call me", "ask kind"),
    ("bed 20 tube make a kink tomorrow", "ask kind"),
    ("bed 20 make 50 ml urine from last time", "ask kind"),
    ("bed 20 did 50 ml more than last time", "ask level_ml"),
    ("bed 20 drain 50 ml from last time is wrong", "ask level_ml"),
    ("we give 50 ml from last time to bed 20", "ask level_ml"),
    ("bed 20 suction not found off at 1840", "ask kind"),
    ("no change on 18 since last week", "ask bed; ask bed"),
    ("bed 18 line 715 at 1600 or was it 1630", "ask at"),
    ("bed 18 line 715 or was it 730 at 1600", "ask level_ml"),
    (
        "bed 5 165 at 1900, dressing dry, not leaking, swinging",
        "mark bed=5 at=19:00 level_ml=165; checked bed=5 at=19:00 tidaling=True",
    ),
]


@pytest.mark.parametrize(("said", "told"), LEARNT + NOT_LEARNT)
def test_english_that_was_learnt_later_is_read_where_it_leaves_nothing_else(said: str, told: str) -> None:
    assert reading(said) == told


LINE = "mark bed=17 at=19:00 level_ml=880"


@pytest.mark.parametrize(
    "beside",
    [
        "Hb sent, 9.2",
        "K checked, 4.1",
        "Hb sent and back, 9.2",
        "morphine given at 1840, 5 mg",
        "analgesia given, 5 mg",
        "2u PRBC up",
        "2u FFP in",
        "extubated 1840",
        "walked 1840",
        "plan d/c CT tmrw",
    ],
)
def test_a_value_told_apart_from_its_name_leaves_the_line(beside: str) -> None:
    assert reading(f"bed 17 880 at 1900, {beside}") == LINE


@pytest.mark.parametrize("before", ["extubated 1840", "extubated at 1840", "2u PRBC up", "hgb sent, 7.9"])
def test_so_before_the_line(before: str) -> None:
    assert reading(f"bed 17 {before}, drain level 880 at 1900") == LINE


@pytest.mark.parametrize("beside", ["sugar checked, 140", "bladder scanned, 140"])
def test_a_whole_number_apart_from_its_name_may_be_a_line(beside: str) -> None:
    assert reading(f"bed 17 880 at 1900, {beside}").startswith("ask")


@pytest.mark.parametrize(
    "cry", ["oh come on", "ugh,", "you won't believe this,", "omg", "for goodness sake.", "seriously"]
)
def test_what_is_cried_out_before_somebody_is_named_tells_nothing(cry: str) -> None:
    told = "incident bed=6 at=18:50 what=tipped"
    assert reading(f"{cry} someone kicked over bed 6's drain at 1850") == told


@pytest.mark.parametrize("said", ["what bed 6 drain did", "guess what bed 6 is at", "oh come on"])
def test_a_cry_alone_or_a_question_is_no_event(said: str) -> None:
    assert "mark" not in reading(said)
    assert "incident" not in reading(said)


COLLISIONS = [
    "that grandson of bed 16's ran straight into the drain and it went over on its side at 1850",
    "a visitor of bed 16 walked into the drain and it went over at 1850",
    "the porter backed into bed 16's drain and it fell over at 1850",
    "the cleaner crashed straight into bed 16's drain and knocked it over at 1850",
]


@pytest.mark.parametrize("said", COLLISIONS)
def test_who_ran_into_a_drain_that_went_over_tipped_it(said: str) -> None:
    assert reading(said) == "incident bed=16 at=18:50 what=tipped"


def test_whoever_only_ran_into_it_is_asked() -> None:
    assert reading("the cleaner ran into bed 16's drain at 1850") == "ask level_ml"


ROUND = (
    "mark bed=8 at=18:50 level_ml=165; mark bed=9 at=18:55 level_ml=100; mark bed=12 at=19:00 level_ml=690"
)


@pytest.mark.parametrize("told", [" all three had lunch", ", all three had dinner", " all three are asleep"])
def test_what_all_of_them_had_is_no_fourth_line(told: str) -> None:
    assert reading(f"8 165 ml at 1850, 9 100 at 1855 and 12 690 ml at 1900{told}") == ROUND


def test_what_all_three_drained_is_asked() -> None:
    assert reading("8 165, 9 100 and 12 690 all three had drained at 1900") == "ask level_ml"


def test_a_greeting_of_the_shift_s_end_does_not_take_a_closing_line_away() -> None:
    assert reading(
        "end of my shift! closing line on 3 is 345 at 1900 and closing line on 6 is 170 at 1900"
    ) == ("mark bed=3 at=19:00 level_ml=345 closing; mark bed=6 at=19:00 level_ml=170 closing")


HOURS = "; ".join(
    f"mark bed=6 at={at} level_ml={level}" for at, level in (("16:00", 865), ("17:00", 880), ("18:00", 910))
)


@pytest.mark.parametrize(
    "excuse",
    [
        "catch up sorry was slammed",
        "sorry got slammed",
        "sorry no signal",
        "been run off my feet, catching up",
    ],
)
def test_a_catch_up_list_is_read_behind_its_excuse(excuse: str) -> None:
    assert reading(f"bed 6 {excuse}: 1600 865, 1700 880, 1800 910") == HOURS


@pytest.mark.parametrize(
    "of_what", ["urine", "these are estimates", "for the foley", "not sure of these", "amounts"]
)
def test_a_list_of_something_else_is_asked_behind_an_excuse(of_what: str) -> None:
    assert reading(f"bed 6 catch up sorry was slammed, {of_what}: 1600 865, 1700 880").startswith("ask")


BESIDE_AN_EVENT = [
    (
        "bed 11 wall suction reads 60 indicator not in range maintenance called",
        "checked bed=11 wall_mmhg=60 suction_indicator=not_in_range",
    ),
    ("bed 6 tube dislodged holding gauze on site need help", "incident bed=6 what=dislodged"),
    ("surgeon came by with 4 students and ordered suction 20 for bed 16", "ordered bed=16 suction_cmh2o=20"),
    ("18 is back from CT safe and sound, they gave him 80 of contrast", "back bed=18"),
    (
        "bed 23: right pleural drain removed at 1830. final level 290 ml. left pleural drain remains.",
        "removed bed=23 tube=right pleural at=18:30 level_ml=290",
    ),
    (
        "i did my first canister change ever! room 8 at 1830, the old one was at 1845 ml",
        "exchanged bed=8 at=18:30 final_ml=1845",
    ),
    (
        "bed 6 canister was nearly to the brim so i swapped it at 1830, old one finished at 1870",
        "exchanged bed=6 at=18:30 final_ml=1870",
    ),
    (
        "for 9 my preceptor says i should also report: water seal 2 cm, suction 20, no air leak",
        "checked bed=9 seal_cm=2 suction_cmh2o=20 air_leak=none",
    ),
    ("bed 24 - patient is 82 kg, pleural effusion", "described bed=24 reason=effusion weight_kg=82"),
    ("didnt get to 6 at 1800, line is 940 now", "mark bed=6 at=19:05 level_ml=940"),
]
ASKED = [
    "bed 23: right drain removed at 1830. final level 290 ml. left drain remains clamped.",
    "my preceptor says i should report bed 3 at 340",
    "my preceptor told me to report that bed 3 is 340",
    "my preceptor says i should report 340 not 430 for bed 3",
    "didn't get to 6 at 1800 or 1830, line 940 now",
]


@pytest.mark.parametrize(("said", "told"), BESIDE_AN_EVENT)
def test_what_is_told_beside_an_event_without_a_stop_leaves_it(said: str, told: str) -> None:
    assert reading(said) == told


@pytest.mark.parametrize("said", ASKED)
def test_a_number_on_another_s_word_or_of_another_tube_is_asked(said: str) -> None:
    assert reading(said).startswith("ask")


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("bed 6 got to 90 at 1800", "mark bed=6 at=18:00 level_ml=90"),
        ("bed 3 drain clamped surgeon called at 1830", "incident bed=3 at=18:30 what=clamped"),
    ],
)
def test_a_level_that_it_got_to_is_no_bed(said: str, told: str) -> None:
    assert reading(said) == told


@pytest.mark.parametrize("label", ["CT5", "12B"])
def test_the_letters_of_a_label_are_no_word_beside_a_reason(label: str) -> None:
    assert (
        reading(f"{label} heart surgery today, child, 14 kg", beds=(label, "5", "12"))
        == f"described bed={label} reason=cardiac weight_kg=14"
    )


CT_WARD = (*map(str, range(1, 25)), *(f"CT{n}" for n in range(1, 9)))


@pytest.mark.parametrize("said", ["CT13 180 at 1900", "CT20 180 at 1900", "CT13 swinging, no leak"])
def test_a_label_that_the_unit_does_not_have_is_no_bed_of_its_digits(said: str) -> None:
    assert reading(said, beds=CT_WARD).startswith("ask")


@pytest.mark.parametrize(
    ("said", "bed"), [("CT5 180 at 1900", "CT5"), ("bed13 180 at 1900", "13"), ("13 CT 180 at 1900", "13")]
)
def test_so_where_the_label_or_the_word_bed_is_right(said: str, bed: str) -> None:
    assert reading(said, beds=CT_WARD) == f"mark bed={bed} at=19:00 level_ml=180"


def test_nobody_came_back_in_the_back_hall() -> None:
    assert reading("hi from the back hall, bed 14 340 at 1900") == "mark bed=14 at=19:00 level_ml=340"
