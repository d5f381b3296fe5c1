"""French: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.CORRECT: (
        "faute_de_frappe|s_est_trompe|s_est_trompee",
        "efface*|supprime*|corrige*|change* & valeur|mesure|chiffre|releve|derniere|dernier",
    ),
    Request.ADD: ("ajoute*|ajouter|rajoute*|inclus|mets|mesure_aussi",),
    Request.DROP: ("enleve*|retire*|^sans|ne_mesure_plus|arrete_de|supprime*|plus_de",),
    Request.PRIVATE: ("ne_doit_pas_voir|ne_devrait_pas_voir|cache*|masque*|ne_pas_montrer|ne_montre_pas|pas_voir",),
    Request.DAY: (
        "change*|deplace*|decale*|passe*|mets|autre & jour|heure|bilan|creneau|lundi*|mardi*|mercredi*|jeudi*|"
        "vendredi*|samedi*|dimanche*",
        "peut|prefere|veut & lundi*|mardi*|mercredi*|jeudi*|vendredi*|samedi*|dimanche*",
    ),
    Request.PAUSE: ("pause|est_en_vacances|est_en_voyage|a_l_hopital|hospitalise*|suspend*",),
    Request.HAND_OVER: ("confie*|transfere*|passe_a|transmets|reprend|transmettre",),
    Request.BASELINE: ("nouveau_depart|nouveau_point_de_depart|repartir_de_zero|valeur_de_depart",),
    Request.RENAME: ("renomme*|surnom",),
    Request.END: (
        "supprime*|efface*|termine*|arrete*|^fin|mettre_fin|mets_fin|desinscri*|a_quitte|abandonne*",
        "est_decede|est_decedee|est_mort|est_morte",
    ),
    Request.DONE: (
        "j_ai_appele|ai_appele|ai_parle|parle_avec|parle_a|regle|fini_avec|c_est_fait|ai_vu|traite|occupe_de",
        "ferme*|clos|enleve* & alerte*|alarme*",
    ),
    Request.EXPORT: (
        "export*|csv|fhir|tableau|tableur|telecharg*",
        "toutes|tous|les & donnees|mesures_prises|releves|chiffres",
    ),
    Request.PAGE: ("page|imprim*|pdf|rapport|feuille",),
    Request.PICTURE: ("image|graph*|courbe*|dessin*|photo",),
    Request.PLAN: (
        "plan|programme",
        "chaque_jour|tous_les_jours|quotidien* & pese|peser|pesee|pesees",
    ),
    Request.NOTE: (
        "note|notes",
        "^note|^notes|^noter|^ajoute_une_note|^remarque",
    ),
    Request.HISTORY: ("historique|histoire|passe|alarmes|alertes",),
    Request.CARD: (
        "montre*|voir|ouvre*|ouvrir|fiche|comment_va|comment_se_porte|ou_en_est|que_devient|cherche*|trouve*|"
        "parle_moi_de",
    ),
    Request.WRITE: (
        "^ecris|^ecrire|^ecrivez|^dis|^dites|^demande|^demandez|^reponds|^repondez|^envoie|^envoyez|^message_a|"
        "^message_pour",
        "^rappelle|^rappelez|^peux_tu_dire|^peux_tu_rappeler|^peux_tu_demander|^previens|^s_il_te_plait_dis|^stp_dis",
    ),
    Request.THREAD: (
        "messages|conversation|discussion|a_ecrit|ecrit",
        "que|qu & dit|a_dit",
    ),
    Request.LAST: (
        "combien|dernier|derniere|actuel*|plus_recent*|quel_est|quelle_est|quel_etait|quelle_etait|que_pese",
    ),
    Request.ABOUT: (
        "^pourquoi|^est|^est_ce|^a|^quand|^quel|^quelle|^que|^qu|^comment|^ou|^peut|^y_a_t_il|bien_pour|signale* &"
        " !tu|ton|ta",
    ),
    Request.DONE_THEM: (
        "je_l_ai|l_ai & appelee|appele|vue|vu",
        "j_ai|ai & parle_avec_elle|parle_avec_lui|parle_a_elle|lui_ai_parle",
        "lui_ai_parle|c_est_regle_avec_elle",
    ),
    Request.DIGEST_DAY: (
        "resume|recapitulatif|bilan_de_la_semaine & lundi*|mardi*|mercredi*|jeudi*|vendredi*|samedi*|dimanche*|"
        "chaque|plus_tard|plus_tot|autre_jour",
    ),
    Request.QUIET: (
        "silence|muet|sourdine|trop_de_messages|moins_de_messages|ne_pas_deranger|notifications|pas_la_nuit|tais_toi",
        "pas_de|plus_de|arrete|stop & resume|messages|recapitulatif",
    ),
    Request.STAND_IN: (
        "remplace|remplacant|remplacante|remplacement|me_remplace",
        "je_suis|je_serai|je_pars & absent|absente|vacances|conge|conges|parti|partie",
        "je_suis|je_serai & malade|en_repos|pas_la",
        "remplacera|va_me_remplacer|s_en_occupe|prend_le_relais",
        "^absent|^absente|^vacances",
    ),
    Request.INVITE: (
        "invite*|inviter|nouveau|nouvelle|ajouter|lien & client|cliente|personne|quelqu_un|quelquun|invitation|lien",
        "pas_recu|jamais_recu|perdu|renvoie*|encore|expire|ne_marche_pas & lien|invitation",
    ),
    Request.REPORT: ("rapport|bilan & cabinet|trimestr*|employeur|activite",),
    Request.NEEDS_ME: (
        "qui|quelqu_un|quelquun|y_a_t_il & besoin_de_moi|besoin_d_aide|urgent|urgence|attend|attendent|"
        "besoin_de_quelqu_un",
        "quoi_de_neuf|du_nouveau|des_nouvelles",
        "qui & appeler|signale*|va_mal|inquiet*",
        "est_ce|c_est|est_il|est_elle & vrai|reel|grave|serieux|urgent|hasard|dangereux",
        "alerte|alertes|alarme & que|quoi|pourquoi|signifie|combien",
    ),
    Request.CASELOAD: (
        "^mes_clients|^mes_gens|^tous_les_clients|^tous|^toutes|^ma_liste|^liste",
        "montre*|voir|liste|qui_sont & clients|gens|tous|liste|personnes",
        "combien & clients|personnes|gens",
    ),
    Request.WEEK: (
        "^cette_semaine|^la_semaine|^ma_semaine|resume|recapitulatif",
        "comment_etait|montre*|voir & semaine|lundi",
        "qui|combien|tous|quelqu_un & repondu|repond|manque|manquent|fait_le_bilan",
    ),
}

# What joins words to whom they are for: "tell Ada that ...".
JOINTS = frozenset({"que", "qu", "de", "d"})
