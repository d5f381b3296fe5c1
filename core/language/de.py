"""German, as people type it. A Pfund is half a kilogram for most and 454 g for some, so the bot asks back."""

from __future__ import annotations

from decimal import Decimal

from core.language.de_amiss import AMISS
from core.language.de_everyday import EVERYDAY
from core.language.de_questions import QUESTIONS
from core.language.de_requests import JOINTS, REQUESTS
from core.language.de_signs import ANSWERS, CONCEPTS
from core.language.de_spoken import DIALECT, FILLERS, LEADS, NO_OPENERS, OPENERS, STATEMENTS
from core.language.de_talk import CALENDAR, DESTROYS, SEXES, WISHES
from core.language.lexicon import Lexicon, UnitPart, WordRole, split
from core.language.literal_words import LITERAL_WORDS
from core.language.weak_words import WEAK_WORDS
from core.quantity import Unit

D = Decimal

_ONES = split(
    "null;eins;zwei;drei;vier;fünf;sechs;sieben;acht;neun;zehn;elf;zwölf;dreizehn;vierzehn;fünfzehn;sechzehn;"
    "siebzehn;achtzehn;neunzehn"
)
_TENS = split("zwanzig;dreißig;vierzig;fünfzig;sechzig;siebzig;achtzig;neunzig")


def _numbers() -> dict[str, Decimal]:
    """0 to 999, written together or apart; halves written together ("siebeneinhalb")."""
    small = {word: n for n, word in enumerate(_ONES)}
    apart: dict[str, int] = {}
    for t, tens in enumerate(_TENS, start=2):
        small[tens] = 10 * t
        for n in range(1, 10):
            one = "ein" if n == 1 else _ONES[n]
            small[f"{one}und{tens}"] = 10 * t + n
            apart[f"{one} und {tens}"] = apart[f"{one}und {tens}"] = 10 * t + n
    found = {**small, **apart}
    for n in range(1, 10):
        for hundred in ("hundert", "einhundert") if n == 1 else (f"{_ONES[n]}hundert",):
            found[hundred] = 100 * n
            for word, rest in small.items():
                if rest:
                    for joined in ("", " ", "und"):
                        found[f"{hundred}{joined}{word}"] = 100 * n + rest
    found |= {
        "zwo": 2,
        "zweiundachzig": 82,
        "achzig": 80,
        "einmal": 1,
        "zweimal": 2,
        "dreimal": 3,
        "viermal": 4,
        "fünfmal": 5,
    }
    found |= {"ein": 1, "eine": 1, "einen": 1, "einer": 1, "einem": 1}
    halves = {f"{word}einhalb": D(n) + D("0.5") for word, n in small.items() if n > 1}
    halves |= {"anderthalb": D("1.5"), "eineinhalb": D("1.5"), "eineinviertel": D("1.25"), "zweieinviertel": D("2.25")}
    return {**{word: D(n) for word, n in found.items()}, **halves}


GERMAN = Lexicon(
    code="de",
    own_name="Deutsch",
    decimal=",",
    numbers=_numbers(),
    weak=("ein", "eine", "einen", "einer", "einem"),
    umlauts=True,
    not_english=frozenset(
        split(
            "am;er;ins;in;not;be;was;on;so;to;fast;say;also;a;an;no;die;hat;man;will;war;of;plus;rate;"
            "back;arm;stand;mo;do;so;mi;di"
        )
    ),
    units={
        Unit.KILOGRAM: split("kg;kilo;kilos;kilogramm;kgs;kilogramme"),
        Unit.POUND: split("lb;lbs;britische pfund;englische pfund"),
        Unit.STONE: split("st;stone;stones"),
        Unit.CENTIMETRE: split("cm;zentimeter;centimeter;zentimetern;zenti;cms"),
        Unit.METRE: split("m;meter;metern"),
        Unit.INCH: split("zoll;inch;inches"),
        Unit.FOOT: split("fuß;ft;feet"),
        Unit.BEATS_PER_MINUTE: split(
            "bpm;schläge;schlag;schlägen;schläge pro minute;schläge in der minute;schläge die minute;"
            "pro minute;in der minute;die minute;pulsschläge;herzschläge"
        ),
        Unit.MILLIMETRE_OF_MERCURY: split("mmhg;mm hg"),
        Unit.SECOND: split("s;sek;sekunde;sekunden;sec;secs;seks"),
        Unit.MINUTE: split("min;minute;minuten;m;mins"),
        Unit.METRE_PER_SECOND: split("meter pro sekunde"),
        Unit.REPETITION: split("wiederholungen;wiederholung;wdh;aufsteher"),
        Unit.STEP: split("schritte;schritt;schritten"),
        Unit.POINT: split("punkte;punkt;punkten"),
        Unit.DAY: split("tage;tag;tagen"),
        Unit.SESSION: split("einheiten;einheit;trainings;training;termine;trainingseinheiten"),
    },
    parts={
        UnitPart.GRAM: split("g;gramm;gr"),
        UnitPart.MILLIMETRE: split("mm;millimeter"),
        UnitPart.HOUR: split("h;std;stunde;stunden;stdn"),
    },
    local_pound={"pfund": D("0.5"), "pfd": D("0.5"), "pfunde": D("0.5")},
    amounts={
        "viertelstunde": ("0.25", UnitPart.HOUR),
        "viertelstund": ("0.25", UnitPart.HOUR),
        "viertelstündchen": ("0.25", UnitPart.HOUR),
        "halbstündchen": ("0.5", UnitPart.HOUR),
        "dreiviertelstunde": ("0.75", UnitPart.HOUR),
        "dreiviertelstund": ("0.75", UnitPart.HOUR),
        "stündchen": ("1", UnitPart.HOUR),
        "ne stunde": ("1", UnitPart.HOUR),
        "ne halbe stunde": ("0.5", UnitPart.HOUR),
        "ne viertelstunde": ("0.25", UnitPart.HOUR),
        "ne dreiviertelstunde": ("0.75", UnitPart.HOUR),
    },
    roles={
        WordRole.LEAD: split(
            "wiegt;hat;bin bei;liege bei;lieg bei;stehe bei;steh bei;gerade gewogen;grad gewogen;eben gewogen;"
            "frisch gewogen;hab mich gewogen;hab mich gerade gewogen;habe mich gerade gewogen;"
            "habe mich gewogen;kam auf;habe geschafft;hab geschafft;nen;jetzt bei;"
            "waage;die waage;sagt;zeigt;hab;habe;ich hab;jeden tag;ne;erst;den;um den;diesmal;"
            "geschafft;gemessen;gewogen;oben;unten;heute;bin;sind;also;nur;komme auf;macht;"
            "uhr;die uhr;meine uhr;messgerät;gerät;das gerät;app;maßband;ich sag mal;sag mal;ich sage;gut;gute;"
            "um den bauch;popo;gelaufen;gegangen;spaziert;zusammen;insgesamt"
        ),
        WordRole.AND: split("und;&;sowie"),
        WordRole.POINT: split("komma;punkt"),
        WordRole.HALF: split(
            "und ein halber;ein halber;und einen halben;einen halben;"
            "einhalb;und einhalb;ein halb;und ein halb;und ein halbes;halbe;halbes;halb;eine halbe;"
            "ein halbes;einer halben;halben;einem halben;und eine halbe"
        ),
        WordRole.QUARTER: split("viertel;ein viertel;und ein viertel;eine viertel;einviertel;und einviertel"),
        WordRole.THREE_QUARTERS: split("dreiviertel;drei viertel;und drei viertel;eine dreiviertel"),
        WordRole.LESS_A_QUARTER: split("weniger ein viertel"),
        WordRole.THIRD: split("ein drittel;und ein drittel"),
        WordRole.LESS_A_THIRD: split("weniger ein drittel"),
        WordRole.WITHIN: split("in;pro;je;während;innerhalb von;in den;nach;auf"),
        WordRole.OVER: split("zu;über;auf;/;durch"),
        WordRole.TIMES: split("x;mal;male;*;mal je;einmal;zweimal;dreimal;viermal;fünfmal;mal a;dreimal je"),
        WordRole.OUT_OF: split("von;aus;/;auf"),
        WordRole.RANGE: split("bis;oder;-;~;bis zu"),
        WordRole.HEDGE: split(
            "etwa;ungefähr;ca;circa;zirka;rund;so um;so um die;um die;knapp;fast;vielleicht;glaube ich;"
            "ich glaube;schätze ich;ich schätze;ungefaehr;annähernd;in etwa;~;wohl;beinahe;"
            "schätzungsweise;ich denke;so etwa;ungf"
        ),
        WordRole.AND_SOME: split("irgendwas;komma irgendwas;und irgendwas;und ein paar zerquetschte;und noch was"),
        WordRole.AFTER: split(
            "nach;direkt nach;gleich nach;kurz nach;beim;während;nachdem;als ich;wenn ich;vom;nach dem;nach der"
        ),
        WordRole.STIRRING: split("kaffee;zigarette;rauchen;geraucht;sauna;streit;espresso"),
        WordRole.BOUND: split(
            "mehr als;weniger als;über;unter;mindestens;höchstens;maximal;bis zu;>;<;zwischen;nicht mehr als;minimal"
        ),
        WordRole.CHANGE: split(
            "abgenommen;zugenommen;mehr;weniger;runter;rauf;hoch;besser;schlechter;verloren;höher;"
            "niedriger;+;leichter;schwerer;minus;plus;gestiegen;gesunken"
        ),
        WordRole.NOT: split("nicht;kein;keine;nie;ohne"),
        WordRole.NOTHING: split(
            "nichts;keine;kein;keinen;gar nicht;überhaupt nicht;gar nichts;null;gar keine;nie;nicht;nein"
        ),
        WordRole.CLOCK: split("um;uhr;gegen;seit;ab"),
        WordRole.LABEL: split("tag;woche;versuch;nr;nummer;messung;test;frage;runde;alter"),
        WordRole.EACH_DAY: split(
            "am tag;pro tag;täglich;jeden tag;je tag;pro einheit;jedes mal;jeweils;/tag;je;pro mal"
        ),
        WordRole.EVERY_DAY: split("jeden tag;täglich;alle sieben;die ganze woche;alle tage"),
        WordRole.DAYS: split(
            "tage;tag;tagen;spaziergänge;spaziergang;einheiten;einheit;mal;kurse;abende;morgen;runden;touren"
        ),
        WordRole.FOREIGN: split(
            "prozent;kpa;grad;jahre;jahren;wochen;woche;monate;km;kilometer;kalorien;kcal;liter;mg;ml;"
            "frage;fragen;freunde;enkel;kinder;kisten;kartons;säcke;batterien;stühle;hunde;katzen;tassen;euro;leute"
        ),
        WordRole.ARMS: split(
            "mit armen;mit den armen;arme benutzt;mit den händen;mit händen;hände benutzt;abgestützt;"
            "mich abgestützt;mit hilfe der arme;arme genommen;mit hilfe der hände;arme zu hilfe;"
            "mit armhilfe;arme gebraucht;aufgestützt"
        ),
        WordRole.HALF_WAY: split(
            "mehr als halb;mehr als die hälfte;über die hälfte;fast oben;über halb;und fast noch einer;"
            "fast noch einer;mehr als halb oben;halb oben und mehr"
        ),
        WordRole.STOPPED: split(
            "abgebrochen;aufgehört;nicht geschafft;aufgegeben;konnte nicht;kann nicht;geht nicht;"
            "ging nicht;nicht möglich;nur geschafft;musste aufhören;nicht beendet;nicht zu ende;"
            "schaffe ich nicht;schaffe nicht;dann schluss;abbruch"
        ),
        WordRole.VIGOROUS: split(
            "anstrengend;intensiv;intensive;kräftig;anstrengende;laufen;joggen;"
            "anstrengende;schweißtreibend;flott;stramm"
        ),
        WordRole.FILLER: split(
            "diese woche;woche;heute;leider;gemacht;diese;es;ist;sind;war;waren;mein;meine;der;die;das;"
            "also;doch;richtig;natürlich;eigentlich;wert;heißen;heisst;muss;sollte;ich;tippfehler;falsch;"
            "entschuldigung;sorry;=;:;korrekt;stimmt;"
            "ein bisschen;ein wenig;ein paar;einen moment;einen augenblick;eine weile;auf einmal;noch einmal;"
            "nicht einmal;erst einmal;eine frage;eine sache;einmal mehr;auf eine weise;mit einem mal"
        ),
        WordRole.FAREWELL: split("bis zum;bis am;wir sehen uns;bis dann am;bin zurück am"),
        WordRole.SORRY: split(
            "nein;ne;nee;nö;sorry;entschuldigung;ups;upps;hoppla;moment;falsch;halt;stopp;tippfehler;"
            "vertippt;quatsch;pardon;verzeihung;*;oh nein;ach nein;mist;ich habe mich vertippt;"
            "hab mich vertippt;habe mich vertippt;nein sorry"
        ),
        WordRole.MEANT: split(
            "ich meinte;meinte;ich meine;meinte ich;soll heißen;sollte heißen;korrektur;richtig ist;"
            "sollte sein;muss heißen;stattdessen;richtig wäre;ich wollte schreiben;gemeint war;"
            "gemeint sind;sollen sein;soll sein;korrigiere;bitte ändern auf;ändern in;ändere auf;"
            "eigentlich sind es;es sind eigentlich;sollte es heißen"
        ),
        WordRole.PLEASE: split(
            "bitte;kann ich;könnte ich;ich möchte;ich will;ich würde gerne;ich würde gern;kannst du;"
            "können sie;könnten sie;mal;jetzt;danke;hallo;hi;ok;okay;zeig mir;zeige mir;zeig;zeige;"
            "gib mir;ich brauche;darf ich;mir;bitte mal;würde gerne;möchte;kannst du mir;können sie mir;"
            "einfach;gerne;gern"
        ),
    },
    balance_stages=(
        ("füße nebeneinander", "nebeneinander", "füße zusammen"),
        ("semitandem", "semi tandem", "halbtandem"),
        ("tandem", "ferse an zehen", "ferse an zehe"),
        ("einem bein", "auf einem bein", "einbeinig", "einbeinstand"),
    ),
    names={
        "weight": split("gewicht;körpergewicht;ich wiege;wiege;waage;die waage;gewogen;gew"),
        "height": split("größe;körpergröße;groß"),
        "waist": split("taille;taillenumfang;bauch;bauchumfang;taillenmaß;gürtelweite"),
        "hip": split("hüfte;hüftumfang;hüften;po;gesäß"),
        "resting_heart_rate": split("puls;ruhepuls;herzfrequenz;herzschlag;ruheherzfrequenz"),
        "blood_pressure": split("blutdruck;rr"),
        "energy": split("energie;energielevel;antrieb;schwung"),
        "chair_stand_30s": split("aufstehtest;aufstehen;stuhltest"),
        "activity_minutes": split("aktivität;bewegung;aktiv;sport;aktive minuten;bewegt"),
        "strength_days": split("krafttage;krafttraining;kraft"),
        "sessions_done": split("einheiten geschafft;plan einheiten"),
        "session_effort": split("anstrengung;wie anstrengend"),
        "six_minute_walk": split("gehtest;sechs minuten gehen"),
        "one_leg_stance": split("einbeinstand;ein bein"),
        "two_minute_step": split("steptest;schritttest"),
        "walk_mile": split("meile"),
    },
    calendar=CALENDAR,
    intents=WISHES,
    concepts=CONCEPTS | AMISS | EVERYDAY | WEAK_WORDS["de"],
    literal_words=LITERAL_WORDS["de"],
    answers=ANSWERS,
    destroys=DESTROYS,
    questions=QUESTIONS,
    dialect=DIALECT,
    fillers=FILLERS,
    leads=LEADS,
    openers=OPENERS,
    statements=STATEMENTS,
    no_openers=NO_OPENERS,
    requests=REQUESTS,
    joints=JOINTS,
    sexes=SEXES,
)
