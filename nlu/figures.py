"""Digits that a recogniser sets apart, joined: "at O-300", "o 8 hundred", "2-15 pm", "1-0-9-0".

Nobody says a hyphen. No digit is changed; a nought written as a letter is joined to its hour. Called by
`heard`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .clockcommas import without_commas
from .patterns.clockwords import AMPM, HOUR_WORDS
from .patterns.numerals import NUMERALS
from .tokens import Token, text_at

BEFORE_HOUR = frozenset({"at", "@", "and", "add", "both", "of", "is", "all", "that", "had"})
NOUGHTS = frozenset({"o", "oh", "0"})
SUFFIXES = frozenset(AMPM) | HOUR_WORDS
DIALS = frozenset({"suction", "wall", "dial", "vacuum", "gauge"})
NOON, HOURS, MINUTES = 12, 24, 60
SPELT = 5
"""Signs of three single digits with a hyphen between each: no range has so many."""


def figures(toks: Sequence[Token]) -> list[Token]:
    """The tokens, digits of one number or time as one, each at its place in the message."""
    return _noughts(_dashed(without_commas(_without_hyphens(toks))))


def _without_hyphens(toks: Sequence[Token]) -> list[Token]:
    """ "nineteen-hundred"."""
    return [
        token
        for k, token in enumerate(toks)
        if token.text != "-" or text_at(toks, k - 1) not in NUMERALS or text_at(toks, k + 1) not in NUMERALS
    ]


def _dashed(toks: Sequence[Token]) -> list[Token]:
    """ "2-15 pm" as "2:15 pm", and "1-0-9-0" as "1090"."""
    if not any(token.text == "-" for token in toks):
        return list(toks)
    out: list[Token] = []
    k = 0
    while k < len(toks):
        end = _spelt(toks, k)
        if end - k >= SPELT:
            _join(out, "".join(t.text for t in toks[k:end:2]), toks[k:end])
            k = end
        else:
            out.append(toks[k]._replace(text=":") if _parts_hour(toks, k) else toks[k])
            k += 1
    return out


def _spelt(toks: Sequence[Token], i: int) -> int:
    """Where single digits with a hyphen between each end."""
    if not _is_digit(toks, i) or text_at(toks, i - 1) == "-":
        return i
    end = i + 1
    while text_at(toks, end) == "-" and toks[end].glued and _is_digit(toks, end + 1) and toks[end + 1].glued:
        end += 2
    return end


def _parts_hour(toks: Sequence[Token], i: int) -> bool:
    """Whether it is the hyphen of "2-15 a.m.", "20-45 hrs"."""
    hour, minute = text_at(toks, i - 1), text_at(toks, i + 1)
    if toks[i].text != "-" or not (hour.isdecimal() and minute.isdecimal() and len(minute) == len("15")):
        return False
    glued = toks[i].glued and toks[i + 1].glued and text_at(toks, i - 2) != "-"
    whole = glued and len(hour) <= len("20") and int(hour) < HOURS and int(minute) < MINUTES
    return whole and (_is_suffix(toks, i + 2) or (int(hour) > NOON and _is_timed(toks, i - 2)))


def _is_suffix(toks: Sequence[Token], i: int) -> bool:
    """Whether "p.m.", "hours", "at night" or "in the morning" stands here."""
    text, after = text_at(toks, i), text_at(toks, i + 1)
    dotted = text in {"a", "p"} and after in {".", "m"}
    return dotted or text in SUFFIXES or (text, after) in {("at", "night"), ("in", "the")}


def _is_timed(toks: Sequence[Token], i: int) -> bool:
    """ "at 18-30", "time 14-30"; but "suction at 20-25" is a range."""
    return text_at(toks, i) in {"at", "@", "time", "of"} and DIALS.isdisjoint(t.text for t in toks[:i][-3:])


def _noughts(toks: Sequence[Token]) -> list[Token]:
    """ "at O300", "at O-300" and "at 0 700" as "0300" and "0700"; "o 8 hundred" and "05 hundred" as well."""
    if not any(token.text in NOUGHTS or token.text[0] == "0" for token in toks):
        return list(toks)
    out: list[Token] = []
    for token in toks:
        out.append(token)
        start = len(out) - 2
        start -= start > 0 and out[start].text == "-" and out[start].glued
        before = text_at(out, start)
        if len(token.text) == len("300") and token.is_digits and token.text[0] != "0" and _leads(out, start):
            _join(out, "0" + token.text, _taken(out, start))
        elif token.text == "hundred" and len(before) == 1 and _leads(out, start - 1):
            if before.isdecimal():
                _join(out, f"0{before}00", _taken(out, start - 1))
        elif token.text == "hundred" and before[:1] == "0" and len(before) == len("05"):
            _join(out, before + "00", _taken(out, start))
    return out


def _leads(toks: Sequence[Token], i: int) -> bool:
    """Whether a nought stands here that begins a time."""
    return i > 0 and toks[i].text in NOUGHTS and toks[i - 1].text in BEFORE_HOUR


def _taken(out: list[Token], start: int) -> list[Token]:
    taken = out[start:]
    del out[start:]
    return taken


def _join(out: list[Token], text: str, parts: Sequence[Token]) -> None:
    out.append(Token(text, parts[0].start, parts[-1].end, parts[0].glued))


def _is_digit(toks: Sequence[Token], i: int) -> bool:
    return text_at(toks, i).isdecimal() and len(text_at(toks, i)) == 1
