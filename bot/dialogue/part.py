"""What one statement came to: its status, what it recorded, what it asks, and what is to be said of it."""

from __future__ import annotations

from dataclasses import dataclass

from bot.dialogue.answer import Status
from bot.engine.values import Caution, Level
from bot.store.questions import Question


@dataclass(frozen=True, slots=True, kw_only=True)
class BedCaution:
    """A caution and the bed that it is about."""

    bed: str
    caution: Caution


@dataclass(frozen=True, slots=True, kw_only=True)
class Recorded:
    """An entry that is read back once the whole message is recorded.

    `said_bed`: the bed as the nurse said it. `was`: the level that it puts right.
    """

    entry: str
    drain: str
    said_bed: str
    said_tube: str | None = None
    was: Level | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """The outcome of one statement: `text` is said as it is, `recorded` is worded at the end of the turn."""

    status: Status
    kind: str
    bed: str | None = None
    tube: str | None = None
    text: str = ""
    recorded: tuple[Recorded, ...] = ()
    entries: tuple[str, ...] = ()
    cautions: tuple[BedCaution, ...] = ()
    """Cautions that the text tells already."""
    beds: tuple[str, ...] = ()
    """Beds that it is about, beside its own."""
    tells_unconfirmed: bool = False
    """Whether the text names the unconfirmed readings of those beds itself."""
    question: Question | None = None
    tells_open: bool = False
    """Whether the text names the sender's open questions itself."""
    spelt: bool = False
    """Whether a voice says its amounts digit by digit."""
    answered: bool = False
    """An older question, asked again: it stays open as it is."""
    first: bool = False
    """Said before everything else (the final level of a canister that is about to be thrown away)."""
    last: str = ""
    """Said after the read-back."""
