"""What nurses write and say, mangled: thumbs, recognisers, encodings, two messages run into one."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from functools import cache
from pathlib import Path
from random import Random

ROOT = Path(__file__).parents[2]
CORPORA = sorted((ROOT / "tests" / "nlu").glob("corpus_*.jsonl"))
STORIES = sorted((ROOT / "transcripts_demo").glob("*.txt"))
ANSWERS = (
    "yes", "no", "12 yes", "7 no", "misread", "misread, 640", "new canister", "earlier wrong", "first",
    "second", "1050", "640", "scratch that", "undo", "at 1900", "left", "same", "more", "it is right",
    "seen 12", "who am i",
)  # fmt: skip
STRANGE = (
    "\u00a0", "\u200b", "\u202e", "\u0301", "\u00b2", "\u00bd", "\u0660", "\uff11", "\u2014", "\u201c",
    "\U0001f489", "\u0417", "\u00df", "\ufeff", "\n", "\t", "%", "$", "#", "'", '"', "\\", "{", "}", "<",
    "&", ";", "--", "...",
)  # fmt: skip
_TURN = re.compile(r"\d\d:\d\d [^:(]+(?:\(.*?\))?: (.+)")
_WORD = re.compile(r"\S+")
_BED = re.compile(r"\bbed \w+", re.IGNORECASE)


@cache
def messages() -> tuple[str, ...]:
    """Everything that the corpora and the stories say."""
    told = [json.loads(line)["text"] for path in CORPORA for line in path.read_text("utf-8").splitlines()]
    stories = (line for path in STORIES for line in path.read_text("utf-8").splitlines())
    told += [found[1] for line in stories if (found := _TURN.fullmatch(line))]
    return tuple(dict.fromkeys(told))


@cache
def words() -> tuple[str, ...]:
    """Every word of them, as often as it stands there."""
    return tuple(word for text in messages() for word in _WORD.findall(text))


def mangled(random: Random) -> str:
    """A message; most often about one of few beds, so that the ward has a past."""
    text = random.choice(ANSWERS) if random.random() < 0.15 else random.choice(messages())
    if random.random() < 0.7:
        text = _BED.sub(lambda _: f"bed {random.choice((3, 7, 12))}", text)
    while random.random() < 0.6:
        text = random.choice(WAYS)(text, random)
    return text


def _letter_lost(text: str, random: Random) -> str:
    place = random.randrange(len(text) + 1)
    return text[:place] + text[place + 1 :]


def _letter_twice(text: str, random: Random) -> str:
    place = random.randrange(len(text) + 1)
    return text[:place] + text[place : place + 1] + text[place:]


def _letters_swapped(text: str, random: Random) -> str:
    place = random.randrange(len(text) + 1)
    return text[:place] + text[place : place + 2][::-1] + text[place + 2 :]


def _letter_wrong(text: str, random: Random) -> str:
    place = random.randrange(len(text) + 1)
    return (
        text[:place]
        + chr(random.choice((random.randint(32, 126), random.randint(97, 122))))
        + text[place + 1 :]
    )


def _digit_wrong(text: str, random: Random) -> str:
    return re.sub(r"\d", lambda old: str(random.randrange(10)) if random.random() < 0.3 else old[0], text)


def _digit_more(text: str, random: Random) -> str:
    place = random.randrange(len(text) + 1)
    return text[:place] + str(random.randrange(10)) + text[place:]


def _number_else(text: str, random: Random) -> str:
    return re.sub(
        r"\d+", lambda _: str(random.choice((random.randint(0, 2400), 10 * random.randint(0, 200)))), text
    )


def _word_lost(text: str, random: Random) -> str:
    found = text.split(" ")
    del found[random.randrange(len(found))]
    return " ".join(found)


def _word_more(text: str, random: Random) -> str:
    found = text.split(" ")
    found.insert(random.randint(0, len(found)), random.choice(words()))
    return " ".join(found)


def _word_wrong(text: str, random: Random) -> str:
    return _word_more(_word_lost(text, random), random)


def _words_shuffled(text: str, random: Random) -> str:
    found = text.split(" ")
    random.shuffle(found)
    return " ".join(found)


def _blanks_lost(text: str, random: Random) -> str:
    return re.sub(" ", lambda _: "" if random.random() < 0.3 else " ", text)


def _strange_sign(text: str, random: Random) -> str:
    place = random.randrange(len(text) + 1)
    return text[:place] + random.choice(STRANGE) + text[place:]


def _other_case(text: str, random: Random) -> str:
    return random.choice((str.upper, str.title, str.swapcase))(text)


def _two_in_one(text: str, random: Random) -> str:
    return random.choice((" ", ", ", " and ", "; ", "\n", ". ", "")).join((text, random.choice(messages())))


def _cut(text: str, random: Random) -> str:
    return text[: random.randrange(len(text) + 1)]


def _many_times(text: str, random: Random) -> str:
    return (text + " ") * random.choice((2, 3, 30))


WAYS: tuple[Callable[[str, Random], str], ...] = (
    _letter_lost, _letter_twice, _letters_swapped, _letter_wrong, _digit_wrong, _digit_more, _number_else,
    _word_lost, _word_more, _word_wrong, _words_shuffled, _blanks_lost, _strange_sign, _other_case,
    _two_in_one, _cut, _many_times,
)  # fmt: skip
