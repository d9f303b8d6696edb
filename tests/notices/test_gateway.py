"""How a letter is signed: as in the specification's example, and with both secrets while one changes."""

from __future__ import annotations

from datetime import UTC, datetime

from standardwebhooks.webhooks import Webhook

from bot.notices.gateway import signed_headers

SAMPLE = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw"
OTHER = "whsec_" + "QUJDRA" * 8
WHEN = datetime.fromtimestamp(1614265330, UTC)
BODY = b'{"test": 2432232314}'
ID = "msg_p5jXN8AQM9LWM0D4loKWxJek"


def test_the_signature_is_that_of_the_specification_s_test_vector() -> None:
    """Standard Webhooks 1.0.0, its Python library's tests."""
    headers = signed_headers((Webhook(SAMPLE),), ID, BODY, WHEN)
    assert headers["webhook-id"] == ID
    assert headers["webhook-timestamp"] == "1614265330"
    assert headers["webhook-signature"] == "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE="


def test_while_a_secret_is_changed_either_side_of_the_change_takes_the_letter() -> None:
    now = datetime.now(UTC)
    headers = signed_headers((Webhook(OTHER), Webhook(SAMPLE)), ID, BODY, now)
    for secret in (OTHER, SAMPLE):
        Webhook(secret).verify(BODY, headers)
    assert headers["webhook-signature"].count("v1,") == 2
