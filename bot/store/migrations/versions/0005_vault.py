"""What says something of a person is sealed with that person's key; handled rows of the inbox name no chat."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, date
from decimal import Decimal
from functools import partial
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
A_LOAD = 1_000  # rows to a statement
TEXTS: dict[str, Any] = {"birth_year": sa.Integer(), "birth_date": sa.Date()}  # of clients: were no texts, and are
SEALED: dict[str, tuple[str, ...]] = {
    "people": ("name",),
    "clients": ("name", "birth_year", "birth_date", "sex", "stature", "background", "cautions", "plan"),
    "coaches": ("name",),
    "organisers": ("name",),
    "invitations": ("by_name", "for_name", "plan"),
    "conversations": ("state",),
    "inbox": ("event", "name"),
    "unread": ("body",),
    "outbox": ("message", "choices"),
    "templates": ("name", "plan"),
    "readings": ("value", "second", "as_typed", "conditions"),
    "flags": ("evidence",),
    "goals": ("target",),
    "notes": ("text",),
    "words": ("text",),
}
IDENTITY = {"conversations": ("chat_id",), "goals": ("client_id", "measure")}


def upgrade() -> None:
    conn = op.get_bind()
    op.create_table(
        "erasures",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("key_id", sa.Text(), nullable=True),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_erasures"),
        sqlite_autoincrement=True,
    )
    for table in ("people", "clients"):
        op.add_column(table, sa.Column("key_id", sa.Text(), server_default=sa.text("''"), nullable=False))
    for name in TEXTS:  # by columns: SQLite copies a table to alter it, and what hangs on the old one would go with it
        op.add_column("clients", sa.Column(f"{name}_text", sa.Text(), nullable=True))
        conn.execute(sa.text(f"UPDATE clients SET {name}_text = CAST({name} AS TEXT)"))
        op.drop_column("clients", name)
        conn.execute(sa.text(f"ALTER TABLE clients RENAME COLUMN {name}_text TO {name}"))
    with op.batch_alter_table("templates") as templates:
        templates.drop_constraint("uq_templates_coach_id_name", type_="unique")
    op.create_index("ix_templates_coach_id", "templates", ["coach_id"])
    _Sealing(conn).everything()
    conn.execute(sa.text("UPDATE inbox SET chat_id = 0 WHERE status = 'done'"))


_READINGS = sa.table(
    "readings",
    sa.column("id", sa.Integer()),
    sa.column("client_id", sa.Integer()),
    sa.column("key", sa.Text()),
    sa.column("measure", sa.Text()),
    sa.column("taken_at", sa.DateTime(timezone=True)),
    sa.column("value", sa.Text()),
    sa.column("second", sa.Text()),
)


class _Sealing:
    """Seals what is stored in clear."""

    def __init__(self, conn: sa.Connection) -> None:
        self.conn = conn
        self.ring: Any = conn.dialect.keyring  # type: ignore[attr-defined]
        self.today: date = conn.execute(sa.text("SELECT CURRENT_DATE")).scalar_one()
        if isinstance(self.today, str):
            self.today = date.fromisoformat(self.today)
        self._nobodys = ""

    @property
    def nobodys(self) -> str:
        """Of what belongs to nobody or to several people: the key of this week."""
        if not self._nobodys:
            year, week, _ = self.today.isocalendar()
            self._nobodys = self.ring.of_week(f"{year}-{week:02}", self.today)
        return self._nobodys

    def everything(self) -> None:
        self._give_keys()
        of_person = self._map("SELECT id, key_id FROM people")
        of_chat = self._map("SELECT chat_id, key_id FROM people")
        of_client = self._map("SELECT id, key_id FROM clients")
        of_coach = self._map("SELECT c.id, p.key_id FROM coaches c JOIN people p ON p.id = c.person_id")
        clients = {r.id for r in self.conn.execute(sa.text("SELECT id FROM people WHERE role = 'client'"))}

        def by(names: dict[int, str], column: str) -> Callable[[Any], str]:
            return lambda row: names.get(row[column]) or self.nobodys

        def outbox(row: Any) -> str:
            theirs = of_person.get(row["person_id"]) if row["person_id"] in clients else None
            return of_client.get(row["about"]) or theirs or self.nobodys

        keys: dict[str, Callable[[Any], str]] = {
            "people": lambda row: str(row["key_id"]),
            "clients": lambda row: str(row["key_id"]),
            "coaches": by(of_person, "person_id"),
            "organisers": by(of_person, "person_id"),
            "conversations": by(of_chat, "chat_id"),
            "inbox": by(of_chat, "chat_id"),
            "unread": by(of_chat, "chat_id"),
            "outbox": outbox,
            "templates": by(of_coach, "coach_id"),
        }
        self._rename_imported(of_client)
        for name in SEALED:
            key = keys.get(name, by(of_client, "client_id"))
            self._change(name, partial(self._sealed, key))

    def _rename_imported(self, keys: dict[int, str]) -> None:
        """A key made of what was read would tell it to whoever tries values: it is made with the client's key now."""
        rows = self.conn.execute(
            sa.select(_READINGS).where(_READINGS.c.key.like("import/%")).order_by(_READINGS.c.id)
        ).all()
        renamed = []
        for r in rows:
            if r.client_id in keys:
                values = [format(Decimal(v).normalize(), "f") for v in (r.value, r.second) if v is not None]
                at = r.taken_at.replace(tzinfo=UTC) if r.taken_at.tzinfo is None else r.taken_at.astimezone(UTC)
                what = f"{r.client_id}\n{r.measure}\n{at.isoformat()}\n{'/'.join(values)}"
                renamed.append({"row": r.id, "new": f"import/{self.ring.fingerprint(keys[r.client_id], what)}"})
        if renamed:
            self.conn.execute(sa.text("UPDATE readings SET key = :new WHERE id = :row"), renamed)

    def _sealed(self, key: Callable[[Any], str], row: Any, place: str, text: str) -> str:
        sealed: str = self.ring.seal(key(row), place, text)
        return sealed

    def opened(self) -> None:
        """Store everything in clear again."""
        for name in SEALED:
            self._change(name, lambda row, place, text: self.ring.open(place, text))

    def _map(self, query: str) -> dict[int, str]:
        return {row[0]: row[1] for row in self.conn.execute(sa.text(query))}

    def _give_keys(self) -> None:
        """A key for each person, and for each client who is none yet."""
        people = [r.id for r in self.conn.execute(sa.text("SELECT id FROM people ORDER BY id"))]
        rows = self.conn.execute(sa.text("SELECT id, person_id FROM clients ORDER BY id")).all()
        alone = [r.id for r in rows if r.person_id is None]
        keys = iter(self.ring.make_many(len(people) + len(alone), self.today))
        given = [{"row": one, "new": next(keys)} for one in people]
        theirs = {g["row"]: g["new"] for g in given}
        if given:
            self.conn.execute(sa.text("UPDATE people SET key_id = :new WHERE id = :row"), given)
        of_clients = [{"row": r.id, "new": theirs[r.person_id]} for r in rows if r.person_id is not None]
        of_clients += [{"row": one, "new": next(keys)} for one in alone]
        if of_clients:
            self.conn.execute(sa.text("UPDATE clients SET key_id = :new WHERE id = :row"), of_clients)

    def _change(self, name: str, new: Callable[[Any, str, str], str]) -> None:
        """Replace the sealed columns of a table by `new` of the row, the place and the text."""
        columns = SEALED[name]
        identity = IDENTITY.get(name, ("id",))
        table = sa.table(name, *(sa.column(c) for c in dict.fromkeys((*identity, *columns))))
        change = (
            sa.update(table)
            .where(*(table.c[c] == sa.bindparam(f"its_{c}") for c in identity))
            .values({c: sa.bindparam(f"new_{c}") for c in columns})
        )
        for rows in self._loads(name, identity):
            changes = []
            for row in rows:
                values = {
                    c: new(row, f"{name}.{c}", str(row[c])) if row[c] not in (None, "") else row[c] for c in columns
                }
                changes.append({f"new_{c}": v for c, v in values.items()} | {f"its_{c}": row[c] for c in identity})
            self.conn.execute(change, changes)
        self.ring.forget_opened()

    def _loads(self, name: str, identity: tuple[str, ...]) -> Iterator[list[Any]]:
        """All rows of a table, some at a time, in the order of what identifies them."""
        order = ", ".join(identity)
        last: dict[str, Any] = {}
        while True:
            where = ""
            if last:
                where = f"WHERE ({order}) > ({', '.join(f':{c}' for c in identity)})"
            found = self.conn.execute(sa.text(f"SELECT * FROM {name} {where} ORDER BY {order} LIMIT {A_LOAD}"), last)
            rows = list(found.mappings())
            if not rows:
                return
            last = {c: rows[-1][c] for c in identity}
            yield rows


def _was(conn: sa.Connection, name: str, type_: Any) -> str:
    """SQLite keeps a date as text; a cast would make a number of it."""
    return name if conn.dialect.name == "sqlite" else f"CAST({name} AS {type_})"


def downgrade() -> None:
    conn = op.get_bind()
    _Sealing(conn).opened()
    op.drop_index("ix_templates_coach_id", table_name="templates")
    with op.batch_alter_table("templates") as templates:
        templates.create_unique_constraint("uq_templates_coach_id_name", ["coach_id", "name"])
    for name, type_ in TEXTS.items():
        op.add_column("clients", sa.Column(f"{name}_was", type_, nullable=True))
        conn.execute(sa.text(f"UPDATE clients SET {name}_was = {_was(conn, name, type_)}"))
        op.drop_column("clients", name)
        conn.execute(sa.text(f"ALTER TABLE clients RENAME COLUMN {name}_was TO {name}"))
    for table in ("people", "clients"):
        op.drop_column(table, "key_id")
    op.drop_table("erasures")
