"""Marks before the rows of a list, which count up and are no beds: "1. seal 2", "2) dial 20", "a. swinging".

Called by `read`, before the message is cut into words: blanks stand in their place.
"""

from __future__ import annotations

import re
from itertools import groupby

_MARK = re.compile(
    r"^[ \t]*\(?(\d{1,2}(?=[.)])|[a-z](?=[.)][ \t]+[a-z]))([.)])(?=[ \t]+\S)", re.MULTILINE | re.IGNORECASE
)
"""A letter before a number may be the name of a tube: "A. 340"."""
_INLINE = re.compile(r"(?<![\w.(])(\d)(\))(?=[ \t]+\S)")
FEWEST = 2
"""Marks of a list."""


def without_list_marks(text: str) -> str:
    """The message with blanks for the marks of its lists, each in its place."""
    if ")" not in text and "\n" not in text:
        return text
    spans = [*_counting_up(list(_MARK.finditer(text))), *_counting_up(list(_INLINE.finditer(text)))]
    for start, end in spans:
        text = text[:start] + " " * (end - start) + text[end:]
    return text


def _counting_up(marks: list[re.Match[str]]) -> list[tuple[int, int]]:
    """Where those stand that begin with the first and go on one by one, all with the same sign."""
    found: list[tuple[int, int]] = []
    for _, alike in groupby(sorted(marks, key=lambda m: m[2]), key=lambda m: m[2]):
        run: list[re.Match[str]] = []
        for mark in alike:
            run = [*run, mark] if _value(mark) == len(run) + 1 else [mark] if _value(mark) == 1 else []
            if len(run) == FEWEST:
                found += [m.span() for m in run]
            elif len(run) > FEWEST:
                found.append(mark.span())
    return found


def _value(mark: re.Match[str]) -> int:
    said = mark[1].lower()
    return int(said) if said.isdecimal() else ord(said) - ord("a") + 1
