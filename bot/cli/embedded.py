"""A ward inside the terminal: one unit on a database of its own, answered by the very intake of the wire.

Nothing is signed here: whoever has the terminal says who is speaking.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from bot.intake import Incoming, handle
from bot.intake.respond import deployment
from bot.store import open_store
from bot.unit import Unit
from bot.wording import formats


@dataclass(frozen=True, slots=True, kw_only=True)
class Sent:
    """What someone sends; `sender` is a name of the unit's list, or a stranger's."""

    sender: str
    text: str
    arrived: datetime
    sent_at: datetime | None = None
    voice: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Computed:
    """A line under a reply: what the engine worked out. `severity` is empty where it is no caution."""

    text: str
    severity: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reply:
    """The parts of an answer object that a terminal shows."""

    text: str
    speech: str
    segments: int
    computed: tuple[Computed, ...]


class Ward:
    """A unit with an empty ledger, or with the one at `url`.

    `session` begins the ids of its messages; a kept ledger needs another one each time.
    """

    def __init__(self, unit: Unit, url: str = "sqlite://", session: str = "terminal") -> None:
        self.unit = unit
        self._session = session
        self._store = open_store(url)
        self._deployment = deployment((unit,), self._store)
        self._sent = 0

    def says(self, sent: Sent) -> Reply:
        """The bot's answer to what was sent, as a terminal shows it."""
        return _reply(self.answers(sent))

    def answers(self, sent: Sent) -> dict[str, Any]:
        """The answer object to what was sent."""
        self._sent += 1
        arrived = sent.arrived.astimezone(UTC)
        incoming = Incoming(
            id=f"{self._session}-{arrived:%Y%m%dT%H%M%S}-{self._sent}",
            sender=self.sender_id(sent.sender),
            text=sent.text,
            arrived=arrived,
            sent_at=sent.sent_at.astimezone(UTC) if sent.sent_at else None,
            channel="voice" if sent.voice else "text",
        )
        answer: dict[str, Any] = json.loads(handle(incoming, self._deployment).answer)
        return answer

    def sender_id(self, name: str) -> str:
        """The id that the gateway would send for this name; a stranger's is the name itself."""
        known = {person.name.casefold(): person.id for person in self.unit.people}
        return known.get(name.casefold(), name.casefold())

    def close(self) -> None:
        """Let go of the database."""
        self._store.close()


def _reply(answer: Mapping[str, Any]) -> Reply:
    computed = (*map(_charted, answer["chart"]), *map(_caution, answer["cautions"]))
    return Reply(
        text=answer["reply"], speech=answer["speech"], segments=answer["segments"], computed=computed
    )


def _charted(row: Mapping[str, Any]) -> Computed:
    begin, end = (datetime.fromisoformat(row[key]) for key in ("from", "to"))
    bed = " ".join(word for word in ("bed", row["bed"], row["tube"] or "") if word)
    at_least = "at least " if row["at_least"] else ""
    what = "amend" if row["replaces"] else "chart" if row["to_chart"] else "not to chart"
    amount = f"{what}: {bed}, {at_least}{formats.ml(row['volume_ml'])}"
    return Computed(text=f"{amount}, {begin:%H:%M} to {end:%H:%M}, {row['shift']} shift")


def _caution(told: Mapping[str, Any]) -> Computed:
    return Computed(
        text=f"{told['severity']}: {told['rule']} ({told['source']})", severity=str(told["severity"])
    )
