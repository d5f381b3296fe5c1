"""English: intents, days and times."""

from __future__ import annotations

from core.client import Sex
from core.language.lexicon import Calendar, Destroys, Intent, split

CALENDAR = Calendar(
    weekdays=(
        split("monday;mon;mondays"),
        split("tuesday;tue;tues;tuesdays"),
        split("wednesday;wed;weds;wednesdays"),
        split("thursday;thu;thur;thurs;thursdays"),
        split("friday;fri;fridays"),
        split("saturday;sat;saturdays"),
        split("sunday;sun;sundays"),
    ),
    months=(
        split("january;jan"),
        split("february;feb"),
        split("march;mar"),
        split("april;apr"),
        split("may"),
        split("june;jun"),
        split("july;jul"),
        split("august;aug"),
        split("september;sep;sept"),
        split("october;oct"),
        split("november;nov"),
        split("december;dec"),
    ),
    today=split("today;tonight"),
    tomorrow=split("tomorrow;tomorow;tommorow;tmrw;tmr"),
    day_after=split("day after tomorrow;the day after tomorrow"),
    next=split("next;the next;following;another;coming"),
    in_=split("in a;in one;for a;for one;in;for;a;after a;one"),
    to=split("to;through"),
    until=split("until;till;til;untill;before"),
    day=split("day;days"),
    week=split("week;weeks;wk;wks"),
    month=split("month;months"),
    at=split("at;around;about"),
    am=split("am;a m;morning;in the morning;mornings"),
    pm=split("pm;p m;evening;in the evening;evenings;afternoon;in the afternoon;at night;tonight"),
    noon=split("noon;midday"),
    midnight=split("midnight"),
    hour=split("o clock;oclock;hours"),
    half_past=split("half past;half;half after"),
    quarter_past=split("quarter past;a quarter past;quarter after"),
    quarter_to=split("quarter to;a quarter to;quarter before;quarter of"),
    place=split(
        "i am in;i'm in;im in;i am now in;i'm now in;now in;travelling to;traveling to;"
        "i am staying in;i'm staying in;i live in;moved to;i have moved to;i've moved to;flying to;"
        "going to;i am at;i'm currently in;i am currently in;we are in;we're in;arrived in;"
        "my city is;city;time zone;timezone;on holiday in;i am visiting;i'm visiting;my time zone is"
    ),
    any_day=split(
        "any;any day;whenever;every day is fine;all days;no matter;doesn't matter;does not matter;you choose;"
        "all the same"
    ),
    except_=split(
        "except;but not;apart from;other than;not on;only not;are bad;is bad;no good;not good;do not suit;don't suit;"
        "does not suit;doesn't suit;does not work;doesn't work;do not work;don't work;can't do;cannot do;are out;is out"
    ),
    place_ends=split(
        "until;till;for;this;now;next;from;since;and;with;so;but;today;tomorrow;on;at the moment;"
        "because;time;at;again;right;currently;please"
    ),
)

SEXES = {
    Sex.MALE: split("man;male;m;boy;gentleman;bloke;a man;i am a man;i'm a man;he"),
    Sex.FEMALE: split("woman;female;f;w;girl;lady;a woman;i am a woman;i'm a woman;she"),
}

WISHES = {
    Intent.YES: split(
        "yes;y;yep;yeah;yup;ya;yes …;sure;sure …;ok;okay;okey;k;correct;right;that's right;"
        "that is right;of course;exactly;true;indeed;please do;go ahead;fine;yes it is;yes i do;"
        "i agree;agreed;agree;i do;absolutely;definitely;aye;that's it;that's correct;"
        "that is correct;it is;sounds good;fine by me;fine with me;ok then;okay then;happy to;"
        "happy with that;no problem;let's do it;lets do it;count me in;👍;✅;👌;🆗;✔"
    ),
    Intent.NO: split(
        "no;n;nope;nah;no …;not really;wrong;that's wrong;incorrect;that is wrong;false;none;neither;"
        "no it isn't;i don't;i do not;not at all;never;i disagree;don't;no way;rather not;"
        "none of them;none of these;none of those;👎;❌;✖"
    ),
    Intent.HELP: split(
        "help;help …;help me …;?;??;how;what can i do;what can you do;what now;what do i do;"
        "what should i do;i don't understand …;i do not understand …;don't understand;"
        "not sure what to do;… i need help …;how does this work;what is this;i'm stuck;i am stuck;"
        "i'm lost;instructions;explain …;menu;info;commands;how do i use …;how do i measure …;"
        "how do i take …;how do i count …;how to measure …;"
        "how should i measure …;how do i do …;how do i send …;"
        "how do i answer …;"
        "how to use …;how to do …;how to send …;what do you mean;"
        "confused;i'm confused;huh;what;sos;🆘;assist;support"
    ),
    Intent.SKIP: split(
        "skip;skip …;pass;next;not this one;leave it;leave this out;leave it out;i'd rather skip;next one;"
        "next question;not this time;can't do this one;can't do it;i can't do it;cannot do it;leave this one;"
        "… skip this …;… skip it …;can't be bothered …;can't face it …;no tape;no scales;don't have scales;"
        "don't have a tape;i have no scales;"
        "i have no tape;haven't got scales;not today;not today …;skip for now;nothing to send"
    ),
    Intent.LATER: split(
        "later;later …;not now;not now …;no time;no time …;not got time …;remind me …;"
        "remind me later;in a bit;in a while;snooze;"
        "snooze …;another time;some other time;busy;i'm busy …;i am busy …;busy now;ask me later;"
        "ask me again …;ask again …;ask me tomorrow;tonight;this evening;this afternoon;in an hour;"
        "in a minute;tomorrow;tomorrow …;can we do this later;do it later;i'll do it later;"
        "will do later;… later today …;at work;at work …;not at home;not home;i'm at work …;"
        "i'm not at home …;give me a minute;give me five minutes;wait"
    ),
    Intent.STOP: split(
        "stop;stop …;cancel;cancel …;quit;abort;exit;end;enough;that's enough;no more;never mind;"
        "nevermind;forget it;leave me alone;stop it;finish;stop asking;i want to stop …"
    ),
    Intent.UNDO: split(
        "undo;undo …;take it back;take that back;delete last;delete that …;delete the last …;"
        "delete last …;remove last;remove that;remove the last …;wrong number;that was wrong;"
        "that was a mistake;mistake;my mistake;i made a mistake;made a mistake;oops;scrap that;"
        "ignore that;ignore that …;ignore last;revert;typo;wrong one;i typed it wrong;"
        "i sent the wrong number;ignore the last …;correct that;correct it"
    ),
    Intent.COACH: split(
        "coach;coach …;talk to coach;talk to my coach …;speak to my coach …;talk to the coach …;speak to the coach …;"
        "i want to talk to my coach …;can i talk to my coach …;i need my coach …;… my coach …;… the coach …;"
        "tell my coach …;message …;write to coach …;"
        "… speak to someone …;… talk to someone …;… talk to a person …;… a human …;… speak to a person …;"
        "human;person;instructor;… my instructor …;… my trainer …;trainer;call me;call me …;contact …"
    ),
    Intent.PAUSE: split(
        "pause;pause …;on holiday;on holiday …;holiday;holidays;vacation;on vacation;on vacation …;"
        "take a break;take a break …;break;i need a break …;… going on holiday …;… going away …;"
        "i'm away …;i am away …;away until …;… on holiday …;… on vacation …;stop for …;stop until …;"
        "… a break …;not until …;in hospital;… in hospital …;i am in hospital …;i'm in hospital …;"
        "i'm travelling;no messages until …;don't message me until …;hold …;suspend …"
    ),
    Intent.RESUME: split(
        "resume;resume …;i'm back;im back;i am back;i am back …;i'm back …;back again;"
        "back from holiday;unpause;restart …;start again;start again …;carry on again;end pause;"
        "end the pause;back home;back"
    ),
    Intent.TODAY: split(
        "today;what's due;what is due;what's due today;what is due today;what's on today;what's next;"
        "what is next;check in;checkin;check-in;let's go;what do i have to do today;what is today;"
        "due;my check-in;my tasks;tasks;when is my next …;when is the next …;what's today;"
        "next check in;when next"
    ),
    Intent.RECORD: split(
        "record;record …;record a reading;new reading;enter …;log …;log;add;add …;add a reading;"
        "i have a reading;enter a reading;save …;submit;i measured;send a reading"
    ),
    Intent.PROGRESS: split(
        "progress;progress …;my progress;show me;my results;results;results …;chart;chart …;charts;graph;"
        "graph …;graphs;trend;trends;history;my history;… my chart …;… my progress …;… my results …;"
        "… my graph …;how am i doing;how am i doing …;my weight chart;weight chart;show my numbers;"
        "my numbers;my readings;readings;stats;my stats;how did i do;numbers;… weight chart …;"
        "my trend;… my readings …"
    ),
    Intent.GOAL: split(
        "goal;goal …;goals;my goal;my goal …;target;target …;my target …;set a goal;set a goal …;set goal …;"
        "… my goal …;new goal;new goal …;change goal;change my goal;aim;i want to reach …;i want to get to …"
    ),
    Intent.SETTINGS: split("settings;settings …;setting;options;preferences;change settings;setup;configure;profile"),
    Intent.SAME: split(
        "same;same …;the same;the same …;same as last time;same as before;all the same;everything the same;"
        "same again;no change;unchanged;nothing changed;nothing different;just like last time;like last time;"
        "as before;as last time;as usual;like before;same conditions"
    ),
    Intent.DIFFERENT: split(
        "different;different …;not the same;something was different;something different;changed;"
        "not as last time;other scales;different scales;new scales;not the same …;it was different;"
        "was different"
    ),
    Intent.WHY: split(
        "why;why …;what for;what is this for;why do you ask;why not;why do you need …;reason;why is that;"
        "why should i;what's the point;how come;why are you asking"
    ),
    Intent.SOURCE: split(
        "source;sources;source …;where is that from;where does that come from;says who;reference;references;"
        "who says;who says so;who says that;evidence;which study;where's that from;how do you know;"
        "where do these numbers come from;… the source …;citation;what is that based on;based on what"
    ),
    Intent.THANKS: split(
        "thanks;thanks …;thank you;thank you …;thx;ty;cheers;ta;many thanks;great;great …;nice;cool;perfect;"
        "brilliant;lovely;wonderful;super;good;awesome;🙏;❤;😊;🙂;😀;🎉;💪;thank u;tks;much appreciated"
    ),
    Intent.GREETING: split(
        "hi;hello;hey;hello …;hi …;hey …;good morning;good evening;good afternoon;morning;evening;"
        "good day;hiya;hi there;hello there;greetings;howdy;👋;good night;bye;goodbye;see you"
    ),
    Intent.DONE: split(
        "done;done …;finished;i'm done;i am done;i've done it;all done;i have done it;completed;"
        "complete;ready now;did it;i did it;that's all;that is all;nothing else;that's everything;"
        "no more to add;it's done;that's it for now"
    ),
    Intent.START: split(
        "start;start …;begin;begin …;go;i'm ready;ready;i am ready;let's start;let's begin;yes start;now"
    ),
    Intent.NOT_WELL: split(
        "not well;unwell;i'm not well …;i am not well …;i'm ill;i am ill;ill;sick;i'm sick;i am sick;"
        "not feeling well;i don't feel well …;i do not feel well …;feeling ill;feeling sick;"
        "i have a cold …;i've got a cold;i have flu;i have a fever …;fever;flu;a cold;bad day;"
        "feeling rough;feel rough;feeling bad;under the weather;poorly;i am in pain …;i'm in pain …;i'm in bed …;"
        "in pain;i feel ill;i feel unwell;i feel bad;i feel awful;… not feeling well …;"
        "… feel unwell …;… feeling unwell …;covid"
    ),
    Intent.WELL: split(
        "well;i'm well;i am well;i feel well;feeling well;feel fine;i feel fine;i'm fine;i am fine;"
        "feeling fine;all good;feeling good;i feel good;i'm good;very well;all fine;fine thanks;"
        "yes i feel well;yes well;i am ok;i'm ok;i feel ok;good thanks;great thanks"
    ),
    Intent.MY_DATA: split(
        "my data;my data …;data;… my data …;what do you know about me;what do you have about me;"
        "export;export …;download my data;what do you keep;what is kept;what have you stored;privacy;"
        "what do you store;show me what you have;what data …"
    ),
    Intent.FORGET: split(
        "delete everything;erase everything;erase all my data;wipe all my data;forget me;delete me;"
        "delete my data;erase my data;delete my account;remove my data;delete all my data;"
        "forget everything;wipe my data"
    ),
    Intent.LEAVE: split(
        "i want out;unsubscribe;sign me off;opt out;i don't want this anymore;"
        "i don't want to do this any more;i don't want to do this anymore;i quit;i want to leave;"
        "stop messaging me;stop sending me;stop the programme;stop the program;quit the programme;"
        "i withdraw"
    ),
    Intent.LANGUAGE: split(
        "language;language …;change language;español;deutsch;français;polski;العربية;hablas español;"
        "parlez vous français;tu parles français;sprichst du deutsch;sprechen sie deutsch;mówisz po polsku;"
        "هل تتحدث العربية;change language …;change the language …;languages;"
        "… change language …;in english;speak english;english;english please;other language;"
        "… in english please"
    ),
    Intent.UNITS: split(
        "units;units …;unit;change units;kilograms or pounds;pounds or kilograms;use pounds;"
        "use kilos;use kg;use stones;use stone;use pounds …;use inches;use centimetres;metric;"
        "imperial;in pounds;in stones;in stone;in kilos;use metric;use imperial;change to pounds;"
        "change to stones;change to kilos;… change units …;switch units"
    ),
    Intent.ZONE: split(
        "time zone;timezone;time zone …;timezone …;change time zone;change my time zone …;wrong time;"
        "i moved;i've moved;i have moved;… time zone …;i am in …;i'm in …;im in …;i have moved to …;"
        "i've moved to …;travelling to …;i live in …;… i am now in …;… i'm now in …;… flying to …;"
        "travelling"
    ),
    Intent.SLOT: split(
        "slot;slot …;change time;change the time;change day;change the day;change my day;"
        "change my time;change my slot;change slot;another day;other day;different day;"
        "different time;another time of day;move to …;move it to …;move my check-in …;"
        "move my check in …;change my check-in …;change my check in …;… change the time …;"
        "… change the day …;… change my slot …;reschedule;reschedule …;when do you ask me;"
        "change the time to …;change to monday;change my reminder …;… my reminder …;reminder time;"
        "reminder"
    ),
    Intent.CONTINUE: split(
        "continue;continue …;go on;carry on;carry on …;proceed;keep going;let's go on;on we go;"
        "let's continue;more;where were we"
    ),
    Intent.REPEAT: split(
        "repeat;repeat …;again;say again;say that again;once more;what was the question;pardon;"
        "what did you say;sorry what;what did you ask;can you repeat that;show again;"
        "show me again"
    ),
    Intent.NOT_SAY: split(
        "rather not say;i'd rather not say;prefer not to say;i prefer not to say;"
        "none of your business;private;i won't say;i don't want to say;not telling;no comment;"
        "i'd rather not;that's private;won't say"
    ),
    Intent.DONT_KNOW: split(
        "i don't know;don't know;dunno;no idea;not sure;i'm not sure;i am not sure;i do not know;unsure;idk;"
        "i don't know …;no clue;no idea …;no clue …;not sure …;i'm not sure …;i can't remember;can't remember;"
        "don't remember;hard to say"
    ),
}


DESTROYS = Destroys(
    forget=(
        "delet*|eras*|wip*|remov*|destroy*|get_rid|scrub*|purge*|forget|gone|cleared & my_data|"
        "my_personal_data|all_data|my_details|my_account|my_record|my_records|my_information|my_info|"
        "my_file|my_profile|my_entire_history|my_whole_history",
        "delet*|eras*|wip*|remov*|destroy*|get_rid|scrub*|purge*|forget|gone & everything|every|all|"
        "anything & me|my|mine|you_know|stored & know|stored|have|hold|kept|keep|got|about|on|mine|data|"
        "measurement*|readings|messages|record*",
        "delete|erase|wipe & everything|it_all|all_of_it & please|now|for_good|permanently|forever",
        "right_to_be_forgotten|gdpr & delet*|eras*|forgotten|remov*",
        "data|account|everything & deleted|erased|removed|wiped & want|please|like|need|must",
    ),
    leave=(
        "unsubscribe_me|unsubscribe_please|please_unsubscribe|want_to_unsubscribe",
        "quit*|quitting|leav*|left|exit*|withdraw*|resign*|drop*_out|dropping_out|pull*_out|pulling_out|"
        "opt*_out|done_with|finished_with|end & programme|program|study|scheme|course|enrolment|"
        "enrollment|participation|membership",
        "take_me_off|remove_me|sign_me_off|sign_me_out|get_me_out|unenrol_me|unenroll_me|cancel & "
        "programme|program|list|enrolment|enrollment|membership|participation|subscription",
        "!no_longer|dont|do_not|not & want|wish|part & programme|program & part|in|continue|any_more|anymore|belong|be",
        "!no_longer & want|wish & part_of_this|take_part|continue|participate",
        "im_out|i_am_out|i_quit|im_quitting|i_want_out|want_out & for_good|permanently|not_coming_back|"
        "programme|program|of_this_programme|of_this_program",
        "stop|end|cancel & messaging|my_participation|my_enrolment|my_membership|sending_me_messages|"
        "contacting & me|my & for_good|completely|forever|altogether|programme|program",
    ),
    no="not|dont|do_not|never|wont|didnt|havent|no|nobody|isnt|doesnt|without",
    if_=(
        "if|when|unless|suppose|what_happens|wonder|would_it|before_i|almost|nearly|thought_about|"
        "thinking|husband|wife|friend|sister|brother"
    ),
    partly=(
        "last|latest|today*|yesterday*|tonight*|reminder*|app|number|entry|shoes|photo*|weight|waist|"
        "hip*|pulse|monday|tuesday|wednesday|thursday|friday|saturday|sunday|phone|accidentally|mistake|"
        "wrong|pain*"
    ),
)
