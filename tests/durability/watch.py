"""Nothing is waited for without end: a step that hangs is ended, and says which one it was."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

PATIENCE_S = 120.0
"""Far longer than any step takes, on a machine that others use too."""


class HungError(Exception):
    """A step that did not end in time."""


@contextmanager
def within(step: str, seconds: float = PATIENCE_S) -> Iterator[None]:
    """Around a step, in the main thread and not within another one. HungError when it takes longer."""

    def hung(_signal: int, _frame: FrameType | None) -> None:
        raise HungError(f"{step}: not within {seconds:g} s")

    before = signal.signal(signal.SIGALRM, hung)
    signal.setitimer(signal.ITIMER_REAL, seconds)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGALRM, before)
