"""A unit that charts by shift: only the closing line is charted, and only it is ever amended."""

from __future__ import annotations

from dataclasses import replace

from bot.engine.amend import outstanding
from bot.engine.policy import Policy
from tests.dialogue.ward import Ward


def closed_shift() -> Ward:
    """Lines at 07:00, 09:00, 15:00 and a closing one at 18:55: 200 mL for the day shift."""
    ward = Ward(policy=by_shift())
    for level, hhmm, at in ((100, "0700", "07:01"), (160, "0900", "09:01"), (250, "1500", "15:01")):
        ward.says("Amy", f"bed 7 mark {level} at {hhmm}", at=at)
    ward.says("Amy", "bed 7 mark 300 at 1855", at="18:56")
    return ward


def by_shift() -> Policy:
    """The demo ward's policy, charting by shift."""
    return replace(Ward().unit.policy, chart_by="shift")


def test_what_was_never_charted_is_not_amended() -> None:
    ward = Ward(policy=by_shift())
    ward.says("Amy", "bed 7 mark 100 at 0700", at="07:01")
    ward.says("Amy", "bed 7 mark 160 at 0900", at="09:01")
    answer = ward.says("Amy", "scratch that", at="09:02")
    assert "Amend" not in answer.reply
    assert "amended" not in answer.codes


def test_a_line_inside_the_shift_leaves_its_closing_volume_alone() -> None:
    ward = closed_shift()
    answer = ward.says("Amy", "correct bed 7 1500 to 240", at="18:58")
    assert "Amend" not in answer.reply
    assert [row["to_chart"] for row in answer.json["chart"]] == []


def test_a_late_line_inside_the_shift_is_told_and_not_charted() -> None:
    answer = closed_shift().says("Amy", "bed 7 mark 200 at 1200", at="18:58")
    assert not any(row["to_chart"] for row in answer.json["chart"])
    assert "Amend" not in answer.reply


def test_a_corrected_closing_line_amends_the_volume_of_the_shift() -> None:
    ward = closed_shift()
    answer = ward.says("Amy", "correct bed 7 1855 to 310", at="18:58")
    assert "Amend: 07:00-18:55 200 to 210 mL." in answer.reply
    (row,) = [row for row in answer.json["chart"] if row["replaces"]]
    assert (row["volume_ml"], row["replaces"][0]["volume_ml"]) == (210, 200)


def test_a_line_nearer_to_the_end_of_the_shift_amends_it_and_stays_in_the_handoff() -> None:
    ward = closed_shift()
    answer = ward.says("Amy", "bed 7 mark 305 at 1900", at="19:01")
    assert "Amend: 07:00-19:00 205 mL instead of 07:00-18:55 200 mL." in answer.reply
    (left,) = outstanding(ward.ledger("7"), by_shift().schedule, "shift")
    assert (left.volume_ml, left.replaces[0].volume_ml) == (205, 200)


def test_a_closing_line_after_an_exchange_shows_the_levels_of_both_canisters() -> None:
    ward = Ward(policy=by_shift())
    ward.says("Amy", "bed 2 closing line 360 at 0700", at="07:01")
    ward.says("Amy", "changed the canister bed 2 at 1200, old one 400", at="12:01")
    ward.says("Amy", "bed 2 mark 30 at 1400", at="14:01")
    closed = ward.says("Ben", "bed 2 end of shift 50 at 1900", at="19:01")
    shown = "Chart 90 mL (400 - 360 and 50 - 0, new canister since the line at 07:00)."
    assert shown in closed.reply
    assert closed.chart == [(90, "07:00", "19:00")]
