"""What is asked, answered, ordered and checked, in plain forms over many values: read as meant, or asked."""

from __future__ import annotations

import pytest

from tests.nlu.forms import Form, forms, held, share_read

EACH = 5
"""Fillings of a form."""
READ: dict[str, tuple[str, ...]] = {
    "asked bed={b} topic=last": (
        "what's the last mark on bed {b}",
        "where's {b}?",
        "bed {b}?",
        "latest on bed {b}",
    ),
    "asked bed={b} topic=total window=shift": (
        "total for bed {b} this shift",
        "how much has bed {b} put out this shift",
    ),
    "asked bed={b} topic=total window=24h": (
        "bed {b} 24h total",
        "how much did bed {b} drain in the last 24 hours",
    ),
    "asked bed={b} topic=total window=4h": ("bed {b} last 4 hours total", "bed {b} output past 4h"),
    "asked bed={b} topic=total window={m}": (
        "bed {b} total since {t}",
        "how much has bed {b} drained since {t}",
    ),
    "asked bed={b} topic=total window=placement": ("total since placement bed {b}",),
    "asked bed={b} topic=chart": ("what do i chart for bed {b}", "bed {b} volume to chart"),
    "asked bed={b} topic=rate": ("bed {b} rate?", "how fast is bed {b} draining"),
    "asked bed={b} topic=due": ("when is bed {b} due", "next mark due bed {b}?"),
    "asked bed={b} topic=handoff": ("sbar for bed {b}", "handover bed {b}"),
    "asked bed={b} topic=capacity": ("how full is bed {b}?", "how many ml left in bed {b}'s box"),
    "asked bed={b} topic=checks": ("is there an air leak on bed {b}?", "last checks bed {b}"),
    "answered answer=yes": ("yes", "yep correct", "correct, thanks", "that's right"),
    "answered answer=no": ("no", "no, wrong", "no that's wrong"),
    "answered bed={b} answer=yes": ("yes {b}", "bed {b} yes", "{b}, correct"),
    "answered answer=yes level_ml={l}": ("yes {l} ml", "yes, {l} ml is right"),
    "answered choice=misread level_ml={l}": ("misread, it's {l} ml", "misread, should be {l} ml"),
    "answered choice=earlier_wrong": ("the earlier one was wrong",),
    "answered at={m}": ("at {t}",),
    "ordered bed={b} suction_cmh2o={su}": (
        "bed {b} ordered suction {su}",
        "dr ordered suction -{su} on bed {b}",
        "suction order bed {b} {su}",
        "suction order for bed {b} is {su} cm",
        "suction order for bed {b} -{su}",
        "surgeon ordered {su} cm suction on bed {b}",
        "new order bed {b} suction {su}",
    ),
    "ordered bed={b} suction_cmh2o=0": ("order for bed {b}: water seal", "bed {b} ordered to water seal"),
    "checked bed={b} suction_cmh2o={su}": (
        "bed {b} suction -{su}",
        "bed {b} on {su} of suction",
        "bed {b} sxn {su}",
    ),
    "checked bed={b} seal_cm={se}": ("bed {b} seal {se}", "seal at {se} cm bed {b}"),
    "checked bed={b} wall_mmhg=90": ("bed {b} wall 90", "wall suction 90 mmHg bed {b}"),
    "checked bed={b} suction_cmh2o={su} wall_mmhg=100 air_leak=none": (
        "bed {b} -{su} suction, 100 wall, no leak",
        "bed {b} suction {su} wall 100 no leak",
    ),
    "checked bed={b} at={m} suction_cmh2o={su}": ("bed {b} suction {su} at {t}", "{t} bed {b} suction {su}"),
    "mark bed={b} level_ml={l} at={m}; checked bed={b} at={m} suction_cmh2o={su} air_leak=none": (
        "bed {b} mark {l} at {t}, suction {su}, no leak",
        "bed {b} line {l} at {t}. sxn {su}. no air leak",
    ),
}
"""What is meant, and the forms that are read so."""
HELD: dict[str, tuple[str, ...]] = {
    "answered at={m}": ("it was at {t}", "it was taken at {t}"),
    "checked bed={b} suction_cmh2o={su}": ("suction bed {b} {su}", "bed {b} suction confirmed at {su}"),
    "asked bed={b} topic=total window={m}": ("total from {t} to now bed {b}", "bed {b} since {t}?"),
}
"""The same, of forms that are asked often."""


@pytest.mark.parametrize("each", forms(READ), ids=lambda each: each.text)
def test_it_is_read_over_all_values(each: Form) -> None:
    wrong, share = held(each, EACH)
    assert not wrong
    assert share >= 0.5


def test_questions_answers_and_orders_are_mostly_read() -> None:
    assert share_read(forms(READ), EACH) > 0.9


@pytest.mark.parametrize("each", forms(HELD), ids=lambda each: each.text)
def test_what_is_asked_often_is_never_read_as_something_else(each: Form) -> None:
    assert not held(each, EACH)[0]
