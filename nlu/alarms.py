"""Words of alarm: who fears for somebody, or calls for help, still tells the line.

"I think 3 is bleeding, 200 in the last 10 min" plans nothing: the fear is told of bed 3, and the number is
what came. Called by `recast`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from .items import EVENTS
from .neighbours import begins_at, ends_at, phrases_in
from .numbers import Toks, is_digits, word
from .patterns.asides import STAFF
from .patterns.remarks import ALARMS, DIRE
from .pipeline import Cue, with_found

STOPS = frozenset({",", ";", ".", "!", "and", "but"})
FEARED = frozenset(
    {"think", "may", "might", "could", "possibly", "probably", "maybe", "perhaps", "looks", "seems"}
)
FEARS = DIRE | {"unstable", "hypotensive", "tachycardic", "tachy", "clammy", "shocked", "unresponsive"}
CALLS = frozenset({"call", "calls", "bell", "team", "response", "blue", "review"})
CALLED = ALARMS | {"2222", "333", "999"}
NOBODY = frozenset({"he", "she", "they", "ct", "cts", "surgery", "surg", "er", "ed", "rt", "staff"})
_HELP = "|".join(
    sorted((STAFF - NOBODY) | {"help", "hand", "hands", "backup", "someone", "somebody", "doctor", "team"})
)
WANTED = re.compile(
    r"(?<![^ ])(?:(?:(?:(?:i|we) (?:really |do |just )?)?need|send|get|grab|call|page|bleep|fetch) "
    rf"(?:(?:a|an|the|some|another|more|extra|pair of|me) )*(?:{_HELP})|"
    "(?:can|could|will|would) (?:someone|somebody|anyone|anybody|you) (?:please |just )*"
    "(?:come|help|give me a hand))(?: (?:now|in|here|help|asap|quick|quickly|urgently|stat|right|with|him|her"
    "|them|straight|away))*(?= please| [,;.!]|$)"
)
"""A whole clause that only calls for somebody."""
LONE = 1
"""Numbers of a clause that only says of which bed it is."""


def with_alarms(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, with no plan in a fear and no call for somebody in a call for help."""
    wanted = list(_wanted(toks)) if any(c.label in EVENTS for c in cues) else []
    cues = with_found(cues, wanted) if wanted else cues
    if ALARMS.isdisjoint(toks.words):
        return cues
    found = [cue._replace(label="filler", value="") for cue in cues if _is_fear(cue, toks)]
    calls = [k for k in range(1, len(toks)) if word(toks, k) in CALLS and word(toks, k - 1) in CALLED]
    found += [Cue("filler", "", k, k + 1) for k in calls]
    return with_found(cues, found) if found else cues


def _wanted(toks: Toks) -> Iterator[Cue]:
    """ "tube's disconnected, i need a hand in here", "can someone come": who calls for help asks nothing."""
    yield from (Cue("filler", "", start, end) for start, end in phrases_in(WANTED, toks))


def is_dire(toks: Toks) -> bool:
    """ "3 is bleeding": whether the line is wanted where nothing else is told of the bed."""
    return not DIRE.isdisjoint(toks.words)


def is_feared(toks: Toks, start: int, end: int) -> bool:
    """Whether the clause from `start` to `end` tells of an alarm, and no number but its bed's."""
    numbers = sum(is_digits(toks, k) for k in range(start, end))
    return numbers <= LONE and not FEARS.isdisjoint(toks.said[start:end])


def _is_fear(cue: Cue, toks: Toks) -> bool:
    """ "14 may be bleeding": nothing that is planned; "may bleed 200" tells of an amount."""
    if cue.label not in {"plan", "about"} or FEARED.isdisjoint(toks.said[cue.start : cue.end]):
        return False
    return is_feared(toks, begins_at(STOPS, toks, cue.start), ends_at(STOPS, toks, cue.end))
