"""What is asked before a level is recorded: the engine's doubts that the nurse has not settled yet.

A yes settles the doubts that were asked, against the lines that they were asked against: when another
nurse's line has come in between, the doubt is a new one and is asked again.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.dangers import dangers_of
from bot.dialogue.locate import Spot
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Fix, Report
from bot.engine.admit import doubts
from bot.engine.entries import Correction, Exchanged, FinalLevel, Line
from bot.engine.ledger import Ledger
from bot.engine.values import Doubt, Level
from bot.wording import questions
from bot.wording.questions import Doubted, Wording

_ORDER = ("time_conflict", "long_silence", "line_fell", "over_capacity", "jump")
_OF_THE_LEVEL = frozenset({"line_fell", "over_capacity", "jump"})
"""Whoever says that the level is right has said it of all of these."""


def mark_of(doubt: Doubt, level_ml: int, since: Level | None) -> str:
    """The doubt's name: what, against which lines; `since` is the line that follows the reading."""
    before = doubt.before.entry if doubt.before else ""
    after = doubt.after or since
    return f"{doubt.code}:{before}:{after.entry if after else ''}:{level_ml}"


def admitted(
    bedside: Bedside, ledger: Ledger, line: Line | FinalLevel, at: datetime, grant: Grant
) -> tuple[Line | FinalLevel, tuple[Doubt, ...]]:
    """The level with the codes that the nurse was asked about and kept, and the doubts still to ask."""
    every = doubts(ledger, bedside.next_entry(ledger, at, line), bedside.policy)
    kept, open_doubts = _settled(every, line.level_ml, ledger.level_after(at), grant)
    return _keeping(line, kept), open_doubts


def admitted_final(
    bedside: Bedside, spot: Spot, said: Report, final_ml: int, grant: Grant
) -> tuple[Line | FinalLevel, tuple[Doubt, ...]]:
    """The same for the final level, in mL, that an exchange or a removal is told with."""
    ledger, final = spot.ledger or bedside.ledger(""), FinalLevel(level_ml=final_ml)
    exchange = said.fact if isinstance(said.fact, Exchanged) else None
    every = doubts(ledger, bedside.next_entry(ledger, spot.at, final), bedside.policy, exchange)
    kept, open_doubts = _settled(every, final_ml, ledger.level_after(spot.at), grant)
    return _keeping(final, kept), open_doubts


def _keeping(line: Line | FinalLevel, kept: tuple[str, ...]) -> Line | FinalLevel:
    return replace(line, accepted=tuple(dict.fromkeys((*line.accepted, *kept)))) if kept else line


def admitted_correction(
    bedside: Bedside, ledger: Ledger, correction: Correction, level_ml: int, grant: Grant
) -> tuple[Correction, tuple[Doubt, ...]]:
    """The same for a correction, judged on the ledger without the level that was wrong."""
    every = doubts(ledger, bedside.next_entry(ledger, bedside.now, correction), bedside.policy)
    kept, open_doubts = _settled(every, level_ml, None, grant)
    return replace(correction, accepted=kept), open_doubts


def _settled(
    every: tuple[Doubt, ...], level_ml: int, since: Level | None, grant: Grant
) -> tuple[tuple[str, ...], tuple[Doubt, ...]]:
    """The codes that the nurse kept, and the doubts still to ask, the gravest first."""
    known = tuple(each for each in every if each.code in _ORDER and not _is_read_on(each, grant))
    kept = tuple(each.code for each in known if mark_of(each, level_ml, since) in grant.accepted)
    left = (each for each in known if mark_of(each, level_ml, since) not in grant.accepted)
    return tuple(dict.fromkeys(kept)), tuple(sorted(left, key=lambda each: _ORDER.index(each.code)))


def _is_read_on(doubt: Doubt, grant: Grant) -> bool:
    """The line behind an exchange, which the nurse was asked about and kept on the new canister."""
    return doubt.after is not None and read_on_mark(doubt.after) in grant.accepted


def read_on_mark(behind: Level) -> str:
    """What a yes to "was it read on the new canister?" accepts."""
    return f"read_on:{behind.entry}"


def ask_doubt(
    bedside: Bedside,
    spot: Spot,
    said: Report | Fix,
    line: Line | FinalLevel,
    open_doubts: tuple[Doubt, ...],
    grant: Grant,
) -> Part:
    """The question about a level, with the danger that it would mean."""
    first = open_doubts[0]
    together = tuple(each for each in open_doubts if each.code in _OF_THE_LEVEL)
    together = together if first.code in _OF_THE_LEVEL else (first,)
    read = _doubted(spot, said, line)
    neighbours = tuple(level.entry for level in (first.before, first.after) if level is not None)
    pending = Pending(
        ask=_ASKS.get(first.code, Ask.DOUBT),
        said=said,
        grant=grant,
        asked=tuple(mark_of(each, line.level_ml, read.since) for each in together),
        targets=neighbours,
        drains=(spot.ledger.drain,) if spot.ledger else (),
    )
    return bedside.ask(
        pending,
        _wording(bedside, read, together),
        About(
            bed=spot.bed,
            tube=spot.tube,
            drain=spot.ledger.drain if spot.ledger else None,
            slot="at" if first.code == "time_conflict" else "level_ml",
            kind="corrected" if isinstance(said, Fix) else said.fact.kind,
        ),
        dangers=dangers_of(bedside, said, spot.ledger, grant.target) if spot.ledger else (),
    )


def _doubted(spot: Spot, said: Report | Fix, line: Line | FinalLevel) -> Doubted:
    """The reading, with the line that follows it: another nurse's may have come since."""
    is_new = spot.ledger is not None and not isinstance(said, Fix)
    return Doubted(
        where=spot.where(),
        at=spot.at,
        level_ml=line.level_ml,
        final=isinstance(line, FinalLevel),
        since=spot.ledger.level_after(spot.at) if spot.ledger and is_new else None,
    )


_ASKS = {"time_conflict": Ask.CONFLICT, "long_silence": Ask.SILENCE}


def _wording(bedside: Bedside, read: Doubted, together: tuple[Doubt, ...]) -> Wording:
    first = together[0]
    match first.code:
        case "line_fell":
            return questions.fell(read, first, bedside.view)
        case "time_conflict" if first.before is not None:
            return questions.conflict(read, first.before, bedside.view)
        case "long_silence" if first.before is not None:
            return questions.silence(read, first.before, bedside.view)
        case _:
            return questions.over(read, together, bedside.view)
