"""What is to be done with a line that was sent: "move the 1800 to bed 6", "void the 0930 mark".

The same words are said of patients and of tubes; a line, its time or "my last" makes them a correction or a
withdrawal. Called by `recast`.
"""

from __future__ import annotations

from .clock import clocks
from .corrections import MOVING
from .items import FULL_HOUR
from .numbers import Toks, starts_number, word
from .patterns.leads import BED_WORDS
from .pipeline import Cue, in_order

POLITE = frozenset({"please", "pls", "plz", "can", "could", "you", "u", "we"})
MARKS = frozenset({"mark", "reading", "entry"})
TAKEN_BACK = {
    "remove": MARKS | {"duplicate", "dup"},
    "void": frozenset({"mark", "reading", "entry", "line", "level"}),
    "forget": frozenset({"mark", "reading", "entry", "line"}),
    **dict.fromkeys(("kill", "throw", "toss", "pull", "drop"), MARKS),
}
"""Words that take back one of these, and mean something else alone: a tube is removed, a patient voids."""
TWICE = frozenset({"twice", "doubled", "duplicated", "double"})
TAKING = frozenset({"take", "remove", "drop", "pull", "bin", "delete", "void", "scrap", "kill", "scratch"})
TUBES = frozenset({"drain", "drains", "tube", "tubes", "chest", "clamp", "clamps"})
LINE_OF = frozenset({"bin", "drop", "lose", "ditch", "scrub", "kill", "nix", "toss", "chuck", "dump", "wipe"})
"""With "the 1800" or "my 1800" behind them these take a line back."""
ASKED_FOR = MOVING | TAKEN_BACK.keys()
BEFORE_ASKED = POLITE | {",", ".", ":", "-", "but", "so", "to", "and", "then"}
LINED = MARKS | {"line"}
LINE_REACH = 6
"""How many words behind them the line is named."""
LEVEL = 3
"""Digits of a level or of a time, and of few beds."""


def with_taken_back(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "pls remove the 1100 mark on 18", "void 10's 0930 line": of a line that is named, it is taken back."""
    if not TWICE.isdisjoint(toks.words) and (one := _one_of_two(toks)):
        return in_order(
            [Cue("kind", "withdrawn", *one), *(c for c in cues if not one[0] <= c.start < one[1])]
        )
    if toks.words.isdisjoint(LINE_OF) and toks.words.isdisjoint(TAKEN_BACK):
        return cues
    first = _first(toks)
    if word(toks, first) in LINE_OF and word(toks, first + 1) in {"the", "my"} and _is_hour(toks, first + 2):
        return in_order([Cue("kind", "withdrawn", first, first + 1), *(c for c in cues if c.start != first)])
    if toks.words.isdisjoint(TAKEN_BACK):
        return cues
    lines = TAKEN_BACK.get(word(toks, first), frozenset())
    of_bed = word(toks, first) == "void" and word(toks, first + 1) in BED_WORDS
    named = not lines.isdisjoint(toks.said[first + 1 : first + 1 + LINE_REACH])
    named &= lines is not MARKS or word(toks, first + 1) in {"the", "my", "that", "out"}
    if not (of_bed or named) or "ml" in toks.words:
        return cues
    taken = Cue("kind", "withdrawn", first, first + 1)
    return in_order([taken, *(c for c in cues if c.start != first)])


def _is_hour(toks: Toks, k: int) -> bool:
    """ "bin the 1800 for 8", "kill the 6:40pm on 8": a whole time, with the bed behind it."""
    whole = len(word(toks, k)) == FULL_HOUR
    ends = {end for end, _ in clocks(toks, k) if whole or end > k + 2}
    return any(word(toks, end) in {"on", "for", "from", "in", "line", "mark", "one"} for end in ends)


def _one_of_two(toks: Toks) -> tuple[int, int] | None:
    """ "my 2000 on 26 is in twice, take one out": the words that take back one of the two."""
    for k, text in enumerate(toks.said if TUBES.isdisjoint(toks.words) else ()):
        if text in TAKING and word(toks, k + 1) == "one":
            out = word(toks, k + 2) in {"out", "off", "away", "please"}
            return k, k + 2 + out
    return None


def _first(toks: Toks) -> int:
    """Where what is asked for begins."""
    first = next((k for k, said in enumerate(toks.said) if said not in POLITE), len(toks))
    head = next((k for k in range(first, len(toks)) if starts_number(toks, k)), len(toks))
    behind = (k + 1 for k in range(first, head) if word(toks, k) in BEFORE_ASKED)
    return next((k for k in behind if word(toks, k) in ASKED_FOR), first)  # "sorry, move the 1800"


def with_moved_line(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "move the 1800 mark from 5 to 6", "move my last entry to bed 6": a line is put right, nobody moves."""
    if toks.words.isdisjoint(MOVING):
        return cues
    first = _first(toks)
    to = next((k for k in range(first, len(toks)) if word(toks, k) in {"to", "from", "into", "onto"}), 0)
    said = toks.said[first + 1 : to]
    numbers = [k for k, w in enumerate(said) if w.isdecimal() and len(w) >= LEVEL]
    pointed = numbers[:1] == [1] and said[0] in {"the", "my", "that", "this"}
    if word(toks, first) == "put" and not (pointed and _is_from_bed_to_bed(toks, to)):
        return cues
    line = not LINED.isdisjoint(said) and (numbers or not (MARKS | {"last"}).isdisjoint(said))
    timed = sum(map(str.isdecimal, said)) > 1 and not {"at", "@"} & set(said)  # "move bed 5 1800 to bed 6"
    if word(toks, first) not in MOVING or not (pointed or line or timed or said == ("my", "last")):
        return cues
    kept = [c for c in cues if c.start > first and (c.label != "ask" or c.start >= to)]
    moved = [Cue("kind", "corrected", first, first + 1), *kept]
    return (*(c for c in cues if c.end <= first), *moved)


def _is_from_bed_to_bed(toks: Toks, k: int) -> bool:
    """ "put the 1900 from bed 3 under bed 8"; "put the 340 on bed 3" tells a line."""
    return word(toks, k) == "from" and sum(w in BED_WORDS for w in toks.said[k:]) > 1
