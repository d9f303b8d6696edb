"""Where the rows of a list of beds begin and end: the words only, nothing is read.

"lines at 0600: 36 - 1230, 37 - 88", "33 560/34 1235/38 L 85 @1200". Called by `rowwise`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple, cast

from .again import Again
from .bedclauses import LEANING
from .eachtube import SIDES
from .followers import DIALLED
from .inrows import LITTLE
from .labels import bed_label
from .numbers import Toks, glued, is_digits, is_inside_number, word
from .patterns.leads import BED_WORDS
from .patterns.levels import MILLILITRES, VOLUMES
from .wall import Labelled, written

APART = frozenset({",", ";", "/", "|", "and", "&", "+", ".", "then", "\\", "plus", "*", "\u2022", "["})
"""Between two rows."""
NUMERIC = frozenset({".", ","})
"""Within one number."""
SPACED = frozenset({"-", "~"})
"""So do these with a blank on either side, where no such sign parts a bed from its line."""
WITHIN = frozenset({":", "-", "=", ">", ".", "]"})
"""Between a bed and its line."""
AT = frozenset({"at", "@"})
MINUTE_DIGITS = 2
MINUTES = 60
TWO_ROWS = 4
"""Numbers of two beds and their lines."""
NEAR = 5
"""Words and signs at most between a bed and its line."""
UNITS = VOLUMES | frozenset(
    {"h", "hr", "hrs", "hours", "hour", "min", "mins", "minutes"}
    | {"%", "kg", "cm", "mmhg", "mg", "mcg", "am", "pm", "x", "out", "of", "more", "to", "days", "day"}
)
"""Behind a number these say that it is no bed."""
OTHERS = LEANING - {"all", "each", "both", "again", "check", "these", "that", "those"}
TUBES = SIDES | {"med", "meds", "m", "ant", "post", "anterior", "posterior", "base", "apex", "upper", "lower"}
SET_TO = frozenset(map(str, DIALLED))
OF_THE_NEXT = frozenset({"in", "for", "of", "from"})
"""Right before a bed these say that what was told before is of it."""
HEDGES = frozenset({"think", "sure", "or", "maybe"})
"""In a row with another behind it these are of that row alone."""


_ROWS = ("rows", 0)
"""Where a message keeps its rows once they are found."""


class Row(NamedTuple):
    """The words of one row: its bed ends at `label_end`, the sign behind that at `line`; none where the unit
    has no such bed."""

    start: int
    label_end: int
    line: int
    end: int
    bed: str
    sign: str
    beside: bool
    """Whether the number right behind its bed could be a bed too."""


def is_doubtful(toks: Toks, rows: Sequence[Row]) -> bool:
    """Whether a word may be about another row, or the numbers behind the beds may be beds as well."""
    beside = {*toks.said[: rows[0].start], *toks.said[rows[-1].start :]}
    beds = [row for row in rows if row.beside]
    if any(_is_empty(toks, row) for row in rows):
        return True
    alone = sum(text.isdecimal() for text in toks.said) == TWO_ROWS
    if alone and any(_is_clock(toks, row) for row in rows):
        return True  # "12:340 3:44"
    if _counts_hours(toks, rows) or _has_clock(toks, rows) or _is_set_so(toks, rows):
        return True
    if any(word(toks, row.start - 1) in OF_THE_NEXT for row in rows[1:]):
        return True  # "bed 4 340, visitors in bed 7 14"
    if rows[0].sign == ":" and rows[0].beside and not any(row.sign for row in rows[1:]):
        return True  # "8: 12 605, 17 1160": at eight, or bed 8?
    ranges = any(row.sign == "-" for row in beds) and any(row.sign != "-" for row in rows)
    others = toks.words & OTHERS
    if all(word(toks, k + 1) == "time" for k, token in enumerate(toks) if token.text == "same"):
        others -= {"same"}
    return not others <= HEDGES - beside or ranges or len(beds) * 2 > len(rows)


def _is_set_so(toks: Toks, rows: Sequence[Row]) -> bool:
    """ "9 / 340 / 20 / 90": a dial and the wall, perhaps, and no bed 20; "9/340 10/120" is a list."""
    slashed = word(toks, rows[0].label_end) == "/"
    for row in rows[1:]:
        line = word(toks, row.label_end + 1)
        apart = word(toks, row.label_end) == "/" and (word(toks, row.start - 1) == "/" or not slashed)
        if apart and word(toks, row.start) in SET_TO and line.isdecimal() and int(line[:4]) <= LITTLE:
            return True
    return False


def _counts_hours(toks: Toks, rows: Sequence[Row]) -> bool:
    """ "12 4 300, 5 330, 6 360": the hours of a list of bed 12, and no beds five and six."""
    first = word(toks, rows[0].line)
    return first.isdecimal() and word(toks, rows[1].start) == str(int(first) + 1)


def _has_clock(toks: Toks, rows: Sequence[Row]) -> bool:
    """ "9 340, 4 120, 06:45": where not all rows are written so, these are an hour and its minutes."""
    joined = sum(row.sign == ":" and is_inside_number(toks, row.label_end) for row in rows)
    clocks = [row for row in rows if _is_clock(toks, row) and int(word(toks, row.line)) < MINUTES]
    led = any(word(toks, row.start).startswith("0") for row in clocks)
    return led or (bool(clocks) and joined < len(rows))


def _is_empty(toks: Toks, row: Row) -> bool:
    """ "3 510, 4, 7 300, 9 med": where one has no line the rows may be read one place on."""
    return all(word(toks, k) in TUBES for k in range(row.line, row.end))


def may_go_on(toks: Toks, row: Row) -> bool:
    """ "211 R 40 L", "211 R 40 L 65 / 160": a tube or a number that lacks its own may be of the next row."""
    inside = range(row.line, row.end)
    return any(word(toks, k) in TUBES for k in inside) or any(
        word(toks, k) in APART and is_digits(toks, k + 1) and not is_inside_number(toks, k) for k in inside
    )


def rows_of(again: Again) -> tuple[Row, ...]:
    """The rows of a list, in order; looked for once, as several ask."""
    toks, index = again.toks, again.ward.index
    if index is None:
        return ()
    if _ROWS not in toks.memo:
        toks.memo[_ROWS] = _rows(toks, index, voice=again.ward.voice)
    return cast("tuple[Row, ...]", toks.memo[_ROWS])


def _rows(toks: Toks, index: Mapping[str, str], *, voice: bool) -> tuple[Row, ...]:
    labelled = written(toks, index, voice=voice)
    found: list[Row] = []
    for k in range(len(toks)):
        row = _row(toks, k, index, labelled) if _may_begin(toks, k, found, voice=voice) else None
        if row is None and found and _is_parted(toks, k):
            row = _of_no_bed(toks, k, found[-1])
        if row is not None and (not found or _is_parted(toks, k) or _is_next(toks, k, found[-1], row)):
            found.append(row)
    if len(found) > 1 and _is_clock(toks, found[0]) and not _is_clock(toks, found[1]):
        del found[0]  # "19:00 - 4: 205; 5: 340"
    ends = [row.start for row in found[1:]] + [len(toks)]
    return tuple(row._replace(end=_end(toks, row, end)) for row, end in zip(found, ends, strict=False))


def _is_clock(toks: Toks, row: Row) -> bool:
    """Whether a bed and its line may be an hour and minutes."""
    joined = row.sign == ":" and is_inside_number(toks, row.label_end)
    return joined and word(toks, row.start) not in BED_WORDS and len(word(toks, row.line)) == MINUTE_DIGITS


def _may_begin(toks: Toks, k: int, found: Sequence[Row], *, voice: bool) -> bool:
    if (found and k <= found[-1].line) or (word(toks, k - 1) in AT and word(toks, k + 1) == ":"):
        return False  # "at 18:30 3:44, 5:60"
    if word(toks, k - 1) == ":" and is_inside_number(toks, k - 1):
        return False  # "lines at 11:07 - bed 9 340"
    return word(toks, k) in BED_WORDS if voice else True


def _is_parted(toks: Toks, k: int) -> bool:
    """Whether a bed is named there, or one row may have ended before it."""
    before = word(toks, k - 1)
    within = before in NUMERIC and is_inside_number(toks, k - 1)
    return word(toks, k) in BED_WORDS or (before in APART and not within) or _begins_chain(toks, k)


def _begins_chain(toks: Toks, k: int) -> bool:
    """ "204/1050/1000  211/340/1000": with slashes all through a row, a blank ends it."""
    chains = word(toks, k - 2) == word(toks, k - 4) == word(toks, k + 1) == word(toks, k + 3) == "/"
    return chains and is_digits(toks, k - 1) and not glued(toks, k)


def _is_next(toks: Toks, k: int, last: Row, row: Row) -> bool:
    """ "12 L 0, R 365 - 31 430 - 36 890", "33 - 505 34 - 1115": whether the next row begins there."""
    spaced = word(toks, k - 1) in SPACED and not (glued(toks, k - 1) or glued(toks, k))
    lined = any(is_digits(toks, j) for j in range(last.line, k - 1))
    if spaced and lined and not (last.sign or row.sign) and word(toks, last.line) not in APART:
        return True
    return _goes_on(toks, last, row)


def _goes_on(toks: Toks, last: Row, row: Row) -> bool:
    """ "33 - 505 34 - 1115", "31 is 560 40 is 35": with no stop between, the same between bed and line."""
    led, line = _lead(toks, last)
    dashes = 0 if "-" in led else sum(word(toks, k) == "-" for k in range(line + 1, row.start))
    return bool(led) and line + 1 + dashes == row.start and led == _lead(toks, row)[0]


def _lead(toks: Toks, row: Row) -> tuple[tuple[str, ...], int]:
    """What stands between a bed and its line, and where that is; nothing where it is not near."""
    line = next((k for k in range(row.label_end, row.label_end + NEAR) if is_digits(toks, k)), row.label_end)
    return toks.said[row.label_end : line], line


def _row(toks: Toks, k: int, index: Mapping[str, str], labelled: Labelled) -> Row | None:
    start = k
    named = word(toks, k) in BED_WORDS
    k += named
    end, bed = _label(toks, k, index, labelled)
    behind = word(toks, end)
    left = named and behind == "l" and is_digits(toks, end + 1)
    if not bed or (behind in UNITS and not left):
        return None
    line, sign = _signed(toks, end)
    beside = is_digits(toks, line) and bool(_label(toks, line, index, labelled)[1])
    return Row(start, end, line, end, bed, sign, beside and word(toks, line + 1) not in UNITS)


def _of_no_bed(toks: Toks, k: int, last: Row) -> Row | None:
    """ "4: 205; 5: 340; 41: 100": told as the row before, of a bed that the unit has not."""
    line, sign = _signed(toks, k + 1)
    alike = bool(sign) and sign == last.sign and is_digits(toks, k) and is_digits(toks, line)
    ends = word(toks, line + 1 + (word(toks, line + 1) in MILLILITRES)) in APART | {""}
    inside = is_inside_number(toks, k + 1) or k <= last.line
    return Row(k, k + 1, line, line, "", sign, beside=False) if alike and ends and not inside else None


def _label(toks: Toks, k: int, index: Mapping[str, str], labelled: Labelled) -> tuple[int, str]:
    """Where the label at a place ends, and the label; an empty one where none is there."""
    if k in labelled:
        end, bed = labelled[k]
        return end, bed if bed in index.values() else ""
    if not is_digits(toks, k) or (is_inside_number(toks, k + 1) and word(toks, k + 1) in NUMERIC):
        return k, ""
    return k + 1, bed_label(word(toks, k), index) or ""


def _signed(toks: Toks, k: int) -> tuple[int, str]:
    """Where the signs between a bed and its line end, and what they are; "5 -20" may be minus twenty."""
    end = k
    while word(toks, end) in WITHIN:
        end += 1
    sign = "".join(toks.said[k:end])
    negative = sign == "-" and glued(toks, end) and not glued(toks, k)
    return (k, "") if negative or sign == "." else (end, sign)


def _end(toks: Toks, row: Row, end: int) -> int:
    """Where a row ends without the stops behind it; a dash behind a word may be a minus: "3 440 leak-"."""
    while end > row.line and (
        word(toks, end - 1) in APART or (word(toks, end - 1) in SPACED and is_digits(toks, end - 2))
    ):
        end -= 1
    return end
