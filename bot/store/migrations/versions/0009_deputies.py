"""Who stands in for a coach, how long an alarm waits for the coach, and what became of it."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None

KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.create_table(
        "deputies",
        sa.Column("coach_id", KEY, autoincrement=False, nullable=False),
        sa.Column("deputy_id", KEY, nullable=False),
        sa.Column("begins", sa.Date(), nullable=True),
        sa.Column("ends", sa.Date(), nullable=True),
        sa.PrimaryKeyConstraint("coach_id", name="pk_deputies"),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_deputies_coach_id", ondelete="CASCADE"),
        sa.ForeignKeyConstraint(["deputy_id"], ["coaches.id"], name="fk_deputies_deputy_id", ondelete="CASCADE"),
    )
    op.create_index("ix_deputies_deputy_id", "deputies", ["deputy_id"])
    op.add_column("coaches", sa.Column("wait_minutes", sa.Integer(), server_default=sa.text("30"), nullable=False))
    op.add_column("flags", sa.Column("acknowledged_at", sa.DateTime(timezone=True), nullable=True))
    op.add_column("flags", sa.Column("escalated_at", sa.DateTime(timezone=True), nullable=True))
    # what was told before this version is nobody's alarm any more
    op.execute(sa.text("UPDATE flags SET escalated_at = refreshed_at"))


def downgrade() -> None:
    op.drop_column("flags", "escalated_at")
    op.drop_column("flags", "acknowledged_at")
    op.drop_column("coaches", "wait_minutes")
    op.drop_index("ix_deputies_deputy_id", table_name="deputies")
    op.drop_table("deputies")
