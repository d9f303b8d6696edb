"""The picture of a trend: well-formed, whole without a style sheet, and told in words that say the same."""

from __future__ import annotations

from datetime import timedelta
from itertools import combinations
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.engine.entries import Reason, What
from bot.engine.trend import Trend, trend_of
from bot.engine.values import Severity
from bot.wording.queries.view import View
from bot.wording.trend import picture, picture_title, picture_words, small_picture
from bot.wording.trend.sheet import SVG, Scale, hours, nice_steps
from tests.engine.sheet import SCHEDULE, ZONE, Sheet, at, hourly, raised
from tests.wording.language import faults

VIEW = View(zone=ZONE, now=at("19:05"))


def trend_of_sheet(sheet: Sheet, begin: str = "07:00", end: str = "19:05") -> Trend:
    held = raised(sheet) if sheet.entries else ()
    return trend_of(sheet.ledger, SCHEDULE, at(begin), at(end), held)


def a_hard_day() -> Sheet:
    """Every thing that can be drawn: an exchange, a correction, a bleed, a shift start."""
    sheet = hourly(180, 240, tube="left", reason=Reason.CARDIAC)
    sheet.corrects(sheet.mark("11:00", 980), level_ml=520)
    sheet.exchanged("14:00", final_ml=700)
    sheet.mark("15:00", 300)
    sheet.mark("16:00", 850)
    return sheet


def drawn(sheet: Sheet, *span: str) -> ElementTree.Element:
    return ElementTree.fromstring(picture(trend_of_sheet(sheet, *span), "12", VIEW))


def words_in(svg: ElementTree.Element) -> list[str]:
    return [text.text or "" for text in svg.iter(f"{{{SVG}}}text")]


def looks(svg: ElementTree.Element, look: str) -> list[ElementTree.Element]:
    return [each for each in svg.iter() if each.get("class") == f"trend-{look}"]


def test_the_picture_has_a_title_and_says_in_its_description_what_it_shows() -> None:
    svg = drawn(a_hard_day())
    assert svg.get("role") == "img"
    assert svg.findtext(f"{{{SVG}}}title") == "Bed 12 left, trend 07:00-19:05"
    told = svg.findtext(f"{{{SVG}}}desc") or ""
    assert told.startswith("URGENT left: ")
    for said in (
        "1,550 mL in all, 08:00-16:00. Last line 850 mL at 16:00.",
        "09:00-10:00 240 mL",
        "Shifts: day shift from 07:00; night shift from 19:00.",
        "Canister changed: 14:00.",
        "Struck out: 980 mL at 11:00, corrected.",
        "Canister at 850 of 2,000 mL.",
    ):
        assert said in told


def test_each_thing_is_drawn() -> None:
    svg = drawn(a_hard_day())
    assert len(looks(svg, "exchange")) == 1
    assert [each.text for each in looks(svg, "struck-words")] == ["980"]
    assert len(looks(svg, "shift")) == 2
    assert len(looks(svg, "dot")) == 7
    assert {"new canister", "night shift", "240", "550", "Canister at 850 of 2,000 mL"} <= set(words_in(svg))


def test_the_total_says_from_when_it_is_counted_and_a_window_of_days_names_them() -> None:
    assert "mL since 08:00" in words_in(drawn(a_hard_day()))
    sheet = Sheet()
    for hour in range(0, 47, 2):
        sheet.mark(at(f"{(7 + hour) % 24:02d}:00", 4 + (7 + hour) // 24), 40 * hour)
    trend = trend_of(sheet.ledger, SCHEDULE, at("07:00"), at("07:00", 6))
    told = words_in(ElementTree.fromstring(picture(trend, "12", View(zone=ZONE, now=at("07:00", 6)))))
    assert {"Thu 5", "Fri 6", "12:00"} <= set(told)


@pytest.mark.parametrize(
    ("sheet", "words"),
    [(Sheet(), {"no line in this time", "no volume in this time"}), (hourly(), {"no volume in this time"})],
    ids=["no line", "one line"],
)
def test_where_there_is_nothing_to_see_the_picture_says_so(sheet: Sheet, words: set[str]) -> None:
    told = set(words_in(drawn(sheet)))
    assert {each for each in told if each.startswith("no ")} == words


def box(text: ElementTree.Element) -> tuple[float, float, float, float]:
    """About where a text stands that is not turned: left, top, right, bottom."""
    width = 6.6 * len(text.text or "")
    x, y = float(text.get("x") or 0), float(text.get("y") or 0)
    left = {"end": x - width, "middle": x - width / 2}.get(text.get("text-anchor") or "", x)
    return left, y - 9, left + width, y + 2


@pytest.mark.parametrize("sheet", [a_hard_day(), hourly(600, 700, 500), hourly(), Sheet()])
def test_no_words_stand_on_others(sheet: Sheet) -> None:
    texts = [each for each in drawn(sheet).iter(f"{{{SVG}}}text") if each.get("transform") is None]
    for one, other in combinations([each for each in texts if len(each.text or "") > 1], 2):
        (left, top, right, bottom), (begin, high, end, low) = box(one), box(other)
        apart = right <= begin or end <= left or bottom <= high or low <= top
        assert apart, f"{one.text!r} stands on {other.text!r}"


def test_severity_is_told_by_shape_and_letter_not_by_colour_alone() -> None:
    svg = drawn(a_hard_day())
    signs = [each for look in ("high", "moderate", "low") for each in looks(svg, look)]
    assert {each.tag.rpartition("}")[2] for each in looks(svg, "high")} == {"polygon"}
    corners = {
        look: {len((each.get("points") or "").split()) for each in looks(svg, look)}
        for look in ("high", "moderate")
    }
    assert corners == {"high": {3}, "moderate": {4}}
    letters = [word for word in words_in(svg) if word in ("U", "C", "N")]
    assert len(letters) == len(signs) > 1


def test_the_pen_line_is_broken_where_nothing_is_charted() -> None:
    sheet = hourly(100, 100)
    sheet.happens("10:30", What.TIPPED)
    sheet.mark("11:00", 40)
    svg = drawn(sheet)
    assert (len(looks(svg, "pen")), len(looks(svg, "dot"))) == (2, 4)
    assert not any("Canister at" in words for words in words_in(svg))


def test_the_capacity_is_drawn_once_the_total_comes_near_it() -> None:
    far, near = drawn(hourly(300)), drawn(hourly(600, 700, 500))
    assert (len(looks(far, "full")), len(looks(near, "full"))) == (0, 1)
    assert "canister full" in words_in(near)


def test_a_struck_level_far_off_does_not_flatten_the_picture() -> None:
    sheet = hourly(100, 100)
    sheet.corrects(sheet.mark("11:00", 1900), level_ml=290)
    tops = [float(each.get("cy") or 0) for each in looks(drawn(sheet), "dot")]
    assert min(tops) < 60


def test_a_drain_with_no_line_is_a_picture_that_says_so() -> None:
    svg = drawn(Sheet())
    assert svg.findtext(f"{{{SVG}}}desc") == "No line in this time."
    assert looks(svg, "pen") == []


def test_a_label_that_holds_markup_stays_a_label() -> None:
    svg = drawn(hourly(100, tube="<b>&"))
    assert "<b>&" not in picture(trend_of_sheet(hourly(100, tube="<b>&")), "12", VIEW)
    assert "Bed 12" in (svg.findtext(f"{{{SVG}}}title") or "")


@pytest.mark.parametrize("sheet", [a_hard_day(), Sheet(), hourly(600, 700, 500)])
def test_neither_picture_needs_what_a_strict_policy_forbids(sheet: Sheet) -> None:
    trend = trend_of_sheet(sheet)
    for told in (picture(trend, "12", VIEW), small_picture(trend, "12", VIEW)):
        svg = ElementTree.fromstring(told)
        assert {each.tag.rpartition("}")[2] for each in svg.iter()} <= {
            "svg", "title", "desc", "rect", "line", "text", "polyline", "polygon", "circle"
        }  # fmt: skip
        assert not any(
            name == "style" or name.startswith("on") for each in svg.iter() for name in each.attrib
        )


def test_the_words_prescribe_nothing_and_are_written_as_a_chart_is() -> None:
    trend = trend_of_sheet(a_hard_day())
    assert faults(" ".join(picture_words(trend, VIEW))) == []
    assert faults(picture_title(trend, "12", VIEW)) == []
    assert any(each.severity is Severity.HIGH for each in trend.cautions)


@given(st.lists(st.integers(0, 400), max_size=30), st.integers(15, 300))
def test_whatever_is_drawn_stays_on_the_sheet(amounts: list[int], every: int) -> None:
    sheet = hourly(*amounts, every=every)
    trend = trend_of(sheet.ledger, SCHEDULE, at("07:00"), sheet.entries[-1].at + timedelta(hours=1))
    svg = ElementTree.fromstring(picture(trend, "12", View(zone=ZONE, now=trend.end)))
    width, height = (float(part) for part in (svg.get("viewBox") or "").split()[2:])
    for each in svg.iter():
        for names, end in ((("x", "x1", "x2", "cx"), width), (("y", "y1", "y2", "cy"), height)):
            assert all(0 <= float(each.get(name) or 0) <= end for name in names)
    assert sum(step.volume_ml for step in trend.steps) == sum(amounts)


@given(st.integers(0, 100_000))
def test_round_values_reach_the_highest_and_are_few(highest: int) -> None:
    steps = nice_steps(highest)
    assert steps[0] == 0
    assert steps[-1] >= highest
    assert 2 <= len(steps) <= 6


@pytest.mark.parametrize(
    ("end", "least", "most"), [("08:30", 1, 5), ("19:00", 3, 6), ("55:00", 2, 6), ("700:00", 4, 8)]
)
def test_there_are_a_few_times_along_any_window(end: str, least: int, most: int) -> None:
    assert least <= len(list(hours(at("07:00"), at(end), ZONE, 5))) <= most


def test_hours_are_those_of_the_ward_s_clock_when_it_changes() -> None:
    shown = list(hours(at("00:00", 8), at("12:00", 8), ZONE))
    assert [moment.astimezone(ZONE).hour for moment in shown] == [0, 4, 6, 8, 10, 12]


def test_a_scale_keeps_what_is_outside_on_its_edge() -> None:
    scale = Scale(low=0, high=10, first=100, last=0)
    assert [scale.place(value) for value in (-5, 0, 5, 10, 15)] == [100, 100, 50, 0, 0]


@pytest.mark.parametrize(("levels", "at_the_foot"), [((100, 400, 700), True), ((0, 20, 40, 700), False)])
def test_the_name_of_an_upright_line_keeps_clear_of_the_pen_line(
    levels: tuple[int, ...], at_the_foot: bool
) -> None:
    svg = drawn_until("20:30", *levels)
    (name,) = (each for each in svg.iter(f"{{{SVG}}}text") if each.text == "night shift")
    assert name.get("text-anchor") == ("start" if at_the_foot else "end")
    assert (float(name.get("y") or 0) > 100) is at_the_foot


def drawn_until(end: str, *levels: int) -> ElementTree.Element:
    """A line an hour from 17:00 on, across the start of the night shift."""
    sheet = Sheet()
    for hour, level in enumerate(levels, start=17):
        sheet.mark(f"{hour}:00", level)
    return drawn(sheet, "12:00", end)
