"""French as it is spoken and texted: shorthand, small words, how questions open and end."""

from __future__ import annotations

from core.language.lexicon import split

DIALECT = {
    "jsuis": "je suis",
    "j'suis": "je suis",
    "chui": "je suis",
    "chuis": "je suis",
    "jme": "je me",
    "j'me": "je me",
    "jpeux": "je peux",
    "jveux": "je veux",
    "jfais": "je fais",
    "jsais": "je sais",
    "chais": "je sais",
    "jdois": "je dois",
    "jte": "je te",
    "jvais": "je vais",
    "jvoudrais": "je voudrais",
    "g": "j'ai",
    "c": "c'est",
    "ct": "c'était",
    "pk": "pourquoi",
    "pq": "pourquoi",
    "pkoi": "pourquoi",
    "pourkoi": "pourquoi",
    "kan": "quand",
    "qd": "quand",
    "koi": "quoi",
    "tt": "tout",
    "bcp": "beaucoup",
    "auj": "aujourd'hui",
    "ajd": "aujourd'hui",
    "aujourdhui": "aujourd'hui",
    "rdv": "rendez vous",
    "tkt": "t'inquiète",
    "dsl": "désolé",
    "mrc": "merci",
    "svp": "s'il vous plaît",
    "stp": "s'il te plaît",
    "stpl": "s'il te plaît",
    "pr": "pour",
    "ds": "dans",
    "ya": "il y a",
    "y'a": "il y a",
    "ouai": "ouais",
    "oué": "ouais",
    "trés": "très",
    "coute": "coûte",
}
FILLERS = split(
    "et;mais;alors;bon;ben;bah;euh;heu;donc;ah;oh;dis;dites;hein;allez;eh;hé;hm;quand même;voyons;bref;enfin;stp;svp;"
    "bonjour;tiens;oh"
)
LEADS = split("oui;ouais;non;ok;okay;d'accord;attendez;attends")
OPENERS = split(
    "qui;que;qu'est ce;qu'est ce que;quoi;comment;pourquoi;combien;est ce que;est ce;puis je;dois je;peux je;peut on;"
    "quel;quelle;quels;quelles;c'est quoi;c'est qui;c'est quand;c'est où;c'est combien;tu peux;vous pouvez;peux tu;"
    "pouvez vous;as tu;avez vous;y a t il;faut il;faut que;il faut que je;où est;quand est ce;quand dois;quand vas;"
    "quand allez;je peux prendre;je peux mettre;je peux utiliser;je peux aussi;et si je;il en dit quoi;"
    "elle en dit quoi;il dit quoi;elle dit quoi;tu en dis quoi;vous en dites quoi;c'est obligé;"
    "c'est normal;à qui;pour qui;avec qui;depuis quand;à quoi;à quelle"
)
NO_OPENERS = split(
    "quelle semaine;quelle journée;quelle chaleur;quelle histoire;quelle galère;quelle nuit;quelle horreur;quel temps;"
    "quel froid;quel bonheur;quel plaisir;que du;que de;que dire;qui plus;comment dire;que je;que le;que la;que des;"
    "quoi que;comme d'habitude;combien de fois je;qui me;qui fait;qui a;que ça;pourquoi pas"
)
CLOSERS = split("quand;quoi;comment;qui;combien;où;pourquoi")
STATEMENTS = split("c'est;c'était;et c'est;ça c'est;là c'est")
