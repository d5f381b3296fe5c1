"""What a phrase must not get wrong: a number said twice, two questions in one message, an example of another unit."""

from __future__ import annotations

import html
import re
from decimal import Decimal

import pytest

from bot.rendering import Reader, render
from bot.rendering.last_report import wrapped
from bot.rendering.phrases.asking import unit_of
from bot.rendering.phrases.steps import TECHNIQUE
from bot.rendering.samples import ordinary
from bot.rendering.voice import voice
from core.dialogue.client import messages as m
from core.judging.goals import GoalDoubt
from core.language import LANGUAGES
from core.measures import MEASURES
from core.quantity import Amount, Unit
from core.references.helplines import CRISIS, EATING

ENGLISH = Reader("en")


def said(message: object, language: str = "en") -> str:
    return render(message, (), Reader(language)).text


@pytest.mark.parametrize("country", CRISIS)
def test_a_crisis_line_is_named_with_its_number_once(country: str) -> None:
    line = CRISIS[country]
    text = html.unescape(said(m.Despair("112", line.name, line.number, line.site)))
    named = text.partition("A crisis line where you live: ")[2].partition(line.site or "\n")[0]
    assert named.count(line.number) == 1 and line.name in named


def test_a_charity_and_its_site_are_two_things() -> None:
    beat = EATING["GB"]
    assert f"One is this: {beat.name}, {beat.site}." in said(m.EatingWorry("Rowan", beat.name, beat.site))
    assert f"{beat.name}، " in re.sub("[\u2068\u2069]", "", said(m.EatingWorry("Rowan", beat.name, beat.site), "ar"))


def test_what_is_set_aside_has_one_colon() -> None:
    kept = m.KeptAside("weight", Amount(Decimal("82.4"), Unit.KILOGRAM))
    assert said(kept).startswith("I have set this aside: Weight, 82.4 kg.")


@pytest.mark.parametrize("doubt", GoalDoubt)
def test_a_doubted_goal_asks_at_most_one_question(doubt: GoalDoubt) -> None:
    gentler = Amount(Decimal(78), Unit.KILOGRAM)
    both = said(m.GoalDoubt("weight", doubt.value, gentler))
    assert both.count("?") == 1 and ("78 kg" in both) is (doubt.value not in ("pregnancy", "eating_worries"))
    assert said(m.GoalDoubt("weight", doubt.value)).count("?") <= 1


@pytest.mark.parametrize("key", ["energy", "own_question"])
def test_the_card_of_a_rating_of_today_speaks_of_today(key: str) -> None:
    steps = [TECHNIQUE[step] for step in MEASURES[key].protocol.technique]
    assert "Think of today." in steps and "Think of the past week." not in steps


def test_the_error_of_a_measure_is_told_in_its_own_words() -> None:
    def chance(measure: str, unit: Unit) -> str:
        return said(m.VerdictSaid(measure, "within_error", "", None, Amount(Decimal("0.05"), unit), None))

    assert "a walking pace varies by up to 0.05 m/s" in chance("gait_speed_4m", Unit.METRE_PER_SECOND)
    for ratio in ("waist_to_hip_ratio", "waist_to_height_ratio"):
        assert "this varies by up to 0.05" in chance(ratio, Unit.RATIO)


def test_the_example_of_a_reminder_is_in_the_unit_that_is_asked_for() -> None:
    assert unit_of(voice(ENGLISH), "gait_speed_4m") is Unit.SECOND
    assert "4.2 seconds" in said(m.StillOpen("gait_speed_4m"))


def test_several_values_are_asked_for_in_one_message() -> None:
    assert "Do it 2 times. Send all the numbers in one message." in said(m.Ask("waist", Unit.CENTIMETRE, False, 2))


def test_no_question_asks_for_the_best_of_three_and_then_for_each_of_them() -> None:
    texts = [said(x) for x in ordinary() if isinstance(x, m.Ask) and x.measure == "one_leg_stance"]
    assert texts and not any("Do it" in text for text in texts)


@pytest.mark.parametrize("message", [m.PressureRepeat("999"), m.PregnancyPressureRepeat("999")])
def test_the_signs_of_a_severe_pressure_stand_one_on_a_line(message: object) -> None:
    lines = said(message).splitlines()
    assert sum(line.startswith("• ") for line in lines) >= 5 and any("999" in line for line in lines)


def test_a_line_never_ends_between_a_figure_and_its_unit() -> None:
    text = "Weight went from 82.4 kg to 80.1 kg. Can be chance: up to 1.5 kg."
    for letters in range(12, 60):
        lines = wrapped(text, letters)
        assert not [line for line in lines if line[-1].isdecimal()], lines
        assert " ".join(lines).replace("\u00a0", " ") == text


@pytest.mark.parametrize("language", LANGUAGES)
def test_who_has_a_coach_without_a_name_is_not_told_of_a_coach_twice(language: str) -> None:
    v = voice(Reader(language))
    first = said(m.Welcome("Ada", ""), language).split("\n\n")[0]
    assert first.casefold().count(v.plain("your coach").casefold()) <= 1


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_sentence_ends_in_two_full_stops(language: str) -> None:
    texts = [said(message, language) for message in ordinary()]
    assert [text for text in texts if re.search(r"[^.]\.[\u2069]?\.(?!\.)", text)] == []
