"""A message that asks: what is told beside a question, one question after another.

What is told in one clause is never swallowed by what is asked in the next. Called by `read` and `queries`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import takewhile
from typing import NamedTuple

from . import topics
from .asking import OF_FINDINGS
from .items import FINDINGS, Item, is_of_now
from .numbers import word
from .patterns.idle import AUXILIARY
from .patterns.together import POLITE
from .pipeline import Read
from .rules import Pieces
from .whyasked import ASKS, without_reasons

ANSWERS = frozenset({"yes", "no", "choice"})
EVENTS = frozenset({"kind", "what", "same"})
STOPS = frozenset({".", ",", ";", "!"})
SAID = EVENTS | FINDINGS
TOLD = SAID | ANSWERS
WHOLE = SAID | {"reason"}
BESIDE = WHOLE | {"order"}
LEADS = frozenset({"level", "levelat"})
MOST_SEEN = 4
"""Pieces of "seen bed nine and"."""
MINE = frozenset(
    {"mine", "taking", "taken", "took", "have", "having", "i've", "ive", "got", "covering", "cover"}
    | {
        "looking",
        "caring",
        "assigned",
        "my",
        "me",
        "picked",
        "picking",
        "following",
        "charge",
        "relieving",
        "i'm",
        "im",
    }
)
"""With one of these a list of beds says whose they are."""
TOLD_OF_BED = frozenset({"is", "has", "looks", "s", "'s", "was", "keeps", "started", "won't", "isn't"})
"""Right behind a bed something is told of it."""
NAMING = topics.SUMS | {"ask"}
SETTLING = frozenset({"withdrawn", "corrected", "acknowledged", "help"})
GOING_ON = frozenset({"is", "will", "do", "does", "did", "should", "much", "many", "i", "we"})
NAMING_OR_ASKING = NAMING | ASKS
OPENING = frozenset({"word", "repair", "okay", "reason", "closing"})
WHY = frozenset(
    {"was", "were", "is", "it's", "its", "because", "bc", "since", "already", "twice", "double", "by"}
)
"""Behind what is taken back these say why."""
OF_THE_UNIT = frozenset({"due", "beds", "open"})
OF_ALL = frozenset(
    {"which", "who", "who's", "anyone", "anybody", "anything", "beds", "everyone", "what", "what's"}
)
OF_IT = frozenset({"it", "its", "it's", "he", "she", "that", "this", "one", "time"})
SHARED = frozenset({"window", "span", "since"})
"""What a question takes from the one behind it, along with its bed."""


class Parts(NamedTuple):
    """What a message reports, and the question before it or behind it, if any."""

    report: Pieces
    question: Pieces = ()
    is_asked_first: bool = False
    seen: tuple[str, ...] = ()
    """The beds whose notices were seen, before a report: "seen 9 and bed 9 mark 870"."""


def parts(items: Pieces, read: Read) -> Parts:
    """The report of a message, what was seen before it, and the question beside it if there is one."""
    seen, rest = _seen_first(items)
    found = _parts(without_reasons(rest, read), read)
    return found._replace(seen=seen) if seen else found


def _seen_first(items: Pieces) -> tuple[tuple[str, ...], Pieces]:
    """The beds of notices that were seen, and the report behind them."""
    said = [i for i in items[:MOST_SEEN] if i.role != "cue" or i.value != "bed"]
    if (
        len(said) < MOST_SEEN - 1
        or said[0].name != "acknowledged"
        or said[1].label is None
        or said[2].role != "sep"
    ):
        return (), items
    rest = items[items.index(said[2]) + 1 :]
    if rest and not _tells_of_its_bed(rest) and _goes_on(rest):
        rest = (said[1].as_role("bed"), *rest)
    return ((said[1].label,), rest) if rest and _tells_of_its_bed(rest) else ((), items)


def _goes_on(rest: Pieces) -> bool:
    """ "seen 11. line is 570 at 1920", "seen 5, hemothorax": what is told behind it is of that bed."""
    named = any(i.role == "bed" or i.name == "acknowledged" for i in rest)
    asks = any(i.role == "cue" and i.value in {"question", "ask", "mark_of_question"} for i in rest)
    reason = rest[0].role == "cue" and rest[0].value == "reason" and len(rest) == 1
    led = any(i.role == "num" and (i.lead in LEADS or i.unit or not i.label) for i in rest)
    events = any(i.role == "cue" and i.value in SAID for i in rest)
    return not (named or asks) and (reason or led or events)


def _parts(items: Pieces, read: Read) -> Parts:
    asks = not NAMING_OR_ASKING.isdisjoint([i.value for i in items if i.role == "cue"])
    if not asks and word(read.tokens, 0) not in AUXILIARY:
        return Parts(items)
    for k in _starts(items, read):
        head, rest = items[:k], items[k:]
        if _is_only_its_bed(head, rest):
            continue  # "4, last mark?"
        if rest[0].value in topics.SUMS and _is_of_ones_beds(head, rest, read):
            return Parts(rest)  # "3 is mine. total on 4?"
        if _begins_a_query(items, k, read) and _is_only_asked(rest):
            if _is_preamble(head) or _is_of_ones_beds(head, rest, read):
                return Parts(rest)
            own = _own_topic(rest, read) is not None
            if _runs_on(items, k) and not _ends_before(head, own=own):
                continue
            if _reports(head) and (own or not (_settles(head) or _runs_on(items, k))):
                return Parts(head, rest)
        if _asks_alone(head, read) and (_is_a_report(rest) or _is_odd_report(rest, read)):
            return Parts(rest, head, is_asked_first=True)
    return Parts(items)


def _is_only_its_bed(head: Pieces, rest: Pieces) -> bool:
    """Whether a lone number before a question that names no bed is the bed that it is of."""
    said = [i for i in head if i.role != "sep"]
    named = any(i.role == "bed" or (i.role == "num" and i.label) for i in rest)
    return len(said) == 1 and said[0].role == "num" and said[0].label is not None and not named


def _asks_alone(items: Pieces, read: Read) -> bool:
    """Whether these pieces are a question of one topic, and tell nothing."""
    items = tuple(i.as_role("bed") if i.role == "num" and i.label else i for i in items)
    told = _reports(items)
    marked = items[-1].value == "mark_of_question"  # "what is 12 at? 5 is 640"
    topic = topics.topic(items, read) if marked else _own_topic(items, read)
    return not told and topic is not None and topics.asks(items, read)


def _is_preamble(items: Pieces) -> bool:
    """Whether these pieces greet, or say who asks: "evening, bank nurse tonight"."""
    return all(
        i.role == "sep" or i.unread or is_of_now(i) or (i.role == "cue" and i.value in OPENING) for i in items
    )


def _is_of_ones_beds(head: Pieces, rest: Pieces, read: Read) -> bool:
    """ "taking 3 and 4. when is 3 next due?": which beds one has, before a question that names its own."""
    if not any(map(_is_a_bed, rest)) or MINE.isdisjoint(read.tokens.said[: head[-1].end]):
        return False
    return all(_is_a_bed(i) or i.value in {"bed", "filler"} or _is_preamble((i,)) for i in head)


def _is_a_bed(item: Item) -> bool:
    """Whether it can be a bed, as "4 today" can."""
    loose = item.role == "time" and not (item.at or item.lead or item.clocklike)
    return loose or item.role == "bed" or (item.role == "num" and item.label is not None and not item.unit)


def is_of_findings(read: Read) -> bool:
    """ "is 5 on water seal", "was 5 tidaling earlier": what is found there is asked, and not told."""
    return word(read.tokens, 0) in OF_FINDINGS and not {",", ".", ";", "and"} & read.tokens.words


def told_beside(items: Pieces, read: Read) -> list[str]:
    """ "how full is 20. leak none", "last line on 20? back at 1840", "20 clamped - last line?": what is told
    there is no question."""
    asks = [i for i in items if i.role == "cue" and i.value in {"ask", "old"}]  # "last line on 20?"
    asks = asks or [i for i in items if i.role == "cue" and i.value == "question"]  # "due when?"
    if not asks or asks[-1].name == "checks":
        return []
    marked = [i.start for i in items if i.value == "mark_of_question"]
    stops = [i.start for i in items if i.role == "sep" and i.value in STOPS]
    ends = [k for k in (marked or stops) if k >= asks[-1].end]
    said = [i for i in items if i.role == "cue" and i.value in BESIDE and i.name not in SETTLING]
    behind = [i.start for i in said if marked or i.value in FINDINGS]
    first = min(asks[0].start, *(i.start for i in items if i.role == "cue" and i.value in ASKS))
    told = bool(behind) and bool(ends) and behind[-1] > ends[-1]
    told |= bool(said) and not {"-", "/"}.isdisjoint(read.tokens.said[said[0].end : first])
    return ["what is told beside a question"] if told else []


def is_standing(item: Item, items: Pieces, read: Read) -> bool:
    """ "which of our beds have a chest tube in": in one clause that asks for beds, how it is there."""
    if item.name != "placed" or item.value != "kind":
        return False
    alone = not any(i.role in {"sep", "bed", "num"} for i in items)
    return alone and topics.topic(items, read) == "beds"


def _runs_on(items: Pieces, k: int) -> bool:
    """Whether nothing parts the question from what is before it."""
    return not _stops(items[k - 1])


def _ends_before(head: Pieces, *, own: bool) -> bool:
    """Whether a question that nothing parts from what is before it may begin there."""
    if any(i.role == "cue" and i.value == "since" for i in head):
        return False  # "after the change how much on 4"
    return _tells_whole(head) or (own and _settles(head))


def _tells_whole(items: Pieces) -> bool:
    """Whether a bed is told of, and what happened or was read: "12 is 1190 now", and not "12 1900"."""
    events = any(i.role == "cue" and i.value in WHOLE for i in items)
    numbers = [i for i in items if i.role in {"num", "bed"}]
    led = any(i.lead in LEADS or i.unit or i.at for i in numbers)  # "4, 5 and 6" are beds
    read_off = led or any(i.role == "time" for i in items)
    return bool(numbers) and (events or (len(numbers) > 1 and read_off))


def _is_only_asked(items: Pieces) -> bool:
    """Whether no number is told in it that is no bed."""
    return not any(i.role == "num" and not i.label for i in items)


def _settles(items: Pieces) -> bool:
    """Whether it answers, or puts something right: what follows with a word that asks may go on with that."""
    return any(i.role == "cue" and (i.value in ANSWERS or i.name in SETTLING) for i in items)


def _is_a_report(items: Pieces) -> bool:
    """Whether it tells something of a bed that it names, and asks nothing."""
    asks = any(i.role == "cue" and i.value in ASKS for i in items)
    return not asks and _tells_of_its_bed(items)


def _is_odd_report(items: Pieces, read: Read) -> bool:
    """ "what's due, bed 4 is bleeding": something that is not understood is told of it, and nothing asked."""
    bed = next((i for i in items if i.role == "bed" or i.label is not None), None)
    asks = any(i.role == "cue" and i.value in ASKS for i in items)
    if bed is None or asks or bed not in items[:2]:
        return False
    verb = word(read.tokens, bed.end) in TOLD_OF_BED
    words = [i for i in items if i.unread and not _is_polite(i)]
    return bool(words) and (verb or (words[0].start == bed.end and words[0].name.endswith("ing")))


def _tells_of_its_bed(items: Pieces) -> bool:
    """Whether it begins with a bed, and something is told of it."""
    first = items[0]
    named = first.role == "bed" or (first.role == "cue" and first.value == "bed") or first.label is not None
    return named and _tells_whole(items)


def _starts(items: Pieces, read: Read) -> Iterator[int]:
    """Where a clause begins behind another one; the stop may be part of a time: "at 6:35 am. Handoff"."""
    for k in range(1, len(items)):
        ends = _stops(items[k - 1]) or word(read.tokens, items[k - 1].end - 1) == "."
        if (ends or _breaks_in(items[k], read)) and not _stops(items[k]):
            yield k


def _breaks_in(item: Item, read: Read) -> bool:
    """ "12 tipped over what do I chart": words that begin a question wherever they stand."""
    if item.role != "cue" or item.value not in {"question", "ask"}:
        return False
    first, second = word(read.tokens, item.start), word(read.tokens, item.start + 1)
    if first == "when" and second in {"i", "we"}:
        return False  # "was 1120 when we did the handover"
    return first in {"what's", "whats", "how's", "hows", "when's", "whens"} or (
        first in {"what", "how", "when", "do", "should", "can"} and second in GOING_ON
    )


def _stops(item: Item) -> bool:
    return item.role == "sep" or (item.role == "cue" and item.value == "mark_of_question")


def _clause(items: Pieces, k: int) -> Pieces:
    """The pieces of a clause, with its question mark."""
    inside = tuple(takewhile(lambda i: not _stops(i), items[k:]))
    return items[k : k + len(inside) + 1]


def _begins_a_query(items: Pieces, k: int, read: Read) -> bool:
    """Whether a clause asks: with its first word but for polite ones, or with a word and a question mark."""
    clause = _clause(items, k)
    first = next((i for i in clause if not _is_polite(i)), None)
    if first is None or _is_why(items[:k], clause, read):
        return False
    if _sums_up(clause) and any(i.name == "withdrawn" for i in items[:k]):
        return True  # "scratch that, total on 4"
    if first.role == "cue" and first.value in {"question", "ask"}:
        line = any(i.role == "cue" and i.value == "level" for i in clause)
        return not line or first.name != "last" or topics.is_asking(first, read)
    marked = clause[-1].value == "mark_of_question"
    return marked and any(i.role == "cue" and i.value in {"question", "ask"} for i in clause)


def _is_why(head: Pieces, clause: Pieces, read: Read) -> bool:
    """ "remove the 0400 mark, was charted twice": why it is taken back, and no question."""
    if not any(i.role == "cue" and i.name in {"withdrawn", "corrected"} for i in head):
        return False
    said = read.tokens.said[head[-1].end : clause[-1].end]
    return bool(said) and not topics.asks(clause, read) and not WHY.isdisjoint(said)


def _sums_up(clause: Pieces) -> bool:
    """ "total on 4": the word for a sum, and a bed or a number that may be one."""
    said = [i for i in clause if i.value != "bed" and i.role != "sep"]
    summed = bool(said) and said[0].role == "cue" and said[0].value == "output"
    return summed and len(said) > 1 and all(i.label and not i.unit for i in said[1:])


def _reports(items: Pieces) -> bool:
    """Whether something is told: a number, an event, what was found, an answer."""
    return any(
        i.role == "num" or (i.role == "time" and not is_of_now(i)) or (i.role == "cue" and i.value in TOLD)
        for i in items
    )


def _is_polite(item: Item) -> bool:
    return item.unread and item.name in POLITE


def queries(items: Pieces, read: Read) -> list[tuple[str | None, Pieces]]:
    """The questions of a message that asks, each with its topic and bed: "total on 4 and the rate on 5"."""
    parts: list[Pieces] = []
    begun = 0
    for k in (*(k for k in _starts(items, read) if _stops(items[k - 1])), len(items)):
        part = items[begun:k]
        rest = items[k:]
        if rest and _own_or_last(part, read) and _own_or_last(_clause(items, k), read):
            parts.append(part)
            begun = k
    parts.append(items[begun:])
    each = enumerate(parts)
    return [
        (topic, part if _is_of_the_unit(topic, part, read) else _with_bed(part, parts[k + 1 :], parts[:k]))
        for k, part in each
        for topic in [topics.topic(part, read)]
    ]


def _is_of_the_unit(topic: str | None, part: Pieces, read: Read) -> bool:
    """ "which beds are due and what's the rate on 22": of all beds, whichever the other question names."""
    said = read.tokens.said[part[0].start : part[-1].end] if part else ()
    return topic in OF_THE_UNIT and not OF_ALL.isdisjoint(said) and OF_IT.isdisjoint(said)


def _own_topic(items: Pieces, read: Read) -> str | None:
    """The topic that a phrase of these pieces names, with the words that ask."""
    named = [i for i in items if i.role == "cue" and i.value in NAMING]
    strong = any(i.name not in topics.WEAK for i in named) or topics.read_together(items, read)
    return topics.topic(items, read) if strong else None


def _own_or_last(items: Pieces, read: Read) -> str | None:
    """The topic of a question of its own; a last line with its bed: "last line on 6 and total for 7"."""
    if (own := _own_topic(items, read)) or not any(i.role == "bed" for i in items):
        return own
    where = any(i.role == "bed" and word(read.tokens, i.end) == "at" for i in items)  # "what's 9 at"
    asks = {i.value for i in items if i.role == "cue"} & ({"ask", "question"} if where else {"ask"})
    return topics.topic(items, read) if asks else None


def _with_bed(part: Pieces, behind: list[Pieces], before: list[Pieces]) -> Pieces:
    """A question that names no bed is of the bed of the next one, or else of the one before."""
    if any(i.role == "bed" for i in part):
        return part
    others = [o for o in (*behind, *reversed(before)) if any(i.role == "bed" for i in o)]
    if not others:
        return part
    windowed = any(i.role == "cue" and i.value in SHARED for i in part)
    shared = frozenset[str]() if windowed else SHARED
    return (
        *part,
        *(i for i in others[0] if i.role in {"bed", "tube"} or (i.role == "cue" and i.value in shared)),
    )
