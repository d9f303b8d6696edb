"""Addresses that open something for a while: a picture of a trend, or the pages of one person.

Signed with the deployment's live secrets by itsdangerous; they hold no name, no bed and no level. What they
open and until when is in them, so nothing is stored. Pure: the moment is an argument.
"""

from __future__ import annotations

import base64
import binascii
import hashlib
import hmac
import struct
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from itsdangerous import BadSignature, Signer

DOOR_MIN = 15
"""How long a link to the pages can be opened. Whoever has it is that person until then: so, not long."""
LONGEST_TOKEN = 400
MOST_DRAINS = 8

_TREND, _DOOR = "penline.trend", "penline.door"
_HEAD = struct.Struct(">III")
_UNTIL = struct.Struct(">I")
_DRAIN_BYTES, _PERSON_BYTES = 8, 16


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """The picture that a link opens: which drains, from when, to when (None: to the moment it is opened)."""

    drains: tuple[str, ...]
    begin: datetime
    end: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Link:
    """An address, and when it stops to open."""

    url: str
    until: datetime


class Links:
    """Makes the links of this deployment, and reads those that it made.

    `secrets` are the live ones, the current first: a link signed with the one before still opens.
    """

    def __init__(self, address: str, secrets: tuple[str, ...], minutes: int = 60) -> None:
        self.address = address.rstrip("/")
        self._secrets = secrets
        self._open_for = timedelta(minutes=minutes)
        self.door_open_for = timedelta(minutes=DOOR_MIN)

    def trend(self, shown: Shown, now: datetime) -> Link:
        """A link to the picture. It ends at a full five minutes, so that it stays the same for a while."""
        until = _full_five(now + self._open_for)
        end = 0 if shown.end is None else _seconds(shown.end)
        head = _HEAD.pack(_seconds(until), _seconds(shown.begin), end)
        body = head + b"".join(map(bytes.fromhex, shown.drains[:MOST_DRAINS]))
        return Link(url=f"{self.address}/trend/{self._signed(_TREND, body)}", until=until)

    def shown(self, token: str, now: datetime) -> Shown | None:
        """What the link's last part opens; None when it is not ours, or opens no longer."""
        body = self._body(_TREND, token)
        if body is None or len(body) < _HEAD.size or _over(body, now):
            return None
        _, begin, end = _HEAD.unpack_from(body)
        rest = body[_HEAD.size :]
        return Shown(
            drains=tuple(rest[at : at + _DRAIN_BYTES].hex() for at in range(0, len(rest), _DRAIN_BYTES)),
            begin=_moment(begin),
            end=_moment(end) if end else None,
        )

    def door(self, unit: str, person: str, now: datetime) -> Link:
        """A link to the pages for someone on that unit's list."""
        until = now + self.door_open_for
        body = _UNTIL.pack(_seconds(until)) + _mark(self._secrets[0], unit, person)
        return Link(url=f"{self.address}/enter/{self._signed(_DOOR, body)}", until=until)

    def person(self, token: str, now: datetime, people: Iterable[tuple[str, str]]) -> tuple[str, str] | None:
        """Whose link that is, among these (unit, person); None when it is nobody's, or opens no longer."""
        body = self._body(_DOOR, token)
        if body is None or len(body) != _UNTIL.size + _PERSON_BYTES or _over(body, now):
            return None
        mark = body[_UNTIL.size :]
        for unit, person in people:
            if any(hmac.compare_digest(mark, _mark(secret, unit, person)) for secret in self._secrets):
                return unit, person
        return None

    def _signed(self, purpose: str, body: bytes) -> str:
        return self._signer(purpose).sign(base64.urlsafe_b64encode(body).rstrip(b"=")).decode("ascii")

    def _body(self, purpose: str, token: str) -> bytes | None:
        if len(token) > LONGEST_TOKEN or not token.isascii():
            return None
        try:
            told = self._signer(purpose).unsign(token)
            return base64.urlsafe_b64decode(told + b"=" * (-len(told) % 4))
        except (BadSignature, binascii.Error):
            return None

    def _signer(self, purpose: str) -> Signer:
        """The library signs with the last of its keys, and takes any."""
        keys = [secret.encode("ascii") for secret in reversed(self._secrets)]
        return Signer(keys, salt=purpose, key_derivation="hmac", digest_method=hashlib.sha256)


def _mark(secret: str, unit: str, person: str) -> bytes:
    """Stands for a person in a link, and tells a stranger nothing of who that is."""
    name = f"{_DOOR}\0{unit}\0{person}".encode()
    return hmac.digest(secret.encode("ascii"), name, "sha256")[:_PERSON_BYTES]


def _over(body: bytes, now: datetime) -> bool:
    until: int = _UNTIL.unpack_from(body)[0]
    return _seconds(now) >= until


def _full_five(moment: datetime) -> datetime:
    return _moment(-(-_seconds(moment) // 300) * 300)


def _seconds(moment: datetime) -> int:
    return int(moment.timestamp())


def _moment(seconds: int) -> datetime:
    return datetime.fromtimestamp(seconds, UTC)
