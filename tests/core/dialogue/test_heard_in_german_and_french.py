"""What people write in German and French around an answer: dialect, shorthand, small words, half a yes."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting
from core.language import LANGUAGES
from core.language.questions import asked as asked_of
from tests.builders import ADA, Chat, Plan, checked_in
from tests.core.dialogue.test_arriving import arriving, asked

HALF_A_YES = [
    ("de", "ja wer ist denn da"),
    ("de", "ja aber meine tochter hat gesagt ich soll vorsichtig sein"),
    ("de", "okay und wer liest das alles"),
    ("fr", "oui mais c'est qui"),
    ("fr", "ouais mais ma fille veut que je fasse attention"),
    ("en", "yes, but my daughter says I should be careful"),
]


@pytest.mark.parametrize(("language", "text"), HALF_A_YES)
def test_a_yes_with_a_but_or_a_question_behind_it_is_no_consent(language: str, text: str) -> None:
    chat = arriving(language=language).says(text)
    assert not chat.facts.consented and {"consent:yes", "consent:no"} <= set(chat.choices)


@pytest.mark.parametrize(
    ("language", "text"),
    [("de", "na gut von mir aus"), ("de", "jo passt"), ("fr", "bon allez d'accord"), ("fr", "pas de souci")],
)
def test_a_yes_among_small_words_is_one(language: str, text: str) -> None:
    assert arriving(language=language).says(text).facts.consented


@pytest.mark.parametrize(("language", "text"), [("de", "jahrgang 48"), ("fr", "née en 48"), ("en", "born in 48")])
def test_a_year_of_two_figures_is_no_age(language: str, text: str) -> None:
    yes = {"de": "ja", "fr": "oui", "en": "yes"}[language]
    assert arriving(language=language).says(yes).says(text).facts.profile.birth_year == 1948


def test_an_age_is_one() -> None:
    assert arriving(language="de").says("ja").says("bin 71").facts.profile.birth_year == 1955


@pytest.mark.parametrize(("language", "text"), [("de", "hab zucker und bluthochdruck"), ("fr", "jsuis diabétique")])
def test_an_illness_named_at_the_first_rating_is_noted(language: str, text: str) -> None:
    yes = {"de": "ja", "fr": "oui"}[language]
    chat = arriving(language=language).says(yes).says("1958").says(text)
    assert asked(chat) == "rating" and "diabetes" in {c.value for c in chat.facts.profile.cautions}


def at_the_day(language: str = "de") -> Chat:
    return arriving(language=language).says({"de": "ja", "fr": "oui"}[language]).says("1958").says("5")


def test_a_number_typed_for_a_day_is_no_day() -> None:
    chat = at_the_day().says("5")
    assert asked(chat) == "weekday"


@pytest.mark.parametrize(
    ("language", "day", "text"), [("de", "Mittwoch", "montags kann ich nicht"), ("fr", "mercredi", "pas le lundi")]
)
def test_a_day_that_does_not_suit_is_not_set_with_the_time(language: str, day: str, text: str) -> None:
    chat = at_the_day(language).says(day).says(text)
    assert chat.facts.slot is not None and chat.facts.slot.weekday == 2 and asked(chat) == "time"


ACTIVE = Plan(measures=("activity_minutes", "weight"))


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "zweimal war ich beim turnen"),
        ("fr", "j'ai marché deux fois"),
        ("en", "I went swimming three times"),
        ("de", "4x aber einmal nur halb"),
        ("fr", "une seule fois"),
    ],
)
def test_times_are_no_minutes(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language, plan=ACTIVE)).due().says("7").says(text)
    assert isinstance(chat.state.asking, Awaiting) and chat.state.asking.measure == "activity_minutes"
    assert not chat.readings("activity_minutes")


@pytest.mark.parametrize(
    ("language", "text"),
    [("de", "war am dienstag 20 min spazieren und am donnerstag 40"), ("fr", "20 min mardi et 40 jeudi")],
)
def test_minutes_of_a_walk_are_no_energy_with_a_slipped_comma(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).due().says(text)
    assert "DidYouMean" not in chat.kinds and not chat.did(e.Record)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "und wann kommst du wieder"),
        ("de", "kann ich auch jeans größe sagen"),
        ("fr", "et tu reviens quand"),
        ("fr", "c'est obligé ?"),
    ],
)
def test_a_question_without_its_mark_is_no_remark_about_the_week(language: str, text: str) -> None:
    chat = checked_in(Chat(replace(ADA, language=language))).says(text)
    assert not chat.did(e.Amend) and "WeekNoted" not in chat.kinds and chat.said


@pytest.mark.parametrize(("language", "text"), [("de", "was für eine woche"), ("fr", "quelle semaine de fous")])
def test_a_sigh_is_no_question(language: str, text: str) -> None:
    assert checked_in(Chat(replace(ADA, language=language))).says(text).heard(m.WeekNoted)


@pytest.mark.parametrize(("language", "text"), [("de", "das ist gut"), ("fr", "c'est bien")])
def test_a_verdict_of_ones_own_asks_for_none(language: str, text: str) -> None:
    assert "LastReading" not in checked_in(Chat(replace(ADA, language=language))).says(text).kinds


@pytest.mark.parametrize(
    ("language", "text"),
    [("de", "keine zeit gehabt für sport diese woche"), ("fr", "pas eu le temps de faire du sport cette semaine")],
)
def test_no_time_for_exercise_does_not_put_off_the_check_in(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language, plan=ACTIVE)).due().says("7").says(text)
    assert chat.heard(m.WeekNoted) and chat.heard(m.StillOpen)


@pytest.mark.parametrize(
    ("language", "text"), [("de", "heit geht's ma ned so guat"), ("fr", "jme sens pas tres bien aujourd'hui")]
)
def test_unwell_in_dialect_is_unwell(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).due().says(text)
    assert chat.raised and not chat.did(e.Record)


def test_wanting_to_stop_does_not_say_that_despair_is_over() -> None:
    chat = Chat(replace(ADA, language="fr")).says("j'en peux plus").says("je veux arrêter")
    assert "AlarmOver" not in chat.kinds


@pytest.mark.parametrize("text", ["soll ich jetzt nochmal messen", "den puls jetzt nochmal"])
def test_measuring_again_is_no_alarm(text: str) -> None:
    chat = Chat(replace(ADA, language="de")).says(text)
    assert "AskAlarm" not in chat.kinds and not chat.raised


@pytest.mark.parametrize(
    ("language", "text", "until"),
    [
        ("de", "fahr nächste woche auf kur", date(2026, 3, 15)),
        ("fr", "je pars en cure la semaine prochaine", date(2026, 3, 15)),
        ("en", "on holiday next week", date(2026, 3, 15)),
        ("de", "urlaub bis 20. märz", date(2026, 3, 20)),
    ],
)
def test_a_break_that_is_next_week_does_not_end_when_it_begins(language: str, text: str, until: date) -> None:
    chat = checked_in(Chat(replace(ADA, language=language))).says(text)
    assert chat.heard(m.Paused).until == until


@pytest.mark.parametrize(("language", "text"), [("de", "wie messe ich das"), ("fr", "comment on fait")])
def test_how_a_measure_is_taken_is_shown_on_its_card(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language, plan=Plan(measures=("waist",)))).due().says("7").says(text)
    assert chat.heard(m.Card).measure == "waist"


@pytest.mark.parametrize(("language", "text"), [("de", "hab keine stoppuhr"), ("fr", "j'ai pas de chrono")])
def test_without_a_watch_the_bot_counts(language: str, text: str) -> None:
    plan = Plan(measures=("resting_heart_rate",))
    chat = Chat(replace(ADA, language=language, plan=plan)).due().says("7").says(text)
    assert any(choice.startswith("count:resting_heart_rate") for choice in chat.choices)


@pytest.mark.parametrize("text", ["19,5/12,5", "19/12"])
def test_a_very_high_pressure_in_centimetres_is_heard_at_another_question(text: str) -> None:
    chat = Chat(replace(ADA, language="fr")).due().says(text)
    assert chat.heard(m.DidYouMean).measure == "blood_pressure"
    assert chat.says("oui").heard(m.PressureRepeat) and chat.raised


def test_a_day_in_a_sentence_is_no_pressure() -> None:
    chat = Chat(replace(ADA, language="fr")).due().says("je reviens le 13/8")
    assert "DidYouMean" not in chat.kinds and not chat.did(e.Record)


@pytest.mark.parametrize(
    ("language", "text"), [("de", "mein mann ist gestern gestorben"), ("fr", "mon mari est mort hier soir")]
)
def test_what_weighs_on_somebody_is_heard_while_they_choose_a_time(language: str, text: str) -> None:
    later = {"de": "später", "fr": "plus tard"}[language]
    chat = Chat(replace(ADA, language=language)).due().says("7").says(later).says(text)
    assert chat.heard(m.Plainly).key == "grief" and not chat.did(e.Record)


@pytest.mark.parametrize(
    ("language", "text"), [("de", "wiegen will ich mich nicht"), ("fr", "je veux pas me peser ca me deprime")]
)
def test_somebody_who_will_not_weigh_is_not_encouraged_to(language: str, text: str) -> None:
    assert "WeighToday" not in Chat(replace(ADA, language=language)).due().says("7").says(text).kinds


def test_a_question_is_no_answer_to_the_question_of_an_alarm() -> None:
    chat = Chat(replace(ADA, language="fr")).says("mon genou a gonflé")
    assert chat.heard(m.AskAlarm)
    assert "EmergencyNearby" not in chat.says("il en dit quoi le coach").kinds


@pytest.mark.parametrize(
    ("language", "text"),
    [("de", "montag passt nimmer, geht auch mittwoch um 9?"), ("fr", "lundi ça va plus, mercredi 9h c'est possible ?")],
)
def test_of_two_days_none_is_set_unasked(language: str, text: str) -> None:
    chat = checked_in(Chat(replace(ADA, language=language)))
    before = chat.facts.slot
    assert chat.says(text).facts.slot == before and "OfferToPass" not in chat.kinds


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("fr", "je peux pas arrêter de tousser"),
        ("de", "ich kann nicht aufhören zu husten"),
        ("de", "ohne schuhe auf der waage"),
        ("fr", "sans chaussures sur la balance"),
        ("fr", "mercredi c'est possible que je sois en retard"),
        ("de", "mein mann hat die grippe"),
        ("fr", "je veux enlever du poids"),
        ("de", "ich will abnehmen, das gewicht muss weg"),
        ("de", "ich kann mittwoch auch nicht"),
    ],
)
def test_what_only_sounds_like_a_question_is_none(language: str, text: str) -> None:
    found = asked_of(text, LANGUAGES[language], "Rowan")
    assert found is None
