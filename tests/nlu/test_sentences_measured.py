"""What is measured of a patient beside a line: none of its numbers is ever ours, and the line stands."""

from __future__ import annotations

import pytest

from .saying import reading

LINE = "mark bed=12 at=19:00 level_ml=340"
BOTH = "mark bed=3 tube=left at=19:00 level_ml=180; mark bed=3 tube=right at=19:00 level_ml=90"


@pytest.mark.parametrize(
    "told",
    [
        "bp 98/54 hr 104 uop 35",
        "BP 112/60, HR 88, sats 95%",
        "hr 104",
        "rr 18 o2 1L",
        "breathing easier rr 18 o2 1L",
        "sats 95 2L",
        "spo2 93 on 4 L NC",
        "temp 37.8",
        "t 38.1",
        "k 3.4",
        "K+ 3.2, mg 1.6",
        "blood glucose 11.2",
        "ci 2.4",
        "trop 0.4",
        "abg 7.32/48/80",
        "vent 16/450/5/40",
        "gcs 15 pupils equal 3mm",
    ],
)
@pytest.mark.parametrize("stop", [". ", ", ", " "])
def test_a_whole_line_stands_before_what_is_measured(told: str, stop: str) -> None:
    assert reading(f"bed 12 340 at 1900{stop}{told}") == LINE


@pytest.mark.parametrize("told", ["sats 95 2L", "hr 88 bp 112/60 sat 95 2L", "k 3.4", "pupils equal 3mm"])
@pytest.mark.parametrize("stop", [". ", ", "])
def test_a_whole_line_stands_behind_what_is_measured(told: str, stop: str) -> None:
    assert reading(f"{told}{stop}bed 12 340 at 1900") == LINE


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("hr 88 bp 112/60 sat 95 2L ct 340 bed 12 at 1900", LINE),
        ("bed 3 left 180 right 90 at 1900. sats 95 2L", BOTH),
        ("14 1250 @ 18:50. hb 8.2", "mark bed=14 at=18:50 level_ml=1250"),
        ("gcs 14 bed 6 pupils equal 3mm", ""),
        ("bed 12 hr 104 at 1900", ""),
        ("bed 12 bp 98/54", ""),
        ("bed 3 left 180 right 90 at 1900. bed 18 refused obs", BOTH),
    ],
)
def test_no_number_of_what_is_measured_is_ours(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("hr 88 340 bed 12 at 1900", "ask at"),
        ("hr 88 bed 12 340 at 1900", "ask at"),
        ("1900 bed 3 bp 110 bed 5 90", "ask level_ml"),
        ("bed 3 bp 110, bed 5 90", "ask kind; ask kind"),
        ("sats 95 bed 3, 92 bed 5", "ask kind; ask level_ml"),
        ("bp 9 120, 10 130, 11 90", "ask kind; ask kind"),
        ("bed 12 2L 340 at 1900", "ask at"),
        ("bed 12 mark 1.2 L at 1900", "mark bed=12 at=19:00 level_ml=1200"),
        ("bed 12 hr 340 at 1900", ""),
        ("bed 12 wall 90 suction 20", "checked bed=12 suction_cmh2o=20 wall_mmhg=90"),
    ],
)
def test_what_only_looks_measured_is_read_as_before(text: str, read: str) -> None:
    assert reading(text) == read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("11 sat up 540 at 1845", "mark bed=11 at=18:45 level_ml=540"),
        (
            "11 455 (sat out) @1845, 12 90 @1850",
            "mark bed=11 at=18:45 level_ml=455; mark bed=12 at=18:50 level_ml=90",
        ),
    ],
)
def test_who_sat_out_has_no_saturation_that_takes_the_time_of_the_line(text: str, read: str) -> None:
    assert reading(text) == read
