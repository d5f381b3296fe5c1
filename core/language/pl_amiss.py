"""Polish: how people tell that something is amiss; only asked about (`core.language.signs`)."""

from __future__ import annotations

from core.language.concepts import Concept as C

AMISS: dict[C, str] = {
    C.VITAL: (
        "mózg, umysł, pamięć, pamięci, myśli, wzrok, wzroku, widzenie, widzenia, równowag*, głos, głosu, "
        "przytomnoś*, świadomoś*, krążeni*, źrenic*, zrenic*, kręgosłup*, czaszk*, płuc*, pluc*, oskrzel*, żebr*, "
        "krew, krwi, oddech*, dech, oddychan*, powietrz*, mowa, mowy, mówieni*, słowa, słów, pół twarzy, puls, "
        "tętno"
    ),
    C.PART: (
        "nos, nosa, nosem, ucho, ucha, uchu, uszy, skóra, skóry, skórę, brzuch*, żołąd*, zolad*, jelit*, plecy, "
        "plecach, pleców, krzyż, kark*, szyj*, ramię, ramion*, ręka, ręki, rękę, ręką, ręce, rąk, reka, reke, reki, "
        "nog*, nóg, dłoń, dłoni, dłonie, palec, palca, palce, palców, stop*, żył*, zyl*, żylak*, zylak*, mięsień, "
        "mięśni*, pęcherz*, nerk*, jądr*, jadr*, jaj*, macic*, dziąsł*, zęby, zębami, zebami, ust*, warg*, ran*, "
        "rana, blizn*, szw*, stron*, bok, boku, ciał*, ciało, całe ciało, połowa ciała, pół ciała, kość, kości, "
        "biodr*, kolan*, bark*, łydk*, lydk*, goleń, golen*, uda, udo, udzie, żuchw*, szczęk*, policz*, powiek*, "
        "paznok*, mocz*, siku, kup*, stolec, język*, jezyk*, nadgarst*, kostk*, łok*, przełyk*"
    ),
    C.AMISS: (
        "pękł*, pekl*, pęka, pękają, rozerw*, rozerwał*, rozdar*, otworzył* się, otwarła się, rozesz* się, znikn*, "
        "znikł*, zgas*, gaśnie, gasnie, wyłączył*, wylaczyl*, przestał*, lodowat*, zimn* jak, zwisa*, wisi, opadł*, "
        "opadl*, opada, wykrzywi*, krzyw*, ślini*, slini*, ślina, kapie, leci mi z, cieknie, wycieka, sączy, leje "
        "się, leje sie, chlust*, tryska, tryskał*, strumieni*, jak z kranu, rop*, ropieje, piana, pieni, czarn*, "
        "czarne, sczerni*, sin*, sinie*, niebiesk*, fiolet*, biał* jak, blad* jak, żółt*, zolt*, spuch*, opuch*, "
        "puch*, nabrzmi*, jak balon, jak bania, wystaje, wystając*, zwichn*, złaman*, zlaman*, wykręc*, nie słucha*, "
        "nie slucha*, robi co chce, robi co chc*, robią co chc*, żyje własnym, nie moja, nie moje, nie działa*, nie "
        "dziala*, nie trzyma*, odmawia*, odmówił*, uginają, ugina*, uciekaj*, ucieka, załamuj*, martw*, obumarł*, "
        "drętwie*, zdrętwi*, dretwi*, zdretwi*, nie czuję, nie czuje, bez czucia, sparaliż*, sparaliz*, mrowi*, "
        "mrówki, trzęs*, trzes*, telep*, drga*, drgawk*, kurcz*, skurcz*, zesztywni*, tward* jak, jak deska, jak "
        "kamień, rozrywa*, rozdziera*, kłuje jak, noż*, nozem, jak nożem, nie do zniesienia, nie do wytrzymania, "
        "wyję, wyje z bólu, pali żywym, ogień, pali jak, parzy, spalon*, popar*, oparz*, poparz*, pęcherze, gnij*, "
        "zgni*, śmierdzi, zakaż*, zgorzel*, czerwona krecha, czerwona kreska, czerwona pręga, czerwona linia, "
        "czerwona smuga, rozcię*, rozcie*, przecię*, głęboko, gleboko, głęboki*, odcię*, obcię*, urwan*, wbity, "
        "wbił*, utknęł*, utknął, zaklinow*, wciąga, zapada*, zapadł*, wywróc*, wywrac*, nieruchom*, rozszerzon*, nie "
        "otwiera*, nie zamyka*, nie domyka*, krwawi*, we krwi, zakrwawi*, cał* czerwon*, zalan*, sztywniej*"
    ),
    C.ODD: (
        "dziwn*, dziwnie, źle, zle, nie tak, coś nie tak, niewyraźn*, niewyrazn*, zamazan*, rozmazan*, mgła, mgle, "
        "słabnie, slabnie, słabn*, zanika*, ginie, gin*, gubi*, ucieka*, traci*, tracę, odpływ*, odplyw*, grub*, "
        "zgrubi*, bełkot*, belkot*, plącz*, placz*, zamyka*, zamknę*, zaciska*, zacisn*, ścisk*, ścisn*, scisk*, "
        "scisn*, ściśn*, zatrzym*, staje, stanął, stanęł*, stanal, świszcz*, swiszcz*, gwiżdż*, gwizd*, rzęz*, "
        "rzezi, charcz*, bulgo*, chrap*, płytk*, plytk*, szybk*, krótk*, ciężk*, głośn*, chryp*, zachryp*, szum*, "
        "dudni*, łomoc*, lomoc*, wali, walił*, łup*, pulsuj*, mieszają, miesza*, pomiesza*, poplątan*, dusi*, "
        "dławi*, zgniat*, miażdż*, miazdz*, imadł*, pęka, pekni*, rozsadza, rozsadz*, eksplod*, wyskocz*, wyskak*, "
        "spada, siada*, brak, brakuje"
    ),
    C.AS_IF: (
        "jakby, jak by, jak gdyby, jak gdy, jakbym, jakbyś, jak z, jak po, jak w, jak u, jak od, jak na, niczym, "
        "zupełnie jak, wyglądam jak, wygladam jak, wygląda jak, wyglada jak, jak balon, jak ropucha, jak po pijaku, "
        "jak pijan*, jak galareta, jak z waty, jak z drewna, jak drewno, jak kamień, jak ogień, jak nóż, jak nożem"
    ),
    C.ONSET: (
        "nagle, naraz, raptem, znienacka, ni stąd ni zowąd, nagl*, z sekundy na sekundę, coraz gorzej, "
        "coraz bardziej, coraz mocniej, coraz gorsz*, coraz słab*, pogarsz*, pogorszy*, z minuty na minutę, "
        "w kółko, nie ustaje, nie ustępuje, nie przestaje, nie mija, nie przechodzi, bez przerwy, trzeci raz, "
        "czwarty raz"
    ),
    C.SCENE: (
        "wszystko, pokój, pokoju, pokoj, świat, swiat, ściany, sciany, sufit, podłoga, podloga, światło, światła, "
        "obraz, ekran, przed oczami, w oczach, dookoła, wokół"
    ),
    C.DIM: (
        "czarn*, czarno, ciemn*, ciemno, szar*, szaro, rozmaz*, rozmyw*, zamaz*, niewyraźn*, mleczn*, przechyl*, "
        "kołysz*, kolysz*, buja, wiruj*, kręci*, kreci*, rusza się, faluj*, podwójn*, podwojn*, dwoi*, blednie, "
        "tunel*, gwiazd*, mroczk*, plam*, punkt*, błysk*, blysk*, zygzak*, migocz*, mgła, mgle, mgly, zasłon*, "
        "zaslon*, rolet*, żaluzj*, kurtyn*, welon, cień, cien, zgas*, gaśnie, znikn*, znika, szpar*, dziurk*, "
        "mleczna szyba, pod wodą, pod woda, przez wodę, przez mgłę, przez mgle, iskr*, iskier*, pływa*, falow*, "
        "zniekształc*"
    ),
    C.DO: (
        "wstać, wstac, podnieść się, podniesc sie, ustać, ustac, stać, usiąść, usiasc, zejść z łóżka, "
        "wyjść z wanny, wstać z łóżka, dojść do, dojsc do, dojdę do, dojde do, dojść do telefonu, dojść do drzwi, "
        "dosięgnąć, dosiegnac, sięgnąć, przełknąć, przelknac, przełykać, utrzymać, otworzyć oczu, otworzyć oka, "
        "otworzyc oczu, utrzymać oczu, nie zasnąć, ruszyć, ruszyc, ruszać, poruszyć, poruszac, czuć, poczuć, "
        "opanować, przestać się trząść, przestac, przestać, zatamować, zatrzymać krwi, rozgrzać, rozgrzac, "
        "zgiąć karku, zgiąć głowy, obrócić głowy, skręcić szyi, otworzyć ust, zamknąć ust, otworzyć drzwi, "
        "otworzyc drzwi, otworzyć, przekręcić, przekrecic, odpowiedzieć, dobudzić, dobudzic, obudzić, obudzic, "
        "poznać, przypomnieć, przypomniec, utrzymać w ręce, trzymać, złapać, chwycić, iść, isc, chodzić, chodzic, "
        "iść prosto, stanąć na, zrobić kroku, wysikać, wysikac, siku, oddać moczu, uśmiechnąć, usmiechnac, gwizdać, "
        "skleić zdania, sklecić, dokończyć zdania, położyć się, leżeć na płasko, zobaczyć, widzieć, widziec"
    ),
    C.DREAD: (
        "coś jest nie tak, cos jest nie tak, coś jest bardzo nie tak, coś nie tak ze mną, coś się ze mną dzieje, "
        "cos sie ze mna dzieje, dzieje się coś złego, dzieje sie cos zlego, coś złego, cos zlego, "
        "bardzo dziwnie się, dziwnie się czuję, dziwnie sie czuje, fatalnie się czuję, fatalnie sie czuje, "
        "czuję się fatalnie, czuje sie fatalnie, bardzo źle się czuję, bardzo zle sie czuje, strasznie źle, "
        "strasznie zle, okropnie się, czuję się okropnie, słabo mi, slabo mi, robi mi się słabo, robi mi sie slabo, "
        "zrobiło mi się słabo, źle ze mną, zle ze mna, jest ze mną źle, kiepsko ze mną, coraz gorzej, umieram, "
        "umrę, umre, zaraz umrę, chyba umieram, boję się, boje sie, strasznie się boję, przerażon*, przerazon*, "
        "panik*, w panice, nie wiem co robić, nie wiem co robic, nie wiem co mam robić, co mam robić, przyjedźcie, "
        "przyjedzcie, przyjedź, przyjdź szybko, niech ktoś, niech ktos, niech przyjedzie, potrzebuję lekarza, "
        "potrzebuje lekarza, potrzebny lekarz, potrzebuję kogoś, muszę do szpitala, musze do szpitala, na sor, sor, "
        "pogotowi*, odpływam, odplywam, odlatuję, odlatuje, zaraz odlecę, zaraz padnę, zaraz zemdleję, "
        "tracę przytomność, trace przytomnosc, urwał mi się film, film mi się urwał, nie pamiętam jak, "
        "nie pamietam jak, nie pamiętam co, nie pamiętam nic, dziura w pamięci, luka w pamięci, nieprzytomn*, "
        "półprzytomn*, polprzytomn*, przysypia*, senn*, coraz bardziej śpiąc*, śpiąc*, spiac*, spać się chce, "
        "spac sie chce, otępia*, zamroczon*, nie kontaktuj*, majacz*, halucyn*, omam*, widzę rzeczy, słyszę głosy, "
        "slysze glosy, głosy każą, szczękam zębami, szczekam zebami, zębami szczękam, zebami szczekam, dreszcz*, "
        "trzęsę się cał*, trzese sie cal*, telepie mną, telepie mna, rozpalon*, zlan* potem, zlany potem, "
        "zlana potem, mokr* od potu, cał* mokr*, oblewa mnie pot, leje się ze mnie, zimny pot, zimne poty, "
        "blad* jak ściana, biał* jak ściana, blady jak, blada jak, szar* na twarzy, sine usta, "
        "zrobiłem coś głupiego, zrobiłam coś głupiego, zrobilem cos glupiego, zrobilam cos glupiego, głupstwo, "
        "glupstwo, coś strasznego, zrobić sobie krzywdę, zrobic sobie krzywde, zrobię sobie coś, zrobiłem sobie, "
        "zrobiłam sobie, tym razem głęboko, tym razem gleboko, za głęboko, z tym skończę, z tym skoncze, "
        "skończę z tym, skoncze z tym, nigdy tak, nigdy czegoś takiego, nigdy nie miałem, nigdy nie miałam, "
        "najgorszy ból, najgorszy bol, ból nie do, bol nie do, nie do wytrzymania, nie do zniesienia, "
        "zwijam się z bólu, zwijam sie z bolu, skręca mnie, wyję z bólu, płaczę z bólu, krzyczę z bólu, "
        "lecę na ziemię, lece na ziemie, nogi się uginają, nogi jak z waty, nogi mi odmawiają, nogi odmówiły, "
        "nie ustoję, nie ustoje, nie trzymam się na nogach, nie daję rady, nie daje rady, nie wytrzymam, "
        "dłużej nie wytrzymam, mam dość wszystkiego, na moście, na moscie, na dachu, na torach, przy torach, "
        "patrzę w dół, patrze w dol, patrzę na tabletki, beze mnie lepiej, lepiej beze mnie, beze mnie byłoby, "
        "nikt by nie tęsknił, nikt nie zauważy, jutro mnie nie będzie, jutro mnie nie bedzie, to koniec, żegnajcie, "
        "zegnajcie, żegnam, pożegna*, zadławi*, zadlawi*, zakrztusi*, dusz*, duszę się, dławi*, brak tchu, zawał*, "
        "zawal, udar*, wylew*, sepsa, sepsy, zatru*, truci*, chyba do szpitala, zawieźcie mnie, zawiezcie mnie, "
        "następne co pamiętam, następne co wiem, patrzę w sufit, patrze w sufit, leżę na podłodze, "
        "leze na podlodze, obcy ludzie, ludzie nade mną, ludzie nade mna, dookoła ludzie, podłoga ucieka, "
        "ziemia ucieka, nogi z waty, nogi jak z galarety, nogi miękkie, szumi w uszach, piszczy w uszach, "
        "dzwoni w uszach, dudni w uszach, wszystko daleko, jak z daleka, jakby z daleka, do kości, do kosci, "
        "kość widać, kosc widac, skóra schodzi, skora schodzi, płat skóry, żywe mięso, włosy wypadają, "
        "wlosy wypadaja, włosy garściami, nie kopie, nie rusza się, nie rusza sie, zadzwońcie do córki, "
        "zadzwoncie do corki, zadzwoń do córki, powiedzcie rodzinie, powiedz żonie, powiedz mężowi, "
        "zadzwońcie do szpitala, niech ktoś zadzwoni, niech ktos zadzwoni, ktoś może zadzwonić, wezwijcie, wezwij, "
        "kocham was, kocham was wszystkich, wybaczcie, przepraszam za wszystko, nie ma odwrotu, nie ma sensu, "
        "bez sensu to wszystko, po co to wszystko, mam plan, wszystko zaplanowane, tabletki na stole, "
        "tabletki na łóżku, tabletki przede mną, silnik włączony, rura wydechowa, zasnąć i się nie, "
        "zasnac i sie nie, zasnąć na zawsze, zniknąć, zniknac, chcę zniknąć, nigdy w życiu, jeszcze nigdy, "
        "całe ciało, cale cialo, od stóp do głów, wszystko boli, wszystko mnie boli, boli jak diabli, "
        "boli jak cholera, boli okropnie, boli strasznie, straszny ból, straszny bol, okropny ból, okropny bol, "
        "potworny ból, potworny bol, silny ból, silny bol, zapach acetonu, aceton, ciągle pić i, zapadnięte, "
        "nie jestem sobą, nie poznaję siebie, nie poznaje siebie, to nienormalne, to nie jest normalne, "
        "wysoka gorączka, wysoka goraczka"
    ),
    C.HELP_ALONE: (
        "pomóż mi, pomoz mi, pomóżcie mi, pomozcie mi, pomóżcie, pomozcie, pomocy, na pomoc, proszę o pomoc, "
        "prosze o pomoc, potrzebuję pomocy, potrzebuje pomocy, niech mi ktoś pomoże, niech ktoś pomoże, "
        "niech ktos pomoze, ratunku, ratujcie, ratuj, błagam pomóż, blagam pomocy, niech mi ktos pomoze"
    ),
    C.HAZARD: (
        "czad, czadu, czadem, tlenek węgla, tlenku węgla, ulatnia się gaz, ulatnia sie gaz, czuć gaz, czuc gaz, "
        "gaz się ulatnia, zapach gazu, porażeni* prądem, porazil* prad, poraził* prąd, poraziło prądem, "
        "kopnął prąd, kopnal prad, prąd mnie, prad mnie, oparz*, poparz*, wrzątk*, wrzatk*, gorący olej, kwas*, "
        "kret do rur, płyn do rur, trutk*, trucizn*, otru*, zatru*, muchomor*, żmij*, zmij*, ukąsi*, ukasi*, "
        "ugryzł*, pogryzł*, prawie utonął, prawie się utopił*, topi*, potrącił*, potracil*, dźgnął, pchnął nożem, "
        "postrzel*, napadł*, dusił mnie, bije mnie, pobił*, pali się, pożar*, pozar, dym wszędzie, udar słoneczn*, "
        "udar cieplny, przegrza*, hipotermi*, odmroż*, odeszły wody, wody odeszły, odeszly wody, "
        "dziecko się nie rusza, dziecko nie rusza, nie czuję ruchów, pozamaciczn*, piła łańcuchowa, piłą, "
        "szlifierk*, bateria guzikowa, połknął, połknęł*, polknal, polknela, adrenalin*, ampułkostrzykawk*, epipen, "
        "anapen, jext, wybielaczem, wypadek samochodowy, miałem wypadek, miałam wypadek, mialem wypadek, grzybów, "
        "po grzybach, zjadłem grzyby, wychłodzenie, wychłodzon*, połknął baterię, polknal baterie, połknęła, "
        "przejechał mnie, przejechalo mnie, przejechał mi"
    ),
    C.FALL: (
        "upad*, spad*, zlec*, zleciał*, przewróci*, przewroci*, wywróci*, wywroci*, gleba, wyrżn*, wyrzn*, "
        "grzmotn*, walnęł*, walnął, walnal*, walnel*, pośliz*, posliz*, potkn*, runął, runęł*, runal, rąbn*, fikn*, "
        "wyglebi*"
    ),
    C.FALL_FROM: (
        "drabin*, schod*, schodów, dach*, koni*, rower*, hulajno*, motor*, motocykl*, kask*, głową w dół, głowa, "
        "głow*, glow*, drzew*, balkon*, rusztowan*, okn*, mur, na plecy, na głowę, na twarz, na potylicę, łeb, "
        "czerep*, krawężnik*, kraweznik*, wann*, prysznic*, umywalk*, lodzie"
    ),
    C.MEDICINE: (
        "lek, leki, leków, lekow, lekarstw*, dawk*, pudełk*, kasetk*, organizer*, plaster*, plastry, przeciwból*, "
        "nasenn*, morfin*, tramal*, tramadol*, metotreksat*, digoksyn*, betabloker*, steryd*, paracetamol*, apap*, "
        "ibuprofen*, ibuprom*, aspiryn*, acenokumarol*, warfaryn*, blister*, listek, antydepresant*, psychotrop*, "
        "opakowani*, zastrzyk*, kropl*, syrop*"
    ),
    C.MISUSE: (
        "pomyli*, pomylił*, nie te, zły, złe, zła dawk*, zamieni*, przez pomyłkę, przez pomylke, niechcący, "
        "niechcacy, opróżni*, oprozni*, wszystkie, całe opakowanie, cale opakowanie, cały listek, caly listek, "
        "cał* tydzień, na raz, naraz, za jednym, tygodniow*, męża, meza, żony, zony, psa, po psie, na to, popił*, "
        "popil*, z wódką, z wodka, z winem, z alkoholem, z piwem, za dużo, za duzo, podwójn*, podwojn*, "
        "cztery razy, dziesięć razy, garść, garsc, połkn*, polkn*, łykn*, lykn*, nażar*, wziął wnuk, wnuk zjadł, "
        "dziecko zjadło, nie wiem ile, straciłem rachubę"
    ),
    C.SENSELESS: (
        "nie odpowiada*, nie reaguj*, nie budzi*, nie mogę dobudzić, nie moge dobudzic, nie otwiera oczu, nie "
        "poznaje, nie kontaktuj*, nie ma kontaktu, nie może mówić, nie moze mowic, nie oddycha, nie może oddychać, "
        "przewraca oczami, wywraca oczy, oczy w słup, patrzy w jeden, wpatruj*, szklist*, sinieje, zsinia*, biał* "
        "jak, pian*, ślini*, slini*, podłodz*, podlodz*, upadł*, upadl*, przewróci*, przewroci*, osun*, zemdla*, "
        "bezwładn*, bezwladn*, wiotk*, spocon*, zlan*, trzyma się za pierś, trzyma się za serce, trzyma sie za serce, "
        "łapie się za, lapie sie za, trzyma się za klatkę, gada bez sensu, mówi bez sensu, bełkocz*, belkocz*, mówi "
        "niewyraźnie, dziwnie mówi, dziwnie mowi, splątan*, zdezorient*, nie wie gdzie, drga*, drgawk*, spuch*, "
        "opuch*, dusi*, świszcz*, swiszcz*, rzęzi, rzezi, charcz*, łapie powietrze, lapie powietrze, łapie dech, "
        "lapie dech, krzywa twarz, krzywe usta, opadł* kącik, kącik ust, poparz*, oparz*, połkn*, polkn*, nażarł*, "
        "sztywn*, nieprzytomn*, omdl*, wymiotuje bez, cały siny, cała sina, robi się siny, sine usta, szary na "
        "twarzy, blady jak, blada jak, na ziemi, na podłodze, na podlodze, trzęsie się, trzesie sie, leży w "
        "przedpokoju, leży na podłodze, leży bez ruchu, leży i się nie rusza, leży i nie odpowiada, leży nieruchomo, "
        "leży na ziemi"
    ),
    C.SKIP: (
        "nie biorę, nie biore, pomijam, opuszczam, odpuszczam, nie podaję, nie podaje, nie kłuję, nie kluje, "
        "nie wstrzykuj*, mniej biorę, biorę mniej, biore mniej, zmniejszam, ograniczam, odstawi*, odstawiam"
    ),
    C.DOWN: (
        "kg, kilo, kilogram*, schud*, chud*, wag*, leci*, lecialy, lecą, spada*, waga, szczupł*, odchudz*, mniej ważyć"
    ),
    C.LOW_SHOWN: (
        "lo, low, nisk*, niski, niskie, strzałka w dół, strzałki w dół, strzalki w dol, strzalka w dol, "
        "dwie strzałki, podwójna strzałka, w dół, spada, leci w dół, poniżej 3, ponizej 3, poniżej 50"
    ),
    C.DROWSY: (
        "senn*, śpiąc*, spiac*, przysypia*, zasypia*, spać mi się, spac mi sie, spać się chce, spac sie chce, "
        "otępia*, zamroczon*, ospał*, ospal*, sen mnie, oczy mi się same zamykają, oczy same się zamykają, zamykają "
        "mi się oczy, senny, senna"
    ),
    C.GAS: (
        "czad, czadu, czadem, czujnik, tlenek węgla, tlenku wegla, gaz, gazu, gazem, piecyk*, piec, kominek, "
        "grill w, agregat, węgiel, spalin*"
    ),
    C.POISONED: (
        "wyje, piszczy, pika, alarm*, dzwoni, włączył*, wlaczyl*, wszystkim, wszyscy, cała rodzina, nam wszystkim, "
        "boli głowa, głowa boli, bola glowy, boli glowa, ból głowy, mdł*, mdli*, niedobrze, zawrot*, kręci się, "
        "spać, spac, senn*, wymiot*"
    ),
    C.FEVER: "gorączk*, goraczk*, temperatur*, rozpalon*",
    C.RIGOR: (
        "szczękam, szczekam, szczęka zębami, zębami, zebami, dreszcz*, trzęs*, trzes*, telepi*, splątan*, majacz*, "
        "bredz*, halucyn*, wybroczyn*, plam*, wysypk*, krost*, sztywny kark, sztywn*, światło razi, swiatlo razi, "
        "szybko oddych*, nie sikam, nie sikał*, czerwona krecha, czerwona kreska, czerwona pręga, czerwona linia, "
        "senn*, nie budzi, nie wie gdzie"
    ),
    C.STREAK: (
        "czerwona krecha, czerwona kreska, czerwona pręga, czerwona prega, czerwona linia, czerwona smuga, "
        "czerwone kreski, czerwone pręgi"
    ),
    C.FEEL: "czuję, czuje, czuć, czuc, czucia",
    C.CURTAIN: (
        "zasłon*, zaslon*, rolet*, kurtyn*, żaluzj*, zgasł*, zgasl*, zgas*, ciemno, czarno, czarne, zniknęł*, "
        "znikn*, znikl*, połow*, polow*, pół obrazu, brakuje, mlecz*, pajęczyn*, pajeczyn*, sadz*, mgła, mgle"
    ),
}
