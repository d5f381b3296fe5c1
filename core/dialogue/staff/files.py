"""What a coach takes along of one client: their readings as a file, and pictures."""

from __future__ import annotations

from core.dialogue.kit.effects import Choice
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import card as cards
from core.dialogue.staff import pages
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.effects import Export
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.step import StaffStep, about

FORMS = ("csv", "fhir")
PAGE = "page"


def export(d: StaffStep, card: CardFact, form: str) -> None:
    """All readings of a client as a file; the turn reads them and sends it, since a card does not have them all."""
    if form == PAGE:
        pages.one(d, card)
    elif form in FORMS:
        d.do(Export(card.client_id, form))
    else:
        forms = (Choice(f"export_{one}", f"export:{card.client_id}:{one}") for one in FORMS)
        d.say(tm.AskExport(card.name), (*forms, Choice("as_page", f"page:{card.client_id}")))


def picture(d: StaffStep, card: CardFact, measure: str) -> None:
    """One picture, or a choice of all there are."""
    there = cards.drawable(card)
    if measure in there:
        d.say(tm.ClientPicture(card.name, cards.picture(card, measure)), *about(card.client_id))
    elif there:
        choices = (Choice("measure", f"picture:{card.client_id}:{key}", key) for key in there)
        d.say(tm.AskPicture(card.name, measure), *rows_of(*choices))
    else:
        d.say(tm.AskPicture(card.name, measure, none=True), *about(card.client_id))
