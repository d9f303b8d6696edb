"""What is said behind a finding and changes nothing of it, and what makes a finding doubtful."""

from __future__ import annotations

import pytest

from .saying import CHANNELS, Channel, reading

SWINGING = "checked bed=4 tidaling=True"


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 swinging grand, no bubbling", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 swinging beautifully", SWINGING),
        ("bed 4 swinging away nicely", SWINGING),
        ("bed 4 swinging as before", SWINGING),
        ("bed 4 swinging with every breath", SWINGING),
        ("bed 4 swinging when he coughs", SWINGING),
        ("bed 4 swinging since the move", SWINGING),
        ("bed 4 no leak on coughing", "checked bed=4 air_leak=none"),
        ("bed 4 bubbling continuously as expected", "checked bed=4 air_leak=continuous"),
        ("bed 4 milky drainage after first feed", "checked bed=4 fluid=chylous"),
        ("the poor divil in bed 4 swinging", SWINGING),
        ("kindly note bed 4 swinging", SWINGING),
        ("bed 4 swinging, specimen sent", SWINGING),
        ("bed 4 swinging, watching telly", SWINGING),
    ],
)
def test_a_remark_behind_a_finding_changes_nothing(said: str, read: str, channel: Channel) -> None:
    assert reading(said, channel=channel) == read


@pytest.mark.parametrize(
    "said",
    [
        "bed 4 swinging maybe",
        "bed 4 swinging his legs",
        "bed 4 bubbling subsided",
        "bed 4 bubbling from his nose",
        "bed 4 bloody nose",
        "bed 4 blood cultures sent",
        "bed 4 haemoserous ooze on dressing",
        "bed 4 swinging hard to say",
        "bed 4 leak expected",
        "bed 4 swinging, no leak, only when he coughs",
        "bed 3 serous and bonus mark 980 at 1900",
        "bed 4 serous after walk 340",
        "bed 4 swinging and 5",
        "bed 4 leak fixed",
        "bed 4 leak sorted by tightening connection",
    ],
)
def test_a_finding_that_is_doubted_or_of_something_else_is_asked(said: str) -> None:
    assert reading(said).startswith("ask ")


@pytest.mark.parametrize("channel", CHANNELS)
@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 swing yes bubble no", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 swing no bubble yes", "checked bed=4 air_leak=present tidaling=False"),
        ("bed 4 leak no swing yes", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 swing yes, bubble no", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 swing yes no bubble", "checked bed=4 air_leak=none tidaling=True"),
        ("bed 4 no swing no leak", "checked bed=4 air_leak=none tidaling=False"),
        ("bed 4 seal water down to 1", "checked bed=4 seal_cm=1"),
        ("bed 4 water in the seal looked low topped up to 2", "checked bed=4 seal_cm=2"),
        ("bed 4 tube has come out a few cm", "incident bed=4 what=dislodged"),
        ("bed 4 chest tube slipped out a bit", "incident bed=4 what=dislodged"),
    ],
)
def test_each_sign_of_a_row_has_its_own_yes_or_no(said: str, read: str, channel: Channel) -> None:
    assert reading(said, channel=channel) == read


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ("bed 4 no leak and mark 340", "mark bed=4 level_ml=340; checked bed=4 air_leak=none"),
        ("bed 4 and 5 swinging", "checked bed=4 tidaling=True; checked bed=5 tidaling=True"),
        ("bed 4 no leak, sorted", "checked bed=4 air_leak=none"),
    ],
)
def test_a_line_behind_a_finding_and_no_leak_left_are_told(said: str, read: str) -> None:
    assert reading(said) == read
