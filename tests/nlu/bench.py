"""How long a message takes to read: `python -m tests.nlu.bench`. Prints; asserts nothing.

Median and 99th percentile of typed messages of about ten tokens, their ratio to the blank tokenizer
alone, the growth with length up to the size limit, and the slowest of many mutated messages.
"""

from __future__ import annotations

import random
import statistics
import time
from collections.abc import Sequence

import click
import spacy

import nlu
from nlu.tokens import tokens
from tests.nlu.corpus import cases
from tests.nlu.saying import ARRIVED, BEDS, CHANNELS, Channel
from tests.nlu.test_any_text import mutated, soup

ROUNDS = 5
ABOUT_TEN = range(8, 13)
LENGTHS = (60, 125, 250, 500, 1000)


def milliseconds(text: str, channel: Channel = "text") -> float:
    """What one message takes."""
    start = time.perf_counter()
    nlu.parse(text, arrived=ARRIVED, beds=BEDS, channel=channel)
    return (time.perf_counter() - start) * 1000


def best(text: str, channel: Channel = "text") -> float:
    """The least of a few rounds: what the work is, without what else the machine does."""
    return min(milliseconds(text, channel) for _ in range(ROUNDS))


def percentile(times: Sequence[float], of: float) -> float:
    """The time that so many of a hundred messages stay under."""
    return sorted(times)[min(len(times) - 1, int(len(times) * of / 100))]


def ordinary(name: str, channel: Channel) -> None:
    """Messages of about ten tokens, and the bare tokenizer beside them."""
    texts = [c.line["text"] for c in cases(name) if len(tokens(c.line["text"])) in ABOUT_TEN]
    blank = spacy.blank("en")
    bare = statistics.median(_bare(blank, text) for text in texts)
    times = [best(text, channel) for text in texts]
    median = statistics.median(times)
    print(
        f"{name}: {len(texts)} messages of {ABOUT_TEN[0]}-{ABOUT_TEN[-1]} tokens: "
        f"median {median:.2f} ms, 99% under {percentile(times, 99):.2f} ms, worst {max(times):.2f} ms; "
        f"{median / bare:.0f} times the blank tokenizer ({bare * 1000:.0f} us)"
    )


def _bare(blank: spacy.language.Language, text: str) -> float:
    def once() -> float:
        start = time.perf_counter()
        blank.make_doc(text)
        return (time.perf_counter() - start) * 1000

    return min(once() for _ in range(ROUNDS))


def growth(sentence: str, channel: Channel) -> None:
    """The same sentence again and again, up to the size limit."""
    shown = []
    for length in LENGTHS:
        text = (sentence * (length // len(sentence) + 1))[:length].rsplit(" ", 1)[0]
        shown.append((len(text), best(text, channel)))
    (short, least), (long, most) = shown[0], shown[-1]
    slope = (most / least) / (long / short)
    figures = "  ".join(f"{length}: {took:.1f}" for length, took in shown)
    print(f"{channel} {sentence!r}: {figures} ms; growth {slope:.2f} times linear")


def fuzz(count: int, seed: int = 1) -> None:
    """Mutated messages, random signs and soups of trade words: none raises, and the slowest are shown."""
    rng = random.Random(seed)
    slowest: list[tuple[float, str, Channel]] = []
    for number in range(count):
        text = soup(rng) if number % 4 == 0 else mutated(rng)
        channel = CHANNELS[number // 4 % 2]
        took = milliseconds(text, channel)
        if len(slowest) < 5 or took > slowest[-1][0]:
            # Once more: the collector and the rest of the machine also take time.
            took = min(took, best(text, channel))
            slowest = sorted([*slowest, (took, text, channel)], reverse=True)[:5]
    print(f"{count} mutated messages and soups, none raised; the slowest:")
    for took, text, channel in slowest:
        print(f"  {took:6.1f} ms {channel:5} {text!r}")


@click.command()
@click.argument("count", type=click.IntRange(1), default=2000)
def main(count: int) -> None:
    """How long messages take to read, ordinary ones and COUNT mutated ones."""
    milliseconds("bed 12 mark 1050 at 1900")
    ordinary("corpus_typed", "text")
    ordinary("corpus_dictated", "voice")
    growth("bed 12 mark 1050 at 1900, ", "text")
    growth("bed 12 1050 14 220 1900 ", "text")
    growth("bed twelve mark ten fifty at nineteen hundred ", "voice")
    growth("the family is at the bedside and asks for the doctor again ", "text")
    fuzz(count)


if __name__ == "__main__":
    main(prog_name="python -m tests.nlu.bench")
