"""What happens to drains, canisters and patients, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 drained 210 since last", "drained bed=12 volume_ml=210"),
        ("bed 7 put out 85", "drained bed=7 volume_ml=85"),
        ("14 put out 85 this hour", "drained bed=14 volume_ml=85"),
        ("another 60 from bed 3", "drained bed=3 volume_ml=60"),
        ("bed 12 50 more", "drained bed=12 volume_ml=50"),
        ("bed 12 same", "drained bed=12 volume_ml=0"),
        ("bed 12 nil out", "drained bed=12 volume_ml=0"),
        ("bed 3 and 4 no change since last", "drained bed=3 volume_ml=0; drained bed=4 volume_ml=0"),
        ("bed 12 no output since 1800", "drained bed=12 volume_ml=0"),
    ],
)
def test_an_amount_is_no_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "new chest tube bed 12 right at 1410, post op heart",
            "placed bed=12 tube=right at=14:10 reason=cardiac",
        ),
        ("chest drain sited bed 2 at 1720", "placed bed=2 at=17:20"),
        (
            "chest tube inserted bed 4 left at 1800 for pneumothorax",
            "placed bed=4 tube=left at=18:00 reason=air",
        ),
        ("new tube bed 6 mediastinal, CABG", "placed bed=6 tube=mediastinal reason=cardiac"),
    ],
)
def test_a_drain_is_placed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 is a post op heart, 8 kg", "described bed=12 reason=cardiac weight_kg=8"),
        ("bed 5 lobectomy", "described bed=5 reason=lung"),
        ("bed 7 weight 4.2 kg", "described bed=7 weight_kg=4.2"),
        ("bed 5 drain is for empyema", "described bed=5 reason=effusion"),
    ],
)
def test_why_the_drain_is_in_and_the_weight_describe_a_patient(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("changed the canister bed 12, old one 1980", "exchanged bed=12 final_ml=1980"),
        ("changed bed 12 chamber @1820, final was 1,770", "exchanged bed=12 at=18:20 final_ml=1770"),
        ("swapped out the left box in 12, was at 1770", "exchanged bed=12 tube=left final_ml=1770"),
        ("12's box changed 1815, old 1880", "exchanged bed=12 at=18:15 final_ml=1880"),
        (
            "bed 12 new bottle up at 1820, old bottle 1770 new bottle starting at 0",
            "exchanged bed=12 at=18:20 final_ml=1770 opening_ml=0",
        ),
        (
            "bed 12 exchange done at 1845, old reading 1930, new opened at 0",
            "exchanged bed=12 at=18:45 final_ml=1930 opening_ml=0",
        ),
        ("bed 12 chamber swap, 1930 in old", "exchanged bed=12 final_ml=1930"),
        ("final level of the old canister bed 3 was 85", "exchanged bed=3 final_ml=85"),
        (
            "changed the canister bed 8 at 1830, old one 1860, now 60 at 1900",
            "exchanged bed=8 at=18:30 final_ml=1860; mark bed=8 at=19:00 level_ml=60",
        ),
        ("changed bottle b12 1845. final 1930", "exchanged bed=12 at=18:45 final_ml=1930"),
        ("changed box on 12 1850 prev 1880", "exchanged bed=12 at=18:50 final_ml=1880"),
    ],
)
def test_a_canister_is_exchanged(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("tube out bed 12 at 10:15, final 340", "removed bed=12 at=10:15 level_ml=340"),
        ("dr pulled 14's tube at quarter to seven", "removed bed=14 at=18:45"),
        ("bed 3 chest tube pulled at 1840, final 210", "removed bed=3 at=18:40 level_ml=210"),
        (
            "removed bed 3 right drain at 1840 final reading 210 mls",
            "removed bed=3 tube=right at=18:40 level_ml=210",
        ),
        ("bed 3 drain d/c'd at 1840", "removed bed=3 at=18:40"),
    ],
)
def test_a_drain_is_removed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 moved to 14", "moved bed=12 to_bed=14"),
        ("bed 17 moved to 19 at 1830", "moved bed=17 at=18:30 to_bed=19"),
        ("shifted bed 7 to 10", "moved bed=7 to_bed=10"),
        ("bed 7 to bed 10 at 1800", "moved bed=7 at=18:00 to_bed=10"),
        ("transfer bed 7 -> bed 10 1815", "moved bed=7 at=18:15 to_bed=10"),
        ("pt from bed 12 now in bed 14", "moved bed=12 to_bed=14"),
        ("12 transferred to 14", "moved bed=12 to_bed=14"),
    ],
)
def test_a_patient_moves(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 off to CT", "away bed=12"),
        ("bed 12 gone to theatre at 1800", "away bed=12 at=18:00"),
        ("bed 12 back from CT", "back bed=12"),
        ("bed 10 back 1840", "back bed=10 at=18:40"),
        ("bed 12 transferred out", "left bed=12"),
        ("bed 9 transferred to intensive care", "left bed=9"),
        ("bed 9 died at 1740", "left bed=9 at=17:40"),
        ("bed 3 discharged home", "left bed=3"),
    ],
)
def test_a_patient_is_away_back_or_has_left(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("someone kicked over 12's drain", "incident bed=12 what=tipped"),
        (
            "the visitor tripped over the drain of bed 5 and it tipped at 1830",
            "incident bed=5 at=18:30 what=tipped",
        ),
        ("bed 5 box was sitting up on the bed above chest level", "incident bed=5 what=raised"),
        ("box leaking bed 5, crack in the side", "incident bed=5 what=damaged"),
        ("bed 12 suction off", "incident bed=12 what=suction_off"),
        ("bed 5 suction came off, no idea since when", "incident bed=5 what=suction_off"),
        ("bed 12 suction back on", "incident bed=12 what=suction_on"),
        ("bed 12 clamped at 1830", "incident bed=12 at=18:30 what=clamped"),
        ("bed 12 unclamped", "incident bed=12 what=unclamped"),
        ("bed 12 tubing disconnected", "incident bed=12 what=disconnected"),
        ("bed 12 tube fell out", "incident bed=12 what=dislodged"),
        ("bed 12 tubing kinked", "incident bed=12 what=kinked"),
    ],
)
def test_what_happened_to_the_canister_is_an_incident(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 12 seal 2 suction 20 wall 90 no leak swinging serosang",
            "checked bed=12 seal_cm=2 suction_cmh2o=20 wall_mmhg=90 air_leak=none tidaling=True "
            "fluid=serosanguineous",
        ),
        ("bed 12 water seal only", "checked bed=12 suction_cmh2o=0"),
        ("bed 12 suction -20", "checked bed=12 suction_cmh2o=20"),
        ("bed 5 tidalling absent", "checked bed=5 tidaling=False"),
        ("bed 5 swing stopped", "checked bed=5 tidaling=False"),
        ("bed 12 air leak grade 3", "checked bed=12 air_leak=present leak_grade=3"),
        ("bed 12 leak with cough", "checked bed=12 air_leak=intermittent"),
        ("bed 12 continuous air leak", "checked bed=12 air_leak=continuous"),
        ("bed 5 fluid changed from serous to bloody", "checked bed=5 fluid=sanguineous"),
        ("bed 12 indicator not in range", "checked bed=12 suction_indicator=not_in_range"),
        ("bed 12 tidaling no leak", "checked bed=12 air_leak=none tidaling=True"),
        ("bed 12 ordered suction 20", "ordered bed=12 suction_cmh2o=20"),
        ("md wants bed 12 on suction 10", "ordered bed=12 suction_cmh2o=10"),
    ],
)
def test_what_was_checked_or_ordered_is_told_in_any_order(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 shifted to bed 11 at 1730", "moved bed=4 at=17:30 to_bed=11"),
        ("patient in 12 was moved into bed 16 around 5pm", "moved bed=12 at=17:00 to_bed=16"),
        ("bed 9 pt now in 21", "moved bed=9 to_bed=21"),
        ("pt bed 8 taken to OT at 1745", "away bed=8 at=17:45"),
        ("bed 2 shifted out to HDU", "left bed=2"),
        ("bed 1 collector full at 1990, changed it 1840", "exchanged bed=1 at=18:40 final_ml=1990"),
        (
            "bottle changed in bed 13 at 1800 last level in old bottle 1920",
            "exchanged bed=13 at=18:00 final_ml=1920",
        ),
        (
            "bed 2 new box on at 1830 final on old 1910 mark now 30",
            "exchanged bed=2 at=18:30 final_ml=1910; mark bed=2 at=19:05 level_ml=30",
        ),
        ("bed 5 suction increased to 20 as per order", "ordered bed=5 suction_cmh2o=20"),
        ("bed 8 drain not bubbling, not swinging, ?blocked", "checked bed=8 air_leak=none tidaling=False"),
        ("bed 23 tube accidentally pulled out by pt 1840", "incident bed=23 at=18:40 what=dislodged"),
        (
            "bed 16 ICD inserted 1715 right side for hemothorax, 600 drained immediately",
            "placed bed=16 tube=right at=17:15 reason=trauma; drained bed=16 tube=right volume_ml=600",
        ),
        ("bed 13 nothing since 1700", "drained bed=13 volume_ml=0"),
    ],
)
def test_nurses_of_many_wards_tell_it_in_their_own_words(text: str, read: str) -> None:
    assert reading(text) == read
