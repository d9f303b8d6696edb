"""The Flask app of a deployment: its routes, its limits, and the headers that every response carries."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from flask import Flask, Response

from bot.intake import Deployment
from bot.settings import Settings
from bot.web import crowd, problems
from bot.web.health import health
from bot.web.messages import Clock, messages
from bot.web.openapi import description
from bot.web.pages import pages
from bot.web.pages.office import Office
from bot.web.rates import Rates
from bot.web.signing import Verifier

LARGEST_BODY = 16 * 1024

_HEADERS = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
}


def web_app(deployment: Deployment, settings: Settings, clock: Clock, *, demo: bool = False) -> Flask:
    """The app that answers for this deployment; the clock is asked once a message.

    The pages are there where it has an address; in a `demo`, anyone who opens them chooses who to be.
    """
    app = _App("bot.web", static_folder=None)
    app.config["MAX_CONTENT_LENGTH"] = LARGEST_BODY
    rates = Rates(settings.sender_per_minute, settings.per_second)
    app.register_blueprint(messages(deployment, Verifier(settings.secrets), rates, clock))
    app.register_blueprint(health(deployment.store, rates))
    app.register_blueprint(description(rates, metrics=settings.metrics))
    if settings.metrics:
        from bot.web.metrics import install as install_metrics

        install_metrics(app, rates)
    crowd.install(app)
    if deployment.links is not None:
        _cookie(app, settings)
        app.register_blueprint(
            pages(Office(deployment=deployment, links=deployment.links, rates=rates, clock=clock, demo=demo))
        )
    problems.install(app)
    app.after_request(_headers)
    return app


class _App(Flask):
    """A Flask app none of whose functions is a coroutine: none is looked at for that at each request."""

    def ensure_sync(self, func: Callable[..., Any]) -> Callable[..., Any]:
        """The function as it is."""
        return func


def _cookie(app: Flask, settings: Settings) -> None:
    """The pages' session cookie: signed, for this site only, and out of reach of scripts."""
    app.secret_key = settings.secrets[0]
    app.config.update(
        SECRET_KEY_FALLBACKS=list(settings.secrets[1:]),
        SESSION_COOKIE_NAME="penline",
        SESSION_COOKIE_SAMESITE="Strict",
        SESSION_COOKIE_HTTPONLY=True,
        SESSION_COOKIE_SECURE=(settings.address or "").startswith("https:"),
    )


def _headers(response: Response) -> Response:
    """The response with those of the headers that it does not bring itself."""
    own = {name for name, _ in response.headers}
    response.headers.extend({name: value for name, value in _HEADERS.items() if name not in own})
    return response
