"""Statements that every message runs: built and compiled once by SQLAlchemy, then run by the driver itself.

SQLAlchemy's own way to run one takes several times as long as SQLite does. What it does for the rest of the
program is kept: moments as text, rows with names, errors under its names, and no parameter in them, as those
hold levels. A test runs each statement both ways.
"""

from __future__ import annotations

from collections import namedtuple
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, TypeAlias

from sqlalchemy import ColumnElement, Connection, Dialect, Select, Table, insert, literal_column
from sqlalchemy.exc import DBAPIError
from sqlalchemy.sql.dml import Insert, ReturningInsert

Query: TypeAlias = Select[Any] | Insert | ReturningInsert[Any]
_Cells: TypeAlias = Sequence[Any]

ONE: ColumnElement[int] = literal_column("1")
"""For `limit`: SQLite prepares a statement anew each time where its limit is a parameter."""


@dataclass(frozen=True, slots=True)
class _Compiled:
    """A statement as one engine's driver wants it; `row`: what names the columns of what it returns."""

    sql: str
    parameters: Callable[[Mapping[str, object]], Any]
    row: Callable[[_Cells], Any] | None


class Statement:
    """A query with named parameters; `into`: an insert of one row, all columns given but its number."""

    def __init__(self, query: Query | Callable[[str], Query], into: Table | None = None) -> None:
        self._query = query
        self._keys = None if into is None else [column.key for column in into.c if column.key != "seq"]
        self._compiled: dict[str, _Compiled] = {}

    def on(self, engine: str) -> Query:
        """The query on an engine of that name."""
        return self._query(engine) if callable(self._query) else self._query

    def rows(self, connection: Connection, named: Mapping[str, object]) -> list[Any]:
        """All rows, each with its columns' names."""
        dialect = connection.dialect
        compiled = self._compiled.get(dialect.name)
        if compiled is None:
            compiled = self._compiled[dialect.name] = self._compile(dialect)
        cursor = connection.connection.cursor()
        try:
            cursor.execute(compiled.sql, compiled.parameters(named))
            found = () if compiled.row is None else cursor.fetchall()
        except dialect.loaded_dbapi.Error as error:
            raise _told(error, compiled.sql, dialect) from error
        finally:
            cursor.close()
        return [] if compiled.row is None else list(map(compiled.row, found))

    def one(self, connection: Connection, named: Mapping[str, object]) -> Any | None:
        """The first row; none where there is none."""
        rows = self.rows(connection, named)
        return rows[0] if rows else None

    def value(self, connection: Connection, named: Mapping[str, object]) -> Any:
        """The first column of the first row; none where there is none."""
        row = self.one(connection, named)
        return None if row is None else row[0]

    def _compile(self, dialect: Dialect) -> _Compiled:
        query = self.on(dialect.name)
        compiled: Any = query.compile(dialect=dialect, column_keys=self._keys)
        returns = () if type(query) is Insert else tuple(query.exported_columns)
        return _Compiled(compiled.string, _parameters(compiled, dialect), _row(returns, dialect))


def into(table: Table) -> Statement:
    """The insert of one row."""
    return Statement(insert(table).inline(), table)


def at_once(connection: Connection, sql: str) -> None:
    """Run a statement that has no parameter and returns nothing."""
    cursor = connection.connection.cursor()
    try:
        cursor.execute(sql)
    except connection.dialect.loaded_dbapi.Error as error:
        raise _told(error, sql, connection.dialect) from error
    finally:
        cursor.close()


def _told(error: Exception, sql: str, dialect: Dialect) -> BaseException:
    """The driver's error under SQLAlchemy's name for it."""
    return DBAPIError.instance(
        sql, None, error, dialect.loaded_dbapi.Error, hide_parameters=True, dialect=dialect
    )


def _parameters(compiled: Any, dialect: Dialect) -> Callable[[Mapping[str, object]], Any]:
    """What turns named values into the driver's, by their places or by name."""
    binds = {name: bind for bind, name in compiled.bind_names.items()}
    given = {name: bind.value for name, bind in binds.items() if not bind.required}
    names: tuple[str, ...] = tuple(compiled.positiontup or binds)
    found = ((name, _of_type(bind, dialect).bind_processor(dialect)) for name, bind in binds.items())
    converts = [(name, convert) for name, convert in found if convert is not None]

    def parameters(named: Mapping[str, object]) -> Any:
        held = {**given, **named}
        for name, convert in converts:
            held[name] = convert(held[name])
        return [held[name] for name in names] if compiled.positional else {name: held[name] for name in names}

    return parameters


def _row(columns: tuple[Any, ...], dialect: Dialect) -> Callable[[_Cells], Any] | None:
    """What turns the driver's row into one with names; none where nothing is returned."""
    if not columns:
        return None
    made: Any = namedtuple("Row", [column.key for column in columns])  # type: ignore[misc]
    found = (_of_type(column, dialect).result_processor(dialect, None) for column in columns)
    converts = [(place, convert) for place, convert in enumerate(found) if convert is not None]

    def row(cells: _Cells) -> Any:
        held = list(cells)
        for place, convert in converts:
            held[place] = convert(held[place])
        return made._make(held)

    return row if converts else made._make


def _of_type(of: Any, dialect: Dialect) -> Any:
    return of.type.dialect_impl(dialect)
