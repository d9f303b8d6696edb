"""The handoff of a bed's drains, in SBAR order."""

from __future__ import annotations

from datetime import timedelta

from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.rates import hours_text, rate_text
from bot.dialogue.queries.spans import shift_span, span
from bot.dialogue.queries.status import check_lines, due_items, forecast_line
from bot.dialogue.queries.telling import caution_lines, standing, urgent_only
from bot.dialogue.queries.volumes import amend_lines
from bot.dialogue.queries.waiting import waiting_lines
from bot.dialogue.queries.where import Found
from bot.engine.entries import Exchanged, Incident, Moved
from bot.engine.ledger import Ledger
from bot.engine.shifts import shift_at, shift_before
from bot.wording.queries import handoff as words
from bot.wording.queries import lines
from bot.wording.queries.rows import HAPPENED, row_text
from bot.wording.queries.view import place

SHIFTS_BACK = 3
"""This shift and the two before it: a day with shifts of eight hours."""


TOLD_ELSEWHERE = frozenset({"amended", "overdue", "unconfirmed"})
"""Cautions whose substance the last part lists itself."""


def handoff(desk: Desk, found: Found) -> tuple[str, ...]:
    """Situation with every URGENT, background and assessment of each drain, then what is due and open."""
    held = standing(desk, found.patient)
    others = tuple(each for each in held if each not in urgent_only(held) and each.code not in TOLD_ELSEWHERE)
    return (
        *(_situation(desk, found.bed, ledger) for ledger in found.drains),
        *caution_lines(desk, urgent_only(held)),
        *(line for ledger in found.drains for line in _of_drain(desk, found, ledger)),
        *caution_lines(desk, others),
        *_open(desk, found),
    )


def _situation(desk: Desk, bed: str, ledger: Ledger) -> str:
    last = lines.last_text(ledger.last, ledger.unread, desk.view) if ledger.last else lines.NO_LINE
    away = "; patient away" if ledger.away else ""
    begun = ledger.placed_at or ledger.first_at
    day = words.day_text(begun, ledger.placed_at is not None, desk.view) if begun else ""
    why = words.reason_text(ledger.reason, ledger.weight_kg)
    told = ", ".join(part for part in (place(bed, ledger.tube), day, why) if part)
    return f"{words.SITUATION}: {told}. Last {last}{away}."


def _of_drain(desk: Desk, found: Found, ledger: Ledger) -> tuple[str, ...]:
    tube = f" {ledger.tube}" if ledger.tube and len(found.drains) > 1 else ""
    told = (rate_text(desk, ledger), hours_text(desk, ledger), forecast_line(desk, ledger))
    measured = " ".join((f"{'. '.join(_volumes(desk, ledger))}.", *(part for part in told if part)))
    return (
        f"{words.BACKGROUND}{tube}: {'; '.join(_background(desk, ledger))}.",
        f"{words.ASSESSMENT}{tube}: {measured}",
        *check_lines(desk, found.bed, ledger),
    )


def _background(desk: Desk, ledger: Ledger) -> tuple[str, ...]:
    begun = f"placed {desk.view.clock(ledger.placed_at)}" if ledger.placed_at else ""
    here = f"first line {desk.view.clock(ledger.first_at)}" if ledger.first_at and not begun else ""
    changes = tuple(entry.at for entry in ledger.live if isinstance(entry.payload, Exchanged))
    joined = words.joined_text(ledger.joined)
    moves = tuple(
        f"{row_text(entry.payload)} {desk.view.clock(entry.at)}"
        for entry in ledger.live
        if isinstance(entry.payload, Moved)
    )
    canisters = words.canisters_text(changes, len(ledger.final_missing), desk.view)
    told = (begun, here, joined, *moves, canisters, *_happened(desk, ledger))
    return tuple(part for part in told if part)


def _happened(desk: Desk, ledger: Ledger) -> tuple[str, ...]:
    """The incidents of the last 24 h."""
    return tuple(
        f"{HAPPENED[entry.payload.what]} {desk.view.clock(entry.at)}"
        for entry in ledger.live
        if isinstance(entry.payload, Incident) and desk.now - entry.at <= timedelta(hours=24)
    )


def _volumes(desk: Desk, ledger: Ledger) -> tuple[str, ...]:
    shift = shift_at(desk.schedule, desk.now)
    spans = []
    for _ in range(SHIFTS_BACK):
        spans.append(shift_span(desk, shift))
        shift = shift_before(desk.schedule, shift)
    spans += [span(desk, "24h"), span(desk, "placement")]
    told = [(each, each.sum_of(ledger, desk)) for each in spans]
    return tuple(
        each.told_sum(held, desk)
        for place_, (each, held) in enumerate(told)
        if held.volume_ml is not None or place_ == 0
    )


def _open(desk: Desk, found: Found) -> tuple[str, ...]:
    drains = frozenset(each.drain for each in found.drains)
    due = due_items(desk, found.patient, drains)
    amend = tuple(line for ledger in found.drains for line in amend_lines(desk, ledger))
    first = f"{words.TO_DO}: {', '.join(due) or words.NOTHING_DUE}."
    return (first, *amend, *waiting_lines(desk, found.bed))
