"""Settings: read once from the environment (prefix SAMEHOUR_), then frozen. Nothing else reads the environment."""

from __future__ import annotations

import os
import re
import sys
from difflib import get_close_matches
from pathlib import Path
from typing import Annotated, Literal, get_args

from pydantic import Field, SecretStr, ValidationError, field_validator
from pydantic_settings import BaseSettings, NoDecode, SettingsConfigDict

from bot.foundation.errors import BadSettings
from core.language import LANGUAGES

PREFIX = "SAMEHOUR_"
_SECRET = re.compile(r"[A-Za-z0-9_-]{16,256}")
_TOKEN = re.compile(r"[0-9]+:[A-Za-z0-9_-]+")
_ALIKE = 0.75  # ours: of `difflib`; one letter too many or too few in LANGUAGES is 0.93

Seconds = Annotated[float, Field(gt=0, le=3600)]
Days = Annotated[int, Field(ge=1, le=36_500)]


def data_folder() -> Path:
    """Folder of the embedded database: the system's user data folder."""
    if sys.platform == "win32":
        base = Path(os.environ.get("LOCALAPPDATA", str(Path.home() / "AppData" / "Local")))
    elif sys.platform == "darwin":
        base = Path.home() / "Library" / "Application Support"
    else:
        base = Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share")
    return base / "samehour"


def default_database() -> str:
    return f"sqlite:///{data_folder() / 'samehour.db'}"


class Settings(BaseSettings):
    """What an operator can set. Rates are messages a second; the platform's own limit is 30 over all chats.

    token           the bot's token; needed by everything that talks to the messenger
    api_base_url    address of the Bot API: the platform, a local Bot API server, or the local messenger
    database_url    SQLAlchemy address; SQLite in the user's data folder by default
    keys_url        where the keys of people are; by default beside an SQLite database, else in the user's data folder
    master_key, master_key_file   the key that wraps those keys, in base 64; by default a file beside them
    key_service     package.module:function that makes another wrapper for them
    sqlite_synchronous  FULL survives a power cut, NORMAL a killed process
    send_rate, chat_rate, group_per_minute   our own limits, over all workers
    poll_timeout    seconds a long poll may wait
    webhook_*       where the platform reaches us, its shared secret, and where we listen
    sweep_every     seconds between checks for due work
    turn_workers    concurrent batches of turns in one process (PostgreSQL only): one computes while the other waits for
                    the server. They share one interpreter, so start more processes to scale
    health_host, health_port   where /healthz, /readyz and /metrics are served; port 0: on the webhook's port, or not at
                    all while polling
    keep_*_days     retention periods: done inbox rows, sent messages, the data of people who left, side notes,
                    withdrawn readings, messages between clients and coaches, the audit log
    """

    model_config = SettingsConfigDict(env_prefix=PREFIX, frozen=True, extra="ignore", env_ignore_empty=True)

    token: SecretStr | None = None
    api_base_url: str = "https://api.telegram.org"
    database_url: str = Field(default_factory=default_database)
    keys_url: str = ""
    master_key: SecretStr | None = None
    master_key_file: str = ""
    key_service: str = ""
    sqlite_synchronous: Literal["FULL", "NORMAL"] = "FULL"

    send_rate: Annotated[int, Field(ge=1, le=1000)] = 28
    chat_rate: Annotated[float, Field(gt=0, le=30)] = 1.0
    group_per_minute: Annotated[int, Field(ge=1, le=20)] = 20
    send_parallel: Annotated[int, Field(ge=1, le=256)] = 32

    poll_timeout: Annotated[int, Field(ge=0, le=50)] = 30
    webhook_url: str = ""
    webhook_secret: SecretStr | None = None
    webhook_host: str = "127.0.0.1"
    webhook_port: Annotated[int, Field(ge=0, le=65_535)] = 8080
    webhook_path: str = "/updates"
    health_host: str = "127.0.0.1"
    health_port: Annotated[int, Field(ge=0, le=65_535)] = 0

    sweep_every: Seconds = 2.0
    turn_workers: Annotated[int, Field(ge=1, le=32)] = 2
    languages: Annotated[tuple[str, ...], NoDecode] = tuple(LANGUAGES)
    keep_inbox_days: Days = 30
    keep_sent_days: Days = 90
    keep_left_days: Days = 365
    keep_side_notes_days: Annotated[int, Field(ge=42, le=36_500)] = 90  # the weighing guard looks back over one cycle
    keep_withdrawn_days: Days = 30
    keep_words_days: Days = 365
    keep_audit_days: Days = 1095

    log_level: Literal["debug", "info", "warning", "error"] = "info"
    log_format: Literal["auto", "json", "console"] = "auto"

    # A ValueError in here completes the sentence "SAMEHOUR_X must be ...".

    @field_validator("token")
    @classmethod
    def _shaped_like_one(cls, value: SecretStr | None) -> SecretStr | None:
        """A truncated or mistyped token is the platform's to refuse; this is for what cannot be one."""
        if value is None:
            return None
        bare = value.get_secret_value().strip()
        if not _TOKEN.fullmatch(bare):
            raise ValueError(
                "the bot's token as it was given out: digits, a colon, then letters, digits, _ and -, unquoted"
            )
        return SecretStr(bare)

    @field_validator("api_base_url")
    @classmethod
    def _no_slash(cls, value: str) -> str:
        if not value.startswith(("https://", "http://")):
            raise ValueError("an address that begins with https:// or http://")
        return value.rstrip("/")

    @field_validator("webhook_url")
    @classmethod
    def _over_tls(cls, value: str) -> str:
        if value and not value.startswith(("https://", "http://127.0.0.1", "http://localhost")):
            raise ValueError("the address at which the platform reaches us, beginning with https://")
        return value

    @field_validator("webhook_path")
    @classmethod
    def _rooted(cls, value: str) -> str:
        return value if value.startswith("/") else f"/{value}"

    @field_validator("webhook_secret")
    @classmethod
    def _as_the_platform_takes_it(cls, value: SecretStr | None) -> SecretStr | None:
        if value is not None and not _SECRET.fullmatch(value.get_secret_value()):
            raise ValueError("16 to 256 characters of A-Z a-z 0-9 _ -")
        return value

    @field_validator("languages", mode="before")
    @classmethod
    def _a_plain_list(cls, value: object) -> object:
        """Codes with anything between them, so that the JSON of earlier versions is read as well."""
        return tuple(dict.fromkeys(re.findall(r"[\w-]+", value.lower()))) if isinstance(value, str) else value

    @field_validator("languages")
    @classmethod
    def _known_and_with_english(cls, value: tuple[str, ...]) -> tuple[str, ...]:
        if "en" not in value or not set(value) <= set(LANGUAGES):
            raise ValueError(f"a list like de,en: any of {', '.join(LANGUAGES)}, and always en, the fallback")
        return value

    def need_token(self) -> str:
        """Return the token.

        Raises: BadSettings if it is not set.
        """
        if self.token is None:
            raise BadSettings("SAMEHOUR_TOKEN is not set.", "Set it to the bot's token.")
        return self.token.get_secret_value()

    def need_webhook(self) -> tuple[str, str]:
        """Return the address and the secret with which updates are pushed to us.

        Raises: BadSettings if one is not set.
        """
        if not self.webhook_url:
            raise BadSettings(
                "SAMEHOUR_WEBHOOK_URL is not set.", "Set it to the https address at which the messenger reaches us."
            )
        if self.webhook_secret is None:
            raise BadSettings("SAMEHOUR_WEBHOOK_SECRET is not set.", "Set it to 16 or more random letters and digits.")
        return self.webhook_url, self.webhook_secret.get_secret_value()


def read() -> Settings:
    """Read the settings from the environment.

    Raises: BadSettings naming each invalid setting and what to write instead, without its value.
    """
    try:
        return Settings()
    except ValidationError as error:
        wrong = tuple(
            f"{PREFIX}{str(item['loc'][0]).upper()} must be {_wanted(str(item['loc'][0]), item.get('ctx', {}))}."
            for item in error.errors(include_input=False, include_url=False)
        )
    raise BadSettings(" ".join(wrong), each=wrong)


def _wanted(name: str, context: dict[str, object]) -> str:
    """What a setting must be, in words: those of its own check, else its type and bounds."""
    own = context.get("error")
    if isinstance(own, ValueError):
        return str(own)
    field = Settings.model_fields[name]
    choices = get_args(field.annotation)
    if choices:
        return f"one of {', '.join(str(choice) for choice in choices)}"
    bounds = {
        edge: limit
        for part in field.metadata
        for edge in ("ge", "gt", "le")
        if (limit := getattr(part, edge, None)) is not None
    }
    least = f"more than {bounds['gt']}" if "gt" in bounds else f"at least {bounds['ge']}"
    return f"a {'whole ' if field.annotation is int else ''}number, {least} and at most {bounds['le']}"


def unknown() -> tuple[tuple[str, str], ...]:
    """Names in the environment that begin as settings do and are none, each with the setting that comes nearest."""
    known = {f"{PREFIX}{name.upper()}" for name in Settings.model_fields}
    return tuple(
        (name, next(iter(get_close_matches(name.upper(), known, 1, _ALIKE)), ""))
        for name in sorted(os.environ)
        if name.upper().startswith(PREFIX) and name.upper() not in known
    )
