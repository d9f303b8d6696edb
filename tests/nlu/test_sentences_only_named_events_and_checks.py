"""Events and checks only named, looked for, denied, of before or of other things; common practice."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    "said",
    [
        "9 new box at bedside",
        "9 new box in room",
        "9 new box ready",
        "9 new box ordered",
        "9 out of bed",
        "9 clamp at bedside",
        "9 clamp order",
        "9 clamp broken",
        "9 clamp ok",
        "9 looks clamped",
        "9 looks like drain changed",
        "9 forgot to clamp",
        "9 forgot to unclamp",
        "9 kinks checked",
        "9 kinks easily",
        "9 disconnects easily",
        "9 clamped or kinked",
        "9 not kinked or clamped",
        "9 unclamp when back",
        "9 clamp trial passed",
        "9 water seal trial passed",
        "9 drain expired",
        "9 drain changed colour",
        "9 drain changed back",
        "9 changed drain tubing",
        "9 tube placement confirmed",
        "9 tube placement xray ok",
        "9 placed in chair",
        "9 tube out of bed",
        "9 tube out of the way",
        "9 tube out for 2 hours",
        "9 pt pulling tube",
        "9 is tube out",
        "9 was tube out at 7",
        "9 tipped bed",
        "9 pt tipped",
        "9 be back at 7",
        "9 back up to 640",
        "9 suction off then on",
        "9 no suction order",
    ],
)
def test_an_event_that_was_only_named_is_asked(said: str) -> None:
    assert reading(said).startswith("ask")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("9 new box connected at 7", "exchanged bed=9 at=19:00"),
        ("9 tube placed in er at 1840", "placed bed=9 at=18:40"),
        ("9 tube out at 7, site ok", "removed bed=9 at=19:00"),
        ("took the tube out of bed 11 at 1840, final 410", "removed bed=11 at=18:40 level_ml=410"),
        ("12's tube is out", "removed bed=12"),
        ("9 passed away at 1840", "left bed=9 at=18:40"),
        ("9 pt pulled tube out", "incident bed=9 what=dislodged"),
        ("9 pt tipped box", "incident bed=9 what=tipped"),
        ("9 clamped per order", "incident bed=9 what=clamped"),
        ("9 canister changed when full", "exchanged bed=9"),
        ("9 back to seal", "checked bed=9 suction_cmh2o=0"),
        ("9 back from ct at 1840", "back bed=9 at=18:40"),
        ("9 leak returned", "checked bed=9 air_leak=present"),
    ],
)
def test_an_event_that_came_to_pass_is_told(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    "said",
    ["9 tipped 640", "9 back 640", "9 moved to 10, 640", "9 clamped 640", "9 box cracked 640"],
)
def test_three_digits_beside_an_event_are_a_line_or_its_time(said: str) -> None:
    assert reading(said).startswith("ask")
    assert "at=18:40" in reading(said.replace("640", "at 1840"))


@pytest.mark.parametrize(
    "said",
    [
        "9 suction at least 20",
        "9 suction less 20",
        "9 suction low 10",
        "9 suction from 20",
        "9 suction up from 20",
        "9 suction 20 from 7",
        "9 suction ought to be 20",
        "9 suction on at 7",
        "9 suctioned at 7",
        "9 wall clock 7",
        "9 wall at 7",
        "9 seal at 7",
        "9 seal 2 cm low",
        "9 seal low by 1",
        "9 leak at 7",
        "9 leak up from 1",
        "9 set to 20",
        "9 set at 20",
        "9 suction 20 earlier",
        "9 not gravity",
        "9 no longer gravity",
        "9 not on water seal",
        "9 leak earlier",
        "9 leak continuous earlier, now none",
        "9 tidaling earlier not now",
        "9 check for leak",
        "9 leak checked none",
        "9 no big leak",
        "9 not continuous leak",
        "9 suction bubbling",
        "9 swing bed",
        "9 site purulent",
        "9 bloody or serous",
        "9 dark red to serous",
        "9 r/o chyle",
        "9 for cabg",
        "9 awaiting lobectomy",
        "9 lobectomy cancelled",
        "9 mother had cabg",
        "9 next to cabg pt",
        "9 effusion resolved",
        "9 birth weight 3 kg",
        "9 lifting 2 kg",
        "9 weigh at 7",
        "9 fluids 100",
    ],
)
def test_a_check_of_before_or_of_something_else_is_asked(said: str) -> None:
    assert reading(said).startswith("ask")


@pytest.mark.parametrize(
    "said",
    [
        "9 wall 60 now 90",
        "9 suction 20 at 80",
        "9 suction 20 80",
        "9 suction set 20 reads 10",
        "9 90 wall 20 suction",
        "9 leak up to 3",
        "9 cabg 2019",
        "9 wt 80 or 82",
        "9 wt was 80 now 82",
    ],
)
def test_a_second_value_of_a_check_is_no_line(said: str) -> None:
    assert "mark" not in reading(said)
    assert "ask" in reading(said)


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("9 suction at 10", "checked bed=9 suction_cmh2o=10"),
        ("bed 11 suction now on at 10", "checked bed=11 suction_cmh2o=10"),
        ("9 seal at 2", "checked bed=9 seal_cm=2"),
        ("9 wall at 90", "checked bed=9 wall_mmhg=90"),
        ("9 suction from 20 to 10", "checked bed=9 suction_cmh2o=10"),
        ("9 no suction, water seal only", "checked bed=9 suction_cmh2o=0"),
        ("9 not on suction", "checked bed=9 suction_cmh2o=0"),
        (
            "9 suction 20 640 at 1850",
            "mark bed=9 at=18:50 level_ml=640; checked bed=9 at=18:50 suction_cmh2o=20",
        ),
        ("9 no leak", "checked bed=9 air_leak=none"),
        ("9 checked, no leak", "checked bed=9 air_leak=none"),
        ("9 s/p cabg", "described bed=9 reason=cardiac"),
        ("9 80 kg", "described bed=9 weight_kg=80"),
    ],
)
def test_a_check_that_was_made_is_told(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    "said",
    [
        "9 clamped earlier",
        "9 tipped last shift",
        "9 tipped on day shift",
        "9 clamped before, open now",
        "9 moved to 10 earlier",
        "9 suction off earlier, on now",
        "9 moved to 10 pending",
        "9 moved to 10 then back to 9",
        "9 removed clamp",
        "9 tubing pulled",
        "9 wall unit broken",
        "9 back to ct",
        "9 back in ct",
        "9 clamped after 640",
        "9 changed box final at 1840",
        "9 changed box last line at 1840",
        "9 changed box final nil",
        "9 off suction 1830 on suction 1845",
        "9 tube 1 out, tube 2 640",
        "9 tube 1 of 2 out",
        "no leak in 9 leak in 10",
        "9 to seal 10 to suction",
        "9 ordered wall 90",
        "9 tipped, changed",
        "9 tipped righted 700",
        "9 to ct 1850 back 19",
        "9 leak 1850 3",
    ],
)
def test_an_event_of_before_or_of_another_thing_is_asked(said: str) -> None:
    assert reading(said).startswith("ask")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("9 clamped earlier at 1840", "incident bed=9 at=18:40 what=clamped"),
        ("9 tube out 1850 final 640", "removed bed=9 at=18:50 level_ml=640"),
        ("9 changed box, final line 1980 at 1840", "exchanged bed=9 at=18:40 final_ml=1980"),
        ("9 moved to 10 at 1850", "moved bed=9 at=18:50 to_bed=10"),
        ("9 clamped, 10 unclamped", "incident bed=9 what=clamped; incident bed=10 what=unclamped"),
        ("9 seal 2 leak 3", "checked bed=9 seal_cm=2 air_leak=present leak_grade=3"),
        ("9 left for ct at 1840, back 1850", "away bed=9 at=18:40; back bed=9 at=18:50"),
        ("9 clamps at bedside, 640 at 1850", "mark bed=9 at=18:50 level_ml=640"),
    ],
)
def test_an_event_with_its_own_time_and_values_is_told(said: str, read: str) -> None:
    assert reading(said) == read
