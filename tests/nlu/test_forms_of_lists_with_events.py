"""Lists of beds under one time, where one was read, or had something happen to it, at another."""

from __future__ import annotations

from itertools import product

import pytest

from tests.nlu.forms import Form, form, held, share_read
from tests.nlu.saying import reading

EACH = 3
"""Fillings of a form."""
LINES = "mark bed={{b}} level_ml={{l}} at={{m}}; mark bed={{b3}} level_ml={{l3}} at={{m}}; {event}"
EVENTS = {
    "tube out at {t2} final {w}": "removed bed={b2} level_ml={w} at={m2}",
    "canister changed at {t2} old {w}": "exchanged bed={b2} final_ml={w} at={m2}",
    "to CT at {t2}": "away bed={b2} at={m2}",
    "in theatre since {t2}": "away bed={b2} at={m2}",
    "tipped over at {t2}": "incident bed={b2} what=tipped at={m2}",
    "discharged at {t2}": "left bed={b2} at={m2}",
}
HEADS = ("{t}: ", "at {t} ", "{t} lines: ", "lines at {t} - ", "all at {t}: ")
OWN_TIME = "mark bed={b2} level_ml={l2} at={m2}"
OTHERS = {
    "{l2} at {t2}": OWN_TIME,
    "{l2} @{t2}": OWN_TIME,
    "no change": "drained bed={b2} volume_ml=0 at={m}",
    "about {l2}": "mark bed={b2} level_ml={l2} at={m} about",
    "{s} {l2} {s2} {w}": "mark bed={b2} tube={S} level_ml={l2} at={m}; "
    "mark bed={b2} tube={S2} level_ml={w} at={m}",
}
TAILS = (", all at {t}", " - all {t}", ". all read at {t}")
STOPS = (", ", "; ", "\n")


def _forms() -> list[Form]:
    headed = [(head, stop, "", said) for head, stop, said in product(HEADS, STOPS, EVENTS | OTHERS)]
    trailed = [("", ", ", tail, said) for tail, said in product(TAILS, list(EVENTS)[:3])]
    found: list[Form] = []
    for place, (head, stop, tail, said) in enumerate(headed + trailed):
        bed = "bed " * (place % 2)
        rows = stop.join((f"{bed}{{b}} {{l}}", f"{bed}{{b2}} {said}", f"{bed}{{b3}} {{l3}}"))
        found.append(form(f"{head}{rows}{tail}", LINES.format(event=(EVENTS | OTHERS)[said])))
    return found


@pytest.mark.parametrize("each", _forms(), ids=lambda each: each.text)
def test_the_time_of_an_event_is_no_time_of_the_lines_around_it(each: Form) -> None:
    assert not held(each, EACH)[0]


def test_such_lists_are_mostly_read() -> None:
    assert share_read(_forms(), EACH) > 0.9


@pytest.mark.parametrize(
    ("text", "read"),
    [
        (
            "1500: bed 3 165. bed 4 canister changed 1310, old 1205, now 40. bed 9 960",
            "mark bed=3 at=15:00 level_ml=165; exchanged bed=4 at=13:10 final_ml=1205; "
            "mark bed=4 at=19:05 level_ml=40; mark bed=9 at=15:00 level_ml=960",
        ),
        ("at 1900 bed 12 in theatre since 1820", "ask kind"),
        ("at 1700: 3 340, 4 50; at 1800: 3 360, 4 70", "mark bed=3 at=17:00 level_ml=340; "
         "mark bed=4 at=17:00 level_ml=50; mark bed=3 at=18:00 level_ml=360; "
         "mark bed=4 at=18:00 level_ml=70"),
        ("bed 3 280 at 1900, suction off since 1820", "mark bed=3 at=19:00 level_ml=280; "
         "incident bed=3 at=18:20 what=suction_off"),
    ],
)  # fmt: skip
def test_what_a_bed_has_since_is_of_that_bed(text: str, read: str) -> None:
    assert reading(text) == read
