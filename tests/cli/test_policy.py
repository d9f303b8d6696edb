"""`penline policy` and the words of a policy row."""

from __future__ import annotations

from dataclasses import replace

import pytest
from click.testing import CliRunner

from bot.cli import penline
from bot.engine.policy import Rule
from bot.engine.values import Severity
from bot.unit import demo_unit
from bot.wording.policy import HEADINGS, policy_row, rule_words

RULE = Rule(
    id="ladder.cardiac.2h",
    code="ladder",
    profiles=("cardiac",),
    population="adult",
    measure="each_hour",
    comparison="over",
    value=400,
    window_h=2,
    severity=Severity.HIGH,
    source="A text",
    source_status="second-hand",
)


def test_every_row_of_the_active_policy_is_printed_with_its_source() -> None:
    result = CliRunner().invoke(penline, ["policy"])
    lines = result.output.splitlines()
    rules = demo_unit().policy.rules
    assert result.exit_code == 0
    assert rules
    assert lines[0].split("\t") == list(HEADINGS)
    assert [line.split("\t")[0] for line in lines[1:]] == [rule.id for rule in rules]
    assert all(rule.source in line for rule, line in zip(rules, lines[1:], strict=True))


def test_a_row_says_its_rule_whom_it_is_for_and_how_its_source_is_known() -> None:
    assert policy_row(RULE) == (
        "ladder.cardiac.2h",
        "ladder",
        "cardiac (adult)",
        "over 400 mL/h in each of 2 h",
        "URGENT",
        "A text",
        "second-hand",
    )


def test_a_row_that_is_off_says_so() -> None:
    assert policy_row(replace(RULE, on=False))[-1] == "second-hand, off"


@pytest.mark.parametrize(
    ("rule", "words"),
    [
        (replace(RULE, measure="amount", value=1500, window_h=24), "over 1,500 mL within 24 h"),
        (replace(RULE, window_h=1, value=500), "over 500 mL/h in any hour"),
        (replace(RULE, measure="told"), "when told or found"),
        (
            replace(RULE, measure="rate", window_h=None, after_h=1, within_h=2),
            "over 400 mL/h in any hour, from 1 h on, in the first 2 h",
        ),
        (
            replace(RULE, measure="stop", comparison="at_most", value=10, floor=50, mediastinal=True),
            "at most 10 mL in the last hour, against 2 h before, mean at least 50 mL/h before, "
            "mediastinal or unnamed tube",
        ),
        (
            replace(RULE, measure="check", code="seal", comparison="under", value=2, window_h=None),
            "under 2 cm",
        ),
        (replace(RULE, per_kg=True, value=3, window_h=3), "over 3 mL/kg/h in each of 3 h"),
        (replace(RULE, measure="amount", per_kg=True, value=7.5, window_h=1), "over 7.5 mL/kg within 1 h"),
        (
            replace(RULE, measure="fraction", comparison="at_least", value=0.75, window_h=None),
            "at least 75% of the canister",
        ),
    ],
)
def test_a_rule_is_told_in_words(rule: Rule, words: str) -> None:
    assert rule_words(rule) == words


def test_the_wordings_of_all_default_rows_are_different_where_their_ids_are() -> None:
    rules = demo_unit().policy.rules
    assert len({rule.id for rule in rules}) == len(rules)
