"""Links open what they were made for, for as long as they say, and tell nothing to whoever reads them."""

from __future__ import annotations

import base64
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.links import DOOR_MIN, Links, Shown
from bot.wording.gsm import gsm_only
from tests.web.client import OTHER_SECRET, SECRET

NOW = datetime(2026, 3, 4, 17, 1, tzinfo=UTC)
LINKS = Links("https://penline.example.org", (SECRET,), 60)
SHOWN = Shown(drains=("0123456789abcdef", "fedcba9876543210"), begin=datetime(2026, 3, 4, 9, tzinfo=UTC))
PEOPLE = (("ward-4", "+15550100"), ("ward-4", "+15550101"), ("ward-5", "+15550100"))


def token(url: str) -> str:
    return url.rpartition("/")[2]


def test_a_link_opens_the_picture_that_it_was_made_for() -> None:
    link = LINKS.trend(SHOWN, NOW)
    assert link.url.startswith("https://penline.example.org/trend/")
    assert LINKS.shown(token(link.url), NOW) == SHOWN
    whole = Shown(drains=SHOWN.drains[:1], begin=SHOWN.begin, end=NOW.replace(minute=0))
    assert LINKS.shown(token(LINKS.trend(whole, NOW).url), NOW) == whole


def test_security_17_a_link_opens_no_longer_than_it_says() -> None:
    link = LINKS.trend(SHOWN, NOW)
    assert link.until == datetime(2026, 3, 4, 18, 5, tzinfo=UTC)
    assert LINKS.shown(token(link.url), link.until - timedelta(seconds=1)) is not None
    assert LINKS.shown(token(link.url), link.until) is None


def test_a_link_stays_the_same_for_a_while_so_that_a_page_need_not_change() -> None:
    assert LINKS.trend(SHOWN, NOW) == LINKS.trend(SHOWN, NOW + timedelta(minutes=3))


def test_security_17_a_link_says_nothing_of_bed_or_person() -> None:
    url = LINKS.door("ward-4", "+15550100", NOW).url
    seen = base64.urlsafe_b64decode(token(url).partition(".")[0] + "==")
    assert b"15550100" not in seen
    assert b"ward" not in seen
    assert gsm_only(url) == url


def test_a_door_opens_for_its_person_on_that_unit_only() -> None:
    link = LINKS.door("ward-4", "+15550101", NOW)
    assert LINKS.person(token(link.url), NOW, PEOPLE) == ("ward-4", "+15550101")
    assert LINKS.person(token(link.url), NOW, PEOPLE[:1]) is None
    assert LINKS.person(token(link.url), NOW + timedelta(minutes=DOOR_MIN), PEOPLE) is None


def test_a_link_of_the_secret_before_still_opens_and_one_of_an_older_does_not() -> None:
    old, new = Links(LINKS.address, (OTHER_SECRET,)), Links(LINKS.address, (SECRET, OTHER_SECRET))
    picture, door = old.trend(SHOWN, NOW).url, old.door(*PEOPLE[0], NOW).url
    assert new.shown(token(picture), NOW) == SHOWN
    assert new.person(token(door), NOW, PEOPLE) == PEOPLE[0]
    assert LINKS.shown(token(picture), NOW) is None
    assert LINKS.person(token(door), NOW, PEOPLE) is None
    assert LINKS.shown(token(new.trend(SHOWN, NOW).url), NOW) == SHOWN


def test_a_link_of_one_kind_is_none_of_the_other() -> None:
    assert LINKS.person(token(LINKS.trend(SHOWN, NOW).url), NOW, PEOPLE) is None
    assert LINKS.shown(token(LINKS.door(*PEOPLE[0], NOW).url), NOW) is None


@pytest.mark.parametrize("said", ["", ".", "a.b", "ü.x", "x" * 5000, "AAAA.", "=.=", "\0"])
def test_what_nobody_signed_opens_nothing(said: str) -> None:
    assert LINKS.shown(said, NOW) is None
    assert LINKS.person(said, NOW, PEOPLE) is None


@given(st.text(max_size=120))
def test_any_text_at_all_opens_nothing(said: str) -> None:
    assert LINKS.shown(said, NOW) is None


@given(st.integers(0, 70), st.sampled_from("AQgw019_-"))
def test_a_letter_changed_opens_nothing(place: int, letter: str) -> None:
    good = token(LINKS.trend(SHOWN, NOW).url)
    changed = good[:place] + letter + good[place + 1 :]
    assert (LINKS.shown(changed, NOW) is not None) == (changed == good)
