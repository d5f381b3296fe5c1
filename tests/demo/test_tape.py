"""Parsing tapes: every line of the grammar, and the errors for invalid lines."""

from datetime import UTC, datetime, time
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

import demo.keys
import demo.tape
from demo.tape import (
    At,
    Bot,
    CannotRead,
    Does,
    Edits,
    Expect,
    Group,
    MessengerIs,
    Opens,
    Presses,
    Replies,
    Says,
    Sends,
    TapeClient,
    TapeCoach,
    TapeReader,
    escaped,
    moment,
    nth,
    read,
)

START = "start 2026-03-02 07:00 Europe/London\n"
ROWAN = START + "coach Rowan\n"
ADA = ROWAN + "client Ada of Rowan:\n"


def last(text: str) -> object:
    return read(text).steps[-1]


def test_the_first_line_sets_the_clock_and_the_zone_of_every_time_after_it() -> None:
    tape = read("start 2026-07-01 07:00 Europe/London\nat 2026-07-01 08:30")
    assert tape.start.astimezone(UTC) == datetime(2026, 7, 1, 6, 0, tzinfo=UTC)
    (at,) = tape.steps
    assert isinstance(at, At)
    assert at.instant.astimezone(UTC) == datetime(2026, 7, 1, 7, 30, tzinfo=UTC)


def test_a_client_line_gives_its_keys_with_quoted_blanks() -> None:
    step = last(ROWAN + 'client Ada of Rowan: sex=female height=165cm slot="Mon 07:30" own="How is my knee?"')
    assert isinstance(step, TapeClient)
    assert (step.name, step.coach) == ("Ada", "Rowan")
    assert step.given == {"sex": "female", "height": "165cm", "slot": "Mon 07:30", "own": "How is my knee?"}


@pytest.mark.parametrize(
    ("line", "step"),
    [
        ("Ada: 82.4 kg", Says(4, "Ada", "82.4 kg")),
        ("Ada: see: 7", Says(4, "Ada", "see: 7")),
        ("Ada edits: 82.6 kg", Edits(4, "Ada", "82.6 kg")),
        ("Ada presses Same as last time", Presses(4, "Ada", "Same as last time")),
        ("Ada edits the last: 82.6 kg", Edits(4, "Ada", "82.6 kg")),
        ("Ada edits the 2nd last: 82.6 kg", Edits(4, "Ada", "82.6 kg", back=1)),
        ("Ada replies to the last: yes", Replies(4, "Ada", "yes")),
        ("Ada replies to the 13th last: yes", Replies(4, "Ada", "yes", back=12)),
        ("Ada presses the 3rd Seen", Presses(4, "Ada", "Seen", back=2)),
        ("Ada presses the Seen", Presses(4, "Ada", "the Seen")),
        ("Ben opens Rowan's 2nd invitation", Opens(4, "Ben", "Rowan", link=2)),
        ("bot crashes", Bot(4, "crashes")),
        ("messenger fails", MessengerIs(4, False)),
        ("messenger works", MessengerIs(4, True)),
        ("Ada presses A word to Rowan: now", Presses(4, "Ada", "A word to Rowan: now")),
        ("Ben opens Rowan's invitation", Opens(4, "Ben", "Rowan")),
        ("Ben opens Rowan’s used invitation", Opens(4, "Ben", "Rowan", used=True)),
        ("Zoe opens the bot", Opens(4, "Zoe")),
        ("Sam opens the operator's invitation", Opens(4, "Sam", demo.tape.OPERATOR)),
        ("Ada sends voice", Sends(4, "Ada", "voice")),
        ("Ada sends a photo", Sends(4, "Ada", "photo")),
        ("Ada blocks", Does(4, "Ada", "blocks")),
        ("Ada unblocks the bot", Does(4, "Ada", "unblocks")),
        ("expect Ada sees energy", Expect(4, "Ada", "energy", True)),
        ('expect Ada sees "anything"', Expect(4, "Ada", "anything", True)),
        ("expect-not Ada sees anything", Expect(4, "Ada", "", False)),
        ("expect-not Ada sees 82.4  # an early number", Expect(4, "Ada", "82.4", False)),
        ("coach Sam: zone=Europe/Paris", TapeCoach(4, "Sam", {"zone": "Europe/Paris"})),
        ("group Walkers: Ada Rowan", Group(4, "Walkers", ("Ada", "Rowan"))),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_line_is_read_as_its_step(line: str, step: object) -> None:
    assert last(ADA + line) == step


@pytest.mark.parametrize(
    ("line", "step"),
    [
        ("Ada in Walkers: hello", Says(5, "Ada", "hello", "Walkers")),
        ("Rowan adds the bot to Walkers", Does(5, "Rowan", "adds", "Walkers")),
        ("Rowan adds the bot to Walkers by Rowan's link", Does(5, "Rowan", "adds", "Walkers", "Rowan")),
        ("Rowan removes the bot from Walkers", Does(5, "Rowan", "removes", "Walkers")),
        ("Ada leaves Walkers", Does(5, "Ada", "leaves", "Walkers")),
        ("expect Walkers sees milestone", Expect(5, "Walkers", "milestone", True)),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_line_about_a_group_is_read_as_its_step(line: str, step: object) -> None:
    assert last(ADA + "group Walkers: Ada Rowan\n" + line) == step


@pytest.mark.parametrize(
    ("comment", "text"),
    [("# a whole line", None), ("Ada: 7 # energy", "7"), ("Ada: I am #1", "I am #1"), ("   #indented", None)],
)
def test_a_comment_is_left_out_and_a_number_sign_in_a_word_is_not(comment: str, text: str | None) -> None:
    step = last(ADA + comment)
    assert (step.text if isinstance(step, Says) else None) == text


@given(st.text(min_size=1).filter(lambda text: text == text.strip()))
def test_whatever_somebody_writes_stands_in_one_line_and_is_read_back_as_it_was(text: str) -> None:
    assert len(escaped(text).splitlines()) == 1
    assert last(ADA + f"Ada: {escaped(text)}") == Says(4, "Ada", text)


def test_a_line_that_cannot_happen_leaves_the_reader_as_it_was() -> None:
    reader = TapeReader()
    for number, line in enumerate(ADA.splitlines(), 1):
        reader.take(number, line)
    before = reader.mark()
    with pytest.raises(CannotRead):
        reader.take(9, "client Ben of Rowan: born=yesterday")
    assert reader.mark() == before
    reader.take(9, "client Ben of Rowan: born=1962")
    assert reader.mark() != before
    reader.go_back(before)
    assert (reader.mark(), len(reader.steps)) == (before, 2)


@pytest.mark.parametrize(
    "at",
    [
        datetime(2026, 3, 2, 8, 0, tzinfo=UTC),
        datetime(2026, 3, 2, 8, 0, 15, tzinfo=UTC),
        datetime(2026, 3, 2, 8, 0, 15, 250_000, tzinfo=UTC),  # between two seconds
        datetime(2026, 10, 25, 0, 30, tzinfo=UTC),  # half past one, the first time that night
        datetime(2026, 10, 25, 1, 30, tzinfo=UTC),  # and the second
    ],
)
def test_a_line_can_be_written_for_any_instant(at: datetime) -> None:
    reader = TapeReader()
    reader.take(1, START)
    assert reader.start is not None
    step = reader.take(2, moment(reader.start, at, reader.tape().zone))
    assert isinstance(step, At)
    assert step.instant.astimezone(UTC) == at


def test_ordinals_are_written_as_they_are_read() -> None:
    assert [nth(n) for n in (1, 2, 3, 4, 11, 12, 13, 21, 102, 111)] == [
        "1st", "2nd", "3rd", "4th", "11th", "12th", "13th", "21st", "102nd", "111th",
    ]  # fmt: skip


def test_waiting_over_a_clock_change_takes_the_time_it_says() -> None:
    step = last("start 2026-03-29 00:30 Europe/London\nwait 2 h")
    assert isinstance(step, At)
    assert f"{step.instant:%H:%M}" == "03:30"  # 01:00 to 02:00 does not exist that night


@pytest.mark.parametrize(
    ("text", "number", "words"),
    [
        ("", 1, "first step"),
        ("coach Rowan", 1, "start 2026-03-02 07:00 Europe/London"),
        ("start 2026-03-02 07:00 Europe/Atlantis", 1, "no time zone"),
        ("start 2026-02-30 07:00 Europe/London", 1, "no date and time"),
        (START + START, 2, "starts once"),
        (START + "at 2026-03-02 06:59", 2, "time does not go back"),
        (START + "at tomorrow", 2, "at 2026-03-02 07:30"),
        (START + "client Ada of Rowan:", 2, "no coach Rowan"),
        (START + "Ada: 7", 2, "nobody is called Ada"),
        (ROWAN + "coach Rowan", 3, "a Rowan already"),
        (ROWAN + "coach expect", 3, "a word of the tape"),
        (ROWAN + "client Ada of Rowan: colour=red", 3, "sex=..."),
        (ROWAN + "client Ada of Rowan: sex=unsure", 3, "one of female, male"),
        (ROWAN + "client Ada of Rowan: born=1968 born=1969", 3, "twice"),
        (ROWAN + "client Ada of Rowan: slot=Monday", 3, '"Mon 07:30"'),
        (ROWAN + 'client Ada of Rowan: slot="Mon 24:30"', 3, '"Mon 07:30"'),
        (ROWAN + "client Ada of Rowan: measures=weight,shoe_size", 3, "some of height, weight"),
        (ROWAN + 'client Ada of Rowan: slot="Mon 07:30', 3, "not closed"),
        (ROWAN + "client Ada of Rowan: zone=Mars/Base", 3, "Europe/London"),
        (ADA + "Ada whispers 7", 4, "NAME presses LABEL"),
        (ADA + "Ada sends money", 4, "voice"),
        (ADA + "Ada in Walkers: hello", 4, "no group Walkers"),
        (ADA + "expect Ben sees energy", 4, "nobody is called Ben"),
        (ADA + "expect Ada energy", 4, "expect NAME sees words"),
    ],
    ids=lambda value: value.splitlines()[-1] if isinstance(value, str) and value else "",
)
def test_a_line_that_cannot_be_read_is_named_with_what_is_wrong(text: str, number: int, words: str) -> None:
    with pytest.raises(CannotRead, match=f"line {number}: ") as caught:
        read(text)
    assert words in str(caught.value)


def test_whoever_opens_the_operators_invitation_is_a_coach_from_then_on() -> None:
    step = last(START + "Sam opens the operator's invitation\nclient Ada of Sam:")
    assert isinstance(step, TapeClient)
    assert step.coach == "Sam"


def test_a_slot_is_read_with_its_weekday_counted_from_monday() -> None:
    assert demo.tape.slot("Sunday 18:05") == (6, time(18, 5))


@given(st.text(max_size=60))
def test_whatever_a_line_says_it_is_read_or_refused_by_its_number(line: str) -> None:
    refused = None
    try:
        read(ADA + line)
    except CannotRead as error:
        refused = error
    assert refused is None or refused.number >= 4


def test_every_key_of_a_client_and_every_kind_of_line_is_documented() -> None:
    text = Path(demo.tape.__file__).read_text(encoding="utf-8").split('"""')[1]
    assert [key for key in demo.keys.CLIENT_KEYS if f"`{key}`" not in text] == []
    assert [word for word in demo.tape.RESERVED if word not in text] == []
