"""Too many messages are told so, with the time to wait, and no one else pays for it.

On the real clock, or one that is set: the library looks at it once from a thread of its own.
"""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor

import pytest
from freezegun import freeze_time
from limits.storage import MemoryStorage

from bot.settings import Settings
from bot.web import web_app
from bot.web.problems import Problem
from bot.web.rates import Rates
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
    with freeze_time("2026-03-04T19:00:00.2Z") as clock:
        answers = [gateway.posts(webhook_signature="x") for _ in range(9)]
        assert [each.status_code for each in answers] == [401] * 3 + [429] * 6
        for each in answers[3:]:
            assert problem(each)["status"] == 429
            assert each.headers["Retry-After"] == "1"
        clock.tick(int(answers[-1].headers["Retry-After"]))
        assert gateway.posts(webhook_signature="x").status_code == 401


def waits_s(rates: Rates, sender: str) -> int:
    """0 when one more of the sender is taken, else how long to wait."""
    try:
        rates.count_sender(sender)
    except Problem as refused:
        return refused.retry_after_s or 0
    return 0


def held(rates: Rates) -> int:
    """How many senders are counted."""
    storage = rates._limiter.storage
    assert isinstance(storage, MemoryStorage)
    return len(storage.storage)


def test_a_window_begins_with_its_first_and_takes_so_many() -> None:
    with freeze_time("2026-03-04T19:00:00Z") as clock:
        rates = Rates(2, 1000)
        assert [waits_s(rates, who) for who in ("amy", "ben", "amy")] == [0, 0, 0]
        clock.tick(20)
        assert (waits_s(rates, "amy"), waits_s(rates, "ben")) == (40, 0)
        clock.tick(39.5)
        assert waits_s(rates, "amy") == 1
        clock.tick(0.5)
        assert [waits_s(rates, "amy") for _ in range(3)] == [0, 0, 60]


def test_whose_window_is_over_is_forgotten() -> None:
    with freeze_time("2026-03-04T19:00:00Z") as clock:
        rates = Rates(1, 1000)
        for number in range(20_000):
            clock.tick(0.1)  # 600 of them in a minute
            assert waits_s(rates, f"rn-{number}") == 0
        assert waits_s(rates, "rn-19999") > 0
        assert held(rates) <= 2 * 600


def test_of_many_at_once_no_more_are_taken_than_may_be() -> None:
    rates = Rates(500, 1000)
    with ThreadPoolExecutor(16) as pool:
        taken = list(pool.map(lambda _: waits_s(rates, "amy") == 0, range(2000)))
    assert taken.count(True) == 500
