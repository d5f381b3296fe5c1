"""Every value of a conversation can be serialised and read back, and nothing else can."""

import contextlib
import dataclasses
import json
import types
import typing
from datetime import UTC, date, datetime, time, timedelta, timezone
from decimal import Decimal
from enum import Enum
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.store import codec
from bot.store.codec import CodecError, dump_for_soon, dump_to_load, dumps, load_again, load_state, loads
from core.care import Plan
from core.dialogue.client.messages import Ask, ReadingKept
from core.dialogue.client.states import FRESH, Awaiting, PressureWeek, Setting, State, Written
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import Text
from core.dialogue.kit.messages import Together
from core.quantity import Amount, Unit
from core.reading import Conditions
from core.watching.flags import Code, Flag, Severity

AT = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)
PLAIN = {
    str: st.text(max_size=8),
    int: st.integers(),
    bool: st.booleans(),
    type(None): st.none(),
    Decimal: st.decimals(allow_nan=False, allow_infinity=False),
    datetime: st.datetimes(timezones=st.just(UTC)),
    date: st.dates(),
    time: st.times(),
    timedelta: st.timedeltas(),
    object: st.sampled_from((None, Ask("weight", Unit.KILOGRAM), Awaiting("hip", 1, (Decimal("1.50"),)))),
}


under_way: set[Any] = set()


@cache
def values(hint: Any) -> st.SearchStrategy[Any]:
    """Any value that an annotation allows."""
    if hint in under_way:  # a class that can contain itself
        return st.deferred(lambda: values(hint))
    origin, arguments = typing.get_origin(hint), typing.get_args(hint)
    if origin in (typing.Union, types.UnionType):
        return st.one_of(*(values(a) for a in arguments))
    if origin is frozenset:
        return st.frozensets(values(arguments[0]), max_size=3)
    if origin is tuple and arguments[-1] is Ellipsis:
        return st.lists(values(arguments[0]), max_size=2).map(tuple)
    if origin is tuple:
        return st.tuples(*(values(a) for a in arguments))
    if isinstance(hint, type) and issubclass(hint, Enum):
        return st.sampled_from(hint)
    if dataclasses.is_dataclass(hint):
        hints = typing.get_type_hints(hint)
        under_way.add(hint)
        try:
            return st.builds(hint, **{f.name: values(hints[f.name]) for f in dataclasses.fields(hint)})
        finally:
            under_way.discard(hint)
    return PLAIN[hint]


def is_stored(kind: type) -> bool:
    """Not those that contain functions or mappings: a measure, a client's facts."""
    try:
        values(kind)
    except (KeyError, NameError):
        return False
    return True


KINDS = {name: kind for name, kind in codec.registry().items() if is_stored(kind)}


def test_every_event_state_message_and_effect_is_among_what_is_stored() -> None:
    talk = {n for n, kind in codec.registry().items() if kind.__module__.startswith("core.dialogue")}
    assert {name for name in talk - set(KINDS) if not name.endswith(("Facts", "Fact"))} == set()
    assert {"events.Text", "events.Due", "events.Woke", "states.State", "messages.Together"} <= set(KINDS)
    assert {"coach_messages.UrgentFlag", "facts.Plan", "reading.Conditions", "flags.Flag"} <= set(KINDS)


@pytest.mark.parametrize("name", sorted(KINDS))
@settings(max_examples=8, deadline=None)
@given(data=st.data())
def test_a_value_that_was_written_reads_back_equal(name: str, data: st.DataObject) -> None:
    value = data.draw(values(KINDS[name]))
    text = dumps(value)
    assert loads(text) == value
    assert dumps(loads(text)) == text
    assert text.isascii()


@pytest.mark.parametrize(
    "value",
    [
        pytest.param(Decimal("82.40"), id="digits-stay"),
        pytest.param(("a", ("b", ()), None, True, 7), id="tuples-in-tuples"),
        pytest.param(frozenset({("x", "y"), ("z", "w")}), id="a-set-of-tuples"),
        pytest.param("half a pair \ud83d and \0", id="text-no-database-would-take"),
        pytest.param(Together((ReadingKept("weight", Amount(Decimal("82.4"), Unit.KILOGRAM)),)), id="a-message"),
        pytest.param(Flag(Code.BP_SEVERE, Severity.URGENT, None, (("systolic", Decimal(190)),), AT), id="a-flag"),
    ],
)
def test_values_and_their_types_survive(value: object) -> None:
    found = loads(dumps(value))
    assert found == value
    assert type(found) is type(value)
    assert repr(found) == repr(value)


def test_an_instant_is_read_back_in_utc_whatever_zone_it_was_written_in() -> None:
    athens = timezone(timedelta(hours=3))
    found = loads(dumps(AT.astimezone(athens)))
    assert found == AT
    assert isinstance(found, datetime)
    assert found.tzinfo is UTC


@dataclasses.dataclass(frozen=True)
class Foreign:
    """A class of a module that stores nothing."""


@pytest.mark.parametrize(
    "value",
    [
        pytest.param(1.5, id="binary-fraction"),
        pytest.param([1], id="list"),
        pytest.param({"a": 1}, id="mapping"),
        pytest.param(object(), id="object"),
        pytest.param(datetime(2026, 3, 30), id="naive-datetime"),
        pytest.param(time(7, 30, tzinfo=UTC), id="time-with-a-zone"),
        pytest.param(Foreign(), id="dataclass-of-somebody-else"),
    ],
)
def test_what_is_not_stored_is_refused_when_it_is_written(value: object) -> None:
    with pytest.raises(CodecError):
        dumps(value)


GOOD = json.loads(dumps(Text(AT, "82.4 kg", "m1")))


@pytest.mark.parametrize(
    "text",
    [
        pytest.param("", id="nothing"),
        pytest.param("{", id="cut-off"),
        pytest.param("NaN", id="not-a-number"),
        pytest.param("1.5", id="binary-fraction"),
        pytest.param('{"at": 1}', id="no-type"),
        pytest.param('{"$": 5}', id="type-is-a-number"),
        pytest.param('{"$": "Nonsense"}', id="unknown-class"),
        pytest.param('{"$": "shape.Measure"}', id="class-that-is-never-stored"),
        pytest.param('{"$": "quantity.Unit", "is": "furlong"}', id="unknown-enum-value"),
        pytest.param('{"$": "quantity.Unit"}', id="enum-without-value"),
        pytest.param('{"$": "decimal", "is": "heavy"}', id="no-decimal"),
        pytest.param('{"$": "decimal", "is": 82.4}', id="decimal-as-fraction"),
        pytest.param('{"$": "datetime", "is": "2026-03-30T06:30:00"}', id="naive-instant"),
        pytest.param('{"$": "date", "is": "soon"}', id="no-date"),
        pytest.param('{"$": "timedelta", "is": 1000000000000000000000000}', id="too-long-a-time"),
        pytest.param(json.dumps({**GOOD, "more": 1}), id="one-field-too-many"),
        pytest.param(json.dumps({k: v for k, v in GOOD.items() if k != "text"}), id="required-field-missing"),
        pytest.param(json.dumps({**GOOD, "text": 5}), id="field-of-another-type"),
        pytest.param(json.dumps({**GOOD, "edited": 1}), id="number-for-a-truth-value"),
        pytest.param("[" * 100_000, id="very-deep"),
    ],
)
def test_what_is_no_value_of_ours_is_refused_when_it_is_read(text: str) -> None:
    with pytest.raises(CodecError):
        loads(text)


@given(st.text() | st.recursive(st.none() | st.integers() | st.text(), st.lists).map(json.dumps))
def test_reading_never_raises_anything_else(text: str) -> None:
    with contextlib.suppress(CodecError):
        loads(text)


def test_an_error_never_repeats_what_the_text_held() -> None:
    with pytest.raises(CodecError) as caught:
        loads(json.dumps({**GOOD, "text": ["82.4 kg secret"]}))
    assert "secret" not in str(caught.value)


def test_a_plan_stored_before_a_field_existed_takes_the_field_s_usual_value() -> None:
    old = json.loads(dumps(Plan(measures=("weight",), directed_weighing=True)))
    del old["pressure_body"], old["own_better"]
    assert loads(json.dumps(old)) == Plan(measures=("weight",), directed_weighing=True)


STATE = State(
    asking=Setting("pause", "", Awaiting("weight", 1)),
    agenda=("waist",),
    day=date(2026, 3, 30),
    written=(Written("k", "r", "weight"),),
    pressure=PressureWeek(date(2026, 3, 30), date(2026, 4, 5)),
    word_until=AT,
)


def test_a_state_reads_back_as_it_was() -> None:
    assert load_state(dumps(STATE)) == STATE


@pytest.mark.parametrize(
    "text",
    [
        None,
        "",
        "rubbish",
        dumps(Conditions()),
        dumps(STATE).replace('"states.Setting"', '"states.OlderSetting"'),
        dumps(STATE).replace('"2026-03-30"', '"30 March"'),
        dumps(STATE)[:-5],
    ],
)
def test_a_state_always_loads(text: str | None) -> None:
    assert load_state(text) == FRESH


def test_what_is_written_for_soon_is_there_for_one_reader_and_then_read_like_any_other() -> None:
    text = dump_for_soon(STATE)
    assert load_again(text) is STATE
    again = load_again(text)
    assert again == STATE
    assert again is not STATE


def test_what_is_written_for_soon_leaves_out_what_is_as_usual_and_what_is_kept_for_good_does_not() -> None:
    assert '"word_until":null' in dumps(FRESH)
    assert "word_until" not in dump_for_soon(FRESH)
    assert "word_until" in dump_for_soon(STATE)
    assert loads(dump_for_soon(STATE)) == STATE


def test_what_may_wait_until_after_an_upgrade_is_written_whole_and_is_there_for_one_reader() -> None:
    text = dump_to_load(FRESH)
    assert text == dumps(FRESH)
    assert load_again(text) is FRESH
    assert load_again(text) is not FRESH


def test_a_figure_is_not_taken_for_the_flag_it_is_equal_to() -> None:
    odd = Awaiting("hip", False)  # type: ignore[arg-type]
    assert '"tries":false' in dump_for_soon(odd)


def test_what_nobody_comes_back_for_is_not_kept_for_ever() -> None:
    text = dump_for_soon(STATE)
    for number in range(10_000):
        dump_for_soon(Awaiting("hip", number))
    assert load_again(text) is not STATE


def test_another_value_than_a_state_is_no_state_however_lately_it_was_written() -> None:
    assert load_state(dump_for_soon(Awaiting("hip"))) == FRESH


@pytest.mark.parametrize("question", [None, 0, 1_795_737_169])
def test_buttons_come_back_as_they_were_in_less_text(question: int | None) -> None:
    rows = (
        (Choice("number", "n:1", "1", question), Choice("number", "n:2", "2", question)),
        (Choice("later", "later", question=question),),
    )
    text = codec.dump_rows(rows)
    assert codec.load_rows(text) == rows
    assert len(text) < len(codec.dumps(rows)) / 2


def test_buttons_of_two_questions_come_back_too() -> None:
    rows = ((Choice("yes", "yes", question=1), Choice("no", "no", question=2)),)
    assert codec.load_rows(codec.dump_rows(rows)) == rows
    assert codec.load_rows(codec.dumps(())) == ()


@pytest.mark.parametrize(
    "text",
    [
        "",
        "{}",
        "[[1]]",
        '{"question":"1","rows":[]}',
        '{"question":true,"rows":[]}',
        '{"question":1}',
        '{"question":1,"rows":[["ab"]]}',
        '{"question":1,"rows":[[["yes"]]]}',
        '{"question":1,"rows":[[["yes","yes","","more"]]]}',
        '{"question":1,"rows":[[["yes",1]]]}',
        '{"question":1,"rows":7}',
        '{"question":1.5,"rows":[]}',
    ],
)
def test_text_that_is_no_buttons_is_refused(text: str) -> None:
    with pytest.raises(codec.CodecError):
        codec.load_rows(text)
