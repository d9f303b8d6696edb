"""The power cut and the full disk: `power.c`, compiled when it is needed."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path

SOURCE = Path(__file__).with_name("power.c")


def compiler() -> str | None:
    """The C compiler of this machine; none where it has none."""
    return shutil.which("cc") or shutil.which("gcc")


def compiled(folder: Path) -> Path:
    """The library to preload."""
    library = folder / "power.so"
    command = [compiler() or "cc", "-O1", "-Wall", "-Werror", "-shared", "-fPIC", "-o", str(library)]
    subprocess.run([*command, str(SOURCE), "-ldl"], check=True)
    return library
