"""`samehour score` has shortcuts to the core's results; each is compared with the long way here."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from decimal import Decimal

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from bot.scoring.cells import taken
from bot.scoring.output import COLUMNS, figure, judgement, places, reference_cells, value_cell
from bot.scoring.parse_row import instant, understand
from bot.scoring.references import TURNS, References
from bot.scoring.scorer import Scorer
from bot.scoring.verdicts import figure_of_mdc95
from core.client import Background, Caution, Profile, Sex
from core.judging.assess import assess, derive_all
from core.judging.change import mdc95
from core.measures import MEASURES
from core.quantity import Unit
from core.reading import How, Reading
from tests.bot.scoring.test_scoring import ADA, invented

D = Decimal


@pytest.mark.parametrize("seed", range(8))
def test_derived_rows_have_the_verdicts_of_the_core(seed):
    person = replace(ADA, stature=D(150 + 5 * seed), cautions=frozenset(list(Caution)[seed : seed + 2]))
    scorer = Scorer({"ada": person})
    latest: dict[str, Reading] = {}
    history: dict[str, list[Reading]] = {}
    compared = 0
    for number, cells in enumerate(invented(seed, 120), start=2):
        own, *derived = (dict(zip(COLUMNS, line, strict=True)) for line in scorer.lines(number, cells))
        meaning, at = understand(1, *cells[2:]), instant(cells[1])
        if own["verdict"] == "" or meaning.heard is None or not isinstance(at, datetime):
            continue
        latest[meaning.key] = Reading(
            measure=meaning.key, value=meaning.heard.value, taken_at=at, second=meaning.heard.second,
            unit=meaning.heard.unit, conditions=meaning.conditions, how=How.IMPORTED,
            attempts=meaning.heard.attempts, window=meaning.heard.window,
        )  # fmt: skip
        made = {d.measure.key: d for d in derive_all(latest, person, MEASURES)}
        for line in derived:
            if line["measure"] not in made:
                continue
            found, past = made[line["measure"]], history.setdefault(line["measure"], [])
            judged = assess(
                found.measure,
                found.reading,
                past,
                person,
                baseline_since=None,
                retest=None,
                zone=UTC,
                error=found.error,
            )
            assert line["value"] == value_cell(found.reading.value, None, found.measure.unit)
            assert tuple(line[c] for c in COLUMNS[7:12]) == judgement(judged.verdict, found.measure.unit)
            assert (line["band"], line["reference"]) == reference_cells(judged.scores)
            past.append(found.reading)
            compared += 1
    assert compared > 50


PEOPLE = st.builds(
    Profile,
    sex=st.sampled_from([*Sex, None]),
    birth_year=st.none() | st.integers(1925, 2012),
    background=st.sampled_from([*Background, None]),
    cautions=st.frozensets(st.sampled_from(list(Caution)), max_size=2),
)
# On and around every limit of every table, in the steps of a tape, a ratio, an index.
NEAR_LIMITS = {
    "resting_heart_rate": st.integers(30, 130),
    "chair_stand_30s": st.integers(0, 30),
    "waist": st.decimals(70, 120, places=1) | st.sampled_from([D(n) for n in (80, 85, 88, 90, 94, 102)]),
    "bmi": st.decimals(16, 42, places=2) | st.sampled_from([D("18.5"), D(25), D("24.95"), D("24.949"), D("27.5")]),
    "waist_to_hip_ratio": st.decimals("0.75", "1.05", places=3) | st.sampled_from([D("0.90"), D("0.85"), D("0.95")]),
    "waist_to_height_ratio": st.decimals("0.35", "0.65", places=3) | st.sampled_from([D("0.5"), D("0.49999")]),
}
ONE_TABLE = References()  # for all examples, as it is for all rows


@pytest.mark.parametrize("key", TURNS)
@given(data=st.data(), person=PEOPLE)
@settings(deadline=None, max_examples=300)
def test_what_is_looked_up_for_many_is_what_the_references_say_of_each(key, data, person):
    measure, value = MEASURES[key], D(data.draw(NEAR_LIMITS[key]))
    reading = Reading(key, value, datetime(2026, 3, 2, tzinfo=UTC))
    said = ONE_TABLE.of(measure, taken(measure, reading), ONE_TABLE.kind(person), person)
    assert said.cells == reference_cells(measure.score(reading, person))


@given(st.decimals("0.00001", 90000, allow_nan=False), st.sampled_from(list(Unit)))
@example(2 * (D("2.5") / D("1.96")) ** 2 / 2, Unit.KILOGRAM)
@example(2 * (D("0.15") / (D("1.96") * D(2).sqrt()) * D("8.5")) ** 2, Unit.SECOND)  # 1.275 s, half a step
@example((D("1.275") / D("1.96")) ** 2, Unit.SECOND)
def test_an_mdc95_by_whole_numbers_reads_like_the_root_itself(spread, unit):
    assert figure_of_mdc95(spread, places(unit)) == figure(mdc95(spread), places(unit))
