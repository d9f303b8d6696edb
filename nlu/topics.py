"""Which topic a query has: its phrase, or words that ask for it together."""

from __future__ import annotations

from .items import Item, is_of_now
from .numbers import starts_number, word
from .patterns.idle import AUXILIARY
from .patterns.leads import BED_WORDS
from .patterns.together import ASKING, LONE_AGAIN, POLITE, TOGETHER
from .pipeline import Cue, Read, pipeline
from .rules import there
from .tokens import Token

RANK = (
    "me",
    "repeat",
    "open",
    "handoff",
    "capacity",
    "chart",
    "history",
    "trend",
    "rate",
    "checks",
    "due",
    "beds",
    "total",
    "last",
)
WEAK = frozenset({"last", "beds"})
"""Their words stand in questions for other topics too."""
SUMS = frozenset({"output", "amount"})
OF_SUMS = frozenset({"how", "how's", "hows", "did", "has"})
MORE = frozenset({"faster", "slower", "quicker", "more", "less"})
COMPARED = frozenset({"slowed", "eased", "tapered", "compare", "compared", "compares"})
LAST_NIGHT = ("last", "night")
HOW_MUCH = 2
"""Words of "how much" and no more."""
OPENING = AUXILIARY | ASKING
ALOUD = frozenset({"what", "what's", "whats", "how", "how's", "hows", "which", "who", "when"})
STOPS = frozenset({",", ";", ".", "!", "?", "and", "&", "-"})
BREAKS = STOPS | {"/", "+"}
OF_CHECKS = frozenset({"leak", "suction", "seal", "tidal", "fluid", "wall", "indicator", "waterseal"})


def topic(items: tuple[Item, ...], read: Read) -> str | None:
    """The topic that these pieces ask for, the most telling one; nothing where none is said."""
    asking = [i for i in items if i.role == "cue" and i.value == "ask"]
    found = {i.name for i in asking}
    cues = there(i for i in items if i.role == "cue")
    if not found - {"last"}:
        found |= _without_beds(items, read)
    if not (found - WEAK or cues & SUMS) and (told := _together(items, read)):
        found.add(told[0])
    if any(i.name == "last" and is_asking(i, read) for i in asking) and not any(
        i.name == "due" and is_asking(i, read) for i in asking
    ):
        found.discard("due")  # "bed 11 is 8 hours behind, what was the last one"
    if sums_up_a_bed(items) or cues & {*SUMS, "out"}:
        found.add("total")
    if _is_lone_again(asking, read) and (found != {"repeat"} or any(i.role == "bed" for i in items)):
        found = (found - {"repeat"}) or {"last"}
    if not found - {"last"} and cues & OF_CHECKS:
        found.add("checks")
    if "checks" in found or _is_of_one_line(asking, cues, read):
        found -= {"last"} if "checks" in found else {"total"}
    windowed = cues & {"span", "window"} or (not found and _is_of_a_day(items, read))
    if any(i.value == "plan" and word(read.tokens, i.start) == "over" for i in items):
        cues -= {"plan"}  # "9 over the last 4 hours?"
    late = "last" in found and not read.tokens.words.isdisjoint({"behind", "late", "overdue"})
    if windowed and not late and not found - {"last", "beds"} and not cues & {"plan", "neg"}:
        found.add("total")
    if not found and cues & {"level", "levelat"}:
        found.add("last")
    found = _charted(found, cues, read)
    if found <= {"total", "last"} and _is_compared(items, read):
        found = {"trend"}
    if found - {"beds"}:
        found.discard("beds")
    return next((t for t in RANK if t in found), None)


GOING_ON = frozenset({"going", "tracking", "progressing", "behaving"})
"""What has "been going" so is asked how it went on."""
SO_MUCH = frozenset({"much", "many", "fast", "quickly", "quick"})


def _charted(found: set[str], cues: frozenset[str], read: Read) -> set[str]:
    """ "how much should i document" is what to chart; "any air leak charted" is of a check."""
    words = read.tokens.words
    if "total" in found and "document" in words and not words.isdisjoint({"i", "we", "should"}):
        return found | {"chart"}
    checked = found <= {"chart", "checks"} and "charted" in words and "chart" not in words
    return {"checks"} if checked and cues & {"leak", "suction", "seal", "tidal", "wall"} else found


def _is_compared(items: tuple[Item, ...], read: Read) -> bool:
    """ "is 2 draining faster than it was", "has 18 slowed down any": against before, and no sum."""
    words = read.tokens.words
    toks = read.tokens
    than = any(w == "than" and not starts_number(toks, k + 1) for k, w in enumerate(toks.said[: len(toks)]))
    compared = than and not words.isdisjoint(MORE) and words.isdisjoint({"many", "much"})
    how = "been" in words and not words.isdisjoint({"how", "how's"}) and words.isdisjoint(SO_MUCH)
    going = how and not words.isdisjoint(GOING_ON)
    return (compared or going or not words.isdisjoint(COMPARED)) and asks(items, read)


def sums_up_a_bed(items: tuple[Item, ...]) -> bool:
    """ "total 7": a bed right behind the word for a sum."""
    return any(i.lead in SUMS for i in items if i.role == "bed")


def asks(items: tuple[Item, ...], read: Read) -> bool:
    """Whether a word or a phrase of them asks, and does not only name what could be told."""
    if items and word(read.tokens, 0) in OPENING and stretch(items, read)[0] == 0:
        return True  # "was bed 8 tidaling last time", "anything still open"
    return any(
        i.role == "cue"
        and (i.value in {"question", "mark_of_question"} or (i.value == "ask" and is_asking(i, read)))
        for i in items
    )


def is_asking(item: Item, read: Read) -> bool:
    """ "which beds", "what's the rate": a phrase that asks by itself."""
    return word(read.tokens, item.start) in ASKING


def is_asked_aloud(items: tuple[Item, ...], read: Read) -> bool:
    """Dictated "how many mils has bed five done today": it begins by asking, of the bed that has its word."""
    first = next((k for k, said in enumerate(read.tokens.said) if said not in POLITE), 0)
    beds = [i for i in items if i.role == "bed"]
    named = len(beds) == 1 and word(read.tokens, beds[0].start - 1) in BED_WORDS
    numbers = any(i.role == "num" or (i.role == "time" and not is_of_now(i)) for i in items)
    return named and not numbers and word(read.tokens, first) in ALOUD


def read_together(items: tuple[Item, ...], read: Read) -> frozenset[str]:
    """The words that ask together for the topic of these pieces."""
    told = _together(items, read)
    return frozenset(told[1]) if told is not None else frozenset()


def _together(items: tuple[Item, ...], read: Read) -> tuple[str, set[str]] | None:
    if not items or not asks(items, read):
        return None
    start, end = stretch(items, read)
    said = set(read.tokens.said[start:end])
    loose = any(i.role in {"time", "num"} for i in items)  # "how's 5 looking at 340"
    for name, sets in TOGETHER:
        if not (loose and name == "last") and all(not said.isdisjoint(each) for each in sets):
            return name, {w for each in sets for w in said & each}
    return None


def stretch(items: tuple[Item, ...], read: Read) -> tuple[int, int]:
    """Where the clauses of these pieces begin and end, with the words that say nothing."""
    own = [i for i in items if i.role not in {"bed", "sep"}] or items  # the bed may be of another clause
    start, end = own[0].start, own[-1].end
    while start and word(read.tokens, start - 1) not in BREAKS:
        start -= 1
    ended = word(read.tokens, end - 1) in STOPS  # "is the seal ok on 1? not on the chart"
    while not ended and end < len(read.tokens) and word(read.tokens, end) not in STOPS:
        end += 1
    return start, end


def _is_lone_again(asking: list[Item], read: Read) -> bool:
    """ "what was bed 4 again", "hi, me again"."""
    said = [i for i in asking if i.name == "repeat"]
    return bool(said) and all(i.end - i.start == 1 and word(read.tokens, i.start) in LONE_AGAIN for i in said)


def _is_of_one_line(asking: list[Item], cues: frozenset[str], read: Read) -> bool:
    """ "last reading how much": how much that line is, and no sum; "how much since the last mark" is one."""
    last = [i for i in asking if i.name == "last" and i.end - i.start > 1]
    sums = [i for i in asking if i.name == "total"]
    much = all(word(read.tokens, i.start) == "how" and i.end - i.start == HOW_MUCH for i in sums)
    return bool(last and sums) and much and not cues & {*SUMS, "out", "since", "span", "window"}


def _without_beds(items: tuple[Item, ...], read: Read) -> set[str]:
    """The topics said once the beds are taken out: "when will 12 be full"."""
    said = [i for i in items if i.role == "bed" or (i.role == "cue" and i.value == "bed")]
    beds = {k for i in said for k in range(i.start, i.end)}
    beds |= {i.end + k for i in said for k in (0, 1) if word(read.tokens, i.end + k) in {"'", "s"}}
    if not beds:
        return set()
    start, end = stretch(items, read)
    rest = [t for k, t in enumerate(read.tokens) if start <= k < end and k not in beds]
    asked = [c for c in pipeline().cues(rest) if c.label == "ask" and rest[c.start - 1].text != "since"]
    return {c.value for c in asked if not _is_last_night(c, rest)} - {"repeat"}


def _is_of_a_day(items: tuple[Item, ...], read: Read) -> bool:
    """ "how did 2 do last night": the sum of it."""
    asks = any(i.value == "question" and word(read.tokens, i.start) in OF_SUMS for i in items)
    return asks and any(i.role == "time" and any(c.style == "date" for c in i.clocks) for i in items)


def _is_last_night(cue: Cue, rest: list[Token]) -> bool:
    return cue.value == "last" and tuple(t.text for t in rest[cue.start : cue.start + 2]) == LAST_NIGHT
