"""Cues of everyday words beside an event: a person's fall, a walk, a tube that came out days ago.

What such words say depends on what else was told. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from .byhimself import is_how_it_parted
from .clock import clocks
from .inplace import in_place, on_gravity
from .manner import PAUSES
from .neighbours import number_follows, phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import ALERTED, STAFF, THINGS
from .patterns.leads import BED_WORDS
from .pipeline import Cue

TEAMS = frozenset({"rounds", "rounding", "rounded", "service", "chief", "np's", "pa's", "attg"}) | STAFF - {
    "ct", "he", "she", "they", "er", "ed",
}  # fmt: skip
"""Behind a field of medicine these make it who does or wants something, and no reason."""
POST = frozenset({"post", "after", "had", "s/p", "p"})
"""Before the name of a surgery these say that it was done."""
BY = frozenset({"by", "per"})
DRAIN_VALVES = frozenset({"flutter", "way", "stopcock", "relief", "release", "pressure", "safety"})
VALVE_STATES = frozenset({"open", "opened", "closed", "shut", "attached", "bag"})
"""A valve of the drain, and what becomes of it."""
ON_AGAIN = frozenset({"back on", "put back on", "hooked back on"})
ON_SINCE = frozenset({"", ",", ".", ";", "now", "again", "since", "after"})
"""Behind "back on" these say that it was no ward which somebody is back on."""
_MOVERS = "they we i he she porters physio nurses being someone staff"
MOVERS = frozenset(_MOVERS.split())
WANTS = frozenset({"wants", "want", "ordered", "orders", "says", "said", "asked", "asking"})
OUTINGS = frozenset({"bathroom", "toilet", "loo", "commode", "shower", "walk", "washroom"})
"""A few steps: where something happened on the way, no more than where."""
WALKING = frozenset(
    {"walk", "walked", "walking", "strolled", "mobilised", "mobilized", "ambulated", "wandered"}
)
MISHAPS = frozenset({"tipped", "damaged", "disconnected", "dislodged", "kinked", "raised", "suction_off"})
_BED_PLACES = """
bed rail rails bedrail hook stand pole chair floor toilet commode wall trolley stretcher table counter hanger
side
"""
BED_PLACES = frozenset(_BED_PLACES.split())
"""Off or on these a canister falls too."""
SETTINGS = frozenset({"suction", "sxn", "suct", "water", "waterseal", "ws", "gravity", "lws", "cm", "cmh"})
DRAINS = THINGS - {"chest", "pleural", "line"}
TUGGED = frozenset({"pulled", "yanked"})
DAYS = frozenset({"yesterday", "overnight"})
PARTS = frozenset({"morning", "afternoon", "evening", "night", "shift", "week"})
BY_CHANCE = frozenset(
    {"accident", "accidentally", "accidental", "mistake", "himself", "herself", "itself", "own", "oops"}
    | {"turning", "turned", "rolling", "rolled", "moving", "pulling", "pulled", "coughing", "coughed"}
    | {"sneezed", "sneezing", "walking", "tripped", "fell", "caught", "snagged", "help", "stat", "urgent"}
    | {"pressure", "occlusive", "vaseline", "gauze", "transfer", "transferring", "repositioning", "confused"}
)
"""With one of these in the message a tube came out that should not have."""
CARRIERS = frozenset({"transport", "transporter", "porter", "porters", "escort", "they", "crew"})
IS_FOR = frozenset({"he's", "she's", "hes", "shes", "is"})
FASTING = frozenset({"npo", "nbm", "fasting", "fasted", "starved"})
CAME = frozenset({"i", "we", "he", "she", "they"})
WENT = frozenset({"went", "came", "got", "looked", "checked", "walked", "popped", "arrived", "returned"})
ASKED_OF = frozenset(
    {"know", "me", "tell", "say", "and", "about", "remember", "check", "see", "out", ",", "ask"}
)
HIMSELF = frozenset({"he", "she", "he's", "she's", "hes", "shes"})
STEPS = frozenset({"is", "was", "just", "now", "has", "had", "been", "only", "about", "to", "gone"})
ASKING = frozenset({"what", "whats", "what's", "how", "can", "could", "give", "show", "get", "need", "send"})
BIDDING = frozenset(
    {"", "please", "pls", "plz", "and", "then", "to", "you", "u", "just", ",", ".", "ok", "okay"}
)
"""Before "chart" these bid us do it."""
OF_LINES = frozenset({"level", "levelat", "canister", "ml", "closing"})
OF_QUESTIONS = frozenset({"ask", "question", "window", "span", "since"})
OF_REPORT = frozenset({"the", "our", "my", "bedside", "shift", "morning", "night", "evening", "a", "nursing"})
TOOK = frozenset({"ran", "took", "was", "went", "lasted", "started", "finished"})
AT_REPORT = frozenset({"at", "during", "in", "did", "doing", "had", "after", "before", "since", "until"})


def everyday(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, those of everyday words as the others make them."""
    if not any(cue.label in LOOKED_AT for cue in cues):
        return cues
    return tuple(_meant(cue, cues, toks) for cue in cues)


def _meant(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    find = LOOKED_AT.get(cue.label)
    return find(cue, cues, toks) if find is not None else cue


def _as_word(cue: Cue, said: str) -> Cue:
    """A word of a remark that changes nothing."""
    return cue._replace(label="word", value=said)


def _reason(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "trauma attending wants 11 on 20", "ordered by cardiac surgery": who, and not why the drain is in."""
    orders = any(other.label == "order" and other.start == cue.end for other in cues)
    wants = word(toks, cue.end) in WANTS or orders  # "cardiac surgery wants 20"
    team = word(toks, cue.end) in TEAMS or word(toks, cue.start - 1) in BY
    if phrase_of(cue, toks) == "valve" and _is_of_drain(cue, toks):
        return _as_word(cue, "valve")  # "on a flutter valve so no box"
    if phrase_of(cue, toks) == "air" and word(toks, cue.start - 1) in {"of", "fresh"}:
        return _as_word(cue, "air")  # "drain in, gush of air"
    named = word(toks, cue.end) in DRAINS and not any(c.value == "placed" for c in cues)
    if named and any(map(str.isdecimal, toks.said[cue.end :])):
        return cue._replace(label="filler", value="")  # "empyema drain showing pus, 300 at 2215"
    team |= wants and word(toks, cue.end - 1) == "surgery"
    called = cue.end + (word(toks, cue.end) in {"is", "are", "was", "were", "been", "surgery"})
    there = toks.said[called : called + 2] in {("at", "bedside"), ("at", "the"), ("in", "room")}
    team |= there or word(toks, called) in ALERTED  # "trauma paged", "trauma at bedside"
    if word(toks, cue.end) == "surgery" and not {word(toks, cue.start), word(toks, cue.start - 1)}.isdisjoint(
        POST
    ):
        return cue  # "11.5 kg post heart surgery"
    return _as_word(cue, "team") if team else cue


def _is_of_drain(cue: Cue, toks: Toks) -> bool:
    """Whether such a valve is no heart's."""
    named = {word(toks, cue.start - 1), word(toks, cue.start - 2)} & DRAIN_VALVES
    return bool(named) or word(toks, cue.end) in VALVE_STATES


def _what(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    if cue.value == "tipped" and word(toks, cue.start) == "fell" and _is_person(cue, cues, toks):
        return _as_word(cue, "unwell")
    if word(toks, cue.end - 1) == "fell" and word(toks, cue.end) == "asleep":
        return _as_word(cue, "asleep")
    if (none := on_gravity(cue, cues, toks)) is not None:
        return none
    if cue.value == "suction_on" and phrase_of(cue, toks) in ON_AGAIN and "suction" not in toks.words:
        apart = any(other.value == "disconnected" and other.end <= cue.start for other in cues)
        end = cue.end + (word(toks, cue.end) == "now")
        return Cue("filler", "", cue.start, end) if apart else cue  # "tubing came off, back on now"
    if cue.value == "dislodged" and word(toks, cue.end - 1) in TUGGED and _is_tug(cue, toks):
        return _as_word(cue, "unwell")
    if cue.value == "dislodged" and is_how_it_parted(cue, cues, toks):
        return Cue("filler", "", cue.start, cue.end + 1)
    if cue.value == "dislodged" and phrase_of(cue, toks).endswith("came out") and _is_days_ago(cue, toks):
        return cue._replace(label="kind", value="removed")
    return cue


def _is_tug(cue: Cue, toks: Toks) -> bool:
    """ "pt pulled at the tube": it may be in place."""
    return word(toks, cue.end) in {"at", "on"} and not number_follows(toks, cue.end + 1)


def _is_person(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "12 fell off a ladder, hemothorax": why the drain is in, where no canister is named."""
    why = any(other.label == "reason" for other in cues)
    places = DRAINS | BED_PLACES
    return why and not any(said in places for said in toks.said[cue.start :]) and _doer_is_bed(cue, toks)


def _doer_is_bed(cue: Cue, toks: Toks) -> bool:
    k = cue.start - 1
    while word(toks, k) in {"pt", "patient", "who", "he", "she", "just", "was", "had"}:
        k -= 1
    return is_digits(toks, k) or k < cue.start - 1


def _is_days_ago(cue: Cue, toks: Toks) -> bool:
    """ "right drain came out yesterday 1600": whoever tells of it so late tells of no mishap."""
    day = word(toks, cue.end) in DAYS or (
        word(toks, cue.end) in {"this", "last", "on"} and word(toks, cue.end + 1) in PARTS
    )
    return day and toks.words.isdisjoint(BY_CHANCE)


def _kind(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    if (where := in_place(cue, cues, toks)) is not None:
        return where
    happened = [other for other in cues if other.label == "what"]
    words = phrase_of(cue, toks).split()
    if cue.value == "left" and words[-1] == "gone" and any(_ends_tube(o, cue) for o in cues):
        out = any(o.value == "removed" for o in cues)  # "12's tube is gone, they took it out": nobody left
        return cue._replace(label="filler", value="") if out else _as_word(cue, "gone")
    if cue.value == "removed" and words[-3:] == ["came", "out", "at"]:
        chance = not toks.words.isdisjoint(BY_CHANCE)
        return cue._replace(label="what", value="dislodged", end=cue.end - 1) if chance else cue
    start = cue.start - (word(toks, cue.start - 1) in {"the", "his", "her", "their"})
    if cue.value == "removed" and words[-1] == "out" and word(toks, start - 1) in {"took", "taken", "taking"}:
        return cue._replace(start=start - 1)  # "took the tube out of bed 15"
    if cue.value == "placed" and words[-1] == "placed" and _is_set_on(cue.end, toks):
        return cue._replace(label="tubeword" if len(words) > 1 else "filler", value="")
    if cue.value == "away" and "for" in words and _is_waited_for(cue, toks):
        return _as_word(cue, "planned")
    if cue.value == "back" and words == ["and", "back"] and _is_walk(cue, cues, toks):
        return _as_word(cue, "walked")
    outing = {*words, *toks.said[cue.end : cue.end + 3]} & OUTINGS
    if cue.value in {"away", "back"} and outing and _is_of_patient(cue, toks):
        return _as_word(cue, "walked")
    if cue.value == "away" and not OUTINGS.isdisjoint(words):
        return _as_word(cue, "walked") if any(o.value in MISHAPS for o in happened) else cue
    if cue.value == "moved" and happened and _is_occasion(cue, toks):
        return cue._replace(label="filler", value="")
    pause = any(o.value in PAUSES and o.start < cue.start for o in happened)
    pause |= any(o.label == "waterseal" and o.start < cue.start for o in cues)  # "off suction for transfer"
    for_change = cue.value == "corrected" and words == ["change"]  # "clamped for the change"
    if pause and (cue.value in {"moved", "away"} or for_change) and _is_purpose(cue, toks):
        return cue._replace(label="filler", value="")
    paused = any(o.value == "suction_off" for o in happened) or "suction" in toks.words
    if cue.value == "back" and words[-1] == "back" and word(toks, cue.end) == "on" and paused:
        at = cue.end + 1 + (word(toks, cue.end + 1) in {"at", "@"})
        again = clocks(toks, at) or word(toks, at) in ON_SINCE or word(toks, cue.start - 1) == "it"
        return Cue("what", "suction_on", cue.start, cue.end + 1) if again else cue
    return cue


def _is_waited_for(cue: Cue, toks: Toks) -> bool:
    """ "npo for bronch", "down for theatre this morning, so nil by mouth", "he's for a ct": not gone yet."""
    listed = word(toks, cue.start) == "for" and word(toks, cue.start - 1) in IS_FOR
    return listed or not FASTING.isdisjoint(toks.words) or "nil by mouth" in " ".join(toks.said)


def _ends_tube(tube: Cue, gone: Cue) -> bool:
    return tube.label == "tubeword" and tube.end == gone.start


def _is_walk(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "he walked to the window and back": on the ward, as no other place was told."""
    start = next((k for k in range(cue.start, 0, -1) if word(toks, k - 1) in {".", ",", ";", "!"}), 0)
    walked = not WALKING.isdisjoint(toks.said[start : cue.start])
    return walked and not any(o.value == "away" for o in cues) and not clocks(toks, cue.end)


def _is_of_patient(cue: Cue, toks: Toks) -> bool:
    """ "she's going for a walk", "he was just back from the shower": told of a patient beside a line."""
    k = cue.start - 1
    while word(toks, k) in STEPS:
        k -= 1
    return word(toks, k) in HIMSELF and any(starts_number(toks, j) for j in range(k))


def _is_occasion(cue: Cue, toks: Toks) -> bool:
    """ "unplugged the suction when they moved the bed": when that was, and to no other bed."""
    k = cue.start - 1 - (word(toks, cue.start - 1) in MOVERS)
    behind = toks.said[cue.end : cue.end + 4]
    return (
        word(toks, k) in {"when", "while", "as"}
        and not any(starts_number(toks, j) for j in range(cue.end, cue.end + len(behind)))
        and "to" not in toks.said[cue.start : cue.end + 4]
    )


def _is_set_on(k: int, toks: Toks) -> bool:
    """ "chest tube placed back on suction", "drain placed on the floor": it was there before."""
    k += word(toks, k) == "back"
    if word(toks, k) not in {"on", "to", "onto"}:
        return False
    k += 1
    while word(toks, k) in {"the", "his", "her", "low", "dry", "continuous", "-", "minus"}:
        k += 1
    if word(toks, k) == "bed":
        return not number_follows(toks, k + 1)
    dial = is_digits(toks, k) and not SETTINGS.isdisjoint(toks.said[k + 1 : k + 4])
    return dial or word(toks, k) in SETTINGS | BED_PLACES


def _is_on_again(cue: Cue, toks: Toks) -> bool:
    """ "back on 1815", "put back on suction"."""
    if cue.value == "back":
        at = cue.end + 1 + (word(toks, cue.end + 1) in {"at", "@"})
        return word(toks, cue.end) == "on" and bool(clocks(toks, at))
    return cue.value == "suction_on" and "back" in toks.said[cue.start : cue.end]


def _off(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "off suction for walk 1800, back on 1815": an event, as it was put on again, and no setting."""
    off = word(toks, cue.start) == "off" and word(toks, cue.end - 1) == "suction"
    again = any(_is_on_again(other, toks) for other in cues if other.start > cue.start)
    if off and again:
        return cue._replace(label="what", value="suction_off")
    return cue._replace(value="off") if off else cue


def _is_purpose(cue: Cue, toks: Toks) -> bool:
    """ "suction off at 1845 for transfer", "clamped for transfer to ct": why it was stopped."""
    start = cue.start - (word(toks, cue.start - 1) in {"the", "a", "transfer"})
    given = "for" in {word(toks, start - 1), word(toks, cue.start)}  # "off suction at 1410 for CT"
    return given and not (cue.value == "moved" and number_follows(toks, cue.end))


def _levelat(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "clamped at 1008, hit a litre": so much came out, and where the line stands is not said."""
    clamped = any(o.value == "clamped" for o in cues)
    return cue._replace(label="output", value="") if clamped and phrase_of(cue, toks) == "hit" else cue


def _question(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "we dont have any new boxes for bed 9, its at 1950": nothing is asked."""
    if _is_joint(cue, toks):
        return cue._replace(label="filler", value="")
    denied = any(o.label == "neg" and 0 <= cue.start - o.end <= 1 for o in cues)
    return cue._replace(label="filler", value="") if denied and phrase_of(cue, toks) == "any" else cue


def _is_joint(cue: Cue, toks: Toks) -> bool:
    """ "430 at 1820, which the doctor saw", "in the shower when I came": nothing is asked."""
    if "?" in toks.words:
        return False
    if not cue.start:  # "when i went in bed 5 was at 340"
        return phrase_of(cue, toks) == "when" and word(toks, 1) in CAME and word(toks, 2) in WENT
    before = word(toks, cue.start - 1)
    if phrase_of(cue, toks) == "which":
        return before == "," and any(is_digits(toks, k) for k in range(cue.start))
    return phrase_of(cue, toks) == "when" and word(toks, cue.end) in CAME and before not in ASKED_OF


def _side(cue: Cue, _: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "transport left with him": the patient is away, and it is no left tube."""
    behind = word(toks, cue.end + 1)
    whom = behind in {"him", "pt", "patient"} or (behind == "her" and not word(toks, cue.end + 2).isalpha())
    left = word(toks, cue.start) == "left" and word(toks, cue.start - 1) in CARRIERS
    gone = left and word(toks, cue.end) == "with" and whom
    return Cue("kind", "away", cue.start, cue.end + 2) if gone else cue


def _ask(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "Dana here picking up six, what was the last mark": who has the bed now, and no trend.

    "how long until 12 is full at this rate": what is assumed, and not asked.
    """
    if (
        cue.value == "rate"
        and word(toks, cue.start - 2) == "at"
        and word(toks, cue.start - 1) in {"this", "that"}
    ):
        return cue._replace(label="filler", value="")
    if cue.value == "chart" and _is_charting(cue, toks):
        return _as_word(cue, "charted")  # "charting it now"
    if cue.value == "handoff" and _is_handing_over(cue, toks):
        return _as_word(cue, "handover")
    nothing = {word(toks, cue.start - 1), word(toks, cue.start - 2)} & {"nothing", "nowt", "nothin"}
    if cue.value == "chart" and nothing and "?" not in toks.words:
        return _as_word(cue, "charted")  # "drain goes with him, nothing to chart"
    if cue.value == "chart" and _is_bidden(cue, cues, toks):
        return cue._replace(label="filler", value="")
    if cue.value == "handoff" and word(toks, cue.end) in TOOK and "?" not in toks.words:
        return _as_word(cue, "handover")  # "handover ran over"
    taken = phrase_of(cue, toks) == "picking up" and toks.words.isdisjoint({"is", "drainage", "output"})
    more = any(o.label in {"ask", "question"} and o.start > cue.end for o in cues)
    if not (taken and more and (word(toks, cue.end) in BED_WORDS or number_follows(toks, cue.end))):
        return cue
    return cue._replace(label="bed" if number_follows(toks, cue.end) else "filler", value="")


def _is_bidden(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> bool:
    """ "chart bed 6 mark 1405 at 0005": a line to chart, and no question what to chart."""
    if phrase_of(cue, toks) != "chart" or word(toks, cue.start - 1) not in BIDDING:
        return False
    labels = {other.label for other in cues if other is not cue}
    lines = sum(starts_number(toks, k) for k in range(cue.end, len(toks)))
    return lines > 1 and not OF_LINES.isdisjoint(labels) and OF_QUESTIONS.isdisjoint(labels)


def _is_charting(cue: Cue, toks: Toks) -> bool:
    """ "charting it now"; "not charting it" may deny the line."""
    it = phrase_of(cue, toks) == "charting" and word(toks, cue.end) in {"it", "this"}
    return it and word(toks, cue.start - 1) not in {"not", "stop", "no", "never"}


def _is_handing_over(cue: Cue, toks: Toks) -> bool:
    """ "when we did the bedside handover", "giving report now": what the nurses do, and no question."""
    if "?" in toks.words or word(toks, 0) in ASKING:
        return False
    if word(toks, cue.start - 1) in {"i", "we", "to"} and word(toks, cue.start) in {"hand", "handover"}:
        return True  # "before I hand over"
    if word(toks, cue.start) in {"giving", "handing"}:
        return word(toks, cue.end) in {"now", "soon", "shortly"}
    k = cue.start - 1
    while word(toks, k) in OF_REPORT:
        k -= 1
    return word(toks, k) in AT_REPORT


LOOKED_AT: Mapping[str, Callable[[Cue, tuple[Cue, ...], Toks], Cue]] = {
    "reason": _reason,
    "what": _what,
    "kind": _kind,
    "waterseal": _off,
    "levelat": _levelat,
    "question": _question,
    "ask": _ask,
    "side": _side,
}
