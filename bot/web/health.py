"""`GET /health`: the process lives. `GET /ready`: it can take messages now (database, schema, triggers)."""

from __future__ import annotations

from http import HTTPStatus

from flask import Blueprint, Response, jsonify

from bot.store import Store
from bot.store.schema import is_ready
from bot.web.problems import RETRY_AFTER_S, Problem
from bot.web.rates import Rates


def health(store: Store, rates: Rates) -> Blueprint:
    """The two questions that a supervisor asks."""
    blueprint = Blueprint("health", __name__)

    @blueprint.get("/health")
    def alive() -> Response:
        return jsonify(status="ok")

    @blueprint.get("/ready")
    def ready() -> Response:
        rates.count()
        with store.connection() as connection:
            if not is_ready(connection):
                raise Problem(
                    HTTPStatus.SERVICE_UNAVAILABLE,
                    "The database is not at the schema of this version.",
                    retry_after_s=RETRY_AFTER_S,
                )
        return jsonify(status="ready")

    return blueprint
