"""What people write beside the point, at enrolment and in a check-in: answered, kept or passed on, never guessed."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

import pytest

from core.care import Status
from core.dialogue.client import effects as e
from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import messages as m
from core.dialogue.client.messages_to_coach import ClientIll
from core.dialogue.client.states import AlarmAsked, Awaiting, Enrolling, Setting
from core.dialogue.kit.events import FromCoach
from core.dialogue.kit.messages import WhichPlace
from core.language import LANGUAGES
from core.language.danger_signs import Answer, answer_to_alarm
from core.watching.flags import Code
from tests.builders import ADA, Chat, Plan
from tests.core.dialogue.test_arriving import arriving, asked

NO_PRESSURE = replace(ADA, plan=Plan(measures=("weight", "waist", "energy")))


# --- consent ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "text", ["can I stop whenever I like", "what happens if I want to quit?", "could I leave later?"]
)
def test_a_question_about_stopping_refuses_nothing(text: str) -> None:
    chat = arriving().says(text)
    assert "ConsentDeclined" not in chat.kinds and {"consent:yes", "consent:no"} <= set(chat.choices)
    assert chat.says("fine by me").facts.consented


def test_words_that_are_no_answer_to_consent_do_not_bring_the_whole_greeting_again() -> None:
    chat = arriving().says("my daughter set this up for me")
    assert chat.kinds == ["ConsentUnclear"] and not chat.facts.consented


def test_what_this_is_about_is_answered_before_consent() -> None:
    assert arriving().says("what is this about").heard(m.Plainly).key == "about"


# --- enrolment ----------------------------------------------------------------------------------------------------


def at_the_rating(**facts: object) -> Chat:
    return arriving(**facts).says("yes").says("1958")


def test_oh_in_a_sentence_is_no_rating() -> None:
    chat = at_the_rating().says("oh I forgot, I take metformin")
    assert asked(chat) == "rating" and not chat.did(e.Record)


def test_one_of_two_ratings_is_a_choice_between_them() -> None:
    chat = at_the_rating().says("I'd say six or seven")
    assert {"e:rating:6", "e:rating:7"} <= set(chat.choices)
    assert chat.presses("e:rating:7").readings("energy")[0].value == 7


def test_the_second_answer_that_is_not_understood_is_met_with_other_words_and_the_coach() -> None:
    chat = at_the_rating().says("hm")
    first = chat.kinds
    assert chat.says("hm hm").kinds == ["EnrolStillUnclear"] != first
    assert "word" in chat.choices


def test_the_next_question_begins_with_patience_again() -> None:
    chat = at_the_rating().says("hm").says("6")
    assert isinstance(chat.state.asking, Enrolling) and chat.state.asking.tries == 0


def test_a_question_that_has_to_wait_is_answered_so_and_ours_is_put_again() -> None:
    chat = at_the_rating().says("is that high?")
    assert chat.heard(m.Plainly).key == "after_start" and chat.heard(m.EnrolQuestion).question == "rating"


def test_a_question_nobody_here_can_answer_is_offered_to_the_coach() -> None:
    chat = at_the_rating().says("do you know my cousin Bert?")
    assert chat.heard(m.OfferToPass) and chat.heard(m.EnrolQuestion).question == "rating"


def test_another_day_said_at_the_time_is_taken_and_the_time_asked_again() -> None:
    chat = at_the_rating().says("6").says("Monday").says("Tuesday mornings, not too early")
    assert asked(chat) == "time"
    assert chat.says("half nine").facts.slot == replace(chat.facts.slot, weekday=1, at=time(9, 30))


def test_two_days_are_a_question_which() -> None:
    chat = at_the_rating().says("6").says("Monday or Thursday")
    assert asked(chat) == "weekday"


def test_where_the_coach_lives_is_one_press() -> None:
    chat = at_the_rating(coach_zone="Europe/London").says("6").says("Tuesday 9:30")
    assert "e:zone:Europe/London" in chat.choices


def test_an_unknown_place_is_said_to_be_so_once() -> None:
    chat = at_the_rating().says("6").says("Tuesday 9:30").says("a village near Hereford")
    assert chat.heard(WhichPlace).places == ()
    assert chat.says("nowhere you would know").heard(em.EnrolStillUnclear)


# --- in a check-in ------------------------------------------------------------------------------------------------


def test_a_very_high_pressure_is_heard_though_it_is_in_no_plan() -> None:
    for text in ("my blood pressure is 195/125", "195 over 125"):
        chat = Chat(NO_PRESSURE).due().says(text)
        assert chat.heard(m.PressureRepeat) and chat.raised


def test_a_racing_pulse_is_heard_though_it_is_in_no_plan() -> None:
    assert Chat(NO_PRESSURE).due().says("pulse 150 at rest").raised


def test_a_number_named_for_another_measure_is_no_answer_to_this_one() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("resting_heart_rate",)))).due().says("7")
    assert chat.state.asking == Awaiting("resting_heart_rate")
    assert not chat.says("my hips are 63").did(e.Record) and "DidYouMean" not in chat.kinds


def test_a_flu_is_news_to_the_coach_and_no_alarm() -> None:
    chat = Chat().due().says("I have the flu")
    assert [x.message for x in chat.did(e.NotifyCoach)] == [ClientIll(1, "Ada")]
    assert chat.heard(m.RestWhileIll) and not chat.raised


def test_somebody_ill_who_is_about_to_be_tested_is_asked_for_more() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("chair_stand_30s",)))).due().says("7")
    assert "GateWell" in chat.kinds
    chat.says("I have the flu")
    assert [x.flag.code for x in chat.raised] == [Code.SYMPTOM_REPORTED]


def test_a_remark_with_a_number_is_kept_with_the_week_and_the_question_put_again() -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says("10000 steps today!")
    assert chat.heard(m.WeekNoted) and chat.heard(m.StillOpen).measure == "weight"
    (kept,) = chat.did(e.Amend)
    assert kept.reading.conditions.words == "10000 steps today!"


@pytest.mark.parametrize("text", ["none", "none this week", "nothing"])
def test_none_is_a_number_of_sessions(text: str) -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("sessions_done", "weight")))).due().says("7")
    assert chat.state.asking == Awaiting("sessions_done")
    (kept,) = chat.says(text).readings("sessions_done")
    assert kept.value == 0


@pytest.mark.parametrize(("language", "no"), [("en", "no"), ("de", "nein"), ("es", "no"), ("fr", "non"), ("pl", "nie")])
def test_a_no_to_a_number_of_sessions_leaves_it_out(language: str, no: str) -> None:
    both = replace(ADA, language=language, plan=Plan(measures=("sessions_done", "weight")))
    chat = Chat(both).due().says("7").says(no)
    assert not chat.readings("sessions_done") and chat.state.asking == Awaiting("weight")


def test_a_remark_two_days_after_the_check_in_is_kept_while_it_is_open() -> None:
    chat = Chat(NO_PRESSURE).due().says("7").later(days=2).says("felt a bit low this week, missing my husband")
    assert chat.heard(m.WeekNoted) and chat.heard(m.StillOpen)


def test_another_time_is_set_from_one_sentence_and_is_no_weight() -> None:
    chat = Chat().due().says("7").says("60 bpm").says("82 kg").later(hours=2).says("can you remind me at 9 instead")
    assert chat.facts.slot is not None and chat.facts.slot.at == time(9) and not chat.did(e.Record)


def test_the_measure_that_is_named_is_taken_back_and_not_the_last_one() -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says("82 kg").says("waist 94")
    chat.says("can you delete the weight one")
    assert not chat.facts.of("weight") and chat.facts.of("waist")


def test_doing_it_tonight_puts_a_question_off_and_means_nothing_else() -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says("will do it tonight")
    assert chat.heard(m.SnoozeWhen) and not chat.raised


def test_doing_it_tonight_is_heard_where_nothing_is_asked_or_more_is_said() -> None:
    assert Chat(NO_PRESSURE).says("will do it tonight").raised
    assert Chat(NO_PRESSURE).due().says("7").says("I can't go on, will do it tonight").raised


def test_the_same_chair_is_no_answer_to_how_somebody_is() -> None:
    chat = Chat(NO_PRESSURE).says("my calf is swollen and hot")
    assert chat.raised
    assert not chat.says("same chair as always").did(e.Raise)


@pytest.mark.parametrize("text", ["what chair should I use", "how heavy should I be", "will I still get the messages"])
def test_a_question_without_its_mark_is_a_question(text: str) -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says(text)
    assert chat.heard(m.OfferToPass) and chat.heard(m.StillOpen) and not chat.did(e.Amend)


# --- offers -------------------------------------------------------------------------------------------------------


def test_a_yes_after_something_else_passes_nothing_on() -> None:
    chat = Chat().says("what is the capital of France?")
    assert chat.heard(m.OfferToPass)
    assert not chat.says("are you a robot?").says("👍").did(e.PassOn)


def test_a_yes_right_after_the_offer_passes_the_words_on() -> None:
    chat = Chat().says("what is the capital of France?").says("yes please")
    assert chat.did(e.PassOn) == [e.PassOn("what is the capital of France?")]


def test_the_button_of_an_older_offer_does_not_pass_on_newer_words() -> None:
    chat = Chat().says("what is the capital of France?")
    (old,) = [c for c in chat.choices if c.startswith("pass:")]
    chat.says("what is the capital of Peru?")
    assert not chat.presses(old).did(e.PassOn)


def test_the_coach_named_in_passing_is_offered_the_words_and_the_next_ones_are_not_theirs() -> None:
    chat = Chat().says("I think my coach is a bit strict")
    assert chat.heard(m.OfferToPass).why == "for_coach"
    assert not chat.says("are you a robot?").did(e.PassOn)


def test_a_yes_long_after_the_question_takes_nothing_back() -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says("82 kg").says("waist 94").later(days=2).says("undo")
    chat.says("are you a robot?").says("👍")
    assert not chat.did(e.Retract)


# --- what is asked of a number ------------------------------------------------------------------------------------


def test_small_talk_after_a_word_of_the_coach_is_an_answer_to_it() -> None:
    chat = Chat().gets(FromCoach(Chat().now, "Rowan", "How was the walk?"))
    assert chat.says("lovely thanks, took 40 minutes").did(e.PassOn) == [e.PassOn("lovely thanks, took 40 minutes")]


def test_a_number_asked_about_is_answered_by_the_range_and_not_kept() -> None:
    chat = Chat().says("is 72 a good pulse for me")
    assert chat.heard(m.UsualFor).measure == "resting_heart_rate" and not chat.did(e.Record)


def test_hard_words_about_the_body_are_met_kindly() -> None:
    chat = Chat().says("am I too fat?")
    assert chat.heard(m.Plainly).key == "body" and "word" in chat.choices


# --- a setting is no trap -----------------------------------------------------------------------------------------


def test_a_sentence_about_something_else_closes_an_open_setting() -> None:
    chat = Chat().commands("pause")
    assert isinstance(chat.state.asking, Setting)
    chat.says("actually I am staying at home")
    assert chat.state.asking is None and "AskPause" not in chat.kinds


def test_a_slip_in_the_answer_to_a_setting_is_asked_again() -> None:
    chat = Chat().commands("pause").says("til teh 20st")
    assert isinstance(chat.state.asking, Setting)


def test_bed_is_no_town() -> None:
    chat = Chat().says("I'm in bed with my back again")
    assert not isinstance(chat.state.asking, Setting)


def test_a_death_is_met_with_sympathy_and_nothing_is_asked() -> None:
    chat = Chat().due().says("my mum died on sunday")
    assert chat.heard(m.Plainly).key == "grief" and {"set:pause", "word"} <= set(chat.choices)


def test_the_same_weight_sent_twice_is_no_second_weighing() -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says("82.4 kg").says("94").later(minutes=20).says("82,4kg")
    assert chat.heard(m.Plainly).key == "already" and not chat.did(e.Record)


def test_a_thumb_up_at_the_end_is_no_riddle() -> None:
    assert Chat().says("👍").heard(m.Plainly).key == "all_right"


# --- in Spanish, Polish and Arabic --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "text"),
    [("es", "bueno pues por mi bien"), ("pl", "no dobra niech bedzie"), ("ar", "طيب ما في مانع"), ("es", "sí, acepto")],
)
def test_a_yes_after_a_hesitation_is_a_yes(language: str, text: str) -> None:
    assert arriving(language=language).says(text).facts.consented


@pytest.mark.parametrize(
    ("language", "text"), [("es", "si puedo luego te digo"), ("es", "si no me cuesta dinero"), ("pl", "tak sobie")]
)
def test_an_if_and_a_so_so_consent_to_nothing(language: str, text: str) -> None:
    chat = arriving(language=language).says(text)
    assert not chat.facts.consented and "ConsentDeclined" not in chat.kinds


@pytest.mark.parametrize(
    ("language", "text", "year"),
    [
        ("es", "del 58", 1958),
        ("pl", "rocznik 58", 1958),
        ("ar", "مواليد 58", 1958),
        ("en", "born in 58", 1958),
        ("de", "Jahrgang 58", 1958),
        ("es", "58 años", 1968),
        ("pl", "mam 58 lat", 1968),
    ],
)
def test_two_digits_are_a_year_of_birth_where_it_says_so_and_else_an_age(language: str, text: str, year: int) -> None:
    yes = {"es": "sí", "pl": "tak", "ar": "نعم", "de": "ja"}.get(language, "yes")
    chat = arriving(language=language).says(yes).says(text)
    assert e.ChangeClient("birth_year", year) in chat.did(e.ChangeClient)


@pytest.mark.parametrize(
    ("language", "text", "at"),
    [("es", "nueve y media", time(9, 30)), ("ar", "تسعة ونص", time(9, 30)), ("pl", "dziewiąta", time(9))],
)
def test_at_the_time_an_hour_needs_no_word_before_it(language: str, text: str, at: time) -> None:
    yes, day = {"es": ("sí", "martes"), "ar": ("نعم", "الثلاثاء"), "pl": ("tak", "wtorek")}[language]
    chat = arriving(language=language).says(yes).says("1958").says("6").says(day)
    assert asked(chat) == "time"
    assert chat.says(text).facts.slot == replace(chat.facts.slot, weekday=1, at=at)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("ar", "انقلني ليوم الجمعة"),  # a letter away from "save me"
        ("ar", "مثل كل مرة"),
        ("pl", "nie umiem zmierzyc tetna"),
        ("es", "se ha muerto mi perro"),
        ("es", "soy diabetica y me han cambiado la metformina"),
    ],
)
def test_everyday_words_are_no_alarm(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).due().says(text)
    assert not chat.raised and not {"AskAlarm", "Emergency"} & set(chat.kinds)
    assert not isinstance(chat.state.asking, AlarmAsked)


def test_a_small_word_of_another_language_is_no_answer_to_an_alarm() -> None:
    chat = Chat(replace(ADA, language="es")).says("algo va mal en mi cuerpo")
    assert isinstance(chat.state.asking, AlarmAsked)
    assert "Emergency" not in chat.says("me operaron de la rodilla en enero").kinds


def test_this_is_not_calmed_down() -> None:
    chat = Chat(replace(ADA, language="ar")).says("صدري بيوجعني لما اطلع الدرج")
    before = len(chat.raised)
    assert before and len(chat.says("احذف هذا").raised) == before


@pytest.mark.parametrize(("language", "text"), [("es", "no no, mejor no"), ("ar", "لا لا خلص لا")])
def test_no_to_deleting_everything_says_nothing_of_an_alarm(language: str, text: str) -> None:
    words = {"es": ("me duele el pecho", "borrame la cuenta"), "ar": ("صدري بيوجعني", "امسح حسابي")}[language]
    chat = Chat(replace(ADA, language=language)).says(words[0]).says(words[1])
    assert chat.state.asking.what == "forget"
    before = len(chat.raised)
    after = chat.says(text)
    assert before and len(after.raised) == before and "KeptAsItWas" in after.kinds


def test_a_bad_night_is_no_fall() -> None:
    chat = Chat(replace(ADA, language="pl")).says("źle spałam, 3 godziny")
    assert not chat.did(e.ChangeClient) and not chat.did(e.NotifyCoach)


@pytest.mark.parametrize(("language", "text"), [("en", "are we weighing today?"), ("ar", "اليوم منتوزن؟")])
def test_today_is_no_end_of_a_break(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).says({"en": "take a break", "ar": "استراحة"}[language])
    assert chat.says(text).facts.status is Status.ACTIVE


def test_a_question_about_no_reading_begins_no_check_in() -> None:
    chat = Chat().says("is that good?")
    assert chat.state.asking is None and "NoReadingYet" in chat.kinds


def test_delete_my_account_takes_no_reading_back() -> None:
    chat = Chat(replace(ADA, language="pl")).due().says("7").says("skasuj mi konto")
    assert not chat.did(e.Amend) and chat.state.asking.what == "forget"


def test_better_answers_the_coach_who_has_just_written() -> None:
    chat = Chat(replace(ADA, language="es")).says("estoy harta de todo")
    before = len(chat.raised)
    chat = chat.gets(FromCoach(chat.now, "Rowan", "Hola, ¿qué tal la rodilla?"))
    assert before and len(chat.says("mejor, ya ando sin bastón").raised) == before


@pytest.mark.parametrize(
    ("language", "text"), [("pl", "nie pisz do mnie w niedziele"), ("es", "no me gusta nada que llueva tanto")]
)
def test_a_long_no_leaves_no_question_out(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).due().says(text)
    assert isinstance(chat.state.asking, Awaiting) and chat.state.asking.measure == "energy"


def test_no_wait_is_no_number_of_minutes() -> None:
    chat = Chat(replace(ADA, language="pl", plan=Plan(measures=("activity_minutes", "weight")))).due().says("7")
    assert not chat.says("nie czekaj, jednak chce").readings("activity_minutes")


def test_having_had_breakfast_is_no_fainting() -> None:
    chat = Chat(replace(ADA, language="es")).says("con los zapatos puestos y desayunada")
    assert not isinstance(chat.state.asking, AlarmAsked)


@pytest.mark.parametrize(
    ("language", "sign", "text"),
    [
        ("pl", "boli mnie w klatce", "w środy nie mogę, lepiej wtorek albo czwartek"),
        ("es", "me duele el pecho", "mejor a las nueve"),
        ("es", "me duele el pecho", "cuéntame un chiste"),
        ("ar", "صدري بيوجعني", "احكيلي نكتة"),
    ],
)
def test_a_better_day_and_a_joke_asked_for_say_nothing_of_an_alarm(language: str, sign: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).says(sign)
    before = len(chat.raised)
    assert before and len(chat.says(text).raised) == before


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("pl", "ciężko powiedzieć, siódemka"),
        ("pl", "nie mogę iść na siłownię bo leje"),
        ("ar", "ما بقدر روح النادي من المطر"),
    ],
)
def test_what_is_hard_to_say_and_the_rain_are_no_alarm(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).says(text)
    assert not chat.raised and not isinstance(chat.state.asking, AlarmAsked)


@pytest.mark.parametrize(
    ("language", "text"),
    [("ar", "ركبتي بتوجعني من امبارح"), ("es", "me duele desde ayer"), ("pl", "boli od wczoraj")],
)
def test_since_yesterday_is_not_over(language: str, text: str) -> None:
    assert answer_to_alarm(text, LANGUAGES[language]) is not Answer.OVER


@pytest.mark.parametrize(
    ("text", "energy"), [("siódemka", 7), ("taka piatka dzis", 5), ("ciężko powiedzieć, szóstka", 6)]
)
def test_a_rating_may_be_told_as_a_mark_at_school(text: str, energy: int) -> None:
    chat = Chat(replace(ADA, language="pl")).due().says(text)
    if not chat.readings("energy"):
        chat = chat.says("tak")
    assert chat.readings("energy")[0].value == energy


# --- numbers that are no answer -----------------------------------------------------------------------------------

PULSE = replace(ADA, plan=Plan(measures=("resting_heart_rate",)))


@pytest.mark.parametrize(
    "text", ["72 after the stairs", "98 after coffee", "110 when I climb stairs", "72, just after my walk"]
)
def test_a_pulse_after_effort_is_asked_about_before_it_is_a_resting_one(text: str) -> None:
    chat = Chat(PULSE).due().says("7").says(text)
    assert chat.heard(m.DidYouMean).kind == "not_at_rest" and not chat.did(e.Record)
    assert chat.presses("ok:yes").readings("resting_heart_rate")


@pytest.mark.parametrize("text", ["64 before the walk", "72 after resting 5 minutes", "64 lying in bed"])
def test_a_pulse_at_rest_is_one(text: str) -> None:
    assert Chat(PULSE).due().says("7").says(text).readings("resting_heart_rate")


def test_a_severe_pressure_is_not_argued_about() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("blood_pressure",)))).due().says("7").says("195/125 after the stairs")
    assert chat.heard(m.PressureRepeat)


@pytest.mark.parametrize("text", ["70 something", "seventy odd"])
def test_where_a_number_begins_is_no_number(text: str) -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says(text)
    assert chat.heard(m.AskAgain).why == "a_range" and not chat.readings("weight")


@pytest.mark.parametrize("text", ["my husband weighs 90", "my husband is 90 kg", "he weighs 90"])
def test_what_somebody_else_weighs_is_not_offered_as_ones_own(text: str) -> None:
    chat = Chat(NO_PRESSURE).due().says("7").says(text)
    assert "DidYouMean" not in chat.kinds and not chat.readings("weight")
