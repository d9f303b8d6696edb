"""JSON lines hold everything that a ledger holds."""

from __future__ import annotations

import json
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.engine.entries import (
    Away,
    Back,
    Checked,
    Correction,
    Described,
    Entry,
    Exchanged,
    FinalLevel,
    Incident,
    Left,
    Line,
    Moved,
    Opened,
    Ordered,
    Payload,
    Placed,
    Reason,
    Removed,
    Seen,
    What,
    Withdrawal,
)
from bot.interchange.jsonl import entries_of, entry_lines
from bot.store.errors import LedgerError
from tests.interchange.rows import DRAIN, Rows

_levels = st.integers(min_value=0, max_value=3000)
_moments = st.integers(min_value=0, max_value=10**13).map(
    lambda micros: datetime(2026, 1, 1, tzinfo=UTC) + timedelta(microseconds=micros)
)
_entry_ids = st.integers(min_value=1, max_value=99).map(lambda position: f"{DRAIN}-{position}")
_words = st.text(min_size=1, max_size=12).filter(
    lambda text: not any(0xD800 <= ord(c) < 0xE000 for c in text)
)
_tubes = st.none() | _words

PAYLOADS: st.SearchStrategy[Payload] = st.one_of(
    st.builds(
        Placed,
        bed=_words,
        tube=_tubes,
        opening_ml=st.none() | _levels,
        reason=st.none() | st.sampled_from(Reason),
        weight_kg=st.none() | st.floats(min_value=0.4, max_value=250),
        joined=st.lists(_words, max_size=3).map(tuple),
    ),
    st.builds(Opened, bed=_words, tube=_tubes),
    st.builds(Described, reason=st.none() | st.sampled_from(Reason)),
    st.builds(
        Line, level_ml=_levels, closing=st.booleans(), about=st.booleans(), told_ml=st.none() | _levels
    ),
    st.builds(FinalLevel, level_ml=_levels, exchange=st.none() | _entry_ids),
    st.builds(Exchanged, opening_ml=_levels),
    st.builds(Moved, from_bed=_words, to_bed=_words),
    st.builds(
        Checked, seal_cm=st.none() | st.floats(min_value=0, max_value=9), tidaling=st.none() | st.booleans()
    ),
    st.builds(Ordered, suction_cmh2o=st.integers(min_value=0, max_value=40)),
    st.builds(Incident, what=st.sampled_from(What)),
    st.builds(Correction, target=_entry_ids, level_ml=st.none() | _levels, at=st.none() | _moments),
    st.builds(Withdrawal, target=_entry_ids, moved_to=st.none() | _entry_ids),
    st.builds(Seen, amended=st.booleans()),
    st.sampled_from((Removed(), Left(), Away(), Back())),
)
ENTRIES = st.builds(
    Entry,
    drain=st.just(DRAIN),
    position=st.integers(min_value=1, max_value=10**6),
    at=_moments,
    entered=_moments,
    who=_words,
    message=_words,
    payload=PAYLOADS,
)


@given(st.lists(ENTRIES, max_size=5))
def test_what_was_written_is_read_back_entry_for_entry(entries: list[Entry]) -> None:
    assert list(entries_of(entry_lines(entries))) == entries


@given(ENTRIES)
def test_an_entry_is_one_line_whatever_its_words_hold(entry: Entry) -> None:
    (line,) = entry_lines([entry])
    assert "\n" not in line
    assert "\r" not in line


def test_a_line_names_the_moment_in_utc_and_the_payload_by_its_kind() -> None:
    rows = Rows()
    rows.tell("4 19:00", Line(level_ml=1050))

    (line,) = entry_lines(rows.entries)

    held = json.loads(line)
    assert held["at"] == "2026-03-05T00:00:00.000000Z"
    assert held["entered"] == "2026-03-05T00:02:00.000000Z"
    assert held["kind"] == "mark"
    assert held["payload"]["level_ml"] == 1050


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("position", "1"),
        ("position", True),
        ("drain", 7),
        ("at", "2026-03-04T19:00:00-05:00"),
        ("kind", "guess"),
        ("payload", {"level_ml": "1050"}),
        ("payload", {"level_ml": 1050, "volume_ml": 3}),
        ("extra", 1),
    ],
)
def test_a_line_that_was_changed_by_hand_is_refused_and_named(key: str, value: object) -> None:
    rows = Rows()
    rows.tell("4 18:00", Line(level_ml=1000))
    rows.tell("4 19:00", Line(level_ml=1050))
    good, changed = entry_lines(rows.entries)
    broken = json.dumps({**json.loads(changed), key: value})

    with pytest.raises(LedgerError, match="line 3"):
        list(entries_of([good, "", broken]))


@pytest.mark.parametrize("line", ["{", "[]", "7", '"text"', "null"])
def test_a_line_that_is_no_entry_is_refused(line: str) -> None:
    with pytest.raises(LedgerError, match="line 1"):
        list(entries_of([line]))
