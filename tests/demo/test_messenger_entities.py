import pytest

from demo.messenger.entities import commands_in, parse_html, trimmed, utf16_length
from demo.messenger.refusals import Refused


def entity(kind, offset, length, **more):
    return {"type": kind, "offset": offset, "length": length, **more}


@pytest.mark.parametrize(
    ("source", "plain", "entities"),
    [
        pytest.param("82.4 kg", "82.4 kg", [], id="plain"),
        pytest.param("<b>82.4</b> kg", "82.4 kg", [entity("bold", 0, 4)], id="bold"),
        pytest.param("<STRONG>a</STRONG>", "a", [entity("bold", 0, 1)], id="capital-tag"),
        pytest.param(
            "<b>a<i>b</i></b>", "ab", [entity("bold", 0, 2), entity("italic", 1, 1)], id="nested-outer-first"
        ),
        pytest.param("<b></b>x", "x", [], id="empty-tag-leaves-nothing"),
        pytest.param("a &lt;b&gt; &amp; &quot;c&quot;", 'a <b> & "c"', [], id="named-characters"),
        pytest.param("&#65;&#x42;", "AB", [], id="numbered-characters"),
        pytest.param("salt & water &nbsp; &#0;", "salt & water &nbsp; &#0;", [], id="unknown-stay-as-typed"),
        pytest.param("😀<b>x</b>", "😀x", [entity("bold", 2, 1)], id="offset-in-utf16-units"),
        pytest.param(
            '<a href="https://example.org/?a=1&amp;b=2">here</a>',
            "here",
            [entity("text_link", 0, 4, url="https://example.org/?a=1&b=2")],
            id="link",
        ),
        pytest.param("<a>here</a>", "here", [], id="link-to-nowhere-is-text"),
        pytest.param(
            "<a>https://example.org</a>",
            "https://example.org",
            [entity("text_link", 0, 19, url="https://example.org")],
            id="link-named-by-its-text",
        ),
        pytest.param(
            '<span class="tg-spoiler">x</span><tg-spoiler>y</tg-spoiler>',
            "xy",
            [entity("spoiler", 0, 1), entity("spoiler", 1, 1)],
            id="spoilers",
        ),
        pytest.param(
            "<blockquote expandable>x</blockquote>", "x", [entity("expandable_blockquote", 0, 1)], id="quote"
        ),
        pytest.param("<u>a</><s >b</s >", "ab", [entity("underline", 0, 1), entity("strikethrough", 1, 1)],
                     id="short-end-and-spaces"),
    ],
)  # fmt: skip
def test_html_becomes_plain_text_and_entities(source, plain, entities):
    assert parse_html(source) == (plain, entities)


@pytest.mark.parametrize(
    ("source", "reason"),
    [
        ("a <b", "Unclosed start tag at byte offset 2"),
        ("é <table>", 'Unsupported start tag "table" at byte offset 3'),
        ("5 < 6", 'Unsupported start tag "" at byte offset 2'),
        ("<b>a", 'Can\'t find end tag corresponding to start tag "b"'),
        ("a</b>", "Unexpected end tag at byte offset 1"),
        ("<b><i>a</b></i>", 'Unmatched end tag at byte offset 7, expected "</i>", found "</b>"'),
        ("<b>a</b", "Unclosed end tag at byte offset 4"),
        ('<a href="x', "Unclosed start tag at byte offset 0"),
        ("<span>a</span>", 'Tag "span" must have class "tg-spoiler" at byte offset 0'),
        ("<b =1>a</b>", 'Empty attribute name in the tag "b" at byte offset 0'),
    ],
)
def test_broken_html_is_refused_with_the_place(source, reason):
    with pytest.raises(Refused) as refused:
        parse_html(source)
    assert (refused.value.code, refused.value.description) == (
        400,
        f"Bad Request: can't parse entities: {reason}",
    )


def test_space_around_a_text_is_cut_and_entities_move_with_it():
    plain, entities = parse_html("\n 😀 <b>bold </b>  ")
    assert trimmed(plain, entities) == ("😀 bold", [entity("bold", 3, 4)])


@pytest.mark.parametrize(("text", "units"), [("kg", 2), ("é", 1), ("😀", 2), ("", 0)])
def test_length_is_counted_in_utf16_units(text, units):
    assert utf16_length(text) == units


def test_typed_commands_are_marked():
    assert commands_in("/start x and /help@some_bot, not a/b") == [
        entity("bot_command", 0, 6),
        entity("bot_command", 13, 14),
    ]
