"""Danger signs in free text: alarms, denials, questions and harmless texts, in six languages.

A line is `text → sign level`, with a question mark if a question is asked first, and `-` for no alarm. The levels are
those of function.md 9.1; every line is invented.
"""

from __future__ import annotations

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from core.language import LANGUAGES, words_for
from core.language.concepts import Answer, Concept
from core.language.danger_signs import Level, Sighting, When, Who, answer_to_alarm, recognise, sightings
from core.language.lexicon import Intent
from core.language.phrases import compiled, known
from core.language.signs import SIGNS
from tests.core.understanding.ways_of_writing import CORPUS

ENGLISH = """
I have chest pain → chest_pain emergency
chest pian → chest_pain emergency
my chest really hurts → chest_pain emergency
tightness across my chest → chest_pain emergency
pressure in my chest and down my left arm → chest_pain emergency
chest pain that won't go away → chest_pain emergency
my chest hurts and it has not gone away → chest_pain emergency
I stopped because I had pain in my chest → chest_pain emergency
no idea why my chest hurts → chest_pain emergency
not feeling well, chest pain → chest_pain emergency
no, chest pain → chest_pain emergency
I think I'm having a heart attack → chest_pain emergency
7, but my chest hurts → chest_pain emergency
chest pain but it went away when I sat down → chest_pain same_day
pain in my left arm and I feel sick → chest_pain emergency
I passed out this morning → faint emergency
I fainted → faint emergency
no chest pain but I fainted → faint emergency
no chest pain and I fainted → faint emergency
I can't breathe → breathless_at_rest emergency
short of breath even sitting still → breathless_at_rest emergency
trouble breathing → breathless_at_rest emergency
my face is drooping on one side → stroke_signs emergency
slurred speech since this morning → stroke_signs emergency
my left arm went numb → stroke_signs emergency
sudden weakness on one side → stroke_signs emergency
worst headache of my life → stroke_signs emergency
my left leg is swollen and I'm short of breath → leg_swelling_with_breathlessness emergency
my calf is swollen and hot → leg_swelling same_day
my left leg is swollen → leg_swelling same_day
both ankles are swollen → swollen_legs same_day
palpitations since yesterday → palpitations same_day
my heart is racing → palpitations same_day
dizzy again today → dizzy same_day
I keep getting dizzy → dizzy same_day
breathless going up the stairs, more than usual → breathless_on_usual_tasks same_day
dizzy → dizzy stop_rest
I feel faint → dizzy stop_rest
I feel sick after the test → nausea stop_rest
out of breath after the walk → breathless stop_rest
cold sweat → cold_sweat stop_rest
I twisted my ankle → new_joint_pain stop_rest
I want to die → despair talk
I don't want to live any more → despair talk
thinking of killing myself → despair talk
I am going to kill myself tonight → despair emergency
I make myself sick after meals → eating_worry talk
no chest pain → -
no pain in my chest → -
my chest does not hurt → -
chest pain? no → -
chest pain: none → -
chest pain, no → -
I never had chest pain → -
no chest pain, no dizziness → -
no chest pain or dizziness → -
no chest pain, dizziness or fainting → -
without dizziness → -
I'm not dizzy → -
no more chest pain → -
no signs of a stroke → -
haven't had any dizziness or breathlessness → -
no chest pain and dizziness → dizzy stop_rest ?
the chest pain I had last year → chest_pain emergency ?
I had a heart attack in 2019 → chest_pain emergency ?
I fainted years ago → faint emergency ?
my mum had a stroke → stroke_signs emergency ?
what if I get chest pain → chest_pain emergency ?
is chest pain dangerous? → chest_pain emergency ?
what are the signs of a stroke? → stroke_signs emergency ?
my heart is in it → -
this killed me haha → -
I nearly died laughing → -
did chest presses today, sore → -
chest 102 cm → -
I painted the fence → -
my bus is on strike → -
I'm sick of this weather → -
feeling fine, 7 → -
my pulse is 72 → -
blood pressure 128/82 → -
I swam breaststroke → -
82.4 → -
"""

SPANISH = """
me duele el pecho → chest_pain emergency
tengo un dolor en el pecho → chest_pain emergency
opresión en el pecho → chest_pain emergency
me deule el pecho → chest_pain emergency
sí, me duele el pecho → chest_pain emergency
me duele el pecho y el brazo izquierdo → chest_pain emergency
creo que me está dando un infarto → chest_pain emergency
no sé por qué pero me duele el pecho → chest_pain emergency
me dolía el pecho pero ya pasó → chest_pain same_day
me desmayé ayer → faint emergency
perdí el conocimiento → faint emergency
no puedo respirar → breathless_at_rest emergency
me cuesta mucho respirar → breathless_at_rest emergency
tengo la cara torcida → stroke_signs emergency
se me ha dormido el brazo → stroke_signs emergency
me cuesta hablar → stroke_signs emergency
tengo la pierna izquierda hinchada → leg_swelling same_day
la pierna hinchada y me falta el aire → leg_swelling_with_breathlessness emergency
tengo los tobillos hinchados → swollen_legs same_day
tengo palpitaciones → palpitations same_day
otra vez mareos → dizzy same_day
me falta el aire al subir escaleras → breathless_on_usual_tasks same_day
estoy mareada → dizzy stop_rest
tengo náuseas → nausea stop_rest
sudor frío → cold_sweat stop_rest
no quiero vivir → despair talk
quiero morirme → despair talk
tomo laxantes para bajar → eating_worry talk
no tengo dolor en el pecho → -
no me duele el pecho → -
sin dolor de pecho → -
sin mareos → -
ni mareos ni dolor en el pecho → -
ningún dolor en el pecho → -
¿dolor de pecho? no → -
dolor de pecho: ninguno → -
no tengo mareos ni náuseas → -
no tengo dolor de pecho pero me desmayé → faint emergency
el año pasado tuve un infarto → chest_pain emergency ?
mi madre tuvo un ictus → stroke_signs emergency ?
¿qué pasa si me duele el pecho? → chest_pain emergency ?
si me duele el pecho, ¿paro? → chest_pain emergency ?
te lo digo de todo corazón → -
me muero de risa → -
mi tía vino a verme → -
la tensión está bien → -
ejercicios de pecho hechos → -
tengo agujetas → -
82,4 y energía 7 → -
"""

GERMAN = """
Ich habe Brustschmerzen → chest_pain emergency
Brustschemrzen → chest_pain emergency
Schmerzen in der Brust → chest_pain emergency
meine Brust tut weh → chest_pain emergency
Druck auf der Brust → chest_pain emergency
es sticht im Herz → chest_pain emergency
mir ist nicht gut, Brustschmerzen → chest_pain emergency
keine Ahnung warum, aber die Brust schmerzt → chest_pain emergency
Ich glaube, ich habe einen Herzinfarkt → chest_pain emergency
Brustschmerzen, sind aber wieder weg → chest_pain same_day
ich bin umgekippt → faint emergency
bin ohnmächtig geworden → faint emergency
ich bekomme keine Luft → breathless_at_rest emergency
Atemnot → breathless_at_rest emergency
mein Mundwinkel hängt → stroke_signs emergency
mein linker Arm ist taub → stroke_signs emergency
plötzlich schwach auf der rechten Seite → stroke_signs emergency
mein linkes Bein ist geschwollen → leg_swelling same_day
Bein geschwollen und außer Atem → leg_swelling_with_breathlessness emergency
beide Beine sind dick → swollen_legs same_day
mein Herz rast → palpitations same_day
Herzstolpern → palpitations same_day
schon wieder schwindelig → dizzy same_day
mir ist schwindlig → dizzy stop_rest
mir ist schwindelig geworden → dizzy stop_rest
mir ist übel → nausea stop_rest
kalter Schweiß → cold_sweat stop_rest
außer Atem auf der Treppe, mehr als sonst → breathless_on_usual_tasks same_day
ich bin umgeknickt → new_joint_pain stop_rest
ich will nicht mehr leben → despair talk
ich möchte sterben → despair talk
ich nehme Abführmittel → eating_worry talk
keine Brustschmerzen → -
keine Schmerzen in der Brust → -
Brustschmerzen habe ich keine → -
Brustschmerzen: nein → -
die Brust tut nicht weh → -
mir ist nicht schwindlig → -
ohne Schwindel → -
weder Schwindel noch Atemnot → -
kein Schwindel, keine Übelkeit → -
ich habe keinerlei Brustschmerzen → -
nicht übel → -
keine Brustschmerzen, aber ohnmächtig geworden → faint emergency
letztes Jahr hatte ich einen Herzinfarkt → chest_pain emergency ?
meine Mutter hatte einen Schlaganfall → stroke_signs emergency ?
was ist, wenn ich Brustschmerzen bekomme? → chest_pain emergency ?
sind Brustschmerzen gefährlich? → chest_pain emergency ?
herzlichen Dank → -
Muskelkater in der Brust → -
das liegt mir am Herzen → -
ich habe mich totgelacht → -
Blutdruck 128/82 → -
82,4 kg, Energie 7 → -
"""

FRENCH = """
j'ai mal à la poitrine → chest_pain emergency
mal a la poitrine → chest_pain emergency
douleur dans la poitrine → chest_pain emergency
ça me serre dans la poitrine → chest_pain emergency
j'ai mal à la poitrine et au bras gauche → chest_pain emergency
je crois que je fais une crise cardiaque → chest_pain emergency
je ne sais pas pourquoi mais j'ai mal à la poitrine → chest_pain emergency
j'avais mal à la poitrine mais c'est passé → chest_pain same_day
je me suis évanoui hier → faint emergency
j'ai perdu connaissance → faint emergency
je n'arrive pas à respirer → breathless_at_rest emergency
j'ai du mal à respirer → breathless_at_rest emergency
j'ai le visage paralysé → stroke_signs emergency
mon bras est engourdi → stroke_signs emergency
je n'arrive plus à parler → stroke_signs emergency
j'ai la jambe gauche enflée → leg_swelling same_day
jambe enflée et essoufflé → leg_swelling_with_breathlessness emergency
j'ai les chevilles gonflées → swollen_legs same_day
j'ai des palpitations → palpitations same_day
mon cœur s'emballe → palpitations same_day
encore des vertiges → dizzy same_day
j'ai des vertiges → dizzy stop_rest
la tête me tourne → dizzy stop_rest
j'ai envie de vomir → nausea stop_rest
sueurs froides → cold_sweat stop_rest
essoufflé dans les escaliers, plus que d'habitude → breathless_on_usual_tasks same_day
je ne veux plus vivre → despair talk
j'ai envie de mourir → despair talk
je me fais vomir après les repas → eating_worry talk
pas de douleur à la poitrine → -
je n'ai pas mal à la poitrine → -
ça ne fait pas mal à la poitrine → -
aucune douleur thoracique → -
sans vertiges → -
ni vertiges ni douleur à la poitrine → -
douleur à la poitrine : non → -
je n'ai jamais eu de vertiges → -
pas de vertiges, pas de nausées → -
je n'ai pas de palpitations → -
pas de douleur à la poitrine mais je me suis évanoui → faint emergency
l'année dernière j'ai eu un infarctus → chest_pain emergency ?
ma mère a fait un AVC → stroke_signs emergency ?
et si j'ai mal à la poitrine ? → chest_pain emergency ?
est-ce que la douleur à la poitrine est grave ? → chest_pain emergency ?
merci de tout cœur → -
j'ai acheté du pain → -
pas mal, énergie 7 → -
morte de rire → -
la tension est bonne → -
j'ai des courbatures → -
"""

POLISH = """
boli mnie w klatce piersiowej → chest_pain emergency
ból w klatce piersiowej → chest_pain emergency
bol w klatce → chest_pain emergency
ucisk w klatce piersiowej → chest_pain emergency
kłuje mnie serce → chest_pain emergency
nie wiem dlaczego, ale boli mnie w klatce → chest_pain emergency
chyba mam zawał → chest_pain emergency
źle się czuję, ból w klatce piersiowej → chest_pain emergency
bolało mnie w klatce piersiowej, ale przeszło → chest_pain same_day
wczoraj zemdlałam → faint emergency
straciłem przytomność → faint emergency
nie mogę oddychać → breathless_at_rest emergency
trudno mi oddychać → breathless_at_rest emergency
twarz mi opada → stroke_signs emergency
drętwieje mi lewa ręka → stroke_signs emergency
bełkotliwa mowa → stroke_signs emergency
mam spuchniętą lewą nogę → leg_swelling same_day
spuchnięta noga i duszności → leg_swelling_with_breathlessness emergency
mam opuchnięte kostki → swollen_legs same_day
serce mi wali → palpitations same_day
mam kołatanie serca → palpitations same_day
znowu zawroty głowy → dizzy same_day
zadyszka na schodach większa niż zwykle → breathless_on_usual_tasks same_day
kręci mi się w głowie → dizzy stop_rest
jest mi niedobrze i mam mdłości → nausea stop_rest
zimny pot → cold_sweat stop_rest
skręciłam kostkę → new_joint_pain stop_rest
nie chcę żyć → despair talk
chcę umrzeć → despair talk
wymiotuję po jedzeniu → eating_worry talk
nie boli mnie w klatce piersiowej → -
nie mam bólu w klatce → -
bez bólu w klatce piersiowej → -
bez zawrotów głowy → -
żadnych bólów w klatce ani zawrotów → -
nie kręci mi się w głowie → -
ból w klatce: nie → -
nie miałem zawrotów głowy → -
brak duszności → -
nigdy nie zemdlałem → -
nie mam bólu w klatce, ale zemdlałem → faint emergency
w zeszłym roku miałem zawał → chest_pain emergency ?
moja mama miała udar → stroke_signs emergency ?
co jeśli będzie mnie boleć w klatce? → chest_pain emergency ?
co jeśli dostanę zawału? → chest_pain emergency ?
czy ból w klatce jest groźny? → chest_pain emergency ?
ciśnienie dobre → -
udało się, 12 → -
umieram ze śmiechu → -
serdecznie dziękuję → -
82,4 i energia 7 → -
"""

ARABIC = """
عندي ألم في صدري → chest_pain emergency
ألم في الصدر → chest_pain emergency
صدري يؤلمني → chest_pain emergency
أشعر بضغط في صدري → chest_pain emergency
ضيق في الصدر → chest_pain emergency
قلبي يوجعني → chest_pain emergency
أظن أنها نوبة قلبية → chest_pain emergency
لا أعرف لماذا لكن صدري يؤلمني → chest_pain emergency
كان عندي ألم في صدري لكنه زال → chest_pain same_day
أغمي علي أمس → faint emergency
فقدت الوعي → faint emergency
لا أستطيع التنفس → breathless_at_rest emergency
صعوبة في التنفس → breathless_at_rest emergency
وجهي مائل → stroke_signs emergency
خدر في ذراعي → stroke_signs emergency
لا أستطيع الكلام → stroke_signs emergency
ساقي اليسرى متورمة → leg_swelling same_day
ساقي متورمة وعندي ضيق تنفس → leg_swelling_with_breathlessness emergency
عندي خفقان → palpitations same_day
قلبي يدق بسرعة → palpitations same_day
دوخة مرة أخرى → dizzy same_day
ضيق نفس عند صعود الدرج → breathless_on_usual_tasks same_day
أشعر بدوخة → dizzy stop_rest
عندي غثيان → nausea stop_rest
عرق بارد → cold_sweat stop_rest
لا أريد أن أعيش → despair talk
أريد أن أموت → despair talk
أتقيأ بعد الأكل → eating_worry talk
لا يوجد ألم في الصدر → -
ليس عندي ألم في صدري → -
لا ألم في الصدر → -
بدون دوخة → -
لا دوخة ولا ألم في الصدر → -
لا أشعر بدوخة → -
ألم في الصدر: لا → -
لم أفقد الوعي → -
ما عندي دوخة → -
ليس لدي غثيان → -
لا ألم في الصدر لكن أغمي علي → faint emergency
لا ألم في الصدر ودوخة → dizzy stop_rest ?
في العام الماضي أصبت بنوبة قلبية → chest_pain emergency ?
أمي أصيبت بسكتة دماغية → stroke_signs emergency ?
ماذا لو شعرت بألم في صدري؟ → chest_pain emergency ?
هل ألم الصدر خطير؟ → chest_pain emergency ?
شكرا من كل قلبي → -
الضغط 128/82 → -
أموت من الضحك → -
٨٢٫٤ وطاقة ٧ → -
"""

TABLES = {"en": ENGLISH, "es": SPANISH, "de": GERMAN, "fr": FRENCH, "pl": POLISH, "ar": ARABIC}


Expected = tuple[str, Level, bool]


def rows() -> list[tuple[str, str, Expected | None]]:
    found = []
    for language, table in TABLES.items():
        for line in table.strip().split("\n"):
            typed, _, expected = line.partition(" → ")
            said = expected.split()
            alarm = None if said[0] == "-" else (said[0], Level(said[1]), said[-1] != "?")
            found.append((language, typed, alarm))
    return found


def brief(found: Sighting | None) -> Expected | None:
    return None if found is None else (found.sign, found.level, found.certain)


ROWS = rows()


@pytest.mark.parametrize(("language", "typed", "alarm"), ROWS)
def test_what_a_text_raises(language, typed, alarm):
    assert brief(recognise(typed, words_for(language))) == alarm


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_language_has_alarms_and_denials_enough(language):
    mine = [alarm for code, _, alarm in ROWS if code == language]
    assert len(mine) >= 25
    assert sum(a is None for a in mine) >= 10
    assert sum(a is not None and a[1] is Level.EMERGENCY and a[2] for a in mine) >= 10
    assert any(a is not None and not a[2] for a in mine)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_has_words_for_every_concept_and_every_answer(language):
    words = words_for(language)
    assert [c for c in Concept if not words.concepts.get(c)] == []
    assert [a for a in Answer if not words.answers.get(a)] == []


def spelled(concept: Concept, language: str) -> list[str]:
    phrases = (p.strip() for p in words_for(language).concepts[concept].split(","))
    return [p.replace(" ..", "").replace("*", "") for p in phrases]


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_sign_made_of_the_first_word_of_each_concept_is_heard(language):
    silent = []
    for sign in SIGNS:
        typed = " ".join(spelled(part[0], language)[0] for part in sign.parts)
        if recognise(typed, words_for(language)) is None:
            silent.append(f"{sign.key}: {typed}")
    assert not silent, "\n".join(silent)


@pytest.mark.parametrize("writes_in", LANGUAGES)
@pytest.mark.parametrize("speaks", LANGUAGES)
def test_an_emergency_is_recognised_whatever_language_the_client_has_chosen(writes_in, speaks):
    for language, typed, alarm in ROWS:
        if language == writes_in and alarm is not None and alarm[2] and alarm[1] is Level.EMERGENCY:
            if writes_in not in (speaks, "en") and typed in SLIPS:
                continue  # typos are tolerated in the client's own language and in English
            found = recognise(typed, words_for(speaks))
            assert found is not None, typed
            assert found.level is Level.EMERGENCY, typed


SLIPS = {"me deule el pecho", "Brustschemrzen"}


@pytest.mark.parametrize("speaks", LANGUAGES)
def test_harmless_texts_of_all_languages_raise_nothing(speaks):
    raised = [
        f"{typed}: {found}"
        for language, typed, alarm in ROWS
        if alarm is None and language in (speaks, "en") and (found := recognise(typed, words_for(speaks))) is not None
    ]
    assert not raised, "\n".join(raised)


def test_no_reading_anybody_writes_raises_an_alarm():
    raised = [
        f"{language}: {line}"
        for language, lines in CORPUS.items()
        for line in lines.strip().split("\n")
        if recognise(line.partition(": ")[2].rpartition(" → ")[0], words_for(language)) is not None
    ]
    assert not raised, "\n".join(raised)


@pytest.mark.parametrize("word", ["planting", "painting", "strike", "binding", "chess", "breaststroke", "faithful"])
def test_a_word_that_only_looks_like_a_sign_raises_nothing(word):
    assert recognise(f"I like {word}", words_for("en")) is None


@settings(max_examples=300)
@given(st.text(max_size=300), st.sampled_from(sorted(LANGUAGES)))
@example("no " * 2000 + "chest pain", "en")
@example("chest " * 1500, "en")
@example("፩፪፫፬ chest pain ²²²²", "en")
@example("chest pain " * 400, "en")
@example("pas de douleur, " * 300, "fr")
@example("لا ألم " * 600, "ar")
def test_no_message_breaks_the_recognition(typed, language):
    found = recognise(typed, words_for(language))
    assert found is None or isinstance(found, Sighting)


@pytest.mark.parametrize(
    ("typed", "when", "who", "certain"),
    [
        ("my chest hurts right now", When.NOW, Who.ME, True),
        ("just passed out in the hall", When.JUST_NOW, Who.ME, True),
        ("fainted once as a teenager", When.LONG_AGO, Who.ME, False),
        ("my husband has collapsed on the kitchen floor", When.UNKNOWN, Who.WITH_ME, True),
        ("my sister had a stroke last year", When.LONG_AGO, Who.ELSEWHERE, False),
        ("brother in law is in hospital with chest pain", When.UNKNOWN, Who.ELSEWHERE, False),
        ("what if I get chest pain", When.UNKNOWN, Who.NOBODY, False),
        ("had a stroke when I saw the gas bill", When.UNKNOWN, Who.NOBODY, False),
        ("had a stroke in 2015, and now my chest hurts", When.NOW, Who.ME, True),
    ],
)
def test_when_and_to_whom_it_happens_decides_whether_it_is_sure(typed, when, who, certain):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert (found.when, found.who, found.certain) == (when, who, certain)


@pytest.mark.parametrize(
    ("typed", "level"),
    [
        ("I keep thinking about killing myself", Level.TALK),
        ("I am going to kill myself", Level.EMERGENCY),
        ("I do not want to live any more, the tablets are in front of me", Level.EMERGENCY),
        ("I cut myself again on purpose", Level.EMERGENCY),
        ("what is the point, nothing is ever going to get better", Level.TALK),
        ("I make myself sick after meals", Level.TALK),
    ],
)
def test_thoughts_are_for_a_talk_and_intent_is_an_emergency(typed, level):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert found.level is level


@pytest.mark.parametrize(
    "typed", ["no chest pain but my left arm is numb", "keine Brustschmerzen, aber der linke Arm ist taub"]
)
def test_a_denial_reaches_only_its_own_clause(typed):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert (found.sign, found.certain) == ("stroke_signs", True)


def test_spreading_pain_is_never_said_to_have_gone():
    calm = recognise("chest pain, but it went away when I sat down", words_for("en"))
    spread = recognise("chest pain, it went away from there but is going down my arm", words_for("en"))
    assert calm is not None and calm.level is Level.SAME_DAY
    assert spread is not None and spread.level is Level.EMERGENCY


@pytest.mark.parametrize(
    ("typed", "sign"),
    [
        ("I took 20 tablets", "overdose"),
        ("stung by a wasp and my tongue is swelling", "allergic_reaction"),
        ("my nose will not stop bleeding", "bleeding"),
        ("I have just had a seizure", "seizure"),
        ("please send an ambulance", "call_for_help"),
    ],
)
def test_other_emergencies_are_known_by_name(typed, sign):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert (found.sign, found.level, found.certain) == (sign, Level.EMERGENCY, True)


def test_tablets_taken_as_usual_alarm_nobody():
    assert recognise("took my blood pressure tablets at 8", words_for("en")) is None
    assert recognise("I took 20 mg this morning", words_for("en")) is None


@pytest.mark.parametrize(
    ("typed", "meaning"),
    [
        ("yeah right now", Answer.YES),
        ("it hasn't stopped", Answer.YES),
        ("a bit, comes and goes", Answer.HESITANT),
        ("it's not completely gone", Answer.HESITANT),
        ("no", Answer.NO),
        ("no, it's my husband", Answer.OTHER_PERSON),
        ("it passed when I sat down", Answer.OVER),
        ("I was only joking", Answer.NOT_A_SIGN),
        ("I don't know", None),
        ("what do you mean?", None),
        ("7", None),
    ],
)
def test_an_answer_to_is_it_happening_now(typed, meaning):
    assert answer_to_alarm(typed, words_for("en")) is meaning


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "my hand does what it wants"),
        ("en", "it is like cotton wool in my brain"),
        ("en", "tipped the whole dosette down me"),
        ("en", "in and out of it since breakfast"),
        ("en", "I cannot get to the phone"),
        ("en", "came off the ladder on my back"),
        ("es", "algo va muy mal"),
        ("de", "die beine tragen mich nicht"),
        ("fr", "mes jambes me portent plus"),
        ("pl", "dzieje się ze mną coś złego, coś jest nie tak"),
        ("ar", "مش قادر اوصل للتلفون"),
    ],
)
def test_what_has_no_name_but_goes_wrong_is_asked_about(language, typed):
    found = recognise(typed, words_for(language))
    assert found is not None
    assert (found.level, found.certain) == (Level.EMERGENCY, False)


@pytest.mark.parametrize(
    "typed",
    [
        "my knees are a bit stiff this morning",
        "I slept like a log",
        "my eyesight is sharp as ever, like a hawk",
        "my phone passed out on me",
        "in the film the detective has a stroke",
        "fell down the stairs last week",
        "my face is fine, nothing strange",
        "tired and hungry, off to bed",
        "nearly had a stroke when I saw the gas bill haha",
    ],
)
def test_everyday_talk_is_not_asked_about(typed):
    assert recognise(typed, words_for("en")) is None


def test_a_wide_guess_gives_way_to_a_sign_with_a_name_and_to_its_denial():
    named = recognise("my chest hurts and everything goes dark", words_for("en"))
    assert named is not None and named.sign == "chest_pain"
    assert recognise("no chest pain, it is like a weight on a spring", words_for("en")) is None


@pytest.mark.parametrize(
    ("typed", "sign", "level"),
    [
        ("the carbon monoxide alarm is going and we all feel sick", "carbon_monoxide", Level.EMERGENCY),
        ("temperature 39.8 and my teeth are chattering", "infection", Level.EMERGENCY),
        ("a red streak goes up from my toe", "infection", Level.SAME_DAY),
        ("I skip my insulin to lose weight", "eating_worry", Level.TALK),
        ("a curtain came down over one eye", "stroke_signs", Level.EMERGENCY),
        ("fell off my bike, and I have been sick twice since", "head_injury", Level.EMERGENCY),
        ("my sensor says low", "low_sugar", Level.EMERGENCY),
    ],
)
def test_families_of_signs_are_acted_on(typed, sign, level):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert (found.sign, found.level, found.certain) == (sign, level, True)


def test_help_me_alone_is_asked_about_and_help_with_something_is_not():
    alone = recognise("please help me", words_for("en"))
    assert alone is not None and (alone.sign, alone.certain) == ("call_for_help", False)
    assert recognise("help me change my weekday", words_for("en")) is None
    assert recognise("help", words_for("en")) is None


@pytest.mark.parametrize(
    ("language", "typed"), [("pl", "powiedzmy 4"), ("en", "a day at the beach"), ("de", "antreten")]
)
def test_an_everyday_word_is_no_slip(language, typed):
    assert recognise(typed, words_for(language)) is None


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    "text",
    ["sugar 54", "sugar 540", "heart 190", "took 12 tablets", "took 2 tablets", "82.4 kg", "7", "7/10", "120/80"],
)
def test_a_short_answer_is_read_the_same_whether_or_not_its_words_were_seen_before(language: str, text: str) -> None:
    words = LANGUAGES[language]
    named = [s for s in sightings(text, words) if not s.denied]
    assert (recognise(text, words) is None) == (not named)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("pl", "pokaż wykres od stycznia"),
        ("pl", "zacznę od jutra"),
        ("es", "¿para qué sirve esta prueba?"),
        ("en", "this is bloody stupid"),
    ],
)
def test_an_everyday_remark_raises_nothing(language, text):
    assert recognise(text, words_for(language)) is None


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "poured the chip fat down my arm, skin is coming off"),
        ("en", "everything goes far away and my ears are ringing"),
        ("de", "mir fällt alles aus der hand, das wird immer schlimmer"),
        ("fr", "l'air ne rentre plus, mes lèvres sont bizarres"),
    ],
)
def test_words_that_together_tell_enough_are_heard(language, typed):
    assert recognise(typed, words_for(language)) is not None


@pytest.mark.parametrize(
    "typed",
    ["no blood and no swelling", "does a hand go blue and strange in winter?", "blood and swelling in that film haha"],
)
def test_what_is_denied_asked_or_told_of_a_film_tells_nothing(typed):
    assert recognise(typed, words_for("en")) is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_one_says_to_the_bot_every_day_is_never_asked_about(language):
    words = words_for(language)
    wishes = [
        p for intent, phrases in words.intents.items() if intent not in (Intent.HELP, Intent.NOT_WELL) for p in phrases
    ]
    assert [p for p in wishes if "…" not in p and recognise(p, words) is not None] == []


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "that horror film nearly gave me a heart attack"),
        ("es", "por poco me da un infarto con el partido"),
        ("de", "der Film hat mir fast einen Herzinfarkt beschert"),
        ("fr", "le film a failli me donner une crise cardiaque"),
        ("pl", "o mało nie dostałam zawału na meczu"),
        ("ar", "الماتش كان هيجيبلي جلطة"),
        ("fr", "je suis absente la semaine prochaine"),
        ("es", "¿para qué sirve esto?"),
        ("ar", "رجعت من السفر"),
    ],
)
def test_a_film_a_match_and_everyday_words_raise_no_question(language, typed):
    assert recognise(typed, words_for(language)) is None


@pytest.mark.parametrize(
    "typed",
    [
        "my hand went numb, I slept on it",
        "can't feel my fingers, it's freezing out, no gloves",
        "dizzy from the roller coaster",
        "puffed after the hill, as always",
    ],
)
def test_a_mild_complaint_with_an_everyday_cause_is_asked_about(typed):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert not found.certain


@pytest.mark.parametrize(
    "typed",
    ["the room spins like a roller coaster", "dizzy, and not from the roller coaster", "chest pain in the garden"],
)
def test_what_only_sounds_like_a_cause_explains_nothing(typed):
    found = recognise(typed, words_for("en"))
    assert found is not None
    assert found.certain


def test_somebody_in_my_class_is_not_me():
    assert recognise("a lady in my class has fainted", words_for("en")).who is Who.WITH_ME
    assert recognise("a lady in my class fainted on Tuesday", words_for("en")).who is Who.ELSEWHERE
    assert recognise("I fainted in my class", words_for("en")).who is Who.ME


@pytest.mark.parametrize(
    ("typed", "level"), [("2 weeks, chest pain gone now", Level.SAME_DAY), ("chest gone all tight", Level.EMERGENCY)]
)
def test_gone_calms_only_when_it_is_said_of_the_complaint(typed, level):
    assert recognise(typed, words_for("en")).level is level


def test_an_ambulance_by_itself_is_called_for_and_a_number_by_itself_is_not():
    assert recognise("ambulance please", words_for("en")).sign == "call_for_help"
    assert recognise("Krankenwagen!", words_for("de")).certain
    assert recognise("112", words_for("de")) is None
    assert recognise("une ambulance bloquait la rue", words_for("fr")) is None


def heard(typed: str, language: str):
    return recognise(typed, words_for(language))


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "been in hospital with a stroke"),
        ("en", "after my heart attack i was told to walk"),
        ("es", "estuve en el hospital con un ictus"),
        ("de", "ich war wegen einem schlaganfall im krankenhaus"),
        ("de", "nach meinem herzinfarkt soll ich gehen"),
        ("fr", "j'ai été hospitalisé pour un avc"),
        ("fr", "après mon infarctus on m'a dit de marcher"),
        ("pl", "byłem w szpitalu z udarem"),
        ("ar", "كنت في المستشفى بجلطة"),
    ],
)
def test_a_condition_with_its_own_past_is_asked_about(language, typed):
    found = heard(typed, language)
    assert found is not None
    assert (found.when, found.certain) == (When.LONG_AGO, False)


def test_a_condition_with_a_past_and_now_again_is_acted_on():
    assert heard("after my heart attack in may i was well but now my chest hurts", "en").certain
    assert heard("i think im having a stroke", "en").certain


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "why bother"),
        ("de", "wozu das alles"),
        ("fr", "à quoi bon"),
        ("es", "ya para qué"),
        ("pl", "po co się starać"),
        ("ar", "شو الفايدة"),
    ],
)
def test_a_sigh_is_asked_about_kindly(language, typed):
    found = heard(typed, language)
    assert found is not None
    assert (found.level, found.certain) == (Level.TALK, False)


def test_a_sigh_beside_a_plan_is_an_emergency():
    assert heard("why bother, ive got it all planned", "en").level is Level.EMERGENCY


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "my knee is sore, could we talk?"),
        ("de", "mein knie tut weh, können wir reden?"),
        ("fr", "j'ai mal au genou, on peut parler ?"),
        ("es", "me duele la rodilla, ¿podemos hablar?"),
        ("pl", "boli mnie kolano, możemy porozmawiać?"),
        ("ar", "ركبتي توجعني ممكن نحكي"),
        ("fr", "un peu raide dans le dos après le jardinage"),
        ("en", "puffed after the walk test, all good"),
        ("fr", "le souffle ça va nickel"),
        ("de", "atmen geht prima"),
        ("de", "hab eine doku über herzinfarkte gesehen"),
        ("fr", "quels sont les signes d'un avc, c'est pour mon cours de secouriste"),
        ("de", "umgekippt bin ich nicht keine sorge"),
        ("en", "on my blood thinner same as always"),
        ("fr", "j'avais mal mis deux fois, refait"),
    ],
)
def test_what_is_sore_or_well_or_told_of_raises_nothing(language, typed):
    assert heard(typed, language) is None


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "i was on the sofa passed out"),
        ("en", "got off the bench and fainted"),
        ("de", "bin am tisch zusammengebrochen"),
        ("en", "my calf's hot and red"),
        ("fr", "la trinitrine fait rien, ça brûle toujours derrière le sternum"),
        ("de", "mein mann ist diabetiker und er ist ganz verschwitzt und gibt nur komische antworten"),
    ],
)
def test_a_thing_nearby_a_spray_of_no_use_and_an_s_hide_no_sign(language, typed):
    assert heard(typed, language).certain


def test_fingers_down_the_throat_are_an_eating_worry_not_a_sore_throat():
    found = heard("nach jedem essen steck ich mir den finger in den hals, kann nicht aufhören", "de")
    assert found.sign == "eating_worry"


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("es", "mareada no estuve ni siquiera al pararme rápido"),
        ("pl", "niedocukrzenia nie miałam ani razu w tym tygodniu"),
        ("pl", "duszności nie mam ani na schodach ani leżąc"),
    ],
)
def test_a_denial_in_so_many_words_denies_whatever_follows(language, typed):
    assert heard(typed, language) is None


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("es", "se me durmió el brazo, no noto nada"),
        ("es", "me duele el pecho, no tengo ninguna fuerza"),
        ("pl", "boli mnie klatka, nie mam żadnych sił"),
        ("pl", "świeża krew w stolcu"),
        ("ar", "درت البخاخ والو صدري ضايق"),
    ],
)
def test_what_cannot_be_done_or_does_not_help_denies_no_complaint(language, typed):
    assert heard(typed, language).certain


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("es", "me hierve la sangre con el papeleo"),
        ("es", "purgué los radiadores esta mañana"),
        ("pl", "krew oddana do badania"),
        ("pl", "gulasz się dusi to mam chwilę na ćwiczenia"),
        ("ar", "بكرا سحب دم وانا صايمة"),
        ("ar", "شربت الدوا ديالي فالوقت"),
    ],
)
def test_figures_of_speech_and_errands_are_no_signs(language, typed):
    assert heard(typed, language) is None


@pytest.mark.parametrize(
    "typed",
    [
        "معدل القلب في المساء 70",
        "نبض القلب بعد المشي 88",
        "مشيت المسافة وقلبي 72",
        "قست القلب قبل المشي",
        "لفيت الشريط حول الصدر، المقاس 96",
        "كتفي بعد المشي",
        "ذراعي اليسرى والمقياس",
    ],
)
def test_an_arabic_word_with_the_article_is_no_pain(typed):
    assert recognise(typed, words_for("ar")) is None


@pytest.mark.parametrize("typed", ["ألمٌ في الصدر", "ألمني صدري", "في صدري ألمًا شديدا", "ألمي في الصدر", "بألم في صدري"])
def test_pain_in_its_arabic_forms_is_heard(typed):
    found = recognise(typed, words_for("ar"))
    assert found is not None
    assert (found.sign, found.level) == ("chest_pain", Level.EMERGENCY)


# --- words that are mostly said of something else -----------------------------------------------------------------

SAID_OF_SOMETHING_ELSE = {
    "en": (
        "my new jeans fit well", "the shirt fits now", "spinning class was fun", "I like the violet one",
        "he dropped me at the station", "70 odd kilos", "we were beaten 3-0", "jade earrings",
        "hurling match on Sunday",
        "I painted the fence", "my phone number has changed", "a snake of cars down to the roundabout",
        "the odd biscuit", "bright flashes of colour in the garden", "the pupils at my school",
    ),
    "es": (
        "mi sofá es morado", "es propiedad privada", "tengo que devolver el libro a la biblioteca",
        "hay un pozo en el pueblo", "pasamos por el túnel", "se me derramó la leche", "arroja la basura",
        "durante el trabajo", "mañana tengo partido", "el extranjero de la esquina", "compré tomates",
    ),
    "de": (
        "meine Tochter ist schwanger, die Schwangere strahlt", "ich habe ein Loch im Socken",
        "die Kalorien zähle ich nicht",
        "die Pumpe vom Rad ist kaputt",
        "ich habe das Paket übergeben", "die Sackgasse am Ende der Straße",
        "das Gleichgewicht üben wir am Montag", "der Aufzug drehte um", "mir ist noch was eingefallen",
        "die Beamten am Schalter", "die Pferdehufe klappern, nur Hufe", "ein violetter Pulli",
    ),
    "fr": (
        "j'ai acheté un pull bleu", "la carte bleue", "le ciel est bleu", "je porte une veste violette",
        "j'ai rendu le livre", "le tirage du loto", "flash info", "le maréchal", "je vais souffler les bougies",
        "je devais préparer la vidéo", "la couverture est chaude", "les machines de la salle", "le sapin est décoré",
    ),
    "pl": (
        "zwróciłam książkę do biblioteki", "zwróć uwagę na buty", "muszę odpocząć", "co powiesz?",
        "powiedzą mi jutro", "odebrać paczkę", "gwiazdki na choinkę", "podwójnie się cieszę", "odleciał samolot",
        "puste pudełka", "szukam zatrudnienia", "w kalendarzu mam piątek", "zawaliłam sprawę", "była straszna ulewa",
    ),
    "ar": (
        "القطار تأخر", "لون أزرق", "راجع من السوق", "بشرة ناعمة", "الهبوط بالطائرة", "فصلت الكهرباء", "عمي جاء",
        "السوق ضيقة", "إلياس ابني", "أنا تعبان شوية من الشغل", "انا بجوع بسرعة هالايام",
        "خصري نقص ٣ سم بعد ما اكلت صحي", "حزام الصدر بتاع النبض مش بيشتغل", "وزني مش بيتحرك من اسبوع",
        "لبست حزام النبض على صدري ومشيت", "كبيت مية ساقعة على راسي بعد التمرين", "حلقت دقني بالشفرة",
        "المدربة ما بترد على الرسايل", "تشنج في سمانتي بعد الجري وراح", "اكلت سلطة وبطلت سكر في الشاي",
        "هبات سخونة ديال سن اليأس كالعادة", "عينيا وارمة من النوم", "ما بعرف احكي تركي", "النمل وصل لرجلي في الحديقة",
        "الهدوم مرمية في كل مكان", "دكتور القلب قال كله تمام", "مش قادرة اكمل السكوات العشرة", "كلامي خط احمر يا جماعة",
        "بتموت في المسلسلات التركية", "خشمي مسكر من الزكام", "نشرت الغسيل على السطح", "ركبت القطار ومشيت للنادي",
        "فزعة الشباب بنقل العفش", "النبض ١١٠ ونزل بسرعة", "اخدت كل الحبوب المكتوبة في وقتها", "الحقيني بوصفة الكنافة",
    ),
}  # fmt: skip

SAID_OF_THE_BODY = {
    "en": (
        "my lips are blue",
        "he dropped to the floor and does not answer",
        "she is having a fit",
        "a snake bit my leg",
    ),
    "es": ("tiene los labios morados", "no paro de devolver", "quiero desaparecer", "un derrame cerebral"),
    "de": ("ich muss mich übergeben", "bin blind auf einem auge, ganz plötzlich", "solche angst zu sterben"),
    "fr": ("mes lèvres sont bleues", "j'ai tout rendu, deux fois", "je suis devenue aveugle d'un coup"),
    "pl": ("sine usta", "chcę odebrać sobie życie", "zwracam od rana"),
    "ar": (
        "شفايفي زرقا", "حاسس بضيقة نفس", "عضني كلب في رجلي", "خط احمر طالع في دراعي من الجرح",
        "سدري كيوجعني بزاف", "رجلي ويدي ماتو عليا", "النفس ما عم يوصل", "كنجرح فخادي بالعاني", "مالي سبب اعيش",
        "قلبي كيسكت ويرجع", "زلاعمي تنفخو وما كنقدرش نسرط", "فقدت القدرة على الكلام فجأة", "واقف على السطح وهرمي نفسي",
        "عيطو للبومبية", "زوجي وقع ومش بيفوق", "خدت الانسولين وما اكلت",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("language", "text"), [(k, t) for k, ts in SAID_OF_SOMETHING_ELSE.items() for t in ts])
def test_a_word_that_is_mostly_said_of_something_else_is_no_sign(language: str, text: str) -> None:
    assert recognise(text, words_for(language)) is None


@pytest.mark.parametrize(("language", "text"), [(k, t) for k, ts in SAID_OF_THE_BODY.items() for t in ts])
def test_the_same_word_beside_the_body_is_one(language: str, text: str) -> None:
    assert recognise(text, words_for(language)) is not None


@pytest.mark.parametrize("language", LANGUAGES)
def test_an_everyday_word_is_no_slip_and_no_beginning_of_a_word_of_danger(language: str) -> None:
    words = words_for(language)
    table = compiled(words.concepts, words)
    spelled = {stem: text for text, stem in table.exact.items()}
    for word in words.literal_words:
        if "*" not in word:
            found = [spelled[stem] for stem in known(word, table, True)]
            assert all("*" not in text for text in found), (word, found)


# --- how much it takes to act -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "text",
    [
        "chest pain", "my chest hurts", "I passed out", "palpitations since yesterday", "worst headache of my life",
        "my calf's hot and red", "I think im having a stroke", "it is happening now, my arm tingles",
    ],
)  # fmt: skip
def test_a_sign_said_and_nothing_else_or_said_to_be_now_is_acted_on(text: str) -> None:
    assert heard(text, "en").certain


@pytest.mark.parametrize(
    "text",
    [
        "bp cuff makes my arm tingle when it squeezes, normal isn't it",
        "my trainer makes the room go dizzy with numbers",
    ],
)
def test_one_word_among_much_else_is_asked_about_first(text: str) -> None:
    assert not heard(text, "en").certain


@pytest.mark.parametrize(
    ("language", "text", "low"),
    [
        ("de", "der sensor piept dauernd 2,3 mmol", True),
        ("en", "meter says 3.1 mmol", True),
        ("en", "6.4 mmol before breakfast", False),
    ],
)  # fmt: skip
def test_a_low_figure_in_mmol_is_sugar_without_the_word(language: str, text: str, low: bool) -> None:
    found = recognise(text, words_for(language))
    assert (found is not None and found.sign == "low_sugar") is low


def test_a_heart_far_too_fast_at_rest_is_heard_with_no_other_complaint() -> None:
    assert heard("pulse 164 at rest, lying on the sofa for an hour", "en").sign == "palpitations"


# --- what clients say every week ----------------------------------------------------------------------------------

EVERY_WEEK = {
    "en": (
        "legs are tired today", "a bit stiff today", "out of breath after the walk but fine",
        "slept badly, bit of a headache", "bad back this week", "new tablets since Monday", "I have a cold",
        "period pain this week", "stomach ache after lunch", "hungover, sorry", "my shoulder hurts when I lift it",
        "my feet hurt from the new shoes", "feeling low this week", "stressed at work",
        "couldn't be bothered this week", "I'm worn out", "hip pain again after sitting",
        "weight is up, I'm annoyed with myself", "I feel fat", "ate too much at the weekend", "skipped two sessions",
        "my watch died", "cuff too tight", "can't find my tape", "what's the point of the tape",
        "I hate these tests",
    ),
    "de": (
        "beine sind heute müde", "bisschen steif heute", "schlecht geschlafen, leichte kopfschmerzen",
        "rücken zwickt diese woche", "neue tabletten seit montag", "bin erkältet", "schulter tut beim heben weh",
        "stress in der arbeit", "ich bin platt", "fühl mich dick", "zu viel gegessen am wochenende",
        "manschette zu eng", "finde das maßband nicht",
    ),
    "fr": (
        "jambes fatiguées aujourd'hui", "un peu raide", "mal dormi, petit mal de tête", "mal de dos cette semaine",
        "nouveaux comprimés depuis lundi", "j'ai un rhume", "stressée au travail", "je me sens grosse",
        "trop mangé ce week-end", "brassard trop serré", "je ne trouve pas le mètre",
    ),
    "es": (
        "piernas cansadas hoy", "un poco rígida", "dolor de espalda esta semana", "pastillas nuevas desde el lunes",
        "estoy resfriada", "estresada en el trabajo", "me siento gorda", "comí demasiado el finde",
        "manguito muy apretado",
    ),
    "pl": (
        "nogi zmęczone dzisiaj", "trochę sztywna", "źle spałam, lekki ból głowy", "plecy bolą w tym tygodniu",
        "nowe tabletki od poniedziałku", "jestem przeziębiona", "stres w pracy", "czuję się gruba",
        "za dużo zjadłam w weekend",
    ),
    "ar": (
        "رجولي تعبانة اليوم", "نمت وحش وصداع خفيف", "ضهري بيوجعني الاسبوع ده", "حبوب جديدة من الاتنين", "عندي برد",
        "ضغط شغل", "حاسة اني تخينة", "اكلت كتير بالويكند",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("language", "text"), [(k, t) for k, ts in EVERY_WEEK.items() for t in ts])
def test_a_tired_leg_a_bad_night_or_feeling_fat_is_not_asked_about(language: str, text: str) -> None:
    assert recognise(text, words_for(language)) is None
