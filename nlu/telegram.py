"""A line told in fields: "12A/42/1000/serosang", "9 - 1205 - 1600 - seal 2", "CT2: 110, seal 2, 1400".

A bed, its tube, its line, and one whole time of the last two hours, in any order: the signs between the
fields are taken for stops, and the line must come as it stands there. Called by `read` and `rowwise`, for
messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from .again import Again
from .items import FULL_HOUR
from .listrows import TUBES, Row, rows_of
from .listtimes import IS_AT
from .numbers import Toks, glued, is_digits, is_inside_number, word
from .patterns.leads import SHORT_BED_WORDS
from .patterns.levels import MILLILITRES
from .statements import Answered, Asked, Corrected, Drained, Mark, Moved, Withdrawn
from .verdict import Outcome

NUMERIC = frozenset({",", ".", ":"})
SIGNS = frozenset({"/", "-", "|", ",", ":", "=", ";", ">", "\u2192"})
ARROWS = frozenset({">", "\u2192"})
PARTING = frozenset({"/", "-", "|"})
NAMING = SHORT_BED_WORDS | {"#"}
OF_TIME = frozenset({"h", "hrs", "hr", "hours"})
LINES = frozenset({"level", "line", "mark"})
OF_LINE = LINES | MILLILITRES | {"@", "at", "."}
PER = frozenset({"/", "per"})
OTHER_UNITS = frozenset({"cm", "cmh", "cms", "mm", "mmhg", "kg", "%", "l", "h", "hrs", "hr", "am", "pm"})
VALUED = frozenset({"seal", "suction", "wall", "leakgrade"})
BARE = frozenset({("leak", "present"), ("tidal", "yes")})
OF_OTHERS = (Answered, Asked, Corrected, Drained, Moved, Withdrawn)
HOURS, MINUTES = 24, 60
DAY, HALF_DAY, RECENT, SKEW = 1440, 720, 120, 5
"""Minutes."""
MOST = 8
MINUTE_DIGITS = 2
SHORT = 3
"""Digits of a time that may be of either half of the day."""


class Figure(NamedTuple):
    """A number of digits, or two runs of them with a sign between: "19:00", "1,075"."""

    start: int
    end: int
    text: str
    sign: str = ""


class Fields(NamedTuple):
    """Where the line and the time of a bed stand."""

    row: Row
    start: int
    level: Figure
    time: Figure
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
    toks, level, time = again.toks, fields.level, fields.time
    if word(toks, level.start - 1) in ARROWS and level.text in (again.ward.index or {}).values():
        return ()  # "16 > 17 1850"
    if word(toks, time.start - 1) == ">" and (glued(toks, time.start) or word(toks, time.start - 2) == "at"):
        return ()  # "480 at >1900": later than that
    if _is_what_it_became(toks.said[start : level.start], toks.said[level.end : time.start], time.text):
        return ()
    joining = {k for k in _between(toks, fields) if word(toks, k) in SIGNS}
    parting = [k for k in range(start, end) if k not in joining and _parts(toks, k)]
    if any(_is_in_doubt(again, k, fields) for k in parting):
        return ()
    led = time.sign or word(toks, time.start - 1) in IS_AT
    outside = ((0, start), (end, len(toks)))
    if row.start < level.start:
        joining |= {k for k in parting if k in {level.end, time.start - 1, time.end}}
    signs = ((k, k + 1) for k in joining)
    at = None if led else time.start
    outcome = again.outcome_without(*outside, *signs, at=at, parting=parting)
    return outcome if _is_whole_line(outcome, toks, fields) else ()


def _is_what_it_became(before: tuple[str, ...], between: tuple[str, ...], time: str) -> bool:
    """ "17: 1856 -> 1830": one arrow between two numbers that may both be lines; not "17 > 640 > 1830"."""
    arrow = between in {("-", ">"), ("\u2192",)}
    return arrow and ARROWS.isdisjoint(before) and time[:1] != "0"


def _between(toks: Toks, fields: Fields) -> range:
    """What joins the bed and its line, where nothing but a tube stands between."""
    between = range(fields.row.label_end, fields.level.start)
    return between if all(word(toks, k) in SIGNS | TUBES for k in between) else range(0)


def _fields(again: Again, row: Row, start: int, end: int) -> Fields | None:
    toks = again.toks
    figures = [f for f in _figures(toks, start, end) if not row.start <= f.start < row.label_end]
    times = [f for f in figures if _is_time(again, f)]
    level = _level(again, row, figures)
    if level in times:
        times.remove(level)
    if level is None or len(times) != 1 or "(" in toks.said[times[0].start - 2 : times[0].start]:
        return None
    time = times[0]
    known = {k for f in (level, time) for k in range(f.start, f.end)}
    known |= {k for k in (level.start - 1, level.end, time.start - 1) if word(toks, k) in OF_LINE}
    head = {word(toks, k) for k in range(start, row.start) if k not in known}
    if not head <= SIGNS | OF_TIME | NAMING | TUBES:
        return None
    bare = not (level.sign or word(toks, level.end) in MILLILITRES)
    led = word(toks, level.start - 1) in IS_AT and len(level.text) == FULL_HOUR
    led &= time.start == level.end or _is_recent(again, level.text, either=False, reach=2 * RECENT)
    if bare and led and time.start <= level.end + 1:
        return None  # "12 @1735 1652", "9 at 1600, 1707"
    if bare and _is_recent(again, level.text, either=time.start == level.end):
        return None  # "17 left 520 1800": 5:20, or 18:00?
    if bare and not time.sign and row.label_end <= time.start < level.start:
        return None  # "12 - 1900 - 1050"
    return Fields(row, start, level, time, end)


def _level(again: Again, row: Row, figures: Sequence[Figure]) -> Figure | None:
    """The line: right behind its bed and tube, or the one number that can be it."""
    toks, place = again.toks, row.label_end
    while word(toks, place) in SIGNS | TUBES:
        place += 1
    values = {cue.end + (word(toks, cue.end) in SIGNS) for cue in again.cues if cue.label in VALUED}
    found = [f for f in figures if _may_be_line(toks, f) and f.start not in values]
    told = [
        f for f in found if f.sign or word(toks, f.end) in MILLILITRES or word(toks, f.start - 1) in LINES
    ]
    first = [f for f in found if f.start == place]
    others = [f for f in found if not _is_time(again, f)]
    return next((each[0] for each in (told, first, others) if len(each) == 1), None)


def _may_be_line(toks: Toks, figure: Figure) -> bool:
    negative = word(toks, figure.start - 1) == "-" and glued(toks, figure.start)
    unit = figure.end + (word(toks, figure.end) in MILLILITRES and word(toks, figure.end + 1) in PER) * 2
    return not negative and figure.sign in {"", ","} and word(toks, unit) not in OTHER_UNITS


def _figures(toks: Toks, start: int, end: int) -> Iterator[Figure]:
    k = start
    while k < end:
        inside = is_inside_number(toks, k + 1) and word(toks, k + 1) in NUMERIC
        behind = k + 1 + 2 * inside
        if is_digits(toks, k):
            yield Figure(k, behind, "".join(toks.said[k:behind:2]), word(toks, k + 1) if inside else "")
        k = behind if is_digits(toks, k) else k + 1


def _is_time(again: Again, figure: Figure) -> bool:
    """Whether it is a whole time of the last two hours."""
    if figure.sign == "," or (figure.sign and len(word(again.toks, figure.end - 1)) != MINUTE_DIGITS):
        return False
    return len(figure.text) == FULL_HOUR and _is_recent(again, figure.text, either=False)


def _is_recent(again: Again, said: str, *, either: bool, reach: int = RECENT) -> bool:
    """Whether a number may be a time of the last minutes, two hours; a short one in either half of a day."""
    hours, minutes = divmod(int(said), 100)
    if len(said) < (SHORT if either else FULL_HOUR) or hours > HOURS or minutes >= MINUTES:
        return False
    arrived = again.ward.arrived.hour * MINUTES + again.ward.arrived.minute
    ago = (arrived + SKEW - hours * MINUTES - minutes) % DAY
    halves = {ago, (ago + HALF_DAY) % DAY} if either and len(said) == SHORT else {ago}
    return min(halves) <= reach + SKEW


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
    own = {
        k
        for start, end in (fields.level[:2], fields.time[:2], fields.row[:2])
        for k in range(start, end + (word(toks, end) in MILLILITRES))
    }
    bare = any(c.end == k and (c.label, c.value) in BARE for c in again.cues) and word(toks, k - 1) != "+"
    behind = next((j for j in range(k, fields.end) if word(toks, j) != "-"), fields.end)
    minus = word(toks, k) == "-" and (bare or behind >= fields.end or word(toks, behind) in SIGNS)
    either = word(toks, k - 1) == "+" and word(toks, k + 1) == "-"  # "swing +/-"
    letter = is_digits(toks, k - 1) and word(toks, k + 1).isalpha() and len(word(toks, k + 1)) == 1
    if letter and glued(toks, k) and glued(toks, k + 1) and word(toks, k + 1) not in TUBES:
        return True  # "12-A" of another unit
    short = len(word(toks, k - 1)) == len(word(toks, k + 1)) == 1 and glued(toks, k) and glued(toks, k + 1)
    if short and (word(toks, k - 1) + word(toks, k + 1)).isalpha() and word(toks, k + 1) not in TUBES:
        return True  # "r/v" and no right tube
    return minus or either or (between and not {k - 1, k + 1} & own)


def _is_whole_line(outcome: Outcome, toks: Toks, fields: Fields) -> bool:
    """Whether the line of that bed came with its level and its time, and all else is of that bed."""
    lines = [s for s in outcome if isinstance(s, Mark)]
    if len(lines) != 1 or any(isinstance(s, OF_OTHERS) for s in outcome):
        return False
    line, tubed = lines[0], not TUBES.isdisjoint([word(toks, k) for k in _between(toks, fields)])
    timed = line.at is not None and line.at.strftime("%H%M") == fields.time.text
    beds = {getattr(s, "bed", None) for s in outcome}
    same = line.level_ml == int(fields.level.text) and (line.tube is not None or not tubed)
    return beds == {fields.row.bed} and timed and same
