"""The way in and out: a link that opens once, or, in a demonstration, a choice of who to be."""

from __future__ import annotations

from http import HTTPStatus

from flask import Blueprint, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

from bot.intake.roster import listed
from bot.links import LONGEST_TOKEN
from bot.unit import Person, Unit
from bot.web.pages.office import Office
from bot.web.pages.visitor import check_token, sign_in, sign_out, token, visitor
from bot.web.problems import Problem


def add_to(blueprint: Blueprint, office: Office) -> None:
    """Add the doors."""

    @blueprint.get("/")
    def start() -> Response | tuple[str, int]:
        office.rates.count()
        if visitor(office) is not None:
            return redirect(url_for("pages.handset"), HTTPStatus.SEE_OTHER)
        if office.demo:
            return _choice(office), HTTPStatus.OK
        return closed()

    @blueprint.get("/enter/<link>")
    def arrive(link: str) -> tuple[str, int]:
        """Opening the link alone uses nothing up: what previews links must not lock anyone out."""
        office.rates.count()
        found = _person(office, link)
        if found is None:
            return closed()
        page = render_template(
            "penline/enter.html", ward=found[0], listed=found[1], link=link, form_token=token()
        )
        return page, HTTPStatus.OK

    @blueprint.post("/enter")
    def enter() -> Response | tuple[str, int]:
        office.rates.count()
        check_token(request.form.get("token"))
        found = _chosen(office) if office.demo and "person" in request.form else _used(office)
        if found is None:
            return closed()
        sign_in(office, found[0].id, found[1].id)
        return redirect(url_for("pages.handset"), HTTPStatus.SEE_OTHER)

    @blueprint.post("/leave")
    def leave() -> Response:
        check_token(request.form.get("token"))
        sign_out()
        return redirect(url_for("pages.start"), HTTPStatus.SEE_OTHER)


def closed() -> tuple[str, int]:
    """The page for whoever is not signed in; it tells nothing of any unit."""
    return render_template("penline/closed.html"), HTTPStatus.UNAUTHORIZED


def _choice(office: Office) -> str:
    now = office.clock()
    listed_now = [
        (unit, [person for person in unit.people if listed(unit, person.id, now)]) for unit in office.units()
    ]
    return render_template("penline/choose.html", units=listed_now, form_token=token())


def _chosen(office: Office) -> tuple[Unit, Person] | None:
    return _listed(office, request.form.get("unit", ""), request.form["person"])


def _used(office: Office) -> tuple[Unit, Person] | None:
    """Whose link was used just now; None when it does not open, or was used before."""
    link, now = request.form.get("link", ""), office.clock()
    found = _person(office, link)
    if found is not None and not office.used.use(link, now, now + office.links.door_open_for):
        raise Problem(HTTPStatus.GONE, "This link was used already. Ask for another one.")
    return found


def _person(office: Office, link: str) -> tuple[Unit, Person] | None:
    if len(link) > LONGEST_TOKEN:
        return None
    everyone = [(unit.id, person.id) for unit in office.units() for person in unit.people]
    found = office.links.person(link, office.clock(), everyone)
    return None if found is None else _listed(office, *found)


def _listed(office: Office, unit_id: str, person_id: str) -> tuple[Unit, Person] | None:
    for unit in office.units():
        person = listed(unit, person_id, office.clock()) if unit.id == unit_id else None
        if person is not None:
            return unit, person
    return None
