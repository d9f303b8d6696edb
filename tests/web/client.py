"""A gateway: signs what it posts, and says what came back."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from flask import Flask
from standardwebhooks.webhooks import Webhook
from werkzeug.test import TestResponse

SECRET = "whsec_" + "QUJDRA" * 8  # 36 bytes
OTHER_SECRET = "whsec_" + "RUZHSA" * 8
NOW = datetime(2026, 3, 4, 17, tzinfo=UTC)


def real_now() -> datetime:
    """The real moment."""
    return datetime.now(UTC)


def signed(
    body: bytes, message_id: str = "m1", *, at: datetime = NOW, secret: str = SECRET
) -> dict[str, str]:
    """The headers that a gateway sends with this body."""
    signature = Webhook(secret).sign(message_id, at, body.decode("utf-8"))
    return {
        "content-type": "application/json",
        "webhook-id": message_id,
        "webhook-timestamp": str(int(at.timestamp())),
        "webhook-signature": signature,
    }


def body(text: str = "12 840", sender: str = "amy", **more: object) -> bytes:
    """The JSON of a message."""
    return json.dumps({"sender": sender, "text": text, **more}).encode()


@dataclass(frozen=True, slots=True)
class Gateway:
    """Posts to an app, without a network."""

    app: Flask
    clock: Callable[[], datetime] = lambda: NOW

    def posts(self, what: bytes | None = None, message_id: str = "m1", **headers: str) -> TestResponse:
        """What came back for a signed body; headers given here replace those of the signature."""
        sent = body() if what is None else what
        given = {name.replace("_", "-"): value for name, value in headers.items()}
        every = {**signed(sent, message_id, at=self.clock()), **given}
        return self.sends(sent, every)

    def sends(self, what: bytes, headers: dict[str, str]) -> TestResponse:
        """What came back for a body under exactly these headers."""
        return self.app.test_client().post("/messages", data=what, headers=headers)


def problem(response: TestResponse) -> dict[str, Any]:
    """The problem document, checked for its members (RFC 9457 section 3.1)."""
    assert response.mimetype == "application/problem+json"
    document: dict[str, Any] = json.loads(response.data)
    assert document["status"] == response.status_code
    assert {"type", "title", "status", "detail"} <= set(document)
    return document
