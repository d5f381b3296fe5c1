"""German: the concepts of danger signs, and the answers to "Is it happening now?"."""

from __future__ import annotations

from core.language.concepts import Answer
from core.language.concepts import Concept as C

CONCEPTS: dict[C, str] = {
    # parts of the body
    C.CHEST: (
        "brust, brustkorb, brustbein, brustraum, brustbereich, brustkasten, bruscht, brustkorbs, rippen, "
        "hinterm brustbein, sternum"
    ),
    C.HEART: "herz, herzen, herzgegend, puls, herzschlag, herzl, pumpe, herzrhythmus",
    C.ARM_OR_JAW: (
        "kiefer, linker arm, linken arm, linke arm, linken oberarm, schulterblatt, schulterblätter, "
        "schulterblättern, nacken, hals, unterkiefer, linke schulter, linken schulter, arm"
    ),
    C.FACE: "gesicht, gesichtshälfte, mund, mundwinkel, lid, augenlid, wange, lippe, gsicht",
    C.LIPS_OR_TONGUE: "lippe, lippen, zunge, augen, augenlider, lider, gesicht, mund, zungn",
    C.THROAT: "hals, kehle, rachen, luftröhre, gurgel, hois, kehlkopf",
    C.LIMB: (
        "arm, arme, bein, beine, hand, hände, seite, fuß, körperhälfte, finger, gesichtshälfte, linke seite, "
        "rechte seite, hälfte"
    ),
    C.LEG: "bein, wade, knöchel, fuß, oberschenkel, unterschenkel, fußgelenk, haxn, schienbein, hax, wadl",
    C.LEGS: "beine, waden, füße, beiden beine, beide beine, knöchel beide, fuess",
    C.EYE: "auge, augen, aug, linken auge, rechten auge",
    C.JOINT: (
        "knie, hüfte, sprunggelenk, rücken, schulter, gelenk, muskel, wade, leiste, handgelenk, "
        "oberschenkel, ellenbogen, achillessehne, kreuz, sehne, knöchel, nacken"
    ),
    # heart
    C.CHEST_PAIN: (
        "brustschmerz*, brustenge, brustdruck, herzschmerz*, herzstechen, angina pectoris, herzdrücken, "
        "brustweh, herzkrampf, herzenge, engegefühl in der brust, brustkorbschmerz*, elefant auf der brust, "
        "brustschmertz*"
    ),
    C.HEART_ATTACK: "*herzinfarkt*, herzanfall, herzattacke, infarkt, herzstillstand, herzkasper",
    C.HURT: (
        "schmerz*, weh, wehtut, weh tut, tut weh, stechen, sticht, stichts, stiche, stich, gestochen, "
        "brennen, brennt, brennts, krampf*, ziehen, zieht, ziehts, reißen, reißt, bohrt, pocht, unangenehm, "
        "komisch, pieksen, piekst, zwickt, aua, quält, qual, autsch, ziept, brannte, stach, weg zu tun, "
        "beisst"
    ),
    C.PRESS: (
        "druck, drückt, drücken, drückend, drückts, gedrückt, eng, enge, engegefühl, beklemm*, beklommen*, "
        "zuschnürt, zugeschnürt, schnürt, schwer, last, gewicht, spannt, pressen, presst, quetscht, "
        "zusammengedrückt, zugedrückt, schraubstock, ring um, gürtel um, stein auf, "
        "als würde jemand draufsitzen, panzer"
    ),
    C.SPREADS: "strahlt, ausstrahlt, ausstrahlen, zieht in, zieht bis, wandert, wandert in, strahlt aus",
    C.CLUTCH: "fasst, hält sich, greift sich, greift, fasst sich, hebt sich, klammert",
    C.RACING: (
        "rast, rasen, rasts, gerast, stolpert, stolpern, stolperer, flattert, flattern, unregelmäßig*, "
        "unrund, aussetzer, pocht, pochen, wild, setzt aus, aussetzt, setzt .. aus, zu schnell, "
        "sehr schnell, so schnell, ganz schnell, viel zu schnell, hämmert, hämmern, klopft, klopfen, "
        "galoppiert, springt, hüpft, spinnt, verrückt, aus dem takt, außer takt, takt, bis zum hals, "
        "macht sprünge, überschlägt, jagt, hopst, poltert, wummert, schlägt so schnell, schlägt schnell, "
        "schlägt wie, wie wild"
    ),
    C.PALPITATIONS: (
        "herzrasen, herzrasn, herzstolpern, herzklopfen, herzflattern, herzrhythmusstörung*, extrasystole*, "
        "vorhofflimmern, herzflimmern, herzjagen, kammerflimmern, rhythmusstörung*, herzpochen, herzaussetzer"
    ),
    C.COLD_SWEAT: (
        "kalter schweiß, kalten schweiß, kaltschweißig, schweißausbruch, schweißausbrüche, kalt geschwitzt, "
        "schweißgebadet, schweiß .. runter, schwitze wie, klatschnass geschwitzt, schwitz kalt, kalt schwitze"
    ),
    # brain
    C.STROKE: (
        "*schlaganfall*, hirnschlag, hirnblutung, schlagerl, hirninfarkt, gehirnblutung, gehirnschlag, streifung"
    ),
    C.DROOP: (
        "hängt, hängen, hängend, hangt, herabhängend, schief, schiefer, verzogen, herunter, runter, "
        "runtergeklappt, schräg, heruntergezogen, verzieht, krumm"
    ),
    C.NUMB: (
        "taub, taubes, taubheit*, gelähmt, lähmung*, lahm, eingeschlafen, kribbelt, kribbeln, pelzig, "
        "gefühllos, spüre .. nicht, spür .. nicht, spür .. nimmer, kein gefühl, bamstig, kein gespür, "
        "ameisenlaufen, abgestorben"
    ),
    C.LIMP: (
        "wie tot, tot, schlaff, kraftlos, keine kraft, gehorcht nicht, gehorcht mir nicht, gehorcht nimmer, "
        "macht nicht mehr mit, macht nicht was ich will, funktioniert nicht, geht nicht mehr hoch, "
        "hängt runter, hängt nur noch, hängt schlaff, fällt runter, fällt mir alles aus der, sackt weg, "
        "knickt weg, knickt ein, versagt, will nicht mehr, lässt sich nicht bewegen, lässt sich nicht heben, "
        "fällt einfach, baumelt, ohne kraft, keine gewalt, folgt mir nicht, wie blei, bleischwer, "
        "wie gelähmt, fällt mir ständig"
    ),
    C.WEAK: "schwach, schwäche, kraftlos, schlapp, keine kraft, lahm",
    C.ONE_SIDE: (
        "einseitig, linke, rechte, linken, rechten, eine seite, einer seite, linker, rechter, halbseitig*, "
        "linksseitig, rechtsseitig, hälfte"
    ),
    C.CANNOT: (
        "kann nicht, kann .. nicht, kann ich .. nicht, nicht mehr, kann kaum, kaum, nimmer, kann nimmer, "
        "nicht richtig, kriege .. nicht, krieg .. nicht, bekomme .. nicht, bring .. nicht, bringe .. nicht, "
        "schaff .. nicht, nix mehr, nichts mehr, schwer, mühe, probleme, schwierigkeiten, konnte nicht, "
        "geht nicht, nicht, ned, nöd, net, nit, gar nichts, nichts, nix, unfähig, kein"
    ),
    C.MOVE: (
        "bewegen, rühren, heben, hochheben, anheben, halten, festhalten, spüren, fühlen, greifen, hoch, "
        "benutzen, steuern, spür, spüre, bewege, bewegt, hebe, kontrollieren"
    ),
    C.SPEAK: (
        "sprechen, reden, schwätzen, worte finden, wörter finden, wörter .. raus, worte .. raus, "
        "sätze bilden, kein wort, wort rausbringen, artikulieren, wörter nicht, worte nicht, "
        "satz .. rausbringen, reda, die wörter"
    ),
    C.SPEECH: "sprache, sprechen, reden, worte, wörter, aussprache, rede, zunge, stimme, red, spreche",
    C.GARBLED: (
        "verwaschen*, undeutlich, gestört, mühe, probleme, lallend, schwer, durcheinander, komisch, wirr, "
        "wirres, unverständlich*, falsch raus, falsch, verdreht, wirres zeug, kauderwelsch, stockt, unsinn, "
        "blödsinn, verwaschn, stolpert, gehorcht nicht, kuddelmuddel, quatsch raus, nuschelig"
    ),
    C.SLURRED: (
        "lalle, lallen, lallt, lall, gelallt, sprachstörung*, gesichtslähmung, halbseitenlähmung, "
        "wirres zeug, redet unverständlich, nuschelt plötzlich, wortfindungsstörung*, rede nur unsinn, "
        "redet nur unsinn, spricht undeutlich, lallat, spricht verwaschen"
    ),
    C.SEE: "sehen, seh, sehe, sieht, gsehn, gseh, siech, erkennen, sah, blick",
    C.SIGHT_LOST: (
        "doppelbilder, sehe doppelt, seh doppelt, doppelt sehe, plötzlich blind, sehverlust, sehstörung*, "
        "plötzlich verschwommen, auf einem auge blind, auge blind, auge ist blind, erblindet, "
        "schwarz auf dem auge, schwarz vor dem auge, vorhang vor dem auge, vorhang vorm auge, sicht weg, "
        "sehen verschwommen, alles verschwommen, gesichtsfeld, augenlicht, halbblind, auge schwarz, "
        "auge ist schwarz, auge alles schwarz, schatten vor dem auge, sehkraft weg, alles doppelt"
    ),
    C.CONFUSED: (
        "verwirrt, wirr, durcheinander, desorientiert, orientierungslos, neben mir, verwirrung, ganz konfus, "
        "verwirrtheit, konfus"
    ),
    C.LOST_BEARINGS: (
        "weiß nicht wo ich bin, weiss nicht wo ich bin, weiß nicht welcher tag, weiß nimmer wo, "
        "weiß nicht mehr wo ich, weiß meinen namen nicht, finde mich nicht zurecht, "
        "weiß nicht mehr wie ich heiße, erkenne meine wohnung nicht, weiß grad nicht wer"
    ),
    C.HEADACHE: (
        "kopfschmerz*, kopfweh, kopf weh, schädelweh, kopf platzt, kopf explodiert, schädel platzt, "
        "schädel brummt, migräne*, schmerz im kopf, schmerzen im kopf, kopf tut, grind, schädel, kopfwee, "
        "kopf zerspringt"
    ),
    C.WORST: (
        "schlimmsten, stärksten, schlimmste, stärkste, vernichtende*, wie ein donnerschlag, donnerschlag, "
        "wie ein blitz, blitzartig, noch nie so, nie so, so was hatte ich noch nie, "
        "sowas hatte ich noch nie, nie erlebt, explosionsartig, schlagartig, wie nie zuvor, genickstarre, "
        "nackensteif*, steifer nacken, wie ein schlag, meines lebens, aus dem nichts, urplötzlich"
    ),
    C.SEVERE: (
        "stark, starke, starken, starkes, schwer, schwere, schwerer, sehr, extrem, extreme, heftig, heftige, "
        "heftigen, schlimm, schlimme, rasende, furchtbar*, schrecklich*, unerträglich*, massiv*, "
        "wahnsinnig*, höllisch*, brutal*, irre, arg, fürchterlich*, aufgewacht"
    ),
    C.SUDDEN: (
        "plötzlich*, auf einmal, schlagartig, auf einen schlag, aus heiterem himmel, von jetzt auf gleich, "
        "von einer sekunde, unvermittelt, urplötzlich, akut, grad eben, gerade eben, uf eimal, vo eim moment"
    ),
    C.FAINTED: (
        "ohnmächtig, ohnmacht, ohnmachts*, bewusstlos*, bewustlos*, umgekippt, kipp um, kippe um, kippte um, "
        "kippt um, kippe gleich, kollabiert, kollaps, zusammengebrochen, zsammbrochn, zämebroche, "
        "zusammengeklappt, zusammengesackt, bewusstsein verloren, das bewusstsein, weggekippt, weggetreten, "
        "umgefallen, umgfalln, umgflogn, umgheit, zammgsackt, in ohnmacht, schwarz vor augen .. weg, "
        "weg vom fenster, synkope, weggesackt, nicht ansprechbar, nicht bei bewusstsein, reagiert nicht, "
        "wacht nicht auf, nicht mehr wach, brach zusammen, bricht zusammen, war kurz weg, war weggetreten, "
        "kurz weg gewesen, blackout, umkippen, aus den latschen gekippt, aus den latschen, zusammenbruch, "
        "liegt leblos, leblos"
    ),
    C.CAME_ROUND: (
        "zu mir gekommen, aufgewacht, wach geworden, zu mir kam, zu sich gekommen, wieder zu mir, aufgwacht, "
        "fand mich, wiedergefunden, lag ich, bin ich gelegen, kam zu mir"
    ),
    C.FLOOR: "boden, fußboden, fliesen, teppich, bodn, flur, badezimmerboden, parkett, asphalt, estrich",
    C.SEIZURE: (
        "*krampfanfall*, *krampfanfälle*, epileptisch*, epilepsie, krampft, gekrampft, krampfte, "
        "krämpfe am ganzen, fieberkrampf, grand mal, schüttelkrampf, *anfall gehabt, einen anfall, "
        "nen anfall, zuckungen, verkrampft am ganzen, anfallsleiden"
    ),
    C.JERKING: (
        "zuckt .. immer, zuckt unkontrolliert, unkontrolliert gezuckt, am ganzen körper gezuckt, "
        "ganzer körper zuckt, ganze körper .. gezuckt, zunge gebissen, zunge blutig, zunge zerbissen, "
        "zuckt am ganzen, zucke am ganzen, unkontrolliertes zucken, geschüttelt .. kontrolle"
    ),
    C.DIZZY: (
        "schwindel*, schwindlig*, drehschwindel, benommen*, schwummrig*, schummrig*, schwarz vor augen, "
        "schwarz vor den augen, dreht sich alles, alles dreht sich, alles gedreht, dreht sich, dreht si, "
        "flau, drümmlig, trümmlig, sturm im kopf, taumelig, taumle, torkel*, wanke, gleichgewicht, "
        "wackelig auf den, zimmer dreht, schwindl, duselig, dusslig, karussell im kopf, schwankt, "
        "sturm im grind, sturm"
    ),
    C.AGAIN: (
        "dritter tag jetzt, wieder, immer, ständig, oft, öfter, jeden, jedes, jedesmal, seit, dauernd, "
        "häufig, mehrmals, täglich, gestern, wiederholt, tagelang, immer noch, immer no, dritter tag, "
        "drittes mal, zum dritten, tage, tagen, woche, wuche, die woche, diese woche, ganze zeit, "
        "in letzter zeit, wenn ich aufsteh, sobald, beim aufstehen, laufend, scho wieder, zweites mal, "
        "zweimal, dreimal"
    ),
    # breath
    C.BREATHE: (
        "atmen, atma, luft holen, luft, durchatmen, schnaufen, schnaufe, luft kriegen, luft bekommen, einatmen, atem"
    ),
    C.CHOKING: (
        "bekomme keine luft, kriege keine luft, krieg keine luft, kriegt keine luft, bekommt keine luft, "
        "bekomm keine luft, keine luft, koa luft, kei luft, ka luft, kaum luft, kaum no luft, "
        "kaum noch luft, keine luft mehr, kann nicht atmen, kann nicht mehr atmen, kann kaum atmen, "
        "nicht atmen, nicht richtig atmen, atmet nicht, atmet nicht mehr, atmet kaum, nicht genug luft, "
        "zu wenig luft, kaum atmen, atemnot, luftnot, ersticke, erstick, erstickt, ersticken, erstickungs*, "
        "ringe nach luft, ringt nach luft, schnappe nach luft, schnappt nach luft, schnapp nach luft, "
        "hechle nach luft, japs, japse, japst, luft bleibt weg, bleibt mir die luft weg, "
        "bleibt die luft weg, luft wegbleibt, kann nicht schnaufen, kriag koa luft, nimmer schnaufen, "
        "keinen atem, kein atem, röchelt, röchle, luft abgeschnürt"
    ),
    C.AIR_HUNGER: (
        "schwer luft, schlecht luft, schlecht .. luft, schwer .. luft, schwer atmen, schwer atme, "
        "atmen fällt .. schwer, atmen .. schwer, luft wird knapp, wenig luft, mühe zu atmen, "
        "mühe beim atmen, mühsam luft, luft reicht nicht, luft ist knapp, lufthunger, schlecht schnaufen"
    ),
    C.BREATHLESS: (
        "kurzatmig*, außer atem, atemlos, aus der puste, außer puste, keine puste, puste, atembeschwerden, "
        "schnaufe, schnaufen, schnauf, schnaufn, hechle, keuche, keuch, keuchend, hecheln, außer schnauf, "
        "verschnaufen, pumpe, luft schnappen, bleibt .. luft weg, nach luft schnappen, usser atem, luft weg, "
        "kein schnauf, durchschnaufen, luft zu holen, luft holen, atem, luft"
    ),
    C.BLUE: (
        "wird blau, blau an, blaue lippen, lippen blau, lippen sind blau, lippen werden blau, ganz blau, "
        "schon blau, blau im gesicht"
    ),
    C.REST: (
        "ruhe, sitzen, liegen, sitze, liege, sitz, lieg, sitzt, im sessel, auf der couch, auf dem sofa, "
        "im bett, nachts, aufgewacht, sitz nur, ohne bewegung, ohne mich zu bewegen, ohne was zu tun, "
        "nichts tun, nichtstun, im sitzen, im liegen, flach, ohne anstrengung, in der nacht, "
        "mich nicht bewegt, kanapee, vorm fernseher, im ruhezustand"
    ),
    C.TASKS: (
        "treppe*, treppn, stiege*, treppensteigen, stock, stockwerk, anziehen, aziehe, haushalt, als sonst, "
        "als früher, als gewöhnlich, normalerweise, duschen, neuerdings, ständig, immer, seit, schnell, "
        "schneller, leichter, schlimmer, öfter, gewöhnlich, schon bei, bei kleinsten, kleinster, kleinsten, "
        "geringster, jeden tag, betten machen, bett machen, bettmachen, staubsaugen, kochen, einkaufen, "
        "gehen, laufen, spazieren*, schuhe binden, ein paar schritte, wenige schritte, wenigen schritten, "
        "nach ein paar, neu, noch nicht so, war das noch nicht, nie gehabt, vorher nicht, früher nicht, "
        "steigung, hügel, berg, müll, putzen, wäsche, alltag, im alltag, briefkasten, garten, jetzt schon, "
        "letzter zeit, bei allem, bei jeder"
    ),
    C.INHALE: "einatmen, einatme, tief atme, tief luft, durchatmen, beim atmen, tief einatme, luft hol",
    # blood
    C.BLEED: "blute, blutet, bluten, geblutet, *blutung*, nasenbluten, blüetet, bluat",
    C.BLOOD: "blut, blutig*, bluat, bluet",
    C.NOT_STOPPING: (
        "hört nicht auf, hört .. nicht auf, hört nicht mehr auf, hört ned auf, nicht aufhört, "
        "hört .. nimmer auf, nicht stillen, nicht zu stillen, lässt sich nicht stoppen, nicht stoppen, "
        "hört einfach nicht, unstillbar, läuft und läuft, rinnt und rinnt, seit einer stunde, seit stunden, "
        "seit einer halben stunde, halbe stunde, durchgeblutet, durchgeweicht, getränkt, spritzt, strömt, "
        "läuft runter, tropft und tropft, hört net auf, hört gar nicht, stoppt nicht, "
        "kriege .. nicht gestillt, krieg .. nicht gestoppt"
    ),
    C.MUCH: (
        "viel, stark, starke, schwer, heftig, massiv*, literweise, alles voll, überall, lache, pfütze, sehr, "
        "wie verrückt, wie ein schwein, am kopf, aus dem kopf, handtücher, handtuch, so viel, unmengen, "
        "große mengen, ziemlich viel, hellrot, klumpen, total, wie sau"
    ),
    C.HAEMORRHAGE: (
        "verblute, verblutet, verbluten, magenblutung, magenblutungen, innere blutung*, blutsturz, "
        "blutendes magengeschwür, starke blutung*, blutspuck*, bluterbrechen, teerstuhl, blutig erbrochen, "
        "kaffeesatz"
    ),
    C.VOMIT: (
        "erbrechen, erbrochen, übergeben, brechen, brich, gebrochen, kotzen, gekotzt, kotz, kotze, erbreche, "
        "gespuckt, gspibn, speiben, gspieben, übergebe, spucke, reihern, gereihert, chotzet, würgen, spucken"
    ),
    C.COUGH: "huste*, gehustet, hustet, ausgehustet, abgehustet, gehuscht, auswurf",
    C.STOOL: (
        "stuhl, stuhlgang, kot, kacke, klo, toilette, urin, pipi, durchfall, ausscheidung, klopapier, "
        "windel, am klo, darm"
    ),
    C.BLACK: "schwarz, pechschwarz, teer, teerig, wie teer, schwarzer, schwarzen, kohlschwarz, rabenschwarz",
    # medicines and poisons
    C.OVERDOSE: (
        "*überdosis, überdosiert, überdosierung, vergiftet, vergiftung, zu viele tabletten, "
        "zu viel tabletten, zu viele pillen"
    ),
    C.TOOK: (
        "genommen, gnomma, eingenommen, geschluckt, gschluckt, nehme, nimm, nahm, gespritzt, gegeben, intus, "
        "erwischt, reingehauen, eingeworfen, genomme, gschpritzt, verabreicht"
    ),
    C.SWALLOWED: (
        "gegessen, gessn, geschluckt, verschluckt, gschluckt, gefuttert, gfressn, getrunken, gessen, "
        "schluckt, runtergeschluckt, in den mund gesteckt, gschlückt, gelutscht, aufgegessen, trunken"
    ),
    C.TABLETS: (
        "*tablett*, *tabletten, pille*, pilln, *medikament*, *kapsel*, medis, schlaftablett*, paracetamol, "
        "ibuprofen, aspirin, marcumar, blutverdünner, betablocker, *mittel, tropfen, schlafmittel, "
        "beruhigungsmittel, pulver*, dosis, tramadol, opiate, morphium, pulverl, zäpfchen, blister, digitoxin"
    ),
    C.INSULIN: "*insulin*",
    C.TOO_MUCH: (
        "alle, alles, ganze, ganzen, ganzes, doppelt, doppelte, doppelten, zweimal, zwoamal, zu viel, "
        "zu viele, zuviel*, statt, anstatt, aus versehen, versehentlich, falsch, falsche, falschen, "
        "verwechselt, handvoll, hand voll, packung, schachtel, röhrchen, viel zu, irrtümlich, auf einmal, "
        "2x, 2 mal, dreimal, dreifache, mehrere, haufen, noch mal, nochmal, meine, s ganze, sämtliche, "
        "dutzend, verzählt, vertan"
    ),
    C.POISON: (
        "bleiche, bleichmittel, rohrreiniger, abflussreiniger, putzmittel, reinigungsmittel, spülmittel, "
        "waschmittel, frostschutz, rattengift, gift, essigessenz, lampenöl, desinfektionsmittel, entkalker, "
        "pilz*"
    ),
    # despair
    C.KILL_SELF: (
        "umbringen, umzubringen, bring .. mich um, bringe .. mich um, mich um bring, bringt sich um, "
        "umbringt, suizid*, selbstmord*, selbsttötung, das leben nehmen, leben nehmen, leben zu nehmen, "
        "mein leben beenden, leben beende, leben beenden, leben zu beenden, mir etwas antun, mir etwas an, "
        "mir was antun, mir was an, was anzutun, tu mir was an, antun, tu mir .. an, erhäng*, aufhäng*, "
        "aufhängen, vom dach spring*, vor den zug, vorn zug, vor einen zug, von der brücke, schluss machen, "
        "mach schluss, mache schluss, mich töten, erschießen, erschieße, vergiften, springe vom, "
        "aus dem fenster spring*, mich selbst verletzen, verletze mich, mich verletzen, "
        "aus dem leben scheiden, bring mi um, abmurksen, ins wasser gehen"
    ),
    C.CUT_SELF: (
        "geritzt, ritze mich, ritz mich, ritzen, mich selbst verletzt, pulsadern, selbstverletz*, "
        "aufgeschnitten, aufgeschlitzt, adern aufschneid*, schneide mich, mich geschnitten .. absicht*, "
        "absichtlich geschnitten, arme aufgeritzt, mich wieder geschnitten, schneid mich"
    ),
    C.END_IT: (
        "allem ein ende, mach ich schluss, mache ich schluss, ist schluss, ist es vorbei, ist alles vorbei, "
        "hat alles ein ende, ist aus, nicht mehr da, zu ende, beende ich es, beende es, mach ich ein ende, "
        "ein ende, is aus, is vorbei, hört alles auf, mach ich es, tu ich es"
    ),
    C.TONIGHT: (
        "heute, heut, heute nacht, heut nacht, morgen, jetzt, diesmal, heit, heute abend, endgültig, "
        "für immer, noch heute"
    ),
    C.FAREWELL: (
        "abschiedsbrief*, abschiedsbriefe, abschied genommen, abschied geschrieben, brief an die kinder, "
        "testament geschrieben, von allen verabschiedet, verabschiedet von allen, zettel geschrieben"
    ),
    C.READY: (
        "liegen bereit, bereit, gesammelt, gehortet, vor mir, neben mir, bereitgelegt, daheim liegen, "
        "gespart, hergerichtet, parat, liegen schon, zurechtgelegt"
    ),
    C.MEANS: (
        "strick, seil, messer, klinge, rasierklinge, waffe, pistole, tabletten, brücke, gleise, schlinge, "
        "eingesperrt, eingeschlossen"
    ),
    C.THOUGHTS: (
        "denke an, denk an, denke ständig, denk ständig, gedanken, gedanke, gedacht, denke oft, denk oft, "
        "denke daran, denk dran, denk manchmal, manchmal, nachgedacht, nie machen, würde es nie, würds nie, "
        "nicht tun, spiele mit, im kopf, überlegt, phantasie, fantasien"
    ),
    C.DEATH_WISH: (
        "will sterben, möchte sterben, mag sterben, sterben will, sterben möchte, sterben wollen, "
        "lebensmüde, wäre lieber tot, lieber tot, tot sein, tot wäre, tot wär, nicht mehr leben, "
        "nimmer leben, nimma leben, nicht mehr weiterleben, nimmer weiterleben, leben keinen sinn, "
        "kein sinn im leben, nicht mehr da sein, nicht mehr da wäre, nicht mehr da wär, "
        "nicht mehr aufwachen, nimmer aufwachen, nicht mehr aufwache, nicht mehr aufwach, ohne mich besser, "
        "besser ohne mich, besser dran ohne mich, ohne mich, nichts wofür es sich zu leben, "
        "kann so nicht weiterleben, gestorben wäre, einschlafen und nicht, nicht mehr existieren, "
        "nicht mehr hier sein, des lebens müde, todessehnsucht, nöd mehr läbe, nüm läbe, nümm läbe, "
        "nicht mehr am leben sein, leben satt, nie geboren, suizidgedanken, selbstmordgedanken, "
        "suizidale gedanken, todeswunsch, keine lust mehr zu leben, lohnt sich nicht zu leben, "
        "leben ist nicht lebenswert"
    ),
    C.HOPELESS: (
        "keinen sinn mehr, kein sinn mehr, alles keinen sinn, alles sinnlos, sinnlos, aussichtslos, "
        "hoffnungslos, keine hoffnung, keine hoffnung mehr, mich aufgegeben, aufgegeben, gebe auf, geb auf, "
        "keinen ausweg, kein ausweg, wird eh nie besser, wird nie besser, wird nie wieder, nie wieder gut, "
        "nicht mehr weiter, weiß nicht mehr weiter, kann nicht mehr, ich kann nimmer, mag nimmer, "
        "keine zukunft, bringt doch nichts, bringt alles nichts, wozu noch, wozu das alles, wofür noch, "
        "hat doch keinen zweck, keinen zweck mehr, verzweifelt, verzweiflung, am ende mit, bin am ende, "
        "nur eine last, allen zur last, zur last, wertlos, nichts wert, keine kraft mehr weiter, "
        "keine perspektive, sehe kein licht, kein licht, alles hoffnungslos, alles egal, ist mir alles egal, "
        "schwarzes loch, kein ziel mehr, was soll das alles noch, nichts hat mehr"
    ),
    # eating
    C.EATING: (
        "hungere mich, hungern um, abführmittel, abführtablett*, abführtee, essattacke*, fressattacke*, "
        "fressanfall*, fressanfälle, essanfall*, essanfälle, heißhungerattacke*, magersucht, magersüchtig, "
        "bulimie, bulimisch, essstörung*, finger in den hals, finger in hals, finger .. gesteckt, "
        "hasse meinen körper, ekel vor meinem körper, ekle mich vor, angst vor dem essen, angst vorm essen, "
        "angst zu essen, esssucht, denke nur noch ans essen, denke nur noch an mein gewicht, "
        "denke nur an mein gewicht, nach dem essen übergebe, nach dem essen erbrechen, esse kaum, ess kaum, "
        "esse fast nichts, ess fast nix, esse nichts mehr, ess nix mehr, traue mich nicht zu essen, "
        "kann nicht aufhören zu essen, kann nicht aufhören mich zu wiegen, wiege mich ständig, "
        "wiege mich zehnmal, angst vorm wiegen, angst vor der waage, angst vor waage, wegen der waage, "
        "entwässerungstablett*, stopfe alles in mich, in mich reingestopft, verbiete mir das essen, "
        "verbiet mir zu essen, nulldiät, appetitzügler, anorexie"
    ),
    C.ON_PURPOSE: (
        "absichtlich, mit absicht, extra, um abzunehmen, zum abnehmen, freiwillig, damit ich nicht, finger, "
        "selbst herbei, heimlich, damit das gewicht, wegen der waage"
    ),
    C.MEAL: (
        "nach dem essen, nach dem abendessen, nach jeder mahlzeit, nach mahlzeiten, nach dem mittag*, "
        "nach jedem essen, mahlzeit, nach der mahlzeit, znacht, nachm essen"
    ),
    C.NOT_EATEN: (
        "nichts gegessen, nix gegessen, nichts mehr gegessen, nix gessn, nichts esse, nichts zu essen, "
        "nicht gegessen, nüt gässe, nüüt gesse, kaum gegessen, esse nichts, ess nix, keinen bissen, "
        "ohne essen, keinen happen"
    ),
    C.FOR_DAYS: (
        "seit, tage, tagen, tagelang, sonntag, montag, dienstag, mittwoch, donnerstag, freitag, samstag, "
        "wiegen, waage, gestern, woche, abnehmen, gewicht"
    ),
    # swelling
    C.SWOLLEN: (
        "geschwollen, gschwolln, gschwollen, angeschwollen, schwillt, schwellen, schwillt an, schwellung*, "
        "zugeschwollen, anschwellen, anschwillt, dick, dicke, dicker, dickes, aufgequollen, aufgedunsen, "
        "quillt, verschwollen, aufgeschwollen, wie ein ballon, ballon, prall, aufgeblasen, gschwulle, "
        "gschwulla, angelaufen, unförmig"
    ),
    C.BIGGER: "doppelt so, dicker als, größer als, viel dicker, doppelte, umfang, umfänglich",
    C.HOT_OR_RED: (
        "heiß und rot, rot und heiß, heiß und dick, heiss und dick, rot und warm, warm und rot, überwärmt, "
        "heiß und schmerz*, glüht"
    ),
    C.CLOT: "*thrombose*, blutgerinnsel, gerinnsel, blutpfropf",
    C.CLOSING: (
        "geht zu, geht .. zu, zugeht, zugegangen, schnürt, zuschnürt, zugeschnürt, schnürt sich, "
        "schwillt zu, zu, eng, enger, verengt, wie zugeschnürt, macht zu, macht dicht, verschließt, "
        "schlucken, nicht schlucken, zuagangen, abgeschnürt"
    ),
    C.ALLERGY: (
        "allergisch*, anaphyla*, allergieschock, *nesselsucht, quaddeln am ganzen, adrenalinpen, epipen, "
        "notfallpen, allergie anfall, ausschlag am ganzen körper .. luft"
    ),
    # exercise
    C.NAUSEA: (
        "übel, übelkeit, speiübel, kotzübel, brechreiz, schlecht geworden, wurde mir schlecht, "
        "wurde mir .. schlecht, mir .. schlecht, mir schlecht, mir ist schlecht, mir war schlecht, "
        "mir wird schlecht, schlecht wird, mir is schlecht, flau im magen, würgereiz, blümerant, "
        "mir ist .. schlecht, schlecht im magen, mir isch schlecht, übel ist, schlecht war"
    ),
    C.FATIGUE: (
        "ungewöhnlich müde, ungewöhnlich erschöpft, ungewöhnliche erschöpfung, plötzlich erschöpft, "
        "plötzlich völlig erschöpft, ungewöhnliche müdigkeit, total erschöpft ohne grund, plötzlich todmüde, "
        "plötzlich so müde, auffallend müde, müder als sonst"
    ),
    C.SHARP: (
        "stechend*, verdreht, gezerrt, zerrt, gerissen, riss, geknackt, knackt, plötzlich, verrenkt, "
        "weggeknickt, verstaucht, eingeknickt, gestochen, stechen, sticht, gezogen, gezwickt, verrissen, "
        "überdehnt, blockiert, geschnalzt, gschnalzt, peitschenhieb, reingefahren, reingeschossen, knacks, "
        "knallt, geknallt, vertreten, umgeknickt, eingeschossen, stich, verhoben, verspannt plötzlich"
    ),
    C.INJURY: (
        "umgeknickt, zerrung, hexenschuss, muskelfaserriss, muskel gezerrt, was gezerrt, verknackst, "
        "muskelriss, etwas gerissen, bänderriss, wadenkrampf, hexaschuss, verhoben"
    ),
    C.EFFORT: (
        "beim gehen, beim aufsteh*, aufstehtest, beim test, beim training, beim üben, bei der übung, "
        "bei den übungen, nach den übungen, nach der übung, nach dem test, übung*, training*, vorher nie, "
        "neu, seit dem, sport, turnen, gymnastik, laufen, spaziergang, kniebeuge*, beim spazieren, seither, "
        "hinsetzen, beim treppensteigen"
    ),
    # a cry for help
    C.CRY: (
        "sos, notfall, rettung rufen, holt hilfe, hol hilfe, hilfe holen, holt einen arzt, "
        "brauche hilfe sofort, brauch sofort hilfe, brauche sofort hilfe, brauche dringend hilfe, "
        "brauch dringend hilfe, brauche einen krankenwagen, brauche einen notarzt, zu hilfe, "
        "brauch an notarzt, rettet mich, hüfe"
    ),
    C.HELP_ME: (
        "hilfe, helft mir, hilf mir, helfen sie mir, hüf, hilft mir denn keiner, brauche jemanden, "
        "brauch jemanden, brauch wen, brauche hilfe, brauch hilfe, hilf ma, hälf mer, hälfed mer, "
        "brauch jetzt jemanden, brauche einen arzt, brauch einen arzt, brauch jemand"
    ),
    C.URGENT: (
        "sofort, jetzt, schnell, dringend, bitte schnell, !!, am boden, auf dem boden, alleine, allein, "
        "bin allein, komm nicht hoch, komme nicht hoch, nicht mehr hoch, komm nimmer hoch, gleich, gestürzt, "
        "eilig, schnäll, schnei, mir geht es schlecht, mir gehts schlecht, ganz schlecht, was stimmt nicht, "
        "🚑, 🆘, gfalln, beeil*, nicht allein aufstehen"
    ),
    C.CALL: (
        "ruf, rufen, rufe, ruft, holen, hol, holt, alarmier*, brauche, brauch, verständig*, schick, schickt, "
        "schicken, anrufen, wählen"
    ),
    C.AMBULANCE: (
        "notarzt, krankenwagen, rettungswagen, rettung, sanitäter, sanka, ambulanz, 112, 144, 110, "
        "rettungsdienst, den arzt, notruf, an doktor, doktor sofort"
    ),
    C.DYING: (
        "ich sterbe, sterbe gleich, glaub ich sterb, glaub ich sterbe, i stirb, liege im sterben, "
        "werde sterben, muss sterben, geht zu ende mit mir"
    ),
    # how it is said
    C.NO: (
        "kein, keine, keinen, keinem, keiner, keinerlei, nicht, nie, niemals, ohne, weder, nichts, frei von, "
        "keins, kein*, nix, net, ned, nöd, nit, nimma, nimmer, koa, kei, koan, null, nicht mal, "
        "nicht einmal, tu mir nichts, tue mir nichts, nei, na, nee, nö"
    ),
    C.NO_AFTER: (
        "nein, nicht, nicht mehr, keine, keinen, keins, kein, keiner, nie, negativ, nö, keinerlei, "
        "gar nicht, überhaupt nicht, ned, net, nicht gehabt, nicht da, fehlanzeige, null, nicht vorhanden, "
        "ueberhaupt nicht, koane, kei, keinster weise"
    ),
    C.BETWEEN: (
        "ich, habe, hab, hatte, gehabt, bin, war, mir, mich, ist, sind, in, im, der, die, das, den, dem, "
        "mein, meine, meiner, meinem, meinen, mehr, irgendwelche, irgendeine, heute, an, am, verspüre, "
        "spüre, gespürt, auch, wirklich, anzeichen, symptome, von, für, einen, eine, ein, einem, es, tut, "
        "zur, zeit, momentan, bisher, überhaupt, gar, starken, starke, neuen, neue, bei, beim, wird, wurde, "
        "art, derzeit, da, links, irgendwelch*, irgendwie, oder so, so, was, etwas, irgendwas, richtig, mal, "
        "diesmal, neu, nach, übungen, jemals, ja, halt, einmal, spürbar*, i, hob, han, ha, gemerkt, hast, "
        "gibt, gab, gabs, zu, sehen, feststellen, bemerkt, problem*, beschwerden, spur, gefühl, gedanken, "
        "seh, merke, merk, dran, da drin, beiden, extra, beide, geworden, gewesen, wor, gwesn, ischt, isch, "
        "is, denk, denke, diese, dieser, woche, wia, mi, mer, immer, zum, glück, gott, sei, dank, auf, aus, "
        "wo, sonst, denn"
    ),
    C.AND: "und, &, sowie",
    C.NOR: "oder, noch",
    C.BUT: "aber, jedoch, allerdings, sondern, trotzdem, dafür, stattdessen, nur dass, aba, abr",
    C.CLAUSE: "weil, obwohl, nur, dann, denn, warum, wieso, weshalb, dass, als ob, seit ich",
    C.FINE: (
        "bestens, gut, normal, ok, okay, in ordnung, prima, super, frei, problemlos, regelmäßig, ruhig, "
        "unauffällig, wie immer, alles gut, passt, top, tadellos, klar, fehlt nichts, fehlt nix"
    ),
    C.PAST: (
        "letztes jahr, letzten jahr, vor jahren, vor monaten, früher, damals, als kind, letzten monat, "
        "letzten sommer, letzten winter, jahren, monaten, jahre her, monate her, vor einem jahr, "
        "vor langer zeit, in der vergangenheit, vor der operation, 19##, 20##, jahrzehnte*, jahre, jahr her, "
        "jahrzehnten, früher mal, als junges, als junger, als bub, als mädchen, als jugendlich*, "
        "in der jugend, im studium, in der schule, in meiner jugend, kindheit, mit neunzehn, mit zwanzig, "
        "längst ausgeheilt, längst vorbei, seither nie, seither nichts, seitdem nie, seitdem nichts, "
        "seitdem ruhe, ausgewachsen, joar, johr, jahre zruck, vor jahr*, vor langem, lange her, ewig her, "
        "lang her, vor ewigkeiten, anno, anderes leben, nie wieder, als ich klein war, als ich jung war, "
        "war mal, schon lange vorbei, in den achtzigern, in den neunzigern, voriges jahr, letzts jahr, "
        "seit den stents"
    ),
    C.NOW: (
        "jetzt, grad, gerade, grade, gerade jetzt, im moment, momentan, aktuell, heute, heut, heit, eben, "
        "immer noch, noch immer, seit heute, seit gestern, seit heut, seit einer stunde, "
        "seit einer halben stunde, schon wieder, erneut, jetz, soeben, zur stunde, hüt"
    ),
    C.JUST_NOW: (
        "grad eben, gerade eben, eben, vor minuten, vor fünf minuten, vor ein paar minuten, minuten, "
        "vor einer minute, vor kurzem, soeben, vor zehn minuten, vorhin grad"
    ),
    C.EARLIER: "vorhin, heute früh, heute morgen, heut früh, heute mittag, vor einer stunde, heute vormittag",
    C.SETTLED: (
        "weg, vorbei, nicht mehr, verschwunden, nachgelassen, aufgehört, vergangen, wieder gut, abgeklungen, "
        "wieder besser, jetzt besser, besser geworden, gelegt, wieder in ordnung, ist weg, wieder weg, "
        "ist vorbei, hat sich gelegt, hat nachgelassen, hat aufgehört, isch weg"
    ),
    C.IMAGINED: (
        "was wenn, wenn ich, wenn man, falls, ob, angst vor, sorge vor, sorgen wegen, fürchte, risiko, "
        "symptome von, symptome für, anzeichen für, anzeichen von, vorbeugen, verhindern, kann man, "
        "was ist wenn, was ist, was sind, gelesen, geträumt, traum, gehört von, ist es normal, "
        "woran erkenne, woran erkennt, unterschied zwischen, glaube nicht, glaub nicht, wie merkt man, "
        "wie erkennt man, wie merke ich, aus neugier, neugierig, artikel, würde man, wie fühlt sich, "
        "kann .. auslösen, bei einem, was tun bei, was macht man"
    ),
    C.FICTION: (
        "film, filme, serie, arztserie, krimi, tatort, fernsehen, roman, buch, doku, folge, nachrichten, "
        "schauspieler, hörbuch, podcast, kino, theater, zeitung, spiel, quiz, kreuzworträtsel, netflix, "
        "fußball"
    ),
    C.LAUGHTER: (
        "haha*, hihi*, hehe*, lol, rofl, 😂, 🤣, 😅, 😆, 😄, 😜, 😁, 😹, scherz, witzig, zum lachen, lach, grins, 🙈, "
        "😉, 😛"
    ),
    C.OTHERS: (
        "mutter, mama, vater, papa, mann, frau, sohn, tochter, freund, freundin, nachbar, nachbarin, bruder, "
        "schwester, er, oma, opa, tante, onkel, kollege, kollegin, hund, katze, jemand, leute, schwager, "
        "schwägerin, partner, partnerin, bekannter, bekannte, seine, seinen, ihre, mami, papi, nachbar*, "
        "kolleg*, bekannte*, enkel*, kind, baby, kumpel, spezl, cousin*, neffe, nichte, schwiegermutter, "
        "schwiegervater, schwieger*, mitbewohner*, junge, bub, mädel, kleiner, kleine, sie wird, mei mo, "
        "vadder, muddi, gspänli, kundin, kunde, passant, patient, grosi, mueter, vatter, chind, göttergatte, "
        "gatte, gattin, chef, chefin, grossmutter, großmutter, großvater, typ, sie hat, er hat, er ist, "
        "sie ist, er kriegt, sie kriegt"
    ),
    C.ELSEWHERE: (
        "hatte, krankenhaus, klinik, spital, intensivstation, intensiv, letztes jahr, letzte woche, "
        "letzten monat, letzten sommer, gestorben, gstorbn, verstorben, beerdigung, gestern, in kanada, "
        "beim arzt, in behandlung, in kur, in reha, reha, friedhof, selig, wieder zuhause, wieder gesund, "
        "geht ihm wieder gut, geht ihr wieder gut, vorgestern, im büro, auf arbeit, in der arbeit, "
        "in der besprechung, seit der geburt, von klein auf, am sonntag, am montag, am dienstag, "
        "am mittwoch, am donnerstag, am freitag, am samstag, damals, jahre, jahren, im urlaub, in amerika, "
        "im ausland"
    ),
    C.MINE: "ich, mir, mich, mein, meine, meiner, meinem, meinen, i, mei, mer, ma, mi, hob i, hab, han i",
    C.FILLER: (
        "bitte, so, ganz, sehr, total, echt, wirklich, schon, noch, halt, grad, gerade, jetzt, auch, mal, "
        "ja, doch, eh, eben, bissl, bisschen, ein bisschen, etwas, richtig, voll, ziemlich, wieder, "
        "plötzlich, immer, mir, mich, sich, ich, es, i, ein, eine, einen, der, die, das, den, dem, mein, "
        "meine, meinen, meinem, no, am, im, verdammt, sau, urig, mega, recht, einfach, glaub, auf einmal, a, "
        "mi, hab, habe, ist, bin, war, gar, überhaupt"
    ),
    C.HARMLESS: (
        "brustpresse, brustschwimmen, brustumfang, brustgurt, bankdrücken, brustübung*, brustmuskel*, "
        "herzlich*, von herzen, übel nehmen, totgelacht, totlachen, ans herz, am herzen, ins herz, "
        "schwarz weiß, blutdruck, luftdruck, reifendruck, eindruck, ausdruck, dicke socken, dicker pulli, "
        "handtaub, taube, tauben, hühnerbrust, hähnchenbrust, putenbrust, zum sterben schön, druckfehler, "
        "unter druck, halsband, nackenkissen, herzgut, schweren herzens, muskelkater, schläge, schlag, "
        "hitze bringt mich um, bringt mich um den verstand, bringt mich noch um, bringt mich ins grab, "
        "um den schlaf, blutet das herz, blutet mir das herz, herz blutet, tot gelacht, handy war tot, "
        "handy tot, akku tot, tot umgefallen vor müdigkeit, todmüde ins bett, trifft mich ja der schlag, "
        "trifft mich der schlag, der schlag getroffen, fast der schlag, lachanfall, lachkrampf, "
        "atemberaubend, brust schwimmen, bahnen brust, entenbrust, gänsebrust, brustkraul, aus voller brust, "
        "einen kloß im hals, stein vom herzen, fällt mir ein stein, auf dem herzen, leichten herzens, "
        "herzlichen, herz aus gold, herz geht auf, ins herz geschlossen, halstuch, hals über kopf, "
        "halsschmerzen tee, zum hals raus, hängt mir zum hals raus, auf den arm nehmen, "
        "auf den arm genommen, beine in die hand, bein gestellt, auf die beine, die beine vertreten, "
        "wieder auf den beinen, hand in hand, alle hände voll, schuss in den ofen, linke hand hält, "
        "mundwinkel nach oben, mund wässrig, mund gehalten, ein auge zu, ein auge zugedrückt, "
        "augen zu und durch, unter vier augen, kopf hoch, kopf zerbrechen, kopfzerbrechen, kopf voll, "
        "kopfschmerzen bereitet, bereitet mir kopfschmerzen, macht mir kopfschmerzen, steuererklärung, "
        "luft raus, luft nach oben, frische luft, an die luft, luft anhalten, in der luft, luftpumpe, "
        "hitzewelle, herzhaft, blutdruck*, blutwurst, blutorange*, blutspende*, blut gespendet, blutabnahme, "
        "blutprobe, blutwert*, blutzucker*, blutbild, bluttest, blut abgenommen, böses blut, blutjung, "
        "schwarzfahren, schwarzer kaffee, kaffee schwarz, schwarzes brett, schwarzbrot, stuhl aufgestanden, "
        "stuhltest, vom stuhl, auf den stuhl, auf dem stuhl, stuhl und, einen stuhl, aus dem stuhl, "
        "stuhl steht, vom hocker, umgezogen, taub stellen, auf taube ohren, computer abgestürzt, "
        "zusammenbruch des, verkehr zusammengebrochen, netz zusammengebrochen, stuhl zusammengebrochen, "
        "regal zusammengebrochen, kuchen zusammengefallen, vor lachen zusammen, sterbe vor hunger, "
        "sterbe vor lachen, sterbe vor langeweile, sterbe vor neugier, sterbe vor hitze, sterbenslangweilig, "
        "sterben langweilig, schluss mit, schluss für heute, schluss jetzt mit, feierabend, "
        "mache für heute schluss, mach für heute schluss, mach jetzt schluss mit arbeiten, "
        "rauchen aufgegeben, aufgegeben mit rauchen, paket aufgegeben, bestellung aufgegeben, "
        "anzeige aufgegeben, danke für .. hilfe, danke für hilfe, mit hilfe von, hilfe bei, hilfe zum, "
        "hilfe menü, haushaltshilfe, geholfen, schlecht geschlafen, schlechtes wetter, wetter ist schlecht, "
        "nicht schlecht, nicht übel, net schlecht, schlecht gelaunt, drucker, druckt, ausdrucken, "
        "schwindelfrei, schwindel mit, steuerschwindel, gschwindelt, geschwindelt, schwindeln beim, "
        "preise sind schwindelerregend, schwindelerregend*, preise schwindelig, dreht sich nur um, "
        "dreht sich alles um, alles dreht sich um, dreht sich um, karussell gefahren, dicke luft, "
        "dicke jacke, dickes ding, dick im geschäft, dicke freunde, dick eingepackt, dicken kuss, "
        "dickes lob, krankenwagen fuhr, krankenwagen ist vorbei, ruf mich an, rufen sie mich an, "
        "rufe dich an, ruf dich an, rufe später an, keine zeit, herz der stadt, herzstück, kinderherz, "
        "herz verloren, herz gebrochen, bricht mir das herz, herzzerreißend, herzblatt, "
        "herz hüpft vor freude, herz schlägt für, herz schlägt höher, sturmwarnung, sturm draußen, "
        "sturm heute nacht, der sturm, sturmböen, keuchhusten impfung, neue hose, hose krieg ich, lahmes, "
        "lahme ente, lahmes internet, flaute"
    ),
}

ANSWERS: dict[Answer, str] = {
    Answer.YES: (
        "ja, jo, jaa, jup, jap, jep, joa, freilich, klar, sicher, genau, natürlich, jetzt, grad jetz, "
        "gerade jetzt, immer noch, ist grad akut, akut, bei mir, hört nicht auf, wird schlimmer, schlimmer, "
        "schnell bitte, ja schnell, stimmt, doch, bin ich, ich, richtig, im moment ja, noch da, noch immer, "
        "eh, eh klar, jawohl, tut noch weh, tut immer noch weh, passiert gerade, scho, scho no, leider ja, "
        "in diesem moment, andauernd, yes, logisch, gwüss, allerdings, absolut, sehr"
    ),
    Answer.HESITANT: (
        "glaub schon, glaube schon, glaub ja, ich glaube, bissl, ein bisschen, bisschen, a bissl, so halb, "
        "kommt und geht, denk mal, denke schon, denk schon, wahrscheinlich, schwer zu sagen, "
        "ganz weg ists nicht, nicht ganz weg, nicht ganz vorbei, noch nicht ganz, nur leicht, leicht, chli, "
        "es bitzli, no chli, spürs noch, spür es noch, merke es noch, vielleicht, mag sein, kann sein, "
        "könnte sein, eventuell, möglich, möglicherweise, vermutlich, mehr oder weniger, teilweise, "
        "ab und zu, irgendwie schon, irgendwie, ziemlich, ein wenig, etwas, so ungefähr, gfühlt scho, "
        "glaub scho, i glaub, schätze schon, schätz schon, weiß nicht recht, jein, halbwegs, wohl ja, "
        "wohl schon, schwächer, mal so mal so"
    ),
    Answer.NO: (
        "nein, nö, na, nei, ne, nee, nein nein, nicht, im moment nicht, gar nicht, überhaupt nicht, "
        "jetzt nicht, nicht jetzt, gerade nicht, negativ, na na, koa, naa, niemals, keineswegs, nichts, nix, "
        "mir gehts gut, alles gut, mir geht es gut, alles ok, auf keinen fall, ach was, iwo"
    ),
    Answer.OVER: (
        "ist wieder weg, wieder weg, weg, vorbei, schon rum, rum, hat sich gelegt, gelegt, stunde ruhe, "
        "ruhe, gestern, seither, vorhin, nicht mehr, nimmer, nimma, jahre her, jahre, isch verbii, verbii, "
        "war vorher, war früher, früher, aufgehört, vergangen, besser, wieder gut, passts, überstanden, "
        "nachgelassen, verschwunden, war mal, letzte woche, abgeklungen, fertig, damals, ausgestanden, "
        "geht wieder, längst"
    ),
    Answer.OTHER_PERSON: (
        "nicht ich, ned i, net i, nöd ich, jemand anders, jemand anderes, anderer, neben mir, bei mir ist, "
        "hier bei mir, sie ist hier, er ist hier, nicht bei mir, bei ihm, bei ihr, wer anderer, bi ire, "
        "bi ihm, für meinen, für meine, betrifft mich nicht, nicht mich, sondern meine, sondern mein"
    ),
    Answer.NOT_A_SIGN: (
        "spaß, war nur spaß, witz, scherz, redensart, redewendung, autokorrektur, fernsehen, "
        "falsch verstanden, missverständnis, missverstanden, sagt ma halt so, sagt man so, nur so gesagt, "
        "so gesagt, sprichwort, fußball, frage, waschmaschine, film, serie, vertippt, verschrieben, "
        "tippfehler, nicht so gemeint, nicht ernst gemeint, ging um, ich meinte, meinte, gemeint, ironisch, "
        "ironie, übertrieben, nicht wörtlich, fehlalarm, metapher, spruch, bildlich, blödsinn, spässli, "
        "witzle, diktier*, ich hab von, hab vom"
    ),
}
