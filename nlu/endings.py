"""Cues beside what ended, changed or left, as that makes them: "drain out 1140 total 330", "25 home at 0930".

Called by `recast`. Beside a removal a total is what the canister showed last; "before he went" and "before
that" say when. What the old canister held is in `oldones`.
"""

from __future__ import annotations

from collections.abc import Callable

from .clock import clocks
from .items import FULL_HOUR
from .lastlevels import LAST_LEVELS
from .neighbours import phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .oldones import CANISTERS, FRESH, OLD_ONES, STOPS, Labelled, Message, is_timed, passes_bed
from .patterns.leads import SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .pipeline import Cue, with_found
from .weighty import STAYS

SAYING = frozenset({"of", "was", "is", ":", "="})
_WINDOWS = """
since today for over per this last overnight shift yesterday tonight so in by after from x hr hour hours day
during 24 24h 24hr 24hrs h hrs daily
"""
WINDOWS = frozenset(_WINDOWS.split())
"""Behind a total these say of which time it is: no canister shows that."""
TOTALS = frozenset({"total", "total output", "total drainage", "total out", "grand total", "total in"})
EVENTS = frozenset({"left", "away", "back", "removed", "moved", "exchanged"})
FINALS = frozenset({"final", "removal"})
GOING = frozenset({"he", "she", "they", "pt", "patient", "it"})
WENT = frozenset({"went", "left", "goes", "leaves"})
SIDES = frozenset({"left", "right", "pleural", "mediastinal", "apical", "basal", "anterior", "posterior"})
COMING = frozenset({"coming", "come", "be", "been", "came", "going", "go", "yet", "still", "expected"})
IN_IT = CANISTERS | {"in", "inside", "the", "its"}
HINTS = frozenset({"total", "home", "out", "full", "before", "after", "back", "this", "update", "news"})
HINTS |= {"dc", "c", "drains", "pigtails"} | STAYS | CANISTERS
HINTS |= {hint for hint, _ in (*OLD_ONES, *LAST_LEVELS)}


def with_endings(cues: tuple[Cue, ...], toks: Toks, labelled: Labelled) -> tuple[Cue, ...]:
    """The cues, those beside an ending as they are meant."""
    if HINTS.isdisjoint(toks.words):
        return cues
    said = Message(cues, toks, labelled)
    for hint, find in _RULES:
        if hint in toks.words:
            for found in find(said):
                said = said._replace(cues=with_found(said.cues, [found]))
    return said.cues


def _totals(said: Message) -> list[Cue]:
    """ "removed 0615 total 540 in bottle", "pulled 0500, 540 ml total": what its canister showed last."""
    found = []
    for k, cue in enumerate(said.cues):
        if cue.label not in {"output", "ask"} or phrase_of(cue, said.toks) not in TOTALS:
            continue
        before = [c for c in said.cues[:k] if c.label in {"kind", "what"}]
        if not before or before[-1].value != "removed" or passes_bed(said, before[-1].end, cue.start):
            continue
        if word(said.toks, cue.start - 1) in WINDOWS:  # "24h total 90"
            continue
        start = cue.end
        while word(said.toks, start) in IN_IT | SAYING:  # "total in canister 1115", "total was 540"
            start += 1
        if starts_number(said.toks, start):
            if _is_alone(said.toks, start):
                found.append(cue._replace(label="old", value="", end=max(cue.end, start)))
        elif _is_behind_level(said.toks, cue.start) and not _is_over_time(said.toks, cue.end):
            found.append(cue._replace(label="inside", value="", end=start))  # ", 1220 total in box"
            found += [Cue("old", "", j, j + 1) for j in range(cue.start) if word(said.toks, j) == "with"][-1:]
    return found


def _in_canister(said: Message) -> list[Cue]:
    """ "tube out 0500, canister at 540", "bottle 540": what it showed when the tube was taken out."""
    toks, found = said.toks, []
    for k, cue in enumerate(said.cues if said.tells("removed") else ()):
        if cue.label not in {"canister", "levelat", "level"} or word(toks, cue.start) not in CANISTERS:
            continue
        before = [c for c in said.cues[:k] if c.label in {"kind", "what", "old", "new"}]
        if not before or before[-1].value != "removed" or word(toks, cue.start - 1) in FRESH:
            continue
        end = cue.end
        while word(toks, end) in {"at", "was", "is", "had"}:
            end += 1
        removed = before[-1].end
        if starts_number(toks, end) and not passes_bed(said, removed, cue.start):
            timed = any(is_timed(toks, j) for j in range(removed, cue.start))
            plain = timed or not clocks(toks, end) or len(word(toks, end)) < FULL_HOUR
            if plain and (timed or word(toks, end - 1) != "at"):  # "removed, canister at 410": when?
                found.append(Cue("old", "", cue.start, end))
    return found


def _is_over_time(toks: Toks, k: int) -> bool:
    """ "410 total since midnight"; not "410 total in the box"."""
    return word(toks, k) in WINDOWS and CANISTERS.isdisjoint(toks.said[k + 1 : k + 3])


def _is_alone(toks: Toks, number: int) -> bool:
    """Whether nothing behind the number says what it counts, or over which time that came."""
    end = number + 1
    while starts_number(toks, end) or word(toks, end) in MILLILITRES | {".", "l"}:
        end += 1
    place = word(toks, end) in {"in", "on"} and not CANISTERS.isdisjoint(toks.said[end + 1 : end + 4])
    return place or word(toks, end) in STOPS | {"at", "when", "final"}


def _is_behind_level(toks: Toks, k: int) -> bool:
    """ "540 ml total", "with 540 total", "1655, 112 total": set apart by a unit, a preposition, a stop."""
    unit = word(toks, k - 1) in MILLILITRES
    number = k - 1 - unit
    set_apart = word(toks, number - 1) == "," and any(is_timed(toks, j) for j in range(1, number - 1))
    return is_digits(toks, number) and (unit or set_apart or word(toks, number - 1) == "with")


def _home(said: Message) -> list[Cue]:
    """ "25 home at 0930": the patient went home; "home today" is a plan."""
    ends = {end for end, _ in said.beds.values()}
    found = []
    for k, text in enumerate(said.toks.said[: len(said.toks)]):
        bed = k in ends or (is_digits(said.toks, k - 1) and word(said.toks, k - 2) in STOPS | SHORT_BED_WORDS)
        if text == "home" and bed and _is_time(said.toks, k + 1):
            found.append(Cue("kind", "left", k, k + 1))
    return found


def _is_time(toks: Toks, k: int) -> bool:
    """Whether a time that is written whole stands here, and ends the clause."""
    k += word(toks, k) in {"at", "@"}
    whole = [end for end, clock in clocks(toks, k) if clock.sure or clock.colon or clock.style == "24"]
    return is_digits(toks, k) and any(word(toks, end) in STOPS for end in whole)


def _out(said: Message) -> list[Cue]:
    """ "15 came out at 1640 final 220", "right out 0950, final 300": with its final level, a tube; so is
    "right out at 1830", which is whole."""
    toks = said.toks
    ends = {end for end, _ in said.beds.values()}
    olds = [c for c in said.cues if c.label == "old"]
    finals = [c.start for c in olds if not FINALS.isdisjoint(toks.said[c.start : c.end])]
    finals += [c.start for c in said.cues if c.label == "inside"]  # "9 left out 0930 125 in it"
    lines = [
        c.start for c in said.cues if c.label == "level" or c.value == "last"
    ]  # "apical out 0945 level 95"
    sides = [c.end for c in said.cues if c.label == "side" and word(toks, c.end) == "out"]
    found = [Cue("kind", "removed", k, k + 1) for k in sides if _is_time(toks, k + 1)]
    for k in range(1, len(toks)) if finals or lines else ():
        start = k
        while word(toks, start - 1) in {"came", "is", "was", "taken", "got", "been", "has"}:
            start -= 1
        sided = word(toks, start - 1) in SIDES or _is_lettered(toks, start - 1)
        sided |= word(toks, start - 1) in {"l", "r", "lt", "rt"} and _is_bed(toks, start - 2)
        named = sided or start in ends or _is_bed(toks, start - 1)
        end = _behind_bed(said, k + 1)
        timed = is_timed(toks, end) or (start < k and word(toks, end) == "at" and clocks(toks, end + 1))
        lettered = _is_lettered(toks, start - 1) and bool(finals)  # "tube A out, final 130"
        if word(toks, k) != "out" or not named or not (timed or lettered):
            continue
        kinds = [c.start for c in said.cues if c.label in {"kind", "what"} and c.start > k]
        told = finals + (lines if sided else [])
        own = [f for f in told if f > k and not any(k < other < f for other in kinds)]
        if own and not passes_bed(said, k, own[0]):
            found.append(Cue("kind", "removed", start, k + 1))
    return found


def _is_lettered(toks: Toks, k: int) -> bool:
    """ "tube B out at 1620, last level 290"."""
    return word(toks, k - 1) in {"tube", "drain", "ct", "icd"} and len(word(toks, k)) == 1


def _discontinued(said: Message) -> list[Cue]:
    """ "d/c tube 0630", "dc L ICD final 780": with when it was, or its final level, it is no plan."""
    toks, found = said.toks, []
    for cue in said.cues:
        start = cue.start
        while word(toks, start - 1) in SIDES | {"the", "chest", "l", "r", "lt", "rt"}:
            start -= 1
        slashed = toks.said[max(0, start - 3) : start] == ("d", "/", "c")
        behind = cue.end + (word(toks, cue.end) == ",")
        final = any(c.label == "old" and c.start >= cue.end for c in said.cues)
        if cue.label == "tubeword" and (slashed or word(toks, start - 1) == "dc"):
            end, start = start, start - (3 if slashed else 1)
            opens = start == 0 or word(toks, start - 1) in STOPS | {":"} or is_digits(toks, start - 1)
            opens |= any(last == start for last, _ in said.beds.values())
            if opens and (final or is_timed(toks, behind)):
                found.append(Cue("kind", "removed", start, end))
    return found


def _drains_out(said: Message) -> list[Cue]:
    """ "both chest drains out at 1330": a word for several tubes, and that they are out."""
    toks, found = said.toks, []
    for cue in said.cues:
        end = cue.end + (word(toks, cue.end) in {"are", "were", "now"})
        several = cue.label == "tubeword" and word(toks, cue.end - 1) in {"drains", "pigtails"}
        behind = word(toks, end + 1) in STOPS | SHORT_BED_WORDS | {"on", "in"} or is_timed(toks, end + 1)
        if several and word(toks, end) in {"out", "removed", "pulled"} and behind:
            found.append(Cue("kind", "removed", cue.start, end + 1))
    return found


def _behind_bed(said: Message, k: int) -> int:
    """ "apical out on 23 at 1710": where the bed ends that is told there, or the same place."""
    toks = said.toks
    start = k + (word(toks, k) in {"on", "in", "for", "from"})
    start += word(toks, start) in SHORT_BED_WORDS
    if start in said.beds:
        return said.beds[start][0]
    return start + 1 if start > k and is_digits(toks, start) else k


def _is_bed(toks: Toks, k: int) -> bool:
    if is_digits(toks, k):
        return word(toks, k - 1) in STOPS | SHORT_BED_WORDS | {":"}
    start = k
    while word(toks, start).isalpha() and starts_number(toks, start):
        start -= 1
    return start < k and word(toks, start) in SHORT_BED_WORDS  # "bed twenty one came out"


def _full(said: Message) -> list[Cue]:
    """ "bed 22 full, put on a new canister": why it was changed."""
    toks = said.toks
    taken = {k for c in said.cues for k in range(c.start, c.end) if c.label != "word"}
    found = []
    for k in range(1, len(toks)) if said.tells("exchanged") else ():
        behind = _is_bed(toks, k - 1) or word(toks, k - 1) in CANISTERS | {"was", "is", "got"}
        if word(toks, k) == "full" and k not in taken and behind and word(toks, k + 1) in STOPS - {""}:
            found.append(Cue("filler", "", k - (word(toks, k - 1) in {"was", "is", "got"}), k + 1))
    return found


def _before(said: Message) -> list[Cue]:
    """ "line before he went 790", "moved to 22 before that at 0515": when it was, and no other number's."""
    toks, found = said.toks, []
    for k in range(1, len(toks)) if said.tells("away", "left", "moved") else ():
        away = [c.end for c in said.cues if c.value in {"away", "left", "moved"} and c.end <= k]
        apart = bool(away) and passes_bed(said, away[-1], k)
        went = word(toks, k + 1) in GOING and word(toks, k + 2) in WENT and not apart
        if word(toks, k) == "before" and went:
            found.append(Cue("filler", "", k, k + 3))
        elif word(toks, k) in {"before", "after"} and word(toks, k + 1) == "that" and is_timed(toks, k + 2):
            found.append(Cue("filler", "", k, k + 2))
    return found


def _not_back(said: Message) -> list[Cue]:
    """ "went to the OR at 2150, not back yet", "gone to ICU, not coming back": no more than that."""
    toks, found = said.toks, []
    gone = [c for c in said.cues if c.label == "kind" and c.value in {"away", "left"}]
    for cue in said.cues if gone else ():
        nots = [c for c in said.cues if c.label == "neg" and gone[0].end <= c.start < c.end <= cue.start]
        if cue.value != "back" or not nots or passes_bed(said, gone[0].end, cue.start):
            continue
        still = set(toks.said[nots[-1].end : cue.start]) <= COMING
        end = next(k for k in range(cue.end, len(toks) + 1) if word(toks, k) in STOPS - {"and", "then"})
        if still and not any(t.is_digits for t in toks[nots[-1].start : end]):
            end = cue.end + (word(toks, cue.end) == "yet")
            found.append(Cue("filler", "", nots[-1].start, end))
    return found


def _stays(said: Message) -> list[Cue]:
    """ "pulled the right tube, left stays. final on right 280": the other tube, of which no more is told."""
    toks, found = said.toks, []
    for k in range(2, len(toks)) if said.tells("removed") else ():
        side = k - 1 - (word(toks, k - 1) in {"one", "tube", "drain", "side"})
        end = k + 1 + (word(toks, k + 1) in {"in", "put"})
        after = next((c for c in said.cues if c.start >= end), None)
        plain = word(toks, k) in STAYS and word(toks, side) in SIDES and word(toks, end) in STOPS
        if plain and after is not None and after.label == "old" and word(toks, side - 1) in STOPS:
            found.append(Cue("filler", "", side, end))
    return found


def _update(said: Message) -> list[Cue]:
    """ "house sup update: 13 transferred out 0600": a heading, and nothing is put right."""
    toks = said.toks
    first = next((c for c in said.cues if c.value == "corrected"), None)
    events = said.tells(*EVENTS) and not any(c.label == "level" for c in said.cues)
    if first is None or not events or word(toks, first.end - 1) not in {"update", "news"}:
        return []
    heads = word(toks, first.end) in {":", "-"} and not any(map(str.isdecimal, toks.said[: first.end]))
    return [Cue("filler", "", 0, first.end)] if heads else []


_RULES: tuple[tuple[str, Callable[[Message], list[Cue]]], ...] = (
    ("update", _update),
    ("full", _full),
    ("home", _home),
    ("out", _out),
    ("drains", _drains_out),
    ("c", _discontinued),
    ("dc", _discontinued),
    ("pigtails", _drains_out),
    ("total", _totals),
    ("back", _not_back),
    ("before", _before),
    ("after", _before),
    *OLD_ONES,
    *LAST_LEVELS,
    *((stays, _stays) for stays in sorted(STAYS)),
    *((canister, _in_canister) for canister in sorted(CANISTERS)),
)
