"""Logs hold ids, statuses and times; never a word, a level, a bed or a person."""

from __future__ import annotations

import io
import json
import logging

import pytest
from sqlalchemy import event
from sqlalchemy.exc import OperationalError

from bot.dialogue.answer import Answer
from bot.dialogue.context import Context
from bot.intake import Deployment, Incoming
from bot.settings import Settings
from bot.store import Book
from bot.web import web_app
from bot.web.logs import ALLOWED, log
from tests.intake.double import deployment
from tests.web.client import NOW, SECRET, Gateway, body

CANARY = "kestrel"


def lines(logs: io.StringIO) -> list[dict[str, object]]:
    """The log, line by line."""
    return [json.loads(line) for line in logs.getvalue().splitlines()]


def test_a_message_is_logged_by_its_id(gateway: Gateway, logs: io.StringIO) -> None:
    gateway.posts(message_id="m77")
    line = lines(logs)[-1]
    assert (line["event"], line["message_id"], line["status"], line["kept"]) == (
        "message",
        "m77",
        "recorded",
        "new",
    )
    assert set(line) <= {"time", "severity", "event", *ALLOWED}


def test_security_04_a_reused_id_is_a_log_line(gateway: Gateway, logs: io.StringIO) -> None:
    gateway.posts()
    gateway.posts(body("12 900"))
    line = lines(logs)[-1]
    assert (line["severity"], line["message_id"], line["kept"]) == ("warning", "m1", "other")


def breaks(incoming: Incoming, context: Context, book: Book) -> Answer:
    """A dialogue whose error holds everything that it knows."""
    raise RuntimeError(f"{incoming.text} {context.person.name} {book.unit} 8413 mL {CANARY}")


def test_security_14_the_canary_is_in_no_log(logs: io.StringIO) -> None:
    ward = deployment()
    gateway = Gateway(web_app(ward, Settings(secrets=(SECRET,)), lambda: NOW))
    sent = body(f"bed 12 {CANARY} 8413", alternatives=[{"text": CANARY, "confidence": 0.5}])
    gateway.posts(sent)
    gateway.posts(sent)
    gateway.posts(body(f"12 {CANARY}"))
    gateway.posts(body(CANARY, sender=CANARY), "m2")
    gateway.posts(body(f"{CANARY} 123456"), "m3")
    gateway.posts(body(CANARY, kestrel=CANARY), "m4")
    gateway.posts(sent[:-1], "m5")
    gateway.posts(sent, "m6", webhook_signature="x")
    gateway.posts(sent, "m7", content_type="text/plain")
    gateway.posts(sent.ljust(17_000), "m8")
    gateway.app.test_client().get(f"/{CANARY}?{CANARY}")
    Gateway(web_app(deployment(respond=breaks), Settings(secrets=(SECRET,)), lambda: NOW)).posts(sent, "m9")
    without_database(ward, gateway, sent)
    assert {line["event"] for line in lines(logs)} >= {"message", "unsigned", "failed", "store_away"}
    assert CANARY not in logs.getvalue()
    assert not any(word in logs.getvalue() for word in ("8413", "Amy", "bed"))


def without_database(ward: Deployment, gateway: Gateway, sent: bytes) -> None:
    """Post while the database fails with an error that quotes its parameters."""

    def fail(*_: object) -> None:
        raise OperationalError("INSERT", (CANARY, 8413), Exception(CANARY))

    event.listen(ward.store.engine, "commit", fail)
    assert gateway.posts(sent, "m10").status_code == 503
    event.remove(ward.store.engine, "commit", fail)


def test_a_failure_is_logged_with_its_message_and_its_place(logs: io.StringIO) -> None:
    Gateway(web_app(deployment(respond=breaks), Settings(secrets=(SECRET,)), lambda: NOW)).posts()
    line = lines(logs)[-1]
    assert (line["event"], line["message_id"], line["error"]) == ("failed", "m1", "RuntimeError")
    assert str(line["where"]).startswith("bot.intake.handling:")


def test_another_library_s_words_are_not_logged(logs: io.StringIO) -> None:
    try:
        raise ValueError(CANARY)
    except ValueError:
        logging.getLogger("waitress").exception("while serving %s", CANARY)
    assert CANARY not in logs.getvalue()
    assert (lines(logs)[-1]["logger"], lines(logs)[-1]["error"]) == ("waitress", "ValueError")


def test_a_key_that_is_not_allowed_is_refused() -> None:
    with pytest.raises(ValueError, match="text"):
        log(logging.INFO, "message", text=CANARY)
