"""German: what clients ask in the middle of everyday life."""

from __future__ import annotations

from core.language.lexicon import Question

_COACH = "@|trainer|trainerin|coach|betreuer|betreuerin"

QUESTIONS: dict[Question, tuple[str, ...]] = {
    Question.MEDICAL: (
        "kann|darf|soll|sollte|muss|ist_es|was & tablette*|medikament*|medizin|dosis|insulin|antibiotik*|ibuprofen|"
        "paracetamol|schmerzmittel|pille*|blocker*",
        "kann|darf|soll|sollte & sport|trainieren|training|laufen|joggen|schwimmen|gehen|turnen|test|machen & erkaltet|"
        "erkaltung|schnupfen|grippe|fieber|krank|trotzdem|schmerz*|knie|rucken|verletz*|schwanger|operation|corona|weh",
        "ist_es_normal|ist_das_normal|warum_bin|warum_tut|wieso_bin & mude|muskelkater|weh|schmerz*|krampf*|durst*",
        "ohne_grund|ungewollt|einfach_so & abgenommen|gewicht|verloren",
    ),
    Question.FOOD: (
        "was|darf|soll|sollte|kann|wie_viel|wieviel & essen|esse|ernahrung|diat|kalorien|eiweiss|zucker|brot|"
        "schokolade|"
        "alkohol|wein|bier|fruhstuck* & !vor|vorher|nach|test|wiegen",
    ),
    Question.CAN_STOP: (
        "kann_ich|darf_ich|konnte_ich|kann_man|darf_man|kann_i|derf_i|was_wenn_ich|was_ist_wenn_ich|und_wenn_ich|"
        "ist_es_ok_wenn_ich & aufhor*|aussteig*|abbrech*|kundig*|beenden|austreten|abmeld*|anders_uberleg* & "
        "!tablette*|medikament*|pille*|insulin|rauch*|sport|training|trainieren|trinken|essen|nicht|ned|"
        "husten|weinen|zittern|denken|grubeln",
    ),
    Question.ABOUT: (
        "worum_geht|worum_gehts|um_was_geht|um_was_gehts|was_ist_das_hier|was_ist_das_eigentlich|was_ist_das_uberhaupt|"
        "was_wird_das|was_soll_das_hier|was_soll_das_werden|was_machst_du|was_machen_sie|was_ist_samehour|"
        "wie_funktioniert_das|wie_lauft_das|was_erwartet_mich|was_kommt_auf_mich_zu|worauf_lasse_ich_mich_ein & "
        "!heute|gerade|morgen",
        "schreibst_du|schreiben_sie|meldest_du|melden_sie|fragst_du|fragen_sie|kommst_du|kommt_das|kommt_es|"
        "kriege_ich|bekomme_ich|"
        "krieg_ich & jeden_tag|taglich|dauernd|standig|wie_oft|jede_woche|wochentlich & !warum|wieso|weshalb|wozu",
    ),
    Question.ILL: (
        "ich_habe|ich_hab|i_hab|i_hob|habe|hab|hob|mit|liege|lieg|mich_hats|mich_hat|kriege|bekomme|bin|positiv|"
        "eingefangen|erwischt|geholt & grippe|corona|covid|erkaltung|schnupfen|schnupfn|magen_darm|magendarm|"
        "magen_darm_grippe|darmgrippe|infekt|grippalen|virus|fieber|mandelentzundung|bronchitis|migrane|"
        "blasenentzundung|gurtelrose|noro|norovirus|nebenhohlenentzundung|husten|verkuhlung & "
        "!kann|darf|soll|sollte|mann|frau|sohn|tochter|mutter|mama|vater|papa|er|sie|enkel*|bruder|schwester|freund*|"
        "kollegin|kollege|nachbar*|kinder|kind|letzten|letztes|letzte|vor_jahren|nicht|kein|keine|keinen|nie|wenn|ob|"
        "impf*|geimpft|angst",
        "ich_bin|bin|i_bin|bi|total|stark|schwer|ziemlich|richtig|wieder & "
        "erkaltet|verkuhlt|verschnupft|vergrippt|vergrippet|"
        "grippig & !kann|darf|soll|sollte|mann|frau|er|sie|nicht|letzte|wenn",
    ),
    Question.RESCHEDULE: (
        "erinner*|frag|frage|fragen|fragst|meld*|schreib*|schick* & lieber|besser|stattdessen|kunftig|in_zukunft|"
        "ab_jetzt|ab_sofort|immer|jede_woche|anderen_tag|andere_zeit|anderer_zeit|ander_mal & "
        "!@|trainer|trainerin|mann|frau|wiegen|waage|wenn|gewicht|taille|puls|blutdruck",
        "kann|konnte|konnten|konnen|kannst|wie|mochte|wurde_gern & andern|wechseln|verschieben|verlegen|umstellen|"
        "tauschen|wechsle|andere|verschiebe & tag|wochentag|uhrzeit|zeit|termin|check|erinnerung & "
        "!ziel|@|trainer|trainerin|mass*|einheit*|sprache|gewicht|zahl|wert|arzt*",
        "statt|anstatt|stattdessen|lieber|auch & montag*|dienstag*|mittwoch*|donnerstag*|freitag*|samstag*|"
        "sonntag*|uhr & "
        "geht|gehts|ginge|passt|kann|konnte|konnen|konnten|ware|hatte_ich|mochte & !@|arzt*|termin_beim|nicht|"
        "sport|trainier*|training|turnen|war",
    ),
    Question.TAKE_OUT: (
        "losch*|streich*|entfern*|verwirf|verwerfen|rausnehmen|herausnehmen|rausloschen|rausstreichen|wegnehmen & "
        "wert|zahl|messung|angabe|eintrag|ergebnis|gewicht|taille|taillenwert|huft*|puls|blutdruck|energie|letzte|"
        "letzten|letztes & !alles|alle|daten|konto|mich|jede*|nicht|app",
        "nimm|nehmen|tu|mach|schmeiss & raus|heraus|weg|zuruck & wert|zahl|messung|angabe|eintrag|gewicht|taille|"
        "huft*|puls|blutdruck|energie & !alles|alle|daten|konto|mich|jede*|nicht|arzt*",
    ),
    Question.NO_TOOL: (
        "kein|keine|keinen|koa|koan|ohne|fehlt|kaputt|defekt|verloren|find|finde|verlegt|leer|verliehen|verborgt|hin|"
        "geht_nicht|geht_ned|funktioniert|spinnt|streikt|weg & massband|metermass|messband|bandmass|zentimetermass|"
        "zentimeterband|waage|personenwaage|blutdruckgerat|blutdruckmessgerat|messgerat|gerat|manschette|"
        "stuhl & !kann_ich|kommt|darf|weg|geh|schuh*|kleid*|angezogen|socken|barfuss|jacke",
        "batterie|batterien|akku & leer|alle|tot|aus",
    ),
    Question.NOT_NOW: (
        "spater|spoter|nachher|nacher|heute_abend|heut_abend|am_abend|abends|nach_der_arbeit|nach_dem_essen|zu_hause|"
        "zuhause|daheim|heimkomme|morgen|am_wochenende|in_einer_stunde|ein_andermal|dann & "
        "mach|mache|machs|schick|schicke|schicks|schreib|schreibe|melde|meld|antworte|messe|mess|hole|hol|erledige|"
        "trage|werde_ich & !@|immer|kunftig|wiegen|wiege|aufhor*|arzt*|ruf*|anruf*|kann_ich|soll|darf|am_morgen|"
        "jeden_morgen|guten|erinner*|termin|bis_dann|urlaub|operation|krankenhaus|sport|training|losch*",
        "auf_morgen|auf_spater|auf_heute_abend|auf_nachher|auf_ubermorgen & verschieb*|verschoben|machen|mach & "
        "!immer|kunftig|termin|tag|uhrzeit|arzt*",
        "keine_zeit|koa_zeit|grad_keine|im_stress|in_eile|habs_eilig|habe_es_eilig|bin_unterwegs|noch_unterwegs|"
        "gerade_unterwegs|"
        "grad_unterwegs|am_steuer|beim_autofahren|im_bus|im_zug|in_der_bahn|im_meeting|in_einer_besprechung|"
        "in_der_arbeit|auf_der_arbeit|auf_arbeit|beim_einkaufen|im_wartezimmer|nicht_daheim|ned_dahoam|"
        "nicht_zu_hause|nicht_zuhause|passt_grad_nicht|passt_gerade_nicht|passt_jetzt_nicht|ungunstig & "
        "!diese_woche|letzte_woche|letzten|letzte|woche|war|waren|sport|training|trainieren|hatte|gehabt|uben|"
        "urlaub|leider_keine_zeit_mehr",
    ),
    Question.MAY_SEND: (
        "kann|darf|soll|konnte|willst_du|wollen_sie|mochten_sie|brauchst_du|brauchen_sie & "
        "schicken|senden|schreiben|geben|durchgeben|eintragen|mitteilen|angeben|melden|schick|schicke|sagen & "
        "blutdruck|blutdruckwerte|puls|gewicht|taille|bauchumfang|huft*|schritte|werte|messwerte|zahlen & "
        "!foto*|bild*|@|trainer|trainerin|arzt*|du_mir|sie_mir|mir|screenshot",
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
        "muss_ich_das|muss_das|soll_ich_das|muss_ich_es & sein|sagen|angeben|verraten|schreiben|schicken|ausfullen",
    ),
    Question.MISSED: (
        "was_passiert|was_ist_wenn|was_mache_ich_wenn|was_mach_ich_wenn|tut_mir_leid|sorry|macht_es_was|"
        "ist_es_schlimm|schlimm & vergessen|vergesse|"
        "verpasst|"
        "verpasse|ausgelassen|auslasse|versaumt & !tablette*|medikament*",
        "habe|hab & vergessen|verpasst & woche|gestern|montag|letzte|letztes_mal",
        "tut_mir_leid|sorry|entschuldig*|verzeih* & gemeldet|geantwortet|geschrieben|spat|verspatet|durcheinander & "
        "!kann|schmerz*|weh|arzt*",
    ),
    Question.WEIGH: (
        "kann|darf|soll|sollte|wann|mochte|will|ist_es_ok & wiegen|waage|wiege & !warum|wieso|muss|abnehmen|"
        "nicht|ned|nie",
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
        "was|wann & fragst_du|wirst_du_fragen|schreibst_du|meldest_du_dich|kommst_du|kommen_sie|horen_wir|hore_ich|"
        "melden_sie_sich",
        "was_passiert|wie_geht_es|wie_gehts & jetzt|nun|weiter|danach|dann & !dir|ihnen|mir",
        "wars_das|war_es_das|das_wars_schon|das_war_es_schon|war_das_alles|das_war_schon_alles|bin_ich_fertig|"
        "bin_ich_jetzt_fertig|sind_wir_fertig|schon_fertig",
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
        "gross|besser|schlechter|gefahrlich|bedenklich & !zu_gehen|wenn|wetter|zeit|tag|uhr|zum|idee|nicht_gut|"
        "ist_mir|sind_mir",
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
    Question.WAIT: (
        "^moment|^momentchen|^warte|^warten_sie|^sekunde|^kleinen_moment|^einen_moment|^einen_augenblick|^augenblick|"
        "^bin_gleich|^gleich_wieder|^komme_gleich & !woche|wochen|urlaub|monat*",
    ),
    Question.TIME_ME: (
        "^timer|^stoppuhr|zeit_stoppen|stopp_die_zeit|stoppen_sie|zeit_nehmen|die_uhr_stellen|stopp_mit|"
        "stoppst_du & !woche|wann",
        "kein|keine|ohne|fehlt|kaputt|verlegt|finde & sekundenzeiger|stoppuhr|armbanduhr|uhr_mit|uhr_da|keine_uhr",
    ),
    Question.CHAT: (
        "witz|lied|gedicht|geschichte & erzahl*|kennst|sing|schreib*|sag|aufsag*|vorsing*|vorles* & !kein_witz|war",
        "wie_spat_ist_es|wie_viel_uhr|wieviel_uhr|welcher_tag_ist|wie_wird_das_wetter|ist_schon_montag",
        "ich_liebe_dich|hab_dich_lieb|heirate_mich|du_bist_lustig|du_bist_lieb|du_bist_nett",
    ),
    Question.GRIEF: (
        "gestorben|verstorben|tot|beerdigung|beerdigt|verloren|eingeschlafert & "
        "mutter|mama|vater|papa|mann|frau|sohn|tochter|bruder|schwester|oma|opa|freund|freundin|hund|katze|nachbar*|"
        "beerdigung & !vor_jahren|film|handy|gewicht",
    ),
    Question.GOAL: (
        "ich_mochte|ich_will|ich_wurde_gern|mein_ziel|ich_hoffe & abnehmen|verlieren|erreichen|runter|kommen & "
        "kilo*|kg|cm|sommer|weihnachten|juni|juli & !hilfe|nicht",
        "vergiss|streich|andere|losche|zeig & ziel",
    ),
    Question.NO_WEIGHT: (
        "will_nicht|mochte_nicht|nicht_mehr|lieber_nicht|hasse|lass & wiegen|gewogen|waage|gewicht_weg|"
        "das_gewicht_weg & "
        "!heute|taglich|jeden|jetzt",
    ),
    Question.BODY: (
        "bin_ich|ich_fuhle|ich_finde_mich|ich_bin|ich_hasse|schame & "
        "dick|zu_dick|fett|zu_fett|hasslich|ubergewichtig|zu_schwer|meinen_korper|meinen_bauch|meines_korpers|"
        "mein_gewicht & "
        "!gehalt|prozent",
    ),
    Question.SORRY: (
        "^sorry|^entschuldigung|^entschuldige|^tut_mir_leid|^verzeihung|^pardon & "
        "!vergess*|verpasst|spat|gewicht|taille|puls|war|nicht|falsch|kann|konnte|das",
    ),
    Question.GLAD: ("^haha*|^hihi*|^super|^toll|^prima|^klasse|^cool|^lustig|^spitze & !aber|wetter|tag",),
}
