"""Cues of events, findings and sides that a remark beside a line only seems to tell: "his back is sore".

Called by `idle`.
"""

from __future__ import annotations

from .neighbours import phrase_of
from .numbers import Toks, starts_number, word
from .patterns.idle import (
    HURTS,
    INTENSIFIED,
    LEAKING,
    LEFT_OPEN,
    LISTED,
    LISTS,
    LITTLE,
    LOOKING,
    MINE,
    OF_SOMEBODY,
    OF_TUBES,
    ON_AGAIN,
    OTHER_THINGS,
    OTHERS_BEHIND_LEFT,
    SAME_THINGS,
    SORE,
    SPEAKING,
    SUCTION,
    TAKEN,
)
from .patterns.leads import BED_WORDS
from .patterns.otherfigures import BODY
from .patterns.ownclauses import ARTICLES, BROKEN, SPEAKER, THINGS
from .pipeline import Cue
from .remarked import TRIALS
from .stretches import Stretch, is_stop, objects, strange

TOPIC = frozenset({"about", "re", "regarding", "discussed", "discussing"})
"""Behind these an event is what somebody thinks or speaks of."""
SLEEP = frozenset({"nap", "naps", "night", "sleep", "rest", "kip", "snooze", "bedtime", "feed", "siesta"})
OUTINGS = frozenset({"bathroom", "toilet", "commode", "loo", "washroom"})
SOUNDS = frozenset(
    {"snoring", "chatting", "sleeping", "talking", "coughing", "singing", "humming", "working"}
)
SIDES = frozenset({"left", "right", "l", "r", "lt", "rt"})
SORTS = frozenset({"afternoon", "morning", "midday", "long", "good", "little", "quick", "short", "evening"})
LONGEST = 8
"""Words of a remark in which a side is none; a longer one is asked or read."""
OTHERS = THINGS | BROKEN | {"clot", "clots", "label", "labels", "sticker", "tape", "scale"}
"""What is moved and is no patient."""
WORN = frozenset(
    {"oxygen", "o2", "mask", "cannula", "prongs", "specs", "glasses", "hat", "probe", "wristband"}
)
TUGGED = frozenset({"pulled", "removed", "yanked", "ripped", "tugged"})
GOING = frozenset({"going", "heading", "being", "coming"})


def is_going(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "his back is sore", "slept on his back", "out for the count": nobody comes or goes."""
    if word(toks, cue.end) in MINE and not objects(stretch, toks):
        return bool(strange(cue, stretch, toks, taken))
    if word(toks, cue.start) == "out" and word(toks, cue.start - 1).endswith("ing"):
        return cue.start > stretch.start and word(toks, cue.start - 1) not in GOING  # "crying out for tea"
    if cue.value == "moved" and word(toks, cue.start - 1) in OTHERS and phrase_of(cue, toks) == "moved":
        return True  # "big clot moved", "label moved"
    if _is_of_nurse(cue, stretch, toks):
        return True
    if not LISTED.isdisjoint(toks.said[cue.start + 1 : cue.end]):
        return True  # "on the transfer list for rehab"
    if word(toks, cue.end - 1) in {"transfer", "discharge", "move"} and word(toks, cue.end) in LISTS:
        return True  # "on the transfer list"
    if word(toks, cue.start - 1) in TOPIC and word(toks, cue.start).endswith("ing"):
        return True  # "anxious about going home"
    if cue.value == "away" and _is_asleep(cue, toks):
        return True
    from_somewhere = "from" in toks.said[stretch.start : stretch.end]
    behind = cue.end + (word(toks, cue.end) == ",")
    if cue.value == "back" and word(toks, cue.end - 1) == "bed" and not starts_number(toks, behind):
        return not from_somewhere  # "back in bed after walking the hall"
    if cue.value != "back" or word(toks, cue.end - 1) != "back":
        return False
    body = word(toks, cue.start - 1) in OF_SOMEBODY and not SORE.isdisjoint(toks.said[cue.end : cue.end + 2])
    lain = word(toks, cue.start - 2) in {"on", "off"} and word(toks, cue.start - 1) in OF_SOMEBODY
    after_is = cue.end + (word(toks, cue.end) in {"is", "was", "feels", "still"})
    apart = cue.start == 0 or word(toks, cue.start - 1) in {",", ".", ";", "(", "-", "and", "!"}
    body |= (
        apart and cue.start == stretch.start and word(toks, after_is) in HURTS
    )  # "back is sore, heat pack on"
    body |= lain or word(toks, cue.start - 1) in MINE or _is_soon(cue, stretch, toks)
    into = word(toks, cue.end) in {"into", "in", "to"} and word(toks, cue.end + 1) == "bed"
    return body or (into and not from_somewhere and not starts_number(toks, cue.end + 2))


def _is_of_nurse(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "went back to look: 6 is 330", "ok went back in with a light, 3 is 1490": whoever writes."""
    apart = not (stretch.behind_figures or stretch.before_figures)
    went = cue.value == "back" and toks.said[cue.start - 1 : cue.end] == ("went", "back")
    begins = LITTLE.issuperset(toks.said[stretch.start : cue.start - 1])
    looks = word(toks, cue.end) == "to" and word(toks, cue.end + 1) in LOOKING
    return apart and went and begins and (looks or word(toks, cue.end) in {"in", "over", "round", "and"})


def _is_asleep(cue: Cue, toks: Toks) -> bool:
    """ "down for his nap", "off to sleep", "up to the bathroom", "snoring away": nobody leaves the ward."""
    k = cue.end
    if phrase_of(cue, toks) == "away" and word(toks, cue.start - 1) in SOUNDS:
        return True
    if word(toks, cue.end - 1) in OUTINGS:
        return True
    while word(toks, k) in ARTICLES or word(toks, k) in SORTS:
        k += 1
    return word(toks, k) in SLEEP | OUTINGS


def _is_soon(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "back in five", beside a bed that has its word: so many minutes, and no bed."""
    k = cue.end + 1
    number = word(toks, cue.end) == "in" and starts_number(toks, k) and (k == stretch.end)
    ends = (
        k + 1 == len(toks)
        or is_stop(toks, k + 1)
        or word(toks, k + 1) in BED_WORDS | {"min", "mins", "minutes"}
    )
    return number and ends and not BED_WORDS.isdisjoint(toks.words)


def reason(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "cardiac diet ordered", "new grad on peds cardiac": of another thing, or where somebody works."""
    del taken
    if word(toks, cue.end) in OTHER_THINGS:
        return True
    k = cue.start - 1
    while word(toks, k) in {"peds", "paeds", "the", "our", "adult"}:
        k -= 1
    works = word(toks, k) in {"on", "in", "at"} and not OF_SOMEBODY.isdisjoint(
        toks.said[cue.end : stretch.end]
    )
    return works or (word(toks, cue.start - 1) in {"hot", "fresh"} and phrase_of(cue, toks) == "air")


def fluid(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "bloody freezing in here", "blood taken": of no fluid in a drain."""
    del stretch, taken
    behind = word(toks, cue.end)
    said = phrase_of(cue, toks)
    return (said == "bloody" and behind in INTENSIFIED) or (said == "blood" and behind in TAKEN)


def _is_left_in(cue: Cue, toks: Toks) -> bool:
    """ "410 left in box"; "tube left in bed 5" is of the left one."""
    bed = word(toks, cue.end + 1) in BED_WORDS or starts_number(toks, cue.end + 1)
    return word(toks, cue.end) == "in" and not bed


def side(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "left my pen at the desk": what somebody did."""
    said = phrase_of(cue, toks)
    k = cue.end + (word(toks, cue.end) == ",")
    if word(toks, cue.end) in BODY and said in SIDES:
        return True  # "20 g iv left hand"
    spoken = said == "right" and word(toks, k) in SPEAKING  # "right, that's me"
    done = said == "left" and (word(toks, cue.end) in OTHERS_BEHIND_LEFT or _is_left_in(cue, toks))
    done |= said == "left" and word(toks, cue.end) == "the" and word(toks, cue.end + 1) in LEFT_OPEN
    return spoken or done or _is_manner(cue, stretch, toks) or _is_remarked(cue, stretch, toks, taken)


def _is_manner(cue: Cue, stretch: Stretch, toks: Toks) -> bool:
    """ "hooked right back up", "if I've got that right": how, and of no tube."""
    before, behind = word(toks, cue.start - 1), word(toks, cue.end)
    if phrase_of(cue, toks) != "right":
        return False
    done = before.endswith("ed") or before in {"put", "went", "got", "came", "clicked", "popped"}
    if done and behind in {"back", "up", "on", "in", "together"} and not starts_number(toks, cue.end + 1):
        return True
    own = SPEAKER.union({"if", "hope", "hopefully"}) & set(toks.said[stretch.start : cue.start])
    return bool(own) and before in {"it", "that", "this"} and cue.end == stretch.end


def _is_remarked(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "nothing left in the fridge", "right royal pain": apart from all figures, and of no tube."""
    if stretch.behind_figures or stretch.before_figures or stretch.end - stretch.start > LONGEST:
        return False
    said = toks.said[stretch.start : stretch.end]
    if not OF_TUBES.isdisjoint(said) or objects(stretch, toks):
        return False
    own = {k for k in taken if not cue.start <= k < cue.end}
    return bool(strange(cue, stretch, toks, taken)) and own.isdisjoint(range(stretch.start, stretch.end))


def closing(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "the change of shift was chaos": what it was like, and no line that closes it."""
    del taken
    told = not starts_number(toks, cue.end + 1)
    return word(toks, cue.end) in {"was", "is"} and told and cue.end + 1 < stretch.end


def what(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "clamped my car", "label back on the door", "pt pulled his dressing off": of no drain."""
    if phrase_of(cue, toks) in ON_AGAIN and SUCTION.isdisjoint(toks.words):
        of = toks.said[stretch.start : cue.start]
        return OF_TUBES.isdisjoint(of) and not LITTLE.issuperset(of)
    if word(toks, cue.end - 1) in TUGGED and cue.value == "dislodged":
        k = cue.end + (word(toks, cue.end) in {"his", "her", "their", "the", "own"})
        return word(toks, k) in THINGS | WORN and OF_TUBES.isdisjoint(toks.said[k : stretch.end])
    mine = word(toks, cue.end) in MINE and OF_TUBES.isdisjoint(toks.said[stretch.start : stretch.end])
    return mine and bool(strange(cue, stretch, toks, taken))


def same(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "with the same tube in place": which one it is, and not that nothing came."""
    del stretch, taken
    return phrase_of(cue, toks) in {"same", "the same"} and word(toks, cue.end) in SAME_THINGS


def leak(cue: Cue, stretch: Stretch, toks: Toks, taken: set[int]) -> bool:
    """ "leak in the staff room roof", "clamped for the air leak trial"."""
    del taken
    if word(toks, cue.end) in TRIALS and word(toks, cue.start - 1) in {
        "the",
        "a",
        "an",
        "for",
        "air",
        "his",
        "her",
    }:
        return True
    where = word(toks, cue.end) in {"in", "from"} and cue.end < stretch.end
    return where and not LEAKING.isdisjoint(toks.said[cue.end : stretch.end])
