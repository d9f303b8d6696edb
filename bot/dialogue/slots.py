"""From the slots of a statement to a whole `Said`, or to the name of the slot that lacks.

Used twice: when a message is read, and when an answer fills the slot that was asked about.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, fields, replace
from typing import Any, Final

from bot.dialogue.said import (
    Amount,
    Answered,
    Fact,
    Fix,
    HelpMe,
    Query,
    Report,
    Said,
    SeenIt,
    Slots,
    TakeBack,
    Value,
)
from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Described,
    Exchanged,
    Incident,
    Left,
    Line,
    Moved,
    Ordered,
    Placed,
    Reason,
    Removed,
    What,
)

_OWN: Final = ("bed", "tube", "at")
_SLOTS: Final[Mapping[str, tuple[str, ...]]] = {
    "mark": ("level_ml", "closing", "about"),
    "drained": ("volume_ml",),
    "moved": ("to_bed",),
    "exchanged": ("final_ml", "opening_ml"),
    "checked": tuple(field.name for field in fields(Checked)),
    "corrected": tuple(field.name for field in fields(Fix)),
}
_NEEDED: Final[Mapping[str, tuple[str, ...]]] = {
    "mark": ("bed", "level_ml"),
    "drained": ("bed", "volume_ml"),
    "moved": ("bed", "to_bed"),
    "ordered": ("bed", "suction_cmh2o"),
    "incident": ("bed", "what"),
    "asked": ("topic",),
    "corrected": (),
    "withdrawn": (),
    "answered": (),
    "help": (),
}


NUMBER_OF: Final[Mapping[str, str]] = {"mark": "level_ml", "drained": "volume_ml"}
"""The slot with the mL of a line, and of an amount."""


@dataclass(frozen=True, slots=True)
class Lacking:
    """The first slot that a statement of its kind cannot do without, and does not have."""

    slot: str


def whose(slots: Slots, slot: str) -> str | None:
    """The kind that a slot belongs to, where a statement was read with a number that is none of its own.

    Of a check with a doubtful line beside it, the line is asked; the check stands by itself.
    """
    if slots.kind not in ("checked", "corrected", "mark") or slot in (*_OWN, "kind", *_SLOTS[slots.kind]):
        return None
    return next((kind for kind, own in _SLOTS.items() if slot in own), None)


def lacks_number(slots: Slots) -> bool:
    """Whether it tells a line or an amount of which no mL are known."""
    return slots.kind in NUMBER_OF and dict(slots.values).keys().isdisjoint(NUMBER_OF.values())


def filled(slots: Slots, slot: str, value: Value) -> Slots:
    """The same statement with one slot set."""
    if slot == "kind":
        return replace(slots, kind=str(value))
    if slot in _OWN:
        return replace(slots, **{slot: value})  # type: ignore[arg-type]
    kept = tuple(pair for pair in slots.values if pair[0] != slot)
    return replace(slots, values=(*kept, (slot, value)))


def built(slots: Slots) -> Said | Lacking:
    """The statement in ledger words, or the slot that lacks."""
    have = {"bed": slots.bed, "tube": slots.tube, "at": slots.at, **dict(slots.values)}
    for slot in _NEEDED.get(slots.kind, ("bed",)):
        if have.get(slot) is None:
            return Lacking(slot)
    return _report(slots) if slots.kind in _FACTS else _other(slots)


def _report(slots: Slots) -> Report:
    values = dict(slots.values)
    final = values.get("level_ml" if slots.kind == "removed" else "final_ml")
    return Report(
        bed=str(slots.bed),
        tube=slots.tube,
        at=slots.at,
        fact=_FACTS[slots.kind](slots, values),
        final_ml=final if isinstance(final, int) else None,
    )


def _other(slots: Slots) -> Said:
    own = {"bed": slots.bed, "tube": slots.tube, "at": slots.at}
    return _OTHERS[slots.kind](own, dict(slots.values))


def _placed(slots: Slots, values: dict[str, Any]) -> Placed:
    return Placed(
        bed=str(slots.bed),
        tube=slots.tube,
        opening_ml=values.get("level_ml"),
        reason=_reason(values),
        weight_kg=values.get("weight_kg"),
        joined=tuple(values.get("tubes") or ()),
    )


def _reason(values: dict[str, Any]) -> Reason | None:
    said = values.get("reason")
    return Reason(said) if said else None


_FACTS: Final[Mapping[str, Callable[[Slots, dict[str, Any]], Fact]]] = {
    "mark": lambda _, v: Line(
        level_ml=v["level_ml"], closing=bool(v.get("closing")), about=bool(v.get("about"))
    ),
    "placed": _placed,
    "described": lambda _, v: Described(reason=_reason(v), weight_kg=v.get("weight_kg")),
    "exchanged": lambda _, v: Exchanged(opening_ml=v.get("opening_ml") or 0),
    "removed": lambda *_: Removed(),
    "moved": lambda s, v: Moved(from_bed=str(s.bed), to_bed=v["to_bed"]),
    "away": lambda *_: Away(),
    "back": lambda *_: Back(),
    "left": lambda *_: Left(),
    "checked": lambda _, v: Checked(**v),
    "ordered": lambda _, v: Ordered(suction_cmh2o=v["suction_cmh2o"]),
    "incident": lambda _, v: Incident(what=What(v["what"])),
}
_OTHERS: Final[Mapping[str, Callable[[dict[str, Any], dict[str, Any]], Said]]] = {
    "drained": lambda own, v: Amount(**own, volume_ml=v["volume_ml"], about=bool(v.get("about"))),
    "corrected": lambda own, v: Fix(**own, **v),
    "withdrawn": lambda own, _: TakeBack(**own),
    "asked": lambda own, v: Query(**own, topic=v["topic"], window=v.get("window")),
    "answered": lambda own, v: Answered(
        **own,
        yes=None if v.get("answer") is None else v["answer"] == "yes",
        choice=v.get("choice"),
        level_ml=v.get("level_ml"),
    ),
    "acknowledged": lambda own, v: SeenIt(bed=own["bed"], tube=own["tube"], amended=bool(v.get("amended"))),
    "help": lambda own, _: HelpMe(bed=own["bed"]),
}
