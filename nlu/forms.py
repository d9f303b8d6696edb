"""Results as JSON: what `python -m nlu` prints."""

from __future__ import annotations

from dataclasses import fields
from datetime import datetime, timedelta
from typing import Any

from .statements import Parsed, Statement, Unclear


def parsed_form(parsed: Parsed) -> dict[str, Any]:
    """The whole result as one JSON object."""
    return {
        "statements": [statement_form(s) for s in parsed.statements],
        "unclear": [unclear_form(u) for u in parsed.unclear],
        **({"unread": list(parsed.unread)} if parsed.unread else {}),
    }


def statement_form(statement: Statement) -> dict[str, Any]:
    """A statement by its slots; slots that were not said are null."""
    kind = getattr(statement, "kind", None)
    slots = {f.name: _plain(getattr(statement, f.name)) for f in fields(statement) if f.name != "spans"}
    return {"kind": kind, **{name: value for name, value in slots.items() if value != []}}


def unclear_form(unclear: Unclear) -> dict[str, Any]:
    """A thing to ask."""
    return {
        "slot": unclear.slot,
        "choices": [_plain(c) for c in unclear.choices],
        "text": unclear.text,
        "statement": statement_form(unclear.statement) if unclear.statement is not None else None,
    }


def _plain(value: Any) -> Any:
    match value:
        case datetime():
            return value.isoformat()
        case timedelta():
            minutes = int(value.total_seconds()) // 60
            return f"{minutes // 60}h" if minutes % 60 == 0 else f"{minutes}min"
        case tuple():
            return list(value)
    return value
