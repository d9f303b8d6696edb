"""The README and DEVELOPERS.md tell the truth: what they quote is compared with what it quotes."""

from __future__ import annotations

import re
import subprocess
import tomllib
from dataclasses import fields
from pathlib import Path

import pytest

from bot.cli.group import COMMANDS
from bot.engine.policy import Rule
from bot.settings import Settings
from bot.unit import demo_unit, load_unit
from bot.wording.policy import HEADINGS, policy_row
from tests.dialogue import voice_figures
from tests.documents.commands import DEVELOPERS, README, ROOT, fenced

_QUOTED = re.compile(r"(?P<start><!-- (?P<what>[\w./-]+) -->\n)(?P<body>.*?)(?P<end><!-- end -->)", re.DOTALL)


def table(rules: tuple[Rule, ...]) -> str:
    """The policy as the README prints it."""
    rows = [HEADINGS, ("---",) * len(HEADINGS), *map(policy_row, rules)]
    return (
        "".join(f"| {' | '.join(row)} |\n" for row in rows).replace("| --- ", "|---").replace("--- |", "---|")
    )


def quotation(what: str) -> str:
    """What belongs between the README's marks of that name."""
    if what == "policy":
        return table(demo_unit().policy.rules)
    if what == "voice":
        return voice_figures.table()
    return f"```text\n{(ROOT / what).read_text('utf-8')}```\n"


def test_what_the_readme_quotes_is_what_it_says(request: pytest.FixtureRequest) -> None:
    told = README.read_text("utf-8")
    quoted = _QUOTED.sub(lambda mark: mark["start"] + quotation(mark["what"]) + mark["end"], told)
    if request.config.getoption("--write"):
        README.write_text(quoted, "utf-8")
        return
    assert {mark["what"] for mark in _QUOTED.finditer(told)} == {
        "transcripts_demo/hourly-marks.txt",
        "policy",
        "voice",
    }
    assert told == quoted


def test_the_test_command_of_the_readme_ends_the_ci_script() -> None:
    command = fenced("sh")[1].strip()
    assert command.startswith("python3 -m venv .venv && ")
    assert (ROOT / ".ci" / "run").read_text("utf-8").rstrip().endswith(command.split(" && ", 1)[1])


def test_the_first_command_of_the_readme_plays_the_demo() -> None:
    """What is seen then, `tests/documents/` looks at."""
    assert fenced("sh")[0].strip().rpartition(" && ")[2] == ".venv/bin/penline demo"


def test_the_unit_file_of_the_readme_loads_with_the_policy_row_it_shows(tmp_path: Path) -> None:
    row, unit_file = fenced("toml")
    (tmp_path / "ward4.toml").write_text(f"{unit_file}\n{row}", "utf-8")
    unit = load_unit(tmp_path / "ward4.toml")
    rule = next(rule for rule in unit.policy.rules if rule.id == "rate_high.general")
    assert (unit.name, unit.people[0].id, rule.value, rule.source) == ("Ward 4", "rn-1", 80, "Ward 4 policy")


def test_the_readme_names_every_setting_and_no_other() -> None:
    named = set(re.findall(r"PENLINE_([A-Z_]+)", README.read_text("utf-8")))
    known = {field.name.upper() for field in fields(Settings)} | {"SECRET_FILES", "NOTIFY_SECRET_FILES"}
    assert named == known


def test_every_command_in_the_documents_exists() -> None:
    said = README.read_text("utf-8") + DEVELOPERS.read_text("utf-8")
    named = set(re.findall(r"penline ([a-z]+)\b", said)) - {"is"}
    assert named <= set(COMMANDS)
    assert {"chat", "demo", "replay", "policy", "serve"} <= named


def map_lines() -> list[str]:
    block = re.search(r"```text\n(bot/.*?)```", DEVELOPERS.read_text("utf-8"), re.DOTALL)
    assert block
    return block[1].splitlines()


def mapped() -> set[str]:
    """The paths that the map of DEVELOPERS.md names: a name with two more spaces is inside the one above."""
    paths: set[str] = set()
    folders: list[str] = []
    for line in map_lines():
        entry = line.split()[0]
        depth = (len(line) - len(line.lstrip())) // 2
        folders = [*folders[:depth], entry]
        paths.add("".join(folders).rstrip("/"))
    return paths


def listed(folder: Path) -> set[str]:
    """What belongs to the project in a folder, dot-files aside: not what tools leave, or who tries it out."""
    return {name for name in _held(folder) if not name.startswith(".")}


def _held(folder: Path) -> set[str]:
    """As git has it; outside a checkout everything but what is made by running."""
    if (ROOT / ".git").exists():
        run = ["git", "-C", str(folder), "ls-files"]
        tracked = subprocess.run(run, capture_output=True, text=True, check=True).stdout
        return {line.partition("/")[0] for line in tracked.splitlines()}
    made = (".egg-info", ".sqlite")
    return {path.name for path in folder.iterdir() if path.name != "__pycache__" and path.suffix not in made}


def test_the_map_names_what_is_in_the_tree_and_nothing_else() -> None:
    named = mapped()
    assert [path for path in named if not (ROOT / path).exists()] == []
    parts = {f"{folder}/{name}" for folder in ("bot", "nlu") for name in listed(ROOT / folder)}
    assert {part for part in parts if not part.endswith("__init__.py")} <= named


def test_the_top_level_holds_what_the_design_fixed() -> None:
    documents = {"README.md", "DEVELOPERS.md", "pyproject.toml"}
    assert listed(ROOT) == documents | {"bot", "nlu", "tests", "transcripts_demo"}


def test_the_licence_is_told_where_packagers_and_readers_look() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    assert project["license"] == "MIT"
    assert "Licence: MIT" in README.read_text("utf-8")


def test_the_code_that_the_documents_point_at_exists() -> None:
    told = README.read_text("utf-8") + DEVELOPERS.read_text("utf-8")
    pointed = set(re.findall(r"`((?:bot|nlu|tests|transcripts_demo)/[\w./-]*)`", told))
    assert pointed
    assert [path for path in pointed if not (ROOT / path).exists()] == []
