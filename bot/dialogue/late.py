"""A message that was long on its way: its times may be meant by the clock of sending or by that of arrival.

"20 min ago" is meant by the first; "at 1900" from a phone whose clock is wrong by the second. Where the two
give different moments, the moment is asked.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from bot.dialogue.said import Amount, Fix, Message, NotSure, Report, Said, TakeBack

LONG_ON_ITS_WAY = timedelta(minutes=10)


def at_both(arrived: Message, sent: Message) -> Message:
    """The message as read at its arrival, with what would be another moment by the time of sending asked."""
    if len(arrived.said) != len(sent.said):
        return arrived
    pairs = tuple(zip(arrived.said, sent.said, strict=True))
    sure = tuple(one for one, other in pairs if not _differ(one, other))
    asked = tuple(_which(one, other, arrived.text) for one, other in pairs if _differ(one, other))
    return replace(arrived, said=sure, unclear=(*arrived.unclear, *asked))


def _differ(one: Said, other: Said) -> bool:
    if not isinstance(one, Report | Amount | Fix | TakeBack) or type(one) is not type(other):
        return False
    return one != other


def _which(one: Said, other: Said, text: str) -> NotSure:
    choices = (getattr(other, "at", None), getattr(one, "at", None))
    moments = tuple(each for each in choices if each is not None)
    return NotSure(slot="at", text=text, choices=moments, readings=(other, one))
