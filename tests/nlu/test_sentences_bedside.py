"""What is written at the bedside in a hurry, with much beside the number."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("14 1110 on the dot at 7p", "mark bed=14 at=19:00 level_ml=1110"),
        ("14's at the 1110 mark", "mark bed=14 level_ml=1110"),
        ("14 marked 1845", "mark bed=14 level_ml=1845"),
        ("bed 14 tube bumped, still 1110", "mark bed=14 level_ml=1110"),
        ("bed 14 60", "mark bed=14 level_ml=60"),
        ("how come 14 says overdue", "asked bed=14 topic=due"),
        ("14 next mark due when", "asked bed=14 topic=due"),
        ("14 left 300", "mark bed=14 tube=left level_ml=300"),
        ("14 left at 300", "mark bed=14 tube=left level_ml=300"),
    ],
)
def test_an_evening_message_is_read_as_its_nurse_meant_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("14 ct out put 60 this hr line now 1110", "ask level_ml"),
        ("Rm 14 pleural 1110 at 1850, peric 45", "ask level_ml"),
        ("i marked 14 at 1110 around 645", "ask at"),
        ("bed 14 weaned off suction, now ws", "ask kind"),
        ("bed 14 trial off suction 1500-1600, 30 out", "ask at; ask at"),
        ("bed 14 3 way stopcock", "ask bed"),
        ("bed 14 lost 200 in OR", "ask volume_ml"),
        ("bed 14 cell saver gave back 450", "ask kind"),
        ("bed 14 1 of 2 tubes out", "ask bed"),
        ("bed 14 tube 2 of 3 at 90", "ask at"),
        ("bed 14 old tube site leaking", "ask kind"),
        ("bed 14 30 cc flush given", "ask level_ml"),
        ("bed 14 flushed pigtail w 20", "ask level_ml"),
        ("bed 14 sent 10 for culture", "ask level_ml"),
        ("bed 14 tpa 10mg in 30 ml at 1700, clamped", "ask level_ml"),
        ("bed 14 unclamped after tpa 1 hr, 350 out", "ask volume_ml"),
        ("bed 14 1900 vitals stable ct 1110", "ask level_ml"),
        ("bed 14 last charted 1050 now 1110", "ask at"),
        ("bed 14 +60", "ask level_ml"),
        ("14 minus 60", "ask level_ml"),
        ("bed 14 box knocked over, was 1110 now cant read", "ask level_ml"),
        ("what was drained from 14 between 1500 and 1900", "ask at"),
        ("tell me 14's last three", "ask level_ml"),
        ("does 14 still have 2 tubes", "ask kind"),
        ("14 pt name bob smith 1110", "ask level_ml"),
        ("stop", "ask kind"),
        ("is this the right number for blood bank", "ask kind"),
        ("14 out of bed, 14 back in bed 1800", "ask level_ml"),
        ("14 will need ct scan 2000", "ask kind"),
        ("14 left at 1840", "ask level_ml"),
        ("14 to 15", "ask at"),
        ("14 moved 1840", "ask to_bed"),
        ("14 and 15 traded, 14 is now 15", "ask level_ml"),
    ],
)
def test_an_evening_message_that_is_not_sure_or_not_ours_tells_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 no tidling", "checked bed=4 tidaling=False"),
        ("bed 4 not tidling", "checked bed=4 tidaling=False"),
        ("bed 4 doesn't leak", "checked bed=4 air_leak=none"),
        ("bed 4 no ongoing leak", "checked bed=4 air_leak=none"),
        ("bed 4 no more bubbles", "checked bed=4 air_leak=none"),
        ("bed 4 hasn't been tidaling since 6", "checked bed=4 tidaling=False"),
        ("bed 4 no leak tidaling", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 no leak, tidaling", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 no leak or tidaling", "checked bed=4 air_leak=none; ask kind"),
        ("bed 4 bubbling not present", "ask kind"),
        ("bed 4 leak not seen", "ask kind"),
        ("bed 4 can't see tidaling", "ask kind"),
        ("bed 4 tidal no bubble no", "ask kind"),
    ],
)
def test_a_sign_that_is_denied_is_never_read_as_present(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7 mark 560 that was like 10 min ago", "mark bed=7 at=18:55 level_ml=560"),
        ("bed 7 mark 560 that was at 1800", "mark bed=7 at=18:00 level_ml=560"),
        ("bed 7 that was 590", "corrected bed=7 level_ml=590"),
        ("bed 7 560 was wrong", "ask level_ml"),
        ("bed 7 560 that was wrong, should be 590", "corrected bed=7 was_ml=560 level_ml=590"),
        ("bed 1 mark 215 actually 250 at 1800", "ask level_ml"),
    ],
)
def test_what_is_said_of_a_number_just_said_corrects_no_other_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 suction reads 15", "checked bed=4 suction_cmh2o=15"),
        ("bed 4 suction gauge shows 20", "checked bed=4 suction_cmh2o=20"),
        ("bed 4 suction reads 300", "ask level_ml"),
        ("bed 4 gentle bubbling on suction side 20", "checked bed=4 suction_cmh2o=20"),
        ("bed 4 suction chamber bubbling gently", "ask kind"),
        ("bed 4 bubbling chamber 2", "checked bed=4 air_leak=present; ask level_ml"),
        ("bed 4 tidal +/-", "ask kind"),
        ("bed 4 tidal volume 420", ""),
    ],
)
def test_a_number_and_a_bubble_are_of_the_part_that_is_named(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text", ["bed 4 ct was pulled back 2cm by md 1800", "bed 4 pulled the tube back 1800"]
)
def test_a_tube_that_was_pulled_back_is_not_out(text: str) -> None:
    assert "removed" not in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 not bloody", "ask kind"),
        ("bed 4 was bloody, now serous", "checked bed=4 at=19:05 fluid=serous"),
        ("bed 4 ?leak", "ask kind"),
        ("bed 4 clamped again at 1800", "incident bed=4 at=18:00 what=clamped"),
        ("bed 12 1 340", "ask bed"),
        (
            "bed 4 870 at 1800 blood stained",
            "mark bed=4 at=18:00 level_ml=870; checked bed=4 at=18:00 fluid=sanguineous",
        ),
        ("i put bed 8 260 but its 206", "corrected bed=8 was_ml=260 level_ml=206"),
        ("bed 22 my 455 should be 445", "corrected bed=22 was_ml=455 level_ml=445"),
        ("bed 4 to CT 1500 back 1545", "away bed=4 at=15:00; back bed=4 at=15:45"),
    ],
)
def test_what_was_is_told_apart_from_what_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "4 lt 300 rt 155 at 1850, both no leak",
            "mark bed=4 tube=left at=18:50 level_ml=300; checked bed=4 tube=left at=18:50 air_leak=none; "
            "mark bed=4 tube=right at=18:50 level_ml=155; checked bed=4 tube=right at=18:50 air_leak=none",
        ),
        (
            "4 R 305 L 60 1850 sxn -20 both swinging",
            "mark bed=4 tube=right at=18:50 level_ml=305; checked bed=4 tube=right at=18:50 tidaling=True; "
            "mark bed=4 tube=left at=18:50 level_ml=60; "
            "checked bed=4 tube=left at=18:50 suction_cmh2o=20 tidaling=True",
        ),
        ("12 both no leak", "checked bed=12 air_leak=none"),
    ],
)
def test_what_is_said_of_both_is_of_each_tube(text: str, read: str) -> None:
    assert reading(text) == read
