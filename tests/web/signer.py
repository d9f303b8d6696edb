"""A gateway in front of an app: signs whatever body is posted on its way in, as its raw bytes."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from itertools import count
from typing import Any

from standardwebhooks.webhooks import Webhook

Wsgi = Callable[[dict[str, Any], Any], Iterable[bytes]]


class Signer:
    """The app behind a gateway: each post gets an id of its own, and a signature over what was sent."""

    def __init__(self, app: Wsgi, secret: str) -> None:
        self._app = app
        self._webhook = Webhook(secret)
        self._numbers = count(1)

    def __call__(self, environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
        """What the app answers."""
        if environ["REQUEST_METHOD"] == "POST":
            self._sign(environ, environ["wsgi.input"].read())
        return self._app(environ, start_response)

    def _sign(self, environ: dict[str, Any], body: bytes) -> None:
        now, message_id = datetime.now(UTC), f"signed-{next(self._numbers)}"
        environ["wsgi.input"] = io.BytesIO(body)
        environ["CONTENT_LENGTH"] = str(len(body))
        environ["HTTP_WEBHOOK_ID"] = message_id
        environ["HTTP_WEBHOOK_TIMESTAMP"] = str(int(now.timestamp()))
        try:
            environ["HTTP_WEBHOOK_SIGNATURE"] = self._webhook.sign(message_id, now, body.decode())
        except UnicodeDecodeError:  # no gateway can sign what is not text
            environ["HTTP_WEBHOOK_SIGNATURE"] = "v1,none"
