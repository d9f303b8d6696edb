"""A line told in fields: "12A/42/1000/serosang", "9 - 1205 - 1600 - seal 2", "CT2: 110, seal 2, 1400".

A bed, its tube, its line, and somewhere one whole time of the last two hours: the signs between the fields
are taken for stops, and the line must come as it stands there. Called by `read` and `rowwise`, for messages
that would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from .again import Again
from .items import FULL_HOUR
from .listrows import TUBES, Row, rows_of
from .listtimes import IS_AT, is_whole
from .numbers import Toks, glued, is_digits, is_inside_number, word
from .patterns.leads import SHORT_BED_WORDS
from .statements import Answered, Asked, Corrected, Drained, Mark, Moved, Withdrawn
from .verdict import Outcome

NUMERIC = frozenset({",", ".", ":"})
SIGNS = frozenset({"/", "-", "|", ",", ":", "=", ";"})
PARTING = frozenset({"/", "-", "|"})
NAMING = SHORT_BED_WORDS | {"#"}
OF_TIME = frozenset({"h", "hrs", "hr", "hours"})
BARE = frozenset({("leak", "present"), ("tidal", "yes")})
OF_OTHERS = (Answered, Asked, Corrected, Drained, Moved, Withdrawn)
HOURS, MINUTES = 24, 60
DAY, HALF_DAY, RECENT, SKEW = 1440, 720, 120, 5
"""Minutes."""
MOST = 8
SHORT = 3
"""Digits of a time that may be of either half of the day."""


class Fields(NamedTuple):
    """Where the line and the time of a bed stand."""

    row: Row
    start: int
    level: int
    time: int
    end: int


def by_field(again: Again) -> Outcome:
    """What a message says that is one line in fields, with what was found; nothing where it is not so."""
    rows = rows_of(again)
    if not rows:
        return ()
    if 1 < len(rows) <= MOST and rows[0].start == 0 and _are_numbers(again.toks, rows):
        each = [told_in_fields(again, row, row.start, row.end) for row in rows]
        return tuple(said for told in each for said in told) if all(each) else ()
    return told_in_fields(again, rows[0], 0, len(again.toks))


def _are_numbers(toks: Toks, rows: Sequence[Row]) -> bool:
    """ "204/1050/1000  211/340/1000": nothing but numbers and sides behind the beds."""
    said = (word(toks, k) for row in rows for k in range(row.label_end, row.end))
    return all(text.isdecimal() or text in SIGNS | TUBES for text in said)


def told_in_fields(again: Again, row: Row, start: int, end: int) -> Outcome:
    """What is told so between two places of the message."""
    fields = _fields(again, row, start, end)
    if fields is None:
        return ()
    parting = [k for k in range(fields.level + 1, end) if _parts(again.toks, k)]
    if any(_is_in_doubt(again, k, fields) for k in parting):
        return ()
    led = word(again.toks, fields.time - 1) in IS_AT
    outside = ((0, start), (end, len(again.toks)))
    before = (*range(start, row.start), *range(row.label_end, fields.level))
    signs = [(k, k + 1) for k in before if word(again.toks, k) in SIGNS]
    beside = ((k, k + 1) for k in parting if k in {fields.level + 1, fields.time - 1, fields.time + 1})
    at = None if led else fields.time
    outcome = again.outcome_without(*outside, *signs, *beside, at=at, parting=parting)
    return outcome if _is_whole_line(outcome, again.toks, fields) else ()


def _fields(again: Again, row: Row, start: int, end: int) -> Fields | None:
    toks = again.toks
    level = row.label_end
    while word(toks, level) in SIGNS | TUBES:
        level += 1
    within = is_inside_number(toks, level + 1) and word(toks, level + 1) in NUMERIC
    ends = not within and word(toks, level + 1) != "%"
    negative = word(toks, level - 1) == "-" and glued(toks, level)
    if not (level < end and is_digits(toks, level) and ends) or negative:
        return None
    times = [k for k in _times(again, start, end) if k != level]
    head = set(toks.said[start : row.start]) - SIGNS - OF_TIME - NAMING
    if len(times) != 1 or "(" in toks.said[times[0] - 2 : times[0]] or not head <= {word(toks, times[0])}:
        return None
    if _is_recent(again, level, either=times[0] == level + 1):  # "17 left 520 1800": 5:20, or 18:00?
        return None
    return Fields(row, start, level, times[0], end)


def _times(again: Again, start: int, end: int) -> Iterator[int]:
    """The whole times of the last two hours."""
    values = {cue.end for cue in again.cues if cue.label in {"seal", "suction", "wall", "leakgrade"}}
    for k in range(start, end):
        if is_whole(again.toks, k) and k not in values and _is_recent(again, k, either=False):
            yield k


def _is_recent(again: Again, k: int, *, either: bool) -> bool:
    """Whether a number may be a time of the last two hours; a short one in either half of the day."""
    said = word(again.toks, k)
    hours, minutes = divmod(int(said), 100)
    if len(said) < (SHORT if either else FULL_HOUR) or hours > HOURS or minutes >= MINUTES:
        return False
    arrived = again.ward.arrived.hour * MINUTES + again.ward.arrived.minute
    ago = (arrived + SKEW - hours * MINUTES - minutes) % DAY
    halves = {ago, (ago + HALF_DAY) % DAY} if either and len(said) == SHORT else {ago}
    return min(halves) <= RECENT + SKEW


def _parts(toks: Toks, k: int) -> bool:
    """Whether a sign parts two fields; not the minus of "suction -20" and "leak- seal 2"."""
    if word(toks, k) != "-":
        return word(toks, k) in PARTING
    of_word, of_number = glued(toks, k), glued(toks, k + 1)
    return not (of_word and not is_digits(toks, k - 1)) and (of_word or not of_number)


def _is_in_doubt(again: Again, k: int, fields: Fields) -> bool:
    """ "120/80" and "20-40" are of one thing, and "leak -" may be a minus."""
    toks = again.toks
    between = is_digits(toks, k - 1) and is_digits(toks, k + 1)
    own = {fields.level, fields.time}
    bare = any(c.end == k and (c.label, c.value) in BARE for c in again.cues) and word(toks, k - 1) != "+"
    behind = next((j for j in range(k, fields.end) if word(toks, j) != "-"), fields.end)
    minus = word(toks, k) == "-" and (bare or behind >= fields.end or word(toks, behind) in SIGNS)
    either = word(toks, k - 1) == "+" and word(toks, k + 1) == "-"  # "swing +/-"
    return minus or either or (between and not {k - 1, k + 1} & own)


def _is_whole_line(outcome: Outcome, toks: Toks, fields: Fields) -> bool:
    """Whether the line of that bed came with its level and its time, and all else is of that bed."""
    lines = [s for s in outcome if isinstance(s, Mark)]
    if len(lines) != 1 or any(isinstance(s, OF_OTHERS) for s in outcome):
        return False
    line, tubed = lines[0], not TUBES.isdisjoint(toks.said[fields.row.label_end : fields.level])
    timed = line.at is not None and line.at.strftime("%H%M") == word(toks, fields.time)
    beds = {getattr(s, "bed", None) for s in outcome}
    return (
        beds == {fields.row.bed}
        and timed
        and (line.level_ml, tubed)
        == (
            int(word(toks, fields.level)),
            line.tube is not None,
        )
    )
