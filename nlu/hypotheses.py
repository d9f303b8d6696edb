"""A recogniser's other hypotheses: they count where they give a whole valid reading, never by confidence.

What only another hypothesis says is accepted where no number of the first one speaks against it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import fields
from datetime import datetime

from .clock import clocks
from .numbers import Toks, heard_as_number, is_digits, numbers, word
from .pipeline import pipeline
from .statements import Parsed, Statement, Unclear
from .verdict import merged

BEDLESS = frozenset({"withdrawn", "corrected", "answered", "help", "asked"})


def weighed(own: Parsed, others: Sequence[Parsed]) -> Parsed:
    """What the first hypothesis says, in the light of the others."""
    bedless = _whole(own) and all(s.bed is None for s in own.statements)
    valid = [o for o in others if _whole(o) and (bedless or _names_a_bed(o))]
    torn = [each for o in others for each in _torn_from(own, o)]
    if not valid and not torn:
        return own
    if _whole(own):
        outcomes = list(dict.fromkeys([*(o.statements for o in (own, *valid)), *torn]))
        if len(outcomes) == 1:
            return own
    elif not valid or any(len(u.choices) > 1 and u.readings for u in own.unclear):
        return own
    else:
        outcomes = list(dict.fromkeys(o.statements for o in valid))
        if len(outcomes) == 1:
            agrees = _agrees(own.text, outcomes[0])
            return Parsed(text=own.text, statements=outcomes[0]) if agrees else _asked(own, outcomes[0])
    found = merged([tuple(o) for o in outcomes], own.text)
    return Parsed(
        text=own.text,
        statements=tuple(s for s in found if isinstance(s, Statement)),
        unclear=tuple(u for u in found if isinstance(u, Unclear)),
    )


def _whole(parsed: Parsed) -> bool:
    if not parsed.statements or parsed.unclear:
        return False
    return all(s.bed is not None or s.kind in BEDLESS for s in parsed.statements)


def _torn_from(own: Parsed, other: Parsed) -> Iterator[tuple[Statement, ...]]:
    """What a hypothesis hesitates between, where all of it speaks against the first one; else nothing."""
    if not _whole(own) or len(other.unclear) != 1 or len(other.unclear[0].readings) < 2:
        return
    told = [(*other.statements, reading) for reading in other.unclear[0].readings]
    beds = {s.bed for s in own.statements}
    if all(s.bed is not None and s.bed not in beds for each in told for s in each):
        yield from told


def _names_a_bed(parsed: Parsed) -> bool:
    return all(s.bed is not None for s in parsed.statements)


def _asked(own: Parsed, statements: tuple[Statement, ...]) -> Parsed:
    """What the other hypothesis says, as a question."""
    if own.unclear:
        return Parsed(text=own.text, unclear=own.unclear)
    asked = merged([statements], own.text, doubted=True, strict=True)
    return Parsed(text=own.text, unclear=tuple(u for u in asked if isinstance(u, Unclear)))


def _agrees(text: str, statements: tuple[Statement, ...]) -> bool:
    """Whether each number of a message can be one of the numbers of these statements."""
    toks = pipeline().read(text, voice=True).tokens
    told = frozenset(_told(statements))
    free = 0
    for i in range(len(toks)):
        if i < free:
            continue
        ends = _sayings(toks, i)
        heard = [(n.end, int(n.value)) for n in heard_as_number(toks, i)]
        free = max((end for end, value in [*ends, *heard] if value in told), default=i)
        if free == i and (ends or (heard and word(toks, i - 1) == "bed")):
            return False
    return True


def _sayings(toks: Toks, i: int) -> list[tuple[int, int]]:
    """The numbers that begin at a place and the times, as hours and minutes in one number."""
    found = [(n.end, int(n.value)) for n in numbers(toks, i)]
    found += [(n.end, int(n.value * 1000)) for n in numbers(toks, i) if n.value.denominator > 1]
    times = (
        [(end, c.hour * 100 + c.minute) for end, c in clocks(toks, i)] if found or is_digits(toks, i) else []
    )
    return [*found, *times]


def _told(statements: tuple[Statement, ...]) -> Iterator[int]:
    """Every number that the statements hold; a time as hours and minutes, by either clock."""
    for statement in statements:
        for field in fields(statement):
            value = getattr(statement, field.name)
            match value:
                case datetime():
                    yield from (
                        hour * 100 + value.minute
                        for hour in {value.hour, value.hour % 12, value.hour % 12 + 12}
                    )
                    yield from {value.hour, value.hour % 12 or 12}
                case bool():
                    continue
                case int() | float():
                    yield int(value)
                case str() if field.name in {"bed", "to_bed", "tube"}:
                    digits = "".join(c for c in value if c.isdecimal())
                    yield from [int(digits)] if digits else []
