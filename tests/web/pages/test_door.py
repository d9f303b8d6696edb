"""The way in: a signed link opens once and for a short time, and nothing is told to whoever has none."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from flask import Flask

from bot.intake import Deployment
from bot.links import Links
from bot.settings import Settings
from bot.store.people import PeopleEvent
from bot.web import web_app
from bot.web.pages.visitor import SIGNED_IN_FOR
from tests.intake.double import deployment as double
from tests.web.client import NOW, OTHER_SECRET, SECRET, problem
from tests.web.pages.visit import ADDRESS, Visit, answer, token

PAGES = ("/", "/handset", "/beds")


@pytest.mark.parametrize("path", PAGES)
def test_security_17_a_stranger_sees_no_page_and_no_name(visit: Visit, path: str) -> None:
    response = visit.opens(path)
    assert response.status_code == 401
    assert "You are not signed in" in response.text
    assert not any(word in response.text for word in ("Harbour", "Amy", "Carla"))


@pytest.mark.parametrize("path", ["/beds/now", "/handset/messages"])
def test_security_17_a_stranger_s_script_is_told_401(visit: Visit, path: str) -> None:
    response = visit.opens(path) if path == "/beds/now" else visit.posts({"text": "help"}, {})
    assert problem(response)["status"] == 401


def test_a_link_opens_the_pages_as_the_one_it_was_made_for(visit: Visit) -> None:
    shown = visit.opens(visit.link("carla"))
    assert "Open as Carla" in shown.text
    response = visit.enters("carla")
    assert (response.status_code, response.location) == (303, "/handset")
    assert "Carla, Harbour Ward" in visit.opens("/handset").text
    assert visit.opens("/").location == "/handset"


def test_looking_at_a_link_does_not_use_it_up_but_entering_does(visit: Visit) -> None:
    link = visit.link()
    other = visit.another()
    for each in (visit, other, visit):
        assert each.opens(link).status_code == 200
    part = link.rpartition("/")[2]
    assert visit.submits("/enter", token=token(visit.opens(link)), link=part).status_code == 303
    assert problem(other.submits("/enter", token=token(other.opens(link)), link=part))["status"] == 410
    assert other.opens("/handset").status_code == 401


def test_security_17_an_old_link_opens_nothing(app: Flask, ward: Deployment) -> None:
    assert ward.links is not None
    late = Visit(
        web_app(ward, Settings(secrets=(SECRET,), address=ADDRESS), lambda: NOW + timedelta(minutes=15)), ward
    )
    assert late.opens(Visit(app, ward).link()).status_code == 401


@pytest.mark.parametrize("link", ["x", "x.y", "%00", "a" * 3000])
def test_a_made_up_link_opens_nothing(visit: Visit, link: str) -> None:
    response = visit.opens(f"/enter/{link}")
    assert response.status_code == 401
    assert visit.submits("/enter", token=token(visit.enters()), link=link).status_code in (401, 403)


@pytest.mark.parametrize("said", ["", "x", None])
def test_security_18_a_form_without_its_token_is_refused(visit: Visit, said: str | None) -> None:
    link = visit.link()
    visit.opens(link)
    given = {} if said is None else {"token": said}
    response = visit.submits("/enter", link=link.rpartition("/")[2], **given)
    assert problem(response)["status"] == 403
    assert problem(visit.submits("/leave", **given))["status"] == 403


def test_security_18_the_token_of_another_session_is_refused(visit: Visit) -> None:
    other = visit.another()
    other.enters("ben")
    visit.enters()
    assert problem(visit.submits("/leave", token=token(other.opens("/handset"))))["status"] == 403
    assert visit.opens("/handset").status_code == 200


def test_signing_in_forgets_the_token_from_before(visit: Visit) -> None:
    before = token(visit.opens(visit.link()))
    visit.enters()
    assert token(visit.opens("/handset")) != before


def test_signing_out_closes_the_pages(visit: Visit) -> None:
    visit.enters()
    response = visit.submits("/leave", token=token(visit.opens("/handset")))
    assert (response.status_code, response.location) == (303, "/")
    assert visit.opens("/handset").status_code == 401


def test_security_18_the_cookie_is_for_this_site_only_and_out_of_reach_of_scripts(visit: Visit) -> None:
    cookie = visit.enters().headers["Set-Cookie"]
    assert {"Secure", "HttpOnly", "SameSite=Strict", "Path=/"} <= set(cookie.split("; "))


def test_a_cookie_that_was_changed_is_nobody_s(visit: Visit) -> None:
    visit.enters()
    held = visit.client.get_cookie("penline", "penline.example.org")
    assert held is not None
    other = "a" if held.value[-3] != "a" else "b"  # the very last letters hold bits that nobody reads
    changed = held.value[:-3] + other + held.value[-2:]
    visit.client.set_cookie("penline", changed, domain="penline.example.org", secure=True)
    assert visit.opens("/handset").status_code == 401


def test_whoever_leaves_the_list_is_out_at_once(visit: Visit, ward: Deployment) -> None:
    visit.enters("ben")
    assert visit.opens("/beds").status_code == 200
    gone = PeopleEvent(
        unit="harbour-ward",
        person="ben",
        event="removed",
        name="Ben",
        role="nurse",
        until=None,
        at=NOW,
        by="x",
    )
    with ward.store.turn() as book:
        book.note_person(gone)
    assert visit.opens("/beds").status_code == 401
    assert visit.another().opens(visit.link("ben")).status_code == 401


def test_a_session_ends_after_a_long_shift(ward: Deployment) -> None:
    clock = [NOW]
    visit = Visit(web_app(ward, Settings(secrets=(SECRET,), address=ADDRESS), lambda: clock[0]), ward)
    visit.enters()
    clock[0] = NOW + SIGNED_IN_FOR - timedelta(seconds=1)
    assert visit.opens("/handset").status_code == 200
    clock[0] = NOW + SIGNED_IN_FOR
    assert visit.opens("/handset").status_code == 401


def test_a_session_outlives_the_change_of_the_secret_by_one(visit: Visit, ward: Deployment) -> None:
    visit.enters()
    held = visit.client.get_cookie("penline", "penline.example.org")
    assert held is not None
    for secrets, status in (((OTHER_SECRET, SECRET), 200), ((OTHER_SECRET,), 401)):
        after = Visit(web_app(ward, Settings(secrets=secrets, address=ADDRESS), lambda: NOW), ward)
        after.client.set_cookie("penline", held.value, domain="penline.example.org", secure=True)
        assert after.opens("/handset").status_code == status


def test_a_deployment_without_an_address_has_no_pages() -> None:
    app = web_app(double(), Settings(secrets=(SECRET,)), lambda: NOW)
    assert {
        app.test_client().get(path).status_code for path in (*PAGES, "/trend/x", "/static/penline.css")
    } == {404}


def test_security_18_every_page_has_a_strict_policy(visit: Visit) -> None:
    visit.enters()
    paths = (*PAGES, "/beds/now", "/trend/x", "/enter/x", "/static/handset.js", "/static/penline.css")
    for response in map(visit.opens, paths):
        policy = dict(part.split(" ", 1) for part in response.headers["Content-Security-Policy"].split("; "))
        assert policy["default-src"] == "'none'"
        assert policy["frame-ancestors"] == "'none'"
        assert policy["base-uri"] == "'none'"
        assert "unsafe" not in str(policy)
        assert "http" not in str(policy)
        assert response.headers["X-Content-Type-Options"] == "nosniff"
        assert response.headers["Referrer-Policy"] == "no-referrer"
        response.close()


def test_security_17_what_is_told_of_patients_is_never_cached(visit: Visit) -> None:
    visit.enters()
    assert {
        visit.opens(path).headers["Cache-Control"] for path in ("/handset", "/beds", "/beds/now", "/trend/x")
    } == {"no-store"}


def test_no_page_holds_a_script_or_a_style_of_its_own(visit: Visit) -> None:
    visit.enters()
    answer(visit.says("bed 12 mark 840"))
    for path in ("/handset", "/beds", "/beds/now"):
        text = visit.opens(path).text
        assert "<style" not in text
        assert " style=" not in text
        assert "javascript:" not in text
        assert text.count("<script") == text.count('<script src="/static/')
        assert not any(f" on{event}=" in text for event in ("click", "load", "submit", "error"))


def test_a_link_of_another_deployment_opens_nothing(visit: Visit, ward: Deployment) -> None:
    assert ward.links is not None
    elsewhere = replace(ward, links=Links(ADDRESS, (OTHER_SECRET,)))
    assert visit.opens(Visit(visit.app, elsewhere).link()).status_code == 401
