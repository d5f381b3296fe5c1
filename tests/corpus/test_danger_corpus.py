"""What is heard of the tune half of the corpora stays heard; the held half is only counted."""

from __future__ import annotations

import pytest

from tests.corpus import danger_table
from tests.corpus.__main__ import main
from tests.corpus.danger import LANGUAGES, Score, answers, score


@pytest.fixture(scope="module", params=LANGUAGES)
def scored(request: pytest.FixtureRequest) -> Score:
    return score(request.param, "tune")


def test_nearly_every_alarm_is_heard_at_its_level(scored):
    assert scored.share("alarm:heard", "alarm") >= 0.99
    assert scored.share("alarm:acted", "alarm") >= 0.85  # the others hear the number to call in the question
    assert scored.share("alarm:level", "alarm") >= 0.95


def test_what_is_denied_or_harmless_alarms_nobody(scored):
    assert scored.counts["denial:acted"] == 0
    assert scored.counts["innocent:acted"] == 0


def test_what_is_long_past_is_asked_about(scored):
    assert scored.counts["past:acted"] == 0
    assert scored.share("past:asked", "past") >= 0.9


def test_help_for_somebody_beside_the_client_comes_at_once(scored):
    assert scored.share("other_now:acted", "other_now") >= 0.95
    assert scored.share("other_elsewhere:acted", "other_elsewhere") <= 0.2


def test_careless_writing_changes_little(scored):
    assert scored.share("mutated:same", "mutated") >= 0.96


@pytest.mark.parametrize("language", LANGUAGES)
def test_answers_to_is_it_happening_now_are_understood(language):
    count, right, _ = answers(language)
    assert right / count >= 0.9


def test_the_held_sentences_are_never_listed():
    with pytest.raises(SystemExit):
        main(["danger", "--held", "--list-missed"])


def test_a_half_without_sentences_says_how_to_get_some(monkeypatch, capsys):
    monkeypatch.setattr(danger_table, "score", lambda language, half: Score())
    danger_table.report(("held",), listed=False)
    assert "write tests/corpus/*/danger_signs.held.tsv anew" in capsys.readouterr().out
