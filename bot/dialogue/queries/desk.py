"""What every query is answered from: who asks, the moment, and the unit's ledgers in this transaction."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.dialogue.context import Context
from bot.dialogue.said import Query
from bot.engine.ledger import Ledger
from bot.engine.policy import Policy, Schedule
from bot.engine.resumed import resumed
from bot.store.book import Book
from bot.wording.pages import page_of
from bot.wording.queries.asking import asking_words
from bot.wording.queries.view import View


@dataclass(frozen=True, slots=True, kw_only=True)
class Desk:
    """One query with all that it may look at."""

    query: Query
    context: Context
    book: Book
    view: View
    """From when and where the reply is written."""

    @property
    def now(self) -> datetime:
        """The moment of the query, in UTC."""
        return self.context.now

    @property
    def policy(self) -> Policy:
        """The unit's policy."""
        return self.context.unit.policy

    @property
    def schedule(self) -> Schedule:
        """The unit's shifts."""
        return self.policy.schedule

    def page(self, head: str, rows: tuple[str, ...]) -> tuple[str, ...]:
        """The page that was asked for, with the words for the next one."""
        query = self.query
        zone = self.context.unit.zone
        ask = asking_words(query.topic, query.bed, query.tube, query.window, zone, at=query.at)
        return page_of(head, rows, query.page, ask)

    def ledger(self, drain: str) -> Ledger:
        """The drain's ledger as it stands."""
        return resumed(self.book.entries(drain), self.policy.capacity_ml)


def desk_of(query: Query, context: Context, book: Book) -> Desk:
    """The desk of a query."""
    return Desk(query=query, context=context, book=book, view=context.view)
