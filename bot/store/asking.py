"""Questions, what became of them, and which standing cautions were told to whom."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Row, exists, insert, select

from bot.store.codec import canonical
from bot.store.desk import Desk
from bot.store.questions import Choice, Outcome, Question
from bot.store.tables import questions, settlements, tellings

REACH = timedelta(days=60)
"""How far back an unsettled question is looked for: no disposable canister hangs at a bed for longer."""


class Asking(Desk):
    """The part of a `Book` that is about questions and tellings."""

    def ask(self, question: Question) -> Question:
        """The question as kept, with its id."""
        kept = replace(question, id=self.new_id("question"), unit=self.unit)
        row = {
            "id": kept.id,
            "unit": kept.unit,
            "sender": kept.sender,
            "bed": kept.bed,
            "drain": kept.drain,
            "slot": kept.slot,
            "asked_at": kept.asked_at,
            "message": kept.message,
            "text": kept.text,
            "said": kept.said_json,
            "choices": canonical([[choice.say, choice.label] for choice in kept.choices]),
            "danger": kept.danger,
        }
        self._connection.execute(insert(questions), row)
        return kept

    def settle(self, question_id: str, outcome: Outcome) -> None:
        """Note what became of the question, by the message at hand. A question is settled once."""
        row = {
            "question": question_id,
            "outcome": outcome,
            "message": self.hand.message,
            "at": self.hand.arrived,
        }
        self._connection.execute(insert(settlements), row)

    def unsettled(self, bed: str | None = None, sender: str | None = None) -> tuple[Question, ...]:
        """The questions of the unit (a bed, a sender) that nothing has settled, the oldest first."""
        settled = exists().where(settlements.c.question == questions.c.id)
        query = select(questions).where(questions.c.unit == self.unit, ~settled)
        if self._hand is not None:
            query = query.where(questions.c.asked_at >= self._hand.arrived - REACH)
        if bed is not None:
            query = query.where(questions.c.bed == bed)
        if sender is not None:
            query = query.where(questions.c.sender == sender)
        return tuple(map(_question, self._connection.execute(query.order_by(questions.c.seq))))

    def shown(self, key: str, sender: str) -> bool:
        """Whether the standing caution of that key was ever told to the sender."""
        return self.shown_at(key, sender) is not None

    def shown_at(self, key: str, sender: str) -> datetime | None:
        """When the standing caution of that key was last told to the sender; None: never."""
        query = select(tellings.c.at).where(
            tellings.c.unit == self.unit, tellings.c.key == key, tellings.c.sender == sender
        )
        return self._connection.scalar(query.order_by(tellings.c.seq.desc()).limit(1))

    def show(self, key: str, sender: str, at: datetime) -> None:
        """Note that the standing caution was told to the sender."""
        row = {"unit": self.unit, "key": key, "sender": sender, "at": at, "message": self.hand.message}
        self._connection.execute(insert(tellings), row)


def _question(row: Row[Any]) -> Question:
    return Question(
        id=row.id,
        unit=row.unit,
        sender=row.sender,
        bed=row.bed,
        drain=row.drain,
        slot=row.slot,
        asked_at=row.asked_at,
        message=row.message,
        text=row.text,
        said_json=row.said,
        choices=tuple(Choice(say, label) for say, label in json.loads(row.choices)),
        danger=row.danger,
    )
