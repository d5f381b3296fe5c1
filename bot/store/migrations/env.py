"""Run by Alembic. `bot.store.migrate` passes the connection; no address is ever read here."""

from __future__ import annotations

from alembic import context

from bot.store.schema import metadata

connection = context.config.attributes["connection"]
context.configure(
    connection=connection,
    target_metadata=metadata,
    render_as_batch=connection.dialect.name == "sqlite",  # SQLite alters a table by copying it
    compare_type=True,
)
context.run_migrations()
