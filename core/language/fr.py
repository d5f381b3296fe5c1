"""French, as people type it in France, Belgium, Switzerland and Canada. A livre is 500 g or a pound, so the bot asks
back."""

from __future__ import annotations

from decimal import Decimal

from core.language.fr_amiss import AMISS
from core.language.fr_everyday import EVERYDAY
from core.language.fr_questions import QUESTIONS
from core.language.fr_requests import JOINTS, REQUESTS
from core.language.fr_signs import ANSWERS, CONCEPTS
from core.language.fr_spoken import CLOSERS, DIALECT, FILLERS, LEADS, NO_OPENERS, OPENERS, STATEMENTS
from core.language.fr_talk import CALENDAR, DESTROYS, SEXES, WISHES
from core.language.lexicon import Lexicon, UnitPart, WordRole, split
from core.language.literal_words import LITERAL_WORDS
from core.language.weak_words import WEAK_WORDS
from core.quantity import Unit

D = Decimal

_SMALL = split(
    "zéro;un;deux;trois;quatre;cinq;six;sept;huit;neuf;dix;onze;douze;treize;quatorze;quinze;"
    "seize;dix sept;dix huit;dix neuf"
)
_TENS = {20: "vingt", 30: "trente", 40: "quarante", 50: "cinquante", 60: "soixante"}


def _numbers() -> dict[str, Decimal]:
    """0 to 999; "septante", "huitante", "octante" and "nonante" beside "soixante-dix" and "quatre-vingts"."""
    small = {word: n for n, word in enumerate(_SMALL)}

    def add(base: int, word: str, last: int) -> None:
        for n in range(1, last + 1):
            small[f"{word} {_SMALL[n]}"] = base + n
        small[f"{word} et un"] = base + 1

    for base, word in _TENS.items():
        small[word] = base
        add(base, word, 19 if base == 60 else 9)
    small["soixante et onze"] = 71
    small |= {"quatre vingts": 80, "quatre vingt": 80}
    add(80, "quatre vingt", 19)
    for base, words in ((70, ("septante",)), (80, ("huitante", "octante")), (90, ("nonante",))):
        for word in words:
            small[word] = base
            add(base, word, 9)
    found = dict(small)
    for h in range(1, 10):
        for hundred in ("cent",) if h == 1 else (f"{_SMALL[h]} cent", f"{_SMALL[h]} cents"):
            found[hundred] = 100 * h
            found |= {f"{hundred} {word}": 100 * h + n for word, n in small.items() if n}
    return {
        word: D(n)
        for word, n in {
            **found,
            "une": 1,
            "douzaine": 12,
            "une douzaine": 12,
            "une dizaine": 10,
            "quinzaine": 15,
        }.items()
    }


FRENCH = Lexicon(
    code="fr",
    own_name="Français",
    decimal=",",
    numbers=_numbers(),
    weak=("un", "une"),
    elision=True,
    centimetres_of_mercury=True,
    grams_of_sugar=True,
    not_english=frozenset(
        split(
            "or;plus;on;a;ten;cents;son;an;in;ins;me;me;pour;no;once;ton;point;as;mars;mar;mer;main;pain;"
            "sur;fin;tape;if;d;l;s;c;i;is"
        )
    ),
    units={
        Unit.KILOGRAM: split("kg;kgs;kilo;kilos;kilogramme;kilogrammes;k"),
        Unit.POUND: split("lb;lbs"),
        Unit.STONE: split("stone;st"),
        Unit.CENTIMETRE: split("cm;cms;centimètre;centimètres;centi;centis"),
        Unit.METRE: split("m;mètre;mètres;metre"),
        Unit.INCH: split("pouce;pouces;po;inch;inches"),
        Unit.FOOT: split("pied;pieds;pi;ft"),
        Unit.BEATS_PER_MINUTE: split(
            "bpm;battements;battement;pulsations;pulsation;battements par minute;pulsations par minute;"
            "par minute;à la minute;pulsations à la minute;battements à la minute;la minute;puls"
        ),
        Unit.MILLIMETRE_OF_MERCURY: split("mmhg;mm hg"),
        Unit.SECOND: split("s;sec;secs;seconde;secondes;secondes"),
        Unit.MINUTE: split("min;mins;minute;minutes;mn;m"),
        Unit.METRE_PER_SECOND: split("mètres par seconde"),
        Unit.REPETITION: split("répétitions;répétition;reps;levers;lever;relevés"),
        Unit.STEP: split("pas"),
        Unit.POINT: split("points;point"),
        Unit.DAY: split("jours;jour;j"),
        Unit.SESSION: split("séances;séance;entraînements;entraînement;cours"),
    },
    parts={
        UnitPart.GRAM: split("g;gr;gramme;grammes"),
        UnitPart.OUNCE: split("oz;once;onces"),
        UnitPart.MILLIMETRE: split("mm;millimètres"),
        UnitPart.HOUR: split("h;hr;heure;heures;hrs;d'heure"),
    },
    local_pound={"livre": D("0.5"), "livres": D("0.5")},
    roles={
        WordRole.LEAD: split(
            "pèse;fait;je viens de me peser;viens de me peser;je me suis pesé;je me suis pesée;me suis pesé;"
            "me suis pesée;suis à;j'en suis à;en suis à;j'ai réussi;réussi;j'ai réussi à en faire;"
            "réussi à en faire;arrivé à;arrivée à;je suis arrivé à;je suis arrivée à;"
            "balance;la balance;dit;affiche;indique;j'ai;jai;fait;fais;haute;basse;compté;j'ai fait;"
            "j'ai compté;cette fois;ce matin;seulement;juste;ça donne;ça fait;je fais;je suis à;haut;"
            "bas;"
            "montre;la montre;ma montre;tensiomètre;le tensiomètre;appareil;l'appareil;l'appli;mètre ruban;"
            "le mètre ruban;ruban;je dirais;disons;jai marché;j'ai marché;marché;un petit;un bon;je trouve;"
            "je dis;j'en ai fait;en tout;au total;là;jai"
        ),
        WordRole.AND: split("et;&;puis;ainsi que"),
        WordRole.POINT: split("virgule;point"),
        WordRole.HALF: split("demi;demie;et demi;et demie;une demi;une demie;un demi"),
        WordRole.QUARTER: split("quart;et quart;un quart;un quart d;et un quart"),
        WordRole.THREE_QUARTERS: split("trois quarts;et trois quarts;trois quarts d"),
        WordRole.LESS_A_QUARTER: split("moins le quart;moins un quart"),
        WordRole.THIRD: split("un tiers d;et un tiers"),
        WordRole.LESS_A_THIRD: split("moins un tiers"),
        WordRole.WITHIN: split("en;par;pendant;sur;durant;in"),
        WordRole.OVER: split("sur;/;avec"),
        WordRole.TIMES: split("x;fois;*;multiplié par;fois de"),
        WordRole.OUT_OF: split("sur;/;de"),
        WordRole.RANGE: split("à;a;ou;-;~;jusqu'à;ou bien;ou peut être"),
        WordRole.HEDGE: split(
            "environ;à peu près;autour de;dans les;presque;plus ou moins;peut être;je crois;je pense;"
            "approximativement;env;à peu de choses près;quasi;quasiment;disons;vers les;aux alentours de;"
            "~;ca;je dirais;grosso modo;un peu plus de;un peu moins de"
        ),
        WordRole.AND_SOME: split("et quelques;et des poussières;et quelque chose;et un peu plus"),
        WordRole.AFTER: split(
            "après;juste après;en;quand;pendant;tout de suite après;après avoir;après le;après la;après les;"
            "au retour de"
        ),
        WordRole.STIRRING: split("café;cigarette;fumer;fumé;sauna;dispute;clope"),
        WordRole.BOUND: split(
            "plus de;moins de;au moins;au plus;au maximum;minimum;maximum;>;<;au dessus de;en dessous de;entre"
        ),
        WordRole.CHANGE: split(
            "perdu;j'ai perdu;pris;j'ai pris;gagné;plus;moins;mieux;pire;+;baissé;augmenté;en plus;"
            "en moins;grossi;maigri;j'ai grossi;j'ai maigri;de plus;de moins"
        ),
        WordRole.NOT: split("pas;non;ni;sans;jamais;ce n'est pas;c'est pas"),
        WordRole.NOTHING: split("rien;aucun;aucune;zéro;pas du tout;néant;jamais;pas une;pas un;rien du tout"),
        WordRole.CLOCK: split("à;vers;depuis;du matin;du soir;de l'après midi"),
        WordRole.LABEL: split("jour;semaine;essai;numéro;mesure;question;test;tentative"),
        WordRole.EACH_DAY: split(
            "par jour;chaque jour;tous les jours;quotidien;/jour;/j;par séance;à chaque fois;chacune;chacun"
        ),
        WordRole.EVERY_DAY: split("tous les jours;chaque jour;les sept;toute la semaine;quotidiennement"),
        WordRole.DAYS: split("jours;jour;promenades;promenade;marches;séances;séance;fois;cours;soirs;sorties;balades"),
        WordRole.FOREIGN: split(
            "pour cent;kpa;degrés;ans;an;années;semaines;mois;km;kilomètres;calories;kcal;litres;mg;ml;"
            "question;questions;amis;amies;enfants;petits enfants;petits;cartons;sacs;piles;chaises;chiens;"
            "chats;tasses;euros;personnes"
        ),
        WordRole.ARMS: split(
            "avec les bras;avec mes bras;en utilisant les bras;utilisé les bras;avec les mains;"
            "avec mes mains;en m'aidant des bras;aidé des bras;en m'appuyant;appuyé sur les bras;"
            "utilisé mes bras;à l'aide des bras;aidée des bras;aidé des mains;en s'aidant des bras"
        ),
        WordRole.HALF_WAY: split(
            "plus de la moitié;plus qu'à moitié;presque debout;et presque un autre;presque un de plus;"
            "plus d'à moitié;plus de mi chemin;à plus de la moitié"
        ),
        WordRole.STOPPED: split(
            "arrêté;arrêtée;je me suis arrêté;je me suis arrêtée;pas pu;je n'ai pas pu;pas réussi;"
            "abandonné;pas fini;pas terminé;pas complet;seulement fait;dû arrêter;dû m'arrêter;"
            "impossible;je ne peux pas;peux pas;pas capable;puis stop;puis arrêté;je n'y arrive pas;"
            "j'ai arrêté"
        ),
        WordRole.VIGOROUS: split(
            "intense;intenses;intensif;vigoureux;vigoureuse;soutenu;intensive;course;vigoureuses;intensément"
        ),
        WordRole.FILLER: split(
            "cette semaine;semaine;aujourd'hui;malheureusement;fait;cette;c'est;est;c'était;était;mon;ma;"
            "mes;le;la;les;de;plutôt;en fait;bien sûr;valeur;pardon;erreur;=;:;donc;ça;fait;sont;ce;je;"
            "correct;en réalité;seule;seul;"
            "un coup;d'un coup;tout d'un coup;du coup;un peu;un petit peu;un instant;un moment;"
            "une fois de plus;encore une fois;à la fois;une question;une chose;un verre;un truc"
        ),
        WordRole.FAREWELL: split("à bientôt;à bientôt le;on se voit;on se voit le;jusqu'au;je reviens le;au revoir le"),
        WordRole.SORRY: split(
            "non;pardon;désolé;désolée;oups;oops;attends;attendez;erreur;je me suis trompé;"
            "je me suis trompée;*;faute de frappe;zut;mince;ah non;non pardon;excusez moi;excuse moi;"
            "plutôt;mauvais chiffre;faute"
        ),
        WordRole.MEANT: split(
            "je voulais dire;voulais dire;je veux dire;je voulais écrire;ça devrait être;correction;"
            "au lieu de ça;plutôt que ça;il faut lire;en fait c'est;c'est plutôt;je corrige;corriger en;"
            "je voulais mettre;à la place;en réalité c'est"
        ),
        WordRole.PLEASE: split(
            "s'il vous plaît;s'il te plaît;svp;stp;puis je;je peux;je voudrais;j'aimerais;pouvez vous;"
            "peux tu;maintenant;d'accord;ok;bonjour;salut;merci;montre moi;montrez moi;donne moi;"
            "j'ai besoin;est ce que je peux;peut on;je veux;voir;pourriez vous;pourrais tu;tu peux;"
            "vous pouvez;peux tu me;pouvez vous me;je souhaite"
        ),
    },
    balance_stages=(
        ("côte à côte", "pieds joints"),
        ("semi tandem", "semi-tandem"),
        ("tandem", "talon contre pointe", "talon pointe"),
        ("une jambe", "sur une jambe", "un pied", "sur un pied"),
    ),
    names={
        "weight": split("poids;poids corporel;balance;la balance;je pèse;pèse;pesé;pesée"),
        "height": split("taille debout;stature;je mesure;hauteur;ma taille"),
        "waist": split("tour de taille;taille;ventre;tour de ventre;abdomen"),
        "hip": split("hanches;hanche;tour de hanches;tour de hanche;bassin"),
        "resting_heart_rate": split("pouls;fréquence cardiaque;pouls au repos;fc;rythme cardiaque"),
        "blood_pressure": split("tension;tension artérielle;pression;pression artérielle;ta"),
        "energy": split("énergie;niveau d'énergie;d'énergie;l'énergie;forme"),
        "chair_stand_30s": split("lever de chaise;test de la chaise;levers de chaise;chaise"),
        "activity_minutes": split("activité;activité physique;exercice;sport;actif;active;d'activité;d'exercice"),
        "strength_days": split("renforcement;musculation;jours de renforcement"),
        "sessions_done": split("séances faites;séances du programme"),
        "session_effort": split("effort;d'effort;l'effort"),
        "six_minute_walk": split("test de marche;marche de six minutes"),
        "one_leg_stance": split("équilibre;une jambe;l'équilibre"),
        "two_minute_step": split("test de pas;marche sur place"),
        "walk_mile": split("mile"),
    },
    calendar=CALENDAR,
    intents=WISHES,
    concepts=CONCEPTS | AMISS | EVERYDAY | WEAK_WORDS["fr"],
    literal_words=LITERAL_WORDS["fr"],
    answers=ANSWERS,
    destroys=DESTROYS,
    questions=QUESTIONS,
    dialect=DIALECT,
    fillers=FILLERS,
    leads=LEADS,
    openers=OPENERS,
    statements=STATEMENTS,
    no_openers=NO_OPENERS,
    closers=CLOSERS,
    requests=REQUESTS,
    joints=JOINTS,
    sexes=SEXES,
)
