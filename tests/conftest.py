"""The one option of these tests, what holds for every property, and how `-n auto` spreads them."""

from __future__ import annotations

import os

import pytest
from hypothesis import settings

settings.register_profile("penline", deadline=None)
settings.load_profile("penline")
# A property is about what comes out: on a machine that others use too, an example may take any time.

LONGEST = (
    "tests/fuzz/test_mangled_messages.py",
    "tests/documents/test_commands.py",
    "tests/nlu/test_numbers_and_times.py",
    "tests/web/pages/test_browser.py",
    "tests/web/pages/test_shots.py",
    "tests/store/test_tampering.py",
    "tests/nlu/test_any_text.py",
    "tests/store/test_known.py",
    "tests/web/test_served.py",
    "tests/durability/test_durability.py",
    "tests/bench/test_bench.py",
    "tests/nlu/test_spoken_times.py",
    "tests/store/test_two_servers.py",
    "tests/notices/test_deliver.py",
    "tests/nlu/test_short_cuts.py",
    "tests/store/test_importing.py",
    "tests/store/test_patience.py",
    "tests/store/test_append_only.py",
    "tests/web/test_fuzz.py",
    "tests/load/test_load.py",
    "tests/cli/test_terminal.py",
    "tests/cli/test_progress.py",
)
"""The files that take longest, the longest first."""


def pytest_addoption(parser: pytest.Parser) -> None:
    """`--write`: rewrite the transcripts' replies and what the README quotes, for review."""
    parser.addoption("--write", action="store_true", help="rewrite transcripts and the README's quotations")


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_auto_num_workers() -> int:
    """A process for each core that this one may use, 8 at most; where there is one, none but this."""
    cores = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1
    return min(cores, 8) if cores > 1 else 0


@pytest.hookimpl(tryfirst=True)
def pytest_cmdline_main(config: pytest.Config) -> None:
    """A file's tests stay in one process and in order: some share a server, or go on from one another."""
    if getattr(config.option, "numprocesses", None) and config.option.dist == "no":
        config.option.dist = "loadfile"
        config.option.loadscopereorder = False


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Among several processes the files that take longest are begun first, so that all end together."""
    if hasattr(config, "workerinput"):
        rank = {name: place for place, name in enumerate(LONGEST)}
        items.sort(key=lambda item: rank.get(item.nodeid.partition("::")[0], len(LONGEST)))
