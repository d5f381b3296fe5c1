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
        "odstawil*|skonczyly_mi|skonczyl_mi|skonczyly_sie|zapomnial*|nie_biore|nie_wzielam|nie_wzialem|"
        "przestalam_brac|przestalem_brac & tabletk*|lek|leki|lekow|lekarstw*|insulin*|inhalator*",
    ),
    Question.FOOD: (
        "co|czy|moge|ile|powinn* & jesc|jem|jedzeni*|diet*|kalori*|bialk*|cukier|cukru|chleb*|czekolad*|alkohol*|win*|"
        "piw*|sniadani* & !przed|po|test*|wazyc|wazen*|powinno_byc",
    ),
    Question.CAN_STOP: (
        "moge|mozna|moglbym|moglabym|a_jesli|co_jesli|co_jak|a_jak|czy_wolno|a_gdybym & przestac|zrezygnowac|"
        "zrezygnuje|przerwac|wycofac|wycofam|wypisac|odejsc|skonczyc|rozmysle|zmienie_zdanie|rozmyslic|"
        "odmienic & !tabletk*|lek*|insulin*|cwicz*|palic|pic|jesc|trenowac|trening|diet*|brac",
    ),
    Question.ABOUT: (
        "o_co_chodzi|o_co_w_tym_chodzi|o_co_tu_chodzi|o_co_tutaj_chodzi|na_czym_to_polega|co_to_za_program|"
        "co_to_wlasciwie|"
        "co_to_jest_samehour|co_ty_robisz|czym_sie_zajmujesz|co_to_w_ogole|co_to_za_cudo|do_czego_to_jest|"
        "co_mnie_czeka|na_co_sie_pisze|po_co_to_wszystko|jak_to_wyglada|jak_to_bedzie_wygladac|co_to_jest_za & "
        "!dzis|dzisiaj|jutro|liczb*|wynik*",
        "bedziesz|bedziecie|bedzie_pan|bedzie_pani|jak_czesto|jak_czesto_bedziesz|ile_razy & pisac|pisal|pisala|"
        "pytac|pytal|zawracac|wysylac|odzywac & codziennie|co_dzien|czesto|co_tydzien|ciagle|bez_przerwy|razy",
        "a_na_co_to|na_co_to|po_co_to|do_czego_to & !test*|badan*|liczb*|pomiar*|mierz*",
    ),
    Question.ILL: (
        "mam|zlapalam|zlapalem|zlapala|zlapalo|leze|jestem|dopadla|dopadlo|dopadl|rozlozyla|rozlozylo|"
        "zarazilam|zarazilem|z|chyba|przechodze|mialam|mialem & grypa|grype|grypy|covid|covida|covidem|korona|korone|"
        "koronawirus|koronawirusa|przeziebienie|przeziebiona|przeziebiony|zaziebiona|zaziebiony|katar|jelitowka|"
        "jelitowke|jelitowki|grypa_jelitowa|wirus|wirusa|infekcje|infekcja|goraczka|goraczke|goraczki|angina|angine|"
        "anginy|"
        "zapalenie_oskrzeli|zapalenie_zatok|zapalenie_gardla|migrene|migrena|polpasiec|polpasca|grypsko|zakatarzona|"
        "zakatarzony|rozlozona & !czy|moge|powinn*|maz|meza|zona|zone|syn|corka|mama|mame|tata|tate|wnuk*|siostra|"
        "siostre|brat|kolezanka|sasiad*|dzieci|nie|nigdy|bez|jesli|rok*|lat|miesiac*|szczep*|zaszczep*|boje|klatce",
        "^covid|^grypa|^przeziebienie|^goraczka & pozytywny|znowu|od|dni|w_lozku|znow",
        "pozytywny|dodatni & covid*|test & !maz|zona|syn|corka|czy",
    ),
    Question.RESCHEDULE: (
        "przypomin*|przypomn*|pytaj|pytac|pisz|pisac|zapytaj|odzywaj & zamiast|raczej|lepiej|od_teraz|od_tej_pory|"
        "zawsze|w_inny_dzien|o_innej|innego_dnia|wczesniej|na_przyszlosc & "
        "!@|trener*|maz|wag*|waz*|jesli|tali*|tetno|lekarz*|pozniej|jutro",
        "mozemy|moglibysmy|mozesz|moglbys|moge|mozna|chce|chcialbym|chcialabym|jak|da_sie|prosze & zmienic|"
        "przestawic|przeniesc|przesunac|zamienic|przelozyc|zmiane & dzien|dnia|godzine|godziny|pore|termin|"
        "przypomnienie|poniedzialek|wtorek|srode|czwartek|piatek|sobote|niedziele & "
        "!cel|@|trener*|pomiar*|jednost*|jezyk|wag*|liczb*|lekarz*",
        "zamiast|wole|wolalabym|wolalbym|lepiej|raczej & poniedzialek|poniedzialku|poniedzialki|wtorek|wtorku|wtorki|"
        "sroda|srode|srody|czwartek|czwartku|czwartki|piatek|piatku|piatki|sobota|sobote|soboty|niedziela|niedziele|"
        "wieczorem|rano|wieczory & "
        "moze|mozna|mozemy|moge|zamiast|pasuje|pasowalby|pasowalaby|wole|wolalabym|wolalbym & "
        "!@|trener*|lekarz*|cwicz*|waz*|czuje|spal*|zmierz*|dzis|dzisiaj|jutro",
        "przestaw|przestawcie|przenies|przeniescie|przepisz|zapisz|przesun & mnie|mi|to & poniedzialek|poniedzialki|"
        "wtorek|wtorki|srode|srody|czwartek|czwartki|piatek|piatki|sobote|soboty|niedziele|inny_dzien|"
        "inna_godzine & !@|lekarz*",
        "mozna|moze_byc|da_sie|moglabym|moglbym|moge & w_poniedzialki|w_poniedzialek|we_wtorki|we_wtorek|w_srody|"
        "w_srode|w_czwartki|w_czwartek|w_piatki|w_piatek|w_soboty|w_sobote|w_niedziele & !@|lekarz*|waz*|zajecia|"
        "nie_moge|przyjsc",
    ),
    Question.TAKE_OUT: (
        "usun|usunac|skasuj|skasowac|wykasuj|wykasowac|wykresl|wykreslic|wyrzuc|wyrzucic|anuluj|cofnij|"
        "wymaz|nie_licz & wartosc|liczbe|pomiar|wpis|wynik|wage|waga|talie|talia|pas|biodra|tetno|puls|cisnienie|"
        "energie|ostatni|ostatnia|ostatnie|ta_z_talia & "
        "!wszystko|wszystkie|konto|dane|mnie|kazd*|nie|cel|przypomn*|powiadom*",
    ),
    Question.NO_TOOL: (
        "nie_mam|nie_mamy|bez|zgubil*|zepsut*|zepsul*|popsut*|popsul*|nie_dziala|nie_moge_znalezc|nie_znalazl*|"
        "znalezc|brak|brakuje|pozyczyl*|zginela|zginal|zostawil*|rozladowan*|padla|padl|siadla|rozwalil* & "
        "miarki|miarka|miarke|centymetr|centymetra|metra|tasmy|wagi|waga|wage|cisnieniomierz|cisnieniomierza|"
        "mankiet|mankietu|stoper|stopera|krzesla|zegarka|aparat|aparatu & !moge_nosic|czy|oddech|daje_rady|"
        "dziala_mi|spadla|spada",
        "bateria|baterie|bateryjka|bateryjki & padla|padly|wyczerpana|wyczerpane|wyczerpaly|wyczerpala|siadla|siadly|"
        "rozladowana|rozladowaly|skonczyla|skonczyly & !telefon*|komork*|samochod*",
    ),
    Question.NOT_NOW: (
        "pozniej|potem|wieczorem|po_pracy|po_obiedzie|w_domu|jak_wroce|jak_bede_w_domu|kiedy_wroce|za_chwile|"
        "za_godzine|jutro|w_weekend|innym_razem & zrobie|zrobie_to|odpisze|odpowiem|wysle|napisze|zmierze|podam|"
        "dokoncze|dam_znac|bede_w_domu_to|wracam_do|odezwe|uzupelnie|wpisze|sprawdze & "
        "!@|zawsze|lekarz*|moge|czy|powinn*|waz*|cwicz*|trener*|od_teraz|codziennie",
        "nie_mam_czasu|nie_mam_teraz_czasu|nie_mam_kiedy|brak_czasu|spiesze_sie|spieszy_mi_sie|w_biegu|prowadze_auto|"
        "prowadze_samochod|jade_autem|jade_samochodem|na_spotkaniu|na_zebraniu|jestem_zajeta|jestem_zajety|"
        "w_autobusie|w_pociagu|w_tramwaju|w_pracy|na_zakupach|zly_moment|nie_teraz|teraz_nie_moge|nie_moge_teraz|"
        "nie_ma_mnie_w_domu|nie_jestem_w_domu & "
        "!tydzien|tygodniu|byl*|mial*|cwicz*|trening*|wtedy|duzo|stres*|zaslab*|bol*|upad*",
        "dzis_sie_nie|dzisiaj_sie_nie|jeszcze_sie_nie|jeszcze_nie & wazylam|wazylem|zwazylam|zwazylem|mierzylam|"
        "mierzylem|zmierzylam|zmierzylem & pozniej|potem|wieczorem|jutro|zaraz",
    ),
    Question.MAY_SEND: (
        "moge|mozna|mam|czy_chcesz|chcesz|moglabym|moglbym|czy_mam & wyslac|przeslac|podac|dac|wpisac|dopisac|"
        "podawac|wysylac|zapisac|napisac & cisnienie|tetno|puls|wage|talie|pas|biodra|kroki|pomiary|wyniki|liczby|"
        "cukier & !zdjeci*|foto*|obraz*|@|trener*|lekarz*|mi_wyslac|mi_podac|nie_moge|ciebie",
    ),
    Question.FREE: ("czy|ile|to & darmo|darmow*|bezplatn*|kosztuje|placic|cen*",),
    Question.WHO_SEES: (
        "^kto & widzi|czyta|wie|zobaczy|przeczyta|dostep",
        f"^czy & {_COACH}|ktos|inni|grup*|szef*|rodzin*|ubezpiecz* & widzi|widza|czyta|czytaja",
        "czy & prywatn*|poufn*|tajn*",
        "^kto|^a_kto & bedzie|moze|ma_wglad|bedzie_mial & widzial|widziala|czytal|czytala|widziec|czytac|zobaczyc|"
        "wglad",
        "^komu|^a_komu & wysylasz|wysylacie|pokazujesz|pokazujecie|dajesz|przekazujesz|udostepniasz|wysyla|"
        "pokazuje & !powiedziec",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & moze|moglby|moglaby|powiedz|przekaz|zapytaj|popros|daj_znac & !kto|widzi|czyta|zmienic|inn*|now*",
        f"{_COACH} & zadzwoni*|dzieki|dziekuje|podziekuj|oddzwoni*",
        "przekaz|powiedz|daj_znac|napisz & @|trener*|prowadzac* & ze|zeby|i & !kto",
        "@ & porozmawiac|rozmawiac|pogadac|pomowic & chce|chcial*|moge|potrzebuje|musze|wolal*",
    ),
    Question.WHO: (
        "kim_jestes|kto_to|kto_tam|kto_pisze|czym_jestes|jest_tam_ktos|jak_masz_na_imie|z_kim_pisze|z_kim_rozmawiam",
        "jestes & robot*|bot*|maszyn*|czlowiek*|prawdziw*|lekarz*|program*|komputer*",
        "kto_jestes|kim_ty_jestes|a_ty_kto|ty_kto_jestes|kim_pan_jest|kim_pani_jest|kto_ty_jestes",
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
    Question.WAIT: (
        "^czekaj|^poczekaj|^chwila|^chwileczke|^chwilke|^moment|^momencik|^sekunda|^sekundke|"
        "^zaraz_wracam|^juz_wracam & "
        "!tydzien|tygodnie|urlop*|miesiac*",
    ),
    Question.TIME_ME: (
        "^stoper|^minutnik|zmierz_czas|mierz_czas|wlacz_stoper|licz_czas|odmierz_czas & !tydzien|kiedy",
    ),
    Question.CHAT: (
        "dowcip|zart|kawal|piosenk*|wiersz*|bajk* & opowiedz|znasz|zaspiewaj|napisz|powiedz & !to_nie|byl",
        "ktora_godzina|jaki_dzis_dzien|jaki_mamy_dzien|jaka_pogoda|bedzie_padac|czy_juz_poniedzialek",
        "kocham_cie|wyjdz_za_mnie|ozen_sie|jestes_zabawny|jestes_zabawna|jestes_mily|jestes_kochany",
    ),
    Question.GRIEF: (
        "umarl|umarla|zmarl|zmarla|pogrzeb|stracilam|stracilem|odszedl|odeszla & "
        "mama|matka|mame|tata|ojciec|tate|maz|meza|zona|zone|syn|syna|corka|corke|brat|brata|siostra|siostre|"
        "babcia|dziadek|"
        "przyjaciel*|pies|psa|kot|kota|pogrzeb & !lat_temu|film",
        "zdechl|zdechla|zmarl|zmarla|umarl|umarla|pochowalam|pochowalem|pogrzeb|nie_zyje & pies|psa|piesek|kot|kotek|"
        "kotka|suczka|tesciowa|tesciu|tesc|sasiad|sasiadka|ciocia|wujek|kolezanka|kolega|maz|mama|tata|brat|"
        "siostra & !lat_temu|film|telefon",
    ),
    Question.GOAL: (
        "chce|chcialabym|chcialbym|moj_cel & schudnac|zrzucic|osiagnac|zejsc & kilo*|kg|cm|lata|swiat & !pomoc|nie",
        "zapomnij|usun|zmien|skasuj|pokaz & cel",
    ),
    Question.NO_WEIGHT: (
        "nie_chce|wole_nie|nie_bede|nienawidze & wazyc|sie_wazyc|wazenia|wagi & !dzis|dzisiaj|codziennie|teraz",
    ),
    Question.BODY: (
        "czy_jestem|jestem|czuje_sie|nienawidze|wstydze & "
        "gruby|gruba|za_gruby|za_gruba|otyly|otyla|brzydki|brzydka|za_ciezki|za_ciezka|swojego_ciala|mojego_ciala|"
        "swojego_brzucha|swojej_wagi & !zadowolon*",
    ),
    Question.SORRY: (
        "^przepraszam|^sorry|^sory|^wybacz|^prosze_wybaczyc & "
        "!zapomn*|spozn*|waga|pas|talia|tetno|bylo|nie|zle|moge|moglem|to",
    ),
    Question.GLAD: ("^haha*|^hehe*|^hihi*|^super|^swietnie|^ekstra|^fajnie|^brawo|^smieszne & !ale|pogod*|dzien",),
}
