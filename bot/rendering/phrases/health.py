"""Health facts said at any time: what was understood, said back; what is not sure, asked."""

from __future__ import annotations

from collections.abc import Iterator

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.labels import BACKGROUNDS, SEXES
from bot.rendering.phrases.life import units
from bot.rendering.voice import N_, Html, Voice
from core.client import Caution
from core.dialogue.client import messages as m
from core.dialogue.client import messages_to_coach as cm

MEDICINE = Caution.RATE_LIMITING_MEDICINE.value

FIELDS: dict[str, str] = {
    "stature": N_("height"),
    "birth_year": N_("year of birth"),
    "sex": N_("sex"),
    "background": N_("family background"),
}


def facts(v: Voice, cautions: tuple[str, ...], medicines: tuple[str, ...]) -> Html:
    """ "Pregnant or breast-feeding, Medicine that slows the pulse (bisoprolol)"."""
    return v.listed(list(_facts(v, cautions, medicines)))


def _facts(v: Voice, cautions: tuple[str, ...], medicines: tuple[str, ...]) -> Iterator[str]:
    for key in cautions:
        if key != MEDICINE or not medicines:
            yield v.say_in("caution", names.CAUTIONS.get(key, key))
    if medicines:
        kind = v.say_in("caution", names.CAUTIONS[MEDICINE])
        yield v.say("{kind} ({names})", kind=kind, names=names.medicines(v, medicines))


@phrase(m.HealthNoted)
def health_noted(said: m.HealthNoted, v: Voice) -> str:
    begun, over = facts(v, said.begun, said.taken), facts(v, said.over, said.stopped)
    return v.paragraphs(
        v.say("I am so sorry.") if said.grief else "",
        v.lines(
            v.say("Noted: {facts}.", facts=begun) if begun else "",
            v.say("No longer on my list: {facts}.", facts=over) if over else "",
            *_values(said, v),
            *_removed(said, v),
        ),
        v.lines(
            v.say("I do not ask for this now: {measures}.", measures=names.measures(v, said.left_out))
            if said.left_out
            else "",
            v.say("I ask for this again: {measures}.", measures=names.measures(v, said.asked_again))
            if said.asked_again
            else "",
            v.say("If it still hurts, or you hit your head, please see a doctor today.")
            if Caution.FALLS.value in said.begun
            else "",
            v.say("{coach} will hear of it.", coach=v.coach(said.coach)) if said.coach else "",
        ),
    )


def _removed(said: m.HealthNoted, v: Voice) -> Iterator[str]:
    for name in said.removed:
        field = v.say(FIELDS[name])
        yield v.say("No longer on my list: {facts}.", facts=field)


def _values(said: m.HealthNoted, v: Voice) -> Iterator[str]:
    from bot.rendering.places import place_name

    if said.height is not None:
        yield v.say("Noted: your height is {height}.", height=v.amount(said.height, measure="height"))
    if said.year is not None:
        yield v.say("Noted: you were born in {year}.", year=v.numbers.isolate(str(said.year)))
    if said.tables:
        tables = v.say_in("sex", SEXES[said.tables])
        yield v.say("Noted: I use these tables: {tables}.", tables=tables)
    if said.family:
        background = v.say_in("background", BACKGROUNDS[said.family])
        yield v.say("Noted: your family background: {background}.", background=background)
    if said.mass is not None and said.length is not None:
        yield v.say("Noted: your units: {units}.", units=units(v, said.mass, said.length))
    if said.place:
        yield v.say("Noted: your clock is that of {city}.", city=v.name(place_name(said.place, v.reader.language)))


AT_REST: dict[str, str] = {
    "pulse": N_("Your pulse at rest is too fast for this test today: {measure}."),
    "blood_pressure": N_("Your blood pressure at rest is too high for this test today: {measure}."),
}


@phrase(m.RestTooHigh)
def rest_too_high(said: m.RestTooHigh, v: Voice) -> str:
    test = names.measure(v, said.measure)
    return v.sentences(
        *(v.say(AT_REST[why], measure=test) for why in said.why),
        v.say("We skip it. Please ask your doctor or nurse before you do it."),
    )


@phrase(m.HealthSaid)
def health_said(said: m.HealthSaid, v: Voice) -> str:
    held = facts(v, said.cautions, said.medicines)
    background = v.say_in("background", BACKGROUNDS[said.background]) if said.background else ""
    tables = v.say_in("sex", SEXES[said.sex]) if said.sex else ""
    return v.lines(
        v.say("<b>About you</b>"),
        v.say("Born: {when}", when=v.numbers.isolate(str(said.year))) if said.year is not None else "",
        v.say("Tables: {tables}", tables=tables) if tables else "",
        v.say("Height: {height}", height=v.amount(said.height, measure="height")) if said.height is not None else "",
        v.say("Family background: {background}", background=background) if background else "",
        _health(v, held, asked=said.asked),
    )


def _health(v: Voice, held: str, *, asked: bool) -> str:
    if held:
        return v.say("Health: {facts}", facts=held)
    return v.say("Health: nothing on my list.") if asked else v.say("Health: I have not asked yet.")


@phrase(m.AboutMe)
def about_me(said: m.AboutMe, v: Voice) -> str:
    return v.say("Press what you want to change. You can also just tell me, at any time.")


@phrase(m.AskCautions)
def ask_cautions(said: m.AskCautions, v: Voice) -> str:
    return v.say("Press what fits you, and what no longer does. Then press Done.")


@phrase(m.AskMedicine)
def ask_medicine(said: m.AskMedicine, v: Voice) -> str:
    held = v.say("On my list: {medicines}.", medicines=names.medicines(v, said.held)) if said.held else ""
    return v.lines(held, v.say("Do you take a new one that slows the pulse? Type its name."))


@phrase(m.MedicineUnknown)
def medicine_unknown(said: m.MedicineUnknown, v: Voice) -> str:
    return v.say(
        "I know no medicine by this name that slows the pulse, so I leave my list as it is. If you are not sure, ask"
        " your doctor or the pharmacy, and tell {coach}.",
        coach=v.coach(said.coach),
    )


@phrase(m.HealthAsBefore)
def health_as_before(said: m.HealthAsBefore, v: Voice) -> str:
    return v.say("Thank you. That is what I have on my list too. Send /settings to see it.")


@phrase(m.HealthUndone)
def health_undone(said: m.HealthUndone, v: Voice) -> str:
    return v.say("I took that back. All is as it was before.")


@phrase(m.HealthNotNoted)
def health_not_noted(said: m.HealthNotNoted, v: Voice) -> str:
    return v.say("That is fine. I leave it as it was.")


@phrase(m.AskHealth)
def ask_health(said: m.AskHealth, v: Voice) -> str:
    fact = _asked(said, v)
    if said.over:
        return v.say("I am not sure I got this right. Shall I take it off my list? {fact}", fact=fact)
    return v.say("I am not sure I got this right. Shall I put it on my list? {fact}", fact=fact)


def _asked(said: m.AskHealth, v: Voice) -> Html:
    match said.what:
        case "medicine":
            return facts(v, (MEDICINE,), (said.value,) if said.value else ())
        case "background":
            background = v.say_in("background", BACKGROUNDS[said.value])
            return v.say("Family background: {background}", background=background)
        case "stature" if said.height is not None:
            return v.say("Height: {height}", height=v.amount(said.height, measure="height"))
        case _:
            return facts(v, (said.value,), ())


@phrase(cm.HealthChanged)
def health_changed(said: cm.HealthChanged, v: Voice) -> str:
    name = v.name(said.name)
    begun, over = facts(v, said.begun, said.taken), facts(v, said.over, said.stopped)
    changed = v.listed([v.say(FIELDS[field]) for field in said.fields])
    return v.lines(
        v.say("<b>{name}</b> took back what they had said about their health.", name=name)
        if said.undone
        else v.say("<b>{name}</b> told me something about their health.", name=name),
        v.say("New: {facts}", facts=begun) if begun else "",
        v.say("No longer: {facts}", facts=over) if over else "",
        v.say("Changed: {fields}", fields=changed) if changed else "",
        v.say(
            "Weighing is not directed, so a fast gain is not watched. If their clinician wants frequent weighing,"
            " switch it on in their plan."
        )
        if said.undirected
        else "",
    )
