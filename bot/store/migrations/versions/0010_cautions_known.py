"""Cautions are asked for when something first needs them: whether they are known is stored. And what was said before
exercise."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("clients", sa.Column("cautions_known", sa.Boolean(), server_default=sa.true(), nullable=False))
    op.add_column("clients", sa.Column("readiness", sa.Text(), nullable=True))
    # everybody who finished the first questions was asked; whoever has not finished will be asked when it is needed
    op.execute(sa.text("UPDATE clients SET cautions_known = FALSE WHERE status = 'enrolling'"))


def downgrade() -> None:
    op.drop_column("clients", "readiness")
    op.drop_column("clients", "cautions_known")
