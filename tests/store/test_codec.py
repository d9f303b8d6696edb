"""A payload goes to JSON and back unchanged, and anything else is refused."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.engine.entries import Checked, Correction, Incident, Line, Payload, Placed, Reason, What
from bot.store.codec import KINDS, decode, encode
from bot.store.errors import LedgerError
from bot.store.moments import moment_text

moments = st.datetimes(datetime(2000, 1, 1), datetime(2100, 1, 1), timezones=st.just(UTC))  # noqa: DTZ001
st.register_type_strategy(datetime, moments)
st.register_type_strategy(float, st.floats(allow_nan=False, allow_infinity=False))
payloads = st.one_of([st.builds(cls) for cls in KINDS.values()])


@given(payloads)
def test_every_payload_comes_back_as_it_was(payload: Payload) -> None:
    assert decode(payload.kind, encode(payload)) == payload


def test_what_is_not_known_is_left_out() -> None:
    assert encode(Checked(seal_cm=2)) == '{"seal_cm":2}'


def test_one_payload_has_one_text() -> None:
    placed = Placed(bed="12", tube="left", reason=Reason.LUNG, joined=("left", "right"))
    assert encode(placed) == '{"bed":"12","joined":["left","right"],"reason":"lung","tube":"left"}'


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        ("mark", '{"level_ml":"840"}'),
        ("mark", '{"level_ml":840.0}'),
        ("mark", '{"level_ml":true}'),
        ("mark", '{"level_ml":null}'),
        ("mark", "{}"),
        ("mark", "[]"),
        ("mark", "{"),
        ("mark", '{"level_ml":840,"liters":1}'),
        ("mark", '{"level_ml":840,"closing":1}'),
        ("mark", '{"level_ml":840,"accepted":"jump"}'),
        ("mark", '{"level_ml":840,"accepted":[1]}'),
        ("incident", '{"what":"stolen"}'),
        ("checked", '{"air_leak":"some"}'),
        ("corrected", '{"target":"x-1","at":"noon"}'),
        ("sold", "{}"),
    ],
)
def test_a_wrong_payload_is_refused(kind: str, text: str) -> None:
    with pytest.raises(LedgerError):
        decode(kind, text)


@pytest.mark.parametrize(
    "payload",
    [
        Line(level_ml=0),
        Incident(what=What.TIPPED),
        Correction(target="0123456789abcdef-1", at=datetime(2026, 3, 4, 19, tzinfo=UTC)),
        Checked(seal_cm=1.5, tidaling=False, air_leak="none", leak_grade=0),
    ],
)
def test_zero_and_false_are_kept(payload: Payload) -> None:
    assert decode(payload.kind, encode(payload)) == payload


def test_a_time_that_the_clocks_repeat_has_the_text_of_its_own_moment() -> None:
    zone = ZoneInfo("America/New_York")
    twice = [datetime(2026, 11, 1, 1, 30, tzinfo=zone, fold=fold) for fold in (0, 1)]
    assert twice[0] == twice[1]
    told = [moment_text(moment) for moment in twice]
    assert told == ["2026-11-01T05:30:00.000000Z", "2026-11-01T06:30:00.000000Z"]
