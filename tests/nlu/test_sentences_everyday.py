"""Events, findings and reasons told in everyday words, and what only looks like one of them."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, BEDS, reading

LATE = ARRIVED.replace(hour=22, minute=2)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("trauma attending wants 11 on 20 of suction", "ordered bed=11 suction_cmh2o=20"),
        ("cardiac surgeon saw 12, wants 20 of suction", "ordered bed=12 suction_cmh2o=20"),
        ("bed 9 suction 20 ordered by cardiac surgery", "ordered bed=9 suction_cmh2o=20"),
        ("trauma surgeon removed tube in 9 at 1830", "removed bed=9 at=18:30"),
        ("bed 12 cardiac surgery yesterday", "described bed=12 reason=cardiac"),
    ],
)
def test_a_field_of_medicine_beside_its_team_is_no_reason(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "14 went to the bathroom with it and it tipped, 380 at 1855",
            "mark bed=14 at=18:55 level_ml=380; incident bed=14 at=18:55 what=tipped",
        ),
        ("8 was in the bathroom and it disconnected at 1840", "incident bed=8 at=18:40 what=disconnected"),
        ("12 went to ct and the tube came off", "away bed=12; incident bed=12 what=disconnected"),
        ("12 went for a walk at 1800", "away bed=12 at=18:00"),
    ],
)
def test_a_few_steps_on_which_something_happened_are_no_absence(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 2 right drain came out yesterday 1600", "removed bed=2 tube=right at=03-Mar-16:00"),
        ("bed 4 tube came out at 1840 when turning him", "ask kind"),
        ("bed 4 tube just came out", "incident bed=4 what=dislodged"),
        ("bed 3 pt pulled at the tube, sutures intact", "ask kind"),
        ("9 chest tube came out accidentally", "incident bed=9 what=dislodged"),
    ],
)
def test_a_tube_that_came_out_days_ago_was_removed_and_one_just_now_was_not(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 fell off a ladder, hemothorax", "described bed=12 reason=trauma"),
        ("9 fell at home, pneumothorax", "described bed=9 reason=air"),
        ("bed 2 is a 65 yo post op heart", "described bed=2 reason=cardiac"),
        ("bed 12 box fell, hemothorax", "incident bed=12 what=tipped; described bed=12 reason=trauma"),
        ("bed 12 fell off the bed, hemothorax", "ask kind"),
        ("bed 9 fell", "ask kind"),
    ],
)
def test_why_a_patient_came_is_told_apart_from_what_fell(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "flushed the pigtail in bed 4 with 20 ml at 1830",
        "irrigated the pigtail in 5 with 10 ml",
        "changed the yankauer canister in bed 4, 400 in it",
        "changed suction canister bed 4, 400 in it",
        "emptied the yankauer canister in 5, 300",
        "bed 21 mark 8?5 at 1900, smudged",
        "bed 21 8?5 1900",
        "orientee tip, you would text it like bed 12 mark 1050 at 1900",
        "the format is bed 12 mark 1050 at 1900",
    ],
)
def test_a_number_of_something_else_is_never_charted(text: str) -> None:
    assert reading(text).startswith("ask")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 drain flushed, 340 at 1900", "mark bed=9 at=19:00 level_ml=340"),
        ("bed 4 suction 20, 400 in it", "mark bed=4 level_ml=400; checked bed=4 suction_cmh2o=20"),
        ("bed 17 no change since the 1050 at 1500", "drained bed=17 volume_ml=0"),
        ("bed 17 no change since 1500, mark at 340", "drained bed=17 volume_ml=0; mark bed=17 level_ml=340"),
        ("7 right up to 400 at 1805", "mark bed=7 tube=right at=18:05 level_ml=400"),
        ("7 right up to 400 or 410", "ask level_ml"),
    ],
)
def test_a_line_beside_such_words_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 8 new chest tubes at 1650, mediastinal and left pleural y'd to one box, cabg",
            "placed bed=8 at=16:50 reason=cardiac tubes=left pleural+mediastinal",
        ),
        (
            "joined left and right pleural tubes to one canister bed 14, post op heart, in at 1820",
            "placed bed=14 at=18:20 reason=cardiac tubes=left pleural+right pleural",
        ),
        (
            "placed left apical and basal tubes y'd together bed 6 at 1700",
            "placed bed=6 at=17:00 tubes=left apical+left basal",
        ),
        (
            "chest tube went in bed 3 at 1420, lobectomy, right side",
            "placed bed=3 tube=right at=14:20 reason=lung",
        ),
    ],
)
def test_tubes_that_went_in_keep_their_own_names(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "14 suction indicator not in range, wall was turned way down",
            "checked bed=14 suction_indicator=not_in_range",
        ),
        ("12 is laying on the tube, had a kink in it", "incident bed=12 what=kinked"),
        ("wall suction turned off on 3 at 1845 for transfer", "incident bed=3 at=18:45 what=suction_off"),
        ("clamped bed 7 at 1840 for transfer to ct", "incident bed=7 at=18:40 what=clamped"),
        (
            "suction off on 5 at 1800 for transfer to bed 9",
            "incident bed=5 at=18:00 what=suction_off; moved bed=5 at=18:00 to_bed=9",
        ),
        (
            "bed 8 off suction for walk 1800, back on 1815",
            "incident bed=8 at=18:00 what=suction_off; incident bed=8 at=18:15 what=suction_on",
        ),
        ("bed 3 off suction for a shower 1800", "checked bed=3 at=18:00 suction_cmh2o=0"),
        (
            "10 dressing changed, no leak, suction 20, level 545 at 1830",
            "mark bed=10 at=18:30 level_ml=545; checked bed=10 at=18:30 suction_cmh2o=20 air_leak=none",
        ),
        ("10 foley changed, suction 20", "ask kind"),
    ],
)
def test_why_or_beside_what_something_was_done_says_nothing_more(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 1310 dark red", "mark bed=8 level_ml=1310; checked bed=8 fluid=dark_red"),
        ("8 610 bloody", "mark bed=8 level_ml=610; checked bed=8 fluid=sanguineous"),
        ("8 1710 dark red", "ask level_ml"),
    ],
)
def test_a_number_that_is_long_past_as_a_time_is_the_line_beside_its_look(text: str, read: str) -> None:
    assert reading(text, arrived=LATE) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed nine suction twenty no leak bed ten water seal leak intermittent",
            "checked bed=9 suction_cmh2o=20 air_leak=none; "
            "checked bed=10 suction_cmh2o=0 air_leak=intermittent",
        ),
        ("bed nine water seal two no leak", "checked bed=9 seal_cm=2 air_leak=none"),
        (
            "bed fifteen nine sixty at eighteen hundred and I kicked the drain over on bed two",
            "mark bed=15 at=18:00 level_ml=960; incident bed=2 what=tipped",
        ),
        (
            "bed six four ten at nineteen hundred and no leak on bed nine",
            "mark bed=6 at=19:00 level_ml=410; checked bed=9 at=19:00 air_leak=none",
        ),
        ("bed twelve clamped at eighteen hundred for transport", "incident bed=12 at=18:00 what=clamped"),
        ("bed fifteen fluid's gone milky", "checked bed=15 fluid=chylous"),
        ("bed nine fluid's gone Ron milky", "ask kind"),
    ],
)
def test_what_is_dictated_behind_an_event_says_whose_it_is(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "unclamped 11 now, was clamped since 1400",
            "incident bed=11 at=19:05 what=unclamped; incident bed=11 at=14:00 what=clamped",
        ),
        ("15 only 10 ml since noon", "drained bed=15 volume_ml=10"),
        ("15 at 340 ml since 1500", "ask level_ml"),
        ("18 suction dialed down to 10 at 1830", "checked bed=18 at=18:30 suction_cmh2o=10"),
        ("7 dial turned up to 40 per surgery", "ordered bed=7 suction_cmh2o=40"),
        ("14 leak grade 3 today, still swinging", "ask at"),
    ],
)
def test_what_holds_since_a_time_is_told_apart_from_when_it_was_seen(text: str, read: str) -> None:
    assert reading(text) == read
