"""An organiser's cohorts: set up with six short questions, managed, closed.

Every button names a cohort by its number, and acts only if it is in `facts.cohorts`, those this person runs. Nobody is
shown a reading here, whether organiser or coach: the facts contain only names, dates, counts and pooled figures.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta

from core.care import Slot
from core.dialogue.kit.effects import Choice, Rows, number_in
from core.dialogue.kit.step import rows_of
from core.dialogue.organiser import messages as om
from core.dialogue.staff.cohort_effects import (
    EndCohort,
    MakeGroupLink,
    MakeJoinLink,
    RemoveMember,
    RevokeJoinLinks,
    StartCohort,
    UntieGroup,
)
from core.dialogue.staff.cohort_states import InvitingOrganiser, PlanningCohort, SureOfCohort
from core.dialogue.staff.effects import Invite
from core.dialogue.staff.facts import CohortFact, MemberFact
from core.dialogue.staff.step import Handler, StaffStep
from core.language import plain
from core.language.days import when
from core.language.intents import weekday_and_time
from core.understanding.answers_in_text import whole_numbers
from core.watching.cohort import LONGEST, MOST_BY_ONE_LINK, MOST_EVER, SHORTEST, Counted, Terms
from core.watching.disclosure import LEAST_PEOPLE

LONGEST_NAME = 48  # characters: it is shown in buttons and pictures
WEEKS = (4, 6, 8, 12)
HOURS = ("07:30", "08:00", "12:00", "17:00", "18:00", "19:00")
AHEAD = timedelta(days=183)  # how far ahead a start may be
PAGE = 8
MOST_COACHES = 8
LIMITS = (10, 20, MOST_BY_ONE_LINK, 50, 100)


# --- the list and a page ----------------------------------------------------------------------------------------


def cohort(d: StaffStep, argument: str) -> None:
    """/cohort: the list, or the first question if there is none; /cohort NAME starts one with that name."""
    name = " ".join(argument.split())[:LONGEST_NAME]
    if name:
        _named(d, PlanningCohort("name"), name)
    elif d.facts.cohorts:
        _list(d)
    else:
        begin(d, "")


def listed(d: StaffStep, value: str) -> None:
    cohort(d, "")


def _list(d: StaffStep) -> None:
    rows = tuple(line_of(d, c) for c in d.facts.cohorts)
    d.say(
        om.CohortList(rows),
        *rows_of(*(Choice("cohort_named", f"cohort:{c.cohort_id}", c.name) for c in d.facts.cohorts), width=1),
        *_new(d),
    )


def _new(d: StaffStep) -> Rows:
    if d.coach:
        return ((Choice("new_cohort", "conew"), Choice("invite_organiser", "coinvite")),)
    return ((Choice("new_cohort", "conew"),),)


def line_of(d: StaffStep, c: CohortFact) -> om.CohortLine:
    return om.CohortLine(c.name, c.terms.starts, c.terms.last, stage(d, c))


def stage(d: StaffStep, c: CohortFact) -> str:
    if c.closed:
        return "over" if c.closing is not None else "called_off"
    return "running" if begun(d, c) else "coming"


def begun(d: StaffStep, c: CohortFact) -> bool:
    return d.now.astimezone(c.zone).date() >= c.terms.first


def opened(d: StaffStep, value: str) -> None:
    if (c := _of(d, value)) is not None:
        show(d, c)


def show(d: StaffStep, c: CohortFact) -> None:
    slot = c.terms.slot
    d.say(
        om.CohortSaid(
            line_of(d, c),
            c.terms.weeks,
            slot.weekday,
            slot.at,
            c.terms.counts.value,
            sum(m.left is None for m in c.members),
            sum(m.left is not None for m in c.members),
            c.grouped,
            c.weeks,
            c.people,
        ),
        *page_rows(c),
    )


def page_rows(c: CohortFact) -> Rows:
    """The buttons under one cohort."""
    n = c.cohort_id
    if c.closed:
        return closing_rows(n) if c.closing is not None else ((Choice("cohorts", "cohorts"),),)
    group = Choice("group_untie", f"countie:{n}") if c.grouped else Choice("group_tie", f"cogroup:{n}")
    return (
        (Choice("join_link", f"colink:{n}"), Choice("join_links_revoke", f"corevoke:{n}")),
        (Choice("cohort_people", f"copeople:{n}:0"), group),
        (Choice("cohort_end", f"coend:{n}"), Choice("cohorts", "cohorts")),
    )


def closing_rows(cohort_id: int) -> Rows:
    """The buttons under a closing report (`bot.turns.cohorts` sends one with them)."""
    return (tuple(Choice(f"as_{kind}", f"coreport:{cohort_id}:{kind}") for kind in ("page", "pdf", "csv")),)


# --- setting one up ---------------------------------------------------------------------------------------------


def begin(d: StaffStep, value: str) -> None:
    _ask(d, PlanningCohort("name"))


def _keep() -> tuple[Choice, ...]:
    return (Choice("no_keep", "cancel"),)


def typed(d: StaffStep, asking: PlanningCohort, text: str) -> None:
    """Plain text answers the open question."""
    match asking.question:
        case "name":
            _named(d, asking, " ".join(text.split())[:LONGEST_NAME])
        case "start":
            _starts(d, asking, when(text, d.words, d.today))
        case "weeks":
            numbers = whole_numbers(text, d.words)
            _weeks(d, asking, numbers[0] if len(numbers) == 1 else 0)
        case "time":
            _time(d, asking, *weekday_and_time(text, d.words))
        case "counts":
            said = {plain(d.facts.label(f"counts:{c.value}", "")): c for c in Counted}
            _counts(d, asking, said.get(plain(text)))
        case "most":
            numbers = whole_numbers(text, d.words)
            _most(d, asking, numbers[0] if len(numbers) == 1 else 0)
        case _:
            said_coach = next((n for n, (_, name) in enumerate(_coaches(d)) if plain(name) == plain(text)), None)
            _coach(d, asking, "" if said_coach is None else str(said_coach))


def answered(question: str) -> Handler:
    """The action of a question's button, which counts only while that question is open."""

    def act(d: StaffStep, value: str) -> None:
        asking = d.asking
        if not isinstance(asking, PlanningCohort) or asking.question != question:
            cohort(d, "")
            return
        match question:
            case "start":
                _starts(d, asking, _iso(value))
            case "weeks":
                _weeks(d, asking, int(value) if value.isdecimal() and len(value) < 4 else 0)
            case "time":
                _time(d, asking, None, time.fromisoformat(value) if value in HOURS else None)
            case "most":
                _most(d, asking, int(value) if value.isdecimal() and len(value) < 5 else 0)
            case "counts":
                _counts(d, asking, Counted(value) if value in {c.value for c in Counted} else None)
            case _:
                _coach(d, asking, value)

    return act


def _iso(value: str) -> date | None:
    try:
        return date.fromisoformat(value)
    except ValueError:
        return None


def _named(d: StaffStep, asking: PlanningCohort, name: str) -> None:
    _ask(d, replace(asking, question="start", name=name))


def _ask(d: StaffStep, asking: PlanningCohort) -> None:
    """Put the open question."""
    d.ask(asking)
    match asking.question:
        case "name":
            d.say(om.AskCohortName(not d.facts.cohorts), _keep())
        case "start":
            _say_starts(d, asking.name)
        case "weeks":
            d.say(om.AskCohortWeeks(), tuple(Choice("in_weeks", f"coweeks:{n}", f"{n}") for n in WEEKS), _keep())
        case "time":
            hours = (Choice("hour", f"cotime:{h}", h) for h in HOURS)
            d.say(om.AskCohortTime(asking.weekday), *rows_of(*hours, width=3), _keep())
        case "counts":
            choices = (Choice(f"counts:{c.value}", f"cocounts:{c.value}") for c in Counted)
            d.say(om.AskCohortCounts(), *rows_of(*choices, width=1), _keep())
        case _:
            coaches = (Choice("coach_named", f"cocoach:{n}", name) for n, (_, name) in enumerate(_coaches(d)))
            d.say(om.AskCohortCoach(), *rows_of(*coaches), (Choice("no_newcomers", "cocoach:none"),), _keep())


def planning_again(d: StaffStep, asking: PlanningCohort) -> None:
    """Repeat the open question about a new cohort."""
    _ask(d, asking)


def _say_starts(d: StaffStep, name: str) -> None:
    monday = d.today + timedelta(days=7 - d.today.weekday())
    days = (monday, monday + timedelta(days=7), monday + timedelta(days=14))
    d.say(
        om.AskCohortStart(name), *rows_of(*(Choice("on_day", f"costart:{x}", f"{x}") for x in days), width=1), _keep()
    )


def _starts(d: StaffStep, asking: PlanningCohort, day: date | None) -> None:
    if day is None or not d.today <= day <= d.today + AHEAD:
        d.say(om.CohortUnclear("start"), _keep())
        return
    _ask(d, replace(asking, question="weeks", starts=day, weekday=day.weekday()))


def _weeks(d: StaffStep, asking: PlanningCohort, weeks: int) -> None:
    if not SHORTEST <= weeks <= LONGEST:
        d.say(om.CohortUnclear("weeks"), _keep())
        return
    _ask(d, replace(asking, question="time", weeks=weeks))


def _time(d: StaffStep, asking: PlanningCohort, weekday: int | None, at: time | None) -> None:
    weekday = asking.weekday if weekday is None else weekday
    if at is None:
        d.ask(replace(asking, weekday=weekday))
        d.say(om.CohortUnclear("time"), _keep())
        return
    _ask(d, replace(asking, question="counts", weekday=weekday, at=at.isoformat("minutes")))


def _counts(d: StaffStep, asking: PlanningCohort, counts: Counted | None) -> None:
    if counts is None:
        d.say(om.CohortUnclear("counts"), _keep())
        return
    d.ask(replace(asking, question="most", counts=counts.value))
    choices = (Choice("up_to", f"comost:{n}", f"{n}") for n in LIMITS)
    d.say(om.AskCohortMost(), *rows_of(*choices, width=3), _keep())


def _most(d: StaffStep, asking: PlanningCohort, most: int) -> None:
    if not LEAST_PEOPLE <= most <= MOST_EVER:
        d.say(om.CohortUnclear("most"), _keep())
        return
    asking = replace(asking, question="coach", most=most)
    if d.coach or not _coaches(d):
        _make(d, asking, d.facts.coach_id)
        return
    _ask(d, asking)


def _coaches(d: StaffStep) -> tuple[tuple[int, str], ...]:
    return d.facts.coaches[:MOST_COACHES]


def _coach(d: StaffStep, asking: PlanningCohort, value: str) -> None:
    if value == "none":
        _make(d, asking, None)
    elif value.isdecimal() and int(value) < len(_coaches(d)):
        _make(d, asking, _coaches(d)[int(value)][0])
    else:
        d.say(om.CohortUnclear("coach"), _keep())


def _make(d: StaffStep, asking: PlanningCohort, coach_id: int | None) -> None:
    """Everything is known. The reply needs the new link, so `bot.turns.cohorts` sends it."""
    assert asking.starts is not None
    d.ask(None)
    slot = Slot(asking.weekday, time.fromisoformat(asking.at), d.facts.zone_name)
    terms = Terms(asking.starts, asking.weeks, slot, Counted(asking.counts))
    d.say(om.CohortMade(asking.name, terms.first, terms.last, terms.weeks, slot.weekday, slot.at, terms.counts.value))
    d.do(StartCohort(asking.name, asking.starts, asking.weeks, slot, asking.counts, asking.most, coach_id))


# --- links ------------------------------------------------------------------------------------------------------


def join_link(d: StaffStep, value: str) -> None:
    c = _open(d, value)
    if c is None:
        return
    if d.now.astimezone(c.zone).date() > c.terms.half_time:
        d.say(om.JoiningOver(c.name, c.terms.half_time), (_back_to(c),))
        return
    d.do(MakeJoinLink(c.cohort_id))


def revoke_links(d: StaffStep, value: str) -> None:
    if (c := _open(d, value)) is not None:
        d.do(RevokeJoinLinks(c.cohort_id))
        d.say(om.JoinLinksRevoked(c.name), (Choice("join_link", f"colink:{c.cohort_id}"), _back_to(c)))


def _back_to(c: CohortFact) -> Choice:
    return Choice("cohort_named", f"cohort:{c.cohort_id}", c.name)


def invite_organiser(d: StaffStep, value: str) -> None:
    d.ask(InvitingOrganiser())
    d.say(om.AskOrganiser(), _keep())


def organiser_typed(d: StaffStep, text: str) -> None:
    d.ask(None)
    d.do(Invite("organiser", " ".join(text.split())[:LONGEST_NAME]))


# --- members ----------------------------------------------------------------------------------------------------


def people(d: StaffStep, value: str) -> None:
    number, _, page = value.partition(":")
    if (c := _of(d, number)) is not None:
        _people(d, c, int(page) if page.isdecimal() and len(page) < 6 else 0)


def _people(d: StaffStep, c: CohortFact, page: int) -> None:
    everybody = tuple(sorted(c.members, key=lambda m: (m.name.casefold(), m.client_id)))
    pages = max(-(-len(everybody) // PAGE), 1)
    page = min(page, pages - 1)
    shown = everybody[page * PAGE : (page + 1) * PAGE]
    n = c.cohort_id
    here = (m for m in shown if m.left is None and not c.closed)
    turn = [Choice("page_before", f"copeople:{n}:{page - 1}")] if page else []
    turn += [Choice("page_after", f"copeople:{n}:{page + 1}")] if page + 1 < pages else []
    d.say(
        om.CohortPeople(
            c.name,
            tuple((m.name, m.joined, m.left) for m in shown),
            page,
            pages,
            tuple(m.name for m in shown if m.waits),
        ),
        *rows_of(*(Choice("take_out", f"coout:{n}:{m.client_id}", m.name) for m in here), width=1),
        *((tuple(turn),) if turn else ()),
        (_back_to(c),),
    )


def take_out(d: StaffStep, value: str) -> None:
    number, _, member = value.partition(":")
    c = _open(d, number)
    if c is None:
        return
    m = _member(c, number_in(member))
    if m is None:
        d.say(om.CohortNotYours())
        return
    d.ask(SureOfCohort("remove", c.cohort_id, m.client_id))
    yes = Choice("take_out_yes", f"cosure:remove:{c.cohort_id}:{m.client_id}")
    d.say(om.RemoveSure(c.name, m.name), (yes, Choice("no_keep", "cancel")))


def _member(c: CohortFact, client_id: int) -> MemberFact | None:
    return next((m for m in c.members if m.client_id == client_id and m.left is None), None)


# --- the group chat ---------------------------------------------------------------------------------------------


def tie_group(d: StaffStep, value: str) -> None:
    c = _open(d, value)
    if c is None:
        return
    if c.grouped:
        d.say(om.GroupIsTied(c.name), (Choice("group_untie", f"countie:{c.cohort_id}"), _back_to(c)))
    else:
        d.do(MakeGroupLink(c.cohort_id))


def untie_group(d: StaffStep, value: str) -> None:
    if (c := _open(d, value)) is not None:
        if c.grouped:
            d.do(UntieGroup(c.cohort_id))
        d.say(om.GroupUntied(c.name), (Choice("group_tie", f"cogroup:{c.cohort_id}"), _back_to(c)))


# --- the end ----------------------------------------------------------------------------------------------------


def end(d: StaffStep, value: str) -> None:
    if (c := _open(d, value)) is not None:
        d.ask(SureOfCohort("end", c.cohort_id))
        yes = Choice("cohort_end_yes", f"cosure:end:{c.cohort_id}:0")
        d.say(om.EndCohortSure(c.name, begun(d, c)), (yes, Choice("no_keep", "cancel")))


def sure_again(d: StaffStep, asking: SureOfCohort) -> None:
    """Repeat the open confirmation."""
    if asking.what == "end":
        end(d, str(asking.cohort_id))
    else:
        take_out(d, f"{asking.cohort_id}:{asking.client_id}")


def sure(d: StaffStep, value: str) -> None:
    """A confirmation button, which counts only while that same question is open."""
    asking = d.asking
    if isinstance(asking, SureOfCohort) and value == f"{asking.what}:{asking.cohort_id}:{asking.client_id}":
        confirmed(d, asking)
    else:
        cohort(d, "")


def confirmed(d: StaffStep, asking: SureOfCohort) -> None:
    d.ask(None)
    c = _open(d, str(asking.cohort_id))
    if c is None:
        return
    if asking.what == "end":
        d.do(EndCohort(c.cohort_id))
        if not begun(d, c):
            d.say(om.CohortCalledOff(c.name), *_new(d))
        return  # `bot.turns.cohorts` creates and sends the report
    m = _member(c, asking.client_id)
    if m is None:
        d.say(om.CohortNotYours())
        return
    d.do(RemoveMember(c.cohort_id, m.client_id))
    d.say(om.MemberRemoved(c.name, m.name), (_back_to(c),))


def report(d: StaffStep, value: str) -> None:
    number, _, kind = value.partition(":")
    c = _of(d, number)
    if c is None:
        return
    if c.closing is None:
        show(d, c)
    elif kind in ("pdf", "csv", "page"):
        d.say(om.ClosingFile(c.closing, kind))
    else:
        d.say(om.ClosingSaid(c.closing), *closing_rows(c.cohort_id))


# --- whose ------------------------------------------------------------------------------------------------------


def _of(d: StaffStep, value: str) -> CohortFact | None:
    """One of this person's cohorts; otherwise replies only that it is not theirs."""
    found = next((c for c in d.facts.cohorts if str(c.cohort_id) == value), None)
    if found is None:
        d.say(om.CohortNotYours())
    return found


def _open(d: StaffStep, value: str) -> CohortFact | None:
    """The same for one that is not over; for an old button, shows its current state."""
    found = _of(d, value)
    if found is not None and found.closed:
        show(d, found)
        return None
    return found
