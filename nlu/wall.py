"""The unit's labels that are more than a number, as one says or writes them: 2B, CT1, 3-B, A, bay 2 bed 4.

Found before anything else is read, so that no letter of a label is an article, a side or a scan.
Called by `recast`, which keeps them for `lattice`; labels that are numbers are found in `labels`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache

from .labels import bed_label, ends_name, letter_of
from .numbers import Toks, glued, heard_as_number, is_digits, numbers, word
from .patterns.clockwords import AGO, AMPM, HOUR_WORDS, MINUTE_WORDS
from .patterns.leads import OF_BED
from .patterns.numerals import NUMERALS
from .patterns.places import PLACES
from .rooms import FIRST_WORDS, side_room, values
from .tokens import Token

Labelled = dict[int, tuple[int, str]]
"""Where a label starts: where it ends, and the label of the unit."""
_PART = re.compile(r"\d+|[a-z]+")
BED = frozenset({"bed", "beds", "bd", "room", "rooms", "rm", "bay", "cubicle", "bedspace"})
BAY = frozenset({"bay", "room", "rm", "cubicle", "pod"})
SEEN = frozenset({"seen", "saw", "noted", "acknowledged", "ack"})
"""First in a message before a bed: its notice was seen."""
LINE_BEHIND = frozenset({"mark", "marks", "marked", "line", "level", "is", "at", "reads", "reading", "seal"})
STARTS = frozenset({"", ",", ";", ".", "and", "&", "+"})
BETWEEN_BEDS = frozenset({"from", "to", "into", "moved", "transferred"})
TUBES = frozenset(PLACES["tubeword"])
TELLS = frozenset(PLACES["canister"]) | {
    "mark",
    "line",
    "level",
    "marked",
    "at",
    "is",
    "reads",
    "same",
    "nil",
}
"""Behind a letter at the start of a clause these make it a bed."""
OF_TIME = AGO | MINUTE_WORDS | HOUR_WORDS | {*AMPM, ":", "hundred", "o'clock", "to", "past"}
SIDES = frozenset({"l", "r"})
SUCH_LETTERS = frozenset("bcdefg")
MOST_DIGITS = 4
NO_BAY = frozenset({"bay", "bed", "room", "ward", "pod"})
"""Words of a label that are no part of what tells it from another."""


@dataclass(frozen=True, slots=True)
class Wall:
    """The labels of a unit that are more than a number, by what is looked for."""

    odd: bool
    lettered: bool
    """Whether some are a number and a letter."""
    parts: Mapping[tuple[str, str], str]
    """Bay and bed of each label of two parts; one that two labels share is left out."""
    letters: Mapping[str, str]
    """The labels without any digit."""


@lru_cache(maxsize=64)
def wall(labels: tuple[str, ...]) -> Wall:
    """The labels of a unit, by their shapes."""
    parts: dict[tuple[str, str], list[str]] = {}
    for label in dict.fromkeys(labels):
        said = [part for part in _PART.findall(label.lower()) if part not in NO_BAY]
        if len(said) > 1 and any(part.isdecimal() for part in said):
            parts.setdefault((said[-2], said[-1]), []).append(label)
    return Wall(
        odd=not all(label.isdecimal() for label in labels),
        lettered=any(label[:-1].isdecimal() and label[-1].isalpha() for label in labels),
        parts={pair: found[0] for pair, found in parts.items() if len(found) == 1},
        letters={label.lower(): label for label in labels if label.isalpha()},
    )


def written(toks: Toks, index: Mapping[str, str] | None, *, voice: bool = False) -> Labelled:
    """The unit's labels that are more than a number, by their start."""
    of_unit = wall(tuple(index.values())) if index else None
    if of_unit is None or index is None:
        return {}
    if not of_unit.odd:
        return dict(_side_rooms(toks, index, voice=voice))
    found: Labelled = {}
    bay, end = "", 0
    for i in range(len(toks)):
        if i < end:
            continue
        bay = _bay(toks, i, of_unit, voice=voice) or bay
        label = (
            side_room(toks, i, index, voice=voice)
            or _of_bay(toks, i, bay, of_unit, voice=voice)
            or (_of_letters(toks, i, of_unit, found, voice=voice) if of_unit.letters else None)
            or _in_one_run(toks, i, index)
            or _other_letter(toks, i, index, voice=voice)
            or (_said_first(toks, index) if voice and i == 0 else None)
            or _spelt_out(toks, i, index)
            or _scan_or_bed(toks, i, index)
            or (_heard_behind(toks, i, index) if voice else None)
            or (_unknown(toks, i) if of_unit.lettered else None)
        )
        if label is not None:
            found[i] = label
            end = label[0]
    return found


def capitals(text: str, toks: Toks, index: Mapping[str, str] | None) -> Labelled:
    """Dictated "bed 12 A three twenty": a capital that a recogniser writes behind digits is no article."""
    if index is None or "a" not in toks.words or text.isupper():
        return {}
    return {
        k - 1: (k + 1, label)
        for k in range(2, len(toks))
        if text[toks[k].start] == "A"
        and word(toks, k) == "a"
        and is_digits(toks, k - 1)
        and word(toks, k - 2) in BED
        and "m" not in {word(toks, k + 1), word(toks, k + 2)}
        and (label := bed_label(word(toks, k - 1) + "a", index)) is not None
    }


def _side_rooms(
    toks: Toks, index: Mapping[str, str], *, voice: bool
) -> Iterator[tuple[int, tuple[int, str]]]:
    """The side rooms that a unit with nothing but numbers may have beside its beds."""
    for i in () if toks.words.isdisjoint(FIRST_WORDS) else range(len(toks)):
        if (found := side_room(toks, i, index, voice=voice)) is not None:
            yield i, found


def without(toks: Toks, labelled: Labelled) -> list[Token]:
    """The tokens with those of bed labels made unknown: "to CT3" is not the scan."""
    inside = {k for start, (end, _) in labelled.items() for k in range(start, end)}
    return [t._replace(text="?") if k in inside else t for k, t in enumerate(toks)]


def _in_one_run(toks: Toks, i: int, index: Mapping[str, str]) -> tuple[int, str] | None:
    """ "2B", "CT1", "3-B", "12/A": letters and digits with no space between."""
    if not toks[i].text[0].isalnum() or (glued(toks, i) and toks[i - 1].text[0].isalnum()):
        return None
    ends, end = [], i + 1
    while glued(toks, end) and (toks[end].text[0].isalnum() or _joins(toks, end)):
        ends.append(end)
        end += 1
    ends.append(end)
    for stop in reversed(ends):
        text = "".join(t.text for t in toks[i:stop])
        whole = stop == end or not toks[stop].text[0].isalnum()
        if whole and not (text.isdecimal() or text.isalpha()) and (label := bed_label(text, index)):
            return stop, label
    return None


def _unknown(toks: Toks, i: int) -> tuple[int, str] | None:
    """ "12C 340": a label such as the unit has, which it does not have; the "a" may be of a.m."""
    plain = is_digits(toks, i) and len(word(toks, i)) < MOST_DIGITS and word(toks, i - 1) in STARTS
    letter = word(toks, i + 1)
    if not plain or letter not in SUCH_LETTERS or not glued(toks, i + 1) or glued(toks, i + 2):
        return None
    return i + 2, (word(toks, i) + letter).upper()


def _said_first(toks: Toks, index: Mapping[str, str]) -> tuple[int, str] | None:
    """ "seven a line is at 920": where a message begins and the unit has a 7A and no 7, that is the bed."""
    for end, value in _values(toks, 0, voice=False):
        letter = word(toks, end)
        behind = word(toks, end + 1)
        if len(letter) == 1 and letter.isalpha() and behind not in {"m", ".", "hundred", "thousand"}:
            label = bed_label(value + letter, index)
            return (end + 1, label) if label is not None and bed_label(value, index) is None else None
    return None


def _other_letter(toks: Toks, i: int, index: Mapping[str, str], *, voice: bool) -> tuple[int, str] | None:
    """ "bed nine a or b", "9A and B": the B is of the number before."""
    other = _letter(toks, i, voice=voice)
    k = i - 1 - (word(toks, i - 1) in {"maybe", "perhaps", "possibly", "bed"})
    if other is None or word(toks, k) not in {"or", "and", "/", "&"}:
        return None
    first = _letter(toks, k - 1, voice=voice)
    for start in range(max(0, k - 4), k - 1):
        for end, value in _values(toks, start, voice=voice):
            if first and end == k - 1 and bed_label(value + first, index) is not None:
                label = bed_label(value + other, index)
                return (i + 1, label) if label is not None else None
    return None


def _spelt_out(toks: Toks, i: int, index: Mapping[str, str]) -> tuple[int, str] | None:
    """ "C.T. four", "i c u 1": the letters of a label one by one, and then its number."""
    run, end = "", i
    while len(word(toks, end)) == 1 and word(toks, end).isalpha():
        run += word(toks, end)
        end += 1 + (word(toks, end + 1) == "." and glued(toks, end + 1))
    found = [
        (n.end, label)
        for n in (numbers(toks, end) if run and word(toks, i - 1) != "-" else ())
        if (label := bed_label(f"{run}{n.value}", index)) is not None
        and (len(run) > 1 or word(toks, i - 1) in BED or _is_told_of(toks, i, n.end))
    ]
    return found[0] if len(found) == 1 else None


def _scan_or_bed(toks: Toks, i: int, index: Mapping[str, str]) -> tuple[int, str] | None:
    """ "the line for CT 4 is 340", "the drain in ct four": the unit's CT4, where no other bed is named."""
    led = OF_BED | (SEEN if i == 1 else frozenset())
    if word(toks, i) != "ct" or word(toks, i - 1) not in led or not BED.isdisjoint(toks.words):
        return None
    if sum(label is not None for label in (bed_label(t, index) for t in toks.said[:i])):
        return None
    found = [
        (n.end, label)
        for n in numbers(toks, i + 1)
        if (label := bed_label(f"ct{n.value}", index)) is not None and word(toks, n.end) not in OF_TIME
    ]
    return found[0] if len(found) == 1 else None


def _heard_behind(toks: Toks, i: int, index: Mapping[str, str]) -> tuple[int, str] | None:
    """Dictated "bed CT for mark 800": the "for" is the four of CT4, and no bed 4."""
    text, behind = word(toks, i), word(toks, i + 2 + (word(toks, i + 2) == ","))
    if not text.isalpha() or word(toks, i - 1) not in BED | {""} or behind not in LINE_BEHIND:
        return None
    found = (bed_label(f"{text}{n.value}", index) for n in heard_as_number(toks, i + 1) if n.end == i + 2)
    label = next(filter(None, found), None)
    return (i + 2, label) if label is not None else None


def _is_told_of(toks: Toks, i: int, end: int) -> bool:
    """ "a one is at 340, b two at 220": at the start of a clause, with a word for its line behind."""
    return word(toks, i - 1) in STARTS and word(toks, end) in TELLS


def _joins(toks: Toks, i: int) -> bool:
    return word(toks, i) in {"-", "/"} and glued(toks, i + 1) and word(toks, i + 1).isalnum()


# Bay and bed


def _bay(toks: Toks, i: int, of_unit: Wall, *, voice: bool) -> str:
    """The bay that is named right before this place: the "2" of "bay 2"."""
    if word(toks, i - 1) not in BAY or not of_unit.parts:
        return ""
    said = {value for _, value in _values(toks, i, voice=voice)}
    return next((bay for bay, _ in of_unit.parts if bay in said), "")


def _of_bay(toks: Toks, i: int, bay: str, of_unit: Wall, *, voice: bool) -> tuple[int, str] | None:
    """ "bay 2 bed 4", and "bed 4" once a bay was named."""
    if not of_unit.parts:
        return None
    if word(toks, i - 1) in BAY:
        for end, value in _values(toks, i, voice=voice):
            behind = end + (word(toks, end) in {",", "-", ".", ":"})
            if word(toks, behind) == "bed":
                return _bed_of(toks, behind + 1, value, of_unit, voice=voice)
    if bay and word(toks, i - 1) == "bed":
        return _bed_of(toks, i, bay, of_unit, voice=voice)
    return None


def _bed_of(toks: Toks, i: int, bay: str, of_unit: Wall, *, voice: bool) -> tuple[int, str] | None:
    found = [
        (end, of_unit.parts[bay, value])
        for end, value in _values(toks, i, voice=voice)
        if (bay, value) in of_unit.parts
    ]
    return found[0] if len(found) == 1 else None


def _values(toks: Toks, i: int, *, voice: bool) -> Iterator[tuple[int, str]]:
    """The digits, number or letter that can stand here for a bay or a bed."""
    yield from values(toks, i, voice=voice)
    if not is_digits(toks, i) and (letter := _letter(toks, i, voice=voice)) is not None:
        yield i + 1, letter


def _letter(toks: Toks, i: int, *, voice: bool) -> str | None:
    text = letter_of(word(toks, i), voice=voice)
    return text if len(text) == 1 and text.isalpha() and text not in NUMERALS else None


# Labels of letters alone


def _of_letters(toks: Toks, i: int, of_unit: Wall, found: Labelled, *, voice: bool) -> tuple[int, str] | None:
    """ "bed A", "B: 340", "C 120": a label without any digit."""
    text = word(toks, i)
    if not text[0].isalpha() or (glued(toks, i) and i):
        return None
    cued = word(toks, i - 1) in BED
    label = of_unit.letters.get(text) or (
        of_unit.letters.get(_letter(toks, i, voice=voice) or "") if cued else None
    )
    listed = is_digits(toks, i - 1) and i - 2 in found  # "A 340 B 220"
    if label is None or (len(label) == 1 and not _stands_alone(toks, i, cued=cued, listed=listed)):
        return None
    return i + 1, label


def _stands_alone(toks: Toks, i: int, *, cued: bool, listed: bool) -> bool:
    """Whether one letter here is a bed, and no article, side or tube."""
    text = word(toks, i)
    if cued:
        return text != "a" or ends_name(toks, i + 1) or word(toks, i + 1) not in {"hundred", "thousand"}
    before, after = word(toks, i - 1), word(toks, i + 1)
    if text in SIDES or before in TUBES or after in {"hundred", "thousand"}:
        return False
    if after in {":", "="} or is_digits(toks, i + 1) or after in TELLS:
        return before in STARTS or listed
    return before in BETWEEN_BEDS and (after in BETWEEN_BEDS | {"", ".", ",", "at"})
