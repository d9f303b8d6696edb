"""`POST /messages`: rate, size, signature, type, body, and then the one transaction; 200 means committed."""

from __future__ import annotations

import json
import logging
import time
from collections.abc import Callable
from datetime import UTC, datetime
from http import HTTPStatus
from typing import TypeAlias

from flask import Blueprint, Response, g, request

from bot.intake import Deployment, Incoming, Outcome, handle
from bot.web.bodies import incoming_of
from bot.web.logs import log
from bot.web.problems import Problem
from bot.web.rates import Rates
from bot.web.signing import Verifier

Clock: TypeAlias = Callable[[], datetime]
"""The one clock call: the moment at which a message arrives."""


def messages(deployment: Deployment, verifier: Verifier, rates: Rates, clock: Clock) -> Blueprint:
    """The webhook."""
    blueprint = Blueprint("messages", __name__)

    @blueprint.post("/messages", provide_automatic_options=False)
    def receive() -> Response:
        started = time.perf_counter()
        incoming = _verified(verifier, rates, clock().astimezone(UTC))
        g.outcome = outcome = handle(incoming, deployment)
        ms = round((time.perf_counter() - started) * 1000, 1)
        log(
            logging.WARNING if outcome.kept == "other" else logging.INFO,
            "message",
            message_id=incoming.id,
            status=outcome.status,
            unit=outcome.unit,
            kept=outcome.kept,
            ms=ms,
        )
        return _response(outcome)

    return blueprint


def _verified(verifier: Verifier, rates: Rates, arrived: datetime) -> Incoming:
    """The message at hand, from someone who holds a secret."""
    rates.count()
    body = request.get_data(cache=False)
    message_id = verifier.message_id(request.headers, body)
    if message_id is None:
        log(logging.WARNING, "unsigned", http=HTTPStatus.UNAUTHORIZED.value)
        raise Problem(HTTPStatus.UNAUTHORIZED, "The message is not signed, wrongly signed, or stale.")
    g.message_id = message_id
    if request.mimetype != "application/json":
        raise Problem(HTTPStatus.UNSUPPORTED_MEDIA_TYPE, "The body must be application/json.")
    incoming = incoming_of(message_id, body, arrived)
    rates.count_sender(incoming.sender)
    return incoming


def _response(outcome: Outcome) -> Response:
    """The answer object, or the reply alone for whoever accepts only plain text."""
    if outcome.kept == "other":
        raise Problem(HTTPStatus.CONFLICT, "This webhook-id was used for another message.")
    accepted = request.accept_mimetypes.best_match(("application/json", "text/plain"), "application/json")
    if accepted == "text/plain":
        return Response(json.loads(outcome.answer)["reply"], mimetype="text/plain")
    return Response(outcome.answer, mimetype="application/json")
