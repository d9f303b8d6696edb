"""Several messages in one commit: whoever has the turn answers those that wait, and they are told after it.

A commit waits for the disk as long for one message as for ten, and threads that take turns message by message
cost more than one that goes on. Each message has a savepoint: one that fails leaves nothing, the others stay.
"""

from __future__ import annotations

import contextvars
import threading
from collections import deque
from collections.abc import Callable, Sequence
from contextlib import AbstractContextManager
from typing import Any, TypeVar

from sqlalchemy import Connection

from bot.store.errors import StoreAwayError
from bot.store.statements import at_once

T = TypeVar("T")

MOST = 4
"""So many messages are answered in one commit: the first of them waits for the last, and beside other
programs whoever reckons for long without a pause is let in less often."""


class Together:
    """The queue before the one connection. `transaction`: the connection in a transaction of its own."""

    def __init__(self, transaction: Callable[[], AbstractContextManager[Connection]], wait_s: float) -> None:
        self._transaction = transaction
        self._wait_s = wait_s
        self._lock = threading.Lock()
        self._waiting: deque[_Job] = deque()
        self._has_leader = False

    def __len__(self) -> int:
        """How many wait."""
        return len(self._waiting)

    def answer(self, work: Callable[[Connection], T]) -> T:
        """What `work` returns, once it is committed. StoreAwayError when its turn does not come in time."""
        job = _Job(work)
        try:
            self._queue(job)
            if not job.leads and not job.told.wait(self._wait_s):
                raise StoreAwayError("busy")  # it may be answered yet, and is kept if so
            if job.leads:
                self._lead()
        finally:
            self._leave(job)
        if job.error is not None:
            raise job.error
        answered: T = job.answer
        return answered

    def _queue(self, job: _Job) -> None:
        """Behind all who wait; where nobody has the turn, it is this one's."""
        with self._lock:
            self._waiting.append(job)
            job.leads = not self._has_leader
            self._has_leader = True

    def _leave(self, job: _Job) -> None:
        """However it ended, it waits no more, and passes on the turn if it had it."""
        with self._lock:
            if job in self._waiting:
                self._waiting.remove(job)
            if not job.leads:
                return
            self._has_leader = bool(self._waiting)
            if self._waiting:
                self._waiting[0].leads = True
                self._waiting[0].told.set()

    def _lead(self) -> None:
        """Answer those who wait, the first of them first."""
        jobs: list[_Job] = []
        try:
            with self._transaction() as connection:
                jobs = self._taken()
                _answer(connection, jobs)
        except BaseException as error:  # noqa: BLE001 - each of them raises it where it was asked
            jobs = jobs or self._taken()
            for job in jobs:
                job.error = job.error or error
        finally:
            for job in jobs:
                job.told.set()

    def _taken(self) -> list[_Job]:
        with self._lock:
            return [self._waiting.popleft() for _ in range(min(MOST, len(self._waiting)))]


class _Job:
    """A message that waits: what is to be done, what came of it, and whether it has the turn."""

    __slots__ = ("_context", "_work", "answer", "error", "leads", "told")

    def __init__(self, work: Callable[[Connection], Any]) -> None:
        self._work = work
        self._context = contextvars.copy_context()
        self.told = threading.Event()
        self.leads = False
        self.answer: Any = None
        self.error: BaseException | None = None

    def run(self, connection: Connection) -> None:
        """Do it, as if in the thread that waits for it."""
        self.answer = self._context.run(self._work, connection)


def _answer(connection: Connection, jobs: Sequence[_Job]) -> None:
    if len(jobs) == 1:
        jobs[0].run(connection)
        return
    for job in jobs:
        _by_itself(connection, job)


def _by_itself(connection: Connection, job: _Job) -> None:
    """Do it so that the others stay when it fails. An error of the transaction itself is everyone's."""
    at_once(connection, "SAVEPOINT message")
    try:
        job.run(connection)
    except Exception as error:  # noqa: BLE001 - raised where it was asked
        job.error = error
        at_once(connection, "ROLLBACK TO message")
    at_once(connection, "RELEASE message")
