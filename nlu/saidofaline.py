"""Cues of what is said of a line: where it goes, when it should be, whether there is one, who is due.

"the 2200 mark goes to bed 18 not 8", "has anybody checked bed 21". Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .goings import Rule, past
from .items import FULL_HOUR
from .numbers import is_digits, numbers, starts_number, word
from .oldones import Message
from .patterns.leads import BED_WORDS, LINES
from .pipeline import Cue

THINGS = frozenset({"tube", "tubes", "drain", "drains", "suction", "clamp", "canister", "box", "stitch"})
TAKING = frozenset(
    {"forget", "cancel", "scrap", "scratch", "ignore", "delete", "disregard", "undo", "strike"}
)
SAID = frozenset({"said", "told", "gave", "sent", "put", "entered", "wrote"})
TO_DO = frozenset({"do", "go", "see", "check", "mark", "read", "chart", "record"})
SOMEBODY = frozenset({"anyone", "anybody", "someone", "somebody"})


def _goes_to(said: Message) -> Iterator[Cue]:
    """ "the 2200 mark goes to bed 18 not 8": where the line belongs, and nobody goes."""
    toks = said.toks
    for k in range(2, len(toks) - 2):
        line = word(toks, k - 1) in LINES or (
            is_digits(toks, k - 1) and word(toks, k - 2) in BED_WORDS and not LINES.isdisjoint(toks.said[:k])
        )
        bed = past(toks, k + 1, frozenset({"to", "with", "under", "on", "in"}))
        named = word(toks, bed) in BED_WORDS or bed in said.beds
        label = bed + (word(toks, bed) in BED_WORDS)
        ends = [said.beds[label][0]] if label in said.beds else [n.end for n in numbers(toks, label)]
        named &= any(
            word(toks, end) in {"", ",", ".", ";", "not", "instead", "please", "and"} for end in ends
        )
        if line and word(toks, k) in {"goes", "go"} and bed > k + 1 and named:
            yield Cue("word", "belongs", k, k + 1)


def _should_be_at(said: Message) -> Iterator[Cue]:
    """ "the ten hundred mark I gave should be at 10:30 instead": when that line was, and no plan."""
    toks = said.toks
    for cue in said.cues:
        at = cue.end - 1
        plan = cue.label == "plan" and toks.said[cue.start : cue.end][-3:] == ("should", "be", "at")
        named = [k for k in range(1, cue.start) if word(toks, k) in LINES and word(toks, k - 1) != "a"]
        timed = (
            any(end == named[-1] for k in range(named[-1]) for end, _ in clocks(toks, k)) if named else False
        )
        whole = any(clock.colon or clock.sure for _, clock in clocks(toks, cue.end))
        if plan and timed and whole:
            yield cue._replace(label="kind", value="corrected", end=at)
            yield Cue("filler", "", at, at + 1)
            yield from (
                Cue("filler", "", k, k + 1)
                for k in range(named[-1], len(toks))
                if word(toks, k) in {"gave", "instead", "sent", "told", "you"}
            )


def _what_i_said(said: Message) -> Iterator[Cue]:
    """ "forget what I said about bed 3", "scrap what I told you for bed 6, the 1400 should be 380"."""
    toks = said.toks
    righted = any(c.value == "corrected" and word(toks, c.start) in {"should", "meant"} for c in said.cues)
    for k in range(len(toks) - 3):
        who = past(toks, k + 2, frozenset({"i", "we", "just", "already", "earlier"}))
        takes = word(toks, k) in TAKING and word(toks, k + 1) == "what" and who > k + 2
        if takes and word(toks, who) in SAID:
            end = past(toks, who + 1, frozenset({"you", "just", "now", "earlier"}))
            stop = next((j for j in range(end, len(toks)) if word(toks, j) in {",", "."}), len(toks))
            if not righted and any(starts_number(toks, j) for j in range(stop, len(toks))):
                continue  # "forget what I said about bed 3, it's 340 at 1800"
            yield Cue("filler", "", k, end) if righted else Cue("kind", "withdrawn", k, end)


def _back_to_me(said: Message) -> Iterator[Cue]:
    """ "read that back to me": to whom."""
    for cue in said.cues:
        if cue.value == "repeat" and said.toks.said[cue.end : cue.end + 2] == ("to", "me"):
            yield cue._replace(end=cue.end + 2)


def _take_out(said: Message) -> Iterator[Cue]:
    """ "take bed 11's 0400 out", "please take off bed 14's nine am": a line, and no tube."""
    toks = said.toks
    for k in range(min(3, len(toks))):
        off = k + 1 + (word(toks, k + 1) in {"off", "out"})
        bed = off + (word(toks, off) in BED_WORDS)
        ends = [said.beds[bed][0]] if bed in said.beds else [n.end for n in numbers(toks, bed)]
        owned = [end + 2 for end in ends if toks.said[end : end + 2] == ("'", "s")] or ends
        timed = [
            last for end in owned for last, clock in clocks(toks, end) if clock.sure or clock.style == "24"
        ]
        if word(toks, k) != "take" or bed == off or not timed or THINGS & toks.words:
            continue
        out = past(toks, max(timed), LINES | {"one"})
        if off > k + 1 or word(toks, out) in {"out", "off", "away"}:
            yield Cue("kind", "withdrawn", k, off)
            yield from [Cue("filler", "", out, out + 1)] * (off == k + 1)


def _left_to_do(said: Message) -> Iterator[Cue]:
    """ "who have I got left to do": what remains, and no left tube."""
    toks = said.toks
    for k in range(1, len(toks) - 2):
        side = any(c.label == "side" and c.start == k for c in said.cues)
        if side and word(toks, k + 1) == "to" and word(toks, k + 2) in TO_DO:
            yield Cue("word", "left", k, k + 1)


def _asks_aloud(said: Message) -> Iterator[Cue]:
    """ "has anybody checked bed 21", "have you got anything for bed 13", "do you know if 5 is clamped"."""
    toks = said.toks
    first = past(toks, 0, frozenset({"okay", "ok", "so", "hey", "hi", "um", "and", ","}))
    who = word(toks, first + 1)
    seen = who in SOMEBODY and not toks.words.isdisjoint({"check", "checked", "checks"})
    if word(toks, first) in {"has", "have", "do"} and (who in {"you", "i", "we", "they"} or seen):
        yield Cue("question", "", first, first + 1)


def _due_for(said: Message) -> Iterator[Cue]:
    """ "who's due for a line right now": for what, and no line of another sort."""
    toks = said.toks
    for cue in said.cues:
        line = past(
            toks, cue.end + 1, frozenset({"a", "an", "another", "their", "the", "next", "new", "his", "her"})
        )
        if cue.value == "due" and word(toks, cue.end) == "for" and word(toks, line) in LINES:
            yield cue._replace(end=line + 1)


def _before_leaving(said: Message) -> Iterator[Cue]:
    """ "off to CT at 1410, line before leaving 735", "level before going is 1265": the line of then."""
    toks = said.toks
    if not any(c.value in {"away", "left", "moved"} for c in said.cues):
        return
    for k in range(1, len(toks)):
        line = word(toks, k - 1) in LINES | {"level"} and word(toks, k) in {"before", "at", "on"}
        end = past(toks, k + 1, GOING)
        gone = {"leaving", "going", "departure", "transfer", "left", "went"} & set(toks.said[k:end])
        short = word(toks, k) == "before" and len(word(toks, end)) < FULL_HOUR
        if line and (gone or short) and starts_number(toks, end):
            yield Cue("filler", "", k, end)


GOING = frozenset(
    ["going", "leaving", "he", "she", "they", "pt", "left", "went", "departure", "transfer", "transport"]
) | frozenset({"the", "ct", "scan", "theatre", "or", "to", "was", "is", ":", "of", "we"})
SAID_OF_A_LINE: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset({"has", "have", "do"}), _asks_aloud),
    (frozenset({"due", "overdue"}), _due_for),
    (frozenset({"what"}), _what_i_said),
    (frozenset({"left"}), _left_to_do),
    (frozenset({"take"}), _take_out),
    (frozenset({"me"}), _back_to_me),
    (frozenset({"goes", "go"}), _goes_to),
    (frozenset({"should"}), _should_be_at),
    (frozenset({"before", "leaving", "departure"}), _before_leaving),
)
"""Each rule with the words of which it needs one."""
