"""A ledger taken up where it was left is what its entries fold to, whatever was asked about before."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.engine.entries import Entry, Line
from bot.engine.ledger import fold
from bot.engine.resumed import resumed
from tests.engine.strategies import BEGINNINGS, entries
from tests.engine.test_going_on import told_in_turn


@given(entries(), st.lists(st.integers(0, 24), max_size=6))
def test_any_beginning_of_a_ledger_is_resumed_after_any_other(
    told: tuple[Entry, ...], counts: list[int]
) -> None:
    for count in counts:
        ledger, whole = resumed(told[:count], 2000), fold(told[:count])
        assert ledger == whole
        assert dict(ledger._held) == dict(whole._held)


@given(entries(rising=True))
def test_a_ledger_whose_past_is_another_is_folded_anew(told: tuple[Entry, ...]) -> None:
    resumed(told, 2000)
    other = (replace(told[0], payload=Line(level_ml=1)), *told[1:])
    assert resumed(other, 2000) == fold(other)
    assert resumed(told, 2000) == fold(told)


def test_entries_that_are_read_again_are_known_for_the_very_same(monkeypatch: pytest.MonkeyPatch) -> None:
    told = told_in_turn([(60, 10)] * 8)
    resumed(told[:5], 2000).with_entry(replace(told[5]))
    resumed(told[:6], 2000)
    monkeypatch.setattr(Entry, "__eq__", lambda _self, _other: pytest.fail("compared one by one"))
    assert len(resumed(told[:6], 2000).entries) == 6
    assert len(resumed(told, 2000).entries) == 8


def test_the_capacity_is_that_of_whoever_asks() -> None:
    entry = Entry(
        drain="e" * 16,
        position=1,
        at=BEGINNINGS[0],
        entered=BEGINNINGS[0],
        who="rn-1",
        message="m",
        payload=Line(level_ml=5),
    )
    assert [resumed((entry,), capacity).capacity_ml for capacity in (2000, 1000, 2000)] == [2000, 1000, 2000]
