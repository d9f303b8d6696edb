"""The charge nurse's page: the unit's beds in order of need. It asks for news of itself every few seconds."""

from __future__ import annotations

import hashlib

from flask import Blueprint, Response, make_response, render_template, request
from markupsafe import Markup

from bot.dialogue.queries.board import BedCard, TubeCard, board
from bot.web.pages.door import closed
from bot.web.pages.office import Office
from bot.web.pages.visitor import Visitor, known, token, visitor
from bot.wording.trend import small_picture


def add_to(blueprint: Blueprint, office: Office) -> None:
    """Add the beds."""

    @blueprint.get("/beds", endpoint="beds")
    def beds() -> str | tuple[str, int]:
        office.rates.count()
        found = visitor(office)
        if found is None:
            return closed()
        return render_template(
            "penline/beds.html",
            unit=found.unit,
            person=found.person,
            token=token(),
            here="beds",
            cards=Markup(_cards(office, found)),
        )

    @blueprint.get("/beds/now")
    def beds_now() -> Response:
        """The cards alone; 304 while they are as the page has them."""
        office.rates.count()
        response = make_response(_cards(office, known(office)))
        response.set_etag(hashlib.sha256(response.get_data()).hexdigest()[:32])
        response.make_conditional(request)
        return response


def _cards(office: Office, found: Visitor) -> str:
    now = office.clock()
    held = office.looks(found.unit, found.person, now, board)

    def picture(card: BedCard, tube: TubeCard) -> Markup:
        return Markup(small_picture(tube.trend, card.bed, held.view))

    def trend_path(tube: TubeCard) -> str:
        return office.links.trend(tube.shown, now).url.removeprefix(office.links.address)

    return render_template(
        "penline/cards.html", board=held, as_of=held.view.clock(now), picture=picture, trend_path=trend_path
    )
