"""The queries about the sender and the conversation: who am I, and the last reply again."""

from __future__ import annotations

import json

from bot.dialogue.queries.desk import Desk
from bot.store.book import Book
from bot.wording.queries import status as words


def me(desk: Desk) -> tuple[str, ...]:
    """Who the sender is, in which role and unit, and what that allows."""
    person, unit = desk.context.person, desk.context.unit
    return words.me_text(person.name, person.role.value, unit.name, person.until, desk.view)


def repeat(desk: Desk) -> tuple[str, ...]:
    """The last reply to the sender, word for word."""
    return last_reply(desk.context.person.id, desk.book) or (words.NOTHING_SAID,)


def last_reply(person: str, book: Book) -> tuple[str, ...]:
    """The lines of the last reply to that person; none if there was none."""
    row = book.last_message(person)
    if row is None or row.reply is None:
        return ()
    reply = json.loads(row.reply).get("reply")
    return tuple(reply.split("\n")) if isinstance(reply, str) and reply else ()
