"""What happened to a drain told in whole sentences: who did it, why, and what the old canister showed."""

from __future__ import annotations

import pytest

from tests.nlu.saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "9 had the mediastinal pulled at 1815, 710 in it",
            "removed bed=9 tube=mediastinal at=18:15 level_ml=710",
        ),
        (
            "we took out the apical drain in bed 3 at 1830, 145 mL in the box",
            "removed bed=3 tube=apical at=18:30 level_ml=145",
        ),
        ("dc'd chest tube bed 4 left 18:40 canister 1130", "removed bed=4 tube=left at=18:40 level_ml=1130"),
        (
            "registrar took the tube out of bed 11 at 1830, final level was 410, chest x-ray ordered",
            "removed bed=11 at=18:30 level_ml=410",
        ),
        (
            "bed 7 had his right tube pulled by the fellow at 18:00, canister showed 105 mL",
            "removed bed=7 tube=right at=18:00 level_ml=105",
        ),
        ("13 tube came out 1840 final 220", "removed bed=13 at=18:40 level_ml=220"),
        ("pulled 14 drain at 1810, final 95", "removed bed=14 at=18:10 level_ml=95"),
    ],
)
def test_a_removal_is_told_with_its_last_level(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("replaced 11 chamber at 1842, final on old one 130", "exchanged bed=11 at=18:42 final_ml=130"),
        ("4 changed @1840, final 1345", "exchanged bed=4 at=18:40 final_ml=1345"),
        (
            "bed 9 hooked up new collection chamber at 1850 last reading on old 1999",
            "exchanged bed=9 at=18:50 final_ml=1999",
        ),
        (
            "bed 12 canister changed at 1830 together with the float nurse, the old one had 1,530 mL in it",
            "exchanged bed=12 at=18:30 final_ml=1530",
        ),
        ("bed 8 box swapped over 1840, old one 640", "exchanged bed=8 at=18:40 final_ml=640"),
        (
            "new unit for bed 19 at 1815 with help from the charge nurse, old unit read 1760",
            "exchanged bed=19 at=18:15 final_ml=1760",
        ),
        (
            "New unit on bed 5 now after that disconnection, final on the old one 110 mL",
            "exchanged bed=5 at=19:05 final_ml=110",
        ),
    ],
)
def test_an_exchange_keeps_its_final_level_however_it_is_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "chest tube on the right put in at 18:10 in the ED for a pneumothorax bed 18",
            "placed bed=18 tube=right at=18:10 reason=air",
        ),
        ("bed 18 kiddo 11.5 kg post heart surgery", "described bed=18 reason=cardiac weight_kg=11.5"),
        ("porters collected bed 15 for an echo at 1835", "away bed=15 at=18:35"),
        ("Theatre have taken bed 5 just now", "away bed=5 at=19:05"),
        ("Transport is here and bed 24 is leaving for X-ray, drain upright on the trolley", "away bed=24"),
        ("11 -> CT", "away bed=11"),
        ("transferring 5 to bed 11 at 1815 done", "moved bed=5 at=18:15 to_bed=11"),
        ("bed 3 going to 16, moved at 1845", "moved bed=3 at=18:45 to_bed=16"),
        (
            "bed 15 discharged home at 1830 with his tube on a flutter valve, so the drain here is finished",
            "left bed=15 at=18:30",
        ),
        (
            "Doctor asked me to open bed 7 again, so unclamped at 18:00, she feels alright",
            "incident bed=7 at=18:00 what=unclamped",
        ),
        ("found 6 tubing kinked under his hip, fixed", "incident bed=6 what=kinked"),
        ("the cleaner knocked the box of bed 2 over with her mop", "incident bed=2 what=tipped"),
        ("bed 2 clamped 1830 per SpR", "incident bed=2 at=18:30 what=clamped"),
    ],
)
def test_what_happened_is_read_beside_who_and_why(text: str, read: str) -> None:
    assert reading(text) == read


def test_a_lettered_bed_goes_to_theatre() -> None:
    assert reading("CT2 to OT", beds=LETTERED) == "away bed=CT2"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "wife of 12 pulled the chair over the tubing and it was kinked, I straightened it",
            "incident bed=12 what=kinked",
        ),
        (
            "bed 16 went to dialysis at 1830, drain is hanging on the side of the bed below him",
            "away bed=16 at=18:30",
        ),
        ("CT2 needs a new canister soon, what is it running at per hour?", "asked bed=CT2 topic=rate"),
        ("2 370 at 1800, pt NPO for bronch", "mark bed=2 at=18:00 level_ml=370"),
        ("2 980 at 1800, she's going for a walk with her husband", "mark bed=2 at=18:00 level_ml=980"),
        ("2 980 at 1800, he pulled his blanket off", "mark bed=2 at=18:00 level_ml=980"),
        ("no change to the drainage in bed 2", "drained bed=2 volume_ml=0"),
        ("bed 2 tube came out 1830", "incident bed=2 at=18:30 what=dislodged"),
        ("bed 2 box is lying on its side", "incident bed=2 what=tipped"),
    ],
)
def test_what_is_of_something_else_is_no_event(text: str, read: str) -> None:
    assert reading(text, beds=(*LETTERED, "12", "16")) == read


@pytest.mark.parametrize(
    "text",
    [
        "bed 6 going to 8, not moved yet",
        "theatre have taken bed 6 off the list",
        "porters took bed 6's lunch",
        "6 to CT tomorrow",
        "changed 1 box in bed 6 at 1830, old 900",
        "the surgeon will pull bed 6's drain at 2000",
        "6 changed position at 1830, final 220",
        "bed 6 no change to the dressing",
        "the old one of bed 6 read 905 but I don't know how right that is",
    ],
)
def test_what_may_not_have_happened_is_asked(text: str) -> None:
    assert "ask" in reading(text)


ORDER = "ordered bed=8 suction_cmh2o=20"


@pytest.mark.parametrize(
    "text",
    [
        "Consultant saw bed 8 and asked for suction of 20, we are waiting for the regulator from the store",
        "For bed 8 the resident wants suction back at 20, he thinks there may be a clot in there",
        "Doctors' round got to bed 8, they want the suction turned up to 20 and will look again tomorrow",
        "bed 8 ordered suction 20 by dr on call",
        "doctor says put bed 8 on suction 20",
        "On call doctor told me to put bed 8 back on 20 of suction",
        "Dr Shah has asked for bed 8 to be on suction 20",
        "Thoracic team saw bed 8, they asked for suction to go down to 20",
        "Professor did his round and would like bed 8 on suction of 20 please",
        "The surgeon rang back about 8 and he wants the suction at 20, no change to the meds",
    ],
)
def test_an_order_is_told_in_a_sentence(text: str) -> None:
    assert reading(text) == ORDER


@pytest.mark.parametrize(
    "text",
    [
        "the wife wants the suction at 20 in bed 8",
        "patient in 8 wants the suction off",
        "bed 8 he wants suction at 20",
        "doctor ordered bed 8 clamped",
    ],
)
def test_what_no_doctor_asked_for_is_no_order(text: str) -> None:
    assert "ask" in reading(text)


def test_what_it_is_set_to_on_somebodys_word_is_what_was_found() -> None:
    read = "checked bed=6 suction_cmh2o=20 air_leak=none"
    assert reading("bed 6's suction is on 20 as the doctor ordered and there is no leak") == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 8's tube is out since 1805, box was at 430", "removed bed=8 at=18:05 level_ml=430"),
        (
            "swapped the unit for bed 12 with the night tech at 1810, old reading 1875",
            "exchanged bed=12 at=18:10 final_ml=1875",
        ),
        (
            "Emergency drain put in bed 14 left side at 18:20 by the anaesthetist for a tension pneumothorax",
            "placed bed=14 tube=left at=18:20 reason=air",
        ),
        (
            "bed 3 clamp on at 1845 as the surgeon wants to see how he copes",
            "incident bed=3 at=18:45 what=clamped",
        ),
        ("24 has just come back up from endoscopy, sleepy but stable", "back bed=24"),
        (
            "we moved bed 16 into bed 23 at 1840 as the monitor was broken",
            "moved bed=16 at=18:40 to_bed=23",
        ),
    ],
)
def test_who_helped_and_what_else_broke_changes_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "text",
    ["we moved bed 16 into bed 23 at 1840 as the box was broken", "bed 3 clamped if the surgeon wants to"],
)
def test_what_broke_or_whoever_wants_it_is_not_passed_over(text: str) -> None:
    assert reading(text) not in {"moved bed=16 at=18:40 to_bed=23", "incident bed=3 what=clamped"}
