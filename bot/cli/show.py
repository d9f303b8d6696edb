"""How a conversation looks in a terminal: a chat in colour, or plain lines when it is piped."""

from __future__ import annotations

from dataclasses import dataclass

from rich.console import Console
from rich.text import Text

from bot.cli.embedded import Reply

_STYLES = {"high": "bold red", "moderate": "yellow", "low": "cyan"}
_PREFIXES = {"URGENT": "bold red", "CAUTION": "yellow", "NOTE": "cyan"}
_INDENT = " " * 6


@dataclass(frozen=True, slots=True)
class Chat:
    """Prints turns on a console. Severity is always a word; the colour only repeats it."""

    console: Console
    speech: bool = False

    def heading(self, text: str) -> None:
        """A story's name or a date."""
        self._line(Text(text, style="bold"))

    def prose(self, text: str) -> None:
        """What is told between the turns."""
        self._line(Text(text, style="italic"))

    def said(self, clock: str, name: str, text: str, how: str = "") -> None:
        """What a nurse sent."""
        shown = f" ({how})" if how else ""
        self._line(Text.assemble((f"{clock} ", "dim"), (name, "bold green"), f"{shown}: {text}"))

    def answered(self, reply: Reply) -> None:
        """What the bot answered, what the engine worked out, and how many parts the text costs."""
        for number, line in enumerate(reply.text.split("\n")):
            start = "     " if number else "Bot: "
            self._line(Text.assemble(_INDENT, (start, "bold blue"), Text(line, style=_style(line))))
        for item in reply.computed:
            self._line(Text(f"{_INDENT}     | {item.text}", style=_STYLES.get(item.severity, "dim")))
        parts = f"{reply.segments} part" if reply.segments == 1 else f"{reply.segments} parts"
        self._line(Text(f"{_INDENT}     | {parts}", style="dim"))
        if self.speech:
            self._line(Text(f"{_INDENT}     | said: {reply.speech}", style="dim"))

    def note(self, text: str) -> None:
        """A word of the terminal itself, not of the bot."""
        self._line(Text(text, style="dim"))

    def _line(self, text: Text) -> None:
        self.console.print(text, soft_wrap=True, highlight=False)


def _style(line: str) -> str:
    word = line.split(":")[0].split(" ")[0]
    return _PREFIXES.get(word, "")
