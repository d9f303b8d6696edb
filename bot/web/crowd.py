"""What is told when more is asked than can be answered: come again, at once and not after a wait."""

from __future__ import annotations

import logging
from collections.abc import Sized
from http import HTTPStatus

from flask import Flask, request

from bot.web.logs import log
from bot.web.problems import RETRY_AFTER_S, Problem

MOST_WAITING = 256
"""Requests that wait for a worker: what they have to wait is told in seconds, not in minutes."""

_AT_ANY_TIME = ("health.alive", "metrics.told")


class Crowd:
    """Who waits for a worker of this process; whoever serves the app says where they stand."""

    def __init__(self) -> None:
        self.waiting: Sized = ()
        self._told = False

    def check(self) -> None:
        """Problem 503 when too many wait behind this request."""
        crowded = len(self.waiting) > MOST_WAITING
        if crowded != self._told:
            self._told = crowded
            log(logging.WARNING if crowded else logging.INFO, "crowded" if crowded else "no_longer_crowded")
        if crowded and request.endpoint not in _AT_ANY_TIME:
            raise Problem(
                HTTPStatus.SERVICE_UNAVAILABLE, "Too many messages are waiting.", retry_after_s=RETRY_AFTER_S
            )


def install(app: Flask) -> Crowd:
    """Let every request of this app be turned away while too many wait."""
    crowd = Crowd()
    app.extensions["crowd"] = crowd
    app.before_request(crowd.check)
    return crowd
