"""Lines told in whole sentences: the time once for several, the bed once for two tubes or two times."""

from __future__ import annotations

import pytest

from .saying import reading

TOLD = (
    (
        "okay seven p m, bed one's at two eighty, bed two's at six fifteen, and bed six is at one seventy",
        "mark bed=1 at=19:00 level_ml=280; mark bed=2 at=19:00 level_ml=615; "
        "mark bed=6 at=19:00 level_ml=170",
    ),
    (
        "okay nineteen hundred for my two, bed one's at seven ten, and bed twenty two's at forty",
        "mark bed=1 at=19:00 level_ml=710; mark bed=22 at=19:00 level_ml=40",
    ),
    (
        "okay so for nineteen hundred, bed one's at one seventy, and bed twenty's at fourteen ten",
        "mark bed=1 at=19:00 level_ml=170; mark bed=20 at=19:00 level_ml=1410",
    ),
    (
        "bed sixteen left is at three eighty and the right one's at one ninety, that was 1900",
        "mark bed=16 tube=left at=19:00 level_ml=380; mark bed=16 tube=right at=19:00 level_ml=190",
    ),
    (
        "bed ten apical drain's on eighty and the basal one's on three ten, both at eighteen fifty",
        "mark bed=10 tube=apical at=18:50 level_ml=80; mark bed=10 tube=basal at=18:50 level_ml=310",
    ),
    (
        "bed two drain's on six hundred and five and bed four is on two ninety, both of them half past six",
        "mark bed=2 at=18:30 level_ml=605; mark bed=4 at=18:30 level_ml=290",
    ),
    (
        "both sides for bed 2 please, left 455, right 620, and I took those at ten past six",
        "mark bed=2 tube=left at=18:10 level_ml=455; mark bed=2 tube=right at=18:10 level_ml=620",
    ),
    (
        "bed one's eight hundred, bed two's nine fifty, I did all of those at seven",
        "mark bed=1 at=19:00 level_ml=800; mark bed=2 at=19:00 level_ml=950",
    ),
    (
        "bed seven, it was three ninety at 1845 and it's nine ten at 1905, I need the surgeon",
        "mark bed=7 at=18:45 level_ml=390; mark bed=7 at=19:05 level_ml=910",
    ),
    (
        "bed nine is bright red and it's six hundred forty at seven, up from two hundred at six",
        "mark bed=9 at=19:00 level_ml=640; checked bed=9 at=19:00 fluid=bright_red; "
        "mark bed=9 at=18:00 level_ml=200",
    ),
    (
        "yesterday nineteen hundred, bed one was at two eighty, bed two was at six fifteen",
        "mark bed=1 at=03-Mar-19:00 level_ml=280; mark bed=2 at=03-Mar-19:00 level_ml=615",
    ),
    (
        "bed 13's A drain was 340 and B drain was 95 at 1850",
        "mark bed=13 tube=A at=18:50 level_ml=340; mark bed=13 tube=B at=18:50 level_ml=95",
    ),
    (
        "bed eleven, A's at two ten and B's at sixty five, both read at ten to seven",
        "mark bed=11 tube=A at=18:50 level_ml=210; mark bed=11 tube=B at=18:50 level_ml=65",
    ),
    (
        "bed twelve upper drain's sitting at three hundred, lower one's at four forty, both at seven",
        "mark bed=12 tube=upper at=19:00 level_ml=300; mark bed=12 tube=lower at=19:00 level_ml=440",
    ),
    (
        "bed eleven mediastinal's at one eighty, that was eighteen fifty",
        "mark bed=11 tube=mediastinal at=18:50 level_ml=180",
    ),
    (
        "bed six is one forty at nineteen hundred, he's just back from the loo",
        "mark bed=6 at=19:00 level_ml=140",
    ),
    (
        "quick one for the seven pm round, bed three's five twenty, bed eleven's at eleven thirty",
        "mark bed=3 at=19:00 level_ml=520; mark bed=11 at=19:00 level_ml=1130",
    ),
    (
        "bed four's gone up to two sixty five at seven from two twenty at five",
        "mark bed=4 at=19:00 level_ml=265; mark bed=4 at=17:00 level_ml=220",
    ),
    (
        "so it's nineteen hundred, bed six is on four fifty, bed seven on one hundred and five",
        "mark bed=6 at=19:00 level_ml=450; mark bed=7 at=19:00 level_ml=105",
    ),
    (
        "two's at four fifteen, three's at ninety, twenty one's at twelve hundred, all at nineteen hundred",
        "mark bed=2 at=19:00 level_ml=415; mark bed=3 at=19:00 level_ml=90; "
        "mark bed=21 at=19:00 level_ml=1200",
    ),
    (
        "bed eleven it's one sixty now, two hours ago it was one ten",
        "mark bed=11 at=19:05 level_ml=160; mark bed=11 at=17:05 level_ml=110",
    ),
    (
        "bed 4 yesterday at twenty three hundred was six seventy, nobody put it in",
        "mark bed=4 at=03-Mar-23:00 level_ml=670",
    ),
    (
        "bed 5 seal's low, it's only at one, going to top it up, line's 330 at 1905",
        "mark bed=5 at=19:05 level_ml=330; checked bed=5 at=19:05 seal_cm=1",
    ),
    (
        "okay I've done my seven o'clock round, bed two's at three sixty, bed four's at one fifteen",
        "mark bed=2 at=19:00 level_ml=360; mark bed=4 at=19:00 level_ml=115",
    ),
    (
        "chest drains at nineteen hundred, bed one's at one eighty, bed two's at four ten",
        "mark bed=1 at=19:00 level_ml=180; mark bed=2 at=19:00 level_ml=410",
    ),
    (
        "this is for eighteen thirty, bed ten's on two seventy five",
        "mark bed=10 at=18:30 level_ml=275",
    ),
)
NOT_TOLD = (
    "nineteen hundred, bed one's at two eighty, bed two's at six fifteen, no that's bed three",
    "nineteen hundred, bed one's at two eighty, bed two's still to do",
    "nineteen hundred for my three, bed one's at two eighty, bed two's at six fifteen",
    "the goal for nineteen hundred, bed one's at two eighty, bed two's at six fifteen",
    "wait nineteen hundred, bed three's at five ten and bed four's at six twenty",
    "wait the eighteen thirty for bed twenty mediastinal was four thirty five",
    "the nineteen hundred for bed three was five ten",
    "bed one's at eighteen fifty, bed two's at seventeen hundred, that was nineteen hundred",
    "bed seven it was three ninety at 1845 and it's nine ten at 1845",
    "bed nine's six forty at seven, up from bed two at six",
    "bed six drain's on ninety of suction",
    "bed six drain's on ninety at the wall",
    "bed six left drain's on twenty",
    "oh seven hundred urine, bed one's at one eighty, bed two's at four ten",
    "wall suctions at nineteen hundred, bed one's at ninety, bed two's at one hundred",
    "target for oh seven hundred, bed one's at one eighty, bed two's at four ten",
    "before nineteen hundred, bed one's at one eighty, bed two's at four ten",
    "bed one's at one eighty, that wasn't nineteen hundred",
    "bed seven tube one's three ten, two's four twenty, nineteen hundred",
    "bed six on twenty, bed seven on fifteen, both at nineteen hundred",
    "bed six is on ninety at the wall, bed seven's on one twenty at the wall, both at nineteen hundred",
    "bed two has two drains, one's at four twenty and one's at ninety, both at nineteen hundred",
    "bed eleven it's one sixty now, two hours ago it was one ninety",
    "bed eleven it's one sixty now, two hours ago he had five hundred of saline",
    "bed four was six seventy at eighteen hundred, nobody put it back in",
    "bed nine's six forty at seven, now twenty at 1905",
    "bed nine's six forty at seven from four at six",
    "bed one's at one eighty, bed two's at four hundred and twenty two hundred",
    "bed eleven's at one eighty, it was eighteen fifty",
    "bed four at five four ten and at six four thirty",
    "bed 13 has a drain and b is out",
    "bed six, the back one's at two sixty at nineteen hundred",
    "bed six, the top one's at two sixty and the bottom one's at ninety at nineteen hundred",
    "bed sixteen left is at three eighty and the right one's out, that was 1900",
    "bed four's on eighty at half past six",
)
TYPED = (
    (
        "bed 16 left is at 380 and the right one's at 190, that was 1900",
        "mark bed=16 tube=left at=19:00 level_ml=380; mark bed=16 tube=right at=19:00 level_ml=190",
    ),
    (
        "at 1900 I've got bed 3 at 510, bed 4 at 620 and bed 7's at 90",
        "mark bed=3 at=19:00 level_ml=510; mark bed=4 at=19:00 level_ml=620; mark bed=7 at=19:00 level_ml=90",
    ),
    ("bed 9 drain's on 80 at 1900", "mark bed=9 at=19:00 level_ml=80"),
)
SET = (
    ("bed nine dial reads twenty", "checked bed=9 suction_cmh2o=20"),
    ("bed nine's wall's only sixty, dial's on twenty", "checked bed=9 suction_cmh2o=20 wall_mmhg=60"),
    ("bed nine wall gauge says ninety, dial says twenty", "checked bed=9 suction_cmh2o=20 wall_mmhg=90"),
    (
        "dial's on twenty and wall's still at eighty for bed sixteen",
        "checked bed=16 suction_cmh2o=20 wall_mmhg=80",
    ),
    ("bed three swinging no, bubbling no", "checked bed=3 air_leak=none tidaling=False"),
    ("bed three swinging no leak", "checked bed=3 air_leak=none tidaling=True"),
    ("bed three float isn't in the window", "checked bed=3 suction_indicator=not_in_range"),
    ("suction for bed twelve's at twenty, wall's at ninety", "checked bed=12 suction_cmh2o=20 wall_mmhg=90"),
    ("bed twelve leak's two out of seven", "checked bed=12 air_leak=present leak_grade=2"),
    ("bed 9 gauge reads 90 at 1900", "checked bed=9 at=19:00 wall_mmhg=90"),
    ("bed 9 drain on suction reads 340 at 1900", "mark bed=9 at=19:00 level_ml=340"),
)


@pytest.mark.parametrize(("said", "told"), TOLD)
def test_each_line_has_the_time_and_the_bed_that_were_said_once(said: str, told: str) -> None:
    assert reading(said, channel="voice") == told


@pytest.mark.parametrize("said", NOT_TOLD)
def test_what_is_mended_planned_or_of_something_else_is_asked(said: str) -> None:
    assert reading(said, channel="voice").startswith("ask")


@pytest.mark.parametrize(("said", "told"), TYPED)
def test_typed_it_is_read_the_same(said: str, told: str) -> None:
    assert reading(said) == told


@pytest.mark.parametrize(("said", "told"), SET)
def test_what_a_dial_or_gauge_reads_is_no_line(said: str, told: str) -> None:
    assert reading(said, channel="voice") == told
