"""What was given out to chart and is no longer so, found at the few entries that can change the past."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

from hypothesis import given
from hypothesis import strategies as st

from bot.engine.entries import (
    Correction,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Line,
    Payload,
    Placed,
    Removed,
    What,
    Withdrawal,
)
from bot.engine.ledger import fold
from bot.engine.past import disturbing, originals, outdated
from bot.engine.policy import Policy, Schedule
from bot.engine.volumes import intervals

POLICY = Policy(schedule=Schedule(zone=ZoneInfo("America/New_York")), rules=())
DRAIN = "0123456789abcdef"
BEGIN = datetime(2026, 3, 4, 12, tzinfo=UTC)

_levels = st.integers(min_value=0, max_value=2000)
_places = st.integers(min_value=1, max_value=12).map(lambda position: f"{DRAIN}-{position}")
_payloads: st.SearchStrategy[Payload] = st.one_of(
    st.builds(Line, level_ml=_levels, closing=st.booleans()),
    st.builds(Line, level_ml=_levels),
    st.builds(FinalLevel, level_ml=_levels, exchange=st.none() | _places),
    st.builds(Exchanged),
    st.builds(Placed, bed=st.just("12"), opening_ml=st.none() | _levels),
    st.builds(Correction, target=_places, level_ml=st.none() | _levels),
    st.builds(Withdrawal, target=_places),
    st.sampled_from((Incident(what=What.TIPPED), Removed())),
)


def told(rows: list[tuple[int, Payload]]) -> list[Entry]:
    """Entries at so many minutes after the beginning, recorded in the order given."""
    return [
        Entry(
            drain=DRAIN,
            position=position,
            at=BEGIN + timedelta(minutes=minutes),
            entered=BEGIN + timedelta(days=2, minutes=position),
            who="rn-1",
            message=f"m{position}",
            payload=payload,
        )
        for position, (minutes, payload) in enumerate(rows, start=1)
    ]


def _names_a_later_one(payload: Payload, position: int) -> bool:
    """No one can speak of an entry that is not there yet."""
    named = getattr(payload, "target", None) or getattr(payload, "exchange", None)
    return named is not None and int(named.rpartition("-")[2]) >= position


def given_out(entries: list[Entry]) -> dict[tuple[str, str], tuple[object, ...]]:
    """The volumes of these entries by the two levels that they lie between."""
    return {
        (each.begin.entry, each.end.entry): (each.begin.at, each.end.at, each.volume_ml, each.at_least)
        for each in intervals(fold(entries), POLICY.schedule)
    }


@given(st.lists(st.tuples(st.integers(min_value=0, max_value=2000), _payloads), max_size=12))
def test_every_volume_that_was_ever_given_out_otherwise_is_found(rows: list[tuple[int, Payload]]) -> None:
    kept: list[tuple[int, Payload]] = []
    for row in rows:
        kept += [] if _names_a_later_one(row[1], len(kept) + 1) else [row]
    entries = told(kept)
    stages = [given_out(entries[:end]) for end in range(len(entries) + 1)]

    changed = {
        key
        for before, after in pairwise(stages)
        for key, volume in before.items()
        if after.get(key) != volume
    }

    found = [old.interval for old in outdated(entries, POLICY)]
    assert {(each.begin.entry, each.end.entry) for each in found} == changed


def test_entries_in_order_change_nothing_and_cost_nothing() -> None:
    entries = told([(hour * 60, Line(level_ml=hour * 40)) for hour in range(30)])
    assert list(disturbing(entries)) == []
    assert outdated(entries, POLICY) == ()


def test_a_volume_is_kept_as_it_was_last_and_with_when_it_became_untrue() -> None:
    entries = told(
        [
            (0, Line(level_ml=100)),
            (60, Line(level_ml=200)),
            (60, Correction(target=f"{DRAIN}-2", level_ml=150)),
            (30, Line(level_ml=120)),
        ]
    )

    (old,) = outdated(entries, POLICY)

    assert old.interval.volume_ml == 50
    assert old.until == entries[3].entered


def test_corrections_of_corrections_belong_to_the_entry_that_was_wrong() -> None:
    entries = told(
        [
            (0, Line(level_ml=100)),
            (0, Correction(target=f"{DRAIN}-1", level_ml=150)),
            (0, Correction(target=f"{DRAIN}-2", level_ml=160)),
            (60, Line(level_ml=200)),
        ]
    )
    assert originals(entries) == ((entries[0], (entries[1], entries[2])), (entries[3], ()))
