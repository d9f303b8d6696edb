"""What must hold of a ledger after everything: each answered mark in it once, sums and replies right."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from sqlalchemy import Connection, select

from bot.engine.entries import Entry, Line
from bot.engine.ledger import fold
from bot.engine.policy import Schedule
from bot.engine.volumes import intervals
from bot.store import Store
from bot.store.connect import connect
from bot.store.rows import entry_of
from bot.store.tables import entries, messages, replies
from bot.store.verify import flaws
from tests.durability.phones import Journal, Mark
from tests.engine.sheet import ZONE


def faults(url: str, journal: Journal) -> tuple[str, ...]:
    """Everything that is wrong with the ledger; nothing is right."""
    store = Store(connect(url))
    try:
        with store.connection() as connection:
            return tuple(_faults(connection, journal))
    finally:
        store.close()


def _faults(connection: Connection, journal: Journal) -> Iterator[str]:
    yield from (f"{name} was refused with {status}" for name, status in journal.refused.items())
    flawed = [f"{flaw.where}: {flaw.what}" for flaw in flaws(connection)]
    yield from flawed
    if any(each.startswith("schema") for each in flawed):
        return
    yield from _messages(connection, journal)
    told = [entry_of(row) for row in connection.execute(select(entries).order_by(entries.c.position))]
    yield from _lines(told, journal)
    yield from _sums(told, journal)


def _messages(connection: Connection, journal: Journal) -> Iterator[str]:
    known = set(connection.scalars(select(messages.c.id)))
    kept = {row.message: row.reply for row in connection.execute(select(replies))}
    yield from (f"{name} was never sent" for name in known - set(journal.sent))
    yield from (f"{name} is there without a reply" for name in known - set(kept))
    for name, body in journal.answered.items():
        if name not in known:
            yield f"{name} was answered and is lost"
        elif kept.get(name, "").encode() != body:
            yield f"{name} has another reply than it was given"
    yield from (f"{mark.id} was never answered" for mark in journal.unanswered())


def _lines(told: Sequence[Entry], journal: Journal) -> Iterator[str]:
    """Each mark is one line, as it was sent."""
    lines = [entry for entry in told if isinstance(entry.payload, Line)]
    counts = Counter(entry.message for entry in lines)
    yield from (
        f"{name} is {counts[name]} lines"
        for name in journal.sent
        if name in journal.answered and counts[name] != 1
    )
    yield from (f"{entry.message} is another line" for entry in lines if not _is_as_sent(entry, journal))


def _is_as_sent(entry: Entry, journal: Journal) -> bool:
    mark = journal.sent.get(entry.message)
    return (
        mark is not None
        and isinstance(entry.payload, Line)
        and (entry.payload.level_ml, entry.at) == (mark.level_ml, mark.at)
    )


def _sums(told: Sequence[Entry], journal: Journal) -> Iterator[str]:
    """The volumes of each bed add up to what its first and its last line say."""
    drains = dict.fromkeys(entry.drain for entry in told)
    by_bed: dict[str | None, list[Mark]] = {}
    for mark in journal.sent.values():
        by_bed.setdefault(mark.bed, []).append(mark)
    beds: Counter[str | None] = Counter()
    for drain in drains:
        ledger = fold(entry for entry in told if entry.drain == drain)
        beds[ledger.bed] += 1
        levels = [mark.level_ml for mark in by_bed.get(ledger.bed, [])]
        charted = sum(one.volume_ml for one in intervals(ledger, Schedule(zone=ZONE)))
        if levels and charted != max(levels) - min(levels):
            yield f"bed {ledger.bed}: {charted} mL are charted of {max(levels) - min(levels)} mL"
    yield from (f"bed {bed} has {count} drains" for bed, count in beds.items() if count != 1)
