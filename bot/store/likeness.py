"""Whether the schema itself is what the steps make: a start asks only which step it says it is at.

A unique index that was dropped lets one message be recorded twice, and no row shows it.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from sqlalchemy import Connection, ForeignKeyConstraint, Select, and_, inspect, select

from bot.store.tables import metadata

_SAID = {"add": "lacks the", "remove": "has besides the", "modify": "has another"}


def differences(connection: Connection) -> Iterator[str]:
    """What a table lacks, has besides, or has otherwise; tables of someone else's are not looked at."""
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext

    context = MigrationContext.configure(connection, opts={"compare_type": True})
    for found in compare_metadata(context, metadata):
        difference = found[0] if isinstance(found, list) else found
        if difference[0] != "remove_table":
            yield _told(difference)
    look = inspect(connection)
    for table in metadata.sorted_tables:
        wanted = [column.name for column in table.primary_key.columns]
        if look.has_table(table.name) and look.get_pk_constraint(table.name)["constrained_columns"] != wanted:
            yield f"has another primary key of {table.name}"


def orphans(connection: Connection) -> Iterator[tuple[str, str]]:
    """Rows that hang on one that is missing: the table and its first such row's key, and the other table."""
    for table in metadata.sorted_tables:
        for key in sorted(table.foreign_key_constraints, key=lambda each: str(each.name)):
            first = connection.execute(_orphan(key)).first()
            if first is not None:
                yield f"{table.name} {'-'.join(map(str, first))}", key.referred_table.name


def _orphan(key: ForeignKeyConstraint) -> Select[Any]:
    """The first row that names one of the other table that is not there."""
    table, other = key.table, key.referred_table.alias()
    meets = and_(*(each.parent == other.c[each.column.name] for each in key.elements))
    held = and_(*(each.parent.is_not(None) for each in key.elements))
    missing = other.c[key.elements[0].column.name].is_(None)
    names = table.primary_key.columns
    return select(*names).outerjoin_from(table, other, meets).where(missing, held).order_by(*names).limit(1)


def _told(difference: tuple[Any, ...]) -> str:
    verb, _, noun = difference[0].partition("_")
    named = [each if isinstance(each, str) else each.name for each in difference[1:4] if _names(each)]
    return f"{_SAID.get(verb, verb)} {noun.replace('_', ' ')} {' '.join(named)}"


def _names(thing: object) -> bool:
    return isinstance(thing if isinstance(thing, str) else getattr(thing, "name", None), str)
