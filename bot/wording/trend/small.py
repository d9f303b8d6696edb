"""The small trend beside a bed in a list: the pen line alone; its numbers stand in words next to it."""

from __future__ import annotations

from itertools import pairwise

from bot.engine.trend import Trend
from bot.wording.queries.view import View
from bot.wording.trend.sheet import Scale, new_sheet, time_scale
from bot.wording.trend.words import picture_title

WIDTH, HEIGHT = 132, 44


def small_picture(trend: Trend, bed: str, view: View) -> str:
    """The pen line with its shift starts and exchanges, as one SVG element with a title."""
    sheet = new_sheet(WIDTH, HEIGHT, f"small-{trend.drain}", picture_title(trend, bed, view))
    totals = [level.total_ml for level in trend.levels] or [0]
    time = time_scale(trend.begin, trend.end, 3, WIDTH - 5)
    total = Scale(low=totals[0], high=max(totals[-1], totals[0] + 1), first=HEIGHT - 5, last=5)
    for shift in trend.shifts:
        x = time.place(shift.start.timestamp())
        sheet.line(x, 2, x, HEIGHT - 2, "shift")
    for moment in trend.exchanges:
        x = time.place(moment.timestamp())
        sheet.line(x, 2, x, HEIGHT - 2, "exchange")
    points = [(time.place(each.at.timestamp()), total.place(each.total_ml)) for each in trend.levels]
    for (before, level), (_, shown) in zip(pairwise(points), pairwise(trend.levels), strict=True):
        if not shown.baseline:
            sheet.path((before, level), "pen")
    if points:
        sheet.dot(*points[-1], 2.5, "dot")
    return str(sheet)
