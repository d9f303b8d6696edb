"""What no linter here checks: where a clock is read, how long modules and functions are, what is named."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
CODE = sorted(path for part in ("bot", "nlu") for path in (ROOT / part).rglob("*.py"))
TESTS = sorted((ROOT / "tests").rglob("*.py"))
EDGE = ("bot/cli/", "bot/web/", "bot/app.py", "bot/settings.py", "nlu/__main__.py")
CLOCKS = {"now", "utcnow", "today", "monotonic"}
LONGEST_MODULE = 400
LONGEST_FUNCTION = 40


def name(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def functions(path: Path) -> Iterator[ast.FunctionDef | ast.AsyncFunctionDef]:
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            yield node


def clock_calls(source: str) -> list[int]:
    """The lines that read a clock: `datetime.now(...)`, `date.today()`, `time.time()`."""
    calls = [node for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Call)]
    return [
        call.lineno
        for call in calls
        if isinstance(call.func, ast.Attribute)
        and isinstance(call.func.value, ast.Name)
        and (
            (call.func.value.id in {"datetime", "date", "time"} and call.func.attr in CLOCKS)
            or (call.func.value.id, call.func.attr) == ("time", "time")
        )
    ]


@pytest.mark.parametrize("path", [path for path in CODE if not name(path).startswith(EDGE)], ids=name)
def test_only_the_edge_reads_a_clock(path: Path) -> None:
    assert clock_calls(path.read_text("utf-8")) == []


def test_a_clock_that_is_read_would_be_found() -> None:
    assert clock_calls(
        "import time\nfrom datetime import UTC, datetime\ndatetime.now(UTC)\ntime.time()\n"
    ) == [3, 4]


@pytest.mark.parametrize("path", [*CODE, *TESTS], ids=name)
def test_no_module_is_too_long_to_read(path: Path) -> None:
    assert path.read_text("utf-8").count("\n") <= LONGEST_MODULE


@pytest.mark.parametrize("path", CODE, ids=name)
def test_no_function_is_too_long_to_read(path: Path) -> None:
    long = {
        node.name: node.end_lineno - node.lineno + 1
        for node in functions(path)
        if node.end_lineno and node.end_lineno - node.lineno >= LONGEST_FUNCTION
    }
    assert not long


@pytest.mark.parametrize("path", CODE, ids=name)
def test_every_module_says_what_it_is(path: Path) -> None:
    source = path.read_text("utf-8")
    assert not source.strip() or ast.get_docstring(ast.parse(source))


DOCUMENTS = [
    ROOT / file for file in ("README.md", "DEVELOPERS.md", "pyproject.toml", ".ci/run", ".ci/lowest")
]
OTHER_TESTS = [path for path in TESTS if path != Path(__file__)]  # this one names what it looks for


@pytest.mark.parametrize("path", [*CODE, *OTHER_TESTS, *DOCUMENTS], ids=name)
def test_nothing_names_the_machine_that_it_was_written_on(path: Path) -> None:
    assert not re.search(r"/work/|/root/|/home/\w|index-url|pypi\.org/simple", path.read_text("utf-8"))
