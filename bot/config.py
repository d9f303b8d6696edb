"""Reading a TOML file strictly: every mistake is named by file and key, and unknown keys are mistakes.

Used by `unit` and `settings`; knows nothing of what the keys mean.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TypeVar

T = TypeVar("T")


class ConfigError(Exception):
    """A setting that the program will not start with."""

    def __init__(self, file: str, key: str, why: str) -> None:
        super().__init__(f"{file}: {key}: {why}" if key else f"{file}: {why}")
        self.file = file
        self.key = key
        self.why = why


class Table:
    """One TOML table, read key by key; `done` refuses what nobody asked for."""

    def __init__(self, values: Mapping[str, object], file: str, path: str = "") -> None:
        self._left = dict(values)
        self._path = path
        self.file = file

    def error(self, key: str, why: str) -> ConfigError:
        """The error to raise about this key."""
        return ConfigError(self.file, f"{self._path}.{key}" if self._path else key, why)

    def taken(self, key: str, kind: type[T], default: T | None = None) -> T:
        """The value of the key, of this very type; the default where the file says nothing."""
        if key not in self._left:
            if default is None:
                raise self.error(key, "is missing")
            return default
        value = self._left.pop(key)
        if type(value) not in _taken_for(kind):
            raise self.error(key, f"must be {_NAMES.get(kind, kind.__name__)}, not {value!r}")
        return value  # type: ignore[return-value]

    def optional(self, key: str, kind: type[T]) -> T | None:
        """The value of the key, or None where the file says nothing."""
        return self.taken(key, kind) if key in self._left else None

    def whole(self, key: str, default: int, low: int, high: int) -> int:
        """A whole number within bounds."""
        value = self.taken(key, int, default)
        if not low <= value <= high:
            raise self.error(key, f"must be from {low} to {high}, not {value}")
        return value

    def one_of(self, key: str, allowed: Sequence[str], default: str | None = None) -> str:
        """One of the words that are allowed."""
        value = self.taken(key, str, default)
        if value not in allowed:
            raise self.error(key, f"must be {' or '.join(allowed)}, not {value!r}")
        return value

    def words(self, key: str, default: Sequence[str] | None = None) -> tuple[str, ...]:
        """A list of texts."""
        value = self.taken(key, list, None if default is None else list(default))
        if not all(isinstance(item, str) for item in value):
            raise self.error(key, "must be a list of texts")
        return tuple(value)

    def tables(self, key: str) -> tuple[Table, ...]:
        """The tables of an array of tables; none where the file has none."""
        rows = self.taken(key, list, [])
        if not all(isinstance(row, dict) for row in rows):
            raise self.error(key, f"must be written as [[{key}]] tables")
        return tuple(Table(row, self.file, f"{key}[{number}]") for number, row in enumerate(rows, start=1))

    def table(self, key: str) -> Table:
        """The table of that name; an empty one where the file has none."""
        return Table(self.taken(key, dict, {}), self.file, key)

    def has(self, key: str) -> bool:
        """Whether the file says something about the key that was not read yet."""
        return key in self._left

    def rest(self) -> dict[str, object]:
        """What has not been read yet, taken as a whole."""
        left, self._left = self._left, {}
        return left

    def peek(self, key: str) -> object:
        """The value of the key, of whatever type, left to be read."""
        return self._left.get(key)

    def done(self) -> None:
        """Refuse the keys that nobody asked for."""
        for key in self._left:
            raise self.error(key, "is not a key that is known here")


_NAMES: Mapping[type, str] = {
    str: "a text",
    int: "a whole number",
    bool: "true or false",
    list: "a list",
    dict: "a table",
    float: "a number",
}


def _taken_for(kind: type) -> tuple[type, ...]:
    """The types that are taken for one: a whole number for a number, too, but never a truth value."""
    return (float, int) if kind is float else (kind,)


def read_toml(path: Path) -> Table:
    """The file's top table. ConfigError when it cannot be read or is not TOML."""
    try:
        return Table(tomllib.loads(path.read_text("utf-8")), str(path))
    except OSError as error:
        raise ConfigError(str(path), "", f"cannot be read ({error.strerror})") from error
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise ConfigError(str(path), "", f"is not TOML: {error}") from error
