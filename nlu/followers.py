"""The cue that stands behind its number: "60 out", "20 of suction", "150 in it", "leak 2/7"."""

from __future__ import annotations

from collections.abc import Mapping

from .clock import clocks
from .items import FINDINGS, FULL_HOUR, NO_CLOCKS, Item
from .neighbours import number_follows
from .numbers import Toks, glued, is_digits, word
from .patterns.leads import BED_WORDS, MANY_LINES
from .pipeline import Cue

DIALLED = frozenset({10, 15, 20, 25, 30, 40})
"""Centimetres of water that a suction is set to; common practice, no source."""
NONE_OUT_OF = tuple((none, "out", "of") for none in ("nothing", "nil", "none", "zilch"))
DEEP = 3
"""Centimetres; a water seal is seldom filled higher."""
DEEPEST = 5
"""So deep may it be said to be; a seal of 20 is the suction."""
MOST_GRADES = frozenset({"4", "5", "7", "four", "five", "seven"})
"""How far the scales of air leaks go. Common practice, no source."""
LITTLE = 200
"""No seal, suction or vacuum is over it."""
ON_WHAT = frozenset({"when", "on", "after", "with", "while", "whilst", "again", "as", "during"})
CALLED = "called"
"""The line that is called by the time before it: "the 1800 mark"."""
CHECKS = frozenset({"suction", "wall", "seal"})
FOUND = CHECKS | FINDINGS
CLOSING = "ended"
"""Of what stood before it: "790 ml amt in old bottle"."""
DOING = frozenset({"i", "we", "they", "it", "was", "got", "is", "being"})
HOOKED = frozenset({"hooked", "connected", "attached", "put", "hung", "set", "went", "use", "used"})
HOOKED |= {"it", "up", "on"}
OFF = frozenset({"off", "down", "removed", "changed", "swapped", "switched", "replaced", "disconnected"})
TAKING = DOING | OFF | {"came", "took", "taken", "pulled", "the", "old", "one", "we'd", "i'd", "had", "box"}
AT = frozenset({"at", "@"})
THROWN = frozenset({"discarded", "binned", "thrown", "disposed", "tossed"})
ENDING = frozenset({"", ",", ";", ".", "!", ")", "and", "at", "@", "today", "this"})
"""Behind "before we hooked up" these end it; "before we hooked up the new one" is of the old one."""


def followed_by(item: Item, toks: Toks, cues: Mapping[int, Cue]) -> tuple[int, Item]:
    """The number with the role that the cue behind it gives, and where that cue ends."""
    if item.lead == "leakgrade" and item.unit not in {"ml", "litre"}:
        return _of_a_scale(item, toks)
    if item.lead == "leakgrade":
        item = item._replace(lead="")  # "small leak, 35 ml out since last check"
    opened, lead = _opened(item, toks, cues)
    if opened:
        return opened, item._replace(lead=lead)
    inside = cues.get(item.end)
    of_bed = inside is not None and _begins(item, toks) and number_follows(toks, inside.end)
    if inside is not None and inside.label == "inside" and item.lead in {"", "at"} and not of_bed:
        new = any(word(toks, k) == "new" for k in range(inside.start, inside.end))
        return inside.end, item._replace(lead="new" if new else "inside")
    cue = _behind(item, toks, cues)
    thrown = word(toks, item.end) in THROWN and word(toks, item.end + 1) in ENDING
    if thrown and item.lead in {"", "at"} and item.label is None:
        return item.end + 1, item._replace(lead="old")  # "1900 discarded"
    if cue is not None and cue.label == "fluid" and _came_out(cue, item, toks, cues):
        return item.end, item._replace(lead="amount")
    if cue is not None and cue.label == "fluid" and item.unit == "ml":
        cue = cues.get(cue.end, cue)  # "65 ml pus since 0700"
    if cue is not None and item.lead == "suction":
        return _led_twice(cue, item, toks)
    if cue is None or item.lead not in {"", "at", "to"}:
        return item.end, item
    return _led_by(cue, item, toks)


def _came_out(fluid: Cue, item: Item, toks: Toks, cues: Mapping[int, Cue]) -> bool:
    """ "120 dark red came out": how much came, and what it looked like."""
    came = cues.get(fluid.end + (word(toks, fluid.end) in {"fluid", "blood", "stuff", "drainage"}))
    if came is None or came.label not in {"amount", "out"} or item.lead not in {"", "at"}:
        return False
    told = toks.said[came.start : came.end][0] not in {"volume", "amount", "another", "extra"}
    timed = _is_clock(toks, came.end + (word(toks, came.end) in AT))
    return told and (timed or not number_follows(toks, came.end))


def _opened(item: Item, toks: Toks, cues: Mapping[int, Cue]) -> tuple[int, str]:
    """Where what says so ends, and of what: "40 in it before we hooked it up", "340 on insertion"."""
    if item.lead not in {"", "at", "new", "opens", "level", "levelat"}:
        return 0, ""
    inside = cues.get(item.end)
    end = inside.end if inside is not None and inside.label == "inside" else item.end
    end += word(toks, end) == "in"  # "new had 40 in before it was connected"
    said = cues.get(end)
    if said is not None and said.value == "behind" and word(toks, said.end) in ENDING:
        return said.end, "opens"
    if (off := _taken_off(toks, end)) and word(toks, off) in ENDING:
        return off, "old"
    hooked = _connected(toks, end)
    if hooked and word(toks, hooked) in {"the", "a"} and word(toks, hooked + 1) == "new":
        return end, "old"  # "had 1940 in it before we hooked up the new one"
    return (hooked, "opens") if hooked and word(toks, hooked) in ENDING else (0, "")


def _taken_off(toks: Toks, i: int) -> int:
    """Where "when I took it off", "when it was changed" ends, or 0."""
    end = i + 1
    while word(toks, end) in TAKING:
        end += 1
    said = toks.said[i + 1 : end]
    return end if word(toks, i) == "when" and not OFF.isdisjoint(said) else 0


def _connected(toks: Toks, i: int) -> int:
    """Where "before we hooked it up", "when it was connected" ends, or 0."""
    end = i + 1
    while word(toks, end) in DOING:
        end += 1
    if word(toks, i) not in {"before", "when"} or word(toks, end) not in HOOKED:
        return 0
    while word(toks, end) in HOOKED:
        end += 1
    return end


def _of_a_scale(item: Item, toks: Toks) -> tuple[int, Item]:
    """ "air leak 2/7", "grade 4 of 5": grade 2 of a scale that ends at 7."""
    end = item.end
    of = end + 1 + (word(toks, end) == "out")
    if word(toks, of - 1) == "of" and word(toks, of) in MOST_GRADES:
        return of + 1, item._replace(end=of + 1, clocks=NO_CLOCKS)
    if word(toks, end) == "/" and glued(toks, end) and glued(toks, end + 1) and is_digits(toks, end + 1):
        return end + 2, item._replace(end=end + 2, clocks=NO_CLOCKS)
    return end, item


def _behind(item: Item, toks: Toks, cues: Mapping[int, Cue]) -> Cue | None:
    at = item.end + 1 if word(toks, item.end) in {"of", "on", "in"} else item.end
    if at not in cues or cues[at].label == "filler":
        at += word(toks, at - 1) == "in" and word(toks, at) == "the"
    return cues.get(at)


def _led_by(cue: Cue, item: Item, toks: Toks) -> tuple[int, Item]:
    came = cue.label in {"amount", "out"} and word(toks, cue.end) in AT  # "90 gushed out at 0600"
    behind = number_follows(toks, cue.end) and not _is_clock(toks, cue.end + came)
    behind &= not (came and item.unit)  # "90 ml came out at 1815"
    called = cue.value == CALLED or word(toks, cue.end - 1) in MANY_LINES
    if cue.label == "level" and called and item.clocklike:
        return item.end, item._replace(lead="timeword")
    final = word(toks, cue.start) == "final" and not item.lead
    olds = toks.said[cue.start : cue.end] in {("old",), ("out", "of", "old")}  # "1760 old"
    final |= olds and not (item.lead or item.label)
    final |= word(toks, cue.end - 1) == "removal" and not item.lead  # "410 at removal"
    final |= cue.label == "old" and cue.value == CLOSING and not item.label
    timed = word(toks, cue.end - 1) == "removal" and len(word(toks, cue.end)) == FULL_HOUR
    timed &= bool(clocks(toks, cue.end))  # "50 mL at time of removal 1413"
    behind &= not (cue.label == "old" and (cue.value == CLOSING or timed))
    if cue.label == "old" and (cue.start > item.end or final) and not behind:
        return cue.end, item._replace(lead="old")
    if cue.label == "new" and cue.start > item.end and not behind and word(toks, cue.start - 1) == "in":
        return cue.end, item._replace(lead="new")  # "15 in new now"
    if cue.label == "since" and item.unit == "ml" and not (item.lead or item.at) and clocks(toks, cue.end):
        return item.end, item._replace(lead="amount")  # "15 only 10 ml since noon"
    if cue.label == "amount" and _begins(item, toks) and word(toks, cue.end) in ON_WHAT:
        return item.end, item  # "9 dumped on turning, line 1590": its bed
    if cue.value == "going" and _begins(item, toks):
        return item.end, item  # "12 draining well"
    at_time = item.at and item.clocklike and len(item.digits) == FULL_HOUR  # "@1910 gave report"
    of_bed = toks.said[max(0, item.start - 3) : item.start] in NONE_OUT_OF and item.label is not None
    if cue.label in {"amount", "out", "output"} and not (behind or at_time or of_bed):
        return cue.end, item._replace(lead="output" if cue.label == "output" else "amount")
    if cue.label == "opens" and word(toks, cue.start) in {"drained", "out", "already"} and not behind:
        return cue.end, item._replace(lead="opens")
    small = item.amount is not None and item.amount <= LITTLE
    of = word(toks, item.end) == "of" and cue.start == item.end + 1  # "20 of suction on 14" has its value
    if cue.label in CHECKS and small and (of or not behind) and not _is_bed_on_seal(cue, item, toks):
        deep = cue.label == "seal" and (item.amount or 0) > DEEPEST  # "-20 ws"
        return cue.end, item._replace(lead=cue.label, role="bad" if deep else item.role)
    return item.end, item


def _led_twice(cue: Cue, item: Item, toks: Toks) -> tuple[int, Item]:
    """ "4B -20 suction, 90 wall": the minus said suction already; no suction is 100 before "wall"."""
    if cue.label == "suction" and word(toks, item.start - 1) == "-" and not number_follows(toks, cue.end):
        return cue.end, item
    if cue.label == "wall" and (item.amount or 0) > max(DIALLED) and not number_follows(toks, cue.end):
        return cue.end, item._replace(lead="wall")
    if cue.value == "suction_on" and word(toks, cue.end - 1) == "on" and word(toks, cue.end) in BED_WORDS:
        return cue.end, item  # "ordered 10 cm suction on bed 17"
    return item.end, item


def _is_clock(toks: Toks, i: int) -> bool:
    """ "90 out 0600": a time, and no number that the cue leads."""
    text = word(toks, i)
    return len(text) == FULL_HOUR and text[0] == "0" and text.isdecimal()


def _is_bed_on_seal(cue: Cue, item: Item, toks: Toks) -> bool:
    """ "2 suction 20, 9 waterseal": bed 9, or so many centimetres? "1 suction 20, 3 water seal": bed 3 too,
    where no bed has a word for it."""
    if cue.label != "seal" or not _begins(item, toks):
        return False
    water = toks.said[cue.start : cue.end] != ("seal",) and not item.unit
    bare = water and item.start > 1 and is_digits(toks, 0) and toks.words.isdisjoint(BED_WORDS)
    return (item.amount or 0) > DEEP or bare


def _begins(item: Item, toks: Toks) -> bool:
    """Whether it can be the bed with which something begins."""
    return item.label is not None and word(toks, item.start - 1) in {"", ",", ";", "and", "."}


def may_be_bed(item: Item, before: tuple[Item, ...], toks: Toks) -> bool:
    """ "12 suction", "3 and 5 on suction": the last of the beds, and no value; "5, 20 suction" is one."""
    if item.label is None or (before and before[-1].role != "sep") or word(toks, item.end) == "of":
        return False
    beds = [i for i in before if i.role == "bed" or (i.label is not None and not i.lead)]
    if any(i not in beds and i.role != "sep" and i.value != "bed" for i in before):
        return False
    set_to = len(beds) == 1 and before[-1].value == "," and (item.amount or 0) in DIALLED
    return not (set_to and word(toks, item.end) not in {"on", "all", "both"})


def is_found_of(both: Cue, cues: Mapping[int, Cue]) -> bool:
    """ "both swinging", "both have no leak": whether what was found of the tubes follows."""
    near = (cues[k] for k in range(both.end, both.end + 3) if k in cues)
    return any(cue.label in FOUND for cue in near)
