"""`penline serve`: the signed webhook on waitress, which buffers slow clients so that they hold no worker."""

from __future__ import annotations

import gc
import logging
import signal
import sys
from types import FrameType
from typing import Any, NoReturn

import click

from bot.cli.options import config_option, database_option, settings_of, units_option
from bot.cli.web_server import web_server
from bot.settings import Settings
from bot.store import StoreAwayError
from bot.web.app import LARGEST_BODY
from bot.web.logs import log, log_to

LARGEST_HEADERS = 16 * 1024
SLOW_CLIENT_S = 30
"""A connection on which nothing moves for this long is closed."""

MOST_CONNECTIONS = 900
"""More are not heard at all until others close; a process may mostly have 1,024 files open."""


@click.command("serve")
@config_option
@database_option
@units_option
@click.option("--host", help="Address to listen on; 127.0.0.1 unless told.")
@click.option("--port", type=click.IntRange(0, 65535), help="Port to listen on; 8080 unless told.")
@click.option("--demo", is_flag=True, help="An invented ward on this machine alone, with its pages.")
def command(demo: bool, **given: Any) -> None:
    """Answer signed messages over HTTP until told to stop."""
    if demo:
        from bot.cli.demo_ward import serve_demo

        serve_demo(**given)
        return
    config, database = given.pop("config"), given.pop("database")
    settings = settings_of(config, database_url=database, **given)
    log_to(sys.stderr)
    serve(settings)


def serve(settings: Settings) -> None:
    """Serve this deployment until SIGTERM or SIGINT."""
    from bot.app import create_app

    gc.disable()  # what is made now lives as long as the process: to look through it would only take time
    try:
        app = create_app(settings)
    except StoreAwayError as away:
        log(logging.ERROR, "store_away", error=type(away).__name__)
        click.echo(f"penline: the database cannot be used: {away}", err=True)
        sys.exit(1)
    gc.freeze()
    gc.enable()
    server = web_server(app, **waitress_settings(settings))
    app.extensions["crowd"].waiting = server.task_dispatcher.queue
    run(server)


def run(server: Any) -> None:
    """Run the server until SIGTERM or SIGINT, and log where it listens."""
    signal.signal(signal.SIGTERM, _stop)
    for host, port in _addresses(server):
        log(logging.INFO, "serving", address=f"http://{host}:{port}")
    server.run()


def _addresses(server: Any) -> list[tuple[str, int]]:
    """Where it listens: at several addresses where the host's name has several."""
    if hasattr(server, "effective_listen"):
        return list(server.effective_listen)
    return [(server.effective_host, server.effective_port)]


def waitress_settings(settings: Settings) -> dict[str, Any]:
    """The server's limits; the one for bodies is a backstop, as the app answers 413 at 16 KiB itself."""
    proxy: dict[str, Any] = {}
    if settings.trusted_proxy is not None:
        headers = {"x-forwarded-for", "x-forwarded-proto"}
        proxy = {"trusted_proxy": settings.trusted_proxy, "trusted_proxy_headers": headers}
    return {
        "host": settings.host,
        "port": settings.port,
        "threads": settings.threads,
        "max_request_body_size": 4 * LARGEST_BODY,
        "max_request_header_size": LARGEST_HEADERS,
        "channel_timeout": SLOW_CLIENT_S,
        "connection_limit": MOST_CONNECTIONS,
        "asyncore_use_poll": True,
        "clear_untrusted_proxy_headers": True,
        "ident": None,
        **proxy,
    }


def _stop(_signal: int, _frame: FrameType | None) -> NoReturn:
    raise SystemExit(0)
