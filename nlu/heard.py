"""What a recogniser writes for a word of the ward, put right before anything is read; dictation only.

Only where the words around leave nothing else: "dead twelve mark ..." is bed twelve. A number is
never changed, but a word that can only be a digit is (`soundalikes`); a nought written as a letter ("at
O300") is joined to its hour.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.clockwords import AGO, AMPM, HOUR_WORDS, MINUTE_WORDS
from .patterns.numerals import NUMERALS
from .soundalikes import sounded
from .tokens import Token

BEDS = frozenset(
    {"bad", "bet", "bit", "dead", "bead", "bid", "bent", "med", "met", "mad", "ped", "fed", "red"},
)
"""Near enough to "bed" that before a number they are nothing else."""
STARTS = frozenset({"at", "ed", "that", "get", "add", "it", *BEDS})
"""For "bed" at the start of a mark; before any other number they may be what they say."""
SAID = frozenset({"bed", "beds", "room", "rm", "bay"})
LINE = frozenset({"mark", "marks", "marked", "line", "level", "reading"})
SIDES = frozenset({"left", "right"})
BEFORE_HOUR = frozenset({"at", "@", "and", "add"})
SEROUS = frozenset({"zero", "sero", "serious", "serous", "sarah", "sera", "cirrus", "sierra"})
"""Before "sanguineous" these are the first half of that word."""
BEFORE_ZERO = LINE | BEFORE_HOUR | {"is", "of", "was"}
"""Behind these a zero is a number."""
THINKING = frozenset({"uh", "um", "er", "erm", "uhm", "ah", "hmm"})
COUNTED = frozenset(
    {
        "ml",
        "mls",
        "mil",
        "mils",
        "cc",
        "milliliters",
        "millilitres",
        "liters",
        "litres",
        *AMPM,
        *MINUTE_WORDS,
        *HOUR_WORDS,
    }
)
"""What ends a number or a time."""
LONGEST_LETTERS = 3
"""Letters of a label before its number: CT1."""
MOST_WORDS = 3
"""A bed has at most so many number words."""


def plain(toks: Sequence[Token]) -> list[Token]:
    """The tokens with what was misheard put right, each still at its place in the message."""
    joined = sounded(_looks(_noughts(_without_hyphens(_flowing(toks)))))
    if any(t.text in SAID for t in joined):
        return joined
    return [_bed(joined, k) for k in range(len(joined))]


def _bed(toks: Sequence[Token], i: int) -> Token:
    token = toks[i]
    after = _text(toks, i + 1)
    if not (after in NUMERALS or after[:1].isdecimal()):
        return token
    if token.text in BEDS and _text(toks, i - 1) not in {"a", "little", "not", "too"}:
        return token._replace(text="bed")
    if i == 0 and token.text in STARTS and _is_mark(toks, 1):
        return token._replace(text="bed")
    return token


def _is_mark(toks: Sequence[Token], i: int) -> bool:
    """Whether a bed, a line and the time of it follow: "at 12 mark 1050 at 1900"."""
    end = i
    while end - i < MOST_WORDS and (_text(toks, end) in NUMERALS or _text(toks, end)[:1].isdecimal()):
        end += 1
    end += _text(toks, end) in SIDES
    timed = any(t.text in {"at", "ago", "now", *AMPM} for t in toks[end + 1 :])
    return _text(toks, end) in LINE and timed


def _flowing(toks: Sequence[Token]) -> Sequence[Token]:
    """ "three uh, thirty five pm": somebody who thinks inside a number has not ended it."""
    kept = [
        k
        for k in range(len(toks))
        if not (_thinks(toks, k) or (_text(toks, k) == "," and _thinks(toks, k - 1)))
    ]
    return [toks[k] for k in kept] if len(kept) < len(toks) else toks


def _thinks(toks: Sequence[Token], i: int) -> bool:
    """Whether it is an "uh" between two number words, a number and its unit, or a word and its number."""
    if _text(toks, i) not in THINKING:
        return False
    after = _text(toks, i + 1 + (_text(toks, i + 1) == ","))
    before = _text(toks, i - 1)
    if _text(toks, i - 2) in SAID and (len(after) == 1 or len(before) <= LONGEST_LETTERS):
        return after.isalnum()  # "bed CT uh one", "bed fourteen um A"
    if before.isalpha() and not _is_number(before) and (_is_number(after) or after in SAID):
        return True  # "on um eight", "is at um, seven oh eight"
    return (_is_number(before) and (_is_number(after) or after in COUNTED)) or (
        before in MINUTE_WORDS and after in AGO
    )


def _is_number(text: str) -> bool:
    return text in NUMERALS or text[:1].isdecimal()


def _without_hyphens(toks: Sequence[Token]) -> list[Token]:
    """ "nineteen-hundred": nobody says a hyphen."""
    return [
        token
        for k, token in enumerate(toks)
        if token.text != "-" or _text(toks, k - 1) not in NUMERALS or _text(toks, k + 1) not in NUMERALS
    ]


def _noughts(toks: Sequence[Token]) -> list[Token]:
    """ "at O300", "at O-300" and "at 0 700" as "0300" and "0700"."""
    out: list[Token] = []
    for token in toks:
        start = len(out) - 1
        start -= start > 0 and out[start].text == "-" and out[start].glued
        nought = start > 0 and out[start].text in {"o", "0"} and out[start - 1].text in BEFORE_HOUR
        if nought and len(token.text) == 3 and token.is_digits and token.text[0] != "0":
            first = out[start]
            del out[start:]
            out.append(Token("0" + token.text, first.start, token.end, first.glued))
        else:
            out.append(token)
    return out


def _looks(toks: Sequence[Token]) -> list[Token]:
    """ "zero sanguinous" and "serious sanguineous" as serosanguineous; "mark zero sanguineous" stays two."""
    out: list[Token] = []
    for token in toks:
        heard = bool(out) and out[-1].text in SEROUS and token.text.startswith("sang")
        number = heard and out[-1].text == "zero" and _text(out, len(out) - 2) in BEFORE_ZERO
        if heard and not number:
            first = out.pop()
            out.append(Token("serosanguineous", first.start, token.end, first.glued))
        else:
            out.append(token)
    return out


def _text(toks: Sequence[Token], i: int) -> str:
    return toks[i].text if 0 <= i < len(toks) else ""
