"""A gateway as a program: reads posts as JSON lines, signs them as the standard says, prints the answers.

It knows nothing of the bot. A post: `id`, `body` (the message's JSON, or `raw` text), and, to go wrong,
`age_s` (a stale timestamp), `secret`, `type`.
"""

from __future__ import annotations

import json
import sys
import urllib.error
import urllib.request
from datetime import UTC, datetime, timedelta
from typing import Any

from standardwebhooks.webhooks import Webhook


def main(url: str, secret: str) -> None:
    """Post each line of standard input."""
    for line in sys.stdin:
        print(json.dumps(posted(url, secret, json.loads(line))), flush=True)


def posted(url: str, secret: str, post: dict[str, Any]) -> tuple[int, str]:
    """Status and body of the response."""
    body = post["raw"] if "raw" in post else json.dumps(post["body"])
    at = datetime.now(UTC) - timedelta(seconds=post.get("age_s", 0))
    headers = {
        "Content-Type": post.get("type", "application/json"),
        "webhook-id": post["id"],
        "webhook-timestamp": str(int(at.timestamp())),
        "webhook-signature": Webhook(post.get("secret", secret)).sign(post["id"], at, body),
    }
    request = urllib.request.Request(f"{url}/messages", body.encode(), headers)
    try:
        with urllib.request.urlopen(request, timeout=30) as response:
            return response.status, response.read().decode()
    except urllib.error.HTTPError as error:
        with error:
            return error.code, error.read().decode()


if __name__ == "__main__":
    main(*sys.argv[1:])
