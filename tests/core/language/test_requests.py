"""What a coach asks for in plain words, in six languages."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES
from core.language.lexicon import Request
from core.language.requests import OF_A_MEASURE, OF_NOBODY, requests_in
from core.understanding.answers_in_text import names_in

ASKED: dict[str, dict[Request, tuple[str, ...]]] = {
    "en": {
        Request.BASELINE: ("new baseline for Ada",),
        Request.RENAME: ("rename Ada",),
        Request.CORRECT: (
            "delete Ada's last reading",
            "fix Ada's number",
        ),
        Request.ADD: (
            "add blood pressure for Ada",
            "please add waist for Ada",
        ),
        Request.DROP: (
            "take weight off Ada's plan",
            "no more waist for Ada",
        ),
        Request.PRIVATE: (
            "Ada shouldn't see her weight",
            "hide Ada's numbers",
        ),
        Request.DAY: (
            "change Ada's day to friday",
            "move Ada to Tuesdays",
        ),
        Request.PAUSE: (
            "pause Ada",
            "Ada needs a break",
        ),
        Request.HAND_OVER: (
            "hand Ada over to Sam",
            "transfer Ada",
        ),
        Request.END: (
            "stop the programme for Ada",
            "delete Ada",
        ),
        Request.DONE: (
            "done with Ada",
            "I rang Ada",
        ),
        Request.LAST: ("how much does Ada weigh",),
        Request.ABOUT: (
            "why is Ada flagged",
            "is 88 kg good for Ada",
        ),
        Request.DONE_THEM: (
            "I rang her, all fine",
            "spoke to him",
        ),
        Request.DIGEST_DAY: (
            "digest on fridays please",
            "the digest every Tuesday",
        ),
        Request.QUIET: (
            "mute",
            "too many messages",
        ),
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
        Request.BASELINE: ("neuer Ausgangswert für Ada",),
        Request.RENAME: ("Ada umbenennen",),
        Request.CORRECT: (
            "lösche Adas letzten Wert",
            "Ada hat sich vertippt",
        ),
        Request.ADD: ("nimm Blutdruck bei Ada dazu",),
        Request.DROP: ("nimm das Gewicht bei Ada raus",),
        Request.PRIVATE: ("Ada soll ihr Gewicht nicht sehen",),
        Request.DAY: (
            "ändere Adas Tag auf Freitag",
            "verschieb Ada auf Dienstag",
        ),
        Request.PAUSE: ("Ada macht Pause",),
        Request.HAND_OVER: ("Ada übergeben",),
        Request.END: (
            "Ada löschen",
            "beende das Programm von Ada",
        ),
        Request.DONE: (
            "Ada erledigt",
            "ich habe Ada angerufen",
        ),
        Request.LAST: ("wie viel wiegt Ada",),
        Request.ABOUT: ("warum ist Ada markiert",),
        Request.DONE_THEM: ("ich habe sie angerufen",),
        Request.DIGEST_DAY: ("Übersicht bitte freitags",),
        Request.QUIET: (
            "stumm",
            "zu viele Nachrichten",
        ),
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
        Request.BASELINE: ("nuevo inicio para Ada",),
        Request.RENAME: ("renombra a Ada",),
        Request.CORRECT: ("corrige el último dato de Ada",),
        Request.ADD: ("añade la tensión a Ada",),
        Request.DROP: ("quita el peso a Ada",),
        Request.PRIVATE: ("que Ada no vea su peso",),
        Request.DAY: ("cambia el día de Ada al viernes",),
        Request.PAUSE: ("pausa para Ada",),
        Request.HAND_OVER: ("traspasa a Ada",),
        Request.END: (
            "borra a Ada",
            "termina con Ada",
        ),
        Request.DONE: ("llamé a Ada",),
        Request.LAST: ("cuánto pesa Ada",),
        Request.ABOUT: ("por qué está marcada Ada",),
        Request.DONE_THEM: ("ya la llamé",),
        Request.DIGEST_DAY: ("resumen los viernes",),
        Request.QUIET: (
            "silencio",
            "demasiados mensajes",
        ),
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
        Request.BASELINE: ("nouveau départ pour Ada",),
        Request.RENAME: ("renomme Ada",),
        Request.CORRECT: ("corrige la dernière valeur d'Ada",),
        Request.ADD: ("ajoute la tension pour Ada",),
        Request.DROP: ("enlève le poids pour Ada",),
        Request.PRIVATE: ("Ada ne doit pas voir son poids",),
        Request.DAY: ("change le jour d'Ada à vendredi",),
        Request.PAUSE: ("pause pour Ada",),
        Request.HAND_OVER: ("confie Ada à Sam",),
        Request.END: (
            "supprime Ada",
            "arrête le programme d'Ada",
        ),
        Request.DONE: ("j'ai appelé Ada",),
        Request.LAST: ("combien pèse Ada",),
        Request.ABOUT: ("pourquoi Ada est signalée",),
        Request.DONE_THEM: (
            "je l'ai appelée",
            "je lui ai parlé",
        ),
        Request.DIGEST_DAY: ("le résumé le vendredi",),
        Request.QUIET: (
            "silence",
            "trop de messages",
        ),
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
        Request.BASELINE: ("nowy start dla Ady",),
        Request.RENAME: ("przemianuj Adę",),
        Request.CORRECT: ("popraw ostatni pomiar Ady",),
        Request.ADD: ("dodaj ciśnienie Adzie",),
        Request.DROP: ("wyrzuć wagę u Ady",),
        Request.PRIVATE: ("Ada nie powinna widzieć wagi",),
        Request.DAY: ("zmień dzień Ady na piątek",),
        Request.PAUSE: ("przerwa dla Ady",),
        Request.HAND_OVER: ("oddaj Adę",),
        Request.END: (
            "usuń Adę",
            "zakończ program Ady",
        ),
        Request.DONE: ("dzwoniłam do Ady",),
        Request.LAST: ("ile waży Ada",),
        Request.ABOUT: ("dlaczego Ada jest oznaczona",),
        Request.DONE_THEM: ("dzwoniłam do niej",),
        Request.DIGEST_DAY: ("podsumowanie w piątki",),
        Request.QUIET: (
            "wycisz",
            "za dużo wiadomości",
        ),
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
        Request.BASELINE: ("بداية جديدة آدا",),
        Request.RENAME: ("أعد تسمية آدا",),
        Request.CORRECT: ("صحح آخر قراءة آدا",),
        Request.ADD: ("أضف ضغط الدم آدا",),
        Request.DROP: ("أزل الوزن من خطة آدا",),
        Request.PRIVATE: ("آدا لا ترى وزنها",),
        Request.DAY: ("غير يوم آدا إلى الجمعة",),
        Request.PAUSE: ("استراحة آدا",),
        Request.HAND_OVER: ("سلم آدا",),
        Request.END: ("احذف آدا",),
        Request.DONE: ("اتصلت بآدا",),
        Request.LAST: ("كم وزن آدا",),
        Request.ABOUT: ("لماذا آدا",),
        Request.DONE_THEM: ("اتصلت بها",),
        Request.DIGEST_DAY: ("ملخص يوم الجمعة",),
        Request.QUIET: ("كتم",),
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
    words = LANGUAGES[language]
    found = [one for one in requests_in(text, words) if (one not in OF_NOBODY) is named]
    if not names_in(text, words):
        found = [one for one in found if one not in OF_A_MEASURE]
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
