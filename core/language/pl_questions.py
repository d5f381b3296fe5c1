"""Polish: what clients ask in the middle of everyday life."""

from __future__ import annotations

from core.language.lexicon import Question

_COACH = "@|trener*|coach|opiekun*|instruktor*"

QUESTIONS: dict[Question, tuple[str, ...]] = {
    Question.MEDICAL: (
        "czy|moge|powinien*|powinn*|mam|co & tabletk*|lek|leki|lekow|lekarstw*|dawk*|insulin*|antybiotyk*|ibuprofen*|"
        "paracetamol*|pigulk*",
        "czy|moge|powinn* & cwiczyc|biegac|chodzic|plywac|trenowac|trening|test*|zrobic & przeziebion*|katar*|gryp*|"
        "goraczk*|chor*|bol|boli|kolan*|plec*|kontuzj*|ciaz*|operacj*|covid*",
        "czy_to_normalne|dlaczego|czemu & zmeczon*|zakwas*|boli|bola|skurcz*|pragnieni*",
        "bez_powodu|niechcacy|bez_przyczyny & schudl*|wag*",
    ),
    Question.FOOD: (
        "co|czy|moge|ile|powinn* & jesc|jem|jedzeni*|diet*|kalori*|bialk*|cukier|cukru|chleb*|czekolad*|alkohol*|win*|"
        "piw*|sniadani* & !przed|po|test*|wazyc|wazen*|powinno_byc",
    ),
    Question.FREE: ("czy|ile|to & darmo|darmow*|bezplatn*|kosztuje|placic|cen*",),
    Question.WHO_SEES: (
        "^kto & widzi|czyta|wie|zobaczy|przeczyta|dostep",
        f"^czy & {_COACH}|ktos|inni|grup*|szef*|rodzin*|ubezpiecz* & widzi|widza|czyta|czytaja",
        "czy & prywatn*|poufn*|tajn*",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & moze|moglby|moglaby|powiedz|przekaz|zapytaj|popros|daj_znac & !kto|widzi|czyta|zmienic|inn*|now*",
        f"{_COACH} & zadzwoni*|dzieki|dziekuje|podziekuj|oddzwoni*",
        "@ & porozmawiac|rozmawiac|pogadac|pomowic & chce|chcial*|moge|potrzebuje|musze|wolal*",
    ),
    Question.WHO: (
        "kim_jestes|kto_to|kto_tam|kto_pisze|czym_jestes|jest_tam_ktos|jak_masz_na_imie|z_kim_pisze|z_kim_rozmawiam",
        "jestes & robot*|bot*|maszyn*|czlowiek*|prawdziw*|lekarz*|program*|komputer*",
    ),
    Question.THERE: ("jestes_tam|jest_tam_ktos|jest_pan_tam|jest_pani_tam|halo_jestes|jestes_jeszcze",),
    Question.HOW_ARE_YOU: ("jak_sie_masz|co_u_ciebie|jak_leci|jak_tam_u_ciebie|co_slychac",),
    Question.PHOTO: ("moge|czy|wyslac & zdjeci*|foto*|film*|glosow*|obraz* & wyslac|przeslac|wrzucic|wysylac",),
    Question.HOW_LONG: ("ile|jak_dlugo & trwa|zajmuje|zajmie|potrwa|czasu & !program*|tygodni|jeszcze|kurs*",),
    Question.HOW_OFTEN: (
        "dlaczego|czemu & co|tylko|raz & tydzien|tygodni*|miesiac*|dni|dzien",
        "jak_czesto",
    ),
    Question.MUST: (
        "musze|trzeba|mam_obowiazek & wszystk*|odpowiadac|robic|zrobic|mierzyc|kazd*",
        "czy & obowiazkow*|dobrowoln*",
    ),
    Question.MISSED: (
        "co_jesli|co_sie_stanie|przepraszam|czy_to_zle|co_jak & zapomn*|opuszcz*|opuscil*|przegap*|"
        "pomin* & !tabletk*|lek*",
        "zapomnial* & tydzien|tygodni*|wczoraj|poniedzial*|ostatni*",
    ),
    Question.WEIGH: (
        "czy|moge|kiedy|powinn*|chce & wazyc|zwazyc|waze_sie|wage_wejsc|wazenie|na_wage & !dlaczego|czemu|ile|musze",
    ),
    Question.CHANGED: (
        "schudl*|przytyl*|zrzucil* & !chce|jak|do|teraz|siostr*|maz|zona",
        "stracil*|przybral*|spadl*|wzrosl*|zmniejszyl*|zmienil* & kilo*|kg|wag*|cm|centymetr*|tali*|pas|tetno|"
        "cisnieni* & "
        "!chce|jak|do|teraz",
    ),
    Question.SINCE: ("pokaz|zobaczyc|wykres*|obraz* & od|ostatni_miesiac|ostatnie_miesiace|poczatk*",),
    Question.FIRST: ("ile|jak*|co & poczatk*|zaczyn*|pierwsz*|start* & wazyl*|wag*|tali*|tetno|byl*|mial*",),
    Question.LAST: (
        "ile|jak*|co|kiedy & ostatni*|poprzedni* & !tydzien|tygodni*|miesiac*",
        "czy|masz & dostal*|zapisal*|doszl*|dotarl*|otrzymal*|zapisan*",
    ),
    Question.OVER: (
        "kiedy|czy|ile|jak_dlugo & koniec|konczy|skonczyl*|skonczon*|koncu|potrwa|trwa|zostalo & program*|to|tygodni|"
        "jeszcze|kurs*|juz|zostalo",
    ),
    Question.NEXT: (
        "co|kiedy & nastepn*|dalej|teraz_bedzie|potem",
        "o_co|kiedy & zapytasz|spytasz|napiszesz|odezwiesz",
    ),
    Question.NORMAL: (
        "jak*|ile|co & norm*|przecietn*|sredni*|ideal*|powinno_byc|powinien_byc|powinna_byc|typow*",
        "w_moim_wieku|na_moj_wiek & norm*|dobr*|ok|sredni*",
    ),
    Question.WHY_TEST: (
        "dlaczego|czemu|po_co|do_czego & test*|mierz*|tali*|bioder|biodra|wag*|waz*|tetno|tasm*|miar*|krzesl*|"
        "cisnieni*|"
        "liczb*|energi*|rownowag*|pyta*|to|sluzy & !nie|zmeczon*|boli|bola|chudne|wzrosl*|spadl*",
    ),
    Question.MEANING: (
        "co & znaczy|oznacza|oznaczaja",
        "nie_rozumiem|nie_lapie & liczb*|wynik*|przypad*|tego|wykres*",
    ),
    Question.DOING: (
        "jak_mi_idzie|czy_robie_postepy|robie_postepy|czy_jest_lepiej|czy_to_dziala|czy_zadzialalo|czy_to_cos_daje|"
        "poprawilo_mi_sie|czy_mi_sie_poprawi*|jak_sobie_radze|jak_wypadam|idzie_mi_dobrze",
    ),
    Question.GOOD: (
        "^czy|^to|czy_to|to_jest & dobrze|dobry|dobra|dobre|zle|zly|zla|normaln*|wysok*|nisk*|duzo|malo|lepiej|gorzej|"
        "lepsz*|gorsz*|ok|grozn* & !zeby|kiedy|jesli|gdy|pogod*|dzien|godzin*|pora|pomysl|sie|zrobi*|ze",
        "czy|powinn*|musze & martwic|niepokoic",
    ),
    Question.SWEARING: (
        "kurw*|cholera|cholern*|gowno|gowniany|idiot*|debil*|spierdalaj|odwal_sie|glupi*|zamknij_sie|wkurza*|"
        "beznadziejn* & !czuje|spal*|boli|bol|zyci*|cial*",
    ),
    Question.BYE: (
        "^dobranoc|^do_widzenia|^do_zobaczenia|^pa|^na_razie|^narazie|^trzymaj_sie|^do_jutra|^milego_dnia|"
        "^milego_wieczoru",
    ),
    Question.GLAD: ("^haha*|^hehe*|^hihi*|^super|^swietnie|^ekstra|^fajnie|^brawo|^smieszne & !ale|pogod*|dzien",),
}
