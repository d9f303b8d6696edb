"""The group of commands. Each lives in a module of its own, so that asking for help loads no reader."""

from __future__ import annotations

import importlib
from collections.abc import Mapping
from typing import Any

import click

from bot.config import ConfigError

COMMANDS: Mapping[str, str] = {
    "serve": "Answer signed messages over HTTP.",
    "secret": "Print a new signing secret.",
    "link": "Print a link to the pages for someone.",
    "people": "List, enrol and remove people.",
    "deliver": "Send notices to the people whom a unit names.",
    "remind": "Tell what is due; queue notices of what is overdue.",
    "migrate": "Bring a database to this version's schema.",
    "verify": "Check a database: chains, triggers, schema.",
    "backup": "Copy every row while it is in use.",
    "export": "Write the ledgers as FHIR, CSV or JSON lines.",
    "import": "Add the ledgers that were exported as JSON lines.",
    "restore": "Read a backup into an empty database.",
    "chat": "Talk to the bot here.",
    "demo": "Play the transcripts as chats.",
    "replay": "Run a file of messages.",
    "policy": "Show the rules that a unit's cautions rest on.",
}
"""Command -> its line in the help. Its module is `bot.cli.<name>`, its function `command`."""

_MODULES = {"import": "importing"}
"""Of a command whose name is a word of the language."""


class LazyGroup(click.Group):
    """A group that imports a command when it is called."""

    def list_commands(self, ctx: click.Context) -> list[str]:  # noqa: ARG002
        """The commands in the order of the table."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:  # noqa: ARG002
        """The command of that name."""
        if cmd_name not in COMMANDS:
            return None
        module = _MODULES.get(cmd_name, cmd_name)
        command: click.Command = importlib.import_module(f"bot.cli.{module}").command
        return command

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:  # noqa: ARG002
        """The help of the group, which needs no command's module."""
        with formatter.section("Commands"):
            formatter.write_dl(list(COMMANDS.items()))

    def invoke(self, ctx: click.Context) -> Any:
        """Run the command; what it cannot start with, or go on without, is one plain line.

        A setting ends it with exit code 2, the database with 1.
        """
        try:
            return super().invoke(ctx)
        except ConfigError as error:
            click.echo(f"penline: {error}", err=True)
            ctx.exit(2)
        except Exception as error:
            if not _is_away(error):
                raise
            raise click.ClickException(f"the database cannot be used: {error}") from error


def _is_away(error: Exception) -> bool:
    """Whether that is the store's own word; it is loaded only now."""
    return isinstance(error, importlib.import_module("bot.store.errors").StoreAwayError)


@click.group(cls=LazyGroup, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="penline")
def penline() -> None:
    """Text or dictate the line on a chest-drain canister; get the volume to chart and what to look at."""
