"""Twenty thousand mangled messages, the same ones every time: half are read, half go all the way."""

from __future__ import annotations

import os
from collections.abc import Callable
from random import Random

import pytest

from tests.fuzz import wards
from tests.fuzz.__main__ import tallies
from tests.fuzz.mangling import WAYS, mangled, messages
from tests.fuzz.wards import MESSAGES_OF_A_WARD, Tally, played


@pytest.mark.made_up
def test_20_000_mangled_messages_break_nothing_and_the_charts_add_up() -> None:
    whole = Tally()
    for tally in tallies(1_000_000, 20_000, os.cpu_count() or 1, share=0.5):
        whole.add(tally)
    assert whole.found == []
    assert whole.outcomes.total() == 20_000
    assert all(whole.outcomes[outcome] > 200 for outcome in ("recorded", "question", "told", "read only"))


def test_a_ward_is_the_same_whenever_it_is_played() -> None:
    assert played(3) == played(3)
    assert played(3).outcomes.total() == MESSAGES_OF_A_WARD


@pytest.mark.parametrize("way", WAYS, ids=lambda way: way.__name__)
def test_every_way_of_mangling_takes_any_text(way: Callable[[str, Random], str]) -> None:
    random = Random(1)
    for text in ("", " ", "1", *messages()[::20]):
        assert isinstance(way(text, random), str)


def test_most_messages_are_mangled() -> None:
    random = Random(2)
    told = [mangled(random) for _ in range(500)]
    assert sum(text in messages() for text in told) < 200


def test_an_exception_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    def breaks(*_: object) -> object:
        raise RuntimeError("broken")

    monkeypatch.setattr(wards, "handle", breaks)
    tally = played(4)
    assert tally.outcomes["FOUND"] > 10
    assert "RuntimeError: broken" in tally.found[0].what


def test_a_volume_that_is_charted_twice_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    chart = wards.Ward._chart

    def twice(self: wards.Ward, answer: dict[str, object]) -> None:
        chart(self, answer)
        chart(self, answer)

    monkeypatch.setattr(wards.Ward, "_chart", twice)
    found = [each.what for number in range(12) for each in played(number).found]
    assert any("the nurses' chart holds" in what for what in found)


def test_a_level_that_is_not_read_back_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(wards, "ml", lambda level: f"{level + 1} mL, wrongly")
    assert any("not read back" in each.what for number in range(8) for each in played(number).found)
