"""Spanish: what clients ask in the middle of everyday life."""

from __future__ import annotations

from core.language.lexicon import Question

_COACH = "@|entrenador|entrenadora|coach|monitor|monitora"

QUESTIONS: dict[Question, tuple[str, ...]] = {
    Question.MEDICAL: (
        "puedo|debo|deberia|tengo_que|es_malo|que|sigo & pastilla*|medicina*|medicamento*|dosis|insulina|antibiotico*|"
        "ibuprofeno|paracetamol|calmante*",
        "puedo|debo|deberia|es_malo & ejercicio|entrenar|caminar|andar|correr|nadar|gimnasio|prueba|"
        "hacerlo & resfriado|"
        "resfriada|catarro|gripe|fiebre|malo|mala|enfermo|enferma|dolor|duele*|rodilla*|espalda|lesion*|embarazada|"
        "operacion|covid",
        "es_normal|por_que_estoy|por_que_me & cansado|cansada|agujetas|duele*|dolor|calambre*|sed",
        "sin_motivo|sin_querer|sin_hacer_nada & perdido|peso|adelgaz*",
        "he_dejado|deje|se_me_acabo|se_me_acabaron|se_me_han_acabado|me_olvide_de|se_me_olvido|no_tomo|no_he_tomado|"
        "ya_no_tomo|me_he_quitado & pastilla*|medicina*|medicacion|medicamento*|insulina|inhalador|sintrom|"
        "anticoagulante*",
    ),
    Question.FOOD: (
        "que|puedo|debo|cuanto|cuanta|cuantas & comer|como|comida|dieta|calorias|proteina*|azucar|pan|chocolate|"
        "alcohol|"
        "vino|cerveza|desayun*|cenar & !antes|despues|prueba|pesar*|estoy|va|voy|eso|esto|llamas|funciona",
    ),
    Question.CAN_STOP: (
        "puedo|podria|se_puede|y_si|que_pasa_si|si_me|si_yo|tengo_derecho_a & parar|pararlo|dejarlo|dejo|lo_dejo|"
        "abandonar|salirme|salir|darme_de_baja|desapuntarme|retirarme|cancelar|cambio_de_opinion|cambiar_de_opinion|"
        "cambio_de_idea|arrepiento|me_canso|borrarme & "
        "!pastilla*|medic*|insulina|ejercicio*|fumar|beber|comer|entrenar|dieta|tratamiento|calle|casa|hoy|correr",
    ),
    Question.ABOUT: (
        "de_que_va|de_que_se_trata|de_que_trata|en_que_consiste|que_haces_tu|que_hace_usted|que_haces_exactamente|"
        "como_funciona_esto|como_va_esto|que_es_samehour|que_es_este_programa|que_es_esto_de|que_es_lo_que_haces|"
        "que_es_esto_exactamente|para_que_es_esto|que_voy_a_tener_que_hacer|que_tengo_que_hacer_yo|de_que_va_la_cosa & "
        "!hoy|manana|ahora|numero|prueba",
        "vas_a|va_a|me_escrib*|cada_cuanto|cuantas_veces & escrib*|mandar*|mensaje*|molestar*|preguntar* & "
        "todos_los_dias|cada_dia|a_diario|diario|mucho|cada_semana|todas_las_semanas|a_cada_rato|a_cada_hora|"
        "cada_cuanto|cuantas_veces",
        "pa_que_es|para_que_es|pa_que_sirve_esto|de_que_va|que_me_vais_a|que_es_esto_que & esto|y_esto & !prueba|"
        "numero|cinta",
        "vas_a|va_a|me_vas|vais_a & lata|molestar|marear|agobiar & todos_los_dias|cada_dia|diario|siempre|mucho",
    ),
    Question.ILL: (
        "tengo|he_cogido|cogi|me_ha_dado|me_dio|estoy|con|pille|he_pillado|agarre|pesque|he_pasado|sali|di|tuve|"
        "he_tenido|ando & gripe|la_gripe|gripa|griposo|griposa|covid|corona|coronavirus|resfriado|resfriada|"
        "constipado|constipada|catarro|trancazo|gastroenteritis|virus|infeccion|fiebre|anginas|bronquitis|sinusitis|"
        "otitis|faringitis|migrana|jaqueca|acatarrado|acatarrada|positivo_en_covid|engripado|engripada|herpes & "
        "!puedo|debo|deberia|marido|mujer|hijo|hija|madre|padre|esposo|esposa|nieto|nieta|hermano|hermana|amiga|"
        "amigo|vecina|vecino|ninos|no|nunca|sin|si|ano|mes|hace_anos|vacuna*|pasada|miedo|el|ella|pecho",
        "^covid|^gripe|^gripa & positivo|otra_vez|desde|dias|en_cama|de_nuevo",
    ),
    Question.RESCHEDULE: (
        "recuerda*|recuerde*|recorda*|avisa*|avise*|pregunta*|pregunte*|escribe*|escriba* & mejor|en_vez|en_lugar|"
        "a_partir_de_ahora|desde_ahora|de_ahora_en_adelante|siempre|otro_dia|otra_hora|mas_temprano|mas_tarde & "
        "!@|entrenador*|coach|marido|peso|pesarme|bascula|cintura|pulso|si|medico|doctor*|luego",
        "puedes|puede|podemos|podriamos|se_puede|podria|quiero|quisiera|querria|me_gustaria|como|necesito|"
        "cambiamos|cambiemos & cambiar|cambio|cambiarlo|mover|moverlo|pasar|pasarlo|modificar|cambiamos|cambiemos & "
        "dia|hora|horario|recordatorio|cita|lunes|martes|miercoles|jueves|viernes|sabado|domingo & "
        "!meta|objetivo|@|entrenador*|coach|medida*|unidad*|idioma|peso|numero|medico|clase",
        "mejor|en_vez|en_lugar|prefiero|preferiria|me_viene|me_va & lunes|martes|miercoles|jueves|viernes|sabado|"
        "domingo|las_7|las_8|las_9|las_10|las_11|tardes|mananas & que|de|puede|podria|podemos|puedo|se_puede|cambiar & "
        "!@|medico|entrenador*|coach|hago|pesarme|me_siento|me_encuentro|duermo|hoy|que_el",
        "pasame|paseme|ponme|pongame|cambiame|cambieme|muevame|mueveme|apuntame & lunes|martes|miercoles|jueves|"
        "viernes|sabado|sabados|domingo|domingos|otro_dia|otra_hora|tarde|manana & !@|medico|cita_con|foto",
        "puedo_hacerlo|podria_hacerlo|puede_ser|podria_ser|podemos_hacerlo|se_puede|podriamos & los_lunes|los_martes|"
        "los_miercoles|los_jueves|los_viernes|los_sabados|los_domingos|el_lunes|el_martes|el_miercoles|el_jueves|"
        "el_viernes|el_sabado|el_domingo & !@|medico|pesarme|clase",
    ),
    Question.TAKE_OUT: (
        "borra*|borre*|quita*|quite*|elimina*|elimine*|anula*|anule*|saca|saque|tacha|descarta*|ignora|ignore & valor|"
        "dato|numero|medida|registro|resultado|peso|el_de_la_cintura|cintura|lo_de_la_cintura|cadera|caderas|pulso|"
        "tension|presion|energia|ultimo|ultima|penultimo & "
        "!todo|todos|todas|cuenta|mis_datos|me|cada|no|recordatorio|aviso*|meta|objetivo|quiero_pesarme|dolor",
    ),
    Question.NO_TOOL: (
        "no_tengo|no_tenemos|sin|no_encuentro|perdi|he_perdido|perdio|roto|rota|rompio|roto_la|estropeado|"
        "estropeada|estropeo|no_funciona|no_va|no_anda|no_sirve|no_hay|se_me_acabo|se_acabo|sin_pilas|sin_pila|"
        "dejado|no_se_donde & cinta|metro|cinta_metrica|bascula|balanza|pesa|tensiometro|"
        "manguito|aparato|aparato_de_la_tension|cronometro|reloj|silla|maquina & !puedo|puede|cuesta|aliento|casa_de",
        "pila|pilas|bateria|baterias & agotada|agotadas|gastada|gastadas|acabo|acabaron|muerta|muertas|"
        "acabado|no_quedan|sin_pilas & !movil|telefono|celular|coche",
        "no_la_encuentro|no_lo_encuentro|no_la_tengo|no_lo_tengo|no_se_donde_esta|la_perdi|lo_perdi|no_me_funciona|"
        "la_he_perdido & cinta|metro|bascula|balanza|tensiometro|manguito|aparato|cronometro|reloj & !puedo",
    ),
    Question.NOT_NOW: (
        "luego|mas_tarde|despues|esta_noche|esta_tarde|cuando_llegue|cuando_vuelva|cuando_salga|en_casa|manana|"
        "al_rato|en_un_rato|dentro_de_un_rato|el_fin_de_semana|otro_rato & lo_hago|lo_hare|lo_mido|te_digo|le_digo|"
        "te_lo_digo|se_lo_digo|te_contesto|contesto|te_respondo|respondo|te_mando|se_lo_mando|te_lo_mando|lo_mando|"
        "te_escribo|me_pongo|lo_miro|ya_lo_hare|ya_te|te_cuento|hablamos|seguimos|lo_hacemos|voy_a_hacerlo & "
        "!@|siempre|medico|puedo|debo|ejercicio|entrenador*|de_comer|de_desayunar|de_andar|dejar|por_las",
        "no_tengo_tiempo|no_me_da_tiempo|con_prisa|con_prisas|tengo_prisa|estoy_conduciendo|voy_conduciendo|"
        "estoy_manejando|conduciendo|en_una_reunion|estoy_liado|estoy_liada|ando_liado|ando_liada|muy_liada|muy_liado|"
        "estoy_ocupado|estoy_ocupada|en_el_autobus|en_el_tren|en_el_metro|en_el_trabajo|estoy_trabajando|"
        "en_la_compra|mal_momento|ahora_no_puedo|no_puedo_ahora|ahorita_no|ahora_mismo_no|no_estoy_en_casa & "
        "!semana|pasada|estaba|estuve|ejercicio|ejercicios|he_tenido|tuve|entrenar|sesiones|caido|mareado|mareada|"
        "dolor|duele|de_tiempo",
        "hoy_no_me_he|aun_no_me_he|todavia_no_me_he|aun_no|todavia_no & pesado|medido|tomado|mirado & luego|"
        "mas_tarde|despues|esta_noche|esta_tarde|manana",
        "la_tomo|lo_tomo|la_mido|lo_mido|me_la_tomo|me_peso|me_la_mido|lo_mando & esta_tarde|esta_noche|luego|"
        "mas_tarde|manana|despues & !siempre|puedo|debo|todos|cada|por_la_manana|pastilla*",
    ),
    Question.MAY_SEND: (
        "puedo|podria|te|le|quieres_que|quiere_que|se_puede|debo & mandar|mando|mande|enviar|envio|envie|dar|decir|"
        "digo|diga|apuntar|anotar|pasar|paso|poner|pongo|meter & tension|presion|presion_arterial|pulso|pulsaciones|"
        "peso|cintura|cadera|caderas|pasos|mis_medidas|mis_numeros|glucosa|azucar & "
        "!foto*|imagen|@|entrenador*|coach|medico|me_mandas|me_dices|captura|no_puedo|quitar|que_mi",
    ),
    Question.FREE: ("es|cuanto|hay|tengo|esto & gratis|gratuito|cuesta|pagar|precio|cobra*",),
    Question.WHO_SEES: (
        "^quien|^quienes & ve|ven|lee|leen|sabe|saben|vera|leera",
        f"^lo|^mi|^los|^puede|^alguien|^ve|^lee & {_COACH}|otros|demas|grupo|seguro|jefe|familia|alguien & ve|ven|lee|"
        "leen|ver|leer",
        "es|son & privado|privados|confidencial|confidenciales",
        "^quien|^quienes|^y_quien & va_a_ver|va_a_leer|puede_ver|puede_leer|ver|leer|entera|enterar & !hora|cuando",
        "^a_quien|^y_a_quien|^con_quien & mandas|manda|envias|envia|das|pasas|pasa|ensenas|compartes|comparte|mandais",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & puede|podria|dile|digale|pregunta*|avisa*|dale|por_favor & !quien|ve|lee|cambiar|otro|otra",
        f"{_COACH} & me_llame|llamarme|llamame|me_llama|gracias",
        "@ & hablar|conversar & quiero|quisiera|querria|necesito|gustaria|puedo|deseo|tengo_que",
    ),
    Question.WHO: (
        "quien_eres|quien_es|que_eres|con_quien_hablo|hay_alguien|como_te_llamas",
        "eres|es_usted & robot|bot|maquina|persona|humano|humana|real|medico|programa|ordenador",
    ),
    Question.THERE: ("estas_ahi|esta_ahi|sigues_ahi|sigue_ahi|hay_alguien|hay_alguien_ahi",),
    Question.HOW_ARE_YOU: (
        "como_estas|que_tal_estas|como_te_va|como_esta_usted|que_tal_todo",
        "y_tu_que_tal|y_usted_que_tal|tu_que_tal|y_tu_como_estas|que_tal_tu",
    ),
    Question.PHOTO: ("puedo|podria|te & mandar|mando|enviar|envio|subir & foto*|imagen|video|audio|nota_de_voz",),
    Question.HOW_LONG: ("cuanto|cuantos_minutos & tarda|dura|lleva|tardo|tiempo & !programa|semanas|curso|queda",),
    Question.HOW_OFTEN: (
        "por_que|cada_cuanto & cada|solo|semana*|mes|meses|diario|menudo|toca|mide|mido|peso",
        "con_que_frecuencia",
    ),
    Question.MUST: (
        "tengo_que|hay_que|debo|es_necesario & todo|todas|todos|contestar|responder|hacer|hacerlo|medir*",
        "es & obligatorio|obligatoria|obligatorias|opcional",
    ),
    Question.MISSED: (
        "que_pasa|perdon|perdona|siento|pasa_algo|importa & olvid*|salto|salte|falto|falte|semana|pierdo|perdi & "
        "!pastilla*|medicina|peso|kilo*",
        "se_me_olvido|me_olvide & semana|ayer|lunes|pasada",
    ),
    Question.WEIGH: (
        "puedo|debo|deberia|cuando|quiero|esta_bien|hoy & pesarme|pesar|me_peso|bascula|me_toca_pesarme & !por_que|"
        "cuanto|perder",
    ),
    Question.CHANGED: (
        "he|ha|mi|han & perdido|adelgazado|engordado|bajado|subido|ganado|cogido|cambiado & kilo*|kg|peso|libra*|cm|"
        "centimetro*|cintura|pulso|tension & !quiero|como|a|hasta|ahora|amiga|hermana|marido|mujer",
        "he & adelgazado|engordado & !quiero|como",
        "cuanto|cuantos|cuantas & he_perdido|he_adelgazado|he_bajado|he_engordado|he_subido|baje|perdi|"
        "adelgace & !puedo|debo|quiero|tiempo",
    ),
    Question.SINCE: (
        "ensename|muestrame|muestra|ver|grafico|grafica|imagen|dibujo & desde|ultimo_mes|ultimos_meses|principio",
    ),
    Question.FIRST: (
        "cuanto|que|cual & principio|empece|empezar|inicio|primer|primera|primero & peso|pesaba|cintura|pulso|era|"
        "fue|tenia",
    ),
    Question.LAST: (
        "cuanto|que|cual|cuando & ultima|ultimo|anterior & !semana",
        "has|te|se|lo & recibido|recibiste|llegado|llego|guardado|guardo|apuntado & !importa",
    ),
    Question.OVER: (
        "cuando|cuanto|se|ha|ya|cuantas & acaba|termina|terminado|acabado|acabo|termino|queda|quedan|dura|"
        "fin & programa|"
        "esto|curso|queda|quedan|semanas|todo|ya",
    ),
    Question.NEXT: (
        "que|cuando|cual & siguiente|proximo|proxima|viene_ahora|toca_ahora|sigue",
        "que|cuando & me_vas_a_preguntar|preguntaras|escribes|escribiras",
        "cuando & me_toca|nos_toca|te_toca|vuelves_a|me_vuelves & !pesar|medir|peso",
    ),
    Question.NORMAL: (
        "que|cual|cuanto|cuantos & normal|habitual|media|ideal|deberia|tipico",
        "mi_edad & normal|bien|bueno|media",
    ),
    Question.WHY_TEST: (
        "por_que|para_que & prueba*|mides|mido|medir|medimos|cintura|cadera*|peso|pesar*|pulso|cinta|silla|tension|"
        "numero|energia|equilibrio|pregunta*|eso|esto|sirve & !no|cansado|cansada|duele|adelgazo|perder|subido|bajado",
    ),
    Question.MEANING: (
        "que|como & significa|quiere_decir|interpreto|se_entiende",
        "no_entiendo & eso|numero*|resultado*|azar|grafico|dice|esto",
    ),
    Question.DOING: (
        "como_voy|que_tal_voy|voy_bien|estoy_mejorando|he_mejorado|he_avanzado|he_progresado|esto_funciona|"
        "funciona_esto|"
        "ha_servido|sirve_de_algo|como_lo_llevo|ha_funcionado",
    ),
    Question.GOOD: (
        "^es|^esta|^y_es|es_eso|eso_es|esta_eso|eso_esta|^era & bueno|bien|malo|mal|normal|alto|alta|bajo|baja|mucho|"
        "poco|grande|mejor|peor|grave & !para|cuando|si|hora|dia|a",
        "deberia|tengo_que|debo & preocuparme|preocupar*",
        "estoy_bien_o_mal|voy_bien_o_mal|bien_o_mal|es_bueno_o_malo|bueno_o_malo|estoy_normal|soy_normal & !dormi|"
        "dormido",
    ),
    Question.SWEARING: (
        "mierda|joder|jodido|puta|puto|gilipollas|idiota|imbecil|estupido|estupida|carajo|hostia|vete_a|que_asco|"
        "callate|inutil & !siento|duele*|dolor|vida|cuerpo|encuentro",
    ),
    Question.BYE: ("^buenas_noches|^adios|^hasta_luego|^hasta_manana|^hasta_pronto|^cuidate|^chao|^nos_vemos",),
    Question.WAIT: (
        "^espera|^espere|^un_momento|^un_momentito|^un_segundo|^un_segundito|^dame_un|^deme_un|"
        "^ya_vuelvo|^ahora_vuelvo & "
        "!semana|semanas|vacaciones|mes|meses",
    ),
    Question.TIME_ME: (
        "^cronometro|^temporizador|cronometrame|cronometreme|pon_el_cronometro|cuenta_el_tiempo|toma_el_tiempo & "
        "!semana|cuando",
    ),
    Question.CHAT: (
        "chiste|cancion|poema|cuento & cuenta*|sabes|canta|escribe|di|dime & !no_es|era",
        "que_hora_es|que_dia_es|que_tiempo_hace|va_a_llover|ya_es_lunes",
        "te_quiero|te_amo|casate_conmigo|eres_gracioso|eres_graciosa|eres_un_encanto|que_majo",
    ),
    Question.GRIEF: (
        "murio|ha_muerto|fallecio|ha_fallecido|entierro|funeral|he_perdido_a & "
        "madre|padre|mama|papa|marido|esposo|esposa|mujer|hijo|hija|hermano|hermana|abuela|abuelo|amigo|amiga|"
        "perro|gato|"
        "entierro|funeral & !hace_anos|pelicula",
        "se_ha_muerto|se_murio|se_me_ha_muerto|se_me_murio|se_nos_murio|perdi_a|enterramos|enterre & madre|padre|"
        "mama|papa|marido|esposo|esposa|mujer|hijo|hija|hermano|hermana|abuela|abuelo|amigo|amiga|vecina|vecino|"
        "perro|perra|perrito|gato|gata|suegra|suegro|tia|tio & !hace_anos|pelicula|movil",
    ),
    Question.GOAL: (
        "quiero|quisiera|me_gustaria|mi_meta|mi_objetivo & perder|bajar|llegar|adelgazar & "
        "kilo*|kg|cm|verano|navidad & !ayuda|no",
        "olvida|quita|cambia|borra|ver & meta|objetivo",
    ),
    Question.NO_WEIGHT: (
        "no_quiero|no_quisiera|prefiero_no|odio|deja & pesarme|pesar|bascula|mi_peso_fuera|"
        "el_peso_fuera & !hoy|ahora|diario",
        "no_me_quiero|ya_no_quiero|no_me_vuelvo_a|paso_de|no_pienso & pesarme|pesar|bascula & !hoy|ahora",
    ),
    Question.BODY: (
        "estoy|soy|me_siento|me_veo|odio|verguenza & "
        "gordo|gorda|muy_gordo|muy_gorda|demasiado_gordo|demasiado_gorda|obeso|obesa|feo|fea|mi_cuerpo|mi_barriga|"
        "mi_peso & "
        "!contento|contenta|bien_con",
    ),
    Question.SORRY: (
        "^perdon|^perdona|^perdone|^lo_siento|^disculpa|^disculpe|^disculpas & "
        "!olvid*|tarde|peso|cintura|pulso|era|no|mal|puedo|pude|es",
    ),
    Question.GLAD: ("^jaja*|^jeje*|^genial|^estupendo|^que_bien|^guay|^que_risa & !pero|dia|tiempo",),
}
