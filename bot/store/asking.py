"""Questions, what became of them, and which standing cautions were told to whom."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

from sqlalchemy import bindparam, exists, select

from bot.store.codec import canonical
from bot.store.desk import Desk
from bot.store.questions import Choice, Outcome, Question
from bot.store.remembered import Known, Waiting
from bot.store.statements import ONE, Statement, into
from bot.store.tables import questions, settlements, tellings

REACH = timedelta(days=60)
"""How far back an unsettled question is looked for: no disposable canister hangs at a bed for longer."""


_UNSETTLED = Statement(
    select(questions)
    .where(
        questions.c.unit == bindparam("of_unit"),
        questions.c.asked_at >= bindparam("since", type_=questions.c.asked_at.type),
        ~exists().where(settlements.c.question == questions.c.id),
    )
    .order_by(questions.c.seq)
)
_shown = (
    select(tellings.c.at)
    .where(tellings.c.unit == bindparam("of_unit"), tellings.c.key == bindparam("of_key"))
    .order_by(tellings.c.seq.desc())
    .limit(ONE)
)
_SHOWN_TO_ANYONE = Statement(_shown)
_SHOWN_AT = Statement(_shown.where(tellings.c.sender == bindparam("of_sender")))
_ASK, _SETTLE, _SHOW = into(questions), into(settlements), into(tellings)
_EVER = datetime.min.replace(tzinfo=UTC)
_ALL = ""
"""All of a unit's questions are read at once: it has few, and a message asks for them in several ways."""


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
        self._put(questions.name, _ASK, row)
        if (waiting := self._held_waiting()) is not None:
            self._hold(replace(waiting, questions=(*waiting.questions, kept)))
        return kept

    def settle(self, question_id: str, outcome: Outcome) -> None:
        """Note what became of the question, by the message at hand. A question is settled once."""
        row = {
            "question": question_id,
            "outcome": outcome,
            "message": self.hand.message,
            "at": self.hand.arrived,
        }
        self._put(settlements.name, _SETTLE, row)
        if (waiting := self._held_waiting()) is not None:
            left = tuple(each for each in waiting.questions if each.id != question_id)
            self._hold(replace(waiting, questions=left))

    def unsettled(self, bed: str | None = None, sender: str | None = None) -> tuple[Question, ...]:
        """The questions of the unit (a bed, a sender) that nothing has settled, the oldest first."""
        since = _EVER if self._hand is None else self._hand.arrived - REACH
        found: Waiting = self._once(questions.name, _ALL, lambda: self._waiting(since))
        return tuple(
            each
            for each in found.questions
            if (bed is None or each.bed == bed)
            and (sender is None or each.sender == sender)
            and each.asked_at >= since
        )

    def _waiting(self, since: datetime) -> Waiting:
        """As the unit's last message left it, where that is known and this one has written nothing yet."""
        known = self._known.waiting
        if known is not None and known.since <= since and not self._put_down:
            return known
        rows = _UNSETTLED.rows(self._connection, {"of_unit": self.unit, "since": since})
        return Waiting(since, tuple(map(_question, rows)))

    def _now_known(self, known: Known) -> Known:
        return super()._now_known(known)._replace(waiting=self._held_waiting())

    def _held_waiting(self) -> Waiting | None:
        held: Waiting | None = self._held.get((questions.name, _ALL))
        return held

    def _hold(self, waiting: Waiting) -> None:
        self._held[questions.name, _ALL] = waiting

    def shown(self, key: str, sender: str) -> bool:
        """Whether the standing caution of that key was ever told to the sender."""
        return self.shown_at(key, sender) is not None

    def shown_at(self, key: str, sender: str | None = None) -> datetime | None:
        """When the standing caution of that key was last told to the sender (to anyone); None: never."""
        about = {"of_unit": self.unit, "of_key": key}
        if sender is None:
            found: datetime | None = _SHOWN_TO_ANYONE.value(self._connection, about)
        else:
            found = _SHOWN_AT.value(self._connection, {**about, "of_sender": sender})
        return found

    def show(self, key: str, sender: str, at: datetime) -> None:
        """Note that the standing caution was told to the sender."""
        row = {"unit": self.unit, "key": key, "sender": sender, "at": at, "message": self.hand.message}
        self._put(tellings.name, _SHOW, row)


def _question(row: Any) -> Question:
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
