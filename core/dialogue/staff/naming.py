"""The name under which a coach sees a client: the client's own, or one that the coach gave and only they read."""

from __future__ import annotations

from core.dialogue.kit.effects import Choice, number_in
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.staff.effects import CallClient
from core.dialogue.staff.name_messages import AskCalled, Called
from core.dialogue.staff.states import NamingClient
from core.dialogue.staff.step import StaffStep, about
from core.language import plain

LONGEST_NAME = 40  # characters; a button has room for them
OWN = "own"


def name(d: StaffStep, value: str) -> None:
    """ "17" asks; "17:own" goes back to what they call themselves."""
    number, _, choice = value.partition(":")
    card = d.card(number_in(number))
    if card is None:
        return
    if choice == OWN:
        typed(d, NamingClient(card.client_id), card.own_name)
        return
    d.ask(NamingClient(card.client_id))
    own = ((Choice("client", f"name:{card.client_id}:{OWN}", card.own_name),),) if card.own_name else ()
    d.say(AskCalled(card.name, card.own_name), *own, (Choice("no_keep", "cancel"),))


def typed(d: StaffStep, asking: NamingClient, text: str) -> None:
    card = d.card(asking.client_id)
    called = " ".join(text.split())[:LONGEST_NAME].strip()
    d.ask(None)
    if card is None:
        return
    if not called:
        d.say(KeptAsItWas())
        return
    own = called == card.own_name
    taken = any(_alike(r.name, called) for r in d.facts.rows if r.client_id != card.client_id)
    d.do(CallClient(card.client_id, "" if own else called))
    d.say(Called(called, own, taken), *about(card.client_id))


def _alike(name: str, called: str) -> bool:
    """Whether another client is called that, with or without a year beside it."""
    return plain(name) == plain(called) or plain(name).startswith(f"{plain(called)} (")
