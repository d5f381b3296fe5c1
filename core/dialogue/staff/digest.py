"""The weekly digest and its sheet: at its slot, or whenever a coach asks."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.events import Due
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import card as cards
from core.dialogue.staff import messages as sm
from core.dialogue.staff import pages
from core.dialogue.staff.effects import MarkSeen, ToldInDigest
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.step import StaffStep, stamp
from core.watching.digest import IN_CARE, Digest, Panel, digest, fitted

OPENED = 8  # people with a button under the digest itself
PEOPLE = 24  # people with a button on each page that follows
AS_FILE = (Choice("as_pdf", "sheet:pdf"), Choice("as_page", "page"))


def due(d: StaffStep, event: Due) -> None:
    """The coach's slot is due, however late, since the next one replaces it. A coach without clients gets nothing."""
    if event.instead_of:
        _say_instead(d, event)
    elif d.coach and _anybody(d):
        _say(d, event.day, occasion=f"digest/{d.facts.coach_id}/{event.day.isoformat()}")


def _say_instead(d: StaffStep, event: Due) -> None:
    """The digest of a coach who is away, to whoever stands in for them today; nothing if nobody is loaded for them."""
    if d.facts.away and _anybody(d):
        made = made_for(d, event.day)
        people = rows_of(*(Choice("client", f"card:{client}", name) for client, name in made.named[:PEOPLE]))
        occasion = f"digest/{event.instead_of}/{event.day.isoformat()}/{d.facts.coach_id}"
        d.say(sm.DigestFor(d.facts.away, made), *people, occasion=occasion)


def _anybody(d: StaffStep) -> bool:
    return any(r.status in IN_CARE or r.flags for r in d.facts.rows)


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
    d.become(digest_day=day, digest_flags=made.shown, digest_at=d.now)
    if occasion is not None and made.shown:
        d.do(ToldInDigest(made.shown))
    d.say(sm.DigestSaid(made), *_choices(made, d.now), occasion=occasion)
    if (found := _sheet(d, day, made, new_only=True)) is not None:
        d.say(found, AS_FILE, occasion=f"{occasion}/sheet" if occasion else None)


def made_for(d: StaffStep, day: date) -> Digest:
    """The digest of a day, cut to one screen as rendered for this coach."""
    return fitted(_whole(d, day), d.facts.size)


def _whole(d: StaffStep, day: date) -> Digest:
    return digest(d.facts.rows, day, now=d.now, invitations=d.facts.waiting)


def _choices(made: Digest, now: datetime) -> Rows:
    """Buttons: mark everything told as seen; the cards of all who are named, page by page; the list."""
    people = made.named
    if not people:
        return ((Choice("caseload", "list:need:0"),),)
    total = len(people) + made.left_out
    return (
        *(((Choice("seen", f"seen:{stamp(now)}"),),) if made.shown else ()),
        *rows_of(*(Choice("client", f"card:{client}", name) for client, name in people[:OPENED])),
        *(((Choice("everybody_named", "people:0", str(total)),),) if total > OPENED else ()),
        (Choice("write", "write"), Choice("caseload", "list:need:0")),
    )


def people(d: StaffStep, value: str) -> None:
    """A page of buttons for everybody the digest names now, in its order."""
    everybody = _whole(d, d.today).named
    pages = max(1, -(-len(everybody) // PEOPLE))
    page = min(int(value) if value.isdecimal() and len(value) < 9 else 0, pages - 1)
    turn = []
    if page > 0:
        turn.append(Choice("page_before", f"people:{page - 1}"))
    if page + 1 < pages:
        turn.append(Choice("page_after", f"people:{page + 1}"))
    here = everybody[page * PEOPLE : (page + 1) * PEOPLE]
    d.say(
        sm.PeopleNamed(len(everybody), page, pages),
        *rows_of(*(Choice("client", f"card:{client}", name) for client, name in here)),
        *((tuple(turn),) if turn else ()),
        (Choice("digest", "digest"), Choice("caseload", "list:need:0")),
    )


def seen(d: StaffStep, value: str) -> None:
    """What that very message told is marked as seen; for an older one, the digest is shown as it is now."""
    at = d.state.digest_at
    if at is None or value != stamp(at):
        _say(d, d.today)
        return
    shown = frozenset(d.state.digest_flags)
    here = tuple(f.id for r in d.facts.rows for f in r.flags if f.id in shown)
    names = tuple(r.name for r in d.facts.rows if any(f.id in shown for f in (*r.flags, *r.settled)))
    if here:
        d.do(MarkSeen(here, at))
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
    """Panels in the order of the digest. new_only: only for what is new in it."""
    by_id = {c.client_id: c for c in d.facts.cards}
    flags: dict[int, CardFact] = {}
    for entry in made.entries if new_only else (*made.entries, *made.known):
        card = by_id.get(entry.client_id)
        if card is not None:
            flags[entry.client_id] = replace(card, flags=(*entry.flags, *(() if new_only else entry.still)))
    return cards.panels(tuple(flags.values()), d.now - cards.YEAR)
