"""Who may do what: every kind of sender and of message, over the wire, with two units of one deployment."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import timedelta

import pytest

from bot.intake.respond import deployment
from bot.settings import Settings
from bot.store import Store, open_store
from bot.unit import Person, Role, Unit, demo_unit
from bot.web import web_app
from tests.web.client import NOW, SECRET, Gateway, body

NORTH = replace(
    demo_unit(),
    id="north",
    name="North Ward",
    beds=("1", "2", "12"),
    people=(
        Person(id="reader", name="Rita", role=Role.READER),
        Person(id="nurse", name="Nora", role=Role.NURSE),
        Person(id="charge", name="Chad", role=Role.CHARGE),
        Person(id="gone", name="Gus", role=Role.NURSE, until=NOW - timedelta(hours=1)),
        Person(id="first", name="Fay", role=Role.NURSE),
    ),
)
SOUTH = replace(
    demo_unit(),
    id="south",
    name="South Ward",
    beds=("31", "32"),
    people=(Person(id="other", name="Otto", role=Role.CHARGE),),
)
WRITES = {
    "a line": "bed 12 mark 860 at 1155",
    "a check": "bed 12 no air leak",
    "a correction": "correct bed 12 1130 to 845",
    "taking back": "delete the 1130 mark bed 12",
    "a removal": "tube out bed 12 at 1150, final 850",
    "a placement": "new chest tube bed 2 at 1150, canister empty",
}
READS = {"the last line": "bed 12 last", "the beds": "beds", "a handoff": "handoff", "what is due": "due"}
SECRETS_OF_NORTH = ("840", "North", "Fay", "Nora", "Harbour")


class Wards:
    """Two units behind one gateway; in the first Fay has recorded a line."""

    def __init__(self) -> None:
        self.store: Store = open_store()
        units: tuple[Unit, ...] = (NORTH, SOUTH)
        settings = Settings(secrets=(SECRET,))
        self._gateway = Gateway(web_app(deployment(units, self.store), settings, lambda: NOW))
        self._sent = 0
        assert self.says("first", "bed 12 mark 840 at 1130")["status"] == "recorded"

    def says(self, sender: str, text: str) -> dict[str, object]:
        """The answer object to what this sender says."""
        self._sent += 1
        response = self._gateway.posts(body(text, sender), f"m{self._sent}")
        assert response.status_code == 200
        found: dict[str, object] = json.loads(response.data)
        return found

    def entries(self, unit: str) -> int:
        """How many entries the unit has."""
        with self.store.turn(unit) as book:
            return sum(len(book.entries(drain)) for drain in book.every_drain())


@pytest.fixture
def wards() -> Wards:
    """The two units."""
    return Wards()


@pytest.mark.parametrize("what", WRITES)
@pytest.mark.parametrize("sender", ["nurse", "charge"])
def test_security_11_a_nurse_writes_in_their_unit(wards: Wards, sender: str, what: str) -> None:
    before = wards.entries("north")
    answer = wards.says(sender, WRITES[what])
    assert answer["status"] == "recorded", answer["reply"]
    assert wards.entries("north") > before


@pytest.mark.parametrize("what", WRITES)
@pytest.mark.parametrize("sender", ["reader", "gone", "other", "nobody"])
def test_security_11_nobody_else_writes_there(wards: Wards, sender: str, what: str) -> None:
    before = wards.entries("north")
    answer = wards.says(sender, WRITES[what])
    assert answer["status"] != "recorded"
    assert (wards.entries("north"), wards.entries("south")) == (before, 0)
    assert answer["chart"] == []


@pytest.mark.parametrize("what", READS)
@pytest.mark.parametrize("sender", ["reader", "nurse", "charge"])
def test_security_11_whoever_is_on_the_list_reads(wards: Wards, sender: str, what: str) -> None:
    answer = wards.says(sender, READS[what])
    assert answer["status"] == "told"
    assert "12" in str(answer["reply"])


@pytest.mark.parametrize("what", [*READS, *WRITES])
@pytest.mark.parametrize("sender", ["gone", "other", "nobody"])
def test_security_11_nobody_else_learns_anything(wards: Wards, sender: str, what: str) -> None:
    answer = wards.says(sender, {**READS, **WRITES}[what])
    told = json.dumps({key: value for key, value in answer.items() if key != "id"})
    assert not any(word in told for word in SECRETS_OF_NORTH), told


@pytest.mark.parametrize("bed", ["12", "1", "99"])
def test_security_11_a_stranger_cannot_tell_a_bed_that_is_there_from_one_that_is_not(
    wards: Wards, bed: str
) -> None:
    told = {wards.says("nobody", f"bed {each} last")["reply"] for each in (bed, "55")}
    assert len(told) == 1


def test_security_11_another_unit_s_question_is_answered_by_nobody_else(wards: Wards) -> None:
    asked = wards.says("nurse", "bed 12 mark 100 at 1155")
    assert asked["status"] == "question"
    before = wards.entries("north")
    for sender in ("other", "gone", "nobody", "reader"):
        for said in ("yes", "12 yes", "it is right", "new canister"):
            assert wards.says(sender, said)["status"] != "recorded"
    assert wards.entries("north") == before
