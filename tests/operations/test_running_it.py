"""bot/README.md is correct: every setting with its default, and its arithmetic."""

import re
from pathlib import Path

from bot.foundation.config import Settings
from bot.store.dispatch import LEASE
from bot.turns.turn import TRIES

PAGE = (Path(__file__).parents[2] / "bot" / "README.md").read_text(encoding="utf-8")
PROSE = " ".join(PAGE.split())
SETTINGS = {
    name.lower(): default.strip("` ").partition(" ")[0]
    for name, default in re.findall(r"^\| `([A-Z_]+)` \|([^|]*)\|", PAGE, re.MULTILINE)
}


def test_every_setting_is_in_the_table_and_no_other():
    assert SETTINGS.keys() == Settings.model_fields.keys()


def test_the_defaults_are_those_of_the_code():
    for name, said in SETTINGS.items():
        default = Settings.model_fields[name].default
        if re.fullmatch(r"[0-9]+", said):
            assert float(said) == default, name
        elif said and name not in ("database_url", "languages"):
            assert said.strip("`") == default, name
        elif not said:
            assert default in (None, ""), name


def test_the_arithmetic_adds_up():
    assert f"{1_000_000 / 30 / 3600:.1f} hours" in PROSE
    assert f"at our 28 a second {1_000_000 / 28 / 3600:.1f} h" in PROSE
    weekly = (3 * 3 + 10) / 4
    assert f"= {weekly} messages" in PROSE
    assert f"are {weekly * 1_000_000 / (84 * 3600):.1f} a second" in PROSE
    assert f"{weekly * 1_000_000 / (84 * 3600) / 30:.0%}".replace("%", " %") in PROSE
    assert f"a million in {1_000_000 / 300 / 60:.0f} minutes" in PROSE
    assert f"a million in {1_000_000 / 1000 / 60:.0f} minutes" in PROSE


def test_what_it_says_of_leases_and_tries_is_what_the_code_does():
    assert f"lease of {LEASE.total_seconds():.0f} seconds" in PROSE
    assert TRIES == 3
    assert "after three tries" in PROSE
