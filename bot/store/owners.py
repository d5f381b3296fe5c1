"""Whose key seals what. A person has one key, whichever of their rows it is for.

What is about a client goes with them, so it is theirs wherever it stands: also a message to their coach. What staff are
told besides names several people, and what comes from a stranger belongs to nobody: both are sealed for a few weeks.

Which key a client's is never changes, so it is remembered (`remember` says so of a new one: a number whose row was
rolled back may be given again); which person a chat is does change, so it is looked up.
"""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime

from sqlalchemy import Connection, select

from bot.store.dialect import among
from bot.store.keyring import of_connection
from bot.store.schema import clients, people

_CLIENTS = select(clients.c.id, clients.c.key_id).where(among(clients.c.id, "ids"))
_PEOPLE = select(people.c.id, people.c.key_id, people.c.role).where(among(people.c.id, "ids"))
_CHATS = select(people.c.chat_id, people.c.key_id).where(among(people.c.chat_id, "chats"))
_MOST = 65_536
CLIENT = "client"


def of_clients(conn: Connection, ids: Collection[int]) -> dict[int, str]:
    """Return the number of each client's key."""
    known = of_connection(conn).clients
    unknown = [one for one in set(ids) if one not in known]
    if unknown:
        if len(known) > _MOST:
            known.clear()
        known.update({r.id: r.key_id for r in conn.execute(_CLIENTS, {"ids": unknown})})
    return {one: known[one] for one in ids if one in known}


def of_people(conn: Connection, ids: Collection[int]) -> dict[int, tuple[str, bool]]:
    """Return the number of each person's key, and whether they are a client."""
    known = of_connection(conn).people
    unknown = [one for one in set(ids) if one not in known]
    if unknown:
        if len(known) > _MOST:
            known.clear()
        known.update({r.id: (r.key_id, r.role == CLIENT) for r in conn.execute(_PEOPLE, {"ids": unknown})})
    return {one: known[one] for one in ids if one in known}


def remember(conn: Connection, key: str, *, client: int | None = None, person: int | None = None) -> None:
    """Note the key of a client or person that was just made."""
    if client is not None:
        of_connection(conn).clients[client] = key
    if person is not None:
        of_connection(conn).people.pop(person, None)


def of_person(conn: Connection, person_id: int) -> str:
    """Return the number of a person's key."""
    return of_people(conn, [person_id])[person_id][0]


def of_chats(conn: Connection, chats: Collection[int]) -> dict[int, str]:
    """Return the number of the key of the person of each chat; strangers' and groups' are not in it."""
    return {r.chat_id: r.key_id for r in conn.execute(_CHATS, {"chats": list(set(chats))})} if chats else {}


def passing(conn: Connection, now: datetime) -> str:
    """Return the number of the key of what belongs to nobody, or to several."""
    return of_connection(conn).passing(now)
