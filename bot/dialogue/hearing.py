"""Dictated readings: read back and recorded after a yes, unless the unit lets a plausible one pass.

Recognisers turn 1,050 into 1,015 with nothing in the words to show it, so what was heard is asked back
(`voice_confirm = "always"`), or asked when the ledger makes a sound-alike about as likely ("unsure").
What carries no number is recorded at once: a disconnected tube does not wait for a yes.
"""

from __future__ import annotations

from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import told_back
from bot.dialogue.dangers import dangers_at_its_bed, dangers_of
from bot.dialogue.locate import Spot
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.plausible import is_plausible
from bot.dialogue.said import Amount, Fix, NotSure, Report, Said
from bot.engine.entries import Checked, Described, Exchanged, Line, Ordered, Placed
from bot.engine.ledger import Ledger
from bot.wording import questions


def carries_a_number(said: Said) -> bool:
    """Whether a misheard number could change the ledger."""
    match said:
        case Amount() | Fix():
            return True
        case Report(final_ml=int()):
            return True
        case Report(fact=Line() | Checked() | Ordered()):
            return True
        case Report(fact=Placed(opening_ml=int()) | Described(weight_kg=float() | int())):
            return True
        case Report(fact=Exchanged(opening_ml=opening)):
            return opening > 0
        case _:
            return False


def is_unheard(bedside: Bedside, said: Said, ledger: Ledger | None, grant: Grant) -> bool:
    """Whether the statement was dictated and must be read back before it is recorded."""
    if bedside.context.channel != "voice" or grant.heard or not carries_a_number(said):
        return False
    if bedside.context.unit.voice_confirm == "always":
        return True
    return not is_plausible(bedside, said, ledger)


def ask_heard(bedside: Bedside, said: Report | Fix, spot: Spot, grant: Grant) -> Part:
    """The read-back of one dictated statement, with the danger that it would mean."""
    drain = spot.ledger.drain if spot.ledger else None
    pending = Pending(ask=Ask.HEARD, said=said, grant=grant, drains=(drain,) if drain else ())
    return bedside.ask(
        pending,
        questions.heard(told_back(said, spot.at, bedside.view)),
        About(
            bed=spot.bed,
            tube=spot.tube,
            drain=drain,
            slot="level_ml",
            kind="corrected" if isinstance(said, Fix) else said.fact.kind,
        ),
        dangers=dangers_of(bedside, said, spot.ledger, grant.target) if spot.ledger else (),
    )


def ask_heard_whole(bedside: Bedside, items: tuple[Said | NotSure, ...]) -> Part:
    """The read-back of a dictated message of several statements, in one question."""
    readings = tuple(item for item in items if not isinstance(item, NotSure))
    first = readings[0]
    pending = Pending(ask=Ask.HEARD, said=first, rest=tuple(each for each in items if each is not first))
    told = "; ".join(
        told_back(each, bedside.moment(getattr(each, "at", None)), bedside.view) for each in readings
    )
    dangers = tuple(
        danger
        for each in readings
        if isinstance(each, Report)
        for danger in dangers_at_its_bed(bedside, each)
    )
    return bedside.ask(
        pending,
        questions.heard(told),
        About(bed=getattr(first, "bed", None), slot="level_ml", kind="mark"),
        dangers=dangers,
    )
