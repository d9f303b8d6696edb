"""The rule that judges sentences can itself fail them."""

import pytest

from tests.wording.language import faults


@pytest.mark.parametrize(
    "sentence",
    [
        "Give 500 mL of fluid.",
        "Clamp the tube.",
        "Chart 210 cc.",
        "Chart 210mL.",
        "Chart 1050 mL.",
        "Seal 2.0 cm.",
        "Seal .5 cm.",
        "Rate > 100 mL/h.",
        "Line 210 ml.",
        "at 7 pm",
        "Line None.",
        "rate_high",
        "Ligne 210 mL – ok",
        "Bed 12, , 19:00",
    ],
)
def test_a_sentence_that_prescribes_or_misleads_is_caught(sentence: str) -> None:
    assert faults(sentence)


@pytest.mark.parametrize(
    "sentence",
    [
        "Bed 12, 19:00, line 1,050 mL. Chart 210 mL (1,050 - 840 at 15:00).",
        "URGENT: 620 mL in 60 min, over 500 mL (ATLS). Assess the patient.",
        "Seal 0.5 cm. Read the level again...",
        "Suction 20 cmH2O at 19:00.",
    ],
)
def test_a_good_sentence_passes(sentence: str) -> None:
    assert not faults(sentence)
