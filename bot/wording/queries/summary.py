"""The unit's beds in the order of need, one row a tube, for whoever has charge of it."""

from __future__ import annotations

from dataclasses import dataclass

from bot.engine.ledger import Ledger
from bot.engine.values import Canister, Level
from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.queries.view import View


@dataclass(frozen=True, slots=True, kw_only=True)
class Needs:
    """What a bed waits for, counted."""

    urgent: int = 0
    overdue: int = 0
    cautions: int = 0
    asked: int = 0
    unconfirmed: int = 0
    amendments: int = 0
    away: bool = False


def unit_head(unit: str, beds: tuple[Needs, ...]) -> str:
    """How the unit stands, counted in beds: "Ward 4: of 6 beds with drains 1 urgent, 2 overdue."."""
    urgent = sum(1 for needs in beds if needs.urgent)
    overdue = sum(1 for needs in beds if needs.overdue)
    noun = "bed" if len(beds) == 1 else "beds"
    return gsm_only(f"{unit}: of {len(beds)} {noun} with drains {urgent} urgent, {overdue} overdue.")


def bed_head(bed: str, needs: Needs) -> str:
    """The bed and what it waits for: "Bed 12: URGENT, 1 overdue, 2 cautions, 1 to amend"."""
    told = (
        "URGENT" if needs.urgent else "",
        "away" if needs.away else "",
        _counted(needs.overdue, "overdue", "overdue"),
        _counted(needs.cautions, "caution", "cautions"),
        _counted(needs.asked, "open question", "open questions"),
        _counted(needs.unconfirmed, "unconfirmed", "unconfirmed"),
        _counted(needs.amendments, "to amend", "to amend"),
    )
    return gsm_only(f"Bed {bed}: {', '.join(word for word in told if word) or 'nothing open'}")


def tube_text(ledger: Ledger, shift: str, rate: str, view: View) -> str:
    """A tube in a few words: "left 1,050 mL 19:00 (35 min ago), shift 380 mL, 45 mL/h"."""
    name = f"{ledger.tube} " if ledger.tube else ""
    if ledger.last is None:
        return f"{name}no line yet"
    line = f"{name}{_last(ledger.last, ledger.unread, view)}"
    return ", ".join(word for word in (line, shift, rate) if word)


def _last(last: Level, unread: Canister | None, view: View) -> str:
    """After an exchange the nurse sees another level: "new canister 15:00, old one 1,480 mL"."""
    if unread is None or unread.opened_at is None:
        return f"{formats.ml(last.level_ml)} {view.clock(last.at)} ({view.ago(last.at)})"
    return f"new canister {view.clock(unread.opened_at)}, old one {formats.ml(last.level_ml)}"


def _counted(number: int, one: str, many: str) -> str:
    return f"{number} {one if number == 1 else many}" if number else ""
