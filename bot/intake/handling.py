"""The one way in: what happens to a message between the edge and the dialogue, in one transaction."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Literal, TypeAlias

from bot.dialogue.answer import Answer
from bot.dialogue.context import Context
from bot.intake.incoming import NOT_KEPT, Incoming, may_identify
from bot.intake.roster import Roster, listed
from bot.intake.whereabouts import BedsNamed, Place, place
from bot.links import Links
from bot.store import Book, Store
from bot.store.book import Claim, Stored
from bot.unit import Unit
from bot.wording.gsm import segments
from bot.wording.refusals import holds_identifier, not_on_a_list, which_unit
from bot.wording.speech import spoken

Respond: TypeAlias = Callable[[Incoming, Context, Book], Answer]
"""What the dialogue makes of a message that is someone's to send, in one unit."""


@dataclass(slots=True, kw_only=True)
class Deployment:
    """Everything that a message meets: the units, the ledger, and who reads and answers."""

    units: tuple[Unit, ...]
    store: Store
    respond: Respond
    beds_named: BedsNamed
    links: Links | None = None
    roster: Roster = field(init=False)

    def __post_init__(self) -> None:
        self.roster = Roster(self.units)


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """The answer object as JSON. `kept`: it is new, it was given before, or its id was another message's."""

    answer: str
    status: str
    unit: str
    kept: Literal["new", "before", "other"] = "new"


def handle(incoming: Incoming, deployment: Deployment) -> Outcome:
    """What the sender is told, once it is committed; the same id and body are told the same again."""
    return deployment.store.transact(lambda book: _handled(incoming, deployment, book))


def _handled(incoming: Incoming, deployment: Deployment, book: Book) -> Outcome:
    units = deployment.roster.units_of(incoming.sender, incoming.arrived, book)
    where = place(incoming, units, book, deployment.beds_named) if units else Place(None, incoming)
    unit = where.unit.id if where.unit else ""
    stored = book.claim(_claim(incoming, unit))
    if stored is not None:
        return _again(stored, incoming, unit)
    answer = _answer(incoming, where, units, deployment, book)
    reply = answer.as_json()
    book.keep_reply(incoming.id, reply)
    return Outcome(answer=reply, status=answer.status, unit=unit)


def _claim(incoming: Incoming, unit: str) -> Claim:
    """The row to keep of it. The words of a stranger, and words that may name a patient, are not kept."""
    text: str | None = incoming.text if unit else None
    if may_identify(incoming):
        text = NOT_KEPT
    return Claim(
        id=incoming.id,
        digest=incoming.body_digest,
        arrived=incoming.arrived,
        sender=incoming.sender,
        unit=unit,
        text=text,
        channel=incoming.channel,
    )


def _again(stored: Stored, incoming: Incoming, unit: str) -> Outcome:
    """What the id was answered before; `other` when that was another body."""
    kept: Literal["before", "other"] = "before" if stored.digest == incoming.body_digest else "other"
    status: str = json.loads(stored.reply)["status"]
    return Outcome(answer=stored.reply, status=status, unit=unit, kept=kept)


def _answer(
    incoming: Incoming, where: Place, units: tuple[Unit, ...], deployment: Deployment, book: Book
) -> Answer:
    if not units:
        return _refusal(incoming, not_on_a_list())
    if may_identify(incoming):
        return _refusal(incoming, holds_identifier())
    person = listed(where.unit, incoming.sender, incoming.arrived) if where.unit else None
    if where.unit is None or person is None:
        return _refusal(incoming, which_unit(tuple(unit.name for unit in units)))
    context = Context(
        unit=where.unit,
        person=person,
        now=incoming.arrived,
        sent_at=incoming.sent_at,
        message_id=incoming.id,
        channel=incoming.channel,
        links=deployment.links,
    )
    return deployment.respond(where.incoming, context, book)


def _refusal(incoming: Incoming, reply: str) -> Answer:
    """An answer that says only why nothing was taken."""
    return Answer(
        id=incoming.id, status="refused", reply=reply, speech=spoken(reply), segments=segments(reply)
    )
