"""What the checks found last of a bed is told again only where they would find it again."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.engine.cautions import all_cautions
from bot.engine.cautions.checks import _BY_THE_CLOCK, CHECKS
from bot.engine.cautions.scene import Scene
from bot.engine.entries import Entry, Incident, Payload, What
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.policy import Policy
from bot.engine.values import Caution, Severity
from tests.engine.sheet import ADULT, CHILD
from tests.engine.test_going_on import steps, told_in_turn

POLICIES = (ADULT, CHILD)


def patient(ledgers: Sequence[Ledger]) -> Patient:
    """A bed with these drains."""
    return Patient(bed="12", drains=tuple(ledgers))


def plainly(told: Sequence[Sequence[Entry]], now: datetime, policy: Policy) -> list[Caution]:
    """Every check run on ledgers that nothing was ever asked of."""
    scene = Scene(patient=patient([fold(entries) for entries in told]), now=now, policy=policy)
    found = [caution for check in CHECKS for caution in check(scene)]
    return sorted(found, key=lambda caution: list(Severity).index(caution.severity))


def other(entries: Sequence[Entry], drain: str) -> tuple[Entry, ...]:
    """The same told of another drain."""
    return tuple(replace(entry, drain=drain) for entry in entries)


@given(
    steps,
    steps,
    st.lists(
        st.tuples(
            st.sampled_from(POLICIES), st.integers(0, 900), st.integers(0, 30), st.booleans(), st.booleans()
        ),
        max_size=8,
    ),
)
def test_whatever_was_asked_of_its_ledgers_before(
    one: list[tuple[int, int | Payload]],
    two: list[tuple[int, int | Payload]],
    asked: list[tuple[Policy, int, int, bool, bool]],
) -> None:
    told = (told_in_turn(one), other(told_in_turn(two), "e" * 16))
    ledgers = tuple(map(fold, told))
    last = max((entry.at for entries in told for entry in entries), default=None)
    for policy, minutes, count, both, turned in asked:
        if last is None:
            return
        beds = [told[0][:count] or told[0], told[1]] if count else list(told)
        drains = [fold(beds[0]) if count else ledgers[0], ledgers[1]]
        pairs = [pair for pair in zip(beds, drains, strict=True) if pair[0]][: 2 if both else 1]
        pairs = pairs[::-1] if turned else pairs
        now = last + timedelta(minutes=minutes)
        found = all_cautions(patient([ledger for _, ledger in pairs]), now, policy)
        assert list(found) == plainly([entries for entries, _ in pairs], now, policy)


def test_most_checks_do_not_look_at_the_moment_and_are_not_run_again() -> None:
    assert set(CHECKS) > _BY_THE_CLOCK
    ledger = fold(told_in_turn([(60, 300)] * 6))
    now = ledger.live[-1].at
    first, again = (
        all_cautions(patient([ledger]), now + timedelta(minutes=wait), ADULT) for wait in (1, 300)
    )
    standing = [caution for caution in first if caution.code == "rate_high"]
    assert standing
    assert all(any(caution is known for known in again) for caution in standing)


CLOCK = (
    ((60, Incident(what=What.CLAMPED)), 30),
    ((60, 10), 100),
    ((700, 10), 100),
)
"""What is told last, and how long after it something more is to be said, in minutes."""


@pytest.mark.parametrize(("last", "minutes"), CLOCK)
def test_what_only_time_brings_is_found_when_it_comes(last: tuple[int, int | Payload], minutes: int) -> None:
    told = told_in_turn([(60, 10)] * 6 + [last])
    ledger, now = fold(told), told[-1].at
    found = [
        all_cautions(patient([ledger]), now + timedelta(minutes=wait), ADULT) for wait in (0, minutes, 0)
    ]
    assert found[0] == found[2] != found[1]
    assert list(found[1]) == plainly([told], now + timedelta(minutes=minutes), ADULT)
