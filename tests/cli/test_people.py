"""People are listed, enrolled and removed by command; every change is kept with its author."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from bot.cli import penline
from bot.store import open_store

UNIT = """
name = "Ward 4"
zone = "America/New_York"
beds = "1-24"
people = [{ id = "amy", name = "Amy", role = "nurse" }]
"""
NOTIFY = '[notify]\npeople = ["amy"]\n'


class Desk:
    """Runs `penline people` on a unit and a database of its own."""

    def __init__(self, folder: Path) -> None:
        self.url = f"sqlite:///{folder}/ward.sqlite"
        self._unit = folder / "ward.toml"
        self._unit.write_text(UNIT)

    def people(self, *args: str) -> tuple[int, str]:
        """Exit code and output."""
        where = ["people", "--database", self.url, "--unit", str(self._unit)]
        run = CliRunner().invoke(penline, [*where, *args])
        return run.exit_code, run.output


@pytest.fixture
def desk(tmp_path: Path) -> Desk:
    """A desk."""
    return Desk(tmp_path)


def test_the_list_begins_as_the_unit_file_has_it(desk: Desk) -> None:
    assert desk.people("list") == (0, "amy  Amy  nurse\n")


def test_agency_staff_are_enrolled_until_a_time_of_the_ward(desk: Desk) -> None:
    said = desk.people("enrol", "ag-1", "--name", "Zoe", "--role", "nurse", "--until", "2099-03-04T19:00")
    assert said == (0, "ag-1  Zoe  nurse  until 2099-03-04 19:00\n")
    assert desk.people("list") == (0, f"amy  Amy  nurse\n{said[1]}")


def test_a_shared_phone_is_enrolled_as_one(desk: Desk) -> None:
    said = desk.people("enrol", "phone-4", "--name", "Ward phone", "--role", "nurse", "--shared")
    assert said == (0, "phone-4  Ward phone  nurse  shared phone\n")
    assert desk.people("list")[1].endswith(said[1])


def test_removing_the_last_one_to_notify_says_what_that_means(desk: Desk, tmp_path: Path) -> None:
    (tmp_path / "ward.toml").write_text(UNIT + NOTIFY)
    code, said = desk.people("remove", "amy")
    assert code == 0
    assert "amy is named under [notify] and is not on the list of Ward 4: passed over" in said
    assert said.endswith("Ward 4 has nobody to notify: its notices wait\n")


def test_someone_removed_stays_known(desk: Desk) -> None:
    assert desk.people("remove", "amy") == (0, "Amy is no longer on the list of Ward 4.\n")
    assert desk.people("list")[1].startswith("amy  Amy  nurse  over since ")
    assert desk.people("remove", "amy")[0] == 2


def test_every_change_is_kept_with_its_author(desk: Desk) -> None:
    desk.people("enrol", "ag-1", "--name", "Zoe", "--role", "nurse")
    desk.people("enrol", "ag-1", "--name", "Zoe", "--role", "charge")
    desk.people("remove", "ag-1")
    store = open_store(desk.url)
    with store.turn() as book:
        events = book.people_events("ag-1")
    store.close()
    assert [(event.event, event.role) for event in events] == [
        ("enrolled", "nurse"), ("enrolled", "charge"), ("removed", "charge"),
    ]  # fmt: skip
    assert all(event.by for event in events)


@pytest.mark.parametrize(
    "args",
    [
        ("remove", "zoe"),
        ("enrol", "x", "--name", "X", "--role", "doctor"),
        ("enrol", "x", "--name", "", "--role", "nurse"),
        ("enrol", "a\nb", "--name", "X", "--role", "nurse"),
        ("enrol", "x", "--name", "X", "--role", "nurse", "--until", "2020-01-01T00:00"),
        ("enrol", "x", "--name", "X", "--role", "nurse", "--until", "soon"),
        ("enrol", "x", "--role", "nurse"),
        ("--in", "ward-9", "list"),
    ],
    ids=str,
)
def test_a_change_that_makes_no_sense_is_refused(desk: Desk, args: tuple[str, ...]) -> None:
    assert desk.people(*args)[0] == 2
    assert desk.people("list") == (0, "amy  Amy  nurse\n")


@pytest.mark.parametrize("command", ["list", "enrol", "remove"])
def test_the_help_of_a_change_needs_no_unit_and_opens_no_database(
    command: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    run = CliRunner().invoke(penline, ["people", command, "--help"], env={"PENLINE_UNITS": None})
    assert (run.exit_code, list(tmp_path.iterdir())) == (0, [])
    assert "Usage: " in run.output
