"""French: danger signs. Levels follow the three-way handling of function.md 9.1."""

from __future__ import annotations

from core.language.lexicon import Denials, Level, Sign

EMERGENCY, SAME_DAY, STOP_REST, TALK = Level.EMERGENCY, Level.SAME_DAY, Level.STOP_REST, Level.TALK

_HURTS = (
    "douleur|douleurs|mal|maux|douloureux|douloureuse|serre|serré|serrée|serrement|oppress*|"
    "oppression|pression|brûlure|brûlures|brûle|pincement|pincements|lourdeur|lourd|étau|pique|"
    "lance|élancement*|gêne|poignard*|écrase|écrasement|souffre"
)
_BREATHLESS = (
    "essoufflé|essoufflée|essoufflement|essouffle|à_bout_de_souffle|souffle_court|"
    "manque_de_souffle|le_souffle_coupé|manque_d'air"
)

_DIZZY = (
    "vertige|vertiges|étourdi|étourdie|étourdissement|étourdissements|tête_qui_tourne|"
    "la_tête_me_tourne|tête_tourne|tête_me_tourne|tête_tournait|tout_tourne|tournis|voile_noir|"
    "malaise|malaises|tête_qui_tournait"
)
_SWOLLEN = "enflé|enflée|enflés|enflées|gonflé|gonflée|gonflés|gonflées|gonfle|gonflement|enfle|œdème|oedème"

SIGNS = (
    Sign("chest_pain", EMERGENCY, ("poitrine|thorax|thoracique|thoraciques|sternum", _HURTS)),
    Sign("chest_pain", EMERGENCY, ("cœur|coeur", "douleur|douleurs|fait_mal|pincement|pincements|pique|serre")),
    Sign("chest_pain", EMERGENCY, ("crise_cardiaque|infarctus|angine_de_poitrine|attaque_cardiaque|crise_de_cœur",)),
    Sign(
        "faint",
        EMERGENCY,
        (
            "évanoui|évanouie|évanouissement|évanouir|perdu_connaissance|perte_de_connaissance|"
            "tombé_dans_les_pommes|tombée_dans_les_pommes|inconscient|inconsciente|syncope|écroulé|"
            "écroulée|effondré|effondrée|perds_connaissance|évanouis|perdre_connaissance",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            _BREATHLESS,
            "repos|assis|assise|allongé|allongée|couché|couchée|au_lit|la_nuit|très|"
            "sévère|fort|énormément|sans_bouger|sans_rien_faire",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "peux_pas_respirer|peux_plus_respirer|n'arrive_pas_à_respirer|arrive_pas_à_respirer|"
            "arrive_plus_à_respirer|peine_à_respirer|respire_plus|pas_assez_d'air|"
            "peux_à_peine_respirer|respire_à_peine|peux_pas_bien_respirer|pas_à_respirer|"
            "pas_reprendre_mon_souffle|plus_à_respirer|pas_à_reprendre_mon_souffle",
        ),
        own_no=True,
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "mal_à_respirer|du_mal_à_respirer|difficulté_à_respirer|difficultés_à_respirer|"
            "difficultés_respiratoires|détresse_respiratoire|j'étouffe|étouffe|suffoque|"
            "gêne_respiratoire|difficulté_respiratoire",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        ("avc|attaque_cérébrale|accident_vasculaire|hémorragie_cérébrale|congestion_cérébrale",),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "visage|bouche|figure|paupière|joue",
            "tombe|tombant|tombante|de_travers|paralysé|paralysée|"
            "engourdi|engourdie|affaissé|affaissée|tordu|tordue|déformé|déformée|pend",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "parler|parole|élocution|mots",
            "mal_à|difficulté|difficultés|du_mal|bafouille|empâtée|confuse|pâteuse|mélange|trouble|troubles|bizarre",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "peux_pas_parler|peux_plus_parler|n'arrive_plus_à_parler|arrive_pas_à_parler|"
            "trouve_plus_mes_mots|peux_pas_bouger_le_bras|peux_plus_bouger_le_bras|"
            "peux_plus_bouger_la_jambe|peux_pas_lever_le_bras|peux_plus_lever_le_bras|sens_plus_mon_bras|"
            "sens_plus_ma_jambe|vois_plus_d'un_œil|vois_plus_rien|arrive_plus_à_parler|"
            "sens_plus_mon_visage|peux_pas_bouger_la_jambe|ne_bouge_plus",
        ),
        own_no=True,
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        ("bras|jambe|main|côté|pied", "engourdi|engourdie|engourdissement|paralysé|paralysée|paralysie"),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "faiblesse|faible|sans_force",
            "d'un_côté|côté_gauche|côté_droit|soudain|soudaine|brusque|d'un_coup|bras|jambe",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "vois_double|vision_double|perte_de_vision|perte_de_la_vue|perdu_la_vue|aveugle_d'un_coup|"
            "vision_floue_soudaine|soudainement_confus|confusion_soudaine|trouble_soudain_de_la_vue",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "mal_de_tête|maux_de_tête|mal_de_crâne|mal_à_la_tête",
            "soudain|soudaine|brutal|brutale|pire|foudroyant|d'un_coup|brusque",
        ),
    ),
    Sign("leg_swelling", SAME_DAY, ("jambe|mollet|cheville|pied|cuisse", _SWOLLEN)),
    Sign("leg_swelling", SAME_DAY, ("phlébite|thrombose|caillot",)),
    Sign("swollen_legs", SAME_DAY, ("jambes|mollets|chevilles|pieds|cuisses", _SWOLLEN)),
    Sign("palpitations", SAME_DAY, ("palpitation|palpitations|tachycardie|arythmie|extrasystole*",)),
    Sign(
        "palpitations",
        SAME_DAY,
        (
            "cœur|coeur|pouls",
            "s'emballe|s'emballait|emballe|irrégulier|irrégulière|bat_trop_vite|bat_très_vite|bat_vite|"
            "bat_fort|saute|à_toute_vitesse|à_cent_à_l'heure|cogne|rate_des_battements|bat_la_chamade",
        ),
    ),
    Sign(
        "breathless_on_usual_tasks",
        SAME_DAY,
        (
            _BREATHLESS + "|souffle",
            "escalier|escaliers|m'habiller|habillant|que_d'habitude|d'habitude|qu'avant|normal|"
            "normalement|douche|ménage|ces_derniers_temps|toujours|de_plus_en_plus|moindre|vite|cuisine|"
            "tous_les_jours|souvent|depuis|en_parlant",
        ),
    ),
    Sign(
        "dizzy",
        SAME_DAY,
        (
            _DIZZY,
            "encore|toujours|souvent|chaque|à_nouveau|de_nouveau|constamment|tous_les_jours|sans_cesse|"
            "plusieurs|depuis|tout_le_temps|régulièrement|répétition|ces_derniers_temps|hier|fois",
        ),
    ),
    Sign("dizzy", STOP_REST, (_DIZZY,)),
    Sign("breathless", STOP_REST, (_BREATHLESS,)),
    Sign("cold_sweat", STOP_REST, ("sueur_froide|sueurs_froides|suée_froide|moite_et_froid",)),
    Sign(
        "nausea",
        STOP_REST,
        (
            "nausée|nausées|nauséeux|nauséeuse|vomi|vomir|vomis|vomissement|vomissements|envie_de_vomir|"
            "mal_au_cœur|mal_au_coeur|écœuré|écœurée|haut_le_cœur",
        ),
    ),
    Sign(
        "arm_jaw_neck_pain",
        STOP_REST,
        (
            "mâchoire|bras_gauche|omoplate|omoplates|cou|nuque|gorge",
            "douleur|douleurs|mal|serre|pression|lance|élancement*",
        ),
    ),
    Sign(
        "new_joint_pain",
        STOP_REST,
        (
            "genou|hanche|cheville|dos|épaule|articulation|muscle|mollet|aine|poignet|coude|cuisse",
            "aiguë|vive|tordu|tordue|tordre|foulé|foulée|claqué|claquage|déchiré|déchirure|craqué|soudaine|"
            "soudain|brusque|lâché|élongation",
        ),
    ),
    Sign("new_joint_pain", STOP_REST, ("entorse|lumbago|tour_de_rein|claquage",)),
    Sign(
        "severe_headache",
        STOP_REST,
        (
            "violent_mal_de_tête|gros_mal_de_tête|terrible_mal_de_tête|mal_de_tête_violent|"
            "mal_de_tête_terrible|mal_de_tête_intense|maux_de_tête_violents|très_mal_à_la_tête|"
            "fort_mal_de_tête|affreux_mal_de_tête|mal_de_tête_très_fort|maux_de_tête_intenses",
        ),
    ),
    Sign(
        "unusual_fatigue",
        STOP_REST,
        (
            "fatigue_inhabituelle|fatigue_anormale|anormalement_fatigué|anormalement_fatiguée|"
            "épuisement_soudain|soudainement_épuisé|soudainement_épuisée",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "me_tuer|suicid*|suicide|mettre_fin_à_mes_jours|en_finir|envie_de_mourir|veux_mourir|"
            "voudrais_mourir|voudrais_être_mort|voudrais_être_morte|me_faire_du_mal|me_mutil*|"
            "plus_de_raison_de_vivre|mieux_sans_moi|mieux_mort|mieux_morte|fatigué_de_vivre|"
            "fatiguée_de_vivre|idées_noires|overdose|me_foutre_en_l'air|scarif*",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "veux_plus_vivre|plus_envie_de_vivre|vaut_pas_la_peine_de_vivre|aucune_raison_de_vivre|"
            "pas_envie_de_vivre|veux_plus_me_réveiller|veux_plus_être_là|la_vie_n'a_plus_de_sens|"
            "peux_plus_continuer_comme_ça|ne_veux_pas_vivre|pas_de_raison_de_vivre",
        ),
        own_no=True,
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "me_fais_vomir|me_faire_vomir|fait_vomir_après|laxatif|laxatifs|crise_de_boulimie|"
            "crises_de_boulimie|boulimie|boulimique|anorexie|anorexique|hyperphagie|déteste_mon_corps|"
            "peur_de_manger|obsédé_par_mon_poids|obsédée_par_mon_poids|pense_qu'à_mon_poids|"
            "pense_qu'à_la_nourriture|m'affame|me_prive_de_manger|mange_presque_rien",
        ),
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "mange_plus_rien|pas_mangé_depuis|peux_pas_m'arrêter_de_manger|peux_pas_m'arrêter_de_me_peser|"
            "n'ose_plus_manger|rien_mangé_depuis",
        ),
        own_no=True,
    ),
)

DENIALS = Denials(
    no="pas|plus_de|n_ai_plus|n_a_plus|n_est_plus|ne_suis_plus|ne_fait_plus|ne_sens_plus|"
    "n_avais_plus|aucun|aucune|sans|jamais|ni|non_plus|rien|nulle|zéro|plus_aucune|plus_aucun|"
    "pas_de|pas_eu|exempt_de",
    no_after="non|aucun|aucune|pas|jamais|rien|négatif|néant|plus",
    between=(
        "de|d|des|du|la|le|les|l|à|au|aux|un|une|mal|mon|ma|mes|dans|eu|ai|j|je|n|ne|y|a|en|avoir|"
        "ressens|ressenti|sens|senti|me|suis|été|signe|signes|symptôme|symptômes|moindre|vraiment|"
        "aujourd|hui|autre|ce|cette|ni|fait|font|avait|avais|eue|sorte|particulier|particulière|non|"
        "se|moment|sensation|il|c|est|ça"
    ),
    and_="et|&",
    nor="ou|ni",
    but="mais|cependant|pourtant|sauf|car|parce|puisque|seulement|alors|par_contre|en_revanche|bien_que",
    past=(
        "l'année_dernière|l'an_dernier|année_passée|il_y_a_des_années|il_y_a_longtemps|"
        "le_mois_dernier|mois_dernier|dans_le_passé|quand_j'étais|autrefois|étant_enfant|été_dernier|"
        "hiver_dernier|ans|avant_l'opération|dans_ma_jeunesse|jadis|il_y_a_un_an|il_y_a_des_mois|"
        "19##|20##"
    ),
    imagined=(
        "et_si|si|pourrait|pourrais|devrais|peur|crains|inquiète|inquiet|risque|symptômes_de|"
        "symptômes_d|signes_de|signes_d|prévenir|éviter|qu'est_ce_que|est_ce_que|comment_savoir|"
        "j'ai_lu|rêvé|rêve|est_ce_normal|au_cas_où|ne_pense_pas|film|article|peut_il|c'est_quoi|"
        "que_faire_en_cas"
    ),
    others=(
        "mère|maman|père|papa|mari|femme|épouse|fils|fille|ami|amie|voisin|voisine|frère|sœur|soeur|"
        "il|elle|ils|elles|grand_mère|grand_père|oncle|tante|copain|copine|collègue|chien|chat|"
        "quelqu'un|gens|cousin|cousine|conjoint|conjointe|mamie|papi"
    ),
    now="maintenant|aujourd|encore|à_nouveau|de_nouveau|toujours|depuis|aussi|en_ce_moment|ce_matin|actuellement",
    mine="je|j|me|m|mon|ma|mes|moi",
    settled=(
        "passé|c'est_passé|disparu|parti|ça_va_mieux|ça_a_passé|s'est_calmé|s'est_calmée|calmé|"
        "calmée|partie|passée|est_passée|va_mieux_maintenant|terminé|ça_s'est_arrêté"
    ),
    harmless=(
        "tour_de_poitrine|de_bon_cœur|de_tout_cœur|par_cœur|mort_de_rire|morte_de_rire|"
        "mourir_de_rire|meurs_de_faim|mal_dormi|pas_mal|pression_artérielle|tension_artérielle|"
        "pression_des_pneus|développé_couché|pain|sur_le_cœur|coup_de_cœur|mal_compris|le_cœur_léger|"
        "cœur_de_métier|mort_de_fatigue|cours|lourd_petit|la_tension|ma_tension|mal_fait|brasse|"
        "mal_noté|courbature*|en_finir_avec"
    ),
)
