"""Plays a transcript: each turn through the real intake, on an empty ledger, at the time it says."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, tzinfo
from pathlib import Path

from bot.cli.embedded import Reply, Sent, Ward
from bot.cli.transcript import Transcript, Turn, Words
from bot.unit import Unit, demo_unit, load_unit


def unit_of(transcript: Transcript, folder: Path) -> Unit:
    """The unit that the story plays on: the demo ward, or the unit file that it names."""
    return load_unit(folder / f"{transcript.ward}.toml") if transcript.ward else demo_unit()


def played(transcript: Transcript, unit: Unit) -> Iterator[tuple[Turn | Words, Reply | None]]:
    """The story's lines in order, each turn with the reply that the bot gives now."""
    ward = Ward(unit)
    try:
        for item in transcript.items:
            yield item, ward.says(sent_of(item, unit.zone)) if isinstance(item, Turn) else None
    finally:
        ward.close()


def replies(transcript: Transcript, unit: Unit) -> tuple[str, ...]:
    """What the bot says now, turn by turn."""
    return tuple(reply.text for _, reply in played(transcript, unit) if reply is not None)


def sent_of(turn: Turn, zone: tzinfo) -> Sent:
    """The message of a turn."""
    sent_at: datetime | None = turn.sent_at
    return Sent(
        sender=turn.name,
        text=turn.text,
        arrived=turn.arrived.replace(tzinfo=zone),
        sent_at=sent_at.replace(tzinfo=zone) if sent_at else None,
        voice=turn.voice,
    )
