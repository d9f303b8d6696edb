"""From the readings that stand to what is accepted and what is asked.

Exactly one full reading without a doubt is accepted. Where several stand, what they agree on is
accepted and the slot in which they differ is asked, with all their values as choices.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, fields, replace
from functools import cache
from heapq import heapify, heappop, heappush
from itertools import pairwise
from typing import Any

from .items import FULL_HOUR
from .statements import (
    Away,
    Back,
    Checked,
    Corrected,
    Described,
    Drained,
    Exchanged,
    Incident,
    Left,
    Mark,
    Moved,
    Placed,
    Removed,
    Statement,
    Unclear,
)

Outcome = tuple[Statement | Unclear, ...]
WITH_LEVEL = (Mark, Drained, Placed, Exchanged, Removed, Corrected)
WEIGHTY = (*WITH_LEVEL, Left, Moved, Away, Back)
"""What changes the sums of a drain: never accepted while the message is in doubt."""
HOURS, MINUTES = 24, 60
ORDER = ("bed", "level_ml", "volume_ml", "final_ml", "tube", "at")


def asks(outcome: Outcome) -> bool:
    """Whether anything is asked."""
    return Unclear in map(type, outcome)


def in_doubt(said: Statement, text: str) -> Unclear:
    """What was read, as the question whether it is so."""
    return Unclear(slot="kind", text=text, choices=(said.kind,), statement=said)


def as_a_whole(said: Statement, text: str) -> Unclear:
    """The same, which a yes answers: what was read is the one reading there is."""
    return Unclear(slot="kind", text=text, choices=(said.kind,), readings=(said,), statement=said)


@dataclass(frozen=True, slots=True)
class Reading:
    """What the whole message would say (`made`, when wanted), and how well that stands: faults, doubts.

    `unread` are the faults of words left unread, which no question of the outcome stands for; `strange`
    where they are beside an event or a check, of which nothing is then accepted.
    """

    made: Callable[[], Outcome]
    rank: tuple[int, int] = (0, 0)
    unread: int = 0
    strange: bool = False


@dataclass(frozen=True, slots=True)
class Unjudged:
    """A reading that has so many faults at `least`; what is dearer to find out is asked of `further`."""

    least: int
    further: Callable[[], Reading | Unjudged]


def told(*outcome: Statement | Unclear, faults: int = 0) -> Reading:
    """A reading whose outcome is there already; each question in it is a fault."""
    asked = sum(isinstance(s, Unclear) for s in outcome)
    return Reading(lambda: outcome, (faults + asked, 0))


def judged_once(reading: Reading | Unjudged) -> Reading | Unjudged:
    """The same reading, which finds out only once what is dear, however often it is asked."""
    if isinstance(reading, Reading):
        return reading
    return Unjudged(reading.least, cache(lambda: judged_once(reading.further())))


def standing_best(readings: Iterable[Reading | Unjudged], *, rivals: bool = False) -> list[Reading]:
    """The readings of the least rank, in order; one that has more faults already is judged no further.

    With `rivals` also one that is of another bed and stands worse by no more than a doubt.
    """
    waiting = [(_least(reading), place, reading) for place, reading in enumerate(readings)]
    heapify(waiting)
    judged: dict[int, Reading] = {}
    best: tuple[int, int] | None = None
    while waiting and (best is None or waiting[0][0] <= best[0]):
        _, place, reading = heappop(waiting)
        if isinstance(reading, Unjudged):
            reading = reading.further()
            heappush(waiting, (_least(reading), place, reading))
        else:
            judged[place] = reading
            best = reading.rank if best is None else min(best, reading.rank)
    found = [judged[place] for place in sorted(judged) if judged[place].rank == best]
    if not rivals or best is None or len(found) > 1:
        return found
    doubted = [r for r in judged.values() if r.rank == (best[0], best[1] + 1)]
    return found + [r for r in doubted if _beds(r) and _beds(r).isdisjoint(_beds(found[0]))]


def _beds(reading: Reading) -> set[str]:
    said = (s.statement if isinstance(s, Unclear) else s for s in reading.made())
    return {s.bed for s in said if s is not None and s.bed is not None}


def _least(reading: Reading | Unjudged) -> int:
    """How many faults it has at least."""
    return reading.least if isinstance(reading, Unjudged) else reading.rank[0]


def settled(readings: Iterable[Reading | Unjudged], text: str, *, strict: bool = False) -> Outcome:
    """What to accept and what to ask; `strict`, of what was dictated: nothing of a message with words left
    unread, and nothing of one bed where a doubt alone speaks against another."""
    found = standing_best(readings, rivals=strict)
    if not found:
        return (Unclear(slot="kind", text=text),)
    best = found[0].rank
    made = [_once(r.made()) for r in found]
    top = [*{frozenset(m): m for m in reversed(made)}.values()][::-1] if len(made) > 1 else made
    asks = any(isinstance(s, Unclear) for s in top[0])
    unread = all(r.unread for r in found)
    if len(top) == 1 and best[1] == 0 and (best[0] == 0 or (asks and not unread)):
        return top[0]
    strange = any(r.strange for r in found)
    return merged(top, text, doubted=best[1] > 0 or not asks or unread, strict=strange or (strict and unread))


def _once(told: Outcome) -> Outcome:
    """ "mark 650 at 2200, mark 650, 2200", "tripped over the drain and it tipped": what was told twice."""
    if len(told) == 1:
        return told
    lines = [s for s in told if isinstance(s, Incident) or (isinstance(s, Mark) and s.at is not None)]
    return told if len(set(lines)) == len(lines) else tuple(dict.fromkeys(told))


def merged(outcomes: Sequence[Outcome], text: str, *, doubted: bool = False, strict: bool = False) -> Outcome:
    """What several outcomes agree on (nothing if `strict`), and one question about the rest."""
    first = outcomes[0]
    common = [s for s in first if isinstance(s, Statement) and all(s in o for o in outcomes) and not strict]
    if doubted:
        common = (
            [s for s in common if not isinstance(s, WEIGHTY)]
            if any(isinstance(s, WEIGHTY) for s in common)
            else []
        )
    rests = [[s for s in o if s not in common] for o in outcomes]
    return (*common, _question(rests, text))


def _question(rests: list[list[Statement | Unclear]], text: str) -> Unclear:
    if len(rests) == 1 and (line := _only_line(rests[0])) is not None:
        rests = [[line]]
    firsts = [r[0] for r in rests if r]
    whole = [s for s in firsts if isinstance(s, Statement)]
    if not whole:
        asked = [s for s in firsts if isinstance(s, Unclear)]
        return _one_of(asked, text)
    lines = [s for s in whole if isinstance(s, Mark)]
    if len(lines) == 1 and _is_behind_bed(lines[0]) and _is_line_or_time(whole, rests):
        return Unclear(
            slot="level_ml",
            text=text,
            choices=(lines[0].level_ml or 0,),
            readings=(lines[0],),
            statement=replace(lines[0], level_ml=None),
        )
    if any(len(r) != 1 for r in rests) and len({len(r) for r in rests}) > 1:
        return Unclear(slot=_slot(whole), text=text, readings=(), statement=_agreed(whole))
    partial = [s.statement for s in firsts if isinstance(s, Unclear) and s.statement is not None]
    slot = _slot([*whole, *partial])
    choices = tuple(dict.fromkeys(_value(s, slot) for s in whole if _value(s, slot) is not None))
    if len(choices) == len(whole) == len(firsts) and len(rests[0]) == 1:
        return Unclear(slot=slot, text=text, choices=choices, readings=tuple(whole), statement=_agreed(whole))
    return Unclear(slot=slot, text=text, statement=_agreed([*whole, *partial]))


def _only_line(told: list[Statement | Unclear]) -> Statement | None:
    """The line among what was found beside it, which is asked by its number: "9 crashing, 1150 bloody"."""
    lines = [s for s in told if isinstance(s, Mark | Drained)]
    beside = all(isinstance(s, Mark | Drained | Checked | Incident | Described) for s in told)
    beside &= not any(isinstance(s, Incident) and s.what in {"suction_on", "suction_off"} for s in told)
    return lines[0] if len(lines) == 1 and beside else None


def _is_behind_bed(mark: Mark) -> bool:
    """Whether the number of the line stands right behind its bed."""
    bed, level = mark.spans.get("bed"), mark.spans.get("level_ml")
    return bed is not None and level is not None and level.start == bed.end + 1


def _is_line_or_time(whole: list[Statement], rests: list[list[Statement | Unclear]]) -> bool:
    """ "bed 11 1450 bright red": a line with what was found beside it, or when that was found."""
    one_bed = len({s.bed for s in whole}) == 1 and len(whole) == len(rests)
    return one_bed and all(isinstance(s, Mark | Checked) for s in whole) and len({len(r) for r in rests}) > 1


def _one_of(asked: list[Unclear], text: str) -> Unclear:
    if not asked:
        return Unclear(slot="kind", text=text)
    beds = {a.statement.bed for a in asked if a.slot == "level_ml" and a.statement is not None}
    asked = [a for a in asked if not _may_be_bed(a, beds)]
    asked = sorted(asked, key=lambda a: ORDER.index(a.slot) if a.slot in ORDER else len(ORDER))
    same = [a for a in asked if a.slot == asked[0].slot]
    choices = tuple(dict.fromkeys(c for a in same for c in a.choices))
    return asked[0] if choices == asked[0].choices else replace(asked[0], choices=choices, readings=())


def _may_be_bed(asked: Unclear, beds: set[str | None]) -> bool:
    """ "9 at 0845": 9 mL of no bed, where the line of bed 9 is asked for instead."""
    said = asked.statement
    return asked.slot == "bed" and isinstance(said, Mark) and said.bed is None and str(said.level_ml) in beds


def _slot(whole: list[Statement]) -> str:
    """The first slot in which they differ; the level where they differ in none."""
    if len({_value(s, "kind") for s in whole}) > 1:
        return "kind"
    names = [f.name for f in fields(whole[0]) if f.name != "spans"]
    for name in sorted(names, key=lambda n: ORDER.index(n) if n in ORDER else len(ORDER)):
        if len({_value(s, name) for s in whole}) > 1:
            return name
    return next((n for n in ("level_ml", "final_ml", "volume_ml") if n in names), "kind")


def _value(statement: Statement, slot: str) -> Any:
    return getattr(statement, slot, None)


def _agreed(whole: list[Statement]) -> Statement:
    """The statement with only what all agree on."""
    first = whole[0]
    if len({_value(s, "kind") for s in whole}) > 1:
        return Statement(bed=first.bed if len({s.bed for s in whole}) == 1 else None)
    differing: dict[str, Any] = {}
    for f in fields(first):
        if f.name == "spans" or len({_value(s, f.name) for s in whole}) == 1:
            continue
        differing[f.name] = False if f.name in {"closing", "about"} else () if f.name == "tubes" else None
    if len(whole) == 1 and isinstance(first, WITH_LEVEL):
        names = {f.name for f in fields(first)}
        differing = {n: None for n in ("level_ml", "final_ml", "volume_ml") if n in names}
    return replace(first, **differing)


def untimed_asked(outcome: Outcome, text: str) -> Outcome:
    """The outcome, with a line of no time asked where another of its drain, or the next one, is unclear."""
    unclear = [u.statement for u in outcome if isinstance(u, Unclear) and isinstance(u.statement, Mark)]
    doubtful = {(mark.bed, mark.tube) for mark in unclear}
    ended = [r for u in outcome if isinstance(u, Unclear) for r in u.readings if isinstance(r, Exchanged)]
    rival = {(r.bed, r.tube) for r in ended}  # "1400 prev 1640 now": of which canister?
    doubted = {id(s) for s, after in pairwise(outcome) if _is_half_read(after)}
    asks = any(isinstance(u, Unclear) for u in outcome)
    rivals = {u.statement.bed for u in outcome if isinstance(u, Unclear) and u.statement and _may_be_time(u)}

    def is_asked(said: Statement | Unclear) -> bool:
        if not isinstance(said, Mark):
            bare = said.bed in rivals if isinstance(said, Statement) else False
            return asks and (_is_loosely_timed(said, text, whole=bare) or _has_doubtful_time(said, unclear))
        drain = (said.bed, said.tube)
        return drain in rival or (said.at is None and (drain in doubtful or id(said) in doubted))

    return tuple(
        Unclear(slot="at", text=text, statement=s)
        if isinstance(s, Statement) and is_asked(s)
        else _untimed(s, unclear)
        for s in outcome
    )


def _untimed(said: Statement | Unclear, unclear: Sequence[Mark]) -> Statement | Unclear:
    """ "weighs 14 kg, line at 1900 is 68": where the line is asked, the weight has no time of its own."""
    at = said.spans.get("at") if isinstance(said, Described) else None
    of_line = at is not None and any(mark.spans.get("at") == at for mark in unclear)
    return replace(said, at=None) if of_line and isinstance(said, Described) else said


def _has_doubtful_time(said: Statement | Unclear, unclear: Sequence[Mark]) -> bool:
    """ "12 1830 1900 sxn 20": where the line is asked, which number is the time of the check is not sure."""
    at = said.spans.get("at") if isinstance(said, Checked) else None
    return at is not None and any(mark.level_ml is None and mark.spans.get("at") == at for mark in unclear)


def _is_loosely_timed(said: Statement | Unclear, text: str, *, whole: bool) -> bool:
    """ "14 is 880 no leak, 9 is 210 same": beside what is asked, a bare number may be no time either; nor a
    whole one, where the number that is asked may be the time."""
    at = said.spans.get("at") if isinstance(said, Statement) else None
    written = text[at.start : at.end] if at is not None else ""
    what = said.spans.get("what") if isinstance(said, Statement) else None
    led = at is not None and text[: at.start].rstrip().lower().endswith(("@", " at"))
    led |= at is not None and what is not None and what.end <= at.start  # "tube kicked apart 1845"
    return written.isdecimal() and (len(written) < FULL_HOUR or (whole and not led))


def _may_be_time(asked: Unclear) -> bool:
    """ "211 1130 1300 suction 20": whether the line that is asked may be when the rest was found."""
    level = asked.choices[0] if asked.slot == "level_ml" and asked.choices else None
    if not isinstance(level, int) or not isinstance(asked.statement, Mark):
        return False
    hours, minutes = divmod(level, 100)
    return 0 < hours < HOURS and minutes < MINUTES


def _is_half_read(said: Statement | Unclear) -> bool:
    """ "420 6:3o": what could not be read may be the time of the line before it."""
    mark = said.statement if isinstance(said, Unclear) else None
    return isinstance(mark, Mark) and mark.level_ml is None
