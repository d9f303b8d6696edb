"""How Penline is deployed: database, secrets, address, units, limits. Frozen, and checked at start.

From the environment (`PENLINE_...`) and, under it, one TOML file with the same names in lower case.
Secrets come from the environment or from files of their own, never from the settings file.
"""

from __future__ import annotations

import base64
import binascii
import ipaddress
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import urlsplit

from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError

from bot.config import ConfigError, Table, read_toml

SAMPLE_SECRET = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw"
"""Printed in the Standard Webhooks specification: everyone knows it."""

LEAST_SECRET_BYTES = 24
MOST_SECRET_BYTES = 64
MOST_SECRETS = 2

ENVIRONMENT = "the environment"

_ADDRESS = re.compile(r"(?P<scheme>https?)://(?P<host>[A-Za-z0-9.-]+|\[[0-9a-f:]+\])(:\d{1,5})?")


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """A deployment. `secrets` are `whsec_...`, the current one and, while it is changed, the one before."""

    database_url: str = "sqlite://"
    secrets: tuple[str, ...] = field(default=(), repr=False)
    units: tuple[Path, ...] = ()
    host: str = "127.0.0.1"
    port: int = 8080
    threads: int = 8
    sender_per_minute: int = 600
    per_second: int = 2000
    trusted_proxy: str | None = None
    metrics: bool = False
    address: str | None = None
    """Where people reach it: the pages are there, and replies carry links, only where this is told."""
    link_min: int = 60
    notify_url: str | None = None
    """Where notices are sent; `notify_secrets` sign them, in the same form as `secrets`."""
    notify_secrets: tuple[str, ...] = field(default=(), repr=False)
    notify_retry_s: int = 5


def settings_from(environ: Mapping[str, str], file: Path | None = None) -> Settings:
    """The settings of this environment over those of the file. ConfigError names key and place."""
    table = read_toml(file) if file is not None else Table({}, ENVIRONMENT)
    reader = _Reader(environ, table)
    settings = Settings(
        database_url=_database(reader),
        secrets=_secrets(reader),
        units=_units(reader, file),
        host=reader.text("host", "127.0.0.1"),
        port=reader.whole("port", 8080, 0, 65535),
        threads=reader.whole("threads", 8, 1, 64),
        sender_per_minute=reader.whole("sender_per_minute", 600, 1, 1_000_000),
        per_second=reader.whole("per_second", 2000, 1, 1_000_000),
        trusted_proxy=_proxy(reader),
        metrics=reader.flag("metrics"),
        address=_address(reader),
        link_min=reader.whole("link_min", 60, 1, 24 * 60),
        notify_url=_notify_url(reader),
        notify_secrets=_secrets(reader, "notify_"),
        notify_retry_s=reader.whole("notify_retry_s", 5, 1, 60),
    )
    table.done()
    return settings


class _Reader:
    """One key at a time: the environment's word, else the file's, else the default."""

    def __init__(self, environ: Mapping[str, str], table: Table) -> None:
        self._environ = environ
        self._table = table

    def error(self, key: str, why: str) -> ConfigError:
        """The error about this key, naming where its value came from."""
        name = _variable(key)
        if name in self._environ or self._table.file == ENVIRONMENT:
            return ConfigError(ENVIRONMENT, name, why)
        return self._table.error(key, why)

    def variable(self, key: str) -> str | None:
        """What the environment alone says."""
        return self._environ.get(_variable(key))

    def text(self, key: str, default: str) -> str:
        """A text, not empty."""
        held = self._table.taken(key, str, default)
        value = self._environ.get(_variable(key), held).strip()
        if not value:
            raise self.error(key, "is empty")
        return value

    def whole(self, key: str, default: int, low: int, high: int) -> int:
        """A whole number within bounds."""
        held = self._table.whole(key, default, low, high)
        said = self.variable(key)
        if said is None:
            return held
        if not (said.isascii() and said.isdigit() and low <= int(said) <= high):
            raise self.error(key, f"must be a whole number from {low} to {high}, not {said!r}")
        return int(said)

    def flag(self, key: str) -> bool:
        """True or false."""
        held = self._table.taken(key, bool, False)
        said = self.variable(key)
        if said is not None and said not in ("true", "false"):
            raise self.error(key, f"must be true or false, not {said!r}")
        return held if said is None else said == "true"

    def paths(self, key: str) -> tuple[str, ...]:
        """A list of files; in the environment with commas between."""
        held = self._table.words(key, ())
        said = self.variable(key)
        return held if said is None else tuple(part.strip() for part in said.split(",") if part.strip())


def _variable(key: str) -> str:
    return f"PENLINE_{key.upper()}"


def _database(reader: _Reader) -> str:
    url = reader.text("database_url", "sqlite:///penline.sqlite")
    try:
        backend = make_url(url).get_backend_name()
    except ArgumentError as error:
        raise reader.error("database_url", "is not a database URL") from error
    if backend not in ("sqlite", "postgresql"):
        raise reader.error("database_url", f"must be sqlite or postgresql, not {backend}")
    return url


def _units(reader: _Reader, file: Path | None) -> tuple[Path, ...]:
    """The unit files; those named in the settings file are looked for beside it."""
    home = file.parent if file is not None and reader.variable("units") is None else Path()
    return tuple(home / path for path in reader.paths("units"))


def _secrets(reader: _Reader, of: str = "") -> tuple[str, ...]:
    """The live secrets, from the environment or from the files that `secret_files` names."""
    files = reader.paths(f"{of}secret_files")
    said = (reader.variable(f"{of}secrets") or "").split()
    secrets = (*said, *(line for name in files for line in _secret_file(Path(name))))
    key = f"{of}secret_files" if files and not said else f"{of}secrets"
    for secret in secrets:
        flaw = secret_flaw(secret)
        if flaw:
            raise reader.error(key, flaw)
    if len(secrets) > MOST_SECRETS:
        raise reader.error(key, f"at most {MOST_SECRETS} secrets are live at once")
    return tuple(secrets)


def _secret_file(path: Path) -> list[str]:
    try:
        return path.read_text("ascii").split()
    except (OSError, UnicodeDecodeError) as error:
        raise ConfigError(str(path), "", "cannot be read as a secret") from error


def secret_flaw(secret: str) -> str | None:
    """What is wrong with a signing secret; None for a sound one. The secret itself is never told."""
    if secret == SAMPLE_SECRET:
        return "is the sample secret of the specification: make your own"
    try:
        key = base64.b64decode(secret.removeprefix("whsec_"), validate=True)
    except (binascii.Error, ValueError):
        return "a secret is whsec_ and base64"
    if not secret.startswith("whsec_"):
        return "a secret is whsec_ and base64"
    if not LEAST_SECRET_BYTES <= len(key) <= MOST_SECRET_BYTES:
        return f"a secret is {LEAST_SECRET_BYTES} to {MOST_SECRET_BYTES} bytes long, not {len(key)}"
    return None


def _proxy(reader: _Reader) -> str | None:
    """The address of the one proxy whose headers are believed; none unless set."""
    said = reader.text("trusted_proxy", "none")
    if said == "none":
        return None
    try:
        return str(ipaddress.ip_address(said))
    except ValueError as error:
        raise reader.error("trusted_proxy", "must be the proxy's IP address") from error


def _address(reader: _Reader) -> str | None:
    """The public address, with nothing behind the host; in clear text only on this machine."""
    said = reader.text("address", "none").rstrip("/")
    if said == "none":
        return None
    found = _ADDRESS.fullmatch(said)
    if found is None:
        raise reader.error("address", "must be such as https://penline.example.org, with no path")
    if found["scheme"] == "http" and not is_loopback(found["host"].strip("[]")):
        raise reader.error("address", "must be https: what is read there is not for the road")
    return said


def _notify_url(reader: _Reader) -> str | None:
    """The gateway's address; in clear text only on this machine, and with nobody's password in it."""
    said = reader.text("notify_url", "none")
    if said == "none":
        return None
    parts = urlsplit(said)
    if parts.scheme not in ("http", "https") or not parts.hostname or parts.username is not None:
        raise reader.error("notify_url", "must be such as https://gateway.example.org/notices")
    if parts.scheme == "http" and not is_loopback(parts.hostname):
        raise reader.error("notify_url", "must be https: what is sent there is not for the road")
    return said


def check_ready_to_deliver(settings: Settings) -> None:
    """Refuse to send notices without an address, a secret to sign them with, or a unit."""
    if settings.notify_url is None:
        raise ConfigError(ENVIRONMENT, "PENLINE_NOTIFY_URL", "there is no address to send notices to")
    if not settings.notify_secrets:
        raise ConfigError(ENVIRONMENT, "PENLINE_NOTIFY_SECRETS", "there is no secret to sign notices with")
    if not settings.units:
        raise ConfigError(ENVIRONMENT, "PENLINE_UNITS", "no unit file is named")


def check_ready_to_serve(settings: Settings) -> None:
    """Refuse to open a port without what keeps strangers out, or without a unit."""
    if not settings.secrets:
        raise ConfigError(ENVIRONMENT, "PENLINE_SECRETS", _no_secret(settings.host))
    if not settings.units:
        raise ConfigError(ENVIRONMENT, "PENLINE_UNITS", "no unit file is named")


def _no_secret(host: str) -> str:
    where = "" if is_loopback(host) else f", and {host} can be reached from outside"
    return f"there is no signing secret{where}"


def is_loopback(host: str) -> bool:
    """Whether only this machine reaches that host."""
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"
