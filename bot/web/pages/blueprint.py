"""The pages together, and the headers that they answer with."""

from __future__ import annotations

from flask import Blueprint, Response

from bot.web.pages import beds, door, handset, trend
from bot.web.pages.office import Office

POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self'",
        "connect-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
    )
)
_HEADERS = {
    "Content-Security-Policy": POLICY,
    "Permissions-Policy": "microphone=(self), camera=(), geolocation=()",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
}


def pages(office: Office) -> Blueprint:
    """Every page of this deployment."""
    blueprint = Blueprint("pages", __name__, template_folder="templates", static_folder="static")
    for part in (door, handset, beds, trend):
        part.add_to(blueprint, office)
    blueprint.after_request(_headers)
    return blueprint


def _headers(response: Response) -> Response:
    for name, value in _HEADERS.items():
        response.headers[name] = value
    return response
