"""A message of several beds, tubes or times told again line by line, each with what was said once for all.

"okay seven p m, bed one's at 280, bed two's at 615", "bed 16 left is at 380 and the right one's at 190, that
was 1900", "bed seven, it was 390 at 1845 and it's 910 at 1905": to a line the time of all is added behind it,
and the bed before it, as one would tell it alone. Called by `read` for messages that would be asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from .again import Again, Span, Told
from .bedclauses import LEANING
from .clock import clocks
from .entered import ENTERED, TOLD_YOU
from .listtimes import is_of_half
from .neighbours import is_stop_among
from .numbers import Toks, is_digits, numbers, starts_number, word
from .patterns.leads import BED_WORDS
from .patterns.numerals import NUMERALS
from .somebody import names_bed
from .statements import Checked, Mark, Statement
from .timeofall import JOINTS, STOPS, Time, heading, time_before, time_behind

MOST = 10
ARTICLES = frozenset({"the", "his", "her", "a"})
IT = frozenset({"previously", "it", "it's", "its", "he's", "she's", "he", "she", "now", "at", "up", "from"})
"""One of these begins what is told of the same bed at another time."""
AT = frozenset({"at", "by"})
NUMBERED = frozenset({"tube", "drain", "number"})
"""With a number behind one of these the next number may be of the next tube."""
SO = frozenset({"is", "was", "'", "s"})
SETTINGS = frozenset({"suction", "wall", "dial", "sxn", "vacuum", "seal"})
LEADING = JOINTS | STOPS | {"now", "up", "from", "previously"}
ADDED = " at "
CHARTED = ENTERED | TOLD_YOU
"""With one of these what was charted may be wrong: "i put 340 on bed 5 at 1800, it's 360 at 1900"."""
FEWEST = 2
THOUSAND = 1000
SMALL = 40
"""mL; a bed, or what suction is set to, may be as much."""


def retold(again: Again) -> Told:
    """What the lines say, each told alone; nothing where one is not whole or may lean on another."""
    toks = again.toks
    beds = _beds(again)
    if not beds or not all(k == beds[0] or _is_joined(toks, k) for k in beds):
        return ()
    head, tail = time_before(again, beds[0]), time_behind(toks, beds[-1])
    time = head or tail
    said = head.beds if head else heading(again, range(beds[0]), -1)
    if (head and tail) or (head is None and len(beds) > 1 and said is None):
        return ()
    end = tail.start if tail else len(toks)
    if not LEANING.isdisjoint(toks.said[beds[0] : end]):
        return ()
    label = _label_end(again, beds[0])
    starts = beds if len(beds) > 1 else [beds[0], *_tubes(again, label, end)]
    if len(starts) == 1 and time is None and CHARTED.isdisjoint(toks.words):
        starts = [beds[0], *_times(toks, label, end)]
    alone = time is not None and len(starts) == 1 and (head.led if head else time.whole and end + 2 < time.at)
    if not (alone or FEWEST <= len(starts) <= MOST) or said not in {None, 0, len(beds)}:
        return ()
    first = starts[0] if said is not None else 0
    return _told(again, list(pairwise([first, *starts[1:], end])), time, named=len(beds) > 1)


def _told(again: Again, rows: Sequence[Span], time: Time | None, *, named: bool) -> Told:
    found: list[Statement] = []
    bed: Span | None = None
    for start, end in rows:
        told = _row(again, (start, _end(again.toks, end)), time, None if named else bed)
        if (
            not told
            or not all(isinstance(s, (Mark, Checked)) for s in told)
            or len({s.bed for s in told}) > 1
        ):
            return ()
        if not any(isinstance(s, Mark) for s in told):
            return ()
        at = told[0].spans.get("bed")
        if at is None:
            return ()
        bed = bed or (at.start, at.end)
        found += told
    return tuple(found) if _are_lines(found, time, len(rows), named=named) else ()


def _are_lines(found: Sequence[Statement], time: Time | None, rows: int, *, named: bool) -> bool:
    """Whether there is one line a drain and time, at one time of all where one was said."""
    marks = [s for s in found if isinstance(s, Mark)]
    times = {s.at for s in marks}
    if len({(s.bed, s.tube, s.at) for s in marks}) < len(marks) or None in times:
        return False
    if named and len({s.bed for s in marks}) < rows:
        return False
    if time is None:
        return named or (len(times) == len(marks) and _climbs(marks))
    low = all((s.level_ml or 0) < THOUSAND for s in marks)
    return len(times) == 1 and (low or not time.start or (time.led and rows > 1))


def _climbs(marks: Sequence[Mark]) -> bool:
    """Whether the lines of one drain go up with their times, and none may be a bed or a setting: "640 at
    seven, now 20 at 1905", "640 at seven from 4 at six"."""
    told = [s.level_ml or 0 for s in sorted(marks, key=lambda s: s.at.timestamp() if s.at else 0)]
    return told == sorted(told) and told[0] > SMALL


def _row(again: Again, row: Span, time: Time | None, bed: Span | None) -> Told:
    """What one line says, told alone, with the bed before it that the first one named."""
    toks, (start, end) = again.toks, row
    while word(toks, start) in LEADING and (bed or word(toks, start) in STOPS | JOINTS):
        start += 1
    own = _leading(toks, start, end) if bed and time is None else None
    if own is None and bed and word(toks, start) in AT:
        return ()  # "at five four ten and at six four thirty"
    if own is not None:
        start = own[1] + (word(toks, own[1]) in STOPS)
    at = own or ((time.at, time.end) if time else None)
    if start >= end:
        return ()
    said: list[str | Span] = ["bed ", bed, ", "] if bed else ["bed "] * _is_bare(again, start)
    said += _stood(again, start, end) if time and not bed else [_letters(toks, start, end)]
    if at is not None:
        ended = word(toks, end - 1) in NUMERALS or is_digits(toks, end - 1)
        said += [ADDED if ended else f",{ADDED}", _letters(toks, *at)]
    return again.told(said)


def _letters(toks: Toks, start: int, end: int) -> Span:
    return toks[start].start, toks[end - 1].end


def _stood(again: Again, start: int, end: int) -> list[str | Span]:
    """The words of a row, "bed seven on 105" as what its line is at: in a list with a time for all it is on
    nothing else; "bed seven on 20" stays as it was said."""
    toks, k = again.toks, _label_end(again, start)
    while word(toks, k) in SO:
        k += 1
    number = max(numbers(toks, k + 1), key=lambda n: n.end, default=None)
    if (
        word(toks, k) != "on"
        or number is None
        or number.value <= SMALL
        or not SETTINGS.isdisjoint(toks.words)
    ):
        return [_letters(toks, start, end)]
    return [_letters(toks, start, k), " at ", _letters(toks, k + 1, end)]


def _leading(toks: Toks, start: int, end: int) -> Span | None:
    """ "at 1900 he's 515", "two hours ago it was 110": where the time stands that is said before its line."""
    start += word(toks, start) in AT
    sure = is_of_half(toks, start)
    ends = [stop for stop, clock in clocks(toks, start) if stop < end and (sure or clock.sure)]
    return (start, max(ends)) if ends and not starts_number(toks, max(ends)) else None


def _beds(again: Again) -> list[int]:
    """Where a bed is named: by that word, by its label, or by its number alone, "twenty one's on 260"."""
    toks, labelled = again.toks, again.meant.labelled
    inside = {j for k, (end, _) in labelled.items() for j in range(k, end)}
    return [
        k
        for k in range(len(toks))
        if (names_bed(toks, k) and k not in inside)
        or (k in labelled and not names_bed(toks, k - 1))
        or (_is_bare(again, k) and _is_joined(toks, k))
    ]


def _is_bare(again: Again, k: int) -> bool:
    """Whether a bed of the unit is told there by its number and what it is at: "four's at 205"."""
    toks = again.toks
    if not starts_number(toks, k) or k in again.meant.labelled:
        return False
    end = _label_end(again, k)
    number = next((n for n in numbers(toks, k) if n.end == end), None)
    told = word(toks, end) == "'" and word(toks, end + 1) == "s"
    told &= not any(t.text in NUMBERED and starts_number(toks, j + 1) for j, t in enumerate(toks[:k]))
    return told and number is not None and str(number.value) in (again.ward.index or ())


def _is_joined(toks: Toks, k: int) -> bool:
    """Whether a line may begin there: behind a stop or a word that joins."""
    k -= word(toks, k - 1) in ARTICLES
    return k == 0 or word(toks, k - 1) in JOINTS or is_stop_among(STOPS, toks, k - 1)


def _label_end(again: Again, k: int) -> int:
    """Where the label of the bed ends that is named there, or the number that it begins."""
    toks = again.toks
    k += word(toks, k) in BED_WORDS
    if k in again.meant.labelled:
        return again.meant.labelled[k][0]
    while starts_number(toks, k) or is_digits(toks, k):
        k += 1
    return k


def _tubes(again: Again, label: int, end: int) -> list[int]:
    """Where another tube is named behind a joint, each with its number."""
    named = {c.start for c in again.meant.cues if c.label in {"side", "place", "tubeword"}}
    return _apart(again.toks, label, end, named)


def _times(toks: Toks, label: int, end: int) -> list[int]:
    """Where another time of the same bed is told behind a joint."""
    sooner = {k for k in range(label, end) if any(c.style == "ago" for _, c in clocks(toks, k))}
    return _apart(toks, label, end, sooner | {k for k in range(label, end) if word(toks, k) in IT})


def _apart(toks: Toks, label: int, end: int, begins: set[int]) -> list[int]:
    """Those of the places that a line begins at behind a joint, once the one before has its number."""
    found, last = [], label
    for k in range(label, end):
        joined = _is_joined(toks, k) or word(toks, k) == "from"
        if k in begins and joined and _has_number(toks, last, k) and _has_number(toks, k, end):
            found.append(k)
            last = k
    return found


def _has_number(toks: Toks, start: int, end: int) -> bool:
    return any(starts_number(toks, k) or is_digits(toks, k) for k in range(start, end))


def _end(toks: Toks, end: int) -> int:
    """Where a line ends without the joints and the article behind it."""
    while word(toks, end - 1) in JOINTS | STOPS | ARTICLES:
        end -= 1
    return end
