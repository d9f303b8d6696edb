"""The conversation: what is typed or dictated goes the way of every other message."""

from __future__ import annotations

import logging
import re
from http import HTTPStatus

from flask import Blueprint, Response, g, render_template, request

from bot.intake import Incoming, handle
from bot.web.bodies import incoming_of
from bot.web.logs import log
from bot.web.pages.door import closed
from bot.web.pages.office import Office
from bot.web.pages.visitor import check_token, known, token, visitor
from bot.web.problems import Problem

_ID = re.compile(r"[0-9a-f]{32}")


def add_to(blueprint: Blueprint, office: Office) -> None:
    """Add the conversation."""

    @blueprint.get("/handset", endpoint="handset")
    def handset() -> str | tuple[str, int]:
        office.rates.count()
        found = visitor(office)
        if found is None:
            return closed()
        return render_template(
            "penline/handset.html", unit=found.unit, person=found.person, token=token(), here="handset"
        )

    @blueprint.post("/handset/messages")
    def receive() -> Response:
        office.rates.count()
        incoming = _incoming(office)
        g.outcome = outcome = handle(incoming, office.deployment)
        log(
            logging.INFO,
            "message",
            message_id=incoming.id,
            status=outcome.status,
            unit=outcome.unit,
            kept=outcome.kept,
        )
        if outcome.kept == "other":
            raise Problem(HTTPStatus.CONFLICT, "This message's id was used for another message.")
        return Response(outcome.answer, mimetype="application/json")


def _incoming(office: Office) -> Incoming:
    """The message of whoever has the page open; sent again under its id, it is not recorded twice."""
    person = known(office).person
    check_token(request.headers.get("X-Page-Token"))
    if request.mimetype != "application/json":
        raise Problem(HTTPStatus.UNSUPPORTED_MEDIA_TYPE, "The body must be application/json.")
    message_id = request.headers.get("X-Message-Id", "")
    if not _ID.fullmatch(message_id):
        raise Problem(HTTPStatus.BAD_REQUEST, "The message has no id.")
    office.rates.count_sender(person.id)
    g.message_id = f"page-{message_id}"
    return incoming_of(g.message_id, request.get_data(cache=False), office.clock(), sender=person.id)
