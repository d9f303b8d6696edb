"""`penline serve --demo`: an invented ward with some hours behind it, in memory, for this machine alone."""

from __future__ import annotations

import base64
import logging
import secrets
import socket
from collections.abc import Iterator
from contextlib import closing
from datetime import datetime, timedelta
from pathlib import Path

import click

from bot.cli.serve import run, waitress_settings
from bot.cli.web_server import web_server
from bot.intake import Deployment, Incoming, handle
from bot.settings import Settings, is_loopback
from bot.unit import Unit, demo_unit, load_unit

STORY: tuple[tuple[int, str, str], ...] = (
    (430, "amy", "new chest tube bed 7 mediastinal, post op heart, 78 kg, canister empty"),
    (425, "amy", "new chest tube bed 12 left, post op lung, canister empty"),
    (424, "amy", "new chest tube bed 12 right, post op lung, canister empty"),
    (420, "ben", "bed 3 mark 1240"),
    (370, "amy", "bed 7 mark 60"),
    (365, "amy", "bed 12 left mark 40, right mark 15"),
    (310, "amy", "bed 7 mark 115"),
    (300, "ben", "bed 3 mark 1290"),
    (250, "amy", "bed 7 mark 190"),
    (244, "amy", "bed 12 left mark 110, right mark 35"),
    (240, "ben", "bed 3 mark 1350"),
    (190, "amy", "bed 7 mark 250"),
    (130, "amy", "bed 7 mark 300"),
    (125, "amy", "bed 12 left mark 190, right mark 60"),
    (120, "ben", "bed 3 mark 1410"),
    (70, "amy", "bed 7 mark 540"),
    (60, "ben", "changed the canister bed 3, old one 1450"),
    (40, "ben", "bed 18 mark 380"),
    (10, "amy", "bed 7 mark 770"),
    (8, "amy", "bed 12 left seal 2 suction 20 no leak"),
)
"""Minutes ago, who, and what was sent."""


def serve_demo(
    *, config: Path | None, database: str | None, units: tuple[Path, ...], host: str | None, port: int | None
) -> None:
    """Serve the demonstration until told to stop; its address is printed."""
    if config is not None or database is not None or len(units) > 1:
        raise click.UsageError("--demo keeps its ledger in memory: it takes no --config and no --database")
    where = host or "127.0.0.1"
    if not is_loopback(where):
        raise click.UsageError("--demo lets anyone choose who to be: it listens on this machine alone")
    logging.getLogger("waitress").setLevel(logging.ERROR)
    with closing(_socket(where, 8080 if port is None else port)) as listening:
        _serve(listening, where, load_unit(units[0]) if units else None)


def _serve(listening: socket.socket, host: str, unit: Unit | None) -> None:
    from bot.app import create_demo, now

    shown = f"[{host}]" if ":" in host else host
    address = f"http://{shown}:{listening.getsockname()[1]}"
    secret = f"whsec_{base64.b64encode(secrets.token_bytes(32)).decode()}"
    settings = Settings(secrets=(secret,), host=host, address=address)
    app, ward = create_demo(settings, unit or demo_unit())
    if unit is None:
        tell_story(ward, now())
    given = waitress_settings(settings)
    del given["host"], given["port"]
    server = web_server(app, sockets=[listening], **given)
    click.echo(f"Penline's demonstration is at {address} (stop it with Ctrl-C)")
    run(server)


def tell_story(ward: Deployment, now: datetime) -> None:
    """Let the demo ward's last hours be told, through the same intake as everything else."""
    for incoming in story(now):
        handle(incoming, ward)


def story(now: datetime) -> Iterator[Incoming]:
    """The messages of the demo ward's last hours."""
    for number, (minutes, sender, text) in enumerate(STORY):
        yield Incoming(
            id=f"story-{number}", sender=sender, text=text, arrived=now - timedelta(minutes=minutes)
        )


def _socket(host: str, port: int) -> socket.socket:
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    found = socket.socket(family, socket.SOCK_STREAM)
    found.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        found.bind((host, port))
    except OSError as error:
        found.close()
        raise click.UsageError(f"{host}:{port} cannot be listened on: {error.strerror}") from error
    return found
