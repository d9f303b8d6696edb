"""Two `penline serve` on one database: what is sent to both is kept once.

On PostgreSQL in a role that only adds rows, on SQLite on one file.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from click.testing import CliRunner
from sqlalchemy import text

from bot.cli import penline
from bot.store import Store
from bot.store.connect import connect
from tests.databases import new_database, server_role
from tests.web.client import SECRET
from tests.web.post import posted
from tests.web.served import Server, served

pytestmark = pytest.mark.real_time

UNIT = """
name = "Ward 4"
zone = "America/New_York"
beds = "1-24"
people = [{ id = "amy", name = "Amy", role = "nurse" }]
"""


@dataclass(frozen=True, slots=True)
class Pair:
    """Two servers of one database."""

    servers: tuple[Server, Server]
    url: str

    def count(self, table: str) -> int:
        """How many rows a table has, or how many of them there are WHERE something holds."""
        store = Store(connect(self.url, reading=True))
        with store.connection() as connection:
            found: int = connection.execute(text(f"SELECT count(*) FROM {table}")).scalar_one()
        store.close()
        return found

    def post(self, number: int, message_id: str, said: str) -> tuple[int, str]:
        """Status and body that one of the two gives."""
        body = {"sender": "amy", "text": said}
        return posted(self.servers[number % 2].url, SECRET, {"id": message_id, "body": body})


@pytest.fixture(scope="module", params=["file", "postgres"])
def pair(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Pair]:
    """Both servers, for all of these."""
    folders = [tmp_path_factory.mktemp(name) for name in ("one", "other")]
    url = f"sqlite:///{folders[0]}/ward.sqlite"
    if request.param == "postgres":
        owner = new_database(request.getfixturevalue("postgres"))
        assert CliRunner().invoke(penline, ["migrate", "--database", owner]).exit_code == 0
        url = server_role(owner)
    unit = folders[0] / "ward.toml"
    unit.write_text(UNIT)
    limits = {"PENLINE_DATABASE_URL": url, "PENLINE_THREADS": "16"}
    with served(folders[0], unit, **limits) as one, served(folders[1], unit, **limits) as other:
        yield Pair((one, other), url)


def test_security_13_one_id_sent_to_both_by_16_threads_is_one_row(pair: Pair) -> None:
    with ThreadPoolExecutor(16) as pool:
        answers = list(pool.map(lambda number: pair.post(number, "same", "bed 3 mark 840"), range(32)))
    assert {status for status, _ in answers} == {200}
    assert len({body for _, body in answers}) == 1
    assert pair.count("messages WHERE id = 'same'") == 1
    assert pair.count("entries WHERE message = 'same' AND kind = 'mark'") == 1


def test_160_lines_sent_to_both_by_16_threads_add_up(pair: Pair) -> None:
    start, zone = datetime.now(UTC) - timedelta(minutes=161), ZoneInfo("America/New_York")

    def send(number: int) -> int:
        at = (start + timedelta(minutes=number)).astimezone(zone)
        return pair.post(number, f"many-{number}", f"bed 7 mark {100 + 2 * number} at {at:%H%M}")[0]

    with ThreadPoolExecutor(16) as pool:
        assert set(pool.map(send, sorted(range(160), key=lambda number: number * 37 % 160))) == {200}
    for number in range(2):
        status, body = pair.post(number, f"total-{number}", "bed 7 total since placement")
        assert status == 200
        assert "318 mL" in json.loads(body)["reply"]
    assert CliRunner().invoke(penline, ["verify", "--database", pair.url]).exit_code == 0


def test_a_drain_that_is_opened_at_both_at_once_is_one_drain(pair: Pair) -> None:
    def both(bed: int) -> set[int]:
        with ThreadPoolExecutor(2) as pool:
            told = pool.map(
                lambda n: pair.post(n, f"open-{bed}-{n}", f"bed {bed} mark {400 + n}")[0], range(2)
            )
            return set(told)

    before = pair.count("drains")
    assert set().union(*map(both, range(10, 20))) == {200}
    assert pair.count("drains") == before + 10


def test_a_change_of_the_list_counts_at_both_at_once(pair: Pair, tmp_path: Path) -> None:
    unit = tmp_path / "ward.toml"
    unit.write_text(UNIT)
    body = {"sender": "zoe", "text": "help"}
    refused = posted(pair.servers[0].url, SECRET, {"id": "zoe-1", "body": body})
    assert json.loads(refused[1])["status"] == "refused"
    args = ["people", "--database", pair.url, "--unit", str(unit), "enrol", "zoe"]
    run = CliRunner().invoke(penline, [*args, "--name", "Zoe", "--role", "nurse"])
    assert run.exit_code == 0, run.output
    for number, server in enumerate(pair.servers, start=2):
        taken = posted(server.url, SECRET, {"id": f"zoe-{number}", "body": body})
        assert json.loads(taken[1])["status"] == "told"
