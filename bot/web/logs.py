"""Logs as JSON lines, by an allow-list of keys: no text, no mL, no bed and no sender ever stands in them.

What other libraries log keeps only its logger's name and severity: their messages may quote a body.
"""

from __future__ import annotations

import json
import logging
import sys
from datetime import UTC, datetime
from typing import TextIO

ALLOWED = ("message_id", "http", "status", "unit", "kept", "ms", "error", "where", "address", "entries")

_LOGGER = logging.getLogger("penline")


def log(severity: int, event: str, **values: object) -> None:
    """Log an event; a value whose key is not allowed is a mistake of the program, found by its tests."""
    unknown = set(values) - set(ALLOWED)
    if unknown:
        raise ValueError(f"not to be logged: {', '.join(sorted(unknown))}")
    _LOGGER.log(severity, event, extra={"penline": values})


class JsonLines(logging.Formatter):
    """One JSON object a line: when, how severe, which event, and the allowed values."""

    def format(self, record: logging.LogRecord) -> str:
        """The line of a record."""
        line: dict[str, object] = {
            "time": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "severity": record.levelname.lower(),
        }
        values = getattr(record, "penline", None)
        if record.name == _LOGGER.name and values is not None:
            return json.dumps({**line, "event": record.msg, **values}, default=str)
        error = record.exc_info[0].__name__ if record.exc_info and record.exc_info[0] else None
        return json.dumps({**line, "event": "library", "logger": record.name, "error": error})


def log_to(stream: TextIO = sys.stderr) -> None:
    """Send every log of this process to the stream, as JSON lines."""
    handler = logging.StreamHandler(stream)
    handler.setFormatter(JsonLines())
    root = logging.getLogger()
    root.handlers[:] = [handler]
    root.setLevel(logging.WARNING)
    logging.getLogger("waitress.queue").setLevel(logging.ERROR)  # it warns of each that waits its turn
    _LOGGER.setLevel(logging.INFO)
