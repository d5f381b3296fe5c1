"""One event of a coach's or organiser's conversation, decided.

    needs(state, event)             -> what to load, through the one door
    step(state, event, facts, now)  -> StaffOutcome(state, effects)

Total, like the clients' engine. A button or a command acts only on clients that are in the facts, and only those of
this coach's caseload ever are: anything else is answered with `NotYours`, which says no more than that.
The order in which a text is read: an open question; a client's whole name; a command typed plainly; a wish; a name or
the beginning of one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime

from core.dialogue.kit.events import Attachment, Command, Due, Event, Press, Text
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, NotText, OldButton
from core.dialogue.organiser import cohorts
from core.dialogue.staff import caseload, digest, plan, settings
from core.dialogue.staff import messages as sm
from core.dialogue.staff.cohort_states import InvitingOrganiser, PlanningCohort, SureOfCohort
from core.dialogue.staff.facts import (
    CardOf,
    CardsFlagged,
    CardsNamed,
    Caseload,
    Need,
    OtherCoaches,
    StaffFacts,
    Templates,
)
from core.dialogue.staff.states import (
    AskingSure,
    ChangingOwn,
    ChangingSlot,
    ChoosingClient,
    Inviting,
    NamingTemplate,
    NotingOn,
    StaffState,
    WritingTo,
)
from core.dialogue.staff.step import Handler, StaffOutcome, StaffStep
from core.language import Intent, plain
from core.language.intents import intent

NAME_WORDS = 4  # a text longer than that is no name

# What each command and each button needs, and does. "coach": only a coach may; "both": an organiser as well.
COMMANDS: Mapping[str, tuple[str, Handler]] = {
    "caseload": ("coach", caseload.caseload),
    "client": ("coach", caseload.client),
    "write": ("coach", caseload.write),
    "invite": ("coach", settings.invite),
    "digest": ("coach", digest.asked),
    "cohort": ("both", cohorts.cohort),
    "help": ("both", settings.help_),
    "settings": ("both", settings.settings),
    "mydata": ("both", settings.my_data),
    "forget": ("both", settings.forget),
}
VERBS: Mapping[str, tuple[str, Handler]] = {
    "list": ("coach", caseload.listed),
    "card": ("coach", caseload.open_card),
    "thread": ("coach", caseload.thread),
    "clear": ("coach", caseload.dealt_with),
    "saw": ("coach", caseload.saw),
    "write": ("coach", caseload.write_to),
    "pick": ("coach", caseload.pick),
    "note": ("coach", caseload.note),
    "plan": ("coach", plan.plan),
    "measures": ("coach", plan.measures),
    "interval": ("coach", plan.interval),
    "slot": ("coach", plan.slot),
    "slotday": ("coach", plan.slot_day),
    "slothour": ("coach", plan.slot_hour),
    "directed": ("coach", plan.directed),
    "loss": ("coach", plan.loss),
    "numbers": ("coach", plan.numbers),
    "bp": ("coach", plan.pressure_body),
    "cautions": ("coach", plan.cautions),
    "baseline": ("coach", plan.baseline),
    "hand": ("coach", plan.hand),
    "end": ("coach", plan.end),
    "sure": ("coach", plan.sure),
    "template": ("coach", plan.template),
    "templates": ("coach", plan.templates),
    "droptpl": ("coach", plan.drop_template),
    "tpl": ("coach", settings.with_template),
    "invite": ("coach", settings.invite_pressed),
    "revoke": ("coach", settings.revoke),
    "digest": ("coach", digest.asked),
    "seen": ("coach", digest.seen),
    "sheet": ("coach", digest.sheet),
    "nodigest": ("coach", settings.no_digest),
    "night": ("coach", settings.night),
    "settings": ("both", settings.settings),
    "help": ("both", settings.help_),
    "own": ("both", settings.own),
    "zone": ("both", settings.zone),
    "forget": ("both", settings.forget_pressed),
    **{verb: ("both", act) for verb, act in cohorts.VERBS.items()},
    **{verb: ("coach", act) for verb, act in cohorts.OF_A_COACH.items()},
}
OF_A_CLIENT = frozenset(
    {
        "card", "thread", "clear", "saw", "write", "pick", "note", "plan", "measures", "interval", "slot", "slotday",
        "slothour", "directed", "loss", "numbers", "bp", "cautions", "baseline", "hand", "end", "template",
    }
)  # fmt: skip


# --- what to load -----------------------------------------------------------------------------------------------


def needs(state: StaffState, event: Event) -> tuple[Need, ...]:
    """Name what a step will look at. Bounded: at most one list, a few cards, templates, coaches."""
    match event:
        case Due():
            return (Caseload(), CardsFlagged())
        case Command(name=name, argument=argument):
            return _needs_of_command(name, argument)
        case Press(data=data):
            return _needs_of_press(*_verb(data))
        case Text(text=text):
            return _needs_of_text(state, text)
        case _:
            return ()


def _needs_of_command(name: str, argument: str) -> tuple[Need, ...]:
    match name:
        case "digest":
            return (Caseload(), CardsFlagged())
        case "caseload" | "client" | "write":
            named = (CardsNamed(argument, whole=name != "write"),) if argument.strip() else ()
            return (Caseload(), *named)
        case "invite":
            return (Templates(),)
        case "forget":
            return (Caseload(),)
        case "cohort":
            return cohorts.needs()
        case _:
            return ()


def _needs_of_press(verb: str, value: str) -> tuple[Need, ...]:
    number = value.partition(":")[0]
    match verb:
        case "list":
            return (Caseload(),)
        case "write" if not number:
            return (Caseload(),)
        case "digest" | "sheet" | "seen":
            return (Caseload(), CardsFlagged())
        case "invite" | "tpl" | "templates" | "droptpl":
            return (Templates(),)
        case "forget":
            return (Caseload(),)
        case "sure":
            return (*_card(value.rpartition(":")[2]), OtherCoaches())
        case "hand":
            return (*_card(number), OtherCoaches())
        case _ if verb in OF_A_CLIENT:
            return _card(number)
        case _ if verb in cohorts.VERBS:
            return cohorts.needs()
        case _:
            return ()


def _card(number: str) -> tuple[Need, ...]:
    return (CardOf(int(number)),) if number.isdecimal() and len(number) < 19 else ()


def _needs_of_text(state: StaffState, text: str) -> tuple[Need, ...]:
    match state.asking:
        case PlanningCohort() | SureOfCohort():
            return (*cohorts.needs(), Caseload(), *_needs_of_command(*(_typed_command(text) or ("", ""))))
        case WritingTo(client) | NotingOn(client) | ChangingSlot(client) | NamingTemplate(client):
            return (CardOf(client),)
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
            return (Caseload(), *named)


# --- what to do -------------------------------------------------------------------------------------------------


def step(state: StaffState, event: Event, facts: StaffFacts, now: datetime) -> StaffOutcome:
    """Advance one conversation of staff by one event."""
    d = StaffStep(state, facts, now)
    match event:
        case Text():
            _text(d, event.text.strip())
        case Press():
            _press(d, event.data)
        case Command():
            _command(d, event)
        case Due():
            digest.due(d, event)
        case Attachment():
            d.say(NotText(event.kind, ""))
        case _:
            pass  # timers, news for clients and groups never belong to a conversation of staff
    return d.finish()


def joined(facts: StaffFacts, now: datetime) -> StaffOutcome:
    """What somebody hears who has just become a coach or organiser; they are in `facts` already."""
    d = StaffStep(StaffState(), facts, now)
    settings.welcome(d)
    return d.finish()


def _may(d: StaffStep, who: str) -> bool:
    if who == "coach" and not d.coach:
        d.say(NotForThisRole(), *settings.menu(d))
        return False
    return True


def _command(d: StaffStep, event: Command) -> None:
    """A command drops the open question: whoever types one has moved on."""
    d.ask(None)
    if event.name == "start":
        settings.start(d, event)
        return
    found = COMMANDS.get(event.name)
    if found is None:
        d.say(NotForThisRole(), *settings.menu(d))
        return
    who, act = found
    if _may(d, who):
        act(d, event.argument)


def _verb(data: str) -> tuple[str, str]:
    verb, _, value = data.partition(":")
    return verb, value


def _press(d: StaffStep, data: str) -> None:
    """A button, perhaps of a message of long ago: rights are those of now."""
    verb, value = _verb(data)
    if verb == "cancel":
        d.ask(None)
        d.say(KeptAsItWas(), *settings.menu(d))
        return
    found = VERBS.get(verb)
    if found is None:
        d.say(OldButton(""), *settings.menu(d))
        return
    who, act = found
    if not _may(d, who):
        return
    if verb == "write" and not value:
        caseload.write(d, "")
        return
    act(d, value)


# --- text -------------------------------------------------------------------------------------------------------


def _text(d: StaffStep, text: str) -> None:
    if not text:
        d.say(NotText("empty", ""))
        return
    if _for_open_question(d, text):
        return
    wish = intent(text, d.words)
    short = len(text.split()) <= NAME_WORDS
    if d.coach and any(plain(c.name) == plain(text) for c in d.facts.cards):
        caseload.found(d, text, _for_what(d))
    elif (typed := _typed_command(text)) is not None:
        who, act = COMMANDS[typed[0]]
        d.ask(None)
        if _may(d, who):
            act(d, typed[1])
    elif wish is not None and _wish(d, wish):
        pass
    elif d.coach and short and d.facts.cards:
        caseload.found(d, text, _for_what(d))
    elif d.coach and short and d.facts.rows:
        d.say(sm.NobodyFound(text[:64]), *settings.menu(d))
    else:
        d.say(sm.StaffNotSure(d.coach, d.organiser), *settings.menu(d))


def _for_what(d: StaffStep) -> str:
    return d.asking.what if isinstance(d.asking, ChoosingClient) else "card"


def _typed_command(text: str) -> tuple[str, str] | None:
    """ "caseload", "invite Ada", "write Ben well done": a command without its stroke. Never a name alone."""
    first, _, rest = text.partition(" ")
    name = plain(first).strip().lstrip("/")
    if name not in COMMANDS or (name in ("help", "settings", "forget", "mydata") and rest.strip()):
        return None
    return name, rest.strip()


def _for_open_question(d: StaffStep, text: str) -> bool:
    """Give a text to the question it answers; True when it did."""
    wish = intent(text, d.words)
    asking = d.asking
    if asking is not None and wish is Intent.STOP and len(text.split()) <= 2:  # longer words may be for a client
        d.ask(None)
        d.say(KeptAsItWas(), *settings.menu(d))
        return True
    match asking:
        case WritingTo():
            caseload.words_typed(d, asking, text)
        case NotingOn():
            caseload.note_typed(d, asking, text)
        case NamingTemplate():
            plan.template_named(d, asking, text)
        case Inviting() if _typed_command(text) is None:
            settings.invitee_typed(d, asking, text)
        case ChangingSlot():
            return plan.slot_typed(d, asking, text)
        case PlanningCohort() if _typed_command(text) is None:
            cohorts.typed(d, asking, text)
        case InvitingOrganiser() if _typed_command(text) is None:
            cohorts.organiser_typed(d, text)
        case SureOfCohort() if wish is Intent.YES:
            cohorts.confirmed(d, asking)
        case ChangingOwn():
            return settings.own_typed(d, asking, text)
        case AskingSure(what="forget") if wish is Intent.YES:
            settings.forget_pressed(d, "")
        case AskingSure() if wish is Intent.YES:
            plan.confirmed(d, asking)
        case AskingSure() | SureOfCohort() if wish is Intent.NO:
            d.ask(None)
            d.say(KeptAsItWas(), *settings.menu(d))
        case ChoosingClient(words=words) if words and len(d.facts.cards) == 1:
            caseload.pick(d, str(d.facts.cards[0].client_id))
        case _:
            return False
    return True


def _wish(d: StaffStep, wish: Intent) -> bool:
    """A wish in plain words, in the coach's language; True when it is one that staff have."""
    acts: dict[Intent, Callable[[], None]] = {
        Intent.HELP: lambda: settings.help_(d, ""),
        Intent.SETTINGS: lambda: settings.settings(d, ""),
        Intent.MY_DATA: lambda: settings.my_data(d, ""),
        Intent.FORGET: lambda: settings.forget(d, ""),
        Intent.LANGUAGE: lambda: settings.own(d, "language"),
        Intent.ZONE: lambda: settings.own(d, "zone"),
        Intent.SLOT: lambda: settings.own(d, "digest"),
        Intent.THANKS: lambda: settings.greeted(d),
        Intent.GREETING: lambda: settings.greeted(d),
    }
    act = acts.get(wish)
    if act is None:
        return False
    act()
    return True


__all__ = ["COMMANDS", "VERBS", "joined", "needs", "step"]
