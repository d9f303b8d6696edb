"""The windows that a query can name, as sums of one drain cut at its lines."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from bot.dialogue.queries.desk import Desk
from bot.engine.ledger import Ledger
from bot.engine.shifts import shift_at, shift_before, shift_sum
from bot.engine.values import Interval, Shift, Sum
from bot.engine.volumes import intervals, total
from bot.engine.windows import day_at, window_sum
from bot.wording.queries.sums import shift_label, sum_text, window_label

SpanAsked = str | timedelta | datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A window that was asked for: a shift, or from one moment to another; neither: all of the drain."""

    label: str
    shift: Shift | None = None
    begin: datetime | None = None
    end: datetime | None = None

    def sum_of(self, ledger: Ledger, desk: Desk) -> Sum:
        """What the drain drained in this window, with its real ends."""
        if self.shift is not None:
            return shift_sum(ledger, desk.schedule, self.shift, desk.now)
        if self.begin is None or self.end is None:
            return total(ledger)
        return window_sum(ledger, desk.schedule, self.begin, self.end)

    def steps(self, ledger: Ledger, desk: Desk) -> tuple[Interval, ...]:
        """The volumes to chart that this window holds, those of a shift being the ones that it charts."""
        steps = _by_moment(intervals(ledger, desk.schedule))
        if self.shift is not None:
            return tuple(step for step in steps if step.shift.start == self.shift.start)
        held = self.sum_of(ledger, desk)
        if held.begin is None or held.end is None:
            return ()
        begin, end = held.begin.at, held.end.at
        return tuple(step for step in steps if begin <= step.begin.at and step.end.at <= end)

    def told(self, ledger: Ledger, desk: Desk) -> str:
        """The sum in words: "Day shift so far 380 mL, 07:00-19:00"."""
        return self.told_sum(self.sum_of(ledger, desk), desk)

    def told_sum(self, held: Sum, desk: Desk) -> str:
        """The same for a sum that is at hand."""
        return sum_text(self.label, held, desk.view, self.begin)


def _by_moment(steps: tuple[Interval, ...]) -> tuple[Interval, ...]:
    """With what ends at the moment where it begins, as an exchange does, told in one with the one before."""
    found: list[Interval] = []
    for step in steps:
        if found and step.begin.at == step.end.at and found[-1].end == step.begin:
            found[-1] = _joined(found[-1], step)
        else:
            found.append(step)
    return tuple(found)


def _joined(first: Interval, second: Interval) -> Interval:
    return replace(
        first,
        end=second.end,
        volume_ml=first.volume_ml + second.volume_ml,
        at_least=first.at_least or second.at_least,
        between=(*first.between, first.end, *second.between),
    )


def span(desk: Desk, window: SpanAsked) -> Span:
    """The window by its name, its length back from now, or its beginning."""
    match window:
        case "shift":
            return shift_span(desk, shift_at(desk.schedule, desk.now))
        case "last_shift":
            return shift_span(desk, shift_before(desk.schedule, shift_at(desk.schedule, desk.now)))
        case "placement":
            return Span(label=window_label(window, desk.view))
    begin, end = _ends(desk, window)
    return Span(label=window_label(window, desk.view), begin=begin, end=end)


def shift_span(desk: Desk, shift: Shift) -> Span:
    """A shift as a window."""
    return Span(label=shift_label(shift, desk.now), shift=shift, begin=shift.start, end=shift.end)


def shift_until(desk: Desk, moment: datetime) -> Shift:
    """The shift that holds that moment; at the start of a shift, the one that ended then."""
    return shift_at(desk.schedule, moment - timedelta(microseconds=1))


def _ends(desk: Desk, window: SpanAsked) -> tuple[datetime, datetime]:
    match window:
        case timedelta():
            return desk.now - window, desk.now
        case datetime():
            return window.astimezone(UTC), desk.now
        case "day":
            return day_at(desk.schedule, desk.now)
        case "last_day":
            today, _ = day_at(desk.schedule, desk.now)
            return day_at(desk.schedule, today - timedelta(seconds=1))
        case _:
            return desk.now - timedelta(hours=24), desk.now
