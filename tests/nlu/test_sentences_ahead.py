"""What is only planned, and what is told with a plus or a minus, or beside how much came."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    "text",
    [
        "bed 21 for drain removal after the ward round",
        "bed 21 for drain removal",
        "bed 21 awaiting chest drain change",
        "21 NPO for chest tube removal",
        "bed 21 for bottle change after lunch",
        "bed 21 to have drain out after the ward round",
        "bed 21 drain coming out after lunch",
        "moving 11 to 19 in a few min",
        "moving 11 to 19 shortly",
        "moving 11 to 19 once cleaned",
        "changing bed 12 canister after handover",
        "12 going to ct in a bit",
        "12 to theatre shortly",
    ],
)
def test_what_lies_ahead_is_no_event(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 21 drain removed after the ward round", "removed bed=21"),
        ("bed 12 off to theatre for drain removal", "away bed=12"),
        ("bed 12 clamped for drain removal at 1830", "incident bed=12 at=18:30 what=clamped"),
        ("bed 12 drained 200 in a few min", "drained bed=12 volume_ml=200"),
        ("moving 11 to 19 now", "moved bed=11 at=19:05 to_bed=19"),
        ("bed 12 off to CT", "away bed=12"),
        ("report on 3 for transfer", "asked bed=3 topic=handoff"),
        ("12 340 at 1830, for drain removal after the ward round", "mark bed=12 at=18:30 level_ml=340"),
        ("12 340 1830 for drain removal tomorrow", "mark bed=12 at=18:30 level_ml=340"),
    ],
)
def test_what_was_done_stands_and_a_plan_behind_a_line_changes_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 (+) fluctuation, (-) bubbling", "checked bed=12 air_leak=none tidaling=True"),
        ("12 + swing, - leak", "checked bed=12 air_leak=none tidaling=True"),
        ("12 leak (-), swing (+)", "checked bed=12 air_leak=none tidaling=True"),
        ("12 (+) bubbling (-) swing", "checked bed=12 air_leak=present tidaling=False"),
        ("12 -leak +swing", "checked bed=12 air_leak=none tidaling=True"),
        ("12 + swing, + leak", "checked bed=12 air_leak=present tidaling=True"),
        ("12 swing + / leak - / seal 2", "checked bed=12 seal_cm=2 air_leak=none tidaling=True"),
        ("12 swing+ leak- sx 20", "checked bed=12 suction_cmh2o=20 air_leak=none tidaling=True"),
        ("12 leak + swing -", "checked bed=12 air_leak=present tidaling=False"),
        ("12 sw + bub -", "checked bed=12 air_leak=none tidaling=True"),
        ("12 osc + lk -", "checked bed=12 air_leak=none tidaling=True"),
        ("12 swing +/-", "ask kind"),
        ("12 - leak", "ask kind"),
        ("12 - no leak", "checked bed=12 air_leak=none"),
        ("12 - leak, swinging", "checked bed=12 air_leak=present tidaling=True"),
        ("12 - leak + swing", "checked bed=12 tidaling=True; ask kind"),
        ("12, - bubbling", "ask kind"),
    ],
)
def test_a_minus_beside_a_plus_says_that_a_sign_is_absent(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 6 connected to suction of 20 at 1835", "checked bed=6 at=18:35 suction_cmh2o=20"),
        ("6 connected to suction at -20", "checked bed=6 suction_cmh2o=20"),
        ("bed 6 started on suction of 10", "checked bed=6 suction_cmh2o=10"),
        ("bed 6 connected to suction at 1830", "incident bed=6 at=18:30 what=suction_on"),
    ],
)
def test_what_a_drain_is_connected_to_is_its_setting(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 2 a heap came out, up to 560", "mark bed=2 level_ml=560"),
        ("bed 2 a gush came out and it's at 560", "mark bed=2 level_ml=560"),
        ("the new bottle of bed 6 shows 35", "mark bed=6 level_ml=35"),
        ("the new box on bed 6 reads 35 at 1830", "mark bed=6 at=18:30 level_ml=35"),
        ("the new box for bed 6 at 1830", "exchanged bed=6 at=18:30"),
        ("bed 2 a big gush came out, about 200", "drained bed=2 volume_ml=200 about"),
        ("bed 2 lots came out, 200 since 1700", "drained bed=2 volume_ml=200"),
    ],
)
def test_what_a_canister_shows_is_its_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    ["bed 2 drained up to 560", "bed 2 a heap came out, 560", "turned bed 2 and a lot came out, 560 now"],
)
def test_what_came_out_or_where_the_line_stands_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


def test_a_bare_number_behind_connected_to_suction_is_no_line() -> None:
    assert "mark" not in reading("bed 6 connected to suction, 20")
