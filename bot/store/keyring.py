"""The keys of people, each wrapped by the master key, in a database of their own.

    person    a key for each person, made when they come, destroyed when they are erased
    passing   a key for each week, for what belongs to nobody we know or to several at once, destroyed after five weeks

They are not in the database they protect, nor in its backups, its log or its replicas: where a key is destroyed, all of
these hold nothing of that person any more. The list of destroyed keys stays here, so that a backup brings nobody back.

A sealed value is base 64 of: version, number of the key, nonce, AES-GCM's text and tag. What the key signs along is the
table and column, so a value moved elsewhere does not open.
"""

from __future__ import annotations

import hmac
import os
import secrets
import sqlite3
import threading
from base64 import b64decode, b64encode
from binascii import a2b_base64, b2a_base64
from collections.abc import Iterable, Sequence
from datetime import date, datetime, timedelta
from hashlib import sha256
from pathlib import Path
from typing import Any

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from sqlalchemy import (
    Column,
    Connection,
    Date,
    Engine,
    MetaData,
    Table,
    Text,
    create_engine,
    delete,
    event,
    select,
    update,
)
from sqlalchemy.engine import URL, make_url
from sqlalchemy.exc import IntegrityError

from bot.foundation.config import data_folder
from bot.foundation.private import make_private
from bot.store import master
from bot.store.master import LENGTH, CannotUnwrap, Wrapper
from core.reading import Reading

PASSING_FOR = timedelta(weeks=5)
_VERSION = b"\x01"
_NUMBER, _NONCE = 8, 12  # bytes
_BEGINS = len(_VERSION) + _NUMBER
_MIDDLE = _BEGINS + _NONCE
_HEAD = _BEGINS // 3 * 4  # characters
_MOST = 65_536  # keys, and opened values, that are remembered
_MOST_READINGS = 32_768  # of some six hundred people in the middle of a check-in

_metadata = MetaData()
_keys = Table(
    "keys",
    _metadata,
    Column("id", Text, primary_key=True),  # random, in hex
    Column("wrapped", Text, nullable=False),
    Column("wrapped_by", Text, nullable=False),
    Column("made_on", Date, nullable=False),
    Column("week", Text, unique=True),  # of a passing key
)
_destroyed = Table(
    "destroyed", _metadata, Column("id", Text, primary_key=True), Column("destroyed_on", Date, nullable=False)
)
_ring = Table("ring", _metadata, Column("name", Text, primary_key=True), Column("value", Text, nullable=False))


_NOTHING: dict[str, str] = {}


def _key_in(sealed: str) -> bytes:
    """The number of the key a value was sealed with; anything if it is none."""
    try:
        return a2b_base64(sealed[:_HEAD])[len(_VERSION) :]
    except ValueError:
        return b""


class Unopened(str):
    """What stands for a sealed value that cannot be opened. It is no value of ours: whoever reads it on finds that."""

    __slots__ = ()


UNOPENED = Unopened("\ufffd")


def default_url(database: URL) -> str:
    """Return where the keys of a database are: beside an SQLite file, else in the user's data folder."""
    if database.get_backend_name() == "sqlite":
        return f"sqlite:///{database.database}.keys"
    place = f"{database.host}/{database.query.get('host')}/{database.port}/{database.database}"
    name = f"{database.database}-{sha256(place.encode()).hexdigest()[:12]}"
    return f"sqlite:///{data_folder() / 'keys' / name}.keys"


def master_file(keys: str) -> Path:
    """Return where the master key of these keys is, unless somebody says otherwise."""
    url = make_url(keys)
    if url.get_backend_name() == "sqlite":
        return Path(str(url.database)).with_suffix(".master")
    return data_folder() / "samehour.master"


def _following(file: Path) -> Path:
    return file.with_name(f"{file.name}.next")


def _engine(url: URL) -> Engine:
    if url.get_backend_name() != "sqlite":
        return create_engine(url.set(drivername="postgresql+psycopg"), pool_size=2, pool_pre_ping=True)
    engine = create_engine(url, connect_args={"check_same_thread": False, "timeout": 10})

    @event.listens_for(engine, "do_connect")
    def _connecting(*_: Any) -> None:
        make_private(Path(str(url.database)))

    @event.listens_for(engine, "connect")
    def _connected(connection: Any, record: Any) -> None:
        connection.isolation_level = None
        # The journal is emptied with every commit, and what is deleted is overwritten: a destroyed key is nowhere.
        for pragma in ("secure_delete=ON", "journal_mode=TRUNCATE", "synchronous=FULL", "temp_store=MEMORY"):
            connection.execute(f"PRAGMA {pragma}")

    @event.listens_for(engine, "begin")
    def _begun(connection: Connection) -> None:
        connection.exec_driver_sql("BEGIN IMMEDIATE" if connection.get_execution_options().get("writes") else "BEGIN")

    return engine


class Keyring:
    """The keys of one database. Making it opens nothing: the first use does.

    url: of the database the keys are in.  wrapper: what wraps them, None for the master key in a file.  file: that
    file, None for the usual place.
    """

    def __init__(self, url: str, wrapper: Wrapper | None = None, file: Path | None = None) -> None:
        self.url = make_url(url)
        self.master_file = None if wrapper is not None else file or master_file(url)
        self._wrapper = wrapper
        self._opened: Engine | None = None
        self._own = threading.local()
        self._readers: list[sqlite3.Connection] = []
        self._ciphers: dict[bytes, AESGCM] = {}
        self._plain: dict[str, dict[str, str]] = {}  # just written or opened, by place and by sealed text
        self.parsed: dict[str, Reading] = {}  # readings, by their line as it is stored
        self._weeks: dict[str, str] = {}
        self.clients: dict[int, str] = {}  # whose key is which; see `bot.store.owners`
        self.people: dict[int, tuple[str, bool]] = {}

    # --- opening ----------------------------------------------------------------------------------------------

    @property
    def _engine(self) -> Engine:
        if self._opened is None:
            engine = _engine(self.url)
            with engine.execution_options(writes=True).begin() as conn:
                _metadata.create_all(conn)
            self._opened = engine
        return self._opened

    def _write(self) -> Any:
        return self._engine.execution_options(writes=True).begin()

    @property
    def wrapper(self) -> Wrapper:
        """What wraps the keys. A master key is made with the first of them, never for keys that are there."""
        if self._wrapper is None:
            assert self.master_file is not None
            self._wrapper = self._of_file(self.master_file)
        return self._wrapper

    def _of_file(self, file: Path) -> Wrapper:
        """The master key of a file, or the one that was about to take its place when a rotation was cut short."""
        with self._engine.connect() as conn:
            wrapped_by = conn.execute(select(_keys.c.wrapped_by).limit(1)).scalar_one_or_none()
        found = master.in_file(file, make=wrapped_by is None)
        following = _following(file)
        if wrapped_by is not None and wrapped_by != found.name and following.exists():
            following.replace(file)
            found = master.in_file(file, make=False)
        return found

    def rotate_file(self) -> int:
        """Wrap all keys anew with a new master key, in place of the one in its file; how many keys.

        The new one is on disk before any key is wrapped by it, and stands beside the old one until all are.
        """
        assert self.master_file is not None
        self.check()
        new, following = master.MasterKey.new(), _following(self.master_file)
        master.write(following, new, over=True)
        count = self.rewrap(new)
        following.replace(self.master_file)
        return count

    @property
    def id(self) -> str:
        """Which keyring this is: a database remembers that of its own."""
        with self._write() as conn:
            found = conn.execute(select(_ring.c.value).where(_ring.c.name == "id")).scalar_one_or_none()
            if found is None:
                found = secrets.token_hex(8)
                conn.execute(_ring.insert(), {"name": "id", "value": found})
        return str(found)

    def close(self) -> None:
        if self._opened is not None:
            self._opened.dispose()
            self._opened = None
        for reader in self._readers:
            reader.close()
        self._readers.clear()
        self._own = threading.local()

    def forget_opened(self) -> None:
        """Let go of every value and key in memory."""
        self._plain.clear()
        self.parsed.clear()
        self._ciphers.clear()

    # --- making and destroying --------------------------------------------------------------------------------

    def make(self, on: date) -> str:
        """Make a person's key; its number."""
        return self.make_many(1, on)[0]

    def make_many(self, count: int, on: date) -> list[str]:
        rows = [self._new(on, None) for _ in range(count)]
        if rows:
            with self._write() as conn:
                conn.execute(_keys.insert(), rows)
        return [str(row["id"]) for row in rows]

    def _new(self, on: date, week: str | None) -> dict[str, object]:
        number, key = secrets.token_hex(_NUMBER), secrets.token_bytes(LENGTH)
        wrapped = b64encode(self.wrapper.wrap(key, number)).decode()
        return {"id": number, "wrapped": wrapped, "wrapped_by": self.wrapper.name, "made_on": on, "week": week}

    def passing(self, now: datetime) -> str:
        """Return the number of the key of this week."""
        year, number, _ = now.isocalendar()
        week = f"{year}-{number:02}"
        found = self._weeks.get(week)
        if found is None:
            found = self._weeks[week] = self.of_week(week, now.date())
        return found

    def of_week(self, week: str, on: date) -> str:
        """Return the number of a week's key, as "2026-13"; it is made if there is none."""
        named = select(_keys.c.id).where(_keys.c.week == week)
        with self._engine.connect() as conn:
            found = conn.execute(named).scalar_one_or_none()
        if found is None:
            try:
                with self._write() as conn:
                    conn.execute(_keys.insert(), self._new(on, week))
            except IntegrityError:
                pass  # another process was first
            with self._engine.connect() as conn:
                found = conn.execute(named).scalar_one()
        return str(found)

    def destroy(self, numbers: Iterable[str], on: date) -> None:
        """Destroy keys for good; those that are destroyed already stay so."""
        gone = sorted({number for number in numbers if number})
        if not gone:
            return
        with self._write() as conn:
            there = set(conn.execute(select(_destroyed.c.id).where(_destroyed.c.id.in_(gone))).scalars())
            if new := [{"id": number, "destroyed_on": on} for number in gone if number not in there]:
                conn.execute(_destroyed.insert(), new)
            conn.execute(delete(_keys).where(_keys.c.id.in_(gone)))
        self.forget_opened()

    def destroy_passing(self, now: datetime) -> int:
        """Destroy the keys of weeks that are long over; how many. What is in memory goes too: another process may have
        erased somebody meanwhile."""
        old = (now - PASSING_FOR).date()
        with self._write() as conn:
            gone: int = conn.execute(delete(_keys).where(_keys.c.week.is_not(None), _keys.c.made_on < old)).rowcount
        self._weeks.clear()
        self.forget_opened()
        return gone

    def destroyed(self) -> frozenset[str]:
        """Return the numbers of all destroyed keys of people."""
        with self._engine.connect() as conn:
            return frozenset(conn.execute(select(_destroyed.c.id)).scalars())

    def holds(self, number: str) -> bool:
        """Whether there is such a key, or was."""
        with self._engine.connect() as conn:
            return any(
                conn.execute(select(table.c.id).where(table.c.id == number)).first() for table in (_keys, _destroyed)
            )

    def held(self) -> frozenset[str]:
        """Return the numbers of all keys there are."""
        with self._engine.connect() as conn:
            return frozenset(conn.execute(select(_keys.c.id)).scalars())

    def rewrap(self, wrapper: Wrapper) -> int:
        """Wrap all keys anew, in one transaction; how many. From then on this is their wrapper."""
        old = self.wrapper
        with self._write() as conn:
            rows = conn.execute(select(_keys.c.id, _keys.c.wrapped)).all()
            for row in rows:
                key = old.unwrap(b64decode(row.wrapped), row.id)
                anew = b64encode(wrapper.wrap(key, row.id)).decode()
                conn.execute(update(_keys).where(_keys.c.id == row.id).values(wrapped=anew, wrapped_by=wrapper.name))
        self._wrapper = wrapper
        return len(rows)

    def check(self) -> None:
        """Make sure that the keys can be unwrapped. Raises: OperatorError."""
        with self._engine.connect() as conn:
            row = conn.execute(select(_keys.c.id, _keys.c.wrapped).limit(1)).first()
        if row is not None:
            self.wrapper.unwrap(b64decode(row.wrapped), row.id)

    # --- sealing ----------------------------------------------------------------------------------------------

    def seal(self, number: str, place: str, text: str) -> str:
        """Seal a text with a key. place: the table and column it is for.

        Raises: KeyGone when there is no such key.
        """
        key = bytes.fromhex(number)
        cipher = self._ciphers.get(key) or self._unwrapped(key)
        if cipher is None:
            raise KeyGone
        nonce = os.urandom(_NONCE)
        raw = _VERSION + key + nonce + cipher.encrypt(nonce, text.encode(), place.encode())
        sealed = b2a_base64(raw, newline=False).decode()
        self._remember(place, sealed, text)
        return sealed

    def open(self, place: str, sealed: str) -> str:
        """Return what was sealed; `UNOPENED` when it cannot be opened: its key is destroyed, or it is damaged."""
        known = self._plain.get(place, _NOTHING).get(sealed)
        if known is None:
            known = self.open_once(place, sealed)
            if known is not UNOPENED:
                self._remember(place, sealed, known)
        return known

    def look_up(self, sealed: Iterable[str | None]) -> None:
        """Make the keys of several sealed values ready, those that are not, with one question to the database."""
        wanted = {key for value in sealed if value and (key := _key_in(value)) not in self._ciphers}
        if len(wanted) > 1:
            for number, wrapped in self._all_wrapped([key.hex() for key in wanted]).items():
                self._take(bytes.fromhex(number), self._unwrap(wrapped, number))

    def open_once(self, place: str, sealed: str) -> str:
        """`open` for what the caller remembers, or will not need again."""
        try:
            raw = a2b_base64(sealed, strict_mode=True)
            key = raw[1:_BEGINS]
            cipher = self._ciphers.get(key) or self._unwrapped(key)
            if cipher is None or raw[:1] != _VERSION:
                return UNOPENED
            return cipher.decrypt(raw[_BEGINS:_MIDDLE], raw[_MIDDLE:], place.encode()).decode()
        except (ValueError, InvalidTag):
            return UNOPENED

    def fingerprint(self, number: str, text: str) -> str:
        """Return what is the same for the same text and key, and tells nobody the text who has not the key.

        Raises: KeyGone when there is no such key.
        """
        key = self._key(number)
        if key is None:
            raise KeyGone
        return hmac.digest(key, text.encode(), "sha256").hex()[:32]

    def key_of(self, sealed: str) -> str:
        """Return the number of the key a value was sealed with, "" if it is none."""
        try:
            return a2b_base64(sealed, strict_mode=True)[1:_BEGINS].hex()
        except ValueError:
            return ""

    def _remember(self, place: str, sealed: str, text: str) -> None:
        here = self._plain.get(place)
        if here is None:
            here = self._plain[place] = {}
        elif len(here) >= _MOST:
            here.clear()
        here[sealed] = text

    def remember_parsed(self, line: str, reading: Reading) -> Reading:
        """Keep a reading for the next time: every answer in the middle of a check-in asks for the same."""
        if len(self.parsed) >= _MOST_READINGS:
            self.parsed.clear()
        self.parsed[line] = reading
        return reading

    def _unwrapped(self, key: bytes) -> AESGCM | None:
        plain = self._key(key.hex())
        return None if plain is None else self._take(key, plain)

    def _take(self, key: bytes, plain: bytes) -> AESGCM:
        if len(self._ciphers) >= _MOST:
            self._ciphers.clear()
        cipher = self._ciphers[key] = AESGCM(plain)
        return cipher

    def _wrapped(self, number: str) -> str | None:
        return self._all_wrapped([number]).get(number)

    def _all_wrapped(self, numbers: Sequence[str]) -> dict[str, str]:
        """Look keys up, on a connection that each thread has to itself: everybody who answers is looked up."""
        if self.url.get_backend_name() != "sqlite":
            with self._engine.connect() as conn:
                found = conn.execute(select(_keys.c.id, _keys.c.wrapped).where(_keys.c.id.in_(numbers)))
                return {row.id: row.wrapped for row in found}
        reader: sqlite3.Connection | None = getattr(self._own, "reader", None)
        if reader is None:
            _ = self._engine  # makes the file, if there is none
            reader = self._own.reader = sqlite3.connect(
                str(self.url.database), timeout=10, isolation_level=None, check_same_thread=False
            )
            self._readers.append(reader)
        places = ",".join("?" * len(numbers))
        return dict(reader.execute(f"SELECT id, wrapped FROM keys WHERE id IN ({places})", numbers).fetchall())

    def _key(self, number: str) -> bytes | None:
        wrapped = self._wrapped(number)
        return None if wrapped is None else self._unwrap(wrapped, number)

    def _unwrap(self, wrapped: str, number: str) -> bytes:
        try:
            return self.wrapper.unwrap(b64decode(wrapped), number)
        except CannotUnwrap:
            if self.master_file is None:
                raise
            self._wrapper = None  # rotated by another process, perhaps: then the file has the new one
            return self.wrapper.unwrap(b64decode(wrapped), number)


class KeyGone(LookupError):
    """There is no such key: whoever it belonged to was erased meanwhile."""


def of_connection(conn: Connection) -> Keyring:
    """Return the keyring of the database a connection is to."""
    ring: Keyring = conn.dialect.keyring  # type: ignore[attr-defined]
    return ring
