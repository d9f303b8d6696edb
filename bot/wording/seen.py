"""What is said to a "seen" (or "amended") whose bed was not told."""

from __future__ import annotations

from bot.wording import formats
from bot.wording.gsm import gsm_only
from bot.wording.questions import Wording


def done_words(amended: bool) -> str:
    """What was done, by the word that a nurse says it with."""
    return "amended" if amended else "seen"


def which_bed(amended: bool, beds: tuple[str, ...]) -> Wording:
    """The question for the bed, with those where something waits: "Seen: which bed? Waiting: bed 12." """
    label = "bed" if len(beds) == 1 else "beds"
    head = done_words(amended).capitalize()
    return Wording(gsm_only(f"{head}: which bed? Waiting: {label} {formats.listed(beds, 'and')}."))


def say_the_bed(amended: bool, beds: tuple[str, ...]) -> str:
    """The same where another question is open already, so that a bare bed would be taken for its answer."""
    return f'{which_bed(amended, beds).text} Say it with the bed: "{done_words(amended)} {beds[0]}".'


def nothing_waits(amended: bool, unit: str) -> str:
    """Nothing that the word could be about, anywhere on the unit."""
    what = "no chart waits to be amended" if amended else "no caution waits to be seen"
    told = f"Nothing noted: {what} on {unit}."
    return gsm_only(f'{told} If you mean a bed, say "{done_words(amended)}" and the bed.')


NO_BED_YET = "Nothing noted: its bed is not known yet."
