"""Notices reach a real gateway in another process; neither side loses one when it is killed."""

from __future__ import annotations

import re
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
    assert not {"620", "URGENT", "bed"} & words(said)


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


def words(told: str) -> set[str]:
    """Each word by itself: the ids hold letters and digits by chance."""
    return set(re.findall(r"\w+", told))


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
    assert "620" not in words(listed.stdout)


def letter_ids(listed: str) -> list[str]:
    """The ids in the list of the dead."""
    return [line.split()[0] for line in listed.splitlines()]


def test_what_was_given_up_is_sent_again_by_its_id_and_then_no_more_listed(bench: Bench) -> None:
    bench.receive(410, 410)
    bench.queue(7, 8)
    bench.run("deliver", "--once")
    first, second = letter_ids(bench.run("deliver", "--dead").stdout)
    assert bench.run("deliver", "--again", first).returncode == 0
    assert taken(bench) == ["7"]
    assert [row["id"] for row in bench.got()] == [first, second, first]
    assert letter_ids(bench.run("deliver", "--dead").stdout) == [second]


def test_all_that_was_given_up_is_sent_again_however_old_it_is(bench: Bench) -> None:
    bench.receive()
    bench.queue(7, 8, at=datetime.now(UTC) - timedelta(hours=25))
    again = bench.run("deliver", "--again", "all")
    assert (again.returncode, bench.run("deliver", "--dead").stdout) == (0, "")
    assert sorted(row["body"]["data"]["to"] for row in bench.got()) == ["ben", "ben", "carla", "carla"]


def test_what_is_not_taken_again_stays_listed(bench: Bench) -> None:
    bench.receive(410, 503)
    bench.queue(7)
    bench.run("deliver", "--once")
    assert bench.run("deliver", "--again", "all").returncode == 1
    assert "tried 2, last status 503" in bench.run("deliver", "--dead").stdout


def test_nothing_is_sent_again_while_one_of_the_ids_is_wrong(bench: Bench) -> None:
    bench.receive(410)
    bench.queue(7)
    bench.run("deliver", "--once")
    (known,) = letter_ids(bench.run("deliver", "--dead").stdout)
    refused = bench.run("deliver", "--again", known, "--again", "notice-9-x")
    assert refused.returncode == 2
    assert "notice-9-x is not the id" in refused.stderr
    assert len(bench.got()) == 1


def test_someone_named_to_be_told_is_passed_over_until_enrolled_by_command(bench: Bench) -> None:
    bench.receive()
    bench.tell("dora", "ben")
    bench.queue(7)
    said = bench.run("deliver", "--once").stderr
    assert "dora is named under [notify] and is not on the list of Ward 4: passed over" in said
    assert bench.run("people", "enrol", "dora", "--name", "Dora", "--role", "charge").returncode == 0
    bench.queue(8)
    assert "passed over" not in bench.run("deliver", "--once").stderr
    told = [(row["body"]["data"]["bed"], row["body"]["data"]["to"]) for row in bench.got()]
    assert told == [("7", "ben"), ("7", "dora"), ("8", "dora")]


def test_a_notice_with_nobody_to_tell_is_said_and_waits_and_is_never_lost(bench: Bench) -> None:
    bench.receive()
    bench.tell("dora")
    bench.queue(7)
    bench.queue(8, at=datetime.now(UTC) - timedelta(hours=25))
    assert "Ward 4 has nobody to notify: its notices wait" in bench.run("deliver", "--once").stderr
    assert "to nobody  tried 0, never sent" in bench.run("deliver", "--dead").stdout
    bench.run("people", "enrol", "dora", "--name", "Dora", "--role", "charge")
    bench.run("deliver", "--once")
    assert taken(bench) == ["7"]
    assert bench.run("deliver", "--again", "all").returncode == 0
    assert taken(bench) == ["7", "8"]


def test_someone_enrolled_in_another_unit_too_is_told_to_name_the_unit(bench: Bench) -> None:
    bench.receive()
    bench.another_unit()
    enrol = ("enrol", "carla", "--name", "Carla", "--role", "nurse")
    assert bench.run("people", "--in", "ward-5", *enrol).returncode == 0
    bench.queue(7)
    bench.run("deliver", "--once")
    assert [row["body"]["data"]["say"] for row in bench.got()] == ["Ward 4 seen 7"]


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
