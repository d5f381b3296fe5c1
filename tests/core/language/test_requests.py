"""What a coach asks for in plain words, in six languages."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES
from core.language.lexicon import Request
from core.language.requests import OF_NOBODY, requests_in

ASKED: dict[str, dict[Request, tuple[str, ...]]] = {
    "en": {
        Request.EXPORT: ("export Ada", "Ada as csv", "all the readings of Ada", "please export Ada's data"),
        Request.PAGE: ("page of Ada", "print Ada", "Ada as a PDF"),
        Request.PICTURE: ("picture of Ada's waist", "draw me Ada's chart", "Ada's curve"),
        Request.PLAN: ("Ada's plan", "show me Ada's plan"),
        Request.NOTE: ("note on Ada", "show the notes on Ada"),
        Request.HISTORY: ("Ada's history", "show Ada's past flags"),
        Request.CARD: ("show me Ada", "how is Ada", "How's Ada doing?", "tell me about Ada", "open Ada's card"),
        Request.WRITE: ("write to Ada", "tell Ada I'll call", "send Ada a message"),
        Request.THREAD: ("what did Ada say?", "my conversation with Ada"),
        Request.STAND_IN: ("who stands in for me?", "my deputy", "I am away next week", "I'll be on holiday"),
        Request.INVITE: ("invite somebody", "I have a new client", "add a client"),
        Request.REPORT: ("practice report", "the report of last quarter"),
        Request.NEEDS_ME: (
            "who needs me",
            "Who needs me today?",
            "is anybody waiting?",
            "anything urgent?",
            "what's new",
        ),
        Request.CASELOAD: ("my clients", "show me everybody", "list my clients"),
        Request.WEEK: ("this week", "how was the week?", "my digest"),
    },
    "de": {
        Request.EXPORT: ("Ada exportieren", "exportiere Ada", "Ada als CSV", "alle Werte von Ada"),
        Request.PAGE: ("Seite von Ada", "Ada drucken", "Ada ausdrucken bitte"),
        Request.PICTURE: ("Bild von Adas Taille", "Adas Kurve", "Adas Verlauf", "Verlauf von Ada als Bild"),
        Request.PLAN: ("Adas Plan",),
        Request.NOTE: ("Notiz zu Ada",),
        Request.HISTORY: ("Vorgeschichte von Ada", "Adas frühere Alarme", "Hinweise zu Ada"),
        Request.CARD: ("zeig mir Ada", "Wie geht es Ada?", "was ist mit Ada", "öffne Ada"),
        Request.WRITE: ("schreib Ada", "Sag Ada, dass ich anrufe"),
        Request.THREAD: ("Nachrichten von Ada", "was sagt Ada", "Was hat Ada geschrieben?"),
        Request.STAND_IN: ("wer vertritt mich?", "meine Vertretung", "ich bin im Urlaub"),
        Request.INVITE: ("jemanden einladen", "neue Klientin"),
        Request.REPORT: ("Bericht über das Quartal", "Quartalsbericht"),
        Request.NEEDS_ME: ("wer braucht mich", "Wer braucht mich heute?", "ist etwas dringend?", "was gibt es Neues"),
        Request.CASELOAD: ("meine Klienten", "zeig mir alle", "Liste"),
        Request.WEEK: ("diese Woche", "wie war die Woche?", "Überblick"),
    },
    "es": {
        Request.EXPORT: ("exporta Ada", "exportar a Ada", "Ada en CSV", "todos los datos de Ada"),
        Request.PAGE: ("página de Ada", "imprime a Ada"),
        Request.PICTURE: ("gráfico de la cintura de Ada", "la curva de Ada"),
        Request.PLAN: ("el plan de Ada",),
        Request.NOTE: ("nota sobre Ada",),
        Request.HISTORY: ("historial de Ada",),
        Request.CARD: ("muéstrame a Ada", "¿Cómo está Ada?", "ver a Ada", "la ficha de Ada"),
        Request.WRITE: ("escribe a Ada", "dile a Ada que la llamo"),
        Request.THREAD: ("mensajes de Ada", "¿qué dijo Ada?"),
        Request.STAND_IN: ("¿quién me suple?", "mi suplente", "estoy de vacaciones"),
        Request.INVITE: ("invitar a alguien", "nuevo cliente"),
        Request.REPORT: ("informe trimestral", "el informe del trimestre"),
        Request.NEEDS_ME: ("quién me necesita", "¿Hay algo urgente?", "¿alguien espera?", "¿qué hay de nuevo?"),
        Request.CASELOAD: ("mis clientes", "ver la lista", "muéstrame todos"),
        Request.WEEK: ("esta semana", "¿cómo fue la semana?", "resumen"),
    },
    "fr": {
        Request.EXPORT: ("exporte Ada", "exporter Ada", "Ada en CSV", "toutes les données d'Ada"),
        Request.PAGE: ("page d'Ada", "imprimer Ada"),
        Request.PICTURE: ("courbe d'Ada", "le graphique du tour de taille d'Ada"),
        Request.PLAN: ("le plan d'Ada",),
        Request.NOTE: ("note sur Ada",),
        Request.HISTORY: ("l'historique d'Ada",),
        Request.CARD: ("montre-moi Ada", "comment va Ada ?", "voir Ada", "la fiche d'Ada"),
        Request.WRITE: ("écris à Ada", "dis à Ada que j'appelle"),
        Request.THREAD: ("messages d'Ada", "qu'a dit Ada ?"),
        Request.STAND_IN: ("qui me remplace ?", "mon remplaçant", "je suis en vacances"),
        Request.INVITE: ("inviter quelqu'un", "nouvelle cliente"),
        Request.REPORT: ("rapport du trimestre", "bilan pour l'employeur"),
        Request.NEEDS_ME: ("qui a besoin de moi", "Qui a besoin de moi ?", "quelque chose d'urgent ? qui attend ?"),
        Request.CASELOAD: ("mes clients", "voir la liste", "montre-moi tous"),
        Request.WEEK: ("cette semaine", "comment était la semaine ?", "résumé"),
    },
    "pl": {
        Request.EXPORT: ("eksport Ady", "eksportuj Adę", "Ada jako CSV", "wszystkie dane Ady"),
        Request.PAGE: ("strona Ady", "wydrukuj Adę"),
        Request.PICTURE: ("wykres Ady", "obraz talii Ady"),
        Request.PLAN: ("plan Ady",),
        Request.NOTE: ("notatka o Adzie",),
        Request.HISTORY: ("historia Ady",),
        Request.CARD: ("pokaż Adę", "co u Ady?", "jak się ma Ada?", "karta Ady"),
        Request.WRITE: ("napisz do Ady", "powiedz Adzie, że zadzwonię"),
        Request.THREAD: ("wiadomości od Ady", "co mówi Ada?"),
        Request.STAND_IN: ("kto mnie zastępuje?", "moje zastępstwo", "jestem na urlopie"),
        Request.INVITE: ("zaproś kogoś", "nowa osoba klient"),
        Request.REPORT: ("raport za kwartał",),
        Request.NEEDS_ME: ("kto mnie potrzebuje", "czy ktoś czeka?", "co nowego?"),
        Request.CASELOAD: ("moi klienci", "pokaż wszystkich", "lista"),
        Request.WEEK: ("ten tydzień", "jak minął tydzień?", "podsumowanie"),
    },
    "ar": {
        Request.EXPORT: ("تصدير آدا", "آدا csv", "كل بيانات آدا"),
        Request.PAGE: ("صفحة آدا", "اطبع آدا"),
        Request.PICTURE: ("رسم خصر آدا", "صورة آدا"),
        Request.PLAN: ("خطة آدا",),
        Request.NOTE: ("ملاحظة عن آدا",),
        Request.HISTORY: ("سجل آدا",),
        Request.CARD: ("اعرض آدا", "كيف حال آدا؟", "بطاقة آدا"),
        Request.WRITE: ("اكتب إلى آدا", "قل لآدا إنني سأتصل"),
        Request.THREAD: ("رسائل آدا", "ماذا قالت آدا؟"),
        Request.STAND_IN: ("من يحل محلي؟", "أنا في إجازة"),
        Request.INVITE: ("دعوة شخص جديد",),
        Request.REPORT: ("تقرير ربع السنة",),
        Request.NEEDS_ME: ("من يحتاجني", "هل هناك شيء عاجل؟", "ما الجديد؟"),
        Request.CASELOAD: ("المتدربون", "اعرض القائمة"),
        Request.WEEK: ("هذا الأسبوع", "كيف كان الأسبوع؟", "ملخص"),
    },
}
CASES = [
    pytest.param(language, text, request, id=f"{language}-{text}")
    for language, requests in ASKED.items()
    for request, texts in requests.items()
    for text in texts
]


@pytest.mark.parametrize(("language", "text", "request_"), CASES)
def test_what_a_coach_asks_for_is_understood(language: str, text: str, request_: Request) -> None:
    named = request_ not in OF_NOBODY
    found = [one for one in requests_in(text, LANGUAGES[language]) if (one not in OF_NOBODY) is named]
    assert found[:1] == [request_], found


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_request_is_understood_in_every_language(language: str) -> None:
    assert set(ASKED[language]) == set(LANGUAGES[language].requests) == set(Request)


@pytest.mark.parametrize(
    "text",
    [
        "Ada, show me your waist",
        "Ada: how is your plan going",
        "It was a good week all in all for everybody who came along",
        "Well done",
        "",
    ],
)
def test_words_for_somebody_ask_for_nothing(text: str) -> None:
    assert requests_in(text, LANGUAGES["en"]) == ()
