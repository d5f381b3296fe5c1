"""Spanish, as people type it in Spain and in America (where a comma or a point may be the decimal mark)."""

from __future__ import annotations

from decimal import Decimal

from core.language.es_amiss import AMISS
from core.language.es_everyday import EVERYDAY
from core.language.es_questions import QUESTIONS
from core.language.es_requests import JOINTS, REQUESTS
from core.language.es_signs import ANSWERS, CONCEPTS
from core.language.es_talk import CALENDAR, DESTROYS, SEXES, WISHES
from core.language.lexicon import Lexicon, UnitPart, WordRole, split
from core.language.literal_words import LITERAL_WORDS
from core.language.weak_words import WEAK_WORDS
from core.quantity import Unit

OPENERS = split(
    "que es;que significa;que hago;que tengo;que pasa;que hora;cual;cuales;quien;cuando;donde;cuanto;"
    "cuanta;cuantos;cuantas;como se;como puedo;como hago;como voy;por que;puedo;podria;debo;es normal;"
    "es bueno;es malo;esta bien"
)
NO_OPENERS = split("que bien;que pena;que rabia;que lata;que semana")

D = Decimal

_SMALL = split(
    "cero;uno;dos;tres;cuatro;cinco;seis;siete;ocho;nueve;diez;once;doce;trece;catorce;quince;"
    "dieciséis;diecisiete;dieciocho;diecinueve;veinte;veintiuno;veintidós;veintitrés;"
    "veinticuatro;veinticinco;veintiséis;veintisiete;veintiocho;veintinueve"
)
_TENS = split("treinta;cuarenta;cincuenta;sesenta;setenta;ochenta;noventa")
_HUNDREDS = split(
    "ciento;doscientos;trescientos;cuatrocientos;quinientos;seiscientos;setecientos;ochocientos;novecientos"
)


def _numbers() -> dict[str, Decimal]:
    """0 to 999; "treinta y dos" also without its "y"."""
    found = {word: n for n, word in enumerate(_SMALL)}
    for t, tens in enumerate(_TENS, start=3):
        found[tens] = 10 * t
        for n in range(1, 10):
            found[f"{tens} y {_SMALL[n]}"] = found[f"{tens} {_SMALL[n]}"] = 10 * t + n
        found[f"{tens} y un"] = 10 * t + 1
    small = dict(found)
    found["cien"] = 100
    for h, hundred in enumerate(_HUNDREDS, start=1):
        found[hundred] = 100 * h
        found |= {f"{hundred} {word}": 100 * h + n for word, n in small.items() if n}
    found |= {"docena": 12, "una docena": 12, "decena": 10}
    found |= {"veintiun": 21, "diez y seis": 16, "diez y siete": 17, "diez y ocho": 18, "diez y nueve": 19}
    return {word: D(n) for word, n in {**found, "un": 1, "una": 1}.items()}


SPANISH = Lexicon(
    code="es",
    own_name="Español",
    decimal=",",
    numbers=_numbers(),
    weak=("un", "una", "uno"),
    not_english=frozenset(split("a;no;or;son;on;once;me;he;in;time;is;be;mas;pies;pie;test;i;an;mi;ten")),
    units={
        Unit.KILOGRAM: split("kg;kgs;kilo;kilos;kilogramo;kilogramos;quilos;k"),
        Unit.POUND: split("lb;lbs;libra;libras"),
        Unit.STONE: split("stone;st"),
        Unit.CENTIMETRE: split("cm;cms;centímetro;centímetros;centimetros;cent"),
        Unit.METRE: split("m;metro;metros;mts;mt"),
        Unit.INCH: split("pulgada;pulgadas;pulg;in"),
        Unit.FOOT: split("pie;pies;ft"),
        Unit.BEATS_PER_MINUTE: split(
            "lpm;ppm;bpm;latidos;latido;pulsaciones;pulsación;latidos por minuto;pulsaciones por minuto;"
            "por minuto;al minuto;latidos al minuto;pulsaciones al minuto;el minuto"
        ),
        Unit.MILLIMETRE_OF_MERCURY: split("mmhg;mm hg"),
        Unit.SECOND: split("s;seg;segs;segundo;segundos;sec"),
        Unit.MINUTE: split("min;mins;minuto;minutos;m;minutitos"),
        Unit.METRE_PER_SECOND: split("metros por segundo"),
        Unit.REPETITION: split("repeticiones;repetición;reps;levantadas;sentadillas"),
        Unit.STEP: split("pasos;paso"),
        Unit.POINT: split("puntos;punto"),
        Unit.DAY: split("días;día;dia;dias"),
        Unit.SESSION: split("sesiones;sesión;entrenamientos;entrenamiento;clases;clase"),
    },
    parts={
        UnitPart.GRAM: split("g;gr;grs;gramo;gramos"),
        UnitPart.OUNCE: split("oz;onza;onzas"),
        UnitPart.MILLIMETRE: split("mm;milímetros;milimetros"),
        UnitPart.HOUR: split("h;hr;hrs;hora;horas;hs"),
    },
    centimetres_of_mercury=True,
    amounts={"un par de horas": ("2", UnitPart.HOUR), "par de horas": ("2", UnitPart.HOUR)},
    roles={
        WordRole.LEAD: split(
            "pesa;tiene;me acabo de pesar;acabo de pesarme;me he pesado;me pesé;recién me pesé;estoy en;ando en;voy en;"
            "conseguí;logré;alcancé;he conseguido;pude hacer;he hecho;llegué a hacer;he logrado;sigo en;"
            "marca;báscula;la báscula;salen;sale;conté;alta;baja;llegué a;llegué;hice;dice;levanté;"
            "me levanté;tengo;me;medí;ha salido;salió;esta vez;solo;hoy peso;me da;da;"
            "reloj;el reloj;mi reloj;pone;aparato;el aparato;tensiómetro;el tensiómetro;la app;la cinta;cinta;"
            "yo diría que;diría;calculo;en total;anduve;caminé;he andado;he caminado;camine"
        ),
        WordRole.AND: split("y;e;&;más"),
        WordRole.POINT: split("coma;punto;con"),
        WordRole.HALF: split("medio;media;y medio;y media"),
        WordRole.QUARTER: split("cuarto;y cuarto;un cuarto;un cuarto de"),
        WordRole.THREE_QUARTERS: split("tres cuartos;y tres cuartos;tres cuartos de"),
        WordRole.LESS_A_QUARTER: split("menos cuarto;menos un cuarto"),
        WordRole.THIRD: split("y tercio;un tercio de"),
        WordRole.LESS_A_THIRD: split("menos un tercio"),
        WordRole.WITHIN: split("en;por;durante;cada;in"),
        WordRole.OVER: split("sobre;entre;por;/;con;y"),
        WordRole.TIMES: split("x;por;veces;vez;*;veces de"),
        WordRole.OUT_OF: split("de;sobre;/;de un total de;de cada"),
        WordRole.RANGE: split("a;o;hasta;-;~;o quizá;o quizás;o tal vez"),
        WordRole.HEDGE: split(
            "unos;unas;aproximadamente;aprox;alrededor de;cerca de;casi;más o menos;como;quizá;quizás;"
            "tal vez;creo;creo que;sobre los;sobre unos;aproximado;~;ca;poco más de;y pico;tirando a;"
            "diría;por ahí"
        ),
        WordRole.AND_SOME: split("y pico;y algo;y tantos;y tantas;y tanto"),
        WordRole.AFTER: split(
            "después de;justo después de;tras;al;cuando;mientras;durante;recién;luego de;después del;después"
        ),
        WordRole.STIRRING: split("café;cigarro;cigarrillo;fumar;fumé;sauna;mate;discusión"),
        WordRole.BOUND: split(
            "más de;menos de;al menos;como mucho;como máximo;mínimo;>;<;por encima de;por debajo de;entre;por lo menos"
        ),
        WordRole.CHANGE: split(
            "perdí;perdido;he perdido;gané;ganado;he ganado;bajé;subí;bajado;subido;más;menos;mejor;peor;"
            "+;engordé;adelgacé;he bajado;he subido;he engordado;he adelgazado;bajó;subió;aumenté"
        ),
        WordRole.NOT: split("no;ni;sin;nunca;no son;no es;no eran;no era"),
        WordRole.NOTHING: split("nada;ninguno;ninguna;ningún;cero;nunca;nada de nada;no hice;no"),
        WordRole.CLOCK: split("a las;a la;a m;p m;am;pm;desde las;de la mañana;de la tarde;de la noche;desde"),
        WordRole.LABEL: split("día;dia;semana;intento;número;toma;pregunta;prueba;edad"),
        WordRole.EACH_DAY: split(
            "al día;por día;cada día;todos los días;diarios;diarias;diario;/día;a diario;cada uno;cada una;cada vez"
        ),
        WordRole.EVERY_DAY: split("todos los días;cada día;los siete;a diario;toda la semana"),
        WordRole.DAYS: split("días;dias;día;paseos;paseo;sesiones;sesión;veces;clases;caminatas;mañanas;tardes"),
        WordRole.FOREIGN: split(
            "por ciento;kpa;grados;años;año;semanas;semana;meses;km;kilómetros;calorías;kcal;litros;mg;ml;"
            "pregunta;preguntas;amigos;amigas;nietos;hijos;cajas;bolsas;sacos;pilas;sillas;cafés;euros;"
            "personas;perros;gatos"
        ),
        WordRole.ARMS: split(
            "con los brazos;usé los brazos;usando los brazos;con brazos;con las manos;usé las manos;"
            "usando las manos;me apoyé;apoyándome;ayudándome con los brazos;me ayudé con los brazos;"
            "con ayuda de los brazos;apoyando las manos"
        ),
        WordRole.HALF_WAY: split(
            "más de la mitad;más de medio;casi arriba;y casi otra;y casi otro;casi otra más;"
            "pasada la mitad;más de media"
        ),
        WordRole.STOPPED: split(
            "paré;me paré;no pude;no puedo;no terminé;no acabé;abandoné;lo dejé;no lo conseguí;solo hice;"
            "sólo hice;tuve que parar;no completé;no fui capaz;me rendí;y luego paré;no he podido;"
            "no la terminé;no lo terminé"
        ),
        WordRole.VIGOROUS: split(
            "intenso;intensos;intensa;vigoroso;vigorosos;vigorosa;fuertes;correr;vigorosas;intensas;fuerte;a tope"
        ),
        WordRole.FILLER: split(
            "a la altura del ombligo;a la altura de las caderas;a la altura;"
            "esta semana;semana;hoy;hice;esta;es;son;era;eran;mi;el;la;los;las;un;ahora;bueno;claro;"
            "en realidad;valor;perdón;error;=;:;quiero;decir;que;sería;serían;correcto;de hecho;"
            "un rato;un ratito;un poco;un poquito;un par;un par de;de vez en cuando;otra vez;una vez más;"
            "un momento;un segundo;una cosa;una de estas;a la vez;de una vez;una pregunta;una copa;"
            "un momentito"
        ),
        WordRole.FAREWELL: split("nos vemos;nos vemos el;hasta el;hasta las;hasta luego el;vuelvo el"),
        WordRole.SORRY: split(
            "no;perdón;perdona;perdone;disculpa;disculpe;ups;uy;ay;espera;espere;error;me equivoqué;"
            "me he equivocado;lo siento;*;errata;ay no;no perdón;perdón no;huy;mejor dicho;equivocado;mal"
        ),
        WordRole.MEANT: split(
            "quise decir;quería decir;quiero decir;quise poner;quería poner;debería ser;corrección;"
            "en vez de eso;lo correcto es;en realidad son;en realidad es;digo;corrijo;cámbialo a;"
            "cambiar a;debía ser;tenía que ser;rectifico;son en realidad;es en realidad"
        ),
        WordRole.PLEASE: split(
            "por favor;porfa;puedo;podría;quiero;quisiera;me gustaría;puedes;puede;ahora;vale;ok;hola;"
            "gracias;muéstrame;enséñame;necesito;dame;ver;quiero ver;me puedes;me puede;podrías;deseo;"
            "tengo que;déjame;por fa"
        ),
    },
    balance_stages=(
        ("pies juntos", "lado a lado", "uno al lado del otro"),
        ("semitándem", "semi tándem"),
        ("tándem", "talón con punta", "talón punta"),
        ("una pierna", "sobre una pierna", "un pie", "a la pata coja"),
    ),
    names={
        "weight": split("peso;el peso;peso corporal;báscula;balanza;pesé"),
        "height": split("altura;estatura;talla;mido"),
        "waist": split("cintura;la cintura;barriga;abdomen;contorno de cintura;perímetro de cintura"),
        "hip": split("cadera;caderas;contorno de cadera;perímetro de cadera"),
        "resting_heart_rate": split("pulso;frecuencia cardíaca;frecuencia cardiaca;pulso en reposo;frecuencia"),
        "blood_pressure": split("tensión;presión;presión arterial;tensión arterial;ta"),
        "energy": split("energía;nivel de energía;ánimo"),
        "chair_stand_30s": split("prueba de la silla;levantarse de la silla;silla"),
        "activity_minutes": split("actividad;ejercicio;actividad física;activo;activa;movimiento"),
        "strength_days": split("fuerza;días de fuerza;pesas"),
        "sessions_done": split("sesiones hechas;sesiones del plan"),
        "session_effort": split("esfuerzo"),
        "six_minute_walk": split("prueba de marcha;caminata de seis minutos"),
        "one_leg_stance": split("equilibrio;una pierna"),
        "two_minute_step": split("prueba de pasos;marcha en el sitio"),
        "walk_mile": split("milla"),
    },
    calendar=CALENDAR,
    intents=WISHES,
    concepts=CONCEPTS | AMISS | EVERYDAY | WEAK_WORDS["es"],
    literal_words=LITERAL_WORDS["es"],
    answers=ANSWERS,
    destroys=DESTROYS,
    questions=QUESTIONS,
    requests=REQUESTS,
    joints=JOINTS,
    sexes=SEXES,
    openers=OPENERS,
    no_openers=NO_OPENERS,
)
