"""The cautions that a message raised, that still stand, or that it cleared, at the beds that it wrote to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.dialogue.answer import ChartRow
from bot.dialogue.bedside import Bedside
from bot.dialogue.part import BedCaution
from bot.engine.cautions import entry_cautions
from bot.engine.values import Caution, Severity
from bot.wording.cautions import MOST_OTHERS, by_severity, caution_text, cleared_text, more_text, told_once

TOLD_AGAIN = timedelta(hours=4)
"""A lesser caution that still stands, no worse, is told to the same person again only after this long."""

_READ_BACK = frozenset(
    {
        "no_boundary_line",
        "duplicate",
        "at_least",
        "amended",
        "time_conflict",
        "jump",
        "line_fell",
        "two_identifiers",
    }
)
"""What the read-back itself says already."""


@dataclass(frozen=True, slots=True, kw_only=True)
class News:
    """The lines of a reply, and the cautions that the answer object lists."""

    lines: tuple[str, ...] = ()
    cautions: tuple[BedCaution, ...] = ()


@dataclass(frozen=True, slots=True)
class _Line:
    bed: str
    caution: Caution
    still: bool
    worse: bool = False


def caution_news(bedside: Bedside, chart: Sequence[ChartRow]) -> News:
    """All news of the beds written to; what is urgent and new, or much worse, is queued for others.

    `chart`: the volumes that the message brings.
    """
    lines: list[_Line] = []
    cleared: list[str] = []
    several = len(bedside.patients_before) > 1
    charted = _of_the_chart(chart)
    for bed, before in bedside.patients_before.items():
        after = bedside.patient(bed)
        news = entry_cautions(before, after, bedside.now, bedside.policy)
        lines += [_Line(bed, each, False) for each in news.new if not _is_just_begun(bedside, each)]
        lines += [
            _Line(bed, each, _was_told(bedside, each), each in news.worse)
            for each in news.still
            if each in news.risen or each.code in charted or _is_due(bedside, each)
        ]
        if after.drains:
            shown = (each for each in news.cleared if each.code not in _READ_BACK)
            cleared += [cleared_text(each, bed=bed if several else None) for each in shown]
    for line in lines:
        _note(bedside, line)
    told = tuple(BedCaution(bed=line.bed, caution=line.caution) for line in lines)
    return News(lines=(*_texts(bedside, lines, several), *cleared), cautions=told)


def _is_just_begun(bedside: Bedside, caution: Caution) -> bool:
    """A tube told hours late has no line yet: its level is asked for in the same reply."""
    begun = bedside.before.get(caution.drain or "")
    return caution.code == "overdue" and begun is not None and not begun.entries


def _of_the_chart(rows: Sequence[ChartRow]) -> set[str]:
    """What the volumes of this message say of themselves: with them it is listed, however often it was."""
    told = {"at_least": any(row.at_least for row in rows), "amended": any(row.replaces for row in rows)}
    return {code for code, holds in told.items() if holds}


def _is_due(bedside: Bedside, caution: Caution) -> bool:
    """A standing URGENT is told every time, another when this person has not been told of late."""
    if caution.severity is Severity.HIGH:
        return True
    shown = _shown(bedside, caution, bedside.context.person.id)
    return shown is None or bedside.now - shown > TOLD_AGAIN


def _was_told(bedside: Bedside, caution: Caution) -> bool:
    """Whether anyone has heard of it: what only time has brought (an overdue line) is new at first."""
    return _shown(bedside, caution, None) is not None


def _shown(bedside: Bedside, caution: Caution, person: str | None) -> datetime | None:
    """When it was told since it began; what was told of an earlier one of its kind does not count."""
    shown = bedside.book.shown_at(caution.key, person)
    began = caution.begin
    return shown if shown is not None and (began is None or shown >= began) else None


def _note(bedside: Bedside, line: _Line) -> None:
    bedside.book.show(line.caution.key, bedside.context.person.id, bedside.now)
    if line.caution.severity is Severity.HIGH and (line.worse or not line.still):
        bedside.notify(BedCaution(bed=line.bed, caution=line.caution))


def _texts(bedside: Bedside, lines: list[_Line], several: bool) -> list[str]:
    zone = bedside.context.unit.zone
    worded: list[str] = []
    others = 0
    order = told_once(by_severity(line.caution for line in lines if line.caution.code not in _READ_BACK))
    for caution in order:
        line = next(each for each in lines if each.caution is caution)
        urgent = caution.severity is Severity.HIGH
        others += not urgent
        if urgent or others <= MOST_OTHERS:
            bed = line.bed if several else None
            worded.append(caution_text(caution, zone, bedside.now, bed=bed, still=line.still))
    more = others - MOST_OTHERS
    return [*worded, more_text(more, {line.bed for line in lines})] if more > 0 else worded
