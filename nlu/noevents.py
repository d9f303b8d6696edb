"""Signs that an event was only named: its device lies ready, it is asked about, or another thing is meant.

"new box at bedside", "clamp order", "forgot to clamp", "tube out of the way", "is tube out". What came to
pass is told without such words: "new box connected", "tube out at 7". Called by `leftovers`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .changes import changed_what
from .items import EVENTS, Item, is_now
from .numbers import Toks, glued, starts_number, word
from .patterns.leads import TOPPED
from .rules import Pieces, Rule
from .unsureevents import UNSURE_EVENTS

DEVICES = frozenset({"box", "canister", "drain", "tube", "chamber", "bottle", "unit", "drainage", "clamp"})
CLAMPS = frozenset({"clamp", "clamps"})
READY = frozenset({"ready", "ordered", "waiting", "standby", "here", "available", "spare", "opened", "handy"})
ON_ITS_WAY = frozenset(
    {("on", "its", "way"), ("on", "the", "way"), ("on", "it's", "way"), ("is", "being", "sent")}
)
PLACES = frozenset({"bedside", "room", "hand", "standby", "hall", "hallway", "cupboard", "closet", "corner"})
NOUNS = frozenset({"order", "orders", "ok", "okay", "okayed", "broken", "broke", "missing", "kit", "test"})
LOOKS = frozenset({"looks", "look", "looked", "appears", "appeared", "sounds", "forgot", "forgotten"})
HARDLY = frozenset({"almost", "nearly", "no"})
LIGHT = frozenset({"like", "as", "if", "to", "be", "that", "the", "a", "tube", "drain", "they", "it"})
HABITS = frozenset({"easily", "checked", "often", "sometimes", "risk", "precautions", "whenever"})
DOING = frozenset({"clamp", "unclamp", "change", "swap", "exchange", "pull", "remove", "disconnect", "move"})
PROOF = frozenset(
    {"checked", "xray", "x-ray", "cxr", "film", "confirmed", "verified", "ok", "good", "correct", "fine"}
    | {"tray", "kit", "set", "consent", "site", "check", "looks", "satisfactory", "appropriate"}
)
SET_TO = frozenset({"suction", "wall", "gravity", "water", "waterseal", "seal", "a", "the"})
INSERTED = frozenset({"placement", "insertion", "position"})
OTHERWISE = frozenset(
    {"colour", "color", "character", "consistency", "position", "from", "back", "tubing", "sides", "shade"}
)
SEATS = frozenset({"chair", "recliner", "isolation", "restraints", "wheelchair", "commode", "geri-chair"})
FURNITURE = frozenset({"bed", "chair", "tray", "table", "cup", "urinal", "wheelchair", "stretcher", "tubing"})
PEOPLE = frozenset({"pt", "patient"})
PATIENT = frozenset({(), ("pt",), ("patient",), ("he",), ("she",), ("just",)})
"""Before "passed" alone these say that it is of a patient: "unclamped at 0600 passed" is of a trial."""
OF = frozenset({"bed", "way", "the", "water", "reach", "sight", "site"})
ASKING = frozenset({"is", "was", "are", "were", "has", "did"})
LASTING = frozenset({"h", "hr", "hrs", "hour", "hours", "min", "mins", "minutes", "days", "day", "weeks"})
OUTSIDE = frozenset({"out", "ordered", "off"})


def _ready(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "new box at bedside", "new box ready", "clamp at bedside", "new box ordered": none was put to use."""
    for item in items:
        k = item.end - (word(toks, item.end - 1) in {"at", "in", "on", "by"})
        if item.value not in EVENTS or word(toks, k - 1) not in DEVICES | CLAMPS:
            continue
        p = k + 1 + (word(toks, k + 1) in {"the", "his", "her", "my"})
        if not ON_ITS_WAY.isdisjoint(
            zip(toks.said[k:], toks.said[k + 1 :], toks.said[k + 2 :], strict=False)
        ):
            yield "a thing that is still to come"
        behind, place = word(toks, k), word(toks, p) in PLACES
        place &= not starts_number(toks, p + 1)  # "in room 9"
        if behind in READY or (behind in {"at", "in", "on", "by"} and place):
            yield "a thing that lies ready"
        elif behind in NOUNS and word(toks, k - 1) in CLAMPS:
            yield "a clamp that is only named"


def _seemed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "looks clamped", "looks like drain changed", "forgot to clamp", "box fell almost": perhaps not so."""
    for item in items:
        k = item.start - 1
        while item.value in EVENTS and word(toks, k) in LIGHT:
            k -= 1
        hardly = word(toks, item.end) in HARDLY and word(toks, item.end + 1) in {"", ".", "!", ","}
        if item.value in EVENTS and (word(toks, k) in LOOKS or hardly):
            yield "an event that only seemed so, or was forgotten"


def _in_general(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "kinks easily", "kinks checked", "unclamp when back": nothing that came to pass."""
    for item in items:
        if item.value not in EVENTS:
            continue
        last, behind = word(toks, item.end - 1), word(toks, item.end)
        if behind in HABITS or (behind in {"when", "once"} and last in DOING):
            yield "an event in general, or one to come"


def _of_other_things(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "drain changed colour", "tube placement confirmed", "placed in chair", "tube out of the way"."""
    for item in items:
        if item.value != "kind":
            continue
        last, behind, after = (word(toks, k) for k in (item.end - 1, item.end, item.end + 1))
        changed = item.name == "exchanged" and (behind in OTHERWISE or (behind == "to" and after in SET_TO))
        proven = item.name == "placed" and last in INSERTED and behind in PROOF
        seated = item.name == "placed" and behind in {"in", "on"} and after in SEATS
        seated |= item.name == "back" and behind in {"in", "to"} and after in SEATS
        of_way = item.name == "removed" and behind == "of" and after in OF
        of_way = of_way and not starts_number(toks, item.end + 2)  # "tube out of bed 11"
        if changed or proven or seated or of_way:
            yield "an event of something else"


def _ended(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "clamp trial passed", "drain expired", "is passed 340": a trial, a box or a line, and nobody died."""
    for item, after in zip(items, (*items[1:], None), strict=False):
        before = toks.said[max(0, item.start - 2) : item.start]
        things = DEVICES | {"trial", "order", "orders", "test", "swallow", "gas", "stool", "flatus"}
        of_thing = item.name == "left" and not things.isdisjoint(before)
        ended = item.value == "kind" and word(toks, item.start) in {"passed", "expired", "gone"}
        counted = item.name == "left" and after is not None and after.role == "level" and not after.lead
        alone = item.name == "left" and toks.said[item.start : item.end] == ("passed",)
        if ended and (of_thing or counted or (alone and before[-1:] not in PATIENT)):
            yield "a thing that ended, and no patient"


def _by_patient(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "pt pulling tube", "pt tipped", "tipped bed": of the patient or the bed, and of no drain."""
    for item in items:
        before, behind = word(toks, item.start - 1), word(toks, item.end)
        pulls = item.value == "kind" and item.name == "removed" and word(toks, item.start) == "pulling"
        if pulls and before in PEOPLE:
            yield "what the patient does to the tube"
        if item.value == "what" and item.name == "tipped":
            thing = behind in FURNITURE and not starts_number(toks, item.end + 1)
            owned = before in PEOPLE | FURNITURE and not (DEVICES | {"it"}) & set(toks.words)
            if thing or owned:
                yield "what was tipped"


def _asked(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "is tube out", "was tube out at 7": a question by its order; "12's tube is out" tells it."""
    for item in items:
        noun = item.value == "kind" and word(toks, item.start) in DEVICES | {"chest", "the"}
        noun |= item.value == "what" and (item.start == 1 or word(toks, item.start) == "suction")
        if noun and word(toks, item.start - 1) in ASKING:
            yield "an event that is asked about"


def _out_and_in(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tube out and back in", "tube out replaced", "tube out for ct", "for chest tube out": is it out?"""
    placed = any(i.value == "kind" and i.name == "placed" for i in items)
    for item, after in zip(items, (*items[1:], None), strict=False):
        if item.value != "kind" or item.name != "removed":
            continue
        k = item.end + (word(toks, item.end) in {"and", ",", "then"})
        again = word(toks, k) in {"back", "replaced"} or toks.said[k : k + 3] == ("new", "one", "in")
        scan = word(toks, item.end) == "for" and after is not None and after.name == "away"
        scan |= word(toks, item.end - 1) == "for" and after is not None and after.name == "away"
        planned = word(toks, item.start - 1) == "for" and word(toks, item.end - 1) == "out"
        if (again and not placed) or scan or planned:
            yield "whether the tube is out"


def _ahead(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "just about to clamp 5", "trying to change the box", "ok to clamp?": what is to come."""
    for item in items:
        to_come = item.value in EVENTS and word(toks, item.start - 1) == "to"
        if to_come and word(toks, item.start - 2) in BEFORE_TO:
            yield "an event that is to come"


def _box_removed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "bottle removed at 1800": the canister alone, or the tube too?"""
    for item in items:
        if item.name == "removed" and word(toks, item.start - 1) in BOXES and item.value == "kind":
            yield "the canister that was removed, or the tube"


BOXES = frozenset({"bottle", "canister", "box", "chamber"})


def _going(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "going home at six", "tube coming out at six": so it came, or so it is planned."""
    for item, time in pairwise(items):
        under_way = item.value in EVENTS and word(toks, item.start) in GOING
        at = (time.role == "time" and time.at) or (time.role == "level" and time.lead == "at")
        hour = at and 0 < (time.amount or 0) <= NOON
        if under_way and hour and not time.sure_time:
            yield "what came then, or what is to come"


def _lasting(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tube out for 2 hours": it was then, and not now."""
    for item in items:
        closes = item.value == "kind" and item.name in {"removed", "placed", "exchanged"}
        if closes and word(toks, item.end) == "for" and not LASTING.isdisjoint(toks.said[item.end + 2 :]):
            yield "when it was"


def _one_of_two(items: Pieces, _: Toks) -> Iterator[str]:
    """ "clamped or kinked", "not kinked or clamped": which of them, if any."""
    for before, link, item in zip(items, items[1:], items[2:], strict=False):
        event = item.value == "what" and before.value in {"what", "nothing"}
        if event and link.role == "cue" and link.value == "or":
            yield "one event or the other"


def _level_or_time(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tipped 640", "back 640", "moved to 10, 640", "tipped, was 640": a line, or twenty to seven?"""
    if not any(i.value in EVENTS or i.lead == "to" for i in items):
        return
    said = [i for i in items if i.role != "sep" and not i.unread]
    if sum(i.role == "time" for i in said) > sum(i.role == "time" for i in said if not (i.at or i.sure_time)):
        return  # its time is told
    for before, item in pairwise(said):
        clock = item.role in {"time", "level"} and bool(item.clocks) and not (item.sure_time or item.unit)
        bare = clock and item.amount is not None and len(item.digits) == 3 and not (item.at or item.lead)
        if (
            item.role == "cue"
            and item.name == "away"
            and before.loose_time
            and word(toks, item.start) == "in"
        ):
            yield "a line, or when they went"  # "320 in theatre"
        gone = item.role == "time" or (
            before.value == "kind" and before.name in {"left", "away", "moved", "back"}
        )
        event = before.value in EVENTS or (before.role == "bed" and before.lead == "to")
        if bare and gone and event and word(toks, item.start - 1) != "at" and not glued(toks, item.end):
            yield "a line, or the time"


def _from_bed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "clamped from 6 to 7", "suction 20 from 7": since when, and no bed."""
    moved = any(i.value == "kind" and i.name == "moved" for i in items)
    for before, item in pairwise(items):
        since = item.role == "bed" and word(toks, item.start - 1) == "from" and item.lead != "bed"
        if since and not moved and before.role in {"check", "cue"} and before.value != "bed":
            yield "since when, or from which bed"


def _answered(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "9 out of bed", "9 new box ordered": a number with such words behind it answers nothing."""
    numbered = [i for i in items if i.role == "num"]
    lone = len(numbered) == 1 and not numbered[0].start and word(toks, numbered[0].end).isalpha()
    if lone and not OUTSIDE.isdisjoint(toks.words):
        yield "what the number is of"


def _formerly(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "clamped earlier", "tipped last shift", "clamped before, open now": not of this moment."""
    if any(i.role == "time" and not is_now(i) for i in items):
        return
    moved = next((i.end for i in items if i.role == "bed" and i.lead == "to"), 0)
    for item in items:
        end = max(item.end, moved) if item.name == "moved" else item.end
        behind = toks.said[end : end + 3]
        shift = behind[:2] == ("last", "shift") or behind[:3] == ("on", "day", "shift")
        before = behind[:1] == ("before",) and behind[1:2] in {(), (",",), ("now",), ("",)}
        if item.value in EVENTS and (behind[:1] == ("earlier",) or shift or before):
            yield "when it was"


def _taken_off(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "removed clamp", "tubing pulled", "wall unit broken": another thing than the drain."""
    for item in items:
        if item.value not in EVENTS:
            continue
        clamp = item.name == "removed" and word(toks, item.end) in CLAMPS
        tubing = item.name == "removed" and "tubing" in toks.said[max(0, item.start - 1) : item.end]
        wall = item.name == "damaged" and "wall" in toks.said[max(0, item.start - 3) : item.end]
        if clamp or tubing or wall:
            yield "what was taken off or broken"


def _back_and_away(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "back to ct", "moved to 10 then back to 9", "moved to 10 pending": where the patient is."""
    for before, item in pairwise(items):
        again = before.name == "back" and item.name == "away" and item.start <= before.end + 1
        if before.value == "kind" and item.value == "kind" and again:
            yield "back from there, or there again"
    moved = any(i.name == "moved" and i.value == "kind" for i in items)
    for item in items:
        returned = item.name == "back" and word(toks, item.end) == "to" and starts_number(toks, item.end + 1)
        waits = item.role == "bed" and item.lead == "to" and word(toks, item.end) in {"pending", "next"}
        if moved and (waits or (returned and item.value == "kind")):
            yield "where the patient is"


def _after_amount(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "clamped after 640", "final at 1840", "off suction 1830 on suction 1845": an amount, or the time."""
    events = any(i.value in EVENTS for i in items)
    timed = any(i.role == "time" for i in items)
    for before, item in zip((None, *items), items, strict=False):
        bare = bool(item.clocks) and not (item.unit or item.sure_time) and item.amount is not None
        after = item.role == "time" and word(toks, item.start - 1) in {"after", "when", "once"}
        told = item.role == "level" and (item.full_clock or item.spoken_clock)
        final = told and events and item.lead == "old" and item.at and not timed
        final &= TOPPED.isdisjoint(toks.said[max(0, item.start - 3) : item.start])
        beside = before if before is not None and item.role == "level" and not item.lead else None
        near = beside is not None and _may_be_its_time(beside, item, timed=timed)
        if bare and ((after and events) or final or near):
            yield "an amount, or the time"


def _may_be_its_time(before: Item, level: Item, *, timed: bool) -> bool:
    """ "off suction 1845", "tipped 1845", "back 7": a number that may be when it was."""
    if before.value == "kind" and before.name == "back":
        return len(level.digits) in {1, 2}
    joined = level.full_clock and before.end == level.start
    return joined and (before.value == "what" or (before.value == "waterseal" and timed))


def _of_tubes(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tube 1 out, tube 2 640", "tube 1 of 2 out": which tube is out."""
    for before, item in pairwise(items):
        counted = before.role == "tube" and item.role in {"volume", "level"}
        out = before.role == "tube" and item.role == "cue" and item.value == "out"
        more = any(i.role == "tube" and i.start > item.start for i in items)
        pulled = before.role == "tube" and item.value == "kind" and item.name == "removed"
        pulled &= any(i.role == "tube" and i.start >= item.end for i in items)
        if pulled and not any(i.role in {"level", "sep"} and i.start > item.start for i in items):
            yield "which tube is out, or where the other stands"  # "right pulled left at 120"
        if (counted and word(toks, item.start - 1) == "of") or (out and more):
            yield "which tube is out"


def _final_nil(items: Pieces, _: Toks) -> Iterator[str]:
    """ "changed box, final nil": what the old one showed, and not what came."""
    for before, item in pairwise(items):
        if before.value == "old" and item.value == "same":
            yield "what the old one showed"


def _spilt(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tipped over lost 320": what was spilt, and not what came."""
    tipped = any(i.value == "what" and i.name in {"tipped", "damaged"} for i in items)
    for item in items if tipped else ():
        if item.role == "volume" and word(toks, item.start - 1) == "lost":
            yield "how much was spilt"


def _and_changed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tipped, changed": the canister was changed as well, or what?"""
    hurt = any(i.value == "what" and i.name in {"tipped", "damaged", "disconnected"} for i in items)
    told = any(i.value == "kind" and i.name == "exchanged" for i in items)
    for item in items if hurt and not told else ():
        if item.unread and item.name in CHANGED and word(toks, item.start - 1) not in {"not", "been", "be"}:
            yield "what was changed"


NOON = 12
BEFORE_TO = frozenset(
    {"about", "trying", "tried", "hoping", "ready", "able", "unable", "set", "meant", "meaning"}
    | {"ok", "okay", "safe", "fine", "alright", "happy"}
)
GOING = frozenset({"going", "coming", "leaving"})
CHANGED = frozenset({"changed", "swapped", "exchanged", "replaced"})
NO_EVENTS = (
    *UNSURE_EVENTS,
    Rule(_spilt, frozenset({"volume"}), frozenset({"lost"})),
    Rule(_and_changed, frozenset({"what"}), CHANGED),
    Rule(_formerly, EVENTS, frozenset({"earlier", "last", "before", "day"})),
    Rule(_taken_off, EVENTS, CLAMPS | {"tubing", "wall"}),
    Rule(_back_and_away, EVENTS, frozenset({"back", "pending", "next"})),
    Rule(_after_amount, EVENTS | {"waterseal"}),
    Rule(_of_tubes, frozenset({"tube"})),
    Rule(_final_nil, frozenset({"old"})),
    Rule(_ready, EVENTS | {"num"}, READY | NOUNS | {"at", "in", "on", "by", "being"}),
    Rule(_seemed, EVENTS, LOOKS | HARDLY),
    Rule(_in_general, EVENTS, HABITS | {"when", "once"}),
    Rule(_of_other_things, EVENTS, OTHERWISE | INSERTED | {"in", "on", "of", "to"}),
    Rule(_ended, EVENTS, frozenset({"passed", "expired", "gone"})),
    Rule(_by_patient, EVENTS, PEOPLE | FURNITURE),
    Rule(_asked, EVENTS, ASKING),
    Rule(_lasting, EVENTS, LASTING),
    Rule(_out_and_in, EVENTS, frozenset({"back", "replaced", "new", "for"})),
    Rule(_ahead, EVENTS, BEFORE_TO),
    Rule(_box_removed, EVENTS, BOXES),
    Rule(_going, frozenset({"time", "level"}), GOING),
    Rule(_one_of_two, EVENTS, frozenset({"or", "nor"})),
    Rule(_level_or_time, frozenset({"time", "level"})),
    Rule(_from_bed, frozenset({"bed"}), frozenset({"from"})),
    Rule(_answered, frozenset({"num"}), OUTSIDE),
    Rule(changed_what, EVENTS | {"word"}),
)
