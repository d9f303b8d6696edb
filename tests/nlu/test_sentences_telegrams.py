"""Short messages without a word too many: signs for words, where a patient went, what was changed, vitals."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading

LINE = "mark bed=7 at=19:00 level_ml=320"
LEFT_AT_1900 = "mark bed=3 tube=left at=19:00 level_ml=410"
OFF_AT_1840 = "incident bed=7 at=18:40 what=suction_off"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("11 -> CT", "away bed=11"),
        ("11 --> OR at 1850", "away bed=11 at=18:50"),
        ("11 \u2192 theatre", "away bed=11"),
        ("11 340 at 1845 -> MRI", "mark bed=11 at=18:45 level_ml=340; away bed=11 at=18:45"),
        ("8 to OT", "away bed=8"),
        ("11 -> 12", "moved bed=11 to_bed=12"),
        ("11 440 -> 480", "ask level_ml"),
        ("8 referred to OT", "ask kind"),
    ],
)
def test_an_arrow_behind_a_bed_leads_out(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_lettered_bed_goes_to_theatre_too() -> None:
    assert reading("CT2 to OT", LETTERED) == "away bed=CT2"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("14 changed @1840, final 1345", "exchanged bed=14 at=18:40 final_ml=1345"),
        ("bed 14 swapped 1840, old one 1345", "exchanged bed=14 at=18:40 final_ml=1345"),
        ("14 changed 1840 final 1345", "exchanged bed=14 at=18:40 final_ml=1345"),
        ("14 changed @1840", "ask level_ml"),
        ("14 changed to 15", "ask bed"),
    ],
)
def test_what_was_changed_beside_a_final_level_is_the_canister(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "remark",
    [
        "O2 sat 96%",
        "o2 sats 96 on 2L",
        "svo2 64",
        "svo2 64 ci 2.4",
        "obs stable news 1",
        "news2 3",
        "dressing changed cdi",
        "dressing cdi",
        "dsg intact",
    ],
)
def test_vitals_and_the_dressing_behind_a_line_leave_it_whole(remark: str) -> None:
    assert reading(f"6 700 at 1900 {remark}") == "mark bed=6 at=19:00 level_ml=700"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("8 and 9 both 340 at 1900", "mark bed=8 at=19:00 level_ml=340; mark bed=9 at=19:00 level_ml=340"),
        ("8 & 9 340 each @1900", "mark bed=8 at=19:00 level_ml=340; mark bed=9 at=19:00 level_ml=340"),
        (
            "8, 9 and 10 all 340 at 1900",
            "mark bed=8 at=19:00 level_ml=340; mark bed=9 at=19:00 level_ml=340; "
            "mark bed=10 at=19:00 level_ml=340",
        ),
        ("8 and 9 all 340 at 1900", "ask level_ml"),
        ("8 and 9 340 at 1900", "ask level_ml"),
        ("8 and 9 both 10", "ask bed; ask bed"),
        ("8 and 9 both suction 20", "checked bed=8 suction_cmh2o=20; checked bed=9 suction_cmh2o=20"),
    ],
)
def test_a_line_of_both_is_of_each(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("beds?", "asked topic=beds"),
        ("delete 0700 mark 5", "withdrawn bed=5 at=07:00"),
        ("delete 0700 mark 500", "ask kind"),
        ("bed 2 clamped 1830 per SpR", "incident bed=2 at=18:30 what=clamped"),
    ],
)
def test_a_command_needs_few_words(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "my lines for 1900: bed 1 at 505, bed 2 at 1115",
            "mark bed=1 at=19:00 level_ml=505; mark bed=2 at=19:00 level_ml=1115",
        ),
        (
            "3 is at 1230  4 is at 88 all @1900",
            "mark bed=3 at=19:00 level_ml=1230; mark bed=4 at=19:00 level_ml=88",
        ),
        (
            "3 is at 1930 and 4 is at 88 1900 lines",
            "mark bed=3 at=19:00 level_ml=1930; mark bed=4 at=19:00 level_ml=88",
        ),
    ],
)
def test_no_bed_has_the_line_of_the_bed_before_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("11 230 leak- 1900", "mark bed=11 at=19:00 level_ml=230; checked bed=11 at=19:00 air_leak=none"),
        (
            "11 230 at 1900 AL-, seal 2",
            "mark bed=11 at=19:00 level_ml=230; checked bed=11 at=19:00 seal_cm=2 air_leak=none",
        ),
        (
            "11 230 at 1900 bubbling -, swing-",
            "mark bed=11 at=19:00 level_ml=230; checked bed=11 at=19:00 air_leak=none tidaling=False",
        ),
        (
            "3 440 at 1900 leak-, 5 620 at 1900 leak+",
            "mark bed=3 at=19:00 level_ml=440; checked bed=3 at=19:00 air_leak=none; "
            "mark bed=5 at=19:00 level_ml=620; checked bed=5 at=19:00 air_leak=present",
        ),
        ("11 leak - seal 2", "checked bed=11 seal_cm=2; ask kind"),
        ("11 swing - seal 2", "checked bed=11 seal_cm=2; ask kind"),
        ("11 swing-, seal 2", "checked bed=11 seal_cm=2 tidaling=False"),
        ("11 - leak - swing", "checked bed=11 tidaling=True; ask kind"),
        ("11-230-1900-leak-", "ask kind; ask kind"),
        ("11 230 at 1900 leak - she sat out", "ask kind; ask kind"),
        ("11 small leak - seal 2", "checked bed=11 seal_cm=2 air_leak=present"),
        ("11 no leak - seal 2", "checked bed=11 seal_cm=2 air_leak=none"),
        ("11 air leak - continuous", "checked bed=11 air_leak=continuous"),
        ("11 swinging - seal 2", "checked bed=11 seal_cm=2 tidaling=True"),
    ],
)
def test_a_minus_behind_a_finding_is_never_a_leak(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 suction on, 10, bubbling", "ask kind"),
        ("bed 9 seal was 1 cm and is now 2. Line is 305 at 1900", "ask kind"),
        ("9 no leak, 10 swinging", "checked bed=9 air_leak=none; checked bed=10 tidaling=True"),
        ("9 seal 2, 10 seal 3", "checked bed=9 seal_cm=2; checked bed=10 seal_cm=3"),
        ("9 suction on, 10 suction off", "incident bed=9 what=suction_on; incident bed=10 what=suction_off"),
    ],
)
def test_a_bare_number_behind_a_setting_is_no_bed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("11 1730 1900 suction 20 seal 2", "ask at; ask level_ml"),
        ("1900 11 right 1820 clamped", "ask at; ask level_ml"),
        (
            "11 230 1900 suction 20",
            "mark bed=11 at=19:00 level_ml=230; checked bed=11 at=19:00 suction_cmh2o=20",
        ),
    ],
)
def test_what_was_found_is_asked_where_the_line_may_be_its_time(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9/42/1900/serosang/S10", "suction_cmh2o=10 fluid=serosanguineous"),
        ("9 - 42 - 1900 - seal 2 - sxn 20 - swing +", "seal_cm=2 suction_cmh2o=20 tidaling=True"),
        ("9 - 42 - no leak - swing + - s 20 - 1900", "suction_cmh2o=20 air_leak=none tidaling=True"),
        ("9: 42, seal 2, suct 20, leak nil, 1900", "seal_cm=2 suction_cmh2o=20 air_leak=none"),
        ("b9 42 at 1900 / seal ok / wall 90 / S -20", "suction_cmh2o=20 wall_mmhg=90"),
        ("9: 42@1900 dial 30 wall 100 leak int", "suction_cmh2o=30 wall_mmhg=100 air_leak=intermittent"),
        ("9 42 1900 no leak swing + seal 2", "seal_cm=2 air_leak=none tidaling=True"),
        ("9 42 / bubbling cont / suct 20 / 1900", "suction_cmh2o=20 air_leak=continuous"),
        ("1900 - rm 9: 42 - leak- - wall 90", "wall_mmhg=90 air_leak=none"),
        ("9 | 42 | 1900 | leak- | swing +", "air_leak=none tidaling=True"),
    ],
)
def test_a_line_told_in_fields_is_read_with_its_checks(text: str, read: str) -> None:
    assert reading(text) == f"mark bed=9 at=19:00 level_ml=42; checked bed=9 at=19:00 {read}"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("9 med 325/1900", "mark bed=9 tube=mediastinal at=19:00 level_ml=325"),
        ("bed 9 R 1290 / 1850", "mark bed=9 tube=right at=18:50 level_ml=1290"),
        ("9/1050/1900  11/340/1900", "mark bed=9 at=19:00 level_ml=1050; mark bed=11 at=19:00 level_ml=340"),
        ("9/290/1900, 11/125/1900", "mark bed=9 at=19:00 level_ml=290; mark bed=11 at=19:00 level_ml=125"),
        ("9/1750/1900", "ask level_ml"),
        ("9 - 1830 - 1900 - seal 2", "ask level_ml"),
        ("9 - 42 - leak - 1900", "ask kind; ask kind"),
        ("9/42/1500", "ask level_ml"),
    ],
)
def test_a_line_in_fields_has_one_time_of_the_last_hours(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "7 suction off, on 1845",
            "incident bed=7 what=suction_off; incident bed=7 at=18:45 what=suction_on",
        ),
        ("7 sx off 1840 for walk, on again 1855", f"{OFF_AT_1840}; incident bed=7 at=18:55 what=suction_on"),
        ("7 suction off 1840 and on 1845", f"{OFF_AT_1840}; incident bed=7 at=18:45 what=suction_on"),
        ("7 suction off 1840, back on 1845", f"{OFF_AT_1840}; incident bed=7 at=18:45 what=suction_on"),
        (
            "22 clamp on 1840 off 1858",
            "incident bed=22 at=18:40 what=clamped; incident bed=22 at=18:58 what=unclamped",
        ),
        ("7 sxn on at 1850", "incident bed=7 at=18:50 what=suction_on"),
        ("7 suction off 1840, on 2L O2", OFF_AT_1840),
        ("7 suction on 20, bubbling on and off", "checked bed=7 suction_cmh2o=20 air_leak=intermittent"),
        ("7 clamped 1840, off 1858", "ask at"),
    ],
)
def test_what_was_switched_off_is_switched_on_again_without_its_name(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7, clamp off, @1850, upright now", "incident bed=7 at=18:50 what=unclamped"),
        ("at 1850, b7, disconnected, upright now", "incident bed=7 at=18:50 what=disconnected"),
        ("7 disconnected 1850, all ok now", "incident bed=7 at=18:50 what=disconnected"),
        ("rm 7 tipped over fixed now at 1850", "ask kind"),
        ("7 at 1850 now", "ask level_ml"),
        ("7 now at 1450", "mark bed=7 at=19:05 level_ml=1450"),
    ],
)
def test_how_it_is_now_is_not_when_it_happened(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 left 410, 1900. right out at 1830", f"{LEFT_AT_1900}; removed bed=3 tube=right at=18:30"),
        ("bed 3 left 410 at 1900. right out at 1830", f"{LEFT_AT_1900}; removed bed=3 tube=right at=18:30"),
        ("bed 7 right out 1830", "ask level_ml"),
        ("bed 7 right out 340 at 1830", "ask level_ml"),
        ("bed 7 left 340 right out 120 at 1900", "ask level_ml"),
    ],
)
def test_a_side_that_is_out_at_a_time_was_removed(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 320 +40 1900", LINE),
        ("7 320 at 1900, +40", LINE),
        ("7 320 +40 1900, prev 280", LINE),
        ("7 320 at 1900, previous 280", LINE),
        ("7 320 (post turn) 1900", LINE),
        ("7 (post physio) 320 at 1900", LINE),
        ("7 320 (not sure) 1900", "ask kind"),
        ("7 320 (stomach bag) 1900", "ask level_ml"),
        ("7 320 (urine output) 1900", "ask level_ml"),
        ("7 320 urine 1900", "ask level_ml"),
        ("7 320 (old canister) 1900", "ask level_ml"),
    ],
)
def test_what_stands_beside_a_line_is_no_other_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("5 > XR 1815 < 1835", "away bed=5 at=18:15; back bed=5 at=18:35"),
        ("5 moved -> 6", "moved bed=5 to_bed=6"),
        ("11 tx 12", "moved bed=11 to_bed=12"),
        ("rm 16 -> 735 mL, 1845", "mark bed=16 at=18:45 level_ml=735"),
        ("8 > 95 1850", "mark bed=8 at=18:50 level_ml=95"),
        ("18 1830 480 -> 1900 610", "mark bed=18 at=18:30 level_ml=480; mark bed=18 at=19:00 level_ml=610"),
        ("16 -> 17 1850", "moved bed=16 at=18:50 to_bed=17"),
        ("16 > 17 1850", "ask level_ml"),
        ("7 280 -> 320 1900", "ask level_ml"),
        ("11 tx 3 days", "ask level_ml"),
    ],
)
def test_an_arrow_leads_to_a_line_a_bed_or_the_next_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("t1850 / b11 / 640", "mark bed=11 at=18:50 level_ml=640"),
        ("t1415 / b11 / 640", "ask level_ml"),
        (
            "1850 | 7 | 640 | tidal Y",
            "mark bed=7 at=18:50 level_ml=640; checked bed=7 at=18:50 tidaling=True",
        ),
        ("7 clamped 1850 per IR", "incident bed=7 at=18:50 what=clamped"),
        ("7 dressing c/d/i, 320, 1900", LINE),
        ("cap b4?", "asked bed=4 topic=capacity"),
        ("hist 24", "asked bed=24 topic=history"),
        (
            "14: old can 1890, new can on 1830, now 20",
            "exchanged bed=14 at=18:30 final_ml=1890; mark bed=14 at=19:05 level_ml=20",
        ),
    ],
)
def test_what_is_cut_short_in_a_telegram_is_read(text: str, read: str) -> None:
    assert reading(text) == read
