"""Too many messages are told so, with the time to wait, and no one else pays for it."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor

import pytest

from bot.settings import Settings
from bot.web import rates, web_app
from tests.intake.double import deployment
from tests.web.client import SECRET, Gateway, body, problem, real_now

pytestmark = pytest.mark.real_time


def test_security_12_a_sender_who_sends_too_much_is_told_when_to_come_again() -> None:
    settings = Settings(secrets=(SECRET,), sender_per_minute=2)
    gateway = Gateway(web_app(deployment(), settings, real_now), real_now)
    assert [gateway.posts(message_id=f"m{number}").status_code for number in range(3)] == [200, 200, 429]
    response = gateway.posts(message_id="m4")
    assert problem(response)["status"] == 429
    assert 1 <= int(response.headers["Retry-After"]) <= 60
    assert gateway.posts(body(sender="ben"), "m5").status_code == 200


def test_security_12_too_many_of_anyone_are_stopped_before_the_signature() -> None:
    settings = Settings(secrets=(SECRET,), per_second=3)
    gateway = Gateway(web_app(deployment(), settings, real_now), real_now)
    statuses = [gateway.posts(webhook_signature="x").status_code for _ in range(9)]
    assert statuses[:3] == [401, 401, 401]
    assert 429 in statuses


def test_a_window_begins_with_its_first_and_takes_so_many(monkeypatch: pytest.MonkeyPatch) -> None:
    now = 1000.0
    monkeypatch.setattr("bot.web.rates.time.monotonic", lambda: now)
    window = rates._Window(2, 60)
    assert [window.wait_s("amy"), window.wait_s("ben"), window.wait_s("amy")] == [0, 0, 0]
    now += 20
    assert (window.wait_s("amy"), window.wait_s("ben")) == (40, 0)
    now += 39.5
    assert window.wait_s("amy") == 0.5
    now += 0.5
    assert [window.wait_s("amy") for _ in range(3)] == [0, 0, 60]


def test_whose_window_is_over_is_forgotten(monkeypatch: pytest.MonkeyPatch) -> None:
    now = 1000.0
    monkeypatch.setattr("bot.web.rates.time.monotonic", lambda: now)
    window = rates._Window(1, 60)
    for number in range(20_000):
        now += 0.1  # 600 of them in a minute
        assert window.wait_s(f"rn-{number}") == 0
    assert len(window._counted) <= 2 * 600
    assert window.wait_s("rn-19999") > 0


def test_of_many_at_once_no_more_are_taken_than_may_be() -> None:
    window = rates._Window(500, 60)
    with ThreadPoolExecutor(16) as pool:
        taken = list(pool.map(lambda _: window.wait_s("amy") == 0, range(2000)))
    assert taken.count(True) == 500
