"""A long reply cut into pages that fit a phone, whole lines only.

The last line of a page that is not the last says how to get the next one, in words that stand for
themselves: they can be said hours later, on another phone, after a restart.
"""

from __future__ import annotations

import re

from bot.wording.gsm import segments

PAGE_SEGMENTS = 3
"""Three parts of a text message, about what a phone shows at once. Common practice, no source."""

_NEXT = re.compile(r'^Page \d+ of \d+: say more \("(?P<ask>[^"\n]+)"\)\.$', re.MULTILINE)


def page_of(head: str, rows: tuple[str, ...], number: int = 1, ask: str = "") -> tuple[str, ...]:
    """One page: the head, the rows that fit, and a last line that says how to get more.

    `ask` is the query in words, without a page. A number past the last page gives the last; a row that
    is longer than a page stands alone.
    """
    pages = _pages(head, rows, ask)
    number = min(max(number, 1), len(pages))
    lines = (head, *pages[number - 1])
    if len(pages) == 1:
        return lines
    if number == len(pages):
        return (*lines, f"Page {number} of {number}.")
    return (*lines, _footer(number, len(pages), ask))


def next_page(reply: str) -> str | None:
    """What "more" means after this reply: the words that its last line gives, or None when it has no more."""
    found = _NEXT.search(reply)
    return found["ask"] if found else None


def _footer(number: int, pages: int, ask: str) -> str:
    return f'Page {number} of {pages}: say more ("{ask} page {number + 1}").'


def _pages(head: str, rows: tuple[str, ...], ask: str) -> tuple[tuple[str, ...], ...]:
    if segments("\n".join((head, *rows))) <= PAGE_SEGMENTS:
        return (rows,)
    footer = _footer(99, 99, ask)
    pages: list[tuple[str, ...]] = []
    page: tuple[str, ...] = ()
    for row in rows:
        if page and segments("\n".join((head, *page, row, footer))) > PAGE_SEGMENTS:
            pages.append(page)
            page = ()
        page = (*page, row)
    return (*pages, page)
