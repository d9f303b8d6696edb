"""Words that sound like a digit, put right where the words around leave nothing else; dictation only.

"for hundred ten" is four hundred and ten, "a thousand ate hundred" eighteen hundred, "seal to centimeters" a
seal of two. Where such a word may have its own work ("line for 20") it stays, and the number is asked.
Called by `heard`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .patterns.clockwords import AGO, AMPM, HOUR_WORDS, MINUTE_WORDS, PAST, TO
from .patterns.leads import BED_SAID
from .patterns.levels import MILLILITRES
from .patterns.numerals import HOMOPHONES, ONES, TENS, ZEROS, is_number
from .tokens import Token, Words, text_at

WRITTEN = {value: word for word, value in ONES.items()}
CENTIMETRES = frozenset({"centimeters", "centimetres", "centimeter", "centimetre", "cm", "cms"})
LED = frozenset({"is", "was", "at", "@", "reads", "line", "mark", "level", "reading", "shows"})
"""Behind these nobody ate."""
SEALED = frozenset({"seal", "waterseal"})
ENDS = frozenset({"", ",", ".", ";", "!", "and", "okay", "ok", "thanks", "please", "with"})
ENDS |= {"bed", "mark", "line", "it"}
BEHIND_NUMBER = MILLILITRES | {"at", "@"}
"""Before these only a number can end: "thirty for at seven"."""
PARTS = frozenset({"half", "quarter"})
EATEN = frozenset({"percent", "%", "meal", "tray", "food", "breakfast", "lunch", "dinner", "supper"})
"""With one of these somebody ate."""


def sounded(toks: Sequence[Token]) -> list[Token]:
    """The tokens with each such word as the digit that was said."""
    return [_digit(t) if _is_digit(toks, k) else t for k, t in enumerate(toks)]


def eats_a_number(toks: Words) -> bool:
    """ "ate sixty for bed nineteen", "bed ate 50": an eight, where nothing says that somebody ate."""
    if "ate" not in toks.words or not EATEN.isdisjoint(toks.words):
        return False
    places = (k for k, text in enumerate(toks.said[: len(toks)]) if text == "ate")
    beside = (toks.said[k + step] for k in places for step in (-1, 1))
    first = toks.said[0] == "ate" and sum(map(is_number, toks.said)) > 1
    return first or any(
        is_number(text) or text in BED_SAID | {"is", "past", "to", "under"} for text in beside
    )


def _digit(token: Token) -> Token:
    return token._replace(text=WRITTEN[HOMOPHONES[token.text]])


def _is_digit(toks: Sequence[Token], i: int) -> bool:
    text = toks[i].text
    if text == "ate" and text_at(toks, i - 1) in BED_SAID:
        return EATEN.isdisjoint(t.text for t in toks)
    if text not in HOMOPHONES or text_at(toks, i - 1) in BED_SAID:
        return False  # behind the word bed it is read as its number anyway
    return text in {"won", "fore"} or _is_in_number(toks, i) or _is_counted(toks, i) or _is_hour(toks, i)


def _is_in_number(toks: Sequence[Token], i: int) -> bool:
    """ "for hundred", "thousand to hundred", "thirty for at", "line six ate five", "one oh ate oh"."""
    before, text, after = (text_at(toks, k) for k in (i - 1, i, i + 1))
    if text == "ate" and not EATEN.isdisjoint(t.text for t in toks):
        return False  # "twelve ate fifty percent of lunch"
    if after == "hundred":
        return text != "to" or before == "thousand"
    if is_number(before) and after in BEHIND_NUMBER:
        return True
    if text == "ate":
        if after.isdecimal() and len(after) == len("1400") and text_at(toks, i - 2) in BED_SAID:
            return False  # "bed 9 ate 1400": at that time, and its line is missing
        if before == "hundred" and is_number(after):
            return False  # "six hundred ate six thirty": at that time, or 608
        told = before in LED or is_number(before)
        return before in ZEROS | TENS.keys() or after in ZEROS or (told and is_number(after))
    return before in ZEROS and after in ZEROS


def _is_counted(toks: Sequence[Token], i: int) -> bool:
    """ "seal to centimeters", "for hours ago", "seal to and no leak"."""
    after = text_at(toks, i + 1)
    ago = after in HOUR_WORDS | MINUTE_WORDS and text_at(toks, i + 2) in AGO
    sealed = text_at(toks, i - 1) in SEALED and after in ENDS
    return after in CENTIMETRES or ago or sealed


def _is_hour(toks: Sequence[Token], i: int) -> bool:
    """ "at ate", "half past for", "quarter to ate"; but "at to" may have lost its time."""
    if toks[i].text == "to":
        return False
    before, counted, after = (text_at(toks, k) for k in (i - 1, i - 2, i + 1))
    dotted = after in {"a", "p"} and text_at(toks, i + 2) in {".", "m"}
    whole = dotted or after in ENDS or after in AMPM or after in {"o'clock", "oclock"}
    past = before in PAST | TO and (counted in PARTS or is_number(counted))
    return whole and (past or before in {"at", "@"})
