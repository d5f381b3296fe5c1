"""The first schema."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

# What a migration means must not change with the code, so the types are written out here.
KEY = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
INSTANT = sa.DateTime(timezone=True)
PENDING = sa.text("status = 'pending'")
OPEN = sa.text("cleared_at IS NULL")
COUNTING = sa.text("withdrawn_at IS NULL AND how <> 'early'")


def upgrade() -> None:
    op.create_table(
        "audit",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("at", INSTANT, nullable=False),
        sa.Column("actor", sa.Text(), nullable=False),
        sa.Column("action", sa.Text(), nullable=False),
        sa.Column("client_id", KEY, nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_audit"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_audit_at", "audit", ["at"])
    op.create_table(
        "conversations",
        sa.Column("chat_id", sa.BigInteger(), autoincrement=False, nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("updated_at", INSTANT, nullable=False),
        sa.PrimaryKeyConstraint("chat_id", name="pk_conversations"),
    )
    op.create_table(
        "inbox",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("received_at", INSTANT, nullable=False),
        sa.Column("event", sa.Text(), nullable=True),
        sa.Column("language", sa.Text(), nullable=True),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("is_group", sa.Boolean(), server_default=sa.false(), nullable=False),
        sa.Column("status", sa.Text(), server_default=sa.text("'pending'"), nullable=False),
        sa.Column("attempts", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("retry_at", INSTANT, nullable=True),
        sa.Column("error", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_inbox"),
        sa.UniqueConstraint("key", name="uq_inbox_key"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_inbox_order", "inbox", ["id"], sqlite_where=PENDING, postgresql_where=PENDING)
    op.create_index("ix_inbox_pending", "inbox", ["chat_id", "id"], sqlite_where=PENDING, postgresql_where=PENDING)
    op.create_index("ix_inbox_received", "inbox", ["received_at"])
    op.create_table(
        "pace",
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("free_at", INSTANT, nullable=False),
        sa.PrimaryKeyConstraint("key", name="pk_pace"),
    )
    op.create_table(
        "people",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("role", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("language", sa.Text(), server_default=sa.text("'en'"), nullable=False),
        sa.Column("zone_name", sa.Text(), nullable=True),
        sa.Column("reachable", sa.Boolean(), server_default=sa.true(), nullable=False),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_people"),
        sa.UniqueConstraint("chat_id", name="uq_people_chat_id"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "settings",
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("key", name="pk_settings"),
    )
    op.create_table(
        "wakes",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("purpose", sa.Text(), nullable=False),
        sa.Column("mark", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("at", INSTANT, nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_wakes"),
        sa.UniqueConstraint("chat_id", "purpose", "mark", name="uq_wakes_chat_id_purpose_mark"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_wakes_at", "wakes", ["at"])
    op.create_table(
        "coaches",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("person_id", KEY, nullable=True),
        sa.Column("name", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("weekday", sa.Integer(), nullable=True),
        sa.Column("at", sa.Time(), nullable=True),
        sa.Column("zone_name", sa.Text(), nullable=True),
        sa.Column("next_digest_at", INSTANT, nullable=True),
        sa.Column("quiet_nights", sa.Boolean(), server_default=sa.true(), nullable=False),
        sa.Column("settings", sa.Text(), nullable=True),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.Column("left_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"], name="fk_coaches_person_id", ondelete="SET NULL"),
        sa.PrimaryKeyConstraint("id", name="pk_coaches"),
        sa.UniqueConstraint("person_id", name="uq_coaches_person_id"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_coaches_next_digest_at", "coaches", ["next_digest_at"])
    op.create_table(
        "organisers",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("person_id", KEY, nullable=True),
        sa.Column("name", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"], name="fk_organisers_person_id", ondelete="SET NULL"),
        sa.PrimaryKeyConstraint("id", name="pk_organisers"),
        sa.UniqueConstraint("person_id", name="uq_organisers_person_id"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "outbox",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("occasion", sa.Text(), nullable=True),
        sa.Column("kind", sa.Text(), server_default=sa.text("'message'"), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("person_id", KEY, nullable=True),
        sa.Column("is_group", sa.Boolean(), server_default=sa.false(), nullable=False),
        sa.Column("about", KEY, nullable=True),
        sa.Column("language", sa.Text(), nullable=True),
        sa.Column("message", sa.Text(), nullable=True),
        sa.Column("choices", sa.Text(), nullable=True),
        sa.Column("ref", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("priority", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("due_at", INSTANT, nullable=False),
        sa.Column("ready_at", INSTANT, nullable=False),
        sa.Column("status", sa.Text(), server_default=sa.text("'pending'"), nullable=False),
        sa.Column("attempts", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("claimed_by", sa.Text(), nullable=True),
        sa.Column("error", sa.Text(), nullable=True),
        sa.Column("platform_message_id", sa.Text(), nullable=True),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.Column("sent_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"], name="fk_outbox_person_id", ondelete="SET NULL"),
        sa.PrimaryKeyConstraint("id", name="pk_outbox"),
        sa.UniqueConstraint("occasion", name="uq_outbox_occasion"),
        sqlite_autoincrement=True,
    )
    op.create_index(
        "ix_outbox_about",
        "outbox",
        ["about"],
        sqlite_where=sa.text("about IS NOT NULL"),
        postgresql_where=sa.text("about IS NOT NULL"),
    )
    op.create_index(
        "ix_outbox_chat", "outbox", ["chat_id", "due_at", "id"], sqlite_where=PENDING, postgresql_where=PENDING
    )
    op.create_index("ix_outbox_created", "outbox", ["chat_id", "created_at"])
    op.create_index("ix_outbox_old", "outbox", ["created_at"])
    op.create_index("ix_outbox_person_id", "outbox", ["person_id"])
    op.create_index(
        "ix_outbox_ready", "outbox", ["priority", "ready_at"], sqlite_where=PENDING, postgresql_where=PENDING
    )
    op.create_table(
        "clients",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("person_id", KEY, nullable=True),
        sa.Column("coach_id", KEY, nullable=True),
        sa.Column("status", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("consented_at", INSTANT, nullable=True),
        sa.Column("birth_year", sa.Integer(), nullable=True),
        sa.Column("birth_date", sa.Date(), nullable=True),
        sa.Column("sex", sa.Text(), nullable=True),
        sa.Column("stature", sa.Text(), nullable=True),
        sa.Column("background", sa.Text(), nullable=True),
        sa.Column("cautions", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("mass_unit", sa.Text(), server_default=sa.text("'kg'"), nullable=False),
        sa.Column("length_unit", sa.Text(), server_default=sa.text("'cm'"), nullable=False),
        sa.Column("weekday", sa.Integer(), nullable=True),
        sa.Column("at", sa.Time(), nullable=True),
        sa.Column("zone_name", sa.Text(), nullable=True),
        sa.Column("plan", sa.Text(), nullable=True),
        sa.Column("baseline_since", INSTANT, nullable=True),
        sa.Column("paused_until", sa.Date(), nullable=True),
        sa.Column("next_due_at", INSTANT, nullable=True),
        sa.Column("next_due_day", sa.Date(), nullable=True),
        sa.Column("asked", sa.Date(), nullable=True),
        sa.Column("answered", sa.Date(), nullable=True),
        sa.Column("missed", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.Column("left_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_clients_coach_id", ondelete="SET NULL"),
        sa.ForeignKeyConstraint(["person_id"], ["people.id"], name="fk_clients_person_id", ondelete="SET NULL"),
        sa.PrimaryKeyConstraint("id", name="pk_clients"),
        sa.UniqueConstraint("person_id", name="uq_clients_person_id"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_clients_coach_id", "clients", ["coach_id"])
    op.create_index("ix_clients_due", "clients", ["next_due_at", "id"])
    op.create_table(
        "cohorts",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("organiser_id", KEY, nullable=True),
        sa.Column("coach_id", KEY, nullable=True),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("starts", sa.Date(), nullable=False),
        sa.Column("weeks", sa.Integer(), nullable=False),
        sa.Column("weekday", sa.Integer(), nullable=True),
        sa.Column("at", sa.Time(), nullable=True),
        sa.Column("zone_name", sa.Text(), nullable=True),
        sa.Column("counts", sa.Text(), nullable=True),
        sa.Column("language", sa.Text(), server_default=sa.text("'en'"), nullable=False),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.Column("closed_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_cohorts_coach_id", ondelete="SET NULL"),
        sa.ForeignKeyConstraint(
            ["organiser_id"], ["organisers.id"], name="fk_cohorts_organiser_id", ondelete="SET NULL"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_cohorts"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_cohorts_coach_id", "cohorts", ["coach_id"])
    op.create_index("ix_cohorts_organiser_id", "cohorts", ["organiser_id"])
    op.create_table(
        "templates",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("coach_id", KEY, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("plan", sa.Text(), nullable=False),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_templates_coach_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("id", name="pk_templates"),
        sa.UniqueConstraint("coach_id", "name", name="uq_templates_coach_id_name"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "cohort_members",
        sa.Column("cohort_id", KEY, nullable=False),
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("joined_at", INSTANT, nullable=False),
        sa.Column("left_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_cohort_members_client_id", ondelete="CASCADE"),
        sa.ForeignKeyConstraint(["cohort_id"], ["cohorts.id"], name="fk_cohort_members_cohort_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("cohort_id", "client_id", name="pk_cohort_members"),
    )
    op.create_index("ix_cohort_members_client_id", "cohort_members", ["client_id"])
    op.create_table(
        "flags",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("measure", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("severity", sa.Text(), nullable=False),
        sa.Column("evidence", sa.Text(), nullable=True),
        sa.Column("since", INSTANT, nullable=False),
        sa.Column("refreshed_at", INSTANT, nullable=False),
        sa.Column("seen_at", INSTANT, nullable=True),
        sa.Column("told_at", INSTANT, nullable=True),
        sa.Column("cleared_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_flags_client_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("id", name="pk_flags"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_flags_since", "flags", ["client_id", "since"])
    op.create_index(
        "uq_flags_open",
        "flags",
        ["client_id", "code", "measure"],
        unique=True,
        sqlite_where=OPEN,
        postgresql_where=OPEN,
    )
    op.create_table(
        "goals",
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("measure", sa.Text(), nullable=False),
        sa.Column("target", sa.Text(), nullable=False),
        sa.Column("by", sa.Date(), nullable=False),
        sa.Column("set_at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_goals_client_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("client_id", "measure", name="pk_goals"),
    )
    op.create_table(
        "groups",
        sa.Column("chat_id", sa.BigInteger(), autoincrement=False, nullable=False),
        sa.Column("cohort_id", KEY, nullable=True),
        sa.Column("language", sa.Text(), nullable=True),
        sa.Column("bound_at", INSTANT, nullable=True),
        sa.Column("removed_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["cohort_id"], ["cohorts.id"], name="fk_groups_cohort_id", ondelete="SET NULL"),
        sa.PrimaryKeyConstraint("chat_id", name="pk_groups"),
    )
    op.create_index("ix_groups_cohort_id", "groups", ["cohort_id"])
    op.create_table(
        "invitations",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("token_hash", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("coach_id", KEY, nullable=True),
        sa.Column("by_name", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("for_name", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("plan", sa.Text(), nullable=True),
        sa.Column("client_id", KEY, nullable=True),
        sa.Column("cohort_id", KEY, nullable=True),
        sa.Column("uses_left", sa.Integer(), server_default=sa.text("1"), nullable=False),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.Column("expires_at", INSTANT, nullable=False),
        sa.Column("used_at", INSTANT, nullable=True),
        sa.Column("revoked_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_invitations_client_id", ondelete="CASCADE"),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_invitations_coach_id", ondelete="CASCADE"),
        sa.ForeignKeyConstraint(["cohort_id"], ["cohorts.id"], name="fk_invitations_cohort_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("id", name="pk_invitations"),
        sa.UniqueConstraint("token_hash", name="uq_invitations_token_hash"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_invitations_client_id", "invitations", ["client_id"])
    op.create_index("ix_invitations_coach_id", "invitations", ["coach_id"])
    op.create_index("ix_invitations_cohort_id", "invitations", ["cohort_id"])
    op.create_index("ix_invitations_expires_at", "invitations", ["expires_at"])
    op.create_table(
        "notes",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("coach_id", KEY, nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_notes_client_id", ondelete="CASCADE"),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_notes_coach_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("id", name="pk_notes"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_notes_client_id", "notes", ["client_id"])
    op.create_index("ix_notes_coach_id", "notes", ["coach_id"])
    op.create_table(
        "readings",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("measure", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.Column("second", sa.Text(), nullable=True),
        sa.Column("taken_at", INSTANT, nullable=False),
        sa.Column("as_typed", sa.Text(), server_default=sa.text("''"), nullable=False),
        sa.Column("unit", sa.Text(), nullable=True),
        sa.Column("conditions", sa.Text(), nullable=True),
        sa.Column("how", sa.Text(), nullable=False),
        sa.Column("attempts", sa.Integer(), server_default=sa.text("1"), nullable=False),
        sa.Column("window", sa.Integer(), nullable=True),
        sa.Column("created_at", INSTANT, nullable=False),
        sa.Column("corrected_at", INSTANT, nullable=True),
        sa.Column("withdrawn_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_readings_client_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("id", name="pk_readings"),
        sa.UniqueConstraint("client_id", "key", name="uq_readings_client_id_key"),
        sqlite_autoincrement=True,
    )
    op.create_index(
        "ix_readings_counting",
        "readings",
        ["client_id", "measure", "taken_at"],
        sqlite_where=COUNTING,
        postgresql_where=COUNTING,
    )
    op.create_index("ix_readings_time", "readings", ["client_id", "taken_at"])
    op.create_table(
        "said",
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_said_client_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("client_id", "key", name="pk_said"),
    )
    op.create_table(
        "slots",
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("due_at", INSTANT, nullable=False),
        sa.Column("outcome", sa.Text(), nullable=False),
        sa.Column("answered_at", INSTANT, nullable=True),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_slots_client_id", ondelete="CASCADE"),
        sa.PrimaryKeyConstraint("client_id", "day", name="pk_slots"),
    )
    op.create_table(
        "words",
        sa.Column("id", KEY, autoincrement=True, nullable=False),
        sa.Column("client_id", KEY, nullable=False),
        sa.Column("coach_id", KEY, nullable=True),
        sa.Column("direction", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("at", INSTANT, nullable=False),
        sa.ForeignKeyConstraint(["client_id"], ["clients.id"], name="fk_words_client_id", ondelete="CASCADE"),
        sa.ForeignKeyConstraint(["coach_id"], ["coaches.id"], name="fk_words_coach_id", ondelete="SET NULL"),
        sa.PrimaryKeyConstraint("id", name="pk_words"),
        sqlite_autoincrement=True,
    )
    op.create_index("ix_words_coach_id", "words", ["coach_id"])
    op.create_index("ix_words_thread", "words", ["client_id", "at"])


def downgrade() -> None:
    op.drop_table("words")
    op.drop_table("slots")
    op.drop_table("said")
    op.drop_table("readings")
    op.drop_table("notes")
    op.drop_table("invitations")
    op.drop_table("groups")
    op.drop_table("goals")
    op.drop_table("flags")
    op.drop_table("cohort_members")
    op.drop_table("templates")
    op.drop_table("cohorts")
    op.drop_table("clients")
    op.drop_table("outbox")
    op.drop_table("organisers")
    op.drop_table("coaches")
    op.drop_table("wakes")
    op.drop_table("settings")
    op.drop_table("people")
    op.drop_table("pace")
    op.drop_table("inbox")
    op.drop_table("conversations")
    op.drop_table("audit")
