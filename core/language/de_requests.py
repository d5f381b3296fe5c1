"""German: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.EXPORT: (
        "export*|exportier*|csv|fhir|tabelle|herunterladen|rohdaten",
        "alle|die & werte|daten|messwerte|zahlen",
    ),
    Request.PAGE: ("seite|druck*|ausdruck*|pdf|bericht|blatt",),
    Request.PICTURE: ("bild*|kurve*|diagramm*|grafik*|verlauf*|zeichn*",),
    Request.PLAN: ("plan|programm|messplan|messungen",),
    Request.NOTE: ("notiz|notizen",),
    Request.HISTORY: ("vorgeschichte|geschichte|fruher|alarme|hinweise",),
    Request.CARD: (
        "zeig|zeige|zeigen|offne|offnen|karte|schau*|wie_geht_es|wie_gehts|wie_steht_es|was_macht|was_ist_mit|finde|suche",
    ),
    Request.WRITE: (
        "^schreib|^schreibe|^schreiben|^sag|^sage|^frag|^frage|^antworte|^sende|^schick|^schicke|^nachricht_an",
    ),
    Request.THREAD: ("nachrichten|unterhaltung|chat|geschrieben|gesagt|schreibt", "was & sagt|meint"),
    Request.STAND_IN: (
        "vertritt|vertretung|vertreter|vertreterin|vertreten",
        "ich_bin|ich_habe|ich_gehe|bin_ich & weg|urlaub|ferien|abwesend|verreist",
    ),
    Request.INVITE: (
        "einladen|lade|einladung|neue|neuen|neuer & person|klient*|kunde*|kundin|jemand*|link|einladen|einladung",
    ),
    Request.REPORT: ("bericht & praxis|quartal*|arbeitgeber*", "quartalsbericht|praxisbericht"),
    Request.NEEDS_ME: (
        "wer|jemand|irgendwer|ist_etwas|gibt_es & braucht_mich|mich_braucht|dringend*|wartet|braucht_hilfe|"
        "mich_brauchen|hilfe_braucht|braucht_jemanden",
        "was_gibt_es_neues|was_ist_neu|gibt_es_neues|etwas_neues",
    ),
    Request.CASELOAD: (
        "^meine_klienten|^meine_leute|^meine_kunden|^alle_klienten|^alle|^meine_liste|^liste",
        "zeig*|liste|wer_sind & klienten|leute|kunden|alle|liste|personen",
    ),
    Request.WEEK: (
        "^diese_woche|^die_woche|^meine_woche|wochenbericht|uberblick|ubersicht",
        "wie_war|zeig* & woche|montag",
    ),
}
