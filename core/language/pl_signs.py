"""Polish: danger signs. Levels follow the three-way handling of function.md 9.1."""

from __future__ import annotations

from core.language.lexicon import Denials, Level, Sign

EMERGENCY, SAME_DAY, STOP_REST, TALK = Level.EMERGENCY, Level.SAME_DAY, Level.STOP_REST, Level.TALK

_HURTS = (
    "ból|bólu|bóle|bólem|bólów|boli|bolą|bolała|bolało|bolał|ucisk*|uciska|kłuje|kłucie|kłuło|"
    "kłucia|piecze|pieczenie|pieczenia|ściska|ścisk|ściskanie|gniecie|gniotło|rozpiera*|"
    "dyskomfort*|dławi|dławienie|ciężar|ciężko|pobolewa"
)
_BREATHLESS = (
    "duszność|duszności|dusznością|zadyszka|zadyszkę|zadyszki|bez_tchu|brak_tchu|brakuje_tchu|"
    "zdyszany|zdyszana|brakuje_mi_tchu"
)

_DIZZY = (
    "zawroty|zakręciło|zawrotów|zawrotami|zawrót|kręci_mi_się|kręci_się_w_głowie|kręciło_mi_się|"
    "mi_się_kręci|mi_się_w_głowie_kręci|w_głowie_się_kręci|kręci_się_mi|oszołomion*|mroczki|"
    "słabo_mi|mi_słabo|ciemno_przed_oczami|się_słabo|w_głowie_mi_się_kręci|w_głowie_kręci"
)
_SWOLLEN = "spuch*|opuch*|puchnie|puchną|obrzęk*|obrzmi*|nabrzmi*"

SIGNS = (
    Sign(
        "chest_pain",
        EMERGENCY,
        (
            "klatc*_piersiow*|klatk*_piersiow*|klatce|klatka|klatkę|klatki|mostek|mostkiem|mostka|piersi|"
            "pierś|piersiach",
            _HURTS,
        ),
    ),
    Sign("chest_pain", EMERGENCY, ("serce|serca|sercu", "ból|bólu|bóle|boli|kłuje|kłucie|kłuło|ściska|bolało")),
    Sign("chest_pain", EMERGENCY, ("zawał*|atak_serca|ataku_serca|dusznica|dusznicy|dławica|dławicę",)),
    Sign(
        "faint",
        EMERGENCY,
        (
            "zemdlał*|zemdle*|omdla*|omdle*|straciłem_przytomność|straciłam_przytomność|"
            "utrata_przytomności|utraty_przytomności|utratę_przytomności|nieprzytomn*|zasłabł*|"
            "zasłabnię*|mdleję|straciłem_świadomość|straciłam_świadomość",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            _BREATHLESS,
            "spoczynku|siedząc*|siedzę|leżąc*|leżę|w_łóżku|w_nocy|silna|silne|silną|"
            "bardzo|ciężk*|nic_nie_robiąc|siedzeniu|leżeniu",
        ),
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "nie_mogę_oddychać|nie_mogę_złapać_oddechu|nie_mogę_złapać_tchu|ledwo_oddycham|"
            "nie_mam_czym_oddychać|nie_mogłem_oddychać|nie_mogłam_oddychać|nie_oddycham|"
            "nie_mogę_nabrać_powietrza|nie_mogę_złapać_powietrza|nie_mogę_normalnie_oddychać|"
            "nie_mogę_swobodnie_oddychać|z_trudem_oddycham",
        ),
        own_no=True,
    ),
    Sign(
        "breathless_at_rest",
        EMERGENCY,
        (
            "duszę_się|dusi_mnie|brakuje_mi_powietrza|trudno_mi_oddychać|ciężko_mi_oddychać|"
            "ciężko_mi_się_oddycha|trudno_mi_się_oddycha|trudności_z_oddychaniem|"
            "problemy_z_oddychaniem|kłopoty_z_oddychaniem|trudności_w_oddychaniu|brakuje_powietrza|"
            "problem_z_oddychaniem|ciężko_oddycham",
        ),
    ),
    Sign("stroke_signs", EMERGENCY, ("udar|udaru|udarem|wylew|wylewu|wylewem",)),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "twarz|twarzy|usta|ust|kącik*|policz*|powiek*",
            "opad*|wykrzywi*|drętw*|zdrętwi*|krzyw*|sparaliżow*|bezwład*|odrętwi*",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "mowa|mowy|mówić|mówienie|mówieniem|mówię|słowa|słów|wymowa",
            "bełkot*|niewyraźn*|trudno*|problem*|kłopot*|plącz*|zaburz*|sepleni*",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "nie_mogę_mówić|nie_mogę_ruszyć_ręką|nie_mogę_podnieść_ręki|nie_mogę_ruszyć_nogą|"
            "nie_czuję_ręki|nie_czuję_nogi|nie_widzę_na_jedno_oko|nie_mogę_poruszyć|nie_mogę_wymówić|"
            "nie_mogę_unieść_ręki|nie_czuję_twarzy|nie_mogę_poruszać",
        ),
        own_no=True,
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "ręka|ręki|rękę|ręce|noga|nogi|nogę|nodze|strona|strony|stronie|dłoń|dłoni|stopa|stopy",
            "drętw*|zdrętwi*|sparaliżow*|paraliż*|bezwład*|niedowład*|odrętwi*",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "słabość|słaba|słaby|osłabienie|osłabiona|osłabiony",
            "jedna_strona|jednej_strony|lewa|lewej|prawa|prawej|nagle|nagłe|nagła|nagły",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        (
            "podwójne_widzenie|widzę_podwójnie|nagle_nie_widzę|utrata_wzroku|straciłem_wzrok|straciłam_wzrok|"
            "nagłe_zaburzenia_widzenia|nagle_splątany|nagle_splątana|nagłe_splątanie",
        ),
    ),
    Sign(
        "stroke_signs",
        EMERGENCY,
        ("ból_głowy|bólu_głowy|bóle_głowy|głowa|głowy", "nagle|nagły|nagłe|nagła|najgorsz*|najsilniejsz*"),
    ),
    Sign(
        "leg_swelling",
        SAME_DAY,
        ("noga|nogę|nodze|łydka|łydkę|łydce|łydki|kostka|kostkę|kostce|stopa|stopę|udo|uda", _SWOLLEN),
    ),
    Sign("leg_swelling", SAME_DAY, ("zakrzep*",)),
    Sign("swollen_legs", SAME_DAY, ("nogi|nogach|kostki|kostkach|stopy|stopach|łydkach", _SWOLLEN)),
    Sign("palpitations", SAME_DAY, ("kołatani*|palpitacj*|arytmi*|kołatań",)),
    Sign(
        "palpitations",
        SAME_DAY,
        (
            "serce|serca|puls|tętno",
            "wali|waliło|kołacze|łomocze|nierówn*|nieregularn*|za_szybko|bardzo_szybko|"
            "przeskakuje|trzepocze|galopuje|szaleje|bije_szybko|bije_mocno|bije_jak_szalone|pędzi",
        ),
    ),
    Sign(
        "breathless_on_usual_tasks",
        SAME_DAY,
        (
            _BREATHLESS + "|tchu|sapię",
            "schod*|ubieran*|niż_zwykle|niż_wcześniej|niż_kiedyś|zwykle|prysznic*|gotowan*|sprzątan*|"
            "ostatnio|ciągle|coraz|szybciej|łatwo|codzien*|często|najmniejsz*|rozmow*|od_kilku|"
            "od_wczoraj|od_tygodnia|zawsze|byle|od_paru",
        ),
    ),
    Sign(
        "dizzy",
        SAME_DAY,
        (
            _DIZZY,
            "znowu|znów|ciągle|często|wciąż|każd*|od|stale|codziennie|kilka|ponownie|ostatnio|nadal|wczoraj|"
            "razy|cały_czas|nawracaj*",
        ),
    ),
    Sign("dizzy", STOP_REST, (_DIZZY,)),
    Sign("breathless", STOP_REST, (_BREATHLESS,)),
    Sign(
        "cold_sweat",
        STOP_REST,
        ("zimny_pot|zimne_poty|zimnym_potem|zimnego_potu|zlany_potem|zlana_potem|zimnych_potów",),
    ),
    Sign(
        "nausea", STOP_REST, ("mdłości|nudności|wymiot*|zwymiotow*|mi_niedobrze|niedobrze_mi|mdli|rzygał*|nudnościami",)
    ),
    Sign(
        "arm_jaw_neck_pain",
        STOP_REST,
        (
            "szczęk*|żuchw*|lewa_ręka|lewej_ręki|lewe_ramię|lewej_ręce|lewym_ramieniu|lewym_barku|"
            "łopatk*|kark|karku|karkiem|szyja|szyi|szyję|szyją",
            "ból|bólu|bóle|boli|bolą|ucisk*|ściska|promieniuje|bolała",
        ),
    ),
    Sign(
        "new_joint_pain",
        STOP_REST,
        (
            "kolan*|biodr*|kostk*|kostce|plec*|bark|barku|staw*|mięś*|łydk*|łydce|nadgarst*|pachwin*|łokie*|łokci*|udo",
            "ostry|nagły|nagle|skręc*|naciągn*|zerwa*|strzeli*|chrupn*|przeskocz*|nadwyręż*|zwichn*",
        ),
    ),
    Sign("new_joint_pain", STOP_REST, ("skręciłem|skręciłam|naderwa*|lumbago|naciągnąłem|naciągnęłam",)),
    Sign(
        "severe_headache",
        STOP_REST,
        (
            "silny_ból_głowy|okropny_ból_głowy|straszny_ból_głowy|potężny_ból_głowy|"
            "bardzo_boli_mnie_głowa|strasznie_boli_mnie_głowa|potworny_ból_głowy|mocny_ból_głowy|"
            "silnych_bólów_głowy|silne_bóle_głowy|okropnie_boli_mnie_głowa",
        ),
    ),
    Sign(
        "unusual_fatigue",
        STOP_REST,
        (
            "niezwykłe_zmęczenie|nietypowe_zmęczenie|nagłe_wyczerpanie|nagłe_zmęczenie|"
            "nagle_wyczerpany|nagle_wyczerpana",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "zabić_się|mam_dość_życia|dość_życia|zabiję_się|się_zabić|się_zabiję|samobój*|"
            "odebrać_sobie_życie|odbiorę_sobie_życie|skończyć_ze_sobą|chcę_umrzeć|chciałbym_umrzeć|"
            "chciałabym_umrzeć|wolałbym_nie_żyć|wolałabym_nie_żyć|okalecz*|zrobić_sobie_krzywdę|"
            "zrobię_sobie_krzywdę|tnę_się|przedawkow*|lepiej_beze_mnie|skończyć_z_życiem|zakończyć_życie|"
            "myśli_samobójcze|skończyć_z_sobą",
        ),
    ),
    Sign(
        "despair",
        EMERGENCY,
        (
            "nie_chcę_żyć|nie_chce_mi_się_żyć|nie_ma_sensu_żyć|nie_mam_po_co_żyć|nie_chcę_już_żyć|"
            "nie_chcę_się_obudzić|życie_nie_ma_sensu|nie_widzę_sensu_życia|nie_warto_żyć|"
            "nie_mam_siły_żyć|nie_mam_siły_dalej_żyć",
        ),
        own_no=True,
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "głodzę_się|głodzić_się|prowokuję_wymioty|wywołuję_wymioty|wymiotuję_po_jedzeniu|"
            "środki_przeczyszczające|przeczyszczając*|napady_obżarstwa|obżeram_się|objadam_się|anoreksj*|"
            "bulimi*|nienawidzę_swojego_ciała|boję_się_jeść|obsesj*|myślę_tylko_o_wadze|"
            "myślę_tylko_o_jedzeniu",
        ),
    ),
    Sign(
        "eating_worry",
        TALK,
        (
            "prawie_nic_nie_jem|nic_nie_jem|nie_jem_od_kilku_dni|nie_mogę_przestać_się_ważyć|"
            "nie_mogę_przestać_jeść|nie_pozwalam_sobie_jeść|od_kilku_dni_nic_nie_jadłem|"
            "od_kilku_dni_nic_nie_jadłam",
        ),
        own_no=True,
    ),
)

DENIALS = Denials(
    no="nie|bez|żadn*|nigdy|ani|brak|braku|nic",
    no_after="nie|brak|żadn*|nigdy|nic|ani|nie_ma|nie_mam",
    between=(
        "mam|miałem|miałam|mieć|jest|są|był|było|była|były|mnie|mi|się|w|we|z|ze|na|żadn*|już|dziś|"
        "dzisiaj|teraz|odczuwam|odczuwałem|odczuwałam|czuję|czułem|czułam|objaw*|oznak*|jakich*|ma|"
        "występuj*|nic|tego|tych|mojej|moim|moja|mój|ogóle|nowych|obecnie|aktualnie|lewej|prawej|"
        "żaden|miewam|doświadcz*|ten|ta|takich|moje|wystąpi*"
    ),
    and_="i|oraz|a|&",
    nor="ani|lub|albo|czy",
    but="ale|lecz|jednak|tylko|bo|ponieważ|gdyż|natomiast|chociaż|choć|więc|dlatego|za_to|za_to_teraz",
    past=(
        "zeszłym_roku|zeszłego_roku|rok_temu|lat_temu|lata_temu|miesięcy_temu|miesiące_temu|"
        "miesiąc_temu|w_przeszłości|kiedyś|dawniej|dzieciństwie|dawno|ubiegłym_roku|młodości|"
        "przed_operacją|zeszłego_lata|zeszłej_zimy|19##|20##"
    ),
    imagined=(
        "co_jeśli|co_gdyby|jeśli|jeżeli|gdy|gdyby|boję_się|obawiam|martwię|ryzyko|jakie_są|"
        "jakie_objawy|jak_rozpoznać|zapobiegać|zapobiec|uniknąć|co_to_jest|czytałem|czytałam|śniło|"
        "czy_to_normalne|w_razie|nie_sądzę|nie_wydaje|film|artykuł|mógłby|mogłoby|czy_może|czy_można|"
        "czym_jest|co_robić_przy"
    ),
    others=(
        "mama|mamy|mamę|matka|matki|matkę|tata|taty|tatę|ojciec|ojca|mąż|męża|żona|żony|żonę|syn|"
        "syna|córka|córki|córkę|przyjaciel*|przyjaciół*|kolega|koledze|koleżank*|sąsiad*|brat|brata|"
        "siostra|siostry|siostrę|babci*|dziad*|wuj*|cioci*|ciotk*|pies|kot|ktoś|ludzie|on|ona|teści*|"
        "kuzyn*|jego|jej|partner*"
    ),
    now="teraz|dziś|dzisiaj|znowu|znów|nadal|wciąż|od|też|również|w_tej_chwili|obecnie|właśnie",
    mine="ja|mnie|mi|mam|mój|moja|moje|moim|mojej|jestem|czuję|sobie",
    settled=(
        "przeszło|przeszedł|minęło|minął|minęła|minęły|ustąpił*|już_dobrze|już_lepiej|zniknął|"
        "zniknęło|uspokoiło|już_nie|ustał*|przeszły|przeszła|puściło"
    ),
    harmless=(
        "z_całego_serca|od_serca|na_sercu|umieram_z_głodu|umrzeć_ze_śmiechu|umieram_ze_śmiechu|"
        "wyciskanie_na_klatkę|ćwiczenia_na_klatkę|obwód_klatki|klatka_schodowa|klatce_schodowej|"
        "klatkę_schodową|klatki_schodowej|ciśnienie_krwi|serdeczn*|z_ręką_na_sercu|pierś_z_kurczaka|"
        "piersi_z_kurczaka|zakwasy|w_drugą_stronę|na_stronie|strona_internetowa|ciśnienie|"
        "ciężar_kamień|kamień_z_serca"
    ),
)
