"""Whatever was told, in any order, every query answers it: no error, no misleading word, sums that agree."""

from __future__ import annotations

from datetime import timedelta
from typing import get_args

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.dialogue.queries.desk import desk_of
from bot.dialogue.queries.spans import span
from bot.dialogue.said import Query, Topic, Window
from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Correction,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Payload,
    Placed,
    Reason,
    Removed,
    Seen,
    What,
    Withdrawal,
)
from tests.dialogue.queries.ward import AMY, BEN, Ward, context_of

_levels = st.integers(min_value=0, max_value=2400)
_told = st.one_of(
    st.builds(Line, level_ml=_levels, closing=st.booleans(), about=st.booleans()),
    st.builds(Line, level_ml=_levels),
    st.builds(FinalLevel, level_ml=_levels),
    st.builds(Exchanged, opening_ml=st.sampled_from((0, 40))),
    st.builds(Placed, bed=st.just("12"), opening_ml=st.none() | _levels, reason=st.sampled_from(Reason)),
    st.builds(Checked, seal_cm=st.none() | st.sampled_from((0.0, 2.0)), tidaling=st.none() | st.booleans()),
    st.builds(Incident, what=st.sampled_from(What)),
    st.builds(Seen, amended=st.booleans()),
    st.sampled_from((Away(), Back(), Removed())),
)
_changes = st.tuples(st.integers(min_value=0, max_value=30), st.none() | _levels)
_hours, _minutes = st.integers(min_value=0, max_value=47), st.integers(min_value=0, max_value=59)
_steps = st.lists(st.tuples(_hours, _minutes, _told | _changes), max_size=14)
Steps = list[tuple[int, int, Payload | tuple[int, int | None]]]
WINDOWS = (None, *get_args(Window), timedelta(hours=3))


def told(steps: Steps) -> Ward:
    """A ward with these entries on bed 12, in the order given, each at its hour and minute of two days."""
    ward = Ward()
    entries = [ward.tell("3 07:00", "12", Line(level_ml=100))]
    for hour, minute, what in steps:
        at = f"{3 + hour // 24} {hour % 24:02}:{minute:02}"
        payload = _change(entries, what) if isinstance(what, tuple) else what
        entries.append(ward.tell(at, "12", payload, entered="5 07:00", who=BEN))
    return ward


def _change(entries: list[Entry], what: tuple[int, int | None]) -> Payload:
    place, level_ml = what
    target = entries[place % len(entries)].id
    return Withdrawal(target=target) if level_ml is None else Correction(target=target, level_ml=level_ml)


_some = settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])


@_some
@given(_steps, st.sampled_from(WINDOWS), st.sampled_from(("4 06:50", "5 07:10", "5 19:10")))
def test_every_topic_and_window_answers_in_words_that_may_be_shown(
    steps: Steps,
    window: Window | timedelta | None,
    now: str,
) -> None:
    ward = told(steps)
    for topic in get_args(Topic):
        for bed in ("12", None):
            reply = ward.asks(now, topic, bed, window=window)
            assert reply.lines
            assert all(reply.lines)


@_some
@given(_steps, st.sampled_from(("shift", "last_shift")))
def test_the_steps_of_a_shift_that_are_to_be_charted_add_up_to_its_sum(steps: Steps, window: str) -> None:
    ward = told(steps)
    with ward.store.turn(ward.unit.id) as book:
        desk = desk_of(Query(topic="chart"), context_of("5 06:50", AMY), book)
        ledger = desk.ledger(book.every_drain()[0])
        asked = span(desk, window)
        held, charted = asked.sum_of(ledger, desk), asked.steps(ledger, desk)
    # A step over an unlined shift start is charted whole by the later shift and says what it includes.
    if held.volume_ml is not None and not {"no_boundary_line", "uncounted_before"} & set(held.flags):
        assert sum(step.volume_ml for step in charted) == held.volume_ml
