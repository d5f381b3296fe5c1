"""What waits to be said to staff and names somebody who is erased: it is said without them, or not at all."""

from __future__ import annotations

from dataclasses import dataclass, fields, is_dataclass, replace
from datetime import datetime
from typing import Any, Final

from sqlalchemy import Connection, delete, select, update

from bot.store import codec, owners
from bot.store.schema import PENDING, outbox, people
from bot.store.sealed import secret

NAMED: Final = object()  # in place of a value that is about them


@dataclass(frozen=True, slots=True)
class Erased:
    """A client who is erased. name: "" for one who has none."""

    client_id: int
    name: str


_WAITING = (
    select(outbox.c.id, outbox.c.message, outbox.c.choices)
    .join(people, people.c.id == outbox.c.person_id)
    .where(PENDING, people.c.role != owners.CLIENT, outbox.c.about.is_(None), outbox.c.message.is_not(None))
)


def drop(conn: Connection, who: Erased, now: datetime) -> None:
    """Take somebody out of every message to staff that was not sent yet."""
    key = owners.passing(conn, now)
    for r in conn.execute(_WAITING).all():
        try:
            message = codec.loads(r.message)
            choices = codec.load_rows(r.choices) if r.choices else ()
        except codec.CodecError:
            continue  # delivery sets it aside
        said, pressed = without(message, who), tuple(row for row in without(choices, who) if row)
        if said is NAMED or _is_emptied(message, said):
            conn.execute(delete(outbox).where(outbox.c.id == r.id))
        elif (said, pressed) != (message, choices):
            anew = {
                "message": secret(key, codec.dumps(said)),
                "choices": secret(key, codec.dump_rows(pressed) if pressed else None),
            }
            conn.execute(update(outbox).where(outbox.c.id == r.id).values(anew))


def without(value: Any, who: Erased) -> Any:
    """Return a value without what in it is about somebody; `NAMED` if all of it is.

    A list loses the entries that are about them. Anything else that holds their number or name is about them.
    """
    if isinstance(value, str):
        return NAMED if value and value == who.name else value
    if isinstance(value, tuple):
        return _list_without(value, who)
    if not is_dataclass(value):
        return value
    if hasattr(value, "client_id"):  # another of the same name stays
        return NAMED if value.client_id == who.client_id else value
    anew = {field.name: without(getattr(value, field.name), who) for field in fields(value)}
    return NAMED if any(part is NAMED for part in anew.values()) else replace(value, **anew)  # type: ignore[type-var]


def _list_without(value: tuple[Any, ...], who: Erased) -> Any:
    kept = []
    for item in value:
        left = without(item, who)
        if left is not NAMED:
            kept.append(left)
        elif isinstance(item, str):
            return NAMED
    return tuple(kept)


def _is_emptied(message: Any, said: Any) -> bool:
    """Whether a message that listed something lists nothing any more."""
    return is_dataclass(message) and any(
        getattr(message, field.name) and getattr(said, field.name) == () for field in fields(message)
    )
