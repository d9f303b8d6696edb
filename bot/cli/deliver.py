"""`penline deliver`: send what is in the outbox to the people whom each unit file names, until told to stop.

It may be stopped or killed at any moment: what was not kept as sent is sent again, under the same id. It
tells numbers and people on stderr, never a text, a bed or a level.
"""

from __future__ import annotations

import signal
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from threading import Event
from types import FrameType

import click

from bot.cli.options import config_option, database_option, settings_of, units_option
from bot.intake.roster import listed, with_changes
from bot.notices.gateway import Gateway
from bot.notices.letters import body_of
from bot.notices.plan import LASTS, Letter, Round, dead, sends
from bot.settings import Settings, check_ready_to_deliver
from bot.store import Store, StoreAwayError, open_store
from bot.store.connect import connect
from bot.store.notices import Attempt, Filed
from bot.unit import Unit, load_units
from bot.wording.notices import notice_text, seen_words

HISTORY = timedelta(days=60)
"""How far back the list of the dead goes."""


@click.command("deliver")
@config_option
@database_option
@units_option
@click.option("--once", is_flag=True, help="Send what is due now, and end.")
@click.option("--dead", "list_dead", is_flag=True, help="Only list what was given up; 1 when there is any.")
@click.option("--every", type=click.FloatRange(0.05, 60), default=1.0, help="Seconds between looks.")
def command(
    config: Path | None,
    database: str | None,
    units: tuple[Path, ...],
    once: bool,
    list_dead: bool,
    every: float,
) -> None:
    """Send notices, signed, to the gateway at PENLINE_NOTIFY_URL; try again what it does not take."""
    settings = settings_of(config, database_url=database, units=units)
    if not list_dead:
        check_ready_to_deliver(settings)
    store = open_store(settings.database_url)
    courier = Courier(settings, store)
    try:
        if list_dead:
            _list_dead(courier)
        elif once:
            courier.go_round()
        else:
            _until_stopped(courier, every)
    finally:
        courier.close()
        store.close()


class Courier:
    """Carries letters from the outbox to the gateway, one at a time, and keeps what became of each."""

    def __init__(self, settings: Settings, store: Store) -> None:
        self._units = load_units(settings.units)
        self._store = store
        self._looking = Store(connect(settings.database_url, reading=True))
        self._gateway = Gateway(settings.notify_url or "", settings.notify_secrets)
        self._first_wait = timedelta(seconds=settings.notify_retry_s)
        for unit in self._units:
            if not unit.notify.people:
                _say(f"{unit.name} names nobody to notify: see [notify] in its unit file")

    def go_round(self, stop: Event | None = None) -> int:
        """How many letters were sent; ends early where no gateway answers, or when told to stop."""
        sent = 0
        for letter, unit in self._due():
            if stop is not None and stop.is_set():
                break
            if self._send(letter, unit) is None:
                break
            sent += 1
        return sent

    def dead(self) -> tuple[Letter, ...]:
        """What was given up."""
        return tuple(letter for look in self._looks(HISTORY) for letter in dead(look.outbox, look.at))

    def close(self) -> None:
        """Let go of the connections."""
        self._gateway.close()
        self._looking.close()

    def _due(self) -> tuple[tuple[Letter, Unit], ...]:
        return tuple(
            (letter, look.unit) for look in self._looks(LASTS * 2) for letter in sends(look.outbox, look.at)
        )

    def _looks(self, back: timedelta) -> Iterator[_Look]:
        now = datetime.now(UTC)
        for unit in self._units:
            with self._looking.turn(unit.id) as book:  # keeps no message waiting
                current = with_changes(unit, book.people_events())
                outbox = book.filed(now - back)
            people = tuple(each for each in unit.notify.people if listed(current, each, now) is not None)
            at = Round(people=people, notify=unit.notify, first_wait=self._first_wait, now=now)
            yield _Look(unit=unit, outbox=outbox, at=at)

    def _send(self, letter: Letter, unit: Unit) -> int | None:
        """The gateway's status; None when it did not answer."""
        now = datetime.now(UTC)
        receipt = self._gateway.send(letter.id, self._body(letter, unit), now)
        with self._store.turn(unit.id) as book:
            book.note_attempt(
                Attempt(
                    notice=letter.filed.number,
                    person=letter.person,
                    at=now,
                    outcome=receipt.outcome,
                    status=receipt.status,
                )
            )
        _say(f"{letter.id} to {letter.person}: {receipt.outcome} ({receipt.status or 'no answer'})")
        return receipt.status

    def _body(self, letter: Letter, unit: Unit) -> bytes:
        notice = letter.filed.notice
        on_lists = sum(each.person(letter.person) is not None for each in self._units)
        say = seen_words(unit.name, notice.bed, several=on_lists > 1)
        text = notice_text(unit.name, notice.bed, notice.text, unconfirmed=notice.unconfirmed, say=say)
        return body_of(letter, text, say)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Look:
    unit: Unit
    outbox: tuple[Filed, ...]
    at: Round


def _until_stopped(courier: Courier, every: float) -> None:
    """A database that is away for a while is looked for again; nothing is lost by waiting."""
    stop = Event()

    def told(_signal: int, _frame: FrameType | None) -> None:
        stop.set()

    signal.signal(signal.SIGTERM, told)
    signal.signal(signal.SIGINT, told)
    while not stop.is_set():
        try:
            courier.go_round(stop)
        except StoreAwayError as away:
            _say(f"the database is away: {type(away).__name__}")
        stop.wait(every)


def _list_dead(courier: Courier) -> None:
    letters = courier.dead()
    for letter in letters:
        notice, tried = letter.filed.notice, letter.attempts
        last = f"last status {tried[-1].status or 'none'}" if tried else "never sent"
        click.echo(
            f"{letter.id}  {notice.queued_at:%Y-%m-%dT%H:%M}Z  {notice.unit}  {notice.code}"
            f"  to {letter.person}  tried {len(tried)}, {last}"
        )
    if letters:
        raise click.exceptions.Exit(1)


def _say(line: str) -> None:
    click.echo(line, err=True)
    sys.stderr.flush()
