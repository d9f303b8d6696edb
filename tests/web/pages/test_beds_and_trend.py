"""The charge nurse's page and the picture behind a link: the same as the replies say."""

from __future__ import annotations

import json
import re
from datetime import timedelta

import pytest

from bot.cli.demo_ward import story, tell_story
from bot.intake import Deployment, Incoming, handle
from bot.intake.respond import deployment
from bot.links import Links, Shown
from bot.settings import Settings
from bot.store import open_store
from bot.unit import demo_unit
from bot.web import web_app
from tests.web.client import NOW, SECRET
from tests.web.pages.visit import ADDRESS, Visit, answer, token


@pytest.fixture
def carla(visit: Visit, ward: Deployment) -> Visit:
    """Carla, who has charge of a ward with some hours behind it."""
    tell_story(ward, NOW)
    visit.enters("carla")
    return visit


def beds(page: str) -> list[tuple[str, str]]:
    """Bed and need, in the page's order."""
    return re.findall(r'data-bed="([^"]+)" data-need="([^"]+)"', page)


def test_the_beds_stand_in_the_order_of_the_reply(carla: Visit) -> None:
    page = carla.opens("/beds").text
    told = re.findall(r"^Bed (\w+): ", answer(carla.says("beds"))["reply"], re.MULTILINE)
    assert len(told) > 1
    assert [bed for bed, _ in beds(page)][: len(told)] == told
    assert beds(page)[0] == ("7", "urgent")
    assert {bed for bed, _ in beds(page)} == {"3", "7", "12", "18"}


def card_of(carla: Visit, bed: str) -> tuple[str, str]:
    """What the page holds of a bed, and the words of it."""
    card = carla.opens("/beds").text.partition(f'data-bed="{bed}"')[2].partition('</li>\n  <li class="bed')[0]
    return card, re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", card))


def test_a_bed_shows_its_line_age_sum_rate_cautions_and_picture(carla: Visit) -> None:
    card, words = card_of(carla, "7")
    assert "Last line 770 mL at" in words
    assert "10 min ago" in words
    assert re.search(r"This shift \d+ mL since", words)
    assert "Rate 230 mL/h" in words
    assert words.index("URGENT mediastinal") < words.index("Last line")
    assert re.search(r"check overdue since \S+ \(\d", words)
    assert "<title" in card
    assert 'href="/trend/' in card


def test_after_an_exchange_a_bed_shows_the_new_canister_first(carla: Visit) -> None:
    _, words = card_of(carla, "3")
    assert re.search(
        r"Last line 0 mL, new canister at (\S+) 60 min ago; final level of the old one 1,450 mL", words
    )


def test_an_unconfirmed_reading_stands_at_its_bed_or_before_all_beds(carla: Visit, ward: Deployment) -> None:
    for number, words in enumerate(("bed 12 left mark 20", "bed 20 output 210")):
        sent = NOW - timedelta(minutes=20)
        handle(Incoming(id=f"q{number}", sender="amy", text=words, arrived=sent), ward)
    page = carla.opens("/beds").text
    assert "Unconfirmed: bed 12 left 20 mL" in page
    before, _, _ = page.partition('<ol class="beds">')
    assert "bed 20" in before


def test_a_reading_that_is_still_asked_about_stands_at_its_bed(carla: Visit, ward: Deployment) -> None:
    handle(Incoming(id="q1", sender="amy", text="bed 12 left mark 20", arrived=NOW), ward)
    page = carla.opens("/beds").text
    assert "1 open question" in page
    assert "Not recorded yet: bed 12 left 20 mL" in page


def asked_about(ward: Deployment, minutes: float) -> None:
    """Amy was asked so long ago whether bed 18 has really come to 1,500 mL."""
    sent = NOW - timedelta(minutes=minutes)
    outcome = handle(Incoming(id="q1", sender="amy", text="bed 18 mark 1500", arrived=sent), ward)
    assert json.loads(outcome.answer)["status"] == "question"


@pytest.mark.parametrize(
    ("minutes", "reading"),
    [(5, "Not recorded yet: bed 18 1,500 mL"), (20, "Unconfirmed: bed 18 1,500 mL")],
    ids=["asked", "never answered"],
)
def test_a_danger_that_nobody_has_confirmed_is_spelled_out_at_its_bed(
    carla: Visit, ward: Deployment, minutes: float, reading: str
) -> None:
    asked_about(ward, minutes)
    page = carla.opens("/beds").text
    assert beds(page)[:2] == [("7", "urgent"), ("18", "urgent")]
    card = page.partition('data-bed="18"')[2]
    assert card.index("URGENT if right: ") < card.index("Last line")
    assert card.count(reading) == 1
    assert card.count("1,120 mL in") == 1  # two rules say the same of it
    assert "Amy" in card.partition(reading)[2]


def test_a_danger_that_nobody_has_confirmed_is_an_outline_in_the_picture(
    carla: Visit, ward: Deployment
) -> None:
    asked_about(ward, 5)
    [path] = re.findall(r"https://penline.example.org(/\S+)", answer(carla.says("trend bed 18"))["reply"])
    page = carla.opens(path).text
    body = page.partition("<main")[2]
    assert body.index("URGENT if right: ") < body.index("<svg")
    assert "trend-asked" in page
    assert "trend-high" not in page
    handle(Incoming(id="a1", sender="amy", text="18 no, 405", arrived=NOW), ward)
    assert "URGENT if right" not in carla.opens(path).text


def test_nothing_new_is_304_until_something_happens(carla: Visit) -> None:
    first = carla.opens("/beds/now")
    tag = first.headers["ETag"]
    again = carla.opens("/beds/now", If_None_Match=tag)
    assert (again.status_code, again.data) == (304, b"")
    answer(carla.says("bed 18 mark 400"))
    news = carla.opens("/beds/now", If_None_Match=tag)
    assert news.status_code == 200
    assert "400 mL" in news.text


def test_a_unit_without_drains_says_so(visit: Visit) -> None:
    visit.enters("carla")
    assert "Harbour Ward: no open drains." in visit.opens("/beds").text


def test_a_trend_s_link_opens_the_picture_without_signing_in(carla: Visit) -> None:
    reply = answer(carla.says("trend bed 7"))["reply"]
    [url] = re.findall(r"https://\S+", reply)
    page = carla.another().opens(url.removeprefix(ADDRESS))
    assert page.status_code == 200
    assert '<svg xmlns="http://www.w3.org/2000/svg"' in page.text
    assert "Bed 7 mediastinal, trend" in page.text
    steps = re.findall(r"^\d\d:\d\d-\d\d:\d\d \d+ mL", reply, re.MULTILINE)
    assert steps
    assert all(step in page.text for step in steps)
    assert not any(name in page.text for name in ("Amy", "Ben", "Carla", "Harbour"))


def test_what_is_urgent_stands_above_the_picture(carla: Visit) -> None:
    [path] = re.findall(r"https://penline.example.org(/\S+)", answer(carla.says("trend bed 7"))["reply"])
    page = carla.another().opens(path).text
    body = page.partition("<main")[2]
    assert body.index('<li class="caution high">') < body.index("<svg")
    assert "All beds" not in page
    assert "All beds" in carla.opens(path).text


def test_a_card_s_picture_leads_to_a_large_one(carla: Visit) -> None:
    paths = re.findall(r'href="(/trend/[^"]+)"', carla.opens("/beds").text)
    assert len(paths) == 5
    assert {carla.another().opens(path).status_code for path in paths} == {200}


def test_security_17_a_picture_s_link_ends(carla: Visit, ward: Deployment) -> None:
    assert ward.links is not None
    link = ward.links.trend(Shown(drains=("0" * 16,), begin=NOW), NOW)
    [path] = re.findall(r"https://penline.example.org(/\S+)", answer(carla.says("trend bed 7"))["reply"])
    over = web_app(ward, Settings(secrets=(SECRET,), address=ADDRESS), lambda: link.until)
    page = Visit(over, ward).opens(path)
    assert page.status_code == 410
    assert "does not open any more" in page.text
    assert "mL" not in page.text


def test_a_link_to_a_drain_that_is_not_there_shows_nothing(visit: Visit, ward: Deployment) -> None:
    assert ward.links is not None
    link = ward.links.trend(Shown(drains=("0" * 16,), begin=NOW), NOW)
    assert visit.opens(link.url.removeprefix(ADDRESS)).status_code == 410


def test_both_tubes_of_a_bed_have_a_picture_each(carla: Visit) -> None:
    [path] = re.findall(r"https://penline.example.org(/\S+)", answer(carla.says("trend bed 12"))["reply"])
    page = carla.opens(path).text
    assert page.count("<svg") == 2
    assert page.index("Bed 12 left") < page.index("Bed 12 right")


@pytest.mark.parametrize("hour", range(0, 24, 3))
def test_the_demonstration_is_the_same_at_any_time_of_day(hour: int) -> None:
    ward = deployment((demo_unit(),), open_store(), Links(ADDRESS, (SECRET,)))
    now = NOW.replace(hour=hour)
    outcomes = [json.loads(handle(incoming, ward).answer) for incoming in story(now)]
    assert [each["reply"] for each in outcomes if each["status"] != "recorded"] == []
    carla = Visit(web_app(ward, Settings(secrets=(SECRET,), address=ADDRESS), lambda: now), ward)
    assert ward.links is not None
    link = ward.links.door("harbour-ward", "carla", now).url.removeprefix(ADDRESS)
    carla.submits("/enter", token=token(carla.opens(link)), link=link.rpartition("/")[2])
    found = beds(carla.opens("/beds").text)
    assert found[0] == ("7", "urgent")
    assert {bed for bed, _ in found} == {"3", "7", "12", "18"}
