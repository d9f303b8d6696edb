"""Cues of when something was read or done that was told before: "I took it at 1840", "both read at 1830".

Behind a level that was told, a whole time behind such words is no second line; and what was done to "it" at
a time was done then: "clamped at 1755, unclamped it at 1810". Called by `plainly`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from .clock import clocks
from .items import EVENTS
from .neighbours import HARD
from .numbers import Toks, glued, is_digits, word
from .patterns.leads import BED_WORDS, LINES
from .patterns.levels import VOLUMES
from .pipeline import Cue
from .readthen import AT, is_whole_clock
from .readthen import STOPS as PARTS

READ = frozenset(
    {"read", "marked", "measured", "drew", "drawn", "took", "taken", "recorded", "noted", "checked"}
    | {"did", "done", "looked", "saw", "seen", "got"}
)
NOTICED = frozenset({"noticed", "happened", "spotted", "found", "saw"})
"""Of an incident that was told before, these say when it was."""
IT = frozenset({"it", "line", "that", "this", "them", "both"})
CLIMBED = frozenset({("got", "to"), ("up", "to"), ("gone", "to"), ("come", "to"), ("rose", "to")})
WHO = frozenset(
    {"i", "we", "he", "she", "they", "which", "who", "both", "all", "was", "were", "just", "when"}
)
FROM = frozenset({"from", "for"})
THAT = frozenset({"that's", "thats", "those", "which", "both", "all", "that"})
ALL = frozenset({"both", "all", "those"})
IS = frozenset({"is", "was", "are", "were"})
TELLS = frozenset(
    {"is", "=", ":", "now", "says", "shows", "showing", "reads", "reading", "mark", "line", "level"}
)
MEASURES = frozenset({"wall", "suction", "seal", "claimed", "output", "amount", "waterseal", "old"})
"""Behind these a number is no level."""
LEVEL = 3
"""Digits that only a level has, a bed and a time aside."""
TOLD = frozenset({"level", "levelat"})
ITS = frozenset({"it's", "its"})
CAME = frozenset({"arrived", "got", "landed", "in", "here"})
FETCHED = frozenset({"collected", "fetched", "picked", "taken", "took"})
WHOM = frozenset({"him", "her", "them"})
WHERE = frozenset({"here", "in", "back", "up", "on", "to", "the", "ward", "unit", "bed", "floor", "there"})
NEEDED = READ | NOTICED | CAME | FETCHED | ITS | THAT | {"it", "went"}
"""Without one of these nothing is told of when it was."""


def when_read(cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]) -> tuple[Cue, ...]:
    """The cues, those that say when something was read or done as words that say nothing else."""
    if NEEDED.isdisjoint(toks.words):
        return cues
    spans = [span for span in _spans(cues, toks, labelled) if span[0] < span[1]]
    if not spans:
        return cues
    kept = (c for c in cues if not any(c.start < end and c.end > start for start, end in spans))
    words = [Cue("filler", "", k, k + 1) for start, end in spans for k in range(start, end - 1)]
    return (*kept, *words, *(_of_time(end - 1, toks) for _, end in spans))


def _is_dated(toks: Toks, k: int) -> bool:
    """ "that's from 1845", "that was at 1845"; of all, "both at 1845" is a time as it stands."""
    if word(toks, k) == "was" and word(toks, k - 1) == "that" and word(toks, k - 2) in PARTS | {"and"}:
        return _ends_at_whole(toks, k + 1)  # "left is at 380, right's out, that was 1900"
    that = word(toks, k - 1 - (word(toks, k - 1) in IS))
    return that in THAT and (word(toks, k) in FROM or (word(toks, k) in AT and that not in ALL))


def _ends_at_whole(toks: Toks, k: int) -> bool:
    """Whether a whole time stands there, and no more behind it."""
    return any(end >= len(toks) - 1 and word(toks, end) in {"", "."} for end, _ in clocks(toks, k)) and (
        is_whole_clock(toks, k)
    )


def _of_time(k: int, toks: Toks) -> Cue:
    """The word before the time: "from" and the at of "got here at" say no more than an "as of"."""
    plain = word(toks, k) in AT and word(toks, k - 1) not in WHERE | WHOM
    return Cue("filler" if plain else "timeword", "", k, k + 1)


def _spans(
    cues: tuple[Cue, ...], toks: Toks, labelled: Mapping[int, tuple[int, str]]
) -> Iterator[tuple[int, int]]:
    events = {c.end for c in cues if c.label in EVENTS} if "it" in toks.words else set()
    for k, text in enumerate(toks.said):
        if text in CAME | FETCHED and word(toks, k - 1) not in CAME and (at := _arrived(cues, toks, k)):
            yield k, at + 1
            continue
        if text in ITS and word(toks, k + 2) == "now" and is_whole_clock(toks, k + 1) and _tells(cues, k + 2):
            yield k, k + 1
            yield k + 2, k + 3
            continue
        if text in IS and word(toks, k - 1) in THAT and _says_when(cues, toks, k + 1):
            yield k - 1, k + 1  # "drain was above his chest, that was 2250"
            continue
        if text == "went" and _went_in(cues, toks, k):
            yield k, k + 3
            continue
        noticed = text in NOTICED and any(c.label == "what" and c.end <= k for c in cues)
        done = text == "it" and k in events
        dated = _is_dated(toks, k)
        if text not in READ and not (done or dated or noticed):
            continue
        at = k if dated else _at(toks, k + 1)
        happened = (dated or done or noticed) and any(
            c.label in EVENTS and c.value != "corrected" for c in cues
        )
        if not ((dated or word(toks, at) in AT) and _is_when(toks, at + 1, happened=happened)):
            continue
        if done:
            yield k, at + 1
        elif noticed or _is_told(cues, toks, k, labelled) or (dated and any(c.label in EVENTS for c in cues)):
            start = k - (dated and word(toks, k - 1) in IS)
            while word(toks, start - 1) in WHO | THAT:
                start -= 1
            yield start, at + 1


def _says_when(cues: tuple[Cue, ...], toks: Toks, k: int) -> bool:
    """ "changed the bottle, that was ten to one, the old one had 1,955": when, and nothing is put right."""
    if is_whole_clock(toks, k) and _only_happened(cues):
        return True
    events = any(c.label in EVENTS and c.value not in {"corrected", "withdrawn"} for c in cues)
    old = any(c.label == "old" for c in cues)
    whole = is_whole_clock(toks, k)
    return events and any(clock.sure or (old and (whole or end > k + 1)) for end, clock in clocks(toks, k))


def _only_happened(cues: tuple[Cue, ...]) -> bool:
    """Whether an incident is told, and no line."""
    labels = {c.label for c in cues}
    return "what" in labels and labels.isdisjoint(TOLD | {"ml", "old", "new"})


def _is_when(toks: Toks, k: int, *, happened: bool) -> bool:
    """Whether a whole time stands there, also a spoken one: "that was at eighteen thirty"."""
    if is_digits(toks, k):
        return is_whole_clock(toks, k)
    whole = ((end > k + 1 and happened, clock) for end, clock in clocks(toks, k))
    return any(told or clock.sure or clock.style == "24" for told, clock in whole)


def _went_in(cues: tuple[Cue, ...], toks: Toks, k: int) -> bool:
    """ "3 has a new drain for an effusion, went in at 0810": when it did."""
    timed = word(toks, k + 1) == "in" and word(toks, k + 2) in AT and is_whole_clock(toks, k + 3)
    it = word(toks, k - 1) in PARTS | IT | {"which", "tube", "drain", "one"}
    return timed and it and any(c.value == "placed" and c.end < k for c in cues)


def _tells(cues: tuple[Cue, ...], k: int) -> bool:
    """ "it's 1120 now and it reads 365": the line comes behind it."""
    return any(c.label in TOLD and c.start > k for c in cues)


def _arrived(cues: tuple[Cue, ...], toks: Toks, k: int) -> int:
    """ "back from CT, got here at 2240", "in theatre, they collected her at 1825": the at of when somebody
    was back or away; nought where it is not so."""
    went = "away" if word(toks, k) in FETCHED else "back"
    back = next((c for c in reversed(cues) if c.value == went and c.end < k), None)
    at = k + 1
    while word(toks, at) in WHERE | WHOM and not is_digits(toks, at + 1):
        at += 1
    if back is None or word(toks, at) not in AT or not is_whole_clock(toks, at + 1):
        return 0
    said = toks.said[back.end : k]
    return 0 if any(map(str.isdecimal, said)) or not HARD.isdisjoint(said) else at


def _at(toks: Toks, k: int) -> int:
    """Where the at stands behind what was read: "it", "at it"."""
    k += word(toks, k) in AT and word(toks, k + 1) in IT
    while word(toks, k) in IT or (word(toks, k) == "the" and word(toks, k + 1) in LINES):
        k += 1 + (word(toks, k) == "the")  # "I took the reading at 1840"
    return k


def _is_told(cues: tuple[Cue, ...], toks: Toks, end: int, labelled: Mapping[int, tuple[int, str]]) -> bool:
    """Whether the last number before, no bed, is told as a level: by its unit, its word or its length."""
    numbers = (k for k in range(end - 1, 0, -1) if is_digits(toks, k))
    k = next((k for k in numbers if word(toks, k - 1) not in BED_WORDS), 0)
    if not k or any(c.label in MEASURES and k - 1 <= c.end <= k for c in cues):
        return False
    led = k - 1 - (word(toks, k - 1) in AT)
    if word(toks, led) == "is" and word(toks, led - 1) in LINES:
        return True  # "17 line is at 1215, read at 1855"
    stood = word(toks, k - 1) in AT and word(toks, led) in {"is", "sits", "stands", "now"}
    if (stood or toks.said[k - 2 : k] in CLIMBED) and not PARTS.isdisjoint(toks.said[k + 1 : end]):
        return True  # "bed 27 is at 1100, calm today, read at 1005"
    if word(toks, k + 1) in VOLUMES and (glued(toks, k + 1) or word(toks, k + 1) != "l"):
        return True
    if is_whole_clock(toks, k):
        return False  # "mark 1850 read at 1900": which is the line?
    if any(c.label in TOLD | {"closing"} and c.end == k for c in cues):
        return True
    level = len(word(toks, k)) >= LEVEL and k not in labelled and word(toks, k - 1) != ":"
    return word(toks, led) in LINES or word(toks, k - 1) in TELLS or level
