"""The standing cautions of a bed as the last lines of a reply."""

from __future__ import annotations

from bot.dialogue.part import BedCaution
from bot.dialogue.queries.desk import Desk
from bot.engine.cautions import cautions
from bot.engine.patient import Patient
from bot.engine.values import Caution, Severity
from bot.wording.cautions import MOST_OTHERS, by_severity, caution_text, more_text, told_once


def standing(desk: Desk, patient: Patient) -> tuple[Caution, ...]:
    """The cautions that stand at the bed now, most serious first."""
    return by_severity(cautions(patient, desk.now, desk.policy))


def urgent_only(held: tuple[Caution, ...]) -> tuple[Caution, ...]:
    """Those of high severity."""
    return tuple(each for each in held if each.severity is Severity.HIGH)


def caution_lines(desk: Desk, held: tuple[Caution, ...], *, bed: str | None = None) -> tuple[str, ...]:
    """Every URGENT, three others at most, and how many more there are."""
    held = told_once(held)
    urgent = urgent_only(held)
    others = tuple(each for each in held if each.severity is not Severity.HIGH)
    told = tuple(
        caution_text(each, desk.context.unit.zone, desk.now, bed=bed)
        for each in (*urgent, *others[:MOST_OTHERS])
    )
    more = len(others) - MOST_OTHERS
    where = bed or desk.query.bed
    return (*told, more_text(more, {where} if where else ())) if more > 0 else told


def of_bed(bed: str, held: tuple[Caution, ...]) -> tuple[BedCaution, ...]:
    """The cautions with their bed."""
    return tuple(BedCaution(bed=bed, caution=each) for each in held)
