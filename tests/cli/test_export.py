"""`penline export` on a real database file: three forms, a bed, a span, a new file for its owner only."""

from __future__ import annotations

import csv
import io
import json
import os
import stat
from dataclasses import replace
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from bot.cli import penline
from bot.cli.export import Wanted, exported
from bot.engine.entries import Entry, Line, Removed
from bot.interchange.jsonl import Exported
from bot.store import open_store
from bot.unit import load_unit
from tests.dialogue.queries.ward import BEN, WARD_4, Ward, moment

UNIT_FILE = """
name = "Ward 4"
zone = "America/New_York"
beds = "1-24"
shifts = ["07:00", "19:00"]
day_starts = "07:00"

[[people]]
id = "rn-1"
name = "Amy"
role = "nurse"
"""


ALL_FHIR = Wanted(form="fhir", bed=None, drain=None, since=None, until=None)


class Place:
    """A deployment's files, and the command run on them."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.url = f"sqlite:///{folder / 'penline.db'}"
        self.unit = folder / "ward-4.toml"
        self.unit.write_text(UNIT_FILE)

    def ward(self) -> Ward:
        """The ward, to tell entries on; to be closed before the export."""
        return Ward(unit=replace(WARD_4, id="ward-4"), store=open_store(self.url))

    def export(self, *options: str) -> Result:
        """What the command does with these options."""
        return CliRunner().invoke(
            penline, ["export", "--database", self.url, "--unit", str(self.unit), *options], env={}
        )

    def entries(self, *options: str) -> list[Entry]:
        """The entries of the lines that it writes with these."""
        return list(Exported(self.export("--jsonl", *options).stdout.splitlines()))


@pytest.fixture
def place(tmp_path: Path) -> Place:
    place = Place(tmp_path)
    ward = place.ward()
    ward.lines("12", "4 15:00 840, 19:00 1050", tube="left")
    ward.lines("3", "4 18:00 100, 19:00 720")
    ward.store.close()
    return place


def test_the_fhir_export_is_a_bundle_with_both_drains_and_their_cautions(place: Place) -> None:
    done = place.export("--fhir")

    assert done.exit_code == 0
    kinds = [each["resource"]["resourceType"] for each in json.loads(done.stdout)["entry"]]
    assert kinds.count("Device") == 2
    assert kinds.count("Observation") == 6
    assert "DetectedIssue" in kinds


@pytest.mark.parametrize("waits", ["4 19:30", "5 06:00"])
def test_what_would_be_urgent_if_a_reading_were_right_is_a_preliminary_issue(
    tmp_path: Path, waits: str
) -> None:
    place = Place(tmp_path)
    ward = place.ward()
    ward.lines("3", "4 18:00 100, 19:00 120")
    ward.asks_back("4 19:20", "3", 700, danger=True)
    ward.asks_back("4 19:20", "3", 700, danger=True, who=BEN)
    ward.store.close()

    store = open_store(place.url)
    text = exported(load_unit(place.unit), store, ALL_FHIR, moment(waits))
    store.close()

    issues = [each["resource"] for each in json.loads(text)["entry"]]
    feared = [each for each in issues if each.get("status") == "preliminary"]
    assert [each["code"]["text"] for each in feared] == ["amount_at_once"]
    assert feared[0]["severity"] == "high"
    assert feared[0]["detail"].startswith("URGENT if right, bed 3: 580 mL in 20 min")
    assert "700" not in str([each for each in issues if each["resourceType"] == "Observation"])
    assert len({each["id"] for each in issues}) == len(issues)


def test_the_json_lines_give_back_every_entry(place: Place) -> None:
    entries = place.entries()

    levels = [entry.payload.level_ml for entry in entries if isinstance(entry.payload, Line)]
    assert levels == [840, 1050, 100, 720]
    assert {entry.who for entry in entries} == {"rn-1"}


def test_the_csv_of_one_bed_holds_that_bed_alone(place: Place) -> None:
    rows = list(csv.DictReader(io.StringIO(place.export("--csv", "--bed", "12").stdout)))

    assert {row["bed"] for row in rows} == {"12"}
    assert [row["volume_ml"] for row in rows] == ["", "", "210"]


def test_one_drain_can_be_taken_alone(place: Place) -> None:
    first = place.entries()[0]

    told = place.entries("--drain", first.drain)

    assert {entry.drain for entry in told} == {first.drain}


def test_a_drain_that_was_removed_is_exported_too(tmp_path: Path) -> None:
    place = Place(tmp_path)
    ward = place.ward()
    ward.lines("12", "4 15:00 840")
    ward.tell("4 16:00", "12", Removed())
    ward.store.close()

    rows = list(csv.DictReader(io.StringIO(place.export("--csv").stdout)))

    assert [row["kind"] for row in rows] == ["opened", "mark", "removed"]


@pytest.mark.parametrize("since", ["2026-03-04T18:30", "2026-03-04T23:30+00:00"])
def test_a_span_is_ward_time_unless_it_carries_an_offset(place: Place, since: str) -> None:
    entries = place.entries("--since", since)

    assert [entry.payload for entry in entries] == [Line(level_ml=1050), Line(level_ml=720)]


def test_the_end_of_a_span_cuts_too(place: Place) -> None:
    entries = place.entries("--until", "2026-03-04T15:00")

    assert [entry.payload for entry in entries if isinstance(entry.payload, Line)] == [Line(level_ml=840)]


def test_a_file_is_new_and_its_owners_only_and_a_csv_begins_with_its_mark(place: Place) -> None:
    out = place.folder / "out.csv"

    done = place.export("--csv", "--out", str(out))

    assert (done.exit_code, done.stdout) == (0, "")
    assert stat.S_IMODE(os.stat(out).st_mode) == 0o600
    assert out.read_bytes().startswith(b"\xef\xbb\xbfunit,bed,")
    assert b"\r\n" in out.read_bytes()


def test_a_file_that_is_there_is_never_written_over(place: Place) -> None:
    out = place.folder / "out.json"
    out.write_text("mine")

    done = place.export("--fhir", "--out", str(out))

    assert done.exit_code == 2
    assert "is there already" in done.output
    assert out.read_text() == "mine"


@pytest.mark.parametrize(
    ("options", "said"),
    [
        ((), "--fhir, --csv or --jsonl"),
        (("--jsonl", "--since", "yesterday"), "--since: yesterday is not a time"),
        (("--jsonl", "--unit-id", "ward-9"), "ward-4"),
    ],
)
def test_an_order_that_cannot_be_carried_out_is_told_plainly(
    place: Place, options: tuple[str, ...], said: str
) -> None:
    done = place.export(*options)

    assert done.exit_code == 2
    assert said in done.output


def test_an_empty_database_exports_nothing_without_an_error(tmp_path: Path) -> None:
    place = Place(tmp_path)

    assert place.entries() == []
    assert "entry" not in json.loads(place.export("--fhir").stdout)
