"""A progress bar for long work: on stderr, and only where someone looks at it; nothing when piped."""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator
from typing import TypeVar

from rich.console import Console
from rich.progress import Progress

T = TypeVar("T")


def followed(items: Iterable[T], what: str, total: int | None = None, *, prints: bool = False) -> Iterator[T]:
    """The items, with a bar over them while they are gone through; a pulse where `total` is not known.

    `prints`: the work writes to stdout meanwhile, so a bar is only shown where that goes elsewhere.
    """
    console = Console(stderr=True)
    if not console.is_terminal or (prints and sys.stdout.isatty()):
        yield from items
        return
    with Progress(console=console, transient=True) as progress:
        yield from progress.track(items, total=total, description=what)
