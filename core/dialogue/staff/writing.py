"""Writing to a client: to whom the next words go, and a question before words could reach the wrong person."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta

from core.dialogue.kit.effects import Choice, Rows, Say, number_in
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.effects import TakeBack, WriteTo
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.names import mentioned
from core.dialogue.staff.states import ConfirmingWords, StaffAsking, WritingTo
from core.dialogue.staff.step import StaffStep, about, stamp, written_at
from core.language import plain

OPEN_FOR = timedelta(minutes=10)
LONGEST_WORDS = 3000  # characters; fits in one message with its heading
TAKEN_BACK_WITHIN = timedelta(seconds=61)  # a minute, and the second that the stamp leaves out
MOST_NAMED = 3  # clients offered beside the one the words were for
_TOLD_APART = re.compile(r" \(\d+\)$")


def is_open(asking: StaffAsking | None, at: datetime) -> bool:
    """Whether words typed at an instant go to the client of an open writing."""
    return isinstance(asking, WritingTo) and (asking.since is None or at <= asking.since + OPEN_FOR)


def ask_words(d: StaffStep, card: CardFact) -> None:
    d.ask(WritingTo(card.client_id, d.now))
    d.say(sm.AskWords(card.name), (Choice("send_to_nobody", "cancel"),))


def words_typed(d: StaffStep, asking: WritingTo, text: str) -> None:
    card = d.card(asking.client_id)
    d.ask(None)
    if card is not None:
        send(d, card, text)


def replied(d: StaffStep, text: str) -> None:
    """A reply to a message about one client goes to them, whatever else is open."""
    if (card := d.card(d.facts.replied)) is not None:
        send(d, card, text)


def send(d: StaffStep, card: CardFact, words: str) -> None:
    """Send words to a client; words that name somebody else are asked about first."""
    words = words.strip()[:LONGEST_WORDS]
    if others := _others(d, card, words):
        _ask_who(d, ConfirmingWords(card.client_id, words, tuple(others), "named"), card.name, tuple(others.values()))
    else:
        _sent(d, card, words)


def _sent(d: StaffStep, card: CardFact, words: str) -> None:
    mark = f"{d.facts.coach_id}.{d.ref}.{stamp(d.now)}"
    d.do(WriteTo(card.client_id, words, mark))
    back = (Choice("take_back", f"unsend:{card.client_id}:{mark}"),)
    d.say(sm.WordsSent(card.name, card.reachable), *about(card.client_id)[:1], back)


def unsend(d: StaffStep, value: str) -> None:
    """The button under words that were sent. Whatever the button says, only the coach's own words are taken back."""
    number, _, mark = value.partition(":")
    card = d.card(number_in(number))
    at = written_at(mark)
    if card is None:
        return
    if at is None or mark.partition(".")[0] != str(d.facts.coach_id) or d.now >= at + TAKEN_BACK_WITHIN:
        d.say(tm.TooLateToTakeBack(card.name), *about(card.client_id))
    else:
        d.do(TakeBack(card.client_id, mark, at))


def _others(d: StaffStep, card: CardFact, words: str) -> dict[int, str]:
    """The clients whom the words name, but for the one who gets them, and whoever has the same name."""
    called = _bare(card.name)
    named = mentioned(d.facts.mentioned, words, d.facts.language)
    found = {n: name for n, name in d.facts.mentioned if n in named and n != card.client_id and _bare(name) != called}
    return dict(list(found.items())[:MOST_NAMED])


def _bare(name: str) -> str:
    return plain(_TOLD_APART.sub("", name))


# --- to whom? ---------------------------------------------------------------------------------------------------


def offer(d: StaffStep, words: str) -> bool:
    """Words that are for nobody and name somebody: should they go to them? False if they name nobody, or several."""
    named = d.facts.mentioned
    if len(named) != 1:
        return False
    ((client, name),) = named
    _ask_who(d, ConfirmingWords(client, words[:LONGEST_WORDS], (), "offer"), name, ())
    return True


def offer_told(d: StaffStep, card: CardFact, words: str) -> None:
    """Words after "tell Ada": should just these go to her? Whoever else they name may get them instead."""
    words = words[:LONGEST_WORDS]
    others = _others(d, card, words)
    why = "named" if others else "offer"
    _ask_who(d, ConfirmingWords(card.client_id, words, tuple(others), why), card.name, tuple(others.values()))


def sure_of_words(d: StaffStep, card: CardFact, words: str) -> None:
    """Words that were to go to a client ask for something about them: should they still go?"""
    _ask_who(d, ConfirmingWords(card.client_id, words[:LONGEST_WORDS], (), "offer"), card.name, ())


def offer_late(d: StaffStep, was_open: StaffAsking | None, words: str) -> bool:
    """Words typed after the writing had closed: should they still go? False if none was open, or the client is gone."""
    if not isinstance(was_open, WritingTo) or not d.facts.writing_to:
        return False
    _ask_who(d, ConfirmingWords(was_open.client_id, words[:LONGEST_WORDS], (), "late"), d.facts.writing_to, ())
    return True


def _ask_who(d: StaffStep, asking: ConfirmingWords, name: str, others: tuple[str, ...]) -> None:
    d.ask(asking)
    d.say(tm.AskWhoGets(name, others, asking.words, asking.why), *_whom(asking, (name, *others)))


def _whom(asking: ConfirmingWords, names: tuple[str, ...]) -> Rows:
    people = zip((asking.client_id, *asking.others), names, strict=True)
    return (
        *rows_of(*(Choice("send_to", f"sendto:{client}", name) for client, name in people)),
        (Choice("send_to_nobody", "cancel"),),
    )


def ask_who_again(d: StaffStep, asking: ConfirmingWords) -> None:
    """Repeat the question with everybody who is still in this caseload."""
    called = {c.client_id: c.name for c in d.facts.cards}
    if asking.client_id not in called:
        d.ask(None)
        d.say(sm.NotYours())
        return
    others = tuple(n for n in asking.others if n in called)
    again = replace(asking, others=others)
    _ask_who(d, again, called[asking.client_id], tuple(called[n] for n in others))


def send_to(d: StaffStep, value: str) -> None:
    """The client was chosen, or confirmed."""
    card = d.card(number_in(value))
    asking = d.asking
    if card is None:
        return
    if isinstance(asking, ConfirmingWords) and card.client_id in (asking.client_id, *asking.others):
        d.ask(None)
        _sent(d, card, asking.words)
    else:
        ask_words(d, card)


def chosen_in_words(d: StaffStep, asking: ConfirmingWords, text: str) -> None:
    """A name instead of a button; anything else is no answer, so the question is put again, once."""
    if (named := named_in_words(d, asking, text)) is not None:
        send_to(d, str(named))
    else:
        ask_who_again(d, replace(asking, again=True))


def named_in_words(d: StaffStep, asking: ConfirmingWords, text: str) -> int | None:
    """The one of those asked about whose name this text is."""
    asked = [c for c in d.facts.cards if c.client_id in (asking.client_id, *asking.others)]
    named = [c.client_id for c in asked if plain(c.name) == plain(text) or _bare(c.name) == plain(text)]
    return named[0] if len(named) == 1 else None


def drop(d: StaffStep) -> None:
    """Something else was asked for: the words that were offered are dropped, and that is said."""
    d.ask(None)
    if d.facts.writing_to:
        d.say(tm.WordsDropped(d.facts.writing_to))


# --- what is open -----------------------------------------------------------------------------------------------


def say_what_is_open(d: StaffStep, at: datetime) -> None:
    """While the next words go to somebody, every reply says so; when that ends without a word sent, it is said as
    well."""
    before, name = d.before.asking, d.facts.writing_to
    if not name or not (isinstance(before, ConfirmingWords) or is_open(before, at)):
        return
    if not d.effects or (d.asking != before and any(isinstance(effect, WriteTo) for effect in d.effects)):
        return
    said = tm.AskWhoGets | sm.AskWords | tm.WordsDropped
    asked = any(isinstance(e, Say) and isinstance(e.message, said) for e in d.effects)
    if d.asking == before:
        if not asked and isinstance(before, WritingTo):
            d.say(tm.StillWriting(name))
    elif not asked:
        d.say(tm.WritingClosed(name))
