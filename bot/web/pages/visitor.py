"""Who has a page open: a signed session cookie, and at every request a look at the unit's list.

The cookie is sent to this site only, and never seen by a script; every form and every message carries a token
of its session besides.
"""

from __future__ import annotations

import hmac
import secrets
from dataclasses import dataclass
from datetime import timedelta
from http import HTTPStatus

from flask import session

from bot.intake.roster import listed
from bot.unit import Person, Unit
from bot.web.pages.office import Office
from bot.web.problems import Problem

SIGNED_IN_FOR = timedelta(hours=13)
"""A long shift."""


@dataclass(frozen=True, slots=True)
class Visitor:
    """Someone on a unit's list."""

    unit: Unit
    person: Person


def visitor(office: Office) -> Visitor | None:
    """Who has this page open; None for nobody, for someone who left the list, and after a long shift."""
    now = office.clock()
    if session.get("until", 0) <= now.timestamp():
        return None
    unit = next((each for each in office.units() if each.id == session.get("unit")), None)
    person = listed(unit, session.get("person", ""), now) if unit else None
    return Visitor(unit, person) if unit is not None and person is not None else None


def known(office: Office) -> Visitor:
    """The same for what a script asks. Problem 401 where it is nobody."""
    found = visitor(office)
    if found is None:
        raise Problem(HTTPStatus.UNAUTHORIZED, "You are not signed in any more.")
    return found


def sign_in(office: Office, unit: str, person: str) -> None:
    """Open a session for that person; whatever the browser had before is forgotten."""
    session.clear()
    session["unit"], session["person"] = unit, person
    session["until"] = int((office.clock() + SIGNED_IN_FOR).timestamp())
    token()


def sign_out() -> None:
    """Close the session."""
    session.clear()


def token() -> str:
    """The token that this session's forms carry."""
    if "token" not in session:
        session["token"] = secrets.token_urlsafe(24)
    found: str = session["token"]
    return found


def check_token(said: str | None) -> None:
    """Problem 403 unless the request carries its session's token: then another site has sent it."""
    held = session.get("token")
    if not held or not said or not hmac.compare_digest(held.encode(), said.encode()):
        raise Problem(HTTPStatus.FORBIDDEN, "This page is out of date. Open it again.")
