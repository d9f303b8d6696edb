"""Which recorded line a correction or a withdrawal is about, and whether its sender may change it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import brief
from bot.dialogue.locate import Spot, is_tube
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import Fix, Said, TakeBack
from bot.dialogue.verdicts import hhmm
from bot.engine.ledger import Ledger
from bot.engine.shifts import shift_at, shift_before
from bot.engine.values import Level
from bot.unit import Role
from bot.wording import formats, questions
from bot.wording.gsm import gsm_only
from bot.wording.readback import Where

_NEAR = timedelta(seconds=60)


@dataclass(frozen=True, slots=True, kw_only=True)
class Target:
    """A level on its ledger."""

    ledger: Ledger
    level: Level

    def spot(self) -> Spot:
        """Where it is: the bed that it was in then."""
        bed = self.ledger.bed_at(self.level.at) or self.ledger.bed or ""
        return Spot(bed=bed, tube=self.ledger.tube, at=self.level.at, ledger=self.ledger)


def target_of(bedside: Bedside, said: Fix | TakeBack, grant: Grant) -> Target | Part:
    """The line that is meant, or the question which, or why there is none."""
    if grant.target is not None and grant.drain is not None:
        return _granted(bedside, grant)
    if said.bed is None:
        return _of_last_message(bedside, said)
    if said.bed not in bedside.context.unit.beds:
        return _no_bed(bedside, said, grant)
    found = candidates(bedside, said)
    exact = _told_together(bedside, said, found) or _counted(_matching(bedside, said, found))
    match exact:
        case (one,) if _is_sure(bedside, said, one):
            return one
        case (one,):
            return _ask_sure(bedside, said, one, grant)
        case ():
            return _none(bedside, said, found)
        case _:
            return _choose(bedside, said, exact, grant)


def target_to_change(bedside: Bedside, said: Fix | TakeBack, grant: Grant, kind: str) -> Target | Part:
    """The same, where its sender may change it; else that it is too old for them."""
    found = target_of(bedside, said, grant)
    if isinstance(found, Part) or may_change(bedside, found.level.at):
        return found
    return too_old(bedside, found, kind)


def may_change(bedside: Bedside, at: datetime) -> bool:
    """Whether the sender's role reaches back to a line of that moment."""
    if bedside.context.person.role is Role.CHARGE:
        return True
    schedule = bedside.policy.schedule
    previous = shift_before(schedule, shift_at(schedule, bedside.now))
    return at >= previous.start


def too_old(bedside: Bedside, target: Target, kind: str) -> Part:
    """What a nurse is told of a line before the previous shift."""
    spot = target.spot()
    clock = bedside.view.clock(target.level.at)
    old = f"{spot.where().text}: the line at {clock} is older than the previous shift."
    text = f"{old} A charge nurse can change it."
    return Part(status="refused", kind=kind, bed=spot.bed, tube=spot.tube, text=gsm_only(text))


def tell_author(bedside: Bedside, target: Target, done: str) -> str:
    """Tell whoever entered the line; the words that say so, empty for one's own."""
    level = target.level
    if level.who == bedside.context.person.id:
        return ""
    spot = target.spot()
    name, author = bedside.context.person.name, bedside.view.who(level.who)
    line = f"{spot.where().text} line {formats.ml(level.level_ml)} at {bedside.view.clock(level.at)}"
    bedside.tell(
        spot.bed, "corrected", gsm_only(f"For {author}: {line} was {done} by {name}."), target.ledger.drain
    )
    return gsm_only(f"{author} is told.")


def _granted(bedside: Bedside, grant: Grant) -> Target | Part:
    ledger = bedside.ledger(str(grant.drain))
    level = ledger.level_of(str(grant.target)) or repeat_of(ledger, str(grant.target))
    if level is None:
        return Part(status="told", kind="corrected", bed=ledger.bed, text="That line was taken back already.")
    return Target(ledger=ledger, level=level)


def repeat_of(ledger: Ledger, entry_id: str) -> Level | None:
    """The level that a repeated line repeats, under its own entry: it can be put right too."""
    entry, counts = ledger.effective(entry_id), dict(ledger.duplicates).get(entry_id)
    level = ledger.level_of(counts) if counts else None
    if entry is None or level is None:
        return None
    return replace(level, entry=entry_id, at=entry.at, entered=entry.entered, who=entry.who)


def _names_no_line(said: Fix | TakeBack) -> bool:
    """ "Correct that to 310": with no time, no wrong level and no "final" it may be any line."""
    return isinstance(said, Fix) and said.at is None and said.was_ml is None and not said.of_final


def _told_together(bedside: Bedside, said: Fix | TakeBack, found: tuple[Target, ...]) -> tuple[Target, ...]:
    """The lines of the bed, if the sender's last message told several and no word says which is wrong."""
    last = bedside.book.last_message(bedside.context.sender) if _names_no_line(said) else None
    told = {entry.id for entry in bedside.book.entries_of_message(last.id)} if last is not None else set()
    together = _counted(tuple(each for each in found if each.level.entry in told))
    return together if len(together) > 1 else ()


def with_bed_of_last(bedside: Bedside, said: Said) -> Said:
    """A correction of no bed, with that of the only line of the last message: an answer may come later."""
    if not isinstance(said, Fix) or said.bed is not None:
        return said
    exact = _lines_of_last(bedside, said)
    return replace(said, bed=exact[0].spot().bed, tube=exact[0].ledger.tube) if len(exact) == 1 else said


def _of_last_message(bedside: Bedside, said: Fix | TakeBack) -> Target | Part:
    """The only line of the sender's last message, while it can be undone."""
    exact = _lines_of_last(bedside, said)
    return exact[0] if len(exact) == 1 else _no_bed(bedside, said, Grant())


def _lines_of_last(bedside: Bedside, said: Fix | TakeBack) -> tuple[Target, ...]:
    last = bedside.book.last_message(bedside.context.sender)
    found: list[Target] = []
    undo = timedelta(minutes=bedside.context.unit.undo_min)
    if last is not None and bedside.now - last.arrived <= undo:
        for entry in bedside.book.entries_of_message(last.id):
            ledger = bedside.ledger(entry.drain)
            level = ledger.level_of(entry.id) or repeat_of(ledger, entry.id)
            if level is not None:
                found.append(Target(ledger=ledger, level=level))
    return tuple(found) if _names_no_line(said) else _matching(bedside, said, tuple(found))


def _no_bed(bedside: Bedside, said: Fix | TakeBack, grant: Grant) -> Part:
    pending = Pending(ask=Ask.BED, said=said, grant=grant, slot="bed")
    if isinstance(said, Fix) and said.bed is None and said.to_bed is not None:
        wording = questions.told_for_which_bed(said.to_bed)
    elif said.bed is None:
        told = brief(said, bedside.view)
        wording = questions.missing("bed", formats.capital(told))
    else:
        wording = questions.unknown_bed(said.bed, brief(said, bedside.view), bedside.context.unit.name)
    return bedside.ask(pending, wording, About(bed=None, slot="bed", kind="corrected"))


def candidates(bedside: Bedside, said: Fix | TakeBack, at: datetime | None = None) -> tuple[Target, ...]:
    """The lines read at the bed (and tube) that was said, in order; with a moment, those of that minute."""
    found = []
    for ledger in bedside.ledgers_of(str(said.bed), at or said.at):
        if said.tube is not None and not is_tube(ledger, said.tube):
            continue
        repeats = (repeat_of(ledger, entry_id) for entry_id, _ in ledger.duplicates)
        levels = (*ledger.levels, *(each for each in repeats if each is not None))
        found += [Target(ledger=ledger, level=each) for each in levels if ledger.bed_at(each.at) == said.bed]
    near = (each for each in found if at is None or abs(each.level.at - at) < _NEAR)
    return tuple(sorted(near, key=lambda target: target.level.at))


def _matching(bedside: Bedside, said: Fix | TakeBack, found: tuple[Target, ...]) -> tuple[Target, ...]:
    """The lines of the time and level that were said; with neither, the last one of each drain.

    "Correct bed 12 1855 to 310" may mean the line at 18:55 or the one of 1,855 mL: the ledger knows which.
    """
    was_ml = said.was_ml if isinstance(said, Fix) else None
    if isinstance(said, Fix) and said.of_final:
        found = tuple(target for target in found if target.level.kind == "final")
    if said.at is None and was_ml is None:
        return _last_of_each(found)
    exact = tuple(
        target
        for target in found
        if (said.at is None or abs(target.level.at - said.at) < _NEAR)
        and (was_ml is None or target.level.level_ml == was_ml)
    )
    return tuple(
        target for target in found if target in exact or _is_swapped(bedside, said, target, exact=bool(exact))
    )


def _last_of_each(found: tuple[Target, ...]) -> tuple[Target, ...]:
    """The last line of each drain that is open; of the last one, where none is."""
    lasts = {each.ledger.drain: each for each in found}
    return tuple(each for each in lasts.values() if each.ledger.is_open()) or found[-1:]


def _counted(exact: tuple[Target, ...]) -> tuple[Target, ...]:
    """Without the repeats of a line that is among them, of its minute: they go with it."""
    named = {each.level.entry for each in exact}
    repeats = {repeat for each in exact if each.level.entry in named for repeat in repeats_of(each)}
    return tuple(each for each in exact if each.level.entry not in repeats)


def repeats_of(target: Target, *, own: bool = False) -> tuple[str, ...]:
    """The entries that told this line again in its minute; `own`: by whoever told it first.

    Another nurse who read the same has borne it out: that does not go with a correction.
    """
    ledger, level = target.ledger, target.level
    told = [(each, ledger.effective(each)) for each, counted in ledger.duplicates if counted == level.entry]
    return tuple(
        each
        for each, entry in told
        if entry is not None and abs(entry.at - level.at) < _NEAR and (not own or entry.who == level.who)
    )


def _is_swapped(bedside: Bedside, said: Fix | TakeBack, target: Target, *, exact: bool) -> bool:
    """Whether the number that was read as a time is the line's level, or the other way round."""
    was_ml = said.was_ml if isinstance(said, Fix) else None
    if said.at is not None and was_ml is None and isinstance(said, Fix):
        local = said.at.astimezone(bedside.context.unit.zone)
        # "600" may be six in the evening; that makes a line doubtful, and is never why one is chosen
        hours = (local.hour, local.hour % 12 or 12) if exact else (local.hour,)
        return target.level.level_ml in tuple(hour * 100 + local.minute for hour in hours)
    if said.at is None and was_ml is not None:
        moment = hhmm(bedside, was_ml)
        return moment is not None and abs(target.level.at - moment) < _NEAR
    return False


def _is_sure(bedside: Bedside, said: Fix | TakeBack, found: Target) -> bool:
    """Whether the words name the line; "correct bed 12 to 1005" means one's own last line, not another's."""
    was_ml = said.was_ml if isinstance(said, Fix) else None
    return said.at is not None or was_ml is not None or found.level.who == bedside.context.person.id


def _ask_sure(bedside: Bedside, said: Fix | TakeBack, found: Target, grant: Grant) -> Part:
    level, spot = found.level, found.spot()
    held = replace(grant, drain=found.ledger.drain, target=level.entry)
    line = f"{formats.ml(level.level_ml)} at {bedside.view.clock(level.at)} ({bedside.view.who(level.who)})"
    return bedside.ask(
        Pending(ask=Ask.SURE, said=said, grant=held, targets=(level.entry,), drains=(found.ledger.drain,)),
        questions.sure(spot.where(), line),
        About(
            bed=spot.bed,
            tube=spot.tube,
            drain=found.ledger.drain,
            slot="at",
            kind="corrected" if isinstance(said, Fix) else "withdrawn",
        ),
    )


def _none(bedside: Bedside, said: Fix | TakeBack, found: tuple[Target, ...]) -> Part:
    time = f" at {bedside.view.clock(said.at)}" if said.at else ""
    lines = tuple(
        f"{bedside.view.clock(each.level.at)} {formats.ml(each.level.level_ml)}" for each in found[-3:]
    )
    known = f" The last ones: {formats.listed(lines)}." if lines else ""
    where = Where(bed=str(said.bed), tube=said.tube).text
    return Part(
        status="told",
        kind="corrected" if isinstance(said, Fix) else "withdrawn",
        bed=said.bed,
        text=gsm_only(f"{where}: there is no such line{time}. Nothing was changed.{known}"),
    )


def _choose(bedside: Bedside, said: Fix | TakeBack, exact: tuple[Target, ...], grant: Grant) -> Part:
    lines = tuple(
        f"{bedside.view.clock(each.level.at)} {formats.ml(each.level.level_ml)}"
        + (f" {each.ledger.tube}" if each.ledger.tube else "")
        for each in exact[-4:]
    )
    pending = Pending(
        ask=Ask.WHICH,
        said=said,
        grant=grant,
        targets=tuple(each.level.entry for each in exact[-4:]),
    )
    of_one_time = (
        len({each.level.at for each in exact}) == 1 and len({each.ledger.drain for each in exact}) > 1
    )
    where = Where(bed=str(said.bed), tube=said.tube)
    wording = questions.which_line(where, lines, of_one_time=of_one_time)
    kind = "corrected" if isinstance(said, Fix) else "withdrawn"
    return bedside.ask(pending, wording, About(bed=said.bed, tube=said.tube, slot="at", kind=kind))
