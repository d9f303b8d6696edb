"""A ward phone that several people write from."""

from __future__ import annotations

from dataclasses import replace

from bot.store.people import PeopleEvent
from bot.unit import Person, Role, demo_unit
from tests.dialogue.ward import Ward


def ward_with_phone() -> Ward:
    """The demo ward with one phone that is shared."""
    unit = demo_unit()
    phone = Person(id="phone", name="Ward phone", role=Role.NURSE, shared=True)
    return Ward(replace(unit, people=(*unit.people, phone)))


def test_the_phone_asks_who_is_writing_and_takes_what_was_said_once_it_knows() -> None:
    ward = ward_with_phone()
    asked = ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:01")
    assert "Who is writing?" in asked.reply
    assert ward.ledgers("7") == []
    answer = ward.says("Ward phone", "Amy here", at="18:05")
    assert "Bed 7, 18:00, line 630 mL" in answer.reply
    assert {entry.who for entry in ward.entries()} == {"amy"}


def test_the_phone_remembers_until_the_shift_ends() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    assert ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:02").status == "recorded"
    assert "Who is writing?" in ward.says("Ward phone", "bed 7 mark 640 at 1900", at="19:01").reply


def test_another_name_takes_over() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    ward.says("Ward phone", "this is Ben", at="18:02")
    ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:03")
    assert {entry.who for entry in ward.entries()} == {"ben"}


def test_scratch_that_from_the_phone_undoes_only_ones_own_message() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:02")
    assert ward.says("Ward phone", "scratch that", at="18:03").entries != []
    ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:04")
    ward.says("Ward phone", "Ben", at="18:05")
    ward.says("Ward phone", "scratch that", at="18:06")
    assert ward.levels("7") == [630]


def test_a_danger_does_not_wait_for_the_name() -> None:
    ward = ward_with_phone()
    ward.says("Amy", "bed 7 mark 100 at 1700", at="17:01")
    asked = ward.says("Ward phone", "bed 7 mark 760 at 1800", at="18:01")
    assert "URGENT if right" in asked.reply
    assert ("amount_at_once", True) in ward.notices()


def test_someone_removed_in_mid_shift_writes_no_more_from_the_phone() -> None:
    ward = ward_with_phone()
    ward.says("Ward phone", "Amy", at="18:01")
    change(ward, "amy", "removed", at="18:02")
    assert "Who is writing?" in ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:03").reply
    assert ward.says("Ward phone", "Amy", at="18:04").status == "question"
    assert ward.entries() == []


def test_agency_staff_write_from_the_phone_until_their_time_is_over() -> None:
    ward = ward_with_phone()
    change(ward, "zoe", "enrolled", at="18:00", until="18:10")
    ward.says("Ward phone", "Zoe", at="18:01")
    assert ward.says("Ward phone", "bed 7 mark 630 at 1800", at="18:09").status == "recorded"
    assert "Who is writing?" in ward.says("Ward phone", "bed 7 mark 640 at 1810", at="18:10").reply
    assert {entry.who for entry in ward.entries()} == {"zoe"}


def test_a_phone_that_was_enrolled_by_command_asks_too_and_a_removed_one_is_a_stranger() -> None:
    ward = Ward()
    change(ward, "phone-4", "enrolled", at="18:00", shared=True)
    assert "Who is writing?" in ward.says("phone-4", "bed 7 mark 630 at 1800", at="18:01").reply
    assert ward.says("phone-4", "Amy", at="18:02").status == "recorded"
    change(ward, "phone-4", "removed", at="18:03", shared=True)
    assert ward.says("phone-4", "bed 7?", at="18:04").status == "refused"


def test_a_phone_of_two_wards_is_asked_in_each_who_is_writing() -> None:
    unit = ward_with_phone().unit
    north, south = (replace(unit, id=name.lower(), name=name) for name in ("North", "South"))
    ward = Ward(north, south)
    ward.says("Ward phone", "North bed 7 mark 630 at 1800", at="18:01")
    ward.says("Ward phone", "North Amy", at="18:02")
    assert [len(ward.ledgers("7", each)) for each in (north, south)] == [1, 0]
    assert "Who is writing?" in ward.says("Ward phone", "South bed 7 mark 100 at 1800", at="18:03").reply
    ward.says("Ward phone", "South Ben", at="18:04")
    assert [len(ward.ledgers("7", each)) for each in (north, south)] == [1, 1]


def change(
    ward: Ward, person: str, event: str, *, at: str, until: str | None = None, shared: bool = False
) -> None:
    """Change the ward's list, as the command does."""
    with ward.store.turn() as book:
        book.note_person(
            PeopleEvent(
                unit=ward.unit.id,
                person=person,
                event="enrolled" if event == "enrolled" else "removed",
                name=person.title(),
                role="nurse",
                until=ward.utc(until) if until else None,
                at=ward.utc(at),
                by="root",
                shared=shared,
            )
        )
