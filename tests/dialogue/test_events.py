"""What is not a level: checks, incidents, reasons, away, back and left, and who is told of a danger."""

from __future__ import annotations

import pytest

from bot.dialogue.hearing import carries_a_number
from bot.dialogue.said import NotSure, Report, SeenIt, Slots
from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Described,
    Incident,
    Left,
    Ordered,
    Reason,
    Seen,
    What,
)
from tests.dialogue.ward import Ward


def with_line() -> Ward:
    """Bed 7 with one line at 08:00."""
    ward = Ward()
    ward.says("Amy", "bed 7 mark 100 at 0800", at="08:01")
    return ward


@pytest.mark.parametrize(
    ("fact", "words"),
    [
        (Checked(seal_cm=2, air_leak="none", tidaling=True), "check: no air leak, tidaling, seal 2 cm"),
        (Ordered(suction_cmh2o=20), "ordered suction 20 cmH2O"),
        (Incident(what=What.KINKED), "kinked"),
        (Away(), "patient away"),
        (Back(), "patient back"),
        (Described(reason=Reason.CARDIAC), "after heart surgery"),
        (Left(), "patient left the unit"),
    ],
)
def test_it_is_recorded_and_read_back(fact: Left, words: str) -> None:
    ward = with_line()
    answer = ward.tells("Amy", Report(bed="7", fact=fact), at="08:10")
    assert answer.status == "recorded"
    assert answer.reply.startswith("Bed 7, 08:10, ")
    assert words in answer.reply


def test_a_check_needs_no_placement() -> None:
    ward = Ward()
    answer = ward.tells("Amy", Report(bed="7", fact=Checked(seal_cm=2)), at="08:10")
    assert answer.status == "recorded"
    placed = ward.says("Amy", "new chest tube bed 7", at="08:11")
    assert placed.status == "recorded"
    assert len(ward.ledgers("7")) == 1


@pytest.mark.parametrize("fact", [Away(), Back(), Left()])
def test_a_patient_of_whom_no_drain_is_known_is_not_recorded(fact: Left) -> None:
    ward = Ward()
    answer = ward.tells("Amy", Report(bed="7", fact=fact), at="08:10")
    assert "no open drain" in answer.reply
    assert ward.entries() == []


def test_a_disconnection_is_urgent_and_told_to_others() -> None:
    ward = with_line()
    answer = ward.tells("Amy", Report(bed="7", fact=Incident(what=What.DISCONNECTED)), at="08:10")
    assert "URGENT" in answer.reply
    assert ("disconnected", False) in ward.notices()


def test_a_disconnection_of_one_of_two_tubes_is_told_while_it_is_asked_which() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 left mark 100 at 0800; bed 7 right mark 50 at 0800", at="08:01")
    asked = ward.tells("Amy", Report(bed="7", fact=Incident(what=What.DISCONNECTED)), at="08:10")
    assert asked.status == "question"
    assert "URGENT if right" in asked.reply
    assert ("disconnected", True) in ward.notices()


def test_a_disconnection_at_a_bed_that_is_not_there_is_told_to_others_too() -> None:
    ward = Ward()
    ward.tells("Amy", Report(bed="77", fact=Incident(what=What.DISCONNECTED)), at="08:10")
    assert ("disconnected", True) in ward.notices()


def test_a_disconnection_without_a_bed_is_told_to_others_while_the_bed_is_asked() -> None:
    ward = Ward()
    partial = Slots(kind="incident", values=(("what", "disconnected"),))
    asked = ward.tells("Amy", NotSure(slot="bed", text="tube off", partial=partial), at="08:10")
    assert "Disconnected: which bed?" in asked.reply
    assert ("disconnected", True) in ward.notices()


def test_a_reason_holds_for_all_drains_of_the_bed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 left mark 100 at 0800; bed 7 right mark 50 at 0800", at="08:01")
    ward.tells("Amy", Report(bed="7", fact=Described(reason=Reason.CARDIAC)), at="08:10")
    assert {ledger.reason for ledger in ward.ledgers("7")} == {Reason.CARDIAC}


def test_left_closes_every_drain_of_the_bed() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 left mark 100 at 0800; bed 7 right mark 50 at 0800", at="08:01")
    ward.tells("Amy", Report(bed="7", fact=Left()), at="08:10")
    assert not any(ledger.is_open() for ledger in ward.ledgers("7"))


def test_that_a_chart_was_amended_is_noted() -> None:
    ward = with_line()
    answer = ward.tells("Amy", SeenIt(bed="7", amended=True), at="08:10")
    assert "chart amended. Noted." in answer.reply
    assert ward.entries()[-1].payload == Seen(amended=True)


def test_seen_for_a_bed_without_a_drain_records_nothing() -> None:
    ward = Ward()
    assert ward.tells("Amy", SeenIt(bed="7"), at="08:10").status == "told"
    assert ward.entries() == []


def test_an_event_told_late_is_read_back_with_its_own_time() -> None:
    ward = with_line()
    told = Report(bed="7", fact=Incident(what=What.TIPPED), at=ward.utc("08:05"))
    assert ward.tells("Amy", told, at="08:40").reply.startswith("Bed 7, 08:05, ")


def test_a_caution_that_still_stands_is_not_told_to_the_same_nurse_each_time() -> None:
    ward = with_line()
    first = ward.tells("Amy", Report(bed="7", fact=Incident(what=What.DAMAGED)), at="08:10")
    again = ward.says("Amy", "bed 7 mark 110 at 0830", at="08:31")
    other = ward.says("Ben", "bed 7 mark 120 at 0840", at="08:41")
    assert "damaged" in first.reply
    assert "damaged" not in again.reply
    assert "damaged" in other.reply


def test_an_urgent_caution_that_still_stands_is_told_every_time() -> None:
    ward = with_line()
    ward.tells("Amy", Report(bed="7", fact=Incident(what=What.DISCONNECTED)), at="08:10")
    assert "URGENT still" in ward.says("Amy", "bed 7 mark 110 at 0820", at="08:21").reply


def test_at_most_three_lesser_cautions_are_spelled_out() -> None:
    ward = with_line()
    items = [
        Report(bed="7", fact=Incident(what=what))
        for what in (What.TIPPED, What.DAMAGED, What.RAISED, What.KINKED, What.SUCTION_OFF)
    ]
    answer = ward.tells("Amy", *items, at="08:10")
    lesser = [line for line in answer.reply.split("\n") if line.startswith(("CAUTION", "NOTE"))]
    assert len(lesser) == 3
    assert 'more: say "handoff 7".' in answer.reply
    assert len(answer.json["cautions"]) >= 5


def test_a_dictated_incident_does_not_wait_for_a_yes() -> None:
    assert not carries_a_number(Report(bed="7", fact=Incident(what=What.DISCONNECTED)))
    assert carries_a_number(Report(bed="7", fact=Checked(seal_cm=2)))


def test_the_cautions_of_the_answer_name_rule_and_source() -> None:
    ward = with_line()
    answer = ward.says("Amy", "bed 7 mark 400 at 0900", at="09:01")
    (high,) = [each for each in answer.json["cautions"] if each["code"] == "rate_high"]
    assert high["rule"]
    assert high["source"]


def test_a_tube_told_late_is_not_overdue_while_its_level_is_asked_for() -> None:
    told = Ward().says("Amy", "new chest tube bed 6 at 0700", at="10:00")
    assert "what does the canister read now?" in told.reply
    assert "overdue" not in told.reply


@pytest.mark.parametrize("query", ["handoff 2", "when is bed 2 full"])
def test_a_canister_whose_tube_is_out_fills_no_further(query: str) -> None:
    ward = Ward()
    ward.says("Amy", "bed 2 mark 250", at="05:00")
    ward.says("Amy", "bed 2 mark 300", at="06:00")
    assert "full about" in ward.says("Amy", query, at="06:01").reply
    ward.says("Amy", "tube out bed 2, final 310", at="06:50")
    told = ward.says("Amy", query, at="06:53").reply
    assert "310" in told
    assert "full about" not in told
