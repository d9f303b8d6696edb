"""A real `penline serve` in a process of its own, and a gateway in another."""

from __future__ import annotations

import json
import os
import socket
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from tests.web.client import SECRET

POST = Path(__file__).parent / "post.py"
SERVE = (sys.executable, "-m", "bot", "serve")


@dataclass(frozen=True, slots=True)
class Server:
    """Where it listens, and where its ledger and its log are."""

    port: int
    folder: Path
    process: subprocess.Popen[str]

    @property
    def url(self) -> str:
        """Its address."""
        return f"http://127.0.0.1:{self.port}"

    @property
    def database(self) -> str:
        """Its ledger."""
        return f"sqlite:///{self.folder}/ward.sqlite"

    @property
    def log(self) -> str:
        """What it has logged."""
        return (self.folder / "log").read_text()

    def connect(self) -> socket.socket:
        """A raw connection to it."""
        return socket.create_connection(("127.0.0.1", self.port), timeout=10)


def environment(folder: Path, unit: Path, **environ: str) -> dict[str, str]:
    """What a server on a free port is started with."""
    return {
        **os.environ,
        "PENLINE_SECRETS": SECRET,
        "PENLINE_UNITS": str(unit),
        "PENLINE_DATABASE_URL": f"sqlite:///{folder}/ward.sqlite",
        "PENLINE_PORT": "0",
        **environ,
    }


@contextmanager
def served(folder: Path, unit: Path, **environ: str) -> Iterator[Server]:
    """A server on a free port, stopped at the end as a supervisor stops it."""
    with (folder / "log").open("w") as log:
        process = subprocess.Popen(SERVE, env=environment(folder, unit, **environ), stderr=log, text=True)
    try:
        yield Server(_port(folder / "log", process), folder, process)
    finally:
        process.terminate()
        assert process.wait(timeout=20) == 0


def _port(log: Path, process: subprocess.Popen[str]) -> int:
    """The port that it says it listens on."""
    while process.poll() is None:
        for line in log.read_text().splitlines():
            event = json.loads(line)
            if event["event"] == "serving":
                return int(str(event["address"]).rpartition(":")[2])
        try:
            process.wait(timeout=0.05)
        except subprocess.TimeoutExpired:
            continue
    raise AssertionError(log.read_text())


def post_elsewhere(server: Server, *posts: dict[str, object]) -> list[tuple[int, dict[str, object]]]:
    """Status and body of each post, made by a client in another process (`post.py`)."""
    run = subprocess.run(
        [sys.executable, str(POST), server.url, SECRET],
        input="\n".join(json.dumps(post) for post in posts),
        capture_output=True,
        check=True,
        text=True,
        timeout=120,
    )
    answers = [json.loads(line) for line in run.stdout.splitlines()]
    return [(status, json.loads(body)) for status, body in answers]
