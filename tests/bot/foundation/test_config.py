import pytest

from bot.foundation import config
from bot.foundation.errors import BadSettings


@pytest.fixture(autouse=True)
def _bare_environment(monkeypatch):
    import os

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
        pytest.param("LANGUAGES", '["de"]', id="no-english-to-fall-back-to"),
    ],
)
def test_a_wrong_setting_is_named_but_not_repeated(monkeypatch, name, value):
    monkeypatch.setenv(f"SAMEHOUR_{name}", value)
    with pytest.raises(BadSettings) as caught:
        config.read()
    assert f"SAMEHOUR_{name}" in str(caught.value)
    if len(value) > 4:
        assert value not in str(caught.value)


def test_an_empty_setting_is_as_good_as_none(monkeypatch):
    monkeypatch.setenv("SAMEHOUR_TOKEN", "")
    assert config.read().token is None
