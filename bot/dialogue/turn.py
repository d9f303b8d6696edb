"""One turn of the conversation: what a message does to the ledger, and the whole answer to it.

`take` is what the intake calls, once a message, inside its transaction.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import TypeAlias

from bot.dialogue import phone
from bot.dialogue.answer import Answer
from bot.dialogue.bedside import Bedside
from bot.dialogue.compose import composed
from bot.dialogue.context import Context
from bot.dialogue.dangers import held_dangers
from bot.dialogue.giving_way import asked_again, at_the_pending_line, give_way
from bot.dialogue.hearing import ask_heard_whole, carries_a_number
from bot.dialogue.moves import Move, move_of, take_move
from bot.dialogue.part import Part
from bot.dialogue.pending import Grant, Pending
from bot.dialogue.reminders import waiting_told
from bot.dialogue.replies import find_question, told_unasked
from bot.dialogue.said import Amount, Answered, HelpMe, Message, NotSure, Query, Report, Said, TakeBack
from bot.dialogue.said_json import loaded
from bot.dialogue.seen import seen_gives_way
from bot.dialogue.settling import settle
from bot.dialogue.take import take as take_one
from bot.dialogue.taken import as_reply
from bot.dialogue.unsure import ask_not_sure
from bot.engine.entries import Moved
from bot.store.book import Book
from bot.unit import Role
from bot.wording import help as help_words
from bot.wording import questions, small_talk
from bot.wording.readback import not_read_text

Item: TypeAlias = Said | NotSure


def take(message: Message, context: Context, book: Book) -> Answer:
    """The whole answer to a message, with everything that it recorded and asked."""
    if context.person.shared:
        return phone.take_shared(message, context, book, _take)
    return _take(message, context, book)


def _take(message: Message, context: Context, book: Book) -> Answer:
    bedside = Bedside(
        context=context,
        book=book,
        told_apart=_told_apart(message.said),
        leaving=frozenset(
            each.bed for each in message.said if isinstance(each, Report) and isinstance(each.fact, Moved)
        ),
    )
    return composed(bedside, _Turn(bedside).parts(message))


def _told_apart(said: Iterable[Said]) -> frozenset[tuple[str, str]]:
    return frozenset(
        (each.bed, each.tube) for each in said if isinstance(each, Report | Amount) and each.tube is not None
    )


def _nothing_told(text: str) -> Part:
    """What is said to words that tell and ask nothing; a number among them was not recorded."""
    if small_talk.answered(text):
        return Part(status="told", kind="help", text=small_talk.REPLY)
    if any(map(str.isdigit, text)):
        return Part(status="told", kind="unclear", text=questions.not_understood(text))
    return Part(status="told", kind="help", text=help_words.HELP)


def _unread(message: Message) -> list[Part]:
    """What of a message was left out, told behind what was read."""
    return [Part(status="told", kind="note", last=not_read_text(message.unread))] if message.unread else []


class _Turn:
    """Takes the statements of one message in their order, and what waited behind a question they settle."""

    def __init__(self, bedside: Bedside) -> None:
        self._bedside = bedside
        self._heard = False
        self._moves: dict[int, Move] = {}

    def parts(self, message: Message) -> list[Part]:
        """What each statement came to, in the order of the message."""
        items = as_reply(self._bedside, message)
        if self._bedside.context.person.role is Role.READER and any(map(self._writes, items)):
            return [Part(status="refused", kind="refused", text=help_words.READS_ONLY)]
        moves = (each for each in items if isinstance(each, Report) and isinstance(each.fact, Moved))
        self._moves = {id(each): move_of(self._bedside, each) for each in moves}
        gone = seen_gives_way(self._bedside, items)
        return [*(self._all(items) or [_nothing_told(message.text)]), *gone, *_unread(message)]

    def _all(self, items: tuple[Item, ...]) -> list[Part]:
        if self._is_dictated_list(items):
            return [ask_heard_whole(self._bedside, items)]
        parts: list[Part] = []
        left = list(items)
        while left:
            item = left.pop(0)
            waiting = self._waits_for(item, left)
            self._bedside.waiting = waiting
            new = self._one(item)
            self._bedside.waiting = ()
            left, self._bedside.freed = [*self._bedside.freed, *left], ()
            if waiting and self._bedside.holds_back(new):
                parts += held_dangers(self._bedside, item, waiting)
                new = [*new, waiting_told(self._bedside, waiting)]
                left = [each for each in left if not any(each is held for held in waiting)]
            parts += new
        return parts

    def _waits_for(self, item: Item, rest: list[Item]) -> tuple[Item, ...]:
        """What must not be recorded before this: by voice everything, else what is said of the same drain."""
        if isinstance(item, Answered | Query | HelpMe):
            return ()
        if self._bedside.context.channel == "voice":
            return tuple(rest)
        place = _place(item)
        return tuple(each for each in rest if place is not None and _place(each) == place)

    def _is_dictated_list(self, items: tuple[Item, ...]) -> bool:
        """A dictated message of several readings is read back whole, in one question."""
        context = self._bedside.context
        if context.channel != "voice" or self._heard or context.unit.voice_confirm != "always":
            return False
        readings = [each for each in items if not isinstance(each, NotSure) and carries_a_number(each)]
        return len(readings) > 1 and len(readings) == len(items)

    def _one(self, item: Item) -> list[Part]:
        match item:
            case NotSure():
                part = ask_not_sure(self._bedside, item)
                return [part, *asked_again(self._bedside, part)]
            case Answered():
                return self._answered(item)
            case Query() | HelpMe():
                return [take_one(self._bedside, item, Grant())]
            case _:
                return self._statement(item)

    def _statement(self, said: Said) -> list[Part]:
        bedside = self._bedside
        if id(said) in self._moves:
            return [take_move(bedside, self._moves[id(said)], Grant())]
        said = at_the_pending_line(bedside, said)
        part = take_one(bedside, said, Grant(heard=self._heard))
        return [part, *give_way(bedside, said, part)]

    def _answered(self, answer: Answered) -> list[Part]:
        if self._takes_back(answer):
            return [take_one(self._bedside, TakeBack(), Grant())]
        if (told := told_unasked(self._bedside, answer)) is not None:
            return self._statement(told)
        found = find_question(self._bedside, answer)
        if isinstance(found, Part):
            return [found]
        pending = loaded(found.said_json, Pending)
        waiting = (each for each in (pending.said, *pending.rest) if isinstance(each, Report | Amount))
        self._bedside.told_apart |= _told_apart(waiting)
        parts, rest = settle(self._bedside, found, answer)
        self._heard = True
        return [*parts, *self._all(rest)] if rest else parts

    def _writes(self, item: Item) -> bool:
        """Whether it would write to a ledger; what is not clear of a query, and its answer, would not."""
        match item:
            case Query() | HelpMe():
                return False
            case NotSure(partial=partial):
                return partial is not None and partial.kind != "asked"
            case Answered():
                return not self._bedside.open_questions()
            case _:
                return True

    def _takes_back(self, answer: Answered) -> bool:
        """By voice, a bare "no" right after a read-back undoes it."""
        bare = answer == Answered(yes=False)
        return bare and self._bedside.context.channel == "voice" and not self._bedside.open_questions()


def _place(item: Item) -> tuple[str, str | None] | None:
    return (item.bed, item.tube) if isinstance(item, Report | Amount) else None
