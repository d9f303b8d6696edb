"""`penline remind` tells what is due and queues what is overdue, with real commands on a real file."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from freezegun import freeze_time

from bot.cli import penline
from bot.intake import Incoming, handle
from bot.intake.respond import deployment
from bot.store import open_store
from bot.unit import load_unit
from tests.notices.bench import SECRET, UNIT


@pytest.fixture(autouse=True)
def forenoon() -> Iterator[None]:
    """A moment far from the start of a shift, when the closing line would be due as well."""
    with freeze_time("2026-03-04T16:00:00Z", tick=True):
        yield


@pytest.fixture
def where(tmp_path: Path) -> tuple[str, ...]:
    """The options of a ward where bed 7 was marked two hours ago."""
    file = tmp_path / "ward.toml"
    file.write_text(UNIT)
    url = f"sqlite:///{tmp_path}/ward.sqlite"
    store = open_store(url)
    marked = datetime.now(UTC) - timedelta(hours=2)
    message = Incoming(id="m1", sender="carla", text="bed 7 mark 630", arrived=marked)
    outcome = handle(message, deployment((load_unit(file),), store))
    assert json.loads(outcome.answer)["status"] == "recorded"
    store.close()
    return ("--database", url, "--unit", str(file))


def test_what_is_due_is_told_and_what_is_overdue_queued_once(where: tuple[str, ...]) -> None:
    first = CliRunner().invoke(penline, ["remind", *where])
    assert first.exit_code == 0
    assert first.output.startswith("Ward 4:\nBed 7: line overdue since ")
    assert "Queued: bed 7: CAUTION: line overdue, due at " in first.output
    again = CliRunner().invoke(penline, ["remind", *where])
    assert again.output.startswith("Ward 4:\nBed 7: line overdue since ")
    assert "Queued" not in again.output


@pytest.mark.parametrize("missing", ["PENLINE_NOTIFY_URL", "PENLINE_NOTIFY_SECRETS"])
def test_nothing_is_delivered_without_an_address_and_a_secret(
    where: tuple[str, ...], missing: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PENLINE_NOTIFY_URL", "https://gateway.example.org/notices")
    monkeypatch.setenv("PENLINE_NOTIFY_SECRETS", SECRET)
    monkeypatch.delenv(missing)
    run = CliRunner().invoke(penline, ["deliver", "--once", *where])
    assert run.exit_code == 2
    assert missing in run.output


def test_a_reader_among_those_to_be_told_is_said_to_be_one(where: tuple[str, ...]) -> None:
    file = Path(where[-1])
    file.write_text(file.read_text().replace('role = "nurse"', 'role = "reader"'))
    said = CliRunner().invoke(penline, ["remind", *where]).stderr
    assert said == "ben is named under [notify] and only reads in Ward 4: cannot answer that it was seen\n"


def test_who_cannot_be_reminded_is_said(where: tuple[str, ...]) -> None:
    file = Path(where[-1])
    file.write_text(file.read_text().replace('people = ["carla", "ben"]', 'people = ["carla", "dora"]'))
    said = CliRunner().invoke(penline, ["remind", *where])
    assert said.stderr == "dora is named under [notify] and is not on the list of Ward 4: passed over\n"
    assert "dora" not in said.stdout
