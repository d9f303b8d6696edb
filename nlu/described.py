"""What was found, described: "not a bubble in sight", "the water is moving with the breathing".

Each is put as its short name, with a "no" where it is denied; left as said where another thing moves ("his
chest") or what is behind takes it back ("not a bubble until he coughed"). Called by `pipeline`.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
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

NO_WALL = r"(?! (?:suction|chart|board|sheet|clock|tape|paper|of) )"
"""Behind these a wall is none of a suction."""


SAME = "*"
"""In a short name: the word that stands there."""


class Described(NamedTuple):
    """What is said so, and its short name; where a part of it is called `x` that alone is put otherwise."""

    words: re.Pattern[str]
    named: tuple[str, ...]


def said_so(words: str, *named: str) -> Described:
    """What is said so, as whole words, and its short name."""
    return Described(re.compile(rf"(?<![^ ])(?:{words})(?![^ ])"), named)


FOUND = (
    said_so(
        rf"not (?:a|one|a single|the slightest|even a|even one) {BUBBLE}{SIGHT}?{WHOLE}", "no", "bubbles"
    ),
    said_so(
        rf"(?:not a|no|not any|without any|without a) {SIGN} of (?:an?y? )?{BUBBLE}{SIGHT}?{WHOLE}",
        "no",
        "bubbles",
    ),
    said_so(rf"(?:no|zero) {BUBBLE}{SIGHT}{WHOLE}", "no", "bubbles"),
    said_so(rf"(?<!at )(?<!is )(?<!was )zero {BUBBLE}{WHOLE}", "no", "bubbles"),
    said_so(
        rf"(?:the )?{WATER} (?:is |was |still )?(?:not|isn't|isnt|wasn't) {MOVES} {BREATH}{WHOLE}",
        "not",
        "swinging",
    ),
    said_so(rf"(?:the )?{WATER} (?:is |was )?(?:still |nicely )?{MOVES} {BREATH}{WHOLE}", "swinging"),
    said_so(r"back on (?:its|it's|it is)(?= \d)", "back", "on", ","),
    said_so(rf"{SET_TO}on (?:the |its |his |her )?(?:suction )?dial", "of", "suction"),
    said_so(
        rf"(?<=\d )(?:showing )?on (?:the |its )?(?:wall|(?:wall )?(?:gauge|regulator)){NO_WALL}", "mmhg"
    ),
)
NUMBER = rf"(?:\d+[a-z]?|{'|'.join(sorted(NUMERALS))})"
BOX = r"(?:drain|box|canister|bottle|chamber|system|unit)"
RAN = r"(?:ran|walked|backed|crashed|drove|rolled|banged|bashed|barged|reversed|stumbled|bumped)"
WHOSE = rf"(?:the|his|her|my|our|(?:bed )?{NUMBER}(?: ' s| 's)?)"
BUMPED = ("bumped", "into")
RESTING = (
    r"(?:(?:are|were|have|had|now|still|all|been|just) )*(?:had|ate|asleep|sleeping|resting|slept|awake"
    r"|eating|eaten|napping|snoring|comfy|comfortable|settled|lunch|dinner|breakfast|tea|meds)"
)
"""What several patients are told to do or to have had, and no drain."""
LINE = r"(?:line|mark|reading|level|number|one)"
SIGN_OF = r"(?:tidal\w+|swinging|bubbling|fluctuating|oscillating|draining)"
SINCE = r"(?= (?:since|from|out|in|for|this|all|drained|came) )"
PUT = (
    said_so(
        rf"{LINE} (?:for|on|of|in) (?:bed|room|rm) {NUMBER}(?: {NUMBER})? (?P<x>(?:, )?(?:it's|its|it is))"
        rf"(?= (?:now |still |at )?{NUMBER})",
        "is",
    ),
    said_so(r"\d{4} (?P<x>mark|line|reading)(?= \d{1,3} = \d)", "bed"),
    said_so(r"(?:which|what) beds have i got (?P<x>(?:chest )?(?:drains|tubes)(?: in)?)(?= [?]|$)"),
    said_so(
        rf"(?<=\d )(?:is not|isn't|isnt|has stopped|stopped) {SIGN_OF}(?: anymore| any more| now)? "
        r"(?P<x>[?](?: [?])+)(?= \S)",
        ".",
    ),
    said_so(r"(?P<x>sat)(?= (?:right )?on (?:the|his|her|it|top|their))", "sitting"),
    said_so(r"nothing .{0,60}(?P<x>, not a (?:single )?drop)(?= [,.;!]|$)"),
    said_so(rf"not a (?:single )?drop(?: of anything)?{SINCE}", "nothing"),
    said_so(rf"nothing (?P<x>at all|whatsoever){SINCE}"),
    said_so(r"(?:plans?|planning|wants?|hopes?|hoping) to (?:\w+ ){1,3}(?P<x>today|tonight)(?= [,.;!]|$)"),
    said_so(r"(?:the )?whole (?:thing|lot)", "it"),
    said_so(
        r"the (?P<x>back)(?= (?:hall|hallway|corridor|bay|end|row|rooms?|station|section|half|pod)(?: |$))",
        "rear",
    ),
    said_so(r"(?:nearly|almost|practically|just about) (?P<x>(?:up )?to the (?:brim|top|rim))", "full"),
    said_so(
        rf"(?P<x>{RAN}(?: straight| right| bang| smack)? in ?to)(?= {WHOSE} (?:chest )?{BOX}(?: |$))", *BUMPED
    ),
    said_so(rf"{BOX} (?:and|so|,|then) it (?P<x>went (?:over|flying))(?! to | on )", "tipped", "over"),
    said_so(
        rf"(?<=\d )(?:, )?(?P<x>(?:and )?(?:all|all the) (?:two|three|four|five|six|of them))"
        rf"(?= {RESTING}(?: |$))",
        "everyone",
    ),
)
_STARTS = """
dial back not no zero without water column fluid meniscus float ball it's its it = beds ? sat whole
wall gauge regulator nothing drop today tonight all to into in back
"""
STARTS = frozenset(_STARTS.split())
"""Where none of these words is, there is nothing to look for."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, each of these by its short name."""
    if STARTS.isdisjoint([t.text for t in toks]):
        return toks
    return shortly(toks, (*FOUND, *PUT))


def shortly(toks: Sequence[Token], rules: Iterable[Described]) -> Sequence[Token]:
    """The tokens, by its short name the first place where each of these is said."""
    text = " ".join([t.text for t in toks])
    for words, named in rules:
        if found := words.search(text):
            toks = _put(toks, found, named)
            text = " ".join([t.text for t in toks])
    return toks


def _put(toks: Sequence[Token], found: re.Match[str], named: tuple[str, ...]) -> Sequence[Token]:
    part = "x" if "x" in found.re.groupindex else 0
    first = found.string[: found.start(part)].count(" ")
    last = first + found.group(part).count(" ")
    begin, end = toks[first], toks[last]
    said = [begin.text if name == SAME else name for name in named]
    put = [Token(name, begin.start, end.end, begin.glued and not k) for k, name in enumerate(said)]
    return [*toks[:first], *put, *toks[last + 1 :]]
