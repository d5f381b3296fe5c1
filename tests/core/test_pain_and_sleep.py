"""Pain and sleep from 0 to 10, against what is published."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from core.dialogue.client import messages as m
from core.judging.change import Change, judge
from core.measures import MEASURES
from core.reading import Reading
from core.references.pain_and_sleep import PAIN_MDC, SLEEP_CHANGE
from tests.builders import ADA, MONDAY, Chat, Plan

D = Decimal
PLAN = replace(ADA, plan=Plan(measures=("pain", "sleep")))


def verdict(key: str, first: str, later: str) -> Change:
    measure = MEASURES[key]
    one = Reading(key, D(first), MONDAY)
    other = Reading(key, D(later), MONDAY.replace(month=5))
    found = judge(measure, one, None, other)
    assert found is not None
    return found.kind


def test_the_smallest_change_of_pain_beyond_error_is_the_one_published() -> None:
    assert D("1.77") == PAIN_MDC  # read in the abstract of doi 10.1055/a-1304-3677
    assert verdict("pain", "5", "3.24") is Change.WITHIN_ERROR
    assert verdict("pain", "5", "3.22") is Change.BETTER
    assert verdict("pain", "5", "6.8") is Change.WORSE


def test_a_line_of_100_millimetres_becomes_10_points() -> None:
    assert SLEEP_CHANGE * 10 == 10  # mm; read in the abstract of Zisapel and Nir 2003
    assert verdict("sleep", "4", "7") is Change.BETTER


def test_both_are_asked_after_energy_and_answered_by_a_tap() -> None:
    chat = Chat(PLAN).due().says("7")
    assert chat.heard(m.Ask).measure == "pain"
    chat.presses("n:3")
    assert chat.heard(m.Ask).measure == "sleep"
    chat.presses("n:6")
    assert [(r.measure, r.value) for r in chat.facts.history] == [("energy", 7), ("pain", 3), ("sleep", 6)]


def test_a_pain_with_a_place_is_heard_for_signs_while_pain_is_asked() -> None:
    chat = Chat(PLAN).due().says("7").says("8, mostly chest pain right now")
    assert {"Emergency", "AskAlarm"} & set(chat.kinds)
