"""French: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.EXPORT: (
        "export*|csv|fhir|tableau|tableur|telecharg*",
        "toutes|tous|les & donnees|mesures_prises|releves|chiffres",
    ),
    Request.PAGE: ("page|imprim*|pdf|rapport|feuille",),
    Request.PICTURE: ("image|graph*|courbe*|dessin*|photo",),
    Request.PLAN: ("plan|programme",),
    Request.NOTE: ("note|notes",),
    Request.HISTORY: ("historique|histoire|passe|alarmes|alertes",),
    Request.CARD: (
        "montre*|voir|ouvre*|ouvrir|fiche|comment_va|comment_se_porte|ou_en_est|que_devient|cherche*|trouve*|"
        "parle_moi_de",
    ),
    Request.WRITE: (
        "^ecris|^ecrire|^ecrivez|^dis|^dites|^demande|^demandez|^reponds|^repondez|^envoie|^envoyez|"
        "^message_a|^message_pour",
    ),
    Request.THREAD: ("messages|conversation|discussion|a_ecrit|ecrit", "que|qu & dit|a_dit"),
    Request.STAND_IN: (
        "remplace|remplacant|remplacante|remplacement|me_remplace",
        "je_suis|je_serai|je_pars & absent|absente|vacances|conge|conges|parti|partie",
    ),
    Request.INVITE: (
        "invite*|inviter|nouveau|nouvelle|ajouter|lien & client|cliente|personne|quelqu_un|quelquun|invitation|lien",
    ),
    Request.REPORT: ("rapport|bilan & cabinet|trimestr*|employeur|activite",),
    Request.NEEDS_ME: (
        "qui|quelqu_un|quelquun|y_a_t_il & besoin_de_moi|besoin_d_aide|urgent|urgence|attend|attendent|"
        "besoin_de_quelqu_un",
        "quoi_de_neuf|du_nouveau|des_nouvelles",
    ),
    Request.CASELOAD: (
        "^mes_clients|^mes_gens|^tous_les_clients|^tous|^toutes|^ma_liste|^liste",
        "montre*|voir|liste|qui_sont & clients|gens|tous|liste|personnes",
    ),
    Request.WEEK: (
        "^cette_semaine|^la_semaine|^ma_semaine|resume|recapitulatif",
        "comment_etait|montre*|voir & semaine|lundi",
    ),
}
