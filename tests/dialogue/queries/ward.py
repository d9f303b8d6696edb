"""A ward for the query tests: entries told on a real in-memory ledger, and queries asked of it."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot.dialogue.context import Context
from bot.dialogue.pending import Ask, Pending
from bot.dialogue.queries import QueryReply, answer_query
from bot.dialogue.said import Query, Report, Topic
from bot.dialogue.said_json import dumped
from bot.engine.entries import Entry, Line, Moved, Opened, Payload, Placed
from bot.engine.policy import Policy, Schedule
from bot.links import Links
from bot.store import Question, Store, open_store
from bot.store.book import Book, Claim
from bot.unit import Person, Role, Unit
from tests.wording.language import faults

ZONE = ZoneInfo("America/New_York")
AMY = Person(id="rn-1", name="Amy", role=Role.NURSE)
BEN = Person(id="rn-2", name="Ben", role=Role.NURSE)
CARLA = Person(id="rn-3", name="Carla", role=Role.CHARGE)
DAN = Person(id="st-1", name="Dan", role=Role.READER)
WARD_4 = Unit(
    id="ward-4",
    name="Ward 4",
    zone=ZONE,
    beds=tuple(str(bed) for bed in range(1, 25)),
    people=(AMY, BEN, CARLA, DAN),
    policy=Policy(schedule=Schedule(zone=ZONE)),
)


def moment(told: str) -> datetime:
    """Ward time as UTC: "4 19:00" is 4 March 2026 at 19:00."""
    day, clock = told.split()
    hour, minute = clock.split(":")
    return datetime(2026, 3, int(day), int(hour), int(minute), tzinfo=ZONE).astimezone(UTC)


def context_of(at: str, who: Person, unit: Unit = WARD_4) -> Context:
    """Someone's message that arrived then."""
    return Context(unit=unit, person=who, now=moment(at), message_id="m")


@dataclass
class Ward:
    """Ward 4 with an empty ledger."""

    unit: Unit = WARD_4
    store: Store = field(default_factory=lambda: open_store("sqlite://"))
    drains: dict[tuple[str, str | None], str] = field(default_factory=dict)
    links: Links | None = None
    _messages: int = 0

    def tell(
        self,
        at: str,
        bed: str,
        payload: Payload,
        *,
        tube: str | None = None,
        entered: str | None = None,
        who: Person = AMY,
    ) -> Entry:
        """One entry, recorded two minutes after it happened unless said; a bed's first opens its drain."""
        happened = moment(at)
        recorded = moment(entered) if entered else happened + timedelta(minutes=2)
        with self.store.turn(self.unit.id) as book:
            self._take_up(book, recorded, who)
            drain = self._drain(book, bed, tube, happened, payload)
            if isinstance(payload, Moved):
                book.berth(drain, payload.to_bed, tube, happened)
                self.drains[(payload.to_bed, tube)] = self.drains.pop((bed, tube))
            return book.append(drain, happened, payload)

    def lines(self, bed: str, told: str, *, tube: str | None = None, who: Person = AMY) -> None:
        """Marks in one go: "4 18:00 690, 19:00 730" (a day holds for those after it)."""
        day = ""
        for item in told.split(", "):
            *days, clock, level = item.split(" ")
            day = days[0] if days else day
            self.tell(f"{day} {clock}", bed, Line(level_ml=int(level)), tube=tube, who=who)

    def new_drain(self, bed: str, tube: str | None = None) -> None:
        """What is told of this bed next is about another drain."""
        self.drains.pop((bed, tube), None)

    def asks_back(
        self, at: str, bed: str, level_ml: int, *, who: Person = AMY, danger: bool = False
    ) -> Question:
        """A question about a line that the bot left open."""
        said = Report(bed=bed, at=moment(at), fact=Line(level_ml=level_ml))
        pending = Pending(ask=Ask.DOUBT, said=said, brief=f"bed {bed} {level_ml:,} mL at {at.split()[1]}")
        with self.store.turn(self.unit.id) as book:
            self._take_up(book, moment(at), who)
            return book.ask(
                Question(
                    unit=self.unit.id,
                    sender=who.id,
                    bed=bed,
                    drain=None,
                    slot="level_ml",
                    asked_at=moment(at),
                    message=book.hand.message,
                    text=f"Bed {bed}: is {level_ml:,} mL right?",
                    said_json=dumped(pending),
                    danger=danger,
                )
            )

    def replies(self, at: str, reply: str, *, who: Person = AMY) -> None:
        """A message of someone's that got this reply (the JSON that is kept)."""
        with self.store.turn(self.unit.id) as book:
            message = self._take_up(book, moment(at), who)
            book.keep_reply(message, reply)

    def asks(
        self, at: str, topic: Topic, bed: str | None = None, *, who: Person = AMY, **slots: Any
    ) -> QueryReply:
        """The reply to a query; every reply is checked for what a nurse must not be shown."""
        query = Query(topic=topic, bed=bed, **slots)
        with self.store.turn(self.unit.id) as book:
            message = self._take_up(book, moment(at), who)
            context = Context(
                unit=self.unit, person=who, now=moment(at), message_id=message, links=self.links
            )
            reply = answer_query(query, context, book)
        assert faults(reply.text) == []
        return reply

    def with_unit(self, unit: Unit) -> Ward:
        """Another unit on the same database."""
        return replace(self, unit=unit, drains={})

    def _take_up(self, book: Book, arrived: datetime, who: Person) -> str:
        self._messages += 1
        name = f"{self.unit.id}-{self._messages}"
        claim = Claim(
            id=name, digest=name, arrived=arrived, sender=who.id, unit=self.unit.id, text="", channel="text"
        )
        assert book.claim(claim) is None
        return name

    def _drain(self, book: Book, bed: str, tube: str | None, at: datetime, first: Payload) -> str:
        if (bed, tube) not in self.drains:
            drain = self.drains[(bed, tube)] = book.open_drain(bed, tube, at)
            if not isinstance(first, Placed):
                book.append(drain, at, Opened(bed=bed, tube=tube))
        return self.drains[(bed, tube)]
