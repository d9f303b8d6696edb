"""Cues of who goes where, told in sentences: "theatre have taken bed 5", "CT8 to OT", "bed 3 going to 16".

What has happened, beside what only lies ahead or says when something was. Called by `narrated`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from .clock import clocks
from .endings import WENT
from .neighbours import begins_at
from .numbers import Toks, is_digits, starts_number, word
from .oldones import Message
from .patterns.leads import BED_WORDS, SHORT_BED_WORDS
from .patterns.narrated import FASTING, OUTINGS, PLACES, STOPS, TAKING
from .pipeline import Cue

GOING = frozenset({"going", "goes", "gone"})
TO = frozenset({"to", "\u2192", "\u21d2", ">"})
FROM = frozenset({"\u2190", "<"})
"""Arrows back to the bed."""
OPENS = frozenset({"", ",", ";", ".", "!", "and", "so", "then"})
PERSONS = frozenset({"he", "she", "they", "pt", "patient", "we", "i"})
DAYS = frozenset({"morning", "afternoon", "evening", "today", "tonight", "lunchtime"})
CALLING = frozenset({"rang", "called", "phoned", "spoke", "paged", "bleeped", "asked", "messaged"})
WHERE = frozenset({"in", "on", "at", "during"})
OCCASIONS = frozenset({"when", "as", "after", "once"})
JOINTS = frozenset({",", ";", ".", "!", "and", "&", "then", "now", "but", "for", "so", "before"})
"""Between what happened and a place these begin something new."""
SPEAKING = frozenset({"i", "i'm", "im", "i'll", "we're", "my", "we"})
OF_PATIENT = frozenset({"he", "she", "him", "her", "pt", "patient", "them", "took", "taking", "sent", "bed"})
"""With one of these the speaker tells of a patient."""
OF_NURSES = frozenset({"the", "my", "our", "nurses", "nurse's", "nursing", "nurses'"})
DESKS = frozenset({"desk", "station", "computer", "office", "pc", "keyboard", "work", "it"})
"""Back at these is who writes."""
LONGEST_LABEL = 3
"""Digits of a bed."""
FETCHING = PLACES | {"porters", "porter", "transport"}
"""Who fetches patients, named by where they are from."""
Rule = Callable[[Message], Iterator[Cue]]


def past(toks: Toks, k: int, words: frozenset[str]) -> int:
    """The first place behind these words."""
    while word(toks, k) in words:
        k += 1
    return k


def bed_ends(said: Message, k: int) -> bool:
    """Whether the label of a bed may end before this place."""
    return is_digits(said.toks, k - 1) or any(end == k for end, _ in said.beds.values())


def _fasting(said: Message) -> Iterator[Cue]:
    """ "NPO for bronch", "down for theatre, nil by mouth": who fasts has not gone."""
    for cue in said.cues:
        begins = cue.value == "away" and word(said.toks, cue.start) in {"for", "down"}
        if begins and "for" in said.toks.said[cue.start : cue.end]:
            this = word(said.toks, cue.end) == "this"
            day = word(said.toks, cue.end + this) in DAYS
            yield Cue("word", "fasting", cue.start, cue.end + (this + day if day else 0))


def _away_where(said: Message) -> Iterator[Cue]:
    """ "leaving for X-ray": the place is of the going."""
    for cue in said.cues:
        if cue.value in {"away", "back"}:
            place = past(said.toks, cue.end, frozenset({"the", "an", "a", "his", "her"}))
            end = place if place in said.beds else _place_end(said.toks, place)  # "to x-ray CT4"
            start = cue.start
            while word(said.toks, start - 1) in {"went", "come", "came", "gone", "just"}:
                start -= 1
            if end > place or start < cue.start:
                yield cue._replace(start=start, end=max(cue.end, end if end > place else 0))


def _outing(said: Message) -> Iterator[Cue]:
    """ "she's going for a walk": a few steps, and not yet."""
    for cue in said.cues:
        steps = word(said.toks, cue.end - 1) in OUTINGS and word(said.toks, cue.start) == "going"
        if cue.value == "away" and steps:
            yield Cue("word", "way", cue.start, cue.end)


def _sent_there(said: Message) -> Iterator[Cue]:
    """ "CT8 to OT", "11 -> CT", "8 << CT": where the patient of a bed went or came from, and nothing else."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        if word(toks, k) not in TO | FROM:
            continue
        back = word(toks, k) in FROM
        start = k - (word(toks, k - 1) == ("<" if back else "-") and word(toks, k) in {">", "<"})
        place = past(toks, k + 1, frozenset({"the", "-"} if back else {"the"}))
        end = _place_end(toks, place)
        behind = word(toks, end) in STOPS | {"at", "@", "with"} or bool(clocks(toks, end))
        if bed_ends(said, start) and _opens(said, start) and end > place and behind:
            yield Cue("kind", "back" if back else "away", start, end)


def _place_end(toks: Toks, k: int) -> int:
    """Where the name of a place ends that begins here; the same place if it is none."""
    if word(toks, k) == "x" and word(toks, k + 1) == "-" and word(toks, k + 2) == "ray":
        return k + 3
    if word(toks, k) in {"cath", "ct"} and word(toks, k + 1) in {"lab", "scan"}:
        return k + 2
    return k + (word(toks, k) in PLACES)


def _opens(said: Message, end: int) -> bool:
    """Whether the label that ends here opens the message or its clause."""
    starts = [start for start, (last, _) in said.beds.items() if last == end]
    k = starts[0] if starts else end - 1
    k -= word(said.toks, k - 1) in SHORT_BED_WORDS
    return word(said.toks, k - 1) in OPENS


def _taken(said: Message) -> Iterator[Cue]:
    """ "theatre have taken bed 5", "porters took 12": who fetches patients, and whom."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        if text not in TAKING or k == 0:
            continue
        who = k - 1
        while word(toks, who) in {"have", "has", "just", "'ve", "already", "came", "and", "are", "is", "now"}:
            who -= 1
        bed = past(toks, k + 1, frozenset({"pt", "patient", "our", "the", "in"}) | BED_WORDS)
        named = word(toks, bed - 1) in BED_WORDS and starts_number(toks, bed)
        fetches = word(toks, who) in FETCHING and word(toks, who - 1) in OPENS | {"the"}
        if fetches and (named or bed in said.beds):
            yield Cue("kind", "away", who, k + 1)


def _as_he_left(said: Message) -> Iterator[Cue]:
    """ "300 as he left": when that was, beside the going itself."""
    toks = said.toks
    going = [c for c in said.cues if c.value in {"away", "left", "moved"}]
    for k in range(1, len(toks) - 2):
        joined = word(toks, k) in {"as", "when", "before"} and word(toks, k + 1) in PERSONS
        gone = any(c.end <= k or c.start > k + 2 for c in going)
        if gone and joined and word(toks, k + 2) in WENT and word(toks, k + 3) in STOPS | {"and", "so"}:
            yield Cue("filler", "", k, k + 3)


def _going_to(said: Message) -> Iterator[Cue]:
    """ "bed 3 going to 16, moved at 1045": where to, before it is told as done."""
    toks = said.toks
    moved = [c for c in said.cues if c.value == "moved"]
    for k in range(1, len(toks) - 1):
        to = word(toks, k) in GOING and word(toks, k + 1) == "to"
        end = past(toks, k + 2, BED_WORDS)
        first = k - 2 * (toks.said[k - 2 : k] == ("'", "s")) - (word(toks, k - 1) in {"has", "is"})
        if not (to and bed_ends(said, first) and starts_number(toks, end) and len(moved) == 1):
            continue
        done = moved[0]
        if done.start > end and word(toks, done.start) in {"moved", "transferred", "shifted"}:
            yield Cue("kind", "moved", k, k + 2)
            yield Cue("filler", "", done.start, done.start + 1)


def _called_about(said: Message) -> Iterator[Cue]:
    """ "the surgeon rang back about 207": whom it was about, and no rough number."""
    toks = said.toks
    for k in range(1, len(toks) - 1):
        verb = k - 1 - (word(toks, k - 1) in {"back", "me", "us", "again"})
        about = word(toks, k) in {"about", "re", "regarding"} and word(toks, verb) in CALLING
        label = is_digits(toks, k + 1) and len(word(toks, k + 1)) <= LONGEST_LABEL
        if about and label and word(toks, k + 2) in STOPS | {"and", "who", "to", "he", "she", "they"}:
            back = word(toks, k - 1) == "back" and verb < k - 1
            yield Cue("bed", "", k, k + 1)
            yield from [Cue("filler", "", verb, k)] * (back or verb == k - 1)


def _where_it_was(said: Message) -> Iterator[Cue]:
    """ "clamped at 1950 in CT", "tipped on the way to theatre": where it happened, and nobody went."""
    toks = said.toks
    happened = [c for c in said.cues if c.label == "what"]
    for cue in said.cues if happened else ():
        first = word(toks, cue.start)
        start = cue.start - (first not in WHERE)
        if cue.value == "back":  # "kinked when he came back from theatre"
            start = cue.start - 1
            while word(toks, start) in PERSONS:
                start -= 1
        came = start < cue.start - 1 or cue.end - cue.start > 1
        occasion = cue.value == "back" and came and word(toks, start) in OCCASIONS
        if not occasion and (cue.value not in {"away", "moved"} or word(toks, start) not in WHERE):
            continue
        if any(c.end <= start and JOINTS.isdisjoint(toks.said[c.end : start]) for c in happened):
            yield Cue("filler", "", start, cue.end)


def _of_speaker(said: Message) -> Iterator[Cue]:
    """ "640 at 2000, on my way to theatre", "be right back", "back at the desk": who writes."""
    toks = said.toks
    for cue in said.cues:
        if cue.value not in {"away", "back"}:
            continue
        start = begins_at(STOPS, toks, cue.start)
        before = toks.said[start : cue.end]
        mine = not SPEAKING.isdisjoint(before) and OF_PATIENT.isdisjoint(before)
        behind = set(toks.said[cue.end : cue.end + 2])
        mine |= cue.value == "back" and not behind.isdisjoint({"my", "our"})  # "back after my break"
        alone = mine and not any(starts_number(toks, k) for k in range(start, cue.end))
        soon = cue.value == "back" and toks.said[cue.start - 2 : cue.start] == ("be", "right")
        place = past(toks, cue.end + 1, OF_NURSES)
        desk = cue.value == "back" and word(toks, cue.end) in {"at", "to"} and word(toks, place) in DESKS
        if soon or desk or (alone and word(toks, cue.end) != "with"):
            yield Cue("word", "way", cue.start - 2 * soon, place + 1 if desk else cue.end)


GOINGS: tuple[tuple[frozenset[str], Rule], ...] = (
    (FASTING, _fasting),
    (PLACES | {"x", "come", "just"}, _away_where),
    (OUTINGS, _outing),
    (TO | FROM, _sent_there),
    (TAKING, _taken),
    (WENT, _as_he_left),
    (GOING, _going_to),
    (WHERE | OCCASIONS, _where_it_was),
    (SPEAKING | DESKS | {"right"}, _of_speaker),
    (CALLING, _called_about),
)
"""Each rule with the words of which it needs one."""
