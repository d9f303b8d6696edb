"""What the nurses of a trauma ward write in the evening, in the shortest words."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("1050 in 12 at 1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed12 1050cc 7pm", "mark bed=12 at=19:00 level_ml=1050"),
        ("12 ct = 1050", "mark bed=12 level_ml=1050"),
        ("pt 12 at 1050 now", "mark bed=12 at=19:05 level_ml=1050"),
        ("hey marked 12's chest tube just now, its 1050", "mark bed=12 at=19:05 level_ml=1050"),
        (
            "12 (L) 340 / 12 (R) 120",
            "mark bed=12 tube=left level_ml=340; mark bed=12 tube=right level_ml=120",
        ),
        (
            "12 R 120, L 340, med 60 @1900",
            (
                "mark bed=12 tube=right at=19:00 level_ml=120; "
                "mark bed=12 tube=left at=19:00 level_ml=340; "
                "mark bed=12 tube=mediastinal at=19:00 level_ml=60"
            ),
        ),
        ("bed 12 canistor reads 1050", "mark bed=12 level_ml=1050"),
        ("bed 12 1050 give or take at 1900", "mark bed=12 at=19:00 level_ml=1050 about"),
        ("bed 12 mark 1,050 at 19:00", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 1.05L at 7 pm", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 12 level nine hundred and ten", "mark bed=12 level_ml=910"),
        ("bed 12 at ten to seven 910", "mark bed=12 at=18:50 level_ml=910"),
        ("bed 12 910 half hr ago", "mark bed=12 at=18:35 level_ml=910"),
        ("bed 12 910 about 20 mins ago", "mark bed=12 at=18:45 level_ml=910"),
        ("bed 12 noon mark 840, forgot to send", "mark bed=12 at=12:00 level_ml=840"),
        ("late entry bed 12 1500 mark 900", "mark bed=12 at=15:00 level_ml=900"),
        ("late entry: bed 12, 3 pm, 900", "mark bed=12 at=15:00 level_ml=900"),
        (
            "bed 12: 3pm 900, 4pm 930, 5pm 955, 6pm 1000, 7pm 1050",
            (
                "mark bed=12 at=15:00 level_ml=900; "
                "mark bed=12 at=16:00 level_ml=930; "
                "mark bed=12 at=17:00 level_ml=955; "
                "mark bed=12 at=18:00 level_ml=1000; "
                "mark bed=12 at=19:00 level_ml=1050"
            ),
        ),
        (
            "bed 12 drained 30 in the last hr, line 1050",
            "drained bed=12 volume_ml=30; mark bed=12 level_ml=1050",
        ),
        ("bed 12 zero output this hr", "drained bed=12 volume_ml=0"),
        ("bed 8 new R CT at 1740, initial 300", "placed bed=8 tube=right at=17:40 level_ml=300"),
        ("bed 8 weight 84", "described bed=8 weight_kg=84"),
        ("bed 8 84kg stab wound", "described bed=8 reason=trauma weight_kg=84"),
        ("swapped box on 8. last line 1960 at 1810", "exchanged bed=8 at=18:10 final_ml=1960"),
        ("need a new canister for 8", "asked bed=8 topic=capacity"),
        ("bed 5 down to IR at 1640 for drain", "away bed=5 at=16:40"),
        ("moved 5 over to 16", "moved bed=5 to_bed=16"),
        ("correction 12 is 1005 not 1050", "corrected bed=12 was_ml=1050 level_ml=1005"),
        ("fix: bed 12 7pm = 1005", "corrected bed=12 at=19:00 level_ml=1005"),
        ("my bad, bed 12 at 1900 was 1005", "mark bed=12 at=19:00 level_ml=1005"),
        ("transposed, 12 should read 1005", "corrected bed=12 level_ml=1005"),
        ("bed 12 time should be 1830 not 1900", "corrected bed=12 at=19:00 to_at=18:30"),
        ("entered 1050 on 12, meant 13", "corrected bed=12 was_ml=1050 to_bed=13"),
        ("change left to right for 12 1900", "corrected bed=12 tube=left at=19:00 to_tube=right"),
        ("delete 12 at 1900", "withdrawn bed=12 at=19:00"),
        (
            "12 dial 20 wall 80 ws 2 AL 0",
            "checked bed=12 seal_cm=2 suction_cmh2o=20 wall_mmhg=80 air_leak=none leak_grade=0",
        ),
        (
            "12 -20cm sxn, +AL 3, tidal+, sang",
            "checked bed=12 suction_cmh2o=20 air_leak=present leak_grade=3 tidaling=True fluid=sanguineous",
        ),
        ("12 no AL no crepitus dsg CDI", "checked bed=12 air_leak=none"),
        ("12 fluid went from serous to bloody", "checked bed=12 fluid=sanguineous"),
        ("12 straw colored, leak grade 1", "checked bed=12 air_leak=present leak_grade=1 fluid=serous"),
        ("12 orange float up", "checked bed=12 suction_indicator=in_range"),
        (
            "12 suction 20 per order, 1050 at 1900",
            "mark bed=12 at=19:00 level_ml=1050; ordered bed=12 at=19:00 suction_cmh2o=20",
        ),
        ("total on 12 from 0700 to now", "asked bed=12 topic=total window=07:00"),
        ("total 12 day shift", "asked bed=12 topic=total window=last_shift"),
        ("how much came out of 12 last hour", "asked bed=12 topic=total window=1h"),
        ("12 last 3 hrs?", "asked bed=12 topic=total window=3h"),
        ("whens 12 due", "asked bed=12 topic=due"),
        ("12 still open?", "asked bed=12 topic=open"),
        ("12 misread", "answered bed=12 choice=misread"),
        ("new box", "answered choice=new_canister"),
        ("y 12", "answered bed=12 answer=yes"),
        ("at 7", "answered at=19:00"),
        ("12-1050-1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("12/1050/1900", "mark bed=12 at=19:00 level_ml=1050"),
        ("12 1050@19", "mark bed=12 at=19:00 level_ml=1050"),
        ("bed 5 put out 200-250", "ask volume_ml"),
        ("bed 5 mark 640-1900", "mark bed=5 at=19:00 level_ml=640"),
        ("bed 12 foley 300 canister 450", "mark bed=12 level_ml=450"),
        ("bed 13 ordered to water seal", "ordered bed=13 suction_cmh2o=0"),
        ("whats the last line for bed 4", "asked bed=4 topic=last"),
        ("when will 8 fill up", "asked bed=8 topic=capacity"),
        (
            "1900 lines: bed 2 640, bed 4 155",
            "mark bed=2 at=19:00 level_ml=640; mark bed=4 at=19:00 level_ml=155",
        ),
        (
            "placed chest drain bed 15 right at 1810, opening level 250, haemothorax",
            "placed bed=15 tube=right at=18:10 level_ml=250 reason=trauma",
        ),
    ],
)
def test_an_evening_message_is_read_as_its_nurse_meant_it(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 L ant 340 L post 95", "ask level_ml"),
        ("bed 12 lvl 1O50", "ask level_ml"),
        ("bed 12 drainge 1050 at 1900", "ask kind"),
        ("bed 12 meniscus just above 1050", "ask level_ml"),
        ("bed 12 a hair under 1050", "ask level_ml"),
        ("bed 12 1050 +/- 10", "ask level_ml"),
        ("bed 12 1 litre 50", "ask level_ml"),
        ("bed 12 at midnight was 700", "ask at"),
        ("bed 12 hourly output 15-16 30, 16-17 25", "ask volume_ml"),
        ("bed 12 1050 which is 60 more than 1800", "ask level_ml"),
        ("bed 12 up 60, now 1050", "ask level_ml"),
        ("bed 12 output 60 for 1800-1900", "ask at"),
        ("bed 12 bone dry since noon", "ask kind"),
        ("bed 12 stopped draining", "ask level_ml"),
        ("bed 12 1050 no change", "ask volume_ml"),
        ("trauma in 8, bilat CTs placed 1740, R had 300 out, L 50", "ask level_ml"),
        ("bed 8 gsw, R 36fr ct placed at 1740", "ask level_ml"),
        ("bed 8 canister swap at 1815: out 1960 / in 0", "ask final_ml"),
        ("8: threw old canister away before reading it, new one on at 1815", "ask kind"),
        ("8 accidentally changed the canister on wrong pt", "ask level_ml"),
        ("canister on 8 almost full 1900", "ask bed"),
        ("8's box 3/4 full", "ask level_ml"),
        ("bed 5 chest tubes out 1600 both", "ask level_ml"),
        ("bed 5 med tube out at 1600 pacing wires still in", "ask level_ml"),
        ("bed 5 L CT dc 1600 w/ 540", "ask at"),
        ("bed 5 foley out at 1600", "ask kind"),
        ("bed 5 JP removed 1600", "ask level_ml"),
        ("bed 5 a-line out 1500", "ask kind"),
        ("bed 5 extubated 1500", "ask level_ml"),
        ("bed 5 OOB to chair 1600", "ask level_ml"),
        ("bed 5 back 1755 w new R pigtail", "ask kind"),
        ("bed 5 xfer to 5 west", "ask level_ml"),
        ("bed 5 swapped w bed 6", "ask final_ml"),
        ("16 used to be 5", "ask bed"),
        ("12 s/b 1005", "ask bed"),
        ("bed 12 1900 reading was really 1800", "ask at"),
        ("bed 12 the 1050 was at 1845", "ask level_ml"),
        ("charted on wrong bed - 1050 goes to 13 not 12", "ask level_ml"),
        ("dont count the 1900 on 12", "ask kind"),
        ("nm wrong pt", "ask bed"),
        ("did anyone mark 12 at 1800", "ask bed"),
        ("12 abg 7.35 40 90", ""),
        ("12 CI 2.1 MAP 68 CT 1050", "ask level_ml"),
        ("12 MAP 68 on 5 of levo", ""),
        ("12 got 2 prbc 1 ffp", ""),
        ("12 lactate 4.2 at 1800", ""),
        ("12 u/o 30/hr", ""),
        ("12 evd 10 at 1900", ""),
        ("12 temp 38.2", ""),
        ("12 room temp 70", ""),
        ("12 plt 90", ""),
        ("12 BG 180 at 1800", ""),
        ("12 po 240", "ask level_ml"),
        ("12 IS 1250 x10", "ask level_ml"),
        ("12 walked 300 ft", "ask level_ml"),
        ("12 HOB 30", "ask level_ml"),
        ("12 NPO after 0000", "ask level_ml"),
        ("12 pain 6 gave 4 morphine", "ask bed"),
        ("12 call if >200/hr", "ask kind"),
        ("12 expecting 100 an hour", "ask kind"),
        ("12 should be around 1050 by now", "ask kind"),
        ("12 no more than 1050", "ask level_ml"),
        ("12 not 1050", "ask level_ml"),
        ("12 wasnt 1050", "ask kind"),
        ("12 ~1050??", "ask level_ml"),
        ("12 says 1050 on paper chart", "ask kind"),
        ("per Jo 12 was 1050 at 1800", "ask level_ml"),
        ("12 1050 uh 1060", "ask level_ml"),
        ("12 1050 correction 1060", "ask level_ml"),
        ("12 and 13 1050", "ask level_ml"),
        ("12 13 14", "ask bed"),
        ("12 1050 1060 1070", "ask level_ml"),
        ("12 7", "ask level_ml"),
        ("12 in 30 min", "ask kind"),
    ],
)
def test_an_evening_message_that_is_not_sure_or_not_ours_tells_nothing(text: str, read: str) -> None:
    assert reading(text) == read
