"""A connection to PostgreSQL that does not wait for ever; imported only where there is one.

The server is told to give up first, so that nothing of it goes on waiting for a lock behind our back, and to
end the transaction of a client that has gone silent in it. The client gives up by itself where nothing comes.
"""

from __future__ import annotations

from collections.abc import Callable, Generator
from typing import Any, TypeVar

from psycopg import Connection, OperationalError
from psycopg.abc import PQGen

T = TypeVar("T")

TICK_S = 0.1
_IDLE = 6
"""A transaction in which the client is silent for so many times as long is ended by the server."""


def punctual(answer_s: float) -> Callable[..., Connection[Any]]:
    """What SQLAlchemy connects by, for `do_connect`: each statement is answered within so many seconds."""

    class Punctual(Connection[Any]):
        def wait(self, gen: PQGen[T], interval: float = TICK_S, timeout: float | None = None) -> T:
            """What the generator returns. OperationalError when nothing comes for so long."""
            more = {} if timeout is None else {"timeout": timeout}
            return super().wait(_in_time(self, gen, round(answer_s / interval)), interval=interval, **more)

    def connected(_dialect: object, _record: object, args: Any, named: dict[str, Any]) -> Connection[Any]:
        connection = Punctual.connect(*args, **named)
        connection.execute(_limits(answer_s))
        connection.commit()
        return connection

    return connected


def _limits(answer_s: float) -> bytes:
    """The limits of a session, as statements."""
    told, idle = round(800 * answer_s), round(1000 * _IDLE * answer_s)
    return (
        f"SET lock_timeout = {told}; SET statement_timeout = {told};"
        f" SET idle_in_transaction_session_timeout = {idle}"
    ).encode()


def _in_time(connection: Connection[Any], gen: PQGen[T], most: int) -> Generator[Any, Any, T]:
    """The generator, ended where nothing came for that many ticks one after the other.

    It is told of a tick in which nothing came since psycopg 3.2.11 only.
    """
    silent = 0
    try:
        wanted = next(gen)
        while True:
            ready = yield wanted
            silent = 0 if ready else silent + 1
            if silent >= most:
                connection.pgconn.finish()  # what it would still answer is the answer to nothing
                raise OperationalError("the database does not answer")
            wanted = gen.send(ready)
    except StopIteration as done:
        value: T = done.value
        return value
