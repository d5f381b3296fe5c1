"""Values of the core as self-describing JSON text, and back: `loads(dumps(value)) == value`.

Strings, integers, booleans and None are themselves, a tuple is a list; everything else is an object with its type under
"$": {"$": "events.Text", "at": {"$": "datetime", "is": "2026-03-30T06:30:00+00:00"}, ...}. Each name stands for one
class (see STORED_UNDER): moving a class changes nothing on disk, renaming one needs a row in STORED_AS.

Values read back are checked against the class's annotations. A field missing from the stored text takes the class's
default (so a plan stored before the field existed still loads); a missing required field, an unknown field, or a value
of the wrong type is a `CodecError`, unless `bot.store.older_shapes` knows what an earlier version meant by it.
"""

from __future__ import annotations

import dataclasses
import json
import types
import typing
from collections.abc import Callable, Mapping
from contextlib import suppress
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal, InvalidOperation
from enum import Enum
from functools import cache
from importlib import import_module
from typing import Any, TypeVar

from bot.store.older_shapes import OLDER
from core.dialogue.client.states import FRESH, State
from core.dialogue.kit.effects import Choice, Rows

T = TypeVar("T")

# The prefix of a stored class's name, and the modules with such classes. A name on disk never changes: a class that
# moves keeps its row here.
STORED_UNDER: Mapping[str, tuple[str, ...]] = {
    "assess": ("core.judging.assess",),
    "card": ("core.dialogue.staff.card",),
    "change": ("core.judging.change",),
    "chart": ("core.judging.chart_data",),
    "client": ("core.client",),
    "cohort": ("core.watching.cohort",),
    "digest": ("core.watching.digest",),
    "doubt": ("core.understanding.plausibility",),
    "flags": ("core.watching.flags",),
    "goals": ("core.judging.goals",),
    "load": ("core.judging.training_load",),
    "practice": ("core.watching.practice",),
    "quantity": ("core.quantity",),
    "reading": ("core.reading",),
    "reliability": ("core.reliability",),
    "schedule": ("core.schedule",),
    "enrolment": ("core.dialogue.client.enrolment_messages",),
    "slip_messages": ("core.dialogue.client.slip_messages",),
    "start_messages": ("core.dialogue.client.start_messages",),
    "readiness": ("core.judging.readiness",),
    "report_messages": ("core.dialogue.client.report_messages",),
    "results": ("core.dialogue.client.results", "core.dialogue.client.report"),
    "series": ("core.measures.home_bp_series",),
    "shape": ("core.measures.measure",),
    "sources": ("core.sources",),
    "trend": ("core.judging.trend",),
    "understanding": ("core.understanding.answers_in_text",),
    "week_messages": ("core.dialogue.client.week_messages",),
    "weighing": ("core.watching.weighing_guard",),
    "events": ("core.dialogue.kit.events",),
    "facts": ("core.dialogue.client.facts", "core.care"),
    "effects": ("core.dialogue.client.effects", "core.dialogue.kit.effects"),
    "states": ("core.dialogue.client.states",),
    "messages": ("core.dialogue.client.messages", "core.dialogue.kit.messages"),
    "coach_messages": ("core.dialogue.client.messages_to_coach",),
    "cohort_messages": ("core.dialogue.group.messages",),
    "organiser_effects": ("core.dialogue.staff.cohort_effects",),
    "organiser_messages": ("core.dialogue.organiser.messages",),
    "organiser_states": ("core.dialogue.staff.cohort_states",),
    "staff_effects": ("core.dialogue.staff.effects",),
    "staff_facts": ("core.dialogue.staff.facts",),
    "staff_messages": (
        "core.dialogue.staff.messages",
        "core.dialogue.staff.talk_messages",
        "core.dialogue.staff.name_messages",
    ),
    "staff_states": ("core.dialogue.staff.states",),
}
STORED_AS: Mapping[str, str] = {  # classes that were renamed since something was first stored under their name
    "events.TimerFired": "events.Woke",
    "effects.SetTimer": "effects.Wake",
    "effects.CancelTimer": "effects.Unwake",
    "effects.ChangeClient": "effects.Learn",
    "effects.DropDelayed": "effects.Unsay",
    "effects.NotifyCoach": "effects.Tell",
    "quantity.Better": "shape.Better",
    "chart.LinePoint": "chart.Level",
    "chart.PressureWeekChart": "chart.PressureWeek",
    "chart.TrendChart": "chart.Trend",
    "coach_messages.ClientInCohort": "organiser_messages.ClientInCohort",
    "cohort.CohortTask": "cohort.Job",
    "cohort.CohortWeek": "cohort.Week",
    "digest.DigestEntry": "digest.Entry",
    "doubt.DoubtKind": "doubt.Kind",
    "facts.NumberVisibility": "facts.Numbers",
    "flags.ClientWeek": "flags.Week",
    "flags.WhatFollowed": "flags.Later",
    "flags.FlagRule": "flags.Rule",
    "goals.GoalDoubt": "goals.Doubt",
    "load.WeekLoad": "load.Week",
    "messages.ReadingKept": "messages.Kept",
    "messages.SettingsSaid": "messages.Settings",
    "series.PressureLevel": "series.Level",
    "shape.MeasureKind": "shape.Kind",
    "trend.WeightedPoint": "trend.Point",
    "weighing.GuardStep": "weighing.Step",
}


class CodecError(ValueError):
    """The text is not a stored value. The message names the type, never the content."""


@cache
def registry() -> Mapping[str, type]:
    """Every class that can be stored, by its stored name: "events.Text"."""
    found: dict[str, type] = {}
    for prefix, modules in STORED_UNDER.items():
        for module in modules:
            for name, thing in vars(import_module(module)).items():
                own = isinstance(thing, type) and thing.__module__ == module and not name.startswith("_")
                if not own or not (dataclasses.is_dataclass(thing) or issubclass(thing, Enum)):
                    continue
                name = f"{prefix}.{name}"
                found.setdefault(STORED_AS.get(name, name), thing)
    return types.MappingProxyType(found)


@cache
def _names() -> Mapping[type, str]:
    return {kind: name for name, kind in registry().items()}


# --- writing -----------------------------------------------------------------------------------------------


@cache
def _stored_as(kind: type) -> str:
    name = _names().get(kind)
    if name is None:
        raise CodecError(f"{kind.__name__} is not stored")
    return name


@cache
def _form(kind: type) -> tuple[tuple[str, object], ...] | None:
    """The fields of a dataclass, each with its default where that is a plain one; None for any other class."""
    if not dataclasses.is_dataclass(kind):
        return None
    fields = ((field.name, field.default) for field in dataclasses.fields(kind))
    return tuple((name, usual if type(usual) in _THEMSELVES or usual == () else _NONE) for name, usual in fields)


_NONE = object()
_THEMSELVES = frozenset({str, int, bool, type(None)})


def _plain(value: object, brief: bool = False) -> Any:
    kind = type(value)
    if kind in _THEMSELVES:
        return value
    if kind is tuple:
        return [_plain(item, brief) for item in value]  # type: ignore[attr-defined]
    if (form := _form(typing.cast(Any, kind))) is not None:
        plain: dict[str, Any] = {"$": _stored_as(typing.cast(Any, kind))}
        for name, usual in form:
            field = getattr(value, name)
            if brief and type(field) is type(usual) and field == usual:
                continue
            plain[name] = field if type(field) in _THEMSELVES else _plain(field, brief)
        return plain
    if isinstance(value, Enum):
        return {"$": _stored_as(typing.cast(Any, kind)), "is": _plain(value.value)}
    if isinstance(value, Decimal):
        return {"$": "decimal", "is": str(value)}
    if isinstance(value, datetime):
        if value.tzinfo is None:
            raise CodecError("a naive datetime is not an instant")
        return {"$": "datetime", "is": value.astimezone(UTC).isoformat()}
    if isinstance(value, date):
        return {"$": "date", "is": value.isoformat()}
    if isinstance(value, time):
        if value.tzinfo is not None:
            raise CodecError("a wall time has no zone")
        return {"$": "time", "is": value.isoformat()}
    if isinstance(value, timedelta):
        return {"$": "timedelta", "is": value // timedelta(microseconds=1)}
    if isinstance(value, frozenset):
        return {"$": "frozenset", "is": sorted((_plain(item) for item in value), key=json.dumps)}
    raise CodecError(f"{kind.__name__} is not stored")


_ENCODER = json.JSONEncoder(separators=(",", ":"), check_circular=False)  # frozen values hold no circles


def dumps(value: object) -> str:
    """Serialise a value. Equal values give equal text.

    Raises: CodecError for a value of a class that is not stored.
    """
    return _ENCODER.encode(_plain(value))


# --- reading -----------------------------------------------------------------------------------------------

Check = Callable[[object], bool]


def _one_of(kinds: tuple[type, ...]) -> Check:
    if int in kinds and bool not in kinds:  # True is an int in Python, but not here
        return lambda value: isinstance(value, kinds) and not isinstance(value, bool)
    if date in kinds and datetime not in kinds:
        return lambda value: isinstance(value, kinds) and not isinstance(value, datetime)
    return lambda value: isinstance(value, kinds)


@cache
def _check(hint: Any) -> Check:
    """A function that tells whether a value matches an annotation: classes, unions, tuples, frozensets, `object`."""
    if hint is object or hint is Any:
        return lambda value: True
    if hint is None:
        return lambda value: value is None
    if isinstance(hint, type) and not typing.get_args(hint):
        return _one_of((hint,))
    origin, arguments = typing.get_origin(hint), typing.get_args(hint)
    if origin in (typing.Union, types.UnionType):
        checks = [_check(a) for a in arguments]
        return lambda value: any(check(value) for check in checks)
    if origin is frozenset:
        inner = _check(arguments[0])
        return lambda value: isinstance(value, frozenset) and all(map(inner, value))
    if origin is tuple and arguments[-1] is Ellipsis:
        inner = _check(arguments[0])
        return lambda value: isinstance(value, tuple) and all(map(inner, value))
    if origin is tuple:
        parts = [_check(a) for a in arguments]
        return lambda value: (
            isinstance(value, tuple)
            and len(value) == len(parts)
            and all(check(item) for check, item in zip(parts, value, strict=True))
        )
    return lambda value: False  # a mapping, a function: such a class is never stored


@dataclasses.dataclass(frozen=True, slots=True)
class _Shape:
    checks: Mapping[str, Check]
    required: frozenset[str]


@cache
def _shape(kind: Any) -> _Shape:
    try:
        hints = typing.get_type_hints(kind)
    except NameError:  # annotated with names only a type checker sees: never stored
        raise CodecError(f"{kind.__name__} is not stored") from None
    fields = dataclasses.fields(kind)
    required = {f.name for f in fields if f.default is dataclasses.MISSING and f.default_factory is dataclasses.MISSING}
    return _Shape({f.name: _check(hints[f.name]) for f in fields}, frozenset(required))


def _aware(text: str) -> datetime:
    at = datetime.fromisoformat(text)
    if at.tzinfo is None:
        raise ValueError
    return at.astimezone(UTC)


def _exact(text: str) -> Decimal:
    return Decimal(text)


BUILT_IN: dict[str, tuple[type, Callable[[Any], object]]] = {
    "decimal": (str, _exact),
    "datetime": (str, _aware),
    "date": (str, date.fromisoformat),
    "time": (str, time.fromisoformat),
    "timedelta": (int, lambda n: timedelta(microseconds=n)),
    "frozenset": (list, lambda items: frozenset(map(_tupled, items))),
}


def _valued(plain: dict[str, Any]) -> object:
    """The value of a JSON object; its parts are already values, innermost first."""
    name = plain.pop("$", None)
    if not isinstance(name, str):
        raise CodecError("an object without a type")
    if name in BUILT_IN:
        kind, make = BUILT_IN[name]
        value = plain.get("is")
        if len(plain) != 1 or not isinstance(value, kind):
            raise CodecError(f"this is not a {name}")
        try:
            return make(value)
        except (ValueError, InvalidOperation, OverflowError, TypeError):
            raise CodecError(f"this is not a {name}") from None
    found = registry().get(name)
    if found is None:
        raise CodecError(f"there is no {name[:40]}")
    if issubclass(found, Enum):
        try:
            (value,) = plain.values()
            return found(value)
        except ValueError:
            raise CodecError(f"there is no such {name}") from None
    wrong = _misfit(name, found, plain)
    if wrong and (older := OLDER.get(name)) is not None:
        with suppress(LookupError, TypeError, ValueError, AttributeError):
            plain = older(plain)
            wrong = _misfit(name, found, plain)
    if wrong:
        raise CodecError(wrong)
    try:
        return found(**plain)
    except (TypeError, ValueError):  # a class may reject what its annotations allow
        raise CodecError(f"this is not a {name}") from None


def _misfit(name: str, kind: type, plain: dict[str, Any]) -> str:
    """What keeps these fields from being a value of the class; "" if nothing does. Lists among them become tuples."""
    shape = _shape(typing.cast(Any, kind))
    for field, value in plain.items():
        if isinstance(value, list):
            plain[field] = value = _tupled(value)
        check = shape.checks.get(field)
        if check is None or not check(value):
            return f"{name} has no such {field[:40]}"
    if not shape.required <= plain.keys():
        return f"{name} lacks {', '.join(sorted(shape.required - plain.keys()))}"
    return ""


def _tupled(value: object) -> object:
    return tuple(_tupled(item) for item in value) if isinstance(value, list) else value


def _no_float(text: str) -> object:
    raise CodecError("a float is never stored")


_DECODER = json.JSONDecoder(object_hook=_valued, parse_float=_no_float, parse_constant=_no_float)


def loads(text: str) -> object:
    """Parse text written by `dumps`.

    Raises: CodecError, and nothing else, for any text.
    """
    try:
        return _tupled(_DECODER.decode(text))
    except CodecError:
        raise
    except (ValueError, RecursionError):
        raise CodecError("this is not JSON that we wrote") from None


def loads_as(kind: type[T], text: str) -> T:
    """Parse a value that must be of one class.

    Raises: CodecError if it is not.
    """
    value = loads(text)
    if not isinstance(value, kind):
        raise CodecError(f"this is not a {kind.__name__}")
    return value


# --- buttons -----------------------------------------------------------------------------------------------


def dump_rows(rows: Rows) -> str:
    """Serialise a message's buttons, in a quarter of the text that `dumps` needs: nearly every message has some.
    Equal buttons give equal text."""
    questions = {c.question for row in rows for c in row}
    if len(questions) > 1:
        return dumps(rows)
    plain = [[[c.label, c.data, c.argument] if c.argument else [c.label, c.data] for c in row] for row in rows]
    return _ENCODER.encode({"question": next(iter(questions), None), "rows": plain})


def load_rows(text: str) -> Rows:
    """Parse text written by `dump_rows`, or by `dumps` as it was before.

    Raises: CodecError, and nothing else, for any text.
    """
    if not text.startswith(_ROWS):
        rows = loads(text)
        if not _check(Rows)(rows):
            raise CodecError("these are no buttons")
        return typing.cast(Rows, rows)
    try:
        found = json.loads(text)
        question = found["question"]
        if question is not None and type(question) is not int:
            raise CodecError("a question has a number")
        return tuple([tuple([_choice(parts, question) for parts in row]) for row in found["rows"]])
    except CodecError:
        raise
    except (ValueError, TypeError, LookupError, RecursionError):
        raise CodecError("these are no buttons") from None


def _choice(parts: object, question: int | None) -> Choice:
    if not isinstance(parts, list) or not all(type(part) is str for part in parts):
        raise CodecError("this is no button")
    label, data, argument = parts if len(parts) > 2 else (*parts, "")
    return Choice(label, data, argument, question)


_ROWS = '{"question":'

# --- for soon ----------------------------------------------------------------------------------------------

_written: dict[str, object] = {}  # by their text


def dump_for_soon(value: object) -> str:
    """`dumps` for a value that will soon be loaded again here: the state of a current conversation, a message to
    send. It leaves out what has its default; in what is kept for good, a default that changes must change nothing."""
    return _remember(_ENCODER.encode(_plain(value, True)), value)


def dump_to_load(value: object) -> str:
    """`dumps` for a value that will soon be loaded again here, but may also wait until after an upgrade: an event."""
    return _remember(dumps(value), value)


def _remember(text: str, value: object) -> str:
    if len(_written) >= 4096:
        _written.clear()
    _written[text] = value
    return text


def load_again(text: str) -> object:
    """`loads`; a value from `dump_for_soon` or `dump_to_load` is returned from the cache, once.

    Raises: CodecError, and nothing else, for any text.
    """
    value = _written.pop(text, None)
    return loads(text) if value is None else value


def load_state(text: str | None) -> State:
    """Load a conversation's state. It always loads: an unknown or corrupt one is replaced by a new one."""
    if not text:
        return FRESH
    try:
        state = load_again(text)
    except CodecError:
        return FRESH
    return state if isinstance(state, State) else FRESH
