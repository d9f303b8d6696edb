"""One message, one transaction: answered once, by its own unit, and kept only as far as it may be."""

from __future__ import annotations

import json
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import event, text
from sqlalchemy.exc import OperationalError

from bot.dialogue.answer import Answer
from bot.dialogue.context import Context
from bot.intake import Deployment, Incoming, Outcome, handle
from bot.intake.incoming import NOT_KEPT
from bot.store import Book, Store, StoreAwayError, open_store
from bot.store.people import PeopleEvent
from bot.unit import Person, Role, Unit, demo_unit
from tests.intake.double import NOON, asks, deployment

ZEBRA = "zebra"


def message(said: str = "12 840", *, sender: str = "amy", id_: str = "m1", minutes: int = 0) -> Incoming:
    """A message to the demo ward."""
    return Incoming(id=id_, sender=sender, text=said, arrived=NOON + timedelta(minutes=minutes))


def answer(outcome: Outcome) -> dict[str, Any]:
    """The answer object."""
    found: dict[str, Any] = json.loads(outcome.answer)
    return found


def count(store: Store, table: str) -> int:
    """How many rows a table has."""
    with store.connection() as connection:
        found: int = connection.execute(text(f"SELECT count(*) FROM {table}")).scalar_one()
    return found


def kept_text(store: Store, id_: str = "m1") -> str | None:
    """What is kept of a message's words."""
    with store.connection() as connection:
        query = text("SELECT text FROM messages WHERE id = :id")
        found: str | None = connection.execute(query, {"id": id_}).scalar_one()
    return found


def test_a_message_is_recorded_with_its_reply() -> None:
    ward = deployment()
    outcome = handle(message(), ward)
    assert (outcome.status, outcome.unit, outcome.kept) == ("recorded", "harbour-ward", "new")
    assert kept_text(ward.store) == "12 840"
    assert count(ward.store, "entries") == count(ward.store, "replies") == 1


def test_the_same_message_again_gets_the_same_reply_and_no_second_entry() -> None:
    ward = deployment()
    first = handle(message(), ward)
    again = handle(message(minutes=500), ward)
    assert again == replace(first, kept="before")
    assert count(ward.store, "entries") == 1


def test_another_message_under_a_known_id_is_not_taken() -> None:
    ward = deployment()
    handle(message(), ward)
    assert handle(message("12 900"), ward).kept == "other"
    assert handle(message(sender="ben"), ward).kept == "other"
    assert count(ward.store, "entries") == 1


def test_security_13_one_id_from_16_threads_is_one_row() -> None:
    ward = deployment()
    with ThreadPoolExecutor(16) as pool:
        outcomes = list(pool.map(lambda _: handle(message(), ward), range(16)))
    assert sorted(outcome.kept for outcome in outcomes) == ["before"] * 15 + ["new"]
    assert len({outcome.answer for outcome in outcomes}) == 1
    assert count(ward.store, "messages") == count(ward.store, "entries") == 1


def test_security_15_no_reply_when_the_commit_failed() -> None:
    ward = deployment()

    def fail(_: object) -> None:
        raise OperationalError("COMMIT", None, Exception("disk I/O error"))

    event.listen(ward.store.engine, "commit", fail)
    with pytest.raises(StoreAwayError):
        handle(message(), ward)
    event.remove(ward.store.engine, "commit", fail)
    assert count(ward.store, "messages") == count(ward.store, "entries") == 0
    assert handle(message(), ward).kept == "new"


def test_a_turn_that_breaks_leaves_no_claim_behind() -> None:
    def breaks(incoming: Incoming, context: Context, book: Book) -> Answer:
        book.open_drain("12", None)
        raise ZeroDivisionError(incoming.id, context.now)

    ward = deployment(respond=breaks)
    with pytest.raises(ZeroDivisionError):
        handle(message(), ward)
    assert count(ward.store, "messages") == count(ward.store, "drains") == 0


def test_a_stranger_is_told_so_and_learns_nothing_of_the_unit() -> None:
    ward = deployment()
    outcome = handle(message("12 840", sender="zoe"), ward)
    told = answer(outcome)
    assert (told["status"], told["results"], told["chart"]) == ("refused", [], [])
    assert not any(word in told["reply"] for word in ("Harbour", "12", "Amy"))
    assert kept_text(ward.store) is None
    assert count(ward.store, "entries") == 0


@pytest.mark.parametrize(
    "said", ["12 840 mrn 123456", "12 1050 for a.b@example.org", "call 5551234567", "mrn ١٢٣٤٥٦"]
)
def test_what_may_name_a_patient_is_neither_read_nor_kept(tmp_path: Path, said: str) -> None:
    ward = deployment(store=open_store(f"sqlite:///{tmp_path}/ward.sqlite"))
    told = answer(handle(message(said), ward))
    assert told["status"] == "refused"
    assert "again" in told["reply"]
    assert kept_text(ward.store) == NOT_KEPT
    assert count(ward.store, "entries") == 0
    ward.store.close()
    assert not any(said.encode() in file.read_bytes() for file in tmp_path.iterdir())


def test_a_long_number_in_another_hypothesis_counts_too() -> None:
    ward = deployment()
    heard = replace(message(), channel="voice", alternatives=(("12 840001", 0.4),))
    assert handle(heard, ward).status == "refused"


def test_five_digits_are_kept() -> None:
    assert handle(message("12345"), deployment()).status == "told"


def with_people(name: str, *people: Person) -> Unit:
    """A copy of the demo ward under another name, with these people."""
    return replace(demo_unit(), id=name.lower(), name=name, people=people)


AMY = Person(id="amy", name="Amy", role=Role.NURSE)
BEN = Person(id="ben", name="Ben", role=Role.NURSE)


@pytest.fixture
def two() -> Deployment:
    """Two units: Amy is on both lists, Ben on one; bed 30 is only in the second."""
    south = with_people("South", AMY)
    return deployment((with_people("North", AMY, BEN), replace(south, beds=(*south.beds, "30"))))


def test_a_bed_of_one_unit_alone_says_which_unit(two: Deployment) -> None:
    assert handle(message("30 840"), two).unit == "south"


def test_a_bed_of_both_units_is_asked_and_recorded_nowhere(two: Deployment) -> None:
    told = answer(handle(message("12 840"), two))
    assert told["status"] == "refused"
    assert "North and South" in told["reply"]
    assert count(two.store, "entries") == 0


@pytest.mark.parametrize("said", ["South 12 840", "south: 12 840", "SOUTH, 12 840"])
def test_the_unit_s_name_before_the_message_says_which_unit(two: Deployment, said: str) -> None:
    outcome = handle(message(said), two)
    assert (outcome.unit, outcome.status) == ("south", "recorded")
    assert kept_text(two.store) == said


def test_a_message_that_only_names_the_unit_is_asked(two: Deployment) -> None:
    assert handle(message("South"), two).status == "refused"


def test_an_answer_goes_to_the_unit_that_asked(two: Deployment) -> None:
    asking = deployment(two.units, two.store, asks)
    assert handle(message("South hello"), asking).unit == "south"
    assert handle(message("yes", id_="m2", minutes=15), two).unit == "south"
    assert handle(message("yes", id_="m3", minutes=16), two).status == "refused"


def test_a_bed_of_both_units_is_asked_even_while_one_asks(two: Deployment) -> None:
    asking = deployment(two.units, two.store, asks)
    handle(message("South hello"), asking)
    assert handle(message("12 840", id_="m2"), two).status == "refused"


def test_a_unit_s_ledger_is_its_own(two: Deployment) -> None:
    handle(message("South 12 840"), two)
    told = answer(handle(message("12 900", sender="ben", id_="m2", minutes=5), two))
    assert told["reply"] == "Chart 0 mL."


def enrol(ward: Deployment, person: str, event_: str = "enrolled", *, until: int | None = None) -> None:
    """Change the demo ward's list, as the command does."""
    with ward.store.turn() as book:
        book.note_person(
            PeopleEvent(
                unit="harbour-ward",
                person=person,
                event="enrolled" if event_ == "enrolled" else "removed",
                name=person.title(),
                role="nurse",
                until=None if until is None else NOON + timedelta(minutes=until),
                at=NOON,
                by="root",
            )
        )


def test_someone_enrolled_by_command_may_write_at_once() -> None:
    ward = deployment()
    assert handle(message(sender=ZEBRA), ward).status == "refused"
    enrol(ward, ZEBRA)
    assert handle(message(sender=ZEBRA, id_="m2"), ward).status == "recorded"


def test_agency_staff_may_write_until_their_time_is_over() -> None:
    ward = deployment()
    enrol(ward, ZEBRA, until=10)
    assert handle(message(sender=ZEBRA, minutes=9), ward).status == "recorded"
    assert handle(message("12 850", sender=ZEBRA, id_="m2", minutes=10), ward).status == "refused"


def test_someone_removed_may_write_no_more_and_may_come_back() -> None:
    ward = deployment()
    enrol(ward, "amy", "removed")
    assert handle(message(), ward).status == "refused"
    enrol(ward, "amy")
    assert handle(message(id_="m2"), ward).status == "recorded"


def test_a_resend_after_a_removal_still_gets_its_reply() -> None:
    ward = deployment()
    first = handle(message(), ward)
    enrol(ward, "amy", "removed")
    again = handle(message(), ward)
    assert (again.kept, again.answer) == ("before", first.answer)
