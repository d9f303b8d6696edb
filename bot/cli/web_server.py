"""waitress around the app, whose main thread leaves a connection alone while a worker sends on it.

waitress' own asks again and again whether it may send the answer itself, until the worker has done so. Each
time it lets go of the interpreter, and has it back before the worker has woken up on another core: with 16
connections a message took twice the time and 300 changes of thread.
"""

from __future__ import annotations

from typing import Any

from waitress.channel import HTTPChannel
from waitress.server import BaseWSGIServer, create_server


def web_server(app: Any, **given: Any) -> Any:
    """The server of this app with these settings of waitress; it listens, and waits to be run."""
    parts: dict[int, Any] = {}
    server: Any = create_server(app, map=parts, **given)
    for part in parts.values():
        if isinstance(part, BaseWSGIServer):
            part.channel_class = Channel
    return server


class Channel(HTTPChannel):
    """One connection. Whoever has answered on it tells the main thread, which then sends what is left."""

    def writable(self) -> bool:
        """Whether the main thread has something to send: not while one is answered, unless much waits."""
        answering = bool(self.requests) and self.total_outbufs_len <= self.adj.outbuf_high_watermark
        return bool(super().writable()) and (self.will_close or not answering)
