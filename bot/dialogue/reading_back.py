"""Each recorded entry of a message in the words of its read-back, on the ledger at the end of the turn."""

from __future__ import annotations

from datetime import datetime

from bot.dialogue.bedside import Bedside
from bot.dialogue.charting import closing_of, is_amended, is_closed
from bot.dialogue.part import Part, Recorded
from bot.dialogue.targets import repeat_of
from bot.engine.entries import Left
from bot.engine.ledger import Ledger
from bot.engine.shifts import boundary, shift_at, shift_sum
from bot.engine.values import Interval, Level, Shift
from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.rows import row_text
from bot.wording.readback import LineRead, Where, fact_text, fixed_text, former_text, line_text, shift_text


def read_back(bedside: Bedside, part: Part) -> list[str]:
    """The sentences of what one statement recorded; what happened at one moment is one line."""
    lines: list[str] = []
    last: tuple[str, datetime] | None = None
    for recorded in part.recorded:
        ledger = bedside.ledger(recorded.drain)
        entry = ledger.effective(recorded.entry)
        if entry is None:
            continue
        if last == (recorded.drain, entry.at) and ledger.level_of(recorded.entry) is None:
            lines[-1] = gsm_only(f"{lines[-1]} {formats.capital(row_text(entry.payload))}.")
        else:
            lines.append(_sentence(bedside, ledger, recorded))
        last = (recorded.drain, entry.at)
    return lines


def _sentence(bedside: Bedside, ledger: Ledger, recorded: Recorded) -> str:
    where = Where(bed=recorded.said_bed, tube=_tube(ledger, recorded), now_bed=ledger.bed)
    level = ledger.level_of(recorded.entry)
    read = _line_read(bedside, ledger, recorded.entry, level)
    if read is None:
        entry = ledger.effective(recorded.entry)
        assert entry is not None
        return fact_text(where, entry.payload, entry.at, bedside.view)
    if recorded.was is not None:
        return fixed_text(where, read, recorded.was, bedside.view)
    return f"{line_text(where, read, bedside.view)}{_former(bedside, ledger, where)}"


def _tube(ledger: Ledger, recorded: Recorded) -> str | None:
    """The tube as it is read back: of joined ones all of them."""
    if recorded.said_tube in ledger.joined:
        return formats.listed(ledger.joined)
    return ledger.tube or recorded.said_tube


def _former(bedside: Bedside, ledger: Ledger, where: Where) -> str:
    """Whose line it is, where the drain was closed before this message and the bed has another one now."""
    before = bedside.before.get(ledger.drain)
    closed = before.closed_by if before is not None else None
    if closed is None or not bedside.patient(where.bed).drains:
        return ""
    left = isinstance(closed.payload, Left)
    return f" {former_text(where, left, closed.at, bedside.view)}"


def _line_read(bedside: Bedside, ledger: Ledger, entry_id: str, level: Level | None) -> LineRead | None:
    if level is None:
        repeat = repeat_of(ledger, entry_id)
        if repeat is None:
            return None
        return LineRead(level=repeat, same_as=ledger.level_of(dict(ledger.duplicates)[entry_id]))
    if level.kind == "opening":
        return None
    step = next(
        (each for each in reversed(bedside.volumes(ledger.drain)) if each.end.entry == entry_id), None
    )
    if step is not None and bedside.policy.chart_by == "shift":
        return _by_shift(bedside, ledger, level, step)
    return LineRead(
        level=level,
        step=step,
        amended=step is not None and is_amended(bedside, ledger.drain, step),
        asks_start=_start_to_ask(bedside, ledger, level),
        lacks_final=_lacks_final(bedside, ledger, step) if step is not None else None,
    )


def _lacks_final(bedside: Bedside, ledger: Ledger, step: Interval) -> datetime | None:
    """When the exchange inside this volume was whose final level nobody told; none while it is asked for."""
    asked = (each.drain for each in bedside.open_questions() if each.slot == "final_ml")
    if not step.at_least or ledger.drain in asked:
        return None
    exchanges = (ledger.effective(each) for each in ledger.final_missing)
    inside = (each.at for each in exchanges if each and step.begin.at <= each.at <= step.end.at)
    return next(inside, None)


def _by_shift(bedside: Bedside, ledger: Ledger, level: Level, step: Interval) -> LineRead:
    """Between closing lines nothing is charted; the closing line charts the whole shift."""
    whole = closing_of(bedside, ledger, step)
    return LineRead(
        level=level,
        step=whole or step,
        to_chart=whole is not None,
        amended=whole is not None and is_amended(bedside, ledger.drain, whole),
    )


def _start_to_ask(bedside: Bedside, ledger: Ledger, level: Level) -> datetime | None:
    """The shift start that a first line has no line for; none when this one is the line of that start."""
    if len(ledger.levels) > 1 or ledger.placed_at is not None:
        return None
    schedule = bedside.policy.schedule
    start = shift_at(schedule, level.at).start
    for moment in (start, shift_at(schedule, level.at).end):
        found = boundary(ledger, schedule, moment)
        if found is not None and found.lined and moment - level.at <= schedule.grace:
            return None
    return start


def shift_lines(bedside: Bedside, parts: list[Part]) -> list[str]:
    """The running sum of the shift, once for each drain that a line was recorded on."""
    found: dict[tuple[str, datetime], str] = {}
    drains = {recorded.drain for part in parts for recorded in part.recorded}
    for part in parts:
        for recorded in part.recorded:
            ledger = bedside.ledger(recorded.drain)
            level = ledger.level_of(recorded.entry)
            if level is None or level.kind == "opening":
                continue
            shift = _shift_of(bedside, ledger, level)
            text = _shift_line(bedside, ledger, shift)
            if len(drains) > 1 and text:
                where = Where(bed=recorded.said_bed, tube=ledger.tube).text
                text = gsm_only(f"{where}: {text[:1].lower()}{text[1:]}")
            found[recorded.drain, shift.start] = text
    return [text for text in found.values() if text]


def _shift_of(bedside: Bedside, ledger: Ledger, level: Level) -> Shift:
    schedule = bedside.policy.schedule
    charted = (
        each.shift for each in reversed(bedside.volumes(ledger.drain)) if each.end.entry == level.entry
    )
    return next(charted, shift_at(schedule, level.at))


def _shift_line(bedside: Bedside, ledger: Ledger, shift: Shift) -> str:
    total = shift_sum(ledger, bedside.policy.schedule, shift, bedside.now)
    closed = bedside.policy.chart_by == "mark" or is_closed(bedside, ledger, shift)
    return shift_text(shift, total, bedside.view, to_chart=closed)
