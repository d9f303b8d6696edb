"""Short hands for the tests of the store: moments, and messages to write in the name of."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from bot.store import Book
from bot.store.book import Claim

NOON = datetime(2026, 3, 4, 12, tzinfo=UTC)


def at(minutes: int) -> datetime:
    """So many minutes after noon."""
    return NOON + timedelta(minutes=minutes)


def claim(
    message: str = "m1", *, sender: str = "amy", unit: str = "ward", minutes: int = 0, digest: str = "d"
) -> Claim:
    """A message to claim."""
    return Claim(
        id=message, digest=digest, arrived=at(minutes), sender=sender, unit=unit, text="words", channel="text"
    )


def claimed(
    book: Book, message: str = "m1", *, sender: str = "amy", unit: str = "ward", minutes: int = 0
) -> Book:
    """The book, with the message claimed and replied to."""
    assert book.claim(claim(message, sender=sender, unit=unit, minutes=minutes)) is None
    book.keep_reply(message, '{"status": "recorded"}')
    return book
