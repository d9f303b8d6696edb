"""Lists of beds read row by row, each with the time of all: "3: 440 / 5: 1260 / 12: 900 all @0900".

A row begins with a bed of the unit; what stands before the first is said of each, and so is a time of all
behind the last. Where one row is in doubt and those beside it are plain, only that one is asked. Called by
`read`, for messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from .again import Again
from .listed import VOLUMES
from .listrows import Row, is_doubtful, may_go_on, rows_of
from .listtimes import Times, times_of
from .numbers import word
from .statements import Answered, Asked, Corrected, Drained, Mark, Moved, Statement, Unclear, Withdrawn
from .telegram import told_in_fields
from .verdict import Outcome

FEWEST_SURE = 2
MOST = 16
LINES = (Mark, Drained)
OF_OTHERS = (Answered, Asked, Corrected, Moved, Withdrawn)


def by_row(again: Again) -> Outcome:
    """What the rows say, and what is asked of one; nothing where the message is no such list."""
    rows = rows_of(again)
    if not 1 < len(rows) <= MOST or is_doubtful(again.toks, rows) or not VOLUMES.isdisjoint(again.toks.words):
        return ()
    times = times_of(again, rows)
    if times.may_be_times():
        return ()
    own = {row.start: _of_row(again, row, times) for row in rows if times.is_own(row)}
    times = replace(times, rivals=frozenset(start for start, told in own.items() if _may_be_lines(told)))
    read = {row.start: own.get(row.start) or _of_row(again, row, times) for row in rows}
    return _told(read, times, voice=again.ward.voice)


def _told(read: Mapping[int, Outcome], times: Times, *, voice: bool) -> Outcome:
    sure = {start for start, told in read.items() if not any(isinstance(s, Unclear) for s in told)}
    asks = len(read) - len(sure)
    if len(sure) < FEWEST_SURE or (asks and (voice or asks >= len(sure))):
        return ()
    if any(may_go_on(times.toks, row) for row in times.rows if row.start not in sure):
        return ()
    if times.trail is not None and times.holder not in sure:
        return ()  # "310 960 all at 12nm": what is not read may be of the time
    told = tuple(s for outcome in read.values() for s in outcome)
    once = not asks or len({times.bed_of(start) for start in read}) == len(read)
    return told if once and _are_lines(told) else ()


def _may_be_lines(told: Outcome) -> bool:
    return any(isinstance(s, (*LINES, Unclear)) for s in told)


def _of_row(again: Again, row: Row, times: Times) -> Outcome:
    """What one row says of its own bed, or what is asked of it."""
    if not row.bed:
        text = again.said(row.start, row.end)
        return (Unclear(slot="bed", text=text, statement=Mark(level_ml=int(word(again.toks, row.line)))),)
    outcome = again.outcome_without(*times.spans_beside(row), at=times.time_of(row))
    if times.is_own(row) and any(isinstance(said, Unclear) for said in outcome):
        outcome = told_in_fields(again, row, row.start, row.end) or outcome
    text = again.said(row.start, row.end)
    if all(_is_of(said, row) for said in outcome) and outcome:
        return tuple(_timed(said, text, times, row) for said in outcome)
    asked = next((said for said in outcome if isinstance(said, Unclear)), None)
    if asked is None or len(outcome) > 1 or (asked.slot == "at" and times.time_of(row) is not None):
        return (Unclear(slot="kind", text=text, statement=Statement(bed=row.bed)),)
    return (replace(asked, text=text, statement=asked.statement or Statement(bed=row.bed)),)


def _is_of(said: Statement | Unclear, row: Row) -> bool:
    return isinstance(said, Statement) and said.bed == row.bed and not isinstance(said, OF_OTHERS)


def _timed(said: Statement | Unclear, text: str, times: Times, row: Row) -> Statement | Unclear:
    """ "3 610, 4 220 at 0600, 5 90 at 0630": of which time is the first?"""
    if isinstance(said, LINES) and said.at is None and times.may_be_of_next(row):
        return Unclear(slot="at", text=text, statement=said)
    return said


def _are_lines(told: Outcome) -> bool:
    """Whether lines of several beds came, no two of one drain and time, and none may be how much came."""
    if any(isinstance(s, Drained) and s.volume_ml for s in told):
        return False
    lines = [s for s in told if isinstance(s, LINES)]
    drains = [(s.bed, s.tube, s.at) for s in lines]
    if len({s.bed for s in lines}) < FEWEST_SURE or len(set(drains)) < len(drains):
        return False
    timed = {s.at is None for s in lines}
    return len(timed) == 1
