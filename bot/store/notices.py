"""A notice as it is kept: something that must reach a person who did not ask."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """What happened to which bed; `unconfirmed` when it rests on a reading that is still asked about."""

    unit: str
    bed: str | None
    drain: str | None
    code: str
    text: str
    queued_at: datetime
    message: str
    unconfirmed: bool = False
