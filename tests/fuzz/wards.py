"""One ward after another gets a few dozen mangled messages, and what must always hold is looked at.

A ward is made from its number alone, so that what was found can be seen again.
"""

from __future__ import annotations

import json
import traceback
from collections import Counter
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from random import Random
from typing import Any, Literal

from bot.engine.entries import FinalLevel, Line
from bot.engine.ledger import fold
from bot.engine.volumes import intervals
from bot.intake import Deployment, Incoming, TextError, clean_text, handle
from bot.intake.respond import deployment
from bot.reading import read
from bot.store import open_store
from bot.store.verify import entry_flaws
from bot.unit import demo_unit
from bot.wording.formats import ml
from bot.wording.gsm import is_gsm
from tests.fuzz.mangling import mangled
from tests.web.described import faults

MESSAGES_OF_A_WARD = 20
"""More would mostly be about the questions that are left open."""

START = datetime(2026, 3, 4, 21, 30, tzinfo=UTC)
"""Half past four in the afternoon of the demo ward: a shift ends on the way."""


@dataclass(frozen=True, slots=True)
class Finding:
    """Something that must not be: in which ward, at which of its messages, and what."""

    ward: int
    message: int
    text: str
    what: str


@dataclass(slots=True)
class Tally:
    """How the messages ended, and what was found."""

    outcomes: Counter[str] = field(default_factory=Counter)
    found: list[Finding] = field(default_factory=list)

    def add(self, other: Tally) -> None:
        """Add what another ward gave."""
        self.outcomes += other.outcomes
        self.found += other.found


class Ward:
    """A ward, the chart that its nurses keep from the replies, and the tally."""

    def __init__(self, number: int, share: float) -> None:
        self._number = number
        self._share = share
        self._random = Random(number)
        self._unit = demo_unit()
        self._store = open_store()
        self._deployment: Deployment = deployment((self._unit,), self._store)
        self._now = START
        self._charted_ml = 0
        self.tally = Tally()

    def play(self, messages: int) -> Tally:
        """What became of so many messages."""
        for number in range(messages):
            text = mangled(self._random)
            try:
                self._send(number, text)
            except Exception:  # noqa: BLE001 - whatever it is, it is what is looked for
                self._find(number, text, traceback.format_exc())
        self._look(messages)
        self._store.close()
        return self.tally

    def _send(self, number: int, text: str) -> None:
        self._now += timedelta(minutes=self._random.choice((0, 1, 1, 2, 5, 20)))
        incoming = self._incoming(number, text)
        if incoming is None:
            self.tally.outcomes["not a text"] += 1
            return
        if self._random.random() >= self._share:
            read(incoming.text, self._unit, incoming.arrived, incoming.channel)
            self.tally.outcomes["read only"] += 1
            return
        answer = json.loads(handle(incoming, self._deployment).answer)
        self.tally.outcomes[answer["status"]] += 1
        for fault in self._faults(number, answer):
            self._find(number, text, fault)
        self._chart(answer)

    def _incoming(self, number: int, text: str) -> Incoming | None:
        channel: Literal["text", "voice"] = "voice" if self._random.random() < 0.15 else "text"
        try:
            said = clean_text(text)
        except TextError:
            return None
        return Incoming(
            id=f"{self._number}-{number}",
            sender=self._random.choice(("amy", "amy", "ben", "carla")),
            text=said,
            arrived=self._now,
            channel=channel,
        )

    def _faults(self, number: int, answer: dict[str, Any]) -> list[str]:
        """What is wrong with an answer; its shape is looked at now and then, since that takes longest."""
        found = [] if is_gsm(answer["reply"]) else ["the reply cannot be sent as a text message"]
        if number % 10 == 0:
            found += faults("Answer", answer)
        with self._store.turn(self._unit.id) as book:
            recorded = book.entries_of_message(answer["id"])
        levels = [each.payload.level_ml for each in recorded if isinstance(each.payload, Line | FinalLevel)]
        unread = [ml(level) for level in levels if ml(level) not in answer["reply"]]
        return found + [f"{level} was recorded and not read back" for level in unread]

    def _chart(self, answer: dict[str, Any]) -> None:
        """Keep the chart as a nurse does: what is amended is struck out, once."""
        struck = {
            (row["bed"], row["tube"], old["from"], old["to"], old["volume_ml"])
            for row in answer["chart"]
            for old in row["replaces"]
        }
        self._charted_ml += sum(row["volume_ml"] for row in answer["chart"])
        self._charted_ml -= sum(volume for *_, volume in struck)

    def _look(self, messages: int) -> None:
        """Whether the whole still holds: chains, and the chart to the millilitre."""
        with self._store.connection() as connection:
            for flaw in entry_flaws(connection):
                self._find(messages, "", f"{flaw.where}: {flaw.what}")
        policy = self._unit.policy
        with self._store.turn(self._unit.id) as book:
            ledgers = [fold(book.entries(drain), policy.capacity_ml) for drain in book.every_drain()]
        held = sum(each.volume_ml for ledger in ledgers for each in intervals(ledger, policy.schedule))
        if held != self._charted_ml:
            self._find(messages, "", f"the nurses' chart holds {self._charted_ml} mL, the ledgers {held} mL")

    def _find(self, number: int, text: str, what: str) -> None:
        self.tally.outcomes["FOUND"] += 1
        self.tally.found.append(Finding(self._number, number, text, what))


def played(number: int, share: float = 1.0) -> Tally:
    """What the ward of that number gave; `share`: how many of its messages are answered, not only read."""
    return Ward(number, share).play(MESSAGES_OF_A_WARD)
