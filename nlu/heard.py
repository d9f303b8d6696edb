"""What a recogniser writes for a word of the ward, put right before anything is read; dictation only.

Only where the words around leave nothing else: "dead twelve mark ..." is bed twelve. A number is
never changed, but a word that can only be a digit is (`soundalikes`), and digits are joined (`figures`).
"""

from __future__ import annotations

from collections.abc import Sequence

from .falsestops import flowing
from .figures import figures
from .patterns.clockwords import AGO, AMPM, HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import BED_SAID
from .patterns.numerals import HOMOPHONES, NUMERALS, ONES, is_number
from .soundalikes import sounded
from .tokens import Token, text_at
from .wardwords import put_right

BEDS = frozenset(
    {"bad", "bet", "bit", "dead", "bead", "bid", "bent", "med", "met", "mad", "ped", "fed", "red", "beth"},
)
"""Near enough to "bed" that before a number they are nothing else."""
STARTS = frozenset({"at", "ed", "that", "get", "add", "it", *BEDS})
"""For "bed" at the start of a mark; before any other number they may be what they say."""
SURE = frozenset({"bad", "bet", "bit", "bid", "bead", "bent", "beth"})
"""These are "bed" where another bed was named, too: "bed 4 line 80 bet 9 line 40"."""
BEFORE_BIT = frozenset({"a", "little", "not", "too", "very", "quite", "tad"})
LINE = frozenset({"mark", "marks", "marked", "line", "level", "reading"})
SIDES = frozenset({"left", "right"})
TOLD = LINE | SIDES | {"is", "it's", "its", "at", "reads", "was", "chest", "canister", "bottle", "box"}
"""Behind the label of a bed."""
PREFIXES = frozenset({"c", "t", "ct"})
LONGEST_PREFIX = 2
SIDES_OF_ROOM = frozenset("ab")
SEROUS = frozenset({"zero", "sero", "serious", "serous", "sarah", "sera", "cirrus", "sierra"})
"""Before "sanguineous" these are the first half of that word."""
BEFORE_ZERO = LINE | {"at", "@", "and", "add", "is", "of", "was"}
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
SPOKEN_SIGNS = frozenset({"colon", "dash", "semicolon"})
SPOKEN_STOPS = SPOKEN_SIGNS | {"comma", "period", "stop"}
_BEFORE_PERIOD = (
    "a the this that these any one each every per over same hour hourly time rest day last long short"
)
BEFORE_PERIOD = frozenset(_BEFORE_PERIOD.split())
"""Behind these a period is a length of time."""
SPELT = frozenset({"icu", "itu", "hdu", "ccu", "mri", "uss", "bp"})
SPELT_LETTERS = (2, 3)
OF_LETTER = frozenset({"tube", "tubes", "drain", "drains", "bed", "beds"})
"""Behind these a letter is a name."""
LONGEST_LETTERS = 3
"""Letters of a label before its number: CT1."""
MOST_WORDS = 3
"""A bed has at most so many number words."""


def plain(toks: Sequence[Token]) -> list[Token]:
    """The tokens with what was misheard put right, each still at its place in the message."""
    joined = sounded(
        _looks(put_right(figures(_flowing(_spelt(_thousands(flowing(_stopped(_timed(toks)))))))))
    )
    named = any(t.text in BED_SAID for t in joined)
    return [_bed(joined, k, named=named) for k in range(len(joined))]


def _stopped(toks: Sequence[Token]) -> Sequence[Token]:
    """ "mark three thirty comma no leak period": the stops that were spoken; "over a period" is none."""
    if SPOKEN_STOPS.isdisjoint([t.text for t in toks]):
        return toks
    out: list[Token] = []
    for k, token in enumerate(toks):
        if token.text == "stop" and out and out[-1].text == "full":
            out[-1] = out[-1]._replace(text=".", end=token.end, glued=True)
        elif token.text == "comma" or (token.text in SPOKEN_SIGNS and _joins_values(toks, k)):
            out.append(token._replace(text=",", glued=True))
        elif token.text == "period" and not (
            text_at(toks, k - 1) in BEFORE_PERIOD or text_at(toks, k + 1) == "of"
        ):
            out.append(token._replace(text=".", glued=True))
        else:
            out.append(token)
    return out


def _joins_values(toks: Sequence[Token], k: int) -> bool:
    """ "bed nine colon four fifty dash nine pm": between a bed or a side and a number, or two numbers."""
    before, after = text_at(toks, k - 1), text_at(toks, k + 1)
    return (is_number(before) or before in SIDES) and (is_number(after) or after in LINE | SIDES)


def _timed(toks: Sequence[Token]) -> Sequence[Token]:
    """ "mark 640, time now": it is of now; "time now 1905" says when that is."""
    last = len(toks) - 1 - (text_at(toks, len(toks) - 1) in {".", "!"})
    is_now = text_at(toks, last) == "now"
    start = last - 1 - (text_at(toks, last - 1) == "is")
    before = text_at(toks, start - 1)
    behind = before in {",", ".", "hundred", *COUNTED} or is_number(before)
    if not (is_now and behind) or text_at(toks, start) != "time":
        return toks
    return [*toks[:start], *toks[last:]]


def _spelt(toks: Sequence[Token]) -> Sequence[Token]:
    """ "went to i c u": a place whose letters are said one by one."""
    if sum([len(t.text) == 1 for t in toks]) < min(SPELT_LETTERS):
        return toks
    out: list[Token] = []
    for token in toks:
        out.append(token)
        for letters in SPELT_LETTERS:
            name = "".join(t.text for t in out[-letters:] if len(t.text) == 1)
            if (
                name in SPELT
                and len(name) == letters
                and text_at(out, len(out) - letters - 1) not in OF_LETTER
            ):
                first = out[-letters]
                out[-letters:] = [Token(name, first.start, token.end, first.glued)]
    return out if len(out) < len(toks) else toks


def _thousands(toks: Sequence[Token]) -> Sequence[Token]:
    """ "one thousand oh five": one number; "one thousand oh five hundred" ends with the time."""
    if "thousand" not in [t.text for t in toks]:
        return toks
    return [t._replace(text="and") if _is_nought_within(toks, k) else t for k, t in enumerate(toks)]


def _is_nought_within(toks: Sequence[Token], k: int) -> bool:
    within = (
        toks[k].text in {"oh", "o"} and text_at(toks, k - 1) == "thousand" and text_at(toks, k + 1) in ONES
    )
    return within and not (is_number(text_at(toks, k + 2)) or text_at(toks, k + 2) in {"oh", "o", ":"})


def _bed(toks: Sequence[Token], i: int, *, named: bool) -> Token:
    """The word at a place, or "bed" that it stands for; where one is `named`, only before its line."""
    token = toks[i]
    if token.text not in STARTS or text_at(toks, i - 1) in BEFORE_BIT:
        return token
    label = _label(toks, i + 1)
    behind = text_at(toks, label + (text_at(toks, label) == ","))
    alone = is_number(text_at(toks, i + 1)) and not named
    said = behind in TOLD or text_at(toks, i - 1) in {"on", "in", "for"}
    told = label > i + 1 and said and (token.text in SURE or not named)
    if (token.text in BEDS and (told or alone)) or (i == 0 and alone and _is_mark(toks, 1)):
        return token._replace(text="bed")
    return token


def _label(toks: Sequence[Token], i: int) -> int:
    """Where the label of a bed ends that begins here: "ate", "14 b", "c t 1"; the same place for none."""
    start = i
    while i - start < LONGEST_PREFIX and text_at(toks, i) in PREFIXES:
        i += 1
    end = i + (text_at(toks, i) in HOMOPHONES)
    while end - i < MOST_WORDS and is_number(text_at(toks, end)):
        end += 1
    return start if end == i else end + (text_at(toks, end) in SIDES_OF_ROOM)


def _is_mark(toks: Sequence[Token], i: int) -> bool:
    """Whether a bed, a line and the time of it follow: "at 12 mark 1050 at 1900"."""
    end = i
    while end - i < MOST_WORDS and (text_at(toks, end) in NUMERALS or text_at(toks, end)[:1].isdecimal()):
        end += 1
    end += text_at(toks, end) in SIDES
    timed = any(t.text in {"at", "ago", "now", *AMPM} for t in toks[end + 1 :])
    return text_at(toks, end) in LINE and timed


def _flowing(toks: Sequence[Token]) -> Sequence[Token]:
    """ "three uh, thirty five pm": somebody who thinks inside a number has not ended it."""
    kept = [
        k
        for k in range(len(toks))
        if not (_thinks(toks, k) or (text_at(toks, k) == "," and _thinks(toks, k - 1)))
    ]
    return [toks[k] for k in kept] if len(kept) < len(toks) else toks


def _thinks(toks: Sequence[Token], i: int) -> bool:
    """Whether it is an "uh" between two number words, a number and its unit, or a word and its number."""
    if text_at(toks, i) not in THINKING:
        return False
    after = text_at(toks, i + 1 + (text_at(toks, i + 1) == ","))
    before = text_at(toks, i - 1)
    if text_at(toks, i - 2) in BED_SAID and (len(after) == 1 or len(before) <= LONGEST_LETTERS):
        return after.isalnum()  # "bed CT uh one", "bed fourteen um A"
    if before.isalpha() and not is_number(before) and (is_number(after) or after in BED_SAID):
        return True  # "on um eight", "is at um, seven oh eight"
    return (is_number(before) and (is_number(after) or after in COUNTED)) or (
        before in MINUTE_WORDS and after in AGO
    )


def _looks(toks: Sequence[Token]) -> list[Token]:
    """ "zero sanguinous" and "serious sanguineous" as serosanguineous; "mark zero sanguineous" stays two."""
    out: list[Token] = []
    for token in toks:
        heard = bool(out) and out[-1].text in SEROUS and token.text.startswith("sang")
        number = heard and out[-1].text == "zero" and text_at(out, len(out) - 2) in BEFORE_ZERO
        if heard and not number:
            first = out.pop()
            out.append(Token("serosanguineous", first.start, token.end, first.glued))
        else:
            out.append(token)
    return out
