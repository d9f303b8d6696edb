"""The one option of this project's own tests."""

import pytest


def pytest_addoption(parser: pytest.Parser) -> None:
    """`--write`: rewrite the transcripts' replies and what the README quotes, for review."""
    parser.addoption("--write", action="store_true", help="rewrite transcripts and the README's quotations")
