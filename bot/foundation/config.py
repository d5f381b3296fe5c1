"""Settings: read once from the environment (prefix SAMEHOUR_), then frozen. Nothing else reads the environment."""

from __future__ import annotations

import os
import re
import sys
from pathlib import Path
from typing import Annotated, Literal

from pydantic import Field, SecretStr, ValidationError, field_validator, model_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.foundation.errors import BadSettings
from core.language import LANGUAGES

PREFIX = "SAMEHOUR_"
_SECRET = re.compile(r"[A-Za-z0-9_-]{16,256}")

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
    languages: tuple[str, ...] = tuple(LANGUAGES)
    keep_inbox_days: Days = 30
    keep_sent_days: Days = 90
    keep_left_days: Days = 365
    keep_side_notes_days: Annotated[int, Field(ge=42, le=36_500)] = 90  # the weighing guard looks back over one cycle
    keep_withdrawn_days: Days = 30
    keep_words_days: Days = 365
    keep_audit_days: Days = 1095

    log_level: Literal["debug", "info", "warning", "error"] = "info"
    log_format: Literal["auto", "json", "console"] = "auto"

    @field_validator("api_base_url")
    @classmethod
    def _no_slash(cls, value: str) -> str:
        if not value.startswith(("https://", "http://")):
            raise ValueError("an http(s) address")
        return value.rstrip("/")

    @field_validator("webhook_path")
    @classmethod
    def _rooted(cls, value: str) -> str:
        return value if value.startswith("/") else f"/{value}"

    @field_validator("webhook_secret")
    @classmethod
    def _as_the_platform_takes_it(cls, value: SecretStr | None) -> SecretStr | None:
        if value is not None and not _SECRET.fullmatch(value.get_secret_value()):
            raise ValueError("16 to 256 of A-Z a-z 0-9 _ -")
        return value

    @model_validator(mode="after")
    def _english_is_there(self) -> Settings:
        if "en" not in self.languages:
            raise ValueError("languages must include en, the fallback")
        return self

    def need_token(self) -> str:
        """Return the token.

        Raises: BadSettings if it is not set.
        """
        if self.token is None:
            raise BadSettings("SAMEHOUR_TOKEN is not set.", "Set it to the bot's token.")
        return self.token.get_secret_value()


def read() -> Settings:
    """Read the settings from the environment.

    Raises: BadSettings naming each invalid setting, without its value.
    """
    try:
        return Settings()
    except ValidationError as error:
        wrong = "; ".join(
            f"{PREFIX}{'.'.join(str(part) for part in item['loc']).upper() or 'LANGUAGES'}: {item['msg']}"
            for item in error.errors(include_input=False, include_url=False, include_context=False)
        )
    raise BadSettings(f"Invalid settings: {wrong}.", "Correct them in the environment.")
