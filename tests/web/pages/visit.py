"""Someone with a browser but no scripts: opens pages, sends forms, keeps cookies."""

from __future__ import annotations

import json
import re
from dataclasses import dataclass, field
from typing import Any

from flask import Flask
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from bot.intake import Deployment
from tests.web.client import NOW

ADDRESS = "https://penline.example.org"


@dataclass
class Visit:
    """One browser."""

    app: Flask
    ward: Deployment
    client: FlaskClient = field(init=False)
    _sent: int = 0

    def __post_init__(self) -> None:
        self.client = self.app.test_client()

    def another(self) -> Visit:
        """Another browser at the same ward."""
        return Visit(self.app, self.ward)

    def opens(self, path: str, **headers: str) -> TestResponse:
        """What came back for a page."""
        return self.client.get(path, base_url=ADDRESS, headers=headers)

    def link(self, person: str = "amy", unit: str = "harbour-ward") -> str:
        """A new link for that person, without the address."""
        assert self.ward.links is not None
        return self.ward.links.door(unit, person, NOW).url.removeprefix(ADDRESS)

    def submits(self, path: str, **fields: str) -> TestResponse:
        """What came back for a form."""
        return self.client.post(path, base_url=ADDRESS, data=fields)

    def enters(self, person: str = "amy") -> TestResponse:
        """Open a new link and say that it is them."""
        link = self.link(person)
        return self.submits("/enter", token=token(self.opens(link)), link=link.rpartition("/")[2])

    def says(self, text: str, message_id: str | None = None, **more: object) -> TestResponse:
        """What came back for a message, sent as the page's script sends it."""
        self._sent += 1
        headers = {
            "X-Page-Token": token(self.opens("/handset")),
            "X-Message-Id": message_id or f"{self._sent:032x}",
        }
        return self.posts({"text": text, **more}, headers)

    def posts(self, body: object, headers: dict[str, str]) -> TestResponse:
        """What came back for a body under exactly these headers."""
        return self.client.post("/handset/messages", base_url=ADDRESS, json=body, headers=headers)


def token(response: TestResponse) -> str:
    """The token in the page's form; empty where it has none."""
    found = re.search(r'name="token" value="([^"]+)"|id="token" value="([^"]+)"', response.text)
    return (found[1] or found[2]) if found else ""


def answer(response: TestResponse) -> dict[str, Any]:
    """The answer object."""
    assert response.status_code == 200, response.text
    found: dict[str, Any] = json.loads(response.data)
    return found
