"""What is not ours, denied, planned or taken back while speaking: settled before any number gets its role.

Works on the pieces of one way through the message. Patterns of what is not ours claim their numbers
first; a denied or hoped-for number never reaches a mark, and is asked about instead.
"""

from __future__ import annotations

from collections.abc import Set

from .claims import CLAIMED, DOSES, SAYS, STRONG, claimed, without_doses, without_gains
from .coming import COMING, CONDITIONS, NEXT, condition_end, is_of_later
from .corrections import is_correction
from .items import FINDINGS, Item
from .mending import repaired
from .neighbours import phrase_of
from .numbers import Toks, word
from .polarity import DENIED, turned

LIMITS = frozenset(
    {
        "over",
        "under",
        "below",
        "less than",
        "more than",
        "greater than",
        "at least",
        "at most",
        "no more than",
        "not more than",
        "maximum",
        "minimum",
        "max",
    }
)
BEHIND = frozenset({"maximum", "minimum", "max"})
STARTS = frozenset({"other", "plan", "neg", "repair", "no", "kind", "span"})
WAITING = frozenset({"due", "open"})
"""What is asked by these words alone; behind an event they say that it lies ahead: "canister change due"."""
GOALS = frozenset({"goal", "target"})
"""What these say is no event and no level, and nobody meant to tell one."""
AHEAD = frozenset({"in", "next", "every", "within", "q"})
"""A length of time after these lies ahead ("in 20 min")."""
DONE = frozenset(
    {"reconnected", "reattached", "fixed", "sorted", "back", "rejoined", "replaced", "done", "it"}
)
ROSE = frozenset({"went", "jumped", "rose", "climbed", "risen", "poured", "gushed", "dumped", "bled", "shot"})
"""What the line did, or what came, in the time that is told behind it."""
EVENT_CUES = frozenset({"kind", "what", "same"})
PLANNED_CUES = EVENT_CUES | FINDINGS
HAPPENED = FINDINGS | {"what"}
WISHED = frozenset({"exchanged", "removed"})
ENDING = frozenset({"placed", "exchanged", "removed"})
BASE = frozenset({"change", "swap", "exchange", "replace", "switch", "pull", "remove"})
ORDERING = frozenset({"put", "turn", "switch", "hook", "take", "place", "clamp", "unclamp", "send", "move"})
PAIR = 2
"""Words of "new box"."""
NEARLY = frozenset({"nearly", "almost"})
PLEASE = frozenset({"please", "pls", "plz", "someone", "somebody"})
ABSENT = "absent"
"""What was looked for and not there: no finding, and no answer either."""
RIGHTING = frozenset({"corrected", "withdrawn"})
"""Asked of the reader, and of nobody else."""


def scoped(items: tuple[Item, ...], toks: Toks) -> tuple[Item, ...]:
    """The pieces with claimed numbers, denied stretches and repairs marked as such."""
    items = without_gains(items, toks)
    items = turned(items if DOSES.isdisjoint(toks.words) else without_doses(items, toks), toks)
    if not NEARLY.isdisjoint(toks.words):
        items = tuple(i.as_role(DENIED) if _is_nearly(i, toks) else i for i in items)
    due = {"next", "due"} <= toks.words
    starts = not STARTS.isdisjoint([i.value for i in items if i.role == "cue"])
    if not (due or starts) and toks.words.isdisjoint(PLEASE):
        return items
    asks = _asks(items, toks)
    found = claimed(_without_remarks(list(items), toks), toks)
    if not asks:
        found = _planned(found, toks)
        if not is_correction(tuple(found), toks):
            found = _negated(found)
    else:
        found = _wished(found)
    return tuple(repaired(found, toks))


def _asks(items: tuple[Item, ...], toks: Toks) -> bool:
    cues = [i for i in items if i.role == "cue"]
    if any(i.value in {"question", "mark_of_question"} for i in cues):
        return True
    return any(i.value == "ask" and word(toks, i.start) in {"how", "what", "whats", "what's"} for i in cues)


def _wished(items: list[Item]) -> list[Item]:
    """Settings in the clause of a wish before a question: "want 4 at gravity, can you put the order in"."""
    asked = next((k for k, i in enumerate(items) if i.value in {"question", "mark_of_question"}), 0)
    wishes = (k for k in range(asked) if items[k].role == "cue" and items[k].value == "plan")
    for k in wishes:
        end = _clause_end(items, k)
        for j in range(k, end if end < asked else k):
            if items[j].value == "waterseal" or items[j].lead == "suction":
                items[j] = items[j].as_role(DENIED)
    return items


def _is_kind(item: Item, names: Set[str]) -> bool:
    return item.role == "cue" and item.value == "kind" and item.name in names


def _is_break(item: Item) -> bool:
    return item.role == "sep" and item.value in STRONG


def _planned(items: list[Item], toks: Toks) -> list[Item]:
    for k, cue in enumerate(items):
        ahead = cue.value == "span" and word(toks, cue.start - 1) in AHEAD and not _is_over(items, k)
        ahead &= not _is_past(items, k, toks)
        ahead |= cue.value == "ask" and cue.name in WAITING and k > 0 and _is_kind(items[k - 1], WISHED)
        if cue.value == "ask" and phrase_of(cue, toks) in NEXT:
            start = next((j + 1 for j in range(k, -1, -1) if _is_break(items[j])), 0)
            is_of_later(items, k, start, _clause_end(items, k), due=True)
        if cue.role != "cue" or not (ahead or cue.value == "plan" or _is_wish(cue, toks)):
            continue
        said = phrase_of(cue, toks)
        if said in LIMITS:
            _limit(items, k, said)
            continue
        start = next((j + 1 for j in range(k, -1, -1) if _is_break(items[j])), 0)
        if said in COMING and is_of_later(items, k, start, _clause_end(items, k)):
            continue
        start += said in GOALS and _is_bed_of_goal(items, start, k)
        end = condition_end(items, k) if word(toks, cue.start) in CONDITIONS else _clause_end(items, k)
        _deny(items, start, end, CLAIMED if said in GOALS else DENIED, planned=True)
    return items


def _is_bed_of_goal(items: list[Item], start: int, k: int) -> bool:
    """ "7 goal is under 200, line is 130": the number that only says where, before the goal's own."""
    first = items[start]
    bed = (
        start == k - 1 and first.role == "num" and first.label is not None and not (first.lead or first.unit)
    )
    return bed and any(i.role in SAYS for i in items[k + 1 : _clause_end(items, k)])


def _is_past(items: list[Item], k: int, toks: Toks) -> bool:
    """ "reconnected within a minute": how soon it was done; "went from 300 to 700 in 20 min"."""
    start = next((items[j].end for j in range(k, -1, -1) if _is_break(items[j])), 0)
    rose = not ROSE.isdisjoint(toks.said[start : items[k].start])
    return rose or (word(toks, items[k].start - 1) == "within" and word(toks, items[k].start - 2) in DONE)


def _is_over(items: list[Item], k: int) -> bool:
    """ "drained 300 in 2 hours": over which length of time it was, and nothing that lies ahead."""
    places = [j for j in range(k) if items[j].role != "bed" and items[j].value != "bed"]
    before = items[places[-1]] if places else None
    if before is None or before.role != "num":
        return False
    plain = not before.lead and before.label is None and not before.full_clock
    if plain and before.end + 1 == items[k].start:
        items[places[-1]] = before._replace(lead="amount")  # "340 in 30 min"
        return True
    return before.lead == "amount"


def _limit(items: list[Item], k: int, said: str) -> None:
    """ "under 340", "max 340", "340 max": the number that is limited is no line."""
    places = [k + 1]
    if said in BEHIND and k > 0 and items[k - 1].end == items[k].start:
        places.append(k - 1)
    limited = next((j for j in places if j < len(items) and items[j].role in SAYS), None)
    if limited is not None:
        items[limited] = items[limited].as_role("bad")


def _is_nearly(item: Item, toks: Toks) -> bool:
    """ "nearly tipped": it did not happen."""
    happens = item.role == "cue" and item.value in {"kind", "what"}
    return happens and word(toks, item.start - 1) in NEARLY


def _is_wish(cue: Item, toks: Toks) -> bool:
    """ "change canister please", "please put 5 back on suction": asked of somebody, not done."""
    if cue.value not in {"kind", "what"} or cue.name in RIGHTING or toks.words.isdisjoint(PLEASE):
        return False
    bare = word(toks, cue.start) in {"new", "fresh"} and cue.end - cue.start == PAIR  # "new box please"
    wished = cue.value == "kind" and ((cue.name in WISHED and word(toks, cue.start) in BASE) or bare)
    return wished or any(
        word(toks, k) in PLEASE and word(toks, k + 1) in ORDERING for k in range(cue.start + 1)
    )


def _clause_end(items: list[Item], k: int) -> int:
    return next((j for j in range(k, len(items)) if _is_break(items[j])), len(items))


def _negated(items: list[Item]) -> list[Item]:
    for k, cue in enumerate(items):
        if cue.role == "cue" and cue.value == "no" and k + 1 < len(items):
            _none_of(items, k)
        if cue.role == "cue" and (cue.value == "neg" or _is_no_line(items, k)):
            _deny(items, k + 1, _clause_end(items, k))
    return items


def _none_of(items: list[Item], k: int) -> None:
    """ "no blood" is no finding; "no tipped drain" is no event."""
    item = items[k + 1]
    if item.role == "cue" and item.value == "fluid":
        items[k], items[k + 1] = items[k]._replace(value="filler"), item._replace(value=ABSENT, name="")
    elif item.role == "cue" and (item.value == "what" or _is_none_placed(items, k)):
        items[k + 1] = item.as_role(DENIED)


def _is_none_placed(items: list[Item], k: int) -> bool:
    """ "9 no new drain placed"; "no, new canister" is an answer."""
    of_bed = any(i.role == "bed" or i.label is not None for i in items[:k])
    return of_bed and _is_kind(items[k + 1], {"placed"}) and items[k + 1].start == items[k].end


def _is_no_line(items: list[Item], k: int) -> bool:
    """ "no mark for bed 12 at 1900": there is none; "no, line at 1050" is an answer."""
    after = [i for i in items[k + 1 : k + 4] if i.role != "cue" or i.value != "bed"]
    lines = items[k].value == "no" and len(after) > 1 and after[0].role == "cue" and after[0].value == "level"
    return lines and (after[1].role == "bed" or (after[1].label is not None and after[1].lead != "level"))


def _deny(items: list[Item], start: int, end: int, role: str = DENIED, *, planned: bool = False) -> None:
    """Whatever is said in the stretch is asked about, or left out; where and when stay."""
    for j in range(start, end):
        item = items[j]
        cues = PLANNED_CUES if planned else EVENT_CUES
        if item.role in SAYS or (item.role == "cue" and item.value in cues):
            items[j] = item.as_role(role)


def _without_remarks(items: list[Item], toks: Toks) -> list[Item]:
    """ "mark 560, that was ten minutes ago", "clamped for ct": when or why it was, and nothing more of it."""
    happened = next((i.start for i in items if i.role == "cue" and i.value == "what"), len(toks))
    told = any(i.role == "cue" and i.value in HAPPENED for i in items)
    set_up = next((i.start for i in items if _is_kind(i, {"placed", "exchanged", "removed"})), len(toks))
    for k, item in enumerate(items):
        why = item.start > happened and word(toks, item.start) == "for"
        where = item.start > set_up and word(toks, item.start) in {"in", "at"}  # "placed in theatre"
        heard = k > 0 and told and _is_kind(item, {"acknowledged"})  # "not tidaling, md aware"
        aside = heard or (_is_kind(item, {"away"}) and (why or where))
        if aside or _is_gone_for(items, k, toks):
            items[k] = item._replace(value="filler", name="")
    for k in range(1, len(items) - 1):
        item, before, after = items[k], items[k - 1], items[k + 1]
        remark = _is_kind(item, {"corrected"}) and phrase_of(item, toks) in REMARKING
        timed = after.role == "time" or (after.role == "num" and after.at and bool(after.clocks))
        if remark and before.role in {"num", "sep"} and timed and _tells_no_more(items[k + 2 :]):
            items[k] = item._replace(value="filler", name="")
    return items


def _tells_no_more(rest: list[Item]) -> bool:
    """Whether behind a stop nothing of a line follows: "that was at 9 pm, he should settle"."""
    told = any(i.role in {"num", "time", "bed"} or i.value in {"kind", "level", "neg"} for i in rest)
    return not rest or (rest[0].role == "sep" and not told)


def _is_gone_for(items: list[Item], k: int, toks: Toks) -> bool:
    """ "to the OR for tube removal", "to theatre for a thoracotomy": what lies ahead, and is not so yet."""
    if not (_is_kind(items[k], ENDING) or (items[k].role == "cue" and items[k].value == "reason")):
        return False
    start = items[k - 1].start if k and items[k - 1].role == "tube" else items[k].start
    start -= word(toks, start - 1) in {"left", "right", "l", "r"}
    start -= word(toks, start - 1) in {"a", "an", "the", "his", "her"}
    return word(toks, start - 1) == "for" and any(_is_kind(i, {"away"}) for i in items[:k])


REMARKING = frozenset({"that was"})
