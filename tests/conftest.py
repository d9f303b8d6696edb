"""The one option of this project's own tests, and what holds for every property."""

import pytest
from hypothesis import settings

settings.register_profile("penline", deadline=None)
settings.load_profile("penline")
# A property is about what comes out: on a machine that others use too, an example may take any time.


def pytest_addoption(parser: pytest.Parser) -> None:
    """`--write`: rewrite the transcripts' replies and what the README quotes, for review."""
    parser.addoption("--write", action="store_true", help="rewrite transcripts and the README's quotations")
