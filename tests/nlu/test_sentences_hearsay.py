"""Numbers on somebody else's word, rules of the unit, other devices and other people are no line."""

from __future__ import annotations

import pytest

from .saying import Channel, reading

HEARSAY = (
    "the tech says 7 is at 480",
    "HCA said bed 7 is 480",
    "pt in 7 told me her box says 480",
    "husband of 7 reckons it's gone up to 480 since breakfast",
    "overheard on rounds that 7 had 480 in it",
    "student thinks 7's line is 480. I'll verify before you log anything",
    "patient says it's at 480, bed 7",
    "bed 7 at 480, according to mum",
    "bed 7 480 at 1840 per Sam",
    "bed 7 480, or so the tech says",
    "handover said bed 7 was 480",
    "the board says bed 7 is at 480",
    "the computer shows bed 7 at 480",
    "word is bed 7 is at 480",
    "7 reckons his drain is at 480",
    "bed 7 pt reports 480 in box",
    "wife in 7 noticed the box at 480",
    "bed 7 480 at 1840, says the student",
    "pt himself said his bottle (bed 7) is at 480",
    "bed 7 480 at 1840, copied off the board",
    "bed 7 480, relayed by the aide",
    "I was informed bed 7 is 480",
)


@pytest.mark.parametrize("text", HEARSAY)
def test_a_level_on_somebody_elses_word_is_asked(text: str) -> None:
    assert reading(text) == "ask level_ml"


@pytest.mark.parametrize(
    "text", ["the tech says bed seven is at four eighty", "bed seven four eighty according to mum"]
)
def test_it_is_asked_too_when_it_is_dictated(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask")


@pytest.mark.parametrize(
    "text",
    [
        "bed 7 480 at 1840, told the doctor", "bed 7 480 at 1840, patient says thanks",
        "bed 7 480 at 1840, she says she is sore", "canister on 7 says 480 at 1840",
        "told the surgeon bed 7 is at 480 at 1840", "bed 7 480 at 1840, read with Sam",
        "just heard the bell, bed 7 480 at 1840", "7 told me he is dizzy, drain 480 at 1840",
        "bed 7 480 at 1840, dr says keep an eye", "student read bed 7 with me, 480 at 1840",
        "after report bed 7 480 at 1840", "Jess read it out for me, bed 7 at 480 at 1840",
        "tech says 7 is at 480 at 1840, I looked and it is",
    ],
)  # fmt: skip
def test_what_somebody_says_of_something_else_leaves_a_line_whole(text: str) -> None:
    assert reading(text) == "mark bed=7 at=18:40 level_ml=480"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("Ana heard the surgeon wants 12 on 20 of suction, no order in yet", "ask kind"),
        ("wife says the doctor ordered suction 20 for 12", "ask kind"),
        ("reg says suction 20 on bed 7", "ordered bed=7 suction_cmh2o=20"),
    ],
)
def test_an_order_from_a_third_mouth_is_asked(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    "doubt",
    [
        ", haven't looked myself", ", will check it myself in a min", ". need to double check that",
        ", I'll verify before you log anything", ", last I heard", ", someone else's reading",
        ", no promises", ", wouldn't bet on it", ", hold fire until I check", ", haven't laid eyes on it",
    ],
)  # fmt: skip
def test_whoever_has_not_looked_is_asked(doubt: str) -> None:
    assert reading(f"bed 7 480{doubt}").startswith("ask")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("we pull it at 150 for bed 9, that's the rule here", "ask kind"),
        ("we change it at 1800 on bed 9", "ask kind"),
        ("bed 9 comes out once its at 150", "ask kind"),
        ("bed 9 marked it at 310", "mark bed=9 level_ml=310"),
        ("bed 9 should be about 310", "ask kind"),
        ("bed 9 should read 310 by now", "ask kind"),
        ("bed 9 has to be about 310 by now", "ask kind"),
        ("bed 9 should be 310", "corrected bed=9 level_ml=310"),
        ("bed 3 really was 1240 at 1840", "mark bed=3 at=18:40 level_ml=1240"),
        ("bed 3 is really 1240", "corrected bed=3 level_ml=1240"),
        ("bed 3 1840 really was 1240 not 1420", "corrected bed=3 at=18:40 was_ml=1420 level_ml=1240"),
        ("another line for bed 2: 545 at 1810", "mark bed=2 at=18:10 level_ml=545"),
        ("bed 2 another 60", "drained bed=2 volume_ml=60"),
        ("bed 2 line at 7", "ask level_ml"),
        ("bed 2 line at 7 ml", "mark bed=2 level_ml=7"),
        ("bed 2 line at 5", "mark bed=2 level_ml=5"),
        ("bed 2 mark 650 at 1850, mark 650, 1850", "mark bed=2 at=18:50 level_ml=650"),
        ("corr bed 4 310", "corrected bed=4 level_ml=310"),
    ],
)
def test_a_rule_or_what_is_expected_is_no_line_and_emphasis_corrects_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize("channel", ["text", "voice"])
@pytest.mark.parametrize(
    ("text", "at"),
    [("bed 13 mark 640, time now.", "19:05"), ("bed 13 mark 640 time now 1900", "19:00")],
)
def test_time_now_is_a_time(text: str, at: str, channel: Channel) -> None:
    assert reading(text, channel=channel) == f"mark bed=13 at={at} level_ml=640"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("urometer 11 hit 200 at 1850", "ask level_ml"),
        ("11's pouch is at 200", "ask level_ml"),
        ("bed 11 catheter bag reads 200", "ask level_ml"),
        ("box 11 hit 200 at 1850", "mark bed=11 at=18:50 level_ml=200"),
        ("finally 11 is at 200", "mark bed=11 level_ml=200"),
        ("11's box is at 200", "mark bed=11 level_ml=200"),
    ],
)
def test_what_a_bed_has_beside_its_drain_is_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("nurse for bed 6 got moved to another ward", "ask kind"),
        ("daughter of bed 3 went home", "ask kind"),
        ("doc for 12 off to theatre", "ask kind"),
        ("patient next to 7 was discharged", "ask kind"),
        ("bed 7 480 at 1850 and mum has gone home", "mark bed=7 at=18:50 level_ml=480"),
        ("lady in 7 went home 1850", "left bed=7 at=18:50"),
        ("bed 7 moved to 9 by the porter", "moved bed=7 to_bed=9"),
    ],
)
def test_whoever_is_named_by_a_bed_and_goes_is_not_its_patient(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("will mark 12 when i get out of report", "ask kind"),
        ("12 drain obs all done and charted", "ask kind"),
        ("please dont chart 12 for me, Jess is doing it", "ask kind"),
        ("what do i chart on 12", "asked bed=12 topic=chart"),
        ("hand over 12", "asked bed=12 topic=handoff"),
        ("tube is NOT out in bed 4, ignore what xray said", "ask kind"),
        ("ignore what i said about bed 4", "withdrawn bed=4"),
        ("bed 2 looked full, 2050 at 1840, which is over the top mark", "mark bed=2 at=18:40 level_ml=2050"),
    ],
)
def test_words_of_a_question_or_a_withdrawal_in_what_is_told(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the 980 I shouted across for bed 12 was his urine", "ask level_ml"),
        ("bed 12 urine 300, line 980", "mark bed=12 level_ml=980"),
        ("24 had 500 of saline, 500 at 1840", "ask at"),
        ("on admission 19's tube drained 700 in the ED, before our canister", "ask volume_ml"),
        ("19 drained 700 at the other hospital", "ask kind"),
        ("19 drained 700 since theatre", "drained bed=19 volume_ml=700"),
        ("19 drained 700 in the chair", "drained bed=19 volume_ml=700"),
        ("bed 4 was due at 1800, its 1905 now and it reads 365", "ask level_ml"),
        ("should the suction on 2 be 20?", "ask bed"),
        ("should 2 be on 20 of suction?", "ask kind"),
        ("bed 2 suction 20?", "ask kind"),
        ("bed 2 wall 90?", "ask kind"),
        ("4, last mark?", "asked bed=4 topic=last"),
        ("880, last mark on 4?", "answered level_ml=880; asked bed=4 topic=last"),
        ("checks on 2 and 4", "asked bed=2 topic=checks; asked bed=4 topic=checks"),
    ],
)
def test_numbers_of_another_place_or_of_what_is_asked_are_no_line(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("clamped the tube in 16 at 1840 for the canister swap", "incident bed=16 at=18:40 what=clamped"),
        ("16 canister swap at 1840, old one 1900", "exchanged bed=16 at=18:40 final_ml=1900"),
        ("bed 4 bottle was up on the bed, back on floor now", "incident bed=4 at=19:05 what=raised"),
        ("walked 16 to the corridor and back, 340 at 1840", "mark bed=16 at=18:40 level_ml=340"),
        ("16 went to xray and back at 1840", "away bed=16; back bed=16 at=18:40"),
        (
            "pulled the tube in bed 10 at 1845 since it was half out already, final 655",
            "removed bed=10 at=18:45 level_ml=655",
        ),
        ("bed 10 tube pulled out when he rolled", "ask level_ml"),
        ("bed 10 tube pulled out by dr lee at 1845", "removed bed=10 at=18:45"),
        ("bed 10 tube half out since 1845", "incident bed=10 at=18:45 what=dislodged"),
    ],
)
def test_what_for_and_why_it_was_done_is_no_other_event(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bank nurse did the 1830 line on 5 with me: 620", "mark bed=5 at=18:30 level_ml=620"),
        ("Kim did the 1830 line on bed 5: 620", "mark bed=5 at=18:30 level_ml=620"),
        ("did bed 5 hit 620?", "ask level_ml"),
        (
            "12 1020 1830 clamped as per reg",
            "mark bed=12 at=18:30 level_ml=1020; incident bed=12 at=18:30 what=clamped",
        ),
        ("bed 5 620 at 1830, charted", "mark bed=5 at=18:30 level_ml=620"),
        ("bed 5 620 at 1830, as per the ODP", "ask level_ml"),
        ("theatre handed over bed 5 with 620 in the bottle", "ask level_ml"),
        ("14 off suction at 1830 for the bottle swap", "checked bed=14 at=18:30 suction_cmh2o=0"),
    ],
)
def test_a_line_read_together_and_one_that_was_handed_over(text: str, read: str) -> None:
    assert reading(text) == read
