"""A message as it arrives, before anyone knows what it says; and what its text may hold."""

from __future__ import annotations

import hashlib
import re
import unicodedata
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from bot.store.codec import canonical

LONGEST_TEXT = 1000
"""Characters, after Unicode normalisation (NFC)."""

NOT_KEPT = "[not kept: held a long number or an e-mail address]"

_LONG_NUMBER = re.compile(r"\d{6}")
_CONTROL = re.compile(r"[\x00-\x09\x0b-\x1f\x7f-\x9f\ud800-\udfff]")
"""The categories Cc and Cs of Unicode but for the line's end."""
_E_MAIL = re.compile(r"[^\s@]+@[^\s@]+\.[^\s@]{2,}")


class TextError(ValueError):
    """A text that is not taken: empty, too long, or with characters that no one types."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Incoming:
    """One message. `arrived` is by our clock, `sent_at` by the sender's; `digest` identifies its body.

    `alternatives` are a recogniser's other hypotheses with their confidence, best first.
    """

    id: str
    sender: str
    text: str
    arrived: datetime
    sent_at: datetime | None = None
    channel: Literal["text", "voice"] = "text"
    alternatives: tuple[tuple[str, float], ...] = ()
    digest: str = ""

    @property
    def body_digest(self) -> str:
        """The SHA-256 of the raw body, or of what the message holds where there was none."""
        if self.digest:
            return self.digest
        sent = self.sent_at.isoformat() if self.sent_at else None
        body = (self.sender, self.text, sent, self.channel, self.alternatives)
        return hashlib.sha256(canonical(body).encode()).hexdigest()


def clean_text(text: str) -> str:
    """The text in NFC, with plain spaces for tabs; line ends stay. TextError says what is wrong with it."""
    normal = unicodedata.normalize("NFC", text)
    plain = normal.replace("\r\n", "\n").replace("\t", " ")
    if not plain.strip():
        raise TextError("is empty")
    if len(normal) > LONGEST_TEXT:
        raise TextError(f"is longer than {LONGEST_TEXT} characters")
    if _CONTROL.search(plain):
        raise TextError("holds a control character")
    return plain


def may_identify(incoming: Incoming) -> bool:
    """Whether it holds what may name a patient: six digits in a row, or an e-mail address."""
    said = (incoming.text, *(text for text, _ in incoming.alternatives))
    return any(_LONG_NUMBER.search(text) or _E_MAIL.search(text) for text in said)
