"""Questions by the order of their words, words that sound like others, and numbers that run together."""

from __future__ import annotations

import pytest

from .saying import MORNING, Channel, reading


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
        "bed five hemo vac forty at six",
        "bed five wait eighty two at six",
        "bed five well ninety",
        "bed five tube about six",
        "bed five suction of",
        "bed five of suction",
        "bed five on swinging",
        "bed five ct six",
        "bed six seven eight all at four forty",
        "bed five at one one thirty",
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
        ("bed five suction off", "incident bed=5 what=suction_off"),
        ("bed five wall ninety", "checked bed=5 wall_mmhg=90"),
        ("bed five clamped four hours ago", "incident bed=5 at=15:05 what=clamped"),
        ("bed five left six hundred", "mark bed=5 tube=left level_ml=600"),
        ("bed five passed at six", "left bed=5 at=18:00"),
        ("bed five bright red blood three eighty", "mark bed=5 level_ml=380; checked bed=5 fluid=bright_red"),
        ("bed five mark 900 at six thirty leak no", "mark bed=5 at=18:30 level_ml=900; checked"),
    ],
)
def test_their_plain_neighbours_are_read(text: str, wanted: str) -> None:
    assert reading(text, channel="voice").startswith(wanted)
