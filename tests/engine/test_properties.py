"""What holds of every ledger, against the reckoning from the definitions."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from itertools import pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.engine.amend import amendments, outstanding
from bot.engine.cautions import all_cautions
from bot.engine.entries import Correction, Entry, Withdrawal
from bot.engine.ledger import Ledger, fold
from bot.engine.patient import Patient
from bot.engine.policy import Schedule
from bot.engine.shifts import shift_after, shift_at, shift_before, shift_sum
from bot.engine.values import Shift
from bot.engine.volumes import charted_by, intervals, total
from bot.engine.windows import window_sum
from tests.engine import reckoning
from tests.engine.sheet import ADULT, SCHEDULE, THREE_SHIFTS
from tests.engine.strategies import entries, shuffled

SCHEDULES = st.sampled_from([SCHEDULE, THREE_SHIFTS])


def shifts_of(ledger: Ledger, schedule: Schedule) -> list[Shift]:
    """Every shift that could chart something of the ledger."""
    shift = shift_before(schedule, shift_at(schedule, ledger.levels[0].at))
    found = [shift]
    while shift.start <= ledger.levels[-1].at:
        shift = shift_after(schedule, shift)
        found.append(shift)
    return found


@given(entries())
def test_totals_are_those_of_the_definition(told: tuple[Entry, ...]) -> None:
    expected = reckoning.totals(told)
    assert {level.entry: level.total_ml for level in fold(told).levels}.items() <= expected.items()


@given(entries())
def test_every_level_is_there_but_for_repeats(told: tuple[Entry, ...]) -> None:
    ledger = fold(told)
    read = {one.entry for one in reckoning.happenings(told) if one.kind in ("mark", "final")}
    listed = {level.entry for level in ledger.levels if level.kind != "opening"}
    assert listed | {repeat for repeat, _ in ledger.duplicates} == read
    assert not listed & {repeat for repeat, _ in ledger.duplicates}


@given(entries().flatmap(lambda told: st.tuples(st.just(told), shuffled(told))))
def test_the_order_in_which_entries_are_handed_over_does_not_matter(
    pair: tuple[tuple[Entry, ...], list[Entry]],
) -> None:
    assert fold(pair[0]) == fold(pair[1])


@given(entries())
def test_no_volume_is_negative_and_moments_never_run_back(told: tuple[Entry, ...]) -> None:
    levels = fold(told).levels
    for before, after in pairwise(levels):
        assert before.at <= after.at
        assert before.total_ml <= after.total_ml
        assert before.gaps <= after.gaps


@given(entries(), SCHEDULES)
def test_volumes_to_chart_add_up_to_the_total(told: tuple[Entry, ...], schedule: Schedule) -> None:
    ledger = fold(told)
    whole = total(ledger).volume_ml
    assert sum(one.volume_ml for one in intervals(ledger, schedule)) == (whole or 0)


@given(entries(), SCHEDULES, st.data())
def test_sums_over_any_cut_at_lines_add_up_to_the_total(
    told: tuple[Entry, ...], schedule: Schedule, data: st.DataObject
) -> None:
    ledger = fold(told)
    charted = intervals(ledger, schedule)
    if not charted:
        return
    cuts = sorted(data.draw(st.sets(st.integers(0, len(charted)), max_size=6)) | {0, len(charted)})
    parts = [sum(one.volume_ml for one in charted[begin:end]) for begin, end in pairwise(cuts)]
    assert sum(parts) == total(ledger).volume_ml


@given(entries(), SCHEDULES)
def test_each_volume_is_charted_by_the_one_shift_whose_boundaries_enclose_it(
    told: tuple[Entry, ...], schedule: Schedule
) -> None:
    ledger = fold(told)
    known = {one.entry: one for one in reckoning.happenings(told)}
    levels = [known[level.entry] for level in ledger.levels]
    for one, level in zip(levels, ledger.levels, strict=True):
        one.closing = level.closing
    places = {one.entry: place for place, one in enumerate(levels)}
    for interval in intervals(ledger, schedule):
        place = places[interval.end.entry]
        starts = reckoning.shift_starts(schedule, interval.begin.at, interval.end.at)
        enclosing = [
            (begin, reckoning.cut(levels, schedule, begin)[1])
            for begin, end in pairwise(starts)
            if reckoning.cut(levels, schedule, begin)[0] < place <= reckoning.cut(levels, schedule, end)[0]
        ]
        assert [interval.shift.start] == [begin for begin, _ in enclosing]
        crosses = not enclosing[0][1] and interval.begin.at < enclosing[0][0]
        assert interval.includes_before == (enclosing[0][0] if crosses else None)


@given(entries(), SCHEDULES)
def test_a_shift_sum_is_the_sum_of_what_the_shift_charts(told: tuple[Entry, ...], schedule: Schedule) -> None:
    ledger = fold(told)
    if not ledger.levels:
        return
    charted = intervals(ledger, schedule)
    later = ledger.levels[-1].at + timedelta(days=3)
    for shift in shifts_of(ledger, schedule):
        found = shift_sum(ledger, schedule, shift, later)
        volumes = sum(one.volume_ml for one in charted_by(charted, shift))
        if "uncounted_before" not in found.flags:
            assert (found.volume_ml or 0) == volumes
        elif found.volume_ml is not None:
            assert found.volume_ml <= volumes


@given(entries(), SCHEDULES)
def test_neighbouring_windows_cut_at_the_same_moment_add_up(
    told: tuple[Entry, ...], schedule: Schedule
) -> None:
    ledger = fold(told)
    if len(ledger.levels) < 2:
        return
    begin, end = ledger.levels[0].at, ledger.levels[-1].at
    middle = begin + (end - begin) / 2
    whole, first, second = (
        window_sum(ledger, schedule, *window) for window in ((begin, end), (begin, middle), (middle, end))
    )
    if first.volume_ml is not None and second.volume_ml is not None and first.end == second.begin:
        assert first.volume_ml + second.volume_ml == whole.volume_ml


@given(entries(), SCHEDULES, st.data())
def test_amendments_turn_what_was_charted_into_what_now_holds(
    told: tuple[Entry, ...], schedule: Schedule, data: st.DataObject
) -> None:
    place = data.draw(st.integers(1, len(told)))
    before, after = fold(told[: place - 1]), fold(told[:place])
    charted, holds = volumes(told[: place - 1], schedule), volumes(told[:place], schedule)
    changes = amendments(before, after, schedule)
    replaced = {(one.begin, one.end, one.volume_ml) for change in changes for one in change.replaces}
    put = {(one.begin, one.end, one.volume_ml) for one in changes if not one.withdrawn}
    assert charted - holds <= replaced <= charted
    assert put <= holds
    fresh = holds - charted - put
    assert (charted - replaced) | put | fresh == holds


@given(entries(most=14), SCHEDULES)
def test_what_is_outstanding_turns_the_chart_as_given_out_into_what_holds(
    told: tuple[Entry, ...], schedule: Schedule
) -> None:
    chart: set[Volume] = set()
    holds: set[Volume] = set()
    for place in range(1, len(told) + 1):
        was, holds = holds, volumes(told[:place], schedule)
        gone = was - holds
        chart |= {one for one in holds - was if not any(overlap(one, other) for other in gone)}
    changes = outstanding(fold(told), schedule)
    replaced = {(one.begin, one.end, one.volume_ml) for change in changes for one in change.replaces}
    put = {(one.begin, one.end, one.volume_ml) for one in changes if not one.withdrawn}
    assert replaced <= chart
    assert {one for one in chart - holds if one[0] < one[1]} <= replaced
    assert all(_stands(one, holds) for one in put)


def _stands(one: Volume, holds: set[Volume]) -> bool:
    """Whether that volume holds, alone or told with what was read in the minute that it ends."""
    begin, end, volume = one
    moments = sum(each[2] for each in holds if each[0] == each[1] == end)
    return any((begin, end) == each[:2] and each[2] <= volume <= each[2] + moments for each in holds)


Volume = tuple[datetime, datetime, int]


def volumes(told: Sequence[Entry], schedule: Schedule) -> set[Volume]:
    return {(one.begin.at, one.end.at, one.volume_ml) for one in intervals(fold(told), schedule)}


def overlap(one: Volume, other: Volume) -> bool:
    return (one[0] < other[1] and other[0] < one[1]) or one[:2] == other[:2]


@given(entries())
def test_a_correction_withdrawn_at_once_changes_nothing(told: tuple[Entry, ...]) -> None:
    ledger = fold(told)
    target = told[0].id
    now = told[-1].entered
    fixed = ledger.with_entry(ledger.next_entry(Correction(target=target, level_ml=1), now, now))
    back = fixed.with_entry(fixed.next_entry(Withdrawal(target=fixed.entries[-1].id), now, now))
    assert back.levels == ledger.levels
    assert back.live == ledger.live


@given(entries())
@settings(max_examples=60)
def test_cautions_of_any_ledger_name_a_row_and_its_source(told: tuple[Entry, ...]) -> None:
    ledger = fold(told)
    now = max(entry.at for entry in told) + timedelta(minutes=1)
    known = {rule.id: rule for rule in ADULT.rules}
    for caution in all_cautions(Patient(bed="12", drains=(ledger,)), now, ADULT):
        assert caution.source == known[caution.rule].source
        assert caution.severity is known[caution.rule].severity


def test_an_empty_ledger_is_a_ledger() -> None:
    ledger = fold(())
    assert (ledger.levels, ledger.last, ledger.bed, total(ledger).volume_ml) == ((), None, None, None)
    assert intervals(ledger, SCHEDULE) == ()
