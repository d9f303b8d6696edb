"""What a proxy says of its client is believed from the one proxy that is set, and from nobody else."""

from __future__ import annotations

import json
import threading
import urllib.request
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager, suppress
from typing import Any

import pytest
from waitress.server import create_server

from bot.cli.serve import waitress_settings
from bot.settings import Settings

pytestmark = pytest.mark.real_time

SAID = {"X-Forwarded-For": "203.0.113.9", "X-Forwarded-Proto": "https", "X-Forwarded-Host": "elsewhere"}


def mirror(environ: dict[str, Any], start: Callable[..., object]) -> Iterable[bytes]:
    """Who the client seems to be."""
    start("200 OK", [("Content-Type", "application/json")])
    seen = {key: environ.get(key) for key in ("REMOTE_ADDR", "wsgi.url_scheme", "HTTP_HOST")}
    seen["left"] = sorted(key for key in environ if key.startswith(("HTTP_X_FORWARDED", "HTTP_FORWARDED")))
    return [json.dumps(seen).encode()]


def run(server: Any) -> None:
    """Serve until it is closed, which its loop hears of as a socket that is gone."""
    with suppress(OSError):
        server.run()


@contextmanager
def behind(proxy: str | None) -> Iterator[dict[str, Any]]:
    """What such a server makes of a request with a proxy's headers, sent from this machine."""
    server: Any = create_server(mirror, **waitress_settings(Settings(port=0, trusted_proxy=proxy)))
    thread = threading.Thread(target=run, args=(server,))
    thread.start()
    try:
        url = f"http://127.0.0.1:{server.effective_port}/"
        with urllib.request.urlopen(urllib.request.Request(url, headers=SAID), timeout=10) as response:
            yield json.load(response)
    finally:
        server.close()
        thread.join(timeout=10)


@pytest.mark.parametrize("proxy", [None, "192.0.2.1"])
def test_security_10_a_proxy_that_is_not_set_is_not_believed(proxy: str | None) -> None:
    with behind(proxy) as seen:
        assert (seen["REMOTE_ADDR"], seen["wsgi.url_scheme"]) == ("127.0.0.1", "http")
        assert str(seen["HTTP_HOST"]).startswith("127.0.0.1")


def test_security_10_the_proxy_that_is_set_is_believed_of_its_client_and_of_no_host() -> None:
    with behind("127.0.0.1") as seen:
        assert (seen["REMOTE_ADDR"], seen["wsgi.url_scheme"]) == ("203.0.113.9", "https")
        assert str(seen["HTTP_HOST"]).startswith("127.0.0.1")
