"""`GET /openapi.json`: the description, made once."""

from __future__ import annotations

import json

from flask import Blueprint, Response

from bot.web.openapi.document import document
from bot.web.rates import Rates


def description(rates: Rates, *, metrics: bool) -> Blueprint:
    """The route of the description of this deployment; `metrics`: it serves those too."""
    blueprint = Blueprint("description", __name__)
    told = json.dumps(document(metrics=metrics), ensure_ascii=False)

    @blueprint.get("/openapi.json")
    def described() -> Response:
        rates.count()
        return Response(told, mimetype="application/json")

    return blueprint
