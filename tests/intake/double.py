"""A small dialogue in place of the real one: "BED LEVEL AT" records a line there, anything else is told.

The tests of the intake and of the web edge are about what surrounds a turn, not about what it says.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime

from bot.dialogue.answer import Answer, ChartRow, Result
from bot.dialogue.context import Context
from bot.engine.entries import Line
from bot.engine.ledger import fold
from bot.intake import Deployment, Incoming
from bot.store import Book, Question, Store, open_store
from bot.unit import Unit, demo_unit

NOON = datetime(2026, 3, 4, 17, tzinfo=UTC)
"""Noon of the demo ward."""

_LINE = re.compile(r"(\w+) (\d{1,4})")


def respond(incoming: Incoming, context: Context, book: Book) -> Answer:
    """Record the line at the minute of arrival, and tell what drained since the line before."""
    found = _LINE.fullmatch(incoming.text)
    if found is None:
        return _answer(incoming, "told", f"{context.person.name}: {incoming.text}")
    bed, level = found[1], int(found[2])
    drain = next(iter(book.drains_of(bed)), None) or book.open_drain(bed, None)
    entry = book.append(drain, context.now, Line(level_ml=level))
    levels = fold(book.entries(drain)).levels
    drained = levels[-1].total_ml - levels[-2].total_ml if len(levels) > 1 else 0
    row = ChartRow(
        bed=bed,
        volume_ml=drained,
        begin=levels[0].at,
        end=levels[-1].at,
        shift="day",
        to_chart=True,
        at_least=False,
    )
    result = Result(status="recorded", bed=bed, kind="mark", entries=(entry.id,))
    return _answer(incoming, "recorded", f"Chart {drained} mL.", (result,), (row,))


def asks(incoming: Incoming, context: Context, book: Book) -> Answer:
    """Ask the sender something, whatever they said."""
    book.ask(
        Question(
            unit=context.unit.id,
            sender=incoming.sender,
            bed="1",
            drain=None,
            slot="at",
            asked_at=context.now,
            message=incoming.id,
            text="When?",
            said_json="{}",
        )
    )
    return _answer(incoming, "question", f"{context.unit.name}: when?")


def beds_named(incoming: Incoming, _unit: Unit) -> frozenset[str]:
    """The bed of a line."""
    found = _LINE.fullmatch(incoming.text)
    return frozenset([found[1]] if found else [])


def deployment(
    units: tuple[Unit, ...] = (),
    store: Store | None = None,
    respond: Callable[[Incoming, Context, Book], Answer] = respond,
) -> Deployment:
    """A deployment of these units (the demo ward) that the double answers for."""
    return Deployment(
        units=units or (demo_unit(),), store=store or open_store(), respond=respond, beds_named=beds_named
    )


def _answer(
    incoming: Incoming,
    status: str,
    reply: str,
    results: tuple[Result, ...] = (),
    chart: tuple[ChartRow, ...] = (),
) -> Answer:
    return Answer(
        id=incoming.id,
        status=status,  # type: ignore[arg-type]
        reply=reply,
        speech=reply,
        segments=1,
        results=results,
        chart=chart,
    )
