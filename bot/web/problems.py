"""Errors as RFC 9457 problem documents: what is wrong with the request, and nothing of what is inside."""

from __future__ import annotations

import json
import logging
from dataclasses import dataclass
from http import HTTPStatus

from flask import Flask, Response, g
from werkzeug.exceptions import HTTPException

from bot.store import StoreAwayError
from bot.web.logs import log

RETRY_AFTER_S = 2


@dataclass(frozen=True, slots=True)
class FieldFlaw:
    """One wrong field of a body: where (a JSON pointer) and what is wrong with it."""

    pointer: str
    detail: str


class Problem(Exception):  # noqa: N818 - RFC 9457 calls it a problem
    """A request that is not answered with an answer object."""

    def __init__(
        self,
        status: HTTPStatus,
        detail: str,
        *,
        flaws: tuple[FieldFlaw, ...] = (),
        retry_after_s: int | None = None,
    ) -> None:
        super().__init__(detail)
        self.status = status
        self.detail = detail
        self.flaws = flaws
        self.retry_after_s = retry_after_s


def problem_response(problem: Problem) -> Response:
    """The problem as `application/problem+json`."""
    document: dict[str, object] = {
        "type": "about:blank",
        "title": problem.status.phrase,
        "status": problem.status.value,
        "detail": problem.detail,
    }
    if problem.flaws:
        document["errors"] = [{"pointer": flaw.pointer, "detail": flaw.detail} for flaw in problem.flaws]
    response = Response(json.dumps(document), problem.status.value, mimetype="application/problem+json")
    if problem.retry_after_s is not None:
        response.headers["Retry-After"] = str(problem.retry_after_s)
    return response


def install(app: Flask) -> None:
    """Make every error of this app a problem document, the unforeseen ones included."""
    app.register_error_handler(Problem, problem_response)
    app.register_error_handler(HTTPException, _http_error)
    app.register_error_handler(StoreAwayError, _store_away)
    app.register_error_handler(Exception, _last_resort)


def _http_error(error: HTTPException) -> Response:
    response = problem_response(Problem(HTTPStatus(error.code or 500), _DETAILS.get(error.code or 500, "")))
    for name, value in error.get_headers():
        if name == "Allow":
            response.headers[name] = value
    return response


def _store_away(error: StoreAwayError) -> Response:
    log(logging.ERROR, "store_away", message_id=g.get("message_id"), error=str(error))
    detail = "The ledger cannot be written now. Send the same message again, under the same id."
    return problem_response(Problem(HTTPStatus.SERVICE_UNAVAILABLE, detail, retry_after_s=RETRY_AFTER_S))


def _last_resort(error: Exception) -> Response:
    """A broken program: nothing was committed, and nothing of it is told but that it happened."""
    log(
        logging.ERROR,
        "failed",
        message_id=g.get("message_id"),
        error=type(error).__name__,
        where=_where(error),
    )
    detail = "Something is broken here. Nothing was recorded."
    return problem_response(Problem(HTTPStatus.INTERNAL_SERVER_ERROR, detail))


def _where(error: Exception) -> str:
    """The line of ours in which it broke; never the values that were at hand."""
    trace, found = error.__traceback__, ""
    while trace is not None:
        module = trace.tb_frame.f_globals.get("__name__", "")
        if module.partition(".")[0] in ("bot", "nlu"):
            found = f"{module}:{trace.tb_lineno}"
        trace = trace.tb_next
    return found


_DETAILS = {
    404: "There is nothing here.",
    405: "This address takes another method.",
    413: "The body is larger than 16 KiB.",
}
