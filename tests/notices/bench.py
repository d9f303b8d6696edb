"""A ward with an outbox, a gateway and a courier, each in a process of its own, to stop and to kill."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from bot.store import Notice, open_store
from bot.store.book import Claim

SECRET = "whsec_" + "QUJDRA" * 8
UNIT = """
name = "Ward 4"
zone = "America/New_York"
beds = "1-24"
people = [{ id = "carla", name = "Carla", role = "charge" }, { id = "ben", name = "Ben", role = "nurse" }]
[notify]
people = ["carla", "ben"]
"""
RECEIVER = Path(__file__).parent / "receiver.py"


@dataclass
class Bench:
    """One ward in a folder; `close` ends what still runs."""

    folder: Path
    port: int = 0
    running: list[subprocess.Popen[str]] = field(default_factory=list)

    def __post_init__(self) -> None:
        (self.folder / "ward.toml").write_text(UNIT)
        open_store(self.url).close()

    @property
    def url(self) -> str:
        """The ledger."""
        return f"sqlite:///{self.folder}/ward.sqlite"

    def tell(self, *people: str) -> None:
        """Name other people to be told in the unit file."""
        named = ", ".join(f'"{each}"' for each in people)
        (self.folder / "ward.toml").write_text(
            f"{UNIT.partition('[notify]')[0]}[notify]\npeople = [{named}]\n"
        )

    def another_unit(self) -> None:
        """A second unit of the deployment, with nobody on its list."""
        (self.folder / "other.toml").write_text('name = "Ward 5"\nzone = "America/New_York"\nbeds = "1-9"\n')

    def queue(self, *beds: int, at: datetime | None = None) -> None:
        """A danger at each of these beds."""
        now = at or datetime.now(UTC)
        store = open_store(self.url)
        for bed in beds:
            with store.turn() as book:
                message = f"m-{now.timestamp()}-{bed}"
                book.claim(
                    Claim(id=message, digest="d", arrived=now, sender="amy", unit="ward-4", text="words")
                )
                book.keep_reply(message, "{}")
                book.queue(
                    Notice(
                        unit="ward-4", bed=str(bed), drain=None, code="ladder", text="URGENT: 620 mL.",
                        queued_at=now, message=message,
                    )
                )  # fmt: skip
        store.close()

    def receive(self, *answers: int) -> subprocess.Popen[str]:
        """A gateway that runs, at the same port each time."""
        args = (str(self.port), SECRET, str(self.folder / "got"), *map(str, answers))
        process = subprocess.Popen([sys.executable, str(RECEIVER), *args], stdout=subprocess.PIPE, text=True)
        self.running.append(process)
        assert process.stdout is not None
        self.port = int(process.stdout.readline())
        process.stdout.close()
        return process

    def deliver(self) -> subprocess.Popen[str]:
        """A courier that runs."""
        process = subprocess.Popen(
            self._command("deliver", "--every", "0.05"),
            env=self._environ(),
            stderr=subprocess.DEVNULL,
            text=True,
        )
        self.running.append(process)
        return process

    def take_turns(self, *gateways: Callable[[], subprocess.Popen[str]]) -> subprocess.Popen[str]:
        """A courier that runs, and one gateway after the other, each until it dies; the last goes on."""
        first = gateways[0]()
        courier = self.deliver()
        for start in gateways[1:]:
            first.wait(timeout=30)
            first = start()
        return courier

    def run(self, *args: str) -> subprocess.CompletedProcess[str]:
        """A command that ends by itself."""
        return subprocess.run(
            self._command(*args), env=self._environ(), capture_output=True, text=True, timeout=60, check=False
        )

    def got(self) -> list[dict[str, Any]]:
        """What the gateway was sent, in order."""
        file = self.folder / "got"
        return [json.loads(line) for line in file.read_text().splitlines()] if file.exists() else []

    def wait(self, until: Callable[[], bool]) -> None:
        """Wait for something, for at most half a minute."""
        for _ in range(600):
            if until():
                return
            time.sleep(0.05)
        raise AssertionError("it did not happen in time")

    def close(self) -> None:
        """End every process that this one started."""
        for process in self.running:
            if process.poll() is None:
                process.kill()
            process.wait()

    def _command(self, *args: str) -> list[str]:
        return [sys.executable, "-m", "bot", *args]

    def _unit_files(self) -> list[Path]:
        return [file for name in ("ward", "other") if (file := self.folder / f"{name}.toml").exists()]

    def _environ(self) -> dict[str, str]:
        return {
            **os.environ,
            "PENLINE_DATABASE_URL": self.url,
            "PENLINE_UNITS": ",".join(map(str, self._unit_files())),
            "PENLINE_NOTIFY_URL": f"http://127.0.0.1:{self.port or 9}/notices",
            "PENLINE_NOTIFY_SECRETS": SECRET,
            "PENLINE_NOTIFY_RETRY_S": "1",
        }
