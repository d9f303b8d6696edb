"""What is told of no drain of this shift: it is an exercise, a dream or a story, or it was long ago.

"quiz for the students: line was 500 at 2300", "bed 10 was at 1500 in the exam question", "last Christmas
bed 7 hit 1900". Such a word reaches what is told in its clause; what a colon opens, to the end of the
sentence. A nurse who has an exam tomorrow says so behind a comma. Used by `misgivings`, which asks.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from .neighbours import HARD, begins_at, ends_at
from .numbers import Toks, is_digits, word
from .patterns import unreal as said_so

STOPS = HARD | {",", "-", "(", ")"}
SAID = said_so.EXERCISES | said_so.STORIES | said_so.MINDS | said_so.MONTHS | {"last", "ago", "test"}
FEW = 3
"""Words of a heading that says nothing else: "training scenario"."""
MORE = 6
"""Words of a clause that says what was told before it: "that's from the training example"."""
HALVES = frozenset({"am", "pm", "morning", "evening", "night", "afternoon", "noon", "midnight", "day"})
ENDING = frozenset({"", ",", ".", ":"})
Span = tuple[int, int]


def unreal(toks: Toks, told: Iterable[frozenset[int]]) -> list[frozenset[int]]:
    """Those of the places of what is told that such a word reaches."""
    if SAID.isdisjoint(toks.words):
        return []
    places = [found for found in told if found]
    firsts = [min(found) for found in places]
    reached = {j for k in range(len(toks)) for a, b in _reaches(toks, k, firsts) for j in range(a, b)}
    return [found for found in places if not reached.isdisjoint(found)]


def either_half(toks: Toks) -> bool:
    """ "at 6, am or pm no idea": of which half of the day a time is was not known."""
    if "or" not in toks.words or HALVES.isdisjoint(toks.words):
        return False
    said = toks.said[: len(toks)]
    return any(
        w == "or" and {word(toks, k - 1), word(toks, k + 1)} <= HALVES and word(toks, k + 1) != "so"
        for k, w in enumerate(said)
    )


def _reaches(toks: Toks, k: int, told: list[int]) -> Iterator[Span]:
    said = word(toks, k)
    if _is_of_ward(toks, k):
        return
    if said == "test" and toks.said[max(0, k - 2) : k] == ("is", "a") and word(toks, k + 1) in ENDING:
        yield (0, len(toks))  # "this is a test, 201 at 999"
    tested = said == "test" and word(toks, k + 1) in said_so.TESTED
    if tested or said in said_so.EXERCISES | said_so.STORIES:
        yield from _of_story(toks, k, told)
    elif said in said_so.MINDS:
        yield (k, _clause(toks, k)[1])
    elif (length := _long_ago(toks, k)) > 0:
        yield from _of_long_ago(toks, k, k + length, told)


def _is_of_ward(toks: Toks, k: int) -> bool:
    """ "before the portable film", "takes a sample off the port", "trying to get up": nothing made up."""
    if word(toks, k) == "film":
        return toks.said[max(0, k - 2) : k] not in said_so.IN_A_FILM
    if word(toks, k) == "sample":
        return not said_so.SAMPLING.isdisjoint(toks.said[max(0, k - FEW) : k])
    return word(toks, k) == "trying" and word(toks, k + 1) == "to"


def _of_story(toks: Toks, k: int, told: list[int]) -> Iterator[Span]:
    start, end = _clause(toks, k)
    own = word(toks, k) in said_so.EXERCISES
    owned = word(toks, k - 1) in said_so.OWN
    before = word(toks, k - 1 - owned)
    before = "" if owned and before == "in" and k - 2 == start else before  # "in my dream bed 9 was at 1800"
    behind = any(k < place for place in told)
    inside = any(start <= place < end for place in told)
    if inside and (own or (before not in said_so.AROUND if behind else _is_within(toks, k, start))):
        colon = any(word(toks, j) == ":" for j in range(k, end))
        yield (start, ends_at(HARD, toks, end) if colon else end)
    elif behind and not inside and end - start <= FEW and not toks.said[start:end][0].isdecimal():
        yield (start, ends_at(HARD, toks, end + 1))
    elif told and not inside and start and _says_what(toks, start, k, end):
        yield (begins_at(HARD, toks, start - 1), start)


def _is_within(toks: Toks, k: int, start: int) -> bool:
    """ "was at 1500 in the exam question": no more than two words between."""
    near = toks.said[max(start, k - FEW) : k]
    return not said_so.WITHIN.isdisjoint(near)


def _says_what(toks: Toks, start: int, k: int, end: int) -> bool:
    """ "bed 6 mark 450 at 1850, just a drill"; "just back from training" is of the nurse."""
    said = toks.said[start:k]
    light = set(said) <= said_so.POINTING | said_so.OWN | said_so.EXERCISES | said_so.STORIES
    named = bool(said) and said[0] in said_so.POINTING
    if named and said[0] in said_so.WITHIN and said_so.OWN.isdisjoint(said):
        return False  # "in training this week"
    return end - start <= MORE and named and light


def _long_ago(toks: Toks, k: int) -> int:
    """How many words there say a time of another stay: "last Christmas", "in March", "months ago"."""
    said, after = word(toks, k), word(toks, k + 1)
    if said == "last" and after in said_so.SEASONS and word(toks, k - 1) not in said_so.SINCE:
        return 2
    if said == "in" and after in said_so.MONTHS:
        return 2
    if said == "last" and word(toks, k - 1) in {"my", "our"} and after in {"shift", "set", "run", "stint"}:
        return 2
    return 2 if said in said_so.LENGTHS and after == "ago" else 0


def _of_long_ago(toks: Toks, k: int, behind: int, told: list[int]) -> Iterator[Span]:
    """At the head of a clause it reaches that, and the one behind it; behind a number only what is before."""
    start, end = _clause(toks, k)
    opening = said_so.OPENERS | said_so.OWN | said_so.HOW_MANY
    head = all(word(toks, j) in opening or is_digits(toks, j) for j in range(start, k))
    alone = behind == end
    if head:
        yield (start, _clause(toks, end + 1)[1] if alone and end < len(toks) else end)
    elif alone and any(start <= place < k for place in told):
        yield (start, end)


def _clause(toks: Toks, k: int) -> Span:
    return begins_at(STOPS, toks, k), ends_at(STOPS, toks, k)
