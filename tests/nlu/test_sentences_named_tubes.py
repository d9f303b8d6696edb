"""Tubes by letter and number beside whatever is told of them, and how many tubes there are."""

from __future__ import annotations

import pytest

from tests.nlu.saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 7 tube A removed, final 130", "removed bed=7 tube=A level_ml=130"),
        ("bed 7 tube A out, final 130. B stays in", "removed bed=7 tube=A level_ml=130"),
        ("bed 7 drain A pulled at 1830", "removed bed=7 tube=A at=18:30"),
        ("bed 7 tube A clamped", "incident bed=7 tube=A what=clamped"),
        ("clamped the tube A on bed 15 at 1834", "incident bed=15 tube=A at=18:34 what=clamped"),
        ("bed 7 tube A new box at 1830, old 373", "exchanged bed=7 tube=A at=18:30 final_ml=373"),
        ("bed 18 tube A serosang", "checked bed=18 tube=A fluid=serosanguineous"),
        ("623 ml in the drain B of bed 21 at 1808", "ask level_ml"),
        ("pulled tube 1 on bed 12 at 1827", "removed bed=12 tube=1 at=18:27"),
        ("pulled the drain 2 on bed 15 at 1834", "removed bed=15 tube=2 at=18:34"),
        ("bed 3 the 1800 line on tube A belongs to tube B", "corrected bed=3 tube=A at=18:00 to_tube=B"),
        ("bed 18 changed left tube canister at 1813, old one 1200",
         "exchanged bed=18 tube=left at=18:13 final_ml=1200"),
        ("changed the left pleural canister on bed 18 at 1813",
         "exchanged bed=18 tube=left pleural at=18:13"),
        ("bed 11 L out at 1838, final 341", "removed bed=11 tube=left at=18:38 level_ml=341"),
        ("pulled the drain 2 at 1827", "removed bed=2 at=18:27"),
        ("A new tube in 12 at 1827", "placed bed=12 at=18:27"),
        ("PULLED TUBE A BIT LATE, BED 3", "ask level_ml"),
    ],
)  # fmt: skip
def test_a_tube_named_by_a_letter_or_a_number_stays_with_what_is_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 16 new chest tubes, two joined into one box, lung surgery, 55 kg",
         "placed bed=16 reason=lung weight_kg=55"),
        ("bed 16 new chest tubes, two joined by a Y, lung surgery", "placed bed=16 reason=lung"),
        ("Bed 2 new chest tubes, 2 of them Y'd together, post CABG, 82 kg",
         "placed bed=2 reason=cardiac weight_kg=82"),
        ("chest tubes placed 21 at 1820, two joined by a Y connector, opening level 120, trauma",
         "placed bed=21 at=18:20 level_ml=120 reason=trauma"),
        ("Bed 13 had 2 chest tubes Y'd into one box placed at noon, weight 71 kg",
         "placed bed=13 at=12:00 weight_kg=71"),
        ("bed 2 tubes joined 340 at 1845", "mark bed=2 at=18:45 level_ml=340"),
        ("2 tubes joined 340 at 1845", "ask bed"),
    ],
)  # fmt: skip
def test_how_many_tubes_are_joined_is_no_bed_and_no_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Good evening, could you please record that bed 4 is at 310 mL as of 19:00? Thank you.",
         "mark bed=4 at=19:00 level_ml=310"),
        ("Could you please record a level of 1,075 mL for bed 21 at 19:00? Thank you kindly.",
         "mark bed=21 at=19:00 level_ml=1075"),
        ("Could I ask you to log 450 for bed 4 at 18:20?", "mark bed=4 at=18:20 level_ml=450"),
        ("May I inform you that the drain in bed 4 was removed at 18:20 with a final level of 450 mL.",
         "removed bed=4 at=18:20 level_ml=450"),
        ("the chest drain in bed 11 reads 640 mL. I took the reading at 19:00.",
         "mark bed=11 at=19:00 level_ml=640"),
        ("at 7 pm the level in bed 11 was 890 mL, and the fluid remained serosanguineous",
         "mark bed=11 at=19:00 level_ml=890; checked bed=11 at=19:00 fluid=serosanguineous"),
        ("could you tell me the level of bed 11 at 1900?", "asked bed=11 topic=last"),
        ("can you record a line for bed 11 at 1900?", "ask level_ml"),
        ("b7 tube out @1900, fnl 910", "removed bed=7 at=19:00 level_ml=910"),
        ("b5 MD ordrd sxn 20", "ordered bed=5 suction_cmh2o=20"),
        ("b11 mediast 430, R pleural 215 @1900",
         "mark bed=11 tube=mediastinal at=19:00 level_ml=430; "
         "mark bed=11 tube=right pleural at=19:00 level_ml=215"),
    ],
)  # fmt: skip
def test_polite_sentences_and_words_without_vowels_are_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("7 o'clock list\nbed 1 610\nbed 9 canister changed, old one 1960\nbed 12 375",
         "mark bed=1 at=19:00 level_ml=610; exchanged bed=9 at=19:00 final_ml=1960; "
         "mark bed=12 at=19:00 level_ml=375"),
        ("8 640 no leak, 10 220 small leak, both 1900",
         "mark bed=8 at=19:00 level_ml=640; checked bed=8 at=19:00 air_leak=none; "
         "mark bed=10 at=19:00 level_ml=220; checked bed=10 at=19:00 air_leak=present"),
        ("beds 2 and 9 at 1900: 2 is 455, 9 is 1325",
         "mark bed=2 at=19:00 level_ml=455; mark bed=9 at=19:00 level_ml=1325"),
        ("Bed 13 and 15 lines at 18:45 - 13 is 640, 15 is 1205. Neither bubbling.",
         "mark bed=13 at=18:45 level_ml=640; checked bed=13 at=18:45 air_leak=none; "
         "mark bed=15 at=18:45 level_ml=1205; checked bed=15 at=18:45 air_leak=none"),
        ("bed 6 640 at 1900, surgeon told", "mark bed=6 at=19:00 level_ml=640"),
        ("bed 6 640 at 1900. The reg has been told.", "mark bed=6 at=19:00 level_ml=640"),
        ("bed 6 640 at 1900, tech told me", "ask level_ml"),
        ("bed 6 640 at 1900, so the wife told", "ask level_ml"),
        ("1900 lines: bed 3 210, bed 8 600, bed 17 1240, bed 25 90",
         "mark bed=3 at=19:00 level_ml=210; mark bed=8 at=19:00 level_ml=600; "
         "mark bed=17 at=19:00 level_ml=1240; ask bed"),
    ],
)  # fmt: skip
def test_a_list_keeps_its_time_and_its_rows(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 18 700 at 1900, right back at it", "ask kind"),
        ("bed 18 700 at 1900, gave him the right dose", "ask kind"),
        ("bed 18 700 at 1900, left the door open", "mark bed=18 at=19:00 level_ml=700"),
        ("bed 18 700 at 1900, right side", "mark bed=18 tube=right at=19:00 level_ml=700"),
        ("bed 18 700 at 1900 (left)", "mark bed=18 tube=left at=19:00 level_ml=700"),
        ("bed 18, right tube, 700 at 1900", "mark bed=18 tube=right at=19:00 level_ml=700"),
        ("bed 18: line 700 at 1900, back in bed after walking the hall",
         "mark bed=18 at=19:00 level_ml=700"),
        ("bed 18 700 at 1900, back in bed from theatre",
         "mark bed=18 at=19:00 level_ml=700; back bed=18 at=19:00"),
    ],
)  # fmt: skip
def test_a_side_or_a_way_back_in_a_remark_is_not_the_lines(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("CT 2 mark 340 at 1900", "mark bed=CT2 at=19:00 level_ml=340"),
        ("new chest tube CT 2 at nineteen hundred post op CABG", "placed bed=CT2 at=19:00 reason=cardiac"),
        ("canister changed CT 2 at 1900 old one 1600", "exchanged bed=CT2 at=19:00 final_ml=1600"),
        ("bed 2 to CT 1900", "away bed=2 at=19:00"),
    ],
)
def test_a_dictated_label_of_letters_is_the_bed_that_is_called_so(text: str, read: str) -> None:
    assert reading(text, beds=LETTERED, channel="voice") == read
