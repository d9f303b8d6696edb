"""What a query gives back to the turn that asked it."""

from __future__ import annotations

from dataclasses import dataclass

from bot.dialogue.part import BedCaution


@dataclass(frozen=True, slots=True, kw_only=True)
class QueryReply:
    """The reply's lines, the first of which answers the question.

    `cautions` are those that the lines tell already; `beds` those that the reply is about.
    `tells_unconfirmed`: the lines name the unconfirmed readings of those beds themselves.
    """

    lines: tuple[str, ...]
    cautions: tuple[BedCaution, ...] = ()
    beds: tuple[str, ...] = ()
    tells_unconfirmed: bool = False

    @property
    def text(self) -> str:
        """The whole reply."""
        return "\n".join(self.lines)
