"""About me: every health fact on one page, each changed or taken off by buttons or in words."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from core.client import Background, Caution, Sex
from core.dialogue.client import check_in, enrolment, health, needed
from core.dialogue.client import messages as m
from core.dialogue.client.effects import ChangeClient
from core.dialogue.client.states import Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.kit.step import rows_of
from core.language.rate_limiting_medicines import rate_limiting_medicine
from core.measures import MEASURES
from core.measures.height import HEIGHT
from core.measures.measure import Misunderstood
from core.understanding.health_facts import HealthFact, Stance, What, health_in

FACTS = ("birth_year", "sex", "stature", "background", "cautions", "medicines")
OFF, DONE = "off", "done"  # values of a button besides the fact itself
CAUTIONS = tuple(c.value for c in Caution)
LONGEST = 60  # characters of a medicine's name


def page(d: ClientStep) -> None:
    """Everything known, with a button for each."""
    say_facts(d)
    choices = (Choice(f"my:{what}", f"set:{what}") for what in FACTS)
    rest = (Choice("ask_missing", "set:missing"),) if needed.for_plan(d) or needed.before_exercise(d) else ()
    d.say(m.AboutMe(), *rows_of(*choices, Choice("units", "set:units")), *((rest,) if rest else ()))


def say_facts(d: ClientStep) -> None:
    profile = d.facts.profile
    born = profile.birth_date.year if profile.birth_date is not None else profile.birth_year
    d.say(
        m.HealthSaid(
            year=born,
            sex=profile.sex or "",
            height=d.shown(MEASURES["height"], profile.stature) if profile.stature is not None else None,
            background=profile.background or "",
            cautions=tuple(sorted(profile.cautions)),
            medicines=tuple(sorted(profile.medicines)),
            asked=profile.cautions_known,
        )
    )


# --- asking -----------------------------------------------------------------------------------------------------


def change(d: ClientStep, what: str) -> None:
    """Open one fact."""
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    detail = ",".join(sorted(d.facts.profile.cautions)) if what == "cautions" else ""
    asking = Setting(what, detail, back)
    d.ask(asking)
    say(d, asking)


def say(d: ClientStep, asking: Setting) -> None:
    """Put the question of one fact."""
    profile = d.facts.profile
    match asking.what:
        case "cautions":
            chosen = _chosen(asking)
            ticks = (Choice("tick_off" if c in chosen else "tick_on", f"me:{c}", c) for c in CAUTIONS)
            d.say(m.AskCautions(), *rows_of(*ticks, width=1), _end(Choice("done", f"me:{DONE}")))
        case "medicines":
            held = (Choice("medicine_off", f"me:{name}", name) for name in sorted(profile.medicines))
            d.say(m.AskMedicine(tuple(sorted(profile.medicines))), *rows_of(*held, width=1), _end())
        case what:
            known = (profile.birth_year or profile.birth_date) if what == "birth_year" else getattr(profile, what)
            off = (Choice("take_off", f"me:{OFF}"),) if known is not None else ()
            d.say(m.EnrolQuestion(what, d.facts.coach_name), *_answers(what), _end(*off))


def _end(*choices: Choice) -> tuple[Choice, ...]:
    return (*choices, Choice("no_keep", "cancel"))


def _answers(what: str) -> Rows:
    match what:
        case "sex":
            return rows_of(*(Choice(f"sex:{s.value}", f"me:{s.value}") for s in Sex))
        case "background":
            return rows_of(*(Choice(f"background:{b.value}", f"me:{b.value}") for b in Background))
        case _:
            return ()


def _chosen(asking: Setting) -> frozenset[str]:
    return frozenset(one for one in asking.detail.split(",") if one in CAUTIONS)


# --- answers ----------------------------------------------------------------------------------------------------


def pressed(d: ClientStep, asking: Setting, value: str) -> bool:
    """A button under one fact; False if it does not belong to it."""
    match asking.what:
        case "cautions" if value == DONE:
            d.do(ChangeClient("cautions_known", True))
            d.facts = replace(d.facts, profile=replace(d.facts.profile, cautions_known=True))
            _store(d, asking, {"cautions": ",".join(sorted(_chosen(asking)))})
        case "cautions" if value in CAUTIONS:
            _tick(d, asking, _chosen(asking) ^ {value})
        case "medicines" if value in d.facts.profile.medicines:
            _note(d, asking, HealthFact(What.MEDICINE, value, Stance.OVER))
        case "birth_year" if value == OFF:
            _store(d, asking, {"birth_year": "", "birth_date": ""})
        case "stature" | "sex" | "background" if value == OFF:
            _store(d, asking, {asking.what: ""})
        case "sex" if value in {s.value for s in Sex}:
            _store(d, asking, {"sex": value})
        case "background" if value in {b.value for b in Background}:
            _store(d, asking, {"background": value})
        case _:
            return False
    return True


def typed(d: ClientStep, asking: Setting, text: str) -> bool:
    """An answer in words; False if it is none, and is read as anything else."""
    match asking.what:
        case "birth_year":
            return _birth_year(d, asking, text)
        case "stature":
            return _stature(d, asking, text)
        case "medicines":
            return _medicine(d, asking, text)
        case "cautions":
            found = [f for f in health_in(text, d.words).facts if f.what is What.CAUTION and f.sure]
            if not found:
                return False
            _tick(d, asking, enrolment.ticked(_chosen(asking), found))
            return True
        case _:
            for fact in health_in(text, d.words).facts:
                if fact.what.value == asking.what:
                    return pressed(d, asking, fact.value)
            return False


def _tick(d: ClientStep, asking: Setting, chosen: frozenset[str]) -> None:
    asking = replace(asking, detail=",".join(sorted(chosen)))
    d.ask(asking)
    say(d, asking)


def _birth_year(d: ClientStep, asking: Setting, text: str) -> bool:
    year = enrolment.year_in(d, text)
    if year is None or not enrolment.ADULT < d.today.year - year <= enrolment.OLDEST:
        if any(c.isdecimal() for c in text):
            d.say(m.EnrolUnclear("birth_year"), _end())
            return True
        return False
    _note(d, asking, HealthFact(What.BIRTH_YEAR, str(year)))
    return True


def _stature(d: ClientStep, asking: Setting, text: str) -> bool:
    """A height; one far from usual is asked back."""
    assert HEIGHT.understand is not None
    heard = HEIGHT.understand(text, d.words, None)
    meant = heard.guess if isinstance(heard, Misunderstood) else heard
    if meant is None or meant.value not in HEIGHT.bounds.possible:
        if any(c.isdecimal() for c in text):
            d.say(m.EnrolUnclear("stature"), _end())
            return True
        return False
    sure = not isinstance(heard, Misunderstood) and meant.value in HEIGHT.bounds.usual
    fact = HealthFact(What.STATURE, str(Decimal(meant.value)), sure=sure)
    if sure:
        _note(d, asking, fact)
    else:
        d.ask(asking.back)
        health.ask_first(d, (fact,))
    return True


def _medicine(d: ClientStep, asking: Setting, text: str) -> bool:
    found = [f for f in health_in(text, d.words).facts if f.what is What.MEDICINE and f.value]
    name = rate_limiting_medicine(text)
    if not found and name is None:
        if len(text) > LONGEST or health_in(text, d.words).facts:
            return False
        d.say(m.MedicineUnknown(d.facts.coach_name), _end())
        return True
    _note(d, asking, *(found or [HealthFact(What.MEDICINE, name or "")]))
    return True


# --- storing ----------------------------------------------------------------------------------------------------


def _note(d: ClientStep, asking: Setting, *facts: HealthFact) -> None:
    _close(d, asking, health.note(d, facts))


def _store(d: ClientStep, asking: Setting, new: dict[str, str]) -> None:
    _close(d, asking, health.enter(d, new))


def _close(d: ClientStep, asking: Setting, changed: bool) -> None:
    if not changed:
        d.say(KeptAsItWas())
    d.ask(asking)
    check_in.close_setting(d)
    health.settle(d)
