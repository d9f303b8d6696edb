"""What is said behind a line that was told whole, its level and then its time.

Two words and more are a remark and say nothing of the number; a device that has amounts may be what it is of.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise, takewhile

from .adjuncts import ADJUNCTS, JUST, plain_end
from .claims import STRONG
from .corrections import BELONGS
from .items import AMOUNTS, FULL_HOUR, MEASURED, Item
from .neighbours import phrase_of
from .numbers import Toks, is_digits, word
from .patterns.alongside import OWNING
from .patterns.asides import RELATIVES, STAFF
from .patterns.leads import LINES
from .patterns.levels import LITRES
from .patterns.ownclauses import HIMSELF, SPEAKER
from .patterns.remarks import REMARKS
from .roles import LEVELLESS
from .rules import Rule
from .statements import Span

STOPS = STRONG | {"-"}
LINKING = frozenset(
    {"of", "from", "via", "in", "out", "through", "into", "by", "for", "to", "on", "or", "if"}
)
"""With one of these the words behind go on about the number."""
DOUBTING = frozenset(
    {"i", "think", "maybe", "guess", "not", "no", "approx", "ish", "was", "before", "than"}
    | {"old", "previous", "other", "wrong", "estimated", "estimate", "another", "goal"}
)
OF_A_TIME = frozenset({"at", "@", "h", "hr", "hrs", "hours", "am", "pm", "on", "in", ":", ",", ".", "-"})
OF_A_DAY = frozenset(
    {"this", "morning", "afternoon", "evening", "tonight", "today", "yesterday", "last", "night"}
)
"""Beside an hour these say when, too."""
BEFORE_COUNT = frozenset({"with", "had", "has", "have", "got", "needs", "took", "only", "of", "for", "and"})
SHORT = 2
"""Digits of a count."""
READ_OFF = frozenset(
    {
        "vitals",
        "obs",
        "bp",
        "blood pressure",
        "sats",
        "sat",
        "spo2",
        "o2",
        "oxygen",
        "pain",
        "pain score",
        "temp",
    }
    | {
        "temperature",
        "hr",
        "heart rate",
        "pulse",
        "rr",
        "labs",
        "lab",
        "bloods",
        "gcs",
        "vitals stable",
        "obs stable",
        "cpap",
        "bipap",
        "niv",
    }
    | {"dressing", "dressings", "drsg", "dressing changed", "dressing change", "dressing intact"}
)
"""What is measured in no millilitres."""
QUIET = frozenset({"nothing", "filler"})
PEOPLE = RELATIVES | STAFF
BY_WHOM = frozenset({"per", "by", "w", "because", "while", "during"})
LAST_WORDS = frozenset(
    {"comfortable", "doing", "he's", "she's", "patient", "vitals", "everything", "else", "done"}
)
CLOSING_WORDS = REMARKS | LAST_WORDS
OF_THE_LINE = BELONGS | REMARKS
BESIDE_A_TIME = BY_WHOM | PEOPLE
MOST_CANISTERS = 4
GIVEN = frozenset({"of", "ml", "mls", "cc"})
FEWEST = 2
"""Words of a remark: one alone may be the name of what was measured."""


def ends_line(items: Sequence[Item], k: int) -> bool:
    """Whether a time stands right behind its level, as "340 at 1900" does."""
    if k < 1 or items[k].role != "time":
        return False
    time, level = items[k], items[k - 1]
    whole = time.sure_time or time.full_clock or time.spoken_clock
    return level.role == "level" and time.start - level.end <= 1 and whole


def is_remark_behind(items: Sequence[Item], k: int, toks: Toks) -> bool:
    """Whether what follows the time of a whole line, up to the next stop, is a remark."""
    if not ends_line(items, k):
        return False
    rest = list(takewhile(lambda i: not _is_end(i), items[k + 1 :]))
    stop = items[k + 1 + len(rest)].start if k + 1 + len(rest) < len(items) else len(toks)
    said = toks.said[items[k].end : stop]
    if len(said) < FEWEST or said[0] in LINKING or not DOUBTING.isdisjoint(said):
        return False
    plain = all(
        i.unread or i.value in QUIET or (i.role == "foreign" and phrase_of(i, toks) in READ_OFF) for i in rest
    )
    return plain and not any(w.isdecimal() for w in said)


def is_a_time(said: Sequence[str]) -> bool:
    """ ", at 1800h", ", this morning at 0705": when something was, and nothing beside it."""
    words = {w for w in said if not w.isdecimal()}
    return OF_A_TIME.issuperset(words if len(words) == len(said) else words - OF_A_DAY)


def is_counted(toks: Toks, start: int, end: int) -> bool:
    """ "with 6 | meds to take home", "had 1.2 L | in": the words behind a number say what it is of."""
    k = start - 1 - (word(toks, start - 1) in LITRES)
    number, first = word(toks, k), word(toks, start)
    if not is_digits(toks, k) or start >= end:
        return False
    few = len(number) <= SHORT and word(toks, k - 1) in BEFORE_COUNT and first.isalpha()
    return few or (k < start - 1 and first in {"in", "out", "on", "up"})


OWNED = frozenset({"the", "a", "an", "his", "her", "my", "our", "their", "that", "this", "other"})
DEVICES = frozenset({"drain", "drains", "tube", "tubes", "bag", "bags", "catheter", "cath", "line", "bottle"})
DEVICES |= {"box", "canister", "pigtail", "output", "level"}
NAME = 3
"""Words of a name at most, with its article: "the left hip"."""


def names_next(toks: Toks, start: int, end: int) -> bool:
    """ "steps on his watch: 212", "the belly | drain in bed 4": whether words say what the number is of that
    follows, or which device."""
    if end - start <= NAME and word(toks, start) in OWNED and word(toks, end) in DEVICES:
        return True
    # "before I hand over: 605" says of what none is
    told = not (HIMSELF | SPEAKER).isdisjoint(toks.said[start:end])
    head = start == 0 and OWNING.isdisjoint(toks.said[start:end])
    return not (head or told) and word(toks, end) == ":" and is_digits(toks, end + 1)


def is_told_again(toks: Toks, start: int, end: int) -> bool:
    """ "got a litre of saline since lunch, 1000 at 1630": the amount of something else, and no line?"""
    given = {word(toks, k) for k in range(start, end) if word(toks, k + 1) in GIVEN}
    if any(word(toks, k) in LITRES for k in range(start, end)):
        given |= {"1000"} & toks.words
    others = (word(toks, k) for k in range(len(toks)) if not start <= k < end)
    return any(said.isdecimal() and said in given for said in others)


def is_behind_at(toks: Toks, end: int, level: Span | None) -> bool:
    """ "seen by the team | at 9": whether a level stands behind the at of words that are left out."""
    return level is not None and word(toks, end) in {"at", "@"} and toks[end + 1].start == level.start


def is_time_before(said: Sequence[str]) -> bool:
    """ "640 the day before": of when a line is that was read then, and no remark beside it."""
    return len(said) == len(("the", "day", "before")) and said[0] in {"the", "that"} and said[2] == "before"


def _is_end(item: Item) -> bool:
    """A stop, or what is measured: "1020 at 2200 breathing easier rr 18"."""
    return item.name == MEASURED or (item.role == "sep" and item.value in STOPS)


def is_remark(item: Item) -> bool:
    """What is said at the end and is no number: "patient comfortable, doing fine"."""
    return item.role == "sep" or (item.unread and item.name in CLOSING_WORDS)


def is_company(item: Item, toks: Toks) -> bool:
    """ "gone home with his wife at half past four": who went along."""
    owned = word(toks, item.start - 1) in {"his", "her", "their", "the", "a"}
    return item.unread and item.name in PEOPLE and word(toks, item.start - 1 - owned) == "with"


def _unsure_times(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "ambulated 200 ft mark 330": a number that is a time only for want of another place."""
    for k, item in enumerate(items):
        if item.role != "time":
            continue
        before, after = items[max(0, k - 1) : k], items[k + 1 : k + 2]
        bare = not item.sure_time and item.lead in {"", "at"}
        if (
            bare
            and any(i.start == item.end and _may_be_unit(item, i) for i in after)
            and not (is_remark_behind(items, k, toks) or _is_of_event(item, items, toks))
        ):
            yield "a word behind a bare time may be its unit"
        ahead = any(i.role == "level" for i in items[k + 1 :]) and not any(
            i.role == "level" for i in items[:k]
        )
        told = any(i.role == "cue" and i.value in {"kind", "what"} for i in _clause_before(items, k))
        if ahead and not told and any(i.unread and i.name not in OF_THE_LINE for i in before):
            yield "the time may be of what was not understood"


def _is_of_event(time: Item, items: tuple[Item, ...], toks: Toks) -> bool:
    """ "clamped at 1850 near the lift": where it was, and no unit; a line may be "at 1850 in the jug"."""
    lined = any(i.role in AMOUNTS for i in items)
    happened = any(i.role == "cue" and i.value == "what" and i.end == time.start for i in items)
    whole = (time.lead == "at" or happened) and time.full_clock and not lined
    begins = happened or word(toks, time.end) in ADJUNCTS | JUST  # "unclamped 1455 SOB"
    return whole and begins and plain_end(toks, time.end) > 0


def behind_an_event(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "5 back 430 w new R pigtail": right behind who came or went, when that was, and no level."""
    for event, item, after in zip(items, items[1:], items[2:], strict=False):
        went = event.role == "cue" and event.value == "kind" and event.name in LEVELLESS
        bare = item.role == "level" and item.clocklike and not (item.lead or item.unit)
        if went and bare and event.end == item.start and _may_be_unit(item, after):
            yield "when that was, or a level"


def _put_in(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "chest tube in bed 3 at 1420": when it was put in, or its line."""
    put = any(
        cue.role == "cue"
        and cue.value == "tubeword"
        and "in" in (word(toks, cue.end - 1), word(toks, cue.end))
        and (after.role == "bed" or (after.role == "cue" and after.value == "bed"))
        for cue, after in pairwise(items)
    )
    if not put or any(i.role == "time" for i in items):
        return
    for item in items:
        whole = item.full_clock or item.spoken_clock
        if item.role == "level" and item.lead == "at" and whole and not item.unit:
            yield "when the tube was put in, or its line"


def _either_bed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "line 12 14 at 1645": a line of bed 12, or of bed 14, or one of 1214?"""
    for cue, bed, level in zip(items, items[1:], items[2:], strict=False):
        led = cue.role == "cue" and cue.value == "level" and cue.end == bed.start and bed.role == "bed"
        bare = level.role == "level" and level.start == bed.end and not (level.lead or level.unit)
        if led and bare and level.label is not None and level.known:
            yield "which of two numbers is the bed"


def _numbered(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "chamber 2 is full", "canister 2 at 300", "bubbling in chamber 2": which of them, and no level."""
    for cue, item in pairwise(items):
        named = cue.role == "cue" and cue.value in {"canister", "inside"} and cue.end == item.start
        bare = item.role == "level" and not item.unit and (item.amount or 0) <= MOST_CANISTERS
        if named and bare and item.digits:
            yield "which canister, and no level"


def _may_be_unit(time: Item, after: Item) -> bool:
    """Whether the piece behind a bare time, a word, was not understood and is no remark."""
    return (
        after.unread and after.end - after.start == 1 and not (_is_at_people(time, after) or is_remark(after))
    )


def _is_at_people(time: Item, after: Item) -> bool:
    """ "at 1815, family here", "at 1830 per dr patel": no unit of it."""
    return after.name in (BESIDE_A_TIME if time.lead == "at" else PEOPLE | {"per"} if time.full_clock else ())


def _clause_before(items: tuple[Item, ...], k: int) -> Iterator[Item]:
    """The pieces of its clause that stand before one."""
    return takewhile(lambda i: i.role != "sep", reversed(items[:k]))


def of_device_behind(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "4 640 at 1900 urine", "4 640 urine at 1900": the level may be of what is named behind it."""
    for k, item in enumerate(items[:-1]):
        after = items[k + 1]
        bare = ends_line(items, k) and items[k - 1].lead in {"", "at"}
        named = after.role == "foreign" and after.start == item.end
        came = after.role == "cue" and after.value in {"amount", "out", "output"} and after.start == item.end
        looks = word(toks, after.start) == "draining" and any(
            i.value == "fluid" for i in items[k + 2 : k + 3]
        )
        if bare and came and not (looks or any(i.role in AMOUNTS for i in items[k + 2 : k + 3])):
            yield "an amount, or a line"
        own = any(i.role == "claimed" and i.start == after.end for i in items[k + 2 : k + 3])  # "JP 30"
        if bare and named and not own and phrase_of(after, toks) not in READ_OFF:
            yield f"{word(toks, after.start)!r} may be what the number is of"
    for item, one, other in zip(items, items[1:], items[2:], strict=False):
        if item.role == "level" and not item.lead:
            yield from _with_its_time(item, one, other, toks)


def _with_its_time(level: Item, one: Item, other: Item, toks: Toks) -> Iterator[str]:
    """ "640 urine at 0700", "640 at 0700 urine", "640 0700 urine": a device took the time of the level."""
    behind = one.start - (word(toks, one.start - 1) == "(") == level.end  # "320 (urine) 1900"
    at = behind and (other.lead == "at" or other.full_clock)
    if at and one.role == "foreign" and other.role == "claimed":
        yield f"{word(toks, one.start)!r} has the time behind it, and may have the number"
    at, beside = one.lead == "at", other.start == one.end
    timed = one.role == "claimed" and (at or len(word(toks, one.start)) == FULL_HOUR)
    if timed and beside and other.role == "foreign" and not (at and phrase_of(other, toks) in READ_OFF):
        yield f"{word(toks, other.start)!r} has the time before it, and may have the number"


def _in_brackets(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "1890 (old can) 20": which number is the old one?"""
    led = (i for i in items if i.role == "level" and i.lead in {"old", "new", "opens"})
    yield from ("in brackets between two numbers" for i in led if word(toks, i.start - 1) == ")")


BEHIND_A_LINE = (
    Rule(_in_brackets, frozenset({"old", "new", "opens"}), frozenset({")"})),
    Rule(_unsure_times, frozenset({"word"})),
    Rule(behind_an_event, frozenset({"kind"})),
    Rule(_numbered, frozenset({"canister", "inside"})),
    Rule(_either_bed, frozenset({"level"}), LINES),
    Rule(_put_in, frozenset({"level"}), frozenset({"in"})),
    Rule(of_device_behind, frozenset({"foreign", "amount", "out", "output"})),
)
