"""The description of what machines say to Penline and hear from it: OpenAPI 3.1, at `/openapi.json`.

Written by hand as data, with the limits taken from where they are checked. Pages for people are not in it.
"""

from bot.web.openapi.route import description

__all__ = ["description"]
