"""Short texts are parsed once; longer texts, in which people write about themselves, are never cached."""

from core.language.cache import SHORT, memoized

SHORTEST, LONGEST_KEPT, TOO_LONG = "7", "x" * SHORT, "x" * (SHORT + 1)


def reader():
    """A function of a text that records its calls."""
    read = []

    @memoized
    def length(text: str, times: int = 1) -> int:
        """Count."""
        read.append((text, times))
        return len(text) * times

    return length, read


def test_a_short_text_is_read_once():
    length, read = reader()
    for text in (SHORTEST, LONGEST_KEPT):
        assert [length(text) for _ in range(3)] == [len(text)] * 3
    assert read == [(SHORTEST, 1), (LONGEST_KEPT, 1)]


def test_a_long_text_is_read_each_time():
    length, read = reader()
    assert [length(TOO_LONG) for _ in range(3)] == [len(TOO_LONG)] * 3
    assert len(read) == 3


def test_what_else_is_asked_tells_readings_apart():
    length, read = reader()
    assert (length(SHORTEST, 2), length(SHORTEST, times=3), length(SHORTEST, 2)) == (2, 3, 2)
    assert len(read) == 2


def test_it_is_still_called_and_described_as_before():
    length, _ = reader()
    assert (length.__name__, length.__doc__) == ("length", "Count.")
