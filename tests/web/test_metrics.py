"""What Prometheus is told: counts and times, and nothing of any patient; nothing at all unless asked for."""

from __future__ import annotations

from collections.abc import Iterator

from flask import Flask
from prometheus_client.parser import text_string_to_metric_families

from bot.intake.respond import deployment
from bot.links import Links
from bot.settings import Settings
from bot.store import open_store
from bot.unit import demo_unit
from bot.web import web_app
from tests.web.client import NOW, SECRET, Gateway, body
from tests.web.pages.visit import ADDRESS, Visit


def samples(app: Flask) -> Iterator[tuple[str, dict[str, str], float]]:
    """What the app tells, as Prometheus reads it: our own samples."""
    response = app.test_client().get("/metrics")
    assert (response.status_code, response.mimetype) == (200, "text/plain")
    for family in text_string_to_metric_families(response.text):
        for sample in family.samples:
            if sample.name.startswith("penline_"):
                yield sample.name, dict(sample.labels), sample.value


def count(app: Flask, name: str, **labels: str) -> float:
    """The sum of the samples of that name that carry these labels."""
    return sum(
        value for found, held, value in samples(app) if found == name and labels.items() <= held.items()
    )


def test_nothing_is_told_unless_the_setting_asks_for_it(app: Flask) -> None:
    assert app.test_client().get("/metrics").status_code == 404


def test_messages_are_counted_by_what_became_of_them(measured: Flask) -> None:
    gateway = Gateway(measured)
    gateway.posts(body("bed 12 mark 840 at 1100"), "m1")
    gateway.posts(body("bed 12 mark 840 at 1100"), "m1")
    gateway.posts(body("bed 12 last"), "m2")
    gateway.posts(body("bed 12 last", "zoe"), "m3")
    gateway.posts(body("bed 12 last", "ben"), "m3")
    for status, kept in (("recorded", "new"), ("recorded", "before"), ("told", "new"), ("refused", "new")):
        assert count(measured, "penline_messages_total", status=status, kept=kept) == 1
    assert count(measured, "penline_messages_total", kept="other") == 1
    assert count(measured, "penline_messages_total") == 5


def test_questions_are_counted_by_slot_and_cautions_by_code_once(measured: Flask) -> None:
    gateway = Gateway(measured)
    gateway.posts(body("bed 12 mark 200 at 1000"), "m1")
    for _ in range(2):
        gateway.posts(body("bed 12 mark 1340 at 1100"), "m2")
    assert count(measured, "penline_questions_total", slot="level_ml") == 1
    assert count(measured, "penline_questions_total") == 1
    assert count(measured, "penline_cautions_total", severity="high") >= 1
    assert count(measured, "penline_cautions_total", code="amount_at_once", severity="high") == 1


def test_answers_are_counted_by_http_status_and_timed(measured: Flask) -> None:
    gateway = Gateway(measured)
    gateway.posts()
    gateway.posts(message_id="m2", webhook_signature="x")
    gateway.posts(b"{", "m3")
    for http in ("200", "401", "400"):
        assert count(measured, "penline_answers_total", http=http) == 1
    assert count(measured, "penline_answer_seconds_count") == 3
    assert 0 < count(measured, "penline_answer_seconds_sum") < 30
    measured.test_client().get("/health")
    assert count(measured, "penline_answer_seconds_count") == 3


def test_a_message_of_a_page_is_counted_too() -> None:
    ward = deployment((demo_unit(),), open_store(), Links(ADDRESS, (SECRET,)))
    app = web_app(ward, Settings(secrets=(SECRET,), metrics=True, address=ADDRESS), lambda: NOW)
    visit = Visit(app, ward)
    visit.enters("amy")
    assert visit.says("help").status_code == 200
    assert count(app, "penline_messages_total", status="told", kept="new") == 1
    assert count(app, "penline_answers_total", http="200") == 1


def test_security_14_no_bed_text_level_or_person_is_in_what_is_told(measured: Flask) -> None:
    gateway = Gateway(measured)
    said = ("bed 12 mark 1739 at 1000", "bed 12 kestrel", "bed 12 mark 200 at 1100", "kestrel", "123456789")
    for number, text in enumerate(said):
        gateway.posts(body(text), f"kestrel-{number}")
        gateway.posts(body(text, "kestrel"), f"kestrel-{number}-2")
    told = measured.test_client().get("/metrics").text
    assert count(measured, "penline_messages_total") == 2 * len(said)
    assert not any(word in told for word in ("kestrel", "1739", "amy", "Amy", "Harbour", "bed="))
    labels = {name for found, held, _ in samples(measured) for name in held}
    assert labels <= {"status", "kept", "slot", "code", "severity", "http", "le"}
