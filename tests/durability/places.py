"""Where a trial's ledger is, and how it is cut: the process, the power, or the database."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from subprocess import SubprocessError
from typing import Any

import psutil

from tests.databases import new_database
from tests.durability.nest import Server
from tests.durability.trial import fresh


@dataclass(slots=True)
class File:
    """SQLite in a file. `power`: a cut leaves only what was synced (needs the shim in the server)."""

    folder: Path
    power: bool = False

    def __post_init__(self) -> None:
        self._live, self._shadow = fresh(self.folder / "live"), fresh(self.folder / "shadow")

    _live: Path = field(init=False)
    _shadow: Path = field(init=False)

    @property
    def url(self) -> str:
        """The database URL."""
        return f"sqlite:///{self._live}/ward.sqlite"

    @property
    def environ(self) -> dict[str, str]:
        """Where the shim looks, and where it copies to."""
        return {
            "POWER_FOLDER": str(self._live),
            "POWER_FULL": str(self.folder / "full"),
            **({"POWER_SHADOW": str(self._shadow)} if self.power else {}),
        }

    def cut(self, server: Server) -> bool:
        """Kill the server; in a power cut, put what the disk holds in the place of what the kernel knew."""
        server.kill()
        if self.power:
            fresh(self._live)
            for file in self._shadow.iterdir():
                if file.suffix == ".part":
                    file.unlink()
                else:
                    shutil.copy(file, self._live / file.name)
        return True

    def mend(self) -> None:
        """Nothing is left to do."""

    def copy(self) -> str:
        """A copy of the files: opening a ledger may change it."""
        copy = fresh(self.folder / "copy")
        for file in self._live.iterdir():
            shutil.copy(file, copy / file.name)
        return f"sqlite:///{copy}/ward.sqlite"

    def keep_log(self, folder: Path) -> None:
        """There is none beside the server's."""

    @contextmanager
    def full(self) -> Iterator[None]:
        """No space is left meanwhile."""
        flag = self.folder / "full"
        flag.touch()
        try:
            yield
        finally:
            flag.unlink()


@dataclass(slots=True)
class Postgres:
    """PostgreSQL; a cut kills the server that writes to it, or (`database`) every process of the database."""

    cluster: Any
    database: bool = False
    url: str = field(init=False)
    _dead: list[psutil.Process] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.url = new_database(self.cluster.get_uri())

    @property
    def environ(self) -> dict[str, str]:
        """Nothing beside the URL."""
        return {}

    def cut(self, server: Server) -> bool:
        """Kill one or the other."""
        if not self.database:
            server.kill()
            return True
        postmaster = psutil.Process(self.cluster.get_pid())
        postmaster.suspend()  # else it may have one more child than are killed
        family = [*postmaster.children(recursive=True), postmaster]
        for process in family:
            with suppress(psutil.NoSuchProcess):
                process.kill()
        while any(_runs(process) for process in family):
            time.sleep(0.01)
        self._dead = family
        return False

    def mend(self) -> None:
        """Start the database again; the server has to find it."""
        if not self.database:
            return
        psutil.wait_procs(self._dead)  # while nobody has collected them they pass for alive
        self.cluster.ensure_pgdata_inited()  # pytest may have closed the folders above it again
        while True:
            # It has 10 s there, which a busy machine may need; asked again, not ready yet is an error too.
            with suppress(SubprocessError, AssertionError):
                self.cluster.ensure_postgres_running()
                return
            time.sleep(1)

    def copy(self) -> str:
        """The database itself: nobody writes to it now."""
        return self.url

    def keep_log(self, folder: Path) -> None:
        """Put the database's log where it stays when the database is taken down."""
        shutil.copy(self.cluster.log, folder / "database.log")


def _runs(process: psutil.Process) -> bool:
    """Whether it does anything yet: the dead may wait long for whoever collects them."""
    try:
        return process.is_running() and process.status() != psutil.STATUS_ZOMBIE
    except psutil.NoSuchProcess:
        return False
