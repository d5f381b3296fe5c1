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
        "run_out_of|ran_out_of|stopped_taking|stopped_my|come_off|forgot_to_take|forgot_my|missed_my|not_been_taking & "
        "tablet*|pill*|medicine*|medication*|insulin|inhaler|statin*|blood_thinner*",
        "without_trying|for_no_reason|no_idea_why & lost|losing|weight",
    ),
    Question.FOOD: (
        "what|can|should|may|which|how_much|how_many & eat|eating|food*|diet|calories|protein|sugar|bread|chocolate|"
        "alcohol|wine|beer|carbs|breakfast|snack*|vitamin* & !before|after|test|weigh*",
    ),
    Question.CAN_STOP: (
        "can_i|could_i|may_i|am_i_free_to|am_i_allowed_to|is_it_ok_to|what_if_i & stop|quit|leave|drop_out|opt_out|"
        "change_my_mind|cancel & !taking|tablet*|pill*|medic*|insulin|exercis*|training|smoking|drinking|eating",
    ),
    Question.ABOUT: (
        "what|whats & this_about|all_about|is_this_for|this_for|do_you_do|does_this_do|is_this_thing|samehour",
        "how_does_this_work|how_does_it_work|how_do_you_work|what_is_this_thing|what_is_the_idea|whats_the_idea|"
        "tell_me_more_about_this|what_am_i_signing_up_for",
        "will_you|do_you|are_you_going_to|how_often_will_you|how_often_do_you & "
        "write|message|text|ask_me|contact|bother & every_day|daily|often|every_week|weekly|all_the_time|a_lot",
    ),
    Question.ILL: (
        "i_have|ive|ive_got|i_got|got|have|caught|caught_a|down_with|in_bed_with|came_down_with|coming_down_with|"
        "recovering_from|tested|i_am|im|laid_up_with|with & "
        "flu|the_flu|covid|corona|a_cold|bad_cold|stinking_cold|heavy_cold|head_cold|bug|tummy_bug|stomach_bug|"
        "tonsillitis|bronchitis|sinusitis|virus|infection|chest_infection|fever|temperature|norovirus|shingles|"
        "food_poisoning|migraine & "
        "!can|should|may|he|she|they|husband*|wife|son|daughter|mum|dad|mother|father|sister|brother|friend*|kids|"
        "neighbour*|grandson|granddaughter|last_month|last_year|years_ago|no|not|never|havent|if|is|does|did",
        "^covid|^flu|^tested & positive|again|since|for|days|in_bed",
    ),
    Question.RESCHEDULE: (
        "remind|ask|message|write|text|check_in|check_ins|ping|do_it|do_this & instead|from_now_on|in_future|always|"
        "every_week|earlier|another_day|another_time|different_day|different_time|change|move|better|rather & "
        "!coach|husband|weigh|if|weight|waist|pulse",
        "evenings|mornings|afternoons|weekends & instead|rather|better|can_i_do|can_we_do|suit & !chair|tablet*|"
        "was|were",
        "can_we|could_we|can_you|could_you|id_like_to|i_want_to|how_do_i|how_can_i|i_need_to & change|move|switch|"
        "shift & day|time|slot|check_in|reminder|it & !goal|coach|measure*|unit*|language|weight|number",
    ),
    Question.TAKE_OUT: (
        "delete|remove|take_out|scrap|cancel|erase|cross_out|get_rid_of|strike_out|discard|undo & "
        "one|number|value|reading|entry|weight|waist|hip|hips|pulse|blood_pressure|energy|result|last & "
        "!everything|all|account|data|me|every",
    ),
    Question.NO_TOOL: (
        "no|dont_have|havent_got|have_no|havent|without|lost|cant_find|broken|broke|bust|flat_battery|battery|dead|"
        "mislaid|not_working|isnt_working|wont_work|stopped_working|packed_up|dont_own|lent & "
        "tape|tape_measure|measuring_tape|scales|scale|cuff|monitor|stopwatch|watch|chair|bp_machine|machine|"
        "tape_measures",
        "battery_dead|batteries_dead|battery_is_dead|batteries_are_dead|battery_flat|battery_is_flat|battery_ran_out|"
        "left_my_monitor|left_my_cuff|forgot_my_monitor|left_the_monitor & !phone|car|laptop|mobile",
    ),
    Question.MAY_SEND: (
        "can|could|may|shall|should|do_you_want|is_it_ok_to|want_me_to & "
        "send|give|tell|add|text|enter|record|log|have & "
        "blood_pressure|bp|pulse|heart_rate|weight|waist|hips|steps|readings|numbers|number & "
        "!photo*|picture*|coach|rowan|you_send|me_a|you_tell|you_give|screenshot*",
    ),
    Question.NOT_NOW: (
        "later|tonight|this_evening|after_work|after_lunch|after_dinner|when_i_am_home|when_im_home|when_i_get_home|"
        "when_i_get_in|in_a_bit|in_an_hour|another_time|some_other_time|tomorrow|at_the_weekend & "
        "ill|i_will|will_do|do_it|do_that|doing_it|answer|reply|send|finish|get_back|ask_me|remind_me|measure|"
        "let_you & "
        "!rowan|instead|always|from_now_on|weigh|stop|see|call|ring|can_i|should",
        "no_time|havent_time|havent_got_time|not_got_time|in_a_rush|in_a_hurry|cant_talk|cant_right_now|cant_just_now|"
        "cant_now|not_a_good_time|bad_time|im_driving|i_am_driving|in_a_meeting|im_busy|i_am_busy|bit_busy|too_busy|"
        "on_the_bus|on_the_train & !last|this_week|week|was|were|exercise|train_station|to_exercise|for_exercise",
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
        "how_much_have_i|how_much_did_i|how_many_kilos|how_many_pounds|have_i & lost|gained|put_on|lose|gain & "
        "!need|want|should|can|to",
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
        "compare|compared|against & others|other_people|other_women|other_men|average|my_age|everybody_else",
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
        "real|true|genuine|actual & change|difference|improvement|drop & chance|luck|error|blip|fluke|or_just|or_not",
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
        "am_i & normal|healthy|average|in_range|within_range & !weigh",
        "should_i|do_i_need_to|need_i & worry|be_worried|worried|concerned",
    ),
    Question.SWEARING: (
        "fuck*|shit|shite|bullshit|bollocks|crap|arse|arsehole|asshole|wtf|bloody_stupid|bloody_useless|stupid_bot|"
        "stupid_thing|stupid_machine|you_idiot|useless|rubbish|piss_off|pissed_off|you_suck|hate_you|hate_this|"
        "shut_up|this_is_stupid|so_annoying|ffs|for_gods_sake|"
        "for_goodness_sake|fed_up_with_this|fed_up_with_you & !feel|felt|feeling|like_shit|like_crap|"
        "pain|hurt*|sleep|slept|life|myself|body",
    ),
    Question.BYE: (
        "^good_night|^goodnight|^night_night|^bye|^goodbye|^see_you|^see_ya|^take_care|^have_a_nice|^have_a_good|"
        "^talk_soon|^until_next|^till_next|^cheerio & !feel",
    ),
    Question.WAIT: (
        "^hang_on|^hold_on|^one_sec|^one_second|^one_moment|^just_a_sec|^just_a_second|^just_a_moment|^just_a_minute|"
        "^wait_a|^bear_with_me|^brb|^two_minutes|^give_me_a_sec|^give_me_a_second|^give_me_a_moment & "
        "!weeks|week|holiday|months",
    ),
    Question.TIME_ME: (
        "^timer|^stopwatch|^stop_watch|time_me|time_it|start_the_clock|start_the_timer|set_a_timer|use_the_timer|"
        "count_the_seconds|count_the_time|tell_me_when & !every|week|next|last|weigh|results",
    ),
    Question.CHAT: (
        "tell_me_a_joke|joke|sing|song|poem|story & tell|know|sing|write|say & !not_a_joke|no_joke|only|was",
        "what_time_is_it|whats_the_time|whats_the_date|what_day_is_it|is_it_monday|is_it_friday|weather_today|"
        "what_is_the_weather|whats_the_weather|will_it_rain",
        "i_love_you|love_you|marry_me|will_you_marry_me|you_are_lovely|youre_lovely|you_are_funny|youre_funny|good_bot",
    ),
    Question.GRIEF: (
        "died|passed_away|has_gone|funeral|lost_my|buried|put_to_sleep & "
        "mum|mam|mother|dad|father|husband|wife|partner|son|daughter|brother|sister|nan|gran|grandma|grandad|friend|"
        "neighbour|dog|cat|uncle|aunt|funeral & !years_ago|phone|watch|weight|when_i_was|film|of_a|keys|at_the_age",
    ),
    Question.GOAL: (
        "id_like_to|i_would_like_to|i_want_to|hoping_to|aim_to|aiming_to|my_aim|my_goal|plan_to & "
        "lose|get_down_to|get_to|reach|get_under|get_below|be_down_to & "
        "kilo*|kg|kgs|stone|pound*|lb|lbs|cm|inch*|by_june|by_july|by_summer|by_christmas|by_easter & "
        "!help|cant",
        "by_january|by_february|by_march|by_april|by_may|by_june|by_july|by_august|by_september|by_october|by_november|"
        "by_december|by_summer|by_christmas|by_easter|by_my_birthday|by_the_wedding & kg|kilo*|stone|lb|lbs|"
        "pound*|cm|inch*",
        "forget|drop|cancel|scrap|change|delete|remove|see|show & goal|target & !you",
    ),
    Question.NO_WEIGHT: (
        "dont_want_to|do_not_want_to|no_more|stop|rather_not|hate|leave & "
        "weigh|weighed|weighing|my_weight_out|weigh_ins|the_scales|weight_out & !daily|every_day|so_often|today|"
        "this_week|now",
    ),
    Question.BODY: (
        "am_i|i_feel|i_look|im_so|i_am_so|im_too|i_am_too|i_hate|ashamed_of|disgusted_by & "
        "fat|too_fat|obese|huge|ugly|disgusting|overweight|too_heavy|enormous|my_body|my_belly|my_weight|how_i_look & "
        "!content|free|burn*|percent",
    ),
    Question.SORRY: (
        "^sorry|^im_sorry|^i_am_sorry|^apologies|^my_apologies|^oops_sorry & "
        "!for_your|i_forgot|forgot|missed|late|weight|waist|pulse|was|meant|not|wrong|cant|dont|didnt|its|it",
    ),
    Question.GLAD: (
        "^haha*|^hehe*|^lol|^hihi*|^funny|^cool|^brilliant|^lovely|^wow|^hooray|^yay & !weather|day|it|but",
    ),
}
