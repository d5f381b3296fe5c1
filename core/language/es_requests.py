"""Spanish: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.CORRECT: (
        "errata|se_equivoco",
        "borra*|elimina*|corrig*|corregir|cambia* & lectura|valor|numero|dato|ultimo|ultima|medicion",
    ),
    Request.ADD: ("anade*|anadir|agrega*|incluye|incluir|pon|suma|mide_tambien",),
    Request.DROP: ("quita*|saca*|retira*|^sin|deja_de|no_mas|elimina*",),
    Request.PRIVATE: (
        "no_vea|no_debe_ver|no_deberia_ver|oculta*|esconde*|no_mostrar|no_muestres|no_ensenes|que_no_vea|sin_ver",
    ),
    Request.DAY: (
        "cambia*|mueve|mover|pasa*|pon|otro & dia|hora|cita|control|lunes|martes|miercoles|jueves|viernes|sabado|"
        "sabados|domingo|domingos",
        "puede|prefiere|quiere & lunes|martes|miercoles|jueves|viernes|sabado|sabados|domingo|domingos",
    ),
    Request.PAUSE: ("pausa|pausar|esta_de_vacaciones|esta_de_viaje|en_el_hospital|hospitalizad*|descanso|suspende*",),
    Request.HAND_OVER: ("traspasa*|transfiere|transferir|cede|ceder|pasar_a|entrega*",),
    Request.BASELINE: ("nuevo_inicio|nueva_referencia|punto_de_partida|empezar_de_nuevo|linea_de_base",),
    Request.RENAME: ("renombra*|cambia_el_nombre|apodo",),
    Request.END: (
        "borra*|elimina*|termina*|finaliza*|acaba*|detener|^deten|^para|dar_de_baja|da_de_baja|lo_deja|ha_dejado|"
        "cancela*",
        "murio|ha_muerto|fallecio|ha_fallecido",
    ),
    Request.DONE: (
        "llame|he_llamado|hable|he_hablado|resuelto|hecho|listo_con|ya_esta|visite|atendid*",
        "cierra|cerrar|quita* & aviso*|alarma*|alerta*",
    ),
    Request.EXPORT: (
        "export*|csv|fhir|tabla|hoja_de_calculo|descarga*",
        "todos|todas|los|las & datos|mediciones|lecturas|numeros",
    ),
    Request.PAGE: ("pagina|imprim*|pdf|informe|hoja",),
    Request.PICTURE: ("imagen|grafic*|curva|dibuj*|foto",),
    Request.PLAN: (
        "plan|programa|medidas_del_plan",
        "cada_dia|a_diario|todos_los_dias & pesa|pesar|pesarse|pese",
    ),
    Request.NOTE: (
        "nota|notas",
        "^nota|^notas|^anota|^apunta|^anade_una_nota|^anadir_nota",
    ),
    Request.HISTORY: ("historial|historia|pasado|alarmas|avisos",),
    Request.CARD: (
        "muestra*|muestrame|ensena*|ver|abre|abrir|ficha|como_esta|como_va|como_le_va|que_tal|que_hay_de|busca*|dime",
    ),
    Request.WRITE: (
        "^escribe|^escribir|^escribele|^di|^dile|^pregunta|^preguntale|^responde|^manda|^envia|^mensaje_a|"
        "^mensaje_para",
        "^recuerda|^recuerdale|^recordar|^puedes_decir|^puedes_decirle|^puedes_recordar|^puedes_recordarle|^avisa|"
        "^por_favor_dile|^por_favor_recuerda|^por_favor_avisa|^diga|^digale",
    ),
    Request.THREAD: (
        "mensajes|conversacion|chat|ha_escrito|escribio|escrito",
        "que & dijo|dice|ha_dicho",
    ),
    Request.LAST: (
        "cuanto|cuanta|que_peso|ultimo|ultima|actual|mas_reciente|que_valor|cual_es|cual_fue|como_tiene|que_tension",
    ),
    Request.ABOUT: (
        "^por_que|^esta|^es|^ha|^tiene|^cuando|^que|^como|^donde|^cual|^puede|^hay|bien_para|marcad* & !tu",
    ),
    Request.DONE_THEM: (
        "^la_llame|^le_llame|^lo_llame|la_he_llamado|lo_he_llamado|le_he_llamado|ya_la_llame|ya_lo_llame|"
        "hable_con_ella|hable_con_el|ya_hable|he_hablado_con & !con_usted",
    ),
    Request.DIGEST_DAY: (
        "resumen & lunes|martes|miercoles|jueves|viernes|sabado|sabados|domingo|domingos|cada|mas_tarde|antes|otro_dia",
    ),
    Request.QUIET: (
        "silencio|silenciar|silencia|demasiados_mensajes|menos_mensajes|no_molestar|notificaciones|de_noche_no|callate",
        "no_quiero|sin|quita|desactiva|deja_de & resumen|mensajes|avisos",
    ),
    Request.STAND_IN: (
        "suple|suplente|sustituye|sustituto|sustituta|sustitucion|me_reemplaza",
        "estoy|estare|me_voy|voy_a_estar & fuera|vacaciones|ausente|de_viaje",
        "estoy|estare|voy_a_estar & enfermo|enferma|de_baja|libre",
        "me_cubre|cubrira|cubre|me_sustituira|se_encarga",
        "^fuera|^vacaciones",
    ),
    Request.INVITE: (
        "invita*|nuevo|nueva|anadir|enlace & cliente|clienta|persona|alguien|invitacion|enlace",
        "no_recibio|no_ha_recibido|no_le_llego|nunca_recibio|perdio|ha_perdido|otra_vez|caducado|no_funciona &"
        " enlace|invitacion",
    ),
    Request.REPORT: (
        "informe & consulta|trimestr*|practica|empresa",
        "informe_trimestral",
    ),
    Request.NEEDS_ME: (
        "quien|alguien|hay_algo & me_necesita|necesita_ayuda|urgente|espera|esperando|necesita_algo|"
        "necesita_una_persona",
        "que_hay_de_nuevo|alguna_novedad|novedades",
        "quien|a_quien & llamar|llamo|marcado|mal|preocupa",
        "es_eso|es_esto|es|eso_es & real|grave|serio|urgente|verdad|casualidad|peligroso",
        "aviso|avisos|alarma & que|por_que|significa|cuantos",
    ),
    Request.CASELOAD: (
        "^mis_clientes|^mi_gente|^todos|^todas|^todos_los_clientes|^mi_lista|^lista",
        "muestra*|ver|lista|quienes_son & clientes|gente|todos|lista|personas",
        "cuantos|cuantas & clientes|personas",
    ),
    Request.WEEK: (
        "^esta_semana|^la_semana|^mi_semana|resumen",
        "como_fue|como_ha_ido|muestra*|ver & semana|lunes",
        "quien|quienes|cuantos|cuantas|todos|alguien|han & respondio|respondido|contestado|contesto|falta|faltan|"
        "respondieron|contestaron",
    ),
}

# What joins words to whom they are for: "tell Ada that ...".
JOINTS = frozenset({"que"})
