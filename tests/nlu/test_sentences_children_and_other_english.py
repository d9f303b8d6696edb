"""Children's wards, thoracic nights, and nurses whose English is a second language."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 16 drain is remove at 1830", "removed bed=16 at=18:30"),
        ("bed 16 drain has been remove at 1830", "removed bed=16 at=18:30"),
        ("bed 20 drain come out at 1830", "removed bed=20 at=18:30"),
        ("bed 10 the doctor remove the drain at 18h30, final 180", "removed bed=10 at=18:30 level_ml=180"),
        ("consultant say suction 10 for bed 3", "ordered bed=3 suction_cmh2o=10"),
        ("doctor want suction 10 for 18", "ordered bed=18 suction_cmh2o=10"),
        ("bed 5 fluid look milky, doctor know", "checked bed=5 fluid=chylous"),
        ("bed 2 no have bubble, is swing", "checked bed=2 air_leak=none tidaling=True"),
        ("bed 9 bottle is change at 1830, old was 1890", "exchanged bed=9 at=18:30 final_ml=1890"),
        ("we change the bottle bed 9 at 1830, old was 1890", "exchanged bed=9 at=18:30 final_ml=1890"),
        ("bed 7 tube is clamp at 1830 by doctor", "incident bed=7 at=18:30 what=clamped"),
        ("bed 22 is discharge at 1815", "left bed=22 at=18:15"),
        ("bed 22 patient go home 1815", "left bed=22 at=18:15"),
        ("bed 1 patient go to CT 18:40, come back 19:00", "away bed=1 at=18:40; back bed=1 at=19:00"),
        ("bed 7 is having 310 ml at 1900", "mark bed=7 at=19:00 level_ml=310"),
    ],
)
def test_a_verb_without_its_ending_is_read_as_it_is_meant(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("plan is remove drain bed 7", "ask kind"),
        ("doctor say remove drain bed 7", "ask kind"),
        ("doctor want remove drain bed 7 tomorrow", "ask kind"),
        ("if doctor remove the drain bed 7 i tell you", "ask kind"),
        ("can doctor remove the drain bed 7", "ask kind"),
        ("did doctor remove the drain bed 7", "ask kind"),
        ("is drain bed 7 remove?", "ask kind"),
        ("bed 9 drain is not remove, still 310", "ask kind; ask kind"),
        ("bed 9 drain will be remove at 2300", "ask kind"),
        ("bed 9 patient go home tomorrow", "ask kind"),
        ("bed 9 patient go home today", "ask level_ml"),
        ("we change the bottle bed 9 every night at 1800", "ask final_ml"),
        ("bed 9 has discharge from wound, 310 at 1900", "ask kind"),
        ("do we change bottle bed 9 at 1800", "ask kind"),
        (
            "last marks b4 i go: 4 75, 7 330",
            "mark bed=4 level_ml=75 closing; mark bed=7 level_ml=330 closing",
        ),
    ],
)
def test_what_is_wished_asked_or_planned_stays_so(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 4 kiddo 62 at 1900", "mark bed=4 at=19:00 level_ml=62"),
        ("bub in 4 rolled, 62 at 1900", "mark bed=4 at=19:00 level_ml=62"),
        ("4 bub weight 2.9 kg", "described bed=4 weight_kg=2.9"),
        ("bub 10 nil drained last 2 hrs", "drained bed=10 volume_ml=0"),
        ("12 bubba: drain 24 @ 1900, settled", "mark bed=12 at=19:00 level_ml=24"),
        ("wee man in 3 off to CT 1855", "away bed=3 at=18:55"),
        ("sweet pea in 2: 3 mls at 1850", "mark bed=2 at=18:50 level_ml=3"),
        (
            "bed 8 CHD kid, 110 at 1900, no leak",
            "mark bed=8 at=19:00 level_ml=110; checked bed=8 at=19:00 air_leak=none",
        ),
        ("16 lung guy 430 at 1900", "mark bed=16 at=19:00 level_ml=430"),
        ("toddler in 7 pulled his drain out at 1900", "incident bed=7 at=19:00 what=dislodged"),
        ("bed 2 thats 7 ml/kg/hr, mark is 112 at 1900", "mark bed=2 at=19:00 level_ml=112"),
        ("bed 2 112 at 1900 (7 ml/kg/hr)", "mark bed=2 at=19:00 level_ml=112"),
    ],
)
def test_a_child_is_the_patient_and_a_rate_for_its_weight_no_line(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "12 bub, swing, 62 at 1900",
            "mark bed=12 at=19:00 level_ml=62; checked bed=12 at=19:00 air_leak=present tidaling=True",
        ),
        ("12 swing no bub 62", "mark bed=12 level_ml=62; checked bed=12 air_leak=none tidaling=True"),
        ("bed 4 lady 62 at 1900", "ask level_ml"),
        ("bed 4 kid 12, drain 62 at 1900", "ask level_ml"),
        ("bed 4 lady 62, drain 340", "ask level_ml"),
        ("kid 12 bed 4 62 at 1900", "ask bed"),
        ("bed 2 7 ml/kg/hr", "ask level_ml"),
        ("9 640 ml/kg at 1850", "ask level_ml"),
        ("his kid kicked over the box in 4", "incident bed=4 what=tipped"),
    ],
)
def test_an_age_bubbling_or_a_child_of_a_visitor_stays_what_it_is(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 7 bottle full, changed at 1830, was 1875", "exchanged bed=7 at=18:30 final_ml=1875"),
        (
            "bed 7 drain bag got full so same has been changed, it was having 1950 ml",
            "exchanged bed=7 final_ml=1950",
        ),
        (
            "the box of bed 22 it is full, i changed, was 1990, time 06:20 pm",
            "exchanged bed=22 at=18:20 final_ml=1990",
        ),
        ("bed 7 box full, changed, new one at 20", "exchanged bed=7; mark bed=7 level_ml=20"),
        (
            "Bed 7 I change container 1830, in old was 1875 ml, new begin from 0",
            "exchanged bed=7 at=18:30 final_ml=1875 opening_ml=0",
        ),
        ("bed 6 new can 30 at 1830", "mark bed=6 at=18:30 level_ml=30"),
        ("bed 6 new box already 55 at 18:30", "mark bed=6 at=18:30 level_ml=55"),
        (
            "7 seal topped off to 2, sx -20, wall 100, tidaling",
            "checked bed=7 seal_cm=2 suction_cmh2o=20 wall_mmhg=100 tidaling=True",
        ),
    ],
)
def test_a_full_box_that_was_changed_is_an_exchange(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("new bottle bed 7 is 10 now", "ask final_ml"),
        ("bed 7 it has been changed, it had 1950 ml", "ask level_ml"),
        ("bed 7 changed, was 1875", "ask level_ml"),
        ("bed 7 box full, not changed yet, 1875", "mark bed=7 level_ml=1875"),
        ("bed 7 box is full, needs to be changed, 1875", "mark bed=7 level_ml=1875"),
        ("bed 6 new can 30 at 1830, old 1980", "ask final_ml"),
        ("bed 6 new bottle 1980 at 1830", "ask final_ml"),
        ("bed 6 new can 12 at 1830", "ask final_ml"),
        ("new can, 20", "ask final_ml"),
        ("new box bed 20", "exchanged bed=20"),
    ],
)
def test_what_was_changed_is_asked_where_it_is_not_said(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bed 5 no fluctuation is there, doctor informed", "checked bed=5 tidaling=False"),
        ("bed 5 swing is there, no bubbling", "checked bed=5 air_leak=none tidaling=True"),
        ("bed 22 please write 310 at 19:00", "mark bed=22 at=19:00 level_ml=310"),
        ("PICU 4: line 36 at 1900", "mark bed=4 at=19:00 level_ml=36"),
        ("bed 12 I told 450 at 6 pm but actual is 405", "corrected bed=12 at=18:00 was_ml=450 level_ml=405"),
        ("suction on 8 down to 10", "checked bed=8 suction_cmh2o=10"),
        (
            "somebody left 19 off suction, back on at 1810",
            "incident bed=19 what=suction_off; incident bed=19 at=18:10 what=suction_on",
        ),
        (
            "19 was left off suction after CT, back on at 1810",
            "incident bed=19 what=suction_off; incident bed=19 at=18:10 what=suction_on",
        ),
        ("we took off the drain of bed 5 at 18:30, it had 260", "removed bed=5 at=18:30 level_ml=260"),
        (
            "patient of bed 12 received back from OT 19:00, drain 60",
            "back bed=12 at=19:00; mark bed=12 at=19:00 level_ml=60",
        ),
        ("3 confused, tugging. tube dressing reinforced. 145 at 1900", "mark bed=3 at=19:00 level_ml=145"),
        ("bed 1 on bipap, 240 @ 1900", "mark bed=1 at=19:00 level_ml=240"),
        (
            "bed 9 chest open, drain 140 at 1830, dark red w clots",
            "mark bed=9 at=18:30 level_ml=140; checked bed=9 at=18:30 fluid=dark_red",
        ),
        (
            "6 is 410 @ 1900, pink, swing good",
            "mark bed=6 at=19:00 level_ml=410; checked bed=6 at=19:00 tidaling=True fluid=serosanguineous",
        ),
        (
            "bed 20 pleurodesis, 120 @ 1900, sx -20, no leak",
            "mark bed=20 at=19:00 level_ml=120; checked bed=20 at=19:00 suction_cmh2o=20 air_leak=none",
        ),
        ("22 700 at 1900 and the rate is slowing", "mark bed=22 at=19:00 level_ml=700"),
        (
            "bed 10 drain removed today morning 6:30 am only, final 280",
            "removed bed=10 at=06:30 level_ml=280",
        ),
        ("bed 24, in drain is 410, hour 18:00", "mark bed=24 at=18:00 level_ml=410"),
        ("bed 18 640 at 18:00 clock", "mark bed=18 at=18:00 level_ml=640"),
        ("kindly update bed 18 - 1270 ml, time 19:00 hrs", "mark bed=18 at=19:00 level_ml=1270"),
        (
            "Suction is kept at 20 for bed 23, column is moving",
            "checked bed=23 suction_cmh2o=20 tidaling=True",
        ),
        ("doctor want suction 10 for 18 khalas", "ordered bed=18 suction_cmh2o=10"),
        ("bed 4 tubing is getting kinked under patient", "incident bed=4 what=kinked"),
        ("bed 20 nothing came out since 17:00", "drained bed=20 volume_ml=0"),
        (
            "bed 4 drain nothing this hour, bloody",
            "drained bed=4 volume_ml=0; checked bed=4 fluid=sanguineous",
        ),
        (
            "bed 4 liquid is yellow clear, 120 at 19h",
            "mark bed=4 at=19:00 level_ml=120; checked bed=4 at=19:00 fluid=serous",
        ),
        (
            "bed 18 suction 10 now, bubble is small, little bubble",
            "checked bed=18 at=19:05 suction_cmh2o=10 air_leak=present",
        ),
        ("17 1975 at 1900 need to swap", "mark bed=17 at=19:00 level_ml=1975"),
        ("6 waterseal since 1800, no leak", "checked bed=6 suction_cmh2o=0 air_leak=none"),
        ("urine for 8 is 22 this hr, chest tube bed 8 at 26", "mark bed=8 level_ml=26"),
    ],
)
def test_what_is_put_otherwise_abroad_is_read(text: str, told: str) -> None:
    assert reading(text) == told


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("is there a leak in 5", "asked bed=5 topic=checks"),
        ("bed 5 what leak is there", "asked bed=5 topic=checks"),
        ("i'm confused 3 145 at 1900", "ask level_ml"),
        ("suction on 8 not down to 10", "ask kind"),
        ("suction gauge on the wall for bed 5 was down to 60, now at 90", "ask level_ml"),
        ("bed 1 dressing weighed, 240", "ask kind"),
        ("bed 1 nappy weighed 240", "ask kind"),
        ("23 tube completely out 1835, occlusive drsg on, 180", "ask kind"),
        ("10 xray neg PTX, CT 65mL @1835, seal ok", "ask level_ml"),
        ("10 R 22 L 14, other way round", "ask level_ml"),
        ("24 flutter valve, no box", "ask kind"),
        ("bed 5 premmie, 2.1kg, drain 3 at 1900", "ask kind"),
        ("10 leaking around the site, dressing changed, 22 at 1900", "ask level_ml"),
        ("bed 21 decort, 2 tubes y'd together 410 at 1900", "mark bed=21 at=19:00 level_ml=410"),
        ("we took off the drain dressing of bed 5 at 18:30", "ask level_ml"),
        ("is bed 9 slowing", "asked bed=9 topic=trend"),
        ("bed 12 last hour 18:00 455", "mark bed=12 at=18:00 level_ml=455"),
        ("bed 7 drain for removal today evening", "ask level_ml"),
        ("bed 7 urine container full, changed at 1830, was 1875", "ask kind"),
        ("urine for 8 is 22 this hr, chest tube bed 8 26", "ask level_ml"),
        ("24 turned and dumped, 780 now", "ask volume_ml"),
        ("16 430 at 1900, leak 3 tonight", "ask level_ml"),
        ("Kiddo in 9 pulled the suction tubing off, back on at 20 now", "ask kind"),
        ("bed 5 given po, na 138", ""),
        ("bed 6 fluid was clear yellow now is pink", "ask kind"),
        ("bed 6 fluid was clear yellow now is bright red", "checked bed=6 at=19:05 fluid=bright_red"),
        (
            "bed 11's drain fell over at 14:20, nothing came out of the top, and it's upright again",
            "incident bed=11 at=14:20 what=tipped",
        ),
        ("bed 13 drain not drain nothing, still 290, I check 4:00", "mark bed=13 at=16:00 level_ml=290"),
        ("bed 9: we change it at 1800", "ask kind"),
        ("we change it at 1800 on bed 9", "ask kind"),
    ],
)
def test_what_only_looks_like_it_is_left_or_asked(text: str, told: str) -> None:
    assert reading(text) == told
