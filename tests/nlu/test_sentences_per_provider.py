"""Who ordered it, what is waited for, which beds lie between, when "now" is, and how large a leak was."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("per trauma attending bed 9 suction 10", "ordered bed=9 suction_cmh2o=10"),
        ("bed 9 suction 10 per attending", "ordered bed=9 suction_cmh2o=10"),
        ("per thoracics 9 on gravity", "ordered bed=9 suction_cmh2o=0"),
        ("per ct surgery 9 suction at 20 now", "ordered bed=9 at=19:05 suction_cmh2o=20"),
        ("per dr shah 7 to be on 10 of suction", "ordered bed=7 suction_cmh2o=10"),
        ("per dr lee bed 3 to water seal at 1400", "checked bed=3 at=14:00 suction_cmh2o=0"),
        ("per chart bed 9 suction 10", "checked bed=9 suction_cmh2o=10"),
        ("per night nurse bed 9 suction 20", "checked bed=9 suction_cmh2o=20"),
        ("bed 9 340 at 1900 per protocol", "mark bed=9 at=19:00 level_ml=340"),
    ],
)
def test_what_is_told_per_provider_is_ordered(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("5 5 5 anybody know if dr wants repeat film", "ask kind"),
        ("bed 5 repeat cxr done", ""),
        ("Still waiting on that box for 3", "ask kind"),
        ("still waiting on new canister for 3", "ask kind"),
        ("can you repeat bed 5", "asked bed=5 topic=repeat"),
        ("repeat that please", "asked topic=repeat"),
        ("anything waiting on me bed 3", "asked bed=3 topic=open"),
        ("what are you waiting for on 3", "asked bed=3 topic=open"),
    ],
)
def test_what_is_repeated_or_waited_for_is_no_query(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("whats the rate on 4-7", "ask bed"),
        ("total 3 to 6", "ask bed"),
        ("i have 3-6 tonight what's due", "ask bed"),
        ("total on 4 - thanks", "asked bed=4 topic=total"),
    ],
)
def test_a_range_of_beds_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 5 is now at 1060", "mark bed=5 at=19:05 level_ml=1060"),
        ("bed 5 now at 1060 at 1900", "mark bed=5 at=19:00 level_ml=1060"),
        (
            "bed 5 330 at 1800, now at 350",
            "mark bed=5 at=18:00 level_ml=330; mark bed=5 at=19:05 level_ml=350",
        ),
        (
            "5 changed at 1830, old 1290, now at 20",
            "exchanged bed=5 at=18:30 final_ml=1290; mark bed=5 at=19:05 level_ml=20",
        ),
        ("bed 5 suction now at 20", "checked bed=5 suction_cmh2o=20"),
        ("5 now up to 340", "mark bed=5 level_ml=340"),
    ],
)
def test_now_at_is_when_it_was_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 65 ml pus since this morning", "drained bed=4 volume_ml=65; checked bed=4 fluid=purulent"),
        ("4 65 ml pus since 0700", "drained bed=4 volume_ml=65; checked bed=4 fluid=purulent"),
        ("4 65ml bloody", "mark bed=4 level_ml=65; checked bed=4 fluid=sanguineous"),
        (
            "3 390ml at 1850, lighter in color, serosang",
            "mark bed=3 at=18:50 level_ml=390; checked bed=3 at=18:50 fluid=serosanguineous",
        ),
    ],
)
def test_an_amount_of_its_look_since_a_time_is_drained(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed eighteen small intermittent leak when she coughs", "checked bed=18 air_leak=intermittent"),
        ("bed eighteen small intermittent air leak", "checked bed=18 air_leak=intermittent"),
        ("bed eighteen intermittent small leak", "checked bed=18 air_leak=intermittent"),
        ("bed eighteen big continuous leak", "checked bed=18 air_leak=continuous"),
        ("bed eighteen small leak when she coughs", "checked bed=18 air_leak=intermittent"),
        ("bed eighteen intermittent no leak", "ask kind"),
    ],
)
def test_a_dictated_leak_has_its_size_before_it(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "bed five mark three hundred bed six mark two hundred at eighteen thirty what's due",
            "mark bed=5 at=18:30 level_ml=300; mark bed=6 at=18:30 level_ml=200; asked topic=due",
        ),
        (
            "bed five mark three hundred at eighteen thirty what's due",
            "mark bed=5 at=18:30 level_ml=300; asked bed=5 topic=due",
        ),
    ],
)
def test_a_question_behind_lines_of_two_beds_is_of_neither(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read
