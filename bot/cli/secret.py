"""`penline secret`: a new signing secret, for the gateway and for PENLINE_SECRETS."""

from __future__ import annotations

import base64
import secrets

import click

SECRET_BYTES = 32


@click.command("secret")
def command() -> None:
    """Print a new signing secret."""
    click.echo(f"whsec_{base64.b64encode(secrets.token_bytes(SECRET_BYTES)).decode()}")
