"""What the text of a message may hold."""

from __future__ import annotations

import sys
import unicodedata

import pytest

from bot.intake import TextError, clean_text
from bot.intake.incoming import LONGEST_TEXT


@pytest.mark.parametrize(
    ("sent", "taken"),
    [
        ("bed 12", "bed 12"),
        ("bed\t12", "bed 12"),
        ("12 840\r\n14 220", "12 840\n14 220"),
        ("cafe\u0301", "caf\u00e9"),
        ("x" * LONGEST_TEXT, "x" * LONGEST_TEXT),
        ("x" * (LONGEST_TEXT - 2) + "\r\n", "x" * (LONGEST_TEXT - 2) + "\n"),
        ("e\u0301" * LONGEST_TEXT, "\u00e9" * LONGEST_TEXT),
    ],
)
def test_a_text_is_normalised(sent: str, taken: str) -> None:
    assert clean_text(sent) == taken


@pytest.mark.parametrize(
    "sent",
    [
        *("", " \n\t ", "a\x00b", "a\x1bb", "a\x7fb", "a\u0085b", "a\ud800b", "a\rb"),
        *("x" * (LONGEST_TEXT + 1), "x" * (LONGEST_TEXT - 1) + "\r\n"),
    ],
)
def test_a_text_that_no_one_types_is_refused(sent: str) -> None:
    with pytest.raises(TextError):
        clean_text(sent)


def test_of_all_characters_the_control_characters_and_lone_surrogates_are_refused() -> None:
    refused = {
        letter for letter in map(chr, range(sys.maxunicode + 1)) if not _is_taken(f"bed 12{letter}mark 340")
    }
    assert refused == {
        letter
        for letter in map(chr, range(sys.maxunicode + 1))
        if unicodedata.category(letter) in ("Cc", "Cs") and letter not in "\n\t"
    }


def _is_taken(text: str) -> bool:
    try:
        clean_text(text)
    except TextError:
        return False
    return True
