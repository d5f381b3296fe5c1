"""A quarter of a practice in words: pooled figures, and what is too small to be told."""

from __future__ import annotations

from bot.rendering.phrases import cohort_figures, phrase
from bot.rendering.voice import Html, Voice
from core.dialogue.staff import messages as sm
from core.watching.disclosure import LEAST_PEOPLE
from core.watching.practice import Practice


def quarter(v: Voice, said: sm.PracticeSaid | sm.PracticePage) -> str:
    return called(v, said.number, said.year)


def called(v: Voice, number: int, year: int) -> str:
    """A quarter by its number and year: "Q1 2026"."""
    return v.plain("Q{number} {year}", number=v.number(number), year=v.numbers.isolate(str(year)))


def figures(v: Voice, report: Practice) -> list[Html]:
    days = v.say("{first} to {last}", first=v.full_date(report.first), last=v.full_date(report.last))
    lines = [
        days,
        v.say("Joined: {people}", people=_people(v, report.joined)),
        v.say("Programmes ended: {people}", people=_people(v, report.ended)),
    ]
    if report.asked is None or report.kept is None:
        return [*lines, v.say("Check-ins kept: {kept}", kept=_too_few(v))]
    return [*lines, v.say("Check-ins kept: {kept}", kept=cohort_figures.kept_of(v, report.kept, report.asked))]


def _people(v: Voice, number: int | None) -> str:
    return _too_few(v) if number is None else v.number(number)


def _too_few(v: Voice) -> Html:
    return v.say("not shown, fewer than {least} people", least=v.number(LEAST_PEOPLE))


@phrase(sm.PracticeSaid)
def practice_said(said: sm.PracticeSaid, v: Voice) -> str:
    return v.paragraphs(
        v.bold(v.say("Your practice: {quarter}", quarter=quarter(v, said))),
        v.lines(*figures(v, said.report)),
        v.lines(*(cohort_figures.changed(v, one) for one in said.report.changes)),
    )


@phrase(sm.WhichQuarter)
def which_quarter(said: sm.WhichQuarter, v: Voice) -> str:
    return v.say("Which quarter? It must be over. Press one, or send it like this: /report 2026q1")
