"""Data subject access as text: what a person told us about themselves, their plan, and counts of everything stored.

It contains no values, which somebody may not wish to see in passing: those are in the attached files.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal

from bot.foundation.reader import TEXT_LIMIT, length
from bot.rendering.direction import directed
from bot.rendering.phrases import names
from bot.rendering.phrases.labels import BACKGROUNDS, GROUPS, SEXES
from bot.rendering.phrases.names import CAUTIONS
from bot.rendering.places import place_name
from bot.rendering.voice import Voice
from core.care import NumberVisibility, Plan, Slot
from core.client import Profile
from core.measures import MEASURES
from core.quantity import Amount, Unit

MOST = 1000  # characters of a client's own words


@dataclass(frozen=True, slots=True)
class MeasureCount:
    """How many readings of one measure count, and the date of the last."""

    measure: str
    number: int
    last: date


@dataclass(frozen=True, slots=True)
class ClientAccount:
    """A client's data. early: side notes. withdrawn: withdrawn readings. slots: asked or answered, and answered."""

    name: str
    coach: str
    language: str
    since: date
    profile: Profile
    plan: Plan
    slot: Slot | None
    taken: tuple[MeasureCount, ...] = ()
    early: int = 0
    withdrawn: int = 0
    slots: tuple[int, int] = (0, 0)
    goals: tuple[tuple[str, str, date], ...] = ()  # measure, target in its unit, by
    words: int = 0
    notes: int = 0
    flags: int = 0
    open_flags: int = 0
    cohorts: tuple[str, ...] = ()
    before_exercise: str = ""  # the verdict that their answers come to


@dataclass(frozen=True, slots=True)
class StaffAccount:
    """A coach's or an organiser's data. slot: of the digest. counted: clients, messages, notes."""

    name: str
    language: str
    since: date
    slot: Slot | None
    templates: int = 0
    invitations: int = 0
    cohorts: tuple[str, ...] = ()
    counted: Mapping[str, int] = field(default_factory=dict)


def client_texts(said: ClientAccount, v: Voice) -> tuple[str, ...]:
    """A client's account: one message, or several if there is a lot."""
    return _packed(
        v,
        v.bold(v.say("What I hold about you")),
        v.lines(*_about(said, v)),
        v.lines(*_plan(said.plan, said.slot, v)),
        v.lines(*_taken(said, v)),
        v.lines(*_goals(said, v)),
        v.lines(*_rest(said, v)),
        v.say("The files below hold all of it, line by line. To have it deleted, send /forget."),
    )


def staff_texts(said: StaffAccount, v: Voice) -> tuple[str, ...]:
    """A coach's or an organiser's account, likewise."""
    counted = said.counted
    return _packed(
        v,
        v.bold(v.say("What I hold about you")),
        v.lines(*_known(said.name, said.language, said.since, v), _slot(said.slot, v)),
        v.lines(
            _cohorts(said.cohorts, v),
            v.say("Plans you saved: {number}", number=v.number(said.templates)) if said.templates else "",
            v.say("Invitations: {number}", number=v.number(said.invitations)) if said.invitations else "",
        ),
        v.lines(
            v.say("Your clients: {number}", number=v.number(counted.get("clients", 0))),
            v.say("Messages to and from them: {number}", number=v.number(counted.get("words", 0))),
            v.say("Notes you wrote: {number}", number=v.number(counted.get("notes", 0))),
            v.say("What you wrote about clients is theirs to see, so here it is only counted."),
        )
        if counted
        else "",
        v.say("The files below hold all of it, line by line. To have it deleted, send /forget."),
    )


def _packed(v: Voice, *paragraphs: str) -> tuple[str, ...]:
    """Pack paragraphs into as few messages as possible. No paragraph is longer than a message."""
    messages: list[str] = []
    if v.reader.right_to_left:
        paragraphs = tuple(map(directed, paragraphs))
    for paragraph in filter(None, paragraphs):
        together = f"{messages[-1]}\n\n{paragraph}" if messages else paragraph
        if messages and length(together) <= TEXT_LIMIT:
            messages[-1] = together
        else:
            messages.append(paragraph)
    return tuple(messages)


def _known(name: str, language: str, since: date, v: Voice) -> Sequence[str]:
    return (
        v.say("Name: {name}", name=v.name(name)) if name else "",
        v.say("Language: {language}", language=v.name(GROUPS["lang"].get(language, language))),
        v.say("Here since: {day}", day=v.full_date(since)),
    )


def _about(said: ClientAccount, v: Voice) -> Sequence[str]:
    profile = said.profile
    born = (
        v.full_date(profile.birth_date)
        if profile.birth_date is not None
        else ""
        if profile.birth_year is None
        else v.numbers.isolate(str(profile.birth_year))
    )
    cautions = [v.say_in("caution", CAUTIONS[c.value]) for c in sorted(profile.cautions)]
    before_exercise = names.before_exercise(v, said.before_exercise)
    sex = v.say_in("sex", SEXES[profile.sex.value]) if profile.sex else ""
    background = v.say_in("background", BACKGROUNDS[profile.background]) if profile.background else ""
    height = "" if profile.stature is None else v.amount(Amount(profile.stature, Unit.CENTIMETRE), measure="height")
    return (
        *_known(said.name, said.language, said.since, v),
        v.say("Coach: {name}", name=v.coach(said.coach)) if said.coach else "",
        v.say("Born: {when}", when=born) if born else "",
        v.say("Sex: {sex}", sex=sex) if sex else "",
        v.say("Height: {height}", height=height) if height else "",
        v.say("Family background: {background}", background=background) if background else "",
        v.say("To bear in mind: {cautions}", cautions=v.listed(cautions)) if cautions else "",
        v.say("Medicines that slow the pulse: {medicines}", medicines=names.medicines(v, sorted(profile.medicines)))
        if profile.medicines
        else "",
        v.say("Before exercise: {verdict}", verdict=before_exercise) if before_exercise else "",
    )


def _plan(plan: Plan, slot: Slot | None, v: Voice) -> Sequence[str]:
    return (
        v.say("Your plan: {measures}", measures=names.measures(v, plan.measures)),
        _slot(slot, v),
        v.say_n("Measured again after {n} day", "Measured again after {n} days", plan.retest_days),
        v.say("Your numbers go to your coach and are not shown to you.")
        if plan.numbers is NumberVisibility.COACH_ONLY
        else "",
        v.say("Your own question: {question}", question=v.typed(plan.own_question, MOST)) if plan.own_question else "",
    )


def _slot(slot: Slot | None, v: Voice) -> str:
    if slot is None:
        return ""
    zone = v.name(place_name(slot.zone_name, v.reader.language))
    return v.say(
        "Day and time: {weekday}, {time}, {zone}", weekday=v.weekday(slot.weekday), time=v.time(slot.at), zone=zone
    )


def _taken(said: ClientAccount, v: Voice) -> Sequence[str]:
    return (
        v.say("Your answers") if said.taken or said.early or said.withdrawn else "",
        *(
            v.say(
                "{measure}: {number}, last on: {day}",
                measure=names.measure(v, taken.measure),
                number=v.number(taken.number),
                day=v.full_date(taken.last),
            )
            for taken in said.taken
        ),
        v.say("Kept as a side note: {number}", number=v.number(said.early)) if said.early else "",
        v.say("Taken back: {number}", number=v.number(said.withdrawn)) if said.withdrawn else "",
    )


def _goals(said: ClientAccount, v: Voice) -> Sequence[str]:
    hidden = said.plan.numbers is NumberVisibility.COACH_ONLY
    return [
        v.say("A goal for {measure}, by: {day}", measure=names.measure(v, measure), day=v.full_date(by))
        if hidden
        else v.say(
            "A goal for {measure}: {target}, by: {day}",
            measure=names.measure(v, measure),
            target=v.amount(Amount(Decimal(target), MEASURES[measure].unit), measure=measure),
            day=v.full_date(by),
        )
        for measure, target, by in said.goals
    ]


def _rest(said: ClientAccount, v: Voice) -> Sequence[str]:
    asked, answered = said.slots
    return (
        v.say("Check-ins: {asked}, answered: {answered}", asked=v.number(asked), answered=v.number(answered))
        if asked
        else "",
        v.say("Messages between you and your coach: {number}", number=v.number(said.words)) if said.words else "",
        v.say("Notes of your coach about you: {number}", number=v.number(said.notes)) if said.notes else "",
        v.say(
            "Signs your coach was shown: {number}, still open: {open}",
            number=v.number(said.flags),
            open=v.number(said.open_flags),
        )
        if said.flags
        else "",
        _cohorts(said.cohorts, v),
    )


def _cohorts(cohorts: Sequence[str], v: Voice) -> str:
    if not cohorts:
        return ""
    shown = [v.name(name) for name in cohorts[:10]]
    return v.say("Challenges: {names}", names=v.listed(shown))
