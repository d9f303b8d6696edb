"""The default rows about the system, the canister, the checks and the ledger itself. Data only."""

from __future__ import annotations

from bot.engine.rules import Comparison, Measure, Rule, SourceStatus
from bot.engine.sources import (
    ACI_TABLE,
    BELOW_CHEST,
    IDENTIFIERS,
    MARSDEN,
    OPEN_RN,
    PRACTICE,
    SCHN,
    STATPEARLS,
    TRAUMA_PRO,
)
from bot.engine.values import Severity

_HIGH, _MODERATE, _LOW = Severity.HIGH, Severity.MODERATE, Severity.LOW


def _told(
    code: str, severity: Severity, source: str = PRACTICE, status: SourceStatus = "common practice"
) -> Rule:
    """A row that something said meets by itself."""
    return Rule(id=code, code=code, measure="told", severity=severity, source=source, source_status=status)


def _found(
    name: str,
    measure: Measure,
    against: tuple[Comparison, float],
    severity: Severity,
    source: tuple[str, SourceStatus] = (PRACTICE, "common practice"),
) -> Rule:
    """A row that a number meets."""
    comparison, value = against
    return Rule(
        id=name,
        code=name.partition(".")[0],
        measure=measure,
        comparison=comparison,
        value=value,
        severity=severity,
        source=source[0],
        source_status=source[1],
    )


_HAPPENED = (
    _told("disconnected", _HIGH, MARSDEN, "seen"),
    _told("dislodged", _HIGH),
    _told("tipped", _MODERATE, TRAUMA_PRO, "seen"),
    _told("damaged", _MODERATE, MARSDEN, "seen"),
    _told("raised", _MODERATE, BELOW_CHEST, "seen"),
    _told("kinked", _LOW),
    _told("suction_off", _LOW),
    Rule(
        id="clamped.leak",
        code="clamped",
        measure="told",
        severity=_HIGH,
        source=SCHN,
        source_status="seen",
    ),
    _found("clamped.minutes", "minutes", ("over", 15), _MODERATE),
    _told("clamped", _LOW, SCHN, "seen"),
)

_CHECKED = (
    _found("seal.low", "check", ("under", 2), _MODERATE, (OPEN_RN, "seen")),
    _found("wall_suction.low", "check", ("under", 80), _MODERATE),
    _found("wall_suction.high", "check", ("over", 100), _LOW),
    _told("dial_suction", _LOW, OPEN_RN, "seen"),
    _found("dial_suction.low", "check", ("under", 10), _LOW, (f"{OPEN_RN}; {STATPEARLS}", "seen")),
    _found("dial_suction.high", "check", ("over", 40), _LOW, (f"{OPEN_RN}; {STATPEARLS}", "seen")),
    _told("suction_indicator", _LOW),
    _told("leak", _MODERATE, STATPEARLS, "seen"),
    _told("tidaling_lost", _LOW, STATPEARLS, "seen"),
    _told("fluid_changed", _MODERATE, f"{ACI_TABLE}; StatPearls", "seen"),
)

_CANISTER = (
    _found("full", "fraction", ("at_least", 1), _MODERATE),
    _found("over_capacity", "fraction", ("over", 1), _LOW),
    _found("three_quarters_full", "fraction", ("at_least", 0.75), _LOW, (MARSDEN, "seen")),
)

_LEDGER = (
    _told("line_fell", _MODERATE),
    _told("unconfirmed", _MODERATE),
    _found("overdue.line", "minutes", ("over", 15), _MODERATE),
    _found("overdue.closing", "minutes", ("over", 30), _MODERATE),
    _found("overdue.check", "minutes", ("over", 15), _MODERATE),
    _told("no_boundary_line", _LOW),
    _told("at_least", _LOW),
    _told("jump", _LOW),
    _told("time_conflict", _LOW),
    _told("duplicate", _LOW),
    _told("amended", _LOW),
    _told("two_identifiers", _LOW, IDENTIFIERS, "seen"),
)

SYSTEM_ROWS = (*_HAPPENED, *_CHECKED, *_CANISTER, *_LEDGER)
