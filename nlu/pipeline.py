"""The blank English pipeline: a tokenizer of this language's own and one matcher of cue phrases.

Built once. Every `Doc` is made of a bounded set of words (a word that no cue has becomes "?", a
number "#"), so the string store never grows: threads need neither lock nor memory zone.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from types import MappingProxyType
from typing import NamedTuple, cast

import spacy
from spacy.lang.en import English
from spacy.matcher import PhraseMatcher
from spacy.tokens import Doc

from . import (
    abroad,
    bareverbs,
    degrees,
    described,
    heard,
    learnt,
    leftout,
    patientnames,
    sentences,
    shortened,
    spelling,
    swapped,
    titles,
    toldapart,
    trade,
    tubenames,
)
from .patterns import clockwords
from .patterns.numerals import HOMOPHONES, NUMERALS, ONES, TENS
from .phrasebook import PhraseBook, phrases
from .tokens import Token, Words, cut, folded, tokens, without_dots, without_possessive

UNKNOWN = "?unknown"
NUMBER = "#number"
HEARD_SHORTEST = 7
"""A recogniser writes real words: only its long trade words are misspelt ones."""
DENYING = frozenset({"no", "nil", "none", "neg", "negative"})
"""Said before what is not there, or behind it."""
DRAWN = frozenset({"record", "log", "enter", "chart", "draw", "drew", "mark", "make", "made", "recorded"})
LABELLED = frozenset({"bed", "room", "rm", "bay"})
TUBES = frozenset({"tube", "drain"})
BEFORE_ONE = TENS.keys() | LABELLED


class Cue(NamedTuple):
    """A cue phrase that was said: tokens `start` to `end`."""

    label: str
    value: str
    start: int
    end: int


def in_order(cues: Iterable[Cue]) -> tuple[Cue, ...]:
    """These cues by where they start."""
    return tuple(sorted(cues, key=lambda cue: cue.start))


def overlaps(cue: Cue, others: Iterable[Cue]) -> bool:
    """Whether a word of the cue is one of another's too."""
    return any(cue.start < other.end and other.start < cue.end for other in others)


def with_found(cues: Iterable[Cue], found: Sequence[Cue]) -> tuple[Cue, ...]:
    """The cues with these in the place of all that they overlap."""
    return in_order([*(cue for cue in cues if not overlaps(cue, found)), *found])


HOURS = frozenset({"o'clock", "oclock", "clock"})


class Read(NamedTuple):
    """The tokens of a message with repaired spelling, and its cues by where they start.

    `labelled` are the labels of the unit that are more than a number: where each starts, its end, the label.
    """

    text: str
    tokens: Words
    cues: tuple[Cue, ...]
    broken: frozenset[int]
    labelled: Mapping[int, tuple[int, str]] = MappingProxyType({})


class WardTokenizer:
    """Makes a `Doc` of the bounded words of a message; the tokens themselves go beside it."""

    def __init__(self, vocab: spacy.vocab.Vocab, words: frozenset[str]) -> None:
        self.vocab = vocab
        self.words = words

    def __call__(self, text: str) -> Doc:
        """The document of a message."""
        return self.doc(tokens(text))

    def doc(self, toks: Sequence[Token]) -> Doc:
        """The document of tokens already made."""
        words = self.words
        said = [t.text if t.text in words else NUMBER if t.text[0].isdecimal() else UNKNOWN for t in toks]
        return Doc(self.vocab, words=said)


class Pipeline:
    """Tokenizer and matcher, ready."""

    def __init__(self) -> None:
        self.book = PhraseBook()
        vocabulary = self.book.words | _plain_words()
        # What `spacy.blank("en")` makes, without its own tokenizer, whose many exceptions nobody asks about.
        self.nlp = English(create_tokenizer=lambda nlp: WardTokenizer(nlp.vocab, vocabulary))
        self.tokenizer = cast("WardTokenizer", self.nlp.tokenizer)
        self.matcher = PhraseMatcher(self.nlp.vocab, attr="ORTH")
        self.speller = spelling.Speller(vocabulary)
        strings = self.nlp.vocab.strings
        for word in vocabulary:
            strings.add(word)
        self.labels = {strings.add(label): _named(label) for label, _ in phrases()}

    def read(self, text: str, *, voice: bool = False) -> Read:
        """The tokens and cues of a message."""
        plain = folded(text)
        raw: Sequence[Token] = cut(plain)
        raw = raw if voice else tubenames.named(titles.untitled(raw, text), text)
        raw = list(without_dots(raw)) if "." in text else raw
        raw = raw if voice else sentences.parted(raw)
        owned = "'s" in plain
        raw = trade.plain(tubenames.plain(list(without_possessive(raw, NUMERALS)) if owned else raw))
        raw = degrees.plain(raw)
        raw = bareverbs.plain(
            abroad.plain(heard.plain(raw) if voice else shortened.plain(swapped.plain(raw)))
        )
        raw = leftout.without(raw if voice else toldapart.plain(learnt.plain(raw)))
        raw = described.plain(sentences.stopped(patientnames.plain(raw)))
        repaired, broken = self.speller.repaired(raw, shortest=HEARD_SHORTEST if voice else spelling.SHORTEST)
        return Read(text, repaired, self.cues(repaired), broken)

    def cues(self, toks: Sequence[Token]) -> tuple[Cue, ...]:
        """The cue phrases of tokens, the longest at each place, in order, without overlaps."""
        self.book.write_out([token.text for token in toks], self.matcher, self.nlp.vocab.strings)
        matches = self.matcher(self.tokenizer.doc(toks))
        found = [m for m in matches if toks[m[1]].text not in ONES or not _ends_a_number(toks, m[1])]
        found.sort(key=lambda m: (m[1], -m[2]))
        several = [(start, end) for _, start, end in found if end - start > 1]
        begins = {start for start, _ in several}
        denied = {start for start, end in several if toks[end - 1].text in DENYING}
        kept: list[Cue] = []
        free = 0
        for key, start, end in found:
            if start < free:
                continue
            denies = end - start > 1 and end - 1 in begins and _denies_the_next(toks, end, denied)
            if denies or (end - start > 1 and _is_no_phrase(toks, start, end)):
                continue
            name, value = self.labels[key]
            kept.append(Cue(name, value, start, end))
            free = end
        return tuple(kept)


def _denies_the_next(toks: Sequence[Token], end: int, denied: set[int]) -> bool:
    """Whether a "nil" is of what follows: "swinging nil leak"; "leak nil" has its own."""
    return toks[end - 1].text in DENYING and end not in denied


def _ends_a_number(toks: Sequence[Token], i: int) -> bool:
    """Whether the word at a place is the "one" of thirty-one, or of bed one: then no cue ("one canister")
    begins with it."""
    return 0 < i < len(toks) and toks[i].text in ONES and toks[i - 1].text in BEFORE_ONE


def _is_no_phrase(toks: Sequence[Token], start: int, end: int) -> bool:
    """Whether these words only look like a phrase, as what stands beside them shows."""
    return (
        _is_letter_of_bed(toks, start)
        or _ends_with_first_word(toks, end)
        or (toks[start].is_digits and start > 0 and toks[start - 1].text in LABELLED)  # "bed 24 hourly line"
        or _is_drawn_line(toks, start, end)
        or _is_out_of_a_bed(toks, start, end)
        or _is_other_side(toks, start, end)
        or _is_next_bed(toks, start, end)
        or _begins_with_half_of_day(toks, start)
    )


def _ends_with_first_word(toks: Sequence[Token], end: int) -> bool:
    """Whether the last word is of what stands behind it: "about a hundred and twenty", "to x-ray CT4"."""
    if end >= len(toks):
        return False
    label = toks[end - 1].text == "ct" and toks[end].glued and toks[end].is_digits
    return label or (toks[end - 1].text == "a" and toks[end].text in {"hundred", "thousand"})


def _is_letter_of_bed(toks: Sequence[Token], i: int) -> bool:
    """Whether the "a" at a place follows a bed or the word tube: "bed twelve A line at 340" tells of no
    arterial line."""
    if toks[i].text != "a" or (i + 1 < len(toks) and toks[i + 1].text == "-"):
        return False
    if i > 0 and toks[i - 1].text in TUBES:
        return True
    start = i - (i > 1 and toks[i - 1].text == "-" and toks[i].glued)  # "9-A line"
    while start and (toks[start - 1].text in NUMERALS or toks[start - 1].is_digits):
        start -= 1
    return 0 < start < i and toks[start - 1].text in LABELLED


def _is_drawn_line(toks: Sequence[Token], start: int, end: int) -> bool:
    """ "record a line of 640": of the canister, and no arterial one."""
    if [t.text for t in toks[start:end]] != ["a", "line"]:
        return False
    drawn = start > 0 and toks[start - 1].text in DRAWN
    return drawn or (end < len(toks) and toks[end].text == "of")


def _is_other_side(toks: Sequence[Token], start: int, end: int) -> bool:
    """ "was left not right": the other side, and no "that is not right"."""
    denied = toks[start].text == "not" and start > 0 and toks[start - 1].text in {"left", "lt", "l"}
    return denied and end == start + 2 and toks[start + 1].text == "right"


def _is_next_bed(toks: Sequence[Token], start: int, end: int) -> bool:
    """ "now bed 21 mark 240" at the very start: the next bed, and nobody was moved there."""
    named = start == 0 and toks[0].text == "now" and toks[end - 1].text in LABELLED
    return named and any(t.text in heard.LINE for t in toks)


def _is_out_of_a_bed(toks: Sequence[Token], start: int, end: int) -> bool:
    """ "300 out of bed 12": so much came out, and nobody got up."""
    named = toks[start].text == "out" and toks[end - 1].text in LABELLED
    return named and end < len(toks) and (toks[end].is_digits or toks[end].text in NUMERALS)


def _begins_with_half_of_day(toks: Sequence[Token], start: int) -> bool:
    """ "at 2:10 am i changed it": when that was, and no "am I"."""
    before = toks[start - 1] if toks[start].text == "am" and start > 0 else None
    return before is not None and (before.is_digits or before.text in NUMERALS or before.text in HOURS)


def _named(label: str) -> tuple[str, str]:
    """The name and the value that a label has: "kind:exchanged"."""
    name, _, value = label.partition(":")
    return name, value


def _plain_words() -> frozenset[str]:
    timely = [*clockwords.NOW, *(p for p, _ in clockwords.PARTS), *(d for d, _, _ in clockwords.DAYS)]
    singles = {
        *clockwords.AMPM,
        *clockwords.WEEKDAYS,
        *clockwords.MONTHS,
        *clockwords.NOON,
        *clockwords.MINUTE_WORDS,
        *clockwords.HOUR_WORDS,
        *clockwords.PAST,
        *clockwords.TO,
        *clockwords.AGO,
        *clockwords.AT,
        *NUMERALS,
        *HOMOPHONES,
        "quarter",
        "half",
        "point",
        "o'clock",
        "oclock",
        "clock",
        "then",
        "and",
        "plus",
        "also",
    }
    return frozenset(singles | {w for p in timely for w in p})


@lru_cache(maxsize=1)
def pipeline() -> Pipeline:
    """The pipeline of this process."""
    return Pipeline()
