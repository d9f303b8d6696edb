"""What README.md and DEVELOPERS.md tell someone to type, each as it stands there."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
README = ROOT / "README.md"
DEVELOPERS = ROOT / "DEVELOPERS.md"
DOCUMENTS = (README, DEVELOPERS)

_FENCED = re.compile(r"^```(?P<language>\w*)\n(?P<body>.*?)^```$", re.DOTALL | re.MULTILINE)
_INLINE = re.compile(r"`([^`]+)`")
_COMMENT = re.compile(r"\s+#.*$")
_PROGRAMS = {"penline", "python", "python3", "pip", "pip-audit", "pytest", "lint-imports", "apt-get"}
_DATA = re.compile(r'[A-Z]|.*[={"]')


def fenced(language: str) -> tuple[str, ...]:
    """The blocks of that language, README first."""
    return tuple(mark["body"] for mark in _blocks() if mark["language"] == language)


def languages() -> frozenset[str]:
    """What the blocks are written in."""
    return frozenset(mark["language"] for mark in _blocks())


def _blocks() -> Iterator[re.Match[str]]:
    for path in DOCUMENTS:
        yield from _FENCED.finditer(path.read_text("utf-8"))


def commands() -> tuple[str, ...]:
    """Every command of both documents, once each: the lines of their shell blocks, and those in the text."""
    return tuple(dict.fromkeys([*_in_blocks(), *_in_text()]))


def _in_blocks() -> Iterator[str]:
    for block in fenced("sh"):
        for line in block.splitlines():
            yield from _COMMENT.sub("", line).split(" && ")


def _in_text() -> Iterator[str]:
    for path in DOCUMENTS:
        for span in _INLINE.findall(_FENCED.sub("", path.read_text("utf-8"))):
            words = " ".join(span.split())
            if is_command(words):
                yield words


def is_command(words: str) -> bool:
    """Whether a piece of code in the text is to be typed: a program, an option, or words that are no data."""
    first = words.split(" ")[0]
    if first in _PROGRAMS or first.startswith((".venv/", ".ci/", "--")):
        return True
    return " " in words and not _DATA.match(words)
