"""Entries: appended in order, found again as they were, by their own unit only."""

from __future__ import annotations

import pytest

from bot.engine.entries import Checked, Line, Moved, Payload, Removed, Withdrawal
from bot.store import Book, LedgerError, Store
from bot.store.berths import LOOKED_BACK_AT
from tests.store.hands import NOON, at, claimed


def drain_with_lines(book: Book, *levels: int, bed: str = "12") -> str:
    """A drain of that bed with these levels, a minute apart."""
    drain = book.open_drain(bed, None)
    for minute, level in enumerate(levels):
        book.append(drain, at(minute), Line(level_ml=level))
    return drain


def test_entries_come_back_as_they_were_recorded(store: Store) -> None:
    with store.turn() as book:
        drain = drain_with_lines(claimed(book), 840, 1050)
        recorded = book.entries(drain)
    with store.turn("ward") as book:
        assert book.entries(drain) == recorded
    assert [entry.id for entry in recorded] == [f"{drain}-1", f"{drain}-2"]
    assert [entry.payload for entry in recorded] == [Line(level_ml=840), Line(level_ml=1050)]
    assert {(entry.who, entry.message, entry.entered) for entry in recorded} == {("amy", "m1", NOON)}


def test_a_book_reads_what_it_has_written(store: Store) -> None:
    with store.turn() as book:
        drain = drain_with_lines(claimed(book), 840)
        first = book.entry(f"{drain}-1")
        assert first is not None
        assert book.entries_of_message("m1") == (first,)
        assert book.drains_of("12") == (drain,)
        assert book.unit_drains() == (drain,)


def test_a_turn_that_breaks_leaves_nothing(store: Store) -> None:
    opened: list[str] = []

    def break_off(book: Book) -> None:
        opened.append(drain_with_lines(claimed(book), 840))
        raise RuntimeError

    with pytest.raises(RuntimeError):
        store.transact(break_off)
    with store.turn("ward") as book:
        assert book.message("m1") is None
        assert book.entries(opened[0]) == ()
        assert book.drains_of("12") == ()


def test_another_unit_sees_nothing_and_writes_nothing(store: Store) -> None:
    with store.turn() as book:
        drain = drain_with_lines(claimed(book), 840)
    with store.turn() as book:
        claimed(book, "m2", unit="other")
        assert book.entries(drain) == ()
        assert book.entry(f"{drain}-1") is None
        assert book.entries_of_message("m1") == ()
        assert book.message("m1") is None
        assert book.drains_of("12") == ()
        assert book.unit_drains() == ()
        with pytest.raises(LedgerError):
            book.append(drain, NOON, Line(level_ml=900))
        with pytest.raises(LedgerError):
            book.berth(drain, "1", None, NOON)


def test_nothing_is_written_without_a_message_at_hand(store: Store) -> None:
    with store.turn("ward") as book, pytest.raises(LedgerError):
        book.open_drain("12", None)


def test_the_drains_of_a_bed_are_told_latest_first(store: Store) -> None:
    with store.turn() as book:
        claimed(book)
        first, second = drain_with_lines(book, 1), drain_with_lines(book, 2, bed="14")
        book.append(second, at(5), Moved(from_bed="14", to_bed="12"))
        book.berth(second, "12", None, at(5))
        third = drain_with_lines(book, 3)
        assert book.drains_of("12") == (third, second, first)
        assert book.drains_of("14") == (second,)


def test_a_removed_drain_is_closed_until_the_removal_is_withdrawn(store: Store) -> None:
    with store.turn() as book:
        drain = drain_with_lines(claimed(book), 840)
        removal = book.append(drain, at(9), Removed())
        assert book.unit_drains() == ()
        book.append(drain, at(10), Withdrawal(target=removal.id))
        assert book.unit_drains() == (drain,)


def test_a_withdrawal_of_a_line_does_not_open_a_removed_drain(store: Store) -> None:
    with store.turn() as book:
        drain = drain_with_lines(claimed(book), 840)
        book.append(drain, at(9), Removed())
        book.append(drain, at(10), Withdrawal(target=f"{drain}-1"))
        assert book.unit_drains() == ()


def test_a_correction_is_about_its_own_drain(store: Store) -> None:
    with store.turn() as book:
        claimed(book)
        one, other = drain_with_lines(book, 1), drain_with_lines(book, 2)
        with pytest.raises(LedgerError):
            book.append(one, at(3), Withdrawal(target=f"{other}-1"))


@pytest.mark.parametrize("entry_id", ["", "-", "x", "x-y", "x-1", "x-1.5", "x-²", "0123456789abcdef-99"])
def test_an_id_that_names_no_entry_finds_none(store: Store, entry_id: str) -> None:
    with store.turn("ward") as book:
        assert book.entry(entry_id) is None


def test_the_same_message_makes_the_same_ids(store: Store) -> None:
    ids: list[tuple[str, str]] = []

    def break_off(book: Book) -> None:
        claimed(book)
        ids.append((book.open_drain("12", None), book.open_drain("12", "left")))
        raise RuntimeError

    for _ in range(2):
        with pytest.raises(RuntimeError):
            store.transact(break_off)
    assert ids[0] == ids[1]
    assert len(set(ids[0])) == 2


def test_of_a_bed_s_old_drains_those_are_found_that_are_open_or_were_told_of_since(store: Store) -> None:
    with store.turn() as book:
        claimed(book)
        old = [book.open_drain("12", None) for _ in range(3)]
        for drain in old:
            book.append(drain, at(0), Line(level_ml=10))
        book.append(old[1], at(0), Removed())
    with store.turn() as book:
        claimed(book, "m2", minutes=60)
        book.append(old[0], at(30), Removed())
        latest = [book.open_drain("12", None) for _ in range(LOOKED_BACK_AT)]
        for drain in latest:
            book.append(drain, at(60), Removed())
        everything = (*reversed(latest), *reversed(old))
        assert book.drains_of("12") == everything
        assert book.drains_of("12", at(0)) == everything
        assert book.drains_of("12", at(60)) == (*reversed(latest), old[2], old[0])
        assert book.drains_of("12", at(61)) == (*reversed(latest), old[2])


def test_of_drains_long_closed_none_is_found_where_another_is_at_the_bed(store: Store) -> None:
    with store.turn() as book:
        claimed(book)
        old = book.open_drain("12", None)
        book.append(old, at(0), Removed())
    with store.turn() as book:
        claimed(book, "m2", minutes=60)
        assert book.drains_of("12", at(30)) == (old,)
        new = drain_with_lines(book, 10)
        assert book.drains_of("12", at(30)) == (new,)
    with store.turn() as book:
        claimed(book, "m3", minutes=61)
        assert book.drains_of("12", at(30)) == (new,)
        book.append(old, at(0), Withdrawal(target=f"{old}-1"))
        assert book.drains_of("12", at(30)) == (new, old)


@pytest.mark.parametrize(
    "wrong",
    [Checked(tidaling=1050), Checked(fluid=2), Line(level_ml="840"), Line(level_ml=True)],  # type: ignore[arg-type]
)
def test_what_could_not_be_read_again_is_not_recorded(store: Store, wrong: Payload) -> None:
    with store.turn() as book:
        drain = claimed(book).open_drain("12", None)
        with pytest.raises(LedgerError):
            book.append(drain, NOON, wrong)
        assert book.entries(drain) == ()
