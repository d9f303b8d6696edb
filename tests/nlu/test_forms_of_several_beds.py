"""Two and three things told of as many beds in one message, every kind beside every other and parted in many
ways: each is of the bed of its own clause, or asked, and what was read as one bed's is never another's."""

from __future__ import annotations

import random
import re
from itertools import product

import pytest

from tests.nlu.forms import Form, form, held, share_read

EACH = 1
"""Fillings of a form: there are many forms."""
STOPS = (". ", ", ", "; ", "\n", " and ", ", then ", " - ", " / ", " + ")
CLAUSES = {
    "mark bed={b} level_ml={l} at={m}": ("{b} {l} at {t}", "bed {b} line {l} at {t}", "bed {b} {l} mL {t}"),
    "exchanged bed={b} at={m} final_ml={l}": (
        "{b} canister changed at {t}, old {l}",
        "changed canister on bed {b} at {t}, old one {l}",
    ),
    "exchanged bed={b} at={m}": ("{b} canister changed at {t}", "swapped the canister on bed {b} at {t}"),
    "removed bed={b} at={m} level_ml={l}": (
        "{b} tube out at {t}, final {l}",
        "tube out on {b} at {t}, {l} mL in the box",
    ),
    "removed bed={b} at={m}": ("{b} tube out at {t}", "pulled the tube on bed {b} at {t}"),
    "away bed={b} at={m}": ("{b} to CT at {t}", "bed {b} off the floor since {t}"),
    "back bed={b} at={m}": ("{b} back at {t}", "bed {b} back from CT {t}"),
    "incident bed={b} at={m} what=tipped": ("{b} canister tipped over at {t}", "bed {b} tipped {t}"),
    "incident bed={b} at={m} what=clamped": ("{b} clamped at {t}", "bed {b} tube clamped {t}"),
    "incident bed={b} at={m} what=unclamped": ("{b} unclamped at {t}",),
    "placed bed={b} at={m}": ("new chest tube in {b} at {t}",),
    "checked bed={b} air_leak=none": ("{b} no air leak", "bed {b} no leak"),
    "checked bed={b} suction_cmh2o=20": ("{b} suction 20", "bed {b} on suction -20"),
    "checked bed={b} seal_cm=2": ("{b} seal 2 cm", "bed {b} water seal at 2 cm"),
    "checked bed={b} tidaling=True": ("{b} tidaling", "bed {b} tidaling fine"),
    "checked bed={b} fluid=serosanguineous": ("{b} serosanguineous",),
    "ordered bed={b} suction_cmh2o=20": ("dr wants {b} on suction 20",),
    "drained bed={b} volume_ml=0": ("nothing drained on {b} since {t}", "{b} no change"),
    "asked bed={b} topic=last": ("what's the last line on {b}?",),
    "": ("{b} bp 110/60", "bed {b} urine 200 at {t}", "{b} pain 4"),
}
SAID = {
    "mark bed={b} level_ml={l} at={m}": ("bed {b} mark {l} at {t}", "bed {b} line {l} milliliters at {t}"),
    "exchanged bed={b} at={m} final_ml={l}": (
        "bed {b} canister changed at {t} the old one was {l}",
        "changed the canister on bed {b} at {t} old one {l}",
    ),
    "removed bed={b} at={m} level_ml={l}": (
        "bed {b} chest tube out at {t} final {l}",
        "chest tube on bed {b} came out at {t} with {l} in the canister",
    ),
    "removed bed={b} at={m}": ("bed {b} tube out at {t}", "they pulled the tube on bed {b} at {t}"),
    "away bed={b} at={m}": ("bed {b} went to C T at {t}", "bed {b} off the floor since {t}"),
    "back bed={b} at={m}": ("bed {b} is back at {t}",),
    "incident bed={b} at={m} what=tipped": ("bed {b} canister tipped over at {t}",),
    "incident bed={b} at={m} what=clamped": ("bed {b} clamped at {t}",),
    "placed bed={b} at={m}": ("new chest tube in bed {b} at {t}",),
    "checked bed={b} air_leak=none": ("bed {b} no air leak",),
    "checked bed={b} tidaling=True": ("bed {b} is tidaling",),
    "ordered bed={b} suction_cmh2o=20": ("doctor wants bed {b} on suction twenty",),
    "drained bed={b} volume_ml=0": ("nothing drained on bed {b}", "bed {b} no change"),
    "asked bed={b} topic=last": ("what's the last line on bed {b}",),
    "": ("bed {b} blood pressure one ten over sixty",),
}
"""The same said aloud; a recogniser puts few stops or none."""
PAUSES = (". ", ", ", " and ", " then ", " ", " and then ")
HEADED = re.compile(r"^ordered.*; checked.*suction|^checked.*suction.*; ordered")
"""An order before or behind a suction that may be of it: asked or not, by its wording."""
REMARKS = ("", "", "", ". thanks", ". all good otherwise", ", family at bedside")


def of_bed(words: str, number: int) -> str:
    """The same of the second or third bed."""
    return re.sub(r"\{([a-z])\}", rf"{{\g<1>{number}}}", words) if number > 1 else words


def told(
    meanings: tuple[str, ...],
    texts: tuple[str, ...],
    rng: random.Random,
    stops: tuple[str, ...] = STOPS,
) -> Form:
    """These clauses, one a bed, parted as drawn; a check may have the time of a line beside it."""
    parts = [of_bed(text, number) for number, text in enumerate(texts, 1)]
    text = parts[0] + "".join(rng.choice(stops) + part for part in parts[1:])
    text += rng.choice(REMARKS) if stops is STOPS else ""
    mine = [of_bed(meaning, number) for number, meaning in enumerate(meanings, 1)]
    times = ["", *(f" at={{m{number if number > 1 else ''}}}" for number in range(1, len(mine) + 1))]
    timed = [[m + at for at in times] if m.startswith(("checked", "drained")) else [m] for m in mine if m]
    return form(text, *("; ".join(each) for each in product(*timed)))


def pairs(clauses: dict[str, tuple[str, ...]], stops: tuple[str, ...]) -> list[Form]:
    """Every kind beside every other."""
    rng = random.Random("pairs")
    return [
        told((one, other), (rng.choice(clauses[one]), rng.choice(clauses[other])), rng, stops)
        for one, other in product(clauses, repeat=2)
        if (one or other) and not HEADED.search(f"{one}; {other}")
    ]


def threes(count: int) -> list[Form]:
    """So many drawn threes."""
    rng, kinds = random.Random("threes"), [kind for kind in CLAUSES if kind]
    found: list[Form] = []
    while len(found) < count:
        three = rng.sample(kinds, 3)
        if "ordered" not in " ".join(three):
            found.append(told(tuple(three), tuple(rng.choice(CLAUSES[kind]) for kind in three), rng))
    return found


PAIRS, ALOUD, THREES = pairs(CLAUSES, STOPS), pairs(SAID, PAUSES), threes(120)


@pytest.mark.parametrize("each", [*PAIRS, *THREES], ids=lambda each: each.text)
def test_nothing_is_accepted_of_another_bed(each: Form) -> None:
    assert held(each, EACH)[0] == ()


@pytest.mark.parametrize("each", ALOUD, ids=lambda each: each.text)
def test_nothing_is_accepted_of_another_bed_aloud(each: Form) -> None:
    assert held(each, EACH, "voice")[0] == ()


def test_most_pairs_are_read() -> None:
    assert share_read(PAIRS, EACH) > 0.98


def test_most_pairs_are_read_aloud() -> None:
    assert share_read(ALOUD, EACH, "voice") > 0.95


def test_most_threes_are_read() -> None:
    assert share_read(THREES, EACH) > 0.95
