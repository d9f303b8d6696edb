"""A message is claimed once, by its id, whoever comes first."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

from bot.store import Book, Store, Stored
from tests.store.hands import claim, claimed


def test_a_new_message_is_ours_and_a_known_one_gives_its_reply(store: Store) -> None:
    with store.turn() as book:
        assert book.claim(claim()) is None
        book.keep_reply("m1", "{}")
    with store.turn() as book:
        assert book.claim(claim(digest="another body")) == Stored("d", "{}")


def test_a_message_whose_turn_broke_can_be_sent_again(store: Store) -> None:
    try:
        with store.turn() as book:
            book.claim(claim())
            raise RuntimeError
    except RuntimeError:
        pass
    with store.turn() as book:
        assert book.claim(claim()) is None


def test_of_sixteen_that_carry_one_id_one_is_let_through(store: Store) -> None:
    def send(number: int) -> str | None:
        def work(book: Book) -> str | None:
            stored = book.claim(claim(sender=f"nurse {number}"))
            if stored is not None:
                return stored.reply
            book.keep_reply("m1", f'"{number}"')
            return None

        return store.transact(work)

    with ThreadPoolExecutor(16) as pool:
        replies = list(pool.map(send, range(16)))
    winners = [number for number, reply in enumerate(replies) if reply is None]
    assert len(winners) == 1
    assert {reply for reply in replies if reply is not None} == {f'"{winners[0]}"'}


def test_the_message_before_this_one_is_the_sender_s_own_of_this_unit(store: Store) -> None:
    for number, (sender, unit) in enumerate(
        [("amy", "ward"), ("ben", "ward"), ("amy", "other"), ("amy", "ward")], start=1
    ):
        with store.turn() as book:
            claimed(book, f"m{number}", sender=sender, unit=unit)
    with store.turn() as book:
        claimed(book, "m5")
        last = book.last_message("amy")
        assert last is not None
        assert (last.id, last.text, last.reply) == ("m4", "words", '{"status": "recorded"}')
        assert not book.first_message("amy")
        assert book.first_message("carla")


def test_a_text_that_may_not_be_kept_is_not(store: Store) -> None:
    with store.turn() as book:
        book.claim(replace(claim(), text=None))
    with store.turn("ward") as book:
        row = book.message("m1")
        assert row is not None
        assert row.text is None
        assert row.reply is None
