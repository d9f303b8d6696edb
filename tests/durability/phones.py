"""The phones: numbered marks, sent by several at once, and a journal of what was sent and what was answered.

An id is noted before it is sent and its reply after the 200. A phone sometimes goes into a dead spot: it
sends and does not hear. What was not answered is sent again, with the same id and body.
"""

from __future__ import annotations

import json
import random
import threading
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from http.client import HTTPConnection, HTTPException

from tests.web.client import signed

BEDS = 40
FIRST_ML = 100
DEAF = 0.1
"""How often a phone does not hear the answer."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A line of a bed that rises by 1 mL a minute: in whatever order they arrive, the volumes add up."""

    number: int
    began: datetime

    @property
    def id(self) -> str:
        """Its webhook-id."""
        return f"mark-{self.number}"

    @property
    def bed(self) -> str:
        """Its bed's label."""
        return str(1 + self.number % BEDS)

    @property
    def minute(self) -> int:
        """Minutes after the first line."""
        return self.number // BEDS

    @property
    def level_ml(self) -> int:
        """The level at that minute."""
        return FIRST_ML + self.minute

    @property
    def at(self) -> datetime:
        """When it was read."""
        return self.began + timedelta(minutes=self.minute)

    @property
    def body(self) -> bytes:
        """The message's JSON."""
        text = f"bed {self.bed} mark {self.level_ml} at {self.at:%H%M}"
        return json.dumps({"sender": "amy", "text": text}).encode()


def _minute() -> datetime:
    return datetime.now(UTC).replace(second=0, microsecond=0)


@dataclass(slots=True)
class Journal:
    """What was sent, in the order in which it was noted, and the answers that came with a 200."""

    began: datetime = field(default_factory=lambda: _minute() - timedelta(hours=9))
    sent: dict[str, Mark] = field(default_factory=dict)
    answered: dict[str, bytes] = field(default_factory=dict)
    refused: dict[str, int] = field(default_factory=dict)
    away: int = 0
    """How often a phone was told to come again."""
    silent: int = 0
    """How often a phone waited in vain."""
    heard: threading.Event = field(default_factory=threading.Event)
    _lock: threading.Lock = field(default_factory=threading.Lock)
    _again: list[Mark] = field(default_factory=list)

    def next(self) -> Mark:
        """The next mark to send: one that was not answered, else a new one, noted before it is sent."""
        with self._lock:
            if self._again:
                return self._again.pop()
            mark = Mark(len(self.sent), self.began)
            self.sent[mark.id] = mark
            return mark

    def unanswered(self) -> list[Mark]:
        """The marks that no phone has an answer to."""
        return [mark for name, mark in self.sent.items() if name not in self.answered]

    def send_again(self) -> None:
        """Let what was not answered be sent first."""
        with self._lock:
            self._again = self.unanswered()
            random.shuffle(self._again)

    def note(self, mark: Mark, status: int, body: bytes) -> None:
        """Note an answer; one of 5xx is none, and one of 4xx is a mistake of somebody."""
        with self._lock:
            if status == 200:
                self.answered[mark.id] = body
            elif 400 <= status < 500:
                self.refused[mark.id] = status
            self.away += status == 503
        if status == 200:
            self.heard.set()

    def waited_in_vain(self) -> None:
        """Note that nothing came back."""
        with self._lock:
            self.silent += 1


ANSWER_S = 15.0
"""How long a phone waits for an answer."""


def send(port: int, mark: Mark, *, deaf: bool = False) -> tuple[int, bytes]:
    """Status and body; 0 when nothing was heard."""
    connection = HTTPConnection("127.0.0.1", port, timeout=ANSWER_S)
    try:
        connection.request("POST", "/messages", mark.body, signed(mark.body, mark.id, at=datetime.now(UTC)))
        if deaf:
            return 0, b""
        response = connection.getresponse()
        return response.status, response.read()
    finally:
        connection.close()


def sending(
    port: Callable[[], int], journal: Journal, count: int, stop: threading.Event
) -> list[threading.Thread]:
    """That many phones, each sending one mark after the other until told to stop."""

    def phone(seed: int) -> None:
        chance = random.Random(seed)
        while not stop.is_set():
            mark = journal.next()
            try:
                journal.note(mark, *send(port(), mark, deaf=chance.random() < DEAF))
            except TimeoutError:
                journal.waited_in_vain()
            except (OSError, HTTPException):
                stop.wait(0.01)

    phones = [
        threading.Thread(target=phone, args=(len(journal.sent) * count + number,), daemon=True)
        for number in range(count)
    ]
    for each in phones:
        each.start()
    return phones
