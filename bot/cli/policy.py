"""`penline policy`: every row of a unit's policy, with its source, as a table or as plain lines."""

from __future__ import annotations

from pathlib import Path

import click
from rich.console import Console
from rich.table import Table

from bot.cli.unit_file import unit_option, unit_or_demo
from bot.engine.policy import Rule
from bot.wording.policy import HEADINGS, policy_row


@click.command("policy", help="Print the active policy: every rule, its number and whose it is.")
@unit_option
def command(unit: Path | None) -> None:
    """The policy of the unit, the rows that are off included and marked."""
    rules = unit_or_demo(unit).policy.rules
    console = Console(soft_wrap=True)
    if not console.is_terminal:
        for row in (HEADINGS, *map(policy_row, rules)):
            click.echo("\t".join(row))
        return
    console.print(_table(rules))


def _table(rules: tuple[Rule, ...]) -> Table:
    table = Table(title="Policy: defaults are overridden by the unit's own policy and the provider's orders")
    for heading in HEADINGS:
        table.add_column(heading, overflow="fold")
    styles = {"high": "bold red", "moderate": "yellow", "low": ""}
    for rule in rules:
        table.add_row(*policy_row(rule), style="dim strike" if not rule.on else styles[rule.severity])
    return table
