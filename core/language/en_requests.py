"""English: what coaches ask for."""

from __future__ import annotations

from core.language.lexicon import Request

REQUESTS: dict[Request, tuple[str, ...]] = {
    Request.EXPORT: ("export*|csv|fhir|spreadsheet|download|raw_data", "all|the & readings|data|numbers"),
    Request.PAGE: ("page|print*|sheet|pdf|report",),
    Request.PICTURE: ("picture*|chart*|graph*|curve|plot|trend|drawing",),
    Request.PLAN: ("plan|plans|programme|program|measures|schedule",),
    Request.NOTE: ("note|notes",),
    Request.HISTORY: ("history|past|alarms|flags|happened_before",),
    Request.CARD: ("show|see|open|card|look_at|tell_me|find|how_is|hows|how_are|hows_it|what_about|where_is",),
    Request.WRITE: ("^write|^tell|^ask|^answer|^message|^say|^text|^reply|^send & !tell_me",),
    Request.THREAD: ("messages|thread|conversation|chat|wrote|written|writing", "what & say|said"),
    Request.STAND_IN: (
        "stand*_in|deputy|deputies|covers|cover_for|replaces|replace & !client*",
        "i_am|im|i_will_be|ill_be|going & away|holiday|holidays|vacation|leave",
    ),
    Request.INVITE: ("invite|invitation|new|add & client|person|somebody|someone|link",),
    Request.REPORT: ("report & practice|quarter|employer|pooled", "quarterly_report|practice_report"),
    Request.NEEDS_ME: (
        "who|anybody|anyone|somebody|someone|anything & needs_me|need_me|needs_a_person|"
        "urgent|waits|waiting|needs_help|"
        "needs_attention|needs_to_be_called",
        "what_is_new|whats_new|anything_new|whats_up",
    ),
    Request.CASELOAD: (
        "^my_clients|^my_people|^all_clients|^all_my_clients|^everybody|^everyone",
        "show|list|see|who_are|open & clients|people|caseload|everybody|everyone",
    ),
    Request.WEEK: ("^this_week|^the_week|^my_week|digest", "how_was|how_is|show|see & week|monday"),
}
