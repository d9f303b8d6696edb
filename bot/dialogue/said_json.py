"""What a question keeps of its statement, as JSON text and back, so that an answer finds it after a restart.

Every dataclass is written with its name and read back only if it is one of ours: a stored question of a
later or broken version is refused (`ValueError`) and never half understood.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import fields, is_dataclass
from datetime import UTC, datetime, timedelta
from enum import StrEnum
from functools import lru_cache
from typing import Any, TypeVar, get_args

from bot.dialogue.said import Fact, NotSure, Said, Slots
from bot.engine.entries import Reason, What

_IS = "is"
_CLASSES: dict[str, type] = {cls.__name__: cls for cls in (*get_args(Said), *get_args(Fact), Slots, NotSure)}
_ENUMS: dict[str, type[StrEnum]] = {cls.__name__: cls for cls in (Reason, What)}

T = TypeVar("T")


def known(classes: Iterable[type]) -> None:
    """Add dataclasses and enums that a stored question may hold; called where they are defined."""
    for cls in classes:
        if issubclass(cls, StrEnum):
            _ENUMS[cls.__name__] = cls
        else:
            _CLASSES[cls.__name__] = cls


def dumped(value: object) -> str:
    """The JSON text of a statement or of anything made of statements."""
    return json.dumps(_plain(value), sort_keys=True, separators=(",", ":"))


def loaded(text: str, kind: type[T]) -> T:
    """The value that `dumped` wrote; `ValueError` when it is not one, or not of this kind."""
    try:
        value = _of_text(text)
    except (KeyError, TypeError) as wrong:
        raise ValueError(f"not a stored statement: {wrong}") from wrong
    if not isinstance(value, kind):
        raise ValueError(f"not a stored {kind.__name__}")
    return value


@lru_cache(maxsize=4096)  # every message of a unit reads all that waits there; none of it ever changes
def _of_text(text: str) -> object:
    return _value(json.loads(text))


def _plain(value: object) -> object:
    match value:
        case StrEnum():
            return {_IS: type(value).__name__, "value": value.value}
        case datetime():
            return {_IS: "moment", "value": value.astimezone(UTC).isoformat()}
        case timedelta():
            return {_IS: "stretch", "value": [value.days, value.seconds, value.microseconds]}
        case tuple() | list():
            return [_plain(item) for item in value]
        case None | bool() | int() | float() | str():
            return value
    if is_dataclass(value) and type(value).__name__ in _CLASSES:
        held = {field.name: _plain(getattr(value, field.name)) for field in fields(value)}
        return {_IS: type(value).__name__, **held}
    raise TypeError(f"{type(value).__name__} is never stored with a question")


def _value(held: Any) -> Any:
    match held:
        case list():
            return tuple(_value(item) for item in held)
        case {"is": "moment", "value": str(text)}:
            return datetime.fromisoformat(text).astimezone(UTC)
        case {"is": "stretch", "value": [days, seconds, micros]}:
            return timedelta(days=days, seconds=seconds, microseconds=micros)
        case {"is": str(name), "value": value} if name in _ENUMS:
            return _ENUMS[name](value)
        case {"is": str(name), **parts}:
            return _CLASSES[name](**{str(key): _value(part) for key, part in parts.items()})
        case dict():
            raise ValueError("a stored value without its name")
        case _:
            return held
