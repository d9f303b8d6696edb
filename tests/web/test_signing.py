"""Standard Webhooks: what is signed by us and fresh is taken, everything else is 401 and never 500."""

from __future__ import annotations

import hmac
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import freezegun
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from standardwebhooks.webhooks import Webhook
from werkzeug.datastructures import Headers

from bot.settings import SAMPLE_SECRET
from bot.web.signing import Verifier
from tests.web.client import NOW, OTHER_SECRET, SECRET, Gateway, body, problem, signed

VECTOR_AT = datetime.fromtimestamp(1614265330, UTC)


def test_the_vector_of_the_specification_verifies() -> None:
    # Standard Webhooks, its Python tests
    headers = Headers(
        {
            "webhook-id": "msg_p5jXN8AQM9LWM0D4loKWxJek",
            "webhook-timestamp": "1614265330",
            "webhook-signature": "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=",
        }
    )
    verifier = Verifier((SAMPLE_SECRET,))
    with freezegun.freeze_time(VECTOR_AT):
        assert verifier.message_id(headers, b'{"test": 2432232314}') == "msg_p5jXN8AQM9LWM0D4loKWxJek"
        assert verifier.message_id(headers, b'{"test": 2432232315}') is None


@pytest.mark.parametrize("seconds", [-299, 0, 299])
def test_security_03_a_timestamp_within_five_minutes_is_fresh(gateway: Gateway, seconds: int) -> None:
    at = NOW + timedelta(seconds=seconds)
    assert gateway.sends(body(), signed(body(), at=at)).status_code == 200


@pytest.mark.parametrize("seconds", [-301, 301, -86_400, 86_400])
def test_security_03_any_other_timestamp_is_stale(gateway: Gateway, seconds: int) -> None:
    at = NOW + timedelta(seconds=seconds)
    assert problem(gateway.sends(body(), signed(body(), at=at)))["status"] == 401


@pytest.mark.parametrize("secret", [SECRET, OTHER_SECRET])
def test_security_05_either_of_two_live_secrets_signs(gateway: Gateway, secret: str) -> None:
    assert gateway.sends(body(), signed(body(), secret=secret)).status_code == 200


def test_security_05_a_secret_that_is_live_no_more_signs_nothing(gateway: Gateway) -> None:
    assert gateway.sends(body(), signed(body(), secret="whsec_" + "SUpLTA" * 8)).status_code == 401


def test_one_right_signature_of_several_is_enough(gateway: Gateway) -> None:
    right = signed(body())["webhook-signature"]
    wrong = signed(b"another body")["webhook-signature"]
    asymmetric = "v1a," + "A" * 86 + "=="
    assert gateway.posts(webhook_signature=f"{wrong} {asymmetric} {right}").status_code == 200
    assert gateway.posts(webhook_signature=f"{wrong} {asymmetric}").status_code == 401


def test_security_01_the_signature_is_of_the_raw_bytes(gateway: Gateway) -> None:
    what = body()
    respaced = what.replace(b": ", b":")
    headers = signed(what)
    response = gateway.sends(respaced, headers)
    assert response.status_code == 401


def test_security_01_signatures_are_compared_in_constant_time(
    gateway: Gateway, monkeypatch: pytest.MonkeyPatch
) -> None:
    compared: list[int] = []
    compare = hmac.compare_digest

    def counting(one: bytes, other: bytes) -> bool:
        compared.append(len(one))
        return compare(one, other)

    monkeypatch.setattr("standardwebhooks.webhooks.hmac.compare_digest", counting)
    assert gateway.posts().status_code == 200
    assert compared == [32]


RIGHT = signed(body())["webhook-signature"]


@pytest.mark.parametrize(
    ("header", "value"),
    [
        ("webhook-id", ""),
        ("webhook-id", "m 1"),
        ("webhook-id", "x" * 65),
        ("webhook-id", "m1/../m2"),
        ("webhook-id", "m\u00e91"),
        ("webhook-timestamp", ""),
        ("webhook-timestamp", "now"),
        ("webhook-timestamp", f"{NOW.timestamp():.0f}.9"),
        ("webhook-timestamp", f" {NOW.timestamp():.0f}.0 "),
        ("webhook-timestamp", f"+{NOW.timestamp():.0f}"),
        ("webhook-timestamp", "1e9"),
        ("webhook-timestamp", "nan"),
        ("webhook-timestamp", "9" * 10),
        ("webhook-timestamp", "9" * 400),
        ("webhook-timestamp", "\u0661\u0667\u0667\u0662\u0666\u0664\u0663\u0666\u0660\u0660"),
        ("webhook-signature", ""),
        ("webhook-signature", "v1"),
        ("webhook-signature", "v1,"),
        ("webhook-signature", "v1,v1,v1"),
        ("webhook-signature", "v1,A"),
        ("webhook-signature", "v1," + "A" * 17),
        ("webhook-signature", "v1," + "\u00e9" * 44),
        ("webhook-signature", RIGHT.removeprefix("v1,")),
        ("webhook-signature", RIGHT.replace("v1,", "v2,")),
        ("webhook-signature", RIGHT.replace(",", " ")),
        ("webhook-signature", f"{RIGHT} "),
        ("webhook-signature", " ".join([RIGHT] * 6)),
        ("webhook-signature", " ".join(["v1,AAAAAAAAAAAAAAAAAAAAAA=="] * 10_000)),
    ],
)
def test_security_02_a_malformed_header_is_401(gateway: Gateway, header: str, value: str) -> None:
    headers = signed(body()) | {header: value}
    encoded = {name: text.encode().decode("latin-1") for name, text in headers.items()}
    response = gateway.sends(body(), encoded)
    assert problem(response)["status"] == 401


@pytest.mark.parametrize("header", ["webhook-id", "webhook-timestamp", "webhook-signature"])
def test_security_02_a_missing_or_doubled_header_is_401(gateway: Gateway, header: str) -> None:
    client = gateway.app.test_client()
    headers = signed(body())
    missing = {name: value for name, value in headers.items() if name != header}
    assert client.post("/messages", data=body(), headers=missing).status_code == 401
    doubled = Headers([*headers.items(), (header, headers[header])])
    assert client.post("/messages", data=body(), headers=doubled).status_code == 401


def test_security_02_a_body_that_is_not_utf_8_is_401(gateway: Gateway) -> None:
    response = gateway.sends(b"\xff\xfe", signed(b""))
    assert response.status_code == 401


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=200)
@given(st.text(max_size=80), st.text(max_size=20), st.text(max_size=120), st.binary(max_size=60))
def test_security_02_no_header_and_no_body_breaks_the_verifier(
    message_id: str, timestamp: str, signature: str, what: bytes
) -> None:
    values = {"webhook-id": message_id, "webhook-timestamp": timestamp, "webhook-signature": signature}
    headers = Headers([(name, value.replace("\r", "").replace("\n", "")) for name, value in values.items()])
    assert Verifier((SECRET,)).message_id(headers, what) is None


def test_security_02_many_signatures_cost_nothing(gateway: Gateway, monkeypatch: pytest.MonkeyPatch) -> None:
    verify: Callable[..., object] = Webhook.verify
    calls: list[int] = []

    def counting(*args: object, **named: object) -> object:
        calls.append(1)
        return verify(*args, **named)

    monkeypatch.setattr(Webhook, "verify", counting)
    assert gateway.posts(webhook_signature=" ".join([RIGHT] * 6)).status_code == 401
    assert calls == []
