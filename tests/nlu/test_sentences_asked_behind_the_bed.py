"""Questions by the order of their words, words that sound like others, and numbers that run together."""

from __future__ import annotations

import pytest

from .saying import LETTERED, MORNING, Channel, reading

HUNDREDS = tuple(str(number) for number in range(201, 231))


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    "text",
    [
        "bed 9 was the canister changed at six",
        "bed 9 has the canister been changed",
        "bed 9 had the canister been changed",
        "bed 9 was the tube clamped at six",
        "bed 9 has it been clamped",
        "bed 9 has he been moved to ten",
        "bed 9 was he moved to ten",
        "bed 9 is the mark three forty",
        "bed 9 is it three forty",
        "bed 9 do you have three forty",
        "bed 9 has it got an air leak",
        "bed 9 is suction on",
        "bed 9, was the canister changed",
    ],
)
def test_a_question_by_the_order_of_its_words_tells_nothing(text: str, channel: Channel) -> None:
    assert reading(text, channel=channel).startswith("ask ")


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("bed 9 the canister was changed at six", "exchanged bed=9 at=18:00"),
        ("bed 9 the canister has been changed", "exchanged bed=9"),
        ("bed 9 was moved to ten", "moved bed=9 to_bed=10"),
        ("bed 9 is at three forty", "mark bed=9 level_ml=340"),
        ("bed 9 was tipped at six", "incident bed=9 at=18:00 what=tipped"),
        ("bed 9 has an air leak", "checked bed=9 air_leak=present"),
        ("bed 9 is on suction twenty", "checked bed=9 suction_cmh2o=20"),
        ("bed 9 is there a leak", "asked bed=9 topic=checks"),
        ("bed 9 end of shift three forty", "mark bed=9 level_ml=340 closing"),
        ("bed 9 450 at six going to ct", "mark bed=9 at=18:00 level_ml=450; away bed=9 at=18:00"),
        ("bed 9 450 at six urine 200", "mark bed=9 at=18:00 level_ml=450"),
        ("new canister for 9", "exchanged bed=9"),
        (
            "bed 9 tipped over now 320",
            "mark bed=9 at=19:05 level_ml=320; incident bed=9 at=19:05 what=tipped",
        ),
        ("bed 9 in theatre at six", "away bed=9 at=18:00"),
        ("bed 9 leak i mean no leak", "checked bed=9 air_leak=none"),
        ("bed 9 tube out at six, 340 final", "removed bed=9 at=18:00 level_ml=340"),
        ("bed 9 tube out at six for good", "removed bed=9 at=18:00"),
        ("bed 9 old tube out new tube in at six", "removed bed=9 at=18:00; placed bed=9 at=18:00"),
        ("just clamped 9", "incident bed=9 what=clamped"),
        ("bed 9 same as before", "drained bed=9 volume_ml=0"),
        ("bed 9 changed drain", "exchanged bed=9"),
        ("bed 9 box fell at six", "incident bed=9 at=18:00 what=tipped"),
    ],
)
def test_what_is_told_in_plain_order_is_read(text: str, wanted: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == wanted


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    "text",
    [
        "bed 9 mark 900 oh no",
        "bed 9 mark 900 at six thirty no",
        "bed 9 240 total for both",
        "bed 9 is passed 340 now",
        "bed 9 blood 200 at six",
        "bed 9 canister unchanged",
        "bed 9 unclamp it at six",
        "bed 9 clamped six",
        "bed 9 off suction six",
        "bed 9 left six",
        "bed 9 tube almost came out at six",
        "bed 9 tube coming out at six",
        "bed 9 going home at six",
        "bed 9 clamped after six",
        "bed 9 back in chair",
        "bed 9 was 12",
        "bed 9 mark 250 sixish",
        "no new canister for 9",
        "bed 9 320 in theatre",
        "bed 9 320 in ct at six",
        "bed 9 320 last time",
        "bed 9 tipped over lost 320",
        "bed 9 mark four ten at six wrong time",
        "bed 9 no leak i mean leak",
        "bed 9 tube out and back in",
        "bed 9 tube out for ct",
        "bed 9 tube out replaced at six",
        "bed 9 tube out, new one in",
        "bed 9 for chest tube out",
        "just about to clamp 9",
        "bed 9 450 going to ct at six",
        "bed 9 450 ct at six",
        "bed 9 450 urine 200 at six",
        "bed 9 4 litres nasal cannula 450 in the box",
        "forget bed 9 340",
        "test bed 9 340",
        "bed 9 last hour forty",
        "bed 9 in the last hour forty",
        "bed 9 last shift three forty",
        "bed 9 this shift three forty",
        "bed 9 overnight three forty",
        "bed 9 same as 3",
        "bed 9 changed drain to suction",
        "bed 9 box fell almost",
        "bed 9 kinked no",
        "bed 9 box changed starts at 3",
        "bed 9 got report three sixty",
        "bed 9 mark 250 on the half hour",
    ],
)
def test_what_may_be_something_else_is_asked(text: str, channel: Channel) -> None:
    assert "ask " in reading(text, channel=channel)


@pytest.mark.parametrize(
    "text",
    [
        "bed twelve mark one oh five oh six",
        "bed twelve mark one oh five oh six oh five",
        "bed twelve mark three four oh six thirty",
        "bed twelve mark four oh six hundred",
        "bed twelve mark four six hundred",
        "bed twelve mark two six ten",
        "bed twelve mark two oh five past six",
        "bed twelve mark three forty hour ago",
        "bed twelve mark three twenty minutes ago",
    ],
)
def test_where_one_number_ends_is_asked(text: str) -> None:
    assert "ask " in reading(text, channel="voice", arrived=MORNING)


@pytest.mark.parametrize(
    "text",
    [
        "bed five mark nine hundred yes nine hundred",
        "bed five mark five fifty five fifty five",
        "bed five tubes one and two nine fifty",
        "bed five oh two two litres",
        "bed five portable vac forty at six",
        "bed five wait eighty two at six",
        "bed five well ninety",
        "bed five tube about six",
        "bed five suction of",
        "bed five of suction",
        "bed five on swinging",
        "bed five ct six",
        "bed six seven eight all at four forty",
        "bed five at one one thirty",
        "bed two at four five and six seven ten",
        "six seven and eight no leak",
        "bed five tube for two eighty",
        "bed five tube one twenty two eighty",
        "bed five right tube pulled left tube at one twenty",
        "bed five right suction left water seal",
        "bed five 710 then 630",
        "bed five at eighteen forty two forty",
        "bed five at six thirty four ten",
        "bed five at six forty three three",
        "bed five mark hundred thirty at six",
        "bed five mark seven hundred and then at six",
        "bed five three forty at six then",
        "bed five line twenty for six oh five",
        "bed five line six hundred forty six a clock",
        "bed twenty I mean for at six two seventy",
        "eight seventeen forty five bed three nine hundred sixty",
        "bed five forty mils out",
        "report from ER bed six three twenty at five",
        "drain in five sixty",
        "bed five mark fourteen hundred one four zero zero",
        "bed five four ten suction twenty six",
        "bed five tube out final one",
        "Is bed 5 340?",
        "Bed 5, is it 340?",
        "bed five old one at nineteen hundred new one on",
        "I mixed up five and six five is four sixty",
    ],
)
def test_a_word_that_sounds_like_another_is_asked(text: str) -> None:
    assert "ask " in reading(text, channel="voice")


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("bed five mark five fifty at five fifty five", "mark bed=5 at=17:55 level_ml=550"),
        ("bed five mark three oh oh six thirty", "mark bed=5 at=18:30 level_ml=300"),
        ("bed five mark eight at six ten", "mark bed=5 at=18:10 level_ml=8"),
        ("bed five mark zero at six", "mark bed=5 at=18:00 level_ml=0"),
        ("bed five mark three forty ten minutes ago", "mark bed=5 at=18:55 level_ml=340"),
        ("bed five tube two nine fifty", "mark bed=5 tube=2 level_ml=950"),
        ("bed five seven eight five at six", "mark bed=5 at=18:00 level_ml=785"),
        ("bed five a line six sixty at six", "mark bed=5 at=18:00 level_ml=660"),
        ("bed five I've got six sixty at six", "mark bed=5 at=18:00 level_ml=660"),
        (
            "bed five right clamped left one twenty",
            "incident bed=5 tube=right what=clamped; mark bed=5 tube=left",
        ),
        ("bed five tube one two twenty", "mark bed=5 tube=1 level_ml=220"),
        (
            "bed five right and left pulled at six",
            "removed bed=5 tube=right at=18:00; removed bed=5 tube=left",
        ),
        ("bed five both on suction twenty", "checked bed=5 suction_cmh2o=20"),
        ("bed five twenty and six thirty", "mark bed=5 at=18:30 level_ml=20"),
        ("six and seven no leak", "checked bed=6 air_leak=none; checked bed=7 air_leak=none"),
        ("bed five old one nineteen hundred new one on", "exchanged bed=5 final_ml=1900"),
        (
            "bed five four ten suction twenty at six",
            "mark bed=5 at=18:00 level_ml=410; checked bed=5 at=18:00",
        ),
        ("bed five forty mils out since six", "drained bed=5 volume_ml=40"),
        ("drain in five four sixty", "mark bed=5 level_ml=460"),
        ("bed five at six forty three hundred", "mark bed=5 at=18:40 level_ml=300"),
        ("bed five at eighteen hundred four ten", "mark bed=5 at=18:00 level_ml=410"),
        ("bed five mark one hundred thirty at six", "mark bed=5 at=18:00 level_ml=130"),
        ("bed five three forty at six then clamped", "mark bed=5 at=18:00 level_ml=340; incident bed=5"),
        ("bed five line twenty five for six pm", "mark bed=5 at=18:00 level_ml=25"),
        ("bed five suction off", "incident bed=5 what=suction_off"),
        ("bed five wall ninety", "checked bed=5 wall_mmhg=90"),
        ("bed five clamped four hours ago", "incident bed=5 at=15:05 what=clamped"),
        ("bed five left six hundred", "mark bed=5 tube=left level_ml=600"),
        ("bed five patient passed at six", "left bed=5 at=18:00"),
        ("bed five bright red blood three eighty", "mark bed=5 level_ml=380; checked bed=5 fluid=bright_red"),
        ("bed five mark 900 at six thirty leak no", "mark bed=5 at=18:30 level_ml=900; checked"),
    ],
)
def test_their_plain_neighbours_are_read(text: str, wanted: str) -> None:
    assert reading(text, channel="voice").startswith(wanted)


@pytest.mark.parametrize(
    "text",
    ["bed 214 and 215 440", "two fourteen and fifteen same", "two fourteen fifteen and sixteen no leak"],
)
def test_a_second_bed_of_hundreds_is_no_time(text: str) -> None:
    assert "ask " in reading(text, HUNDREDS, "voice")
    assert reading("two fourteen two forty at two fifteen", HUNDREDS, "voice").endswith(
        "at=14:15 level_ml=240"
    )


@pytest.mark.parametrize(
    "text", ["ct one moved to ct two", "ct one ct two three forty", "bed two hey three forty"]
)
def test_a_bed_by_its_letters_is_no_scan_and_no_tube(text: str) -> None:
    assert "ask " in reading(text, LETTERED, "voice")
    assert reading("bed one ct two three forty", LETTERED, "voice") == "mark bed=1 tube=2 level_ml=340"
    assert reading("ct one went to ct", LETTERED, "voice") == "away bed=CT1"
