"""The cues of a message as the rest of it makes them: beds that are labels, events told around a bed,
words that mean something else beside what else was said. Called by `read`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from .alarms import with_alarms
from .asbefore import as_before
from .askedfor import with_moved_line, with_taken_back
from .assured import with_certainty
from .beside import WATER_SEALS, of_their_like
from .bidden import bidden
from .bridging import bridged, of_whose_box, sent
from .carriedout import with_carried_out
from .changes import with_changes
from .clock import clocks
from .dials import read_off
from .elsewhere import elsewhere
from .endings import with_endings
from .everyday import everyday
from .followers import DEEP
from .goingin import with_going_in
from .idle import without_idle
from .items import FULL_HOUR
from .labels import names_tube
from .lately import with_late
from .leaks import leaks
from .letters import with_lettered
from .measured import measured
from .narrated import narrated
from .neighbours import SIDES, is_setting, number_follows, phrase_of
from .newcomers import with_newcomers
from .numbers import Toks, is_digits, starts_number, word
from .occasions import with_occasions
from .ofeach import EACH, of_each
from .patterns.leads import BED_WORDS
from .patterns.levels import VOLUMES
from .patterns.places import PLACES
from .pipeline import Cue, Read, in_order, pipeline
from .plainly import plainly
from .prefaced import prefaced
from .rooms import bays
from .signing import signed
from .tallies import how_many, parts, tallies
from .turnedaway import turned_away
from .wall import capitals, without, written
from .whyin import with_reasons

ENDING = frozenset({"exchanged", "removed", "placed"})
"""With these told, the last line is the final level of a canister."""
FULL = frozenset({"was full", "it was full"})
STOPS = frozenset({",", ";", ".", "!", "and", "but", "then"})
LOOKED_OVER = frozenset({"suction", "sxn", "sx", "seal", "wall", "checked", "checking", "check", "?", "or"})
"""With one of these in the message a water seal that is named may only be what was looked at."""
ORDERED = frozenset(
    {"order", "orders", "ordered", "wants", "want", "wanted", "says", "said", "requested", "asked"}
)
DIED = frozenset(
    {"at", "away", "in", "around", "about", "on", "peacefully", "this", "today", "yesterday", "last", "just"}
    | {"bed", "room", "rm", "family", "now", "with", "and", "early", "overnight", "sadly", "suddenly", "noon"}
)
"""Behind "passed" these leave it a death."""
CANISTERS = frozenset(PLACES["canister"])
OLD = frozenset({"old", "prev", "previous"})
FRESH = frozenset({"new", "fresh"})
ON_SUCTION = frozenset({"canister on suction", "cannister on suction"})
GRAVITY_SEAL = "gravity seal"
READS = frozenset({"is", "was", "reads", "read", "="})
SETTINGS = frozenset({"seal", "suction", "gauge", "dial", "vacuum"})
AGREED = frozenset({"that's right", "thats right"})
AGREED_BEFORE = frozenset({"", ",", ".", ";", "thanks", "yes"})
_ASKING = "who when where what why how and so ok hey hi which but"
ASKING = frozenset(_ASKING.split())
SHORT = 3
"""Words and signs of "bed 12,": before an answer no more is said."""
CALLING = frozenset({"paging", "paged", "calling", "called", "bleeping", "bleeped", "page", "call", "bleep"})
WAITED_FOR = ("waiting on", "waiting for")
OF_ME = frozenset({"", "?", ".", ",", "!", "from", "for", "on", "in", "bed", "room", "rm", "still", "now"})
"""Behind "anything waiting on" these leave it a question of what is asked."""
REPEATED = frozenset(
    {"that", "it", "this", "please", "pls", "plz", "last", "the", "your", "my", "bed", "room", "rm", "again"}
    | {"all", "what", "for", "on", "and", "back", "reading", "line", "mark", "message", "msg", "reply", "one"}
    | {"answer", "handoff", "handover", "report", "total", "everything", "both", "left", "right", "just"}
)
SET_SO = frozenset({"leak", "air", "with", "since", "swinging", "tidaling", "nil"})
WHOLE = frozenset({"bed", "filler", "level", "kind", "side", "tubeword", "ml"})
"""The commonest labels, of which no cue is two."""
UPDATED = frozenset({":", ",", "-", "on", "for", "re", "bed", "beds", "room", "rm", "bay"})
RIGHTING = frozenset(
    {"to", "from", "was", "instead", "should", "not", "wrong", "it", "that", "correct", "mistake", "error"}
    | {"typo", "misread", "previous", "earlier"}
)
"""With one of these an update puts something right."""
SEVERAL = frozenset({"lines", "marks", "levels", "readings"})
DRAWING = frozenset({"drew", "draw", "drawn", "drawing"})
LAST_LINES = frozenset({"last line", "last level"})


def with_cues(read: Read, index: Mapping[str, str] | None, *, voice: bool = False) -> Read:
    """The message with its cues as they are meant; `index` are the labels of the unit."""
    labelled = written(read.tokens, index, voice=voice)
    labelled = {**labelled, **capitals(read.text, read.tokens, index)} if voice else labelled
    cues = pipeline().cues(without(read.tokens, labelled)) if labelled else read.cues
    stands = (*bays(read.tokens, index, voice=voice), *tallies(read.tokens, voice=voice), *parts(read.tokens))
    stands = (*stands, *how_many(read.tokens))
    cues = _where_beds_stand(cues, stands) if stands else cues
    cues = tuple(part for cue in cues for part in _with_its_tube(cue, read.tokens))
    cues = measured(elsewhere(cues, read.tokens, index), read.tokens)
    cues = cues if voice else with_certainty(cues, read.tokens)
    cues = tuple(_spoken(cue, read.tokens) for cue in cues) if voice else cues
    toks = read.tokens
    cues = signed(with_alarms(cues, toks), toks, voice=voice)
    cues = cues if voice else with_lettered(cues, read._replace(labelled=labelled), index)
    cues = prefaced(narrated(cues, toks, labelled), toks)
    around = of_whose_box(bridged(sent(cues, toks, labelled, index), toks, labelled), toks)
    around = with_going_in(around, toks, index)
    found = as_before(of_their_like(bidden(recast(around, toks), toks), toks), toks)
    found = of_each(leaks(with_occasions(read_off(found, toks), toks), toks), toks)
    found = with_endings(plainly(found, toks, labelled), toks, labelled)
    found = with_late(everyday(with_carried_out(found, toks), toks), toks)
    found = with_reasons(without_idle(found, toks, labelled), toks, voice=voice)
    found = with_newcomers(found, toks, voice=voice)
    return read._replace(cues=found, labelled=labelled)


def _is_old_box(cue: Cue, toks: Toks) -> bool:
    """ "new bottle connected, the removed bottle 1530": the old one, and no tube that was taken out."""
    return (
        word(toks, cue.end) in {"bottle", "canister", "box", "chamber"} and word(toks, cue.start - 1) == "the"
    )


def _with_its_tube(cue: Cue, toks: Toks) -> tuple[Cue, ...]:
    """ "pulled tube 1 on bed 12", "in the drain B of 7": the cue, and the tube that is named behind it."""
    if cue.value == "removed" and cue.end - cue.start == 1 and _is_old_box(cue, toks):
        return (cue._replace(label="old", value="canister", end=cue.end + 1),)
    if cue.label not in {"kind", "what", "inside"} or not names_tube(toks, cue.end):
        return (cue,)
    tube = Cue("tubeword", "", cue.end - 1, cue.end)
    kept = cue.end - cue.start > 1 and cue.label != "inside"
    return (cue._replace(end=cue.end - 1), tube) if kept else (tube,)


def _spoken(cue: Cue, toks: Toks) -> Cue:
    """ "mark like nine forty": whoever speaks says like for nothing; "lines for six pm bed two" says when."""
    says_nothing = cue.label == "about" and phrase_of(cue, toks) == "like"
    lines = cue.label == "level" and word(toks, cue.start) in SEVERAL and word(toks, cue.end) == "for"
    if lines and any(word(toks, end) in BED_WORDS for end, _ in clocks(toks, cue.end + 1)):
        return cue._replace(label="timeword", end=cue.end + 1)
    return cue._replace(label="filler", value="") if says_nothing else cue


def _where_beds_stand(cues: tuple[Cue, ...], stands: tuple[tuple[int, int], ...]) -> tuple[Cue, ...]:
    """The cues, with each bay that only says where a bed is, and each tally, as a word that says nothing."""
    inside = {k for start, end in stands for k in range(start, end)}
    kept = [cue for cue in cues if cue.start not in inside]
    kept += [Cue("filler", "", start, end) for start, end in stands]
    return in_order(kept)


def recast(cues: tuple[Cue, ...], toks: Toks) -> tuple[Cue, ...]:
    """The cues, each with the meaning that it has here."""
    cues = with_changes(cues, toks)
    cues = with_moved_line(with_taken_back(cues, toks), toks)
    ends = any(_ends(cue) for cue in cues)
    found = tuple(
        cue if cue.label == "bed" else _meant(cue, toks, ends=ends)
        for each in cues
        for cue in ((each,) if each.label in WHOLE else _apart(each, toks))
    )
    if not FRESH.isdisjoint(toks.words):
        if any(c.label == "old" and not OLD.isdisjoint(toks.said[c.start : c.end]) for c in found):
            found = tuple(_new_box(cue, toks) for cue in found)
        found = tuple(_of_the_new(cue, found[:k], toks) for k, cue in enumerate(found))
    if any(c.label == "change" for c in found) and not any(_is_changed(c, toks) for c in found):
        return tuple(_replaced(cue, found, toks) for cue in found)
    return found


def _is_changed(cue: Cue, toks: Toks) -> bool:
    """Whether a change is told; "replaced at 1835, fresh bottle zero" names the new one behind its own."""
    return cue.value == "exchanged" and word(toks, cue.start) not in FRESH


def _new_box(cue: Cue, toks: Toks) -> Cue:
    """ "new drain at 0515, old one 1140": beside an old one a new drain is what it drains into."""
    words = toks.said[cue.start : cue.end]
    drain = cue.value == "placed" and words[-1] == "drain" and not FRESH.isdisjoint(words)
    return cue._replace(value="exchanged") if drain else cue


def _of_the_new(cue: Cue, before: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "bottle changed, new one on 20 now": once it was told, what the new one is on."""
    on = word(toks, cue.start) in FRESH and word(toks, cue.end - 1) == "on"
    if not on or cue.value != "exchanged" or not any(c.value == "exchanged" for c in before):
        return cue
    number = word(toks, cue.end)
    level = len(number) < FULL_HOUR if number.isdecimal() else number_follows(toks, cue.end)
    return cue._replace(label="new", value="") if level and word(toks, cue.end + 1) != ":" else cue


def _apart(cue: Cue, toks: Toks) -> Iterator[Cue]:
    """The cue, or the two that it is: "disconnected from the canister at 2005" has a time, and no level."""
    dialled = cue.label == "other" and phrase_of(cue, toks) in ON_SUCTION and is_setting(toks, cue.end)
    if dialled:  # "canister on suction -20": what the drain's suction is set to, and no other canister
        yield Cue("canister", "", cue.start, cue.start + 1)
        yield Cue("suction", "", cue.start + 1, cue.end)
        return
    if (
        cue.label == "waterseal"
        and phrase_of(cue, toks).endswith(GRAVITY_SEAL)
        and starts_number(toks, cue.end)
    ):
        yield cue._replace(end=cue.end - 1)  # "to gravity, seal 2"
        yield Cue("seal", "", cue.end - 1, cue.end)
        return
    if phrase_of(cue, toks) == "water seal at" and len(word(toks, cue.end)) == FULL_HOUR:
        yield cue._replace(end=cue.end - 1)  # "ordered water seal at 1830": no seal is so deep
        yield Cue("filler", "", cue.end - 1, cue.end)
        return
    if cue.label == "plan" and word(toks, cue.end - 1) == "under" and word(toks, cue.end) in BED_WORDS:
        if cue.end - cue.start > 1:  # "should be under bed 6"
            yield Cue("kind", "corrected", cue.start, cue.end - 1)
        yield Cue("filler", "", cue.end - 1, cue.end)
        return
    of_bed = word(toks, cue.start - 1) == "of" and word(toks, cue.end) in BED_WORDS | EACH
    if phrase_of(cue, toks) == "suction on" and of_bed:  # "20 of suction on bed 2"
        yield Cue("suction", "", cue.start, cue.end - 1)
        yield Cue("filler", "", cue.end - 1, cue.end)
        return
    if cue.label in {"new", "levelat"} and toks.said[cue.end - 2 : cue.end] == ("now", "at"):
        yield from _now_at(cue)
        return
    if cue.label != "levelat" or not _is_at_time(cue, toks):
        yield cue
        return
    yield cue._replace(label="canister", end=cue.end - 1)
    yield cue._replace(label="filler", value="", start=cue.end - 1)


def _now_at(cue: Cue) -> Iterator[Cue]:
    """ "is now at 1060", "new one now at 20": that is when."""
    yield from [Cue("filler", "", cue.start, cue.end - 2)] * (cue.start < cue.end - 2)
    yield Cue("levelat", "", cue.end - 1, cue.end)


def _is_at_time(cue: Cue, toks: Toks) -> bool:
    """ "off the canister at 2005", "canister at 2005 was 340": with a time behind it, the at is of that."""
    if word(toks, cue.start) not in CANISTERS or word(toks, cue.end - 1) != "at":
        return False
    before = cue.start - 1 - (word(toks, cue.start - 1) in {"the", "his", "her"})
    off = word(toks, before) in {"from", "off"} or _is_told_before(cue, toks)
    times = clocks(toks, cue.end)
    return any(off or (word(toks, end) in READS and number_follows(toks, end + 1)) for end, _ in times)


def _is_told_before(cue: Cue, toks: Toks) -> bool:
    """ "340 in bed 11's box at 1700": with a level in its clause, the at is of the time."""
    k = cue.start - 1
    while word(toks, k) and word(toks, k) not in STOPS:
        lined = word(toks, k) in {"on", "in"} and len(word(toks, k - 1)) == FULL_HOUR - 1
        if (lined or word(toks, k) in VOLUMES) and is_digits(toks, k - 1):
            return len(word(toks, cue.end)) == FULL_HOUR  # "845 on the box at 2255"
        k -= 1
    return False


def _replaced(cue: Cue, cues: tuple[Cue, ...], toks: Toks) -> Cue:
    """ "box cracked replaced with new": what was replaced is the canister that its clause names."""
    if cue.label != "change":
        return cue
    named = (c for c in cues if c.label == "canister")
    for canister in named:
        first, last = sorted((cue.start, canister.start))
        if not any(word(toks, k) in STOPS for k in range(first, last)):
            return cue._replace(label="kind", value="exchanged")
    return cue


def _meant(cue: Cue, toks: Toks, *, ends: bool) -> Cue:
    """The cue with its meaning; `ends` where a canister or a tube came to its end, or began."""
    words = phrase_of(cue, toks)
    if words in LAST_LINES and not ends and _is_of_bed(cue, toks):
        return cue._replace(label="ask", value="last")
    if cue.value == "placed" and word(toks, cue.start) == "did" and not _is_doer(word(toks, cue.start - 1)):
        return cue._replace(label="question", value="", end=cue.start + 1)  # "who did a chest tube on 12"
    if words in FULL and not number_follows(toks, cue.end):  # "changed it as it was full"
        return cue._replace(label="word", value="full")
    if words == "update" and _is_heading(word(toks, cue.end)) and RIGHTING.isdisjoint(toks.words):
        return cue._replace(
            label="filler", value=""
        )  # "update: bed 3 is now 415", "update bed 12 986 at noon"
    if words == "passed" and word(toks, cue.end).isalpha() and word(toks, cue.end) not in DIED:
        return cue._replace(label="word", value=words)  # "passed clamp trial"
    if cue.label == "side" and word(toks, cue.start - 1) in SETTINGS and word(toks, cue.end) == "at":
        return cue._replace(label="filler", value="")  # "water seal right at two"
    if cue.label == "reason" and word(toks, cue.start - 1) in CALLING:  # "paging trauma now": the team
        return cue._replace(label="word", value=words)
    if words in AGREED and cue.start <= SHORT and word(toks, cue.end) in AGREED_BEFORE:
        return cue._replace(label="yes", value="")
    if cue.label == "other" and words.endswith(" at") and not number_follows(toks, cue.end):
        return cue._replace(label="filler", value="")  # "what rate is 5 running at"
    if cue.value == "repeat" and words == "repeat" and _is_of_an_order(word(toks, cue.end)):
        return cue._replace(label="word", value=words)  # "dr wants repeat film"
    if cue.value == "open" and words.endswith(WAITED_FOR) and word(toks, cue.end) not in OF_ME:
        return cue._replace(label="plan", value="")  # "still waiting on that box for 3"
    if words == "down for" and (_is_put(cue, toks) or number_follows(toks, cue.end)):
        return cue._replace(label="filler", value="")  # "put bed 12 down for 340"
    if words == "a line" and word(toks, cue.start - 1) in DRAWING:  # of the level, and in no artery
        return cue._replace(label="level", value="")
    if words in WATER_SEALS and _is_state(cue, toks):
        return cue._replace(label="waterseal")
    return turned_away(cue, toks)


def _is_put(cue: Cue, toks: Toks) -> bool:
    """Whether the cue is behind a number, and somebody is to write it."""
    written = not {"put", "jot", "mark", "write", "chart"}.isdisjoint(toks.words)
    return written and word(toks, cue.start - 1).isdecimal()


def _is_heading(behind: str) -> bool:
    """Whether what stands behind "update" is what it heads."""
    return behind in UPDATED or behind[:1].isdecimal()


def _is_of_an_order(behind: str) -> bool:
    """Whether what is to be repeated is no message: "repeat film"."""
    return behind.isalpha() and behind not in REPEATED


def _is_doer(before: str) -> bool:
    """Whether the word before says who did it."""
    return before.isalpha() and before not in ASKING


def _is_state(cue: Cue, toks: Toks) -> bool:
    """ "19 ws, no leak": a bed on water seal; a small number behind a stop may be its depth."""
    bed = cue.start - 1
    before, number = word(toks, bed - 1), word(toks, bed)
    if any(word(toks, cue.start - k) in ORDERED for k in (1, 2)):
        return not number_follows(toks, cue.end)
    if (number in SIDES and not number_follows(toks, cue.end)) or word(toks, cue.end) == "since":
        return True  # "l sx 20 r ws", "water seal since 1500"
    ends = not word(toks, cue.end).isalnum() or word(toks, cue.end) in {"and", "no"}
    ends |= word(toks, cue.end) == "since" and number_follows(toks, cue.end + 1)
    if (ends or word(toks, cue.end) in {"leak", "air", "with"}) and _is_spoken_bed(toks, bed):
        return True
    if number in STOPS and _is_told_alone(cue, toks):
        return True
    if number.isdecimal() and len(number) > len("30") and (ends or word(toks, cue.end) in SET_SO):
        return True  # "190 at 1800 ws no leak": too much for its depth
    if not (ends and number.isdecimal()):
        return False
    return before in {"", "bed", "room", "rm"} or (before in {",", ";", "and"} and int(number[:4]) > DEEP)


def _is_told_alone(cue: Cue, toks: Toks) -> bool:
    """ "95 at 0700, no air leak, water seal": how its drain is set, where nothing else is said of a seal."""
    behind = word(toks, cue.end) in STOPS | {""} and not number_follows(toks, cue.end + 1)
    return behind and LOOKED_OVER.isdisjoint(toks.said[: cue.start] + toks.said[cue.end :])


def _is_spoken_bed(toks: Toks, k: int) -> bool:
    """ "bed ten water seal leak intermittent": a bed in words, and behind it how its drain is set."""
    last = k
    while word(toks, k).isalpha() and starts_number(toks, k):
        k -= 1
    return k < last and word(toks, k) in BED_WORDS


def _is_of_bed(cue: Cue, toks: Toks) -> bool:
    """ "last line for 21"; "that last line was for the left" is of a message."""
    return word(toks, cue.start - 1) not in {"that", "my"}


def _ends(cue: Cue) -> bool:
    """Whether a canister or a tube came to its end, or began."""
    return (cue.label == "kind" and cue.value in ENDING) or cue.label in {"canister", "change"}
