"""The pages of the demo ward, on the real reader and dialogue; and a real browser on a real server."""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from flask import Flask
from playwright.sync_api import Browser, Page

from bot.intake import Deployment
from bot.intake.respond import deployment
from bot.links import Links
from bot.settings import Settings
from bot.store import open_store
from bot.unit import demo_unit
from bot.web import web_app
from tests.web.client import NOW, OTHER_SECRET, SECRET, real_now
from tests.web.pages.chromium import CHROMIUM, chromium
from tests.web.pages.demonstration import demonstrated
from tests.web.pages.visit import ADDRESS, Visit


@pytest.fixture
def ward() -> Deployment:
    """The demo ward at a public address."""
    return deployment((demo_unit(),), open_store(), Links(ADDRESS, (SECRET,)))


@pytest.fixture
def app(ward: Deployment) -> Flask:
    """Its app."""
    settings = Settings(secrets=(SECRET, OTHER_SECRET), address=ADDRESS)
    return web_app(ward, settings, lambda: NOW)


@pytest.fixture
def visit(app: Flask, ward: Deployment) -> Visit:
    """Someone with a browser, who is not signed in."""
    return Visit(app, ward)


@pytest.fixture(scope="session")
def demo() -> Iterator[str]:
    """The address of a demonstration with some hours behind it."""
    with demonstrated(real_now) as address:
        yield address


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Headless Chromium with a profile of its own. Without one its tests are skipped, but never in CI."""
    if CHROMIUM is None:
        if os.environ.get("CI") == "true":
            pytest.fail("CI needs Chromium (on Debian: apt-get install chromium)")
        pytest.skip("needs Chromium (on Debian: apt-get install chromium)")
    with chromium() as found:
        yield found


@pytest.fixture
def page(browser: Browser, demo: str, request: pytest.FixtureRequest) -> Iterator[Page]:
    """A phone's page, 320 pixels wide, that fails its test on any script error or refused resource."""
    context = browser.new_context(viewport={"width": 320, "height": 640}, base_url=demo)
    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda error: faults.append(str(error)))
    page.on("console", lambda line: faults.append(line.text) if line.type == "error" else None)
    yield page
    context.close()
    assert faults == [] or request.node.get_closest_marker("goes_wrong") is not None
