"""Beds whose labels have letters, as nurses write them."""

from __future__ import annotations

import pytest

from .saying import LETTERED, reading


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("CT1 mark 300 at 1900", "mark bed=CT1 at=19:00 level_ml=300"),
        ("ct1 300 at 1900", "mark bed=CT1 at=19:00 level_ml=300"),
        ("ct 1 mark 300", "mark bed=CT1 level_ml=300"),
        (
            "bed ct1 left 300 right 20 at 1900",
            "mark bed=CT1 tube=left at=19:00 level_ml=300; mark bed=CT1 tube=right at=19:00 level_ml=20",
        ),
        (
            "CT1 300, CT2 40 and CT3 1200 all at 1900",
            "mark bed=CT1 at=19:00 level_ml=300; "
            "mark bed=CT2 at=19:00 level_ml=40; "
            "mark bed=CT3 at=19:00 level_ml=1200",
        ),
        ("2A 300, 2B 410 at 1900", "mark bed=2A at=19:00 level_ml=300; mark bed=2B at=19:00 level_ml=410"),
        ("room 2 bed B mark 300 at 1900", "mark bed=2B at=19:00 level_ml=300"),
        ("rm 2b 300 at 1900", "mark bed=2B at=19:00 level_ml=300"),
        ("bed 2 B mark 300 at 1900", "mark bed=2B at=19:00 level_ml=300"),
        ("bed 2 left 300 at 1900", "mark bed=2 tube=left at=19:00 level_ml=300"),
        ("2B mark 360 at 1900", "mark bed=2B at=19:00 level_ml=360"),
        ("total 2B last shift", "asked bed=2B topic=total window=last_shift"),
        ("what do I chart for 2B", "asked bed=2B topic=chart"),
        ("moved CT1 to CT3", "moved bed=CT1 to_bed=CT3"),
        ("CT1 moved to CT3 at 1845", "moved bed=CT1 at=18:45 to_bed=CT3"),
        ("2a moved to 2b at 1800", "moved bed=2A at=18:00 to_bed=2B"),
        ("CT1 off to ct", "away bed=CT1"),
        ("ct1?", "asked bed=CT1 topic=last"),
        ("correct CT1 1900 to 300", "corrected bed=CT1 at=19:00 level_ml=300"),
        ("changed CT2 box, old one 1930", "exchanged bed=CT2 final_ml=1930"),
    ],
)
def test_labels_with_letters_are_beds(text: str, read: str) -> None:
    assert reading(text, LETTERED) == read
