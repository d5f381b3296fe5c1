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
    ),
    Question.FOOD: (
        "que|puedo|debo|cuanto|cuanta|cuantas & comer|como|comida|dieta|calorias|proteina*|azucar|pan|chocolate|"
        "alcohol|"
        "vino|cerveza|desayun*|cenar & !antes|despues|prueba|pesar*|estoy|va|voy|eso|esto|llamas|funciona",
    ),
    Question.FREE: ("es|cuanto|hay|tengo|esto & gratis|gratuito|cuesta|pagar|precio|cobra*",),
    Question.WHO_SEES: (
        "^quien|^quienes & ve|ven|lee|leen|sabe|saben|vera|leera",
        f"^lo|^mi|^los|^puede|^alguien|^ve|^lee & {_COACH}|otros|demas|grupo|seguro|jefe|familia|alguien & ve|ven|lee|"
        "leen|ver|leer",
        "es|son & privado|privados|confidencial|confidenciales",
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
    Question.HOW_ARE_YOU: ("como_estas|que_tal_estas|como_te_va|como_esta_usted|que_tal_todo",),
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
    ),
    Question.SWEARING: (
        "mierda|joder|jodido|puta|puto|gilipollas|idiota|imbecil|estupido|estupida|carajo|hostia|vete_a|que_asco|"
        "callate|inutil & !siento|duele*|dolor|vida|cuerpo|encuentro",
    ),
    Question.BYE: ("^buenas_noches|^adios|^hasta_luego|^hasta_manana|^hasta_pronto|^cuidate|^chao|^nos_vemos",),
    Question.GLAD: ("^jaja*|^jeje*|^genial|^estupendo|^que_bien|^guay|^que_risa & !pero|dia|tiempo",),
}
