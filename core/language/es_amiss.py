"""Spanish: how people tell that something is amiss; only asked about (`core.language.signs`)."""

from __future__ import annotations

from core.language.concepts import Concept as C

AMISS: dict[C, str] = {
    C.VITAL: (
        "cerebro, mente, memoria, pensamientos, ideas, la vista, vista, visión, vision, equilibrio, voz, "
        "conciencia, conocimiento, circulación, pupila, pupilas, columna, cráneo, craneo, pulmón, pulmon, pulmones, "
        "bronquios, costillas, sangre, aire, aliento, respiración, respiracion, habla, palabras, media cara"
    ),
    C.PART: (
        "nariz, oreja, orejas, oído, oido, oídos, piel, barriga, panza, vientre, estómago, estomago, tripa, tripas, "
        "abdomen, espalda, cuello, nuca, brazo, brazos, pierna, piernas, mano, manos, pie, pies, dedo, dedos, vena, "
        "venas, variz, várices, varices, músculo, músculos, vejiga, riñón, riñones, riñon, testículo*, huevos, "
        "útero, matriz, encías, dientes, boca, labio, labios, herida, cicatriz, puntos, lado, medio cuerpo, cuerpo, "
        "todo el cuerpo, hueso, huesos, cadera, rodilla, hombro, pantorrilla, espinilla, muslo, costilla, "
        "mandíbula, quijada, mejilla, cachete, párpado, uña, pis, orina, caca, heces, lengua, muñeca, tobillo, codo"
    ),
    C.AMISS: (
        "revent*, estall*, explot*, se abrió, se me abrió, se me ha abierto, desapareci*, se apagó, se me apagó, "
        "se apago, se me apago, apagad*, se fue, se me fue, se me va, se me ha ido, se me duerme, dormid*, helad*, "
        "congelad*, colgando, cuelga, caíd*, caid*, se me cae, se me caen, torcid*, chuec*, baba, babea*, babeo, "
        "gotea*, chorre*, chorro, a chorros, supura*, pus, espuma, negr*, se puso negr*, azul, azulad*, morad*, "
        "violet*, blanc* como, amarill*, hinchad*, hincha*, inflad*, infla*, inflamad*, como un globo, salid*, "
        "se sale, doblad*, dislocad*, roto, rota, partid*, fracturad*, fuera de sitio, no responde, no me responde, "
        "no responden, no me responden, no obedece, no me obedece, no me hace caso, no hace caso, "
        "no quiere la mano, hace lo que quiere, va por libre, va a su aire, no es mía, no parece mía, "
        "no parece mio, no funciona, no sirve, no me sostiene*, no me sostienen, no me aguanta*, no me aguantan, "
        "se me doblan, se me dobla, fallan, falla, me falla, me fallan, flaque*, muert*, no siento, no la siento, "
        "no lo siento, no noto, insensible, paraliz*, acalambrad*, hormigue*, tembl*, tiembl*, sacud*, espasmo*, "
        "convuls*, agarrotad*, rígid*, rigid*, ties*, dur* como, dura como una tabla, como una tabla, desgarr*, "
        "rasga*, puñalada*, apuñal*, cuchill*, insoportable*, agonía, a gritos, me mata, me está matando, ardiendo, "
        "arde, quemad*, quemadura, me quemé, en carne viva, ampolla*, podrid*, huele a podrido, infectad*, "
        "gangrena, raya roja, línea roja, cortad*, me corté, tajo, profund*, amputad*, arrancad*, clavad*, "
        "atrapad*, atascad*, hundid*, se hunde*, se le hunden, en blanco, ojos en blanco, fij*, no se abre, "
        "no se cierra, no puedo cerrar, no puedo abrir, pupila grande, sangra*, empapad*, no deja de, no me deja, "
        "no para de"
    ),
    C.ODD: (
        "rar*, extrañ*, mal, no va bien, no está bien, no esta bien, borros*, nublad*, se apaga, apagándose, "
        "fallando, falla, se va, se me va, yéndose, yendo, desvanec*, se pierde, perdid*, perdiendo, gord*, espes*, "
        "pastos*, trab*, se me traba*, se cierra, cerrad*, cerrando, cerrándose, parad*, se para, se me para, pit*, "
        "pita, silb*, silba, ronc*, cruj*, gorgote*, burbuje*, superficial, agitad*, entrecortad*, ruidos*, "
        "afónic*, afonic*, zumb*, retumb*, martill*, golpea*, pulsa, late*, enredad*, revuelt*, no me sale, "
        "no me salen, apret*, aprieta*, oprim*, estruj*, aplast*, estrech*, parte, parten, partido en dos, "
        "me parten, se me parte, revient*, quiere salir, se sale, dormid*"
    ),
    C.AS_IF: (
        "como si, como un, como una, como el, como la, como los, como las, como cuando, como que, parece un, "
        "parece una, parece que, parezco, es como, igual que si, igual que un, igualito a, tipo"
    ),
    C.ONSET: (
        "de repente, de golpe, de pronto, de la nada, de un momento a otro, repentin*, súbit*, cada vez peor, "
        "cada vez más, cada vez mas, va a peor, empeor*, peor y peor, mucho peor, por momentos, una y otra vez, "
        "no para, no paran, sin parar, no se quita, no se me quita, no cede, tercera vez, cuarta vez, ya van tres, "
        "ya van 3"
    ),
    C.SCENE: (
        "todo, todo me, habitación, cuarto, la sala, el mundo, mundo, paredes, techo, suelo, piso, luces, luz, "
        "la pantalla, imagen, la tele"
    ),
    C.DIM: (
        "negro, oscuro, oscurec*, apag*, gris, borros*, nublad*, nubl*, inclin*, de lado, al revés, da vueltas, "
        "dando vueltas, girando, gira, se mueve, moviéndose, doble, dobles, túnel, tunel, estrellitas, estrellas, "
        "lucecitas, chispas, chispitas, puntitos, manchas, moscas volantes, destellos, relámpagos, zigzag, "
        "ondulad*, lechos*, niebla, neblina, velo, cortina, persiana, telón, sombra, desaparec*, media imagen, "
        "ranura, cerradura, cristal esmerilado, agua, bajo el agua, gasa, humo, rayitas"
    ),
    C.DO: (
        "levantarme, levantarse, ponerme de pie, ponerse de pie, ponerme en pie, sostenerme, tenerme en pie, "
        "mantenerme, incorporarme, sentarme, salir de la cama, salir de la bañera, salir de la ducha, "
        "salir del baño, llegar al teléfono, llegar al telefono, llegar a la puerta, llegar a la cocina, "
        "llegar al baño, llego a la cocina, llego al baño, llego a la puerta, llego al telefono, "
        "alcanzar el teléfono, alcanzar el telefono, tragar, tragar saliva, retener, abrir los ojos, abrir el ojo, "
        "mantener los ojos, mantenerme despierto, mantenerme despierta, mover, moverme, moverse, mover el, "
        "mover la, sentir el, sentir la, controlar, parar de temblar, dejar de temblar, parar de vomitar, "
        "dejar de vomitar, dejar de llorar, parar la sangre, entrar en calor, doblar el cuello, girar la cabeza, "
        "abrir la boca, cerrar la boca, abrir la puerta, contestar, contestarme, responder, despertar, despertarle, "
        "despertarla, despertarlo, reconocer, acordarme de cómo, recordar cómo, sujetar, agarrar, sostener, coger, "
        "andar, caminar, caminar recto, dar un paso, apoyar, apoyar el pie, orinar, hacer pis, mear, sonreír, "
        "sonreir, silbar, juntar palabras, terminar la frase, acabar la frase, tumbarme, acostarme, "
        "acostarme plano, enfocar, ver, parar, bajar"
    ),
    C.DREAD: (
        "algo va mal, algo va muy mal, algo anda mal, algo malo, algo no va bien, algo no está bien, algo me pasa, "
        "me está pasando algo, me esta pasando algo, me pasa algo raro, me pasa algo malo, me siento rarísim*, me "
        "siento muy rar*, me siento muy extrañ*, me encuentro fatal, me encuentro muy mal, me siento muy mal, me "
        "siento fatal, estoy fatal, estoy muy mal, estoy malísim*, me pongo mal, me puse muy mal, me puse malo, me "
        "puse mala, me ha dado algo, me dio algo, me da algo, me va a dar algo, me dio un patatús, patatus, "
        "patatús, jamacuco, yuyu, telele, soponcio, desvanec*, se me va la cabeza, se me va la olla y, se me va el "
        "mundo, se me va todo, me voy otra vez, me estoy yendo, me apago, me estoy apagando, me voy a morir, me "
        "muero, creo que me muero, siento que me muero, tengo miedo, tengo mucho miedo, qué miedo, asustad*, "
        "aterroriz*, no sé qué hacer, no se que hacer, no sé que hago, vengan, venga alguien, ven rápido, ven "
        "rapido, vengan rápido, que venga alguien, que alguien venga, necesito un médico, necesito un medico, "
        "necesito a alguien, necesito hospital, llévenme, llevenme, llevadme, llamo al 112, llamo a urgencias, debo "
        "ir a urgencias, voy a urgencias, pierdo el conocimiento, perdí el conocimiento, voy y vengo, entro y "
        "salgo, medio inconsciente, casi inconsciente, no recuerdo cómo, no recuerdo como, no me acuerdo cómo, no "
        "me acuerdo como, no me acuerdo de haber, laguna, adormilad*, somnolient*, cada vez más dormid*, cada vez "
        "con más sueño, cada vez mas sueño, se cae de sueño, me caigo de sueño, no me despierto, delir*, alucin*, "
        "veo cosas, oigo voces, voces que me, me castañetean, castañetean los dientes, castañe*, dando diente con "
        "diente, tirit*, escalofríos, escalofrios, temblando de frío, ardiendo en fiebre, fiebre de, mucha fiebre, "
        "fiebre alta, empapad* en sudor, empapad* de sudor, bañad* en sudor, sudando a chorros, sudor frío, sudor "
        "frio, sudores fríos, chorreando sudor, blanc* como la pared, blanco como, blanca como, pálid* como, "
        "palid*, gris como, color ceniza, labios azules, hice una tontería, he hecho una tontería, he hecho algo "
        "malo, una locura, hacerme daño, me hice daño, me he hecho daño, me lastimé a propósito, me he vuelto a "
        "cortar, me volví a cortar, me corté otra vez, muy hondo, esta vez es hondo, nunca me había pasado, nunca "
        "me habia pasado, nunca me había sentido así, nunca había sentido, el peor dolor, dolor insoportable, me "
        "retuerzo, doblad* de dolor, retorc* de dolor, gritando de dolor, llorando de dolor, me caigo cada vez, se "
        "me van las piernas, no me tengo en pie, no me sostengo, no me sostienen las piernas, me fallan las "
        "piernas, me flaquean, no aguanto más, no aguanto mas, ya no aguanto, no puedo más, no puedo mas, ya no "
        "puedo más, en el puente, en la azotea, en la cornisa, en las vías, en el tejado, mirando abajo, mirando "
        "para abajo, mirando las pastillas, mejor sin mí, mejor sin mi, estarían mejor, estarian mejor, nadie me "
        "echaría de menos, nadie me va a extrañar, hasta aquí llegué, hasta aquí he llegado, mañana ya no, mañana "
        "no estaré, adiós a todos, adios a todos, despedirme, me despido, atragant*, ahog*, asfixi*, me falta, "
        "boquead*, infarto, ictus, derrame, sepsis, meningitis, envenen*, intoxic*, me voy a ir, aterrad* de, en "
        "pánico, ataque de pánico, agonía de, lo siguiente que recuerdo, mirando al techo, mirando el techo, gente "
        "alrededor, rodeado de gente, rodeada de gente, desconocidos alrededor, el suelo se me viene, se me viene "
        "el suelo, se me mueve el suelo, piernas de agua, piernas de trapo, piernas de gelatina, se me aflojan, "
        "zumban los oídos, me pitan los oídos, pitido en los oídos, todo lejos, se oye lejos, hasta el hueso, se ve "
        "el hueso, piel se cae, se me cae la piel, piel levantada, carne viva, se me cae el pelo, no me da patadas, "
        "no patea, no se mueve, llama a mi hija, llamen a mi hija, llamen a mi hijo, avisen a mi familia, avisa a "
        "mi familia, llama al hospital, llamen al hospital, llamen al médico, llama al médico, que llamen, alguien "
        "que llame, los quiero mucho, os quiero mucho, perdón por todo, perdonadme, perdónenme, no hay vuelta "
        "atrás, no tiene sentido, nada tiene sentido, para qué seguir, tengo un plan, lo tengo planeado, pastillas "
        "en la mesa, pastillas en la cama, motor encendido, dormir y no despertar, dormirme para siempre, dormir "
        "para siempre, desaparecer, quiero desaparecer, nunca vi algo así, nunca me pasó, todo el cuerpo, de pies a "
        "cabeza, cuerpo entero, me duele todo, me duele muchísimo, me duele muchisimo, un dolor horrible, dolor "
        "horrible, dolor terrible, dolor bestial, dolor tremendo, qué dolor, no soporto el dolor, mucho dolor, "
        "huele raro el aliento, aliento a fruta, aliento a manzana, mucha sed y, meando a todas horas, hundid*, no "
        "soy yo, no me reconozco, se me fue la cabeza, me quiero morir, me estoy poniendo mal, me está dando algo, "
        "me esta dando algo, siento un elefante, como y luego al baño, tiritar, me siento muy rara, me siento muy "
        "raro, me siento rarísima, me siento rarísimo, me siento muy extraña, me siento muy extraño, todo se pone "
        "gris, todo se ve gris, todo se aleja"
    ),
    C.HELP_ALONE: (
        "ayúdame, ayudame, ayuda por favor, ayúdenme, ayudenme, ayúdame por favor, ayudame por favor, "
        "ayúdenme por favor, socorro, auxilio, necesito ayuda, que alguien me ayude, alguien que me ayude, "
        "ayudadme, por favor ayuda, ayudeme, ayúdeme"
    ),
    C.HAZARD: (
        "monóxido, monoxido, brasero, fuga de gas, huele a gas, olor a gas, escape de gas, gases, electrocut*, "
        "descarga eléctrica, descarga electrica, calambrazo, me dio corriente, me dio la corriente, escald*, "
        "agua hirviendo, aceite hirviendo, ácido, acido, lejía, lejia, desatascador, anticongelante, matarratas, "
        "raticida, insecticida, veneno, envenen*, hongos del monte, culebra, serpiente, víbora, vibora, alacrán, "
        "alacran, escorpión, me mordió, me ha mordido, casi se ahoga, accidente de coche, accidente de carro, "
        "choqué, chocamos, atropell*, me apuñal*, apuñal*, me dispar*, me atac*, estrangul*, me pega, me pegó, "
        "me golpea, incendio, humo por todas, golpe de calor, insolación, insolacion, hipotermia, congelación, "
        "rompí aguas, he roto aguas, se rompió la fuente, rompí fuente, el bebé no se mueve, el bebe no se mueve, "
        "no siento al bebé, no se mueve el bebé, ectópic*, motosierra, pila de botón, pila de boton, se tragó, "
        "se trago una, me tragué, autoinyector, pluma de adrenalina, adrenalina, epipen, jext, comí setas, "
        "setas del monte, bebí cloro, tomé cloro, tragado una, tragado un, se tragó una, se trago un"
    ),
    C.FALL: (
        "me caí, me cai, se cayó, se cayo, caí, caída, caida, caerme, me he caído, se ha caído, me tiró, "
        "me tropecé, tropecé, resbalé, resbale, me resbalé, rodé, rodando, choqué, volé, me estampé, me estrellé, "
        "me pegué, me di, aterricé"
    ),
    C.FALL_FROM: (
        "escalera, escaleras, escalón, tejado, techo, azotea, caballo, bici, bicicleta, moto, patinete, casco, "
        "de cabeza, árbol, balcón, andamio, ventana, muro, de espaldas, de nuca, de cara, de boca, bordillo, "
        "bañera, ducha"
    ),
    C.MEDICINE: (
        "medicina*, medicamento*, medicación, medicacion, dosis, pastillero, remedio*, parche, parches, "
        "analgésicos, somnífero*, somnifero*, morfina, tramadol, metotrexato, digoxina, betabloqueante*, "
        "corticoide*, paracetamol, ibuprofeno, aspirina, sintrom, blíster, blister, antidepresivo*, ansiolítico*, "
        "caja entera, tira entera, frasco, bote de, inyección, jarabe"
    ),
    C.MISUSE: (
        "equivocad*, me equivoqué, confund*, por error, sin querer, vaci*, me metí, todas, todo de golpe, de golpe, "
        "de una vez, de un tirón, toda la semana, la semana entera, lunes martes, otro, de otra persona, "
        "de mi marido, de mi mujer, del perro, encima de, con vodka, con vino, con ron, con alcohol, con whisky, "
        "cambi*, de más, de mas, demasiad*, doble, cuatro veces, diez veces, el niño, la niña, puñado, tragu*, "
        "me tragué, se tragó, no sé cuántas, no se cuantas, perdí la cuenta, entero, entera, me tragué todo"
    ),
    C.SENSELESS: (
        "no me contesta, no responde, no me responde, no reacciona, no despierta, no se despierta, no abre los ojos, "
        "no me reconoce, no me conoce, no puede hablar, no puede respirar, ojos en blanco, mirada fija, mirada "
        "perdida, mira fijo, pálid*, espuma, babe*, tirad*, desplom*, desmay*, se fue de lado, sudando, bañad* en "
        "sudor, empapad*, agarrándose, agarrad* el pecho, se agarra, se toca el pecho, se lleva la mano al pecho, le "
        "parten, le duele el pecho, le aprieta, dice cosas raras, no dice cosas con sentido, no se le entiende, habla "
        "raro, desvaría, confundid*, desorientad*, tembl*, tiembla, sacud*, hinchad*, ahog*, se ahoga, silb*, pita*, "
        "costillas, se le hunden, cara torcida, cara caída, boca torcida, se le ha caído, quemad*, se tragó, "
        "convuls*, ataque, rígid*, ties*, inconsciente, no es él, no es ella, vomit* sin parar, no para de, en el "
        "suelo, tirado en, tirada en, está azul, se puso azul, está gris, se puso gris, blanco como, blanca como, "
        "pálido como, se cayó al suelo, incoherencias, puras incoherencias, dice incoherencias, tirado en el pasillo, "
        "tirada en el pasillo"
    ),
    C.SKIP: (
        "me salto, salto, saltando, saltarme, dejo de poner*, dejar de poner*, dejo, dejado, no me pongo, "
        "no me pincho, no me inyecto, sin ponerme, sin pincharme, me pongo menos, me pincho menos, bajo la, "
        "reduzco, quito"
    ),
    C.DOWN: "bajar, baje, adelgazar, peso, kilos, perder, flac*, báscula, bascula, número, numero, delgad*",
    C.LOW_SHOWN: (
        "bajo, baja, lo, dice bajo, marca bajo, low, flecha abajo, flechas abajo, flechita*, flechas para abajo, "
        "dos flechas, doble flecha, por debajo de, en picado, en picada"
    ),
    C.DROWSY: (
        "somnolient*, adormilad*, sueño, mucho sueño, dormid*, adormec*, modorra, me duermo, se duerme, "
        "quedo dormid*, atontad*, grogui"
    ),
    C.GAS: (
        "monóxido, monoxido, brasero, fuga de gas, huele a gas, olor a gas, escape de gas, tufo, gases, "
        "carbón dentro, anafre, barbacoa dentro, generador dentro, caldera, calentador, estufa de gas, detector"
    ),
    C.POISONED: (
        "pita, suena, sonando, pitando, alarma, huele raro, todos, toda la familia, nos duele, dolor de cabeza, "
        "duele la cabeza, náuseas, nauseas, maread*, mareo, sueño, se cae de sueño, vomit*, cabeza como un bombo, "
        "dolor de cabeza todos, nos duele la cabeza"
    ),
    C.FEVER: "fiebre, calentura, temperatura, febril",
    C.RIGOR: (
        "castañe*, diente con diente, tirit*, escalofrío*, escalofrio*, tembl*, tiembl*, confundid*, desorient*, "
        "delir*, desvar*, manchas moradas, manchas rojas, puntitos rojos, sarpullido, cuello rígido, cuello tieso, "
        "rigidez, me molesta la luz, respiro rápido, sin orinar, no orino, raya roja, línea roja, linea roja, "
        "somnolient*, no despierta, alucin*, no sabe dónde"
    ),
    C.STREAK: "raya roja, rayas rojas, línea roja, linea roja, líneas rojas, estría roja, cordón rojo",
    C.FEEL: "siento, noto, sentir, notar, sienta, siente",
    C.CURTAIN: (
        "cortina, persiana, telón, telon, velo, se apagó, se apago, se me apagó, se me apago, apagado, "
        "se puso negro, negro, a oscuras, desapareció, la mitad, media, falta la mitad, nublado, nublada, telaraña, "
        "telarañas, hollín, ceniza, no ve, dejó de ver, deje de ver"
    ),
}
