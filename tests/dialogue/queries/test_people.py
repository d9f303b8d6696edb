"""Who am I, the last reply again, and what waits for an answer."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from bot.engine.entries import Line
from bot.intake.roster import with_changes
from bot.store.book import PeopleEvent
from bot.unit import Person, Role
from tests.dialogue.queries.ward import AMY, BEN, CARLA, DAN, Ward, moment


@pytest.mark.parametrize(
    ("who", "role", "may"),
    [
        (AMY, "nurse", "correct lines of this and the previous shift"),
        (CARLA, "charge", "correct any line"),
        (DAN, "reader", "read its beds"),
    ],
)
def test_who_am_i_tells_name_role_unit_and_what_it_allows(who: Person, role: str, may: str) -> None:
    first, second = Ward().asks("4 19:00", "me", who=who).lines
    assert first == f"You are {who.name}, {role}, Ward 4."
    assert may in second


def test_a_person_for_a_time_is_told_until_when() -> None:
    agency = replace(AMY, until=moment("5 07:00"))
    assert Ward().asks("4 19:00", "me", who=agency).lines[0] == (
        "You are Amy, nurse, Ward 4, until Thu 5 Mar 07:00."
    )


def test_the_last_reply_is_told_again_word_for_word() -> None:
    ward = Ward()
    ward.replies("4 19:00", json.dumps({"reply": "Bed 12, 19:00, line 1,050 mL.\nChart 210 mL."}))
    ward.replies("4 19:01", json.dumps({"reply": "Bed 3, 19:00, line 80 mL."}), who=BEN)

    assert ward.asks("4 19:05", "repeat").lines == ("Bed 12, 19:00, line 1,050 mL.", "Chart 210 mL.")


def test_someone_who_was_told_nothing_yet_is_told_so() -> None:
    assert Ward().asks("4 19:05", "repeat").lines == ("Nothing was said to you here before.",)


def test_someone_who_is_no_longer_on_the_list_is_still_named_in_what_they_told() -> None:
    ward = Ward()
    gone = Person(id="ag-7", name="Gina", role=Role.NURSE)
    ward.tell("4 19:00", "12", Line(level_ml=100), who=gone)
    event = PeopleEvent(
        unit="ward-4",
        person="ag-7",
        event="removed",
        name="Gina",
        role="nurse",
        until=None,
        at=moment("4 19:30"),
        by="ops",
    )
    ward = ward.with_unit(with_changes(ward.unit, (event,)))
    assert "(Gina, " in ward.asks("4 19:35", "last", "12").text


def test_nothing_waits_in_a_quiet_ward() -> None:
    ward = Ward()
    assert ward.asks("4 19:00", "open").lines == ("Ward 4: no open questions and no unconfirmed readings.",)
    assert ward.asks("4 19:00", "open", "12").lines == (
        "Bed 12: no open questions and no unconfirmed readings.",
    )


def test_a_question_is_open_for_a_while_and_its_reading_then_unconfirmed() -> None:
    ward = Ward()
    ward.asks_back("4 19:00", "12", 1340)

    soon, late = ward.asks("4 19:10", "open", "12"), ward.asks("4 19:20", "open", "12", who=BEN)

    assert soon.lines == (
        "Bed 12: 1 open question, 0 unconfirmed readings.",
        "Asked Amy 19:00: Bed 12: is 1,340 mL right?",
    )
    assert late.lines[0] == "Bed 12: 0 open questions, 1 unconfirmed reading."
    assert late.lines[1].startswith("Unconfirmed: ")
    assert "1,340 mL" in late.lines[1]
    assert "not counted" in late.lines[1]
    assert soon.tells_unconfirmed
    assert late.tells_unconfirmed


def test_the_unit_is_told_all_that_waits_the_dangerous_first() -> None:
    ward = Ward()
    ward.asks_back("4 19:00", "12", 1340)
    ward.asks_back("4 19:01", "3", 900, danger=True)

    assert [line.split(":")[0] for line in ward.asks("4 19:05", "open").lines] == [
        "Ward 4",
        "Asked Amy 19",
        "Asked Amy 19",
    ]
    assert "Bed 3" in ward.asks("4 19:05", "open").lines[1]


def test_a_question_about_an_unknown_bed_is_not_looked_for() -> None:
    assert Ward().asks("4 19:00", "open", "40").lines == ("There is no bed 40 in Ward 4.",)
