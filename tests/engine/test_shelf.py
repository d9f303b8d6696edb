"""What is kept at hand is bounded by its entries, and what was kept last stays."""

from __future__ import annotations

import pytest

from bot.engine.shelf import Shelf


@pytest.mark.parametrize(
    ("kept", "left"),
    [
        ((("a", 2), ("b", 2), ("c", 1)), "abc"),
        ((("a", 2), ("b", 2), ("c", 2)), "bc"),
        ((("a", 2), ("b", 2), ("a", 3)), "ab"),
        ((("a", 2), ("b", 2), ("a", 4)), "a"),
        ((("a", 2), ("b", 2), ("a", 2), ("c", 1), ("d", 1)), "acd"),
        ((("a", 1), ("b", 9)), "b"),
        ((("a", 9), ("b", 1)), "b"),
    ],
)
def test_what_was_kept_longest_ago_goes_first(kept: tuple[tuple[str, int], ...], left: str) -> None:
    shelf: Shelf[int] = Shelf(most=5)
    for key, entries in kept:
        shelf.keep(key, entries, entries)
    assert "".join(key for key in "abcd" if shelf.find(key) is not None) == left
    assert all(shelf.find(key) == dict(kept)[key] for key in left)
