"""What is counted and is none of ours: "asleep after 2 stories", "walked 3 laps". Called by `recast`."""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .items import Item
from .numbers import Toks, numbers, starts_number, word
from .patterns.leads import BED_WORDS
from .patterns.numerals import NUMERALS
from .patterns.ownclauses import OTHERS
from .rules import Rule

_THINGS = """
drs doctors nurses staples sutures stitches people persons person assist
story stories book books lap laps length lengths step steps stairs flight flights popsicle popsicles biscuit
biscuits cookie cookies cracker crackers bite bites sip sips sandwich sandwiches nap naps cartoon cartoons
episode episodes song songs game games visitor visitors pillow pillows blanket blankets puzzle puzzles joke
jokes walk walks dose doses tablet tablets nebs nebulisers nebulizers vomits stools nappies diapers feeds
puffs
spoonfuls mouthfuls friends relatives kids children sisters brothers daughters sons
"""
THINGS = frozenset(_THINGS.split())
LENGTHS = frozenset({"m", "ft", "feet", "foot", "meters", "metres", "yards", "yds"})
WALKING = frozenset({"walked", "ambulated", "mobilised", "mobilized", "walk", "walking", "mobilising"})
DAYS = frozenset({"day", "days", "week", "weeks", "wk", "wks", "month", "months"})
BEFORE = frozenset({"after", "for", "since"})
"""Before what is counted these tell no time."""
COUNTED = THINGS | LENGTHS | DAYS
GRAFTED = frozenset({"cabg", "bypass", "grafts"})
FEW, FAR = 20, 1000
SEVERAL = frozenset({"beds", "rooms", "patients", "pts"})
EVERY = frozenset({"all", "my", "our", "the"})
OPENING = 4
"""Words before how many there are."""
OWNED = frozenset({"my", "our", "mine", "ours", "these", "those", "got", "have", "doing"})
BEFORE_COUNT = OWNED | {
    "okay",
    "ok",
    "so",
    "um",
    "uh",
    "hi",
    "hey",
    "hello",
    "here",
    "are",
    "i",
    "i've",
    "we",
}
BEFORE_COUNT |= {"i'm", "we've", "just", "right", "now", "and", "for", "is", "here's", "yeah", "alright", ","}
BEHIND_COUNT = frozenset(
    {"of", "mine", "ours", "tonight", "today", "this", "shift", "for", "you", "to", "do"}
)
LINES = frozenset({"lines", "marks", "readings", "drains", "tubes", "ones"})
BEHIND_COUNT |= LINES | {"are", "is", "um", "uh", ",", ":", ".", "-"}
OF_DAY = frozenset({"tonight", "tonite", "today", "this"})
COUNTING = SEVERAL | EVERY | OWNED | LINES


def _is_counted(toks: Toks, k: int, end: int) -> bool:
    """Whether what follows a number is counted by it: laps, "walked 50 m", "3 days post op"."""
    if word(toks, end) in LENGTHS:
        return word(toks, k - 1) in WALKING
    return word(toks, end) in THINGS or (word(toks, end) in DAYS and word(toks, end + 1) in {"post", "old"})


def tallies(toks: Toks, *, voice: bool = False) -> Iterator[tuple[int, int]]:
    """Where each begins and ends, with an "after" before it; one that begins the message may be a bed."""
    for k in range(2, len(toks)) if "x" in toks.words and not GRAFTED.isdisjoint(toks.words) else ():
        if word(toks, k - 1) == "x" and word(toks, k - 2) in GRAFTED and len(word(toks, k)) == 1:
            yield k - 1, k + 1  # "CABG x3"
    if not voice and word(toks, 0) in NUMERALS and word(toks, 1) in OTHERS:
        yield 0, 2  # "two porters and I took bed 15 to CT"
    for k in range(1, len(toks)) if not COUNTED.isdisjoint(toks.words) else ():
        far = FAR if word(toks, k - 1) in WALKING else FEW
        ends = [n.end for n in numbers(toks, k) if n.style == "plain" and n.value <= far]
        end = next((end for end in ends if _is_counted(toks, k, end)), 0)
        if end and word(toks, k - 1) not in BED_WORDS:  # "bed six feeds six forty"
            yield k - (word(toks, k - 1) in BEFORE), end + 1


def how_many(toks: Toks) -> Iterator[tuple[int, int]]:
    """ "three beds 1800: bed 1 - 90, bed 6 - 1005", "all three 1800: bed 1 90": how many lines come."""
    if toks.words.isdisjoint(COUNTING):
        return
    named = [k for k in range(len(toks) - 1) if word(toks, k) in BED_WORDS and starts_number(toks, k + 1)]
    if len(named) < 2:
        return
    for k in range(min(named[0], OPENING)):
        counts = [n for n in numbers(toks, k) if n.style == "plain" and 1 < n.value <= FEW]
        ends = [n.end for n in counts]
        end = next((end for end in ends if word(toks, end) in SEVERAL), 0)
        timed = [end for end in ends if word(toks, k - 1) in EVERY and _is_time_of_all(toks, end, named[0])]
        if end or timed:
            yield k, end + 1 if end else timed[0]
        elif any(n.value == len(named) and _is_owned(toks, k, n.end, named[0]) for n in counts):
            yield k - (word(toks, k - 1) in OWNED), named[0]  # "my two tonight" is no hour either


def _is_owned(toks: Toks, k: int, end: int, bed: int) -> bool:
    """ "okay my three, bed one ...", "so my two tonight bed 3 210": so many as come, and no hour."""
    before, behind = toks.said[:k], toks.said[end:bed]
    owned = word(toks, k - 1) in OWNED or word(toks, end) in LINES or behind[:2] == ("of", "mine")
    return owned and BEFORE_COUNT.issuperset(before) and BEHIND_COUNT.issuperset(behind)


def _hour_or_how_many(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "my four tonight bed 1 100 bed 2 200": so many beds, of which two are told, or four o'clock?"""
    for item in items:
        lone = item.role == "time" and any(clock.style == "hour" for clock in item.clocks)
        if lone and word(toks, item.start - 1) in OWNED and word(toks, item.start + 1) in OF_DAY:
            yield "how many beds, or an hour"


def _is_time_of_all(toks: Toks, k: int, bed: int) -> bool:
    """ "all three 1800: bed 1": a time and a stop, and then the first bed."""
    k += word(toks, k) in {"at", "@"}
    return any(end + 1 == bed and word(toks, end) in {":", ",", "-"} for end, _ in clocks(toks, k))


PERCENT = frozenset({"%", "percent"})
FILLED = frozenset({"full", "filled", "empty", "of", "leak", "sats", "spo2"})
ALL_OF = frozenset({"on", "are", "at", "no", "have", "with", "w", "off", "tubes", "drains", "beds", "of"})
"""Behind "all three" these are of all of them; "all three thirty" is when."""
PARTS = PERCENT | {"us", "all"}


def parts(toks: Toks) -> Iterator[tuple[int, int]]:
    """ "100% on this one", "two of us looked": how sure, and how many; "80% full" tells of the canister."""
    for k in range(len(toks)) if not PARTS.isdisjoint(toks.words) else ():
        found = [n for n in numbers(toks, k) if n.style == "plain" and n.value <= FAR]
        end = next((n.end for n in found if _is_part(toks, n.end)), 0)
        if end:
            yield k, end + 1
        elif word(toks, k - 1) == "all" and word(toks, k) in NUMERALS and word(toks, k + 1) in ALL_OF:
            yield k, k + 1  # "all three on 20"


def _is_part(toks: Toks, end: int) -> bool:
    if word(toks, end) == "of":
        return word(toks, end + 1) == "us"
    return word(toks, end) in PERCENT and word(toks, end + 1) not in FILLED


HOW_MANY = Rule(_hour_or_how_many, frozenset({"time"}), OF_DAY)
