"""Cues of what is told in passing beside an event or a question, and what it means there.

"reinserted at 1810 after it came out", "220 out since unclamping", "home with no drain issues", "what did
days last chart". Part of `narrated`, which calls these before any other rule.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clock import clocks
from .followers import DIALLED
from .goings import Rule, past
from .items import FULL_HOUR
from .numbers import is_digits, numbers, starts_number, word
from .oldones import FRESH, OF_BED, Message
from .patterns.leads import LINES
from .patterns.narrated import CANISTERS, WHOSE
from .pipeline import Cue
from .shiftwords import WORKING

ENDS = frozenset({"", ",", ".", ";", "!", "and", ")", "by", "for", "reason", "due", "so", "then"})
AFTER = frozenset({"after", "because", "as", "since", "when", "cos", "coz"})
CAME = frozenset({"came", "come"})
HELPERS = frozenset(
    {"had", "has", "was", "got", "been", "it", "tube", "drain", "first", "one", "old", "last"}
)
HELPERS |= WHOSE
CLAMPING = frozenset({"clamping", "unclamping", "clamped", "unclamped", "tipping", "reconnecting"})
NONE = frozenset({"no", "without", "nil"})
TROUBLE = frozenset({"issue", "issues", "problem", "problems", "concern", "concerns", "complication"})
TROUBLE |= {"complications", "trouble", "troubles", "dramas", "drama"}
OF_WHAT = frozenset(
    {"drain", "tube", "further", "other", "new", "major", "post", "immediate", "acute", "chest"}
)
OF_WHAT |= {"obvious", "apparent", "at", "all"}
FOUND = frozenset({"leak", "tidal", "seal", "suction", "waterseal", "fluid"})
OF_IT = frozenset({"with", "w", "re", "from", "about", "regarding", "breathing"})
RECORDED = frozenset({"recorded", "record", "chart", "charted", "marked", "mark", "wrote", "write", "noted"})
RECORDED |= {"documented", "logged", "read"}
GETTING = frozenset(
    {"get", "catch", "read", "see", "note", "record", "write", "check", "know", "take", "have"}
)
GETTING |= {"down", "mark", "measure", "chart"}
DENYING = frozenset({"didn't", "didnt", "couldn't", "couldnt", "don't", "dont", "not", "never"})
WHICH = frozenset({"cracked", "broken", "leaking", "full", "damaged", "tipped", "faulty", "split", "first"})
HELD = frozenset({"had", "held", "contained", "was", "ended", "finished", "read", "reads", "showed"})
AT = frozenset({"at", "on", "up"})
KEPT = frozenset({"on", "off", "at", "to", "without", "clamped", "alone", "as", "open"})
"""Behind "left" these say how somebody wants it to stay."""
QUICK = frozenset({"quick", "quickly", "fast", "asap", "now", "up", "urgently", "please"})
RECEIVED = frozenset({"received", "recd", "rec'd", "written", "noted"})
DRAINED = frozenset({"drained", "out", "produced", "given"})
NOTHING = frozenset({"nothing", "nil", "none", "zilch"})
SWINGING = frozenset({"the", "water", "is", "level", "column", "still", "chamber"})
UNCHANGED = frozenset({"change", "changes", "unchanged", "changed"})
HEIGHTS = frozenset({"height", "level"})
OF_A_DIAL = frozenset({"suction", "sxn", "wall", "mmhg", "mm", "cm", "cmh", "of", "vac", "vacuum"})
"""Behind a number these make it what is dialled."""

FIRST_ASKING = frozenset(
    {"is", "does", "did", "has", "was", "will", "when", "how", "what", "whats", "what's"}
)
"""What a question begins with."""


def _after_it_came_out(said: Message) -> Iterator[Cue]:
    """ "reinserted 1810 after it came out": why there is a new one; with a time it is told for itself."""
    toks = said.toks
    placed = next((c.end for c in said.cues if c.value == "placed"), len(toks))
    for k in range(placed, len(toks)):
        verb = past(toks, k + 1, HELPERS)
        if word(toks, k) not in AFTER or verb == k + 1 or word(toks, verb) not in CAME:
            continue
        out = word(toks, verb) == "dislodged" or word(toks, verb + 1) == "out"
        end = verb + 1 + (word(toks, verb + 1) == "out")
        if out and word(toks, end) in ENDS:
            yield Cue("filler", "", k, end)


def _since_then(said: Message) -> Iterator[Cue]:
    """ "drained 220 since unclamping": since when, which was told when it was done."""
    toks = said.toks
    drained = {"amount", "output", "same", "level", "levelat", "leak", "tidal", "since"}
    for cue in said.cues:
        since = word(toks, cue.start - 1) == "since" and cue.end - cue.start == 1
        told = any(c.label in drained and c.start < cue.start for c in said.cues)
        of_drain = cue.label == "what" and word(toks, cue.start) in CLAMPING
        at = cue.end + (word(toks, cue.end) in {"at", "@"})
        if since and of_drain and clocks(toks, at):
            yield Cue("filler", "", cue.start, at)  # "220 since clamping 1400"
        elif since and of_drain and told and word(toks, cue.end) in ENDS:
            yield Cue("filler", "", cue.start - 1, cue.end)


def _no_trouble(said: Message) -> Iterator[Cue]:
    """ "discharged home with no drain issues", "tube out at 10 without complications"."""
    toks = said.toks
    for k in range(len(toks)):
        end = past(toks, k + 1, OF_WHAT)
        if word(toks, k) in NONE and word(toks, end) in TROUBLE:
            start = k - (word(toks, k - 1) in {"with", "w", "and"})
            end = past(toks, end + 1, frozenset({"at", "all", "noted", "since", "seen", "so", "far"}))
            found = [c for c in said.cues if c.start in {end + 1, end + 2} and c.label in FOUND]
            if word(toks, end) in OF_IT and found:
                yield Cue("filler", "", start, found[0].end)  # "no issues with leak"
            if end < len(toks) and (starts_number(toks, end) or word(toks, end) in OF_IT):
                continue
            yield Cue("filler", "", start, end)


def _last_charted(said: Message) -> Iterator[Cue]:
    """ "what the day staff last recorded", "what did nights last chart": the last line, and no sum."""
    toks = said.toks
    for cue in said.cues if any(c.label in {"question", "ask"} for c in said.cues) else ():
        last = past(toks, cue.end, WORKING)
        of_staff = cue.label == "window" and word(toks, last) == "last"
        if of_staff and word(toks, last + 1) in RECORDED:
            yield Cue("filler", "", cue.start, last)
            yield Cue("ask", "last", last, last + 2)


def _not_noted(said: Message) -> Iterator[Cue]:
    """ "canister exchanged at 1230, didn't get the final level": there is none to be told."""
    toks = said.toks
    changed = any(c.value in {"exchanged", "removed"} for c in said.cues)
    for cue in said.cues if changed else ():
        if cue.label != "old":
            continue
        k = cue.start - 1
        while word(toks, k) in WHOSE | GETTING:
            k -= 1
        denied = word(toks, k) in DENYING and k < cue.start - 1
        if denied and not starts_number(toks, cue.end):
            first = k - (word(toks, k - 1) in {"i", "we", "but"}) - (word(toks, k - 2) == "but")
            yield Cue("filler", "", max(first, 0), cue.end)


def _of_that_one(said: Message) -> Iterator[Cue]:
    """ "put a new one on at 0645, the cracked one had 80 in it": the canister that was changed."""
    toks = said.toks
    changed = any(c.value == "exchanged" for c in said.cues)
    for k in range(1, len(toks) - 2) if changed else ():
        one = word(toks, k + 1) == "one" or word(toks, k + 1) in CANISTERS
        if not (word(toks, k - 1) == "the" and word(toks, k) in WHICH and one):
            continue
        end = past(toks, k + 2, HELD | AT)
        if end > k + 2 and starts_number(toks, end):
            yield Cue("old", "", k - 1, end)


def _wants_it_left(said: Message) -> Iterator[Cue]:
    """ "the registrar would like bed 22 left without suction": how it is to stay, and no left tube."""
    toks = said.toks
    order = next((c.end for c in said.cues if c.label == "order"), len(toks))
    for cue in said.cues:
        left = cue.label == "side" and toks.said[cue.start : cue.end] == ("left",)
        bid = cue.start >= order and is_digits(toks, cue.start - 1)
        if left and word(toks, cue.end) in KEPT and (bid or word(toks, cue.end) in {"without", "alone"}):
            yield Cue("filler", "", cue.start, cue.end)


def _above_the_chest(said: Message) -> Iterator[Cue]:
    """ "lifted above chest height"."""
    for cue in said.cues:
        chest = cue.value == "raised" and word(said.toks, cue.end - 1) == "chest"
        if chest and word(said.toks, cue.end) in HEIGHTS:
            yield cue._replace(end=cue.end + 1)


def _did_a_canister(said: Message) -> Iterator[Cue]:
    """ "did 9's canister just now, old read 1795": done, and no question."""
    toks = said.toks
    old = any(c.label == "old" for c in said.cues) and "?" not in toks.words
    for k in range(len(toks) - 2) if old and not said.tells("exchanged") else ():
        box = past(toks, k + 1, OF_BED | WHOSE)
        ends = [e for s, (e, _) in said.beds.items() if s == box] or [n.end for n in numbers(toks, box)]
        behind = past(toks, max(ends, default=box), frozenset({"'", "s"}))
        did = word(toks, k) == "did" and word(toks, k - 1) in {"", "i", "we", "just", "and", ",", ".", ";"}
        if did and behind > box and word(toks, behind) in CANISTERS:
            yield Cue("kind", "exchanged", k, k + 1)
            yield Cue("filler", "", behind, behind + 1)


def _bottle_on(said: Message) -> Iterator[Cue]:
    """ "back from theatre at 1110, bottle on 85": more than any dial shows is its line; "how full is the box
    on 217" asks of that bed."""
    toks = said.toks
    asked = any(c.label == "ask" for c in said.cues) or word(toks, 0) in FIRST_ASKING
    for k in range(1, len(toks) - 1) if not asked else ():
        on = k + (word(toks, k) in {"is", "was", "still", "now"})
        number = word(toks, on + 1)
        high = number.isdecimal() and len(number) < 5 and int(number) > max(DIALLED)
        if word(toks, k - 1) in CANISTERS and word(toks, on) == "on" and high:
            timed = any(c.sure for _, c in clocks(toks, on + 1))
            event = next((c for c in said.cues if c.label == "kind" and c.start < k <= c.end), None)
            if event is not None and (len(number) == FULL_HOUR or word(toks, event.start) not in FRESH):
                continue  # "changed the box on 214", "new canister on 1835"
            if not timed and on + 1 not in said.beds and word(toks, on + 2) not in LINES | OF_A_DIAL:
                yield Cue("levelat", "", k - 1, on + 1)


def _went_in(said: Message) -> Iterator[Cue]:
    """ "a new drain went in bed seven at quarter past five": the verb is of the tube."""
    for cue in said.cues:
        went = cue.value == "placed" and word(said.toks, cue.end) == "went"
        if went and word(said.toks, cue.end + 1) in {"in", "into"}:
            yield cue._replace(end=cue.end + 2)


def _come_quick(said: Message) -> Iterator[Cue]:
    """ "tube has come out of the chest bed nineteen, come quick": a call, beside what happened."""
    toks = said.toks
    happened = min((c.end for c in said.cues if c.label == "what"), default=len(toks))
    for k in range(happened, len(toks) - 1):
        come = past(toks, k, frozenset({"please", "can", "someone", "somebody", "you", "just"}))
        end = past(toks, come + 1, frozenset({"here", "now", "in", "please", "to", "the", "room", "over"}))
        if (
            word(toks, come) in {"come", "help", "hurry"}
            and word(toks, end) in QUICK
            and word(toks, end + 1) in ENDS
        ):
            yield Cue("filler", "", k, end + 1)
            return


def _order_received(said: Message) -> Iterator[Cue]:
    """ "order received bed 12: water seal": what was ordered, and nothing more of how."""
    for cue in said.cues:
        got = cue.label == "order" and word(said.toks, cue.end) in RECEIVED
        if got and word(said.toks, cue.end - 1) in {"order", "orders"}:
            yield cue._replace(end=cue.end + 1)


def _drained_nothing(said: Message) -> Iterator[Cue]:
    """ "bed 22 has drained nothing so far": no more came."""
    toks = said.toks
    for cue in said.cues:
        nothing = (
            cue.label == "amount" and word(toks, cue.end - 1) in DRAINED and word(toks, cue.end) in NOTHING
        )
        end = past(toks, cue.end + 1, frozenset({"so", "far", "yet", "more", "further", "else", "at", "all"}))
        end += word(toks, end) == "since"  # as "nothing since" is one cue
        if nothing and (word(toks, end - 1) == "since" or not starts_number(toks, end)):
            yield Cue("same", "", cue.start, end)


def _water_swings(said: Message) -> Iterator[Cue]:
    """ "the water is swinging": what swings."""
    toks = said.toks
    for cue in said.cues:
        start = cue.start
        while word(toks, start - 1) in SWINGING:
            start -= 1
        if cue.value == "yes" and cue.label == "tidal" and "water" in toks.said[start : cue.start]:
            yield cue._replace(start=start)


def _no_change(said: Message) -> Iterator[Cue]:
    """ "level 500 ml, no change.": said behind a stop, of the line that was told; "nothing since" is more."""
    toks = said.toks
    for cue in said.cues:
        behind = word(toks, cue.start - 1) in {",", ";", ".", "-"} and word(toks, cue.end) in ENDS
        if cue.label == "same" and not cue.value and behind and word(toks, cue.end - 1) in UNCHANGED:
            yield cue._replace(value="told")


def _as_ordered(said: Message) -> Iterator[Cue]:
    """ "suction 10 as ordered, seal at 2": what it is set to, and no new order."""
    for cue in said.cues:
        ordered = cue.label == "order" and said.toks.said[cue.start : cue.end] == ("ordered",)
        if ordered and word(said.toks, cue.start - 1) == "as" and not starts_number(said.toks, cue.end):
            yield Cue("filler", "", cue.start - 1, cue.end)


def _then_unclamp(said: Message) -> Iterator[Cue]:
    """ "clamped 1800 for 1 hr then unclamp": what is still to be done."""
    toks = said.toks
    happened = next((c.end for c in said.cues if c.label == "what"), len(toks))
    for cue in said.cues:
        bare = (
            cue.label == "what" and cue.end - cue.start == 1 and word(toks, cue.start) in {"unclamp", "clamp"}
        )
        led = word(toks, cue.start - 1) in {"then", "to", "and"} and cue.start > happened
        if bare and led and word(toks, cue.end) in ENDS:
            yield Cue("filler", "", cue.start - 1, cue.end)


PASSING: tuple[tuple[frozenset[str], Rule], ...] = (
    (AFTER, _after_it_came_out),
    (frozenset({"since"}), _since_then),
    (TROUBLE, _no_trouble),
    (frozenset({"last"}), _last_charted),
    (DENYING, _not_noted),
    (WHICH, _of_that_one),
    (frozenset({"left"}), _wants_it_left),
    (HEIGHTS, _above_the_chest),
    (frozenset({"did"}), _did_a_canister),
    (frozenset({"on"}), _bottle_on),
    (frozenset({"went"}), _went_in),
    (QUICK, _come_quick),
    (frozenset({"unclamp", "clamp"}), _then_unclamp),
    (frozenset({"ordered"}), _as_ordered),
    (UNCHANGED, _no_change),
    (NOTHING, _drained_nothing),
    (frozenset({"water"}), _water_swings),
    (RECEIVED, _order_received),
)
"""Each rule with the words of which it needs one."""
