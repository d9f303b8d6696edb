"""Numbers that may be how much came, and no line: over a length of time, each hour, beside a tube with none.

Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise, takewhile

from .followers import DIALLED
from .gains import HOURLY
from .items import AMOUNTS, Item, is_now
from .numbers import Toks, is_digits, starts_number, word
from .rules import Rule

IS_STILL = frozenset(
    {"is", "was", "still", "the", "it", "uh", "um", ",", ":", "-", "bed", "drain", "line", "chest", "tube"}
)
AMOUNTS_ASKED = frozenset({"hourly", "hourlies", "volumes", "rate", "trend"})
BARE = frozenset({"", "at", "inside"})
OF_BOTH = frozenset({"tubes", "drains", "chest", "cts", "sides", "tube", "drain", "at", "are", "sitting"})
ENDS = frozenset({"", ",", ".", ";", "side", "tube", "drain"})
PLURAL = frozenset({"tubes", "drains", "cts", "sides"})
"""A number behind one of these is no name of a tube where both were said."""
SUMMED = frozenset({("window", "shift"), ("window", "last_shift"), ("window", "24h")})
MUCH = frozenset({"heap", "heaps", "lot", "lots", "load", "loads", "ton", "tons", "gush", "bunch", "much"})
WITHIN = frozenset({"in", "over", "for", "the", "during", "within", "x", "of", "/", "per", "last", "past"})
THROUGHOUT = frozenset({"through", "thru", "throughout"})
"""Behind a number: in all that time, and not when."""
OF_ALL = frozenset({"all", "both", "each", "everyone"})
SET = frozenset({"seal", "suction", "wall", "suction_on"})
NOTHING = frozenset({"nil", "nothing", "none", "zero", "nada", "0", "zilch"})


def _over(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "45 ml last hour", "300 this shift": what came over a length of time is an amount, if it is ours."""
    last: Item | None = None
    beside = parted = named = False
    for item in items:
        named |= item.value == "tubeword"  # "urine for 8 is 22 this hr, chest tube bed 8 at 26"
        if item.role != "cue":
            parted = item.role == "sep"
            last = last if item.role in {"bed", "tube", "sep"} else item
            bare = item.role == "level" and item.lead in ({""} if named else {"", "at"})
            if beside and bare and not item.unit:
                yield "what is beside an amount of another device may be an amount too"
            continue
        of_another = last is not None and last.role in {"foreign", "claimed"}
        beside |= of_another and item.value == "span"
        over = item.value in ({"span"} if parted else {"span", "window", "since"})  # "640. clear as day"
        if last is not None and over and (_is_amount_of_it(last) or _is_right_before(last, item, toks)):
            yield "an amount over a length of time"


def _or_when(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "8 drained at 1500": how much came, or when; with an amount beside it, it is when."""
    for item in items:
        whole = item.full_clock or item.spoken_clock
        if item.role == "volume" and item.lead == "amount" and item.at and whole and not item.unit:
            yield "how much came, or when"


def _stands_now(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "24 turned and dumped, 780 now": how much came, or where the line stands now."""
    for before, item, after in zip(items, items[1:], items[2:], strict=False):
        apart = before.role == "sep" and item.role == "volume" and item.lead == "amount"
        if apart and after.role == "time" and word(toks, after.start) == "now":
            yield "how much came, or the line"


def _when_again(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "clamped 20 min ago at 1955": once more when, or a line."""
    for before, item in pairwise(items):
        ago = before.role == "time" and word(toks, before.end - 1) == "ago"
        if ago and item.role == "level" and item.at and item.full_clock and not item.unit:
            yield "when that was, or a line"


def _is_amount_of_it(item: Item) -> bool:
    """A bare level, or what is a time only for want of another place: "240 for the night, line 880"."""
    return item.loose_time or _is_bare_level(item)


def _is_right_before(item: Item, over: Item, toks: Toks) -> bool:
    """ "level 200 in last hour": that too may be an amount; where it rose to ("to 700 in 20 min") is none."""
    risen = word(toks, item.start - 1) == "to"
    return item.role == "level" and not risen and WITHIN.issuperset(toks.said[item.end : over.start])


def _is_bare_level(item: Item) -> bool:
    return item.role == "level" and item.lead in BARE


def _before_bed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "for the shift 12 is 340", "shift total 12 is 340": how much came, or its line."""
    if any(i.role == "time" or i.value == "closing" for i in items):
        return
    for cue, bed, level in zip(items, items[1:], items[2:], strict=False):
        led = cue.role == "cue" and bed.role == "bed" and (cue.value, cue.name) in SUMMED
        if led and _is_bare_level(level) and level.lead == "":
            yield "an amount over a length of time"


def _heading_beds(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "drained bed 3 210, bed 4 310", "totals 3 210, 4 310": said before the beds of a row, it is how much
    came from each, perhaps."""
    first = next((k for k, i in enumerate(items) if i.role == "bed"), 0)
    head = any(
        i.role == "cue" and (i.value == "amount" or (i.value, i.name) == ("ask", "total"))
        for i in items[:first]
    )
    if not head or any(i.role not in {"cue", "sep", "time"} or i.value == "level" for i in items[:first]):
        return
    for bed, level in pairwise(i for i in items[first:] if i.role != "tube"):
        if bed.role == "bed" and _is_bare_level(level) and level.lead == "":
            yield "how much came from each of a row, or its line"


def _changed_when(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "closing 1210 @0645, swapped it 0650, new one at 10": when it changed, or the old line was read."""
    for k, (item, behind) in enumerate(pairwise(items)):
        if item.role != "cue" or item.name != "exchanged" or behind.role != "time":
            continue
        before = list(takewhile(lambda i: i.role not in {"bed", "tube"}, reversed(items[:k])))
        closed = any(i.role == "cue" and i.value in {"closing", "old"} for i in before)
        timed = any(i.role == "time" for i in before)
        if closed and timed and any(i.role in AMOUNTS for i in items[k + 2 :]):
            yield "when the canister was changed"


def _of_scan(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "6 ct 1500", "22 ct 700": the line of a chest tube, or when the patient went to be scanned."""
    for bed, cue, said in zip(items, items[1:], items[2:], strict=False):
        scanned = bed.role == "bed" and cue.value == "tubeword" and toks.said[cue.start : cue.end] == ("ct",)
        bare = said.role in {"level", "time"} and said.lead == "" and not (said.unit or said.at)
        whole = said.start == cue.end and (said.full_clock or said.digits[1:] == "00")
        alone = not any(i.role in {"time", "level"} and i.start == said.end for i in items)
        timed = any(i.role == "time" and i is not said for i in items)
        if scanned and bare and whole and alone and not timed:
            yield "a line, or when it was"


def _as_much(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "put out the same as last hour": nothing more, or as much again? "6 same as last hour" is the line."""
    for before, item in zip((None, *items), items, strict=False):
        if item.role != "cue" or item.value != "same" or item.name != "amount":
            continue
        start = before.end if before is not None and before.role in {"bed", "tube"} else 0
        plain = word(toks, item.start + 1) == "as" and IS_STILL.issuperset(toks.said[start : item.start])
        if not plain or any(i.role in AMOUNTS for i in items):
            yield "as much again, or nothing"


def _summed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "hourlies 0300 50, 0400 60": what drained, hour by hour, and no levels."""
    asked = any(i.role == "cue" and i.value == "ask" and word(toks, i.start) in AMOUNTS_ASKED for i in items)
    if asked and any(i.role == "level" and i.lead in {"", "at"} for i in items):
        yield "amounts of each hour are no levels"


def _each_hour(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "17 hrly 35", "level 35 hourly": how much came in an hour, or all night, and no line."""
    for item in items:
        before, behind = word(toks, item.start - 1), word(toks, item.end)
        over = behind in THROUGHOUT or (behind in HOURLY and word(toks, item.end + 1) in ENDS)
        if item.role == "level" and (over or (before in HOURLY and _is_bare_level(item))):
            yield "an amount of each hour is no level"


def _beside_nothing(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "right nil, left 60": where nothing came from one tube, a bare number is how much came, or a line."""
    nothing = any(
        i.role == "cue" and i.value == "same" and word(toks, i.start) in NOTHING for i in items
    ) and any(i.role == "tube" for i in items)
    tube = False
    for item in items if nothing else ():
        if tube and _is_bare_level(item):
            yield "an amount of this tube, or its line"
        tube = item.role == "tube" or (tube and item.role == "cue")


def _of_several(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "90 the first hour and 40 the 2nd": of which of several, and no level."""
    for item, after in pairwise(items):
        counted = after.role == "cue" and after.value == "choice" and after.start == item.end
        if counted and _is_amount_of_it(item):
            yield "a number of one of several"


def _before_an_amount(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "14 another 20, 15 another 40": right before the word for an amount stands its bed."""
    for item, cue, after in zip(items, items[1:], items[2:], strict=False):
        leads = cue.role == "cue" and cue.value == "amount" and after.role == "volume"
        bare = item.role == "level" and item.lead == "" and item.label is not None
        if leads and bare and cue.start == item.end:
            yield "a bed, and no level"


def _of_both(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "both tubes 340", "both at 340 and 120": of each of the two, or of which?"""
    told = [k for k, text in enumerate(toks.said) if text == "both"]
    named = any(word(toks, k + 1) in OF_BOTH or starts_number(toks, k + 1) for k in told)
    named |= any(
        text == "each" and word(toks, k + 1) in ENDS for k, text in enumerate(toks.said)
    )  # "340 each"
    joined = any(i.role == "cue" and i.value == "join" for i in items)
    beds = {i.label for i in items if i.role == "bed"}
    of_one = any(i.role == "tube" and PLURAL.isdisjoint(toks.said[i.start - 1 : i.end]) for i in items)
    if named and not joined and len(beds) < 2 and not of_one:
        yield from ("a line of both" for i in items if i.role == "level")


def _after_an_amount(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "r drained 20, l 40": behind how much came from one drain, a bare number of another one; in "14
    drained 20, 15 640" the next bed is no level of the first one."""
    amount = other = False
    for before, item in zip((None, *items), items, strict=False):
        if item.role == "volume":
            amount, other = True, False
        other |= amount and item.role in {"bed", "tube"}
        if item.role == "cue" and item.value in {"level", "levelat", "kind"}:
            amount = False
        bare = item.role == "level" and item.lead == ""
        if other and bare:
            yield "how much came from this one, or its line"
        opens = before is not None and before.role == "sep"
        if amount and not other and opens and bare and item.label is not None and not item.unit:
            yield "the next bed, or the line of this one"


def _beds_of_a_sum(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "total 4 and 5 since 0200", "24h total on 6": which beds are summed, and how much of none."""
    for k, item in enumerate(items):
        if item.role != "output" or item.label is None or item.unit:
            continue
        if word(toks, item.start - 1) in {"on", "for"}:
            yield "a bed that is summed, or how much"
        after = items[k + 1 : k + 3]
        joined = len(after) > 1 and after[0].value in {"and", "&", ","} and after[1].role == "bed"
        bare = joined and after[1].start == after[0].end
        if bare and not any(i.role == "bed" for i in items[:k]):
            yield "a bed that is summed, or how much"


def _set_apart(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "a heap came out, 560": how much that was, or where the line stands now."""
    for item in items:
        apart = item.role == "volume" and not item.about and word(toks, item.start - 1) in {",", "and", "-"}
        apart = apart and word(toks, item.end) not in {"since", "in", "over", "this", "last"}
        if apart and not MUCH.isdisjoint(toks.said[: item.start]):
            yield "how much came, or the line"


def _behind_suction(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "connected to suction, 20": what it is set to, or the line."""
    for before, item in zip(items, items[2:], strict=False):
        bare = item.role == "level" and not item.unit and item.lead in BARE and item.amount in DIALLED
        if bare and before.name == "suction_on" and item.start == before.end + 1:
            yield "what the suction is set to, or the line"


def _out_when(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "7 210 out at 1845": the tube that came out then, how much came, or the line."""
    said = [i for i in items if i.role != "sep"]
    for item, cue, after in zip(said, said[1:], said[2:], strict=False):
        out = cue.role == "cue" and cue.value == "out" and cue.start <= item.end + 1
        if out and item.role == "level" and after.role == "time":
            yield "a line, how much came, or the last line of a tube that is out"


def _bed_behind_setting(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 9 suction on, 10, bubbling", "seal was 1 cm and is now 2": what it is set to, or one more bed."""
    for k, item in enumerate(items):
        alone = item.role == "bed" and not item.lead and is_digits(toks, item.start)
        if not alone or word(toks, item.end) not in {"", ",", ".", ";"}:
            continue
        told = [i.value in SET or i.name in SET for i in items[:k]]
        now = word(toks, item.start - 1) == "now" and any(told)
        cut = k > 1 and items[k - 1].value == "," and told[-2]
        if (now or cut) and any(i.role == "bed" for i in items[:k]):
            yield "what that is set to, or a bed"


def _now_or_all(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "203 now 640, 205 now 310 all 1900": when each was read, or all."""
    times = [i for i in items if i.role == "time"]
    led = (word(toks, i.start - 1 - (word(toks, i.start - 1) in {"at", "@", "taken"})) for i in times)
    if any(map(is_now, times)) and not OF_ALL.isdisjoint(led):
        yield "now, or the time of all"


OVER_TIME = (
    Rule(_now_or_all, frozenset({"time"}), OF_ALL),
    Rule(_bed_behind_setting, SET | {"what"}),
    Rule(_out_when, frozenset({"out"})),
    Rule(_set_apart, frozenset({"volume"}), MUCH),
    Rule(_behind_suction, frozenset({"what"})),
    Rule(_over, frozenset({"span", "window", "since"})),
    Rule(_before_bed, frozenset({"window", "ask"})),
    Rule(_heading_beds, frozenset({"amount", "ask"})),
    Rule(_changed_when, frozenset({"kind"})),
    Rule(_of_scan, frozenset({"tubeword"}), frozenset({"ct"})),
    Rule(_beds_of_a_sum, frozenset({"output"})),
    Rule(_summed, frozenset({"ask"})),
    Rule(_as_much, frozenset({"same"})),
    Rule(_each_hour, frozenset({"level"}), HOURLY | THROUGHOUT),
    Rule(_beside_nothing, frozenset({"same"})),
    Rule(_of_several, frozenset({"choice"})),
    Rule(_before_an_amount, frozenset({"volume"})),
    Rule(_of_both, frozenset({"level"}), frozenset({"both", "each"})),
    Rule(_after_an_amount, frozenset({"volume"})),
    Rule(_or_when, frozenset({"volume"}), frozenset({"at", "@"})),
    Rule(_stands_now, frozenset({"volume"}), frozenset({"now"})),
    Rule(_when_again, frozenset({"level"}), frozenset({"ago"})),
)
