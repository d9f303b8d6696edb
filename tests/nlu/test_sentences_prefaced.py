"""Lines and events in whole sentences: what is told before them, and of the drain beside them."""

from __future__ import annotations

import pytest

from tests.nlu.saying import reading

LINE = "mark bed=7 at=18:50 level_ml=880"


@pytest.mark.parametrize(
    "text",
    [
        "Could you put 880 down for bed 7 at 1850?",
        "Could you please write down 880 for bed 7 at 1850?",
        "I would like to report bed 7 at 880 at 1850.",
        "For bed 7 I can report 880 at 1850",
        "The team asked me to note that bed 7 is at 880 at 1850",
        "bed 7; the bottle then showed 880, this was at 1850.",
        "Hi, it's my second week so please tell me if I do this wrong. Bed 7 is at 880, I read it at 1850.",
        "I walked him to the toilet in bed 7 and when he was back in the chair I looked at the box, it says "
        "880 at 1850.",
        "Bed 7 had 880 in the chamber at 1850, which is 50 more than the last one.",
        "Bed 7 880 at 1850, that's up 50 from the last line",
        "I'm going to change bed 7's bottle, it is at 880 at 1850",
        "They are taking bed 7's drain out tomorrow if the film is fine, meanwhile it says 880 at 1850.",
        "Bed 7 is at 880 at 1850 and the new canister is working well.",
    ],
)
def test_what_is_told_before_a_line_or_of_its_box_leaves_it_whole(text: str) -> None:
    assert reading(text) == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("could you tell me what bed 7 was at 1850?", "asked bed=7 topic=last"),
        ("would you write 880 for bed 7 or 1000?", "ask bed"),
        ("could you write 450 for bed 4 instead of 540?", "corrected bed=4 was_ml=540 level_ml=450"),
        ("what can i say to you", "help"),
        ("First, 960", "answered choice=first level_ml=960"),
        ("Bed 7 880 at 1850, tell me if this is wrong", "ask level_ml"),
        ("Bed 6 480 at 1830, that is 50 more than 430", "ask level_ml"),
        ("They will take bed 5's drain out at 1900, it says 610.", "ask kind; ask kind"),
        ("they want to see if the line moves, bed 4 600 at 1900", "ask kind"),
        ("everything is disconnected, bed 4 at 640 at 1900", "ask level_ml"),
        ("I'm told by the day nurse that bed 9 was 640 at 1800", "ask level_ml"),
    ],
)
def test_what_only_looks_like_that_is_read_as_before(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 12 clamped at 1755, open again since 1900", "clamped 17:55 unclamped 19:00"),
        (
            "The surgeon clamped bed 12 at 1755 and I only noticed it now, it is open again since 1900.",
            "clamped 17:55 unclamped 19:00",
        ),
        ("bed 12 clamped at 1755, not open again", "clamped 17:55"),
    ],
)
def test_a_drain_that_is_open_again_was_unclamped(text: str, read: str) -> None:
    parts = read.split()
    events = zip(parts[::2], parts[1::2], strict=True)
    assert reading(text) == "; ".join(f"incident bed=12 at={at} what={what}" for what, at in events)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 level jumped to 640 at 1850", "mark bed=3 at=18:50 level_ml=640"),
        ("his heart rate was 80 and it jumped to 120 at 1900, bed 3", ""),
        ("bed 3 pressure was low at 1800, it went to 120 at 1900", ""),
        ("bed 3 urine bag, it went to 450 at 1900", ""),
    ],
)
def test_what_it_went_to_is_a_line_where_nothing_else_is_measured(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "I have been asked to write that bed 9's drainage is bloody today.",
            "checked bed=9 fluid=sanguineous",
        ),
        ("I was told that the fluid in bed 9 is serous.", "ask kind"),
        ("Bed 10 drained 85 mL since noon according to my sums.", "drained bed=10 volume_ml=85"),
        ("Bed 10 drained 85 mL since noon according to the day nurse.", "ask kind"),
        (
            "The day nurse forgot to say that she changed the canister on bed 4 at 1715, it had 1875 in it.",
            "exchanged bed=4 at=17:15 final_ml=1875",
        ),
        (
            "Bed 7 went to theatre at 1830, so there will be no lines from me until he is back.",
            "away bed=7 at=18:30",
        ),
        ("Bed 7 went down to CT at 1830 and the drain went along.", "away bed=7 at=18:30"),
        ("Bed 7 came back from theatre at 1830 and everything is still connected.", "back bed=7 at=18:30"),
        (
            "We moved the patient from bed 16 to bed 18 because the call bell was broken, at about 1830.",
            "moved bed=16 at=18:30 to_bed=18",
        ),
        ("he was back in the chair, bed 3 450 at 1900", "mark bed=3 at=19:00 level_ml=450"),
    ],
)
def test_events_and_findings_in_whole_sentences_are_read(text: str, read: str) -> None:
    assert reading(text) == read


def test_two_things_of_one_bed_and_the_beds_of_a_nurse_are_read() -> None:
    first = "mark bed=17 at=18:45 level_ml=960"
    text = "Two things about bed 17. First, the line at 1845 is 960. Second, the leak has gone."
    assert reading(text) == f"{first}; checked bed=17 at=18:45 air_leak=none"
    text = "I'm looking after 2 and 3 tonight. Bed 2 at 1900: 310. Bed 3 at 1900: 440."
    assert reading(text) == "mark bed=2 at=19:00 level_ml=310; mark bed=3 at=19:00 level_ml=440"


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("the team put a right sided tube into bed 7 at 1730", "placed bed=7 tube=right at=17:30"),
        ("the right sided tube was put into bed 7 at 1730", "placed bed=7 tube=right at=17:30"),
        ("put the tube in bed 7 back on suction at 1730", "incident bed=7 at=17:30 what=suction_on"),
        ("they want to put a tube into bed 7 at 1730", "ask kind"),
        ("they put a feeding tube into bed 7 at 1730", ""),
    ],
)
def test_a_tube_that_was_put_into_a_bed_has_no_line_of_that_time(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 14 line at 1900 was 1850", "ask level_ml"),
        ("Closing bed 2 at 388 at 1855. It slowed right down.", "mark bed=2 at=18:55 level_ml=388 closing"),
        ("Bed 3 was discharged home at 1450, his tube stayed in with a valve.", "left bed=3 at=14:50"),
        ("bed 3 is post op valve", "described bed=3 reason=cardiac"),
        ("which beds still need a line before seven?", "asked topic=due"),
        (
            "I turned the lady in bed 15 onto her back, it was 375 at 1840.",
            "mark bed=15 at=18:40 level_ml=375",
        ),
        ("bed 15 is back, it was 375 at 1840.", "back bed=15 at=18:40; mark bed=15 at=18:40 level_ml=375"),
        ("Would you mind writing down 980 for bed 11 at 1845?", "mark bed=11 at=18:45 level_ml=980"),
        ("Bed 20 is at 1340 at 1855, new canister ordered", "mark bed=20 at=18:55 level_ml=1340"),
        ("Bed 20 is at 1340 at 1855, new canister connected", "ask level_ml"),
        ("The trial went fine and bed 1 was unclamped at 1800.", "incident bed=1 at=18:00 what=unclamped"),
        ("Bed 13 went to radiology at 1845 and should be back within the hour.", "away bed=13 at=18:45"),
    ],
)
def test_more_of_whole_sentences_is_read(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "Apologies, my phone was flat. The level in bed 8 at 1815 was 745.",
            "mark bed=8 at=18:15 level_ml=745",
        ),
        ("Bed 8 was 745 at 1815. Apologies, wrong bed.", "ask to_bed"),
        (
            "Good evening, night nurse for the back half. Bed 2 was 310 at 1900",
            "mark bed=2 at=19:00 level_ml=310",
        ),
        ("half of bed 4 was 640 at 1800", "ask level_ml"),
        (
            "We had an emergency in bay 2, so only now: bed 5 was 640 at 1800.",
            "mark bed=5 at=18:00 level_ml=640",
        ),
        ("he is in bay 2, 640 at 1800", "mark bed=2 at=18:00 level_ml=640"),
        (
            "The drain in bed 1 is clamped since 1800 by order of the team, they want to see if he copes.",
            "incident bed=1 at=18:00 what=clamped",
        ),
        ("A constant stream of bubbles in bed 12's water seal", "checked bed=12 air_leak=continuous"),
    ],
)
def test_an_apology_or_who_writes_before_a_line_tells_nothing(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "The wall suction was off in bed 12 when I arrived, I turned it back on at 1850.",
            "incident bed=12 what=suction_off; incident bed=12 at=18:50 what=suction_on",
        ),
        (
            "bed 12 suction was off at 1830, I turned it back on at 1850",
            "incident bed=12 at=18:30 what=suction_off; incident bed=12 at=18:50 what=suction_on",
        ),
        ("bed 12 suction was off at 1830, still off at 1850", "ask at"),
    ],
)
def test_a_suction_that_was_turned_on_again_is_told_with_its_time(text: str, read: str) -> None:
    assert reading(text) == read
