"""What is as it was, and how it was before: "same suction", "bloody, was straw coloured at handover".

Neither is found now: what has not changed of a check is no line, and an old look no finding. Called by
`recast`, once the cues have their meaning.
"""

from __future__ import annotations

from .items import FINDINGS
from .neighbours import number_follows, phrase_of
from .numbers import Toks, word
from .patterns.leads import BED_WORDS
from .patterns.ownclauses import DOUBTFUL, DRAINS, OBJECTS
from .pipeline import Cue, in_order

OUT_OF = BED_WORDS | {"it", "him", "her"}
COMING = frozenset({"has", "have", "come", "came", "been", "is", "coming"})
SETTINGS = frozenset({"seal", "suction", "wall", "leakgrade"})
OF_CHECKS = FINDINGS | SETTINGS
NAMING = frozenset(
    {
        "checks",
        "check",
        "settings",
        "setting",
        "color",
        "colour",
        "character",
        "consistency",
        "dressing",
        "appearance",
    }
)
"""Words of what is looked at beside the line."""
FOUND = FINDINGS | {"what"}
BETWEEN = frozenset({"is", "are", "still", "the", "all", "in", "to", "on", "with", "of", "as", "for"})
MOST_BETWEEN = 3
UNCHANGED = frozenset({"same", "change", "unchanged", "changed"})
"""With one of these at its end a phrase has no line in it: "same level, no leak" has."""
NAMED = frozenset({"leak", "air leak", "swing", "swings", "the leak", "the swing", "bubble"})
"""Words that name what is looked for, and say not whether it is there."""
AS_EARLIER = frozenset(
    {("as", "before"), ("as", "earlier"), ("as", "previously"), ("as", "was"), ("as", "usual")}
)
EARLIER = frozenset({"before", "earlier", "yesterday", "previously"})
TURNED = frozenset({"to", "now", "turned", "became", "gone", "went", "is", "into"})
"""Behind these a look is how it has turned, whenever that was: "from serous to bloody yesterday"."""
HANDING = frozenset({"handover", "handoff", "report"})
PAST = frozenset({"was", "were", "previously", "formerly", "less"})
NOT = frozenset({"not", "isn't", "isnt", "aint", "ain't", "stopped"})
OF_BLOOD = frozenset(
    {"thinner", "thinners", "transfusion", "transfusions", "pressure", "pressures", "test", "tests", "work"}
    | {"sugar", "sugars", "gas", "gases", "culture", "cultures", "taken", "sample", "samples", "products"}
    | {
        "results",
        "bank",
        "glucose",
        "count",
        "running",
        "hung",
        "sent",
        "up",
        "unit",
        "units",
        "loss",
        "going",
    }
)
"""Behind "blood" these make it the patient's, and nothing that is in the drain."""
BAGS = frozenset({"unit", "units", "bag", "bags", "pint"})
CLOTTED = frozenset({"clot", "clots", "dark", "blood", "brown", "bloody", "clotted"})
CLEARED = frozenset({"gone", "cleared", "resolved", "stopped", "settled"})
SHADES = frozenset({"being", "more", "a", "bit", "very", "quite", "just", "only", "mostly", "light", "clear"})
AT = frozenset({"at", "on", "during", "in"})
SINCE = frozenset({"since", "after", "before", "from"})
MEALS = frozenset({"breakfast", "dinner", "lunch", "supper", "tea", "brekkie"})
WHEN = frozenset(
    {"this", "last", "earlier", "before", "yesterday", "overnight", "the", "in", "it", "was", "morning"}
    | {"afternoon", "evening", "night", "shift", "hour", "day", "time", "handover", "usual", "previous"}
)
"""Words of an earlier time that something is compared with."""
OWN = frozenset({"the", "my", "this", "last", "morning", "night"})


STOPS = frozenset({",", ".", ";", "!", "and", "but"})
_OF_LINES = """
out new fresh x so far today on at r l left right overnight extra additional significant much h hours hrs hr
"""
NOTHING_OF = DOUBTFUL | DRAINS | OBJECTS | WHEN | SINCE | frozenset(_OF_LINES.split())
"""With one of these a "nil" may be how much came."""
ARROWS = frozenset({">", "\u2192", "\u21d2"})
_BEHIND_SAME = """
as since at for on in of bed room level line mark reading number amount output volume drainage again still so
all both here now too over this that from last today tonight time place spot and but with to l r left right ml
thing though tho overnight yesterday earlier before by during w no nil lvl figure value total it rn atm pls
please thanks
"""
BEHIND_SAME = frozenset(_BEHIND_SAME.split())
"""Behind "same" these leave it the line that is the same."""
BARELY = frozenset({"barely", "hardly", "scarcely"})
MUCH = frozenset({"much", "loads", "lots"})
A_LOT = {("a", "lot"), ("a", "bit"), ("very", "much"), ("that", "much"), ("all", "that"), ("too", "much")}
MOVING = frozenset({"changed", "moved"})
BOXES = frozenset({"canister", "box", "bottle", "chamber"})
"""What is changed when it is full: that it has not is told of no line."""
LOOKED_AT = frozenset({"check", "checks", "obs", "vitals", "observations"})


def as_before(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, without what only tells how a drain was or that a check has not changed."""
    labels = {c.label for c in cues}
    if "same" in labels or not BARELY.isdisjoint(toks.words):
        starts = {c.start for c in cues if c.label not in {"filler", "word", "order"}}
        cues = tuple(_hardly(cue, toks) for cue in cues if not _is_of_another(cue, starts, toks))
        checks = tuple(c for c in cues if c.label in OF_CHECKS)
        cues = tuple(_of_check(cue, checks, toks) for cue in cues)
    if "as" in toks.words and labels & {"leak", "tidal"}:
        cues = tuple(_as_it_was(cue, cues, toks) for cue in cues)
    if "fluid" in labels:
        cues = tuple(_of_now(cue, cues, toks) for cue in cues)
    old = _old_looks(cues, toks) if "fluid" in labels else []
    cues = tuple(_meal(cue, toks) for cue in cues) if "other" in labels else cues
    old += _compared(toks) if "than" in toks.words else []
    if "ask" in labels and labels & FOUND:
        old += _handovers(cues, toks)
    return _left_out(cues, old) if old else cues


def _hardly(cue: Cue, toks: Toks) -> Cue:
    """ "hasn't changed much", "has barely moved": a little came, nobody moved, and how much is not said; and
    "nil resp distress" is of no drain."""
    much = word(toks, cue.end) in MUCH or toks.said[cue.end : cue.end + 2] in A_LOT
    little = cue.label == "same" and word(toks, cue.end - 1) in MOVING and much
    if cue.label == "same" and word(toks, cue.end - 1) == "changed" and word(toks, cue.start - 1) in BOXES:
        return cue._replace(label="word", value="unchanged")  # "canister has not changed yet"
    barely = cue.value == "moved" and word(toks, cue.start - 1) in BARELY
    return cue._replace(label="filler", value="") if little or barely or _is_of_patient(cue, toks) else cue


def _is_of_another(cue: Cue, starts: set[int], toks: Toks) -> bool:
    """ "same note orders furosemide", "same nurse": what is the same is no line."""
    bare = cue.label == "same" and phrase_of(cue, toks) in {"same", "the same"}
    named = word(toks, cue.end).isalpha() and cue.end not in starts
    return bare and named and word(toks, cue.end) not in BEHIND_SAME


def _is_of_patient(cue: Cue, toks: Toks) -> bool:
    """ "nil resp distress", "nil SOB": words up to the next stop, and none of a drain or of time."""
    if cue.label != "same" or phrase_of(cue, toks) != "nil":
        return False
    end = cue.end
    while word(toks, end).isalpha() and word(toks, end) not in {"and", "but"}:
        end += 1
    said = toks.said[cue.end : end]
    return bool(said) and word(toks, end) in STOPS | {""} and NOTHING_OF.isdisjoint(said)


def _as_it_was(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "leak and swing as before": whatever that was; not "swinging as before", "small leak, as before"."""
    named = {c.start: c.end for c in cues if phrase_of(c, toks) in NAMED}
    k = named.get(cue.start)
    while k is not None and (k in named or word(toks, k) in {"and", ",", "&", "/", "+", "the"}):
        k = named.get(k, k + 1)
    if k is None or toks.said[k : k + 2] not in AS_EARLIER:
        return cue
    return cue._replace(label="unchanged", value="")


def _of_now(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "on blood thinners", "blood earlier, clear now", "a bit of blood, gone now": no look of now."""
    if cue.label == "old" and cue.end - cue.start == 1 and word(toks, cue.end) in CLOTTED:
        return cue._replace(label="filler", value="")  # "old dark red clots": no old canister
    if cue.label != "fluid":
        return cue
    of_patient = word(toks, cue.end - 1) == "blood" and (
        word(toks, cue.end) in OF_BLOOD
        or (word(toks, cue.start - 1) == "of" and word(toks, cue.start - 2) in BAGS)
    )
    arrow = cue.end + (word(toks, cue.end) in {"-", "="})
    if word(toks, arrow) in ARROWS and any(c.label == "fluid" and c.start == arrow + 1 for c in cues):
        return cue._replace(label="filler", value="")  # "sang -> serosang -> serous": what it was
    alone = not any(c.label == "fluid" and c is not cue for c in cues)
    gone = alone and (word(toks, cue.end) in EARLIER - {"yesterday"} or _is_gone(toks, cue.end))
    return cue._replace(label="word", value="look") if of_patient or gone else cue


def _is_gone(toks: Toks, k: int) -> bool:
    """ ", gone now", "but cleared"."""
    while word(toks, k) in {",", "but", "now", "has", "it's", "its", "all", "then", "and", "-"}:
        k += 1
    return word(toks, k) in CLEARED and word(toks, k + 1) in {"", "now", ".", ",", "up", "again", "since"}


def _meal(cue: Cue, toks: Toks) -> Cue:
    """ "put out another 80 since breakfast": since when, and nothing that was eaten."""
    if cue.label != "other" or phrase_of(cue, toks) not in MEALS or word(toks, cue.start - 1) not in SINCE:
        return cue
    return cue if number_follows(toks, cue.end) else cue._replace(label="word", value="lunch")


def _compared(toks: Toks) -> list[tuple[int, int]]:
    """ "1115 at 1800, slower than this morning": how it was then is compared, and that time is of no line."""
    found = []
    for k in (k for k, text in enumerate(toks.said) if text == "than" and k > 0):
        end = k + 1
        while word(toks, end) in WHEN:
            end += 1
        more = word(toks, k - 1)
        compared = more in {"more", "less"} or (more.endswith("er") and more not in {"other", "rather"})
        if compared and end > k + 1 and not (number_follows(toks, end) or word(toks, end).isalpha()):
            found.append((k - 1, end))
    return found


def _left_out(cues: tuple[Cue, ...], spans: list[tuple[int, int]]) -> tuple[Cue, ...]:
    """The cues, with those of these stretches as words that say nothing."""
    kept = [c for c in cues if not any(start <= c.start < end for start, end in spans)]
    kept += [Cue("filler", "", start, end) for start, end in spans]
    return in_order(kept)


def _of_check(cue: Cue, checks: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "same suction", "leak unchanged", "no change in color": of that, and of no line."""
    if cue.label != "same" or cue.value == "amount":
        return cue
    of_check = _is_behind_check(cue, checks, toks) or _is_before_check(cue, checks, toks)
    return cue._replace(label="unchanged", value="") if of_check else cue


def _is_behind_check(cue: Cue, checks: tuple[Cue, ...], toks: Toks) -> bool:
    k = cue.start
    while word(toks, k - 1) in BETWEEN and k > cue.start - MOST_BETWEEN:
        k -= 1
    named = k - 1
    while named >= 0 and (word(toks, named).isdecimal() or word(toks, named) in {"on", "for", "in", "bed"}):
        named -= 1  # "checks on 9 same as last"
    return any(c.end == k for c in checks) or word(toks, k - 1) in NAMING or word(toks, named) in LOOKED_AT


def _is_before_check(cue: Cue, checks: tuple[Cue, ...], toks: Toks) -> bool:
    """ "same leak", "no change to suction"; in "same, no leak" and "same suction 20" more is told."""
    k = cue.end
    while word(toks, k) in BETWEEN and k < cue.end + MOST_BETWEEN:
        k += 1
    found = (c for c in checks if cue.end <= c.start <= k and c.value not in {"none", "no"})
    since = word(toks, k) in {"check", "checks"} and not checks and _is_since(cue, toks)
    named = any(not number_follows(toks, c.end) for c in found) or (word(toks, k) in NAMING and not since)
    return named and (k > cue.end or word(toks, cue.end - 1) in UNCHANGED | {"last"})


def _is_since(cue: Cue, toks: Toks) -> bool:
    """ "same as last check", "no change since last check": since when, where no check is told."""
    return not {"last", "since", "previous", "as", "from"}.isdisjoint(toks.said[cue.start : cue.end])


def _old_looks(cues: tuple[Cue, ...], toks: Toks) -> list[tuple[int, int]]:
    """ "bloody, was straw coloured before": of two looks, the one that was is not what is found now."""
    looks = [c for c in cues if c.label == "fluid"]
    old = [span for look in looks if (span := _past(look, toks)) is not None]
    return old if len(old) < len(looks) else []


def _past(look: Cue, toks: Toks) -> tuple[int, int] | None:
    """Where it is said that it was so: from the word for that on, or up to the one behind it."""
    k = look.start - 1
    while word(toks, k) in SHADES:
        k -= 1
    if word(toks, k) in PAST:
        return k, look.end
    if word(toks, k) in NOT or (word(toks, k) == "longer" and word(toks, k - 1) == "no"):
        any_more = 2 if word(toks, look.end) == "any" else int(word(toks, look.end) in {"anymore", "now"})
        return k - (word(toks, k) == "longer"), look.end + any_more
    before = word(toks, look.end) in EARLIER
    handed = word(toks, look.end) in AT and word(toks, look.end + 1) in HANDING
    if not (before or handed) or word(toks, k) in TURNED:
        return None
    return look.start, look.end + before


def _handovers(cues: tuple[Cue, ...], toks: Toks) -> list[tuple[int, int]]:
    """ "was straw coloured at handover", "leak since report": when that was, and nothing that is asked."""
    handovers = [c for c in cues if c.label == "ask" and c.value == "handoff"]
    found = [(_when(c, toks), c) for c in handovers]
    told = {c.end for c in cues if c.label in FOUND}
    whole = (word(toks, first) in AT or first in told for first, _ in found)
    each = zip(found, whole, strict=True)
    return [(first if own else cue.start, cue.end) for (first, cue), own in each if first < cue.start]


def _when(cue: Cue, toks: Toks) -> int:
    k = cue.start - 1
    while word(toks, k) in OWN:
        k -= 1
    return k if word(toks, k) in AT | SINCE else cue.start


def of_nothing(cue: Cue, toks: Toks) -> int:
    """Where a "nothing" begins that came, and not "out of the top"; the same place where none does."""
    start = cue.start
    while word(toks, start - 1) in COMING:
        start -= 1
    of_drain = word(toks, cue.end) != "of" or word(toks, cue.end + 1) in OUT_OF
    came = word(toks, cue.start) in COMING | {"out", "drained"} and "?" not in toks.words
    return start - 1 if word(toks, start - 1) == "nothing" and came and of_drain else cue.start
