"""`penline demo`: the stories as a chat."""

from __future__ import annotations

import io
from pathlib import Path
from typing import Literal

import pytest
from click.testing import CliRunner
from rich.console import Console

from bot.cli import penline
from bot.cli.embedded import Computed, Reply
from bot.cli.show import Chat

STORY = """\
Two lines.

-- Wednesday 4 March 2026 --

15:01 Amy: bed 7 mark 840 at 1500
19:02 Ben: bed 7 mark 1050 at 1900
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "two-lines.txt").write_text(STORY, "utf-8")
    return tmp_path


def test_a_story_is_played_with_what_the_engine_worked_out(folder: Path) -> None:
    result = CliRunner().invoke(penline, ["demo", "two-lines", "--from", str(folder)])
    assert result.exit_code == 0, result.output
    assert "19:02 Ben: bed 7 mark 1050 at 1900" in result.output
    assert "Bot: Bed 7" in result.output
    assert "chart: bed 7, 210 mL, 15:00 to 19:00, day shift" in result.output
    assert "\x1b" not in result.output


def test_the_stories_can_be_listed(folder: Path) -> None:
    result = CliRunner().invoke(penline, ["demo", "--list", "--from", str(folder)])
    assert result.output.split() == ["two-lines", "Two", "lines."]


@pytest.mark.parametrize(
    ("names", "why"), [(["three-lines"], "no story called three-lines"), ([], "no story called hourly-marks")]
)
def test_a_story_that_is_not_there_is_told(folder: Path, names: list[str], why: str) -> None:
    result = CliRunner().invoke(penline, ["demo", *names, "--from", str(folder)])
    assert result.exit_code == 2
    assert why in result.output


def test_without_a_checkout_the_demo_says_where_stories_are(tmp_path: Path) -> None:
    result = CliRunner().invoke(penline, ["demo", "--from", str(tmp_path)])
    assert result.exit_code == 2
    assert "they come with a checkout" in result.output


REPLY = Reply(
    text="URGENT: 620 mL in 60 min.\nIs 1,340 right?",
    speech="Urgent.",
    segments=2,
    computed=(Computed(text="high: ladder", severity="high"),),
)


def shown(terminal: bool) -> str:
    out = io.StringIO()
    colours: Literal["standard", "auto"] = "standard" if terminal else "auto"
    console = Console(file=out, force_terminal=terminal, width=20, color_system=colours)
    Chat(console, speech=True).answered(REPLY)
    return out.getvalue()


def test_a_terminal_shows_severity_in_colour_and_in_words() -> None:
    assert "\x1b[1;31m" in shown(terminal=True)
    assert "URGENT: 620 mL in 60 min." in shown(terminal=True)


def test_a_pipe_gets_whole_lines_without_colour() -> None:
    assert shown(terminal=False) == (
        "      Bot: URGENT: 620 mL in 60 min.\n"
        "           Is 1,340 right?\n"
        "           | high: ladder\n"
        "           | 2 parts\n"
        "           | said: Urgent.\n"
    )
