"""The harness itself: what hangs is ended, and named."""

from __future__ import annotations

import signal
import threading
import time

import pytest

from tests.durability.watch import HungError, within

pytestmark = pytest.mark.real_time


def test_a_step_that_hangs_is_ended_and_named() -> None:
    begin = time.monotonic()
    with pytest.raises(HungError, match="the phones have ended: not within"):
        wait_for_ever("the phones have ended", 0.05)
    assert time.monotonic() - begin < 5


def test_a_step_that_ends_leaves_no_alarm_behind() -> None:
    before = signal.getsignal(signal.SIGALRM)
    with within("nothing"):
        assert signal.getitimer(signal.ITIMER_REAL)[0] > 0
    assert signal.getitimer(signal.ITIMER_REAL) == (0, 0)
    assert signal.getsignal(signal.SIGALRM) is before


def wait_for_ever(step: str, seconds: float) -> None:
    """Wait for what does not come."""
    with within(step, seconds):
        threading.Event().wait()
