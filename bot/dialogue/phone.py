"""A ward phone that several people write from: it asks who is writing, and remembers until the shift ends.

What was said before the name is known waits for it; an entry carries the person's name, never the phone's.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import TypeAlias

from bot.dialogue.answer import Answer
from bot.dialogue.bedside import About, Bedside
from bot.dialogue.brief import brief
from bot.dialogue.compose import composed
from bot.dialogue.context import Context
from bot.dialogue.dangers import held_dangers
from bot.dialogue.part import Part
from bot.dialogue.pending import Ask, Pending
from bot.dialogue.said import HelpMe, Message, NotSure, Said
from bot.dialogue.said_json import loaded
from bot.engine.shifts import shift_at
from bot.store.book import Book
from bot.store.questions import Question
from bot.unit import Person
from bot.wording import questions
from bot.wording.gsm import gsm_only

Take: TypeAlias = Callable[[Message, Context, Book], Answer]

_AROUND = re.compile(r"^(?:(?:this is|it'?s|i'?m|i am)\s+)?(.+?)(?:\s+here)?[.!]?$", re.IGNORECASE)


def take_shared(message: Message, context: Context, book: Book, take: Take) -> Answer:
    """The answer to a message from the phone, once it is known whose words they are."""
    named = _named(message.text, context)
    if named is not None:
        return _now_writing(named, context, book, take)
    writer = writing(context, book)
    if writer is None:
        return _ask_who(message, context, book)
    return take(message, _as(writer, context, book), book)


def writing(context: Context, book: Book) -> Person | None:
    """Who said in this shift that they write from this phone, the last of them."""
    start = shift_at(context.unit.policy.schedule, context.now).start
    said = [
        (at, person.id, person)
        for person in _people(context)
        if (at := book.shown_at(_key(person), context.person.id)) is not None and at >= start
    ]
    return max(said, key=lambda each: each[:2])[2] if said else None


def _people(context: Context) -> tuple[Person, ...]:
    return tuple(
        each
        for each in context.unit.people
        if not each.shared and (each.until is None or each.until > context.now)
    )


def _key(person: Person) -> str:
    return f"writing:{person.id}"


def _named(text: str, context: Context) -> Person | None:
    """The person whose name the whole message is: "Amy", "this is Amy", "Amy here"."""
    found = _AROUND.match(text.strip())
    name = found[1].casefold() if found else ""
    fits = [each for each in _people(context) if each.name.casefold() == name]
    return fits[0] if len(fits) == 1 else None


def _as(writer: Person, context: Context, book: Book) -> Context:
    """The same message in the writer's name."""
    book.take_up(context.message_id, writer.id, context.now)
    return replace(context, person=writer, device=context.person.id)


def _now_writing(writer: Person, context: Context, book: Book, take: Take) -> Answer:
    held = _held(context, book)
    book.show(_key(writer), context.person.id, context.now)
    mine = _as(writer, context, book)
    if held is not None:
        book.settle(held.id, "answered")
        rest = loaded(held.said_json, Pending).rest
        said = tuple(each for each in rest if not isinstance(each, NotSure))
        unclear = tuple(each for each in rest if isinstance(each, NotSure))
        return take(Message(said=said, unclear=unclear), mine, book)
    bedside = Bedside(context=mine, book=book)
    end = shift_at(context.unit.policy.schedule, context.now).end
    text = gsm_only(f"{writer.name} is writing from this phone until {bedside.view.clock(end)}.")
    return composed(bedside, [Part(status="told", kind="who", text=text)])


def _held(context: Context, book: Book) -> Question | None:
    """The last message that waits for its writer's name."""
    waiting = [
        each
        for each in book.unsettled(sender=context.person.id)
        if each.slot == Ask.WHO.value and not each.lapsed(context.now)
    ]
    return waiting[-1] if waiting else None


def _ask_who(message: Message, context: Context, book: Book) -> Answer:
    bedside = Bedside(context=context, book=book)
    items: tuple[Said | NotSure, ...] = (*message.said, *message.unclear)
    if items == (HelpMe(),):
        items = ()
    for earlier in book.unsettled(sender=context.person.id):
        if earlier.slot == Ask.WHO.value:
            items = (*loaded(earlier.said_json, Pending).rest, *items)
            book.settle(earlier.id, "replaced")
    told = "; ".join(brief(each, bedside.view) for each in items if not isinstance(each, NotSure))
    pending = Pending(ask=Ask.WHO, rest=items, brief=told)
    beds = {each.bed for each in items if not isinstance(each, NotSure) and each.bed is not None}
    bed = next(iter(beds)) if len(beds) == 1 and beds <= set(context.unit.beds) else None
    asked = bedside.ask(pending, questions.who(told), About(bed=bed, slot=Ask.WHO.value, kind="who"))
    urgent = held_dangers(bedside, items[0], items[1:]) if items else []
    return composed(bedside, [*urgent, asked])
