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
    Question.FREE: ("cest|est_ce|combien|faut|dois & gratuit|gratuite|coute|payer|prix|payant",),
    Question.WHO_SEES: (
        "^qui & voit|lit|sait|verra|lira|voient|acces",
        f"^est_ce_que|^mon|^ma|^les & {_COACH}|quelquun|autres|groupe|assurance|patron|famille & voit|lit|voient|"
        "lisent",
        "cest|est_ce|sont & prive|privees|confidentiel|confidentielles|secret",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & peut|pourrait|dis|dites|demande|demandez|previens|prevenez|donne & !qui|voit|lit|changer|autre|"
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
    Question.THERE: ("tu_es_la|vous_etes_la|es_tu_la|etes_vous_la|il_y_a_quelqu_un|y_a_quelqu_un|toujours_la",),
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
        "cest|est_ce & obligatoire|facultatif",
    ),
    Question.MISSED: (
        "que_se_passe|desole|desolee|pardon|cest_grave|et_si & oublie*|rate|saute|manque|semaine & !comprime*|"
        "medicament*",
        "jai_oublie|jai_rate & semaine|hier|lundi|derniere",
    ),
    Question.WEIGH: (
        "puis_je|peux|dois|devrais|quand|veux|voudrais & me_peser|peser|balance|pesee & !pourquoi|combien|perdre",
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
        "quand|combien|est_ce|cest|ca & fini|finit|termine|fin|reste|dure & programme|ca|cest|semaines|encore|cours|"
        "tout",
    ),
    Question.NEXT: (
        "quoi|quand|quelle|quel|cest & prochain|prochaine|ensuite|suite|apres_ca",
        "que|quand|quest_ce_que & vas_tu_me_demander|tu_vas_me_demander|ecris_tu|tu_mecris",
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
    Question.GLAD: ("^haha*|^hihi*|^super|^genial|^chouette|^cool|^mdr|^parfait & !mais|temps|jour",),
}
