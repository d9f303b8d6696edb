"""Requests made up from the description: no 500, nothing wrong is taken, every answer is as described.

The same ones every time. Signed by a gateway in front, so that they get past the door; and once as they are.
"""

from __future__ import annotations

from typing import Any

import pytest
import schemathesis
from flask import Flask
from hypothesis import HealthCheck, settings
from schemathesis import Case
from schemathesis.config import SchemathesisConfig
from schemathesis.specs.openapi.checks import positive_data_acceptance
from schemathesis.specs.openapi.schemas import OpenApiSchema

from bot.intake.respond import deployment
from bot.settings import Settings
from bot.store import open_store
from bot.unit import demo_unit
from bot.web import web_app
from tests.web.client import SECRET, real_now
from tests.web.signer import Signer

pytestmark = [pytest.mark.real_time, pytest.mark.made_up]

MADE_UP = settings(derandomize=True, max_examples=200, suppress_health_check=list(HealthCheck))
WHO = ("amy", "ben", "carla", "dan")
WORDS = (
    "bed 12 mark 1050", "12 840", "scratch that", "yes", "bed 3 total 24h", "new chest tube bed 7, empty",
    "misread", "changed the canister bed 12, old one 1980", "handoff", "tube out bed 12", "help",
    "bed 12 mark 90", "trend 12",
)  # fmt: skip
REFUSALS = {"negative_data_rejection": {"expected-statuses": [400, 401, 405, 413, 415, 422]}}


def app() -> Flask:
    """The whole program on an empty ledger, with room for everything that is made up."""
    limits = Settings(secrets=(SECRET,), metrics=True, sender_per_minute=1_000_000, per_second=1_000_000)
    return web_app(deployment((demo_unit(),), open_store()), limits, real_now)


def as_it_is(app: Flask) -> OpenApiSchema:
    """The app as a stranger sees it."""
    config = SchemathesisConfig.from_dict({"checks": REFUSALS})
    return schemathesis.openapi.from_wsgi("/openapi.json", app.wsgi_app, config=config)


def behind_a_gateway(app: Flask, *modes: str, **said: object) -> OpenApiSchema:
    """The app as those see it whose posts a gateway signs; `said`: what these fields of a message hold."""
    told = app.test_client().get("/openapi.json").get_json()
    del told["paths"]["/messages"]["post"]["security"]
    told["components"]["schemas"]["Message"]["properties"] |= said
    given = {"checks": REFUSALS, "generation": {"mode": modes[0] if modes else "all"}}
    schema = schemathesis.openapi.from_dict(told, config=SchemathesisConfig.from_dict(given))
    schema.app = Signer(app.wsgi_app, SECRET)
    return schema


WARD = app()
SIGNED = behind_a_gateway(app())
NURSES = behind_a_gateway(
    WARD, "positive", sender={"enum": WHO}, text={"enum": WORDS}, sent_at={"type": "null"}
)
AS_IT_IS = as_it_is(app())


@SIGNED.parametrize()
@MADE_UP
def test_a_signed_request_is_answered_as_described(case: Case[Any]) -> None:
    case.call_and_validate(excluded_checks=[positive_data_acceptance])


@AS_IT_IS.parametrize()
@MADE_UP
def test_a_request_without_a_signature_is_answered_as_described(case: Case[Any]) -> None:
    response = case.call_and_validate(excluded_checks=[positive_data_acceptance])
    assert case.operation.path != "/messages" or response.status_code in (401, 405, 413)


@NURSES.include(path="/messages").parametrize()
@MADE_UP
def test_what_nurses_send_is_taken_and_answered_as_described(case: Case[Any]) -> None:
    case.call_and_validate()


def test_what_nurses_sent_has_ended_in_every_way() -> None:
    counted = WARD.test_client().get("/metrics").text
    for status in ("recorded", "question", "told", "refused"):
        assert f'penline_messages_total{{kept="new",status="{status}"}}' in counted
