"""Lines put right in any order and any words, and what only looks as if a line were put right."""

from __future__ import annotations

import pytest

from .saying import reading

RIGHT = "corrected bed=4 was_ml=640 level_ml=460"


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("it was 460 i said 640", "corrected was_ml=640 level_ml=460"),
        ("bed 4 change 640 to 460 pls", RIGHT),
        ("make bed 4 460 instead of 640 thx", RIGHT),
        ("replace 640 w 460 bed 4", RIGHT),
        ("bed 4 was never 640, reread it, 460", RIGHT),
        ("recheck bed 4: 460, i had 640", RIGHT),
        ("looked again, bed 4 is 460 rather than 640", RIGHT),
        ("extra digit in 640, its 460, bed 4", RIGHT),
        ("bed 4 level entered wrong as 640, right is 460", RIGHT),
        ("not 640 but 460 for bed 4", RIGHT),
        ("please alter bed 4 from 640 to 460", RIGHT),
        ("it's 460 on bed 4, the 640 is a typo", RIGHT),
        ("typed 640 when it was 460, bed 4 1830", "corrected bed=4 at=18:30 was_ml=640 level_ml=460"),
        ("transposed it. bed 4 reads 640", "corrected bed=4 level_ml=640"),
        ("bed 4 460 at 1830 hrs, i told you 640", "corrected bed=4 at=18:30 was_ml=640 level_ml=460"),
    ],
)
def test_what_was_wrong_and_what_is_right_is_told_by_the_words_beside_each(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("meant 3 when i said bed 5", "corrected bed=5 to_bed=3"),
        ("charted under bed 4 by mistake, its 6", "corrected bed=4 to_bed=6"),
        ("the 670 on bed 4 is bed 6s", "corrected bed=4 was_ml=670 to_bed=6"),
        ("shift the 1830 mark from 4 to bed 6", "corrected bed=4 at=18:30 to_bed=6"),
        ("the 1830 reading went under bed 4 instead of bed 6", "corrected bed=4 at=18:30 to_bed=6"),
        ("i was late, bed 4 line was 1800 hrs not 1830", "corrected bed=4 at=18:30 to_at=18:00"),
        ("retime bed 4 1830 line to 1800 hrs", "corrected bed=4 at=18:30 to_at=18:00"),
        ("bed 4 the 1830h goes to the posterior one", "corrected bed=4 at=18:30 to_tube=posterior"),
        (
            "mixed up tubes bed 4, 640 is apical not basal",
            "corrected bed=4 tube=basal was_ml=640 to_tube=apical",
        ),
        (
            "bed 4 anterior should of been 460 not 640, posterior is fine as it stands",
            "corrected bed=4 tube=anterior was_ml=640 level_ml=460",
        ),
    ],
)
def test_a_bed_a_tube_and_a_time_are_put_right_in_the_same_way(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    "said",
    [
        "wouldve corrected bed 4 to 640 but she says leave it as it is",
        "they asked me to delete the 1830 on bed 4 but i wont",
        "someone corrected bed 4 to 640 already",
        "bed 4 has been corrected to 640 already thanks",
        "cancel my correction on bed 4",
        "never mind the 1830 correction on bed 4",
        "ill delete the 1830 on bed 4 once charge is back",
        "bed 4 should be 640 by 1830",
        "bed 4 640 instead of the usual 460",
        "bed 4 is 640 rather than 460 an hour ago",
        "i sent 640 for bed 4, its 460 more than before",
        "changed bed 4 output, 640 not 460",
        "scratch the last two",
        "please remove bed 4 1830, it belongs to another ward",
        "bed 4 next mark should be 1830 not 1800",
        "bed 4 tube went in at 1830 not 1800",
        "yes maybe",
        "both are right",
        "was it 1830?",
        "it was for 7",
        "that was 1832",
    ],
)
def test_what_nobody_puts_right_takes_back_or_confirms_is_asked(said: str) -> None:
    assert reading(said).startswith("ask ")


@pytest.mark.parametrize(
    "said",
    [
        "bed 4 shouldnt be 640",
        "the 640 on bed 4 was entered in error",
        "correct the 640 on bed 4",
        "bed 4 fix the 640",
        "i misread bed 4 as 640",
        "bed 4 640 incorrect",
        "bed 4 the right is 640, i put 460",
        "for bed 4 the 1830 line ought to be 640 ml and the 1800 line 460 ml",
        "i sent 640 for bed 4, bed 6 is 460",
        "i put bed 4 at 640 and bed 6 at 460, sorry wrong key",
        "bed 4 1855 should be under right not left",
        "bed 4 460, 640 wrong",
        "i typed 640 she typed 460 bed 4",
        "i had 640 on bed 4 at handover, its 460",
        "bed 4 was read at 1830 and sent at 1800",
        "Two to fix, bed 4 1830 is 640 mls and bed 6 1830 is 460 mls",
    ],
)
def test_what_is_right_is_asked_where_it_is_not_told_or_may_be_of_another_line(said: str) -> None:
    assert reading(said).startswith("ask ")


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 sorry", "answered bed=4"),
        ("it was bed 4 left", "answered bed=4 tube=left"),
        ("bed 4 the left one", "answered bed=4 tube=left"),
        ("bed 4?", "asked bed=4 topic=last"),
        ("bed 4 please", "asked bed=4 topic=last"),
        ("the second one is the right one", "answered choice=second"),
        ("yeah bed 4 it is right, dr is at the bedside now", "answered bed=4 answer=yes"),
        ("misread bed 4 at 1830, it's 640", "corrected bed=4 at=18:30 level_ml=640"),
    ],
)
def test_an_answer_is_no_question_and_has_no_time_of_a_remark(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("kill the 1832h on 4, student typed it", "withdrawn bed=4 at=18:32"),
        ("bin the 6:40pm on bed 4", "withdrawn bed=4 at=18:40"),
        ("nix the 18:50 on 4", "withdrawn bed=4 at=18:50"),
        ("toss the 1800 for bed 4", "withdrawn bed=4 at=18:00"),
        ("bed seven drain fell over but I stood it right back up", "incident bed=7 what=tipped"),
        ("bed 7 right drain fell over", "incident bed=7 tube=right what=tipped"),
    ],
)
def test_a_line_is_thrown_out_at_its_time_and_what_stands_right_up_is_no_side(said: str, read: str) -> None:
    assert reading(said) == read


@pytest.mark.parametrize(
    "said", ["drop the 1800 dose for bed 4", "toss the 640 on bed 4", "bin the 2 sheets on bed 4"]
)
def test_what_is_thrown_out_and_is_no_line_is_asked_or_left_out(said: str) -> None:
    assert "withdrawn" not in reading(said)
