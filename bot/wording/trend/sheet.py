"""The paper that a trend is drawn on: scales, and SVG elements with a class and colours of their own.

Colours are attributes, so that the picture is whole where no style sheet reaches it; a page that does have
one (for dark mode) overrides them by class. No style, no script: a strict policy lets it through.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta, tzinfo
from xml.etree import ElementTree

SVG = "http://www.w3.org/2000/svg"
FONT = "system-ui, sans-serif"

INK = "#1d2b33"
LOOKS: Mapping[str, Mapping[str, str]] = {
    "paper": {"fill": "#ffffff"},
    "grid": {"stroke": "#d5dde1", "stroke-width": "1"},
    "axis": {"stroke": "#5b6b74", "stroke-width": "1"},
    "shift": {"stroke": "#5b6b74", "stroke-width": "1", "stroke-dasharray": "2 3"},
    "exchange": {"stroke": INK, "stroke-width": "1.5"},
    "full": {"stroke": INK, "stroke-width": "1.2", "stroke-dasharray": "7 3", "fill": "none"},
    "pen": {"stroke": "#0b5c8a", "stroke-width": "2", "fill": "none", "stroke-linejoin": "round"},
    "dot": {"fill": "#0b5c8a"},
    "bar": {"fill": "#a9c6d6", "stroke": "#0b5c8a", "stroke-width": "0.7"},
    "gauge": {"stroke": "#5b6b74", "stroke-width": "1", "fill": "none"},
    "struck": {"stroke": "#a3231f", "stroke-width": "1.5", "fill": "none"},
    "words": {"fill": INK},
    "label": {"fill": INK, "stroke": "#ffffff", "stroke-width": "3", "paint-order": "stroke"},
    "struck-words": {"fill": "#a3231f", "text-decoration": "line-through"},
    "high": {"fill": "#a3000f", "stroke": "#a3000f"},
    "asked": {"fill": "#ffffff", "stroke": "#a3000f", "stroke-width": "1.5", "stroke-dasharray": "3 2"},
    "moderate": {"fill": "#ffffff", "stroke": "#7a4d00", "stroke-width": "1.5"},
    "low": {"fill": "#ffffff", "stroke": "#44535c", "stroke-width": "1.5"},
    "on-high": {"fill": "#ffffff"},
}
"""Class -> how it looks on white paper."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """A value's place on the sheet, between two ends; whatever is outside sits on the edge."""

    low: float
    high: float
    first: float
    last: float

    def place(self, value: float) -> float:
        """Where the value is drawn."""
        share = (value - self.low) / (self.high - self.low) if self.high > self.low else 0.0
        return round(self.first + min(max(share, 0.0), 1.0) * (self.last - self.first), 1)


def time_scale(begin: datetime, end: datetime, first: float, last: float) -> Scale:
    """Moments as seconds; a window of no length is given a minute."""
    low = begin.timestamp()
    return Scale(low=low, high=max(end.timestamp(), low + 60), first=first, last=last)


@dataclass(slots=True)
class Sheet:
    """An SVG in the making."""

    root: ElementTree.Element
    hidden: Mapping[str, str] = field(default_factory=dict)

    def text(self, x: float, y: float, words: str, look: str = "words", **more: str) -> None:
        """Words at a place; `more` are attributes, with `_` for `-`."""
        held = {"x": f"{x:g}", "y": f"{y:g}", "font-size": "12", "font-family": FONT, **_dashed(more)}
        self._add("text", look, held).text = words

    def line(self, x1: float, y1: float, x2: float, y2: float, look: str) -> None:
        """A straight line."""
        self._add("line", look, {"x1": f"{x1:g}", "y1": f"{y1:g}", "x2": f"{x2:g}", "y2": f"{y2:g}"})

    def path(self, points: Iterable[tuple[float, float]], look: str) -> None:
        """A line through points."""
        told = " ".join(f"{x:g},{y:g}" for x, y in points)
        self._add("polyline", look, {"points": told})

    def shape(self, points: Iterable[tuple[float, float]], look: str) -> None:
        """A closed shape."""
        self._add("polygon", look, {"points": " ".join(f"{x:g},{y:g}" for x, y in points)})

    def box(self, x: float, y: float, width: float, height: float, look: str) -> None:
        """A rectangle."""
        size = {"width": f"{max(width, 0):g}", "height": f"{max(height, 0):g}"}
        self._add("rect", look, {"x": f"{x:g}", "y": f"{y:g}", **size})

    def dot(self, x: float, y: float, radius: float, look: str) -> None:
        """A circle."""
        self._add("circle", look, {"cx": f"{x:g}", "cy": f"{y:g}", "r": f"{radius:g}"})

    def _add(self, tag: str, look: str, attributes: Mapping[str, str]) -> ElementTree.Element:
        classed = {**attributes, **LOOKS[look], "class": f"trend-{look}"}
        return ElementTree.SubElement(self.root, tag, classed)

    def __str__(self) -> str:
        return ElementTree.tostring(self.root, encoding="unicode")


def new_sheet(width: int, height: int, name: str, title: str, description: str = "") -> Sheet:
    """An empty sheet that a screen reader reads as one picture, with its title and description."""
    root = ElementTree.Element("svg", {"xmlns": SVG, "viewBox": f"0 0 {width} {height}", "role": "img"})
    named = {"title": title, "desc": description}
    for tag, words in named.items():
        if words:
            ElementTree.SubElement(root, tag, {"id": f"{name}-{tag}"}).text = words
    root.set("aria-labelledby", f"{name}-title")
    if description:
        root.set("aria-describedby", f"{name}-desc")
    sheet = Sheet(root)
    sheet.box(0, 0, width, height, "paper")
    return sheet


def nice_steps(highest: float, most: int = 5) -> list[int]:
    """Round values from 0 to at least the highest, at most so many steps: 0, 100, 200."""
    step, factor = 1, 1
    while step * most < highest:
        for first in (1, 2, 5):
            step = first * factor
            if step * most >= highest:
                break
        factor *= 10
    count = max(1, -(-int(highest) // step))
    return [step * number for number in range(count + 1)]


def hours(begin: datetime, end: datetime, zone: tzinfo, most: int = 6) -> Iterator[datetime]:
    """Full hours of the ward's clock within the window, at most about so many; midnights in a long one."""
    span_h = (end - begin) / timedelta(hours=1)
    apart = next((each for each in (1, 2, 3, 4, 6, 12) if span_h / each <= most), 24)
    days = max(1, round(span_h / 24 / most)) if apart == 24 else 1
    moment = begin.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
    while moment <= end:
        local = moment.astimezone(zone)
        if moment >= begin and local.hour % apart == 0 and local.toordinal() % days == 0:
            yield moment
        moment += timedelta(hours=1)


def _dashed(attributes: Mapping[str, str]) -> dict[str, str]:
    return {name.replace("_", "-"): value for name, value in attributes.items()}
