"""Lines of beds, in plain forms over many values: read as meant or asked, never as something else."""

from __future__ import annotations

import pytest

from tests.nlu.forms import Form, forms, held, share_read

EACH = 10
"""Fillings of a form."""
MARK = "mark bed={b} level_ml={l} at={m}"
OF_A_TUBE = "mark bed={b} tube={S} level_ml={l} at={m}"
BOTH = f"{OF_A_TUBE}; mark bed={{b}} tube={{S2}} level_ml={{l2}} at={{m}}"
BOTH_TIMES = f"{OF_A_TUBE}; mark bed={{b}} tube={{S2}} level_ml={{l2}} at={{m2}}"
NUMBERED = "mark bed={b} tube=1 level_ml={l} at={m}; mark bed={b} tube=2 level_ml={l2} at={m}"
ROUND = f"{MARK}; mark bed={{b2}} level_ml={{l2}} at={{m}}; mark bed={{b3}} level_ml={{l3}} at={{m}}"
OWN_TIMES = f"{MARK}; mark bed={{b2}} level_ml={{l2}} at={{m2}}; mark bed={{b3}} level_ml={{l3}} at={{m3}}"
UNTIMED = "mark bed={b} level_ml={l}; mark bed={b2} level_ml={l2}; mark bed={b3} level_ml={l3}"
CLOSING = "mark bed={b} level_ml={l} closing; mark bed={b2} level_ml={l2} closing"
HOURS = (
    "mark bed={b} level_ml={u} at={m3}; mark bed={b} level_ml={u2} at={m2}; mark bed={b} level_ml={u3} at={m}"
)
READ: dict[str, tuple[str, ...]] = {
    MARK: (
        "{b} at {l}, at {t}",
        "bed {b} {l} at {t}",
        "{b} {l} @{t}",
        "{b} is {l} at {t}",
        "bed {b} mark {l} at {t}",
        "{b} reads {l} at {t}",
        "{b}: {l} ml at {t}",
        "at {t} bed {b} was {l}",
        "{t} bed {b} {l} ml",
        "line on {b} is {l} as of {t}",
        "{b} - {l} - at {t}",
        "{b} {l} ({t})",
        "{l} ml bed {b} at {t}",
        "@{t} {b} {l}",
    ),
    OF_A_TUBE: (
        "bed {b} {s} {l} at {t}",
        "{b} {s}: {l} at {t}",
        "{s} tube bed {b} {l} at {t}",
        "{b} {s} tube {l} @{t}",
        "at {t} bed {b} {s} was {l}",
        "{l} ml {s} bed {b} at {t}",
        "{b} {s} side {l} at {t}",
    ),
    BOTH: (
        "bed {b} {s} {l} {s2} {l2} at {t}",
        "{b} {s} {l}, {s2} {l2} at {t}",
        "at {t} bed {b} {s} {l} and {s2} {l2}",
        "bed {b} {s} tube {l}, {s2} tube {l2}, both at {t}",
        "{b} {s}={l} {s2}={l2} @{t}",
    ),
    BOTH_TIMES: ("bed {b} {s} {l} at {t}, {s2} {l2} at {t2}", "bed {b}: {s} {l} ({t}), {s2} {l2} ({t2})"),
    NUMBERED: ("bed {b} tube 1 {l}, tube 2 {l2} at {t}", "{b} tube one {l}, tube two {l2} at {t}"),
    ROUND: (
        "{b} {l}, {b2} {l2}, {b3} {l3} at {t}",
        "{t}: {b} {l}, {b2} {l2}, {b3} {l3}",
        "bed {b} {l} bed {b2} {l2} bed {b3} {l3} all at {t}",
        "{t}\n{b} {l}\n{b2} {l2}\n{b3} {l3}",
        "{b}-{l}, {b2}-{l2}, {b3}-{l3} @ {t}",
        "all at {t}: {b} {l}; {b2} {l2}; {b3} {l3}",
    ),
    OWN_TIMES: (
        "{b} {l} at {t}, {b2} {l2} at {t2}, {b3} {l3} at {t3}",
        "{b} {l} @{t} {b2} {l2} @{t2} {b3} {l3} @{t3}",
        "{b}: {l} ({t}), {b2}: {l2} ({t2}), {b3}: {l3} ({t3})",
        "{t}: {b} {l}\n{t2}: {b2} {l2}\n{t3}: {b3} {l3}",
    ),
    UNTIMED: ("{b} {l}, {b2} {l2}, {b3} {l3}", "{b}: {l}, {b2}: {l2}, {b3}: {l3}"),
    CLOSING: ("closing {b} {l}, {b2} {l2}", "end of shift: {b} {l}, {b2} {l2}"),
    HOURS: ("{b}: {t3} {u}, {t2} {u2}, {t} {u3}", "bed {b} {u} at {t3}, {u2} at {t2}, {u3} at {t}"),
}  # fmt: skip
"""What is meant, and the forms that are read so."""
HELD: dict[str, tuple[str, ...]] = {
    MARK: ("{b} {l} {t}", "{b} {t} {l}", "{t} {b} {l}", "{b}/{l}/{t}", "{b} @{t} {l}", "at {t} {b} {l}"),
    OF_A_TUBE: (
        "{b}{s} {l} at {t}",
        "{b}/{s} {l} {t}",
        "{b} {l} {s} at {t}",
        "the {s} one on {b} reads {l} at {t}",
    ),
    BOTH: (
        "{b} {s} at {l}, {s2} at {l2}, {t}",
        "{t} - {b} {s} - {l}, {s2} - {l2}",
        "{t} {b} {s} {l} {s2} {l2}",
    ),
    NUMBERED: ("{b} #1 {l} #2 {l2} at {t}", "{b} ct 1 {l}, ct 2 {l2}, {t}"),
    ROUND: (
        "{t} {b} {l} {b2} {l2} {b3} {l3}",
        "{b} {l} {b2} {l2} {b3} {l3} {t}",
        "{b}/{l} {b2}/{l2} {b3}/{l3} at {t}",
    ),
    OWN_TIMES: (
        "{b} {l} {t}, {b2} {l2} {t2}, {b3} {l3} {t3}",
        "{b} {t} {l}\n{b2} {t2} {l2}\n{b3} {t3} {l3}",
        "{b} @{t} {l}, {b2} @{t2} {l2}, {b3} @{t3} {l3}",
        "{t} {b} {l}, {t2} {b2} {l2}, {t3} {b3} {l3}",
    ),
    HOURS: ("{b} {t3}={u} {t2}={u2} {t}={u3}", "bed {b}\n{t3} {u}\n{t2} {u2}\n{t} {u3}"),
}  # fmt: skip
"""The same, of forms in which many values can be two things: those are asked, none is taken for another."""


@pytest.mark.parametrize("each", forms(READ), ids=lambda each: each.text)
def test_a_plain_form_is_read_over_all_values(each: Form) -> None:
    wrong, share = held(each, EACH)
    assert not wrong
    assert share > 0.5


def test_plain_forms_are_mostly_read() -> None:
    assert share_read(forms(READ), EACH) > 0.95


@pytest.mark.parametrize("each", forms(HELD), ids=lambda each: each.text)
def test_a_form_that_can_be_read_in_two_ways_is_never_read_as_the_other(each: Form) -> None:
    assert not held(each, EACH)[0]
