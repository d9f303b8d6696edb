"""The CSV opens in a spreadsheet: local times with their offset, volumes beside the lines, no formulas."""

from __future__ import annotations

import csv
import io

import pytest

from bot.engine.entries import Correction, Exchanged, FinalLevel, Line, Opened, Withdrawal
from bot.engine.volumes import total
from bot.interchange.table import COLUMNS, csv_text, guarded
from tests.interchange.rows import UNIT, Rows


def table(rows: Rows) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(csv_text(UNIT, [rows.ledger]), newline="")))


def hourly() -> Rows:
    rows = Rows()
    rows.tell("4 15:00", Opened(bed="12", tube="left"))
    rows.tell("4 15:00", Line(level_ml=840))
    rows.tell("4 19:00", Line(level_ml=1050))
    return rows


def test_each_entry_is_a_row_and_a_line_shows_the_volume_that_it_charts() -> None:
    rows = table(hourly())

    assert [row["kind"] for row in rows] == ["opened", "mark", "mark"]
    assert [row["volume_ml"] for row in rows] == ["", "", "210"]
    assert rows[2]["bed"] == "12"
    assert rows[2]["tube"] == "left"
    assert rows[2]["volume_from"] == "2026-03-04 15:00:00"


def test_times_are_local_and_stand_beside_their_offset() -> None:
    rows = Rows()
    rows.tell("8 01:30", Line(level_ml=100))
    rows.tell("8 03:30", Line(level_ml=140))

    before, after = table(rows)

    assert (before["happened"], before["happened_offset"]) == ("2026-03-08 01:30:00", "UTC-05:00")
    assert (after["happened"], after["happened_offset"]) == ("2026-03-08 03:30:00", "UTC-04:00")


def test_a_corrected_line_shows_both_levels_and_the_correction_its_target() -> None:
    rows = hourly()
    wrong = rows.entries[-1]
    rows.tell("4 19:00", Correction(target=wrong.id, level_ml=1005), entered="4 19:30", who="rn-2")

    line, correction = table(rows)[-2:]

    assert (line["level_ml"], line["told_ml"], line["status"]) == ("1005", "1050", "corrected")
    assert line["volume_ml"] == "165"
    assert (correction["about_entry"], correction["who"]) == (wrong.id, "rn-2")


def test_a_withdrawn_line_stays_in_the_table_without_a_volume() -> None:
    rows = hourly()
    rows.tell("4 19:00", Withdrawal(target=rows.entries[-1].id), entered="4 19:10")

    line = table(rows)[-2]

    assert (line["status"], line["level_ml"], line["volume_ml"]) == ("withdrawn", "1050", "")


def test_the_volumes_of_the_table_add_up_to_the_total_of_the_drain() -> None:
    rows = hourly()
    rows.tell("5 03:00", FinalLevel(level_ml=1860))
    rows.tell("5 03:00", Exchanged())
    rows.tell("5 04:00", Line(level_ml=60))

    charted = sum(int(row["volume_ml"]) for row in table(rows) if row["volume_ml"])

    assert charted == total(rows.ledger).volume_ml == 1080


def test_a_volume_across_a_canister_with_no_final_level_says_at_least() -> None:
    rows = hourly()
    rows.tell("4 20:00", Exchanged())
    rows.tell("4 21:00", Line(level_ml=60))

    assert table(rows)[-1]["at_least"] == "yes"


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", "\r", "\n"])
def test_a_cell_that_a_spreadsheet_would_run_is_guarded(start: str) -> None:
    assert guarded(f"{start}1+1") == f"'{start}1+1"


@pytest.mark.parametrize("cell", ["Amy", "12", 0, 1050, None, ""])
def test_any_other_cell_is_left_as_it_is(cell: str | int | None) -> None:
    assert guarded(cell) == cell


def test_no_cell_of_a_table_begins_as_a_formula_whoever_wrote_the_words() -> None:
    rows = Rows()
    rows.tell("4 15:00", Opened(bed="=cmd()", tube="@left"), who="+1 555")
    rows.tell("4 15:00", Line(level_ml=840), who="-amy")

    cells = [cell for row in table(rows) for cell in row.values()]

    assert "'=cmd()" in cells
    assert not [cell for cell in cells if cell.startswith(("=", "+", "-", "@"))]


def test_an_empty_unit_still_gets_its_heads() -> None:
    assert csv_text(UNIT, []) == ",".join(COLUMNS) + "\r\n"
