"""`penline serve --demo`: on this machine alone, in memory, with hours behind it; and `penline link`."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import urllib.error
import urllib.request
from collections.abc import Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner

from bot.cli import penline
from bot.links import Links
from tests.web.client import SECRET, real_now

UNIT = Path(__file__).parents[2] / "bot" / "demo.toml"
ADDRESS = "https://penline.example.org"


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    """Where a demonstration, in a process of its own, says that it is."""
    environ = {name: value for name, value in os.environ.items() if not name.startswith("PENLINE_")}
    run = subprocess.Popen(
        [sys.executable, "-m", "bot", "serve", "--demo", "--port", "0"],
        env=environ,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert run.stdout is not None
    told = run.stdout.readline()
    yield re.sub(r"^.*(http://127\.0\.0\.1:\d+) .*\n$", r"\1", told)
    run.terminate()
    assert run.wait(timeout=20) == 0
    run.stdout.close()


def fetched(url: str, host: str | None = None) -> tuple[int, str]:
    """Status and text of what is there."""
    request = urllib.request.Request(url, headers={"Host": host} if host else {})
    try:
        with urllib.request.urlopen(request, timeout=20) as response:
            return response.status, response.read().decode()
    except urllib.error.HTTPError as error:
        with error:
            return error.code, error.read().decode()


@pytest.mark.real_time
def test_the_demonstration_prints_where_it_is_and_lets_one_choose_who_to_be(address: str) -> None:
    status, page = fetched(address)
    assert status == 200
    assert all(name in page for name in ("Harbour Ward", "Amy", "Carla"))


@pytest.mark.real_time
def test_a_page_of_elsewhere_cannot_reach_it_under_another_name(address: str) -> None:
    assert fetched(address, "evil.example.org")[0] == 400


@pytest.mark.parametrize(
    ("given", "why"),
    [
        (("--host", "0.0.0.0"), "listens on this machine alone"),
        (("--host", "ward.example.org"), "listens on this machine alone"),
        (("--database", "sqlite:///x"), "keeps its ledger in memory"),
        (("--port", "1", "--host", "127.0.0.1"), "cannot be listened on"),
    ],
)
def test_a_demonstration_is_never_open_to_others(
    given: tuple[str, ...], why: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.cli.demo_ward.socket.socket.bind", _refused)
    run = CliRunner().invoke(penline, ["serve", "--demo", *given])
    assert run.exit_code == 2
    assert why in run.output


def _refused(*_: object) -> None:
    raise OSError(13, "Permission denied")


def link_for(*given: str, folder: Path, **environ: str) -> tuple[int, str, str]:
    """Exit code, output and messages of `penline link`."""
    settings = {
        "PENLINE_UNITS": str(UNIT),
        "PENLINE_DATABASE_URL": f"sqlite:///{folder}/ward.sqlite",
        "PENLINE_SECRETS": SECRET,
        "PENLINE_ADDRESS": ADDRESS,
        **environ,
    }
    run = CliRunner().invoke(penline, ["link", *given], env=settings)
    return run.exit_code, run.stdout, run.stderr


@pytest.mark.real_time
def test_a_link_is_printed_alone_and_opens_as_its_person(tmp_path: Path) -> None:
    code, printed, told = link_for("carla", folder=tmp_path)
    assert code == 0
    assert told == "Opens once, within 15 min, as Carla of Harbour Ward:\n"
    token = printed.strip().removeprefix(f"{ADDRESS}/enter/")
    assert Links(ADDRESS, (SECRET,)).person(token, real_now(), [("harbour-ward", "carla")]) is not None


@pytest.mark.parametrize(
    ("sender", "environ", "why"),
    [
        ("nobody", {}, "nobody is not on the list of Harbour Ward"),
        ("amy", {"PENLINE_ADDRESS": "none"}, "there are no pages without an address"),
        ("amy", {"PENLINE_SECRETS": ""}, "there is no signing secret"),
    ],
)
def test_no_link_is_made_for_a_stranger_or_for_no_page(
    tmp_path: Path, sender: str, environ: dict[str, str], why: str
) -> None:
    code, printed, told = link_for(sender, folder=tmp_path, **environ)
    assert (code, printed) == (2, "")
    assert why in told
