"""Exchanges, removals, placements, moves, journeys and incidents, with lines beside them, in plain forms over
many values: read as meant or asked, never as something else."""

from __future__ import annotations

import pytest

from tests.nlu.forms import Form, forms, held, share_read

EACH = 6
"""Fillings of a form."""
MARK = "mark bed={b2} level_ml={l2} at={m2}"
OWN = "mark bed={b} level_ml={l2} at={m}"
EXCHANGED = "exchanged bed={b} at={m} final_ml={l}"
EXCHANGED_BEFORE = f"exchanged bed={{b}} at={{m2}} final_ml={{l}}; {OWN}"
OF_A_SIDE = "exchanged bed={b} tube={S} at={m} final_ml={l}"
REMOVED = "removed bed={b} at={m} level_ml={l}"
LINE_THEN_REMOVED = f"mark bed={{b}} level_ml={{l2}} at={{m2}}; {REMOVED}"
PLACED = "placed bed={b} tube={S} at={m}"
MOVED = "moved bed={b} to_bed={b2} at={m}"
THERE_AND_BACK = "away bed={b} at={m2}; back bed={b} at={m}"
TIPPED = "incident bed={b} at={m2} what=tipped"
CLAMPED = "incident bed={b} at={m2} what=clamped"
OFF_AND_ON = "incident bed={b} at={m2} what=suction_off; incident bed={b} at={m} what=suction_on"
READ: dict[str, tuple[str, ...]] = {
    EXCHANGED: (
        "changed the canister bed {b} at {t}, old one {l}",
        "{b} canister full at {l}, changed at {t}",
        "{b} box full {l}, changed {t}",
        "old canister {b} {l}, changed at {t}",
        "at {t} I changed the canister on bed {b}, the old one had {l}",
        "bed {b} - new box {t} (old {l})",
        "{b} canister replaced {t} old volume {l}",
        "{b} old one read {l}, new canister on {t}",
        "RT changed canister in {b} at {t}, old {l}",
        "{b} reached {l}, canister changed {t}",
        "changed bed {b} box at {t}, old {l}",
    ),
    EXCHANGED_BEFORE: (
        "{b} canister changed at {t2}, old {l}, new one at {l2} at {t}",
        "bed {b} changed canister {t2} old {l}, now {l2} at {t}",
        "bed {b}: {t2} canister changed, old {l}. {t} line {l2}",
    ),
    f"{EXCHANGED}; {MARK}": (
        "changed bed {b} canister at {t}, old {l}. bed {b2} {l2} at {t2}",
        "bed {b2} {l2} at {t2}. changed canister bed {b} at {t}, old {l}",
        "{b2} {l2} at {t2}, {b} canister changed {t} old {l}",
        "{b} new canister {t} old {l}, {b2} {l2} at {t2}",
    ),
    OF_A_SIDE: (
        "changed the {s} canister on {b} at {t}, old one {l}",
        "{s} box bed {b} changed at {t}, it had {l}",
        "changed bed {b} {s} box at {t}, old {l}",
        "{b} {s} canister full {l}, changed {t}",
    ),
    REMOVED: (
        "tube out bed {b} at {t}, final {l}",
        "{b} ct pulled at {t} last {l}",
        "bed {b} tube out {t} with {l} in box",
        "{t} tube removed bed {b}, {l} in canister",
        "{b} tube out {t}. last reading {l}",
    ),
    LINE_THEN_REMOVED: (
        "bed {b} line {l2} at {t2}. tube pulled {t}, final {l}",
        "{b} was {l2} at {t2}, tube removed at {t}, final {l}",
        "{b} {l2} at {t2}, tube out {t} final {l}",
    ),
    PLACED: (
        "new chest tube bed {b} {s} at {t}",
        "{s} chest drain sited bed {b} at {t}",
        "bed {b} got a {s} chest tube at {t}",
    ),
    MOVED: ("bed {b} moved to {b2} at {t}", "moved pt from {b} to {b2} at {t}", "moved {b} to {b2} at {t}"),
    f"{MOVED}; mark bed={{b3}} level_ml={{l2}} at={{m2}}": (
        "{b} moved to {b2} at {t}, {b3} {l2} at {t2}",
        "bed {b3} line {l2} at {t2}. moved {b} to {b2} at {t}",
    ),
    THERE_AND_BACK: ("{b} to CT {t2}, back {t}", "{b} CT {t2}, back {t}", "{b} to OR {t2}, returned {t}"),
    f"{THERE_AND_BACK}; {OWN}": (
        "{b} to CT {t2}, back {t}, {l2} on return",
        "{b} to CT at {t2}, back at {t}, line {l2} when back",
        "{b} off to scan {t2}, back {t} with {l2} in box",
    ),
    OFF_AND_ON: ("{b} sxn off {t2} on {t}", "bed {b} off suction at {t2}, suction back on at {t}"),
    f"{TIPPED}; {OWN}": (
        "{b} {l2} at {t}, {b} canister tipped over at {t2}",
        "bed {b} box tipped over {t2}, line {l2} at {t}",
        "{b} canister got knocked over at {t2}. {l2} at {t}",
        "{b} {l2} ml at {t} and drain fell over at {t2}",
    ),
    f"{CLAMPED}; {OWN}": (
        "{b} {l2} at {t}, {b} clamped at {t2}",
        "{b} {l2} at {t}, {b} tube clamped {t2}",
        "{b}: clamped {t2}, line {l2} at {t}",
    ),
    f"{CLAMPED}; mark bed={{b2}} level_ml={{l2}} at={{m}}": (
        "{b2} {l2} at {t}, {b} clamped {t2}",
        "bed {b2} {l2} at {t}. {b} tube clamped {t2}",
        "{b} tube clamped {t2}, bed {b2} {l2} at {t}",
    ),
}  # fmt: skip
"""What is meant, and the forms that are read so."""
HELD: dict[str, tuple[str, ...]] = {
    EXCHANGED: (
        "{b} canister out at {l}, new one on at {t}",
        "{b} at {l} when canister changed at {t}",
        "bed {b} cont changed {t} old cont {l}",
        "{b} canister changed ({l}) at {t}",
        "took down {b}'s canister at {t} with {l} in it, new one up",
    ),
    OF_A_SIDE: ("bed {b} changed the {s} box at {t}, {l} in it", "{t} {s} box on {b} changed, old one {l}"),
    REMOVED: (
        "{b} drain pulled {t} at {l}",
        "tube out {b} {t}: {l}",
        "{b} canister {l} then tube pulled {t}",
    ),
    THERE_AND_BACK: ("{b} back in bed {t}, was at CT {t2}",),
    "back bed={b} at={m}": ("{b} back in bed from CT {t}", "{b} back in bed {t}"),
    f"{CLAMPED}; mark bed={{b2}} level_ml={{l2}} at={{m}}": (
        "{b} clamped {t2}, {b2} {l2} {t}",
        "{b2} {l2} {t}, {b} tube clamped {t2}",
    ),
    f"away bed={{b}} at={{m2}}; mark bed={{b}} level_ml={{l}} at={{m2}}; back bed={{b}} at={{m}}; {OWN}": (
        "{b} to CT {t2} at {l}, back {t} at {l2}",
    ),
    f"mark bed={{b}} level_ml={{l2}} at={{m}}; {TIPPED}": ("{t2} bed {b} box tipped over. {t} {l2}",),
}  # fmt: skip
"""The same, of forms that are asked often: none is taken for something else."""


@pytest.mark.parametrize("each", forms(READ), ids=lambda each: each.text)
def test_what_ended_or_happened_is_read_over_all_values(each: Form) -> None:
    wrong, share = held(each, EACH)
    assert not wrong
    assert share > 0.5


def test_what_ended_or_happened_is_mostly_read() -> None:
    assert share_read(forms(READ), EACH) > 0.9


@pytest.mark.parametrize("each", forms(HELD), ids=lambda each: each.text)
def test_a_form_of_what_ended_or_happened_is_never_read_as_another(each: Form) -> None:
    assert not held(each, EACH)[0]
