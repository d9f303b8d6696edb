"""Drains to export, and what the bundle of them holds."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.engine.entries import (
    Correction,
    Exchanged,
    FinalLevel,
    Line,
    Opened,
    Placed,
    Reason,
    Removed,
    Withdrawal,
)
from bot.engine.values import Caution, Severity
from bot.interchange.fhir.bundle import ALL, Reach, Standing, fhir_bundle
from tests.interchange.rows import DRAIN, UNIT, Rows, moment

NOW = moment("5 07:00")


def exported(rows: Rows, *cautions: Standing, reach: Reach = ALL) -> dict[str, Any]:
    return fhir_bundle(UNIT, [rows.ledger], cautions, NOW, reach)


def resources(bundle: dict[str, Any], kind: str) -> list[dict[str, Any]]:
    return [each["resource"] for each in bundle["entry"] if each["resource"]["resourceType"] == kind]


def levels(bundle: dict[str, Any]) -> list[dict[str, Any]]:
    return [each for each in resources(bundle, "Observation") if "effectiveDateTime" in each]


def volumes(bundle: dict[str, Any]) -> list[dict[str, Any]]:
    return [each for each in resources(bundle, "Observation") if "effectivePeriod" in each]


def two_lines(tube: str | None = "left") -> Rows:
    rows = Rows()
    rows.tell("4 15:00", Opened(bed="12", tube=tube))
    rows.tell("4 15:00", Line(level_ml=840))
    rows.tell("4 19:00", Line(level_ml=1050))
    return rows


def a_long_story() -> Rows:
    """A placement, an exchange, a late line, a correction, a withdrawal and a removal."""
    rows = Rows()
    rows.tell("3 14:10", Placed(bed="12", tube="right", opening_ml=0, reason=Reason.LUNG, weight_kg=70.5))
    rows.tell("3 19:00", Line(level_ml=400, closing=True))
    rows.tell("4 03:00", FinalLevel(level_ml=1860))
    rows.tell("4 03:00", Exchanged())
    rows.tell("4 04:00", Line(level_ml=60))
    rows.tell("4 01:00", Line(level_ml=1500), entered="4 04:30")
    late = rows.tell("4 08:00", Line(level_ml=200, about=True))
    rows.tell("4 08:00", Correction(target=late.id, level_ml=150), entered="4 09:00", who="rn-2")
    wrong = rows.tell("4 10:00", Line(level_ml=900, accepted=("jump",)))
    rows.tell("4 10:00", Withdrawal(target=wrong.id), entered="4 10:20")
    rows.tell("4 11:00", Exchanged())
    rows.tell("4 12:00", Line(level_ml=30))
    rows.tell("4 13:00", Removed())
    return rows


def a_caution() -> Standing:
    caution = Caution(
        code="rate_high",
        severity=Severity.MODERATE,
        rule="rate_high.general",
        source="NSW ACI, Pleural Drains in Adults s.3",
        drain=DRAIN,
        value=210,
        limit=100,
        unit="mL/h",
        begin=moment("4 18:00"),
        end=moment("4 19:00"),
    )
    return Standing(bed="12", caution=caution, sentence="CAUTION: 210 mL/h, over 100 mL/h.", drains=(DRAIN,))


def a_caution_if_right() -> Standing:
    """The same, while the reading that it rests on is still asked about."""
    held = a_caution()
    return replace(held, caution=replace(held.caution, if_right=True), sentence="CAUTION if right: 210 mL/h.")
