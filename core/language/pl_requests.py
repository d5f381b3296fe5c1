"""Polish: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.CORRECT: (
        "literowka|pomylil*",
        "usun|skasuj|popraw|zmien & pomiar|wartosc|liczbe|odczyt|ostatni*|wpis",
    ),
    Request.ADD: ("dodaj|dolacz|dorzuc|mierz_tez",),
    Request.DROP: ("usun|wyrzuc|zabierz|^bez|nie_mierz|nie_pytaj|skresl|wykresl|zdejmij",),
    Request.PRIVATE: (
        "nie_powin*|nie_moze|niech_nie & widziec|widzi",
        "ukryj|schowaj|nie_pokazuj|nie_widzial*",
    ),
    Request.DAY: (
        "zmien|przenies|przesun|przeloz|ustaw|inny & dzien|termin|godzine|godzina|poniedzial*|wtor*|srod*|czwart*|"
        "piat*|sobot*|niedziel*",
        "woli|moze|chce & poniedzial*|wtor*|srod*|czwart*|piat*|sobot*|niedziel*",
    ),
    Request.PAUSE: ("pauza|przerwa|przerwe|wstrzymaj|jest_na_urlopie|wyjechal*|w_szpitalu|zawies",),
    Request.HAND_OVER: ("przekaz_do|oddaj|przejmie|przejmuje|przekazac",),
    Request.BASELINE: ("nowy_start|nowy_punkt|punkt_wyjscia|od_nowa|od_zera",),
    Request.RENAME: ("zmien_nazwe|przemianuj|przezwisko",),
    Request.END: (
        "usun|skasuj|zakoncz|skoncz|przerwij|wypisz|rezygnuje|zrezygnowal*|odchodzi",
        "zmarl|zmarla|nie_zyje",
    ),
    Request.DONE: (
        "dzwonilem|dzwonilam|zadzwonilem|zadzwonilam|rozmawialem|rozmawialam|zalatwione|zalatwion*|gotowe_z|"
        "odwiedzil*|omowione",
        "zamknij|odhacz & alarm*|alert*|zgloszeni*",
    ),
    Request.EXPORT: (
        "eksport*|csv|fhir|tabel*|pobierz|arkusz",
        "wszystkie & dane|pomiary|odczyty|liczby",
    ),
    Request.PAGE: ("stron*|druk*|wydruk*|pdf|raport|kartka",),
    Request.PICTURE: ("wykres*|obraz*|rysunek|krzyw*",),
    Request.PLAN: (
        "plan|planu|program",
        "codziennie|co_dzien|czesciej & wazyc|wazy|wazenie",
    ),
    Request.NOTE: (
        "notatk*|notatek",
        "^notatka|^notatke|^notatki|^zanotuj|^zapisz|^dodaj_notatke|^uwaga",
    ),
    Request.HISTORY: ("histori*|przeszlosc|alarmy|wczesniej",),
    Request.CARD: ("pokaz*|otworz|zobacz*|karta|karte|jak_sie_ma|co_u|co_slychac_u|jak_idzie|znajdz|szukaj",),
    Request.WRITE: (
        "^napisz|^pisz|^powiedz|^zapytaj|^odpowiedz|^odpisz|^wyslij|^przekaz|^wiadomosc_do",
        "^przypomnij|^mozesz_powiedziec|^mozesz_przypomniec|^prosze_powiedz|^daj_znac|^spytaj|^poinformuj|^popros",
    ),
    Request.THREAD: (
        "wiadomosci|rozmow*|czat|napisal*|pisal*",
        "co & mowi|powiedzial*",
    ),
    Request.LAST: ("ile|ostatni*|aktualn*|jakie_jest|jakie_ma|jaka_ma|jaki_ma|najnowsz*",),
    Request.ABOUT: (
        "^dlaczego|^czemu|^czy|^kiedy|^co|^jak|^gdzie|^ile|^jaki|^jaka|^jakie|dobre_dla|oznaczon* & !ty|twoj*",
    ),
    Request.DONE_THEM: (
        "dzwonilem|dzwonilam|zadzwonilem|zadzwonilam|rozmawialem|rozmawialam|zalatwione|gotowe|odwiedzilem|"
        "odwiedzilam & niej|nim|nia|nimi|niego|ja|go|z_nia",
    ),
    Request.DIGEST_DAY: (
        "podsumowanie|przeglad & poniedzial*|wtor*|srod*|czwart*|piat*|sobot*|niedziel*|co_tydzien|pozniej|"
        "wczesniej|inny_dzien",
    ),
    Request.QUIET: (
        "wycisz|cisza|za_duzo_wiadomosci|mniej_wiadomosci|nie_przeszkadzac|powiadomienia|nie_w_nocy",
        "bez|nie_chce|wylacz|przestan & podsumowan*|wiadomosci|powiadomien",
    ),
    Request.STAND_IN: (
        "zastepuje|zastepca|zastepstwo|zastepczyni|zastapi",
        "jestem|bede|wyjezdzam|mam & urlop*|nieobecn*|wakacj*|poza",
        "jestem|bede|mam & chor*|wolne|na_zwolnieniu",
        "zastapi_mnie|mnie_zastapi|przejmie_moich",
        "^urlop|^nieobecny|^nieobecna",
    ),
    Request.INVITE: (
        "zapros|zaproszenie|zaprosic|nowy|nowa|nowa_osoba|dodaj & klient*|osob*|kogos|link|zaproszenie",
        "nie_dostal*|zgubil*|jeszcze_raz|ponownie|wygasl*|nie_dziala & link|linku|linka|zaproszeni*",
    ),
    Request.REPORT: ("raport|sprawozdanie & praktyk*|kwarta*|pracodawc*",),
    Request.NEEDS_ME: (
        "kto|ktos|czy_ktos & mnie_potrzebuje|potrzebuje_mnie|piln*|czeka|potrzebuje_pomocy|potrzebuje_kogos",
        "co_nowego|cos_nowego|jakies_nowosci",
        "do_kogo|kogo|kto & zadzwonic|oznaczon*|zle|martwi",
        "czy_to & prawda|prawdziwe|powazne|pilne|grozne|przypadek",
        "alarm|alarmy|zgloszenie & co|dlaczego|znaczy|ile",
    ),
    Request.CASELOAD: (
        "^moi_klienci|^moje_osoby|^wszyscy|^wszystkie_osoby|^moja_lista|^lista",
        "pokaz*|lista|zobacz* & klient*|osoby|wszystkich|wszystkie|liste",
        "ilu|ile & klientow|osob|ludzi",
    ),
    Request.WEEK: (
        "^ten_tydzien|^tydzien|^moj_tydzien|podsumowanie|przeglad",
        "jak_minal|pokaz* & tydzien|tygodnia|poniedzialek",
        "kto|ilu|ile_osob|wszyscy|ktos & odpowiedzial*|odpowiedzieli|zglosil*|wypelnil*|brakuje|odpisal*",
    ),
}

# What joins words to whom they are for: "tell Ada that ...".
JOINTS = frozenset({"ze", "zeby", "aby", "by"})
