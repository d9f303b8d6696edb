"""Where a way goes on from a cue: the lead that it gives the next number, or the piece that it is itself.

Called by `lattice`; what a cue says by the words around it is found in `cuesense`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from .clock import clocks
from .cuesense import is_last_line, is_place, is_place_at, is_time_of_all, says_nothing
from .followers import is_found_of
from .fractions import is_with_part
from .ground import Ground
from .items import FULL_HOUR, Item
from .labels import is_of_a_level, tube_label
from .leaks import has_sign
from .neighbours import (
    is_adverb,
    is_day_number,
    is_initial,
    is_left_there,
    is_setting,
    kind_lead,
    number_follows,
    phrase_of,
)
from .numbers import Toks, glued, heard_as_number, is_digits, numbers, starts_number, word
from .numbersteps import misheard
from .patterns.leads import LEADS, LEVEL_LEADS, LINES, MAY_BE_ARTICLE, TUBE_NAMES
from .patterns.leads import MANY_LINES as MANY
from .pipeline import Cue
from .ways import Step, Way, about

CHANGED = frozenset({"stopped", "started", "lost", "gone", "ceased", "resolved"})
LED = frozenset({"old", "new", "opens", "amount", "output"})
DIAL_STEP = 5
"""Suction is set in steps of so many cmH2O. Common practice, no source."""
LETTERS_AND_NUMBER = 2
"""Words of a label such as CT 5."""


def cue_steps(ground: Ground, cue: Cue, way: Way) -> Iterable[Step]:
    """Each way on from a cue."""
    if cue.label == "filler":
        return _filler(ground, cue, way)
    item = Item("cue", cue.start, cue.end, cue.label, cue.value)
    if cue.label == "tubeword":
        return _tubeword(ground, cue, way, item)
    found = [(cue.end, _with_cue(ground, cue, way, item))]
    if cue.value == "suction_on" and _is_odd_setting(ground, cue.end):
        found.append((cue.end, way.with_item(item)))
    if cue.label == "ask" and is_last_line(cue, ground.toks) and ground.places.labels(cue.end):
        found.append((cue.end, way.with_item(item)))
    if way.lead == "amount" and phrase_of(cue, ground.toks) == "up to" and not _is_anew(cue, way):
        found.append((cue.end, way.with_item(item, "levelat", at=True)))  # "drained up to 560": asked
    return found


def _is_anew(cue: Cue, way: Way) -> bool:
    """ "a heap came out, up to 560", "a lot came out and it's at 560": behind a stop, the line."""
    amount = way.lead in {"amount", "output"} and cue.label == "levelat"
    return amount and bool(way.items) and way.items[-1].role == "sep"


def _is_odd_setting(ground: Ground, i: int) -> bool:
    """ "suction back on 14": perhaps the bed, as a dial is hardly set to that; "on 20" is no bed."""
    number = word(ground.toks, i)
    odd = number.isdecimal() and int(number) % DIAL_STEP > 0
    return odd and any(known for _, _, known in ground.places.labels(i))


def _left(item: Item, toks: Toks) -> Item:
    """The side that the letter names, or a word where it is of somebody's name: "RN L"."""
    if is_initial(toks, item.start):
        return item._replace(value="word", name="l")
    return item._replace(role="tube", value="", name="left")


def _with_cue(ground: Ground, cue: Cue, way: Way, item: Item) -> Way:
    match cue.label:
        case "side" if is_adverb(ground.toks, cue.start, cue.end):
            return way.with_item(Item("cue", cue.start, cue.end, "word", cue.value))
        case "side" | "place" if not is_left_there(ground.toks, cue.start):
            tube = item._replace(role="tube", value="", name=cue.value)
            return way.with_item(tube, way.lead, at=way.at)
        case "level" if word(ground.toks, cue.end - 1) in MANY and number_follows(ground.toks, cue.end):
            return way.with_item(item)
        case "litre" if word(ground.toks, cue.start) == "l":
            return way.with_item(_left(item, ground.toks))
        case "window" if cue.value == "day" and is_day_number(ground.toks, cue.end):
            return way.with_item(item._replace(value="other", name=""))
        case "about" if _is_of_time(ground, cue, way):
            return way.after_at()
        case "about":
            return about(way, cue, ground.toks)
        case "what" if cue.value == "suction_on" and is_setting(ground.toks, cue.end):
            return way.with_item(item._replace(value="suction", name=""), "suction")
        case "ask" if is_last_line(cue, ground.toks):
            return way.with_item(item._replace(value="last", name=""), "last")
        case "seal" if word(ground.toks, cue.start - 1) == "to" and not number_follows(ground.toks, cue.end):
            return way.with_item(item._replace(value="waterseal"))
        case "kind" if cue.value == "placed" and is_place(cue, ground.toks, ground.cues, ground.written):
            place = item._replace(value="tubeword", name="")
            nxt = ground.cues.get(cue.end)
            return way.with_item(place, "bed" if nxt is not None and nxt.label == "bed" else "")
        case "kind":
            return _with_event(ground, cue, way, item)
        case "leak" if cue.value == "present" and not has_sign(cue, ground.toks):
            return way.with_item(item, "leakgrade")
        case "level" | "levelat" if way.lead in LED and not _is_anew(cue, way):
            return way._replace(at=way.at or cue.label == "levelat")
    as_at = ground.toks.said[cue.end - 2 : cue.end] == ("as", "at")  # "same as at six"
    if cue.label == "same" and (as_at or word(ground.toks, cue.end - 1) in {"since", "as", "from"}):
        return way.with_item(item, "since")
    if says_nothing(cue, way, ground.toks, voice=ground.voice) or is_place_at(cue, ground.toks):
        return way
    at = word(ground.toks, cue.end - 1) in {"at", "@", "the"}
    return way.with_item(item, _lead_of(ground, cue, way), at=at)


def _lead_of(ground: Ground, cue: Cue, way: Way) -> str:
    """What the cue says of the number behind it; "bed 16 closing line 340": behind the bed, its level."""
    if cue.label == "order":
        return cue.value
    line = cue.label == "closing" and word(ground.toks, cue.end - 1) in LINES
    return "level" if line and _is_after(way, "bed") else LEADS.get(cue.label, "")


def _is_of_time(ground: Ground, cue: Cue, way: Way) -> bool:
    """ "420 around 6": behind the level, about when it was read."""
    last = way.items[-1] if way.items else None
    level = last is not None and last.role == "num" and last.label is None and last.end == cue.start
    around = word(ground.toks, cue.end - 1) in {"around", "about", "abt", "~"}
    level |= last is not None and _is_change(last, cue, ground.toks)
    return level and around and not (ground.voice or way.lead) and bool(clocks(ground.toks, cue.end))


def _is_change(last: Item, cue: Cue, toks: Toks) -> bool:
    """ "stopped tidaling around 1700": about when it was, where four digits follow."""
    changed = last.role == "cue" and last.value in {"tidal", "leak"} and last.end == cue.start
    told = changed and not CHANGED.isdisjoint(toks.said[last.start : last.end])
    return told and len(word(toks, cue.end)) == FULL_HOUR


def _with_event(ground: Ground, cue: Cue, way: Way, item: Item) -> Way:
    """An event, and the tube that its phrase names: "pulled the left tube"."""
    found = way
    for k in range(cue.start, cue.end) if cue.value in {"removed", "placed", "exchanged"} else ():
        if word(ground.toks, k) in TUBE_NAMES and cue.end - cue.start > 1:
            found = found.with_item(Item("tube", k, k + 1, name=word(ground.toks, k)))
    fresh = any(word(ground.toks, k) in {"new", "fresh"} for k in range(cue.start, cue.end))
    item = item._replace(unit="new" if fresh else "")
    return found.with_item(item, kind_lead(ground.toks, cue.end, cue.value))


def _filler(ground: Ground, cue: Cue, way: Way) -> Iterator[Step]:
    text = word(ground.toks, cue.start)
    if len(text) == 1 and glued(ground.toks, cue.start) and is_digits(ground.toks, cue.start - 1):
        return  # the letter of "22A" is no article
    may_be_heard = ground.voice and starts_number(ground.toks, cue.end)
    if cue.end - cue.start == 1 and text in {"at", "and", "add", "to", "from", "into"}:
        yield from _joining(ground, cue.start, text, way)
        told = any(item.value == "kind" for item in way.items)  # "correct the mark to ten oh five"
        if may_be_heard and text == "to" and way.lead in LEVEL_LEADS and not told:
            yield from misheard(ground, cue.start, way)  # "mark to fifty five"
    elif (
        way.lead in {"seal", "leakgrade", "weight"}
        and text in {"for", "on"}
        and ground.places.labels(cue.end)
    ):
        yield cue.end, way._replace(lead="")
    elif way.lead == "level" and text in {"for", "in", "on"}:
        yield cue.end, way._replace(lead="")
        if may_be_heard:
            yield from misheard(ground, cue.start, way)
    elif may_be_heard and way.lead in LEVEL_LEADS and heard_as_number(ground.toks, cue.start):
        yield cue.end, way
        yield from misheard(ground, cue.start, way)
    elif may_be_heard and text in {"for", "to"} and _is_after(way, "bed"):
        yield cue.end, way
        yield from (step for step in misheard(ground, cue.start, way) if step[0] > cue.end)
    elif way.lead == "bed" and text in {"is", "was", "in", "on", "has", "had"}:
        yield cue.end, way._replace(lead="")
    elif is_time_of_all(cue, ground.toks):
        yield cue.end, way.after_at()
    elif text in {"both", "all"} and is_found_of(cue, ground.cues):
        both = Item("cue", cue.start, cue.end, "both", "2" if text == "both" else "")
        yield cue.end, way.with_item(both, way.lead, at=way.at)
    elif word(ground.toks, cue.end - 2) == "same" and word(ground.toks, cue.end - 1) == "time":
        yield cue.end, way.with_item(Item("cue", cue.start, cue.end, "sametime"), way.lead, at=way.at)
    else:
        yield cue.end, way


def _joining(ground: Ground, i: int, text: str, way: Way) -> Iterator[Step]:
    if text == "at":
        yield i + 1, way.after_at()
    elif text in {"to", "from", "into"}:
        yield i + 1, way._replace(lead=way.lead or ("from" if text == "from" else "to"))
    elif text == "and":
        yield from _and(ground, i, way)
    else:
        yield i + 1, way.after_at() if ground.voice and starts_number(ground.toks, i + 1) else way


def _and(ground: Ground, i: int, way: Way) -> Iterator[Step]:
    yield i + 1, way.with_item(Item("sep", i, i + 1, "and"))
    if not ground.voice or not way.items or way.lead or not clocks(ground.toks, i + 1):
        return
    if not _is_between_beds(ground, i, way.items[-1]):
        yield i + 1, way.after_at()


def _is_between_beds(ground: Ground, i: int, before: Item) -> bool:
    """ "2 and 5 are 210 and 1340": with a line for each behind them, and not bed 2 at 5."""
    bed = before.role == "bed" or (before.role == "num" and before.label is not None)
    ends = [end for end, _, known in ground.places.labels(i + 1) if known]
    if not bed or not ends:
        return False
    lines = [k for k in range(max(ends), len(ground.toks) - 1) if word(ground.toks, k) == "and"]
    return any(starts_number(ground.toks, k - 1) and starts_number(ground.toks, k + 1) for k in lines)


def _tubeword(ground: Ground, cue: Cue, way: Way, item: Item) -> Iterator[Step]:
    for end, label, known in ground.places.labels(cue.start):
        if known and end > cue.end and not _is_after(way, "bed"):
            yield end, way.with_item(Item("bed", cue.start, end, label=label))
            if way.lead == "bed" or (ground.voice and end - cue.start == LETTERS_AND_NUMBER):
                return  # dictated "CT 5 mark 340", where a bed is called so
    found = tube_label(ground.toks, cue.end)
    heard = ground.voice and found is not None and is_of_a_level(ground.toks, cue.end, found[0])
    if found is not None and way.lead != "bed" and not (_is_after(way, "tube") or heard):
        yield found[0], way.with_item(Item("tube", cue.start, found[0], name=found[1]))
        level = found[0] in ground.cues and ground.cues[found[0]].label in {"level", "levelat"}
        if found[1] == "A" and not level and word(ground.toks, found[0]) in MAY_BE_ARTICLE:
            yield cue.end, way.with_item(item, way.lead, at=way.at)
        typed = not ground.voice and not word(ground.toks, found[0]).startswith("0")
        longer = any(number.end > found[0] for number in numbers(ground.toks, cue.end))
        numbered = word(ground.toks, cue.end - 1) == "number"  # "tube number one eighty"
        if (typed or numbered or not longer) and not is_with_part(ground.toks, cue.end):
            return
    yield cue.end, way.with_item(item, way.lead, at=way.at)


def _is_after(way: Way, role: str) -> bool:
    """ "left tube 2": a tube with a side has no number too."""
    return bool(way.items) and way.items[-1].role == role
