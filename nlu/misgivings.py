"""What a doubt, a denial or a cancellation told beside a statement reaches: that is asked, never recorded.

"bed 7 450 at 1300, not sure though", "bed 7 tube out at 1300, team decided against it": however a message
was read and whatever was left out for that, its own words are looked at here last. A doubt reaches what is
told in its clause, else in its sentence, else in the sentence before; one that goes on about something else
("not sure if he wants lunch") reaches nothing. Called by `read` with what was read.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import takewhile
from typing import Any, TypeGuard

from .alarms import is_feared
from .asking import is_owned_up, opens_asking
from .doubtwords import Doubt, doubts_in, is_stop, sentence_of
from .elsedoubts import is_of_something_else
from .hearsay import SECOND_HAND, second_hand
from .items import EVENTS
from .numbers import Toks, is_digits, starts_number, word
from .ofreading import doubts_of_reading
from .onlyspoken import is_only_spoken_of
from .patterns import misgivings as said_so
from .patterns.asides import LOADED, THINGS
from .patterns.circumstances import OUTINGS
from .patterns.numerals import NUMERALS
from .pipeline import Cue, Read
from .statements import (
    Answered,
    Away,
    Back,
    Checked,
    Corrected,
    Drained,
    Exchanged,
    Incident,
    Left,
    Mark,
    Moved,
    Ordered,
    Placed,
    Removed,
    Statement,
    Unclear,
    Withdrawn,
)
from .tubeinremark import of_remarks
from .unreal import either_half, unreal
from .verdict import as_a_whole
from .weighty import stays_with

SETTLING = Corrected | Withdrawn
HAPPENED = Placed | Exchanged | Removed | Moved | Away | Back | Left | Incident
DOUBTED = Mark | Drained | HAPPENED | Checked | Ordered | SETTLING
UNSEEN = re.compile(r"_|-\s*[,.;]")
AMOUNT_SLOTS = ("level_ml", "final_ml", "volume_ml")
Covers = dict[int, frozenset[int]]
"""The places of the words that each statement was read from, by its identity."""


def doubted(
    outcome: Sequence[Statement | Unclear], read: Read, meant: Sequence[Cue]
) -> tuple[Statement | Unclear, ...]:
    """What was read, with what is doubted asked; `meant` are its cues as they are meant."""
    toks = read.tokens
    told: list[Statement] = [s for s in outcome if isinstance(s, DOUBTED) or _is_whole_answer(s)]
    if not told or any(isinstance(s, Answered) for s in outcome if s not in told):
        return tuple(outcome)
    covers = {id(s): _covered(s, toks) for s in told}
    spoken = frozenset().union(*covers.values())
    asks = len(told) < len(outcome)
    plain = said_so.PLAIN.issuperset([w for w in toks.words if not w.isdecimal()])
    asked = {} if plain else _asked_for_words(told, covers, read, meant, asks=asks)
    for said in of_remarks(told, meant, toks, spoken):
        asked[id(said)] = _of_no_tube(said, asked.get(id(said)), read.text)
    if either_half(toks):
        asked |= {id(s): _without(s, "at", read.text) for s in told if s.at and id(s) not in asked}
    return tuple(asked.get(id(s), s) for s in outcome)


def _asked_for_words(
    told: Sequence[Statement], covers: Covers, read: Read, meant: Sequence[Cue], *, asks: bool
) -> dict[int, Statement | Unclear]:
    """What is asked for the words beside it; `asks` where something else is asked already."""
    toks = read.tokens
    spoken = frozenset().union(*covers.values())
    whole = spoken.union(*(range(c.start, c.end) for c in read.cues if c.label in EVENTS))
    asked: dict[int, Statement | Unclear] = {}
    doubts = tuple(doubts_in(toks))
    for doubt in doubts:
        if doubt.kind == "cancelled" and not spoken.isdisjoint(range(doubt.start, doubt.end)):
            continue  # "hasn't drained anything": it is what was read
        if whole.isdisjoint(range(*doubt.clause)) and is_of_something_else(toks.said[slice(*doubt.clause)]):
            continue  # "reg allegedly on the way"
        if stays_with(toks, doubt.start) and not any(isinstance(s, Removed) for s in told):
            continue
        if _reaches(doubt, toks, whole) and not (asks and _is_of_asked(doubt, toks, whole)):
            for statement in _reached(doubt, told, covers, toks):
                asked[id(statement)] = _asked(doubt, asked.get(id(statement), statement), toks, read.text)
    found = doubts_of_reading(toks, whole, doubts)
    if asks:
        found = (doubt for doubt in found if not _is_of_asked(doubt, toks, whole))
    asked |= _asked_of_reading(told, found, covers, read, asked)
    asked |= _asked_besides(told, covers, read)
    spoken_of = (s for s in told if isinstance(s, HAPPENED) and is_only_spoken_of(s, meant, toks))
    return asked | {id(s): as_a_whole(s, read.text) for s in spoken_of}


def _comes_back(toks: Toks) -> bool:
    """ "left the ward at 1410 because he wanted a coffee": out for a while, and not for good."""
    left = next((k for k in range(2, len(toks)) if toks.said[k - 2 : k] == ("left", "the")), len(toks))
    return not OUTINGS.isdisjoint(toks.said[left : sentence_of(toks, left, left)[1]])


def _asked_of_reading(
    told: Sequence[Statement],
    doubts: Iterable[Doubt],
    covers: Covers,
    read: Read,
    asked: Mapping[int, Statement | Unclear],
) -> dict[int, Statement | Unclear]:
    """What is asked as the reading of a line is in doubt, and bubbles that made it hard to read."""
    found: dict[int, Statement | Unclear] = {}
    read_off = [s for s in told if _amount(s) or isinstance(s, SETTLING)]
    for doubt in doubts if read_off else ():
        clause = frozenset(range(*doubt.clause))
        leaks = (s for s in told if isinstance(s, Checked) and s.air_leak)
        found |= {id(s): as_a_whole(s, read.text) for s in leaks if not clause.isdisjoint(covers[id(s)])}
        for said in _reached(doubt, read_off, covers, read.tokens):
            settled = isinstance(said, SETTLING) and asked.get(id(said)) is said
            if id(said) not in asked or settled:
                found[id(said)] = _asked(doubt, said, read.tokens, read.text)
    return found


def _asked_besides(told: Sequence[Statement], covers: Covers, read: Read) -> dict[int, Unclear]:
    """What is asked for its own words, whatever doubts there are: owned up to, at second hand, cut short."""
    toks, asked = read.tokens, dict[int, Unclear]()
    if is_owned_up(read.text):
        asked |= {id(s): as_a_whole(s, read.text) for s in told if isinstance(s, Withdrawn)}
    asked |= {id(s): _on_whose_word(s, read.text) for s in _second_hand(told, toks)}
    asked |= {id(s): _without(s, slot, read.text) for s in told if (slot := _cut_short(s, read.text))}
    asked |= {id(s): as_a_whole(s, read.text) for s in told if _may_be_farewell(s, read.text)}
    if opens_asking(toks):
        asked |= {id(s): as_a_whole(s, read.text) for s in told if isinstance(s, Mark | Drained)}
    made_up = unreal(toks, covers.values())
    asked |= {id(s): as_a_whole(s, read.text) for s in told if covers[id(s)] in made_up}
    asked |= {id(s): as_a_whole(s, read.text) for s in told if isinstance(s, Left) and _comes_back(toks)}
    return asked


def _of_no_tube(said: Statement, asked: Statement | Unclear | None, text: str) -> Unclear:
    """ "700 at 1900, gave him the right dose": the line without the tube of a remark, asked."""
    if not isinstance(asked, Unclear) or asked.statement is None:
        return as_a_whole(replace(said, tube=None), text)
    readings = tuple(replace(reading, tube=None) for reading in asked.readings)
    return replace(asked, statement=replace(asked.statement, tube=None), readings=readings)


def _is_whole_answer(said: Statement | Unclear) -> TypeGuard[Answered]:
    """ "pretty sure bed 7 450", "bed 7 450, maybe I misread": a line with a bed of its own."""
    return isinstance(said, Answered) and None not in (said.level_ml, said.bed)


def _covered(statement: Statement, toks: Toks) -> frozenset[int]:
    """The places of the words that a statement was read from."""
    spans = statement.spans.values()
    return frozenset([k for k, t in enumerate(toks) for s in spans if s.start < t.end and t.start < s.end])


OF_LEVEL = frozenset({"seeing", "seeming", "reading", "outright"})


def _reaches(doubt: Doubt, toks: Toks, told: frozenset[int]) -> bool:
    """Whether the words around a doubt leave it with what is told, or go on about something else."""
    first, last = doubt.clause
    if is_feared(toks, first, last):
        return False  # "think bed 5 is bleeding, 200 in ten mins"
    if _is_why(doubt, toks) and word(toks, doubt.end - 1) in said_so.NEEDED:
        return False
    if doubt.kind == "elsewhere" or (
        doubt.kind == "another" and told.intersection(range(first, doubt.start))
    ):
        return True
    before = list(range(first, doubt.start))
    while told.intersection(before):
        before.pop(0)
    behind = list(takewhile(lambda k: k not in told, range(doubt.end, last)))
    onto = doubt.end + len(behind) < last
    if _is_settled(doubt, toks, before, onto=onto):
        return False
    if doubt.kind == "cancelled" and onto and word(toks, doubt.start) not in said_so.OFF:
        return False
    if doubt.kind == "rough" and starts_number(toks, doubt.end) and doubt.end not in told:
        return False  # "roughly 3 visitors"
    if doubt.kind == "rough":
        return not onto and all(_is_light(toks, k) for k in (*before, *behind))
    if doubt.end - doubt.start == 1 and _guesses_number(toks, doubt.end, told):
        return False
    if doubt.kind == "taking back":
        last_told = doubt.end > max(told, default=0)
        return last_told and all(_is_light(toks, k) for k in (*before, *behind))
    if onto and all(_is_light(toks, k) or word(toks, k) in LOADED | THINGS for k in behind):
        return _is_of_it_before(doubt, toks, before)
    return _is_of_it_before(doubt, toks, before) and _is_of_it_behind(doubt, toks, behind)


def _is_why(doubt: Doubt, toks: Toks) -> bool:
    """ "tube out as not required anymore", "to theatre as fluid is not clearing": why, and no doubt."""
    return word(toks, doubt.clause[0] - 1) in said_so.BECAUSE


def _is_settled(doubt: Doubt, toks: Toks, before: list[int], *, onto: bool) -> bool:
    """ "foam settled", "resident has been told": what hid the line is gone, and somebody else heard of it."""
    if word(toks, doubt.end - 1) == "told" and not onto:
        return any(word(toks, k) in said_so.TEAM - said_so.NOBODY for k in before)
    said = set(toks.said[slice(*doubt.clause)])
    return doubt.kind == "seeing" and bool(said & said_so.GONE) and said.isdisjoint(said_so.NOT_GONE)


def _guesses_number(toks: Toks, k: int, told: frozenset[int]) -> bool:
    """ "maybe 450", "maybe at 1900", "for maybe 10 min": only the number is guessed; read elsewhere."""
    k += word(toks, k) == "at"
    unit = word(toks, k + 1) in said_so.OF_CLOCK
    return _is_number(toks, k) and (k in told or unit)


def _is_of_it_before(doubt: Doubt, toks: Toks, before: list[int]) -> bool:
    who = said_so.LIGHT | said_so.OF_LINE | (frozenset() if doubt.kind == "seeming" else said_so.TEAM)
    if doubt.kind == "cancelled":
        who = who - said_so.SIDES  # "left tube out, right still in"
    return doubt.kind == "tilted" or all(_is_number(toks, k) or word(toks, k) in who for k in before)


def _is_of_it_behind(doubt: Doubt, toks: Toks, behind: list[int]) -> bool:
    words = [word(toks, k) for k in behind if not _is_number(toks, k)]
    found = set(words)
    if " ".join(words) in said_so.NO_MORE or (
        doubt.kind == "doubting" and words[:1] and words[0] in said_so.WHY
    ):
        return len(words) > 1 and not said_so.STRONG.isdisjoint(found)
    if doubt.kind == "tilted" or (doubt.kind == "seeming" and words[:1] and words[0] in said_so.COMPARED):
        return True
    goes_on = said_so.LIGHT | (said_so.IN_THE_END if doubt.kind == "cancelled" else said_so.OF_LINE)
    if found <= goes_on:
        return True
    if doubt.kind == "seeing":
        through = words[0] in said_so.THROUGH or not said_so.CANISTER.isdisjoint(found)
        return through and said_so.PERSONS.isdisjoint(found)
    return doubt.kind == "doubting" and not said_so.STRONG.isdisjoint(found)


def _is_of_asked(doubt: Doubt, toks: Toks, told: frozenset[int]) -> bool:
    """ "3 440, 5 1260 i think, 8 95": it is of the row that is asked already."""
    first, last = doubt.clause
    numbers = any(is_digits(toks, k) for k in range(first, max(first + 1, doubt.start)))
    return numbers and told.isdisjoint(range(first, last))


def _is_light(toks: Toks, k: int) -> bool:
    return word(toks, k) in said_so.LIGHT | said_so.OF_LINE or _is_number(toks, k)


def _is_number(toks: Toks, k: int) -> bool:
    return is_digits(toks, k) or word(toks, k) in NUMERALS


def _reached(doubt: Doubt, told: Sequence[Statement], covers: Covers, toks: Toks) -> Sequence[Statement]:
    """What is told in its clause, else in its sentence, else nearest before it, else behind it."""
    if doubt.kind == "elsewhere":
        told = [s for s in told if isinstance(s, Drained)]
    if doubt.kind in OF_LEVEL:  # "read it upside down maybe": of the level, and nothing tipped
        told = [s for s in told if _amount(s)] or ([] if _is_why(doubt, toks) else told)
    start, end = doubt.clause
    sentence = sentence_of(toks, start, end)
    either = word(toks, doubt.start) == "or"  # "final 450, or was it 540"
    for first, last in ((start, end), sentence)[either:]:
        inside = [s for s in told if any(first <= k < last for k in covers[id(s)])]
        if inside:
            return inside
    ends = [max(covers[id(s)]) for s in told if covers[id(s)] and max(covers[id(s)]) < start]
    if not ends:
        return told
    near = sentence_of(toks, max(ends), max(ends) + 1)
    return [s for s in told if any(near[0] <= k < near[1] for k in covers[id(s)])]


def _asked(doubt: Doubt, said: Statement | Unclear, toks: Toks, text: str) -> Statement | Unclear:
    """What is asked of a statement that is doubted; where the level is only a rough one it is told as one."""
    if not isinstance(said, Statement) or _is_put_right(doubt, said, toks):
        return said
    amount = _amount(said)
    if doubt.kind == "rough":
        timed = " ".join(toks.said[doubt.start : doubt.end]) in said_so.OF_TIME
        if amount is None or (timed and not is_stop(toks, doubt.start - 1)):
            return said
        if isinstance(said, Mark | Drained):
            return replace(said, about=True)
    if doubt.kind == "tilted" and amount is None:
        return said
    if doubt.kind in {"seeing", "seeming", "tilted"} and getattr(said, "about", False):
        return said  # "roughly 500 at 1905, can't read it under the bed"
    slot = _slot(doubt, amount, toks)
    if slot is None or (slot == "tube" and said.tube is None):
        return as_a_whole(said, text)
    return _without(said, slot, text)


def _without(said: Statement, slot: str, text: str) -> Unclear:
    partly: dict[str, Any] = {slot: None}
    return Unclear(slot=slot, text=text, statement=replace(said, **partly))


def _second_hand(told: Sequence[Statement], toks: Toks) -> Iterator[Statement]:
    """Those whose number somebody else vouches for."""
    if SECOND_HAND.isdisjoint(toks.words):
        return
    places = {id(s): k for s in told if (k := _value_place(s, toks)) is not None}
    orders = {id(s) for s in told if isinstance(s, Ordered | Checked)}  # what is found may be set on his word
    values = [k for said, k in places.items() if said not in orders]
    found = second_hand(toks, values, [k for said, k in places.items() if said in orders])
    yield from (s for s in told if places.get(id(s)) in found)


def _value_place(said: Statement, toks: Toks) -> int | None:
    """Where the number stands that is told of a drain."""
    if isinstance(said, Checked | Ordered):
        slots: tuple[str, ...] = ("suction_cmh2o", "seal_cm", "wall_mmhg")
    else:
        slots = AMOUNT_SLOTS if isinstance(said, Mark | Drained | Answered | Corrected) else ()
    spans = [span for slot in slots if (span := said.spans.get(slot)) is not None]
    return next(
        (k for span in spans for k, t in enumerate(toks) if span.start < t.end and t.start < span.end), None
    )


def _cut_short(said: Statement, text: str) -> str | None:
    """ "level 48_", "48-, last one hidden": the slot of a number whose end was not seen."""
    slot = _amount(said)
    span = said.spans.get(slot) if slot is not None else None
    return slot if span is not None and UNSEEN.match(text, span.end) else None


def _may_be_farewell(said: Statement, text: str) -> bool:
    """ "450 at 1850, brb": be right back, or bright red blood?"""
    span = said.spans.get("fluid") if isinstance(said, Checked) else None
    alone = span is not None and text[: span.start].rstrip()[-1:] in {",", ".", "-", ";", "!"}
    return alone and span is not None and text[span.start : span.end].lower() == "brb"


def _on_whose_word(said: Statement, text: str) -> Unclear:
    """The level that somebody else vouches for, to be read; what else was told so is asked as a whole."""
    slot = _amount(said)
    if slot is None or not isinstance(said, Mark | Drained):
        return as_a_whole(said, text)
    partly: dict[str, Any] = {slot: None}
    value = getattr(said, slot)
    return Unclear(slot=slot, text=text, choices=(value,), statement=replace(said, **partly))


def _is_put_right(doubt: Doubt, said: Statement, toks: Toks) -> bool:
    """ "misread, bed 7 880", "I think I misread it": what was wrong, and no doubt of what is right."""
    if isinstance(said, Answered):
        return doubt.kind != "doubting"
    if not isinstance(said, SETTLING) or doubt.kind == "outright":
        return False
    if doubt.kind == "taking back":
        return isinstance(said, Withdrawn)
    if not said_so.WENT_WRONG.isdisjoint(toks.said[doubt.start : doubt.end]):
        return True
    behind = toks.said[doubt.start : doubt.clause[1]]
    wrong = [k for k, w in enumerate(behind) if w in said_so.WENT_WRONG]
    onto = bool(wrong) and any(is_digits(toks, doubt.start + k) for k in range(wrong[-1], len(behind)))
    return doubt.kind != "doubting" or (bool(wrong) and not onto)


def _amount(said: Statement) -> str | None:
    """The slot of its level or amount, if it has one."""
    return next((slot for slot in AMOUNT_SLOTS if getattr(said, slot, None) is not None), None)


def _slot(doubt: Doubt, amount: str | None, toks: Toks) -> str | None:
    """What a doubt is of, as the words of its clause behind it say; nothing where it is of all."""
    if doubt.kind in {"rough", "seeing", "seeming", "tilted"}:
        return amount
    if doubt.kind != "doubting":
        return None
    words = set(toks.said[doubt.start : doubt.clause[1]])
    for slot, named in (("bed", said_so.OF_PLACE), ("tube", said_so.OF_TUBE), ("at", said_so.OF_CLOCK)):
        if words & named:
            return slot
    return amount if words & said_so.OF_VALUE else None
