"""What a question keeps comes back as it was, and nothing that is not ours is taken for it."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from datetime import UTC, datetime, timedelta
from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.pending import Ask, Grant, Pending
from bot.dialogue.said import (
    Amount,
    Answered,
    Fact,
    Fix,
    NotSure,
    Query,
    Report,
    Said,
    SeenIt,
    Slots,
    TakeBack,
)
from bot.dialogue.said_json import dumped, loaded
from bot.engine.entries import Line, Placed, Reason

moments = st.datetimes(timezones=st.just(UTC))
facts = st.one_of(*(st.from_type(fact) for fact in get_args(Fact)))
st.register_type_strategy(datetime, moments)
said = st.one_of(
    st.builds(Report, fact=facts),
    *(st.from_type(each) for each in (Amount, Fix, TakeBack, Query, Answered, SeenIt)),
)


@given(st.builds(Pending, said=said, grant=st.builds(Grant), rest=st.tuples(said)))
def test_any_pending_statement_survives_its_json(pending: Pending) -> None:
    assert _same(loaded(dumped(pending), Pending), pending)


def _same(left: Any, right: Any) -> bool:
    if is_dataclass(left) and is_dataclass(right) and type(left) is type(right):
        return all(_same(getattr(left, f.name), getattr(right, f.name)) for f in fields(left))
    if isinstance(left, float) and left != left:
        return isinstance(right, float) and right != right
    if isinstance(left, tuple) and isinstance(right, tuple):
        return len(left) == len(right) and all(map(_same, left, right))
    return bool(left == right)


def test_moments_stretches_and_enums_keep_their_kind() -> None:
    at = datetime(2026, 3, 5, tzinfo=UTC)
    pending = Pending(
        ask=Ask.READING,
        said=Slots(kind="placed", bed="12", at=at, values=(("reason", "cardiac"),)),
        choices=(at, timedelta(hours=2), "left"),
        readings=(Report(bed="12", fact=Placed(bed="12", reason=Reason.CARDIAC)),),
        rest=(NotSure(slot="bed", text="?", choices=("2", "12")),),
    )
    assert loaded(dumped(pending), Pending) == pending


@pytest.mark.parametrize(
    "text",
    ["{}", "[]", "null", '{"is":"Path"}', '{"is":"Report"}', '{"is":"Line","level":3}', '{"bed":"12"}', "x"],
)
def test_what_is_not_a_stored_statement_is_refused(text: str) -> None:
    with pytest.raises(ValueError):
        loaded(text, Pending)


def test_a_value_that_is_no_statement_is_never_stored() -> None:
    with pytest.raises(TypeError):
        dumped({1, 2})


def test_every_kind_of_statement_can_be_stored() -> None:
    assert {cls.__name__ for cls in get_args(Said)} >= {"Report", "Amount", "Fix", "Query"}
    assert loaded(dumped(Line(level_ml=3)), Line) == Line(level_ml=3)
