"""The practice of sixty: each event is named in its week, once as new, on one screen, whatever the coach does."""

from __future__ import annotations

from collections.abc import Iterator
from statistics import median

import pytest

from bot.foundation.reader import length
from bot.rendering.phrases.staff_digest import lines
from core.watching.digest import SCREEN
from core.watching.flags import RULES, Code, Severity
from tests.simulation.practice import (
    ALSO,
    AWAY,
    CLIENTS,
    PLANTED,
    SILENT,
    UNHEARD,
    WEEKS,
    Habit,
    Season,
    events,
    first_fold,
    named,
    news,
    people,
    played,
    table,
)


@pytest.fixture(scope="module", params=list(Habit), ids=lambda habit: habit.name.lower())
def season(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Season]:
    made = played(tmp_path_factory.mktemp("practice"), request.param)
    yield made
    made.database.close()


def test_there_is_somebody_for_every_code_of_the_table_and_forty_events_in_all() -> None:
    assert {*PLANTED, Code.CASELOAD_QUIET} == set(RULES)
    assert len(people()) == CLIENTS and len(events()) >= 40


def test_each_event_is_named_in_its_week_and_in_one_place(season: Season) -> None:
    wrong = []
    for week, name, code, over in events():
        first = [n for n, made in enumerate(season.digests) if (name, code.value, over) in named(made)][:1]
        places = sum(name == e.name for e in (*season.digests[week].entries, *season.digests[week].known))
        if first != [week] or places != 1:
            wrong.append((name, code.value, week, first, places))
    assert not wrong, wrong


def test_each_event_is_told_as_new_once_and_nearly_all_with_their_figures(season: Season) -> None:
    """An alarm that the coach saw at once, under its own message, is no news on Saturday. Whoever is only named for
    want of room is told in a later week, unless it is over by then."""
    twice, never = [], []
    for week, name, code, over in events():
        told = [n for n in range(week, WEEKS) if n < week + 4 and (name, code.value, over) in news(season.digests[n])]
        reacted = season.habit is not Habit.NOTHING and name not in UNHEARD
        seen_before = reacted and RULES[code].severity is Severity.URGENT and not over and name
        again = season.habit is Habit.DEALS and code in (Code.BP_WEEK_SHORT, Code.RETEST_MISSED)  # it happened again
        if len(told) > 1 and not again:
            twice.append((name, code.value, week, told))
        if not told and not seen_before:
            never.append((name, code.value, week))
    assert not twice and len(never) <= 3, (twice, never)


def test_each_is_named_in_the_text_of_its_week(season: Season) -> None:
    assert [(week, name) for week, name, _, _ in events() if name not in season.texts[week]] == []


def test_two_of_one_name_are_told_apart(season: Season) -> None:
    assert "Ada (1950)" in season.texts[2] and "Ada (1960)" in season.texts[9]
    assert "Ada (1960)" not in season.texts[2]


def test_nothing_is_urgent_but_what_was_planted_as_urgent(season: Season) -> None:
    meant = {(name, code.value) for _, name, code, _ in events() if RULES[code].severity is Severity.URGENT}
    found = {
        (e.name, f.code)
        for made in season.digests
        for e in (*made.entries, *made.known)
        for f in e.flags
        if f.severity == "urgent"
    }
    twice = {(name, "bp_severe") for name, code in meant if code == "bp_severe_repeated"}
    assert found <= meant | twice and found >= meant


def test_who_is_well_is_never_named(season: Season) -> None:
    assert [week for week, text in enumerate(season.texts) if "Well" in text] == []


def test_half_of_the_digests_are_one_screen_or_less_and_nothing_urgent_is_below_the_fold(
    season: Season, capsys: pytest.CaptureFixture[str]
) -> None:
    with capsys.disabled():
        print("\n" + table([season]))
    assert len(season.texts) == WEEKS and max(map(length, season.texts)) <= 4096
    assert median(map(lines, season.texts)) <= SCREEN
    assert [n for n, text in enumerate(season.texts) if not first_fold(text, season.digests[n])] == []


def test_everybody_in_a_digest_has_a_button(season: Season) -> None:
    for made in season.digests:
        assert {e.name for e in made.entries if e.client_id} <= {name for _, name in made.named}


def test_a_week_in_which_nobody_answers_says_to_look_at_the_bot(season: Season) -> None:
    assert season.digests[SILENT].silent and "Look whether the bot runs" in season.texts[SILENT]
    assert [n for n, made in enumerate(season.digests) if made.silent] == [SILENT]


def test_an_alarm_goes_to_the_deputy_where_the_coach_does_not_react(season: Season) -> None:
    urgent = {name for _, name, code, over in events() if RULES[code].severity is Severity.URGENT and name}
    if season.habit is Habit.NOTHING:
        settled = {more["name"] for _, _, over, more in ALSO if over}
        assert urgent - settled <= set(season.passed_on)
    else:
        assert set(season.passed_on) == set(UNHEARD)


def test_in_the_week_the_coach_is_away_the_deputy_reads_of_the_same_people_and_in_no_other(season: Season) -> None:
    (theirs,) = season.for_deputy
    own = season.digests[AWAY]
    assert theirs.day == own.day and {n for n, _ in theirs.named} == {n for n, _ in own.named}
    meant = {name for week, name, _, _ in events() if week == AWAY}
    assert meant <= {e.name for e in theirs.entries} and len(meant) >= 3
