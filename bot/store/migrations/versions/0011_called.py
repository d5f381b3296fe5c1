"""What a coach calls a client, where it is not the client's own name; sealed."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("clients", sa.Column("called", sa.Text(), server_default=sa.text("''"), nullable=False))


def downgrade() -> None:
    op.drop_column("clients", "called")
