"""A bar where someone looks, nothing where nobody does, and the items either way."""

from __future__ import annotations

import io
import json
import os
import sys
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.cli.progress import followed, line_count
from bot.intake import Incoming, handle
from bot.intake.respond import deployment
from bot.store import open_store
from bot.unit import demo_unit
from tests.cli.on_a_terminal import on_a_terminal


class Screen(io.StringIO):
    """A stream that says it is a terminal."""

    def isatty(self) -> bool:
        """Someone looks at it."""
        return True


@pytest.mark.parametrize(
    ("err", "out", "prints", "shown"),
    [
        (Screen, io.StringIO, False, True),
        (Screen, Screen, False, True),
        (Screen, io.StringIO, True, True),
        (Screen, Screen, True, False),
        (io.StringIO, Screen, False, False),
    ],
)
def test_a_bar_is_shown_on_a_terminal_alone(
    monkeypatch: pytest.MonkeyPatch,
    err: type[io.StringIO],
    out: type[io.StringIO],
    prints: bool,
    shown: bool,
) -> None:
    for name in ("NO_COLOR", "FORCE_COLOR", "TTY_COMPATIBLE"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("TERM", "xterm")
    screen = err()
    monkeypatch.setattr(sys, "stderr", screen)
    monkeypatch.setattr(sys, "stdout", out())
    assert list(followed(range(5), "rows", 5, prints=prints)) == [0, 1, 2, 3, 4]
    assert ("rows" in screen.getvalue()) is shown


@pytest.mark.real_time
def test_answers_go_where_they_were_sent_and_the_bar_to_the_terminal(tmp_path: Path) -> None:
    file = tmp_path / "messages.jsonl"
    rows = (
        {
            "id": f"m{hour}",
            "sender": "amy",
            "arrived": f"2026-03-04T{hour:02}:00",
            "text": f"bed 7 mark {hour}0",
        }
        for hour in range(8, 18)
    )
    file.write_text("".join(f"{json.dumps(row)}\n" for row in rows))
    seen = on_a_terminal(("replay", str(file)), tmp_path, redirected=True)
    assert seen.code == 0
    assert [json.loads(line)["id"] for line in seen.stdout.splitlines()] == [f"m{n}" for n in range(8, 18)]
    assert "messages" in seen.screen
    assert "mL" not in seen.screen


@pytest.mark.real_time
def test_where_both_are_the_terminal_no_bar_stands_between_the_answers(tmp_path: Path) -> None:
    file = tmp_path / "messages.jsonl"
    file.write_text('{"id": "m1", "sender": "amy", "arrived": "2026-03-04T08:00", "text": "bed 7 mark 80"}\n')
    seen = on_a_terminal(("replay", str(file)), tmp_path, redirected=False)
    assert json.loads(seen.screen)["id"] == "m1"


def test_the_lines_of_a_file_are_counted_and_then_read_from_where_it_stood(tmp_path: Path) -> None:
    file = tmp_path / "rows"
    file.write_text("one\ntwo\nthree\n")
    with file.open() as lines:
        lines.readline()
        assert line_count(lines) == 2
        assert lines.readlines() == ["two\n", "three\n"]


def test_the_lines_of_a_pipe_are_not_counted() -> None:
    reading, writing = os.pipe()
    os.close(writing)
    with os.fdopen(reading) as lines:
        assert line_count(lines) is None


@pytest.mark.real_time
def test_a_check_and_a_copy_of_the_database_show_how_far_they_are(tmp_path: Path) -> None:
    url, copy = f"sqlite:///{tmp_path}/ward.sqlite", tmp_path / "copy"
    with closing(open_store(url)) as store:
        marked = Incoming(
            id="m1", sender="amy", text="bed 7 mark 80", arrived=datetime(2026, 3, 4, 13, tzinfo=UTC)
        )
        handle(marked, deployment((demo_unit(),), store))
    for command, what in ((("verify",), "drains"), (("backup", str(copy)), "rows")):
        seen = on_a_terminal((*command, "--database", url), tmp_path, redirected=True)
        assert (seen.code, "100%" in seen.screen, what in seen.screen) == (0, True, True)
        assert "100%" not in seen.stdout
    fresh = f"sqlite:///{tmp_path}/fresh.sqlite"
    seen = on_a_terminal(("restore", str(copy), "--database", fresh), tmp_path, redirected=True)
    assert (seen.code, "100%" in seen.screen) == (0, True)
