"""Whose answers are in each told figure of a cohort; withheld figures; a limit for its link; a coach's yes."""

from __future__ import annotations

import json
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
INSTANT = sa.DateTime(timezone=True)
ZERO = sa.text("0")
FIGURES = ("asked", "kept", "people")
LEAST_PEOPLE = 5


def upgrade() -> None:
    with op.batch_alter_table("cohort_weeks") as table:
        for name in FIGURES:
            table.alter_column(name, existing_type=sa.Integer(), nullable=True, server_default=None)
    op.execute(sa.text("UPDATE cohort_weeks SET people = NULL WHERE total IS NULL"))
    op.execute(sa.text(f"UPDATE cohort_weeks SET asked = NULL, kept = NULL WHERE asked < {LEAST_PEOPLE}"))
    op.create_table(
        "cohort_told",
        sa.Column("cohort_id", KEY, autoincrement=False, nullable=False),
        sa.Column("what", sa.Text(), nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("who", sa.Text(), nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.PrimaryKeyConstraint("cohort_id", "what", "number", "who", "day", name="pk_cohort_told"),
    )
    op.create_index("ix_cohort_told_who", "cohort_told", ["who"])
    op.create_index("ix_cohort_told_day", "cohort_told", ["day"])
    op.add_column("cohorts", sa.Column("most", sa.Integer(), server_default=sa.text("30"), nullable=False))
    op.add_column("cohort_members", sa.Column("agreed_at", INSTANT, nullable=True))
    op.execute(sa.text("UPDATE cohort_members SET agreed_at = joined_at"))
    _closings_without_how_few()


def _closings_without_how_few() -> None:
    conn = op.get_bind()
    cohorts = sa.table("cohorts", sa.column("id", KEY), sa.column("closing", sa.Text()))
    for row in conn.execute(sa.select(cohorts).where(cohorts.c.closing.is_not(None))).all():
        report = _without(json.loads(row.closing))
        text = json.dumps(report, ensure_ascii=False, separators=(",", ":"))
        conn.execute(cohorts.update().where(cohorts.c.id == row.id).values(closing=text))


def _without(value: Any) -> Any:
    """The same value, with nothing in it that says of how few a withheld figure was."""
    if isinstance(value, list):
        return [_without(one) for one in value]
    if not isinstance(value, dict):
        return value
    value = {name: _without(one) for name, one in value.items()}
    match value.get("$"):
        case "cohort.TooFew":
            value.pop("n", None)
        case "cohort.Sum" if value.get("total") is None:
            value["people"] = None
        case "cohort.Week":
            if value.get("total") is None:
                value["people"] = None
            if (value.get("asked") or 0) < LEAST_PEOPLE:
                value["asked"] = value["kept"] = None
    return value


def downgrade() -> None:
    op.drop_column("cohort_members", "agreed_at")
    op.drop_column("cohorts", "most")
    op.drop_table("cohort_told")
    for name in FIGURES:
        op.execute(sa.text(f"UPDATE cohort_weeks SET {name} = 0 WHERE {name} IS NULL"))
    with op.batch_alter_table("cohort_weeks") as table:
        for name in FIGURES:
            table.alter_column(name, existing_type=sa.Integer(), nullable=False, server_default=ZERO)
