"""The dangers of readings that nobody has confirmed yet: told with every reply about their bed, to anyone.

They are reckoned anew on the ledger as it is now, from the statement that the question holds back.
"""

from __future__ import annotations

from collections.abc import Container, Iterator

from bot.dialogue.bedside import Bedside
from bot.dialogue.dangers import dangers_behind, in_question
from bot.dialogue.part import BedCaution, Part
from bot.dialogue.pending import NO_READING, Ask, Pending
from bot.dialogue.said import Slots
from bot.dialogue.said_json import loaded
from bot.store.questions import Question
from bot.wording.cautions import caution_text, told_once
from bot.wording.readback import pending_text


def feared(bedside: Bedside, question: Question, beds: Container[str]) -> tuple[BedCaution, ...]:
    """The cautions of high severity that the question's reading would raise at these beds, were it right."""
    pending = loaded(question.said_json, Pending)
    if pending.ask in NO_READING:
        return ()
    said = () if pending.ask is Ask.LEVEL else (pending.said,)  # where the level is asked, it was misread
    drains = pending.drains or ((question.drain,) if question.drain is not None else ())
    found: dict[str, BedCaution] = {}
    for reading in pending.readings or said or (None,):
        first = in_question(reading, question.asked_at) if isinstance(reading, Slots) else reading
        told = tuple(each for each in (first, *pending.rest) if each is not None)
        held = dangers_behind(bedside, told, drains=drains, target=pending.grant.target, beds=beds)
        found |= {each.caution.key: each for each in held}
    return tuple(found.values())


def feared_at(bedside: Bedside, beds: Container[str]) -> Iterator[tuple[Question, tuple[BedCaution, ...]]]:
    """Each unsettled question that holds back a danger at one of these beds, with what it is."""
    for question in bedside.book.unsettled():
        held = feared(bedside, question, beds)
        if held:
            yield question, held


def feared_lines(bedside: Bedside, question: Question, held: tuple[BedCaution, ...]) -> list[str]:
    """ "URGENT if right, bed 12: 620 mL ...", and which reading it is while its question is open."""
    zone = bedside.context.unit.zone
    lines = [caution_text(each.caution, zone, bedside.now, bed=each.bed) for each in held]
    if question.lapsed(bedside.now) or question.sender == bedside.context.person.id:
        return lines  # the reading is named as unconfirmed, or as what its sender has not answered
    told = loaded(question.said_json, Pending).brief
    return [*lines, pending_text(told, question.asked_at, question.sender, bedside.view)]


def feared_told(
    bedside: Bedside, parts: list[Part], beds: Container[str], said: str
) -> tuple[list[str], tuple[BedCaution, ...]]:
    """The lines and cautions that the reply about these beds lacks; `said`: its text so far."""
    asked = {part.question.id for part in parts if part.question is not None}
    lines: list[str] = []
    cautions: list[BedCaution] = []
    told = {(each.bed, each.caution.key) for part in parts for each in part.cautions if each.caution.if_right}
    for question, held in feared_at(bedside, beds):
        new = tuple(each for each in held if (each.bed, each.caution.key) not in told)
        if question.id in asked or not new:
            continue
        cautions += new
        once = told_once(each.caution for each in new)
        worded = tuple(each for each in new if each.caution in once)
        if not all(bedside.caution_line(each) in said for each in worded):
            lines += [line for line in feared_lines(bedside, question, worded) if line not in said]
    return lines, tuple(cautions)
