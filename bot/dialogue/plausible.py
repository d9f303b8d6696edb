"""Whether a dictated line can be recorded at once (`voice_confirm = "unsure"`): the ledger as second witness.

How it is computed. The drain's last hours give a mean rate and its spread; a line's *strain* is how far its
rise is from what that rate makes expected, in units of what is usual (three quarters of the expected rise,
twice the spread of the hourly rates, and 10 mL, added up). A line below the one before has no end of strain.
A line passes when its strain is at most 1 and every sound-alike of it (teen and ty, a digit dropped or
doubled, five and nine, hundred and fifty) strains more by 2 at the least, and when no neighbouring or
sound-alike bed has a drain that the line would fit as well. Without two lines of the last hours there is no
witness: it is asked. Only lines pass; amounts, corrections and checks are always read back first.

What that stops and how often it asks needlessly is measured on what recognisers wrote
(`python -m tests.dialogue.voice_figures`; the README has the table). A unit that saves little asking by it
keeps "always".
"""

from __future__ import annotations

from datetime import datetime, timedelta
from itertools import pairwise
from statistics import mean, pstdev

from bot.dialogue.bedside import Bedside
from bot.dialogue.said import Report, Said
from bot.engine.entries import Line
from bot.engine.ledger import Ledger

REACH = timedelta(hours=6)
USUAL = 1.0
APART = 2.0
_LEAST_ML = 10.0
_NO_END = float("inf")
_TEENS = {f"1{digit}": f"{digit}0" for digit in "3456789"}
_TURNED = (*_TEENS.items(), *((ty, teen) for teen, ty in _TEENS.items()), ("00", "50"), ("50", "00"))
_HEARD_AS = {"5": "9", "9": "5"}


def is_plausible(bedside: Bedside, said: Said, ledger: Ledger | None) -> bool:
    """Whether this line fits its drain, and nothing that sounds like it fits about as well."""
    if ledger is None or not isinstance(said, Report) or not isinstance(said.fact, Line) or said.final_ml:
        return False
    at, level = bedside.moment(said.at), said.fact.level_ml
    return fits(ledger, at, level) and not _fits_elsewhere(bedside, said.bed, at, level)


def fits(ledger: Ledger, at: datetime, level_ml: int) -> bool:
    """Whether the line is usual for the drain, and far more so than anything that sounds like it."""
    own = strain(ledger, at, level_ml)
    alike = min((strain(ledger, at, each) for each in sound_alikes(level_ml)), default=_NO_END)
    return own <= USUAL and alike >= own + APART


def strain(ledger: Ledger, at: datetime, level_ml: int) -> float:
    """How far the line is from what the last hours make expected; 1 is still usual."""
    before = ledger.level_before(at)
    rates = recent_rates(ledger, at)
    if before is None or not rates or level_ml < before.level_ml:
        return _NO_END
    hours = max((at - before.at) / timedelta(hours=1), 0.25)
    expected = mean(rates) * hours
    usual = 0.75 * expected + 2 * pstdev(rates) * hours + _LEAST_ML
    return abs(level_ml - before.level_ml - expected) / usual


def recent_rates(ledger: Ledger, at: datetime) -> list[float]:
    """The rates between the lines of the last hours before that moment, in mL/h."""
    levels = [each for each in ledger.levels if at - REACH <= each.at < at]
    return [
        (end.total_ml - begin.total_ml) / ((end.at - begin.at) / timedelta(hours=1))
        for begin, end in pairwise(levels)
        if end.at > begin.at and not end.baseline
    ]


def sound_alikes(number: int) -> frozenset[int]:
    """The numbers that a recogniser may have heard instead, or that it may have made this of."""
    digits = str(number)
    found: set[str] = set()
    for place in range(len(digits)):
        head, digit, tail = digits[:place], digits[place], digits[place + 1 :]
        found |= {head + tail, head + digit * 2 + tail, head + _HEARD_AS.get(digit, digit) + tail}
        for heard, meant in _TURNED:
            if digits.startswith(heard, place):
                found.add(head + meant + digits[place + 2 :])
    if digits[-1] == "8":
        found.add(f"{digits[:-1]}0")  # "120 at" comes back as 128; the other way round was never seen
    return frozenset(int(each) for each in found if each) - {number}


def _fits_elsewhere(bedside: Bedside, bed: str, at: datetime, level_ml: int) -> bool:
    """Whether a bed that sounds or stands near has a drain that the line would fit too."""
    for other in near_beds(bed, bedside.context.unit.beds):
        if any(strain(each, at, level_ml) <= USUAL for each in bedside.patient(other).drains):
            return True
    return False


def near_beds(bed: str, beds: tuple[str, ...]) -> tuple[str, ...]:
    """The unit's beds next to this one, and those that sound like it."""
    if not bed.isdigit():
        return ()
    near = {int(bed) - 1, int(bed) + 1, *sound_alikes(int(bed))}
    return tuple(each for each in beds if each.isdigit() and int(each) in near)
