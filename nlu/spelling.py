"""Misspelt cue words put right by a small edit distance; numbers never.

A word that is nearly a number word is not guessed at: it is marked as broken, and a number beside
it is asked.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache
from itertools import groupby

from rapidfuzz.distance import OSA

from .patterns.asides import ASIDES
from .patterns.misgivings import SAID
from .patterns.numerals import NUMERALS
from .patterns.plain import PLAIN
from .patterns.shorthand import SHORTHAND, TRADE
from .patterns.smalltalk import NAMES
from .tokens import Token, Words

SHORTEST = 4
FEWEST = 3
"""Letters of a word without its vowels."""
LONG = 8
ENDED = "ed"
SILENT = {"n": "k", "r": "w"}
"""Letters that are not heard before these: "nocked over", "rong bed"."""
VOWELS = frozenset("aeiouy")
BROKEN = "?broken"
LEAVING = frozenset({"deceased", "discharged", "expired", "passed", "transferred", "removed"})
"""These close a drain."""
TOO_MUCH = frozenset({"same", "none", "died", "gone", "lost", "home", "empty", "zero", "back", *LEAVING})
"""Words that say too much to be guessed from a near miss."""


class Speller:
    """Repairs words against a fixed vocabulary; remembers a bounded number of answers."""

    def __init__(self, vocabulary: frozenset[str]) -> None:
        self.vocabulary = vocabulary
        self._known = vocabulary | NUMERALS | SAID | (ASIDES - NAMES)  # a night "tech" does not "teach"
        self._ended = [w for w in vocabulary if w.endswith(ENDED) and len(w) > SHORTEST + len(ENDED)]
        self._by_length: dict[int, list[str]] = {}
        for word in sorted(vocabulary - NUMERALS - TOO_MUCH):
            if word.isalpha() and len(word) >= SHORTEST:
                self._by_length.setdefault(len(word), []).append(word)
        self._short = _skeletons(self._known)
        self.repair = lru_cache(maxsize=4096)(self._repair)

    def repaired(self, toks: Sequence[Token], *, shortest: int = SHORTEST) -> tuple[Words, frozenset[int]]:
        """The tokens with cue words put right, and the places of broken number words."""
        out: list[Token] = []
        broken: set[int] = set()
        for place, token in enumerate(toks):
            if token.text in SHORTHAND:
                out.append(token._replace(text=SHORTHAND[token.text]))
                continue
            if token.text in self._known or not token.is_word or token.text in PLAIN:
                out.append(token)
                continue
            if whole := self._short.get(token.text):
                out.append(token._replace(text=whole))
                continue
            if len(token.text) < SHORTEST:
                out.append(token)
                continue
            right = self.repair(token.text[:24])
            if len(token.text) < shortest and right != BROKEN:
                right = token.text
            if right == BROKEN:
                broken.add(place)
            out.append(token if right == BROKEN else token._replace(text=right))
        return Words(out), frozenset(broken)

    def _repair(self, word: str) -> str:
        if word in PLAIN:
            return word
        if whole := self._whole(word):
            return whole
        if (silent := SILENT.get(word[0], "") + word) in self.vocabulary:
            return silent
        if any(_near(word, numeral) for numeral in NUMERALS if len(numeral) >= SHORTEST):
            return BROKEN
        reach = 2 if len(word) >= LONG else 1
        best: list[tuple[int, bool, str]] = []
        for length in range(len(word) - reach, len(word) + reach + 1):
            for known in self._by_length.get(length, ()):
                distance = OSA.distance(word, known, score_cutoff=reach)
                swapped = sorted(word) == sorted(known)
                if len(word) == SHORTEST == len(known) and not swapped:
                    continue
                if distance <= reach and _same_start(word, known) and not _loses_no(word, known):
                    best.append((distance, not swapped, known))
        return min(best)[2] if best else word

    def _whole(self, word: str) -> str:
        """What happened, told with its first letters or an apostrophe: "exch 0910", "disconn", "chg'd"."""
        base = word.removesuffix("'d")
        if base != word:
            base = SHORTHAND.get(base, base).removesuffix("e")
            told = f"{base}{ENDED}"
            if told in self.vocabulary or len(base) < SHORTEST:
                return told if told in self.vocabulary else ""
        if not VOWELS.isdisjoint(base[-2:]):
            return ""
        found = [told for told in self._ended if told.startswith(base) and told != f"{base}{ENDED}"]
        return found[0] if len(found) == 1 else ""


def _skeleton(word: str) -> str:
    return word[:1] + "".join(letter for letter in word[1:] if letter not in VOWELS)


def _skeletons(words: Iterable[str]) -> dict[str, str]:
    """What is left of each word without its vowels, where that is of no other word and of no number: "fnl",
    "ordrd"."""
    found: dict[str, set[str]] = {}
    for word in words:
        if word.isalpha():
            skeleton = _skeleton(word)
            once = "".join(letter for letter, _ in groupby(skeleton))
            for short in {skeleton, once} - {word}:
                found.setdefault(short, set()).add(word)
    numbers = {_skeleton(numeral) for numeral in NUMERALS}
    return {
        short: min(whole)
        for short, whole in found.items()
        if len(short) >= FEWEST and len(whole) == 1 and whole <= TRADE and short not in numbers
    }


def _near(word: str, numeral: str) -> bool:
    return abs(len(word) - len(numeral)) <= 1 and OSA.distance(word, numeral, score_cutoff=1) <= 1


def _loses_no(word: str, known: str) -> bool:
    """ "shouldnt" is no "should"."""
    return word.endswith("nt") and not known.endswith(("nt", "n't"))


def _same_start(word: str, known: str) -> bool:
    """Whether the first letters agree, or are swapped; a wrong first letter is rare and misleads."""
    return word[0] == known[0] or word[:2] == known[1::-1]
