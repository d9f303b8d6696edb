"""`penline remind`: what is due in each unit, and notices of what is overdue or was never confirmed.

For a timer, every few minutes: what was queued a short while ago is not queued again.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import partial
from pathlib import Path

import click

from bot.cli.options import config_option, database_option, settings_of, units_option
from bot.cli.reach import Reach, reach
from bot.dialogue.rounds import ROUNDS, desk_for_rounds, reminders, what_is_due
from bot.intake.roster import with_changes
from bot.store import Book, Notice, open_store
from bot.store.book import Claim
from bot.store.moments import moment_text
from bot.unit import Unit, load_units


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What one look at a unit found."""

    due: tuple[str, ...]
    queued: tuple[Notice, ...]
    reach: Reach

    def lines(self, unit: Unit) -> tuple[str, ...]:
        """The same for whoever reads the terminal."""
        queued = (f"Queued: bed {each.bed}: {each.text}" for each in self.queued)
        return (f"{unit.name}:", *self.due, *queued)


@click.command("remind")
@config_option
@database_option
@units_option
def command(config: Path | None, database: str | None, units: tuple[Path, ...]) -> None:
    """Tell what is due in each unit, and queue a notice for what is overdue or was never confirmed."""
    settings = settings_of(config, database_url=database, units=units)
    wards = load_units(settings.units)
    store = open_store(settings.database_url)
    try:
        for unit in wards:
            told = store.transact(partial(go_round, unit, datetime.now(UTC)), unit.id)
            click.echo("\n".join(told.lines(unit)))
            for fault in told.reach.faults():
                click.echo(fault, err=True)
    finally:
        store.close()


def go_round(unit: Unit, now: datetime, book: Book) -> Told:
    """What is due in the unit, and the notices that were queued, in this transaction."""
    current = with_changes(unit, book.people_events())
    message = _message(unit, now)
    desk = desk_for_rounds(current, book, now, message)
    found = reminders(desk)
    if found:
        _claim(message, unit, now, book)
    for notice in found:
        book.queue(notice)
    return Told(due=what_is_due(desk), queued=found, reach=reach(current, now))


def _claim(message: str, unit: Unit, now: datetime, book: Book) -> None:
    """A message of its own for the notices: every row of the ledger says on whose word it is there."""
    book.claim(Claim(id=message, digest="", arrived=now, sender=ROUNDS.id, unit=unit.id, text=None))
    book.keep_reply(message, '{"status": "told"}')


def _message(unit: Unit, now: datetime) -> str:
    """An id that no gateway can send: a slash is not one of its characters."""
    return f"remind/{hashlib.sha256(f'{unit.id}/{moment_text(now)}'.encode()).hexdigest()[:24]}"
