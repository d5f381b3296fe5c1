"""Polish, as people type it. Case endings are listed where people use them; accents may be left out."""

from __future__ import annotations

from decimal import Decimal

from core.language.lexicon import Lexicon, UnitPart, WordRole, split
from core.language.literal_words import LITERAL_WORDS
from core.language.pl_amiss import AMISS
from core.language.pl_everyday import EVERYDAY
from core.language.pl_questions import QUESTIONS
from core.language.pl_requests import JOINTS, REQUESTS
from core.language.pl_signs import ANSWERS, CONCEPTS
from core.language.pl_talk import CALENDAR, DESTROYS, SEXES, WISHES
from core.language.weak_words import WEAK_WORDS
from core.quantity import Unit

OPENERS = split(
    "co to;co mam;co robic;co dalej;jaki;jaka;jakie;kto;komu;kiedy;gdzie;dlaczego;czemu;jak mam;jak sie;"
    "jak moge;ile;czy;moge;mozna"
)
NO_OPENERS = split("jak zwykle;jak zawsze;jak zwyk;moge pozniej;moge jutro")

D = Decimal

_SMALL = split(
    "zero;jeden;dwa;trzy;cztery;pięć;sześć;siedem;osiem;dziewięć;dziesięć;jedenaście;dwanaście;"
    "trzynaście;czternaście;piętnaście;szesnaście;siedemnaście;osiemnaście;dziewiętnaście"
)
_TENS = split(
    "dwadzieścia;trzydzieści;czterdzieści;pięćdziesiąt;sześćdziesiąt;siedemdziesiąt;osiemdziesiąt;dziewięćdziesiąt"
)
_HUNDREDS = split("sto;dwieście;trzysta;czterysta;pięćset;sześćset;siedemset;osiemset;dziewięćset")
_MARKS = split(  # as marks at school: "dziś taka szóstka"
    "jedynka;dwójka;trójka;czwórka;piątka;szóstka;siódemka;ósemka;dziewiątka;dziesiątka"
)
_SMALL_OF = split(  # genitive, from two: "około osiemdziesięciu dwóch"
    "dwóch;trzech;czterech;pięciu;sześciu;siedmiu;ośmiu;dziewięciu;dziesięciu;jedenastu;dwunastu;"
    "trzynastu;czternastu;piętnastu;szesnastu;siedemnastu;osiemnastu;dziewiętnastu"
)
_TENS_OF = split(
    "dwudziestu;trzydziestu;czterdziestu;pięćdziesięciu;sześćdziesięciu;siedemdziesięciu;osiemdziesięciu;"
    "dziewięćdziesięciu"
)


def _numbers() -> dict[str, Decimal]:
    """0 to 999 in the nominative, to 199 in the genitive; one and a half."""
    small = {word: n for n, word in enumerate(_SMALL)}
    small |= {"dwie": 2, "jedna": 1, "jedno": 1, "jedną": 1}
    for t, tens in enumerate(_TENS, start=2):
        small[tens] = 10 * t
        for n in range(1, 10):
            small[f"{tens} {_SMALL[n]}"] = 10 * t + n
        small[f"{tens} dwie"] = 10 * t + 2
        small[f"{tens} jedna"] = 10 * t + 1
    of = {word: n for n, word in enumerate(_SMALL_OF, start=2)}
    for t, tens in enumerate(_TENS_OF, start=2):
        of[tens] = 10 * t
        of[f"{tens} jeden"] = 10 * t + 1
        of |= {f"{tens} {_SMALL_OF[n - 2]}": 10 * t + n for n in range(2, 10)}
    found = {**small, **of}
    for h, hundred in enumerate(_HUNDREDS, start=1):
        found[hundred] = 100 * h
        found |= {f"{hundred} {word}": 100 * h + n for word, n in small.items() if n}
    found |= {"raz": 1}
    for n, mark in enumerate(_MARKS, start=1):
        found |= {mark: n, f"{mark[:-1]}ę": n, f"{mark[:-1]}ą": n}
    found |= {f"stu {word}": 100 + n for word, n in of.items()} | {"stu": 100}
    one_and_a_half = {"półtora": D("1.5"), "półtorej": D("1.5")}
    return {**{word: D(n) for word, n in found.items()}, **one_and_a_half}


POLISH = Lexicon(
    code="pl",
    own_name="Polski",
    decimal=",",
    numbers=_numbers(),
    weak=("jeden", "jedna", "jedno", "jedną"),
    not_english=frozenset(
        split("ten;to;on;a;do;no;i;be;or;by;my;at;an;m;te;me;in;ins;ton;so;co;of;is;up;mi;ale;ty;ma;ja;go;more")
    ),
    units={
        Unit.KILOGRAM: split("kg;kgs;kilo;kilogram;kilogramy;kilogramów;kilograma;kila;kil;kilosów;kilogramach"),
        Unit.POUND: split("lb;lbs;funt;funty;funtów;funta"),
        Unit.STONE: split("stone;st"),
        Unit.CENTIMETRE: split("cm;centymetr;centymetry;centymetrów;centymetra;cent"),
        Unit.METRE: split("m;metr;metry;metrów;metra"),
        Unit.INCH: split("cal;cale;cali;cala"),
        Unit.FOOT: split("stopa;stopy;stóp;ft"),
        Unit.BEATS_PER_MINUTE: split(
            "bpm;uderzeń;uderzenia;uderzenie;uderzeń na minutę;uderzenia na minutę;na minutę;ud na min;"
            "na min;ud;uderzeń serca;skurczów"
        ),
        Unit.MILLIMETRE_OF_MERCURY: split("mmhg;mm hg"),
        Unit.SECOND: split("s;sek;sekund;sekundy;sekundę;sekunda;sec"),
        Unit.MINUTE: split("min;minut;minuty;minutę;minuta;m"),
        Unit.METRE_PER_SECOND: split("metrów na sekundę"),
        Unit.REPETITION: split("powtórzeń;powtórzenia;powtórzenie;powt;wstań;wstania"),
        Unit.STEP: split("kroków;kroki;krok"),
        Unit.POINT: split("punktów;punkty;punkt;pkt"),
        Unit.DAY: split("dni;dzień;dnia"),
        Unit.SESSION: split("treningów;treningi;trening;sesji;sesje;sesja;zajęć;zajęcia"),
    },
    parts={
        UnitPart.GRAM: split("g;gram;gramy;gramów;gr"),
        UnitPart.MILLIMETRE: split("mm;milimetrów;milimetry"),
        UnitPart.HOUR: split("h;godz;godzin;godziny;godzina;godzinę;g"),
    },
    amounts={
        "kwadrans": ("15", Unit.MINUTE),
        "kwadransik": ("15", Unit.MINUTE),
        "dwa kwadranse": ("30", Unit.MINUTE),
        "trzy kwadranse": ("45", Unit.MINUTE),
        "pięć kwadransów": ("75", Unit.MINUTE),
        "półtorej godzinki": ("1.5", UnitPart.HOUR),
        "pół godzinki": ("0.5", UnitPart.HOUR),
        "pół godzinka": ("0.5", UnitPart.HOUR),
        "półgodziny": ("0.5", UnitPart.HOUR),
        "półgodzinka": ("0.5", UnitPart.HOUR),
        "godzinka": ("1", UnitPart.HOUR),
        "godzinkę": ("1", UnitPart.HOUR),
        "godzinę": ("1", UnitPart.HOUR),
        "godzina": ("1", UnitPart.HOUR),
    },
    roles={
        WordRole.LEAD: split(
            "waży;ma;właśnie się zważyłam;właśnie się zważyłem;zważyłam się;zważyłem się;przed chwilą się ważyłam;"
            "udało się;udało mi się;dałam radę;dałem radę;jestem na;stoję na;zrobione;"
            "waga pokazuje;pokazuje;mam;zrobiłam;zrobiłem;wyszło;wyszlo;górne;dolne;rano;dziś rano;"
            "naliczyłam;naliczyłem;policzyłam;tym razem;tylko;u mnie;teraz;jest;wyszły;"
            "zegarek;zegarek pokazuje;ciśnieniomierz;ciśnieniomierz pokazuje;aparat;aparat pokazuje;apka;"
            "pokazał;pokazała;miarka pokazuje;powiedzmy;mocne;dobre;wyszedł;wyszła;razem;łącznie;w sumie;"
            "wstałam;wstałem;chodziłam;chodziłem;spacer;no taka;taka;na;po;wychodzi;w spoczynku;równe;równo;dokładnie"
        ),
        WordRole.AND: split("i;oraz;a;&"),
        WordRole.POINT: split("przecinek;kropka;przecinku"),
        WordRole.HALF: split("pół;i pół;z połową"),
        WordRole.QUARTER: split("ćwierć;i ćwierć;jedna czwarta;i jedna czwarta"),
        WordRole.THREE_QUARTERS: split("trzy czwarte;i trzy czwarte"),
        WordRole.LESS_A_QUARTER: split("bez kwadransa;minus ćwierć"),
        WordRole.THIRD: split("jedna trzecia;i jedna trzecia"),
        WordRole.LESS_A_THIRD: split("minus jedna trzecia"),
        WordRole.WITHIN: split("w;na;przez;w ciągu;za;we;w czasie"),
        WordRole.OVER: split("na;przez;nad;/;i"),
        WordRole.TIMES: split("razy;raz;x;*;razy po"),
        WordRole.OUT_OF: split("z;na;/;ze;spośród"),
        WordRole.RANGE: split("do;lub;albo;-;~;czy"),
        WordRole.HEDGE: split(
            "około;ok;mniej więcej;prawie;jakieś;chyba;z grubsza;w przybliżeniu;koło;blisko;może;"
            "myślę że;jakoś;~;ca;gdzieś;niecałe;ponad trochę;plus minus;raczej;jakie;mniej wiecej"
        ),
        WordRole.AND_SOME: split("z hakiem;z groszami;z czymś;coś;z kawałkiem;i coś"),
        WordRole.AFTER: split("po;zaraz po;tuż po;od razu po;podczas;kiedy;gdy;w trakcie;jak"),
        WordRole.STIRRING: split("kawie;kawa;kawę;papierosie;paleniu;papierosa;saunie;kłótni"),
        WordRole.BOUND: split(
            "więcej niż;mniej niż;ponad;powyżej;poniżej;co najmniej;najwyżej;między;pomiędzy;>;<;"
            "nie więcej niż;maksymalnie;przynajmniej;minimum"
        ),
        WordRole.CHANGE: split(
            "schudłem;schudłam;przytyłem;przytyłam;straciłem;straciłam;więcej;mniej;lepiej;gorzej;+;"
            "w dół;w górę;spadło;wzrosło;plus;minus;przybyło;ubyło;zgubiłem;zgubiłam"
        ),
        WordRole.NOT: split("nie;bez;ani;to nie;nie jest"),
        WordRole.NOTHING: split(
            "nic;żaden;żadnego;żadnej;żadne;zero;wcale;ani razu;w ogóle;ani jednej;ani minuty;nie;ani jednego"
        ),
        WordRole.CLOCK: split("o;godzinie;o godzinie;rano;wieczorem;od"),
        WordRole.LABEL: split("dzień;tydzień;próba;numer;nr;pomiar;pytanie;wiek;lat"),
        WordRole.EACH_DAY: split(
            "dziennie;na dzień;każdego dnia;codziennie;za każdym razem;każdy;każda;/dzień;co dzień;po"
        ),
        WordRole.EVERY_DAY: split("codziennie;każdego dnia;cały tydzień;co dzień;wszystkie siedem"),
        WordRole.DAYS: split(
            "dni;dnia;dzień;spacery;spacerów;spacer;razy;treningi;treningów;zajęcia;zajęć;poranki;wieczory"
        ),
        WordRole.FOREIGN: split(
            "procent;kpa;stopni;lat;lata;tygodni;tygodnie;tydzień;miesięcy;km;kilometrów;kalorii;kcal;litrów;mg;ml;"
            "pytanie;pytania;pytań;koleżanki;znajomych;wnuki;wnuków;dzieci;kartonów;kartony;worki;worków;"
            "baterie;baterii;nowych;krzesła;krzeseł;psy;koty;kawy;osoby;osób;złotych"
        ),
        WordRole.ARMS: split(
            "z rękami;używałem rąk;używałam rąk;z pomocą rąk;podpierałem się;podpierałam się;na rękach;"
            "z użyciem rąk;pomagałem sobie rękami;pomagałam sobie rękami;podpierając się;użyłem rąk;"
            "użyłam rąk;pomogłem sobie rękami;pomogłam sobie rękami;rękami;przy pomocy rąk"
        ),
        WordRole.HALF_WAY: split(
            "ponad połowa;więcej niż połowa;ponad połowę;więcej niż połowę;i prawie jeszcze jedno;"
            "prawie jeszcze jedno;więcej niż w połowie;ponad pół;i prawie jeszcze raz"
        ),
        WordRole.STOPPED: split(
            "przerwałem;przerwałam;nie dałem rady;nie dałam rady;nie skończyłem;nie skończyłam;nie mogę;"
            "nie mogłem;nie mogłam;nie ukończyłem;nie ukończyłam;poddałem się;poddałam się;"
            "zatrzymałem się;zatrzymałam się;musiałem przerwać;musiałam przerwać;nie udało się;"
            "zrezygnowałem;zrezygnowałam;i stop;nie dokończyłem;nie dokończyłam;przerwane"
        ),
        WordRole.VIGOROUS: split(
            "intensywnie;intensywne;intensywnych;intensywnego;mocno;bieganie;biegania;"
            "intensywny;intensywnie ćwiczyłam;ostro"
        ),
        WordRole.FILLER: split(
            "w tym tygodniu;tygodniu;dziś;niestety;tym;to;jest;był;było;była;moja;mój;moje;ma;być;"
            "przepraszam;pomyłka;właściwie;wartość;=;:;źle;literówka;sorry;są;oczywiście;jednak;dobrze;"
            "raz na jakiś czas;jeszcze raz;od razu;naraz;jeden moment;jedną chwilę;jedną chwilkę;"
            "jedna sprawa;jedno pytanie;jedno z drugim;raz dwa;w jednej chwili;parę spraw"
        ),
        WordRole.FAREWELL: split("do zobaczenia;do zobaczenia o;widzimy się;wracam"),
        WordRole.SORRY: split(
            "nie;przepraszam;sorry;ups;oj;pomyłka;czekaj;moment;błąd;pomyliłem się;pomyliłam się;*;"
            "literówka;źle;o nie;wróć;sory;zaraz;oj nie;nie nie;nie przepraszam;pardon;pomylka"
        ),
        WordRole.MEANT: split(
            "miało być;chodziło mi o;chciałem napisać;chciałam napisać;powinno być;miałem na myśli;"
            "miałam na myśli;poprawka;korekta;zamiast tego;poprawnie;właściwie to;popraw na;zmień na;"
            "ma być;powinno byc;chciałem powiedzieć;chciałam powiedzieć;mam na myśli;poprawnie jest"
        ),
        WordRole.PLEASE: split(
            "proszę;czy mogę;czy możesz;chcę;chciałbym;chciałabym;mogę;możesz;teraz;dziękuję;dzięki;"
            "cześć;dzień dobry;ok;okej;pokaż;pokaż mi;daj mi;potrzebuję;poproszę;prosze;czy można;można;"
            "chce;mi;czy mógłbyś;czy mogłabyś;muszę"
        ),
    },
    balance_stages=(
        ("obok siebie", "stopy razem", "stopy obok siebie"),
        ("semi tandem", "semitandem", "pół tandem"),
        ("tandem", "pięta przy palcach"),
        ("jednej nodze", "na jednej nodze"),
    ),
    names={
        "weight": split("waga;wagę;wagi;ważę;masa ciała;masa;waże"),
        "height": split("wzrost;wzrostu"),
        "waist": split("talia;talii;talię;pas;w pasie;obwód talii;obwód pasa;brzuch;pasa;w talii"),
        "hip": split("biodra;bioder;biodro;obwód bioder;w biodrach"),
        "resting_heart_rate": split("puls;tętno;tętna;pulsu;tętno spoczynkowe;puls spoczynkowy"),
        "blood_pressure": split("ciśnienie;ciśnienia;ciśnienie krwi;rr"),
        "energy": split("energia;energii;energię;poziom energii"),
        "chair_stand_30s": split("wstawanie z krzesła;test krzesła;wstawania z krzesła"),
        "activity_minutes": split("aktywność;aktywności;ruch;ruchu;ćwiczenia;aktywnie;sport"),
        "strength_days": split("siła;trening siłowy;dni siłowe;siłowe"),
        "sessions_done": split("treningi wykonane;treningi z planu"),
        "session_effort": split("wysiłek;wysiłku"),
        "six_minute_walk": split("test marszu;marsz sześciominutowy"),
        "one_leg_stance": split("równowaga;jedna noga;na jednej nodze"),
        "two_minute_step": split("test kroków;marsz w miejscu"),
        "walk_mile": split("mila"),
    },
    calendar=CALENDAR,
    intents=WISHES,
    concepts=CONCEPTS | AMISS | EVERYDAY | WEAK_WORDS["pl"],
    literal_words=LITERAL_WORDS["pl"],
    answers=ANSWERS,
    destroys=DESTROYS,
    questions=QUESTIONS,
    requests=REQUESTS,
    joints=JOINTS,
    sexes=SEXES,
    openers=OPENERS,
    no_openers=NO_OPENERS,
)
