"""How a flag ended: what followed, what was done, by whom; and which digest told it."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
COLUMNS = (  # name, type, whether it is "" rather than nothing
    ("digest_at", sa.DateTime(timezone=True), False),
    ("ended", sa.Text(), True),
    ("followed", sa.Text(), False),
    ("done", sa.Text(), True),
    ("done_words", sa.Text(), False),
    ("done_by", KEY, False),
)


def upgrade() -> None:
    for name, kind, empty in COLUMNS:  # one by one: a table that is copied takes what hangs on it along
        default = sa.text("''") if empty else None
        op.add_column("flags", sa.Column(name, kind, server_default=default, nullable=not empty))
    # what was over before this version is not told as if it had just happened
    op.execute(sa.text("UPDATE flags SET digest_at = cleared_at WHERE cleared_at IS NOT NULL"))


def downgrade() -> None:
    for name, _, _ in reversed(COLUMNS):
        op.drop_column("flags", name)
