"""Sentences whose event, time or number is of something else than the drain or its patient."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bed 5 clamped at 1850 in the bathroom", "incident bed=5 at=18:50 what=clamped"),
        ("bed 5 drain knocked over on the way to CT", "incident bed=5 what=tipped"),
        ("tube kinked on bed 5 on the way to theatre", "incident bed=5 what=kinked"),
        ("bed 12 left disconnected at 1850 in CT", "incident bed=12 tube=left at=18:50 what=disconnected"),
        ("bed 5 drain cracked at 1850 in dialysis", "incident bed=5 at=18:50 what=damaged"),
        ("bed 5 drain knocked over and off to CT", "away bed=5; incident bed=5 what=tipped"),
        ("bed 5 clamped at 1850, now in CT", "incident bed=5 at=18:50 what=clamped; away bed=5 at=18:50"),
        ("bed 5 to CT at 1850, clamped", "away bed=5 at=18:50; incident bed=5 at=18:50 what=clamped"),
    ],
)
def test_where_it_happened_sends_nobody_away(text: str, said: str) -> None:
    """ "in CT" behind a mishap says where it was."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bed 5 640 at 1900, back at desk", "mark bed=5 at=19:00 level_ml=640"),
        ("bed 5 640 at 1900, on my way to theatre", "mark bed=5 at=19:00 level_ml=640"),
        ("bed 5 line 640, back at my computer", "mark bed=5 level_ml=640"),
        ("12 left 640 at 1900, be right back", "mark bed=12 tube=left at=19:00 level_ml=640"),
        ("bed 5 mark 640 mL at 1855, on the chart", "mark bed=5 at=18:55 level_ml=640"),
        ("bed 5 640 at 1900, it's in his chart", "mark bed=5 at=19:00 level_ml=640"),
        ("bed 5 640 at 1900, on the way to theatre", "mark bed=5 at=19:00 level_ml=640; away bed=5 at=19:00"),
        ("bed 5 back from theatre at 1850", "back bed=5 at=18:50"),
        ("bed 5 640 at 1900, back from CT", "mark bed=5 at=19:00 level_ml=640; back bed=5 at=19:00"),
        ("chart for bed 5", "asked bed=5 topic=chart"),
        ("what's on the chart for bed 5", "asked bed=5 topic=chart"),
    ],
)
def test_who_writes_is_no_patient(text: str, said: str) -> None:
    """Whoever writes is back at the desk, and the line stands on the chart."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bed 7's chair moved to bed 9", "ask kind"),
        ("moved bed 7's walker to bed 9", "ask kind"),
        ("moved the recliner from bed 7 to bed 9", "ask kind"),
        ("bed 7 table tipped over at 1850", "ask kind"),
        ("bed 3 wasnt tipped, it was just the bedside table that fell over", "ask kind"),
        ("bed 7's patient moved to bed 9", "moved bed=7 to_bed=9"),
        ("moved our lady in bed 7 to 9", "moved bed=7 to_bed=9"),
        ("bed 7 drain tipped over by the table", "incident bed=7 what=tipped"),
        ("the chair knocked over bed 7's drain", "incident bed=7 what=tipped"),
    ],
)
def test_what_stands_around_a_bed_moves_no_patient_and_tips_no_drain(text: str, said: str) -> None:
    """A chair moves and a table falls, too."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bed 5 tube pulled out as he sat up", "ask level_ml"),
        ("walked 14 to the loo and back 1830", "ask level_ml"),
        ("tube pulled out as planned bed 5", "removed bed=5"),
        ("14 back from CT 1830", "back bed=14 at=18:30"),
    ],
)
def test_what_happened_at_the_same_time_is_asked(text: str, said: str) -> None:
    """Pulled out as he sat up, it was hardly meant."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("lost the tidaling in 5", "checked bed=5 tidaling=False"),
        ("bed 5 has lost its swing", "checked bed=5 tidaling=False"),
        ("bed 5 lost the leak", "checked bed=5 air_leak=none"),
        ("bed 5 not lost the swing", "ask kind"),
        ("bed 5 swinging", "checked bed=5 tidaling=True"),
        ("9 hasn't lost tidaling", "ask kind"),
        ("9 never stopped swinging", "ask kind"),
        ("9 stopped swinging", "checked bed=9 tidaling=False"),
    ],
)
def test_a_sign_that_was_lost_is_absent(text: str, said: str) -> None:
    """It was there, and is no more."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("5 left 610 at 1900, cardiac surgery aware", "mark bed=5 tube=left at=19:00 level_ml=610"),
        ("5 610 at 1900, trauma paged", "mark bed=5 at=19:00 level_ml=610"),
        ("5 in for trauma, 610 at 1900", "mark bed=5 at=19:00 level_ml=610; described bed=5 reason=trauma"),
    ],
)
def test_a_team_that_was_called_is_no_reason(text: str, said: str) -> None:
    """Trauma is a team as well."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("100% sure, bed 8 reads 145 mL", "mark bed=8 level_ml=145"),
        ("yes bed 8 reads 145", "answered bed=8 answer=yes level_ml=145"),
        ("8 may have misread it, 290 at 1800", "ask kind"),
        ("8 maybe misread", "ask kind"),
        ("8 misread, 290", "answered bed=8 choice=misread level_ml=290"),
        ("8 i must have misread it", "ask kind"),
        ("22 yes new canister", "answered bed=22 answer=yes choice=new_canister"),
        ("22 new canister", "exchanged bed=22"),
        ("yes 22 new canister at 1850", "exchanged bed=22 at=18:50"),
    ],
)
def test_certainty_and_doubt_are_no_answer(text: str, said: str) -> None:
    """ "100% sure" answers nothing, and "may have misread" is no choice."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("orders say clamp 7 in the morning", "ask bed"),
        ("surgeon said clamp 7", "ask kind"),
        ("surgeon says clamped 7 at 1850", "incident bed=7 at=18:50 what=clamped"),
    ],
)
def test_what_an_order_says_has_not_happened(text: str, said: str) -> None:
    """ "order says clamp" bids; "says clamped" tells."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("changed the stoma bag bed 4, 200 in it", "ask level_ml"),
        ("emptied the bag on bed 4, 200", "ask level_ml"),
        ("bed 4 640 at 1900, stoma bag changed", "mark bed=4 at=19:00 level_ml=640"),
        ("line 12 14 at 1845", "ask level_ml"),
        ("line 12 340 at 1845", "mark bed=12 at=18:45 level_ml=340"),
        ("bed 13 line is two fingers under the sticker", "ask level_ml"),
        ("bed 13 line 3 squares up", "ask level_ml"),
        ("bed 18 canister weighs 1.4 kg", "ask kind"),
        ("bed 18 weighs 1.4 kg", "described bed=18 weight_kg=1.4"),
        ("bed 5 k 4 na 140", ""),
        ("bed 5 640 at 1900, k 4, na 138", "mark bed=5 at=19:00 level_ml=640"),
        ("k 4 340 at 1900", "mark bed=4 at=19:00 level_ml=340"),
    ],
)
def test_a_number_of_something_else_is_no_line(text: str, said: str) -> None:
    """A bag, a finger, a scale, a blood value, or which of two beds."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("line at 1800 was not 150 on bed 5", "ask level_ml"),
        ("line at 1010 not 1100 on bed 5", "corrected bed=5 was_ml=1100 level_ml=1010"),
        ("oops b9 not b8 for 505", "corrected bed=8 was_ml=505 to_bed=9"),
        ("sorry bed 9 not bed 8 for the 505", "corrected bed=8 was_ml=505 to_bed=9"),
        ("bed 9 505 not 550", "corrected bed=9 was_ml=550 level_ml=505"),
        ("I wrote bed 3 but meant bed 4 for the 1800", "ask at"),
        ("I put bed 3 but meant bed 4 for the 1800 line", "corrected bed=3 at=18:00 to_bed=4"),
        ("ignore the 500 for 14", "ask at"),
        ("ignore the 0500 for 14", "withdrawn bed=14 at=05:00"),
        ("ignore the 1800 for 14", "withdrawn bed=14 at=18:00"),
        ("can you repeat what you said about bed 6, I deleted it by accident", "asked bed=6 topic=repeat"),
        ("delete the 1800 on bed 6", "withdrawn bed=6 at=18:00"),
        ("bed 19, I read it at 1900 and forgot what it said", "ask level_ml"),
        ("bed 5 640, foam hasn't settled", "ask level_ml"),
        ("bed 5 640 at 1900, he hasn't settled", "mark bed=5 at=19:00 level_ml=640"),
    ],
)
def test_a_time_is_no_right_level(text: str, said: str) -> None:
    """A line that "was not 150" has a time, and no right level yet."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("moved bed 5 to HDU 3", "left bed=5"),
        ("took bed 5 to ICU 12 at 1850", "left bed=5 at=18:50"),
        ("sent bed 5 up to ward 7", "left bed=5"),
        ("bed 5 to icu 12 at 1850", "left bed=5 at=18:50"),
        ("bed 5 to ICU at 1850, 40 mL", "left bed=5 at=18:50; mark bed=5 at=18:50 level_ml=40"),
        ("bed 5 to ICU 40 mL", "left bed=5; mark bed=5 level_ml=40"),
        ("bed 5 moved to room 7", "moved bed=5 to_bed=7"),
    ],
)
def test_the_number_of_another_ward_is_no_line(text: str, said: str) -> None:
    """ "sent up to ward 7" has no line of 7."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("bed 7 canister 2 at 300", "ask level_ml"),
        ("bed 7 chamber 2 is full", "ask level_ml"),
        ("bed 7 canister 340", "mark bed=7 level_ml=340"),
        ("bed 7 box 3 mL", "mark bed=7 level_ml=3"),
        ("bed 5 640 no leak", "ask level_ml"),
    ],
)
def test_which_canister_it_is_is_no_level(text: str, said: str) -> None:
    """A canister has a number, too."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("his walking frame in bed 7 tipped over", "ask kind"),
        ("the drain in bed 7 tipped over", "incident bed=7 what=tipped"),
        ("chair in 7 moved out", "ask kind"),
        ("bed 7 moved out at 1850", "left bed=7 at=18:50"),
        ("bed 7's catheter pulled out at 1850", "ask level_ml"),
        ("pigtail catheter removed bed 7", "removed bed=7"),
        ("bed 7 340 at 1900, back after my break", "mark bed=7 at=19:00 level_ml=340"),
        ("drain fell over bed 9 when he came back from theatre", "incident bed=9 what=tipped"),
        ("bed 6 had his canister tip over once back in august", "ask kind"),
    ],
)
def test_what_is_around_the_drain_is_not_the_drain(text: str, said: str) -> None:
    """A frame, a chair, a catheter of another place, and when it was."""
    assert reading(text) == said


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("lost the suction on bed 18 at 1850", "incident bed=18 at=18:50 what=suction_off"),
        (
            "bed 18 lost its suction, it came back on at 1855",
            "incident bed=18 what=suction_off; incident bed=18 at=18:55 what=suction_on",
        ),
        ("put the suction on bed 5", "incident bed=5 what=suction_on"),
    ],
)
def test_suction_that_was_lost_was_off_and_came_back(text: str, said: str) -> None:
    """It is the suction that came back on, and no patient."""
    assert reading(text) == said
