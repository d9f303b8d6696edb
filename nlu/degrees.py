"""How near to a number the line is, in the words that every phrase knows: "bang on 1050" is exactly 1050, "a
touch over 1050" about 1050.

Which part of the canister fills, "second chamber at 1340", says nothing of its level and is no answer.
Called by `pipeline`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from .patterns.numerals import NUMERALS
from .tokens import Token

NUMBER = rf"(?= (?:the )?(?:\d|(?:{'|'.join(sorted(NUMERALS))})\b))"
LITTLE = (
    r"(?:only )?(?:just|slightly|fractionally|marginally|barely|a (?:tiny |wee |little )?"
    r"(?:bit|touch|hair|tad|fraction|shade|smidge|smidgen|smidgin|little|whisker|sliver))"
)
WHICH = r"(?:first|second|third|middle|last|[123] (?:st|nd|rd))"
PART = "(?:chamber|column)"
BEHIND = (
    "(?:line|level|mark|reading|reads|shows|left|right|drained|lost|dumped|out|is|was|up to|another|now|of"
    "|it's|its|that's|drain|tube|box|canister|chamber|produced|gave|given|at|to|got)"
)
THEN = "(?: (?:is|at|now|reads|shows|to|:|,|-|=))*"
SAID: tuple[tuple[str, str], ...] = (
    (rf"(?:right )?(?:bang|dead|spot|smack|slap)(?: bang)? on{NUMBER}", "exactly"),
    (rf"{BEHIND} (?:only|just|merely|barely|exactly|precisely){NUMBER}", ""),
    (rf"{LITTLE} (?:over|above|under|below|beneath|shy of|short of){NUMBER}", "about"),
    (rf"(?:in (?:the )?)?{WHICH} {PART}{THEN}(?= \d{{3,4}}(?!\d))", "chamber"),
    (rf"(?<=\d\d\d )(?:mls? )?(?:, |[(] )?(?:in (?:the )?)?{WHICH} {PART}", "inside"),
)
"""What is said, and the word for it; nothing stands for the last of the words. A chamber may be the water
seal's or that of the suction, but for its figure."""
ALL = re.compile("|".join(rf"(?<![^ ])({said})(?![^ ])" for said, _ in SAID))
WORDS = frozenset(
    {
        "only",
        "just",
        "merely",
        "barely",
        "exactly",
        "precisely",
        "on",
        "over",
        "above",
        "under",
        "below",
        "beneath",
        "of",
        "chamber",
        "column",
    }
)
OTHERS = frozenset({"suction", "sxn", "wall", "seal", "regulator", "gauge", "dial"})
"""What is set to a number is so or not; nearly is asked."""


def plain(toks: Sequence[Token]) -> Sequence[Token]:
    """The tokens, with one word for each of these."""
    said = {t.text for t in toks}
    if WORDS.isdisjoint(said) or not OTHERS.isdisjoint(said):
        return toks
    text = " ".join(t.text for t in toks)
    out = list(toks)
    for found in reversed(list(ALL.finditer(text))):
        first = text[: found.start()].count(" ")
        last = first + found.group().count(" ")
        name = SAID[(found.lastindex or 1) - 1][1]
        if name:
            out[first : last + 1] = [toks[first]._replace(text=name, end=toks[last].end)]
        else:
            del out[last]
    return out
