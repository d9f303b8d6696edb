"""What the engine reckons in few steps is what many steps give: dense lines, told in any order."""

from __future__ import annotations

from datetime import timedelta
from time import process_time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.engine.amend import _REMEMBERED, outstanding
from bot.engine.cautions import cautions
from bot.engine.cautions.scene import Subject
from bot.engine.cautions.sudden import _risen
from bot.engine.entries import Entry, Line, Seen
from bot.engine.ledger import fold
from bot.engine.patient import Patient
from bot.engine.policy import ChartBy
from bot.engine.rates import HOUR, higher, highest_amount, highest_hour, sustained
from bot.engine.series import Point, Series, series_of
from bot.engine.volumes import intervals
from tests.engine import plain
from tests.engine.sheet import ADULT, SCHEDULE, THREE_SHIFTS, Sheet, at
from tests.engine.strategies import BEGINNINGS, entries

CHART_BY = st.sampled_from(["mark", "shift"])
SCHEDULES = st.sampled_from([SCHEDULE, THREE_SHIFTS])
(RISE,) = (rule for rule in ADULT.rules if rule.code == "sudden_rise")


@st.composite
def dense(draw: st.DrawFn) -> Series:
    """Totals at lines some minutes apart, several at one minute too, over some hours; a few with a gap."""
    steps = draw(
        st.lists(
            st.tuples(
                st.sampled_from([0, 1, 2, 5, 14, 15, 16, 30, 45, 60, 75]),
                st.sampled_from([0, 1, 2, 10, 50, 100, 200, 300]),
                st.sampled_from([0] * 9 + [1]),
            ),
            min_size=1,
            max_size=40,
        )
    )
    points = [Point(BEGINNINGS[2], 0, 0)]
    for minutes, volume, gap in steps:
        last = points[-1]
        points.append(Point(last.at + timedelta(minutes=minutes), last.total_ml + volume, last.gaps + gap))
    return tuple(points)


@given(dense(), st.sampled_from([None, 60, 150]))
def test_the_highest_rate_is_that_of_every_pair_of_lines(series: Series, until: int | None) -> None:
    def inside(_begin: object, end: object) -> bool:
        return until is None or end <= series[0].at + timedelta(minutes=until)  # type: ignore[operator]

    found = higher(highest_hour(series, inside), highest_amount(series, HOUR, inside))
    assert found == plain.highest_rate(series, inside)
    for hours in (1, 2, 24):
        window = timedelta(hours=hours)
        assert highest_amount(series, window, inside) == plain.highest_amount(series, window, inside)


@given(dense(), st.integers(0, 4), st.sampled_from([20, 100, 200]), st.booleans())
def test_hours_in_a_row_are_those_of_every_chain(
    series: Series, hours: int, limit: int, longer: bool
) -> None:
    def met(value: float) -> bool:
        return value > limit

    def early(begin: object, _end: object) -> bool:
        return begin <= series[0].at + timedelta(hours=3)  # type: ignore[operator]

    found = sustained(series, hours, met, longer=longer, inside=early)
    assert found == plain.sustained(series, hours, met, longer, early)


@given(dense())
def test_a_rise_is_that_of_every_pair_of_lines(series: Series) -> None:
    subject = Subject((fold(()),), series, None)
    assert _risen(RISE, subject) == plain.risen(RISE, subject)


@st.composite
def told(draw: st.DrawFn) -> tuple[Entry, ...]:
    """Entries of every kind in any order of time, with a nurse who says now and then that it was amended."""
    held = list(draw(entries(most=20)))
    for place in sorted(draw(st.sets(st.integers(1, len(held)), max_size=2)), reverse=True):
        held.insert(place, held[place - 1])
        held[place] = Entry(
            drain=held[0].drain, position=0, at=held[place - 1].at, entered=held[place - 1].entered,
            who="rn-1", message="seen", payload=Seen(amended=True),
        )  # fmt: skip
    return _numbered(held)


def _numbered(held: list[Entry]) -> tuple[Entry, ...]:
    """The entries as they were recorded; what a correction names is left as it is, whatever it now is."""
    return tuple(
        Entry(
            drain=one.drain, position=place, at=one.at, entered=one.entered, who=one.who,
            message=one.message, payload=one.payload,
        )
        for place, one in enumerate(held, start=1)
    )  # fmt: skip


@given(told(), SCHEDULES, CHART_BY)
@settings(max_examples=60)
def test_a_ledger_that_grows_has_the_amend_list_of_its_whole_past(
    held: tuple[Entry, ...], schedule: object, chart_by: ChartBy
) -> None:
    for count in range(1, len(held) + 1):
        ledger = fold(held[:count])
        expected = plain.outstanding(ledger, schedule, chart_by)  # type: ignore[arg-type]
        assert outstanding(ledger, schedule, chart_by) == expected  # type: ignore[arg-type]


@given(told(), told(), st.lists(st.tuples(st.booleans(), st.integers(1, 22)), max_size=6))
@settings(max_examples=40)
def test_what_is_remembered_of_one_past_is_never_taken_for_another(
    one: tuple[Entry, ...], other: tuple[Entry, ...], asked: list[tuple[bool, int]]
) -> None:
    """The two have one drain's id: a ledger that is supposed, or restored, is not the one before it."""
    for first, count in asked:
        ledger = fold((one if first else other)[:count])
        assert outstanding(ledger, SCHEDULE) == plain.outstanding(ledger, SCHEDULE, "mark")


def test_of_one_more_late_line_nothing_is_folded_but_its_own_ledger() -> None:
    sheet = Sheet()
    sheet.marks(t0800=100, t1000=140, t1200=180, t1400=220, t1600=260)
    sheet.tells(at("09:00"), Line(level_ml=120))
    ledger = sheet.ledger
    outstanding(ledger, SCHEDULE)
    sheet.tells(at("11:00"), Line(level_ml=160))
    grown = ledger.with_entry(sheet.entries[-1])
    outstanding(grown, SCHEDULE)
    memory = _REMEMBERED.find((ledger.drain, ledger.capacity_ml, SCHEDULE, "mark", 0))
    assert memory is not None
    for step, whole in zip(memory.steps, (grown, ledger), strict=True):
        known = zip(step.known.values(), intervals(whole, SCHEDULE), strict=True)
        assert all(one is other for one, other in known)


@pytest.mark.parametrize("count", [200])
def test_a_burst_of_lines_in_any_order_takes_little_time_for_each(count: int) -> None:
    """A line a minute, told as 37 of 200 would be dealt: each turn once took longer than the one before."""
    sheet = Sheet()
    taken: list[float] = []
    for place in sorted(range(count), key=lambda number: number * 37 % count):
        sheet.tells(at("08:00") + timedelta(minutes=place), Line(level_ml=100 + 2 * place))
        ledger = sheet.ledger
        begin = process_time()
        cautions(Patient(bed="12", drains=(ledger,)), at("13:00"), ADULT)
        taken.append(process_time() - begin)
    assert len(series_of((ledger,))) == count
    assert sorted(taken[-20:])[10] < 0.1
