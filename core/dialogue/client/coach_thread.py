"""Between client and coach: messages passed on, what the coach wrote or changed, moving to another coach."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from zlib import crc32

from core.care import Status
from core.dialogue.client import check_in, help_and_menu
from core.dialogue.client import messages as m
from core.dialogue.client.effects import ChangeClient, Lower, NotifyCoach, PassOn, Raise, Unsay
from core.dialogue.client.messages_to_coach import ClientBack, ClientMoved
from core.dialogue.client.states import Awaiting, Enrolling, Setting, State
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice, Join
from core.dialogue.kit.events import FromCoach, PlanChanged, Reachability, TakenBack
from core.dialogue.kit.messages import KeptAsItWas, Stranger
from core.measures import MEASURES
from core.watching.flags import Code, Ended, flag

ANSWER_GOES_TO_COACH = timedelta(hours=48)
LONGEST_WORD = 2000  # characters of an offer


def message_coach(d: ClientStep, text: str = "") -> None:
    """Pass a message on to the coach, or ask for one."""
    if text.strip():
        pass_on(d, text)
        return
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    d.ask(Setting("word", "", back))
    deputy = answers_go_to(d)
    d.say(m.AskWord(deputy[1] if deputy else d.facts.coach_name), (Choice("no_keep", "cancel"),))


def pass_on(d: ClientStep, text: str, *, reply: bool = False) -> None:
    """Pass a message to the coach. A reply to the coach's own message is not a new request."""
    deputy = answers_go_to(d)
    d.do(PassOn(text, to=deputy[0] if deputy else 0))
    if not reply:
        d.do(Raise(flag(Code.WANTS_COACH, d.now)))
    if deputy:
        d.say(m.WordPassed(deputy[1]))
    elif d.facts.told:
        d.say(m.WordPassed(d.facts.told, d.words_arrive()))
    else:
        d.say(m.CoachNotReached(d.facts.coach_name, kept=True))


def answers_go_to(d: ClientStep) -> tuple[int, str] | None:
    """Number and name of the coach who stands in for theirs and has written last; None if it was their own."""
    recent = d.state.word_until is not None and d.now < d.state.word_until
    deputy = d.facts.deputy
    return deputy if recent and deputy is not None and deputy[0] == d.state.word_to else None


def offer(d: ClientStep, text: str, why: str) -> None:
    """Offer to pass words on as they were written; one button does it, and an open question stays open."""
    words = text[:LONGEST_WORD]
    d.become(offered=words, offer_open=True)
    d.say(m.OfferToPass(why, d.facts.coach_name), (Choice("pass_on", f"pass:{_mark(words)}"),))


def _mark(words: str) -> str:
    """Names the words of an offer in its button, so that an old button does not pass on newer words."""
    return f"{crc32(words.encode('utf-8', 'replace')):08x}"


def pass_offered(d: ClientStep, mark: str) -> bool:
    """Pass on the words that a button was drawn for; False if they are not there any more. mark: "" in older ones."""
    if not d.state.offered or mark not in ("", _mark(d.state.offered)):
        return False
    pass_on(d, d.state.offered)
    d.become(offered="")
    return True


def offer_accepted(d: ClientStep) -> bool:
    """Pass on words for a yes that was typed right after the offer; False if something else was said in between."""
    return d.before.offer_open and pass_offered(d, "")


def from_coach(d: ClientStep, event: FromCoach) -> None:
    d.become(word_until=d.now + ANSWER_GOES_TO_COACH, word_to=event.by)
    row = (Choice("word_to_coach", "word", event.coach),)
    occasion = f"word/{event.mark}" if event.mark else None
    d.say(m.CoachWrites(event.coach, event.text), row, lasting=True, occasion=occasion)


def taken_back(d: ClientStep, event: TakenBack) -> None:
    """The client is not told: what was not sent they never see, and what is deleted leaves no place behind."""
    d.do(Unsay(f"word/{event.mark}", event.by))


def plan_changed(d: ClientStep, event: PlanChanged) -> None:
    """The coach's changes apply from the next question on; an open question no longer in the plan is dropped."""
    wanted = check_in.asked_of(d)
    d.become(agenda=tuple(k for k in d.state.agenda if k in wanted))
    asked = d.asking.measure if isinstance(d.asking, Awaiting | Enrolling) else ""
    gone = asked in MEASURES and asked not in wanted
    if event.what:
        d.say(m.PlanNews(event.what, event.detail))
    if gone:
        check_in.ask_next(d)


def reachability(d: ClientStep, event: Reachability) -> None:
    """Blocked: nothing can be sent. Unblocked: welcome back, without old questions."""
    if event.reachable and d.facts.consented and d.facts.status is not Status.LEFT:
        d.do(NotifyCoach(ClientBack(d.facts.client_id, d.facts.name)), Lower(Code.UNREACHABLE, ended=Ended.HEARD))
        d.say(m.WelcomeBack(d.facts.coach_name), *help_and_menu.menu(d))


def change_coach(d: ClientStep, yes: bool) -> None:
    old = d.facts.coach_name
    if yes:
        assert isinstance(d.asking, Setting)
        d.ask(None)
        d.do(NotifyCoach(ClientMoved(d.facts.name)), Join())
        if d.facts.invitation is not None:
            d.say(m.CoachChanged(d.facts.invitation.by_name))
        else:
            d.say(Stranger())
        return
    d.ask(d.asking.back if isinstance(d.asking, Setting) else None)
    d.say(m.AlreadyHere(old))


def come_back(d: ClientStep, yes: bool) -> None:
    """A client who left opens the coach's new invitation."""
    if not yes:
        d.ask(None)
        d.say(KeptAsItWas())
        return
    d.state = State()
    d.do(Join(), ChangeClient("status", Status.ACTIVE), ChangeClient("paused_until", None))
    d.facts = replace(d.facts, status=Status.ACTIVE)
    d.say(m.Resumed(d.next_slot()))
