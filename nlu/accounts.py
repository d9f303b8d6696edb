"""What accounts for the numbers of a clause that is of another thing: a dose, a value, a time, an age.

"had 2 percocet at 5": a count before a drug, an hour behind its at; "pain 0 at rest 5 on coughing": two
values of a score. A number that nothing accounts for may be ours, and so may a clause with a word of a
drain, a bed, a doubt or a denial. Used by `otherfigures`.
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from typing import NamedTuple

from .claims import CLAIMED
from .items import FULL_HOUR
from .numbers import Toks, glued, is_digits, word
from .othernames import is_drug, is_name, names_in
from .patterns.leads import BED_WORDS
from .patterns.levels import LITRES, MILLILITRES
from .patterns.measured import BREATHED, DEVICES
from .patterns.numerals import NUMERALS
from .patterns.otherfigures import (
    AGED,
    ASLEEP,
    BODY,
    BOOKED,
    CARE,
    CENTIMETRES,
    CHAINS,
    CHANGED,
    CHANGED_THINGS,
    COUNTED,
    DONE_TO,
    DRUGS,
    DURATIONS,
    FILMS,
    FLUIDS,
    FOOD,
    FREE,
    GAVE,
    GIVEN,
    GLUED,
    HALVES,
    HAVING,
    LABS,
    LINKS,
    MOST,
    NUMBERED,
    ON,
    ORDINALS,
    PER,
    PHONES,
    RANGES,
    RATED,
    REFUSED,
    REPLACED,
    SAY_AGE,
    SCORES,
    SEXES,
    SUBJECTS,
    TIMES,
    UNITS,
    UNNAMED,
    VESSELS,
    VITALS,
    WALKED,
    YEARS,
)
from .patterns.ownclauses import DOUBTFUL, SPEAKER, VAGUE, WHOM
from .pipeline import Cue
from .somebody import names_bed

SIGNS = frozenset({".", "/", "-", ":"})
SIDES = frozenset({"left", "right", "l", "r", "lt", "rt"})
LITTLE = frozenset({"a", "an", "to", "for", "o", "oh"})
"""Number words that mostly are none."""
FEW, OLDEST, SCORED, DOSED = 20, 110, 10, 100
MOST_LINKS = 4
DAY, HOUR = 24, 60
SHORT = 3
FEWEST = 2
DONE_AT = DRUGS | FILMS | CARE | FOOD
"""What is done at a time that may be told in three digits."""
ALIKE = 2
"""So many times larger a value may be than another of the same patient: "hr 88 now 104"."""
PARTS = frozenset({"bag", "pump", "tubing", "site", "bottle"})
"""Right behind another vessel these are of it."""
LOCAL = (3, 4)
"""Digits of a telephone number: "555 0123"."""

Span = tuple[int, int]
COUNTABLE = FOOD | CARE


class Figure(NamedTuple):
    """A number with all its signs, "98/54", "0.74", its first digits, and whether it has no signs."""

    start: int
    end: int
    value: int
    plain: bool


class Accounts:
    """One clause, its names of other things (`heads`), and the words that its numbers account for (`own`)."""

    def __init__(self, toks: Toks, span: Span, cues: Sequence[Cue], beds: Container[str]) -> None:
        start, end = self.start, self.end = span
        self.toks, self.beds = toks, beds
        self.said = frozenset(toks.said[start:end])
        inside = [cue for cue in cues if start <= cue.start < end]
        self.claimed = {c.start: c.end for c in inside if c.label == CLAIMED}
        self.measured = {k for first, last in self.claimed.items() for k in range(first, last)}
        other = [c for c in inside if c.label == "other" and VAGUE.isdisjoint(toks.said[c.start : c.end])]
        self.heads = set(names_in(toks).intersection(range(start, end)))
        self.heads |= {k for c in other for k in range(c.start, min(c.end, end))}
        self.own: set[int] = set()

    def are_whole(self) -> bool:
        """Whether all numbers are accounted for, and no word that is left is doubtful."""
        k = self.start
        while k < self.end:
            span, end = self._taken(k)
            if span is None and end > k:
                return False
            self.own |= set(range(*span)) if span else set()
            k = max(end, k + 1)
        return self._is_known() and not any(self._is_doubtful(j) for j in range(self.start, self.end))

    def _is_known(self) -> bool:
        """Whether the clause is known to be of another thing."""
        return bool(self.heads or self.claimed) or self._is_dose()

    def _taken(self, k: int) -> tuple[Span | None, int]:
        """What is accounted for from there on, and where the number ends that stands there."""
        if k in self.claimed:
            return (k, self.claimed[k]), self.claimed[k]
        figure = self._figure(k)
        if figure is None:
            return None, k
        span = self._account(figure)
        return span, max(figure.end, span[1] if span else 0)

    def _is_dose(self) -> bool:
        """ "zestril 10 mg": a word that nobody knows, and how much of it."""
        said = {word(self.toks, j) for j in range(self.start, self.end) if j not in self.own}
        strange = any(len(w) > SHORT for w in said) or not said.isdisjoint(BODY)
        return strange and not UNITS.isdisjoint(word(self.toks, j) for j in self.own)

    def _is_doubtful(self, k: int) -> bool:
        toks, said = self.toks, word(self.toks, k)
        if k in self.own or k in self.heads or said in FREE:
            return False
        if said in SIDES:
            return word(toks, k + 1) not in BODY
        if (said in PARTS and word(toks, k - 1) in VESSELS) or (said == "emptied" and self.said & VESSELS):
            return False
        if said == "saw":
            return word(toks, k + 1) not in WHOM
        if said in BED_WORDS:
            return names_bed(toks, k) or is_digits(toks, k + 1)
        for words, beside in ((FLUIDS, GIVEN), ({"replaced"}, REPLACED), (CHANGED, CHANGED_THINGS)):
            if said in words:
                return self.said.isdisjoint(beside)
        return said in REFUSED | DOUBTFUL or (said in NUMERALS and said not in LITTLE)

    def _figure(self, k: int) -> Figure | None:
        """The number that begins there, with its signs."""
        toks = self.toks
        if not is_digits(toks, k):
            return None
        end = k + 1
        while (
            word(toks, end) in SIGNS
            and glued(toks, end)
            and glued(toks, end + 1)
            and is_digits(toks, end + 1)
        ):
            end += 2
        return Figure(k, end, int(word(toks, k)), end == k + 1)

    def _account(self, figure: Figure) -> Span | None:
        """The words of a number that is accounted for; nothing where it may be ours."""
        first = (
            self._glued,
            self._age,
            self._sex,
            self._unit,
            self._count,
            self._numbered,
            self._value,
            self._time,
        )
        others = (self._duration, self._score, self._span, self._chained, self._local)
        return next(filter(None, (look(figure) for look in (*first, *others))), None)

    def _age(self, figure: Figure) -> Span | None:
        """ "she is 64" and no more, "72 yo", "he's 6 months old"."""
        toks, first, end = self.toks, figure.start, figure.end
        while first > self.start and word(toks, first - 1) in AGED:
            first -= 1
        while end < self.end and word(toks, end) in YEARS:
            end += 1
        told = first > self.start and word(toks, first - 1) in SUBJECTS
        is_aged = told and (first < figure.start or word(toks, first - 1) not in UNNAMED)
        aged = (
            not SAY_AGE.isdisjoint(toks.said[figure.end : end]) or "aged" in toks.said[first : figure.start]
        )
        aged |= is_aged and (first - 1, end) == (self.start, self.end)
        if not (figure.plain and figure.value <= OLDEST and aged):
            return None
        self.heads |= {figure.start}
        return first - told, end

    def _sex(self, figure: Figure) -> Span | None:
        """ "61f", "40s male" and no more."""
        toks, k, end = self.toks, figure.start, figure.end
        end += word(toks, end) in {"s", "y", "yo", "'s"}
        alone = (k, end + 1) == (self.start, self.end) and figure.plain and figure.value <= OLDEST
        if not alone or word(toks, end) not in SEXES or (word(toks, end) == "f" and not glued(toks, end)):
            return None
        self.heads |= {k}
        return k, end + 1

    def _glued(self, figure: Figure) -> Span | None:
        """ "o2", "q2h", "e4v4m6", "edema 1+"."""
        toks, k = self.toks, figure.start
        before = word(toks, k - 1) if k > self.start and glued(toks, k) and figure.plain else ""
        if before in GLUED or (before == "m" and "gcs" in self.said):
            return k - 1, figure.end + (word(toks, figure.end) == "h")
        plus = word(toks, figure.end) == "+" and glued(toks, figure.end) and figure.value < SCORED
        return (k, figure.end + 1) if plus and self.heads and figure.end < self.end else None

    def _unit(self, figure: Figure) -> Span | None:
        """ "10 mg", "75 ml/hr" of a fluid, "3 litres" of oxygen, "18 units/kg/hr", "walked 40 m"."""
        toks, end = self.toks, figure.end
        unit, named = word(toks, end), any(k < figure.start for k in self.heads)
        told = unit in UNITS or (unit in CENTIMETRES and named)
        told |= unit in LITRES and not self.said.isdisjoint(BREATHED | DEVICES)
        told |= unit in {"m", "metres", "meters"} and not self.said.isdisjoint(WALKED)
        if unit in MILLILITRES:
            of = end + 1 + (word(toks, end + 1) == "of")
            rated = word(toks, end + 1) in PER and word(toks, end + 2) in RATED and named
            told = rated or self._has_name(figure) or (of < self.end and is_name(toks, of))
        if not told:
            return None
        end += 1
        while word(toks, end) in PER and word(toks, end + 1) in RATED | UNITS:
            end += 2
        return figure.start, end

    def _count(self, figure: Figure) -> Span | None:
        """ "2 percocet", "5 visitors", "4 of morphine", "2 nd unit", "500 bolus", "gave 40 lasix"."""
        toks, end = self.toks, figure.end
        if not figure.plain or end >= self.end:
            return None
        before = word(toks, figure.start - 1) if figure.start > self.start else ""
        drug = is_drug(word(toks, end))
        if word(toks, end) == "bolus" or (drug and before in GAVE and figure.value <= DOSED):
            return figure.start, end + 1
        if figure.value > FEW:
            return None
        if word(toks, end) in ORDINALS:
            self.heads |= {end} if word(toks, end + 1) in COUNTED else set()
            return figure.start, end + 1
        of = end + (word(toks, end) == "of")
        counted = word(toks, of) in COUNTED or is_drug(word(toks, of)) or word(toks, end) == "x"
        counted |= word(toks, of) in COUNTABLE and word(toks, of).endswith("s")
        others = sum(is_digits(toks, k) for k in range(self.end, len(toks)))
        counted &= figure.start > 0 or others > FEWEST or word(toks, 0) not in self.beds  # "9 nebs. clamped"
        if counted and of < self.end:
            self.heads |= {of}
            return figure.start, of + 1
        return self._of_whom(figure)

    def _of_whom(self, figure: Figure) -> Span | None:
        """ "i have 4 tonight", "we are 2 short", "5 at bedside"."""
        toks, before = self.toks, self.toks.said[self.start : figure.start]
        behind = toks.said[figure.end : self.end]
        mine = len(before) == FEWEST and before[0] in SPEAKER and before[1] in HAVING
        told = mine and behind[0] in {"tonight", "today", "short"}
        told |= not before and behind in {("at", "bedside"), ("at", "the", "bedside")}
        self.heads |= {figure.start} if told else set()
        return (self.start, self.end) if told and (not mine or len(behind) == 1) else None

    def _numbered(self, figure: Figure) -> Span | None:
        """ "x 2", "type 4", "day 3"."""
        small = figure.plain and figure.value <= FEW and figure.start > self.start
        numbered = small and word(self.toks, figure.start - 1) in NUMBERED
        return (figure.start - 1, figure.end) if numbered else None

    def _value(self, figure: Figure) -> Span | None:
        """ "morse score 45", "heparin at 12", "ext 4417", "mg 0.74"."""
        return (figure.start, figure.end) if self._has_name(figure) else None

    def _has_name(self, figure: Figure) -> bool:
        """Whether a name that can have this value stands before it, and its links at most."""
        toks, k = self.toks, figure.start - 1
        k -= word(toks, k) == "-" and glued(toks, k + 1)  # "rass -1"
        links = 0
        while k > self.start and word(toks, k) in LINKS and word(toks, k) not in MOST and links < MOST_LINKS:
            k, links = k - 1, links + 1
        if k < self.start or (word(toks, k) in DONE_TO and word(toks, figure.start) in self.beds):
            return False  # "fed 12", "call 14"
        said = word(toks, k - (k - 1 in self.own and glued(toks, k)))  # "fio2 40"
        said = "urine" if toks.said[k - 1 : k + 1] == ("bladder", "scan") else said
        if said in RANGES:
            self.heads |= {k}
            least, most = RANGES[said]
            return least <= figure.value <= most
        return figure.value <= (MOST["morphine"] if is_drug(said) else MOST.get(said, -1))

    def _time(self, figure: Figure) -> Span | None:
        """ "at 5", "due 2100", "till 3", "at 10pm", "booked for 2", "done 0700"."""
        toks = self.toks
        before = word(toks, figure.start - 1) if figure.start > self.start else ""
        led = before in TIMES or (before == "for" and not self.said.isdisjoint(BOOKED))
        half = word(toks, figure.end) in HALVES and figure.end < self.end
        digits = word(toks, figure.start)
        colon = not figure.plain and word(toks, figure.start + 1) == ":"
        clock = colon or (figure.plain and is_clock(digits))
        whole = clock and (colon or len(digits) == FULL_HOUR)
        hour = figure.plain and figure.value <= DAY
        timed = any(word(toks, k) not in PHONES for k in self.heads)
        told = whole and before.isalpha() and word(toks, figure.end) not in MILLILITRES  # "ecg done 0700"
        clock &= len(digits) == FULL_HOUR or not self.said.isdisjoint(DONE_AT)
        if not timed or not (told or (led and (clock or hour)) or (half and hour)):
            return None
        return figure.start - led, figure.end + half

    def _duration(self, figure: Figure) -> Span | None:
        """ "for 40 min", "slept 4 hrs", "last 2 hrs"."""
        long = figure.plain and word(self.toks, figure.end) in DURATIONS and bool(self.heads)
        return (figure.start, figure.end + 1) if long else None

    def _score(self, figure: Figure) -> Span | None:
        """ "pain 0 at rest 5 on coughing", "2/10 at rest"."""
        toks, end = self.toks, figure.end
        if toks.said[figure.start + 1 : end] == ("/", "10") and figure.value <= SCORED:
            self.heads |= {figure.start}
            return figure.start, end
        small = figure.plain and figure.value <= SCORED and bool(self.said & SCORES)
        behind = word(toks, end) in ON and word(toks, end + 1).isalpha()
        return (figure.start, end) if small and behind and end + 1 < self.end else None

    def _span(self, figure: Figure) -> Span | None:
        """ "slept 2 to 5", "1 to 1 nurse", "1:1 sitter"."""
        toks, k, end = self.toks, figure.start, figure.end
        if toks.said[k:end] in {("1", ":", "1"), ("2", ":", "1")}:
            self.heads |= {k}
            return k, end
        ranged = figure.plain and word(toks, end) in {"to", "till", "until", "-"} and end + 1 < self.end
        if not ranged or not is_digits(toks, end + 1):
            return None
        if {word(toks, k), word(toks, end + 1)} <= {"1", "2"}:
            self.heads |= {k}
            return k, end + 2
        return (k, end + 2) if figure.value <= DAY and not self.said.isdisjoint(ASLEEP) else None

    def _chained(self, figure: Figure) -> Span | None:
        """ "88 then back to 94", "at 6 and 8": the second of two values or times that are told at once."""
        toks, k = self.toks, figure.start - 1
        while k > self.start and word(toks, k) in CHAINS:
            k -= 1
        if k == figure.start - 1 or k not in self.own or not is_digits(toks, k) or not figure.plain:
            return None
        before = Figure(k, k + 1, int(word(toks, k)), True)
        timed = word(toks, k - 1) in {"at", "@"} and max(before.value, figure.value) <= DAY
        near = (
            max(before.value, figure.value) <= ALIKE * min(before.value, figure.value)
            or figure.value <= SCORED
        )
        valued = near and not self.said.isdisjoint(SCORES | VITALS | LABS)
        valued &= k in self.measured or (
            self._has_name(before) and self._has_name(before._replace(value=figure.value))
        )
        return (k + 1, figure.end) if timed or valued else None

    def _local(self, figure: Figure) -> Span | None:
        """ "555-1212", "phone 555 0123"."""
        toks, k = self.toks, figure.start
        parts = [len(w) for w in toks.said[k : figure.end] if w.isdecimal()]
        if tuple(parts) == LOCAL and word(toks, k + 1) == "-":
            self.heads |= {k}
            return k, figure.end
        behind = (len(word(toks, k - 1)), len(word(toks, k))) == LOCAL and k - 1 in self.own
        return (k, figure.end) if behind and figure.plain and word(toks, k - 2) in PHONES else None


def is_clock(digits: str) -> bool:
    """Whether three or four digits are a time of the day."""
    return len(digits) in {SHORT, FULL_HOUR} and int(digits[:-2]) < DAY and int(digits[-2:]) < HOUR
