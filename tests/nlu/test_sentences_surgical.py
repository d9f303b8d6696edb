"""What the nurses of a surgical ward write of events, checks and orders, and what only looks like them."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 14 tidaling negative", "checked bed=14 tidaling=False"),
        ("bed 14. leak negative. tidaling positive.", "checked bed=14 air_leak=none tidaling=True"),
        ("bed 11 leak pos, tid neg", "checked bed=11 air_leak=present tidaling=False"),
        (
            "9 wall reg at 60 only, indicator not in range",
            "checked bed=9 wall_mmhg=60 suction_indicator=not_in_range",
        ),
        ("4 wall dropped to 50", "checked bed=4 wall_mmhg=50"),
        ("suction on bed 2 is 20", "checked bed=2 suction_cmh2o=20"),
        ("suction on 12 is 20", "checked bed=12 suction_cmh2o=20"),
        ("20 of suction on bed 2", "checked bed=2 suction_cmh2o=20"),
        ("the seal in bed 9 is at 2 and suction 20", "checked bed=9 seal_cm=2 suction_cmh2o=20"),
        ("bed 2 suction on", "incident bed=2 what=suction_on"),
    ],
)
def test_a_check_is_read_with_its_sign_and_of_its_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("text", ["suction bed 4 20", "4 reg called at 60", "12 wall 90 to 60"])
def test_a_number_that_may_be_bed_check_or_line_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("consultant has requested suction of 15 on bed 3", "ordered bed=3 suction_cmh2o=15"),
        ("dr lee ordered 20 of suction on bed 2", "ordered bed=2 suction_cmh2o=20"),
        ("team asked for suction minus 20 on 18", "ordered bed=18 suction_cmh2o=20"),
        ("registrar has asked for bed 8 to be on 15 suction", "ordered bed=8 suction_cmh2o=15"),
        ("surgeon would like suction at 20 on bed 9", "ordered bed=9 suction_cmh2o=20"),
    ],
)
def test_what_somebody_asks_for_is_an_order(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "surgeon wants bed 9 tube out",
        "md ordered 9 tube clamped",
        "dr ordered 9 back on suction",
        "surgeon would like bed 9 tube out",
        "consultant has requested a ct for bed 9",
        "the team has asked for the canister to be changed on 9",
    ],
)
def test_an_event_that_is_ordered_has_not_happened(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("17 kicked over his drain on the way to the bathroom", "incident bed=17 what=tipped"),
        ("cleaner kicked bed 9's box over at 1830", "incident bed=9 at=18:30 what=tipped"),
        ("16 canister is cracked and dripping", "incident bed=16 what=damaged"),
        ("15 canister has a crack down the side and is leaking", "incident bed=15 what=damaged"),
        ("bed 4 physio hang the drain above chest sia, put down alr", "incident bed=4 what=raised"),
        (
            "the suction regulator of 12 was turned off by mistake, i dont know how long",
            "incident bed=12 what=suction_off",
        ),
        ("per md 9 tube out at 1800", "removed bed=9 at=18:00"),
    ],
)
def test_a_mishap_is_read_with_how_it_came_and_what_came_of_it(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_mishap_is_told_around_a_bed_with_a_letter() -> None:
    assert (
        reading("visitor knocked 2B's box over at 1830", LETTERED) == "incident bed=2B at=18:30 what=tipped"
    )


@pytest.mark.parametrize(
    "text",
    [
        "17 almost kicked over his drain on the way to the bathroom",
        "if 17 kicks over his drain on the way to the bathroom call me",
        "17 on the way to the bathroom",
        "visitor nearly knocked bed 9's box over",
        "who kicked bed 4's drain over?",
        "16 canister could be cracked, its dripping",
        "16 cracked a rib and is dripping wet",
        "bed 9 iv pump cracked and dripping",
        "physio will hang the drain above chest on 4",
        "dont hang the drain above the chest bed 4",
        "suction regulator of 12 not turned off",
        "suction regulator of 12 to be turned off at 1800",
        "22 suction reg broken changed it",
    ],
)
def test_a_mishap_that_was_near_planned_denied_or_of_another_thing_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("19 to the OR just now for a washout", "away bed=19 at=19:05"),
        ("13 off the ward for an echo", "away bed=13"),
        ("bed 11 has come back from x-ray", "back bed=11"),
        ("5 to the OR for a lobectomy", "away bed=5"),
        ("5 off to theatre for a left thoracotomy", "away bed=5"),
        ("5 to the OR for tube removal", "away bed=5"),
    ],
)
def test_what_somebody_went_away_for_has_not_happened_yet(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "5 to the OR if it bleeds",
        "5 to the OR for washout tomorrow",
        "5 going to OR later for a washout",
        "5's wife off to the shop for a coffee",
        "is 5 off to theatre for a redo",
        "not going to the OR for a washout bed 5",
    ],
)
def test_going_away_that_lies_ahead_or_is_of_another_person_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "13 has a jp too, 30 out of that at 1900",
        "emptied the jp on bed 5, 30 ml at 1450",
        "bed 6 has an evd too, 12 out of that",
        "bed 6 has a bulb drain too, 12 out of that",
        "bed 2 emptied the foley, 400",
    ],
)
def test_an_amount_behind_another_device_may_be_of_it(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 5 foley emptied, chest tube 340 at 1900", "mark bed=5 at=19:00 level_ml=340"),
        ("bed 5 foley emptied, mark 340 at 1900", "mark bed=5 at=19:00 level_ml=340"),
        ("bed 3 has an ng and a jp, line 340 at 1900", "mark bed=3 at=19:00 level_ml=340"),
        ("20 uop 45, ct mark 880 at 1900", "mark bed=20 at=19:00 level_ml=880"),
    ],
)
def test_a_line_of_ours_is_read_beside_another_device(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 right drain clamped at 18:05 as per plan", "incident bed=9 tube=right at=18:05 what=clamped"),
        ("bed 1 left drain clamped 1815 as ordered", "incident bed=1 tube=left at=18:15 what=clamped"),
        ("bed 1 tube out at 1815 as planned", "removed bed=1 at=18:15"),
        ("bed 9 clamped per protocol at 1800", "incident bed=9 at=18:00 what=clamped"),
        ("9 going for ct as planned", "away bed=9"),
        ("suction order for bed 7 is 20", "ordered bed=7 suction_cmh2o=20"),
    ],
)
def test_an_event_that_was_carried_out_as_planned_has_happened(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "clamp bed 9 as per plan at 1800",
        "bed 9 to be clamped as per plan at 1800",
        "bed 9 to be clamped at 1800",
        "bed 9 for clamping",
        "bed 9 not clamped as planned",
        "will clamp 9 as per plan",
        "transfer 9 to 12 as planned",
    ],
)
def test_an_event_that_is_only_planned_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 canister tipped when we turned him, its back up", "incident bed=7 what=tipped"),
        ("bed 2 drain up on the bed with him, moved it down below chest", "incident bed=2 what=raised"),
        ("bed 9 kicked his drain over going to the loo", "incident bed=9 what=tipped"),
        (
            "21's tube got stepped on and kinked under the bed wheel 1805",
            "incident bed=21 at=18:05 what=kinked",
        ),
        ("6 lyin on the tube its kinked", "incident bed=6 what=kinked"),
        (
            "family member tripped over tubing of bed 21 and its come disconnected",
            "incident bed=21 what=disconnected",
        ),
        ("4 seal down to 1 cm", "checked bed=4 seal_cm=1"),
        ("9 seal 1 cm needs topping up, no leak", "checked bed=9 seal_cm=1 air_leak=none"),
        ("21 drainage is bloody now", "checked bed=21 at=19:05 fluid=sanguineous"),
        ("bed 2 drainage went from serous to bloody at 1850", "checked bed=2 at=18:50 fluid=sanguineous"),
        ("bed 2 drainage went from bloody to serous at 1850", "checked bed=2 at=18:50 fluid=serous"),
        ("21 bloody this evening", "checked bed=21 fluid=sanguineous"),
        ("nothing out of 23 since the last mark", "drained bed=23 volume_ml=0"),
        ("bed 9 right lower lobectomy, level 340", "mark bed=9 level_ml=340; described bed=9 reason=lung"),
    ],
)
def test_a_remark_beside_a_mishap_or_a_check_changes_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 21 tripped over his tube",
        "9 going to the loo",
        "9 needs topping up",
        "moved it to bed 5",
        "2 210 drainage is bloody",
        "21 bloody yesterday morning",
        "21 is 340 this morning, bloody",
        "60 out of 5 since the last mark",
    ],
)
def test_a_remark_without_a_mishap_or_a_number_that_may_be_two_things_is_asked(text: str) -> None:
    assert "ask " in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12's collection box got knocked off the hook by the cleaner", "incident bed=12 what=tipped"),
        ("17 has his drain in the bed with him above chest height", "incident bed=17 what=raised"),
        ("bed 20 drain came unplugged from suction", "incident bed=20 what=suction_off"),
        ("bed 13 chest tube completely out on the floor", "incident bed=13 what=dislodged"),
        ("22 back upstairs at 1850", "back bed=22 at=18:50"),
        ("bed 19 dc'd to home with family", "left bed=19"),
        ("per dr shah 7 to be on 10 of suction", "ordered bed=7 suction_cmh2o=10"),
        ("per dr shah 7 tube out at 1800", "removed bed=7 at=18:00"),
        ("new drain in bed 5 at 1800", "placed bed=5 at=18:00"),
        ("23 reason for drain is empyema", "described bed=23 reason=effusion"),
        ("bed 8 gsw, R 36fr ct placed at 1740", "placed bed=8 tube=right at=17:40 reason=trauma"),
        (
            "chest tube placed bed 19 rt at 1855 for ptx, 14 fr",
            "placed bed=19 tube=right at=18:55 reason=air",
        ),
    ],
)
def test_events_of_a_second_round_are_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 13 chest tube almost completely out",
        "not disconnected from suction bed 9",
        "bed 9 will be disconnected from suction for walk",
        "dressing came off the drain on 9",
        "his gown came off the connector 9",
        "9 iv bag fell off the pole",
        "family signed out 23 ama",
        "bed 14 fr placed",
    ],
)
def test_what_only_looks_like_such_an_event_is_asked(text: str) -> None:
    assert reading(text).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 5 wall was 60 now 90", "checked bed=5 at=19:05 wall_mmhg=90"),
        ("bed 5 suction was 10 now 20", "checked bed=5 at=19:05 suction_cmh2o=20"),
        ("seal 1.5 on bed 1, filled to 2", "checked bed=1 seal_cm=2"),
        ("8 water seal was 1.5 now 2", "checked bed=8 at=19:05 seal_cm=2"),
        ("wall 60 on bed 4, turned up to 90", "checked bed=4 wall_mmhg=90"),
        (
            "suction 10 on bed 4, 300 at 1900",
            "mark bed=4 at=19:00 level_ml=300; checked bed=4 at=19:00 suction_cmh2o=10",
        ),
        ("bed 13 pigtail catheter drained 500", "drained bed=13 volume_ml=500"),
        ("12 weight 80 kg up 2 kg", "described bed=12 weight_kg=80"),
        ("per dr lee 9 clamped at 1800", "incident bed=9 at=18:00 what=clamped"),
    ],
)
def test_what_a_check_was_is_not_what_it_is(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "12 weight up 2 kg",
        "12 got a liter at 1800",
        "per dr lee clamp 9 at 1800",
        "bed 13 catheter drained 500",
    ],
)
def test_a_change_of_weight_what_may_be_of_something_else_and_an_order_to_clamp_are_asked(text: str) -> None:
    assert reading(text).startswith("ask ")
