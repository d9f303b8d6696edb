"""The whole answer to a message: what is read back, charted, cautioned, asked and reminded of, in that order.

Worded once everything is recorded, so that a list of lines in any order is read back with its final volumes.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from bot.dialogue.answer import Answer, Asked, Option, Result, Status, Told
from bot.dialogue.bedside import Bedside
from bot.dialogue.charting import amend_lines, chart_rows
from bot.dialogue.feared import feared_told
from bot.dialogue.late import LONG_ON_ITS_WAY
from bot.dialogue.news import caution_news
from bot.dialogue.part import BedCaution, Part
from bot.dialogue.reading_back import read_back, shift_lines
from bot.dialogue.reminders import beds_of, reminder_lines, unconfirmed_told
from bot.engine.entries import Exchanged
from bot.store.questions import Question
from bot.wording import help as help_words
from bot.wording.checklist import exchange_checklist
from bot.wording.gsm import gsm_only, segments
from bot.wording.readback import sent_text
from bot.wording.speech import spoken

_AMOUNT = re.compile(r"\d[\d,]*(?= mL)")


def composed(bedside: Bedside, parts: list[Part]) -> Answer:
    """The answer object."""
    chart = chart_rows(bedside)
    news = caution_news(bedside, chart)
    waiting = unconfirmed_told(bedside, parts)
    stated, amended = _statements(bedside, parts), amend_lines(bedside)
    said = "\n".join((*stated, *news.lines))
    urgent, fears = feared_told(bedside, parts, beds_of(bedside, parts), said)
    lines = [*urgent, *stated] if bedside.patients_before == {} else [*stated, *amended, *urgent]
    lines += [*news.lines, *waiting.lines]
    lines += _checklist(bedside, parts)
    lines += [*reminder_lines(bedside, parts), *_late(bedside, parts), *_first(bedside, parts)]
    told = dict.fromkeys(line for line in "\n".join(lines).split("\n") if line)
    reply = gsm_only("\n".join(told))
    own = (caution for part in parts for caution in part.cautions)
    cautions = (*own, *fears, *news.cautions, *waiting.cautions)
    return Answer(
        id=bedside.context.message_id,
        status=_status(parts),
        reply=reply,
        speech=_speech(bedside, parts, reply),
        segments=segments(reply),
        results=tuple(_result(part) for part in parts if part.kind not in ("replaced", "note")),
        chart=chart,
        cautions=tuple(_told(bedside, each) for each in cautions),
        questions=tuple(_asked(question) for question in _questions(parts)),
    )


def _statements(bedside: Bedside, parts: list[Part]) -> list[str]:
    """Each statement's sentences; a final level that is asked for comes first, the shift's sum after."""
    first = [part.text for part in parts if part.first]
    lines: list[str] = []
    for part in parts:
        lines += read_back(bedside, part)
        lines += [] if part.first else [part.text]
    lines += shift_lines(bedside, parts)
    return [*first, *lines, *dict.fromkeys(part.last for part in parts)]


def _checklist(bedside: Bedside, parts: list[Part]) -> list[str]:
    """With the recording of an exchange, once; not again when its final level comes later."""
    rows = (bedside.ledger(row.drain).effective(row.entry) for part in parts for row in part.recorded)
    changed = any(entry is not None and isinstance(entry.payload, Exchanged) for entry in rows)
    return [exchange_checklist()] if changed and bedside.context.unit.checklists else []


def _speech(bedside: Bedside, parts: list[Part], reply: str) -> str:
    """The reply for a voice: to someone who dictates, without what can be asked for."""
    if any(part.spelt for part in parts):
        reply = _spelt(reply)
    if bedside.context.channel == "voice":
        left_out = {*shift_lines(bedside, parts), *_first(bedside, parts), *_checklist(bedside, parts)}
        reply = "\n".join(line for line in reply.split("\n") if line not in left_out)
    return spoken(reply)


def _spelt(reply: str) -> str:
    """The amounts digit by digit, so that fifteen and fifty cannot be mistaken."""
    return _AMOUNT.sub(lambda found: " ".join(found[0].replace(",", "")), reply)


def _status(parts: list[Part]) -> Status:
    if any(part.question is not None for part in parts):
        return "question"
    if any(part.entries or part.status == "recorded" for part in parts):
        return "recorded"
    return "refused" if any(part.status == "refused" for part in parts) else "told"


def _result(part: Part) -> Result:
    return Result(status=part.status, bed=part.bed, tube=part.tube, kind=part.kind, entries=part.entries)


def _questions(parts: Iterable[Part]) -> tuple[Question, ...]:
    held = {part.question.id: part.question for part in parts if part.question is not None}
    return tuple(held.values())


def _asked(question: Question) -> Asked:
    return Asked(
        id=question.id,
        bed=question.bed,
        tube=None,
        slot=question.slot,
        text=question.text,
        choices=tuple(Option(say=choice.say, label=choice.label) for choice in question.choices),
    )


def _told(bedside: Bedside, told: BedCaution) -> Told:
    caution = told.caution
    return Told(
        code=caution.code,
        severity=caution.severity.value,
        bed=told.bed,
        tube=caution.tube,
        text=bedside.caution_line(told),
        rule=caution.rule,
        source=caution.source,
        if_right=caution.if_right,
    )


def _late(bedside: Bedside, parts: list[Part]) -> list[str]:
    context = bedside.context
    if (
        context.sent_at is None
        or context.late_by <= LONG_ON_ITS_WAY
        or not any(part.entries for part in parts)
    ):
        return []
    return [sent_text(context.sent_at, context.now, bedside.view)]


def _first(bedside: Bedside, parts: list[Part]) -> list[str]:
    """The way to the help, once; not in the help itself, nor to someone who may not write."""
    if any(part.kind in ("help", "refused") for part in parts):
        return []
    return [help_words.FIRST] if bedside.book.first_message(bedside.context.sender) else []
