"""An app on the double of the dialogue, at a fixed moment."""

from __future__ import annotations

import io
import logging
from collections.abc import Iterator

import freezegun
import pytest
from flask import Flask

from bot.intake import Deployment, respond
from bot.settings import Settings
from bot.store import open_store
from bot.unit import demo_unit
from bot.web import web_app
from bot.web.logs import log_to
from tests.intake.double import deployment
from tests.web.client import NOW, OTHER_SECRET, SECRET, Gateway


@pytest.fixture(autouse=True)
def _moment(request: pytest.FixtureRequest) -> Iterator[None]:
    """The signature library and the limits look at the clock themselves."""
    if request.node.get_closest_marker("real_time") is not None:
        yield
        return
    with freezegun.freeze_time(NOW, tick=True):
        yield


@pytest.fixture
def ward() -> Deployment:
    """The demo ward, answered by the double."""
    return deployment()


@pytest.fixture
def app(ward: Deployment) -> Flask:
    """The app of that ward."""
    return web_app(ward, Settings(secrets=(SECRET, OTHER_SECRET)), lambda: NOW)


@pytest.fixture
def gateway(app: Flask) -> Gateway:
    """A gateway that knows the secret."""
    return Gateway(app)


@pytest.fixture
def measured() -> Flask:
    """The real program, with its metrics."""
    return web_app(
        respond.deployment((demo_unit(),), open_store()),
        Settings(secrets=(SECRET,), metrics=True),
        lambda: NOW,
    )


@pytest.fixture
def logs() -> Iterator[io.StringIO]:
    """Everything that this process logs."""
    root, stream = logging.getLogger(), io.StringIO()
    handlers, level = root.handlers[:], root.level
    log_to(stream)
    yield stream
    root.handlers[:] = handlers
    root.setLevel(level)
