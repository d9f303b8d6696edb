"""`penline replay`: messages from a file, one answer a line."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from bot.cli import penline

FIRST = {"id": "m-1", "sender": "amy", "arrived": "2026-03-04T15:01", "text": "bed 7 mark 840 at 1500"}
SECOND = {
    "id": "m-2",
    "sender": "ben",
    "arrived": "2026-03-04T19:02-05:00",
    "text": "bed 7 mark 1050 at 1900",
}


def replay(tmp_path: Path, *rows: object, unit: Path | None = None) -> Result:
    file = tmp_path / "messages.jsonl"
    file.write_text("".join(f"{row if isinstance(row, str) else json.dumps(row)}\n" for row in rows), "utf-8")
    return CliRunner().invoke(penline, ["replay", str(file), *(["--unit", str(unit)] if unit else [])])


def answers(result: Result) -> list[dict[str, Any]]:
    return [json.loads(line) for line in result.stdout.splitlines()]


def test_each_message_gets_its_answer_object_in_order(tmp_path: Path) -> None:
    result = replay(tmp_path, FIRST, SECOND)
    first, second = answers(result)
    assert result.exit_code == 0
    assert [first["id"], second["id"]] == ["m-1", "m-2"]
    assert second["status"] == "recorded"
    assert [row["volume_ml"] for row in second["chart"]] == [210]


def test_the_same_message_again_gets_the_same_answer_and_no_second_entry(tmp_path: Path) -> None:
    first, again, second = answers(replay(tmp_path, FIRST, FIRST, SECOND))
    assert again == first
    assert [row["volume_ml"] for row in second["chart"]] == [210]


@pytest.mark.parametrize(
    ("row", "why"),
    [
        ("{not json", "not JSON"),
        ("[]", "needs arrived, id, sender, text"),
        ({**FIRST, "mood": "tired"}, "knows alternatives, channel, sent_at"),
        ({key: FIRST[key] for key in ("id", "sender", "text")}, "needs arrived"),
        ({**FIRST, "arrived": "teatime"}, "not a message"),
        ({**FIRST, "sender": 7}, "id, sender and text are words"),
        ({**FIRST, "channel": "drum"}, "channel is text or voice"),
        ({**FIRST, "text": "bed \x07"}, "control character"),
        ({**FIRST, "alternatives": [{"text": "bed 7"}]}, "not a message"),
    ],
)
def test_a_line_that_is_no_message_is_told_by_number_and_the_others_go_on(
    tmp_path: Path, row: object, why: str
) -> None:
    result = replay(tmp_path, FIRST, row, SECOND)
    assert result.exit_code == 2
    assert "line 2: " in result.stderr
    assert why in result.stderr
    assert [answer["id"] for answer in answers(result)] == ["m-1", "m-2"]


def test_an_id_used_for_another_message_is_told(tmp_path: Path) -> None:
    result = replay(tmp_path, FIRST, {**SECOND, "id": "m-1"})
    assert result.exit_code == 2
    assert "line 2: its id was another message's" in result.stderr


def test_a_blank_line_is_nothing(tmp_path: Path) -> None:
    result = replay(tmp_path, FIRST, "", SECOND)
    assert (result.exit_code, len(answers(result))) == (0, 2)


def test_a_unit_file_that_is_wrong_ends_with_code_2_and_names_the_key(tmp_path: Path) -> None:
    unit = tmp_path / "ward.toml"
    unit.write_text('name = "W"\nzone = "Mars/Olympus"\nbeds = "1-4"\n', "utf-8")
    result = replay(tmp_path, FIRST, unit=unit)
    assert result.exit_code == 2
    assert "zone" in result.stderr
    assert "ward.toml" in result.stderr


def test_an_answer_is_there_before_the_next_message_is_sent() -> None:
    command = [sys.executable, "-m", "bot", "replay", "-"]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdin
        assert running.stdout
        running.stdin.write(json.dumps(FIRST) + "\n")
        running.stdin.flush()
        assert json.loads(running.stdout.readline())["id"] == "m-1"
        running.stdin.close()
        assert running.wait(timeout=60) == 0


def test_a_line_that_is_no_utf_8_is_told_with_its_number_and_the_others_go_on(tmp_path: Path) -> None:
    file = tmp_path / "messages.jsonl"
    file.write_bytes(b'{"id": "\xff"}\n' + json.dumps(FIRST).encode() + b"\n")
    result = CliRunner().invoke(penline, ["replay", str(file)])
    assert (result.exit_code, [row["id"] for row in answers(result)]) == (2, ["m-1"])
    assert result.stderr == "line 1: not UTF-8\n"
