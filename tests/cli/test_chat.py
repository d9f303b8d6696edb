"""`penline chat`: who speaks, what time it is, and the conversation itself."""

from __future__ import annotations

from pathlib import Path

from click.testing import CliRunner, Result

from bot.cli import penline


def chat(*lines: str, options: tuple[str, ...] = ()) -> Result:
    return CliRunner().invoke(penline, ["chat", *options], input="".join(f"{line}\n" for line in lines))


def test_a_conversation_shows_who_speaks_when_and_what_to_chart() -> None:
    result = chat("/at 15:01", "bed 7 mark 840 at 1500", "/at 19:02", "/as ben", "bed 7 mark 1050 at 1900")
    assert result.exit_code == 0, result.output
    assert "You are Amy." in result.output
    assert "15:01 Amy: bed 7 mark 840 at 1500" in result.output
    assert "19:02 Ben: bed 7 mark 1050 at 1900" in result.output
    assert "chart: bed 7, 210 mL, 15:00 to 19:00, day shift" in result.output


def test_one_can_begin_as_someone_at_a_time() -> None:
    result = chat("/clock", "bed 7 mark 840", options=("--as", "Carla", "--at", "18:55"))
    assert "You are Carla." in result.output
    assert " 18:55." in result.output


def test_a_stranger_is_told_so_and_learns_nothing() -> None:
    result = chat("/as Mallory", "last mark bed 7")
    assert "who is not on the unit's list" in result.output
    assert " mL" not in result.output


def test_quit_ends_the_conversation() -> None:
    result = chat("/quit", "bed 7 mark 840")
    assert "bed 7" not in result.output


def test_what_is_no_order_gets_the_help() -> None:
    assert "/as Ben" in chat("/dance").output


def test_the_clock_says_why_it_cannot_be_set() -> None:
    assert "The clock stays: say 18:55, +45 minutes or real." in chat("/at tea time").output


def test_the_list_of_people_names_their_roles() -> None:
    assert "Carla (charge)" in chat("/who").output


def test_what_a_voice_would_say_can_be_shown() -> None:
    result = chat("/speech", "help", "/speech")
    assert "| said: " in result.output
    assert "is hidden" in result.output


def test_a_dictated_message_waits_for_a_yes() -> None:
    result = chat("/at 19:02", "/voice bed 7 mark 840 at 1900")
    assert "Amy (voice): bed 7 mark 840 at 1900" in result.output
    assert "?" in result.output.rsplit("Bot:", maxsplit=1)[-1]


def test_a_text_that_nobody_types_is_not_sent() -> None:
    assert "Not sent: the text holds a control character." in chat("bed \x07").output


def test_a_ledger_can_be_kept_in_a_file(tmp_path: Path) -> None:
    kept = ("--database", f"sqlite:///{tmp_path / 'ward.sqlite'}")
    chat("/at 10:00", "bed 7 mark 840 at 1000", options=kept)
    assert "840 mL" in chat("/at 11:00", "last mark bed 7", options=kept).output


def test_nothing_but_plain_text_is_piped() -> None:
    assert "\x1b" not in chat("/at 19:02", "bed 7 mark 840 at 1900").output
