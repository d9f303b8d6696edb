"""A statement in a few words, as reminders, questions and unconfirmed readings name it: "bed 12 1,050 mL"."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from typing import Final

from bot.dialogue.pending import Pending
from bot.dialogue.said import Amount, Fix, NotSure, Query, Report, Said, Slots, TakeBack
from bot.engine.entries import Exchanged, Line, Moved, Placed, Removed
from bot.wording import formats
from bot.wording.queries.rows import row_text
from bot.wording.queries.view import View, place


def brief(said: Said | Slots | None, view: View) -> str:
    """Bed, tube, what was said, and its time when one was said."""
    if said is None:
        return ""
    bed = getattr(said, "bed", None)
    where = _lower(place(bed, getattr(said, "tube", None))) if bed else ""
    at = getattr(said, "at", None)
    time = f" at {view.clock(at)}" if at is not None else ""
    return f"{where} {what(said)}{time}".strip()


def all_named(pending: Pending, view: View) -> str:
    """What a question holds back, with all that was said after it and waits for it."""
    return "; ".join(word for word in (pending.brief, each_named(pending.rest, view)) if word)


def each_named(items: Iterable[Said | NotSure], view: View) -> str:
    """All that was said, one after the other; empty where nothing was."""
    return "; ".join(named(each, view) for each in items)


def named(item: Said | NotSure, view: View) -> str:
    """What was said, in a few words; what was not understood of it, as it was said."""
    return f'"{item.text}"' if isinstance(item, NotSure) else brief(item, view)


def what(said: Said | Slots) -> str:
    """What was said, without its bed and time."""
    match said:
        case Report():
            return _report(said)
        case Amount(volume_ml=volume):
            return f"{formats.ml(volume)} drained"
        case Fix():
            return _fix(said)
        case TakeBack():
            return "taking back"
        case Query(topic=topic):
            return f"asking {topic}"
        case Slots():
            return _slots(said)
        case _:
            return "answer"


def told_back(said: Said, at: datetime, view: View) -> str:
    """A statement in the words of a read-back, before it is recorded: "Bed 15, 09:30, line 720 mL"."""
    where = place(str(getattr(said, "bed", None) or "?"), getattr(said, "tube", None))
    told = what(said)
    if isinstance(said, Report) and isinstance(said.fact, Line) and said.fact.told_ml is None:
        told = row_text(said.fact)
    return f"{where}, {view.clock(at)}, {told}"


def _report(said: Report) -> str:
    final = f", final level {formats.ml(said.final_ml)}" if said.final_ml is not None else ""
    match said.fact:
        case Line(level_ml=level, told_ml=None):
            return formats.ml(level)
        case Line(level_ml=level, told_ml=int(told)):
            return f"{formats.ml(told)} drained, line {formats.ml(level)}"
        case Moved(to_bed=bed):
            return f"moved to bed {bed}"
        case Exchanged(opening_ml=0):
            return f"canister changed{final}"
        case Removed():
            return f"tube removed{final}"
        case Placed(opening_ml=None):
            return "tube placed"
        case fact:
            return f"{row_text(fact)}{final}"


def _fix(said: Fix) -> str:
    told = (
        formats.ml(said.level_ml) if said.level_ml is not None else "",
        f"bed {said.to_bed}" if said.to_bed else "",
        said.to_tube or "",
    )
    words = ", ".join(word for word in told if word)
    return f"correction to {words}" if words else "correction"


def _slots(said: Slots) -> str:
    held = dict(said.values)
    for slot in ("level_ml", "volume_ml", "final_ml"):
        if isinstance(value := held.get(slot), int):
            before, behind = _AROUND.get((said.kind, slot), ("", ""))
            return f"{before}{formats.ml(value)}{behind}"
    if isinstance(event := held.get("what"), str):
        return event.replace("_", " ")
    return _KINDS.get(said.kind, said.kind)


_AROUND: Final = {
    ("drained", "volume_ml"): ("", " drained"),
    ("exchanged", "final_ml"): ("canister change, final level ", ""),
    ("removed", "level_ml"): ("tube removal, final level ", ""),
    ("placed", "level_ml"): ("tube placement, opening level ", ""),
    ("corrected", "level_ml"): ("correction to ", ""),
}
"""What stands before and behind a number that is no line: it must not look like one."""
_KINDS: Final = {
    "mark": "line",
    "drained": "amount",
    "exchanged": "canister change",
    "removed": "tube removal",
    "placed": "tube placement",
    "moved": "move",
    "away": "patient away",
    "back": "patient back",
    "left": "patient left",
    "checked": "check",
    "ordered": "order",
    "incident": "event",
    "corrected": "correction",
    "withdrawn": "taking back",
    "asked": "what you ask",
    "acknowledged": "seen",
}
"""What a statement is called of which a slot lacks."""

BARE: Final = frozenset({"line", "amount"})
"""Says nothing that the question for its number does not say."""


def _lower(text: str) -> str:
    return f"{text[:1].lower()}{text[1:]}"
