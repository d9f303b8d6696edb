"""How a message opens and closes: a heading, who speaks, a yes or right to begin with, a farewell."""

from __future__ import annotations

import pytest

from .saying import BEDS, CHANNELS, Channel, reading

LINE = "mark bed=12 at=19:00 level_ml=540"
LABELS = (*BEDS, "CT1", "CT4", "4B")


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    "heading",
    [
        "update:",
        "drain update",
        "chest tube update,",
        "quick update",
        "ok drain update -",
        "line update:",
        "update",
    ],
)
def test_an_update_as_a_heading_puts_no_line_right(heading: str, channel: Channel) -> None:
    assert reading(f"{heading} bed 12 mark 540 at 1900", BEDS, channel) == LINE


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("update bed 12 to 540", "corrected bed=12 level_ml=540"),
        ("update bed 12 line to 540", "corrected bed=12 level_ml=540"),
        ("update the 1900 line on bed 12 to 540", "corrected bed=12 at=19:00 level_ml=540"),
        ("update on bed 3", "asked bed=3 topic=last"),
    ],
)
def test_an_update_of_a_line_puts_it_right_and_one_on_a_bed_asks(
    text: str, read: str, channel: Channel
) -> None:
    assert reading(text, BEDS, channel) == read


@pytest.mark.parametrize(
    "text",
    [
        "this is lin bed twelve mark five forty at nineteen hundred",
        "tess here bed twelve mark five forty at nineteen hundred",
        "bed twelve mark five forty at nineteen hundred this is omar",
        "bed twelve mark five forty at nineteen hundred from dee thanks bye",
        "bed twelve mark five forty at nineteen hundred hours sam",
        "bed twelve five forty mils at nineteen hundred end of message",
        "bed twelve mark five forty mils at nineteen hundred over",
        "at nineteen hundred bed twelve is at five forty mils over and out",
        "at nineteen hundred bed twelve is at five forty mils done okay thanks",
        "over in twelve mark five forty at nineteen hundred got it",
        "okay ready put bed twelve down at five forty at nineteen hundred",
        "yes hi log bed twelve at five forty mils at nineteen hundred",
        "yeah there's five forty in the box in bed twelve at nineteen hundred",
        "can you mark bed twelve at five forty mils at nineteen hundred",
        "could you please log bed twelve at five forty mils at nineteen hundred",
        "got a line for bed twelve five forty mils at nineteen hundred",
        "the canister in twelve says five forty mils at nineteen hundred",
        "the canister in bed twelve says 540 at nineteen hundred",
        "checked the drain in um bed twelve level five forty at nineteen hundred",
        "the drain in twelve shows five forty at nineteen hundred",
    ],
)
def test_who_speaks_and_how_a_message_ends_are_no_part_of_the_line(text: str) -> None:
    assert reading(text, BEDS, "voice") == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("yes", "answered answer=yes"),
        ("yes three forty", "answered answer=yes level_ml=340"),
        ("yes bed twelve five forty", "answered bed=12 answer=yes level_ml=540"),
        ("somebody knocked bed twelve's drain over", "incident bed=12 what=tipped"),
        ("bed twelve tube out at eighteen hundred done", "removed bed=12 at=18:00"),
        ("drain in at eighteen hundred bed twelve", "placed bed=12 at=18:00"),
        ("1 540", "ask bed"),
        ("5 540 thanks", "ask bed"),
        ("bed twelve mark two ten ben", "ask level_ml"),
        ("bed twelve mark five forty kate", "ask level_ml"),
    ],
)
def test_an_answer_an_event_and_a_name_that_may_be_a_number_stay_what_they_are(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "right the level in bed twelve is five forty",
        "right line on twelve is five forty",
        "right there's five forty in the box in bed twelve",
        "right at seven bed twelve is at five forty",
    ],
)
def test_a_right_to_begin_with_gives_no_side(text: str) -> None:
    assert "tube=" not in reading(text, BEDS, "voice")


def test_a_right_tube_has_its_side() -> None:
    assert (
        reading("right tube bed twelve mark five forty", BEDS, "voice")
        == "mark bed=12 tube=right level_ml=540"
    )


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("line for ct 4 is 540", "mark bed=CT4 level_ml=540"),
        ("the drain in CT 4 shows 540 at 1820", "mark bed=CT4 at=18:20 level_ml=540"),
        ("bed 4 B's drain is at 540", "mark bed=4B level_ml=540"),
        ("bed 3 off for ct 4 pm", "away bed=3 at=16:00"),
        ("5 to ct at 1830", "away bed=5 at=18:30"),
    ],
)
def test_a_scan_is_a_label_where_nobody_goes_there(text: str, read: str, channel: Channel) -> None:
    assert reading(text, LABELS, channel) == read


@pytest.mark.parametrize(
    "text",
    [
        "so i just went in to check on the gentleman in bed twelve and his canister is reading "
        "five forty at nineteen hundred",
        "our new heart patient over in bed twelve the line on his canister is five forty at nineteen hundred",
        "put bed twelve down with a level of five forty at nineteen hundred",
        "the little old lady in bed twelve is doing fine her chest tube is at five forty "
        "at nineteen hundred hours",
        "mister grumpy in bed twelve let me look at his drain finally level five forty "
        "at nineteen hundred talk later",
        "family's in with bed twelve so i was quick but the level was five forty mils at nineteen hundred",
        "the surgeon wanted to know about bed twelve so i went and looked and "
        "the canister reads five forty at nineteen hundred",
        "another one for you the canister on bed twelve has a level of five forty at nineteen hundred",
        "i read bed twelve and the level came to five forty at nineteen hundred got to run",
        "bed twelve line five forty, i repeat five forty, at nineteen hundred bye",
        "bed twelve line 540 at nineteen hundred again that's five four oh",
        "chest tube in bed twelve again bed twelve is at five forty mils at nineteen hundred",
        "bed twelve mark five forty at nineteen hundred that's for bed twelve",
    ],
)
def test_what_is_told_around_a_bed_and_a_line_that_their_words_lead_is_no_part_of_them(text: str) -> None:
    assert reading(text, BEDS, "voice") == LINE


@pytest.mark.parametrize(
    "text",
    [
        "bed twenty fife line five forty",
        "bed twelve bee line five forty",
        "bed twelve bravo line five forty",
        "bed twelve mark five forty sex",
        "bed seven heaven fifty at two",
        "bed twelve line 1100 and 72 in the afternoon",
        "bed twelve line five forty again that's five fifty",
        "bed twelve line five forty that's for bed thirteen",
        "five seven eight oh okay thanks",
    ],
)
def test_a_word_that_may_be_the_rest_of_a_number_is_asked_about(text: str) -> None:
    assert reading(text, BEDS, "voice").startswith("ask ")


@pytest.mark.parametrize("channel", CHANNELS)
def test_what_stands_before_a_line_is_no_part_of_what_was_found_behind_it(channel: Channel) -> None:
    said = "patient in bed 12 resting, line 540 at 1900, suction is 15 and not tidaling"
    found = "checked bed=12 at=19:00 suction_cmh2o=15 tidaling=False"
    assert reading(said, BEDS, channel) == f"{LINE}; {found}"
    assert reading("bed 12 line 540 at 1900 wobbly leak", BEDS, "voice").startswith("ask ")


def test_a_spoken_decimal_behind_a_side_is_one_number() -> None:
    said = "bed twelve left one point six eight liters"
    assert reading(said, BEDS, "voice") == "mark bed=12 tube=left level_ml=1680"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("for bed twelve the line is five forty and that was at nineteen hundred", LINE),
        (
            "the canister that belongs to bed twelve has a fluid level of five forty as of nineteen hundred",
            LINE,
        ),
        ("bed twelve line five forty at nineteen hundred read back please", LINE),
        ("the line for bed twenty for stands at five forty", "ask level_ml"),
        ("line five forty mils bed twenty for", "ask level_ml"),
        ("to point one five litres on the canister bed eight", "ask level_ml"),
        ("the 540 belongs to bed eleven", "ask bed"),
    ],
)
def test_when_a_line_was_read_and_whose_its_canister_is_put_nothing_right(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "bed twelve line five forty at nineteen hundred off to my break now",
        "bed twelve mark five forty at nineteen hundred again bed twelve mark five four oh",
        "new line she's asleep in bed twelve so her mark is five forty at nineteen hundred",
        "what i can see on the canister for bed twelve is a level of five forty at nineteen hundred",
    ],
)
def test_chatter_with_a_line_told_once_is_read(text: str) -> None:
    assert reading(text, BEDS, "voice") == LINE


def test_a_right_beside_a_left_is_a_side() -> None:
    told = "mark bed=7 tube=right level_ml=510; mark bed=7 tube=left level_ml=470"
    assert reading("right mark five ten and left mark four seventy for bed seven", BEDS, "voice") == told


def test_another_line_behind_again_is_asked_about() -> None:
    said = "bed twelve mark five forty again bed twelve mark five fifty"
    assert reading(said, BEDS, "voice").startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("go ahead and chart bed six um mark ten mils at eighteen oh five hours", "at=18:05 level_ml=10"),
        ("please chart bed six mark ten at sixteen twenty hours", "at=16:20 level_ml=10"),
        ("chart bed six line ten that's the end of shift mark", "level_ml=10 closing"),
        ("can you chart bed six is reading ten that's the closing line thanks", "level_ml=10 closing"),
    ],
)
def test_who_says_chart_before_a_line_has_it_charted_and_asks_nothing(text: str, read: str) -> None:
    assert reading(text, BEDS, "voice") == f"mark bed=6 {read}"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("chart bed 9 last 5 hours", "asked bed=9 topic=chart window=5h"),
        ("chart for bed 9 end of shift", "asked bed=9 topic=chart"),
        ("chart the level for bed 9", "asked bed=9 topic=chart"),
        ("what do i chart for bed 9", "asked bed=9 topic=chart"),
    ],
)
def test_who_says_chart_without_a_line_asks_what_to_chart(text: str, read: str, channel: Channel) -> None:
    assert reading(text, BEDS, channel) == read


def test_a_length_of_time_behind_a_comma_may_be_over_what_the_number_came() -> None:
    assert reading("please chart bed 9 640, 2 hours", BEDS).startswith("ask")
