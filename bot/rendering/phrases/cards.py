"""Cards: how a measure is taken. Prepare, do it, keep the same; short numbered lines.

Facts: body.md 2.4 (girths), 3.3 (pulse), 4.1 (blood pressure); function.md 1-5 (function tests).
"""

from __future__ import annotations

from bot.rendering.phrases import names
from bot.rendering.phrases.steps import PREPARE, TECHNIQUE
from bot.rendering.voice import N_, Html, Voice
from core.measures import MEASURES
from core.measures.measure import MeasureKind

RULER_WAIST: tuple[str, ...] = (
    N_("Take a piece of string that does not stretch."),
    N_("Find your lowest rib and the top of your hip bone. Half-way between is the place."),
    N_("Lay the string round you there, level all round. Let it touch, not press."),
    N_("Breathe out as usual. Hold the string where it meets."),
    N_("Lay the string along a ruler, piece by piece, and add it up."),
    N_("Do it twice, and send both numbers."),
)
RULER_HIP: tuple[str, ...] = (
    N_("Take a piece of string that does not stretch."),
    N_("Find the widest part of your bottom. That is the place."),
    N_("Lay the string round you there, level all round. Let it touch, not press."),
    N_("Hold the string where it meets."),
    N_("Lay the string along a ruler, piece by piece, and add it up."),
    N_("Do it twice, and send both numbers."),
)
RULER = {"waist": RULER_WAIST, "hip": RULER_HIP}


def has_card(measure: str) -> bool:
    """Whether the technique needs to be shown: a rating or a week's activity is self-explanatory."""
    found = MEASURES.get(measure)
    return found is not None and found.kind not in (MeasureKind.RATING, MeasureKind.ACTIVITY)


def card(v: Voice, measure: str, *, ruler: bool = False) -> Html:
    """The card of a measure; for a girth, optionally with a string and a ruler instead of a tape."""
    found = MEASURES.get(measure)
    title = v.bold(names.measure(v, measure))
    if found is None:
        return title
    protocol = found.protocol
    technique = [v.say(names.named(TECHNIQUE, key)) for key in protocol.technique]
    if ruler and measure in RULER:
        technique = [v.say(step) for step in RULER[measure]]
    parts = [title]
    if protocol.prepare:
        prepare = [v.say(names.named(PREPARE, key)) for key in protocol.prepare]
        parts.append(v.lines(v.say_in("card", "Before"), v.steps(*prepare)))
    if technique:
        parts.append(v.lines(v.say_in("card", "How"), v.steps(*technique)))
    extra = []
    if protocol.practice:
        extra.append(v.say("Try it once first. That one does not count."))
    if protocol.helper:
        extra.append(v.say("Somebody should stand close by."))
    if protocol.keep_same:
        aspects = names.aspects(v, protocol.keep_same)
        extra.append(v.say("Keep the same each time: {aspects}.", aspects=aspects))
    parts.append(v.lines(*extra))
    return v.paragraphs(*parts)
