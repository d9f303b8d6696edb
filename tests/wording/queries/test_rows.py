"""Every kind of ledger row has its ward words, and none of them misleads."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import get_args
from zoneinfo import ZoneInfo

import pytest

from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Correction,
    Described,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Left,
    Line,
    Moved,
    Opened,
    Ordered,
    Payload,
    Placed,
    Reason,
    Removed,
    Seen,
    What,
    Withdrawal,
)
from bot.wording.queries.history import history_row
from bot.wording.queries.rows import check_words, row_text, suction_words
from bot.wording.queries.view import View, place
from tests.wording.language import faults

TOLD: list[tuple[Payload, str]] = [
    (Line(level_ml=1050), "line 1,050 mL"),
    (Line(level_ml=0), "line 0 mL"),
    (Line(level_ml=1050, about=True, closing=True), "line about 1,050 mL, closing"),
    (Line(level_ml=860, told_ml=210), "line 860 mL (told as 210 mL drained)"),
    (Line(level_ml=860, told_ml=0), "line 860 mL (told as 0 mL drained)"),
    (FinalLevel(level_ml=1860), "final level 1,860 mL"),
    (Exchanged(opening_ml=40), "canister changed, new one at 40 mL"),
    (Placed(bed="12"), "tube placed"),
    (
        Placed(bed="12", opening_ml=0, reason=Reason.CARDIAC, weight_kg=8.5, joined=("left", "right")),
        "tube placed: opening level 0 mL, after heart surgery, 8.5 kg, joined: left and right",
    ),
    (Opened(bed="12"), "first word of this drain, bed 12"),
    (Described(reason=Reason.AIR, weight_kg=70), "told: air (pneumothorax), 70 kg"),
    (Removed(), "tube removed"),
    (Left(), "patient left the unit"),
    (Away(), "patient away"),
    (Back(), "patient back"),
    (Moved(from_bed="12", to_bed="14"), "moved from bed 12 to bed 14"),
    (Checked(), "check"),
    (Checked(seal_cm=2, air_leak="none"), "check: no air leak, seal 2 cm"),
    (Ordered(suction_cmh2o=20), "ordered suction 20 cmH2O"),
    (Ordered(suction_cmh2o=0), "ordered water seal only"),
    (Seen(), "cautions seen"),
    (Seen(amended=True), "chart said to be amended"),
    (Correction(target="d-1", level_ml=5), "correction"),
    (Withdrawal(target="d-1"), "withdrawal"),
    *((Incident(what=what), "") for what in What),
]


@pytest.mark.parametrize(("payload", "told"), TOLD)
def test_a_row_says_what_happened_and_nothing_that_a_nurse_must_not_be_shown(
    payload: Payload, told: str
) -> None:
    text = row_text(payload)
    assert text
    assert faults(text) == []
    assert not told or text == told


def test_no_kind_of_row_is_without_words() -> None:
    assert {type(payload) for payload, _ in TOLD} == set(get_args(Payload))


@pytest.mark.parametrize("fluid", ["serous", "serosanguineous", "purulent", "bright_red", "dark_red"])
@pytest.mark.parametrize("leak", ["none", "intermittent", "continuous", "present"])
def test_each_finding_of_a_check_is_told_without_an_underscore(fluid: str, leak: str) -> None:
    check = Checked(fluid=fluid, air_leak=leak, suction_indicator="not_in_range")  # type: ignore[arg-type]
    words = check_words(check)
    assert len(words) == 3
    assert faults(", ".join(words)) == []


def test_no_suction_is_water_seal_only() -> None:
    assert (suction_words(0), suction_words(20)) == ("water seal only", "suction 20 cmH2O")


@pytest.mark.parametrize(
    ("bed", "tube", "told"), [("12", None, "Bed 12"), ("12A", "left apical", "Bed 12A left apical")]
)
def test_a_place_is_told_as_bed_and_tube(bed: str, tube: str | None, told: str) -> None:
    assert place(bed, tube) == told


def test_a_name_outside_the_alphabet_is_made_plain_and_a_stranger_is_shown_by_id() -> None:
    now = datetime(2026, 3, 4, 19, 10, tzinfo=UTC)
    view = View(zone=ZoneInfo("America/New_York"), now=now, people={"rn-1": "Zoë Č."})
    entry = Entry(
        drain="d" * 16, position=1, at=now, entered=now, who="rn-1", message="m", payload=Line(level_ml=5)
    )
    assert history_row(entry, (), view, {}) == "14:10 line 5 mL (Zoe C., entered 14:10)"
    assert view.who("gone-7") == "gone-7"
