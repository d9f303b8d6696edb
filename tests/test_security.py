"""Each of the twenty security checks has tests under its number; here are those of the dependencies."""

from __future__ import annotations

import os
import re
import tomllib
from importlib.metadata import version
from pathlib import Path

import pytest
from packaging.requirements import Requirement

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


@pytest.mark.parametrize(
    ("name", "fixed"),
    [
        ("flask", "3.1.1"),  # CVE-2025-47278: sessions were signed with the older of two keys
        ("waitress", "3.0.1"),  # CVE-2024-49768 and CVE-2024-49769: request smuggling, connections left open
    ],
)
def test_security_20_versions_with_known_holes_are_not_allowed(name: str, fixed: str) -> None:
    needed = next(each for each in NEEDED if each.name == name)
    holed = ".".join((*fixed.split(".")[:-1], str(int(fixed.split(".")[-1]) - 1)))
    assert not needed.specifier.contains(holed)
    assert needed.specifier.contains(version(name))


def test_security_20_the_lowest_versions_have_a_script_that_tests_them() -> None:
    script = ROOT / ".ci" / "lowest"
    assert os.access(script, os.X_OK)
    assert "--resolution lowest-direct" in script.read_text("utf-8")
