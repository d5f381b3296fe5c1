"""Every table. Instants are UTC; structured values are `codec` text. What says something of a person is sealed with
that person's key (`sealed`); what must be found, ordered or counted is not: which, when, in which state.

Everything that must happen only once has a unique key: an update (`inbox.key`), a message (`outbox.occasion`), a
reading (`readings.client_id, key`), an open flag, a timer, a slot's outcome. NULL means "not yet" or "not given".

Handled inbox rows lose their event, and sent outbox rows their message; everything of a client is deleted with their
row (ON DELETE CASCADE).
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Date,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    Time,
    UniqueConstraint,
    false,
    text,
    true,
)

from bot.store.sealed import Sealed
from bot.store.types import Instant, Key, Typed

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "pk": "pk_%(table_name)s",
    }
)

PENDING = text("status = 'pending'")  # the hot part of inbox and outbox
SET_ASIDE = text("status = 'set_aside'")


def key() -> Column[int]:
    return Column("id", Key, primary_key=True, autoincrement=True)


def of_client(**options: Any) -> Column[int]:
    return Column("client_id", Key, ForeignKey("clients.id", ondelete="CASCADE"), nullable=False, **options)


def count(name: str) -> Column[int]:
    return Column(name, Integer, nullable=False, server_default=text("0"))


def sealed_words(table: str, name: str) -> Column[str]:
    return Column(name, Sealed(f"{table}.{name}"), nullable=False, server_default=text("''"))


def sealed(table: str, name: str, of: str = "text", **options: Any) -> Column[Any]:
    return Column(name, Sealed(f"{table}.{name}", of), **options)


def code(name: str) -> Column[str]:
    return Column(name, Text, nullable=False, server_default=text("''"))


# --- who ---------------------------------------------------------------------------------------------------

people = Table(  # each private chat has one person, and each person one role
    "people",
    metadata,
    key(),
    Column("chat_id", BigInteger, nullable=False, unique=True),
    code("key_id"),  # of `keyring`
    Column("role", Text, nullable=False),  # "client", "coach", "organiser"
    sealed_words("people", "name"),
    Column("language", Text, nullable=False, server_default=text("'en'")),
    Column("zone_name", Text),  # for staff; a client's is in clients
    Column("reachable", Boolean, nullable=False, server_default=true()),
    Column("created_at", Instant, nullable=False),
    sqlite_autoincrement=True,
)

coaches = Table(
    "coaches",
    metadata,
    key(),
    Column("person_id", Key, ForeignKey("people.id", ondelete="SET NULL"), unique=True),
    sealed_words("coaches", "name"),
    Column("weekday", Integer),  # of the digest, Monday 0; no slot, no digest
    Column("at", Time),
    Column("zone_name", Text),
    Column("next_digest_at", Instant, index=True),
    Column("quiet_nights", Boolean, nullable=False, server_default=true()),
    Column("wait_minutes", Integer, nullable=False, server_default=text("30")),  # of an emergency, for the coach
    Column("settings", Text),
    Column("created_at", Instant, nullable=False),
    Column("left_at", Instant),
    sqlite_autoincrement=True,
)

deputies = Table(  # who stands in for a coach: one each
    "deputies",
    metadata,
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="CASCADE"), primary_key=True, autoincrement=False),
    Column("deputy_id", Key, ForeignKey("coaches.id", ondelete="CASCADE"), nullable=False, index=True),
    Column("begins", Date),  # NULL, and ends with it: always, for what is urgent and not acknowledged
    Column("ends", Date),
)

organisers = Table(
    "organisers",
    metadata,
    key(),
    Column("person_id", Key, ForeignKey("people.id", ondelete="SET NULL"), unique=True),
    sealed_words("organisers", "name"),
    Column("created_at", Instant, nullable=False),
    sqlite_autoincrement=True,
)

clients = Table(
    "clients",
    metadata,
    key(),
    Column("person_id", Key, ForeignKey("people.id", ondelete="SET NULL"), unique=True),  # NULL: not joined
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="SET NULL"), index=True),  # NULL: cohort only
    code("key_id"),  # the same as the person's, once there is one
    Column("status", Text, nullable=False),
    sealed_words("clients", "name"),
    sealed_words("clients", "called"),  # by their coach, if not by that name
    Column("consented_at", Instant),
    sealed("clients", "birth_year", "int"),
    sealed("clients", "birth_date", "date"),
    sealed("clients", "sex"),
    sealed("clients", "stature", "decimal"),  # cm
    sealed("clients", "background"),
    sealed_words("clients", "cautions"),  # sorted, comma between
    sealed_words("clients", "medicines"),  # that slow the pulse, likewise
    Column("cautions_known", Boolean, nullable=False, server_default=true()),  # FALSE: not asked for, or left open
    sealed("clients", "readiness"),  # codec; NULL: not asked yet
    Column("mass_unit", Text, nullable=False, server_default=text("'kg'")),
    Column("length_unit", Text, nullable=False, server_default=text("'cm'")),
    Column("weekday", Integer),
    Column("at", Time),
    Column("zone_name", Text),
    sealed("clients", "plan"),  # codec; NULL is the usual plan
    Column("baseline_since", Instant),  # as in the plan, where a query needs it
    Column("paused_until", Date),
    Column("next_due_at", Instant),  # NULL: nothing will be due
    Column("next_due_day", Date),  # the local date next_due_at belongs to
    Column("asked", Date),  # last slot date that was asked
    Column("answered", Date),  # last slot date that got any answer
    count("missed"),  # consecutive slots asked but not answered
    Column("created_at", Instant, nullable=False),
    Column("left_at", Instant),
    Index("ix_clients_due", "next_due_at", "id"),
    sqlite_autoincrement=True,
)

invitations = Table(
    "invitations",
    metadata,
    key(),
    Column("token_hash", Text, nullable=False, unique=True),  # SHA-256, hex; the token itself is never stored
    Column("kind", Text, nullable=False),  # "client", "coach", "organiser", "cohort", "group"
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="CASCADE"), index=True),
    sealed_words("invitations", "by_name"),
    sealed_words("invitations", "for_name"),
    sealed("invitations", "plan"),
    Column("client_id", Key, ForeignKey("clients.id", ondelete="CASCADE"), index=True),  # a client set up before
    Column("cohort_id", Key, ForeignKey("cohorts.id", ondelete="CASCADE"), index=True),
    Column("uses_left", Integer, nullable=False, server_default=text("1")),  # a cohort's link has many uses
    Column("created_at", Instant, nullable=False),
    Column("expires_at", Instant, nullable=False, index=True),
    Column("used_at", Instant),
    Column("revoked_at", Instant),
    sqlite_autoincrement=True,
)

# --- the conversation --------------------------------------------------------------------------------------

conversations = Table(
    "conversations",
    metadata,
    Column("chat_id", BigInteger, primary_key=True, autoincrement=False),
    sealed("conversations", "state", nullable=False),  # codec
    Column("updated_at", Instant, nullable=False),
)

inbox = Table(
    "inbox",
    metadata,
    key(),
    Column("key", Text, nullable=False, unique=True),  # "telegram/<update>", "due/<client>/<date>", ...
    Column("chat_id", BigInteger, nullable=False),
    Column("received_at", Instant, nullable=False),
    sealed("inbox", "event"),  # codec; dropped when handled
    Column("language", Text),  # hints about who wrote; dropped when handled
    sealed("inbox", "name"),
    Column("is_group", Boolean, nullable=False, server_default=false()),
    Column("status", Text, nullable=False, server_default=text("'pending'")),  # "done", "set_aside"
    count("attempts"),
    Column("retry_at", Instant),
    Column("error", Text),
    Index("ix_inbox_pending", "chat_id", "id", sqlite_where=PENDING, postgresql_where=PENDING),
    Index("ix_inbox_order", "id", sqlite_where=PENDING, postgresql_where=PENDING),
    Index("ix_inbox_set_aside", "id", sqlite_where=SET_ASIDE, postgresql_where=SET_ASIDE),
    Index("ix_inbox_received", "received_at"),
    sqlite_autoincrement=True,
)

unread = Table(  # updates that could not be read
    "unread",
    metadata,
    key(),
    Column("key", Text, unique=True),  # as in inbox; NULL: it said none
    Column("chat_id", BigInteger, index=True),
    Column("received_at", Instant, nullable=False, index=True),
    sealed("unread", "body"),  # its bytes, in base 64
    Column("why", Text, nullable=False),
    sqlite_autoincrement=True,
)

outbox = Table(
    "outbox",
    metadata,
    key(),
    Column("occasion", Text, unique=True),
    Column("kind", Text, nullable=False, server_default=text("'message'")),  # "drop_buttons", "data"
    Column("chat_id", BigInteger, nullable=False),
    Column("person_id", Key, ForeignKey("people.id", ondelete="SET NULL"), index=True),
    Column("is_group", Boolean, nullable=False, server_default=false()),
    Column("about", Key),  # the client a message to staff is about; goes with them
    Column("language", Text),  # where no person says it
    sealed("outbox", "message"),  # codec
    sealed("outbox", "choices"),  # codec
    code("ref"),  # the platform message a "drop_buttons" is about
    count("priority"),  # 0 answers somebody who waits, 1 can stand behind those
    Column("due_at", Instant, nullable=False),  # the order within a chat
    Column("ready_at", Instant, nullable=False),  # not before: due, a retry, or the end of a lease
    Column("status", Text, nullable=False, server_default=text("'pending'")),  # "sent", "failed", "held"
    count("attempts"),
    Column("claimed_by", Text),
    Column("error", Text),
    Column("platform_message_id", Text),
    Column("created_at", Instant, nullable=False),
    Column("sent_at", Instant),
    Index("ix_outbox_ready", "priority", "ready_at", "id", sqlite_where=PENDING, postgresql_where=PENDING),
    Index("ix_outbox_chat", "chat_id", "due_at", "id", sqlite_where=PENDING, postgresql_where=PENDING),
    Index("ix_outbox_created", "chat_id", "created_at"),
    Index(
        "ix_outbox_about", "about", sqlite_where=text("about IS NOT NULL"), postgresql_where=text("about IS NOT NULL")
    ),
    Index("ix_outbox_old", "created_at"),
    sqlite_autoincrement=True,
)

wakes = Table(
    "wakes",
    metadata,
    key(),
    Column("chat_id", BigInteger, nullable=False),
    Column("purpose", Text, nullable=False),
    code("mark"),
    Column("at", Instant, nullable=False, index=True),
    UniqueConstraint("chat_id", "purpose", "mark"),
    sqlite_autoincrement=True,
)

# --- what is known of a client -----------------------------------------------------------------------------

readings = Table(
    "readings",
    metadata,
    key(),
    of_client(),
    Column("key", Text, nullable=False),
    Column("measure", Text, nullable=False),
    sealed("readings", "value", "decimal", nullable=False),
    sealed("readings", "second", "decimal"),
    Column("taken_at", Instant, nullable=False),
    sealed_words("readings", "as_typed"),
    Column("unit", Text),
    sealed("readings", "conditions"),  # codec; NULL: all the same
    Column("how", Text, nullable=False),
    Column("attempts", Integer, nullable=False, server_default=text("1")),
    Column("window", Integer),
    Column("created_at", Instant, nullable=False),
    Column("corrected_at", Instant),
    Column("withdrawn_at", Instant),
    UniqueConstraint("client_id", "key"),
    Index("ix_readings_time", "client_id", "taken_at"),
    Index(
        "ix_readings_counting",
        "client_id",
        "measure",
        "taken_at",
        "id",
        sqlite_where=text("withdrawn_at IS NULL AND how <> 'early'"),
        postgresql_where=text("withdrawn_at IS NULL AND how <> 'early'"),
    ),
    sqlite_autoincrement=True,
)

slots = Table(  # the outcome of each slot
    "slots",
    metadata,
    of_client(primary_key=True),
    Column("day", Date, primary_key=True),
    Column("due_at", Instant, nullable=False),
    Column("outcome", Text, nullable=False),  # "asked", "answered", "not_asked"
    Column("answered_at", Instant),
)

flags = Table(
    "flags",
    metadata,
    key(),
    of_client(),
    Column("code", Text, nullable=False),
    code("measure"),  # "" if the flag is not about a single measure
    Column("severity", Text, nullable=False),
    sealed("flags", "evidence"),  # codec
    Column("since", Instant, nullable=False),
    Column("refreshed_at", Instant, nullable=False),
    Column("seen_at", Instant),
    Column("told_at", Instant),
    Column("digest_at", Instant),  # the digest that named it first, or named its end
    Column("acknowledged_at", Instant),  # a coach has reacted to it
    Column("escalated_at", Instant),  # it was passed to the deputy
    Column("cleared_at", Instant),
    code("ended"),  # what cleared it, of core.watching.flags.Ended
    sealed("flags", "followed"),  # codec; what followed: the repeat, the answer
    code("done"),  # what a coach did, of core.watching.flags.Done
    sealed("flags", "done_words"),
    Column("done_by", Key),  # the coach
    Index(
        "uq_flags_open",
        "client_id",
        "code",
        "measure",
        unique=True,
        sqlite_where=text("cleared_at IS NULL"),
        postgresql_where=text("cleared_at IS NULL"),
    ),
    Index("ix_flags_since", "client_id", "since"),
    sqlite_autoincrement=True,
)

goals = Table(
    "goals",
    metadata,
    of_client(primary_key=True),
    Column("measure", Text, primary_key=True),
    sealed("goals", "target", nullable=False),
    Column("by", Date, nullable=False),
    Column("set_at", Instant, nullable=False),
)

said = Table(
    "said",
    metadata,
    of_client(primary_key=True),
    Column("key", Text, primary_key=True),
    Column("at", Instant, nullable=False),
)

notes = Table(
    "notes",
    metadata,
    key(),
    of_client(index=True),
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="CASCADE"), nullable=False, index=True),
    sealed("notes", "text", nullable=False),
    Column("at", Instant, nullable=False),
    sqlite_autoincrement=True,
)

words = Table(  # the thread between a client and their coach
    "words",
    metadata,
    key(),
    of_client(),
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="SET NULL"), index=True),
    Column("direction", Text, nullable=False),  # "to_coach", "to_client"
    sealed("words", "text", nullable=False),
    Column("at", Instant, nullable=False),
    Index("ix_words_thread", "client_id", "at"),
    sqlite_autoincrement=True,
)

templates = Table(  # a coach's saved plans
    "templates",
    metadata,
    key(),
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="CASCADE"), nullable=False),
    sealed("templates", "name", nullable=False),
    sealed("templates", "plan", nullable=False),
    Column("created_at", Instant, nullable=False),
    Index("ix_templates_coach_id", "coach_id"),
    sqlite_autoincrement=True,
)

# --- cohorts -----------------------------------------------------------------------------------------------

cohorts = Table(
    "cohorts",
    metadata,
    key(),
    Column("organiser_id", Key, ForeignKey("organisers.id", ondelete="SET NULL"), index=True),
    Column("coach_id", Key, ForeignKey("coaches.id", ondelete="SET NULL"), index=True),
    Column("name", Typed, nullable=False),
    Column("starts", Date, nullable=False),
    Column("weeks", Integer, nullable=False),
    Column("weekday", Integer),
    Column("at", Time),
    Column("zone_name", Text),
    Column("counts", Text),  # codec: keys of the pooled measures
    Column("language", Text, nullable=False, server_default=text("'en'")),
    Column("created_at", Instant, nullable=False),
    Column("closed_at", Instant),
    Column("next_at", Instant, index=True),  # when its next task is due; NULL: never again
    Column("closing", Text),  # codec; the closing report as created
    Column("most", Integer, nullable=False, server_default=text("30")),  # people whom one link lets in
    sqlite_autoincrement=True,
)

cohort_weeks = Table(  # published pooled figures: immutable, so that no difference reveals anything about a person
    # NULL: withheld
    "cohort_weeks",
    metadata,
    Column("cohort_id", Key, ForeignKey("cohorts.id", ondelete="CASCADE"), primary_key=True),
    Column("number", Integer, primary_key=True),
    Column("asked", Integer),
    Column("kept", Integer),
    Column("people", Integer),
    Column("total", Integer),
    Column("told_at", Instant, nullable=False),
)

cohort_told = Table(  # whose answers are in each told figure, by pseudonyms; kept when a cohort or a person is gone
    "cohort_told",
    metadata,
    Column("cohort_id", Key, primary_key=True, autoincrement=False),
    Column("what", Text, primary_key=True),
    Column("number", Integer, primary_key=True),  # of the figure, in the order in which they were told
    Column("who", Text, primary_key=True),
    Column("day", Date, primary_key=True),
    Index("ix_cohort_told_who", "who"),
    Index("ix_cohort_told_day", "day"),
)

cohort_members = Table(
    "cohort_members",
    metadata,
    Column("cohort_id", Key, ForeignKey("cohorts.id", ondelete="CASCADE"), primary_key=True),
    of_client(primary_key=True, index=True),
    Column("joined_at", Instant, nullable=False),
    Column("left_at", Instant),
    Column("agreed_at", Instant),  # since when they count; NULL: their coach was asked and has not answered
)

groups = Table(
    "groups",
    metadata,
    Column("chat_id", BigInteger, primary_key=True, autoincrement=False),
    Column("cohort_id", Key, ForeignKey("cohorts.id", ondelete="SET NULL"), index=True),
    Column("language", Text),
    Column("bound_at", Instant),
    Column("removed_at", Instant),
)

# --- the works ---------------------------------------------------------------------------------------------

audit = Table(  # who did what to whom; ids and codes only, so that nothing needs to be erased
    "audit",
    metadata,
    key(),
    Column("at", Instant, nullable=False, index=True),
    Column("actor", Text, nullable=False),  # "operator", "coach/3", "client/17"
    Column("action", Text, nullable=False),
    Column("client_id", Key),
    sqlite_autoincrement=True,
)

pace = Table(  # the shared rate limits: one row per limit, with the instant at which its next send is allowed
    "pace",
    metadata,
    Column("key", Text, primary_key=True),  # "all", "chat/<id>", "group/<id>"
    Column("free_at", Instant, nullable=False),
)

erasures = Table(  # what is still to be done for those who were erased
    "erasures",
    metadata,
    key(),
    Column("key_id", Text),  # a key to be destroyed; NULL: only the log is to be emptied
    Column("at", Instant, nullable=False),
    sqlite_autoincrement=True,
)

settings = Table(
    "settings",
    metadata,
    Column("key", Text, primary_key=True),
    Column("value", Text, nullable=False),
)
