"""Words, digits and signs of a message, each with its place: the tokenizer of this language.

Digits and letters never share a token ("1050ml" is two, glued), because nurses and recognisers
glue and split them at will. No meaning is given here.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import wraps
from typing import Any, NamedTuple, TypeVar

_TOKEN = re.compile(r"\d+|[\u00bc-\u00be]|[^\W\d_\u00bc-\u00be]+(?:'[^\W\d_\u00bc-\u00be]+)*|[^\s\w]|_")
NEW_LINE = "\u23ce"
"""Read as a semicolon; what stands on two lines is never one number."""
_SAME_LENGTH = str.maketrans(
    {
        "\u2019": "'",
        "\u2018": "'",
        "\u02bc": "'",
        "`": "'",
        "\u2010": "-",
        "\u2011": "-",
        "\u2012": "-",
        "\u2013": "-",
        "\u2014": "-",
        "\u2212": "-",
        "\u00a0": " ",
        "\u202f": " ",
        "\u2009": " ",
        "\uff1a": ":",
        "\uff0c": ",",
        "\uff0e": ".",
        "\u2248": "~",
        "\u223c": "~",
        "\n": NEW_LINE,
        "\r": " ",
    }
)
ABBREVIATED = frozenset({"or", "ct", "icu", "mri", "er", "ed", "iv", "bp", "hr", "jp", "ng", "md", "rn"})
_FRACTIONS = {"\u00bd": "half", "\u00bc": "quarter", "\u00be": "three-quarters"}
_NIL = {"\u00f8": "nil", "\u2205": "nil", "\u2300": "nil"}
"""A nought struck through, as in handwriting: none of what stands beside it."""
_CROSSES = dict.fromkeys("\u2717\u2718\u274c\u2715\u2716", "cross")
"""A cross may be of what stands before it or behind: a word that nobody understands, so it is asked."""
_READ_AS = _FRACTIONS | _NIL | _CROSSES | {NEW_LINE: ";"}


LETTERED = frozenset({"tube", "drain"})
"""A letter behind these is the name of one: "tube a's at 210"."""


class Token(NamedTuple):
    """A word, a run of digits, or one sign; `glued` when no space stands before it."""

    text: str
    start: int
    end: int
    glued: bool

    @property
    def is_digits(self) -> bool:
        """Whether it is a run of decimal digits."""
        return self.text[0].isdecimal()

    @property
    def is_word(self) -> bool:
        """Whether it is made of letters."""
        return self.text[0].isalpha()


def text_at(toks: Sequence[Token], i: int) -> str:
    """The text of the word at this place; empty before the first and behind the last."""
    return toks[i].text if 0 <= i < len(toks) else ""


def is_shortened(toks: Sequence[Token], i: int) -> bool:
    """Whether the word at this place was said with an "is": the drain of "drain's", put right to "drain"."""
    return 0 <= i < len(toks) and toks[i].end - toks[i].start == len(toks[i].text) + len("'s")


BLANKS = ("",) * 16


class Words(tuple[Token, ...]):
    """The tokens of one message, with what was already found at each place; made and used by one thread."""

    memo: dict[tuple[str, int], Any]
    said: tuple[str, ...]
    """Their texts, and blanks after the end; so places just before the start are blank as well."""
    words: frozenset[str]
    """Each text once: what needs a word that is nowhere in the message is not looked for."""
    digits: frozenset[int]
    """The places of its runs of digits."""

    def __new__(cls, found: Iterable[Token]) -> Words:
        """The tokens, with nothing found yet."""
        words = super().__new__(cls, found)
        words.memo = {}
        words.said = (*[token.text for token in words], *BLANKS)
        words.words = frozenset(words.said)
        words.digits = frozenset([k for k, text in enumerate(words.said) if text[:1].isdecimal()])
        return words


Found = TypeVar("Found")


def remembered(find: Callable[[Words, int], Found]) -> Callable[[Words, int], Found]:
    """The same reader of a place, asked once for each place of a message: many ways pass there."""
    name = f"{find.__module__}.{find.__name__}"

    @wraps(find)
    def found(toks: Words, i: int) -> Found:
        key = (name, i)
        try:
            known: Found = toks.memo[key]
        except KeyError:
            known = toks.memo[key] = find(toks, i)
        return known

    return found


def tokens(text: str) -> Words:
    """The tokens of a message, lower-case, their places being those of the message as it came."""
    return Words(cut(folded(text)))


def cut(plain: str) -> list[Token]:
    """The tokens of a message that is in lower case and plain signs already."""
    found: list[Token] = []
    last = -1
    for match in _TOKEN.finditer(plain):
        word = match.group()
        start, end = match.span()
        loose = word == "\u00b7" and start != last
        broken = word == NEW_LINE
        found.append(
            Token("|" if loose else _READ_AS.get(word, word), start, end, start == last and not broken)
        )
        last = -1 if broken else end
    return found


def without_dots(toks: Iterable[Token]) -> Iterator[Token]:
    """The tokens with "O.R." as the word "or" and "C.T." as "ct": letters with a stop behind each."""
    run: list[Token] = []
    for token in toks:
        letter = len(token.text) == 1 and token.text.isalpha()
        joins = token.glued if run else letter
        if joins and (letter if len(run) % 2 == 0 else token.text == "."):
            run.append(token)
            continue
        yield from _abbreviated(run)
        run = [token] if letter else []
        if not letter:
            yield token
    yield from _abbreviated(run)


def _abbreviated(run: list[Token]) -> list[Token]:
    said = "".join(t.text for t in run if t.text != ".")
    if said not in ABBREVIATED or len(run) < 2 * len(said) - 1:
        return run
    return [Token(said, run[0].start, run[-1].end, run[0].glued)]


def without_possessive(toks: Iterable[Token], numerals: frozenset[str]) -> Iterator[Token]:
    """The tokens with "twelve's", "4b's" and "bed 4 B's" cut as "12's" is: the number, the sign, the s."""
    before = ""
    for token in toks:
        numbered = before.isdecimal() or before in numerals or before in LETTERED
        of_label = (token.glued or numbered) and len(token.text) == len("b's")
        before = token.text
        if token.text[-2:] != "'s" or not (of_label or token.text[:-2] in numerals):
            yield token
            continue
        sign = token.end - 2
        yield Token(token.text[:-2], token.start, sign, token.glued)
        yield Token("'", sign, sign + 1, True)
        yield Token("s", sign + 1, token.end, True)


def folded(text: str) -> str:
    """The message in lower case and plain signs, character for character of the same length."""
    lowered = text.translate(_SAME_LENGTH).lower()
    if text.isascii():
        return lowered
    if len(lowered) != len(text):
        lowered = "".join(_one(c) for c in text.translate(_SAME_LENGTH))
    return "".join(c if c.isascii() else _plain(c) for c in lowered)


def _one(char: str) -> str:
    low = char.lower()
    return low if len(low) == 1 else char


def _plain(char: str) -> str:
    if char.isdecimal():
        return str(unicodedata.decimal(char))
    if char in _FRACTIONS:
        return char
    base = unicodedata.normalize("NFKD", char)[:1]
    return base.lower() if base.isascii() and base.isalpha() else char
