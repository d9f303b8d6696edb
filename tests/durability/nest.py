"""Where servers hatch: a process that has read the program once, and forks a `penline serve` whenever told.

A start takes 2 s, most of it imports; a fork takes none. On standard input, a JSON line each:
`{"environ": {...}, "log": FILE, "bug": NAME or null}`; on standard output the new server's process id.
"""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO

from bot.cli import penline
from tests.durability.planted import BUGS
from tests.durability.watch import within


def main() -> None:
    """Fork for each line."""
    from bot.app import warm_up
    from bot.unit import demo_unit

    warm_up(demo_unit())
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)
    print("ready", flush=True)
    for line in sys.stdin:
        told = json.loads(line)
        child = os.fork()
        if not child:
            _serve(told)
        print(child, flush=True)


def _serve(told: dict[str, object]) -> None:
    """Be `penline serve`, and nothing after it."""
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    log = os.open(str(told["log"]), os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
    for stream in (1, 2):
        os.dup2(log, stream)
    os.environ.update(told["environ"])  # type: ignore[call-overload]
    if told["bug"]:
        BUGS[str(told["bug"])]()
    with suppress(SystemExit):
        penline.main(["serve"])
    os._exit(0)


@dataclass(slots=True)
class Server:
    """A `penline serve` that can be killed."""

    pid: int
    port: int

    def kill(self) -> None:
        """End it with SIGKILL, and wait until it is gone."""
        with suppress(ProcessLookupError), within("a killed server ends"):
            os.kill(self.pid, signal.SIGKILL)
            while True:
                os.kill(self.pid, 0)
                time.sleep(0.002)


@dataclass(slots=True)
class Nest:
    """The process that forks; `shim` is preloaded into every server."""

    shim: Path | None = None
    _process: subprocess.Popen[str] = field(init=False)

    def __post_init__(self) -> None:
        environ = dict(os.environ, PYTHONUNBUFFERED="1")
        if self.shim is not None:
            environ["LD_PRELOAD"] = str(self.shim)
        self._process = subprocess.Popen(
            [sys.executable, "-m", "tests.durability.nest"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env=environ,
            text=True,
        )
        with within("the nest is ready"):
            assert self._line() == "ready"

    def serve(self, environ: Mapping[str, str], log: Path, bug: str | None = None) -> Server:
        """A new server, once it listens."""
        written = log.stat().st_size if log.exists() else 0
        told = {"environ": {"PENLINE_PORT": "0", **environ}, "log": str(log), "bug": bug}
        with within("a server listens"):
            _pipe(self._process.stdin).write(json.dumps(told) + "\n")
            _pipe(self._process.stdin).flush()
            server = Server(int(self._line()), 0)
            server.port = _port(log, written, server.pid)
        return server

    def close(self) -> None:
        """Let it go; servers that still run are the caller's to kill."""
        with suppress(BrokenPipeError):
            _pipe(self._process.stdin).close()
        with suppress(subprocess.TimeoutExpired):  # that would hide what went wrong before
            self._process.wait(timeout=10)
        self._process.kill()
        self._process.wait()
        _pipe(self._process.stdout).close()

    def _line(self) -> str:
        return _pipe(self._process.stdout).readline().strip()


def _pipe(pipe: IO[str] | None) -> IO[str]:
    assert pipe is not None
    return pipe


def _port(log: Path, written: int, pid: int) -> int:
    """The port that the new server says it listens on, behind what was in the log before it."""
    while True:
        told = log.read_bytes()[written:].decode() if log.exists() else ""
        for line in told.splitlines():
            if '"serving"' in line and line.endswith("}"):
                return int(str(json.loads(line)["address"]).rpartition(":")[2])
        os.kill(pid, 0)
        time.sleep(0.005)


if __name__ == "__main__":
    main()
