"""What people say of their health, in the words of each language: conditions, a fall, a move, a height.

Phrases as in `core.language.concepts`: between commas, "word*" for any ending, ".." for up to three words. The words
say what is spoken of; `core.understanding.health_facts` reads whether it is so, no longer so, or said of somebody else.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum, auto


class Topic(StrEnum):
    """What a phrase is about, or how it is said."""

    # what is so
    PREGNANT = auto()  # breast-feeding as well
    PREGNANT_PERHAPS = auto()  # "a positive test": asked
    BIRTH = auto()  # asked, since breast-feeding is the same caution
    LOSS = auto()
    PREGNANT_NO_LONGER = auto()
    HEART_FAILURE = auto()
    HEART_CONDITION = auto()
    KIDNEY = auto()
    DIABETES = auto()
    FELL = auto()
    EATING = auto()
    BREATHLESS = auto()
    HEART_TABLETS = auto()  # not named: only asked about when stopped
    MOVED = auto()  # the place follows
    LIVES = auto()  # likewise, if it is one: "I live in a small house"
    HEIGHT = auto()
    BORN = auto()
    FEMALE = auto()
    MALE = auto()
    # family background, said of ROOTS
    ROOTS = auto()
    WHITE = auto()
    SOUTH_ASIAN = auto()
    CHINESE = auto()
    JAPANESE = auto()
    OTHER_ASIAN = auto()
    MIDDLE_EASTERN = auto()
    BLACK_AFRICAN = auto()
    AFRICAN_CARIBBEAN = auto()
    SOUTH_CENTRAL_AMERICAN = auto()
    MIXED_OR_OTHER = auto()
    # units, said with WISH
    WISH = auto()
    KG = auto()
    LB = auto()
    ST = auto()
    INSTEAD = auto()  # the unit behind it is the old one
    # how it is said
    TAKE = auto()  # of a medicine: takes, was given, a dose
    STOP = auto()
    ANYMORE = auto()  # with a "no": no longer
    SUBJECT = auto()  # starts a thought of its own: a "no" before it ends there
    ME = auto()  # words of the first person that `Concept.MINE` does not have
    FUTURE = auto()  # wished, planned, feared: not so yet
    MAYBE = auto()
    CHILDHOOD = auto()
    LONG_AGO = auto()
    SPARE = auto()  # figures of speech and look-alikes


T = Topic

HEALTH_WORDS: Mapping[str, Mapping[Topic, str]] = {
    "en": {
        T.PREGNANT: (
            "pregnant, expecting a baby, expecting a child, expecting our, expecting my, were expecting, we're"
            " expecting, we are expecting, im expecting, i'm expecting, i am expecting, baby on the way, baby due,"
            " weeks gone, weeks along, months gone, breastfeeding, breast feeding, nursing my baby, having a baby,"
            " trimester, going to be a mum, my due date, bun in the oven"
        ),
        T.PREGNANT_PERHAPS: (
            "positive test, test was positive, test came back positive, two lines on the test, pregnancy, my pregnancy"
        ),
        T.BIRTH: (
            "gave birth, given birth, had the baby, had my baby, had our baby, baby arrived, baby came, baby is here,"
            " baby was born, baby is born"
        ),
        T.LOSS: (
            "miscarriage, miscarried, stillbirth, stillborn, lost the baby, lost my baby, lost our baby, lost the"
            " pregnancy, termination of pregnancy"
        ),
        T.PREGNANT_NO_LONGER: "no longer pregnant, stopped breastfeeding, stopped breast feeding",
        T.HEART_FAILURE: (
            "heart failure, cardiac failure, congestive heart, heart isnt pumping, heart is not pumping, heart doesnt"
            " pump, heart does not pump, heart pumps badly, weak heart muscle, heart muscle is weak, ejection"
            " fraction, hfref, hfpef, cardiomyopathy"
        ),
        T.HEART_CONDITION: (
            "heart condition, heart disease, heart problem*, heart trouble, heart issue*, atrial fibrillation, afib,"
            " a fib, fibrillation, pacemaker, bypass, stent, stents, angina, leaky valve, heart valve, valve replac*,"
            " valve problem*, coronary, arrhythmia*, irregular heartbeat, irregular heart beat, heart murmur, heart"
            " defect, ablation, clogged arteries, arteries are furred, furred arteries, narrowed arteries,"
            " defibrillator, heart surgery, heart operation, aortic stenosis, heart rhythm, heart block, cardiac"
            " arrest, heart op, irregular heart, blocked arter*, had a heart attack, after my heart attack, since my"
            " heart attack"
        ),
        T.KIDNEY: (
            "kidney disease, kidney failure, kidney problem*, kidney trouble, kidney damage, kidney issue*, bad"
            " kidneys, ckd, kidneys only work, kidneys are failing, kidneys dont work, kidneys do not work, kidneys"
            " work at, dialysis, kidney transplant, renal failure, renal disease, renal insufficiency"
        ),
        T.DIABETES: "diabetes, diabetic",
        T.FELL: (
            "i fell, fell over, fell off, fell down, fell on, fell in the, fell last, fell yesterday, fell today,"
            " fell twice, fell again, fallen over, fallen twice, have fallen, ive fallen, had a fall, a fall, falls,"
            " bad fall, a tumble, tripped over, tripped and, slipped and fell, landing on the floor, landed on the"
            " floor, went over on, keep falling, keep tripping, took a spill, lost my balance and, ended up on the"
            " floor, went flying, slipped on, fell out of bed"
        ),
        T.EATING: (
            "anorexia, anorexic, bulimia, bulimic, eating disorder*, binge and purge, binge eating, obsessive about "
            "food, obsessed with food, obsess about food, obsessive about weight, obsessed with my weight, scared of "
            "food, food takes over, relationship with food, binges, binged, purging, restricting food, panic about "
            "eating, eating makes me panic, afraid to eat, scared to eat, scared of eating, guilty when i eat, "
            "guilty after eating, guilty every time i eat"
        ),
        T.BREATHLESS: "breathless even at rest, oxygen at home, home oxygen",
        T.HEART_TABLETS: "heart tablets, heart pills, heart medicine, heart medication, heart meds",
        T.MOVED: "moved to, moved house to, moved over to, relocated to, emigrated to, moved back to, settled in",
        T.LIVES: (
            "living in, live in, i am now in, im now in, new address im in, new address i am in, new address in, my"
            " new place is in"
        ),
        T.HEIGHT: "tall, height",
        T.BORN: "born, birth year, year of birth, date of birth, birthday is, dob",
        T.FEMALE: (
            "i am a woman, i'm a woman, im a woman, i am female, i'm female, im female, table for women, womens"
            " table, female table*"
        ),
        T.MALE: "i am a man, i'm a man, im a man, i am male, i'm male, im male, table for men, mens table, male table*",
        T.ROOTS: (
            "my family, our family, my background, family background, my parents, my roots, my heritage, my ethnic*,"
            " my people, my ancestors, my grandparents"
        ),
        T.WHITE: "white, european",
        T.SOUTH_ASIAN: "south asian, india, indian, pakistan*, bangladesh*, sri lanka*, nepal*",
        T.CHINESE: "chinese, china",
        T.JAPANESE: "japan*",
        T.OTHER_ASIAN: "korea*, vietnam*, philippine*, filipin*, thailand, thai, indonesia*, malaysia*",
        T.MIDDLE_EASTERN: "middle east*, arab*, iran*, iraq*, turkey, turkish, leban*, syria*, egypt*",
        T.BLACK_AFRICAN: "black african, nigeria*, ghana*, kenya*, somali*, ethiopia*, west africa*",
        T.AFRICAN_CARIBBEAN: "caribbean, jamaica*, trinidad*, barbad*",
        T.SOUTH_CENTRAL_AMERICAN: "south america*, latin america*, mexic*, brazil*, colombia*, peru*",
        T.MIXED_OR_OTHER: "mixed",
        T.WISH: (
            "rather have, rather use, prefer, switch to, change to, change it to, can we do, can we use, can i use,"
            " use, please use"
        ),
        T.KG: "kilo, kilos, kg, kgs, kilograms, metric",
        T.LB: "pounds, lb, lbs",
        T.ST: "stone, stones",
        T.INSTEAD: "instead of, rather than, not in, not",
        T.TAKE: (
            "take, takes, taking, on, put me on, put on, started, started me on, starting, start, prescribed, given,"
            " gave me, got, using, mg, tablet*, twice, once, daily, a day, dose, new, has me on, have me on"
        ),
        T.STOP: (
            "stopped, stopped taking, came off, come off, coming off, took me off, taken off, taken me off, off my,"
            " off the, no longer, quit, finished with, used to take, used to be on, no more, swapped from, changed"
            " from, dropped, weaned off, been taken off, came right off, finished my, finished the"
        ),
        T.ANYMORE: "any more, anymore, no longer, now",
        T.SUBJECT: "i, im, i'm, ive, i've, we",
        T.ME: "us, our, we, weve, were",
        T.FUTURE: (
            "thinking of, thinking about, planning, hoping, hope to, trying for, trying to, want to, wants to, want"
            " me, would like, might start, may start, will start, going to start, about to start, should, could i,"
            " what if, in case, fear, fears, scared of, afraid of, worried about, risk of, in the family, runs in, to"
            " avoid, prevent, reading about, wish, one day"
        ),
        T.MAYBE: "i think, maybe, perhaps, might be, may be, could be, possibly, not sure, suspect*, probably",
        T.CHILDHOOD: "as a child, as a kid, when i was young, when i was little, as a boy, as a girl, in childhood",
        T.LONG_AGO: (
            "years ago, years back, decades ago, long ago, in my twenties, in my thirties, in my youth, at school,"
            " 19##, when i was, back then, ages ago"
        ),
        T.SPARE: (
            "pregnant pause, power failure, fell asleep, fall asleep, falling asleep, fell in love, fell behind, fell"
            " for, fell through, fell apart, fell out with, fell ill, fell short, fell silent, leaves falling,"
            " falling leaves, this fall, last fall, in the fall, the fall of, fall behind, expecting a parcel,"
            " expecting a delivery, expecting a call, expecting visitors, expecting guests, the bypass road, covid"
            " test, fall in love, big heart, birthday present, night fell, rain fell, snow fell, prices fell, a fall"
            " in temperature, a fall in price, white bread, white wine, waterfall*, i fell about laughing, tall"
            " order, live in hope, head over heels, slipped on my shoes, slipped on my coat, slipped on a jumper,"
            " finished the test"
        ),
    },
    "es": {
        T.PREGNANT: (
            "embarazada, espero un bebé, espero un hijo, espero una hija, esperamos un bebé, esperamos un hijo, "
            "esperando un bebé, salgo de cuentas, bebé en camino, doy el pecho, dando el pecho, lactancia, "
            "amamantando, dando de mamar, meses de embarazo, semanas de embarazo, voy a ser madre, voy a tener un "
            "bebé, voy a tener un hijo, vamos a tener un bebé, meses embarazada, esperamos bebé, espero bebé, voy a "
            "ser mamá, vamos a ser papás, vamos a ser padres, estoy esperando un bebé, estamos esperando un bebé"
        ),
        T.PREGNANT_PERHAPS: (
            "test positivo, prueba positiva, test dio positivo, prueba dio positivo, predictor positivo, mi "
            "embarazo, dio positivo el test, me dio positivo, salió positivo el test, salió positiva la prueba, test "
            "me dio positivo, prueba me dio positivo, dio positiva la prueba"
        ),
        T.BIRTH: (
            "di a luz, he dado a luz, dado a luz, nació el bebé, nació la bebé, ha nacido, tuve al bebé, tuve a mi"
            " bebé, he tenido al bebé, bebé ya llegó, ya parí, parí, tuve un bebé, he sido mamá, acabo de ser madre,"
            " tuve a mi hija, tuve a mi hijo, tuve a la niña, tuve al niño, nació la niña, nació el niño, nació mi"
            " hija, nació mi hijo, nació mi bebé"
        ),
        T.LOSS: (
            "perdí el bebé, perdí al bebé, perdí a mi bebé, perdimos el bebé, perdimos al bebé, perdí el embarazo,"
            " aborto, aborté"
        ),
        T.PREGNANT_NO_LONGER: "ya no estoy embarazada, ya no doy el pecho, dejé de dar el pecho",
        T.HEART_FAILURE: (
            "insuficiencia cardiaca, insuficiencia cardíaca, fallo cardiaco, falla cardiaca, fracción de eyección,"
            " corazón no bombea, corazón bombea mal, corazón débil, miocardiopatía, cardiomiopatía, tengo ic, corazón"
            " me falla, corazón no me bombea, corazón bombea poco, bombea mal, bombea poco, corazón no da abasto,"
            " corazón bombea menos, corazón ya no bombea"
        ),
        T.HEART_CONDITION: (
            "fibrilación auricular, fibrilación, marcapasos, arritmia*, angina de pecho, angina, bypass, baipás,"
            " stent*, válvula*, soplo en el corazón, soplo, cardiopatía, problema* de corazón, problema* del corazón,"
            " problema* en el corazón, problema* cardíaco*, enfermedad del corazón, enfermo del corazón, enferma del"
            " corazón, mal del corazón, coronari*, cateterismo, desfibrilador, operado del corazón, operada del"
            " corazón, operaron del corazón, muelles en el corazón, padezco del corazón, sufro del corazón, operación"
            " de corazón, arterias obstruidas, arterias tapadas, taquicardia crónica, enfermedad cardiaca, me han"
            " puesto un stent, dos stents, desfibrilador implantado, me operaron a corazón abierto, operado a corazón"
            " abierto, tuve un infarto, sufrí un infarto, tras el infarto, después del infarto, desde el infarto, he"
            " tenido un infarto"
        ),
        T.KIDNEY: (
            "enfermedad renal, insuficiencia renal, fallo renal, problema* renal*, problema* de riñón, problema* de"
            " riñones, problema* en los riñones, problema* en el riñón, problema* del riñón, riñones no me funcionan,"
            " riñones no funcionan, riñones me funcionan mal, riñones fallan, riñones mal, diálisis, trasplante de"
            " riñón, enfermo del riñón, enferma del riñón, riñón me falla, un solo riñón, mal de los riñones, mal del"
            " riñón, renal"
        ),
        T.DIABETES: "diabetes, diabétic*",
        T.FELL: (
            "me caí, me he caído, me caigo, caída, caídas, porrazo, batacazo, me resbalé, resbalón, tropecé, me fui"
            " al suelo, acabé en el suelo, me di una hostia, sufrí una caída, trompazo, golpazo, tropezón,"
            " tropezones, resbalé, me fui de bruces, me di de bruces, me caigo mucho, dado una caída, pegado una"
            " caída, me pegué una caída, castaña, costalazo, me caí, me estampé, me caí redondo, me caí redonda, me"
            " doblé el pie y caí, acabo en el suelo, he acabado en el suelo, termino en el suelo, me voy al suelo, me"
            " fui de culo, fui de culo"
        ),
        T.EATING: (
            "anorexia, bulimia, trastorno alimenticio, trastorno alimentario, trastorno de la conducta alimentaria, "
            "tca, no paro de contar calorías, contar calorías, contando calorías, obsesionad* con la comida, "
            "obsesiona la comida, obsesionad* con el peso, atracones, miedo a comer, agobia cada comida, trastorno "
            "de alimentación, trastornos alimenticios, trastorno de la alimentación, relación con la comida, "
            "atracón, trastorno de conducta alimentaria, comer compulsivamente, comía y vomitaba, comer y vomitar, "
            "atracones y vómitos, pánico comer, da pánico comer, me da miedo comer, terror comer, me da terror "
            "comer, culpa cada vez que como, culpa después de comer, culpable al comer, culpable cuando como, "
            "culpable por comer, asco comer"
        ),
        T.BREATHLESS: "oxígeno en casa, oxígeno domiciliario",
        T.HEART_TABLETS: (
            "pastillas del corazón, pastillas para el corazón, medicina del corazón, medicación del corazón, pastilla"
            " del corazón"
        ),
        T.MOVED: (
            "hemos mudado a, he mudado a, me mudé a, nos mudamos a, mudado a, mudada a, ido a vivir a, fui a vivir a,"
            " fuimos a vivir a, trasladado a, trasladé a, me vine a vivir a, nos vinimos a vivir a, vinimos a vivir"
            " a, venido a vivir a, me cambié a, trasladado a vivir a, mudanza a"
        ),
        T.LIVES: (
            "vivo en, vivimos en, viviendo en, instalado en, instalada en, resido en, residimos en, ya vivo en, vivo "
            "ahora en, nueva casa en, ahora en, nueva dirección en, ahora vivo en, estoy viviendo en, ya vivimos en"
        ),
        T.HEIGHT: "mido, altura, estatura, de alto, de alta",
        T.BORN: "nací, nacido, nacida, año de nacimiento, fecha de nacimiento",
        T.FEMALE: "soy mujer, soy una mujer, tabla de mujeres, tabla para mujeres",
        T.MALE: "soy hombre, soy un hombre, soy varón, tabla de hombres, tabla para hombres",
        T.ROOTS: "mi familia, mis padres, mi origen, de origen, mis raíces, mis abuelos, ascendencia, mis antepasados",
        T.WHITE: "blanc*, europe*",
        T.SOUTH_ASIAN: "la india, india, indio, pakistan*, paquistan*, bangladés, sri lanka, nepal, sur de asia",
        T.CHINESE: "china, chino, chinos",
        T.JAPANESE: "japón, japonés*, japones*",
        T.OTHER_ASIAN: "corea*, vietnam*, filipin*, tailand*, indonesia",
        T.MIDDLE_EASTERN: "árabe*, irán, iraní*, irak*, turquía, turc*, líban*, siri*, egip*, oriente medio",
        T.BLACK_AFRICAN: "nigeri*, ghan*, senegal*, guinea ecuatorial, subsaharian*, áfrica negra",
        T.AFRICAN_CARIBBEAN: "caribe*, caribeñ*, jamaic*, hait*",
        T.SOUTH_CENTRAL_AMERICAN: (
            "sudamérica, suramérica, centroamérica, latinoamerican*, méxico, mexican*, brasil*, colombi*, perú,"
            " peruan*, ecuador, ecuatorian*, guatemal*, bolivi*, argentin*, chile, chilen*, venez*"
        ),
        T.MIXED_OR_OTHER: "mestiz*, mezcla",
        T.WISH: (
            "prefiero, preferiría, cambia a, cámbialo a, cambiar a, cámbiame a, ponlo en, pon, poner en, usa, usar,"
            " mejor en, por favor"
        ),
        T.KG: "kilo, kilos, kg, kilogramos",
        T.LB: "libras, lb, lbs",
        T.ST: "stone, stones",
        T.INSTEAD: "en vez de, en lugar de, no en",
        T.TAKE: (
            "tomo, tomando, tomar, recetado, recetaron, recetó, empecé, empiezo, empezado, me pusieron, me han"
            " puesto, me puso, me dieron, me ha dado, me mandaron, me ha mandado, llevo, uso, pastilla*, comprimido*,"
            " al día, mg, con, desde, veces, noche, mañana, por la, cada"
        ),
        T.STOP: (
            "dejé, dejado, he dejado, ya no tomo, ya no uso, ya no me dan, me quitó, me quitaron, me han quitado, me"
            " ha quitado, retiró, retiraron, me ha retirado, me han retirado, retirado, suspendí, suspendió,"
            " suspendieron, suspendido, parado de tomar, tomaba, dejar de tomar, suspendida, me cambiaron el, he"
            " parado el, paré el, paré con, retirada, ya no estoy con, ya no llevo, ya no uso, sacaron el, me"
            " sacaron, me han suspendido, me suspendieron, me suspendió, ya sin, me ha suspendido, quitado el,"
            " quitado los, quitó el, ya no me mandan, ya no me tomo, no volví a tomar"
        ),
        T.ANYMORE: "ya",
        T.SUBJECT: "yo, sí",
        T.ME: "nos, nosotros, hemos, soy, fui, llevo, tomo, dejé, empecé",
        T.FUTURE: (
            "pienso, pensando en, pensamos, quiero, queremos, quisiera, intentando, tratando de, intentamos, si me,"
            " si estoy, por si, debería, voy a empezar, miedo a, miedo de, en mi familia, viene de familia, riesgo"
            " de, algún día, ojalá, evitar, planeo, planeamos"
        ),
        T.MAYBE: (
            "creo que, a lo mejor, quizá, quizás, tal vez, puede que, podría, posible, posiblemente, sospech*, igual"
        ),
        T.CHILDHOOD: "de niño, de niña, de pequeño, de pequeña, cuando era niñ*, en la infancia, de chico, de chica",
        T.LONG_AGO: (
            "hace años, hace muchos años, hace tiempo, hace mucho, de joven, hace décadas, 19##, años que, años"
            " desde, hace veinte, hace diez, en su día, hace .. años, hacen .. años"
        ),
        T.SPARE: (
            "me cae bien, me cae mal, me caes bien, me caí de sueño, me caigo de sueño, me caigo de risa, me caí de"
            " risa, caída del sistema, caída de pelo, caída del pelo, caída de la tarde, caída de internet, aborto"
            " espontáneo de, soplo de aire, caída de la bolsa, a corazón abierto de par, casa blanca"
        ),
    },
    "de": {
        T.PREGNANT: (
            "schwanger, hochschwanger, schwangerschaftswoche, erwarte ein baby, erwarte ein kind, erwarten ein baby,"
            " erwarten ein kind, nachwuchs, kriegen ein baby, bekommen ein baby, bekomme ein baby, bekomme ein kind,"
            " baby unterwegs, ich stille, stille noch, stille mein, stille voll, am stillen, entbindungstermin, guter"
            " hoffnung, kriegen ein kind, kriege ein baby, kriege ein kind, bekommen ein kind, werde mutter, werde"
            " mama, ssw, anderen umständen, schwangere, erwarte nachwuchs, schwangr, erwartig, guter dinge schwanger"
        ),
        T.PREGNANT_PERHAPS: "test positiv, test war positiv, test ist positiv, der test positiv, schwangerschaft",
        T.BIRTH: (
            "entbunden, baby ist da, baby da, kind ist da, kind bekommen, baby gekommen, baby geboren, kind geboren,"
            " zur welt gebracht, auf die welt gekommen, kleine ist da, kleiner ist da, mama geworden, mutter"
            " geworden, ist auf der welt, unser kleines ist da, hab entbunden, kind auf die welt, geburt gut"
            " überstanden"
        ),
        T.LOSS: "fehlgeburt, totgeburt, baby verloren, kind verloren, schwangerschaft verloren, abtreibung",
        T.PREGNANT_NO_LONGER: "nicht mehr schwanger, nimmer schwanger, nimma schwanger, abgestillt, stille nicht mehr",
        T.HEART_FAILURE: (
            "herzinsuffizienz, herzschwäche*, herzmuskelschwäche, auswurffraktion, ejektionsfraktion, pumpt nicht"
            " richtig, pumpt nicht mehr, pumpt schlecht, pumpt zu schwach, kardiomyopathie, pumpleistung,"
            " pumpschwäche, auswurf nur, schwaches herz, herzleistung, herz pumpt nur, herz pumpt zu wenig, herz"
            " pumpt nimmer, herz zu schwach, herzinsuffizient, pumpe schafft nicht, pumpe ist schwach, pumpe zu"
            " schwach, pumpe macht nicht mehr, herz schafft es nicht, herz schafft nicht"
        ),
        T.HEART_CONDITION: (
            "vorhofflimmern, herzschrittmacher, schrittmacher, bypass, bypässe, stent*, angina pectoris, angina,"
            " herzklappe*, klappe ist undicht, undichte klappe, klappe undicht, klappenfehler, herzrhythmus*,"
            " rhythmusstörung*, herzkrank*, herzproblem*, koronare herzkrankheit, khk, herzfehler, herzleiden,"
            " herzkatheter, herzoperation, herz op, defibrillator, herzerkrankung*, was am herzen, was am herz, was"
            " mit dem herz, was mit dem herzen, probleme mit dem herz*, arrhythmie, vhf, herzkranzgefäß*, am herzen"
            " operiert, verkalkte gefäße, herzkatheteruntersuchung, herzschwirren, herzbypass, herzstolpern vom"
            " kardiologen, bypassoperation, hatte einen herzinfarkt, hatte .. herzinfarkt, nach dem herzinfarkt, seit"
            " dem herzinfarkt, nach meinem herzinfarkt"
        ),
        T.KIDNEY: (
            "nierenkrank*, niereninsuffizienz, nierenschwäche, nierenversagen, nierenproblem*, nierenerkrankung*,"
            " nierenleiden, nieren arbeiten nicht, nieren kaputt, nieren sind kaputt, was mit den nieren, was an den"
            " nieren, probleme mit den nieren, dialyse, nierentransplant*, nieren arbeiten schlecht, nierenwerte"
            " schlecht, nierenwerte sind schlecht, dialysepflichtig, nieren wollen nicht, nieren machen nicht mehr"
            " mit, nierenkranker, nierenschaden"
        ),
        T.DIABETES: (
            "diabetes, diabetes typ, diabetiker typ, diabetikerin typ, diabetiker, diabetikerin, zuckerkrank*,"
            " alterszucker, habe zucker seit, hab zucker seit, zucker seit jahren, zucker und bluthochdruck,"
            " bluthochdruck und zucker, hab den zucker, habe den zucker"
        ),
        T.FELL: (
            "gestürzt, hingefallen, sturz, stürze, hingeflogen, ausgerutscht, gestolpert, stolper, stolpere,"
            " umgefallen, runtergefallen, hinfalle, bin .. gefallen, vom .. gefallen, von der .. gefallen, die treppe"
            " .. gefallen, über .. gefallen, hingeknallt, hinplumpst, gfalle, umgflogen, hingefalln, hingflogn,"
            " hingflogen, ausgrutscht, gstürzt, hingschlagn, lang hingeschlagen, hingeschlagen, auf die nase"
            " gefallen, auf dem eis, auf glatteis, gestrauchelt, bin .. gestürzt, gfalln, hingehaut, hinghaut,"
            " hingehauen, abegheit, abekeit, gheit, umgheit, hingeknallt, hingedonnert, aufs eis gelegt, lang"
            " gemacht, umgefalln"
        ),
        T.EATING: (
            "estörung*, magersucht, magersüchtig, bulimie, bulimisch, essstörung*, essgestört, anorexie, "
            "fressanfälle, essanfälle, nur noch ums essen, angst vor dem essen, kalorien zählen, zähle kalorien, ess "
            "brech sucht, essanfall, essbrechsucht, verhältnis zum essen, bulimiker*, anorektisch, "
            "magersuchtsklinik, fressen und kotzen, gefressen und gekotzt, fressattacken, essattacken, essen "
            "erbrochen, finger in den hals, panik beim essen, panik vor dem essen, angst zu essen, angst vorm essen, "
            "schuldgefühle beim essen, schuldgefühle nach dem essen, brot macht mir panik"
        ),
        T.BREATHLESS: "sauerstoff zu hause, sauerstoff daheim, heimsauerstoff",
        T.HEART_TABLETS: "herztablette*, herzmedikament*, herzmittel, herzpille*, tabletten fürs herz",
        T.MOVED: (
            "umgezogen nach, gezogen nach, nach .. gezogen, nach .. umgezogen, übersiedelt nach, ausgewandert nach,"
            " nach .. übersiedelt, zügelt uf, züglet uf, zügelt nach, umzug nach, hergezogen nach"
        ),
        T.LIVES: (
            "wohne jetzt in, wohn jetzt in, wohn jetzt z, wohne jetzt z, wohne in, wohn in, wohnen in, wohnen jetzt"
            " in, lebe jetzt in, lebe in, leben jetzt in, bin jetzt in, sind jetzt in, neue adresse in, neue wohnung"
            " in, wohnhaft in, wohne seit .. in, leb jetzt in, leb in, leb seit .. in, lebe seit .. in, wohn seit .."
            " in, wohnen seit .. in, leben seit .. in"
        ),
        T.HEIGHT: "groß, größe, körpergröße",
        T.BORN: "geboren, geburtsjahr, jahrgang, baujahr, geburtsdatum",
        T.FEMALE: "bin eine frau, bin weiblich, tabelle für frauen, frauentabelle",
        T.MALE: "bin ein mann, bin männlich, tabelle für männer, männertabelle",
        T.ROOTS: "meine familie, meine eltern, herkunft, wurzeln, stamme aus, abstammung, meine vorfahren",
        T.WHITE: "weiß, europäisch*, europa",
        T.SOUTH_ASIAN: "indien, indisch*, pakistan*, bangladesch*, sri lanka*, nepal*, südasi*",
        T.CHINESE: "china, chinesisch*",
        T.JAPANESE: "japan*",
        T.OTHER_ASIAN: "korea*, vietnam*, philippin*, thailand*, indonesi*",
        T.MIDDLE_EASTERN: "arab*, iran*, irak*, türk*, liban*, syri*, ägypt*, nahen osten",
        T.BLACK_AFRICAN: "nigeria*, ghana*, kenia*, somali*, äthiop*, eritre*, senegal*, westafrika*",
        T.AFRICAN_CARIBBEAN: "karib*, jamaik*, haiti*",
        T.SOUTH_CENTRAL_AMERICAN: "südamerika*, mittelamerika*, lateinamerika*, mexik*, brasil*, kolumbi*, peru*",
        T.MIXED_OR_OTHER: "gemischt*",
        T.WISH: (
            "lieber, bitte in, bitte auf, bitte, umstellen, wechseln, wechsle, stell um, stelle um, bevorzuge, hätte"
            " gern, verwende"
        ),
        T.KG: "kilo, kilos, kg, kilogramm",
        T.LB: "pfund",
        T.ST: "stone, stones",
        T.INSTEAD: "statt, anstatt, anstelle von, nicht in",
        T.TAKE: (
            "nehme, nehm, nimm, bekomme, bekommen, kriege, krieg, verschrieben, verordnet, angefangen, eingestellt,"
            " neu, tablette*, mg, täglich, morgens, abends, schlucke, schluck, jetzt, seit, einnehmen, eingenommen,"
            " halbe, dosis, gegeben"
        ),
        T.STOP: (
            "abgesetzt, absetzen lassen, aufgehört, weggelassen, ausgeschlichen, nicht mehr, nimma, nimmer,"
            " gestrichen, früher genommen, nahm früher, nehme ich nicht mehr, nehm i nimma, rausgenommen,"
            " weggenommen, nicht länger, abgesetzt bekommen, runter von, herausgenommen, umgestellt von, aufhören"
            " lassen, weg vom, weg von"
        ),
        T.ANYMORE: "mehr, nimma, nimmer",
        T.SUBJECT: "ich, wir",
        T.ME: "wir, uns, bei mir, unser, bin, hab, habe, nehm, nehme",
        T.FUTURE: (
            "überleg*, ziehen wir mal, planen, plane, hoffe, hoffen, möchte, möchten, wollen, will, würde, wenn ich,"
            " falls, ob, angst vor, sorge vor, in der familie, könnte ich, sollte ich, soll ich, risiko, vorbeugen,"
            " irgendwann, vielleicht ziehen"
        ),
        T.MAYBE: (
            "glaube, glaub, vielleicht, eventuell, möglicherweise, könnte, verdacht, vermutlich, wahrscheinlich,"
            " nicht sicher"
        ),
        T.CHILDHOOD: "als kind, in der kindheit, als ich klein war, als jugendlich*, als bub, als mädchen",
        T.LONG_AGO: (
            "vor jahren, vor vielen jahren, früher, damals, jahrzehnte*, 19##, vor .. jahren, jahre her, lange her,"
            " in jungen jahren"
        ),
        T.SPARE: (
            "ins bett gefallen, ins auge gefallen, mir gefallen, gut gefallen, schwer gefallen, leicht gefallen,"
            " preise gefallen, temperatursturz, sturzbach, großes herz, trächtig*, gestürzt auf das essen, auf die"
            " arbeit gestürzt, in die arbeit gestürzt, aus allen wolken gefallen, bin .. ins bett gefallen, bin .."
            " auf .. reingefallen, weißbrot, kilometer, stolpert"
        ),
    },
    "fr": {
        T.PREGNANT: (
            "enceinte, attends un bébé, attends un enfant, attendons un bébé, attendons un enfant, bébé en route,"
            " bébé en chemin, terme est prévu, terme prévu, allaite, j'allaite, allaitement, semaines de grossesse,"
            " mois de grossesse, heureux événement, tombée enceinte, suis tombée enceinte, vais être maman, accouche"
            " en, bébé pour, on attend un bébé, nous attendons un bébé, attends mon"
        ),
        T.PREGNANT_PERHAPS: (
            "test positif, test est positif, test était positif, test s'est révélé positif, ma grossesse"
        ),
        T.BIRTH: (
            "accouché, bébé est né, bébé est née, bébé est là, bébé est arrivé, mis au monde, eu mon bébé, eu le "
            "bébé, donné naissance, bébé né, suis maman, devenue maman, sortie de la maternité, mon bébé est né, "
            "accouchée, eu ma fille, eu mon fils, mon fils est né, ma fille est née, le petit est né, la petite est "
            "née, notre bébé est né, est né donc, est née donc"
        ),
        T.LOSS: "perdu le bébé, perdu mon bébé, perdu notre bébé, fausse couche, perdu la grossesse, ivg, avortement",
        T.PREGNANT_NO_LONGER: "plus enceinte, grossesse terminée, n'allaite plus, allaite plus",
        T.HEART_FAILURE: (
            "insuffisance cardiaque, insuffisant cardiaque, insuffisante cardiaque, défaillance cardiaque, fraction"
            " d'éjection, cœur pompe mal, cœur ne pompe, cœur pompe pas, muscle cardiaque faible, cardiomyopathie,"
            " jai une ic, j'ai une ic, coeur fatigué, coeur faible, coeur pompe, fevg, coeur ne pompe plus, coeur"
            " n'arrive plus, pompe ne suffit plus, coeur ne suffit plus"
        ),
        T.HEART_CONDITION: (
            "fibrillation auriculaire, fibrillation, pacemaker, pace maker, stimulateur cardiaque, pontage*, stent*,"
            " angine de poitrine, angor, valve, valvule*, arythmie*, problème* cardiaque*, problème* de cœur,"
            " problème* au cœur, souci* de cœur, souci* cardiaque*, souci* au cœur, maladie du cœur, maladie"
            " cardiaque, coronaire*, souffle au cœur, cardiopathie, défibrillateur, opéré du cœur, opérée du cœur,"
            " malade du cœur, suis cardiaque, coeur irrégulier, opération du coeur, opération au coeur, artères"
            " bouchées, artère bouchée, pile au coeur, problème de valve, tachycardie chronique, rythme irrégulier,"
            " ressorts dans le coeur, extrasystoles, deux stents, eu un infarctus, fait un infarctus, après mon"
            " infarctus, depuis mon infarctus"
        ),
        T.KIDNEY: (
            "maladie rénale, insuffisance rénale, problème* de rein*, problème* aux reins, problème* rénaux, souci*"
            " de rein*, souci* aux reins, reins fonctionnent mal, reins fonctionnent pas, reins marchent mal, reins"
            " malades, dialyse, greffe de rein, malade des reins, insuffisant rénal, insuffisante rénale, reins"
            " fatigués, un seul rein, reins abîmés, problème rénal, problèmes rénaux, mes reins ne"
        ),
        T.DIABETES: "diabète, diabétique*, diabète type, diabète de type, diabétique type, diabétique de type",
        T.FELL: (
            "suis tombé, suis tombée, suis retombé*, je tombe souvent, une chute, chutes, ma chute, jai glissé, j'ai"
            " glissé, glissé dans, glissé sur, trébuché, cassé la figure, cassé la gueule, suis étalé*, pris une"
            " gamelle, pris une bûche, chuté, gadin, viandé*, dégringolé, valdingué, pris les pieds, dérapé, me suis"
            " cassé la figure, me suis cassée la figure, fini par terre, retrouvé par terre, retrouvée par terre,"
            " tombé par terre, tombée par terre, me suis ramassé*, je trébuche"
        ),
        T.EATING: (
            "anorexie, anorexique, boulimie, boulimique, trouble* alimentaire*, trouble* du comportement "
            "alimentaire, tca, compte toutes mes calories, compte mes calories, compte les calories, repas "
            "m'angoisse, obsédé* par la nourriture, obsédé* par le poids, obsédé* par mon poids, peur de manger, "
            "hyperphagie, rapport à la nourriture, anorexique, vomissais, crises alimentaires, comportement "
            "alimentaire, manger et vomir, mangeais et vomissais, compulsions alimentaires, me fait paniquer, manger "
            "me fait paniquer, coupable quand je mange, coupable de manger, culpabilise quand je mange, culpabilise "
            "dès que je mange, angoisse de manger"
        ),
        T.BREATHLESS: "oxygène à la maison, oxygène à domicile",
        T.HEART_TABLETS: (
            "cachets pour le cœur, médicaments pour le cœur, médicament pour le cœur, comprimés pour le cœur, pilules"
            " pour le cœur, cachets du cœur"
        ),
        T.MOVED: (
            "déménagé à, déménagé en, déménagé au, déménagé aux, emménagé à, emménagé en, parti vivre à, partie vivre"
            " à, partis vivre à, parti vivre en, partie vivre en, partis vivre en, déménagé sur, déménagé dans,"
            " déménagement à"
        ),
        T.LIVES: (
            "vis en, vis à, vis au, vivons à, vivons en, habite à, habite en, habite au, habite maintenant à, "
            "habitons à, installé à, installée à, installés à, installé en, installée en, installés en, réside à, "
            "réside en, habite désormais à, vis maintenant à, vis désormais à, nouvelle adresse à, jhabite, "
            "j'habite, habite maintenant, jhabite maintenant, je vis maintenant à, je vis à, on habite, on vit à"
        ),
        T.HEIGHT: "je mesure, taille, de haut, je fais .. de haut",
        T.BORN: "né en, née en, suis né, suis née, né le, née le, année de naissance, date de naissance, naissance en",
        T.FEMALE: "suis une femme, suis femme, tableau des femmes, table des femmes",
        T.MALE: "suis un homme, suis homme, tableau des hommes, table des hommes",
        T.ROOTS: "ma famille, mes parents, mes origines, d'origine, mes racines, mes ancêtres, mes grands parents",
        T.WHITE: "blanc*, européen*, europe",
        T.SOUTH_ASIAN: "l'inde, inde, indien*, pakistan*, bangladesh*, sri lanka*, népal*, asie du sud",
        T.CHINESE: "chine, chinois*",
        T.JAPANESE: "japon*",
        T.OTHER_ASIAN: "corée*, vietnam*, philippin*, thaïland*, indonési*, cambodg*, laos",
        T.MIDDLE_EASTERN: "arabe*, iran*, irak*, turquie, turc*, liban*, syri*, égypt*, moyen orient",
        T.BLACK_AFRICAN: "sénégal*, mali*, cameroun*, ivoir*, côte d'ivoire, congo*, nigéri*, guiné*, afrique noire",
        T.AFRICAN_CARIBBEAN: "antill*, martinique, guadeloupe, haït*, caraïb*",
        T.SOUTH_CENTRAL_AMERICAN: "amérique du sud, amérique latine, mexi*, brésil*, colombi*, pérou, péruvien*",
        T.MIXED_OR_OTHER: "métis*",
        T.WISH: (
            "préfère, préférerais, passe en, passer en, mets en, plutôt en, plutôt des, change pour, changer pour,"
            " s'il te plaît, s'il vous plaît, stp, svp, utilise"
        ),
        T.KG: "kilo, kilos, kg, kilogrammes",
        T.LB: "livres, lb, lbs",
        T.ST: "stone, stones",
        T.INSTEAD: "au lieu de, au lieu des, à la place de, pas en",
        T.TAKE: (
            "prends, prend, sous, prescrit, mis sous, commencé, débuté, cachet*, comprimé*, mg, par jour, matin,"
            " soir, depuis, traitement, donné, reçois, jai, j'ai, nouveau"
        ),
        T.STOP: (
            "arrêté, ai arrêté, m'a arrêté, ma arrêté, stoppé, ne prends plus, prends plus, plus sous, suspendu,"
            " retiré, enlevé, je prenais, n'ai plus, supprimé, plus besoin, n'en prends plus, fini le, fini les,"
            " sevré*, a supprimé, m'a enlevé, m'ont enlevé, m'ont retiré, m'a retiré, m'ont arrêté, terminé le"
        ),
        T.ANYMORE: "plus",
        T.SUBJECT: "je, j, jai, moi, si",
        T.ME: "nous, notre, on, jai",
        T.FUTURE: (
            "pense à, pensons, envisage, voudrais, voudrions, voulons, veux, essaye, essaie, essayons, si je, au cas"
            " où, peur de, peur du, peur d'être, risque de, risque d'être, dans la famille, faut il, dois je, vais"
            " commencer, un jour, éviter, prévenir, espère"
        ),
        T.MAYBE: "je crois, peut être, possible, possiblement, probable*, pourrait, soupçon*, pas sûr*, je pense",
        T.CHILDHOOD: "enfant, quand j'étais petit*, dans mon enfance, quand j'étais gamin*, étant petit*, gamin*",
        T.LONG_AGO: (
            "il y a des années, autrefois, ans que, il y a longtemps, 19##, il y a .. ans, quand j'étais jeune, dans"
            " ma jeunesse"
        ),
        T.SPARE: (
            "il y a, tombes bien, tombe bien, tombé amoureux, tombée amoureuse, suis tombé amoureux, suis tombée"
            " amoureuse, tombé malade, tombée malade, suis tombé malade, suis tombée malade, tombe de sommeil, chute"
            " de cheveux, une chute de, chute des feuilles, chutes d'eau, chutes de neige, une chute d'eau, en panne,"
            " laisse tomber, suis tombé sur, suis tombée sur, suis tombé de sommeil, suis tombée de sommeil, tour de"
            " taille, fréquence cardiaque, rythme cardiaque, pouls cardiaque, pain blanc"
        ),
    },
    "pl": {
        T.PREGNANT: (
            "w ciąży, ciąża, ciąży, ciążę, ciężarna, spodziewam się dziecka, spodziewamy się dziecka, oczekuję"
            " dziecka, oczekujemy dziecka, dziecko w drodze, maluch w drodze, karmię piersią, będę mamą, zostanę"
            " mamą, termin porodu, jestem przy nadziei, będziemy mieli dziecko, będziemy mieć dziecko, ciążą"
        ),
        T.PREGNANT_PERHAPS: "test ciążowy, test pozytywny, dwie kreski, test dodatni",
        T.BIRTH: (
            "urodziłam, maluch na świecie, dziecko na świecie, dzidzia na świecie, ciąża za mną, dziecko się"
            " urodziło, porod za mną, synek na świecie, córeczka na świecie, zostałam mamą"
        ),
        T.LOSS: "poroniłam, poronienie, straciłam dziecko, straciliśmy dziecko, straciłam ciążę",
        T.PREGNANT_NO_LONGER: (
            "nie jestem już w ciąży, już nie jestem w ciąży, nie karmię już piersią, już nie karmię piersią"
        ),
        T.HEART_FAILURE: (
            "niewydolność serca, niewydolności serca, niewydolność krążenia, niewydolne serce, hf, frakcja wyrzutowa,"
            " frakcja, serce słabo pompuje, serce źle pompuje, serce nie pompuje, kardiomiopati*, słabe serce, serce"
            " pompuje słabo, niewydolnością serca"
        ),
        T.HEART_CONDITION: (
            "migotanie przedsionków, migotanie, wieńcówk*, choroba wieńcowa, chorobę wieńcową, rozrusznik*, bajpas*,"
            " bypass*, stent*, zastawk*, arytmi*, wada serca, wadę serca, chore serce, choroba serca, chorobę serca,"
            " chorob serca, choroby serca, problem* z sercem, kłopot* z sercem, dusznic*, kardiowerter, operacj*"
            " serca, szmer* w sercu, nierówne bicie serca, niemiarowość, ablacj*, bloku serca, zwężone tętnice, by"
            " passy, bypassy, niedokrwienna, nierówne serce, choruję na serce, leczę się na serce, po zawale, miałam"
            " zawał, miałem zawał, przeszłam zawał, przeszedłem zawał"
        ),
        T.KIDNEY: (
            "chorob* nerek, chore nerki, niewydolność nerek, niewydolność nerkowa, niewydolnością nerek, problem* z"
            " nerkami, kłopot* z nerkami, nerki mi źle, nerki źle pracują, nerki nie pracują, nerki siadają, nerki mi"
            " siadają, dializ*, przeszczep nerki, nerki szwankują, chora nerka, jedna nerka, nerkami mam"
        ),
        T.DIABETES: "cukrzyc*, cukrzyk, cukrzykiem, diabetyk, diabetykiem, diabetyczką",
        T.FELL: (
            "upadłam, upadłem, upadek, upadki, upadku, upadków, przewróciłam, przewróciłem, wywróciłam, wywróciłem,"
            " poślizgnęłam, poślizgnąłem, potknęłam, potknąłem, spadłam, spadłem, wywrotk*, wywaliłam się, wywaliłem"
            " się, przewracam się, glebę, runęłam, runąłem, wyrżnęł*, wyłożył* się, walnęł* o podłogę, zaliczył*"
            " glebę, fiknęł*, ląduję na ziemi, ląduję na podłodze, wylądowałam na podłodze, wylądowałem na podłodze,"
            " potykam się i"
        ),
        T.EATING: (
            "anoreksj*, anorektyczk*, bulimi*, zaburzenia odżywiania, zaburzeń odżywiania, zaburzeniami odżywiania, "
            "objadam się, nie umiem normalnie jeść, nie potrafię normalnie jeść, obsesj* na punkcie jedzenia, "
            "obsesj* na punkcie wagi, liczę kalorie, kompulsywnie, kompulsywne jedzenie, napady jedzenia, napady "
            "objadania, zaburzenia jedzenia, bulimiczk*, kompulsywne*, kompulsywnym, objadanie, objadania, boję się "
            "jeść, boje się jeść, panika przed jedzeniem, poczucie winy po jedzeniu, wyrzuty sumienia po jedzeniu, "
            "strach przed jedzeniem"
        ),
        T.BREATHLESS: "tlen w domu, tlenoterapi*",
        T.HEART_TABLETS: "tabletki na serce, leki na serce, leków na serce, tabletek na serce, lek na serce",
        T.MOVED: (
            "przeprowadziłam się do, przeprowadziłem się do, przeprowadziliśmy się do, przeprowadzka do,"
            " wyprowadziłam się do, wyprowadziłem się do, wyprowadziliśmy się do, wyprowadziliśmy się na stałe do,"
            " wyprowadziłam się na stałe do, wyprowadziłem się na stałe do, przeprowadziłam się na stałe do,"
            " przeniosłam się do, przeniosłem się do"
        ),
        T.LIVES: (
            "mieszkam w, mieszkam we, mieszkamy w, mieszkam teraz w, mieszkam już w, zamieszkałam w, zamieszkałem w,"
            " mieszkamy teraz w, teraz mieszkam w, osiedliłam się w, osiedliłem się w, nowy adres to, mój nowy adres"
        ),
        T.HEIGHT: "wzrost, wzrostu, wysok*",
        T.BORN: (
            "urodziłam się, urodziłem się, rok urodzenia, rocznik, data urodzenia, urodzony, urodzona, roku urodzenia"
        ),
        T.FEMALE: "jestem kobietą, tabelę dla kobiet, tabela dla kobiet, tabeli dla kobiet",
        T.MALE: "jestem mężczyzną, tabelę dla mężczyzn, tabela dla mężczyzn, tabeli dla mężczyzn",
        T.ROOTS: "moja rodzina, moi rodzice, pochodzę z, pochodzeni*, korzenie, moi dziadkowie",
        T.WHITE: "biał*, europejsk*",
        T.SOUTH_ASIAN: (
            "indii, indyjsk*, hindus*, pakistan*, bangladesz*, sri lanka, sri lanki, nepal*, azji południowej"
        ),
        T.CHINESE: "chin, chińsk*",
        T.JAPANESE: "japon*, japoń*",
        T.OTHER_ASIAN: "korei, koreań*, wietnam*, filipin*, tajland*, indonez*",
        T.MIDDLE_EASTERN: "arab*, iran*, irak*, turcj*, tureck*, liban*, syri*, syryj*, egip*, bliskiego wschodu",
        T.BLACK_AFRICAN: "nigeri*, ghan*, keni*, somali*, etiop*, senegal*",
        T.AFRICAN_CARIBBEAN: "karaib*, jamajk*, haiti*",
        T.SOUTH_CENTRAL_AMERICAN: "ameryki południowej, ameryki łacińskiej, meksyk*, brazyli*, kolumbi*, peru",
        T.MIXED_OR_OTHER: "mieszane*",
        T.WISH: "wolę, proszę w, proszę, zmień na, przełącz na, wolałbym, wolałabym, poproszę, używaj",
        T.KG: "kilogram*, kilo, kg",
        T.LB: "funt*",
        T.ST: "stone, kamieni*",
        T.INSTEAD: "zamiast, a nie, nie w",
        T.TAKE: (
            "biorę, łykam, zażywam, przyjmuję, przepisał*, przepisano, dostałam, dostałem, włączył*, zaczęłam,"
            " zacząłem, tabletk*, mg, dziennie, rano, wieczorem, od, w zestawie, zapisał*, dał mi, dała mi, dali mi,"
            " brać, nowy"
        ),
        T.STOP: (
            "odstawił*, odstawiono, odstawione, odstawiony, skończone, skończyłam, skończyłem, już nie biorę, nie"
            " biorę już, przestałam, przestałem, zrezygnował*, brałam kiedyś, brałem kiedyś, zakończon*, nie łykam"
            " już, już nie łykam, cofnął*, cofnęli, zdjęto mi, wycofał*, zakończyłam, zakończyłem, skończył* się"
            " leczenie"
        ),
        T.ANYMORE: "już, więcej",
        T.SUBJECT: "ja",
        T.ME: "nam, nas, my, u mnie, jestem, mam, biorę",
        T.FUTURE: (
            "planuję, planujemy, myślę o, myślimy o, chcę, chcemy, chciałabym, chciałbym, może zacznę, gdyby, jeśli,"
            " jeżeli, boję się, ryzyko, w rodzinie, powinnam, powinienem, zamierzam, kiedyś może, żeby, czy"
        ),
        T.MAYBE: "chyba, może, być może, podejrzen*, podejrzewam, możliwe, prawdopodobnie, wydaje mi się",
        T.CHILDHOOD: "jako dziecko, w dzieciństwie, kiedy byłam mała, kiedy byłem mały, jako dzieciak, za dzieciaka",
        T.LONG_AGO: "lat temu, lata temu, kiedyś, dawno temu, 19##, w młodości, za młodu, dawno",
        T.SPARE: (
            "upadłem na duchu, upadłam na duchu, upadek cen, spadłam z wagi, spadłem z wagi, spadłam .. kg, spadłem"
            " .. kg, spadłam z krzesła ze śmiechu, białe pieczywo, biały ser, biały chleb, białko, spadła, spadł,"
            " spadło, spadły, upadła, upadł, upadły, spałam, spałem, spała, spał, spali, spanie"
        ),
    },
    "ar": {
        T.PREGNANT: (
            "حامل, حبلى, الحمل, انتظر مولود, بنتظر بيبي, منتظرة مولود, مرضع, ارضع, بارضع, كنرضع, ارضع طفلي, 7amel,"
            " hamel, 7amla, شهور حمل, اسابيع حمل, حامل بالشهر, حامل في, ناطرة بيبي, بستنى بيبي, بستنى مولود, مستنية"
            " بيبي, منتظرين مولود, برضع, أرضع, انا حامل, جاييني بيبي, جايني بيبي, جاينا بيبي, جايينا بيبي"
        ),
        T.PREGNANT_PERHAPS: "تحليل الحمل, اختبار الحمل, فحص الحمل",
        T.BIRTH: "ولدت, وضعت مولودي, وضعت مولود, البيبي وصل, البيبي اجا, جبت البيبي, جبت بيبي, ولدنا, ولادتي",
        T.LOSS: "اجهضت, اجهاض, فقدت الجنين, خسرت الجنين, فقدت الحمل, خسرت الحمل, نزل الحمل, سقط الحمل, سقطت الحمل",
        T.PREGNANT_NO_LONGER: "ما عدت حامل, لم اعد حامل, ما بقيتش حامل, معدتش حامل, ما عدت ارضع, فطمت",
        T.HEART_FAILURE: (
            "فشل القلب, فشل قلب, قصور القلب, قصور قلب, قصور في القلب, قصور بالقلب, ضعف عضلة القلب, ضعف القلب, فشل"
            " قلبي, قصور قلبي, هبوط القلب, عضلة القلب .. ضعيفة, عضلة قلبي ضعيفة, القلب ما بيضخ, قلبي ما يضخ, الكسر"
            " القذفي, ضعف بعضلة القلب, ضعف في عضلة القلب, عضلة القلب ضعيفة, القلب ضعيف, قلبي ضعيف, القلب ما يضخ, قلبي"
            " ما بيضخ, هبوط في عضلة القلب, هبوط بعضلة القلب, هبوط عضلة القلب"
        ),
        T.HEART_CONDITION: (
            "رجفان اذيني, الرجفان الاذيني, رجفان, شرايين تاجية, الشريان التاجي, شريان تاجي, ذبحة صدرية, ذبحة, منظم"
            " قلب, منظم ضربات, دعامة, دعامات, قسطرة, صمام, مرض قلب, مريض قلب, مريضة قلب, مرض القلب, امراض قلب, مشاكل"
            " قلب, مشاكل بالقلب, مشاكل في القلب, مشكلة بالقلب, مشكلة في القلب, مشاكل القلب, عدم انتظام ضربات, قلب"
            " مفتوح, جلطة قلبية, شبكة بالقلب, لغط بالقلب, مريض بالقلب, مريضة بالقلب, قلبي تعبان, ارتجاع, ارتجاع في"
            " الصمام, بطارية قلب, بطارية بالقلب, جهاز تنظيم, عملية قلب, عملية بالقلب, ركبت شبكة, ركبولي شبكة, ركبولي"
            " دعامة, انسداد شرايين, تصلب شرايين, مرض بالقلب, مرض في القلب, عندي القلب, فيا القلب, جلطة قلب, جلطة"
            " بالقلب, جلطة في القلب, دعامتين, دعامتين بالقلب"
        ),
        T.KIDNEY: (
            "مرض كلوي, قصور كلوي, فشل كلوي, قصور الكلى, مشاكل كلى, مشاكل بالكلى, مشاكل في الكلى, مشاكل الكلى, مرض"
            " الكلى, مريض كلى, مريضة كلى, الكلى عندي تعبانة, الكلى تعبانة, كلاوي تعبانة, كليتي تعبانة, غسيل كلى, غسيل"
            " كلوي, زراعة كلى, زراعة كلية, كليتي, الكلاوي, كلاوي, مشكلة بالكلى, مشكلة في الكلى, ضعف بالكلى, ضعف في"
            " الكلى, الكلى عندي"
        ),
        T.DIABETES: "سكري, السكري, مرض السكر, مريض سكر, مريضة سكر, عندي السكر, عندي سكر, داء السكري, فيا السكر",
        T.FELL: (
            "وقعت, طحت, سقطت, وقعة, طيحة, تزحلقت, انزلقت, تعثرت, زلقت, تعترت, اتزحلقت, اتكعبلت, كنطيح, وقوع, طايح,"
            " دحت, سقوط, انكفيت, انطرحت, وقعت من, وقعت على, طحت من, طحت على, سقطت من, سقطت على, اتكفيت, تزلقت"
        ),
        T.EATING: (
            "فقدان شهية عصبي, فقدان الشهية العصبي, شره مرضي, نهام, شره عصبي, اضطراب اكل, اضطراب الاكل, اضطرابات "
            "الاكل, ما بعود اقدر اكل, ما اقدر اكل طبيعي, هوس بالاكل, مهووس* بالاكل, وسواس الاكل, احسب السعرات, بحسب "
            "السعرات, هوس الوزن, نهم, شراهة, اضطرابات غذائية, اضطراب غذائي, علاقتي بالاكل, شره الطعام, خايفة من "
            "الاكل, خايف من الاكل, بخاف من الاكل, اخاف اكل, بخاف اكل, رعب من الاكل, ذنب بعد الاكل, احس بالذنب لما "
            "اكل, بحس بالذنب لما اكل"
        ),
        T.BREATHLESS: "اكسجين بالبيت, اكسجين في البيت, اوكسجين بالبيت",
        T.HEART_TABLETS: "حبوب القلب, دواء القلب, دوا القلب, ادوية القلب, علاج القلب",
        T.MOVED: (
            "انتقلت الى, انتقلنا الى, انتقلت اعيش, انتقلنا نعيش, انتقلت, انتقلنا, نقلت على, نقلنا على, نقلت الى,"
            " هاجرنا, هاجرت, عزلت على, رحلت على, رحنا نعيش في, استقرينا في, استقريت في, حولنا على, نقلنا الى, سافرت"
            " استقر في, رحلت, رحلنا"
        ),
        T.LIVES: (
            "اسكن في, ساكن في, ساكنة في, ساكنين في, عايش في, عايشة في, اعيش في, صرت اسكن, سكنت في, صرت عايش, سكنا في,"
            " مقيم في, مقيمة في, صرنا في, ساكن ب, عايش ب"
        ),
        T.HEIGHT: "طولي, الطول, طول",
        T.BORN: (
            "مواليد, سنة ميلادي, تاريخ ميلادي, مولود سنة, مولودة سنة, مولود عام, مولودة عام, ولدت سنة, ولدت عام, ولدت"
            " في سنة, ولدت في عام, تزاديت, انولدت, خلقت سنة"
        ),
        T.FEMALE: "انا امرأة, انا مرة, انا انثى, جدول النساء, انا ست, انا بنت",
        T.MALE: "انا رجل, انا راجل, انا ذكر, انا رجال, جدول الرجال",
        T.ROOTS: "عائلتي, عيلتي, اهلي, اصلي, اصولي, جذوري, اصل عائلتي",
        T.WHITE: "اوروبي*, اوروبا, ابيض",
        T.SOUTH_ASIAN: "الهند, هندي*, باكستان*, بنغلاديش*, سريلانكا, نيبال*",
        T.CHINESE: "الصين, صيني*",
        T.JAPANESE: "اليابان, ياباني*",
        T.OTHER_ASIAN: "كوريا*, فيتنام*, الفلبين, فلبيني*, تايلاند*, اندونيسي*",
        T.MIDDLE_EASTERN: (
            "عرب, عربي*, ايران*, العراق, عراقي*, تركيا, تركي*, لبنان*, سوريا, سوري*, مصر, مصري*, المغرب, مغربي*,"
            " الخليج, فلسطين*, الاردن, اردني*, السعودية, سعودي*, اليمن, يمني*"
        ),
        T.BLACK_AFRICAN: "نيجيريا, غانا, كينيا, الصومال, صومالي*, اثيوبيا, السنغال",
        T.AFRICAN_CARIBBEAN: "الكاريبي, جامايكا, هايتي",
        T.SOUTH_CENTRAL_AMERICAN: "امريكا الجنوبية, امريكا اللاتينية, المكسيك, البرازيل, كولومبيا",
        T.MIXED_OR_OTHER: "مختلط*",
        T.WISH: "افضل, ابغى, خليها, خليه, غيرها الى, غير الى, حولها, حول الى, لو سمحت, من فضلك, استعمل, استخدم",
        T.KG: "كيلو, كيلوغرام, كيلوجرام, كغ, كجم",
        T.LB: "رطل, باوند, ارطال, بالرطل",
        T.ST: "ستون",
        T.INSTEAD: "بدل, بدلا من, مش",
        T.TAKE: (
            "اتناول, اخذ, اخد, باخد, باخذ, كناخد, كنشرب, بشرب, استعمل, كتبلي, كتب لي, وصفلي, وصف لي, صرفولي, صرفلي,"
            " صرف لي, بديت, بدات, بدأت, حطني على, حطوني على, دواء, دوا, حبة, حبوب, ملغ, مجم, يوميا, على, عشان,"
            " اعطاني, عطاني, عطاوني, اعطوني, جديد"
        ),
        T.STOP: (
            "وقفت, اوقفت, وقف لي, وقفلي, وقفولي, وقفوا, ما عدت, ما عاد, ماعدت, ماعاد, لم اعد, بطلت, تركت, ما بقيت, ما"
            " بقيتش, شالي, شالولي, خلصت, قطعت, وقفته, قطعته, بطلته, شلته, ما عدت اخده, ما عدت اخذه, الدكتور وقف, وقف"
            " الدكتور, شال لي, منعني من, بطلت اخد, توقفت عن"
        ),
        T.ANYMORE: "بعد الان, من بعد, خلاص",
        T.SUBJECT: "انا",
        T.ME: "نحن, احنا, لنا, عندنا, كتبلي, صرفولي, وصفلي, اكتشفوا",
        T.FUTURE: (
            "افكر, بفكر, نفكر, ناوي, ناوية, نفسي, بدي, اريد, عايز, عايزة, لو, اذا, خايف*, اخاف, خطر, بالعائلة, في"
            " العيلة, في العائلة, هل, ممكن ابدا, نحاول, بحاول, يوم ما"
        ),
        T.MAYBE: "يمكن, ربما, اظن, اعتقد, احتمال, شاكة, شاك, مش متأكد*, ممكن",
        T.CHILDHOOD: "وانا صغير, وانا صغيرة, في طفولتي, لما كنت صغير*, بصغري, وانا طفل*, من وانا صغير*",
        T.LONG_AGO: "من زمان, من سنين, قبل سنين, قبل سنوات, زمان, 19##, قبل .. سنة, من .. سنة, ايام زمان",
        T.SPARE: (
            "طحت من الضحك, وقعت من الضحك, وقعت في حب, وقعت بحب, وقعت العقد, وقعت على العقد, وقعت الورقة, وقعت على"
            " الورقة, وقعت في غرام, سقطت ورقة, حمل الاثقال, رفع اثقال, قلبي سليم, لو سمحت, قلبي معك, الخبز الابيض,"
            " طول الليل, طول اليوم, طول النهار, طول الوقت, على طول, السكر في الشاي, وقعت مني"
        ),
    },
}
