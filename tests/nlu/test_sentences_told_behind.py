"""What stands behind what happened and tells its value: a suction with its minus, what came off its level."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 suction 0640 -20", "checked bed=6 at=06:40 suction_cmh2o=20"),
        ("6 on suction at 0640 -20", "checked bed=6 at=06:40 suction_cmh2o=20"),
        (
            "6 back on suction, -20",
            "checked bed=6 suction_cmh2o=20; incident bed=6 what=suction_on",
        ),
        (
            "6 reconnected to suction 0640 -20 no leak",
            "checked bed=6 at=06:40 suction_cmh2o=20 air_leak=none; incident bed=6 at=06:40 what=suction_on",
        ),
    ],
)
def test_a_minus_before_a_round_number_is_of_the_suction(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    "text", ["6 640 0640 -20", "6 suction off, 640 -20", "6 suction off -20", "6 at -20", "6 suction on - 20"]
)
def test_a_minus_that_is_of_no_suction_told_is_asked(text: str) -> None:
    assert "ask" in reading(text, arrived=MORNING)


@pytest.mark.parametrize(
    "text",
    [
        "changed 2's canister at 0648 it was 1885 when i took it off",
        "canister changed bed 2 at 0648, 1885 when it came off",
        "canister changed bed 2 at 0648, 1885 when we took the old one down",
        "new box on 2 at 0648 - 1885 when removed",
    ],
)
def test_what_it_was_when_it_came_off_is_the_old_level(text: str) -> None:
    assert reading(text, arrived=MORNING) == "exchanged bed=2 at=06:48 final_ml=1885"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("2 885 when clamp came off", "mark bed=2 level_ml=885; incident bed=2 what=unclamped"),
        ("2 885 when suction came off", "mark bed=2 level_ml=885; incident bed=2 what=suction_off"),
        ("2 885 when i took him off suction", "ask level_ml"),
        ("13 pulled at 0530, dressing dry, final 95", "removed bed=13 at=05:30 level_ml=95"),
        ("13 foley pulled at 0530, final 95", "ask level_ml"),
        ("13 pulled at 0530", "ask level_ml"),
    ],
)
def test_what_came_off_is_said_by_its_word(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 12 130 at 0640 no leek",
            "mark bed=12 at=06:40 level_ml=130; checked bed=12 at=06:40 air_leak=none",
        ),
        ("bed 12 lft 130 at 0640", "mark bed=12 tube=left at=06:40 level_ml=130"),
        ("bed 12 tiped over 0640", "incident bed=12 at=06:40 what=tipped"),
        ("bed 12 plural effusion 130", "mark bed=12 level_ml=130; described bed=12 reason=effusion"),
    ],
)
def test_a_word_of_the_trade_that_is_another_word_by_its_letters_is_read(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 suction turned off at 0600 to walk", "incident bed=6 at=06:00 what=suction_off"),
        ("6 clamped 0600 to assess for leak", "incident bed=6 at=06:00 what=clamped"),
        ("6 suction off to walk", "ask kind"),
        ("6 clamped at 0600 to be removed", "ask kind"),
        ("6 unclamped at 0600 to drain another 500", "incident bed=6 at=06:00 what=unclamped; ask volume_ml"),
        ("6 opened for another 500", "ask volume_ml"),
        ("6 drain 500 more then clamp", "incident bed=6 what=clamped; ask volume_ml"),
        ("6 drained 500 then clamped", "drained bed=6 volume_ml=500; incident bed=6 what=clamped"),
        ("6 drained 240 for the shift", "drained bed=6 volume_ml=240"),
    ],
)
def test_what_for_is_no_more_than_that_and_what_is_to_come_is_asked(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 910 leak worse", "mark bed=4 level_ml=910; checked bed=4 air_leak=present"),
        ("bed 4 910 leak is a bit better", "mark bed=4 level_ml=910; checked bed=4 air_leak=present"),
        ("bed 4 910 worsening leak", "mark bed=4 level_ml=910; checked bed=4 air_leak=present"),
        ("bed 4 leak worse at 0530", "checked bed=4 at=05:30 air_leak=present"),
        ("bed 4 910 leak stopped", "mark bed=4 level_ml=910; checked bed=4 air_leak=none"),
        ("bed 4 910 more bloody", "checked bed=4 fluid=sanguineous; ask volume_ml"),
        ("bed 4 910 more bubbling", "checked bed=4 air_leak=present; ask volume_ml"),
    ],
)
def test_how_a_leak_goes_on_is_a_leak(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


def test_no_worse_leak_is_no_absent_one() -> None:
    assert "none" not in reading("bed 4 910 no worse leak", arrived=MORNING)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed 5 left mark 660 right mark 310 at 0610 no leak on the right",
            "mark bed=5 tube=left at=06:10 level_ml=660; mark bed=5 tube=right at=06:10 level_ml=310; "
            "checked bed=5 tube=right at=06:10 air_leak=none",
        ),
        ("bed 9 has drained nothing since four o'clock", "drained bed=9 volume_ml=0"),
        ("did 9 drain more than 1500 today?", "ask kind"),
    ],
)
def test_what_is_behind_keeps_its_place(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read
