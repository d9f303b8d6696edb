"""`penline demo`: plays stories of `transcripts_demo` as a chat, with what the engine worked out."""

from __future__ import annotations

import time
from pathlib import Path

import click
from rich.console import Console

from bot.cli.player import played, unit_of
from bot.cli.show import Chat
from bot.cli.transcript import Transcript, Turn, read

STORIES = Path(__file__).parents[2] / "transcripts_demo"
FIRST = ("hourly-marks", "exchange-in-a-shift", "urgent-and-asked")
_READING_S = 0.9


@click.command("demo", help="Play stories of a ward as a chat; three of them unless named.")
@click.argument("names", nargs=-1)
@click.option("--all", "every", is_flag=True, help="Play every story.")
@click.option("--list", "listed", is_flag=True, help="Print the stories' names.")
@click.option("--fast", is_flag=True, help="No pauses; there are none when piped either.")
@click.option("--from", "folder", type=click.Path(file_okay=False, path_type=Path), default=STORIES)
def command(names: tuple[str, ...], every: bool, listed: bool, fast: bool, folder: Path) -> None:
    """The stories one after the other, each on an empty ledger."""
    stories = {path.stem: path for path in sorted(folder.glob("*.txt"))}
    if not stories:
        raise click.UsageError(
            f"no stories in {folder}: they come with a checkout; name one by --from FOLDER"
        )
    if listed:
        _print_names(stories)
        return
    chosen = tuple(stories) if every else names or FIRST
    unknown = [name for name in chosen if name not in stories]
    if unknown:
        raise click.UsageError(f"no story called {unknown[0]}: --list prints their names")
    console = Console()
    for name in chosen:
        _play(name, stories[name], Chat(console), 0 if fast or not console.is_terminal else _READING_S)
    others = len(stories) - len(chosen)
    if others and not names:
        Chat(console).note(
            f"{others} more stories: penline demo --list, penline demo NAME, penline demo --all"
        )


def _print_names(stories: dict[str, Path]) -> None:
    for name, path in stories.items():
        click.echo(f"{name:24} {read(path.read_text('utf-8')).title}")


def _play(name: str, path: Path, chat: Chat, pause_s: float) -> None:
    transcript: Transcript = read(path.read_text("utf-8"))
    chat.heading(f"== {name} ==")
    for item, reply in played(transcript, unit_of(transcript, path.parent)):
        if not isinstance(item, Turn):
            chat.prose(item.text)
            continue
        how = "voice" if item.voice else f"sent {item.sent:%H:%M}" if item.sent else ""
        chat.said(f"{item.at:%H:%M}", item.name, item.text, how)
        time.sleep(pause_s)
        if reply is not None:
            chat.answered(reply)
        time.sleep(pause_s)
    chat.prose("")
