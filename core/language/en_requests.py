"""English: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.CORRECT: (
        "typo|mistyped|mistake",
        "delete|remove|correct|change|fix|undo & reading*|value*|number*|entry|entries|last",
    ),
    Request.ADD: ("^add|^include|^start|^put|^also|^please_add|^can_you_add|^could_you_add|add|ask_also",),
    Request.DROP: (
        "take|leave & off|out|away",
        "^remove|^drop|^stop|^no_more|without|stop_asking|stop_measuring|please_remove|can_you_remove|"
        "does_not_need|doesnt_need",
    ),
    Request.PRIVATE: (
        "should_not_see|shouldnt_see|must_not_see|mustnt_see|not_see|hide|dont_show|do_not_show|should_not_know|"
        "shouldnt_know|upset_by|upsets",
    ),
    Request.DAY: (
        "change|move|switch|set|shift|different|another|new & day|slot|time|check_in|monday*|tuesday*|wednesday*|"
        "thursday*|friday*|saturday*|sunday*",
        "check_in|checks_in|wants|prefers|can & monday*|tuesday*|wednesday*|thursday*|friday*|saturday*|sunday*",
    ),
    Request.PAUSE: (
        "pause|paused|on_hold|suspend|is_away|is_on_holiday|on_vacation|in_hospital|needs_a_break|takes_a_break",
    ),
    Request.HAND_OVER: (
        "hand & over",
        "^transfer|^pass|^hand|handover|take_over|takes_over",
        "^give & to",
    ),
    Request.BASELINE: (
        "baseline",
        "start_again|start_over|from_zero",
    ),
    Request.RENAME: ("rename|nickname",),
    Request.END: (
        "^delete|^remove|^discharge|^end|^stop|^finish|^cancel|^archive|^unsubscribe|^get_rid_of|^please_delete|"
        "^please_remove|has_left|is_leaving|has_quit|wants_to_stop & !remind*",
        "died|passed_away|is_dead",
    ),
    Request.DONE: (
        "done_with|dealt_with|sorted|rang|i_called|we_called|i_have_called|phoned|spoke|spoken|talked|visited|"
        "taken_care_of|took_care_of|handled",
        "clear|close|dismiss|resolve|tick_off & flag*|alarm*|alert*",
        "^clear|^cleared|^done",
    ),
    Request.EXPORT: (
        "export*|csv|fhir|spreadsheet|download|raw_data",
        "all|the & readings|data|numbers",
    ),
    Request.PAGE: ("page|print*|sheet|pdf|report",),
    Request.PICTURE: ("picture*|chart*|graph*|curve|plot|trend|drawing",),
    Request.PLAN: (
        "plan|plans|programme|program|measures|schedule",
        "daily|every_day|more_often|twice_a_week & weigh|weighed|weighing|weighs",
    ),
    Request.NOTE: (
        "note|notes",
        "^note|^notes|^add_note|^add_a_note|^make_a_note|^new_note|^remember|^nb",
    ),
    Request.HISTORY: ("history|past|alarms|flags|happened_before",),
    Request.CARD: ("show|see|open|card|look_at|tell_me|find|how_is|hows|how_are|hows_it|what_about|where_is",),
    Request.WRITE: (
        "^write|^tell|^ask|^answer|^message|^say|^text|^reply|^send & !tell_me|send_me|text_me|ask_me|remind_me|"
        "message_me|write_me|write_down",
        "^remind|^please_tell|^please_ask|^please_remind|^can_you_tell|^can_you_ask|^can_you_remind|"
        "^could_you_tell|^could_you_ask|^could_you_remind|^let|^pls_tell|^msg|^dm & !tell_me|remind_me|ask_me|"
        "write_down|let_me",
    ),
    Request.THREAD: (
        "messages|thread|conversation|chat|wrote|written|writing",
        "what & say|said",
    ),
    Request.LAST: (
        "what_did|what_was|what_is|whats|what_does|how_much|how_heavy|how_high|how_low|how_big|last|latest|newest|"
        "current|most_recent",
    ),
    Request.ABOUT: (
        "^why|^is|^are|^was|^has|^did|^does|^do|^should|^when|^what|^how|^which|^where|^who|^any_news|^and_how|"
        "^anything|^can|^could|good_for|worried_about|status|flagged & !you|your",
    ),
    Request.DONE_THEM: (
        "rang|called|phoned|spoke|spoken|talked|visited|done_with|dealt_with|sorted & her|him|them|it",
    ),
    Request.DIGEST_DAY: (
        "digest|summary & monday*|tuesday*|wednesday*|thursday*|friday*|saturday*|sunday*|every|later|earlier|instead",
    ),
    Request.QUIET: (
        "mute|unmute|silence|quiet|too_many_messages|stop_messaging_me|fewer_messages|less_messages|"
        "do_not_disturb|notifications|stop_bothering_me|not_at_night",
        "no|stop|dont_want|turn_off|cancel|less|fewer & digest|messages|messaging|sending",
    ),
    Request.STAND_IN: (
        "stand*_in|deputy|deputies|covers|cover_for|replaces|replace & !client*",
        "i_am|im|i_will_be|ill_be|going & away|holiday|holidays|vacation|leave",
        "i_am|im|i_will_be|ill_be|we_are & off|on_leave|sick|ill|unwell|not_working",
        "will_cover|can_cover|is_covering|covering|cover|fill_in|takes_over|fills_in",
        "^away|^off|^holiday|^on_holiday",
    ),
    Request.INVITE: (
        "invite|invitation|new|add & client|person|somebody|someone|link",
        "never_got|didnt_get|did_not_get|hasnt_got|cannot_find|cant_find|lost|resend|again|expired|does_not_work|"
        "doesnt_work & link|invitation|invite",
    ),
    Request.REPORT: (
        "report & practice|quarter|employer|pooled",
        "quarterly_report|practice_report",
    ),
    Request.NEEDS_ME: (
        "who|anybody|anyone|somebody|someone|anything & needs_me|need_me|needs_a_person|urgent|waits|waiting|"
        "needs_help|needs_attention|needs_to_be_called",
        "what_is_new|whats_new|anything_new|whats_up",
        "who|whom|anybody|anyone & flagged|should_i_call|should_i_ring|to_call|to_ring|do_i_call|worried|"
        "struggling|not_well|unwell|in_trouble",
        "is_that|is_it|is_this|are_they & real|serious|bad|urgent|true|worrying|significant|chance|dangerous",
        "flag|flags|flagged|alarm|alarms & what|why|mean*|how_many",
        "any_news|anything_urgent",
    ),
    Request.CASELOAD: (
        "^my_clients|^my_people|^all_clients|^all_my_clients|^everybody|^everyone",
        "show|list|see|who_are|open & clients|people|caseload|everybody|everyone",
        "how_many & clients|people & !checked_in|answered|replied|responded|missed",
        "^list|^clients",
    ),
    Request.WEEK: (
        "^this_week|^the_week|^my_week|digest",
        "how_was|how_is|show|see & week|monday",
        "who|how_many|anyone|anybody|everyone|everybody|which|has|have & answered|checked_in|replied|responded|"
        "missed|missing|answer|reply|not_answered|silent|quiet",
    ),
}

# What joins words to whom they are for: "tell Ada that ...".
JOINTS = frozenset({"that", "to", "know"})
