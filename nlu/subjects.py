"""Whether an event is of the drain: who fell, what was kicked, and what else its clause says.

Verbs of everyday language make an event only where the clause names a thing of ours. Any word of the
clause that was not understood, and that is no harmless remark, makes the message a question.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from .claims import STRONG
from .clauses import clauses
from .items import AMOUNTS, FINDINGS, Item
from .looks import TURNING, TURNS_TO
from .manner import CANISTERS, MISHAPS, behind_line, beside_checks, beside_events
from .neighbours import begins_at, ends_at, phrase_of
from .numbers import Toks, glued, word
from .patterns.asides import (
    ASIDES,
    CHECK_ASIDES,
    EVERYDAY,
    FALLS,
    LOADED,
    PERSONS,
    RELATIVES,
    STAFF,
    THINGS,
    TITLES,
    WITH,
)
from .patterns.leads import BED_WORDS
from .remarked import ALSO, HEDGES, LIMBS, OVER, TRIALS, doubted, of_next, without_harmless
from .roles import OF_PATIENT, is_event
from .rules import Rule, Rules, signs, there
from .turned import LASTING, was_so

TOLD = frozenset({"old", "new", "final", "previous"})
"""With these, what was changed is a canister."""
OF_MOVES = frozenset({"swap", "swapped", "beds", "rooms", "over", "up", "down", "across"})
UNSURE = frozenset(
    {"no", "not", "without", "denies", "query", "?", "o", "ruled", "exclude", "excluded", "never"}
)
NEWCOMERS = frozenset({"pt", "patient", "admission", "pts"})
MOST_TUBES = 4
UNDER_WAY = frozenset({"changing", "swapping", "switching", "replacing", "exchanging"})
GOINGS = frozenset({"going home", "gone home"})
PATIENT = frozenset({"pt", "patient", "he", "she", "discharged", "dc'd", "d/c"})
TUBINGS = frozenset({"tube", "tubes", "tubing", "pigtail", "catheter", "hose", "ct", "icd", "line"})
SUCTION = frozenset({"suction", "sxn", "suct", "wall", "lws", "vacuum", "vac"})
CHECKS = frozenset(
    {"leak", "tidal", "fluid", "indicator", "seal", "suction", "wall", "leakgrade", "waterseal"}
)
SETTINGS = frozenset({"suction", "wall"})
FITTINGS = frozenset({"reg", "regulator", "gauge", "source", "setup", "tubing", "liner", "head", "meter"})
"""Behind the word suction: what is on the wall."""
LOOSE = frozenset({"air", "lung", "heart", "injury", "bypass", "effusions", "pleural fluid"})
REASONING = frozenset(
    {"fresh", "for", "a", "an", "is", "was", "post", "op", "reason", "s/p", "p", "of", "=", "day"}
)
NEAR_BY = 4
"""So many words before such a word these say why the drain is in."""
WALL_ASIDES = CHECK_ASIDES | {"down", "low", "up", "someone", "somebody", "too"}
"""Beside an indicator that is told these say why."""
DIAL = 40
"""Centimetres of water; no suction dial is set higher. Common practice, no source."""
EVENT_CUES = frozenset({"kind", "what"})
TELLING = CHECKS | {"kind", "reason", "what", "word", "check"}
"""Cues of an event, of a check, and words that were not understood: without any there is nothing to doubt."""
TO_BE_DONE = frozenset({"clamp", "unclamp", "change", "swap", "remove", "pull", "move", "transfer"})
REPORTED = frozenset({"says", "said"})
"""Who says so tells what happened."""
RANKS = frozenset({"surgical", "medical", "thoracic", "junior", "senior", "duty", "covering", "float"})
RANKS |= {"agency", "bank", "night", "day", "student", "other", "second", "ward", "icu", "chief", "on-call"}
"""Before a word for one of the staff: "surgical reg"."""
HELPERS = frozenset(
    {"has", "had", "have", "is", "was", "just", "then", "also", "almost", "nearly", "accidentally"}
)
JOINTS = frozenset({"and", "&", ",", "/"})
PEOPLE = STAFF | RELATIVES | {"i", "we"}
WHOSE = frozenset({"for", "of", "in", "on", "with"})
BESIDE = frozenset({"beside", "opposite"})
OPERATIONS = ("ectomy", "plasty", "desis", "thoracotomy", "sternotomy")
VALVES = frozenset({"flutter", "way", "non-return", "tap"})
FETCHING = frozenset({"transport", "transporter", "porter", "porters", "team"})
"""Whoever comes for a patient is named with the bed as well."""
MOST_OF_A_CHECK = 200
"""mmHg at the wall at most; a dial and a seal have less."""


def subjects(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """One line for each event or check whose clause says more than was understood."""
    if there(items).isdisjoint(TELLING):
        return
    yield from signs(OF_ALL, items, toks)
    parts = [without_harmless(clause, toks) for clause in clauses(items, STRONG)]
    for place, clause in enumerate(parts):
        events = [i for i in clause if is_event(i)]
        yield from _loaded(clause)
        yield from _wished(clause, toks)
        checks = [i for i in clause if i.role == "cue" and i.value in CHECKS]
        if not events and not checks:
            continue
        scope = _with_bed(parts, place)
        if events and {e.name for e in events} <= MISHAPS and _is_of_own(events[0], clause, toks):
            scope = _without_words_before(scope, clause)
        scope = (
            beside_events(scope, events, toks)
            if events
            else behind_line(beside_checks(scope, clause, toks), toks)
        )
        harmless = ASIDES if events else WALL_ASIDES if _is_indicator_told(items) else CHECK_ASIDES
        yield from _strange(
            scope, harmless | OF_MOVES if {e.name for e in events} == {"moved"} else harmless, toks
        )
        if any(e.name in OF_PATIENT for e in events):
            judged = [i for part in parts[:place] if any(map(is_event, part)) for i in part]
            yield from _strange([i for i in scope if i not in clause and i not in judged], frozenset(), toks)
        yield from _who_goes(events, clause, toks)
        strong = {e.name for e in events if phrase_of(e, toks) not in EVERYDAY}
        for event in events:
            if event.value == "what" and event.name in strong and phrase_of(event, toks) in EVERYDAY:
                continue
            yield from _of_another(event, clause, scope, toks)


def _without_words_before(scope: list[Item], clause: list[Item]) -> list[Item]:
    """The clause with the bed before it, where only another matter is told there."""
    before = [i for i in scope if i not in clause]
    told = any(i.role == "cue" and i.value not in {"word", "bed"} for i in before)
    other = any(i.role == "foreign" for i in before)
    return scope if told or not other else [*(i for i in before if i.role == "bed"), *clause]


def _is_of_own(event: Item, clause: list[Item], toks: Toks) -> bool:
    """ "wet around the site, bottle cracked": what the clause of the event itself names before it."""
    return any(word(toks, k) in CANISTERS for k in range(clause[0].start, event.start))


def _who_goes(events: list[Item], clause: list[Item], toks: Toks) -> Iterator[str]:
    """ "bed 4 730 at 1900, going home": the patient, or whoever writes it?"""
    going = any(phrase_of(e, toks) in GOINGS for e in events)
    of_patient = any(i.role == "bed" for i in clause) or not toks.words.isdisjoint(PATIENT)
    if going and not of_patient:
        yield "who is going"


def _of_each(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "beds 5 and 7: suction 20 and 15": a value of each bed, and not one of both with a line."""
    several = len({i.label for i in items if i.role == "bed"}) > 1
    for check, joint, item in zip(items, items[1:], items[2:], strict=False) if several else ():
        joined = check.role == "check" and joint.role == "sep" and joint.value in JOINTS
        bare = item.role in {"level", "bed"} and not (item.lead or item.unit)
        if joined and bare and item is items[-1] and (item.figure or 0) <= MOST_OF_A_CHECK:
            yield "a value of one bed and of the next"


def _counted(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "first 2 tubes out": how many, and no bed."""
    few = (i for i in items if i.role == "bed" and i.figure is not None and i.figure <= MOST_TUBES)
    plural = (word(toks, bed.end + (word(toks, bed.end) == "chest")) for bed in few)
    yield from ("how many, or which bed" for noun in plural if noun in {"tubes", "drains", "canisters"})


def _changing(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "changing the box now, its at 1910": which of the two canisters is at it?"""
    changing = any(is_event(i) and i.name == "exchanged" and word(toks, i.start) in UNDER_WAY for i in items)
    levels = (i for i in items if i.role == "level" and not i.name)
    yield from ("the old canister, or the new one" for _ in levels if changing)


def _sealed(items: tuple[Item, ...], _: Toks) -> Iterator[str]:
    """ "20 suction 9 waterseal": on suction, or on water seal?"""
    for before, item, after in zip(items, items[1:], [*items[2:], None], strict=False):
        set_at = before.role == "check" and before.name == "suction" and before.end == item.start
        seal = set_at and item.role == "cue" and item.value == "seal"
        if seal and (after is None or after.role in {"sep", "bed"}):
            yield "on suction, or on water seal"


def _low_wall(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "on wall suction 20": as much on the dial, or so little at the wall?"""
    for item in items:
        wall = item.role == "check" and item.name == "wall" and not item.unit
        said = {word(toks, item.start - 1), word(toks, item.start - 2)}
        if wall and (item.figure or 0) <= DIAL and said & {"suction", "sxn", "sx"}:
            yield "on the dial, or at the wall"


def _is_indicator_told(items: tuple[Item, ...]) -> bool:
    """Whether the indicator of the suction was told, and the water seal was not."""
    told = {i.value for i in items if i.role == "cue"}
    return "indicator" in told and "seal" not in told


def _loaded(clause: list[Item]) -> Iterator[str]:
    """ "changed 24 at 1800": a verb of an event that was not read as one."""
    lined = any(i.role in AMOUNTS for i in clause)
    for before, item, behind in zip((None, *clause), clause, (*clause[1:], None), strict=False):
        turns = item.name in TURNING and behind is not None and TURNS_TO & {behind.value, behind.role}
        if item.unread and item.name in LOADED and not turns:
            beside = before if before is not None and before.end == item.start else None
            tube = beside is not None and beside.value == "tubeword"  # "chest tube off by MO"
            of_another = beside is not None and beside.role == "foreign"  # "925 8am drsg changed"
            if tube or (lined and not of_another):
                yield f"{item.name!r} may tell of an event"


def _wished(clause: list[Item], toks: Toks) -> Iterator[str]:
    """ "surgeon wants bed 9 tube out", "md ordered 9 clamped": what is ordered has not happened."""
    orders = [i for i in clause if i.role == "cue" and i.value == "order"]
    if not clause:
        return
    wishes = [i for i in orders if word(toks, i.start) != "per" and word(toks, i.end - 1) not in REPORTED]
    per = next((k for k in range(clause[0].start, clause[-1].end) if word(toks, k) == "per"), len(toks))
    for event in clause:
        bidden = any(o.end <= event.start for o in orders) or per < clause[-1].end
        told = is_event(event) and word(toks, event.start) in TO_BE_DONE and bidden
        if told or (is_event(event) and any(wish.end <= event.start for wish in wishes)):
            yield f"{phrase_of(event, toks)!r} is ordered, and not done"


def _with_bed(clauses: list[list[Item]], place: int) -> list[Item]:
    """The clause, and those before it from which it has its bed."""
    scope = list(clauses[place])
    while not any(i.role == "bed" for i in scope) and place > 0:
        place -= 1
        scope = [*clauses[place], *scope]
    return scope


def _strange(scope: list[Item], harmless: frozenset[str], toks: Toks) -> Iterator[str]:
    for item in scope:
        rank = item.name in RANKS and word(toks, item.end) in STAFF  # "surgical reg put a pigtail in 11"
        operated = item.name.endswith(OPERATIONS)  # "18 bilobectomy, big leak"
        since = (
            operated or word(toks, item.start - 1) == "since"
        )  # "another 80 since lunch and still swinging"
        since |= {"did", "go"} <= {word(toks, item.start - 1), word(toks, item.start), word(toks, item.end)}
        if item.unread and item.name not in harmless and not (rank or since or _is_name(item, toks)):
            yield f"{item.name!r} was not understood beside an event"
        if item.role == "cue" and item.value == "new" and word(toks, item.end) in NEWCOMERS:
            yield "a new patient"
        if item.role == "foreign":
            yield "the event may be of what is not ours"


def _reasons(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "no injury", "r/o haemothorax", "sub q air": a reason that is denied, looked for, or none."""
    placed = any(i.role == "cue" and i.name == "placed" for i in items)
    for item in items:
        if item.role == "cue" and item.value == "reason":
            before = {word(toks, item.start - 1), word(toks, item.start - 2)}
            if any(i.role == "foreign" for i in items):
                yield "a reason that another finding may show"
            if before & UNSURE or word(toks, item.end) == "?":
                yield "a reason that is denied or doubted"
            if "for" in before and any(i.role == "time" and _is_day(i) for i in items):
                yield "what lies ahead that day"  # "5 for vats today"
            if any(is_event(i) and i.name == "damaged" and i.start == item.end for i in items):
                yield "a part that is broken"  # "valve cracked"
            near = {word(toks, k) for k in range(item.start - NEAR_BY, item.start)}
            if word(toks, item.end - 1) == "valve" and word(toks, item.start - 1) in VALVES:
                yield "a valve of the drain"  # "flutter valve"
            if phrase_of(item, toks) in LOOSE and not (near & REASONING or placed):
                yield "a word that may be no reason"
            sided = word(toks, item.start - 1) in {"left", "right", "l", "r", "lt", "rt", "the", "both"}
            if item.name == "lung" and sided and word(toks, item.end - 1) == "lung":
                yield "a lung is no reason"


def _is_day(time: Item) -> bool:
    return all(clock.style == "date" for clock in time.clocks)


def _suction_back(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "back on" is of the suction only where suction is named."""
    for item in items:
        back = (
            item.role == "cue" and item.name == "suction_on" and not _says_suction(toks, item.start, item.end)
        )
        if back and not _says_suction(toks, 0, len(toks)):
            yield "what is back on?"


def _queried(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "?leak", "?clamped": a sign of question glued to what may be so."""
    for item in items:
        told = is_event(item) or (item.role == "cue" and item.value in FINDINGS)
        if told and word(toks, item.start - 1) == "?" and glued(toks, item.start):
            yield f"{phrase_of(item, toks)!r} is only supposed"


def _says_suction(toks: Toks, first: int, last: int) -> bool:
    return any(word(toks, k) in SUCTION for k in range(first, last))


def _is_name(item: Item, toks: Toks) -> bool:
    before = word(toks, item.start - 1)
    return before in TITLES or (before == "." and word(toks, item.start - 2) in TITLES)


def _of_another(event: Item, clause: list[Item], scope: list[Item], toks: Toks) -> Iterator[str]:
    said = phrase_of(event, toks)
    before = next((i for i in reversed(clause) if i.end == event.start), None)
    if event.value == "what" and before is not None and before.value in {"old", "change"}:
        yield f"{said!r} is what was replaced"
    if event.name in {"exchanged", "damaged"} and _is_of_suction(clause, toks):
        yield f"{said!r} is said of the suction"
    told = event.name == "exchanged" and not TOLD.isdisjoint(toks.words)
    told |= event.name == "removed" and "final" in toks.words  # "13 pulled at 0530, final 95"
    if said in EVERYDAY and not told and not _names_a_thing(scope, toks):
        yield f"{said!r} of what?"
    if said in FALLS and _doer(event, toks) in PERSONS:
        yield f"{said!r} is said of a person"
    if event.name == "tipped" and _doer(event, toks) in TUBINGS:
        yield f"{said!r} is said of a tube, which does not tip"
    if event.name in OF_PATIENT and _another_person(event, clause, toks):
        yield f"{said!r} is said of another person"


def _is_of_suction(clause: list[Item], toks: Toks) -> bool:
    """ "suction reg broken changed it": the regulator of the suction, and no canister."""
    named = {i.value for i in clause if i.role == "cue"}
    settings = [i for i in clause if i.role == "cue" and i.value in SETTINGS]
    fitting = any({word(toks, i.end), word(toks, i.end - 1)} & FITTINGS for i in settings)
    return fitting and "canister" not in named


def _names_a_thing(scope: list[Item], toks: Toks) -> bool:
    """Whether the clause has a word for a drain, or tells the level of one that is gone."""
    first, last = begins_at(STRONG, toks, scope[0].start), ends_at(STRONG, toks, scope[-1].end)
    removed = any(i.name == "removed" for i in scope)
    tube = removed and any(i.role == "tube" for i in scope)  # "had the mediastinal pulled"
    return (
        tube
        or any(i.value == "old" for i in scope)
        or any(word(toks, k) in THINGS for k in range(first, last))
    )


def _doer(event: Item, toks: Toks) -> str:
    """The word before the verb, helping words aside."""
    k = event.start - 1
    while word(toks, k) in HELPERS:
        k -= 1
    return word(toks, k)


def _another_person(event: Item, clause: list[Item], toks: Toks) -> bool:
    """ "his wife went home", "the nurse for CT6 got moved": somebody else before the verb."""
    beds = [i for i in clause if i.role == "bed" and i.end <= event.start]
    if any(is_of_person(bed, toks) for bed in beds):
        return True
    ends = [bed.end for bed in beds]
    first = max(ends, default=min(i.start for i in clause))  # "transport is here and 24 is leaving"
    return any(
        word(toks, k) in PEOPLE - {"ct", "he", "she", "they"}
        and (word(toks, k - 1) not in WITH or (word(toks, k - 1) == "and" and _goes_alone(toks, k, ends)))
        for k in range(first, event.start)
    )


def _goes_alone(toks: Toks, k: int, beds: list[int]) -> bool:
    """ "480 at 1850 and mum has gone home"; with "bed 7 and wife went home" the patient went, too."""
    return k - 1 not in beds and word(toks, k - 2) not in PATIENT | PEOPLE | PERSONS


def is_of_person(bed: Item, toks: Toks) -> bool:
    """ "nurse for CT6", "daughter of bed 3", "patient next to 7": whoever is told of is not in that bed."""
    k = bed.start - 1 - (word(toks, bed.start - 1) in BED_WORDS)
    if word(toks, k) in BESIDE or toks.said[max(0, k - 1) : k + 1] == ("next", "to"):
        return True
    return word(toks, k) in WHOSE and word(toks, k - 1) in PEOPLE - FETCHING - {"i", "we", "ct"}


def _who_left(items: tuple[Item, ...], toks: Toks) -> Iterator[str]:
    """ "wife of 12 left at 1800": who left, and no line of a left tube."""
    for bed, item in pairwise(items):
        left = item.role == "tube" and word(toks, item.start) == "left" and bed.end == item.start
        if left and bed.role == "bed" and is_of_person(bed, toks):
            yield "who left"


OF_ALL = Rules(
    (
        Rule(_reasons, frozenset({"reason"})),
        Rule(_low_wall, frozenset({"check"})),
        Rule(_suction_back, EVENT_CUES),
        Rule(_queried, EVENT_CUES | FINDINGS, frozenset({"?"})),
        Rule(doubted, FINDINGS, HEDGES | LIMBS | OVER | TRIALS),
        Rule(of_next, FINDINGS, ALSO),
        Rule(was_so, EVENT_CUES | LASTING | {"fluid"}, frozenset({"was", "were"})),
        Rule(_sealed, frozenset({"seal"})),
        Rule(_changing, EVENT_CUES),
        Rule(_counted, frozenset({"bed"}), frozenset({"tubes", "drains", "canisters"})),
        Rule(_of_each, frozenset({"check"})),
        Rule(_who_left, frozenset({"tube"}), frozenset({"left"})),
    )
)
