"""The checklist that goes with a new canister."""

import pytest

from bot.wording.checklist import exchange_checklist
from bot.wording.gsm import is_gsm, segments


@pytest.mark.parametrize(
    "step",
    [
        "final level",
        "taped connection",
        "in-line connector",
        "suction set",
        "clamp open",
        "suction back on",
        "adapter",
    ],
)
def test_the_exchange_checklist_names_each_step_of_trade_practice(step: str) -> None:
    assert step in exchange_checklist()


def test_the_exchange_checklist_is_short_enough_to_be_read() -> None:
    assert is_gsm(exchange_checklist())
    assert segments(exchange_checklist()) <= 2
