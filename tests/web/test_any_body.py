"""Whatever the body of a signed post holds: it is taken, or refused by name, and nothing breaks."""

from __future__ import annotations

import json
from itertools import count

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.intake.respond import deployment
from bot.settings import Settings
from bot.store import open_store
from bot.unit import demo_unit
from bot.web import web_app
from tests.web.client import NOW, SECRET, Gateway
from tests.web.described import faults

LIMITS = Settings(secrets=(SECRET,), sender_per_minute=1_000_000, per_second=1_000_000)
GATEWAY = Gateway(web_app(deployment((demo_unit(),), open_store()), LIMITS, lambda: NOW))
NUMBERS = count(1)
ANY = settings(max_examples=300, suppress_health_check=list(HealthCheck))

TEXTS = st.text(max_size=60) | st.sampled_from(
    ["bed 12 mark 1050", "12 840", "yes", "\ud800", "\u0000", "\n"]
)
VALUES = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | TEXTS,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(TEXTS, inner, max_size=4),
    max_leaves=12,
)
MESSAGES = st.fixed_dictionaries(
    {},
    optional={
        "sender": st.sampled_from(["amy", "ben", "zoe"]) | VALUES,
        "text": TEXTS | VALUES,
        "sent_at": st.datetimes().map(lambda at: f"{at.isoformat()}Z") | VALUES,
        "channel": st.sampled_from(["text", "voice"]) | VALUES,
        "alternatives": st.lists(st.fixed_dictionaries({"text": TEXTS, "confidence": VALUES})) | VALUES,
        "bed": VALUES,
    },
)


def check(sent: bytes) -> None:
    """Post it signed: an answer, or a problem, each as it is described."""
    response = GATEWAY.posts(sent, f"any-{next(NUMBERS)}")
    assert response.status_code in (200, 400, 413, 422)
    name = "Answer" if response.status_code == 200 else "Problem"
    assert faults(name, json.loads(response.data)) == []


@ANY
@given(MESSAGES)
def test_any_members_of_a_message_are_taken_or_refused(message: dict[str, object]) -> None:
    check(json.dumps(message).encode())


@ANY
@given(VALUES)
def test_any_json_is_taken_or_refused(value: object) -> None:
    check(json.dumps(value).encode())


@ANY
@given(st.text(max_size=200), st.integers(0, 200))
def test_any_text_cut_anywhere_is_refused(tail: str, cut: int) -> None:
    whole = json.dumps({"sender": "amy", "text": "12 840"})[:cut] + tail
    check(whole.encode("utf-8", "ignore"))


@ANY
@given(st.sampled_from(["[", '{"a":', '[{"b":', '"']), st.integers(1, 4000))
def test_security_06_any_depth_is_refused_before_it_is_parsed(opening: str, times: int) -> None:
    check((opening * times).encode())
