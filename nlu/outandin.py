"""Cues of tubes that came out and went in: "registrar whipped the drain out", "drain is put at 0650".

Also what else of two is told by a word alone: "put a chest tube in 9 and another in 14". Part of `narrated`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .byhimself import TEAM
from .goingin import NOUNS as TUBES
from .goings import Rule, past
from .numbers import is_digits, word
from .oldones import OF_BED, Message, is_timed
from .patterns.levels import MILLILITRES
from .patterns.narrated import WHOSE
from .pipeline import Cue

TAKING = frozenset({"took", "whipped", "pulled", "got", "had", "slipped"})
SIDES = frozenset({"left", "right", "mediastinal", "apical", "basal", "pleural", "chest", "intercostal"})
BY = TEAM | {"we", "i", "they"}
STOPS = frozenset({"", ",", ";", ".", "!", "and", "then"})
LOOKS = frozenset({"look", "check", "glance", "read", "reading", "view"})
DOING = frozenset({"removed", "placed"})
DID = frozenset(
    {"pulled", "took", "removed", "placed", "inserted", "put", "wants", "want", "says", "said", "saw"}
)
DID |= {"ordered", "rounded", "came", "discontinued", "decided", "asked", "have", "has", "d"}
OPERATING = frozenset({"surgery", "surgeons", "surgeon", "team"})
CAUSING = frozenset({"following", "after", "from", "due", "secondary", "to", "post"})
ANEW = frozenset({"new", "fresh"})
ONES = frozenset({"one", "tube", "drain", "chest", "pigtail", "icd"})


def _whipped_out(said: Message) -> Iterator[Cue]:
    """ "PA took 2's tube out", "registrar whipped the drain out": who took it out, and that it is out."""
    toks = said.toks
    for cue in said.cues:
        out = cue.value == "removed" and word(toks, cue.end - 1) == "out"
        start = cue.start
        while (
            out
            and start > 0
            and (
                word(toks, start - 1) in WHOSE | SIDES | OF_BED | {"'s", "s", "'"}
                or is_digits(toks, start - 1)
                or any(begin <= start - 1 < end for begin, (end, _) in said.beds.items())
            )
        ):
            start -= 1
        verb = word(toks, start - 1) in TAKING and word(toks, start - 2) in BY
        if out and verb:
            yield Cue("filler", "", start - 1, start)


def _had_it_out(said: Message) -> Iterator[Cue]:
    """ "no more drain in 222, surgeons had it out at 0200": that tube."""
    toks = said.toks
    for k in range(1, len(toks) - 2):
        out = word(toks, k) in {"had", "whipped"} and toks.said[k + 1 : k + 3] == ("it", "out")
        tubes = [c for c in said.cues if c.label in {"tubeword", "canister"} and c.end <= k]
        if not out or not tubes or tubes[-1].label != "tubeword" or word(toks, k - 1) not in BY:
            continue
        if word(toks, k + 3) not in STOPS | {"at", "@", "today"} and not is_digits(toks, k + 3):
            continue
        if any(word(toks, j) in {"?", "if", "want", "until", "before"} for j in range(len(toks))):
            continue
        yield Cue("kind", "removed", k, k + 3)
        if toks.said[:2] == ("no", "more") and tubes[-1].start == 2:
            yield Cue("filler", "", 0, 2)


def _last_look(said: Message) -> Iterator[Cue]:
    """ "drain out for 8, 1380 ml on last look": what its canister showed."""
    toks = said.toks
    for k in range(2, len(toks) if said.tells("removed", "exchanged") else 0):
        last = k + 1 + (word(toks, k + 1) == "the")
        look = word(toks, last) == "last" and word(toks, last + 1) in LOOKS
        if word(toks, k) in {"on", "at"} and look and word(toks, k - 1) in MILLILITRES:
            yield Cue("old", "ended", k + (word(toks, k) == "on"), last + 2)


def _surgery_did(said: Message) -> Iterator[Cue]:
    """ "cardiac surgery pulled bed 6's drains": who did it, and nothing that somebody has."""
    toks = said.toks
    for cue in said.cues:
        team = cue.label == "reason" and word(toks, cue.end - 1) in OPERATING
        if team and word(toks, cue.end) in DID and word(toks, cue.start - 1) in STOPS | {"the"}:
            yield Cue("filler", "", cue.start, cue.end)


def _is_put(said: Message) -> Iterator[Cue]:
    """ "intercostal drain is put at 0650", "mediastinal drain new at 0150": that it went in, and when."""
    toks = said.toks
    for cue in said.cues if not said.tells("placed") else ():
        verb = past(toks, cue.end, frozenset({"is", "was", "has", "been", "just"}))
        done = word(toks, verb) in {"put", "kept", "sited", "new"} and (
            verb > cue.end or word(toks, verb) in {"sited", "new"}
        )
        at = word(toks, verb + 1) in {"at", "@"}
        timed = at and is_timed(toks, verb + 2)
        if cue.label == "tubeword" and word(toks, cue.end - 1) in TUBES and done and timed:
            yield Cue("kind", "placed", cue.start, verb + 1)
            yield Cue("filler", "", verb + 1, verb + 2)
            return


def _new_drain_at(said: Message) -> Iterator[Cue]:
    """ "received from theatre with new chest drain at 1800": a tube, and no canister."""
    toks = said.toks
    labels = {c.label for c in said.cues}
    if (
        "old" in labels
        or sum(c.value == "exchanged" for c in said.cues) != 1
        or not {"arrival", "reason"} & labels
    ):
        return
    for cue in said.cues:
        drain = cue.value == "exchanged" and toks.said[cue.end - 2 : cue.end] == ("drain", "at")
        if drain and word(toks, cue.start) in ANEW and word(toks, cue.end - 3) in ANEW | {"chest", "pleural"}:
            yield Cue("kind", "placed", cue.start, cue.end - 1)
            yield Cue("filler", "", cue.end - 1, cue.end)


def _valve_replacement(said: Message) -> Iterator[Cue]:
    """ "mitral valve replacement": an operation, and no new canister."""
    ends = {c.end for c in said.cues if c.label == "reason"}
    for cue in said.cues:
        if cue.label == "new" and cue.start in ends and word(said.toks, cue.start) == "replacement":
            yield Cue("filler", "", cue.start, cue.start + 1)


def _reasons(said: Message) -> Iterator[Cue]:
    """ "haemothorax following RTA": what it came of; "indication is pneumothorax only": and no other."""
    toks = said.toks
    reasons = {c.start: c for c in said.cues if c.label == "reason"}
    for cue in reasons.values():
        end = past(toks, cue.end, CAUSING)
        of = reasons.get(past(toks, end, frozenset({"a", "an", "the"})))
        if end > cue.end and of is not None and of.value == cue.value:
            yield Cue("filler", "", cue.end, of.start)
        start = cue.start - (word(toks, cue.start - 1) in {"is", "was", ":", "-", "="})
        if word(toks, start - 1) in {"indication", "reason", "dx"} and word(toks, start - 2) in STOPS:
            yield Cue("filler", "", start - 1, cue.start)
            yield from [Cue("filler", "", cue.end, cue.end + 1)] * (word(toks, cue.end) == "only")


def _fluid_on_lung(said: Message) -> Iterator[Cue]:
    """ "fluid on the lung": an effusion."""
    toks = said.toks
    for k in range(len(toks) - 2):
        end = past(toks, k + 2, WHOSE | {"left", "right"})
        fluid = word(toks, k) == "fluid" and word(toks, k + 1) in {"on", "around", "round"}
        if fluid and word(toks, end) in {"lung", "lungs"} and said.tells("placed"):
            yield Cue("reason", "effusion", k, end + 1)


def _another(said: Message) -> Iterator[Cue]:
    """ "put a chest tube in 209 and another in 225": a tube of that bed, and nothing that drained."""
    toks = said.toks
    for k in range(1, len(toks)):
        end = past(toks, k + 1, ONES)
        placed = any(c.value == "placed" and c.end <= k for c in said.cues)
        bed = past(toks, end + 1, OF_BED)
        into = word(toks, end) in {"in", "for", "on", "into"}
        known = into and (
            (is_digits(toks, bed) and word(toks, bed + 1) not in MILLILITRES) or bed in said.beds
        )
        if word(toks, k) in {"another", "one"} and word(toks, k - 1) in {"and", "then"} and placed and known:
            yield Cue("kind", "placed", k, end + 1)


OUT_AND_IN: tuple[tuple[frozenset[str], Rule], ...] = (
    (TAKING, _whipped_out),
    (frozenset({"out"}), _had_it_out),
    (LOOKS, _last_look),
    (OPERATING, _surgery_did),
    (frozenset({"put", "kept", "sited", "new"}), _is_put),
    (ANEW, _new_drain_at),
    (frozenset({"replacement"}), _valve_replacement),
    (CAUSING | {"indication", "reason", "dx"}, _reasons),
    (frozenset({"fluid"}), _fluid_on_lung),
    (frozenset({"another", "one"}), _another),
)
"""Each rule with the words of which it needs one."""
