"""German: danger signs. Levels follow the three-way handling of function.md 9.1."""

from __future__ import annotations

from core.language.lexicon import Denials, Level, Sign

EMERGENCY, SAME_DAY, STOP_REST, TALK = Level.EMERGENCY, Level.SAME_DAY, Level.STOP_REST, Level.TALK

_HURTS = (
    "schmerz*|weh|druck|drückt|drücken|eng|enge|engegefühl|stechen|sticht|stiche|brennen|brennt|"
    "zieht|ziehen|beklemm*|krampf*|beklommen*|zuschnürt|zugeschnürt"
)
_BREATHLESS = "kurzatmig|kurzatmigkeit|außer_atem|atemlos|aus_der_puste|außer_puste|keine_puste|atembeschwerden"


_DIZZY = (
    "schwindel|schwindlig|schwindelig|schwindelgefühl|schwindelanfall|benommen|benommenheit|"
    "schwummrig|schummrig|schwarz_vor_augen|schwarz_vor_den_augen|dreht_sich_alles|"
    "alles_dreht_sich|alles_gedreht|drehschwindel|flau"
)
_SWOLLEN = "geschwollen|schwillt|schwellung|angeschwollen|anschwellen|dick|dicker"

SIGNS = (
    Sign("chest_pain", EMERGENCY, ("brust|brustkorb|brustbein|brustraum|brustbereich", _HURTS)),
    Sign(
        "chest_pain",
        EMERGENCY,
        ("herz|herzgegend", "schmerz|schmerzen|schmerzt|weh|sticht|stechen|stiche|drückt|krampft"),
    ),
    Sign(
        "chest_pain",
        EMERGENCY,
        (
            "brustschmerz*|brustenge|brustdruck|herzinfarkt|herzanfall|herzschmerz*|herzstechen|"
            "angina_pectoris|herzattacke",
        ),
    ),
    Sign(
        "faint",
        EMERGENCY,
        (
            "ohnmächtig|ohnmacht|bewusstlos*|umgekippt|kollabiert|kollaps|zusammengebrochen|"
            "zusammengeklappt|bewusstsein_verloren|das_bewusstsein|weggekippt|zusammengesackt",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            _BREATHLESS,
            "ruhe|sitzen|liegen|sitze|liege|im_bett|nachts|stark|starke|schwer|schwere|sehr|extrem|aufgewacht",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "bekomme_keine_luft|kriege_keine_luft|krieg_keine_luft|keine_luft|kann_nicht_atmen|"
            "kann_nicht_mehr_atmen|kann_kaum_atmen|kaum_luft|nicht_atmen|nicht_richtig_atmen|"
            "kann_nicht_richtig_atmen|nicht_genug_luft|zu_wenig_luft|kaum_atmen",
        ),
        own_no=True,
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "atemnot|luftnot|ersticke|ersticken|erstickungsgefühl|ringe_nach_luft|"
            "schnappe_nach_luft|schwer_luft|schlecht_luft|schwer_atmen",
        ),
    ),
    Sign("stroke_signs", EMERGENCY, ("schlaganfall|hirnschlag|hirnblutung",)),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "gesicht|mund|mundwinkel|lid|wange",
            "hängt|hängen|hängend|schief|taub|taubheit*|gelähmt|lähmung*|verzogen|herunter|runter",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "sprache|sprechen|reden|worte|aussprache",
            "verwaschen*|undeutlich|gestört|mühe|probleme|lallend|schwer|durcheinander",
        ),
    ),
    Sign(
        "stroke_signs", EMERGENCY, ("lalle|lallen|lallt|sprachstörung*|gesichtslähmung|halbseitenlähmung|halbseitig",)
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "kann_nicht_sprechen|nicht_mehr_sprechen|nicht_mehr_richtig_sprechen|"
            "nicht_mehr_richtig_reden|kann_nicht_mehr_sprechen|arm_nicht_heben|arm_nicht_bewegen|"
            "bein_nicht_bewegen|arm_nicht_mehr_heben|arm_nicht_mehr_bewegen|bein_nicht_mehr_bewegen|"
            "nicht_richtig_sprechen|finde_keine_worte|finde_die_worte_nicht|spüre_meinen_arm_nicht|"
            "spüre_mein_bein_nicht|sehe_nichts_mehr",
        ),
        own_no=True,
    ),
    Sign("stroke_signs", EMERGENCY, ("arm|bein|hand|seite|arme|fuß|körperhälfte", "taub|taubheit*|gelähmt|lähmung*")),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "schwach|schwäche|kraftlos",
            "einseitig|linke|rechte|linken|rechten|plötzlich|plötzliche|eine_seite|einer_seite",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "doppelbilder|sehe_doppelt|plötzlich_blind|sehverlust|sehstörung*|plötzlich_verschwommen|"
            "plötzlich_verwirrt|auf_einem_auge_blind",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "kopfschmerz*|kopfweh",
            "plötzlich|plötzliche|plötzlichen|schlimmsten|stärksten|schlimmste|stärkste|vernichtende*",
        ),
    ),
    Sign("leg_swelling", SAME_DAY, ("bein|wade|knöchel|fuß|oberschenkel|unterschenkel|fußgelenk", _SWOLLEN)),
    Sign("leg_swelling", SAME_DAY, ("thrombose|blutgerinnsel_im_bein|beinvenenthrombose",)),
    Sign("swollen_legs", SAME_DAY, ("beine|waden|füße", _SWOLLEN)),
    Sign("palpitations", SAME_DAY, ("herzrasen|herzstolpern|herzklopfen|herzflattern|herzrhythmusstörung*",)),
    Sign(
        "palpitations",
        SAME_DAY,
        (
            "herz|puls",
            "rast|rasen|stolpert|stolpern|flattert|unregelmäßig|aussetzer|pocht|wild|"
            "setzt_aus|zu_schnell|sehr_schnell|hämmert|klopft",
        ),
    ),
    Sign(
        "breathless_on_usual_tasks",
        SAME_DAY,
        (
            _BREATHLESS + "|luft|puste",
            "treppe|treppen|treppensteigen|anziehen|haushalt|als_sonst|als_früher|normalerweise|duschen|"
            "neuerdings|ständig|immer|seit|schnell|schneller|leichter|schlimmer|öfter|gewöhnlich|"
            "schon_bei|bei_kleinsten|jeden_tag",
        ),
    ),
    Sign(
        "dizzy",
        SAME_DAY,
        (
            _DIZZY,
            "wieder|immer|ständig|oft|öfter|jeden|seit|dauernd|häufig|mehrmals|täglich|jedes|gestern|"
            "wiederholt|tagelang",
        ),
    ),
    Sign("dizzy", STOP_REST, (_DIZZY,)),
    Sign("breathless", STOP_REST, (_BREATHLESS,)),
    Sign(
        "cold_sweat",
        STOP_REST,
        ("kalter_schweiß|kalten_schweiß|kaltschweißig|schweißausbruch|schweißausbrüche|kalt_geschwitzt",),
    ),
    Sign("nausea", STOP_REST, ("übel|übelkeit|erbrechen|erbrochen|übergeben|brechreiz|gekotzt|kotzen|speiübel",)),
    Sign(
        "arm_jaw_neck_pain",
        STOP_REST,
        (
            "kiefer|linker_arm|linken_arm|linke_arm|schulterblatt|schulterblätter|schulterblättern|nacken|hals",
            "schmerz*|weh|druck|zieht|ziehen|sticht",
        ),
    ),
    Sign(
        "new_joint_pain",
        STOP_REST,
        (
            "knie|hüfte|sprunggelenk|rücken|schulter|gelenk|muskel|wade|leiste|handgelenk|oberschenkel",
            "stechend|stechender|stechende|verdreht|gezerrt|gerissen|geknackt|plötzlich|verrenkt|"
            "weggeknickt|verstaucht|eingeknickt",
        ),
    ),
    Sign("new_joint_pain", STOP_REST, ("umgeknickt|zerrung|hexenschuss|muskelfaserriss",)),
    Sign(
        "severe_headache",
        STOP_REST,
        (
            "starke_kopfschmerzen|heftige_kopfschmerzen|schlimme_kopfschmerzen|"
            "rasende_kopfschmerzen|furchtbare_kopfschmerzen|starkes_kopfweh|schreckliche_kopfschmerzen",
        ),
    ),
    Sign(
        "unusual_fatigue",
        STOP_REST,
        (
            "ungewöhnlich_müde|ungewöhnlich_erschöpft|ungewöhnliche_erschöpfung|"
            "plötzlich_erschöpft|plötzlich_völlig_erschöpft|ungewöhnliche_müdigkeit",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "umbringen|bringe_mich_um|suizid*|selbstmord*|das_leben_nehmen|mein_leben_beenden|will_sterben|"
            "möchte_sterben|lebensmüde|wäre_lieber_tot|lieber_tot|allem_ein_ende|mich_selbst_verletzen|"
            "mich_selbst_verletzt|ritze_mich|mir_etwas_antun|tot_sein|ohne_mich_besser|besser_ohne_mich|"
            "sterben_will|sterben_möchte|überdosis",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "nicht_mehr_leben|leben_keinen_sinn|kein_sinn_im_leben|nicht_mehr_da_sein|nicht_mehr_aufwachen|"
            "nichts_wofür_es_sich_zu_leben|kann_so_nicht_weiterleben|will_nicht_mehr_leben",
        ),
        own_no=True,
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "hungere_mich|abführmittel|essattacke*|fressattacke*|fressanfall*|magersucht|magersüchtig|"
            "bulimie|finger_in_den_hals|hasse_meinen_körper|angst_vor_dem_essen|angst_vorm_essen|"
            "esssucht|denke_nur_noch_ans_essen|denke_nur_noch_an_mein_gewicht|nach_dem_essen_übergebe|"
            "nach_dem_essen_erbrechen|esse_kaum|esse_fast_nichts",
        ),
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "esse_nichts_mehr|tagelang_nichts_gegessen|traue_mich_nicht_zu_essen|seit_tagen_nichts_gegessen|"
            "kann_nicht_aufhören_zu_essen|kann_nicht_aufhören_mich_zu_wiegen",
        ),
        own_no=True,
    ),
)

DENIALS = Denials(
    no="kein|keine|keinen|keinem|keiner|keinerlei|nicht|nie|niemals|ohne|weder|nichts|frei_von|keins",
    no_after="nein|nicht|nicht_mehr|keine|keinen|keins|kein|keiner|nie|negativ|nö|keinerlei",
    between=(
        "ich|habe|hab|hatte|gehabt|bin|war|mir|mich|ist|sind|in|im|der|die|das|den|dem|mein|meine|"
        "meiner|meinem|meinen|mehr|irgendwelche|irgendeine|heute|an|am|verspüre|spüre|gespürt|auch|"
        "wirklich|anzeichen|symptome|von|für|einen|eine|ein|einem|es|tut|zur|zeit|momentan|bisher|"
        "überhaupt|gar|starken|starke|neuen|neue|bei|beim|wird|wurde|art|derzeit|da|links"
    ),
    and_="und|&|sowie",
    nor="oder|noch",
    but="aber|jedoch|allerdings|sondern|weil|obwohl|trotzdem|dafür|nur|dann|stattdessen|denn",
    past=(
        "letztes_jahr|letzten_jahr|vor_jahren|vor_monaten|früher|damals|als_kind|letzten_monat|"
        "letzten_sommer|letzten_winter|jahren|monaten|jahre_her|monate_her|vor_einem_jahr|"
        "vor_langer_zeit|in_der_vergangenheit|vor_der_operation|19##|20##"
    ),
    imagined=(
        "was_wenn|wenn|falls|ob|angst|sorge|sorgen|fürchte|befürchte|risiko|"
        "symptome_von|symptome_für|anzeichen_für|anzeichen_von|vorbeugen|verhindern|kann_man|was_ist|"
        "was_sind|gelesen|geträumt|traum|gehört_von|ist_es_normal|woran_erkenne|unterschied_zwischen|"
        "glaube_nicht|film"
    ),
    others=(
        "mutter|mama|vater|papa|mann|frau|sohn|tochter|freund|freundin|nachbar|nachbarin|bruder|"
        "schwester|er|oma|opa|tante|onkel|kollege|kollegin|hund|katze|jemand|leute|schwager|"
        "schwägerin|partner|partnerin|bekannter|bekannte|seine|seinen|ihre"
    ),
    now="jetzt|heute|gerade|wieder|immer_noch|noch_immer|seit|aktuell|momentan|auch|erneut",
    mine="ich|mir|mich|mein|meine|meiner|meinem|meinen",
    settled=(
        "weg|vorbei|nicht_mehr|verschwunden|nachgelassen|aufgehört|vergangen|wieder_gut|abgeklungen|"
        "wieder_besser|jetzt_besser|besser_geworden|gelegt|wieder_in_ordnung"
    ),
    harmless=(
        "brustpresse|brustschwimmen|brustumfang|brustgurt|bankdrücken|brustübung*|brustmuskel*|"
        "herzlich*|von_herzen|übel_nehmen|totgelacht|totlachen|ans_herz|am_herzen|ins_herz|"
        "schwarz_weiß|blutdruck|luftdruck|reifendruck|eindruck|ausdruck|dicke_socken|dicker_pulli|"
        "handtaub|taube|tauben|hühnerbrust|hähnchenbrust|putenbrust|zum_sterben_schön|druckfehler|"
        "unter_druck|halsband|nackenkissen|herzgut|schweren_herzens|muskelkater"
    ),
)
