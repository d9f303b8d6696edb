"""What somebody entered, read or told you, and how it is: "i wrote 451 for 3, it's 415".

Called by `corrections` and `sorting`: the number that was entered is wrong, and right is what it turns to.
"""

from __future__ import annotations

from itertools import pairwise

from .items import Item
from .numbers import Toks, word

PAIR = 2
ENTERED = frozenset(
    {"entered", "keyed", "put", "charted", "typed", "wrote", "recorded", "texted", "sent", "logged", "said"}
)
OF_THE_LINE = frozenset(
    {"the", "line", "level", "mark", "reading", "canister", "box", "actual", "right", "correct"}
)
"""Between "but" and what is so: "but the line is at 430"."""
BUT_IT = frozenset({"it's", "its", "it", "that's", "thats", "really", "actually", "meant", "is", "was"})
TOLD_YOU = frozenset({"gave", "told", "reported", "handed"})
HANDED_TO = frozenset({"him", "her", "them", "pt", "patient", "iv", "po", "saline", "fluid", "bolus"})
"""Whoever is given something else than a line, and what."""
WROTE = frozenset({"wrote", "typed", "put", "entered", "sent", "texted"})
FIRST = frozenset({("typed",), ("keyed",), ("wrote",)})
"""Said first, of what was entered wrongly: "typed 520 for bed 12, it's 700"."""
WHO_WROTE = frozenset(
    {"i", "we", "someone", "somebody", "student", "nights", "days", "nurse", "tech", "he", "she", "they"}
)
READ_AS = frozenset({"read", "misread"})
MISREAD_REACH = 4
"""Words of "i read it as"."""
BUT_REACH = 6
"""How many words behind "but" the right value comes."""
BY_ACCIDENT = frozenset({"accident", "mistake", "error", "sorry", "oops", "upside", "down", "lol"})
"""Behind "i wrote 930" these say no more."""


def wrote(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "9 0600 was 390, i wrote 930": what was entered comes last, behind what is right."""
    if WROTE.isdisjoint(toks.words) and READ_AS.isdisjoint(toks.words):
        return False
    numbers = [i for i in items if i.role == "num" and not i.label]
    last = numbers[-1] if len(numbers) > 1 else None
    if (
        last is None
        or not {i.name for i in items if i.start >= last.end} <= BY_ACCIDENT
        or last.at
        or last.unit
    ):
        return False
    told = word(toks, last.start - 1) in WROTE and word(toks, last.start - 2) in WHO_WROTE
    return told or is_misread(last, toks)


def misread_line(items: tuple[Item, ...], toks: Toks) -> bool:
    """ "i misread the 6:35 pm on bed 10, it was 1180": which line was misread, and how it is."""
    if "misread" not in [i.name for i in items]:
        return False
    values = [i for i in items if i.role in {"num", "time", "bed"}]
    if len(values) - any(map(_is_bed, values)) != PAIR:
        return False
    line, level = values[0], values[-1]
    timed = line.role == "time" or line.full_clock or any(c.colon for c in line.clocks)
    told = not BUT_IT.isdisjoint(toks.said[line.end : level.start]) and level.role == "num"
    return timed and told and word(toks, line.start - 1) in {"the", "my", "at"}


def _is_bed(item: Item) -> bool:
    return item.role == "bed" or (item.label is not None and item.link in {"on", "for"})


def is_misread(wrong: Item, toks: Toks) -> bool:
    """ "9 had 690, i read the 960 upside down", "read it as 960": what somebody read there."""
    said = [w for w in toks.said[max(0, wrong.start - MISREAD_REACH) : wrong.start] if w != "it"]
    misread = "misread" in said or ("read" in said and not {"i", "we"}.isdisjoint(said))
    return misread and (said[-1:] == ["as"] or (said[-1:] == ["the"] and word(toks, wrong.end) == "upside"))


def _told_you(said: tuple[str, ...]) -> bool:
    """ "i told you 910", "gave you 910 for bed 6", "i gave 910 at 6": a line; "i gave him 500" is none."""
    by_me = any(w in TOLD_YOU and before in {"i", "we", ","} for before, w in pairwise((",", *said)))
    return by_me and HANDED_TO.isdisjoint(said)


def turn_behind(items: tuple[Item, ...], toks: Toks) -> int:
    """ "i put bed 8 260 but its 206", "i wrote 451 for 3, it's 415": where it turns to what is so, or 0."""
    if ENTERED.isdisjoint(toks.words) and TOLD_YOU.isdisjoint(toks.words):
        return 0
    said = toks.said
    stops = (k for k, w in enumerate(said) if w in {"but", ",", "."})
    turns = (k for k in stops if said[k] == "but" or _is_slip(said[:k]) or word(toks, k + 1) == "actual")
    turn = next((k for k in turns if _is_of_it(said[k + 1 : k + 1 + BUT_REACH])), 0)
    if turn and is_retimed(items, turn):
        return turn
    if not turn or any(i.role == "time" and i.start > turn for i in items):
        return 0
    before = [i for i in items if i.role == "num" and i.end <= turn]
    after = [i for i in items if i.role == "num" and i.start > turn]
    placed = len(before) > (not any(i.role == "bed" for i in items))
    told = placed and len(after) == 1 and after[0].start <= turn + BUT_REACH
    return turn if told and (ENTERED & set(said[:turn]) or _told_you(said[:turn])) else 0


def is_retimed(items: tuple[Item, ...], turn: int) -> bool:
    """ "i wrote 0400 for 12 but it was 0430": two times that can be nothing else, and the bed of the line."""
    times = [i for i in items if i.role == "time"]
    beds = [i for i in items if i.role in {"num", "bed"}]
    alone = len(beds) == 1 and beds[0].label is not None and beds[0].start < turn
    return alone and len(times) == PAIR and times[0].end <= turn < times[1].start


def _is_of_it(said: tuple[str, ...]) -> bool:
    """ "it's 206", "the line is at 430": whether it tells how it is."""
    rest = [w for w in said if w not in OF_THE_LINE]
    if {"up", "down"} & set(rest[:3]):
        return False  # "it's up to 700"
    if said[:1] == ("actual",):
        return True  # "wrongly entered as 680, actual 1475"
    return not BUT_IT.isdisjoint(rest[:2])


def _is_slip(said: tuple[str, ...]) -> bool:
    """ "i wrote", "accidentally put": whoever says so says that it was wrong."""
    who = any(w in ENTERED and before in {"i", "we"} for before, w in pairwise(said)) or said[:1] in FIRST
    return who or _told_you(said) or not {"accidentally", "mistakenly"}.isdisjoint(said)
