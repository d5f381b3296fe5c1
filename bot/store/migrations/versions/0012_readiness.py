"""What a client said before exercise, sealed."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("clients", sa.Column("readiness", sa.Text(), nullable=True))


def downgrade() -> None:
    op.drop_column("clients", "readiness")
