"""Recording an exchange or a removal, with the old canister's final level or the question for it."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.dangers import dangers_of
from bot.dialogue.doubts import admitted, admitted_final, ask_doubt, read_on_mark
from bot.dialogue.hearing import ask_heard, is_unheard
from bot.dialogue.locate import Spot, drain_of, locate
from bot.dialogue.part import Part, Recorded
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Report
from bot.engine.admit import read_on_which
from bot.engine.entries import Entry, Exchanged, FinalLevel, Line, Removed
from bot.engine.ledger import Ledger
from bot.engine.values import Level
from bot.wording import questions

AGAIN_WITHIN = timedelta(minutes=60)
"""A second exchange so soon is asked about: two nurses tell of one."""


def take_exchange(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """An exchange recorded; without a final level its reply begins with the question for it."""
    spot = locate(bedside, said, grant)
    if isinstance(spot, Part):
        return spot
    late = waits_for_final(spot.ledger, said) if spot.ledger else None
    if late is not None and said.final_ml is not None:
        return take_final(bedside, late.drain, late, said.final_ml, grant)
    earlier = _earlier_exchange(spot, said)
    if earlier is not None and f"again:{earlier.id}" not in grant.accepted:
        return _ask_again(bedside, said, spot, grant, earlier)
    behind = read_on_which(spot.ledger, spot.at, said.final_ml) if spot.ledger else None
    if behind is not None and read_on_mark(behind) not in grant.accepted:
        return _ask_read_on(bedside, said, spot, grant, behind)
    return _with_final(bedside, said, spot, grant)


def take_removal(bedside: Bedside, said: Report, grant: Grant) -> Part:
    """A removal recorded; without a level, its canister's final level is asked for."""
    spot = locate(bedside, said, grant)
    if isinstance(spot, Part):
        return spot
    return _with_final(bedside, said, spot, grant)


def _with_final(bedside: Bedside, said: Report, spot: Spot, grant: Grant) -> Part:
    final: Line | FinalLevel | None = None
    if said.final_ml is not None:
        final, open_doubts = admitted_final(bedside, spot, said, said.final_ml, grant)
        if open_doubts:
            return ask_doubt(bedside, spot, said, final, open_doubts, grant)
    if is_unheard(bedside, said, spot.ledger, grant):
        return ask_heard(bedside, said, spot, grant)
    return _record(bedside, said, spot, final)


def _record(bedside: Bedside, said: Report, spot: Spot, final: Line | FinalLevel | None) -> Part:
    drain = drain_of(bedside, spot)
    entries = [] if final is None else [bedside.record(drain, spot.at, final)]
    entries.append(bedside.record(drain, spot.at, said.fact))
    part = recorded_part(spot, drain, said.fact.kind, tuple(entries))
    if final is not None or not _wants_final(bedside, drain, said):
        return part
    asked = ask_final(bedside, spot, drain, entries[-1])
    return replace(part, question=asked.question, text=asked.text, first=True)


def _wants_final(bedside: Bedside, drain: str, said: Report) -> bool:
    """Not on a canister that tipped over, nor where the line of that minute was the last one read."""
    ledger = bedside.ledger(drain)
    if isinstance(said.fact, Exchanged):
        return bool(ledger.final_missing)
    last = ledger.last
    return last is not None and last.at < bedside.moment(said.at)


def recorded_part(spot: Spot, drain: str, kind: str, entries: tuple[Entry, ...]) -> Part:
    """What was recorded at one spot."""
    rows = tuple(
        Recorded(entry=entry.id, drain=drain, said_bed=spot.bed, said_tube=spot.tube) for entry in entries
    )
    return Part(
        status="recorded",
        kind=kind,
        bed=spot.bed,
        tube=spot.where().tube,
        recorded=rows,
        entries=tuple(entry.id for entry in entries),
    )


def ask_final(bedside: Bedside, spot: Spot, drain: str, event: Entry) -> Part:
    """The question for a canister's last level; what it belongs to is recorded already."""
    exchanged = isinstance(event.payload, Exchanged)
    wording = questions.final_level(spot.where()) if exchanged else questions.last_level(spot.where())
    pending = Pending(ask=Ask.FINAL, drains=(drain,), targets=(event.id,))
    return bedside.ask(
        pending,
        wording,
        About(bed=spot.bed, tube=spot.tube, drain=drain, slot="final_ml", kind=event.payload.kind),
    )


def waits_for_final(ledger: Ledger, said: Report) -> Entry | None:
    """The exchange whose final level this is, told late: one lacks it, no change is told, the level fits."""
    if not said.of_old or said.final_ml is None or not ledger.final_missing:
        return None
    event = ledger.effective(ledger.final_missing[-1])
    before = ledger.level_before(event.at) if event else None
    return event if before is None or said.final_ml >= before.level_ml else None


def _earlier_exchange(spot: Spot, said: Report) -> Entry | None:
    """An exchange shortly before or after this one, or one that waits for the final level that is told."""
    if spot.ledger is None:
        return None
    if said.final_ml is not None and said.at is None and spot.ledger.final_missing:
        return spot.ledger.effective(spot.ledger.final_missing[-1])
    near = [
        entry
        for entry in spot.ledger.live
        if isinstance(entry.payload, Exchanged) and abs(entry.at - spot.at) <= AGAIN_WITHIN
    ]
    return near[-1] if near else None


def _ask_again(bedside: Bedside, said: Report, spot: Spot, grant: Grant, earlier: Entry) -> Part:
    assert spot.ledger is not None
    pending = Pending(
        ask=Ask.CHANGED_AGAIN,
        said=said,
        grant=replace(grant, drain=spot.ledger.drain),
        asked=(f"again:{earlier.id}",),
        targets=(earlier.id,),
        drains=(spot.ledger.drain,),
    )
    at, who = bedside.view.clock(earlier.at), bedside.view.who(earlier.who)
    waits = said.final_ml is not None and earlier.id in spot.ledger.final_missing
    return bedside.ask(
        pending,
        questions.changed_again(spot.where(), at, who, said.final_ml if waits else None),
        About(bed=spot.bed, tube=spot.tube, drain=spot.ledger.drain, slot="kind", kind=said.fact.kind),
    )


def _ask_read_on(bedside: Bedside, said: Report, spot: Spot, grant: Grant, behind: Level) -> Part:
    assert spot.ledger is not None
    drain = spot.ledger.drain
    pending = Pending(
        ask=Ask.READ_ON,
        said=said,
        grant=replace(grant, drain=drain),
        asked=(read_on_mark(behind),),
        targets=(behind.entry,),
        drains=(drain,),
    )
    changed, read = bedside.view.clock(spot.at), bedside.view.clock(behind.at)
    return bedside.ask(
        pending,
        questions.read_on(spot.where(), changed, behind.level_ml, read),
        About(bed=spot.bed, tube=spot.tube, drain=drain, slot="at", kind=said.fact.kind),
        dangers=dangers_of(bedside, said, spot.ledger),
    )


def take_final(bedside: Bedside, drain: str, event: Entry, level_ml: int, grant: Grant) -> Part:
    """A final level told after its exchange or removal, put where it belongs."""
    ledger = bedside.ledger(drain)
    exchange = event.id if isinstance(event.payload, Exchanged) else None
    bed = ledger.bed_at(event.at) or ledger.bed or ""
    spot = Spot(bed=bed, tube=ledger.tube, at=event.at, ledger=ledger)
    told = FinalLevel(level_ml=level_ml, exchange=exchange)
    final, open_doubts = admitted(bedside, ledger, told, event.at, grant)
    said = Report(bed=bed, tube=ledger.tube, at=event.at, fact=event.payload, final_ml=level_ml)  # type: ignore[arg-type]
    if open_doubts:
        held = replace(grant, drain=drain, target=event.id)
        return ask_doubt(bedside, spot, said, final, open_doubts, held)
    if is_unheard(bedside, said, ledger, grant):
        return ask_heard(bedside, said, spot, replace(grant, drain=drain, target=event.id))
    entry = bedside.record(drain, event.at, final)
    return recorded_part(spot, drain, "exchanged" if exchange else Removed.kind, (entry,))


def is_late_final(said: Report, grant: Grant) -> bool:
    """Whether a statement puts a final level to an event that is recorded already."""
    return grant.target is not None and isinstance(said.fact, Exchanged | Removed)


def moment_of_exchange(earlier: datetime, later: datetime) -> datetime:
    """When a canister was changed that was only told by its lower line: by the time of the later line."""
    return max(earlier, later)
