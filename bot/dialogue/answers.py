"""What an answer means, by the question that it answers."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any, Final

from bot.dialogue import answers_levels as levels
from bot.dialogue import answers_places as places
from bot.dialogue.bedside import Bedside
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Amount, Answered, Report
from bot.dialogue.verdicts import (
    Retake,
    Verdict,
    heard,
    with_level,
)


def verdict(bedside: Bedside, pending: Pending, answer: Answered) -> Verdict:
    """What the answer means for the question."""
    turned = _turned(bedside, pending, answer)
    return turned or _BY_ASK[pending.ask](bedside, pending, answer)


_OWN_PLACE: Final = frozenset({Ask.BED, Ask.SLOT, Ask.READING, Ask.OCCUPIED})


def _turned(bedside: Bedside, pending: Pending, answer: Answered) -> Retake | None:
    """ "No, I meant bed 9": the same reading at another bed, tube or time, judged anew there."""
    said = pending.said
    if pending.ask in _OWN_PLACE or answer.yes is True or not isinstance(said, Report | Amount):
        return None
    changed: dict[str, Any] = {}
    tube = bedside.ledger(pending.drains[0]).tube if pending.drains else said.tube
    if answer.bed is not None and answer.bed != said.bed:
        changed["bed"] = answer.bed
    if (
        answer.tube is not None
        and pending.ask not in (Ask.TUBE, Ask.OTHER_TUBE)
        and answer.tube not in (tube, said.tube)
    ):
        changed["tube"] = answer.tube
    if answer.at is not None and answer.at != said.at:
        changed["at"] = answer.at
    if not changed:
        return None
    turned = replace(said, **changed)
    moved = turned if answer.level_ml is None else with_level(turned, answer.level_ml)
    return Retake(moved, heard(bedside, Grant()))


_BY_ASK: Final[Mapping[Ask, Callable[[Bedside, Pending, Answered], Verdict]]] = {
    Ask.DOUBT: levels.doubt,
    Ask.CONFLICT: levels.conflict,
    Ask.SILENCE: levels.silence,
    Ask.GONE: levels.gone,
    Ask.NOT_YET: levels.not_yet,
    Ask.CAME: levels.came,
    Ask.AMOUNT: levels.amount,
    Ask.LEVEL: levels.level,
    Ask.BED: places.bed,
    Ask.TUBE: places.tube,
    Ask.OTHER_TUBE: places.other_tube,
    Ask.SLOT: places.slot,
    Ask.READING: places.reading,
    Ask.HEARD: levels.heard_answer,
    Ask.FINAL: levels.final,
    Ask.OPENING: levels.opening,
    Ask.ON_OPEN: places.yes_no,
    Ask.CHANGED_AGAIN: places.yes_no,
    Ask.READ_ON: places.read_on,
    Ask.OTHER_LEVEL: levels.other_level,
    Ask.WHICH: places.which,
    Ask.SURE: places.yes_no,
    Ask.OCCUPIED: places.occupied,
    Ask.WHO: places.who,
}
