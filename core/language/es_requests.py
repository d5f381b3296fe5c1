"""Spanish: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.EXPORT: (
        "export*|csv|fhir|tabla|hoja_de_calculo|descarga*",
        "todos|todas|los|las & datos|mediciones|lecturas|numeros",
    ),
    Request.PAGE: ("pagina|imprim*|pdf|informe|hoja",),
    Request.PICTURE: ("imagen|grafic*|curva|dibuj*|foto",),
    Request.PLAN: ("plan|programa|medidas_del_plan",),
    Request.NOTE: ("nota|notas",),
    Request.HISTORY: ("historial|historia|pasado|alarmas|avisos",),
    Request.CARD: (
        "muestra*|muestrame|ensena*|ver|abre|abrir|ficha|como_esta|como_va|como_le_va|que_tal|que_hay_de|busca*|dime",
    ),
    Request.WRITE: (
        "^escribe|^escribir|^escribele|^di|^dile|^pregunta|^preguntale|^responde|^manda|^envia|^mensaje_a|"
        "^mensaje_para",
    ),
    Request.THREAD: ("mensajes|conversacion|chat|ha_escrito|escribio|escrito", "que & dijo|dice|ha_dicho"),
    Request.STAND_IN: (
        "suple|suplente|sustituye|sustituto|sustituta|sustitucion|me_reemplaza",
        "estoy|estare|me_voy|voy_a_estar & fuera|vacaciones|ausente|de_viaje",
    ),
    Request.INVITE: ("invita*|nuevo|nueva|anadir|enlace & cliente|clienta|persona|alguien|invitacion|enlace",),
    Request.REPORT: ("informe & consulta|trimestr*|practica|empresa", "informe_trimestral"),
    Request.NEEDS_ME: (
        "quien|alguien|hay_algo & me_necesita|necesita_ayuda|urgente|espera|esperando|necesita_algo|"
        "necesita_una_persona",
        "que_hay_de_nuevo|alguna_novedad|novedades",
    ),
    Request.CASELOAD: (
        "^mis_clientes|^mi_gente|^todos|^todas|^todos_los_clientes|^mi_lista|^lista",
        "muestra*|ver|lista|quienes_son & clientes|gente|todos|lista|personas",
    ),
    Request.WEEK: ("^esta_semana|^la_semana|^mi_semana|resumen", "como_fue|como_ha_ido|muestra*|ver & semana|lunes"),
}
