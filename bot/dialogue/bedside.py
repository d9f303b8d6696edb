"""One turn's view of the ward: the message's surroundings, the ledgers as they are and as they were.

The only place of the dialogue that appends entries and asks questions. A ledger is folded again after each
entry, so that a message of several statements sees its own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import TypeVar

from bot.dialogue.brief import brief
from bot.dialogue.context import Context
from bot.dialogue.part import BedCaution, Part
from bot.dialogue.pending import NO_READING, Pending
from bot.dialogue.said import Amount, NotSure, Report, Said, Slots
from bot.dialogue.said_json import dumped, loaded
from bot.engine.cautions import cautions
from bot.engine.entries import Entry, Left, Opened, Payload
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient, patient_in
from bot.engine.policy import Policy
from bot.engine.resumed import resumed
from bot.engine.values import Amendment, Interval, Severity
from bot.engine.volumes import intervals
from bot.store.book import Book
from bot.store.questions import Choice, Question
from bot.wording.cautions import caution_text, told_once
from bot.wording.gsm import gsm_only
from bot.wording.queries.view import View
from bot.wording.questions import Wording
from bot.wording.readback import closed_text

T = TypeVar("T")

LATELY = timedelta(days=7)
"""A drain that was closed longer before what a message is about is not looked at, unless it was the last."""


_ABOUT_EARLIER = frozenset({"corrected", "withdrawn", "asked", "answered"})
"""The time of these is that of an older line or window, not of the message."""


@dataclass(frozen=True, slots=True, kw_only=True)
class About:
    """What a question is about: bed, tube and drain where known, the slot asked, the statement's kind."""

    bed: str | None
    tube: str | None = None
    drain: str | None = None
    slot: str
    kind: str


@dataclass(slots=True, kw_only=True)
class Bedside:
    """The unit's book in the hands of one message."""

    context: Context
    book: Book
    told_apart: frozenset[tuple[str, str]] = frozenset()
    """Beds and tubes that this message itself tells apart: "bed 12 left 340 right 120"."""
    leaving: frozenset[str] = frozenset()
    """Beds whose patients this message moves away."""
    waiting: tuple[Said | NotSure, ...] = ()
    """What the message says further on and waits for the answer, should this statement be asked about."""
    freed: tuple[Said | NotSure, ...] = ()
    """What waited for a question that a statement of this message has answered: it is taken next."""
    before: dict[str, Ledger] = field(default_factory=dict)
    """The ledgers as they were before this message, of the drains that it wrote to."""
    folded: dict[str, Ledger] = field(default_factory=dict)
    """Ledgers as they stand, folded once for each entry written."""
    volumes_held: dict[str, tuple[Interval, ...]] = field(default_factory=dict)
    amended: dict[str, tuple[Amendment, ...]] = field(default_factory=dict)
    """What the message makes of earlier volumes; filled when it is worded."""
    patients_before: dict[str, Patient] = field(default_factory=dict)
    view: View = field(init=False)
    """From when and where the reply is written."""

    def __post_init__(self) -> None:
        self.view = self.context.view

    @property
    def now(self) -> datetime:
        """The arrival of the message, in UTC."""
        return self.context.now

    @property
    def policy(self) -> Policy:
        """The unit's policy."""
        return self.context.unit.policy

    def moment(self, at: datetime | None) -> datetime:
        """When it happened: the time said, else when the message was sent."""
        return at if at is not None else self.context.said_at

    def ledger(self, drain: str) -> Ledger:
        """The drain's ledger as it stands."""
        if drain not in self.folded:
            self.folded[drain] = resumed(self.book.entries(drain), self.policy.capacity_ml)
        return self.folded[drain]

    def volumes(self, drain: str) -> tuple[Interval, ...]:
        """The drain's volumes to chart, in order."""
        if drain not in self.volumes_held:
            self.volumes_held[drain] = intervals(self.ledger(drain), self.policy.schedule)
        return self.volumes_held[drain]

    def _changed(self, drain: str) -> None:
        """Forget what was reckoned of a ledger that an entry is written to."""
        for held in (self.folded, self.volumes_held, self.amended):
            held.pop(drain, None)

    def ledgers_of(self, bed: str, at: datetime | None = None) -> tuple[Ledger, ...]:
        """The ledgers of the drains that are at this bed or lately were (or about that moment), the latest
        first."""
        since = min(self.now, at or self.now) - LATELY
        return tuple(self.ledger(drain) for drain in self.book.drains_of(bed, since))

    def patient(self, bed: str) -> Patient:
        """The bed's open drains."""
        return patient_in(bed, self.ledgers_of(bed))

    def open_drain(self, bed: str, tube: str | None, at: datetime, payload: Payload | None = None) -> str:
        """A new drain's id; its first entry is the placement, or that it was found in this bed."""
        self.note(bed)
        drain = self.book.open_drain(bed, tube, at)
        self.before[drain] = fold((), self.policy.capacity_ml)
        self.book.append(drain, at, payload or Opened(bed=bed, tube=tube))
        self._changed(drain)
        return drain

    def record(self, drain: str, at: datetime, payload: Payload) -> Entry:
        """The entry as recorded."""
        ledger = self.ledger(drain)
        self.before.setdefault(drain, ledger)
        for bed in {ledger.bed, ledger.bed_at(at)} - {None}:
            self.note(str(bed))
        self._changed(drain)
        return self.book.append(drain, at, payload)

    def note(self, bed: str) -> None:
        if bed not in self.patients_before:
            self.patients_before[bed] = self.patient(bed)

    def supposed(self, ledger: Ledger, at: datetime, *payloads: Payload) -> Ledger:
        """The ledger as it would be with these entries; nothing is recorded."""
        for payload in payloads:
            ledger = ledger.with_entry(self.next_entry(ledger, at, payload))
        return ledger

    def next_entry(self, ledger: Ledger, at: datetime, payload: Payload) -> Entry:
        """The entry as this message would record it next."""
        return ledger.next_entry(payload, at, self.now, self.context.person.id, self.context.message_id)

    def dangers(self, bed: str, supposed: Ledger) -> tuple[BedCaution, ...]:
        """The cautions of high severity that the supposed ledger would raise at its bed, or raise further."""
        before = self.patient(bed)
        others = tuple(each for each in before.drains if each.drain != supposed.drain)
        after = replace(before, drains=(*others, supposed))
        known = {each.key: (each.value, each.end) for each in cautions(before, self.now, self.policy)}
        return tuple(
            BedCaution(bed=bed, caution=replace(each, if_right=True))
            for each in cautions(after, self.now, self.policy)
            if each.severity is Severity.HIGH and known.get(each.key) != (each.value, each.end)
        )

    def close(self, drain: str, at: datetime) -> str:
        """The patient of this drain is gone, as another one is in its place; what to say of it."""
        last = self.ledger(drain).last
        self.record(drain, at, Left())
        return closed_text(last, self.view)

    def ask(
        self,
        pending: Pending,
        wording: Wording,
        about: About,
        *,
        dangers: tuple[BedCaution, ...] = (),
    ) -> Part:
        """The question as stored, with the danger that it must not hide, of which others are told too."""
        pending = self.pinned(pending)
        named = told_once(each.caution for each in dangers)
        urgent = tuple(self.caution_line(each) for each in dangers if each.caution in named)
        text = gsm_only("\n".join((*urgent, wording.text)))
        question = self.book.ask(
            Question(
                unit=self.context.unit.id,
                sender=self.context.person.id,
                bed=about.bed,
                drain=about.drain,
                slot=about.slot,
                asked_at=self.now,
                message=self.context.message_id,
                text=text,
                said_json=dumped(pending),
                choices=tuple(Choice(say, label) for say, label in wording.choices),
                danger=bool(dangers),
            )
        )
        for each in dangers:
            self.notify(each, unconfirmed=True)
        return Part(
            status="question",
            kind=about.kind,
            bed=about.bed,
            tube=about.tube,
            text=text,
            cautions=dangers,
            question=question,
        )

    def pinned(self, pending: Pending) -> Pending:
        """The statement with its time made certain: the answer comes later, the line was read now."""
        said = self._timed(pending.said, pending.slot)
        return replace(
            pending,
            said=said,
            readings=tuple(self._timed(each, pending.slot) for each in pending.readings),
            rest=tuple(self._timed(each, "") for each in (*pending.rest, *self._held(pending))),
            brief=pending.brief or brief(said, self.view),
        )

    def _held(self, pending: Pending) -> tuple[Said | NotSure, ...]:
        return () if pending.ask in NO_READING else self.waiting

    def open_questions(self) -> tuple[Question, ...]:
        """The sender's questions that can still be answered with a bare answer, the oldest first."""
        mine = self.book.unsettled(sender=self.context.person.id)
        return tuple(each for each in mine if not each.lapsed(self.now))

    def questions_at(self, bed: str) -> tuple[Question, ...]:
        """The unsettled questions about the bed: those of a drain go with it when its patient moves."""
        return tuple(
            each
            for each in self.book.unsettled()
            if bed == (each.bed if each.drain is None else self.ledger(each.drain).bed or each.bed)
        )

    def holds_back(self, parts: Iterable[Part]) -> bool:
        """Whether a reading was asked about in this message, so that what waits is kept with its question."""
        asked = (part.question for part in parts if part.question is not None and not part.answered)
        mine = (each for each in asked if each.message == self.context.message_id)
        return any(loaded(each.said_json, Pending).ask not in NO_READING for each in mine)

    def answered(self, question: Question, taken: Callable[[], Part]) -> Part:
        """What becomes of the reading of a question that a statement answers: `taken` takes it.

        What waited for it is taken next; should it be asked about again, that waits on, with what waits for
        the statement.
        """
        self.book.settle(question.id, "answered")
        rest, waiting = loaded(question.said_json, Pending).rest, self.waiting
        self.waiting = (*rest, *waiting)
        part = taken()
        self.waiting = waiting
        self.freed += () if self.holds_back([part]) else rest
        return part

    def _timed(self, said: T, slot: str) -> T:
        if isinstance(said, Slots) and said.kind in _ABOUT_EARLIER:
            return said
        if isinstance(said, Report | Amount | Slots) and said.at is None and slot != "at":
            return replace(said, at=self.context.said_at)
        return said

    def caution_line(self, told: BedCaution, *, still: bool = False) -> str:
        """The caution's sentence."""
        return caution_text(told.caution, self.context.unit.zone, self.now, still=still)

    def notify(self, told: BedCaution, *, unconfirmed: bool = False) -> None:
        """Queue what must reach someone who did not ask."""
        self.tell(told.bed, told.caution.code, self.caution_line(told), told.caution.drain, unconfirmed)

    def tell(
        self, bed: str | None, code: str, text: str, drain: str | None = None, unconfirmed: bool = False
    ) -> None:
        """Queue a notice about a bed."""
        notice = self.context.notice(bed, code, text)
        self.book.queue(replace(notice, drain=drain, unconfirmed=unconfirmed))
