"""Signs that an event or a setting was only asked for, was told by somebody else, or misses a word.

"suction 20 please", "drain changed per pt", "right was taken out", "new canister started at 0". Called by
`leftovers` through `noevents`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .items import EVENTS, FINDINGS
from .numbers import Toks, is_digits, starts_number, word
from .patterns.leads import BED_WORDS, TOPPED
from .patterns.numerals import NUMERALS
from .rules import Pieces, Rule
from .tokens import is_shortened

LETTING = frozenset({"another", "a", "further", "drain", "let", "out", "empty", "release", "off", "take"})
UNTIL = frozenset({"to", "for", "until", "til", "till"})
PATIENTS = frozenset({"pt", "patient", "he", "she", "they", "now", "mr", "mrs", "from", "bed", "room", "rm"})
SEEN = frozenset({"acknowledged", "help", "corrected", "withdrawn"})
BIDDEN = frozenset({"clamped", "unclamped", "suction_on", "suction_off"})
"""What may be asked for; what slipped out has happened, whoever begs."""
MINUTES = 60
OF_SUCTION = BED_WORDS | {"of", "suction", "sxn", "for", "on", "in"}
VACUUM = frozenset({"vac", "vacuum"})
OF_THE_WALL = frozenset({*NUMERALS, "wall", "the", "on", "at", "is", "his", "her", "suction", "and", ""})
"""Before the word for a vacuum these leave it that of the wall."""
WOUND = frozenset({"wound", "npwt", "incisional"})
COUNTED = frozenset({"unit", "units", "bag", "bags", "dose", "doses", "amp", "amps", "tab", "tabs", "puffs"})
GIVING = frozenset({"gave", "given", "giving", "got"})
GAVE = GIVING | {"had", "hung"}
REPAIRING = frozenset({"no", "sorry", "actually"})
SETTING = frozenset({"turned", "turning", "dialed", "dialled", "cranked", "bumped", "going"})
WAYS = frozenset({"up", "down", "back"})
PLEASE = frozenset({"please", "pls", "plz"})
TELLERS = frozenset(
    {"pt", "patient"} | {"wife", "husband", "family", "daughter", "son", "mom", "mum", "roommate", "visitor"}
)
TELLERS |= {"report", "handover", "handoff", "nights", "days", "night", "day", "tech", "aide", "cna", "hca"}
HOURS = range(5, 13)
"""More than the cm to which a seal is filled, which is about two. Common practice, no source."""


def _opened(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "back at 1825, new canister started at 0": it was put up, or what?"""
    told = any(i.value == "kind" and i.name in {"exchanged", "placed"} for i in items)
    for item in items if not told else ():
        if item.role == "cue" and item.value == "opens" and word(toks, item.start) in {"new", "fresh"}:
            yield "whether a new one was put up"


def _taken_out(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "right was taken out at 1800, had 80 in it": the tube, or who lay in the bed?"""
    told = any(i.value == "kind" and i.name in {"removed", "left", "away"} for i in items)
    for item in items if not told else ():
        if item.value == "out" and item.role == "cue" and word(toks, item.start - 1) in {"taken", "took"}:
            yield "what was taken out"


def _is_out(items: Pieces, _: Toks) -> Iterator[str]:
    """ "8 left out, 75", "A out too, 11:10, 575 in the box": that tube was taken out, or what came out?"""
    told = any(i.value == "kind" and i.name == "removed" for i in items)
    for tube, out, after in zip(items, items[1:], (*items[2:], None), strict=False):
        beside = tube.role == "tube" and out.value == "out" and out.role == "cue" and out.start == tube.end
        counted = after is not None and after.start == out.end and after.role in {"level", "volume"}
        if beside and not (told or counted):
            yield "whether the tube is out"


def _requested(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction 20 please", "tube out please": asked of somebody, and not so yet?"""
    if any(i.role == "cue" and i.value == "order" for i in items):
        return
    for item in items:
        last = item.end
        while word(toks, last) in OF_SUCTION or (last > item.end and is_digits(toks, last)):
            last += 1  # "20 of suction for 14 please"
        end = word(toks, last + 1) in {"", ".", "!", "?"}
        if item.role == "check" and item.name == "suction" and word(toks, last) in PLEASE and end:
            yield "a setting that is asked for"
        event = item.value == "kind" and item.name not in SEEN
        event |= item.value == "what" and item.name in BIDDEN
        if item.role == "cue" and event and word(toks, last) in PLEASE and end:
            yield "what is asked for"  # "bed 9 tube out please"


def _how_long(items: Pieces, _: Toks) -> Iterator[str]:
    """ "bed 9 clamped 20", "suction off 20": a line of 20 mL, or so many minutes?"""
    for cue, item in pairwise(items):
        lasts = cue.role == "cue" and cue.value == "what" and cue.name in BIDDEN and cue.end == item.start
        bare = item.role == "level" and not (item.lead or item.unit) and (item.amount or 0) <= MINUTES
        if lasts and bare and item.amount:
            yield "a line, or how long"


def _told_by(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "drain changed per pt", "new box per report": by whose word; "per order" is why it was done."""
    for item in items:
        who = item.end + 1 + (word(toks, item.end + 1) in {"the", "his", "her"})
        if item.value in EVENTS and word(toks, item.end) == "per" and word(toks, who) in TELLERS:
            yield "an event on somebody's word"


def _seal_or_hour(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "water seal at six": its height, or the hour?"""
    for item in items:
        hour = item.role == "check" and item.name == "seal" and not item.unit and item.figure in HOURS
        if hour and word(toks, item.start - 1) == "at":
            yield "the height of the seal, or an hour"


def _to_come(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "unclamped to drain another 500", "opened for another 500", "drain 500 more then clamp"."""
    for item in items:
        k = item.start - 1
        while word(toks, k) in LETTING:
            k -= 1
        told = item.role in {"volume", "output"} and k < item.start - 1 and word(toks, k) in UNTIL
        ordered = item.role == "volume" and word(toks, item.start - 1) in {"drain", "release", "let"}
        then = "then" in toks.said[item.end : item.end + 3]
        if told or (ordered and then):
            yield "how much is to come"


def _more_of_it(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "910 more bloody now", "910 more bubbling": so much more, or a line and how it is by now?"""
    for item in items:
        end = item.end + (word(toks, item.end) == "more")
        more = item.role == "volume" and word(toks, end - 1) == "more"
        if more and any(i.start == end and i.role == "cue" and i.value in FINDINGS for i in items):
            yield "so much more, or a line"


def _which_ordered(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "water seal ordered, suction 20 now", "order suction 20 then water seal": which of them, and when."""
    order = next((i for i in items if i.role == "cue" and i.value == "order"), None)
    told = {i.start for i in items if i.role == "check"}  # "seal 2" is its height
    seals = [i for i in items if i.role == "cue" and i.value in {"seal", "waterseal"} and i.end not in told]
    seal = next(iter(seals), None)
    dial = next((i for i in items if i.role == "check" and i.name == "suction"), None)
    if order is None or seal is None or dial is None:
        return
    between = toks.said[min(seal.end, dial.end) : max(seal.start, dial.start) + 1]
    if (seal.end == order.start and dial.start > order.end) or "then" in between:
        yield "which of them is ordered"


def _back_on_to(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "suction on 12 back on to 20": what it is set to, and no bed 20."""
    for item in items:
        on = item.value == "what" and item.name == "suction_on" and word(toks, item.end) == "to"
        if on and any(i.role == "bed" and i.start == item.end + 1 for i in items):
            yield "so much suction, or a bed"


def _lies_in(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "16 is in bed 20 now": who lies there, or its line."""
    for item in items:
        bare = item.role == "level" and not (item.lead or item.unit) and item.label is not None
        if bare and word(toks, item.end) in {"is", "are"} and word(toks, item.end + 1) == "in":
            yield "who lies there, or its line"


def _was_given(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "gave 250 mL bolus": what was given, and not what came."""
    foreign = {i.start for i in items if i.role == "foreign"}
    for item in items:
        gave = item.role == "volume" and word(toks, item.start - 1) in GIVING
        if gave and item.end in foreign:
            yield "what was given, or what came"


def _one_or_the_other(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "clamped no wait not clamped, kinked": which of the two happened."""
    events = [i for i in items if i.role == "cue" and i.value == "what"]
    for first, last in pairwise(events):
        between = toks.said[first.end : last.start]
        if first.name != last.name and between[:1] and between[0] in REPAIRING:
            yield "which of the two"


def _back_in(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "back in 30": a patient in that bed, or who writes in so many minutes."""
    for event, bed in pairwise(items):
        back = event.value == "kind" and event.name == "back" and bed.role == "bed"
        alone = back and toks.said[event.end : bed.start] == ("in",)
        if alone and not any(i.role == "time" for i in items) and PATIENTS.isdisjoint(toks.words):
            yield "in that bed, or in so many minutes"


def _to_be_done(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "9 clamp for transport", "9 discharge home": done, or to be done; with its time it was done."""
    if any(i.role == "time" for i in items):
        return
    for item in items:
        verb = item.role == "cue" and item.value in EVENTS and word(toks, item.start) in TO_DO
        if verb and word(toks, item.start + 1) not in DONE:  # not "clamp opened"
            yield "done, or to be done"


def _came_then(items: Pieces, _: Toks) -> Iterator[str]:
    """ "pt arrived 1315 from OR with left tube bed 5": when the patient came, and no line."""
    came = any(i.role == "cue" and i.value == "arrival" for i in items)
    lines = [i for i in items if i.role == "level"]
    if came and len(lines) == 1 and lines[0].full_clock and not (lines[0].lead or lines[0].unit):
        yield "the line, or when the patient came"


def _vacuum(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "bed five portable vac forty", "wound vac, 125 mmhg": a wound drain, and no wall."""
    for item in items:
        wall = item.role == "check" and item.name == "wall"
        told = wall and not WOUND.isdisjoint(toks.words)
        before = word(toks, item.start - 2)
        other = before.isalpha() and before not in OF_THE_WALL
        if told or (wall and other and word(toks, item.start - 1) in VACUUM):
            yield "a wound drain"


def _unit_given(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "gave 1 unit prbc": what was given, and nothing that came."""
    for item in items:
        counted = item.role in {"volume", "level"} and word(toks, item.end) in COUNTED
        if counted and not GAVE.isdisjoint(toks.said[max(0, item.start - 3) : item.start]):
            yield "what was given"


def _which_bed(items: Pieces, _: Toks) -> Iterator[str]:
    """ "bed 18 tipped or bed 19": of which bed."""
    for event, either in pairwise(items):
        happened = event.role == "cue" and event.value in EVENTS
        if happened and either.role == "cue" and either.value == "or":
            yield "of which bed"


def _set_to(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "wall 60 only, turned it up to 90", "bubbling since going up to 30": what was set to it?"""
    for item in items:
        if item.role == "level" and not item.unit and word(toks, item.start - 1) == "to":
            way = toks.said[max(0, item.start - 5) : item.start - 1]
            if not SETTING.isdisjoint(way) and not WAYS.isdisjoint(way):
                yield "what was set to it"


def _out_at(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "5 out at 1410, 6 out at 1412, 7 line 480": when something was out, or at which line."""
    for item in items:
        timely = item.role == "level" and item.clocks and not item.unit
        out = toks.said[max(0, item.start - 2) : item.start] in {("out", "at"), ("out", "@")}
        if timely and out and word(toks, item.start - 3) not in TOPPED:
            yield "when it was out, or what came out"


def _bed_or_line(items: Pieces, _: Toks) -> Iterator[str]:
    """ "patient in 18 refused turning. line 18 455": the line of 18, or 18 mL at five to five."""
    beds = {i.label for i in items if i.role == "bed" and i.label is not None}
    for line, time in pairwise(items):
        bare = line.role == "level" and time.role == "time" and line.end == time.start == time.end - 1
        if bare and line.label in beds and not line.unit and not line.lead.startswith("levelat"):
            yield "a bed or its line"


def _amid_handling(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "tube got pulled in the transfer", "pulled during turning": taken out, or by accident?"""
    for event in items:
        removed = (
            event.role == "cue" and event.name == "removed" and "pulled" in toks.said[event.start : event.end]
        )
        amid = toks.said[event.end : event.end + 4] if removed else ()
        if any(a in AMID and not HANDLING.isdisjoint(amid[k + 1 :]) for k, a in enumerate(amid)):
            yield "taken out, or pulled out by accident"


def _line_of_drain(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "back from CT, drain's at 630", "clamped, drain's at 630": its line, or when that was?"""
    for tube, time in pairwise(items):
        at = tube.role == "cue" and tube.value == "tubeword" and time.role == "time" and time.at
        if (
            not at
            or time.start > tube.end + 1
            or time.sure_time
            or time.full_clock
            or (time.amount or 0) < HUNDRED
        ):
            continue
        before = [i for i in items if i.role == "cue" and i.value in EVENTS and i.end <= tube.start]
        if before and (is_shortened(toks, tube.end - 1) or before[-1].name in GOINGS):
            yield "the line, or when that was"


def _which_taken_back(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "take that back, that was bed eight": was its mark wrong, or is it bed 8 that is right?"""
    taken = any(i.role == "cue" and i.name == "withdrawn" for i in items)
    for bed in items if taken else ():
        k = bed.start - 1 if word(toks, bed.start - 1) in BED_WORDS else bed.start
        k -= word(toks, k - 1) in {"for", "in", "on"}
        if bed.role == "bed" and toks.said[max(0, k - 2) : k] in {("that", "was"), ("it", "was")}:
            yield "which bed is right"


def _b_as_bed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "bed seven a two forty b one ten": of tubes A and B, and no bed 1."""
    beds = [i for i in items if i.role == "bed"]
    lettered = any(word(toks, bed.end) == "a" and starts_number(toks, bed.end + 1) for bed in beds[:1])
    for bed in beds[1:] if lettered else ():
        if word(toks, bed.start - 1) in {"b", "bee"}:
            yield "a tube by its letter, or a bed"


GOINGS = frozenset({"away", "back", "left", "moved"})
HUNDRED = 100
AMID = frozenset({"in", "during", "with", "while", "whilst", "when", "on"})
_HANDLING = """
transfer transferring turn turns turning turned roll rolling rolled move moving moved walk walking ambulating
ambulation physio reposition repositioning repositioned bath wash washing transport fall falling
"""
HANDLING = frozenset(_HANDLING.split())
DONE = frozenset({"opened", "off", "on", "released", "removed", "closed", "came", "is", "was", "fell"})
TO_DO = frozenset({"clamp", "unclamp", "discharge", "discontinue"})
UNSURE_EVENTS = (
    Rule(_vacuum, frozenset({"check"}), VACUUM | WOUND),
    Rule(_set_to, frozenset({"level"}), SETTING),
    Rule(_out_at, frozenset({"level"}), frozenset({"out"})),
    Rule(_bed_or_line, frozenset({"bed"})),
    Rule(_unit_given, frozenset({"volume", "level"}), COUNTED),
    Rule(_which_bed, EVENTS | {"or"}, frozenset({"or"})),
    Rule(_came_then, frozenset({"arrival"})),
    Rule(_to_be_done, EVENTS, TO_DO),
    Rule(_back_in, frozenset({"bed"}), frozenset({"in"})),
    Rule(_back_on_to, frozenset({"what"}), frozenset({"to"})),
    Rule(_lies_in, frozenset({"level"}), frozenset({"in"})),
    Rule(_was_given, frozenset({"volume"}), GIVING),
    Rule(_one_or_the_other, frozenset({"what"}), REPAIRING),
    Rule(_which_ordered, frozenset({"order"})),
    Rule(_more_of_it, frozenset({"volume"}), frozenset({"more"})),
    Rule(_to_come, frozenset({"volume", "output"}), UNTIL | {"then"}),
    Rule(_opened, frozenset({"opens"})),
    Rule(_taken_out, frozenset({"out"}), frozenset({"taken", "took"})),
    Rule(_is_out, frozenset({"out"})),
    Rule(_requested, frozenset({"check", "kind", "what"}), PLEASE),
    Rule(_how_long, frozenset({"what"})),
    Rule(_told_by, EVENTS, frozenset({"per"})),
    Rule(_seal_or_hour, frozenset({"check"}), frozenset({"at"})),
    Rule(_amid_handling, EVENTS, HANDLING),
    Rule(_line_of_drain, frozenset({"tubeword"}), frozenset({"at", "@"})),
    Rule(_which_taken_back, frozenset({"bed"}), frozenset({"was"})),
    Rule(_b_as_bed, frozenset({"bed"}), frozenset({"b", "bee"})),
)
