"""German: what clients ask in the middle of everyday life."""

from __future__ import annotations

from core.language.lexicon import Question

_COACH = "@|trainer|trainerin|coach|betreuer|betreuerin"

QUESTIONS: dict[Question, tuple[str, ...]] = {
    Question.MEDICAL: (
        "kann|darf|soll|sollte|muss|ist_es|was & tablette*|medikament*|medizin|dosis|insulin|antibiotik*|ibuprofen|"
        "paracetamol|schmerzmittel|pille*|blocker*",
        "kann|darf|soll|sollte & sport|trainieren|training|laufen|joggen|schwimmen|gehen|turnen|test|machen & erkaltet|"
        "erkaltung|schnupfen|grippe|fieber|krank|schmerz*|knie|rucken|verletz*|schwanger|operation|corona|weh",
        "ist_es_normal|ist_das_normal|warum_bin|warum_tut|wieso_bin & mude|muskelkater|weh|schmerz*|krampf*|durst*",
        "ohne_grund|ungewollt|einfach_so & abgenommen|gewicht|verloren",
    ),
    Question.FOOD: (
        "was|darf|soll|sollte|kann|wie_viel|wieviel & essen|esse|ernahrung|diat|kalorien|eiweiss|zucker|brot|"
        "schokolade|"
        "alkohol|wein|bier|fruhstuck* & !vor|vorher|nach|test|wiegen",
    ),
    Question.FREE: (
        "ist|was|wie_viel|wieviel|muss|kostet & gratis|umsonst|kostenlos|kostet|kosten|zahlen|bezahlen|preis",
    ),
    Question.WHO_SEES: (
        "^wer & sieht|liest|weiss|sehen|lesen|bekommt",
        f"^sieht|^liest|^kann|^wird|^sehen & {_COACH}|jemand|andere|anderen|gruppe|kasse|krankenkasse|chef|familie & "
        "sieht|liest|sehen|lesen|das|meine|es",
        "ist|sind|bleibt & privat|vertraulich|geheim",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & kann|konnte|bitte|sag|sagen|frag|frage|richte|ausrichten|gib|soll & !wer|sieht|liest|wechseln|"
        "andere|anderen|neuen",
        f"{_COACH} & anrufen|anruft|ruf|danke|melden|meldet",
        "@ & sprechen|reden|telefonieren|unterhalten & möchte|mochte|will|würde|wurde|darf|muss|wünsche|wunsche",
    ),
    Question.WHO: (
        "wer_bist_du|wer_sind_sie|wer_ist_das|wer_ist_da|was_bist_du|wer_schreibt|ist_da_jemand|ist_da_wer|"
        "wie_heisst_du",
        "bist_du|sind_sie & roboter|bot|mensch|maschine|echt|echter|arzt|computer|programm",
    ),
    Question.THERE: ("bist_du_da|sind_sie_da|bist_du_noch_da|sind_sie_noch_da|ist_da_jemand|jemand_da",),
    Question.HOW_ARE_YOU: (
        "wie_geht_es_dir|wie_gehts|wie_gehts_dir|wie_geht_es_ihnen|wie_gehts_ihnen|alles_gut_bei_dir",
    ),
    Question.PHOTO: ("kann|darf|soll & foto*|bild*|video*|sprachnachricht* & schicken|senden|hochladen|machen",),
    Question.HOW_LONG: (
        "wie_lange|wie_viele_minuten|wie_viel_zeit & dauert|brauche|braucht & !programm|kurs|wochen|noch",
    ),
    Question.HOW_OFTEN: (
        "warum|wieso|weshalb & nur|alle|jede|jeden|oft|ofter & woche*|monat*|tag*|messen|wiegen|taglich|ofter",
        "wie_oft & messen|wiegen|fragst|muss|soll|test*",
    ),
    Question.MUST: (
        "muss_ich|soll_ich|muss_man & alle|alles|jede|beantworten|antworten|machen|mitmachen|messen|wirklich",
        "ist & pflicht|freiwillig|verpflichtend",
    ),
    Question.MISSED: (
        "was_passiert|was_ist_wenn|tut_mir_leid|sorry|macht_es_was|ist_es_schlimm|schlimm & vergessen|vergesse|"
        "verpasst|"
        "verpasse|ausgelassen|auslasse|versaumt & !tablette*|medikament*",
        "habe|hab & vergessen|verpasst & woche|gestern|montag|letzte|letztes_mal",
    ),
    Question.WEIGH: (
        "kann|darf|soll|sollte|wann|mochte|will|ist_es_ok & wiegen|waage|wiege & !warum|wieso|muss|abnehmen",
    ),
    Question.CHANGED: (
        "habe|hab|bin|ist|hat|sind & abgenommen|zugenommen|verloren|runter|gesunken|gestiegen|weniger_geworden|"
        "verandert & kilo*|kg|pfund|gewicht|cm|zentimeter|taille|bauch|puls|blutdruck & !will|mochte|wie|auf|jetzt|"
        "freundin|schwester|mann|frau",
        "habe|hab & abgenommen|zugenommen & !will|wie|auf",
    ),
    Question.SINCE: (
        "zeig|zeige|sehen|bild|kurve|grafik|diagramm & seit|letzten_monat|letzten_monate|von_anfang|ab_januar|"
        "ab_februar|"
        "ab_marz|ab_april|ab_mai|ab_juni",
    ),
    Question.FIRST: (
        "was|wie_viel|wieviel|wie & anfang|beginn|start|ersten|erstes|erste|angefangen & wog|gewogen|gewicht|taille|"
        "puls|war|hatte",
    ),
    Question.LAST: (
        "was|wie_viel|wieviel|wie|wann & letzte|letzter|letztes|letzten|vorige* & !woche|wochen|monat",
        "hast|haben|ist|wurde & bekommen|angekommen|gespeichert|erhalten|notiert|eingetragen & !fieber|schmerz*",
    ),
    Question.OVER: (
        "ist|wann|wie_lange|wie_viele|geht & vorbei|zu_ende|fertig|endet|ende|dauert|lauft|noch & programm|kurs|das|es|"
        "wochen|noch",
    ),
    Question.NEXT: (
        "was|wann & nachste|nachster|nachstes|nachsten|kommt_jetzt|als_nachstes|kommt_danach|kommt_dann",
        "was|wann & fragst_du|wirst_du_fragen|schreibst_du|meldest_du_dich",
    ),
    Question.NORMAL: (
        "was|wie_viel|wieviel|wie_hoch|wie & normal|ublich|durchschnitt*|ideal|sollte|sein_soll*|normalwert*",
        "mein_alter|meinem_alter & normal|gut|ok|durchschnitt",
    ),
    Question.WHY_TEST: (
        "warum|wieso|weshalb|wozu|wofur & test*|messen|messe|misst|taille|hufte*|wiegen|gewicht|puls|massband|stuhl|"
        "blutdruck|balance|gleichgewicht|zahl|energie|frage*|das|diese*|gut & !nicht|mude|weh|nehme|abnehmen|gestiegen|"
        "hoher|mehr",
    ),
    Question.MEANING: (
        "was & bedeutet|heisst|bedeuten|sagt_mir|sagt_das",
        "verstehe|versteh|kapiere & nicht & zahl*|ergebnis*|zufall|bild|das",
    ),
    Question.DOING: (
        "wie_mache_ich_mich|wie_stehe_ich|wie_lauft_es_bei_mir|wie_laufts_bei_mir|bin_ich_besser|werde_ich_besser|"
        "mache_ich_fortschritte|bringt_das_was|bringt_es_was|hat_es_was_gebracht|hat_es_gewirkt|wirkt_das|"
        "habe_ich_mich_verbessert|bin_ich_auf_kurs|wie_war_ich|wie_bin_ich_unterwegs",
    ),
    Question.GOOD: (
        "^ist|^sind|^war|^und_ist|ist_das|ist_es|das_ist & gut|okay|ok|schlecht|normal|hoch|niedrig|schlimm|viel|wenig|"
        "gross|besser|schlechter|gefahrlich|bedenklich & !zu_gehen|wenn|wetter|zeit|tag|uhr|zum|idee|nicht_gut",
        "muss|sollte|soll & sorgen|beunruhigen",
    ),
    Question.SWEARING: (
        "scheiss*|scheisse|verdammt*|mist|arsch*|idiot*|bloder|blodes|blode|dumm|dummer|halt_die_klappe|leck_mich|"
        "verpiss*|nervt|nervst|nutzlos & !fuhle|schlafen|geschlafen|schmerz*|weh|leben|korper",
    ),
    Question.BYE: (
        "^gute_nacht|^tschuss|^tschus|^tschau|^ciao|^auf_wiedersehen|^bis_bald|^bis_dann|^bis_morgen|^bis_nachste|"
        "^schonen_abend|^schonen_tag|^servus",
    ),
    Question.GLAD: ("^haha*|^hihi*|^super|^toll|^prima|^klasse|^cool|^lustig|^spitze & !aber|wetter|tag",),
}
