"""What is measured of a patient beside a drain: "bp 98/54 hr 104", "k 3.4", "sats 95 2L", "pupils 3mm".

No number of it is ever a bed, a line, a time or a setting, nor cut in two to be one. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .claims import CLAIMED
from .numbers import Toks, glued, is_digits, numbers, starts_number, word
from .patterns.leads import BED_WORDS, FULL_STOPS
from .patterns.levels import LITRES, MILLILITRES
from .patterns.measured import (
    BREATHED,
    DECIMAL,
    DEVICES,
    LEAST,
    LINKS,
    LOOKS,
    MOST,
    MOST_OXYGEN,
    PUPILS,
    RATIO,
    SALTS,
    UNITS,
)
from .patterns.numerals import ONES
from .pipeline import Cue, in_order

NAMES = frozenset(MOST) | DECIMAL | RATIO
NAMED = NAMES | PUPILS
ALL = NAMED | BREATHED | DEVICES | {"svo", "scvo", "spo", "sao", "o"}
OF_TWO_WORDS = {
    ("heart", "rate"): "hr",
    ("pulse", "rate"): "hr",
    ("resp", "rate"): "rr",
    ("respiratory", "rate"): "rr",
    ("breathing", "rate"): "rr",
    ("blood", "pressure"): "bp",
    ("oxygen", "saturation"): "sats",
    ("oxygen", "saturations"): "sats",
    ("pain", "score"): "pain",
    ("pain", "level"): "pain",
    ("news", "2"): "news",
    **{(name, "2"): f"{name}2" for name in ("svo", "scvo", "spo", "sao", "o")},
}
"""Names as they are spoken."""
SCORED = frozenset({"10", "ten"})
PER_MINUTE = LITRES | {"lpm"}
NEAR = 6
"""Words and signs between sats and the oxygen of the same breath."""
OF_NAME = frozenset({"blood", "serum", "plasma"})
MOST_LINKS = 4
MOST_PUPIL = 9
"""Millimetres; common practice, no source."""
BESIDE_PRESSURE = frozenset({"hr", "p", "pulse", "rr", "sats", "sat", "spo2", "spo", "t", "temp"})
BESIDE_PRESSURE |= {"ct", "icd", "icc", "uwsd", "drain", "chest"}
NO_PRESSURE = BED_WORDS | {"/", "beds", "rooms", "-"}
LOWEST = 20
"""Least of the lower number of a pressure; common practice, no source."""
HALVES = frozenset({"am", "pm", "a", "p", "hrs", "h"})

LINED = 2
"""Numbers of a line: its bed and its level."""
PER = frozenset({"/", "per"})
KILOS = frozenset({"kg", "kilo", "kgs"})
HOURS = frozenset({"h", "hr", "hrs", "hour"})
SAID = ALL | {"/"}


def measured(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each measure as its name and the value that it claims."""
    found = list(_measures(toks)) if not SAID.isdisjoint(toks.words) else []
    if not found:
        return cues
    inside = {k for start, _, end in found for k in range(start, end)}
    kept = [c for c in cues if inside.isdisjoint(range(c.start, c.end))]
    kept += [Cue("other", "", start, value) for start, value, _ in found if start < value]
    kept += [Cue(CLAIMED, "", value, end) for _, value, end in found]
    return in_order(kept)


def _measures(toks: Toks) -> Iterator[tuple[int, int, int]]:
    """Of each measure: where its name begins, its value begins, and its value ends."""
    last = 0
    for k in range(len(toks)):
        if k < last:
            continue
        end = _per_kilo(toks, k)
        value, end = (k, end) if end else _value(toks, k)
        if end:
            yield _start(toks, k), value, end
            last = end


def _per_kilo(toks: Toks, k: int) -> int:
    """The end of "7 ml/kg/hr", "4.5 ml/kg": reckoned for the weight, and no line; or 0."""
    ml = k + 1 + 2 * (word(toks, k + 1) == "." and is_digits(toks, k + 2))
    if not is_digits(toks, k) or word(toks, ml) not in MILLILITRES:
        return 0
    others = sum(_is_figure(toks, j) for j in (*range(k), *range(ml, len(toks))))
    if word(toks, ml + 1) not in PER or word(toks, ml + 2) not in KILOS or others < LINED:
        return 0
    hourly = word(toks, ml + 3) in PER and word(toks, ml + 4) in HOURS
    return ml + 3 + 2 * hourly


def _is_figure(toks: Toks, k: int) -> bool:
    """A number that is not told as a time."""
    return is_digits(toks, k) and word(toks, k - 1) not in {"at", "@", ":"} and word(toks, k + 1) != ":"


def _start(toks: Toks, k: int) -> int:
    """Where the name begins that ends here: "blood sugar 9", "o2 sat 96"."""
    oxygen = word(toks, k - 2) == "o" and word(toks, k - 1) == "2" and glued(toks, k - 1)
    return k - 2 * oxygen - (word(toks, k - 1) in OF_NAME)


def _value(toks: Toks, k: int) -> tuple[int, int]:
    """Where the value begins and ends of what is named at `k`; litres of oxygen may have no name before."""
    name = word(toks, k)
    if is_digits(toks, k):
        return k, _pressure(toks, k) or _oxygen(toks, k)
    spoken = OF_TWO_WORDS.get((name, word(toks, k + 1)))
    name = spoken or name
    if name not in NAMED:
        return 0, 0
    first = k + 1 + (spoken is not None)
    links = LOOKS if name in PUPILS else LINKS
    start = next((j for j in range(first, first + 1 + MOST_LINKS) if word(toks, j) not in links), k)
    sitting = name == "sat" and word(toks, k + 1) == "at"  # "bed twelve sat at ninety"
    if not sitting and (said := _said(toks, start, name)):
        return start, said
    if not is_digits(toks, start) or (name == "mg" and is_digits(toks, k - 1)):
        return 0, 0
    return start, _pupil(toks, start, name) if name in PUPILS else _number(toks, start, name)


def _number(toks: Toks, k: int, name: str) -> int:
    """The end of a value that its name can have, or 0."""
    end = k + 1
    pointed = False
    while word(toks, end) in {".", "/", "-"} and glued(toks, end) and glued(toks, end + 1):
        if not is_digits(toks, end + 1):
            break
        pointed |= word(toks, end) == "."
        end += 2
    if end == k + 1 and name in SALTS and word(toks, k)[0] != "0":
        least, most = SALTS[name]
        beside = {word(toks, end), word(toks, end + 1), *toks.said[max(0, k - 4) : k - 1]} & SALTS.keys()
        return end if beside and least <= int(word(toks, k)) <= most else 0
    told = name in DECIMAL | MOST.keys() if pointed else name in MOST.keys() | RATIO and end > k + 1
    plain = end == k + 1 and word(toks, k)[0] != "0"
    whole = plain and LEAST.get(name, 0) <= int(word(toks, k)) <= MOST.get(name, -1)
    if not (told or whole) or word(toks, end) in HALVES or (word(toks, end) == ":" and glued(toks, end)):
        return 0
    return end + (word(toks, end) in UNITS)


def _said(toks: Toks, k: int, name: str) -> int:
    """The end of a value as it is spoken: "132 over 80", "3 out of 10", "97 percent", "eighty two"; or 0."""
    end = _spoken(toks, k, name)
    behind = toks.said[end : end + 3] if end else ()
    if name == "pain" and behind[:2] == ("out", "of") and word(toks, end + 2) in SCORED:
        return end + 3
    if name == "pain" and behind[:1] == ("over",) and word(toks, end + 1) in SCORED:
        return end + 2
    if name in {"bp", "nibp", "abp"} and behind[:1] == ("over",):
        return _spoken(toks, end + 1, "dbp")
    percent = 1 if behind[:1] == ("percent",) else 2 * (behind[:2] == ("per", "cent"))
    if not end or (is_digits(toks, k) and not percent):
        return 0  # digits are read with their signs
    return _with_litres(toks, end + percent) if name in BREATHED else end + percent


def _with_litres(toks: Toks, k: int) -> int:
    """Where "on two litres" ends behind sats; the same place where no oxygen is told."""
    told = [n for n in numbers(toks, k + 1) if word(toks, n.end) in PER_MINUTE and n.value <= MOST_OXYGEN]
    return told[0].end + 1 if told and word(toks, k) == "on" else k


def _spoken(toks: Toks, k: int, name: str) -> int:
    """The end of the longest number that begins here, where its name can have that value; or 0."""
    end = max((n.end for n in numbers(toks, k)), default=0)
    values = [n.value for n in numbers(toks, k) if n.end == end]
    whole = word(toks, end) not in HALVES | PER_MINUTE and word(toks, end) not in {":", "/"}
    tenth = name in {"temp", "temperature"} and word(toks, end) in ONES and not starts_number(toks, end + 1)
    end += tenth  # "thirty eight one"
    return end if whole and any(LEAST.get(name, 0) <= v <= MOST.get(name, -1) for v in values) else 0


def _pressure(toks: Toks, k: int) -> int:
    """The end of "120/80" before what else is measured, or before the drain: "120/80 HR 92"; or 0."""
    end = k + 3
    joined = word(toks, k + 1) == "/" and glued(toks, k + 1) and glued(toks, k + 2)
    behind = word(toks, end + (word(toks, end) == ","))
    if not joined or word(toks, k - 1) in NO_PRESSURE or behind not in BESIDE_PRESSURE:
        return 0
    upper, lower = word(toks, k), word(toks, k + 2)
    likely = upper.isdecimal() and lower.isdecimal() and int(lower) < int(upper) <= MOST["bp"]
    pulse = 2 * (word(toks, end) == "p" and is_digits(toks, end + 1))
    return end + pulse if likely and int(lower) >= LOWEST else 0


def _oxygen(toks: Toks, k: int) -> int:
    """The end of "2L" behind sats and of "2 L nc", or 0; behind a comma "2L 340" is of a left tube."""
    end = k + 1
    if word(toks, end) not in PER_MINUTE or int(word(toks, k)) > MOST_OXYGEN:
        return 0
    end += 1 + (word(toks, end + 1) in {"/", "per"}) * 2
    if word(toks, end) in DEVICES:
        return end + 1
    end += 2 * (is_digits(toks, end) and word(toks, end + 1) == "%")  # "hfnc 40L 50%"
    before = toks.said[max(0, k - NEAR) : k]
    reach = max((j for j, said in enumerate(before) if said in FULL_STOPS), default=-1) + 1
    beside = not BREATHED.isdisjoint(before[reach:])
    lined = is_digits(toks, end) and "," in before[reach:]
    return end if beside and not lined else 0


def _pupil(toks: Toks, k: int, name: str) -> int:
    """The end of how wide a pupil is, or 0."""
    unit = word(toks, k + 1) == "mm"
    small = int(word(toks, k)) <= MOST_PUPIL
    return k + 1 + unit if small and (unit or name in {"pupil", "pupils"}) else 0
