"""Questions that wait for an answer, and readings that stay unconfirmed."""

from __future__ import annotations

from datetime import datetime

from bot.wording.gsm import gsm_only
from bot.wording.queries.view import View

NONE_OPEN = "no open questions and no unconfirmed readings."


def question_text(text: str, asked_at: datetime, sender: str, view: View) -> str:
    """A question that waits: "Asked Amy 19:02: Bed 12, 19:00: 1,130 mL is below ...?"."""
    return gsm_only(f"Asked {view.who(sender)} {view.clock(asked_at)}: {text}")


def waiting_head(where: str, asked: int, lapsed: int) -> str:
    """How many: "Ward 4: 1 open question, 2 unconfirmed readings."."""
    questions = f"{asked} open question{'' if asked == 1 else 's'}"
    readings = f"{lapsed} unconfirmed reading{'' if lapsed == 1 else 's'}"
    return gsm_only(f"{where}: {questions}, {readings}.")
