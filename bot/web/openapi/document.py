"""The description as a whole: addresses, what each answers, and how messages are signed."""

from __future__ import annotations

from importlib.metadata import version
from typing import Any

from bot.web.openapi.schemas import SCHEMAS, Schema, reference

_WHAT = (
    "A nurse texts or dictates the line on a chest-drain canister; the answer holds the volume to chart and "
    "what to look at. Messages are signed as Standard Webhooks 1.0.0 says. A 200 means: committed. "
    "The webhook-id is the message's identity for as long as the ledger is kept: the same id with the same "
    "body is answered as before, with another body 409."
)
_HEADERS = {
    "webhookId": ("webhook-id", "1 to 64 of A-Z, a-z, 0-9, `_`, `.` and `-`."),
    "webhookTimestamp": ("webhook-timestamp", "Seconds since 1970 in 10 digits, at most 5 minutes off."),
    "webhookSignature": (
        "webhook-signature",
        "`v1,` and base64 of the HMAC-SHA256 of `id.timestamp.body`; up to 5, with blanks between.",
    ),
}
_SIGNED: list[dict[str, list[str]]] = [{scheme: [] for scheme in _HEADERS}]
_PROBLEM: Schema = {"$ref": "#/components/responses/Problem"}
_LATER: Schema = {"$ref": "#/components/responses/Later"}


def document(*, metrics: bool) -> Schema:
    """The OpenAPI 3.1 document; with the address of the metrics where they are served."""
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "Penline",
            "version": version("penline"),
            "description": _WHAT,
            "license": {"name": "MIT", "identifier": "MIT"},
        },
        "servers": [{"url": "/"}],
        "tags": [{"name": "messages"}, {"name": "operation"}],
        "paths": _PATHS | ({"/metrics": _METRICS} if metrics else {}),
        "webhooks": {"notice": {"post": _NOTICE}},
        "components": {
            "securitySchemes": {name: _scheme(*header) for name, header in _HEADERS.items()},
            "responses": _RESPONSES,
            "schemas": SCHEMAS,
        },
    }


def _scheme(header: str, description: str) -> Schema:
    return {"type": "apiKey", "in": "header", "name": header, "description": description}


def _body(schema: Schema, mimetype: str = "application/json") -> dict[str, Schema]:
    return {mimetype: {"schema": schema}}


def _operation(name: str, summary: str, answers: dict[str, Any], **more: object) -> Schema:
    return {
        "operationId": name,
        "tags": ["operation"],
        "summary": summary,
        "security": [],
        **more,
        "responses": answers,
    }


def _look(name: str, summary: str, schema: Schema, mimetype: str, answers: dict[str, Any]) -> Schema:
    """Something to GET without a signature."""
    told = {"description": summary, "content": _body(schema, mimetype)}
    return {"get": _operation(name, summary, {"200": told, **answers})}


_RESPONSES: dict[str, Schema] = {
    "Problem": {
        "description": "What is wrong with the request. Nothing was recorded.",
        "content": _body(reference("Problem"), "application/problem+json"),
    },
    "Later": {
        "description": "Too many at once, or the database is away. Nothing was acknowledged: send it again, "
        "under the same id.",
        "headers": {
            "Retry-After": {
                "description": "Seconds to wait.",
                "required": True,
                "schema": {"type": "integer", "minimum": 1},
            }
        },
        "content": _body(reference("Problem"), "application/problem+json"),
    },
}
_MESSAGES = _operation(
    "sendMessage",
    "One message of a nurse, answered once it is committed.",
    {
        "200": {
            "description": "What became of it; with `Accept: text/plain` the reply alone.",
            "content": {**_body(reference("Answer")), **_body({"type": "string"}, "text/plain")},
        },
        **dict.fromkeys(("400", "401", "409", "413", "415", "422"), _PROBLEM),
        "429": _LATER,
        "500": _PROBLEM,
        "503": _LATER,
    },
    tags=["messages"],
    security=_SIGNED,
    requestBody={
        "required": True,
        "description": "At most 16 KiB.",
        "content": _body(reference("Message")),
    },
)
_JSON = "application/json"
_PATHS: dict[str, Schema] = {
    "/messages": {"post": _MESSAGES},
    "/health": _look("isAlive", "The process lives.", reference("Alive"), _JSON, {}),
    "/ready": _look(
        "isReady",
        "It can take messages: the database is there, its schema at head, append-only by trigger.",
        reference("Ready"),
        _JSON,
        {"429": _LATER, "500": _PROBLEM, "503": _LATER},
    ),
    "/openapi.json": _look("describe", "This description.", {"type": "object"}, _JSON, {"429": _LATER}),
}
_METRICS = _look(
    "measure", "Counts and times for Prometheus.", {"type": "string"}, "text/plain", {"429": _LATER}
)
_NOTICE = _operation(
    "takeNotice",
    "What the gateway that takes notices gets, signed in the same way.",
    {
        "2XX": {"description": "Taken."},
        "410": {"description": "Never send anything there again."},
        "default": {"description": "Not taken: it is sent again later."},
    },
    tags=["messages"],
    security=_SIGNED,
    requestBody={"required": True, "content": _body(reference("Notice"))},
)
