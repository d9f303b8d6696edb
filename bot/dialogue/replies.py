"""Which question an answer is for.

A bare answer counts only while exactly one of the sender's questions is open; with a bed it is for that
bed's, and settles an unconfirmed reading of the bed too, whoever gave it. An answer sent before the question
is none.
"""

from __future__ import annotations

from bot.dialogue.answers import verdict
from bot.dialogue.bedside import Bedside
from bot.dialogue.brief import all_named
from bot.dialogue.part import Part
from bot.dialogue.pending import Pending
from bot.dialogue.reminders import unconfirmed_of_no_bed
from bot.dialogue.said import Answered, Report
from bot.dialogue.said_json import loaded
from bot.dialogue.verdicts import NoAnswer, level_of
from bot.engine.entries import Exchanged, Line
from bot.store.questions import Question
from bot.wording import help as help_words
from bot.wording.gsm import gsm_only
from bot.wording.readback import INVITATION, dropped_text


def find_question(bedside: Bedside, answer: Answered) -> Question | Part:
    """The question that is answered, or why there is none."""
    mine = bedside.open_questions()
    lacking = _lacking(mine, answer)
    if len(lacking) == 1:
        return _in_time(bedside, lacking[0])
    chosen = _of_one_bed(bedside, tuple(each for each in mine if _fits(each, answer)), answer)
    if not chosen and answer.bed is not None:
        unconfirmed = _unconfirmed(bedside, answer)
        if unconfirmed is not None:
            return unconfirmed
    if not chosen and (answer.bed is None or _may_turn(mine, answer)):
        chosen = mine
    if not chosen:
        return _none_open(bedside, answer)
    return _in_time(bedside, chosen[0]) if len(chosen) == 1 else _which(chosen)


def told_unasked(bedside: Bedside, answer: Answered) -> Report | None:
    """What a message in the words of an answer tells where nothing was asked about its bed.

    "11 new canister": it was changed. "Yeah bed 9 reads 260 at 1500": a line.
    """
    bed = answer.bed
    if bed is None or bedside.questions_at(bed):
        return None
    if answer == Answered(bed=bed, tube=answer.tube, choice="new_canister"):
        return Report(bed=bed, tube=answer.tube, fact=Exchanged()) if bedside.patient(bed).drains else None
    line = Answered(bed=bed, tube=answer.tube, at=answer.at, yes=True, level_ml=answer.level_ml)
    if answer.level_ml is None or answer != line or bedside.open_questions():
        return None
    return Report(bed=bed, tube=answer.tube, at=answer.at, fact=Line(level_ml=answer.level_ml))


def _lacking(mine: tuple[Question, ...], answer: Answered) -> tuple[Question, ...]:
    """The questions that ask just for what a bare "bed 4" or "left" names."""
    if answer != Answered(bed=answer.bed, tube=answer.tube):
        return ()
    slots = ("bed", "to_bed") if answer.bed is not None else ("tube",)
    return tuple(each for each in mine if each.slot in slots)


def _of_one_bed(bedside: Bedside, fits: tuple[Question, ...], answer: Answered) -> tuple[Question, ...]:
    """Of several questions about the bed that was named, those that this can be an answer to."""
    if len(fits) < 2:
        return fits
    held = [(each, loaded(each.said_json, Pending)) for each in fits]
    named = [each for each, pending in held if answer.level_ml == level_of(pending.said) is not None]
    answered = [each for each, p in held if not isinstance(verdict(bedside, p, answer), NoAnswer)]
    return tuple(named if len(named) == 1 else answered if answered else fits)


def _may_turn(mine: tuple[Question, ...], answer: Answered) -> bool:
    """Whether a bed that no question is about can be an answer: "no, I meant bed 9", but never "9 yes"."""
    if len(mine) == 1 and mine[0].slot in ("bed", "to_bed"):
        return True
    return answer.yes is not True and answer.choice is None


def _fits(question: Question, answer: Answered) -> bool:
    """Whether the bed (and tube) that the answer names is the question's."""
    return answer.bed is not None and question.bed == answer.bed and _is_about(question, answer)


def _is_about(question: Question, answer: Answered) -> bool:
    held = getattr(loaded(question.said_json, Pending).said, "tube", None)
    return answer.tube is None or question.slot == "tube" or held in (None, answer.tube)


def _unconfirmed(bedside: Bedside, answer: Answered) -> Question | None:
    """The bed's only reading whose question nobody answered in time."""
    beds = bedside.questions_at(answer.bed) if answer.bed is not None else ()
    left = [each for each in beds if each.lapsed(bedside.now) and _is_about(each, answer)]
    mine = [each for each in left if each.sender == bedside.context.person.id]
    only = mine if len(mine) == 1 else left
    return only[0] if len(only) == 1 else None


def _none_open(bedside: Bedside, answer: Answered) -> Part:
    """Nothing to answer; the beds of the sender's unconfirmed readings are shown with it."""
    if _was_invited(bedside) and answer.bed is None:
        text = help_words.NO_EARLIER if answer.yes is False else help_words.SEND_EARLIER
        return Part(status="told", kind="answered", text=text)
    if answer == Answered(yes=False) and (dropped := _dropped(bedside)):
        return Part(status="told", kind="answered", text="\n".join(dropped))
    mine = bedside.book.unsettled(sender=bedside.context.person.id)
    beds = tuple(each.bed for each in mine if each.bed is not None)
    text = gsm_only(help_words.nothing_open(answer.bed, _bare_bed(bedside, answer), _correction(answer)))
    return Part(status="told", kind="answered", bed=answer.bed, text=text, beds=beds)


def _correction(answer: Answered) -> str | None:
    """What "3 misread, 130" means where nothing was asked: the last line is wrong."""
    if answer.choice != "misread" or answer.bed is None or answer.level_ml is None:
        return None
    return help_words.correction_to_say(answer.bed, answer.tube, answer.level_ml)


def _bare_bed(bedside: Bedside, answer: Answered) -> str | None:
    """The bed that a number alone may be: "12"."""
    label = str(answer.level_ml)
    return (
        label if answer == Answered(level_ml=answer.level_ml) and label in bedside.context.unit.beds else None
    )


def _dropped(bedside: Bedside) -> tuple[str, ...]:
    """The sender's readings of no bed, settled: no other answer could name them."""
    held = unconfirmed_of_no_bed(bedside)
    for each in held:
        bedside.book.settle(each.id, "dropped")
    return tuple(dropped_text(all_named(loaded(each.said_json, Pending), bedside.view)) for each in held)


def _was_invited(bedside: Bedside) -> bool:
    """Whether the last reply to this sender invited the line of the shift before."""
    last = bedside.book.last_message(bedside.context.sender)
    return last is not None and INVITATION in (last.reply or "")


def _which(open_questions: tuple[Question, ...]) -> Part:
    briefs = tuple(loaded(each.said_json, Pending).brief or each.text for each in open_questions)
    beds = tuple(each.bed for each in open_questions if each.bed is not None)
    text = gsm_only(help_words.several_open(briefs, beds))
    question = open_questions[0]
    return Part(
        status="question", kind="answered", text=text, question=question, answered=True, tells_open=True
    )


def _in_time(bedside: Bedside, question: Question) -> Question | Part:
    sent = bedside.context.sent_at
    if sent is not None and sent < question.asked_at:
        return Part(
            status="question",
            kind="answered",
            bed=question.bed,
            text=f"{help_words.SENT_BEFORE}\n{question.text}",
            question=question,
            answered=True,
        )
    return question
