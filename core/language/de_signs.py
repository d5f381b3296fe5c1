"""German: the concepts of danger signs, and the answers to "Is it happening now?"."""

from __future__ import annotations

from core.language.concepts import Answer
from core.language.concepts import Concept as C

CONCEPTS: dict[C, str] = {
    # parts of the body
    C.CHEST: (
        "brust, brustkorb, brustbein, brustraum, brustbereich, brustkasten, bruscht, brustkorbs, rippen, "
        "hinterm brustbein, sternum, bruschtchaschte, bruschtkorb, brüschtli, brüst, prust, burst, "
        "herzseite, linke brust, brustseite, hinter dem brustbein"
    ),
    C.HEART: (
        "herz, herzen, herzgegend, puls, herzschlag, herzl, pumpe, herzrhythmus, herzchen, herzerl, "
        "pulsschlag, härz, häz, hearz, heaz, herzli, herze, pulsi, "
        "s'herz, s herz, mis herz, mei herz, mei pumpn"
    ),
    C.ARM_OR_JAW: (
        "kiefer, linker arm, linken arm, linke arm, linken oberarm, schulterblatt, schulterblätter, "
        "schulterblättern, nacken, hals, unterkiefer, linke schulter, linken schulter, arm, chifer, "
        "kiefa, linken schulterblatt, oberarm, in den arm, gnick, gnack, achsle"
    ),
    C.FACE: (
        "gesicht, gesichtshälfte, mund, mundwinkel, lid, augenlid, wange, lippe, gsicht, lächeln, backe, "
        "s'gsicht, s gsicht, gfries, muulegge, mulegge, mundwinkl"
    ),
    C.LIPS_OR_TONGUE: "lippe, lippen, zunge, augen, augenlider, lider, gesicht, mund, zungn",
    C.THROAT: "hals, kehle, rachen, luftröhre, gurgel, hois, kehlkopf",
    C.LIMB: (
        "arm, arme, bein, beine, hand, hände, seite, fuß, körperhälfte, finger, gesichtshälfte, linke seite, "
        "rechte seite, hälfte, oarm, aarm, ärm, bai, haxn, haxen, fuas, händ, hend, pfote, schenkel, daumen, "
        "halbe körper, halber körper, halber leib, körperseite, gesichtsseite, ganze seite, linksseitig"
    ),
    C.LEG: (
        "bein, wade, knöchel, fuß, oberschenkel, unterschenkel, fußgelenk, haxn, schienbein, hax, wadl, haxe, "
        "wädli, schienbei, fuaß, fuas, schenkel, knie, kniekehle, fußknöchel, mis bei, s bei, linke bei, rechte bei, "
        "s'bei, s'wadl, s'knia"
    ),
    C.LEGS: "beine, waden, füße, beiden beine, beide beine, knöchel beide, fuess",
    C.EYE: (
        "auge, augen, aug, linken auge, rechten auge, auga, aügli, äug, einem auge, einem aug, s'aug, s'auge, s aug"
    ),
    C.JOINT: (
        "knie, hüfte, sprunggelenk, rücken, schulter, gelenk, muskel, wade, leiste, handgelenk, "
        "oberschenkel, ellenbogen, achillessehne, kreuz, sehne, knöchel, nacken"
    ),
    # heart
    C.CHEST_PAIN: (
        "brustschmerz*, brustenge, brustdruck, herzschmerz*, herzstechen, angina pectoris, herzdrücken, brustweh, "
        "herzkrampf, herzenge, engegefühl in der brust, brustkorbschmerz*, elefant auf der brust, brustschmertz*, auf "
        "dem brustkorb sitzt, auf meinem brustkorb sitzt, auf meiner brust sitzt, auf der brust sitzt, drückts die "
        "brust, brust wie zugeschnürt, brust zugeschnürt, brust zerspringt, schraubstock um die brust, stiche im "
        "herzen, stechen im herzen, herzschmerzen, stein auf der brust, druck mitten auf der brust, eisenring um die "
        "brust, wer auf dem brustkorb, jemand auf dem brustkorb, jemand auf meinem brustkorb, jemand auf meiner "
        "brust, auf der brust sitzen, jemand auf der brust, einer auf der brust, wer auf der brust, drückt auf der "
        "brust, drückt es auf der brust, drückt's auf der brust, druck auf der brust, druck auf die brust, nen druck "
        "auf der brust, elefant sitzt auf, elefant .. auf mir, elefant hockt, elefant .. auf meiner brust, nitrospray "
        "hilft nicht, nitro hilft nicht, nitrospray zweimal, nitrospray schon zweimal, nitro schon zweimal, "
        "nitrospray zwei mal, brust tut weh, brust tut so weh, brust schmerzt, schmerz in der brust, schmerzen in der "
        "brust, schmerzen hinterm brustbein, schmerz hinterm brustbein, druck in der brust, druck hinterm brustbein, "
        "stechen in der brust, brennen in der brust, brennen hinterm brustbein, enge in der brust, eng in der brust, "
        "eng um die brust, ring um die brust, band um die brust, zentner auf der brust, messer in der brust, dolch in "
        "der brust, brust zerreißt, zerreißt mir die brust, sprengt mir die brust, brust wie im schraubstock, brust "
        "brennt, brust eng, brust so eng, brust ist eng, brustkorb eng, d'brust tuet, d brust tuet, es drückt uf de "
        "brust, druck uf de brust, drückt auf die brust, drückt aufs herz, sticht im herz, sticht ins herz, sticht "
        "beim herz, sticht ums herz, herz tut weh, herz tut so weh, herz schmerzt, herz sticht, herz krampft, herz "
        "zieht sich zusammen, s'herz tuet, s herz tuet weh, mei herz tuat, herz tuat weh, weh im linken arm und "
        "brust, zieht in den linken arm, strahlt in den arm, strahlt in den linken arm, strahlt in den kiefer, "
        "strahlt aus in den, zieht in den kiefer, bis in den kiefer, bis in den linken arm, ziet i d schultere"
    ),
    C.HEART_ATTACK: "*herzinfarkt*, herzanfall, herzattacke, infarkt, herzstillstand, herzkasper",
    C.HURT: (
        "schmerz*, weh, wehtut, weh tut, tut weh, stechen, sticht, stichts, stiche, stich, gestochen, brennen, "
        "brennt, brennts, krampf*, ziehen, ziehts, reißen, reißt, bohrt, pocht, unangenehm, pieksen, piekst, aua, "
        "quält, qual, autsch, ziept, brannte, stach, weg zu tun, beisst, wea, wehh, wee, tuet weh, tuat weh, tuad "
        "weh, weh tuat, sticht's, stechts, stächt, stäche, brennt wie, brönnt, brennd, schmärz*, schmeaz*, schmertz*, "
        "bruat, beißt, reisst, messerstich*, messer, krampft, verkrampft, drin sticht, wie messer, zwickts, tuet mer "
        "weh, tuet mir weh, tuet .. weh, tut mer weh, duat weh, duad weh, dut weh, duet weh, weh duat, tuat ma weh, "
        "duat ma weh, doa weh, schmerze, schmerzt*, wehtun, wehgetan, ziet, brennt wie feuer, "
        "zieht, zwickt"
    ),
    C.PRESS: (
        "druck, drückt, drücken, drückend, drückts, gedrückt, eng, enge, engegefühl, beklemm*, "
        "beklommen*, zuschnürt, zugeschnürt, schnürt, schwer, last, gewicht, spannt, pressen, presst, "
        "quetscht, zusammengedrückt, zugedrückt, schraubstock, ring um, gürtel um, stein auf, "
        "als würde jemand draufsitzen, panzer, komisch, druckt, druckn, druckts, druggt, trückt, trucke, "
        "druck druff, engi, eng um, ängi, bedrückt, zämezoge, zusammengezogen, zieht sich zusammen, "
        "zusammenzieht, wie eingeschnürt, einschnürt, eingeklemmt, tonnenschwer, tonne, zentner, "
        "zentnerschwer, elefant, stein, brett, klammer, lastet, liegt was, etwas schweres, beengt, "
        "enges, enger, engem, engen, enges gefühl, druckgefühl, beklemmendes, pressendes, ziehendes gefühl, schweres "
        "gefühl, auto auf, auto geparkt, lkw auf, lastwagen auf, amboss, felsbrocken, felsen auf, zementsack, "
        "sandsack, sack zement, betonklotz, betonplatte, ziegel auf, hockt auf, hockt mir auf, sitzt wer auf, steht "
        "wer auf, steht einer auf, kniet, korsett, reifen um, eisenring, spannring, gurt um, riemen um, enger gürtel, "
        "zieht zusammen, schnürt ab, würgt"
    ),
    C.SPREADS: ("strahlt, ausstrahlt, ausstrahlen, zieht in, zieht bis, wandert, wandert in, strahlt aus"),
    C.CLUTCH: "fasst, hält sich, greift sich, greift, fasst sich, hebt sich, klammert",
    C.RACING: (
        "rast, rasen, rasts, gerast, stolpert, stolpern, stolperer, flattert, flattern, unregelmäßig*, "
        "unrund, aussetzer, pocht, pochen, wild, setzt aus, aussetzt, setzt .. aus, zu schnell, "
        "sehr schnell, so schnell, ganz schnell, viel zu schnell, hämmert, hämmern, klopft, klopfen, "
        "galoppiert, springt, hüpft, spinnt, verrückt, aus dem takt, außer takt, takt, bis zum hals, "
        "macht sprünge, überschlägt, jagt, hopst, poltert, wummert, schlägt so schnell, schlägt schnell, "
        "schlägt wie, wie wild, unruhig, aus dem tritt, aus dem rhythmus, hopser, doppelschläge, "
        "extraschläge, schlägt bis zum hals, schlägt mir bis zum hals, holpert, holpern, hüpfer, "
        "macht purzelbäume, purzelbäume, klopft so, klopft wie, klopft ganz, pumpert, bumpert, bumbert, "
        "wummern, trommelt, trommel, rattert, unregelmässig, rennt, fährt achterbahn, "
        "setzt immer wieder aus, schläge auslässt, lässt schläge aus, vergisst, stottert, bebt, zittert, "
        "rasant, zu langsam und, saust, schlägt komisch, poppert, chlopfet, rast wie, komisch, "
        "so komisch, raset, rase, stoplert, stolperet, klopfet, chlopft, hopserl, hupft, gumpet, gumped, "
        "pöpperlet, pöpperled, poppered, bumperlt, schlägt wild, schlagt, schlagt wia, schlagt so, "
        "wia wild, wia narrisch, narrisch, wie narrisch, tut komisch, macht komische, macht sachen, "
        "komische sachen, setzt kurz aus, kurz aus, aussetzen, extra schläge, extraschlag, viel zu, "
        "unregelmäsig, onregelmässig, ruckelt, kommt aus dem, nicht mehr runter, kommt nicht runter, "
        "beruhigt sich nicht, donnert, rumpelt, überspringt"
    ),
    C.PALPITATIONS: (
        "herzrasen, herzrasn, herzstolpern, herzklopfen, herzflattern, herzrhythmusstörung*, "
        "extrasystole*, vorhofflimmern, herzflimmern, herzjagen, kammerflimmern, rhythmusstörung*, "
        "herzpochen, herzaussetzer"
    ),
    C.COLD_SWEAT: (
        "kalter schweiß, kalten schweiß, kaltschweißig, kalt geschwitzt, schweiß .. runter, schwitz kalt, kalt schwitze"
    ),
    # brain
    C.STROKE: (
        "*schlaganfall*, hirnschlag, hirnblutung, schlagerl, hirninfarkt, gehirnblutung, gehirnschlag, streifung"
    ),
    C.DROOP: (
        "hängt, hängen, hängend, hangt, herabhängend, schief, schiefer, verzogen, herunter, runter, "
        "runtergeklappt, schräg, heruntergezogen, verzieht, krumm, hängt runter, schlaff, fällt runter, "
        "schepp, schiefes, lächelt schief, verzogen ist, hängende, hange, schäps, hängt abe, hanget abe, "
        "hängt oba, hängt obi, verzoge, verzogn, abgsackt, lampet, lahm, asymmetrisch, ungleich, mundwinkel, "
        "hängt schief, hängen runter, hängt einseitig, hängt auf einer, ganz schief, verzerrt, hinunter, abgesackt, "
        "abgerutscht, rutscht runter, erschlafft, eingeschlafen, schläft, sieht aus wie geschmolzen, läuft speichel, "
        "läuft der speichel, speichel läuft, sabbert, sabber, tropft raus, läuft der kaffee raus, rinnt raus, rinnt "
        "der kaffee, lächelt nur halb"
    ),
    C.NUMB: (
        "taub, taubes, taubheit*, gelähmt, lähmung*, lahm, eingeschlafen, kribbelt, kribbeln, pelzig, gefühllos, "
        "spüre .. nicht, spür .. nicht, spür .. nimmer, kein gefühl, bamstig, kein gespür, ameisenlaufen, "
        "abgestorben, kein gefühl mehr, ohne gefühl, spüre nichts, spür nichts, spür nix, spürt nichts, "
        "gefühl verloren, ameisen, kribbelig, iigschlafe, eigschlafn, gspür, gspüre nüt, gspür nüt, gspia nix, "
        "gspür nümm, gspür .. nümm, gspia .. nimma, ameise, surrt, surren, bitzelt, bitzeln, dumpf, kribblet, "
        "kribbel*, wie eingefroren, spür die ganze linke seite nicht, spür die ganze rechte seite nicht, "
        "spüre die ganze linke seite nicht, spür die linke seite nicht, spür die rechte seite nicht, "
        "spür ich nichts, spüre ich nichts, spür i nix, gspür nüme, spür ich nix mehr, spür ich nichts mehr, nichts "
        "mehr gespürt, gfühllos, pelzich, igschlafe, eigschlofn, wie betäubt, wie nach der spritze, wie beim zahnarzt"
    ),
    C.LIMP: (
        "wie tot, tot, schlaff, kraftlos, keine kraft, gehorcht nicht, gehorcht mir nicht, gehorcht nimmer, "
        "macht nicht mehr mit, macht nicht was ich will, funktioniert nicht, geht nicht mehr hoch, hängt runter, "
        "hängt nur noch, hängt schlaff, fällt runter, fällt mir alles aus der, sackt weg, knickt weg, knickt ein, "
        "versagt, will nicht mehr, lässt sich nicht bewegen, lässt sich nicht heben, fällt einfach, baumelt, "
        "ohne kraft, keine gewalt, folgt mir nicht, wie blei, bleischwer, wie gelähmt, fällt mir ständig, "
        "gehorcht mir, gehorchen nicht, lässt alles fallen, lasse alles fallen, lass alles fallen, fallen lassen, "
        "fällt aus der hand, aus der hand gefallen, aus der hand gerutscht, zieht nach, zieh ich nach, schleift, "
        "wie gummi, wie pudding, wie watte, wie eingeschlafen, gehört nicht zu mir, nicht mehr mein, "
        "keine kraft mehr, kann ich nicht mehr steuern, nicht mehr heben, nicht mehr bewegen, kann nicht heben, "
        "chraft, kei chraft, koa kraft, ka kraft, ohni chraft, folgt nimmer, lampet, hanget abe, hängt owe, "
        "hängt oba, lässt mich im stich, knickt immer weg, wegsackt, zittrig und schwach, gibt nach, "
        "gehört mir nicht, gehört nimmer, wie fremd, fremd, macht was er will, macht was sie will, "
        "reagiert nicht mehr, bricht weg, fällt einfach runter, wie aus holz, schlaff herunter, bamstig, "
        "fällt mir aus der hand, aus der hand, greift nicht, wollen nicht, wolln nicht, nicht halten, "
        "macht nicht mit, nicht heben, nicht hochheben, nicht bewegen, nicht hoch, nimmer heben, nimmer bewegen, "
        "nicht was ich will, macht nicht was, macht was es will, folgt nicht, fällt alles aus der hand, "
        "fällt aus der, fallen mir aus der hand, rutscht mir aus der hand, "
        "greift nix, kann nichts halten, kann nix halten, halten keine tasse, tasse fallen gelassen, tasse "
        "fallenlassen, alles aus der hand, rutscht alles aus der hand, hängt so runter, hängt nur, hängt einfach, "
        "schlapp runter, gelähmt, lahm, macht nimmer mit, zieh das bein nach, ziehe das bein nach, zieht das bein "
        "nach, schleifend, geht nicht hoch, geht nimmer hoch, geht ned auffi, geht nicht zur faust"
    ),
    C.WEAK: "schwach, schwäche, kraftlos, schlapp, keine kraft, lahm",
    C.ONE_SIDE: (
        "einseitig, linke, rechte, linken, rechten, eine seite, einer seite, linker, rechter, "
        "halbseitig*, linksseitig, rechtsseitig, hälfte"
    ),
    C.CANNOT: (
        "kann nicht, kann .. nicht, kann ich .. nicht, kann kaum, kaum, nimmer, kann nimmer, "
        "nicht richtig, kriege .. nicht, krieg .. nicht, bekomme .. nicht, bring .. nicht, "
        "bringe .. nicht, schaff .. nicht, nix mehr, nichts mehr, mühe, probleme, schwierigkeiten, "
        "konnte nicht, geht nicht, unfähig, kann ich nimmer, kann ned, kann net, kann nöd, chan nöd, "
        "cha nöd, cha nüm, kann i nimmer, kann nicht mehr, kann .. nimmer, kann ich .. nicht mehr, "
        "kriege .. nicht mehr, krieg .. nimmer, bekomm .. nicht, lässt sich nicht, geht nicht mehr, "
        "geht nimmer, nicht mehr richtig, krieg .. nicht raus, bring .. nicht raus"
    ),
    C.MOVE: (
        "bewegen, rühren, heben, hochheben, anheben, halten, festhalten, spüren, fühlen, greifen, hoch, "
        "benutzen, steuern, spür, spüre, bewege, bewegt, hebe, kontrollieren"
    ),
    C.SPEAK: (
        "sprechen, reden, schwätzen, worte finden, wörter finden, wörter .. raus, worte .. raus, "
        "sätze bilden, kein wort, wort rausbringen, artikulieren, wörter nicht, worte nicht, "
        "satz .. rausbringen, reda, die wörter, wörter .. finden, worte .. finden, richtige wort, "
        "das richtige wort, ein wort, worte raus, wörter raus, schwätze, redn, rede, babble, sätze, "
        "wort heraus"
    ),
    C.SPEECH: (
        "sprache, sprechen, reden, worte, wörter, aussprache, rede, zunge, stimme, red, spreche, sätze, "
        "sprachlich, artikulation, worter, satz"
    ),
    C.GARBLED: (
        "verwaschen*, undeutlich, gestört, mühe, probleme, lallend, schwer, durcheinander, komisch, wirr, "
        "wirres, unverständlich*, falsch raus, falsch, verdreht, wirres zeug, kauderwelsch, stockt, unsinn, "
        "blödsinn, verwaschn, stolpert, gehorcht nicht, kuddelmuddel, quatsch raus, nuschelig, "
        "wie betrunken, wie besoffen, kommt falsch, kommen falsch, kommen nicht raus, nicht raus, raus, "
        "versteht mich keiner, versteht mich niemand, nicht zu verstehen, holprig, schwerfällig, silben, "
        "vertauscht, verwäsche, nuschel*, nuscheln, undütlich, lalle, wia bsoffn, wie bsoffe, bsoffen, "
        "verdreht raus, kommt nur, kommen nur, nur kauderwelsch, nur noch brei, brei, matsch, keinen sinn, "
        "ergeben keinen sinn, durchenand, durchanand, fällt mir nicht ein, fallen mir nicht ein, einfallen, "
        "finde .. nicht, find .. nicht, finden, murks, finde nicht, find nicht, nicht finden, kommen nicht, "
        "unverständlich"
    ),
    C.SLURRED: (
        "lalle, lallen, lallt, lall, gelallt, sprachstörung*, gesichtslähmung, halbseitenlähmung, wirres zeug, redet "
        "unverständlich, nuschelt plötzlich, wortfindungsstörung*, rede nur unsinn, redet nur unsinn, spricht "
        "undeutlich, lallat, spricht verwaschen, lall*, red wirr, redet wirr, rede wirr, finde worter nicht, finde "
        "wörter nicht, finde die wörter nicht, finde keine worte mehr, kommt nur murks, nuschelt nur, sprech "
        "undeutlich, spreche undeutlich, wie betrunken, rede komisch, redet komisch, red komisch, rede plötzlich "
        "komisch, spricht komisch, sprache verwaschen, verwaschen, zunge schwer, worte durcheinander, wörter "
        "durcheinander, kloß im mund, heiße kartoffel, kartoffel im mund, red wie besoffen, rede wie besoffen, kommt "
        "was anderes raus, kommt etwas anderes raus, kommen andere wörter raus, kommt ein anderes wort, bring kein "
        "wort raus, bringe kein wort raus, krieg kein wort raus, kriege kein wort raus, kein wort mehr raus, kein "
        "wort raus, kein gscheites wort, wörter fallen mir nicht ein, wörter kommen falsch, wörter kommen nicht, "
        "worte kommen falsch, worte kommen nicht, falsche wörter, falsche worte, verwechsle die wörter, verwechsel "
        "die wörter, red nur blödsinn raus, red wie ein besoffener, rede wie ein besoffener, rede wie betrunken, red "
        "wia a bsoffener, lall nur, lalle nur, sprache verschwunden, kann nur noch lallen, zunge gehorcht, zunge "
        "macht nicht, zunge wie gelähmt, zunge ist so schwer, zunge ganz schwer, spreche verwaschen, rede verwaschen, "
        "mund macht nicht was, mund will nicht, mund gehorcht"
    ),
    C.SEE: (
        "sehen, seh, sehe, sieht, gsehn, gseh, siech, erkennen, sah, blick, gseht, siach, seg, seh i, schauen, seha"
    ),
    C.SIGHT_LOST: (
        "bin blind, werde blind, plötzlich blind, fast blind geworden, auf einmal blind, "
        "doppelbilder, sehe doppelt, seh doppelt, doppelt sehe, plötzlich blind, sehverlust, sehstörung*, plötzlich "
        "verschwommen, auf einem auge blind, auge blind, auge ist blind, erblindet, schwarz auf dem auge, schwarz vor "
        "dem auge, vorhang vor dem auge, vorhang vorm auge, sicht weg, sehen verschwommen, alles verschwommen, "
        "augenlicht, halbblind, auge schwarz, auge ist schwarz, auge alles schwarz, schatten vor dem auge, sehkraft "
        "weg, blind auf, auf einem auge nichts, sehe nur noch die hälfte, seh nur noch die hälfte, hälfte vom bild, "
        "sehe alles doppelt, seh alles doppelt, sehe verschwommen, seh verschwommen, sehe plötzlich verschwommen, "
        "augenlicht weg, schleier vor dem auge, schleier vorm auge, dunkel vor einem auge, alles schwarz auf, schwarz "
        "auf einem, dunkel auf, auge dunkel, aug dunkel, blind, auge weg, sicht ist weg, sehe nichts mehr, seh nichts "
        "mehr, seh nix mehr, gseh nüt me, gseh nüt meh, siach nix mehr, siech nix mehr, seg nix mehr, nichts mehr "
        "sehen, nix mehr sehen, sehe doppel, seh alles zweimal, sehe alles zweimal, alles zweifach, "
        "gesichtsfeldausfall, gsehni doppelt, gseh doppelt, sehe .. doppelt, seh .. doppelt, doppelt sehen, doppelt "
        "gesehen, sehe .. verschwommen, rußflocken, blitze und, blitze im auge, lichtblitze, schatten im auge, "
        "schatten vorm auge, vorhang im auge, wie ein vorhang, nix mehr auf dem auge, sichtfeld weg, verschwommen auf "
        "einem, auge verschwommen, schwarze punkte überall, mückenschwärme, schwarzer vorhang, halb blind, sehe nix "
        "mehr, seh nur die hälfte, sehe nur die hälfte, auf einem aug, auf dem linken auge nichts, auf dem rechten "
        "auge nichts, linkes auge schwarz, rechtes auge schwarz, auge wird schwarz, auge plötzlich schwarz, blind "
        "geworden, siech doppelt, gsehn doppelt, sieg nix mehr, schleier vor den augen, grauer vorhang, rußregen, "
        "schwarzer fleck im auge, schwarzer fleck im blick, "
        "gesichtsfeld, alles doppelt, halbes bild"
    ),
    C.CONFUSED: (
        "verwirrt, wirr, durcheinander, desorientiert, orientierungslos, neben mir, verwirrung, "
        "ganz konfus, verwirrtheit, konfus, nicht bei sich, nicht bei mir, durch den wind, benebelt, "
        "weiß nicht mehr was"
    ),
    C.LOST_BEARINGS: (
        "weiß nicht wo ich bin, weiss nicht wo ich bin, weiß nicht welcher tag, weiß nimmer wo, "
        "weiß nicht mehr wo ich, weiß meinen namen nicht, finde mich nicht zurecht, "
        "weiß nicht mehr wie ich heiße, erkenne meine wohnung nicht, weiß grad nicht wer, "
        "weiß nicht mehr welcher tag, weiß nicht welches jahr, wo ich bin weiß ich nicht, "
        "weiß grad nicht wo, erkenne niemanden mehr, weiß nicht mehr wo, keine ahnung wie ich hergekommen, "
        "wie ich hier hergekommen, weiß nicht wie ich hierher, weiß nimmer wo ich bin, erkenne meine eigene, "
        "weiß nicht wie ich heiße"
    ),
    C.HEADACHE: (
        "kopfschmerz*, kopfweh, kopf weh, schädelweh, kopf platzt, kopf explodiert, schädel platzt, "
        "schädel brummt, migräne*, schmerz im kopf, schmerzen im kopf, kopf tut, grind, schädel, "
        "kopfwee, kopf zerspringt, kopfschmertz*, chopfweh, kopfwea, kepfweh, schädlweh, schädelbrummen, "
        "schädl, chopf, grindweh, hirn"
    ),
    C.WORST: (
        "schlimmsten, stärksten, schlimmste, stärkste, vernichtende*, wie ein donnerschlag, donnerschlag, "
        "wie ein blitz, blitzartig, noch nie so, nie so, so was hatte ich noch nie, "
        "sowas hatte ich noch nie, nie erlebt, explosionsartig, schlagartig, wie nie zuvor, genickstarre, "
        "nackensteif*, steifer nacken, wie ein schlag, meines lebens, aus dem nichts, urplötzlich, "
        "nie so schlimm, schlimmster, schlimmste meines, so heftig wie nie, noch nie gehabt, wie noch nie, "
        "wie ein hammer, hammer, hammerschlag, explodiert, explodiere, platzt, zerreißt, zerrissen, jäh, "
        "aus heiterem, no nie, nu nia, bombe, wie eine bombe, vernichtungs*, schlimmsten meines lebens, "
        "wie explodiert"
    ),
    C.SEVERE: (
        "stark, starke, starken, starkes, schwer, schwere, schwerer, sehr, extrem, extreme, heftig, "
        "heftige, heftigen, schlimm, schlimme, rasende, furchtbar*, schrecklich*, unerträglich*, "
        "massiv*, wahnsinnig*, höllisch*, brutal*, irre, arg, fürchterlich*, aufgewacht"
    ),
    C.SUDDEN: (
        "plötzlich*, auf einmal, schlagartig, auf einen schlag, aus heiterem himmel, "
        "von jetzt auf gleich, von einer sekunde, unvermittelt, urplötzlich, akut, grad eben, "
        "gerade eben, uf eimal, vo eim moment, aufamal, auf amoi, uf eimol, ufzmal, aufeinmal, "
        "plötzlech, plezlich, plötzle, von null auf, innert, sekundenschnell, mit einem mal, "
        "mit einem schlag, vorhin plötzlich, auf oamoi"
    ),
    C.FAINTED: (
        "ohnmächtig, ohnmacht, ohnmachts*, bewusstlos*, bewustlos*, umgekippt, kipp um, kippe um, kippte um, kippt "
        "um, kippe gleich, kollabiert, kollaps, zusammengebrochen, zsammbrochn, zämebroche, zusammengesackt, "
        "bewusstsein verloren, das bewusstsein, weggekippt, weggetreten, umgefallen, umgfalln, umgflogn, umgheit, "
        "zammgsackt, in ohnmacht, schwarz vor augen .. weg, weg vom fenster, synkope, weggesackt, nicht ansprechbar, "
        "nicht bei bewusstsein, reagiert nicht, wacht nicht auf, nicht mehr wach, brach zusammen, bricht zusammen, "
        "war weggetreten, kurz weg gewesen, umkippen, aus den latschen gekippt, zusammenbruch, liegt leblos, leblos, "
        "umgefalln, umkippt, zusammenbrochen, umgesackt, sackte zusammen, klappte zusammen, fiel um, fällt um, fiel "
        "in ohnmacht, bin einfach weg gewesen, lichter aus, filmriss, rührt sich nicht, bewegt sich nicht mehr, "
        "kriege ihn nicht wach, kriege sie nicht wach, krieg ihn nicht wach, krieg sie nicht wach, nicht aufzuwecken, "
        "lässt sich nicht wecken, nicht weckbar, abgeklappt, abgeschmiert, weggedriftet, zämegheit, zämeklappt, "
        "umgfoin, umgfalle, zammbrochen, zsammgfalln, zsammgfoin, zsammgsackt, zämegsackt, bewusstlos, ohnmächti, "
        "ohnmächtig worn, tschuldige kurz weg, abgestürzt auf den, schwarz worn, schwarz geworden und, schwarz "
        "gworden, schwarz wurde, mir wurde schwarz, mir wurde es schwarz, wurde schwarz vor, ist mir schwarz, "
        "wegtreten, kreislauf weg, kreislaufkollaps, kreislaufzusammenbruch, kreislauf zusammen, zusammengefallen, in "
        "mich zusammen, auf dem boden gefunden, am boden gefunden, gefunden am boden, liegt am boden und, liegt da "
        "und, liegt auf dem boden, liegt reglos, reglos, rührt si nimmer, reagiert nimmer, antwortet nicht, gibt "
        "keine antwort, keine reaktion, keine regung, hat mich umgehauen und, hats mich umgehaut, umgehauen und weg, "
        "hingefallen und weg, sackt zusammen, zusammensacken, lag bewusstlos, aussetzer und lag, ohnmachtsanfall, "
        "bewusstsein verlor, verlor das bewusstsein, verlor kurz das bewusstsein, bewusstsein weg, schwoaz vor augen, "
        "schwoaz vor de augn, wird schwarz vor augen, schwarz vor augen, falle gleich um, fall gleich um, fall glei "
        "um, fall glei in ohnmacht, falle in ohnmacht, kurz weggetreten, kipp gleich um, kippe gleich um, liegt am "
        "boden, lag am boden, lag dann am boden, am teppich glegn, nimmer ansprechbar, fast ohnmächtig, beinah "
        "ohnmächtig, auf dem boden aufgewacht, am boden aufgewacht, am boden zu mir gekommen, beine haben "
        "nachgegeben, beine weggesackt, klappt zusammen, klapp zusammen, plötzlich weg, gleich bin ich weg, bin "
        "gleich weg, kipp zur seite, kippe zur seite, gleich umkippen, alles wird grau, rauscht und wird grau, "
        "kreislauf sackt, sackt mein kreislauf, mir sind die lichter, zammghaut, zusammghaut, zamghaut, zsammghaut, "
        "ganz weg gewesen, weggesackt bin, sacken weg, aus den schuhen gekippt, hats mich umghaut, i war komplett "
        "weg, ich war komplett weg, war ich komplett weg, bin komplett weg gewesen, war für sekunden weg, zsammdraht, "
        "zammdraht, zsammdreht, zammgfalln, zsammklappt, zammklappt, zammbrochn, hat mi draht, hat's mi draht, "
        "umdraht, umgfloge, umkeit, umgeit, umghit, hizogn, hizogen, hingschmissn, weggsackt, wegtretn, wegtrete, "
        "wegbeamt, a minutn ned da, minutn ned da, minuten ned da, sekunden nicht da, ned da gwesn, net da gwesn, "
        "schwarz wordn, schwarz worde, schwarz vor de augn, schwarz vor den augn, schwarz vor de auge, schwarz vorm "
        "aug, filmriss und lag, ohmächtig, ohnmechtig, ohnmächig, bewustlos, bewusslos, schwinden die sinne, sinne "
        "schwinden, sinne schwunden, werd gleich ohnmächtig, werde gleich ohnmächtig, gleich ohnmächtig, kurz vorm "
        "umkippen, kurz vor dem umkippen, kipp glei um, bin glei weg, geh gleich ein ohnmacht, klapp gleich zusammen, "
        "klappe gleich zusammen, zusammengebrochn, weggekippt bin, auf einmal lag ich, plötzlich lag ich, wieder "
        "aufgewacht am boden, am boden zu mir, aus den socken gekippt, lag ich flach auf, "
        "bei mir gingen die lichter aus, bei mir ging das licht aus, mir gingen die lichter aus, hatte einen blackout "
        "und lag, war minutenlang weg, "
        "zusammengeklappt, war kurz weg, blackout, aus den latschen, licht ausgegangen, war weg, weg gewesen, lichter "
        "ausgegangen, lichter gingen aus"
    ),
    C.CAME_ROUND: (
        "zu mir gekommen, aufgewacht, wach geworden, zu mir kam, zu sich gekommen, wieder zu mir, "
        "aufgwacht, fand mich, wiedergefunden, lag ich, bin ich gelegen, kam zu mir, aufgekommen, "
        "auf dem, bin ich aufgewacht, fand ich mich, liegend, zu mir cho, zu mir kemma, "
        "aufgewacht bin ich, lag auf, lag am, lag dann, liegend gefunden, verwacht, ufgwacht"
    ),
    C.FLOOR: (
        "boden, fußboden, fliesen, teppich, bodn, flur, badezimmerboden, parkett, asphalt, estrich, "
        "bode, bödeli, erde, küchenboden, teppichboden, laminat, auf dem bad"
    ),
    C.SEIZURE: (
        "*krampfanfall*, *krampfanfälle*, epileptisch*, epilepsie, krampfte, krämpfe am ganzen, fieberkrampf, grand "
        "mal, schüttelkrampf, *anfall gehabt, einen anfall, nen anfall, zuckungen, verkrampft am ganzen, "
        "anfallsleiden, aafall, anfoi, epilepsi, epi, epianfall, krampfanfoi, krampft am, verkrampft und, krämpfe, "
        "schüttelt sich, schüttelt es, schüttelts, hats mich geschüttelt, hat mich geschüttelt, zuckt am, zucken am, "
        "gezuckt am, anfall ghabt, anfall gha, anfall gekriegt, anfall bekommen, augen verdreht, verdreht die augen, "
        "schaum vor dem mund, schaum vorm mund, schaum am mund, steif geworden und, krampfanfall, krampfanfälle, "
        "epileptischen anfall, epileptischer anfall, epi anfall, hatte grad einen anfall, zuckt am ganzen, zuckt "
        "überall, zunge gebissen, auf die zunge gebissen und, zunge zerbissen, "
        "krampft, gekrampft, hatte einen anfall"
    ),
    C.JERKING: (
        "zuckt .. immer, zuckt unkontrolliert, unkontrolliert gezuckt, am ganzen körper gezuckt, "
        "ganzer körper zuckt, ganze körper .. gezuckt, zunge gebissen, zunge blutig, zunge zerbissen, "
        "zuckt am ganzen, zucke am ganzen, unkontrolliertes zucken, geschüttelt .. kontrolle, zuckt, "
        "zuckungen, gezuckt, zucken, rumgezuckt, geschlottert ohne, eingebissen, zunge wund, "
        "zunge aufgebissen"
    ),
    C.DIZZY: (
        "kreislaufprobleme, kreislaufproblem*, kreislauf spinnt, kreislauf im keller, kreislauf macht schlapp, alles "
        "dreht sich, raum dreht sich, seh sternchen, sehe sternchen, "
        "schwindel*, schwindlig*, drehschwindel, benommen*, schwummrig*, schummrig*, schwarz vor augen, schwarz vor "
        "den augen, dreht sich alles, alles dreht sich, alles gedreht, dreht sich, dreht si, flau, drümmlig, "
        "trümmlig, sturm im kopf, taumelig, taumle, torkel*, wanke, gleichgewicht, wackelig auf den, zimmer dreht, "
        "schwindl, duselig, dusslig, karussell im kopf, schwankt, sturm im grind, schwindli, schwindlg, schwindelt, "
        "schwindel, drümlig, trümmelig, drehwurm, dreht's, drahts, draht sich, draht si, dreit, alles draait, drehn, "
        "drehe mich, dreht es mich, wackelig, wacklig, wankt, wanken, schwank*, torkle, taumel*, taumlig, eiere, "
        "gleichgewicht verloren, damisch, dormelig, schwarz wird, schwarz geworden vor, sternchen, kreislauf, "
        "kreislauf spinnt, schummrig, schwummrig, dusselig, schwindlig, sterne sehen, seh sterne, kreislauf sackt, "
        "laufe wie betrunken, gehe wie betrunken, schwanke, kein gleichgewicht, "
        "ist mir sturm, isch mer sturm, mir isch sturm, mir ist sturm, mir is sturm, bin sturm, ganz sturm, trümlig, "
        "ganz damisch, schwummerig, duslig, zimmer dreht sich, alles dreht sich um mich, dreht sich das zimmer, boden "
        "schwankt, boden wankt, wie auf hoher see, wie besoffen beim gehen"
    ),
    C.AGAIN: (
        "dritter tag jetzt, wieder, immer, ständig, oft, öfter, jeden, jedes, jedesmal, seit, dauernd, "
        "häufig, mehrmals, täglich, gestern, wiederholt, tagelang, immer noch, immer no, dritter tag, "
        "drittes mal, zum dritten, tage, tagen, woche, wuche, die woche, diese woche, ganze zeit, "
        "in letzter zeit, wenn ich aufsteh, sobald, beim aufstehen, laufend, scho wieder, zweites mal, "
        "zweimal, dreimal, neuerdings, letzter zeit, schlimmer, neu, dritten tag, dritte mal, tag jetzt, "
        "tage jetzt, immer wieda, allweil, ständi, jedes moi, jedesmol, all tag, jede tag, all pott, "
        "alle paar, mehrfach, schon den ganzen, den ganzen tag, seit tagen, seit wochen, immer wenn, "
        "öfters, wiederkehrend, schon länger, sit, sit geschter, seit geschtern, siter"
    ),
    # breath
    C.BREATHE: (
        "atmen, atma, luft holen, luft, durchatmen, schnaufen, schnaufe, luft kriegen, luft bekommen, einatmen, atem"
    ),
    C.CHOKING: (
        "bekomme keine luft, kriege keine luft, krieg keine luft, kriegt keine luft, bekommt keine luft, bekomm keine "
        "luft, keine luft, koa luft, kei luft, ka luft, kaum luft, kaum no luft, kaum noch luft, keine luft mehr, "
        "kann nicht atmen, kann nicht mehr atmen, kann kaum atmen, nicht atmen, nicht richtig atmen, atmet nicht, "
        "atmet nicht mehr, atmet kaum, nicht genug luft, zu wenig luft, kaum atmen, atemnot, luftnot, ersticke, "
        "erstick, erstickt, ersticken, erstickungs*, ringe nach luft, ringt nach luft, schnappe nach luft, schnappt "
        "nach luft, schnapp nach luft, hechle nach luft, japs, japse, japst, kann nicht schnaufen, kriag koa luft, "
        "nimmer schnaufen, keinen atem, kein atem, röchelt, röchle, luft abgeschnürt, kein luft mehr, kriag ka luft, "
        "kriege überhaupt keine luft, bekomme kaum luft, kriege kaum luft, krieg kaum luft, krieg überhaupt keine "
        "luft, nimmer atmen, überhaupt keine luft, chume kei luft, überchum kei luft, ringe um luft, ringt um luft, "
        "hat aufgehört zu atmen, koa luft mehr, ka luft mehr, kei luft meh, überchumme kei luft, überchume chuum "
        "luft, chuum luft, griag koa luft, griag ka luft, luft kriag i, luft krieg ich keine, luft bekomme ich keine, "
        "luft krieg ich kaum, ersticki, vastick, verschtick, erstickt fast, beinahe erstickt, atmung setzt aus, atmet "
        "nimmer, schnauft nimmer, röchelt nur, schnappe nur noch, schlecht luft, sehr schlecht luft, kaum luft "
        "gekriegt, rosa schaum, schaum vorm mund, schaum vor dem mund, verschluckt und, verschluckt sich, luft bleibt "
        "weg, bleibt mir die luft weg, atemnot im sitzen, schwer luft, nur noch hecheln, hechel nur noch, schlecht "
        "atmen, kann schlecht atmen, ring nach luft, nach luft ringen, lippen sind blau, lippen blau, blaue lippen, "
        "luft reicht nicht, kein sauerstoff, röchel*, erstick*, läuft blau an, wie ein fisch, fisch auf dem "
        "trockenen, rassel beim schnaufen, rasselt beim atmen, rasseln beim atmen, pfeift beim atmen, pfeifen beim "
        "atmen, rippen ziehen sich ein, zieht die rippen ein, krieg die luft nicht rein, krieg die luft .. nicht "
        "rein, krieg keine luft rein, luft geht nicht rein, luft geht nicht runter, luft will nicht rein, luft kommt "
        "nicht rein, krieg die luft nicht, bekomm die luft nicht, japse im sitzen, japs im sitzen, asthmaanfall, "
        "asthmaanfälle, asthma anfall, falschen hals und, in den falschen hals und, im hals stecken, stecken "
        "geblieben und, bleibt im hals stecken, steckt im hals, steckt mir im hals, steckt in der luftröhre, in der "
        "luftröhre, luftröhre zu, verschluckt und krieg, verschluckt und bekomm, erstick grad, erstick gleich, "
        "ersticke grad, ersticke gleich, derstick, dersticken, "
        "am ersticken, "
        "hats was in den falschen hals, was in den falschen hals und, etwas in den falschen hals und, in die falsche "
        "röhre, krieg es nicht raus ich würge, würge nur, würge und krieg, würge und bekomm"
    ),
    C.AIR_HUNGER: (
        "schwer luft, schlecht luft, schlecht .. luft, schwer .. luft, schwer atmen, schwer atme, atmen fällt .. "
        "schwer, atmen .. schwer, luft wird knapp, wenig luft, mühe zu atmen, mühe beim atmen, mühsam luft, luft "
        "reicht nicht, luft ist knapp, lufthunger, schlecht schnaufen, luft bleibt weg, bleibt mir die luft weg, "
        "bleibt die luft weg, luft wegbleibt, zu wenig luft, nicht genug luft, nicht richtig durchatmen, kann nicht "
        "durchatmen, nicht richtig luft, atmung geht schwer, atme schwer, atmet schwer, bekomme schlecht luft, nicht "
        "gut luft, zu wenig sauerstoff, kriege schwer luft, atemprobleme, schnelle atmung, nöd gnueg luft, nid gnueg "
        "luft, ned gnua luft, z wenig luft, schlächt luft, schlächt schnufe, schwär schnufe, atme nur noch flach, "
        "flache atmung, atmen tut weh, schwer zu atmen, atmung schwer, atmen schwer, atmen wird, atmen geht, atmet so "
        "komisch, atmet komisch, schnappatmung, atmung rasselt, luft holen geht, luft holen fällt, kriege nicht "
        "richtig luft, krieg nicht richtig luft, bekomme nicht richtig luft, kaum zu atem, überchume fasch kei, "
        "überchume kei, kei schnuuf me, kaum schnuuf, bekomm kei luft, chume kei luft, krieg koa luft, kriag koa "
        "luft, krieg ka luft, ka luft, ka luft mehr, koa luft, keene luft, kene luft, kaane luft, keen luft, krieg "
        "keine luft mehr, luft bleibt mir weg, nichts in die lunge, nix in die lunge, keine luft in die lunge, luft "
        "in die lunge reingeht, in die lunge rein, geht keine luft rein, kommt keine luft rein, lunge geht nicht auf, "
        "lunge geht ned auf, lunge macht zu, lunge ist zu, lungen sind zu, bronchien zu, bronchien machen zu, brust "
        "geht nicht auf, wie durch einen strohhalm, durch einen strohhalm, wie unter wasser atmen, als würd ich "
        "ertrinken, als würde ich ertrinken, wie ertrinken, als tät i dersticken, am offenen fenster und krieg, nach "
        "jedem wort luft, nach jedem wort luft holen, zwischen den wörtern luft, nur zwei wörter dann, nach luft "
        "ringen, schnappe nach luft, schnapp nach luft, japse, japse nach luft, luft langt nicht, kaum luft, kaum "
        "noch luft, kriege schlecht luft, krieg schlecht luft, krieg so schlecht luft, bekomm schlecht luft, kein "
        "schnauf, kan schnaufer, grieg ka luft, griag koa luft, kriag ka luft, kein luft, überchume kei luft, bechum "
        "kei luft, chum nümme zum schnufe, chan nümme schnufe, cha nümme schnufe, "
        "schnaufe im sitzen, schnaufe schon im sitzen, schnauf im sitzen, schnauf schon im sitzen, schnaufe im "
        "liegen, schnauf im liegen, schnaufe beim liegen, schnaufen im sitzen, keuche im sitzen, keuch im sitzen, "
        "keuche schon im sitzen"
    ),
    C.BREATHLESS: (
        "kurzatmig*, außer atem, atemlos, aus der puste, außer puste, keine puste, puste, atembeschwerden, schnauf, "
        "schnaufn, hechle, keuche, keuch, keuchend, hecheln, außer schnauf, verschnaufen, pumpe, luft schnappen, "
        "bleibt .. luft weg, nach luft schnappen, usser atem, luft weg, kein schnauf, durchschnaufen, luft zu "
        "holen, luft holen, kein atem, schnaufe wie, am schnaufen, zum schnaufen, nur noch schnaufen, komm nicht "
        "mehr zu atem, komme kaum zu atem, nach atem, verschnaufpause, verschnaufpausen, luft bleibt weg, pfeife "
        "auf dem letzten loch, keine kondition mehr, japse, aus dem schnaufen, chum nüm nache mit schnufe, schnufe, "
        "schnuuf, kei schnuuf, ausser schnuuf, kurzatmig, schnauferei, schnaufa, schnaufen wie, pfnuchse, keine "
        "kraft zum atmen, bekomme schnaufen, muss schnaufen, pfeife, japsen, japs, keuchen, keuche nur, keuche "
        "schon, hechel, hechle schon, kurzatmi, churzatmig, gschnauft, ringen nach, komme außer atem, ganz außer "
        "atem, völlig außer atem, total aus der puste, pustet, hab keine puste, ohne puste, ned gnua luft, luft "
        "geht aus, geht die luft aus, luft ausgeht, geht mir die luft aus, luft ausgegangen, bleibt die puste weg, "
        "puste weg, nach luft ringen, nach luft ringe, luftnot im liegen, nicht flach liegen, kann nicht flach "
        "liegen, schlafe im sitzen, schlaf im sitzen, pfeift beim atmen, pfeifen beim atmen, schnaufen, japs*, "
        "hechel*, chum fascht kei schnuuf, koan schnaufer"
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
        "treppe*, treppn, stiege*, treppensteigen, stock, stockwerk, anziehen, aziehe, haushalt, "
        "als sonst, als früher, als gewöhnlich, duschen, leichter, bei kleinsten, kleinster, kleinsten, "
        "geringster, betten machen, bett machen, bettmachen, staubsaugen, kochen, einkaufen, spazieren*, "
        "schuhe binden, ein paar schritte, wenige schritte, wenigen schritten, nach ein paar, "
        "noch nicht so, war das noch nicht, nie gehabt, vorher nicht, früher nicht, steigung, hügel, "
        "berg, müll, putzen, wäsche, alltag, im alltag, briefkasten, garten, bei allem, bei jeder, "
        "zähneputzen, beim gehen, beim laufen, beim spazieren, zum bad, zum klo, zum briefkasten, "
        "zum bäcker, zum auto, stufen, etage, stöcke, hochgehen, treppe hoch, hochsteigen, socken, "
        "socken anziehen, abwasch, bettwäsche, wäsche aufhängen, wenige meter, paar meter, "
        "ein paar meter, drei schritte, zwei schritte, zehn schritte, tisch decken, bügeln, beim reden, "
        "beim sprechen, ums haus, bis zur haustür, ins schlafzimmer, kleinste anstrengung, "
        "kleinsten anstrengung, geringsten anstrengung, letzte woche ging, vor kurzem noch, "
        "ging das noch, ging noch, war noch kein problem, sonst nie, spaziergang, schuhe, stäge, stiagn, "
        "stiege, stiegen, stägetritt, treppenabsatz, treppnsteigen, treppauf, die treppe, bergauf, "
        "aufe gehn, in den ersten stock, in den zweiten stock, erster stock, erste etage, zur tür, "
        "zur toilette, aufs klo, zum kühlschrank, in die küche, in die kuchl, bad, ins bad, haare, "
        "haare waschen, haare kämmen, waschen, waschn, abziega, azieh, schuhbänder, bücken, "
        "spülmaschine, geschirr, einkäufe, einkaufstasche, rasenmähen, gießen, blumen, bett beziehen, "
        "betten, betten beziehen, staubwischen, fegen, wischen, schon nach, nach wenigen, nach zwei, "
        "nach drei, nach fünf, ein paar stufen, halbe treppe, nach der halben, früher ging, "
        "früher kein problem, vorher ging, letzten monat, letzte woche noch, jede kleinigkeit, "
        "kleinigkeit, kleinigkeiten, leichte arbeit, leichter arbeit"
    ),
    C.INHALE: ("einatmen, einatme, tief atme, tief luft, durchatmen, beim atmen, tief einatme, luft hol"),
    # blood
    C.BLEED: (
        "blute, blutet, bluten, geblutet, *blutung*, nasenbluten, blüetet, bluat, blut läuft, blut rinnt, "
        "verliere blut, bluetet, bluadt, bluet, blutets, bluten tut, rinnt blut, läuft blut, spritzt blut, "
        "verliert blut, blutung, hört nicht auf zu bluten, blutet weiter, blutet immer weiter"
    ),
    C.BLOOD: (
        "blut, blutig*, bluat, bluet, blutet, blute, geblutet, blutung, blutspur*, blutig, blutlache, rot im klo, "
        "rotes im klo, rotes wasser, spuck rot, rot gespuckt, roter auswurf, geronnenes, klumpen, koagel"
    ),
    C.WOUND: (
        "geschnitten, schnitt, schnittwunde, wunde, aufgeschnitten, messer erwischt, brotmesser, "
        "reingeschnitten, gschnittn"
    ),
    C.NOT_STOPPING: (
        "hört nicht auf, hört .. nicht auf, hört nicht mehr auf, hört ned auf, nicht aufhört, hört .. nimmer auf, "
        "nicht stillen, nicht zu stillen, lässt sich nicht stoppen, nicht stoppen, hört einfach nicht, unstillbar, "
        "läuft und läuft, rinnt und rinnt, seit einer stunde, seit stunden, seit einer halben stunde, halbe stunde, "
        "durchgeblutet, durchgeweicht, getränkt, spritzt, strömt, läuft runter, tropft und tropft, hört net auf, "
        "hört gar nicht, stoppt nicht, kriege .. nicht gestillt, krieg .. nicht gestoppt, hört nöd uf, hört nid uf, "
        "hört nit auf, hert ned auf, hört nicht auf zu, heat ned auf, gaht nöd weg, nicht zu bluten auf, nimmer "
        "auf, nicht auf, ned auf, nöd uf, will nicht aufhören, seit zwanzig minuten, seit 20 minuten, seit 30 "
        "minuten, seit ner stunde, stunde schon, küchenrolle, taschentücher, verband durch, pflaster durch, dritte "
        "handtuch, zweite handtuch, drittes handtuch, durchgesuppt, tropft, läuft immer, läuft weiter, immer "
        "weiter, blutet immer, blutet weiter, blutet durch, kein ende, hört einfach nicht auf, hört gar nicht auf, "
        "handtuch schon durch"
    ),
    C.MUCH: (
        "viel, stark, starke, schwer, heftig, massiv*, literweise, alles voll, überall, lache, pfütze, "
        "sehr, wie verrückt, wie ein schwein, am kopf, aus dem kopf, handtücher, handtuch, so viel, "
        "unmengen, große mengen, ziemlich viel, hellrot, klumpen, total, wie sau, ganz viel, menge, "
        "eimer, nass, voll, frisches, reichlich, vui, vü, sauviel, sehr viel, arg, richtig viel, "
        "ordentlich, hellrotes, frisches blut, ein haufen, haufen, massenhaft, ganzen becken, "
        "waschbecken voll, alles rot, rot"
    ),
    C.HAEMORRHAGE: (
        "verblute, verblutet, verbluten, magenblutung, magenblutungen, innere blutung*, blutsturz, blutendes "
        "magengeschwür, starke blutung*, blutspuck*, bluterbrechen, teerstuhl, blutig erbrochen, es spritzt, spritzt "
        "raus, blut spritzt, spritzendes blut, binde voll, binden voll, binde durch, binde nach der anderen, blut "
        "läuft runter, spuck blut, spucke blut, blut gespuckt, blut gehustet, huste blut, hust blut, brech blut, kotz "
        "blut, blut gekotzt, viel blut in der schüssel, voller blut, lauter blut, blut ohne ende, alles voll blut, "
        "hört nicht auf zu bluten, blutet wie, unmengen blut, blutlache, literweise blut, blut im urin, blutklumpen, "
        "blut läuft und läuft, blut läuft raus, schwallartig, krampfader geplatzt, krampfader am schienbein geplatzt, "
        "ader geplatzt, ader aufgegangen, alles rot, flur schwimmt, alles voller blut, blut wie ein wasserhahn, nase "
        "läuft wie ein wasserhahn, schüssel .. rot, klo .. rot, toilette .. rot, blut hört nicht auf, blut hört ned "
        "auf, blut schießt, blut pumpt, blutet wie sau, blutet wie verrückt, blutet wie ein schwein, blutet wia "
        "d'sau, blutet durch, blutet alles durch, verband ist durch, handtuch voll blut, handtücher voll blut, "
        "überall blut, überall ist blut, lache blut, verblut, am verbluten, blut erbrochen, spei blut, blut gespien, "
        "bluthusten, blut im erbrochenen, wie kaffeesatz, blut im stuhl, blut im klo, blut in der schüssel, "
        "kloschüssel rot, klo voll blut, blut aus dem po, blut aus dem hintern, stuhl schwarz, stuhl pechschwarz, "
        "schwarz wie teer, schwarz wie pech, binde jede stunde, jede stunde eine binde, binden pro stunde, pulsiert "
        "raus, pulsierend raus, "
        "kaffeesatz"
    ),
    C.VOMIT: (
        "mich übergeben, muss übergeben, musste übergeben, übergeben müssen, hab gebrochen, habe gebrochen, musste "
        "brechen, muss brechen, mehrmals gebrochen, zweimal gebrochen, gerade gebrochen, "
        "erbrechen, erbrochen, übergeben, brechen, brich, gebrochen, kotzen, gekotzt, kotz, kotze, "
        "erbreche, gespuckt, gspibn, speiben, gspieben, übergebe, spucke, reihern, gereihert, chotzet, "
        "würgen, spucken"
    ),
    C.COUGH: "huste*, gehustet, hustet, ausgehustet, abgehustet, gehuscht, auswurf",
    C.STOOL: (
        "stuhl, stuhlgang, kot, kacke, klo, toilette, urin, pipi, durchfall, ausscheidung, klopapier, "
        "windel, am klo, darm, beim stuhlgang, wc, häufchen, am papier, gstuhl, stuehl, wci, "
        "wasserlassen, bisi, kacken, geschäft, hintern, after, popo"
    ),
    C.BLACK: (
        "schwarz, pechschwarz, teer, teerig, wie teer, schwarzer, schwarzen, kohlschwarz, rabenschwarz, asphalt, "
        "lakritz, pech, tinte, kohle, kaffeesatz"
    ),
    # medicines and poisons
    C.OVERDOSE: (
        "*überdosis, überdosiert, überdosierung, vergiftet, vergiftung, zu viele tabletten, zu viel tabletten, "
        "zu viele pillen, z vil, zvil tablette*, zvil medi, z vü tabletten, zu viele schmerztabletten, "
        "zu viel insulin, zviel, zu viel vom, zu viel von meinen, zu viele von meinen, hab sie alle geschluckt, "
        "alle geschluckt, ganze schachtel, ganze packung, doppelte dosis, doppelt genommen, doppelt gespritzt, "
        "zweimal genommen, zweimal gespritzt, zu viel genommen, statt einer, statt 4, einheiten statt, überdosis, "
        "alles auf einmal, alle auf einmal, den überblick verloren, zuviel insulin, versehentlich doppelt, "
        "aus versehen doppelt, viel zu viele tabletten, haufen pillen, haufen tabletten, handvoll tabletten, "
        "handvoll pillen, alle tabletten, alle meine tabletten, alle pillen, jede menge tabletten, "
        "zwei mal insulin, insulin zweimal, falsches insulin, falsche tabletten, tabletten verwechselt, "
        "zu viel gespritzt, tabletten doppelt, doppelt eingenommen, zweimal eingenommen, wochendose auf einmal, "
        "wochendosis auf einmal, wochenration auf einmal"
    ),
    C.TOOK: (
        "genommen, gnomma, eingenommen, geschluckt, gschluckt, nehme, nimm, nahm, gespritzt, gegeben, intus, "
        "erwischt, reingehauen, eingeworfen, genomme, gschpritzt, verabreicht, gno, gnoo, gnu, gnumma, gnommen, "
        "gspritzt, eingeschmissen, einigschmissn, gefuttert, runtergespült, eigenommen, gedrückt, gesetzt, "
        "reingestopft, gekippt, reingepfiffen, reingezogen, getrunken, gefressen, "
        "gnoh, gnumme, gnumm, gnommn, gschlugt, gfressn, gfresse, einegschmissn, reingeschmissen, runtergeschluckt, "
        "reingekippt, hinuntergespült, gesprizt"
    ),
    C.SWALLOWED: (
        "gegessen, gessn, geschluckt, verschluckt, gschluckt, gefuttert, gfressn, getrunken, gessen, "
        "schluckt, runtergeschluckt, in den mund gesteckt, gschlückt, gelutscht, aufgegessen, trunken, "
        "aufgefuttert, verspeist, gässe, gegässe, gnascht, genascht, eingenommen, reingesteckt, "
        "geschnappt, erwischt"
    ),
    C.TABLETS: (
        "*tablett*, *tabletten, pille*, pilln, *medikament*, *kapsel*, medis, schlaftablett*, paracetamol, "
        "ibuprofen, aspirin, marcumar, blutverdünner, betablocker, *mittel, tropfen, schlafmittel, "
        "beruhigungsmittel, pulver*, dosis, tramadol, opiate, morphium, pulverl, zäpfchen, blister, digitoxin, "
        "ramipril, lisinopril, enalapril, amlodipin*, furosemid*, metformin*, warfarin*, apixaban*, rivaroxaban*, "
        "zopiclon*, diazepam*, lorazepam*, oxycod*, oxycont*, pregabalin*, gabapentin*, sertralin*, quetiapin*, "
        "simvastatin*, atorvastatin*, *prolol*, bisoprolol*, atenolol*, digoxin*, zolpidem*, amitriptylin*, "
        "mirtazapin*, citalopram*, codein*, tramadol*, herztabletten, blutdrucktabletten, schmerztabletten, "
        "schlaftabletten, valium, tilidin, insulinpen, tablette, tabletta, tablettli, tablettn, pülverli, pülverle, "
        "medi, pülva, pulvern, tropfn, tröpfli, ampulle, schmerzmittel, blutdrucksenker, herzmittel, fläschchen, "
        "pillendose, tablettenbox, dosette, wochenbox, medikamentenbox, schachtel, packung, tabletten, dose "
        "tabletten, pillen, ganze dose, pille, pulver, "
        "herztropfen, pulverln, dosett, wochendosett, medibox, schieber, tagesration, wochenration, "
        "beruhigungstabletten, wassertabletten, entwässerungstabl*, eliquis, xarelto, novalgin, ibus, paras, pülln"
    ),
    C.INSULIN: (
        "*insulin*, "
        "einheiten .. gespritzt, gespritzt .. einheiten, einheiten .. gesprizt, einheiten .. spritz*, gespritzt "
        "statt, statt .. einheiten, ie gespritzt, humalog, novorapid, fiasp, toujeo, tresiba, levemir, lantus, basal, "
        "bolus, pen verwechselt"
    ),
    C.TOO_MUCH: (
        "alle, alles, ganze, ganzen, ganzes, doppelt, doppelte, doppelten, zweimal, zwoamal, zu viel, zu viele, "
        "zuviel*, statt, anstatt, aus versehen, versehentlich, falsch, falsche, falschen, verwechselt, handvoll, "
        "hand voll, packung, schachtel, röhrchen, viel zu, irrtümlich, auf einmal, 2x, 2 mal, dreimal, dreifache, "
        "mehrere, haufen, noch mal, nochmal, s ganze, sämtliche, dutzend, verzählt, vertan, schon genommen, "
        "vergessen dass ich, noch einmal, ein zweites mal, zweites mal, zum zweiten mal, zehn, zwölf, fünfzehn, "
        "zwanzig, dreißig, vierzig, fünfzig, auf einen schlag, in einem rutsch, ganze woche, wochenration, "
        "wochendosis, den rest, restlichen, gesamte, gesamten, mehr als ich soll, mehr als erlaubt, fünfmal, "
        "viermal, vertauscht, durcheinander gebracht, leer, dosis verdoppelt, s doppelte, doppelti, dopplet, z vil, "
        "zvil, z vü, z vui, versehentli, us versehe, alli, oi, oisand, komplette, komplett, haufn, händevoll, "
        "ganzi, leergemacht, leere, geleert, ausgetrunken, aufgebraucht, verschusselt, irrtum, gleich zwei, zwei "
        "mal, nochmals, noma, numoi, vergessen ob, weiß nicht wieviele, weiß nicht wie viele, keine ahnung wie "
        "viele, mehr als, einheiten statt, fremde, vom mann, von meinem mann, von meiner frau, hundert, sechzig, "
        "siebzig, achtzig, zehnfache, morgens und abends zusammen, ganze packung, ganze schachtel, ganze flasche, "
        "die packung, eine flasche, halbe packung, volle dröhnung, ganz viele, so viele, ganz viel, jede menge, "
        "massig, einen haufen, ein haufen, haufenweise, massenweise, nen ganzen haufen, händeweise, "
        "zvü, zvui, zvüü, z'vü, zviel, z'viel, zuviel, zuviele, viel zu viel, vüü z vü, alle auf einmal, alles auf "
        "einmal, alle sieben, die ganze woche, ganzes röhrchen, ganzen blister, ganzen streifen, ganze dose, halbe "
        "schachtel, doppelte dosis, zweimal genommen, nochmal genommen, noch einmal genommen, statt einer, statt "
        "eine, statt abends, die falschen, vom hund, eine hand voll, zehnfach, überdosiert"
    ),
    C.POISON: (
        "bleiche, bleichmittel, rohrreiniger, abflussreiniger, putzmittel, reinigungsmittel, spülmittel, "
        "waschmittel, frostschutz, rattengift, gift, essigessenz, lampenöl, desinfektionsmittel, entkalker, "
        "pilz*, chlor, javel, domestos, reiniger, wc reiniger, klorein, terpentin, benzin, insektenmittel"
    ),
    # despair
    C.KILL_SELF: (
        "umbringen, umzubringen, bring .. mich um, bringe .. mich um, mich um bring, bringt sich um, umbringt, "
        "suizid*, selbstmord*, selbsttötung, das leben nehmen, leben nehmen, leben zu nehmen, mein leben beenden, "
        "leben beende, leben beenden, leben zu beenden, mir etwas antun, mir etwas an, mir was antun, mir was an, was "
        "anzutun, tu mir was an, antun, erhäng*, aufhäng*, aufhängen, vom dach spring*, vorn zug, vor einen zug, "
        "schluss machen, mach schluss, mache schluss, mich töten, erschießen, erschieße, vergiften, springe vom, aus "
        "dem fenster spring*, mich selbst verletzen, verletze mich, mich verletzen, aus dem leben scheiden, bring mi "
        "um, abmurksen, ins wasser gehen, mich umbringe, erschieß*, bring mich heute um, will mich umbringen, vor die "
        "u bahn, aus dem fenster, spring von, springe von, spring vom, von der brücke springen, springe aus, den "
        "strick, alles beenden, alles zu beenden, will es beenden, dem ganzen ein ende, ein ende setzen, ein ende "
        "machen, mein leben wegwerfen, wegmachen, mir das leben nehme, das leben nehm, abtreten, bring i mi um, mi "
        "umbringe, umbringa, umbringn, mach i schluss, mach mit mir schluss, heb i mi uf, häng mich auf, häng mi auf, "
        "hänge mich auf, erhänge mich, erhäng mich, erhänge, erhängen, stürz mich, stürze mich, in die tiefe, vor den "
        "nächsten zug, leg mich auf die gleise, auf die gleise, nehm mir das leben, nehme mir das leben, nimm mir das "
        "leben, mir s leben, leben ein ende, schieß mir, schieße mir, kugel in den kopf, kugel geben, die kugel, mich "
        "wegmachen, mich umzubringen, geh ins wasser, gegen einen baum, gegen den baum, gegen die wand fahren, alle "
        "tabletten auf einmal, mir etwas anzutun, mir was anzutun, sich was an, sich was antun, sich etwas antun, "
        "sich etwas anzutun, sich das leben, er bringt sich, sie bringt sich, sich umbringen, umzubringe, selbst "
        "töten, mich zu töten, bring mich um, bringe mich um, spring runter, springe runter, runterspringen, schluss "
        "machen mit dem leben, mach schluss mit allem, pulsadern, von der brücke zu springen, vor den zug werfen, es "
        "beenden heute, heute beende ich es, mich erschießen, mich aufhäng, mich erhäng, tot machen, gegen den baum "
        "fahren, springe vor den zug, vom dach springen, strick um den hals, strick gekauft, seil um den hals, adern "
        "aufschneiden, messer am hals, messer an die, rasierklinge in der hand, bringe mi um, mi umzubringen, mir das "
        "leben nehmen, schluss mit dem leben, dem leben ein ende, meinem leben ein ende, mach mich weg, tue mir was "
        "an, tu mir etwas an, selbstmord, suizid, mich aufhängen, erschieß mich, erschieße mich, vergifte mich, "
        "vergift mich, gegen einen baum fahren, an den baum fahren, an die wand fahren absichtlich, "
        "spring vor den zug, spring von der brücke, springe von der brücke, spring vom dach, springe vom dach, werf "
        "mich vor, werfe mich vor, schmeiß mich vor, lege mich auf die gleise, "
        "vor den zug, von der brücke, vor die bahn, vors auto"
    ),
    C.CUT_SELF: (
        "geritzt, ritze mich, ritz mich, ritzen, mich selbst verletzt, pulsadern, selbstverletz*, "
        "aufgeschnitten, aufgeschlitzt, adern aufschneid*, schneide mich, mich geschnitten .. absicht*, "
        "absichtlich geschnitten, arme aufgeritzt, mich wieder geschnitten, schneid mich, mit der klinge, "
        "rasierklinge .. geschnitten, messer .. in den arm, arm geschnitten, in den arm geschnitten, "
        "arme geschnitten, in den unterarm, an den armen geschnitten, selbst verbrannt, "
        "mit zigarette verbrannt, handgelenk aufgeschnitten, ritz, ritze, gschnitte, aufgschnittn, "
        "mi gritzt, mich gritzt, mi aufgschnitten, arm aufgeritzt, arm aufgeschnitten, klinge am arm, "
        "klinge an den arm, messer am handgelenk, messer am arm, die arme zerschnitten, arme zerschnitten, "
        "haut aufgeritzt, schlage meinen kopf, mir selbst weh, mir selber weh, mir wehgetan, "
        "mir selbst wehgetan, selber verletzt, selbst verletze, selber verletze, selbst verletz*, "
        "arme aufgeschnitten, mir weh zu tun, mir wehtun, mich verletzen"
    ),
    C.END_IT: (
        "allem ein ende, mach ich schluss, mache ich schluss, ist schluss, ist es vorbei, "
        "ist alles vorbei, hat alles ein ende, ist aus, nicht mehr da, zu ende, beende ich es, "
        "beende es, mach ich ein ende, ein ende, is aus, is vorbei, hört alles auf, mach ich es, "
        "tu ich es"
    ),
    C.TONIGHT: (
        "heute, heut, heute nacht, heut nacht, morgen, jetzt, diesmal, heit, heute abend, endgültig, "
        "für immer, noch heute"
    ),
    C.FAREWELL: (
        "abschiedsbrief*, abschiedsbriefe, abschied genommen, abschied geschrieben, brief an die kinder, testament "
        "geschrieben, von allen verabschiedet, verabschiedet von allen, zettel geschrieben, abschiedsbrief, nicht "
        "mehr da sein, nach heute abend, nimmer da sein, nicht mehr hier sein, lebt wohl, leb wohl, macht es gut "
        "alle, verabschiedet sich, verabschiede mich von, tschüss für immer, letzte nachricht, kümmert euch um meine, "
        "ihr hört nichts mehr von mir, lebt alle wohl, macht's gut für immer, adieu für immer, abschiedsnachricht, "
        "abschiedsvideo, letzte nachricht von mir, zum letzten mal melde, meld mich nicht mehr ihr lieben, machts gut "
        "für immer, verabschiede mich für immer, abschied für immer, kümmert euch um meine kinder, pass auf die "
        "kinder auf wenn ich, passt auf meine katze auf wenn, wenn ich nicht mehr bin, "
        "meine letzte nachricht"
    ),
    C.READY: (
        "liegen bereit, bereit, gesammelt, gehortet, vor mir, neben mir, bereitgelegt, daheim liegen, gespart, "
        "hergerichtet, parat, liegen schon, zurechtgelegt, liegen vor mir, liegen da, auf dem tisch, auf dem bett, "
        "in der hand, griffbereit, abgezählt"
    ),
    C.MEANS: (
        "strick, seil, messer, klinge, rasierklinge, waffe, pistole, tabletten, brücke, gleise, "
        "schlinge, eingesperrt, eingeschlossen"
    ),
    C.THOUGHTS: (
        "denke an, denk an, denke ständig, denk ständig, gedanken, gedanke, gedacht, denke oft, denk oft, "
        "denke daran, denk dran, denk manchmal, manchmal, nachgedacht, nie machen, würde es nie, würds nie, "
        "nicht tun, spiele mit, im kopf, überlegt, phantasie, fantasien, denk ich dran, suizidgedanken, "
        "selbstmordgedanken"
    ),
    C.DEATH_WISH: (
        "will sterben, möchte sterben, mag sterben, sterben will, sterben möchte, sterben wollen, lebensmüde, wäre "
        "lieber tot, lieber tot, tot sein, tot wäre, tot wär, nicht mehr leben, nimmer leben, nimma leben, nicht mehr "
        "weiterleben, nimmer weiterleben, leben keinen sinn, kein sinn im leben, nicht mehr da sein, nicht mehr da "
        "wäre, nicht mehr da wär, nicht mehr aufwachen, nimmer aufwachen, nicht mehr aufwache, nicht mehr aufwach, "
        "ohne mich besser, besser ohne mich, besser dran ohne mich, ohne mich, nichts wofür es sich zu leben, kann so "
        "nicht weiterleben, gestorben wäre, einschlafen und nicht, nicht mehr existieren, nicht mehr hier sein, des "
        "lebens müde, todessehnsucht, nöd mehr läbe, nüm läbe, nümm läbe, nicht mehr am leben sein, leben satt, nie "
        "geboren, suizidgedanken, selbstmordgedanken, suizidale gedanken, todeswunsch, keine lust mehr zu leben, "
        "lohnt sich nicht zu leben, leben ist nicht lebenswert, am liebsten tot, am liebsten wär ich tot, am liebsten "
        "nicht mehr da, nicht mehr da sein will, wär ich nur tot, wäre ich doch tot, ich wünschte ich wäre tot, "
        "wünschte ich wär tot, will nicht mehr, mag nicht mehr leben, nicht mehr weiter leben, nie wieder aufwachen, "
        "nie mehr aufwachen, nicht mehr wach werden, nimmer wach werden, nicht mehr aufstehen und, einfach "
        "verschwinden, einfach weg sein, für immer schlafen, für immer einschlafen, einfach einschlafen, ohne mich "
        "wäre es, wär besser ich wär nicht, wenn es mich nicht mehr, wenn es mich nicht gäbe, mich nicht mehr gäbe, "
        "mich nicht mehr gibt, froh wenn ich weg, nicht mehr lebe, lieber sterben, sterbn, will sterbn, mag sterbn, "
        "leben hat keinen sinn, das leben satt, leben müde, nüme läbe, möcht nüme, wott nüme läbe, wott nüm, mag nüm "
        "läbe, nicht mehr am leben, nicht mehr leben will, nümme läbe, nüme da si, am liebschte tot, nimma do sei, "
        "nimma aufwachen, nimma aufwocha, nüme erwache, mog nimma lebn, mog nimma, tot umfallen, tot umfallen würde, "
        "würd am liebsten tot, nie wieder aufzuwachen, nicht mehr aufzuwachen, nicht mehr wach, einfach nicht mehr "
        "da, nicht mehr existier*, aufhören zu existieren, weg sein für immer, für immer weg, verschwinden für immer, "
        "welt ohne mich, alle ohne mich, leben ist eine qual, leben ist nur, wozu lebe ich, warum lebe ich, wofür "
        "lebe ich, will sterbe, wett sterbe, wött sterbe, wär lieber gstorbe, leben nicht mehr, halte das leben "
        "nicht, halt das leben nicht, nicht mehr ertragen zu leben, gar nicht mehr leben, todesgedanken, an den tod, "
        "ans sterben, tod wäre, der tod, mag nimmer leben, will nicht mehr leben, will nimmer leben, nimmer da sein, "
        "möcht sterben, wär ich doch tot, keinen lebenswillen, wünschte ich wäre tot, wollt ich wär tot, will nicht "
        "mehr hier sein, mag nicht mehr da sein, wär besser tot, wäre besser tot, will weg von dieser welt, soll "
        "alles aufhören, soll einfach aufhören, nicht mehr leben möchte, nicht mehr leben wollen, wenn ich tot wär, "
        "wenn ich tot wäre, mein leben beenden, hoffe ich wache nicht, lieber nicht mehr aufwachen, vom leben genug, "
        "morgen nicht aufwachen, einfach nicht mehr da sein, will nicht mehr da sein, möchte nicht mehr da sein, wär "
        "nimmer da, wäre nimmer da, wär nicht mehr da, wäre nicht mehr da, wär ich nicht mehr da, wär ich nimmer da, "
        "wäre ich nicht mehr da, wäre ich nimmer da, wenn ich nicht mehr da bin, lieber nimmer da, lieber nicht mehr "
        "da, am liebsten nimmer da, am liebsten nicht mehr aufwachen, am liebsten nimmer aufwachen, am liebsten "
        "einschlafen und, lieber nicht mehr leben, wär i nimmer, wär i nimma, i mag nimma leben, mag nüme lebe, wott "
        "nüme lebe, wett nüme lebe, möcht nimmer leben, möchte nimmer leben, möcht nicht mehr leben, möchte nicht "
        "mehr aufwachen, möcht nicht mehr aufwachen, nimmer aufwachn, keinen lebensmut, lebenswille weg, leben ist "
        "nichts mehr wert, leben nix mehr wert, leben nicht mehr lebenswert, nicht lebenswert, ohne mich besser dran, "
        "besser wenn ich nicht, besser wenns mich nicht, wenns mich nicht gäbe, besser wenn ich morgen früh, besser "
        "wenn ich nicht mehr, besser wenn ich nimmer, einfach nicht mehr aufwache, nimmer aufwache, nie mehr "
        "aufwache, einschlafen und nicht mehr, einschlafen und nimmer, einfach einschlafen für immer, besser tot, "
        "will ned mehr leben, will nicht mehr sein, will nimmer da sein, am liebsten würd ich sterben, am liebsten "
        "sterben, will tot sein, nur noch sterben, hoffe ich wach nicht mehr auf, hoffe ich wache nicht mehr auf, bet "
        "dass ich nicht mehr, keinen grund mehr zu leben, kein grund mehr zu leben, keinen grund zu leben, wären alle "
        "besser dran, niemand würde mich vermissen, fällt keinem auf wenn ich, lebenslust verloren, lebenswillen "
        "verloren, lebensfreude verloren, "
        "ohne mich wärs, lieber gar nicht mehr"
    ),
    C.HOPELESS: (
        "mich .. aufgegeben, habe mich aufgegeben, "
        "will aufgeben, möchte aufgeben, gebe auf mit allem, in einem loch, im tiefen loch, tiefes loch, fühle mich "
        "nutzlos, bin nutzlos, bin ein versager, so ein versager, "
        "keinen sinn mehr, kein sinn mehr, alles keinen sinn, alles sinnlos, sinnlos, aussichtslos, "
        "hoffnungslos, keine hoffnung, keine hoffnung mehr, mich aufgegeben, aufgegeben, gebe auf, geb auf, "
        "keinen ausweg, kein ausweg, wird eh nie besser, wird nie besser, wird nie wieder, nie wieder gut, "
        "nicht mehr weiter, weiß nicht mehr weiter, kann nicht mehr, ich kann nimmer, mag nimmer, ich mag nicht mehr, "
        "keine zukunft, bringt doch nichts, bringt alles nichts, wozu noch, wozu das alles, wofür noch, "
        "hat doch keinen zweck, keinen zweck mehr, verzweifelt, verzweiflung, am ende mit, bin am ende, "
        "nur eine last, allen zur last, zur last, wertlos, nichts wert, keine kraft mehr weiter, "
        "keine perspektive, sehe kein licht, kein licht, alles hoffnungslos, alles egal, ist mir alles egal, "
        "schwarzes loch, kein ziel mehr, was soll das alles noch, nichts hat mehr, hoffnung verloren, "
        "hab keine hoffnung, jede hoffnung, sehe keinen weg, seh keinen weg, seh keinen ausweg, "
        "sehe keine lösung, kein land in sicht, bringts eh nicht, bringt eh nix, hat eh keinen sinn, "
        "macht keinen sinn mehr, macht alles keinen sinn, alles für die katz, hab aufgegeben, "
        "habe aufgegeben, mag nicht mehr kämpfen, kann nicht mehr kämpfen, keine kraft mehr, "
        "ich packs nicht mehr, pack das nicht mehr, schaff das nicht mehr, schaffe es nicht mehr, "
        "ich schaffs nicht mehr, mir ist nicht zu helfen, nichts macht mehr freude, alles schwarz, "
        "nur noch schwarz, schwarz vor mir, leer innen, innerlich leer, innerlich tot, fühl mich leer, "
        "bin nichts wert, bin wertlos, bin allen eine last, bin nur noch eine last, versager, nutzlos, "
        "unnütz, wozu eigentlich noch, wofür das alles, warum überhaupt noch, kein sinn, kein lichtblick, "
        "keinen lichtblick, ende des tunnels, het doch alles kei sinn, kei sinn meh, hot eh ois koan sinn, "
        "koan sinn, ois wurscht, alles wurscht, alles wurst, mir alles wurscht, ma ois wurscht, "
        "ist alles sinnlos, sinnlosigkeit, ohne sinn, hoffnungslosigkeit, ohne hoffnung, keine hoffnung auf, "
        "nix wird besser, nichts wird besser, nix mehr besser, wird nix mehr, wird nichts mehr, "
        "des wird nimma, für mich kommt nichts, kommt nichts gutes, nichts gutes mehr, keinen grund mehr, "
        "kein grund mehr, keine freude mehr, an nichts mehr freude, aufgeben, will aufgeben, "
        "möchte aufgeben, gib auf, gebs auf, geb mich auf, hab resigniert, resigniert, am boden zerstört, "
        "ganz unten, tiefpunkt, loch, im loch, dunkles loch, tiefes loch, falle in ein loch, nur dunkel, "
        "alles dunkel, kein licht mehr, sackgasse, weiss nümm wiiter, weiß nimmer weiter, woas nimma weida, "
        "weiss nicht mehr weiter, ausweglos, chan nüm, cha nümm, i kann nimma, i ko nimma, i pack des nimma, "
        "halte es nicht mehr aus, halt es nicht mehr aus, halts nicht mehr aus, halts nimmer aus, "
        "ertrage es nicht mehr, mein leben ist vorbei, leben ist vorbei, zu nichts mehr nütze, nichts nütze, "
        "tauge zu nichts, nur im weg, falle allen zur last, fall allen zur last, allen nur zur last, "
        "bin eine last, i ko nimmer, nix wert, halt das nicht mehr aus, niemand würde mich vermissen, "
        "keiner würde mich vermissen, keiner würd mich vermissen, niemand würd mich vermissen, "
        "keiner vermisst mich, niemand braucht mich, keiner braucht mich, hab die nase voll vom leben, "
        "ertrag das nicht mehr, bin ein versager, falle nur zur last, bin allen im weg, alles umsonst"
    ),
    # eating
    C.EATING: (
        "hungere mich, hungern um, abführmittel, abführtablett*, abführtee, essattacke*, fressattacke*, fressanfall*, "
        "fressanfälle, essanfall*, essanfälle, heißhungerattacke*, magersucht, magersüchtig, bulimie, bulimisch, "
        "essstörung*, finger in den hals, finger in hals, finger .. gesteckt, hasse meinen körper, ekel vor meinem "
        "körper, ekle mich vor, angst vor dem essen, angst vorm essen, angst zu essen, esssucht, denke nur noch ans "
        "essen, denke nur noch an mein gewicht, denke nur an mein gewicht, nach dem essen übergebe, nach dem essen "
        "erbrechen, esse kaum, ess kaum, esse fast nichts, ess fast nix, esse nichts mehr, ess nix mehr, traue mich "
        "nicht zu essen, kann nicht aufhören zu essen, kann nicht aufhören mich zu wiegen, wiege mich ständig, wiege "
        "mich zehnmal, angst vorm wiegen, angst vor der waage, angst vor waage, wegen der waage, "
        "entwässerungstablett*, stopfe alles in mich, in mich reingestopft, verbiete mir das essen, verbiet mir zu "
        "essen, nulldiät, appetitzügler, anorexie, kalorien am tag, nur wasser und kaffee, nur kaffee, kotze nach, "
        "kotz nach dem essen, erbreche nach, alles erbrochen damit, essen wieder raus, essen erbrochen, esse "
        "heimlich, heimlich gegessen, verdiene kein essen, nicht verdient zu essen, panik vor dem zunehmen, panik "
        "vorm zunehmen, angst zuzunehmen, angst vorm zunehmen, angst dick zu werden, ganzen kühlschrank leer, "
        "kühlschrank leergefressen, alles leergegessen, stopfe mich voll, vollgestopft bis, fressflash, fresse alles, "
        "hasse meinen bauch, hass meinen körper, ekel mich vor mir, ekle mich vor mir, stelle mich ständig auf die "
        "waage, stell mich ständig auf die waage, zehnmal am tag auf die waage, stündlich auf die waage, wiege mich "
        "stündlich, wieg mich, wieg mich zehnmal, trainiere die kalorien ab, kalorien wegtrainieren, kalorien zähle "
        "zwanghaft, zwanghaft kalorien, lass mahlzeiten aus, mahlzeiten weglassen, aushungern, hungere seit, hunger "
        "mich, hungere, faste damit die waage, fingere in hals, finger i hals, i hunger, hungern, gehungert, faste "
        "extrem, esse nix, ess nichts mehr, nichts mehr essen, nur einen apfel, nur ein apfel, nur salat, hundert "
        "kalorien, 300 kalorien, 500 kalorien, 800 kalorien, kalorien gezählt zwanghaft, jede kalorie, alles "
        "ausgekotzt, wieder ausgekotzt, ausgekotzt, gekotzt damit, kotzen gegangen, kotze heimlich, kotz mich, "
        "heimlich erbrochen, erbrechen nach dem, brechen nach dem essen, spucke das essen, spuck das essen aus, "
        "gebrochen damit, essen erbreche, abführzeug, abführmittl, abführpulver, entwässerung*, appetithemmer, "
        "abnehmpillen, schlankheitspillen, fressattacken, fressorgie, gefressen bis, alles reingestopft, alles in "
        "mich reingefressen, angst vor jedem bissen, angst vor kalorien, angst vor dem zunehmen, angst zu zunehmen, "
        "panik vor der waage, horror vor der waage, schäme mich für meinen körper, schäme mich für das essen, ekel "
        "vor mir, fühl mich fett und, zu fett, fett und eklig, eklig fett, hasse mich nach dem essen, bestrafe mich, "
        "essensentzug, verstecke essen, versteck essen, lasse das essen weg, lass das essen weg, esse nur noch, traue "
        "mich kaum zu essen, trau mich nicht zu essen, trau mich nicht mehr zu essen, essgestört, binge, auf die "
        "waage, nur wasser, kaffee und kaugummi, fressen und kotzen, kotz alles, kotze alles, absichtlich kotzen, "
        "haare gehn büschelweise, büschelweise, angst vor essen, hab angst zu essen, alles wieder rausgekotzt, alles "
        "wieder erbrochen, kalorien, steck mir den finger, stecke mir den finger, drei tagen nichts gegessen, tagen "
        "nichts gegessen, tage nichts gegessen, darf nichts essen, nichts essen vor dem wiegen, heimlich essen, "
        "essanfall, übergebe mich absichtlich, übergeb mich absichtlich, übergebe mich nach, erbreche nach dem essen, "
        "kotze nach dem, panik zuzunehmen, fett und hässlich, find mich zu fett, mich immer noch zu fett, immer noch "
        "zu fett, insulin weg damit, den finger in den hals, schachtel abführmittel, macht mich fett, macht dick, "
        "haare fallen aus, spei alles, keine periode, kaum was runter, krieg kaum was runter, krieg nichts runter, "
        "krieg nix runter, seit tagen kaum was, kein bissen, bringe nichts runter, bring nix runter, kein appetit "
        "seit, seit tagen nichts gegessen, seit tagen nix gegessen, finger im hals, finger .. in den hals, damit das "
        "gewicht runter, kotz danach, kotze danach, kotz nach, brech danach, breche danach, spuck danach, wieder "
        "hochhol*, hol alles wieder hoch, faste mich, abführtropfen, "
        "nur noch wasser, alles wieder raus"
    ),
    C.ON_PURPOSE: (
        "absichtlich, mit absicht, extra, um abzunehmen, zum abnehmen, freiwillig, damit ich nicht, "
        "finger, selbst herbei, heimlich, damit das gewicht, wegen der waage"
    ),
    C.MEAL: (
        "nach dem essen, nach dem abendessen, nach jeder mahlzeit, nach mahlzeiten, nach dem mittag*, "
        "nach jedem essen, mahlzeit, nach der mahlzeit, znacht, nachm essen"
    ),
    C.NOT_EATEN: (
        "nichts gegessen, nix gegessen, nichts mehr gegessen, nix gessn, nichts esse, nichts zu essen, "
        "nicht gegessen, nüt gässe, nüüt gesse, kaum gegessen, esse nichts, ess nix, keinen bissen, "
        "ohne essen, keinen happen, nichts im magen, nichts angerührt, nichts zu mir genommen, "
        "nur wasser getrunken, keine mahlzeit, ned gessn, hab nichts gegessen, fast nichts gegessen"
    ),
    C.FOR_DAYS: (
        "seit, tage, tagen, tagelang, sonntag, montag, dienstag, mittwoch, donnerstag, freitag, samstag, wiegen, "
        "waage, gestern, woche, abnehmen, gewicht, letzte woche, neulich, diesen monat, dieses jahr, seit sommer, "
        "letztens"
    ),
    # swelling
    C.SWOLLEN: (
        "geschwollen, gschwolln, gschwollen, angeschwollen, schwillt, schwellen, schwillt an, "
        "schwellung*, zugeschwollen, anschwellen, anschwillt, dick, dicke, dicker, dickes, aufgequollen, "
        "aufgedunsen, quillt, verschwollen, aufgeschwollen, wie ein ballon, ballon, prall, aufgeblasen, "
        "gschwulle, gschwulla, angelaufen, unförmig, dick und rot, riesig, verdickt, dickes bein, "
        "aufgegangen, aufgebläht, geschwolln, gschwullen, dick an, dick worden, doppelt, gschwoin, "
        "gschwuin, gschwolle, aufgeschwemmt, dick wia, dick wie, dick gworden, dick geworden, wird dick, "
        "werden dick, sind dick, ist dick, geworden dick, ist geschwollen, schwillt immer, aufgepumpt, "
        "verquollen, zugeschwolle, zuagschwoin, gschwilt, wie ein luftballon, luftballon, "
        "wie eine wurst, wulstig, dicki, riesengroß, angeschwolln, aufgegangen wie"
    ),
    C.BIGGER: (
        "doppelt so, dicker als, größer als, viel dicker, doppelte, umfang, umfänglich, dicker, doppelt, "
        "schuh passt nicht, komm nicht in den schuh, komme nicht mehr in den schuh, umfang größer, "
        "dopplet so, doppelt so dick, doppelt so groß, viel größer, dicker wie, viel dicker als, "
        "dicker als das, dicker als die, nicht in den schuh, schuh nicht mehr"
    ),
    C.HOT_OR_RED: (
        "heiß und rot, rot und heiß, heiß und dick, heiss und dick, rot und warm, warm und rot, "
        "überwärmt, heiß und schmerz*, glüht, heiß, heiss, rot, warm, glühend, gerötet, bläulich, "
        "druckschmerz"
    ),
    C.CLOT: "*thrombose*, blutgerinnsel, gerinnsel, blutpfropf",
    C.CLOSING: (
        "geht zu, geht .. zu, zugeht, zugegangen, schnürt, zuschnürt, zugeschnürt, schnürt sich, "
        "schwillt zu, zu, eng, enger, verengt, wie zugeschnürt, macht zu, macht dicht, verschließt, "
        "schlucken, nicht schlucken, zuagangen, abgeschnürt, schwillt, geschwollen, dicht, kloß, "
        "kann nicht schlucken, nicht mehr schlucken, bekomme nichts runter, krieg nichts runter, "
        "wird eng, immer enger, verengt sich, zusammen"
    ),
    C.ALLERGY: (
        "allergisch*, anaphyla*, allergieschock, *nesselsucht, adrenalinpen, epipen, notfallpen, allergie anfall, "
        "ausschlag am ganzen körper .. luft, zugeschwollen, augen zugeschwollen, zunge wird dick, zunge dick, zunge "
        "schwillt, lippen schwellen, lippen dick, schwellen die lippen, gesicht schwillt, hals schwillt zu, rachen "
        "wirds eng, im rachen eng, hals wird eng, hals eng, hals geht zu, quaddeln und, quaddeln überall, überall "
        "quaddeln, allergischer schock, allergische reaktion, stimme ganz piepsig, aagschwulle, angeschwollen im "
        "gesicht, nicht schlucken, lippen werden dick, gesicht geschwollen, gesicht zugeschwollen, gesicht "
        "aufgequollen, hals ist geschwollen, hals schwillt, zunge geschwollen, schock nach, ausschlag am ganzen "
        "körper und, schluck geht nicht, wespenstich und, adrenalin pen, autoinjektor, fastjekt, streuselkuchen, "
        "kehle wie zugebunden, wie zugebunden, zunge wird immer dicker, zungn gschwolln, lippe schwillt, lippen "
        "geschwollen, lippe wie ein ballon, lippen wie schlauchboote, schlauchbootlippen, gesicht ist angeschwollen, "
        "gesicht angeschwollen, augen schwellen zu, auge zugeschwollen, gsicht gschwolln, gsicht gschwulle, hals "
        "macht zu, hals zugeschwollen, kehle geht zu, kehle schwillt, rachen schwillt, rachen zu, allergischen "
        "schock, allergischi reaktion, jext, wespe im mund, wespenstich im hals, wespenstich im mund, biene im mund, "
        "in den mund gestochen, in den hals gestochen, in die zunge gestochen, "
        "quaddeln am ganzen, nesseln am ganzen"
    ),
    C.RASH: (
        "ausschlag, nesseln, quaddeln, juckt überall, juckt am ganzen, jucken am ganzen, rote flecken, "
        "nesselausschlag, pusteln, rote pusteln, hautausschlag, bin überall rot, überall rot, "
        "überall flecken, "
        "ausschlag am ganzen, nesselsucht, nesseln am ganzen, überall rote flecken, pusteln am ganzen"
    ),
    C.TRIGGER: (
        "wespe*, biene*, hornisse, stich, gestochen, nuss, nüsse, erdnuss*, haselnuss*, haselnüsse, walnuss*, "
        "garnelen, krabben, meeresfrüchte, antibiotikum, antibiotika, penicillin, amoxicillin, neue tablette*, "
        "neuen tablette*, neues medikament, neuen medikament, spritze, impfung, sesam, soja, sellerie, haselnuss, "
        "walnuss"
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
        "plötzlich völlig erschöpft, ungewöhnliche müdigkeit, total erschöpft ohne grund, "
        "plötzlich todmüde, plötzlich so müde, auffallend müde, müder als sonst"
    ),
    C.SHARP: (
        "stechend*, verdreht, gezerrt, zerrt, gerissen, riss, geknackt, plötzlich, verrenkt, weggeknickt, verstaucht, "
        "eingeknickt, gestochen, stechen, sticht, gezogen, gezwickt, verrissen, überdehnt, blockiert, geschnalzt, "
        "gschnalzt, peitschenhieb, reingefahren, reingeschossen, knacks, knallt, geknallt, vertreten, umgeknickt, "
        "eingeschossen, stich, verhoben, verspannt plötzlich"
    ),
    C.INJURY: (
        "umgeknickt, zerrung, hexenschuss, muskelfaserriss, muskel gezerrt, was gezerrt, verknackst, "
        "muskelriss, etwas gerissen, bänderriss, wadenkrampf, hexaschuss, verhoben"
    ),
    C.EFFORT: (
        "beim gehen, beim aufsteh*, aufstehtest, beim test, beim training, beim üben, bei der übung, "
        "bei den übungen, nach den übungen, nach der übung, nach dem test, übung*, training*, "
        "vorher nie, neu, seit dem, sport, turnen, gymnastik, laufen, spaziergang, kniebeuge*, "
        "beim spazieren, seither, hinsetzen, beim treppensteigen, "
        "treppentest, stufentest, stuhltest, gehtest, steptest, balancetest, gleichgewichtstest, nach der treppe, "
        "theraband, gummiband, kniebeugen, liegestütze, hampelmänner, ausfallschritte, rudern, schwimmen, joggen, "
        "radfahren, walken, nordic walking, wandern, spazieren, rehasport, herzsport, yoga, pilates, zirkeltraining, "
        "ergometer, crosstrainer, laufband, hanteln, "
        "vom treppensteigen, vom laufen, vom radeln, vom training, vom sport, vom schwimmen, vom joggen, einheit, "
        "stunde im gym"
    ),
    # falls, sugar, water
    C.HEAD: "kopf, hinterkopf, schläfe, stirn, schädel, birne, rübe",
    C.HIT: (
        "angeschlagen, gestoßen, gestossen, angestoßen, aufgeschlagen, angehauen, angehaut, gefallen, "
        "geknallt, hingeknallt, aufgeplatzt, geschlagen, gekracht, gedonnert, geprallt, aufgeprallt, "
        "gestürzt, draufgefallen, angerempelt, getroffen, platzwunde"
    ),
    C.HEAD_INJURY: (
        "gehirnerschütterung, schädelbruch, schädelhirntrauma, kopfverletzung, platzwunde am kopf, kopf aufgeplatzt, "
        "pupille größer, eine pupille, pupillen verschieden, pupillen unterschiedlich, auf den hinterkopf, an die "
        "schläfe, beule am kopf, auf den kopf gestürzt, gefallen auf den kopf, kopf gestoßen, kopf gestossen, kopf "
        "angehauen, kopf blutet, hinterkopf blutet, blut aus dem ohr, beule an der stirn, aus dem ohr, klare "
        "flüssigkeit, kopfüber gestürzt, ohne helm gestürzt, gestürzt ohne helm, hirnerschütterung, kopf aufgehaut, "
        "kopfweh seit dem sturz, kopfschmerzen seit dem sturz, übel seit dem sturz, erbrochen seit dem sturz, beule "
        "wie ein ei, beule und mir ist, pupillen ungleich, eine pupille größer, "
        "auf den kopf gefallen, loch im kopf, kopf aufgeschlagen"
    ),
    C.THINNERS: "blutverdünner, marcumar, eliquis, xarelto, apixaban, gerinnungshemmer",
    C.SUGAR: ("zucker, blutzucker, zuckerwert, bz, glukose, zuckerwerte, traubenzucker, dextro, glukosegel"),
    C.SUGAR_LOW: (
        "niedrig, zu niedrig, tief, zu tief, im keller, abgestürzt, abgesackt, runter, gefallen, unten, sinkt, fällt"
    ),
    C.HYPO: (
        "unterzucker*, hypo, hypoglyk*, zuckerschock, unterzuckert, insulinschock, hypos, unterzucker, "
        "im unterzucker, zucker im keller, zucker niedrig, zucker ist unten, zucker abgesackt, hab hypo, "
        "unterzuckerung, zucker ist im keller, zucker abgestürzt, zucker runter auf, zucker auf 2, zucker auf 3, "
        "zucker bei 2, zucker geht nicht hoch, zucker kommt nicht hoch, zucker steigt nicht, bin tief im zucker, "
        "zucker viel zu tief, zucker zu tief, zucker zu niedrig, zeigt lo, zeigt lo an, zeigt low, sensor schreit, "
        "sensor piepst tief"
    ),
    C.INHALER: (
        "spray, inhalator, asthmaspray, salbutamol, asthma, sultanol, notfallspray, blaue spray, viani, "
        "nitrospray, nitro, nitrokapsel, peak flow, peakflow, vernebler, pari"
    ),
    C.NO_USE: (
        "hilft nicht, hilft nix, hilft nichts, bringt nix, bringt nichts, bringt gar nix, wirkt nicht, "
        "wirkt nix, nützt nix, nützt nichts, hilft net, hilft ned, anfall, ganz arg, ganz schlimm, leer, "
        "schlimm, hilft nimmer, "
        "wirkt ned, keine wirkung, keine besserung, im roten bereich, im keller, hat nichts gebracht, hat nix "
        "gebracht, hat nicht geholfen, nicht geholfen"
    ),
    C.PLAN: (
        "plan, geplant, durchgeplant, alles vorbereitet, vorbereitet, überlegt wie, überlegt wie ich, schon "
        "überlegt wie ichs, mir überlegt wie, überlege wie, weiß schon wie, weiß auch schon wie"
    ),
    C.BRINK: (
        "an der brücke, auf dem geländer, am geländer der brücke, an den gleisen, "
        "auf der brücke, auf dem dach, am abgrund, auf den gleisen, am gleis, auf dem geländer, "
        "am fenstersims, auf der brüstung, vor dem zug, am bahnsteigrand"
    ),
    C.URINATE: ("pinkeln, urin lassen, wasser lassen, wasserlassen, pieseln, bieseln, aufs klo, pissen, urinieren"),
    C.GROIN: (
        "zwischen den beinen, schritt, leiste, intimbereich, genitalbereich, untenrum, damm, am po, am hintern, "
        "abwischen, beim abwischen, reithosen, zwische de bei, unten rum, da unten, im schritt, beim klo, am gesäß"
    ),
    C.FAST_RATE: "hundertfünfzig, hundertsechzig, hundertsiebzig, hundertachtzig, über hundertfünfzig",
    C.METER: (
        "messgerät, gerät, sensor, libre, wert, apparat, dexcom, messer, zuckermessgerät, blutzuckermessgerät, "
        "diabetiker, diabetikerin, zuckerkrank, zuckerkranke, zuckerkranker"
    ),
    C.SHAKY: ("zittr*, zitter*, schwitz*, verschwitzt, schweiß*, kaltschweiß*, bibber*, schlotter*, ganz verschwitzt"),
    # a cry for help
    C.CRY: (
        "sos, rettung rufen, holt hilfe, hol hilfe, hilfe holen, holt einen arzt, brauche hilfe sofort, brauch "
        "sofort hilfe, brauche sofort hilfe, brauche dringend hilfe, brauch dringend hilfe, brauche einen "
        "krankenwagen, brauche einen notarzt, zu hilfe, brauch an notarzt, rettet mich, hüfe, kann nicht aufstehen "
        "und bin allein, komm nicht mehr vom boden hoch, komme nicht mehr vom boden hoch, liege am boden, lieg am "
        "boden, lieg auf dem boden, liege auf dem boden, bitte schnell kommen, kommt schnell, komm schnell, kommen "
        "sie schnell, jemand muss kommen, brauch einen krankenwagen, brauche rettung, brauch die rettung, hilfe "
        "hilfe, hilfe ich bin gestürzt, bin gestürzt, bin hingefallen und, ich liege hier, komm nicht mehr auf, "
        "komme nicht mehr auf, chume nüm uf, chumm nüm uf, kimm nimma auf, krieg mich nicht mehr hoch, kann nicht "
        "mehr aufstehen, kann nicht aufstehen, kann nimmer aufstehen, rettung bitte, rettung schnell, krankenwagen "
        "bitte, krankenwagen schnell, notarzt bitte, notarzt schnell, brauche notarzt, brauch notarzt, brauche "
        "krankenwagen, brauch krankenwagen, bruche krankewage, bruche en arzt, schickt wen, schickt jemanden, "
        "schick jemanden, schicken sie jemanden, schicken sie wen, ich muss ins krankenhaus, muss sofort ins, "
        "bringt mich ins krankenhaus, ins spital sofort, holt wen, holt jemand, ruft wen, brauche rettungswagen, "
        "brauch rettungswagen, ruf die rettung, holt die rettung, brauch den notarzt, brauche den notarzt, brauch "
        "einen notarzt, bitte 112, 112 bitte, 112 schnell, ruf 112, ruft 112, ruf den notarzt, ruft den notarzt, "
        "ruft einen krankenwagen, ruf einen krankenwagen, ruf die 144, bitte kommt schnell, schnell hilfe, es ist "
        "ein notfall, ruft jemand, ruf jemand, jemand den notarzt, kann jemand kommen, bitte kommt, bitte kommen "
        "sie, brauche sofort einen arzt, brauch sofort einen arzt, brauch an doktor, arzt sofort, schickt einen "
        "krankenwagen, schick hilfe, schickt hilfe, muss sofort ins krankenhaus, komm nicht hoch, komm nicht mehr "
        "hoch, hilfe ich, krankenhaus anrufen, kann bitte wer kommen, kann bitte jemand kommen, bin allein und hab "
        "angst, soll wer kommen, ruf hilfe, rufe hilfe, ruft hilfe, hilfe rufen, hilfe schnell, rufen sie hilfe, "
        "brauche hilfe jetzt, brauch hilfe jetzt, rufen sie jemanden, rufen sie wen, ruft jemanden, ruf jemanden, "
        "bitte jemanden anrufen, ruft bitte jemanden, bitte hilfe ruf*"
    ),
    C.HELP_ME: (
        "hilfe, helft mir, hilf mir, helfen sie mir, hüf, hilft mir denn keiner, brauche jemanden, "
        "brauch jemanden, brauch wen, brauche hilfe, brauch hilfe, hilf ma, hälf mer, hälfed mer, "
        "brauch jetzt jemanden, brauche einen arzt, brauch einen arzt, brauch jemand, helfed mer, "
        "helfts ma, helfts mir, hilfe bitte, hilfä, hüfe, hilfee, brauch hilf, bruche hilf, bruch hilf, "
        "bruuch hilf, brauch a hilf, brauche jemand, kann mir wer helfen, kann mir jemand helfen, "
        "kann jemand kommen, kann wer kommen, bitte helfen"
    ),
    C.URGENT: (
        "sofort, jetzt, schnell, dringend, bitte schnell, !!, am boden, auf dem boden, alleine, allein, "
        "bin allein, komm nicht hoch, komme nicht hoch, nicht mehr hoch, komm nimmer hoch, gleich, gestürzt, "
        "eilig, schnäll, schnei, mir geht es schlecht, mir gehts schlecht, ganz schlecht, was stimmt nicht, "
        "🚑, 🆘, gfalln, beeil*, nicht allein aufstehen, sehr schlecht, gehts schlecht"
    ),
    C.CALL: (
        "ruf, rufen, rufe, ruft, holen, hol, holt, alarmier*, brauche, brauch, verständig*, schick, "
        "schickt, schicken, anrufen, wählen, rüef, rüefed, rüfed, lüt, ruaf, ruaft, hoid, hoit, holts, "
        "rufts, verständigt, ruft bitte, rufe bitte, bitte rufen, brauche sofort, brauch sofort"
    ),
    C.AMBULANCE: (
        "notarzt, krankenwagen, rettungswagen, rettung, sanitäter, sanka, ambulanz, 112, 144, 110, rettungsdienst, "
        "den arzt, notruf, an doktor, doktor sofort, chrankewage, krankewage, rettig, notaarzt, doktor, arzt, "
        "sanität, santität, rotes kreuz, feuerwehr, notfallsanitäter, notdienst"
    ),
    C.DYING: (
        "ich sterbe, sterbe gleich, glaub ich sterb, glaub ich sterbe, i stirb, liege im sterben, werde sterben, "
        "muss sterben, geht zu ende mit mir, glaube ich sterbe, sterbe jetzt, todesangst, das ist das ende, "
        "mit mir gehts zu ende, i stirb glei, fast gestorben, beinahe gestorben, fast draufgegangen, "
        "beinah gestorben, wär ich fast gestorben, wär ich fast an, fast an nem"
    ),
    # how it is said
    C.NO: (
        "kein, keine, keinen, keinem, keiner, keinerlei, nicht, nie, niemals, ohne, weder, nichts, frei von, keins, "
        "kein*, nix, net, ned, nöd, nit, nimma, nimmer, koa, kei, koan, null, nicht mal, nicht einmal, "
        "tu mir nichts, tue mir nichts, nei, na, nee, nö, niemand, keinmal, nirgends, braucht keiner, "
        "brauche nicht, nienieds, kein einziges mal"
    ),
    C.NO_AFTER: (
        "will ich mich nicht, will ich mir nicht, will ich nicht, wurde mir nicht, wurde mir diesmal nicht, wurde mir "
        "heute nicht, wird mir nicht, ist mir nicht, war mir nicht, ist mir heute nicht, habe ich heute nicht, hab ich "
        "heute nicht, "
        "nein, nicht, nicht mehr, keine, keinen, keins, kein, keiner, nie, negativ, nö, keinerlei, gar nicht, "
        "überhaupt nicht, ned, net, nicht gehabt, nicht da, fehlanzeige, null, nicht vorhanden, ueberhaupt nicht, "
        "koane, kei, keinster weise, nix, niemals, keinmal, kein einziges mal, nicht einmal, nirgends, nüt, nix "
        "gwesn, fehlt, war ich nicht, bin ich nicht, hab ich nicht, habe ich nicht, hatte ich nicht, war ich nicht "
        "hab, nix mehr, nichts mehr, gar nix, überhaupt nix, überhaupt nichts, na, überhaupt ned, überhaupt net, "
        "überhaupt nöd, überhaupt nit, nirgends was, nirgendwo was, gar net, gar ned, keine gott sei dank, keiner "
        "gott sei dank, nicht gott sei dank, nix gott sei dank, "
        "bin ich nicht keine sorge, war ich nicht keine sorge, hab ich nicht keine sorge, habe ich nicht keine sorge, "
        "hatte ich nicht keine sorge, nicht keine sorge, nicht keine angst, keine keine sorge, nein keine sorge, bin "
        "i ned, bin i net, hab i ned, hab i net, han i nöd, bin i nöd, "
        "hab ich keine gehabt, habe ich keine gehabt, keine gehabt, keinen gehabt, hab ich keinen, hab ich keins, "
        "habe ich keine, hab ich keine, hab ich nicht gehabt, kommt nicht vor, gab es keine, gabs keine, gab's nicht"
    ),
    C.BETWEEN: (
        "ich, habe, hab, hatte, gehabt, bin, war, mir, mich, ist, sind, in, im, der, die, das, den, dem, "
        "mein, meine, meiner, meinem, meinen, mehr, irgendwelche, irgendeine, heute, an, am, verspüre, "
        "spüre, gespürt, auch, wirklich, anzeichen, symptome, von, für, einen, eine, ein, einem, es, "
        "tut, zur, zeit, momentan, bisher, überhaupt, gar, starken, starke, neuen, neue, bei, beim, "
        "wird, wurde, art, derzeit, da, links, irgendwelch*, irgendwie, oder so, so, was, etwas, "
        "irgendwas, richtig, mal, diesmal, neu, nach, übungen, jemals, ja, halt, einmal, spürbar*, i, "
        "hob, han, ha, gemerkt, hast, gibt, gab, gabs, zu, sehen, feststellen, bemerkt, problem*, "
        "beschwerden, spur, gefühl, gedanken, seh, merke, merk, dran, da drin, beiden, extra, beide, "
        "geworden, gewesen, wor, gwesn, ischt, isch, is, denk, denke, diese, dieser, woche, wia, mi, "
        "mer, immer, zum, glück, gott, sei, dank, auf, aus, wo, sonst, denn, tropfen, einzigen, "
        "einziges, einzige, einzigen tropfen, weit, breit, brauch, brauche, braucht, irgendeinem, "
        "irgendeinen, sorte, dergleichen, sonstige, weiteren, weitere, ganzen, tag, letzten, tagen, "
        "letzter, "
        "daran, darüber, drüber, danach, vor"
    ),
    C.AND: "und, &, sowie",
    C.NOR: "oder, noch",
    C.BUT: "aber, jedoch, allerdings, sondern, trotzdem, dafür, stattdessen, nur dass, aba, abr",
    C.CLAUSE: "weil, obwohl, nur, dann, denn, warum, wieso, weshalb, dass, als ob, seit ich",
    C.FINE: (
        "bestens, gut, normal, ok, okay, in ordnung, prima, super, frei, problemlos, regelmäßig, ruhig, unauffällig, "
        "wie immer, alles gut, passt, top, tadellos, klar, fehlt nichts, fehlt nix, zufrieden, glücklich, froh, "
        "stolz, gut getan, happy, super gut, hat spaß gemacht, tat gut, angenehm, wie ein adler, wie ein luchs, wie "
        "ein junger gott, wie ein uhrwerk, wie geschmiert, wie ein baby, wie ein stein, wie ein murmeltier, wie neu, "
        "wie neugeboren, tipptopp, pico bello, wie eine eins, war lustig, war schön, aber schön, super schön, toll, "
        "war toll, herrlich, spaß gemacht, perfekt, fein, gut so, voll gut, hat gut getan, soll ja so sein, soll so "
        "sein, so soll es sein, so solls sein, gehört dazu, gehört sich so, ist ja normal, ganz normal, wie es sein "
        "soll, wie's sein soll, passt schon, so muss es sein, wieder normal, minute wieder normal, alles im lot, im "
        "lot, funktioniert, praktisch, geht prima, geht gut, geht super, läuft prima, läuft gut, super geklappt, hat "
        "geklappt, wie am schnürchen, keine probleme, wunderbar, einwandfrei, tiptop, tip top, supi, leiwand, bärig, "
        "guat, "
        "pflaster drauf, pflaster drüber, pflaster druff"
    ),
    C.PAST: (
        "letztes jahr, letzten jahr, vor jahren, vor monaten, früher, damals, als kind, letzten monat, letzten "
        "sommer, letzten winter, jahren, monaten, jahre her, monate her, vor einem jahr, vor langer zeit, in der "
        "vergangenheit, vor der operation, 19##, 20##, jahrzehnte*, jahre, jahr her, jahrzehnten, früher mal, als "
        "junges, als junger, als bub, als mädchen, als jugendlich*, in der jugend, im studium, in der schule, in "
        "meiner jugend, kindheit, mit neunzehn, mit zwanzig, längst ausgeheilt, längst vorbei, seither nie, seither "
        "nichts, seitdem nie, seitdem nichts, seitdem ruhe, ausgewachsen, joar, johr, jahre zruck, vor jahr*, vor "
        "langem, lange her, ewig her, lang her, vor ewigkeiten, anno, anderes leben, nie wieder, als ich klein war, "
        "als ich jung war, war mal, schon lange vorbei, in den achtzigern, in den neunzigern, voriges jahr, letzts "
        "jahr, seit den stents, vor x jahren, i mim studium, als teenager, als jugendliche, früener, früher einmal, "
        "ewigkeiten, seit jahren nichts, seit jahren nicht, seit jahren keine, seither ruhe, seither gut, seitdem "
        "gut, überstanden, ausgeheilt, verheilt, auskuriert, längst vergangen, mit dreißig, mit 20, mit 30, mit 18, "
        "mit 12, schulzeit, ausbildung, beim bund, nach der geburt, nach der op damals, lange vorbei, geschichte, "
        "vergangenheit, vor mehreren, etliche jahre, ewig, jugend, jung war, in der schwangerschaft, als ich "
        "schwanger, schwanger mit, bei der geburt, nach der scheidung, in der lehre, mit achtzehn, mit sechzehn, "
        "mit vierzig, mit 40, mit 16, in jungen jahren, in meinen zwanzigern, als student, als lehrling, als "
        "teenie, vor langer, früher hatte, lang is her, scho lang her, i de schuel, als junge frau, als junger "
        "mann, als baby, als kleinkind, vor urzeiten, in meiner kindheit, vor corona, im letzten jahrhundert, vor "
        "zwei jahren, vor drei jahren, hinter mir, lange hinter mir, überwunden, vor zehn joar, in den zwanzigern, "
        "mit anfang zwanzig, 1988, mit 7, mit 48, foifjährigs, seit langem gesund, seit jahren gesund, seither nix, "
        "in der zweiten schwangerschaft, ist jetzt 26, mit ## wollte, mit ## war, mit ## hab, mit ## habe, mit ## "
        "hatte, mit ## bin, mit ## mal, bei der bundeswehr, beim militär, beim bundesheer, als bua, als kleiner, "
        "als kleine, als junges mädchen, als bub wär, vor zwei wochen, vor drei wochen, vor vier wochen, vor "
        "wochen, vor ein paar wochen, vor einigen wochen, vorigen monat, alte gesichtslähmung, alte lähmung, alte "
        "geschichte, alte verletzung, alter bruch, seither is ruhe, seitdem is ruhe, seither keine, seitdem keine, "
        "seither kein, seitdem kein, seither nicht, seitdem nicht, seither alles gut, seitdem alles gut, seither "
        "ist ruhe, seitdem ist ruhe, seitdem okay, seither okay, "
        "hatte mit ##, hab mit ##, habe mit ##, bekam mit ##, war mit ##, im frühling, im frühjahr, im sommer, im "
        "herbst, im winter, im letzten sommer, letztes frühjahr, letzten frühling, letzten herbst, an weihnachten, zu "
        "ostern, im vorjahr, in meinen dreißigern, mit siebzehn, mit fünfzehn, mit vierzehn, mit zwölf, mit zehn"
    ),
    C.NOW: (
        "jetzt, grad, gerade, grade, gerade jetzt, im moment, momentan, aktuell, heute, heut, heit, "
        "eben, immer noch, noch immer, seit heute, seit gestern, seit heut, seit einer stunde, "
        "seit einer halben stunde, schon wieder, erneut, jetz, soeben, zur stunde, hüt"
    ),
    C.JUST_NOW: (
        "grad eben, gerade eben, eben, vor minuten, vor fünf minuten, vor ein paar minuten, minuten, "
        "vor einer minute, vor kurzem, soeben, vor zehn minuten, vorhin grad"
    ),
    C.EARLIER: ("vorhin, heute früh, heute morgen, heut früh, heute mittag, vor einer stunde, heute vormittag"),
    C.SETTLED: (
        "verschwunden, nachgelassen, aufgehört, vergangen, wieder gut, abgeklungen, wieder besser, jetzt besser, "
        "besser geworden, gelegt, wieder in ordnung, ist weg, wieder weg, ist vorbei, hat sich gelegt, hat "
        "nachgelassen, hat aufgehört, isch weg, weggegangen, ging weg, ging wieder weg, wieder weggegangen, is weg, "
        "jetzt weg, schon weg, nun weg, weg jetzt, aber weg, dann weg, war weg, ganz weg, weg is, weg ist, weg war, "
        "nicht mehr da, ist nicht mehr, tut nicht mehr, spür ich nicht mehr, ging vorbei, wieder vorbei, schon "
        "vorbei, jetzt vorbei, war vorbei, vorbei jetzt, ging vorüber, vorübergegangen"
    ),
    C.IMAGINED: (
        "was wenn, wenn ich, wenn man, falls, ob, angst vor, sorge vor, sorgen wegen, fürchte, risiko, "
        "symptome von, symptome für, anzeichen für, anzeichen von, vorbeugen, verhindern, kann man, "
        "was ist wenn, was ist, was sind, gelesen, geträumt, traum, gehört von, ist es normal, "
        "woran erkenne, woran erkennt, unterschied zwischen, glaube nicht, glaub nicht, wie merkt man, "
        "wie erkennt man, wie merke ich, aus neugier, neugierig, artikel, würde man, wie fühlt sich, "
        "kann .. auslösen, bei einem, was tun bei, was macht man, "
        "ab wann spricht man, wann spricht man, was versteht man, was bedeutet, "
        "welche anzeichen, welche symptome, welche warnzeichen, häufige nebenwirkung, nebenwirkung von, "
        "nebenwirkungen von, ab wann gilt, wann gilt, ab welchem wert"
    ),
    C.OTHERS: (
        "mutter, mama, vater, papa, mann, frau, sohn, tochter, freund, freundin, nachbar, nachbarin, bruder, "
        "schwester, er, oma, opa, tante, onkel, kollege, kollegin, hund, katze, jemand, leute, schwager, "
        "schwägerin, partner, partnerin, bekannter, bekannte, seine, seinen, ihre, mami, papi, nachbar*, kolleg*, "
        "bekannte*, enkel*, kind, baby, kumpel, spezl, cousin*, neffe, nichte, schwiegermutter, schwiegervater, "
        "schwieger*, mitbewohner*, junge, bub, mädel, kleiner, kleine, sie wird, mei mo, vadder, muddi, gspänli, "
        "kundin, kunde, passant, patient, grosi, mueter, vatter, chind, göttergatte, gatte, gattin, chef, chefin, "
        "grossmutter, großmutter, großvater, typ, sie hat, er hat, er ist, sie ist, er kriegt, sie kriegt, enkel, "
        "grossvater, großvadda, muater, mamma, vadda, bua, madl, dirndl, goof, meitli, bueb, chline, kleins, "
        "freundi, kollegi, nochbarin, nochba, schwoger, großonkel, kumpan, mitarbeiter*, seniorin, patientin, "
        "zimmernachbar*, untermieter*, pflegekraft, lehrerin, lehrer, schüler, fremder, fremde, frau neben, mann "
        "neben, eltern, zwilling, stiefsohn, stieftochter, stiefvater, patenkind, göttin, unser kleiner, unserm "
        "kleinen, unsere kleine, unserem kleinen, kleines kind, mein kleiner, meine kleine, klein, kleinem kind, da "
        "hatte einer, einen hats, da hats einen"
    ),
    C.ELSEWHERE: (
        "gelesen, mit dem heli, skifahrer, am telefon erzählt, drogentote, "
        "hatte, krankenhaus, klinik, spital, intensivstation, intensiv, letztes jahr, letzte woche, letzten monat, "
        "letzten sommer, gestorben, gstorbn, verstorben, beerdigung, gestern, in kanada, beim arzt, in behandlung, "
        "in kur, in reha, reha, friedhof, selig, wieder zuhause, wieder gesund, geht ihm wieder gut, geht ihr "
        "wieder gut, vorgestern, im büro, auf arbeit, in der arbeit, in der besprechung, seit der geburt, von klein "
        "auf, am sonntag, am montag, am dienstag, am mittwoch, am donnerstag, am freitag, am samstag, damals, "
        "jahre, jahren, im urlaub, in amerika, im ausland"
    ),
    C.MINE: ("ich, mir, mich, mein, meine, meiner, meinem, meinen, i, mei, mer, ma, mi, hob i, hab, han i, bin"),
    C.DONT_KNOW: (
        "weiß nicht, weiss nicht, weiß ich nicht, keine ahnung, ka, versteh die frage nicht, verstehe die frage "
        "nicht, verstehe nicht, versteh nicht, was meinst, wie meinen, was soll, hä, wie bitte, kann ich mit, mit "
        "wem, weiß net, woas ned, weiss nöd, was denn, wie jetzt, welche frage, vergiss nicht, vergiss mich nicht, "
        "nicht vergessen, vergesst mich nicht, mach dir keine sorgen, keine sorge, kein problem, keine eile, kein "
        "stress"
    ),
    C.FILLER: (
        "bitte, so, ganz, sehr, total, echt, wirklich, schon, noch, halt, grad, gerade, jetzt, auch, "
        "mal, ja, doch, eh, eben, bissl, bisschen, ein bisschen, etwas, richtig, voll, ziemlich, wieder, "
        "plötzlich, immer, mir, mich, sich, ich, es, i, ein, eine, einen, der, die, das, den, dem, mein, "
        "meine, meinen, meinem, no, am, im, verdammt, sau, urig, mega, recht, einfach, glaub, "
        "auf einmal, a, mi, hab, habe, ist, bin, war, gar, überhaupt"
    ),
}

ANSWERS: dict[Answer, str] = {
    Answer.YES: (
        "ja, jo, jaa, jup, jap, jep, joa, freilich, klar, sicher, genau, natürlich, jetzt, grad jetz, "
        "gerade jetzt, immer noch, ist grad akut, akut, bei mir, hört nicht auf, wird schlimmer, "
        "schlimmer, schnell bitte, ja schnell, stimmt, doch, bin ich, ich, richtig, im moment ja, "
        "noch da, noch immer, eh, eh klar, jawohl, tut noch weh, tut immer noch weh, passiert gerade, "
        "scho, scho no, leider ja, in diesem moment, andauernd, yes, logisch, gwüss, allerdings, "
        "absolut, sehr"
    ),
    Answer.HESITANT: (
        "glaub schon, glaube schon, glaub ja, ich glaube, bissl, ein bisschen, bisschen, a bissl, "
        "so halb, kommt und geht, denk mal, denke schon, denk schon, wahrscheinlich, schwer zu sagen, "
        "ganz weg ists nicht, nicht ganz weg, nicht ganz vorbei, noch nicht ganz, nur leicht, leicht, "
        "chli, es bitzli, no chli, spürs noch, spür es noch, merke es noch, vielleicht, mag sein, "
        "kann sein, könnte sein, eventuell, möglich, möglicherweise, vermutlich, mehr oder weniger, "
        "teilweise, ab und zu, irgendwie schon, irgendwie, ziemlich, ein wenig, etwas, so ungefähr, "
        "gfühlt scho, glaub scho, i glaub, schätze schon, schätz schon, weiß nicht recht, jein, "
        "halbwegs, wohl ja, wohl schon, schwächer, mal so mal so"
    ),
    Answer.NO: (
        "nein, nö, na, nei, ne, nee, nein nein, nicht, im moment nicht, gar nicht, überhaupt nicht, "
        "jetzt nicht, nicht jetzt, gerade nicht, negativ, na na, koa, naa, niemals, keineswegs, nichts, "
        "nix, mir gehts gut, alles gut, mir geht es gut, alles ok, auf keinen fall, ach was, iwo"
    ),
    Answer.OVER: (
        "ist wieder weg, wieder weg, weg, vorbei, schon rum, rum, hat sich gelegt, gelegt, stunde ruhe, "
        "ruhe, gestern, seither, vorhin, nicht mehr, nimmer, nimma, jahre her, jahre, isch verbii, "
        "verbii, war vorher, war früher, früher, aufgehört, vergangen, besser, wieder gut, passts, "
        "überstanden, nachgelassen, verschwunden, war mal, letzte woche, abgeklungen, fertig, damals, "
        "ausgestanden, geht wieder, längst"
    ),
    Answer.OTHER_PERSON: (
        "nicht ich, ned i, net i, nöd ich, jemand anders, jemand anderes, anderer, neben mir, "
        "bei mir ist, hier bei mir, sie ist hier, er ist hier, nicht bei mir, bei ihm, bei ihr, "
        "wer anderer, bi ire, bi ihm, für meinen, für meine, betrifft mich nicht, nicht mich, "
        "sondern meine, sondern mein"
    ),
    Answer.NOT_A_SIGN: (
        "spaß, war nur spaß, witz, scherz, redensart, redewendung, autokorrektur, fernsehen, "
        "falsch verstanden, missverständnis, missverstanden, sagt ma halt so, sagt man so, "
        "nur so gesagt, so gesagt, sprichwort, fußball, frage, waschmaschine, film, serie, vertippt, "
        "verschrieben, tippfehler, nicht so gemeint, nicht ernst gemeint, ging um, ich meinte, meinte, "
        "gemeint, ironisch, ironie, übertrieben, nicht wörtlich, fehlalarm, metapher, spruch, bildlich, "
        "blödsinn, spässli, witzle, diktier*, ich hab von, hab vom"
    ),
}
