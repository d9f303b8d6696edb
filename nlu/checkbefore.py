"""What a check was before its value of now: "suction 20, was 10 this am", "leak 2/7, 3/7 last night".

Told behind the check that it is of, it is no second value and no time of the first. Called by `framed`,
which leaves it out where a message would be asked.
"""

from __future__ import annotations

from .again import Again, Span
from .goings import past
from .numbers import Toks, is_digits, word

MOST = {"seal": 10, "suction": 60, "wall": 300, "dial": 60, "leakgrade": 10, "leak": 10}
"""What each check may have read, in its unit; a larger number may be a line."""
SMALL = 10
"""A number up to this is no line either where no word says that it was so."""
STOPS = frozenset({",", ";", ".", "-", "(", "and", "but", "\u2013"})
PAST = frozenset({"was", "were", "previously", "prev", "formerly", "before"})
LEADS = PAST | frozenset(
    ["it", "its", "up", "down", "had", "been", "from", "a", "at", "on", "only", "about", "grade"]
)
UNITS = frozenset({"cm", "cms", "cmh2o", "mmhg", "/"})
PARTS = frozenset(
    ["am", "pm", "morning", "afternoon", "evening", "night", "shift", "nights", "days", "report"]
)
_EARLIER = """
earlier before yesterday previously overnight handover handoff then this last on at the in start of
"""
WHEN = PARTS | frozenset(_EARLIER.split())
SURE = PARTS | frozenset({"earlier", "before", "yesterday", "previously", "overnight", "handover", "handoff"})
STARTS = STOPS | PAST | {"up", "down"}
MOVED = (("up", "from"), ("down", "from"))
MOST_LEADS = 5


def checks_before(again: Again) -> list[Span]:
    """What the message says of how its checks were before, in order."""
    toks = again.toks
    checks = {cue.end: MOST[cue.label] for cue in again.cues if cue.label in MOST}
    found: list[Span] = []
    for k in range(min(checks, default=len(toks)), len(toks)):
        if word(toks, k) in STARTS and (not found or k >= found[-1][1]):
            cue = max((end for end in checks if end <= k), default=0)
            end = _end(toks, k, checks[cue]) if _is_value_between(toks, cue, k) else 0
            if end:
                found.append((k, end))
    return found


def _is_value_between(toks: Toks, start: int, end: int) -> bool:
    """Whether one value stands there, and no stop: "suction 20", "leak grade 3 on 14"."""
    said = toks.said[start:end]
    return any(map(str.isdecimal, said)) and STOPS.isdisjoint(said)


def _end(toks: Toks, k: int, most: int) -> int:
    """Where it ends that begins there, or 0: a value, and when it was so unless "was" says it."""
    start = k + (word(toks, k) in STOPS)
    value = start
    while word(toks, value) in LEADS and value < start + MOST_LEADS:
        value += 1
    was = not PAST.isdisjoint(toks.said[start:value]) or toks.said[start : start + 2] in MOVED
    if not is_digits(toks, value) or int(word(toks, value)) > (most if was else min(most, SMALL)):
        return 0
    end = value + 1
    while word(toks, end) in UNITS or word(toks, end - 1) == "/":
        end += 1
    when = past(toks, end, WHEN)
    slashed = "/" in toks.said[value:end]
    sure = SURE if was or slashed else SURE - PARTS  # "no leak, 3 this am" may say when
    told = not sure.isdisjoint(toks.said[end:when]) or (was and when == end)
    bracket = word(toks, k) == "(" and word(toks, when) == ")"
    whole = bracket or word(toks, when) in {"", ",", ";", ".", "!"}
    return when + bracket if told and whole and (was or word(toks, k) in STOPS) else 0
