"""Polish: intents, days and times. "Wpół do ósmej" is 7:30."""

from __future__ import annotations

from core.client import Sex
from core.language.lexicon import Calendar, Destroys, Intent, split

_HOURS = split(
    "pierwszej;drugiej;trzeciej;czwartej;piątej;szóstej;siódmej;ósmej;dziewiątej;dziesiątej;"
    "jedenastej;dwunastej;trzynastej;czternastej;piętnastej;szesnastej;siedemnastej;osiemnastej;"
    "dziewiętnastej;dwudziestej;dwudziestej pierwszej;dwudziestej drugiej;dwudziestej trzeciej"
)
_HOURS_SAID = split(
    "pierwsza;druga;trzecia;czwarta;piąta;szósta;siódma;ósma;dziewiąta;dziesiąta;jedenasta;"
    "dwunasta;trzynasta;czternasta;piętnasta;szesnasta;siedemnasta;osiemnasta;dziewiętnasta;"
    "dwudziesta;dwudziesta pierwsza;dwudziesta druga;dwudziesta trzecia"
)

CALENDAR = Calendar(
    weekdays=(
        split("poniedziałek;poniedziałku;poniedziałki;pon;pn"),
        split("wtorek;wtorku;wtorki;wt"),
        split("środa;środę;środy;środzie;śr"),
        split("czwartek;czwartku;czwartki;czw"),
        split("piątek;piątku;piątki;pt"),
        split("sobota;sobotę;soboty;sobocie;sob"),
        split("niedziela;niedzielę;niedziele;niedzieli;ndz;nd;niedz"),
    ),
    months=(
        split("styczeń;stycznia;styczniu;sty"),
        split("luty;lutego;lutym;lut"),
        split("marzec;marca;marcu;mar"),
        split("kwiecień;kwietnia;kwietniu;kwi"),
        split("maj;maja;maju"),
        split("czerwiec;czerwca;czerwcu;cze"),
        split("lipiec;lipca;lipcu;lip"),
        split("sierpień;sierpnia;sierpniu;sie"),
        split("wrzesień;września;wrześniu;wrz"),
        split("październik;października;październiku;paź"),
        split("listopad;listopada;listopadzie;lis"),
        split("grudzień;grudnia;grudniu;gru"),
    ),
    today=split("dziś;dzisiaj"),
    tomorrow=split("jutro;jutra"),
    day_after=split("pojutrze"),
    next=split(
        "następny;następna;następne;następnym;przyszły;przyszła;przyszłe;przyszłym;następną;przyszłą;"
        "następnego;przyszłego"
    ),
    in_=split("za;na;przez;w"),
    to=split("do"),
    until=split("do;aż do;przed"),
    day=split("dzień;dni;dnia"),
    week=split("tydzień;tygodnie;tygodni;tygodnia;tygodniu"),
    month=split("miesiąc;miesiące;miesięcy;miesiąca;miesiącu"),
    at=split("o;o godzinie;godzina;godzinie;godz;około;na;od"),
    am=split("rano;z rana;przed południem;nad ranem"),
    pm=split("wieczorem;po południu;popołudniu;wieczór;dziś wieczorem;po poludniu"),
    noon=split("południe;w południe"),
    midnight=split("północ;o północy;w północ"),
    half_to=split("wpół do;w pół do"),
    quarter_past=split("kwadrans po"),
    quarter_to=split("za kwadrans;kwadrans przed"),
    hours={
        **{word: n for n, word in enumerate(_HOURS, start=1)},
        **{word: n for n, word in enumerate(_HOURS_SAID, start=1)},
    },
    place=split(
        "jestem w;jestem teraz w;jestem we;mieszkam w;przeprowadziłem się do;przeprowadziłam się do;"
        "jadę do;lecę do;strefa czasowa;miasto;na wakacjach w;przebywam w;wyjechałem do;"
        "wyjechałam do;teraz jestem w;jesteśmy w;jestem obecnie w;mieszkam teraz w;na urlopie w"
    ),
    any_day=split("każdy;każdy dzień;dowolny;obojętnie;wszystko jedno;kiedykolwiek"),
    except_=split(
        "oprócz;poza;byle nie;tylko nie;ale nie;z wyjątkiem;odpada;odpadają;mi nie pasuje;nie pasuje;nie pasują;"
        "mi nie pasują;nie mogę;nie mogę w;nigdy nie mogę;jest zły;są złe;to zły dzień;nie da rady;jest zajęty;"
        "mam zajęty;mam zajętą;mam zajęte"
    ),
    place_ends=split("do;na;przez;teraz;od;i;ale;dziś;dzisiaj;jutro;w;z;bo;aż;obecnie;po;aktualnie"),
)

SEXES = {
    Sex.MALE: split("mężczyzna;męska;męski;m;pan;facet;jestem mężczyzną"),
    Sex.FEMALE: split("kobieta;żeńska;żeński;k;pani;jestem kobietą"),
}

WISHES = {
    Intent.YES: split(
        "może być;niech będzie;niech będzie tak;pasuje;pasuje mi;mi pasuje;dla mnie ok;"
        "dla mnie w porządku;nie ma problemu;"
        "bez problemu;nie ma sprawy;nie mam nic przeciwko;dobra;no dobra;no dobrze;spoko;jak trzeba;w porzo;git;oki;"
        "tak tak;no jasne;jasna sprawa;jasne że tak;oczywiście że tak;z chęcią;bardzo chętnie;proszę bardzo;"
        "ano tak;tak zgadzam się;wchodzę w to;piszę się na to;pewnie że tak;"
        "tak;tak …;jasne;oczywiście;pewnie;zgoda;dobrze;ok;okej;okay;racja;dokładnie;zgadza się;"
        "tak jest;no tak;jak najbardziej;potwierdzam;zgadzam się;no;no pewnie;chętnie;w porządku;"
        "prawda;tak proszę;zgadzam sie"
    ),
    Intent.NO: split(
        "nie;nie …;źle;nieprawda;wcale nie;nigdy;żadne;żaden;żadna;nic z tych;nie dziękuję;"
        "raczej nie;niekoniecznie;nie zgadza się;nic z tego;żadnych;nic takiego;niestety nie;"
        "nie dzięki"
    ),
    Intent.HELP: split(
        "nie umiem zmierzyć …;nie umiem mierzyć …;nie umiem tego zmierzyć;nie potrafię zmierzyć …;"
        "nie wiem jak zmierzyć …;nie wiem jak mierzyć …;nie wiem jak to zmierzyć;nie umiem tego;"
        "… pomóc …;… pomożesz …;pomoc;pomoc …;pomocy;pomóż;pomóż mi …;pomóż mi;co mogę zrobić;"
        "co umiesz;jak to działa;jak to działa …;nie rozumiem …;nie rozumiem;jak;jak …;co mam zrobić;"
        "co robić;potrzebuję pomocy …;… potrzebuję pomocy …;co to jest;instrukcja;wyjaśnij …;menu;"
        "polecenia;i co teraz;ratunku;zgubiłem się;zgubiłam się"
    ),
    Intent.SKIP: split(
        "pominę to;pominę;pomine to;to pominę;to pomijam;pomijam to;nie chce mi się;dziś mi się nie chce;"
        "dzisiaj mi się nie chce;nie mam ochoty;dziś nie mam ochoty;"
        "pomiń;pomiń …;pomin;opuść;opuszczam;następne;dalej bez tego;nie tym razem;dzisiaj nie;"
        "dziś nie;dzisiaj nie …;nie mam wagi;nie mam miarki;nie mam centymetra;następne pytanie;"
        "pomijam;nie mogę tego zrobić;zostaw to;pominąć;przeskocz;pomińmy;pomińmy …;bez tego"
    ),
    Intent.LATER: split(
        "nie mam teraz czasu;nie mam teraz czasu …;teraz nie mam czasu;teraz nie mam czasu …;brak czasu;nie mam kiedy;"
        "teraz nie mogę;teraz nie mogę …;nie mogę teraz;nie mogę teraz …;zrobię później;później zrobię;zrobię potem;"
        "spieszę się;śpieszę się;nie ma czasu;"
        "później;później …;potem;nie teraz;nie teraz …;przypomnij …;przypomnij mi …;za chwilę;zaraz;"
        "jestem zajęty …;jestem zajęta …;zajęty;zajęta;jutro;jutro …;wieczorem;dziś wieczorem;"
        "innym razem;jestem w pracy …;nie ma mnie w domu;nie jestem w domu …;za godzinę;"
        "nie mam czasu …;nie mam czasu;chwila;poczekaj;zapytaj później;zapytaj mnie …"
    ),
    Intent.STOP: split(
        "nie chcę już tego robić;nie chcę tego dalej robić;nie chcę dalej;mam już dość pytań;nie chcę już odpowiadać;"
        "daj spokój;daj spokój …;dajcie spokój;dajcie mi spokój;wystarczy już;starczy;starczy już;"
        "stop;przestań;anuluj;koniec;zakończ;wystarczy;dość;przerwij;zostaw mnie;daj mi spokój;wyjdź;"
        "wyjście;zapomnij o tym;nieważne;stop …;anuluj …;przestańcie"
    ),
    Intent.UNDO: split(
        "cofnij;cofnij …;wycofaj;wycofaj …;usuń to;usuń ostatni …;usuń ostatnie …;usuń ostatnią …;"
        "skasuj;skasuj …;zła liczba;pomyliłem się;pomyliłam się;pomyłka;to był błąd;błąd;literówka;"
        "źle wpisałem;źle wpisałam;zła wartość;to pomyłka;zły numer;cofnąć"
    ),
    Intent.COACH: split(
        "chcę porozmawiać z trenerem …;chcę porozmawiać z trenerką …;chcę rozmawiać z trenerem …;"
        "chcę rozmawiać z trenerką …;mogę porozmawiać z trenerem …;mogę porozmawiać z trenerką …;potrzebuję trenera …;"
        "potrzebuję trenerki …;powiedz trenerowi …;powiedz trenerce …;przekaż trenerowi …;przekaż trenerce …;"
        "powiedz mojemu trenerowi …;powiedz mojej trenerce …;porozmawiać z trenerem …;porozmawiać z trenerką …;"
        "trener;trenerka;trener …;trenerka …;instruktor;instruktorka;coach;coach …;… z trenerem …;"
        "… z trenerką …;… mojego trenera …;… do trenera …;… do trenerki …;… mojemu trenerowi …;"
        "… trenerowi …;… trenerce …;… porozmawiać z kimś …;… z człowiekiem …;człowiek;wiadomość …;"
        "zadzwoń do mnie;zadzwońcie do mnie;… z instruktorem …;… z instruktorką …;kontakt …"
    ),
    Intent.PAUSE: split(
        "jestem w delegacji …;w delegacji …;jadę w delegację …;wyjeżdżam w delegację …;"
        "pauza;pauza …;przerwa;przerwa …;wstrzymaj;wstrzymaj …;urlop;na urlopie;na urlopie …;"
        "… na urlop …;wakacje;na wakacjach;… na wakacje …;… na wakacjach …;wyjeżdżam …;… przerwy …;"
        "… przerwę …;nie będzie mnie …;w szpitalu;… w szpitalu …;nie pisz do mnie do …;zawieś;"
        "zawieś …;jestem na urlopie …;wyjechałem …;wyjechałam …"
    ),
    Intent.RESUME: split(
        "już wróciłam;już wróciłem;już wróciłam …;już wróciłem …;wróciłam już;wróciłem już;już po urlopie;po urlopie;"
        "już w domu;jestem już;"
        "wznów;wznów …;wróciłem;wróciłam;wróciłem …;wróciłam …;już jestem;jestem z powrotem …;"
        "jestem z powrotem;koniec przerwy;z powrotem;zaczynam znowu;zacznij znowu;znowu jestem;wracam"
    ),
    Intent.TODAY: split(
        "dziś;dzisiaj;co dzisiaj;co na dziś;co mam dziś zrobić;co dziś;co mam do zrobienia;co dalej;"
        "kiedy następny …;kiedy następne …;zadania;co jest dzisiaj do zrobienia;na dziś"
    ),
    Intent.RECORD: split(
        "zapisz;zapisz …;wpisz;wpisz …;nowy pomiar;dodaj;dodaj …;zanotuj;zanotuj …;zmierzyłem;"
        "zmierzyłam;nowy wynik;zapis"
    ),
    Intent.PROGRESS: split(
        "postępy;moje postępy;postęp;wyniki;moje wyniki;wykres;wykres …;wykresy;historia;"
        "moja historia;jak mi idzie;jak mi idzie …;statystyki;moje pomiary;trend;moje liczby;"
        "… moje postępy …;… moje wyniki …;… mój wykres …;mój wykres;wykres wagi;… wykres wagi …"
    ),
    Intent.GOAL: split(
        "cel;cel …;cele;mój cel;mój cel …;nowy cel;zmień cel;ustaw cel …;… mój cel …;chcę osiągnąć …;"
        "zmień cel …;zmiana celu"
    ),
    Intent.SETTINGS: split("ustawienia;ustawienia …;opcje;preferencje;profil;konfiguracja"),
    Intent.SAME: split(
        "tak samo;tak samo jak ostatnio;jak ostatnio;bez zmian;to samo;wszystko tak samo;jak zawsze;"
        "jak poprzednio;nic się nie zmieniło;jak zwykle;jak wcześniej;identycznie;te same warunki;"
        "tak jak ostatnio;wszystko jak ostatnio;tak jak poprzednio"
    ),
    Intent.DIFFERENT: split(
        "inaczej;inaczej …;inne;inna waga;nowa waga;coś było inaczej;nie tak samo;było inaczej;"
        "zmieniło się;coś się zmieniło;inne warunki;nie tak jak ostatnio"
    ),
    Intent.WHY: split("dlaczego;dlaczego …;czemu;czemu …;po co;po co …;dlaczego pytasz;dlaczego nie;powód;a dlaczego"),
    Intent.SOURCE: split(
        "źródło;źródła;źródło …;skąd to;skąd to wiadomo;skąd to wiesz;kto tak mówi;jakie badanie;"
        "badania;na czym to oparte;skąd …;… źródło …;na jakiej podstawie;według kogo"
    ),
    Intent.THANKS: split(
        "dziękuję;dziękuję …;dzięki;dzięki …;dziękuję bardzo;wielkie dzięki;super;świetnie;fajnie;"
        "bardzo dobrze;wspaniale;doskonale;miło;ekstra;rewelacja;dziękuje;dzieki;cudownie;pięknie"
    ),
    Intent.GREETING: split(
        "wesołych świąt;wesołych świąt …;szczęśliwego nowego roku;szczęśliwego nowego roku …;wszystkiego najlepszego;"
        "wesołego alleluja;"
        "cześć;hej;dzień dobry;dobry wieczór;witam;witaj;siema;dobranoc;do widzenia;pa;dzień dobry …;"
        "cześć …;hejka;do zobaczenia;czesc;miłego dnia"
    ),
    Intent.DONE: split(
        "gotowe;zrobione;skończone;skończyłem;skończyłam;już;to wszystko;zrobiłem;zrobiłam;"
        "koniec na dziś;wszystko zrobione;wykonane;nic więcej;to już wszystko;ukończone"
    ),
    Intent.START: split(
        "start;zacznij;zaczynamy;zaczynam;jestem gotowy;jestem gotowa;gotowy;gotowa;rozpocznij;"
        "zacznijmy;do dzieła;zaczynajmy"
    ),
    Intent.NOT_WELL: split(
        "mam doła;mam dziś doła;mam zły dzień;mam gorszy dzień;jestem w dołku;nie mam humoru;"
        "tak sobie;tak sobie …;takie sobie;średnio;tak średnio;ujdzie;jako tako;może być lepiej;bywało lepiej;"
        "źle się czuję …;nie czuję się dobrze …;jestem chory …;jestem chora …;chory;chora;"
        "przeziębiony;przeziębiona;jestem przeziębiony;jestem przeziębiona;gorączka;mam gorączkę …;"
        "grypa;mam grypę;kiepsko;kiepsko się czuję …;nie najlepiej;niedobrze się czuję;"
        "słabo się czuję …;nienajlepiej;zle sie czuje;niezbyt dobrze;fatalnie"
    ),
    Intent.WELL: split(
        "jak młody bóg;jak ryba w wodzie;świetnie dziękuję;znakomicie;pierwsza klasa;tak czuję się dobrze;tak dobrze;"
        "tak wszystko dobrze;wyśmienicie;"
        "czuję się dobrze;dobrze się czuję;wszystko dobrze;w porządku dziękuję;dobrze dziękuję;"
        "czuję się świetnie;wszystko w porządku;świetnie się czuję;bardzo dobrze dziękuję;dobrze mi;"
        "jest dobrze;tak dobrze się czuję"
    ),
    Intent.MY_DATA: split(
        "moje dane;moje dane …;dane;… moje dane …;co o mnie wiecie;co o mnie wiesz;eksport;eksportuj;"
        "pobierz moje dane;prywatność;co przechowujecie;jakie dane …"
    ),
    Intent.FORGET: split(
        "zapomnij mnie;zapomnij o mnie;usuń mnie;usuń moje dane;skasuj moje dane;usuń konto;"
        "usuń moje konto;usunąć moje dane;skasować moje dane;usunąć wszystkie moje dane;"
        "usuń wszystkie moje dane;zapomnijcie o mnie"
    ),
    Intent.LEAVE: split(
        "rezygnuję;chcę zrezygnować;wypisz mnie;wypisuję się;opuść program;nie piszcie do mnie więcej;"
        "rezygnacja;opuszczam program;żadnych więcej wiadomości"
    ),
    Intent.LANGUAGE: split(
        "english;deutsch;français;español;العربية;do you speak english;in english please;sprechen sie deutsch;"
        "hablas español;parlez vous français;po angielsku;po niemiecku;mówisz po polsku;"
        "język;język …;zmień język;zmień język …;zmiana języka;polski;po polsku;inny język;"
        "… zmienić język …;po polsku proszę"
    ),
    Intent.UNITS: split(
        "jednostki;jednostki …;jednostka;zmień jednostki;w kilogramach;w funtach;w calach;"
        "w centymetrach;kilogramy czy funty;zmiana jednostek;… jednostki …"
    ),
    Intent.ZONE: split(
        "strefa czasowa;strefa czasowa …;zmień strefę czasową;zła godzina;przeprowadziłem się;"
        "przeprowadziłam się;jestem w …;jestem teraz w …;jestem we …;mieszkam w …;lecę do …;"
        "jadę do …;… strefę czasową …;przeprowadziłem się do …;przeprowadziłam się do …;"
        "jestem obecnie w …;teraz jestem w …"
    ),
    Intent.SLOT: split(
        "termin;termin …;zmień godzinę …;zmień dzień …;inny dzień;inna godzina;zmień termin …;"
        "przesuń …;przełóż …;przypomnienie;zmień przypomnienie;kiedy pytasz;… zmienić godzinę …;"
        "… zmienić dzień …;… zmienić termin …;… inny dzień …;… inną godzinę …;zmiana terminu;"
        "zmiana godziny"
    ),
    Intent.CONTINUE: split(
        "dalej;kontynuuj;kontynuujmy;idziemy dalej;jedźmy dalej;lecimy dalej;dalej …;kontynuuj …;na czym skończyliśmy"
    ),
    Intent.REPEAT: split(
        "powtórz;powtórz …;jeszcze raz;znowu;słucham;co mówiłeś;jakie było pytanie;możesz powtórzyć;"
        "powtórz pytanie;co pytałeś;jeszcze raz proszę"
    ),
    Intent.NOT_SAY: split(
        "wolę nie mówić;nie chcę mówić;nie chcę podawać;to prywatne;prywatne;nie podam;"
        "wolę nie odpowiadać;nie powiem;bez odpowiedzi;nie wasza sprawa;wolę nie podawać"
    ),
    Intent.DONT_KNOW: split(
        "nie wiem …;nie mam pojęcia …;pojęcia nie mam …;zielonego pojęcia nie mam;nie mam zielonego pojęcia;"
        "nie jestem pewien …;nie jestem pewna …;skąd mam wiedzieć;a bo ja wiem;bo ja wiem;cholera wie;kto wie;"
        "ciężko powiedzieć;nie pamiętam …;nie pomnę;"
        "nie wiem;nie mam pojęcia;nie jestem pewien;nie jestem pewna;nie pamiętam;trudno powiedzieć;"
        "pojęcia nie mam;nie wiem tego;chyba nie wiem"
    ),
}


DESTROYS = Destroys(
    forget=(
        "usuń*|usun*|skasu*|wykasu*|kasuj*|wymaz*|zniszcz*|zapomn*|usuwa* & moje_dane|moich_danych|"
        "wszystkie_dane|wszystkich_danych|dane_osobowe|moje_konto|mojego_konta|mój_profil|całą_historię|"
        "moją_historię|mnie_z_systemu|mnie_z_bazy|moje_pomiary|wszystkie_moje|swoje_dane|swoich_danych|"
        "moja_historia|danych_o_mnie|dane_o_mnie|konto_i|moich_pomiarów",
        "usuń*|usun*|skasu*|wykasu*|wymaz*|wymaż*|zniszcz*|zapomn*|pozbądź* & wszystko|wszystkie|"
        "wszelkie|całość|całą & o_mnie|moje|mnie|mój|moja",
        "usuń*|usun*|skasu*|wykasu*|wymaz*|zlikwiduj* & mi_konto|konto_mi|to_konto|całe_konto|swoje_konto",
        "usun*_wszystko|skasu*_wszystko & proszę|na_zawsze|trwale|natychmiast",
        "prawa_do_bycia_zapomnianym|prawo_do_bycia_zapomnianym|rodo",
    ),
    leave=(
        "wypisuj*|wypisz*|rezygnuj*|zrezygn*|odchodz*|odejść|opuszcz*|występuj*|zakończ*|kończę|skreśl*|"
        "wycofuj*|wycofać & programu|program|udział|udziału|uczestnictwo|uczestnictwa|listy|badania",
        "!nie & chcę & programie|programu & uczestniczyć|być|brać_udziału|dalej|już|więcej",
        "rezygnuję|odchodzę|wypisuję_się|kończę_z_tym & na_stałe|na_zawsze|definitywnie|na_dobre|nie_wrócę",
    ),
    no="nie|nigdy|bez|żaden|żadne",
    if_=("jeśli|jeżeli|gdy|gdybym|kiedy|czy|co_się_stanie|prawie|mąż|żona|koleżanka|kolega|siostra|brat|zanim"),
    partly=(
        "ostatni*|dziś|dzisiaj|wczoraj|przypomnien*|wpis*|wiadomość|wiadomości|liczb*|apk*|aplikac*|"
        "wagę|talię|biodr*|zdjęc*|środę|poniedziałek|wtorek|czwartek|piątek|sobotę|niedzielę|przypadek|"
        "pomyłk*|miało_być"
    ),
)
