"""Why, what for, on whose word and amid what something happened: "clamped 14 at 1410 so the lytics can sit".

Such words are told behind an event that is whole without them, or between it and its time. What makes them
doubtful is a number, a bed, another event, something found, a plan, a doubt, or a device that the event may
be of. Called by `framed`, which leaves them out where a message would be asked.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Set
from itertools import pairwise
from typing import NamedTuple

from .again import Again, Span, Told
from .behind import READ_OFF
from .clock import clocks
from .items import EVENTS, FINDINGS
from .neighbours import is_stop_among, phrase_of
from .numbers import Toks, is_digits, starts_number, word
from .patterns.asides import FALLS, PERSONS
from .patterns.circumstances import (
    ADVERBS,
    AHEAD,
    ALARMING,
    AMID,
    ASKING,
    BECAUSE,
    BEHIND,
    BY,
    BY_CHANCE,
    CONTRARY,
    COUNTING,
    DENYING,
    DESTINATIONS,
    DEVICES,
    DOUBTED,
    ENABLING,
    ENDS,
    FOR,
    LEFT_OPEN,
    MODALS,
    NO_AS,
    NO_PURPOSE,
    OCCASIONS,
    ON,
    ONCE,
    ONSET,
    OPENERS,
    OUTINGS,
    PARTS,
    PAST,
    RECORDS,
    REFUSING,
    SAYING,
    SEEING,
    THINGS,
    TYPES,
    WHICH,
    WITH,
)
from .patterns.leads import BED_WORDS
from .patterns.numerals import HOMOPHONES
from .patterns.ownclauses import ARTICLES, ROOM, VERBS
from .pipeline import Cue
from .roles import EVENTS as KINDS
from .roles import OF_PATIENT, OFF
from .settled import is_settled
from .statements import Away, Back, Exchanged, Incident, Left, Moved, Placed, Removed, Statement, Unclear
from .subjects import TO_BE_DONE
from .unsureevents import TELLERS

AT = frozenset({"at", "@"})
ORDERED = "ordered"
PAUSES = frozenset({"clamped", "unclamped", "suction_off", "suction_on"})
FORESEEN = PAUSES | OF_PATIENT | {"exchanged", ORDERED}
"""What these were for is told with "for" or "to"; a tube that is out "for" something may be in for now."""
TELLING = FINDINGS | {"same", "amount", "ml", "litre", "badunit", "repair", "or", "closing", "side", "new"}
OF_A_TUBE = frozenset({"removed", "clamped", "unclamped", "exchanged", "suction_off", "suction_on", "placed"})
OF_A_TUBE |= {"dislodged", "disconnected", "kinked"}
HARMLESS = READ_OFF | {
    "dose",
    "doses",
    "phone",
    "cxr",
    "chest xray",
    "surgical emphysema",
    "ultrasound",
    "fever",
    "residual",
}
COUNTED = frozenset({"level", "levelat", "total", "old", "output", "amount", "last"})
"""Cues of a number that the words behind it may be of."""
HAPPENED = Placed | Exchanged | Removed | Moved | Away | Back | Left
FEWEST = 2
"""Words of such a phrase, at least."""
GOES = frozenset({"left", "off", "gone", "leaving", "went"})
PLANS = frozenset({"plan", "plans", "planned"})
TOLD = frozenset({"", "it", "so", "that", "this"})
ONES_TOO = frozenset({"to", "for"})
LUNGS = frozenset({"lung", "lungs", "film", "cxr", "xray", "apex", "pneumothorax"})
NEAR = 4
"""Words to the one that names the occasion."""


class Event(NamedTuple):
    """What happened, and where its words stand."""

    name: str
    start: int
    end: int


def circumstances(again: Again) -> list[tuple[Span, bool]]:
    """What of the message tells only why or amid what an event was, in order, and whether it says when."""
    return list(_Finding(again).found())


def is_same_event(said: Statement, again: Again) -> bool:
    """Whether it was told as that: "came out at 1840 when turning him" is no more "came out at 1840"."""
    if not isinstance(said, HAPPENED | Incident):
        return True
    name = said.what if isinstance(said, Incident) else said.kind
    return any(_is_event(c) and _name(c) == name for c in again.meant.cues)


def with_time_behind(again: Again, outcome: Sequence[Statement | Unclear]) -> Told:
    """ "unclamped 7, as soon as the dressing was done at 1410": the same with the time that was told last."""
    untimed = [s for s in outcome if isinstance(s, HAPPENED | Incident) and s.at is None]
    spans = [span for span, _ in (circumstances(again) if untimed else ()) if _is_time(again.toks, span[1])]
    told = again.without(*spans) if spans else ()
    same = [(type(s), s.bed, getattr(s, "what", "")) for s in told]
    if not told or same != [(type(s), getattr(s, "bed", ""), getattr(s, "what", "")) for s in outcome]:
        return ()
    return told if all(s.at for s in told) else ()


class _Finding:
    """Goes through the message behind its first event."""

    def __init__(self, again: Again) -> None:
        self.toks, self.cues, self.voice = again.toks, again.meant.cues, again.ward.voice
        self.labelled = again.meant.labelled
        self.events = [Event(_name(c), c.start, c.end) for c in self.cues if _is_event(c)]

    def found(self) -> Iterator[tuple[Span, bool]]:
        k = self.events[0].end if self.events else len(self.toks)
        while k < len(self.toks):
            event = max((e for e in self.events if e.end <= k), key=lambda e: e.end)
            end = self._end(k) if self._begins(k, event) else 0
            if end and self._is_of_event(k, end, event) and self._is_harmless(k, end, event):
                opens = set(self.toks.said[k : k + 2])
                timely = bool(opens & (AMID | FOR | ONCE)) and event.name != ORDERED
                yield (self._start(k, end, event), end), timely
            k = max(end, k + 1)

    def _start(self, k: int, end: int, event: Event) -> int:
        """With the words before it that only lead to it: "early because ...", "home with ..."."""
        leading = ADVERBS | {"home"} if event.name == "left" else ADVERBS
        while k > event.end and word(self.toks, k - 1) in leading:
            k -= 1
        return k - (word(self.toks, k - 1) == "," and _is_time(self.toks, end))  # "off, as he slept, at 1410"

    def _begins(self, k: int, event: Event) -> bool:
        """Whether such a phrase is opened there that may be told of the event."""
        toks, said = self.toks, word(self.toks, k)
        behind = word(toks, k + 1)
        if said not in OPENERS or starts_number(toks, k + 1 + (behind in BED_WORDS)):
            return False
        if self.voice and said in FOR and is_digits(toks, k - 1):
            return False  # "bed twenty two", "thirty four"
        if said == "given" and behind not in ARTICLES | {"that", "how"}:
            return False  # "report given to the ward"
        if said in FOR:
            return event.name in FORESEEN and (said == "for" or self._is_purpose(k, event))
        if said in WITH:
            return event.name in OF_PATIENT
        if said in ON:
            return not OCCASIONS.isdisjoint(toks.said[k + 1 : k + NEAR])
        return behind not in {"as": NO_AS, "so": ASKING}.get(said, ())

    def _is_purpose(self, k: int, event: Event) -> bool:
        """ "to get him to the shower"; "to be unclamped later" is to come, "to the wall" is a setting."""
        toks, behind = self.toks, word(self.toks, k + 1)
        if event.name in OF_PATIENT:
            return behind.isalpha()
        box = event.name == "exchanged" and behind in {"a", "an"}  # "to a smaller unit"
        if box:
            return not (THINGS | {"one"}).isdisjoint(toks.said[k : self._end(k)])
        return behind.isalpha() and behind not in NO_PURPOSE

    def _end(self, k: int) -> int:
        """Where the phrase ends; 0 where what goes on behind it may take the event back."""
        toks = self.toks
        end = k + 1
        while end < len(toks) and not (_is_end(toks, end) or _is_time(toks, end)):
            if word(toks, end) in ONSET and word(toks, end - 1) != "say":
                return end  # "ahead of transport | so it won't fill on the way"
            theatre = word(toks, end) == "or" and word(toks, end - 1) in {"to", "the", "from", "in"}
            if word(toks, end) in CONTRARY and not (theatre or word(toks, end - 1) in SEEING):
                return 0
            end += 1
        return end if word(toks, end) != "?" else 0

    def _is_of_event(self, start: int, end: int, event: Event) -> bool:
        """Whether it is told of the event, and of no number behind it: "out, 1220 total since midnight"."""
        toks, first = self.toks, word(self.toks, start)
        if event.name in OF_PATIENT and not any(
            starts_number(toks, k) or k in self.labelled for k in range(start)
        ):
            return False  # "ok back in with a light, bed 12 1050"
        numbers = [k for k in range(event.end, start) if is_digits(toks, k)]
        counted = any(c.label in COUNTED for c in self.cues if event.end <= c.start < start)
        stopped = bool(numbers) and any(_is_end(toks, k) for k in range(event.end, numbers[-1]))
        if first == "since":  # "clamped since breakfast"
            return bool(numbers) and any(_is_verb(w) for w in toks.said[start + 2 : end])
        if (counted or stopped) and first not in ONSET | {"as"}:
            return False
        return first != "so" or not ENABLING.isdisjoint(toks.said[start:end])

    def _is_harmless(self, start: int, end: int, event: Event) -> bool:
        """Whether nothing in the phrase tells anything else, or makes the event doubtful."""
        toks, said = self.toks, self.toks.said[start:end]
        if end - start < FEWEST + self.voice or word(toks, event.start) in TO_BE_DONE:
            return False
        if any(is_digits(toks, k) or k in self.labelled for k in range(start, end)):
            return False
        words = set(said[1:])
        doubted = (
            DOUBTED - PLANS if "per" in said[:2] and event.name in PAUSES else DOUBTED
        )  # "as per consultant plan"
        if words & (doubted | COUNTING | _alarming(words)) or self._is_of_another(start, end, event):
            return False
        if words & DENYING and said[0] not in BECAUSE and said[:2] != ("with", "no"):
            return False
        if _is_hearsay(said) or (not ONCE.isdisjoint(said[:2]) and not any(map(_is_past, said))):
            return False
        if words & REFUSING and event.name != "back":
            return False
        timed = any(_is_time(toks, k) for k in range(event.end, start))
        if said[-1] in LEFT_OPEN or (timed and _is_time(toks, end)):
            return False
        if self.voice and self._may_be_number(said, start):
            return False
        modals = MODALS - {"due"} if "to" in said else MODALS
        if _is_time(toks, end) and (words & modals or said[0] in AHEAD):
            return False
        if said[0] in {"per", "as"} and not TELLERS.isdisjoint(said[1:NEAR]) and "per" in said:
            return False  # "as per handover"
        return self._is_told_of(said, event)

    def _may_be_number(self, said: Sequence[str], start: int) -> bool:
        """ "at ten past two to | for the film", "before the aide ate": dictated, a digit heard as a word."""
        heard = not HOMOPHONES.keys().isdisjoint(w for w in said if w not in ONES_TOO)
        return heard or word(self.toks, start - 1) in HOMOPHONES

    def _is_told_of(self, said: Sequence[str], event: Event) -> bool:
        """Whether the phrase leaves what happened what it is."""
        words = set(said)
        if event.name == ORDERED:
            return said[0] not in AMID | {"for"}
        if event.name == "left":
            gone = word(self.toks, event.start) not in GOES or not DESTINATIONS.isdisjoint(
                self.toks.said[event.end :]
            )
            return gone and not words & (THINGS | OUTINGS) - DESTINATIONS  # "left the ward for a coffee"
        if event.name in OF_PATIENT:
            return not words & (THINGS - {"unit"}) or is_settled(said)
        if event.name == "removed":
            chance = words & BY_CHANCE or (said[0] in BECAUSE | BY and words & PERSONS)
            return not chance and said[0] in BECAUSE | BY | AHEAD | BEHIND | ON
        return True

    def _is_of_another(self, start: int, end: int, event: Event) -> bool:
        """Whether something else happened or was found there, or the tube may be another."""
        inside = [c for c in self.cues if c.start < end and c.end > start]
        told = TELLING | {"reason"} if event.name == "placed" else TELLING
        if any(c.label in told or _happens(c, event, start, self.toks) for c in inside):
            return True
        if event.name not in OF_A_TUBE:
            return False
        toks, within = self.toks, range(start, end)
        others = {phrase_of(c, toks) for c in inside if c.label == "other"}
        named = any(word(toks, k) == "one" and word(toks, k - 1) not in WHICH for k in within)
        sucked = event.name == "exchanged" and any(_is_suction(toks, k) for k in within)
        done = any(word(toks, k - 1) in FOR and word(toks, k) in TO_BE_DONE for k in within)
        return bool(named or sucked or done or not others <= HARMLESS or DEVICES & set(toks.said[start:end]))


def _happens(cue: Cue, event: Event, start: int, toks: Toks) -> bool:
    """ "during the linen change", "before going to theatre", "as the lift broke" tell no event."""
    before = word(toks, cue.start - 1)
    to_come = word(toks, start) in AHEAD
    named = cue.value in OF_PATIENT and (to_come or before in ARTICLES | BED_WORDS)
    fell = phrase_of(cue, toks) in FALLS and before in PERSONS
    again = cue.value == event.name or before in PARTS | ROOM
    return _is_event(cue) and cue.label in EVENTS and not (named or fell or again)


def _is_event(cue: Cue) -> bool:
    happened = cue.label == "what" or (cue.label == "kind" and cue.value in KINDS)
    return happened or cue.label == "order" or cue.value == OFF


def _name(cue: Cue) -> str:
    if cue.value == OFF:
        return "suction_off"
    return cue.value if cue.label in EVENTS else ORDERED


def _alarming(words: Set[str]) -> Set[str]:
    """ "as the lung collapsed", "as the film showed a collapse": no patient did."""
    return ALARMING - {"collapsed"} if words & LUNGS else ALARMING


def _is_hearsay(said: Sequence[str]) -> bool:
    """ "per the chart", "by the look of it", "as the notes say", "because the student wrote it"."""
    if said[0] in BY | {"as"} and not RECORDS.isdisjoint(said):
        return True
    followed = zip(said, (*said[1:], ""), strict=True)
    return ("next", "door") in pairwise(said) or any(a in SAYING and b in TOLD for a, b in followed)


def _is_past(said: str) -> bool:
    """ "once the talc was in"; "once the porter is here" is still to come."""
    return said in PAST or said.endswith("ed")


def _is_verb(said: str) -> bool:
    return said in VERBS or said.endswith("ed")


def _is_suction(toks: Toks, k: int) -> bool:
    """ "the suction one was full": no canister of a drain; a drain may be of the dry suction type."""
    return word(toks, k) in {"suction", "wall", "sxn"} and word(toks, k + 1) not in TYPES


def _is_end(toks: Toks, k: int) -> bool:
    return is_stop_among(ENDS, toks, k)


def _is_time(toks: Toks, k: int) -> bool:
    """ "at 1410", "at ten past two": when it happened."""
    return word(toks, k) in AT and bool(clocks(toks, k + 1))
