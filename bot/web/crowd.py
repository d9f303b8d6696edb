"""What is told when more is asked than can be answered: come again, at once and not after a wait."""

from __future__ import annotations

import logging
import threading
from collections.abc import Sized
from http import HTTPStatus

from flask import Flask, g, request

from bot.web.logs import log
from bot.web.problems import RETRY_AFTER_S, Problem

MOST_WAITING = 256
"""Requests that wait for a worker: what they have to wait is told in seconds, not in minutes."""

AT_WORK = 2
"""So many are answered even in a crowd: else those who come again at once would keep everyone out."""

_AT_ANY_TIME = ("health.alive", "metrics.told")


class Crowd:
    """Who waits for a worker of this process; whoever serves the app says where they stand."""

    def __init__(self) -> None:
        self.waiting: Sized = ()
        self._lock = threading.Lock()
        self._at_work = 0
        self._told = False

    def let_in(self) -> None:
        """Problem 503 when too many wait behind this request, and others are at work."""
        crowded = len(self.waiting) > MOST_WAITING
        works = request.endpoint not in _AT_ANY_TIME
        with self._lock:
            news, self._told = crowded != self._told, crowded
            g.at_work = works and not (crowded and self._at_work >= AT_WORK)
            self._at_work += g.at_work
        if news:
            log(logging.WARNING if crowded else logging.INFO, "crowded" if crowded else "no_longer_crowded")
        if works and not g.at_work:
            raise Problem(
                HTTPStatus.SERVICE_UNAVAILABLE, "Too many messages are waiting.", retry_after_s=RETRY_AFTER_S
            )

    def let_out(self, _error: BaseException | None) -> None:
        """The request is over."""
        if g.pop("at_work", False):
            with self._lock:
                self._at_work -= 1


def install(app: Flask) -> Crowd:
    """Let requests of this app be turned away while too many wait."""
    crowd = Crowd()
    app.extensions["crowd"] = crowd
    app.before_request(crowd.let_in)
    app.teardown_request(crowd.let_out)
    return crowd
