"""A danger whose question is open or was never answered is told with every reply about its bed, to anyone."""

from __future__ import annotations

import pytest

from bot.dialogue.bedside import Bedside
from bot.dialogue.part import BedCaution
from bot.engine.ledger import Ledger
from tests.dialogue.ward import Heard, Ward

DANGER = "620 mL in 60 min"


def bleeding() -> Ward:
    """Amy's line of 1,120 at 09:00, an hour after 500, is asked about."""
    ward = Ward()
    ward.says("Amy", "bed 12 mark 500 at 0800", at="08:00")
    ward.says("Amy", "bed 12 mark 1120 at 0900", at="09:00")
    return ward


def tells_of_it(answer: Heard) -> bool:
    """In words, once, and among the cautions."""
    held = [each for each in answer.json["cautions"] if each["if_right"]]
    urgent = [line for line in answer.reply.split("\n") if "URGENT if right" in line and DANGER in line]
    return len(urgent) == 1 and {each["code"] for each in held} >= {"amount_at_once"}


ABOUT_THE_BED = ["bed 12?", "total bed 12", "handoff 12", "what's open on 12", "beds", "bed 12 seal 2"]


@pytest.mark.parametrize("text", ABOUT_THE_BED)
def test_while_the_question_is_open_everyone_is_told_the_danger(text: str) -> None:
    assert tells_of_it(bleeding().says("Ben", text, at="09:02"))


@pytest.mark.parametrize("text", ABOUT_THE_BED)
def test_after_the_lapse_everyone_is_told_the_danger(text: str) -> None:
    assert tells_of_it(bleeding().says("Ben", text, at="09:20"))


def test_a_line_by_another_nurse_does_not_hide_the_danger() -> None:
    answer = bleeding().says("Ben", "bed 12 mark 1130 at 0922", at="09:22")
    assert answer.status == "recorded"
    assert tells_of_it(answer)


def test_the_reading_that_would_mean_the_danger_is_named_to_another_nurse() -> None:
    answer = bleeding().says("Ben", "bed 12?", at="09:02")
    assert "Not recorded yet: bed 12 1,120 mL at 09:00 (asked 09:00, Amy)." in answer.reply


@pytest.mark.parametrize("answer", ["12 no", "12 yes", "bed 12 mark 520 at 0900"])
def test_once_settled_nothing_is_feared_any_more(answer: str) -> None:
    ward = bleeding()
    ward.says("Amy", answer, at="09:05")
    assert "if right" not in ward.says("Ben", "bed 12?", at="09:06").reply


def test_a_reply_about_another_bed_leaves_it_out() -> None:
    answer = bleeding().says("Ben", "bed 9 mark 10 at 0902", at="09:02")
    assert "if right" not in answer.reply
    assert not any(each["if_right"] for each in answer.json["cautions"])


def test_what_waits_about_other_beds_is_not_reckoned(monkeypatch: pytest.MonkeyPatch) -> None:
    ward = bleeding()
    reckoned: list[str] = []
    dangers = Bedside.dangers

    def noted(bedside: Bedside, bed: str, supposed: Ledger) -> tuple[BedCaution, ...]:
        reckoned.append(bed)
        return dangers(bedside, bed, supposed)

    monkeypatch.setattr(Bedside, "dangers", noted)
    ward.says("Ben", "bed 9 mark 10 at 0902", at="09:02")
    assert reckoned == []
    ward.says("Ben", "bed 12?", at="09:03")
    assert reckoned == ["12"]


TIME_ASKED = ["bed 12 mark 1120 at 2530", "bed 12 mark 1120 at 1130", "bed 12 drained 620 at 2530"]


def asked_for_its_time(text: str) -> tuple[Ward, Heard]:
    """Amy's line of 500 at 08:00, and what she tells at 09:00 with a time that cannot be."""
    ward = Ward()
    ward.says("Amy", "bed 12 mark 500 at 0800", at="08:00")
    return ward, ward.says("Amy", text, at="09:00")


@pytest.mark.parametrize("text", TIME_ASKED)
def test_a_question_about_the_time_alone_carries_the_danger(text: str) -> None:
    ward, asked = asked_for_its_time(text)
    assert "at what time?" in asked.reply
    assert tells_of_it(asked)
    assert tells_of_it(ward.says("Ben", "bed 12?", at="09:02"))
    assert tells_of_it(ward.says("Carla", "beds", at="09:40"))


def test_a_time_is_asked_for_without_a_warning_where_the_line_would_be_none() -> None:
    _, asked = asked_for_its_time("bed 12 mark 540 at 2530")
    assert "at what time?" in asked.reply
    assert asked.json["cautions"] == []


def test_the_danger_goes_with_the_time_that_was_asked_for() -> None:
    ward, _ = asked_for_its_time("bed 12 mark 1120 at 2530")
    told = ward.says("Amy", "it was 0900", at="09:01")
    assert "Is 1,120 right?" in told.reply
    assert tells_of_it(told)
