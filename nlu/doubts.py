"""What must be asked about a statement before it can stand: what lacks, what clashes.

Called by `building`, with the draft that the statement is made of.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from datetime import datetime
from typing import Any

from .drafts import Draft
from .items import AMOUNTS, Item
from .moments import REACH
from .statements import Drained, Exchanged, Mark, Moved, Placed, Removed, Statement, Unclear

CHECK_SLOTS = {
    "seal": "seal_cm",
    "suction": "suction_cmh2o",
    "wall": "wall_mmhg",
    "leak": "air_leak",
    "leakgrade": "leak_grade",
    "tidal": "tidaling",
    "fluid": "fluid",
    "indicator": "suction_indicator",
}
LEVEL_SLOT = {"exchanged": "final_ml", "drained": "volume_ml"}


@dataclass(frozen=True, slots=True)
class Doubts:
    """The questions about what one message says."""

    text: str
    arrived: datetime

    def asked(self, statement: Statement, draft: Draft) -> Unclear | None:
        """The first thing about the statement that is not sure; none where it stands."""
        for slot, items in draft.clashes.items():
            if slot not in AMOUNTS or isinstance(statement, Mark | Drained | Exchanged | Removed | Placed):
                return self._clash(slot, items, statement)
        if draft.either:
            return self._clash("tube", draft.either, statement)
        if draft.bad:
            return self._bad(draft.bad[0], statement)
        if draft.faults:
            return self._lacking("kind", Statement(bed=statement.bed))
        if draft.final is not None and not draft.kind:
            return self._final_alone(statement, draft.final)
        if draft.bed is None:
            return self._lacking("bed", statement)
        if not draft.bed.known:
            return self._lacking("bed", replace(statement, bed=None))
        return self._missing(statement, draft)

    def _final_alone(self, statement: Statement, final: Item) -> Unclear:
        """ "the old one was 85" with no exchange told: its final level, or a line?"""
        where = {"bed": statement.bed, "tube": statement.tube, "at": statement.at}
        readings = (
            Exchanged(final_ml=final.amount, **where),  # type: ignore[arg-type]
            Mark(level_ml=final.amount, **where),  # type: ignore[arg-type]
        )
        kinds = tuple(reading.kind for reading in readings)
        return Unclear(slot="kind", text=self.text, choices=kinds, readings=readings)

    def _missing(self, statement: Statement, draft: Draft) -> Unclear | None:
        match statement:
            case Mark() if draft.output is not None:
                return self._output(statement)
            case Mark(level_ml=None):
                return self._lacking("level_ml", statement)
            case Drained(volume_ml=None):
                return self._lacking("volume_ml", statement)
            case Moved(to_bed=None):
                return self._lacking("to_bed", statement)
            case Moved() if draft.to_bed is not None and not draft.to_bed.known:
                return self._lacking("to_bed", replace(statement, to_bed=None))
            case _:
                return None

    def _lacking(self, slot: str, statement: Statement) -> Unclear:
        return Unclear(slot=slot, text=self.text, statement=statement)

    def _output(self, mark: Mark) -> Unclear:
        """ "output 210" is a level to some and an amount to others."""
        drained = Drained(bed=mark.bed, tube=mark.tube, at=mark.at, volume_ml=mark.level_ml, spans=mark.spans)
        return Unclear(
            slot="kind", text=self.text, choices=("mark", "drained"), readings=(mark, drained), statement=None
        )

    def _clash(self, slot: str, items: list[Item], statement: Statement) -> Unclear:
        name = self._slot_name(slot, statement)
        values = [v for i in items for v in self._values(slot, i)]
        choices = tuple(dict.fromkeys(v for v in values if v is not None))
        known = {f.name for f in fields(statement)}
        if name not in known:
            return Unclear(slot=name, text=self.text, choices=choices, statement=statement)
        readings = tuple(replace(statement, **{name: c}) for c in choices)
        unknown: dict[str, Any] = {name: None}
        return Unclear(
            slot=name,
            text=self.text,
            choices=choices,
            readings=readings,
            statement=replace(statement, **unknown),
        )

    def _slot_name(self, slot: str, statement: Statement) -> str:
        if slot in AMOUNTS:
            return LEVEL_SLOT.get(statement.kind, "level_ml")
        return {"time": "at"}.get(slot) or CHECK_SLOTS.get(slot, slot)

    def _values(self, slot: str, item: Item) -> tuple[Any, ...]:
        if slot in {"bed", "to_bed"}:
            return (item.label,)
        if slot == "tube":
            return (item.name,)
        if slot == "time":
            return item.when(self.arrived, REACH).values
        if slot in CHECK_SLOTS:
            return (check_value(slot, item),)
        return (item.amount,)

    def _bad(self, item: Item, statement: Statement) -> Unclear:
        slot = (
            "at"
            if item.lead in {"at", "newat", "timeword"} and not item.unit
            else LEVEL_SLOT.get(statement.kind, "level_ml")
        )
        if item.lead in CHECK_SLOTS:
            slot = CHECK_SLOTS[item.lead]
        sure: dict[str, Any] = {slot: None} if slot in {f.name for f in fields(statement)} else {}
        return Unclear(slot=slot, text=self.text, statement=replace(statement, **sure))

    def denied(self, draft: Draft) -> Unclear:
        """What was said and denied in one breath: asked whole, with its bed at most."""
        bed = draft.bed.label if draft.bed is not None else None
        return Unclear(slot="kind", text=self.text, statement=Statement(bed=bed))


def whole(item: Item) -> int:
    """The figure as a whole number, in the unit of its slot."""
    return int(item.figure or 0)


def check_value(name: str, item: Item) -> Any:
    """What was found, as its slot has it: cm, cmH2O, mmHg, a grade, a word."""
    if name == "seal":
        return item.figure
    if name in {"suction", "wall", "leakgrade"}:
        return whole(item)
    if name == "tidal":
        return item.value == "yes"
    return item.value
