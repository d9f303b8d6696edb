"""`penline replay`: JSON lines of messages through the real intake, one answer object a line.

A line is `{"id", "sender", "arrived", "text", "channel"?, "sent_at"?, "alternatives"?}`. Moments are ISO
8601; without an offset they are ward time. A line that is wrong is told on stderr with its number, the
others go on, and the command ends with code 2.
"""

from __future__ import annotations

import json
import sys
from datetime import UTC, datetime, tzinfo
from pathlib import Path
from typing import Any, TextIO

import click

from bot.cli.progress import followed, line_count
from bot.cli.unit_file import unit_option, unit_or_demo
from bot.intake import Deployment, Incoming, TextError, clean_text, handle
from bot.intake.respond import deployment
from bot.store import open_store

_NOT_READ = "\N{REPLACEMENT CHARACTER}"
"""What stands where a byte of the file is no UTF-8."""

_NEEDED = {"id", "sender", "arrived", "text"}
_KNOWN = _NEEDED | {"channel", "sent_at", "alternatives"}


class LineError(ValueError):
    """A line that is no message; says why."""


@click.command("replay", help="Run JSON lines of messages through the bot on a fresh unit in memory.")
@click.argument("file", type=click.File("r", encoding="utf-8", errors="replace"))
@unit_option
def command(file: TextIO, unit: Path | None) -> None:
    """One answer object a line, in order, as soon as it is there."""
    ward = unit_or_demo(unit)
    store = open_store("sqlite://")
    where = deployment((ward,), store)
    wrong = 0
    try:
        lines = followed(file, "messages", line_count(file), prints=True)
        for number, line in enumerate(lines, start=1):
            if line.strip():
                wrong += not _replay(line, number, where, ward.zone)
    finally:
        store.close()
    if wrong:
        sys.exit(2)


def incoming(line: str, zone: tzinfo) -> Incoming:
    """The message of a line. LineError says what is wrong with it."""
    if _NOT_READ in line:
        raise LineError("not UTF-8")
    try:
        row = json.loads(line)
    except json.JSONDecodeError as error:
        raise LineError(f"not JSON: {error.msg}") from error
    if not isinstance(row, dict) or not _NEEDED <= row.keys() <= _KNOWN:
        raise LineError(f"needs {', '.join(sorted(_NEEDED))} and knows {', '.join(sorted(_KNOWN - _NEEDED))}")
    return _message(row, zone)


def _message(row: dict[str, Any], zone: tzinfo) -> Incoming:
    channel = row.get("channel", "text")
    if channel not in ("text", "voice"):
        raise LineError("channel is text or voice")
    if not all(isinstance(row[key], str) and row[key] for key in ("id", "sender", "text")):
        raise LineError("id, sender and text are words")
    try:
        return Incoming(
            id=row["id"],
            sender=row["sender"],
            text=clean_text(row["text"]),
            arrived=_moment(row["arrived"], zone),
            sent_at=_moment(row["sent_at"], zone) if row.get("sent_at") else None,
            channel=channel,
            alternatives=tuple(
                (str(each["text"]), float(each["confidence"])) for each in row.get("alternatives", ())
            ),
        )
    except TextError as error:
        raise LineError(f"text {error}") from error
    except (TypeError, ValueError, KeyError) as error:
        raise LineError(f"not a message: {error}") from error


def _moment(written: str, zone: tzinfo) -> datetime:
    moment = datetime.fromisoformat(written)
    return (moment if moment.tzinfo else moment.replace(tzinfo=zone)).astimezone(UTC)


def _replay(line: str, number: int, where: Deployment, zone: tzinfo) -> bool:
    """Print the answer to a line; False when there is none."""
    try:
        outcome = handle(incoming(line, zone), where)
        if outcome.kept == "other":
            raise LineError("its id was another message's")
    except LineError as error:
        click.echo(f"line {number}: {error}", err=True)
        return False
    sys.stdout.write(outcome.answer + "\n")
    sys.stdout.flush()
    return True
