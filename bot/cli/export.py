"""`penline export`: a unit's drains as FHIR R4, CSV or JSON lines, on stdout or into a file.

The times of `--since` and `--until` are ward time unless they carry an offset. What is written holds what
people charted: a new file is readable by its owner only.
"""

from __future__ import annotations

import json
import os
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Literal, get_args

import click

from bot.cli.options import config_option, database_option, in_option, one_unit, settings_of, units_option
from bot.cli.progress import followed
from bot.dialogue.rounds import desk_for_rounds, feared_once
from bot.engine.cautions import cautions
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.values import Caution
from bot.interchange.fhir.bundle import Reach, Standing, fhir_bundle
from bot.interchange.jsonl import entry_lines
from bot.interchange.table import csv_text
from bot.store import Store, open_store
from bot.unit import Unit, load_units
from bot.wording.cautions import caution_text

Form = Literal["fhir", "csv", "jsonl"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """What is to be exported: of one bed, of one drain, over a span; None: all."""

    form: Form
    bed: str | None
    drain: str | None
    since: str | None
    until: str | None

    def reach(self, unit: Unit) -> Reach:
        """The time span, in UTC."""
        return Reach(begin=_moment(self.since, unit, "--since"), end=_moment(self.until, unit, "--until"))


@click.command("export")
@config_option
@database_option
@units_option
@click.option("--fhir", "form", flag_value="fhir", help="A FHIR R4 Bundle (JSON).")
@click.option("--csv", "form", flag_value="csv", help="A table for a spreadsheet.")
@click.option("--jsonl", "form", flag_value="jsonl", help="Every entry, lossless, one a line.")
@in_option
@click.option("--bed", help="Only the drains that are or were in this bed.")
@click.option("--drain", help="Only this drain.")
@click.option("--since", help="From then on (2026-03-04T07:00).")
@click.option("--until", help="Up to then.")
@click.option(
    "--out", type=click.Path(path_type=Path, dir_okay=False), help="A new file; stdout unless given."
)
def command(
    config: Path | None, database: str | None, units: tuple[Path, ...], out: Path | None, **given: str | None
) -> None:
    """Write a unit's drains in the form asked for: --fhir, --csv or --jsonl."""
    settings = settings_of(config, database_url=database, units=units)
    unit_id = given.pop("unit_id")
    unit = one_unit(load_units(settings.units), unit_id)
    wanted = _wanted(given)
    store = open_store(settings.database_url)
    try:
        text = exported(unit, store, wanted, datetime.now(UTC))
    finally:
        store.close()
    _write(text, out, wanted.form)


def exported(unit: Unit, store: Store, wanted: Wanted, now: datetime) -> str:
    """The export's text. `now` is when it is made: the cautions are those that stand then."""
    ledgers = _ledgers(unit, store, wanted)
    reach = wanted.reach(unit)
    match wanted.form:
        case "fhir":
            by_bed = _open_by_bed(ledgers)
            held = (*_standing(unit, by_bed, now), *_if_right(unit, store, by_bed, now))
            return (
                json.dumps(fhir_bundle(unit, ledgers, held, now, reach), ensure_ascii=False, indent=1) + "\n"
            )
        case "csv":
            return csv_text(unit, ledgers, reach.holds)
        case "jsonl":
            entries = (entry for ledger in ledgers for entry in ledger.entries if reach.holds(entry.at))
            return "".join(f"{line}\n" for line in entry_lines(entries))


def _ledgers(unit: Unit, store: Store, wanted: Wanted) -> tuple[Ledger, ...]:
    """The drains that are wanted, each read in its own transaction: the ward is not kept waiting."""
    with store.turn(unit.id) as book:
        names = book.every_drain()
    found = []
    asked = tuple(name for name in names if wanted.drain in (None, name))
    for drain in followed(asked, "drains", len(asked)):
        with store.turn(unit.id) as book:
            found.append(fold(book.entries(drain), unit.policy.capacity_ml))
    return tuple(each for each in found if wanted.bed is None or wanted.bed in {bed for _, bed in each.beds})


def _open_by_bed(ledgers: tuple[Ledger, ...]) -> dict[str, Patient]:
    """The open drains of these, by the bed where they are."""
    found: dict[str, list[Ledger]] = {}
    for ledger in ledgers:
        if ledger.bed is not None and ledger.is_open():
            found.setdefault(ledger.bed, []).append(ledger)
    return {bed: Patient(bed=bed, drains=tuple(drains)) for bed, drains in found.items()}


def _standing(unit: Unit, by_bed: dict[str, Patient], now: datetime) -> Iterator[Standing]:
    """The cautions that stand at these beds."""
    for patient in by_bed.values():
        for caution in cautions(patient, now, unit.policy):
            yield _told(unit, patient, caution, now)


def _if_right(unit: Unit, store: Store, by_bed: dict[str, Patient], now: datetime) -> Iterator[Standing]:
    """What would be urgent at these beds, were a reading right that nobody has confirmed."""
    with store.turn(unit.id) as book:
        feared = feared_once(desk_for_rounds(unit, book, now, "export"), by_bed)
    for each in feared:
        yield _told(unit, by_bed[each.bed], each.caution, now)


def _told(unit: Unit, patient: Patient, caution: Caution, now: datetime) -> Standing:
    """A caution with its sentence; one that names no drain rests on all that are exported of the bed."""
    drains = tuple(each.drain for each in patient.drains) if caution.drain is None else (caution.drain,)
    sentence = caution_text(caution, unit.zone, now, bed=patient.bed)
    return Standing(bed=patient.bed, caution=caution, sentence=sentence, drains=drains)


def _wanted(given: dict[str, str | None]) -> Wanted:
    forms = get_args(Form)
    if given["form"] not in forms:
        raise click.UsageError("say which form: --fhir, --csv or --jsonl")
    form: Form = forms[forms.index(given["form"])]
    return Wanted(
        form=form, bed=given["bed"], drain=given["drain"], since=given["since"], until=given["until"]
    )


def _moment(told: str | None, unit: Unit, option: str) -> datetime | None:
    if told is None:
        return None
    try:
        moment = datetime.fromisoformat(told)
    except ValueError as wrong:
        raise click.UsageError(f"{option}: {told} is not a time such as 2026-03-04T07:00") from wrong
    return (moment if moment.tzinfo else moment.replace(tzinfo=unit.zone)).astimezone(UTC)


def _write(text: str, out: Path | None, form: Form) -> None:
    """A CSV file begins with a byte order mark, so that a spreadsheet reads accents right."""
    if out is None:
        sys.stdout.write(text.replace("\r\n", os.linesep) if form == "csv" else text)
        return
    try:
        handle = os.open(out, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    except FileExistsError as there:
        raise click.UsageError(f"--out: {out} is there already") from there
    with os.fdopen(handle, "w", encoding="utf-8-sig" if form == "csv" else "utf-8", newline="") as file:
        file.write(text)
