"""A ward dictates: what nurses say with busy hands, as a recogniser writes it."""

from __future__ import annotations

import pytest

from .saying import reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bed twenty two three forty nineteen hundred", "mark bed=22 at=19:00 level_ml=340"),
        ("no it's eleven fifty", "answered answer=no level_ml=1150"),
        ("yes eleven fifty", "answered answer=yes level_ml=1150"),
        ("uh yes", "answered answer=yes"),
        ("yeah uh yes", "answered answer=yes"),
        ("um no", "answered answer=no"),
        ("misread it should be nine eighty", "answered choice=misread level_ml=980"),
        ("the first one", "answered choice=first"),
        ("it's ten fifty", "answered level_ml=1050"),
        ("ten fifty mils", "answered level_ml=1050"),
        ("at seven pm", "answered at=19:00"),
        (
            "bed twelve left two ten right one sixty at nineteen hundred",
            "mark bed=12 tube=left at=19:00 level_ml=210; mark bed=12 tube=right at=19:00 level_ml=160",
        ),
        (
            "bed twelve left two ten and right one sixty at seven p m",
            "mark bed=12 tube=left at=19:00 level_ml=210; mark bed=12 tube=right at=19:00 level_ml=160",
        ),
        (
            "bed four mark three forty and bed five mark two ten at nineteen hundred",
            "mark bed=4 at=19:00 level_ml=340; mark bed=5 at=19:00 level_ml=210",
        ),
        (
            "bed four three forty bed five two ten both at nineteen hundred",
            "mark bed=4 at=19:00 level_ml=340; mark bed=5 at=19:00 level_ml=210",
        ),
        ("bed nine mark uh six thirty um at nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("okay bed nine is at six thirty as of nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("bed bed nine mark mark six thirty at nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("bed nine mark six thirty no six forty at nineteen hundred", "ask level_ml"),
        ("bed nine mark six thirty I mean six forty at nineteen hundred", "ask level_ml"),
        ("bed nine sorry bed ten mark six thirty at nineteen hundred", "ask bed"),
        ("bed nine mark six thirty at nineteen hundred no eighteen hundred", "ask at"),
        ("bed nine mark one zero five zero at one nine zero zero", "mark bed=9 at=19:00 level_ml=1050"),
        ("bed nine mark one o five o at nineteen hundred", "mark bed=9 at=19:00 level_ml=1050"),
        ("bed ate mark six thirty at nineteen hundred", "mark bed=8 at=19:00 level_ml=630"),
        ("bed for mark six thirty at nineteen hundred", "mark bed=4 at=19:00 level_ml=630"),
        ("bed too mark six thirty at nineteen hundred", "mark bed=2 at=19:00 level_ml=630"),
        ("bed nine mark six thirty add nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("bed nine mark six thirty and nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("bed nine mark six hundred and thirty nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("bed nine drained another sixty", "drained bed=9 volume_ml=60"),
        ("bed nine put out two ten since the last mark", "drained bed=9 volume_ml=210"),
        ("bed nine same as before", "drained bed=9 volume_ml=0"),
        ("bed nine hasn't moved since seventeen hundred", "drained bed=9 volume_ml=0"),
        (
            "changed the canister on bed nine old one was eighteen sixty new one at zero",
            "exchanged bed=9 final_ml=1860; mark bed=9 level_ml=0",
        ),
        (
            "bed nine new box old box read eighteen sixty at eighteen thirty",
            "exchanged bed=9 at=18:30 final_ml=1860",
        ),
        (
            "bed nine chest tube pulled at eighteen fifteen final three forty",
            "removed bed=9 at=18:15 level_ml=340",
        ),
        (
            "bed nine heart rate ninety five mark six thirty at nineteen hundred",
            "mark bed=9 at=19:00 level_ml=630",
        ),
        ("what was the last mark on bed nine", "asked bed=9 topic=last"),
        ("how much has bed nine drained this shift", "asked bed=9 topic=total window=shift"),
        (
            "bed nine suction at twenty seal two no leak tidaling well",
            "checked bed=9 seal_cm=2 suction_cmh2o=20 air_leak=none tidaling=True",
        ),
        ("bed nine suction minus twenty wall ninety", "checked bed=9 suction_cmh2o=20 wall_mmhg=90"),
        ("bed nine end of shift mark twelve forty", "mark bed=9 level_ml=1240 closing"),
        ("delete the nineteen hundred mark on bed nine", "withdrawn bed=9 at=19:00"),
        ("correct bed nine nineteen hundred to ten oh five", "corrected bed=9 at=19:00 level_ml=1005"),
        (
            "bed nine the nineteen hundred mark should be ten oh five",
            "corrected bed=9 at=19:00 level_ml=1005",
        ),
        ("bed nine moved to bed fourteen", "moved bed=9 to_bed=14"),
        ("bed nine is off to c t", "away bed=9"),
        ("bed nine is back from c t", "back bed=9"),
        ("someone kicked over bed nine's box", "incident bed=9 what=tipped"),
        ("bed nine's tubing came apart", "incident bed=9 what=disconnected"),
        ("bed nine half a liter at nineteen hundred", "mark bed=9 at=19:00 level_ml=500"),
        ("bed nine one and a half liters at nineteen hundred", "mark bed=9 at=19:00 level_ml=1500"),
        ("bed nine one point four liters at nineteen hundred", "mark bed=9 at=19:00 level_ml=1400"),
        ("bed nine one point oh five liters at nineteen hundred", "mark bed=9 at=19:00 level_ml=1050"),
        ("bed nine mark about six fifty at nineteen hundred", "mark bed=9 at=19:00 level_ml=650 about"),
        ("bed nine mark six fifty ish at nineteen hundred", "mark bed=9 at=19:00 level_ml=650 about"),
        ("bed twelve tube b one twenty at nineteen hundred", "mark bed=12 tube=B at=19:00 level_ml=120"),
        ("bed twelve tube two one twenty at nineteen hundred", "mark bed=12 tube=2 at=19:00 level_ml=120"),
        ("mark for bed nine is six thirty time nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("at nineteen hundred bed nine was at six thirty", "mark bed=9 at=19:00 level_ml=630"),
        ("as of nineteen hundred bed nine reads six thirty", "mark bed=9 at=19:00 level_ml=630"),
        ("six thirty in bed nine at nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("bed nine up to six thirty twenty minutes ago", "mark bed=9 at=18:45 level_ml=630"),
        (
            "bed nine mark six thirty mL at nineteen hundred hours please and thanks",
            "mark bed=9 at=19:00 level_ml=630",
        ),
        (
            "hey penline bed nine mark six thirty at nineteen hundred thanks",
            "mark bed=9 at=19:00 level_ml=630",
        ),
        ("hi this is amy bed nine mark six thirty at nineteen hundred", "mark bed=9 at=19:00 level_ml=630"),
        ("seen bed nine", "acknowledged bed=9"),
        ("bed nine we changed the canister ten minutes ago", "exchanged bed=9 at=18:55"),
        (
            "bed nine new chest tube placed at eighteen forty post op heart",
            "placed bed=9 at=18:40 reason=cardiac",
        ),
        ("Bed 9, mark 6:30 at 19:00.", "mark bed=9 at=19:00 level_ml=630"),
        ("Bed 9 mark $6.30 at 7 PM.", "mark bed=9 at=19:00 level_ml=630"),
        ("Bed 9 mark 6 30 at 19 00", "mark bed=9 at=19:00 level_ml=630"),
        ("Bed 9. Mark 630. At 1900.", "mark bed=9 at=19:00 level_ml=630"),
        ("Bed 9 mark 1,050 mL at 7 p.m.", "mark bed=9 at=19:00 level_ml=1050"),
        ("Bed nine mark 10 50 at 19 hundred hours", "mark bed=9 at=19:00 level_ml=1050"),
        ("Bed 9 Mark 1050, 1900.", "mark bed=9 at=19:00 level_ml=1050"),
    ],
)
def test_what_is_said_whole_is_read(text: str, read: str) -> None:
    assert reading(text, channel="voice") == read


@pytest.mark.parametrize(
    "text",
    [
        "bed nine mark six thirty scratch that six forty",
        "bed nine mark six six thirty at nineteen hundred",
        "don't chart bed nine six thirty",
        "bed nine will be at six thirty by nineteen hundred",
        "bed nine at six thirty",
        "bed nine mark half seven",
        "bed nine mark between six and six fifty",
        "bed nine mark six hundred or six fifty at nineteen hundred",
        "bed nine mark ten ounces at nineteen hundred",
        "bed nine mark minus fifty",
        "room nine bed b mark six thirty",
        "bed nine bed ten mark six thirty at nineteen hundred",
        "bed thirteen or thirty mark six thirty",
        "bed nine canister needs to be changed at twenty hundred",
        "12 is at 1057 pm",
        "Bed 12 Mark 10,000 at 2215",
        "Bed 7 mark 640 mL at 90",
        "Bed 7 mark 640 at 25:10",
        "Bed 7 mark 6.40 at 1900",
        "bed twelve both tubes three forty",
    ],
)
def test_what_is_in_doubt_denied_or_taken_back_is_asked(text: str) -> None:
    assert reading(text, channel="voice").startswith("ask ")


@pytest.mark.parametrize(
    "text",
    [
        "bed nine goal is under three hundred",
        "bed nine urine output three hundred",
        "bed nine foley three hundred",
    ],
)
def test_what_is_not_ours_is_never_a_mark(text: str) -> None:
    assert "mark" not in reading(text, channel="voice")
