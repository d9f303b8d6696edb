"""The server's main thread leaves a connection alone while it is answered on; all that is sent arrives."""

from __future__ import annotations

import socket
import threading
import time
from collections.abc import Callable, Iterable, Iterator
from contextlib import closing, contextmanager
from typing import Any

import pytest
from waitress.server import BaseWSGIServer

from bot.cli.serve import waitress_settings
from bot.cli.web_server import Channel, web_server
from bot.settings import Settings

pytestmark = pytest.mark.real_time

LARGE = b"0123456789" * 400_000
"""More than the system takes at once from who sends to one that does not read."""


def large(_: Any, start: Callable[..., Any]) -> Iterable[bytes]:
    """An answer with its length, all at once."""
    start("200 OK", [("Content-Length", str(len(LARGE)))])
    return [LARGE]


def in_parts(_: Any, start: Callable[..., Any]) -> Iterable[bytes]:
    """The same, in parts, with a wait before the last."""
    start("200 OK", [("Content-Length", str(len(LARGE)))])
    for begin in range(0, len(LARGE), 1_000_000):
        yield LARGE[begin : begin + 1_000_000]
    time.sleep(0.05)


def short(environ: Any, start: Callable[..., Any]) -> Iterable[bytes]:
    """An answer that says what was asked for."""
    told = environ["PATH_INFO"].encode()
    start("200 OK", [("Content-Length", str(len(told)))])
    return [told]


@contextmanager
def serving(app: Any) -> Iterator[int]:
    """Its port, while it is served."""
    server = web_server(app, **{**waitress_settings(Settings(port=0)), "threads": 2})
    over = threading.Event()

    def loop() -> None:
        while not over.is_set():
            server.asyncore.loop(timeout=0.02, map=server._map, use_poll=True, count=1)

    thread = threading.Thread(target=loop)
    thread.start()
    try:
        yield server.effective_port
    finally:
        over.set()
        thread.join(timeout=10)
        server.task_dispatcher.shutdown()
        server.asyncore.close_all(server._map)


def ask(port: int, *paths: str) -> socket.socket:
    """A connection on which these were asked for at once, the last of them for the end of it."""
    line = socket.create_connection(("127.0.0.1", port), timeout=10)
    asked = [f"GET {path} HTTP/1.1\r\nhost: x\r\n\r\n" for path in paths]
    line.sendall("".join(asked).encode().removesuffix(b"\r\n") + b"connection: close\r\n\r\n")
    return line


def heard(line: socket.socket) -> bytes:
    """All that comes until it is closed."""
    with closing(line):
        return b"".join(iter(lambda: line.recv(65536), b""))


@pytest.mark.parametrize("app", [large, in_parts])
def test_an_answer_that_is_read_late_arrives_whole(app: Any) -> None:
    with serving(app) as port:
        line = ask(port, "/")
        time.sleep(0.3)
        assert heard(line).partition(b"\r\n\r\n")[2] == LARGE


def test_requests_that_come_at_once_on_one_connection_are_answered_in_their_order() -> None:
    with serving(short) as port:
        told = heard(ask(port, "/one", "/two", "/three"))
    assert [part[:4] for part in told.split(b"\r\n\r\n/")[1:]] == [b"oneH", b"twoH", b"thre"]


def test_a_connection_is_left_alone_while_it_is_answered_on() -> None:
    server = web_server(short, **waitress_settings(Settings(port=0)))
    ours, theirs = socket.socketpair()
    channel = Channel(server, ours, ("", 0), server.adj, map={})
    assert not channel.writable()
    channel.total_outbufs_len = 10
    assert channel.writable()
    channel.requests = [object()]  # type: ignore[list-item]
    assert not channel.writable()
    channel.total_outbufs_len = server.adj.outbuf_high_watermark + 1
    assert channel.writable(), "who answers waits for the main thread"
    channel.total_outbufs_len = 10
    channel.will_close = True
    assert channel.writable(), "it is to be closed"
    channel.close()
    theirs.close()
    server.task_dispatcher.shutdown()
    server.asyncore.close_all(server._map)


def test_so_it_is_at_every_address_where_it_listens() -> None:
    listening = [socket.create_server(("127.0.0.1", 0)) for _ in range(2)]
    given = waitress_settings(Settings(port=0))
    del given["host"], given["port"]
    server = web_server(short, sockets=listening, **given)
    parts = [part for part in server.map.values() if isinstance(part, BaseWSGIServer)]
    assert [part.channel_class for part in parts] == [Channel, Channel]
    server.task_dispatcher.shutdown()
    server.close()
