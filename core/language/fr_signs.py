"""French: the concepts of danger signs, and the answers to "Is it happening now?"."""

from __future__ import annotations

from core.language.concepts import Answer
from core.language.concepts import Concept as C

CONCEPTS: dict[C, str] = {
    # parts of the body
    C.CHEST: (
        "poitrine, thorax, sternum, cage thoracique, buste, poitrail, thoracique, côtes, torse, poitrine gauche, là "
        "au milieu, au milieu de la poitrine, au milieu du torse, devant de la poitrine, creux de la poitrine, "
        "derrière le sternum, derriere le sternum, dans le torse, le torse, la cage, plexus, mitan de la poitrine, "
        "milieu de la poitrine, estomac côté coeur, le coffre, estomac"
    ),
    C.HEART: "cœur, coeur, pouls, battements, palpitant, rythme cardiaque, battement, cardio",
    C.ARM_OR_JAW: (
        "mâchoire, bras gauche, deux bras, omoplate, omoplates, cou, nuque, gorge, épaule gauche, "
        "entre les épaules, bras"
    ),
    C.FACE: "visage, bouche, figure, face, lèvre, paupière, joue, sourire, moitié du visage, tronche",
    C.LIPS_OR_TONGUE: "lèvre, lèvres, langue, paupières, yeux, visage, bouche, figure, face",
    C.THROAT: "gorge, gosier, trachée, cou, glotte, larynx",
    C.LIMB: (
        "bras, jambe, main, côté, pied, doigts, moitié du corps, côté gauche, côté droit, "
        "moitié de mon corps, membre, jambes"
    ),
    C.LEG: "jambe, mollet, cheville, pied, cuisse, tibia, guibole",
    C.LEGS: "jambes, mollets, chevilles, pieds, cuisses, deux jambes",
    C.EYE: "œil, oeil, yeux",
    C.JOINT: (
        "genou, hanche, cheville, dos, épaule, articulation, muscle, mollet, aine, poignet, coude, "
        "cuisse, tendon, ischio*, lombaires, quadriceps, achille, adducteur, reins, genoux"
    ),
    # heart
    C.CHEST_PAIN: (
        "angine de poitrine, angor, douleur thoracique, étau autour du thorax, éléphant sur la poitrine, poids sur la "
        "poitrine, étau dans la poitrine, point au coeur, un étau, m'écrase la cage, m'écrase la poitrine, écrase la "
        "poitrine, écrase le thorax, serre la poitrine, me serre la poitrine, mal au coeur côté gauche, coup de "
        "sabot, douleur dans le thorax, poids énorme au milieu, coup de poignard dans, oppression thoracique, "
        "éléphant est assis sur, elephant est assis sur, éléphant assis sur, éléphant sur moi, éléphant me, éléphant "
        ".. sur moi, camion sur la poitrine, camion garé sur, voiture garée sur, voiture sur la poitrine, enclume "
        "sur, tonne sur la poitrine, quelqu'un assis sur ma poitrine, quelqu'un est assis sur, comme si on "
        "m'écrasait, m'écrase le torse, trinitrine fait rien, trinitrine ne fait rien, trinitrine fait plus, "
        "trinitrine deux fois, trinitrine marche pas, natispray fait rien, natispray marche pas, natispray deux fois, "
        "spray sous la langue fait rien, "
        "mal à la poitrine, mal a la poitrine, mal dans la poitrine, mal au thorax, mal au torse, poitrine qui serre, "
        "poitrine me serre, poitrine lui serre, poitrine serrée, ça serre dans la poitrine, serre dans la poitrine, "
        "serre au niveau de la poitrine, ça me serre là, douleur à la poitrine, douleur dans la poitrine, douleur "
        "poitrine, douleurs dans la poitrine, oppression dans la poitrine, poids sur le coeur, poids sur le cœur, "
        "poids sur le sternum, poids sur le thorax, barre dans la poitrine, barre sur la poitrine, barre au sternum, "
        "brûlure dans la poitrine, brûle dans la poitrine, brûle derrière le sternum, brule derriere le sternum, coup "
        "de couteau dans la poitrine, couteau dans la poitrine, poignard dans la poitrine, point dans la poitrine, "
        "pointe au coeur, pointe au cœur, coeur qui serre, cœur qui serre, coeur se serre et, coeur pris dans un "
        "étau, cœur pris dans un étau, coeur dans un étau, étau dans le coeur, mal qui descend dans le bras gauche, "
        "descend dans le bras gauche, irradie dans le bras, irradie dans la mâchoire, remonte dans la mâchoire, monte "
        "dans la mâchoire, jusque dans la mâchoire, jusqu'à la mâchoire, bras gauche et la mâchoire, poitrine en feu, "
        "feu dans la poitrine, poitrine va exploser, poitrine qui explose, poitrine écrasée, thorax écrasé, thorax "
        "comprimé, cage thoracique comprimée"
    ),
    C.HEART_ATTACK: (
        "infarctus, crise cardiaque, attaque cardiaque, arrêt cardiaque, attaque au coeur, "
        "attaque de coeur, syndrome coronarien"
    ),
    C.HURT: (
        "douleur*, mal, fait mal, brûle, brûlure*, brûlant, pique, picote, pointe, élancement*, élance, "
        "lance, lancine, lancinant*, poignard, poignardé, coup de poignard, crampe*, tiraille*, gêne, "
        "souffre, souffrance, douloureu*, déchire, pinçement, pince, pincement, point de côté, point, "
        "torture, ça tire, tire, transperce, coup de couteau, spasme, brule, "
        "brûlure, ça brûle, ca brule, ça me brûle, brûlant dans, ça élance, ça lance, tiraille, fait souffrir, fait "
        "mal en crisse, mal en tabarnouche"
    ),
    C.PRESS: (
        "serre, serré, serrée, serrement, oppress*, opprime, compress*, comprime, écras*, étau, pression, lourd, "
        "lourde, lourdeur, poids, pèse, étreint, étreinte, bloc, bloqué*, étouffe, ceinture, barre, chape, enclume, "
        "pesanteur, coincé, nœud, tenaille, broie, appuie, assis sur, bizarre, drôle, oppresse, m'oppresse, comme "
        "un étau, écrase, parpaing"
    ),
    C.SPREADS: (
        "irradie, descend dans, remonte dans, va dans le bras, se propage, gagne le bras, "
        "passe dans le bras, jusque dans, jusqu'à la mâchoire, monte dans"
    ),
    C.CLUTCH: "se tient, tient, serre sa, agrippe, se tenant, la main sur",
    C.RACING: (
        "s'emballe, emballe*, irrégulier*, irréguli*, bat trop vite, bat très vite, bat vite, bat fort, "
        "bat à cent, saute*, à toute vitesse, à cent à l'heure, à 100 à l'heure, à fond, à mille, cogne, "
        "tape, rate des battements, rate un battement, des ratés, ratés, bat la chamade, chamade, "
        "accélère, accéléré, s'accélère, trop vite, si vite, très vite, hyper vite, fou, folle, affolé*, "
        "s'affole, affole, galope, galop, désordonné*, n'importe comment, tambour, boum, débat, "
        "va exploser, battre fort, bondit, palpite*, tambourine, désynchro*, pas régulier, "
        "part en vrille, martèle, yoyo, à tout rompre, comme un fou, des bonds, bonds, fait des bonds, "
        "des sauts, sauts, loupés, loupe, loupe des battements, des pauses, s'arrête puis repart, "
        "s'arrête et repart, culbute*, galipettes, pirouettes, déraille, déconne, déréglé*, détraqué*, "
        "à la vitesse grand v, grand galop, dans la gorge, jusque dans les oreilles, saccadé*, "
        "dans tous les sens, tachycarde, qui tape, cavale, toque, explose, sort de ma poitrine, "
        "papillonne, frétille, bizarre"
    ),
    C.PALPITATIONS: (
        "palpitation*, tachycardie*, arythmie*, extrasystole*, fibrillation, coeur qui s'emballe, tachy, "
        "tachycardie, coeur s'emballe, coeur a 170, palpitations"
    ),
    C.COLD_SWEAT: ("sueur froide, sueurs froides, suée froide, moite et froid, en nage sans raison, transpire à froid"),
    # brain
    C.STROKE: (
        "avc, attaque cérébrale, accident vasculaire, accident cérébral, hémorragie cérébrale, "
        "rupture d'anévrisme, infarctus cérébral, embolie, attaque au cerveau, congestion cérébrale"
    ),
    C.DROOP: (
        "travers, tombe, tombante, tombant, tombé*, affaiss*, déformé*, tordu*, pend, décroché*, s'affaisse, penche, "
        "de côté, asymétrique, dévié*, qui part, part d'un côté, figé*, coule, de travers, relâché*, paralysé, pend "
        "d'un, qui tombe, tombe d'un, dissymétrique, immobile, bizarre, tordu, tordue, tombe d'un côté, part de "
        "travers, affaissé, affaissée, qui pend, "
        "pendante, pendant d'un côté, pendant d'un coté, pendants"
    ),
    C.NUMB: (
        "engourdi*, paralys*, fourmi*, insensible*, endormi*, ankylosé*, anesthésié*, sens plus, sens pas, ne sens "
        "plus, plus de sensation, picotement*, mort*, aucune sensation, plus aucune sensation, endormi, endormie, "
        "fourmis, fourmillement*, anesthési*, insensible, gelé, gelée, est gelé, est gelée, figé, figée, "
        "sens rien, sens plus rien, sent plus rien, sens pu, sens pu rien, picote, picotte, engourdie d'un bord, "
        "engourdi d'un bord, gelé d'un bord, dort et, comme chez le dentiste, cotonneux, cotonneuse, comme du carton, "
        "comme en bois"
    ),
    C.LIMP: (
        "sans force, plus de force, aucune force, mou, molle, mort, morte, ballant, pend, ne répond plus, répond "
        "plus, répond pas, obéit plus, n'obéit plus, ne m'obéit plus, ne bouge plus, bouge plus, bouge pas, lâche "
        "tout, lâche, me lâche, a lâché, flasque, tout lâcher, fais tout tomber, fait tomber tout, pèse une tonne, de "
        "coton, en coton, en plomb, comme du plomb, inerte, plus de jus, se dérobe, dérobe, plus s'en servir, ne "
        "marche plus, fonctionne plus, retombe, ne se lève plus, se lève plus, ne bouge, traîne, la traîne, lâche les "
        "objets, lâche les choses, échappe des mains, m'échappe des mains, glisse des mains, tombe des mains, de "
        "chiffon, en caoutchouc, comme s'il était pas à moi, plus à moi, pas à moi, ne tient plus, tient plus, me "
        "tient plus, ne me porte plus, me porte plus, commande plus, plus aucune force, plus rien tenir, m'échappe de "
        "la main, échappe de la main, répondent plus, tenais plus, tiens plus, comme morte, fait plus ce que je veux, "
        "fait pas ce que je veux, peux plus lever, arrive pas à lever, paralysée, me tombe des doigts, me tombe des "
        "mains, tombe des doigts, fait ce qu'elle veut, tombe de la main, tombent des mains, suit pu, suit plus, suit "
        "pas, répond pu, veut pu, veut plus bouger, échappe tout, échappe les choses, échappe ma tasse, lâché ma "
        "tasse, lâche ma tasse, tasse m'a échappé, fourchette tombe, tient plus la fourchette, tient plus la tasse, "
        "serre plus, serre plus rien, agrippe plus, suit plus derrière, traîne derrière, traîne par terre, comme un "
        "poids mort, tout mou, toute molle, molasse, pu de force, pus de force, obéit pas, obéit pu, en guenille, "
        "comme une guenille, pend le long, le long du corps, "
        "bras pendant, main pendante, pendante, pendant le long"
    ),
    C.WEAK: "faiblesse, faible, sans force, faiblard, plus de force",
    C.ONE_SIDE: ("d'un côté, côté gauche, côté droit, bras, jambe, moitié, d'un seul côté, du côté, hémicorps"),
    C.CANNOT: (
        "peux pas, peux plus, peut pas, peut plus, pouvais plus, arrive pas, arrive plus, arrivais plus, "
        "n'arrive pas, n'arrive plus, j'arrive pas, jarrive pas, jarrive plus, jarrive pas a, sais plus, "
        "sais pas, réussis pas, parviens pas, parviens plus, impossible de, impossible, du mal à, "
        "du mal, incapable, à peine, galère à, peine à, pas moyen de, plus moyen de, presque plus, "
        "galère pour, dur de, dur à, impossib*, difficultés à, difficulté à, ne peux pas, ne peux plus, "
        "ne peut plus, ne peut pas, suis plus capable, pas capable, n'arrivais plus, arrive même plus, "
        "arrive meme plus, réussis plus, parvient plus, parvient pas, "
        "jarive plu, jarive plus, jarive pa, jarive pas, jarrive plu, jarrive pa, jarriv plu, jarriv pas, arive plu, "
        "arive plus, arive pa, arive pas, arrive plu, arrive pa, narrive plu, narive plus, narive pas, peu plu, peu "
        "plus, peu pas, peu pa, peux plu, peux pa, peut plu, peut pa, pe plu, pe pas, sai plu, sais plu, c'est "
        "impossible de, plus foutu de, pas foutu de, plus fichu de, suis pas capable, chu pas capable, chus pas "
        "capable, chu pu capable, capable pu, suis pu capable, pu capable, peux pu, arrive pu, j'arrive pu"
    ),
    C.MOVE: (
        "bouger, lever, soulever, remuer, tenir, sentir, serrer, attraper, plier, porter, bouge, lève, "
        "utiliser, me servir, commander, contrôler"
    ),
    C.SPEAK: (
        "parler, parle, mots, dire, m'exprimer, articuler, trouver mes mots, prononcer, causer, "
        "sortir un mot, aligner deux mots, faire une phrase"
    ),
    C.SPEECH: ("parole, paroles, parler, parle, mots, élocution, langage, voix, langue, phrases, diction"),
    C.GARBLED: (
        "bizarre, bizarrement, difficulté*, trouble*, confus*, n'importe comment, n'importe quoi, incompréhensible*, "
        "pâteu*, pateu*, bafouill*, de travers, mélang*, dans le désordre, charabia, embrouill*, bredouill*, mâch*, "
        "incohéren*, pas clair*, bute, fourche, ne sortent pas, sortent pas, sortent plus, ne veulent pas sortir, "
        "comme un ivrogne, empâté*, pas de sens, aucun sens, comprend rien à ce que je dis, comprend pas ce que je "
        "dis, comprend rien, trébuche, s'emmêle, s'emmêlent, emmêle*, mélange, mélangent, lourde, lourd, viennent "
        "plus, viennent pas, sort plus, sort pas, comme si j'étais saoul, comme si j'étais ivre, comme un bébé, "
        "épaisse, épais, sort de travers, sortent de travers, mots à l'envers, personne me comprend, personne ne me "
        "comprend, plus de sens, que des betises, des bêtises, sort mal, sort que, veut rien dire, incompréhensible, "
        "du charabia, "
        "mal parler, parle mal, parler mal, mal à parler, je parle tout de travers"
    ),
    C.SLURRED: (
        "bafouille, charabia, parle de travers, bouche pâteuse, parle comme un ivrogne, dis n'importe quoi d'un coup, "
        "aphasie, aphasique, élocution trouble, mots sortent de travers, trouve plus mes mots, trouve plus les mots, "
        "cherche mes mots d'un coup, langue pâteuse, langue épaisse, parle bizarrement, parle de manière bizarre, "
        "mots ne sortent plus, mots sortent plus, bredouille, marmonne, parle bizarre, j'articule plus, articule "
        "plus, bouche pâteuse d'un coup, sort que des betises, arrive plus à parler, trouve pas mes mots, mots "
        "sortent pas, mots dans le désordre, mots mélangés, langue lourde, langue qui fourche tout le temps, patate "
        "chaude, patate dans la bouche, je cause comme, parle comme si, il sort autre chose, sort autre chose, autre "
        "chose qui sort, c'est un autre mot qui sort, du mal à parler, mal à parler, du mal a parler, mal a parler, "
        "du mal à articuler, mal à articuler, du mal à m'exprimer, du mal à trouver mes mots, mal à trouver mes mots, "
        "cherche mes mots, je parle mal, parle mal d'un coup, parle très mal, parle tout mal, parle comme si j'avais "
        "bu, langue de bois d'un coup, mange mes mots, mâche mes mots, mots viennent pas, mots viennent plus, mots se "
        "mélangent, mots se melangent, je dis n'importe quoi, dis un mot pour un autre, un mot pour un autre, mots à "
        "la place des autres, mots tout mélangés, mots à l'envers, parle à l'envers, parle en charabia, plus capable "
        "de parler, pas capable de parler, capable pu parler, peux plus parler, peux plus dire un mot, peux pas dire "
        "un mot, plus un mot ne sort, aucun mot ne sort, plus aucun mot, mots restent coincés, mots restent bloqués, "
        "langue paralysée, langue qui répond pas, langue répond plus, langue toute molle, bouche répond plus, bouche "
        "toute molle, perdu l'usage de la parole, perdu la parole d'un coup, on comprend plus ce que je dis, comprend "
        "plus ce que je dis, personne comprend ce que je dis"
    ),
    C.SEE: "voir, vois, voit, voyais, vue, vision, regarde",
    C.SIGHT_LOST: (
        "suis aveugle, devenue aveugle, devenu aveugle, deviens aveugle, "
        "vois double, voit double, vision double, vision doublée, perte de vision, perte de la vue, "
        "perte de vue, perdu la vue, perdu la vision, aveugle, vision floue, vois flou, vois tout flou, "
        "voile noir, voile devant l'œil, voile devant l'oeil, rideau devant l'œil, rideau noir, "
        "vois plus d'un œil, vois plus d'un oeil, trouble de la vue, troubles de la vue, vue brouillée, "
        "vue qui se brouille, moitié du champ, champ visuel, tout noir dans l'œil, tout noir d'un oeil, "
        "oeil noir d'un coup, tache noire, cécité, vue a baissé d'un coup, vois plus que la moitié, "
        "moitié de la vue, vois la moitié, un voile sur l'œil, voile sur l'oeil, un voile devant un, "
        "oeil est devenu noir, œil est devenu noir, vue d'un côté, vois en double, tout en double, dédoublé, "
        "dédouble, vue brouillée d'un coup, aveugle d'un oeil, moitié de mon champ, champ de vision, "
        "voir double, mouches noires, mouches et, éclairs et, ombre qui monte, ombre dans l'oeil, "
        "rideau dans l'oeil, vois plus de l'oeil, vois que la moitié, deviens aveugle, vue floue d'un coup, "
        "flou d'un coup, flou de l'oeil, taches noires, flashs, flashes, moitié de ma vue, "
        "je vois plus rien, vois plus rien, vision trouble d'un coup, "
        "voit que la moitié, vois la moitié de, moitié de la télé, moitié de l'écran, moitié du visage des gens, "
        "moitié des choses, il manque la moitié, manque la moitié de, plus rien de l'oeil, vois plus rien de l'oeil, "
        "vois plus rien à gauche, vois plus rien à droite, vois plus à gauche, vois plus à droite, oeil éteint, oeil "
        "s'est éteint, oeil est éteint, un oeil qui voit plus, oeil ne voit plus, oeil voit plus, vue partie, vue est "
        "partie, vue s'en va, perdu la vue d'un, voile gris, voile gris devant, rideau gris, rideau qui descend, "
        "rideau descend, rideau qui tombe, taches devant l'oeil, je vois double, vois deux télés, deux images"
    ),
    C.CONFUSED: (
        "confus, confuse, confusion, désorienté*, embrouillé*, à l'ouest, égaré*, hagard*, "
        "comprends plus rien, mélange tout, dans le brouillard, incohérent*, embrumé*, plus rien comprendre, "
        "dit n'importe quoi, raconte n'importe quoi, je suis perdu, je suis perdue, complètement perdu, "
        "complètement perdue, est perdu, est perdue"
    ),
    C.LOST_BEARINGS: (
        "sais plus où je suis, sais pas où je suis, sais plus quel jour, sais plus où j'en suis, "
        "sais plus comment je m'appelle, reconnais plus ma maison, sais même plus, ne sais plus mon nom, "
        "sait plus où elle est, sait plus où il est, reconnais plus personne, sais plus qui, "
        "sais plus mon adresse, plus où je suis, sais pas quel jour, quel jour on est, reconnais pas ma, "
        "sais plus qui je suis, sais plus ou je suis, sais plus mon nom, reconnais plus ma, "
        "reconnais plus mon, reconnais plus rien, reconnais pas mon, comment je suis arrivé, "
        "comment je suis arrivée, je sais plus où je suis, me souviens plus de mon nom"
    ),
    C.HEADACHE: (
        "mal de tête, maux de tête, mal de crâne, mal à la tête, migraine*, céphalée*, tête va exploser, "
        "tête explose, crâne, tête qui explose, mal a la tete, tête, caboche"
    ),
    C.WORST: (
        "soudain*, brutal*, pire, foudroyant*, d'un coup, brusque*, jamais eu, jamais eu aussi, "
        "jamais connu, comme jamais, explose, exploser, coup de tonnerre, coup de massue, coup de marteau, "
        "comme un éclair, en éclair, nuque raide, éclate, éclater, de ma vie, coup de poing, "
        "atroce d'un coup, comme une bombe, pire de ma vie, jamais eu aussi mal, explosé"
    ),
    C.SEVERE: (
        "violent*, gros, grosse, terrible*, intense*, très, fort, forte, affreu*, atroce*, "
        "insupportable*, horrible*, sévère*, énorme*, beaucoup, grave*, extrême*, carabiné*, infernal*, "
        "vachement, sacré, abominable*, drôlement, super"
    ),
    C.SUDDEN: (
        "soudain*, brusque*, brutal*, d'un coup, d'un seul coup, tout à coup, tout d'un coup, subit*, "
        "subitement, en une seconde, venu d'un coup, du jour au lendemain, d'une minute à l'autre, "
        "sans prévenir, instantané*, en quelques secondes, à l'instant, en un instant"
    ),
    C.FAINTED: (
        "eu une absence, fait une absence, eu des absences, "
        "évanoui*, évanouis*, m'évanouir, évanouissement*, perdu connaissance, perte de connaissance, perd "
        "connaissance, perds connaissance, perdre connaissance, perdu conscience, perte de conscience, syncope*, "
        "tombé dans les pommes, tombée dans les pommes, tomber dans les pommes, tombe dans les pommes, dans les "
        "pommes, tourné de l'œil, tourné de l'oeil, tourner de l'oeil, tournait .. de l'oeil, tourne de l'œil, "
        "malaise, malaises, inconscient*, sans connaissance, effondré*, s'effondre, effondrer, écroulé*, s'écrouler, "
        "s'écroule, m'écroule, collapsus, black out, blackout, trou noir, dans les vapes, tombé raide, tombée raide, "
        "ne réagit plus, réagit plus, réagit pas, répond plus, ne répond pas, ne se réveille pas, se réveille pas, se "
        "réveille plus, ne bouge plus par terre, ko, pertes de connaissance, défailli, défaillir, tombé d'un coup, "
        "tombée d'un coup, parti dans les vapes, inanimé*, lipothymie, tombé sans connaissance, perdu conaissance, "
        "perdu connaissances, écroulée, tombé comme une masse, tombée comme une masse, tombé à la renverse, tombée à "
        "la renverse, suis parti d'un coup, tout est devenu noir, je suis tombé raide, noir total, rideau noir et, "
        "voile noir et je suis tombé*, ne se relève pas, se relève pas, ne bouge plus, bouge plus du tout, inerte, "
        "plus conscient*, pas conscient*, n'arrive pas à la réveiller, n'arrive pas à le réveiller, arrive pas à le "
        "réveiller, arrive pas à la réveiller, réponds plus, reprend pas connaissance, parti en arrière, m'effondrer, "
        "tourné de l oeil, syncopes, tombe inanimé*, perdu .. connaissance, perdu .. conscience, perdu un moment "
        "connaissance, répond pas, réponds pas, ne répond plus, tourner de l oeil, absence au volant, absence, faire "
        "un malaise, fait un malaise, malaise vagal, voile noir, réveillé par terre, réveillée par terre, réveillé au "
        "sol, effondré, effondrée, écroulé, par terre .. répond, inconscient, inconsciente, allongé dans le couloir, "
        "failli m'évanouir, failli tomber dans les pommes, failli tourner, m'evanouir, trouvé par terre, trouvée par "
        "terre, retrouvé par terre, retrouvée par terre, retrouvé au sol, jambes ont lâché, jambes m'ont lâché, "
        "malaise dans, j'ai sombré, suis tombé raide, tourne de l'oeil, je vais tomber dans les pommes, je pars "
        "encore, je repars, perdu la carte, perdre la carte, perds la carte, tombé faible, tombée faible, tombe "
        "faible, tomber faible, tombée sans connaissance, perdu la map, pouf plus rien, pouf le noir, trou noir et, "
        "le trou noir, voile noir et, plus rien le trou noir, tout est devenu noir et, noir complet et, tombé dans "
        "les vapes, tombée dans les vapes, partie dans les vapes, j'ai fait un malaise, suis tombé comme une masse, "
        "tombé raide par terre, me suis étalé de tout mon long, étalée de tout mon long, je vais m'évanouir, vais "
        "m'évanouir, vais tourner de l'oeil, vais tomber dans les pommes, vais perdre connaissance, sur le point de "
        "m'évanouir, sur le point de tomber dans les pommes, proche de perdre connaissance, presque perdu "
        "connaissance, j'ai passé out, passé out, jme suis évanoui, jme suis evanoui, me suis evanouie, suis parti "
        "dans les vaps, perdu les pédales et tombé, mes jambes se sont dérobées, jambes se sont dérobées, plus de son "
        "plus d'image, tout devient noir, tout noir et"
    ),
    C.CAME_ROUND: (
        "réveillé*, revenu à moi, revenue à moi, repris connaissance, repris conscience, retrouvé*, "
        "suis revenu, me suis retrouvé*, rouvert les yeux, ouvert les yeux, repris mes esprits, "
        "repris les esprits, retrouvé, étendue, réveillée, reveillé*, je me réveille, "
        "me suis retrouvé, me suis retrouvée, retrouvé par terre, retrouvée allongée, retrouvé allongé, je suis "
        "retrouvé, me suis réveillé, me suis réveillée, réveillé sur, réveillée sur"
    ),
    C.FLOOR: (
        "par terre, sol, carrelage, tapis, à terre, plancher, au sol, moquette, lino, couloir, "
        "parquet, sol de la, pavé, gravier, trottoir, pelouse"
    ),
    C.SEIZURE: (
        "convuls*, épilep*, crise d'épilepsie, crise épileptique, crise comitiale, crise convulsive, "
        "crises d'épilepsie, spasmes partout, "
        "convulsions, convulse, convulsé, il convulse, elle convulse, grand mal, secousses partout, tremblé de tout "
        "mon corps et, mordu la langue, mordu ma langue, me suis mordu la langue, je me suis pissé dessus en crise"
    ),
    C.JERKING: (
        "secousses dans tout, secousses partout, secoué* sans contrôle, tremblements incontrôl*, "
        "tremble de partout sans, mordu la langue, mordu la langue jusqu'au, corps .. secousses, "
        "tout le corps qui saute, corps secoué, tressaute, tressautait, bave et, se raidit et, "
        "yeux révulsés, tout mon corps tremblait, corps tremblait sans, corps qui tremble sans, "
        "tremblait sans que"
    ),
    C.DIZZY: (
        "vertige*, tête me tourne, tête tourne, tête qui tourne, tête .. tourne, tout tourne, ça tourne, "
        "étourdi*, étourdissement*, tournis, tourne autour de moi, pièce tourne, titube, tangue, chancel*, "
        "vaseu*, perds l'équilibre, perte d'équilibre, déséquilibr*, voile noir devant, "
        "trente six chandelles, tourne quand je, vertigineu*, tête légère, la tete tourne, flageol*, "
        "vacille, instable, ça tangue, je tangue, je me sens partir, voir des étoiles, vois des étoiles, "
        "marche comme un ivrogne, marche pas droit, perdu l'équilibre"
    ),
    C.AGAIN: (
        "encore, toujours, souvent, chaque, chaque fois, à chaque fois, à nouveau, de nouveau, "
        "constamment, tous les jours, sans cesse, plusieurs, depuis, tout le temps, régulièrement, "
        "répétition, ces derniers temps, hier, fois, jours, semaine, cette semaine, toute la journée, "
        "3e, 2e, troisième, deuxième, trois fois, deux fois, quotidien*, ça revient, revient, "
        "reviennent, recommence, dès que, matins, ça dure, en ce moment, permanence, rebelote, "
        "de plus en plus, nouveau, normal"
    ),
    # breath
    C.BREATHE: (
        "respirer, respire, respiration, souffle, reprendre mon souffle, inspirer, air, "
        "ravoir mon souffle, prendre mon souffle, mon souffle, reprendre haleine, prendre de l'air, "
        "avaler de l'air, retrouver mon souffle, "
        "respiré, respirez, respirait, respirai, respir, réspirer, respierer, reprendre ma respiration"
    ),
    C.CHOKING: (
        "arrive pas à respirer, arrive plus à respirer, n'arrive pas à respirer, n'arrive plus à respirer, peux pas "
        "respirer, peux plus respirer, peut plus respirer, respire plus, ne respire plus, respire pas, respire plus "
        "bien, respire très mal, respire à peine, étouff*, j'étouffe, jétouffe, jetouffe, suffoqu*, asphyxi*, "
        "asphyxie, m'étrangle, s'étrangle, étrangle, difficultés respiratoires, détresse respiratoire, impossible de "
        "respirer, cherche l'air, cherche mon air, cherche son air, cherche mon souffle, halète comme, noie sans eau, "
        "l'air ne passe plus, air ne rentre, air passe plus, air passe pas, sais plus respirer, arrive plus a "
        "respirer, respiration difficile, respiration bloquée, ne respire pas, cherche à respirer, ne rentre plus, "
        "l'air rentre plus, air rentre pas, respire presque plus, a arrêté de respirer, arrêté de respirer, peux à "
        "peine respirer, arrive à peine à respirer, peine à reprendre mon souffle, arrive plus du tout à respirer, "
        "respirer j'arrive pas, respirer je peux pas, arrive plus à reprendre, manque d'air, s'étouffe, étouffais, "
        "étouffe, mousse rose, beaucoup de mal à respirer, misère à respirer, avalé de travers, fausse route, plus "
        "d'air, suffoque, coincé dans la gorge, respire mal, à peine respirer, l'air passe plus, lèvres bleues, "
        "devient bleu, me noie, souffle coupé d'un coup, râle, arrive pas à inspirer, comme un poisson, poisson hors "
        "de l'eau, cherche son souffle, siffle en respirant, côtes qui se creusent, tirage, ça siffle fort, on "
        "l'entend siffler, l'air ne rentre plus, l'air rentre pas, l'air passe pas, en train d'étouffer, en train de "
        "m'étouffer, j'étouffais, suffoquais, en train de suffoquer, m'étouffe, m'étouffais, étranglais, crise "
        "d'asthme, crises d'asthme, crise d'asthme qui passe pas, me noie de l'intérieur, comme si je me noyais, "
        "l'impression de me noyer, impression de me noyer, sous l'eau sans air, respirer dans une paille, respire "
        "dans une paille, poumons se remplissent, poumons pleins d'eau, poumons bloqués, poumons fermés, poumons "
        "s'ouvrent plus, rien ne rentre dans mes poumons, rien ne rentre dans les poumons, rien rentre dans, l'air "
        "rentre pu, l'air veut pas rentrer, l'air veut plus rentrer, pogne pas mon air, pogne plus mon air, pogner "
        "mon air, chercher mon air, cherche de l'air, gaspe, coincé dans la trachée, passé dans la trachée, passé de "
        "travers et, passé par le mauvais trou, avalé de travers et, bloqué dans la gorge et je, deux mots et je "
        "dois, deux mots puis je dois, reprendre mon air à chaque mot, souffle entre chaque mot, finir mes phrases, "
        "peux pas finir une phrase, arrive pas à finir mes phrases"
    ),
    C.AIR_HUNGER: (
        "manque d'air, manque dair, manque de l'air, manque l'air, manque de souffle, manque le souffle, mon souffle "
        "coupé, souffle coupé, souffle se coupe, court d'air, pas assez d'air, trouve plus mon souffle, trouve pas "
        "mon souffle, respirer devient, du mal à respirer, mal à respirer, mal a respirer, peine à respirer, "
        "difficulté à respirer, difficultés à respirer, gêne respiratoire, galère à respirer, respire mal, sans air, "
        "plus d'air, plus dair, pas d'air, plus de souffle, respirer difficile*, respiration coupée, respiration "
        "siffl*, manque d'oxygène, respire vite, respire très vite, respiration rapide, respirer est devenu, me "
        "manque de l'air, manque de l air, le souffle me manque, souffle me manque, plus de respiration, oppressé "
        "pour respirer, cherche mon souffle, mon souffle trouve pas, souffle trop court, souffle très court, souffle "
        "court même, à court d'air, à court de souffle même, mq d'air, mank d'air, manke d'air, manque d air, l'air "
        "me manque, l'oxygène me manque, plus une goutte d'air"
    ),
    C.BREATHLESS: (
        "essouffl*, à bout de souffle, bout de souffle, plus de souffle, hors d'haleine, haletant*, halète*, "
        "haleter, souffle court, le souffle, dyspnée, souffle comme, ahan*, poussive, poussif, pompe l'air, "
        "perds mon souffle, perds le souffle, perdre le souffle, coupe le souffle, cours après mon souffle, "
        "reprendre mon souffle, époumon*, anhél*, souffler, sifflement, souffle comme un bœuf, "
        "souffle comme un boeuf, souffle comme une locomotive, souffle coupé, reprendre haleine, "
        "reprendre son souffle, pause pour souffler, souffler un coup, j'ai plus de souffle, "
        "cherche mon souffle, mal à respirer, du mal à respirer, de la misère à respirer, respirer allongé, "
        "respirer couché, respirer allongée, dors assis, dors assise, peux plus dormir à plat, "
        "siffle quand je respire, siffle en respirant, halete, halète, haletant, m'essouffle, essouffle"
    ),
    C.BLUE: (
        "bleu*, lèvres bleues, lèvres sont bleues, bleuit, violet*, cyanos*, devient bleu, devient bleue, il est bleu, "
        "elle est bleue, est tout bleu, est toute bleue"
    ),
    C.REST: (
        "repos, assis*, couché*, allongé*, au lit, dans mon lit, la nuit, sans rien faire, sans bouger, "
        "sans effort, immobile, canapé, fauteuil, étendu*, nuit, en dormant, bouge pas, pas bougé, "
        "n'ai rien fait, très, énorme*, à plat, devant la télé, rien qu'assis, réveill*, grave*, statique"
    ),
    C.TASKS: (
        "escalier*, marches, m'habiller, habillant, m'habille, que d'habitude, d'habitude, qu'avant, "
        "avant non, avant je, douche, ménage, moindre, cuisine, cuisiner, en parlant, lit, faisant mon lit, "
        "faire mon lit, monter, monte, montant, étage, étages, courses, marcher, marche, marchant, côte, "
        "côtes, quelques pas, quelques mètres, trois pas, lacets, balai, aspirateur, vaisselle, effort, "
        "efforts, rien qu'en, rien que de, jardin, poubelles, chaussures, boîte aux lettres, l'autre bout, "
        "vélo, me brosser les dents, brosser les dents, me coiffer, me laver, laver, chaussettes, lacer, "
        "premier étage, un étage, deux étages, palier, pente, montée, repasser, étendre le linge, linge, "
        "aux toilettes, aux wc, poubelle, pain, boulangerie, jusqu'à la voiture, jusqu'au portail, "
        "jusqu'à la boîte, traverser, dix mètres, vingt mètres, cent mètres, deux pas, porter, sacs, cabas, "
        "enfiler, moindre effort, au moindre, que le mois dernier, que la semaine dernière, le mois dernier, "
        "promenade, me pencher, me baisser, ça ne m'arrivait pas, avant ça, alors que je le fais, "
        "rien que la douche, la douche"
    ),
    C.INHALE: (
        "inspire, inspirant, respire à fond, respire profond*, respirer à fond, inspiration, "
        "en respirant, quand je respire, prends une grande inspiration, inspirer"
    ),
    # blood
    C.BLEED: (
        "saign*, épistaxis, nez qui saigne, perds du sang, perd du sang, le sang coule, sang coule, saigne, "
        "saigner, saignement, coule rouge, nez coule rouge, arrête pas de saigner, ça saigne toujours, "
        "saigne encore"
    ),
    C.BLOOD: (
        "sang, sanguin*, sanglant*, saign*, rouge dans la cuvette, rouge dans les toilettes, crache rouge, "
        "eau rouge, glaire rouge, caillot, caillots"
    ),
    C.WOUND: "coupé, coupée, entaille, plaie, blessure, entaillé",
    C.NOT_STOPPING: (
        "s'arrête pas, arrête pas, n'arrête pas, s'arrete pas, arrete pas, s'arrête plus, arrête plus, "
        "sans arrêt, sans s'arrêter, arrive pas à l'arrêter, n'arrive pas à arrêter, ne s'arrête pas, "
        "ça coule, coule, coule encore, coule toujours, à flots, à flot, giclé*, gicle, pisse, "
        "pisse le sang, pisser le sang, ne coagule pas, coagule pas, depuis une heure, "
        "depuis une demi heure, une heure, demi heure, serviettes, serviette, torchon*, trempé*, imbibé*, "
        "pas moyen d'arrêter, veut pas s'arrêter, impossible à arrêter, impossible d'arrêter, "
        "continue de couler, ne cesse pas, sans discontinuer, tarit pas, ça n'arrête pas, stoppe pas, "
        "ne stoppe pas, n'arrive pas à stopper, pas à stopper, coule sans, pas moyen de stopper, s'arreter, "
        "continue, pissait, imbibe, éponge, se tarit pas, impossible de l'arreter"
    ),
    C.MUCH: (
        "beaucoup, plein, énormément, abondamment, abondant, abondante, partout, flaque, des caillots, "
        "caillots, à la tête, de la tête, du crâne, beaucoup de sang, litres, pas mal, fort, grosse, "
        "massif, massive, comme un bœuf, énorme*, quantité, vachement, rouge vif, mare, tellement, trop, "
        "flots, grande quantité, caillot, énormément de, du sang rouge, rouge, une mare, tout plein, "
        "litre"
    ),
    C.HAEMORRHAGE: (
        "hémorragie*, hémorragique, ulcère qui saigne, ulcère qui saignait, ulcère hémorragique, pisse le sang, vide "
        "de mon sang, vide de son sang, me vide de, saigne à mort, melena, méléna, saignement interne, ça gicle, ca "
        "gicle, gicle, à flots, a flots, serviette trempée, serviettes trempées, serviette toutes, protection toutes, "
        "crache du sang, vomis du sang, vomi du sang, plein de sang, plein la cuvette, me vide de mon sang, du sang "
        "partout, sang partout, baigne dans le sang, hémorragie, arrête pas de saigner, saigne beaucoup, saigne sans "
        "arrêt, sang qui coule, perds beaucoup de sang, perds plein de sang, flaque de sang, sang à gros, caillots, "
        "tousse du sang, sang dans les urines, pisse du sang, urine du sang, varice a pété, varice pétée, varice "
        "éclatée, varice a éclaté, ça fait un jet, fait un jet, gros caillot, sorti un caillot, cuvette .. rouge, "
        "toilettes .. rouge, wc .. rouge, ça pisse le sang, pissait le sang, sang qui pisse, sang gicle, sang qui "
        "gicle, gicle du sang, sang coule à flots, sang à flots, saigne comme un boeuf, saigne comme un bœuf, saigne "
        "comme un cochon, saigne à flots, plein de sang partout, mare de sang, serviettes pleines de sang, serviette "
        "pleine de sang, serviette trempée de sang, pansement trempé de sang, traverse le pansement, traverse les "
        "pansements, une serviette par heure, serviettes par heure, vomit du sang, craché du sang, toussé du sang, "
        "caillots de sang, gros caillots, selles noires, selles noires comme du goudron, caca noir, noir comme du "
        "goudron, sang dans les selles, sang dans la cuvette, cuvette pleine de sang, cuvette rouge, sang rouge dans "
        "les toilettes, sang dans le vomi, sang par l'anus, saigne de l'anus, "
        "comme du marc de café, du marc de café vomi, "
        "marc de café"
    ),
    C.VOMIT: (
        "tout rendu, rendu mon repas, rendu tout, "
        "vomi*, vomir, vomis, vomissement*, gerb*, dégobill*, dégueul*, rendu mon repas, "
        "rendre mon repas, rendu, régurgit*, dégobille"
    ),
    C.COUGH: "tousse*, toux, tousser, toussant, crach*, expector*, crachat*",
    C.STOOL: (
        "selle*, caca, excréments, crotte*, toilettes, wc, cuvette, urine*, pipi, diarrhée, anus, "
        "intestin*, merde, fesses, du derrière, pisse, couche"
    ),
    C.BLACK: (
        "noir, noires, noire, noirs, goudron, charbon, suie, poix, pétrole, réglisse, encre, marc de café, mélasse"
    ),
    # medicines and poisons
    C.OVERDOSE: (
        "overdose*, surdose*, surdosage, intoxiqu*, empoisonn*, intoxication, toute la boite, toute la plaquette, "
        "boite entiere, la boîte entière, tous pris, les ai tous pris, tout avalé, tous avalé, avalé toute, "
        "tout le flacon, deux fois la dose, double dose, doublé la dose, double le previscan, je double le, "
        "unités au lieu de, au lieu de 4, au lieu d'un, pris trop de, trop d'insuline, surdos*, overdose, "
        "trompé de dose, trompée de dose, pris deux fois, plein de médicaments, plein de cachets, tas de cachets, "
        "tas de médicaments, poignée de cachets, poignée de médicaments, tous mes médicaments, tous mes cachets, "
        "tous les cachets, tous les comprimés, le double de mes, le double de ma dose, deux fois mon insuline, "
        "deux fois l'insuline, insuline deux fois, trompé de médicament, trompée de médicament, trop de cachets, "
        "trop de médicaments, mélangé mes médicaments, vidé le pilulier, vidé mon pilulier, vidé le semainier, "
        "pris tous les, avalé tous les, avalé la boîte, avalé toute la, avalé une boîte, avalé la plaquette, gobé "
        "tous, gobé la boîte, gobé toute, pris la boîte, pris toute la boîte, pris une boîte entière, pris toute la "
        "plaquette, vidé la boîte, vidé la plaquette, vidé le flacon, bu le flacon, pilulier de mon, pilulier de ma, "
        "médicaments de mon mari, médicaments de ma femme, médicaments de mon épouse, cachets de mon mari, cachets de "
        "ma femme, comprimés de mon mari, comprimés de ma femme, pris ceux de mon mari, pris ceux de ma femme, "
        "pilules de mon mari, pilules de ma femme, pris mes cachets deux fois, pris mes médicaments deux fois, pris "
        "mes médocs deux fois, pris mes pilules deux fois, repris mes cachets, repris mes médicaments par erreur, "
        "pris la dose deux fois, la semaine entière, toute la semaine d'un coup, trop de gouttes, trop de pilules, "
        "trop de doliprane, trop de médocs"
    ),
    C.TOOK: (
        "pris, prise, prends, prenais, avalé*, avale, avaler, gobé*, ingurgit*, ingér*, injecté*, piqué*, fait, "
        "mis, bu, descendu, enfilé, absorb*, donné, gobé, gobe, sifflé, ingurgité, englouti, injecté, piqué"
    ),
    C.SWALLOWED: ("avalé*, avale, mangé, bu, gobé*, ingéré*, ingurgité, croqué, mis dans la bouche, sucé"),
    C.TABLETS: (
        "comprimé*, cachet*, pilule*, médicament*, médoc*, gélule*, doliprane*, paracétamol, aspirine*, "
        "ibuprofène, somnifère*, anxiolytique*, antidépresseur*, calmant*, antidouleur*, cachetons, "
        "traitement, dose, doses, morphine, tramadol, sirop, gouttes, bêtabloquant*, betabloquant*, "
        "anticoagulant*, previscan, xanax, lexomil, plaquette, ramipril, lisinopril, enalapril, amlodipin*, "
        "furosemid*, metformin*, warfarin*, apixaban*, rivaroxaban*, zopiclon*, diazepam*, lorazepam*, "
        "oxycod*, oxycont*, pregabalin*, gabapentin*, sertralin*, quetiapin*, simvastatin*, atorvastatin*, "
        "bisoprolol*, atenolol*, digoxin*, zolpidem*, amitriptylin*, mirtazapin*, citalopram*, codein*, "
        "tramadol*, somnifères, médocs, stilnox, kardégic, tranxène, pastilles, mes doses, boite, boîte, "
        "cachets, comprimés, dolipran*, flacon"
    ),
    C.INSULIN: (
        "insuline*, lantus, novorapid, "
        "unités d'insuline, piqué .. unités, unités .. piqué*, injecté .. unités, unités .. injecté*, humalog, fiasp, "
        "toujeo, tresiba, levemir, rapide"
    ),
    C.TOO_MUCH: (
        "trop, tous, toute, toutes, tout, entière, entier, le double, double, deux fois, par erreur, erreur, sans "
        "faire exprès, trompé*, me suis trompé*, au lieu de, au lieu, poignée, boîte, boite, plaquette, flacon, "
        "tube, trois fois, le triple, en double, d'un coup, plusieurs, mélangé*, confondu*, bouteille, reste, "
        "douze, quinze, vingt, trente, deux doses, ensemble, surplus, par mégarde, refait, déjà pris, déjà prises, "
        "déjà fait, oublié que, j'avais oublié, une deuxième fois, seconde fois, repris, reprise, dix, dix huit, "
        "quarante, cinquante, d'une traite, tout le pilulier, pilulier de la semaine, semaine entière, quatre fois, "
        "cinq fois, plus que prévu, plus qu'il ne faut, mauvaise dose, mauvais médicament, mauvais comprimé, "
        "doublé, dose doublée, toute la plaquette, tout le flacon, le reste, boîte entière, boite entière, toute la "
        "boîte, toute la boite, la plaquette, flacon entier, la bouteille, demi boîte, plein de, des tas de, un tas "
        "de, une poignée, des poignées, énormément de, un paquet de"
    ),
    C.POISON: (
        "javel, eau de javel, déboucheur, détergent, produit ménager, lessive, antigel, mort aux rats, "
        "poison, désherbant, white spirit, ammoniac*, liquide vaisselle, champignons vénéneux, "
        "pastille de lave vaisselle, acide, destop, ammoniaque, produit d'entretien, produit vaisselle, "
        "acétone, essence, insecticide, détartrant"
    ),
    # despair
    C.KILL_SELF: (
        "me tuer, se tuer, me tue, se tue, vais me tuer, me suicider, se suicider, suicid*, suicide, "
        "mettre fin à mes jours, mettre fin à ses jours, fin à mes jours, fin à ses jours, "
        "mettre fin à ma vie, fin à ma vie, m'ôter la vie, en finir, veux en finir, en finir avec la vie, "
        "me pendre, se pendre, me jeter, me jette, me balancer sous, me foutre en l'air, foutre en l'air, "
        "me flinguer, me supprimer, me tirer une balle, me noyer, m'ouvrir les veines, attenter à mes jours, "
        "passer à l'acte, sauter du, sauter par la fenêtre, sauter sous, me faire du mal, se faire du mal, "
        "me fais du mal, faire une connerie, faire une bêtise, me buter, avaler tous mes, mourir ce soir, "
        "tentative de suicide, fait une tentative, ts, vais sauter, je saute, me jeter par la fenêtre, "
        "jeter sous un train, jeter sous le train, sous un train, du pont, du balcon, vais me pendre, "
        "me foutre une balle, tout arrêter définitivement, terminer ma vie, arrêter ma vie, "
        "se foutre en l'air, en finir une bonne fois, veut en finir, prendre tous mes cachets, "
        "avaler toute la boîte ce soir, me trancher la gorge, mettre un terme à ma vie, "
        "un terme à mes jours, disparaître pour de bon ce soir, se jeter, se supprimer, me zigouiller, "
        "foutre en l air, me jeter sous, me jeter du, mettre fin a mes jours, me foutre sous, "
        "sauter du pont, sauter par la fenetre, me jeter par, finir avec tout ça, en finir ce soir, "
        "m'oter la vie, me trancher, tirer une balle, avaler tout pour, foncer dans un arbre, "
        "vais sauter du, vais me jeter, vais me balancer, je vais me foutre, je vais me tuer, vais me suicider, je me "
        "suicide, jvais me tuer, jvais me suicider, m'en débarrasser de la vie, corde au cou, la corde est prête, "
        "corde est attachée, lame sur mon poignet, lame sur le poignet, couteau sur la gorge, couteau sous la gorge, "
        "fusil dans la bouche, au bord du pont, au bord du quai et, debout sur le parapet, sur le parapet, enjambé la "
        "rambarde, enjamber la rambarde, prêt à sauter, prête à sauter"
    ),
    C.CUT_SELF: (
        "taillad*, ouvert les veines, ouvrir les veines, me coupe exprès, coupé exprès, coupée exprès, "
        "coupé volontairement, coupée volontairement, me suis coupé* exprès, mutil*, me mutil*, scarif*, "
        "automutil*, me suis brûlé* exprès, tranché les veines, entaillé*, coupé les veines, me suis lacér*, "
        "me taillade, coupé les bras, coupé le bras avec, coupé avec une lame, coupé avec la lame, "
        "lame de rasoir, coupé les poignets, taillé les veines, tailladé les veines, ouvert les poignets, "
        "me suis ouvert les, me coupe les bras, me coupe les cuisses, me brûle avec, me suis brûlée exprès, "
        "me frappe, me suis blessé exprès, me suis blessée exprès, me suis fait du mal, "
        "coupures sur les bras, me suis recoupé*, me suis encore coupé*, encore coupé*, je me coupe, "
        "me scarifie, scarifi*, me suis coupé exprès, me suis coupée exprès, me fais du mal exprès, "
        "couper les veines, me suis coupé les, me suis entaillé"
    ),
    C.END_IT: (
        "j'en finis, jen finis, en finis, tout s'arrête, c'est fini, ça s'arrête, tout sera fini, "
        "sera fini, j'arrête tout, je pars pour toujours, je serai plus là, ne serai plus là, "
        "serai plus la, je vais le faire, je le fais, m'en vais pour de bon, terminé pour moi, "
        "fini pour moi, y mettre fin, mets fin"
    ),
    C.TONIGHT: (
        "ce soir, cette nuit, aujourd'hui, demain, maintenant, pour toujours, cette fois, tout de suite, bientôt"
    ),
    C.FAREWELL: (
        "lettre d'adieu, lettres d'adieu, mot d'adieu, lettre de suicide, dit adieu, fait mes adieux, mes adieux, "
        "laissé une lettre, écrit une lettre à mes enfants, écrit mes adieux, adieu à tous, lettre pour les enfants, "
        "je ne serai plus là, serai plus là, après ce soir, apres ce soir, adieu, message d'adieu, dire adieu, "
        "m'écrire adieu, dis adieu, dernier message, occupe toi de mes enfants, quand je serai plus là, vous me "
        "reverrez pas, adieu tout le monde, adieu pour toujours, ce soir adieu, messages d'adieu, vidéo d'adieu, "
        "texto d'adieu, c'est mon dernier message, adieu et merci, vous ne me reverrez plus, me reverrez pas, me "
        "reverras plus, dites à mes enfants que je les aime, occupez vous de mes enfants quand, occupez vous de mon "
        "chat quand, quand je ne serai plus là, quand je serai mort, quand je serai morte, "
        "mon dernier message"
    ),
    C.READY: (
        "préparé*, prêt*, devant moi, mis de côté, à côté de moi, stock*, accumul*, sous la main, en réserve, "
        "sur la table, dans la main, gardé*, rassemblé*, compté*, sur le lit, comptés, préparés"
    ),
    C.MEANS: (
        "corde, lame, lames, couteau, rasoir, arme, fusil, pont, rails, cachets, enfermé*, balcon, gaz, "
        "fenêtre, cutter, pistolet"
    ),
    C.THOUGHTS: (
        "pense, je pense à, pensé, penser, pensées, idée, idées, idée de, traverse l'esprit, "
        "me passe par la tête, passe par la tête, me dis que, je ferai rien, le ferai pas, "
        "le ferais pas, ferais jamais, le ferais jamais, des fois, parfois, songe, envie de me, "
        "j'imagine, passerai pas à l'acte, compte pas le faire"
    ),
    C.DEATH_WISH: (
        "envie de mourir, veux mourir, veut mourir, voudrais mourir, voudrais être mort*, aimerais mourir, "
        "aimerais être mort*, préfère mourir, préférerais mourir, mieux mort*, serais mieux mort*, mieux sans moi, "
        "seraient mieux sans moi, veux plus vivre, veut plus vivre, plus envie de vivre, "
        "vaut pas la peine de vivre, vaut plus la peine, aucune raison de vivre, plus de raison de vivre, "
        "plus aucune raison de vivre, raison de vivre, pas envie de vivre, veux plus me réveiller, "
        "ne plus me réveiller, plus me réveiller, pas me réveiller, jamais me réveiller, m'endormir et ne plus, "
        "veux plus être là, plus envie d'être là, ne plus être là, veux disparaître, voudrais disparaître, "
        "envie de disparaître, aimerais disparaître, la vie n'a plus de sens, vie n'a plus de sens, "
        "peux plus continuer comme ça, ne veux pas vivre, pas de raison de vivre, fatigué de vivre, "
        "fatiguée de vivre, marre de vivre, marre de la vie, idées noires, idée noire, idées suicidaires, "
        "pensées suicidaires, envies suicidaires, ne plus exister, plus exister, plus goût à la vie, "
        "perdu le goût de vivre, qu'on m'oublie, plus être de ce monde, que ça s'arrête pour de bon, jamais né, "
        "jamais née, débarrassé de moi, j'aimerais ne pas me réveiller, aimerais ne plus me réveiller, "
        "ne pas me réveiller, plus me lever un jour, m'endormir pour toujours, dormir pour toujours, être morte, "
        "être mort, voudrais ne plus être, voudrais ne plus exister, plus être là, ne plus être la, "
        "si j'étais mort*, si je mourais, si je n'étais plus là, si j'étais plus là, sans moi, sans moi ça irait, "
        "je voudrais que tout s'arrête, voudrais que tout s'arrête, que ça s'arrête, n'ai plus envie de vivre, "
        "plus la force de vivre, plus goût de vivre, plus le goût de vivre, plus goût à rien vivre, "
        "vivre ne m'intéresse plus, la mort serait, mort serait un soulagement, pense à la mort, je pense à mourir, "
        "songe à la mort, pense au suicide, disparaître, mourir dans mon sommeil, partir dans mon sommeil, "
        "vivre encore comme ça, pas continuer à vivre, plus continuer à vivre, marre d'être en vie, "
        "plus rien ne me retient, la vie ne vaut, disparaitre, envie de disparaitre, mieux mort, mieux morte, "
        "voudrais être mort, voudrais être morte, jveux mourir, jveux plus vivre, plus gout à la vie, "
        "la vie vaut pas, que tout s'arrête, que ca s'arrete pour toujours, mieux si j'étais mort, "
        "mieux si j'étais morte, plus le gout de vivre, je veux partir pour toujours, ne pas me réveiller demain, "
        "la mort me soulagerait, voulu mourir, voulais mourir, "
        "si je me réveillais pas, si je ne me réveillais pas, si je me réveillais plus, si je me reveillais pas, si "
        "je me reveillais plus, si je ne me réveillais plus, plus simple si je, plus simple sans moi, plus simple si "
        "j'étais plus là, plus facile si j'étais plus là, mieux si j'étais plus là, mieux si je n'étais plus là, "
        "mieux si j'étais pas là, jamais me reveiller, me réveiller jamais, dormir et ne plus me réveiller, aimerais "
        "mieux être mort, aimerais mieux être morte, préférerais être mort, préférerais être morte, voudrais ne plus "
        "être là, pu le goût de vivre, plus goût à rien, voulais plus vivre, envie d'en finir, serais mieux mort, "
        "serais mieux morte, le monde serait mieux sans moi, si j'existais plus, si j'existais pas, "
        "envie de crever, envie d'être mort, envie d'être morte, envie que ça s'arrête, envie que tout s'arrête, que "
        "tout s'arrête pour de bon, je veux mourir, j veux mourir, j'veux mourir, veu mourir, vx mourir, je veux "
        "crever, veux crever, voudrais crever, j'aimerais mourir, aimerais être mort, aimerais être morte, aimerais "
        "ne plus être là, si je pouvais ne plus me réveiller, si je pouvais mourir, si seulement je pouvais mourir, "
        "qu'on m'achève, achevez moi, je mérite de mourir, vie vaut plus la peine, vie ne vaut plus la peine, vaut "
        "plus la peine d'être vécue, vaut pas la peine d'être vécue, aucune envie de vivre, ras le bol de vivre, "
        "tanné de vivre, tannée de vivre, écoeuré de vivre, en ai assez de vivre, assez de vivre, dégoûté de la vie, "
        "dégoûtée de la vie, veux plus continuer à vivre, veux pas me réveiller, voudrais pas me réveiller, voudrais "
        "m'endormir et, dormir et plus me réveiller, dormir pour de bon, personne me pleurerait, manquerais à "
        "personne, je manquerai à personne, tout le monde serait mieux sans moi, serait mieux sans moi, vivraient "
        "mieux sans moi, débarrassés de moi, débarrasser de moi, serais pas né, jamais être né, jamais être née, "
        "aurais préféré ne pas naître"
    ),
    C.HOPELESS: (
        "à quoi bon, a quoi bon, plus rien n'a de sens, rien n'a de sens, rien n'a plus de sens, n'a plus de sens, "
        "n'a aucun sens tout, sert plus à rien, sert à rien de continuer, ça sert à rien tout, plus d'espoir, aucun "
        "espoir, perdu espoir, perdu tout espoir, désespoir, désespéré*, désespère, sans issue, plus d'issue, "
        "aucune issue, pas d'issue, voyais plus d'issue, vois plus d'issue, vois pas d'issue, fond du trou, fond du "
        "gouffre, touché le fond, vois plus le bout, bout du tunnel, plus d'avenir, aucun avenir, pas d'avenir, "
        "n'en peux plus, j'en peux plus, jen peux plus, peux plus, je n'y arrive plus, j'y arrive plus, baisse les "
        "bras, baissé les bras, je lâche tout, abandonne tout, j'abandonne tout, j'ai abandonné, suis un poids "
        "pour, suis un fardeau, un fardeau, suis nul, vaux rien, vaux plus rien, ça n'ira jamais mieux, ira jamais "
        "mieux, irait mieux un jour, jamais mieux, plus rien à attendre, plus la force de continuer, plus la force "
        "de, tout est foutu, suis foutu*, tout m'est égal, plus envie de rien, rien ne changera, tout est noir, "
        "tout noir dans ma tête, vide à l'intérieur, ça ne sert à rien, ne sert plus à rien, à quoi ça sert, "
        "pourquoi continuer, pour quoi faire encore, quoi bon continuer, je ne vois plus d'avenir, vois pas "
        "d'avenir, vois plus d'avenir, plus de lumière, ne vois plus la lumière, bout du rouleau, au bout du "
        "rouleau, à bout je, tout est fichu, c'est foutu, ma vie est foutue, ma vie est fichue, ma vie n'a, ma vie "
        "ne rime, je suis une charge, un boulet pour, je suis inutile, suis bonne à rien, suis bon à rien, bon à "
        "rien, bonne à rien, je me sens vide, complètement vide, vide à l intérieur, éteint à l'intérieur, mort à "
        "l'intérieur, morte à l'intérieur, dans un trou noir, un gouffre, dans le noir complet, aucun espoir que "
        "ça, pas d'espoir, sans espoir, perdu l'espoir, j'ai tout perdu, tout s'écroule, plus rien ne va, plus rien "
        "ne compte, plus rien n'a d'importance, rien ne s'arrangera, ne s'arrangera jamais, s'arrangera jamais, n'y "
        "crois plus, j'y crois plus, je baisse les bras, laisse tomber ma vie, m'en sortirai jamais, m'en sortirai "
        "pas, je craque complètement, tenir le coup, pas la force de continuer, n'attends plus rien, attends plus "
        "rien de, en peux plus de, poids pour tout le monde, un poids pour, une charge pour, je sers à rien, je "
        "vaux rien, personne ne me regretterait, personne me regretterait, personne ne me regrettera, je manquerais "
        "à personne, manquerai à personne, je tiens plus le coup, je tiens plus, tiens plus, j'en ai marre de tout, "
        "marre de tout, je suis un fardeau, un fardeau pour, je suis nul à tout, je gêne tout le monde, je suis de "
        "trop, je suis foutu, je suis foutue, vois pas à quoi ça sert, je vois pas à quoi ça sert, à quoi ça sert "
        "de continuer, à quoi ça sert de vivre, à quoi je sers, sers à rien, sert plus à rien de"
    ),
    # eating
    C.EATING: (
        "me fais vomir, me faire vomir, me faisais vomir, fait vomir après, faire vomir, me force à vomir, forcer à "
        "vomir, laxatif*, crise de boulimie, crises de boulimie, boulimi*, anorexi*, hyperphagie, trouble "
        "alimentaire, troubles alimentaires, trouble du comportement alimentaire, tca, déteste mon corps, dégoûté* "
        "par mon corps, dégoût de mon corps, mon corps me dégoûte, honte de mon corps, peur de manger, peur de "
        "grossir, peur de la balance, angoisse de la balance, terreur de la balance, obsédé* par mon poids, obsédé* "
        "par le poids, obsédé* par la nourriture, obsédé* par la balance, pense qu'à mon poids, pense qu'à la "
        "nourriture, pense qu'à manger, m'affame, m'affamer, me prive de manger, me prive de nourriture, me prive, "
        "mange presque rien, mange presque plus, mange plus rien, mange plus que, je jeûne pour, peux pas m'arrêter "
        "de manger, peux plus m'arrêter de manger, peux pas m'arrêter de me peser, n'ose plus manger, ose plus "
        "manger, me pèse dix fois, me pèse sans arrêt, me gave, gavé puis, coupe faim, diurétique* pour maigrir, "
        "doigts dans la gorge, deux doigts dans la gorge, doigts au fond de la gorge, me purge, purge, crises "
        "alimentaires, compulsions alimentaires, je recrache, me punis en, calories par jour, que de l'eau, que du "
        "café, juste de l'eau, juste du café, brûler ce que, éliminer ce que, éliminer tout ce que, mérite pas de "
        "manger, je mérite pas, mangé tout le frigo, vidé le frigo, vidé les placards, dévalisé le frigo, mange en "
        "cachette, manger en cachette, me lève la nuit pour manger, peur de prendre du poids, peur de reprendre du "
        "poids, terrifié* par la balance, terrorisé* par la balance, panique de grossir, hantise de grossir, "
        "hantise de la balance, me déteste d'avoir mangé, culpabilise dès que je mange, culpabilise de manger, "
        "honte de manger, me pèse toutes les heures, me pèse vingt fois, me pèse cinq fois, me pèse sans cesse, "
        "sauter tous les repas, saute tous les repas, saute des repas pour, saute les repas, jeûne depuis, jeûne "
        "pour, m'interdis de manger, interdis de manger, m'empiffre, me suis empiffré* puis, me goinfre, goinfré*, "
        "vomis mes repas, vomis tout ce que, vomir mon repas, vomir tout ce que je mange, rends mes repas, recrache "
        "la nourriture, hais mon corps, mon corps me répugne, dégoûte quand je me vois, mange presque plus rien, "
        "rien que de l'eau, café et au chewing, chewing gum, cheveux tombent par poignées, par poignées, je me "
        "goinfre, vomis exprès, vomir exprès, jeune pour maigrir, affame, dégoute mon corps, bouffe tout et, les "
        "doigts dans la, rien mangé depuis, mange plus depuis, mange rien depuis, cache la nourriture, dégoûtée de "
        "mon corps, deux doigts, saute mon insuline, sauter mon insuline, trop grosse encore, me trouve grosse, "
        "fait grossir, cheveux tombent, 300 calories, 500 calories, rends tout ce que je mange, vomis tout, plus "
        "mes règles, dégoûte mon corps, touche presque plus à mon assiette, touche plus à mon assiette, rien ne "
        "passe depuis, touche plus à la nourriture, touche presque plus à la, j'avale plus rien depuis, mange plus "
        "rien depuis, plus rien mangé depuis, "
        "vomis après les repas, vomis après manger, vomis ce que je mange, me fait vomir exprès, veux être maigre, "
        "veux etre maigre, être maigre, trop grosse pour manger, pas le droit de manger, je mange plus rien, jmange "
        "plus rien, jmange rien, je mange rien depuis"
    ),
    C.ON_PURPOSE: (
        "exprès, volontairement, pour maigrir, pour perdre du poids, pour pas grossir, "
        "pour ne pas grossir, doigts, en cachette, pour que ça baisse, pour que ca baisse, délibérément"
    ),
    C.MEAL: (
        "après le repas, après les repas, après manger, après avoir mangé, après chaque repas, "
        "après le dîner, repas, après le souper, après avoir dîné, après le déjeuner"
    ),
    C.NOT_EATEN: (
        "rien mangé, pas mangé, plus mangé, mange rien, mange pas, mange plus, sans manger, rien avalé, rien dans "
        "le ventre, à jeun, n'ai rien mangé, ai rien mange, sans rien avaler, avalé que de l'eau, bu que de l'eau, "
        "ne mange plus, mange quasi plus, plus rien avaler, n'ai pas mangé, pas avalé, touche plus à mon assiette, "
        "touche presque plus, avale plus rien, mange presque rien"
    ),
    C.FOR_DAYS: (
        "depuis, jours, lundi, mardi, mercredi, jeudi, vendredi, samedi, dimanche, balance, pesée, maigrir, "
        "avant hier, hier, peser, semaine, semaine dernière, la semaine dernière, l'autre jour, l'autre fois, "
        "ce mois, ce mois ci, cette année, depuis l'été"
    ),
    # swelling
    C.SWOLLEN: (
        "enflé*, enfle, enfler, enflure*, gonfl*, œdème*, oedème*, bouffi*, boursoufl*, tuméfié*, "
        "comme un ballon, ballon, comme une patate, doublé*, double de volume, énorme, triplé*, gros, "
        "grosse comme, doublé de volume, comme un poteau, gonflement, grossi, triple, chaude et grosse"
    ),
    C.BIGGER: (
        "plus grosse, plus gros que, plus large que, doublé*, deux fois plus, plus grosse que, "
        "le double de, plus gonflé*, rentre plus dans ma chaussure, rentre pas dans ma chaussure, "
        "double, deux fois la taille, plus épais*"
    ),
    C.HOT_OR_RED: (
        "rouge et chaud*, chaud* et rouge, chaude et dure, chaud et dur, chaude et douloureuse, "
        "brûlante et rouge, toute rouge, rouge et dur*, chaude, chaud, brûlante, violacé*, rouge, "
        "brulante, bleuâtre, dur et chaud"
    ),
    C.CLOT: (
        "phlébite*, thrombose*, caillot dans, thrombus, embolie pulmonaire, tvp, caillot de sang, caillot, "
        "phlébite, thrombose"
    ),
    C.CLOSING: (
        "se serre, serre, se ferme, ferme, se referme, se bloque, bloque, bloquée, obstru*, étroite, "
        "rétréci*, se resserre, resserre, gonfle, nouée, avaler, n'arrive plus à avaler, "
        "avaler ma salive, enfle, se noue, coincé*, boule dans, se gonfle, gonflée, plus avaler, "
        "peux plus avaler, arrive pas à avaler, avale plus, avale plus ma salive, étau, gonflement"
    ),
    C.ALLERGY: (
        "anaphyla*, choc allergique, réaction allergique, crise d'allergie, allergie grave, œdème de quincke, "
        "oedeme de quincke, quincke, urticaire géant*, plaques partout, urticaire partout, épipen, "
        "stylo d'adrénaline, allergie sévère, yeux fermés tellement, yeux gonflés, voix toute aigue, "
        "gorge se resserre, gorge se serre, gorge serrée, gorge qui se ferme, gorge gonflée, langue gonfle, "
        "langue énorme, lèvres énormes, langue et les lèvres, lèvres gonflent, lèvres gonflées, visage gonflé, "
        "visage gonfle, plein de plaques, couvert de plaques, choc anaphylactique, oedème de quincke, "
        "gratte partout et, gorge gonfle, gorge enfle, langue enfle, langue enflée, visage enfle, visage enflé, "
        "visage tout gonflé, lèvres enflées, lèvres enflent, paupières gonflées, urticaire géante, plus avaler, "
        "peux plus avaler, boutons partout et, stylo adrénaline, auto injecteur, piqué l'adrénaline, "
        "ressemble a un crapaud, comme un crapaud, je ressemble a un crapaud, ressemble à un crapaud, "
        "langue qui gonfle, langue a gonflé, langue épaissit, lèvres qui gonflent, lèvres ont doublé, lèvres ont "
        "triplé, babines enflées, face enflée, yeux gonflés fermés, gorge qui gonfle, gorge se ferme, gorge se "
        "bloque, gorge bloquée, epipen, anapen, jext, piqué dans la bouche, piquée dans la bouche, piqué à la langue, "
        "guêpe dans la bouche, abeille dans la bouche"
    ),
    C.RASH: (
        "urticaire, boutons partout, plaques rouges, plaques sur tout, couvert* de plaques, "
        "couvert* de boutons, éruption, ça gratte partout, gratte de partout, démange partout, "
        "démangeaisons partout, rougeurs partout, tout rouge et, cloques partout, papules"
    ),
    C.TRIGGER: (
        "guêpe*, abeille*, frelon*, piqûre*, piqué*, noix, noisette*, cacahuète*, arachide*, crevette*, "
        "fruits de mer, crustacé*, antibio*, antibiotique*, pénicilline, amoxicilline, nouveau médicament, "
        "nouveau cachet, nouveau traitement, nouveau comprimé, injection, vaccin, œuf, kiwi, amande*, latex, "
        "noisette, noisettes, amande, cacahuète"
    ),
    # exercise
    C.NAUSEA: (
        "nausée*, nauséeu*, envie de vomir, envie de gerber, mal au cœur, mal au coeur, écœuré*, "
        "ecoeure*, haut le cœur, haut le coeur, hauts le coeur, barbouillé*, estomac retourné, "
        "estomac à l'envers, cœur au bord des lèvres, patraque"
    ),
    C.FATIGUE: (
        "fatigue inhabituelle, fatigue anormale, anormalement fatigué*, épuisement soudain, "
        "soudainement épuisé*, épuisé* d'un coup, fatigue soudaine, grosse fatigue d'un coup, "
        "vidé* d'un coup, coup de barre énorme, fatigue extrême"
    ),
    C.SHARP: (
        "aiguë, vive, tordu*, tordre, tord, foulé*, claqué*, claque, claquer, claquage, déchir*, craqu*, "
        "soudain*, brusque*, lâché*, élongation, lance, élancement*, coincé*, bloqué*, pété, pop, "
        "coup de poignard, pincé*, tiré*, décharge, nouvelle, nouveau, cassé, clac, crac, froissé*, démis, "
        "luxé, dérobé, coup de jus, bloqué"
    ),
    C.INJURY: (
        "entorse*, lumbago, tour de rein, claquage, déchirure, élongation, tour de reins, foulure, "
        "muscle froissé, faux mouvement, crampe au mollet, tordu la cheville, coup de jus"
    ),
    C.EFFORT: (
        "en faisant, pendant, exercice*, exo, exos, test, marche, marchant, en marchant, entraînement, "
        "séance, levers de chaise, en me levant, depuis la, squat*, nouveau, nouvelle, gym, étirement*, "
        "depuis hier, vélo, course, sport, en descendant, avant ça allait, "
        "test des marches, test de marche, test de la chaise, test d'équilibre, lever de chaise, montée de genoux, "
        "squats, pompes, abdos, fentes, gainage, planche, burpees, cardio, zumba, pilates, yoga, aquagym, natation, "
        "footing, jogging, marche nordique, rando, randonnée, tapis, elliptique, rameur, haltères, élastique, "
        "musculation, muscu, step, "
        "cours de gym, les pompes, les squats, la muscu, "
        "la côte, en haut de la côte, colline"
    ),
    # falls, sugar, water
    C.HEAD: "tête, tete, crâne, crane, tempe, front, nuque, caboche, derriere la tete",
    C.HIT: (
        "cogné, cognée, cogne, tapé, tapée, heurté, heurtée, choc, ouvert, fendu, frappé, frappée, tombé sur, "
        "tombée sur, cogner, coup, percuté, éclaté, fracassé, tombé sur la tête, tombée sur la tête"
    ),
    C.HEAD_INJURY: (
        "commotion, trauma cranien, traumatisme cranien, fracture du crane, crane ouvert, coup sur la tete, "
        "coup à la tete, choc à la tete, tombé sur la tete, tombée sur la tete, cogné la tete, une pupille, "
        "pupille énorme, pupille plus grosse, pupilles différentes, ouvert le crane, bosse à la tete, "
        "dans la tempe, sur la tete, cogné la tête, cognée la tête, tapé la tête, tapée la tête, coup à la tête, "
        "tête contre, tombé tête, sang de l'oreille, sang par l'oreille, saigne derriere la tete, "
        "saigne de la tete, bosse énorme, bosse au front, bosse sur le front, pété le crane, pété le crâne, "
        "ouvert le crâne, fendu le crâne, liquide clair, chute de vélo sans casque, sans casque, "
        "traumatisme crânien, commotion cérébrale, fracture du crâne, crâne ouvert, ouvert la tête, tête ouverte, mal "
        "de tête depuis la chute, maux de tête depuis la chute, mal à la tête depuis la chute, mal à la tête depuis "
        "que je suis tombé, vomis depuis la chute, vomi depuis la chute, somnolent depuis la chute, oeuf sur la tête, "
        "bosse énorme sur la tête, pupille dilatée, pupilles inégales"
    ),
    C.THINNERS: "anticoagulant*, previscan, eliquis, xarelto, coumadine, sous anticoagulant",
    C.SUGAR: "sucre, glycémie, glycemie, dextro, glucose, diabète",
    C.SUGAR_LOW: (
        "bas, basse, trop bas, trop basse, chute, chuté, en chute, tombé, tombée, dans les chaussettes, descend"
    ),
    C.HYPO: (
        "hypo, hypoglycémi*, hypoglycemi*, en hypo, malaise hypo, hypos, sucre bas, glycémie basse, hypo sévère, "
        "chute de sucre, chute de glycémie, en hypoglycémie, trop piqué avant de manger, trop d'insuline, "
        "hypoglycémie, hypoglycemie, grosse hypo, faire une hypo, fais une hypo, sucre trop bas, sucre dans les "
        "talons, sucre à terre, sucre est bas, glycémie trop basse, glycémie dans les chaussettes, glycémie qui "
        "remonte pas, glycémie remonte pas, capteur bipe bas, capteur sonne bas, lecteur affiche lo, affiche lo, "
        "marque lo"
    ),
    C.INHALER: (
        "ventoline, inhalateur, asthme, pompe, spray, le bleu, bombe, salbutamol, aérosol, "
        "trinitrine, natispray, bouffée, pompes, débit de pointe, peak flow, nébuliseur"
    ),
    C.NO_USE: (
        "fait rien, sert à rien, sert a rien, marche pas, marche plus, aide pas, ne fait rien, "
        "ne marche pas, agit pas, soulage pas, crise, de ouf, vide, ne fait plus rien, pas d'effet, sévère, "
        "fait plus rien, aucun effet, soulage plus, change rien, ne change rien, pas de mieux, fait pas effet"
    ),
    C.PLAN: "plan, prévu, prevu, planifié, tout prévu, organisé, tout préparé",
    C.BRINK: (
        "sur le pont, sur le toit, au bord du pont, sur le rebord, sur les rails, sur la voie, "
        "au bord de la falaise, au bord du vide, enjambé, bord des rails, au bord des rails, bord du quai"
    ),
    C.URINATE: "uriner, pisser, faire pipi, pipi, vider ma vessie, vessie",
    C.GROIN: (
        "entrejambe, l entrejambe, entre les jambes, l aine, parties intimes, le périnée, en selle, en m'essuyant, "
        "m'essuie, quand je m'essuie, papier toilette, périnée, vulve, pénis"
    ),
    C.FAST_RATE: ("cent cinquante, cent soixante, cent soixante dix, cent quatre vingts, deux cents par minute"),
    C.METER: ("appareil, lecteur, capteur, dextro, diabétique"),
    C.SHAKY: (
        "trembl*, tremblote, sueur*, transpir*, transpire, sue, en nage, grelott*, "
        "trempée de sueur, trempé de sueur, en sueur"
    ),
    # a cry for help
    C.CRY: (
        "au secours, à l'aide, a l'aide, sos, envoyez de l'aide, envoyez les secours, besoin d'aide tout de suite, "
        "besoin d'aide maintenant, besoin d'aide immédiatement, besoin d'aide d'urgence, sauvez moi, besoin d'une "
        "ambulance, une ambulance vite, il me faut une ambulance, il me faut un médecin, besoin des secours, venez "
        "m'aider, tombé et je peux pas me relever, tombée et je peux pas me relever, peux pas me relever, suis par "
        "terre, coincée par terre, coincé par terre, venez vite, viens vite, vite quelqu'un, que quelqu'un vienne, "
        "besoin de secours, appelez les secours, appelez le samu, je me sens partir, besoin d'un docteur tout de "
        "suite, besoin d'un médecin tout de suite, tombé .. pas à me relever, tombée .. pas à me relever, arrive "
        "pas à me relever, arrive plus à me relever, pas me relever, plus me relever, appelez une ambulance, "
        "appelle le 15, appelez le 15, le 112 pour moi, appelle le 112, appelez le 112, appelle le samu, il me faut "
        "le samu, faut le samu, les pompiers vite, appelez les pompiers, appelle les pompiers, faut une ambulance, "
        "ambulance vite, aidez moi vite, urgence vitale, besoin d'un médecin vite, emmenez moi à l'hopital, à "
        "l'aide je, quelqu'un appelle, appelez quelqu'un, appelez moi, un médecin vite, il me faut de l'aide, "
        "besoin d'aide vite, envoyez une ambulance, les secours vite, peux plus me relever, emmenez moi aux "
        "urgences, urgences vite, appelez l'hôpital, quelqu'un peut appeler, je suis seule et j'ai peur, je suis "
        "seul et j'ai peur, "
        "vite une ambulance, ambulance svp, ambulance s'il vous plaît, une ambulance svp, une ambulance s'il vous "
        "plait, envoyez quelqu'un, envoie une ambulance, besoin du samu, le samu vite, vite le samu, vite les "
        "pompiers, besoin des pompiers, le 15 vite, le 112 vite"
    ),
    C.HELP_ME: (
        "aidez moi, aide moi, aidez nous, besoin d'aide, besoin de quelqu'un, il me faut quelqu'un, "
        "quelqu'un vienne, venez, besoin d'un médecin, besoin d'un docteur, aide, aider"
    ),
    C.URGENT: (
        "vite, maintenant, tout de suite, urgent*, immédiatement, rapidement, !!, seul* chez moi, "
        "seule par terre, suis seul*, tout seul, toute seule, par terre, au sol, peux pas me relever, "
        "peux plus me relever, arrive pas à me relever, me sens mal, me sens très mal, me sens partir, "
        "vraiment mal, ça va pas du tout, va très mal, tombé, tombée, je suis tombé*, dépêch*, 🚑, 🆘, "
        "svp vite, je meurs, très mal, urgent, urgence, je me sens très mal"
    ),
    C.CALL: (
        "appel*, appelez, appelle, appeler, envoyez, prévenez, prévenir, faites venir, contactez, "
        "besoin, téléphone*, alertez"
    ),
    C.AMBULANCE: (
        "ambulance, samu, pompiers, secours, 15, 112, 18, 144, urgences, smur, un médecin vite, "
        "un docteur vite, médecin d'urgence, 911"
    ),
    C.DYING: (
        "je meurs, je vais mourir, en train de mourir, me sens partir, me sens mourir, je suis en train de partir, "
        "va mourir, crois que je vais mourir, vais y passer, je vais y rester, vais crever, je crève, c'est la fin, "
        "ma dernière heure, je pars pour toujours, je me meurs, failli y passer, failli mourir, failli crever, "
        "manqué mourir"
    ),
    # how it is said
    C.NO: (
        "pas, plus de, n ai plus, n a plus, n est plus, ne suis plus, ne fait plus, ne sens plus, "
        "n avais plus, aucun, aucune, sans, jamais, ni, non plus, rien, nulle, zéro, plus aucune, "
        "plus aucun, pas de, pas eu, exempt de, nul, nullement, guère, même pas, pas la moindre, "
        "pas le moindre, plus rien, personne, pas besoin, pas la peine, nul besoin, zéro souci de, plus d, "
        "ne sont plus, n'est plus, n'ai plus, n'a plus, n'ont plus, ne sont pas, ne suis pas, chu pas, chus pas, y a "
        "pas, ya pas, y'a pas, ya plus, y a plus, pantoute, aucunement, jamais eu de"
    ),
    C.NO_AFTER: (
        "non, aucun, aucune, pas, jamais, rien, négatif, néant, plus, pas du tout, absent, zéro, nada, "
        "aucunement, que nenni, nulle part, non plus, nulle trace, pas une fois"
    ),
    C.BETWEEN: (
        "de, d, des, du, la, le, les, l, à, au, aux, un, une, mal, mon, ma, mes, dans, eu, ai, j, je, n, ne, "
        "y, a, en, avoir, ressens, ressenti, sens, senti, me, suis, été, signe, signes, symptôme, symptômes, "
        "moindre, vraiment, aujourd, hui, autre, ce, cette, ni, fait, font, avait, avais, eue, sorte, "
        "particulier, particulière, non, se, moment, sensation, il, c, est, ça, pas, tout, souci, problème, "
        "problèmes, souci de, problème de, tête, trace, hein, idées, idée, pensées, envie, faire, vu, noté, "
        "remarqué, l'impression, impression, trop, gêne, semaine, ces, jours, ci, comme, quoi, t, même, "
        "depuis, dernière, fois, matin, qui, que, sont, moments, as, avez, avons, ont, eus, étais, soit, "
        "goutte, gouttes, tache, besoin, d'appeler, appeler, peine, seule, seul, quelconque, quelque, "
        "sorte de, l'ombre, ombre, soupçon, derniers, dernières, temps, encore, là, etre, être"
    ),
    C.AND: "et, &",
    C.NOR: "ou, ni",
    C.BUT: ("mais, cependant, pourtant, sauf, par contre, en revanche, bien que, hormis, sinon que"),
    C.CLAUSE: ("car, parce, puisque, seulement, alors, quand, lorsque, pourquoi, si, comment, où, que je"),
    C.FINE: (
        "bien, très bien, normal*, ok, parfait*, nickel, impeccable, calme, régulier, sans souci, sans problème, "
        "pareil*, tranquille, au top, correct*, va bien, va très bien, rien, content, contente, heureux, heureuse, "
        "fier, fière, ravi*, satisfait*, top, ça fait du bien, agréable, comme un aigle, comme un lynx, comme une "
        "horloge, comme un charme, comme un bébé, comme un loir, comme neuf, comme neuve, comme un jeune homme, comme "
        "un gardon, au poil, tout est normal, impec, super soirée, super, génial, trop bien, c'était super, c'était "
        "génial, bonne soirée, chouette, formidable, aucun problème, c'est normal, normal, comme prévu, tout roule, "
        "comme il faut, c'est le but, ça va nickel, va nickel, vont bien, va super, se passe bien, redescendu, "
        "redescendue, revenu à la normale, rien à signaler, ras, nickel chrome, tiguidou, correct, ça va numéro un, "
        "pas de souci, tout va bien, "
        "pansement et c'est bon, pansement et voilà, pansement dessus, "
        "vite remis, vite remise, vite récupéré, récupéré vite, remis en une minute, remise en une minute"
    ),
    C.PAST: (
        "ça fait trente ans, ça fait vingt ans, ça fait dix ans, à la mort de ma première, après ma césarienne, a 31 "
        "ans maintenant, "
        "l'année dernière, l'an dernier, année passée, il y a des années, il y a longtemps, le mois dernier, mois "
        "dernier, dans le passé, quand j'étais, autrefois, étant enfant, été dernier, hiver dernier, ans, avant "
        "l'opération, dans ma jeunesse, jadis, il y a un an, il y a des mois, 19##, 20##, années, y a des années, y "
        "a longtemps, longtemps, quand j'avais, ado, petit je, petite je, étant petit*, dans mon enfance, à "
        "l'époque, à l'école, au lycée, à la fac, plus jamais, jamais depuis, guéri, guérie, c'est réglé, ça date, "
        "de l'histoire ancienne, derrière moi, décennies, y a belle lurette, belle lurette, avant l'ablation, en "
        "98, en 99, depuis six ans, dans les années, à 17 ans, adolescen*, siècle dernier, autre vie, y a vingt "
        "ans, depuis les stents, l'an passé, à l'armée, à vingt ans, à trente ans, à quarante ans, à quinze ans, "
        "dans ma vingtaine, dans ma trentaine, il y a une éternité, fut un temps, étudiant, étudiante, quand "
        "j'étudiais, quand j'ai eu ma, à la naissance, au collège, pendant mes études, pendant ma grossesse, lors "
        "de ma grossesse, plus rien depuis, rien depuis, depuis plus rien, n'est jamais revenu, jamais revenu, ça "
        "n'est pas revenu, tourné la page, remis depuis, remise depuis, me suis remis, bien remis, guéri depuis, à "
        "l'adolescence, avant la retraite, avant ma retraite, avant le covid, dans le temps, de mon jeune temps, "
        "tout petit, toute petite, a la fac, en 88, guérie depuis, depuis 15 ans, a vingt ans, une autre vie, à 7 "
        "ans, a 7 ans, en 2016, opéré plus, traité et fini, enceinte de mon, enceinte de ma, quand j'étais "
        "enceinte, étais gamin, étais gamine, plus jeune, étais jeune, enfant ma, enfant mon, enfant j'avais, "
        "enfant je, enfant j'ai, à ## ans, a ## ans, service militaire, au régiment, petit j'ai, petite j'ai, étant "
        "gamin, étant gosse, gamin j'ai, gamine j'ai, quand j'étais petit, apprenti, il y a quinze jours, y a "
        "quinze jours, il y a deux semaines, il y a trois semaines, il y a des semaines, il y a quelques semaines, "
        "y a des semaines, y a deux semaines, y a trois semaines, paralysie faciale ancienne, ancienne paralysie, "
        "au printemps, l'été dernier, l'hiver dernier, l'automne dernier, à noël dernier, à pâques, quand j'étais "
        "petite, étant jeune, étant petit, étant petite, étant ado, jeune je, au service militaire, pendant le "
        "service militaire, c'était en ####, mon mariage en, "
        "c'était en 20##, c'était en 19##, il y a dix ans, il y a vingt ans, il y a trente ans, il y a cinq ans, il y "
        "a quinze ans, en 20##, en 19##, à 12 ans, quand j'avais ## ans"
    ),
    C.NOW: (
        "maintenant, aujourd'hui, aujourdhui, en ce moment, ce matin, actuellement, là maintenant, à l'instant, "
        "depuis ce matin, depuis hier, depuis une heure, depuis tout à l'heure, en train de, cette nuit, viens de, "
        "vient de, toujours pas passé, là là, ce soir, depuis 20 min, à nouveau, de nouveau, encore ce matin, mtn, "
        "tout de suite, "
        "et là je, et là j', et là ça, et là c', et là mon, et là ma, et là il, et là elle, et maintenant"
    ),
    C.JUST_NOW: (
        "viens de, vient de, à l'instant, y a 5 min, il y a cinq minutes, minutes, min, tout juste, "
        "il y a un instant, il y a une minute, y a dix minutes"
    ),
    C.EARLIER: "tout à l'heure, tantôt, ce matin, cet après midi, à midi, y a une heure, plus tôt",
    C.SETTLED: (
        "passé, c'est passé, disparu, parti, ça va mieux, ça a passé, s'est calmé, s'est calmée, calmé, "
        "calmée, partie, passée, est passée, va mieux maintenant, terminé, ça s'est arrêté, "
        "s'en est allé, est parti, est partie"
    ),
    C.IMAGINED: (
        "et si, si j'ai, si je, si on, devrais je, peur de faire, peur d'avoir, peur d'un, crains de, "
        "crains un, risque de, risque, symptômes de, symptômes d, signes de, signes d, prévenir, éviter, "
        "qu'est ce que, est ce que, comment savoir, comment on sait, comment reconnaître, j'ai lu, "
        "lu un article, rêvé, rêve, est ce normal, c'est normal, au cas où, ne pense pas, pense pas que, "
        "article, peut il, peut elle, c'est quoi, que faire en cas, curiosité, quels sont, quelles sont, "
        "à quoi ressemble, différence entre, je me demande si, inquiet de, inquiète de, peut provoquer, "
        "reconnaît, "
        "à partir de combien, on parle d, ça veut dire quoi, que veut dire, signifie, effet secondaire, effets "
        "secondaires, c'est courant, est courant, fréquent avec, normal d'avoir"
    ),
    C.OTHERS: (
        "mère, maman, père, papa, mari, femme, épouse, fils, fille, ami, amie, voisin, voisine, frère, sœur, soeur, "
        "il, elle, ils, elles, grand mère, grand père, oncle, tante, copain, copine, collègue, chien, chat, "
        "quelqu'un, gens, cousin, cousine, conjoint, conjointe, mamie, papi, voisin*, collègue*, cousin*, "
        "conjoint*, papy, pépé, enfant, bébé, petit, petite, petit fils, petite fille, gamin, gosse, pote, beau "
        "frère, belle sœur, belle mère, beau père, belle soeur, neveu, nièce, compagnon, compagne, coloc*, dame, "
        "monsieur, patient, client, connaissance, tonton, tata, chéri*, belle fille, gendre, bru, type, mec, gars, "
        "inconnu*, passant*, patron*, homme, un qui, y en a un, en a un, une qui"
    ),
    C.ELSEWHERE: (
        "en clinique, coincée en, coincé en, une dame de la chorale, la petite de mes amis, "
        "avait, a eu, avait eu, hôpital, hopital, clinique, réanimation, réa, soins intensifs, année dernière, an "
        "dernier, l'année passée, année passée, mois dernier, semaine dernière, hier, décédé*, mort, morte, paix à "
        "son âme, enterrement, depuis l'enfance, rentré chez lui, rentrée chez elle, rentré maintenant, est rentré, "
        "va mieux, à l'étranger, au travail, au boulot, en vacances, lundi, mardi, mercredi, jeudi, vendredi, "
        "samedi, dimanche, hospitalisé*, sorti d'affaire, suivi par, en rééducation, une amie de, l'autre jour, au "
        "canada, en traitement, l'été, semaine passée"
    ),
    C.MINE: "je, j, me, m, mon, ma, mes, moi, jai, jme, jsuis",
    C.DONT_KNOW: (
        "sais pas, je ne sais pas, pas compris, comprends pas, compris la question, hein, ça dépend, pourquoi tu "
        "demandes, je te dis plus tard, aucune idée, jsp, chais pas, comment ça, parler à, oublie pas, n oublie "
        "pas, m oublie pas, ne m oublie pas, n oubliez pas, ne m oubliez pas, t en fais pas, pas de souci, pas de "
        "problème, pas grave"
    ),
    C.FILLER: (
        "svp, s'il vous plaît, s'il te plaît, très, trop, vraiment, un peu, peu, tout, toute, bien, "
        "assez, là, donc, aussi, encore, juste, presque, complètement, totalement, carrément, vachement, "
        "super, hyper, même, je, j, me, m, se, s, ne, n, l, le, la, les, d, de, des, du, un, une, mon, "
        "ma, mes, à, a, au, ça, ca, ce, c, est, ai, suis, y, en, oh, aïe, euh, soudain, plus, toujours, "
        "quand même, quelque chose, truc, fois, t, tu, que, qui, et puis, genre, du coup, sa, son, ses"
    ),
}

ANSWERS: dict[Answer, str] = {
    Answer.YES: (
        "oui, ui, ouais, oué, ouep, oui la maintenant, maintenant, c'est moi, c moi, moi, "
        "moi tout de suite, tout de suite, ça continue, en ce moment, ça empire, empire, pire, "
        "toujours pareil, arrête pas, s'arrête pas, carrément, mais oui, si, si si, mtn, exact, "
        "exactement, bien sûr, tout à fait, absolument, évidemment, hélas oui, toujours, encore, "
        "ça dure, en cours, voilà, yes, grave, yep, c'est ça, affirmatif, certainement, je confirme, "
        "continue, toujours là, de pire en pire, aidez moi, vite, malheureusement, oh oui, mal encore"
    ),
    Answer.HESITANT: (
        "je crois, je crois que oui, bof un peu, un peu, il me semble, peut être, peut être bien, "
        "je le sens encore, on dirait, plus ou moins, ça va et ça vient, va et vient, sans doute, "
        "moins fort, p-e, p e, probablement, possible, c'est possible, je pense, je suppose, j'imagine, "
        "faiblement, légèrement, pas complètement parti, pas tout à fait passé, pas complètement passé, "
        "pas totalement, par moments, ça dépend mais oui, à peu près, vaguement, presque, un chouia, "
        "un tout petit peu, encore un peu, pas sûr mais oui, si on veut, j'ai l'impression, en partie, "
        "moyen, moins qu'avant"
    ),
    Answer.NO: (
        "non, nan, nope, pas du tout, mais non, que nenni, non non, pas maintenant, pas en ce moment, "
        "rien, négatif, pas là, absolument pas, jamais, aucunement, ça va, tout va bien, je vais bien, "
        "pas moi, nullement, pantoute, certainement pas"
    ),
    Answer.OVER: (
        "c'est passé, passé, plus maintenant, c'était hier, hier, ça a duré, c'est bon, terminé, "
        "depuis un moment, c'est parti, parti tout seul, ça va nickel, c'est fini, fini, plus du tout, "
        "tantôt, disparu, c'était avant, il y a longtemps, y a des années, ans, calmé, s'est calmé, "
        "va mieux, ça va mieux, s'est arrêté, arrêté, plus rien, tout à l'heure oui, n'ai plus, "
        "j'ai plus, envolé, ça m'a passé, c'était, redevenu normal, derrière moi"
    ),
    Answer.OTHER_PERSON: (
        "pas moi, ma femme, c'est mon, c'est ma, pour ma, pour mon, ça arrive à, qui est avec moi, "
        "à côté de lui, à côté d'elle, j'écris pour, elle est là, il est là, quelqu'un d'autre, "
        "une autre personne, un autre, chez mon, chez ma, avec lui, avec elle, moi non"
    ),
    Answer.NOT_A_SIGN: (
        "façon de parler, blaguais, blague, je plaisante, plaisant*, plaisanterie, mal compris, "
        "compris de travers, match, film, le film, rien à voir, salle de sport, juste une expression, "
        "expression, fausse alerte, correcteur, autocorrect*, malentendu, une question, simple question, "
        "je parlais, parlais, télé, série, machine à laver, erreur de frappe, faute de frappe, "
        "je voulais dire, voulais pas dire, c'est une image, image, métaphore, au figuré, exagér*, "
        "pour rire, rigolais, rigole, ironie, ironique, foot, trompé, me suis trompé, erreur, chanson, "
        "pas au sens propre, livre, dictée"
    ),
}
