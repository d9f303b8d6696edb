"""The stories of `transcripts_demo/`, played on a database that is kept."""

from __future__ import annotations

from pathlib import Path

from bot.cli.embedded import Ward
from bot.cli.player import sent_of, unit_of
from bot.cli.transcript import Transcript, read

STORIES = Path(__file__).parents[2] / "transcripts_demo"


def story(name: str) -> Transcript:
    """The story of that name."""
    return read((STORIES / f"{name}.txt").read_text("utf-8"))


def play(told: Transcript, url: str, begin: int = 0, end: int | None = None) -> tuple[str, ...]:
    """The replies to its turns, or to these of them, on the database."""
    ward = Ward(unit_of(told, STORIES), url)
    answered = tuple(ward.says(sent_of(turn, ward.unit.zone)).text for turn in told.turns[begin:end])
    ward.close()
    return answered
