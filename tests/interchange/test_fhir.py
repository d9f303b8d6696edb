"""The FHIR export: codes, periods, links, statuses and names, and three validators that did not write it."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

from bot.engine.entries import (
    Correction,
    Described,
    Exchanged,
    FinalLevel,
    Line,
    Opened,
    Placed,
    Reason,
    Removed,
    Withdrawal,
)
from bot.engine.values import Caution, Severity
from bot.interchange.fhir.bundle import ALL, Reach, Standing, fhir_bundle
from tests.interchange.rows import DRAIN, UNIT, Rows, moment

NOW = moment("5 07:00")


def exported(rows: Rows, *cautions: Standing, reach: Reach = ALL) -> dict[str, Any]:
    return fhir_bundle(UNIT, [rows.ledger], cautions, NOW, reach)


def resources(bundle: dict[str, Any], kind: str) -> list[dict[str, Any]]:
    return [each["resource"] for each in bundle["entry"] if each["resource"]["resourceType"] == kind]


def levels(bundle: dict[str, Any]) -> list[dict[str, Any]]:
    return [each for each in resources(bundle, "Observation") if "effectiveDateTime" in each]


def volumes(bundle: dict[str, Any]) -> list[dict[str, Any]]:
    return [each for each in resources(bundle, "Observation") if "effectivePeriod" in each]


def two_lines(tube: str | None = "left") -> Rows:
    rows = Rows()
    rows.tell("4 15:00", Opened(bed="12", tube=tube))
    rows.tell("4 15:00", Line(level_ml=840))
    rows.tell("4 19:00", Line(level_ml=1050))
    return rows


def a_long_story() -> Rows:
    """A placement, an exchange, a late line, a correction, a withdrawal and a removal."""
    rows = Rows()
    rows.tell("3 14:10", Placed(bed="12", tube="right", opening_ml=0, reason=Reason.LUNG, weight_kg=70.5))
    rows.tell("3 19:00", Line(level_ml=400, closing=True))
    rows.tell("4 03:00", FinalLevel(level_ml=1860))
    rows.tell("4 03:00", Exchanged())
    rows.tell("4 04:00", Line(level_ml=60))
    rows.tell("4 01:00", Line(level_ml=1500), entered="4 04:30")
    late = rows.tell("4 08:00", Line(level_ml=200, about=True))
    rows.tell("4 08:00", Correction(target=late.id, level_ml=150), entered="4 09:00", who="rn-2")
    wrong = rows.tell("4 10:00", Line(level_ml=900, accepted=("jump",)))
    rows.tell("4 10:00", Withdrawal(target=wrong.id), entered="4 10:20")
    rows.tell("4 11:00", Exchanged())
    rows.tell("4 12:00", Line(level_ml=30))
    rows.tell("4 13:00", Removed())
    return rows


def a_caution() -> Standing:
    caution = Caution(
        code="rate_high",
        severity=Severity.MODERATE,
        rule="rate_high.general",
        source="NSW ACI, Pleural Drains in Adults s.3",
        drain=DRAIN,
        value=210,
        limit=100,
        unit="mL/h",
        begin=moment("4 18:00"),
        end=moment("4 19:00"),
    )
    return Standing(bed="12", caution=caution, sentence="CAUTION: 210 mL/h, over 100 mL/h.", drains=(DRAIN,))


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


@pytest.fixture(scope="module")
def whole() -> dict[str, Any]:
    return exported(a_long_story(), a_caution())


def test_the_python_models_of_fhir_accept_the_bundle(whole: dict[str, Any]) -> None:
    models = pytest.importorskip("fhir.resources.R4B.bundle", reason="fhir.resources is not installed")

    bundle = models.Bundle.model_validate(whole)

    assert len(bundle.entry) == len(whole["entry"])


def test_the_python_models_of_fhir_would_see_a_fault(whole: dict[str, Any]) -> None:
    models = pytest.importorskip("fhir.resources.R4B.bundle", reason="fhir.resources is not installed")
    broken = json.loads(json.dumps(whole))
    del broken["entry"][1]["resource"]["code"]

    with pytest.raises(ValueError, match="code"):
        models.Bundle.model_validate(broken)


def test_a_validator_of_r4_finds_nothing_wrong(whole: dict[str, Any]) -> None:
    fhirkit = pytest.importorskip("fhirkit", reason="fhirkit-rs is not installed")

    assert [f"{issue.path}: {issue.message}" for issue in fhirkit.validate(whole)] == []


def test_a_validator_of_r4_would_see_a_fault(whole: dict[str, Any]) -> None:
    fhirkit = pytest.importorskip("fhirkit", reason="fhirkit-rs is not installed")
    broken = json.loads(json.dumps(whole))
    broken["entry"][1]["resource"]["issued"] = "2026-13-01"

    assert fhirkit.validate(broken)


_CHECK = """
const { Fhir } = require("fhir");
const text = require("fs").readFileSync(0, "utf8");
const found = new Fhir().validate(text, { errorOnUnexpected: true });
const serious = (one) => one.severity === "error" || one.severity === "fatal";
process.stdout.write(JSON.stringify(found.messages.filter(serious)));
"""
# Its warnings are about codes outside the example value sets that it ships: it has no LOINC, nor SNOMED CT.


@pytest.fixture(scope="module")
def npm_validator(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the npm package `fhir`, a validator of R4 from another ecosystem."""
    npm = shutil.which("npm")
    if npm is None:
        pytest.skip("npm is not installed, so its FHIR validator cannot run")
    folder = tmp_path_factory.mktemp("npm")
    (folder / "package.json").write_text('{"name": "check", "private": true}')
    quick = ("--no-audit", "--no-fund", "--fetch-retries=0", "--fetch-timeout=20000")
    order = [npm, "install", "--silent", *quick, "fhir@4.12.0"]
    try:
        done = subprocess.run(order, cwd=folder, capture_output=True, check=False, timeout=120)
    except subprocess.TimeoutExpired:
        pytest.skip("npm did not answer, so its FHIR validator cannot run")
    if done.returncode:
        pytest.skip("the npm package fhir could not be installed")
    return folder


def npm_faults(folder: Path, bundle: dict[str, Any]) -> list[dict[str, Any]]:
    done = subprocess.run(
        ["node", "-e", _CHECK],
        cwd=folder,
        input=json.dumps(bundle),
        capture_output=True,
        text=True,
        check=True,
        timeout=120,
    )
    faults: list[dict[str, Any]] = json.loads(done.stdout)
    return faults


def test_a_validator_from_another_ecosystem_finds_nothing_wrong(
    npm_validator: Path, whole: dict[str, Any]
) -> None:
    assert npm_faults(npm_validator, whole) == []


def test_a_validator_from_another_ecosystem_would_see_a_fault(
    npm_validator: Path, whole: dict[str, Any]
) -> None:
    broken = json.loads(json.dumps(whole))
    del broken["entry"][1]["resource"]["status"]

    assert npm_faults(npm_validator, broken)
