"""One statement to the module that records its kind."""

from __future__ import annotations

from bot.dialogue.bedside import Bedside
from bot.dialogue.canisters import is_late_final, take_exchange, take_final, take_removal
from bot.dialogue.corrections import take_fix, take_moved_line
from bot.dialogue.events import take_event, take_for_bed, take_placement
from bot.dialogue.lines import take_amount
from bot.dialogue.moves import move_of, take_move
from bot.dialogue.part import Part
from bot.dialogue.pending import Grant
from bot.dialogue.queries import answer_query
from bot.dialogue.said import Amount, Answered, Fix, HelpMe, Query, Report, Said, SeenIt, TakeBack
from bot.dialogue.seen import take_seen
from bot.dialogue.undo import take_back
from bot.engine.entries import (
    Away,
    Back,
    Described,
    Exchanged,
    Left,
    Line,
    Moved,
    Placed,
    Removed,
)
from bot.wording import help as help_words


def take(bedside: Bedside, said: Said, grant: Grant) -> Part:
    """What one statement came to; an answer is none here, its question is looked for before."""
    match said:
        case Report():
            return _take_report(bedside, said, grant)
        case Amount():
            return take_amount(bedside, said, grant)
        case Fix():
            return take_fix(bedside, said, grant)
        case TakeBack():
            return take_back(bedside, said, grant)
        case SeenIt():
            return take_seen(bedside, said)
        case Query():
            return take_query(bedside, said)
        case HelpMe():
            return Part(status="told", kind="help", text=help_words.HELP)
        case Answered():
            return Part(status="told", kind="answered", bed=said.bed, text=help_words.nothing_open(said.bed))


def _take_report(bedside: Bedside, said: Report, grant: Grant) -> Part:
    match said.fact:
        case Line():
            return take_moved_line(bedside, said, grant)
        case Exchanged() | Removed() if is_late_final(said, grant):
            return _late_final(bedside, said, grant)
        case Exchanged():
            return take_exchange(bedside, said, grant)
        case Removed():
            return take_removal(bedside, said, grant)
        case Placed():
            return take_placement(bedside, said, grant)
        case Moved():
            return take_move(bedside, move_of(bedside, said), grant)
        case Described() | Away() | Back() | Left():
            return take_for_bed(bedside, said, grant)
        case _:
            return take_event(bedside, said, grant)


def take_query(bedside: Bedside, query: Query) -> Part:
    """What was asked of the bot, told."""
    reply = answer_query(query, bedside.context, bedside.book)
    return Part(
        status="told",
        kind="asked",
        bed=query.bed,
        tube=query.tube,
        text=reply.text,
        cautions=reply.cautions,
        beds=reply.beds,
        tells_unconfirmed=reply.tells_unconfirmed,
        spelt=query.topic == "repeat" and bedside.context.channel == "voice",
    )


def _late_final(bedside: Bedside, said: Report, grant: Grant) -> Part:
    event = bedside.book.entry(str(grant.target))
    assert event is not None
    assert grant.drain is not None
    assert said.final_ml is not None
    return take_final(bedside, grant.drain, event, said.final_ml, grant)
