"""German: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.CORRECT: (
        "tippfehler|vertippt|verschrieben",
        "losch*|entfern*|korrigier*|ander*|andere & wert|werte|messung|zahl|eintrag|letzte*",
    ),
    Request.ADD: (
        "fuge|nimm|setze|fug & hinzu|dazu|auf|drauf",
        "hinzufugen|zusatzlich|auch_messen|dazunehmen|^messe_auch|^mehr",
    ),
    Request.DROP: (
        "nimm|lass & raus|weg|heraus|aus",
        "^entferne|^streiche|^ohne|^keine|^kein|nicht_mehr_messen|nicht_mehr_fragen|weglassen|streichen|"
        "rausnehmen|entfernen",
    ),
    Request.PRIVATE: (
        "nicht_sehen|nicht_zeigen|verbergen|ausblenden|verstecken|versteck|nicht_wissen|soll & nicht & sehen|erfahren",
    ),
    Request.DAY: (
        "ander*|wechs*|verschieb*|verleg*|stell*|neuer|leg* & tag|termin|uhrzeit|check_in|montag*|dienstag*|"
        "mittwoch*|donnerstag*|freitag*|samstag*|sonntag*",
        "kann|mochte|lieber|will & montag*|dienstag*|mittwoch*|donnerstag*|freitag*|samstag*|sonntag*",
    ),
    Request.PAUSE: ("pause|pausier*|pausieren|im_urlaub|verreist|im_krankenhaus|aussetzen",),
    Request.HAND_OVER: ("ubergib|ubergeben|ubergabe|abgeben|ubernimmt|uberweis*",),
    Request.BASELINE: ("neuer_start|neuer_anfang|neuer_ausgangswert|neu_anfangen|ausgangswert",),
    Request.RENAME: ("umbenennen|spitzname|benenne",),
    Request.END: (
        "losch*|^entferne|^beende|beenden|^stopp|^stoppe|aufhoren|^abmelden|abmelden|ausscheiden|hat_aufgehort|"
        "hort_auf|kommt_nicht_mehr",
        "verstorben|gestorben|ist_tot",
    ),
    Request.DONE: (
        "erledigt|angerufen|telefoniert|gesprochen|geklart|gekummert|besucht|abgehakt",
        "hinweis*|alarm* & schliess*|abhaken|weg",
    ),
    Request.EXPORT: (
        "export*|exportier*|csv|fhir|tabelle|herunterladen|rohdaten",
        "alle|die & werte|daten|messwerte|zahlen",
    ),
    Request.PAGE: ("seite|druck*|ausdruck*|pdf|bericht|blatt",),
    Request.PICTURE: ("bild*|kurve*|diagramm*|grafik*|verlauf*|zeichn*",),
    Request.PLAN: (
        "plan|programm|messplan|messungen",
        "taglich|jeden_tag|ofter & wiegen|wiegt|gewogen",
    ),
    Request.NOTE: (
        "notiz|notizen",
        "^notiz|^notizen|^notiere|^notier|^merke|^vermerk|^anmerkung",
    ),
    Request.HISTORY: ("vorgeschichte|geschichte|fruher|alarme|hinweise",),
    Request.CARD: (
        "zeig|zeige|zeigen|offne|offnen|karte|schau*|wie_geht_es|wie_gehts|wie_steht_es|was_macht|was_ist_mit|"
        "finde|suche",
    ),
    Request.WRITE: (
        "^schreib|^schreibe|^schreiben|^sag|^sage|^frag|^frage|^antworte|^sende|^schick|^schicke|^nachricht_an",
        "^erinnere|^erinner|^bitte_sag|^bitte_schreib",
        "^kannst_du & sagen|schreiben|fragen|erinnern|ausrichten",
        "^bitte_sage|^richte|^gib|^lass & bescheid|wissen|aus",
    ),
    Request.THREAD: (
        "nachrichten|unterhaltung|chat|geschrieben|gesagt|schreibt",
        "was & sagt|meint",
    ),
    Request.LAST: (
        "was_hat|wie_viel|wieviel|wie_hoch|wie_schwer|letzter|letzte|letztes|letzten|aktuell*|neueste*|was_wiegt|"
        "wie_ist|was_war|wie_war",
    ),
    Request.ABOUT: (
        "^warum|^wieso|^weshalb|^ist|^hat|^war|^soll|^wann|^was|^wie|^wo|^kann|^gibt_es|gut_fur|markiert & !du|dein*",
    ),
    Request.DONE_THEM: ("angerufen|telefoniert|gesprochen|besucht|erledigt|geklart & sie|ihn|ihr|ihm|beiden",),
    Request.DIGEST_DAY: (
        "digest|ubersicht|uberblick|wochenbericht|zusammenfassung|wochenuberblick & montag*|dienstag*|mittwoch*|"
        "donnerstag*|freitag*|samstag*|sonntag*|spater|fruher|jeden|anderen_tag|abstellen",
    ),
    Request.QUIET: (
        "stumm|ruhe|zu_viele_nachrichten|weniger_nachrichten|nicht_storen|benachrichtigungen|nicht_nachts|leise",
        "kein|keine|keinen|stopp|abbestellen|abschalten & digest|ubersicht|nachrichten",
    ),
    Request.STAND_IN: (
        "vertritt|vertretung|vertreter|vertreterin|vertreten",
        "ich_bin|ich_habe|ich_gehe|bin_ich & weg|urlaub|ferien|abwesend|verreist",
        "ich_bin|ich_habe|bin & frei|krank|nicht_da",
        "springt_ein|ubernimmt|vertritt_mich|einspringen|ubernehmen",
        "^weg|^urlaub",
    ),
    Request.INVITE: (
        "einladen|lade|einladung|neue|neuen|neuer & person|klient*|kunde*|kundin|jemand*|link|einladen|einladung",
        "nicht_bekommen|nie_bekommen|verloren|noch_mal|nochmal|erneut|abgelaufen|geht_nicht & link|einladung",
    ),
    Request.REPORT: (
        "bericht & praxis|quartal*|arbeitgeber*",
        "quartalsbericht|praxisbericht",
    ),
    Request.NEEDS_ME: (
        "wer|jemand|irgendwer|ist_etwas|gibt_es & braucht_mich|mich_braucht|dringend*|wartet|braucht_hilfe|"
        "mich_brauchen|hilfe_braucht|braucht_jemanden",
        "was_gibt_es_neues|was_ist_neu|gibt_es_neues|etwas_neues",
        "wen|wer & anrufen|auffallig|markiert|nicht_gut|schlecht",
        "ist_das|ist_es|sind_die & echt|ernst|schlimm|dringend|wahr|zufall|gefahrlich",
        "hinweis|hinweise|alarm & was|warum|bedeut*|wie_viele",
    ),
    Request.CASELOAD: (
        "^meine_klienten|^meine_leute|^meine_kunden|^alle_klienten|^alle|^meine_liste|^liste",
        "zeig*|liste|wer_sind & klienten|leute|kunden|alle|liste|personen",
        "wie_viele & klienten|leute|kunden",
    ),
    Request.WEEK: (
        "^diese_woche|^die_woche|^meine_woche|wochenbericht|uberblick|ubersicht",
        "wie_war|zeig* & woche|montag",
        "wer|wie_viele|jemand|alle|haben|hat & geantwortet|gemeldet|eingecheckt|antwortet|geschwiegen|"
        "nicht_gemeldet|mitgemacht|check_in",
    ),
}

# What joins words to whom they are for: "tell Ada that ...".
JOINTS = frozenset({"dass", "das", "doch", "bitte"})
