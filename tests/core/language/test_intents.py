"""Intents, days, times and places in messages, in six languages."""

from __future__ import annotations

from datetime import date, time

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from core.language import LANGUAGES, Intent, plain, words_for
from core.language.intents import DESTRUCTIVE, MORE, intent_of, place, weekday_and_time, when
from tests.core.understanding.ways_of_writing import CORPUS

TODAY = date(2026, 3, 4)  # a Wednesday


# --- intents ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_intent_has_words_in_every_language(language):
    words = words_for(language)
    assert set(words.intents) == set(Intent)
    assert all(phrases for phrases in words.intents.values())


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_phrase_of_the_lexicon_is_recognised_as_its_own_intent(language):
    words = words_for(language)
    wrong = [
        f"{phrase}: {intent}, taken for {taken}"
        for intent, phrases in words.intents.items()
        for phrase in phrases
        if (taken := intent_of(phrase.strip(MORE + " "), words)) is not intent
    ]
    assert not wrong, "\n".join(wrong)


@pytest.mark.parametrize("language", LANGUAGES)
def test_two_swapped_letters_never_turn_a_word_into_another_intent(language):
    words = words_for(language)
    taken = missed = 0
    for intent, phrases in words.intents.items():
        if intent in DESTRUCTIVE:
            continue  # a typo never ends anything
        for word in (plain(p.strip(MORE + " ")) for p in phrases):
            if len(word) < 6 or " " in word:
                continue
            for i in range(1, len(word) - 1):
                slipped = word[:i] + word[i + 1] + word[i] + word[i + 2 :]
                found = intent_of(slipped, words)
                assert found in (intent, None), slipped
                taken += found is intent
                missed += found is None
    assert missed <= taken // 100


@pytest.mark.parametrize(
    ("language", "typed", "intent"),
    [
        ("en", "Yes, please!", Intent.YES),
        ("en", "👍", Intent.YES),
        ("en", "No thanks", Intent.NO),
        ("en", "HELP", Intent.HELP),
        ("en", "hlep", Intent.HELP),
        ("en", "can you please help me with the tape", Intent.HELP),
        ("en", "?", Intent.HELP),
        ("en", "skip this one please", Intent.SKIP),
        ("en", "not now, I'm at work", Intent.LATER),
        ("en", "stop", Intent.STOP),
        ("en", "I want to stop", Intent.STOP),
        ("en", "please stop messaging me", Intent.LEAVE),
        ("en", "undo that", Intent.UNDO),
        ("en", "I would like to talk to my coach", Intent.COACH),
        ("en", "pause until 3 May", Intent.PAUSE),
        ("en", "I am going on holiday until Monday", Intent.PAUSE),
        ("en", "I'm back!", Intent.RESUME),
        ("en", "what's due today?", Intent.TODAY),
        ("en", "how am I doing?", Intent.PROGRESS),
        ("en", "set a goal of 78 kg", Intent.GOAL),
        ("en", "same as last time", Intent.SAME),
        ("en", "Why do you ask?", Intent.WHY),
        ("en", "says who?", Intent.SOURCE),
        ("en", "thank you so much", Intent.THANKS),
        ("en", "good morning", Intent.GREETING),
        ("en", "I'm not feeling well today", Intent.NOT_WELL),
        ("en", "I am in pain", Intent.NOT_WELL),
        ("en", "delete all my data", Intent.FORGET),
        ("en", "I am in Lisbon", Intent.ZONE),
        ("en", "change my slot to Tuesday 7:30", Intent.SLOT),
        ("en", "I'd rather not say", Intent.NOT_SAY),
        ("en", "dunno", Intent.DONT_KNOW),
        ("es", "¿Puedes ayudarme, por favor?", Intent.HELP),
        ("es", "ayuda por favor", Intent.HELP),
        ("es", "me voy de vacaciones hasta el lunes", Intent.PAUSE),
        ("es", "¿por qué?", Intent.WHY),
        ("es", "quiero hablar con mi entrenadora", Intent.COACH),
        ("es", "estoy en Lisboa", Intent.ZONE),
        ("es", "igual que la última vez", Intent.SAME),
        ("de", "Kannst du mir bitte helfen?", Intent.HELP),
        ("de", "bitte überspringen", Intent.SKIP),
        ("de", "ueberspringen", Intent.SKIP),
        ("de", "Ich bin im Urlaub bis Montag", Intent.PAUSE),
        ("de", "mir geht's nicht gut", Intent.NOT_WELL),
        ("de", "Rückgängig machen", Intent.UNDO),
        ("de", "vergiss mich", Intent.FORGET),
        ("fr", "aidez-moi s'il vous plaît", Intent.HELP),
        ("fr", "pas maintenant, je suis au travail", Intent.LATER),
        ("fr", "comme la dernière fois", Intent.SAME),
        ("fr", "je suis en vacances jusqu'à lundi", Intent.PAUSE),
        ("fr", "supprime toutes mes données", Intent.FORGET),
        ("fr", "supprimer mes données", Intent.FORGET),
        ("pl", "pomiń to pytanie", Intent.SKIP),
        ("pl", "jestem na urlopie do poniedziałku", Intent.PAUSE),
        ("pl", "źle się czuję", Intent.NOT_WELL),
        ("pl", "zle sie czuje", Intent.NOT_WELL),
        ("pl", "nie wiem", Intent.DONT_KNOW),
        ("ar", "أحتاج إلى مساعدة", Intent.HELP),
        ("ar", "أنا في إجازة حتى الاثنين", Intent.PAUSE),
        ("ar", "لماذا؟", Intent.WHY),
        ("ar", "شكرا جزيلا", Intent.THANKS),
        ("de", "help", Intent.HELP),  # people mix in English
        ("pl", "no", Intent.YES),  # "no" is a yes in Polish
    ],
)
def test_the_intent_of_a_message(language, typed, intent):
    assert intent_of(typed, words_for(language)) is intent


@pytest.mark.parametrize(
    "typed",
    [
        "82.4",
        "7",
        "no, 82.4",
        "yes 7",
        "128/82",
        "same 82.4",
        "",
        "   ",
        "…",
        "energy 7 and weight 82",
        "the cat sat on the mat",
    ],
)
def test_a_reading_or_small_talk_is_no_wish(typed):
    assert intent_of(typed, words_for("en")) is None


def test_no_reading_is_an_intent():
    intents = {}
    for language, lines in CORPUS.items():
        for line in lines.strip().split("\n"):
            typed, _, meaning = line.partition(": ")[2].rpartition(" → ")
            if not meaning.startswith("ask") and (intent := intent_of(typed, words_for(language))) is not None:
                intents[typed] = intent
    assert set(intents.values()) <= {Intent.NO}, intents  # "none" means no in answer to a question


def test_a_long_story_is_not_searched_for_intents():
    story = "we went to see our daughter and her husband who told us all about my coach and the weather there"
    assert intent_of(story, words_for("en")) is None


# --- days ---------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "typed", "day"),
    [
        ("en", "tomorrow", date(2026, 3, 5)),
        ("en", "tomorrow morning", date(2026, 3, 5)),
        ("en", "the day after tomorrow", date(2026, 3, 6)),
        ("en", "in two weeks", date(2026, 3, 18)),
        ("en", "for 10 days", date(2026, 3, 14)),
        ("en", "until Monday", date(2026, 3, 9)),
        ("en", "on Wednesday", date(2026, 3, 11)),
        ("en", "next week", date(2026, 3, 11)),
        ("en", "next month", date(2026, 4, 4)),
        ("en", "3 May", date(2026, 5, 3)),
        ("en", "May 3rd", date(2026, 5, 3)),
        ("en", "until the 20th of March", date(2026, 3, 20)),
        ("en", "1 March", date(2027, 3, 1)),
        ("en", "3 May 2027", date(2027, 5, 3)),
        ("en", "2026-05-03", date(2026, 5, 3)),
        ("en", "03/05/2026", date(2026, 5, 3)),
        ("en", "today", TODAY),
        ("es", "mañana", date(2026, 3, 5)),
        ("es", "pasado mañana", date(2026, 3, 6)),
        ("es", "dentro de dos semanas", date(2026, 3, 18)),
        ("es", "hasta el lunes", date(2026, 3, 9)),
        ("es", "el mes que viene", date(2026, 4, 4)),
        ("es", "3 de mayo", date(2026, 5, 3)),
        ("de", "morgen", date(2026, 3, 5)),
        ("de", "übermorgen", date(2026, 3, 6)),
        ("de", "in zwei Wochen", date(2026, 3, 18)),
        ("de", "bis Montag", date(2026, 3, 9)),
        ("de", "nächsten Monat", date(2026, 4, 4)),
        ("de", "3. Mai", date(2026, 5, 3)),
        ("de", "bis zum 3.5.", date(2026, 5, 3)),
        ("fr", "demain", date(2026, 3, 5)),
        ("fr", "après-demain", date(2026, 3, 6)),
        ("fr", "dans deux semaines", date(2026, 3, 18)),
        ("fr", "jusqu'à lundi", date(2026, 3, 9)),
        ("fr", "le mois prochain", date(2026, 4, 4)),
        ("fr", "jusqu'au 3 mai", date(2026, 5, 3)),
        ("pl", "jutro", date(2026, 3, 5)),
        ("pl", "pojutrze", date(2026, 3, 6)),
        ("pl", "za dwa tygodnie", date(2026, 3, 18)),
        ("pl", "do poniedziałku", date(2026, 3, 9)),
        ("pl", "w przyszłym miesiącu", date(2026, 4, 4)),
        ("pl", "3 maja", date(2026, 5, 3)),
        ("ar", "غدا", date(2026, 3, 5)),
        ("ar", "بعد غد", date(2026, 3, 6)),
        ("ar", "بعد أسبوعين", date(2026, 3, 18)),
        ("ar", "حتى الاثنين", date(2026, 3, 9)),
        ("ar", "الشهر القادم", date(2026, 4, 4)),
        ("ar", "٣ مايو", date(2026, 5, 3)),
    ],
)
def test_the_day_a_text_names(language, typed, day):
    assert when(typed, words_for(language), TODAY) == day


@pytest.mark.parametrize(
    "typed",
    ["", "soon", "may I skip this", "82.4", "2026-02-30", "2025-05-03", "32/13", "in 999999 weeks", "3 May 1999"],
)
def test_no_day_is_made_up(typed):
    assert when(typed, words_for("en"), TODAY) is None


def test_a_month_from_the_last_day_of_january_is_the_last_of_february():
    assert when("in a month", words_for("en"), date(2026, 1, 31)) == date(2026, 2, 28)


# --- times --------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "typed", "slot"),
    [
        ("en", "Tuesday 7:30", (1, time(7, 30))),
        ("en", "Monday at 7", (0, time(7))),
        ("en", "7.30 pm", (None, time(19, 30))),
        ("en", "half past seven", (None, time(7, 30))),
        ("en", "quarter to eight on Fridays", (4, time(7, 45))),
        ("en", "mondays 7am", (0, time(7))),
        ("en", "Sunday at 8 in the evening", (6, time(20))),
        ("en", "noon", (None, time(12))),
        ("en", "12 am", (None, time(0))),
        ("en", "Saturday", (5, None)),
        ("es", "lunes a las 7 y media", (0, time(7, 30))),
        ("es", "miércoles a las ocho menos cuarto de la tarde", (2, time(19, 45))),
        ("de", "montags um halb acht", (0, time(7, 30))),
        ("de", "Dienstag 7 Uhr 30", (1, time(7, 30))),
        ("de", "freitags um viertel vor acht abends", (4, time(19, 45))),
        ("fr", "lundi à 7 heures et demie", (0, time(7, 30))),
        ("fr", "mardi 7h30", (1, time(7, 30))),
        ("fr", "mercredi à huit heures moins le quart", (2, time(7, 45))),
        ("pl", "poniedziałek wpół do ósmej", (0, time(7, 30))),
        ("pl", "we wtorek o 7:30", (1, time(7, 30))),
        ("pl", "środa o siódmej wieczorem", (2, time(19))),
        ("pl", "kwadrans po ósmej", (None, time(8, 15))),
        ("pl", "siódma trzydzieści", (None, time(7, 30))),
        ("ar", "الاثنين الساعة السابعة والنصف", (0, time(7, 30))),
        ("ar", "الثلاثاء 7:30", (1, time(7, 30))),
        ("ar", "الأربعاء الساعة الثامنة إلا ربع مساء", (2, time(19, 45))),
        ("ar", "الساعة ٧ صباحا", (None, time(7))),
    ],
)
def test_the_weekday_and_time_a_text_names(language, typed, slot):
    assert weekday_and_time(typed, words_for(language)) == slot


@pytest.mark.parametrize("typed", ["", "7", "25:00", "12:75", "whenever", "82.4 kg"])
def test_no_time_is_made_up(typed):
    assert weekday_and_time(typed, words_for("en")) == (None, None)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_weekday_and_month_has_a_name_of_its_own(language):
    calendar = words_for(language).calendar
    assert calendar is not None
    for names in (calendar.weekdays, calendar.months):
        spelled = [name for entry in names for name in {plain(n) for n in entry}]
        assert len(spelled) == len(set(spelled))
    for day, names in enumerate(calendar.weekdays):
        for name in names:
            assert weekday_and_time(name, words_for(language))[0] == day, name


# --- places -------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "typed", "city"),
    [
        ("en", "I am in Lisbon", "Lisbon"),
        ("en", "I'm now in New York until Friday.", "New York"),
        ("en", "travelling to São Paulo for two weeks", "São Paulo"),
        ("es", "estoy en Lisboa hasta el viernes", "Lisboa"),
        ("de", "Ich bin in Lissabon bis Freitag", "Lissabon"),
        ("fr", "je suis à Lisbonne jusqu'à vendredi", "Lisbonne"),
        ("pl", "jestem w Lizbonie do piątku", "Lizbonie"),
        ("ar", "أنا في لشبونة حتى الجمعة", "لشبونة"),
        ("de", "I am in Lisbon", "Lisbon"),
        ("en", "Lisbon", None),
        ("en", "I am in", None),
        ("en", "82.4", None),
    ],
)
def test_the_place_somebody_says_to_be_in(language, typed, city):
    assert place(typed, words_for(language)) == city


# --- anything -----------------------------------------------------------------------------------------------------


@settings(max_examples=300)
@given(st.text(max_size=200), st.sampled_from(sorted(LANGUAGES)))
@example("7:99", "en")
@example("፩ may ፪:፫ ² ① ፩፪፫፬", "en")
@example("in 2 months " * 300, "en")
@example("31/02", "de")
@example("9999-12-31", "en")
@example("in 300000 days", "en")
@example("next month", "en")
@example("الاثنين " * 400, "ar")
def test_no_message_breaks_the_recognition_of_intents(typed, language):
    words = words_for(language)
    assert intent_of(typed, words) is None or isinstance(intent_of(typed, words), Intent)
    for today in (TODAY, date(2026, 12, 31), date(2028, 2, 29)):
        day = when(typed, words, today)
        assert day is None or day >= today
    weekday, at = weekday_and_time(typed, words)
    assert weekday is None or 0 <= weekday <= 6
    assert at is None or isinstance(at, time)
    city = place(typed, words)
    assert city is None or city
