"""What happened at the bedside, in the words around it: why, how, by whom, on whose word."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3s chest tube came apart from the tubing", "incident bed=3 what=disconnected"),
        ("box of 9 tipped when bed lowered onto it", "incident bed=9 what=tipped"),
        ("clamped 8 at 1830 per dr patel", "incident bed=8 at=18:30 what=clamped"),
        (
            "bed 19 taken to cath lab 1710, drain clamped for trip",
            "away bed=19 at=17:10; incident bed=19 at=17:10 what=clamped",
        ),
        (
            "5 suction off for walk, back on 1845",
            "incident bed=5 what=suction_off; incident bed=5 at=18:45 what=suction_on",
        ),
        ("8 clamp trial since 1500", "incident bed=8 at=15:00 what=clamped"),
        ("17 box full swapped it 1890 final", "exchanged bed=17 final_ml=1890"),
        ("4 dcd home", "left bed=4"),
        ("19 tx to icu 1815", "left bed=19 at=18:15"),
        ("rip bed 19 1430", "left bed=19 at=14:30"),
        ("passed at 1430 bed 19", "left bed=19 at=14:30"),
        ("19 back frm ct no issues drain upright", "back bed=19"),
        ("11 had r chest drain put in in theatre, 120 in box", "placed bed=11 tube=right level_ml=120"),
    ],
)
def test_an_event_is_told_with_why_and_by_whom(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "8 passed clamp trial",
        "8 passed swallow test",
        "17 new box please",
        "please new canister bed 17",
        "1 bubbling away nicely, 340",
    ],
)
def test_a_wish_or_what_was_passed_is_no_event(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 dr wants water seal", "ordered bed=9 suction_cmh2o=0"),
        ("4 dial 20, ordered 10", "ordered bed=4 suction_cmh2o=10; checked bed=4 suction_cmh2o=20"),
    ],
)
def test_what_was_ordered_is_told_beside_what_it_is_set_to(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 9 dr wants wall suction",
        "20 suction 20 for 24h then ws",
        "15 not as bloody",
        "15 not so bloody",
        "20 all checks ok",
    ],
)
def test_a_finding_that_is_denied_changed_or_not_of_one_bed_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


def test_what_bubbles_in_the_suction_chamber_is_no_leak() -> None:
    assert "leak" not in reading("1 bubbling away in suction chamber")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("wall 60 so turned up to 90 bed 4", "checked bed=4 wall_mmhg=90"),
        ("8 seal 1cm added water to 2", "checked bed=8 seal_cm=2"),
        ("suction 20 turned down to 10 bed 4", "checked bed=4 suction_cmh2o=10"),
        ("12 left chest tube out, right still in", "removed bed=12 tube=left"),
        ("22 rt ct out, lt ct remains", "removed bed=22 tube=right"),
        ("22 tube's out thank god", "removed bed=22"),
        ("22 box changed, was 1950", "exchanged bed=22 final_ml=1950"),
        ("22 box changed was 1950", "exchanged bed=22 final_ml=1950"),
        ("22 box fell off bed rail", "incident bed=22 what=tipped"),
        ("22 wall suction was off when i came on", "incident bed=22 what=suction_off"),
        ("22 suction tubing fell off wall", "incident bed=22 what=suction_off"),
    ],
)
def test_what_is_now_takes_the_place_of_what_was(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "22 fell off the bed",
        "22 suction reg broken changed it",
        "22 new tube rt apical after old one fell out",
        "22 replaced dislodged tube at 1845",
        "22 left the room",
        "wall 90, turned, up to 240 bed 4",
    ],
)
def test_a_fall_of_the_patient_a_fitting_or_a_tube_that_was_replaced_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 leak only w cough", "checked bed=8 air_leak=intermittent"),
        ("16 air leak grade 2 w cough", "checked bed=16 air_leak=intermittent leak_grade=2"),
        ("8 no leak even w cough", "checked bed=8 air_leak=none"),
        ("8 not tidaling, md aware", "checked bed=8 tidaling=False"),
        ("14 moved to 15 bc of isolation", "moved bed=14 to_bed=15"),
        ("14 another 20, 15 another 40", "drained bed=14 volume_ml=20; drained bed=15 volume_ml=40"),
    ],
)
def test_how_it_leaks_and_what_was_found_is_told_beside_who_knows(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "8 (-) leak",
        "8 lung reexpanded",
        "14 tube was supposed to be pulled at 1700",
        "14 880 on wall suction 20",
        "8 water seal level good",
        "14 output dropped to 10",
        "14 slowing down, 10 since 6",
    ],
)
def test_a_sign_with_a_minus_and_a_remark_are_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize("text", ["8 sub q air", "8 pus from site", "14 drain dropped below bed level ok"])
def test_what_is_under_the_skin_or_at_the_site_is_none_of_the_drain(text: str) -> None:
    assert "described" not in reading(text)
    assert "checked" not in reading(text)
    assert "tipped" not in reading(text)


def test_a_bare_number_is_no_sure_time_beside_what_is_asked() -> None:
    assert "at=14:10" not in reading("hi its kate, 14 is 880 and swinging no leak, 9 is 210 same")
