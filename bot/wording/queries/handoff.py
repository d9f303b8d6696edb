"""A handoff in SBAR order (StatPearls NBK556088): situation, background, assessment, what is to be done.

The last part lists what is due and what was left open; it never tells what to do for the patient.
"""

from __future__ import annotations

from datetime import datetime

from bot.engine.entries import Reason
from bot.wording import formats
from bot.wording.queries.rows import REASONS
from bot.wording.queries.view import View

SITUATION, BACKGROUND, ASSESSMENT, TO_DO = "S", "B", "A", "R"
NOTHING_DUE = "nothing due"


def day_text(begin: datetime, placed: bool, view: View) -> str:
    """Which day of the drain it is, by the calendar: "day 2"; "day 2 here" where no placement was told."""
    days = (view.now.astimezone(view.zone).date() - begin.astimezone(view.zone).date()).days
    return f"day {days + 1}" if placed else f"day {days + 1} here (placement not told)"


def reason_text(reason: Reason, weight_kg: float | None) -> str:
    """Why the drain is there, and the weight where it was told."""
    weight = f", {formats.number(weight_kg)} kg" if weight_kg is not None else ""
    return f"{REASONS[reason]}{weight}"


def canisters_text(changes: tuple[datetime, ...], missing: int, view: View) -> str:
    """The exchanges: "canister changed 03:20 and 14:00 (no final level of 1)"."""
    if not changes:
        return "first canister"
    told = f"canister changed {formats.listed(tuple(view.clock(each) for each in changes))}"
    return f"{told} (no final level of {missing})" if missing else told


def joined_text(tubes: tuple[str, ...]) -> str:
    """The tubes that share the canister."""
    return f"joined: {formats.listed(tubes)}" if tubes else ""
