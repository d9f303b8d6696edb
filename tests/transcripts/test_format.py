"""The format of a transcript: what is read, what is refused, and that it prints back the same."""

from datetime import date, datetime, time

import pytest

from bot.cli.transcript import TranscriptError, Turn, read

STORY = """\
One nurse, two lines.

-- Wednesday 4 March 2026 --

18:01 Amy: bed 7 mark 630 at 1800
      Bot: Bed 7, 18:00, line 630 mL.
           First line: nothing to chart yet.

Ben takes over.

19:02 Ben (voice): bed seven mark six ninety
      Bot: Is that right?

-- Thursday 5 March 2026 --

00:10 Amy (sent 23:50): yes
"""


def test_a_transcript_prints_back_byte_for_byte() -> None:
    assert str(read(STORY)) == STORY


def test_a_turn_knows_when_who_how_and_what_was_said() -> None:
    first, second, third = read(STORY).turns
    assert first == Turn(
        day=date(2026, 3, 4),
        at=time(18, 1),
        name="Amy",
        text="bed 7 mark 630 at 1800",
        reply=("Bed 7, 18:00, line 630 mL.", "First line: nothing to chart yet."),
    )
    assert (second.voice, second.name) == (True, "Ben")
    assert third.reply == ()
    assert third.arrived == datetime(2026, 3, 5, 0, 10)  # noqa: DTZ001 - ward time


def test_a_message_sent_before_midnight_was_sent_the_day_before() -> None:
    assert read(STORY).turns[2].sent_at == datetime(2026, 3, 4, 23, 50)  # noqa: DTZ001 - ward time


def test_the_title_is_the_first_line_of_prose() -> None:
    assert read(STORY).title == "One nurse, two lines."


def test_new_replies_take_the_place_of_the_old_ones() -> None:
    answered = read(STORY).answered(("One.", "Two.\nThree.", "Four."))
    assert [turn.reply for turn in answered.turns] == [("One.",), ("Two.", "Three."), ("Four.",)]
    assert read(str(answered)) == answered


def test_a_ward_line_names_the_unit_that_the_story_plays_on() -> None:
    assert read("Title\n\n-- Ward: children --\n").ward == "children"
    assert read(STORY).ward is None


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("18:01 Amy: hello\n", "line 1: a turn before the first date line"),
        ("-- Tuesday 4 March 2026 --\n", "line 1: .* was a Wednesday"),
        ("-- Wednesday 31 February 2026 --\n", "line 1: no such date"),
        ("-- someday --\n", "line 1: neither a date line nor a ward line"),
        ("-- Wednesday 4 March 2026 --\n25:01 Amy: hello\n", "line 2: no such time"),
        ("-- Wednesday 4 March 2026 --\n18:01 Amy: hello\n18:00 Amy: hello\n", "line 3: time runs backwards"),
        ("Title\n      Bot: hello\n", "line 2: an indented line that follows no turn"),
        ("-- Wednesday 4 March 2026 --\n18:01 Amy: hello\n   Bot: hello\n", "line 3: a reply starts with"),
        ("Title", "no newline at the file's end"),
        ("-- Wednesday 4 March 2026 --\n18:01 Amy: a\n      Bot: hello \n", "spaces at a line's end"),
    ],
)
def test_what_is_not_in_the_format_is_refused_with_its_line(text: str, why: str) -> None:
    with pytest.raises(TranscriptError, match=why):
        read(text)
