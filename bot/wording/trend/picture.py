"""The trend of one drain as a picture: above the total over time, below the volume from line to line.

Drawn for a phone first: 340 wide, so that its words can still be read at 320 pixels.
"""

from __future__ import annotations

from datetime import datetime
from itertools import pairwise

from bot.engine.trend import Ceiling, Struck, Trend
from bot.engine.values import Caution, Interval, Severity
from bot.wording import formats
from bot.wording.cautions import PREFIX, by_severity
from bot.wording.queries.view import View
from bot.wording.trend.sheet import Scale, Sheet, hours, new_sheet, nice_steps, time_scale
from bot.wording.trend.words import NO_LINE, NO_VOLUME, picture_title, picture_words, room_words, used_ml

WIDTH, HEIGHT = 340, 388
LEFT, RIGHT = 42, 332
SIGNS_Y, TOP, BOTTOM = 13, 46, 220
BARS_TOP, BARS_BOTTOM = 260, 338
GAUGE_Y, GAUGE_WIDTH = 371, 96
_DAY_S = 24 * 3600
_MARGIN = 1.25
"""The total's scale goes on to the capacity, or to a struck level, only so far over the highest total."""
_LABEL_WIDTH, _SIGN_WIDTH = 22, 20


def picture(trend: Trend, bed: str, view: View) -> str:
    """The picture as one SVG element, with its title and all that it shows in words."""
    sheet = new_sheet(
        WIDTH,
        HEIGHT,
        f"trend-{trend.drain}",
        picture_title(trend, bed, view),
        " ".join(picture_words(trend, view)),
    )
    drawing = _Drawing(sheet, trend, view)
    drawing.grid()
    drawing.moments()
    drawing.total()
    drawing.names()
    drawing.volumes()
    drawing.struck()
    drawing.cautions()
    drawing.canister()
    return str(sheet)


class _Drawing:
    """One trend on one sheet; totals are counted from the first level that is shown."""

    def __init__(self, sheet: Sheet, trend: Trend, view: View) -> None:
        self._sheet = sheet
        self._trend = trend
        self._view = view
        self._zero = trend.levels[0].total_ml if trend.levels else 0
        self._time = time_scale(trend.begin, trend.end, LEFT, RIGHT)
        self._ticks = nice_steps(self._highest())
        self._total = Scale(low=0, high=self._ticks[-1], first=BOTTOM, last=TOP)
        most = max((step.volume_ml for step in trend.steps), default=0)
        self._volume = Scale(low=0, high=max(most, 1), first=BARS_BOTTOM, last=BARS_TOP)

    def _highest(self) -> float:
        """The highest total, or what is just over it: the capacity, a level that was struck out."""
        highest = max((level.total_ml - self._zero for level in self._trend.levels), default=0)
        over = (
            *(ceiling.total_ml for ceiling in self._trend.ceilings),
            *(each.total_ml for each in self._trend.struck if each.total_ml is not None),
        )
        near = (total - self._zero for total in over if total - self._zero <= highest * _MARGIN)
        return max(highest, *near, 10)

    def _x(self, moment: datetime) -> float:
        return self._time.place(moment.timestamp())

    def _y(self, total_ml: int) -> float:
        return self._total.place(total_ml - self._zero)

    def grid(self) -> None:
        """Both axes: mL to the left, the ward's clock below."""
        for tick in self._ticks:
            y = self._total.place(tick)
            self._sheet.line(LEFT, y, RIGHT, y, "axis" if tick == 0 else "grid")
            self._sheet.text(LEFT - 5, y + 4, formats.number(tick, 0), text_anchor="end")
        self._sheet.text(4, TOP - 11, self._measured())
        self._sheet.text(4, BARS_TOP - 20, "mL from line to line")
        self._sheet.line(LEFT, BARS_BOTTOM, RIGHT, BARS_BOTTOM, "axis")
        for hour in hours(self._trend.begin, self._trend.end, self._view.zone, 5):
            x, words = self._x(hour), self._clock(hour)
            self._sheet.line(x, BARS_BOTTOM, x, BARS_BOTTOM + 4, "axis")
            self._sheet.text(min(max(x, LEFT), RIGHT - 12), BARS_BOTTOM + 17, words, text_anchor="middle")

    def _measured(self) -> str:
        """What the total is counted from: the first level that is shown."""
        levels = self._trend.levels
        return f"mL since {self._view.clock(levels[0].at)}" if levels else "mL"

    def _clock(self, hour: datetime) -> str:
        """The time of day below the picture; the day itself at a midnight of a window of more than one."""
        local = hour.astimezone(self._view.zone)
        several = self._trend.end.timestamp() - self._trend.begin.timestamp() > _DAY_S
        if several and (local.hour, local.minute) == (0, 0):
            return formats.day(hour, self._view.zone)[:6].rstrip()
        return f"{local:%H:%M}"

    def moments(self) -> None:
        """Where a shift starts, where a canister was changed, and at what total each one is full."""
        for shift in self._trend.shifts:
            x = self._x(shift.start)
            self._sheet.line(x, TOP, x, BARS_BOTTOM, "shift")
        for moment in self._trend.exchanges:
            x = self._x(moment)
            self._sheet.line(x, TOP, x, BOTTOM, "exchange")
        for ceiling in self._seen_ceilings():
            y = self._y(ceiling.total_ml)
            self._sheet.line(self._x(ceiling.begin), y, self._x(ceiling.end), y, "full")

    def names(self) -> None:
        """The names of those lines, over the pen line, and what to say where there is nothing to see."""
        for shift in self._trend.shifts:
            self._upright(shift.start, f"{shift.name} shift")
        for moment in self._trend.exchanges:
            self._upright(moment, "new canister")
        for ceiling in self._seen_ceilings():
            x, y = self._x(ceiling.begin), self._y(ceiling.total_ml)
            self._sheet.text(x + 16, y + 13, "canister full", "label")
        middle = (LEFT + RIGHT) / 2
        if not self._trend.levels:
            self._sheet.text(middle, (TOP + BOTTOM) / 2, NO_LINE, "label", text_anchor="middle")
        if not self._trend.steps:
            self._sheet.text(middle, BARS_BOTTOM - 30, NO_VOLUME, "label", text_anchor="middle")

    def _seen_ceilings(self) -> tuple[Ceiling, ...]:
        """Those that the scale of the total goes up to."""
        return tuple(each for each in self._trend.ceilings if each.total_ml - self._zero <= self._ticks[-1])

    def _upright(self, moment: datetime, words: str) -> None:
        """Words along an upright line, on its left where there is room, and where the pen line is not."""
        x = self._x(moment)
        side = x - 4 if x > LEFT + 14 else x + 11
        y, anchor = (BOTTOM - 4, "start") if self._is_high(moment) else (TOP + 4, "end")
        turned = f"rotate(-90 {side:g} {y:g})"
        self._sheet.text(side, y, words, "label", text_anchor=anchor, transform=turned)

    def _is_high(self, moment: datetime) -> bool:
        """Whether the pen line is in the upper half by then."""
        before = [level.total_ml for level in self._trend.levels if level.at <= moment]
        return bool(before) and self._y(before[-1]) < (TOP + BOTTOM) / 2

    def total(self) -> None:
        """The pen line: broken where nothing is charted between two levels."""
        levels = self._trend.levels
        for before, level in pairwise(levels):
            if not level.baseline:
                ends = ((each.at, each.total_ml) for each in (before, level))
                self._sheet.path(((self._x(at), self._y(total)) for at, total in ends), "pen")
        for level in levels:
            if level.at >= self._trend.begin:
                self._sheet.dot(self._x(level.at), self._y(level.total_ml), 3, "dot")

    def volumes(self) -> None:
        """A bar from line to line, as high as its volume, with the volume where there is room for it."""
        for step in self._trend.steps:
            begin, end = self._x(step.begin.at), self._x(step.end.at)
            top = self._volume.place(step.volume_ml)
            self._sheet.box(begin + 0.5, top, end - begin - 1, BARS_BOTTOM - top, "bar")
            words = _volume(step)
            if end - begin >= _LABEL_WIDTH * len(words) / 3:
                self._sheet.text((begin + end) / 2, top - 3, words, text_anchor="middle")

    def struck(self) -> None:
        """A cross where a level stood that does not count any more, with the level struck through."""
        for each in self._trend.struck:
            x, y = self._x(each.at), self._struck_y(each)
            self._sheet.line(x - 4, y - 4, x + 4, y + 4, "struck")
            self._sheet.line(x - 4, y + 4, x + 4, y - 4, "struck")
            level = formats.number(each.level_ml, 0)
            beside = y - 6 if y > TOP + 16 else y + 16
            self._sheet.text(x - 6, beside, level, "struck-words", text_anchor="end")

    def _struck_y(self, struck: Struck) -> float:
        return BOTTOM if struck.total_ml is None else self._y(struck.total_ml)

    def canister(self) -> None:
        """How full the canister in use is, where that is known."""
        used = used_ml(self._trend)
        if used is not None:
            full = Scale(low=0, high=self._trend.capacity_ml, first=0, last=GAUGE_WIDTH)
            self._sheet.box(LEFT, GAUGE_Y, GAUGE_WIDTH, 9, "gauge")
            self._sheet.box(LEFT, GAUGE_Y, full.place(used), 9, "bar")
            self._sheet.text(LEFT + GAUGE_WIDTH + 8, GAUGE_Y + 9, room_words(used, self._trend.capacity_ml))

    def cautions(self) -> None:
        """A sign over the moment of each caution: its shape and its letter tell how serious it is."""
        taken: list[float] = []
        for caution in by_severity(self._trend.cautions):
            x = min(self._x(min(caution.end or self._trend.end, self._trend.end)), WIDTH - 12)
            while any(abs(x - other) < _SIGN_WIDTH for other in taken):
                x -= _SIGN_WIDTH
            if x >= 12:
                taken.append(x)
                _sign(self._sheet, x, caution)


def _volume(step: Interval) -> str:
    return formats.number(step.volume_ml, 0) + ("+" if step.at_least else "")


def _sign(sheet: Sheet, x: float, caution: Caution) -> None:
    """A triangle for URGENT, a diamond for CAUTION, a circle for NOTE, each with its first letter.

    Only an outline where it rests on a reading that is not confirmed.
    """
    y, look = SIGNS_Y, "asked" if caution.if_right else caution.severity.value
    match caution.severity:
        case Severity.HIGH:
            sheet.shape(((x, y - 10), (x + 10, y + 8), (x - 10, y + 8)), look)
        case Severity.MODERATE:
            sheet.shape(((x, y - 9), (x + 9, y), (x, y + 9), (x - 9, y)), look)
        case _:
            sheet.dot(x, y, 8, look)
    low = y + (6 if caution.severity is Severity.HIGH else 4)
    inside = "on-high" if look == Severity.HIGH.value else "words"
    sheet.text(x, low, PREFIX[caution.severity][0], inside, text_anchor="middle", font_weight="bold")
