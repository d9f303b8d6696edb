"""`python -m bot` and the command `penline`."""

from __future__ import annotations

from bot.cli import penline


def main() -> None:
    """Run the command that was asked for."""
    penline(prog_name="penline")


if __name__ == "__main__":
    main()
