"""Cues of who was taken where and brought back: "took bed 6 to CT at 11:40 and we were back at 12:10".

Also who lies where now: "322's patient went into 301". Part of `narrated`, which calls these.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .followers import DIALLED
from .goings import FETCHING, Rule, bed_ends, past
from .numbers import Toks, numbers, word
from .oldones import Message, is_timed
from .patterns.asides import STAFF
from .patterns.leads import BED_WORDS
from .patterns.levels import MILLILITRES
from .patterns.narrated import PLACES, WHOSE
from .pipeline import Cue

TOOK = frozenset({"took", "brought", "wheeled", "sent", "pushed", "escorted", "accompanied", "taken"})
TRIPPED = frozenset(
    {"popped", "nipped", "ran", "dropped", "rolled", "walked", "delivered", "transported", "rushed"}
)
TRIPPED |= {"whizzed", "carted", "zipped", "shipped", "drove", "trundled", "hurried", "whisked", "handed"}
"""What is done with whoever is taken somewhere, and in other words with other things."""
TAKERS = frozenset(
    {"", "i", "we", "they", "just", "and", "then", ",", ".", ";", "so", "'ve", "ve", "ive", "i've"}
)
TAKERS |= STAFF
WHOM = frozenset(
    {"him", "her", "them", "patient", "pt", "the", "my", "our", "in", "from", "gentleman", "lady"}
)
WHEELING = frozenset(
    {"wheeling", "bringing", "taking", "pushing", "moving", "walking", "getting", "transferring"}
)
STOPS = frozenset({",", ".", ";", "and"})
LYING_IN = frozenset({"in", "at"})
"""Before a place these say where somebody is: "rolled bed 9 in the scan room"."""
BEING = frozenset({"was", "has", "been", "just", "is", "being", "got", "now", "pt", "patient"})
COLLECTED = frozenset({"collected", "fetched", "picked", "taken"})
TEAMS = frozenset({"staff", "team", "porters", "porter", "transport", "crew", "nurse", "nurses"})
HAVING = frozenset({"has", "have", "just", "already", "now", "pt", "patient", "'s", "is"})
BEHIND_PLACE = frozenset(
    {"", ",", ".", ";", "!", "at", "@", "with", "by", "now", "team", "staff", "for", "and"}
)
"""Behind "the or" these leave it a place."""
PUSHED = frozenset({"wheeled", "headed", "pushed", "rolled", "escorted"})
LEADING = frozenset({"to", "for", "at", "in"})
"""Before the place where whoever was taken there is now: "dropped bed 9 off at theatre"."""
ON_THE_WAY = frozenset({"down", "up", "over", "off", "round", "across", "along", "out"})


def _taken_along(said: Message) -> Iterator[Cue]:
    """ "took bed six to CT", "wheeled him down for a scan": the verb is of the going, and no word more."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        if (
            text not in TOOK | TRIPPED
            or word(toks, k - 1) not in TAKERS
            or any(c.start <= k < c.end and c.value != "tipped" for c in said.cues)
        ):
            continue
        gone = {"away"} if text in TRIPPED else {"away", "back", "left"}
        starts = {c.start for c in said.cues if c.value in gone and word(toks, c.start) not in LYING_IN}
        starts |= {c.start for c in said.cues if c.value in gone and text in TOOK}
        bed = past(toks, k + 1, WHOM | BED_WORDS)
        end = said.beds[bed][0] if bed in said.beds else max((n.end for n in numbers(toks, bed)), default=bed)
        went = past(toks, end, ON_THE_WAY)
        if end > k + 1 and not starts.isdisjoint(range(end, went + 1)):
            yield Cue("filler", "", k, k + 1)
        elif end > bed and word(toks, went) in LEADING:
            place = past(toks, went + 1, WHOSE)
            off = word(toks, went) in {"to", "for"} or word(toks, went - 1) == "off"
            if off and word(toks, place) in PLACES | {"scanner"}:
                yield Cue("filler", "", k, k + 1)
                yield Cue("kind", "away", end, place + 1)


def _was_taken(said: Message) -> Iterator[Cue]:
    """ "bed 9 whisked off to theatre", "9 picked up by porters for CT": whoever lies there was taken."""
    toks = said.toks
    for k, text in enumerate(toks.said):
        bed = k
        while word(toks, bed - 1) in BEING:
            bed -= 1
        if k == 0 or text not in TRIPPED | COLLECTED | PUSHED or not bed_ends(said, bed):
            continue
        away = next((c for c in said.cues if c.start >= k and c.value == "away"), None)
        went = past(toks, k + 1, ON_THE_WAY)
        by = past(toks, went + 1, WHOSE) if word(toks, went) == "by" and text in COLLECTED else 0
        place = past(toks, went + 1, WHOSE)
        if by and word(toks, by) in FETCHING:
            end = past(toks, by + 1, TEAMS)
            behind = past(toks, end + 1, WHOSE)
            placed = word(toks, end) in {"to", "for"} and word(toks, behind) in PLACES
            if placed or word(toks, end) in STOPS | {""} or is_timed(toks, end):
                yield Cue("kind", "away", k, behind + 1 if placed else end)
        elif text in TRIPPED and away is not None and k < away.start <= went:
            yield Cue("filler", "", k, k + 1)
        elif word(toks, went) in {"to", "into"} and word(toks, place) in PLACES and text in TRIPPED | PUSHED:
            yield Cue("kind", "away", k, place + 1)


def _left_for(said: Message) -> Iterator[Cue]:
    """ "bed 16 has left for the OR", "9 already left for theatre"; "the or" is a place."""
    toks = said.toks
    for k in range(1, len(toks)):
        going = past(toks, k, HAVING)
        to = past(toks, going + 2, WHOSE)
        left = word(toks, going) == "left" and word(toks, going + 1) in {"for", "to"}
        if left and going > k and word(toks, to) in PLACES and bed_ends(said, k):
            yield Cue("kind", "away", k, to + 1)
        place = toks.said[k - 1 : k + 1] == ("the", "or") and word(toks, k + 1) in BEHIND_PLACE
        if place and not any(c.start <= k < c.end and c.label == "kind" for c in said.cues):
            yield Cue("word", "or", k, k + 1)


def _on_the_way(said: Message) -> Iterator[Cue]:
    """ "tipped at 1615 wheeling him back": on the way, and nobody is back by that."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.label == "what"), len(toks))
    for cue in said.cues:
        verb = cue.start - 1
        while word(toks, verb) in WHOM | ON_THE_WAY:
            verb -= 1
        moving = word(toks, verb) in WHEELING and verb < cue.start - 1 and verb >= happened
        if moving and cue.value in {"away", "back", "moved"} and STOPS.isdisjoint(toks.said[verb : cue.end]):
            yield Cue("filler", "", verb, cue.end)


def _went_into(said: Message) -> Iterator[Cue]:
    """ "322's patient went into 301 at 1420": to another bed."""
    toks = said.toks
    for k in range(1, len(toks) - 2):
        way = k + 1 + (word(toks, k + 1) in {"across", "over", "round"} and word(toks, k + 2) == "to")
        into = word(toks, k) in {"went", "gone", "moved"} and (way > k + 1 or word(toks, way) == "into")
        bed = past(toks, way + 1, BED_WORDS)
        end = max((n.end for n in numbers(toks, bed)), default=0)
        named = bed in said.beds or (end and word(toks, end) in {"at", ",", ".", "", "now", "this", "around"})
        if into and named and not any(c.value == "moved" for c in said.cues):
            yield Cue("kind", "moved", k, way + 1)


def _we_back(said: Message) -> Iterator[Cue]:
    """ "took him to CT and we were back at 12:10": with whom was away."""
    toks = said.toks
    away = next((c.start for c in said.cues if c.value == "away"), len(toks))
    for cue in said.cues:
        verb = cue.start - 1
        verb -= word(toks, verb) in {"were", "was", "got", "came", "are"}
        we = word(toks, verb) in {"we", "we're", "i", "both"}
        if cue.value == "back" and cue.start > away and we and not TOOK.isdisjoint(toks.said[:away]):
            yield cue._replace(start=verb)


def is_lined(toks: Toks, k: int) -> bool:
    """Whether a number stands there that is too high for a dial, or has its unit."""
    number = max(numbers(toks, k), key=lambda n: n.end, default=None)
    if number is None:
        return False
    return number.value > max(DIALLED) or word(toks, number.end) in MILLILITRES | {"in", "inside"}


def _on_return(said: Message) -> Iterator[Cue]:
    """ "back 1431, 1310 on return", "back 1431, 1310 when back", "back 1431 with 1310 in box": of then."""
    toks = said.toks
    back = next((c.end for c in said.cues if c.value == "back"), len(toks))
    for k in range(back, len(toks) - 1):
        own = past(toks, k + 1, WHOSE)
        if word(toks, k) in {"on", "upon"} and word(toks, own) == "return":
            yield Cue("sametime", "", k, own + 1)
        came = word(toks, k) == "when" and word(toks, k + 1) in {"back", "returned"}
        if came and word(toks, k + 2) in STOPS | {""}:
            yield Cue("sametime", "", k, k + 2)
        timed = any(is_timed(toks, j) for j in range(back, k))
        if (
            word(toks, k) == "with"
            and timed
            and STOPS.isdisjoint(toks.said[back:k])
            and is_lined(toks, k + 1)
        ):
            yield Cue("sametime", "", k, k + 1)


def _there_and_back(said: Message) -> Iterator[Cue]:
    """ "22 CT 1700, back 1800": beside a return, right behind its bed, the scan and no tube."""
    toks = said.toks
    back = [c for c in said.cues if c.value == "back"]
    for cue in said.cues if back and not said.tells("away") else ():
        scan = cue.label == "tubeword" and word(toks, cue.start) == "ct" and cue.end - cue.start == 1
        at = past(toks, cue.end, frozenset({"at", "@"}))
        timed = any(clock.colon or clock.sure or clock.style == "24" for _, clock in clocks(toks, at))
        beside = any(cue.end <= c.start < back[0].start and c.label != "filler" for c in said.cues)
        if scan and timed and bed_ends(said, cue.start) and cue.end <= back[0].start and not beside:
            yield Cue("kind", "away", cue.start, cue.end)


def _put_in_bed(said: Message) -> Iterator[Cue]:
    """ "we've put bed 40 in bed 38": who lies there now; "went back on suction" is on suction again."""
    toks = said.toks
    for k in range(len(toks) - 4):
        end = max((n.end for n in numbers(toks, k + 2)), default=0)
        put = word(toks, k) in {"put", "moved"} and word(toks, k + 1) in BED_WORDS and end
        if put and word(toks, end) in {"in", "into"} and word(toks, end + 1) in BED_WORDS:
            yield Cue("kind", "moved", end, end + 1)
    for cue in said.cues:
        if cue.value == "suction_on" and word(toks, cue.start - 1) in {"went", "gone", "goes"}:
            yield cue._replace(start=cue.start - 1)


def _left_before(said: Message) -> Iterator[Cue]:
    """ "went out to the floor at 1830, he's transferred": the same once more."""
    toks = said.toks
    left = next((c.end for c in said.cues if c.value == "left"), len(toks))
    for cue in said.cues:
        lone = cue.value in {"moved", "left"} and cue.start > left and cue.end - cue.start == 1
        he = cue.start - 1
        while word(toks, he) in {"been", "now", "s", "'", "has", "is", "all"}:
            he -= 1
        if (
            lone
            and word(toks, he) in {"he", "she", "he's", "she's"}
            and word(toks, cue.end) in {"", ",", "."}
        ):
            yield Cue("filler", "", he, cue.end)


FETCHED: tuple[tuple[frozenset[str], Rule], ...] = (
    (TOOK | TRIPPED, _taken_along),
    (TRIPPED | COLLECTED | PUSHED, _was_taken),
    (TOOK, _we_back),
    (frozenset({"left", "or"}), _left_for),
    (WHEELING, _on_the_way),
    (frozenset({"ct"}), _there_and_back),
    (frozenset({"return", "when", "with"}), _on_return),
    (frozenset({"into", "across", "over", "round"}), _went_into),
    (frozenset({"put", "moved", "went", "gone"}), _put_in_bed),
    (frozenset({"he", "she", "he's", "she's"}), _left_before),
)
"""Each rule with the words of which it needs one."""
