"""Doubt, denial and cancellation told beside a line or an event, and the same words of something else."""

from __future__ import annotations

import pytest

from .saying import Channel, reading

PLAIN = (
    "bed 7 450 at 1840",
    "bed 7 tube out at 1840, final 450",
    "changed bed 7 canister at 1840, old one 1850",
    "new chest tube bed 7 right at 1840",
    "bed 7 clamped at 1840",
    "bed 7 off to CT",
    "bed 7 seal 2 suction 20 no leak swinging",
    "bed 7 450, bed 9 220 at 1840",
)
SPOKEN = (
    "bed seven four hundred fifty at eighteen forty",
    "bed seven chest tube out at eighteen forty final level four hundred fifty",
    "bed seven clamped at eighteen forty",
    "bed seven seal two suction twenty no leak swinging",
)


def _is_asked(said: str) -> bool:
    return "ask " in said or said.startswith("withdrawn")


@pytest.mark.parametrize(
    "doubt",
    [
        ", I guessed", " but I guessed", ". Just a guess", ", not sure though", " (not sure)", ", maybe",
        " but I can't be certain", ", I think", ". I think so", ", I believe", ", probably", " - I reckon",
        ", can't be sure of it", ", don't quote me", " but don't hold me to it", ", from memory",
        ", unless I misread", ". Needs verifying", ", to be confirmed", " - unconfirmed", ", pls verify",
        ", so I was told", ", I didn't see it myself", ", team decided against it", ", doctor said no",
        " but the surgeon said no", ", they cancelled", " (cancelled)", ". It was called off",
        ", didn't happen in the end", " but it never happened", ", scratch that", ". Ignore that",
        ", wrong chart", ", just testing", ", no way", ", false alarm", ", so they didn't",
        ", attempt failed",
        ", they tried but couldn't", ", if the team agrees", ", awaiting confirmation",
        ", pt wouldn't have it",
        ", not yet though", ", he says", ", wife told me", ", smudged", ", read from the doorway",
        ", doesn't match the last one", ", don't chart it", ", that was urine", ", in theory", ", fogged up",
        ", afaik", ", only half sure", ", kind of", ", if correct", ", student read it", ", check with days",
        ", time unknown", ", no consent", ", plan changed", ", half done", ", never got done", ", void",
        ", hang on", ". lol jk", ", actually no", ", that can't be right", ", looks wrong to me",
    ],
)  # fmt: skip
@pytest.mark.parametrize("plain", PLAIN)
def test_what_is_doubted_denied_or_cancelled_is_asked(plain: str, doubt: str) -> None:
    assert _is_asked(reading(plain + doubt))


@pytest.mark.parametrize(
    "doubt",
    ["i guessed", "not sure though", "i think", "they cancelled", "team decided against it", "doctor said no",
     "couldn't see it well", "that can't be right", "don't quote me", "but it didn't happen"],
)  # fmt: skip
@pytest.mark.parametrize("plain", SPOKEN)
def test_a_doubt_said_aloud_is_asked_too(plain: str, doubt: str) -> None:
    assert _is_asked(reading(f"{plain} {doubt}", channel="voice"))


@pytest.mark.parametrize("plain", PLAIN)
@pytest.mark.parametrize(
    "doubt", ["I think", "Not sure but", "Could be wrong but", "Hard to read,", "pretty sure", "maybe"]
)
def test_a_doubt_before_what_is_told_reaches_it(plain: str, doubt: str) -> None:
    assert _is_asked(reading(f"{doubt} {plain}"))


@pytest.mark.parametrize(
    ("text", "slot"),
    [
        ("bed 7 450 at 1840, couldn't see it well", "level_ml"),
        ("bed 7 450 at 1840, hard to read with the foam", "level_ml"),
        ("bed 7 450 at 1840, may be off because the box was tilted", "level_ml"),
        ("bed 7 450 at 1840. That seems high", "level_ml"),
        ("bed 7 450 at 1840, not sure of the number", "level_ml"),
        ("bed 7 tube out at 1840, final 450, roughly", "level_ml"),
        ("changed bed 7 canister at 1840, old one 1850, couldn't read it", "final_ml"),
        ("bed 7 450 at 1840, not sure of the time", "at"),
        ("bed 7 left clamped at 1840, might be the other side", "tube"),
    ],
)
def test_the_slot_that_is_doubted_is_asked(text: str, slot: str) -> None:
    assert reading(text) == f"ask {slot}"


def test_what_may_be_another_number_is_asked_with_it() -> None:
    assert "removed" not in reading("bed 7 tube out at 1840, final 450, or was it 540")


def test_a_doubt_reaches_its_own_sentence_and_no_other() -> None:
    said = reading("bed 3 200 at 1840. bed 7 450 at 1840, not sure")
    assert said == "mark bed=3 at=18:40 level_ml=200; ask kind"


@pytest.mark.parametrize(
    "tail",
    [
        ", roughly",
        ", approx",
        " (approx)",
        ", give or take",
        ", more or less",
        ", eyeballed",
        ", a touch under",
        ", circa",
        ", ish",
        ", rounded up",
    ],
)
def test_a_rough_level_is_told_as_one(tail: str) -> None:
    assert reading(f"bed 7 450 at 1840{tail}") == "mark bed=7 at=18:40 level_ml=450 about"


@pytest.mark.parametrize(
    "remark",
    [
        ", not sure if he wants lunch", ". Not sure if he wants lunch", ", not sure why he's so sleepy",
        ", doctor said no to food", ", they cancelled his scan", ", scan cancelled", ", he refused lunch",
        ", I think the family is coming in later", ", I guess he misses his dog", ", didn't sleep",
        ", couldn't sleep", ", his surgery was postponed", ", discharge postponed", ", MRI on hold",
        ", temp seems high", ", he seems off today", ", hard to wake", ", family said no to DNR",
        ", he didn't eat much", ", wouldn't let go of my hand", ", didn't like it", ", awaiting bloods",
        ", strange night", ", failed his swallow test", ", tried to walk", ", he says he feels better",
        ", hold that thought", ", not yet had lunch", ", wants his wife", ", bit blurry vision",
        ", eyes sore",
        ", kind of chilly in here", ", plan changed for physio", ", changed his sheets",
        ", not finished his lunch", ", home next week", ", family objected to the food",
        ", will recheck", ", I double checked", ", I think that's it", ", was told he can eat",
    ],
)  # fmt: skip
@pytest.mark.parametrize("plain", PLAIN)
def test_the_same_words_of_something_else_leave_it_whole(plain: str, remark: str) -> None:
    assert reading(plain + remark) == reading(plain)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7 it says 450 at 1830", "mark bed=7 at=18:30 level_ml=450"),
        ("it says 610 on the box in room 6 at 1830", "mark bed=6 at=18:30 level_ml=610"),
        ("bed 12 suction is off", "incident bed=12 what=suction_off"),
        ("12 340 maybe at 1900", "mark bed=12 at=19:00 level_ml=340 about"),
        ("bed 6 roughly 500 at 1905 cant read under the bed", "mark bed=6 at=19:05 level_ml=500 about"),
        ("12 seal 2 not 1", "checked bed=12 seal_cm=2"),
    ],
)
def test_what_only_sounds_like_a_doubt_stands(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 6 he pulled it himself at 1840", "bed 6 tube out at 1840, he pulled it himself",
        "bed 6 pulled his own drain out at 1840", "patient in bed 6 removed his drain himself at 1840",
        "bed 6 drain pulled out by patient at 1840", "bed 6 drain pulled by the pt at 1840",
        "bed 6 drain out at 1840, she did it herself", "bed 6 drain removed at 1840. He took it out himself",
    ],
)  # fmt: skip
def test_a_tube_that_the_patient_took_out_is_dislodged(text: str) -> None:
    assert "removed" not in reading(text)
    assert "incident bed=6 at=18:40 what=dislodged" in reading(text)


@pytest.mark.parametrize(
    "text",
    [
        "he pulled the drain in bed 6 up onto the bed", "bed 6 he pulled the drain closer",
        "bed 6 pulled the drain towards him", "she pulled the box in bed 6 up on to her lap",
    ],
)  # fmt: skip
def test_a_drain_that_is_pulled_along_is_not_removed(text: str) -> None:
    assert "removed" not in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 6 tube out at 1840, pulled by the registrar", "removed bed=6 at=18:40"),
        ("bed 6 tube out at 1840, he did well", "removed bed=6 at=18:40"),
        ("bed 6 tube out at 1840. He fed himself after", "removed bed=6 at=18:40"),
        (
            "bed 6 tube out at 1840 final 300, breathing well by himself",
            "removed bed=6 at=18:40 level_ml=300",
        ),
        (
            "3 tube out at 1840, 6 pulled it himself",
            "removed bed=3 at=18:40; incident bed=6 what=dislodged",
        ),
    ],
)
def test_who_else_took_it_out_leaves_a_removal(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("channel", ["text", "voice"])
def test_a_word_of_doubt_is_not_repaired_into_another(channel: Channel) -> None:
    """ "tape" is no "taped": what lies over the scale hides it."""
    assert reading("bed 7 520 at 1840, tape over the numbers", channel=channel) == "ask level_ml"
