"""Any text at all gives a result; noise around a message never changes a number that is accepted."""

from __future__ import annotations

import os
import random
import string

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import nlu
from nlu.statements import Mark, Parsed
from tests.nlu.corpus import cases
from tests.nlu.saying import ARRIVED, BEDS, CHANNELS

MANY = int(os.environ.get("PENLINE_FUZZ", "4000"))
MESSAGES = [case.line["text"] for name in ("corpus_typed", "corpus_dictated") for case in cases(name)]
SIGNS = string.printable + "\u00e9\u2019\u200b\U0001f600\x00"


def read(text: str) -> Parsed:
    return nlu.parse(text, arrived=ARRIVED, beds=BEDS)


@given(st.text(max_size=1000))
@settings(max_examples=150)
def test_any_text_gives_a_result(text: str) -> None:
    assert read(text).text == text


def mutated(rng: random.Random) -> str:
    """A message of the corpora, or pieces of two, with some characters changed."""
    letters = list(
        rng.choice(MESSAGES) + rng.choice(("", " ", ", ")) + rng.choice(("", rng.choice(MESSAGES)))
    )
    for _ in range(rng.randrange(6)):
        place = rng.randrange(len(letters) + 1)
        letters[place : place + rng.randrange(3)] = rng.choice(SIGNS) * rng.randrange(2)
    return "".join(letters)[:1000]


_WORDS = """
bed 12 7 mark line level 1050 340 at 1900 seven ten fifty hundred and thousand oh point five left
right tube a b drained out since canister changed old new suction 20 seal 2 leak no ml liters pm ago
minutes half past to quarter twenty thirty nineteen correct was not or , . : - / the is reads total
shift
"""
SOUP = _WORDS.split()


def soup(rng: random.Random) -> str:
    """Trade words and numbers in any order."""
    return " ".join(rng.choice(SOUP) for _ in range(rng.randrange(5, 90)))[:1000]


@pytest.mark.parametrize("seed", range(4))
def test_a_soup_of_trade_words_and_numbers_gives_a_result(seed: int) -> None:
    rng = random.Random(seed)
    for _ in range(MANY // 40):
        text = soup(rng)
        for channel in CHANNELS:
            parsed = nlu.parse(text, arrived=ARRIVED, beds=BEDS, channel=channel)
            assert parsed.statements or parsed.unclear or not parsed.text.strip(), text


@pytest.mark.parametrize("seed", range(4))
def test_mutated_messages_give_a_result_with_spans_inside_the_message(seed: int) -> None:
    rng = random.Random(seed)
    for _ in range(MANY // 4):
        text = mutated(rng)
        for channel in CHANNELS:
            for said in nlu.parse(text, arrived=ARRIVED, beds=BEDS, channel=channel).statements:
                assert all(0 <= span.start <= span.end <= len(text) for span in said.spans.values()), text


levels = st.integers(100, 2000)
beds = st.sampled_from(BEDS)
spaces = st.sampled_from([" ", "  ", " \t"])
fillers = st.sampled_from(["", "um", "uh", "okay so", "please", "hi"])


@given(bed=beds, level=levels, space=spaces, filler=fillers, upper=st.booleans(), order=st.booleans())
@settings(max_examples=300)
def test_noise_never_changes_a_number_that_is_accepted(
    bed: str, level: int, space: str, filler: str, upper: bool, order: bool
) -> None:
    parts = [f"bed {bed}", f"mark {level} ml"]
    text = space.join([filler, *(parts if order else parts[::-1]), "at 1900"]).strip()

    parsed = read(text.upper() if upper else text)

    for said in parsed.statements:
        assert isinstance(said, Mark)
        assert (said.bed, said.level_ml, said.at) == (bed, level, ARRIVED.replace(minute=0))
    assert parsed.statements or parsed.unclear
