"""French: intents, days and times."""

from __future__ import annotations

from core.client import Sex
from core.language.lexicon import Calendar, Destroys, Intent, split

CALENDAR = Calendar(
    weekdays=(
        split("lundi;lun;lundis"),
        split("mardi;mar;mardis"),
        split("mercredi;mer;mercredis"),
        split("jeudi;jeu;jeudis"),
        split("vendredi;ven;vendredis"),
        split("samedi;sam;samedis"),
        split("dimanche;dim;dimanches"),
    ),
    months=(
        split("janvier;janv"),
        split("février;févr;fév"),
        split("mars"),
        split("avril;avr"),
        split("mai"),
        split("juin"),
        split("juillet;juil"),
        split("août;aout"),
        split("septembre;sept"),
        split("octobre;oct"),
        split("novembre;nov"),
        split("décembre;déc"),
    ),
    today=split("aujourd'hui;aujourd hui"),
    tomorrow=split("demain"),
    day_after=split("après demain"),
    next=split("prochain;prochaine;le prochain;la prochaine;suivant;suivante;qui vient"),
    in_=split("dans;pour;pendant;d'ici;dans une;dans un;pour une;pour un;pendant une;pendant un;une;un"),
    to=split("à;au"),
    until=split("jusqu'à;jusqu'au;jusqu à;jusqu au;jusque;avant;avant le"),
    day=split("jour;jours"),
    week=split("semaine;semaines"),
    month=split("mois"),
    at=split("à;vers;dès"),
    am=split("du matin;le matin;matin;dans la matinée;matinée"),
    pm=split(
        "du soir;le soir;soir;de l'après midi;l'après midi;après midi;ce soir;cet après midi;"
        "de l après midi;l après midi;cet apres midi"
    ),
    noon=split("midi;à midi"),
    midnight=split("minuit"),
    hour=split("h;heure;heures"),
    half_after=split("et demie;et demi;trente"),
    quarter_after=split("et quart"),
    quarter_less=split("moins le quart;moins quart"),
    place=split(
        "je suis à;je suis en ce moment à;je suis maintenant à;suis à;j'habite à;je vis à;"
        "j'ai déménagé à;je voyage à;je pars à;je vais à;fuseau horaire;ville;en vacances à;"
        "nous sommes à;je me trouve à;maintenant à;arrivé à;arrivée à;actuellement à;je suis au;"
        "je suis aux;ma ville est"
    ),
    any_day=split("n'importe;n'importe quel jour;peu importe;ça m'est égal;tous les jours"),
    except_=split(
        "sauf;mais pas;pas le;pas les;pas un;excepté;à part;hormis;surtout pas;ne me va pas;me va pas;"
        "ne me convient pas;me convient pas;"
        "ça ne va pas;ça va pas;n'est pas possible;c'est pas possible;pas possible;est impossible;c'est impossible;"
        "c'est mauvais;est mauvais;sont mauvais;tombe mal;je ne peux pas;je peux pas;j'peux pas;je ne peux jamais;"
        "je peux jamais;ça ne marche pas;ne m'arrange pas;m'arrange pas"
    ),
    place_ends=split(
        "jusqu;jusqu'à;jusquau;jusqua;pour;cette;maintenant;depuis;et;avec;mais;aujourd;demain;"
        "pendant;en;dès;ce;la;le;de"
    ),
)

SEXES = {
    Sex.MALE: split("homme;masculin;h;m;monsieur;je suis un homme"),
    Sex.FEMALE: split("femme;féminin;f;madame;je suis une femme"),
}

WISHES = {
    Intent.YES: split(
        "oui;oui …;ouais;bien sûr;bien sûr …;d'accord;ok;okay;exact;exactement;c'est ça;c'est exact;"
        "certainement;volontiers;oui merci;oui s'il vous plaît;tout à fait;en effet;c'est correct;"
        "correct;je suis d'accord;j'accepte;vas y;allez y;absolument;si;pas de problème;pas de souci;pas de soucis;"
        "aucun problème;aucun souci;sans problème;sans souci;ça me va;ça me va bien;ça me convient;ça marche;ça roule;"
        "entendu;c'est entendu;d'acc;dacc;ouaip;avec plaisir;bien volontiers;je veux bien;bon d'accord;ok d'accord;"
        "c'est d'accord;ok pour moi;moi ça me va;partant;partante;je suis partant;je suis partante;"
        "si vous voulez;si tu veux;évidemment;parfaitement;oui oui;ben oui;mais oui;bah oui;oui je veux bien;"
        "je suis pour;pourquoi pas oui"
    ),
    Intent.NO: split(
        "non;non …;nan;pas du tout;faux;c'est faux;aucun;aucune;aucun de ceux là;non merci;"
        "pas vraiment;plutôt non;jamais;ce n'est pas ça;ce n'est pas correct;rien de tout ça;négatif;"
        "pas d'accord;incorrect"
    ),
    Intent.HELP: split(
        "c'est quoi ça;c'est quoi ça …;ça veut dire quoi;où exactement …;où je mesure …;"
        "où est ce que je mesure …;où faut il mesurer …;… m'aider …;aide;aide …;"
        "aide moi;aidez moi;aide moi …;aidez moi …;à l'aide;que faire;"
        "que puis je faire;qu'est ce que je peux faire;comment ça marche;comment …;comment;"
        "je ne comprends pas …;je comprends pas …;j'ai besoin d'aide …;… besoin d'aide …;c'est quoi;"
        "qu'est ce que c'est;instructions;explique …;expliquez …;menu;commandes;je suis perdu;"
        "je suis perdue;au secours"
    ),
    Intent.SKIP: split(
        "je préfère pas;j'préfère pas;je ne préfère pas;je peux passer …;puis je passer …;on peut passer …;"
        "je peux sauter …;on peut sauter …;on saute …;passer;passer …;sauter;sauter …;suivant;suivante;"
        "question suivante;pas celle là;"
        "pas celui là;pas cette fois;pas aujourd'hui;pas aujourd'hui …;je n'ai pas de balance;"
        "je n'ai pas de mètre;pas de balance;pas de mètre;saute …;passe;passe …;je passe;on passe;"
        "ignorer;laisser de côté;je ne peux pas le faire;je préfère passer;pas de mètre ruban"
    ),
    Intent.LATER: split(
        "plus tard;plus tard …;pas maintenant;pas maintenant …;tout à l'heure;rappelle moi …;"
        "rappelez moi …;je suis occupé …;je suis occupée …;occupé;occupée;demain;demain …;ce soir;"
        "cet après midi;une autre fois;je suis au travail …;je ne suis pas chez moi …;dans une heure;"
        "pas le temps;j'ai pas le temps;je n'ai pas le temps;pas trop le temps;attends;"
        "attendez;un moment;redemande moi …;après;"
        "un instant"
    ),
    Intent.STOP: split(
        "stop;arrêter;arrête;arrêtez;annuler;annule;annulez;fin;terminer;ça suffit;assez;laisse tomber;"
        "laissez tomber;laisse moi tranquille;quitter;arrête …;arrêter …;annuler …;tant pis;"
        "j'arrête;j'arrête tout;j'arrête là;je veux arrêter …;je souhaite arrêter …;j'veux arrêter …;"
        "je voudrais arrêter …;j'aimerais arrêter …"
    ),
    Intent.UNDO: split(
        "annuler la dernière;annuler le dernier;défaire;supprime ça;supprime la dernière …;"
        "supprimer la dernière …;efface ça;efface le dernier …;effacer;mauvais chiffre;"
        "je me suis trompé;je me suis trompée;c'était une erreur;erreur;c'est une erreur;"
        "faute de frappe;mauvaise valeur;supprime le dernier …;retire ça;reviens en arrière;retour;"
        "revenir en arrière;annule la dernière …;annule le dernier …;supprimer le dernier …"
    ),
    Intent.COACH: split(
        "coach;coach …;je veux parler à mon coach …;je veux parler à ma coach …;je voudrais parler à mon coach …;"
        "je voudrais parler à ma coach …;puis je parler à mon coach …;puis je parler à ma coach …;"
        "je peux parler à mon coach …;je peux parler à ma coach …;parler à mon coach …;parler à ma coach …;"
        "parler au coach …;j'ai besoin de mon coach …;j'ai besoin de ma coach …;dis à mon coach …;dites à mon coach …;"
        "dis à ma coach …;dites à ma coach …;entraîneur;entraîneuse;instructeur;instructrice;… mon coach …;"
        "… ma coach …;"
        "… le coach …;… mon entraîneur …;… parler à quelqu'un …;… à une personne …;… à un humain …;"
        "message …;une personne;un humain;appelez moi;appelle moi;… parler à mon …;contacter …;"
        "… mon instructeur …;… mon instructrice …"
    ),
    Intent.PAUSE: split(
        "vacances jusqu'à …;vacances jusqu'au …;vacances du …;vacances la …;congés jusqu'au …;congés du …;"
        "… en cure …;… en cure;je serai pas là …;je ne serai pas là …;je suis pas là …;je ne suis pas là …;"
        "je suis en déplacement …;en rééducation …;"
        "pause;pause …;mettre en pause;vacances;en vacances;en vacances …;… en vacances …;"
        "… une pause …;je suis absent …;je suis absente …;je pars …;je serai absent …;"
        "je serai absente …;suspendre;suspendre …;à l'hôpital;… à l'hôpital …;"
        "pas de messages jusqu …;congés;en congé …;hospitalisé;hospitalisée;interrompre …;interrompre"
    ),
    Intent.RESUME: split(
        "je suis rentré;je suis rentrée;je suis rentré …;je suis rentrée …;rentré à la maison;rentrée à la maison;"
        "on est rentrés;on est rentrés …;nous sommes rentrés …;de retour à la maison;de retour chez moi;"
        "je suis revenue …;je suis revenu …;me revoici;me voilà de retour;fini les vacances;les vacances sont finies;"
        "reprendre;reprendre …;je suis de retour …;de retour;je suis revenu;je suis revenue;"
        "fin de la pause;recommencer;on reprend;je reviens;me revoilà;reprise;je recommence"
    ),
    Intent.TODAY: split(
        "aujourd'hui;qu'est ce qu'il y a aujourd'hui;quoi aujourd'hui;que dois je faire aujourd'hui;"
        "à faire;quand est le prochain …;quelle est la suite;c'est quoi aujourd'hui;mes tâches;"
        "quoi de prévu;quand est la prochaine …"
    ),
    Intent.RECORD: split(
        "enregistrer;enregistrer …;noter;noter …;nouvelle mesure;ajouter;ajouter …;saisir;saisir …;"
        "entrer une mesure;j'ai mesuré;sauvegarder"
    ),
    Intent.PROGRESS: split(
        "progrès;mes progrès;mes progrès …;progression;ma progression;résultats;mes résultats;courbe;"
        "ma courbe;graphique;graphique …;évolution;mon évolution;historique;où j'en suis;"
        "comment je m'en sors;mes chiffres;mes mesures;statistiques;… mes progrès …;"
        "… mes résultats …;… ma courbe …;tendance;… ma progression …;… mon évolution …;bilan"
    ),
    Intent.GOAL: split(
        "objectif;objectif …;objectifs;mon objectif;mon objectif …;but;mon but;nouvel objectif;"
        "changer d'objectif;cible;fixer un objectif …;… mon objectif …;… un objectif …;"
        "je veux atteindre …"
    ),
    Intent.SETTINGS: split("paramètres;paramètres …;réglages;réglages …;options;préférences;profil;configuration"),
    Intent.SAME: split(
        "pareil;pareil que la dernière fois;comme la dernière fois;identique;la même chose;"
        "tout pareil;comme d'habitude;rien n'a changé;sans changement;inchangé;comme avant;"
        "même chose;les mêmes conditions;idem;tout comme la dernière fois;exactement pareil;"
        "mêmes conditions"
    ),
    Intent.DIFFERENT: split(
        "différent;différente;différent …;pas pareil;ce n'était pas pareil;autre balance;"
        "nouvelle balance;autrement;quelque chose a changé;c'était différent;"
        "pas comme la dernière fois;pas identique"
    ),
    Intent.WHY: split(
        "pourquoi;pourquoi …;pour quoi faire;dans quel but;à quoi ça sert;pourquoi pas;raison;pour quelle raison"
    ),
    Intent.SOURCE: split(
        "source;sources;source …;d'où ça vient;d'où vient …;d'où vient ce chiffre;qui dit ça;"
        "référence;références;quelle étude;étude;selon qui;sur quoi vous basez vous;d'où cela vient;"
        "… la source …;sur quoi c'est basé"
    ),
    Intent.THANKS: split(
        "merci;merci …;merci beaucoup;merci bien;un grand merci;super;génial;parfait;bien;très bien;"
        "c'est gentil;formidable;excellent;chouette;bravo;cool;c'est bien;nickel;top"
    ),
    Intent.GREETING: split(
        "bonjour;bonjour …;salut;bonsoir;coucou;bonne nuit;au revoir;bonne journée;bonsoir …;salut …;à bientôt;à demain"
    ),
    Intent.DONE: split(
        "fait;c'est fait;terminé;fini;j'ai fini;j'ai terminé;voilà;c'est tout;prêt maintenant;"
        "tout est fait;rien d'autre;c'est bon;je l'ai fait;complété;c'est terminé;c'est fini"
    ),
    Intent.START: split(
        "commencer;commence;démarrer;démarre;c'est parti;allons y;je suis prêt;je suis prête;prêt;"
        "prête;on y va;début;go;on commence"
    ),
    Intent.NOT_WELL: split(
        "je me sens pas très bien …;je me sens pas trop bien …;je ne me sens pas très bien …;"
        "je ne me sens pas trop bien …;"
        "… me sens pas bien …;… me sens pas très bien …;… me sens pas trop bien …;je suis pas bien;"
        "je suis pas bien aujourd'hui;je vais pas bien …;je vais pas très bien …;je ne vais pas très bien …;"
        "pas bien aujourd'hui;pas très bien;pas très bien aujourd'hui;"
        "pas bien;je ne me sens pas bien …;je ne vais pas bien …;je vais mal;je suis malade …;malade;"
        "enrhumé;enrhumée;je suis enrhumé;je suis enrhumée;fièvre;j'ai de la fièvre …;grippe;"
        "j'ai la grippe;je me sens mal …;mal;pas en forme;je ne suis pas bien;je me sens pas bien …;"
        "pas terrible;patraque;souffrant;souffrante"
    ),
    Intent.WELL: split(
        "je vais bien;je me sens bien;ça va;ça va bien;bien merci;en forme;tout va bien;"
        "très bien merci;oui je vais bien;je suis en forme;impeccable;ça va merci"
    ),
    Intent.MY_DATA: split(
        "mes données;mes données …;données;… mes données …;que savez vous sur moi;"
        "que sais tu sur moi;exporter;exporter …;télécharger mes données;confidentialité;vie privée;"
        "que gardez vous;quelles données …"
    ),
    Intent.FORGET: split(
        "efface tout;effacez tout;supprime tout;supprimez tout;supprime toutes mes données;"
        "efface toutes mes données;supprimez mes données;"
        "effacez mes données;supprimez toutes mes données;oublie moi;oubliez moi;efface moi;effacez moi;"
        "supprimer tout;tout effacer;supprimer mes données;efface mes données;effacer mes données;"
        "supprimer mon compte;supprimer toutes mes données;supprime mes données;"
        "effacer toutes mes données"
    ),
    Intent.LEAVE: split(
        "quitter le programme;me désinscrire;désinscription;je ne veux plus continuer;se désabonner;"
        "désabonner;plus de messages;ne m'écrivez plus"
    ),
    Intent.LANGUAGE: split(
        "tu parles anglais;vous parlez anglais;tu parles arabe;vous parlez arabe;tu parles espagnol;"
        "vous parlez espagnol;"
        "en anglais;en anglais …;en arabe;en espagnol;en allemand;en polonais;"
        "langue;langue …;changer de langue;changer la langue;français;en français;autre langue;"
        "… changer de langue …;… la langue …;en français svp"
    ),
    Intent.UNITS: split(
        "unités;unités …;unité;changer les unités;changer d'unités;en kilos;en livres;en pouces;"
        "en centimètres;kilos ou livres;système métrique;… les unités …;changer d'unité"
    ),
    Intent.ZONE: split(
        "fuseau horaire;fuseau horaire …;changer de fuseau;fuseau;mauvaise heure;j'ai déménagé;"
        "j'ai déménagé à …;je suis à …;je suis maintenant à …;j'habite à …;je vis à …;"
        "… fuseau horaire …;je voyage à …;je suis actuellement à …;en voyage à …"
    ),
    Intent.SLOT: split(
        "horaire;horaire …;changer l'heure …;changer d'heure …;changer le jour …;changer de jour …;"
        "un autre jour;autre jour;autre heure;une autre heure;déplacer …;déplacer;reporter;"
        "reporter …;rendez vous;rappel;changer le rappel;… changer l'heure …;… changer le jour …;"
        "… changer de jour …;… le rappel …;quand me demandes tu;créneau;créneau …;"
        "… changer d'heure …;… mon créneau …"
    ),
    Intent.CONTINUE: split(
        "continuer;continue;continuez;on continue;poursuivre;la suite;allez;continuer …;continue …;poursuivons"
    ),
    Intent.REPEAT: split(
        "répéter;répète …;répétez …;encore;encore une fois;comment ça;pardon;qu'est ce que tu as dit;"
        "quelle était la question;vous pouvez répéter;tu peux répéter;c'était quoi la question;"
        "la question"
    ),
    Intent.NOT_SAY: split(
        "je préfère ne pas dire;je préfère ne pas le dire;je ne veux pas dire;je ne veux pas le dire;"
        "privé;c'est privé;ça ne vous regarde pas;sans réponse;je préfère ne pas répondre;"
        "ça me regarde;je ne dirai pas"
    ),
    Intent.DONT_KNOW: split(
        "je ne sais pas;je sais pas;sais pas;aucune idée;aucune idée …;je ne sais pas …;je sais pas …;"
        "pas la moindre idée;j'en ai aucune idée;je n'en ai aucune idée;jsp;chais pas;chépa;je sais plus;"
        "je ne sais plus;je ne sais plus …;je sais plus …;pas sûr;pas sûre;je ne suis pas sûr;"
        "je ne suis pas sûre;je ne me souviens pas;je ne me rappelle pas;difficile à dire;"
        "j'en sais rien;je n'en sais rien"
    ),
}


DESTROYS = Destroys(
    forget=(
        "effac*|d'effac*|supprim*|détrui*|oubli*|d'oubli*|vir*|enlev*|retir*|dispar*|jet* & mes_données|"
        "toutes_les_données|toutes_mes_données|données_me_concernant|données_personnelles|mon_compte|"
        "mon_historique|mon_dossier|mon_profil|mes_infos|mes_informations|l'ensemble_de_mes|tout_mon|"
        "toute_ma|toutes_mes|mon_compte|mes_données_perso",
        "effac*|d'effac*|supprim*|détrui*|oubli*|vir*|retir*|enlev* & tout|toutes|tous|l'ensemble & "
        "sur_moi|me_concern*|de_moi|mes|mon",
        "tout_efface*|efface*_tout|supprime*_tout|tout_supprime* & svp|stp|s'il_vous_plaît|"
        "s'il_te_plaît|définitivement|maintenant",
        "droit_à_l'oubli|droit_à_l'effacement|rgpd & effac*|supprim*|oubli*|données",
    ),
    leave=(
        "désinscris_moi|désinscrivez_moi|désabonne_moi|désabonnez_moi|me_désinscrire|me_désabonner",
        "quitt*|abandonn*|j'abandonne|arrêt*|sort*|retir*|part*|désist* & programme|suivi|étude|"
        "liste_des_participants|participation|protocole",
        "!plus & veux|souhaite|jveux|désire|voudrais & programme|suivi|étude & partie|continuer|"
        "participer|suivre|être|faire",
        "résili*|annul*|met*_fin & participation|inscription|abonnement",
        "j'arrête_tout|j'arrête|je_pars|je_quitte|j'abandonne & pour_de_bon|définitivement|"
        "pour_toujours|une_bonne_fois",
    ),
    no="pas|jamais|sans|non|aucun*",
    if_="si|quand|il_se_passe|qu'est_ce_qui|presque|failli|mari|femme|amie|ami|soeur|frère|avant_de",
    partly=(
        "dernier|dernière|aujourd'hui|hier|rappel*|message*|chiffre|sel|docteur|médecin|appli|poids|"
        "taille|hanches|photo*|lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche|exprès|erreur"
    ),
)
