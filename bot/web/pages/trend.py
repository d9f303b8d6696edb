"""The trend picture behind a signed link, and the same in words, for whoever holds the link."""

from __future__ import annotations

from http import HTTPStatus

from flask import Blueprint, render_template
from markupsafe import Markup

from bot.dialogue.queries.board import TrendSheet, trend_sheets
from bot.links import Shown
from bot.unit import Person, Role
from bot.web.pages.office import Office
from bot.web.pages.visitor import visitor
from bot.wording.trend import picture, picture_facts, picture_title

_HOLDER = Person(id="", name="", role=Role.READER)
"""Nobody in particular: the link is the leave to look."""


def add_to(blueprint: Blueprint, office: Office) -> None:
    """Add the picture."""

    @blueprint.get("/trend/<link>", endpoint="trend")
    def trend(link: str) -> tuple[str, int]:
        office.rates.count()
        shown = office.links.shown(link, office.clock())
        found = _sheets(office, shown) if shown is not None else ()
        if not found:
            return render_template("penline/over.html"), HTTPStatus.GONE
        figures = [
            {
                "title": picture_title(sheet.trend, sheet.bed, sheet.view),
                "picture": Markup(picture(sheet.trend, sheet.bed, sheet.view)),
                "words": picture_facts(sheet.trend, sheet.view),
                "cautions": sheet.cautions,
                "unconfirmed": sheet.unconfirmed,
            }
            for sheet in found
        ]
        as_of = found[0].view.clock(found[0].view.now)
        signed_in = visitor(office) is not None
        page = render_template("penline/trend.html", figures=figures, as_of=as_of, signed_in=signed_in)
        return page, HTTPStatus.OK


def _sheets(office: Office, shown: Shown) -> tuple[TrendSheet, ...]:
    """The drains are of one unit; a link tells nothing of which."""
    for unit in office.deployment.units:
        found = office.looks(
            unit, _HOLDER, office.clock(), lambda context, book: trend_sheets(shown, context, book)
        )
        if found:
            return found
    return ()
