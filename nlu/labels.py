"""Bed labels and tube names that tokens can say."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import lru_cache
from types import MappingProxyType

from .numbers import Toks, glued, heard_as_number, is_digits, numbers, word
from .patterns.numerals import NUMERALS
from .tokens import Token

_SPELLING = {"alpha": "a", "bravo": "b", "charlie": "c", "delta": "d"}


@lru_cache(maxsize=64)
def bed_index(beds: tuple[str, ...]) -> Mapping[str, str]:
    """The unit's labels by their letters and digits alone: 3-B is found as 3b."""
    return MappingProxyType({key(label): label for label in beds})


def key(label: str) -> str:
    """Letters and digits of a label, lower-case, without leading zeros."""
    plain = label.lower()
    if not plain.isalnum():
        plain = "".join(c for c in plain if c.isalnum())
    return plain.lstrip("0") or plain


Found = tuple[int, str, bool]


def beds(toks: Toks, i: int, index: Mapping[str, str] | None, *, voice: bool, cued: bool) -> Iterator[Found]:
    """Each label that can begin at a place: its end, the label, and whether the unit has it.

    A label that the unit does not have counts only after the word bed (`cued`).
    """
    seen: set[tuple[int, str]] = set()
    said = [(end, text, _label(text, index)) for end, text in _spoken(toks, i, voice=voice and cued)]
    whole = max((end for end, text, label in said if label and text[-1:].isalpha()), default=0)
    for end, text, label in said:
        if end < whole and (glued(toks, end) or word(toks, end) == "bed"):
            continue  # "2B" is not bed 2 where the unit has a 2B
        if label is not None:
            if (end, label) not in seen:
                seen.add((end, label))
                yield end, label, True
        elif cued and is_digits(toks, i) and len(text) <= 4 and index is not None and not _scaled(toks, end):
            yield end, text.upper(), False


def written(toks: Toks, index: Mapping[str, str] | None) -> dict[int, tuple[int, str]]:
    """The unit's labels that are letters and digits in one run (2B, CT1), by their start."""
    found: dict[int, tuple[int, str]] = {}
    end = 0
    for i in range(len(toks) if index is not None else 0):
        if i < end or not toks[i].text[0].isalnum() or (glued(toks, i) and toks[i - 1].text[0].isalnum()):
            continue
        end = i + 1
        while end < len(toks) and glued(toks, end) and toks[end].text[0].isalnum():
            end += 1
        text = "".join(t.text for t in toks[i:end])
        if not text.isdecimal() and not text.isalpha() and (label := _label(text, index)) is not None:
            found[i] = (end, label)
    return found


def without(toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> list[Token]:
    """The tokens with those of bed labels made unknown: "to CT3" is not the scan."""
    inside = {k for start, (end, _) in labelled.items() for k in range(start, end)}
    return [t._replace(text="?") if k in inside else t for k, t in enumerate(toks)]


def _scaled(toks: Toks, i: int) -> bool:
    return word(toks, i) in {"hundred", "thousand"}


def _label(text: str, index: Mapping[str, str] | None) -> str | None:
    plain = key(text)
    if index is not None:
        return index.get(plain)
    return plain.upper() if plain.rstrip("abcdefgh").isdecimal() and len(plain) <= 4 else None


def _spoken(toks: Toks, i: int, *, voice: bool) -> Iterator[tuple[int, str]]:
    start, prefix = _prefix(toks, i)
    if prefix:
        yield start, prefix
        yield from _with_letters(toks, i, _heads(toks, start, voice=False), prefix)
    yield from _with_letters(toks, i, _heads(toks, i, voice=voice), "")


def _with_letters(
    toks: Toks, i: int, heads: Iterator[tuple[int, str]], prefix: str
) -> Iterator[tuple[int, str]]:
    for end, head in heads:
        yield end, prefix + head
        letter_at = end + 1 if word(toks, end) == "-" else end
        letter = _SPELLING.get(word(toks, letter_at), word(toks, letter_at))
        if len(letter) == 1 and letter.isalpha():
            yield letter_at + 1, prefix + head + letter
            if is_digits(toks, letter_at + 1) and glued(toks, letter_at + 1):
                yield letter_at + 2, prefix + head + letter + word(toks, letter_at + 1)
        elif word(toks, end) == "-" and is_digits(toks, end + 1) and is_digits(toks, i):
            yield end + 2, prefix + head + "-" + word(toks, end + 1)
        elif word(toks, end) == "bed" and len(word(toks, end + 1)) == 1:
            yield end + 2, prefix + head + word(toks, end + 1)


def _prefix(toks: Toks, i: int) -> tuple[int, str]:
    """The letters of a label such as CT4, ICU 3 or c t four, or none."""
    run, end = "", i
    while end < i + 3 and word(toks, end).isalpha() and len(word(toks, end)) <= 4 and not numbers(toks, end):
        run += word(toks, end)
        end += 1
        if len(run) > 2:
            break
    if run and word(toks, end) == "-":
        end += 1
    return (end, run) if run else (i, "")


def _heads(toks: Toks, i: int, *, voice: bool) -> Iterator[tuple[int, str]]:
    if is_digits(toks, i):
        yield i + 1, word(toks, i)
        if len(word(toks, i)) == 1 and is_digits(toks, i + 1) and len(word(toks, i + 1)) == 1:
            yield i + 2, word(toks, i) + word(toks, i + 1)
        return
    found = numbers(toks, i)
    if voice:
        found = found + [n for n in heard_as_number(toks, i) if n.end == i + 1]
    for number in found:
        if number.style in {"plain", "spelt", "heard", "led"} and number.value.denominator == 1:
            yield number.end, str(number.value)


BEHIND_NAME = frozenset(
    {
        "mark",
        "marks",
        "marked",
        "line",
        "level",
        "at",
        "reads",
        "read",
        "reading",
        "shows",
        "showing",
        "is",
        "was",
    }
    | {
        "drained",
        "put",
        "seal",
        "no",
        "page",
        "the",
        "okay",
        "ok",
        "uh",
        "um",
        "er",
        "erm",
        "ah",
        "so",
        "and",
    }
    | {
        "add",
        "as",
        "with",
        "has",
        "had",
        "sitting",
        "sits",
        "measures",
        "measured",
        "measuring",
        "now",
        "just",
    }
    | {
        "it's",
        "its",
        "that's",
        "canister",
        "box",
        "chamber",
        "suction",
        "air",
        "leak",
        "tidaling",
        "swinging",
    }
    | {
        "out",
        "in",
        "on",
        "to",
        "from",
        "of",
        "for",
        "about",
        "around",
        "please",
        "yesterday",
        "today",
        "this",
    }
    | {"last", "half", "quarter", "tube", "drain", "right", "left", "bed", "room", "final", "output", "same"}
)
SIDES = {"l": "left", "r": "right"}


def tube_name(parts: list[str]) -> str:
    """A tube's name in the order side, place."""
    side = [p for p in parts if p in {"left", "right"}]
    return " ".join([*dict.fromkeys(side), *dict.fromkeys(p for p in parts if p not in side)])


def tube_label(toks: Toks, i: int) -> tuple[int, str] | None:
    """The letter or number of a tube after the word tube: B, 1, two."""
    if word(toks, i) == "#":
        i += 1
    text = word(toks, i)
    if len(text) == 1 and text.isalpha() and text not in {"o", "l", "r", "x", "y"}:
        if text == "a" and not _ends_name(toks, i + 1):
            return None
        return i + 1, text.upper()
    if is_digits(toks, i):
        alone = len(text) == 1 and text != "0" and not _longer(toks, i + 1)
        return (i + 1, text) if alone else None
    found = [n for n in numbers(toks, i) if 0 < n.value < 10 and n.value.denominator == 1]
    return (found[0].end, str(found[0].value)) if found else None


def _longer(toks: Toks, i: int) -> bool:
    if word(toks, i) == ":" and not glued(toks, i + 1):
        return False
    return word(toks, i) in {
        ":",
        ".",
        "ml",
        "cc",
        "mls",
        "hundred",
        "thousand",
        "am",
        "pm",
        "a",
        "p",
        "h",
        "fr",
        "french",
        "f",
    }


def _ends_name(toks: Toks, i: int) -> bool:
    """Whether the "a" before is the name of a tube: no noun follows that it could be the article of."""
    text = word(toks, i)
    if text in {"hundred", "thousand"}:
        return False
    return not text.isalpha() or text in NUMERALS or text in BEHIND_NAME
