"""Cues of a line that comes late: "425 at 1700, never sent it", "forgot to send the 1700 on 10, was 500".

That it was not sent denies nothing of the line, and what was forgotten is the line of that time. Behind
"never sent that" it may be the line itself that is denied. Called by `recast`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from .clock import clocks
from .items import FULL_HOUR
from .neighbours import phrases_in
from .numbers import Toks, is_digits, starts_number, word
from .patterns.clockwords import NOON
from .patterns.leads import BED_WORDS
from .patterns.ownclauses import DRAINS
from .pipeline import Cue, with_found

UNSENT = frozenset(
    {"never", "didn't", "didnt", "did not", "haven't", "havent", "have not", "couldn't", "wasn't", "wasnt"}
    | {"was not", "hasn't", "hasnt", "not", "not been", "weren't", "unable", "unable to", "cant", "can't"}
    | {"nobody", "no one", "noone"}
)
SENDING = frozenset(
    {"sent", "send", "texted", "text", "charted", "chart", "recorded", "record", "logged", "log", "entered"}
    | {"enter", "messaged", "message", "reported", "report", "submitted", "do", "put", "tell", "give", "add"}
)
SENDING_NOW = frozenset({"sending", "texting", "charting", "logging", "entering", "reporting"})
HINDERED = frozenset({"get", "got", "to", "actually", "even", "managed", "manage", "been"})
"""Between the denial and the sending: "didn't get to send it"."""
OF_IT = frozenset(
    {"it", "this", "one", "in", "earlier", "before", "yet", "through", "at", "the", "time", "on", "then"}
    | {"sorry", "til", "till", "until", "now", "them", "these", "either", "you", "to"}
)
"""Behind it these say no more; "that" may be the line that is denied."""
STOPS = frozenset({"", ".", ",", ";", "!", "-", "(", ")", "as", "because", "bc", "cos", "cuz", "and", "no"})
FORGOT = frozenset({"forgot", "forgotten", "missed", "owe"})
MISSED = frozenset({"missed", "skipped"})
PAST = SENDING_NOW | {"putting", "doing"}
LATE = frozenset({"meant", "late", "delayed", "belated", "retro", "retrospective", "backdated", "ago"})
LATE |= MISSED | FORGOT | SENDING | SENDING_NOW
LATE |= {"only", "just", "got", "was", "been"}
THE = frozenset({"the", "my", "our", "a", "this"})
LINES = frozenset({"one", "mark", "line", "reading", "entry", "level", "hourly"})
SETTLING = frozenset({"choice", "kind", "neg", "no", "yes", "repair", "plan"})
"""With one of these behind it more is told: "didn't record it, misread"."""
OPENING = frozenset(
    {"sorry", "oops", "i", "so", "ah", "also", "and", "apologies", "just", "completely", "totally"}
)
DOING = frozenset({"put", "do", "give", "add"})
OF_SENDING = frozenset({"you", "in", "this", "these", "earlier", "through", "it", "that"})
TELLING = frozenset({"was", "is", "were", "read", "reads", ":"})
HEADING = frozenset({"late", "delayed", "belated", "retro", "retrospective", "backdated"})
HEADED = LINES | {"note", "update", "charting", "again", "documentation", "event", "chart", "report", "msg"}
_OURSELVES = "(?:(?:i|we) |i've |we've )?"
ASIDES = re.compile(
    "(?<![^ ])(?:"
    r"sorry (?:, )?(?:it's|its|this is|i'm|im|that's) (?:(?:a|bit|so|very|really|running|coming) )*"
    rf"(?:late|delayed)|{_OURSELVES}(?:only|just) (?:just )?(?:got|getting|gotten) (?:a?round )?"
    "to (?:it|this|him|her)(?: now)?|"
    rf"{_OURSELVES}(?:got|was|were|been) (?:pulled|called|dragged|stuck|caught|tied|held)(?: up| away)? "
    "(?:into|to|in|with|by) (?:a|an|the|another) (?:(?:rapid|crash|cardiac|new|code) )?"
    "(?:code|codes|arrest|rapid|response|emergency|admission|admit|meeting|huddle|transfer|call|blue)"
    ")(?![^ ])"
)
"""Why a line comes late, in whole phrases."""
AT = frozenset({"at", "@", "as", ":"})
LEAST = 2
"""Numbers of a line: its bed and its level."""


def with_late(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, with what only says that a line comes late as words that say nothing of it."""
    if toks.words.isdisjoint(LATE):
        return cues
    late = [*_unsent(cues, toks), *_forgotten(cues, toks), *_only_now(toks), *_ago(toks), *_missed(toks)]
    late += [*_opening(toks), *_headed(toks)]
    late += _asides(toks)
    return with_found(cues, late) if late else cues


def _unsent(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "bed 7 425 at 1700, never sent it": behind a line that is told."""
    for start, end in _told_late(cues, toks):
        bare = end == start + 1  # "bed 12 1900 mark missed": there is none
        if bare or sum(starts_number(toks, k) for k in range(start)) < LEAST:
            continue
        while word(toks, end) in OF_IT:
            end += 1
        if word(toks, end) in STOPS and not any(c.start >= end and c.label in SETTLING for c in cues):
            yield Cue("filler", "", start, end)


def _only_now(toks: Toks) -> Iterator[Cue]:
    """ "meant to send this at 1600, bed 5 340", "5 was 340 at 1600, only sending now"."""
    for k, said in enumerate(toks.said):
        verb = k + 2 if toks.said[k + 1 : k + 2] == ("to",) or said == "should" else k + 1
        end = verb + 1
        while word(toks, end) in {"it", "this", "in"}:
            end += 1
        if (
            said in {"meant", "should"}
            and word(toks, verb) in SENDING
            and word(toks, end) in {"at", "earlier"}
        ):
            yield Cue("filler", "", k, end)
        elif said in {"only", "just"} and word(toks, verb) in SENDING_NOW and word(toks, end) == "now":
            yield Cue("filler", "", k, end + 1)


def _asides(toks: Toks) -> Iterator[Cue]:
    """ "sorry it's late", "only just got to it now", "pulled into a code"; not "it got pulled in a code"."""
    for start, end in phrases_in(ASIDES, toks):
        end -= word(toks, end - 1) == "now" and AT.isdisjoint(toks.said[:start])
        if word(toks, start - 1) not in DRAINS | {"it", "line", "tube", "tubing"}:
            yield Cue("filler", "", start, end)


def _missed(toks: Toks) -> Iterator[Cue]:
    """ "missed bed 5 at 1800", "forgot 13's 1500": there is no line of then."""
    for k, said in enumerate(toks.said):
        of_bed = said in MISSED and word(toks, k + 1) in BED_WORDS and starts_number(toks, k + 2)
        ends = _time_of_bed(toks, k + 1) if said in MISSED | FORGOT else 0
        alone = ends and not any(starts_number(toks, j) for j in range(ends, len(toks)))
        last = not any(starts_number(toks, j) for j in range(k, len(toks)))
        untold = last and said in MISSED and word(toks, k - 1) in {"was", "is", "got", "were"}
        if of_bed or alone or untold:  # "6 1700 was missed"
            yield Cue("neg", "", k, k + 1)


def _ago(toks: Toks) -> Iterator[Cue]:
    """ "marked 20 min ago at 760": when it was is told, so that it was at so much."""
    for k, said in enumerate(toks.said):
        if said == "ago" and word(toks, k + 1) == "at" and starts_number(toks, k + 2):
            whole = len(word(toks, k + 2)) == FULL_HOUR and any(clocks(toks, k + 2))
            yield from [Cue("levelat", "", k + 1, k + 2)] * (not whole)


def _told_late(cues: tuple[Cue, ...], toks: Toks) -> Iterator[tuple[int, int]]:
    """Where "never sent" or "forgot to send" begins and ends."""
    yield from ((cue.start, end) for cue in cues if (end := _sending(cue, toks)))
    for k, said in enumerate(toks.said):
        if said in FORGOT:
            to_send = word(toks, k + 1) == "to" and word(toks, k + 2) in SENDING
            yield k, k + 1 + 2 * to_send + (word(toks, k + 1) in PAST)


def _forgotten(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "forgot to send the 1700 for bed 10, was 500", "never sent the noon one on 10, it was 500"."""
    for start, end in _told_late(cues, toks):
        at = end + (word(toks, end) in {"in", "you"})
        ends = _time_of_bed(toks, at)
        if ends and any(starts_number(toks, k) for k in range(ends, len(toks))):
            yield Cue("filler", "", start, at)  # "forgot to text bed 5 at 1800, it was 580"
            owned = next((k for k in range(at, ends) if toks.said[k : k + 2] == ("'", "s")), 0)
            yield from [Cue("timeword", "", owned, owned + 2)] * (owned > 0)
            continue
        named = word(toks, at) in THE
        ends = _time(toks, at + named) if named or word(toks, at) in NOON else 0
        if ends:
            yield Cue("timeword", "", start, at + named)
        if ends and word(toks, ends) in LINES:
            yield Cue("filler", "", ends, ends + 1)


def _opening(toks: Toks) -> Iterator[Cue]:
    """ "forgot to send 8 was 1340 at 1", "meant to text bed 8 340 at 1": the line follows as if it headed the
    message; "forgot to send 8 to CT" and "forgot to chart bed 8 at 1800" are no line."""
    for k, said in enumerate(toks.said):
        if said not in FORGOT and said != "meant":
            continue
        opens = k == 0 or word(toks, k - 1) in STOPS | OPENING
        sends = word(toks, k + 1) == "to" and word(toks, k + 2) in SENDING - DOING
        if not (opens and sends):
            continue
        start = k + 3
        while word(toks, start) in OF_SENDING:
            start += 1
        bed = start + (word(toks, start) in BED_WORDS)
        told = word(toks, bed + 1) in TELLING and starts_number(toks, bed + 2)
        lined = is_digits(toks, bed + 1) and word(toks, bed + 2) in {"at", "@"} and is_digits(toks, bed + 3)
        if is_digits(toks, bed) and (told or lined):
            yield Cue("filler", "", k, start)


def _headed(toks: Toks) -> Iterator[Cue]:
    """ "late: changed the canister on 4 at 1800", "sorry, delayed entry - ...": it heads what comes late."""
    start = 0
    while word(toks, start) in OPENING | {","}:
        start += 1
    end = start + 1
    while word(toks, end) in HEADED:
        end += 1
    told = any(text.isalpha() and text not in BED_WORDS for text in toks.said[end : len(toks)])
    if told and word(toks, start) in HEADING and word(toks, end) in {":", "-", ",", ".", ";"}:
        yield Cue("filler", "", start, end)


def _time_of_bed(toks: Toks, k: int) -> int:
    """ "bed 5 at 1800", "13's 0200": where the time ends of the line of that bed that was forgotten, or 0."""
    k += word(toks, k) in BED_WORDS
    if not is_digits(toks, k):
        return 0
    owned = toks.said[k + 1 : k + 3] == ("'", "s")
    return _time(toks, k + 3 if owned else k + 2) if owned or word(toks, k + 1) == "at" else 0


def _sending(cue: Cue, toks: Toks) -> int:
    """Where "never sent" ends, or 0."""
    if cue.label != "neg" or " ".join(toks.said[cue.start : cue.end]) not in UNSENT:
        return 0
    k = cue.end
    while word(toks, k) in HINDERED:
        k += 1
    return k + 1 if word(toks, k) in SENDING else 0


def _time(toks: Toks, k: int) -> int:
    """Where a time that is plainly one ends: 1700, noon, 3 pm, seventeen hundred; or 0."""
    digits = word(toks, k).isdecimal()
    whole = digits and len(word(toks, k)) == FULL_HOUR
    plain = (end for end, c in clocks(toks, k) if whole or c.sure or (c.style == "24" and not digits))
    return max(plain, default=0)
