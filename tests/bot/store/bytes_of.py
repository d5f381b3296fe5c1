"""Bytes: what is stored, as somebody reads it who has the disk and no keys."""

from base64 import b64encode
from pathlib import Path

from sqlalchemy import select

from bot.store.database import Database
from bot.store.schema import metadata, people


def stored(database: Database) -> bytes:
    """The bytes of an SQLite file and its log; all rows of a server, sealed as they are."""
    if database.file is not None:
        return bytes_of(database.file.parent, f"{database.file.name}")

    def dump(conn):
        found = []
        for table in metadata.sorted_tables:
            columns = ", ".join(f'"{column.name}"' for column in table.c)
            found.append(str(conn.exec_driver_sql(f"SELECT {columns} FROM {table.name}").all()))
        return "".join(found).encode()

    return database.read_now(dump)


def bytes_of(folder: Path, begins: str = "") -> bytes:
    """The bytes of the files in a folder, of a database without those of its keys."""
    files = (path for path in sorted(folder.rglob(f"{begins}*")) if path.is_file())
    return b"".join(path.read_bytes() for path in files if path.suffix not in (".keys", ".master"))


def mark(key: str) -> bytes:
    """How every value begins that is sealed with a key: nothing else in the world does."""
    return b64encode(b"\x01" + bytes.fromhex(key))


def mark_of(database: Database, chat_id: int) -> bytes:
    """How everything of the person of a chat begins."""
    key = database.read_now(
        lambda conn: conn.execute(select(people.c.key_id).where(people.c.chat_id == chat_id)).scalar_one()
    )
    return mark(key)
