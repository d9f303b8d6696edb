"""Rates from irregular marks, against a reckoning minute by minute."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from itertools import accumulate, pairwise

from hypothesis import given
from hypothesis import strategies as st

from bot.engine.rates import HOUR, higher, highest_amount, highest_hour, sustained
from bot.engine.series import Point, Series, series_of
from tests.engine.sheet import Sheet
from tests.engine.strategies import lines

_BEGIN = datetime(2026, 3, 4, 12, tzinfo=UTC)
Lines = tuple[tuple[int, int], ...]


def series(told: Lines) -> Series:
    totals = accumulate(amount for _, amount in told)
    return tuple(
        Point(_BEGIN + timedelta(minutes=minute), total, 0)
        for (minute, _), total in zip(told, totals, strict=True)
    )


def totals(told: Lines) -> dict[int, int]:
    return dict(zip((m for m, _ in told), accumulate(a for _, a in told), strict=True))


def surely_drained(told: Lines, begin: int, end: int) -> int:
    """What surely drained between two minutes: from the first line after one to the last before the other."""
    known = totals(told)
    within = [minute for minute in known if begin <= minute <= end]
    return known[within[-1]] - known[within[0]] if within else 0


def newest(told: Lines) -> list[int]:
    last = told[-1][0]
    return [minute for minute, _ in told if last - minute < 45]


def spans(told: Lines) -> list[tuple[int, int, int]]:
    """Every stretch that ends with one of the newest lines: from, to, mL."""
    known = totals(told)
    return [(a, b, known[b] - known[a]) for b in newest(told) for a in known if a < b]


@given(lines())
def test_the_amount_within_60_min_is_the_most_that_any_60_minutes_surely_held(told: Lines) -> None:
    sure = max(surely_drained(told, minute - 60, minute) for minute in newest(told))
    found = highest_amount(series(told), timedelta(hours=1))
    assert (found.value if found else 0) >= sure
    if found and found.end - found.begin <= timedelta(hours=1):
        assert found.value == sure


@given(lines(), st.randoms(use_true_random=False), st.sampled_from([60, 24 * 60]))
def test_what_is_called_proven_is_so_however_it_drained_between_the_lines(
    told: Lines, random: object, window: int
) -> None:
    """An average or an amount within the window: some window did hold that much, for any way of draining."""
    found = highest_amount(series(told), timedelta(minutes=window))
    if found is None or (not found.average and found.end - found.begin > timedelta(minutes=window)):
        return
    drained = _drained_somehow(told, random)
    sums = [0, *accumulate(drained)]
    length = len(drained)
    begin, end = (int((moment - _BEGIN).total_seconds() // 60) for moment in (found.begin, found.end))
    held = max(sums[min(start + window, length)] - sums[start] for start in range(begin, max(begin + 1, end)))
    assert held >= found.value


def _drained_somehow(told: Lines, random: object) -> list[int]:
    """The mL of each minute, one of the many ways that fit the lines."""
    drained = [0] * (told[-1][0] + 1)
    for (before, _), (minute, amount) in pairwise(told):
        for _ in range(amount):
            drained[random.randrange(before, minute)] += 1  # type: ignore[attr-defined]
    return drained


@given(lines())
def test_the_highest_rate_is_the_highest_of_all_stretches_that_count(told: Lines) -> None:
    candidates = [0.0]
    for begin, end, volume in spans(told):
        minutes = end - begin
        if minutes <= 60:
            candidates.append(volume)
        if 45 <= minutes <= 75:
            candidates.append(volume * 60 / minutes)
        nearest_over = max((a for a, b, _ in spans(told) if b == end and end - a > 60), default=None)
        if minutes > 75 and begin == nearest_over:
            candidates.append(volume / math.ceil(minutes / 60))
    found = higher(highest_hour(series(told)), highest_amount(series(told), HOUR))
    assert math.isclose(found.value if found else 0, max(candidates))


@given(lines(), st.integers(2, 4), st.sampled_from([50, 100, 200]), st.booleans())
def test_hours_in_a_row_are_found_when_and_only_when_lines_show_them(
    told: Lines, hours: int, limit: int, longer: bool
) -> None:
    def chains(end: int, left: int) -> Sequence[tuple[int, ...]]:
        if not left:
            return [(end,)]
        known = totals(told)
        return [
            (*chain, end)
            for begin in known
            if 45 <= end - begin <= 75 and (known[end] - known[begin]) * 60 / (end - begin) > limit
            for chain in chains(begin, left - 1)
        ]

    lengths = (hours, hours + 1) if longer else (hours,)
    every = [chain for count in lengths for end in newest(told) for chain in chains(end, count)]
    met = [chain for chain in every if not longer or chain[-1] - chain[0] > hours * 60]
    found = sustained(series(told), hours, lambda rate: rate > limit, longer=longer)
    assert (found is not None) == bool(met)
    if found:
        assert found.value > limit


@given(lines(), lines())
def test_the_sum_of_two_drains_is_known_only_where_both_have_a_line(left: Lines, right: Lines) -> None:
    sheets = Sheet(drain="1" * 16), Sheet(drain="2" * 16)
    for sheet, told in zip(sheets, (left, right), strict=True):
        for minute, total in totals(told).items():
            sheet.mark(_BEGIN + timedelta(minutes=minute), total)
    together = series_of([sheet.ledger for sheet in sheets])
    for point in together:
        minute = int((point.at - _BEGIN).total_seconds() // 60)
        shares = [max(m for m in totals(told) if m <= minute) for told in (left, right)]
        assert all(minute - share <= 15 for share in shares)
        expected = [totals(told)[share] for told, share in zip((left, right), shares, strict=True)]
        assert point.total_ml == sum(expected)
    same = {minute for minute, _ in left} & {minute for minute, _ in right}
    assert bool(together) or not same
