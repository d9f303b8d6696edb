"""What the nurses of many wards write at the end of a night."""

from __future__ import annotations

import pytest

from .saying import MORNING, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 6 CT pulled by Dr Hale 0540, last reading 275", "removed bed=6 at=05:40 level_ml=275"),
        (
            "bed 14 tube clamped for transport 6am, unclamped 615",
            "incident bed=14 at=06:00 what=clamped; incident bed=14 at=06:15 what=unclamped",
        ),
        (
            "12 - 530 @ 0600, 12 - 555 @ 0650",
            "mark bed=12 at=06:00 level_ml=530; mark bed=12 at=06:50 level_ml=555",
        ),
        (
            "new right pleural drain at 0600, 150 in it, bed 4",
            "placed bed=4 tube=right pleural at=06:00 level_ml=150",
        ),
        (
            "bed 4 new right pleural drain at 0600, 150 in it",
            "placed bed=4 tube=right pleural at=06:00 level_ml=150",
        ),
        ("total bed 2 since 0100", "asked bed=2 topic=total window=01:00"),
        (
            "changed the canister bed 8 at 0330, old one 1860, now 60 at 0400",
            "exchanged bed=8 at=03:30 final_ml=1860; mark bed=8 at=04:00 level_ml=60",
        ),
        (
            "Bed 4 drain 620 at 06:45, swinging, not bubbling",
            "mark bed=4 at=06:45 level_ml=620; checked bed=4 at=06:45 air_leak=none tidaling=True",
        ),
        ("b4 620mls 0645", "mark bed=4 at=06:45 level_ml=620"),
        ("bay 4 chest drain marked at 620 @ quarter to 7", "mark bed=4 at=06:45 level_ml=620"),
        ("4: 620 6 : 310 9 : 75", "mark bed=4 level_ml=620; mark bed=6 level_ml=310; mark bed=9 level_ml=75"),
        (
            "rounds done. 4 620, 6 310, 9 75 all at 0645",
            (
                "mark bed=4 at=06:45 level_ml=620; "
                "mark bed=6 at=06:45 level_ml=310; "
                "mark bed=9 at=06:45 level_ml=75"
            ),
        ),
        ("bed 4 no drainage overnight", "drained bed=4 volume_ml=0"),
        (
            "bed 4 hourly marks 0300 540, 0400 595, 0500 625",
            (
                "mark bed=4 at=03:00 level_ml=540; "
                "mark bed=4 at=04:00 level_ml=595; "
                "mark bed=4 at=05:00 level_ml=625"
            ),
        ),
        (
            "bed 4 left basal 620 right apical 40 0645",
            (
                "mark bed=4 tube=left basal at=06:45 level_ml=620; "
                "mark bed=4 tube=right apical at=06:45 level_ml=40"
            ),
        ),
        ("bed 4 drain A 620 drain B 40", "mark bed=4 tube=A level_ml=620; mark bed=4 tube=B level_ml=40"),
        (
            "bed 4 tube 1 620 tube 2 40 at 0645",
            "mark bed=4 tube=1 at=06:45 level_ml=620; mark bed=4 tube=2 at=06:45 level_ml=40",
        ),
        ("about 600 in bed 4's bottle", "mark bed=4 level_ml=600 about"),
        ("approx 600 bed 4 hard to see meniscus", "mark bed=4 level_ml=600 about"),
        ("4 drained roughly 150 since 0300", "drained bed=4 volume_ml=150 about"),
        ("put out a further 80 bed 4", "drained bed=4 volume_ml=80"),
        ("bed 4 gave 90 the last hour", "drained bed=4 volume_ml=90"),
        ("bed 4 90 more since 5", "drained bed=4 volume_ml=90"),
        ("new drain bed 9 at 0300 for empyema", "placed bed=9 at=03:00 reason=effusion"),
        ("bed 9 second drain put in on the right at 0430", "placed bed=9 tube=right at=04:30"),
        ("bottle changed bed 9 0500, 1950 in old bottle", "exchanged bed=9 at=05:00 final_ml=1950"),
        ("bed 9 new bottle 0500, old bottle had 1950", "exchanged bed=9 at=05:00 final_ml=1950"),
        ("bed 9 bottle full at 1950 so changed it at 5am", "exchanged bed=9 at=05:00 final_ml=1950"),
        ("bottle swapped bed 9 - forgot to read the old one", "exchanged bed=9"),
        ("drain removed bed 9 by SpR at 0515", "removed bed=9 at=05:15"),
        ("drain out bed 9 0515, 1210 in bottle", "removed bed=9 at=05:15 level_ml=1210"),
        ("9 has gone to theatre 0600", "away bed=9 at=06:00"),
        ("bed 9 gone for CXR", "away bed=9"),
        ("9 back on the ward", "back bed=9"),
        ("bed 9 RIP at 0420", "left bed=9 at=04:20"),
        ("bed 9 transferred to ITU 0200", "left bed=9 at=02:00"),
        ("bed 4 should have been 602 not 620", "corrected bed=4 was_ml=620 level_ml=602"),
        ("sorry bed 4 is 602", "mark bed=4 level_ml=602"),
        ("wrong bed, that was bed 6 not 4", "corrected bed=4 to_bed=6"),
        ("bed 4 0645 reading belongs to 6", "corrected bed=4 at=06:45 to_bed=6"),
        ("that was the right tube not left", "corrected tube=left to_tube=right"),
        ("I meant 0545", "corrected to_at=05:45"),
        ("ignore the 0645 for bed 4", "withdrawn bed=4 at=06:45"),
        ("scrap that", "withdrawn"),
        ("bed 4 seal topped up, now 2 cm", "checked bed=4 at=06:55 seal_cm=2"),
        ("bed 4 suction turned down to 10", "checked bed=4 suction_cmh2o=10"),
        ("bed 4 surgical reg wants suction at 10", "ordered bed=4 suction_cmh2o=10"),
        ("4 drain disconnected from suction 0630", "incident bed=4 at=06:30 what=disconnected"),
        ("bed 4 drain was lifted above chest by porter", "incident bed=4 what=raised"),
        ("bed 4 clamped for 1 hr", "incident bed=4 what=clamped"),
        ("4's drain on its side when I came in", "incident bed=4 what=tipped"),
        ("how much overnight bed 4", "asked bed=4 topic=total window=shift"),
        ("bed 4 total overnight?", "asked bed=4 topic=total window=shift"),
        ("when did bed 4 last get marked", "asked bed=4 topic=last"),
        ("is anything overdue", "asked topic=due"),
        ("handover 4 and 9", "asked bed=4 topic=handoff; asked bed=9 topic=handoff"),
        ("how's bed 4 trending over the last 6 hours", "asked bed=4 topic=trend window=6h"),
        ("bed 4 rate?", "asked bed=4 topic=rate"),
        ("total from bed 4 since the drain went in", "asked bed=4 topic=total window=placement"),
        ("what's bed 4 put out since midnight", "asked bed=4 topic=total window=00:00"),
        ("volumes for 4 this shift", "asked bed=4 topic=chart window=shift"),
        ("repeat please", "asked topic=repeat"),
        ("thanks noted bed 4", "acknowledged bed=4"),
        ("no", "answered answer=no"),
        ("no 602", "answered answer=no level_ml=602"),
        ("earlier one was wrong", "answered choice=earlier_wrong"),
        ("second one", "answered choice=second"),
        ("bed 4 yes", "answered bed=4 answer=yes"),
        ("6:45", "answered at=06:45"),
        ("bed 4 UO 450 overnight drain 620", "mark bed=4 level_ml=620"),
        ("bed 4 drain 620 yesterday 0645", "mark bed=4 at=03-Mar-06:45 level_ml=620"),
        ("bed 4 0.62 L at 0645", "mark bed=4 at=06:45 level_ml=620"),
        (
            "bed 4 0300-540 0400-595 0500-625",
            "mark bed=4 at=03:00 level_ml=540; mark bed=4 at=04:00 level_ml=595; "
            "mark bed=4 at=05:00 level_ml=625",
        ),
    ],
)
def test_a_morning_message_is_read_as_its_nurse_meant_it(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 0640", "ask level_ml"),
        ("bed 4 nothing out all night, still 620", "ask at"),
        ("bed 4 hourly: 0300 40, 0400 55, 0500 30", "ask level_ml"),
        ("seldinger drain in bed 9 on the right at 3am", "ask level_ml"),
        ("bed 9 post oesophagectomy with right drain", "ask kind"),
        ("bed 9 both drains to one bottle now", "ask level_ml"),
        ("bed 9 needs bottle changing", "ask kind"),
        ("changing bed 9's bottle at 0730", "ask at"),
        ("for drain removal bed 9 today", "ask kind"),
        ("bed 9 ?remove drain today", "ask level_ml"),
        ("bed 9's drain to come out after rounds", "ask kind"),
        ("bed 9 R tube pulled L stays", "ask level_ml"),
        ("swapped beds 9 and 10", "ask to_bed"),
        ("bed 9 to be transferred to ITU", "ask kind"),
        ("bed 9 for discharge today", "ask level_ml"),
        ("last one was bed 6", "ask kind"),
        ("bed 4 suction 3kPa", "ask suction_cmh2o"),
        ("bed 4 -20 suction on, bubbling on cough, swinging", "ask bed"),
        ("who's logged in", "ask kind"),
        ("bed 4 catheter 450", "ask level_ml"),
        ("bed 4 drank 200", ""),
        ("bed 4 EWS 3", ""),
        ("bed 4 sats 94 on 2L", ""),
        ("bed 4 98/60", "ask level_ml"),
        ("bed 4 Hb 82, drain 620", "mark bed=4 level_ml=620"),
        ("bed 4 1000 mls hartmanns up", "ask level_ml"),
        ("bed 4 paracetamol 1g at 0600", ""),
        ("bed 4 drain not draining", "ask level_ml"),
        ("bed 4 has not drained 100", "ask kind"),
        ("if bed 4 goes over 700 ring the reg", "ask kind"),
        ("bed 4 will be 700 by 8", "ask kind"),
        ("was told 620 for bed 4", "ask level_ml"),
        ("bed 4 620ish or 630", "ask level_ml"),
        ("bed 4 620/630", "ask level_ml"),
        ("bed 4 62O", "ask level_ml"),
        ("bed 4 6 20", "ask bed"),
        ("bed 4 620 625", "ask level_ml"),
        ("bed 4 or 5 620", "ask bed"),
        ("bed 4 620 at 0645 or 0630", "ask at"),
        ("bed 4 drain 6 french", "ask level_ml"),
        ("bed 4 28Fr drain", "ask level_ml"),
        ("bed 4 drain site clean 620", "ask level_ml"),
        ("pt 4 cm below line", "ask level_ml"),
        ("bed 4 day 2 post op drain 620", "ask level_ml"),
        ("bed 4 aged 62 drain 620 at 0645", "ask level_ml"),
        ("bed 4 bleep 2150 re drain", "ask level_ml"),
    ],
)
def test_a_morning_message_that_is_not_sure_or_not_ours_tells_nothing(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 9 not tidaling any more 0620", "checked bed=9 at=06:20 tidaling=False"),
        ("bed 9 no leak anymore, seal 2", "checked bed=9 seal_cm=2 air_leak=none"),
        ("bed 9 any more out?", "asked bed=9 topic=total"),
        ("bed 5 tipped over at 0300, put it back upright", "incident bed=5 at=03:00 what=tipped"),
        ("bed 5 put him back on suction 20 at 0400", "checked bed=5 at=04:00 suction_cmh2o=20"),
        ("bed 8 nil x 2h", "drained bed=8 volume_ml=0"),
        ("bed 8 no output x3h", "drained bed=8 volume_ml=0"),
        ("bed 8 level same as 0500", "drained bed=8 volume_ml=0"),
        ("bed 8 same as 340", "ask volume_ml"),
        ("bed 8 canister change due", "ask kind"),
        ("bed 8 tube removal pending", "ask kind"),
        ("bed 8 suction 20->10", "ask suction_cmh2o"),
        ("day rn marked bed 8 line 1050 before she left", "ask level_ml"),
        ("bed 8 + 50", "ask level_ml"),
        ("bed 8 plus 50 at 0600", "ask level_ml"),
        ("beds 8 + 11 no leak", "checked bed=8 air_leak=none; checked bed=11 air_leak=none"),
    ],
)
def test_little_words_are_read_with_those_that_they_belong_to(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize("text", ["22A 300 0600", "bed 22A 300 at 0600", "mark bed 22 300A", "bed 5 340a"])
def test_a_letter_that_is_glued_to_a_number_is_never_dropped(text: str) -> None:
    assert reading(text, arrived=MORNING).startswith("ask ")


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 line 620, dr rounded at 0630", "ask at"),
        ("bed 4 620, turned 0600", "ask level_ml"),
        ("bed 4 620, pt vomited at 0530", "mark bed=4 level_ml=620"),
        ("bed 4 620, read by amy at 0630", "mark bed=4 at=06:30 level_ml=620"),
        ("bed 4 620. that's from 0630", "mark bed=4 at=06:30 level_ml=620"),
        ("bed 4 620, pt comfortable, 0630", "mark bed=4 at=06:30 level_ml=620"),
    ],
)
def test_a_time_is_of_the_line_unless_something_else_was_done_then(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [("bed 4 620 6:3o", "ask at; ask level_ml"), ("620?", "ask level_ml"), ("620", "answered level_ml=620")],
)
def test_a_number_that_is_half_read_or_asked_is_never_taken(text: str, read: str) -> None:
    assert reading(text, arrived=MORNING) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 4 640 0650", "mark bed=4 at=06:50 level_ml=640"),
        ("4 640 0645", "mark bed=4 at=06:45 level_ml=640"),
        ("bed 4 closing 640 0650", "mark bed=4 at=06:50 level_ml=640 closing"),
        ("b4 left 615 0650", "mark bed=4 tube=left at=06:50 level_ml=615"),
        ("bed 4 0640 650", "mark bed=4 at=06:40 level_ml=650"),
    ],
)
def test_a_level_that_could_be_a_time_stands_beside_what_can_only_be_one(text: str, read: str) -> None:
    """No line is written 0650; "640 1850" may be either way round and is asked in the evening."""
    assert reading(text, arrived=MORNING) == read


def test_of_two_numbers_that_could_both_be_either_none_is_taken() -> None:
    assert reading("bed 4 640 1850", arrived=MORNING.replace(hour=18)).startswith("ask")


@pytest.mark.parametrize("text", ["4 unchanged at 640", "bed 4 no change at 645"])
def test_what_a_line_is_unchanged_at_may_be_when(text: str) -> None:
    assert reading(text, arrived=MORNING) == "ask at"


def test_a_line_that_is_unchanged_has_a_time_that_is_none_of_its_levels() -> None:
    assert reading("4 same at 0640", arrived=MORNING) == "drained bed=4 at=06:40 volume_ml=0"
