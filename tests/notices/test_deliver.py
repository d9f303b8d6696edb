"""Notices reach a real gateway in another process; neither side loses one when it is killed."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from tests.notices.bench import Bench
from tests.notices.receiver import DIES, HANGS

pytestmark = pytest.mark.real_time


@pytest.fixture
def bench(tmp_path: Path) -> Iterator[Bench]:
    """A bench."""
    bench = Bench(tmp_path)
    yield bench
    bench.close()


def taken(bench: Bench) -> list[str]:
    """The beds whose notice the gateway took, in order, each as often as it came."""
    return [row["body"]["data"]["bed"] for row in bench.got() if row["status"] == 204]


def test_a_notice_arrives_signed_with_what_to_say(bench: Bench) -> None:
    bench.receive()
    bench.queue(7)
    assert bench.run("deliver", "--once").returncode == 0
    (row,) = bench.got()
    assert row["status"] == 204  # the receiver has checked the signature
    assert row["body"]["type"] == "notice"
    assert row["body"]["data"] == {
        "to": "carla", "unit": "ward-4", "bed": "7", "code": "ladder", "severity": "high",
        "unconfirmed": False, "rung": 1,
        "text": "Ward 4, bed 7. URGENT: 620 mL. Reply: seen 7", "say": "seen 7",
    }  # fmt: skip
    assert bench.run("deliver", "--once").returncode == 0
    assert len(bench.got()) == 1


def test_what_is_told_on_the_terminal_holds_no_bed_and_no_level(bench: Bench) -> None:
    bench.receive()
    bench.queue(7)
    said = bench.run("deliver", "--once").stderr
    assert "to carla: delivered (204)" in said
    assert not any(word in said for word in ("620", "URGENT", "bed"))


def test_none_is_lost_when_gateway_and_courier_are_killed_and_started_again(bench: Bench) -> None:
    beds = range(1, 13)
    bench.queue(*beds)
    courier = bench.take_turns(
        lambda: bench.receive(204, 204, 204, DIES),  # it has the fourth and never said so
        lambda: bench.receive(204, 503, 500, 204, DIES),
        lambda: bench.receive(204, HANGS),
    )
    bench.wait(lambda: HANGS in statuses(bench))
    courier.kill()  # between the sending and the keeping of it
    courier.wait()
    bench.queue(20)
    courier = bench.deliver()
    bench.wait(lambda: set(taken(bench)) == {*map(str, beds), "20"})
    courier.send_signal(signal.SIGTERM)
    assert courier.wait(timeout=20) == 0
    assert {1, 2, 500, 503, 204} == set(statuses(bench))
    ids = {(row["body"]["data"]["bed"], row["id"]) for row in bench.got()}
    assert len(ids) == len({letter for _, letter in ids}) == 13
    assert len(taken(bench)) == 13


def statuses(bench: Bench) -> list[int]:
    """What the gateway answered, in order; two of them are no answers."""
    return [row["status"] for row in bench.got()]


@pytest.mark.parametrize(("status", "word"), [(500, "failed"), (302, "failed"), (410, "refused")])
def test_an_answer_that_is_not_a_taking_is_a_failure(bench: Bench, status: int, word: str) -> None:
    bench.receive(status)
    bench.queue(7)
    assert f"to carla: {word} ({status})" in bench.run("deliver", "--once").stderr
    assert len(bench.got()) == 1


def test_what_was_given_up_is_listed_without_its_text(bench: Bench) -> None:
    bench.receive(410)
    bench.queue(7)
    assert bench.run("deliver", "--dead").stdout == ""
    bench.run("deliver", "--once")
    listed = bench.run("deliver", "--dead")
    assert listed.returncode == 1
    assert "ladder  to carla  tried 1, last status 410" in listed.stdout
    assert "620" not in listed.stdout


def test_what_is_older_than_a_day_is_not_sent_but_listed(bench: Bench) -> None:
    bench.receive()
    bench.queue(7, at=datetime.now(UTC) - timedelta(hours=25))
    assert bench.run("deliver", "--once").returncode == 0
    assert bench.got() == []
    assert bench.run("deliver", "--dead").stdout.count("never sent") == 2


def test_a_gateway_that_does_not_answer_is_tried_once_a_round(bench: Bench) -> None:
    gateway = bench.receive()
    gateway.kill()
    gateway.wait()
    bench.queue(7, 8)
    assert bench.run("deliver", "--once").stderr.count("no answer") == 1
