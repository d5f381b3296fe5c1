"""The worlds have the noise they say, and what is said and found in them is counted once."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from io import StringIO
from random import Random

import numpy as np
import pytest
from rich.console import Console

from bot.operator.worlds import (
    BY_KEY,
    CHANGES,
    FIRST_TRY,
    PLAN,
    START,
    WANDER_WEEKS,
    WANDERS,
    WORLDS,
    Person,
    Tally,
    World,
    figures,
    follow,
    heard,
    meet,
    slip,
    tables,
    take,
    tallied,
    typed,
)
from core.measures import MEASURES
from core.reading import Reading

D = Decimal
IDEAL, MISREADS, UNEQUAL, CORRELATED = WORLDS
STEADY = World("steady")


def values(world: World, key: str, people: int, *weeks: int) -> np.ndarray:
    """Judged values of simulated people, a row each, in the given weeks, less the person's true level."""
    rows = []
    for number in range(people):
        dice = Random(number)
        person = meet(world, BY_KEY[key], dice)
        level = person.level
        said = {
            s.week: float(s.assessment.judged.value) for s in follow(world, BY_KEY[key], dice, weeks[-1], person=person)
        }
        rows.append([said[week] - level for week in weeks])
    return np.array(rows)


def test_everybody_swings_as_published_but_in_the_world_of_unequal_people():
    swings = {
        world.key: [meet(world, BY_KEY["blood_pressure"], Random(n)).swing for n in range(3000)] for world in WORLDS
    }
    assert {world: set(found) for world, found in swings.items() if world != "unequal"} == {
        "ideal": {8.6},
        "misreads": {8.6},
        "correlated": {8.6},
    }
    assert np.mean(swings["unequal"]) == pytest.approx(8.6, abs=0.2)
    assert np.std(swings["unequal"]) == pytest.approx(3.1, abs=0.2)


def test_retests_four_weeks_apart_share_what_wanders_slowly_and_no_more():
    ideal, correlated = values(IDEAL, "weight", 1500, 0, 4), values(CORRELATED, "weight", 1500, 0, 4)
    assert np.std(correlated) == pytest.approx(np.std(ideal), rel=0.05)  # the published swing, only less new each time
    assert np.corrcoef(ideal.T)[0, 1] == pytest.approx(0, abs=0.06)
    assert np.corrcoef(correlated.T)[0, 1] == pytest.approx(WANDERS * np.exp(-4 / WANDER_WEEKS), abs=0.06)


def test_home_pressures_a_year_apart_differ_as_asayama_found():
    found = values(CORRELATED, "blood_pressure", 500, 0, 52)
    assert np.std(found[:, 1] - found[:, 0]) == pytest.approx(7.7, abs=0.6)


def test_two_tapes_of_a_sitting_share_half_their_variance_where_days_are_correlated():
    person, dice = Person(95, 1.9), Random(4)

    def spread(world: World) -> float:
        return float(
            np.std([float(take(world, BY_KEY["waist"], person, 95, START, dice)[0].value) for _ in range(4000)])
        )

    assert spread(IDEAL) == pytest.approx(1.9 * 0.5**0.5, rel=0.05)
    assert spread(replace(CORRELATED, wanders=1e-9)) == pytest.approx(1.9 * 0.75**0.5, rel=0.05)


def test_the_first_try_of_a_test_is_low_where_practice_counts():
    ideal, practised = values(IDEAL, "chair_stand_30s", 1500, 0, 4), values(CORRELATED, "chair_stand_30s", 1500, 0, 4)
    assert np.mean(practised[:, 0]) - np.mean(ideal[:, 0]) == pytest.approx(-FIRST_TRY, abs=0.12)
    assert np.mean(practised[:, 1]) == pytest.approx(np.mean(ideal[:, 1]), abs=0.12)


def test_a_slip_of_the_finger_changes_the_number():
    dice = Random(7)
    found = {slip(D("82.4"), dice) for _ in range(2000)}
    assert {D("28.4"), D("84.2"), D("8.24"), D("824"), D("82.9"), D("12.4")} <= found
    assert D("82.4") not in found


def test_two_numbers_in_a_hundred_are_misread_and_most_that_stand_out_are_put_right():
    dice, measure = Random(3), MEASURES["weight"]
    right = Reading("weight", D("82.4"), START)
    kept = [typed(MISREADS, measure, right, [right], dice).reading.value for _ in range(40_000)]
    wrong = [value for value in kept if value != D("82.4")]
    assert 0.002 < len(wrong) / len(kept) < 0.02
    assert sum(abs(value - D("82.4")) > 5 for value in wrong) < len(wrong) / 2
    assert {typed(IDEAL, measure, right, [right], dice).reading.value for _ in range(1000)} == {D("82.4")}


@pytest.mark.parametrize("key", BY_KEY)
def test_nothing_is_said_of_somebody_who_never_swings(key):
    part = replace(BY_KEY[key], typical=0.0, level=lambda dice: 70.0 if key != "energy" else 6.0)
    found = tallied(STEADY, part, 3, 52, 1)
    about_pressure_itself = {"bp_high_mean", "identical_values", "bp_low"}
    assert {k for k, n in found.false.items() if n} <= {*about_pressure_itself, "asked"}


def test_a_large_step_of_somebody_steady_is_found_whenever_it_comes():
    part = replace(BY_KEY["weight"], typical=0.001, size=0.1)
    found = tallied(STEADY, part, 20, 52, 1).found
    assert set(found) == set(CHANGES)
    assert all(shares[:4] == (1.0,) * 4 for shares in found.values())  # by coach, client and the plain MDC95
    assert found["slow"][4] < 1  # between two retests in a row it is small


def test_what_stays_true_is_counted_once():
    part = replace(BY_KEY["weight"], typical=0.001)
    jumped = list(follow(STEADY, part, Random(1), 40, lambda week: -8.0 * (week > 10), Person(80, 0.08)))
    said = [s.assessment.verdict.certainty if s.assessment.verdict else "" for s in jumped]
    assert said.count("confirmed") > 3
    assert heard(jumped)["confirmed"] == 1


def test_the_same_seed_gives_the_same_figures_however_many_processes_share_the_work():
    one, two = (figures(3, 16, 1, processes, lambda: None) for processes in (1, 2))
    assert one == two
    assert one != figures(3, 16, 2, 1, lambda: None)


def test_the_table_has_every_measure_and_sums_what_is_said():
    rows = [Tally("ideal", part.key, 10.0) for part in PLAN]
    rows[0].false.update({"possible": 5, "change_better_confirmed": 1})
    rows[1].false.update({"possible": 7, "change_worse_large": 2})
    rows[0].found = dict.fromkeys(CHANGES, (0.52, 0.9, 0.8, 0.75, 0.25))
    out = StringIO()
    console = Console(file=out, width=180)
    for each in tables("ideal", rows):
        console.print(each)
    assert all(part.key in out.getvalue() for part in PLAN) and " 52 " in out.getvalue()
    (sums,) = (line for line in out.getvalue().splitlines() if "all together" in line)
    assert "1.200" in sums and "0.300" in sums
