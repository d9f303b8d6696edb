"""`penline deliver`: send what is in the outbox to the people whom each unit file names, until told to stop.

It may be stopped or killed at any moment: what was not kept as sent is sent again, under the same id.
"""

from __future__ import annotations

import signal
from pathlib import Path
from threading import Event
from types import FrameType

import click

from bot.cli.courier import Courier, say
from bot.cli.options import config_option, database_option, settings_of, units_option
from bot.notices.plan import NOBODY
from bot.settings import check_ready_to_deliver
from bot.store import StoreAwayError, open_store

ALL = "all"


@click.command("deliver")
@config_option
@database_option
@units_option
@click.option("--once", "act", flag_value="once", help="Send what is due now, and end.")
@click.option("--dead", "act", flag_value="dead", help="Only list what was given up; 1 when there is any.")
@click.option(
    "--again", metavar="ID", multiple=True, help="Send what was given up once more: its id, or all."
)
@click.option("--every", type=click.FloatRange(0.05, 60), default=1.0, help="Seconds between looks.")
def command(
    config: Path | None,
    database: str | None,
    units: tuple[Path, ...],
    act: str | None,
    again: tuple[str, ...],
    every: float,
) -> None:
    """Send notices, signed, to the gateway at PENLINE_NOTIFY_URL; try again what it does not take."""
    if again and act:
        raise click.UsageError("--again stands alone: it sends what is named, and ends")
    settings = settings_of(config, database_url=database, units=units)
    if act != "dead":
        check_ready_to_deliver(settings)
    store = open_store(settings.database_url)
    courier = Courier(settings, store)
    try:
        if again:
            _send_again(courier, again)
        elif act == "dead":
            _list_dead(courier)
        elif act == "once":
            courier.go_round()
        else:
            _until_stopped(courier, every)
    finally:
        courier.close()
        store.close()


def _until_stopped(courier: Courier, every: float) -> None:
    """A database that is away for a while is looked for again; nothing is lost by waiting."""
    stop = Event()

    def told(_signal: int, _frame: FrameType | None) -> None:
        stop.set()

    signal.signal(signal.SIGTERM, told)
    signal.signal(signal.SIGINT, told)
    while not stop.is_set():
        try:
            courier.go_round(stop)
        except StoreAwayError as away:
            say(f"the database is away: {type(away).__name__}")
        stop.wait(every)


def _send_again(courier: Courier, ids: tuple[str, ...]) -> None:
    """Exit code 1 when the gateway did not take one of them; nothing is sent while an id is wrong."""
    given_up = tuple(each for each in courier.dead() if each[0].person != NOBODY)
    known = {letter.id for letter, _ in given_up}
    for each in ids:
        if each != ALL and each not in known:
            raise click.UsageError(f"{each} is not the id of anything that was given up: see --dead")
    chosen = tuple(each for each in given_up if ALL in ids or each[0].id in ids)
    if not courier.send_again(chosen):
        raise click.exceptions.Exit(1)


def _list_dead(courier: Courier) -> None:
    letters = tuple(letter for letter, _ in courier.dead())
    for letter in letters:
        notice, tried = letter.filed.notice, letter.attempts
        last = f"last status {tried[-1].status or 'none'}" if tried else "never sent"
        click.echo(
            f"{letter.id}  {notice.queued_at:%Y-%m-%dT%H:%M}Z  {notice.unit}  {notice.code}"
            f"  to {letter.person or 'nobody'}  tried {len(tried)}, {last}"
        )
    if letters:
        raise click.exceptions.Exit(1)
