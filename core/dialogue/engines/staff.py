"""Decide one event of a coach's or organiser's conversation.

    needs(state, event)             -> what to load, through `bot.store.caseload` only
    step(state, event, facts, now)  -> StaffOutcome(state, effects)

Total, like the clients' engine. A button or a command acts only on clients that are in the facts, and only those of
this coach's caseload ever are: anything else is answered with `NotYours`, which reveals nothing more. A text is
interpreted in this order: an open question; a client's full name; a command typed as plain words; an intent; a name or
the beginning of one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from core.dialogue.commands import REQUESTED, STAFF, STAFF_BUTTONS
from core.dialogue.kit.commands import Argument, Who
from core.dialogue.kit.effects import number_in, undrawn
from core.dialogue.kit.events import Attachment, Command, Due, Event, Press, Text
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, NotText, OldButton
from core.dialogue.organiser import cohorts, open_question
from core.dialogue.staff import card as cards_of
from core.dialogue.staff import caseload, digest, files, naming, plan, settings, undo, writing
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.cohort_states import InvitingOrganiser, PlanningCohort, SureOfCohort
from core.dialogue.staff.facts import (
    CardFact,
    CardOf,
    CardsFlagged,
    CardsNamed,
    Caseload,
    CaseloadOf,
    Cohorts,
    MentionedIn,
    Need,
    OtherCoaches,
    RepliedTo,
    StaffFacts,
    Templates,
    WrittenTo,
)
from core.dialogue.staff.names import all_names, meant, told
from core.dialogue.staff.rows import About, StaffButton
from core.dialogue.staff.states import (
    AskingSure,
    ChangingOwn,
    ChangingSlot,
    ChoosingClient,
    ChoosingDeputyDays,
    ConfirmingWords,
    DealingWith,
    Inviting,
    NamingClient,
    NamingClinician,
    NamingTemplate,
    NotingOn,
    StaffState,
    Ticking,
    WritingTo,
)
from core.dialogue.staff.step import StaffOutcome, StaffStep, about
from core.language import Intent, Lexicon, plain, words_for
from core.language.intents import intent_of, weekday_and_time
from core.language.lexicon import Request
from core.language.requests import OF_A_MEASURE, OF_NOBODY, leads, requests_in
from core.language.text import bare_words
from core.understanding.answers_in_text import names_in
from core.understanding.health_facts import Stance, What, health_in

OF_OWN_CLIENTS = (NotingOn, NamingClient, ChangingSlot, NamingTemplate, NamingClinician, AskingSure)
# What a deputy may.
IN_PLACE = frozenset({"card", "thread", "past", "saw", "clear", "done", "write", "pick", "sendto", "unsend"})
SHOWS = frozenset({Request.PICTURE, Request.EXPORT, Request.PAGE, Request.CARD, Request.PLAN})
OF_A_LIST = frozenset({Request.NEEDS_ME, Request.CASELOAD, Request.INVITE})  # never the name of somebody new
NAME_WORDS = 4  # a longer text cannot be a name
FEWEST_LETTERS = 4  # of a line about what was done: "rang"
SHORT = 60  # characters; a longer text that names a measure tells somebody something


OfOne = NamingClient | DealingWith | ChangingSlot | NamingTemplate | NamingClinician  # questions about one client


# --- what to load -----------------------------------------------------------------------------------------------


def needs(state: StaffState, event: Event, language: str) -> tuple[Need, ...]:
    """The facts a step needs. Bounded: at most one list, a few cards, templates, coaches."""
    words = words_for(language)
    found = (*_needs(state, event, words), *_needs_of_undo(state, event, words))
    asking = state.asking
    return (*found, WrittenTo(asking.client_id)) if isinstance(asking, WritingTo | ConfirmingWords) else found


def _needs_of_undo(state: StaffState, event: Event, words: Lexicon) -> tuple[Need, ...]:
    """The client of what would be undone."""
    typed = isinstance(event, Text) and intent_of(event.text, words) is Intent.UNDO
    client = undo.client_of(state.undo)
    return (CardOf(client),) if client and (typed or (isinstance(event, Command) and event.name == undo.NAME)) else ()


def _needs(state: StaffState, event: Event, words: Lexicon) -> tuple[Need, ...]:
    match event:
        case Due(instead_of=coach) if coach:
            return (CaseloadOf(coach),)
        case Due():
            return (Caseload(), CardsFlagged())
        case Command(name=name, argument=argument):
            return _needs_of_command(name, argument)
        case Press(data=data):
            return _needs_of_press(state, data)
        case Text(text=text):
            replied = (RepliedTo(event.reply_to),) if event.reply_to else ()
            needed = _needs_of_text(state, event.at, text, words)
            return tuple(dict.fromkeys((*needed, MentionedIn(text), *replied)))
        case _:
            return ()


def _needs_of_command(name: str, argument: str) -> tuple[Need, ...]:
    row = STAFF.named(name)
    return () if row is None else row.needs(argument)


def _needs_of_press(state: StaffState, data: str) -> tuple[Need, ...]:
    verb, value = _verb(data)
    button = STAFF_BUTTONS.get(verb)
    needed = () if button is None else button.needs(value)
    if button is None or _is_over(button, value, data, state):
        needed = (*needed, *open_question.needs(state.asking))
    if isinstance(state.asking, ChoosingClient) and state.asking.words:
        needed = (*needed, MentionedIn(state.asking.words))
    return tuple(dict.fromkeys(needed))


def _is_over(button: StaffButton, value: str, data: str, state: StaffState) -> bool:
    """Whether this is a choice, and its question is no longer open."""
    return button.is_choice(value) and undrawn(data)[1] != state.question


def _needs_of_text(state: StaffState, at: datetime, text: str, words: Lexicon) -> tuple[Need, ...]:
    asking = state.asking
    match asking if not isinstance(asking, WritingTo) or writing.is_open(asking, at) else None:
        case PlanningCohort() | SureOfCohort():
            return (
                Cohorts(),
                OtherCoaches(),
                Caseload(),
                *_needs_of_command(*(_typed_command(text, words) or ("", ""))),
            )
        case WritingTo(client) | NotingOn(client):
            return (CardOf(client),)
        case NamingClient(client) | DealingWith(client) | ChangingSlot(client):
            return (CardOf(client), *_needs_of_any(text, words))
        case NamingTemplate(client) | NamingClinician(client):
            return (CardOf(client), *_needs_of_any(text, words))
        case ConfirmingWords():
            return (*open_question.needs(asking), *_needs_of_any(text, words))
        case ChoosingDeputyDays():
            return (OtherCoaches(), *_needs_of_any(text, words))
        case AskingSure(what="forget"):
            return (Templates(), *_needs_of_any(text, words))
        case AskingSure(client_id=client):
            return (CardOf(client), OtherCoaches(), *_needs_of_any(text, words))
        case Inviting():
            return (Templates(), *_needs_of_any(text, words))
        case _:
            return _needs_of_any(text, words)


def _needs_of_any(text: str, words: Lexicon) -> tuple[Need, ...]:
    """What a text needs that answers no question."""
    if (typed := _typed_command(text, words)) is not None:
        return tuple(dict.fromkeys((Caseload(), *_needs_of_command(*typed))))
    named = (CardsNamed(_bare(text), whole=True),) if len(text.split()) <= NAME_WORDS else ()
    return (Caseload(), *named, *_needs_of_request(text, words))


def _needs_of_request(text: str, words: Lexicon) -> tuple[Need, ...]:
    """What is asked for in plain words: something of whoever is named, or else the first that is of nobody."""
    asked = requests_in(text, words)
    short = len(text) <= SHORT
    of_one = any(request not in OF_NOBODY for request in asked) or (
        short and (names_in(text, words) or _cautions_in(text, words))
    )
    general = next((request for request in asked if request in OF_NOBODY), None)
    verb, value = _verb(REQUESTED[general]) if general not in (None, Request.DONE_THEM) else ("", "")
    return (
        *((CardsNamed(text, whole=True, anywhere=True),) if of_one else ()),
        *((OtherCoaches(),) if Request.HAND_OVER in asked else ()),
        *((Caseload(), CardsFlagged()) if Request.DONE_THEM in asked else ()),
        *(STAFF_BUTTONS[verb].needs(value) if verb else ()),
    )


# --- what to do -------------------------------------------------------------------------------------------------


def step(state: StaffState, event: Event, facts: StaffFacts, now: datetime) -> StaffOutcome:
    """Advance one staff conversation by one event."""
    d = StaffStep(state, facts, now, event.ref if isinstance(event, Text | Press | Command) else "")
    match event:
        case Text():
            _text(d, event, event.text.strip())
        case Press():
            _press(d, event.data)
        case Command():
            _command(d, event.name, event.argument)
        case Due():
            digest.due(d, event)
        case Attachment():
            d.say(NotText(event.kind, ""))
        case _:
            pass  # timers, news for clients and group events never belong to a staff conversation
    writing.say_what_is_open(d, event.at)
    undo.remember(d)
    return d.finish()


def joined(facts: StaffFacts, now: datetime) -> StaffOutcome:
    """The welcome for somebody who has just become a coach or organiser and is already in `facts`."""
    d = StaffStep(StaffState(), facts, now)
    settings.welcome(d)
    return d.finish()


def _may(d: StaffStep, who: Who) -> bool:
    if (d.coach and who.includes(Who.COACH)) or (d.organiser and who.includes(Who.ORGANISER)):
        return True
    d.say(NotForThisRole(), *settings.menu(d))
    return False


def _command(d: StaffStep, name: str, argument: str) -> None:
    """Run a command. It drops the open question, since the person has moved on."""
    d.ask(None)
    row = STAFF.named(name)
    if row is None:
        d.say(NotForThisRole(), *settings.menu(d))
    elif _may(d, row.who):
        row.act(d, argument)


def _verb(data: str) -> tuple[str, str]:
    verb, _, value = undrawn(data)[0].partition(":")
    return verb, value


def _press(d: StaffStep, data: str) -> None:
    """A button was pressed, perhaps of an old message: current rights apply, and a choice is made only once."""
    verb, value = _verb(data)
    button = STAFF_BUTTONS.get(verb)
    if button is None:
        d.say(OldButton(""), *(settings.menu(d) if d.asking is None else ()))
        open_question.put_again(d)
    elif _may(d, button.who):
        if _is_over(button, value, data, d.state):
            _stands(d, button, value)
            return
        d.used_up = button.is_choice(value)
        _act(d, button, value)


def _act(d: StaffStep, button: StaffButton, value: str) -> None:
    if button.about is About.CLIENT and button.verb not in IN_PLACE and any(c.for_coach for c in d.facts.cards):
        d.say(sm.NotYours())  # a deputy does what cannot wait, and changes nothing else
    else:
        button.act(d, value)


def _stands(d: StaffStep, button: StaffButton, value: str) -> None:
    """This button's question is over: nothing changes. What it was about is shown as it stands, then the open question
    again."""
    number = value.rpartition(":")[2] if button.verb == "sure" else value.partition(":")[0]
    d.say(OldButton(""))
    if button.about is About.CLIENT:
        if (card := d.card(number_in(number))) is not None:
            plan.say_plan(d, card)
    elif button.about is About.COHORT and any(str(c.cohort_id) == number for c in d.facts.cohorts):
        cohorts.opened(d, number)
    elif d.asking is None:
        d.say(sm.StaffHelp(d.coach, d.organiser), *settings.menu(d))
    open_question.put_again(d)


# --- text -------------------------------------------------------------------------------------------------------


def _text(d: StaffStep, event: Text, text: str) -> None:
    if not text:
        d.say(NotText("empty", ""))
        return
    if event.reply_to and d.facts.replied:
        writing.replied(d, text)
        return
    was_open = d.asking
    if isinstance(was_open, WritingTo) and not writing.is_open(was_open, event.at):
        d.ask(None)
    if isinstance(d.asking, OF_OWN_CLIENTS) and any(
        c.for_coach for c in d.facts.cards if c.client_id == getattr(d.asking, "client_id", 0)
    ):
        d.ask(None)  # it was asked when the client was theirs
        d.say(sm.NotYours())
        return
    if _for_open_question(d, text):
        return
    if was_open is not None:
        _only_named(d, text)
    if d.coach and any(plain(c.name) == plain(_bare(text)) for c in d.facts.cards):
        _choose(d, text)
    elif (typed := _typed_command(text, d.words)) is not None:
        _command(d, *typed)
    elif not (
        _asked_of_one(d, text)
        or _asked_of_nobody(d, text)
        or _act_on_intent(d, intent_of(text, d.words))
        or writing.offer_late(d, was_open, text)
    ):
        _other_text(d, text)


def _only_named(d: StaffStep, text: str) -> None:
    """The text is no answer to the open question, so the cards that were loaded for the answer do not count: only those
    whom the text names, or who may be what is asked about."""
    if Request.DONE_THEM in requests_in(text, d.words) or _typed_command(text, d.words) is not None:
        return
    named = {client for client, _ in d.facts.mentioned} | set(meant(all_names(d.facts.cards), _bare(text)))
    d.facts = replace(d.facts, cards=tuple(c for c in d.facts.cards if c.client_id in named))


def _bare(text: str) -> str:
    """A text without the marks around it: "Ada??" is a name."""
    return text.strip(" ?!.,;:¿¡؟،")


def _choose(d: StaffStep, text: str) -> None:
    """A name: the client whom the open question is about, or else a card."""
    what = _for_what(d)
    verb, _, more = what.partition(":")
    if len(d.facts.cards) == 1 and verb in STAFF_BUTTONS and verb not in ("write", "card"):
        d.ask(None)
        _act(d, STAFF_BUTTONS[verb], f"{d.facts.cards[0].client_id}{more and ':'}{more}")
    else:
        caseload.choose_client(d, text, what)


def _asked_of_one(d: StaffStep, text: str) -> bool:
    """Something of one client in plain words: "show me Ada's waist", "export Ada"; True if it was that."""
    measures = sorted(names_in(text, d.words)) if len(text) <= SHORT else []
    cautions = _cautions_in(text, d.words) if len(text) <= SHORT else ()
    found = [
        request
        for request in requests_in(text, d.words)
        if request not in OF_NOBODY and (measures or request not in OF_A_MEASURE)
    ]
    if not d.coach or not d.facts.mentioned or not d.facts.cards or not (found or measures or cautions):
        return False
    _only_named(d, text)
    if not d.facts.cards:
        return False
    if (leading := next((one for one in (Request.WRITE, Request.NOTE) if leads(text, one, d.words)), None)) and (
        _told(d, leading, text)
    ):
        return True
    asked = found[0] if found else None
    if measures and Request.LAST in found and asked in (Request.CARD, Request.THREAD):
        asked = Request.LAST
    if cautions and asked is None:
        return _on_one(d, "cautions", cautions[0])
    if asked is None or (asked in (Request.CARD, Request.ABOUT) and measures):
        asked = Request.PICTURE
    verb, more = REQUESTED[asked], ""
    if asked is Request.PICTURE:
        more = measures[0] if measures else ""
    elif asked is Request.EXPORT:
        more = next((form for form in files.FORMS if form in plain(text).split()), "")
    elif asked in (Request.ADD, Request.DROP):
        more = next((m for m in measures if m in plan.OFFERED), "")
    elif asked is Request.DAY and (day := weekday_and_time(text, d.words)[0]) is not None:
        verb, more = "slotday", str(day)
    if len(d.facts.cards) == 1:
        (only,) = d.facts.cards
        if asked in (Request.PAUSE, Request.CORRECT):
            d.ask(None)
            d.say(tm.TheirsToDo(only.name, asked.value), *about(only.client_id))
            return True
        if (
            measures
            and (asked is Request.LAST or (asked is Request.PICTURE and Request.PICTURE not in found))
            and _last(d, only, measures, asked)
        ):
            return True
        if asked in (Request.ADD, Request.DROP) and (more in _ticked(d, only)) is (asked is Request.ADD):
            more = ""  # it is so already: the list as it is
            if isinstance(d.asking, Ticking) and (d.asking.what, d.asking.client_id) == ("measures", only.client_id):
                plan.ticking_again(d, d.asking)
                return True
        if verb == "slotday" and not only.for_coach:
            d.say(tm.NewDay(only.name, int(more)))
    return _on_one(d, verb, more)


def _ticked(d: StaffStep, card: CardFact) -> tuple[str, ...]:
    """The measures of a client as an open list of them has it so far, or else as planned."""
    asking = d.asking
    ours = isinstance(asking, Ticking) and (asking.what, asking.client_id) == ("measures", card.client_id)
    return asking.chosen if ours and isinstance(asking, Ticking) else card.plan.measures


def _on_one(d: StaffStep, verb: str, more: str) -> bool:
    """The same as a button about the client named; whom, if there are several. Nothing is changed by it: what it opens
    has buttons of its own."""
    if len(d.facts.cards) > 1:
        caseload.which(d, f"{verb}:{more}".rstrip(":"), "")
        return True
    (only,) = d.facts.cards
    held = verb == "cautions" and more in {c.value for c in only.profile.cautions}
    value = "" if held else more
    _act(d, STAFF_BUTTONS[verb], f"{only.client_id}{value and ':'}{value}")
    return True


def _told(d: StaffStep, request: Request, text: str) -> bool:
    """ "tell Ada well done", "note for Ada: prefers mornings": whom and what in one text; False if the words are not
    there."""
    ids, words = told(all_names(d.facts.cards), text, d.facts.language)
    cards = tuple(c for c in d.facts.cards if c.client_id in ids)
    if request is Request.NOTE:
        colon = text.partition(":")[0]
        if not ids and len(d.facts.cards) == 1 and colon != text and len(bare_words(plain(colon))) == 1:
            cards, words = d.facts.cards, text.partition(":")[2].strip()  # "note: Ada prefers mornings"
        if not words or (":" not in text and len(words.split()) < 2) or len(cards) != 1:
            return False
        (only,) = cards
        if only.for_coach:
            d.say(sm.NotYours())
        else:
            caseload.add_note(d, only, words)
        return True
    words = _without_joint(words, d.words)
    if not words or not cards:
        return False
    if len(cards) > 1:
        d.facts = replace(d.facts, cards=cards)
        caseload.which(d, "write", words[: writing.LONGEST_WORDS])
    else:
        writing.offer_told(d, cards[0], words)
    return True


def _without_joint(words: str, lexicon: Lexicon) -> str:
    """The words to be sent, without what joins them to "tell Ada": "that", "to"."""
    first, _, rest = words.partition(" ")
    return rest.strip() if rest.strip() and plain(first).strip(",") in lexicon.joints else words


def _last(d: StaffStep, card: CardFact, measures: Sequence[str], asked: Request) -> bool:
    """The newest value from their card, where that is asked for, or where there is no picture of it yet."""
    lines = {line.measure: line for line in cards_of.lines(card)}
    key = next((m for m in measures if m in lines), measures[0])
    if asked is Request.PICTURE and (key in cards_of.drawable(card) or key not in lines):
        return False
    d.ask(None)
    d.say(sm.LastSaid(card.name, key, lines.get(key)), *about(card.client_id))
    return True


def _asked_of_nobody(d: StaffStep, text: str) -> bool:
    """Something of nobody in particular: "who needs me", "my clients"; True if it was that."""
    asked = next((request for request in requests_in(text, d.words) if request in OF_NOBODY), None)
    if not d.coach or d.facts.mentioned or asked is None:
        return False
    if asked is Request.DONE_THEM:
        return _done_with_them(d)
    verb, value = _verb(REQUESTED[asked])
    _act(d, STAFF_BUTTONS[verb], value)
    return True


def _done_with_them(d: StaffStep) -> bool:
    """ "I rang her": the one client with an open flag, or the choice among several; False if there is none."""
    flagged = tuple(c for c in d.facts.cards if c.flags)
    if not flagged:
        return False
    d.facts = replace(d.facts, cards=flagged)
    return _on_one(d, REQUESTED[Request.DONE_THEM], "")


def _other_text(d: StaffStep, text: str) -> None:
    """A text that is no command: thanks, part of a name, or words that may be for somebody."""
    intent = intent_of(text, d.words)
    short = len(text.split()) <= NAME_WORDS
    thanks = short and not d.facts.mentioned and any(intent_of(w, d.words) is Intent.THANKS for w in text.split())
    if intent is Intent.THANKS or thanks:
        settings.thanked(d)
    elif intent is Intent.GREETING:
        settings.greeted(d)
    elif d.coach and short and d.facts.cards:
        _choose(d, text)
    elif d.coach and writing.offer(d, text):
        pass
    elif d.coach and short and d.facts.rows and not d.facts.mentioned and _like_a_name(text) and intent is None:
        d.say(sm.NobodyFound(text[:64]), *settings.menu(d))
    else:
        d.say(sm.StaffNotSure(d.coach, d.organiser), *settings.menu(d))


def _like_a_name(text: str) -> bool:
    """Letters only, and no question."""
    return not text.rstrip().endswith(("?", "؟")) and all(c.isalpha() or c in " .'’-" for c in text)


def _for_what(d: StaffStep) -> str:
    return d.asking.what if isinstance(d.asking, ChoosingClient) else "card"


def _typed_command(text: str, words: Lexicon) -> tuple[str, str] | None:
    """ "caseload", "invite Ada", "write Ben well done": a command without its slash. Never a name alone."""
    if Request.DIGEST_DAY in requests_in(text, words) and not text.startswith("/"):
        return None  # "digest on Fridays please" is about when it comes
    first, _, rest = text.partition(" ")
    name = plain(first).strip().lstrip("/")
    row = STAFF.named(name)
    if row is None or row.argument is Argument.LINK or (row.argument is Argument.NONE and rest.strip()):
        return None
    return name, rest.strip()


def _for_open_question(d: StaffStep, text: str) -> bool:
    """Pass a text to the question it answers; True if it did."""
    intent = intent_of(text, d.words)
    asking = d.asking
    if asking is not None and intent is Intent.STOP and len(text.split()) <= 2:  # a longer text may be for a client
        d.ask(None)
        d.say(KeptAsItWas(), *settings.menu(d))
        return True
    match asking:
        case WritingTo(client) if _asks_about(d, text, client) and (card := d.card(client)) is not None:
            writing.sure_of_words(d, card, text)
        case WritingTo():
            writing.words_typed(d, asking, text)
        case ConfirmingWords(client) if intent is Intent.YES:
            writing.send_to(d, str(client))
        case ConfirmingWords() if intent is Intent.NO:
            d.ask(None)
            d.say(KeptAsItWas(), *settings.menu(d))
        case ConfirmingWords():
            if writing.named_in_words(d, asking, text) is None and (asking.again or _asks_for_something(d, text)):
                writing.drop(d)
                return False
            writing.chosen_in_words(d, asking, text)
        case NotingOn(client):
            if _asks_instead(d, text, client):
                caseload.sure_of_note(d, client, text)
            else:
                caseload.note_typed(d, asking, text)
        case NamingClient() | DealingWith() | ChangingSlot() | NamingTemplate() | NamingClinician() if _moves_on(
            d, asking, text
        ):
            d.ask(None)
            d.say(KeptAsItWas())
            return False
        case Inviting() if _invites_nobody(d, text):
            d.ask(None)
            return False
        case NamingClient():
            naming.typed(d, asking, text)
        case DealingWith() if _tells_nothing(d, text):
            caseload.dealing_again(d, asking)
        case DealingWith():
            caseload.done_typed(d, asking, text)
        case NamingTemplate():
            plan.template_named(d, asking, text)
        case NamingClinician():
            plan.clinician_named(d, asking, text)
        case Inviting() if _typed_command(text, d.words) is None:
            settings.invitee_typed(d, asking, text)
        case ChangingSlot():
            return plan.slot_typed(d, asking, text)
        case PlanningCohort() if _typed_command(text, d.words) is None:
            cohorts.typed(d, asking, text)
        case InvitingOrganiser() if _typed_command(text, d.words) is None:
            cohorts.organiser_typed(d, text)
        case SureOfCohort() if intent is Intent.YES:
            cohorts.confirmed(d, asking)
        case ChangingOwn():
            return settings.own_typed(d, asking, text)
        case ChoosingDeputyDays():
            return settings.deputy_typed(d, asking, text)
        case AskingSure(what="forget") if plain(text) == plain(d.facts.label("forget_yes", "")):
            settings.forget_pressed(d, "")
        case AskingSure(what="forget") if intent is Intent.YES:
            settings.forget(d, "")  # a yes may have been meant for something else: ask again
        case AskingSure() if intent is Intent.YES:
            plan.confirmed(d, asking)
        case AskingSure() | SureOfCohort() if intent is Intent.NO:
            d.ask(None)
            d.say(KeptAsItWas(), *settings.menu(d))
        case ChoosingClient(words=words, among=among) if words and _one_of(d, text, among):
            caseload.pick(d, str(_one_of(d, text, among)))
        case _:
            return False
    return True


def _one_of(d: StaffStep, text: str, among: tuple[int, ...]) -> int:
    """The one client whom a short text means, of those asked about; 0 for nobody. Not a request that names them."""
    found = {c.client_id for c in d.facts.cards}
    short = len(text.split()) <= NAME_WORDS and not requests_in(text, d.words)
    return next(iter(found)) if short and len(found) == 1 and (not among or found <= set(among)) else 0


def _asks_for_something(d: StaffStep, text: str) -> bool:
    """Whether a text is a request of its own, or names a client: no answer to the question that is open."""
    intent = intent_of(text, d.words)
    acts = STAFF.meant_by(intent) is not None or intent in (Intent.LANGUAGE, Intent.ZONE, Intent.SLOT)
    asked = requests_in(text, d.words)
    return bool(
        acts
        or _typed_command(text, d.words) is not None
        or d.facts.mentioned
        or any(request in OF_NOBODY for request in asked)
        or meant(all_names(d.facts.cards), text)
    )


def _asks_instead(d: StaffStep, text: str, client: int) -> bool:
    """Whether words that were to be a note look like something else: a request, or about another client."""
    asked = requests_in(text, d.words)
    return (
        any(number != client for number, _ in d.facts.mentioned)
        or bool(d.facts.mentioned and asked)
        or any(request in (Request.NEEDS_ME, Request.CASELOAD) for request in asked)
        or (len(text.split()) == 1 and _typed_command(text, d.words) is not None)
    )


def _moves_on(d: StaffStep, asking: OfOne, text: str) -> bool:
    """Whether words that were to be a name, or a line about what was done, are a request instead."""
    asked = requests_in(text, d.words)
    if any(request in (Request.NEEDS_ME, Request.CASELOAD) for request in asked):
        return True
    if any(number != asking.client_id for number, _ in d.facts.mentioned):
        return bool(asked) or isinstance(asking, DealingWith | ChangingSlot)
    return bool(d.facts.mentioned) and (leads(text, Request.WRITE, d.words) or (bool(asked) and asked[0] in SHOWS))


def _tells_nothing(d: StaffStep, text: str) -> bool:
    """Whether a text does not say what was done: "ok", "hm", "done with Ada", a question."""
    said = text.split()
    return (
        intent_of(text, d.words) is not None
        or text.rstrip().endswith(("?", "؟"))
        or sum(c.isalpha() for c in text) < FEWEST_LETTERS
        or (len(said) < NAME_WORDS and intent_of(said[0], d.words) is Intent.DONE)
    )


def _invites_nobody(d: StaffStep, text: str) -> bool:
    """Whether what was to be the name of somebody new is a request: "Rose Page" is none."""
    asked = requests_in(text, d.words)
    long = len(text.split()) >= NAME_WORDS
    return bool(asked) and (long or bool(d.facts.mentioned) or asked[0] in OF_A_LIST)


def _asks_about(d: StaffStep, text: str, client: int) -> bool:
    """Whether words that were to go to a client ask for something about that very client."""
    asked = any(request not in OF_NOBODY for request in requests_in(text, d.words))
    return asked and {number for number, _ in d.facts.mentioned} == {client}


def _cautions_in(text: str, words: Lexicon) -> tuple[str, ...]:
    """The cautions that a text says somebody has: "Ada is pregnant"."""
    heard = health_in(text, words)
    facts = heard.facts if heard is not None else ()
    return tuple(f.value if f.what is What.CAUTION else "" for f in facts if f.stance is Stance.SO and f.sure)


def _act_on_intent(d: StaffStep, intent: Intent | None) -> bool:
    """Act on an intent in the coach's language; True if it is one that staff have."""
    row = STAFF.meant_by(intent)
    if row is not None:
        if _may(d, row.who):
            row.act(d, "")
        return True
    match intent:
        case Intent.LANGUAGE:
            settings.own(d, "language")
        case Intent.ZONE:
            settings.own(d, "zone")
        case Intent.SLOT:
            settings.own(d, "digest")
        case _:
            return False
    return True


__all__ = ["joined", "needs", "step"]
