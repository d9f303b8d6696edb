"""The query for the rate: of each tube, of the bed, and the hours before."""

from __future__ import annotations

from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.where import Found
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.rates import hour_rates, recent_rate, recent_rate_of
from bot.wording.queries import rates as words
from bot.wording.queries.view import place


def rate(desk: Desk, found: Found) -> tuple[str, ...]:
    """The recent rate, all tubes together first where there are several, then the hours before."""
    told = tuple(_of_drain(desk, found.bed, ledger) for ledger in found.drains)
    if len(found.drains) < 2:
        return told
    together = recent_rate_of(found.drains, desk.now)
    all_tubes = words.rate_words(together, desk.view) if together else words.UNKNOWN_TOGETHER
    return (f"{place(found.bed, None)}, all tubes: {all_tubes}.", *told)


def rate_of_unit(desk: Desk, patients: tuple[Patient, ...]) -> tuple[str, ...]:
    """The recent rate of each tube of the unit."""
    return tuple(
        f"{place(patient.bed, ledger.tube)}: {_recent(desk, ledger)}."
        for patient in patients
        for ledger in patient.drains
    )


def rate_text(desk: Desk, ledger: Ledger) -> str:
    """The recent rate as a sentence; empty where it is not known."""
    recent = recent_rate(ledger, desk.now)
    return f"Rate {words.rate_words(recent, desk.view)}." if recent else ""


def hours_text(desk: Desk, ledger: Ledger) -> str:
    """The hours before the last one as a sentence; empty where there are none."""
    recent = recent_rate(ledger, desk.now)
    told = words.hours_words(hour_rates(ledger, desk.now), recent, desk.view) if recent else ""
    return f"{told}." if told else ""


def short_rate(desk: Desk, ledger: Ledger) -> str:
    """The recent rate in two words; empty where it is not known."""
    recent = recent_rate(ledger, desk.now)
    return words.short_rate(recent) if recent else ""


def _of_drain(desk: Desk, bed: str, ledger: Ledger) -> str:
    head = f"{place(bed, ledger.tube)}: {_recent(desk, ledger)}."
    return f"{head} {hours_text(desk, ledger)}".rstrip()


def _recent(desk: Desk, ledger: Ledger) -> str:
    recent = recent_rate(ledger, desk.now)
    return words.rate_words(recent, desk.view) if recent else words.UNKNOWN
