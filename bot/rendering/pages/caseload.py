"""A coach's page: the whole caseload, or one client."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime

from bot.foundation.reader import Reader
from bot.rendering.pages.paper import Sources, printed
from bot.rendering.pages.results import ResultView, view
from bot.rendering.pages.words import said_by_templates
from bot.rendering.phrases import names
from bot.rendering.phrases.coach import evidence, flag, what
from bot.rendering.phrases.staff_card import head
from bot.rendering.voice import Html, Voice, voice
from core.care import Units
from core.dialogue.staff import messages as sm
from core.watching.digest import GRAVITY, FlagFact
from core.watching.flags import Severity

LONGEST_WORDS = 3000


@dataclass(frozen=True, slots=True)
class ClientView:
    """One client. id: of the section, the same on every page that shows the same people. flags: urgent or not, what.
    why: the gravest of them in a few words, as the digest has it."""

    id: str
    name: str
    facts: tuple[str, ...]
    flags: tuple[tuple[bool, str], ...]
    results: tuple[ResultView, ...]
    note: str
    words: tuple[tuple[str, str, str], ...]
    why: str


@dataclass(frozen=True, slots=True)
class PartView:
    """A part of the caseload. id: of its heading."""

    id: str
    title: str
    clients: tuple[ClientView, ...]


def caseload_page(said: sm.CaseloadPage, reader: Reader) -> bytes:
    """A caseload as HTML, UTF-8."""
    v, sources = voice(reader), Sources()
    numbered = iter(range(1, len(said.sections) + 1))
    others = v.plain("Everybody else") if said.needs or said.changes or said.quiet else v.plain("Everybody")
    parts = (
        PartView("needs", v.plain("Needs you"), _clients(said.needs, v, sources, numbered)),
        PartView("changes", v.plain("Worth knowing"), _clients(said.changes, v, sources, numbered)),
        PartView("quiet", v.plain("Gone quiet"), _clients(said.quiet, v, sources, numbered)),
        PartView("others", others, _clients(said.others, v, sources, numbered)),
    )
    summary = [
        v.say("Checked in this week: {kept} of {asked} asked.", kept=v.number(said.kept), asked=v.number(said.asked))
    ]
    if said.left_out:
        left_out = v.listed([v.name(name) for name in said.left_out])
        summary.append(v.say("Not on this page: {names}", names=left_out))
    return printed(
        "caseload.html",
        v,
        words=said_by_templates(v),
        title=v.plain("Caseload: {day}", day=v.numbers.full_date(said.day)),
        summary=summary,
        parts=[part for part in parts if part.clients],
        sources=sources,
    )


def client_page(said: sm.ClientPage, reader: Reader) -> bytes:
    """One client as HTML, UTF-8."""
    v, sources = voice(reader), Sources()
    return printed(
        "client.html",
        v,
        words=said_by_templates(v),
        title=said.section.card.name,
        day=v.full_date(said.day),
        client=_client(said.section, v, sources, 1),
        sources=sources,
    )


def _clients(
    sections: Sequence[sm.ClientSection], v: Voice, sources: Sources, numbered: Iterator[int]
) -> tuple[ClientView, ...]:
    return tuple(_client(section, v, sources, next(numbered)) for section in sections)


def _client(section: sm.ClientSection, v: Voice, sources: Sources, number: int) -> ClientView:
    card = section.card
    facts = head(card, v).split("\n")[1:]  # the first is the name, which is the heading
    return ClientView(
        f"client-{number}",
        v.name(card.name),
        tuple(Html(fact) for fact in (*_age(card, v), *facts)),
        tuple((one.severity == Severity.URGENT and not one.seen, _flag(v, one, card.units)) for one in card.flags),
        tuple(view(one, v, sources, f"client-{number}-{n}") for n, one in enumerate(section.results, 1)),
        v.typed(card.note, LONGEST_WORDS) if card.note else "",
        tuple(_said(v, card.name, *word) for word in section.words),
        _why(v, card),
    )


def _why(v: Voice, card: sm.CardSaid) -> Html:
    gravest = min(card.flags, key=lambda one: (GRAVITY[Severity(one.severity)], -one.newest.timestamp()), default=None)
    return Html("") if gravest is None else what(v, gravest, card.units)


def _age(card: sm.CardSaid, v: Voice) -> tuple[Html, ...]:
    return () if card.age is None else (v.say_n("{n} year", "{n} years", card.age),)


def _flag(v: Voice, one: FlagFact, units: Units) -> Html:
    facts = evidence(v, one.measure, tuple(pair for pair in one.evidence if pair[0] != "since"), units)
    about = names.measure(v, one.measure) if one.measure else ""
    return v.sentences(
        v.say("{measure}: {what}", measure=about, what=flag(v, one.code)) if about else flag(v, one.code),
        v.say("{facts}.", facts=facts) if facts else "",
        v.say("Since {day}.", day=v.short_date(one.since.astimezone(v.reader.zone).date())),
        v.say("Seen.") if one.seen else "",
    )


def _said(v: Voice, name: str, at: datetime, from_client: bool, text: str) -> tuple[str, str, str]:
    return (
        v.full_date(at.astimezone(v.reader.zone).date()),
        v.name(name) if from_client else v.plain_in("page", "You"),
        v.typed(text, LONGEST_WORDS),
    )
