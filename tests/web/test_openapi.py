"""The description is sound OpenAPI, and every answer is what it says: those of all stories too."""

from __future__ import annotations

import dataclasses
import json
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from openapi_spec_validator import OpenAPIV31SpecValidator
from sqlalchemy import text

from bot.cli.embedded import Ward
from bot.cli.player import sent_of, unit_of
from bot.cli.transcript import read
from bot.dialogue import answer as answers
from bot.intake import Deployment
from bot.notices.letters import body_of
from bot.notices.plan import Letter
from bot.settings import Settings
from bot.store import Notice
from bot.store.notices import Filed
from bot.web import web_app
from bot.web.openapi.document import document
from bot.web.openapi.schemas import SCHEMAS
from tests.web.client import NOW, SECRET, Gateway, body
from tests.web.described import faults, served_document

STORIES = sorted((Path(__file__).parents[2] / "transcripts_demo").glob("*.txt"))


@pytest.mark.parametrize("metrics", [False, True])
def test_what_is_served_is_a_sound_openapi_document(ward: Deployment, metrics: bool) -> None:
    served = served_document(
        web_app(ward, Settings(secrets=(SECRET,), address="https://ward", metrics=metrics), lambda: NOW)
    )
    assert list(OpenAPIV31SpecValidator(served).iter_errors()) == []
    assert served == document(metrics=metrics)


def test_a_description_that_is_not_sound_would_be_seen() -> None:
    broken = json.loads(json.dumps(document(metrics=False)))
    del broken["paths"]["/health"]["get"]["responses"]["200"]["description"]
    assert list(OpenAPIV31SpecValidator(broken).iter_errors()) != []


@pytest.mark.parametrize("metrics", [False, True])
def test_every_address_for_machines_is_described_and_no_other(ward: Deployment, metrics: bool) -> None:
    app = web_app(ward, Settings(secrets=(SECRET,), metrics=metrics), lambda: NOW)
    served = {
        (rule.rule, method.lower())
        for rule in app.url_map.iter_rules()
        for method in (rule.methods or set()) - {"HEAD", "OPTIONS"}
    }
    paths = document(metrics=metrics)["paths"]
    told = {(path, method) for path, methods in paths.items() for method in methods}
    assert told == served


@pytest.mark.parametrize("path", STORIES, ids=lambda path: path.stem)
def test_every_answer_of_a_story_is_as_described(path: Path) -> None:
    story = read(path.read_text("utf-8"))
    ward = Ward(unit_of(story, path.parent))
    try:
        told = [ward.answers(sent_of(turn, ward.unit.zone)) for turn in story.turns]
    finally:
        ward.close()
    assert [fault for answer in told for fault in faults("Answer", answer)] == []


@pytest.mark.parametrize(
    "wrong",
    [
        {"bed": "12"},
        {"status": "done"},
        {"segments": 0},
        {"chart": [{"bed": "12", "volume_ml": -3}]},
        {"cautions": [{"code": "bleeding"}]},
        {"questions": None},
    ],
    ids=str,
)
def test_an_answer_that_is_not_as_described_would_be_seen(gateway: Gateway, wrong: dict[str, Any]) -> None:
    answer = json.loads(gateway.posts().data)
    assert faults("Answer", answer) == []
    assert faults("Answer", {**answer, **wrong}) != []


@pytest.mark.parametrize(
    ("name", "cls"),
    [
        ("Answer", answers.Answer),
        ("Result", answers.Result),
        ("ChartRow", answers.ChartRow),
        ("Stretch", answers.Stretch),
        ("Caution", answers.Told),
        ("Question", answers.Asked),
        ("Choice", answers.Option),
    ],
)
def test_every_member_is_described(name: str, cls: type) -> None:
    wire = {"begin": "from", "end": "to"}
    members = [wire.get(field.name, field.name) for field in dataclasses.fields(cls)]
    assert list(SCHEMAS[name]["properties"]) == members
    assert SCHEMAS[name]["required"] == members


@pytest.mark.parametrize(
    "sent",
    [
        body("", bed="12"),
        b"{",
        b"[]",
        body(alternatives=[{"text": "x", "confidence": 9}]),
        b" " * 17_000,
    ],
    ids=["fields", "cut", "list", "alternative", "large"],
)
def test_a_problem_is_as_described(gateway: Gateway, sent: bytes) -> None:
    response = gateway.posts(sent)
    assert faults("Problem", json.loads(response.data)) == []
    assert str(response.status_code) in document(metrics=False)["paths"]["/messages"]["post"]["responses"]


def test_a_body_that_is_taken_is_as_described_and_one_that_is_not_is_refused(gateway: Gateway) -> None:
    taken = {"sender": "amy", "text": "12 840\r\n\tand", "sent_at": "2026-03-04T12:00:00-05:00"}
    assert faults("Message", taken) == []
    assert gateway.posts(json.dumps(taken).encode()).status_code == 200
    for wrong in ({"text": " "}, {"text": "a\u0007"}, {"text": "x" * 1001}, {"sender": ""}, {"channel": "x"}):
        assert faults("Message", {**taken, **wrong}) != []
        assert gateway.posts(json.dumps({**taken, **wrong}).encode(), "m2").status_code == 422


def test_health_and_ready_are_as_described(app: Flask, ward: Deployment) -> None:
    client = app.test_client()
    assert faults("Alive", client.get("/health").get_json()) == []
    assert faults("Ready", client.get("/ready").get_json()) == []
    with ward.store.connection() as connection:
        connection.execute(text("DROP TRIGGER entries_no_update"))
    away = client.get("/ready")
    assert (away.status_code, int(away.headers["Retry-After"]) >= 1) == (503, True)
    assert faults("Problem", json.loads(away.data)) == []


@pytest.mark.parametrize("code", ["ladder", "overdue", "unconfirmed"])
def test_a_notice_is_as_described(code: str) -> None:
    notice = Notice(unit="ward", bed="12", drain=None, code=code, text="Look", queued_at=NOW, message="m1")
    letter = Letter(id="l1", filed=Filed(number=1, notice=notice), person="carla", rung=1)
    assert faults("Notice", json.loads(body_of(letter, "Ward, bed 12. Look", "seen 12"))) == []
