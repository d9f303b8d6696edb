"""The amend list, and what is asked before a reading is recorded."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.engine.admit import _repeats, doubts, duplicate_of
from bot.engine.amend import amendments, outstanding
from bot.engine.entries import Correction, Entry, Exchanged, FinalLevel, Line, Payload, Removed, Seen, What
from bot.engine.ledger import fold
from bot.engine.values import Amendment
from tests.engine.sheet import ADULT, SCHEDULE, Sheet, at
from tests.engine.strategies import entries


def changes(sheet: Sheet, since: int) -> tuple[Amendment, ...]:
    """What the entries after the first `since` ones have changed."""
    return amendments(fold(sheet.entries[:since]), sheet.ledger, SCHEDULE)


def told(found: tuple[Amendment, ...]) -> list[tuple[datetime, datetime, int | None, list[int]]]:
    return [
        (
            one.begin,
            one.end,
            None if one.withdrawn else one.volume_ml,
            [before.volume_ml for before in one.replaces],
        )
        for one in found
    ]


def test_a_correction_amends_the_intervals_beside_it() -> None:
    sheet = Sheet()
    sheet.mark("15:00", 840)
    wrong = sheet.mark("19:00", 1050)
    sheet.corrects(wrong, 1005)
    assert told(changes(sheet, 2)) == [(at("15:00"), at("19:00"), 165, [210])]


def test_a_late_line_splits_what_was_charted() -> None:
    sheet = Sheet()
    sheet.marks(t1500=840, t1900=1050)
    sheet.tells("17:00", Line(level_ml=900), told="19:30")
    assert told(changes(sheet, 2)) == [
        (at("15:00"), at("17:00"), 60, [210]),
        (at("17:00"), at("19:00"), 150, [210]),
    ]


def test_a_new_line_amends_nothing() -> None:
    sheet = Sheet()
    sheet.marks(t1500=840, t1900=1050, t2000=1080)
    assert changes(sheet, 2) == ()


def test_a_withdrawn_line_strikes_out_what_it_charted() -> None:
    sheet = Sheet()
    sheet.mark("15:00", 840)
    sheet.withdraws(sheet.mark("19:00", 1050))
    assert told(changes(sheet, 2)) == [(at("15:00"), at("19:00"), None, [210])]


def test_a_late_final_level_amends_the_interval_across_the_exchange() -> None:
    sheet = Sheet()
    sheet.mark("03:00", 1820)
    exchange = sheet.exchanged("03:30")
    sheet.mark("04:00", 60)
    sheet.tells("05:00", FinalLevel(level_ml=1860, exchange=exchange))
    assert told(changes(sheet, 3)) == [
        (at("03:00"), at("03:30"), 40, [60]),
        (at("03:30"), at("04:00"), 60, [60]),
    ]


def test_a_tip_over_told_late_strikes_out_what_was_measured_after_it() -> None:
    sheet = Sheet()
    sheet.marks(t1500=840, t1900=1050)
    sheet.happens("17:00", What.TIPPED)
    assert told(changes(sheet, 2)) == [(at("15:00"), at("19:00"), None, [210])]


def test_a_closing_line_told_late_moves_a_volume_to_another_shift() -> None:
    sheet = Sheet()
    sheet.marks(t1700=100, t1835=150, t1900=170)
    sheet.mark("18:36", 150, closing=True)
    (found,) = changes(sheet, 3)
    assert (found.shift.name, found.volume_ml) == ("night", 20)


def test_two_corrections_of_one_line_are_one_amendment_and_one_taken_back_is_none() -> None:
    sheet = Sheet()
    sheet.mark("15:00", 840)
    wrong = sheet.mark("19:00", 1050)
    first = sheet.corrects(wrong, 1005)
    second = sheet.corrects(wrong, 1010)
    assert told(outstanding(sheet.ledger, SCHEDULE)) == [(at("15:00"), at("19:00"), 170, [210])]
    sheet.withdraws(first)
    sheet.withdraws(second)
    assert outstanding(sheet.ledger, SCHEDULE) == ()


def test_an_amendment_stands_until_someone_says_that_the_chart_was_amended() -> None:
    sheet = Sheet()
    sheet.mark("15:00", 840)
    sheet.corrects(sheet.mark("19:00", 1050), 1005)
    sheet.tells("19:30", Seen())
    assert outstanding(sheet.ledger, SCHEDULE)
    sheet.tells("19:40", Seen(amended=True))
    sheet.mark("20:00", 1030)
    assert outstanding(sheet.ledger, SCHEDULE) == ()


def asked(sheet: Sheet, level_ml: int, clock: str, payload: Payload | None = None) -> list[str]:
    line = payload or Line(level_ml=level_ml)
    assert isinstance(line, Line | FinalLevel)
    ledger = sheet.ledger
    told = ledger.next_entry(line, at(clock), at(clock))
    return [doubt.code for doubt in doubts(ledger, told, ADULT)]


@pytest.mark.parametrize(
    ("level_ml", "clock", "codes"),
    [
        (1050, "20:00", []),
        (1049, "20:00", ["line_fell"]),
        (1550, "20:00", []),
        (1551, "20:00", ["jump"]),
        (1550, "19:30", []),
        (1551, "19:30", ["jump"]),
        (2001, "21:00", ["over_capacity"]),
        (2000, "21:00", []),
        (2051, "21:00", ["over_capacity", "jump"]),
        (1100, "17:00", ["line_fell"]),
        (1050, "17:00", []),
        (800, "17:00", ["line_fell"]),
        (1060, "19:00", ["time_conflict"]),
        (1050, "19:00", []),
        (1100, "33:00", []),
        (1100, "33:01", ["long_silence"]),
    ],
)
def test_what_is_asked_before_a_reading_is_recorded(level_ml: int, clock: str, codes: list[str]) -> None:
    sheet = Sheet()
    sheet.marks(t1500=840, t1900=1050)
    assert asked(sheet, level_ml, clock) == codes


def test_a_doubt_names_the_line_that_it_is_against() -> None:
    sheet = Sheet()
    before, after = sheet.mark("15:00", 840), sheet.mark("19:00", 1050)
    ledger = sheet.ledger
    (low,), (high,) = (
        doubts(ledger, ledger.next_entry(Line(level_ml=level), at("17:00"), at("19:30")), ADULT)
        for level in (800, 1100)
    )
    assert low.before is not None
    assert low.before.entry == before
    assert high.after is not None
    assert high.after.entry == after


def test_a_low_line_on_a_new_canister_is_no_fall() -> None:
    sheet = Sheet()
    sheet.mark("18:00", 1820)
    sheet.tells("18:30", Exchanged())
    assert asked(sheet, 30, "19:00") == []


def test_after_a_tip_over_no_fall_and_no_jump_is_asked() -> None:
    sheet = Sheet()
    sheet.mark("18:00", 820)
    sheet.happens("18:30", What.TIPPED)
    assert asked(sheet, 300, "19:00") == []


def test_a_final_level_below_the_last_line_is_asked() -> None:
    sheet = Sheet()
    sheet.mark("18:00", 1820)
    exchange = sheet.exchanged("18:30")
    sheet.mark("19:00", 30)
    assert asked(sheet, 0, "19:05", FinalLevel(level_ml=1800, exchange=exchange)) == ["line_fell"]
    assert asked(sheet, 0, "19:05", FinalLevel(level_ml=1840, exchange=exchange)) == []


def test_a_line_after_the_removal_is_asked_and_the_final_level_is_not() -> None:
    sheet = Sheet()
    sheet.mark("09:00", 300)
    sheet.tells("10:15", Removed())
    assert asked(sheet, 0, "10:15", FinalLevel(level_ml=340)) == []
    assert asked(sheet, 350, "11:00") == ["removed"]


def test_a_first_line_is_never_a_jump() -> None:
    assert asked(Sheet(), 1900, "19:00") == []


def test_the_unit_sets_how_large_a_jump_is() -> None:
    from dataclasses import replace

    sheet = Sheet()
    sheet.mark("18:00", 100)
    strict = replace(ADULT, jump_ml=100)
    ledger = sheet.ledger
    much, little = (ledger.next_entry(Line(level_ml=level), at("19:00"), at("19:00")) for level in (201, 200))
    (found,) = doubts(ledger, much, strict)
    assert (found.code, found.limit) == ("jump", 100)
    assert doubts(ledger, little, strict) == ()


def test_a_correction_is_asked_about_as_a_line_is() -> None:
    sheet = Sheet()
    sheet.mark("15:00", 840)
    line = sheet.mark("19:00", 1050)
    ledger, now = sheet.ledger, at("19:30")
    low, fine = (
        doubts(ledger, ledger.next_entry(Correction(target=line, level_ml=level), now, now), ADULT)
        for level in (100, 1005)
    )
    assert [doubt.code for doubt in low] == ["line_fell"]
    assert fine == ()


@pytest.mark.parametrize(
    ("level_ml", "clock", "already"),
    [(1050, "19:05", True), (1050, "18:55", True), (1050, "19:06", False), (1051, "19:02", False)],
)
def test_a_reading_is_already_marked_within_5_min(level_ml: int, clock: str, already: bool) -> None:
    sheet = Sheet()
    sheet.mark("19:00", 1050)
    assert (duplicate_of(sheet.ledger, level_ml, at(clock)) is not None) is already


def test_a_reading_of_the_same_level_on_a_new_canister_is_not_already_marked() -> None:
    sheet = Sheet()
    sheet.mark("19:00", 0)
    sheet.exchanged("19:02", final_ml=0)
    assert duplicate_of(sheet.ledger, 0, at("19:04")) is None


@given(entries(), st.data())
def test_a_line_that_would_be_recorded_repeats_what_its_reading_repeats(
    told: tuple[Entry, ...], data: st.DataObject
) -> None:
    ledger = fold(told)
    beside = data.draw(st.sampled_from(ledger.live or told))
    moment = beside.at + timedelta(minutes=data.draw(st.sampled_from([0, 0, 1, -1, 5, -5, 6])))
    level_ml = data.draw(st.sampled_from([each.level_ml for each in ledger.levels] or [0]))
    line = ledger.next_entry(Line(level_ml=level_ml), moment, moment + timedelta(days=40))
    assert _repeats(ledger, line, level_ml) == (duplicate_of(ledger, level_ml, moment) is not None)


def test_of_two_levels_of_one_moment_either_is_already_marked() -> None:
    sheet = Sheet()
    sheet.tells("19:00", Line(level_ml=500))
    sheet.tells("19:00", Line(level_ml=600), told="19:05")
    for level_ml in (500, 600):
        again = sheet.ledger.next_entry(Line(level_ml=level_ml), at("19:00"), at("19:10"))
        assert _repeats(sheet.ledger, again, level_ml)
