"""One ledger row in ward words, for the history, the handoff and the checks."""

from __future__ import annotations

from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Correction,
    Described,
    Exchanged,
    FinalLevel,
    Incident,
    Left,
    Line,
    Moved,
    Opened,
    Ordered,
    Payload,
    Placed,
    Reason,
    Removed,
    Seen,
    What,
    Withdrawal,
)
from bot.wording import formats
from bot.wording.gsm import gsm_only

HAPPENED = {
    What.TIPPED: "tipped over",
    What.DAMAGED: "damaged",
    What.DISCONNECTED: "disconnected",
    What.DISLODGED: "tube dislodged",
    What.RAISED: "above the chest",
    What.CLAMPED: "clamped",
    What.UNCLAMPED: "unclamped",
    What.KINKED: "kinked",
    What.SUCTION_OFF: "suction off",
    What.SUCTION_ON: "suction on",
}

REASONS = {
    Reason.GENERAL: "reason not told",
    Reason.CARDIAC: "after heart surgery",
    Reason.LUNG: "after lung surgery",
    Reason.TRAUMA: "trauma",
    Reason.EFFUSION: "effusion",
    Reason.AIR: "air (pneumothorax)",
}

_LEAKS = {
    "none": "no air leak",
    "intermittent": "intermittent air leak",
    "continuous": "continuous air leak",
    "present": "air leak",
}

_WORDS = {
    Removed: "tube removed",
    Left: "patient left the unit",
    Away: "patient away",
    Back: "patient back",
}


def row_text(payload: Payload) -> str:
    """What the row says happened: "line 1,050 mL", "canister changed, new one at 0 mL"."""
    match payload:
        case Line() as line:
            return _line_text(line)
        case FinalLevel(level_ml=level):
            return f"final level {formats.ml(level)}"
        case Exchanged(opening_ml=opening):
            return f"canister changed, new one at {formats.ml(opening)}"
        case Placed() | Opened():
            return _start_text(payload)
        case Described() as described:
            tube = (f"tube {described.tube}",) if described.tube else ()
            return _joined("told", (*tube, *described_words(described.reason, described.weight_kg)))
        case Moved(from_bed=old, to_bed=new):
            return gsm_only(f"moved from bed {old} to bed {new}")
        case Checked() as check:
            return _joined("check", check_words(check))
        case Ordered(suction_cmh2o=suction):
            return f"ordered {suction_words(suction)}"
        case Incident(what=what):
            return HAPPENED[what]
        case Correction() | Withdrawal() | Seen():
            return _about_text(payload)
        case _:
            return _WORDS[type(payload)]


def described_words(reason: Reason | None, weight_kg: float | None) -> tuple[str, ...]:
    """Reason and weight, those that were told."""
    weight = f"{formats.number(weight_kg)} kg" if weight_kg is not None else ""
    return tuple(word for word in (REASONS[reason] if reason else "", weight) if word)


def suction_words(suction_cmh2o: int) -> str:
    """The suction setting; 0 is water seal only."""
    return f"suction {suction_cmh2o} cmH2O" if suction_cmh2o else "water seal only"


def check_words(check: Checked) -> tuple[str, ...]:
    """What the check found, only what was looked at, in the order from the patient to the wall."""
    found = (
        _LEAKS[check.air_leak] if check.air_leak else "",
        f"leak grade {check.leak_grade}" if check.leak_grade is not None else "",
        "" if check.tidaling is None else "tidaling" if check.tidaling else "no tidaling",
        check.fluid.replace("_", " ") if check.fluid else "",
        f"seal {formats.number(check.seal_cm)} cm" if check.seal_cm is not None else "",
        suction_words(check.suction_cmh2o) if check.suction_cmh2o is not None else "",
        f"indicator {check.suction_indicator.replace('_', ' ')}" if check.suction_indicator else "",
        f"wall {check.wall_mmhg} mmHg" if check.wall_mmhg is not None else "",
    )
    return tuple(word for word in found if word)


def _joined(word: str, words: tuple[str, ...]) -> str:
    return f"{word}: {', '.join(words)}" if words else word


def _line_text(line: Line) -> str:
    told = f"line {'about ' if line.about else ''}{formats.ml(line.level_ml)}"
    if line.told_ml is not None:
        told += f" (told as {formats.ml(line.told_ml)} drained)"
    return f"{told}, closing" if line.closing else told


def _start_text(payload: Placed | Opened) -> str:
    if isinstance(payload, Opened):
        return gsm_only(f"first word of this drain, bed {payload.bed}")
    words = (
        f"opening level {formats.ml(payload.opening_ml)}" if payload.opening_ml is not None else "",
        *described_words(payload.reason, payload.weight_kg),
        f"joined: {formats.listed(payload.joined)}" if payload.joined else "",
    )
    return _joined("tube placed", tuple(word for word in words if word))


def _about_text(payload: Correction | Withdrawal | Seen) -> str:
    if isinstance(payload, Seen):
        return "chart said to be amended" if payload.amended else "cautions seen"
    return "correction" if isinstance(payload, Correction) else "withdrawal"
