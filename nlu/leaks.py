"""An air leak with the words around it: "small intermittent leak", "no leak on coughing".

Called by `recast`, once the cues have their meaning.
"""

from __future__ import annotations

from collections.abc import Iterator

from .numbers import Toks, glued, is_digits, word
from .pipeline import Cue, with_found
from .readthen import is_whole_clock
from .yesno import with_signs_in_a_row

SIZES = frozenset(
    {"small", "tiny", "little", "slight", "mild", "minimal", "minor", "moderate", "mod", "large", "big"}
    | {"huge", "new", "a", "an", "wee", "low", "faint"}
)
"""Words of how large it is, which has no slot."""
STOPS = frozenset({",", ";", ".", "!", "/", "and"})
MOVED = frozenset({"is", "has", "down", "up", "now", "still", "gone", "went", "come", "came", "back"})
MOVED |= {"improved", "reduced", "decreased", "increased", "dropped", "better", "worse", "about"}
TRENDS = frozenset({"worse", "better", "bigger", "larger", "smaller", "less", "improved", "reduced"})
TRENDS |= {"worsening", "increased", "increasing", "decreased", "decreasing", "improving", "ongoing"}
ENDING = frozenset({"", "now", "at", "since", "with", "when", "after", "today", "but"})
SLIGHTLY = frozenset({"is", "much", "a", "bit", "little", "slightly", "now", "getting", "still"})
GRADES = frozenset({"grade", "gr", "level"})
LARGEST = 7
"""Columns of a leak meter at most. Common practice, no source."""
SIGNS = frozenset({"+", "-"})
SIGNED = {"leak": "present", "tidal": "yes"}
"""What is told where a sign alone stands, with its plus or minus beside it."""
HURTING = frozenset(
    {"sore", "pain", "painful", "hurts", "hurting", "tender", "aches", "aching", "winces", "uncomfortable"}
)
BREATHING = frozenset({"on", "with", "w", "when", "during"})
LEAKING = frozenset({"leak", "leakgrade", "leakhow", "tidal"})


def leaks(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each leak with how large it is and how it goes on."""
    cues = with_found(cues, list(_graded(cues, toks))) if not MOVED.isdisjoint(toks.words) else cues
    if not SIGNS.isdisjoint(toks.words):
        cues = _with_own_sign(cues, toks)
    cues = with_signs_in_a_row(cues, toks)
    if LEAKING.isdisjoint([c.label for c in cues]):
        return cues
    cues = tuple(_signed(cue, toks) for cue in cues)
    cues = tuple(part for cue in cues for part in _with_its_time(cue, toks))
    if "cm" in toks.words:
        cues = tuple(_how_far(c, cues, toks) if c.label == "tidal" else c for c in cues)
    if any(c.label == "leakhow" for c in cues):
        cues = _without_breaths(cues, toks)
    if not any(c.label == "leak" for c in cues):
        return cues
    hows = {c.end: c for c in cues if c.label == "leakhow"}
    found = [_trending(_whole(cue, hows, toks), toks) if cue.label == "leak" else cue for cue in cues]
    spans = [(c.start, c.end) for c in found if c.label == "leak"]
    return tuple(c for c in found if c.label == "leak" or not any(a <= c.start < b for a, b in spans))


def is_closed(minus: int, toks: Toks) -> bool:
    """Whether a minus is glued behind its sign, or ends the clause, and is no dash before what follows.

    At the end of the message more may have come behind it: "1340 1900 leak -".
    """
    return glued(toks, minus) or word(toks, minus + 1) in STOPS


def is_signed(end: int, toks: Toks) -> bool:
    """ "AL-", "leak +": whether a sign has its plus or minus there, behind which comes no grade."""
    minus = word(toks, end) == "-" and (is_closed(end, toks) or not word(toks, end + 1))
    return (word(toks, end) == "+" or minus) and not (is_digits(toks, end + 1) and glued(toks, end + 1))


def has_sign(cue: Cue, toks: Toks) -> bool:
    """ "leak -", "-leak, -20 sxn": no grade comes behind it."""
    before = word(toks, cue.start - 1) in {"+", "-"} and glued(toks, cue.start)
    return before or is_signed(cue.end, toks)


def _with_own_sign(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "AL- tid+": the minus is of the leak before it, and "tid" has its own sign behind it."""
    ends = {c.end for c in cues if c.label in SIGNED or c.label == "leakgrade"}
    return tuple(
        c._replace(start=c.start + 1, value=SIGNED[c.label])
        if c.label in SIGNED and c.start in ends and _is_of_before(c, toks)
        else c
        for c in cues
    )


def _is_of_before(cue: Cue, toks: Toks) -> bool:
    signed = word(toks, cue.start) in SIGNS and cue.end > cue.start + 1
    return signed and (glued(toks, cue.start) or word(toks, cue.end) in SIGNS)


def _with_its_time(cue: Cue, toks: Toks) -> Iterator[Cue]:
    """ "340, leak at 1800": when it leaked, and no grade."""
    at = cue.end - 1
    graded = word(toks, cue.start - 2) == "grade"  # "grade 2 leak at 2145"
    if (
        cue.label != "leakgrade"
        or word(toks, at) != "at"
        or at == cue.start
        or graded
        or not is_whole_clock(toks, cue.end)
    ):
        yield cue
        return
    yield Cue("leak", "present", cue.start, at)
    yield Cue("filler", "", at, cue.end)


def _graded(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "leak down to a 2 out of 7", "leak now 3/7", "leak up to grade 4": how large it is by now."""
    for cue in cues:
        k = cue.end
        while word(toks, k) in MOVED:
            k += 1
        k += k > cue.end and word(toks, k) == "to"
        named = word(toks, k) in GRADES | {"a"}
        while word(toks, k) in GRADES | {"a"}:
            k += 1
        grade = is_digits(toks, k) and len(word(toks, k)) == 1 and int(word(toks, k)) <= LARGEST
        if cue.label == "leak" and cue.value == "present" and grade and k > cue.end:
            scaled = word(toks, k + 1) in {"/", "of"} or toks.said[k + 1 : k + 3] == ("out", "of")
            if scaled or named:
                yield Cue("leakgrade", "", cue.start, k)


def _signed(cue: Cue, toks: Toks) -> Cue:
    """ "AL-", "450 1900 AL": with no grade behind it, a leak."""
    if cue.label != "leakgrade":
        return cue
    behind = word(toks, cue.end)
    ends = behind in STOPS | {""} or (behind == "-" and not is_digits(toks, cue.end + 1))
    bare = word(toks, cue.start) == "al" and ends
    return cue._replace(label="leak", value="present") if bare or is_signed(cue.end, toks) else cue


def _how_far(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "swinging 2cm", "swing of 2-3 cm": how far, which has no slot; "swinging, 2 cm seal" is the seal's."""
    end = cue.end + (word(toks, cue.end) in {"of", "by", "about"})
    first = end
    while is_digits(toks, end) or (end > first and word(toks, end) in {"-", "to"}):
        end += 1
    behind = {c.start for c in cues if c.label in {"seal", "suction"}}
    far = end > first and word(toks, end) == "cm" and end + 1 not in behind and word(toks, end + 1) != "of"
    return cue._replace(end=end + 1) if far and cue.value == "yes" else cue


def _whole(cue: Cue, hows: dict[int, Cue], toks: Toks) -> Cue:
    """The leak from its first word on; "intermittent small leak" is as it goes on."""
    start, how = cue.start, None
    while _is_size(toks, start - 1) or (start in hows and cue.value == "present"):
        how = hows.get(start, how)
        start = how.start if how is not None and how.end == start else start - 1
    start += start < cue.start and word(toks, start) in {"a", "an"}
    if start >= cue.start or cue.value == "none":
        return cue
    return cue._replace(start=start, value=how.value if how is not None else cue.value)


def _is_size(toks: Toks, k: int) -> bool:
    """ "Small leak", "worsening leak", but not "no worse leak"."""
    return word(toks, k) in SIZES or (word(toks, k) in TRENDS and word(toks, k - 1) not in {"no", "not"})


def _trending(cue: Cue, toks: Toks) -> Cue:
    """ "leak worse", "bubbling is a bit better": there is one; "leak increased to 3" tells its grade."""
    end = cue.end
    while word(toks, end) in SLIGHTLY:
        end += 1
    trend = cue.value != "none" and word(toks, end) in TRENDS
    ends = word(toks, end + 1) in STOPS | ENDING
    return cue._replace(end=end + 1) if trend and ends else cue


def _without_breaths(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "no leak on coughing", "swinging when he coughs": when it was looked at, where no leak is told."""
    if any(c.label in {"leak", "leakgrade"} and c.value != "none" for c in cues):
        return cues
    return tuple(_at_a_breath(cue, cues, toks) for cue in cues)


def _at_a_breath(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "no leak, only when coughing" is none of these: then there is one."""
    if cue.label != "leakhow" or word(toks, cue.start) not in BREATHING:
        return cue
    start = cue.start - (word(toks, cue.start - 1) == ",")
    behind = any((c.label == "tidal" or c.value == "none") and c.end in {start, cue.start} for c in cues)
    if word(toks, start - 1) in HURTING and not any(c.label in {"leak", "leakgrade"} for c in cues):
        return cue._replace(label="filler", value="")  # "it's sore when she coughs"
    denied = any(c.label == "leak" and c.end != cue.start for c in cues)
    gushed = any(c.label == "amount" and c.end <= cue.start for c in cues)  # "gush of 220 with coughing"
    breath = behind or (gushed and not any(c.label in {"leak", "tidal"} for c in cues))
    if gushed and breath and not behind:
        return cue._replace(label="filler", value="")
    return cue if denied or not breath else cue._replace(label="word", value="breathing")
