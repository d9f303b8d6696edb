"""The one place that knows all the parts, and puts them together."""

from __future__ import annotations

from datetime import UTC, datetime
from time import monotonic

from flask import Flask

from bot.intake import Deployment
from bot.intake.respond import deployment
from bot.links import Links
from bot.reading import read
from bot.settings import Settings, check_ready_to_serve
from bot.store import open_store
from bot.store.patience import Patience
from bot.unit import Unit, load_units
from bot.web import web_app
from bot.web.messages import Clock


def now() -> datetime:
    """The moment, in UTC: the only clock that a message meets."""
    return datetime.now(UTC)


def create_app(settings: Settings, clock: Clock = now) -> Flask:
    """The app of this deployment. ConfigError: it cannot start so; StoreAwayError: its database is away."""
    check_ready_to_serve(settings)
    units = load_units(settings.units)
    links = links_of(settings)
    store = open_store(settings.database_url, Patience(clock=monotonic))
    app = web_app(deployment(units, store, links), settings, clock)
    warm_up(units[0])
    return app


def create_demo(settings: Settings, unit: Unit, clock: Clock = now) -> tuple[Flask, Deployment]:
    """An app on an empty ledger in memory, whose pages let whoever opens them choose who to be."""
    ward = deployment((unit,), open_store(), links_of(settings))
    app = web_app(ward, settings, clock, demo=True)
    app.config["TRUSTED_HOSTS"] = ["127.0.0.1", "localhost", "[::1]"]
    return app, ward


def links_of(settings: Settings) -> Links | None:
    """The links of a deployment that has an address."""
    if settings.address is None:
        return None
    return Links(settings.address, settings.secrets, settings.link_min)


def warm_up(unit: Unit) -> None:
    """Read one message, so that it is not the first nurse who waits while the reader is built."""
    read("help", unit, now())
