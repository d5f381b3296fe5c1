"""French: how people tell that something is amiss; only asked about (`core.language.signs`)."""

from __future__ import annotations

from core.language.concepts import Concept as C

AMISS: dict[C, str] = {
    C.VITAL: (
        "cerveau, esprit, mémoire, pensées, idées, la vue, vision, équilibre, voix, conscience, connaissance, "
        "circulation, pupille, pupilles, colonne, crâne, crane, poumon, poumons, bronches, côtes, sang, air, "
        "souffle, respiration, parole, mots, moitié du visage, pouls"
    ),
    C.PART: (
        "nez, oreille, oreilles, peau, ventre, estomac, bide, abdomen, intestins, dos, reins, cou, nuque, bras, "
        "jambe, jambes, main, mains, pied, pieds, doigt, doigts, orteil, orteils, veine, veines, varice, varices, "
        "muscle, muscles, vessie, rein, testicule*, couilles, utérus, gencives, dents, bouche, lèvre, lèvres, "
        "plaie, cicatrice, points de suture, côté, coté, côté gauche, côté droit, corps, tout le corps, "
        "moitié du corps, os, hanche, genou, épaule, mollet, tibia, cuisse, côte, mâchoire, joue, paupière, ongle, "
        "pipi, urine, selles, caca, langue, poignet, cheville, coude"
    ),
    C.AMISS: (
        "éclat*, explos*, pété, pétée, pete, a pété, claqué, claque, s'est ouvert*, rouvert*, déchir*, disparu*, "
        "s'est éteint*, éteint*, éteinte, s'éteint, est parti*, froid* comme, glacé*, gelé*, pend, pendouille, "
        "qui pend, tombant*, qui tombe, tombe des, tombe de, tordu*, de travers, bave, baver, goutte*, coule*, "
        "coule à flots, pisse le sang, gicle*, jet, fait un jet, suinte*, pus, mousse, écume, noir*, devenu noir*, "
        "bleu*, bleuâtre, violet*, violac*, blanc* comme, jaune*, gonfl*, enfl*, boursouf*, comme un ballon, "
        "comme une patate, qui sort, ressort, déboît*, luxé*, cassé*, fractur*, tordue, répond plus, répond pas, "
        "ne répond plus, répondent plus, obéit plus, obéit pas, n'obéit plus, écoute plus, fait ce qu'elle veut, "
        "fait ce qu'il veut, n'en fait qu'à, n'est plus à moi, plus à moi, marche plus, fonctionne plus, "
        "fonctionne pas, me porte plus, me portent plus, me tient plus, me tiennent plus, lâche*, me lâche*, "
        "se dérobe*, dérobe*, flanche*, mort*, morte, sens plus, je sens plus, sens pas, ne sens plus, insensible, "
        "engourdi*, paralys*, fourmi*, tremble*, secou*, convuls*, spasme*, raide*, rigide*, bloqué*, dur* comme, "
        "dure comme du bois, comme du bois, arrach*, poignard*, coup de couteau, coups de couteau, insupportable*, "
        "atroce*, me tue, me tuent, hurle*, en feu, brûl*, brul*, brûlure, cloqu*, pourri*, sent le pourri, "
        "infecté*, gangrène, trainée rouge, traînée rouge, ligne rouge, coupé*, entaill*, profond*, amput*, "
        "sectionn*, planté*, coincé*, creuse*, se creuse*, enfonc*, révuls*, fixe, grand ouvert*, s'ouvre plus, "
        "se ferme plus, s'ouvre pas, se ferme pas, dilaté*, saigne*, en sang, trempé* de sang, tout rouge, "
        "plein* de sang, n'arrête pas de, s'en va"
    ),
    C.ODD: (
        "bizarre*, étrange*, drôle*, ça va pas, ne va pas, va pas bien, flou*, brouill*, trouble*, s'éteint, éteint, "
        "s'en va, s'en vont, part, partie, perdu*, perds, je perds, s'efface, faiblit, épais*, épaisse, pâteu*, "
        "pateu*, empât*, se ferme, fermé*, se bouche, bouché*, serré*, serre, se serre, s'arrête, arrêté*, s'est "
        "arrêté*, siffle*, sifflant*, ronfle, râle*, rale, gargouill*, crépit*, court*, coupé*, coupe, haletant*, "
        "bruyant*, rauque*, éraill*, bourdonn*, tambour*, cogne*, tape*, martèle, pulse, se mélange*, mélangé*, "
        "embrouill*, emmêl*, oppress*, écras*, étouff*, compress*, étau, déchire, fend, se fend, explose, va "
        "exploser, éclate, veut sortir, chute, à plat, "
        "mal vu, vois mal, voit mal, entends mal, réponds mal, répond mal, fonctionne mal, marche mal, bat mal, passe "
        "mal, articule mal, sens mal, très mal, va mal"
    ),
    C.AS_IF: (
        "comme si, comme un, comme une, comme des, comme le, comme la, comme les, comme du, comme quand, on dirait, "
        "je ressemble, ressemble à, l'impression que, l'impression d, impression que, impression d'avoir, genre, "
        "façon"
    ),
    C.ONSET: (
        "soudain*, tout à coup, tout d'un coup, d'un coup, d'un seul coup, subit*, brusque*, brutal*, "
        "sans prévenir, vient de me prendre, ça vient de, de pire en pire, de plus en plus, empire, s'aggrave, "
        "ça s'aggrave, bien pire, à vue d'œil, minute en minute, sans arrêt, sans arret, arrête pas, ne passe pas, "
        "ça passe pas, s'arrête pas, s'arrête plus, troisième fois, quatrième fois, 3e fois, encore et encore"
    ),
    C.SCENE: (
        "tout, tout ça, pièce, chambre, le monde, les murs, mur, plafond, le sol, sol, lumières, lumière, l'écran, "
        "image, la télé, autour de moi"
    ),
    C.DIM: (
        "noir, noire, sombre, sombres, gris, grise, flou, floue, brouillé*, trouble, penche, de travers, "
        "à l'envers, tourne, tournent, tangue, bouge, double, en double, tunnel, étoiles, étoile, points noirs, "
        "points, mouches, éclairs, flashs, flashes, zigzag*, ondule, laiteux, brouillard, voile, rideau, store, "
        "volet, ombre, éteint, éteinte, s'éteint, disparu, disparaît, fente, trou de serrure, verre dépoli, "
        "sous l'eau, gaze, étincelles, vaguelettes, ondulations, déformé, déformée"
    ),
    C.DO: (
        "me lever, me relever, relever, tenir debout, mettre debout, debout, m'asseoir, me redresser, "
        "sortir du lit, sortir de la baignoire, sortir de la douche, sortir du fauteuil, attraper le téléphone, "
        "atteindre le téléphone, jusqu'au téléphone, jusqu'à la cuisine, jusqu'à la porte, jusqu'aux toilettes, "
        "à la cuisine, avaler, avaler ma salive, garder, ouvrir les yeux, garder les yeux, rester éveillé*, "
        "rester réveillé*, bouger, remuer, sentir, contrôler, arrêter de trembler, m'arrêter de trembler, "
        "arrêter de vomir, arrêter de pleurer, arrêter le sang, me réchauffer, plier le cou, baisser la tête, "
        "tourner la tête, tourner le cou, ouvrir la bouche, fermer la bouche, ouvrir la porte, ouvrir, répondre, "
        "réveiller, reconnaître, me souvenir, me rappeler, rappeler, tenir, attraper, serrer, marcher, "
        "marcher droit, poser le pied, faire un pas, pisser, uriner, faire pipi, sourire, siffler, aligner, "
        "finir mes phrases, finir une phrase, m'allonger, à plat, faire le point, voir, respirer"
    ),
    C.DREAD: (
        "quelque chose ne va pas, quelque chose va pas, quelque chose cloche, un truc cloche, un truc qui va pas, "
        "y a un truc qui, il se passe quelque chose, il m'arrive quelque chose, m'arrive un truc, très bizarre, "
        "trop bizarre, super bizarre, vraiment bizarre, je me sens bizarre, je me sens mal, me sens très mal, "
        "me sens trop mal, je me sens pas bien du tout, vraiment pas bien, pas bien du tout, suis très mal, "
        "au plus mal, je vais très mal, ça va très mal, ça va vraiment pas, ça va pas du tout, malaise, un malaise, "
        "gros malaise, je fais un malaise, patraque et, tourner de l'œil, tourner de l'oeil, tourne de l'oeil, "
        "tourner l'oeil, je repars, je m'en vais, je m'en vais encore, je vais y passer, y passer, je vais mourir, "
        "je meurs, crois que je meurs, en train de mourir, j'ai peur, trop peur, très peur, si peur, terrifié*, "
        "terroris*, sais pas quoi faire, sais plus quoi faire, venez, venez vite, viens vite, que quelqu'un vienne, "
        "quelqu'un peut venir, besoin d'un médecin, besoin d'un medecin, besoin d'un docteur, besoin de quelqu'un, "
        "faut que j'aille aux urgences, aller aux urgences, aux urgences, à l'hosto, je perds connaissance, "
        "perdre connaissance, je perds pied, dans les vapes, à moitié conscient*, à demi conscient*, "
        "plus toute ma tête, me rappelle plus, me souviens plus, me souviens pas comment, sais plus comment, "
        "aucun souvenir, trou noir, trou de mémoire, somnol*, de plus en plus endormi*, je m'endors, "
        "tombe de sommeil, dort debout, ensuqué*, délir*, hallucin*, je vois des choses, j'entends des voix, "
        "des voix qui, claque des dents, claquer des dents, dents qui claquent, frisson*, grelott*, "
        "je tremble de partout, tremble de froid, brûlant*, fièvre de, forte fièvre, trempé* de sueur, en sueur, "
        "en nage, dégouline*, ruisselle*, sueurs froides, sueur froide, blanc comme un linge, "
        "blanche comme un linge, blanc comme, blême, livide, teint gris, gris comme, lèvres bleues, "
        "fait une bêtise, une bêtise, fait une connerie, fait quelque chose de grave, fait un truc grave, "
        "me faire du mal, fait du mal, me suis fait mal exprès, coupé profond, trop profond, jamais ressenti, "
        "jamais eu ça, jamais eu aussi mal, jamais été aussi mal, pire douleur, douleur insupportable, "
        "douleur atroce, mal à hurler, à hurler, plié* en deux, plié* de douleur, me tords de, je me tords, "
        "pleure de douleur, je tombe à chaque, jambes qui lâchent, jambes coupées, jambes en coton, "
        "jambes ne me portent, tiens plus debout, tiens pas debout, tiens plus sur, n'en peux plus, j'en peux plus, "
        "peux plus continuer, je tiens plus, supporte plus, sur le pont, sur le toit, sur les rails, "
        "bord des rails, bord du quai, au bord du vide, le vide, je regarde en bas, regarde les cachets, "
        "ça irait vite, mieux sans moi, mieux si j'étais, personne me regretterait, demain je serai plus, "
        "serai plus là demain, plus là demain, en finir, j'en finis, adieu, adieux, étouff*, étrangl*, suffoqu*, "
        "asphyxi*, cherche mon souffle, cherche mon air, manque d'air, infarctus, avc, septicémie, méningite, "
        "empoisonn*, intoxiqu*, je panique, en panique, crise de panique, je pars encore, je repars encore, "
        "la première chose dont, je regardais le plafond, yeux au plafond, des gens autour de moi, gens autour, "
        "inconnus autour, le sol qui monte, sol se dérobe, sol qui bouge, jambes en flanelle, jambes molles, "
        "guiboles, oreilles qui sifflent, oreilles bourdonnent, bourdonnements, tout est loin, entends de loin, "
        "comme au loin, jusqu'à l'os, on voit l'os, peau qui part, peau s'en va, peau se décolle, chair à vif, "
        "cheveux tombent, perds mes cheveux, ne donne plus de coups, bouge plus depuis, appelez ma fille, "
        "appelez mon fils, appelle ma fille, prévenez ma famille, dites à ma famille, dites à ma femme, "
        "dites à mes enfants, appelez l'hôpital, appeler l'hôpital, appelez le médecin, appelez un médecin, "
        "appelle un médecin, quelqu'un peut appeler, je vous aime, je vous aime tous, pardonnez moi, "
        "pardon pour tout, plus de retour, ça sert à rien, plus de sens, à quoi bon, j'ai un plan, tout est prévu, "
        "cachets sur la table, cachets sur le lit, moteur tourne, tuyau d'échappement, m'endormir et ne plus, "
        "dormir et ne plus, dormir pour toujours, disparaître, envie de disparaître, jamais connu ça, "
        "tout le corps, de la tête aux pieds, corps entier, mal partout, horriblement mal, terriblement mal, "
        "super mal, trop mal, mal de chien, douleur horrible, douleur terrible, douleur de malade, "
        "douleur de dingue, grosse douleur, douleur violente, haleine qui sent, haleine de pomme, acétone, "
        "soif tout le temps et, yeux creux, pas moi même, plus moi même, je me reconnais plus, c'est pas normal, "
        "pas normal du tout, ça tourne mal, ça part en vrille"
    ),
    C.HELP_ALONE: (
        "aidez moi, aide moi, aidez nous, au secours, à l'aide, a l'aide, aidez moi svp, aide moi stp, "
        "aidez moi s'il vous plaît, besoin d'aide, j'ai besoin d'aide, quelqu'un peut m'aider, à laide, secours, "
        "que quelqu'un m'aide"
    ),
    C.HAZARD: (
        "monoxyde, fuite de gaz, odeur de gaz, sent le gaz, brasero, électrocut*, electrocut*, décharge électrique, "
        "coup de jus, châtaigne électrique, ébouillant*, eau bouillante, huile bouillante, huile de friture, acide, "
        "javel, déboucheur, antigel, mort aux rats, désherbant, poison, empoisonn*, amanite, serpent, vipère, "
        "mordu*, morsure, failli se noyer, accident de voiture, accident de la route, eu un accident, "
        "renversé* par, écrasé par, percuté*, poignard*, tiré dessus, agress*, étrangl*, me frappe, me tape dessus, "
        "il me bat, incendie, fumée partout, coup de chaleur, insolation, hypothermie, gelures, perdu les eaux, "
        "perte des eaux, poche des eaux, bébé ne bouge plus, bébé bouge plus, sens plus le bébé, extra utérine, "
        "tronçonneuse, scie circulaire, meuleuse, pile bouton, avalé une pile, a avalé, stylo d'adrénaline, "
        "stylo adrénaline, adrénaline, auto injecteur, anapen, epipen, jext, mangé des champignons, "
        "ramassé des champignons, prend feu, pris feu, a avalé une, a avalé un"
    ),
    C.FALL: (
        "tombé*, tombée, chute*, chuté*, tombe, dégringol*, valdingu*, vol plané, glissé*, dérapé*, trébuché*, "
        "renversé*, éjecté*, gamelle, bûche, me suis ramassé*, étalé*, cassé la figure, cassé la gueule, plané, "
        "suis tombé, suis tombée, tombé sur la tête, tombée sur la tête"
    ),
    C.FALL_FROM: (
        "échelle, escabeau, escalier, escaliers, toit, cheval, vélo, velo, trottinette, moto, scooter, casque, "
        "tête la première, la tête, arbre, balcon, échafaudage, fenêtre, mur, sur le dos, sur la tête, "
        "sur le crâne, sur la nuque, trottoir, baignoire, douche"
    ),
    C.MEDICINE: (
        "médicament*, medicament*, médoc*, medoc*, traitement, dose, doses, pilulier, semainier, patch, patchs, "
        "antidouleur*, somnifère*, somnifere*, morphine, tramadol, méthotrexate, digoxine, bêtabloquant*, "
        "betabloquant*, cortisone, paracétamol, doliprane, ibuprofène, aspirine, plaquette, boîte entière, "
        "boite entière, flacon, bouteille, antidépresseur*, anxiolytique*, piqûre, gouttes, sirop"
    ),
    C.MISUSE: (
        "trompé*, me suis trompé*, mauvais*, confond*, par erreur, sans faire exprès, vidé*, avalé*, tous, toutes, "
        "tout d'un coup, d'un coup, d'un seul coup, de la semaine, de mon mari, de ma femme, du chien, par dessus, "
        "avec de la vodka, avec du vin, avec de l'alcool, avec du whisky, échang*, en trop, de trop, trop de, "
        "double, deux fois trop, quatre fois, dix fois, le petit a, la petite a, poignée, sais plus combien, "
        "perdu le compte, toute la semaine, entière, entier"
    ),
    C.SENSELESS: (
        "répond pas, répond plus, ne répond pas, ne répond plus, réagit pas, réagit plus, se réveille pas, "
        "se réveille plus, n'ouvre pas les yeux, ouvre plus les yeux, me reconnaît pas, me reconnait pas, "
        "me reconnait plus, peut plus parler, parle plus, peut plus respirer, respire mal, respire plus, "
        "yeux révulsés, regard fixe, fixe le vide, blême, livide, mousse, bave, par terre, au sol, effondré*, "
        "écroulé*, évanoui*, affalé*, tout mou, transpire, en sueur, trempé*, se tient la poitrine, "
        "se tient le cœur, se tient le coeur, main sur la poitrine, mal à la poitrine, dit n'importe quoi, "
        "raconte n'importe quoi, propos incohérents, comprend rien, bafouille, parle bizarre, confus*, désorient*, "
        "tremble, secoué*, convuls*, gonfl*, étouff*, s'étouffe, siffle*, siffler, râle, cherche son souffle, "
        "cherche son air, lèvres bleues, bouche de travers, visage de travers, côté du visage, brûl*, avalé*, "
        "raide, inconscient*, pas lui même, plus lui même, à l'ouest, vomit sans arrêt, arrête pas de, tout bleu, "
        "toute bleue, il est bleu, elle est bleue, devenu bleu, est gris, tout gris, devenu gris, blanc comme, blanche "
        "comme, "
        "tout blanc, toute blanche, "
        "me reconnaît plus, ne me reconnaît plus, trempée de sueur, trempé de sueur"
    ),
    C.SKIP: (
        "saute, sauter, je saute, zappe, laisse tomber, fais pas, ne fais plus, fais plus, sans faire, arrêter, "
        "arrête, diminue, baisse, réduis, je réduis, prends pas, pique pas, pique plus, m'en passe"
    ),
    C.DOWN: "kilos, kilo, maigr*, perdre, poids, mincir, mince, balance, chiffre, baisser, fondre, partent",
    C.LOW_SHOWN: (
        "lo, low, bas, trop bas, basse, flèche en bas, double flèche, flèches vers le bas, flèche vers le bas, "
        "deux flèches, en chute, chute, en dessous de, sous 3, sous 0"
    ),
    C.DROWSY: (
        "somnol*, sommeil, endor*, endormi*, tombe de sommeil, vaseux, vaseuse, ensuqué*, envie de dormir, "
        "dort debout, dors debout, groggy, fatigué*"
    ),
    C.GAS: (
        "monoxyde, détecteur, fuite de gaz, odeur de gaz, sent le gaz, gaz, brasero, charbon, barbecue dedans, "
        "groupe électrogène, chaudière, poêle, chauffe eau"
    ),
    C.POISONED: (
        "sonne, bipe, hurle, alarme, sent bizarre, tous, on a tous, toute la famille, nous tous, mal de tête, "
        "mal à la tête, maux de tête, nausée, nausées, nauséeu*, vertige*, tourne, envie de dormir, sommeil, "
        "somnol*, vomi*"
    ),
    C.FEVER: "fièvre, fievre, température, fiévreu*, brûlant*",
    C.RIGOR: (
        "claque des dents, dents qui claquent, claquer des dents, frisson*, grelott*, tremble*, confus*, délir*, "
        "divague*, hallucin*, plaques, taches, tâches, boutons qui, éruption, purpura, nuque raide, raideur, "
        "la lumière me, lumière fait mal, respire vite, plus pipi, pas pissé, trainée rouge, traînée rouge, "
        "ligne rouge, somnol*, réveille pas, sait plus où"
    ),
    C.STREAK: "trainée rouge, traînée rouge, traînées rouges, ligne rouge, lignes rouges, bande rouge, strie rouge",
    C.FEEL: "sens, sent, sentir, ressens",
    C.CURTAIN: (
        "rideau, store, volet, voile, s'est éteint, éteint, éteinte, s'est éteinte, tout noir, devenu noir, "
        "noir d'un coup, noire, disparu, la moitié, moitié, manque la moitié, laiteux, toile d'araignée, "
        "toiles d'araignée, suie, brouillard"
    ),
}
