"""`penline chat` and `penline demo` at a terminal: a prompt, colours, and severity in words as well."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.on_a_terminal import on_a_terminal

pytestmark = pytest.mark.real_time

RED = "\x1b[1;31m"


def test_someone_at_a_terminal_has_a_prompt_with_the_time_and_their_name(tmp_path: Path) -> None:
    typed = "bed 7 mark 840 at 1500\n/as Ben\nlast 7\n/quit\n"
    seen = on_a_terminal(("chat", "--at", "19:02"), tmp_path, redirected=False, typed=typed)
    assert seen.code == 0
    assert "19:02 Amy> " in seen.screen
    assert "19:02 Ben> " in seen.screen
    assert "19:02 Amy: " not in seen.screen
    assert "line 840 mL" in seen.screen


def test_a_story_at_a_terminal_is_in_colour_and_what_is_urgent_says_so(tmp_path: Path) -> None:
    seen = on_a_terminal(("demo", "--fast", "urgent-and-asked"), tmp_path, redirected=False)
    assert seen.code == 0
    assert f"{RED}URGENT if right: " in seen.screen


def test_a_story_sent_elsewhere_is_plain(tmp_path: Path) -> None:
    seen = on_a_terminal(("demo", "urgent-and-asked"), tmp_path, redirected=True)
    assert "URGENT if right: " in seen.stdout
    assert "\x1b" not in seen.stdout
    assert seen.screen == ""
