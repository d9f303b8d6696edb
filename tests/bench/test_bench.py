"""The benchmark runs, drives every side alike, and prints its ratios; how fast is not asserted."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.bench import growth
from tests.bench.path import SIDES, Size, compare
from tests.bench.readers import LEVELS, TIMES, our_level, our_time, score

pytestmark = pytest.mark.durability


@pytest.mark.parametrize("servers", [1, 2])
def test_the_whole_path_is_driven_beside_the_floor_and_a_constant_answer(
    servers: int, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    urls = {side: f"sqlite:///{tmp_path}/{side}.sqlite" for side in SIDES}
    compare(tmp_path, urls, Size(entries=200, messages=10, rounds=2, connections=(1, 4), servers=servers))
    told = capsys.readouterr().out
    assert [line.split()[0] for line in told.splitlines()] == [
        "1",
        "messages/s",
        *SIDES,
        "4",
        "messages/s",
        *SIDES,
    ]
    assert told.count("{200: 20}") == 2 * len(SIDES)


def test_what_a_reply_costs_is_told_for_hospitals_and_drains_of_two_sizes(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    growth.of_a_drain(tmp_path, 5, 50)
    growth.of_memory(tmp_path, 20)
    growth.of_a_start(tmp_path, times=1)
    told = capsys.readouterr().out
    assert re.search(r"a drain with 5 entries [\d.]+ ms, with 50 [\d.]+ ms: [\d.]+ ", told)
    assert re.search(r"memory after each tenth of 20 messages, MB:( \d+){11}\n", told)
    assert re.search(r"from a start to the first answer: [\d.]+ s", told)


def test_of_the_phrases_none_is_silently_read_wrongly_by_ours() -> None:
    assert score(LEVELS, our_level).wrong == 0
    assert score(TIMES, our_time).wrong == 0


def test_what_is_read_wrongly_or_not_at_all_is_counted_as_such() -> None:
    found = score({"a": 1, "b": 2, "c": 3, "d": 4}, {"a": 1, "b": 1, "c": None}.__getitem__)
    assert (found.right, found.wrong, found.unread) == (1, 1, 2)
