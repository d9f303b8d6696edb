"""A backup holds everything, and goes back into an empty database of either engine."""

from __future__ import annotations

import gzip
import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import text

from bot.cli import penline
from bot.engine.entries import Line, Withdrawal
from bot.store import LedgerError, Notice, Question, Store, open_store
from bot.store.connect import connect
from bot.store.copying import lines_of, read_in, row_count
from bot.store.notices import Attempt
from bot.store.people import PeopleEvent
from bot.store.verify import entry_flaws, flaws
from tests.databases import new_database
from tests.store.hands import NOON, at, claimed


def fill(store: Store) -> None:
    """Rows in every table."""
    with store.turn() as book:
        drain = claimed(book).open_drain("12", "left")
        first = book.append(drain, at(0), Line(level_ml=840, accepted=("jump",)))
        book.append(drain, at(1), Withdrawal(target=first.id))
        asked = book.ask(
            Question(
                unit="ward", sender="amy", bed="12", drain=drain, slot="at", asked_at=NOON, message="m1",
                text="When?", said_json="{}",
            )
        )  # fmt: skip
        book.settle(asked.id, "answered")
        book.queue(
            Notice(unit="ward", bed="12", drain=drain, code="full", text="Full", queued_at=NOON, message="m1")
        )
        book.note_attempt(Attempt(notice=1, person="carla", at=NOON, outcome="delivered", status=204))
        book.acknowledge("12")
        book.show("full:bed", "amy", NOON)
        book.note_person(
            PeopleEvent(
                unit="ward", person="zoe", event="enrolled", name="Zo\u00eb", role="nurse",
                until=at(60), at=NOON, by="x",
            )
        )  # fmt: skip


def lines(store: Store) -> list[str]:
    """The backup of a store."""
    with store.connection() as connection:
        return list(lines_of(connection))


@pytest.fixture
def other(request: pytest.FixtureRequest, store: Store, tmp_path: Path) -> Iterator[Store]:
    """An empty database of the other engine."""
    if store.engine.dialect.name == "postgresql":
        other = open_store(f"sqlite:///{tmp_path}/other.sqlite")
    else:
        server: str = request.getfixturevalue("postgres")
        other = open_store(new_database(server))
    yield other
    other.close()


def test_a_ledger_moves_to_the_other_engine_without_loss(store: Store, other: Store) -> None:
    fill(store)
    backup = lines(store)
    with other.connection() as connection:
        assert read_in(connection, backup) == len(backup) - 2
    assert lines(other) == backup
    with other.connection() as connection:
        assert list(entry_flaws(connection)) == []


def test_the_ledger_goes_on_after_a_move(store: Store, other: Store) -> None:
    fill(store)
    with other.connection() as connection:
        read_in(connection, lines(store))
    with other.turn() as book:
        claimed(book, "m2")
        (drain,) = book.drains_of("12")
        assert book.append(drain, at(2), Line(level_ml=900)).position == 3
        assert book.open_drain("14", None) != drain


def test_a_database_that_is_not_empty_is_left_alone(store: Store) -> None:
    fill(store)
    backup = lines(store)
    with pytest.raises(LedgerError, match="not empty"), store.connection() as connection:
        read_in(connection, backup)
    assert lines(store) == backup


@pytest.fixture
def backup() -> list[str]:
    """A good backup."""
    store = open_store()
    fill(store)
    return lines(store)


@pytest.mark.parametrize(
    ("place", "line"),
    [
        (0, '{"schema":"0000"}'),
        (0, "{}"),
        (1, '{"table":"beds","row":{}}'),
        (1, '{"table":"messages","row":{}}'),
        (1, '{"schema":"0001"}'),
        (1, "["),
        (-1, '{"rows":1}'),
        (-1, None),
        (2, None),
    ],
)
def test_a_file_that_was_cut_or_altered_is_refused_whole(
    backup: list[str], place: int, line: str | None
) -> None:
    if line is None:
        del backup[place]
    else:
        backup[place] = line
    store = open_store()
    with pytest.raises(LedgerError), store.connection() as connection:
        read_in(connection, backup)
    with store.connection() as connection:
        assert connection.scalar(text("SELECT count(*) FROM messages")) == 0


def test_a_backup_of_before_messages_were_sealed_is_read_and_sealed(
    backup: list[str], tmp_path: Path
) -> None:
    rows = [line for line in backup[1:-1] if '"table":"seals"' not in line]
    store = open_store(f"sqlite:///{tmp_path}/ward.sqlite")
    with store.connection() as connection:
        assert read_in(connection, ['{"schema":"0002"}', *rows, f'{{"rows":{len(rows)}}}']) == len(rows)
        assert tuple(flaws(connection)) == ()
    assert lines(store) == backup
    store.close()


def test_a_backup_whose_seals_were_taken_out_is_refused(backup: list[str], tmp_path: Path) -> None:
    rows = [line for line in backup[1:-1] if '"table":"seals"' not in line]
    file = tmp_path / "backup.jsonl"
    file.write_text("\n".join([backup[0], *rows, f'{{"rows":{len(rows)}}}']))
    code, said = penline_says("restore", "--database", f"sqlite:///{tmp_path}/ward.sqlite", str(file))
    assert (code, said) == (1, "Error: nothing was restored: m1: the message has no seal\n")


def test_lines_after_the_end_are_refused(backup: list[str]) -> None:
    store = open_store()
    with pytest.raises(LedgerError, match="after the end"), store.connection() as connection:
        read_in(connection, [*backup, backup[-1]])


def penline_says(*args: str) -> tuple[int, str]:
    """Exit code and output of a command."""
    run = CliRunner().invoke(penline, args)
    return run.exit_code, run.output


def test_the_commands_back_up_and_restore(tmp_path: Path) -> None:
    url, file = f"sqlite:///{tmp_path}/ward.sqlite", tmp_path / "backup.jsonl"
    store = open_store(url)
    fill(store)
    assert penline_says("backup", "--database", url, str(file)) == (0, f"Everything is in {file}.\n")
    assert file.stat().st_mode & 0o777 == 0o600
    assert penline_says("backup", "--database", url, str(file))[0] == 2
    other = f"sqlite:///{tmp_path}/other.sqlite"
    code, said = penline_says("restore", "--database", other, str(file))
    assert (code, said) == (0, "14 rows restored, every entry as it was recorded.\n")
    assert penline_says("restore", "--database", other, str(file))[0] == 1
    assert penline_says("verify", "--database", other)[0] == 0
    store.close()


def test_an_altered_entry_is_not_restored(tmp_path: Path, backup: list[str]) -> None:
    file, url = tmp_path / "backup.jsonl", f"sqlite:///{tmp_path}/ward.sqlite"
    file.write_text(
        "\n".join(
            line.replace(":840", ":841").replace('\\"level_ml\\":840', '\\"level_ml\\":841')
            for line in backup
        )
    )
    code, said = penline_says("restore", "--database", url, str(file))
    assert code == 1
    assert "is not what was recorded" in said
    store = open_store(url)
    with store.connection() as connection:
        assert connection.scalar(text("SELECT count(*) FROM entries")) == 0
    store.close()


@pytest.mark.parametrize(
    ("found", "said"),
    [
        (gzip.compress(b'{"schema":"0003"}'), "the file is not UTF-8 text"),
        (b'{"schema":"0003"}\n\xff\n', "the file is not UTF-8 text"),
        (b"SQLite format 3\0", "line 1: is not JSON"),
        (b"", "line 1: is not JSON"),
        (b"[" * 100_000, "line 1: is not JSON"),
        (b'{"schema":"0003"}\n', "the file ends too early"),
        (b'{"schema":"0009"}\n', "line 1: is a backup of step 0009, and this program knows 0002 and 0003"),
    ],
    ids=["packed", "not UTF-8", "a database", "nothing", "nested", "cut", "of another step"],
)  # fmt: skip
def test_a_file_that_is_no_backup_is_told_as_that_and_nothing_is_written(
    tmp_path: Path, found: bytes, said: str
) -> None:
    file, url = tmp_path / "backup.jsonl", f"sqlite:///{tmp_path}/ward.sqlite"
    file.write_bytes(found)
    assert penline_says("restore", "--database", url, str(file)) == (
        1, f"Error: nothing was restored: {said}\n",
    )  # fmt: skip
    store = open_store(url)
    with store.connection() as connection:
        assert row_count(connection) == 0
    store.close()


CELLS = [{}, [], 10**30, 1.5, True, "\ud800", "\0", None, "x" * 200]


@pytest.mark.parametrize("cell", CELLS, ids=lambda cell: repr(cell)[:9])
def test_a_row_with_something_else_in_a_column_is_refused_or_found(
    tmp_path: Path, backup: list[str], cell: object
) -> None:
    file, url = tmp_path / "backup.jsonl", f"sqlite:///{tmp_path}/ward.sqlite"
    place = next(number for number, line in enumerate(backup) if '"table":"messages"' in line)
    row = json.loads(backup[place])
    for column in ("sender", "seq", "arrived", "digest"):
        changed = {**row, "row": {**row["row"], column: cell}}
        file.write_text("\n".join([*backup[:place], json.dumps(changed), *backup[place + 1 :]]))
        code, said = penline_says("restore", "--database", url, str(file))
        assert (code, said.startswith("Error: nothing was restored: ")) == (1, True), (column, said)


@pytest.mark.parametrize("command", ["verify", "backup", "migrate", "restore"])
def test_a_file_that_is_no_database_is_told_as_that(tmp_path: Path, command: str) -> None:
    file, lines = tmp_path / "ward.sqlite", tmp_path / "backup.jsonl"
    file.write_bytes(b"no database" * 999)
    more = {"backup": [str(lines)], "restore": [__file__]}.get(command, [])
    code, said = penline_says(command, "--database", f"sqlite:///{file}", *more)
    assert (code, said) == (
        1, "Error: the database cannot be used: the file is damaged, or is no database\n"
    )  # fmt: skip
    assert sorted(each.name for each in tmp_path.iterdir()) == ["ward.sqlite"]


@pytest.mark.parametrize("command", ["verify", "backup"])
def test_a_database_that_is_not_there_is_not_made_by_looking_at_it(tmp_path: Path, command: str) -> None:
    file = tmp_path / "wrad.sqlite"
    more = [str(tmp_path / "copy")] if command == "backup" else []
    code, said = penline_says(command, "--database", f"sqlite:///{file}", *more)
    assert (code, said) == (1, f"Error: the database cannot be used: there is no {file}\n")
    assert list(tmp_path.iterdir()) == []


def test_a_backup_keeps_nobody_from_writing(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    store, reading = open_store(url), Store(connect(url, reading=True))
    fill(store)
    with reading.connection() as connection:
        backup = lines_of(connection)
        seen = [next(backup), next(backup)]
        with store.turn() as book:
            claimed(book, "meanwhile")
        seen += backup
    assert not any("meanwhile" in line for line in seen)
    assert any("meanwhile" in line for line in lines(store))
    reading.close()
    store.close()
