"""The queries about volumes: last line, to chart, totals, trend."""

from __future__ import annotations

from datetime import timedelta

from bot.dialogue.queries.desk import Desk
from bot.dialogue.queries.spans import Span, shift_span, shift_until, span
from bot.dialogue.queries.where import Found
from bot.engine.amend import outstanding
from bot.engine.ledger import Ledger
from bot.engine.patient import Patient
from bot.engine.values import Interval
from bot.engine.volumes import intervals
from bot.links import Shown
from bot.wording.queries import lines
from bot.wording.queries.sums import sum_of_tubes
from bot.wording.queries.view import place

TREND = timedelta(hours=8)
"""How far back the trend goes unless asked otherwise. Common practice, no source."""


USUAL = ("shift", "24h", "placement")
"""What a total without a window tells."""


def last(desk: Desk, found: Found) -> tuple[str, ...]:
    """The last line of each tube, what it charted, and the running shift sum."""
    return tuple(line for ledger in found.drains for line in _last_of(desk, found.bed, ledger))


def chart(desk: Desk, found: Found) -> tuple[str, ...]:
    """The volumes of a shift (or a window) step by step, to copy; right after a shift's start of the last.

    "What do I chart at 1900" is asked of the shift that holds that moment, or ends then.
    """
    at = desk.query.at
    asked = shift_span(desk, shift_until(desk, at)) if at else span(desk, desk.query.window or "shift")
    return tuple(line for ledger in found.drains for line in _chart_of(desk, found.bed, ledger, asked))


def _asked_too(desk: Desk, ledger: Ledger, asked: Span) -> tuple[Span, ...]:
    """With the last shift while nothing of the running one is to chart: at 07:05 the night is meant."""
    before = span(desk, "last_shift")
    told = desk.query.window is not None or desk.query.at is not None
    if told or asked.steps(ledger, desk) or not before.steps(ledger, desk):
        return (asked,)
    return (asked, before)


def total(desk: Desk, found: Found) -> tuple[str, ...]:
    """The sum of a window of each tube and of the bed; with no window this shift, 24 h and all."""
    windows = (desk.query.window,) if desk.query.window is not None else _usual(desk, found)
    spans = tuple(span(desk, window) for window in windows)
    told = [_totals_of(desk, found.bed, ledger, spans) for ledger in found.drains]
    if len(found.drains) < 2:
        return tuple(told)
    sums = (sum_of_tubes(each.label, tuple(each.sum_of(one, desk) for one in found.drains)) for each in spans)
    return (f"{place(found.bed, None)}: {'; '.join(sums)}.", *told)


def _usual(desk: Desk, found: Found) -> tuple[str, ...]:
    """This shift, 24 h and all; the last shift too while no tube has a sum of this one."""
    running, before = (
        any(span(desk, shift).sum_of(ledger, desk).volume_ml is not None for ledger in found.drains)
        for shift in ("shift", "last_shift")
    )
    return ("shift", "last_shift", "24h", "placement") if before and not running else USUAL


def trend(desk: Desk, found: Found) -> tuple[str, ...]:
    """The amounts from line to line, the latest last; over 75 min only an average is known."""
    asked = span(desk, desk.query.window or TREND)
    told: list[str] = []
    for ledger in found.drains:
        head = f"{place(found.bed, ledger.tube)}: {asked.told(ledger, desk)}."
        steps = tuple(lines.trend_text(step, desk.view) for step in asked.steps(ledger, desk))
        told.extend(desk.page(head, steps))
    return (*told, *_picture(desk, found, asked))


def _picture(desk: Desk, found: Found, asked: Span) -> tuple[str, ...]:
    """Where the same can be seen as a picture; nothing where there is no address to see it at."""
    links = desk.context.links
    firsts = tuple(ledger.first_at for ledger in found.drains if ledger.first_at is not None)
    if links is None or not firsts:
        return ()
    shown = Shown(
        drains=tuple(ledger.drain for ledger in found.drains),
        begin=asked.begin or min(firsts),
        end=asked.end if asked.end is not None and asked.end < desk.now else None,
    )
    link = links.trend(shown, desk.now)
    return (lines.picture_text(link.url, link.until, desk.view),)


def amend_lines(desk: Desk, ledger: Ledger) -> tuple[str, ...]:
    """What the drain's chart still has to be changed to, until someone says that it was."""
    changes = outstanding(ledger, desk.schedule, desk.policy.chart_by)
    return tuple(f"{each}." for each in lines.amend_texts(changes, desk.view))


def last_of_unit(desk: Desk, patients: tuple[Patient, ...]) -> tuple[str, ...]:
    """The last line of each bed."""
    return tuple(
        f"{place(patient.bed, ledger.tube)}: {_level(desk, ledger)}."
        for patient in patients
        for ledger in patient.drains
    )


def total_of_unit(desk: Desk, patients: tuple[Patient, ...]) -> tuple[str, ...]:
    """The sum of one window (this shift, unless said) of each tube of each bed."""
    asked = span(desk, desk.query.window or "shift")
    return tuple(
        f"{place(patient.bed, ledger.tube)}: {asked.told(ledger, desk)}."
        for patient in patients
        for ledger in patient.drains
    )


def _last_of(desk: Desk, bed: str, ledger: Ledger) -> tuple[str, ...]:
    head = f"{place(bed, ledger.tube)}: {_level(desk, ledger)}."
    if ledger.last is None:
        return (head,)
    steps = intervals(ledger, desk.schedule)
    charted = f"{_charted(desk, steps[-1])}." if steps else lines.NOTHING_YET
    return (head, charted, f"{span(desk, 'shift').told(ledger, desk)}.", *amend_lines(desk, ledger))


def _charted(desk: Desk, step: Interval) -> str:
    if desk.policy.chart_by == "mark":
        return lines.chart_text(step, desk.view)
    return lines.uncharted_text(step, desk.view)


def _level(desk: Desk, ledger: Ledger) -> str:
    return lines.last_text(ledger.last, ledger.unread, desk.view) if ledger.last else lines.NO_LINE


def _chart_of(desk: Desk, bed: str, ledger: Ledger, asked: Span) -> tuple[str, ...]:
    spans = _asked_too(desk, ledger, asked)
    steps = tuple(lines.step_text(step, desk.view) for step in spans[-1].steps(ledger, desk))
    by_mark = desk.policy.chart_by == "mark"
    head = f"{place(bed, ledger.tube)}: {'. '.join(each.told(ledger, desk) for each in spans)}."
    if steps:
        head += lines.TO_CHART if by_mark else lines.ONE_TO_CHART
    return desk.page(head, steps)


def _totals_of(desk: Desk, bed: str, ledger: Ledger, spans: tuple[Span, ...]) -> str:
    return f"{place(bed, ledger.tube)}: {'; '.join(each.told(ledger, desk) for each in spans)}."
