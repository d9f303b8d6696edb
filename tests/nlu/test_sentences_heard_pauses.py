"""Stops and commas that a recogniser writes where nobody ended anything, and "ate" for "at"."""

from __future__ import annotations

from datetime import datetime

import pytest

from .saying import ARRIVED, BEDS, reading


def _at(clock: str) -> datetime:
    return ARRIVED.replace(hour=int(clock[:2]), minute=int(clock[2:]))


@pytest.mark.parametrize(
    ("clock", "text", "read"),
    [
        (
            "1758",
            "New Chest Tube Bed 16 Left At 1,745 For Hemothorax.",
            "placed bed=16 tube=left at=17:45 reason=trauma",
        ),
        ("2216", "Drain Level Bed 16 Is 1,025, Time 2,215.", "mark bed=16 at=22:15 level_ml=1025"),
        ("1405", "At 1,400 Bed 9 Was 735.", "mark bed=9 at=14:00 level_ml=735"),
        ("1405", "At 1,400 Bed 9 735", "mark bed=9 at=14:00 level_ml=735"),
        ("2033", "Bed 1 Canister Cracked At 2,030.", "incident bed=1 at=20:30 what=damaged"),
        ("1030", "Tube Out Bed 21 At 1,015, Final 1,340.", "removed bed=21 at=10:15 level_ml=1340"),
        (
            "1212",
            "Changed The Chamber Bed 4 At 1,205, Final 1,840, New One Starts At 0.",
            "exchanged bed=4 at=12:05 final_ml=1840 opening_ml=0",
        ),
        ("0710", "Bed 14 Yesterday At 2,300 Was 760.", "mark bed=14 at=03-Mar-23:00 level_ml=760"),
        ("2210", "bed 9 went to CT at 2,205", "away bed=9 at=22:05"),
        ("1905", "bed 7 on water seal at 1,830", "checked bed=7 at=18:30 suction_cmh2o=0"),
        ("1905", "bed 5 knocked over at 1,815", "incident bed=5 at=18:15 what=tipped"),
        ("1905", "bed 4 clamped since 1,800", "incident bed=4 at=18:00 what=clamped"),
        ("1840", "bed 2 level is 1,005, time is 1,835", "mark bed=2 at=18:35 level_ml=1005"),
        ("2125", "changed the box bed 4 at 2,045, old one 1,250", "exchanged bed=4 at=20:45 final_ml=1250"),
        ("1920", "bed 5 130 read at 1,840", "mark bed=5 at=18:40 level_ml=130"),
        ("2103", "Bed 7 At 2,100.", "ask level_ml"),
        ("1150", "bed 1 checked at 1,138 no leak", "ask level_ml"),
        ("1150", "bed 1 is at 1,138 no leak", "mark bed=1 level_ml=1138; checked bed=1 air_leak=none"),
        ("1405", "At 1,400 Bed 9", "ask level_ml"),
        ("1405", "At 1,400 Bed 9 1,340", "ask level_ml"),
        ("1345", "Bed 9 at 1,340. 1,400.", "ask level_ml"),
        ("1410", "Bed 9 at 1,340, 1400", "mark bed=9 at=14:00 level_ml=1340"),
        ("2103", "Bed 9 at 1,340 at 9", "mark bed=9 at=21:00 level_ml=1340"),
        ("1902", "bed 7 line at 1,900", "mark bed=7 level_ml=1900"),
        ("1405", "bed 9 is at 1,400", "mark bed=9 level_ml=1400"),
        ("1310", "bed 9 drain is right at 1,250", "mark bed=9 level_ml=1250"),
        ("1355", "bed 4 at 1,350, no leak", "ask level_ml"),
        ("1905", "bed 4 at 1,350 was 1,200", "ask level_ml"),
        ("1405", "bed 4 at 1,350, changed the canister", "ask level_ml"),
        (
            "1402",
            "bed 4 at 1,340, bed 9 at 1,400",
            "mark bed=4 level_ml=1340; mark bed=9 level_ml=1400",
        ),
        (
            "1905",
            "bed 9 clamped with the line at 1,250",
            "mark bed=9 level_ml=1250; incident bed=9 what=clamped",
        ),
    ],
)
def test_a_comma_within_a_24_hour_time_says_nothing(clock: str, text: str, read: str) -> None:
    assert reading(text, beds=BEDS, channel="voice", arrived=_at(clock)) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Bed 22 drained. Another 80 since. Last mark.", "drained bed=22 volume_ml=80"),
        ("bed 4 drained 80 since the, last mark", "drained bed=4 volume_ml=80"),
        ("This is. Bed 8 mark 70 at 1830; first. Line.", "mark bed=8 at=18:30 level_ml=70"),
        ("first mark on bed 8 is 70 at 1830", "mark bed=8 at=18:30 level_ml=70"),
        ("Bed 2. 1,140. Milliliters, at 6. pm", "mark bed=2 at=18:00 level_ml=1140"),
        ("bed 3 mark. 1330 at 1800 tell. the doctor it's slowing.", "mark bed=3 at=18:00 level_ml=1330"),
        ("bed 24 level is 1,395 twenty. minutes ago", "mark bed=24 at=18:45 level_ml=1395"),
        ("bed 7 line 640 half. An hour ago", "mark bed=7 at=18:35 level_ml=640"),
        ("bed 24 changed the. canister at 1800 old. one 1,950", "exchanged bed=24 at=18:00 final_ml=1950"),
        ("bed 3 same as the last. One at 1800", "drained bed=3 at=18:00 volume_ml=0"),
        ("bed 24 mark 340 last. line of my shift", "mark bed=24 level_ml=340 closing"),
        ("bed 7 leak is. Gone", "checked bed=7 air_leak=none"),
        ("bed 7 fluid was. Bloody now it's straw coloured", "checked bed=7 at=19:05 fluid=serous"),
        ("bed 3 suction. Is off for transport", "incident bed=3 what=suction_off"),
        (
            "bed 7 suction turned off at 1830 back. On at 1845",
            "incident bed=7 at=18:30 what=suction_off; incident bed=7 at=18:45 what=suction_on",
        ),
        ("bed 9 goal. under 200 today", ""),
        ("bed 9 goal under. 200", ""),
        ("bed 3 blood. pressure 120 over 80", ""),
        ("bed 3 JP. drain 45", ""),
    ],
)
def test_a_stop_within_a_phrase_says_nothing(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 24 no. leak suction 20", "checked bed=24 suction_cmh2o=20 air_leak=none"),
        ("bed 24 no, leak, suction 20", "checked bed=24 suction_cmh2o=20 air_leak=none"),
        ("bed 24 mark 310. no. air. leak", "mark bed=24 level_ml=310; checked bed=24 air_leak=none"),
        ("bed 24 not. swinging", "checked bed=24 tidaling=False"),
        ("bed 24 swing no. leak yes", "checked bed=24 air_leak=present tidaling=False"),
        ("bed 24 swinging no. Bubbling yes", "checked bed=24 air_leak=present tidaling=False"),
        ("bed 3 without a, leak", "checked bed=3 air_leak=none"),
        ("bed 3 not swinging any. More", "checked bed=3 tidaling=False"),
        ("bed 3 is no longer. clamped", "incident bed=3 what=unclamped"),
        ("don't. chart bed 24 310", "ask kind"),
        ("bed 24 450 not. sure", "ask kind"),
        ("bed 24 less than. 450", "ask level_ml"),
        ("bed 24 did not drain. 80", "ask kind"),
        ("bed 24 hasn't put out, 80 since 1800", "ask kind"),
        ("bed 24 is not at, 340", "ask kind"),
        ("bed 24 has not been. Clamped", "ask kind"),
        ("bed 24 almost. tipped over", "ask kind"),
        ("bed 7 never got to, 340", "ask kind"),
        ("bed 7 might have a small. Leak", "ask kind"),
        ("bed 7 no more. Bubbling", "checked bed=7 air_leak=none"),
        ("bed 7 moved from. Bed 9", "moved bed=9 to_bed=7"),
        ("Bed; 7 leak; resolved; at, 1850.", "checked bed=7 at=18:50 air_leak=none"),
        ("Bed. 7, the night nurse said. 300.", "ask level_ml"),
        ("bed 7 water seal. Trial in the morning", "ask kind"),
        ("Bed. 3 is, no, longer, clamped.", "incident bed=3 what=unclamped"),
        ("Bed 3 did not. Drain. 80.", "ask kind"),
        ("Bed. 4 drained; 80. Since the, last mark.", "drained bed=4 volume_ml=80"),
        ("Bed; 7 the tube. Fell; out; at 1830.", "incident bed=7 at=18:30 what=dislodged"),
        ("Bed 7 four hundred ten. At eighteen, thirty.", "mark bed=7 at=18:30 level_ml=410"),
        ("Bed 7; doctor; says, no suction.", "ordered bed=7 suction_cmh2o=0"),
        ("call me if. bed 24 is 450", "ask kind"),
        ("call if bed 24 is over. 450", "ask kind"),
        ("bed 3 clamp trial. At 0800 tomorrow", "ask kind"),
        ("bed 24 tube out. tomorrow", "ask kind"),
        ("bed 5 expected to, drain 200 more", "ask kind"),
        ("bed 5 never had. A leak", "checked bed=5 air_leak=none"),
        ("bed 5 pain 7. Out of 10 mark 340 at 1850", "mark bed=5 at=18:50 level_ml=340"),
        ("bed 5 transferred to ward. 9 at 1815", "left bed=5 at=18:15"),
        ("is. Bed 7 clamped", "ask kind"),
        (
            "bed 24 tipped over. 340 at 1800",
            "mark bed=24 at=18:00 level_ml=340; incident bed=24 at=18:00 what=tipped",
        ),
    ],
)
def test_what_denies_or_bounds_is_not_parted_from_its_number_by_a_stop(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 level 405 ate 1800", "mark bed=9 at=18:00 level_ml=405"),
        ("bed 9 mark 1,340 ate 1800", "mark bed=9 at=18:00 level_ml=1340"),
        ("bed 14 same add 1850", "drained bed=14 at=18:50 volume_ml=0"),
        ("bed seven mark twelve fifty ate quarter past six", "mark bed=7 at=18:15 level_ml=1250"),
        ("bed five is at six hundred ate six thirty", "ask level_ml"),
        ("bed 3 should be add 340 by 1900", "ask kind"),
        ("bed 9 ate 1800", "ask kind"),
        ("bed 9 mark 60 ate 1800", "ask level_ml"),
        ("bed 9 mark 405 ate 1300 calories", "ask level_ml"),
        ("bed 14 same add 200", "ask level_ml"),
    ],
)
def test_ate_and_add_behind_a_whole_level_are_at(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 22 mark 180 1850 daughter called wants update", "mark bed=22 at=18:50 level_ml=180"),
        ("bed 22 mark 180 1850 chest xray done", "mark bed=22 at=18:50 level_ml=180"),
        ("bed 22 mark 180 at 1850 his wife just left", "mark bed=22 at=18:50 level_ml=180"),
        ("bed 22 mark 180 at 1850 she says it's sore when she coughs", "mark bed=22 at=18:50 level_ml=180"),
        (
            "Bed 22. Level, is 180, at 1850, he pulled, his oxygen off. Again.",
            "mark bed=22 at=18:50 level_ml=180",
        ),
        ("bed 22 mark 180 at 1850 he says it's sore and wrong", "ask level_ml"),
        ("bed 22 mark 180 at 1850 daughter called it 200", "ask level_ml"),
        ("bed 22 mark 180 1850 doctor called change it to 280", "ask level_ml"),
        ("bed 22 mark 180 1850 surgeon called wants it clamped", "ask level_ml"),
    ],
)
def test_what_people_do_behind_a_whole_line_is_left_out(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("JP drain bed 9 45 mils", "ask kind"),
        ("JP Drain Bed 9, 45 Mils.", "ask kind"),
        ("wound vac bed 8 60", "ask kind"),
        ("foley for bed ate 350", "ask kind"),
        ("catheter bag bed ten emptied four hundred", "ask kind"),
        ("foley bed 8 350 line 200 at 1850", "mark bed=8 at=18:50 level_ml=200"),
        ("bed 8 bp 120 over 80", ""),
        ("bed 16 not sure 400 or 450 1850", "ask level_ml"),
        ("bed 16 not sure if it's 400 or 450", "ask level_ml"),
        ("let me know when bed 3 is 340", "ask kind"),
        ("let me know if bed 3 is 340", "ask kind"),
        ("bed 3 canister hasn't changed", "ask kind"),
        ("bed 7 is on suction and 9 is clamped", "ask kind"),
        ("bed 7 seal at 2 suction and 20 no leak", "ask kind"),
    ],
)
def test_what_is_of_another_device_or_may_come_is_asked(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read
