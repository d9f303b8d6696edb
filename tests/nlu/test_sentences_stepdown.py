"""What the nurses of a step-down ward write, with corrections and lists."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("3 at 415 pt comfortable, wife here", "mark bed=3 level_ml=415"),
        ("3: line 415 (old 390)", "mark bed=3 level_ml=415"),
        ("bed 3 215 out since 1500, dr kim notified", "drained bed=3 volume_ml=215"),
        (
            "bed 3 dumped 215 when he stood up, line 630",
            "drained bed=3 volume_ml=215; mark bed=3 level_ml=630",
        ),
        ("bed 3 has put out 630 total", "drained bed=3 volume_ml=630"),
        ("bed 3 hit 630", "mark bed=3 level_ml=630"),
        (
            "3 reading 630, 7 reading 85, 11 reading 1220",
            "mark bed=3 level_ml=630; mark bed=7 level_ml=85; mark bed=11 level_ml=1220",
        ),
        ("3=630 7=85 11=1220", "mark bed=3 level_ml=630; mark bed=7 level_ml=85; mark bed=11 level_ml=1220"),
        (
            "3 630 @1830, 7 85 @1840, 11 same",
            "mark bed=3 at=18:30 level_ml=630; mark bed=7 at=18:40 level_ml=85; drained bed=11 volume_ml=0",
        ),
        ("bed 7 no drainage, tube patent", "drained bed=7 volume_ml=0"),
        ("bed 7 was clamped at 85", "mark bed=7 level_ml=85; incident bed=7 what=clamped"),
        ("bed 7 clamped, 85 at time of clamping", "mark bed=7 level_ml=85; incident bed=7 what=clamped"),
        ("bed 7 tube removed with 85 in chamber", "removed bed=7 level_ml=85"),
        ("bed 7 changed suction to 10 at 1800", "checked bed=7 at=18:00 suction_cmh2o=10"),
        ("bed 7 order changed: suction 10", "ordered bed=7 suction_cmh2o=10"),
        ("bed 7 new canister, old 1900 at 1800", "exchanged bed=7 at=18:00 final_ml=1900"),
        ("bed 7 unit swapped by day shift, final 1790", "exchanged bed=7 final_ml=1790"),
        ("bed 7 transfer to 19 done 1720", "moved bed=7 at=17:20 to_bed=19"),
        ("19 (was 7) 310", "mark bed=19 level_ml=310"),
        ("bed 19 returned 1800 mark 325", "back bed=19 at=18:00; mark bed=19 at=18:00 level_ml=325"),
        ("correct last: 352", "corrected level_ml=352"),
        ("typo, 352", "corrected level_ml=352"),
        ("*352", "answered level_ml=352"),
        ("sorry 352 not 325 bed 19", "corrected bed=19 was_ml=325 level_ml=352"),
        ("bed 19: 1800 mark wrong, 352", "corrected bed=19 at=18:00 level_ml=352"),
        ("that should be left tube, bed 19", "corrected bed=19 to_tube=left"),
        ("undo bed 19", "withdrawn bed=19"),
        ("please remove the duplicate for 19", "withdrawn bed=19"),
        ("cancel 1800 on 19, i'll redo it", "withdrawn bed=19 at=18:00"),
        (
            "bed 19 suction -20 to wall, level 325",
            "mark bed=19 level_ml=325; checked bed=19 suction_cmh2o=20",
        ),
        ("bed 19 leak only when coughs", "checked bed=19 air_leak=intermittent"),
        ("bed 19 seal 2.5", "checked bed=19 seal_cm=2.5"),
        (
            "bed 19 wall 90 dial -20 bellows out",
            "checked bed=19 suction_cmh2o=20 wall_mmhg=90 suction_indicator=in_range",
        ),
        ("bed 19 subq air R chest", ""),
        ("bed 19 xray shows small ptx", "described bed=19 reason=air"),
        ("bed 19 dx pleural effusion", "described bed=19 reason=effusion"),
        ("how many ccs since 3 for 19", "asked bed=19 topic=total window=15:00"),
        ("19 output so far today", "asked bed=19 topic=total window=day"),
        ("19 chart vol for 1800", "asked bed=19 at=18:00 topic=chart"),
        ("last 3 marks 19", "asked bed=19 topic=history"),
        ("what are you waiting on from me", "asked topic=open"),
        ("was 19 marked at 1800?", "asked bed=19 topic=last"),
        ("give me 19's 24 hr total and last mark", "asked bed=19 topic=total window=24h"),
        ("19 30", "mark bed=19 level_ml=30"),
        ("325", "answered level_ml=325"),
        ("its the new one", "answered choice=new_canister"),
    ],
)
def test_an_evening_message_is_read_as_its_nurse_meant_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed 3 ct output marked 415 @ 1855 no clots", "ask kind"),
        ("drain check bed 3: 415, tidaling, no leak, dressing intact", "ask kind"),
        ("bed 3 415 dr told", "ask level_ml"),
        ("bed 3 dr kim notified of 415", "ask level_ml"),
        ("3 gushed 400", "ask level_ml"),
        ("bed 3 oozing 5 an hour", "ask level_ml"),
        ("bed 3 about 20ml/hr", "ask level_ml"),
        ("bed 3 total 630 at 1900", "ask kind"),
        ("bed 3 passed the 630 line", "ask level_ml"),
        ("bed 7 nothing, bed 3 630", "ask level_ml"),
        ("bed 7 dry", "ask kind"),
        ("bed 7 has not put out since last mark", "ask volume_ml"),
        ("bed 7 clot in tube, 0 out this hr", "ask volume_ml"),
        ("bed 7 milked, got 40", "ask level_ml"),
        ("bed 7 R removed, L remains, L at 85", "ask level_ml"),
        ("bed 7 d/c tube tomorrow am", "ask kind"),
        ("bed 7 changed dressing at 1800", ""),
        ("bed 7 changed to water seal 1800", "ask kind"),
        ("bed 7 new system hooked up 1800, no output yet", "ask final_ml"),
        ("bed 7 canister leaking, swapped it at 1800, had 440", "ask final_ml"),
        ("7 and 19 switched rooms", "ask to_bed; ask to_bed"),
        ("19 went AMA 1650", "ask level_ml"),
        ("19 no longer here", "ask kind"),
        ("bed 19 empty", "ask kind"),
        ("bed 19 352! not 325", "ask level_ml"),
        ("bed 19 1800 was 352", "ask level_ml"),
        ("i gave you 19 but it was 20", "ask level_ml"),
        ("that last line was for the left", "ask kind"),
        ("time on that was 1745", "corrected to_at=17:45"),
        ("bed 19 leak 1-2", "ask leak_grade"),
        ("bed 19 seal dry, refilled", "ask kind"),
        ("bed 19 crepitus to neck", "ask kind"),
        ("bed 19 dusky drainage", "ask level_ml"),
        ("bed 19 air leak resolved this am", "ask at"),
        ("can 19's tube come out", "ask kind"),
        ("is 19 clamped", "ask kind"),
        ("ok", ""),
        ("k thx", ""),
        ("both", ""),
        ("neither", "ask kind"),
        ("i dont know", "ask kind"),
        ("not sure, about 350", "ask bed"),
        ("325 at 1800", "ask bed"),
    ],
)
def test_an_evening_message_that_is_not_sure_or_not_ours_tells_nothing(text: str, read: str) -> None:
    assert reading(text) == read
