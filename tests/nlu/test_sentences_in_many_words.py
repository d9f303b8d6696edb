"""What was found in many words, phrases that tell nothing, and what heads a list of beds."""

from __future__ import annotations

import pytest

from .saying import ARRIVED, BEDS, Channel, reading

HUNDREDS = tuple(str(number) for number in range(201, 231))
LETTERS = tuple(f"{n}{side}" for n in range(1, 13) for side in "AB")
CARDIAC = (*(str(number) for number in range(1, 13)), *(f"CT{number}" for number in range(1, 9)))


def said(text: str, arrived: str, beds: tuple[str, ...], channel: Channel = "text") -> str:
    """One message that came at an hour such as "0304"."""
    at = ARRIVED.replace(hour=int(arrived[:2]), minute=int(arrived[2:]))
    return reading(text, beds=beds, channel=channel, arrived=at)


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, the water is moving with the breathing",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 tidaling=True",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, water going up and down when he breathes",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 tidaling=True",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, the water is not moving with the breathing",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 tidaling=False",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000 and not a bubble in sight",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 air_leak=none",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, not one bubble",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 air_leak=none",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, no sign of a leak",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 air_leak=none",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, zero bubbles",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 air_leak=none",
        ),
        (
            "0420",
            BEDS,
            (
                "Just had a lovely chat with the daughter in 16, anyway his drain is 275 and not "
                "a bubble in sight, this was at 4am"
            ),
            "mark bed=16 at=04:00 level_ml=275; checked bed=16 at=04:00 air_leak=none",
        ),
        (
            "0348",
            BEDS,
            "went in to bed 6 and the suction was off ive put it back on its 20 on the dial",
            (
                "incident bed=6 what=suction_off; checked bed=6 suction_cmh2o=20; incident bed=6 "
                "what=suction_on"
            ),
        ),
        (
            "0348",
            BEDS,
            "bed 6 is 340 and 20 on the dial",
            "mark bed=6 level_ml=340; checked bed=6 suction_cmh2o=20",
        ),
        ("0348", BEDS, "bed 6 its 20 on the dial", "checked bed=6 suction_cmh2o=20"),
        (
            "0103",
            BEDS,
            "b21 R +15 since last, AL intermit",
            ("drained bed=21 tube=right volume_ml=15; checked bed=21 tube=right air_leak=intermittent"),
        ),
        (
            "0430",
            BEDS,
            "Bed 19's drain got dragged along the floor and the casing is cracked",
            "incident bed=19 what=damaged",
        ),
        (
            "2120",
            CARDIAC,
            "CT6 chest reopened at bedside, tubing disconnected 2112 during it",
            "incident bed=CT6 at=21:12 what=disconnected",
        ),
    ],
)
def test_what_was_found_is_read_in_many_words(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, his chest is moving with each breath",
            "mark bed=5 at=20:00 level_ml=330",
        ),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, not a bubble until he coughed",
            "mark bed=5 at=20:00 level_ml=330",
        ),
        ("2006", BEDS, "bed 5 330 at 2000, not a bubble but a big leak on coughing", "ask kind; ask kind"),
        (
            "2006",
            BEDS,
            "bed 5 330 at 2000, water in his jug going up and down with the breathing",
            "mark bed=5 at=20:00 level_ml=330",
        ),
        ("0430", BEDS, "bed 19 monitor casing is cracked", "ask kind"),
        ("0430", BEDS, "Bed 19's drain got dragged along the floor", "ask kind"),
    ],
)
def test_of_another_thing_or_taken_back_it_is_not(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1004",
            BEDS,
            "Bed 5 drain swinging, not bubbling, 355 at 10:00",
            ("mark bed=5 at=10:00 level_ml=355; checked bed=5 at=10:00 air_leak=none tidaling=True"),
        ),
        (
            "1420",
            BEDS,
            "bed 2 its 540 now swinging no bubbles pt up in chair",
            ("mark bed=2 at=14:20 level_ml=540; checked bed=2 at=14:20 air_leak=none tidaling=True"),
        ),
        (
            "1004",
            BEDS,
            "bed 5 its still swinging, 355",
            "mark bed=5 level_ml=355; checked bed=5 tidaling=True",
        ),
        (
            "1004",
            BEDS,
            "bed 5 355 at 1000 drain swinging on suction",
            "mark bed=5 at=10:00 level_ml=355; checked bed=5 at=10:00 tidaling=True",
        ),
    ],
)
def test_a_swinging_drain_is_read(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1004",
            BEDS,
            "bed 5 355 at 1000 box swinging",
            "checked bed=5 at=10:00 tidaling=True; ask level_ml",
        ),
        ("1004", BEDS, "bed 5 355 its swinging while he walks", "checked bed=5 tidaling=True; ask level_ml"),
        (
            "1004",
            BEDS,
            "bed 5 355 at 1000 drain swinging on the bed rail",
            "checked bed=5 at=10:00 tidaling=True; ask level_ml",
        ),
        ("1004", BEDS, "bed 5 drain is moving 355", "ask level_ml"),
    ],
)
def test_a_swinging_canister_is_asked(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("2320", BEDS, "Patient bed 17 is gone to CT scan at 23:15", "away bed=17 at=23:15"),
        ("2320", BEDS, "bed 17 is gone to theatre at 23:15", "away bed=17 at=23:15"),
        (
            "2006",
            BEDS,
            "bed 5 leak is gone, 330 at 2000",
            "mark bed=5 at=20:00 level_ml=330; checked bed=5 at=20:00 air_leak=none",
        ),
        ("2320", BEDS, "nurse is gone to CT with bed 17, 330 at 23:15", "ask kind"),
    ],
)
def test_who_is_gone_somewhere_is_away(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1336",
            BEDS,
            "new chest tube bed 23, lobectomy today, placed at 1330, starts at 0",
            "placed bed=23 at=13:30 level_ml=0 reason=lung",
        ),
        (
            "1336",
            BEDS,
            "bed 23 lobectomy today, line 340 at 1330",
            "mark bed=23 at=13:30 level_ml=340; described bed=23 reason=lung",
        ),
        ("1336", BEDS, "new chest tube bed 23, lobectomy today, placed 1330", "ask at"),
    ],
)
def test_today_is_of_the_operation(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "1045",
            BEDS,
            ("Bless him, 16 has had his tube out at last, 10:20, he is over the moon. Final level was 340"),
            "removed bed=16 at=10:20 level_ml=340",
        ),
        (
            "1220",
            HUNDREDS,
            ("214 drained 50 since I marked it. First day on this floor so shout if I am doing it wrong"),
            "drained bed=214 volume_ml=50",
        ),
        (
            "0315",
            LETTERS,
            ("Hi! Room 12 bed B is 130 mL at 0300 and I think I am getting the hang of this :)"),
            "mark bed=12B at=03:00 level_ml=130",
        ),
        (
            "0506",
            BEDS,
            "bed 19 was 1365 at 4 and 1380 at 5 nothing else to say its a quiet one",
            "mark bed=19 at=04:00 level_ml=1365; mark bed=19 at=05:00 level_ml=1380",
        ),
        ("1140", BEDS, "bed 6 (stepdown) 715 ml at 1130", "mark bed=6 at=11:30 level_ml=715"),
        ("1140", BEDS, "bed 6 (by the window) 715 ml at 1130", "mark bed=6 at=11:30 level_ml=715"),
    ],
)
def test_phrases_that_tell_nothing_are_left_out(
    arrived: str, beds: tuple[str, ...], text: str, read: str
) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("1220", HUNDREDS, "214 555 at 1200, tell me if this is wrong", "ask level_ml"),
        ("1220", HUNDREDS, "214 555 at 1200, shout if that's wrong", "ask kind"),
        ("1220", HUNDREDS, "214 555 at 1200, I think I am reading it wrong", "ask kind; ask kind"),
        ("1220", BEDS, "bed 6 mark at last 340 at 1200", "ask level_ml"),
        ("1220", BEDS, "bed 6 nothing more to report", "ask volume_ml"),
        ("1220", BEDS, "bed 6 (or 9) 340 at 1200", "ask bed"),
        ("1220", BEDS, "bed 6 (next to 7) 340 at 1200", "ask level_ml"),
        ("1220", BEDS, "bed 6 (last) 340 at 1200", "ask level_ml"),
    ],
)
def test_doubts_and_other_phrases_are_not(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        (
            "0220",
            BEDS,
            "Rounds 0200\n- Bed 1: 210\n- Bed 4: 385\n- Bed 9: 1120\n- Bed 16: no change",
            (
                "mark bed=1 at=02:00 level_ml=210; mark bed=4 at=02:00 level_ml=385; mark bed=9 "
                "at=02:00 level_ml=1120; drained bed=16 at=02:00 volume_ml=0"
            ),
        ),
        (
            "0220",
            BEDS,
            "Night round 0200\nBed 1 210\nBed 4 385",
            "mark bed=1 at=02:00 level_ml=210; mark bed=4 at=02:00 level_ml=385",
        ),
        (
            "0220",
            BEDS,
            "my rounds at 2am\n1: 210\n4: 385",
            "mark bed=1 at=02:00 level_ml=210; mark bed=4 at=02:00 level_ml=385",
        ),
        (
            "0220",
            BEDS,
            "Hourlies 0200:\nBed 1 210\nBed 4 385",
            "mark bed=1 at=02:00 level_ml=210; mark bed=4 at=02:00 level_ml=385",
        ),
    ],
)
def test_a_list_is_headed_with_its_time(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read


@pytest.mark.parametrize(
    ("arrived", "beds", "text", "read"),
    [
        ("0920", BEDS, "ward round 0900\nbed 4: 340\nbed 5: 220", "ask level_ml"),
        ("0920", BEDS, "Consultant round 0900\nbed 4: 340\nbed 5: 220", "ask level_ml"),
        ("0920", BEDS, "rounds 0900\ntube out bed 4\nbed 5: 220", "ask kind; ask kind"),
        ("0920", BEDS, "rounds 1000\nbed 4: 340\nbed 5: 220", "ask at; ask at"),
    ],
)
def test_another_heading_is_asked(arrived: str, beds: tuple[str, ...], text: str, read: str) -> None:
    assert said(text, arrived, beds) == read
