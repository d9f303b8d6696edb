"""A progress bar for long work: on stderr, and only where someone looks at it; nothing when piped."""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator
from typing import TextIO, TypeVar

from rich.console import Console
from rich.progress import Progress

T = TypeVar("T")


def followed(items: Iterable[T], what: str, total: int | None = None, *, prints: bool = False) -> Iterator[T]:
    """The items, with a bar over them while they are gone through; a pulse where `total` is not known.

    `prints`: the work writes to stdout meanwhile, so a bar is only shown where that goes elsewhere. It is
    never drawn by way of stdout: what the work writes there must arrive where it was sent.
    """
    console = Console(stderr=True)
    if not console.is_terminal or (prints and sys.stdout.isatty()):
        yield from items
        return
    with Progress(console=console, transient=True, redirect_stdout=False) as progress:
        yield from progress.track(items, total=total, description=what)


def line_count(file: TextIO) -> int | None:
    """How many lines there are still to be read; None where that cannot be looked up first, as in a pipe."""
    if not file.seekable():
        return None
    begin = file.tell()
    count = sum(1 for _ in file)
    file.seek(begin)
    return count
