"""Who went to another bed, who left the ward, and where nothing drained, told in other words.

"room change 208 to 214, 1853", "transfer out 212 -> stepdown, report called, gone 7am", "neither 4B nor 3A
put anything out at 0900". Every clause is one of `patterns.restating`; what they say is told again in plain
words, and must come out with the beds and the time that were said. Called by `read` for typed messages that
would be asked.
"""

from __future__ import annotations

from .again import Again, Span, Told
from .knownclauses import Said, Value, digits, label_of, scanned, time_of
from .patterns.restating import CLAUSES
from .statements import Away, Back, Drained, Left, Moved, Statement

GOING: tuple[tuple[str, str, type[Statement]], ...] = (
    ("left", " discharged", Left),
    ("away", " gone to CT", Away),
    ("back", " is back", Back),
)


def restated(again: Again) -> Told:
    """What happened, or nothing where a word is left over."""
    said = scanned(again, CLAUSES, both=True)
    if said is None:
        return ()
    nil = [*said.found.get("nil", ()), *said.found.get("nil both", ())]
    if nil:
        return _told(again, said, [(bed, " nil out") for bed in nil], Drained)
    begun, end = said.one("from"), said.one("to")
    for role, what, kind in GOING:
        if (bed := said.one(role)) is not None:
            return _told(again, said, [(bed, what)], kind)
    return _moved(again, said, begun, end) if begun is not None and end is not None else ()


def _moved(again: Again, said: Said, begun: Value, end: Value) -> Told:
    """The move, where both are beds of the ward and not the same."""
    labels = label_of(again, begun), label_of(again, end)
    if None in labels or labels[0] == labels[1]:
        return ()
    told = again.told(
        [" bed ", digits(again, begun), " moved to bed ", digits(again, end), *_when(again, said)]
    )
    only = told[0] if len(told) == 1 else None
    so = isinstance(only, Moved) and (only.bed, only.to_bed) == labels
    return told if so and _is_timed(told, said) else ()


def _told(again: Again, said: Said, beds: list[tuple[Value, str]], kind: type[Statement]) -> Told:
    """What is so of each of these beds, and of nothing else."""
    used = {"nil", "nil both"} if kind is Drained else {role for role, _, each in GOING if each is kind}
    if not said.found.keys() <= used | {"at"} or not _is_of(kind, said):
        return ()
    found: list[Statement] = []
    for bed, what in beds:
        label = label_of(again, bed)
        told = again.told([" bed ", digits(again, bed), what, *_when(again, said)]) if label else ()
        if len(told) != 1 or not isinstance(told[0], kind) or told[0].bed != label:
            return ()
        found += told
    return tuple(found) if _is_timed(tuple(found), said) else ()


def _is_of(kind: type[Statement], said: Said) -> bool:
    """Whether what stands beside it is of the same."""
    other = {"gone", "moving"} if kind is Drained else {"unmoved", "moving"}
    return other.isdisjoint(said.flags)


def _when(again: Again, said: Said) -> list[str | Span]:
    """When it was; a bare number only where it is a time and no bed."""
    at, bare = said.one("at"), said.one("bare")
    if (
        at is None
        and bare is not None
        and bare.is_clock
        and bare.number >= 1000
        and not label_of(again, bare)
    ):
        at = bare
    return [" at ", *time_of(at)] if at is not None else []


def _is_timed(told: Told, said: Said) -> bool:
    """Whether each has a time where one was said, and none where none was."""
    timed = {"at", "bare"} & said.found.keys()
    return len(timed) < len(("at", "bare")) and all((s.at is not None) == bool(timed) for s in told)
