"""An entry's payload as JSON and back, strictly: an unknown key, a missing one or a wrong type is refused.

The JSON is canonical (sorted keys, no spaces), so that one payload has one text on every engine and in
every export, and a hash of it means something.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import MISSING, Field, fields
from datetime import datetime
from enum import StrEnum
from functools import lru_cache
from types import UnionType
from typing import Any, Literal, TypeVar, Union, get_args, get_origin, get_type_hints

from bot.engine.entries import Payload
from bot.store.errors import LedgerError
from bot.store.moments import moment_of, moment_text

T = TypeVar("T")

KINDS: Mapping[str, type[Payload]] = {cls.kind: cls for cls in get_args(Payload)}


_CANONICAL = json.JSONEncoder(sort_keys=True, separators=(",", ":"), ensure_ascii=False, allow_nan=False)


def canonical(value: object) -> str:
    """The one JSON text of a value: sorted keys, no spaces."""
    return _CANONICAL.encode(value)


def encode(payload: Payload) -> str:
    """The payload's JSON; what is not known is left out."""
    held = {field.name: _plain(getattr(payload, field.name)) for field in fields(payload)}
    return canonical({name: value for name, value in held.items() if value is not None})


@lru_cache(maxsize=32_768)  # a turn reads whole ledgers, and most of their entries again and again
def decode(kind: str, text: str) -> Payload:
    """The payload that `encode` wrote, checked field by field."""
    try:
        cls: Any = KINDS[kind]
        held = json.loads(text)
        unknown = set(held) - {field.name for field in fields(cls)}
        if unknown:
            raise LedgerError(f"{kind}: unknown {', '.join(sorted(unknown))}")
        read = {field.name: _read(cls, field, held) for field in fields(cls) if _given(field, held)}
        payload: Payload = cls(**read)
    except (KeyError, TypeError, ValueError) as wrong:
        raise LedgerError(f"{kind}: {wrong}") from wrong
    return payload


def _plain(value: object) -> object:
    match value:
        case datetime():
            return moment_text(value)
        case StrEnum():
            return value.value
        case tuple():
            return list(value)
        case _:
            return value


def _given(field: Field[Any], held: Mapping[str, object]) -> bool:
    return field.name in held or field.default is MISSING


def _read(cls: Any, field: Field[Any], held: Mapping[str, object]) -> object:
    return _READERS[cls][field.name](held[field.name])


def _reader(hint: Any) -> Callable[[object], object]:
    """What turns a JSON value into a field of this type, or raises TypeError or ValueError."""
    origin, args = get_origin(hint), get_args(hint)
    if origin in (Union, UnionType):
        return _reader(next(arg for arg in args if arg is not type(None)))
    if origin is Literal:
        return lambda value: _one_of(value, args)
    if origin is tuple:
        return lambda value: tuple(_exactly(str, item) for item in _exactly(list, value))
    if hint is datetime:
        return lambda value: moment_of(_exactly(str, value))
    if issubclass(hint, StrEnum):
        return lambda value: hint(value)
    if hint is float:
        return lambda value: value if type(value) is int else _exactly(float, value)
    return lambda value: _exactly(hint, value)


def _one_of(value: object, allowed: tuple[object, ...]) -> object:
    if value not in allowed:
        raise ValueError(f"{value!r} is not one of {allowed}")
    return value


def _exactly(cls: type[T], value: object) -> T:
    if type(value) is not cls:
        raise TypeError(f"{value!r} is not {cls.__name__}")
    return value


_READERS: Mapping[type[Payload], Mapping[str, Callable[[object], object]]] = {
    cls: {name: _reader(hint) for name, hint in get_type_hints(cls).items() if name != "kind"}
    for cls in KINDS.values()
}
"""How each field of each kind is read, known from the start: it must not hang on who asks first."""
