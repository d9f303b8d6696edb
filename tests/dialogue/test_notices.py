"""What reaches others, who stops it by saying "seen", and what there is nothing left to tell about."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from sqlalchemy import event
from sqlalchemy.exc import OperationalError

from bot.cli.remind import go_round
from bot.store import StoreAwayError
from bot.store.notices import Filed
from bot.unit import Notify, demo_unit
from tests.dialogue.ward import Ward


@pytest.fixture
def ward() -> Ward:
    """A ward that tells its charge nurse, with a cardiac drain in bed 7."""
    ward = Ward(notify=Notify(people=("carla", "ben")))
    ward.says("Amy", "new chest tube bed 7 at 1000, post op heart", at="10:01")
    ward.says("Amy", "bed 7 mark 40 at 1100", at="11:01")
    return ward


def outbox(ward: Ward) -> tuple[Filed, ...]:
    """All that was ever queued."""
    with ward.store.turn(ward.unit.id) as book:
        return book.filed(ward.now - timedelta(days=1))


def waits(ward: Ward) -> list[str]:
    """The codes of what somebody must still hear of."""
    return [each.notice.code for each in outbox(ward) if each.seen_at is None and not each.over]


def remind(ward: Ward, at: str) -> list[str]:
    """What a look at the ward queues then."""
    ward.now = ward.utc(at)
    found = ward.store.transact(lambda book: go_round(ward.unit, ward.now, book), ward.unit.id)
    return [each.text for each in found.queued]


def bleeds(ward: Ward) -> None:
    """620 mL in the hour, asked about and confirmed."""
    assert ward.says("Amy", "bed 7 mark 660 at 1200", at="12:01").status == "question"
    ward.says("Amy", "yes", at="12:02")


def test_a_danger_waits_while_it_is_asked_about(ward: Ward) -> None:
    ward.says("Amy", "bed 7 mark 660 at 1200", at="12:01")
    assert "amount_at_once" in waits(ward)
    assert all(each.notice.unconfirmed for each in outbox(ward))


def test_a_notice_and_its_entry_are_recorded_together_or_not_at_all(ward: Ward) -> None:
    def fail(_: object) -> None:
        raise OperationalError("COMMIT", None, Exception("disk I/O error"))

    event.listen(ward.store.engine, "commit", fail)
    with pytest.raises(StoreAwayError):
        ward.says("Amy", "bed 7 disconnected", at="12:01")
    event.remove(ward.store.engine, "commit", fail)
    assert outbox(ward) == ()
    assert ward.says("Amy", "bed 7 disconnected", at="12:02").status == "recorded"
    assert waits(ward) == ["disconnected"]


def test_a_misreading_stops_what_was_to_be_told_of_it(ward: Ward) -> None:
    ward.says("Amy", "bed 7 mark 660 at 1200", at="12:01")
    ward.says("Amy", "misread, 60", at="12:02")
    assert ward.levels("7")[-1] == 60
    assert waits(ward) == []


def test_what_was_confirmed_takes_the_place_of_what_was_asked(ward: Ward) -> None:
    bleeds(ward)
    left = [each for each in outbox(ward) if not each.over]
    assert "amount_at_once" in waits(ward)
    assert left
    assert not any(each.notice.unconfirmed for each in left)


@pytest.mark.parametrize(("said", "seen"), [("seen 7", True), ("seen 8", False), ("amended 7", False)])
def test_seen_stops_the_notices_of_that_bed(ward: Ward, said: str, seen: bool) -> None:
    bleeds(ward)
    ward.says("Carla", said, at="12:10")
    assert (waits(ward) == []) is seen


def test_seen_is_kept_with_its_moment(ward: Ward) -> None:
    bleeds(ward)
    ward.says("Carla", "seen 7", at="12:10")
    assert {each.seen_at for each in outbox(ward) if not each.over} == {ward.utc("12:10")}


def test_seen_after_a_move_stops_what_was_told_of_the_bed_before(ward: Ward) -> None:
    bleeds(ward)
    ward.says("Amy", "bed 7 moved to 9", at="12:05")
    ward.says("Carla", "seen 9", at="12:10")
    assert waits(ward) == []


def test_a_reader_does_not_stop_a_notice(ward: Ward) -> None:
    bleeds(ward)
    assert ward.says("Dan", "seen 7", at="12:10").status == "refused"
    assert waits(ward) != []


def test_a_standing_danger_is_told_again_when_it_is_much_worse(ward: Ward) -> None:
    bleeds(ward)
    ward.says("Carla", "seen 7", at="12:10")
    ward.says("Amy", "bed 7 mark 670 at 1215", at="12:16")
    assert waits(ward) == []
    ward.says("Amy", "bed 7 mark 1500 at 1230", at="12:31")
    ward.says("Amy", "yes", at="12:32")
    assert "amount_at_once" in waits(ward)


def test_an_overdue_line_is_queued_and_not_again_within_the_hour(ward: Ward) -> None:
    assert remind(ward, "12:10") == []
    (first,) = remind(ward, "12:20")
    assert first == "CAUTION: line overdue, due at 12:00, the last at 11:00."
    assert remind(ward, "13:19") == []
    assert remind(ward, "13:20") == [first]


def test_a_line_that_comes_late_ends_its_reminder(ward: Ward) -> None:
    remind(ward, "12:20")
    assert waits(ward) == ["overdue"]
    ward.says("Amy", "bed 7 mark 60 at 1230", at="12:31")
    assert waits(ward) == []


def test_nothing_is_overdue_while_the_patient_is_away(ward: Ward) -> None:
    ward.says("Amy", "bed 7 off to CT", at="11:30")
    assert remind(ward, "14:00") == []


def test_a_reading_that_nobody_confirmed_is_queued_until_it_is_settled(ward: Ward) -> None:
    ward.says("Amy", "bed 7 mark 30 at 1130", at="11:31")
    assert remind(ward, "11:40") == []
    (told,) = remind(ward, "11:47")
    assert told == "CAUTION: unconfirmed: bed 7 30 mL at 11:30 (asked 11:31, Amy), not counted."
    assert waits(ward) == ["unconfirmed"]
    ward.says("Amy", "7 no", at="11:48")
    assert waits(ward) == []


def test_another_unit_s_beds_are_not_looked_at(ward: Ward) -> None:
    other = replace(demo_unit(), id="south", name="South")
    found = ward.store.transact(lambda book: go_round(other, ward.utc("14:00"), book), "south")
    assert (found.due, found.queued) == (("Nothing is due.",), ())
