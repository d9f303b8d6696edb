"""`POST /messages`: every status of the webhook, and that nothing is stored unless it answers 200."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import pytest
from flask import Flask
from sqlalchemy import event, text
from sqlalchemy.exc import OperationalError

from bot.dialogue.answer import Answer
from bot.dialogue.context import Context
from bot.intake import Deployment, Incoming
from bot.settings import Settings
from bot.store import Book
from bot.web import web_app
from tests.intake.double import deployment
from tests.web.client import NOW, SECRET, Gateway, body, problem


def stored(ward: Deployment) -> int:
    """How many messages were stored."""
    with ward.store.connection() as connection:
        found: int = connection.execute(text("SELECT count(*) FROM messages")).scalar_one()
    return found


def test_a_signed_message_gets_its_answer_object(gateway: Gateway, ward: Deployment) -> None:
    response = gateway.posts()
    assert response.status_code == 200
    assert response.mimetype == "application/json"
    answer: dict[str, Any] = json.loads(response.data)
    assert (answer["id"], answer["status"]) == ("m1", "recorded")
    assert set(answer) >= {"reply", "speech", "segments", "results", "chart", "cautions", "questions"}
    assert stored(ward) == 1


def test_security_04_the_same_message_again_gets_the_same_bytes(gateway: Gateway, ward: Deployment) -> None:
    first, again = gateway.posts(), gateway.posts()
    assert (again.status_code, again.data) == (200, first.data)
    assert stored(ward) == 1


@pytest.mark.parametrize(
    ("accept", "mimetype"),
    [
        ("text/plain", "text/plain"),
        ("text/plain, */*;q=0.1", "text/plain"),
        ("application/json", "application/json"),
        ("*/*", "application/json"),
        ("image/png", "application/json"),
    ],
)
def test_plain_text_is_the_reply_alone(gateway: Gateway, accept: str, mimetype: str) -> None:
    response = gateway.posts(accept=accept)
    assert response.mimetype == mimetype
    reply = response.text if mimetype == "text/plain" else json.loads(response.data)["reply"]
    assert reply == "Chart 0 mL."


def test_security_04_an_id_used_for_another_body_is_409(gateway: Gateway, ward: Deployment) -> None:
    gateway.posts()
    response = gateway.posts(body("12 900"))
    assert problem(response)["status"] == 409
    assert stored(ward) == 1


@pytest.mark.parametrize(
    ("what", "status"),
    [
        (b"", 400),
        (b"{", 400),
        (b"[]", 400),
        (b'"text"', 400),
        (b"null", 400),
        (b'{"sender": "amy", "text": "12 840", "text": "12 900"}', 400),
        (b'{"sender": "amy", "text": NaN}', 400),
        (b"[" * 16000, 400),
        (b'{"a":' * 3000, 400),
        (b'{"sender": "amy", "text": "x", "a": [[[[[[[[1]]]]]]]]}', 400),
        (b"{}", 422),
        (b'{"sender": "amy"}', 422),
        (b'{"sender": "amy", "text": "12 840", "bed": "12"}', 422),
        (b'{"sender": "amy", "text": 840}', 422),
        (b'{"sender": "amy", "text": ""}', 422),
        (b'{"sender": "amy", "text": "\\ud800"}', 422),
        (b'{"sender": "amy", "text": "a\\u0000b"}', 422),
        (b'{"sender": "", "text": "x"}', 422),
        (b'{"sender": "a\\nb", "text": "x"}', 422),
        (b'{"sender": ["amy"], "text": "x"}', 422),
        (body("x" * 1001), 422),
        (body(sender="x" * 129), 422),
        (body(channel="fax"), 422),
        (body(channel=1), 422),
        (body(alternatives={}), 422),
        (body(alternatives=[{"text": "x"}]), 422),
        (body(alternatives=[{"text": "x", "confidence": 2}]), 422),
        (body(alternatives=[{"text": "x", "confidence": True}]), 422),
        (body(alternatives=[{"text": "x", "confidence": "0.5"}]), 422),
        (body(alternatives=[{"text": "\u0007", "confidence": 0.5}]), 422),
        (body(alternatives=[{"text": "x", "confidence": 0.5}] * 11), 422),
    ],
)
def test_security_06_a_wrong_body_is_refused_and_nothing_is_stored(
    gateway: Gateway, ward: Deployment, what: bytes, status: int
) -> None:
    assert problem(gateway.posts(what))["status"] == status
    assert stored(ward) == 0


def test_wrong_fields_are_named_by_their_pointers(gateway: Gateway) -> None:
    document = problem(gateway.posts(body("", bed="12", alternatives=[{"text": "x", "confidence": 9}])))
    pointers = [flaw["pointer"] for flaw in document["errors"]]
    assert pointers == ["#/bed", "#/text", "#/alternatives/0/confidence"]


@pytest.mark.parametrize(
    "sent_at", ["2026-03-04T12:00:00-05:00", "2026-03-04T17:05:00Z", "2026-02-26T17:00:00.5Z", None]
)
def test_a_time_of_sending_with_its_offset_is_taken(gateway: Gateway, sent_at: str | None) -> None:
    assert gateway.posts(body(sent_at=sent_at)).status_code == 200


@pytest.mark.parametrize(
    "sent_at",
    [
        "2026-03-04T12:00:00",
        "2026-03-04",
        "20260304T120000Z",
        "noon",
        1772643600,
        "2026-03-04T17:05:01Z",
        "2026-02-25T16:59:59Z",
        "0001-01-01T00:00:00+23:59",
        "9999-12-31T23:59:59-23:59",
        "2026-02-30T12:00:00Z",
        "2026-03-04T12:00:00+24:00",
    ],
)
def test_a_time_of_sending_that_cannot_be_is_refused(gateway: Gateway, sent_at: object) -> None:
    assert problem(gateway.posts(body(sent_at=sent_at)))["errors"][0]["pointer"] == "#/sent_at"


@pytest.mark.parametrize("kind", ["text/plain", "application/x-www-form-urlencoded", "text/json", ""])
def test_what_is_not_json_is_415(gateway: Gateway, ward: Deployment, kind: str) -> None:
    assert problem(gateway.posts(content_type=kind))["status"] == 415
    assert stored(ward) == 0


def test_json_with_a_charset_is_json(gateway: Gateway) -> None:
    assert gateway.posts(content_type="application/json; charset=utf-8").status_code == 200


def test_security_06_17_kib_is_413(gateway: Gateway, ward: Deployment) -> None:
    assert problem(gateway.posts(b" " * (17 * 1024)))["status"] == 413
    assert gateway.posts(body().ljust(16 * 1024)).status_code == 200
    assert stored(ward) == 1


@pytest.mark.parametrize("method", ["GET", "PUT", "DELETE", "PATCH", "HEAD", "OPTIONS", "TRACE"])
def test_security_07_only_post_reaches_the_webhook(app: Flask, method: str) -> None:
    response = app.test_client().open("/messages", method=method)
    assert (response.status_code, response.headers["Allow"]) == (405, "POST")


def test_another_address_is_404(app: Flask) -> None:
    assert problem(app.test_client().get("/beds/12"))["status"] == 404


def test_security_15_a_database_that_is_away_is_503_and_passes(gateway: Gateway, ward: Deployment) -> None:
    def fail(_: object) -> None:
        raise OperationalError("COMMIT", None, Exception("disk full"))

    event.listen(ward.store.engine, "commit", fail)
    response = gateway.posts()
    event.remove(ward.store.engine, "commit", fail)
    assert problem(response)["status"] == 503
    assert int(response.headers["Retry-After"]) > 0
    assert "mL" not in response.text
    assert gateway.posts().status_code == 200
    assert stored(ward) == 1


def test_security_15_a_broken_program_tells_nothing_of_itself() -> None:
    ward = deployment(respond=broken)
    gateway = Gateway(web_app(ward, Settings(secrets=(SECRET,)), lambda: NOW))
    response = gateway.posts()
    assert problem(response)["status"] == 500
    assert "mL" not in response.text
    assert "Error" not in problem(response)["detail"]
    assert stored(ward) == 0


def broken(incoming: Incoming, context: Context, book: Book) -> Answer:
    """A dialogue that fails after it has written."""
    drain = book.open_drain("12", None)
    raise RuntimeError(f"{drain} 840 mL {incoming.text} {context.person}")


@pytest.mark.parametrize(
    "ask",
    [
        lambda gateway: gateway.posts(),
        lambda gateway: gateway.posts(webhook_signature="x"),
        lambda gateway: gateway.posts(b"{"),
        lambda gateway: gateway.app.test_client().get("/health"),
        lambda gateway: gateway.app.test_client().get("/nowhere"),
    ],
    ids=["answer", "unsigned", "malformed", "health", "nowhere"],
)
def test_security_17_18_no_answer_is_cached_framed_or_sniffed(
    gateway: Gateway, ask: Callable[[Gateway], Any]
) -> None:
    headers = ask(gateway).headers
    assert headers["Cache-Control"] == "no-store"
    assert headers["Content-Security-Policy"] == "default-src 'none'; frame-ancestors 'none'"
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert "Set-Cookie" not in headers


def test_health_says_that_it_lives_and_ready_that_it_takes_messages(app: Flask, ward: Deployment) -> None:
    client = app.test_client()
    assert client.get("/health").get_json() == {"status": "ok"}
    assert client.get("/ready").get_json() == {"status": "ready"}
    with ward.store.connection() as connection:
        connection.execute(text("DROP TRIGGER entries_no_update"))
    assert client.get("/health").status_code == 200
    assert problem(client.get("/ready"))["status"] == 503
