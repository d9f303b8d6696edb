"""Words beside an event or a check that say how it came, what for or on whose word, and nothing else of it.

Called by `subjects`, for which any other word that was not understood makes the message a question.
"""

from __future__ import annotations

from .adjuncts import without_adjunct
from .behind import DOUBTING
from .items import FINDINGS, FULL_HOUR, Item
from .neighbours import phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import LOADED, THINGS
from .patterns.narrated import WHOSE

FOUND = FINDINGS | {"seal", "suction", "wall", "leakgrade"}
FEW = 3
"""Words before a line with its time: a remark of the bed, and no story."""
DONE_BESIDE = frozenset(
    {"dressing", "dressing changed", "dressing change", "drsg", "cxr", "chest xray", "vitals", "labs"}
)
OF_SKIN = frozenset({"emphysema", "crepitus"})
PAUSES = frozenset({"clamped", "unclamped", "suction_off", "suction_on"})
LEANING = frozenset({"leaning", "leaned", "leant"})
TUGS = frozenset({"pulled", "pulling", "tugged", "tugging", "yanked", "yanking"})
PURPOSEFUL = PAUSES | {"away", "back", "moved"}
FITTING = frozenset({"a", "an", "the", "his", "her", "another", "closer", "close", "more", "better"})
"""Between "for" and what it was for."""
MISHAPS = frozenset({"tipped", "damaged", "disconnected", "dislodged", "kinked", "raised"})
REJOINED = frozenset({"reconnected", "reattached", "rejoined"})
SPILLING = frozenset({"tipped", "damaged", "disconnected"})
SPILLS = frozenset(
    {"dripping", "drips", "leaking", "leaks", "leaked", "oozing", "wet", "puddle", "everywhere", "spilling"}
)
"""Behind such a mishap: what came of it."""
HOLDING = frozenset(
    {
        "chest",
        "heart",
        "held",
        "holding",
        "holds",
        "carried",
        "carrying",
        "kept",
        "keeping",
        "being",
        "placed",
    }
)
"""What is done to a canister that is raised, and above what: "lifted above his chest"."""
SLIPPING = frozenset(
    {"slipped", "slipping", "slid", "sliding", "came", "come", "coming", "worked", "working", "wriggled"}
    | {"crept", "fallen", "pushed", "pulled"}
)
"""How a tube came out so far: "slipped half out"."""
SCANS = frozenset({"ct", "mri", "xray", "ray", "scan", "ultrasound", "echo", "angio", "ctpa", "pet", "uss"})
SCANNED = frozenset(
    {"chest", "thorax", "abdo", "abdomen", "pelvis", "head", "brain", "neck", "spine", "heart", "lung"}
    | {"lungs", "thoracic", "guided", "biopsy", "angio", "angiogram", "contrast", "aorta", "tap", "kub"}
)
"""Behind the name of a scan: of what it is taken."""
SKIN = frozenset(
    {"dressing", "dressings", "drsg", "dsg", "site", "skin", "wound", "insertion", "gauze", "sutures"}
)
ON_SKIN = frozenset(
    {"leaking", "leak", "oozing", "ooze", "weeping", "wet", "around", "round", "at", "the", "from"}
)
CONTRASTS = frozenset({"but", ",", ";", "though", "however"})
CANISTERS = frozenset({"chamber", "canister", "box", "bottle", "drain", "system"})
SETTING = frozenset(
    {"increase", "decrease", "reduce", "raise", "lower", "turn", "drop", "wean", "titrate", "bump"}
    | {"crank", "dial", "bring", "change", "keep", "leave", "maintain", "continue", "set", "go", "down"}
    | {"take", "put", "back", "start", "bumped", "call"}
)
"""Behind the word for an order: what is to be done to the dial."""
HOW = frozenset(
    {
        "when",
        "while",
        "whilst",
        "after",
        "during",
        "because",
        "cos",
        "as",
        "by",
        "getting",
        "trying",
        "reaching",
    }
)


def beside_events(scope: list[Item], events: list[Item], toks: Toks) -> list[Item]:
    """The pieces without what only says what for the events were, or how they came."""
    names = {event.name for event in events}
    if names & PURPOSEFUL:
        scope = [i for i in scope if not (_is_purpose(i, toks) or _is_scanned(i, toks))]
    if names == {"dislodged"}:
        scope = [i for i in scope if not _is_dressing_of(i, events, toks)]  # "drain came out with dressing"
    if names <= MISHAPS:
        scope = [i for i in _without_how(scope, events[-1], toks) if not _is_of_mishap(i, events, toks)]
    return without_adjunct(scope, events, toks) if scope else scope


def beside_checks(scope: list[Item], clause: list[Item], toks: Toks) -> list[Item]:
    """The pieces without what was done on the way, and what is to be done to a dial by an order."""
    order = next((i.end for i in scope if i.role == "cue" and i.value == "order"), len(toks))
    ordered = {i.start for i in clause if i.start >= order and word(toks, i.start) in SETTING}
    scope = [i for i in scope if i in clause or not _is_done_beside(i, toks)]
    skin = _of_skin(scope, toks)
    scope = [i for i in scope if i.start not in skin]
    return [i for i in scope if not (i.unread and i.start in ordered)]


def _of_skin(scope: list[Item], toks: Toks) -> range:
    """ "dressing leaking but no air leak": what is told of the skin, before a leak that is named whole."""
    check = next((i for i in scope if i.value == "leak" and _is_of_drain(i, toks)), None)
    end = check.start if check is not None else 0
    first = next((k for k in range(end) if word(toks, k) in SKIN), end)
    while word(toks, first - 1) in ON_SKIN and first > 0:
        first -= 1
    joint = next((k for k in range(end - 1, first, -1) if word(toks, k) in CONTRASTS), first)
    numbers = any(starts_number(toks, k) for k in range(first, joint))
    return range(first, joint + 1) if joint > first and not numbers else range(0)


def _is_of_drain(leak: Item, toks: Toks) -> bool:
    """ "air leak", "bubbling", "leak in the chamber": no leak of the dressing."""
    behind = word(toks, leak.end + 1 + (word(toks, leak.end + 1) == "the"))
    return "leak" not in toks.said[leak.start : leak.end] or (
        "air" in toks.said[leak.start : leak.end] or (word(toks, leak.end) == "in" and behind in CANISTERS)
    )


def _is_scanned(item: Item, toks: Toks) -> bool:
    """ "off for CT chest", "an MRI of her head": of what it is taken."""
    k = item.start - 1
    while word(toks, k) in SCANNED or word(toks, k) in {"of", "the", "his", "her", "and", "+", "/"}:
        k -= 1
    spelt = word(toks, k - 1) + word(toks, k)
    scanned = word(toks, item.start) in SCANNED and (word(toks, k) in SCANS or spelt in SCANS)
    return item.unread and scanned and not _is_level(toks, item.end)


def _is_level(toks: Toks, k: int) -> bool:
    """ "off for CT chest 340": perhaps the line of the chest tube."""
    return is_digits(toks, k) and len(word(toks, k)) < FULL_HOUR


def _is_dressing_of(item: Item, events: list[Item], toks: Toks) -> bool:
    """Whether it is a dressing that came with the tube, or was put on for it."""
    named = any(not THINGS.isdisjoint(toks.said[e.start : e.end]) for e in events)
    return named and _is_done_beside(item, toks)


def _is_done_beside(item: Item, toks: Toks) -> bool:
    """ "10 dressing changed, no leak", "surgical emphysema, leak": beside it, in a clause of its own."""
    said = phrase_of(item, toks)
    return item.role == "foreign" and (said in DONE_BESIDE or word(toks, item.end - 1) in OF_SKIN)


def _is_purpose(item: Item, toks: Toks) -> bool:
    """ "clamped for the walk", "to the OR for a washout": what it was stopped or who went for."""
    k = item.start - 1 - (word(toks, item.start - 1) in FITTING)
    return word(toks, k) in {"for", "during"} and item.unread


def _without_how(scope: list[Item], event: Item, toks: Toks) -> list[Item]:
    """ "box tipped when bed lowered onto it": words behind tell how it came, and not what it was of."""
    how = next((k for k in range(event.end, scope[-1].end) if word(toks, k) in HOW), None)
    if how is None or not any(word(toks, k) in THINGS for k in range(scope[0].start, how)):
        return scope
    return [i for i in scope if i.start < how or i.role == "foreign" or i.value != "word"]


def _is_of_mishap(item: Item, events: list[Item], toks: Toks) -> bool:
    """ "pulled on his chest tube, its halfway out", "cracked and dripping": how it came, what came of it."""
    said = word(toks, item.start)
    spills = any(e.name in SPILLING and e.end <= item.start for e in events)
    joined = said in REJOINED and any(e.name == "disconnected" for e in events)
    leant = said in LEANING and all(e.name == "kinked" for e in events)  # "leaning on the tubing, kinked"
    held = said in HOLDING and all(e.name == "raised" for e in events)
    slipped = said in SLIPPING and all(e.name == "dislodged" for e in events)
    tool = word(toks, item.start - 2) == "with" and word(toks, item.start - 1) in WHOSE  # "with her mop"
    came = tool or said in TUGS or leant or joined or held or slipped
    return item.unread and (came or (spills and said in SPILLS))


def behind_line(scope: list[Item], toks: Toks) -> list[Item]:
    """ "patient in bed 12 resting, line 1870, no leak": what precedes a line is not of what was found."""
    found = next((k for k, i in enumerate(scope) if i.role == "check" or i.value in FOUND), len(scope))
    lines = [k for k in range(found) if _is_line(scope, k, toks)]
    doubted = any(i.unread and i.name in DOUBTING for i in scope[: lines[-1]]) if lines else True
    return scope if doubted else scope[lines[-1] :]


def _is_line(scope: list[Item], k: int, toks: Toks) -> bool:
    """Whether a level stands there behind a word for it, or before its whole time: "140 at 2030"."""
    time = scope[k + 1] if k + 1 < len(scope) else None
    timed = time is not None and time.role == "time" and time.at and time.full_clock
    told = LOADED.isdisjoint(toks.said[scope[0].start : scope[k].start])  # not "pulled at tubing"
    few = (
        told
        and sum(i.unread for i in scope[:k]) <= FEW
        and all(
            i.unread or i.role in {"bed", "tube", "sep"} or i.value in {"bed", "tubeword", "ask"}
            for i in scope[:k]
        )
    )
    return scope[k].role == "level" and ((timed and few) or scope[k].lead in {"level", "levelat"})
