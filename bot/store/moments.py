"""Moments as text of one width, in UTC: sorts on both engines, reads in any SQL client, exact for hashes."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from functools import lru_cache
from typing import Any

from sqlalchemy import Dialect, String, TypeDecorator

_TEXT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{6}Z", re.ASCII)
_WIDTH = 27
_DIGITS = 26


def moment_text(moment: datetime) -> str:
    """The moment as `2026-03-05T00:05:00.000000Z`; a naive one is refused."""
    if moment.tzinfo is not UTC:
        if moment.tzinfo is None:
            raise ValueError("a stored moment has an offset")
        moment = moment.astimezone(UTC)
    return _text(moment)


@lru_cache(maxsize=256)  # a message's own moment stands in most of the rows that it writes
def _text(moment: datetime) -> str:
    """In UTC only: elsewhere two moments that are an hour apart can be equal."""
    return f"{moment.isoformat(timespec='microseconds')[:_DIGITS]}Z"


def plain(value: object) -> object:
    """What a column holds, as JSON can: a moment as its text."""
    return moment_text(value) if isinstance(value, datetime) else value


def moment_of(text: str) -> datetime:
    """The UTC moment that `moment_text` wrote; ValueError for any other text."""
    if not _TEXT.fullmatch(text):
        raise ValueError("not a moment as it is stored")
    return datetime.fromisoformat(text)


class Moment(TypeDecorator[datetime]):
    """A column of UTC moments."""

    impl = String(_WIDTH)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        """The text that is kept for a moment."""
        return None if value is None else moment_text(value)

    def process_result_value(self, value: Any, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        """The moment that was kept."""
        return None if value is None else moment_of(value)
