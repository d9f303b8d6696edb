"""The alphabet of a text message, and how many parts a text costs.

3GPP TS 23.038 (the 7-bit alphabet: 160 septets, or 153 a part when joined) and TS 23.040 (UCS-2:
70 characters, or 67 a part). One character outside the alphabet makes the whole text UCS-2.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable

BASIC = frozenset(
    "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
    "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà"
)
EXTENSION = frozenset("\f^{}\\[~]|€")
_EVERY = BASIC | EXTENSION
_ALONE, _JOINED = 160, 153
"""Septets of one part that is the whole text, and of each of several."""

_PLAIN = str.maketrans(
    {
        "‘": "'",
        "’": "'",
        "“": '"',
        "”": '"',
        "–": "-",
        "—": "-",
        "−": "-",
        "…": "...",
        "\u00a0": " ",
        "\u202f": " ",
        "×": "x",
        "µ": "u",
        "≥": "at least ",
        "≤": "at most ",
    }
)


def is_gsm(text: str) -> bool:
    """Whether the text can be sent in the 7-bit alphabet."""
    return _EVERY.issuperset(text)


def gsm_only(text: str) -> str:
    """The text in the 7-bit alphabet: quotes and dashes made plain, accents dropped, all else "?".

    Names and bed labels come from outside; the sentences themselves never need this.
    """
    if is_gsm(text):
        return text
    return "".join(_gsm_letter(letter) for letter in unicodedata.normalize("NFC", text).translate(_PLAIN))


def segments(text: str) -> int:
    """How many parts the text is sent in; 0 for no text."""
    if BASIC.issuperset(text):
        return min(len(text), 1) if len(text) <= _ALONE else -(-len(text) // _JOINED)
    if is_gsm(text):
        return _parts((_septets(letter) for letter in text), alone=_ALONE, joined=_JOINED)
    return _parts((_units(letter) for letter in text), alone=70, joined=67)


def _gsm_letter(letter: str) -> str:
    if is_gsm(letter):
        return letter
    plain = "".join(part for part in unicodedata.normalize("NFKD", letter) if not unicodedata.combining(part))
    return plain if plain and is_gsm(plain) else "?"


def _septets(letter: str) -> int:
    return 2 if letter in EXTENSION else 1


def _units(letter: str) -> int:
    return 2 if ord(letter) > 0xFFFF else 1


def _parts(sizes: Iterable[int], *, alone: int, joined: int) -> int:
    """Parts filled one after the other: a character that costs two is never cut in half."""
    total, parts, room = 0, 0, 0
    for size in sizes:
        total += size
        if size > room:
            parts, room = parts + 1, joined
        room -= size
    return parts if total > alone else min(parts, 1)
