"""What someone with the database can do to it behind the program's back, and what verify then names first."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import Connection, Engine, NullPool, create_engine, text

from bot.cli import penline
from bot.cli.embedded import Sent, Ward
from bot.engine.entries import Entry, Line
from bot.store.connect import sqlite_module
from bot.store.rows import entry_row
from bot.store.sealing import seal_the_rest
from bot.store.seals import SEALED
from bot.store.tables import entries
from bot.unit import demo_unit
from tests.databases import new_database, with_driver

SAID = (
    "new chest tube bed 12 left at 1405, empty",
    "bed 12 mark 100 at 1500",
    "bed 12 mark 1400 at 1600",
    "yes",
    "bed 12 last",
    "bed 14 mark 300 at 1600",
    "bed 14 mark 330 at 1605",
    "scratch that",
    "seen 12",
)
BEGIN = datetime(2026, 3, 4, 19, 6, tzinfo=UTC)


def tell(url: str) -> None:
    """Have all of it recorded in an empty database."""
    ward = Ward(demo_unit(), url)
    sender = next(person.name for person in ward.unit.people if person.role == "nurse")
    for number, said in enumerate(SAID):
        arrived = (
            BEGIN + timedelta(hours=number) if number < 2 else BEGIN + timedelta(hours=2, minutes=number)
        )
        answer = ward.answers(Sent(sender=sender, text=said, arrived=arrived))
        assert answer["status"] != "refused", answer
    ward.close()


class Case:
    """A ledger that was told something, and hands that go past the program."""

    def __init__(self, url: str) -> None:
        self.url = url
        # The same library as the program's: two of them in one process undo each other's locks.
        module = {"module": sqlite_module()} if url.startswith("sqlite") else {}
        self.engine: Engine = create_engine(with_driver(url), poolclass=NullPool, **module)
        with self.engine.connect() as connection:
            self.first, self.second = connection.scalars(text("SELECT id FROM drains ORDER BY seq"))
            self.messages = list(connection.scalars(text("SELECT id FROM messages ORDER BY seq")))

    def name(self, template: str) -> str:
        """A statement, or what is to be found, with the ids of this ledger; message 1 is the first."""
        ids = {f"m{number}": each for number, each in enumerate(self.messages, start=1)}
        return template.format(first=self.first, second=self.second, **ids)

    def tamper(self, *statements: str) -> None:
        """Run these with neither trigger nor foreign key in the way, as whoever owns the database can."""
        with self.engine.connect() as connection:
            kept = _unlocked(connection)
            for statement in statements:
                changed = connection.execute(text(self.name(statement).replace(":", r"\:"))).rowcount
                assert changed != 0, statement
            for trigger in kept:
                connection.exec_driver_sql(trigger)
            connection.commit()

    def verified(self, backup: Path | None = None) -> tuple[int, list[str]]:
        """The exit code of verify, and its lines."""
        beside = [] if backup is None else ["--backup", str(backup)]
        run = CliRunner().invoke(penline, ["verify", "--database", self.url, *beside])
        return run.exit_code, run.output.splitlines()

    def count(self, table: str, where: str) -> int:
        """How many rows of a table there are where that holds."""
        with self.engine.connect() as connection:
            found: int = connection.scalar(text(f"SELECT count(*) FROM {table} WHERE {self.name(where)}"))
        return found


def _unlocked(connection: Connection) -> list[str]:
    """The triggers that were taken off, to be put back."""
    if connection.dialect.name == "postgresql":
        connection.exec_driver_sql("SET LOCAL session_replication_role = replica")
        return []
    found = connection.exec_driver_sql("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").all()
    for name, _ in found:
        connection.exec_driver_sql(f"DROP TRIGGER {name}")
    return [sql for _, sql in found]


@pytest.fixture(scope="module")
def told_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The ledger in a file, to be copied."""
    file = tmp_path_factory.mktemp("told") / "ward.sqlite"
    tell(f"sqlite:///{file}")
    return file


@pytest.fixture(scope="module")
def told_postgres(postgres: str) -> str:
    """The URL of the ledger on PostgreSQL, to be copied."""
    url = new_database(postgres)
    tell(url)
    return url


@pytest.fixture(params=["file", "postgres"])
def case(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Case]:
    """A copy of the ledger on each engine."""
    told = request.getfixturevalue(f"told_{request.param}")
    if request.param == "file":
        case = Case(f"sqlite:///{shutil.copy(told, tmp_path)}")
    else:
        case = Case(new_database(request.getfixturevalue("postgres"), told))
    yield case
    case.engine.dispose()


@pytest.fixture
def copy(case: Case, tmp_path: Path) -> Path:
    """A backup of it from before anything is altered."""
    file = tmp_path / "copy.jsonl"
    assert CliRunner().invoke(penline, ["backup", "--database", case.url, str(file)]).exit_code == 0
    return file


def test_a_ledger_that_nobody_touched_is_sound_and_has_all_that_can_be_altered(case: Case) -> None:
    assert case.verified() == (0, ["Every entry is as it was recorded."])
    with case.engine.connect() as connection:
        for table in ("questions", "settlements", "notices", "tellings", "acknowledgements"):
            assert connection.scalar(text(f"SELECT count(*) FROM {table}")), table
        targets = connection.scalars(text("SELECT target FROM entries WHERE target IS NOT NULL")).all()
    assert targets


GONE = "the entry is missing"
BROKEN = "the message, its reply or what it recorded, or the message before it, is not what was recorded"


@pytest.mark.parametrize(
    ("statement", "said"),
    [
        ("DELETE FROM entries WHERE drain = '{second}' AND position >= 3", "{second}-3: " + GONE),
        ("DELETE FROM entries WHERE drain = '{second}' AND position >= 2", "{second}-2: " + GONE),
        ("DELETE FROM entries WHERE drain = '{first}'", "{first}-1: " + GONE),
        ("UPDATE entries SET target = 1 WHERE target IS NOT NULL", "{second}-4: the entry, or the one"),
        ("UPDATE messages SET text = 'bed 12 mark 10 at 1500' WHERE id = '{m2}'", "{m2}: " + BROKEN),
        ("UPDATE messages SET digest = 'other' WHERE id = '{m5}'", "{m5}: " + BROKEN),
        ("UPDATE messages SET sender = 'ben' WHERE id = '{m5}'", "{m5}: " + BROKEN),
        ("UPDATE messages SET arrived = '2026-03-04T19:00:00.000000Z' WHERE id = '{m1}'", "{m1}: " + BROKEN),
        ("UPDATE replies SET reply = replace(reply, '100', '10') WHERE message = '{m2}'", "{m2}: " + BROKEN),
        ("UPDATE replies SET reply = '{{' WHERE message = '{m2}'", "{m2}: " + BROKEN),
        ("UPDATE questions SET said = replace(said, '1400', '1300')", "{m3}: " + BROKEN),
        ("UPDATE questions SET text = 'Right?'", "{m3}: " + BROKEN),
        ("DELETE FROM settlements", "{m4}: " + BROKEN),
        ("UPDATE settlements SET outcome = 'replaced'", "{m4}: " + BROKEN),
        ("UPDATE notices SET text = 'nothing'", "{m3}: " + BROKEN),
        ("UPDATE drains SET unit = 'other' WHERE id = '{second}'", "cannot be found at bed 14"),
        ("UPDATE berths SET bed = '13' WHERE drain = '{second}'", "{second}-1: the drain cannot be found"),
        ("UPDATE berths SET unit = 'other' WHERE drain = '{first}'", "{first}-1: the drain cannot be found"),
        ("UPDATE seals SET chain = 'x' WHERE number = 4", "{m4}: " + BROKEN),
        ("UPDATE seals SET unit = 'other' WHERE number = 4", "{m4}: the message has no seal"),
        ("DELETE FROM seals WHERE number = 9", "{m9}: the message has no seal"),
        ("DELETE FROM replies WHERE message = '{m5}'", "{m5}: the message was taken and has no reply"),
    ],
)  # fmt: skip
def test_an_alteration_is_found_and_the_first_thing_that_is_wrong_is_named(
    case: Case, statement: str, said: str
) -> None:
    case.tamper(statement)
    code, lines = case.verified()
    assert code == 1
    assert case.name(said) in lines[0]


def test_a_message_that_was_taken_out_whole_is_missed_by_the_next(case: Case) -> None:
    case.tamper(
        "DELETE FROM seals WHERE number = 5",
        "DELETE FROM replies WHERE message = '{m5}'",
        "DELETE FROM messages WHERE id = '{m5}'",
    )
    assert case.verified() == (1, [case.name("{m6}: ") + BROKEN])


def test_a_drain_that_was_taken_out_whole_is_missed_by_the_replies(case: Case) -> None:
    case.tamper(
        "DELETE FROM entries WHERE drain = '{second}'",
        "DELETE FROM berths WHERE drain = '{second}'",
        "DELETE FROM drains WHERE id = '{second}'",
    )
    code, lines = case.verified()
    assert (code, lines) == (1, [case.name("{second}-1: ") + GONE, case.name("{m6}: ") + BROKEN])


def test_what_was_cut_off_at_the_end_with_all_that_it_wrote_is_seen_beside_a_backup(
    case: Case, copy: Path
) -> None:
    assert case.verified(copy) == (0, ["Every entry is as it was recorded."])
    for table in (*SEALED, "replies"):
        if case.count(table, "message = '{m9}'"):
            case.tamper(f"DELETE FROM {table} WHERE message = '{{m9}}'")
    case.tamper("DELETE FROM seals WHERE number = 9", "DELETE FROM messages WHERE id = '{m9}'")
    assert case.verified() == (0, ["Every entry is as it was recorded."])
    code, lines = case.verified(copy)
    assert (code, lines[0]) == (1, case.name("{m9}: is missing, and the backup holds it"))


def test_hashes_that_were_all_reckoned_anew_are_seen_beside_a_backup(case: Case, copy: Path) -> None:
    case.tamper("UPDATE messages SET text = 'bed 12 next' WHERE id = '{m5}'", "DELETE FROM seals")
    with case.engine.begin() as connection:
        seal_the_rest(connection)
    assert case.verified()[0] == 0
    code, lines = case.verified(copy)
    assert (code, lines[0]) == (1, case.name("{m5}: is not what the backup holds"))


def test_what_came_after_a_backup_is_no_flaw(case: Case, copy: Path) -> None:
    ward = Ward(demo_unit(), case.url, "later")
    ward.answers(Sent(sender="Amy", text="bed 3 mark 100", arrived=BEGIN + timedelta(hours=4)))
    ward.close()
    assert case.verified(copy) == (0, ["Every entry is as it was recorded."])


def test_a_file_that_is_no_backup_of_it_is_told_as_that(case: Case, copy: Path) -> None:
    copy.write_text("\n".join(copy.read_text("utf-8").splitlines()[:-1]), "utf-8")
    assert case.verified(copy) == (1, [f"Error: {copy} is no backup: the file ends too early"])
    copy.write_bytes(b"\xff")
    assert case.verified(copy) == (1, [f"Error: {copy} is no backup: the file is not UTF-8 text"])


def test_an_entry_that_was_added_past_the_program_is_seen_by_the_seal_of_its_message(case: Case) -> None:
    with case.engine.begin() as connection:
        last = connection.execute(
            text("SELECT position, chain FROM entries WHERE drain = :drain ORDER BY position DESC"),
            {"drain": case.first},
        ).first()
        assert last is not None
        forged = Entry(
            drain=case.first, position=last.position + 1, at=BEGIN, entered=BEGIN, who="amy",
            message=case.messages[1], payload=Line(level_ml=5),
        )  # fmt: skip
        connection.execute(entries.insert(), entry_row(forged, last.chain))
    assert case.verified() == (1, [case.name("{m2}: ") + BROKEN])


def test_a_row_that_hangs_on_nothing_is_named(case: Case) -> None:
    case.tamper("DELETE FROM drains WHERE id = '{second}'")
    code, lines = case.verified()
    assert code == 1
    assert lines[0].endswith(": its row of drains is missing")


@pytest.mark.parametrize(
    ("statement", "said"),
    [
        ("DROP INDEX ix_berths_unit_bed_seq", "schema: lacks the index ix_berths_unit_bed_seq"),
        ("ALTER TABLE notices ADD COLUMN mine VARCHAR(3)", "schema: has besides the column notices mine"),
    ],
)
def test_a_schema_that_is_not_what_the_steps_make_is_told(case: Case, statement: str, said: str) -> None:
    with case.engine.begin() as connection:
        connection.execute(text(statement))
    assert case.verified() == (1, [said])


POSTGRES_ONLY = [
    ("ALTER TABLE messages DROP CONSTRAINT uq_messages_id CASCADE", "schema: lacks the"),
    ("ALTER TABLE replies DROP CONSTRAINT pk_replies", "schema: has another primary key of replies"),
    ("ALTER TABLE entries DISABLE TRIGGER entries_append_only",
     "entries_append_only: the trigger is switched off"),
    ("ALTER TABLE entries ENABLE REPLICA TRIGGER entries_append_only",
     "entries_append_only: the trigger is switched off"),
    ("CREATE OR REPLACE FUNCTION penline_append_only() RETURNS trigger LANGUAGE plpgsql AS"
     " $$ BEGIN RETURN NEW; END $$", "acknowledgements_append_only: the trigger was altered"),
    ("DROP TRIGGER entries_append_only ON entries\nCREATE TRIGGER entries_append_only BEFORE DELETE"
     " ON entries FOR EACH ROW EXECUTE FUNCTION penline_append_only()",
     "entries_append_only: the trigger was altered"),
    ("DROP TRIGGER entries_append_only ON entries", "entries_append_only: the trigger is missing"),
    ("CREATE TRIGGER mine BEFORE INSERT ON entries FOR EACH ROW EXECUTE FUNCTION penline_append_only()",
     "mine: the trigger is not the program's"),
]  # fmt: skip
SQLITE_ONLY = [
    ("DROP TRIGGER entries_no_update", "entries_no_update: the trigger is missing"),
    ("DROP TRIGGER entries_no_update\nCREATE TRIGGER entries_no_update BEFORE UPDATE ON entries"
     " BEGIN SELECT 1; END", "entries_no_update: the trigger was altered"),
    ("DROP TRIGGER entries_no_update\nCREATE TRIGGER entries_no_update BEFORE UPDATE ON replies"
     " BEGIN SELECT RAISE(ABORT, 'entries is append-only'); END",
     "entries_no_update: the trigger was altered"),
    ("CREATE TRIGGER mine BEFORE INSERT ON entries BEGIN SELECT RAISE(IGNORE); END",
     "mine: the trigger is not the program's"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("case", "statements", "said"),
    [("postgres", *each) for each in POSTGRES_ONLY] + [("file", *each) for each in SQLITE_ONLY],
    indirect=["case"],
)
def test_a_trigger_that_does_not_refuse_any_more_is_told(case: Case, statements: str, said: str) -> None:
    with case.engine.begin() as connection:
        for statement in statements.splitlines():
            connection.exec_driver_sql(statement)
    code, lines = case.verified()
    assert code == 1
    assert lines[0].startswith(said)


def test_every_reply_names_entries_that_are_there(case: Case) -> None:
    with case.engine.connect() as connection:
        told = [json.loads(reply) for reply in connection.scalars(text("SELECT reply FROM replies"))]
        there = {f"{row.drain}-{row.position}" for row in connection.execute(text("SELECT * FROM entries"))}
    named = {entry for reply in told for result in reply["results"] for entry in result["entries"]}
    assert named
    assert named <= there
