"""What recognisers really wrote: nothing is read wrongly wherever the words show that something is off."""

from __future__ import annotations

from collections import Counter
from functools import cache

from tests.nlu.recognised import Heard, sentences

UNHEARD = {
    "152 mL": "one point two litres, written as a whole and likely number with a unit",
    "152 milliliters": "one point two litres, written as a whole and likely number with a unit",
    "mark 14 at": "four ten, heard as fourteen",
    "tube d mark": "tube b, heard as another letter",
    "nineteen fifty eight at": "the word at, heard twice: as eight and as at",
    "658 at": "the word at, heard twice: as eight and as at",
    "four hundred and fourteen": "forty, heard as fourteen",
    "eight hundred and fifteen": "fifty, heard as fifteen",
    "105 at 1905": "one oh five oh, without its last nought",
    "Bed 3 mark 650": "the word right is lost",
    "is at 150": "eight hundred, of which only a hundred is left",
    "is at a hundred and fifty": "eight hundred, of which only a hundred is left",
    "mark two sixty": "mark to ten sixty, heard as a shorter number; correct is lost",
}
"""Pieces of sentences with an error that no reader could see; those are for the reply that reads back."""


@cache
def found() -> tuple[tuple[Heard, str], ...]:
    """Each sentence with how the reader stands to it."""
    return tuple((each, each.verdict()) for each in sentences())


def test_only_errors_that_no_word_shows_are_read_wrongly() -> None:
    wrong = [each.heard for each, verdict in found() if verdict == "wrong"]

    assert [heard for heard in wrong if not any(piece in heard for piece in UNHEARD)] == []
    assert len(wrong) <= 19


def test_most_of_what_a_careful_human_could_read_is_read() -> None:
    counts = Counter(verdict for _, verdict in found())

    assert counts["exact"] >= 450, counts
