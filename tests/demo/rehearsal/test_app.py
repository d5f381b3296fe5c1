"""The web application by plain HTTP: who is answered, who is refused, and what every answer carries."""

from collections.abc import Callable

import httpx
import pytest
from markupsafe import Markup

from demo.rehearsal.practices import practice
from demo.rehearsal.words import html
from tests.demo.rehearsal.conftest import Served


def post(served: Served, path: str, origin: str | None, **fields: str) -> httpx.Response:
    headers = {} if origin is None else {"Origin": origin}
    return httpx.post(served.url + path, data=fields, headers=headers, timeout=30)


@pytest.mark.parametrize("origin", ["https://example.com", "http://127.0.0.1", "null", None])
@pytest.mark.parametrize("path", ["clock", "act/say", "open"])
def test_an_act_from_another_page_is_refused_and_done_nowhere(served: Served, origin: str | None, path: str) -> None:
    before = served.stage.tape
    rowan = served.stage.people["Rowan"].key
    refused = post(served, path, origin, by="tomorrow", person=rowan, text="hello", practice="empty")
    assert refused.status_code == 403
    assert served.stage.tape == before
    assert served.stage.run == 1


def test_an_act_from_our_own_page_is_done(served: Served) -> None:
    rowan = served.stage.people["Rowan"].key
    assert post(served, "act/say", served.origin, person=rowan, text="hello").status_code == 204
    assert served.stage.lines[-1] == "Rowan: hello"


@pytest.mark.parametrize("host", ["example.com", "127.0.0.1", "rebound.example:80"])
def test_a_page_that_calls_this_address_by_another_name_sees_nothing(served: Served, host: str) -> None:
    refused = httpx.get(served.url, headers={"Host": host})
    assert refused.status_code == 403
    assert "Rowan" not in refused.text


@pytest.mark.parametrize("path", ["", "top", "tape", "static/page.js", "nothing"])
def test_every_answer_forbids_whatever_is_not_ours(served: Served, path: str) -> None:
    policy = httpx.get(served.url + path, timeout=30).headers["content-security-policy"]
    assert policy.startswith("default-src 'none'")
    assert "unsafe" not in policy
    assert "frame-ancestors 'none'" in policy


def test_the_page_asks_for_nothing_inline_and_nothing_from_elsewhere(served: Served) -> None:
    text = httpx.get(served.url, timeout=30).text
    assert "https://" not in text.replace("https://t.me", "")
    for inline in (" style=", " onclick=", "<style", "javascript:"):
        assert inline not in text


def test_what_was_sent_comes_as_a_file_and_nobody_elses(served: Served) -> None:
    rowan = served.stage.people["Rowan"].key
    post(served, "act/say", served.origin, person=rowan, text="/invite Ben")
    room = served.stage.player.messenger.world.chats[served.stage.people["Rowan"].chat]
    (picture,) = [m for m in room.messages.values() if m.kind == "photo"]
    got = httpx.get(f"{served.url}content/{rowan}/{picture.id}", timeout=30)
    assert (got.status_code, got.headers["content-type"], got.content[1:4]) == (200, "image/png", b"PNG")
    assert got.headers["x-content-type-options"] == "nosniff"
    assert httpx.get(f"{served.url}content/{rowan}/{picture.id - 1}", timeout=30).status_code == 404
    assert httpx.get(f"{served.url}content/p1/{picture.id}", timeout=30).status_code == 409


def test_while_a_tape_is_being_played_the_page_says_how_far_it_is(serving: Callable[..., Served]) -> None:
    served = serving(practice("twelve", "en"), whole=False)
    with httpx.stream("GET", served.url + "looks?since=0", timeout=60) as stream:
        lines = stream.iter_lines()
        next(line for line in lines if line.startswith("event: look"))
        assert "Playing the tape" in httpx.get(served.url + "top", timeout=30).text
        refused = post(served, "clock", served.origin, by="tomorrow")
        assert refused.status_code == 409
        assert refused.text == "A tape is being played to its end; wait a moment."
        next(line for line in lines if "p1013" in line)
    assert "Playing the tape" not in httpx.get(served.url + "top", timeout=30).text


@pytest.mark.parametrize(
    ("text", "entities", "shown"),
    [
        ("a < b & c", [], "a &lt; b &amp; c"),
        ("bold", [{"type": "bold", "offset": 0, "length": 4}], "<strong>bold</strong>"),
        ("😀 bold", [{"type": "bold", "offset": 3, "length": 4}], "😀 <strong>bold</strong>"),
        (
            "one two",
            [{"type": "bold", "offset": 0, "length": 7}, {"type": "italic", "offset": 4, "length": 3}],
            "<strong>one <em>two</em></strong>",
        ),
        ("<b>", [{"type": "code", "offset": 0, "length": 3}], "<code>&lt;b&gt;</code>"),
        ("link", [{"type": "text_link", "offset": 0, "length": 4, "url": "https://example.com"}], "link"),
        ("short", [{"type": "bold", "offset": 3, "length": 99}], "sho<strong>rt</strong>"),
        ("abc", [{"type": "bold", "offset": 0, "length": 2}, {"type": "italic", "offset": 1, "length": 2}],
         "<strong>a<em>b</em></strong>c"),
    ],
)  # fmt: skip
def test_formatted_text_is_html_and_whatever_was_typed_stays_text(text: str, entities: list, shown: str) -> None:
    assert html(text, entities) == Markup(shown)
