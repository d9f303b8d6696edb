"""A ward to talk to in tests: the real intake, reader, engine and store, on an in-memory database.

ward = Ward()
answer = ward.says("Amy", "bed 12 mark 1050 at 1900", at="19:02")
"""

from __future__ import annotations

import json
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from typing import Any, Literal

from bot.dialogue.said import Message, NotSure, Said
from bot.dialogue.turn import take
from bot.engine.entries import Entry
from bot.engine.ledger import Ledger, fold
from bot.intake import Deployment, Incoming, handle
from bot.intake.respond import deployment
from bot.store import Question, open_store
from bot.unit import Person, Role, Unit, demo_unit

WEDNESDAY = date(2026, 3, 4)


@dataclass(frozen=True, slots=True)
class Heard:
    """One answer object, with what tests look at most."""

    json: dict[str, Any]

    @property
    def reply(self) -> str:
        """The reply's text."""
        return str(self.json["reply"])

    @property
    def status(self) -> str:
        """recorded, told, question or refused."""
        return str(self.json["status"])

    @property
    def chart(self) -> list[tuple[int, str, str]]:
        """The new volumes to chart: mL, from, to."""
        rows = (row for row in self.json["chart"] if not row["replaces"])
        return [(row["volume_ml"], row["from"][11:16], row["to"][11:16]) for row in rows]

    @property
    def codes(self) -> set[str]:
        """The codes of the cautions."""
        return {caution["code"] for caution in self.json["cautions"]}

    @property
    def says(self) -> list[str]:
        """What the questions offer to say."""
        return [choice["say"] for question in self.json["questions"] for choice in question["choices"]]

    @property
    def entries(self) -> list[str]:
        """The ids of what was recorded."""
        return [entry for result in self.json["results"] for entry in result["entries"]]


class Ward:
    """One unit (or several) with its people; time only goes on."""

    def __init__(self, *units: Unit, day: date = WEDNESDAY, url: str = "sqlite://", **changes: Any) -> None:
        self.units = units or (replace(demo_unit(), **changes),)
        self._url = url
        self.store = open_store(url)
        self._deployment = deployment(self.units, self.store)
        self._day = day
        self._count = 0
        self.now = self._moment("00:00")

    @property
    def unit(self) -> Unit:
        """The (first) unit."""
        return self.units[0]

    def says(
        self,
        who: str,
        text: str,
        *,
        at: str | None = None,
        channel: Literal["text", "voice"] = "text",
        sent: str | None = None,
    ) -> Heard:
        """The answer to one message that arrives at this local time; without one, a minute after the last."""
        self.now = self._moment(at) if at else self.now + timedelta(minutes=1)
        return self._send(self._deployment, who, text, channel, sent)

    def tells(self, who: str, *items: Said | NotSure, at: str | None = None) -> Heard:
        """The answer to what a message says, in ledger words: where reading is not the subject."""
        self.now = self._moment(at) if at else self.now + timedelta(minutes=1)
        message = Message(
            said=tuple(each for each in items if not isinstance(each, NotSure)),
            unclear=tuple(each for each in items if isinstance(each, NotSure)),
        )
        told = replace(self._deployment, respond=lambda _, context, book: take(message, context, book))
        return self._send(told, who, "told in ledger words", "text", None)

    def utc(self, clock: str) -> datetime:
        """The moment of a local time of today."""
        return self._moment(clock)

    def _send(
        self, where: Deployment, who: str, text: str, channel: Literal["text", "voice"], sent: str | None
    ) -> Heard:
        self._count += 1
        incoming = Incoming(
            id=f"msg-{self._count}",
            sender=self.id_of(who),
            text=text,
            arrived=self.now,
            sent_at=self._moment(sent) if sent else None,
            channel=channel,
        )
        return Heard(json.loads(handle(incoming, where).answer))

    def restart(self) -> None:
        """Only the database (a file) stays."""
        self.store.close()
        self.store = open_store(self._url)
        self._deployment = deployment(self.units, self.store)

    def next_day(self) -> None:
        """Times said from here on are of the next day."""
        self._day += timedelta(days=1)

    def id_of(self, name: str) -> str:
        """The sender id of a person, or the name itself for a stranger."""
        people = (person for unit in self.units for person in unit.people)
        return next((person.id for person in people if person.name == name), name)

    def ledgers(self, bed: str, unit: Unit | None = None) -> list[Ledger]:
        """The ledgers of every drain ever seen at the bed, the latest first."""
        held = unit or self.unit
        with self.store.turn(held.id) as book:
            return [fold(book.entries(drain), held.policy.capacity_ml) for drain in book.drains_of(bed)]

    def ledger(self, bed: str) -> Ledger:
        """The ledger of the drain seen last at the bed."""
        return self.ledgers(bed)[0]

    def levels(self, bed: str) -> list[int]:
        """The levels of that drain, in mL, in order."""
        return [level.level_ml for level in self.ledger(bed).levels]

    def entries(self) -> list[Entry]:
        """Everything recorded in the first unit."""
        with self.store.turn(self.unit.id) as book:
            drains = dict.fromkeys(drain for bed in self.unit.beds for drain in book.drains_of(bed))
            return [entry for drain in drains for entry in book.entries(drain)]

    def unsettled(self) -> tuple[Question, ...]:
        """The questions of the first unit that nothing has settled."""
        with self.store.turn(self.unit.id) as book:
            book.take_up("look", "test", self.now)
            return book.unsettled()

    def notices(self) -> list[tuple[str, bool]]:
        """The code of each queued notice, and whether it is unconfirmed."""
        with self.store.turn(self.unit.id) as book:
            return [(notice.code, notice.unconfirmed) for notice in book.notices()]

    def _moment(self, clock: str) -> datetime:
        local = datetime.combine(self._day, time.fromisoformat(clock), tzinfo=self.unit.zone)
        return local.astimezone(UTC)


def nurse(name: str, role: Role = Role.NURSE) -> Person:
    """A person whose id is their name in lower case."""
    return Person(id=name.lower(), name=name, role=role)


__all__ = ["Heard", "Ward", "nurse"]
