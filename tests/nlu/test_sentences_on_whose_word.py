"""Words around an event or a line that change nothing of it: on whose word, how far, of what a scan."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("left drain in 4 clamped at 18:40 as advised", "incident bed=4 tube=left at=18:40 what=clamped"),
        ("4 clamped 1840 as instructed, was coughing", "incident bed=4 at=18:40 what=clamped"),
        ("4 clamped at 1840 on dr's advice", "incident bed=4 at=18:40 what=clamped"),
        ("4 unclamped as discussed", "incident bed=4 what=unclamped"),
        ("4 tube removed as advised 1840 final 200", "removed bed=4 at=18:40 level_ml=200"),
        ("4 advised to clamp", "ask kind"),
        ("4 clamp as advised", "ask kind"),
        ("dr advised 4 be clamped", "ask kind"),
        ("surgeon recommends suction 10 on 4", "ordered bed=4 suction_cmh2o=10"),
        ("4 clamped 1840, advised to unclamp at 2000", "ask kind"),
    ],
)
def test_on_whose_word_it_was_done_says_nothing_more_and_advice_is_an_order(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 20 - dr ordered decrease suction to 10", "ordered bed=20 suction_cmh2o=10"),
        ("20 orders to increase suction to 20", "ordered bed=20 suction_cmh2o=20"),
        ("20 reg says turn suction down to 10", "ordered bed=20 suction_cmh2o=10"),
        (
            "Surgeon round. 15 to go on suction, 20 cm, ordered at 17:30",
            "ordered bed=15 at=17:30 suction_cmh2o=20",
        ),
        ("ordered 1730: 15 to go on suction 20", "ordered bed=15 at=17:30 suction_cmh2o=20"),
        ("15 to go on suction at 20 per surgeon", "ordered bed=15 suction_cmh2o=20"),
        ("15 to go on suction 20 tomorrow", "ask kind"),
        ("20 increase suction to 20", "ask kind"),
        ("20 will increase suction to 20", "ask kind"),
        ("20 dr ordered stop suction", "ask kind"),
    ],
)
def test_what_is_to_be_done_to_the_dial_is_the_order(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 off for CT chest", "away bed=4"),
        ("4 gone for CT head 1840", "away bed=4 at=18:40"),
        ("4 back from MRI head 1830", "back bed=4 at=18:30"),
        ("4 went for a scan of her chest 1845", "away bed=4 at=18:45"),
        ("4 off for CT chest tube clamped for transport", "away bed=4; incident bed=4 what=clamped"),
        ("4 off for CT chest 340", "ask kind"),
        ("bed 6 went to the OR at 1750, not back yet", "away bed=6 at=17:50"),
        ("8 went to ICU from theatre, not coming back to us", "left bed=8"),
        ("4 to theatre 1300 hasn't come back yet", "away bed=4 at=13:00"),
        ("4 not back from CT yet", "ask kind"),
        ("4 has not gone to CT yet", "ask kind"),
    ],
)
def test_of_what_a_scan_is_taken_and_who_is_not_back_change_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("4 pt up to toilet, drain held above chest for a bit sorry", "incident bed=4 what=raised"),
        ("4 canister was being held higher than the chest", "incident bed=4 what=raised"),
        ("4 drain left above chest on the bed table", "incident bed=4 what=raised"),
        ("4 drain not held above the chest", "ask kind"),
        ("4 chest tube has slipped half out!!", "incident bed=4 what=dislodged"),
        ("4 right drain has slid partly out at 1840", "incident bed=4 tube=right at=18:40 what=dislodged"),
        ("4 drain worked its way half out", "incident bed=4 what=dislodged"),
        ("4 iv slipped half out", "ask kind"),
        ("4 tube is nearly half out", "ask kind"),
        ("4 drain left clamped", "incident bed=4 tube=left what=clamped"),
    ],
)
def test_how_it_was_held_and_how_far_it_slipped(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "9 dumped when we turned him. line 1590 at 1845, dark old blood",
            "mark bed=9 at=18:45 level_ml=1590; checked bed=9 at=18:45 fluid=dark_red",
        ),
        ("when was 9 dumped. line 1590", "ask level_ml"),
        (
            "20 L 1050 6pm w/ intermittent bubbling",
            "mark bed=20 tube=left at=18:00 level_ml=1050; "
            "checked bed=20 tube=left at=18:00 air_leak=intermittent",
        ),
        (
            "7 340 at 1830 w/o leak",
            "mark bed=7 at=18:30 level_ml=340; checked bed=7 at=18:30 air_leak=none",
        ),
        ("7 340 w/c to scan", "ask kind"),
    ],
)
def test_on_what_it_came_and_with_what(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7 450 he has out of his foley", ""),
        ("bed 7 450 she put out of her foley", ""),
        ("bed 7 450 came from his ng", ""),
        ("bed 7 line 900, 450 out of his foley", "mark bed=7 level_ml=900"),
        ("7 450 out of his drain", "drained bed=7 volume_ml=450"),
        ("12 65 yr old post op heart", "described bed=12 reason=cardiac"),
        (
            "12 65 yo post op heart 340 at 1830",
            "mark bed=12 at=18:30 level_ml=340; described bed=12 reason=cardiac",
        ),
        ("12 is 65, post op heart", "described bed=12 reason=cardiac; ask level_ml"),
        ("12, 65, post op heart", "described bed=12 reason=cardiac; ask level_ml"),
        ("4 72 cabg", "described bed=4 reason=cardiac; ask level_ml"),
        ("12 is 640, post op heart", "mark bed=12 level_ml=640; described bed=12 reason=cardiac"),
        ("12 line is 65, post op heart", "mark bed=12 level_ml=65; described bed=12 reason=cardiac"),
        ("12 is a post op heart, 65", "mark bed=12 level_ml=65; described bed=12 reason=cardiac"),
    ],
)
def test_what_came_of_another_device_and_an_age_are_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 sent to ICU bed 12 at 1800", "left bed=8 at=18:00"),
        ("18 transferred to HDU bed 3 at 1800", "left bed=18 at=18:00"),
        ("17 stepped down to ward 5 at 1830", "left bed=17 at=18:30"),
        ("8 went to ward 7 bed 2 1800", "left bed=8 at=18:00"),
        ("8 moved to 5 west", "left bed=8"),
        ("8 transferred to 4N at 1800", "left bed=8 at=18:00"),
        ("18 sent to the other hospital, left 1715", "left bed=18 at=17:15"),
        ("8 moved to bed 5", "moved bed=8 to_bed=5"),
        ("8 transferred to room 12 at 1800", "moved bed=8 at=18:00 to_bed=12"),
        ("8 transferred in from ward 7, line 340", "ask level_ml"),
        (
            "18 right 300 left 1715",
            "mark bed=18 tube=right level_ml=300; mark bed=18 tube=left level_ml=1715",
        ),
    ],
)
def test_a_number_of_another_ward_is_no_bed_and_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 mark 610 at 1845, pain 4/10, gave paracetamol 1g", "mark bed=12 at=18:45 level_ml=610"),
        ("12 610 at 1845, gave 5mg oxy", "mark bed=12 at=18:45 level_ml=610"),
        ("14 on 5 l o2, drain 340 at 1830", "mark bed=14 at=18:30 level_ml=340"),
        ("14 340 at 1830 on 2L nc sats 94", "mark bed=14 at=18:30 level_ml=340"),
        ("6 1050 at 1845 no complaints", "mark bed=6 at=18:45 level_ml=1050"),
        ("Bed 11 ICD in situ, 480 ml at 6 pm", "mark bed=11 at=18:00 level_ml=480"),
        ("19 line 690 same as before", "mark bed=19 level_ml=690"),
        ("19 690 at 1830 unchanged", "mark bed=19 at=18:30 level_ml=690"),
        ("18 nil by mouth, drain 610 at 1830", "mark bed=18 at=18:30 level_ml=610"),
        ("18 nil since 1800", "drained bed=18 volume_ml=0"),
        ("12 610 g at 1845", "ask level_ml"),
        ("12 1050 no change", "ask volume_ml"),
        ("bed 7 3 l at 1830", "mark bed=7 at=18:30 level_ml=3000"),
    ],
)
def test_what_was_given_or_breathed_is_no_line_and_remarks_leave_one_alone(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 surgeon wants -10", "ordered bed=7 suction_cmh2o=10"),
        ("7 surgeon wants -20 at 1830", "ordered bed=7 at=18:30 suction_cmh2o=20"),
        ("7 surgeon wants 10", "ask level_ml"),
        ("doctor ordered suction off on 9", "ordered bed=9 suction_cmh2o=0"),
        ("24 clamp trial started 1800 as ordered", "incident bed=24 at=18:00 what=clamped"),
        ("24 ordered for clamp trial tomorrow 0600", "ask kind"),
        ("9 dumped on turning, line 1590 at 1855", "mark bed=9 at=18:55 level_ml=1590"),
        ("9 drained 60 on turning", "drained bed=9 volume_ml=60"),
        ("16 suction tubing fell off wall for maybe 10 min", "incident bed=16 what=suction_off"),
        ("9 removed his own drain, confused", "incident bed=9 what=dislodged"),
    ],
)
def test_orders_and_mishaps_as_nurses_tell_them(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 bright red 200 in last hr", "drained bed=7 volume_ml=200; checked bed=7 fluid=bright_red"),
        ("7 200 in the last hour", "drained bed=7 volume_ml=200"),
        ("bed 7 200 over the last 2 hours", "drained bed=7 volume_ml=200"),
        ("7 line 840, up 60 in the last hour", "mark bed=7 level_ml=840"),
        ("bed 11 45 ml last hour", "ask level_ml"),
        ("40 mls out of 12 in last hr", "ask level_ml"),
        ("how much in the last hour 7", "asked bed=7 topic=total window=1h"),
        ("7 foley 200 in the last hour", "ask bed"),
    ],
)
def test_what_came_in_the_last_hour_is_an_amount(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("6 asleep after 2 stories, drain 162", "mark bed=6 level_ml=162"),
        ("6 had 2 popsicles, drain 162", "mark bed=6 level_ml=162"),
        ("6 did 4 lengths of the corridor, drain 162", "mark bed=6 level_ml=162"),
        ("2 drains 9", "ask bed"),
        (
            "Rm 14 780ml @1840 sl. bloody",
            "mark bed=14 at=18:40 level_ml=780; checked bed=14 at=18:40 fluid=sanguineous",
        ),
        (
            "14 780 at 1840, cont. bubbling",
            "mark bed=14 at=18:40 level_ml=780; checked bed=14 at=18:40 air_leak=continuous",
        ),
        (
            "14 780 at 1840 mildly bloody",
            "mark bed=14 at=18:40 level_ml=780; checked bed=14 at=18:40 fluid=sanguineous",
        ),
        ("14 780 at 1840 not very bloody", "ask level_ml"),
        ("14 approx. 780 at 1840", "mark bed=14 at=18:40 level_ml=780 about"),
    ],
)
def test_how_much_of_a_look_and_what_is_counted_say_nothing_of_the_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("5 shifted to general ward 1700", "left bed=5 at=17:00"),
        ("5 transferred to cath lab 1750", "away bed=5 at=17:50"),
        ("8 back from ward 7 1800", "back bed=8 at=18:00"),
        (
            "4 to angio 1730, off suction for transfer",
            "away bed=4 at=17:30; checked bed=4 at=17:30 suction_cmh2o=0",
        ),
        ("20 dr ordered water seal at 1830", "ordered bed=20 at=18:30 suction_cmh2o=0"),
        ("20 water seal at 2", "checked bed=20 seal_cm=2"),
        ("9 ICD bag changed, old 900", "exchanged bed=9 final_ml=900"),
        ("8 moved to 12 east side", "ask kind"),
    ],
)
def test_where_a_patient_goes_and_what_is_ordered_then(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed seven clamped at eighteen forty as advised", "incident bed=7 at=18:40 what=clamped"),
        ("bed eight went to i c u from theatre not coming back to us", "left bed=8"),
        ("bed eighteen transferred to h d u bed three at eighteen hundred", "left bed=18 at=18:00"),
        ("bed seventeen stepped down to ward five at eighteen thirty", "left bed=17 at=18:30"),
        ("bed thirteen gone home with his wife at half past four", "left bed=13 at=16:30"),
        ("bed four off to c t chest", "away bed=4"),
    ],
)
def test_the_same_is_understood_when_it_is_dictated(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("14 placed back on 20 cm suction 1815", "checked bed=14 at=18:15 suction_cmh2o=20"),
        ("14 chest tube placed on suction 20 at 1815", "checked bed=14 at=18:15 suction_cmh2o=20"),
        ("14 chest tube placed to water seal at 1815", "checked bed=14 at=18:15 suction_cmh2o=0"),
        ("14 drain placed on floor", "ask bed"),
        (
            "14 pigtail placed at 1815, on suction 20",
            "placed bed=14 at=18:15; checked bed=14 at=18:15 suction_cmh2o=20",
        ),
        ("chest tube placed on 4 at 1815", "placed bed=4 at=18:15"),
        ("chest tube placed on bed 4 at 1815", "placed bed=4 at=18:15"),
    ],
)
def test_a_tube_that_is_placed_on_suction_or_on_the_floor_is_no_new_one(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("14 suction back on 20 at 1815 as surgeon asked", "checked bed=14 at=18:15 suction_cmh2o=20"),
        ("4 clamped at 1815 as dr lee asked", "incident bed=4 at=18:15 what=clamped"),
        ("as surgeon asked 4 clamped", "ask kind"),
        ("bed 5 clamped 1800 x 4h", "incident bed=5 at=18:00 what=clamped"),
        ("10 chest tube clamped 30 mins for talc", "incident bed=10 what=clamped"),
        ("10 suction off 20 min ago", "incident bed=10 at=18:45 what=suction_off"),
        ("8 verbal order waterseal", "ordered bed=8 suction_cmh2o=0"),
        ("6 440 1845 JP 30", "mark bed=6 at=18:45 level_ml=440"),
        ("6 440 at 1845 urine", "ask level_ml"),
        ("15 sats 88 on air, drain 210 at 1840", "mark bed=15 at=18:40 level_ml=210"),
    ],
)
def test_how_long_and_on_whose_wish(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("20 tube pulled while turning but still in, sutures ok", "ask level_ml"),
        ("20 tube pulled when he rolled", "ask level_ml"),
        ("20 tube pulled at 1830 by dr lee", "removed bed=20 at=18:30"),
        ("20 tube removed, stitch still in", "removed bed=20"),
        ("20 drain came out with dressing", "incident bed=20 what=dislodged"),
        ("20 dressing fell off", "ask kind"),
        ("7 transferred to Royal Hospital by ambulance 1500", "left bed=7 at=15:00"),
        ("7 now in ICU", "left bed=7"),
        ("7 now in 12", "moved bed=7 to_bed=12"),
        ("4 rtn from CT 1850", "back bed=4 at=18:50"),
        ("7 passed at 1742 family present", "left bed=7 at=17:42"),
    ],
)
def test_what_was_pulled_and_is_still_in_is_not_out(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 walked 50 m, drain 340 at 1830", "mark bed=7 at=18:30 level_ml=340"),
        ("7 seen by 2 drs, 340 at 1830", "mark bed=7 at=18:30 level_ml=340"),
        ("7 slept 4 hrs, drain 340", "mark bed=7 level_ml=340"),
        ("7 IDC 300, ICC 340 at 1830", "mark bed=7 at=18:30 level_ml=340"),
        ("7 bsl 8.2 drain 340 at 1830", "mark bed=7 at=18:30 level_ml=340"),
        ("7 ngt 200 ict 340", "mark bed=7 level_ml=340"),
        ("7 R 50 m 340", "mark bed=7 tube=right level_ml=50; mark bed=7 tube=mediastinal level_ml=340"),
        ("7 340 in 2 drains", "ask level_ml"),
        ("7 chair 340", "ask level_ml"),
        ("7 had 500 ml water, drain 340 at 1830", "ask level_ml"),
    ],
)
def test_what_else_is_counted_and_measured_around_a_line(text: str, read: str) -> None:
    assert reading(text) == read
