"""The whole program over a real socket: the main job, what is refused, and what a bad client cannot do."""

from __future__ import annotations

import re
import socket
import subprocess
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import ExitStack, contextmanager, suppress
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from sqlalchemy import text

from bot.store import Store
from bot.store.connect import connect
from tests.web.client import OTHER_SECRET, SECRET, body, signed
from tests.web.post import posted
from tests.web.served import SERVE, Server, environment, post_elsewhere, served

pytestmark = pytest.mark.real_time

UNIT = """
name = "Ward 4"
zone = "America/New_York"
beds = "1-24"
people = [{ id = "amy", name = "Amy", role = "nurse" }, { id = "dan", name = "Dan", role = "reader" }]
"""


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """One server for all of these."""
    folder = tmp_path_factory.mktemp("served")
    unit = folder / "ward.toml"
    unit.write_text(UNIT)
    with served(folder, unit) as server:
        yield server


def rows(server: Server, table: str) -> int:
    """How many rows a table of its ledger has."""
    store = Store(connect(server.database))
    with store.connection() as connection:
        found: int = connection.execute(text(f"SELECT count(*) FROM {table}")).scalar_one()
    store.close()
    return found


def an_hour(hours_ago: int) -> str:
    """A full hour of the ward, so long ago, as a nurse writes it."""
    at = datetime.now(ZoneInfo("America/New_York")).replace(minute=0)
    return (at.astimezone(UTC) - timedelta(hours=hours_ago)).astimezone(at.tzinfo).strftime("%H00")


def mark(id_: str, said: str, **more: object) -> dict[str, object]:
    """A post of Amy's."""
    sent_at = datetime.now(UTC).isoformat(timespec="seconds")
    return {"id": id_, "body": {"sender": "amy", "text": said, "sent_at": sent_at, **more}}


def test_a_real_client_gets_the_volume_to_chart(server: Server) -> None:
    first = mark("job-1", f"bed 12 mark 840 at {an_hour(4)}")
    second = mark("job-2", f"bed 12 mark 1050 at {an_hour(0)}")
    answers = post_elsewhere(server, first, second, second)
    assert [status for status, _ in answers] == [200, 200, 200]
    (_, baseline), (_, answer), (_, again) = answers
    assert (baseline["status"], baseline["chart"]) == ("recorded", [])
    assert answer["status"] == "recorded"
    charted = answer["chart"]
    assert isinstance(charted, list)
    assert [(row["bed"], row["volume_ml"]) for row in charted] == [("12", 210)]
    assert again == answer


def test_what_must_be_refused_is_refused_and_nothing_is_stored(server: Server) -> None:
    assert post_elsewhere(server, mark("known", "help"))[0][0] == 200
    before = rows(server, "messages")
    answers = post_elsewhere(
        server,
        {**mark("bad-1", "bed 12 mark 1050"), "secret": OTHER_SECRET},
        {**mark("bad-2", "bed 12 mark 1050"), "age_s": 400},
        mark("known", "bed 12 mark 1050"),
        {"id": "bad-3", "raw": " " * 17 * 1024},
        {**mark("bad-4", "bed 12 mark 1050"), "type": "text/plain"},
        {"id": "bad-5", "raw": "{"},
        {"id": "bad-6", "body": {"sender": "amy"}},
    )
    assert [status for status, _ in answers] == [401, 401, 409, 413, 415, 400, 422]
    assert all(problem["status"] == status for status, problem in answers)
    assert rows(server, "messages") == before


def test_16_threads_send_160_marks_and_the_volumes_add_up(server: Server) -> None:
    start = datetime.now(UTC) - timedelta(minutes=161)
    zone = ZoneInfo("America/New_York")

    def send(number: int) -> int:
        at = (start + timedelta(minutes=number)).astimezone(zone)
        said = f"bed 7 mark {100 + 2 * number} at {at:%H%M}"
        return posted(server.url, SECRET, mark(f"many-{number}", said))[0]

    order = sorted(range(160), key=lambda number: number * 37 % 160)
    with ThreadPoolExecutor(16) as pool:
        assert set(pool.map(send, order)) == {200}
    answer = post_elsewhere(server, mark("many-total", "bed 7 total"))[0][1]
    assert "318 mL" in str(answer["reply"])


def test_security_11_a_reader_records_nothing_and_a_stranger_learns_nothing(server: Server) -> None:
    before = rows(server, "entries")
    reader, stranger = post_elsewhere(
        server,
        {"id": "role-1", "body": {"sender": "dan", "text": "bed 3 mark 100"}},
        {"id": "role-2", "body": {"sender": "zoe", "text": "bed 3 last"}},
    )
    assert (reader[0], reader[1]["status"]) == (200, "refused")
    assert (stranger[0], stranger[1]["status"]) == (200, "refused")
    assert "Ward 4" not in str(stranger[1])
    assert rows(server, "entries") == before


def raw(server: Server, *parts: bytes) -> bytes:
    """What comes back for these bytes; nothing when the server cut the connection."""
    with server.connect() as connection, suppress(ConnectionResetError, BrokenPipeError):
        for part in parts:
            connection.sendall(part)
        received = b""
        while chunk := connection.recv(65536):
            received += chunk
            if b"\r\n\r\n" in received and b"close" not in received.lower():
                break
        return received
    return b""


def head(*headers: str) -> bytes:
    """The head of a post with these headers."""
    return "\r\n".join(["POST /messages HTTP/1.1", "Host: ward", *headers, "", ""]).encode()


def test_security_06_a_chunked_body_is_limited_too(server: Server) -> None:
    chunk = b"1000\r\n" + b" " * 4096 + b"\r\n"
    answer = raw(
        server, head("Transfer-Encoding: chunked", "Content-Type: application/json"), chunk * 5, b"0\r\n\r\n"
    )
    assert answer.startswith(b"HTTP/1.1 413 ")


def test_security_06_a_huge_body_or_head_is_not_waited_for(server: Server) -> None:
    assert raw(server, head("Content-Length: 1000000000")).startswith(b"HTTP/1.1 413 ")
    assert raw(server, head("X-Filler: " + "x" * 64_000))[:13] in (b"", b"HTTP/1.1 431 ")


@pytest.mark.parametrize(
    "headers",
    [
        ("Content-Length: 2", "Content-Length: 3"),
        ("Content-Length: 2, 2",),
        ("Content-Length: +2",),
        ("Content-Length: -2",),
        ("Transfer-Encoding: gzip",),
        ("Transfer-Encoding: chunked, gzip",),
        ("Content-Length",),
        ("Content-Length : 2",),
    ],
    ids=str,
)
def test_security_08_a_body_of_doubtful_length_is_refused(server: Server, headers: tuple[str, ...]) -> None:
    answer = raw(server, head(*headers))
    assert answer[:12] in (b"HTTP/1.1 400", b"HTTP/1.1 501", b"HTTP/1.0 400")


def test_security_08_a_length_beside_chunks_smuggles_nothing_in(server: Server) -> None:
    smuggled = b"0\r\n\r\nGET /health HTTP/1.1\r\nHost: ward\r\n\r\n"
    answer = raw(
        server, head("Content-Length: 5", "Transfer-Encoding: chunked", "Connection: close"), smuggled
    )
    assert answer.count(b"HTTP/1.1 ") == 1
    assert answer.startswith((b"HTTP/1.1 400", b"HTTP/1.1 401"))


@pytest.mark.parametrize(
    "sent",
    [
        b"",
        b"POST /mess",
        b"POST /messages HTTP/1.1\r\nHost: ward\r\nX-Slow: ",
        head("Content-Length: 100"),
        head("Content-Length: 100") + b"{",
        head("Transfer-Encoding: chunked") + b"40\r\n{",
    ],
    ids=["nothing", "half a line", "half a head", "no body", "half a body", "half a chunk"],
)
def test_security_09_forty_slow_clients_hold_nobody_up(server: Server, sent: bytes) -> None:
    with slow_clients(server, 40) as slow:
        for connection in slow:
            connection.sendall(sent)
        answers_within_a_second(server)


def test_security_09_twenty_clients_that_dribble_hold_nobody_up(server: Server) -> None:
    what = [b"POST /messages HTTP/1.1\r\nHost: ward\r\n", head("Content-Length: 100") + b"{"]
    with slow_clients(server, 20) as slow:
        for number, connection in enumerate(slow):
            connection.sendall(what[number % 2])
        for letter in b"X-A: b" * 3:  # a head that never ends, a body that comes letter by letter
            for connection in slow:
                connection.sendall(bytes([letter]))
            answers_within_a_second(server)


@contextmanager
def slow_clients(server: Server, count: int) -> Iterator[list[socket.socket]]:
    """So many connections, closed at the end."""
    with ExitStack() as stack:
        yield [stack.enter_context(server.connect()) for _ in range(count)]


def answers_within_a_second(server: Server) -> None:
    """Nobody else is held up."""
    started = time.perf_counter()
    assert post_in_time(server) == 200
    assert time.perf_counter() - started < 1


def test_a_start_on_a_disk_that_cannot_be_written_is_one_line(tmp_path: Path) -> None:
    unit = tmp_path / "ward.toml"
    unit.write_text(UNIT)
    run = started(tmp_path, unit, PENLINE_DATABASE_URL=f"sqlite:///{tmp_path}/nowhere/ward.sqlite")
    assert run.returncode == 1
    assert "nowhere/ward.sqlite: No such file or directory" in run.stderr.splitlines()[-1]
    assert "Traceback" not in run.stderr


def started(folder: Path, unit: Path, **environ: str) -> subprocess.CompletedProcess[str]:
    """A server that does not come up."""
    settings = environment(folder, unit, **environ)
    return subprocess.run(SERVE, env=settings, capture_output=True, text=True, timeout=60, check=False)


def test_a_host_of_several_addresses_is_served(tmp_path: Path) -> None:
    unit = tmp_path / "ward.toml"
    unit.write_text(UNIT)
    with served(tmp_path, unit, PENLINE_HOST="localhost") as server:
        assert post_in_time(server) == 200


def post_in_time(server: Server) -> int:
    """The status of one good message."""
    return posted(server.url, SECRET, mark(f"good-{time.time_ns()}", "help"))[0]


def test_security_10_a_proxy_s_headers_are_not_logged(server: Server) -> None:
    what = body("help")
    forged = {"X-Forwarded-For": "10.0.0.1", "X-Forwarded-Proto": "https", "Forwarded": "for=10.0.0.1"}
    headers = {**signed(what, "proxy-1", at=datetime.now(UTC)), **forged, "Content-Length": str(len(what))}
    lines = [f"{name}: {value}" for name, value in headers.items()]
    assert raw(server, head(*lines, "Connection: close"), what).startswith(b"HTTP/1.1 200 ")
    assert "10.0.0.1" not in server.log


def test_security_14_a_whole_run_leaves_no_text_in_the_log(server: Server) -> None:
    post_elsewhere(server, mark("canary-1", "bed 12 kestrel"), mark("canary-2", "bed 9 mark 1739"))
    assert '"canary-2"' in server.log
    told = re.search(r"kestrel|amy|\bbed\b|(?<![\d.])1739(?!\d)", server.log, re.IGNORECASE)
    assert told is None  # a moment in nanoseconds, or a hash, may hold such digits or letters by chance


@pytest.mark.parametrize(
    ("environ", "unit", "said"),
    [
        ({"PENLINE_SECRETS": ""}, UNIT, "PENLINE_SECRETS"),
        ({"PENLINE_SECRETS": "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw"}, UNIT, "PENLINE_SECRETS"),
        ({"PENLINE_HOST": "0.0.0.0", "PENLINE_SECRETS": ""}, UNIT, "reached from outside"),
        ({}, UNIT.replace("America/New_York", "America/Nowhere"), "ward.toml: zone"),
        ({}, UNIT + 'shifts = ["07:00", "07:20"]\n', "ward.toml: shifts"),
        ({}, UNIT + 'bedz = "1-3"\n', "ward.toml: bedz"),
        ({"PENLINE_UNITS": "nowhere.toml"}, UNIT, "nowhere.toml"),
    ],
    ids=["no secret", "sample secret", "public without secret", "zone", "shifts", "unknown key", "no file"],
)
def test_a_wrong_setting_ends_the_start_with_2_and_one_line(
    tmp_path: Path, environ: dict[str, str], unit: str, said: str
) -> None:
    file = tmp_path / "ward.toml"
    file.write_text(unit)
    run = started(tmp_path, file, **environ)
    assert run.returncode == 2
    assert len(run.stderr.splitlines()) == 1
    assert said in run.stderr
