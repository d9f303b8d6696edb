"""Lines of beds as they are dictated, in plain forms over many values: read as meant, or asked."""

from __future__ import annotations

import pytest

from tests.nlu.forms import Form, forms, held, share_read

EACH = 12
"""Fillings of a form."""
MARK = "mark bed={b} level_ml={l} at={m}"
OF_A_TUBE = "mark bed={b} tube={S} level_ml={l} at={m}"
BOTH = f"{OF_A_TUBE}; mark bed={{b}} tube={{S2}} level_ml={{l2}} at={{m}}"
TWO_BEDS = f"{MARK}; mark bed={{b2}} level_ml={{l2}} at={{m}}"
OWN_TIMES = f"{MARK}; mark bed={{b2}} level_ml={{l2}} at={{m2}}"
EXCHANGE = "exchanged bed={b} final_ml={l} at={m}"
HOURS = (
    "mark bed={b} level_ml={u} at={m3}; mark bed={b} level_ml={u2} at={m2}; mark bed={b} level_ml={u3} at={m}"
)
SAID = {
    MARK: (
        "bed {b} mark {l} at {t}",
        "bed {b} {l} at {t}",
        "Bed {b} at {l} at {t}.",
        "at {t} bed {b} is at {l}",
        "bed {b} {l} milliliters at {t}",
        "{l} on bed {b} at {t}",
        "the line on bed {b} is {l} at {t}",
        "bed {b} at {t} {l} milliliters",
        "um bed {b} uh {l} at {t}",
        "bed {b}, {l}, {t}",
        "mark {l} bed {b} at {t}",
        "for bed {b} I have {l} at {t}",
        "so bed {b} was at {l} when I checked at {t}",
        "I've got {l} on bed {b} at {t}",
        "{t} bed {b} {l} mls",
        "bed {b} {l} {t}",
        "bed {b} {l} add {t}",
    ),
    OF_A_TUBE: ("bed {b} {s} {l} at {t}", "{s} tube bed {b} is {l} at {t}", "bed {b} {s} side {l} at {t}"),
    BOTH: ("bed {b} {s} {l} {s2} {l2} at {t}", "bed {b} {s} tube {l} and {s2} tube {l2} at {t}"),
    TWO_BEDS: ("bed {b} {l} bed {b2} {l2} both at {t}", "at {t} bed {b} {l} bed {b2} {l2}"),
    OWN_TIMES: ("bed {b} {l} at {t} bed {b2} {l2} at {t2}",),
    EXCHANGE: (
        "changed the canister on bed {b} at {t} the old one was {l}",
        "at {t} I changed the canister in bed {b} old one at {l}",
    ),
    HOURS: (
        "bed {b} {u} at {t3} {u2} at {t2} {u3} at {t}",
        "bed {b} was {u} at {t3} then {u2} at {t2} and {u3} at {t}",
    ),
}
FORMS = forms(SAID)


@pytest.mark.parametrize("each", FORMS, ids=lambda each: each.text)
def test_what_is_said_is_never_read_as_something_else(each: Form) -> None:
    assert not held(each, EACH, "voice")[0]


def test_what_is_said_is_mostly_read() -> None:
    assert share_read(FORMS, EACH, "voice") > 0.9
