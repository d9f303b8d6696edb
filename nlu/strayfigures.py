"""Figures, beds and tubes of a clause that tells nothing of a drain: "3 zinnias on the sill", "tram at 1710".

Such a clause has words that nobody taught the reader, and none of a drain; what it counts, times or places is
of them. Called by `leftovers`, for what is typed: dictated, nobody says a stop.
"""

from __future__ import annotations

from collections.abc import Iterator

from .clauses import ENDS, is_strange
from .items import AMOUNTS, Item, is_now
from .loosefigures import BESIDE_EVENT, OF_PEOPLE, TIME_OF_WORDS
from .neighbours import begins_at, is_dash, is_stop_among
from .numbers import Toks, glued, is_digits, word
from .patterns.asides import LOADED, RELATIVES, STAFF
from .patterns.idle import OBJECTS
from .patterns.leads import BED_WORDS
from .patterns.ofwhat import HOW
from .patterns.ownclauses import ARTICLES, SPEAKER, VERBS
from .patterns.together import POLITE
from .rules import Pieces, Rule, Rules, signs

PLAIN = frozenset(
    {"word", "filler", "about", "time", "timeword", "bed", "other", "plan", "okay", "neg", "span"}
)
"""Cues that say nothing of a drain."""
STOPS = ENDS | {"(", ")", ":"}
PLACING = frozenset({"on", "in", "of", "for", "from", "to", "with", "at", "and", "&", "the", "my"})
SINCE = frozenset({"since", "timeword", "from", "to"})
LABELLED = frozenset({"bed", "num", "level", "time"})
TOLD = frozenset({"check", "volume", "output"})
LOOSE = frozenset({"old", "new", "out", "opens", "closing"})
"""These tell something of a drain beside its own words only."""
COUNTED = frozenset({"reason", "bed"})
"""Cues that are counted in the plural: "4 rib fractures", "3 beds"."""
ENTRY = OBJECTS | SPEAKER | HOW | {"by", "off", "mixed", "accident", "meant"}
DAYS = frozenset(
    {"day", "days", "week", "weeks", "hour", "hours", "hr", "hrs", "min", "mins", "months", "years"}
)
GOING_ON = VERBS | {
    "looks",
    "stays",
    "keeps",
    "needs",
    "remains",
    "sleeps",
    "sounds",
    "works",
    "sits",
    "lies",
}
"""Verbs that end as a thing in the plural does."""
DRAWN = frozenset({"drawn", "taken", "done", "seen", "charted", "logged", "took", "drew", "got", "measured"})
HANDINGS = frozenset(
    {"handover", "handoff", "report", "shift", "round", "rounds", "huddle", "meeting", "visiting"}
)
LED = frozenset({"inside", "level", "levelat", "from", "to"})
PEOPLE = frozenset({"staff", "family", "people"})
FEW, NEAR, SHORT = 60, 3, 3
MOST_FLOORS = 30
FLOORED = frozenset({"on", "to", "from", "a", "an", "via"})
HOLDING = frozenset({"tubeword", "canister", "old", "new", "level", "levelat", "bed"})


def stray_clauses(items: Pieces, toks: Toks) -> Iterator[Pieces]:
    """The clauses of which nothing is told of a drain, and something that was not understood."""
    for clause in _clauses(items, toks):
        told = any(i.role in TOLD or _is_ours(i, clause, toks) for i in clause)
        if not told and any(is_strange(i, toks) or i.role == "foreign" for i in clause):
            yield clause


def _is_ours(item: Item, clause: Pieces, toks: Toks) -> bool:
    """Whether it is a cue that says something of a drain; "the new nurse", "2 new boxes" say nothing."""
    if item.role != "cue" or item.value in PLAIN:
        return False
    noun = next((i for i in clause if i.start == item.end), None)
    of_noun = noun is not None and (is_strange(noun, toks) or (noun.unread and noun.name in STAFF))
    return not (item.value in LOOSE and of_noun)


def _clauses(items: Pieces, toks: Toks) -> Iterator[Pieces]:
    """The pieces between stops, brackets and joining words, cut also behind a whole line and before a bed."""
    found: list[Item] = []
    last = 0
    for item in items:
        ended = any(_ends(toks, k) for k in range(last, item.start)) or _ends(toks, item.start)
        bed = item.role == "cue" and word(toks, item.start) in BED_WORDS and is_digits(toks, item.start + 1)
        bed &= word(toks, item.start - 1) not in PLACING
        if found and (ended or bed or _is_behind_line(found, item, toks)):
            yield tuple(found)
            found = []
        if item.role != "sep":
            found.append(item)
        last = item.end
    yield tuple(found)


def _is_behind_line(before: list[Item], item: Item, toks: Toks) -> bool:
    """ "bed 12 640 at 1850 | the right shoe is missing": whether a line and its time end right there."""
    whole = {"level", "time"} <= {i.role for i in before} and before[-1].role in {"level", "time"}
    first = item.start - (word(toks, item.start - 1) in ARTICLES)
    return whole and before[-1].end == first and (item.unread or first < item.start)


def _ends(toks: Toks, k: int) -> bool:
    of_a_time = word(toks, k) == ":" and glued(toks, k + 1)
    return is_dash(toks, k) or (is_stop_among(STOPS, toks, k) and not of_a_time)


def _figures(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "3 zinnias on the sill, bed 12 seal 2": how many, and no bed; "tram at 1710": when that is."""
    for clause in stray_clauses(items, toks):
        inside, places = {i.role for i in clause}, {i.start for i in clause}
        outside = [i for i in items if i.start not in places and i.label is not None]
        others = {True: {i.label for i in outside if i.role == "bed"}}
        others[False] = {i.label for i in outside if i.role in LABELLED}
        for item in clause:
            if item.role == "time" and "bed" not in inside and _is_of_words(item, clause):
                yield "the time may be of something else"
            elif (
                item.role == "bed"
                and others[_is_named(item, toks)] - {item.label}
                and _is_no_subject(item, clause, toks)
            ):
                yield "the bed may be a count or a place"
            elif (
                item.role == "num"
                and item.digits
                and _is_alone(item, clause)
                and not _is_of_entry(clause, toks)
            ):
                yield "the number may be of something else"
            elif item.role == "level" and item.lead not in LED and inside.isdisjoint({"bed", "time"}):
                yield "the level may be a count"
            elif item.role == "tube" and not inside & {"bed", "level"} and _is_side_of(item, clause, toks):
                yield "the side may be of something else"


def _is_of_words(time: Item, clause: Pieces) -> bool:
    """Whether a moment is told with those words, and they tell of no event: "leaking all over at 0210"."""
    return not is_now(time) and time.lead not in SINCE and not any(i.name in LOADED | DRAWN for i in clause)


def _is_alone(item: Item, clause: Pieces) -> bool:
    """Whether no other number and no bed is told there."""
    return not any(i.role in {"num", "bed"} for i in clause if i is not item)


def _is_of_entry(clause: Pieces, toks: Toks) -> bool:
    """ "I wrote 650 by mistake", "actual 1475", "it belongs to 6": what a correction may be of."""
    said = toks.said[begins_at(STOPS, toks, clause[0].start) : clause[-1].end]
    return not ENTRY.isdisjoint(said)


def _is_named(bed: Item, toks: Toks) -> bool:
    """Whether it has its word: "bed 4", "room 2"."""
    return bed.lead == "bed" or not {word(toks, bed.start), word(toks, bed.start - 1)}.isdisjoint(BED_WORDS)


def _is_no_subject(bed: Item, clause: Pieces, toks: Toks) -> bool:
    """ "3 zinnias", "huddle in room 4"; "CT4 looks dry" is told of that bed, "11 to 19" a move."""
    if sum(i.role == "bed" for i in clause) > 1 or any(i.name in LOADED for i in clause):
        return False
    if any(i.unread and i.start < bed.start for i in clause):
        return bed.lead != "to"  # "bed 6 (next to 7) 340": asked as it is
    behind = clause[clause.index(bed) + 1 :]
    named = _is_named(bed, toks) or not bed.digits
    return not named and not glued(toks, bed.end) and _thing_behind(behind, bed.end, toks) is not None


def _is_side_of(tube: Item, clause: Pieces, toks: Toks) -> bool:
    """ "the right shoe is missing": right behind the side, of what it is."""
    led = word(toks, tube.start - 1) in ARTICLES
    return led and any(i.start == tube.end and is_strange(i, toks) for i in clause)


def _counted(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "she has 5 trauma plates", "4 rib fractures", "2 suction caths": how many of a thing."""
    several = len({i.label for i in items if i.role == "bed"}) > 1
    for k, item in enumerate(items):
        bare = item.role in {"bed", "level", "num"} and not (item.unit or item.lead)
        bare |= item.loose_time
        few = bare and (item.figure or 0) <= FEW and not _is_named(item, toks)
        thing = (
            _thing_behind(items[k + 1 : k + 1 + NEAR], item.end, toks)
            if few or item.role == "check"
            else None
        )
        if thing is None:
            continue
        heads = item.role == "bed" and (k == 0 or items[k - 1].role == "sep") and not several
        if not (heads and thing.unread):
            yield "how many of a thing"


def _thing_behind(behind: Pieces, end: int, toks: Toks) -> Item | None:
    """What is counted there, by a word in the plural with another one before it at most."""
    for item in behind:
        last = word(toks, item.end - 1)
        if item.start > end + 1 or item.role not in {"cue", "foreign"}:
            return None
        person = item.unread and item.name in STAFF | RELATIVES
        thing = is_strange(item, toks) or item.value in COUNTED or item.role == "foreign" or person
        thing |= item.value in HOLDING and item.start > end  # "2 spare canisters"
        if last in DAYS:
            return None
        if thing and (_is_plural(toks, item.end - 1) or last in PEOPLE):
            return item if last not in GOING_ON and not _is_verb(toks, item) else None
        if not (item.unread or item.value in COUNTED | LOOSE):
            return None
    return None


def _is_plural(toks: Toks, k: int) -> bool:
    """Whether a word is one; the "s" of some is put right: "caths" is "cath" here, one letter shorter."""
    said = word(toks, k)
    if toks[k].end - toks[k].start == len(said) + 1:
        return True
    return said.endswith("s") and len(said) > SHORT and not said.endswith(("ss", "us", "is", "'s"))


def _is_verb(toks: Toks, item: Item) -> bool:
    """Whether a word that lost its "s" is one of those verbs."""
    return f"{word(toks, item.end - 1)}s" in GOING_ON


def _taken_in(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "had 1.2 L in", "500 in, 640 out": what somebody was given."""
    for item in items:
        ends = word(toks, item.end + 1) in ENDS | {"", "and", "&", "so", "today", "overnight", "since"}
        if item.role in AMOUNTS and word(toks, item.end) == "in" and ends:
            yield "what went in"


def _paired(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "pacing box 80 / 10": two values of something, and no bed 10."""
    for clause in _clauses(items, toks):
        strange = any(is_strange(i, toks) for i in clause)
        for item in clause if strange else ():
            slash = item.role == "bed" and word(toks, item.start - 1) == "/"
            if slash and is_digits(toks, item.start - 2) and not _is_named(item, toks):
                yield "two values, or a line and its bed"


def _on_a_floor(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the scanner is on level 2", "level 2 care", "a level 1 trauma": of a house or of care."""
    for k, item in enumerate(items):
        said = item.role == "level" and word(toks, item.start - 1) == "level" and not item.unit
        if not said or (item.amount or 0) > MOST_FLOORS:
            continue
        behind = next((i for i in items[k + 1 : k + 2] if i.start == item.end), None)
        of_noun = behind is not None and (is_strange(behind, toks) or behind.value == "reason")
        if word(toks, item.start - 2) in FLOORED or of_noun:
            yield "the level of something else"


def _weighed(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the trolley weighs 80 kg", "his dog is 20 kg": what weighs that."""
    for clause in _clauses(items, toks):
        weight = next((i for i in clause if i.role == "weight"), None)
        if weight is None or any(i.role == "bed" for i in clause):
            continue
        if any(is_strange(i, toks) and i.start < weight.start for i in clause):
            yield "what weighs so much"


def _given(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "the spinal drain is levelled at 10 and gave 12", "first day gave 800": of what, or when, it was."""
    before: Pieces = ()
    for clause in _clauses(items, toks):
        cue = next((k for k, i in enumerate(clause) if i.role == "cue" and i.value == "amount"), None)
        if cue is not None and any(i.role == "volume" for i in clause[cue:]):
            head = clause[:cue] or before
            named = any(i.role in {"bed", "tube"} or i.value in HOLDING for i in head)
            other = any(i.role == "foreign" for i in head) and not named
            if other or _is_numbered_day(clause[:cue]):
                yield "of what so much came, or when"
        before = clause


def _is_numbered_day(head: Pieces) -> bool:
    """ "first day", "second night"."""
    return len(head) > 1 and head[-1].value == "window" and head[-2].value == "choice"


def _litres(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "high flow 50 L", "6 L optiflow": litres of what is breathed, and no left tube."""
    for before, item, behind in zip(("", *items), items, (*items[1:], ""), strict=False):
        said = item.role == "tube" and word(toks, item.start) == "l" and item.end - item.start == 1
        if not said or not is_digits(toks, item.start - 1):
            continue
        named = isinstance(behind, Item) and behind.start == item.end and is_strange(behind, toks)
        k = items.index(item) - 2
        led = (
            isinstance(before, Item)
            and k >= 0
            and items[k].end == before.start
            and is_strange(items[k], toks)
        )
        if named or led or word(toks, item.end + 1) == "%":
            yield "litres, or the left tube"


def _hand(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "his left hand has 3 stitches": a hand, and no tube; "the left hand drain" is one."""
    for tube in items:
        hand = tube.role == "tube" and word(toks, tube.end - 1) == "hand"
        drain = any(i.start == tube.end and (i.role != "cue" or i.value in HOLDING) for i in items)
        if hand and not drain and word(toks, tube.end) not in {"side", "one", "is", "at", ":"}:
            yield "a hand, or a tube"


_RULES = (
    Rule(_figures, frozenset({"word", "foreign"})),
    Rule(_counted, frozenset({"word", "reason", "foreign", "bed"})),
    Rule(_taken_in, AMOUNTS, frozenset({"in"})),
    Rule(_paired, frozenset({"bed"}), frozenset({"/"})),
    Rule(_on_a_floor, frozenset({"level"}), frozenset({"level"})),
    Rule(_weighed, frozenset({"weight"})),
    Rule(_given, frozenset({"amount"})),
    Rule(_litres, frozenset({"tube"}), frozenset({"l"})),
    Rule(_hand, frozenset({"tube"}), frozenset({"hand"})),
)


def _handed_over(items: Pieces, toks: Toks) -> Iterator[str]:
    """ "handover starts at 0700 in room 2": when and where that is, and no question."""
    for item in items:
        if item.role == "cue" and item.value == "opens" and word(toks, item.start - 1) in HANDINGS:
            yield "when and where a handover is"


HANDED_OVER = Rule(_handed_over, frozenset({"opens"}))
STRAY = Rules((*_RULES, HANDED_OVER, OF_PEOPLE, BESIDE_EVENT, TIME_OF_WORDS))
"""What is asked of a clause that may be of nothing here."""
OF_ASKED = Rules((*_RULES[:2], HANDED_OVER))
"""The same of a question."""


def strays(items: Pieces, toks: Toks) -> list[str]:
    """One line for each sign that something was taken from such a clause."""
    return signs(STRAY, items, toks)


def strays_asked(items: Pieces, toks: Toks) -> list[str]:
    """The same of the pieces of a question."""
    return signs(OF_ASKED, items, toks)


def strays_beside(items: Pieces, toks: Toks, *, asks: bool) -> list[str]:
    """The same of a question beside a report: "history of 4 falls", "rates it 4"; what is strange counts
    where nothing `asks` but a word that names what could be asked."""
    return [
        f"{i.name!r} beside what may be asked"
        for i in items
        if (i.name == "rate" and _is_plural(toks, i.start))
        or (is_strange(i, toks) and i.name not in POLITE and not asks)
    ]
