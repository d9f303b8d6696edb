"""What was looked for, what came off and is back on, clamp trials around a bed, and valves of the drain."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 6 no swing, have checked for kinks, none", "checked bed=6 tidaling=False"),
        ("bed 6 not tidaling, checked tubing for kinks, none found", "checked bed=6 tidaling=False"),
        ("checked bed 6 tubing for kinks, nil. no swing", "checked bed=6 tidaling=False"),
        ("bed 6 checked for kinks, tube was kinked under him", "incident bed=6 what=kinked"),
        ("bed 6 checked the tubing, kinked under him", "incident bed=6 what=kinked"),
        ("bed 6 looked for kinks and clots, none", "ask kind"),
    ],
)
def test_what_was_only_looked_for_did_not_happen(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("clamp trial 12 basal started 1815", "incident bed=12 tube=basal at=18:15 what=clamped"),
        ("clamp trial on bed 12 commenced 1815", "incident bed=12 at=18:15 what=clamped"),
        ("clamp trial for 12 over 1815", "incident bed=12 at=18:15 what=unclamped"),
        ("clamp trial 12 ended 1815", "incident bed=12 at=18:15 what=unclamped"),
        ("clamp trial 12 to start at 1900", "ask bed"),
        (
            "12 1020 1830 clamped as per reg",
            "mark bed=12 at=18:30 level_ml=1020; incident bed=12 at=18:30 what=clamped",
        ),
    ],
)
def test_a_clamp_trial_begins_or_ends_behind_its_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("20's tubing came off the box, back on now, leak none", "incident bed=20 what=disconnected"),
        ("it was kinked under him 9, swinging again now", "incident bed=9 what=kinked"),
        ("pt in 7 pulled at his tubing and the box went over", "incident bed=7 what=tipped"),
        ("someone unplugged the wall suction on 19", "incident bed=19 what=suction_off"),
        ("19 came off suction, back on at 1850", "incident bed=19 at=18:50 what=suction_on"),
    ],
)
def test_a_mishap_is_told_beside_what_is_well_again(text: str, read: str) -> None:
    assert read in reading(text)


@pytest.mark.parametrize("text", ["12 has a flutter valve", "12 on a one way valve"])
def test_a_valve_of_the_drain_is_no_heart_surgery(text: str) -> None:
    assert "cardiac" not in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("changed 4 1830 old box 1805", "exchanged bed=4 at=18:30 final_ml=1805"),
        ("19 changed @ 1830 old 1410", "exchanged bed=19 at=18:30 final_ml=1410"),
        (
            "dc'd 9's left pleural at 1830 125 in it, med staying",
            "removed bed=9 tube=left pleural at=18:30 level_ml=125",
        ),
        ("8 discharged to ward 6 1830 w drain", "left bed=8 at=18:30"),
        ("12 dumped 180 in med since 1700", "drained bed=12 tube=mediastinal volume_ml=180"),
        ("12 aortic valve", "described bed=12 reason=cardiac"),
    ],
)
def test_short_forms_of_an_end_are_read_whole(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_lettered_bed_is_changed_too() -> None:
    read = reading("changed 4B 1830 old box 1805", beds=("4A", "4B"))
    assert read == "exchanged bed=4B at=18:30 final_ml=1805"


@pytest.mark.parametrize("text", ["12 new chest tube placed left at 1830, old one out"])
def test_an_old_tube_that_is_not_named_is_asked(text: str) -> None:
    assert "exchanged" not in reading(text)
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 left pleural out 1830 125 in it", "removed bed=9 tube=left pleural at=18:30 level_ml=125"),
        ("9 left out at 1830, 125 ml in the box", "removed bed=9 tube=left at=18:30 level_ml=125"),
        ("12 new box on at 1830, old one removed", "exchanged bed=12 at=18:30"),
        ("12 old tube removed at 1830", "removed bed=12 at=18:30"),
    ],
)
def test_a_tube_that_is_out_and_an_old_canister_that_is_gone_are_told_apart(text: str, read: str) -> None:
    assert reading(text) == read


def test_whether_an_old_drain_was_a_tube_is_asked() -> None:
    assert "removed" not in reading("12 new drain in at 1830, old one removed")


def test_the_new_bottle_shows_its_line_aloud_too() -> None:
    said = reading("the new bottle of bed six shows thirty five", channel="voice")
    assert said == "mark bed=6 level_ml=35"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "someone unplugged the wall suction on 19 when they moved the bed",
            "incident bed=19 what=suction_off",
        ),
        ("19 suction came unplugged when we moved him", "incident bed=19 what=suction_off"),
        ("moved 19 to 21", "moved bed=19 to_bed=21"),
    ],
)
def test_on_what_occasion_it_happened_is_no_move(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["clamp trial bed twelve started at six fifteen pm"])
def test_a_clamp_trial_is_told_around_its_bed_aloud(text: str) -> None:
    assert reading(text, channel="voice") == "incident bed=12 at=18:15 what=clamped"
