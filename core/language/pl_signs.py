"""Polish: the concepts of danger signs, and the answers to "Is it happening now?"."""

from __future__ import annotations

from core.language.concepts import Answer
from core.language.concepts import Concept as C

CONCEPTS: dict[C, str] = {
    # parts of the body
    C.CHEST: (
        "klatc* piersiow*, klatk* piersiow*, klatce, klatka, klatkę, klatki, klatką, mostek, mostkiem, mostka, "
        "mostku, piersi, pierś, piersiach, piersią, klata, klacie, klatę, klaty, żebra, żebrami, w dołku, dołek, "
        "pod mostkiem, w piersi, za mostkiem"
    ),
    C.HEART: (
        "serce, serca, sercu, sercem, puls*, tętno, tętna, serducho, serduszko, bicie, serduch*, rytm, pikawa, puls"
    ),
    C.ARM_OR_JAW: (
        "szczęk*, żuchw*, lewa ręka, lewej ręki, lewej ręce, lewą rękę, lewe ramię, lewym ramieniu, "
        "lewego ramienia, lewym barku, łopatk*, kark*, szyja, szyi, szyję, szyją, barku, "
        "między łopatkami, ręki, ręka, ręce"
    ),
    C.FACE: (
        "twarz*, usta, ust, ustach, kącik*, policz*, powiek*, buzia, buzi, buzię, gęba, gęby, wargi, warga, "
        "uśmiech, usmiech, kącik ust, twarz, policzek"
    ),
    C.LIPS_OR_TONGUE: "usta, ust, warg*, język*, powiek*, oczy, twarz*, buzia, buzi, gęba, policz*",
    C.THROAT: "gardł*, krtań, krtani, tchawic*, przełyk*, szyja, gardzie*",
    C.LIMB: (
        "ręka, ręki, rękę, ręce, ręką, noga, nogi, nogę, nodze, nogą, strona, strony, stronie, dłoń, dłoni, "
        "stopa, stopy, ramię, ramienia, palce, palcami, bok, połowa ciała, pół ciała, połowę ciała, "
        "kończyn*, łapa, łapy, pol ciala"
    ),
    C.LEG: (
        "noga, nogę, nodze, nogi, łydk*, kostka, kostkę, kostce, stopa, stopę, udo, uda, udzie, goleń, "
        "goleni, podudzi*, nóżka"
    ),
    C.LEGS: ("nogi, nogach, nóg, kostki, kostkach, stopy, stopach, łydkach, obie nogi, obu nóg, nogami"),
    C.EYE: "oko, oku, oka, oczy, oczach, okiem, oczami",
    C.JOINT: (
        "kolan*, biodr*, kostk*, plec*, bark*, staw*, mięś*, łydk*, pachwin*, nadgarst*, łoki*, łokc*, "
        "udo, uda, udzie, ścięgn*, krzyż*, achilles*, kręgosłup*, dwugłow*, krzyżu, dół pleców"
    ),
    # heart
    C.CHEST_PAIN: (
        "dusznica, dusznicy, dławica, dławicę, dławicy, ból wieńcowy, słoń na klatce, słoń na piersi, "
        "kamień na piersi, na klatce siedział, na klatce siedzi, jakby mi ktoś na klatce, ściska w klatce, "
        "ściska mnie w piersiach, imadło w klatce, imadlo w klatce, imadło na klatce, kłuje w sercu, "
        "kłuje mnie w sercu, pali za mostkiem, piecze za mostkiem, rozrywa klatkę, gniecie w klatce, "
        "gniecie w mostku, koń kopnął, kon kopnal, ciężar na klatce, ciężar na piersi, ciezar na srodku piersi, "
        "ścisnęło mnie w klatce, scisnelo mnie w klatce, ścisnęło w klatce, scisnelo w klatce"
    ),
    C.HEART_ATTACK: ("zawał*, atak serca, ataku serca, atakiem serca, zatrzymanie krążenia, zatrzymania akcji serca"),
    C.HURT: (
        "ból, bólu, bóle, bólem, bólów, bolu, boli, bolą, bolała, bolało, bolał, boleć, bolesn*, kłuj*, "
        "kłuc*, kłuł*, kłuje, kole, piecze, piec, pieczen*, pali, palen*, pobolewa*, rwie, rwąc*, "
        "szarpie, świdruje, przeszywa*, łupie, promieniuj*, dokucza, nawala, napieprza, napierdala, "
        "ciągnie, szczypie, rozpiera*, dyskomfort*, skurcz*, nie daje żyć, ćmi, pulsuj*, strzyka, "
        "strzyknęło, skręca, obolał*, dorwał mnie, kłujący, wierci, zabol*, nakurwia"
    ),
    C.PRESS: (
        "ucisk*, uciska, ściska*, ścisk*, ściśnię*, gniecie, gniotł*, gniec*, dławi*, dławien*, ciężar*, ciężko, "
        "ciśnie, napór, naciska*, obręcz*, obręczą, imadł*, kamień, słoń, przygniat*, rozpier*, zaciska*, duszen*, "
        "dusi, opasuj*, ciąży, cegła, głaz, ktoś usiadł, ktoś siedzi, mi ktoś usiadł, ciasno, sztywn*, zatyka, "
        "zatkał*, dziwn*, ściska, imadłem, jak imadłem, imadło, dusi mnie, rozpiera, przygniata"
    ),
    C.SPREADS: (
        "promieniuje, promieniuj*, przechodzi na, przechodzi do, idzie do ręki, ciągnie do, schodzi do, "
        "rozchodzi się, do lewej ręki, do szczęki, do ramienia"
    ),
    C.CLUTCH: (
        "trzyma się za, trzyma sie za, łapie się za, złapał się za, złapała się za, chwycił się za, "
        "chwyciła się za, trzymając się"
    ),
    C.RACING: (
        "wali, waliło, walić, kołac*, kołat*, łomoc*, łomot*, nierówn*, nieregularn*, za szybko, "
        "bardzo szybko, tak szybko, szybko, przeskakuj*, trzepoc*, trzepot*, galopuj*, szalej*, bije szybko, "
        "bije mocno, bije jak szalone, jak szalone, jak oszalałe, jak młot, jak dzwon, pędz*, gna, skacz*, "
        "potyka się, przyspiesz*, przyspieszone, wariuj*, zwariował*, opuszcza uderzenia, uderzenia gubi, "
        "gubi rytm, gubi, wypada, dudni, tłucz*, wyskoczy, wyskakuje, mocno bije, raz szybko raz wolno, "
        "zamiera, rozszalał*, fika, podskakuje, tętni, drga, rozbiegan*, z piersi, stuka, opuszcza, "
        "opuszcza uderzenie, opuszcza bicie, staje na chwilę, staje i, zatrzymuje się, przestaje i rusza, "
        "robi fikołki, fikołki, koziołk*, koziołkuje, podskoki, susy, telepie, trzęsie, trzęsie się, dziko, "
        "wierzga, lata, lata jak, mi lata, drży, jak szalony, jak karabin, jak u królika, ucieka, gardle, "
        "w gardle, wybija się, gubi takt, niemiarowo, nierytmiczn*, krzywo, dziwnie, za wolno i, piersi, "
        "stuk*, terkoc*, trajkocz*, kica, dziwn*, łomocze, oszalał*, jak oszalal*, kołacze, galopuje, "
        "trzepocze, wariuje, nie zwalnia"
    ),
    C.PALPITATIONS: (
        "kołatani*, kołatań, palpitacj*, arytmi*, migotani*, częstoskurcz*, tachykardi*, "
        "skurcze dodatkowe, trzepotanie serca, niemiarow*, dodatkowe skurcze, kołatan*, kołaczące, "
        "nierówne bicie, nieregularne bicie"
    ),
    C.COLD_SWEAT: (
        "zimny pot, zimne poty, zimnym potem, zimnego potu, zlany potem, zlana potem, zimnych potów, "
        "zlewa mnie pot, oblewa mnie pot, oblał mnie pot, pot się leje, oblewają mnie poty, "
        "spocony na zimno"
    ),
    # brain
    C.STROKE: "udar*, wylew*, niedokrwienie mózgu, krwotok do mózgu, apopleks*, paraliż połowiczy",
    C.DROOP: (
        "opad*, wykrzywi*, krzyw*, wykrzyw*, zwis*, obwis*, opuszczon*, poszł* na bok, ucieka na bok, "
        "przekrzywi*, ściągnię*, nie rusza się, zjechał*, zapadn*, asymetri*, krzywo, zjechała, zjechał, "
        "wisi, asymetryczn*, przekrzywion*, skrzywion*, uśmiech krzywy, nie uśmiecha się, opuszcz*, "
        "ściągnęł*, ściągn*, poszła na, wykręc*, wykręcił*, opadł, opadło, krzywy, krzywa, skrzywi*, zwisa"
    ),
    C.NUMB: (
        "drętw*, zdrętwi*, sparaliżow*, paraliż*, bezwład*, niedowład*, odrętwi*, nie czuję, nie czuje, mrowi*, "
        "mrówki, ścierp*, cierpn*, zcierp*, bez czucia, straciłem czucie, straciłam czucie, brak czucia, "
        "znieczulon*, martw*, zamarł*, zdrętwiał*, zdretwial*, drętwieje, mrowi, zdretwiala, zdrętwiała, zdrętwiał"
    ),
    C.LIMP: (
        "bezwładn*, bez siły, nie ma siły, nie mam siły w, wisi*, wiotk*, odmówił* posłuszeństwa, odmowil* "
        "posluszenstwa, nie słucha, nie słuchają, nie moja, jak nie moja, jak kłoda, jak kloc, jak z waty, z waty, z "
        "ołowiu, jak ołów, odpadł*, nie działa, nie chce działać, nie reaguje, opad*, wypada mi wszystko, wszystko mi "
        "leci, leci mi z rąk, wszystko wypada, wypuszczam, nie trzyma, nie utrzymuje, ugina*, ugięł*, nie mogę "
        "utrzymać, straciła siłę, stracił siłę, osłab*, bezwolna, nie podnosi się, nie unosi, nie ruszam, nie rusza "
        "się, nie porusza się, ciągnę, powłóczę, powłóczy, upuszczam, upuściłem, upuściłam, wypadł mi, wypadł*, leci "
        "z rąk, leci z ręki, wypada z ręki, jak z gumy, z galarety, jak z galarety, jak obca, obca, jak drewno, "
        "drewnian*, nie swoja, ciężka jak, nie podniosę, nie uniosę, nie zaciska, opadł*, opadn*, zwiotcz*, bezsiln*, "
        "zero siły, leci z reki, nie sluchaja, jak martwa, nie utrzymał*, nie utrzymal*, bezwładna, wisi, bez władzy, "
        "ugina się, nie robi tego co, nie robi co, nie mogę podnieść, robi co chce, robi co chc*, wypada mi z ręki, "
        "wypada z reki, nie słucha mnie, nie slucha mnie, leci mi z ręki, wypada mi z reki, wszystko mi leci z, "
        "ciągnę ją za sobą, ciagne ja za soba, ciągnę nogę, ciągnę za sobą, powłóczę nogą, straciłem władzę, "
        "straciłam władzę, stracił władzę, straciła władzę, tracę władzę, traci władzę, nie mam władzy, bez władzy w"
    ),
    C.WEAK: "słabość, słaba, słaby, osłabien*, osłabion*, bez siły, słabsz*, osłabł*",
    C.ONE_SIDE: (
        "jedna strona, jednej strony, jednej stronie, lewa, lewej, prawa, prawej, lewą, prawą, lewo, "
        "lewostronn*, prawostronn*, połowa, połowie, jednostronn*, po jednej"
    ),
    C.CANNOT: (
        "nie mogę, nie moge, nie może, nie moze, nie mogłem, nie mogłam, nie mógł, nie mogła, "
        "nie potrafię, nie potrafi, nie umiem, nie jestem w stanie, nie daję rady, nie da się, "
        "nie da sie, nie idzie, ledwo, ledwie, trudno, ciężko, trudnoś*, problem*, kłopot*, przestał*, "
        "z trudem, nijak nie, nie udaje mi się, nie chce się, nie mogę już, nie chcą, nie zdołam, "
        "nie zdoła, nie mogły, nie umie, ledwo mogę"
    ),
    C.MOVE: (
        "rusz*, porusz*, podnie*, unie*, podnos*, unos*, chwyc*, utrzym*, trzymać, zgi*, czuję, czuje, "
        "ścisn*, władn*, kontrol*, poczuć"
    ),
    C.SPEAK: (
        "mówić, mówię, mowic, powiedzieć, wymówić, wypowiedzieć, wysłowić, słowa, słów, sklecić, gadać, "
        "wydusić, wykrztusić, znaleźć słów, artykułować, mówi, złożyć zdania"
    ),
    C.SPEECH: ("mow*, mówić, mówienie, mówieniem, mówię, mówi, słowa, słów, wymow*, język*, słowami, gadam, gada"),
    C.GARBLED: (
        "bełkot*, bełkocz*, niewyraźn*, trudno*, problem*, kłopot*, plącz*, splątan*, zaburz*, sepleni*, "
        "od rzeczy, bez sensu, dziwn*, niezrozumial*, niezrozum*, miesz*, pomiesz*, jak pijan*, kołek, "
        "kołkiem, sztywn*, nie tak, uciek*, brakuje, gubię, nieskładn*, głupoty, bzdury, "
        "nikt mnie nie rozumie, nie do zrozumienia, przekręc*, nie wychodzą, zacina*, zacin*, bredz*, "
        "jak po alkoholu, jak pijany, jak pijana, nie wychodzi, nie mogę wymówić, gubi, urywa*, nie moje, "
        "miękko, język jak, drewnian*, grub*, poprzekręc*, na opak, nie klei się, nie kleją się, "
        "nie rozumie, mylę, mylą, mylą mi się, się mylą, szyku, niezbornie, niezborn*, bełkot, belkot, "
        "wychodzi bełkot, plącze się, bez sensu wychodzi"
    ),
    C.SLURRED: (
        "bełkot*, bełkocz*, plącze mi się język, język mi się plącze, język się plącze, gadam od rzeczy, "
        "mówi od rzeczy, język mi kołkiem, afazj*, bredzi, seplenię nagle, mówi niewyraźnie, niewyraźnie mówi, "
        "mówię niewyraźnie, język jak kołek, słowa mi się mylą, mylą mi się słowa, nie mogę dobrać słów, "
        "gubię słowa, brakuje mi słów nagle, nie umiem się wysłowić, nie mogę się wysłowić, mówię od rzeczy, "
        "plecie bzdury, plecie od rzeczy, gada bez sensu, mowa niewyraźna, sepleni, belkocz*, bełkot, "
        "wychodzi belkot, mamrocze, mówię jak pijany, mówi jak pijany, sepleni nagle, słowa się plączą, "
        "dziwnie mówię, dziwnie mówi, mówi bez sensu, słowa mi się plączą, nie mogę złożyć zdania, kluski w gębie, "
        "kluski w gebie, kluchy w gębie, gadam jakbym, mówię jakbym, bełkoczę, belkocze, wychodzi co innego, "
        "wychodzi coś innego, wychodzi cos innego, mówię co innego niż, mowie co innego niz"
    ),
    C.SEE: "widzieć, widzę, widze, widzi, widział*, wzrok*, patrz*, widzenie",
    C.SIGHT_LOST: (
        "podwójne widzenie, podwójnie widzę, widzę podwójnie, widzę dwa razy, dwoi mi się, "
        "dwoi się w oczach, troi, nagle nie widzę, nie widzę na jedno, nie widzę na lewe, "
        "nie widzę na prawe, utrata wzroku, utratę wzroku, straciłem wzrok, straciłam wzrok, stracił wzrok, "
        "straciła wzrok, oślepł*, ślepn*, zaniewidzi*, zaburzenia widzenia, kurtyna na oku, zasłona na oku, "
        "zasłona przed okiem, czarno w oku, ciemno w oku, ciemność w oku, ciemność w jednym, czarna plama, "
        "pół obrazu, połowę obrazu, zamazany obraz nagle, wszystko zamazane, rozmazany obraz, mgła na oku, "
        "podwójny obraz, pociemniało w oku, obraz podwójny, nie widzę połowy, widzę tylko połowę, "
        "połowa obrazu, pół pola widzenia, ubytek w polu, oko przestało widzieć, przestałem widzieć, "
        "przestałam widzieć, ślepota, ślepy na jedno, ślepa na jedno, oślepłem, oślepłam, firanka w oku, "
        "kotara, cień na oku, zamglone widzenie nagle, widzę jak przez mgłę, dwa obrazy, podwójnie, "
        "zniknął mi obraz, zniknęło mi widzenie, wszystko podwójnie, wzrok mi uciekł, mroczek w oku, "
        "widze podwojnie, cień zachodzi, cien zachodzi, czarnych płatków, czarne płatki, błyski a, błyski i, "
        "błyski w oku, zasłona w oku, kurtyna, nie widze na jedno, oko mi oślepło, widzę połowę, "
        "widzę niewyraźnie, widze niewyraznie, czarne plamy, czarne mroczki w oku, błyska mi w oku, "
        "nic nie widzę na, widzę tylko pół, zaniewidział*"
    ),
    C.CONFUSED: (
        "splątan*, splątał*, zdezorient*, skołowan*, zagubion*, zamroczon*, mąci mi się, pogubił*, "
        "nie kontaktuj*, nie kojarz*, otumanion*, oszołomion*, ogłupiał*, miesza mi się, mętlik, zamęt, "
        "pomieszało, nie wiem co się dzieje, nie poznaję, niczego nie kojarzę, gubię się, "
        "mieszam wszystko, nie rozumiem co, zakręcon* nagle, mówi bez sensu, nieobecn*, otępiał*"
    ),
    C.LOST_BEARINGS: (
        "nie wiem gdzie jestem, nie wiem jaki dzień, nie wiem jaki dziś, nie wiem jak się nazywam, "
        "nie pamiętam jak się nazywam, nie poznaję mieszkania, nie poznaje, nie wiem co się ze mną, "
        "nie wiem kim jestem, nie wie gdzie jest, nie wie jaki dzień, nie wiem który dzień, "
        "nie pamiętam jaki dziś, nie wiem gdzie ja jestem, nie wiem który jest rok, "
        "nie wiem jaki jest dzień, nie pamiętam imienia, nie pamiętam swojego imienia, nie pamiętam adresu, "
        "nie wiem jak wrócić do, nie poznaję własnego, nie pamiętam jaki, nie wiem skąd się tu, "
        "nie wiem jak się tu, nie wiem jaki dziś dzień, nie poznaję domu"
    ),
    C.HEADACHE: (
        "ból głowy, bólu głowy, bóle głowy, głowa, głowy, głowę, łeb, łba, migren*, czaszk*, głowie, bol glowy"
    ),
    C.WORST: (
        "nagle, nagły, nagłe, nagła, najgorsz*, najsilniejsz*, pęka, pęknie, rozsadza, wybuch*, eksplod*, jak grom, "
        "grom, piorun*, jak młotem, młotem, jak obuchem, obuchem, nigdy w życiu, nigdy tak, jak nigdy, w sekundę, w "
        "jednej chwili, w życiu, sztywny kark, kark sztywny, rozrywa, jak strzał, strzał, jak piorun, nigdy tak nie "
        "bolało, najgorszy w życiu, jakby eksplodowała, jeszcze takiego nie, takiego nie miałam, takiego nie "
        "miałem, takiego jeszcze nie, takiego bólu nie, nigdy takiego, takiej jeszcze nie"
    ),
    C.SEVERE: (
        "siln*, mocn*, okropn*, straszn*, strasznie, potworn*, koszmarn*, ogromn*, bardzo, ciężk*, "
        "nieznośn*, nie do wytrzymania, nie do zniesienia, ostr*, potężn*, wściekł*, cholern*, "
        "niesamowit*, wielk*"
    ),
    C.SUDDEN: (
        "nagle, nagły, nagłe, nagła, naglego, nagłego, nagłą, z nagła, znienacka, raptem, raptown*, "
        "w jednej chwili, w sekundę, z sekundy na sekundę, ni stąd ni zowąd, w mgnieniu oka, "
        "niespodziewan*, momentaln*, w jednym momencie, tak po prostu, przed chwilą, od razu"
    ),
    C.FAINTED: (
        "odleciałem na chwilę, odleciałam na chwilę, odleciałem na moment, odleciałam na moment, "
        "zemdl*, mdleje, mdleję, mdlal*, mdlał*, omdl*, straciłem przytomność, straciłam przytomność, "
        "stracił przytomność, straciła przytomność, traci przytomność, tracę przytomność, utrata przytomności, "
        "utraty przytomności, utratę przytomności, nieprzytomn*, zasłab*, straciłem świadomość, "
        "straciłam świadomość, film mi się urwał, film się urwał, urwał mi się film, urwał się film, "
        "urwało mi film, odpłynąłem, odpłynęłam, odleciałem, odleciałam, odjechałem, odjechałam, odpłynął, "
        "straciłem kontakt, padł na podłogę, padłem na podłogę, padłam na podłogę, padłem jak, padłam jak, runął, "
        "runęła, runąłem, runęłam, osunął się, osunęła się, osunąłem, osunęłam, zwalił się, zwaliłem się, "
        "nie odpowiada, nie reaguje, nie można obudzić, nie mogę obudzić, nie mogę dobudzić, nie budzi się, "
        "dobudzić, bez przytomności, zapaść, zapaści, przewrócił się i leży, leży bez ruchu, leży nieruchomo, "
        "ścięło mnie z nóg, zwaliło mnie z nóg, zgasło mi światło, upadł i nie, upadła i nie, tracę świadomość, "
        "padł jak, straciłem przytomnosc, odcięło mnie, odcięło mi prąd, odcięło prąd, prąd mi odcięło, "
        "światło mi zgasło, zgasło światło, zgasło, odlot, czarna dziura i, ciemność i podłoga, urwany film, "
        "urwało mi się, leżę nieprzytomn*, nie ma z nim kontaktu, nie ma z nią kontaktu, brak kontaktu, "
        "nie kontaktuje, nie daje znaku życia, nie rusza się, nie otwiera oczu, nie mogę go dobudzić, "
        "nie mogę jej dobudzić, nie mogę go ocucić, nie mogę jej ocucić, padła jak, padła na podłogę, "
        "padł na ziemię, padła na ziemię, nagle upadł, nagle upadła, upadł nagle, upadła nagle, "
        "upadłem i nie pamiętam, upadłam i nie pamiętam, przewrócił się i nie, przewróciła się i nie, runąłem na, "
        "bezwładnie, nogi się pode mną ugięły i, zsunął się, zsunęła się, zleciał*, zemgla*, zemgl*, zemdlenie, "
        "utracił*, straciłam .. przytomność, straciłem .. przytomność, stracił .. przytomność, "
        "straciła .. przytomność, tracę .. przytomność, traci .. przytomność, utrata .. przytomności, "
        "przytomność straciłem, przytomność straciłam, przytomności nie, nie budzi, się nie budzi, "
        "nie odpowiada i leży, leży i nie, zasłabł*, zaslabl*, urwal mi sie film, zaraz fiknę, fiknę, fikne, "
        "fiknął*, zaraz padnę, zaraz zemdleję, zemdlej*, odleciał*, odpłynęł*, odpłynął*, runal, ocknął*, ocknęł*, "
        "obudziłem się na podłodze, leżę na podłodze, leze na podlodze, ciemno przed oczami i, "
        "zrobiło mi się ciemno, prawie zemdla*, znaleziono mnie na podłodze, znalazł mnie na podłodze, "
        "znalazła mnie na podłodze, znaleźli mnie, obudziłam się na podłodze, nogi się pode mną ugięły, "
        "nogi mi się ugięły, urwał mi się, osunął*, osunęł*, zjechałam na podłogę, lecę na ziemię, lece na ziemie, "
        "padam na ziemię, padam na ziemie, zaraz odpłynę, nie moge dobudzic, ciemno mi się zrobiło, "
        "ciemno mi sie zrobilo, zrobilo mi sie ciemno"
    ),
    C.CAME_ROUND: (
        "ocknąłem, ocknęłam, ocknal*, ocknął*, ocknę*, obudziłem się, obudziłam się, "
        "doszedłem do siebie, doszłam do siebie, odzyskał*, znaleźli mnie, znalazł* mnie, leżałem, "
        "leżałam, otworzyłem oczy, otworzyłam oczy, ocucili, ocucił*, znalazłem się, znalazłam się, "
        "obudzony, obudzona, nagle leżę, ocuciła, ocucił, wróciła mi świadomość, odzyskałem, odzyskałam"
    ),
    C.FLOOR: (
        "podłodze, podłogę, podłoga, ziemi, ziemię, dywanie, kafelkach, płytkach, chodniku, łazience, glebie, posadzce"
    ),
    C.SEIZURE: (
        "padaczk*, padaczkow*, epileps*, epilept*, drgawk*, drgawek, drgawki, konwulsj*, atak padaczki, "
        "napad padaczk*, ataki padaczkowe, napad drgawk*"
    ),
    C.JERKING: (
        "rzucało mną, rzuca nim, rzuca nią, rzuca mną, trzęsło mną całym, trzęsło mną całą, trzęsie nim, "
        "trzęsie nią, telepało mną, telepie nim, telepie nią, telepie mną, przygryziony język, "
        "język przygryziony, przygryzłem język, przygryzłam język, ugryzłem się w język, szarpało mną, "
        "całe ciało .. drga, całe ciało drgało, piana z ust, toczy pianę, pianę z ust, prężyło, "
        "wygięło mnie, sztywnieje i, niekontrolowane ruchy, niekontrolowane drgania, skurcze całego ciała"
    ),
    C.DIZZY: (
        "zawrot*, zakręciło, zawrót, kręci mi się, kręci mi sie, kręci się w głowie, kręci sie w głowie, "
        "kręciło mi się, kręciło się w głowie, mi się kręci, mi się w głowie kręci, w głowie się kręci, "
        "kręci się mi, wiruj*, wirował*, oszołomion*, mroczki, słabo mi, mi słabo, ciemno przed oczami, "
        "ciemno mi przed, czarno przed oczami, się słabo, robi mi się słabo, w głowie mi się kręci, "
        "w głowie kręci, kołuje mi się, buja mną, kołysze mną, tracę równowagę, zatacza*, chwieję się, "
        "zachwiał*, chybocz*, kolebie mną, karuzela, pływa mi przed, zakołowało, głowa mi lata, "
        "świat wiruje, jak na statku, lekko w głowie, nogi jak z waty, zamroczyło, kolysze mna, slabo mi, "
        "gwiazdy przed oczami, gwiazdki, chodzę jak pijany, chodzę jak pijana, zataczam, "
        "nie trzymam równowagi, straciłem równowagę"
    ),
    C.AGAIN: (
        "znowu, znów, ciągle, często, wciąż, każd*, od, stale, codziennie, kilka, ponownie, ostatnio, "
        "nadal, wczoraj, razy, cały czas, nawracaj*, wraca, wracaj*, dzień, dni, tydzień, tygodnia, tyg, "
        "co rano, co chwilę, co chwila, trzeci, trzeci raz, drugi raz, kolejn*, za każdym razem, "
        "jak wstaję, gdy wstaję, przy wstawaniu, powtarza*, dzień w dzień, bez przerwy, na okrągło, "
        "po kilka, za każdym, zwykle, coraz"
    ),
    # breath
    C.BREATHE: (
        "oddych*, oddech*, oddetchn*, odetchn*, tchu, powietrz*, złapać tchu, złapać oddechu, zaczerpn*, "
        "nabrać powietrza, wdech*"
    ),
    C.CHOKING: (
        "nie mogę oddychać, nie może oddychać, nie mogę złapać oddechu, nie mogę złapać tchu, nie może złapać tchu, "
        "nie może złapać oddechu, ledwo oddycham, ledwo oddycha, nie mam czym oddychać, nie ma czym oddychać, nie "
        "mogłem oddychać, nie mogłam oddychać, nie oddycha, nie oddycham, nie mogę nabrać powietrza, nie mogę "
        "złapać powietrza, z trudem oddycham, z trudem oddycha, duszę się, dusze sie, dusi się, się dusi, się "
        "duszę, sie dusi, dusi mnie, duszę sie, dławię się, krztus*, udusz*, duszenie, łapię powietrze jak ryba, "
        "jak ryba, oddycha z trudem, walczę o oddech, walczy o oddech, rzęzi, charczy, nie mogę wziąć oddechu, "
        "oddech mi się urywa, oddech mi się rwie, urywany oddech, oddech mi staje, płuca nie łapią, nie łapię "
        "powietrza, nie mogę wziąć wdechu, tracę oddech, przestał oddychać, przestała oddychać, nie łapie oddechu, "
        "nie może nabrać powietrza, nie łapię tchu, nie wciągnę powietrza, tlenu mi brak, walczę o każdy oddech, "
        "dusi sie, dusił się, dusiła się, krztusi, zachłysn*, udławi*, oddychać nie mogę, oddechu złapać nie mogę, "
        "tchu złapać nie mogę, powietrza nie mogę, nie moge oddychac, nie moglem oddychac, łapię powietrze, lapie "
        "powietrze, łapie powietrze, różowa piana, rozowa piana, piana na ustach, bardzo ciężko mi się oddycha, "
        "krztuszę, zadławi*, zakrztusi*, brakuje mi powietrza, źle mi się oddycha, ledwie oddycham, prawie nie "
        "oddycham, nie mogę zaczerpnąć, łapać powietrza, sine usta, usta sine, sinieje, sinieję, charczę, rzężę, "
        "brak tchu w spoczynku, brak powietrza, zatyka mnie, nie ma powietrza, dławi się, dławię, jak ryba bez "
        "wody, łapie dech, lapie dech, łapię dech, lapie oddech, łapię oddech, świszcze w całym, słychać jak "
        "świszcze, żebra się zapadają, swiszcze przy oddychaniu, powietrze nie chce, powietrze nie wchodzi, "
        "powietrze nie idzie, nie mogę wciągnąć powietrza, nie moge wciagnac powietrza, dusiłam się, dusiłem się, "
        "się dusiłam, się dusiłem, dusiłam, dusiłem, dławiłam się, dławiłem się"
    ),
    C.AIR_HUNGER: (
        "brakuje mi powietrza, brakuje powietrza, brak powietrza, brak mi powietrza, powietrza mi brak*, brakuje mi "
        "oddechu, brak oddechu, oddechu mi brak*, mało powietrza, brakuje mi tchu, brak mi tchu, zatyka mnie, "
        "trudno mi oddychać, ciężko mi oddychać, ciężko mi się oddycha, ciężko się oddycha, trudno mi się oddycha, "
        "trudno oddychać, ciężko oddychać, trudności z oddychaniem, problemy z oddychaniem, kłopoty z oddychaniem, "
        "trudności w oddychaniu, problem z oddychaniem, ciężko oddycham, ciężko oddycha, brakuje mi tlenu, oddech "
        "się rwie, oddycham szybko, szybki oddech, przyspieszony oddech, ciężki oddech, za mało powietrza, nie "
        "starcza mi powietrza, nie starcza powietrza, płytko oddycham, tchu złapać, brakowało mi powietrza, "
        "zabrakło mi powietrza, topię się, to się topię, bulgocze w płucach, bulgocze mi w płucach, bulgoce w "
        "płucach, rzęzi mi, charczy mi, nie ma czym oddychać"
    ),
    C.BREATHLESS: (
        "duszno*, duszność, duszności, duszno mi, duszno, zadysz*, bez tchu, brak tchu, brakuje tchu, "
        "tchu brakuje, tchu, zdyszan*, sapię, sapie, sapiąc, zziajan*, dysz*, dyszę, ziaj*, zasapan*, "
        "brakuje mi tchu, zatchn*, przytyka, zatyka, oddech krótki, krótki oddech, płytki oddech, "
        "złapać oddech przy, brakuje mi oddechu, zasapuje*, zasapał*, dostaję zadyszki, zadyszki dostaję, "
        "zipie, zipię, ledwo zipię, nie mam pary, brak pary, brakuje pary, muszę odsapnąć, odsapn*, dech, dechu, "
        "dechem, "
        "tchu mi, zabrakło mi tchu, zadycha*, zadychał*, zadyszka, duszę się na leżąco, śpię na siedząco, "
        "spie na siedzaco, nie mogę leżeć płasko, ciężko mi się oddycha, ciezko mi sie oddycha, świszczy, "
        "swiszczy, odpocząć"
    ),
    C.BLUE: (
        "sine usta, usta sine, sinieje, sinieją, zsiniał*, sina, siny, sin* na twarzy, niebieskie usta, "
        "usta niebieskie, robi się siny, robi się sina"
    ),
    C.REST: (
        "spoczynku, siedząc*, siedzę, siedzi, leżąc*, leżę, leże, leży, w łóżku, w nocy, nocą, siln*, "
        "bardzo, ciężk*, nic nie robiąc, nic nie robię, siedzeniu, leżeniu, w fotelu, na kanapie, "
        "bez ruchu, bez wysiłku, nie ruszam się, nie ruszając się, na leżąco, na siedząco, "
        "przed telewizorem, odpoczyw*, nawet jak leżę, budzi mnie, obudził*, usta sine, płasko, "
        "po nocach, na płasko"
    ),
    C.TASKS: (
        "schod*, ubier*, ubran*, niż zwykle, niż wcześniej, niż kiedyś, prysznic*, gotowan*, gotuję, "
        "sprząt*, odkurz*, najmniejsz*, rozmow*, byle, ściel*, łóżk* ściel*, ścieleniu łóżka, piętr*, "
        "sklepu, sklep, zakup*, chodz*, spacer*, marsz*, pod górę, pod górkę, kilka kroków, parę kroków, "
        "po kilku, przystaw*, przystan*, kiedyś nie, wcześniej nie, dawniej nie, miesiąc temu, "
        "nigdy wcześniej, tego nie było, mycie, myciu, mycia, buty, butów, wysiłk*, domow*, śmieci, "
        "ogród*, przejść, wejść, wchodz*, wejści*, wniesieni*, przedtem, skarpet*, do łazienki, "
        "do kuchni, mycie zębów, myciu zębów, myję zęby, czesaniu, skarpetki, sznurowad*, pół piętra, "
        "półpiętr*, pierwsze piętro, drugie piętro, piętro, piętrze, do kiosku, kiosku, do auta, "
        "do samochodu, na przystanek, przystanku, parę metrów, kilka metrów, kilkanaście metrów, "
        "sto metrów, prasowan*, prasuję, naczyń, zmywan*, zmywam, wieszaniu, pranie, pościel*, "
        "pościeleni*, mieszkani*, przejściu, przejście, podejści*, wejście, podwórk*, kiedyś mogłem, "
        "wcześniej mogłem, jeszcze miesiąc temu, w zeszłym miesiącu, niedawno jeszcze, kościoła, windy, "
        "kwiatków, śniadania, torby, siatki, wysiłek, wysiłku"
    ),
    C.INHALE: (
        "wdech*, wdechu, przy oddychaniu, gdy oddycham, jak oddycham, przy głębszym oddechu, "
        "biorę oddech, nabieram powietrza, głęboki oddech, głębokim wdechu, oddechu"
    ),
    # blood
    C.BLEED: (
        "krwaw*, krwotok z nosa, krew z nosa, tracę krew, traci krew, krew mi leci, leci krew, krwawi, "
        "krwawię, krwotok, sika krew, leje się krew, krew się leje, krew leci, nie przestaje krwawić, "
        "ciągle krwawi"
    ),
    C.BLOOD: (
        "krew, krwi, krwią, krwia, krwaw*, krwist*, jucha, krwawi*, krwawien*, czerwono w kiblu, "
        "czerwono w toalecie, pluję na czerwono, czerwona woda, czerwona plwocina, skrzep*"
    ),
    C.WOUND: (
        "rozciąłem, rozcięłam, rozcialem, rozcielam, skaleczył*, skaleczenie, rana, rany, przeciąłem, "
        "przecięłam, zaciąłem się, zacięłam się, ucięłam, uciąłem"
    ),
    C.NOT_STOPPING: (
        "nie przestaj*, nie da się zatamować, zatamow*, nie mogę zatamować, nie mogę zatrzymać, "
        "nie zatrzymuje, nie chce przestać, leje się, leje sie, leje, leci, leci i leci, leci mi, "
        "tryska, sika krew, chlust*, kapie i kapie, cieknie, ciecze, od godziny, od pół godziny, "
        "pół godziny, godzinę, przesiąk*, przemokł*, ręcznik*, opatrunek przesiąka, nie krzepnie, "
        "bez przerwy, ciągle leci, nie ustaje, strumieniem, nie mogę zahamować, nie tamuje, "
        "nie idzie zatamować, sączy się i sączy, nie da się zatrzymać, nie moge zatamować, "
        "nie moge zatamowac, nie tamuje się, dalej leci, ciągle kapie, ciągle, leci ciągle, "
        "leci jak z kranu, jak z kranu, cały czas, nie przestało, od dwudziestu minut, "
        "od kilkunastu minut, przecieka, przeciekają, trzeci ręcznik, drugi ręcznik, całe ręczniki"
    ),
    C.MUCH: (
        "dużo, mocno, bardzo, obficie, obfit*, masę, mnóstwo, strasznie, wszędzie, kałuż*, skrzep*, "
        "z głowy, siln*, sporo, pełno, jak z kranu, tyle, wszystko we krwi, całe wiadro, jasnoczerwon*, "
        "intensywn*, okropnie, strumień, litr*, garść, pełna umywalka, pełen zlew, zlew, kałuża, "
        "skrzepy, świeża, świeżą, chlusta, żywoczerwon*, lało"
    ),
    C.HAEMORRHAGE: (
        "krwotok*, wykrwaw*, krwawiący wrzód, krwawienie wewnętrzne, krwawienia wewnętrzne, fusowat*, fusy z kawy, "
        "krwiopluc*, smoliste, sika krew, tryska krew, krew tryska, leje się krew, leje sie krew, fusy od kawy, "
        "pluję krwią, pluje krwia, wymiotuję krwią, wymioty z krwią, podpaska pełna, podpaska pelna, podpaska co, "
        "podpaski co, pełna podpaska, cała muszla czerwona, mnóstwo krwi, mnostwo krwi, krew wszędzie, "
        "wszędzie krew, wszystko we krwi, kaszlę krwią, kałuża krwi, wykrwawi*, nie przestaje krwawić, "
        "krew nie przestaje, nie mogę zatamować, nie da się zatamować, krew ciągle leci, ciągle leci krew, "
        "dużo krwi, masa krwi, krew w moczu, sikam krwią, skrzepy, krew się sączy bez końca, krwotok, żylak pękł, "
        "zylak pekl, zylak mi pekl, żylak mi pękł, pękła żyła, pekla zyla, leci strumieniem, "
        "leci z nosa jak z kranu, jak z kranu, muszli .. czerwono, muszli .. czerwone, kiblu .. czerwono, "
        "toalecie .. czerwono, sedesie .. czerwono"
    ),
    C.VOMIT: (
        "zwracam od, zwracam po, zwracam cały, zwracam wszystko, cały czas zwracam, zwróciłam śniadanie, zwróciłam "
        "obiad, zwróciłem śniadanie, zwróciłem obiad, "
        "wymiot*, zwymiot*, rzyg*, zwrac*, zwróc*, haftow*, haftuj*, pawia, zbiera na wymioty, "
        "wymiotuj*, zwymiotował*, wyrzygał*, rzygnął*, porzygał*, ulew*, zwróciłem, zwróciłam"
    ),
    C.COUGH: "kaszl*, kaszel, plu*, wyplu*, odkrztu*, odksztu*, flegm*, plwocin*",
    C.STOOL: (
        "stolec, stolca, stolcu, stolec*, kup*, kał*, kale, mocz*, siku, siki, toalec*, sedes*, odbyt*, "
        "tyłka, sraczk*, wypróżn*, klozet*, biegunk*, klopie, kupę, kupie, kupa, załatwi*, stolcem, wc, "
        "sedesie, kibl*, papierze, moczu"
    ),
    C.BLACK: "czarn*, smoł*, smolist*, jak smoła, smola, węgiel, smol*, asfalt*, lukrecj*, atrament*, fus*",
    # medicines and poisons
    C.OVERDOSE: (
        "przedawkow*, przedawkuj*, zatru*, otru*, struł*, przedawk*, za dużo leków, za dużo tabletek, "
        "za dużo prochów, połknęłam wszystkie, polknelam wszystkie, połknąłem wszystkie, wziąłem wszystkie, "
        "wzięłam wszystkie, całe opakowanie, całe pudełko, cale pudelko, cały listek, nałykał*, nalykal*, "
        "podwójna dawka, podwójną dawkę, podwójnie warfarynę, brałem podwójnie, bralem podwojnie, brałam podwójnie, "
        "dwa razy za dużo, zamiast jednej, jednostek zamiast, wszystkie tabletki, za dużo insuliny, "
        "dwa razy wziąłem, dwa razy wzięłam, garść tabletek, garsc tabletek, garść prochów, wszystkie moje leki, "
        "wszystkie leki, wszystkie proszki, kupę tabletek, mnóstwo tabletek, podwójną dawkę leków, podwójnie leki, "
        "dwa razy leki, dwa razy insulinę, insulinę dwa razy, pomyliłem leki, pomyliłam leki, pomyliłam insulinę, "
        "pomyliłem insulinę, za dużo wziąłem, za dużo wzięłam, kasetkę z tygodnia, kasetke z tygodnia, "
        "całą kasetkę, cala kasetke, cały tydzień leków"
    ),
    C.TOOK: (
        "wziął*, wzięł*, wziąłem, wzięłam, wziolem, wziol*, biorę, zażył*, zażyłem, zażyłam, połkn*, połkną*, "
        "połyka*, łykną*, łyknął*, łyknęł*, lykn*, przyją*, przyjęł*, wstrzykn*, zjad*, zjadł*, wypił*, wypiłem, "
        "wypiłam, podał*, podałem, podałam, nałykał*, nażarł*, wpakował*, dałem sobie, dałam sobie, najadł*, "
        "łyknął, lyknal, lyknel*, wychyli*, wypil*, nazarl*, wcisn*"
    ),
    C.SWALLOWED: (
        "połkn*, połkną*, polkn*, zjad*, zjadł*, wypił*, napił*, łykn*, połyka*, najadł*, wziął do buzi, "
        "dobrał się do, dobrała się do"
    ),
    C.TABLETS: (
        "tablet*, pigułk*, leki, leków, lekarstw*, lekami, lek, proszk*, nasenn*, przeciwból*, paracetamol*, "
        "ibuprom*, apap*, aspiryn*, kapsułk*, prochy, prochów, uspokajając*, antydepresant*, dawk*, morfin*, "
        "tramal*, xanax*, na ciśnienie, na serce, opakowani*, blistr*, relanium, syrop*, krople, warfaryn*, "
        "acenokumarol*, ramipril, lisinopril, enalapril, amlodipin*, furosemid*, metformin*, warfarin*, "
        "apixaban*, rivaroxaban*, zopiclon*, diazepam*, lorazepam*, oxycod*, oxycont*, pregabalin*, "
        "gabapentin*, sertralin*, quetiapin*, simvastatin*, atorvastatin*, bisoprolol*, atenolol*, digoxin*, "
        "zolpidem*, amitriptylin*, mirtazapin*, citalopram*, codein*, tramadol*, bisocard*, na sen, "
        "nasennych, na nadciśnienie, na serducho, acard*, tabsy, piguły, tabsów, opakowanie, pudełko, "
        "pudelko, listek, proszki, proszków, tabletek, blister"
    ),
    C.INSULIN: "insulin*",
    C.TOO_MUCH: (
        "za dużo, za duzo, wszystkie, wszystko, całe, cały, całą, calą, garść, garścią, podwójn*, dwa razy, "
        "dwukrotn*, przez pomyłkę, pomyłk*, pomył*, pomylił*, omyłkowo, niechcący, przypadkiem, zamiast, "
        "opakowanie, paczkę, fiolk*, buteleczk*, listek, trzy razy, potrójn*, więcej niż, drugi raz, naraz, na raz, "
        "kilkanaście, kilkadziesiąt, kupę, źle, zły, złą, niewłaściw*, jeszcze raz, resztę, dwanaście, dziesięć, "
        "dwadzieścia, trzydzieści, już wzięłam, już wziąłem, juz wzielam, zapomniałam że już, zapomniałem że już, "
        "zapomniałem że, zapomniałam że, po raz drugi, jeszcze jedną, jeszcze jedna, jedna za dużo, osiemnaście, "
        "czterdzieści, pięćdziesiąt, piętnaście, dziesięć razy, cztery razy, pięć razy, hurtem, za jednym razem, w "
        "jednym rzucie, całotygodniow*, z całego tygodnia, na cały tydzień, tygodniow*, resztę opakowania, co "
        "zostało, do dna, nie te, nie ten, nie tę, cudze, niż trzeba, niż powinnam, niż powinienem, zbyt dużo, "
        "wiecej, sporo, mnóstwo, kilka naraz, cały listek, całe opakowanie, cale opakowanie, cała paczka, cała "
        "butelka, cala butelka, pół opakowania, pol opakowania, cały blister, pełno, garście, całą garść, masę, "
        "kupę tabletek, bardzo dużo, dużo za dużo"
    ),
    C.POISON: (
        "wybielacz*, domestos*, kret, kreta, płyn do, środek czystości, środki czystości, detergent*, "
        "trutk*, trucizn*, odmrażacz*, rozpuszczalnik*, muchomor*, ocet, octu, denaturat*, kwas*, chlor*, "
        "kapsułkę do prania, kapsułki do prania, wybielacz, wybielacza, domestos, trutka, trutkę, denaturat, "
        "płynu do naczyń, borygo, ocet stężony, środek do czyszczenia, płyn do zmywania, benzynę, "
        "rozpuszczalnik, aceton, odkamieniacz"
    ),
    # despair
    C.KILL_SELF: (
        "zabić się, zabije się, zabić sie, się zabić, sie zabic, zabiję się, zabije sie, się zabiję, się zabije, "
        "sie zabije, popełnić samobójstwo, popełnię samobójstwo, samobój*, samoboj*, targnąć się, targnę się, "
        "odebrać sobie życie, odbiorę sobie życie, odebrać życie, skończyć ze sobą, skończę ze sobą, "
        "skoncze ze soba, ze sobą skończyć, ze sobą skończę, powiesz*, powiesić się, powieszę się, powieszę sie, "
        "skoczyć z, skoczę z, rzucić się pod, rzucę się pod, rzucić się z, podciąć sobie żyły, podetnę żyły, "
        "podetnę sobie, zrobić sobie krzywdę, zrobię sobie krzywdę, robię sobie krzywdę, zrobić coś sobie, "
        "coś sobie zrobić, coś sobie zrobię, zrobię sobie coś, coś sobie zrobi, otruć się, otruję się, "
        "zastrzelić się, zastrzelę się, utopić się, utopię się, sobie w łeb, skończyć z życiem, skończę z życiem, "
        "skończyć z tym życiem, zakończyć życie, zakończę życie, zakończyć swoje życie, zakończyć to życie, "
        "targnęła się, próba samobójcza, się powiesić, rzucić się z mostu, z okna, chce się zabić, żyły sobie, "
        "chcę ze sobą skończyć, ze soba skoncze, zrobię coś sobie, zrobię sobie coś złego, zrobić sobie coś złego, "
        "zrobić coś złego, wyskoczę, wyskoczyć przez okno, wyskoczyć z okna, skoczę pod, rzucam się, wskoczę pod, "
        "pod pociąg, pod pociag, pod tramwaj, z mostu, z balkonu, zakończyć to wszystko, zakończę to wszystko, "
        "skończyć z tym wszystkim, skończę z tym wszystkim, chcę to zakończyć, chcę to skończyć, "
        "sobie życie, chce ze sobą skończyć, ma zamiar się zabić, chciał się zabić, chciała się zabić, targnąć, "
        "targnę, łyknę wszystkie, połknę wszystkie, wezmę wszystkie tabletki, zabic sie, skocze z, podciąć żyły, "
        "skoczyć z mostu, skoczyc z, rzucic sie pod, wskoczyć pod, skończyć ze swoim życiem, zakończyć to dziś, "
        "podcięłam sobie, podciąłem sobie, powieszę, wjadę w drzewo, z tym skończę, z tym skoncze, "
        "dziś z tym skończę, dzis z tym skoncze"
    ),
    C.CUT_SELF: (
        "tnę się, tne sie, ciąłem się, cięłam się, pociąłem się, pocięłam się, pocielam sie, pociąć się, "
        "się pociąć, się pociąłem, się pocięłam, samookalecz*, okaleczam się, okaleczył*, podciąłem żyły, "
        "podcięłam żyły, podciąłem sobie, podcięłam sobie, nacięłam sobie, naciąłem sobie, tnę sobie, "
        "przypalam się, przypaliłam się specjalnie, żyletką po, sznyty, pochlastał*, chlastam, pocięłam, "
        "pociąłem ręce, pocięłam ręce, pocięłam nadgarst*, pociąłem nadgarst*, tnę ręce, tnę nogi, żyletką, "
        "ciełam się, cięłam, przeciąłem żyły, przecięłam żyły, podcięłam, podciąłem, znowu się pocięłam, "
        "znowu się pociąłem, znowu się tnę, skaleczyłam się specjalnie, skaleczyłem się specjalnie, "
        "specjalnie się skaleczył*, specjalnie się oparzył*, biję się po, wycinam na skórze, ciąć się, "
        "żyletk*, podcięłam sobie żyły, podciąłem sobie żyły, podcielam zyly, pocięta, pocięty, nacinam"
    ),
    C.END_IT: (
        "to skończę, to skoncze, skończę to, skończę z tym, kończę z tym, koniec ze mną, "
        "koniec wszystkiego, będzie po wszystkim, będzie koniec, ze wszystkim skończę, "
        "mnie już nie będzie, mnie nie będzie, już mnie nie będzie, zrobię to, odchodzę na zawsze, "
        "zakończę to, wszystko się skończy, koniec tego, kończę to wszystko, to zakończę, odejdę"
    ),
    C.TONIGHT: (
        "dziś, dzisiaj, dzis, dziś w nocy, tej nocy, jutro, teraz, wieczorem, na zawsze, zaraz, "
        "tym razem, dziś wieczorem, w nocy"
    ),
    C.FAREWELL: (
        "list pożegnalny, listu pożegnalnego, listy pożegnalne, list do dzieci, napisałem list, napisałam list, "
        "list już napisany, pożegnałem się, pożegnałam się ze wszystkimi, pożegnałem się ze wszystkimi, spisałem "
        "testament i, zostawiłam list, zostawiłem list, list napisany, listy napisane, już mnie nie będzie, juz "
        "mnie nie bedzie, żegnam się, zegna sie, się żegna, żegnajcie, żegnaj, pożegnalna wiadomość, pożegnałam "
        "się, ostatnia wiadomość, zaopiekujcie się, nie będzie mnie jutro na świecie, po dzisiejszym wieczorze, "
        "list już napisałem, list już napisałam, list napisałem, list napisałam, napisałem list do, napisałam list "
        "do, zostawiam list, żegnaj na zawsze, żegnam was, dziś w nocy żegn*, mój ostatni list, ostatnia wiadomość "
        "ode mnie"
    ),
    C.READY: (
        "przygotow*, naszykow*, odłożon*, odłożył*, uzbiera*, zebran*, mam obok, obok mnie, leżą obok, pod ręką, "
        "przede mną, przed sobą, w ręku, w ręce, gotow*, czekają, nazbierał*, leżą przygotowane, schowan*, "
        "odliczon*, na stole, na łóżku, na lozku, w rece, przede mna, policzone, przygotowane"
    ),
    C.MEANS: (
        "sznur*, lin*, żyletk*, nóż, noż*, pistolet*, broń, most*, tory, torach, tabletki, balkon*, "
        "zamkn*, pętl*, gaz, okn*, dach*"
    ),
    C.THOUGHTS: (
        "myśl*, mysl*, myślę o, mysle o, myślach, po głowie, przychodzi mi do głowy, "
        "chodzi mi po głowie, chodzą mi po głowie, czasem, czasami, nie zrobię tego, nigdy bym, "
        "nie zrobiłbym, nie zrobiłabym, nie zrobie, zastanawia*, rozmyśl*, wyobraż*, kusi, fantazj*, "
        "pomyśl*"
    ),
    C.DEATH_WISH: (
        "chcę umrzeć, chce umrzeć, chciałbym umrzeć, chciałabym umrzeć, wolałbym umrzeć, wolałabym umrzeć, wolałbym "
        "nie żyć, wolałabym nie żyć, nie chcę żyć, nie chce żyć, nie chcę już żyć, nie chce już żyć, nie chce juz "
        "zyc, żyć mi się nie chce, nie chce mi się żyć, nie chce mi się już żyć, odechciało mi się żyć, nie chciałbym "
        "żyć, nie mam po co żyć, nie mam dla kogo żyć, nie ma po co żyć, nie warto żyć, życie nie ma sensu, życie "
        "straciło sens, życia nie ma sensu, bez sensu żyć, lepiej beze mnie, beze mnie będzie lepiej, beze mnie "
        "byłoby, lepiej by było beze, lepiej by było jakby mnie nie było, lepiej by bylo jakbym, żeby mnie nie było, "
        "jakby mnie nie było, gdyby mnie nie było, nie obudzić się, się nie obudzić, nie obudził, nie obudziła, już "
        "się nie obudzić, więcej się nie obudzić, nie obudzę, zasnąć i nie, zniknąć na zawsze, chcę zniknąć, "
        "chciałbym zniknąć, chciałabym zniknąć, nie istnieć, przestać istnieć, zmęczony życiem, zmęczona życiem, mam "
        "dość życia, dosyć życia, dość tego życia, marzę o śmierci, pragnę śmierci, myślę o śmierci, myśli o śmierci, "
        "myśli samobójcze, myśli samobójczych, mysli samobojcze, nie chcę tu być, nie chcę już tu być, nie chcę "
        "dłużej żyć, nie chcę dalej żyć, umrzeć bym chciał*, najlepiej umrzeć, lepiej umrzeć, lepiej gdybym umarł*, "
        "gdybym umarł*, po co żyję, po co żyć, wolę umrzeć, wolałabym się nie obudzić, wolałbym się nie obudzić, "
        "chciałabym się nie obudzić, chciałbym się nie obudzić, chciałabym zasnąć na zawsze, zasnąć na zawsze, usnąć "
        "i nie, usnąć na zawsze, zasnąć i już, żeby już nie być, żeby już się nie obudzić, nie być, już nie być, nie "
        "chciało się żyć, odechciewa się żyć, odechciewa mi się żyć, nie mam ochoty żyć, nie mam siły żyć, nie mam "
        "już siły żyć, nie ma sensu żyć, po co dalej żyć, bez sensu dalej żyć, nie widzę sensu życia, sensu życia, "
        "życie nie ma, moje życie nie ma, lepiej by było gdybym, lepiej gdyby mnie, byłoby lepiej beze, lepiej beze, "
        "śmierć byłaby, lepsza śmierć, śmierć lepsza, marzę żeby umrzeć, modlę się o śmierć, żeby umrzeć, umarłbym, "
        "umarłabym, mogłabym umrzeć, mógłbym umrzeć, mam ochotę umrzeć, chce mi się umrzeć, chciało mi się umrzeć, "
        "zniknąć, wszystkim byłoby lżej, zniknąć z tego świata, zmęczyło mnie życie, mam dosyć życia, nie chcę tego "
        "życia, nie chcę już tego życia, nie chcę istnieć, dość życia, nie chcę się już obudzić, nie chcę się "
        "obudzić, nie chce się budzić, nie chcę się rano obudzić, nie chcę się więcej budzić, nie chcę już być, żyć "
        "nie chcę, żyć już nie chcę, umrzeć chcę, żyć się odechciewa, nie chce zyc, chce umrzec, nie chce mnie tu "
        "być, nie obudzić, zasnąć i się nie obudzić, chce zniknac, skończyć ze swoim życiem, żeby to się skończyło, "
        "niech to się skończy, lepiej by było gdybym nie żył, lepiej by było jakbym, modlę się żeby się nie obudzić, "
        "nie chce sie obudzic, nie obudzic sie, jutro obudzić, jak mnie nie będzie, jak mnie nie bedzie, gdy mnie nie "
        "będzie, jak mnie zabraknie, beze mnie, będzie lżej beze mnie, wszystkim będzie lżej, wszystkim bedzie lzej, "
        "żeby mnie po prostu nie było, jakby mnie po prostu nie było, gdyby mnie po prostu nie było, żeby mnie już "
        "nie było, mogłoby mnie nie być, mogło mnie nie być, wolałabym zniknąć na zawsze, wolałbym zniknąć na zawsze, "
        "mieliby spokój beze mnie, beze mnie mieliby spokój"
    ),
    C.HOPELESS: (
        "po co to wszystko, po co mi to wszystko, bez sensu, nie ma sensu, żadnego sensu, nie widzę sensu, nie "
        "widzę żadnego sensu, nie widziałem żadnego sensu, wszystko bez sensu, nic nie ma sensu, beznadziej*, bez "
        "nadziei, nie ma nadziei, straciłem nadzieję, straciłam nadzieję, nie mam nadziei, brak nadziei, nie mam "
        "siły dalej, nie mam już siły, nie mam juz sily, nie mam sił już, nie daję już rady, nie daję rady już, nic "
        "się już nie poprawi, nic się nie poprawi, nic sie u mnie juz nie poprawi, nigdy nie będzie lepiej, już nie "
        "będzie lepiej, nie będzie lepiej, poddaję się, poddałem się, poddałam się, poddalem sie, nie ma wyjścia, "
        "bez wyjścia, sytuacja bez wyjścia, nie widzę wyjścia, nie widzę przyszłości, nie mam przyszłości, żadnej "
        "przyszłości, wszystko mi jedno, wszystko jedno mi, nic mnie nie czeka, nic nie warta, nic nie wart, jestem "
        "nikim, jestem ciężarem, ciężarem dla, zawadzam, rozpacz*, zrozpaczon*, jestem na dnie, na dnie, sięgnęłam "
        "dna, sięgnąłem dna, nie mam po co, nie mam już po co, wszystko stracone, nic dobrego mnie, czarna dziura, "
        "czarna rozpacz, mam wszystkiego dość, mam dość wszystkiego, wszystkiego dosyć, pustka w środku, nic mnie "
        "nie cieszy i nie, nic już nie ma sensu, nic już mnie nie czeka, sensu nie widzę, sensu już nie widzę, "
        "sensu w niczym, nie widzę sensu w, nie widzę już sensu, po co się starać, po co próbować, po co walczyć, "
        "nie warto, nie warto już, nie ma już nadziei, straciłam wiarę, straciłem wiarę, nie wierzę że będzie "
        "lepiej, nie wierzę już, lepiej już nie będzie, nie będzie już lepiej, tak już zostanie zawsze, nic się nie "
        "zmieni, nic się nie zmieni na lepsze, jestem beznadziejn*, jestem do niczego, do niczego się nie nadaję, "
        "nikomu niepotrzebn*, jestem niepotrzebn*, jestem zerem, jestem nic niewart*, nic nie jestem wart*, życie "
        "mi się posypało, życie mi się zawaliło, wszystko się wali, wszystko się zawaliło, wszystko stracił*, "
        "przegrałem życie, przegrałam życie, przegrane życie, zmarnowałem życie, zmarnowałam życie, pustka, czuję "
        "pustkę, sama pustka, ciemność, tylko ciemność, dół bez dna, w czarnej dziurze, na samym dnie, tkwię w "
        "dole, sił już brak, nie mam sił, nie mam siły walczyć, brak mi sił żeby dalej, nie dam już rady, nie dam "
        "rady dłużej, dłużej nie dam rady, nie wytrzymam dłużej, nie wytrzymam już, dłużej tego nie zniosę, opadły "
        "mi ręce na wszystko, się poddaję, poddaję się całkiem, dałam sobie spokój z życiem, obojętn*, wyjścia nie "
        "widzę, sensu nie ma, nadziei nie ma, nadziei nie mam, nikomu nie jestem potrzebn*, nie daję rady żyć, nie "
        "daje juz rady, nie mam siły żyć, nic z tego nie będzie, nic z tego nie bedzie, to bez sensu wszystko, nikt "
        "za mną nie zatęskni, nikt by nie zauważył, nikt by za mną nie tęsknił, nikt za mną, nikomu na mnie nie "
        "zależy, nie wytrzymam tego, mam tego dość życia, nie ma dla mnie nadziei, nie ma przyszłości, wszystkim "
        "zawadzam, tylko przeszkadzam, jestem śmieciem, życie nie jest nic warte, życie jest nic nie warte, życie "
        "nic nie warte, życie bez wartości, życie straciło sens, nie widzę sensu życia"
    ),
    # eating
    C.EATING: (
        "głodzę się, głodze się, głodzić się, głodówk*, środki przeczyszczając*, przeczyszczając*, przeczyszczen*, "
        "bulimi*, anoreks*, zaburzenia odżywiania, zaburzeń odżywiania, napady objadania, napady jedzenia, napad "
        "objadania, napad obżarstwa, napady obżarstwa, obżeram, objadam się, kompulsywn*, nienawidzę swojego ciała, "
        "brzydzę się sob*, brzydzę się swojego, wstydzę się swojego ciała, boję się jeść, boję się jedzenia, boję się "
        "przytyć, boję się wagi, boję się stanąć na wag*, panicznie boję się wagi, palce do gardła, palec do gardła, "
        "palcami w gardle, palce w gardło, wkładam palce, prowokuję wymioty, prowokuje wymioty, wymuszam wymioty, "
        "zmuszam się do wymiotów, wywołuję wymioty, wywołuje wymioty, myślę tylko o jedzeniu, myślę tylko o wadze, "
        "tylko o wadze, obsesj* na punkcie wagi, obsesj* na punkcie jedzenia, obsesja wagi, prawie nic nie jem, "
        "prawie nie jem, nic nie jem, przestałam jeść, przestałem jeść, nie mogę przestać jeść, nie mogę przestać się "
        "ważyć, ważę się po, ważę się dziesięć, ważę się co, odmawiam sobie jedzenia, karzę się, moczopędn*, tabletki "
        "odchudzające, na odchudzanie, wypluwam jedzenie, chowam jedzenie, wymiotuję po jedzeniu, zwracam po "
        "jedzeniu, kalorii dziennie, kcal dziennie, tylko woda, tylko wodę, samą wodę, na samej kawie, sama kawa, "
        "tylko kawa, żyję na kawie, spalić to co, spalam wszystko co zjem, spalić każdy, nie zasługuję na jedzenie, "
        "nie zasłużyłam na jedzenie, zjadłam całą lodówkę, zjadłem całą lodówkę, wyjadam wszystko, opróżniłam "
        "lodówkę, jem po kryjomu, jem w ukryciu, podjadam po kryjomu, obżarłam się, obżarłem się, obżeram się, "
        "najadam się do, napycham się, opycham się, nie mogę się opanować przy jedzeniu, tracę kontrolę nad "
        "jedzeniem, panicznie boję się przytyć, strach przed przytyciem, panika że przytyję, lęk przed wagą, lęk "
        "przed przytyciem, boję się że przytyję, boję się każdego kęsa, boję się tłuszczu, nienawidzę siebie po "
        "jedzeniu, wyrzuty sumienia po jedzeniu, brzydzę się sobą, obrzydzenie do ciała, obrzydzenie do siebie, "
        "nienawidzę swojego brzucha, nie mogę na siebie patrzeć, ważę się dwadzieścia, ważę się kilka razy, ważę się "
        "co godzinę, co godzinę staję na wagę, staję na wagę co, wchodzę na wagę co, omijam posiłki, opuszczam "
        "posiłki, pomijam posiłki, odmawiam jedzenia, nie pozwalam sobie jeść, zmuszam się żeby nie jeść, wymiotuję "
        "specjalnie, rzygam po, rzygam po jedzeniu, pozbywam się jedzenia, oddaję wszystko co zjem, palcami wywołuj*, "
        "przeczyszczam się, tabletki przeczyszczające, xenna, senes, odwadniając*, tylko wodzie, na samej wodzie, na "
        "kawie i gumie, kawie i gumie, obżeram się i, obzeram sie, włosy wychodzą garściami, wlosy wychodza, "
        "garściami, rzygam specjalnie, boje sie jesc, glodze sie, głodówka, nie jem od, palec w gardło, nie jem od "
        "trzech, nie jem od dwóch, boję się utyć, objadam się i, wymiotuję po każdym, brzydzę się swojego ciała, "
        "obrzydzenie do swojego ciała, palce do gardla, dalej czuję się gruba, dalej czuje sie gruba, sama woda od, "
        "przeczyszczające, tyję od, tyje od, włosy wypadają, wlosy wypadaja, 300 kalorii, 500 kalorii, zwracam "
        "wszystko, brzydzę się, brzydze sie, brak okresu"
    ),
    C.ON_PURPOSE: (
        "specjalnie, celowo, umyślnie, żeby schudnąć, zeby schudnąć, żeby nie przytyć, żeby waga, palce, "
        "palcami, dobrowolnie, po kryjomu, naumyślnie, żeby zrzucić, zeby waga"
    ),
    C.MEAL: (
        "po jedzeniu, po obiedzie, po kolacji, po posiłku, po posiłkach, po każdym posiłku, "
        "po śniadaniu, jak zjem, obiad, kolacj*, każdym jedzeniu"
    ),
    C.NOT_EATEN: (
        "nie jem, nie jadłem, nie jadłam, nie jadlam, nie jadlem, nic nie jadł*, nic nie zjadł*, "
        "bez jedzenia, nic nie jem, nie je, nie tknęłam jedzenia, nie tknąłem jedzenia, o samej wodzie, "
        "na samej wodzie, nic w ustach, nie tknęłam nic, nic nie tknęłam, nic nie tknąłem, "
        "nic w ustach nie, nie miałam nic w ustach, nie miałem nic w ustach, bez posiłku, "
        "nic nie przełknęł*, poszczę, poszcze, tylko piję wodę"
    ),
    C.FOR_DAYS: (
        "od, dni, dzień, poniedział*, wtork*, środy, czwartk*, piątk*, sobot*, niedziel*, tygodnia, tydzień, wag*, "
        "ważen*, przed pomiarem, schudn*, doby, zeszłym tygodniu, zeszlym tygodniu, ubiegłym tygodniu, niedawno, "
        "ostatnio, w tym miesiącu, w tym roku, od lata"
    ),
    # swelling
    C.SWOLLEN: (
        "spuch*, opuch*, napuch*, popuch*, puchn*, puchnie, puchną, puchły, puchla, puchł*, obrzęk*, "
        "obrzmi*, nabrzmi*, obrzmiał*, jak bania, jak balon, balon, wzdęt*, opuchlizn*, opuchn*, nalan*, "
        "zapuchn*, grub*, twarda i gruba, jak kłoda, jak bułka, jak słoń, opuchł*, wielka, wielkie, "
        "podwójn*, napęczni*, nabrzmiał*, jak pączek, obrzmien*"
    ),
    C.BIGGER: (
        "grub*, grubsz*, większ*, dwa razy większ*, dwa razy grubsz*, szersz*, but nie wchodzi, "
        "nie mieści się w but, nie mieszczę się w but, nie wchodzi w but, grubsza niż"
    ),
    C.HOT_OR_RED: (
        "czerwona i gorąca, gorąca i czerwona, gorąca i boli, ciepła, ciepła i boli, gorąc*, czerwon*, "
        "rozpalon*, zaczerwienion*, ciepł*, sina, siny, zasinion*, bolesn*, pali, napięt*, gorąca"
    ),
    C.CLOT: "zakrzep*, skrzep w, skrzeplin*, zakrzepic*, zator*",
    C.CLOSING: (
        "zacisk*, zaciska, ściska*, zwęż*, zamyk*, puchn*, opuch*, przełknąć, przełykać, "
        "nie mogę przełknąć, zatyka*, zaciśnięt*, zamknęł*, blokuj*, dławi*, zwężon*, kluch*, gula, "
        "nie przełknę, nie mogę przełykać, śliny, ściśnięt*, zwężone, zamyka, zablokowan*, obrzęk*, "
        "spuch*"
    ),
    C.ALLERGY: (
        "anafila*, wstrząs*, reakcja alergiczn*, reakcję alergiczn*, reakcji alergicznej, reakcja uczuleniowa, "
        "alergi* napad, atak alergii, pokrzywka na całym, epipen*, adrenalin*, wstrząs anafilaktyczny, "
        "uczulenie na, oczy tak spuchły, spuchły oczy, głos piskliwy, gardło się zwęża, gardlo sie zweza, "
        "gardło się zaciska, gardło puchnie, gardło mi spuchło, język puchnie, język mi puchnie, język spuchł, "
        "usta puchną, usta spuchły, twarz spuchła, twarz mi spuchła, cała w bąblach, cały w bąblach, "
        "reakcja alergiczna, pokrzywka wszędzie, szyja nabrzmiała, szyja spuchła, nie mogę przełykać, "
        "wszystko swędzi i, twarz mi puchnie, twarz puchnie, gardło mi puchnie, gardło spuchło, wargi puchną, "
        "wargi spuchły, spuchły mi wargi, powieki spuchły, bąble na całym, wysypka na całym ciele i, "
        "nie mogę przełknąć, zamyka mi się gardło, uczulenie silne, silna alergia, ampułkostrzykawk*, "
        "wyglądam jak ropucha, wygladam jak ropucha, jak ropucha"
    ),
    C.RASH: (
        "wysypk*, pokrzywk*, bąble, bąbli, swędzi mnie całe, swędzi całe, swędzi wszystko, "
        "czerwone plamy, plamy na całym, plam* na ciele, wysypało mnie, obsypało mnie, zsypało mnie, "
        "krosty na całym, cały czerwony i swędzi, cała czerwona i swędzi, świąd całego"
    ),
    C.TRIGGER: (
        "osa, osy, osie, osę, pszczoł*, szerszeń, szerszenia, użądl*, ukąsz*, ukąsił*, ugryzł*, orzech*, orzeszk*, "
        "krewetk*, owoce morza, antybiotyk*, penicylin*, amoksycylin*, nowym leku, nowy lek, nowej tabletce, "
        "nowej tabletki, nowe tabletki, nowych tabletkach, zastrzyk*, szczepion*, jaj*, sezam*, migdał*, selera, "
        "selerem"
    ),
    # exercise
    C.NAUSEA: (
        "mdłości, nudności*, mi niedobrze, niedobrze mi, niedobrze, mdli*, zemdliło, "
        "zbiera mi się na wymioty, zbiera na wymioty, chce mi się wymiotować, chce mi się rzygać, "
        "żołądek podchodzi, podchodzi do gardła, mdlił*, cofa mi się, wymioty zbierały"
    ),
    C.FATIGUE: (
        "nietypowe zmęczenie, niezwykłe zmęczenie, nagłe zmęczenie, nagle zmęczon*, nagłe wyczerpanie, "
        "nienaturalne zmęczenie, dziwne zmęczenie, skrajne wyczerpanie, nagle opadłem z sił, "
        "nagle opadłam z sił, opadłam z sił, wykończony bez powodu"
    ),
    C.SHARP: (
        "ostr*, nagł*, nagle, skręc*, naciągn*, naciąg*, naderwa*, zerwa*, strzel*, strzelił*, chrupn*, "
        "chrupnęł*, trzasn*, pękł*, przeskoczył*, pociągn*, zwichn*, kłuj*, wykręc*, ukłu*, zabolał*, "
        "przeszył*, blokuj*, zablokow*, łupnęł*, nadwyręż*, przeciąż*, szarpn*"
    ),
    C.INJURY: (
        "skręciłem, skręciłam kostkę, naderwałem, naderwałam, naciągnąłem, naciągnęłam, nadciągnął*, lumbago, "
        "postrzał, rwa kulszowa, zakwas* nie, skurcz w łydce, naciągnięcie, zwichnięcie, skręcenie, zerwałem, coś "
        "strzeliło, cos strzelilo, łąkotka mi poszła, poszła mi łąkotka, łąkotka poszła, łękotka poszła, łękotka mi "
        "poszła, więzadło poszło, poszło mi więzadło, więzadło mi poszło, ścięgno poszło, poszło mi ścięgno, zerwałam "
        "więzadło, zerwałem więzadło, zerwałam ścięgno, zerwałem ścięgno"
    ),
    C.EFFORT: (
        "przy wstawaniu, podczas, ćwicz*, cwicz*, test*, marsz*, spacer*, trening*, przysiad*, po ćwiczeniach, przy "
        "chodzeniu, przy schylaniu, nowy, nowe, pierwszy raz, od wczoraj, bieg*, gimnasty*, rozciągan*, wstawani*, "
        "wcześniej nie, na rowerze, rower*, po teście, teście, w teście"
    ),
    # falls, sugar, water
    C.HEAD: (
        "głowa, głowę, głowy, głową, łeb, łbem, skroń, skron, czoło, czołem, potylica, potylicę, potylicą, "
        "tył głowy, czaszka, czaszkę, w głowę"
    ),
    C.HIT: (
        "uderzył*, walnął*, walnęł*, stuknął*, stuknęł*, rąbnął*, rąbnęł*, przywalił*, grzmotnął*, huknął*, "
        "huknęł*, trzasnął*, rozbit*, rozbił*, rozwalił*, pęknięt*, rozcię*, guz, upadł* na, wyrżnął*, "
        "wyrżnęł*, przydzwonił*, palnął*, palnęł*"
    ),
    C.HEAD_INJURY: (
        "wstrząs mózgu, wstrząśnienie mózgu, źrenica ogromna, jedna źrenica, źrenica większa, źrenice różne, "
        "różne źrenice, uraz głowy, pęknięta czaszka, rozbita głowa, głowa rozbita, rozbiłem głowę, rozbiłam głowę, "
        "złamana czaszka, w skroń, na głowę, na glowe, uderzyłam się w głowę, uderzyłem się w głowę, "
        "walnęłam głową, walnąłem głową, głową o, glowa o, guz na głowie, rana na głowie, krew z ucha, "
        "głowa krwawi, tył głowy krwawi, guz jak jajo, grzmotnęłam czerepem, grzmotnelam czerepem, "
        "grzmotnąłem łbem, rozbiłem łeb, rozbilem leb, bez kasku"
    ),
    C.THINNERS: ("rozrzedzenie, rozrzedzające, warfaryn*, acenokumarol, sintrom, eliquis, xarelto, przeciwzakrzepow*"),
    C.SUGAR: "cukier, cukry, cukru, glukoza, glukozy, glikemia",
    C.SUGAR_LOW: ("niski, niskie, za niski, spadł, spada, poleciał, leci w dół, leci na łeb, zjechał, na dole"),
    C.HYPO: (
        "niedocukrz*, hipoglikemi*, hipo, hipka, spadek cukru, cukier mi spadł, hipoglik*, cukier spada, "
        "cukier niski, cukier nisko, niski cukier, cukier poleciał, hipoglikemia, spadek glukozy, "
        "mam niski cukier"
    ),
    C.INHALER: (
        "inhalator, wziewki, ventolin, salbutamol, astma, niebieski, wziewy, psikacz, dmuchawka, berodual, astmy, "
        "astmę, astmie, astmą, wziewów, inhalatora"
    ),
    C.NO_USE: (
        "nie działa, nic nie pomaga, nie pomaga, nic nie daje, nie daje ulgi, nie skutkuje, atak, masakra, skończył "
        "się, pusty, bez efektu, silny, silna, atak astmy, ataki astmy, ataków astmy, napad astmy, napady astmy, "
        "napadów astmy, ataku astmy"
    ),
    C.PLAN: "plan, zaplanowane, zaplanowałem, zaplanowałam, wszystko gotowe, obmyślone",
    C.BRINK: (
        "na moście, na dachu, na parapecie, na torach, na krawędzi, nad przepaścią, na barierce, "
        "za barierką, na moscie, na wiadukcie"
    ),
    C.URINATE: "wysikać, wysikac, sikać, siku, oddać moczu, wysiusiać, oddac moczu",
    C.GROIN: "krocze, kroczu, krocza, pachwina, pachwinie, między nogami, miedzy nogami, intymne",
    C.FAST_RATE: ("sto pięćdziesiąt, sto sześćdziesiąt, sto siedemdziesiąt, sto osiemdziesiąt, dwieście na minutę"),
    C.METER: "glukometr, aparat, sensor, libre, urządzenie",
    C.SHAKY: "trzęs*, trzes*, telepie, drż*, drze, pocę, poce, pot, poty, spocon*, dygot*",
    # a cry for help
    C.CRY: (
        "ratunku, na pomoc, sos, ratujcie, ratuj, ratuj mnie, potrzebuję karetki, wezwijcie pomoc, wezwij pomoc, "
        "potrzebuję natychmiast pomocy, potrzebuję pilnie pomocy, potrzebuję pilnej pomocy, potrzebna pilna pomoc, "
        "potrzebna pomoc, nagły wypadek, ratujcie mnie, potrzebny lekarz, upadłem i nie mogę wstać, upadłam i nie "
        "mogę wstać, przewróciłem się i nie mogę, przewróciłam się i nie mogę, leżę i nie mogę wstać, nie mogę "
        "wstać z podłogi, nie mogę się podnieść z podłogi, leżę na podłodze, przyjedźcie, przyjedźcie szybko, "
        "przyjdźcie szybko, niech ktoś szybko, niech ktoś przyjdzie szybko, szybko kogoś, wezwijcie karetkę, wezwij "
        "karetkę, trzeba karetki, potrzebuję pogotowia, pomocy ratunku, potrzebuje pogotowia, karetkę proszę, dzwoń "
        "na 112, dzwońcie na 112, dzwon po pogotowie, zadzwoń po karetkę, zadzwońcie po, przyślijcie karetkę, niech "
        "ktoś przyjedzie, zabierzcie mnie do szpitala, potrzebuję lekarza natychmiast, niech ktos zadzwoni, ktoś "
        "zadzwoni po, zadzwoń na pogotowie, potrzebuję lekarza, potrzebna karetka, karetka szybko, karetkę szybko, "
        "karetki potrzebuję, muszę do szpitala, zawieźcie mnie, pomocy nie mogę, nie mogę się podnieść, pomocy "
        "pomocy, zadzwońcie do szpitala, niech ktoś zadzwoni, jestem sama i się boję, jestem sam i się boję"
    ),
    C.HELP_ME: (
        "pomocy, pomóż mi, pomóżcie, pomozcie, pomóż, pomóżcie mi, niech mi ktoś pomoże, "
        "potrzebuję pomocy, potrzebuje pomocy, potrzebuję kogoś, niech ktoś przyjdzie, "
        "niech ktoś przyjedzie, potrzebuję lekarza, niech ktoś mi pomoże"
    ),
    C.URGENT: (
        "szybko, natychmiast, teraz, już, pilnie, pilne, zaraz, !!, na podłodze, sam w domu, sama w domu, "
        "jestem sama, jestem sam, nie mogę wstać, nie dam rady wstać, nie mogę się podnieść, błagam, "
        "upadłem, upadłam, przewróciłem się, przewróciłam się, źle się czuję, fatalnie się czuję, "
        "coś jest nie tak, coś się ze mną dzieje, bardzo źle, 🚑, 🆘, prędko, umieram, okropnie się czuję, "
        "juz"
    ),
    C.CALL: (
        "wezwij*, wezw*, dzwoń*, dzwon*, zadzwoń*, zadzwon*, przyślij*, przyslij*, sprowadź*, wołaj*, "
        "potrzebuj*, potrzebn*, wzywaj*, wzywam, zawołaj*, przyjedź*"
    ),
    C.AMBULANCE: (
        "karetk*, karetkę, pogotowi*, 112, 999, ratownik*, ambulans*, erka, erkę, lekarza natychmiast, lekarza szybko"
    ),
    C.DYING: (
        "umieram, zaraz umrę, umrę zaraz, chyba umieram, konam, czuję że umieram, odchodzę z tego, zdycham, "
        "zaraz zemrę, chyba schodzę, schodzę, to koniec ze mną, to już koniec, czuję że odchodzę, "
        "odchodzę z tego świata, odchodzę na zawsze, o mało nie umarłem, o malo nie umarlem, o mało nie umarłam, "
        "o malo nie umarlam, prawie umarłem, prawie umarłam, mało nie umarłem"
    ),
    # how it is said
    C.NO: (
        "nie, bez, żadn*, nigdy, ani, brak, braku, nic, żaden, zaden, wcale nie, wcale, ni, zero, "
        "bynajmniej, nikt, nie trzeba, nie ma potrzeby, nie potrzebuję, nie potrzeba, nie mam żadn*"
    ),
    C.NO_AFTER: (
        "nie, brak, żadn*, nigdy, nic, ani, nie ma, zero, wcale, wcale nie, ani trochę, nie stwierdzam, ani razu, ni "
        "ma, ani śladu, ani kropli, nie miałam, nie miałem, nie było, nie miewam, nie zauważyłam, nie zauważyłem, nie "
        "występuje, nie występują, nie wystąpiły, nie miałam ani razu, nie miałem ani razu, nie ma sprawdzałem, nie "
        "ma sprawdzałam, nie było sprawdzałem, nie było sprawdzałam, nie mam na szczęście, nie mam ani na, nie mam "
        "wcale, nie mam w ogóle, nie mam ani na schodach, nie mam ani w nocy, nie miałam ani na chwilę, nie miałem "
        "ani na chwilę"
    ),
    C.BETWEEN: (
        "mam, miałem, miałam, mieć, jest, są, był, było, była, były, mnie, mi, się, w, we, z, ze, na, żadn*, już, "
        "dziś, dzisiaj, teraz, odczuwam, odczuwałem, odczuwałam, czuję, czułem, czułam, objaw*, oznak*, jakich*, ma, "
        "występuj*, nic, tego, tych, mojej, moim, moja, mój, ogóle, nowych, obecnie, aktualnie, lewej, prawej, żaden, "
        "miewam, doświadcz*, ten, ta, takich, moje, wystąpi*, mie, sie, po, do, dzis, spoko, dalej, tym, wcale, też, "
        "żadne, żadnego, żadnej, żadnych, zadnych, zadnej, razu, ani, miał*, mial*, objawów, problem*, kłopot*, "
        "kłopotów, problemów, odczuć, uczucia, uczucie, zauważ*, widzę, wystąpił*, pojawi*, tydzień, tygodniu, "
        "ostatnio, razie, te, to, jakiegoś, jakiejś, jakichś, jakiś, jakaś, nawet, raz, myśli, ochoty, zamiaru, "
        "planów, o, jednego, jednej, tak, jak, a, mnie nic, nic mnie, nie, niczego, takiego, w ogóle, specjalnie, "
        "obie, obu, zbytnio, za, bardzo, kropli, śladu, cienia, jedno, choćby, wzywać, dzwonić, ostatnich, dniach, "
        "dni, chwili, tej, powodu, trochę, lekkich, mocnych, silnych, głowie"
    ),
    C.AND: "i, oraz, a, &",
    C.NOR: "ani, lub, albo, czy, ni",
    C.BUT: "ale, lecz, jednak, natomiast, chociaż, choć, za to, tylko że, oprócz, poza tym że",
    C.CLAUSE: ("tylko, bo, ponieważ, gdyż, więc, dlatego, kiedy, gdy, jak, że, czemu, dlaczego, odkąd, żeby"),
    C.FINE: (
        "ok, okej, dobrze, normaln*, w porządku, w porzadku, super, idealn*, spokojn*, równo, rowno, regularn*, bez "
        "zmian, bez problem*, git, świetnie, prawidłow*, zdrow*, czyst*, gra, zadowol*, szczęśliw*, dumn*, fajnie, "
        "przyjemn*, miło, cieszę się, jak u sokoła, jak u sokola, jak sokół, jak sokol, jak u młodego boga, jak u "
        "mlodego boga, jak młody bóg, jak mlody bog, jak w zegarku, jak zegarek, jak ryba, jak nowo narodzon*, jak "
        "dziecko, jak suseł, jak kamień spał*, jak nowy, jak nowa, super zabawa, świetna zabawa, fajna zabawa, fajnie "
        "było, cudnie, cudownie, pięknie, wyraźnie, prosto, prosta, sprawne, uwielbiam, wróciło do normy, wraca do "
        "normy, wrócił do normy, wróciła do normy, przyjemnie, ale przyjemnie"
    ),
    C.PAST: (
        "zeszłym roku, zeszłego roku, rok temu, lat temu, lata temu, miesięcy temu, miesiące temu, miesiąc temu, w "
        "przeszłości, kiedyś, dawniej, dzieciństwie, dawno, ubiegłym roku, młodości, przed operacją, zeszłego lata, "
        "zeszłej zimy, 19##, 20##, dziesięć lat, lat, kiedys, dziecinstwie, jako nastolat*, jako dziecko, jako "
        "dzieciak, jako chłopak, jako dziewczyn*, jako student*, za studiów, na studiach, w liceum, w szkole, w "
        "podstawówce, stare dzieje, nigdy więcej, już nigdy, wyleczon*, w wojsku, przed laty, za młodu, za dzieciaka, "
        "w latach, dawno temu, dawno wyleczony, po ablacji, w tamtych czasach, 20 lat, minęło lat, zamierzchł*, po "
        "porodzie, dekad*, przed zabiegiem, w tamtym roku, przeszłość, kawał czasu, po rozwodzie, jak miałam, jak "
        "miałem, gdy miałam, gdy miałem, kiedy miałam, kiedy miałem, jak byłam, jak byłem, gdy byłam, gdy byłem, "
        "kiedy byłam, kiedy byłem, za komuny, w osiemdziesiąt*, w dziewięćdziesiąt*, przed ślubem, przy porodzie, "
        "przy pierwszym dziecku, przy drugim dziecku, w zamierzchłych, w technikum, w przedszkolu, na kolonii, na "
        "koloniach, od tamtego roku, odtąd nic, odtąd spokój, od lat nic, od lat spokój, więcej się nie powtórzyło, "
        "nie powtórzyło się, nie wróciło, już za mną, mam to za sobą, za sobą, dawne czasy, dawne dzieje, stara "
        "sprawa, ze dwadzieścia lat, ładnych parę lat, parę lat temu, kilka lat temu, przed covidem, przed emeryturą, "
        "kiedyś w, po dwudziestce, inne życie, inne zycie, w 88, wgniecenie zostało, jak miałem 7, jak mialem 7, jak "
        "byłam mała, jak byłem mały, wyrosłam z tego, wyrosłem z tego, wiosną 2016, w 1998, na wakacjach w, raz w "
        "życiu, w wieku 19, byłam w ciąży, w pierwszej ciąży, w drugiej ciąży, w poprzedniej ciąży, w ciąży z synem, "
        "w ciąży z córką, mając ## lat, majac ## lat, jak miałem ##, jak mialem ##, jak miałam ##, w wieku ##, za "
        "dziecka, na wojsku, w rodzinie, u nas w rodzinie, dwa tygodnie temu, trzy tygodnie temu, tygodni temu, "
        "tygodnie temu, parę tygodni temu, kilka tygodni temu, zeszłym miesiącu, w zeszłym miesiącu, zeszłego "
        "miesiąca, ubiegłym miesiącu, w ubiegłym miesiącu, ubiegłego miesiąca, poprzednim miesiącu, minionym "
        "miesiącu, w tamtym miesiącu, stare porażenie, od tego czasu spokój, od tego czasu nic, od tego czasu nie, od "
        "tego czasu dobrze, od tego czasu ok, od tamtej pory spokój, od tamtej pory nic, od tamtej pory nie, od "
        "tamtej pory dobrze, od tamtej pory ok, od tamtego czasu nic, od tamtego czasu spokój, od tamtego czasu nie, "
        "miałam .. na wiosnę, miałam .. wiosną, miałam .. latem, miałam .. jesienią, miałam .. zimą, miałem .. na "
        "wiosnę, miałem .. wiosną, miałem .. latem, miałem .. jesienią, miałem .. zimą, przeszłam .. na wiosnę, "
        "przeszłam .. wiosną, przeszłam .. latem, przeszłam .. jesienią, przeszłam .. zimą, przeszedłem .. na wiosnę, "
        "przeszedłem .. wiosną, przeszedłem .. latem, przeszedłem .. jesienią, przeszedłem .. zimą, dostałam .. na "
        "wiosnę, dostałam .. wiosną, dostałam .. latem, dostałam .. jesienią, dostałam .. zimą, dostałem .. na "
        "wiosnę, dostałem .. wiosną, dostałem .. latem, dostałem .. jesienią, dostałem .. zimą"
    ),
    C.NOW: (
        "teraz, dziś, dzis, dzisiaj, znowu, znów, nadal, wciąż, w tej chwili, obecnie, właśnie, od rana, "
        "od godziny, od wczoraj, od kwadransa, przed chwilą, przed chwila, już kwadrans, w tym momencie, "
        "akurat, dalej, od pół godziny, cały czas, od paru godzin, od kilku godzin, zaraz"
    ),
    C.JUST_NOW: (
        "przed chwilą, przed chwila, przed momentem, właśnie, minut temu, minutę temu, minuty temu, "
        "dosłownie, parę minut, chwilę temu, 5 minut, dopiero co"
    ),
    C.EARLIER: ("dziś rano, rano, wcześniej dziś, w południe, godzinę temu, po śniadaniu, godziny temu"),
    C.SETTLED: (
        "przeszło, przeszedł, minęło, minął, minęła, minęły, ustąpił*, już dobrze, już lepiej, zniknął, "
        "zniknęło, uspokoiło, już nie, ustał*, przeszły, przeszła, puściło, ustąpiło, ustąpił, "
        "już przeszło, juz przeszlo"
    ),
    C.IMAGINED: (
        "co jeśli, co gdyby, jeśli, jeżeli, gdyby, boję się że dostanę, boję się zawału, boję się udaru, obawiam się, "
        "ryzyko, jakie są, jakie objawy, objawy, jak rozpoznać, jak poznać, zapobiegać, zapobiec, uniknąć, co to "
        "jest, czytałem, czytałam, śniło, śnił*, czy to normalne, w razie, nie sądzę, nie wydaje, artykuł, mógłby, "
        "mogłoby, czy może, czy można, czym jest, co robić przy, z ciekawości, ciekaw*, różnica między, czy od, czy "
        "po, jak się objawia, po czym poznać, czy to groźne, czy jest groźny, co oznacza, od ilu, poniżej ilu, "
        "powyżej ilu, od jakiego poziomu, od jakiej wartości, uznaje się, jaka jest norma, częsty skutek uboczny, "
        "częste skutki uboczne, pytam ogólnie, tak ogólnie pytam, pytam z ciekawości, czy zawroty, czy częste są, czy "
        "to normalne że po"
    ),
    C.OTHERS: (
        "mama, mamy, mamę, matka, matki, matkę, tata, taty, tatę, ojciec, ojca, mąż, męża, żona, żony, żonę, syn, "
        "syna, córka, córki, córkę, przyjaciel*, przyjaciół*, kolega, koledze, koleżank*, sąsiad*, brat, brata, "
        "siostra, siostry, siostrę, babci*, dziad*, wuj*, cioci*, ciotk*, pies, kot, ktoś, ludzie, on, ona, kuzyn*, "
        "jego, jej, partner*, mamie, mamą, mamo, mamusi*, matk*, tacie, mężowi, maz, żon*, zona, syn*, córk*, cork*, "
        "przyjaci*, koleg*, koledz*, kolezank*, sasiad*, brat*, siostr*, babk*, psa, kota, ktos, teść, narzeczon*, "
        "wnuk*, wnucz*, dziecko, dziecka, dziecku, bobas, mały, mała, szwagier, szwagra, szwagierk*, bratow*, zięć, "
        "synow*, chłopak, dziewczyn*, pan, pani, współlokator*, facet, kobiet*, gość, klient*, pacjent*, szef*, "
        "stary, stara, znajom*, chrześni*, niani*, opiekun*, mężczyzn*, komuś, jeden gość, jakiś facet, teściow*, "
        "teścia, teściu, teściem, teściowi, teściów, teściami"
    ),
    C.ELSEWHERE: (
        "miał, miała, mial, miala, szpital*, klinic*, intensywnej, oiom*, zeszłym roku, zeszlym roku, w zeszły, "
        "zeszł*, w ubiegł*, wczoraj, przedwczoraj, tydzień temu, miesiąc temu, zmarł*, umarł*, nie żyje, pogrzeb*, "
        "świeć panie, od dziecka, od urodzenia, leczy się, leczy sie, w irlandii, za granicą, w pracy, w niedzielę, w "
        "sobotę, w piątek, w czwartek, w środę, we wtorek, w poniedziałek, już dobrze, już w domu, wyszł* ze "
        "szpitala, rehabilitac*, sanatori*, pod opieką, w krakowie, w kościele, na urlopie, po zawale, dochodzi do "
        "siebie, ma się lepiej, ma się dobrze, z pracy, na kamerce, na kamerze, jest u siebie, w innym mieście, "
        "mieszka daleko, napisała że, napisał że, dzwoni z, dzwonił z, dzwoniła z, dzwonił że, dzwoniła że, pisze z, "
        "pisał z, pisała z, w trasie, jest w trasie, z działki, telefonuje z"
    ),
    C.MINE: "ja, mnie, mi, mam, mój, moja, moje, moim, mojej, jestem, czuję, sobie, czuje",
    C.DONT_KNOW: (
        "nie wiem, co, hmm, trudno powiedzieć, trudno powiedziec, jak to, w jakim sensie, i tak i nie, nie "
        "rozumiem, nie rozumiem pytania, o co chodzi, ale o co, jakie pytanie, nie mam pojęcia, porozmawiać z, że "
        "co, nie zapomnij, nie zapominaj, nie zapomnij o mnie, nie zapomnijcie, nie martw się, nie ma sprawy, nie "
        "ma problemu, nie szkodzi"
    ),
    C.FILLER: (
        "proszę, prosze, bardzo, tak, taki, taka, takie, jakiś, jakaś, jakieś, jakies, trochę, troche, "
        "strasznie, okropnie, mocno, mi, mnie, się, sie, już, juz, jeszcze, też, tez, no, o, oj, ała, "
        "kurcze, kurde, cholera, chyba, nagle, właśnie, teraz, dziś, dzis, znowu, ciągle, całkiem, "
        "zupełnie, naprawdę, po prostu, aż, to, ten, ta, te, jest, w, we, z, ze, na, i, a, sobie, mam, "
        "mój, moja, moje, mojej, normalnie, jakby, dość, dosyć, cały, cała, jak, że, od, do, za"
    ),
}

ANSWERS: dict[Answer, str] = {
    Answer.YES: (
        "od wczoraj, od rana, od dziś, od wczorajszego wieczora, "
        "tak, no, no tak, tak teraz, w tej chwili, u mnie, dzieje się, mnie to dotyczy, teraz, jasne, "
        "cały czas, trzyma, dalej boli, dalej, niestety tak, yhm, ta, jo, bez przerwy, od godziny, taa, "
        "taaa, tak tak, oczywiście, pewnie, zgadza się, owszem, dokładnie, nadal, wciąż, ciągle, "
        "jest gorzej, gorzej, coraz gorzej, nasila się, ja, to ja, mam, boli, zdecydowanie, mhm, aha, "
        "nie przestaje, nie przechodzi, nie mija, yes, jasne że teraz, dzieje sie, no pewnie, niestety, "
        "na pewno, jeszcze trwa, trwa, szybko, pomocy, "
        "od wczoraj, od rana, od dziś, od wczorajszego wieczora"
    ),
    Answer.HESITANT: (
        "chyba tak, chyba, no trochę, trochę, raczej tak, raczej, nie jestem pewna, nie jestem pewien, "
        "tak jakby, może i tak, może, coś tam jeszcze, coś jeszcze czuję, jeszcze czuję, możliwe, "
        "być może, prawdopodobnie, pewnie tak, wydaje mi się, zdaje się, mniej więcej, lekko, troszkę, "
        "odrobinę, poniekąd, jakby, niby tak, niby, przychodzi i odchodzi, raz tak raz nie, "
        "nie do końca przeszło, nie całkiem, nie całkiem przeszło, jeszcze nie do końca, "
        "nie minęło całkiem, słabiej ale, delikatnie, częściowo, coś w tym stylu, bywa, tak sobie, ciut, "
        "z grubsza, powiedzmy"
    ),
    Answer.NO: (
        "nie, niee, nie teraz, gdzie tam, skądże, skąd, absolutnie nie, nie nie, w żadnym razie, "
        "ani trochę, nic, nic się nie dzieje, nic mi nie jest, wcale nie, bynajmniej, w tej chwili nie, "
        "teraz nie, wszystko ok, wszystko dobrze, nigdy, a skąd, nope, niestety nie, raczej nie, "
        "broń boże, żadne"
    ),
    Answer.OVER: (
        "już przeszło, juz przeszlo, przeszło, minęło, było ale, skończyło się, się skończyło, puściło, "
        "dawno temu, to dawno, było, po wszystkim, jest dobrze, wtedy tak, już nie, juz nie, ustąpiło, "
        "wczoraj, rano było, wcześniej, kiedyś, lat temu, zniknęło, uspokoiło się, przeszła, już lepiej, "
        "już dobrze, już ok, odpuściło, miałam wcześniej, było wczoraj, ustało, już po, tydzień temu, "
        "było minęło, wróciło do normy, zelżało całkiem, samo przeszło, nie ma już"
    ),
    Answer.OTHER_PERSON: (
        "nie ja, nie mnie, chodzi o, u mojej, u mojego, siedzi przy mnie, nie o mnie chodzi, jest obok, "
        "obok mnie, z którym jestem, z którą jestem, ktoś inny, kto inny, nie u mnie, inna osoba, "
        "piszę za, piszę w imieniu, jestem przy nim, jestem przy niej, to nie ja, to mama, to tata, "
        "u niego, u niej, z nim, z nią"
    ),
    Answer.NOT_A_SIGN: (
        "żartowałem, żartowałam, żart, żartuję, powiedzenie, takie powiedzenie, źle mnie zrozumiałeś, "
        "źle zrozumiałeś, zrozumiałeś, zrozumiałaś, źle mnie, nieporozumienie, autokorekta, słownik, "
        "mówiłam o filmie, film*, to nie był żaden objaw, chodziło o mecz, mecz*, pytanie, "
        "tylko pytałem, tylko pytałam, pytałem, pytałam, literówka, pomyłka, pomyliłem, pomyliłam, "
        "przenośnia, w przenośni, metafora, nie dosłownie, przesadziłem, przesadziłam, serial, "
        "telewizj*, pralka, mówiłem o, mówiłam o, chodziło mi o, miałem na myśli, miałam na myśli, "
        "ironia, fałszywy alarm, taki zwrot, idiom, w żartach, dla śmiechu, piosenka"
    ),
}
