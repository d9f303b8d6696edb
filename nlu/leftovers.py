"""What a reading leaves unread beside its numbers: the words that show that something was misheard.

In dictation any word that was not understood next to a bed, number or time is a reason to ask; typed
messages are full of remarks, so there only a word between a cue and its number is.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .asking import asking_aloud
from .begun import begun, begun_aloud
from .behind import BEHIND_A_LINE, PEOPLE, is_company, is_remark, is_remark_behind
from .clauses import of_clauses
from .clock import clocks
from .corrections import BELONGS
from .flow import OVER_TIME
from .gains import CLIMBS
from .inclause import ALOUD, OF_A_CLAUSE
from .inverted import INVERTED
from .items import AMOUNTS, Item
from .looks import TURNING, half_understood, lost_finding
from .misheard import HEARD
from .mixups import MIXED
from .nearnumbers import is_told_later, says_nothing
from .noevents import NO_EVENTS
from .nofindings import NO_FINDINGS
from .numbers import Toks, glued, is_digits, numbers, word
from .ofwhat import OF_WHAT, OF_WHAT_ALOUD
from .othertimes import AT_TWICE, DANGLING, OTHER_TIMES
from .otherwords import OTHER_WORDS
from .parted import EITHER_WAY, LETTERED
from .patterns.asides import ASIDES, PLACES, STAFF
from .patterns.clockwords import MINUTE_WORDS, PAST, TO
from .patterns.leads import LABEL_LETTERS
from .patterns.numerals import ONES, TENS
from .patterns.remarks import GREETINGS
from .polarity import is_fluid
from .renewed import CONTEXT
from .rules import Rule, Rules, signs
from .setbefore import SET_BEFORE
from .takenback import TAKEN_BACK
from .tallies import HOW_MANY
from .toldbefore import TOLD_BEFORE
from .turned import READ_AS, TURNED, counted_aloud
from .unexplained import SPACED, UNEXPLAINED
from .unset import UNSET
from .weighty import named_behind, weighty
from .whose import DEVICE_BEFORE

VALUES = frozenset({"bed", "level", "volume", "output", "time", "check", "weight", "alt", "num"})
NUMBERS = VALUES - {"bed"}
BESIDE_AN_HOUR = PAST | TO
UNITS = frozenset({"ml", "litre", "badunit"})
HALTING = frozenset({("and", "at"), ("to", "add"), ("to", "at"), ("an", "at"), ("and", "add"), ("to", "and")})
TUBELESS = frozenset({"the", "be", "bee", "me", "to"})
ENDINGS = frozenset({"an", "and", "add", "a", "to", "too"})
COMPARED = frozenset({">", "<"})
OF_A_TIME = frozenset({"o'clock", "oclock", "o"})
"""Before these a number is no level."""
SEPARATE = frozenset({"at", "add", "and"})
LINE = frozenset({"line", "level", "mark", "reading", "reads"})
OWN = frozenset({"the", "his", "her", "their", "that"})
"""Between a word and a tube one of these says that the word is no name of it."""
PAIR = 2


def leftovers(items: tuple[Item, ...], toks: Toks, *, voice: bool) -> list[str]:
    """One line for each sign that words beside a value were not understood."""
    found = [*_lone_beds(items, voice), *of_clauses(ALOUD if voice else OF_A_CLAUSE, items, toks)]
    found += signs(DICTATED if voice else TYPED, items, toks)
    return [*found, *_odd_words(items, toks)] if voice else found


def _units(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    for item in items:
        if item.role == "cue" and item.value in UNITS:
            yield "a unit without its number"


def _lone_beds(items: tuple[Item, ...], voice: bool) -> Iterator[str]:
    """The word bed with no label after it, or with a stray letter behind its label."""
    has_bed = any(i.role == "bed" for i in items)
    told = False
    for k, (item, nxt) in enumerate(pairwise(items)):
        told |= item.role == "level"
        said = item.role == "cue" and item.value == "bed"
        stop = said and nxt.role == "sep" and nxt.value in {",", "then"} and k + 2 < len(items)
        then = items[k + 2] if stop else nxt
        line = then.role == "cue" and then.value in {"level", "levelat"}
        if said and (((voice or not has_bed) and (nxt.unread or line)) or (told and line)):
            yield "the word bed without a label"
        if item.role == "bed" and nxt.unread and nxt.name in LABEL_LETTERS and nxt.start == item.end:
            yield "a letter behind the label"


def _between(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 340 ato 700": a word that is not understood between two values; "on 20 by reg at 7" says who."""
    for before, item, after in zip(items, items[1:], items[2:], strict=False):
        known = item.name in BELONGS or (item.name in STAFF and word(toks, item.start - 1) == "by")
        if item.unread and not known and before.role in NUMBERS and after.role in NUMBERS:
            yield f"{item.name!r} between two values"


def _is_of_new_one(item: Item, items: tuple[Item, ...]) -> bool:
    """ "14: old can 1890, new can at 1830, now 20": at the end, and of the canister that came."""
    return item is items[-1] and any(i.role == "cue" and i.name == "exchanged" for i in items)


def _is_behind_line(before: Item, item: Item, toks: Toks) -> bool:
    """ "drained 215, line nearby 1050", "line barely at 515": behind the word for a line and another word, it
    may be its level."""
    when = item.sure_time or (item.at and item.full_clock)
    apart = item.start - before.end > item.at
    return word(toks, before.start - 1) in LINE and not (when or apart)


def _unled(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """A number that no word calls a level, with a word before it that may be its name ("hb 82")."""
    for before, item in pairwise(items):
        other = before.unread or (before.role == "cue" and before.value == "ask")
        loose = (
            before.unread and item.role == "time" and (item.loose_time or _is_behind_line(before, item, toks))
        )
        if loose or (item.role == "level" and item.lead in {"", "at"} and other):
            yield f"{before.name!r} may say what the number is"
        if before.role == "level" and not before.lead and before.unit and item.unread:
            yield f"{item.name!r} may say what it is of"
        named = item.role == "cue" and item.value == "tubeword" and word(toks, item.start - 1) not in OWN
        if before.unread and named and before.name not in GREETINGS:
            yield f"{before.name!r} may be the name of the tube"
    for item in items:
        if item.role not in AMOUNTS:
            continue
        heard = item.lead == "to" and (not item.unit or word(toks, item.start - 2) in READ_AS)
        if item.role == "level" and (heard or (not item.unit and _is_in(item, toks))):
            yield "to or in a number says a bed or a change of value"
        bare = item.role == "level" and not item.lead and item.label
        if bare and word(toks, item.start - 1) == "now" and not _is_of_new_one(item, items):
            yield "the level now, or the bed now"
        if item.role == "level" and item.lead == "from":
            yield "the bed that it came from, or a level"
        over = word(toks, item.end) == "+" and word(toks, item.end + 1) in {"", ",", "."}
        if item.role == "level" and over:
            yield "more than a number is no level"
        if word(toks, item.start - 1) in COMPARED:
            yield "more or less than a number is no level"


def _seen(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "seen 12 and 99": behind a word for a notice that was seen, a number alone may be one more bed."""
    if any(i.role == "cue" and i.name == "acknowledged" for i in items):
        told = [i for i in items if i.role in {"level", "time"} or (i.role == "cue" and i.value == "level")]
        if len(told) == 1 and told[0].role != "cue" and not told[0].unit and told[0].lead in {"", "at"}:
            yield "a bed that was seen, or a level or time"


def _signed(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "-leak": a finding with a minus before it."""
    for item in items:
        finding = item.role == "cue" and item.value in {"leak", "tidal"}
        minus = word(toks, item.start - 1) == "-" and glued(toks, item.start)
        if finding and minus and not glued(toks, item.start - 1):
            yield "a finding with a minus"
        ends = word(toks, item.end + 1) in {"", ",", ".", ";"}
        if finding and word(toks, item.end) == "-" and ends:
            yield "a finding with a minus"


def _is_in(item: Item, toks: Toks) -> bool:
    """ "now in 21", "new one in 9": a place; "in 250 ml"."""
    return (not item.lead or (item.lead == "new" and item.label is not None)) and word(
        toks, item.start - 1
    ) in {"in", "into"}


def _questioned(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "is bed 12 at 1050?" asks; recognisers put the sign where they like, so only typed ones count."""
    asks = any(i.role == "cue" and i.value == "mark_of_question" for i in items)
    if asks and any(i.role in {"level", "check"} for i in items):
        yield "a question is no mark"


def _beside(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    for k, (before, item) in enumerate(pairwise(items)):
        pair = (before, item)
        if k == 0 and before.unread and item.role == "bed" and _goes_on(items[2:]):
            continue
        if _is_where(before, toks):
            continue
        if _is_who(before, items[k + 1 : k + 3]) or _is_climb(item, items[k + 2 : k + 3]):
            continue
        if is_company(item, toks) or is_company(before, toks):
            continue
        if before.role == "time" and all(map(is_remark, items[k + 1 :])):
            continue
        if item.unread and item.name in TURNING and is_fluid(items[k + 2] if k + 2 < len(items) else item):
            continue  # "bed fifteen fluid's gone milky"
        if item.unread and item.name in ASIDES and word(toks, item.start - 1) == "for":
            continue  # "clamped at eighteen hundred for transport"
        if word(toks, before.end - 1) not in TENS and is_remark_behind(items, k, toks):
            continue  # but not "at nineteen thirty fife"
        strange = any(i.unread for i in pair) and any(i.role in VALUES for i in pair)
        if strange and not says_nothing(items, k, toks):
            yield "a word beside a value was not understood"


def _is_where(item: Item, toks: Toks) -> bool:
    """ "came apart at the connector at five": where it happened, with its article."""
    return item.unread and item.name in PLACES and word(toks, item.start - 1) == "the"


def _is_who(bed: Item, after: tuple[Item, ...]) -> bool:
    """ "12 somebody knocked it over": who did it, right before what was done."""
    if bed.role != "bed" or len(after) < PAIR or not (after[0].unread and after[0].name in PEOPLE):
        return False
    return after[1].role == "cue" and after[1].value in {"kind", "what"}


def _is_climb(item: Item, after: tuple[Item, ...]) -> bool:
    """ "went from 480 to 525": the word is part of it."""
    return item.unread and item.name in CLIMBS and any(i.role == CONTEXT for i in after)


def _sounds(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 128 715 pm": the at of one twenty at; "4 past 7": a quarter past."""
    said = tuple(i for i in items if i.role != "sep" or i.value != ",")
    for before, item in pairwise(said):
        level = before.role in AMOUNTS and not before.unit
        eight = word(toks, before.core - 1)[-1:] == "8"
        if level and eight and item.role == "time" and not item.at and _takes_at(item, toks):
            yield "the eight may be the word at"
        if level and item.role == "time" and before.end == item.start and _takes_minutes(before, item, toks):
            yield "the minutes may be the end of the number"
        bare = item.role == "time" and before.end == item.start and not item.sure_time
        if level and bare and _may_end_bed(before, item, toks):
            yield "the number may begin with the end of the bed"
        link = word(toks, item.start - 1)
        if level and item.role == "time" and before.end == item.start - 1 and link in BESIDE_AN_HOUR:
            yield "the end of the number may be the minutes"
    timed = any(i.role == "time" for i in items)
    for item in items:
        if item.role == "level" and not item.unit and not timed and _ends_in_time(item, toks):
            yield "the end of the number may be the time"
        four = item.role == "time" and word(toks, item.start) in {"4", "four"}
        if four and word(toks, item.start + 1) in BESIDE_AN_HOUR:
            yield "four past may be a quarter past"


def _may_end_bed(level: Item, time: Item, toks: Toks) -> bool:
    """ "bed thirty four twenty three forty": bed 30 with 420 at 3:40, as well as bed 34 with 2340."""
    if word(toks, level.start) not in ONES or word(toks, level.start - 1) not in TENS:
        return False
    return any(number.end == time.end for number in numbers(toks, level.start + 1))


def _ends_in_time(item: Item, toks: Toks) -> bool:
    """ "twenty five thirty one": twenty at 5:31, as well as a number too large for most canisters."""
    return (
        word(toks, item.start) == "twenty"
        and word(toks, item.start + 1) in ONES
        and any(end == item.core for end, _ in clocks(toks, item.start + 1))
        and "hundred" not in toks.said[item.start : item.core]
    )


def _is_of_time(toks: Toks, i: int) -> bool:
    """Whether a number before this place is no level: "four o'clock", "nineteen hundred"."""
    counted = word(toks, i) in MINUTE_WORDS and word(toks, i + 1) in BESIDE_AN_HOUR
    return word(toks, i) in OF_A_TIME or counted or word(toks, i) == "hundred"


def _takes_minutes(level: Item, time: Item, toks: Toks) -> bool:
    """ "five hundred twenty to seven": 500 at 18:40, or 520 and the "at" misheard."""
    to = next((k for k in range(time.start, time.end) if word(toks, k) == "to"), None)
    return to is not None and not time.at and any(n.end == to for n in numbers(toks, level.start))


def _takes_at(item: Item, toks: Toks) -> bool:
    """Whether "at" is said before such a time, and was not."""
    return (
        not any(c.style in {"ago", "now"} for c in item.clocks) and word(toks, item.start - 1) not in SEPARATE
    )


def _goes_on(items: tuple[Item, ...]) -> bool:
    """ "dead sixteen mark ...": the word bed misheard at the start of a mark that is otherwise whole."""
    return bool(items) and (
        items[0].role == "tube" or (items[0].role == "cue" and items[0].value in {"level", "levelat"})
    )


def _halting(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "mark 4 and at seven": the rest of the number was lost; "1100 and 10 hour ago": it ran on."""
    for item in items:
        if item.role not in AMOUNTS:
            continue
        if (word(toks, item.end), word(toks, item.end + 1)) in HALTING:
            yield "a number that breaks off"
        longer = max((n.end for n in numbers(toks, item.start)), default=0)
        goes_on = word(toks, item.core) == "and" and longer > item.core + 1
        if goes_on and not _is_of_time(toks, longer):
            yield "a number that runs on"
        if word(toks, item.start - 1) == "-" and glued(toks, item.start) and is_digits(toks, item.start - 2):
            yield "a number in a chain of dashes"


def _odd_words(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    lettered = any(i.role in {"bed", "tube"} and i.end == len(toks) for i in items)  # "on bed three A"
    if toks[-1].text in ENDINGS and not lettered and any(i.role in VALUES for i in items):
        yield "a message that breaks off"
    yield from begun_aloud(items, toks)
    for item, nxt in pairwise(items):
        led = item.role == "cue" and item.value in {"level", "new", "old", "opens"}
        if led and nxt.unread and not (item.value == "level" and is_told_later(items, nxt)):
            yield "a level that was not understood"
    moved = any(i.role == "cue" and i.value == "kind" and i.name in {"moved", "corrected"} for i in items)
    starts = {i.start for i in items}
    for before, item in zip((None, *items), items, strict=False):
        after = word(toks, item.end)
        if item.role == "bed" and after == "to" and not (moved or item.end in starts):
            yield "the word to behind a bed"
        named = before is not None and before.role == "tube"
        if item.role == "cue" and item.value == "tubeword" and after in TUBELESS and not named:
            yield "a tube whose name was lost"


EITHER = (
    Rule(_units, UNITS),
    Rule(counted_aloud, frozenset({"level"}), frozenset(ONES)),
    Rule(_unled, AMOUNTS | {"word"}),
    *OVER_TIME,
    *EITHER_WAY,
    Rule(_seen, frozenset({"kind"})),
    Rule(_signed, frozenset({"leak", "tidal"}), frozenset({"-"})),
    *UNSET,
    Rule(weighty, frozenset({"kind", "word"})),
    Rule(named_behind, frozenset({"kind", "what"}), frozenset({",", "-", ".", ";", "("})),
    *TURNED,
    *BEHIND_A_LINE,
    *DEVICE_BEFORE,
    *TAKEN_BACK,
    *TOLD_BEFORE,
    AT_TWICE,
    HOW_MANY,
    DANGLING,
    *MIXED,
    *NO_EVENTS,
    *NO_FINDINGS,
    *SET_BEFORE,
    *OTHER_TIMES,
    *INVERTED,
    *UNEXPLAINED,
)
TYPED = Rules(
    (
        Rule(begun, frozenset({"tube"})),
        LETTERED,
        Rule(_between, frozenset({"word"})),
        *EITHER,
        *OF_WHAT,
        Rule(_questioned, frozenset({"mark_of_question"})),
        *SPACED,
    )
)
DICTATED = Rules(
    (
        *EITHER,
        Rule(_beside, frozenset({"word"})),
        Rule(asking_aloud, frozenset({"question", "ask", "mark_of_question"})),
        Rule(_halting, AMOUNTS),
        Rule(half_understood, frozenset({"fluid", "word"})),
        Rule(lost_finding, frozenset({"word", "seal"})),
        Rule(_sounds, AMOUNTS | {"time"}),
        *OF_WHAT_ALOUD,
        *HEARD,
        *OTHER_WORDS,
    )
)
