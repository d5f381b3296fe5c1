"""Spanish: danger signs. Levels follow the three-way handling of function.md 9.1."""

from __future__ import annotations

from core.language.lexicon import Denials, Level, Sign

EMERGENCY, SAME_DAY, STOP_REST, TALK = Level.EMERGENCY, Level.SAME_DAY, Level.STOP_REST, Level.TALK

_HURTS = (
    "dolor|dolores|duele|duelen|dolía|dolió|doliendo|presión|opresión|oprime|aprieta|apretado|"
    "tirantez|ardor|quemazón|pinchazo*|punzada*|molestia*|pesadez|tensión|ahogo|doler"
)
_BREATHLESS = (
    "falta_de_aire|sin_aire|sin_aliento|falta_de_aliento|ahogo|me_ahogo|me_falta_el_aire|"
    "me_falta_aire|fatigado_al_respirar|disnea"
)

_DIZZY = (
    "mareo|mareos|mareado|mareada|mareando|me_mareo|me_mareé|mareé|vértigo|vértigos|aturdido|"
    "aturdida|cabeza_me_da_vueltas|me_da_vueltas|todo_da_vueltas|todo_me_da_vueltas|"
    "desvanecimiento|vahído|vahídos"
)
_SWOLLEN = (
    "hinchado|hinchada|hinchazón|hinchados|hinchadas|inflamado|inflamada|inflamados|inflamadas|"
    "se_me_hincha|hinchó|hincha"
)


SIGNS = (
    Sign("chest_pain", EMERGENCY, ("pecho|tórax|esternón", _HURTS)),
    Sign("chest_pain", EMERGENCY, ("corazón", "dolor|duele|pinchazo*|punzada*|dolía")),
    Sign(
        "chest_pain",
        EMERGENCY,
        ("peso_en_el_pecho|infarto|ataque_al_corazón|ataque_cardíaco|ataque_cardiaco|angina_de_pecho",),
    ),
    Sign(
        "faint",
        EMERGENCY,
        (
            "desmayé|desmayado|desmayada|desmayo|desmayos|me_desmayo|perdí_el_conocimiento|"
            "perdí_la_conciencia|perdido_el_conocimiento|perdí_el_sentido|inconsciente|me_desplomé|"
            "desplomado|desplomada|perdido_la_conciencia|me_he_desmayado|perdí_la_consciencia|síncope|"
            "colapsé",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            _BREATHLESS,
            "reposo|sentado|sentada|acostado|acostada|tumbado|tumbada|en_la_cama|"
            "por_la_noche|mucho|mucha|grave|fuerte|quieto|quieta|descansando|descanso",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "no_puedo_respirar|no_puedo_casi_respirar|apenas_puedo_respirar|no_consigo_respirar|"
            "no_respiro|no_me_llega_el_aire|no_me_entra_aire|no_me_entra_el_aire|apenas_respiro|"
            "casi_no_puedo_respirar|no_logro_respirar|no_puedo_respirar_bien|no_respiro_bien|"
            "no_pude_respirar|no_podía_respirar|no_puedo_recuperar_el_aliento",
        ),
        own_no=True,
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "dificultad_para_respirar|me_cuesta_respirar|me_cuesta_mucho_respirar|cuesta_respirar|"
            "me_asfixio|asfixia|problemas_para_respirar|respiro_mal|respiro_con_dificultad",
        ),
    ),
    Sign(
        "stroke_signs", EMERGENCY, ("ictus|derrame_cerebral|embolia|ataque_cerebral|acv|apoplejía|trombosis_cerebral",)
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "cara|boca|rostro|labio|párpado|mejilla",
            "torcida|torcido|caída|caído|dormida|dormido|paralizada|paralizado|duerme|adormece|"
            "adormecida|adormecido|entumecida|entumecido|desviada|cuelga|tuerce",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "hablar|habla|palabras|hablando",
            "dificultad|cuesta|arrastro|arrastrando|trabada|trabo|traban|enreda|confusa|pastosa|raro|problemas",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "no_puedo_hablar|no_puedo_hablar_bien|no_me_salen_las_palabras|no_puedo_mover_el_brazo|"
            "no_puedo_mover_la_pierna|no_puedo_levantar_el_brazo|no_siento_el_brazo|no_siento_la_pierna|"
            "no_siento_la_cara|no_veo_por_un_ojo|no_veo_con_un_ojo|no_puedo_mover_la_mano",
        ),
        own_no=True,
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "brazo|pierna|mano|lado|pie",
            "dormido|dormida|adormecido|adormecida|entumecido|entumecida|paralizado|paralizada|acorchado|acorchada",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "debilidad|débil|sin_fuerza|sin_fuerzas",
            "un_lado|lado_izquierdo|lado_derecho|de_repente|repentina|súbita|brazo|pierna|de_golpe",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "veo_doble|visión_doble|pérdida_de_visión|perdí_la_visión|perdí_la_vista|ciego_de_repente|"
            "ciega_de_repente|vista_borrosa_de_repente|visión_borrosa_de_repente|confusión_repentina|"
            "confuso_de_repente|confusa_de_repente",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        ("dolor_de_cabeza|cabeza", "peor|repentino|de_repente|súbito|de_golpe|explota|más_fuerte_de_mi_vida"),
    ),
    Sign("leg_swelling", SAME_DAY, ("pierna|pantorrilla|tobillo|gemelo|pie|muslo", _SWOLLEN)),
    Sign("leg_swelling", SAME_DAY, ("trombosis|trombo|coágulo|flebitis",)),
    Sign("swollen_legs", SAME_DAY, ("piernas|pantorrillas|tobillos|pies|gemelos|muslos", _SWOLLEN)),
    Sign("palpitations", SAME_DAY, ("palpitaciones|palpitación|taquicardia|arritmia",)),
    Sign(
        "palpitations",
        SAME_DAY,
        (
            "corazón|pulso",
            "acelerado|se_acelera|muy_rápido|irregular|a_mil|se_me_sale|salta|desbocado|"
            "galopa|late_fuerte|late_rápido|late_muy_fuerte|se_salta|brincos|latidos_raros|va_muy_rápido",
        ),
    ),
    Sign(
        "breathless_on_usual_tasks",
        SAME_DAY,
        (
            _BREATHLESS + "|aire|aliento|respirar|me_canso",
            "escaleras|escalera|vestirme|de_lo_normal|de_lo_habitual|que_antes|ducharme|últimamente|"
            "siempre|cada_vez|enseguida|cualquier_esfuerzo|mínimo_esfuerzo|tareas|cocinar|todos_los_días|"
            "a_menudo|desde_hace",
        ),
    ),
    Sign(
        "dizzy",
        SAME_DAY,
        (
            _DIZZY,
            "otra_vez|de_nuevo|siempre|a_menudo|cada|varias|constantemente|todo_el_tiempo|sigo|sigue|"
            "todos_los_días|últimamente|desde|muchas_veces|seguido|ayer|frecuentes|frecuente|veces",
        ),
    ),
    Sign("dizzy", STOP_REST, (_DIZZY,)),
    Sign("breathless", STOP_REST, (_BREATHLESS,)),
    Sign("cold_sweat", STOP_REST, ("sudor_frío|sudores_fríos|sudando_frío|sudoración_fría|sudo_frío|sudores_frios",)),
    Sign(
        "nausea",
        STOP_REST,
        (
            "náusea|náuseas|vómito|vómitos|vomitar|vomité|vomitado|vomitando|ganas_de_vomitar|"
            "devuelto_la_comida|arcadas",
        ),
    ),
    Sign(
        "arm_jaw_neck_pain",
        STOP_REST,
        (
            "mandíbula|brazo_izquierdo|omóplato|omóplatos|omoplato|cuello|escápula",
            "dolor|duele|duelen|presión|opresión|tirantez|dolía",
        ),
    ),
    Sign(
        "new_joint_pain",
        STOP_REST,
        (
            "rodilla|cadera|tobillo|espalda|hombro|articulación|músculo|gemelo|ingle|muñeca|codo|muslo",
            "tirón|torcí|torcido|torcedura|esguince|desgarro|crujido|chasquido|agudo|de_repente|"
            "repentino|me_falló|punzante|pinchazo*",
        ),
    ),
    Sign("new_joint_pain", STOP_REST, ("lumbago|esguince|me_he_torcido|me_torcí",)),
    Sign(
        "severe_headache",
        STOP_REST,
        (
            "fuerte_dolor_de_cabeza|dolor_de_cabeza_muy_fuerte|dolor_de_cabeza_fuerte|"
            "dolor_de_cabeza_intenso|dolor_de_cabeza_terrible|dolor_de_cabeza_horrible|"
            "terrible_dolor_de_cabeza|intenso_dolor_de_cabeza|mucho_dolor_de_cabeza",
        ),
    ),
    Sign(
        "unusual_fatigue",
        STOP_REST,
        (
            "cansancio_inusual|fatiga_inusual|cansancio_extraño|agotamiento_repentino|agotado_de_repente|"
            "agotada_de_repente|cansancio_anormal",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "matarme|suicid*|suicidio|quitarme_la_vida|acabar_con_mi_vida|quiero_morir|quiero_morirme|"
            "ojalá_estuviera_muerto|ojalá_estuviera_muerta|hacerme_daño|autolesion*|acabar_con_todo|"
            "mejor_muerto|mejor_muerta|mejor_sin_mí|cansado_de_vivir|cansada_de_vivir|"
            "desaparecer_para_siempre|quisiera_morir|me_quiero_morir|ganas_de_morir|sobredosis",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "no_quiero_vivir|no_quiero_seguir_viviendo|no_vale_la_pena_vivir|no_tengo_razones_para_vivir|"
            "no_quiero_despertar|no_tiene_sentido_vivir|la_vida_no_tiene_sentido|no_puedo_seguir_así|"
            "no_quiero_estar_aquí|sin_ganas_de_vivir|no_tengo_ganas_de_vivir|ya_no_quiero_vivir|"
            "no_merece_la_pena_vivir",
        ),
        own_no=True,
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "me_provoco_el_vómito|provocarme_el_vómito|provoqué_el_vómito|vomito_después_de_comer|"
            "vomitar_después_de_comer|laxantes|laxante|atracón|atracones|anorexia|bulimia|anoréxica|"
            "odio_mi_cuerpo|miedo_a_comer|obsesionada_con_obsesionado_con_me_mato_de_hambre|"
            "solo_pienso_en_solo_pienso_en_comida|solo_pienso_en_la_comida|apenas_como",
        ),
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "llevo_días_sin_comer|no_como_nada|no_puedo_dejar_de_pesarme|no_puedo_dejar_de_comer|"
            "no_me_permito_comer|días_sin_comer",
        ),
        own_no=True,
    ),
)

DENIALS = Denials(
    no="no|ni|nunca|jamás|sin|ningún|ninguna|ninguno|nada_de|tampoco|libre_de",
    no_after="no|ninguno|ninguna|ningún|nada|negativo|nunca|tampoco",
    between=(
        "tengo|tuve|tenía|he|ha|hay|había|tenido|tener|siento|sentí|sentido|noto|noté|notado|de|del|"
        "el|la|los|las|un|una|en|mi|me|algún|alguna|ningún|ninguna|ya|más|hoy|por|ahora|estoy|estaba|"
        "está|es|son|sufro|padezco|señales|síntomas|signos|tipo|ni|se|nada|muy|al|tanto|realmente|"
        "aquí|momento|he_tenido"
    ),
    and_="y|e|&",
    nor="o|ni|u",
    but="pero|sino|aunque|porque|sin_embargo|excepto|solo|sólo|entonces|pues|ya_que|mientras|desde_que",
    past=(
        "el_año_pasado|año_pasado|mes_pasado|hace_años|hace_un_año|hace_meses|hace_mucho|"
        "en_el_pasado|antes_tenía|de_niño|de_niña|verano_pasado|invierno_pasado|años|meses|"
        "antes_de_la_operación|antiguamente|en_su_día|19##|20##"
    ),
    imagined=(
        "y_si|qué_pasa_si|si|podría|debería|miedo|temo|preocupa|preocupación|riesgo|síntomas_de|"
        "señales_de|prevenir|evitar|qué_es|qué_son|cómo_sé|he_leído|soñé|sueño|es_normal|en_caso_de|"
        "puede_dar|puede_causar|no_creo|película|artículo"
    ),
    others=(
        "madre|mamá|padre|papá|marido|esposo|esposa|mujer|hijo|hija|amigo|amiga|vecino|vecina|"
        "hermano|hermana|él|ella|ellos|abuelo|abuela|tío|tía|novio|novia|compañero|compañera|perro|"
        "gato|alguien|gente|suegro|suegra|primo|prima|cuñado|cuñada"
    ),
    now="ahora|hoy|otra_vez|de_nuevo|todavía|aún|sigo|sigue|desde|también|en_este_momento|llevo|esta_mañana",
    mine="yo|me|mi|mí|tengo|estoy|siento|noto|mis",
    settled=(
        "se_me_pasó|se_pasó|ya_pasó|se_me_ha_pasado|se_ha_pasado|ya_estoy_bien|desapareció|se_fue|"
        "se_me_quitó|se_me_ha_quitado|se_calmó|ya_no|ya_mejor|mejoró|cedió|ha_pasado|se_ha_ido"
    ),
    harmless=(
        "press_de_pecho|ejercicio_de_pecho|ejercicios_de_pecho|contorno_de_pecho|pechuga|"
        "de_todo_corazón|de_corazón|me_muero_de_risa|muerto_de_risa|me_muero_de_hambre|"
        "muerto_de_cansancio|presión_arterial|tensión_arterial|la_tensión|la_presión|mi_tensión|"
        "mi_presión|hace_falta|cara_a_cara|dar_la_cara|al_aire_libre|"
        "aire_libre|aire_acondicionado|dormido_bien|dormido_mal|matar_el_tiempo|"
        "braza|agujetas|mano_a_mano|por_otro_lado|al_lado|pasos"
    ),
)
