"""Cues of a canister that was changed over: "second canister started", "chg can 20 1670 final", "renewed".

The verbs of putting up a new one, and what that shows. Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .goings import Rule, bed_ends, past
from .heldbefore import FORMER, FRESH, NOUNS, STOPS, WHEN, behind_bed, ends_told, former, is_volume, volume_at
from .numbers import is_digits, starts_number, word
from .oldones import OF_BED, Message, is_timed
from .patterns.narrated import WHOSE
from .pipeline import Cue

NEXT = frozenset({"second", "2nd", "third", "3rd", "next", "replacement"})
CHANGED = frozenset({"changed", "swapped", "replaced", "switched", "exchanged", "renewed"})
SHORTLY = frozenset({"chg", "chgd", "chged", "chng", "swap", "exch", "change"})
OVER = frozenset({"over", "out"})
STARTED = frozenset(
    {"fitted", "attached", "connected", "commenced", "started", "hung", "applied", "placed", "installed"}
    | {"hooked", "set", "put", "on", "up", "primed"}
)
HELPING = frozenset({"was", "is", "has", "been", "just", "now", "got"})
ON = frozenset({"up", "on", "in", "place"})
STARTING = frozenset({"start", "starts", "started", "starting", "begins", "begin", "beginning", "began"})
STARTING |= {"opening", "opens"}
FROM = frozenset({"at", "from", "with", "on", "of", ":", "="})
RIGHTING = frozenset({"?", "to", "from", "not", "should", "wrong", "instead"})
"""With one of these a change is of a line, or none."""


def _started(said: Message) -> Iterator[Cue]:
    """ "new drain bottle commenced", "new canister was fitted at 1800", "second canister started"."""
    toks = said.toks
    old = any(former(toks, k) for k in range(len(toks)))
    for k in range(len(toks) - 1):
        second = toks.said[k : k + 2] == ("2", "nd")
        noun = k + 1 + second
        noun += word(toks, noun) in {"drain", "drainage", "chest"} and word(toks, noun + 1) in NOUNS
        anew = word(toks, k) in FRESH or (old and (second or word(toks, k) in NEXT))
        if not anew or word(toks, noun) not in (NOUNS - {"unit", "system"}) | {"one", "drain"}:
            continue
        if word(toks, noun) == "drain" and word(toks, k) not in FRESH:
            continue
        verb = past(toks, noun + 1, HELPING)
        end = past(toks, verb + 1, ON)
        then = word(toks, end) in WHEN - {"of"} or is_digits(toks, end)
        longer = any(c.value == "exchanged" and c.start < k < c.end for c in said.cues)
        tube = word(toks, noun) == "drain" and not old and word(toks, verb) == "placed"
        longer |= tube and any(c.value == "placed" and c.start == k for c in said.cues)
        opened = word(toks, end) in {"at", "with"} and not is_timed(toks, end + 1)
        opened |= any(c.label == "opens" and c.start < end and c.end > verb for c in said.cues)
        into = word(toks, noun) == "one" and "in" in toks.said[verb:end]
        if longer or opened or into or (word(toks, verb) == "put" and word(toks, k - 1) in {"a", "the"}):
            continue
        if word(toks, verb) in STARTED and then and word(toks, k - 1) not in {"not", "needs", "no"}:
            yield Cue("kind", "exchanged", k, end)
            yield from [Cue("filler", "", end, end + 1)] * (word(toks, end) == "at")


def _changed_over(said: Message) -> Iterator[Cue]:
    """ "changed over 18 canister", "full up @ 830 ml, changed over at 1839", "bottle, changed with new"."""
    toks = said.toks
    boxed = not (NOUNS | {"full"}).isdisjoint(toks.words)
    for k in range(len(toks) if boxed and not said.tells("exchanged") else 0):
        if word(toks, k) not in CHANGED:
            continue
        end = past(toks, k + 1, OVER)
        fresh = past(toks, end + 1, frozenset({"a", "the"}))
        anew = word(toks, end) in {"with", "for", "to"} and word(toks, fresh) in FRESH
        last = past(toks, fresh + 1, NOUNS | {"one"}) if anew else end
        bed = past(toks, end, frozenset({"bed", "room", "rm", "out", "'s", "s", "the"}))
        box = is_digits(toks, bed) and next((j for j in range(bed + 1, bed + 4) if word(toks, j) in NOUNS), 0)
        if (
            box
            and end > k + 1
            and all(toks[j].glued or word(toks, j) in {"'s", "s"} for j in range(bed + 1, box))
        ):
            yield Cue("kind", "exchanged", k, end)
            return
        opens = word(toks, k - 1) in STOPS | HELPING or bed_ends(said, k)
        full = word(toks, k - 1) in STOPS and "full" in toks.said[:k]
        then = word(toks, last) in WHEN - {"of"} or is_digits(toks, last)
        if opens and then and (anew or (end > k + 1 and full)):
            yield Cue("kind", "exchanged", k, last)
            yield from [Cue("filler", "", last, last + 1)] * (word(toks, last) == "at" and anew)
            return


def _renewed(said: Message) -> Iterator[Cue]:
    """ "renewed canister bed 4", "canister of bed 4 renewed at 1840"."""
    toks = said.toks
    for k in range(len(toks) if not said.tells("exchanged") else 0):
        box = past(toks, behind_bed(said, past(toks, k + 1, WHOSE)), frozenset({"'s", "s", "drain", "old"}))
        if word(toks, k) == "renewed" and word(toks, box) in NOUNS and ends_told(toks, box + 1):
            yield Cue("kind", "exchanged", k, k + 1)
            return
        nouns = [j for j in range(k) if word(toks, j) in NOUNS]
        bed = behind_bed(said, nouns[-1] + 1) if nouns else 0
        if word(toks, k) == "renewed" and nouns and past(toks, bed, HELPING | {"been"}) == k:
            yield Cue("kind", "exchanged", k, k + 1)
            return


def _noun(said: Message) -> Iterator[Cue]:
    """ "chg cani 220 1670 final", "swap 203 done, old=1460, new=20 canister": told with its end, a change."""
    toks = said.toks
    old = any(c.label == "old" for c in said.cues)
    if not old or said.tells("exchanged", "removed", "placed") or not RIGHTING.isdisjoint(toks.words):
        return
    if word(toks, 0) not in SHORTLY:
        return
    box = 1 if word(toks, 1) in NOUNS | {"cani", "cann"} else 0
    start = past(toks, 1 + box, OF_BED | {"out", "over"})
    labelled = said.beds.get(start)
    end = labelled[0] if labelled else start + is_digits(toks, start)
    done = word(toks, end) == "done"
    boxed = box or (done and not NOUNS.isdisjoint(toks.words))
    if end > start and boxed:
        yield Cue("kind", "exchanged", 0, 1 + box)
        yield from [Cue("filler", "", end, end + 1)] * done


def _shown_by_new(said: Message) -> Iterator[Cue]:
    """ "box swap: old box 150, new box 470": what the new one shows, and no second change."""
    toks = said.toks
    first = next((c.end for c in said.cues if c.value == "exchanged"), len(toks))
    for cue in said.cues:
        if cue.value != "exchanged" or cue.start < first or word(toks, cue.start) not in FRESH:
            continue
        on = word(toks, cue.end - 1) == "on"
        verb = any(word(toks, k) in STARTED for k in range(cue.start, cue.end - on))
        beds = any(word(toks, k) in OF_BED and is_digits(toks, k + 1) for k in range(first, cue.start))
        if beds:
            continue
        if not verb and is_volume(toks, cue.end, bare=True):
            yield cue._replace(label="new", value="")


def _begins(said: Message) -> Iterator[Cue]:
    """ "Changed canister in 23. Start 0.": what the new one began with; "started at 1800" says when."""
    toks = said.toks
    if not said.tells("exchanged") or any(c.label == "opens" for c in said.cues):
        return
    for k in range(len(toks)):
        value, _, unit = volume_at(toks, past(toks, k + 1, FROM))
        free = word(toks, k - 1) in STOPS | NOUNS | {"new", "fresh", "one"}
        if word(toks, k) in STARTING and free and (value == 0 or unit):
            yield Cue("opens", "", k, past(toks, k + 1, FROM))
            return


def _again(said: Message) -> Iterator[Cue]:
    """ "old canister off at 1560 ml, new canister on": one change, told twice."""
    toks = said.toks
    first = next((c for c in said.cues if c.value == "exchanged"), None)
    for cue in said.cues if first and word(toks, first.start) in FORMER else ():
        later = first is not None and cue.start > first.start and cue.value == "exchanged"
        between = range(first.end, cue.start) if first else range(0)
        beds = any(word(toks, k) in OF_BED and starts_number(toks, k + 1) for k in between)
        if later and not beds and word(toks, cue.start) in FRESH and word(toks, cue.end) in STOPS:
            yield Cue("filler", "", cue.start, cue.end)


CHANGEOVER: tuple[tuple[frozenset[str], Rule], ...] = (
    (FRESH | NEXT | {"2"}, _started),
    (CHANGED, _changed_over),
    (frozenset({"renewed"}), _renewed),
    (SHORTLY, _noun),
    (FRESH, _shown_by_new),
    (STARTING, _begins),
    (FRESH, _again),
)
"""Each rule with the words of which it needs one."""
