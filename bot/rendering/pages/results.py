"""One measure on a page: what was found, what it is compared with, how sure that is, and its picture."""

from __future__ import annotations

from dataclasses import dataclass

from bot.rendering.pages.paper import Sources
from bot.rendering.pages.svg import Figure, figure
from bot.rendering.phrases import bands, names
from bot.rendering.phrases.staff_card import verdict
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client.results import Result, Value

LONGEST_QUESTION = 200
STARTS: dict[str, str] = {
    "": N_("{value}, {day}"),
    "week": N_("{value}, mean of the week until {day}"),
    "four_weeks": N_("{value}, mean of four weeks from {day}"),
}
ENDS: dict[str, str] = STARTS | {"four_weeks": N_("{value}, mean of four weeks until {day}")}


@dataclass(frozen=True, slots=True)
class Fact:
    """A line of the list beside a picture. sources: their numbers."""

    called: str
    said: str
    sources: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class ResultView:
    name: str
    facts: tuple[Fact, ...]
    bands: tuple[Fact, ...]
    figure: Figure | None


def view(one: Result, v: Voice, sources: Sources, name: str) -> ResultView:
    """name: of the picture, unique on its page."""
    called = v.typed(one.question, LONGEST_QUESTION) if one.question else names.measure(v, one.measure)
    drawn = None if one.picture is None else figure(one.picture, v, name)
    return ResultView(called, tuple(_facts(one, v, sources)), _bands(one, v, sources), drawn)


def _facts(one: Result, v: Voice, sources: Sources) -> list[Fact]:
    facts = [Fact(v.plain_in("page", "Last"), valued(v, one.measure, one.last, ENDS[""]))]
    if one.start is not None and one.now is not None and one.start.on != one.now.on:
        facts.append(Fact(v.plain_in("page", "Start"), valued(v, one.measure, one.start, STARTS[one.mean_of])))
    if one.now is not None and one.now != one.last:
        facts.append(Fact(v.plain_in("page", "Now"), valued(v, one.measure, one.now, ENDS[one.mean_of])))
    if one.verdict is not None:
        facts.append(Fact(v.plain_in("page", "Change"), verdict(v, one.verdict)))
        if one.verdict.error is not None:
            error = v.say("up to {error}", error=v.size(one.verdict.error, one.measure))
            facts.append(Fact(v.plain_in("page", "Chance"), error, sources.numbers(one.error_source)))
    if one.important is not None:
        size = v.say("{size} or more", size=v.size(one.important, one.measure))
        facts.append(Fact(v.plain_in("page", "Matters"), size, sources.numbers(one.important_source)))
    if one.differed:
        aspects = v.listed([v.say(names.ASPECTS.get(a, a)) for a in one.differed])
        facts.append(Fact(v.plain_in("page", "Taken differently"), aspects))
    return facts


def valued(v: Voice, measure: str, one: Value, text: str) -> Html:
    """text: of `STARTS` or `ENDS`."""
    return v.say(text, value=v.amount(one.amount, measure=measure, second=one.second), day=v.full_date(one.on))


def _bands(one: Result, v: Voice, sources: Sources) -> tuple[Fact, ...]:
    """What a client reads about it, from every table; or why no table fits."""
    if not one.bands and one.missing:
        return (Fact("", bands.reason(v, one.missing)),)
    said: dict[str, list[int]] = {}
    for band in one.bands:
        said.setdefault(bands.band(v, band.source, band.band), []).append(sources.number(band.source))
    return tuple(Fact("", words, tuple(numbers)) for words, numbers in said.items())
