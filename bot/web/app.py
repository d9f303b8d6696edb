"""The Flask app of a deployment: its routes, its limits, and the headers that every response carries."""

from __future__ import annotations

from flask import Flask, Response

from bot.intake import Deployment
from bot.settings import Settings
from bot.web import problems
from bot.web.health import health
from bot.web.messages import Clock, messages
from bot.web.rates import Rates
from bot.web.signing import Verifier

LARGEST_BODY = 16 * 1024

_HEADERS = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
}


def web_app(deployment: Deployment, settings: Settings, clock: Clock) -> Flask:
    """The app that answers for this deployment; the clock is asked once a message."""
    app = Flask("bot.web", static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_BODY
    rates = Rates(settings.sender_per_minute, settings.per_second)
    app.register_blueprint(messages(deployment, Verifier(settings.secrets), rates, clock))
    app.register_blueprint(health(deployment.store, rates))
    problems.install(app)
    app.after_request(_headers)
    return app


def _headers(response: Response) -> Response:
    for name, value in _HEADERS.items():
        response.headers.setdefault(name, value)
    return response
