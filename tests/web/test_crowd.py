"""More than can be answered: told at once, with when to come again, while the process says that it lives."""

from __future__ import annotations

import io
import json
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager

from flask import Flask

from bot.web.crowd import AT_WORK, MOST_WAITING
from tests.web.client import Gateway, body, problem


def crowd(app: Flask, size: int) -> None:
    """Let that many requests wait for a worker."""
    app.extensions["crowd"].waiting = range(size)


@contextmanager
def busy(app: Flask) -> Iterator[None]:
    """As many others as are answered in a crowd are at work."""
    with ExitStack() as others:
        for _ in range(AT_WORK):
            others.enter_context(app.test_request_context("/ready"))
            app.preprocess_request()
        yield


def test_a_message_that_too_many_wait_behind_is_503_with_retry_after_and_is_not_recorded(
    measured: Flask,
) -> None:
    crowd(measured, MOST_WAITING + 1)
    with busy(measured):
        told = Gateway(measured).posts(body("bed 12 mark 840", "amy"))
    assert (problem(told)["status"], int(told.headers["Retry-After"]) >= 1) == (503, True)
    crowd(measured, MOST_WAITING)
    answer = Gateway(measured).posts(body("bed 12 mark 840", "amy")).get_json()
    assert answer["status"] == "recorded"
    assert "First line" in answer["reply"]


def test_in_a_crowd_that_does_not_go_a_few_are_answered_all_the_same(measured: Flask) -> None:
    crowd(measured, MOST_WAITING + 1)
    statuses = [
        Gateway(measured).posts(body("bed 12 mark 840", "amy"), f"m{number}").status_code
        for number in range(5)
    ]
    assert statuses == [200] * 5


def test_a_crowded_process_lives_and_tells_its_counts_but_is_not_ready(measured: Flask) -> None:
    crowd(measured, MOST_WAITING + 1)
    client = measured.test_client()
    with busy(measured):
        assert Gateway(measured).posts(body("bed 12 mark 840", "amy")).status_code == 503
        statuses = {path: client.get(path).status_code for path in ("/health", "/metrics", "/ready")}
    assert statuses == {"/health": 200, "/metrics": 200, "/ready": 503}
    assert 'penline_answers_total{http="503"} 1.0' in client.get("/metrics").text


def test_a_crowd_is_logged_when_it_comes_and_when_it_goes(measured: Flask, logs: io.StringIO) -> None:
    for size in (0, MOST_WAITING + 1, MOST_WAITING + 1, 0, 0):
        crowd(measured, size)
        measured.test_client().get("/health")
    events = [json.loads(line)["event"] for line in logs.getvalue().splitlines()]
    assert events == ["crowded", "no_longer_crowded"]
