"""Too many messages are told so, with the time to wait, and no one else pays for it.

On the real clock: the library's sweeper looks at it from a thread of its own.
"""

from __future__ import annotations

import pytest

from bot.settings import Settings
from bot.web import web_app
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
