"""`penline chat`: a conversation with the bot in the terminal, on a database of its own."""

from __future__ import annotations

import secrets
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import click
from rich.console import Console

from bot.cli.clock import Clock, ClockError
from bot.cli.embedded import Sent, Ward
from bot.cli.show import Chat
from bot.cli.unit_file import unit_option, unit_or_demo
from bot.intake import TextError, clean_text

HELP = """\
Text as you would to the bot: bed 12 mark 1050 at 1900
/as Ben         speak as someone else of the unit, or as a stranger
/at 18:55       set the clock (18:55; +60 minutes; real); it goes on ticking from there
/clock          what time it is
/voice TEXT     send it as a dictated message
/speech         show or hide what a voice would say
/who            who is on the unit's list
/quit           leave (so does end of input)"""


@click.command("chat", help="Talk to the bot in the terminal, on an embedded database.")
@unit_option
@click.option("--as", "name", help="Who you are; the first of the unit's list unless given.")
@click.option("--at", help="What time it is to begin with (18:55); the real time unless given.")
@click.option(
    "--database", default="sqlite://", help="A database URL to keep the ledger in; memory unless given."
)
def command(unit: Path | None, name: str | None, at: str | None, database: str) -> None:
    """A conversation until /quit or the end of the input."""
    ward = Ward(unit_or_demo(unit), database, f"chat-{secrets.token_hex(4)}")
    session = Session(ward, Chat(Console()), name or ward.unit.people[0].name)
    session.greet()
    if at:
        session.obey(f"/at {at}")
    try:
        for line in session.lines():
            if not session.take(line):
                break
    finally:
        ward.close()


class Session:
    """Who speaks, what time it is, and what is shown."""

    def __init__(self, ward: Ward, chat: Chat, name: str) -> None:
        self._ward = ward
        self._chat = chat
        self._name = name
        self._clock = Clock(ward.unit.zone)

    def greet(self) -> None:
        """What the terminal says first."""
        self._chat.note(
            f"{self._ward.unit.name}. You are {self._name}. /help lists what else you can do here."
        )

    def lines(self) -> Iterator[str]:
        """What is typed, a line at a time; from a pipe without a prompt."""
        if not sys.stdin.isatty():
            yield from (line.rstrip("\n") for line in sys.stdin)
            return
        import readline  # noqa: F401 - gives `input` its editing and history

        while True:
            try:
                yield input(f"{self._now()} {self._name}> ")
            except (EOFError, KeyboardInterrupt):
                return

    def take(self, line: str) -> bool:
        """Send the line, or do what it says after a slash. False when the conversation is over."""
        words = line.strip()
        if words in {"/quit", "/exit"}:
            return False
        if words.startswith("/") and not words.startswith("/voice "):
            self.obey(words)
        elif words:
            self._send(words.removeprefix("/voice "), voice=words.startswith("/voice "))
        return True

    def obey(self, order: str) -> None:
        """Do what a line that starts with a slash says."""
        verb, _, rest = order.partition(" ")
        match verb, rest.strip():
            case "/as", name if name:
                self._speak_as(name)
            case (("/at" | "/clock"), told) if told:
                self._set_clock(told)
            case "/clock", "":
                self._chat.note(f"It is {self._clock.now().astimezone(self._ward.unit.zone):%A %H:%M}.")
            case "/speech", "":
                self._chat = replace(self._chat, speech=not self._chat.speech)
                self._chat.note(f"What a voice would say is {'shown' if self._chat.speech else 'hidden'}.")
            case "/who", "":
                self._chat.note(", ".join(f"{each.name} ({each.role})" for each in self._ward.unit.people))
            case _:
                self._chat.note(HELP)

    def _speak_as(self, name: str) -> None:
        known = {person.name.casefold(): person.name for person in self._ward.unit.people}
        self._name = known.get(name.casefold(), name)
        stranger = "" if name.casefold() in known else ", who is not on the unit's list"
        self._chat.note(f"You are {self._name}{stranger}.")

    def _set_clock(self, told: str) -> None:
        try:
            self._clock.set(told)
        except ClockError as error:
            self._chat.note(f"The clock stays: {error}.")
        else:
            self._chat.note(f"It is {self._clock.now().astimezone(self._ward.unit.zone):%A %H:%M}.")

    def _send(self, text: str, *, voice: bool) -> None:
        try:
            sent = Sent(sender=self._name, text=clean_text(text), arrived=self._clock.stamp(), voice=voice)
        except TextError as error:
            self._chat.note(f"Not sent: the text {error}.")
            return
        if not sys.stdin.isatty():
            self._chat.said(self._now(), self._name, text, "voice" if voice else "")
        self._chat.answered(self._ward.says(sent))

    def _now(self) -> str:
        return f"{self._clock.now().astimezone(self._ward.unit.zone):%H:%M}"
