"""Messages that tell and ask nothing of a drain: a greeting, another device, a goal. Called by `read`."""

from __future__ import annotations

from .items import Item
from .numbers import Toks
from .patterns.remarks import GREETING_HEADS, GREETINGS

NOT_TOLD = frozenset({"bed", "word", "filler", "plan", "reason", "about", "join", "side", "span", "window"})
"""Cues that tell nothing of a drain by themselves."""
TOLD = frozenset({"level", "volume", "output", "check", "weight", "bad", "alt", "num", "denied", "repair"})


def is_greeting(toks: Toks) -> bool:
    """Whether the words are a greeting and no more: "evening all"."""
    said = {t.text for t in toks}
    return bool(said & GREETING_HEADS) and said <= GREETINGS


def is_nothing_of_ours(items: tuple[Item, ...]) -> bool:
    """Whether nothing is told, and nothing is to be asked: "bed 12 BP 105/60"."""
    roles = {i.role for i in items}
    cues = {i.value for i in items if i.role == "cue"}
    return bool(roles & {"foreign", "claimed"}) and not cues - NOT_TOLD and not roles & TOLD
