"""Polish: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.EXPORT: ("eksport*|csv|fhir|tabel*|pobierz|arkusz", "wszystkie & dane|pomiary|odczyty|liczby"),
    Request.PAGE: ("stron*|druk*|wydruk*|pdf|raport|kartka",),
    Request.PICTURE: ("wykres*|obraz*|rysunek|krzyw*",),
    Request.PLAN: ("plan|planu|program",),
    Request.NOTE: ("notatk*|notatek",),
    Request.HISTORY: ("histori*|przeszlosc|alarmy|wczesniej",),
    Request.CARD: ("pokaz*|otworz|zobacz*|karta|karte|jak_sie_ma|co_u|co_slychac_u|jak_idzie|znajdz|szukaj",),
    Request.WRITE: ("^napisz|^pisz|^powiedz|^zapytaj|^odpowiedz|^odpisz|^wyslij|^przekaz|^wiadomosc_do",),
    Request.THREAD: ("wiadomosci|rozmow*|czat|napisal*|pisal*", "co & mowi|powiedzial*"),
    Request.STAND_IN: (
        "zastepuje|zastepca|zastepstwo|zastepczyni|zastapi",
        "jestem|bede|wyjezdzam|mam & urlop*|nieobecn*|wakacj*|poza",
    ),
    Request.INVITE: ("zapros|zaproszenie|zaprosic|nowy|nowa|nowa_osoba|dodaj & klient*|osob*|kogos|link|zaproszenie",),
    Request.REPORT: ("raport|sprawozdanie & praktyk*|kwarta*|pracodawc*",),
    Request.NEEDS_ME: (
        "kto|ktos|czy_ktos & mnie_potrzebuje|potrzebuje_mnie|piln*|czeka|potrzebuje_pomocy|potrzebuje_kogos",
        "co_nowego|cos_nowego|jakies_nowosci",
    ),
    Request.CASELOAD: (
        "^moi_klienci|^moje_osoby|^wszyscy|^wszystkie_osoby|^moja_lista|^lista",
        "pokaz*|lista|zobacz* & klient*|osoby|wszystkich|wszystkie|liste",
    ),
    Request.WEEK: (
        "^ten_tydzien|^tydzien|^moj_tydzien|podsumowanie|przeglad",
        "jak_minal|pokaz* & tydzien|tygodnia|poniedzialek",
    ),
}
