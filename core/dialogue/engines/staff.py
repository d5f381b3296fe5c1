"""Decide one event of a coach's or organiser's conversation.

    needs(state, event)             -> what to load, through `bot.store.caseload` only
    step(state, event, facts, now)  -> StaffOutcome(state, effects)

Total, like the clients' engine. A button or a command acts only on clients that are in the facts, and only those of
this coach's caseload ever are: anything else is answered with `NotYours`, which reveals nothing more. A text is
interpreted in this order: an open question; a client's full name; a command typed as plain words; an intent; a name or
the beginning of one.
"""

from __future__ import annotations

from datetime import datetime

from core.dialogue.commands import REQUESTED, STAFF, STAFF_BUTTONS
from core.dialogue.kit.commands import Argument, Who
from core.dialogue.kit.effects import number_in, undrawn
from core.dialogue.kit.events import Attachment, Command, Due, Event, Press, Text
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, NotText, OldButton
from core.dialogue.organiser import cohorts, open_question
from core.dialogue.staff import caseload, digest, files, naming, plan, settings, undo, writing
from core.dialogue.staff import messages as sm
from core.dialogue.staff.cohort_states import InvitingOrganiser, PlanningCohort, SureOfCohort
from core.dialogue.staff.facts import (
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
from core.dialogue.staff.names import words_after
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
    WritingTo,
)
from core.dialogue.staff.step import StaffOutcome, StaffStep
from core.language import Intent, Lexicon, plain, words_for
from core.language.intents import intent_of
from core.language.lexicon import Request
from core.language.requests import OF_NOBODY, requests_in
from core.understanding.answers_in_text import names_in

OF_OWN_CLIENTS = (NotingOn, NamingClient, ChangingSlot, NamingTemplate, NamingClinician, AskingSure)
# What a deputy may.
IN_PLACE = frozenset({"card", "thread", "past", "saw", "clear", "done", "write", "pick", "sendto", "unsend"})
NAME_WORDS = 4  # a longer text cannot be a name
SHORT = 60  # characters; a longer text that names a measure tells somebody something


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
            return (Cohorts(), OtherCoaches(), Caseload(), *_needs_of_command(*(_typed_command(text) or ("", ""))))
        case NamingClient(client):
            return (CardOf(client), Caseload())
        case WritingTo(client) | NotingOn(client) | DealingWith(client) | ChangingSlot(client):
            return (CardOf(client),)
        case NamingTemplate(client) | NamingClinician(client):
            return (CardOf(client),)
        case ConfirmingWords():
            typed = _typed_command(text)
            return open_question.needs(asking) if typed is None else _needs_of_command(*typed)
        case ChoosingDeputyDays():
            return (OtherCoaches(), Caseload())
        case AskingSure(what="forget"):
            return (Caseload(), Templates())
        case AskingSure(client_id=client):
            return (CardOf(client), OtherCoaches(), Caseload())
        case Inviting():
            return (Templates(), *_needs_of_command(*(_typed_command(text) or ("", ""))))
        case _:
            if (typed := _typed_command(text)) is not None:
                return tuple(dict.fromkeys((Caseload(), *_needs_of_command(*typed))))
            named = (CardsNamed(text, whole=True),) if len(text.split()) <= NAME_WORDS else ()
            return (Caseload(), *named, *_needs_of_request(text, words))


def _needs_of_request(text: str, words: Lexicon) -> tuple[Need, ...]:
    """What is asked for in plain words: something of whoever is named, or else the first that is of nobody."""
    asked = requests_in(text, words)
    of_one = any(request not in OF_NOBODY for request in asked) or (names_in(text, words) and len(text) <= SHORT)
    general = next((request for request in asked if request in OF_NOBODY), None)
    verb, value = _verb(REQUESTED[general]) if general is not None else ("", "")
    return (
        *((CardsNamed(text, whole=True, anywhere=True),) if of_one else ()),
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
    if isinstance(d.asking, OF_OWN_CLIENTS) and any(c.for_coach for c in d.facts.cards):
        d.ask(None)  # it was asked when the client was theirs
        d.say(sm.NotYours())
        return
    if _for_open_question(d, text):
        return
    if d.coach and any(plain(c.name) == plain(text) for c in d.facts.cards):
        caseload.choose_client(d, text, _for_what(d))
    elif (typed := _typed_command(text)) is not None:
        _command(d, *typed)
    elif not (
        _asked_of_one(d, text)
        or _act_on_intent(d, intent_of(text, d.words))
        or _asked_of_nobody(d, text)
        or writing.offer_late(d, was_open, text)
    ):
        _other_text(d, text)


def _asked_of_one(d: StaffStep, text: str) -> bool:
    """Something of one client in plain words: "show me Ada's waist", "export Ada"; True if it was that."""
    measures = sorted(names_in(text, d.words)) if len(text) <= SHORT else []
    asked = next((request for request in requests_in(text, d.words) if request not in OF_NOBODY), None)
    if not d.coach or not d.facts.mentioned or not d.facts.cards or (asked is None and not measures):
        return False
    if asked is None or (asked is Request.CARD and measures):
        asked = Request.PICTURE
    verb, more = REQUESTED[asked], ""
    if asked is Request.PICTURE:
        more = measures[0] if measures else ""
    elif asked is Request.EXPORT:
        more = next((form for form in files.FORMS if form in plain(text).split()), "")
    if len(d.facts.cards) > 1:
        caseload.which(d, f"{verb}:{more}".rstrip(":"), "")
        return True
    (only,) = d.facts.cards
    if asked is Request.WRITE and (words := words_after([only.name], text, d.facts.language)):
        return writing.offer(d, words)
    _act(d, STAFF_BUTTONS[verb], f"{only.client_id}{more and ':'}{more}")
    return True


def _asked_of_nobody(d: StaffStep, text: str) -> bool:
    """Something of nobody in particular: "who needs me", "my clients"; True if it was that."""
    asked = next((request for request in requests_in(text, d.words) if request in OF_NOBODY), None)
    if not d.coach or d.facts.mentioned or asked is None:
        return False
    verb, value = _verb(REQUESTED[asked])
    _act(d, STAFF_BUTTONS[verb], value)
    return True


def _other_text(d: StaffStep, text: str) -> None:
    """A text that is no command: thanks, part of a name, or words that may be for somebody."""
    intent = intent_of(text, d.words)
    short = len(text.split()) <= NAME_WORDS
    if intent is Intent.THANKS:
        settings.thanked(d)
    elif intent is Intent.GREETING:
        settings.greeted(d)
    elif d.coach and short and d.facts.cards:
        caseload.choose_client(d, text, _for_what(d))
    elif d.coach and writing.offer(d, text):
        pass
    elif d.coach and short and d.facts.rows:
        d.say(sm.NobodyFound(text[:64]), *settings.menu(d))
    else:
        d.say(sm.StaffNotSure(d.coach, d.organiser), *settings.menu(d))


def _for_what(d: StaffStep) -> str:
    return d.asking.what if isinstance(d.asking, ChoosingClient) else "card"


def _typed_command(text: str) -> tuple[str, str] | None:
    """ "caseload", "invite Ada", "write Ben well done": a command without its slash. Never a name alone."""
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
        case WritingTo():
            writing.words_typed(d, asking, text)
        case ConfirmingWords(client) if intent is Intent.YES:
            writing.send_to(d, str(client))
        case ConfirmingWords() if intent is Intent.NO:
            d.ask(None)
            d.say(KeptAsItWas(), *settings.menu(d))
        case ConfirmingWords() if _typed_command(text) is None:
            writing.chosen_in_words(d, asking, text)
        case NotingOn():
            caseload.note_typed(d, asking, text)
        case NamingClient():
            naming.typed(d, asking, text)
        case DealingWith():
            caseload.done_typed(d, asking, text)
        case NamingTemplate():
            plan.template_named(d, asking, text)
        case NamingClinician():
            plan.clinician_named(d, asking, text)
        case Inviting() if _typed_command(text) is None:
            settings.invitee_typed(d, asking, text)
        case ChangingSlot():
            return plan.slot_typed(d, asking, text)
        case PlanningCohort() if _typed_command(text) is None:
            cohorts.typed(d, asking, text)
        case InvitingOrganiser() if _typed_command(text) is None:
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
        case ChoosingClient(words=words) if words and len(d.facts.cards) == 1:
            caseload.pick(d, str(d.facts.cards[0].client_id))
        case _:
            return False
    return True


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
