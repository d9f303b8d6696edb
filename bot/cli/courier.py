"""Who carries notices: from the outbox to the gateway, one letter at a time, and keeps what became of each.

It tells numbers and people on stderr, never a text, a bed or a level.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from threading import Event

import click

from bot.cli.reach import reach
from bot.intake.roster import listed, with_changes
from bot.notices.gateway import Gateway
from bot.notices.letters import body_of
from bot.notices.plan import LASTS, Letter, Round, dead, sends
from bot.settings import Settings
from bot.store import Store
from bot.store.connect import connect
from bot.store.notices import Attempt, Filed
from bot.store.people import PeopleEvent
from bot.unit import Unit, load_units
from bot.wording.notices import notice_text, seen_words

HISTORY = timedelta(days=60)
"""How far back the list of the dead goes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """A unit's outbox at one moment, and who can be told."""

    unit: Unit
    outbox: tuple[Filed, ...]
    at: Round
    changes: tuple[PeopleEvent, ...]


class Courier:
    """Carries letters from the outbox to the gateway, one at a time, and keeps what became of each."""

    def __init__(self, settings: Settings, store: Store) -> None:
        self._units = load_units(settings.units)
        self._store = store
        self._looking = Store(connect(settings.database_url, reading=True))
        self._gateway = Gateway(settings.notify_url or "", settings.notify_secrets)
        self._first_wait = timedelta(seconds=settings.notify_retry_s)
        self._said: dict[str, tuple[str, ...]] = {}

    def go_round(self, stop: Event | None = None) -> int:
        """How many letters were sent; ends early where no gateway answers, or when told to stop."""
        sent = 0
        for letter, look in self._due():
            if stop is not None and stop.is_set():
                break
            if self._send(letter, look).status is None:
                break
            sent += 1
        return sent

    def dead(self) -> tuple[tuple[Letter, Look], ...]:
        """What was given up, and where."""
        return tuple((letter, look) for look in self._looks(HISTORY) for letter in dead(look.outbox, look.at))

    def send_again(self, letters: tuple[tuple[Letter, Look], ...]) -> bool:
        """Send each once more, under its old id; whether all were taken. Ends where no gateway answers."""
        taken = 0
        for letter, look in letters:
            attempt = self._send(letter, look)
            if attempt.status is None:
                break
            taken += attempt.outcome == "delivered"
        return taken == len(letters)

    def close(self) -> None:
        """Let go of the connections."""
        self._gateway.close()
        self._looking.close()

    def _due(self) -> tuple[tuple[Letter, Look], ...]:
        return tuple(
            (letter, look) for look in self._looks(LASTS * 2) for letter in sends(look.outbox, look.at)
        )

    def _looks(self, back: timedelta) -> Iterator[Look]:
        now = datetime.now(UTC)
        for unit in self._units:
            with self._looking.turn(unit.id) as book:  # keeps no message waiting
                changes = book.people_events()
                outbox = book.filed(now - back)
            current = with_changes(unit, changes)
            found = reach(current, now)
            self._tell(unit.id, found.faults())
            at = Round(people=found.people, notify=unit.notify, first_wait=self._first_wait, now=now)
            yield Look(unit=current, outbox=outbox, at=at, changes=changes)

    def _tell(self, unit: str, faults: tuple[str, ...]) -> None:
        """Say who cannot be told: once, and again when it changes."""
        before, self._said[unit] = self._said.get(unit, ()), faults
        for fault in faults:
            if fault not in before:
                say(fault)

    def _send(self, letter: Letter, look: Look) -> Attempt:
        """What became of sending it once; kept before it is told."""
        now = datetime.now(UTC)
        receipt = self._gateway.send(letter.id, self._body(letter, look), now)
        attempt = Attempt(
            notice=letter.filed.number,
            person=letter.person,
            at=now,
            outcome=receipt.outcome,
            status=receipt.status,
        )
        with self._store.turn(look.unit.id) as book:
            book.note_attempt(attempt)
        say(f"{letter.id} to {letter.person}: {receipt.outcome} ({receipt.status or 'no answer'})")
        return attempt

    def _body(self, letter: Letter, look: Look) -> bytes:
        notice = letter.filed.notice
        current = (with_changes(unit, look.changes) for unit in self._units)
        on_lists = sum(listed(each, letter.person, look.at.now) is not None for each in current)
        words = seen_words(look.unit.name, notice.bed, several=on_lists > 1)
        text = notice_text(look.unit.name, notice.bed, notice.text, unconfirmed=notice.unconfirmed, say=words)
        return body_of(letter, text, words)


def say(line: str) -> None:
    """Tell whoever looks after the courier."""
    click.echo(line, err=True)
    sys.stderr.flush()
