"""The rows of a drain, each with who, when it happened, when it was entered, and what replaced it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from bot.engine.entries import Correction, Entry, Withdrawal
from bot.wording import formats
from bot.wording.queries.rows import row_text
from bot.wording.queries.view import View


def history_row(entry: Entry, changes: tuple[Entry, ...], view: View, beds: Mapping[str, str]) -> str:
    """One row: "19:00 line 1,050 mL (Amy, entered 19:02); corrected to 1,005 mL by Ben 20:10".

    A late entry shows both times (Saskatchewan RN guidance; CNPS). The original stays readable,
    linked to what replaced it, with who and when (NMC). `changes`: later rows about this one, in the
    order in which they were recorded. `beds`: where the lines are that were moved, by their new row.
    """
    told = f"{view.clock(entry.at)} {row_text(entry.payload)} ({view.who(entry.who)}, "
    told += f"entered {_entered(entry, view)})"
    by_id = {change.id: change for change in changes}
    return "; ".join((told, *(_change(change, by_id, view, beds) for change in changes)))


def _entered(entry: Entry, view: View) -> str:
    """The time of entering; the day too only when it differs from the day that it happened on."""
    return formats.clock(entry.entered, view.zone, entry.at)


def _change(change: Entry, earlier: Mapping[str, Entry], view: View, beds: Mapping[str, str]) -> str:
    by = f"by {view.who(change.who)} {view.clock(change.entered)}"
    match change.payload:
        case Correction(level_ml=level, at=at):
            return f"corrected to {_corrected(level, at, view)} {by}"
        case Withdrawal(target=target) if target in earlier:
            what = "correction" if isinstance(earlier[target].payload, Correction) else "withdrawal"
            return f"that {what} taken back {by}"
        case Withdrawal(moved_to=moved):
            return f"moved to {beds.get(moved, 'another drain')} {by}" if moved else f"withdrawn {by}"
        case other:
            return f"{row_text(other)} {by}"


def _corrected(level_ml: int | None, at: datetime | None, view: View) -> str:
    level = formats.ml(level_ml) if level_ml is not None else ""
    time = view.clock(at) if at is not None else ""
    return " at ".join(word for word in (level, time) if word)
