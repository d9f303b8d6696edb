"""Why, what for and amid what something happened changes nothing of what is told; a doubt does."""

from __future__ import annotations

import pytest

from tests.nlu.saying import Channel, reading

CLAMPED = "incident bed=7 at=18:10 what=clamped"


@pytest.mark.parametrize(
    "phrase",
    [
        "so the lytics can sit",
        "ahead of the talc going in",
        "because she was coughing hard and chest got tight",
        "to check where the air is getting in",
        "while the reg takes a sample off the port",
        "for the portable film",
        "due to hypotension after draining fast",
        "as the pain was too bad for him",
        "post alteplase dose per protocol",
        "on the consultant's say so",
        "when the pain eased off",
        "as soon as the film was finished",
        "in view of poor expansion",
        "cos the sats weren't great",
    ],
)
@pytest.mark.parametrize(
    "told", ["bed 7 tube clamped at 1810 {}", "clamped 7 at 1810 {}", "7 clamped 1810 {}"]
)
def test_why_a_tube_was_clamped_is_no_more_than_that(told: str, phrase: str) -> None:
    assert reading(told.format(phrase)) == CLAMPED


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("clamped 7 so the lytics can sit at 1810", CLAMPED),
        ("clamped 7, as he was out for a walk at 1810", CLAMPED),
        ("clamped 7 at 1810, as per consultant plan this am", CLAMPED),
        ("7 unclamped, as soon as the dressing was done at 1810", "incident bed=7 at=18:10 what=unclamped"),
        ("swapped the box on bed 7 at 1810 because suction control was faulty", "exchanged bed=7 at=18:10"),
        (
            "bed 7 new canister at 1810 before going to OR, final level 875",
            "exchanged bed=7 at=18:10 final_ml=875",
        ),
        ("bed 7 moved to bed 8 because AC broken at 1810", "moved bed=7 at=18:10 to_bed=8"),
        (
            "changed canister on 7 at 1810 as it was getting close to the top, old one 1820",
            "exchanged bed=7 at=18:10 final_ml=1820",
        ),
        (
            "7 canister changed at 1810, old 1820 as empties had run out earlier",
            "exchanged bed=7 at=18:10 final_ml=1820",
        ),
        (
            "bed 7 new canister at 1810 ahead of transport so it won't fill on the way, final level 1560",
            "exchanged bed=7 at=18:10 final_ml=1560",
        ),
        ("changed canister on 7 at 1810 to a larger one", "exchanged bed=7 at=18:10"),
        ("tube out on 7 at 1810 since it had stopped being useful", "removed bed=7 at=18:10"),
        (
            "bed 7 chest tube pulled at 1810 as not required anymore, final 340",
            "removed bed=7 at=18:10 level_ml=340",
        ),
        (
            "bed 7 chest tube pulled at 1810 ahead of the tunnelled catheter, final 340",
            "removed bed=7 at=18:10 level_ml=340",
        ),
        ("7 off to CT at 1810 with the box kept below chest level", "away bed=7 at=18:10"),
        ("bed 7 gone to theatre 1810 as fluid is not clearing", "away bed=7 at=18:10"),
        ("7 back at 1810 early because he couldn't lie flat", "back bed=7 at=18:10"),
        ("bed 7 back from CT at 1810 escorted by RN Mbeki", "back bed=7 at=18:10"),
        ("7 left the ward at 1810 home with the ambulatory bag", "left bed=7 at=18:10"),
        ("bed 7 transferred out at 1810 to cardiac unit under Dr Rasmussen", "left bed=7 at=18:10"),
        ("bed 7 transferred out at 1810 by air with the flying doctors", "left bed=7 at=18:10"),
        ("moved 7 to 8 at 1810 to be nearer the desk", "moved bed=7 at=18:10 to_bed=8"),
        ("bed 7 moved to bed 8 due to flu contact at 1810", "moved bed=7 at=18:10 to_bed=8"),
        ("drain tipped on 7 during the linen change at 1810", "incident bed=7 at=18:10 what=tipped"),
        (
            "7 tubing came apart at 1810 during the transfer to chair",
            "incident bed=7 at=18:10 what=disconnected",
        ),
        (
            "suction off on 7 at 1810 since the vacuum failed across the whole ward",
            "incident bed=7 at=18:10 what=suction_off",
        ),
        ("put 7 back on suction to help lung to expand at 1810", "incident bed=7 at=18:10 what=suction_on"),
        ("7 suction 20 ordered over the phone by thoracic on call", "ordered bed=7 suction_cmh2o=20"),
        ("dr ordered suction 20 on bed 7 to get rid of the residual air", "ordered bed=7 suction_cmh2o=20"),
    ],
)
def test_why_and_amid_what_it_happened_changes_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("took 7 off suction at 1710 so he can walk to the loo", "incident bed=7 at=17:10 what=suction_off"),
        ("took bed 7 off suction at 1710", "incident bed=7 at=17:10 what=suction_off"),
        ("7 off suction 1710", "checked bed=7 at=17:10 suction_cmh2o=0"),
        ("7 off suction at 1710 for CT", "checked bed=7 at=17:10 suction_cmh2o=0"),
        ("took 7 off suction", "ask kind"),
        ("7 off suction, 1710", "ask kind"),
        ("7 off suction 340", "ask kind"),
    ],
)
def test_who_was_taken_off_suction_and_when(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "channel", "read"),
    [
        ("clamped bed seven at ten past six for the lytics to sit", "voice", CLAMPED),
        (
            "changed the canister on bed seven at ten past six because it was nearly full, the old one was"
            " at eighteen twenty",
            "voice",
            "exchanged bed=7 at=18:10 final_ml=1820",
        ),
        ("bed seven off to ct at ten past six as per the chest physician", "voice", "away bed=7 at=18:10"),
        ("bed seven clamped at ten past six by tin", "voice", "ask kind"),
        ("bed seven clamped at ten past six since won", "voice", "ask kind"),
    ],
)
def test_it_changes_nothing_of_what_is_dictated(text: str, channel: Channel, read: str) -> None:
    assert reading(text, channel=channel) == read


@pytest.mark.parametrize(
    "text",
    [
        "7 to be clamped at 1810 so the lytics can sit",
        "7 for clamping at 1810 because the reg wants a film",
        "didn't clamp 7 at 1810 because the reg never came",
        "7 clamped at 1810 because reg wanted it, but never did it",
        "7 clamped at 1810 as the reg asked then changed his mind",
        "7 clamped at 1810 as planned for tomorrow",
        "7 clamped at 1810 per plan if film ok",
        "7 clamped at 1810 so why is it open",
        "7 clamped at 1810 so the doctor wants it open",
        "7 clamped ahead of his film at 1810",
        "7 suction off to walk",
        "7 clamped? at 1810 per IR",
        "7 clamped at 1810 per the chart",
        "7 clamped at 1810 as the chart says",
        "7 clamped at 1810 as noted by days",
        "7 clamped at 1810 because the student wrote it",
        "7 clamped at 1810 because it was pouring",
        "7 clamped at 1810 as the drain fell out",
        "7 tube clamped at 1810 post feed",
        "7 tube out at 1810 ahead of his swallow test",
        "7 tube out at 1810 as per the plan on monday",
        "7 tube out at 1810 as tolerating fluids",
        "7 tube unclamped at 1810 due to distension",
        "changed bottle on 7 at 1810 because water bottle was empty",
        "7 left the ward at 1810 to smoke",
        "7 left the ward at 1810 for a walk with his wife",
        "7 left the ward at 1810 because he wanted a coffee",
        "7 tube out at 1810 because the suture failed",
        "7 tube came out at 1810 when turning him",
        "7 chest tube pulled at 1810 to straighten it",
        "7 chest tube pulled at 1810 for comfort",
        "changed canister on 7 at 1810 as the suction one was full",
        "changed canister on 7 at 1810 because of all the vomit",
        "7 suction off at 1810 as we needed it for his mouth",
        "moved 7 to 8 at 1810 once it is clean",
        "7 off to CT as soon as porter is here",
        "ok back in with a light, bed 7 1050 at 1800",
        "7 tube out at 1810, 1220 total since midnight",
        "dr ordered suction 20 on bed 7 as needed",
        "dr ordered suction 20 on bed 7 once back",
    ],
)
def test_what_may_be_planned_or_of_something_else_is_asked(text: str) -> None:
    assert "ask" in reading(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 off to CT at 1810 for a drain insertion", "away bed=7 at=18:10"),
        ("7 clamped at 1810 for drain insertion", CLAMPED),
        ("tube removed 7 at 1810, as he is going home", "removed bed=7 at=18:10"),
        (
            "bed 7 chest tube dislodged at 1810 when he turned over",
            "incident bed=7 at=18:10 what=dislodged",
        ),
        ("7 canister turned over at 1810", "incident bed=7 at=18:10 what=tipped"),
    ],
)
def test_what_is_only_to_be_put_in_and_who_turned_over_is_no_event_of_a_drain(text: str, read: str) -> None:
    assert reading(text) == read
