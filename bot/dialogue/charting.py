"""What a message makes chartable, and what it makes of volumes that were charted before."""

from __future__ import annotations

from datetime import datetime

from bot.dialogue.answer import ChartRow, Stretch
from bot.dialogue.bedside import Bedside
from bot.engine.amend import amendments
from bot.engine.ledger import Ledger
from bot.engine.shifts import boundary, shift_sum
from bot.engine.values import Amendment, Interval, Sum
from bot.engine.volumes import intervals
from bot.wording.queries.lines import amend_texts
from bot.wording.queries.view import place


def fresh_intervals(bedside: Bedside, drain: str) -> tuple[Interval, ...]:
    """The volumes that this message makes chartable; those that replace others are amendments."""
    known = {_ends(each) for each in intervals(bedside.before[drain], bedside.policy.schedule)}
    amended = {(each.begin, each.end) for each in _amended(bedside, drain)}
    return tuple(
        each for each in bedside.volumes(drain) if _ends(each) not in known and not _is_amended(each, amended)
    )


def _is_amended(interval: Interval, amended: set[tuple[datetime, datetime]]) -> bool:
    """Whether an amendment tells it, alone or with the stretch that ends at its one moment."""
    begin, end = interval.begin.at, interval.end.at
    return (begin, end) in amended or (begin == end and any(end == each[1] for each in amended))


def _ends(interval: Interval) -> tuple[str, str]:
    return interval.begin.entry, interval.end.entry


def _amended(bedside: Bedside, drain: str) -> tuple[Amendment, ...]:
    """What the message makes of earlier volumes of the drain, reckoned once it is all recorded."""
    if drain not in bedside.amended:
        before, after = bedside.before[drain], bedside.ledger(drain)
        bedside.amended[drain] = amendments(before, after, bedside.policy.schedule)
    return bedside.amended[drain]


def chart_rows(bedside: Bedside) -> tuple[ChartRow, ...]:
    """The new volumes of every drain that the message wrote to, in order; after them the amended ones."""
    new: list[ChartRow] = []
    amended: list[ChartRow] = []
    for drain in bedside.before:
        ledger = bedside.ledger(drain)
        new += [_row(bedside, ledger, each) for each in fresh_intervals(bedside, drain)]
        amended += [_amended_row(bedside, ledger, each) for each in _amended(bedside, drain)]
    return (*new, *amended)


def charts_now(bedside: Bedside, ledger: Ledger, interval: Interval) -> Sum | None:
    """In a unit that charts by shift: the shift's sum, if this line closes it; else None."""
    schedule = bedside.policy.schedule
    end = boundary(ledger, schedule, interval.shift.end)
    if end is None or not end.lined or end.level.entry != interval.end.entry:
        return None
    total = shift_sum(ledger, schedule, interval.shift, max(bedside.now, interval.shift.end))
    return total if total.volume_ml is not None else None


def _row(bedside: Bedside, ledger: Ledger, interval: Interval) -> ChartRow:
    zone = bedside.context.unit.zone
    by_mark = bedside.policy.chart_by == "mark"
    total = None if by_mark else charts_now(bedside, ledger, interval)
    volume, begin, at_least = interval.volume_ml, interval.begin.at, interval.at_least
    if total is not None and total.volume_ml is not None and total.begin is not None:
        volume, begin, at_least = total.volume_ml, total.begin.at, total.at_least
    return ChartRow(
        bed=ledger.bed_at(interval.end.at) or ledger.bed or "",
        tube=ledger.tube,
        volume_ml=volume,
        begin=begin.astimezone(zone),
        end=interval.end.at.astimezone(zone),
        shift=interval.shift.name,
        to_chart=by_mark or total is not None,
        at_least=at_least,
    )


def _amended_row(bedside: Bedside, ledger: Ledger, amendment: Amendment) -> ChartRow:
    zone = bedside.context.unit.zone
    return ChartRow(
        bed=ledger.bed_at(amendment.end) or ledger.bed or "",
        tube=ledger.tube,
        volume_ml=amendment.volume_ml,
        begin=amendment.begin.astimezone(zone),
        end=amendment.end.astimezone(zone),
        shift=amendment.shift.name,
        to_chart=True,
        at_least=amendment.at_least,
        replaces=tuple(
            Stretch(begin=old.begin.astimezone(zone), end=old.end.astimezone(zone), volume_ml=old.volume_ml)
            for old in amendment.replaces
        ),
    )


def amend_lines(bedside: Bedside) -> list[str]:
    """What to change on the chart, a line each; with the bed where several were changed."""
    lines = []
    for drain in bedside.before:
        ledger = bedside.ledger(drain)
        named = place(ledger.bed or "", ledger.tube) if len(bedside.before) > 1 else ""
        for text in amend_texts(_amended(bedside, drain), bedside.view):
            lines.append(f"{named}: {text}." if named else f"{text}.")
    return lines
