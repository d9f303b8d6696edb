"""A gateway in a process of its own: checks each signature, keeps what it takes, and then answers 204.

`python receiver.py PORT SECRET FILE ANSWER...`: the answers are given in turn, 204 after the last. A line
is on the disk before the answer goes out, so what it has answered for it has. The answer DIES: the process
is gone between the two; HANGS: none comes.
"""

from __future__ import annotations

import json
import os
import signal
import sys
import time
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from standardwebhooks.webhooks import Webhook, WebhookVerificationError

DIES, HANGS = 1, 2

_HEADERS = ("webhook-id", "webhook-timestamp", "webhook-signature")


class Taker(BaseHTTPRequestHandler):
    """Takes one POST."""

    webhook: Webhook
    file: Path
    answers: list[int]
    protocol_version = "HTTP/1.1"

    def do_POST(self) -> None:
        """Keep the body if it is signed."""
        body = self.rfile.read(int(self.headers["content-length"]))
        headers = {name: self.headers[name] for name in _HEADERS}
        status = self.answers.pop(0) if self.answers else 204
        try:
            self.webhook.verify(body, headers)
        except WebhookVerificationError:
            status = 401
        self._keep(headers["webhook-id"], status, body)
        if status == DIES:
            os.kill(os.getpid(), signal.SIGKILL)
        if status == HANGS:
            time.sleep(60)
        self.send_response(status)
        if status == 302:
            self.send_header("location", self.path)
        self.send_header("content-length", "0")
        self.end_headers()

    def _keep(self, letter: str, status: int, body: bytes) -> None:
        row = {"id": letter, "status": status, "body": json.loads(body)}
        with self.file.open("a") as file:
            file.write(json.dumps(row) + "\n")
            file.flush()
            os.fsync(file.fileno())

    def log_message(self, *_: object) -> None:
        """Say nothing."""


if __name__ == "__main__":
    Taker.webhook = Webhook(sys.argv[2])
    Taker.file = Path(sys.argv[3])
    Taker.answers = [int(each) for each in sys.argv[4:]]
    server = ThreadingHTTPServer(("127.0.0.1", int(sys.argv[1])), Taker)
    print(server.server_port, flush=True)
    server.serve_forever()
