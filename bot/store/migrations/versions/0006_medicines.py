"""Names of a client's medicines that slow the pulse, sealed."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("clients", sa.Column("medicines", sa.Text(), server_default=sa.text("''"), nullable=False))


def downgrade() -> None:
    op.drop_column("clients", "medicines")
