"""Remarks whose words would tell a reason, put right, ask, answer or name a tube: none of it is so."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from .saying import reading

LINE = "mark bed=12 at=18:06 level_ml=455"
NIGHT = datetime(2026, 3, 4, 5, 25, tzinfo=ZoneInfo("America/New_York"))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("unclamped 22 at 1806, pt was air hungry and panicky", "incident bed=22 at=18:06 what=unclamped"),
        ("clamped 12 at 1806 as it was irritating his heart", "incident bed=12 at=18:06 what=clamped"),
        ("took 12 off suction at 1806, valve sticking", "incident bed=12 at=18:06 what=suction_off"),
        ("clamped 12 at 1806, trauma in resus", "incident bed=12 at=18:06 what=clamped"),
        ("12 455 at 1806, cardiac surgery to review", LINE),
        ("12 455 at 1806, ate all his cabbage", LINE),
        ("12 455 at 1806, lung still down", LINE),
        ("tube placed 12 at 1806 close to the heart", "placed bed=12 at=18:06"),
        ("tube placed 12 at 1806, lung came right up", "placed bed=12 at=18:06"),
        ("12 is air hungry", "ask kind"),
        ("12 has a heart of gold", "ask kind"),
        ("12 is stabbed with needles every day", "ask kind"),
        ("12 left the ward at 1803 to rehab with the drain and a valve", "ask kind"),
    ],
)
def test_a_word_of_a_body_in_a_remark_is_no_reason_for_a_drain(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 455 at 1806, post op heart", f"{LINE}; described bed=12 reason=cardiac"),
        ("12 455 at 1806 s/p CABG", f"{LINE}; described bed=12 reason=cardiac"),
        ("12 455 at 1806, hemothorax", f"{LINE}; described bed=12 reason=trauma"),
        ("bed 12 is a heart", "described bed=12 reason=cardiac"),
        ("12 is here for a valve", "described bed=12 reason=cardiac"),
        ("12 had an injury to the chest", "described bed=12 reason=trauma"),
        ("bed 12 came in as trauma", "described bed=12 reason=trauma"),
        ("12's drain is for air", "described bed=12 reason=air"),
        ("new chest tube bed 12 right at 1410 lung", "placed bed=12 tube=right at=14:10 reason=lung"),
    ],
)
def test_words_that_say_why_a_drain_is_in_tell_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "12 455 at 1806 - absolutely sure",
        "12 455 at 1806 and confirmed",
        "12 455 at 1806, right bed, right tube, checked the band",
        "12 455 at 1806, defo right that one",
        "12 455 at 1806. no mistake",
        "12 455 at 1806, rechecked, same",
        "12 455 at 1806 without a doubt",
        "12 455 at 1806, spot on",
        "12 455 at 1806 - not a typo",
        "I have confirmed it myself; 12 455 at 1806",
        "12 455 at 1806, level confirmed by two RNs, no concerns with it",
        "12 455 at 1806 is correct, I check two time",
        "12 455 at 1806, getting close to full, gonna need a new box tonight",
        "12 455 at 1806, is it true we're getting a new manager?",
    ],
)
def test_a_remark_that_a_line_is_right_leaves_it_a_line(text: str) -> None:
    assert reading(text) == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 455 at 1806, not sure", "ask kind"),
        ("12 455 at 1806, to be confirmed", "ask kind"),
        ("12 455 at 1806, is that right", "ask kind"),
        ("12 455 at 1806, pretty sure", "ask kind"),
        ("12 455 at 1806, same", "ask kind"),
        ("12 455 at 1806, correct it", "corrected bed=12 at=18:06 level_ml=455"),
        ("12 455 at 1806, right tube", "mark bed=12 tube=right at=18:06 level_ml=455"),
        ("12 1815 one was really 1040", "corrected bed=12 at=18:15 level_ml=1040"),
        ("yes 12 455 at 1806", "answered bed=12 at=18:06 answer=yes level_ml=455"),
        ("12 yes 455", "answered bed=12 answer=yes level_ml=455"),
        ("12 455 at 1806, if I've got that right", "ask kind"),
        ("12 455 at 1806, his left or mine", "ask kind"),
        ("12 455 at 1806, possible typo", "ask kind"),
        ("12 455 at 1806, error", "ask kind"),
        ("12 455 at 1806, it's what was scribbled on the handover sheet", "ask kind"),
        ("it's what was scribbled on the handover sheet", "ask kind"),
        ("12 455 at 1806, might be his catheter", "ask kind"),
        ("12 disconnected at 1806, hooked right back up", "incident bed=12 at=18:06 what=disconnected"),
        ("12 disconnected at 1806. She yanked it", "incident bed=12 at=18:06 what=disconnected"),
    ],
)
def test_what_is_no_such_remark_stays_what_it_is(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_line_with_a_wrong_number_of_something_else_is_not_put_right() -> None:
    for text in (
        "12 455 at 1806, lunch was wrong again",
        "12 455 at 1806, wrong number for the son in the file",
    ):
        assert "corrected" not in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "took 13 off suction by accident when housekeeping unplugged things at 0506",
            "incident bed=13 at=05:06 what=suction_off",
        ),
        ("took 18 off suction, doc wants to see how he goes without at 0520", "ask at"),
        ("doc wants to see how much 18 drained", "asked bed=18 topic=total"),
        ("18 last mark when was it", "asked bed=18 topic=last"),
        ("i need the handover sheet for 12", "asked bed=12 topic=handoff"),
        ("bed 18 getting close to full", "asked bed=18 topic=capacity"),
    ],
)
def test_an_event_that_is_told_asks_nothing(text: str, read: str) -> None:
    assert reading(text, arrived=NIGHT) == read


@pytest.mark.parametrize(
    "text",
    [
        "lost my stethoscope somewhere. 12 455 at 1806",
        "12 455 at 1806 pharmacy unsure about his warfarin",
        "12 455 at 1806 - family unsure about the consent",
        "12 455 at 1806; wife might visit later",
        "bed 12 line at 455 @ 1806 - I mixed up his tea order",
        "room 12 up to 455 at 1806; did you see my stethoscope anywhere?",
        "12 455 at 1806 I think his daughter is visiting this arvo",
        "12 455 at 1806 lost his glasses somewhere",
        "reg allegedly on the way. 12 455 at 1806",
        "at 1806 bed 12 was 455 acting weird with visitors",
    ],
)
def test_a_doubt_of_something_else_leaves_the_line(text: str) -> None:
    assert reading(text) == LINE


@pytest.mark.parametrize(
    "text",
    [
        "12 455 at 1806, couldn't see, he was in the shower",
        "12 455 at 1806, a guess before theatre",
        "12 455 at 1806, not confirmed by the rehab team",
        "12 455 at 1806, mixed him up with the one in theatre",
        "12 455 at 1806, i think that was his urine",
        "12 455 at 1806, don't know who he is",
        "12 455 at 1806, wrong patient in theatre",
        "12 455 at 1806, half asleep after the meeting",
        "12 455 at 1806, error by theatre",
        "12 455 at 1806, no idea who is in there",
        "12 455 at 1806, might have been lunch",
        "12 455 at 1806, maybe his stoma",
        "12 455 at 1806, took a stab at it",
        "12 455 at 1806, plucked out of the air",
        "12 455 at 1806, not spot on",
        "12 455 at 1806, i think pharmacy",
        "12 455 at 1806, theatre not sure",
    ],
)
def test_a_doubt_that_may_be_of_the_line_stays_asked(text: str) -> None:
    assert reading(text).startswith("ask ")
