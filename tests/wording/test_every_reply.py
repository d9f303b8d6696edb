"""Whatever is said, the reply can be sent, prescribes nothing and can be spoken.

The corpora of typed and dictated messages, one after the other to one ward, as a bad night would.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from functools import cache
from pathlib import Path

import pytest

from bot.cli.embedded import Reply, Sent, Ward
from bot.intake import TextError, clean_text
from bot.unit import demo_unit
from tests.wording.language import faults

CORPORA = Path(__file__).parents[1] / "nlu"
BEGIN = datetime(2026, 3, 4, 19, 5, tzinfo=UTC)
NAMES = ("Amy", "Ben", "Carla")


def messages(corpus: str) -> Iterator[Sent]:
    """The corpus in order, seven minutes apart, each from the next nurse."""
    lines = (CORPORA / corpus).read_text("utf-8").splitlines()
    for number, line in enumerate(lines):
        row = json.loads(line)
        try:
            text = clean_text(row["text"])
        except TextError:
            continue
        yield Sent(
            sender=NAMES[number // 3 % 3],
            text=text,
            arrived=BEGIN + timedelta(minutes=7 * number),
            voice=row.get("channel") == "voice",
        )


@cache
def conversation(corpus: str) -> tuple[tuple[str, Reply], ...]:
    ward = Ward(demo_unit())
    try:
        return tuple((sent.text, ward.says(sent)) for sent in messages(corpus))
    finally:
        ward.close()


each_corpus = pytest.mark.parametrize("corpus", ["corpus_typed.jsonl", "corpus_dictated.jsonl"])


@each_corpus
def test_every_reply_can_be_sent_and_prescribes_nothing(corpus: str) -> None:
    wrong = {text: faults(_own_words(reply.text)) for text, reply in conversation(corpus)}
    assert {text: found for text, found in wrong.items() if found} == {}


@each_corpus
def test_every_reply_is_spoken_without_a_digit(corpus: str) -> None:
    spoken = [reply.speech for _, reply in conversation(corpus)]
    assert [speech for speech in spoken if any(letter.isdigit() for letter in speech)] == []


@each_corpus
def test_every_message_gets_some_reply(corpus: str) -> None:
    assert len(conversation(corpus)) > 100
    assert all(reply.text and reply.segments for _, reply in conversation(corpus))


def _own_words(reply: str) -> str:
    """The reply without what it quotes: the nurse's own message, and what can be said."""
    return re.sub(r'"[^"]*"', "that", reply)
