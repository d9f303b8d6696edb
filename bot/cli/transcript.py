"""Plain chat logs: read, check and print them back byte for byte. No clock, no bot: `player` plays them.

    One nurse, two lines.

    -- Wednesday 4 March 2026 --

    18:01 Amy: bed 7 mark 630 at 1800
          Bot: Bed 7, 18:00, line 630 mL.
               A further line of the same reply.

Prose, a date line, then turns. The time of a turn is when the message arrived. After the name may stand
`(voice)` for a dictated message, or `(sent 17:50)` for one that was held up on its way. A line
`-- Ward: children --` before the first date plays the story on another unit file of that folder.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta

_DATE = re.compile(r"-- (\w+ \d{1,2} \w+ \d{4}) --")
_WARD = re.compile(r"-- Ward: ([\w-]+) --")
_TURN = re.compile(
    r"(?P<at>\d\d:\d\d) (?P<name>[^\W\d_]\w*)(?: \((?P<how>voice|sent \d\d:\d\d)\))?: (?P<text>.*\S)"
)
_REPLY = "      Bot: "
_MORE = " " * len(_REPLY)


class TranscriptError(ValueError):
    """A transcript that is not in the format; says the line."""

    def __init__(self, line: int, why: str) -> None:
        super().__init__(f"line {line}: {why}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Turn:
    """What a nurse sent, when it arrived (ward time), and what the bot said to it, line by line."""

    day: date
    at: time
    name: str
    text: str
    voice: bool = False
    sent: time | None = None
    reply: tuple[str, ...] = ()

    @property
    def arrived(self) -> datetime:
        """Ward time without a zone, which the unit knows."""
        return datetime.combine(self.day, self.at)

    @property
    def sent_at(self) -> datetime | None:
        """When it was sent, ward time without a zone; None when it came at once."""
        if self.sent is None:
            return None
        day = self.day if self.sent <= self.at else self.day - timedelta(days=1)
        return datetime.combine(day, self.sent)

    def lines(self) -> Iterator[str]:
        """The turn as it stands in the file."""
        how = " (voice)" if self.voice else f" (sent {self.sent:%H:%M})" if self.sent else ""
        yield f"{self.at:%H:%M} {self.name}{how}: {self.text}"
        for number, line in enumerate(self.reply):
            yield f"{_MORE if number else _REPLY}{line}".rstrip()


@dataclass(frozen=True, slots=True)
class Words:
    """A line that is not a turn: prose, a date line, or nothing."""

    text: str

    def lines(self) -> Iterator[str]:
        """The line as it stands in the file."""
        yield self.text


@dataclass(frozen=True, slots=True, kw_only=True)
class Transcript:
    """One story: its lines in order, and the unit file it is played on (None: the demo unit)."""

    items: tuple[Turn | Words, ...]
    ward: str | None = None

    @property
    def turns(self) -> tuple[Turn, ...]:
        """What the nurses sent, in order."""
        return tuple(item for item in self.items if isinstance(item, Turn))

    @property
    def title(self) -> str:
        """The first line of prose."""
        return next((item.text for item in self.items if isinstance(item, Words) and item.text), "")

    def answered(self, replies: tuple[str, ...]) -> Transcript:
        """The same story with these replies, one for each turn."""
        waiting = iter(replies)
        items = tuple(
            replace(item, reply=tuple(next(waiting).split("\n"))) if isinstance(item, Turn) else item
            for item in self.items
        )
        return replace(self, items=items)

    def __str__(self) -> str:
        return "".join(f"{line}\n" for item in self.items for line in item.lines())


def read(text: str) -> Transcript:
    """The transcript in a file's text. Raises TranscriptError where it would not print back the same."""
    ward: str | None = None
    day: date | None = None
    items: list[Turn | Words] = []
    for number, line in enumerate(text.splitlines(), start=1):
        if line.startswith(" "):
            items.append(_with_reply(items.pop() if items else None, line, number))
        elif found := _TURN.fullmatch(line):
            items.append(_turn(found, day, number))
            _check_order(items, number)
        elif line.startswith("--") and not (_WARD.fullmatch(line) or _DATE.fullmatch(line)):
            raise TranscriptError(number, "neither a date line nor a ward line")
        else:
            ward = found[1] if (found := _WARD.fullmatch(line)) else ward
            day = _day(found[1], number) if (found := _DATE.fullmatch(line)) else day
            items.append(Words(line))
    transcript = Transcript(items=tuple(items), ward=ward)
    if str(transcript) != text:
        raise TranscriptError(text.count("\n") + 1, "spaces at a line's end, or no newline at the file's end")
    return transcript


def _day(written: str, number: int) -> date:
    try:
        day = datetime.strptime(written, "%A %d %B %Y").date()  # noqa: DTZ007 - a date has no zone
    except ValueError:
        raise TranscriptError(number, f"no such date: {written}") from None
    if f"{day:%A}" != written.split()[0]:
        raise TranscriptError(number, f"{written} was a {day:%A}")
    return day


def _turn(found: re.Match[str], day: date | None, number: int) -> Turn:
    if day is None:
        raise TranscriptError(number, "a turn before the first date line")
    how = found["how"] or ""
    try:
        sent = time.fromisoformat(how.removeprefix("sent ")) if how.startswith("sent") else None
        at = time.fromisoformat(found["at"])
    except ValueError:
        raise TranscriptError(number, "no such time") from None
    return Turn(day=day, at=at, name=found["name"], text=found["text"], voice=how == "voice", sent=sent)


def _check_order(items: list[Turn | Words], number: int) -> None:
    turns = [item for item in items if isinstance(item, Turn)]
    if len(turns) > 1 and turns[-1].arrived < turns[-2].arrived:
        raise TranscriptError(number, "time runs backwards")


def _with_reply(item: Turn | Words | None, line: str, number: int) -> Turn:
    if not isinstance(item, Turn):
        raise TranscriptError(number, "an indented line that follows no turn")
    start = _MORE if item.reply else _REPLY
    if not line.startswith(start):
        raise TranscriptError(number, f"a reply starts with {_REPLY!r} and goes on under its first letter")
    return replace(item, reply=(*item.reply, line.removeprefix(start)))
