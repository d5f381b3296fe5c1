"""Updates that could not be read."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None

KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "unread",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("key", sa.Text(), nullable=True),
        sa.Column("chat_id", sa.BigInteger(), nullable=True),
        sa.Column("received_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("body", sa.Text(), nullable=True),
        sa.Column("why", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_unread"),
        sa.UniqueConstraint("key", name="uq_unread_key"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_unread_chat_id", "unread", ["chat_id"])
    op.create_index("ix_unread_received_at", "unread", ["received_at"])


def downgrade() -> None:
    op.drop_table("unread")
