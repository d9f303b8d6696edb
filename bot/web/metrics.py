"""`GET /metrics`: counts and times for Prometheus, where the setting asks for them.

Labels are words of this program alone: no bed, no level, no text and no person ever stands in one. Loaded
only where it is used. Each process counts for itself.
"""

from __future__ import annotations

import json
import time

from flask import Blueprint, Flask, Response, g, request
from prometheus_client import CollectorRegistry, Counter, Histogram, ProcessCollector, generate_latest
from prometheus_client.exposition import CONTENT_TYPE_LATEST

from bot.intake import Outcome
from bot.web.rates import Rates

BUCKETS_S = (0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10)
MESSAGES = ("messages.receive", "pages.receive")
"""The endpoints that a message comes in by."""


class Counts:
    """What is counted of this process."""

    def __init__(self) -> None:
        self.registry = CollectorRegistry()
        ProcessCollector(registry=self.registry)
        self._messages = self._counter("messages", "Messages by what became of them.", "status", "kept")
        self._questions = self._counter("questions", "Questions by the slot they are about.", "slot")
        self._cautions = self._counter("cautions", "Cautions told, by code.", "code", "severity")
        self._answers = self._counter("answers", "Messages by the HTTP status of their answer.", "http")
        self._seconds = Histogram(
            "penline_answer_seconds",
            "From a message's arrival to its answer.",
            buckets=BUCKETS_S,
            registry=self.registry,
        )

    def note(self, outcome: Outcome) -> None:
        """Count a message; one that was answered before asks and warns of nothing new."""
        self._messages.labels(outcome.status, outcome.kept).inc()
        if outcome.kept != "new":
            return
        answer = json.loads(outcome.answer)
        for question in answer["questions"]:
            self._questions.labels(question["slot"]).inc()
        for caution in answer["cautions"]:
            self._cautions.labels(caution["code"], caution["severity"]).inc()

    def note_answer(self, http: int, seconds: float) -> None:
        """Count the answer to a message, whether or not it was taken."""
        self._answers.labels(str(http)).inc()
        self._seconds.observe(seconds)

    def _counter(self, name: str, what: str, *labels: str) -> Counter:
        return Counter(f"penline_{name}", what, labels, registry=self.registry)


def install(app: Flask, rates: Rates) -> None:
    """Count what this app answers, and tell it at `/metrics`."""
    counts = Counts()
    blueprint = Blueprint("metrics", __name__)

    @blueprint.get("/metrics")
    def told() -> Response:
        rates.count()
        return Response(generate_latest(counts.registry), content_type=CONTENT_TYPE_LATEST)

    app.register_blueprint(blueprint)
    app.before_request(_start)
    app.after_request(lambda response: _count(counts, response))


def _start() -> None:
    g.started = time.perf_counter()


def _count(counts: Counts, response: Response) -> Response:
    if request.endpoint in MESSAGES:
        counts.note_answer(response.status_code, time.perf_counter() - g.started)
        if "outcome" in g:
            counts.note(g.outcome)
    return response
