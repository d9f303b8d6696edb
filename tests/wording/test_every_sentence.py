"""Every sentence that the wording can produce, found in its source: none prescribes, all can be sent.

Read from the code rather than from replies, so that a sentence which no test happens to reach is read too.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.wording.language import faults

BOT = Path(__file__).parents[2] / "bot"
NOT_SENTENCES = {"gsm.py", "speech.py"}  # they hold the alphabet, and what is replaced
SOURCES = sorted(
    path
    for part in ("wording", "dialogue")
    for path in (BOT / part).rglob("*.py")
    if path.name not in NOT_SENTENCES
)
WHOLE_ONLY = ("an underscore", "a doubled mark", "a plain-text program word", "a naked decimal point")


def sentences(source: str) -> Iterator[tuple[int, str]]:
    """Each string of the code with its line; what is put into it at run time stands as "5"."""
    tree = ast.parse(source)
    inside = {
        id(part) for node in ast.walk(tree) if isinstance(node, ast.JoinedStr) for part in ast.walk(node)
    }
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            yield node.lineno, "".join(_said(part) for part in node.values)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in inside:
            yield node.lineno, node.value


def _said(part: ast.expr) -> str:
    return str(part.value) if isinstance(part, ast.Constant) else "5"


def told(source: str) -> list[tuple[int, str]]:
    """The strings that a nurse may see: with a space in them, and not a docstring or a pattern."""
    documented = {
        node.value.lineno
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)
    }
    return [
        (line, text)
        for line, text in sentences(source)
        if " " in text.strip() and line not in documented and not set("\\|^$") & set(text)
    ]


def sentence_faults(text: str) -> list[str]:
    """What is wrong with a sentence that may be a part of one."""
    return [fault for fault in faults(text) if fault not in WHOLE_ONLY]


@pytest.mark.parametrize("path", SOURCES, ids=lambda path: path.relative_to(BOT).as_posix())
def test_no_sentence_prescribes_misleads_or_cannot_be_sent(path: Path) -> None:
    wrong = {
        f"{line}: {text}": sentence_faults(text)
        for line, text in told(path.read_text("utf-8"))
        if sentence_faults(text)
    }
    assert wrong == {}


def test_a_bad_sentence_in_code_would_be_found() -> None:
    source = (
        '"""Docs may say give."""\ndef f(x: int) -> str:\n    """Give."""\n    return f"Give {x} cc now"\n'
    )
    ((line, text),) = told(source)
    assert (line, text) == (4, "Give 5 cc now")
    assert sentence_faults(text) == ["prescribes: Give", "cc"]


def test_most_sentences_are_found() -> None:
    found = sum(len(told(path.read_text("utf-8"))) for path in SOURCES)
    assert found > 100
