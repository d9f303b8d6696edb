"""Dictated readings: read back first, or recorded at once where the ledger bears them out."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from bot.dialogue.plausible import near_beds, sound_alikes, strain
from bot.unit import Unit, demo_unit
from tests.dialogue.ward import Ward


def unsure() -> Unit:
    """A unit that lets a plausible dictated line pass."""
    return replace(demo_unit(), voice_confirm="unsure")


def hourly(ward: Ward) -> Ward:
    """Bed 7 with 60 mL in each of four hours, to 1,000 mL at 18:00."""
    for hour, level in ((14, 760), (15, 820), (16, 880), (17, 940), (18, 1000)):
        ward.says("Amy", f"bed 7 mark {level} at {hour}00", at=f"{hour}:01")
    return ward


def test_a_dictated_line_is_read_back_and_recorded_after_a_yes() -> None:
    ward = Ward()
    asked = ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01", channel="voice")
    assert asked.status == "question"
    assert "Bed 7, 18:00, line 630 mL. Right?" in asked.reply
    assert "six hundred thirty milliliters" in asked.json["speech"]
    assert ward.ledgers("7") == []
    assert ward.says("Amy", "yes", at="18:02", channel="voice").status == "recorded"


def test_a_typed_line_is_recorded_at_once() -> None:
    assert Ward().says("Amy", "bed 7 mark 630 at 1800", at="18:01").status == "recorded"


def test_a_number_in_the_answer_is_read_back_again_when_it_is_dictated() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01", channel="voice")
    again = ward.says("Amy", "640", at="18:02", channel="voice")
    assert "line 640 mL. Right?" in again.reply
    ward.says("Amy", "yes", at="18:03", channel="voice")
    assert ward.levels("7") == [640]


def test_a_number_in_a_typed_answer_is_recorded() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01", channel="voice")
    assert ward.says("Amy", "640", at="18:02").status == "recorded"


def test_a_no_records_nothing() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01", channel="voice")
    ward.says("Amy", "no", at="18:02", channel="voice")
    assert ward.ledgers("7") == []
    assert ward.unsettled() == ()


def test_a_bare_no_right_after_the_read_back_undoes_it() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01", channel="voice")
    ward.says("Amy", "yes", at="18:02", channel="voice")
    assert "Withdrawn" in ward.says("Amy", "no", at="18:03", channel="voice").reply


def test_a_doubt_reads_the_number_back_itself() -> None:
    ward = hourly(Ward())
    asked = ward.says("Amy", "bed 7 mark 900 at 1900", at="19:01", channel="voice")
    assert "900 mL is below 1,000 mL" in asked.reply
    assert "Right?" not in asked.reply
    assert ward.says("Amy", "yes", at="19:02", channel="voice").status == "recorded"


def test_several_dictated_lines_are_read_back_in_one_question() -> None:
    ward = Ward()
    asked = ward.says("Amy", "bed 7 mark 630 at 1800; bed 9 mark 40 at 1800", at="18:01", channel="voice")
    assert len(asked.json["questions"]) == 1
    answer = ward.says("Amy", "yes", at="18:02", channel="voice")
    assert answer.status == "recorded"
    assert (ward.levels("7"), ward.levels("9")) == ([630], [40])


def test_a_dictated_list_that_was_misheard_is_dropped_whole() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 630 at 1800; bed 9 mark 40 at 1800", at="18:01", channel="voice")
    ward.says("Amy", "no", at="18:02", channel="voice")
    assert ward.entries() == []


def test_a_danger_is_told_with_the_read_back() -> None:
    ward = Ward()
    ward.says("Amy", "bed 7 mark 500 at 1600", at="16:01")
    ward.says("Amy", "bed 7 mark 750 at 1700", at="17:01")
    asked = ward.says("Amy", "bed 7 mark 1000 at 1800", at="18:01", channel="voice")
    assert asked.reply.startswith("URGENT if right")
    assert asked.reply.endswith("Bed 7, 18:00, line 1,000 mL. Right?")
    assert ("rate_sustained", True) in ward.notices()


def test_an_unsure_unit_takes_a_line_that_the_ledger_bears_out() -> None:
    ward = hourly(Ward(unsure()))
    answer = ward.says("Amy", "bed 7 mark 1062 at 1900", at="19:01", channel="voice")
    assert answer.status == "recorded"


@pytest.mark.parametrize("level", [1050, 1015, 1016, 1060, 1200])
def test_an_unsure_unit_asks_where_a_sound_alike_is_as_likely_or_the_line_is_not(level: int) -> None:
    ward = hourly(Ward(unsure()))
    answer = ward.says("Amy", f"bed 7 mark {level} at 1900", at="19:01", channel="voice")
    assert answer.status == "question"
    assert ward.levels("7")[-1] == 1000


def test_an_unsure_unit_asks_about_a_first_line() -> None:
    ward = Ward(unsure())
    assert ward.says("Amy", "bed 7 mark 630 at 1800", at="18:01", channel="voice").status == "question"


def test_an_unsure_unit_asks_where_a_neighbouring_bed_would_fit_as_well() -> None:
    ward = hourly(Ward(unsure()))
    for hour, level in ((17, 900), (18, 980)):
        ward.says("Ben", f"bed 8 mark {level} at {hour}00", at=f"18:0{hour - 15}")
    answer = ward.says("Amy", "bed 7 mark 1062 at 1900", at="19:01", channel="voice")
    assert answer.status == "question"


@pytest.mark.parametrize(
    ("number", "alike"),
    [
        (1050, 1015),
        (1015, 1050),
        (1500, 1550),
        (340, 314),
        (66, 6),
        (6, 66),
        (95, 55),
        (180, 118),
        (128, 120),
        (658, 650),
    ],
)
def test_sound_alikes_hold_what_recognisers_make_of_a_number(number: int, alike: int) -> None:
    assert alike in sound_alikes(number)


def test_a_number_is_not_its_own_sound_alike() -> None:
    assert all(number not in sound_alikes(number) for number in range(2501))


def test_a_line_below_the_last_has_no_end_of_strain() -> None:
    ledger = hourly(Ward()).ledger("7")
    assert strain(ledger, ledger.levels[-1].at + timedelta(hours=1), 999) == float("inf")


def test_near_beds_are_the_neighbours_and_those_that_sound_alike() -> None:
    assert set(near_beds("13", demo_unit().beds)) >= {"12", "14", "3"}
    assert near_beds("CT4", ("CT4", "CT5")) == ()


def test_two_tubes_of_a_bed_dictated_together_are_two_drains_without_another_question() -> None:
    ward = Ward()
    ward.says("Amy", "bed 14 left 100 right 200 at 0900", at="09:00", channel="voice")
    assert ward.says("Amy", "yes", at="09:01", channel="voice").status == "recorded"
    assert {each.tube: each.levels[-1].level_ml for each in ward.ledgers("14")} == {"left": 100, "right": 200}


def test_a_no_to_a_dictated_message_names_all_that_is_not_recorded() -> None:
    ward = Ward()
    ward.says("Amy", "bed 9 mark 320", at="02:00")
    asked = ward.says("Amy", "bed nine three fifty no leak seal two", at="03:00", channel="voice")
    assert "Bed 9, 03:00, line 350 mL; Bed 9, 03:00, check: no air leak, seal 2 cm. Right?" in asked.reply
    dropped = ward.says("Amy", "no", at="03:01", channel="voice").reply
    assert dropped.startswith("Not recorded: bed 9 350 mL at 03:00; bed 9 check: no air leak, seal 2 cm")
    assert dropped.endswith("Say it again.")
