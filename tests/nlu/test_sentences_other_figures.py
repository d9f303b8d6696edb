"""A clause whose numbers are another thing's beside a line that is whole: the line stands, and no more."""

from __future__ import annotations

import pytest

from .saying import reading

LINE = "mark bed=12 at=19:00 level_ml=340"
TOLD = [
    "had 2 percocet at 5",
    "gave 40 lasix at 1600",
    "zestril 10 mg given",
    "insulin 6 units given",
    "insulin gtt 4 units/hr",
    "paracetamol 1g at 1800",
    "ns at 75 ml/hr",
    "500 bolus given",
    "amio running at 33",
    "norad up to 8",
    "2nd unit prbc running",
    "metop 25 held for hr 54",
    "augmentin 1.2 due at 10pm",
    "flacc 2",
    "rass -1",
    "morse score 45",
    "rates pain an 8",
    "pain 0 at rest 5 on coughing",
    "pain was 8 now 3",
    "2/10 at rest",
    "p 76 reg",
    "hr 88 now 104",
    "sats dropped to 88 then back to 94",
    "gcs 14 e4v4m6",
    "o2 weaned to 1",
    "bg 212",
    "sugar 14.1 before lunch",
    "mg 0.74, replaced",
    "ate 50% of dinner",
    "had 2 slices of toast",
    "uop 40 last hr",
    "foley 55 ml/hr",
    "jp 20 ss",
    "bladder scan 320 at 5",
    "spirometer up to 1500 now",
    "bowels open x 1 type 4",
    "turned at 6 and 8",
    "walked 40 m",
    "slept 2 to 5",
    "she is 64",
    "72 yo",
    "61f",
    "he's 6 months old",
    "cxr was at 0600",
    "ecg done 0700",
    "ct scan at 2pm",
    "scan booked for 2",
    "5 visitors in the room",
    "1 to 1 nurse",
    "i have 4 tonight",
    "my ext is 4417",
    "reach me at ext 71120",
    "wife joan 555-1212",
    "18g in the arm",
    "20 g iv left hand",
    "dr smith saw him at 4",
]


@pytest.mark.parametrize("told", TOLD)
@pytest.mark.parametrize("stop", [". ", ", ", " - ", "; ", " and "])
def test_a_whole_line_stands_before_figures_of_other_things(told: str, stop: str) -> None:
    assert reading(f"bed 12 340 at 1900{stop}{told}") == LINE


@pytest.mark.parametrize("told", TOLD)
@pytest.mark.parametrize("stop", [". ", " - "])
def test_a_whole_line_stands_behind_figures_of_other_things(told: str, stop: str) -> None:
    assert reading(f"{told}{stop}bed 12 340 at 1900") == LINE


@pytest.mark.parametrize("told", ["flacc 2", "cxr was at 0600", "she is 64", "had 2 percocet at 5", "hr 88"])
@pytest.mark.parametrize("line", ["12 is 340", "bed 12 at 340", "line 340 at 1900", "at 1900 line 340"])
def test_their_time_and_number_make_no_line_whole(told: str, line: str) -> None:
    assert "mark" not in reading(f"{told}. {line}").replace("mark bed=12 level_ml=340", "")
    assert "mark" not in reading(f"{line}. {told}").replace("mark bed=12 level_ml=340", "")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 340 at 1900. drained 60 at 5", f"{LINE}; drained bed=12 at=17:00 volume_ml=60"),
        (
            "12 340 at 1900, pain 4 and leak 2",
            f"{LINE}; checked bed=12 at=19:00 air_leak=present leak_grade=2",
        ),
        ("12 340 at 1900, hr 88 and suction 20", f"{LINE}; checked bed=12 at=19:00 suction_cmh2o=20"),
        ("bed 8 given report, 340 at 1900", "mark bed=8 at=19:00 level_ml=340"),
        ("12 340 at 1900. 13 is 64", f"{LINE}; mark bed=13 at=19:00 level_ml=64"),
        ("8 mo old, at 1851 bed 9 was 192", "mark bed=9 at=18:51 level_ml=192"),
        ("turned at 6 and 8; 8 1005 ml 1845", "mark bed=8 at=18:45 level_ml=1005"),
        ("12 340 at 1900 - foley patent", LINE),
        ("12 - 340 ml 1900 iv 20g l ac", LINE),
        ("15 1084 1831 good air entry", "mark bed=15 at=18:31 level_ml=1084"),
        ("9 sats 95 on 2L. clamped at 1840", "incident bed=9 at=18:40 what=clamped"),
        ("12 340 at 1900, up to the bathroom", LINE),
        ("12 1060 1846 - dinner came", "mark bed=12 at=18:46 level_ml=1060"),
        ("12 340ml 18:36 ate half his lunch", "mark bed=12 at=18:36 level_ml=340"),
        ("at 1900 bed 12 was 340 - insulin 6 units given", LINE),
    ],
)
def test_what_is_ours_beside_them_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "pain team asked: line 340",
        "12: foley 640 at 1800, 700 at 1900",
        "12: foley 55, 340 at 1900",
        "foley 340, 700 at 1900 for 12",
        "9 clamped at 1840, foley 250. unclamped at 1850",
        "12 340 at 1900, dr smith saw him at 5 and clamped",
        "12 340 at 1900. he is 14, 60 at 1905",
        "12 340 at 1900, insulin 5 now 660",
        "12 340 at 1900, hr 88 now 660",
        "12 340 at 1900 bp 98/54 60 at 5",
        "12 340 at 1900. 60 out with percocet at 5",
        "12 340 at 1900. 60 ml/hr with lasix",
        "12 340 at 1900, 60 an hour since lasix 40",
        "12 340 at 1900, 700 after lasix 40",
        "12 340 at 1900, pain 4 drain 660",
        "12 340 at 1900, morphine 5 line 660",
        "12 340 at 1900. she is at 64",
        "12 340 at 1900. she is 664",
        "12 340 at 1900. it is 64",
        "12 340 at 1900. 460 mg",
        "12 340 at 1900, actually 460 mg",
        "12 340 at 1900, no 460 mg",
        "12 340 at 1900, oxy 5?",
        "12 340 at 1900. is 1500",
        "12 340 at 1900, sats 95 not 640",
        "12 340 at 1900. report 700 to dr at 5",
        "bed 11 - 1500 ml 0640 and ekg 0600",
        "she is 64 at 1900, 12 640",
        "12 is 640, bp 120/80 at 1900",
        "14 sugar 212. 640 at 1900",
        "flacc 2. line 340 at 1900",
        "she is 64. bed 12 at 340",
    ],
)
def test_what_may_be_of_the_drain_is_asked(text: str) -> None:
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    "told",
    [
        "anxious about going home",
        "worried about going to theatre",
        "toddler finally down for his nap",
        "baby down for the night",
    ],
)
def test_nobody_goes_who_only_speaks_of_it_or_sleeps(told: str) -> None:
    assert reading(f"bed 12 340 at 1900, {told}") in {LINE, "ask kind", "ask level_ml"}
    assert reading(f"{told} - 12 340 at 1900") in {LINE, "ask kind", "ask level_ml"}
