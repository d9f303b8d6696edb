"""What a clause says of a number or an event beside it, although the reading leaves it unexplained.

A bare number, an event or a finding is only certain if nothing in its clause is of another device or another
matter, or was not understood. Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .behind import is_remark_behind
from .clauses import is_strange
from .items import Item
from .numbers import Toks, word
from .patterns.asides import CALLED, DONE_TO, STAFF
from .patterns.leads import BED_WORDS
from .patterns.remarks import REMARKS
from .roles import CHECK_LIMITS
from .rules import Rule, Rules
from .weighty import is_closing
from .whose import WHOSE, named_before_bed

SIDED = frozenset(
    {"chest", "lung", "sided", "hemi", "base", "thorax", "pleura", "post", "ant", "lat", "upper"}
)
TITLES = frozenset({"dr", "drs", "mr", "mrs", "ms", "miss", "prof", "by", "per", "initials"})
"""Behind these a word is a name."""
TAKEN = frozenset({"got", "gets", "collected", "emptied", "gushed", "poured", "out"})
COLUMNS = 10
"""A leak meter has fewer columns; common practice, no source."""
BEHIND = frozenset({"after", "before", "post", "during", "following"})
GOING = frozenset({"hospital", "ambulance", "sent", "transferred", "discharged", "home", "rehab", "hospice"})
"""Beside these "left" is what the patient did."""
SHIFTS = frozenset({"nights", "days"})
LEAVERS = SHIFTS | {"they", "he", "she", "we", "i", "nurse", "shift", "evenings", "lates", "earlies"}
PAIR = 2
"""Words of what is typed with one space: 9 14, 1 340."""
NAMED_BY = DONE_TO | CALLED
OF_THE_SIDE = SIDED | REMARKS
PLUSES = frozenset({"+", "plus"})
NAMES = frozenset({"level", "levelat", "old", "new", "opens", "amount", "output", "tubeword", "canister"})

UP_TO_NOW = frozenset({"to", "till", "until", "up", "now", "so", "far", "is", "was"})
"""Between a length of time and how much came in it."""


def _of_another(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "wound vac canister changed", "20g IV placed": an event of another device."""
    foreign = any(i.role == "foreign" for i in clause)
    yield from ("the event may be of another device" for i in clause if foreign and is_closing(i))


def _ordered(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "suction order for bed 27 is 20": a bare number in the clause of an order is no level."""
    orders = any(i.role == "cue" and i.value == "order" for i in clause)
    bare = [i for i in clause if i.role == "level" and i.lead in {"", "at"} and not i.unit]
    bare = [i for i in bare if not _is_told_before_order(i, clause)]
    yield from ("the number may be what was ordered" for _ in bare if orders)


def _is_told_before_order(level: Item, clause: tuple[Item, ...]) -> bool:
    """ "13 300 at 0700 provider wants water seal": more than a dial shows, and its time before the order."""
    order = next((i.start for i in clause if i.role == "cue" and i.value == "order"), 0)
    timed = any(i.role == "time" and level.end <= i.start < order for i in clause)
    return timed and (level.amount or 0) > CHECK_LIMITS["suction"]


def _unread(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "got 500 LR bolus": a bare number with a word in its clause that may say what it is."""
    levels = [i for i in clause if i.role == "level"]
    bare = [i for i in levels if i.lead in {"", "at"}]
    articles = [word(toks, i.start - 1) == "a" for i in bare]  # "got a liter"
    got = [word(toks, i.start - 1 - a) in TAKEN for i, a in zip(bare, articles, strict=True)]
    if any(g and not _is_read_off(i, clause, toks) for i, g in zip(bare, got, strict=True)):
        yield "what was got may be an amount"
    if not PLUSES.isdisjoint(toks.words) and _is_added(clause, bare, toks):
        yield "a plus says how much more"
    if "#" in toks.words and any(word(toks, i.start - 1) == "#" and not i.unit for i in levels):
        yield "which of several, and no level"
    if not bare:
        return
    cues = [i for i in clause if i.role == "cue"]
    if any(i.value == "neg" and i.start > bare[0].start for i in cues):
        yield "something of the number is denied"
    if any(i.value in NAMES for i in cues):
        return
    for item in clause:
        named = word(toks, item.start - 1) in TITLES and item.name not in NAMED_BY  # "dr lee aware"
        if is_strange(item, toks) and not (
            named
            or _is_far_behind(item, clause)
            or _is_behind_what(item, clause, toks)
            or _is_behind_line(item, clause, toks)
            or _is_behind_finding(item, clause)
        ):
            yield f"{item.name!r} may say what the number is"


def _is_read_off(level: Item, clause: tuple[Item, ...], toks: Toks) -> bool:
    """ "got 650 on 17 at 2000": what was read then; an amount is not "at" a moment."""
    beds = (i.start - level.end for i in clause if i.role == "bed")
    on = word(toks, level.end) == "on" and any(0 < apart <= len(("on", "bed")) for apart in beds)
    timed = any(i.role == "time" and i.at and i.full_clock for i in clause)
    return on and timed and word(toks, level.start - 1) == "got"


def _is_added(clause: tuple[Item, ...], bare: list[Item], toks: Toks) -> bool:
    """Whether a plus stands before a bare number, or before what is no sure time."""
    added = [i for i in clause if word(toks, i.start - 1) in PLUSES]
    return any(i in bare or i.loose_time or (i.full_clock and i is clause[-1]) for i in added)


def _is_behind_line(item: Item, clause: tuple[Item, ...], toks: Toks) -> bool:
    """ "340 at 1900 dark in there": behind a line that was told whole."""
    return any(is_remark_behind(clause, k, toks) for k, i in enumerate(clause) if i.end <= item.start)


def _is_behind_finding(item: Item, clause: tuple[Item, ...]) -> bool:
    """ "340 at 1900 swinging grand": a remark on what was found."""
    level = max(i.end for i in clause if i.role == "level")
    return any(i.value in {"leak", "tidal"} and level <= i.start < item.start for i in clause)


def _is_behind_what(item: Item, clause: tuple[Item, ...], toks: Toks) -> bool:
    """ "700 at 1800 after turning": the level has its time, and this is what it was read after."""
    timed = any(i.role == "time" and i.end < item.start for i in clause)
    return timed and word(toks, item.start - 1) in BEHIND


def _is_far_behind(item: Item, clause: tuple[Item, ...]) -> bool:
    """Whether a remark had begun before this word: more than three words behind the number."""
    return item.start > max(i.end for i in clause if i.role == "level") + 3


def _verb(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "left recovery": with a word behind it that was not understood, no side."""
    for item in clause:
        if item.role == "tube" and word(toks, item.start) == "rt" and word(toks, item.end) in CALLED:
            yield "who came, and no side"
    for before, item in pairwise(clause):
        said = before.role == "tube" and word(toks, before.start) == "left" and before.end == item.start
        if (
            said
            and item.role == "level"
            and item.full_clock
            and not (item.lead or GOING.isdisjoint(toks.words))
        ):
            yield "left may be what the patient did, and when"
        if said and item.unread and item.name not in OF_THE_SIDE:
            yield "left may be what the patient did"
        if said and word(toks, before.start - 1) in LEAVERS and word(toks, before.end) in BED_WORDS:
            yield "left may be what somebody did"  # "nights left bed 2 at 640"


def _columns(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "bubbling chamber 2": which column bubbles is how large the leak is, and no level."""
    for leak, item in pairwise(i for i in clause if not (i.role == "cue" and i.value == "canister")):
        leaks = leak.role == "cue" and leak.value == "leak" and leak.name != "none"
        if leaks and item.role == "level" and not item.unit and (item.amount or 0) <= COLUMNS:
            yield "the number may be how large the leak is"


def _numbered(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 12 1 340": one thousand and more, or tube 1?"""
    for before, item in pairwise(clause):
        named = before.role == "bed" or (before.role == "cue" and before.value in {"canister", "tubeword"})
        bare = item.role == "level" and not (item.lead or item.unit) and named
        apart = item.end - item.start == PAIR and toks[item.start].is_digits
        if bare and apart and toks[item.end - 1].is_digits and word(toks, item.end - 1)[0] != "0":
            yield "the first digit may be the number of a tube"


def _same_as(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "same as 1050": since 10:50, or at that level?"""
    for before, item in pairwise(clause):
        same = before.role == "cue" and before.value == "same" and word(toks, before.end - 1) == "as"
        if not same or item.role != "time" or item.amount is None:
            continue
        if not _on_the_hour(item):
            yield "a level may be meant that is the same"
        if item.label is not None and not item.sure_time:
            yield "a bed may be meant that is the same"


def _unchanged(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "thoracic rounded on 9, no changes": somebody did something, and nothing came of it."""
    cues = {i.value: i.start for i in clause if i.role == "cue"}
    same = 0 if "mark_of_question" in cues else cues.get("same", 0)
    for item in clause:
        said = item.unread and item.start < same
        if said and (item.name in STAFF or is_strange(item, toks)):
            yield f"{item.name!r} may say what has not changed"


def _on_the_hour(item: Item) -> bool:
    return all(clock.minute == 0 for clock in item.clocks)


def _dated(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "chest tube day 3", "this shift is 340": the number behind a word for a length of time is no level."""
    closing = any(i.role == "cue" and i.value == "closing" for i in clause)
    for before, item in pairwise(clause):
        counted = before.role == "cue" and before.value in {"window", "span"}
        if closing and before.name in SHIFTS:
            continue  # "closing line for nights 660"
        next_to = all(word(toks, k) in UP_TO_NOW for k in range(before.end, item.start))
        if counted and next_to and item.role == "level" and item.lead in {"", "is"}:
            yield "a number behind a word for a time is no level"


def _fluid_amount(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "serosang 50 ml", "50 ml of blood": a level, or how much of it came?"""
    for before, item in pairwise(clause):
        fluid = before.role == "cue" and before.value == "fluid" and before.end == item.start
        if fluid and item.role == "level" and item.unit and item.lead in {"", "at"}:
            yield "an amount of a fluid may be no level"


ALOUD = Rules(
    (
        *WHOSE,
        Rule(_of_another, frozenset({"foreign"})),
        Rule(_ordered, frozenset({"order"})),
        Rule(_dated, frozenset({"window", "span"})),
        Rule(_fluid_amount, frozenset({"fluid"})),
        Rule(_verb, frozenset({"tube"}), frozenset({"rt", "left"})),
        Rule(_same_as, frozenset({"same"}), frozenset({"as"})),
        Rule(_unchanged, frozenset({"same"})),
        Rule(_columns, frozenset({"leak"})),
    )
)
"""For dictated messages; what was not understood beside a number `leftovers` finds in them."""
OF_A_CLAUSE = Rules(
    (
        *ALOUD,
        Rule(named_before_bed, frozenset({"word"})),  # dictated, "head five" is bed five
        Rule(_unread, frozenset({"level"})),
        Rule(_numbered, frozenset({"bed"})),
    )
)
