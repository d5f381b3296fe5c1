"""The weekly digest and its sheet: at its slot, or whenever a coach asks."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.events import Due
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import card as cards
from core.dialogue.staff import messages as sm
from core.dialogue.staff import pages
from core.dialogue.staff.effects import MarkSeen
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.step import StaffStep
from core.watching.digest import IN_CARE, Digest, Panel, digest, fitted

OPENED = 4  # the first few entries get a button each
AS_FILE = (Choice("as_pdf", "sheet:pdf"), Choice("as_page", "page"))


def due(d: StaffStep, event: Due) -> None:
    """The coach's slot is due, however late, since the next one replaces it. A coach without clients gets nothing."""
    if d.coach and _anybody(d):
        _say(d, event.day, occasion=f"digest/{d.facts.coach_id}/{event.day.isoformat()}")


def _anybody(d: StaffStep) -> bool:
    return any(r.status in IN_CARE for r in d.facts.rows)


def asked(d: StaffStep, argument: str) -> None:
    """/digest, /digest pdf and /digest page"""
    if is_page(argument):
        pages.everybody(d)
    elif argument.strip().casefold() == "pdf":
        sheet(d, "pdf")
    elif _anybody(d):
        _say(d, d.today)
    else:
        d.say(sm.NoClientsYet(), (Choice("invite", "invite"),))


def is_page(argument: str) -> bool:
    return argument.strip().casefold() == "page"


def _say(d: StaffStep, day: date, occasion: str | None = None) -> None:
    """The text, and a picture of what is new in it; what was already seen is not drawn again."""
    made = made_for(d, day)
    d.become(digest_day=day, digest_flags=made.shown)
    d.say(sm.DigestSaid(made), *_choices(made), occasion=occasion)
    if (found := _sheet(d, day, made, new_only=True)) is not None:
        d.say(found, AS_FILE, occasion=f"{occasion}/sheet" if occasion else None)


def made_for(d: StaffStep, day: date) -> Digest:
    """The digest of a day, cut to one message as rendered for this coach."""
    return fitted(digest(d.facts.rows, day), d.facts.length)


def _choices(made: Digest) -> Rows:
    """Buttons: mark everything shown as seen; cards of the first few; the list."""
    if not made.entries:
        return ((Choice("caseload", "list:need:0"),),)
    first = list(dict.fromkeys((e.client_id, e.name) for e in made.entries))[:OPENED]
    return (
        *((((Choice("seen", f"seen:{made.day.isoformat()}"),),)) if _news(made) else ()),
        *rows_of(*(Choice("client", f"card:{client}", name) for client, name in first)),
        (Choice("write", "write"), Choice("caseload", "list:need:0")),
    )


def _news(made: Digest) -> bool:
    return any(not f.seen for e in made.entries for f in e.flags)


def seen(d: StaffStep, value: str) -> None:
    """Everything the digest of that day showed is marked as seen; for an older digest, the current one is shown."""
    if d.state.digest_day is None or value != d.state.digest_day.isoformat():
        _say(d, d.today)
        return
    shown = frozenset(d.state.digest_flags)
    here = tuple(f.id for r in d.facts.rows for f in r.flags if f.id in shown)
    names = tuple(r.name for r in d.facts.rows if any(f.id in shown for f in r.flags))
    if here:
        d.do(MarkSeen(here))
    d.say(sm.SeenNoted(names))


# --- the sheet --------------------------------------------------------------------------------------------------


def sheet(d: StaffStep, value: str) -> None:
    """ "pdf": everybody flagged, for printing; else the picture."""
    made = made_for(d, d.today)
    found = _sheet(d, d.today, made, pdf=value == "pdf")
    if found is None:
        d.say(sm.NothingToDraw())
    else:
        d.say(found, *(() if found.pdf else (AS_FILE,)))


def _sheet(d: StaffStep, day: date, made: Digest, *, pdf: bool = False, new_only: bool = False) -> sm.Sheet | None:
    panels = _panels(d, made, new_only)
    if not panels:
        return None
    kept = panels if pdf else panels[: cards.PANELS]
    return sm.Sheet(day, kept, len(panels) - len(kept), pdf)


def _panels(d: StaffStep, made: Digest, new_only: bool) -> tuple[Panel, ...]:
    """Panels in the order of the digest, only for what it shows."""
    by_id = {c.client_id: c for c in d.facts.cards}
    flags: dict[int, CardFact] = {}
    for entry in made.entries:
        card = flags.get(entry.client_id) or by_id.get(entry.client_id)
        if card is not None:
            before = card.flags if entry.client_id in flags else ()
            wanted = tuple(f for f in entry.flags if not (new_only and f.seen))
            flags[entry.client_id] = replace(card, flags=(*before, *wanted))
    return cards.panels(tuple(flags.values()), d.now - cards.YEAR)
