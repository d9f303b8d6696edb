"""Standard Webhooks 1.0.0: who sent this body, checked over its raw bytes before anything of it is parsed.

The `standardwebhooks` library does the arithmetic. It lets several errors of its own out and is generous
about shapes, so shapes are checked first and whatever it raises means the same: not signed by us.
"""

from __future__ import annotations

import re

from standardwebhooks.webhooks import Webhook, WebhookVerificationError
from werkzeug.datastructures import Headers

MOST_SIGNATURES = 5

_ID = re.compile(r"[A-Za-z0-9_.-]{1,64}")
_TIMESTAMP = re.compile(r"[0-9]{10}")
_SIGNATURE = re.compile(r"v[0-9]{1,2}[a-z]?,[A-Za-z0-9+/]{16,256}={0,2}")
_HEADERS = ("webhook-id", "webhook-timestamp", "webhook-signature")


class Verifier:
    """The live secrets: a body signed with any of them is taken."""

    def __init__(self, secrets: tuple[str, ...]) -> None:
        self._webhooks = tuple(Webhook(secret) for secret in secrets)

    def message_id(self, headers: Headers, body: bytes) -> str | None:
        """The message's id if the body is signed and fresh (5 minutes either way), else None."""
        shaped = _shaped(headers)
        if shaped is None or not any(_verifies(webhook, shaped, body) for webhook in self._webhooks):
            return None
        return shaped["webhook-id"]


def _shaped(headers: Headers) -> dict[str, str] | None:
    """The three headers, if they look as they should."""
    message_id, timestamp, signatures = (headers.get(name, "") for name in _HEADERS)
    parts = signatures.split(" ")
    if not (_ID.fullmatch(message_id) and _TIMESTAMP.fullmatch(timestamp)):
        return None
    if len(parts) > MOST_SIGNATURES or not all(_SIGNATURE.fullmatch(part) for part in parts):
        return None
    return dict(zip(_HEADERS, (message_id, timestamp, signatures), strict=True))


def _verifies(webhook: Webhook, headers: dict[str, str], body: bytes) -> bool:
    try:
        webhook.verify(body, headers, json_parse=False)
    except (WebhookVerificationError, ValueError):  # wrong base64 and wrong UTF-8 are ValueErrors
        return False
    return True
