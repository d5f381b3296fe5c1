"""Words that make a sign weaker in every language: what follows them is behind somebody, or is a sigh.

BYGONE stands right before the name of a condition and says that it is history ("after my stroke", "in hospital with a
stroke"): asked about, at enrolment an old illness, never "call now". RESIGNED says of nothing in particular that it is
not worth while ("why bother"): by itself it is asked about kindly; beside a wish to die or a plan it is what it says.
ONLY_BESIDE lists single words that say a sign all alone in the tables, but are mostly said of something else ("blue",
"dropped", "a snake"): they count beside a part of the body, a complaint or a medicine, and alone they are asked about.
Data a clinician can read and correct, spelled as `core.language.concepts` describes.
"""

from __future__ import annotations

from core.language.concepts import Concept as C

WEAK_WORDS: dict[str, dict[C, str]] = {
    "en": {
        C.BYGONE: (
            "in hospital with, in hospital for, in hospital after, hospital because of, hospitalised with, "
            "hospitalised for, hospitalised after, hospitalized with, hospitalized for, hospitalized after, "
            "admitted with, admitted for, admitted after, treated for, discharged after, rehab after, rehab for, "
            "recovering from, recovered from, recovery from, survived, after my, after a, after the, after having, "
            "after, after that, after those, after his, since my, since the, since having, since i had, since i had "
            "my, ever since my, following my, following a, due to my, because of my, got over my, got over a, on "
            "account of my, from my, from the, before my, when i had my, when i had the, time of my, my first, my "
            "last, my old, my previous, anniversary of my, post"
        ),
        C.RESIGNED: (
            "why bother, why do i bother, why do i even bother, why even bother, why did i bother, whats the use, "
            "what is the use, what is the point"
        ),
        C.ONLY_BESIDE: (
            "breather, airway, drowning, gasps, claret, bloods, spurts, bloody, headed, spinning, spins, swaying, "
            "staggering, agony, choked, cooking, flesh, sunken, binge*, bingeing, binging, purge, purged, "
            "purging, dropped, keeled, blackout, lifeless, crumpled, zonked, slumped, acid, adder, bleach, "
            "chainsaw, fumes, poison, poisonous, snake, toadstool*, fits, fitting, pupils, coronary, beaten, kms, "
            "ctb, epi, hives, welts, blotches, gibberish, mumbling, chucking, heaving, hurling, ectopic, "
            "terrified, panicking, drowsy, emerade, antifreeze, weedkiller, mugged"
        ),
    },
    "es": {
        C.BYGONE: (
            "en el hospital por, en el hospital con, hospital por, hospital con, hospitalizado por, hospitalizada "
            "por, ingresado por, ingresada por, ingresado con, ingresada con, internado por, internada por, tratado "
            "por, tratada por, operado de, operada de, recuperado de, recuperada de, recuperándome de, "
            "recuperándome del, recuperado del, recuperada del, después de mi, después de un, después del, después "
            "de tener un, tras mi, tras un, tras el, luego de mi, luego de un, a raíz de mi, a raíz del, a raíz de "
            "un, desde mi, desde el, desde que tuve el, desde que tuve un, desde que me dio el, desde que me dio "
            "un, por culpa de mi, sobreviví a un, superé un, salí de un, salí del, cuando tuve el, cuando tuve un, "
            "cuando me dio el, cuando me dio un, secuelas de un, secuelas del, secuela de un, mi primer, mi último"
        ),
        C.RESIGNED: (
            "para qué molestarse, para qué me molesto, para qué esforzarse, para qué me esfuerzo, total para qué, "
            "ya para qué, para qué tanto"
        ),
        C.ONLY_BESIDE: (
            "nariz, adrenalina, agitad*, morad*, azulad*, bofe, resuello, resoplando, atorada, atorado, "
            "atoro, boqueo, desaparecer, inestable, aturdid*, tambale*, zumbad*, tarumba, alucin*, asustad*, "
            "castane*, castañe*, delir*, derram*, despedirme, hundid*, laguna, pálid*, patatús, perdonadme, "
            "perdónenme, vengan, telele, yuyu, purg*, atracón, atracones, atracon*, privad*, empapando, ácido, "
            "alacrán, anticongelante, brasero, choque, culebra, desatascador, gases, incendio, insecticida, "
            "escorpión, lejía, serpiente, veneno, víbora, motosierra, pozo, túnel, hipo, colgarme, lanzarme, "
            "aventarme, revoltura, arroj*, deponer, devolver, devolví, devuelto, basca, potar, balbuce*, "
            "fogonazos, aterroriz*, congelación"
        ),
    },
    "de": {
        C.BYGONE: (
            "im krankenhaus wegen, im krankenhaus mit, im spital wegen, im spital mit, in der klinik wegen, in der "
            "klinik mit, war wegen, war mit, lag wegen, lag mit, lag nach, reha wegen, reha nach, kur nach, kur "
            "wegen, behandelt wegen, eingeliefert wegen, eingeliefert mit, entlassen nach, erholt von, erholung "
            "von, erholung nach, überlebt, nach meinem, nach meiner, nach dem, nach der, nach einem, nach einer, "
            "nach, seit meinem, seit meiner, seit dem, seit der, seit einem, seit, infolge, aufgrund meines, wegen "
            "meinem, wegen meines, durch meinen, durch den, von meinem, vom, beim letzten, beim ersten, vor meinem, "
            "vor dem, folgen vom, folgen von, folge von, mein erster, mein letzter, mein alter, mein damaliger, "
            "post"
        ),
        C.RESIGNED: ("wozu das alles, wofür das alles, bringt doch nichts, bringts eh nicht, bringt eh nix"),
        C.ONLY_BESIDE: (
            "streuselkuchen, allergisch*, hechel*, hechel, durchschnaufen, verschnaufpause, verschnaufpausen, "
            "verschnaufen, pfeife, pumpe, puste, pustet, hufe, huefe, aufgeschnitten, aufgschnittn, gschnitte, "
            "ritz, ritze, damisch, drahts, drehn, drehts, dreit, flau, gleichgewicht, kreislauf, schwank*, "
            "schwanke, schwankt, sternchen, wackelig, wacklig, wanke, wanken, wankt, torkel*, torkle, taumel*, "
            "angst, azeton, erinnerungslücke, fantasier*, eingefallen, glühe, lebwohl, notarzt, notaufnahme, "
            "ohrensausen, panik, patschnass, schnapp*, verschwinden, verschluckt, schläfrig, filmriss, kalorien, "
            "hungern, hungere, gehungert, büschelweise, binge, entwässerung*, abgeschmiert, blackout, "
            "weggedriftet, kaffeesatz, schwallartig, abgase, gift, giftig, bleiche, säure, schlange, fruchtblase, "
            "fruchtwasser, knopfzelle, knopfbatterie, kettensäge, kreissäge, überfallen, unkrautvernichter, "
            "rohrreiniger, abflussreiniger, frostschutzmittel, rattengift, elektroschock, eileiter*, aufgeben, "
            "aufgegeben, aussichtslos, loch, nutzlos, sackgasse, tiefpunkt, unnütz, versager, eingebissen, "
            "gezuckt, zucken, zuckt, abtreten, antun, wegmachen, zviel, blind, augenlicht, gesichtsfeld, "
            "lichtblitze, verwaschen, streifung, schlagerl, brechen, brich, gebrochen, spucke, spucken, gespuckt, "
            "übergebe, übergeben, reihern, würgen, nesseln, anfoi, umgeht, drehwurm"
        ),
    },
    "fr": {
        C.BYGONE: (
            "à l'hôpital pour, à l'hôpital avec, à l'hôpital après, à l'hôpital à cause de, hospitalisé pour, "
            "hospitalisée pour, hospitalisé après, hospitalisée après, hospitalisé suite à, hospitalisée suite à, "
            "hospitalisé à cause d'un, hospitalisée à cause d'un, opéré après, opérée après, soigné pour, soignée "
            "pour, traité pour, traitée pour, remis de, remise de, remis d'un, remise d'un, rééducation après, "
            "rééducation pour, rééducation suite à, après mon, après un, après l', après ma, après une, après la, "
            "après le, après les, après avoir eu, suite à mon, suite à un, suite à l', suite à ma, suite à une, à "
            "la suite d'un, à la suite de mon, depuis mon, depuis l', depuis ma, depuis un, depuis que j'ai eu, "
            "depuis que j'ai fait, à cause de mon, survécu à un, survécu à, séquelles de mon, séquelles d'un, "
            "séquelle d'un, séquelles de l', lors de mon, avant mon, mon premier, mon dernier, mon ancien, post, "
            "quand j'ai eu mon, quand j'ai fait mon"
        ),
        C.RESIGNED: ("à quoi bon, a quoi bon, à quoi ça sert, ça ne sert à rien"),
        C.ONLY_BESIDE: (
            "bleu*, violet*, souffler, sifflement, ahan*, anhel*, poussif, poussive, enjambe, gaspe, râle, "
            "tirage, entaille*, mutil*, taillad*, disparaître, chancel*, instable, tangue, vacille, déséquilibr*, "
            "acétone, adieu, adieux, blême, brûlant*, dégouline*, délir*, frisson*, livide, terrorisé*, "
            "terroris*, venez, ruisselle*, guiboles, affamé, purge, goinfre*, tca, absence, ko, inerte, blackout, "
            "acide, agress*, désherbant, gelures, incendie, insolation, javel, mordu*, morsure, percut*, poison, "
            "serpent, tronçonneuse, vipère, brasero, monoxyde, antigel, meuleuse, déboucheur, adrénaline, "
            "amanite, tressaute, ts, barbouillé*, écoeur*, papules, aveugle, dédouble, flashes, flashs, charabia, "
            "marmonne, dégueul*, gerb*, rendu, commotion"
        ),
    },
    "pl": {
        C.BYGONE: (
            "w szpitalu z, w szpitalu po, w szpitalu przez, w szpitalu z powodu, leżałem z, leżałam z, leżałem po, "
            "leżałam po, hospitalizowany z powodu, hospitalizowana z powodu, leczony po, leczona po, leczyłem się "
            "po, leczyłam się po, rehabilitacja po, rehabilitacji po, w sanatorium po, przeżyłem, przeżyłam, "
            "przebyty, przebyłem, przebyłam, przeszedłem, przeszłam, po moim, po, od mojego, od czasu, od, przez "
            "mój, kiedy miałem, kiedy miałam, gdy miałem, gdy miałam, mój pierwszy, mój ostatni, skutki, w wyniku"
        ),
        C.RESIGNED: ("po co się starać, po co próbować, po co się męczyć"),
        C.ONLY_BESIDE: (
            "wstrząs*, odpocząć, dech, dechu, tchu, przytyka, zatyka, świszczy, ziaj*, odsapn*, sinieje, rzęzi, "
            "rzezi, rzęże, zniknąć, gwiazdki, karuzela, wiruj*, aceton, głupstwo, odlatuję, odpływam, panik*, "
            "pogotowi*, przerażon*, przyjedź, senn*, sor, śpiąc*, wybaczcie, zapadnięte, żegnam, dreszcz*, "
            "rozpalon*, garściami, moczopędn*, kompulsywn*, głodówk*, fiknął*, fiknal*, odleciał*, odlot, runął*, "
            "utracił*, zgasło, zleciał*, bezwładnie, osunął*, czad, czadem, czadu, grzybów, kwas*, muchomor*, "
            "napadł*, piła, pobił*, pożar*, przegrza*, szlifierk*, topi*, trutk*, ugryzł*, żmij*, potrącił*, "
            "obojętn*, pustka, ciemność, zawadzam, hipka, hipo, przeżyło, prężyło, wyskoczę, kotara, kurtyna, "
            "podwójnie, troi, wylew*, pawia, haftow*, haftuj*, zwrac*, zwróc*, zwróciłam, zwróciłem, ulew*, "
            "adrenalin*, pożegnać, pożegnanie, pożegnania"
        ),
    },
    "ar": {
        C.BYGONE: (
            "في المستشفى بسبب, بالمستشفى بسبب, في المستشفى بعد, بالمستشفى بعد, في المشفى بسبب, بالمشفى بسبب, كنت في "
            "المستشفى, كنت بالمستشفى, دخلت المستشفى, بعد, من بعد, عقب, منذ, من وقت, من يوم, من ساعة, شفيت من, "
            "تعافيت من, بتعافى من, اتعافيت من, نجوت من, على اثر, إثر, تعالجت من, اتعالجت من"
        ),
        C.RESIGNED: (
            "شو الفايدة, شنو الفايدة, ايه الفايدة, ايش الفايدة, وش الفايدة, ليش اتعب حالي, ليه اتعب نفسي, ليش أتعب "
            "نفسي, ليش اكمل, ليه اكمل, علاش نكمل, طريق مسدود, ما في مخرج, مفيش مخرج, لا مخرج, كل شي انتهى, كل شي "
            "ضايع, كله ضايع, انا ولا شي, وصلت للقاع, ما في حل, مفيش حل, لا فائدة, ما في فايدة, مافي فايدة, مفيش "
            "فايدة, مفيش فايده, ماكو فايدة, ما كاين فايدة, بلا فايدة, بلا فائدة, شو الفائدة, ما الفائدة, ايش الفائدة, "
            "مليت من كل شي, زهقت من كل حاجة, مش قادر اكمل, مش قادرة اكمل, مش قادره اكمل, ما اقدر اكمل, ما قادر اكمل"
        ),
        C.ONLY_BESIDE: (
            "ازرق*, زرقا, زرقت, ضيقه, كتمه, ينقطع, خنقه, القنطره, عالجسر, عالسطح, حافه, فالسطح, هبوط, دوران, "
            "الكراج, النعاس, اختفي, اوصيكم, بحبكم, سامحوني, مرمي, مرميه, مخلوع, تعالوا, تعالو, بزحلق, نعسان*, "
            "نعاس, نعسه, يهدي, اهدي, تهدي, للعضم, شاحب, بجوع, شراهه, شره, فصلت, انهار*, انهارت, غبت, طفيت, تكوم, "
            "الوداع, وداعا, وصيتي, اسيد, افعي, تعبان, حادت, حريق, حيه, حمض, حنش, عضه, عقرب, كلور, مبيد, منشار, "
            "تجمد, ضلام, ياس, ايست, القطار, قرف, قالبه, عمي, ومضات, فلاشات, راجع, ارجع, ارجعها, اراجع, رديت, "
            "راجعت, ورجعت, بيرجع, برجع, بترجع, قي, طرش, كنرد, بوبو, شري, هرش, بهرش, طايح, اسعاف, الاسعاف, "
            "السبيطار, زوع, بالموس, بالشفره, بموس, شنق, غباش, مغبش, مغوش, انطفيت, غيبت, مغيب, دوخني, بتدوخني, "
            "الادرينالين, ادرينالين"
        ),
    },
}
