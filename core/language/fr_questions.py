"""French: what clients ask in the middle of everyday life."""

from __future__ import annotations

from core.language.lexicon import Question

_COACH = "@|coach|entraineur|entraineuse|moniteur|monitrice"

QUESTIONS: dict[Question, tuple[str, ...]] = {
    Question.MEDICAL: (
        "puis_je|peux|dois|devrais|faut_il|est_ce & comprime*|medicament*|cachet*|dose|insuline|antibiotique*|"
        "ibuprofene|paracetamol|doliprane|traitement",
        "puis_je|peux|dois|devrais & sport|marcher|courir|nager|exercice*|test|bouger|faire & rhume|grippe|fievre|"
        "malade|"
        "mal|douleur*|genou|dos|blesse*|enceinte|operation|covid",
        "est_ce_normal|cest_normal|pourquoi & fatigue|fatiguee|courbature*|mal|douleur*|crampe*|soif",
        "sans_raison|sans_le_vouloir|sans_rien_faire & perdu|poids|maigri",
    ),
    Question.FOOD: (
        "que|quoi|puis_je|peux|dois|combien|quest_ce_que & manger|mange|repas|regime|calories|proteine*|sucre|pain|"
        "chocolat|alcool|vin|biere|petit_dejeuner & !avant|apres|test|peser",
    ),
    Question.CAN_STOP: (
        "puis_je|je_peux|jpeux|peut_on|on_peut|et_si_je|si_je|si_jamais_je|jai_le_droit|ai_je_le_droit & "
        "arreter|arrete|darreter|abandonner|dabandonner|quitter|me_desinscrire|changer_davis|change_davis|me_retirer|"
        "tout_annuler & !comprime*|medicament*|cachet*|insuline|traitement|fumer|sport|boire|manger|exercice*|"
        "la_pilule|pas|plus|darriver|pleurer|tousser|trembler|penser",
    ),
    Question.ABOUT: (
        "de_quoi_sagit_il|de_quoi_il_sagit|cest_quoi_ce_truc|cest_quoi_au_juste|cest_quoi_exactement|cest_quoi_en_fait|"
        "cest_a_propos_de_quoi|ca_consiste|en_quoi_consiste|tu_fais_quoi|vous_faites_quoi|que_faites_vous|que_fais_tu|"
        "cest_quoi_samehour|comment_ca_fonctionne|comment_ca_se_passe|ca_se_passe_comment|ca_marche_comment|"
        "a_quoi_je_mengage|cest_quoi_le_principe|quel_est_le_principe|cest_quoi_lidee|a_quoi_sert_ce_truc|"
        "cest_quoi_le_but & !ce_soir|demain|fuseau",
        "tu|vous|je_vais|je_recevrai|je_recois & mecrire|ecrire|ecris|ecrivez|mecris|mecrivez|mecrirez|envoies|"
        "envoyez|contacter|deranger|embeter|recevoir|recevrai|messages|me_demander & tous_les_jours|chaque_jour|"
        "souvent|tout_le_temps|chaque_semaine|toutes_les_semaines|sans_arret & !pourquoi",
    ),
    Question.ILL: (
        "jai|chope|attrape|avec|je_suis|suis|cloue|clouee|au_lit|positif|positive|je_fais|je_couve|ai|jai_eu & "
        "grippe|covid|corona|rhume|angine|gastro|bronchite|sinusite|virus|infection|fievre|otite|laryngite|"
        "creve|migraine|enrhume|enrhumee|zona|intoxication_alimentaire|rhino & "
        "!puis_je|peux|dois|mari|femme|fils|fille|mere|maman|pere|papa|il|elle|soeur|frere|ami|amie|copine|petit|"
        "petite|petits|enfants|voisin|voisine|lannee|mois|ans|pas|jamais|plus|si|vaccin*|est_ce|peur|poitrine",
    ),
    Question.RESCHEDULE: (
        "rappelle*|rappel|rappeler|rappelez|demande|demandez|demander|ecris|ecrire|ecrivez|envoie|envoyer|envoyez & "
        "plutot|a_la_place|desormais|dorenavant|a_partir_de_maintenant|toujours|chaque_semaine|un_autre_jour|"
        "une_autre_heure|plus_tot & !coach|@|mari|balance|peser|si|poids|taille|pouls|tension|medecin",
        "peut_on|on_peut|peux_tu|tu_peux|pouvez_vous|vous_pouvez|pourriez_vous|on_pourrait|puis_je|je_peux|je_voudrais|"
        "jaimerais|je_veux|comment|possible & changer|deplacer|decaler|modifier|avancer & "
        "jour|heure|lheure|horaire|creneau|rappel|rendez_vous|rdv|point & "
        "!objectif|coach|@|mesure*|unite*|langue|poids|chiffre|medecin",
        "plutot|au_lieu|a_la_place & lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche|heures|heure|h & "
        "serait|prefere|prefererais|marrange|marrangerait|mieux|possible|peut|peux|pourrait|pouvez & "
        "!@|coach|medecin|rendez_vous",
        "cest_possible|est_possible|ce_serait_possible|ca_irait|possible & lundi|mardi|mercredi|jeudi|vendredi|samedi|"
        "dimanche & !@|coach|medecin|rendez_vous|pas|sport|seance|retard|que_je|que_jaie",
    ),
    Question.TAKE_OUT: (
        "efface*|supprime*|enleve*|retire*|annule* & le_poids|mon_poids|le_dernier_poids|dernier_poids|"
        "derniere_pesee|dernier_pouls|derniere_tension|dernier_tour_de_taille|la_valeur|le_chiffre|la_mesure|"
        "le_tour_de_taille|mon_tour_de_taille|la_taille|les_hanches|le_tour_de_hanches|le_pouls|mon_pouls|la_tension|"
        "ma_tension|lenergie|le_resultat|ce_chiffre|cette_valeur|cette_mesure & "
        "!tout|toutes|compte|donnees|chaque|pas|rendez|veux|voudrais|objectif",
    ),
    Question.NO_TOOL: (
        "pas_de|plus_de|nai_pas|nai_plus|ai_pas|ai_plus|jai_pas|jai_plus|sans|perdu_mon|perdu_ma|perdu_le|trouve_pas|"
        "trouve_plus|retrouve_pas|retrouve_plus|casse|cassee|panne|marche_pas|marche_plus|fonctionne_pas|"
        "fonctionne_plus|pile|piles|prete & metre|metre_ruban|ruban|balance|tensiometre|brassard|"
        "chaise|appareil|pese_personne & !puis_je|montre_moi|montrez|un_metre|cent_metre|chaussure*|vetement*|"
        "habill*|pieds_nus|chaussettes",
        "pile|piles & plates|mortes|vides|morte|vide|plus",
    ),
    Question.NOT_NOW: (
        "plus_tard|ce_soir|tout_a_lheure|tantot|apres_le_travail|apres_le_boulot|apres_manger|en_rentrant|"
        "quand_je_rentre|a_la_maison|demain|ce_week_end|dans_une_heure|une_autre_fois & "
        "je_ferai|je_le_ferai|jle_ferai|je_fais_ca|je_le_fais|jle_fais|je_reponds|je_repondrai|je_vous_reponds|"
        "jenvoie|jenverrai|je_vous_envoie|je_tenvoie|je_mesure|je_mesurerai|je_finirai|je_finis|on_verra|"
        "je_vous_dis|je_te_dis|je_vous_dirai|je_regarde|on_fait_ca|je_men_occupe & "
        "!@|toujours|dorenavant|me_pese|peser|arreter|medecin|appelle*|puis_je|dois|sport|marche",
        "a_demain|a_ce_soir|a_plus_tard|a_apres_demain & reporte*|remet*|decale*|repousse* & !toujours|jour|rendez",
        "pas_le_temps|pas_trop_le_temps|pas_une_minute|suis_presse|suis_pressee|suis_occupe|suis_occupee|"
        "trop_occupe|trop_occupee|au_volant|je_conduis|en_voiture|en_reunion|au_boulot|au_travail|dans_le_bus|"
        "dans_le_train|dans_le_metro|au_supermarche|pas_le_moment|mauvais_moment|pas_chez_moi|pas_encore_rentre|"
        "pas_encore_rentree|pas_a_la_maison & "
        "!semaine|derniere|avais|etait|etais|sport|exercice*|eu|bouger|marcher|jetais",
    ),
    Question.MAY_SEND: (
        "puis_je|je_peux|jpeux|peut_on|on_peut|dois_je|voulez_vous|tu_veux|vous_voulez|veux_tu & "
        "envoyer|envoie|jenvoie|donner|donne|transmettre|noter|ajouter|communiquer|mettre|entrer|dire & "
        "tension|pouls|poids|tour_de_taille|hanches|mes_pas|mesures|chiffres|valeurs & "
        "!photo*|image|@|coach|menvoyer|me_donner|me_dire|capture|medecin|peux_pas",
    ),
    Question.FREE: ("cest|est_ce|combien|faut|dois & gratuit|gratuite|coute|payer|prix|payant",),
    Question.WHO_SEES: (
        "^qui & voit|lit|sait|verra|lira|voient|acces",
        f"^est_ce_que|^mon|^ma|^les & {_COACH}|quelquun|autres|groupe|assurance|patron|famille & voit|lit|voient|"
        "lisent",
        "cest|est_ce|sont & prive|privees|confidentiel|confidentielles|secret",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & peut|pourrait|dis|dites|dire_a|peux_dire|pouvez_dire|demande|demandez|previens|prevenez|"
        "donne|transmet* & !qui|voit|lit|changer|autre|"
        "nouveau",
        f"{_COACH} & mappeler|mappelle|appelle_moi|rappeler|merci",
        "@ & parler|discuter|téléphoner & veux|voudrais|aimerais|souhaite|peux|pourrais|puis_je|dois|besoin|envie",
    ),
    Question.WHO: (
        "qui_es_tu|tu_es_qui|qui_etes_vous|vous_etes_qui|cest_qui|qui_est_ce|il_y_a_quelquun|comment_tu_tappelles|"
        "a_qui_je_parle",
        "es_tu|etes_vous|tu_es|vous_etes & robot|bot|machine|humain|humaine|personne|medecin|programme|ordinateur|"
        "vrai|vraie",
    ),
    Question.THERE: ("tu_es_la|vous_etes_la|es_tu_la|etes_vous_la|il_y_a_quelquun|y_a_quelquun|toujours_la",),
    Question.HOW_ARE_YOU: ("comment_vas_tu|comment_allez_vous|comment_ca_va|tu_vas_bien|vous_allez_bien|et_toi_ca_va",),
    Question.PHOTO: ("puis_je|peux|je & envoyer|envoie|mettre & photo*|image|video|vocal|message_vocal",),
    Question.HOW_LONG: (
        "combien|ca & prend|dure|faut_il|temps|minutes & !programme|semaines|reste|encore|sucre|peser",
    ),
    Question.HOW_OFTEN: (
        "pourquoi & toutes|seulement|chaque|que & semaine*|mois|jours",
        "combien_de_fois|tous_les_combien|a_quelle_frequence",
    ),
    Question.MUST: (
        "dois|faut|oblige|suis_je_oblige & tout|toutes|repondre|faire|mesurer",
        "cest|est_ce|suis & obligatoire|facultatif|oblige|obligee",
    ),
    Question.MISSED: (
        "que_se_passe|desole|desolee|pardon|cest_grave|et_si & oublie*|joublie|joubliais|rate|saute|manque|"
        "semaine & !comprime*|"
        "medicament*",
        "jai_oublie|jai_rate & semaine|hier|lundi|derniere",
        "desole|desolee|pardon|excuse* & repondu|donne_de_nouvelles|retard|ecrit & !peux|mal|medecin",
    ),
    Question.WEIGH: (
        "puis_je|peux|dois|devrais|quand|veux|voudrais & me_peser|peser|balance|pesee & !pourquoi|combien|perdre|"
        "pas|jamais|plus",
    ),
    Question.CHANGED: (
        "jai|a|mon|ma|est_ce & perdu|maigri|grossi|pris|baisse|diminue|augmente|change & kilo*|kg|poids|cm|centimetre*|"
        "taille|tour|pouls|tension & !veux|comment|maintenant|amie|soeur|mari|femme|rendez",
        "jai & maigri|grossi & !veux|comment",
    ),
    Question.SINCE: ("montre|montrez|voir|graphique|courbe|image & depuis|dernier_mois|derniers_mois|debut",),
    Question.FIRST: (
        "combien|quel|quelle|quoi & debut|commence|depart|premier|premiere & pesais|poids|taille|tour|pouls|etait|"
        "avais",
    ),
    Question.LAST: (
        "combien|quel|quelle|quoi|quand & derniere|dernier|precedent & !semaine|mois",
        "as|avez|est & recu|enregistre|note|arrive|bien_recu & !quest",
    ),
    Question.OVER: (
        "encore_combien|combien_de_temps_encore|combien_de_semaines_encore|ca_dure_encore & temps|semaines|"
        "longtemps|combien",
        "quand|combien|est_ce|cest|ca & fini|finit|termine|fin|reste|dure & programme|ca|cest|semaines|encore|cours|"
        "tout",
    ),
    Question.NEXT: (
        "quoi|quand|quelle|quel|cest & prochain|prochaine|ensuite|suite|apres_ca",
        "que|quand|quest_ce_que & vas_tu_me_demander|tu_vas_me_demander|ecris_tu|tu_mecris|tu_reviens|reviens_tu|"
        "vous_revenez|revenez_vous|vous_mecrivez",
        "se_passe & quoi|que|quest_ce & maintenant|ensuite|apres & !si",
        "^cest_tout|^cest_deja_fini|on_a_fini|cest_tout_pour & !ce_que|pas",
    ),
    Question.NORMAL: (
        "quel|quelle|quoi|combien & normal|normale|moyenne|ideal|ideale|devrait|devrais|habituel",
        "mon_age & normal|normale|bien|bon|moyenne",
    ),
    Question.WHY_TEST: (
        "pourquoi|a_quoi|pour_quoi & test*|mesure*|mesurer|taille|hanche*|poids|peser|pouls|metre|chaise|tension|"
        "chiffre|"
        "energie|equilibre|question*|ca|cela|sert|demande* & !pas|fatigue|fatiguee|mal|maigris|augmente|baisse",
    ),
    Question.MEANING: (
        "que|quoi|ca|quest_ce_que & veut_dire|veux_dire|signifie",
        "comprends|comprend & pas & chiffre*|resultat*|hasard|ca|graphique|dit",
    ),
    Question.DOING: (
        "comment_je_men_sors|je_men_sors|est_ce_que_je_progresse|je_progresse|ai_je_progresse|jai_progresse|ca_marche|"
        "est_ce_que_ca_marche|ca_a_marche|ou_jen_suis|ou_en_suis_je|je_suis_sur_la_bonne_voie|est_ce_que_je_vais_mieux|"
        "ca_sert_a_quelque_chose",
    ),
    Question.GOOD: (
        "^cest|^est_ce|^est_il|^et_cest|cest_bien|cest_bon|cest_grave|est_ce_que_cest|^cetait & bien|bon|mal|mauvais|"
        "normal|haut|eleve|bas|beaucoup|peu|mieux|pire|grave|inquietant & !de|quand|si|heure|jour|temps|pour",
        "dois|faut_il|devrais & inquieter|minquieter",
    ),
    Question.SWEARING: (
        "merde|putain|connard|conne|con|chiant|chiante|fait_chier|nul|nulle|debile|ta_gueule|imbecile|idiot|marre & "
        "!sens|mal|dormi|douleur*|vie|corps",
    ),
    Question.BYE: (
        "^bonne_nuit|^au_revoir|^a_bientot|^a_demain|^a_la_prochaine|^bonne_soiree|^bonne_journee|^salut_a|^ciao|"
        "^prends_soin",
    ),
    Question.WAIT: (
        "^attends|^attendez|^un_moment|^un_instant|^une_seconde|^une_minute|^deux_minutes|^je_reviens|^patience & "
        "!semaine|semaines|vacances|mois",
    ),
    Question.TIME_ME: (
        "pas_de|plus_de|sans|casse|cassee|trouve_pas|trouve_plus|ai_pas & chronometre|chrono|ma_montre|de_montre|"
        "trotteuse",
        "^chrono|^chronometre|^minuteur|chronometrez_moi|chronometre_moi|lance_le_chrono|lancez_le_chrono|"
        "compte_le_temps|comptez_le_temps & !semaine|quand",
    ),
    Question.CHAT: (
        "blague|chanson|poeme|histoire & raconte*|connais|connaissez|chante*|ecris|dis & !pas_une|etait",
        "quelle_heure|quel_jour_on_est|on_est_quel_jour|quel_temps|il_va_pleuvoir|on_est_lundi",
        "je_taime|je_vous_aime|epouse_moi|tu_es_drole|vous_etes_drole|tu_es_gentil|vous_etes_gentil",
    ),
    Question.GRIEF: (
        "mort|morte|decede|decedee|enterrement|obseques|j_ai_perdu|est_parti|est_partie & "
        "mere|pere|maman|papa|mari|femme|fils|fille|frere|soeur|grand_mere|grand_pere|ami|amie|chien|chat|enterrement|"
        "obseques & !il_y_a|film|telephone|kilos",
    ),
    Question.GOAL: (
        "je_veux|je_voudrais|j_aimerais|mon_objectif|mon_but & perdre|descendre|arriver|atteindre|maigrir & "
        "kilo*|kg|cm|ete|noel & !aide|pas",
        "oublie|enleve|change|supprime|voir & objectif|but",
    ),
    Question.NO_WEIGHT: (
        "je_ne_veux_pas|veux_plus|veux_pas|je_prefere_ne_pas|je_deteste & me_peser|peser|pesee|balance & "
        "!aujourd|jour|maintenant",
    ),
    Question.BODY: (
        "je_suis|suis_je|est_ce_que_je_suis|je_me_sens|je_me_trouve|je_deteste|j_ai_honte & "
        "gros|grosse|trop_gros|trop_grosse|obese|moche|laid|laide|mon_corps|mon_ventre|"
        "mon_poids & !effort|efforts|content",
    ),
    Question.SORRY: (
        "^desole|^desolee|^pardon|^excuse_moi|^excusez_moi|^je_mexcuse|^mes_excuses & "
        "!oubli*|retard|poids|taille|pouls|etait|cetait|pas|faux|peux|cest|jai",
    ),
    Question.GLAD: ("^haha*|^hihi*|^super|^genial|^chouette|^cool|^mdr|^parfait & !mais|temps|jour",),
}
