"""A unit file is read whole or refused, and every mistake is named by file and key."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta
from pathlib import Path

import pytest

from bot.config import ConfigError
from bot.unit import Person, Role, demo_unit, load_unit, load_units

GOOD = """
name = "Ward 4"
zone = "America/New_York"
beds = "1-3"
"""
PERSON = '[[people]]\nid = "rn-1"\nname = "Amy"\nrole = "nurse"\n'


def written(folder: Path, text: str, name: str = "ward.toml") -> Path:
    """The file with that text."""
    path = folder / name
    path.write_text(text, "utf-8")
    return path


def test_a_short_file_takes_the_defaults(tmp_path: Path) -> None:
    unit = load_unit(written(tmp_path, GOOD))
    schedule = unit.policy.schedule
    assert (unit.id, unit.name, unit.zone.key, unit.beds) == (
        "ward-4",
        "Ward 4",
        "America/New_York",
        ("1", "2", "3"),
    )
    assert (schedule.starts, schedule.day_starts) == ((time(7), time(19)), time(7))
    assert schedule.grace == timedelta(minutes=30)
    assert (unit.policy.capacity_ml, unit.policy.chart_by, unit.policy.population) == (2000, "mark", "adult")
    assert (unit.policy.jump_ml, unit.voice_confirm, unit.people) == (500, "always", ())


def test_every_key_is_taken(tmp_path: Path) -> None:
    unit = load_unit(
        written(
            tmp_path,
            """
            id = "icu"
            name = "ICU"
            zone = "Europe/Madrid"
            beds = ["1", "2", "12a", "ct4"]
            shifts = ["07:00", "15:00", "23:00"]
            day_starts = "00:00"
            capacity_ml = 1500
            chart_by = "shift"
            population = "child"
            boundary_grace_min = 20
            jump_ml = 300
            voice_confirm = "unsure"
            checklists = false
            undo_min = 10
            month_first = false
            line_every_h = 2
            check_every_h = 1.5
            [line_every_by]
            cardiac = 0.5
            [[people]]
            id = "+34600"
            name = "Ana"
            role = "charge"
            until = 2026-03-04T19:00:00+01:00
            [[policy]]
            id = "rate_high.general"
            value = 80
            source = "ICU policy"
            """,
        )
    )
    until = datetime(2026, 3, 4, 18, tzinfo=UTC)
    assert unit.beds == ("1", "2", "12A", "CT4")
    assert unit.people == (Person(id="+34600", name="Ana", role=Role.CHARGE, until=until),)
    assert (unit.id, unit.checklists, unit.undo_min, unit.month_first) == ("icu", False, 10, False)
    assert (unit.policy.lines_every_h("cardiac"), unit.policy.lines_every_h("lung")) == (0.5, 2.0)
    row = next(rule for rule in unit.policy.rules if rule.id == "rate_high.general")
    assert (row.value, row.source, row.source_status) == (80.0, "ICU policy", "unit")


@pytest.mark.parametrize(
    ("beds", "labels"),
    [
        ('"1-3"', ("1", "2", "3")),
        ('"1-2, 12A, 20-21"', ("1", "2", "12A", "20", "21")),
        ('["1-3"]', ("1-3",)),
        ('"ct4"', ("CT4",)),
    ],
)
def test_beds_are_a_range_or_labels(tmp_path: Path, beds: str, labels: tuple[str, ...]) -> None:
    assert load_unit(written(tmp_path, GOOD.replace('"1-3"', beds))).beds == labels


@pytest.mark.parametrize(
    ("old", "new", "key"),
    [
        ('name = "Ward 4"', "", "name"),
        ('"Ward 4"', '""', "name"),
        ('"Ward 4"', '"a\\nb"', "name"),
        ('"Ward 4"', "4", "name"),
        ('"Ward 4"', '"!!!"', "id"),
        ('"America/New_York"', '"Nowhere/Atall"', "zone"),
        ('"America/New_York"', '"America"', "zone"),
        ('"America/New_York"', '"../../etc/passwd"', "zone"),
        ('"America/New_York"', '""', "zone"),
        ('"1-3"', '"3-1"', "beds"),
        ('"1-3"', '"1-3, 2"', "beds"),
        ('"1-3"', '["12a", "12A"]', "beds"),
        ('"1-3"', "[]", "beds"),
        ('"1-3"', "[1, 2]", "beds"),
        ('"1-3"', '"1-999"', "beds"),
        ('"1-3"', '["bed 12"]', "beds"),
        ('"1-3"', "3", "beds"),
        ('"1-3"\n', '"1-3"\nshift = ["07:00"]\n', "shift"),
        ('"1-3"\n', '"1-3"\nshifts = []\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = ["7:00"]\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = ["24:00"]\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = ["19:00", "07:00"]\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = ["07:00", "07:00"]\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = ["07:00", "07:30"]\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = ["00:15", "12:00", "23:30"]\n', "shifts"),
        ('"1-3"\n', '"1-3"\nshifts = "07:00"\n', "shifts"),
        ('"1-3"\n', '"1-3"\nday_starts = "noon"\n', "day_starts"),
        ('"1-3"\n', '"1-3"\ncapacity_ml = 0\n', "capacity_ml"),
        ('"1-3"\n', '"1-3"\ncapacity_ml = 2000.0\n', "capacity_ml"),
        ('"1-3"\n', '"1-3"\ncapacity_ml = true\n', "capacity_ml"),
        ('"1-3"\n', '"1-3"\nchart_by = "day"\n', "chart_by"),
        ('"1-3"\n', '"1-3"\npopulation = "both"\n', "population"),
        ('"1-3"\n', '"1-3"\nboundary_grace_min = -1\n', "boundary_grace_min"),
        ('"1-3"\n', '"1-3"\nshifts = ["07:00", "08:00"]\nboundary_grace_min = 31\n', "boundary_grace_min"),
        ('"1-3"\n', '"1-3"\nvoice_confirm = "never"\n', "voice_confirm"),
        ('"1-3"\n', '"1-3"\nline_every_h = 0\n', "line_every_h"),
        ('"1-3"\n', '"1-3"\nline_every_h = true\n', "line_every_h"),
        ('"1-3"\n', '"1-3"\n[line_every_by]\nheart = 1\n', "line_every_by.heart"),
        ('"1-3"\n', '"1-3"\n[line_every_by]\nlung = 0\n', "line_every_by.lung"),
        ('"1-3"\n', '"1-3"\npeople = ["amy"]\n', "people"),
        ('"1-3"\n', '"1-3"\npeople = "amy"\n', "people"),
        ('"1-3"\n', f'"1-3"\n{PERSON}{PERSON}', "people[2].id"),
        ('"1-3"\n', '"1-3"\n' + PERSON.replace("nurse", "doctor"), "people[1].role"),
        ('"1-3"\n', '"1-3"\n' + PERSON + "until = 2026-03-04T19:00:00\n", "people[1].until"),
        ('"1-3"\n', '"1-3"\n' + PERSON + 'phone = "1"\n', "people[1].phone"),
        ('"1-3"\n', '"1-3"\n' + PERSON.replace("rn-1", ""), "people[1].id"),
        ('"1-3"\n', '"1-3"\n[[policy]]\nid = "rate_high.general"\nvalue = 80\n', "policy.rate_high.general"),
        ('"1-3"\n', '"1-3"\n[[policy]]\nid = "x"\nvalu = 80\nsource = "us"\n', "policy.x"),
    ],
)  # fmt: skip
def test_a_wrong_file_is_refused_naming_the_key(tmp_path: Path, old: str, new: str, key: str) -> None:
    assert old in GOOD
    path = written(tmp_path, GOOD.replace(old, new))
    with pytest.raises(ConfigError) as refused:
        load_unit(path)
    assert (refused.value.file, refused.value.key) == (str(path), key)
    assert str(path) in str(refused.value)
    assert key in str(refused.value)


@pytest.mark.parametrize("text", ["name = ", "name = 1\nname = 2", "[["])
def test_what_is_not_toml_is_refused_naming_the_file(tmp_path: Path, text: str) -> None:
    path = written(tmp_path, text)
    with pytest.raises(ConfigError, match="is not TOML"):
        load_unit(path)


def test_a_file_that_is_not_there_is_named(tmp_path: Path) -> None:
    with pytest.raises(ConfigError, match=r"gone\.toml"):
        load_unit(tmp_path / "gone.toml")


def test_two_units_of_one_id_are_refused(tmp_path: Path) -> None:
    paths = [written(tmp_path, GOOD, "a.toml"), written(tmp_path, GOOD.replace("Ward 4", "ward-4"), "b.toml")]
    with pytest.raises(ConfigError) as refused:
        load_units(paths)
    assert (refused.value.file, refused.value.key) == (str(paths[1]), "id")


def test_the_demo_ward_has_one_person_of_each_role_and_two_nurses() -> None:
    unit = demo_unit()
    assert [person.role for person in unit.people].count(Role.NURSE) == 2
    assert {person.role for person in unit.people} == set(Role)
    assert unit.beds[0] == "1"
    assert unit.beds[-1] == "24"


NOTIFY = PERSON + PERSON.replace("rn-1", "rn-2") + "[notify]\n"


def test_someone_to_notify_may_be_enrolled_later(tmp_path: Path) -> None:
    text = f'{GOOD}{NOTIFY}people = ["rn-9", "rn-1"]\n'
    assert load_unit(written(tmp_path, text)).notify.people == ("rn-9", "rn-1")


def test_the_people_to_notify_are_named_in_their_order(tmp_path: Path) -> None:
    text = GOOD + NOTIFY + 'people = ["rn-2", "rn-1"]\nescalate_min = 5\nquiet_min = 90\n'
    notify = load_unit(written(tmp_path, text)).notify
    assert notify.people == ("rn-2", "rn-1")
    assert (notify.escalate, notify.quiet) == (timedelta(minutes=5), timedelta(minutes=90))
    assert notify.escalate_reminders == timedelta(minutes=30)


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ('people = [""]', "notify.people"),
        ('people = ["rn-1", "rn-1"]', "notify.people"),
        ("people = 1", "notify.people"),
        ("escalate_min = 0", "notify.escalate_min"),
        ("escalate_reminders_min = 1441", "notify.escalate_reminders_min"),
        ('quiet_min = "1"', "notify.quiet_min"),
        ("phone = 1", "notify.phone"),
    ],
)
def test_a_wrong_list_of_people_to_notify_is_refused(tmp_path: Path, line: str, key: str) -> None:
    with pytest.raises(ConfigError) as refused:
        load_unit(written(tmp_path, f"{GOOD}{NOTIFY}{line}\n"))
    assert refused.value.key == key
