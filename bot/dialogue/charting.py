"""What a message makes chartable, and what it makes of volumes that were charted before."""

from __future__ import annotations

from dataclasses import dataclass

from bot.dialogue.answer import ChartRow, Stretch
from bot.dialogue.bedside import Bedside
from bot.engine.amend import amendments, unlike
from bot.engine.ledger import Ledger
from bot.engine.values import Amendment, Interval, Shift
from bot.engine.volumes import closings, intervals
from bot.wording.queries.lines import amend_texts
from bot.wording.queries.view import place


@dataclass(frozen=True, slots=True)
class Fresh:
    """A volume that this message brings; `to_chart` False between the closing lines of a shift."""

    volume: Interval
    to_chart: bool


def fresh_volumes(bedside: Bedside, drain: str) -> tuple[Fresh, ...]:
    """The volumes that this message brings; those that replace others are amendments."""
    earlier = intervals(bedside.before[drain], bedside.policy.schedule)
    before, now = unlike(earlier, bedside.volumes(drain))
    if bedside.policy.chart_by == "shift":
        held = {(each.begin.at, each.end.at) for each in before}
        told = (each for each in now if (each.begin.at, each.end.at) not in held)
        return _by_shift(bedside, drain, tuple(told))
    known = {each.given_out for each in before}
    new = (each for each in now if each.given_out not in known)
    return tuple(Fresh(each, True) for each in new if not is_amended(bedside, drain, each))


def _by_shift(bedside: Bedside, drain: str, new: tuple[Interval, ...]) -> tuple[Fresh, ...]:
    """A line that closes a shift charts the whole of it; the other volumes are told, not charted."""
    schedule = bedside.policy.schedule
    known = {each.given_out for each in closings(bedside.before[drain], schedule)}
    whole = {
        each.end.entry: each
        for each in closings(bedside.ledger(drain), schedule)
        if each.given_out not in known and not is_amended(bedside, drain, each)
    }
    told = [_told(whole.pop(each.end.entry, None), each) for each in new]
    return (*told, *(Fresh(each, True) for each in whole.values()))


def _told(whole: Interval | None, interval: Interval) -> Fresh:
    return Fresh(interval, False) if whole is None else Fresh(whole, True)


def is_amended(bedside: Bedside, drain: str, interval: Interval) -> bool:
    """Whether an "Amend" line of the reply tells this volume, so that it is no new one to chart.

    It tells it alone, or with the stretch that ends at its one moment.
    """
    begin, end = interval.begin.at, interval.end.at
    return any(end == each.end and begin in (each.begin, end) for each in _amended(bedside, drain))


def _amended(bedside: Bedside, drain: str) -> tuple[Amendment, ...]:
    """What the message makes of earlier volumes of the drain, reckoned once it is all recorded."""
    if drain not in bedside.amended:
        before, after = bedside.before[drain], bedside.ledger(drain)
        bedside.amended[drain] = amendments(before, after, bedside.policy.schedule, bedside.policy.chart_by)
    return bedside.amended[drain]


def chart_rows(bedside: Bedside) -> tuple[ChartRow, ...]:
    """The new volumes of every drain that the message wrote to, in order; after them the amended ones."""
    new: list[ChartRow] = []
    amended: list[ChartRow] = []
    for drain in bedside.before:
        ledger = bedside.ledger(drain)
        new += [_row(bedside, ledger, each) for each in fresh_volumes(bedside, drain)]
        amended += [_amended_row(bedside, ledger, each) for each in _amended(bedside, drain)]
    return (*new, *amended)


def closing_of(bedside: Bedside, ledger: Ledger, interval: Interval) -> Interval | None:
    """The whole of the shift that this volume's line closes, in a unit that charts by shift."""
    found = closings(ledger, bedside.policy.schedule)
    return next((each for each in found if each.end.entry == interval.end.entry), None)


def is_closed(bedside: Bedside, ledger: Ledger, shift: Shift) -> bool:
    """Whether a line has closed this shift, so that its sum is charted."""
    return any(each.shift.start == shift.start for each in closings(ledger, bedside.policy.schedule))


def _row(bedside: Bedside, ledger: Ledger, fresh: Fresh) -> ChartRow:
    zone, volume = bedside.context.unit.zone, fresh.volume
    return ChartRow(
        bed=ledger.bed_at(volume.end.at) or ledger.bed or "",
        tube=ledger.tube,
        volume_ml=volume.volume_ml,
        begin=volume.begin.at.astimezone(zone),
        end=volume.end.at.astimezone(zone),
        shift=volume.shift.name,
        to_chart=fresh.to_chart,
        at_least=volume.at_least,
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
        to_chart=not amendment.withdrawn,
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
