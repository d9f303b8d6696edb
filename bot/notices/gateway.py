"""The gateway that takes notices to people: one signed POST a letter (Standard Webhooks 1.0.0).

Anything but a 2xx is a failure, a redirect too; 410 Gone means that nothing is to be sent there again.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

import urllib3
from standardwebhooks.webhooks import Webhook

from bot.store.notices import Outcome

TIMEOUT = urllib3.Timeout(connect=5, read=10)
_GONE = 410


@dataclass(frozen=True, slots=True)
class Receipt:
    """What became of a send; `status` None: no answer came, and the next one would have none either."""

    outcome: Outcome
    status: int | None


class Gateway:
    """One address, and the secrets that sign: while a secret is changed, a letter carries both signatures."""

    def __init__(self, url: str, secrets: tuple[str, ...]) -> None:
        self._url = url
        self._webhooks = tuple(Webhook(secret) for secret in secrets)
        self._pool = urllib3.PoolManager(retries=False, timeout=TIMEOUT)

    def send(self, letter_id: str, body: bytes, at: datetime) -> Receipt:
        """What became of sending this body once."""
        headers = signed_headers(self._webhooks, letter_id, body, at)
        try:
            answer = self._pool.request("POST", self._url, body=body, headers=headers, redirect=False)
        except urllib3.exceptions.HTTPError:
            return Receipt("failed", None)
        return Receipt(_outcome(answer.status), answer.status)

    def close(self) -> None:
        """Let go of the connections."""
        self._pool.clear()


def signed_headers(
    webhooks: tuple[Webhook, ...], letter_id: str, body: bytes, at: datetime
) -> dict[str, str]:
    """The headers of a letter: `at` is the moment of this attempt, not that of the notice."""
    signatures = (webhook.sign(letter_id, at, body.decode()) for webhook in webhooks)
    return {
        "content-type": "application/json",
        "user-agent": "penline",
        "webhook-id": letter_id,
        "webhook-timestamp": str(int(at.timestamp())),
        "webhook-signature": " ".join(signatures),
    }


def _outcome(status: int) -> Outcome:
    if 200 <= status < 300:
        return "delivered"
    return "refused" if status == _GONE else "failed"
