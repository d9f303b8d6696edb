"""Each story of `transcripts_demo`, played through the real program and compared with its file.

`pytest tests/transcripts --write` writes what the bot says now; read the difference before it is kept.
"""

from __future__ import annotations

import difflib
from pathlib import Path

import pytest

from bot.cli.player import replies, unit_of
from bot.cli.transcript import read
from bot.wording.gsm import segments
from tests.wording.language import faults

FOLDER = Path(__file__).parents[2] / "transcripts_demo"
STORIES = sorted(FOLDER.glob("*.txt"))
each_story = pytest.mark.parametrize("path", STORIES, ids=lambda path: path.stem)


def test_there_are_at_least_twenty_stories() -> None:
    assert len(STORIES) >= 20


@each_story
def test_the_story_goes_as_its_file_says(path: Path, request: pytest.FixtureRequest) -> None:
    told = path.read_text("utf-8")
    story = read(told)
    now = str(story.answered(replies(story, unit_of(story, path.parent))))
    if request.config.getoption("--write"):
        path.write_text(now, "utf-8")
        return
    if now != told:
        difference = difflib.unified_diff(
            told.splitlines(),
            now.splitlines(),
            f"{path.name} as told",
            f"{path.name} as it goes now",
            lineterm="",
        )
        pytest.fail("\n".join(difference), pytrace=False)


@each_story
def test_the_file_prints_back_byte_for_byte(path: Path) -> None:
    assert str(read(path.read_text("utf-8"))).encode() == path.read_bytes()


@each_story
def test_a_story_has_a_title_and_five_to_twenty_turns_each_with_a_reply(path: Path) -> None:
    story = read(path.read_text("utf-8"))
    assert story.title
    assert 5 <= len(story.turns) <= 20
    assert all(turn.reply for turn in story.turns)


@each_story
def test_no_reply_prescribes_or_uses_an_error_prone_form(path: Path) -> None:
    told = ["\n".join(turn.reply) for turn in read(path.read_text("utf-8")).turns]
    assert {reply: faults(reply) for reply in told if faults(reply)} == {}


@each_story
def test_no_reply_is_longer_than_a_nurse_would_read(path: Path) -> None:
    told = ["\n".join(turn.reply) for turn in read(path.read_text("utf-8")).turns]
    assert max(map(segments, told)) <= 8
