"""Indexes that cover the full sort order of their queries, and one for rows set aside."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

PENDING = sa.text("status = 'pending'")
SET_ASIDE = sa.text("status = 'set_aside'")
COUNTING = sa.text("withdrawn_at IS NULL AND how <> 'early'")


def upgrade() -> None:
    _again("ix_outbox_ready", "outbox", ["priority", "ready_at", "id"], PENDING)
    _again("ix_readings_counting", "readings", ["client_id", "measure", "taken_at", "id"], COUNTING)
    op.create_index("ix_inbox_set_aside", "inbox", ["id"], sqlite_where=SET_ASIDE, postgresql_where=SET_ASIDE)


def downgrade() -> None:
    op.drop_index("ix_inbox_set_aside", table_name="inbox")
    _again("ix_readings_counting", "readings", ["client_id", "measure", "taken_at"], COUNTING)
    _again("ix_outbox_ready", "outbox", ["priority", "ready_at"], PENDING)


def _again(name: str, table: str, columns: list[str], where: sa.TextClause) -> None:
    op.drop_index(name, table_name=table)
    op.create_index(name, table, columns, sqlite_where=where, postgresql_where=where)
