"""Spanish: the concepts of danger signs, and the answers to "Is it happening now?"."""

from __future__ import annotations

from core.language.concepts import Answer
from core.language.concepts import Concept as C

CONCEPTS: dict[C, str] = {
    # parts of the body
    C.CHEST: (
        "pecho, tórax, esternón, pechito, caja torácica, pecho izquierdo, costillas, boca del estómago, toracico, "
        "mis pechos, corazon, boca del pecho, esternon, torax, entre las paletillas, aquí en el medio, en medio del "
        "pecho, encima del pecho, pecho adentro"
    ),
    C.HEART: ("corazón, pulso, latidos, latido, corazon, corazoncito, ritmo cardíaco, cuore, pulsaciones"),
    C.ARM_OR_JAW: (
        "mandíbula, brazo izquierdo, brazo izq, ambos brazos, omóplato, omóplatos, cuello, quijada, "
        "paletilla, hombro izquierdo, entre los hombros, nuca, brazo"
    ),
    C.FACE: "cara, boca, rostro, labio, párpado, mejilla, comisura, media cara, jeta, sonrisa",
    C.LIPS_OR_TONGUE: "labio, labios, lengua, párpados, ojos, cara, boca, jeta",
    C.THROAT: "garganta, gaznate, tráquea, cuello, glotis",
    C.LIMB: (
        "brazo, braso, pierna, mano, lado, pie, brazos, medio cuerpo, mitad del cuerpo, dedos, "
        "lado del cuerpo, lado izquierdo, lado derecho, media cara"
    ),
    C.LEG: ("pierna, pantorrilla, tobillo, gemelo, pie, muslo, pantorilla, batata, chamorro, espinilla, canilla, pata"),
    C.LEGS: ("piernas, pantorrillas, tobillos, pies, gemelos, muslos, ambas piernas, patas, las dos piernas"),
    C.EYE: "ojo, ojos, ojito, un ojo",
    C.JOINT: (
        "rodilla, cadera, tobillo, espalda, hombro, articulación, músculo, gemelo, pantorrilla, ingle, "
        "muñeca, codo, muslo, lumbar, tendón, aquiles, isquio*, cuádriceps, cintura, aductor, lomo"
    ),
    # heart
    C.CHEST_PAIN: (
        "peso en el pecho, angina de pecho, angina, losa en el pecho, losa encima del pecho, elefante en el pecho, "
        "elefante encima, dolor torácico, me aprietan el corazon, me aplastan el pecho, aplastaran el pecho, "
        "se me cierra el pecho, pecho cerrado, punzadas en el corazon, me estrujan el pecho, me pisara un burro, "
        "opresion en el pecho, presion en el pecho, presion en medio del pecho, me oprime, "
        "como si me aplastaran el pecho, siento como si me, le parten el pecho, me parten el pecho, "
        "se agarra el pecho, me apreto el pecho, me apretó el pecho"
    ),
    C.HEART_ATTACK: (
        "infarto*, ataque al corazón, ataque cardíaco, ataque al corazon, ataque del corazón, "
        "paro cardíaco, infartando, infartó, parada cardíaca, me infarto"
    ),
    C.HURT: (
        "dolor*, duele*, dolía, dolió, doliendo, doler, dolido, ardor, arde, ardiendo, quema, quemazón, "
        "pinchazo*, pincha, punzada*, puntada*, molestia*, molesta, clavada, calambre*, pica, mata, "
        "agarrotad*, puñalada*, cuchillada*, clavo, incómod*, doliend*, agujetazo, tirón, retortijón, "
        "dolorcito"
    ),
    C.PRESS: (
        "presión*, opresión*, oprime, oprimido, oprimiendo, aprieta*, apretado, apretón, apretada, apretando, "
        "tirantez, pesadez, tensión, ahogo, peso, losa, pesa, aplasta*, estruja*, presiona*, apretujado, estrecho, "
        "banda, faja, nudo, encogido, piedra encima, cerrado, cargado, atenaza*, tenso, raro, rara, ladrillo, losa "
        "encima, peso encima, elefante, camión encima, una prensa, un torno"
    ),
    C.SPREADS: (
        "se me va al brazo, baja al brazo, baja por el brazo, corre al brazo, irradia, se extiende, "
        "se corre, sube a la mandíbula, hasta la quijada, hasta la mandíbula, pasa al brazo, "
        "se me va para el brazo, se va al brazo, hasta la mandibula"
    ),
    C.CLUTCH: ("se agarra, agarrándose, se aprieta, se toca, se lleva la mano, agarrandose, con la mano en"),
    C.RACING: (
        "acelerad*, se acelera, acelera, muy rápido, rapidísimo, irregular*, a mil, a mil por hora, se me sale, se "
        "sale, salta*, saltos, saltones, desbocado, galopa*, late fuerte, late rápido, late muy fuerte, late muy "
        "rápido, brinco*, brinca, latidos raros, va muy rápido, disparad*, dispara, se me dispara, tan rápido, "
        "loco, palpita, palpitando, aletea*, vuelcos, vuelco, desacompasad*, arrítmic*, golpea*, retumba, como un "
        "tambor, taquicárdic*, a toda velocidad, me late raro, se para, se salta, tamborea, al galope, atropellad*, "
        "sin ritmo, a golpes, revolucionado, loquísimo, a toda pastilla, a tope, a todo lo que da, bota, botes, "
        "como un caballo, caballo desbocado, desbocad*, baila, bailando, volteretas, se me va a salir, salirse, "
        "salir del pecho, quiere salir, muy deprisa, deprisa, a trompicones, tropiez*, se detiene, se pausa, "
        "pausas, falla, fallos, latidos de más, latidos saltados, raro, raros, extraño, extraños, descontrolad*, "
        "alocad*, retumbando, al cuello, hasta el cuello, apurado, zapatea, pega brincos, pum pum, revolotea*, muy "
        "rápido y disparejo, disparej*, me late rápido, late disparejo, late raro, desboca*, se me quiere salir, a "
        "brincos, brincos, trompicon*"
    ),
    C.PALPITATIONS: (
        "palpitacion*, palpitación, taquicardia*, arritmia*, fibrilación, extrasístole*, corazon a mil, "
        "corazon desbocado, corazon como loco"
    ),
    C.COLD_SWEAT: "sudor frío, sudores fríos, sudando frío, sudoración fría, sudo frío, sudores frios",
    # brain
    C.STROKE: (
        "un derrame, derrame cerebral, "
        "ictus, derrame*, derrame cerebral, embolia*, ataque cerebral, acv, apoplejía, "
        "trombosis cerebral, infarto cerebral, hemorragia cerebral, aneurisma, isquemia cerebral"
    ),
    C.DROOP: (
        "torcid*, caíd*, chueca, chueco, desviada, desviado, cuelga, colgando, tuerce, torció, ladeada, "
        "ladeado, descolgad*, se me cae, se le cae, fue de lado, se fue de lado, de lado, caida, deformada, "
        "va para un lado, torcido, torcida, desencajad*, caído, colgada, se me ha ido, chuec*, virad*, "
        "virada, se le fue, jalada, paralizada, rara, para un lado, se me fue"
    ),
    C.NUMB: (
        "dormid*, adormec*, entumec*, entumid*, paraliz*, parálisis, duerme, acorchad*, hormigue*, "
        "insensible, anestesiad*, no siento, no me siento, sin sensibilidad, acalambrad*, tiesa, tieso, "
        "se me durmió, no la siento, no lo siento, dormida, dormido, congelada, entumecid*, hormigueo, "
        "adormecid*"
    ),
    C.LIMP: (
        "muert*, flácid*, floj*, sin fuerza*, no tiene fuerza, no me responde, no responde, no me obedece, "
        "no obedece, no me hace caso, como un trapo, colgando, cuelga, sin fuerzas, se me cae todo, "
        "se me caen las cosas, se me cae, perdió fuerza, perdí fuerza, perdí la fuerza, pesa una tonelada, inútil, "
        "no la controlo, no lo controlo, se me dobla, se me va, inmóvil, no me da, no la puedo mover, "
        "no lo puedo mover, no tengo fuerza, no muevo, no mueve, no se mueve, no lo muevo, no la muevo, arrastro, "
        "arrastra, arrastrando, como de trapo, de plomo, como plomo, pesadísim*, se me resbalan las cosas, "
        "se me caen, no agarra, sin control, sin fuerza, no la puedo levantar, no lo puedo levantar, "
        "no quiere la mano, no kiere la mano, hace lo que quiere, se me cae de la mano, se me caen de la mano, "
        "se me cae todo de la mano"
    ),
    C.WEAK: "debilidad, débil, sin fuerza, sin fuerzas, flojera, floj*",
    C.ONE_SIDE: ("un lado, lado izquierdo, lado derecho, un costado, costado, brazo, pierna, medio cuerpo, mitad"),
    C.CANNOT: (
        "no puedo, no puede, no pude, no podía, no consigo, no consigue, no logro, no logra, cuesta, cuesta mucho, "
        "apenas, casi no, incapaz, dificultad*, problemas para, problemas al, no me sale, no me salen, no me deja, "
        "no soy capaz, trabajo me da, me da trabajo, batallo, dejé de, imposible, no hay manera de, no consiguen, "
        "casi no puedo, apenas puedo, ya no puedo, ya no consigo, no atino a, no acierto a, sin poder, no quiere, "
        "no kiere, no quieren"
    ),
    C.MOVE: (
        "mover, muevo, mueve, levantar, levanto, sentir, siento, sostener, agarrar, alzar, coger, "
        "apretar, sujetar, moverlo, moverla, subir"
    ),
    C.SPEAK: (
        "hablar, hablo, habla, palabras, decir, expresarme, articular, pronunciar, hablar bien, formar frases, "
        "poder hablar"
    ),
    C.SPEECH: "hablar, habla, palabras, hablando, hablo, lengua, voz",
    C.GARBLED: (
        "dificultad, cuesta, arrastr*, trab*, enred*, confus*, pastosa, pastoso, raro, rara, problemas, "
        "balbuce*, incoherencia*, incoherente, sin sentido, no me entiende, no se me entiende, "
        "no se entiende, no se le entiende, no entienden, atropella, mal, patosa, torpe, gangos*, "
        "lengua de trapo, lengua gorda, tonterías, disparates, como borracho, como borracha, no me salen, "
        "no le salen, borracho, borracha, no salen, sale mal, salen mal, al revés, mal pronunciad*, "
        "no coordino, no me sale, embarullad*, liada, me lío, se me lía, trapo, pesada, pesa, gorda, "
        "entender, entiende nadie, puro disparate, sale disparate, se traba, se me traba"
    ),
    C.SLURRED: (
        "balbuce*, farfull*, lengua de trapo, se me traba la lengua, se me enreda la lengua, hablo como borracho, "
        "me trabo al hablar, no me salen las palabras, no le salen las palabras, se me lían las palabras, "
        "se me cruzan las palabras, digo disparates, hablo sin sentido, habla sin sentido, arrastro las palabras, "
        "arrastra las palabras, lengua trabada, habla como borracho, hablo enredado, habla enredado, "
        "no se le entiende, me salen mal las palabras, digo cosas sin sentido, habla raro, hablo raro, "
        "no puedo articular, hablo como con, como si tuviera una papa, polvorón en la boca, polvoron en la boca, "
        "con la lengua de trapo, lengua gorda, me sale otra cosa, sale otra cosa, me salen otras palabras, "
        "me sale otra palabra"
    ),
    C.SEE: "ver, veo, ve, vista, visión, miro, veía",
    C.SIGHT_LOST: (
        "veo doble, ve doble, visión doble, vista doble, pérdida de visión, perdí la visión, perdí la vista, "
        "perdido la vista, perdido la visión, ciego de repente, ciega de repente, quedé ciego, quedé ciega, "
        "me he quedado ciego, me he quedado ciega, vista borrosa, visión borrosa, veo borroso, "
        "se me nubló la vista, se me nubla la vista, se me fue la vista, cortina en el ojo, cortina negra, "
        "ceguera, no veo por un ojo, no veo con un ojo, no veo de un ojo, ojo en negro, mitad de las cosas, "
        "me quedé sin vista, se me apagó el ojo, sombra en el ojo, medio campo, dejé de ver, "
        "he dejado de ver, perdí vista, me quedé ciego de, solo veo la mitad, veo la mitad, "
        "se me ha ido la vista, veo todo doble, veo dos, telón en el ojo, mancha negra en el ojo, "
        "vision doble, sombra que me tapa, sombra me tapa, moscas negras, destellos y, telon en el ojo, "
        "como una cortina, se me nublo la vista, perdi la vista, dejo de ver, deje de ver, "
        "mitad de lo que veo, me quede ciego, me quede ciega, luces y moscas, veo doble asi, viendo doble, "
        "veo borroso de golpe, vista borrosa de golpe, borroso por el ojo, no veo nada por, manchas negras, "
        "fogonazos, relampagos en el ojo, se me apago un ojo, perdi vision"
    ),
    C.CONFUSED: (
        "confus*, desorientad*, aturdid*, perdid*, ido, ida, enredada la cabeza, atontad*, confundid*, no coordino, "
        "dice incoherencias, puras incoherencias, dice puras incoherencias, incoherente, dice disparates, dice cosas "
        "sin sentido, no dice más que tonterías sin sentido"
    ),
    C.LOST_BEARINGS: (
        "no sé dónde estoy, no se donde estoy, no sé qué día es, no se que dia es, no sé ni dónde estoy, "
        "no sé ni quién, no recuerdo mi nombre, no sé cómo me llamo, no sé en qué día, no reconozco mi casa, "
        "no reconozco a, no sabe dónde está, no se como llegue, no se como he llegado, "
        "no recuerdo como llegue, no se quien soy, no me acuerdo de mi nombre"
    ),
    C.HEADACHE: (
        "dolor de cabeza, dolores de cabeza, duele la cabeza, cabeza, jaqueca*, migraña*, cefalea, "
        "cabeza me va a estallar, cabeza me explota"
    ),
    C.WORST: (
        "peor, más fuerte de mi vida, explota, estalla, estallar, explotar, reventar, revienta, "
        "como un trueno, trueno, como un latigazo, como un mazazo, como nunca, nunca había, jamás había, "
        "nunca me había dolido, insoportable de golpe, cuello rígido, cuello tieso, rayo, "
        "como un martillazo, como una bomba, nunca antes, nunca me habia dolido, me estalla, "
        "la peor de mi vida, estallo de golpe"
    ),
    C.SEVERE: (
        "fuerte, fuertísimo, grave, mucho, muchísimo, mucha, muy, horrible*, terrible*, insoportable*, "
        "intens*, brutal, atroz, espantos*, bestial, severo, tremend*, malísimo"
    ),
    C.SUDDEN: (
        "de repente, repentin*, súbit*, de golpe, de pronto, de un momento a otro, de sopetón, "
        "de la nada, de buenas a primeras, en un segundo, bruscamente, de una, de un rato a otro, "
        "desde que me levanté, desde q me levante"
    ),
    C.FAINTED: (
        "desmay*, desvanec*, perdí el conocimiento, perdí la conciencia, perdí la consciencia, perdí el sentido, "
        "perdido el conocimiento, perdido la conciencia, perdido el sentido, perdió el conocimiento, "
        "perdió la conciencia, pérdida de conocimiento, perdí conocimiento, inconsciente, desplom*, síncope, "
        "colaps*, patatús, soponcio, yuyu, me fui al suelo, se fue al suelo, me caí redond*, caí redond*, "
        "cayó redond*, no reacciona, no responde, no despierta, sin conocimiento, sin sentido, perdí el mundo, "
        "se me fue el mundo, telele, vahído, me apagué, quedé ido, privad*, me dio un bajón y me caí, "
        "me dio la pálida, la pálida, se me apagó la luz, quedé inconsciente, lipotimia, me quedé en blanco y caí, "
        "me he desvanecido, me fui, me he ido al suelo, caí fulminad*, cayó fulminad*, se cayó y no, no se mueve, "
        "no vuelve en sí, no abre los ojos, no se despierta, no contesta, no me contesta, caí en redondo, "
        "me he caído redond*, me caí y no recuerdo, tirado sin moverse, no sé qué pasó, en negro, se me fue todo, "
        "me caí desplomad*, cayó al suelo inconsciente, se fue en negro, me fui en negro, pérdida del conocimiento, "
        "perder el conocimiento, perdió el sentido, perdí por un momento el conocimiento, no contesta en el suelo, "
        "suelo .. no contesta, suelo .. no responde, piso .. no contesta, piso .. no responde, perdi el sentido, "
        "me desplome, se desplomo, me voy a desmayar, me caigo me caigo, se me nubla todo, me apague, "
        "perdi el conocimiento, quede tirado, quede tirada, patatus y cai, me fui al suelo redondo, "
        "amaneci en el suelo, desperte en el suelo, estoy tirado en el suelo, me desvaneci, "
        "me encontraron en el suelo, me encontro en el suelo, aparecí en el suelo, me desperte en el suelo, "
        "me quede inconsciente, se me fueron las piernas, las piernas no me sostienen, me dio un vahido, "
        "me dio un yeyo, patatus, se me va todo a negro, se me pone todo negro, un minuto sin contestar, "
        "sin contestar"
    ),
    C.CAME_ROUND: (
        "desperté, despert*, abrí los ojos, volví en mí, me encontraron, recobré, cuando volví, "
        "recuperé el, aparecí, amanecí, amaneci, desperte"
    ),
    C.FLOOR: "suelo, piso, tirad*, alfombra, baldosas, en el pasillo, baño",
    C.SEIZURE: (
        "convuls*, epilep*, ataque epiléptico, ataque de epilepsia, crisis epiléptica, crisis convulsiva, "
        "ataques epilépticos, espasmos por todo, tiembla entera, tiembla entero, temblando entero, "
        "ojos en blanco"
    ),
    C.JERKING: (
        "sacudidas, sacudiendo sin control, sacudía sin control, temblores sin control, "
        "me sacudía entero, se sacude, me mordí la lengua, mordí la lengua, se mordió la lengua, "
        "temblando todo el cuerpo, cuerpo .. sacudía, sacudirme sin control, echa espuma, "
        "espuma por la boca, brincaba el cuerpo, tiembla todo el cuerpo, temblando sin control, "
        "tiembla el cuerpo y no, no controlo los temblores, temblores y no los controlo, "
        "sacudidas por todo"
    ),
    C.DIZZY: (
        "mareo, mareos, marea*, mareé, vértigo*, aturdid*, cabeza me da vueltas, me da vueltas, todo da vueltas, "
        "todo me da vueltas, me daba vueltas, da vueltas, dando vueltas, gira la habitación, me gira, "
        "todo gira, desvanecimiento, vahído, vahídos, atarantad*, tarumba, borrach* sin beber, "
        "pierdo el equilibrio, sin equilibrio, inestable, se me va la cabeza, tambale*, se me mueve el piso, "
        "se mueve el suelo, me voy de lado, la cabeza ida, zumbad*, almareo, me tambaleo, veo estrellitas, "
        "se me nubla, no camino derecho, camino como borracho, perdi el equilibrio"
    ),
    C.AGAIN: (
        "otra vez, de nuevo, siempre, a menudo, cada, cada vez, varias, constantemente, todo el tiempo, "
        "sigo, sigue, todos los días, últimamente, desde, muchas veces, seguido, ayer, frecuentes, "
        "frecuente, veces, a cada rato, toda la semana, tercera, tercer, segunda vez, pocos días, días, "
        "dias, semana, a diario, diario, no se me quita, no se me pasa, llevo, vuelve, vuelven, volvió, "
        "rato, antes no"
    ),
    # breath
    C.BREATHE: (
        "respirar, respiro, respira, coger aire, tomar aire, jalar aire, agarrar aire, inspirar, aire, "
        "respiración, meter aire, recuperar el aliento, coger aliento, aliento"
    ),
    C.CHOKING: (
        "no puedo respirar, no puede respirar, no pudo respirar, no puedo casi respirar, no consigo respirar, "
        "no respiro, no respira, no me llega el aire, no me entra aire, no me entra el aire, no le entra aire, "
        "no puedo coger aire, no puedo tomar aire, apenas respiro, apenas respira, apenas puedo respirar, se ahoga, "
        "me estoy ahogando, ahogándome, se está ahogando, ahogando, se asfixia, asfixia, asfixiando, me asfixi*, "
        "respira mal, no logro respirar, jadeando, boqueando, no jalo aire, me atraganto, no me pasa el aire, "
        "no podía respirar, no me da el aire, atragant*, no puedo ni respirar, no puedo coger aliento, "
        "no me entra nada de aire, no me entra oxígeno, se queda sin aire, se está quedando sin aire, "
        "sin poder respirar, no le llega el aire, dejó de respirar, ha dejado de respirar, no está respirando, "
        "ahogándose, no llego a respirar, no alcanzo a respirar, no jalo, no me entra el aire bien, ya no respira, "
        "no me llega aire, no llega aire, boqueo, espuma rosa, espuma rosita, atoro, atorada, atorado, se me atoro, "
        "me asfixio, me cuesta muchisimo respirar, lo que me cuesta respirar, ahogada y el inhalador, "
        "casi no puedo respirar, labios morados, se esta ahogando, no coge aire, no agarro aire, "
        "espuma por la boca, como un pez fuera, como pez fuera del agua, se le hunden las costillas, "
        "se me hunden las costillas, pitos al respirar, silbidos al respirar, pita el pecho, me pita el pecho, "
        "ahogada, ahogado, el aire no entra, el aire no me entra, el aire no me pasa, no me entra el aliento, "
        "no entra aire"
    ),
    C.AIR_HUNGER: (
        "me falta el aire, me falta aire, me falta mucho el aire, le falta el aire, falta el aire, "
        "falta aire, falta de aire, faltando el aire, faltándome el aire, no me alcanza el aire, "
        "me quedo sin respiración, sin respiración, me falta la respiración, corto de respiración, "
        "corta de respiración, me falta el resuello, sin resuello, poco aire, me ahogo, me asfixio, "
        "me cuesta respirar, cuesta respirar, cuesta mucho respirar, le cuesta respirar, "
        "dificultad para respirar, dificultad al respirar, problemas para respirar, respiro mal, "
        "respiro con dificultad, respirar .. cuesta, me quedo sin aire, quedado sin aire, "
        "me falta oxígeno, no me llena el aire, respiro rápido, no me llenan los pulmones, "
        "respiración agitada, respiración entrecortada, me sofoco, me falta la respiracion"
    ),
    C.BREATHLESS: (
        "sin aire, sin aliento, falta de aliento, ahog*, disnea, fatigado al respirar, sofoc*, resoplando, "
        "jadeo, jadeos, jadea*, asfixiad*, con la lengua fuera, resuello, agitad*, me agito, me canso al respirar, "
        "ahogad*, "
        "ahogo*, bofe, echando el bofe, sin fuelle, me falta fuelle, qué fatiga, q fatiga, mucha fatiga, "
        "fatiga al, me fatigo al, fatigado al, fatigada al, respiro con mucho trabajo, cuesta respirar, "
        "me cuesta respirar, me ahogo al acostarme, no puedo dormir acostado, no puedo dormir acostada, "
        "duermo sentado, duermo sentada, silba el pecho, silbidos en el pecho, pitidos en el pecho, "
        "pito al respirar, recuperar el aliento, recuperar el resuello"
    ),
    C.BLUE: (
        "morad*, labios azules, labios morados, se está poniendo azul, está azul, poniéndose azul, "
        "azulad*, amoratad*, cianótic*"
    ),
    C.REST: (
        "reposo, sentad*, acostad*, tumbad*, en la cama, de la cama, echad*, por la noche, de noche, "
        "quiet*, descansando, descanso, sin hacer nada, sin moverme, sin hacer esfuerzo, sin esfuerzo, "
        "parada, parado, en el sofá, en el sillón, mucho, mucha, grave, fuerte, no me he movido, "
        "no me moví, viendo la tele, estando, dormid*, ni me he levantado, amanecí, amaneci"
    ),
    C.TASKS: (
        "escalera*, vestirme, vistiéndome, de lo normal, de lo habitual, que antes, ducharme, bañarme, "
        "cualquier esfuerzo, mínimo esfuerzo, menor esfuerzo, tareas, cocinar, cocinando, tender la cama, "
        "hacer la cama, haciendo la cama, barrer, caminar, camino, caminando, andar, andando, cuesta arriba, "
        "al subir, subir, subiendo, pasos, unos metros, a la tienda, compras, compra, limpiar, limpiando, "
        "de la casa, de casa, fregar, atarme, zapatos, nada más levantarme, de siempre, lo de siempre, "
        "esfuerzo, actividades, al hablar, agacharme, trapear, lavarme los dientes, peinarme, "
        "ponerme los zapatos, ponerme los calcetines, abrocharme, cuatro pasos, dos pasos, pocos pasos, "
        "cuadra, cuadras, media cuadra, primer piso, un piso, segundo piso, peldaños, rampa, lavar, "
        "planchar, tender la ropa, ir al baño, al baño, la basura, mercado, súper, supermercado, cargar, "
        "de lo que solía, más que antes, la cocina, cocina, jardín, paseo, pasear, al andar, al caminar, "
        "las bolsas, sillón al baño, recuperar el resuello, voy a la compra"
    ),
    C.INHALE: (
        "al respirar, al inspirar, al coger aire, al tomar aire, respiro hondo, respirar hondo, inspiro, "
        "respiro profundo, cuando respiro, cada vez que respiro, tomo aire"
    ),
    # blood
    C.BLEED: (
        "sangr*, sangrado, hemorragia nasal, epistaxis, me sale sangre, sale sangre, echando sangre, "
        "pierdo sangre, perdiendo sangre, nariz, sangro, sangrando, chorro de sangre, no deja de sangrar, "
        "no para de sangrar, nariz sangrando"
    ),
    C.BLOOD: (
        "sangre, sangr*, rojo en el váter, rojo en el inodoro, escupo rojo, cosa roja, agua roja, flema roja, "
        "cuajarón, cuajarones, coágulo, coágulos, coagulo, coagulos"
    ),
    C.WOUND: "corté, corte, cortado, herida, tajo, cortada, cortadura, rajado, rajé",
    C.NOT_STOPPING: (
        "no para, no paran, no deja de, no se detiene, no se corta, no se me corta, no consigo cortar, "
        "no consigo parar, no puedo parar, no puedo cortar, no hay forma de, no hay manera, sin parar, "
        "no cesa, no lo puedo parar, desde hace una hora, media hora, una hora, a chorros, chorro, "
        "chorreando, empap*, toallas, toalla, no se frena, no frena, no logro parar, no me para, "
        "no se quita, no dejo de, no termina, no corta, brota, no me deja de, no deja de salir, "
        "ya empape, ya empapé, no para de salir, sigue saliendo, no coagula, no se me para, no dejan de, "
        "no hay quien lo pare, no para de sangrar, sangrar sin parar"
    ),
    C.MUCH: (
        "mucho, mucha, muchísim*, bastante, a mares, un montón, abundante, abundantemente, "
        "por todas partes, por todos lados, charco, coágulos, cantidad, demasiad*, de la cabeza, "
        "por la cabeza, litros, un chorro, harto, harta, fuerte, como loco, tod* llen*, cantidades, "
        "mucha sangre, a borbotones, borbotones, chorreo, roja, fresca, coágulo, empapada, empapado"
    ),
    C.HAEMORRHAGE: (
        "hemorragia*, desangr*, sangrado interno, úlcera sangrante, sangrado abundante, melena, posos de café, "
        "a chorros, sale a chorros, chorros de sangre, empapo una compresa, empapo compresas, compresa cada, "
        "toalla cada, empapando, sangre a borbotones, pura sangre, me desangro, desangrando, posos de cafe, "
        "no para de sangrar, sangre por todos lados, muchisima sangre, un monton de sangre, no deja de sangrar, "
        "sangrando a mares, sangre sin parar, mucha sangre, sangre a chorro, coagulos grandes, charco de sangre, "
        "orino sangre, tosiendo sangre, escupo sangre, vomite sangre, vomito sangre, cuajarón de sangre, "
        "cuajaron de sangre, reventó una variz, revento la variz, variz reventada, váter .. rojo, vater .. rojo, "
        "inodoro .. rojo, taza .. roja, taza .. rojo"
    ),
    C.VOMIT: (
        "devuelto todo, devuelto dos veces, devuelto tres veces, no paro de devolver, ganas de devolver, "
        "vomit*, vómito*, devolver, devuelto, devolví, arcadas, guacare*, trasboc*, arroj*, deponer, "
        "potar, basca, volví la comida, echo la comida, arquead*"
    ),
    C.COUGH: "tos, tos*, toser, tosiendo, tosí, escup*, gargajo*, flemas, esputo*, expector*, tosi, eché, eche",
    C.STOOL: (
        "heces, caca, popó, popo, deposicion*, deposición, excremento*, evacu*, cagada, cagué, cagar, "
        "orina, pis, pipí, orinar, orino, mear, meo, del recto, baño, del cuerpo, obrar, materia fecal, "
        "el inodoro, ano, caquita"
    ),
    C.BLACK: (
        "negr*, alquitrán, alquitran, como carbón, como brea, petróleo, brea, petroleo, chapapote, café molido, "
        "tinta, carbón"
    ),
    # medicines and poisons
    C.OVERDOSE: (
        "sobredosis, me pasé de dosis, me intoxiqu*, me envenené, intoxicación, intoxicad*, envenen*, doble dosis, me "
        "las tome todas, tome todas, todo el frasco, el frasco entero, la caja completa, la caja entera, toda la "
        "caja, caja de pastillas entera, todas las pastillas, me pase de pastillas, tome de mas, dosis doble, el "
        "doble de insulina, tomando doble, tome doble, en vez de una, en vez de 4, unidades en vez de, dos veces la "
        "pastilla, cuatro veces la, todo el blister, tome demasiadas, tome muchas pastillas, por despiste me tome, un "
        "monton de pastillas, un puñado de pastillas, muchas pastillas, todas mis pastillas, demasiadas pastillas, "
        "pastillas de golpe, tome el doble, me puse el doble, insulina dos veces, el doble de la pastilla, me inyecte "
        "de mas, tome dos veces, dosis equivocada, me equivoque de pastilla, me equivoque de insulina, me meti el "
        "lunes martes, lunes martes y miercoles, vacié el pastillero, vacie el pastillero, se ha tragado dos cajas, "
        "se tragó dos cajas, me tragué dos cajas, me he tragado dos cajas, se ha tragado una caja, se tragó una caja, "
        "me tragué una caja, se ha tragado la caja, se tragó la caja, me tragué la caja, se tomó dos cajas, me tomé "
        "dos cajas, se ha tomado dos cajas, se tomó la caja entera, me tomé la caja entera"
    ),
    C.TOOK: (
        "tom*, tomé, tomado, tomó, trag*, ingerí, ingerid*, metí, inyect*, puse, puesto, pinché, bebí, "
        "me he puesto, comí, zampé, empastill*, tragué, trague, bebi, me metí, me meti, me chuté, me chute, "
        "me pinché, me puse"
    ),
    C.SWALLOWED: (
        "trag*, tomó, tomado, comió, comido, comio, bebió, bebido, ingirió, se ha metido, engull*, se metió, se ha "
        "tragado, se tragó, me he tragado, se ha tomado"
    ),
    C.TABLETS: (
        "pastilla*, píldora*, pildora*, comprimido*, cápsula*, medicina*, medicamento*, medicación, remedio*, "
        "paracetamol, ibuprofeno, aspirina*, sintrom, somnífero*, ansiolítico*, calmante*, tranquilizante*, "
        "antidepresivo*, dosis, morfina, tramadol, diazepam, clonazepam, jarabe, gotas, analgésico*, anticoagulante*, "
        "betabloqueante*, parches, ramipril, lisinopril, enalapril, amlodipin*, furosemid*, metformin*, warfarin*, "
        "apixaban*, rivaroxaban*, zopiclon*, diazepam*, lorazepam*, oxycod*, oxycont*, pregabalin*, gabapentin*, "
        "sertralin*, quetiapin*, simvastatin*, atorvastatin*, *prolol*, bisoprolol*, atenolol*, digoxin*, zolpidem*, "
        "amitriptylin*, mirtazapin*, citalopram*, codein*, tramadol*, orfidal, nolotil, tranquimazin, lexatin, "
        "losartán, tabletas, las de dormir, las de la tensión, metformina, caja, frasco, blister, pastillas, bote de "
        "pastillas"
    ),
    C.INSULIN: (
        "insulina*, de la rápida, de la lenta, insulina rápida, insulina lenta, lantus, toujeo, tresiba, levemir, "
        "novorapid, humalog, apidra"
    ),
    C.TOO_MUCH: (
        "todas, todo, toda, entera, entero, el doble, doble, dos veces, de más, demás, demasiad*, sin querer, por "
        "error, por equivocación, equivoqu*, me confundí, confund*, en lugar de, en vez de, puñado, puño, un montón, "
        "muchas, muchos, me pasé, pase, pasé, caja, tubo, blíster, bote, frasco, repetí, repetido, de golpe, tres "
        "veces, el triple, doce, quince, veinte, treinta, varias, de una, otra vez, en total, mal, por dos, ya las "
        "había tomado, ya la había tomado, se me olvidó que, me olvidé que, olvidé que ya, repetí la dosis, dos "
        "dosis, de una sentada, de una vez, diez, dieciocho, cuarenta, cincuenta, todas las que, las que quedaban, "
        "que quedaban, toda la caja, semana entera, lo que había, cuatro veces, cinco veces, mezclé, revolví, más de "
        "la cuenta, más de lo que, equivocada, equivocado, equivocadas, caja entera, bote entero, frasco entero, "
        "blíster entero, la caja, el bote, media caja, montones, muchísimas, un puñado, puñados, un chingo, un "
        "chorro, un titipuchal, la tira de, envez de, enves de, en ves de, en lugar de la, dos cajas, tres cajas, las "
        "cajas, dos blísters, dos frascos, dos botes"
    ),
    C.POISON: (
        "lejía, cloro, amoniaco, amoníaco, detergente, limpiador, matarratas, raticida, veneno, "
        "anticongelante, insecticida, suavizante, sosa, aguarrás, desatascador, raid, lejia, salfuman, "
        "acido muriatico, producto de limpieza, quitaesmalte, gasolina"
    ),
    # despair
    C.KILL_SELF: (
        "me voy a matar, voy a matarme, matarme, me mato, se mata, se va a matar, quiere matarse, matarse, "
        "me quiero matar, quitarme la vida, quitarse la vida, me quito la vida, se quita la vida, "
        "acabar con mi vida, acabar con su vida, terminar con mi vida, terminar con todo, acabar con todo, "
        "suicid*, quitarme de en medio, quitarme del medio, tirarme por, tirarme al, tirarme de, "
        "tirarme a las vías, me tiro por, ahorcar*, ahorcarme, colgarme, pegarme un tiro, hacerme daño, "
        "me hago daño, lastimarme, hacerse daño, lastimarse, acabar conmigo, poner fin a mi vida, "
        "poner fin a todo, fin a mi vida, cometer una locura, hacer una locura, envenenarme, matarnos, "
        "me aviento, aventarme, me tiro, me voy a tirar, lanzarme, me lanzo, saltar del, saltar por, "
        "saltar desde, tirarme del puente, cortarme el cuello, terminar con mi sufrimiento, "
        "acabar con mi sufrimiento, acabar con esto de una vez, quiero acabar con todo, "
        "quiero terminar con todo, se quiere matar, se va a tirar, se quiere morir, intentó matarse, "
        "quise matarme, quitarme la existencia, acabar de una vez con todo, poner punto final a mi vida, "
        "tirarme del, cortarme las venas, desaparecer del mundo, saltar del puente, tirarme a las vias, "
        "tirarme al tren, matandome, acabar con todo esta noche, me voy a colgar, "
        "tomarme todo para no despertar, quitar la vida, me voy a ahorcar, me voy a cortar, "
        "me voy a pegar un tiro, me voy a ahogar a proposito, voy a acabar con todo"
    ),
    C.CUT_SELF: (
        "cortarme las venas, cortar las venas, corté las venas, cortado las venas, me acabo de cortar, me corto, "
        "me corté a propósito, me corté los brazos, autolesi*, me he cortado a propósito, cortarme los brazos, "
        "hacerme cortes, me hice cortes, me quemé a propósito, me hago cortes, rajarme, me rajé, "
        "me he cortado los brazos, me he cortado las muñecas, me corté las muñecas, cortarme las muñecas, "
        "me corté el brazo con, me corté con la cuchilla, me he cortado con la cuchilla, me corto los brazos, "
        "me corto las piernas, me hice daño a propósito, me he hecho daño a propósito, me quemo con, me golpeo, "
        "me autolesiono, me he rajado, hecho cortes, hice cortes, cortes en los brazos, cortes en las piernas, "
        "cortes en las muñecas, cortando los brazos, cortando las venas, corte las venas, cortarme, "
        "me corte a proposito, haciendome cortes, autolesion*, me lastimo a proposito, me hago daño a proposito, "
        "me he vuelto a cortar, me volví a cortar, me volvi a cortar, me corté otra vez"
    ),
    C.END_IT: (
        "se acaba todo, se acabó todo, acabo con todo, termino con todo, lo hago, se termina todo, "
        "se acaba, acaba todo, ya no estaré, no voy a estar, me voy para siempre, acabo con esto, "
        "termino con esto, le pongo fin, no amanezco, no llego a mañana"
    ),
    C.TONIGHT: "esta noche, hoy, mañana, ahora mismo, para siempre, hoy mismo, de hoy no pasa",
    C.FAREWELL: (
        "carta de despedida, cartas de despedida, nota de despedida, nota de suicidio, me despedí de todos, me he "
        "despedido, ya me despedí, dejé una carta, carta para mis hijos, escribí una carta, escrito la carta, ya no "
        "estare, despues de esta noche, no estare mas, me despido de todos, adios a todos, despidiendose, se "
        "despidio de mi, mensaje de despedida, adios para siempre, este es mi ultimo mensaje, no me van a ver mas, "
        "cuando yo no este, cuiden a mis hijos, cuida de mis hijos, perdonenme por lo que voy, esta noche me "
        "despido, me despido para siempre, adiós para siempre, adiós a todos, este es mi adiós, mi último mensaje"
    ),
    C.READY: (
        "preparad*, guardad*, juntad*, listas, list*, reunid*, delante, aquí al lado, en la mano, conmigo, "
        "contadas, acumul*, a mano, sobre la mesa, encima de la mesa, encima de la cama, delante de mí, preparadas"
    ),
    C.MEANS: (
        "cuerda, soga, cuchillo, cuchilla, navaja, pistola, arma, puente, vías, balcón, pastillas, "
        "encerrad*, gas, ventana"
    ),
    C.THOUGHTS: (
        "pienso, pienso en, pensar, pensado, pensamiento*, pensando, se me pasa por la cabeza, "
        "me pasa por la cabeza, se me cruza, ideas de, idea de, no lo voy a hacer, no lo haría, "
        "nunca lo haría, no voy a hacerlo, a veces, imagino, fantaseo, me ronda, ganas de, "
        "he llegado a pensar"
    ),
    C.DEATH_WISH: (
        "quiero morir*, quisiera morir*, me quiero morir, me quisiera morir, ganas de morir*, deseo morir*, deseo "
        "de morir, quiere morir*, mejor muert*, estaría mejor muert*, mejor estar muert*, quisiera estar muert*, "
        "ojalá me muriera, ojalá me muera, ojalá no despertara, no quiero vivir, no quiero seguir viviendo, no "
        "quiero vivir más, ya no quiero vivir, no quiero seguir aquí, ya no quiero estar aquí, no quiero estar "
        "aquí, no quiero existir, dejar de existir, desaparecer para siempre, quisiera desaparecer, quiero "
        "desaparecer, no merece la pena vivir, no vale la pena vivir, sin ganas de vivir, no tengo ganas de vivir, "
        "no despertar, no despertarme, no volver a despertar, dormirme y no, cansado de vivir, cansada de vivir, "
        "harto de vivir, harta de vivir, mejor sin mí, sin mi todos, estarían mejor sin, no tengo razón para vivir, "
        "no tengo motivos para vivir, no hay razón para vivir, no haber nacido, ideas de muerte, pienso en la "
        "muerte, no aguanto más esta vida, la vida no tiene sentido, la vida ya no, me gustaría no despertar, ojalá "
        "no despierte, ojalá no me despierte, no amanecer, quisiera no despertar, quisiera dormirme y no, no seguir "
        "viviendo, seguir viviendo, no tener que vivir, ojalá estuviera muert*, preferiría morir*, preferiría estar "
        "muert*, prefiero morir*, prefiero estar muert*, mejor morir*, mejor me muero, si me muero, si me muriera, "
        "si no existiera, no existir, desaparecer, sobro en este mundo, sin mí, sin mi estarían, cansad* de vivir, "
        "no tengo ganas de seguir viviendo, perdí las ganas de vivir, he perdido las ganas de vivir, se me quitaron "
        "las ganas de vivir, no me importaría morir*, no me importa morir*, no vale la pena seguir, pa qué vivir, "
        "que me lleve dios, que dios me lleve, quisiera morirme, ganas de morir, no quiero seguir aqui, no quiero "
        "estar aqui, ojala no despertara, ojala no despierte, dormirme y no despertar, mejor muerto, mejor muerta, "
        "mejor sin mi, estarian mejor sin mi, ya no quiero existir, prefiero morir, prefiero estar muerta, para que "
        "vivir, no tengo por que vivir, deseo morir, morirme ya, me quiero morir en serio, quiero que todo acabe, "
        "quiero que se acabe todo, ganas de desaparecer, preferiria morir, si me muero nadie, no quiero despertar, "
        "no quiero estar viva, no quiero estar vivo, no le encuentro sentido a vivir, no quiero despertarme, no "
        "quiero levantarme mañana, no despertara, no me despertara, ojalá no amaneciera"
    ),
    C.HOPELESS: (
        "en un pozo, pozo sin fondo, túnel sin salida, estoy desesperad*, "
        "no le veo sentido, sin sentido todo, nada tiene sentido, ya nada tiene, todo me da igual, para qué seguir, "
        "pa que seguir, para qué vivir, no tiene caso, no hay salida, no veo salida, no le veo salida, sin salida, "
        "no hay esperanza, sin esperanza*, perdí la esperanza, perdido la esperanza, no tengo esperanza*, "
        "desesperanza*, estoy hundid*, nunca va a mejorar, nada va a mejorar, no va a mejorar, no tengo futuro, no "
        "hay futuro, sin futuro, no puedo más, ya no puedo más, me rindo, me he rendido, tiré la toalla, he tirado "
        "la toalla, no valgo nada, no sirvo para nada, soy un estorbo, soy una carga, desesperad*, estoy "
        "desesperad*, todo perdido, no veo luz, túnel, pozo, tocado fondo, toqué fondo, lo veo todo negro, todo "
        "negro, nada merece la pena, nada vale la pena, qué más da todo, da igual lo que haga, ya todo da igual, "
        "vacío por dentro, para qué tanto, para que seguir, pa qué seguir, no le encuentro sentido, no encuentro "
        "sentido, no tiene sentido seguir, nada me importa, ya nada me importa, no veo futuro, no veo el futuro, "
        "todo es inútil, es inútil todo, soy un inútil, soy inútil, soy un fracaso, un fracaso total, soy una "
        "inútil, nadie me necesita, no hay remedio, esto no tiene remedio, no tiene arreglo, no levanto cabeza, no "
        "salgo de esta, de esta no salgo, no aguanto más, ya no aguanto, no doy más, ya no doy más, estoy acabad*, "
        "estoy en el pozo, en un pozo, en un agujero negro, todo oscuro, solo veo oscuridad, vacía por dentro, "
        "muert* por dentro, muerto en vida, nunca saldré, no hay nada que hacer, ya no espero nada, no espero nada, "
        "sin ilusión, perdí la ilusión, mi vida no vale, mi vida es un desastre, la vida no me, nada me ilusiona, "
        "ya nada me hace, perdido toda esperanza, perdí toda esperanza, perdida toda esperanza, ya no puedo mas, no "
        "puedo mas con, no tengo a nadie, no tengo fuerzas para seguir, nadie me echaria de menos, nadie me "
        "extrañaria, a nadie le importo, no aguanto mas esta vida, estoy harto de todo, estoy harta de todo, todo "
        "es inutil, estorbo a todos, harto de vivir, harta de vivir, para qué sigo, para qué estoy, para qué vivo, "
        "para qué existo, para qué todo, total para qué, ya para qué"
    ),
    # eating
    C.EATING: (
        "laxante*, atracón*, atracones, me atraco, anorexi*, bulimi*, trastorno alimentario, "
        "trastorno de alimentación, trastorno de la alimentación, tca, me meto los dedos, meterme los dedos, "
        "dedos en la garganta, odio mi cuerpo, me da asco mi cuerpo, asco mi cuerpo, asco verme, miedo a comer, "
        "miedo de comer, miedo a engordar, pánico a engordar, miedo a la báscula, terror a la báscula, "
        "obsesionad* con mi peso, obsesionad* con el peso, obsesionad* con la comida, obsesión con el peso, "
        "obsesión por la comida, solo pienso en mi peso, sólo pienso en comida, solo pienso en comida, "
        "me provoco el vómito, provocarme el vómito, provocar el vómito, me mato de hambre, matarme de hambre, "
        "pasar hambre para, dejar de comer para, dejé de comer, casi no como, apenas como, no puedo parar de comer, "
        "no puedo dejar de comer, no puedo dejar de pesarme, me peso diez veces, me peso a cada rato, "
        "diurético* para, pastillas para adelgazar, me castigo sin comer, purg*, escupo la comida, ayuno para, "
        "tirar la comida, escondo la comida, calorías al día, solo agua, sólo agua, solo café, a base de café, "
        "a base de agua, me mato a ejercicio para quemar, quemar lo que, quemar todo lo que comí, no merezco comer, "
        "me comí todo, me he comido todo, arrasé la nevera, arrasé con la nevera, vacié la nevera, "
        "como a escondidas, comer a escondidas, comiendo a escondidas, me da pánico engordar, me da miedo engordar, "
        "me da miedo comer, me da miedo la báscula, me da terror subir, me siento culpable cada vez que como, "
        "culpable por comer, culpa después de comer, me odio por comer, me pesé diez, me peso todo el día, "
        "me peso cada hora, me peso veinte, me salto las comidas para, me salto todas las comidas, "
        "saltándome comidas, dejo de comer, vomito lo que como, vomito todo lo que, vomitar lo que como, "
        "vomitar la cena, devolver lo que como, me hago vomitar, hacerme vomitar, odio verme, odio mi barriga, "
        "no me permito comer, comer sin parar, como sin parar, pastillas para no comer, a pura agua, pura agua, "
        "solo con agua, cafe y chicle, terror a la comida, se me cae el pelo a mechones, atracon, "
        "vomito a proposito, me provoco el vomito, provocarme el vomito, laxantes para, no ceno para bajar, "
        "dejo de comer para, me purgo, asco de mi cuerpo, vomito todo lo que como, atracon y vomito, "
        "tres dias sin comer, dias sin comer, me doy atracones, vomitar despues de comer, vomito despues de comer, "
        "tengo panico a engordar, miedo a la bascula, terror a la bascula, panico a la bascula, dejado de comer, "
        "deje de comer, meto los dedos, dedos a la garganta, agua y hielo, solo agua y hielo, me veo gorda, "
        "me veo gordo, me salto la insulina, meto los dedos despues de, los dedos despues de cada, laxantes, "
        "me hace engordar, se me cae el pelo, 300 calorías, devuelvo lo que como, sin regla"
    ),
    C.ON_PURPOSE: (
        "a propósito, adrede, aposta, para adelgazar, para bajar, pa bajar, para no engordar, dedos, "
        "intencionad*, queriendo, para q baje, a escondidas, pa que baje, me provoco, para pesar menos"
    ),
    C.MEAL: (
        "después de comer, después de cenar, tras comer, tras la cena, después de cada comida, "
        "luego de comer, al terminar de comer, después del almuerzo, comida, tras cada comida, "
        "después de desayunar"
    ),
    C.NOT_EATEN: (
        "no como, no he comido, sin comer, no comí, no pruebo bocado, no he probado bocado, "
        "sin probar bocado, no como nada, nada de comer, no ha comido, llevo sin comer, ayunas, "
        "no meto nada en el cuerpo, nada en el estómago, no he tomado nada, solo líquidos, "
        "no almuerzo ni ceno, no ceno ni, sin probar comida, no pruebo la comida, no pruebo comida, "
        "estoy sin comer, no he comido nada"
    ),
    C.FOR_DAYS: (
        "desde, días, dias, lunes, martes, miércoles, jueves, viernes, sábado, domingo, semana, peso, báscula, "
        "balanza, pesarme, bajar, adelgazar, antier, ayer, semana pasada, la semana pasada, el otro dia, "
        "el otro día, este mes, este año, desde el verano"
    ),
    # swelling
    C.SWOLLEN: (
        "hinch*, inflam*, inflad*, infl*, edema, como un globo, globo, como una bota, hinchadisim*, "
        "abotagad*, deform*, abultad*, tumefact*, hinchand*, se hinchó, hinchazon, inflamand*, "
        "dura y gorda, gordísima, enorme, el doble, como un melón, como una salchicha, edematizad*, "
        "se me puso como"
    ),
    C.BIGGER: (
        "más gorda, más gordo, más grande que, más gruesa, el doble de, mucho más gorda, más ancha, "
        "mas gorda, más hinchada que, no me entra el zapato, no me cabe el zapato, el doble"
    ),
    C.HOT_OR_RED: (
        "roja y caliente, caliente y roja, roja, caliente y dura, caliente y me duele, "
        "colorada y caliente, enrojecid*, caliente, morada, amoratada, dura y caliente, ardiendo, "
        "colorada, arde"
    ),
    C.CLOT: "trombosis, trombo*, coágulo en, flebitis, coágulo, trombosis venosa, tvp",
    C.CLOSING: (
        "cerr*, cierra, cerrando, se cierra, aprieta, aprietando, estrech*, hincha*, tragar, "
        "no puedo tragar, obstru*, atasc*, tapad*, no puedo ni tragar, no me pasa ni la saliva, "
        "no paso ni agua, nudo, ahoga, hinchando, cerrad*, se me cierra"
    ),
    C.ALLERGY: (
        "anafil*, choque anafiláctico, shock anafiláctico, reacción alérgica, reaccion alergica, choque alérgico, "
        "alergia fuerte, ronchas por todo, ataque de alergia, adrenalina, edema de glotis, urticaria por todo, "
        "ojos de hinchados, ojos hinchados, voz como de pito, garganta cerrada, garganta apretada, "
        "se me cierra la garganta, cerrando la garganta, lengua hinchada, lengua gorda, labios hinchados, "
        "hinchan los labios, hincha la lengua, cara hinchada, ronchas por todos lados, lleno de ronchas, "
        "llena de ronchas, se me hincha la cara, me pica todo y, se me hincha la garganta, se me hincho la cara, "
        "se me hincho la lengua, se me hincharon los labios, cara como un globo, ojos cerrados de la hinchazon, "
        "urticaria, voz rara y picor, hinchada la cara, no puedo tragar, se me esta cerrando la garganta, "
        "siento la garganta apretada, comi mani y, autoinyector, auto inyector, pluma de adrenalina, "
        "adrenalina puesta, me puse la adrenalina, como un pan de pueblo, cara como un pan"
    ),
    C.RASH: (
        "ronchas, sarpullido, urticaria, habones, salpullido, pica todo el cuerpo, picazón por todo, "
        "picor por todo, me pica todo, manchas rojas, todo rojo, granos por todo, granitos por todo"
    ),
    C.TRIGGER: (
        "picó, picadura, picado, avispa, abeja, avispón, nuez, nueces, cacahuete*, maní, cacahuate*, marisco*, "
        "camaron*, gambas, camarón, antibiótico*, penicilina, amoxicilina, pastilla nueva, medicina nueva, "
        "medicamento nuevo, inyección, vacuna, ibuprofeno, huevo, kiwi, almendra*, avellana, almendra, "
        "frutos secos, cacahuete, mani"
    ),
    # exercise
    C.NAUSEA: (
        "náusea*, nausea*, ganas de vomitar, ganas de devolver, revuelto el estómago, estómago revuelto, "
        "asco en el estómago, mal cuerpo, ansias de vómito, angustia en el estómago, revoltura"
    ),
    C.FATIGUE: (
        "cansancio inusual, cansancio repentino, agotamiento repentino, agotad* de repente, "
        "fatiga inusual, cansancio extraño, cansancio anormal, más cansad* de lo normal, "
        "cansancio extremo"
    ),
    C.SHARP: (
        "pinchazo*, tirón*, latigazo*, torc*, torcí, retorc*, desgarr*, crujió, cruj*, chasquido, tronó, "
        "truen*, rompió, rotura, agud*, punzante, de repente, repentin*, esguince, me torcí, jaló, "
        "jalon*, jalón, enganch*, bloque*, crac, clav*, luxé, acalambr*, engarrot*"
    ),
    C.INJURY: (
        "lumbago, ciática aguda, esguince, desgarro, distensión, contractura, rotura fibrilar, tirón muscular, "
        "calambre fuerte, torcedura, me torcí, me jalé, me lastime el, me lastimé el gemelo, voy cojeando, "
        "me lesione"
    ),
    C.EFFORT: (
        "al levantarme, al agacharme, haciendo, ejercicio*, prueba, caminata, caminar, al andar, test, "
        "entrenamiento, clase, sentadilla*, desde ayer, nuevo, antes no, nueva, bici, al pisar, "
        "al sentarme, gimnasia, estiramiento*, después de"
    ),
    # falls, sugar, water
    C.HEAD: "cabeza, nuca, sien, frente, coco, craneo, mollera",
    C.HIT: (
        "golpee, golpe, golpeo, golpeado, golpearme, pegue, pego, di en, di con, choque, abrio, abri, rompi, "
        "partio, descalabr*, estrelle, cabezazo, porrazo, trastazo, cayo en, cai de, me di, golpe fuerte, "
        "un golpe"
    ),
    C.HEAD_INJURY: (
        "golpe en la cabeza, golpe fuerte en la cabeza, conmocion cerebral, traumatismo craneal, "
        "fracture el craneo, fractura de craneo, pupila mas grande, una pupila, pupilas diferentes, "
        "pupilas distintas, abrio la cabeza, abri la cabeza, me pegue en la cabeza, chichon enorme, descalabr*, "
        "me di un golpe fuerte, caí de cabeza, cai de cabeza, me golpee la cabeza, golpee en la cabeza, "
        "se golpeo la cabeza, se abrio la cabeza, brecha en la cabeza, me pegue con la cabeza, chichon, "
        "sangra la nuca, me sangra la nuca, sangre por el oido, liquido por el oido, una caida de cabeza, "
        "un golpe en la cabeza, sin casco"
    ),
    C.THINNERS: ("sintrom, anticoagulante*, anticoagulado, anticoagulada, warfarina, apixaban, eliquis, xarelto"),
    C.SUGAR: "azucar, glucosa, glucemia, glicemia, azucares",
    C.SUGAR_LOW: "baja, bajo, bajisima, bajon, bajita, por los suelos, se me bajo, cayo, desplom*, bajando",
    C.HYPO: (
        "en hipo, hipo fea, hipo fuerte, "
        "una hipo, "
        "hipoglucemia, hipoglicemia, hipo, bajon de azucar, bajada de azucar, se me bajo el azucar, "
        "baja de azucar, azucar por los suelos, choque insulinico, azucar baja, azucar muy baja, "
        "baja la glucosa, glucosa baja, glucosa por los suelos, se me cayo el azucar, el azucar por el piso, "
        "me dio un bajon"
    ),
    C.INHALER: "inhalador, ventolin, salbutamol, asma, puff, bombita, el azul, broncodilatador, espray",
    C.NO_USE: (
        "no hace nada, no me hace, no funciona, no sirve, no me sirve, no ayuda, no me ayuda, no me alivia, "
        "no hace efecto, no me hace nada, ataque, crisis, del bueno, fuerte, muy mal, se acabo, vacio"
    ),
    C.PLAN: "planeado, plan, planes, planeada, decidido, todo listo",
    C.BRINK: (
        "en el puente, en la azotea, en el borde, en la cornisa, en las vias, en el tejado, "
        "al borde del puente, en la baranda, del barranco"
    ),
    C.URINATE: "orinar, mear, hacer pis, hacer pipi, mear nada, hacer del uno, vaciar la vejiga",
    C.GROIN: "entrepierna, ingle, partes intimas, genitales, entre las piernas, mis partes",
    C.FAST_RATE: "ciento cincuenta, ciento sesenta, ciento setenta, ciento ochenta, doscientas por minuto",
    C.METER: "glucometro, aparato, medidor, sensor, aparatito, maquinita",
    C.SHAKY: (
        "tembl*, tiembl*, sudor*, sudando, sudo, temblor*, temblequ*, sudad*, bañado en sudor, bañada en sudor, "
        "empapado en sudor, empapada en sudor, chorreando sudor"
    ),
    # a cry for help
    C.CRY: (
        "socorro, auxilio, sos, pidan ayuda, pide ayuda, manden ayuda, necesito ayuda urgente, necesito ayuda ya, "
        "necesito ayuda ahora, sálvenme, ayuda urgente, necesito una ambulancia, una ambulancia ya, ambulancia por "
        "favor, necesito un médico ya, me caí y no me puedo levantar, no me puedo levantar del suelo, no puedo "
        "levantarme del suelo, tirada en el suelo sin poder, vengan rápido, vengan ya, ven rápido, que venga "
        "alguien ya, que alguien venga, manden a alguien, ayuda ya, ayuda rápido, necesito que vengan, tirada en el "
        "suelo, tirado en el suelo, estoy tirada, estoy tirado, llamen a una ambulancia, llamad al 112, llamen al "
        "911, llama al 112, llamen a emergencias, necesito un medico ya, llevenme al hospital, vengan rapido, que "
        "alguien llame, alguien que llame, llame a una ambulancia, manden una ambulancia, mandenme una ambulancia, "
        "una ambulancia por favor, ambulancia ya, vengan por mi, necesito ir al hospital ya, necesito urgencias, me "
        "muero ayuda, un medico por favor, ayudenme por favor me siento, socorro ayuda, vengan por favor, no puedo "
        "abrir la puerta, llamen al hospital, llama al hospital, que venga alguien por favor, estoy sola y "
        "asustada, estoy solo y asustado, llamen a alguien, llama a alguien, llamad a alguien, avisen a alguien, "
        "ayuda llamen, por favor ayuda llam*"
    ),
    C.HELP_ME: (
        "ayuda, ayúdenme, ayúdame, ayúdeme, ayudadme, ayudame, ayudenme, necesito ayuda, "
        "necesito a alguien, que venga alguien, alguien venga, necesito un médico, necesito un doctor, "
        "échame una mano rápido"
    ),
    C.URGENT: (
        "ya, ahora, ahora mismo, rápido, pronto, urgente*, urgencia*, !!, solo en casa, sola en casa, "
        "estoy sola, estoy solo, en el suelo, en el piso, no me puedo levantar, no puedo levantarme, "
        "me siento malísim*, me siento mal, me siento fatal, me encuentro fatal, me encuentro muy mal, "
        "muy mal, algo va mal, algo no va bien, me caí, caíd*, corran, deprisa, corre, 🚑, 🆘, me voy a morir, "
        "fatal, me siento muy mal, rapido, urgente"
    ),
    C.CALL: (
        "llam*, llamen, llama, llame, llamar, pidan, pide, manden, avis*, traigan, necesito, envíen, marca, marquen, "
        "manda, mandá, mande, mandad, marcá, marque, llamá, avisá"
    ),
    C.AMBULANCE: (
        "ambulancia, ambulansia, 112, 911, 061, emergencias, urgencias, paramédico*, samu, bomberos, "
        "al médico ya, un médico ya, doctor ya"
    ),
    C.DYING: (
        "me muero, me estoy muriendo, me voy a morir, se está muriendo, se muere, siento que me muero, "
        "creo que me muero, me estoy yendo, me siento morir, siento que me voy, creo que me voy a morir, "
        "esto es el final, me estoy yendo de este mundo, me voy de este mundo, casi me muero, por poco me muero, "
        "casi muero, casi se muere, casi me muero por"
    ),
    # how it is said
    C.NO: (
        "no, ni, nunca, jamás, sin, ningún, ninguna, ninguno, nada de, tampoco, libre de, cero, nadita de, ni una, "
        "ni un, nada, nadie, ni gota de, ni rastro de, ni pizca de, no hace falta, no necesito, no necesita, no "
        "hace falta que, no hace falta que llames, no hace falta que llamen, no hace falta llamar, no es necesario, "
        "no es necesario llamar, no llames, no llamen, no necesito que"
    ),
    C.NO_AFTER: (
        "no, ninguno, ninguna, ningún, nada, negativo, nunca, tampoco, cero, nada de nada, en absoluto, para nada, ni "
        "una vez, ni una gota, ni pizca, jamás, ni asomo, ni por asomo, no he visto ninguna, ninguno gracias, ninguno "
        "gracias a dios, ninguna gracias a dios, nada gracias a dios, nada por suerte, ninguno por suerte, ninguna "
        "por suerte, no estuve, no estuve ni, no he estado, no he estado ni, no he tenido, no tuve ninguno, no tuve "
        "ninguna, no estuve ni siquiera, no he estado ni siquiera, no he tenido ninguno, no he tenido ninguna"
    ),
    C.BETWEEN: (
        "tengo, tuve, tenía, he, ha, hay, había, tenido, tener, siento, sentí, sentido, noto, noté, notado, de, del, "
        "el, la, los, las, un, una, en, mi, me, algún, alguna, ningún, ninguna, ya, más, hoy, por, ahora, estoy, "
        "estaba, está, es, son, sufro, padezco, señales, síntomas, signos, tipo, ni, se, muy, al, tanto, realmente, "
        "aquí, momento, he tenido, le, te, nos, pienso, pensando, pensar, algo, para, dado, da, dio, dan, dieron, a, "
        "con, cuando, esta, semana, siquiera, apenas, rastro, señal, vez, veces, problema, problemas, problemas de, "
        "con el, con la, en hacerme, solo, voy, va, habido, hubo, eso, eh, lo, cosas, ganas, han, ido, fue, era, "
        "raro, volvió, vuelto, otra, ese, esa, tus, sus, gota, gotas, pizca, mancha, una sola, sola, clase, clase de, "
        "tampoco, llamar, llames, llamen, últimos, días, por el momento, estos, este, mes"
    ),
    C.AND: "y, e, &",
    C.NOR: "o, ni, u",
    C.BUT: "pero, sino, aunque, sin embargo, excepto, salvo, en cambio, menos que",
    C.CLAUSE: "porque, solo, entonces, pues, ya que, mientras, desde que, por qué, que, si, cuando",
    C.FINE: (
        "bien, perfecto, perfecta, perfectamente, normal, normales, ok, genial, estupend*, tranquil*, de maravilla, "
        "sin problema*, fenomenal, regular, correct*, impecable, sanas, sano, limpias, contenta, contento, feliz, "
        "orgullos*, encantad*, satisfech*, a gusto, como un lince, como un águila, como un reloj, como un roble, "
        "como un toro, de lujo, como una rosa, como un chaval, como una chavala, como un bebé, como un tronco, como "
        "nuevo, como nueva, respiro perfecto, qué risa, qué divertido, divertidísimo, buenísimo, me encantó, lo "
        "pasé genial, me encanta, qué gusto"
    ),
    C.PAST: (
        "el año pasado, año pasado, mes pasado, hace años, hace un año, hace meses, hace mucho, en el pasado, antes "
        "tenía, de niño, de niña, verano pasado, invierno pasado, años, meses, antes de la operación, antiguamente, "
        "en su día, 19##, 20##, hace tiempo, de joven, de chica, de chico, de pequeño, de pequeña, de adolescente, en "
        "la infancia, en mi juventud, cuando era, cuando tenía, en el colegio, en la universidad, quedó atrás, ya "
        "curad*, ya superad*, hace veinte, hace diez, en aquella época, en el 98, en el 99, veces pasadas, en los "
        "noventa, en los ochenta, nunca más, antes de la, el siglo pasado, de cría, de crío, de soltera, la vez "
        "pasada, de eso hace, mil años, tiempo atrás, años atrás, atrás hace, cuando nació, cuando nacieron, en la "
        "mili, a los veinte, a los treinta, a los cuarenta, a los quince, a los 20, a los 30, a los 40, a los 15, con "
        "veinte años, con quince años, hace ya, hace tanto, hace la tira, hace siglos, en mis tiempos, en mi época, "
        "siendo joven, siendo niñ*, siendo adolescente, de recién casad*, en la adolescencia, cuando estudiaba, "
        "cuando vivía, cuando trabajaba, en la escuela, de chaval, de chavala, de chiquit*, no me ha vuelto, no ha "
        "vuelto, no volvió, no ha vuelto a, nunca volvió, ya superé, lo superé, superad*, de aquello, en aquel "
        "entonces, por aquel entonces, aquella vez, aquel año, antaño, desde aquello, el verano aquel, en pandemia, "
        "antes de jubilarme, chamaco, veintipocos, veintitantos, otra vida, de chiquito, de chiquita, hace muchos "
        "años, en la uni, alla por, en el 88, del 88, recuperada, curada, ya estoy bien, operado y, operada y, "
        "embarazada de mi, embarazada de ella, cuando estaba embarazada, a los ## intente, a los ## intenté, a los ## "
        "tuve, a los ## me, a los ## años, con ## años, cuando tenia ##, en el servicio militar, de chiquillo, de "
        "chiquilla, de mozo, de niño casi, de niña casi, hace dos semanas, hace tres semanas, hace semanas, hace un "
        "par de semanas, hace unas semanas, hace quince días, hace cuatro semanas, la otra semana me, nada desde "
        "entonces, bien desde entonces, desde entonces nada, desde entonces bien, desde entonces no, desde entonces "
        "perfecto, desde entonces nunca, desde entonces llevo siempre, pasado lejano, tiempo lejano, ya lejano, en el "
        "8#, en el 9#, en el 7#, hace quince años, el día de mi boda, en mi boda, tuve .. en primavera, tuve .. en "
        "verano, tuve .. en otoño, tuve .. en invierno, tuve .. la primavera pasada, tuve .. el otoño pasado, me dio "
        ".. en primavera, me dio .. en verano, me dio .. en otoño, me dio .. en invierno, me dio .. la primavera "
        "pasada, me dio .. el otoño pasado, sufrí .. en primavera, sufrí .. en verano, sufrí .. en otoño, sufrí .. en "
        "invierno, sufrí .. la primavera pasada, sufrí .. el otoño pasado, pasé .. en primavera, pasé .. en verano, "
        "pasé .. en otoño, pasé .. en invierno, pasé .. la primavera pasada, pasé .. el otoño pasado"
    ),
    C.NOW: (
        "ahora, ahora mismo, ahorita, hoy, otra vez, de nuevo, todavía, aún, sigo, sigue, "
        "en este momento, esta mañana, esta noche, llevo, acabo de, acaba de, me acaba, desde hace rato, "
        "desde ayer, desde anoche, desde hace una hora, en estos momentos, ya mismo, recién"
    ),
    C.JUST_NOW: (
        "acabo de, acaba de, me acaba de, hace un momento, hace un minuto, hace un rato, hace minutos, "
        "minutos, min, recién, hace nada, ahorita"
    ),
    C.EARLIER: "esta mañana, hoy temprano, antes, hace unas horas, al mediodía, hace horas",
    C.SETTLED: (
        "se me pasó, se pasó, ya pasó, se me ha pasado, se ha pasado, ya estoy bien, desapareció, "
        "se fue, se me quitó, se me ha quitado, se calmó, ya no, ya mejor, mejoró, cedió, ha pasado, "
        "se ha ido, se quitó, ya se fue, ya se me fue"
    ),
    C.IMAGINED: (
        "y si, qué pasa si, si me, si tengo, si noto, debería, miedo a, miedo de, riesgo de, riesgo, síntomas de, "
        "señales de, prevenir, evitar, qué es, qué son, cómo sé si, cómo se sabe, como se sabe, cómo saber, he leído, "
        "leí, soñé, sueño con, es normal, en caso de, puede dar, puede causar, puede provocar, no creo, artículo, "
        "noticia, curiosidad, me preguntaba, cuáles son, cuando a alguien, qué hacer si, preocupa que, diferencia "
        "entre, es peligroso, a partir de cuánto, desde cuánto, por debajo de cuánto, cuál es el valor, qué valores, "
        "por saber en general, cuánto se considera, cuando se considera"
    ),
    C.OTHERS: (
        "madre, mamá, padre, papá, marido, esposo, esposa, mujer, hijo, hija, amigo, amiga, vecino, vecina, "
        "hermano, hermana, él, ella, ellos, abuelo, abuela, tío, tía, novio, novia, compañero, compañera, perro, "
        "gato, alguien, gente, suegro, suegra, primo, prima, cuñado, cuñada, mami, papi, amig*, vecin*, abuel*, "
        "compañer*, cuñad*, nen*, bebé, nieto, nieta, chico, chica, señor, señora, viej*, peque, sobrin*, conocid*, "
        "pareja, paciente, cliente, jef*, chamaco, guagua, mi vieja, mi viejo, colega, yerno, nuera, mi gorda, "
        "pibe, niño, niña, niños, niñas, niñit*, a uno le, uno le, una le, a una le"
    ),
    C.ELSEWHERE: (
        "tuvo, tenía, le dio, hospital, clínica, uci, uti, ingresad*, ingresaron, internad*, internaron, año pasado, "
        "mes pasado, semana pasada, ayer, anoche, en paz descanse, murió, falleció, descanse, entierro, hace un mes, "
        "de viaje, en tratamiento, ya en casa, ya esta en casa, ya está bien, está mejor, recuper*, en el trabajo, el "
        "otro día, el lunes, el martes, el miércoles, el jueves, el viernes, el sábado, el domingo, en otra ciudad, "
        "en otro país, en el extranjero, desde niño, desde niña, desde pequeño, desde pequeña, de sevilla, antier, de "
        "hace tiempo, está al teléfono, al otro lado del teléfono, vive en otra, vive en otro, vive lejos, me mandó "
        "un audio, me textea, me mandó un mensaje, por videollamada, está en el trabajo, está en su casa, me llamó "
        "desde, me llama desde, me llamo desde, me escribe del, me escribe desde, me escribe de, por la cámara, en la "
        "cámara, está en su piso, me acaba de marcar, me marcó desde, me acaba de poner que"
    ),
    C.MINE: "yo, me, mi, mí, tengo, estoy, siento, noto, mis, conmigo",
    C.DONT_KNOW: (
        "no sé, no se, no entiendo, no entendí, no comprendo, depende, a qué viene, qué quieres decir, luego te "
        "digo, después te digo, no lo sé, quién sabe, ni idea, qué pregunta, hablar con, no te olvides, no olvides, "
        "no lo olvides, no me olvides, no se te olvide, no te preocupes, no se preocupe, no hay prisa, no importa"
    ),
    C.FILLER: (
        "por favor, porfa, porfavor, muy, mucho, ya, bien, un poco, poco, tan, así, como, de repente, "
        "ahora, hoy, casi, todo, realmente, además, encima, también, otra vez, me, se, le, te, que, q, "
        "el, la, los, las, un, una, mi, es, está, estoy, esta, pues, ay, uf, bastante, súper, super, re, "
        "bien feo, demasiado, se me, se le, ha, he, a, de, del, al, lo, este, esto, todavía, aún, hace, "
        "desde"
    ),
}

ANSWERS: dict[Answer, str] = {
    Answer.YES: (
        "sí, si, sii, sip, ahora mismo, ahorita, a mí, me está pasando, todavía sigue, sigue, simón, "
        "sí po, obvio, claro, claro que sí, ajá, a mi ahora, sigo igual, en este momento, ahora, "
        "va a peor, empeora, cada vez peor, no para, no se quita, no se me quita, todavía, aún, exacto, "
        "correcto, efectivamente, por supuesto, desde luego, afirmativo, soy yo, yo, sí señor, sipi, "
        "seguro, sin duda, dale sí, aha, yes, claro q si, ya mismo, está pasando, pasando, "
        "me sigue doliendo, sigue doliendo, ayuda, rápido, sigo, continúa, por desgracia sí, "
        "desde ayer, desde anoche, desde hoy, desde esta mañana"
    ),
    Answer.HESITANT: (
        "creo que sí, creo, un poco, poquito, me parece, puede ser, todavía lo noto, lo noto algo, "
        "a lo mejor, más o menos, mas o menos, va y viene, supongo, yo diría, capaz, tal vez, quizá, "
        "quizás, probablemente, posiblemente, casi, algo, medio, no del todo, no se me ha ido del todo, "
        "no se ha ido del todo, aunque menos, ligeramente, leve, diría que sí, imagino que sí, "
        "pareciera, a ratos, no estoy seguro pero sí, pue que sí, algo menos, eso creo, no tanto"
    ),
    Answer.NO: (
        "no, nop, q va, qué va, para nada, nel, negativo, no no, nones, nanai, ni hablar, nada, "
        "no ahora, ahora no, de momento no, en absoluto, estoy bien, todo bien, tampoco, no me pasa, "
        "no me está pasando, no señor, jamás, nunca, no gracias, nah"
    ),
    Answer.OVER: (
        "ya se me pasó, ya pasó, se me pasó, ya no, fue anoche, anoche, ayer, ya estoy bien, ya estoy, "
        "eso fue, hace rato, se fue, fue solo, estoy como nuevo, ya está todo normal, terminó, acabó, "
        "me pasaba, se quitó, se me quitó, hace años, hace tiempo, hace mucho, ya se calmó, desapareció, "
        "pasado, fue hace, fue el, estoy mejor, ya mejor, antes sí, antes, se me ha pasado, ya cedió, "
        "cesó, era antes, duró, se me fue, superado"
    ),
    Answer.OTHER_PERSON: (
        "a mí no, a mi no, no soy yo, no a mí, le pasa a, es mi, a mi vieja, está aquí, al lado, "
        "está conmigo, estoy con ella, estoy con él, escribo por, otra persona, a otro, a él, a ella, "
        "al abuelo, yo no, no es a mí, es otro, es para"
    ),
    Answer.NOT_A_SIGN: (
        "forma de hablar, broma, bromeando, bromeaba, me entendiste mal, entendiste mal, malentendido, "
        "partido, peli, película, nada que ver, me refería, gimnasio, es un decir, un decir, "
        "falsa alarma, corrector, autocorrector, una expresión, expresión, era una pregunta, "
        "solo preguntaba, pregunta, hablaba de, hablaba del, error, me equivoqué, equivocación, "
        "no era eso, no quise decir, metáfora, exageraba, exager*, en sentido figurado, figurado, "
        "de mentira, lavadora, tele, serie, canción, dedazo, errata, chiste, jugando, no en serio, "
        "no es literal, era por, de coña, cachondeo"
    ),
}
