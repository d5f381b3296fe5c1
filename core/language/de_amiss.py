"""German: how people tell that something is amiss; only asked about (`core.language.signs`)."""

from __future__ import annotations

from core.language.concepts import Concept as C

AMISS: dict[C, str] = {
    C.VITAL: (
        "gehirn, hirn, verstand, gedächtnis, gedanken, augenlicht, sicht, sehen, sehkraft, gleichgewicht, stimme, "
        "bewusstsein, kreislauf, pupille, pupillen, luftröhre, wirbelsäule, schädel, lunge, lungen, bronchien, "
        "rippen, blut, atem, atmung, luft, schnaufen, schnauf, puls, wörter, worte, sprache, kehle, halbe gesicht, "
        "gesichtshälfte"
    ),
    C.PART: (
        "nase, ohr, ohren, haut, bauch, magen, unterleib, darm, rücken, kreuz, nacken, hals, genick, arm, arme, "
        "bein, beine, hand, hände, fuß, füße, finger, zeh, zehe, zehen, fußzeh, ader, adern, vene, venen, "
        "krampfader, muskel, muskeln, blase, niere, nieren, hoden, eier, gebärmutter, zahnfleisch, zähne, mund, "
        "lippe, lippen, wunde, narbe, naht, seite, linke seite, rechte seite, körper, ganze körper, ganzer körper, "
        "knochen, hüfte, knie, schulter, wade, schienbein, oberschenkel, rippe, kiefer, backe, wange, lid, "
        "augenlid, nagel, urin, pipi, stuhl, zunge, handgelenk, knöchel, ellbogen, körperhälfte"
    ),
    C.AMISS: (
        "geplatzt, platzt, platz*, aufgeplatzt, aufgerissen, gerissen, aufgegangen, verschwunden, ausgegangen, "
        "erloschen, ausgeschaltet, aus gegangen, eiskalt, kalt wie, hängt, hängen, hängt runter, hängt schief, "
        "schief, verzogen, sabber*, tropft, tropf*, läuft raus, rausläuft, läuft aus, rinnt, spritzt, sprudelt, "
        "strömt, schwimmt, wie ein wasserhahn, wasserhahn, eiter*, schaum, schäum*, schwarz, schwarz geworden, "
        "blau, blau angelaufen, bläulich, lila, violett, kreideweiß, weiß wie, gelb, geschwoll*, schwillt, "
        "dick wie, aufgebläht, aufgedunsen, wie ein ballon, wie zugebunden, zugebunden, zugeschnürt, "
        "zu geschwollen, raus steht, rausschaut, verdreht, ausgerenkt, ausgekugelt, gebrochen, abgeknickt, "
        "steht ab, gehorcht nicht, folgt nicht, hört nicht auf mich, macht was sie will, macht was er will, "
        "macht was es will, was er will, was sie will, führt ein eigenleben, gehört nicht mir, gehört nicht zu mir, "
        "geht nicht mehr, geht nimmer, will nicht mehr, will nicht, wollen nicht, tut nicht mehr, trägt nicht, "
        "tragen mich nicht, tragen nimmer, sackt weg, sacken weg, knickt weg, knicken weg, knickt ein, klappt weg, "
        "bricht weg, weggeknickt, weggesackt, taub, gefühllos, kein gefühl, spür nicht, spüre nicht, "
        "spür .. nicht mehr, spüre .. nicht mehr, spür ich nicht, spür nix, fühl nicht, fühle nicht, "
        "fühl .. nicht mehr, fühle .. nicht mehr, abgestorben, tot, leblos, gelähmt, lahm, kribbel*, "
        "zittert unkontrolliert, zuck*, krampft, verkrampft, krämpfe, steif, starr, steinhart, bretthart, hart wie, "
        "wie ein brett, reißt, zerreißt, zerrissen, sticht wie, messerstich*, wie messer, explodiert, zerquetscht, "
        "erdrückt, unerträglich, nicht auszuhalten, höllisch, wahnsinnige schmerzen, schrei, brennt wie feuer, "
        "brennt wie hölle, verbrannt, verbrüht, verätzt, blasen, roter strich, rote linie, roter streifen, "
        "verfault, stinkt, entzündet, vereitert, aufgeschnitten, tiefer schnitt, tief geschnitten, abgetrennt, "
        "abgehackt, abgerissen, eingeklemmt, steckt drin, zieht sich ein, eingezogen, verdreht sich, weit offen, "
        "geht nicht auf, geht nicht zu, krieg nicht auf, kriege nicht zu, trüb, erweitert, blutet, blutüberströmt, "
        "voller blut, alles rot"
    ),
    C.ODD: (
        "komisch, seltsam, eigenartig, merkwürdig, falsch, nicht richtig, stimmt nicht, stimmt was nicht, "
        "verschwommen, neblig, schwindet, schwinden, lässt nach, versagt, geht weg, bleibt weg, bleibt mir weg, "
        "weggeblieben, weggegangen, dick, pelzig, taub, schwer wie, macht zu, geht zu, schwillt zu, schließt sich, "
        "zieht sich zu, zieht sich zusammen, stockt, setzt aus, ausgesetzt, stehen geblieben, steht still, "
        "bleibt stehen, pfeift, pfeif*, rassel*, rasselt, röchel*, gurgelt, brodelt, flach, keuch*, japs*, laut, "
        "krächz*, heiser und, dreht durch, durchgedreht, spinnt, schwirrt, dröhnt, rauscht, hämmert, pocht, "
        "durcheinander, wirr, verwirrt, verknotet, enger, wird eng, eng, zugeschnürt, gequetscht, zusammengepresst, "
        "zusammengedrückt, presst, zerreißt, zerspringt, platzt, sackt ab, sackt weg, im keller, gelb, flimmert, "
        "flimmern"
    ),
    C.AS_IF: (
        "wie ein, wie eine, wie einen, wie einem, wie einer, wie n, wie ne, wie nen, wie der, wie die, wie das, wie "
        "den, wie aus, wie von, als ob, als hätte, als wär, als wäre, als würde, als wenn, wie wenn, fühlt sich an "
        "wie, seh aus wie, sehe aus wie, sieht aus wie, als würd, als hätt"
    ),
    C.ONSET: (
        "plötzlich, auf einmal, aus heiterem himmel, aus dem nichts, schlagartig, von jetzt auf gleich, "
        "immer schlimmer, immer ärger, wird schlimmer, wird immer, immer mehr, immer stärker, immer schlechter, "
        "viel schlimmer, minütlich, von minute zu minute, ständig wieder, immer wieder, hört nicht auf, "
        "hört nimmer auf, lässt nicht nach, geht nicht weg, schon das dritte mal, zum dritten mal, das dritte mal"
    ),
    C.SCENE: (
        "alles, zimmer, raum, die welt, welt, wände, wand, boden, decke, lichter, licht, bild, bildschirm, "
        "um mich rum, um mich herum"
    ),
    C.DIM: (
        "schwarz, dunkel, duster, düster, finster, grau, verschwimmt, verschwommen, unscharf, milchig, kippt, "
        "schief, schwankt, wackelt, dreht sich, kreist, bewegt sich, doppelt, doppelbilder, verblasst, tunnel, "
        "sternchen, sterne, punkte, flimmer*, flackert, blitze, lichtblitze, zickzack, wellen, nebel, neblig, "
        "schleier, vorhang, rollo, jalousie, schatten, ausgegangen, aus gegangen, verschwunden, "
        "alles weg auf einmal, briefschlitz, schlüsselloch, milchglas, unter wasser, durch wasser, gaze, funken, "
        "zacken, wabert, wabern, zerfließt, verzerrt, fleck, flecken, fliegen, mücken, mouches"
    ),
    C.DO: (
        "aufstehen, hochkommen, aufrichten, aufsetzen, stehen, hoch, aus dem bett, aus der wanne, "
        "aus der badewanne, aus dem sessel, vom boden, vom sofa, zum telefon, zur tür, in die küche, ins bad, "
        "aufs klo, zum klo, ans telefon, schlucken, bei mir behalten, drin behalten, augen offen halten, "
        "augen aufhalten, augen öffnen, wach bleiben, wach halten, bewegen, rühren, spüren, fühlen, kontrollieren, "
        "zittern aufhören, aufhören zu zittern, aufhören zu weinen, aufhören zu kotzen, blutung stoppen, "
        "warm werden, nacken beugen, kopf drehen, hals drehen, kinn auf die brust, mund aufmachen, mund öffnen, "
        "mund schließen, tür aufmachen, tür öffnen, antworten, antwortet, wecken, aufwecken, erkennen, erinnern, "
        "halten, festhalten, greifen, gehen, laufen, geradeaus gehen, auftreten, keinen schritt, einen schritt, "
        "pinkeln, wasserlassen, wasser lassen, lächeln, pfeifen, satz beenden, hinlegen, flach liegen, "
        "scharf sehen, sehen, atmen"
    ),
    C.DREAD: (
        "solche angst, große angst, panische angst, riesenangst, panikattacke, in panik, "
        "etwas stimmt nicht, irgendwas stimmt nicht, da stimmt was nicht, stimmt was nicht, "
        "mit mir stimmt was nicht, stimmt überhaupt nicht, passiert gerade was, was schlimmes, etwas schlimmes, "
        "ganz komisch, total komisch, so komisch, sehr seltsam, mir gehts hundeelend, hundeelend, "
        "gehts mir dreckig, dreckig gehts mir, sauschlecht, sauübel, kotzübel, speiübel, hundsmiserabel, "
        "mir gehts gar nicht gut, mir geht es sehr schlecht, mir gehts sehr schlecht, ganz schlecht, "
        "richtig schlecht, total schlecht, blümerant, wird mir anders, ganz anders, mir wird anders, "
        "immer schlechter, es wird immer schlimmer, ich sterbe, sterbe, ich glaub ich sterbe, angst, todesangst, "
        "hab solche angst, hab angst, solche angst, panik, weiß nicht was tun, weiß nicht was ich tun soll, "
        "weiß nimmer weiter, weiß nicht mehr weiter, was mach ich jetzt, bitte kommt, bitte komm, komm schnell, "
        "kommt schnell, soll wer kommen, kann jemand kommen, brauch jemanden, brauche jemanden, brauch einen arzt, "
        "brauche einen arzt, brauch nen arzt, muss ins krankenhaus, notaufnahme, notarzt, gleich bin ich weg, "
        "bin gleich weg, gleich weg, wieder weg, trete weg, weggetreten, drifte weg, dämmer* weg, wegdämmern, "
        "dämmere, nicht ganz da, nicht mehr ganz da, nicht bei mir, neben mir, halb bewusstlos, halb weg, "
        "weiß nicht mehr wie, weiß nimmer wie, keine ahnung wie ich, filmriss, erinnerungslücke, benommen, "
        "schläfrig, immer schläfriger, immer müder, duselig, dösig, benebelt, werd immer müder, kaum wach, delir*, "
        "fantasier*, halluzin*, seh sachen, sehe sachen, höre stimmen, hör stimmen, stimmen sagen, zähneklappern, "
        "klapper mit den zähnen, klappern die zähne, zähne klappern, schüttelfrost, zitter am ganzen, "
        "zittere am ganzen, glühe, hohes fieber, schweißgebadet, klatschnass geschwitzt, patschnass, schweiß läuft, "
        "kalter schweiß, kaltschweißig, kreidebleich, leichenblass, weiß wie die wand, aschfahl, grau im gesicht, "
        "blaue lippen, dummheit gemacht, dummheit begangen, was dummes getan, was schlimmes getan, mir was antun, "
        "mir etwas antun, mir was angetan, weh getan absichtlich, tief geschnitten, diesmal tief, so noch nie, "
        "noch nie so, nie so schlimm, noch nie gehabt, schlimmste schmerzen, unerträgliche schmerzen, "
        "vor schmerzen, krümme mich, krümm mich, schrei vor, wein vor, kippe um, kipp um, kipp zur seite, "
        "kippe zur seite, kippe weg, falle um, fall um, falle immer, fall jedes mal um, beine weg, beine sacken, "
        "beine tragen, beine geben, knie weich, kreislauf, kreislauf sackt, halte das nicht aus, "
        "halt das nicht aus, halts nicht mehr aus, nicht mehr aushalten, kann nicht mehr, ich kann nimmer, "
        "kann nimmer, auf der brücke, auf dem dach, auf den gleisen, am gleis, am bahngleis, schau runter, "
        "schaue runter, ohne mich besser, besser ohne mich, ohne mich wären, keiner würde mich vermissen, "
        "niemand würde mich vermissen, morgen bin ich nicht mehr, morgen nicht mehr da, heut nacht ist schluss, "
        "mach schluss, schluss machen, abschiedsbrief, lebt wohl, lebwohl, verschluckt, erstick*, keine luft, "
        "krieg keine, ringe nach, ring nach, schnapp*, herzinfarkt, schlaganfall, blutvergiftung, sepsis, "
        "hirnhautentzündung, vergift*, das nächste was ich weiß, dann weiß ich nur, decke angestarrt, "
        "starre an die decke, fremde leute um mich, lauter leute um mich, leute um mich rum, leute um mich herum, "
        "boden kommt mir entgegen, boden kommt auf mich zu, boden unter den füßen weg, beine wie wasser, "
        "beine wie pudding und, beine wie gummi und, ohrensausen, ohren rauschen, ohren sausen, ohren pfeifen, "
        "alles weit weg, wie aus der ferne, weit weg, bis auf den knochen, knochen sieht man, "
        "man sieht den knochen, haut geht ab, haut löst sich, haut hängt, rohes fleisch, haare fallen aus, "
        "haarausfall büschelweise, bewegt sich nicht mehr, tritt nicht mehr, kindsbewegungen, ruf meine tochter, "
        "ruft meine tochter, ruft meinen sohn, sagt meiner familie, sag meiner frau, sag meinem mann, "
        "krankenhaus anrufen, ruft im krankenhaus, ruft den arzt, ruf den arzt, arzt rufen, kann wer anrufen, "
        "kann jemand anrufen, hab euch lieb, ich hab euch alle lieb, verzeiht mir, tut mir leid für alles, "
        "kein zurück, hat keinen sinn, hat alles keinen sinn, keinen sinn mehr, wozu noch, hab einen plan, "
        "hab nen plan, plan steht, tabletten liegen, tabletten bereit, motor läuft, schlauch am auspuff, "
        "einschlafen und nicht, einschlafen und nie, für immer schlafen, verschwinden, will verschwinden, "
        "nie gekannt, nie erlebt, so was noch nie, sowas noch nie, am ganzen körper, der ganze körper, "
        "ganzer körper, von kopf bis fuß, alles tut weh, tut höllisch weh, tut sauweh, tut unheimlich weh, "
        "tut so weh, starke schmerzen, heftige schmerzen, furchtbare schmerzen, schlimme schmerzen, "
        "wahnsinns schmerzen, irre schmerzen, vernichtungsschmerz, atem riecht, riecht nach aceton, azeton, "
        "ständig durst und, eingefallen, nicht ich selbst, bin nicht mehr ich, erkenne mich nicht, "
        "geht den bach runter, da läuft was schief, läuft was schief, stimmt was ned, des is nimmer normal, "
        "das ist nicht normal, nicht mehr normal, bringt mich ins krankenhaus, bring mich ins krankenhaus, "
        "ganz elend, "
        "mich krümme, zusammenkrümme, krümm mich zusammen, krümme mich zusammen, vor schmerz schreien, schreien vor "
        "schmerz, könnt schreien vor schmerz, halt die schmerzen nicht aus, schmerzen nicht auszuhalten, kaum "
        "auszuhalten die schmerzen"
    ),
    C.HELP_ALONE: (
        "hilf mir, helft mir, bitte hilf mir, bitte helft mir, hilfe bitte, bitte hilfe, helfen sie mir, "
        "bitte helfen sie mir, ich brauche hilfe, ich brauch hilfe, brauche hilfe, brauch hilfe, "
        "kann mir jemand helfen, helf mir, zu hilfe, hilfe hilfe"
    ),
    C.HAZARD: (
        "kohlenmonoxid, co melder, co warner, gasgeruch, gasleck, riecht nach gas, gas riech*, abgase, "
        "grill im zimmer, stromschlag, elektroschock, eine gewischt, verbrüh*, kochendes wasser, heißes fett, "
        "heißes öl, säure, bleiche, rohrreiniger, abflussreiniger, frostschutzmittel, rattengift, "
        "unkrautvernichter, gift, giftig, vergift*, pilze gesammelt, knollenblätter*, schlange, kreuzotter, "
        "schlangenbiss, gebissen, hundebiss, fast ertrunken, autounfall, angefahren, überfahren, umgefahren, "
        "niedergestochen, eingestochen, angeschossen, überfallen, gewürgt, schlägt mich, verprügelt, es brennt, "
        "rauch überall, hitzschlag, sonnenstich, unterkühl*, erfrier*, fruchtblase, fruchtwasser, "
        "baby bewegt sich nicht, kind bewegt sich nicht, spür das baby nicht, eileiter*, kettensäge, kreissäge, "
        "knopfzelle, verschluckt, adrenalin pen, adrenalinpen, autoinjektor, notfallpen, notfallset, epipen, jext, "
        "fastjekt, hatte einen unfall, hatte nen unfall, selbstgesammelte pilze, selbst gesammelte pilze, "
        "pilze gegessen, mit der flex, knopfbatterie"
    ),
    C.FALL: (
        "gefallen, gestürzt, sturz, stürz*, runtergefallen, hingefallen, abgestürzt, geflogen, hingeflogen, "
        "umgefallen, gekracht, gedonnert, geknallt, gestolpert, ausgerutscht, gesegelt, runtergesegelt, "
        "hingeknallt, gepurzelt"
    ),
    C.FALL_FROM: (
        "leiter, treppe, stiege, dach, pferd, rad, fahrrad, roller, motorrad, moped, helm, kopfüber, baum, balkon, "
        "gerüst, fenster, mauer, auf den rücken, auf den kopf, aufs gesicht, auf den hinterkopf, bordstein, "
        "randstein, badewanne, dusche"
    ),
    C.MEDICINE: (
        "medizin, medikament*, arznei*, dosis, dosen, wochendose, wochendosis, dosette, tablettenbox, pillenbox, "
        "pflaster, schmerzmittel, schlaftablette*, schlafmittel, morphin, morphium, tramal, tilidin, methotrexat, "
        "mtx, digitoxin, digoxin, betablocker, kortison, cortison, paracetamol, ibuprofen, ibu, aspirin, marcumar, "
        "blister, antidepressiv*, packung, schachtel, flasche, spritze, tropfen, pillen"
    ),
    C.MISUSE: (
        "falsch*, verwechselt, vertauscht, aus versehen, versehentlich, geleert, leer gemacht, ausgeleert, "
        "alle auf einmal, auf einmal, auf einen schlag, ganze woche, die ganze woche, wochenration, alle sieben, "
        "von meinem mann, von meiner frau, vom hund, mit wodka, mit wein, mit schnaps, mit alkohol, mit bier, "
        "zu viel, zu viele, zuviel, zuviele, doppelt, vierfach, viermal, zehnmal, handvoll, hand voll, geschluckt, "
        "verschluckt, runtergespült, reingehauen, eingeworfen, gefuttert, enkel hat, kind hat, ganze packung, "
        "ganze schachtel, ganze dose"
    ),
    C.SENSELESS: (
        "antwortet nicht, antwortet mir nicht, reagiert nicht, reagiert nimmer, gibt keine antwort, "
        "wacht nicht auf, kriege nicht wach, krieg nicht wach, krieg .. nicht wach, nicht ansprechbar, nicht wach, "
        "macht die augen nicht, erkennt mich nicht, kann nicht sprechen, kann nicht reden, kriegt keine luft, "
        "bekommt keine luft, starrt, glasig, verdreht die augen, augen verdreht, blau angelaufen, kreidebleich, "
        "weiß wie, leichenblass, schaum, sabbert, liegt da, umgefallen, umgekippt, zusammengesackt, "
        "zusammengebrochen, zusammengeklappt, schlaff, schwitzt, schweißgebadet, klatschnass, hält sich die brust, "
        "fasst sich an die brust, hält sich das herz, greift sich, redet wirr, redet komisch, redet unverständlich, "
        "lallt, verwirrt, desorientiert, zittert, zuckt, krampft, geschwollen, erstickt, röchelt, pfeift, rasselt, "
        "ringt nach, keucht, ohnmächtig, bewusstlos, mundwinkel, hängt schief, gesicht schief, verbrannt, verbrüht, "
        "hat was getrunken, hat was gegessen, hat was geschluckt, verschluckt, steif, starr, nicht bei sich, "
        "weggetreten, benommen, ganz blau, ganz grau, wird blau, wird grau, am boden, auf dem boden, liegt am boden, "
        "komische antworten, gibt komische antworten, wirre antworten, antwortet wirr, redt wirr, redet "
        "durcheinander, redet quatsch, redet unsinn, faselt, verschwitzt, ganz verschwitzt, schweißnass, pitschnass, "
        "nassgeschwitzt, nass geschwitzt, antwortet nimmer, reagiert ned, rührt sich nicht, rührt sich nimmer, ned "
        "wach, nicht wachzukriegen, nicht wach zu kriegen, nicht zu wecken, starrt nur, stiert, erkennt mi nimmer, "
        "kennt mich nicht, weiß nicht wer ich bin, ganz blass, käseweiß, läuft blau an, zitteret, verkrampft, schaum "
        "vorm mund, schaum vor dem mund, schnarcht komisch, atmet nicht, atmet kaum, liegt auf dem boden"
    ),
    C.SKIP: (
        "weglass*, lass .. weg, lasse .. weg, weg, auslass*, lass .. aus, lasse .. aus, spritz nicht, "
        "spritze nicht, spritz weniger, spritze weniger, nehm nicht, nehme nicht, überspring*, reduzier*, weniger"
    ),
    C.DOWN: "kilos, abnehm*, abzunehmen, gewicht, purzeln, runter, dünn*, schlank*, waage, zahl, leichter, pfunde",
    C.LOW_SHOWN: (
        "low, lo, niedrig, zu niedrig, doppelpfeil, pfeil nach unten, pfeile nach unten, zwei pfeile, nach unten, "
        "unter 3, unter 50, im keller, tief, sinkt, fällt"
    ),
    C.DROWSY: (
        "schläfrig*, müde*, müder, benommen*, dösig, duselig, schlapp, einschlaf*, schlafe ein, schlaf ein, "
        "wegdämmer*, dämmer*, benebelt, tranig"
    ),
    C.GAS: (
        "kohlenmonoxid, co melder, co warner, co alarm, melder, gasgeruch, gasleck, riecht nach gas, gas, abgase, "
        "grill in der, holzkohle, kohlegrill, generator, kamin, ofen, therme, gastherme, rauchmelder, warnmelder"
    ),
    C.POISONED: (
        "piept, piepst, schlägt an, schrillt, schlägt alarm, geht los, uns allen, wir alle, alle, ganze familie, "
        "kopfweh, kopfschmerz*, kopf weh, schlecht, übel, schwindlig, duselig, müde, schläfrig, kirschrot, kotzen"
    ),
    C.FEVER: "fieber, temperatur, fiebrig, glühe",
    C.RIGOR: (
        "zähneklappern, klapper mit den zähnen, zähne klappern, klappern die zähne, zähnen, schüttelfrost, zitter*, "
        "verwirrt, durcheinander, fantasier*, delir*, halluzin*, flecken, ausschlag, punkte auf der haut, "
        "nackensteif*, nacken steif, steifer nacken, licht tut weh, lichtscheu, atme schnell, kein urin, "
        "nicht gepinkelt, roter strich, rote linie, roter streifen, schläfrig, benommen, wacht nicht auf, "
        "weiß nicht wo"
    ),
    C.STREAK: "roter strich, rote striche, rote linie, roter streifen, rote streifen, rote strieme",
    C.FEEL: "spür, spüre, spüren, gspür, gspürt, fühl, fühle, fühlen, merk, merke",
    C.CURTAIN: (
        "vorhang, rollo, rolladen, rollladen, jalousie, schleier, ausgegangen, aus gegangen, licht aus, erloschen, "
        "schwarz geworden, wird schwarz, schwarz, duster, dunkel geworden, verschwunden, hälfte, linke hälfte, "
        "rechte hälfte, fehlt, milchig, spinnweben, rußregen, russregen, ausgefallen"
    ),
}
