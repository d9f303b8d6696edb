"""On whose word a number is told: what somebody says, heard or has from a chart was not read by who sends it.

"the tech says 31 is at 500", "overheard that 9 had 650", "bed 4 310, according to mum". Whoever says it is
the subject of the word of saying: a canister that "says 310" is read by the nurse, and so is a line that
somebody calls out to her while she marks it. Used by `misgivings`, which asks.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import takewhile

from .neighbours import HARD, begins_at, ends_at
from .numbers import Toks, is_digits, word
from .patterns import hearsay as said_so
from .patterns.numerals import NUMERALS

NEAR = 4
"""Words among which whoever vouches is named."""
AS_SAID = frozenset({"as", "so", "like", "what", "that"})
OF_THE_ENTRY = frozenset({"to", "should", "shouldve", "should've", "have"})
"""Right before "say" these tell what an entry was to be: "was supposed to say 415"."""
STOPS = HARD | {",", ":", "-", '"'}
PARTS = STOPS | said_so.JOINTS
"""What stands between the parts of a sentence."""
SECOND_HAND = said_so.SOURCES | said_so.PAPERS


def second_hand(toks: Toks, values: Iterable[int], orders: Iterable[int] = ()) -> frozenset[int]:
    """The places of numbers that somebody else vouches for; an order is so only from a third mouth."""
    if SECOND_HAND.isdisjoint(toks.words) or _is_own(toks):
        return frozenset()
    plain, told = sorted(values), sorted(orders)
    found: set[int] = set()
    for k, said in enumerate(toks.said[: len(toks)]):
        if said not in said_so.SOURCES | said_so.WRITTEN or not _is_of_somebody(toks, k):
            continue
        found |= set(_reached(toks, k, plain))
        if told and _is_third_mouth(toks, k, told[0]):
            found |= set(_reached(toks, k, told))
    return frozenset(found)


def _reached(toks: Toks, k: int, values: Sequence[int]) -> Iterator[int]:
    """The values behind a word of saying, to the end of its sentence, else those before it."""
    end = ends_at(PARTS, toks, k + 1)
    if all(word(toks, j) in said_so.LEADING for j in range(k + 1, end)) and word(toks, end) not in HARD:
        end = ends_at(PARTS, toks, end + 1)  # "tech says: 31 is at 500"
    if any(k < v < end for v in values):
        yield from (v for v in values if k < v < ends_at(HARD, toks, k + 1))
        return
    before = [v for v in values if v < k]
    if not before:
        return
    begins = k
    while word(toks, begins - 1) in said_so.AS_TOLD:
        begins -= 1
    named = word(toks, k) in said_so.NAMING and word(toks, begins - 1) not in STOPS
    if _goes_on(toks, before[-1] + 1, k) if named else _ends_with_source(toks, k):
        start = begins_at(HARD, toks, before[-1])
        yield from (v for v in before if v >= start)


def _goes_on(toks: Toks, start: int, end: int) -> bool:
    """ "310 at 1900 per Sam"; in "1020 1830 clamped as per reg" it is the clamping that is on his word."""
    said = toks.said[start:end]
    return all(_is_number(w) or w in said_so.AS_TOLD | {"at", "@", "ml", "mls", ":"} for w in said)


def _ends_with_source(toks: Toks, k: int) -> bool:
    """ "bed 4 310, or so the tech says", "310 says the wife", "according to mum": nothing else is said."""
    behind = toks.said[k + 1 : ends_at(PARTS, toks, k + 1)]
    if word(toks, k) in said_so.NAMING:
        before = [said for said in _subject(toks, k) if not _is_number(said)]
        return bool(behind) and said_so.AS_TOLD.issuperset(before)  # "lungs clearer per RT" is of lungs
    plain = said_so.TRAILING if _subject(toks, k) else said_so.SOMEBODY | said_so.ARTICLES
    return all(said in plain for said in behind)


def _is_of_somebody(toks: Toks, k: int) -> bool:
    said = word(toks, k)
    if said in said_so.NAMING:
        return _is_source(toks, k)
    subject = _subject(toks, k)
    if said in said_so.WRITTEN:
        return not said_so.PAPERS.isdisjoint(subject[-1:])
    if said in said_so.WITNESSING:
        return not said_so.AT_THE_BED.isdisjoint(subject)
    if said == "told" and _is_informed(toks, k, subject):
        return False
    if said in said_so.HEARING or (said in said_so.PASSIVE and not said_so.BEEN.isdisjoint(subject[-2:])):
        return True
    if said == "handed" and word(toks, k + 1) == "over":
        return bool(subject) and said_so.MYSELF.isdisjoint(subject)
    if said in said_so.GIVEN or not said_so.MYSELF.isdisjoint(subject):
        return False
    if word(toks, k - 1) in OF_THE_ENTRY:
        return False
    if not subject:
        return (
            said in said_so.TURNED
            and not said_so.SOMEBODY.isdisjoint(toks.said[k + 1 : k + 4])
            and _ends_with_source(toks, k)
        )
    if not said_so.SOMEBODY.isdisjoint(subject):
        return subject[-1] not in said_so.OURS
    last = subject[-1]
    if _is_number(last):
        return said not in said_so.SHOWING  # "22 reckons"; "13 says" is its canister
    return last not in said_so.OURS


def _is_informed(toks: Toks, k: int, subject: Sequence[str]) -> bool:
    """ "surgeon told", "the reg has been told": who heard of it, and nobody who said it."""
    ends = word(toks, k + 1) in STOPS | {"", "and", "about", "of", "already"}
    behind = any(is_digits(toks, j) for j in range(k))
    as_said = not AS_SAID.isdisjoint(toks.said[max(0, k - NEAR) : k])  # "so the wife told"
    who = not said_so.SOMEBODY.isdisjoint(subject) and said_so.MYSELF.isdisjoint(subject)
    return ends and behind and who and not as_said


def _is_source(toks: Toks, k: int) -> bool:
    """ "according to mum", "per the day nurse"; "according to plan", "per hour" name nobody."""
    if word(toks, k) == "according" and word(toks, k + 1) != "to":
        return False
    near = toks.said[k + 1 : min(ends_at(PARTS, toks, k + 1), k + 1 + NEAR)]
    if word(toks, k) in said_so.RELAYED:
        return True
    if word(toks, k) == "according":
        return not near[1:2] or said_so.RULES.isdisjoint(near)
    if near[:1] == ("the",) and word(toks, k) == "per":
        return said_so.RULES.isdisjoint(near)
    number = next((j for j, said in enumerate(near) if _is_number(said)), len(near))
    named = said_so.SHEETS if word(toks, k) in said_so.COPIED else said_so.SOMEBODY
    return not named.isdisjoint(near[:number])


def _is_third_mouth(toks: Toks, k: int, value: int) -> bool:
    """ "heard the surgeon wants 20", "wife says the doctor ordered 20"; "reg says suction 20" is an order."""
    said = word(toks, k)
    if said in said_so.NAMING:  # "per dr lee suction 10" is an order
        return not said_so.AT_THE_BED.isdisjoint(toks.said[k + 1 : k + 1 + NEAR])
    if said in said_so.HEARING or not said_so.BEEN.isdisjoint(_subject(toks, k)[-2:]):
        return True
    patient = not said_so.AT_THE_BED.isdisjoint(_subject(toks, k))
    return patient or not said_so.SOMEBODY.isdisjoint(toks.said[k + 1 : value])


def _is_own(toks: Toks) -> bool:
    """ "tech called out 410 while I marked it", "did the line with me": the nurse saw it, too."""
    said = toks.said[: len(toks)]
    for k, text in enumerate(said):
        if text == "me" and word(toks, k - 1) == "with":
            return True
        if text not in said_so.MYSELF or word(toks, k - 1) in said_so.NOT_YET:
            continue
        behind = takewhile(lambda j: word(toks, j) in said_so.ADVERBS, range(k + 1, len(toks)))
        if word(toks, k + 1 + len(list(behind))) in said_so.READING:
            return True
    return False


def _subject(toks: Toks, k: int) -> tuple[str, ...]:
    """What stands before it in its clause; the "am" of "8 am" is no verb."""
    places = (j for j in range(begins_at(PARTS, toks, k), k) if word(toks, j) not in said_so.ADVERBS)
    places = (j for j in places if not (word(toks, j) == "am" and is_digits(toks, j - 1)))
    return tuple(w for j in places if (w := word(toks, j))[:1].isalpha() or _is_number(w))


def _is_number(said: str) -> bool:
    return said.isdecimal() or said in NUMERALS
