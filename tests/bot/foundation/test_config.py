import os

import pytest

from bot.foundation import config
from bot.foundation.errors import BadSettings


@pytest.fixture(autouse=True)
def _bare_environment(monkeypatch):
    for name in list(os.environ):
        if name.startswith("SAMEHOUR_"):
            monkeypatch.delenv(name)


def test_nothing_set_gives_an_embedded_database_and_less_than_the_platform_s_rate(monkeypatch, tmp_path):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    settings = config.read()
    assert settings.database_url == f"sqlite:///{tmp_path}/samehour/samehour.db"
    assert settings.send_rate < 30
    assert settings.token is None


def test_the_token_is_never_shown(monkeypatch):
    monkeypatch.setenv("SAMEHOUR_TOKEN", "4242:the-real-secret")
    settings = config.read()
    assert "the-real-secret" not in f"{settings!r} {settings} {settings.model_dump_json()}"
    assert settings.need_token() == "4242:the-real-secret"


def test_settings_do_not_change_once_read(monkeypatch):
    settings = config.read()
    with pytest.raises(ValueError, match="frozen"):
        settings.send_rate = 5


def test_a_missing_token_says_what_to_do():
    with pytest.raises(BadSettings, match="Set it to the bot's token"):
        config.read().need_token()


@pytest.mark.parametrize(
    ("name", "value"),
    [
        pytest.param("SEND_RATE", "lots", id="not-a-number"),
        pytest.param("SEND_RATE", "0", id="no-rate"),
        pytest.param("GROUP_PER_MINUTE", "21", id="over-the-platform-s-limit"),
        pytest.param("API_BASE_URL", "api.example.org", id="no-scheme"),
        pytest.param("WEBHOOK_SECRET", "short", id="a-secret-one-can-guess"),
        pytest.param("WEBHOOK_SECRET", "sixteen letters!!", id="characters-the-platform-refuses"),
        pytest.param("SQLITE_SYNCHRONOUS", "off", id="not-durable"),
        pytest.param("LANGUAGES", "de,pl", id="no-english-to-fall-back-to"),
        pytest.param("LANGUAGES", "en,tlh", id="a-language-it-does-not-speak"),
        pytest.param("TOKEN", "no token at all", id="nothing-like-a-token"),
        pytest.param("TOKEN", '"4242:quoted-by-hand"', id="a-token-in-quotes"),
        pytest.param("WEBHOOK_URL", "bot.example.org/updates", id="no-address"),
        pytest.param("LOG_LEVEL", "loud", id="none-of-a-few"),
        pytest.param("KEEP_SENT_DAYS", "1.5", id="not-whole"),
    ],
)
def test_a_wrong_setting_is_named_but_not_repeated(monkeypatch, name, value):
    monkeypatch.setenv(f"SAMEHOUR_{name}", value)
    with pytest.raises(BadSettings) as caught:
        config.read()
    assert f"SAMEHOUR_{name}" in str(caught.value)
    if len(value) > 4:
        assert value not in str(caught.value)


@pytest.mark.parametrize(
    ("name", "value", "instead"),
    [
        pytest.param("SEND_RATE", "0", "a whole number, at least 1 and at most 1000", id="whole"),
        pytest.param("SWEEP_EVERY", "0", "a number, more than 0 and at most 3600", id="any"),
        pytest.param("SQLITE_SYNCHRONOUS", "off", "one of FULL, NORMAL", id="a-few"),
        pytest.param("LANGUAGES", "de", "a list like de,en", id="languages"),
        pytest.param("TOKEN", "4242", "digits, a colon, then letters", id="token"),
    ],
)
def test_a_wrong_setting_is_told_what_to_be_instead(monkeypatch, name, value, instead):
    monkeypatch.setenv(f"SAMEHOUR_{name}", value)
    with pytest.raises(BadSettings) as caught:
        config.read()
    (line,) = caught.value.each
    assert line.startswith(f"SAMEHOUR_{name} must be ") and instead in line


def test_every_setting_says_what_it_must_be(monkeypatch):
    """Whatever its type: what cannot be text is refused in words of ours, not of a library."""
    for name, field in config.Settings.model_fields.items():
        if field.annotation in (int, float) or "Literal" in str(field.annotation):
            monkeypatch.setenv(f"SAMEHOUR_{name.upper()}", "?")
    with pytest.raises(BadSettings) as caught:
        config.read()
    assert len(caught.value.each) == sum(name.startswith(config.PREFIX) for name in os.environ) > 0
    assert all(" must be a " in line or " must be one of " in line for line in caught.value.each)


@pytest.mark.parametrize("value", ["de,en", "en de", " EN , de,", '["de", "en"]', "de;en"])
def test_languages_are_a_plain_list(monkeypatch, value):
    monkeypatch.setenv("SAMEHOUR_LANGUAGES", value)
    assert sorted(config.read().languages) == ["de", "en"]


def test_a_blank_around_the_token_is_not_part_of_it(monkeypatch):
    monkeypatch.setenv("SAMEHOUR_TOKEN", " 4242:the-real-secret\n")
    assert config.read().need_token() == "4242:the-real-secret"


def test_a_name_that_is_no_setting_is_told_with_the_nearest(monkeypatch):
    monkeypatch.setenv("SAMEHOUR_LANGUAGE", "de")
    monkeypatch.setenv("SAMEHOUR_COLOUR", "blue")
    monkeypatch.setenv("SAMEHOUR_SEND_RATE", "20")
    assert config.unknown() == (("SAMEHOUR_COLOUR", ""), ("SAMEHOUR_LANGUAGE", "SAMEHOUR_LANGUAGES"))


def test_an_empty_setting_is_as_good_as_none(monkeypatch):
    monkeypatch.setenv("SAMEHOUR_TOKEN", "")
    assert config.read().token is None
