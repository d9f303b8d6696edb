"""Whether a message says that a line was wrong, and the words that say so."""

from __future__ import annotations

from .entered import BUT_IT, ENTERED, OF_THE_LINE, TOLD_YOU, misread_line, turn_behind, wrote
from .items import Item
from .neighbours import phrase_of
from .numbers import Toks, word
from .patterns.leads import LINES
from .retiming import is_denied_time, is_retold
from .roles import CHECK_LIMITS

SLIPS = frozenset({"but", "mistake", "error", "sorry"})
"""Beside "not 45 but 54" these say no more than that."""
APOLOGIES = frozenset({"apologies", "apology", "apologize", "apologise", "pardon", "whoops", "oops", "sry"})
MOVING = frozenset({"move", "transfer", "shift", "switch", "reassign", "put"})
"""Asked for with a line behind it, these put it where it belongs."""
PAIR = 2
NOT_SO = frozenset({"isn't", "isnt", "wasn't", "wasnt", "not"})
IT_IS = BUT_IT | OF_THE_LINE | {"s", "'", "should", "be"}
LINE_WORDS = frozenset({"level", "old"})
BELONGS = frozenset({"belongs", "belonged"})
REALLY = frozenset({"really", "actually", "definitely"})
ONTO = frozenset({"to", "on", "under", "with"})
BELONGING = BELONGS | {"belong"}
FINALS = frozenset({"final", "closing", "last", "time"})
OF_A_LINE = FINALS | {"line", "level", "mark", "reading", "entry", "number", "figure", "value"}
OTHER_LEADS = frozenset({*CHECK_LIMITS, "weight"})
OTHER_UNITS = frozenset({"kg", "lb", "cm", "mmhg"})


def is_no_line(number: Item) -> bool:
    """Whether it is what a check read or what a patient weighs: no line is put right by it."""
    return number.role == "num" and (number.lead in OTHER_LEADS or number.unit in OTHER_UNITS)


def is_how_far(number: Item, toks: Toks) -> bool:
    """ "off by a hundred", "I was 100 out": how far from what is right, and no line."""
    before = toks.said[max(0, number.start - 2) : number.start]
    by = before[-1:] == ("by",) and before[0] in {"off", "out", "wrong", "over", "under"}
    return by or word(toks, number.end) in {"out", "off"}


def told_right(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "weighs 62 not 68 kg", "suction 20 not 10": the pieces without what is not so."""
    if "not" not in toks.words:
        return items
    for k, (right, no, wrong) in enumerate(zip(items, items[1:], items[2:], strict=False)):
        between = right.end == no.start and no.role == "cue" and no.value == "neg" and wrong.link == "not"
        if between and is_no_line(right) and wrong.role == "num":
            unit = right.unit or wrong.unit
            return (*items[:k], right._replace(unit=unit), *told_right(items[k + 3 :], toks))
    return items


def is_correction(items: tuple[Item, ...], toks: Toks) -> bool:
    """Whether a correction is said anywhere."""
    denied = "neg" in [i.value for i in items]
    if (
        (denied and (_is_not_but(items) or _is_not_so(items, toks)))
        or _rebedded(items, toks)
        or turn_behind(items, toks)
        or is_retold(items, toks)
        or (denied and is_denied_time(items, toks))
    ):
        return True
    if pointed(items, toks) is not None or points_at_tube(items, toks) or _put_wrongly(items, toks):
        return True
    if "corrected" in [i.name for i in items if i.value == "kind" and i.role == "cue"]:
        return not _is_unread(items)
    if wrote(items, toks) or misread_line(items, toks):
        return True
    return denied and any(
        i.role == "cue" and i.value == "neg" and _is_between(items, k, toks) for k, i in enumerate(items)
    )


def without_emphasis(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "yes it really is 1400": behind a yes it puts nothing right."""
    if not items or items[0].value != "yes" or REALLY.isdisjoint(toks.words):
        return items
    return tuple(
        i
        for i in items
        if not (i.name == "corrected" and i.end - i.start == 1 and word(toks, i.start) in REALLY)
    )


def agreed(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "340 correct": behind a number, and nothing else put right, it is a yes."""
    said = [k for k, i in enumerate(items) if i.role == "cue" and i.name == "corrected"]
    kinds = {i.value for i in items if i.name != "corrected"}
    if len(said) == 1 and "no" in kinds <= {"no", ","} and phrase_of(items[said[0]], toks) == "wrong":
        return items[: said[0]]  # "no, wrong"
    if len(said) != 1 or not any(i.role == "num" for i in items[: said[0]]):
        return items
    cue = items[said[0]]
    last = all(i.role == "sep" for i in items[said[0] + 1 :]) and phrase_of(cue, toks) == "correct"
    denied = any(i.value in {"neg", "no"} for i in items) or word(toks, cue.end) in {"it", "that", "this"}
    return (*items[: said[0]], cue._replace(value="yes", name="")) if last and not denied else items


def with_owner(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """ "it belongs to 6", "the time on 9 should be 1745", "22 final should be 1420": a bed, and no level."""
    owned: set[int] = set()
    if not BELONGING.isdisjoint(toks.words):
        owned = {k + 2 for k, w in enumerate(toks.said) if w in BELONGING and word(toks, k + 1) in ONTO}
    if owned:  # "belongs to bed 2, not 3"
        owned |= {i.start for i in items if i.link == "not" and i.start > min(owned)}
    owned |= _was_for(items, toks)
    labelled = [i for i in items if i.role == "bed" or (i.role == "num" and i.label and not i.unit)]
    if len(labelled) == 1:  # not "delete 405 line on 411", where 405 is a bed as well
        owned |= {i.start for i in labelled if _is_named_for(i, toks)}
    if not owned:
        return items
    return tuple(
        i.as_role("bed") if i.role == "num" and i.label and not i.unit and i.start in owned else i
        for i in items
    )


def _was_for(items: tuple[Item, ...], toks: Toks) -> set[int]:
    """ "the 0600 line on 11 was for 12": where the beds stand, that it is on and that it was for."""
    last = items[-1] if items else None
    if last is None or toks.said[max(0, last.start - 2) : last.start] not in {("was", "for"), ("is", "for")}:
        return set()
    on = [i.start for i in items[:-1] if word(toks, i.start - 1) in {"on", "in", "under"} and i.label]
    line = any(i.value in LINE_WORDS for i in items) or "that" in toks.words
    return {last.start, *on} if len(on) == 1 and last.label and line else set()


def _is_named_for(number: Item, toks: Toks) -> bool:
    """ "final on 22", "time on the 26 one", "22 final": the line, the time or the last level of that bed."""
    before, one = word(toks, number.start - 1), word(toks, number.end) in {"one", "line", "mark"}
    if before in {"the", "my"} and one:
        before = word(toks, number.start - 2)
    if not number.start:
        return word(toks, number.end) in FINALS
    return before in {"on", "for"} and not OF_A_LINE.isdisjoint(toks.said[: number.start])


def is_of_another(items: tuple[Item, ...]) -> bool:
    """ "6 is right, 7 should be 340": on one side of the stop is what is right of another bed."""
    stop = next((k for k, i in enumerate(items) if i.role == "sep" or i.name == "but"), 0)
    sides = (items[:stop], items[stop:])
    agreed = [any(i.role == "cue" and i.value == "yes" for i in side) for side in sides]
    righted = [any(i.role == "cue" and i.name == "corrected" for i in side) for side in sides]
    named = all(any(i.role == "bed" or i.label is not None for i in side) for side in sides)
    return named and agreed in ([True, False], [False, True]) and righted == agreed[::-1]


def belongs(items: tuple[Item, ...]) -> bool:
    """Whether a line is said to belong somewhere."""
    return any(i.unread for i in items if i.name in BELONGS)


def without_told(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces of a correction without the words that only say that something was entered."""
    turn = turn_behind(items, toks)
    plain = ENTERED | APOLOGIES | BELONGING | {"onto", "under"} | ({"as"} if turn else set())
    plain |= TOLD_YOU | {"you", "earlier", "in"} if turn else frozenset()
    plain |= {"says"} if any(i.name == "corrected" for i in items) else set()
    plain |= {"number"} if "same" in toks.words else frozenset()
    plain |= SLIPS if _is_not_but(items) or _put_wrongly(items, toks) else frozenset()
    return tuple(
        i
        for i in items
        if i.value != "word"
        or not (
            word(toks, i.start) in plain
            or i.name in BELONGS
            or (turn and i.start == turn)
            or (word(toks, i.start) == "as" and word(toks, i.start - 1) in ENTERED)
        )
    )


def _is_unread(items: tuple[Item, ...]) -> bool:
    """ "supposed to be around 900 but I haven't read it": what is denied last is that it was read."""
    denied = next((k for k, i in enumerate(items) if i.role == "cue" and i.value == "neg"), None)
    after = items[denied + 1 :] if denied is not None else ()
    return bool(after) and after[0].value == "level" and not any(i.role == "num" for i in after)


def _is_between(items: tuple[Item, ...], k: int, toks: Toks) -> bool:
    """ "was for bed 14 not bed 12": two beds or two tubes with "not" between them."""
    before = [i for i in items[:k] if i.role in {"bed", "tube", "num", "time"}]
    after = [i for i in items[k + 1 :] if i.role in {"bed", "tube", "num", "time"}]
    if not (before and after):
        return False
    if after[0].role == "tube" and [i.role for i in before] == ["tube", "bed"]:
        return True  # "the right side bed 16, not left"
    if before[-1].role == "bed" and after[0].role == "num" and after[0].label is not None:
        return after[0].link == "not" and not any(i.role == "num" for i in before)
    if before[-1].role != after[0].role:
        return False
    if before[-1].role == "num":
        beside = set(toks.said[before[-1].end : items[k].start]) <= {"(", ",", "-", "and", *SLIPS}
        if _may_be_bed(before, after[0]):
            return False
        return after[0].link == "not" and beside and before[-1].amount is not None
    return before[-1].role in {"bed", "tube"}


def _may_be_bed(before: list[Item], wrong: Item) -> bool:
    """ "7 9 not 7", "9 410 not 7": the number that is not so may be the bed, of which nothing was wrong."""
    bare = wrong.label is not None and not (wrong.unit or before[-1].unit or before[-1].lead)
    first = before[0]
    return bare and first is not before[-1] and (before[-1].label is None or first.label == wrong.label)


def _is_not_but(items: tuple[Item, ...]) -> bool:
    """ "bed 12 not 950, 905", "not 950, 905": nothing but where, and two numbers, the first denied."""
    said = [i for i in items if i.role not in {"sep", "bed", "tube", "time"} and i.value != "bed"]
    said = [i for i in said if not (i.unread and i.name in SLIPS) and i.value != "repair"]
    beds = [i for i in items if i.role == "bed"]
    if [i.value for i in said] == ["neg"] and len(beds) == 2 and items[-1].role == "bed":
        return said[0].end <= beds[0].start
    kinds = ["neg" if i.value == "neg" else i.role for i in said]
    if any(i.at for i in said[1:]):
        return False  # "is not at 950 but 905"
    if kinds[:2] == ["num", "neg"] and said[0].clocklike and said[-1].link == "but":
        kinds = kinds[1:]  # "bed 12 1300 was not 45 but 54"
    elif kinds[:2] == ["num", "neg"] and not beds and said[0].label and not (said[0].unit or said[0].lead):
        kinds = kinds[1:]  # "13: not 490, 1425"
    return kinds == ["neg", "num", "num"] and items[-1].role == "num"


def _is_not_so(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "bed 9 isn't 430 at four, it's 340": what is denied, when it was, and behind a stop how it is."""
    k = next((k for k, i in enumerate(items) if i.value == "neg" and i.role == "cue"), len(items))
    stop = next((i.end for i in items[k:] if i.role == "sep"), 0)
    numbers = [i for i in items if i.role == "num"]
    placed = [i for i in numbers if i.at or (i.full_clock and i.end <= items[k].start)] if stop else []
    numbers = numbers[1:] if numbers and numbers[0].label and not numbers[0].start else numbers
    wrong, right = ([i for i in numbers if i not in placed] + [None, None])[:2]
    if wrong is None or right is None or len(numbers) - len(placed) != PAIR or len(placed) > 1:
        return False
    denied = wrong.start == items[k].end and word(toks, wrong.start - 1) in NOT_SO
    told = set(toks.said[stop : right.start])
    behind = {i.role for i in items if i.start > right.start} <= {"sep"}
    return denied and behind and right.start > stop and told <= IT_IS and not told.isdisjoint(BUT_IT)


def _rebedded(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "the bed 12 1900 mark was bed 13", "0600 mark on bed 13 belongs to bed 12": one line, another bed."""
    beds = [k for k, i in enumerate(items) if i.role == "bed"]
    if belongs(items):
        told = bool(beds) and word(toks, items[beds[-1]].start - 1) in {"bed", "in"} | ONTO
        return told or any(i.role in {"num", "time"} or i.value in LINE_WORDS for i in items)
    if len(beds) != 2 or not {i.role for i in items[beds[1] + 1 :] if i.value != "repair"} <= {"sep"}:
        return False
    said = [i for k, i in enumerate(items) if k not in beds]
    line = any(i.value in LINE_WORDS for i in said) or not ENTERED.isdisjoint(
        toks.said[: items[beds[0]].start]
    )
    first = said[0] if said else items[0]
    line |= first.role == "num" and word(toks, first.start - 1) in {"the", "that", "my"}
    if not line or sum(i.role in {"num", "time"} for i in said) not in {1, PAIR}:
        return False
    return is_told_of(items[beds[1]], toks)


def pointed(items: tuple[Item, ...], toks: Toks) -> Item | None:
    """ "that 340 was bed 6", "the 340 was for bed 6": where a line belongs that was told before."""
    if "was" not in toks.words:
        return None
    said = [i for i in items if i.role != "cue" or i.value not in {"bed", "filler"}]
    line, bed = said[0] if said else None, said[-1] if said else None
    if line is None or bed is None or line is bed or line.role != "num" or line.unit:
        return None
    if bed.role != "bed" and (bed.label is None or word(toks, bed.start - 1) != "for"):
        return None
    plain = [i.role for i in said[1:-1]] in ([], ["time"]) or (len(said) == PAIR and said[1].at)
    by = word(toks, line.start - 1)
    of_bed = by == "that" or (by == "the" and "for" in toks.said[line.end : bed.start])
    told = of_bed and is_told_of(bed, toks)
    return bed if plain and told and line.at is False else None


def points_at_tube(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "that 640 on 7 was the left one": of which tube the line is that was told before."""
    if toks.words.isdisjoint({"that", "the"}):
        return False
    told = [i for i in items if i.role == "num" and not i.label]
    numbers = [i for i in told if not i.at] or told
    tubes = [i for i in items if i.role == "tube"]
    if len(numbers) != 1 or len(tubes) != 1 or numbers[0].unit:
        return False
    led = [w for w in toks.said[: numbers[0].start] if w not in LINES | {"at"}]
    named = led[-1:] in (["that"], ["the"]) and tubes[0].start > numbers[0].end
    plain = all(i.value in {"bed", "filler", "tubeword"} for i in items if i.role == "cue")
    return named and plain and is_told_of(tubes[0], toks)


def _put_wrongly(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "put 340 in bed 5 by mistake, it's bed 6"."""
    if ENTERED.isdisjoint(toks.words):
        return False
    beds = [i for i in items if i.role == "bed"]
    slip = any(i.unread and i.name in SLIPS for i in items)
    return slip and len(beds) == PAIR and is_told_of(beds[1], toks)


def is_told_of(bed: Item, toks: Toks) -> bool:
    """ "it was bed 13", "belongs to 12", "the time was 1845": the bed, tube or time that is right."""
    k = bed.start - 1
    while word(toks, k) in {"bed", "room", "rm", "for", "in", "to", "really", "the", "at"}:
        k -= 1
    if word(toks, k) in ONTO and word(toks, k - 1) in BELONGS | {"goes"}:
        return True
    return word(toks, k) in {"was", "is", "its", "it's", "belongs", "belonged", "goes"} or (
        word(toks, k) == "s" and word(toks, k - 2) == "it"
    )
