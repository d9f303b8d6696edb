"""Short answers to what was asked: yes, no, a choice, or a bare value."""

from __future__ import annotations

from datetime import datetime
from itertools import pairwise

from .items import FINDINGS, Item, is_now
from .labels import tube_name
from .moments import REACH, distinct
from .statements import Acknowledged, Answered, Help, Statement, Unclear

QUIET = frozenset(
    {
        "word",
        "filler",
        "about",
        "mark_of_question",
        "okay",
        "side",
        "ml",
        "canister",
        "tubeword",
        "repair",
        "bed",
    }
)

FOUND = FINDINGS | {"what", "same"}
STRANGE = frozenset({"bad", "alt", "foreign", "claimed", "denied", "absent"})
"""What a short answer never holds: the number beside it would be of something else."""

VALUES = frozenset({"bed", "num", "time", "bad", "denied", "alt"})
"""Pieces that make a message one about a bed, and not about how to write."""


ACTING = frozenset(
    {"paging", "paged", "calling", "called", "ringing", "bleeping", "texting", "going", "heading", "coming"}
    | {
        "walking",
        "telling",
        "told",
        "informing",
        "informed",
        "notifying",
        "notified",
        "escalating",
        "checking",
    }
    | {"escalated", "looking", "assessing", "responding", "onto", "ill", "i'll", "will", "we'll"}
)
"""What a nurse does about a notice."""

HALTING = (" wait", " hold on", " hang on", " hmm", " stop")
"""At the end of an answer these take it back: "yes no wait"."""

HEDGED = frozenset({"may", "maybe", "perhaps", "possibly", "probably", "could", "must", "likely"})

OTHERS = frozenset({"kind", "howto"})
TELLING = frozenset({"what", "level", "levelat", "leak", "tidal", "fluid", "amount", "output", "same"})
"""Beside these "help" is a cry, and asks for no instructions."""


def cues(items: tuple[Item, ...], value: str) -> list[Item]:
    """The cue pieces of one label."""
    return [i for i in items if i.role == "cue" and i.value == value]


def numbers(items: tuple[Item, ...]) -> list[Item]:
    """The bare numbers among them."""
    return [i for i in items if i.role == "num"]


def answered(items: tuple[Item, ...], arrived: datetime, text: str) -> Statement | Unclear | None:
    """The answer that the pieces make; nothing if they are more than an answer."""
    yes, no, choice = _said(items)
    if (yes and no) or (yes and not choice and _halts(text)):
        return Unclear(slot="answer", text=text, choices=("yes", "no"))
    beds = list(dict.fromkeys(i.label for i in items if i.role == "bed" and i.known))
    so = bool(choice) and text.lower().rstrip(" .!").endswith(("was right", "is right"))
    tubes = [i.name for i in items if i.role == "tube" and not (so and i is items[-1])]
    nums = [i for i in items if i.role == "num"]
    times = [i for i in items if i.role == "time"]
    told = bool(yes or no or choice)
    if len(nums) > 1 or len(times) > 1 or len(beds) > 1 or any(i.amount is None for i in nums):
        return None
    if any(i.role in STRANGE or (i.role == "bed" and not i.known) for i in items):
        return None
    if not told and len([1 for x in (beds, tubes, nums, times) if x]) != 1:
        return None
    if not told and (beds or _unknown(items)):
        return None
    if nums and len(cues(items, "word")) > 1:
        return None
    if nums and not told and nums[0].lead == "output" and nums[0].label is not None:
        return None  # "10 draining": a bed of which something is said
    thing = _is_no_line(items, no, nums) or _is_of_a_thing(items, choice) or _is_hedged(choice, text)
    if thing or any(_is_denied(i, no) or _is_counted(i, choice) for i in nums):
        return Unclear(slot="kind", text=text)
    at = times[0].when(arrived, REACH) if times else None
    made = Answered(
        answer="yes" if yes else "no" if no else None,
        choice=choice[0].name if choice else None,  # type: ignore[arg-type]
        bed=beds[0] if beds else None,
        tube=tube_name(tubes) if tubes else None,
        level_ml=nums[0].amount if nums else None,
        at=at.sure if at else None,
    )
    if made.level_ml is not None and not told and cues(items, "mark_of_question"):
        return Unclear(slot="level_ml", text=text, choices=(made.level_ml,), statement=made)
    if at is not None and at.sure is None:
        return Unclear(slot="at", text=text, choices=distinct(at.values or at.nearest), statement=made)
    return made


def _halts(text: str) -> bool:
    """ "yes no wait": the answer is taken back at its end."""
    return text.lower().rstrip(".!, ").endswith(HALTING)


def _said(items: tuple[Item, ...]) -> tuple[list[Item], list[Item], list[Item]]:
    """Yes, no and the choice, which settles both: "no, this one's right, the earlier one was off"."""
    yes, no, choice = cues(items, "yes"), cues(items, "no"), cues(items, "choice")
    return ([], [], choice) if yes and no and choice else (yes, no, choice)


def _is_no_line(items: tuple[Item, ...], no: list[Item], nums: list[Item]) -> bool:
    """ "6 no 1700 line": there is none of then; "no, line 340" answers."""
    return bool(no and nums) and any(i.value == "level" and i.start == nums[0].end for i in items)


def _is_denied(number: Item, no: list[Item]) -> bool:
    """ "mark 1050 not correct": which is right was not said."""
    return bool(no) and number.lead == "level" and number.end <= no[0].start


def _is_counted(number: Item, choice: list[Item]) -> bool:
    """ "second 1": which of several it is, or a level?"""
    named = any(c.end == number.start and c.name in {"first", "second"} for c in choice)
    return named and not number.unit


def _is_of_a_thing(items: tuple[Item, ...], choice: list[Item]) -> bool:
    """ "second box 240": which of the boxes it is of."""
    things = {i.start for i in items if i.role == "cue" and i.value in {"canister", "tubeword", "word"}}
    return any(c.end in things and c.name in {"first", "second"} for c in choice)


def _is_hedged(choice: list[Item], text: str) -> bool:
    """ "may have misread it", "wait a second": it is no answer."""
    said = text.lower().replace(",", " ").replace(".", " ").split()
    waiting = any(last == "second" and first in {"a", "one"} for first, last in pairwise(said))
    return bool(choice) and (waiting or not HEDGED.isdisjoint(said))


def _unknown(items: tuple[Item, ...]) -> bool:
    return bool(cues(items, "word"))


def other(items: tuple[Item, ...], text: str) -> list[Statement | Unclear]:
    """Help, and "seen"; "HELP 9 bleeding" calls for help, and not for how to write."""
    if OTHERS.isdisjoint([i.value for i in items]):
        return []
    kinds = {i.name for i in cues(items, "kind")}
    helped = kinds == {"help"} and not any(i.role == "cue" and i.value in TELLING for i in items)
    if helped and any(i.role in VALUES | {"level"} for i in items):
        return [Unclear(slot="kind", text=text)]
    if cues(items, "howto") and any(i.role == "bed" for i in items):
        return [Unclear(slot="kind", text=text)]  # "how do i delete bed 8's 1900 mark?"
    if helped or (cues(items, "howto") and not any(i.role in VALUES for i in items)):
        return [Help()]
    if kinds == {"acknowledged"} and not _tells_more(items):
        beds = list(dict.fromkeys(i.label for i in items if i.role == "bed"))
        return [Acknowledged(bed=bed) for bed in beds or [None]]
    return []


def seen(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """A notice that was seen, without what is being done about it: "seen 5, paging trauma now"."""
    if not items or items[0].name != "acknowledged":
        return items
    acts = next((k for k, i in enumerate(items) if i.unread and i.name in ACTING), len(items))
    doing = all(
        i.unread or i.role == "sep" or is_now(i) or (i.role == "cue" and i.value in {"reason", "filler"})
        for i in items[acts:]
    )
    return items[:acts] if acts and doing else items


def _tells_more(items: tuple[Item, ...]) -> bool:
    """Whether it tells something besides that it was seen."""
    told = any(i.role == "cue" and i.value in FOUND for i in items)
    return told or any(i.role in {"num", "time", "bad"} for i in items)
