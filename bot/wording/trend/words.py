"""What a trend picture shows, in words: its title, its description, and the sentences beside it."""

from __future__ import annotations

from bot.engine.trend import Struck, Trend
from bot.wording import formats
from bot.wording.cautions import by_severity, caution_text
from bot.wording.queries.lines import trend_text
from bot.wording.queries.view import View, place

NO_LINE = "no line in this time"
NO_VOLUME = "no volume in this time"


def picture_title(trend: Trend, bed: str, view: View) -> str:
    """ "Bed 12 left, trend 11:00-19:05" """
    return f"{place(bed, trend.tube)}, trend {view.stretch(trend.begin, trend.end)}"


def picture_words(trend: Trend, view: View) -> tuple[str, ...]:
    """Everything that the picture shows, a sentence each: the cautions first."""
    cautions = (caution_text(each, view.zone, view.now) for each in by_severity(trend.cautions))
    return (*cautions, *picture_facts(trend, view))


def picture_facts(trend: Trend, view: View) -> tuple[str, ...]:
    """What the picture shows but for the cautions."""
    if not trend.levels:
        return (f"{formats.capital(NO_LINE)}.",)
    told = (
        _whole(trend, view),
        _listed("Volumes", tuple(trend_text(step, view) for step in trend.steps)),
        _listed(
            "Shifts", tuple(f"{shift.name} shift from {view.clock(shift.start)}" for shift in trend.shifts)
        ),
        _listed("Canister changed", tuple(view.clock(moment) for moment in trend.exchanges)),
        _listed("Struck out", tuple(_struck(each, view) for each in trend.struck)),
        _room(trend),
    )
    return tuple(each for each in told if each)


def _whole(trend: Trend, view: View) -> str:
    last = trend.levels[-1]
    what = "Final level" if last.kind == "final" else "Last line"
    line = f"{what} {formats.ml(last.level_ml)} at {view.clock(last.at)}"
    if not trend.steps:
        return f"{line}; {NO_VOLUME}."
    volume = sum(step.volume_ml for step in trend.steps)
    ends = view.stretch(trend.steps[0].begin.at, trend.steps[-1].end.at)
    told = formats.volume(volume, any(step.at_least for step in trend.steps))
    return f"{formats.capital(told)} in all, {ends}. {line}."


def _listed(head: str, told: tuple[str, ...]) -> str:
    return f"{head}: {'; '.join(told)}." if told else ""


def _struck(struck: Struck, view: View) -> str:
    return f"{formats.ml(struck.level_ml)} at {view.clock(struck.at)}, {struck.how}"


def used_ml(trend: Trend) -> int | None:
    """The level in the canister in use; None where it is not known, as after a tip-over."""
    if not trend.ceilings or not trend.levels or trend.ceilings[-1].end < trend.end:
        return None
    return trend.capacity_ml - (trend.ceilings[-1].total_ml - trend.levels[-1].total_ml)


def room_words(used: int, capacity_ml: int) -> str:
    """ "Canister at 560 of 2,000 mL" """
    return f"Canister at {formats.number(used, 0)} of {formats.ml(capacity_ml)}"


def _room(trend: Trend) -> str:
    used = used_ml(trend)
    return "" if used is None else f"{room_words(used, trend.capacity_ml)}."
