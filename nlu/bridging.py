"""Events told around the bed: "changed bed 12 chamber", "kicked over 12's drain"."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from .clock import clocks
from .elsewhere import UNITS, WARDS, ward_number
from .items import FULL_HOUR
from .labels import bed_label
from .neighbours import SIDES
from .numbers import Toks, glued, word
from .patterns.leads import SHORT_BED_WORDS
from .patterns.numerals import NUMERALS
from .pipeline import Cue, in_order, pipeline
from .tokens import Token

MOST = 4
DONE_TO = frozenset(
    {"changed", "swapped", "replaced", "switched", "exchanged", "removed", "pulled", "dc'd", "changing"}
)
CANISTERS = frozenset(
    {"canister", "cannister", "box", "chamber", "bottle", "unit", "drain", "tube", "chest", "icc", "icd"}
)
"""One of these, behind a bare number, makes it the bed's."""
BOXES = CANISTERS - {"tube", "chest", "icc", "icd"}
NOUNS = frozenset({"change", "swap", "exchange"})
OF_BOXES = frozenset({"exchanged"})
SENDING = frozenset(
    {"transferred", "moved", "sent", "took", "taken", "taking", "shifted", "discharged", "wheeled"}
)
WHO = frozenset({"the", "pt", "patient", "in", "bed", "room", "rm", "our"})
GONE = frozenset({"left", "away"})
BRIDGED = frozenset({"exchanged", "removed", "placed"})
PREPOSITIONS = frozenset({"of", "on", "in"})
SET_TO = frozenset({"suction", "sxn", "seal", "wall", "dial", "vacuum"})
"""Behind these "of 15" is no bed."""
HANDLED = frozenset({"tipped", "damaged", "raised", "disconnected", "dislodged"})
"""What happens to a box that is told before it: "knocked over 12's box"."""
OF_WHOSE = SHORT_BED_WORDS | {"'", "s", "the", "his", "her", "patient", "bay"}
FAR = 7
COMING = frozenset({"away", "back"})
"""Beside these something else may be told: "back from OR with a new mediastinal tube"."""
SIDED = frozenset({"l", "r"})
NAMED = frozenset({"placed", "removed"})
"""Events told around the name of a tube: "new left chest tube", "took out the apical drain"."""


def bridged(cues: tuple[Cue, ...], toks: Toks, written: Mapping[int, tuple[int, str]]) -> tuple[Cue, ...]:
    """The cues, and those that show only when a bed said between their words is taken out."""
    if any(c.label == "kind" and c.value not in COMING and not _is_changeover(c, toks) for c in cues):
        return cues
    found = list(cues)
    beds = [(start, end, BRIDGED) for start, end in _beds(toks, written)]
    named = _tubes(cues)
    tubes = [(start, end, NAMED) for start, end in [*named, *_letters(toks, dict(named))]]
    boxed = range(1, 1 if BOXES.isdisjoint(toks.words) else len(toks))
    boxes = [(k, k + 1, OF_BOXES) for k in boxed if _is_side_of_box(toks, k)]
    for start, end, kinds in [*beds[:MOST], *tubes[:MOST], *boxes[:MOST]]:
        if not _joins(toks, start, end):
            continue
        rest = [*toks[:start], *toks[end:]]
        for cue in pipeline().cues(rest):
            cue = _placed_drain(cue, rest) if kinds is NAMED else cue
            event = (cue.label == "what" and kinds is BRIDGED) or (cue.label == "kind" and cue.value in kinds)
            if event and cue.start < start < cue.end and not _is_put_somewhere(cue, rest):
                found = [c for c in found if c.end <= cue.start or c.start >= start]
                found = [_behind(c, cue.end + end - start) for c in found]
                found.append(Cue(cue.label, cue.value, cue.start, start))
                found = _without_tail(found, end, end + cue.end - start, cue.value)
    return in_order(found)


def of_whose_box(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """ "kicked over bed 9's canister at 1635": what was kicked over, and when; no line of that canister."""
    events = [c for c in cues if c.label == "what" and c.value in HANDLED]
    if not events:
        return cues
    found: list[Cue] = []
    for cue in cues:
        box = (
            cue.label == "levelat" and word(toks, cue.start) in CANISTERS and word(toks, cue.end - 1) == "at"
        )
        before = [e for e in events if box and e.end < cue.start <= e.end + FAR]
        between = toks.said[before[-1].end : cue.start] if before else ()
        owned = all(t in OF_WHOSE or t in NUMERALS or t.isdecimal() for t in between)
        timed = any(c.sure or c.style == "24" for _, c in clocks(toks, cue.end)) if owned else False
        if between and timed:
            cut = (cue.start, cue.end - 1), (cue.end - 1, cue.end)
            found += [Cue("filler", "", start, end) for start, end in cut]
        else:
            found.append(cue)
    return tuple(found)


def _behind(cue: Cue, end: int) -> Cue:
    """ "changed bed 7 box at 1340": the box is of the event, and the "at" is of the time."""
    if cue.label != "levelat" or cue.start >= end:
        return cue
    return cue._replace(label="filler", value="", start=max(cue.start, min(end, cue.end - 1)))


def _without_tail(cues: list[Cue], start: int, end: int, event: str) -> list[Cue]:
    """The cues, the rest of an event's phrase saying nothing more: the "over" of "kicked 12's box over"."""
    own = {"waterseal"} if event == "suction_off" else set()  # "took bed 7 off suction"
    kept = [
        c
        for c in cues
        if not ((c.label in {"plan", *own} or c.value == "corrected") and start <= c.start < end)
    ]
    told = {k for c in kept for k in range(c.start, c.end)}
    return kept + [Cue("filler", "", k, k + 1) for k in range(start, end) if k not in told]


def sent(
    cues: tuple[Cue, ...],
    toks: Toks,
    written: Mapping[int, tuple[int, str]],
    index: Mapping[str, str] | None = None,
) -> tuple[Cue, ...]:
    """The cues of "transferred 21 out to stepdown", "took pt in 12 to CT": who went, told around the bed."""
    if SENDING.isdisjoint(toks.words):
        return cues
    for i, tok in enumerate(toks):
        if tok.text not in SENDING:
            continue
        end = _person(toks, i + 1, written)
        if end == i + 1:
            continue
        for cue in pipeline().cues([*toks[: i + 1], *toks[end:]]):
            if i <= cue.start <= i + 1 < cue.end and cue.label == "kind" and cue.value in GONE:
                tail = end + cue.end - i - 1
                if bed_label(word(toks, tail - 1) + word(toks, tail), index):
                    return cues  # "moved bed 5 to HDU 2": a bed of this unit
                if cue.value == "left" and word(toks, tail - 1) in WARDS | UNITS:
                    tail = ward_number(toks, tail) or tail  # "sent bed 5 up to ward 7"
                kept = [c for c in cues if c.end <= i or i < c.start < end or c.start >= tail]
                told = (Cue("filler", "", i, i + 1), Cue("kind", cue.value, end, tail))
                return in_order([*kept, *told])
    return cues


def _person(toks: Toks, i: int, written: Mapping[int, tuple[int, str]]) -> int:
    """The end of "pt in bed 12", "21", or the same place."""
    k = i
    while word(toks, k) in WHO:
        k += 1
    if k in written:
        return written[k][0]
    return k + 1 if k < len(toks) and toks[k].is_digits else i


def _joins(toks: Toks, start: int, end: int) -> bool:
    """Whether any event has the words around the stretch side by side: else none reaches over it."""
    return (word(toks, start - 1), word(toks, end)) in pipeline().book.joints


def _placed_drain(cue: Cue, toks: Sequence[Token]) -> Cue:
    """ "new right drain at": with the name of a tube, a drain is the tube and not its canister."""
    said = {toks[k].text for k in range(cue.start, cue.end)}
    is_new = cue.value == "exchanged" and said <= {
        "new",
        "fresh",
        "chest",
        "pleural",
        "drain",
        "at",
        "in",
        "placed",
    }
    return cue._replace(value="placed") if is_new and "drain" in said else cue


def _tubes(cues: tuple[Cue, ...]) -> list[tuple[int, int]]:
    """Where a tube is named: "left", "right pleural"."""
    found: list[tuple[int, int]] = []
    for cue in cues:
        if cue.label not in {"side", "place", "reason"}:
            continue
        if found and found[-1][1] == cue.start:
            found[-1] = (found[-1][0], cue.end)
        else:
            found.append((cue.start, cue.end))
    return found


def _letters(toks: Toks, named: Mapping[int, int]) -> Iterator[tuple[int, int]]:
    """Where a side is a letter behind the word new: "new R CT", "new L apical drain"."""
    for i, tok in enumerate(toks) if not SIDED.isdisjoint(toks.words) else ():
        if tok.text in SIDED and word(toks, i - 1) in {"new", "fresh", "second", "another", "a"}:
            yield i, named.get(i + 1, i + 1)


def _beds(toks: Toks, written: Mapping[int, tuple[int, str]]) -> Iterator[tuple[int, int]]:
    """Where a bed is said: "bed 12", "12's", "CT1", "bed two hundred seven"."""
    for i, tok in enumerate(toks):
        spoken = _spoken(toks, i) if tok.text in NUMERALS else 0
        if not (i in toks.digits or i in written or spoken):
            continue
        start = i - 1 if word(toks, i - 1) in SHORT_BED_WORDS else i
        if start < i:
            start -= word(toks, start - 1) in PREPOSITIONS
        elif toks.words.isdisjoint(SHORT_BED_WORDS) and word(toks, i - 2) not in SET_TO:
            start -= word(toks, i - 1) == "of" or _is_kept_in(toks, i)  # "the regulator of 12 was turned off"
        end = written[i][0] if i in written else spoken or i + 1
        owner = _owner(toks, end)
        if i in written or start < i or owner or _is_between(toks, i):
            yield start, end + owner + _is_side_of_box(toks, end + owner)  # "changed bed 6 R canister"


def _spoken(toks: Toks, i: int) -> int:
    """Where the number words of a bed end that begin there; nought where no bed's do."""
    if word(toks, i - 1) not in SHORT_BED_WORDS:
        return 0
    return next(k for k in range(i, len(toks) + 1) if word(toks, k) not in NUMERALS)


def _is_put_somewhere(cue: Cue, toks: Sequence[Token]) -> bool:
    """ "drain in 9 placed on suction", "canister in 6 changed position": it was there before."""
    behind = {tok.text for tok in toks[cue.end : cue.end + 1]}
    elsewhere = {"placed": {"on", "to"}, "exchanged": {"position", "colour", "color"}}
    return bool(behind & elsewhere.get(cue.value, set()))


def _is_kept_in(toks: Toks, i: int) -> bool:
    """ "the chest drain in 9 was taken out", "the box on 12 got changed"."""
    return word(toks, i - 1) in PREPOSITIONS | {"for"} and word(toks, i - 2) in CANISTERS


def _is_between(toks: Toks, i: int) -> bool:
    """ "replaced 11 chamber", "pulled 14 drain": a bare number between them; "changed 1 box" counts."""
    thing = word(toks, i + 1 + _is_side_of_box(toks, i + 1))
    if word(toks, i - 1) in BOXES and word(toks, i + 1) in NOUNS:
        return True  # "canister 10 change 0654 final 1720"
    if word(toks, i - 1) == "took" and word(toks, i + 1) == "off" and word(toks, i + 2) in SET_TO:
        return _is_timed(toks, i + 3)  # "took 7 off suction at 1427"; "took 7 off suction" may be an amount
    one = thing in CANISTERS and word(toks, i) != "1"
    return one and word(toks, i - 1) in DONE_TO and len(word(toks, i)) < FULL_HOUR


def _is_timed(toks: Toks, k: int) -> bool:
    """ "at 1427", "1427"."""
    return len(word(toks, k + (word(toks, k) in {"at", "@"}))) == FULL_HOUR


def _is_side_of_box(toks: Toks, k: int) -> bool:
    """ "changed the R canister", "new L box": of which side the canister is."""
    return word(toks, k) in SIDES and word(toks, k + 1) in BOXES


def _is_changeover(cue: Cue, toks: Toks) -> bool:
    """ "canister 10 change 0654": what was done to it, and no line is put right."""
    change = cue.value == "corrected" and toks.said[cue.start : cue.end] == ("change",)
    return change and not BOXES.isdisjoint(toks.said[max(0, cue.start - 4) : cue.start])


def _owner(toks: Toks, end: int) -> int:
    """How many tokens say that something is the bed's: "12's box", "12s box"."""
    if word(toks, end) == "'" and word(toks, end + 1) == "s":
        return 2
    return int(word(toks, end) == "s" and glued(toks, end))
