"""Exported ledgers go into another database, of either engine, and back: the same lines, the same chains."""

from __future__ import annotations

import gzip
import json
import re
from datetime import UTC, datetime
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import select, text

from bot.cli import penline
from bot.cli.embedded import Ward
from bot.cli.player import sent_of, unit_of
from bot.cli.transcript import read
from bot.intake import Incoming, handle
from bot.intake.respond import deployment
from bot.store import open_store
from bot.store.tables import entries
from bot.unit import demo_unit
from tests.databases import new_database

ROOT = Path(__file__).parents[2]
NOW = datetime(2026, 3, 4, 22, tzinfo=UTC)
UNIT = ROOT / "bot" / "demo.toml"
STORIES = [
    path for path in sorted((ROOT / "transcripts_demo").glob("*.txt")) if "Ward:" not in path.read_text()
]


def says(*args: object) -> tuple[int, str]:
    """Exit code and output of a command."""
    run = CliRunner().invoke(penline, [str(each) for each in args])
    return run.exit_code, run.output


def played(url: str, *stories: Path) -> None:
    """Play these stories on one ledger, one after the other."""
    for path in stories:
        story = read(path.read_text("utf-8"))
        ward = Ward(unit_of(story, path.parent), url, session=path.stem)
        for turn in story.turns:
            ward.answers(sent_of(turn, ward.unit.zone))
        ward.close()


def exported(url: str, file: Path) -> bytes:
    """The unit's ledgers as JSON lines."""
    file.unlink(missing_ok=True)
    code, said = says("export", "--jsonl", "--database", url, "--unit", UNIT, "--out", file)
    assert code == 0, said
    return file.read_bytes()


def imported(url: str, file: Path) -> tuple[int, str]:
    """What becomes of importing the file."""
    return says("import", "--database", url, "--unit", UNIT, file)


def chains(url: str) -> list[tuple[object, ...]]:
    """Every entry as it is stored, with its link."""
    store = open_store(url)
    with store.connection() as connection:
        found = connection.execute(select(entries).order_by(entries.c.drain, entries.c.position))
        rows = [tuple(row) for row in found]
    store.close()
    return rows


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A SQLite file with the ledgers of all the stories of the demo ward."""
    file = tmp_path_factory.mktemp("told") / "ward.sqlite"
    played(f"sqlite:///{file}", *STORIES)
    return file


def test_the_ledgers_go_to_postgres_and_back_without_loss(told: Path, postgres: str, tmp_path: Path) -> None:
    first, other, last = f"sqlite:///{told}", new_database(postgres), f"sqlite:///{tmp_path}/last.sqlite"
    lines = exported(first, tmp_path / "first.jsonl")
    assert lines.count(b"\n") > 100
    count = len(lines.splitlines()) - 2
    assert imported(other, tmp_path / "first.jsonl") == (0, f"{count} entries imported.\n")
    assert exported(other, tmp_path / "other.jsonl") == lines
    assert imported(last, tmp_path / "other.jsonl")[0] == 0
    assert exported(last, tmp_path / "last.jsonl") == lines
    assert chains(first) == chains(other) == chains(last)
    for url in (other, last):
        assert says("verify", "--database", url) == (0, "Every entry is as it was recorded.\n")


def test_everything_goes_to_postgres_and_back_by_backup(told: Path, postgres: str, tmp_path: Path) -> None:
    first, other, last = f"sqlite:///{told}", new_database(postgres), f"sqlite:///{tmp_path}/last.sqlite"
    copies = [tmp_path / f"{name}.jsonl" for name in ("first", "other", "last")]
    assert says("backup", "--database", first, copies[0])[0] == 0
    for url, copy, again in ((other, copies[0], copies[1]), (last, copies[1], copies[2])):
        assert says("restore", "--database", url, copy)[0] == 0
        assert says("backup", "--database", url, again)[0] == 0
        assert says("verify", "--database", url)[0] == 0
    assert copies[0].read_bytes() == copies[1].read_bytes() == copies[2].read_bytes()


@pytest.mark.parametrize("path", STORIES, ids=lambda path: path.stem)
def test_a_ledger_that_moved_answers_as_before(path: Path, tmp_path: Path) -> None:
    here, there = (f"sqlite:///{tmp_path}/{name}.sqlite" for name in ("here", "there"))
    played(here, path)
    exported(here, tmp_path / "lines.jsonl")
    assert imported(there, tmp_path / "lines.jsonl")[0] == 0
    last = read(path.read_text("utf-8")).turns[-1].arrived
    at = last.replace(tzinfo=demo_unit().zone).astimezone(UTC)
    told = []
    for url in (here, there):
        store = open_store(url)
        ward = deployment((demo_unit(),), store)
        told.append([asked(ward, text_, number, at) for number, text_ in enumerate(QUERIES)])
        store.close()
    assert told[0] == told[1]


QUERIES = ("beds", "bed 7 total 24h", "bed 12 volumes today", "bed 12 history", "bed 7 checks", "bed 3 trend")


def asked(ward: object, words: str, number: int, at: object) -> str:
    """The reply to a query of Carla's, without what only a backup keeps: questions that are open."""
    incoming = Incoming(id=f"ask-{number}", sender="carla", text=words, arrived=at)  # type: ignore[arg-type]
    reply: str = json.loads(handle(incoming, ward).answer)["reply"]  # type: ignore[arg-type]
    reply = re.sub(r"\d+ open questions?", "nothing open", reply)
    return "\n".join(
        line for line in reply.split("\n") if "nconfirmed" not in line and "Not recorded" not in line
    )


def test_a_message_that_moved_with_its_ledger_is_never_recorded_again(told: Path, tmp_path: Path) -> None:
    lines, url = exported(f"sqlite:///{told}", tmp_path / "l.jsonl"), f"sqlite:///{tmp_path}/w.sqlite"
    imported(url, tmp_path / "l.jsonl")
    entry = json.loads(lines.splitlines()[1])
    store = open_store(url)
    resent = Incoming(id=entry["message"], sender="amy", text="bed 12 mark 900", arrived=NOW)
    assert handle(resent, deployment((demo_unit(),), store)).kept == "other"
    store.close()


def test_ledgers_are_imported_whole_or_not_at_all(told: Path, tmp_path: Path) -> None:
    whole = exported(f"sqlite:///{told}", tmp_path / "l.jsonl").splitlines(keepends=True)
    lines = whole[1:-1]
    packed = gzip.compress(b"".join(whole))
    for number, wrong in enumerate(
        (
            [*lines[:40], *lines[41:]], lines[1:], [*lines, lines[-1]], [*lines, b"{}\n"],
            [lines[1], lines[0]], whole[:-1], whole[:40],
            [*whole[:40], *whole[41:]], [*whole, lines[-1]], [], [packed],
            [b"SQLite format 3\0"], [*whole[:40], whole[40][:30]], [*lines, b"\xff\n"],
            [lines[0].replace(b'"who":"', b'"who":"\\ud800')],
        )
    ):  # fmt: skip
        url, file = f"sqlite:///{tmp_path}/{number}.sqlite", tmp_path / f"{number}.jsonl"
        file.write_bytes(b"".join(wrong))
        code, said = imported(url, file)
        assert (code, said.startswith("Error: nothing was imported: ")) == (1, True)
        assert chains(url) == []


def test_an_export_of_before_there_were_ends_is_imported_with_a_warning(told: Path, tmp_path: Path) -> None:
    url, file = f"sqlite:///{tmp_path}/w.sqlite", tmp_path / "old.jsonl"
    lines = exported(f"sqlite:///{told}", tmp_path / "l.jsonl").splitlines(keepends=True)[1:-1]
    file.write_bytes(b"".join(lines))
    code, said = imported(url, file)
    assert (code, chains(url)) == (0, chains(f"sqlite:///{told}"))
    assert said == (
        "The file is of an older version, without an end: whether it was cut cannot be told.\n"
        f"{len(lines)} entries imported.\n"
    )


def test_ledgers_that_are_here_already_are_not_imported_again(told: Path, tmp_path: Path) -> None:
    url = f"sqlite:///{told}"
    before = chains(url)
    exported(url, tmp_path / "l.jsonl")
    assert imported(url, tmp_path / "l.jsonl")[0] == 1
    assert chains(url) == before


def test_two_units_may_be_imported_into_one_database(told: Path, tmp_path: Path) -> None:
    url, other = f"sqlite:///{tmp_path}/w.sqlite", tmp_path / "other.toml"
    exported(f"sqlite:///{told}", tmp_path / "l.jsonl")
    other.write_text('name = "Other"\nid = "other"\nzone = "UTC"\nbeds = "1-24"\npeople = []\n')

    code, said = says("import", "--database", url, "--unit", UNIT, "--unit", other, tmp_path / "l.jsonl")
    assert (code, "--in" in said) == (2, True)
    args = ("import", "--database", url, "--unit", UNIT, "--unit", other, "--unit-id", "other")
    assert says(*args, tmp_path / "l.jsonl")[0] == 0
    store = open_store(url)
    with store.connection() as connection:
        assert list(connection.scalars(text("SELECT DISTINCT unit FROM drains"))) == ["other"]
    store.close()
