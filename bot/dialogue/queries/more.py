"""What "more" stands for: the next page of the last reply, in the words that this reply itself gave."""

from __future__ import annotations

from bot.dialogue.context import Context
from bot.dialogue.queries.people import last_reply
from bot.store.book import Book
from bot.wording.pages import next_page

_WORDS = frozenset({"more", "next", "next page", "more please", "say more"})


def asked_for_more(text: str, context: Context, book: Book) -> str | None:
    """The query that "more" stands for; None where the text is something else, or there is no more."""
    if text.strip(" .!?\n").casefold() not in _WORDS:
        return None
    return next_page("\n".join(last_reply(context.person.id, book)))
