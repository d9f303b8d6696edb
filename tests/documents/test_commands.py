"""Every command of README.md and DEVELOPERS.md does what is said of it; one that no rule covers fails here.

What a test can run is typed as it stands, in a shell, in a folder with a ward of its own. What it cannot
(another machine's packages, an hour of messages) is put to the real program with `--help` behind it: a
subcommand or an option that the program does not have is an error there too.
"""

from __future__ import annotations

import ast
import json
import re
import stat
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from bot.cli.group import COMMANDS
from tests.documents.commands import ROOT, commands, fenced, is_command, languages
from tests.documents.newcomer import Newcomer
from tests.notices.bench import SECRET, Bench

pytestmark = pytest.mark.real_time

INSTALLED = (
    ".venv/bin/pip install -q -e .",
    ".venv/bin/pip install -q -e '.[dev]'",
    ".venv/bin/pip install -e '.[postgres]'",
)
COLLECTED = (
    ".venv/bin/pytest -n auto",
    ".venv/bin/pytest tests/transcripts",
    ".venv/bin/pytest --cov",
    ".venv/bin/pytest tests/transcripts tests/test_documents.py --write",
)
ASKED_FOR_HELP = (
    ".venv/bin/python -m tests.bench all",
    ".venv/bin/python -m tests.bench path --servers 2",
    ".venv/bin/python -m tests.load --entries 1000000",
    ".venv/bin/python -m tests.durability --kills 200",
    "python -m tests.fuzz --count 1000000",
    "python -m tests.bench",
    "python -m tests.nlu.bench",
)
SCRIPTS = (".ci/run", ".ci/lowest", ".ci/audit")
OF_THE_CI_SCRIPT = {
    "python3 -m venv .venv": '"$python" -m venv .venv',
    "lint-imports": ".venv/bin/lint-imports",
    "apt-get install chromium": "apt-get -qq install -y --no-install-recommends chromium",
}
TAKES_PICTURES = "python -m tests.web.pages.shots"
"""`tests/web/pages/test_shots.py` takes every picture that it takes."""
OPTIONS_OF = {"--bug": "python -m tests.durability --bug synchronous_off", "--write": ""}
CONFIGURED = ("mypy --strict",)
NOT_OURS = ("pip-audit",)
SERVED = (".venv/bin/penline serve --demo", "penline serve --demo")
SET_UP = (
    'export PENLINE_SECRETS="$(.venv/bin/penline secret)"',
    "export PENLINE_UNITS=ward4.toml",
    ".venv/bin/penline serve",
)


@dataclass(frozen=True, slots=True)
class Shows:
    """What comes of a command: a pattern, the exit code; what is typed where the text has a placeholder."""

    text: str
    code: int = 0
    instead: str = ""
    stdin: str = ""


IN_A_WARD: dict[str, Shows] = {
    ".venv/bin/penline demo": Shows(r"== hourly-marks ==(.|\n)*Bot: (.|\n)*more stories"),
    ".venv/bin/penline chat": Shows(
        r"line 1,050 mL\. First(.|\n)*line 1,180 mL\. Chart 130 mL(.|\n)*/as Ben(.|\n)*Bot: Bed 12 history",
        stdin="/at 12:04\nbed 12 mark 1050\n/at +60 minutes\nbed 12 mark 1180\n/help\nhistory bed 12\n",
    ),
    "penline policy": Shows(r"rate_high\.general\t.*over 100 mL/h"),
    "penline policy --unit ward4.toml": Shows(r"rate_high\.general\t.*over 80 mL/h.*Ward 4 policy"),
    ".venv/bin/penline people enrol ag-1 --name Zoe --role nurse --until 2099-03-04T19:00": Shows(
        "ag-1  Zoe  nurse  until 2099-03-04 19:00\n"
    ),
    ".venv/bin/penline people list": Shows("rn-1  Amy  nurse\nag-1  Zoe  nurse  until"),
    ".venv/bin/penline people remove ag-1": Shows("Zoe is no longer on the list of Ward 4."),
    ".venv/bin/penline verify": Shows("Every entry is as it was recorded"),
    ".venv/bin/penline backup ward4.backup": Shows("Everything is in ward4.backup"),
    ".venv/bin/penline restore ward4.backup --database sqlite:///restored.sqlite": Shows("rows"),
    ".venv/bin/penline export --csv --out ward4.csv": Shows("^$"),
    ".venv/bin/penline export --fhir --bed 12": Shows('"resourceType": "Bundle"'),
    ".venv/bin/penline export --jsonl --out ward4.jsonl": Shows("^$"),
    ".venv/bin/penline import ward4.jsonl --database sqlite:///another.sqlite": Shows(
        "^[1-9][0-9]* entries imported"
    ),
    "penline verify": Shows("Every entry is as it was recorded"),
    "penline backup": Shows("Everything is in again.backup", instead="penline backup again.backup"),
    "penline verify --backup FILE": Shows("as it was", instead="penline verify --backup again.backup"),
    "penline migrate": Shows(
        "^The database is at step", instead="penline migrate --database sqlite:///new.sqlite"
    ),
    "penline restore": Shows("rows", instead="penline restore again.backup --database sqlite:///new.sqlite"),
    "penline link rn-1": Shows(r"Opens once, within 15 min, as Amy of Ward 4:\nhttps://ward4\.example\.org/"),
    "penline remind": Shows("^Ward 4:\n"),
    "penline deliver": Shows(r"to rn-1: .*410", instead="penline deliver --once"),
    "penline deliver --dead": Shows(r"^\S+  .*to rn-1  tried 1, last status 410\n$", code=1),
    "penline deliver --again ID": Shows(r"delivered \(204\)", instead="penline deliver --again all"),
    'python -m nlu "bed 12 tops out at 1050" --arrived 2026-03-04T19:05 --zone America/New_York --beds 1-24'
    " --explain": Shows("cue bed 'bed'(.|\n)*way 1: (.|\n)*\"statements\""),
    "penline replay FILE": Shows(r'^\{"id": "m1", "status": "recorded"', instead="penline replay day.jsonl"),
}
"""In the order in which they are typed, as some read what others wrote."""

SAID = ("history bed 12", "bed 12 mark 1050", "/at +60 minutes", "bed 12 mark 1180")
"""To the bot, in the conversation above."""
CONFIG = "penline serve --config FILE"
HELP = "penline COMMAND --help"


def test_every_command_of_the_documents_is_covered_by_a_rule_and_no_rule_is_of_an_old_one() -> None:
    rules = [
        *INSTALLED, *COLLECTED, *ASKED_FOR_HELP, *SCRIPTS, *OF_THE_CI_SCRIPT, *OPTIONS_OF, *CONFIGURED,
        *NOT_OURS, *SERVED, *SET_UP, *IN_A_WARD, *SAID, CONFIG, HELP, TAKES_PICTURES,
    ]  # fmt: skip
    assert sorted(commands()) == sorted(rules)


@pytest.mark.parametrize(
    "words", ["penline chat", "--fast", ".venv/bin/x", "pip install x", "psql -f file", "last mark on 12"]
)
def test_what_is_to_be_typed_is_known_as_such(words: str) -> None:
    assert is_command(words)


@pytest.mark.parametrize("words", ["recorded", "POST /messages", 'role = "nurse"', '{"sender", "text"}'])
def test_what_is_no_command_is_not_taken_for_one(words: str) -> None:
    assert not is_command(words)


def test_every_block_is_of_a_language_that_a_test_reads() -> None:
    assert languages() == {"text", "sh", "toml", "python", "json", "sql"}


@pytest.fixture(scope="module")
def gateway(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    """A gateway that takes no notice at first: 410, then 204."""
    bench = Bench(tmp_path_factory.mktemp("gateway"))
    bench.receive(410)
    yield bench
    bench.close()


@pytest.fixture(scope="module")
def newcomer(tmp_path_factory: pytest.TempPathFactory, gateway: Bench) -> Newcomer:
    """Someone with the README's unit file, who has typed its settings."""
    folder = tmp_path_factory.mktemp("newcomer")
    row, unit_file = fenced("toml")
    (folder / "ward4.toml").write_text(f"{unit_file}\n{row}", "utf-8")
    message = {
        "id": "m1",
        "sender": "amy",
        "arrived": "2026-03-04T19:05:00-05:00",
        "text": "bed 12 mark 1050",
    }
    (folder / "day.jsonl").write_text(json.dumps(message) + "\n", "utf-8")
    newcomer = Newcomer(folder)
    for line in SET_UP[:2]:
        newcomer.exports(line)
    newcomer.environ.update(
        {
            "PENLINE_ADDRESS": "https://ward4.example.org",
            "PENLINE_NOTIFY_URL": f"http://127.0.0.1:{gateway.port}/",
            "PENLINE_NOTIFY_SECRETS": SECRET,
        }
    )
    return newcomer


@pytest.fixture(scope="module")
def ward(newcomer: Newcomer) -> Newcomer:
    """The same after their server took the README's message, and one that is urgent."""
    (client,) = fenced("python")
    with newcomer.serving(SET_UP[2], PENLINE_PORT="0") as address:
        first = sent(newcomer, client, address)
        assert first.startswith("Bed 12, "), first
        second = client.replace("mark 1050", "drain is disconnected")
        assert "URGENT" in sent(newcomer, second, address)
    return newcomer


def sent(newcomer: Newcomer, client: str, address: str) -> str:
    """The reply that the README's program prints, at this address."""
    (newcomer.folder / "client.py").write_text(client.replace("http://127.0.0.1:8080", address), "utf-8")
    seen = newcomer.types(".venv/bin/python client.py")
    assert seen.code == 0, seen.text
    return seen.text


@pytest.mark.parametrize("command", IN_A_WARD)
def test_what_is_typed_in_a_ward_shows_what_is_said_of_it(command: str, ward: Newcomer) -> None:
    expected = IN_A_WARD[command]
    seen = ward.types(expected.instead or command, stdin=expected.stdin)
    assert seen.code == expected.code, seen.text
    assert re.search(expected.text, seen.text), seen.text


def test_a_notice_looks_as_the_readme_shows_it(ward: Newcomer, gateway: Bench) -> None:
    (shown,) = map(json.loads, fenced("json"))
    ward.types("penline deliver --once")
    body = gateway.got()[-1]["body"]
    assert (body.keys(), body["data"].keys()) == (shown.keys(), shown["data"].keys())
    fixed = ("to", "unit", "bed", "severity", "unconfirmed", "rung", "say")
    assert {key: body["data"][key] for key in fixed} == {key: shown["data"][key] for key in fixed}
    first, last = shown["data"]["text"].split("...")
    assert body["data"]["text"].startswith(first)
    assert body["data"]["text"].endswith(last)


def test_settings_may_stand_in_a_file_but_no_secret(newcomer: Newcomer) -> None:
    (newcomer.folder / "secret").write_text(newcomer.environ["PENLINE_SECRETS"], "utf-8")
    settings = 'units = ["ward4.toml"]\nsecret_files = ["secret"]\nport = 0\n'
    (newcomer.folder / "settings.toml").write_text(settings, "utf-8")
    line = CONFIG.replace("FILE", "settings.toml --database sqlite:///other.sqlite")
    bare = f"unset PENLINE_UNITS PENLINE_SECRETS; {line}"
    with newcomer.serving(bare) as address:
        assert sent(newcomer, fenced("python")[0], address).startswith("Bed 12, ")
    (newcomer.folder / "settings.toml").write_text('secrets = ["whsec_x"]\n', "utf-8")
    assert newcomer.types(bare).code == 2


@pytest.mark.parametrize("command", SERVED)
def test_the_demonstration_is_served(command: str, newcomer: Newcomer) -> None:
    fetch = "import urllib.request; print(urllib.request.urlopen('{}').read().decode())"
    with newcomer.serving(f"{command} --port 0", PENLINE_ADDRESS="") as address:
        assert "Harbour Ward" in newcomer.types(f'python -c "{fetch.format(address)}"').text


@pytest.mark.parametrize("command", INSTALLED)
def test_pip_knows_what_it_is_asked_to_install(command: str, newcomer: Newcomer) -> None:
    seen = newcomer.types(f"{command} --help")
    assert seen.code == 0, seen.text
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    extras = re.findall(r"\[(\w+)]", command)
    assert [extra for extra in extras if extra not in project["optional-dependencies"]] == []


@pytest.mark.parametrize("command", COLLECTED)
def test_pytest_knows_its_options_and_finds_the_tests(command: str) -> None:
    args = command.split()[1:]
    paths = [] if any(arg.startswith("tests/") for arg in args) else ["tests/test_house_rules.py"]
    quick = ("--collect-only", "-q", "-p", "no:cacheprovider", "--cov-report=")
    run = [sys.executable, "-m", "pytest", *paths, *args, *quick]
    seen = subprocess.run(run, cwd=ROOT, capture_output=True, text=True, timeout=120, check=False)
    assert seen.returncode == 0, seen.stdout + seen.stderr


@pytest.mark.parametrize("command", [*ASKED_FOR_HELP, OPTIONS_OF["--bug"]])
def test_what_takes_long_knows_its_options(command: str, newcomer: Newcomer) -> None:
    seen = newcomer.types(f"{command} --help")
    assert seen.code == 0, seen.text
    assert re.search("usage: ", seen.text, re.IGNORECASE), seen.text


@pytest.mark.parametrize("script", SCRIPTS)
def test_a_script_of_the_documents_can_be_run(script: str) -> None:
    path: Path = ROOT / script
    assert path.stat().st_mode & stat.S_IXUSR
    if "python" in path.read_text("utf-8").partition("\n")[0]:
        ast.parse(path.read_text("utf-8"))
    else:
        subprocess.run(["sh", "-n", str(path)], check=True)


@pytest.mark.parametrize("command", OF_THE_CI_SCRIPT)
def test_what_the_ci_script_does_too_stands_in_it(command: str) -> None:
    assert OF_THE_CI_SCRIPT[command] in (ROOT / ".ci" / "run").read_text("utf-8")


def test_the_types_are_checked_as_strictly_as_is_said() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
    assert project["tool"]["mypy"]["strict"] is True


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_tells_the_rest(name: str, newcomer: Newcomer) -> None:
    seen = newcomer.types(HELP.replace("COMMAND", name))
    assert (seen.code, seen.text.startswith(f"Usage: penline {name}")) == (0, True), seen.text
