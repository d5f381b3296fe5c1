"""Only an unmistakable sentence counts as a destructive request: even the question before deleting is alarming."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES, Intent, words_for
from core.language.intents import intent_of
from tests.corpus.meant import destructive

HARMLESS = {
    "en": "forgot; i forgot; sorry, forgot; don't forget me; dont forget me on monday; forget it; leave weight out;"
    " leave the weight out today; left my scales at home; leave; forget; i do not want to delete my data;"
    " what happens if I delete my data?; delete the last number; remove my weight from today; lose my data?;"
    " my husband deleted all my photos; I want to leave the house; never delete my account please",
    "es": "olvidé; se me olvidó; no te olvides de mí; olvídalo; deja fuera el peso; dejé la báscula en casa; baja;"
    " no quiero borrar mis datos; ¿qué pasa si borro mis datos?; borra el último número; quiero salir de casa",
    "de": "vergessen; hab ich vergessen; vergiss mich nicht; vergiss es; lass das gewicht weg; lösch die letzte zahl;"
    " ich will meine daten nicht löschen; lösche meine daten bitte nicht; was passiert, wenn ich alles lösche?;"
    " ich verlasse das haus",
    "fr": "oublié; j'ai oublié; ne m'oublie pas; oublie ça; laisse le poids de côté; efface le dernier chiffre;"
    " je ne veux pas effacer mes données; n'efface pas mes données; que se passe-t-il si j'efface mes données?;"
    " je pars demain",
    "pl": "zapomniałam; zapomniałem; nie zapomnij o mnie; zapomnij o tym; pomiń wagę; usuń ostatnią liczbę;"
    " nie chcę usuwać moich danych; co się stanie, jeśli usunę moje dane?; wychodzę z domu",
    "ar": "نسيت; لا تنساني; انس الموضوع; اترك الوزن; احذف آخر رقم; لا أريد حذف بياناتي; ماذا يحدث إذا حذفت بياناتي؟;"
    " سأغادر البيت",
}
MEANT = {
    "en": ("please delete all my data", "I want to leave the programme"),
    "es": ("borra todos mis datos por favor", "quiero salir del programa"),
    "de": ("bitte lösche alle meine Daten", "ich möchte aus dem Programm aussteigen"),
    "fr": ("efface toutes mes données s'il te plaît", "je veux quitter le programme"),
    "pl": ("usuń proszę wszystkie moje dane", "chcę zrezygnować z programu"),
    "ar": ("احذف كل بياناتي من فضلك", "أريد الانسحاب من البرنامج"),
}


@pytest.mark.parametrize("language", LANGUAGES)
def test_everyday_words_end_nothing(language: str) -> None:
    words = words_for(language)
    said = [s.strip() for s in HARMLESS[language].split(";")]
    assert [s for s in said if intent_of(s, words) in (Intent.FORGET, Intent.LEAVE)] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_an_unmistakable_sentence_is_understood(language: str) -> None:
    words = words_for(language)
    assert [intent_of(s, words) for s in MEANT[language]] == [Intent.FORGET, Intent.LEAVE]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("half", ["tune", "held"])
def test_no_harmless_sentence_of_strangers_ends_anything(language: str, half: str) -> None:
    score = destructive(language, half)
    assert score.counts["harmless"] == score.right["harmless"] > 10
    meant = [kind for kind in score.counts if kind != "harmless"]
    assert sum(score.right[k] for k in meant) * 2 >= sum(score.counts[k] for k in meant)
