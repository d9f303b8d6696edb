"""The real reader and the real dialogue, as `Deployment` wants them."""

from __future__ import annotations

from bot.dialogue.answer import Answer
from bot.dialogue.context import Context
from bot.dialogue.late import LONG_ON_ITS_WAY, at_both
from bot.dialogue.queries.more import asked_for_more
from bot.dialogue.turn import take
from bot.intake.handling import Deployment
from bot.intake.incoming import Incoming
from bot.links import Links
from bot.reading import read
from bot.store import Book, Store
from bot.unit import Unit


def deployment(units: tuple[Unit, ...], store: Store, links: Links | None = None) -> Deployment:
    """A deployment that reads and answers for real; with links, where it has an address."""
    return Deployment(units=units, store=store, respond=respond, beds_named=beds_named, links=links)


def respond(incoming: Incoming, context: Context, book: Book) -> Answer:
    """The dialogue's answer to what the reader finds in the message, or in what "more" stands for."""
    more = asked_for_more(incoming.text, context, book)
    text, alternatives = (more, ()) if more is not None else (incoming.text, incoming.alternatives)
    message = read(text, context.unit, incoming.arrived, incoming.channel, alternatives=alternatives)
    if context.late_by > LONG_ON_ITS_WAY:
        sent = read(text, context.unit, context.said_at, incoming.channel, alternatives=alternatives)
        message = at_both(message, sent)
    return take(message, context, book)


def beds_named(incoming: Incoming, unit: Unit) -> frozenset[str]:
    """Every bed that the message names, whether or not the unit has it."""
    message = read(
        incoming.text, unit, incoming.arrived, incoming.channel, alternatives=incoming.alternatives
    )
    said = (
        *message.said,
        *(item.partial for item in message.unclear),
        *((message.reply,) if message.reply else ()),
    )
    return frozenset(item.bed for item in said if item is not None and item.bed is not None)
