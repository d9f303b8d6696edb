"""All Hypothesis strategies of the engine's tests: random ledgers, and lines at any times."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, datetime, timedelta

from hypothesis import strategies as st

from bot.engine.entries import (
    Correction,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Payload,
    Placed,
    What,
    Withdrawal,
)

# Two days around each change of the clocks of New York in 2026, and two ordinary ones.
BEGINNINGS = (
    datetime(2026, 3, 7, 11, tzinfo=UTC),
    datetime(2026, 10, 31, 10, tzinfo=UTC),
    datetime(2026, 3, 4, 11, tzinfo=UTC),
)
_SPAN_MIN = 2 * 24 * 60
_KINDS = ("mark", "mark", "mark", "mark", "exchange", "final", "tip", "correct", "retime", "withdraw")


@st.composite
def entries(draw: st.DrawFn, most: int = 24, *, rising: bool = False) -> tuple[Entry, ...]:
    """The entries of one drain in the order told: lines, exchanges with and without a final level, final
    levels told late, tip-overs, corrections (of corrections too) and withdrawals, in any order of time.

    No two things are told of one minute, but a final level and its exchange. `rising`: lines only, levels in
    the order of time.
    """
    begin = draw(st.sampled_from(BEGINNINGS))
    minutes = draw(
        st.lists(st.integers(0, _SPAN_MIN), min_size=2, max_size=most, unique=True).filter(
            lambda m: len(m) > 1
        )
    )
    told: list[Entry] = []
    if draw(st.booleans()):
        _tell(
            told,
            begin - timedelta(minutes=1),
            Placed(bed="12", opening_ml=draw(st.sampled_from([0, 40, None]))),
        )
    levels = iter(sorted(draw(st.lists(st.integers(0, 2000), min_size=len(minutes), max_size=len(minutes)))))
    by_time = {minute: next(levels) for minute in sorted(minutes)}
    for minute in minutes:
        at = begin + timedelta(minutes=minute)
        kind = "mark" if rising else draw(st.sampled_from(_KINDS))
        _tell_one(draw, told, kind, at, by_time[minute])
    return tuple(told)


def _tell_one(draw: st.DrawFn, told: list[Entry], kind: str, at: datetime, level_ml: int) -> None:
    exchanges = [entry for entry in told if isinstance(entry.payload, Exchanged)]
    fixable = [
        entry for entry in told if isinstance(entry.payload, Line | FinalLevel | Exchanged | Correction)
    ]
    match kind:
        case "exchange":
            if draw(st.booleans()):
                _tell(told, at, FinalLevel(level_ml=level_ml))
            _tell(told, at, Exchanged(opening_ml=draw(st.sampled_from([0, 0, 40]))))
        case "final" if exchanges:
            exchange = draw(st.sampled_from(exchanges))
            _tell(told, at, FinalLevel(level_ml=level_ml, exchange=exchange.id))
        case "tip":
            _tell(told, at, Incident(what=What.TIPPED))
        case "correct" if fixable:
            target = draw(st.sampled_from(fixable)).id
            _tell(told, at, Correction(target=target, level_ml=draw(st.integers(0, 2000))))
        case "retime" if fixable:
            _tell(told, at, Correction(target=draw(st.sampled_from(fixable)).id, at=at))
        case "withdraw" if told:
            _tell(told, at, Withdrawal(target=draw(st.sampled_from(told)).id))
        case _:
            _tell(told, at, Line(level_ml=level_ml, closing=draw(st.integers(0, 9)) == 0))


def _tell(told: list[Entry], at: datetime, payload: Payload) -> None:
    entered = BEGINNINGS[1] + timedelta(days=30, minutes=len(told))
    told.append(
        Entry(
            drain="c" * 16,
            position=len(told) + 1,
            at=at,
            entered=entered,
            who="rn-1",
            message=f"m{len(told)}",
            payload=payload,
        )
    )


@st.composite
def lines(draw: st.DrawFn, most: int = 14) -> tuple[tuple[int, int], ...]:
    """Lines as (minute, mL since the line before), at odd times: some minutes apart, some hours."""
    steps = draw(
        st.lists(
            st.tuples(
                st.one_of(st.integers(1, 80), st.sampled_from([15, 30, 45, 60, 60, 60, 75, 76, 120, 240])),
                st.one_of(st.integers(0, 300), st.sampled_from([0, 100, 200, 201, 500, 501])),
            ),
            min_size=1,
            max_size=most,
        )
    )
    minute, placed = 0, [(0, 0)]
    for wait, amount in steps:
        minute += wait
        placed.append((minute, amount))
    return tuple(placed)


def shuffled(told: Sequence[Entry]) -> st.SearchStrategy[list[Entry]]:
    """The same entries in any order."""
    return st.permutations(list(told))
