"""Words that look like a tube, an event or a correction, and turn out to be another thing beside a line.

Called by `recast` for each cue.
"""

from __future__ import annotations

from .neighbours import number_follows
from .numbers import Toks, word
from .pipeline import Cue

EXACTLY = frozenset({"at", "on", "around", "about", "by", "near"})
BEING = frozenset(
    {"is", "'s", "s", "it's", "its", "we're", "are", "was", "sitting", "sits", "still", "reads"}
)
BEING |= {"reading", "now", "he's", "she's", "that's", "showing", "measures", "up"}
COUNTED = frozenset({"one", "two", "only", "single", "both", "1", "2", "three"})
READ = frozenset({"read", "taken", "checked", "measured", "at", "as", "done", "seen", "just", "noted"})
ASKED = frozenset({"when", "when's", "whens", "how", "what", "which", "am", "do", "does", "who", "?"})
UNSEEN = frozenset({"no", "nil", "not", "none", "never"})
JOINED = frozenset({"and", "which"})
DONE = frozenset(
    {"found", "did", "saw", "noticed", "put", "changed", "swapped", "replaced", "clamped", "unclamped"}
)
DONE |= {"opened", "stopped", "started", "moved", "took", "pulled", "removed", "fixed", "reconnected"}
LEFT_IN = frozenset({"for", "place", "situ", "until", "till", "overnight", "by", "as", "per", "and", ",", ""})


def turned_away(cue: Cue, toks: Toks) -> Cue:
    """The cue, with nothing said where its word is of something else."""
    if cue.value == "capacity" and _is_need(cue, toks):
        return cue._replace(label="word", value="need")
    if cue.value == "acknowledged" and UNSEEN.intersection(toks.said[max(0, cue.start - 3) : cue.start]):
        return cue._replace(label="word", value="seen")  # "no clot seen"
    if cue.label == "levelat" and word(toks, cue.start) == "it" and word(toks, cue.start - 1) in DONE:
        return cue._replace(label="word", value="it")  # "suction was off, found it at six": when
    if _is_exactly(cue, toks) or _counts_tubes(cue, toks) or _tells_when(cue, toks) or _is_left_in(cue, toks):
        return cue._replace(label="filler", value="")
    return cue


def _is_exactly(cue: Cue, toks: Toks) -> bool:
    """ "the line is right at a thousand": no right tube; "right is at 800" has one."""
    if (
        cue.label == "side"
        and word(toks, cue.end) == "of"
        and word(toks, cue.start - 1) in {"just", "is", "bit"}
    ):
        return number_follows(toks, cue.end + 1)  # "just right of four hundred"
    right = cue.label in {"side", "yes"} and word(toks, cue.end - 1) == "right"
    if right and word(toks, cue.end) == "on" and word(toks, cue.end + 2) in {"dot", "money", "nose"}:
        return True
    if not right or word(toks, cue.end) not in EXACTLY or word(toks, cue.end - 2) not in BEING:
        return False
    k = cue.end + 1
    while word(toks, k) in {"a", "the", "about", "around", "at"}:
        k += 1
    return number_follows(toks, k) or number_follows(toks, k - 1)


def _counts_tubes(cue: Cue, toks: Toks) -> bool:
    """ "just the one tube in this one": how many there are, and none that was placed."""
    counted = word(toks, cue.start - 1 - (word(toks, cue.start - 1) in {"chest", "drain"})) in COUNTED
    return cue.value == "placed" and counted and word(toks, cue.end - 1) in {"tube", "drain", "tubes", "in"}


def _is_left_in(cue: Cue, toks: Toks) -> bool:
    """ "drain left in for coroner": it stays where it is; "tube left in bed 5" has a side."""
    left = cue.label == "side" and word(toks, cue.end - 1) == "left" and word(toks, cue.end) == "in"
    return left and word(toks, cue.end + 1) in LEFT_IN


def _tells_when(cue: Cue, toks: Toks) -> bool:
    """ "it's come up to 510 and that was read at 2000": when the line was read, and nothing put right."""
    said = cue.value == "corrected" and cue.end - cue.start == 2 and word(toks, cue.start) == "that"
    return said and word(toks, cue.end) in READ and word(toks, cue.start - 1) in JOINED


def _is_need(cue: Cue, toks: Toks) -> bool:
    """ "12 will need a new box tonight": told beside a question, and not asked itself."""
    needed = word(toks, cue.start) in {"need", "needs"} and word(toks, cue.start - 1) in {
        "will",
        "to",
        "ll",
        "gonna",
    }
    return needed and ASKED.isdisjoint(toks.said[: cue.start])
