"""The FHIR export before three validators that did not write it, each shown to see a fault."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path
from typing import Any, NoReturn

import fhirkit
import pytest
from fhir.resources.R4B.bundle import Bundle

from tests.interchange.stories import a_caution, a_caution_if_right, a_long_story, exported


@pytest.fixture(scope="module")
def whole() -> dict[str, Any]:
    return exported(a_long_story(), a_caution(), a_caution_if_right())


def test_the_python_models_of_fhir_accept_the_bundle(whole: dict[str, Any]) -> None:
    bundle = Bundle.model_validate(whole)

    assert len(bundle.entry or ()) == len(whole["entry"])


def test_the_python_models_of_fhir_would_see_a_fault(whole: dict[str, Any]) -> None:
    broken = json.loads(json.dumps(whole))
    del broken["entry"][1]["resource"]["code"]

    with pytest.raises(ValueError, match="code"):
        Bundle.model_validate(broken)


def test_a_validator_of_r4_finds_nothing_wrong(whole: dict[str, Any]) -> None:
    assert [f"{issue.path}: {issue.message}" for issue in fhirkit.validate(whole)] == []


def test_a_validator_of_r4_would_see_a_fault(whole: dict[str, Any]) -> None:
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


def without(what: str) -> NoReturn:
    """Skip by name where something is missing; in CI that is a failure."""
    if os.environ.get("CI") == "true":
        pytest.fail(f"CI needs npm and its package fhir: {what}")
    pytest.skip(f"needs npm and its package fhir: {what}")


@pytest.fixture(scope="module")
def npm_validator(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the npm package `fhir`, a validator of R4 from another ecosystem."""
    npm = shutil.which("npm")
    if npm is None:
        without("npm is not installed")
    folder = tmp_path_factory.mktemp("npm")
    (folder / "package.json").write_text('{"name": "check", "private": true}')
    order = [npm, "install", "--silent", "--no-audit", "--no-fund", "fhir@4.12.0"]
    try:
        done = subprocess.run(order, cwd=folder, capture_output=True, check=False, timeout=240)
    except subprocess.TimeoutExpired:
        without("npm did not answer")
    if done.returncode:
        without("it could not be installed")
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
