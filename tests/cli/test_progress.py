"""A bar where someone looks, nothing where nobody does, and the items either way."""

from __future__ import annotations

import io
import sys

import pytest

from bot.cli.progress import followed


class Screen(io.StringIO):
    """A stream that says it is a terminal."""

    def isatty(self) -> bool:
        """Someone looks at it."""
        return True


@pytest.mark.parametrize(
    ("err", "out", "prints", "shown"),
    [
        (Screen, io.StringIO, False, True),
        (Screen, Screen, False, True),
        (Screen, io.StringIO, True, True),
        (Screen, Screen, True, False),
        (io.StringIO, Screen, False, False),
    ],
)
def test_a_bar_is_shown_on_a_terminal_alone(
    monkeypatch: pytest.MonkeyPatch,
    err: type[io.StringIO],
    out: type[io.StringIO],
    prints: bool,
    shown: bool,
) -> None:
    for name in ("NO_COLOR", "FORCE_COLOR", "TTY_COMPATIBLE"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("TERM", "xterm")
    screen = err()
    monkeypatch.setattr(sys, "stderr", screen)
    monkeypatch.setattr(sys, "stdout", out())
    assert list(followed(range(5), "rows", 5, prints=prints)) == [0, 1, 2, 3, 4]
    assert ("rows" in screen.getvalue()) is shown
