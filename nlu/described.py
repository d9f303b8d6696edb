"""What was found, described: "not a bubble in sight", "the water is moving with the breathing".

Each is put as its short name, with a "no" where it is denied; left as said where another thing moves ("his
chest") or what is behind takes it back ("not a bubble until he coughed"). Called by `pipeline`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from .patterns.numerals import NUMERALS
from .tokens import Token

BUBBLE = r"(?:bubbles?|leaks?|air leaks?|airleaks?|bubbling)"
SIGN = r"(?:signs?|hint|trace|evidence|suggestion)"
SIGHT = r"(?: in sight| to be seen| anywhere| at all| whatsoever| seen)"
WHOLE = r"(?= (?:[,.;!)-]|and|at|this|on|in|bed)(?: |$)|$)"
WATER = r"(?:water(?: level)?|column|water column|fluid|meniscus|float|ball)"
BREATH = (
    r"(?:with|on|when|as|in time with) (?:the |his |her |each |every |their )?"
    r"(?:breathing|breaths?|respirations?|resps|inspiration|he breathes|she breathes|he is breathing)"
)
MOVES = (
    r"(?:(?:moving|moves|going|goes|bobbing|bobs) up and down|moving|moves|rising and falling|rises and falls"
    r"|bobbing|bobs)"
)
SET_TO = r"(?:(?<= [1234][05] )|(?<= 5 )|(?<=ten )|(?<=teen )|(?<=twenty )|(?<=thirty )|(?<=forty ))"
"""What a suction dial is set to."""


class Described(NamedTuple):
    """What is said so, and its short name; where a part of it is called `x` that alone is put otherwise."""

    words: re.Pattern[str]
    named: tuple[str, ...]


def _of(words: str, *named: str) -> Described:
    return Described(re.compile(rf"(?<![^ ])(?:{words})(?![^ ])"), named)


FOUND = (
    _of(rf"not (?:a|one|a single|the slightest|even a|even one) {BUBBLE}{SIGHT}?{WHOLE}", "no", "bubbles"),
    _of(
        rf"(?:not a|no|not any|without any|without a) {SIGN} of (?:an?y? )?{BUBBLE}{SIGHT}?{WHOLE}",
        "no",
        "bubbles",
    ),
    _of(rf"(?:no|zero) {BUBBLE}{SIGHT}{WHOLE}", "no", "bubbles"),
    _of(rf"(?<!at )(?<!is )(?<!was )zero {BUBBLE}{WHOLE}", "no", "bubbles"),
    _of(
        rf"(?:the )?{WATER} (?:is |was |still )?(?:not|isn't|isnt|wasn't) {MOVES} {BREATH}{WHOLE}",
        "not",
        "swinging",
    ),
    _of(rf"(?:the )?{WATER} (?:is |was )?(?:still |nicely )?{MOVES} {BREATH}{WHOLE}", "swinging"),
    _of(r"back on (?:its|it's|it is)(?= \d)", "back", "on", ","),
    _of(rf"{SET_TO}on (?:the |its |his |her )?(?:suction )?dial", "of", "suction"),
)
NUMBER = rf"(?:\d+[a-z]?|{'|'.join(sorted(NUMERALS))})"
LINE = r"(?:line|mark|reading|level|number|one)"
SIGN_OF = r"(?:tidal\w+|swinging|bubbling|fluctuating|oscillating|draining)"
SINCE = r"(?= (?:since|from|out|in|for|this|all|drained|came) )"
PUT = (
    _of(
        rf"{LINE} (?:for|on|of|in) (?:bed|room|rm) {NUMBER}(?: {NUMBER})? (?P<x>(?:, )?(?:it's|its|it is))"
        rf"(?= (?:now |still |at )?{NUMBER})",
        "is",
    ),
    _of(r"\d{4} (?P<x>mark|line|reading)(?= \d{1,3} = \d)", "bed"),
    _of(r"(?:which|what) beds have i got (?P<x>(?:chest )?(?:drains|tubes)(?: in)?)(?= [?]|$)"),
    _of(
        rf"(?<=\d )(?:is not|isn't|isnt|has stopped|stopped) {SIGN_OF}(?: anymore| any more| now)? "
        r"(?P<x>[?](?: [?])+)(?= \S)",
        ".",
    ),
    _of(r"(?P<x>sat)(?= (?:right )?on (?:the|his|her|it|top|their))", "sitting"),
    _of(r"nothing .{0,60}(?P<x>, not a (?:single )?drop)(?= [,.;!]|$)"),
    _of(rf"not a (?:single )?drop(?: of anything)?{SINCE}", "nothing"),
    _of(rf"nothing (?P<x>at all|whatsoever){SINCE}"),
    _of(r"(?:plans?|planning|wants?|hopes?|hoping) to (?:\w+ ){1,3}(?P<x>today|tonight)(?= [,.;!]|$)"),
    _of(r"(?:the )?whole (?:thing|lot)", "it"),
)
_STARTS = """
dial back not no zero without water column fluid meniscus float ball it's its it = beds ? sat whole
nothing drop today tonight
"""
STARTS = frozenset(_STARTS.split())
"""Where none of these words is, there is nothing to look for."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each of these by its short name."""
    if STARTS.isdisjoint(t.text for t in toks):
        return toks
    for words, named in (*FOUND, *PUT):
        toks = _put(toks, words, named)
    return toks


def _put(toks: Sequence[Token], words: re.Pattern[str], named: tuple[str, ...]) -> Sequence[Token]:
    text = " ".join(t.text for t in toks)
    found = words.search(text)
    if found is None:
        return toks
    part = "x" if "x" in words.groupindex else 0
    first = text[: found.start(part)].count(" ")
    last = first + found.group(part).count(" ")
    begin, end = toks[first], toks[last]
    put = [Token(name, begin.start, end.end, begin.glued and not k) for k, name in enumerate(named)]
    return [*toks[:first], *put, *toks[last + 1 :]]
