"""A verified body -> an `Incoming`, strictly: wrong JSON is 400, wrong or unknown fields are 422."""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from http import HTTPStatus
from typing import Any, Literal, NoReturn, TypeAlias, cast

from bot.intake import Incoming, TextError, clean_text
from bot.web.problems import FieldFlaw, Problem

DEEPEST = 8
"""Levels of nesting; the deepest that the webhook knows is three."""
AHEAD = timedelta(minutes=5)
BEHIND = timedelta(days=7)
MOST_ALTERNATIVES = 10
LONGEST_SENDER = 128

_STRINGS = re.compile(r'"(?:[^"\\]|\\.)*"', re.DOTALL)
_MOMENT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,6})?)?(Z|[+-]\d\d:\d\d)")
_KEYS = ("sender", "text", "sent_at", "channel", "alternatives")


_Channel: TypeAlias = Literal["text", "voice"]


@dataclass(slots=True)
class _Fields:
    """The body's members, and what was found wrong with them."""

    held: Mapping[str, Any]
    flaws: list[FieldFlaw]

    def flaw(self, pointer: str, detail: str) -> None:
        self.flaws.append(FieldFlaw(f"#/{pointer}", detail))


def incoming_of(message_id: str, body: bytes, arrived: datetime, sender: str | None = None) -> Incoming:
    """The message that the body holds. Problem 400 or 422 when it does not hold one.

    `sender`: who it is from is known already, and the body must not say so.
    """
    held = _object(body)
    fields = _Fields(held, [])
    for key in held:
        if key not in _KEYS or (key == "sender" and sender is not None):
            fields.flaw(re.sub(r"[^A-Za-z0-9_]", "?", key[:40]), "is not a field of a message")
    incoming = Incoming(
        id=message_id,
        sender=_sender(fields) if sender is None else sender,
        text=_text(fields, "text", held.get("text")),
        arrived=arrived,
        sent_at=_sent_at(fields, arrived),
        channel=_channel(fields),
        alternatives=_alternatives(fields),
        digest=hashlib.sha256(body if sender is None else sender.encode() + b"\0" + body).hexdigest(),
    )
    if fields.flaws:
        raise Problem(
            HTTPStatus.UNPROCESSABLE_ENTITY, "The message has wrong fields.", flaws=tuple(fields.flaws)
        )
    return incoming


def _object(body: bytes) -> dict[str, Any]:
    try:
        text = body.decode("utf-8")
        if text.count("[") + text.count("{") > DEEPEST and _depth(text) > DEEPEST:
            raise ValueError("nested too deeply")
        held = _STRICT.decode(text)
    except ValueError as error:
        raise Problem(HTTPStatus.BAD_REQUEST, "The body is not the JSON of a message.") from error
    if not isinstance(held, dict):
        raise Problem(HTTPStatus.BAD_REQUEST, "The body is not a JSON object.")
    return held


def _depth(text: str) -> int:
    """How deeply the JSON nests, seen before it is parsed."""
    depth = deepest = 0
    for letter in _STRINGS.sub("", text):
        if letter in "[{":
            depth += 1
            deepest = max(deepest, depth)
        elif letter in "]}":
            depth -= 1
    return deepest


def _no_doubles(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """A member said twice could be read one way here and another way elsewhere."""
    held = dict(pairs)
    if len(held) != len(pairs):
        raise ValueError("a member stands twice")
    return held


def _no_constant(_: str) -> NoReturn:
    raise ValueError("not a number")


_STRICT = json.JSONDecoder(object_pairs_hook=_no_doubles, parse_constant=_no_constant)


def _sender(fields: _Fields) -> str:
    sender = fields.held.get("sender")
    if not isinstance(sender, str) or not 0 < len(sender) <= LONGEST_SENDER or not sender.isprintable():
        fields.flaw("sender", f"must be 1 to {LONGEST_SENDER} printable characters")
        return ""
    return sender


def _text(fields: _Fields, pointer: str, said: object) -> str:
    if not isinstance(said, str):
        fields.flaw(pointer, "must be a text")
        return ""
    try:
        return clean_text(said)
    except TextError as wrong:
        fields.flaw(pointer, str(wrong))
        return ""


def _sent_at(fields: _Fields, arrived: datetime) -> datetime | None:
    said = fields.held.get("sent_at")
    if said is None:
        return None
    moment = _moment(said)
    if moment is None:
        fields.flaw("sent_at", "must be a time with its offset, such as 2026-03-04T19:05:00-05:00")
    elif not arrived - BEHIND <= moment <= arrived + AHEAD:
        fields.flaw("sent_at", "must be at most 5 minutes ahead and 7 days back")
    return moment


def _moment(said: object) -> datetime | None:
    """The moment in UTC of an RFC 3339 time; None for anything else."""
    if not isinstance(said, str) or not _MOMENT.fullmatch(said):
        return None
    try:
        return datetime.fromisoformat(said).astimezone(UTC)
    except (ValueError, OverflowError):
        return None


def _channel(fields: _Fields) -> _Channel:
    said = fields.held.get("channel", "text")
    if said not in ("text", "voice"):
        fields.flaw("channel", "must be text or voice")
        return "text"
    return cast(_Channel, said)


def _alternatives(fields: _Fields) -> tuple[tuple[str, float], ...]:
    said = fields.held.get("alternatives", [])
    if not isinstance(said, list) or len(said) > MOST_ALTERNATIVES:
        fields.flaw("alternatives", f"must be a list of at most {MOST_ALTERNATIVES}")
        return ()
    return tuple(_alternative(fields, f"alternatives/{place}", item) for place, item in enumerate(said))


def _alternative(fields: _Fields, pointer: str, said: object) -> tuple[str, float]:
    if not isinstance(said, dict) or set(said) != {"text", "confidence"}:
        fields.flaw(pointer, "must have text and confidence")
        return "", 0.0
    confidence = said["confidence"]
    if type(confidence) not in (int, float) or not 0 <= confidence <= 1:
        fields.flaw(f"{pointer}/confidence", "must be a number from 0 to 1")
        return "", 0.0
    return _text(fields, f"{pointer}/text", said["text"]), float(confidence)
