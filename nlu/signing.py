"""Cues of what only opens or closes a message: a heading, a yes to begin with, who speaks, a farewell.

"drain update, bed 4 at ...", "yes hi, log bed 4 ...", "this is Lin", "... thanks bye, over". Such words tell
nothing of a number, but alone some would: an update puts a line right, a yes answers. Called by `recast`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .fractions import litres
from .numbers import Toks, Value, numbers, starts_number, word
from .patterns.leads import BED_WORDS, LINES
from .patterns.levels import LITRES
from .patterns.signing import (
    AFTER_YES,
    AGAIN,
    BEFORE_UPDATE,
    BEHIND_A_NUMBER,
    CLOSINGS,
    GOING_ON,
    HALVES,
    HINTS,
    NO_HEADING,
    NOUNS,
    UNITS,
)
from .patterns.smalltalk import NAMES
from .pipeline import Cue, in_order

STOPS = frozenset({",", ".", ":", "-", "!", ";"})
LEVELS = frozenset({"level", "levelat"})
ALL_OF = frozenset({"those", "these", "they", "both", "all"})
ABOUT = frozenset({"about", "around", "roughly", "maybe", "just", "like"})
RIGHTED = frozenset({"was", "not", "should", "instead", "wrong", "correct"})
OF_A_LINE = frozenset({"be", "have", "read", "say", "been", "of", "not", ""})
LOGGING = frozenset({"log", "record", "note", "enter", "mark", "put"})
ASKING = frozenset({"what", "what's", "whats", "how", "how's", "when", "when's", "who", "who's", "which"})
SHIFTS = frozenset({"nights", "days", "lates", "earlies", "evenings"})
SET_AT = frozenset({"at", "for"})
IN_NUMBER = frozenset({"point", ".", ",", ":", "and"})
CLIMBING = frozenset({"came", "comes", "come", "up", "went", "got", "climbed", "rose"})
MODALS = frozenset({"can", "could", "would", "will"})
SPEAKING = frozenset({"bear", "let", "let's", "i'm", "i'll", "hang", "hold", "here"})
CLOSING_WORDS = 5
"""The longest phrase that closes a message, in words."""


def signed(cues: tuple[Cue, ...], toks: Toks, *, voice: bool) -> tuple[Cue, ...]:
    """The cues, what only opens or closes the message as words that say nothing."""
    if HINTS.isdisjoint(toks.words):
        return cues
    spans = [*_heading(cues, toks), *_polite(toks), *_said_when(cues, toks), *_whose(toks)]
    spans += _of_both_when(cues, toks)
    if voice:
        end = closing(toks)
        spans += [*_yes_first(cues, toks), *_right_first(toks), *_who(toks, end), *_once_more(toks)]
        spans += [(end, len(toks))] if end < len(toks) else []
    put = _put_down(toks)
    taken = [*spans, *put]
    kept = [c for c in cues if not any(c.start < end and c.end > start for start, end in taken)]
    kept += [*(Cue("filler", "", *span) for span in spans), *(Cue("levelat", "", *span) for span in put)]
    return in_order(kept)


def _put_down(toks: Toks) -> list[tuple[int, int]]:
    """ "put bed 5 down at 1200": what is written down for it; "old one down at 1830" is of a canister."""
    put = next((k for k, text in enumerate(toks.said) if text in {"put", "putting"}), len(toks))
    downs = (k for k in range(put, len(toks)) if word(toks, k) == "down")
    return [(k, k + 2) for k in downs if word(toks, k + 1) in SET_AT and starts_number(toks, k + 2)][:1]


def _heading(cues: tuple[Cue, ...], toks: Toks) -> Iterator[tuple[int, int]]:
    """ "drain update, room 2 is at 130": no line is put right; "update bed 2 to 130" puts one right."""
    first = next((k for k, text in enumerate(toks.said) if text in {"update", "updates"}), None)
    if first is None or not BEFORE_UPDATE.issuperset(toks.said[:first]):
        return
    stop = word(toks, first + 1) in STOPS
    lines = any(c.label in LEVELS | {"canister"} and c.start > first for c in cues) or "have" in toks.words
    plain = lines and not _puts_right(toks, first)
    asked = word(toks, first + 1) == "please" and word(toks, first + 2) in LOGGING
    heads = first > 0 or stop or asked or plain
    on_what = word(toks, first + 1) not in NO_HEADING or (
        plain and word(toks, first + 1) == "the" and word(toks, first + 2) in NOUNS
    )
    if (first > 0 and lines) or (heads and on_what):
        yield 0, first + 1 + stop


def _puts_right(toks: Toks, update: int) -> bool:
    """ "update bed 12 line to 1050", but not "update bed 12 line 1050 at twenty to eight"."""
    return not RIGHTED.isdisjoint(toks.said[update:]) or any(
        word(toks, k) == "to" and starts_number(toks, k + 1) and not _is_up_to(toks, k)
        for k in range(update, len(toks))
    )


def _is_up_to(toks: Toks, k: int) -> bool:
    """ "twenty to eight", "came to 340": no level that is put in the place of another."""
    before = word(toks, k - 1)
    return before in CLIMBING or (starts_number(toks, k - 1) and word(toks, k - 2) not in BED_WORDS)


def _said_when(cues: tuple[Cue, ...], toks: Toks) -> Iterator[tuple[int, int]]:
    """ "the line is 1325 and that was at 0230", "that was forty minutes ago": when it was read."""
    for cue in cues:
        if cue.value != "corrected" or toks.said[cue.start : cue.end] != ("that", "was"):
            continue
        led = any(starts_number(toks, k) and word(toks, k - 1) not in BED_WORDS for k in range(cue.start))
        at = cue.end + (word(toks, cue.end) in ABOUT)
        timed = word(toks, at) == "at" and any(clocks(toks, at + 1))
        timed |= any(clock.style == "ago" for _, clock in clocks(toks, at))
        if led and timed and not any(_rights(toks, k) for k in range(len(toks)) if k != cue.start + 1):
            yield cue.start, cue.end


def _of_both_when(cues: tuple[Cue, ...], toks: Toks) -> Iterator[tuple[int, int]]:
    """ "bed 1 110, bed 2 200, those were at seven": when they were read; "both are at 700" may be a line."""
    beds = [k for k in range(len(toks)) if word(toks, k) in BED_WORDS and starts_number(toks, k + 1)]
    for cue in cues if len(beds) > 1 else ():
        said = cue.label in LEVELS and toks.said[cue.start : cue.end] in {("were", "at"), ("are", "at")}
        ends = (
            [end for end, clock in clocks(toks, cue.end) if clock.style != "12" or clock.sure] if said else []
        )
        if (
            ends
            and cue.start > beds[-1] + 2
            and word(toks, cue.start - 1) in ALL_OF
            and max(ends) == len(toks)
        ):
            yield cue.start - 1, cue.end - 1
            yield cue.end - 1, cue.end


def _rights(toks: Toks, k: int) -> bool:
    """ "it should be 340"; nothing is put right by "he should settle"."""
    if word(toks, k) == "should":
        return word(toks, k + 1) in OF_A_LINE or not word(toks, k + 1).isalpha()
    return word(toks, k) in RIGHTED


def _whose(toks: Toks) -> Iterator[tuple[int, int]]:
    """ "the canister that belongs to bed 11": whose it is; "the 340 belongs to bed 11" puts a line right."""
    for k in range(2, len(toks)):
        if word(toks, k) == "belongs" and word(toks, k - 1) == "that" and word(toks, k - 2) in NOUNS:
            yield k - 1, k + 1 + (word(toks, k + 1) == "to")


def _polite(toks: Toks) -> Iterator[tuple[int, int]]:
    """ "can you mark bed 4 at 1550": what is to be written down, and no question."""
    for k in range(len(toks) - 1):
        if word(toks, k) in MODALS and word(toks, k + 1) in {"you", "u"}:
            verb = k + 2 + (word(toks, k + 2) in {"please", "pls", "just"})
            said = [j for j in range(verb, len(toks)) if starts_number(toks, j)]
            several = any(not starts_number(toks, j) for j in range(said[0], said[-1])) if said else False
            if word(toks, verb) in LOGGING and several:
                yield k, verb


def _yes_first(cues: tuple[Cue, ...], toks: Toks) -> Iterator[tuple[int, int]]:
    """ "yes hi log bed 4 at 500", "yeah there's 744 in the box in bed 4": nothing was asked."""
    if not cues or cues[0].label != "yes" or cues[0].start != 0:
        return
    end = cues[0].end + (word(toks, cues[0].end) in STOPS)
    begins = word(toks, end) in AFTER_YES | LOGGING - {"mark"} | ASKING
    if begins and any(starts_number(toks, k) for k in range(end, len(toks))):
        yield 0, end


def _right_first(toks: Toks) -> Iterator[tuple[int, int]]:
    """ "right bear with me, bed 12 ...": a word to begin with, and no side."""
    if word(toks, 0) == "right" and word(toks, 1 + (word(toks, 1) in STOPS)) in SPEAKING:
        yield 0, 1


def _who(toks: Toks, end: int) -> Iterator[tuple[int, int]]:
    """ "this is Lin" at either end, "Lin here", "from Lin", and a name alone behind a whole number."""
    for k, text in enumerate(toks.said[:end]):
        if text not in NAMES:
            continue
        last = k + 1
        if word(toks, k - 1) in {"is", "it's", "that's", "its", "thats"}:
            start = k - 1 - (word(toks, k - 2) in {"this", "it"} and word(toks, k - 1) == "is")
            shift = word(toks, last) in {"on", "from"} and word(toks, last + 1) in SHIFTS
            yield start, last + (word(toks, last) in {"here", "speaking"}) + 2 * shift
        elif word(toks, last) in {"here", "speaking"}:
            yield k, last + 1
        elif word(toks, k - 1) in {"from", "by"} and last == end:
            yield k - 1, last
        elif last == end and word(toks, k - 1 - (word(toks, k - 1) in STOPS)) in UNITS | HALVES:
            yield k, last


def _once_more(toks: Toks) -> Iterator[tuple[int, int]]:
    """ "line 735, I repeat 735", "that's 540 mL", "that's for bed 26": said before, and the same."""
    for k in range(1, len(toks)):
        phrase = next((p for p in AGAIN if toks.said[k : k + len(p.split())] == tuple(p.split())), None)
        if phrase is None:
            continue
        start = k + len(phrase.split())
        start += word(toks, start) in {"for", ","}
        bed = word(toks, start) in BED_WORDS
        end = _number_end(toks, start + bed)
        alike = (j for j in range(k) if (word(toks, j - 1) in BED_WORDS) == bed)
        same = any(_is_same(toks, j, start + bed, end) for j in alike)
        if bed and same and word(toks, end) in LINES:
            line, end = end + 1, _number_end(toks, end + 1)
            same = any(_is_same(toks, j, line, end) for j in range(k))
        elif bed and (word(toks, end) == "closing" or starts_number(toks, end)):
            same = False
        if same:
            yield k, end + (word(toks, end) in UNITS | {"l"})


def _number_end(toks: Toks, start: int) -> int:
    """Where the number ends that is said at a place, all its parts taken; the place where none is."""
    end = start
    while starts_number(toks, end) or (end > start and _joins_numbers(toks, end)):
        end += 1
    return end


def _joins_numbers(toks: Toks, i: int) -> bool:
    return word(toks, i) in {"hundred", "thousand", "oh", "o"} or (
        word(toks, i) in IN_NUMBER and starts_number(toks, i + 1)
    )


def _is_same(toks: Toks, first: int, start: int, end: int) -> bool:
    """Whether the number at the first place is that between the others, in the same words or not."""
    if end == start:
        return False
    parts = {item.amount for item in litres(toks, first) if item.amount}  # "half a litre, that's 500"
    if parts & _values(toks, start, end):
        return True
    last = _number_end(toks, first)
    if last == first:
        return False
    if toks.said[first:last] == toks.said[start:end]:
        return True
    told = _values(toks, first, last)
    return bool(told & _values(toks, start, end))


def _values(toks: Toks, start: int, end: int) -> set[Value]:
    """What the number between two places can be; in millilitres where litres stand behind it."""
    said = {n.value for n in numbers(toks, start) if n.end == end}
    return {value * 1000 for value in said} if word(toks, end) in LITRES else said


def closing(toks: Toks) -> int:
    """Where what closes the message begins: "thanks bye", "end of message", "okay over"."""
    end = len(toks)
    while (start := _last_phrase(toks, end)) < end:
        end = start
    return end if word(toks, end - 1) not in GOING_ON else len(toks)


def _last_phrase(toks: Toks, end: int) -> int:
    """Where the phrase begins that closes what stands before this place; the place where none does."""
    stop = end - (word(toks, end - 1) in STOPS)
    for length in range(CLOSING_WORDS, 0, -1):
        start = stop - length
        phrase = " ".join(toks.said[max(0, start) : stop])
        if start > 0 and (phrase in CLOSINGS or (phrase in BEHIND_A_NUMBER and _is_number(toks, start - 1))):
            return start
    return end


def _is_number(toks: Toks, i: int) -> bool:
    before = i - (word(toks, i) in STOPS)
    return starts_number(toks, before) or word(toks, before) in UNITS | HALVES | {"hundred", "thousand"}
