"""What a client says of their health, at any time: noted, said back with a button to undo it; asked once if unsure."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from decimal import Decimal

from core.care import Units
from core.client import Background, Caution, Sex
from core.dialogue.client import before_exercise, check_in, enrolment, needed
from core.dialogue.client import messages as m
from core.dialogue.client.effects import ChangeClient, NotifyCoach
from core.dialogue.client.messages_to_coach import HealthChanged
from core.dialogue.client.states import AlarmAsked, Asking, Awaiting, Enrolling, FactsNoted, Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.messages import WhichPlace
from core.dialogue.kit.step import rows_of
from core.measures import MEASURES
from core.measures.weight import WEIGHT
from core.quantity import Unit
from core.references.exercise_screening_acsm_2015 import DISEASE
from core.understanding.answers_in_text import whole_numbers
from core.understanding.health_facts import CLASS, HealthFact, Stance, What, health_in

ASK = "fact"  # the setting in which a fact is asked about
TO_COACH = ("stature", "birth_year", "sex", "background")  # fields that change what a reading is compared with
ATTACHED = ("بال", "لل", "ب", "ل")  # Arabic prepositions, written together with a place
SMALL = 3  # letters; a shorter word is no place


# --- taking in --------------------------------------------------------------------------------------------------


def heard(d: ClientStep, facts: Iterable[HealthFact]) -> bool:
    """Note the facts that are sure; True if something was said. Those that change nothing are acknowledged."""
    facts = [fact for fact in facts if _possible(d, fact)]
    moved = next((fact for fact in facts if fact.what is What.MOVED), None)
    sure = [fact for fact in facts if fact.sure and fact is not moved]
    zones = _zones(d, moved.value) if moved is not None else ()
    known = len(zones) == 1 and d.facts.slot is not None and zones[0] == d.facts.slot.zone_name
    plain_move = moved is not None and moved.sure and len(zones) == 1
    noted = note(d, sure, zones[0] if plain_move else "")
    if moved is not None and not plain_move and not known and (zones or moved.sure):  # "I live in pain" is no move
        _ask_place(d, zones)
        return True
    return noted or _as_before(d, sure, known_place=known)


def overhear(d: ClientStep, text: str) -> None:
    """Note what a message for the coach says of health, too."""
    note(d, [fact for fact in health_in(text, d.words).facts if fact.sure and fact.what is not What.MOVED])


def _possible(d: ClientStep, fact: HealthFact) -> bool:
    """A birth year that nobody here can have is left to the question in the settings."""
    if fact.what is not What.BIRTH_YEAR:
        return True
    return enrolment.ADULT < d.today.year - int(fact.value) <= enrolment.OLDEST


def _as_before(d: ClientStep, sure: Iterable[HealthFact], *, known_place: bool) -> bool:
    if not known_place and not any(True for _ in sure):
        return False
    d.say(m.HealthAsBefore())
    return True


def note(d: ClientStep, facts: Iterable[HealthFact], zone_name: str = "") -> bool:
    """Store facts and say them back; False if they change nothing."""
    facts = tuple(facts)
    new = _values(d) | ({"zone": zone_name} if zone_name else {})
    for fact in facts:
        _change(new, fact)
    again = any(f.value == Caution.FALLS.value and f.stance is Stance.SO for f in facts)  # each fall is news
    return enter(d, new, fell=again, grief=any(fact.grief for fact in facts))


def enter(d: ClientStep, new: dict[str, str], *, fell: bool = False, grief: bool = False) -> bool:
    """Store values by field, say back what changes and let it take effect; False if nothing does."""
    before = _values(d)
    after = before | new
    if Caution.RATE_LIMITING_MEDICINE not in _listed(after["cautions"]):
        after["medicines"] = ""
    if after == before and not fell:
        return False
    asked = _asked(d)
    _left_out(after, before)
    _store(d, before, after)
    _say_back(d, before, after, asked, fell=fell, grief=grief)
    return True


def _values(d: ClientStep) -> dict[str, str]:
    """What is known, as text: what a button takes back must be kept in a state."""
    profile, slot = d.facts.profile, d.facts.slot
    return {
        "cautions": ",".join(sorted(profile.cautions)),
        "medicines": ",".join(sorted(profile.medicines)),
        "stature": "" if profile.stature is None else str(profile.stature),
        "birth_year": "" if profile.birth_year is None else str(profile.birth_year),
        "birth_date": "" if profile.birth_date is None else profile.birth_date.isoformat(),
        "sex": profile.sex or "",
        "background": profile.background or "",
        "units": next((key for key, units in needed.UNIT_SETS.items() if units == d.facts.units), ""),
        "zone": slot.zone_name if slot is not None else "",
        "weighing": "asked" if WEIGHT.key in d.facts.plan.measures else "",
    }


def _listed(text: str) -> set[str]:
    return {one for one in text.split(",") if one}


def _change(values: dict[str, str], fact: HealthFact) -> None:
    """Enter one fact into the values."""
    cautions, medicines = _listed(values["cautions"]), _listed(values["medicines"])
    match fact.what:
        case What.CAUTION:
            (cautions.add if fact.stance is Stance.SO else cautions.discard)(fact.value)
        case What.MEDICINE if fact.stance is Stance.SO:
            medicines.add(fact.value)
            if fact.value != CLASS:
                medicines.discard(CLASS)
            cautions.add(Caution.RATE_LIMITING_MEDICINE)
        case What.MEDICINE:
            every = fact.value in ("", CLASS)
            if every or fact.value in medicines or not medicines:
                medicines = set() if every else medicines - {fact.value, CLASS}
                if not medicines:
                    cautions.discard(Caution.RATE_LIMITING_MEDICINE)
        case What.BIRTH_YEAR:
            known = values["birth_date"][:4]
            if known != fact.value:
                values |= {"birth_year": fact.value, "birth_date": ""}
        case What.MOVED:
            pass  # by its zone
        case _:
            values[fact.what.value] = fact.value
    values |= {"cautions": ",".join(sorted(cautions)), "medicines": ",".join(sorted(medicines))}


def _left_out(after: dict[str, str], before: dict[str, str]) -> None:
    """Worries about eating: weight is left out until the client wants it back, as at enrolment."""
    worry = Caution.EATING_WORRIES.value
    if worry in _listed(after["cautions"]) and worry not in _listed(before["cautions"]):
        after["weighing"] = ""


def _store(d: ClientStep, before: dict[str, str], after: dict[str, str]) -> None:
    changed = tuple((name, text) for name, text in before.items() if after[name] != text)
    for name, _ in changed:
        _set(d, name, after[name])
    d.become(facts_noted=FactsNoted(int(d.now.timestamp()), d.now, changed))


def _set(d: ClientStep, name: str, text: str) -> None:
    """Store one value; bands, guard and questions go by it from here on."""
    profile = d.facts.profile
    match name:
        case "cautions":
            cautions = frozenset(map(Caution, _listed(text)))
            d.do(ChangeClient(name, cautions))
            changed = (cautions ^ profile.cautions) & (DISEASE | {Caution.BREATHLESS_AT_REST})
            profile = replace(profile, cautions=cautions)
            d.facts = replace(d.facts, profile=profile)
            if changed:
                before_exercise.ask_again(d)
                before_exercise.tell(d)
        case "medicines":
            d.do(ChangeClient(name, frozenset(_listed(text))))
            profile = replace(profile, medicines=frozenset(_listed(text)))
        case "stature":
            stature = Decimal(text) if text else None
            d.do(ChangeClient(name, stature))
            profile = replace(profile, stature=stature)
        case "birth_year":
            year = int(text) if text else None
            d.do(ChangeClient(name, year))
            profile = replace(profile, birth_year=year)
        case "birth_date":
            born = date.fromisoformat(text) if text else None
            d.do(ChangeClient(name, born))
            profile = replace(profile, birth_date=born)
        case "sex":
            sex = Sex(text) if text else None
            d.do(ChangeClient(name, sex))
            profile = replace(profile, sex=sex)
        case "background":
            background = Background(text) if text else None
            d.do(ChangeClient(name, background))
            profile = replace(profile, background=background)
        case "units" if text:
            d.do(ChangeClient(name, needed.UNIT_SETS[text]))
            d.facts = replace(d.facts, units=needed.UNIT_SETS[text])
        case "zone" if text:
            enrolment.set_slot(d, zone_name=text)
        case "weighing":
            rest = tuple(x for x in d.facts.plan.measures if x != WEIGHT.key)
            plan = replace(d.facts.plan, measures=(WEIGHT.key, *rest) if text else rest)
            d.do(ChangeClient("plan", plan))
            d.facts = replace(d.facts, plan=plan)
        case _:
            pass
    d.facts = replace(d.facts, profile=profile)


# --- saying back ------------------------------------------------------------------------------------------------


def _asked(d: ClientStep) -> list[str]:
    """Measures of the plan that this client is asked for."""
    return [key for key in d.facts.plan.measures if key in MEASURES and check_in.askable(d, MEASURES[key])]


def _say_back(
    d: ClientStep, before: dict[str, str], after: dict[str, str], asked: list[str], *, fell: bool, grief: bool
) -> None:
    new = {name: text for name, text in after.items() if text != before[name]}
    cautions, held = _listed(after["cautions"]), _listed(before["cautions"])
    begun, over = cautions - held, held - cautions
    if fell:
        begun.add(Caution.FALLS.value)
    taken = tuple(sorted(_listed(after["medicines"]) - _listed(before["medicines"])))
    stopped = tuple(sorted(_listed(before["medicines"]) - _listed(after["medicines"])))
    now_asked = _asked(d)
    fields = tuple(name for name in TO_COACH if name in new)
    news = bool(begun or over or taken or stopped or fields)
    units: Units | None = needed.UNIT_SETS.get(new.get("units", ""))
    d.say(
        m.HealthNoted(
            begun=tuple(sorted(begun)),
            over=tuple(sorted(over)),
            taken=taken,
            stopped=stopped,
            removed=tuple(name for name in TO_COACH if name in new and not new[name]),
            height=d.shown(MEASURES["height"], Decimal(new["stature"])) if new.get("stature") else None,
            year=int(new["birth_year"]) if new.get("birth_year") else None,
            tables=new.get("sex", ""),
            family=new.get("background", ""),
            mass=units.mass if units is not None else None,
            length=_shown_length(units) if units is not None else None,
            place=new.get("zone", ""),
            left_out=tuple(key for key in asked if key not in now_asked),
            asked_again=tuple(key for key in now_asked if key not in asked),
            grief=grief,
            coach=d.facts.told if news else "",
        ),
        *_undo_button(d),
    )
    if news:
        _tell(d, HealthChanged(d.facts.client_id, d.facts.name, tuple(sorted(begun)), tuple(sorted(over)), taken,
                               stopped, fields, _undirected(d, begun)))  # fmt: skip


def _shown_length(units: Units) -> Unit:
    return Unit.FOOT if units.length is Unit.INCH else units.length


def _undirected(d: ClientStep, begun: set[str]) -> bool:
    """Whether heart failure is new and a fast gain would not be watched, because nobody directed the weighing."""
    return Caution.HEART_FAILURE.value in begun and not d.facts.plan.directed_weighing


def _tell(d: ClientStep, message: object) -> None:
    d.do(NotifyCoach(message))


def _undo_button(d: ClientStep) -> Rows:
    noted = d.state.facts_noted
    if noted is None or not noted.before:  # one more fall, which is only passed on
        return ()
    return ((Choice("fact_wrong", f"fact:{noted.mark}"),),)


def settle(d: ClientStep) -> None:
    """Questions that no longer fit are dropped, as after a change of the plan."""
    d.become(agenda=tuple(k for k in d.state.agenda if check_in.askable(d, MEASURES[k])))
    if isinstance(d.asking, Awaiting) and not check_in.askable(d, MEASURES[d.asking.measure]):
        d.ask(None)
        if d.state.day is not None:
            check_in.ask_next(d)
        return
    needs_it = MEASURES.get(d.asking.measure) if isinstance(d.asking, Enrolling) else None
    if needs_it is not None and not check_in.askable(d, needs_it):
        enrolment.go_on(d)


# --- undoing ----------------------------------------------------------------------------------------------------


def undo(d: ClientStep, mark: str) -> bool:
    """The button under what was said back. False if something else was noted since."""
    noted = d.state.facts_noted
    if noted is None or mark != str(noted.mark):
        return False
    profile = d.facts.profile
    for name, text in noted.before:
        _set(d, name, text)
    d.become(facts_noted=None)
    d.say(m.HealthUndone())
    names = {name for name, _ in noted.before}
    if profile != d.facts.profile:
        begun, over = d.facts.profile.cautions - profile.cautions, profile.cautions - d.facts.profile.cautions
        _tell(
            d,
            HealthChanged(
                d.facts.client_id,
                d.facts.name,
                tuple(sorted(begun)),
                tuple(sorted(over)),
                tuple(sorted(d.facts.profile.medicines - profile.medicines)),
                tuple(sorted(profile.medicines - d.facts.profile.medicines)),
                tuple(name for name in TO_COACH if name in names),
                undone=True,
            ),
        )
    return True


# --- asking -----------------------------------------------------------------------------------------------------


def ask_first(d: ClientStep, facts: Iterable[HealthFact]) -> bool:
    """Ask about the first fact that is not sure and would change something; True if one is asked."""
    if isinstance(d.asking, AlarmAsked):
        return False
    values = _values(d)
    for fact in facts:
        after = dict(values)
        _change(after, fact)
        if fact.sure or after == values or fact.what is What.MOVED or not _possible(d, fact):
            continue
        d.ask(Setting(ASK, f"{fact.what.value}|{fact.value}|{fact.stance.value}", _back(d)))
        say_question(d, fact)
        return True
    return False


def _back(d: ClientStep) -> Asking | None:
    return d.asking.back if isinstance(d.asking, Setting) else d.asking


def say_question(d: ClientStep, fact: HealthFact) -> None:
    height = d.shown(MEASURES["height"], Decimal(fact.value)) if fact.what is What.STATURE else None
    d.say(
        m.AskHealth(fact.what.value, fact.value, fact.stance is not Stance.SO, height),
        (Choice("yes", "note:yes"), Choice("no", "note:no")),
    )


def asked_about(asking: Setting) -> HealthFact | None:
    """The fact that an open question is about; None if the state is of another make."""
    what, _, rest = asking.detail.partition("|")
    value, _, stance = rest.rpartition("|")
    try:
        return HealthFact(What(what), value, Stance(stance))
    except ValueError:
        return None


def answered(d: ClientStep, asking: Setting, yes: bool) -> None:
    """Yes or no to "shall I note this?"."""
    fact = asked_about(asking)
    d.ask(asking.back)
    if fact is None or not yes or not note(d, (fact,)):
        d.say(m.HealthNotNoted())
    settle(d)


# --- a place ----------------------------------------------------------------------------------------------------


def _zones(d: ClientStep, typed: str) -> tuple[str, ...]:
    """Zones of the place at the beginning of some words: "new york last week"."""
    words = typed.split()
    for size in range(len(words), 0, -1):
        for name in _spelled(" ".join(words[:size])):
            if len(name) >= SMALL and (found := d.facts.find_zones(name)):
                return found
    return ()


def _spelled(name: str) -> tuple[str, ...]:
    return (name, *(name.removeprefix(p) for p in ATTACHED if name.startswith(p)))


def _ask_place(d: ClientStep, zones: tuple[str, ...]) -> None:
    d.ask(Setting("zone", "", _back(d)))
    if zones:
        which_place(d, zones)
    else:
        d.say(m.AskZone())


def which_place(d: ClientStep, found: tuple[str, ...]) -> None:
    d.say(WhichPlace(found[:6]), *rows_of(*(Choice("place", f"zone:{z}"[:64], z) for z in found[:6])))


# --- while enrolling --------------------------------------------------------------------------------------------

BY_BUTTONS = ("sex", "units", "background", "numbers", "own_better", "weekday", "time", "adult")
IN_WORDS = ("birth_year", "rating", "zone")  # a text without a number may tell something else


def while_enrolling(d: ClientStep, text: str, asking: Enrolling) -> bool:
    """A condition or a medicine named instead of an answer: noted, and the question is put again. False if none was."""
    in_words = asking.question in IN_WORDS and not whole_numbers(text, d.words)
    if asking.question not in BY_BUTTONS and not in_words:
        return False
    facts = [f for f in health_in(text, d.words).facts if f.sure and f.what in (What.CAUTION, What.MEDICINE)]
    if not note(d, facts):
        return False
    left = asking.left if WEIGHT.key in d.facts.plan.measures else tuple(q for q in asking.left if q != "numbers")
    d.ask(replace(asking, left=left))
    needed.say_question(d, asking)
    return True
