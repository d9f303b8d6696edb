"""Fields of one line in few letters: what a colon joins, remarks without a comma, pressures with no name."""

from __future__ import annotations

import pytest

from .saying import reading

NONE_OF_EITHER = "checked bed=4 air_leak=none tidaling=False"
LINE_OF_2 = "mark bed=2 at=19:00 level_ml=665"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 tidal: no", "checked bed=4 tidaling=False"),
        ("bed 4 swing: nil, leak: nil", NONE_OF_EITHER),
        ("bed 4 swing nil bubble nil", NONE_OF_EITHER),
        ("bed 4 nil swing nil leak", NONE_OF_EITHER),
        ("bed 4 swing + bubble -", "checked bed=4 air_leak=none tidaling=True"),
        ("8 tidal: n", "checked bed=8 tidaling=False"),
        ("8 leak: y", "checked bed=8 air_leak=present"),
        ("bed 4 swing: y/n", "ask answer"),
        ("bed 4 leak: int, swing: y", "checked bed=4 air_leak=intermittent tidaling=True"),
        ("bed 4 +swing, -leak, -20 sxn", "checked bed=4 suction_cmh2o=20 air_leak=none tidaling=True"),
        ("bed 4 +leak 2", "checked bed=4 air_leak=present leak_grade=2"),
        ("bed 4 leak: no change", "ask kind"),
        ("bed 4 suction nil, seal 2", "checked bed=4 seal_cm=2 suction_cmh2o=0"),
        ("bed 4 sxn: WS", "checked bed=4 suction_cmh2o=0"),
        ("bed 4 with suction nil leak", "checked bed=4 air_leak=none"),
        ("bed 4 suction 20, WS 2", "checked bed=4 seal_cm=2 suction_cmh2o=20"),
        ("bed 4 sang -> serosang -> serous", "checked bed=4 fluid=serous"),
        ("bed 4 bloody - serous", "checked bed=4 fluid=sanguineous"),
        ("4 hooked to sxn -20, seal at 2", "checked bed=4 seal_cm=2 suction_cmh2o=20"),
        ("reg wants 4 off suction, water seal only", "ordered bed=4 suction_cmh2o=0"),
        ("bed 4 bubbling away", "checked bed=4 air_leak=present"),
    ],
)
def test_each_field_has_the_yes_or_no_that_is_joined_to_it(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    "remark",
    [
        "amb in hall x2",
        "sister informed",
        "dr informed",
        "sitting out",
        "sat out in chair",
        "sleeping w cpap",
        "up to chair x1",
        ", nil resp distress",
        ", nil SOB",
    ],
)
@pytest.mark.parametrize("line", ["2 665 ml 1900", "bed 2 665 ml 7pm"])
def test_a_remark_behind_a_whole_line_needs_no_comma(line: str, remark: str) -> None:
    assert reading(f"{line} {remark}") == LINE_OF_2


@pytest.mark.parametrize(
    "said",
    [
        "2 665 ml 1900 urine",
        "2 665 ml 1900 foley bag drained",
        "2 665 ml 1900 wound drain",
        "2 665 ml 1900 sister thinks",
        "2 665 ml 1900 wife said",
        "2 665 ml 1900 was wrong",
        "2 665 ml 1900 guessing at that",
        "2 665 ml 1900 doc thinks less",
        "2 665 ml 1900, mum says lower",
    ],
)
def test_what_is_of_the_line_behind_it_is_asked(said: str) -> None:
    assert reading(said).startswith("ask ")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        (
            "[4] 330 [9] 1125 [16] 75 @1900",
            "mark bed=4 at=19:00 level_ml=330; mark bed=9 at=19:00 level_ml=1125; "
            "mark bed=16 at=19:00 level_ml=75",
        ),
        ("b7 swap done 1830. final 720. opening 0.", "exchanged bed=7 at=18:30 final_ml=720 opening_ml=0"),
        ("maam 7 new CTT R at 1845 pneumothorax", "placed bed=7 tube=right at=18:45 reason=air"),
        (
            "rm 7 rt 500 lt 155 7pm po",
            "mark bed=7 tube=right at=19:00 level_ml=500; mark bed=7 tube=left at=19:00 level_ml=155",
        ),
        ("pt in bed 14 moved to bed 2 for obs", "moved bed=14 to_bed=2"),
        ("rm 7 tubing kinkd, straightened", "incident bed=7 what=kinked"),
        ("2 120/80 HR 92 - CT level 665 at 1900", LINE_OF_2),
        ("bed 2 110/60, CT 665 @1900", LINE_OF_2),
        ("bed 2 665/1900 HR 92", LINE_OF_2),
        ("bed 2 310/60 CT", "ask level_ml"),
        ("2 100/60 P 92 sats 95, drain 665 @1900", LINE_OF_2),
        ("2 665 1900 T+ L-", f"{LINE_OF_2}; checked bed=2 at=19:00 air_leak=none tidaling=True"),
        ("2: 665 - 1900 - +S -B", f"{LINE_OF_2}; checked bed=2 at=19:00 air_leak=none tidaling=True"),
        ("2 665 1900 S+ L- R+", "ask level_ml"),
        ("2-L-665-1900", "mark bed=2 tube=left at=19:00 level_ml=665"),
        ("8 << CT, 505 @ 1845", "back bed=8 at=18:45; mark bed=8 at=18:45 level_ml=505"),
        ("8 <- theatre 1840", "back bed=8 at=18:40"),
        ("8 < 505 at 1845", "ask level_ml"),
        ("19 chg - 1890", "ask level_ml"),
        ("19 chg 1890 to 1980", "corrected bed=19 was_ml=1890 level_ml=1980"),
        ("bed 2 moved to bed 4 for closer obs at 1840", "moved bed=2 at=18:40 to_bed=4"),
        ("9 CTT inserted R at 6:30pm d/t pneumothorax", "placed bed=9 tube=right at=18:30 reason=air"),
        ("2 665 ml 1900 bystander aware", LINE_OF_2),
        ("last line for arvo shift bed 2 665", "mark bed=2 level_ml=665 closing"),
        ("2 nil since 1800", "drained bed=2 volume_ml=0"),
        ("2 nil new", "drained bed=2 volume_ml=0"),
    ],
)
def test_short_words_and_pressures_are_read_as_they_are_meant(said: str, read: str) -> None:
    assert reading(said) == read


def test_what_both_tubes_do_is_told_of_each_with_what_follows() -> None:
    read = reading("b9 R 310 L 45 1900 swinging both nil leak")
    assert read.count("air_leak=none tidaling=True") == len(("right", "left"))
