"""What a message reads once and holds is what stands in the tables, whatever it writes in between."""

from __future__ import annotations

from bot.engine.entries import Line, Withdrawal
from bot.store import Book, Question, Store
from tests.store.hands import at, claimed

BEDS = ("12", "14")


def question(bed: str, sender: str = "amy", drain: str | None = None) -> Question:
    """A question about a bed."""
    return Question(
        unit="ward", sender=sender, bed=bed, drain=drain, slot="level_ml", asked_at=at(0), message="m1",
        text="Is it right?", said_json="{}",
    )  # fmt: skip


def seen(book: Book, drains: tuple[str, ...]) -> tuple[object, ...]:
    """All that a book holds while a message is at hand."""
    return (
        [book.entries(drain) for drain in drains],
        [book.entry(f"{drain}-{position}") for drain in drains for position in (1, 2, 9)],
        [book.drains_of(bed, since) for bed in BEDS for since in (None, at(0))],
        [book.unsettled(bed, sender) for bed in (None, *BEDS) for sender in (None, "amy", "bea")],
    )


def test_after_each_thing_that_is_written_it_is_read_anew(store: Store) -> None:
    with store.turn() as book:
        claimed(book)
        drains: list[str] = []

        def check() -> None:
            anew = Book(book._connection, "ward")  # without a message at hand nothing is held
            assert seen(book, tuple(drains)) == seen(anew, tuple(drains))

        for bed in BEDS:
            drains.append(book.open_drain(bed, None))
            check()
        for minute in range(3):
            book.append(drains[0], at(minute), Line(level_ml=100 * minute))
            check()
        book.append(drains[0], at(3), Withdrawal(target=f"{drains[0]}-2"))
        check()
        book.berth(drains[0], "14", None, at(4))
        check()
        first = book.ask(question("12", drain=drains[0]))
        check()
        book.ask(question("14", sender="bea"))
        check()
        book.settle(first.id, "answered")
        check()


def test_another_message_reads_what_the_one_before_it_wrote(store: Store) -> None:
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
    with store.turn() as book:
        claimed(book, "m2")
        assert book.entries(drain) == ()
        book.append(drain, at(1), Line(level_ml=840))
    with store.turn() as book:
        claimed(book, "m3")
        before = book.entries(drain)
        book.append(drain, at(2), Line(level_ml=900))
        assert [entry.position for entry in (*before, *book.entries(drain))] == [1, 1, 2]
