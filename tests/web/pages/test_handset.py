"""The conversation's own endpoint: the same intake as the webhook's, for whoever has the page open."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import text

from bot.intake import Deployment
from tests.web.client import problem
from tests.web.pages.visit import Visit, answer, token


@pytest.fixture
def amy(visit: Visit) -> Visit:
    """Amy, signed in."""
    visit.enters("amy")
    return visit


def stored(ward: Deployment) -> list[Any]:
    with ward.store.connection() as connection:
        return list(connection.execute(text("SELECT id, sender, channel FROM messages")))


def test_a_line_is_recorded_under_the_name_of_the_one_who_is_signed_in(amy: Visit, ward: Deployment) -> None:
    found = answer(amy.says("bed 12 mark 840", "0" * 31 + "1"))
    assert (found["status"], found["results"][0]["bed"]) == ("recorded", "12")
    assert stored(ward) == [("page-" + "0" * 31 + "1", "amy", "text")]


def test_the_same_message_sent_again_is_answered_the_same_and_recorded_once(
    amy: Visit, ward: Deployment
) -> None:
    first, again = (amy.says("bed 12 mark 840", "a" * 32) for _ in range(2))
    assert first.data == again.data
    assert len(stored(ward)) == 1


def test_an_id_used_for_another_text_or_by_another_person_is_409(amy: Visit, ward: Deployment) -> None:
    answer(amy.says("bed 12 mark 840", "a" * 32))
    assert problem(amy.says("bed 12 mark 900", "a" * 32))["status"] == 409
    ben = amy.another()
    ben.enters("ben")
    assert problem(ben.says("bed 12 mark 840", "a" * 32))["status"] == 409
    assert len(stored(ward)) == 1


def test_a_dictated_message_comes_with_what_else_was_heard(amy: Visit, ward: Deployment) -> None:
    found = answer(
        amy.says(
            "bed twelve mark eight forty",
            channel="voice",
            alternatives=[{"text": "bed twelve mark eight fourteen", "confidence": 0.4}],
        )
    )
    assert found["status"] == "question"
    assert [row.channel for row in stored(ward)] == ["voice"]


def test_a_question_is_answered_by_what_its_button_says(amy: Visit) -> None:
    answer(amy.says("bed 12 mark 840 at 1100"))
    [question] = answer(amy.says("bed 12 mark 100"))["questions"]
    says = {choice["say"] for choice in question["choices"]}
    assert {"misread", "new canister"} <= says
    settled = answer(amy.says(f"{question['bed']} misread"))
    assert settled["questions"] == [] or settled["questions"][0]["id"] != question["id"]


def test_a_reader_reads_only(visit: Visit) -> None:
    visit.enters("dan")
    assert answer(visit.says("bed 12 mark 840"))["status"] == "refused"
    assert answer(visit.says("beds"))["status"] == "told"


@pytest.mark.parametrize("said", ["", "x"])
def test_security_18_a_message_without_its_page_s_token_is_refused(
    amy: Visit, ward: Deployment, said: str
) -> None:
    headers = {"X-Page-Token": said, "X-Message-Id": "a" * 32}
    assert problem(amy.posts({"text": "bed 12 mark 840"}, headers))["status"] == 403
    assert stored(ward) == []


@pytest.mark.parametrize(
    ("body", "message_id", "status"),
    [
        ({"text": "help", "sender": "carla"}, "a" * 32, 422),
        ({"text": "help", "unit": "x"}, "a" * 32, 422),
        ({"text": ""}, "a" * 32, 422),
        ({"text": "help"}, "A" * 32, 400),
        ({"text": "help"}, "", 400),
        (["help"], "a" * 32, 400),
    ],
)
def test_what_is_no_message_is_refused_and_not_stored(
    amy: Visit, ward: Deployment, body: object, message_id: str, status: int
) -> None:
    headers = {"X-Page-Token": token(amy.opens("/handset")), "X-Message-Id": message_id}
    assert problem(amy.posts(body, headers))["status"] == status
    assert stored(ward) == []


def test_a_form_of_another_site_cannot_send_a_message(amy: Visit) -> None:
    response = amy.client.post(
        "/handset/messages",
        base_url="https://penline.example.org",
        data="{}",
        content_type="text/plain",
        headers={"X-Page-Token": token(amy.opens("/handset")), "X-Message-Id": "a" * 32},
    )
    assert problem(response)["status"] == 415
