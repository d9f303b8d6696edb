"""JSON lines hold everything that a ledger holds."""

from __future__ import annotations

import hashlib
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
from bot.interchange.jsonl import Exported, entry_lines
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
    told = Exported(entry_lines(entries))
    assert list(told) == entries
    assert told.whole


@given(ENTRIES)
def test_an_entry_is_one_line_whatever_its_words_hold(entry: Entry) -> None:
    _, line, _ = entry_lines([entry])
    assert "\n" not in line
    assert "\r" not in line


def test_a_line_names_the_moment_in_utc_and_the_payload_by_its_kind() -> None:
    rows = Rows()
    rows.tell("4 19:00", Line(level_ml=1050))

    _, line, _ = entry_lines(rows.entries)

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
    head, good, changed, _ = entry_lines(rows.entries)
    broken = json.dumps({**json.loads(changed), key: value})

    with pytest.raises(LedgerError, match="line 4"):
        list(Exported([head, good, "", broken]))


@pytest.mark.parametrize("line", ["{", "[]", "7", '"text"', "null", "[" * 100_000, "{" + "}" * 9])
def test_a_line_that_is_no_entry_is_refused(line: str) -> None:
    with pytest.raises(LedgerError, match="line 1"):
        list(Exported([line]))


def three_lines() -> list[str]:
    """A file of three entries, with its head and its end."""
    rows = Rows()
    for hour in (17, 18, 19):
        rows.tell(f"4 {hour}:00", Line(level_ml=100 * hour))
    return list(entry_lines(rows.entries))


def test_the_end_says_how_many_entries_and_drains_there_are_and_what_the_lines_before_hash_to() -> None:
    *lines, end = three_lines()
    digest = hashlib.sha256("".join(f"{line}\n" for line in lines).encode()).hexdigest()
    assert json.loads(end) == {"entries": 3, "drains": 1, "sha256": digest}
    assert lines[0] == '{"penline":"entries","version":2}'


@pytest.mark.parametrize("kept", range(1, 5))
def test_a_file_that_was_cut_between_two_lines_is_refused(kept: int) -> None:
    with pytest.raises(LedgerError, match="ends too early"):
        list(Exported(three_lines()[:kept]))


@pytest.mark.parametrize("lost", [1, 2, 3])
def test_a_file_that_lost_a_line_is_refused(lost: int) -> None:
    lines = three_lines()
    del lines[lost]
    with pytest.raises(LedgerError, match="line 4: the lines before are not those that were exported"):
        list(Exported(lines))


def test_a_word_that_was_changed_without_the_end_is_refused() -> None:
    lines = [line.replace("1800", "1700") for line in three_lines()]
    with pytest.raises(LedgerError, match="line 5: the lines before are not"):
        list(Exported(lines))


def test_nothing_comes_after_the_end() -> None:
    lines = three_lines()
    with pytest.raises(LedgerError, match="line 6: after the end"):
        list(Exported([*lines, lines[1]]))


def test_a_file_of_before_there_were_ends_is_read_and_cannot_be_said_to_be_whole() -> None:
    _, *lines, _ = three_lines()
    told = Exported(lines)
    assert len(list(told)) == 3
    assert not told.whole


def test_an_empty_file_is_not_an_export() -> None:
    with pytest.raises(LedgerError, match="is empty"):
        list(Exported(["\n", ""]))
