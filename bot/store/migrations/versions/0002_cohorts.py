"""Cohorts: when each is due, its closing report, and the published pooled figures."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
INSTANT = sa.DateTime(timezone=True)
ZERO = sa.text("0")


def upgrade() -> None:
    op.add_column("cohorts", sa.Column("next_at", INSTANT, nullable=True))
    op.add_column("cohorts", sa.Column("closing", sa.Text(), nullable=True))
    op.create_index("ix_cohorts_next_at", "cohorts", ["next_at"])
    op.create_table(
        "cohort_weeks",
        sa.Column("cohort_id", KEY, nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("asked", sa.Integer(), server_default=ZERO, nullable=False),
        sa.Column("kept", sa.Integer(), server_default=ZERO, nullable=False),
        sa.Column("people", sa.Integer(), server_default=ZERO, nullable=False),
        sa.Column("total", sa.Integer(), nullable=True),
        sa.Column("told_at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["cohort_id"], ["cohorts.id"], name="fk_cohort_weeks_cohort_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("cohort_id", "number", name="pk_cohort_weeks"),
    )


def downgrade() -> None:
    op.drop_table("cohort_weeks")
    op.drop_index("ix_cohorts_next_at", table_name="cohorts")
    with op.batch_alter_table("cohorts") as table:
        table.drop_column("closing")
        table.drop_column("next_at")
