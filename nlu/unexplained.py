"""What an accepted reading would leave unexplained although it could change it: then it is asked.

`leftovers` looks at what stands right beside a number. Here the whole clause counts: a bare number, an
event or a query is only certain if nothing in its clause asks, is of another device or another matter,
or was not understood. Called by `leftovers` for typed messages.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .behind import is_remark_behind
from .items import AMOUNTS, FINDINGS, Item
from .numbers import Toks, glued, word
from .patterns.asides import CALLED, DONE_TO, PATIENTS, STAFF
from .patterns.remarks import REMARKS
from .rules import Rule, Rules, asked, signs
from .weighty import is_closing
from .whose import WHOSE

ENDS = frozenset({",", ";", ".", "!", "but", "then", "and", "&", "also", "plus", "|"})
ASKING = frozenset(
    {"what", "what's", "whats", "how", "how's", "hows", "when", "when's", "whens", "who", "which"}
)
SIDED = frozenset(
    {"chest", "lung", "sided", "hemi", "base", "thorax", "pleura", "post", "ant", "lat", "upper"}
)
TITLES = frozenset({"dr", "drs", "mr", "mrs", "ms", "miss", "prof", "by", "per", "initials"})
"""Behind these a word is a name."""
DETERMINERS = frozenset({"my", "the", "that", "this", "your", "her", "his"})
TAKEN = frozenset({"got", "gets", "collected", "emptied", "gushed", "poured", "out"})
AUXILIARY = frozenset(
    {"is", "are", "was", "were", "does", "did", "do", "has", "have", "can", "could", "should"}
)
COLUMNS = 10
"""A leak meter has fewer columns; common practice, no source."""
HAPPENED = frozenset({"happen", "happened", "true", "right", "real", "accurate", "corrected", "mine", "ours"})
BEHIND = frozenset({"after", "before", "post", "during", "following"})
PAIR = 2
"""Words of what is typed with one space: 9 14, 1 340."""
HOUR = 2
"""Digits of an hour."""
NUMBERS = AMOUNTS | {"bad"}
NAMES = frozenset({"level", "levelat", "old", "new", "opens", "amount", "output", "tubeword", "canister"})


def unexplained(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each sign, anywhere in the message, that its numbers and events tell nothing."""
    yield from _asking(items, toks)
    yield from _hours(items, toks)
    yield from signs(OF_ALL, items, toks)


def of_clauses(rules: Rules, items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each sign that the rules find in a clause."""
    needed = asked(rules, items)
    for clause in clauses(items) if needed else ():
        for rule in needed:
            yield from rule.find(clause, toks)


def clauses(items: tuple[Item, ...], stops: frozenset[str] = ENDS) -> Iterator[tuple[Item, ...]]:
    """The stretches between stops."""
    found: list[Item] = []
    for item in items:
        if item.role == "sep" and item.value in stops:
            yield tuple(found)
            found = []
        else:
            found.append(item)
    yield tuple(found)


def _asking(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "what was 12 at 1500": a message that begins by asking tells nothing."""
    said = next((i for i in items if i.role not in {"bed", "sep"} and i.value != "bed"), None)
    asks = said is not None and said.role == "cue" and said.value in {"question", "ask", "word"}
    if said is not None and asks and word(toks, said.start) in ASKING:
        yield from ("a question tells no number" for i in items if i.role in NUMBERS or _happens(i))
    first = next((i for i in items if i.start > 0 or i.value != "question"), None)
    if first is not None and word(toks, 0) in AUXILIARY and _is_of_bed(first, toks):
        signed = any(i.role == "cue" and i.value == "mark_of_question" for i in items)
        amounts = frozenset() if signed else NUMBERS | {"num"}
        told = [i for i in items if i.role in amounts or _happens(i) or _is_found(i)]
        yield from ("a question tells nothing" for _ in told)


def _doubted(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "can you check if 15 was 720", "dont chart 8 yet, might be 260": asked for, and planned or denied."""
    said = {i.value for i in items if i.role == "cue"}
    if "question" in said and said & {"plan", "neg"}:
        yield from ("what is asked and denied is not told" for i in items if i.role in NUMBERS or _happens(i))


def _taken_back(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "bed 12 mark 1800 didn't happen", "12 tipped, not true": what is told is denied behind it."""
    for before, item in pairwise(i for i in items if i.value != "bed"):
        denied = before.role == "cue" and before.value == "neg"
        if denied and item.role == "bed":
            bare = [i for i in items if i.role == "level" and i.label is not None and not i.lead]
            yield from ("the bed is denied, and the number may be the right one" for _ in bare)
        if denied and item.role == "cue" and (item.name in HAPPENED or item.value == "yes"):
            yield from ("what was told is denied" for i in items if i.role in NUMBERS or _happens(i))


def _moved_line(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "move bed 6's 1800 line to bed 7", "move my 0300 from 5 to 6": a line goes there, and no patient."""
    moved = any(i.role == "cue" and i.value == "kind" and i.name == "moved" for i in items)
    for item, after in pairwise(items):
        if moved and item.role == "cue" and item.value == "level" and after.role in {"bed", "cue"}:
            yield "a line is moved, and nobody"
        event = item.role == "cue" and item.name == "moved"
        if event and after.role == "time" and word(toks, after.start - 1) in DETERMINERS:
            yield "a line is moved, and nobody"


def _ordered(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "suction order for bed 27 is 20": a bare number in the clause of an order is no level."""
    orders = any(i.role == "cue" and i.value == "order" for i in clause)
    bare = [i for i in clause if i.role == "level" and i.lead in {"", "at"} and not i.unit]
    yield from ("the number may be what was ordered" for _ in bare if orders)


def _is_of_bed(first: Item, toks: Toks) -> bool:
    """ "is 19 clamped", "has the patient in 12 moved"."""
    return first.role in {"bed", "num"} or word(toks, 1) in {
        "bed",
        "room",
        "rm",
        "the",
        "pt",
        "patient",
        "he",
        "she",
    }


def _happens(item: Item) -> bool:
    return item.role == "cue" and item.value in {"kind", "what", "same"}


def _is_found(item: Item) -> bool:
    return item.role == "check" or (item.role == "cue" and item.value in FINDINGS)


def asking_aloud(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """Dictated "three right when thirty": a word that asks, in what should be a line, was misheard."""
    if word(toks, 0) in {"is", "was", "did", "does"}:
        yield from _asking(items, toks)
    asks = any(i.role == "cue" and i.value == "question" and word(toks, i.start) in ASKING for i in items)
    if asks and any(i.role == "level" for i in items):
        yield "a question tells no number"
    for item, after in pairwise(i for i in items if i.role != "bed"):
        ask = item.role == "cue" and item.value == "ask" and word(toks, item.start) in ASKING
        if ask and after.role == "volume":  # "12 how much did 9 put out"
            yield "a question tells no number"


def _of_another(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "wound vac canister changed", "20g IV placed": an event of another device."""
    foreign = any(i.role == "foreign" for i in clause)
    yield from ("the event may be of another device" for i in clause if foreign and is_closing(i))


def _elsewhere(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "done with 12, going home": the bed was told of something that was not understood."""
    parts = list(clauses(items))
    for clause in parts:
        if not any(is_closing(i) for i in clause) or any(i.role == "bed" for i in clause):
            continue
        of_bed = next((c for c in parts if any(i.role == "bed" for i in c)), ())
        told = any(i.role == "level" or is_closing(i) for i in of_bed)
        if not told and any(_is_strange(i, toks) for i in of_bed):
            yield "the event may be of somebody else"


def _ranges(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "beds 2 to 4 no leak", "2 9 14 all same", "1 20 2 30": several beds, and no move and no time."""
    moved = any(i.role == "cue" and i.value == "kind" for i in items)
    for item in items:
        if item.role == "bed" and item.link == "to" and not moved and "beds" in toks.said:
            yield "a range of beds"
        spaced = item.role == "time" and item.end - item.start == PAIR and toks[item.start].is_digits
        bare = spaced and toks[item.end - 1].is_digits and not (item.at or item.lead)
        led = word(toks, item.end - 1).startswith("0")  # "7 05"
        if bare and not (item.sure_time or led):
            yield "the numbers may be two beds, or a bed and its line"


def _apart(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "bed 2 1 tube": bed 21, or the first tube of bed 2?"""
    for item in items:
        digits = item.role == "bed" and item.end - item.start == PAIR and toks[item.end - 1].is_digits
        if digits and toks[item.start].is_digits and not glued(toks, item.end - 1):
            yield "two digits of a bed, or two numbers"


def _mended_bed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "21 at 640, i mean bed 22": the number before may be the bed that was said wrongly."""
    mended = next((k for k, i in enumerate(items) if i.role == "repair"), len(items))
    bed_behind = any(i.role == "bed" for i in items[mended:])
    if bed_behind and not any(i.role == "bed" for i in items[:mended]):
        bare = [i for i in items[:mended] if i.role == "level" and i.label is not None and not i.lead]
        yield from ("the number may be the bed that was mended" for _ in bare)


def _summed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "6 total 7-7": behind the word for a sum stands no bed, where a bare number may be the bed."""
    led = any(i.role == "bed" and i.lead == "output" for i in items)
    yield from ("the bare number may be the bed" for i in items if led and i.role == "level" and not i.lead)


def _timed_apart(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "line 840, dr rounded at 1400", "840, turned 0600": the time may be of what was done then."""
    for clause in list(clauses(items))[1:]:
        times = [i for i in clause if i.role == "time" and i.lead not in {"since", "timeword"}]
        told = any(i.role in {"bed", "tube", "check", *NUMBERS} or _is_fact(i) for i in clause)
        if not times or told:
            continue
        strange = any(_is_strange(i, toks) and i.end <= times[0].start for i in clause)
        if strange or _said_before(times[0], toks) in DONE_TO:
            yield "the time may be of something else"


def _is_fact(item: Item) -> bool:
    return item.role == "cue" and item.value not in {"word", "filler", "about", "time", "timeword"}


def _said_before(item: Item, toks: Toks) -> str:
    k = item.start - 1
    while word(toks, k) in {"at", "@", "around", "about"}:
        k -= 1
    return word(toks, k)


def _hours(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "output 15-16 30": a range of hours, and no amount and time."""
    for k in range(1, len(toks) - 1):
        first, sign, last = toks[k - 1], toks[k], toks[k + 1]
        dashed = sign.text == "-" and sign.glued and last.glued and first.is_digits and last.is_digits
        if dashed and len(first.text) == len(last.text) == HOUR and int(last.text) == int(first.text) + 1:
            yield from ("a range of hours" for i in items if i.role in NUMBERS)


def _unread(clause: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "got 500 LR bolus": a bare number with a word in its clause that may say what it is."""
    bare = [i for i in clause if i.role == "level" and i.lead in {"", "at"}]
    named = any(i.role == "cue" and i.value in NAMES for i in clause)
    if any(word(toks, i.start - 1) in TAKEN for i in bare):
        yield "what was got may be an amount"
    added = [i for i in clause if word(toks, i.start - 1) in {"+", "plus"}]
    if any(i in bare or i.loose_time or (i.full_clock and i is clause[-1]) for i in added):
        yield "a plus says how much more"
    if any(word(toks, i.start - 1) == "#" for i in clause if i.role == "level" and not i.unit):
        yield "which of several, and no level"
    if bare and any(i.role == "cue" and i.value == "neg" and i.start > bare[0].start for i in clause):
        yield "something of the number is denied"
    if not bare or named:
        return
    for item in clause:
        named = word(toks, item.start - 1) in TITLES and item.name not in DONE_TO | CALLED  # "dr lee aware"
        if _is_strange(item, toks) and not (
            named
            or _is_far_behind(item, clause)
            or _is_behind_what(item, clause, toks)
            or _is_behind_line(item, clause, toks)
        ):
            yield f"{item.name!r} may say what the number is"


def _is_strange(item: Item, toks: Toks) -> bool:
    unread = item.unread and item.name not in REMARKS | STAFF | PATIENTS
    return unread and not (glued(toks, item.start) and len(item.name) == 1)


def _is_behind_line(item: Item, clause: tuple[Item, ...], toks: Toks) -> bool:
    """ "340 at 1900 dark in there": behind a line that was told whole."""
    return any(is_remark_behind(clause, k, toks) for k, i in enumerate(clause) if i.end <= item.start)


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
        if said and item.unread and item.name not in SIDED | REMARKS:
            yield "left may be what the patient did"


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
        if said and (item.name in STAFF or _is_strange(item, toks)):
            yield f"{item.name!r} may say what has not changed"


def _on_the_hour(item: Item) -> bool:
    return all(clock.minute == 0 for clock in item.clocks)


def _dated(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "chest tube day 3": the number behind a word for a length of time is no level."""
    for before, item in pairwise(clause):
        counted = before.role == "cue" and before.value in {"window", "span"} and before.end == item.start
        if counted and item.role == "level" and not item.lead:
            yield "a number behind a word for a time is no level"


def _fluid_amount(clause: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "serosang 50 ml", "50 ml of blood": a level, or how much of it came?"""
    for before, item in pairwise(clause):
        fluid = before.role == "cue" and before.value == "fluid" and before.end == item.start
        if fluid and item.role == "level" and item.unit and item.lead in {"", "at"}:
            yield "an amount of a fluid may be no level"


OF_ALL = Rules(
    (
        Rule(_doubted, frozenset({"question"})),
        Rule(_taken_back, frozenset({"neg"})),
        Rule(_moved_line, frozenset({"kind"})),
        Rule(_elsewhere, frozenset({"kind"})),
        Rule(_timed_apart, frozenset({"sep"})),
        Rule(_summed, frozenset({"bed"})),
        Rule(_apart, frozenset({"bed"})),
        Rule(_ranges, frozenset({"bed", "time"})),
        Rule(_mended_bed, frozenset({"repair"})),
    )
)
OF_A_CLAUSE = Rules(
    (
        *WHOSE,
        Rule(_of_another, frozenset({"foreign"})),
        Rule(_ordered, frozenset({"order"})),
        Rule(_unread, frozenset({"level"})),
        Rule(_dated, frozenset({"window", "span"})),
        Rule(_fluid_amount, frozenset({"fluid"})),
        Rule(_verb, frozenset({"tube"})),
        Rule(_same_as, frozenset({"same"})),
        Rule(_unchanged, frozenset({"same"})),
        Rule(_columns, frozenset({"leak"})),
        Rule(_numbered, frozenset({"bed"})),
    )
)
