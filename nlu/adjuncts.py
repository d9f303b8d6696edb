"""What stands behind an event that is told whole and only says when, where, why or by whom it was.

"clamped 20 at 1815 after tea", "214 knocked over by the xray machine", "discharged at his own request": such
words need not be understood. What makes them doubtful is a word for a drain or what happens to one, a doubt,
a denial, or that it may be planned. Called by `manner`.
"""

from __future__ import annotations

from collections.abc import Sequence

from .items import Item
from .neighbours import ends_at, number_follows
from .numbers import Toks, word
from .patterns.leads import BED_WORDS
from .patterns.ownclauses import AHEAD, DENIALS, DOUBTFUL, NAMED_BY
from .roles import OF_PATIENT

AGENT = frozenset({"by", "with", "per", "despite", "following", "due", "because", "cos", "coz", "bc"})
PLACE = frozenset({"in", "on", "near", "under", "beside", "outside", "against", "behind", "next", "onto"})
OCCASION = frozenset({"after", "before", "during", "around", "while", "whilst", "when", "as", "once"})
DOING = frozenset({"trying", "reaching", "getting", "turning", "moving", "walking", "climbing", "coming"})
ADJUNCTS = AGENT | PLACE | OCCASION | DOING | {"at", "for"}
PURPOSEFUL = frozenset({"clamped", "unclamped", "suction_off", "suction_on", "away", "back"})
"""Of these "for" and "to" say what for; a tube that is out "for" something may be out only in a plan."""
PURPOSE = frozenset({"for", "to"})
PARTS = frozenset(
    {"seal", "valve", "cap", "lid", "switch", "clip", "hook", "strap", "handle", "latch", "lock"}
)
"""Many things beside a canister have one."""
_PLANNED = """
please pls plz needed soon later tonight evening afternoon morning tomorrow discussion discuss consideration
considered approval decision decide consent planning plan plans review order orders ordered request requested
to will would should can could must want wants
"""
SEEMING = frozenset(
    {"look", "looks", "sound", "sounds", "seem", "seems", "tell", "accounts", "opinion", "view", "though"}
    | {"principle", "theory", "paper", "mind", "effect", "practice", "place", "rehearsal", "drill"}
)
"""With one of these it may only seem so: "clamped by the looks of it"."""
PLANNED = frozenset(_PLANNED.split()) | AHEAD
STOPS = frozenset({",", ";", ".", "!", "?"})
DONE = ("ed", "en")
JUST = frozenset({"just", "straight", "right", "shortly", "immediately", "only", "soon"})


def without_adjunct(scope: list[Item], events: Sequence[Item], toks: Toks) -> list[Item]:
    """The pieces without the words of what only says when, where, why or by whom the last event was."""
    event = events[-1]
    start = next((k for k in range(event.end, scope[-1].end) if _begins(toks, k, event)), None)
    beds = [i.start for i in scope if i.role == "bed"]
    if start is None or not beds or min(beds) > start:
        return scope  # "ok back in with a light, bed 12 1050"
    if word(toks, start) in OCCASION | {"to"} and not _is_past(scope, event, toks):
        return scope
    end = plain_end(toks, start)
    if not end:
        return scope
    during = event.name in PURPOSEFUL and word(toks, start) in OCCASION | PURPOSE
    start -= word(toks, start - 1) in JUST
    return [
        i for i in scope if not start <= i.start < end or not (i.unread or (during and i.role == "foreign"))
    ]  # "unclamped during breakfast"; "clamped with the catheter" may tell of that, too


def plain_end(toks: Toks, start: int) -> int:
    """Where the words that begin there end; 0 where one of them makes them doubtful."""
    end = ends_at(STOPS, toks, start)
    asked_for = word(toks, start) in {"at", "on"} and word(toks, end - 1) == "request"
    doubts = (DOUBTFUL | DENIALS | PLANNED | SEEMING) - ({"request"} if asked_for else set())
    first = start + (word(toks, start) in AGENT | {"to"})
    first += word(toks, first - 1) == "with" and word(toks, first) == "no"  # "home with no problems"
    said = (k for k in range(first, end) if not _is_named(toks, k))
    return end if doubts.isdisjoint(word(toks, k) for k in said) else 0


def _is_named(toks: Toks, k: int) -> bool:
    """ "chest x ray": of no drain."""
    return word(toks, k + 1) in NAMED_BY.get(word(toks, k), ())


def _begins(toks: Toks, k: int, event: Item) -> bool:
    said, nxt = word(toks, k), k + 1 + (word(toks, k + 1) in {"the", "a"})
    bed = nxt + (word(toks, nxt) in BED_WORDS)
    if said not in ADJUNCTS | {"to"} or number_follows(toks, nxt) or number_follows(toks, bed):
        return False
    if said in {"on", "in"} and not PARTS.isdisjoint(toks.said[event.start - 1 : event.end]):
        return False  # "seal broken on the drug fridge"
    if said == "to" and word(toks, k + 1) in {"be", "have", "get", "follow", "come"}:
        return False  # "clamped at 0900 to be looked at"
    return said not in PURPOSE or event.name in PURPOSEFUL


def _is_past(scope: list[Item], event: Item, toks: Toks) -> bool:
    """ "tube out after lunch" may be planned; "clamped 20 after tea" was done, as is what has a time."""
    timed = any(i.role == "time" for i in scope)
    return timed or (event.name not in OF_PATIENT and word(toks, event.start).endswith(DONE))
