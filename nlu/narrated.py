"""Cues of events told in sentences: "pulled the chair over the tubing", "the old one showed 720".

What a verb means by what it was done to, who did it and where to. Called by `recast`, before any other rule.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from .byhimself import (
    ACCIDENTS,
    HIMSELF,
    OUT,
    OUTSIDERS,
    by_accident,
    by_himself,
    by_others,
    pulled_along,
    took_it_out,
)
from .byneed import by_need, members, needing
from .bywhom import BY_WHOM
from .changeover import CHANGEOVER
from .clock import clocks
from .fetched import FETCHED
from .goings import GOINGS, PERSONS, Rule, bed_ends, past
from .heldbefore import HELD_BEFORE
from .neighbours import phrase_of
from .nothingfrom import NOTHING_FROM
from .numbers import Toks, is_digits, starts_number, word
from .ofother import OF_OTHER
from .oldended import OLD_ENDED
from .oldones import Message
from .onabed import ON_A_BED
from .outandin import OUT_AND_IN
from .passing import FIRST_ASKING, PASSING
from .patterns.asides import STAFF
from .patterns.leads import TUBE_NAMES
from .patterns.narrated import (
    BODY,
    BY_CHANCE,
    COUNTING,
    FITTING,
    FURNITURE,
    HANDLED,
    NEEDING,
    OF_DRAINS,
    PUT_IN,
    SHOWED,
    STOPS,
    THINGS,
    WHOSE,
)
from .pipeline import Cue, with_found
from .recounted import RECOUNTED
from .referring import REFERRING
from .saidofaline import SAID_OF_A_LINE
from .smallwords import SMALL_WORDS
from .twosides import TWO_SIDES

SIDES = TUBE_NAMES | {"l", "r", "lt", "rt", "both"}
LONE = frozenset({"pulled", "removed", "pulled at", "discontinued"})
HANGING = frozenset({"hanging", "hung", "hooked", "hangs", "attached", "secured", "clipped", "kept"})
ASKED_FOR = frozenset({"ordered", "asked", "wanted", "wants", "requested", "said", "prescribed", "advised"})
DONE_BY = frozenset({"changed", "swapped", "replaced", "exchanged", "clamped", "unclamped", "turned"})


def narrated(cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> tuple[Cue, ...]:
    """The cues, those of such sentences as they are meant."""
    said = Message(cues, toks, labelled)
    for rule in _members(needing(_BY_WORD, toks.words)):
        found = list(rule(said))
        if found:
            said = said._replace(cues=with_found(said.cues, found))
    return said.cues


TO_CHANGE = frozenset({"change", "swap", "replace", "switch", "be"})
CHANGING = frozenset({"changing", "swapping", "replacing", "switching"})
PLANNING = frozenset({"to", "will", "i'll", "we'll", "needs", "need", "gonna", "now", "ll"})


def _of_a_thing(said: Message) -> Iterator[Cue]:
    """ "pulled the chair over the tubing", "removed his mask": what was pulled is no drain."""
    toks = said.toks
    for cue in said.cues:
        if cue.value != "removed" or phrase_of(cue, toks) not in LONE or word(toks, cue.end) not in WHOSE:
            continue
        k = past(toks, cue.end, WHOSE)
        own = word(toks, k) in THINGS | SIDES | COUNTING or any(
            c.start <= k < c.end and c.label in {"tubeword", "canister", "side", "place"} for c in said.cues
        )
        if word(toks, k).isalpha() and not own:
            yield Cue("word", "turned", cue.start, cue.end)


def _side_of_bed(said: Message) -> Iterator[Cue]:
    """ "drain is hanging on the side of the bed": where it hangs, and it has not tipped."""
    toks = said.toks
    for cue in said.cues:
        end = past(toks, cue.end, frozenset({"of"}))
        of = past(toks, end, WHOSE)
        side = cue.value == "tipped" and word(toks, cue.end - 1) == "side" and end > cue.end
        hangs = side and not HANGING.isdisjoint(toks.said[cue.start - 1 : cue.end])
        if hangs and word(toks, of) in FURNITURE and not starts_number(toks, of + 1):
            yield Cue("filler", "", cue.start, of + 1)


def _nearly_full(said: Message) -> Iterator[Cue]:
    """ "will change it soon, nearly full": what is told beside what lies ahead, and no question."""
    toks = said.toks
    first = word(toks, 0) in FIRST_ASKING and word(toks, 1) not in TO_CHANGE
    asks = first or not {"?", "do"}.isdisjoint(toks.words)
    ahead = not CHANGING.isdisjoint(toks.words)
    ahead |= any(word(toks, k) in TO_CHANGE and word(toks, k - 1) in PLANNING for k in range(1, len(toks)))
    for cue in said.cues if ahead and not asks else ():
        if cue.value == "capacity" and word(toks, cue.end - 1) == "full":
            yield Cue("word", "full", cue.start, cue.end)


def _needed(said: Message) -> Iterator[Cue]:
    """ "needs a new canister soon": what is not done yet, and no question either."""
    toks = said.toks
    for cue in said.cues:
        start = cue.start
        while word(toks, start - 1) in WHOSE:
            start -= 1
        fresh = word(toks, cue.start) in {"new", "fresh"}
        if cue.value == "exchanged" and fresh and word(toks, start - 1) in NEEDING:
            yield Cue("word", "topped", start - 1, cue.end)


def _put_in(said: Message) -> Iterator[Cue]:
    """ "chest tube on the right put in at 1410": a tube that was placed, with its side between."""
    toks = said.toks
    for cue in said.cues:
        on = past(toks, cue.end, frozenset({"on", "to", "in", "the", "his", "her"}))
        side = past(toks, on, SIDES | {"side", "chest"})
        verb = past(toks, side, frozenset({"was", "is", "been", "has", "just"}))
        if cue.label != "tubeword" or side == on or word(toks, verb) not in PUT_IN:
            continue
        end = verb + 1 + (word(toks, verb + 1) == "in")
        if end == verb + 1 and word(toks, verb) in {"put", "went", "popped"}:
            continue
        yield cue._replace(label="kind", value="placed")
        yield Cue("filler", "", verb, end)


def _swapped_over(said: Message) -> Iterator[Cue]:
    """ "box swapped over 1340": the word is of the change, and no limit."""
    for cue in said.cues:
        over = word(said.toks, cue.end) == "over" and word(said.toks, cue.end + 1) not in {"to", "with"}
        if cue.value == "exchanged" and over:
            yield cue._replace(end=cue.end + 1)


def _fitted(said: Message) -> Iterator[Cue]:
    """ "hooked up new collection chamber": the verb is of the change."""
    toks = said.toks
    for cue in said.cues:
        if cue.value != "exchanged" or word(toks, cue.start) not in {"new", "fresh"}:
            continue
        start = cue.start - (word(toks, cue.start - 1) in WHOSE)
        verb = start - 1 - (word(toks, start - 1) in {"up", "on"})
        if word(toks, verb) in FITTING:
            yield cue._replace(start=verb)


def _showed(said: Message) -> Iterator[Cue]:
    """ "canister showed 105", "the old one showed 720": what it held."""
    toks = said.toks
    for cue in said.cues:
        k = cue.end + (word(toks, cue.end) in {"was", "is"})
        if cue.label not in {"canister", "old", "level"} or word(toks, k) not in SHOWED:
            continue
        if starts_number(toks, k + 1) or word(toks, k + 1) in {"at", "about"}:
            at = word(toks, k + 1) == "at"
            yield cue._replace(end=k + 1 + at) if cue.label == "old" else Cue("level", "", k, k + 1)


def _when_taken(said: Message) -> Iterator[Cue]:
    """ "the old one had 720 when we took it off": when that was."""
    toks = said.toks
    first = next((c.start for c in said.cues if c.value in {"exchanged", "removed"}), len(toks))
    for k in range(first, len(toks) - 3):
        if toks.said[k : k + 2] == ("when", "it") and word(toks, k + 2) in {"came", "went"}:
            off = past(toks, k + 3, frozenset({"off", "out", "down", "over"}))
            if off > k + 3 and word(toks, off) in STOPS:
                yield Cue("filler", "", k, off)
        if word(toks, k) not in {"when", "as", "before"} or word(toks, k + 1) not in PERSONS | STAFF:
            continue
        end = k + 2
        if word(toks, end) in HANDLED and word(toks, end + 1) == "it":
            end = past(toks, end + 2, frozenset({"off", "out", "down", "over", "away"}))
            if word(toks, end) in STOPS:
                yield Cue("filler", "", k, end)


def _under_him(said: Message) -> Iterator[Cue]:
    """ "tubing kinked under his hip": where it was."""
    toks = said.toks
    happened = any(c.label == "what" for c in said.cues)
    for k in range(1, len(toks) if happened else 0):
        own = past(toks, k, WHOSE)
        if own > k and word(toks, k - 1) in {"under", "underneath", "beneath", "behind", "against", "by"}:
            end = past(toks, own, BODY)
            if end > own:
                yield Cue("word", "under", k - 1, end)


def _same_of_another(said: Message) -> Iterator[Cue]:
    """ "no change to the meds": not of the drain."""
    toks = said.toks
    for cue in said.cues:
        if cue.label == "same" and word(toks, cue.end) in {"to", "in", "with"}:
            k = past(toks, cue.end + 1, WHOSE)
            if k > cue.end + 1 and word(toks, k).isalpha() and word(toks, k) not in THINGS | OF_DRAINS:
                yield Cue("word", "remains", cue.start, k + 1)


def _as_ordered(said: Message) -> Iterator[Cue]:
    """ "suction is on 20 as the doctor ordered": what it is, on whose word."""
    toks = said.toks
    for k in range(2, len(toks) - 2):
        if word(toks, k) == "as" and any(is_digits(toks, j) for j in range(k)):
            who = past(toks, k + 1, WHOSE | {"dr"})
            if word(toks, who) in STAFF and word(toks, who + 1) in ASKED_FOR:
                yield Cue("filler", "", k, who + 2)


def _came_out(said: Message) -> Iterator[Cue]:
    """ "tube came out 0540 final 220": with its last level and its time, taken out as was meant."""
    toks = said.toks
    for k, cue in enumerate(said.cues):
        out = cue.value == "dislodged" and phrase_of(cue, toks).endswith("came out")
        if not out or not toks.words.isdisjoint(BY_CHANCE) or not clocks(toks, cue.end):
            continue
        if any(c.label == "old" and "final" in toks.said[c.start : c.end] for c in said.cues[k:]):
            yield cue._replace(label="kind", value="removed")


def _changed_bed(said: Message) -> Iterator[Cue]:
    """ "34 changed @1640, final 1345": with a final level, what was changed is its canister."""
    toks = said.toks
    if any(c.label in {"kind", "what"} for c in said.cues):
        return
    final = next((c.start for c in said.cues if c.label == "old"), 0)
    for k in range(1, final):
        timed = word(toks, k + 1) in {"at", "@", ","} or is_digits(toks, k + 1)
        if word(toks, k) in {"changed", "swapped", "replaced"} and timed and bed_ends(said, k):
            yield Cue("kind", "exchanged", k, k + 1)


def _am_i(said: Message) -> Iterator[Cue]:
    """ "at 6:44 am I changed the canister": the half of the day and who did it, and nothing is asked."""
    for cue in said.cues:
        if phrase_of(cue, said.toks) == "am i" and is_digits(said.toks, cue.start - 1):
            yield Cue("filler", "", cue.end - 1, cue.end)


def _therapist(said: Message) -> Iterator[Cue]:
    """ "RT changed the canister in 9": who did it, and no right tube; beside a left one it may be."""
    toks = said.toks
    for k, text in enumerate(toks.said) if toks.words.isdisjoint({"lt", "left", "l"}) else ():
        opens = k == 0 or word(toks, k - 1) in STOPS
        if text == "rt" and opens and word(toks, k + 1) in DONE_BY:
            yield Cue("filler", "", k, k + 1)


RULES: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset({"am"}), _am_i),
    (frozenset({"rt"}), _therapist),
    (frozenset({"pulled"}), pulled_along),
    (OUT, took_it_out),
    (HIMSELF | {"by"}, by_himself),
    (ACCIDENTS, by_accident),
    (OUTSIDERS | {"he", "she"}, by_others),
    (frozenset({"pulled", "removed", "discontinued"}), _of_a_thing),
    (frozenset({"side"}), _side_of_bed),
    (NEEDING, _needed),
    (frozenset({"full"}), _nearly_full),
    (PUT_IN, _put_in),
    (FITTING, _fitted),
    (frozenset({"over"}), _swapped_over),
    (SHOWED, _showed),
    (HANDLED | {"came", "went"}, _when_taken),
    (BODY, _under_him),
    (frozenset({"to", "in", "with"}), _same_of_another),
    (frozenset({"as"}), _as_ordered),
    (frozenset({"came"}), _came_out),
    (frozenset({"changed", "swapped", "replaced"}), _changed_bed),
)
"""Each rule with the words of which it needs one."""
EVERY = (
    *OF_OTHER,
    *RULES,
    *FETCHED,
    *RECOUNTED,
    *OLD_ENDED,
    *CHANGEOVER,
    *HELD_BEFORE,
    *OUT_AND_IN,
    *TWO_SIDES,
    *NOTHING_FROM,
    *BY_WHOM,
    *SAID_OF_A_LINE,
    *GOINGS,
    *PASSING,
    *REFERRING,
    *ON_A_BED,
    *SMALL_WORDS,
)
_BY_WORD = by_need(hints for hints, _ in EVERY)
_members = members([rule for _, rule in EVERY])
