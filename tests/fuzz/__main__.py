"""`python -m tests.fuzz --count 1000000`: so many mangled messages, counted by how they ended.

Prints what must not be as it finds it, and ends with code 1 if there was any. What was found in ward
17 is seen again with `--ward 17`.
"""

from __future__ import annotations

import multiprocessing
import os
import sys
import time
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from functools import partial

import click

from bot.cli.progress import followed
from tests.fuzz.wards import MESSAGES_OF_A_WARD, Tally, played


def tallies(first: int, count: int, jobs: int, share: float = 1.0) -> Iterator[Tally]:
    """What each ward gave, of as many as that number of messages fills, in so many processes."""
    wards = range(first, first + -(-count // MESSAGES_OF_A_WARD))
    spawned = multiprocessing.get_context("spawn")
    with ProcessPoolExecutor(jobs, mp_context=spawned) as pool:
        yield from pool.map(partial(played, share=share), wards, chunksize=4)


@click.command()
@click.option(
    "--count", type=click.IntRange(1), default=100_000, show_default=True, help="How many messages."
)
@click.option("--first", type=click.IntRange(0), default=0, help="The number of the first ward.")
@click.option("--jobs", type=click.IntRange(1), default=os.cpu_count() or 1, help="How many processes.")
@click.option("--ward", type=click.IntRange(0), help="Only this ward, here.")
def main(count: int, first: int, jobs: int, ward: int | None) -> None:
    """Mangled messages through reader, dialogue and engine."""
    started, whole = time.perf_counter(), Tally()
    wards = iter([played(ward)]) if ward is not None else tallies(first, count, jobs)
    for tally in followed(wards, "wards", None if ward is not None else -(-count // MESSAGES_OF_A_WARD)):
        whole.add(tally)
        for each in tally.found:
            click.echo(f"ward {each.ward}, message {each.message}: {each.text!r}\n{each.what}")
    for outcome, number in whole.outcomes.most_common():
        click.echo(f"{number:>9,}  {outcome}")
    click.echo(f"{time.perf_counter() - started:.0f} s")
    sys.exit(1 if whole.found else 0)


if __name__ == "__main__":
    main()
