"""A trial: serve, send, cut, and again; then send what was not answered, and look at a copy of the ledger."""

from __future__ import annotations

import random
import shutil
import threading
import time
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, field
from http.client import HTTPConnection, HTTPException
from pathlib import Path
from typing import Protocol

from tests.durability.check import faults
from tests.durability.nest import Nest, Server
from tests.durability.phones import BEDS, Journal, Mark, send, sending
from tests.durability.watch import within
from tests.web.client import SECRET

UNIT = f"""
name = "Ward 4"
zone = "UTC"
beds = "1-{BEDS}"
people = [{{ id = "amy", name = "Amy", role = "nurse" }}]
"""
PHONES = 6
LONGEST_S = 0.15
"""A cut comes at a random moment up to this long after the first answer of its cycle."""


class Place(Protocol):
    """Where a ledger is: how it is reached, what a cut does to it, and where a copy is."""

    @property
    def url(self) -> str:
        """The database URL."""

    @property
    def environ(self) -> dict[str, str]:
        """What the server's environment must say beside it."""

    def cut(self, server: Server) -> bool:
        """Make the cut; whether the server is gone."""

    def mend(self) -> None:
        """Bring back what the next cycle needs."""

    def copy(self) -> str:
        """The URL of a copy, or of the database itself where nobody writes to it."""

    def keep_log(self, folder: Path) -> None:
        """Put what it has logged in that folder."""


@dataclass(slots=True, kw_only=True)
class Trial:
    """One ledger, cut again and again."""

    nest: Nest
    place: Place
    folder: Path
    bug: str | None = None
    chance: random.Random = field(default_factory=lambda: random.Random(4))
    journal: Journal = field(default_factory=Journal)
    cuts: int = 0
    server: Server | None = None

    def run(self, cuts: int, told: Callable[[int], None] = lambda _: None) -> tuple[str, ...]:
        """What is wrong after that many cuts; nothing is right."""
        for _ in range(cuts):
            self.cycle()
            told(self.cuts)
        return self.end()

    def cycle(self) -> None:
        """Serve, send, and cut at a random moment after the first answer."""
        self.serve()
        self.journal.send_again()
        self.journal.heard.clear()
        stop = threading.Event()
        phones = sending(self.port, self.journal, PHONES, stop)
        with within("a phone is answered"):
            self.journal.heard.wait()
        time.sleep(self.chance.uniform(0, LONGEST_S))
        assert self.server is not None
        with within("the cut is made"):
            gone = self.place.cut(self.server)
        if gone:
            self.server = None
        self.cuts += 1
        stop.set()
        with within("the phones have ended"):
            for phone in phones:
                phone.join()
        with within("what was cut comes back"):
            self.place.mend()

    def end(self) -> tuple[str, ...]:
        """Send what was not answered, look, send some of the answered again, and look again."""
        self.serve()
        self._send_the_rest()
        found = self._look()
        if not found:
            self.serve()
            found = (*self._again(), *self._look())
        return found

    def stop(self) -> None:
        """End the server."""
        if self.server is not None:
            self.server.kill()
            self.server = None

    def _look(self) -> tuple[str, ...]:
        self.stop()
        return faults(self.place.copy(), self.journal)

    def serve(self) -> None:
        """See that a server runs and takes messages."""
        if self.server is None:
            unit = self.folder / "ward.toml"
            unit.write_text(UNIT)
            environ = {
                "PENLINE_SECRETS": SECRET,
                "PENLINE_UNITS": str(unit),
                "PENLINE_DATABASE_URL": self.place.url,
                "PENLINE_SENDER_PER_MINUTE": "1000000",
                "PENLINE_PER_SECOND": "1000000",
                **self.place.environ,
            }
            self.server = self.nest.serve(environ, self.folder / "log", self.bug)
        with within("the server is ready"):
            _wait_until_ready(self.server)

    def port(self) -> int:
        """Where it listens now; 0 while it does not."""
        return self.server.port if self.server else 0

    def _send_the_rest(self) -> None:
        for mark in self.journal.unanswered() * 2:
            if mark.id not in self.journal.answered:
                self.journal.note(mark, *self._sent(mark))

    def _again(self) -> tuple[str, ...]:
        """The answered ones whose resend has another answer."""
        names = list(self.journal.answered)
        some = self.chance.sample(names, min(40, len(names)))
        return tuple(
            f"{name} was answered otherwise when it was sent again"
            for name in some
            if self._sent(self.journal.sent[name]) != (200, self.journal.answered[name])
        )

    def _sent(self, mark: Mark) -> tuple[int, bytes]:
        return send(self.port(), mark)


def _wait_until_ready(server: Server) -> None:
    """Wait for the database behind it."""
    while True:
        connection = HTTPConnection("127.0.0.1", server.port, timeout=10)
        with suppress(OSError, HTTPException):
            connection.request("GET", "/ready")
            if connection.getresponse().status == 200:
                connection.close()
                return
        connection.close()
        time.sleep(0.02)


def fresh(folder: Path) -> Path:
    """The folder, empty."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    return folder
