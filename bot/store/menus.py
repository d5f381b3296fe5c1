"""Command menus of staff, so that each is set once, and again when it changes."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import Connection, String, case, cast, delete, literal, or_, select

from bot.store.dialect import upsert
from bot.store.schema import coaches, organisers, people, settings


@dataclass(frozen=True, slots=True)
class OutdatedMenu:
    """A chat whose menu is missing or outdated. mark: recorded by `set_to` once the menu is set."""

    chat_id: int
    menu: str  # "coach", "organiser", "both"
    language: str
    mark: str


_key = literal("menu/") + cast(people.c.chat_id, String)
_role = case(
    (coaches.c.id.is_(None), "organiser"),
    (organisers.c.id.is_(None), "coach"),
    else_="both",
)
_mark = _role + "/" + people.c.language


def stale(conn: Connection, version: str, limit: int = 20) -> list[OutdatedMenu]:
    """Up to `limit` staff whose menu is not of `version` (of our menus) in their language."""
    wanted = _mark + "/" + literal(version)
    rows = conn.execute(
        select(people.c.chat_id, _role.label("menu"), people.c.language, wanted.label("mark"))
        .select_from(
            people.outerjoin(coaches, coaches.c.person_id == people.c.id)
            .outerjoin(organisers, organisers.c.person_id == people.c.id)
            .outerjoin(settings, settings.c.key == _key)
        )
        .where(
            people.c.id.in_(
                select(coaches.c.person_id)
                .where(coaches.c.person_id.is_not(None))
                .union_all(select(organisers.c.person_id).where(organisers.c.person_id.is_not(None)))
            ),
            people.c.reachable,
            or_(settings.c.value.is_(None), settings.c.value != wanted),
        )
        .limit(limit)
    )
    return [OutdatedMenu(r.chat_id, r.menu, r.language, r.mark) for r in rows]


def forget(conn: Connection, chat_id: int) -> None:
    """Drop what is noted of a chat."""
    conn.execute(delete(settings).where(settings.c.key == f"menu/{chat_id}"))


def set_to(conn: Connection, menu: OutdatedMenu) -> None:
    """Record that a chat has its menu."""
    upsert(conn, settings, [{"key": f"menu/{menu.chat_id}", "value": menu.mark}], ("key",), ("value",))
