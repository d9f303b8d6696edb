"""Cues that are of what stands beside them: drainage of its look, an order of its bed, "aware" of a person.

Called by `recast`, once the cues have their meaning.
"""

from __future__ import annotations

from typing import NamedTuple

from .clock import clocks
from .followers import DEEP, DIALLED
from .items import FULL_HOUR
from .neighbours import number_follows, phrase_of
from .numbers import Toks, is_digits, numbers, starts_number, word
from .patterns.asides import RELATIVES, STAFF, TITLES
from .patterns.leads import BED_WORDS, OF_BED
from .patterns.levels import MILLILITRES
from .pipeline import Cue, with_found
from .readthen import is_whole_clock
from .roles import CHECK_LIMITS

LOOKING = frozenset({"looking", "look", "ish", "type", "colored", "coloured", "tinged", "like"})
"""Between the look of the fluid and the word for it: "milky looking drainage"."""
LOOKED = frozenset({"fluid", "leak", "tidal"})
DEGREES = frozenset(
    {"slightly", "slight", "mildly", "mild", "moderately", "moderate", "very", "v", "fairly", "lightly"}
    | {"touch", "tad", "smidge", "somewhat", "wee", "rather", "bit"}
    | {
        "heavily",
        "faintly",
        "quite",
        "minimally",
        "minimal",
        "scant",
        "scanty",
        "small",
        "large",
        "thin",
        "thick",
    }
)
"""Before the look of the fluid or a leak: how much."""
TURNING = frozenset(
    {"is", "now", "has", "turned", "turning", "turns", "gone", "went", "became", "become", "looks", "looking"}
    | {
        "from",
        "cloudy",
        "thick",
        "thin",
        "more",
        "very",
        "quite",
        "slightly",
        "a",
        "bit",
        "/",
        "and",
        "still",
    }
)
"""Between the word for the fluid and its look: "drainage has turned cloudy/purulent"."""
FLUIDS = frozenset({"pleural fluid", "pleural effusion", "chest fluid", "pleural drainage"})
AT = frozenset({"at", "@", "since", "around", "from"})
STOPS = frozenset({",", ";", ".", "-", "!", ""})
AGAIN = frozenset({"this", "today", "tonight", "now", "again", "still", "and"})
OPENING = BED_WORDS | STOPS
ENDING = STOPS | AGAIN
MOST_BETWEEN = 5
WATER_SEALS = frozenset({"ws", "waterseal", "water seal", "water-seal"})
SEALS = WATER_SEALS | {"seal"}
TOWARDS = frozenset({"on", "onto", "to", "back", "down"})
ORDER_REACH = 4
"""Tokens between an order and what was ordered: "order for bed 17: water seal"."""
NAMED = TITLES - {"by", "nurse", "sister"}
"""Behind these stands a name."""
PROVIDERS = frozenset(
    {"surgeon", "surgeons", "attending", "fellow", "team", "resident", "registrar", "reg", "consultant", "md"}
    | {"spr", "sho", "hmo", "rmo"}
    | {"doc", "doctor", "provider", "dr", "pa", "np", "surgery", "thoracics", "pulm", "hospitalist"}
)
OTHERS = RELATIVES | {"pt", "patient", "he", "she", "nurse", "charge", "rn", "physio"}
"""Whoever wishes for something without ordering it."""
WISHES = frozenset({"wants", "want", "ordered", "orders"})
DONE = frozenset({"turned", "put", "set", "dropped", "increased", "decreased", "reduced", "changed", "moved"})
"""Who did so "per reg" has carried it out."""
ADVISING = frozenset(
    {"advised", "advises", "recommended", "recommends", "suggested", "suggests", "instructed", "decided"}
)
MOST_OF_NAME = 4
"""Words of "per trauma attending", and one more."""
ORDERING = WISHES | ADVISING | {"per"}
MADE = frozenset({"is", "are", "was", "made", "all", "well", "team", "teams", "now", "both"})
OF_ORDER = frozenset({"for", "at", "is", "was", "of", "to", "on", "as", "-", ":", "=", "say", "says"})
OF_NUMBER = MILLILITRES | {":", "/", "mg", "mcg", "am", "pm", "is", "to", "on", "at", "units"}
"""Behind an order's number these make it no setting: a bed, a time, a dose."""
SET_TO = {"seal": DEEP, "suction": 40, "wall": CHECK_LIMITS["wall"]}
"""What each is hardly set over."""
STATES = frozenset({"on", "to"})
OF_LINES = frozenset({"mark", "line", "reading", "canister", "box", "chamber", "drain", "bottle"})
KNOWING = STAFF | RELATIVES | MADE


def of_their_like(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each of what stands beside it."""
    if not DEGREES.isdisjoint(toks.words):
        cues = _with_degrees(cues, toks)
    looks = {c.start: c for c in cues if c.label == "fluid"}
    cues = _with_wishes(cues, toks)
    orders = [c.end for c in cues if c.label == "order"]
    mishaps = [c.end for c in cues if c.label == "what"]
    changed = any(c.value == "exchanged" for c in cues)
    seals = [] if changed else [c.end for c in cues if c.label == "seal"]
    settings = {c.end: c.label for c in cues if c.label in SET_TO and word(toks, c.start) not in STATES}
    dialled = any(c.label == "suction" or c.value == "suction_on" for c in cues)
    near = Near(looks, orders, seals, settings, dialled)
    return tuple(_of_its_like(_known(cue, mishaps, toks), near, toks) for cue in cues)


def _with_degrees(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "mildly bloody", "sl bloody": how much of it says nothing more."""
    taken = {k for cue in cues for k in range(cue.start, cue.end)}
    found = []
    for cue in cues:
        start = cue.start
        while cue.label in LOOKED and word(toks, start - 1) in DEGREES and start - 1 not in taken:
            start -= 1
        found.append(cue._replace(start=start))
    return tuple(found)


def _known(cue: Cue, mishaps: list[int], toks: Toks) -> Cue:
    """ "disconnected at 1825, dr aware": who knows of it, and no notice that was seen.

    In "420, md aware 0630" and "tipped, md aware 0630" the time may be what was told before has.
    """
    if cue.value != "acknowledged" or phrase_of(cue, toks) != "aware" or not _is_of_person(cue, toks):
        return cue
    timed = any(is_digits(toks, k) for end in mishaps for k in range(end, cue.start))
    if number_follows(toks, cue.end) and not timed:
        return cue
    return cue._replace(label="word", value="aware")


def _with_wishes(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "dr patel wants 8 at 20": an order of somebody named."""
    said = toks.said
    if toks.words.isdisjoint(ORDERING):
        return cues
    wishes = [k for k in range(2, len(said)) if said[k] in WISHES and _is_named_person(k - 1, toks)]
    wishes += [k for k, text in enumerate(said) if text == "wants" and _is_of_provider(k, cues, toks)]
    wishes += [k for k, text in enumerate(said) if text == "want" and _is_of_team(k, toks)]
    wishes += [k for k, text in enumerate(said) if text in ADVISING and _is_advice(k, toks)]
    timed = any(said[k - 1] in AT and is_whole_clock(toks, k) for k in range(1, len(said)))
    timed |= any(said[k - 1] in {"i", "we"} and said[k] in DONE for k in range(1, len(said)))
    said_by = [Cue("order", "", k, end) for k in range(len(said)) if (end := _per_provider(k, toks))]
    orders = [Cue("order", "", k, k + 1) for k in wishes]
    orders += [] if timed else said_by  # "to water seal at 1400 per dr lee" was carried out
    return with_found(cues, orders) if orders else cues


def _is_advice(k: int, toks: Toks) -> bool:
    """ "dr advised 4 be clamped": an order as well; "clamped as dr advised" is none."""
    whose = word(toks, k - 1) in PROVIDERS or _is_named_person(k - 1, toks)
    return whose and "as" not in toks.said[max(0, k - 3) : k]


def _per_provider(k: int, toks: Toks) -> int:
    """ "per trauma attending bed 9 suction 10": where the one who ordered it was named; 0 if nobody was."""
    if word(toks, k) != "per":
        return 0
    for end in range(k + 1, k + MOST_OF_NAME):
        if word(toks, end) in PROVIDERS - {"dr"}:
            return end + 1
        if _is_named_person(end, toks):
            return end + 1
        if not word(toks, end).isalpha() or word(toks, end) in BED_WORDS:
            return 0
    return 0


def _is_of_provider(k: int, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "surgeon saw 12, wants 20 of suction": somebody who orders was named, and nobody else."""
    named = not PROVIDERS.isdisjoint(toks.said[:k]) and OTHERS.isdisjoint(toks.said[:k])
    return named and not any(cue.start <= k < cue.end for cue in cues)


def _is_of_team(k: int, toks: Toks) -> bool:
    """ "team want bed 4 at gravity": an order; "do the team want 4 on 20" and "team want it out" are none."""
    who = k - 1
    first = who - (word(toks, who - 1) in {"the", "his", "her", "surgical", "thoracic"})
    named = word(toks, who) in PROVIDERS | {"docs", "doctors"} and word(toks, first - 1) in STOPS
    return named and (word(toks, k + 1) in BED_WORDS or is_digits(toks, k + 1))


def _is_named_person(k: int, toks: Toks) -> bool:
    return word(toks, k - 1) in NAMED and word(toks, k).isalpha()


class Near(NamedTuple):
    """Where the looks of the fluid begin, and where orders and seals are named."""

    looks: dict[int, Cue]
    orders: list[int]
    seals: list[int]
    settings: dict[int, str]
    """The settings that are named, by where they end."""
    dialled: bool
    """Whether it is told what the suction is set to."""


def _of_its_like(cue: Cue, near: Near, toks: Toks) -> Cue:
    looks, orders, seals = near[:3]
    of_look = looks and (_is_named(cue, looks, toks) or _has_turned(cue, looks, toks))
    if phrase_of(cue, toks) in FLUIDS and looks and _looks_at(cue.end, looks, toks):
        return cue._replace(label="filler", value="")
    if cue.label == "output" and (of_look or (looks and _looks_so(cue, looks, toks))):
        return cue._replace(label="tubeword", value="")
    if cue.label in {"level", "levelat"} and seals and _is_depth(cue, seals, toks):
        return cue._replace(label="seal", value="")
    if cue.label == "levelat" and near.settings and _is_of_setting(cue, near.settings, toks):
        return cue._replace(label="filler", value="")
    if cue.label == "order" and near.dialled and _sets(cue, toks):
        return cue._replace(value="suction")
    if orders and phrase_of(cue, toks) in SEALS and _is_ordered(cue, orders, toks):
        return cue._replace(label="waterseal")
    if cue.value == "suction_off" and any(0 <= cue.start - end <= 1 for end in orders):
        return Cue(
            "waterseal", "", cue.start, cue.end
        )  # "md wants suction off", "wants her taken off suction"
    if orders and cue.label == "waterseal" and _is_said_again(cue, toks):
        return cue._replace(label="filler", value="")
    if orders and phrase_of(cue, toks) == "to go" and word(toks, cue.end) in TOWARDS:
        return cue._replace(label="filler", value="")  # "15 to go on suction 20, ordered at 1730"
    if cue.label == "other" and word(toks, cue.start - 1) in NAMED:
        return cue._replace(label="word", value=word(toks, cue.start))  # "dr ng wants 20"
    return cue


def _is_said_again(cue: Cue, toks: Toks) -> bool:
    """ "reg wants 21 off suction, water seal only": ordered once, and not yet so."""
    only = word(toks, cue.end - 1) in {"only", "alone"}
    return only and toks.said[max(0, cue.start - 3) : cue.start] == ("off", "suction", ",")


def _is_named(cue: Cue, looks: dict[int, Cue], toks: Toks) -> bool:
    """ "milky looking drainage, 405 at 2300": of the fluid whose look was told, and it ends there."""
    k = cue.start - 1
    while word(toks, k) in LOOKING:
        k -= 1
    told = any(look.end == k + 1 for look in looks.values())
    return told and word(toks, cue.end) in STOPS and not number_follows(toks, cue.end)


def _has_turned(cue: Cue, looks: dict[int, Cue], toks: Toks) -> bool:
    """ "drainage turned purulent at 2300": the time is when it did, and no number says how much."""
    k = cue.end
    while (k in looks or word(toks, k) in TURNING) and k < cue.end + MOST_BETWEEN:
        if k in looks and word(toks, looks[k].end) != "to":
            break
        k = looks[k].end + 1 if k in looks else k + 1  # "went from serous to bloody"
    look = looks.get(k)
    return look is not None and word(toks, look.end) in AT and bool(clocks(toks, look.end + 1))


def _looks_so(cue: Cue, looks: dict[int, Cue], toks: Toks) -> bool:
    """ "421 drainage looks milky": the number before it is the bed, and nothing says how much came."""
    first = cue.start == 1 or word(toks, cue.start - 2) in OPENING
    k = cue.end
    while word(toks, k) in TURNING and k not in looks and k < cue.end + MOST_BETWEEN:
        k += 1
    look = looks.get(k)
    told = is_digits(toks, cue.start - 1) and first and k > cue.end
    return told and look is not None and word(toks, look.end) in ENDING


def _looks_at(k: int, looks: dict[int, Cue], toks: Toks) -> bool:
    """ "pleural fluid is a bit bloody": how it looks, and nothing why the drain is in."""
    last = k + MOST_BETWEEN
    while word(toks, k) in TURNING and k not in looks and k < last:
        k += 1
    return k in looks


def _is_of_person(cue: Cue, toks: Toks) -> bool:
    """ "dr aware", "team made aware"."""
    before = word(toks, cue.start - 1)
    return before in KNOWING or _is_named_person(cue.start - 1, toks)


def _is_of_setting(cue: Cue, settings: dict[int, str], toks: Toks) -> bool:
    """ "suction still at 20", "wall currently 90": what it is, and no line."""
    number = word(toks, cue.end)
    name = settings.get(cue.start)
    small = name is not None and number.isdecimal() and int(number[:4]) <= SET_TO[name]
    return small and word(toks, cue.end + 1) not in OF_NUMBER


def _sets(cue: Cue, toks: Toks) -> bool:
    """ "ordered for 20 but dial is on 10": beside what it is set to, what was ordered."""
    k = cue.end
    while word(toks, k) in OF_ORDER:
        k += 1
    dialled = is_digits(toks, k) and int(word(toks, k)[:4]) in DIALLED
    return dialled and word(toks, k + 1) not in OF_NUMBER and not is_digits(toks, k + 1)


def _is_depth(cue: Cue, seals: list[int], toks: Toks) -> bool:
    """ "bubbling in the seal chamber, level 2": how deep the water is in it, and no line."""
    named = max((end for end in seals if end <= cue.start), default=None)
    k = cue.end + (word(toks, cue.end) in {"at", "is", "=", ":"})
    deep = max(numbers(toks, k), key=lambda n: n.end, default=None) if named is not None else None
    if named is None or deep is None or not 0 < deep.value <= DEEP:
        return False
    between = range(named, cue.start)
    beds = any(starts_number(toks, k) and word(toks, k - 1) not in OF_BED for k in between)
    return not (beds or OF_LINES & set(toks.said[cue.start : cue.end]) or word(toks, deep.end) in MILLILITRES)


def _is_ordered(cue: Cue, orders: list[int], toks: Toks) -> bool:
    """ "order for 17: water seal": what was ordered, where no depth follows."""
    near = any(0 <= cue.start - end <= ORDER_REACH for end in orders)
    alone = toks.words.isdisjoint({"suction", "sxn"}) and not toks.words.isdisjoint(BED_WORDS)
    near |= alone and word(toks, cue.end) in {"ordered", "requested"}  # "water seal ordered for bed 9"
    timed = word(toks, cue.end) == "at" and len(word(toks, cue.end + 1)) == FULL_HOUR
    return near and (timed or not number_follows(toks, cue.end))
