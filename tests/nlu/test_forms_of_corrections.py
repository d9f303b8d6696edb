"""Lines that are put right or taken back, in plain forms over many values: read as meant, or asked."""

from __future__ import annotations

import pytest

from tests.nlu.forms import Form, forms, held, share_read

EACH = 6
"""Fillings of a form."""
LEVEL = "corrected bed={b} at={m} level_ml={l}"
FROM_TO = "corrected bed={b} at={m} was_ml={w} level_ml={l}"
NO_TIME = "corrected bed={b} was_ml={w} level_ml={l}"
LAST = "corrected bed={b} level_ml={l}"
BARE = "corrected was_ml={w} level_ml={l}"
RETIMED = "corrected bed={b} at={m2} to_at={m}"
REBEDDED = "corrected bed={b} at={m} to_bed={b2}"
OTHER_BED = "corrected bed={b} to_bed={b2}"
ITS_LEVEL = "corrected bed={b} was_ml={w} to_bed={b2}"
WITHDRAWN = "withdrawn bed={b} at={m}"
WITHDRAWN_LAST = "withdrawn bed={b}"
READ: dict[str, tuple[str, ...]] = {
    LEVEL: (
        "correct bed {b} {t} to {l}",
        "correction bed {b} {t} should be {l}",
        "{b} at {t} should have been {l}",
        "{t} mark on {b} should be {l}",
        "the {t} on {b} was {l}, correct it",
        "fix {b} {t}: {l}",
        "please correct the {t} line on bed {b}, it is {l}",
        "my {t} on bed {b} should be {l}",
        "typo bed {b} {t} should say {l}",
        "i misread bed {b} at {t}, should be {l}",
        "room {b} {t} should be {l}",
        "bed {b} at {t} should be {l}, sorry",
    ),
    FROM_TO: (
        "correct bed {b} {t} from {w} to {l}",
        "bed {b} {t} should be {l} not {w}",
        "{b} at {t} was {l} not {w}",
        "correction: bed {b} {l} at {t}, not {w}",
        "I wrote {w} for {b} at {t}, it should be {l}",
        "bed {b} {t} entered as {w}, should be {l}",
        "bed {b} {t} was entered as {w} instead of {l}",
        "bed {b} {t} says {w} should say {l}",
        "bed {b} at {t} should be {l}, i typed {w}",
        "the {w} at {t} on {b} should be {l}",
        "you have {w} for bed {b} at {t}, should be {l}",
    ),
    NO_TIME: (
        "bed {b} should be {l} not {w}",
        "{b} was {l} not {w}",
        "{b}: not {w}, {l}",
        "sorry {b} is {l} not {w}",
        "bed {b} not {w} but {l}",
        "i wrote {w} for bed {b} but it's {l}",
        "bed {b} i wrote {w} instead of {l}",
        "bed {b} wrongly entered as {w}, actual {l}",
        "bed {b} typo: {l} not {w}",
    ),
    LAST: ("correct bed {b} to {l}", "bed {b} should be {l} ml", "the last line on bed {b} should be {l}"),
    BARE: ("should be {l} not {w}", "not {w}, {l}", "sorry {l} not {w}", "i meant {l} not {w}"),
    RETIMED: (
        "bed {b} time should be {t} not {t2}",
        "bed {b} at {t} not {t2}",
        "bed {b} mark was at {t} not {t2}",
        "time of the {t2} line on bed {b} should be {t}",
        "wrong time on bed {b}, {t} not {t2}",
    ),
    REBEDDED: (
        "the {t} line on bed {b} was bed {b2}",
        "{b} {t} should be bed {b2}",
        "the {t} mark on {b} belongs to {b2}",
        "i charted the {t} mark on bed {b}, meant bed {b2}",
        "bed {b} {t} line goes on bed {b2}",
    ),
    OTHER_BED: ("that was bed {b2} not {b}", "wrong bed, {b2} not {b}", "sorry bed {b2} not bed {b}"),
    ITS_LEVEL: ("{w} ml was for bed {b2} not bed {b}", "the {w} ml on bed {b} is bed {b2}'s"),
    WITHDRAWN: (
        "delete the {t} mark bed {b}",
        "scratch the {t} on {b}",
        "ignore the {t} mark on {b}",
        "bed {b} {t} was wrong, delete",
        "bed {b} {t} entered in error",
        "disregard the {t} mark on bed {b}, wrong patient",
    ),
    WITHDRAWN_LAST: ("delete last on {b}", "ignore my last on {b}", "cancel my last entry for bed {b}"),
}
"""What is meant, and the forms that are read so."""
HELD: dict[str, tuple[str, ...]] = {
    "corrected bed={b} at={m2} to_at={m}": (
        "the {t2} line on bed {b} was at {t}",
        "the {t2} on {b} was taken at {t}",
    ),
    ITS_LEVEL: ("the {w} on bed {b} belongs to bed {b2}", "{w} was for bed {b2} not bed {b}"),
    NO_TIME: ("{l} not {w} for bed {b}", "its {l} not {w} on bed {b}", "meant {l} not {w} for bed {b}"),
    FROM_TO: ("change {b} {t} {w} to {l}", "change {w} to {l} for bed {b} at {t}", "bed {b} {t}: {w} -> {l}"),
    BARE: ("should be {l} instead of {w}",),
    WITHDRAWN: ("remove {b} {t}", "remove bed {b} {t}"),
    "corrected bed={b} was_ml={w} level_ml={l}": ("bed {b}: {w} -> {l}",),
}
"""The same, of forms in which many values can be two things: those are asked, none is taken for another."""


@pytest.mark.parametrize("each", forms(READ), ids=lambda each: each.text)
def test_a_correction_is_read_over_all_values(each: Form) -> None:
    wrong, share = held(each, EACH)
    assert not wrong
    assert share >= 0.5


def test_corrections_are_mostly_read() -> None:
    assert share_read(forms(READ), EACH) > 0.9


@pytest.mark.parametrize("each", forms(HELD), ids=lambda each: each.text)
def test_a_correction_that_can_be_read_in_two_ways_is_never_read_as_the_other(each: Form) -> None:
    assert not held(each, EACH)[0]
