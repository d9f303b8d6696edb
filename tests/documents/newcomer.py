"""Someone who types what the documents say, in a folder of their own with a ward, a ledger and a gateway."""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

from tests.documents.commands import ROOT

_SHIMS = {"penline": "-m bot", "python": "", "pip": "-m pip", "pytest": "-m pytest"}
_WAIT_S = 120
_ADDRESS = re.compile(r"http://127\.0\.0\.1:\d+")


@dataclass(frozen=True, slots=True)
class Seen:
    """What came of a line: the exit code, and what stood on the terminal."""

    code: int
    text: str


@dataclass(frozen=True, slots=True)
class Newcomer:
    """A shell in a folder with a `.venv` that runs this checkout, whichever is installed."""

    folder: Path
    environ: dict[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        shims = self.folder / ".venv" / "bin"
        shims.mkdir(parents=True)
        for name, runs in _SHIMS.items():
            (shims / name).write_text(f'#!/bin/sh\nexec "{sys.executable}" {runs} "$@"\n')
            (shims / name).chmod(0o755)
        kept = {name: value for name, value in os.environ.items() if not name.startswith("PENLINE_")}
        path = f"{shims}{os.pathsep}{kept['PATH']}"
        self.environ.update(kept | {"PATH": path, "PYTHONPATH": str(ROOT), "PYTHONUNBUFFERED": "1"})

    def types(self, line: str, *, stdin: str = "", **settings: str) -> Seen:
        """The line, or several, as a shell runs them; `set -e` holds."""
        run = subprocess.run(
            ["sh", "-ec", line],
            cwd=self.folder,
            env=self.environ | settings,
            input=stdin,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            timeout=_WAIT_S,
        )
        return Seen(run.returncode, run.stdout)

    def exports(self, line: str) -> None:
        """What a line exports stays for the lines after it."""
        name, _, _ = line.removeprefix("export ").partition("=")
        self.environ[name] = self.types(f'{line}\nprintf %s "${name}"').text

    @contextmanager
    def serving(self, line: str, **settings: str) -> Iterator[str]:
        """The address at which a line that serves says it does; stopped at the end, as a service is."""
        run = subprocess.Popen(
            ["sh", "-ec", line],
            cwd=self.folder,
            env=self.environ | settings,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            start_new_session=True,
        )
        assert run.stdout is not None
        try:
            told = run.stdout.readline()
            address = _ADDRESS.search(told)
            assert address, told
            yield address[0]
        finally:
            os.killpg(run.pid, signal.SIGTERM)
            run.communicate(timeout=20)
