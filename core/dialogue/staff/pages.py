"""Pages to read or print: the whole caseload, or one client."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from core.dialogue.client.results import ResultFacts, results
from core.dialogue.kit.effects import Choice
from core.dialogue.staff import messages as sm
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.names import distinct_names
from core.dialogue.staff.step import StaffStep, about
from core.judging.readiness import verdict
from core.watching.digest import IN_CARE, DigestEntry, digest

WORDS = 10  # newest messages of a thread that a page shows


def everybody(d: StaffStep) -> None:
    """Each client once, where the digest names them first."""
    here = [r for r in d.facts.rows if r.status in IN_CARE]
    if not here:
        d.say(sm.NoClientsYet(), (Choice("invite", "invite"),))
        return
    cards = {c.client_id: c for c in d.facts.cards}
    called = distinct_names((r.client_id, r.name, _born(cards.get(r.client_id))) for r in d.facts.rows)
    left = {r.client_id: cards[r.client_id] for r in here if r.client_id in cards}
    week = digest(d.facts.rows, d.today, now=d.now, invitations=d.facts.waiting)

    def part(*entries: DigestEntry) -> tuple[sm.ClientSection, ...]:
        found = [left.pop(e.client_id) for e in entries if e.client_id in left]
        return tuple(section(d, replace(card, name=called[card.client_id])) for card in found)

    d.say(
        sm.CaseloadPage(
            d.today,
            needs=part(*week.needs, *(e for e in week.known if e.urgent)),
            changes=part(*week.changes),
            quiet=part(*week.quiet),
            others=_by_name(d, left.values(), called),
            asked=week.asked,
            kept=week.kept,
            left_out=tuple(r.name for r in here if r.client_id not in cards),
        )
    )


def _born(card: CardFact | None) -> int | None:
    return None if card is None else card.profile.birth_year


def _by_name(d: StaffStep, cards: Iterable[CardFact], called: dict[int, str]) -> tuple[sm.ClientSection, ...]:
    named = (replace(card, name=called[card.client_id]) for card in cards)
    return tuple(section(d, card) for card in sorted(named, key=lambda card: card.name.casefold()))


def one(d: StaffStep, card: CardFact) -> None:
    d.say(sm.ClientPage(d.today, section(d, card)), *about(card.client_id))


def section(d: StaffStep, card: CardFact) -> sm.ClientSection:
    whose = ResultFacts(card.history, card.profile, card.plan, card.zone, card.units)
    words = tuple((w.at, w.from_client, w.text) for w in card.thread[-WORDS:])
    return sm.ClientSection(card.client_id, card_said(d, card), results(whose), words)


def card_said(d: StaffStep, card: CardFact) -> sm.CardSaid:
    """The card without its results."""
    return sm.CardSaid(
        name=card.name,
        status=card.status,
        age=card.profile.age_on(d.today),
        cautions=tuple(sorted(c.value for c in card.profile.cautions)),
        slot=card.slot,
        measures=card.plan.measures,
        directed=card.plan.directed_weighing,
        directed_by=card.plan.directed_by,
        numbers=card.plan.numbers.value,
        answered=card.answered,
        paused_until=card.paused_until,
        reachable=card.reachable,
        lines=(),
        flags=card.flags,
        note=card.note,
        units=card.units,
        medicines=tuple(sorted(card.profile.medicines)),
        for_coach=card.for_coach,
        own_name=card.own_name,
        before_exercise=verdict(card.readiness, card.profile) or "",
    )
