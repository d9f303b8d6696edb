"""What `/openapi.json` says, as a judge of real answers."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from flask import Flask
from jsonschema import Draft202012Validator, FormatChecker

from bot.web.openapi.document import document

DOCUMENT = document(metrics=True)
FORMATS = FormatChecker(())


def is_moment(value: object) -> bool:
    """Whether a text is a moment with its offset; what is no text has no format."""
    return not isinstance(value, str) or datetime.fromisoformat(value).tzinfo is not None


FORMATS.checkers["date-time"] = (is_moment, ValueError)


def judge(name: str) -> Draft202012Validator:
    """What says whether a value is what the schema of that name describes."""
    return Draft202012Validator(
        {"$ref": f"#/components/schemas/{name}", "components": DOCUMENT["components"]}, format_checker=FORMATS
    )


def faults(name: str, value: object) -> list[str]:
    """Where a value is not as described, and why."""
    return [f"{fault.json_path}: {fault.message}" for fault in judge(name).iter_errors(value)]


def served_document(app: Flask) -> dict[str, Any]:
    """The description that an app serves."""
    response = app.test_client().get("/openapi.json")
    assert (response.status_code, response.mimetype) == (200, "application/json")
    found: dict[str, Any] = response.get_json()
    return found
