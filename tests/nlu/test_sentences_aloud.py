"""What is dictated: numbers that end in an hour, how many beds come, what is said behind what was found."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from .saying import BEDS, CHANNELS, Channel, reading

ZONE = ZoneInfo("America/New_York")


def heard(text: str, time: str, channel: Channel = "voice") -> str:
    """What is read of a text that arrived at a time of the day."""
    hour, minute = map(int, time.split(":"))
    return reading(text, BEDS, channel, datetime(2026, 3, 4, hour, minute, tzinfo=ZONE))


@pytest.mark.parametrize(
    ("text", "time", "read"),
    [
        ("bed nine mark 400 and 7", "19:07", "ask level_ml"),
        ("bed nine mark 400 and 7", "07:50", "ask level_ml"),
        ("bed nine mark 400 and 7", "12:07", "mark bed=9 level_ml=407"),
        ("bed nine mark 400 and 7 at 1900", "19:07", "mark bed=9 at=19:00 level_ml=407"),
        ("bed nine is at 400 and 7 mils", "19:07", "mark bed=9 level_ml=407"),
        ("bed nine mark 400 and 40", "19:07", "mark bed=9 level_ml=440"),
        ("bed nine mark four hundred and seven", "19:07", "ask level_ml"),
        ("bed nine mark 400 and nine", "09:05", "ask at"),
        ("bed nine drained a hundred and twenty since the last line", "08:15", "drained bed=9 volume_ml=120"),
        ("bed nine canister changed final 1500 and 10", "22:02", "ask final_ml"),
    ],
)
def test_an_hour_behind_and_is_the_end_of_a_number_only_where_it_is_no_hour(
    text: str, time: str, read: str
) -> None:
    assert heard(text, time) == read


@pytest.mark.parametrize(
    ("text", "time"),
    [
        ("bed nine mark four hundred and nine oh five", "09:05"),
        ("bed nine mark four hundred nine oh five", "09:05"),
        ("bed nine mark four hundred and fifty nine oh five", "09:07"),
        ("bed twelve at seven ten fifty", "19:12"),
        ("bed twelve at seven fifteen sixty no leak", "19:20"),
        ("bed nine mark for 100 at nine", "09:05"),
        ("bed five at eleven then fifty", "12:20"),
        ("three thirty bed three 300 bed four 400", "03:05"),
        ("six forty bed three 650 bed four 400", "07:05"),
    ],
)
def test_where_a_number_and_a_time_run_together_both_are_asked(text: str, time: str) -> None:
    assert heard(text, time).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "time", "read"),
    [
        ("bed twelve at seven ten two fifty", "19:12", "mark bed=12 at=19:10 level_ml=250"),
        ("bed twelve at six fifty sixty", "19:12", "mark bed=12 at=18:50 level_ml=60"),
        ("put bed nine down for 100 at nine", "09:05", "mark bed=9 at=09:00 level_ml=100"),
        (
            "bed five seven hundred at eleven then seven twenty five at twelve",
            "12:20",
            "mark bed=5 at=11:00 level_ml=700; mark bed=5 at=12:00 level_ml=725",
        ),
    ],
)
def test_where_they_part_in_one_way_only_they_are_read(text: str, time: str, read: str) -> None:
    assert heard(text, time) == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "time", "read"),
    [
        ("bed two is at 850 mls at 12:00 noon", "12:06", "mark bed=2 at=12:00 level_ml=850"),
        ("bed two is at 850 mls at 12 o'clock noon", "12:06", "mark bed=2 at=12:00 level_ml=850"),
        ("bed two mark 850 at 1200 noon", "12:06", "mark bed=2 at=12:00 level_ml=850"),
        ("bed two mark 850 at 12:00 midnight", "00:03", "mark bed=2 at=00:00 level_ml=850"),
        ("bed two mark 850 at 00:00 midnight", "00:03", "mark bed=2 at=00:00 level_ml=850"),
        ("bed two mark 850 at 00:00 noon", "12:06", "ask at"),
        ("bed two 1200 noon", "12:06", "ask level_ml"),
    ],
)
def test_twelve_and_its_name_are_one_time(text: str, time: str, read: str, channel: Channel) -> None:
    assert heard(text, time, channel) == read


OF_TWO = "mark bed=3 at=06:45 level_ml=210; mark bed=4 at=06:45 level_ml=95"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "head", ["my two", "okay my two tonight", "i have two marks for you", "two lines", "so my two are"]
)
def test_how_many_beds_come_is_no_hour_and_no_bed(head: str, channel: Channel) -> None:
    assert heard(f"{head} bed three mark 210 bed four mark 95 at 0645", "06:59", channel) == OF_TWO


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "text",
    [
        "my three tonight bed three mark 210 bed four mark 95",
        "my four tonight bed three mark 210 bed four mark 95",
        "two bed three mark 210 bed four mark 95",
    ],
)
def test_another_number_of_beds_is_asked(text: str, channel: Channel) -> None:
    assert "ask " in heard(text, "16:05", channel)


RED = "mark bed=2 at=10:00 level_ml=390; checked bed=2 at=10:00 fluid=bright_red"


@pytest.mark.parametrize(
    "clause",
    ["i've called the team", "i called doctor smith", "the team are on their way", "surgeon's aware"],
)
def test_what_somebody_does_behind_what_was_found_leaves_it(clause: str) -> None:
    assert heard(f"um bed two mark three ninety at ten it's bright red {clause}", "10:05") == RED
    assert heard(f"bed two bright red {clause}", "10:05") == "checked bed=2 fluid=bright_red"


@pytest.mark.parametrize(
    "clause",
    [
        "that's the curtain",
        "the lid",
        "he pulled at it",
        "i can't tell",
        "she had clots earlier",
        "the other nurse found one",
        "i hope i'm wrong",
    ],
)
def test_what_may_be_of_the_drain_there_is_asked(clause: str) -> None:
    assert "ask " in heard(f"bed two mark three ninety at ten it's bright red {clause}", "10:05")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("i'm in with bed eleven i'm gonna call it uh mark three twenty", "mark bed=11 level_ml=320"),
        ("bed eleven i'll put it down as three twenty", "mark bed=11 level_ml=320"),
        ("bed eleven i'm not gonna call it three twenty", "ask kind"),
        ("bed eleven i'm going to call it a leak", "ask kind"),
        ("bed eleven i'll call it in at three twenty", "ask kind"),
        ("bed nine mark zero still nothing in it", "mark bed=9 level_ml=0"),
        ("bed nine is at zero there's nothing in it yet", "mark bed=9 level_ml=0"),
        ("bed nine mark fifty nothing in it", "ask level_ml"),
        ("bed nine mark five zero nothing in it", "ask level_ml"),
        ("nights left bed two at six forty at seven", "ask level_ml"),
        ("left bed two at three forty", "mark bed=2 tube=left level_ml=340"),
        ("right bed eight mark four ninety", "ask tube"),
        ("okay right bed eight mark four ninety", "mark bed=8 level_ml=490"),
    ],
)
def test_a_line_is_told_in_more_words(text: str, read: str) -> None:
    assert heard(text, "19:05") == read


@pytest.mark.parametrize(
    ("text", "time", "read"),
    [
        (
            "Chest tube placed, bed 7, left side, 11:20, pneumothorax.",
            "11:35",
            "placed bed=7 tube=left at=11:20 reason=air",
        ),
        ("chest tube placed bed seven 11:20", "16:35", "ask level_ml"),
        ("chest tube placed bed seven 1120", "11:35", "ask level_ml"),
        ("chest tube placed bed seven opening 1:20", "13:35", "placed bed=7 level_ml=120"),
        ("tube out bed seven 11:20", "11:35", "ask level_ml"),
        ("canister changed bed seven 11:20", "11:35", "ask final_ml"),
    ],
)
def test_a_fresh_clock_time_is_when_a_tube_was_placed(text: str, time: str, read: str) -> None:
    assert heard(text, time) == read


WARD = (*map(str, range(1, 25)), "12A", "12B")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twelve a mark three forty", "ask bed"),
        ("bed 12 a mark 340", "ask bed"),
        ("Bed 12 A mark 340", "mark bed=12A level_ml=340"),
        ("bed 12 A three twenty mils", "mark bed=12A level_ml=320"),
        ("bed twelve a is at 340", "mark bed=12A level_ml=340"),
        ("bed twelve b mark 340", "mark bed=12B level_ml=340"),
        ("Bed 12. A mark of 340.", "mark bed=12 level_ml=340"),
    ],
)
def test_an_a_behind_a_bed_is_its_letter_or_an_article(text: str, read: str) -> None:
    assert reading(text, WARD, "voice") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed seven chest tube's fallen out", "incident bed=7 what=dislodged"),
        ("bed seven tube fell out can someone come please", "incident bed=7 what=dislodged"),
        ("bed seven tube's disconnected i need a hand in here", "incident bed=7 what=disconnected"),
        ("bed seven tube's disconnected, we need the surgeon now", "incident bed=7 what=disconnected"),
        ("bed seven tube fell out send help", "incident bed=7 what=dislodged"),
        ("bed seven tube fell out i need a new one", "ask kind"),
        ("bed seven box tipped i need the last line", "ask kind"),
        ("bed seven fell out of bed", "ask kind"),
        ("bed seven mark 340 he's fallen out with his wife", "mark bed=7 level_ml=340"),
        ("i need the nurse's last mark on bed seven", "asked bed=7 topic=last"),
        ("bed 16 has left for the OR", "away bed=16"),
        ("bed 16 left for theatre at six", "away bed=16 at=18:00"),
        ("bed five chest tube got pulled in the transfer", "ask level_ml"),
        ("bed five tube pulled during turning", "ask level_ml"),
        ("bed five tube pulled by surgery in theatre", "removed bed=5"),
    ],
)
def test_whoever_calls_for_help_tells_what_happened(text: str, read: str, channel: Channel) -> None:
    assert heard(text, "19:07", channel) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "sorry late one bed thirteen mark was six hundred at seventeen hundred i only got to it now",
            "mark bed=13 at=17:00 level_ml=600",
        ),
        (
            "bed thirteen mark six hundred at seventeen hundred sorry it's late got pulled into a code",
            "mark bed=13 at=17:00 level_ml=600",
        ),
        ("bed thirteen mark six hundred i was stuck in an admission", "mark bed=13 level_ml=600"),
        (
            "bed twelve mark twelve forty at nineteen hundred it jumped because i turned him",
            "mark bed=12 at=19:00 level_ml=1240",
        ),
        ("bed twelve mark twelve forty it jumped because i emptied it", "ask level_ml"),
        ("tubing was kinked on bed eleven she was lying on it", "incident bed=11 what=kinked"),
        (
            "uh the canister on bed 2 has been changed final 1,575 it was getting full",
            "exchanged bed=2 final_ml=1575",
        ),
        ("bed 2 it's getting full", "ask kind"),
        (
            "chest tube removed bed 5 at 1830 final level 610 dressing on",
            "removed bed=5 at=18:30 level_ml=610",
        ),
        ("tube out 1835, dressing on, 180", "ask bed"),
        ("bed twelve has gone from nine ninety to ten fifty", "mark bed=12 level_ml=1050"),
        ("bed twelve gone from nine to ten", "ask at"),
        ("bed twelve gone from here to theatre", "ask kind"),
    ],
)
def test_why_and_how_are_left_out_where_they_are_plain(text: str, read: str) -> None:
    assert heard(text, "19:07") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed four seals good suction is minus twenty", "checked bed=4 suction_cmh2o=20"),
        ("bed four water seals at two no air leak", "checked bed=4 seal_cm=2 air_leak=none"),
        ("bed four air leaks gone", "checked bed=4 air_leak=none"),
        ("bed four walls at ninety", "checked bed=4 wall_mmhg=90"),
        ("bed four fluids pink", "checked bed=4 fluid=serosanguineous"),
        (
            "bed four rights at three forty and lefts at one ten",
            "mark bed=4 tube=right level_ml=340; mark bed=4 tube=left level_ml=110",
        ),
        ("bed four mark 340 iv fluids at 80 an hour", "mark bed=4 level_ml=340"),
        ("bed four mark 340 and the foley's at four hundred", "mark bed=4 level_ml=340"),
        ("bed four mark 340 heart rates one ten", "mark bed=4 level_ml=340"),
        ("bed four mark 340 pain's three out of ten", "mark bed=4 level_ml=340"),
    ],
)
def test_an_s_without_its_sign_is_an_is(text: str, read: str) -> None:
    assert heard(text, "19:07") == read


OF_BOTH = "mark bed=1 at=19:00 level_ml=110; mark bed=2 at=19:00 level_ml=200"


@pytest.mark.parametrize("channel", CHANNELS)
def test_those_were_at_seven_says_when_all_were_read(channel: Channel) -> None:
    for behind in ("those were at seven", "both were at 1900", "those are at nineteen hundred"):
        assert heard(f"bed one mark 110 bed two mark 200 {behind}", "19:07", channel) == OF_BOTH
    assert "ask " in heard("bed one mark 110 bed two mark 200 both are at 700", "19:07", channel)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 5 tube clamped sats are ninety five", "incident bed=5 what=clamped"),
        ("bed 5 tube clamped at 1830 bp one ten over seventy", "incident bed=5 at=18:30 what=clamped"),
        ("bed 5 no air leak swinging pain is four out of ten", "checked bed=5 air_leak=none tidaling=True"),
        ("bed 5 tubing was kinked he's asking for water", "incident bed=5 what=kinked"),
        ("bed 5 nothing out since last mark he's off to sleep", "ask volume_ml"),
        ("bed 5 tube clamped heart rate one ten he pulled it", "ask kind"),
        ("bed 5 tube out he's asking for it back", "ask level_ml"),
        ("bed 5 tube out i think", "ask kind"),
    ],
)
def test_what_is_measured_beside_an_event_leaves_it(text: str, read: str) -> None:
    assert heard(text, "19:07") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("somebody kicked over bed 9's canister at 1855", "incident bed=9 at=18:55 what=tipped"),
        (
            "kicked over bed 9's canister at 1855 it was at 340",
            "mark bed=9 at=18:55 level_ml=340; incident bed=9 at=18:55 what=tipped",
        ),
        ("kicked over bed 9's canister at 340", "mark bed=9 level_ml=340; incident bed=9 what=tipped"),
    ],
)
def test_a_canister_that_was_kicked_over_is_no_line(text: str, read: str, channel: Channel) -> None:
    assert heard(text, "19:07", channel) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("yeah how much has bed seventeen put out this shift", "asked bed=17 topic=total window=shift"),
        ("this is dan on nights what's the last mark on bed 23", "asked bed=23 topic=last"),
        ("this is dan on nights bed 23 mark 340", "mark bed=23 level_ml=340"),
    ],
)
def test_who_speaks_and_a_yes_to_begin_with_leave_a_question(text: str, read: str) -> None:
    assert heard(text, "19:07") == read


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed seven back from x-ray drain's at six thirty", "ask kind"),
        ("bed seven back from CT drain at 630", "ask kind"),
        ("bed seven tube clamped drain's at 630", "ask kind"),
        ("bed seven back from CT, drain's at 630", "back bed=7; mark bed=7 level_ml=630"),
        ("bed seven back from CT at 630", "back bed=7 at=06:30"),
        ("bed seven clamped the drain at 830", "incident bed=7 at=08:30 what=clamped"),
        ("take that back that was bed eight", "ask kind"),
        ("scratch that it was for bed eight", "ask kind"),
        ("scratch that bed eight", "withdrawn bed=8"),
        ("bed seven a two forty b one ten", "ask level_ml"),
    ],
)
def test_a_line_a_bed_or_a_tube_that_may_be_another_is_asked(text: str, read: str, channel: Channel) -> None:
    assert heard(text, "09:15", channel) == read
