"""Cues of what lies ahead, as the event beside it shows: "moving 11 to 19 in a few min", "for tube removal".

What has happened is told with other words: "moved", "drain removed after the ward round". Called by
`carriedout`.
"""

from __future__ import annotations

from collections.abc import Iterator

from .neighbours import begins_at, ends_at
from .numbers import Toks, is_digits, starts_number, word
from .patterns.circumstances import BECAUSE
from .patterns.leads import BED_WORDS
from .pipeline import Cue, overlaps, with_found

DOING = frozenset(
    {"moving", "changing", "swapping", "pulling", "removing", "taking", "transferring", "clamping"}
    | {"unclamping", "going", "heading", "sending", "discharging", "exchanging", "replacing", "switching"}
    | {"placing", "inserting", "turning", "putting", "shifting", "leaving", "coming", "stopping", "starting"}
)
NAMED = frozenset(
    {
        "removal",
        "change",
        "exchange",
        "swap",
        "replacement",
        "insertion",
        "placement",
        "transfer",
        "discharge",
    }
    | {"move", "trial", "clamping", "unclamping", "changeout", "pull"}
)
"""An event by its name: behind "for" it is waited for."""
PUT_IN = frozenset({"insertion", "placement"})
SWAPS = frozenset({"change", "exchange", "swap", "replacement", "changeout"})
DONE = frozenset(
    {"gone", "went", "came", "sent", "took", "taken", "left", "dc'd", "dcd", "d/c'd", "dced", "done", "was"}
    | {"were", "been", "has", "had", "just", "already", "ok'd", "back", "got", "did", "over", "finished"}
)
"""With one of these, or a word that ends in "ed", it was done."""
HAPPENING = frozenset({"removed", "exchanged", "placed", "moved", "away", "left"})
INCIDENTS = frozenset({"clamped", "unclamped", "suction_on", "suction_off", "dislodged"})
STOPS = frozenset({"", ".", ",", ";", "!", "but", "then"})
WHILES = frozenset(
    {"few", "bit", "moment", "sec", "second", "while", "jiffy", "minute", "min", "mo", "tick", "little"}
    | {"couple", "half", "hour", "mins"}
)
SHORTLY = frozenset({"shortly", "next", "momentarily", "afterwards"})
ASKING = frozenset({"?", "when", "what", "whats", "what's", "is", "are", "who", "which", "any", "anything"})
SINCE = frozenset({"after", "before", "ago", "to", "following"})
"""Behind "shortly" these say when it was."""
BEHIND = frozenset({"after", "once", "when", "following", "post", "pending"})
OCCASIONS = frozenset(
    {"round", "rounds", "lunch", "breakfast", "dinner", "tea", "supper", "handover", "handoff", "huddle"}
    | {"physio", "shower", "film", "scan", "review", "cleaned", "ready", "clean", "free", "available", "meds"}
    | {"bath", "wash", "report", "break", "premed", "analgesia", "visiting", "theatre", "clinic"}
)
WHOLE = 3
"""Numbers of a bed, its level and its time."""
REACH = 5
"""Words from "after" to what it is after: "after the morning ward round"."""
WAITS = frozenset({"for", "awaiting", "awaits", "pending"})
PLACES = frozenset(
    {"bed", "filler", "word", "side", "place", "tubeword", "canister", "plan", "other", "timeword"}
)
"""Cues that tell and ask nothing an event could be the purpose of, as it is in "report on 3 for transfer"."""
OF_TUBE = frozenset(
    {"the", "a", "his", "her", "an", "chest", "drain", "tube", "icd", "ct", "icc", "pleural", "left", "right"}
    | {"canister", "box", "bottle", "chamber", "pigtail", "clamp", "unit", "l", "r", "both", "mediastinal"}
)
"""Between "for" and the name of an event: "for left chest drain removal"."""
TOLD_AHEAD = DOING | NAMED | SHORTLY | BEHIND | WHILES | {"have", "new", "due"}
"""Without one of these nothing lies ahead."""


def with_ahead(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, and a plan wherever an event is told that lies ahead."""
    if TOLD_AHEAD.isdisjoint(toks.words):
        return cues
    told = (*_waited_for(cues, toks), *_later(cues, toks), *_going_as(cues, toks))
    found = [_as_remark(c, toks) for c in told]
    found = [c for k, c in enumerate(found) if not overlaps(c, found[:k])]
    return with_found(cues, found) if found else cues


def _waited_for(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "21 for drain removal", "awaiting a drain change", "to have the drain out"; "clamped for transfer"."""
    events = {k for c in cues if _is_event(c) for k in range(c.start, c.end)}
    held = {k for c in cues if c.label in {"plan", "what", "kind"} for k in range(c.start, c.end)}
    for k, text in enumerate(toks.said):
        if text == "have" and word(toks, k - 1) == "to":
            if events & set(range(k + 1, k + REACH)) and k not in held:
                yield Cue("plan", "", k - 1, k + 1)
        elif text in WAITS and (k not in held or word(toks, k - 1) == "clamped"):
            name = k + 1
            while word(toks, name) in OF_TUBE:
                name += 1
            start = begins_at(STOPS, toks, k)
            told = {c.label for c in cues if start <= c.start < k and c.label not in PLACES}
            new = word(toks, name) == "new" and word(toks, name + 1) in OF_TUBE  # "for new drain at 7"
            if told & {"kind", "what"} and word(toks, name) in PUT_IN:
                yield Cue("filler", "", k + 1, name + 1)  # "off to CT for a drain insertion"
            if not (new or word(toks, name) in NAMED) or "kind" in told:
                continue
            removal = "what" in told and word(toks, name) == "removal"
            if removal or (told and _is_swap(cues, toks, k, name)):
                yield Cue("filler", "", k + 1, name + 1)  # "clamped for drain removal"
            elif not told and not _is_done(toks, start, k):
                yield Cue("plan", "", k, k + 1)


def _going_as(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "tube out at 1410, as he is going home": why, and nobody left yet."""
    for cue in cues:
        before = toks.said[max(0, cue.start - 4) : cue.start]
        why = not BECAUSE.isdisjoint(before) and word(toks, cue.start) == "going"
        if why and cue.value in {"left", "away"} and any(_is_event(c) for c in cues if c.end <= cue.start):
            yield Cue("filler", "", cue.start, cue.end)


def _is_swap(cues: tuple[Cue, ...], toks: Toks, k: int, name: int) -> bool:
    """ "clamped at 1340 for the canister swap": what for; with the old one told it was done, too."""
    told = any(c.label in {"old", "new"} for c in cues)
    return word(toks, name) in SWAPS and name > k + 1 and not told


def _later(cues: tuple[Cue, ...], toks: Toks) -> Iterator[Cue]:
    """ "in a few min", "shortly", "after the ward round" behind an event that was not told as done."""
    for k in range(1, len(toks)):
        end = _later_end(toks, k)
        if toks.said[k : k + 2] == ("due", "to"):  # "changed at 1825, due to a leak"
            yield Cue("filler", "", k, k + 2)
        if end == k:
            continue
        start = begins_at(STOPS, toks, k)
        events = [c for c in cues if _is_event(c) and start <= c.start < k]
        doing = not DOING.isdisjoint(toks.said[start:k]) or any(
            not NAMED.isdisjoint(toks.said[c.start : c.end]) or word(toks, c.start) in {"to", "off"}
            for c in events
        )
        if doing and not _is_done(toks, start, k):
            yield Cue("plan", "", k, end)


def _as_remark(plan: Cue, toks: Toks) -> Cue:
    """ "340 at 0930, for drain removal today": behind a line, in a clause with no number, it says nothing."""
    end = ends_at(STOPS, toks, plan.end)
    start = begins_at(STOPS, toks, plan.start)
    before = sum(t.is_digits for t in toks[start : plan.start])
    if before >= WHOLE and is_digits(toks, plan.start - 1):
        start = plan.start  # "12 340 0930 for drain removal today"
    behind = start > 0 and sum(t.is_digits for t in toks[:start]) >= WHOLE
    bare = not any(starts_number(toks, k) or word(toks, k) in BED_WORDS for k in range(start, end))
    return Cue("filler", "", start, end) if behind and bare and plan.label == "plan" else plan


def _later_end(toks: Toks, k: int) -> int:
    """Where words for a later time end that begin here, or the same place."""
    text = word(toks, k)
    if text == "in":
        name = k + 1 + (word(toks, k + 1) in {"a", "about", "the"})
        return name + 1 if word(toks, name) in WHILES and not is_digits(toks, name - 1) else k
    if text == "due":  # "canister change for 4 due at 1300"; not "changed due to a crack", "is it due"
        return k + 1 if word(toks, k + 1) != "to" and ASKING.isdisjoint(toks.words) else k
    if text in SHORTLY:
        ends = not word(toks, k + 1).isalpha() and not is_digits(toks, k + 1)
        return k + 1 if (ends or text == "shortly") and word(toks, k + 1) not in SINCE else k
    if text in BEHIND:
        said = toks.said[k + 1 : k + 1 + REACH]
        reach = next((j for j, w in enumerate(said) if w in STOPS or w.isdecimal()), len(said))
        return k + 1 if not OCCASIONS.isdisjoint(said[:reach]) else k
    return k


def _is_event(cue: Cue) -> bool:
    return cue.value in {"kind": HAPPENING, "what": INCIDENTS}.get(cue.label, frozenset())


def _is_done(toks: Toks, start: int, end: int) -> bool:
    said = toks.said[start:end]
    return any(w in DONE or (w.endswith("ed") and w not in BED_WORDS and w not in WAITING) for w in said)


WAITING = frozenset({"listed", "booked", "consented", "planned", "scheduled", "prepped", "premed", "fasted"})
"""Whoever is so, waits for it."""
