"""Spanish: intents, days and times."""

from __future__ import annotations

from core.client import Sex
from core.language.lexicon import Calendar, Destroys, Intent, split

CALENDAR = Calendar(
    weekdays=(
        split("lunes;lun"),
        split("martes;mar"),
        split("miércoles;mié"),
        split("jueves;jue"),
        split("viernes;vie"),
        split("sábado;sáb;sábados"),
        split("domingo;dom;domingos"),
    ),
    months=(
        split("enero;ene"),
        split("febrero;feb"),
        split("marzo"),
        split("abril;abr"),
        split("mayo;may"),
        split("junio;jun"),
        split("julio;jul"),
        split("agosto;ago"),
        split("septiembre;sep;setiembre;sept"),
        split("octubre;oct"),
        split("noviembre;nov"),
        split("diciembre;dic"),
    ),
    today=split("hoy"),
    tomorrow=split("mañana"),
    day_after=split("pasado mañana"),
    next=split("próximo;próxima;que viene;siguiente;el próximo;la próxima;el que viene"),
    in_=split("en;dentro de;por;durante;dentro de una;dentro de un;en una;en un;por una;por un;una;un"),
    to=split("a;al"),
    until=split("hasta;hasta el;hasta la;antes de;antes del"),
    day=split("día;días"),
    week=split("semana;semanas"),
    month=split("mes;meses"),
    at=split("a las;a la;sobre las;a eso de las;las;hacia las"),
    am=split("de la mañana;por la mañana;am;a m;de la madrugada;por las mañanas"),
    pm=split(
        "de la tarde;por la tarde;de la noche;por la noche;pm;p m;esta noche;esta tarde;por las tardes;por las noches"
    ),
    noon=split("mediodía;al mediodía"),
    midnight=split("medianoche;a medianoche"),
    hour=split("horas;h;en punto"),
    half_after=split("y media"),
    quarter_after=split("y cuarto"),
    quarter_less=split("menos cuarto"),
    place=split(
        "estoy en;ahora estoy en;estoy ahora en;vivo en;me mudé a;me he mudado a;viajo a;voy a;"
        "me voy a;ciudad;zona horaria;mi ciudad es;vivo ahora en;estamos en;de vacaciones en;"
        "de viaje en;me encuentro en"
    ),
    any_day=split("cualquier;cualquiera;cualquier día;da igual;me da igual;todos los días"),
    except_=split(
        "excepto;menos;salvo;pero no;que no sea;no puedo;no puedo los;no puedo el;no me va bien;no me viene bien;"
        "me va mal;me viene mal;me viene fatal;me va fatal;no me va;no me viene;imposible;es imposible;mal día;"
        "no es buen día;ni;quitando;cualquiera menos"
    ),
    place_ends=split("hasta;por;esta;ahora;desde;y;con;pero;hoy;mañana;a;durante;este;para;que;de;el;porque"),
)

SEXES = {
    Sex.MALE: split("hombre;masculino;varón;h;m;soy hombre;chico"),
    Sex.FEMALE: split("mujer;femenino;f;soy mujer;chica"),
}

WISHES = {
    Intent.YES: split(
        "por mí bien;por mí sí;por mí vale;por mí perfecto;me parece bien;me va bien;me viene bien;sin problema;"
        "ningún problema;no hay problema;no hay inconveniente;encantado;encantada;con gusto;con mucho gusto;cómo no;"
        "pues sí;"
        "pues vale;pues claro;venga vale;vale vale;sí sí;sí claro;claro que sí;trato hecho;me apunto;conforme;"
        "estoy conforme;no me importa;sip;ajá;órale;okey;oki;faltaría más;que sí;"
        "sí;si;sí …;claro;claro …;por supuesto;vale;ok;okay;de acuerdo;correcto;exacto;cierto;así es;"
        "sí por favor;desde luego;bueno;está bien;acepto;estoy de acuerdo;eso es;venga;dale;adelante;"
        "afirmativo;seguro"
    ),
    Intent.NO: split(
        "no;no …;qué va;para nada;incorrecto;falso;ninguno;ninguna;ninguna de ellas;ninguno de ellos;"
        "nada de eso;no gracias;en absoluto;mejor no;no es correcto;está mal;nunca;negativo;nada;"
        "no es así"
    ),
    Intent.HELP: split(
        "ayuda;ayuda …;ayúdame;ayúdame …;qué puedo hacer;qué puedes hacer;cómo funciona;"
        "cómo funciona …;no entiendo …;no lo entiendo;cómo;cómo …;qué hago;qué tengo que hacer;"
        "necesito ayuda …;… necesito ayuda …;qué es esto;instrucciones;explica …;explícame …;menú;"
        "comandos;y ahora qué;socorro;auxilio;estoy perdido;estoy perdida"
    ),
    Intent.SKIP: split(
        "me la salto;me lo salto;me la salto …;la salto;lo salto;me salto esta;me salto este;esta me la salto;"
        "no me apetece;paso de esta;esta la dejo;"
        "saltar;saltar …;omitir;omitir …;paso;siguiente;pasar;esta no;esta vez no;hoy no;hoy no …;"
        "no tengo báscula;no tengo cinta;no tengo cinta métrica;salta …;salta esta;déjalo;saltarla;"
        "siguiente pregunta;no puedo hacerlo;no puedo hacerla;esta no puedo;omite …;sáltala;"
        "sáltatela;prefiero saltarla"
    ),
    Intent.LATER: split(
        "no tengo tiempo ahora;ahora no tengo tiempo;ahora no tengo tiempo …;sin tiempo;no me da tiempo;"
        "no me da tiempo …;"
        "ahorita no;ahorita no puedo;ahora mismo no;ahora mismo no puedo;al rato;luego te digo;luego lo hago;"
        "estoy liado;estoy liada;ando liado;ando liada;voy con prisa;"
        "luego;luego …;más tarde;más tarde …;después;después …;ahora no;ahora no …;recuérdamelo …;"
        "recuérdame …;en un rato;estoy ocupado;estoy ocupada;ocupado;ocupada;mañana;mañana …;"
        "esta noche;esta tarde;en otro momento;otro momento;estoy en el trabajo;no estoy en casa;"
        "estoy trabajando;en una hora;pregúntame luego;pregúntame más tarde;pregúntame mañana;"
        "no tengo tiempo;no tengo tiempo …;espera;un momento;ahora no puedo"
    ),
    Intent.STOP: split(
        "parar;para;basta;cancelar;cancela;detener;alto;salir;terminar;termina;ya basta;déjalo ya;"
        "déjame en paz;suficiente;stop;para …;cancelar …;olvídalo;da igual;no quiero seguir …"
    ),
    Intent.UNDO: split(
        "deshacer;deshacer …;deshaz;deshazlo;borra eso;borra el último;borrar último;"
        "borrar el último;número equivocado;me equivoqué;me he equivocado;fue un error;error;"
        "está mal escrito;borra lo último;quita eso;anular;anula;número incorrecto;me confundí;"
        "me he confundido;equivocado;borra el último …;ignora eso;valor equivocado"
    ),
    Intent.COACH: split(
        "hablar con mi coach …;hablar con mi entrenador …;hablar con mi entrenadora …;quiero hablar con mi coach …;"
        "quiero hablar con mi entrenador …;quiero hablar con mi entrenadora …;puedo hablar con mi coach …;"
        "puedo hablar con mi entrenador …;puedo hablar con mi entrenadora …;necesito a mi coach …;"
        "necesito a mi entrenador …;necesito a mi entrenadora …;necesito hablar con mi coach …;dile a mi coach …;"
        "dile a mi entrenador …;dile a mi entrenadora …;dígale a mi coach …;dígale a mi entrenador …;"
        "dígale a mi entrenadora …;quiero hablar con el coach …;quiero hablar con el entrenador …;"
        "entrenador;entrenadora;entrenador …;entrenadora …;coach;coach …;instructor;instructora;"
        "… mi entrenador …;… mi entrenadora …;… el entrenador …;… la entrenadora …;… mi coach …;"
        "… con alguien …;… con una persona …;mensaje …;una persona;persona;humano;llámame;llámenme;"
        "contactar …;… hablar con alguien …;… al entrenador …"
    ),
    Intent.PAUSE: split(
        "pausa;pausa …;pausar;pausar …;vacaciones;de vacaciones;de vacaciones …;… de vacaciones …;"
        "estoy fuera …;estoy de viaje …;descanso;un descanso;necesito una pausa …;… una pausa …;"
        "… un descanso …;me voy de viaje …;en el hospital;… en el hospital …;no me escribas hasta …;"
        "suspender;suspender …;interrumpir;interrumpir …;hospitalizado;hospitalizada"
    ),
    Intent.RESUME: split(
        "ya estoy de vuelta;ya estoy de vuelta …;ya he regresado;ya regresamos;ya volvimos;ya hemos vuelto;"
        "he regresado;regresé …;volví …;"
        "reanudar;reanudar …;he vuelto;ya he vuelto;he vuelto …;ya volví;volví;estoy de vuelta …;"
        "de vuelta;regresé;ya regresé;retomar;retomar …;volver a empezar;quitar la pausa;"
        "terminar la pausa;ya estoy aquí;estoy de regreso"
    ),
    Intent.TODAY: split(
        "hoy;qué toca;qué toca hoy;qué hay hoy;qué tengo que hacer hoy;pendiente;pendientes;"
        "cuándo es el próximo …;qué sigue;registro de hoy;tareas;qué me toca hoy;qué queda;"
        "cuándo toca"
    ),
    Intent.RECORD: split(
        "registrar;registrar …;anotar;anotar …;apuntar;apuntar …;nueva medida;nuevo dato;añadir;"
        "añadir …;guardar;he medido;meter un dato;nueva medición"
    ),
    Intent.PROGRESS: split(
        "progreso;progreso …;mi progreso;avance;avances;mis avances;resultados;mis resultados;"
        "gráfico;gráfica;gráfico …;gráfica …;evolución;mi evolución;historial;cómo voy;cómo lo llevo;"
        "mis datos de peso;mis medidas;mis números;estadísticas;… mi progreso …;… mis resultados …;"
        "… mi gráfica …;… mi gráfico …;tendencia;… mi evolución …"
    ),
    Intent.GOAL: split(
        "objetivo;objetivo …;objetivos;mi objetivo;mi objetivo …;meta;metas;mi meta;mi meta …;"
        "nueva meta;nuevo objetivo;cambiar objetivo;cambiar meta;poner un objetivo;… mi objetivo …;"
        "… mi meta …;quiero llegar a …;meta …"
    ),
    Intent.SETTINGS: split("ajustes;ajustes …;configuración;configuración …;opciones;preferencias;perfil;configurar"),
    Intent.SAME: split(
        "igual;igual que la última vez;igual que siempre;lo mismo;todo igual;sin cambios;"
        "nada ha cambiado;como siempre;como la última vez;igual que antes;lo mismo de siempre;"
        "lo mismo que la última vez;las mismas condiciones;mismo;exactamente igual;nada cambió;"
        "todo como la última vez"
    ),
    Intent.DIFFERENT: split(
        "diferente;diferente …;distinto;distinto …;no igual;no es igual;algo cambió;"
        "algo fue diferente;otra báscula;báscula nueva;cambió;fue distinto;fue diferente;"
        "algo distinto;no fue igual"
    ),
    Intent.WHY: split(
        "por qué;por qué …;para qué;para qué …;por qué preguntas;por qué no;y eso;porqué;motivo;razón;a qué se debe"
    ),
    Intent.SOURCE: split(
        "fuente;fuentes;fuente …;de dónde sale;de dónde sale …;de dónde sale eso;quién lo dice;"
        "quién dice eso;referencia;referencias;qué estudio;según quién;en qué se basa;estudio;"
        "… la fuente …;de dónde viene eso"
    ),
    Intent.THANKS: split(
        "gracias;gracias …;muchas gracias;muchas gracias …;mil gracias;muy amable;genial;estupendo;"
        "perfecto;bien;muy bien;qué bien;fantástico;excelente;maravilloso;te lo agradezco;guay;súper;"
        "fenomenal;buenísimo"
    ),
    Intent.GREETING: split(
        "feliz navidad;feliz navidad …;felices fiestas;feliz año;feliz año nuevo;felices pascuas;felices reyes;"
        "hola;hola …;buenos días;buenas tardes;buenas noches;buenas;qué tal;adiós;hasta luego;"
        "buen día;buenos días …;buenas tardes …;hasta mañana;chao"
    ),
    Intent.DONE: split(
        "hecho;ya está;listo;lista;terminado;terminé;he terminado;ya terminé;acabé;he acabado;"
        "eso es todo;nada más;ya;completado;todo hecho;ya lo hice;ya lo he hecho;he acabado ya;"
        "finalizado"
    ),
    Intent.START: split(
        "empezar;empieza;comenzar;comienza;vamos;estoy listo;estoy lista;iniciar;inicio;empezamos;"
        "empezar …;preparado;preparada"
    ),
    Intent.NOT_WELL: split(
        "estoy depre;hoy estoy depre;ando depre;estoy de bajón;tengo un día malo;hoy tengo el día malo;"
        "estoy bajo de ánimo;estoy baja de ánimo;"
        "así así;asi asi;regulín;regulín regulán;ni fu ni fa;tirando;psé;pse;más o menos;voy tirando;"
        "un poco pachucho;un poco pachucha;"
        "mal;no me encuentro bien …;no me siento bien …;no estoy bien …;estoy enfermo …;"
        "estoy enferma …;enfermo;enferma;estoy malo;estoy mala;resfriado;resfriada;estoy resfriado;"
        "estoy resfriada;fiebre;tengo fiebre …;gripe;tengo gripe;me siento mal …;me encuentro mal …;"
        "estoy mal;no muy bien;regular;indispuesto;indispuesta;pachucho;pachucha"
    ),
    Intent.WELL: split(
        "como una rosa;como una rosa …;como un roble;como un toro;fenomenal gracias;de lujo;"
        "de maravilla gracias;sí como una rosa;sí muy bien;sí estoy bien;sí me encuentro bien;divinamente;"
        "estoy bien;me encuentro bien;me siento bien;todo bien;bien gracias;muy bien gracias;"
        "estupendamente;de maravilla;en forma;me siento muy bien;sí me siento bien;perfectamente"
    ),
    Intent.MY_DATA: split(
        "mis datos;mis datos …;datos;… mis datos …;qué sabes de mí;qué sabéis de mí;qué saben de mí;"
        "exportar;exportar …;descargar mis datos;privacidad;qué guardas;qué guardáis;qué datos tienes"
    ),
    Intent.FORGET: split(
        "borra todos mis datos;elimina todos mis datos;borrar todos mis datos;olvídame;bórrame;"
        "borra todo;borrar mis datos;borra mis datos;eliminar mis datos;elimina mis datos;"
        "eliminar mi cuenta;borrar mi cuenta;eliminarme"
    ),
    Intent.LEAVE: split(
        "darme de baja;quiero darme de baja;salir del programa;no me escribas más;dejar el programa;"
        "cancelar la suscripción;no más mensajes"
    ),
    Intent.LANGUAGE: split(
        "english;deutsch;français;polski;العربية;do you speak english;in english please;parlez vous français;"
        "sprechen sie deutsch;mówisz po polsku;en inglés;en francés;hablas inglés;hablas español;"
        "idioma;idioma …;cambiar idioma;cambiar de idioma;cambiar el idioma;español;en español;"
        "otro idioma;lengua;… cambiar el idioma …;… cambiar de idioma …;en español por favor;"
        "castellano"
    ),
    Intent.UNITS: split(
        "unidades;unidades …;unidad;cambiar unidades;cambiar las unidades;en kilos;en libras;"
        "en pulgadas;en centímetros;kilos o libras;sistema métrico;usar libras;usar kilos;"
        "… las unidades …"
    ),
    Intent.ZONE: split(
        "zona horaria;zona horaria …;huso horario;cambiar zona horaria;hora equivocada;me mudé;"
        "me he mudado;estoy en …;ahora estoy en …;estoy ahora en …;vivo en …;viajo a …;me mudé a …;"
        "me he mudado a …;… zona horaria …;de viaje en …"
    ),
    Intent.SLOT: split(
        "horario;horario …;cambiar hora;cambiar la hora …;cambiar día;cambiar el día …;otro día;"
        "otra hora;cambiar horario;cambiar el horario …;mover …;reprogramar;reprogramar …;"
        "… cambiar la hora …;… cambiar el día …;recordatorio;cambiar recordatorio;"
        "cuándo me preguntas;… el recordatorio …;… otro día …;… otra hora …;cita;cambiar la cita …"
    ),
    Intent.CONTINUE: split("continuar;continúa;seguir;sigue;sigamos;continuemos;sigue …;continuar …;prosigue;seguimos"),
    Intent.REPEAT: split(
        "repetir;repite …;otra vez;de nuevo;cómo dices;qué has dicho;cuál era la pregunta;"
        "repíteme la pregunta;perdona qué;una vez más;qué preguntaste;repítelo"
    ),
    Intent.NOT_SAY: split(
        "prefiero no decirlo;prefiero no decir;prefiero no contestar;no quiero decirlo;es privado;"
        "privado;no es asunto tuyo;sin respuesta;prefiero no responder;no lo digo"
    ),
    Intent.DONT_KNOW: split(
        "no sabría …;no sabría decirte …;no sabría decirle …;"
        "ni idea …;no tengo ni idea …;no tengo idea;no tengo idea …;no sé …;no lo sé …;no sabría;no sabría decirte;"
        "no sabría decirle;yo qué sé;qué sé yo;vaya usted a saber;ni la más remota idea;no estoy seguro …;"
        "no estoy segura …;no me acuerdo …;no recuerdo …;no caigo;quién sabe …;"
        "no sé;no lo sé;ni idea;no estoy seguro;no estoy segura;no recuerdo;no me acuerdo;"
        "no sabría decir;no lo recuerdo;quién sabe;no tengo ni idea"
    ),
}


DESTROYS = Destroys(
    forget=(
        "borr*|bórr*|elimin*|elimín*|suprim*|quit*|destruy*|desaparezca*|desaparezcan|olvid* & "
        "mis_datos|todos_los_datos|mi_cuenta|mi_historial|mi_información|mi_expediente|mi_perfil|"
        "mi_registro|mis_registros|datos_personales",
        "borr*|bórr*|elimin*|elimín*|cierr*|ciérr* & la_cuenta|esta_cuenta|mi_cuenta",
        "borr*|elimin*|suprim*|destruy*|desaparezca*|olvid*|quit* & todo|toda|todos|todas & lo_mío|mío|"
        "mía|mi|mis|sobre_mí|de_mí",
        "borra*_todo|elimina*_todo & por_favor|ya|definitivamente|para_siempre",
        "derecho_al_olvido|derecho_a_la_supresión|rgpd",
    ),
    leave=(
        "dame_de_baja|denme_de_baja|deme_de_baja|dadme_de_baja|quiero_darme_de_baja|"
        "me_quiero_dar_de_baja|me_doy_de_baja|darme_de_baja|solicito_la_baja",
        "desapúnt*|desinscrib*|sácame|sáquenme|sacadme|bórrame|quítame|elimíname|abandon*|dejo|dejar|"
        "salir|salgo|salirme|irme|me_voy|retiro|retirarme|renuncio & programa|seguimiento|estudio|lista|"
        "participación",
        "!ya_no|no & quiero|deseo|voy & seguir|continuar|participar|estar|formar_parte & programa|"
        "seguimiento|revisiones",
        "lo_dejo|me_retiro|me_voy|me_salgo|abandono & para_siempre|definitivamente|del_todo|y_no_vuelvo",
        "cancel*|anul*|terminar|acabar|pongan_fin & mi_participación|mi_suscripción|mi_inscripción|"
        "suscripción|inscripción",
    ),
    no="no|nunca|jamás|sin|tampoco",
    if_="si|cuando|qué_pasa|casi|pensando|marido|mujer|amiga|amigo|hermana|hermano|antes_de",
    partly=(
        "último|última|últimos|hoy|ayer|recordatorio*|mensaje*|número|sal|app|peso|cintura|cadera|foto*|"
        "lunes|martes|miércoles|jueves|viernes|sábado|domingo|médico|querer|avisos|error"
    ),
)
