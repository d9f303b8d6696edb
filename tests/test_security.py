"""Each of the twenty security checks has tests under its number; here are those of the dependencies."""

from __future__ import annotations

import os
import re
import runpy
import tomllib
from importlib.metadata import version
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.version import Version

ROOT = Path(__file__).parents[1]
CHECKS = range(1, 21)
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
NEEDED = [
    Requirement(line) for line in (*PROJECT["dependencies"], *PROJECT["optional-dependencies"]["postgres"])
]


def test_every_check_has_a_test_that_names_its_number() -> None:
    told = "".join(path.read_text("utf-8") for path in (ROOT / "tests").rglob("test_*.py"))
    names = re.findall(r"def test_security_((?:\d\d_)+)", told)
    named = {int(number) for numbers in names for number in numbers.split("_") if number}
    assert named == set(CHECKS)


@pytest.mark.parametrize("needed", NEEDED, ids=lambda needed: needed.name)
def test_security_20_a_dependency_has_a_lowest_version_and_is_installed_within_bounds(
    needed: Requirement,
) -> None:
    assert any(bound.operator == ">=" for bound in needed.specifier)
    if needed.name != "tzdata":  # its versions are years, and the newest clock changes are wanted
        assert any(bound.operator == "<" for bound in needed.specifier)
    if needed.marker is None or needed.marker.evaluate():
        assert needed.specifier.contains(version(needed.name), prereleases=True)


def lowest_of(needed: Requirement) -> str:
    """The lowest version that its bounds allow."""
    (lowest,) = (bound.version for bound in needed.specifier if bound.operator == ">=")
    return lowest


@pytest.mark.parametrize("needed", NEEDED, ids=lambda needed: needed.name)
def test_security_20_the_lowest_version_is_what_its_bound_says_and_is_the_one_under_test_by_its_script(
    needed: Requirement,
) -> None:
    lowest = lowest_of(needed)
    assert needed.specifier.contains(lowest)
    if os.environ.get("PENLINE_LOWEST") and (needed.marker is None or needed.marker.evaluate()):
        assert (
            Version(version(needed.name)).release[: len(Version(lowest).release)] == Version(lowest).release
        )


@pytest.mark.parametrize(
    ("name", "fixed"),
    [
        ("flask", "3.1.1"),  # CVE-2025-47278: sessions were signed with the older of two keys
        ("waitress", "3.0.1"),  # CVE-2024-49768 and CVE-2024-49769: request smuggling, connections left open
    ],
)
def test_security_20_versions_with_known_holes_are_not_allowed(name: str, fixed: str) -> None:
    needed = next(each for each in NEEDED if each.name == name)
    assert Version(lowest_of(needed)) >= Version(fixed)
    assert needed.specifier.contains(version(name))


def test_security_20_the_lowest_versions_have_a_script_that_tests_them() -> None:
    script = ROOT / ".ci" / "lowest"
    assert os.access(script, os.X_OK)
    assert "--resolution lowest-direct" in script.read_text("utf-8")
    assert "PENLINE_LOWEST=true" in script.read_text("utf-8")
    assert "tests/test_security.py" in script.read_text("utf-8")


AUDIT = runpy.run_path(str(ROOT / ".ci" / "audit"))
SOUND = {"name": "flask", "version": "3.1.2", "vulns": []}
HOLED = {
    "name": "waitress",
    "version": "3.0.0",
    "vulns": [{"id": "CVE-2024-49768", "fix_versions": ["3.0.1"]}],
}
UNKNOWN = {"name": "penline", "skip_reason": "not found"}


@pytest.mark.parametrize(
    ("found", "code", "said"),
    [
        ([SOUND], 0, ["audit: 0 known holes in 1 of 1 packages"]),
        ([SOUND, HOLED, UNKNOWN], 1,
         ["waitress 3.0.0: CVE-2024-49768, fixed in 3.0.1", "audit: 1 known holes in 2 of 3 packages",
          "audit: nothing could be looked up of penline"]),
        ([UNKNOWN], 0,
         ["audit: 0 known holes in 0 of 1 packages", "audit: nothing could be looked up of any of them"]),
    ],
)  # fmt: skip
def test_security_20_the_audit_fails_on_a_known_hole_and_says_what_it_could_not_look_up(
    found: list[object], code: int, said: list[str]
) -> None:
    assert AUDIT["told"]({"dependencies": found}) == (code, said)


def test_security_20_every_run_of_ci_audits_what_it_installed() -> None:
    assert ".venv/bin/python .ci/audit\n" in (ROOT / ".ci" / "run").read_text("utf-8")
    assert os.access(ROOT / ".ci" / "audit", os.X_OK)
