"""Lines of a regular expression, with the groups that they name spelt out."""

from __future__ import annotations

from collections.abc import Mapping


def alternatives(lines: str, groups: Mapping[str, str]) -> str:
    """The lines as alternatives; "<wrong>" stands for the group of that name; groups may name others."""
    for _ in range(2):
        for name, meant in groups.items():
            lines = lines.replace(name, meant)
    return "|".join(lines.strip().splitlines())
