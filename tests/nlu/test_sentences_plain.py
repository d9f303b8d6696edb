"""How nurses text when nobody watches: asked, put right, told and remarked in passing."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("how long til 3s canister is full", "asked bed=3 topic=capacity"),
        ("how long until 3's box is full", "asked bed=3 topic=capacity"),
        ("hours til full on 3", "asked bed=3 topic=capacity"),
        ("when will the box in 11 be full", "asked bed=11 topic=capacity"),
        ("when is the canister for bed 11 going to be full", "asked bed=11 topic=capacity"),
        ("when will the bed 3 canister fill up", "asked bed=3 topic=capacity"),
    ],
)
def test_when_a_canister_is_full_is_asked_around_its_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "if 4 tips over do i need a new box",
        "do i need a new box if 4 tips over",
        "if 4 is disconnected do i check the leak",
    ],
)
def test_what_has_not_happened_is_no_query_of_a_bed(text: str) -> None:
    assert reading(text) == "ask kind"


def test_a_query_may_be_put_with_an_if() -> None:
    assert reading("can you tell me if 4 is due") == "asked bed=4 topic=due"


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 last one, number's fine but time was 1850",
        "bed 12 last one was at 1850",
        "bed 5 milky drainage since breakfast?!",
        "bed 5 new air leak?!",
        "what's the foley output for bed 5?",
    ],
)
def test_what_tells_more_than_a_query_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 7 that 160 was right pleural not left",
            "corrected bed=7 tube=left was_ml=160 to_tube=right pleural",
        ),
        ("bed 7 the 160 was right not left", "corrected bed=7 tube=left was_ml=160 to_tube=right"),
        (
            "bed 7 160 was right pleural not left pleural",
            "corrected bed=7 tube=left pleural was_ml=160 to_tube=right pleural",
        ),
    ],
)
def test_a_line_of_the_wrong_tube_keeps_its_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 12 line 1050 at 1900, thats 45 in the hr",
        "bed 12 up to 1050 at 1900 so 45 in the hr",
        "bed 12 1050 at 1900, which is 60 since last",
        "bed 12 line 1050 at 1900, that's 60 out",
    ],
)
def test_what_is_reckoned_from_a_line_is_no_amount_beside_it(text: str) -> None:
    assert reading(text) == "mark bed=12 at=19:00 level_ml=1050"


def test_a_chair_is_no_shower() -> None:
    assert reading("bed 12 line 1050 at 1900, pt in shower chair") == "mark bed=12 at=19:00 level_ml=1050"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "dr put in left chest tube rm 7 at 1855 for effusion",
            "placed bed=7 tube=left at=18:55 reason=effusion",
        ),
        ("popped in a right drain bed 7 at 1855", "placed bed=7 tube=right at=18:55"),
    ],
)
def test_a_tube_that_was_put_in_is_placed(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_tube_that_is_put_on_suction_is_not_placed() -> None:
    assert "placed" not in reading("put left chest tube on suction 20 bed 7")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("which beds have chest drains rn", "asked topic=beds"),
        ("who has chest drains", "asked topic=beds"),
        ("who do u think i am on here", "asked topic=me"),
        ("sorry say that again pls, phone died", "asked topic=repeat"),
        ("what should i write down for 15 at 1900", "asked bed=15 at=19:00 topic=chart"),
        ("the earlier one was wrong, not this one", "answered choice=earlier_wrong"),
        ("the 2nd one you said", "answered choice=second"),
    ],
)
def test_what_is_asked_or_answered_in_passing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 8 milky looking drainage, 405 at 1900",
            "mark bed=8 at=19:00 level_ml=405; checked bed=8 at=19:00 fluid=chylous",
        ),
        ("bed 8 drainage turned cloudy/purulent at 1855", "checked bed=8 at=18:55 fluid=purulent"),
        ("bed 8 drainage now serous at 1855", "checked bed=8 at=18:55 fluid=serous"),
        ("bed 8 serosang drainage 210 at 1900", "checked bed=8 at=19:00 fluid=serosanguineous; ask kind"),
        ("bed 8 drainage bloody 210", "ask kind"),
        ("bed 8 drainage turned bloody at 340", "ask kind"),
    ],
)
def test_drainage_that_is_named_for_its_look_is_no_amount(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 seal 2, -20, no leak", "checked bed=9 seal_cm=2 suction_cmh2o=20 air_leak=none"),
        ("bed 9 on -20 swinging", "checked bed=9 suction_cmh2o=20 tidaling=True"),
        ("bed 9 at -20", "ask at"),
        ("24 med tube not swinging", "checked bed=24 tube=mediastinal tidaling=False"),
        ("not loving bed 5, continuous bubbling, wall 60", "checked bed=5 wall_mmhg=60 air_leak=continuous"),
    ],
)
def test_checks_in_short(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_number_that_is_so_much_less_is_no_suction() -> None:
    assert "suction" not in reading("bed 9 mark 340 at 1900, no leak, -20 from last")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 9 drain came disconnected at 1825, reconnected, dr aware",
            "incident bed=9 at=18:25 what=disconnected",
        ),
        ("dr smith aware bed 12 tipped at 1850", "incident bed=12 at=18:50 what=tipped"),
        ("bed 8 drain tipped over at 1855 pt tripped on it", "incident bed=8 at=18:55 what=tipped"),
        (
            "visitor tripped on bed 7 tubing, came disconnected at 1850",
            "incident bed=7 at=18:50 what=disconnected",
        ),
        ("pt in 3 pulled on his chest tube, its partway out", "incident bed=3 what=dislodged"),
        ("unclamped 3 at 1900 bc sob", "incident bed=3 at=19:00 what=unclamped"),
        ("box on bed 14 is cracked down the side", "incident bed=14 what=damaged"),
        (
            "7 disconnected at the connector for a sec, reconnected right away, pt fine",
            "incident bed=7 what=disconnected",
        ),
        ("12 aware", "acknowledged bed=12"),
        ("bed 9 drain disconnected at 1825, dr aware at 1830", "incident bed=9 at=18:25 what=disconnected"),
        ("bed 9 drain disconnected at 1825, dr aware 1830", "incident bed=9 at=18:25 what=disconnected"),
        ("bed 9 drain disconnected, dr aware at 1830", "incident bed=9 at=18:30 what=disconnected"),
        ("bed 3 420, md aware 1830", "mark bed=3 at=18:30 level_ml=420"),
        ("bed 3 pulled on her tube", "ask kind"),
    ],
)
def test_what_happened_is_read_with_how_it_came_and_who_knows(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("surg ordered bed 17 suction 10", "ordered bed=17 suction_cmh2o=10"),
        ("order for 17: water seal", "ordered bed=17 suction_cmh2o=0"),
        ("dr ng wants 8 at -10 of sxn", "ordered bed=8 suction_cmh2o=10"),
        ("dr patel wants 8 at suction 10", "ordered bed=8 suction_cmh2o=10"),
    ],
)
def test_an_order_is_read_by_whoever_gave_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 2 515 was wrong, 551", "corrected bed=2 was_ml=515 level_ml=551"),
        ("bed 2 515 wrong its 551", "corrected bed=2 was_ml=515 level_ml=551"),
        ("bed 2 515 was wrong", "ask level_ml"),
        ("bed 2 1050 was wrong, 1900", "ask at"),
    ],
)
def test_the_number_that_was_wrong_stands_before_what_is_right(text: str, read: str) -> None:
    assert reading(text) == read


def test_nothing_further_is_nothing_drained() -> None:
    assert reading("bed 3 nothing further drained") == "drained bed=3 volume_ml=0"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 5 box changed at 1830, old 1290, new starts at 0, now at 20",
            "exchanged bed=5 at=18:30 final_ml=1290 opening_ml=0; mark bed=5 at=19:05 level_ml=20",
        ),
        (
            "bed 5 box changed at 1830, old 1290, now at 20 at 1900",
            "exchanged bed=5 at=18:30 final_ml=1290; mark bed=5 at=19:00 level_ml=20",
        ),
        (
            "bed 5 box changed, old 1290, now at 20",
            "exchanged bed=5 final_ml=1290; mark bed=5 at=19:05 level_ml=20",
        ),
    ],
)
def test_what_a_new_canister_is_now_at_has_not_the_time_of_the_change(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("24 back from ir 1855 grumpy but fine", "back bed=24 at=18:55"),
        ("24 back from ir 1020 fine", "ask at"),
        ("bed 12 tipped 1855 fine", "incident bed=12 at=18:55 what=tipped"),
    ],
)
def test_a_remark_is_no_unit_of_the_time_before_it(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_window_that_is_not_known_is_asked() -> None:
    assert reading("what is the drain output for 12 since dialysis") == "ask window"
