"""Commands as someone at a terminal runs them: stderr, and where wanted stdin and stdout, are a real one."""

from __future__ import annotations

import os
import pty
import subprocess
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Seen:
    """What stood on the terminal, and what was sent elsewhere."""

    screen: str
    stdout: str
    code: int


def on_a_terminal(command: Sequence[str], folder: Path, *, redirected: bool, typed: str = "") -> Seen:
    """Run `penline` on a terminal where `typed` is typed; `redirected`: its stdout goes to a file."""
    ours, theirs = pty.openpty()
    file = folder / "redirected"
    environ = {**os.environ, "TERM": "xterm", "COLUMNS": "100"}
    for name in ("NO_COLOR", "FORCE_COLOR", "TTY_COMPATIBLE"):
        environ.pop(name, None)
    with file.open("w") as out:
        process = subprocess.Popen(
            [sys.executable, "-m", "bot", *command],
            stdin=theirs,
            stdout=out if redirected else theirs,
            stderr=theirs,
            env=environ,
        )
    os.close(theirs)
    os.write(ours, typed.encode())
    screen = _read_all(ours)
    os.close(ours)
    return Seen(screen=screen, stdout=file.read_text(), code=process.wait(timeout=60))


def _read_all(terminal: int) -> str:
    """Until the last process has let go of the terminal, which reading then tells as an error."""
    told = b""
    while True:
        try:
            found = os.read(terminal, 65536)
        except OSError:
            break
        if not found:
            break
        told += found
    return told.decode(errors="replace")
