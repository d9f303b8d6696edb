"""The command line: `penline` = `python -m bot`. One module a command, imported when it is called."""

from bot.cli.group import penline

__all__ = ["penline"]
