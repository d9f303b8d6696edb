"""Nothing fails at any number of connections, and what is too much is told so, quickly."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.durability.nest import Nest, Server
from tests.load.__main__ import served
from tests.load.generator import Seen, load
from tests.load.ward import fill, this_minute

pytestmark = pytest.mark.durability

QUICKLY_S = 2.0


@pytest.fixture(scope="module")
def nest() -> Iterator[Nest]:
    """Where servers hatch."""
    nest = Nest()
    yield nest
    nest.close()


def hospital(nest: Nest, folder: Path, **settings: str) -> Server:
    """A server of a hospital with 1,000 entries."""
    url = f"sqlite:///{folder}/hospital.sqlite"
    fill(url, 1000, this_minute())
    return served(nest, url, folder, **settings)


def test_every_message_of_1_16_and_64_connections_is_answered(nest: Nest, tmp_path: Path) -> None:
    server = hospital(nest, tmp_path)
    now = this_minute()
    seen = [load(server.port, count, run=str(count), now=now, most=2 * count) for count in (1, 16, 64)]
    server.kill()
    assert [one.statuses for one in seen] == [Counter({200: 2 * count}) for count in (1, 16, 64)]


@pytest.mark.parametrize(
    ("setting", "most"),
    [({"PENLINE_PER_SECOND": "20"}, 400), ({"PENLINE_SENDER_PER_MINUTE": "3"}, 100)],
    ids=["of everyone", "of one sender"],
)
def test_too_many_messages_are_429_with_retry_after_and_quickly(
    nest: Nest, tmp_path: Path, setting: dict[str, str], most: int
) -> None:
    server = hospital(nest, tmp_path, **setting)
    seen = load(server.port, 64, run="much", now=this_minute(), most=most)
    server.kill()
    assert set(seen.statuses) == {200, 429}
    assert refused_at_once(seen)


def test_more_connections_than_can_be_answered_are_told_so_in_seconds(nest: Nest, tmp_path: Path) -> None:
    server = hospital(nest, tmp_path)
    seen = load(server.port, 600, run="crowd", now=this_minute(), seconds=6)
    server.kill()
    assert set(seen.statuses) == {200, 503}
    assert seen.statuses[200] > 30  # a crowd that comes again at once keeps not everyone out
    assert seen.bare == 0
    assert max(seen.taken_s) < QUICKLY_S * 5


def refused_at_once(seen: Seen) -> bool:
    """Whether nobody waited long, and each refusal says when to come again."""
    return seen.bare == 0 and max(seen.taken_s) < QUICKLY_S * 5 and seen.percentile_ms(50) < 1000 * QUICKLY_S
