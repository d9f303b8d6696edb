"""What the parts allow: the same Flask, server and database with next to nothing in between.

`constant` answers a JSON; `floor` also verifies the signature and commits one row, by SQLAlchemy with
`synchronous = FULL`. Run as `python -m tests.bench.floor KIND URL THREADS SERVERS`; prints the port that it
listens on. Of several servers on one file each waits for its turn, as Penline's do.
"""

from __future__ import annotations

import logging
import sys
import threading
from collections.abc import Callable

from flask import Flask, Response, abort, request
from sqlalchemy import Column, Integer, LargeBinary, MetaData, String, Table, insert

from bot.cli.serve import waitress_settings
from bot.cli.web_server import web_server
from bot.settings import Settings
from bot.store.connect import connect, written_file
from bot.store.gate import Gate
from bot.store.patience import ANSWER_S
from bot.web.signing import Verifier
from tests.web.client import SECRET

KINDS = ("constant", "floor")

_rows = Table(
    "rows", MetaData(),
    Column("seq", Integer, primary_key=True), Column("id", String(64), nullable=False, unique=True),
    Column("body", LargeBinary, nullable=False),
)  # fmt: skip


def app(kind: str, url: str, *, alone: bool) -> Flask:
    """The app of that kind on a database without rows; `alone`: no other server writes to it."""
    flask = Flask(__name__, static_folder=None)
    answer = (
        _floor(url, alone)
        if kind == "floor"
        else lambda: Response('{"status": "ok"}', mimetype="application/json")
    )
    flask.add_url_rule("/messages", view_func=answer, methods=["POST"])
    return flask


def _floor(url: str, alone: bool) -> Callable[[], Response]:
    engine, verifier, lock = connect(url), Verifier((SECRET,)), threading.Lock()
    gate = Gate(None if alone else written_file(engine), ANSWER_S)
    with engine.begin() as connection:
        _rows.create(connection, checkfirst=True)
    keep = insert(_rows)

    def answer() -> Response:
        body = request.get_data(cache=False)
        name = verifier.message_id(request.headers, body)
        if name is None:
            abort(401)
        with lock, gate, engine.begin() as connection:
            connection.execute(keep, {"id": name, "body": body})
        return Response('{"status": "ok"}', mimetype="application/json")

    return answer


def main(kind: str, url: str, threads: str, servers: str) -> None:
    """Serve until killed."""
    logging.getLogger("waitress.queue").setLevel(logging.ERROR)
    settings = Settings(port=0, threads=int(threads))
    server = web_server(app(kind, url, alone=servers == "1"), **waitress_settings(settings))
    print(server.effective_port, flush=True)
    server.run()


if __name__ == "__main__":
    main(*sys.argv[1:])
