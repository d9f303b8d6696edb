"""What is told beside a question and is no part of it: who asks, why, and what is only planned.

"what's the trend on 17? the house officer is on the phone", "12 needs a new canister soon, what's the rate".
A clause with a number, a bed, an event that happened or something found is never such a clause. Called by
`questions`, for messages that report nothing.
"""

from __future__ import annotations

from collections.abc import Iterator

from .asking import AUXILIARY
from .items import FINDINGS, Item, is_of_now
from .numbers import word
from .patterns.asides import RELATIVES, STAFF
from .pipeline import Read
from .roles import EVENTS
from .rules import Pieces, there

ASKS = frozenset({"question", "ask", "mark_of_question"})
SELF = frozenset(
    {"i", "i'm", "im", "i've", "ive", "we", "we're", "we've", "it's", "its", "this", "just", "my"}
)
THEM = frozenset(
    {"he", "he's", "hes", "she", "she's", "shes", "they", "they're", "their", "his", "her", "pt"}
)
WHAT_FOR = frozenset({"for", "before", "because", "bc", "cos", "so", "as", "since", "need", "trying", "to"})
SAID_OF = frozenset(
    {"the", "a", "our", "on", "about", "rounding", "new", "didn't", "couldn't", "can't", "cant"}
)
WITHOUT = frozenset(
    {
        "can't",
        "cant",
        "can",
        "couldn't",
        "lost",
        "missing",
        "nothing",
        "isn't",
        "didn't",
        "didnt",
        "down",
        "forgot",
        "find",
        "it",
        "no",
    }
)
"""With one of these the chart or the report is only where it could not be found."""
FOR_THAT = frozenset({"for", "before"})
"""In a clause of somebody else the report behind these is only what it is wanted for."""
THINKING = frozenset(
    {"thinking", "considering", "deciding", "debating", "discussing", "planning", "wondering"}
)
TELLING = FINDINGS | {
    "what",
    "level",
    "levelat",
    "yes",
    "no",
    "choice",
    "same",
    "check",
    "output",
    "span",
    "since",
}
NUMBERS = frozenset({"num", "bed", "tube", "bad", "alt", "check", "claimed", "denied"})


def without_reasons(items: Pieces, read: Read) -> Pieces:
    """The pieces of a message that asks, without clauses that only say why, and without what is planned."""
    if there(items).isdisjoint(ASKS) and word(read.tokens, 0) not in AUXILIARY:
        return items
    clauses = list(_clauses(items))
    asides = [_is_aside(clause, read) for clause in clauses]
    planned = [not aside and _is_planned(clause) for clause, aside in zip(clauses, asides, strict=True)]
    rest = [c for c, a, p in zip(clauses, asides, planned, strict=True) if not (a or p)]
    if len(rest) == len(clauses) or not rest or not all(_asks(c, read) for c in rest):
        return items
    return tuple(
        item
        for clause, aside, plan in zip(clauses, asides, planned, strict=True)
        if not aside
        for item in (map(_as_bed, filter(_names_bed, clause)) if plan else clause)
    )


def _clauses(items: Pieces) -> Iterator[Pieces]:
    """The clauses, each with the stop behind it."""
    begun = 0
    for k, item in enumerate(items, 1):
        if item.role == "sep" or item.value == "mark_of_question" or k == len(items):
            yield items[begun:k]
            begun = k


def _asks(clause: Pieces, read: Read) -> bool:
    """Whether it asks and tells nothing."""
    asks = word(read.tokens, _stretch(clause, read)[0]) in AUXILIARY or any(
        i.role == "cue" and i.value in ASKS for i in clause
    )
    return asks or all(_names_bed(i) or i.role == "sep" or i.unread for i in clause)


def _names_bed(item: Item) -> bool:
    bed = item.role == "num" and item.label is not None and not item.unit and not item.lead
    return bed or item.role in {"bed", "sep"} or (item.role == "cue" and item.value == "bed")


def _as_bed(item: Item) -> Item:
    return item.as_role("bed") if item.role == "num" else item


def _is_planned(clause: Pieces) -> bool:
    """ "12 needs a new canister soon", "we're going to pull 12's tube tomorrow"."""
    said = there(clause)
    ahead = "plan" in said or any(i.unread and i.name in THINKING for i in clause)
    if not ahead or not said.isdisjoint(ASKS | TELLING):
        return False
    events = [i for i in clause if i.role == "cue" and i.value == "kind"]
    loose = any(i.role in {"num", "bad", "alt", "claimed", "denied"} and not _names_bed(i) for i in clause)
    return all(i.name in EVENTS for i in events) and not loose


def _is_aside(clause: Pieces, read: Read) -> bool:
    """Whether a clause has no number, event or finding, and begins as what is told beside a question does."""
    said = [i for i in clause if i.role != "sep"]
    if not said or any(i.role in NUMBERS or (i.role == "time" and not is_of_now(i)) for i in said):
        return False
    if any(
        i.role == "cue" and (i.value in TELLING or i.value in {"question", "mark_of_question"}) for i in said
    ):
        return False
    start, end = _stretch(clause, read)
    words = read.tokens.said[start:end]
    first = words[0] if words else ""
    opens = first in SELF | THEM | STAFF | RELATIVES | WHAT_FOR | SAID_OF | WITHOUT
    if any(i.role == "cue" and i.value == "ask" for i in said):
        wanted = first in STAFF and not FOR_THAT.isdisjoint(words)  # "attending wants it for report"
        return opens and (first in WHAT_FOR or wanted or not WITHOUT.isdisjoint(words))
    events = any(i.role == "cue" and i.value == "kind" for i in said)
    strange = any(i.role == "foreign" or i.value in {"order", "neg", "window", "amount", "out"} for i in said)
    events &= not (first in SELF and all(i.name in {"back", "away"} for i in said if i.value == "kind"))
    if events or any(i.value == "amount" and word(read.tokens, i.start) != "lost" for i in said):
        return False
    return opens or not strange


def _stretch(clause: Pieces, read: Read) -> tuple[int, int]:
    """Where a clause begins, words that are no pieces with it, and where it ends."""
    said = [i for i in clause if i.role != "sep"]
    start, end = (said[0].start, said[-1].end) if said else (0, 0)
    while start and word(read.tokens, start - 1) not in {",", ".", ";", "?", "!", "-", ":", "and", "&"}:
        start -= 1
    return start, end
