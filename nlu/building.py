"""Drafts to statements, or to what must be asked: values, moments, spans.

A draft becomes several statements when it says several things of one drain (a line and its checks).
A slot that is not sure makes its statement an `Unclear` with what is sure as the partial form.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import datetime
from typing import Any

from .doubts import CHECK_SLOTS, Doubts, check_value, whole
from .drafts import SIDES, Draft, each_tube
from .items import Item
from .moments import LIST_REACH, REACH, Moment, distinct
from .numbers import Toks, word
from .statements import (
    Away,
    Back,
    Checked,
    Described,
    Drained,
    Exchanged,
    Incident,
    Left,
    Mark,
    Moved,
    Ordered,
    Placed,
    Removed,
    Span,
    Statement,
    Unclear,
)

PLAIN: dict[str, type[Statement]] = {"away": Away, "back": Back, "left": Left}
MORE = frozenset({"another", "further"})
"""Before how much came, these make it more than was told before."""
DAYPARTS = {"morning": (4, 12), "afternoon": (12, 18), "evening": (17, 24)}
"""The hours of each."""
OF_SEVERAL = frozenset({"and", "&", "+", "both", "all", "each", "beds", "rooms", "rms"})
"""With one of these, what is said of beds in a row is said of each."""
OF_EACH = frozenset({"both", "all", "each", "every"})
"""Dictated, "beds seven and eight mark nine ten" may have lost a level: only these say so."""
BECAUSE = frozenset({"because", "since", "as", "cos", "cuz", "coz", "bc"})
HARM = frozenset({"damaged", "disconnected", "dislodged", "kinked"})
WHY_REACH = 5
"""Words from because to what was the matter."""


@dataclass(slots=True)
class Builder:
    """Makes the statements of one reading."""

    toks: Toks
    text: str
    arrived: datetime
    listed: bool = False
    voice: bool = False
    _doubts: Doubts = field(init=False)

    def __post_init__(self) -> None:
        self._doubts = Doubts(self.text, self.arrived)

    def all_built(self, drafts: list[Draft]) -> Iterator[Statement | Unclear]:
        """The statements of all drafts; a loose time of one that is asked is asked of those that share it.

        "bed 3 was 610, bed 4 220": where the 220 is no level of bed 4, it is no time of bed 3 either.
        """
        made = [list(self.built(draft)) for draft in drafts]
        asked = {
            draft.time.start if draft.time else -1
            for draft, said in zip(drafts, made, strict=True)
            if _is_loose(draft) and any(isinstance(s, Unclear) and not s.choices for s in said)
        }
        for draft, said in zip(drafts, made, strict=True):
            doubtful = draft.shared_time and draft.time is not None and draft.time.start in asked
            for each in said:
                yield self._untimed(each) if doubtful and isinstance(each, Mark) else each

    def _untimed(self, mark: Mark) -> Unclear:
        return Unclear(slot="at", text=self.text, statement=replace(mark, at=None))

    def built(self, draft: Draft) -> Iterator[Statement | Unclear]:
        """The statements of a draft, each whole or as a question."""
        made = list(self._statements(draft))
        if draft.more_beds and self._is_of_one_bed(draft):
            draft.clash("bed", draft.bed, *draft.more_beds)
            draft.more_beds = []
        for bed in (draft.bed, *draft.more_beds):
            for statement, item_slots in made:
                yield self._settled(statement, bed, item_slots, draft)
        if draft.denied and not _is_unharmed(draft):
            yield self._doubts.denied(draft)

    def span(self, *items: Item | None) -> Span:
        """Where in the message the pieces were said."""
        said = [i for i in items if i is not None]
        first, last = min([i.start for i in said]), max([i.end for i in said])
        return Span(self.toks[first].start, self.toks[last - 1].end)

    def _is_of_one_bed(self, draft: Draft) -> bool:
        """ "bay 2, bed 4, mark 340": nothing says that the line is of both."""
        said = draft.level or draft.final or draft.volume
        if draft.bed is None or said is None or not said.lead:
            return False
        several = OF_EACH if self.voice else OF_SEVERAL
        return several.isdisjoint(self.toks.said[max(0, draft.bed.start - 2) : said.end])

    # What a draft says

    def _statements(self, draft: Draft) -> Iterator[tuple[Statement, dict[str, Item]]]:
        slipped = [w for w in draft.whats if w.name == "dislodged"] if draft.kind == "removed" else []
        if slipped and all(map(self._is_why, slipped)):
            draft.whats = [w for w in draft.whats if w not in slipped]
        elif slipped:
            draft.kind = ""
        if draft.kind in PLAIN:
            if draft.final is not None:  # "discharged at 0600, final line 275"
                yield Mark(level_ml=draft.final.amount), {"level_ml": draft.final}
            yield PLAIN[draft.kind](), {}
        elif draft.kind or (draft.final is not None and draft.level is None):
            yield from self._event(draft)
        if draft.kind != "placed" and draft.kind != "removed":
            yield from self._amounts(draft)
        yield from self._findings(draft)
        for what in {w.name: w for w in reversed(draft.whats)}.values():
            yield Incident(what=what.name), {"what": what}  # type: ignore[arg-type]
        if draft.kind != "placed" and (draft.reason or draft.weight):
            yield self._described(draft)

    def _is_why(self, what: Item) -> bool:
        """ "pulled the tube since it was half out": why it was taken out."""
        return not BECAUSE.isdisjoint(self.toks.said[max(0, what.start - WHY_REACH) : what.start])

    def _findings(self, draft: Draft) -> Iterator[tuple[Statement, dict[str, Item]]]:
        """What was ordered, and what was checked beside it."""
        checks, ordered = dict(draft.checks), draft.ordered
        if draft.order is not None and ordered is None:
            ordered = checks.pop("suction", None)
        elif ordered is not None and _is_said_twice(ordered, checks.get("suction"), self.toks):
            del checks["suction"]
        if ordered is not None:
            yield Ordered(suction_cmh2o=whole(ordered)), {"suction_cmh2o": ordered}
        if checks:
            yield self._checked(checks)

    def _event(self, draft: Draft) -> Iterator[tuple[Statement, dict[str, Item]]]:
        level, final, opening = draft.level, draft.final, draft.opening
        match draft.kind:
            case "placed":
                start = level or opening
                made: Statement = Placed(
                    level_ml=start.amount if start else None,
                    reason=draft.reason.name if draft.reason else None,  # type: ignore[arg-type]
                    weight_kg=draft.weight.figure if draft.weight else None,
                    tubes=joined_tubes(draft),
                )
                yield made, _said(level_ml=start, reason=draft.reason, weight_kg=draft.weight)
            case "exchanged" | "":
                yield (
                    Exchanged(
                        final_ml=final.amount if final else None,
                        opening_ml=opening.amount if opening else None,
                    ),
                    _said(final_ml=final, opening_ml=opening),
                )
            case "removed":
                yield Removed(level_ml=level.amount if level else None), _said(level_ml=level)
            case "moved":
                yield Moved(to_bed=draft.to_bed.label if draft.to_bed else None), _said(to_bed=draft.to_bed)

    def _amounts(self, draft: Draft) -> Iterator[tuple[Statement, dict[str, Item]]]:
        level = draft.level if draft.kind != "exchanged" else None
        if draft.volume is not None:
            yield Drained(volume_ml=draft.volume.amount, about=draft.about), {"volume_ml": draft.volume}
        elif draft.output is not None:
            yield Mark(level_ml=draft.output.amount), {"kind": draft.output}
        elif level is not None:
            made = Mark(level_ml=level.amount, closing=draft.closing, about=draft.about)
            yield made, {"level_ml": level}
        elif draft.same is not None:
            yield Drained(volume_ml=0), {"volume_ml": draft.same}
        elif draft.wants is not None and not draft.has_content and not draft.kind:
            kind = Drained if draft.wants.value == "amount" else Mark
            yield kind(), {}
        elif not draft.has_content:
            yield Mark(), {}
        elif draft.bad and not draft.kind:
            bad = draft.bad[0]  # "drained 5 oz"; "drained 50 an hour" has no unit of its own
            amount = bad.lead == "amount" and bad.end - bad.start > 1
            yield Drained() if amount else Mark(closing=draft.closing), {}

    def _checked(self, checks: dict[str, Item]) -> tuple[Statement, dict[str, Item]]:
        values: dict[str, Any] = {}
        for name, item in checks.items():
            values[CHECK_SLOTS[name]] = check_value(name, item)
        if values.get("leak_grade") == 0 and values.get("air_leak") == "present":
            values["air_leak"] = "none"
        if values.get("leak_grade") is not None and "air_leak" not in values:
            values["air_leak"] = "present" if values["leak_grade"] else "none"
        return Checked(**values), {CHECK_SLOTS[n]: i for n, i in checks.items()}

    def _described(self, draft: Draft) -> tuple[Statement, dict[str, Item]]:
        made = Described(
            reason=draft.reason.name if draft.reason else None,  # type: ignore[arg-type]
            weight_kg=draft.weight.figure if draft.weight else None,
        )
        return made, _said(reason=draft.reason, weight_kg=draft.weight)

    # Where and when, and what is not sure

    def _settled(
        self, statement: Statement, bed: Item | None, items: dict[str, Item], draft: Draft
    ) -> Statement | Unclear:
        spans = {slot: self.span(item) for slot, item in items.items()}
        joined = isinstance(statement, Placed) and statement.tubes
        of_patient = isinstance(statement, Away | Back | Left)  # "left for ct, L chest 300"
        tube = None if joined or of_patient or "tube" in draft.clashes else draft.tube
        if draft.tubes:
            spans["tube"] = self.span(*draft.tubes)
        if draft.bed is not None:
            spans["bed"] = self.span(draft.bed)
        place: dict[str, Any] = {"bed": bed.label if bed is not None else None, "tube": tube, "spans": spans}
        time = draft.time
        if isinstance(statement, Drained) and draft.same is not None and draft.same.name == "since":
            time = None  # "stopped swinging at 0500, no output since"
        why = isinstance(statement, Described) and statement.reason
        if time is not None and not (why or self._is_loose_day(statement, draft)):
            return self._timed(statement, place, time, draft)
        statement = replace(statement, **place)
        asked = self._doubts.asked(statement, draft)
        if time is None and draft.since is not None and isinstance(statement, Incident) and not asked:
            return self._timed(statement, place, draft.since, draft)  # "clamped since 1500"
        return asked or statement

    def _timed(
        self, statement: Statement, place: dict[str, Any], time: Item, draft: Draft
    ) -> Statement | Unclear:
        """The statement at its time, or what is to be asked of it first: a time of two, then all else."""
        found = self._moment(time)
        spans = {**place["spans"], "at": self.span(time)}
        timed = replace(statement, **{**place, "spans": spans, "at": found.sure})
        asked = self._doubts.asked(timed, draft)
        if asked is None and found.sure is not None:
            return timed
        statement = replace(statement, **place)
        if asked is not None and asked.slot == "at":
            return self._doubts.asked(statement, draft) or asked
        return asked or self._which_moment(time, found, statement)

    def _is_loose_day(self, statement: Statement, draft: Draft) -> bool:
        """ "went home this morning", "weight today 5.4 kg": of a day, with no time said."""
        loose = draft.time is not None and all(c.style == "date" for c in draft.time.clocks)
        loose &= not self._is_ahead(draft.time)
        seen = isinstance(statement, Checked) and draft.level is None and self._is_now(draft.time)
        more = draft.volume is not None and word(self.toks, draft.volume.start - 1) in MORE
        seen |= isinstance(statement, Drained) and more and self._is_now(draft.time)
        return loose and (draft.kind in PLAIN or isinstance(statement, Described) or seen)

    def _is_ahead(self, time: Item | None) -> bool:
        """ "to theatre this evening" sent in the morning: a part of this day that has not begun."""
        parts = {c.part for c in time.clocks if c.day == "today"} if time is not None else set()
        return bool(parts) and all(self.arrived.hour < DAYPARTS.get(p, (0, 0))[0] for p in parts)

    def _is_now(self, time: Item | None) -> bool:
        """ "swinging today", "looks milky this am" sent in the morning: the day, or its part, that it is."""
        parts = {c.part for c in time.clocks if c.day == "today"} if time is not None else set()
        return any(not p or self.arrived.hour in range(*DAYPARTS.get(p, (0, 0))) for p in parts)

    def _moment(self, time: Item) -> Moment:
        return time.when(self.arrived, LIST_REACH if self.listed else REACH)

    def _which_moment(self, time: Item, found: Moment, statement: Statement) -> Unclear:
        """The question when it was."""
        if all(c.style == "date" for c in time.clocks) and not found.values:
            choices: tuple[datetime, ...] = ()
        else:
            choices = distinct(found.values or found.nearest)
        readings = tuple(replace(statement, at=c) for c in choices)
        return Unclear(slot="at", text=self.text, choices=choices, readings=readings, statement=statement)


def _is_loose(draft: Draft) -> bool:
    """Whether it has a time of its own that is one only for want of another place."""
    time = draft.time
    return time is not None and not (draft.shared_time or time.sure_time or time.at)


def _is_unharmed(draft: Draft) -> bool:
    """ "knocked over, no damage": that no harm came of what happened before it changes nothing."""
    harm = {item.name for item in draft.denied if item.value == "what"}
    told = {item.name for item in draft.whats}
    return bool(told) and harm <= HARM - told and len(harm) == len(draft.denied)


def joined_tubes(draft: Draft) -> tuple[str, ...]:
    """The tubes that share one canister, if several were named."""
    names = tuple(sorted(dict.fromkeys(t.name for t in draft.tubes)))
    two_sides = set(names) >= SIDES
    places = [n for n in names if n not in SIDES]
    if two_sides and len(places) == 1:
        names = tuple(f"{side} {places[0]}" for side in sorted(SIDES))
    else:
        names = _each_named(draft.named) or names
    if len(names) < 2 or not (draft.joined or two_sides):
        return ()
    return names


def _each_named(said: list[Item]) -> tuple[str, ...]:
    """The names of the tubes that were said, each once."""
    return tuple(sorted({" ".join(tube.name for tube in group) for group in each_tube(said)}))


def _said(**items: Item | None) -> dict[str, Item]:
    return {slot: item for slot, item in items.items() if item is not None}


def _is_said_twice(ordered: Item, check: Item | None, toks: Toks) -> bool:
    """ "order from pulm: bed 15 to gravity, no suction": still what was ordered, and nothing found."""
    return check is not None and not (ordered.figure or check.figure) and word(toks, check.start) == "no"
