"""The ward of `penline serve --demo`, with some hours behind it, on a real server for a real browser."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime

from flask import Flask
from werkzeug.serving import make_server

from bot.app import create_demo
from bot.cli.demo_ward import tell_story
from bot.settings import Settings
from bot.unit import demo_unit
from tests.web.client import SECRET


@contextmanager
def demonstrated(clock: Callable[[], datetime]) -> Iterator[str]:
    """The address of a ward of its own, at what the clock says."""
    server = make_server("127.0.0.1", 0, lambda environ, start: app(environ, start), threaded=True)
    address = f"http://127.0.0.1:{server.server_port}"
    app: Flask
    app, ward = create_demo(Settings(secrets=(SECRET,), address=address), demo_unit(), clock)
    tell_story(ward, clock())
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    try:
        yield address
    finally:
        server.shutdown()
        thread.join()
        server.server_close()
        ward.store.close()
