"""A ledger that is walked on from where it stood is the one that all of its entries fold to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.engine.amend import amendments, outstanding, unlike
from bot.engine.cautions import all_cautions
from bot.engine.entries import (
    Checked,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Ordered,
    Payload,
    Placed,
    Seen,
    What,
)
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.policy import ChartBy
from bot.engine.series import series_of
from bot.engine.volumes import closings, intervals
from tests.engine.sheet import ADULT, SCHEDULE
from tests.engine.strategies import BEGINNINGS, entries

OTHERS: tuple[Payload, ...] = (
    Checked(seal_cm=2, air_leak="none"),
    Checked(suction_cmh2o=0, fluid="serous"),
    Ordered(suction_cmh2o=20),
    Seen(amended=True),
    Incident(what=What.CLAMPED),
    Incident(what=What.SUCTION_OFF),
    Incident(what=What.TIPPED),
)


def told_in_turn(steps: Sequence[tuple[int, int | Payload]]) -> tuple[Entry, ...]:
    """Lines (mL since the one before) and other things, so many minutes apart."""
    at, level_ml, told = BEGINNINGS[0], 0, list[Entry]()
    for place, (minutes, what) in enumerate(steps, start=1):
        at += timedelta(minutes=minutes)
        if isinstance(what, int):
            level_ml += what
            payload: Payload = Line(level_ml=level_ml, closing=what % 7 == 0)
        else:
            payload = what
        told.append(
            Entry(
                drain="d" * 16, position=place, at=at, entered=at, who="rn-1", message=f"m{place}",
                payload=payload,
            )
        )  # fmt: skip
    return tuple(told)


steps = st.lists(
    st.tuples(
        st.one_of(st.integers(0, 12), st.sampled_from([15, 45, 60, 60, 119, 120, 121, 700])),
        st.one_of(st.integers(0, 300), st.just(0), st.sampled_from(OTHERS)),
    ),
    max_size=30,
)


def reckoned(ledger: Ledger) -> tuple[object, ...]:
    """All that is reckoned on from an earlier ledger, and what rests on it."""
    last = ledger.live[-1].at if ledger.live else BEGINNINGS[0]
    charts: tuple[ChartBy, ...] = ("mark", "shift")
    return (
        ledger,
        dict(ledger._held),
        intervals(ledger, SCHEDULE),
        closings(ledger, SCHEDULE),
        series_of((ledger,)),
        tuple(ledger.of_kind(kind) for kind in (Line, Checked, Incident)),
        tuple(outstanding(ledger, SCHEDULE, chart_by) for chart_by in charts),
        all_cautions(Patient(bed="12", drains=(ledger,)), last + timedelta(minutes=20), ADULT),
    )


def check_each_step(told: Sequence[Entry]) -> None:
    ledger = fold(())
    for count, entry in enumerate(told, start=1):
        before, ledger = ledger, ledger.with_entry(entry)
        whole = fold(told[:count])
        assert reckoned(ledger) == reckoned(whole)
        was = fold(told[: count - 1])
        assert amendments(before, ledger, SCHEDULE) == amendments(was, whole, SCHEDULE)


@given(steps)
def test_what_is_told_in_turn_comes_out_as_if_folded_from_the_start(
    told: list[tuple[int, int | Payload]],
) -> None:
    check_each_step(told_in_turn(told))


@given(entries())
def test_so_does_what_is_told_in_any_order(told: tuple[Entry, ...]) -> None:
    check_each_step(told)


late_steps = st.lists(
    st.tuples(
        st.integers(0, 40),
        st.one_of(
            st.builds(
                Line,
                level_ml=st.sampled_from([10, 10, 20, 30]),
                closing=st.sampled_from([False] * 5 + [True]),
            ),
            st.builds(Line, level_ml=st.integers(0, 60)),
            st.sampled_from((*OTHERS, Placed(bed="12", opening_ml=5), Exchanged(), FinalLevel(level_ml=40))),
        ),
    ),
    max_size=30,
)


@given(late_steps, st.sampled_from([1, 3, 9]), st.integers(0, 20))
@settings(max_examples=60)
def test_lines_told_late_come_out_as_if_folded_from_the_start(
    told: list[tuple[int, Payload]], apart: int, others: int
) -> None:
    """Crowded: many at one moment, many that repeat another; what is no line comes first, or now and then."""
    ledger, count = fold(()), 0
    for minute, payload in sorted(told, key=lambda step: isinstance(step[1], Line) and step[0] > others):
        at = BEGINNINGS[0] + timedelta(minutes=apart * minute)
        entry = ledger.next_entry(payload, at, BEGINNINGS[0] + timedelta(days=1, minutes=count % 7))
        ledger, count = ledger.with_entry(entry), count + 1
        whole = fold(ledger.entries)
        assert (ledger, ledger._held, ledger._awaited) == (whole, whole._held, whole._awaited)
        assert ledger._walk == whole._walk


def test_a_late_line_moves_no_level_but_its_own_and_the_next() -> None:
    ledger = fold(told_in_turn([(60, 10)] * 6))
    at = ledger.levels[2].at + timedelta(minutes=20)
    grown = ledger.with_entry(ledger.next_entry(Line(level_ml=33), at, at))
    assert [level.level_ml for level in grown.levels] == [10, 20, 30, 33, 40, 50, 60]
    kept = zip(ledger.levels, (*grown.levels[:3], *grown.levels[4:]), strict=True)
    assert all(one is other for one, other in kept)


def test_lines_told_in_turn_are_not_folded_again() -> None:
    ledger = fold(told_in_turn([(60, 10)] * 5))
    grown = ledger.with_entry(told_in_turn([(60, 10)] * 6)[-1])
    assert all(one is other for one, other in zip(grown.levels, ledger.levels, strict=False))
    assert intervals(grown, SCHEDULE)[0] is intervals(grown, SCHEDULE)[0]
    whole = fold(grown.entries)
    assert not any(one is other for one, other in zip(whole.levels, ledger.levels, strict=False))


def test_what_is_recorded_as_it_was_tried_just_before_is_not_walked_again() -> None:
    told = told_in_turn([(60, 10)] * 6)
    ledger, last = fold(told[:5]), told[5]
    tried = ledger.with_entry(last)
    assert ledger.with_entry(replace(last)) is tried
    assert ledger.with_entry(replace(last, payload=Line(level_ml=61))).levels[-1].level_ml == 61
    assert ledger.with_entry(last) == tried


def test_a_final_level_that_waits_for_its_exchange_is_put_in_its_place_when_the_exchange_comes() -> None:
    told = told_in_turn([(60, 10), (60, 10), (60, 10)])
    early = replace(told[1], payload=FinalLevel(level_ml=900, exchange=told[2].id))
    check_each_step((told[0], early, told[2]))


def test_volumes_that_two_ledgers_begin_with_are_left_out_only_when_they_are_the_very_same() -> None:
    one = intervals(fold(told_in_turn([(60, 10)] * 4)), SCHEDULE)
    other = intervals(fold(told_in_turn([(60, 10)] * 5)), SCHEDULE)
    assert unlike(one, (*one, other[-1])) == ((), (other[-1],))
    assert unlike(one, other) == (one, other)
