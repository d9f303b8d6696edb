"""From what was read to ledger words: each kind, what lacks, and what may be an answer."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, timezone
from typing import get_args

import pytest

from bot.dialogue.late import at_both
from bot.dialogue.said import (
    Amount,
    Answered,
    Fix,
    Message,
    NotSure,
    Query,
    Report,
    Said,
    SeenIt,
    Slots,
    TakeBack,
    Topic,
)
from bot.dialogue.slots import Lacking, built, filled
from bot.engine.entries import (
    Checked,
    Exchanged,
    Incident,
    Left,
    Line,
    Moved,
    Placed,
    Reason,
    Removed,
    What,
)
from bot.reading import in_ledger_words
from nlu import statements as read
from nlu.statements import Parsed, Unclear
from nlu.topics import RANK

EAST = timezone(timedelta(hours=-5))
SEVEN = datetime(2026, 3, 4, 19, tzinfo=EAST)
UTC_SEVEN = datetime(2026, 3, 5, 0, tzinfo=UTC)


@pytest.mark.parametrize(
    ("statement", "said"),
    [
        (
            read.Mark(bed="12", level_ml=1050, at=SEVEN, closing=True),
            Report(bed="12", at=UTC_SEVEN, fact=Line(level_ml=1050, closing=True)),
        ),
        (read.Drained(bed="12", volume_ml=0), Amount(bed="12", volume_ml=0)),
        (
            read.Placed(bed="12", tube="right", level_ml=0, reason="cardiac", tubes=("a", "b")),
            Report(
                bed="12",
                tube="right",
                fact=Placed(bed="12", tube="right", opening_ml=0, reason=Reason.CARDIAC, joined=("a", "b")),
            ),
        ),
        (read.Exchanged(bed="12", final_ml=1980), Report(bed="12", fact=Exchanged(), final_ml=1980)),
        (
            read.Exchanged(bed="12", opening_ml=40),
            Report(bed="12", fact=Exchanged(opening_ml=40)),
        ),
        (read.Removed(bed="12", level_ml=0), Report(bed="12", fact=Removed(), final_ml=0)),
        (read.Moved(bed="12", to_bed="14"), Report(bed="12", fact=Moved(from_bed="12", to_bed="14"))),
        (read.Left(bed="12"), Report(bed="12", fact=Left())),
        (read.Corrected(bed="12", at=SEVEN, level_ml=5), Fix(bed="12", at=UTC_SEVEN, level_ml=5)),
        (read.Withdrawn(), TakeBack()),
        (
            read.Checked(bed="12", seal_cm=2.0, tidaling=False),
            Report(bed="12", fact=Checked(seal_cm=2.0, tidaling=False)),
        ),
        (read.Incident(bed="12", what="tipped"), Report(bed="12", fact=Incident(what=What.TIPPED))),
        (read.Asked(topic="total", window="24h"), Query(topic="total", window="24h")),
        (read.Answered(answer="no", bed="9"), Answered(yes=False, bed="9")),
        (read.Acknowledged(bed="12"), SeenIt(bed="12")),
    ],
)
def test_a_statement_in_ledger_words(statement: read.Statement, said: Said) -> None:
    assert in_ledger_words(Parsed(text="", statements=(statement,))).said == (said,)


def test_a_chart_that_was_amended_is_told_from_cautions_that_were_seen() -> None:
    parsed = Parsed(text="12 amended", statements=(read.Acknowledged(bed="12"),))
    assert in_ledger_words(parsed).said == (SeenIt(bed="12", amended=True),)


def test_what_could_not_be_read_one_way_keeps_its_readings() -> None:
    readings = (read.Mark(bed="12", level_ml=210), read.Drained(bed="12", volume_ml=210))
    parsed = Parsed(
        text="bed 12 output 210",
        unclear=(Unclear(slot="kind", text="output 210", choices=("mark", "drained"), readings=readings),),
    )
    (item,) = in_ledger_words(parsed).unclear
    assert item == NotSure(
        slot="kind",
        text="output 210",
        choices=("mark", "drained"),
        readings=(Report(bed="12", fact=Line(level_ml=210)), Amount(bed="12", volume_ml=210)),
    )


@pytest.mark.parametrize("text", ["bed 9", "9", "Bed 9.", "room 9"])
def test_a_bare_bed_may_be_an_answer(text: str) -> None:
    parsed = Parsed(text=text, statements=(read.Asked(topic="last", bed="9"),))
    assert in_ledger_words(parsed).reply == Answered(bed="9")


@pytest.mark.parametrize("text", ["bed 9?", "what is the last line on 9"])
def test_a_question_about_a_bed_is_no_answer(text: str) -> None:
    parsed = Parsed(text=text, statements=(read.Asked(topic="last", bed="9"),))
    assert in_ledger_words(parsed).reply is None


@pytest.mark.parametrize(
    ("slots", "lacks"),
    [
        (Slots(kind="mark", bed="12"), "level_ml"),
        (Slots(kind="mark", values=(("level_ml", 5),)), "bed"),
        (Slots(kind="moved", bed="12"), "to_bed"),
        (Slots(kind="checked", values=(("seal_cm", 2.0),)), "bed"),
    ],
)
def test_a_statement_that_is_not_whole_names_what_lacks(slots: Slots, lacks: str) -> None:
    assert built(slots) == Lacking(lacks)


def test_a_slot_that_is_filled_makes_it_whole() -> None:
    slots = Slots(kind="mark", values=(("level_ml", 0),))
    assert built(filled(slots, "bed", "12")) == Report(bed="12", fact=Line(level_ml=0))


def test_times_that_differ_by_the_clock_of_sending_are_asked() -> None:
    arrived = Report(bed="12", at=UTC_SEVEN, fact=Line(level_ml=5))
    sent = Report(bed="12", at=UTC_SEVEN - timedelta(days=1), fact=Line(level_ml=5))
    both = at_both(Message(said=(arrived,)), Message(said=(sent,)))
    assert both.said == ()
    assert both.unclear[0].readings == (sent, arrived)
    assert both.unclear[0].choices == (sent.at, arrived.at)


def test_times_that_agree_are_taken() -> None:
    message = Message(said=(Report(bed="12", at=UTC_SEVEN, fact=Line(level_ml=5)), Query(topic="beds")))
    assert at_both(message, message) == message


def test_the_end_of_an_old_canister_is_not_taken_for_a_line_of_the_new_one() -> None:
    text = "final level of the old canister bed 3 was 85"
    message = in_ledger_words(Parsed(text=text, statements=(read.Mark(bed="3", level_ml=85),)))
    assert message.said == ()
    (item,) = message.unclear
    assert item.readings == (
        Report(bed="3", fact=Line(level_ml=85)),
        Report(bed="3", fact=Exchanged(), final_ml=85, of_old=True),
    )


def test_the_bed_that_was_meant_is_where_the_line_belongs() -> None:
    parsed = Parsed(text="no I meant bed 15, 550", statements=(read.Corrected(bed="15", level_ml=550),))
    assert in_ledger_words(parsed).said == (Fix(to_bed="15", level_ml=550),)


def test_a_number_before_the_right_tube_names_the_line_that_is_wrong() -> None:
    text = "correct bed 16 left 1000 to right"
    wrong = read.Corrected(bed="16", tube="left", level_ml=1000, to_tube="right")
    said = in_ledger_words(Parsed(text=text, statements=(wrong,))).said
    assert said == (Fix(bed="16", tube="left", was_ml=1000, to_tube="right"),)


def test_what_can_be_asked_of_the_reader_can_be_asked_of_the_ward() -> None:
    assert get_args(read.Topic) == get_args(Topic)
    assert sorted(RANK) == sorted(get_args(read.Topic))


ROUNDS = "1300 rounds 1A 330, 1B 905, 5A 1480"


def rounds(level_ml: int | None, text: str = ROUNDS, *sure: read.Statement) -> Message:
    """Of the round, what is asked about one bed."""
    span = read.Span(text.index("1A"), text.index("1A") + 2)
    asked = read.Mark(bed="1A", level_ml=level_ml, spans={"bed": span})
    unclear = Unclear(slot="level_ml" if level_ml is None else "at", text=text, statement=asked)
    return in_ledger_words(Parsed(text=text, statements=sure, unclear=(unclear,)))


def test_one_line_of_a_round_is_not_asked_for_as_if_it_were_all() -> None:
    numbers = ("1300", "330", "1", "905", "5", "1480")
    assert rounds(None).unclear == (NotSure(slot="kind", text=ROUNDS, beside=numbers),)


@pytest.mark.parametrize(
    ("message", "beside"),
    [
        (rounds(None, "1A 330 at 2530"), ("330", "2530")),
        (rounds(330), ("1300", "330", "1", "905", "5", "1480")),
        (rounds(None, ROUNDS, read.Away(bed="9")), ("1300", "330", "1", "905", "5", "1480")),
    ],
    ids=["one line", "its level is known", "something else is sure"],
)
def test_what_a_question_leaves_out_is_told_beside_it(message: Message, beside: tuple[str, ...]) -> None:
    (asked,) = message.unclear
    assert asked.partial is not None
    assert asked.beside == beside


def test_numbers_in_words_are_numbers_and_the_word_one_is_none() -> None:
    text = "bed twelve mark ten fifty, another one six hundred and ten, oh seven hundred"
    said = read.Mark(bed="12", spans={"bed": read.Span(4, 10)})
    message = in_ledger_words(
        Parsed(text=text, statements=(), unclear=(Unclear(slot="level_ml", text=text, statement=said),))
    )
    assert message.unclear[0].beside == ("ten fifty", "six hundred and ten", "oh seven hundred")
