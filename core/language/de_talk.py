"""German: intents, days and times. "Halb acht" is 7:30."""

from __future__ import annotations

from core.client import Sex
from core.language.lexicon import Calendar, Destroys, Intent, split

CALENDAR = Calendar(
    weekdays=(
        split("montag;mo;montags;montagen"),
        split("dienstag;di;dienstags"),
        split("mittwoch;mi;mittwochs"),
        split("donnerstag;do;donnerstags"),
        split("freitag;fr;freitags"),
        split("samstag;sa;samstags;sonnabend;sonnabends"),
        split("sonntag;sonntags"),
    ),
    months=(
        split("januar;jan;jänner;jän"),
        split("februar;feb;feber"),
        split("märz;mär"),
        split("april;apr"),
        split("mai"),
        split("juni;jun;juno"),
        split("juli;jul"),
        split("august;aug"),
        split("september;sep;sept"),
        split("oktober;okt"),
        split("november;nov"),
        split("dezember;dez"),
    ),
    today=split("heute;heut"),
    tomorrow=split("morgen"),
    day_after=split("übermorgen"),
    next=split("nächste;nächsten;nächster;nächstes;kommende;kommenden;kommender;nächsten"),
    in_=split("in;für;in einer;für eine;in einem;für einen;eine;einen;nach"),
    to=split("bis"),
    until=split("bis;bis zum;bis zur;vor"),
    day=split("tag;tage;tagen"),
    week=split("woche;wochen"),
    month=split("monat;monate;monaten;monats"),
    at=split("um;gegen;ab"),
    am=split("morgens;vormittags;früh;am morgen;vormittag;in der früh;am vormittag"),
    pm=split("abends;nachmittags;am abend;abend;nachmittag;am nachmittag"),
    noon=split("mittag;mittags;zwölf uhr mittags"),
    midnight=split("mitternacht"),
    hour=split("uhr"),
    half_to=split("halb"),
    quarter_past=split("viertel nach"),
    quarter_to=split("viertel vor;dreiviertel"),
    place=split(
        "ich bin in;bin in;bin jetzt in;ich bin jetzt in;ich bin gerade in;bin gerade in;wohne in;"
        "ich wohne in;umgezogen nach;fliege nach;reise nach;fahre nach;ich bin nach;urlaub in;"
        "zeitzone;stadt;ich bin zur zeit in;bin zurzeit in;wohne jetzt in;lebe in;ich lebe in;"
        "ziehe nach;unterwegs in;zu besuch in"
    ),
    any_day=split("jeder;jeden;jeder tag;jeden tag;egal;ganz egal;beliebig;irgendwann;alle tage"),
    except_=split(
        "außer;ausser;nur nicht;aber nicht;bis auf;"
        "bloß nicht;nur ned;ist schlecht;sind schlecht;is schlecht;"
        "ist ungünstig;sind ungünstig;passt nicht;passt mir nicht;passt gar nicht;geht nicht;gehen nicht;"
        "geht gar nicht;"
        "geht bei mir nicht;geht ned;kann ich nicht;kann ich nie;kann ich ned;kann i ned;habe ich nie zeit;fällt weg"
    ),
    place_ends=split(
        "bis;für;diese;jetzt;ab;und;bitte;seit;mit;aber;heute;morgen;zur;gerade;im;am;um;umgezogen;gezogen;auf"
    ),
)

SEXES = {
    Sex.MALE: split("mann;männlich;m;herr;ein mann;ich bin ein mann"),
    Sex.FEMALE: split("frau;weiblich;w;f;eine frau;ich bin eine frau"),
}

WISHES = {
    Intent.YES: split(
        "ja;jo;jep;jawohl;ja …;klar;klar …;sicher;natürlich;gerne;gern;stimmt;richtig;genau;okay;ok;"
        "passt;in ordnung;einverstanden;ich bin einverstanden;ja gerne;ja bitte;auf jeden fall;jap;"
        "mache ich;so ist es;korrekt;von mir aus;meinetwegen;passt schon;das passt;passt mir;passt für mich;"
        "das geht klar;ja geht klar;"
        "alles klar;na gut;na gut von mir aus;ja von mir aus;gut von mir aus;von mir aus gern;von mir aus gerne;"
        "mir soll's recht sein;na klar;na klar …;also gut;okay dann;ok dann;kein problem;machen wir so;"
        "das machen wir;so machen wir das;"
        "bin dabei;ich bin dabei;bin einverstanden;habe nichts dagegen;hab nichts dagegen;nichts dagegen;freilich;"
        "jo passt;ja passt;ja klar;ja sicher;logisch;eh klar;jup;joa;jau;selbstverständlich;aber gerne;aber sicher;"
        "sehr gerne;sehr gern;jawoll;genau so;ja mach das"
    ),
    Intent.NO: split(
        "nein;ne;nee;nö;nein …;falsch;stimmt nicht;keineswegs;auf keinen fall;keine;keines;keins;"
        "nichts davon;keine davon;lieber nicht;nicht wirklich;nein danke;leider nein;niemals;"
        "nicht richtig;das stimmt nicht"
    ),
    Intent.HELP: split(
        "wo genau …;wo messe …;wo miss ich …;… helfen …;hilfst du mir;hilfe;hilfe …;hilf mir;hilf mir …;"
        "was kann ich tun;was kannst du;"
        "wie geht das;wie geht das …;ich verstehe nicht …;verstehe ich nicht;"
        "ich verstehe das nicht …;wie;wie …;was muss ich tun;was soll ich tun;ich brauche hilfe …;"
        "… brauche hilfe …;was ist das;anleitung;erklär …;erkläre …;menü;befehle;was nun;was jetzt;"
        "weiß nicht weiter"
    ),
    Intent.SKIP: split(
        "kann ich das weglassen …;kann ich das auslassen …;kann ich das überspringen …;darf ich das auslassen …;"
        "darf ich das weglassen …;überspringen;überspringen …;auslassen;auslassen …;weglassen;nächste frage;nächste;"
        "heute nicht;heute nicht …;diesmal nicht;das nicht;kein maßband;keine waage;"
        "habe kein maßband;habe keine waage;ich habe keine waage;ich habe kein maßband;"
        "das überspringe ich;überspring …;lass das weg;lass das aus;geht nicht;passe;"
        "… überspringen …;kann ich nicht;das geht nicht"
    ),
    Intent.LATER: split(
        "später;später …;nicht jetzt;jetzt nicht;jetzt nicht …;erinnere mich …;erinner mich …;"
        "nachher;nachher …;heute abend;heute nachmittag;keine zeit;keine zeit bis …;keine zeit vor …;"
        "keine zeit jetzt …;keine zeit heute …;keine zeit gerade …;keine zeit grad …;keine zeit ich …;"
        "keine zeit muss …;keine zeit bin …;keine zeit erst …;keine zeit in …;keine zeit nur …;keine zeit um …;"
        "keine zeit melde …;keine zeit mach …;keine zeit mache …;keine zeit später …;keine zeit morgen …;"
        "keine zeit nachher …;keine zeit wir …;keine zeit komme …;keine zeit gleich …;keine zeit weil …;"
        "keine zeit sorry …;keine zeit der …;keine zeit die …;keine zeit das …;keine zeit leider …;"
        "keine zeit noch …;keine zeit habe …;keine zeit hab …;habe keine zeit;"
        "hab keine zeit;ich habe keine zeit;ich hab keine zeit;hab grad keine zeit;"
        "habe gerade keine zeit;grad keine zeit;gerade keine zeit;koa zeit;"
        "bin beschäftigt;bin gerade beschäftigt;morgen;morgen …;bin auf der arbeit;"
        "bin bei der arbeit;bin unterwegs;bin nicht zu hause;ein andermal;mach ich später;"
        "… erinnere mich später …;in einer stunde;frag später;frag mich später …;frag morgen …;"
        "moment;warte"
    ),
    Intent.STOP: split(
        "stop;stopp;halt;abbrechen;abbruch;aufhören;ende;schluss;genug;beenden;lass das;egal;vergiss es;"
        "lass mich in ruhe;hör auf;hör auf …;stop …;stopp …;abbrechen …;ich möchte aufhören …;"
        "ich will aufhören …;ich höre auf …;bin raus;ich bin raus;will aufhören;will aufhören …;möchte aufhören;"
        "möchte aufhören …;"
        "mag aufhören;"
        "ich mag aufhören …"
    ),
    Intent.UNDO: split(
        "rückgängig;rückgängig …;zurücknehmen;nimm das zurück;löschen;lösche das …;"
        "lösche den letzten …;letzten löschen;letzten wert löschen;falsche zahl;das war falsch;"
        "das war ein fehler;vertippt;ich habe mich vertippt;verschrieben;hab mich vertippt;"
        "habe mich vertippt;tippfehler;fehler;mein fehler;war falsch;falscher wert;… rückgängig …;"
        "letzte löschen;ignoriere das …;war ein versehen;versehen"
    ),
    Intent.COACH: split(
        "coach;coach …;trainer;trainerin;trainer …;trainerin …;mit dem coach sprechen …;"
        "ich möchte mit meinem coach …;ich will mit meinem coach …;ich möchte mit meiner trainerin …;"
        "ich will mit meiner trainerin …;ich möchte mit meinem trainer …;ich will mit meinem trainer …;"
        "kann ich mit meinem coach …;kann ich mit meiner trainerin …;kann ich mit meinem trainer …;"
        "ich brauche meinen coach …;ich brauche meine trainerin …;ich brauche meinen trainer …;"
        "sag meinem coach …;sag meiner trainerin …;sag meinem trainer …;sagen sie meinem coach …;"
        "sagen sie meiner trainerin …;sagen sie meinem trainer …;"
        "… mein coach …;… meinem coach …;… meinen coach …;… meiner trainerin …;… meinem trainer …;"
        "… meinen trainer …;… meine trainerin …;nachricht …;… dem coach …;… den coach …;"
        "… mit jemandem sprechen …;… mit jemandem reden …;… einem menschen …;mensch;ruf mich an;"
        "rufen sie mich an;… mit einer person …;kontakt …"
    ),
    Intent.PAUSE: split(
        "urlaub bis …;urlaub vom …;urlaub von …;urlaub ab …;ferien bis …;ferien vom …;urlaub nächste …;urlaub für …;"
        "… auf kur …;… zur kur …;… in kur …;… auf reha …;… in reha …;… in der reha …;… zur reha …;ich bin nicht da …;"
        "bin nicht da …;bin weg bis …;bin weg vom …;bin dann mal weg …;bin verreist …;bin nicht zu hause bis …;"
        "pause;pause …;pausieren;pausieren …;urlaub;im urlaub;im urlaub …;… im urlaub …;"
        "… in urlaub …;… in den urlaub …;ich bin weg …;ich bin weg bis …;ich brauche eine pause …;"
        "… eine pause …;ferien;aussetzen;aussetzen …;im krankenhaus;… im krankenhaus …;bin verreist;"
        "verreist …;keine nachrichten bis …;unterbrechen …;unterbrechen;ruhe bis …"
    ),
    Intent.RESUME: split(
        "bin wieder da;bin wieder da …;ich bin wieder da …;bin wieder daheim;bin wieder daheim …;"
        "ich bin wieder daheim …;"
        "wieder daheim;bin wieder zu hause;bin wieder zu hause …;ich bin wieder zu hause …;bin wieder zuhause;"
        "ich bin wieder zuhause;bin wieder zurück;ich bin wieder zurück …;wir sind wieder da …;sind wieder da;"
        "wir sind wieder zu hause;zurück aus dem urlaub;bin zurück aus …;wieder zurück;urlaub vorbei;"
        "der urlaub ist vorbei;bin aus dem urlaub zurück;bin wieder heim;wieder gesund zurück;"
        "wieder da;fortsetzen;zurück;ich bin zurück …;bin zurück;"
        "bin zurück …;pause beenden;wieder anfangen;wieder einsteigen;neu starten;"
        "weitermachen nach der pause;wieder zu hause;wieder dabei;ich bin wieder dabei"
    ),
    Intent.TODAY: split(
        "heute;was steht an;was ist heute dran;was ist heute;was steht heute an;was ist fällig;"
        "was kommt;check in;checkin;was muss ich heute machen;was ist dran;was kommt als nächstes;"
        "fällig;wann ist der nächste …;aufgaben;wann geht es weiter;was ist als nächstes dran"
    ),
    Intent.RECORD: split(
        "eintragen;eintragen …;wert eintragen;messung eintragen;erfassen;neuer wert;neue messung;"
        "aufzeichnen;messwert;ich habe gemessen;speichern;werte eingeben;eingeben"
    ),
    Intent.PROGRESS: split(
        "fortschritt;fortschritt …;mein fortschritt;fortschritte;ergebnisse;meine ergebnisse;verlauf;"
        "mein verlauf;diagramm;diagramm …;kurve;meine kurve;grafik;grafik …;meine werte;werte;"
        "wie stehe ich;wie mache ich mich;wie läuft es;statistik;gewichtskurve;… meine ergebnisse …;"
        "… mein verlauf …;… meine werte …;zahlen;… mein fortschritt …;… meine kurve …;trend;"
        "… meinen verlauf …;… meinen fortschritt …;verlauf …"
    ),
    Intent.GOAL: split(
        "ziel;ziel …;ziele;mein ziel;mein ziel …;ziel setzen;ziel ändern;neues ziel;neues ziel …;"
        "… mein ziel …;wunschgewicht;zielgewicht;… ein ziel …"
    ),
    Intent.SETTINGS: split("einstellungen;einstellungen …;optionen;einstellung;profil;konfiguration;setup"),
    Intent.SAME: split(
        "gleich;gleich wie letztes mal;wie letztes mal;alles gleich;dasselbe;das gleiche;wie immer;"
        "unverändert;keine änderung;nichts geändert;wie zuletzt;wie vorher;genauso;"
        "so wie letztes mal;wie beim letzten mal;alles wie letztes mal;alles wie immer;"
        "genau wie letztes mal;gleich geblieben;alles wie beim letzten mal"
    ),
    Intent.DIFFERENT: split(
        "anders;anders …;nicht gleich;nicht wie letztes mal;etwas war anders;war anders;andere waage;"
        "neue waage;etwas anders;nicht dasselbe;es war anders;geändert;unterschiedlich"
    ),
    Intent.WHY: split(
        "warum;warum …;wieso;wieso …;weshalb;weshalb …;wozu;wozu …;wofür;wofür …;weswegen;"
        "warum fragst du;warum nicht;was soll das;grund"
    ),
    Intent.SOURCE: split(
        "quelle;quellen;woher;woher …;woher kommt das;wer sagt das;referenz;beleg;belege;"
        "welche studie;studie;worauf beruht das;nachweis;woher wisst ihr das;quelle …;… die quelle …"
    ),
    Intent.THANKS: split(
        "danke;danke …;vielen dank;vielen dank …;dankeschön;danke schön;danke sehr;super;toll;prima;"
        "klasse;schön;gut;sehr gut;wunderbar;besten dank;herzlichen dank;perfekt;spitze;cool;"
        "freut mich;merci;fein"
    ),
    Intent.GREETING: split(
        "hallo;hallo …;guten morgen;guten tag;guten abend;moin;servus;grüß gott;hi;hey;grüezi;"
        "gute nacht;tschüss;auf wiedersehen;guten morgen …;guten tag …;guten abend …;hallöchen;"
        "grüß dich"
    ),
    Intent.DONE: split(
        "fertig;fertig …;erledigt;geschafft;gemacht;ich bin fertig;bin fertig;das war's;"
        "das war alles;alles erledigt;alles gemacht;abgeschlossen;das ist alles;hab's gemacht;"
        "habe es gemacht;nichts weiter;sonst nichts"
    ),
    Intent.START: split(
        "start;starten;los;los geht's;beginnen;anfangen;ich bin bereit;bereit;bin bereit;start …;leg los;auf geht's"
    ),
    Intent.NOT_WELL: split(
        "… geht es mir nicht gut …;… geht es mir nicht so gut …;… geht es mir gar nicht gut …;… geht's mir nicht gut …;"
        "… geht's mir nicht so gut …;… mir heute nicht gut …;mir geht es nicht so gut …;mir geht's nicht so gut …;"
        "mir geht es heute nicht gut …;mir geht es heute nicht so gut …;mir geht's heute nicht gut …;"
        "mir geht's heute nicht so gut …;mir geht es heute gar nicht …;mir geht es gar nicht gut …;"
        "ich fühle mich heute nicht so gut …;ich fühl mich heute nicht gut …;ich fühl mich heute nicht so gut …;"
        "fühl mich heute nicht gut …;fühl mich heute nicht so gut …;ich fühle mich nicht so gut …;"
        "ich fühle mich nicht wohl …;"
        "ich fühl mich nicht so gut …;ich fühl mich nicht wohl …;ich fühle mich heute nicht gut …;"
        "ich fühl mich nicht gut …;fühl mich nicht gut …;fühl mich nicht so gut …;"
        "fühle mich nicht so gut …;fühle mich heute nicht …;"
        "nicht gut;mir geht es nicht gut …;mir geht's nicht gut …;ich fühle mich nicht gut …;krank;"
        "ich bin krank …;bin krank;bin krank …;erkältet;ich bin erkältet;bin erkältet;fieber;"
        "ich habe fieber …;grippe;schlecht;mir geht es schlecht …;mir geht's schlecht …;unwohl;"
        "ich fühle mich unwohl;ich fühle mich schlecht;ich habe schmerzen;fühle mich nicht wohl;"
        "nicht wohl;… nicht gut heute …;geht so schlecht;elend;ich bin in schmerzen"
    ),
    Intent.WELL: split(
        "mir geht es gut;mir geht's gut;ich fühle mich gut;gut danke;alles gut;fühle mich gut;fit;"
        "ich bin fit;alles bestens;wohl;ich fühle mich wohl;mir gehts gut;geht gut;geht mir gut;"
        "sehr gut danke;bestens"
    ),
    Intent.MY_DATA: split(
        "meine daten;meine daten …;daten;… meine daten …;was wisst ihr über mich;"
        "was weißt du über mich;export;exportieren;datenauskunft;was speichert ihr;"
        "was wird gespeichert;datenschutz;daten herunterladen"
    ),
    Intent.FORGET: split(
        "lösche alle meine daten;alle meine daten löschen;vergiss mich;lösche mich;lösche alles;"
        "alles löschen;meine daten löschen;lösche meine daten;konto löschen;mein konto löschen;"
        "lösch mich;alle daten löschen;vergesst mich"
    ),
    Intent.LEAVE: split(
        "abmelden;austreten;kündigen;aussteigen;keine nachrichten mehr;schreib mir nicht mehr;"
        "ich steige aus;programm verlassen"
    ),
    Intent.LANGUAGE: split(
        "kannst du auch englisch;kannst du englisch …;sprichst du …;sprechen sie …;auf englisch …;auf englisch;"
        "auf türkisch;"
        "auf polnisch;auf arabisch;auf französisch;auf spanisch;kannst du auch polnisch;kannst du auch arabisch;"
        "kannst du türkisch;kannst du auch türkisch;"
        "sprache;sprache …;sprache ändern;sprache wechseln;deutsch;auf deutsch;andere sprache;"
        "… sprache ändern …;auf deutsch bitte;sprich deutsch"
    ),
    Intent.UNITS: split(
        "einheiten;einheiten …;einheit;einheiten ändern;in kilo;in pfund;in zoll;in zentimeter;"
        "kilogramm oder pfund;metrisch;einheiten wechseln;… einheiten ändern …;in kilogramm"
    ),
    Intent.ZONE: split(
        "zeitzone;zeitzone …;zeitzone ändern;falsche uhrzeit;ich bin umgezogen;umgezogen;"
        "ich bin in …;bin in …;ich bin jetzt in …;bin jetzt in …;bin gerade in …;ich bin gerade in …;"
        "ich wohne jetzt in …;ich bin nach …;… zeitzone ändern …;reise nach …;fliege nach …;"
        "umgezogen nach …;ich wohne in …"
    ),
    Intent.SLOT: split(
        "termin;termin …;zeit ändern;tag ändern;uhrzeit ändern;anderer tag;andere zeit;"
        "andere uhrzeit;anderen tag;termin ändern;termin verschieben;verschieben;verschieben …;"
        "verschiebe …;… den termin …;… die uhrzeit …;… meinen termin …;wann fragst du;erinnerung;"
        "erinnerung ändern;… die zeit ändern …;… den tag ändern …;… andere uhrzeit …;… anderen tag …;"
        "erinnerungszeit"
    ),
    Intent.CONTINUE: split(
        "weiter;weiter …;weitermachen;fortfahren;mach weiter;weiter geht's;nächstes;wo waren wir;lass uns weitermachen"
    ),
    Intent.REPEAT: split(
        "wiederholen;wiederhole …;nochmal;noch einmal;noch mal;wie bitte;was war die frage;bitte wiederholen;"
        "sag das nochmal;was hast du gefragt;die frage nochmal;wie war die frage"
    ),
    Intent.NOT_SAY: split(
        "möchte ich nicht sagen;das möchte ich nicht sagen;keine angabe;lieber nicht sagen;"
        "geht niemanden etwas an;privat;will ich nicht sagen;sage ich nicht;das ist privat;"
        "möchte nicht sagen;ohne angabe"
    ),
    Intent.DONT_KNOW: split(
        "weiß nicht;weiß ich nicht;ich weiß nicht;ich weiß es nicht;keine ahnung;keine ahnung …;nicht sicher;"
        "weiß nicht genau;weiß ich nicht genau;ich weiß nicht genau;weiß ned;woaß ned;woaß i ned;weiß i ned;"
        "woher soll ich das wissen;was weiß ich;kann ich nicht sagen;kann ich schlecht sagen;"
        "da bin ich überfragt;bin mir nicht sicher;nicht ganz sicher;keinen schimmer;keinen plan;"
        "bin nicht sicher;ich bin nicht sicher;ich bin mir nicht sicher;weiß ich nicht mehr;"
        "vergessen;schwer zu sagen"
    ),
}


DESTROYS = Destroys(
    forget=(
        "lösch*|gelösch*|vergiss|vergesst|entfern*|vernicht*|weg|tilg* & meine_daten|meiner_daten|"
        "all_meine_daten|alle_meine_daten|gesamten_daten|alle_daten|persönlichen_daten|personenbezogen*|"
        "mein_konto|meines_kontos|mein_profil|meine_akte|meine_ganzen_daten|meine_ganze_geschichte|"
        "meine_gesamte*|sämtliche*|was_ihr_über_mich|was_du_über_mich|meine_werte|meine_messwerte|"
        "meinen_account|mein_account|den_account|mein_benutzerkonto|verlauf",
        "lösch*|gelösch*|vergiss|vergesst|entfern*|vernicht* & alles|alle|sämtliche*|ganze*|gesamt* & "
        "von_mir|über_mich|mich|zu_mir|meine|meiner",
        "vergiss|vergesst & alles|alle & was_du|was_ihr|was_sie|daten",
        "alles_lösch*|lösche_alles|lösch_alles & bitte|endgültig|sofort|für_immer",
        "recht_auf_vergessen*|dsgvo|datenschutz* & lösch*|vergess*|entfern*",
    ),
    leave=(
        "kündig*|gekündigt|beend*|widerruf*|austret*|aussteig*|steig*|tret*|verlass*|abmeld*|meld*|"
        "abgemeldet & programm|teilnahme|mitgliedschaft|anmeldung|studie|kurs",
        "meldet_mich|meld_mich|melde_mich|melden_sie_mich|mäldet_mi|meld_mi & ab|programm|liste|raus",
        "!nicht|nimmer|nümm|nümme|nimme|numme & mitmach*|teilnehm*|dabei_sein|dabei|weitermach* & "
        "programm|mehr|nimmer|nümm & will|möcht*|mog|mag|wott|wui",
        "steig*|hör*|bin & aus|auf|raus & endgültig|für_immer|komm_nicht_wieder|programm",
        "streich*|nehmt|nimm & mich|meinen_namen & liste|programm|raus",
    ),
    no="nicht|nie|niemals|kein|keine|keinen|ned|net|nid|ohne",
    if_=("wenn|falls|ob|was_passiert|fast|beinah*|mann|frau|freundin|freund|schwester|bruder|überleg*|bevor"),
    partly=(
        "letzte*|heute|heut|gestern|erinnerung*|foto*|app|zahl|wert|handyspeicher|gewicht|taille|hüfte|"
        "puls|schuhe|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag|versehen|eintrag|"
        "diesmal|nachricht*"
    ),
)
