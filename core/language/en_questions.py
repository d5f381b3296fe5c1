"""English: what clients ask in the middle of everyday life."""

from __future__ import annotations

from core.language.lexicon import Question

_COACH = "@|coach|trainer|instructor"

QUESTIONS: dict[Question, tuple[str, ...]] = {
    Question.MEDICAL: (
        "can|should|may|do_i|is_it|what|ok_to|safe & tablet*|pill*|medicine*|medication*|dose|insulin|antibiotic*|"
        "painkiller*|ibuprofen|paracetamol|statin*|blocker*",
        "can|should|may|is_it|safe|ok_to|bad_to & exercise|train|walk|gym|workout|sport|swim|run|test|do_it & "
        "cold|flu|fever|ill|sick|pain|sore|knee*|back|hurt*|injur*|pregnant|infection|covid|surgery|operation|headache",
        "is_it_normal|is_that_normal|normal_to|why_do|why_does|why_is|why_am & "
        "tired|sore|ache*|hurt*|stiff|cramp*|thirsty|itch*",
        "do_i_have|could_it_be|is_it & diabetes|cancer|disease|infection|arthritis",
        "without_trying|for_no_reason|no_idea_why & lost|losing|weight",
    ),
    Question.FOOD: (
        "what|can|should|may|which|how_much|how_many & eat|eating|food*|diet|calories|protein|sugar|bread|chocolate|"
        "alcohol|wine|beer|carbs|breakfast|snack*|vitamin* & !before|after|test|weigh*",
    ),
    Question.FREE: (
        "is|does|do_i|how_much|will|what & free|cost|costs|pay|price|charge|charged & !time|day|slot|hour",
    ),
    Question.WHO_SEES: (
        "^who|who_can|who_else|who_will & see|sees|read|reads|know|knows|look|looks|access|get|gets",
        f"^does|^do|^can|^will|^is & {_COACH}|anyone|anybody|everyone|everybody|others|group|insurance|employer|family|"
        "boss & see|sees|read|reads|reading|know|look",
        "is_this|is_it|are_my|is_my & private|confidential|secret|shared",
        "where|what & my_data|my_numbers|my_answers & go|kept|stored|happens",
    ),
    Question.FOR_COACH: (
        f"{_COACH} & can|could|please|ask|tell|let|give|say_hi|pass & !who|sees|reads|talk_to|speak_to|write_to|change|"
        "new|another|other|leave|stop",
        f"{_COACH} & wants_to|need_to|want_to|like_to & hear|know|ring|call|phone|see_me|meet",
        f"{_COACH} & ring_me|call_me|phone_me|text_me|see_me|meet_me|thank*",
        "@ & talk_to|talk_with|speak_to|speak_with|chat_to|chat_with & want|want_to|wanna|like_to|need_to|have_to|"
        "wish_to|can_i|could_i|may_i|let_me",
    ),
    Question.WHO: (
        "who_are_you|what_are_you|who_is_this|whos_this|who_is_writing|am_i_talking_to|anyone_there|anybody_there|"
        "someone_there|what_is_your_name|whats_your_name|are_you_real|are_you_human|is_anyone_reading",
        "are_you|is_this|are_u & robot|bot|human|machine|person|computer|program|real|doctor|ai",
    ),
    Question.THERE: (
        "are_you_there|are_u_there|you_there|r_u_there|anybody_there|anyone_there|are_you_still_there|are_you_working",
    ),
    Question.HOW_ARE_YOU: ("how_are_you|how_r_u|how_are_things|hows_things|how_are_u|hows_you|how_do_you_do",),
    Question.PHOTO: (
        "can|could|may|shall|should|do_you & send|take|upload|share|accept & photo*|picture*|video*|selfie*|voice|"
        "screenshot* & !me_a|show",
    ),
    Question.HOW_LONG: (
        "how_long|how_many_minutes|how_much_time & take|takes|need|needs & !programme|program|weeks|months|go_on|"
        "over|to_see",
    ),
    Question.HOW_OFTEN: (
        "why|how_come|why_not & every|only|weekly|month|monthly|often|once & week*|month*|day|days|daily|often|measure",
        "how_often & do|should|measure|weigh|test|ask",
    ),
    Question.MUST: (
        "do_i_have_to|must_i|do_i_need_to|do_i_really_have_to|have_i_got_to & answer|do|test*|question*|measure|weigh|"
        "all|them|it|every|send",
        "is_it|is_this & compulsory|mandatory|optional|required",
    ),
    Question.MISSED: (
        "what_if|what_happens|is_it_bad|sorry|does_it_matter & miss|missed|skip|skipped|forgot|forget|late & !tablet*|"
        "pill*|medicine|dose|insulin|me|data",
        "i_forgot|i_missed|i_have_missed|ive_missed & last_week|yesterday|week|check_in|last_time|monday|weekend",
    ),
    Question.WEIGH: (
        "can|may|should|could|allowed|ok|okay|when|want_to|good_idea|shall|do_i|am_i & weigh|scales|scale|weighing & "
        "!why|what|much|was|did|have_to|lose|less|more",
        "when|which_day|what_day & weigh_in|next_weigh*|weigh_again",
    ),
    Question.CHANGED: (
        "i|ive|my|have_i|did_my|has_my|did_i & lost|gained|put_on|dropped|shed|gone_up|gone_down|went_up|went_down|"
        "come_down|go_down|go_up|gain|lose|lost_some|changed|shrunk & weight|kilo*|kg|kgs|pound*|lb|lbs|stone|cm|"
        "inch*|waist|hips|pulse|blood_pressure|belly|tummy & !want*|need|how|help|cant|to|now|friend|sister|brother|"
        "husband|wife|mum|if|will|should|would|why",
    ),
    Question.SINCE: (
        "show|see|chart|graph|picture|draw & since|from_the_start|from_the_beginning|from_january|from_february|"
        "from_march|from_april|from_may|from_june|from_july|from_august|from_september|from_october|from_november|"
        "from_december|last_month|past|last_weeks|whole",
    ),
    Question.FIRST: (
        "what|whats|how_much|tell_me & at_the_start|at_the_beginning|first|starting|baseline|when_i_started|"
        "when_we_started & weigh|weighed|was|were|my|weight|waist|pulse",
    ),
    Question.LAST: (
        "what|whats|how_much|tell_me|when & last|latest|previous|before_that & was|is|my|did|weigh|number|reading|"
        "time & "
        "!last_week|ask|week",
        "did_you|have_you|did_it|did_that & get|got|receive|received|save|saved|keep|store|stored|arrive|go_through",
    ),
    Question.OVER: (
        "is|when|how_long|are|has|does|will|how_many & over|finished|end|ends|ended|finish|finishes|go_on|goes_on|"
        "run_for|weeks_left|longer & programme|program|this|it|course|we|left|longer & !test|walk|take|day|question",
        "how_many_weeks|how_many_more_weeks|how_much_longer & left|to_go|more|longer|this|are_there",
    ),
    Question.NEXT: (
        "whats|what|when|whens|which_day & next|coming_up & !mean|goal|appointment|bus|normal",
        "what|when & will_you|do_you|are_you_going_to & ask|write|message & !mean",
        "what_happens & next|now|then|after_this",
    ),
    Question.NORMAL: (
        "what|whats|which|how_high|how_low|how_much|how_many & normal|usual|average|typical|ideal|range & !today|feel|"
        "is_this_thing",
        "what_should|how_much_should|how_high_should|how_many_should & be|weigh|have|do",
        "^whats|^what_is|^what_would_be & good|healthy & pulse|blood_pressure|weight|waist|number|score|result|bp|time|"
        "value|heart_rate|walk",
        "for_my_age|at_my_age & normal|good|ok|usual|average|bad|fine|right",
    ),
    Question.WHY_TEST: (
        "why|what_for|point_of|purpose|reason_for & test*|measure|measuring|waist|hip|hips|weigh|weight|pulse|tape|"
        "chair|blood_pressure|walk|stand*|balance|number|energy|question* & !cant|lose|losing|gain*|gained|tired|hurt*|"
        "not|didnt|up|down|higher|lower|so|only|every|often|more|less",
        "what_is|whats|what_are|what_do|what_does & test|tape|chair|walk|waist|hips|balance|step & for|show|tell|tells",
        "why & ask|asking|want|need & that|this|me|it",
    ),
    Question.MEANING: (
        "what|whats & mean|means|meaning|mean_by & !you",
        "what_does|what_do|what_is|whats|explain & chance|band|verdict|that_number|that_result|range",
        "i_dont|i_do_not|dont|cant & get|understand|follow & number*|result*|that|chance|picture|chart|it_means",
        "so_what_is_that|what_does_it_say|is_that_a_lot|what_am_i_looking_at",
    ),
    Question.DOING: (
        "how_am_i_doing|how_am_i_getting_on|how_am_i_going|any_progress|made_progress|made_any_progress|"
        "am_i_on_track|is_it_working|is_this_working|does_it_work|does_this_work|did_it_work|has_it_worked|"
        "have_i_improved|getting_anywhere|am_i_improving|how_have_i_done|did_i_do_well|how_did_i_do",
        "am_i & getting|doing & better|worse|fitter|stronger|well|ok|anywhere|good",
        "is_it|is_this|has_it & helping|worth_it|made_a_difference",
    ),
    Question.GOOD: (
        "^is|^are|^was|^were|is_that|is_it|is_this|was_that|is_my|are_they|are_those|isnt_that & good|ok|okay|fine|bad|"
        "normal|healthy|alright|right|high|low|great|terrible|big|much|better|worse|dangerous|worrying|problem & !to|"
        "when|while|good_time|right_time|bad_time|day|place|if|idea|weather|chair",
        "how_good|how_bad & that|is_it|is_my",
        "should_i|do_i_need_to|need_i & worry|be_worried|worried|concerned",
    ),
    Question.SWEARING: (
        "fuck*|shit|shite|bullshit|bollocks|crap|arse|arsehole|asshole|wtf|bloody_stupid|bloody_useless|stupid_bot|"
        "stupid_thing|stupid_machine|you_idiot|useless|rubbish|piss_off|pissed_off|you_suck|hate_you|hate_this|"
        "shut_up|this_is_stupid|so_annoying|fed_up_with_this|fed_up_with_you & !feel|felt|feeling|like_shit|like_crap|"
        "pain|hurt*|sleep|slept|life|myself|body",
    ),
    Question.BYE: (
        "^good_night|^goodnight|^night_night|^bye|^goodbye|^see_you|^see_ya|^take_care|^have_a_nice|^have_a_good|"
        "^talk_soon|^until_next|^till_next|^cheerio & !feel",
    ),
    Question.GLAD: (
        "^haha*|^hehe*|^lol|^hihi*|^funny|^cool|^brilliant|^lovely|^wow|^hooray|^yay & !weather|day|it|but",
    ),
}
