"""The FHIR export: codes, periods, links, statuses and names."""

from __future__ import annotations

import json
import re

import pytest

from bot.engine.entries import Correction, Described, Line, Placed, Reason, Withdrawal
from bot.interchange.fhir.bundle import Reach
from tests.interchange.rows import DRAIN, Rows, moment
from tests.interchange.stories import (
    a_caution,
    a_long_story,
    exported,
    levels,
    resources,
    two_lines,
    volumes,
)


def test_a_volume_has_its_code_its_period_and_the_two_lines_that_it_comes_from() -> None:
    bundle = exported(two_lines())

    (volume,) = volumes(bundle)

    assert volume["code"]["coding"][0]["system"] == "http://loinc.org"
    assert volume["code"]["coding"][0]["code"] == "9129-8"
    assert volume["valueQuantity"] == {
        "value": 210,
        "unit": "mL",
        "system": "http://unitsofmeasure.org",
        "code": "mL",
    }
    assert volume["effectivePeriod"] == {
        "start": "2026-03-04T15:00:00-05:00",
        "end": "2026-03-04T19:00:00-05:00",
    }
    addresses = {each["resource"]["id"]: each["fullUrl"] for each in bundle["entry"]}
    assert [link["reference"] for link in volume["derivedFrom"]] == [
        addresses[f"level-{DRAIN}-2"],
        addresses[f"level-{DRAIN}-3"],
    ]


def test_a_line_has_a_text_and_no_invented_code() -> None:
    for level in levels(exported(two_lines())):
        assert "coding" not in level["code"]
        assert level["code"]["text"]


@pytest.mark.parametrize(
    ("tube", "joined", "reason", "code"),
    [
        ("left", (), Reason.GENERAL, "9129-8"),
        ("right pleural", (), Reason.CARDIAC, "9129-8"),
        (None, (), Reason.GENERAL, "9129-8"),
        (None, (), Reason.TRAUMA, "9129-8"),
        (None, (), Reason.CARDIAC, "251843005"),
        ("A", (), Reason.CARDIAC, "251843005"),
        ("1", (), Reason.LUNG, "9129-8"),
        ("mediastinal", (), Reason.CARDIAC, "251843005"),
        ("mediastinal", (), Reason.GENERAL, "251843005"),
        ("pericardial", (), Reason.CARDIAC, "9168-6"),
        (None, ("left", "right"), Reason.CARDIAC, "9129-8"),
        (None, ("left", "mediastinal"), Reason.CARDIAC, "251843005"),
    ],
)
def test_the_code_says_no_more_than_the_tube_does(
    tube: str | None, joined: tuple[str, ...], reason: Reason, code: str
) -> None:
    rows = Rows()
    rows.tell("4 15:00", Placed(bed="12", tube=tube, opening_ml=0, joined=joined, reason=reason))
    rows.tell("4 19:00", Line(level_ml=100))

    (volume,) = volumes(exported(rows))

    assert [each["code"] for each in volume["code"]["coding"]] == [code]


def test_the_tube_is_told_as_the_body_site_and_the_drain_as_the_device() -> None:
    bundle = exported(two_lines("mediastinal"))

    (device,) = resources(bundle, "Device")
    (volume,) = volumes(bundle)

    assert volume["bodySite"] == {"text": "mediastinal"}
    assert volume["device"]["reference"] == next(
        each["fullUrl"] for each in bundle["entry"] if each["resource"] == device
    )
    assert device["location"]["display"] == "Ward 4, bed 12"
    assert device["status"] == "active"


def test_a_tube_with_no_name_has_no_body_site() -> None:
    assert not [each for each in resources(exported(two_lines(None)), "Observation") if "bodySite" in each]


def test_a_late_entry_shows_when_it_happened_and_when_it_was_issued() -> None:
    rows = two_lines()
    rows.tell("4 17:00", Line(level_ml=900), entered="4 20:15")

    late = next(each for each in levels(exported(rows)) if each["id"].endswith("-4"))

    assert late["effectiveDateTime"] == "2026-03-04T17:00:00-05:00"
    assert late["issued"] == "2026-03-04T20:15:00-05:00"


def test_a_corrected_line_keeps_its_name_and_says_what_it_was_and_by_whom() -> None:
    rows = two_lines()
    before = exported(rows)
    rows.tell("4 19:00", Correction(target=rows.entries[-1].id, level_ml=1005), entered="4 19:30", who="rn-2")

    after = exported(rows)

    assert [each["id"] for each in levels(after)] == [each["id"] for each in levels(before)]
    line = levels(after)[-1]
    assert (line["status"], line["valueQuantity"]["value"]) == ("corrected", 1005)
    assert line["issued"] == "2026-03-04T19:30:00-05:00"
    notes = " ".join(note["text"] for note in line["note"])
    assert "told as 1050 mL" in notes
    assert "by rn-2" in notes
    (volume,) = volumes(after)
    assert (volume["id"], volume["status"]) == (volumes(before)[0]["id"], "corrected")
    assert volume["valueQuantity"]["value"] == 165
    assert "was 210 mL" in volume["note"][0]["text"]


def test_a_withdrawn_line_and_its_volume_are_entered_in_error_and_keep_their_values() -> None:
    rows = two_lines()
    rows.tell("4 19:00", Withdrawal(target=rows.entries[-1].id), entered="4 19:05")

    bundle = exported(rows)

    line = levels(bundle)[-1]
    assert (line["status"], line["valueQuantity"]["value"]) == ("entered-in-error", 1050)
    (volume,) = volumes(bundle)
    assert (volume["status"], volume["valueQuantity"]["value"]) == ("entered-in-error", 210)


def test_a_late_line_that_splits_a_volume_marks_the_whole_one_as_an_error() -> None:
    rows = two_lines()
    whole = volumes(exported(rows))[0]["id"]
    rows.tell("4 17:00", Line(level_ml=900), entered="4 20:15")

    told = {each["id"]: (each["status"], each["valueQuantity"]["value"]) for each in volumes(exported(rows))}

    assert told.pop(whole) == ("entered-in-error", 210)
    assert sorted(told.values()) == [("final", 60), ("final", 150)]


def test_the_volumes_that_stand_add_up_to_what_drained() -> None:
    standing = [each for each in volumes(exported(a_long_story())) if each["status"] != "entered-in-error"]
    assert sum(each["valueQuantity"]["value"] for each in standing) == 1860 + 150 + 30


def test_a_volume_across_a_canister_with_no_final_level_is_at_least() -> None:
    comparators = {
        each["valueQuantity"].get("comparator")
        for each in volumes(exported(a_long_story()))
        if each["effectivePeriod"]["end"] == "2026-03-04T12:00:00-05:00"
    }
    assert comparators == {">="}


def test_a_repeated_line_is_told_but_charts_nothing() -> None:
    rows = two_lines()
    rows.tell("4 19:03", Line(level_ml=1050))

    bundle = exported(rows)

    repeat = next(each for each in levels(bundle) if each["id"].endswith("-4"))
    assert repeat["status"] == "final"
    assert "counted once" in repeat["note"][0]["text"]
    assert len(volumes(bundle)) == 1


def test_a_caution_is_a_detected_issue_with_its_severity_its_period_and_its_drain() -> None:
    bundle = exported(two_lines(), a_caution())

    (issue,) = resources(bundle, "DetectedIssue")
    (device,) = [each for each in bundle["entry"] if each["resource"]["resourceType"] == "Device"]

    assert (issue["severity"], issue["code"]["text"]) == ("moderate", "rate_high")
    assert issue["identifiedPeriod"]["end"] == "2026-03-04T19:00:00-05:00"
    assert issue["implicated"] == [{"reference": device["fullUrl"], "type": "Device"}]
    assert issue["detail"] == a_caution().sentence


def test_two_exports_of_one_ledger_are_the_same_byte_for_byte() -> None:
    assert json.dumps(exported(a_long_story(), a_caution())) == json.dumps(
        exported(a_long_story(), a_caution())
    )


def test_later_entries_leave_the_names_of_earlier_resources_as_they_were() -> None:
    rows = two_lines()
    names = {each["fullUrl"] for each in exported(rows)["entry"]}
    rows.tell("4 20:00", Line(level_ml=1100))
    rows.tell("4 20:00", Described(reason=Reason.LUNG))

    assert names < {each["fullUrl"] for each in exported(rows)["entry"]}


def test_every_reference_is_found_in_the_bundle_and_every_id_is_one_of_fhir() -> None:
    bundle = exported(a_long_story(), a_caution())
    addresses = {each["fullUrl"] for each in bundle["entry"]}

    assert len(addresses) == len(bundle["entry"])
    assert set(re.findall(r'"reference": "([^"]+)"', json.dumps(bundle))) <= addresses
    for each in bundle["entry"]:
        assert re.fullmatch(r"[A-Za-z0-9\-.]{1,64}", each["resource"]["id"])


def test_a_time_span_takes_the_volumes_that_end_in_it_with_the_lines_that_they_come_from() -> None:
    rows = two_lines()
    rows.tell("4 20:00", Line(level_ml=1100))
    rows.tell("4 21:00", Line(level_ml=1120))

    bundle = exported(rows, reach=Reach(begin=moment("4 19:30"), end=moment("4 20:30")))

    assert [each["valueQuantity"]["value"] for each in volumes(bundle)] == [50]
    assert [each["valueQuantity"]["value"] for each in levels(bundle)] == [1050, 1100]


def test_a_drain_with_nothing_in_the_span_is_left_out_and_so_are_its_cautions() -> None:
    bundle = exported(two_lines(), a_caution(), reach=Reach(begin=moment("5 00:00")))
    assert "entry" not in bundle


def test_a_removed_drain_is_an_inactive_device() -> None:
    (device,) = resources(exported(a_long_story()), "Device")
    assert device["status"] == "inactive"
