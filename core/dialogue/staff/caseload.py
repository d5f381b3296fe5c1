"""The caseload: the list, a search, a client's card, the thread, the note."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from core.dialogue.kit.effects import Choice, Rows, number_in
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import card as cards
from core.dialogue.staff import files, pages, writing
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.effects import AnswerCohort, ClearFlags, MarkSeen, SaveNote
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.names import addressed, all_names, distinct_names
from core.dialogue.staff.states import AskingSure, ChoosingClient, DealingWith, NotingOn
from core.dialogue.staff.step import Handler, StaffStep, about, stamp, stamped
from core.understanding.answers_in_text import names_in
from core.watching.digest import CaseRow, FlagFact, by_need
from core.watching.flags import Done, Severity

PAGE = 8
LONGEST_NOTE = 1000
LONGEST_DONE = 200  # of one line about what was done
USUAL = (Done.RANG, Done.WROTE, Done.MET, Done.REFERRED, Done.NOTHING)
NOT_SAVED = Choice("no_keep", "cancel")
THREAD = 10  # messages of a thread that are shown
SHOWN_NAMES = 12  # most clients listed when a name is ambiguous


# --- the list ---------------------------------------------------------------------------------------------------


def caseload(d: StaffStep, argument: str) -> None:
    """The list by need, or a search for the clients named."""
    if argument.strip():
        choose_client(d, argument, "card")
    else:
        page(d, "need", 0)


def listed(d: StaffStep, value: str) -> None:
    """A button under the list: "need:1"."""
    order, _, number = value.partition(":")
    page(d, order if order in ("need", "name") else "need", int(number) if number.isdecimal() else 0)


def page(d: StaffStep, order: str, number: int) -> None:
    here = d.facts.rows
    if not here:
        d.say(sm.NoClientsYet(), (Choice("invite", "invite"),))
        return
    every = by_need(here) if order == "need" else tuple(sorted(here, key=lambda r: r.name.casefold()))
    pages = -(-len(every) // PAGE)
    number = min(number, pages - 1)
    rows = every[number * PAGE : (number + 1) * PAGE]
    d.say(sm.CaseloadList(rows, order, number, pages, len(every)), *_list_choices(rows, order, number, pages))


def _list_choices(rows: tuple[CaseRow, ...], order: str, number: int, pages: int) -> Rows:
    names = distinct_names((r.client_id, r.name, None) for r in rows)
    turn = []
    if number > 0:
        turn.append(Choice("page_before", f"list:{order}:{number - 1}"))
    if number + 1 < pages:
        turn.append(Choice("page_after", f"list:{order}:{number + 1}"))
    other = "name" if order == "need" else "need"
    return (
        *rows_of(*(Choice("client", f"card:{client}", name) for client, name in names.items())),
        *((tuple(turn),) if turn else ()),
        (Choice(f"by_{other}", f"list:{other}:0"), Choice("invite", "invite")),
    )


# --- whom? ------------------------------------------------------------------------------------------------------


def choose_client(d: StaffStep, words: str, what: str) -> None:
    """Continue with the only client the words name; ask if they name several, say so if none."""
    match d.facts.cards:
        case ():
            d.say(sm.NobodyFound(words.strip()[:64]), (Choice("caseload", "list:need:0"),))
        case (only,):
            d.ask(None)
            chosen(d, what, only, "")
        case _:
            which(d, what, "")


def which(d: StaffStep, what: str, words: str) -> None:
    d.ask(ChoosingClient(what, words, tuple(c.client_id for c in d.facts.cards)))
    verb, _, more = what.partition(":")
    rows = d.client_choices({"write": "pick"}.get(verb, verb), more)[:SHOWN_NAMES]
    d.say(sm.WhichClient(tuple(c.name for c in d.facts.cards)[:SHOWN_NAMES]), *rows)


def chosen(d: StaffStep, what: str, card: CardFact, words: str) -> None:
    """what: the verb of a button, and what follows the client in its value."""
    verb, _, more = what.partition(":")
    match verb:
        case "write" if words:
            writing.send(d, card, words)
        case "write":
            writing.ask_words(d, card)
        case "page":
            pages.one(d, card)
        case "export":
            files.export(d, card, more)
        case "picture":
            files.picture(d, card, more)
        case "thread":
            thread(d, str(card.client_id))
        case "past":
            history(d, str(card.client_id))
        case "note":
            note(d, str(card.client_id))
        case _:
            show(d, card)


def client(d: StaffStep, argument: str) -> None:
    """/client NAME"""
    if argument.strip():
        choose_client(d, argument, "card")
    else:
        page(d, "name", 0)


def to_print(d: StaffStep, argument: str) -> None:
    """/page, and /page NAME"""
    if argument.strip():
        choose_client(d, argument, "page")
    else:
        pages.everybody(d)


def export(d: StaffStep, argument: str) -> None:
    """/export NAME, and /export NAME csv"""
    said = argument.casefold().split()
    _of_somebody(d, argument, f"export:{next((form for form in files.FORMS if form in said), '')}")


def picture(d: StaffStep, argument: str) -> None:
    """/picture NAME, and /picture NAME waist"""
    _of_somebody(d, argument, f"picture:{next(iter(sorted(names_in(argument, d.words))), '')}")


def _of_somebody(d: StaffStep, argument: str, what: str) -> None:
    if argument.strip():
        choose_client(d, argument, what)
    else:
        page(d, "name", 0)


def export_pressed(d: StaffStep, value: str) -> None:
    """ "17" asks in which form, "17:csv" sends the file."""
    _pressed(d, value, "export")


def picture_pressed(d: StaffStep, value: str) -> None:
    """ "17" asks of what, "17:waist" sends the picture."""
    _pressed(d, value, "picture")


def _pressed(d: StaffStep, value: str, verb: str) -> None:
    number, _, more = value.partition(":")
    if (card := _of(d, number)) is not None:
        d.ask(None)
        chosen(d, f"{verb}:{more}", card, "")


def page_pressed(d: StaffStep, value: str) -> None:
    """ "17", or nobody for everybody."""
    if not value:
        pages.everybody(d)
    elif (card := _of(d, value)) is not None:
        d.ask(None)
        pages.one(d, card)


# --- the card ---------------------------------------------------------------------------------------------------


def open_card(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        d.ask(None)
        show(d, card)


def show(d: StaffStep, card: CardFact) -> None:
    d.say(card_message(d, card), *_card_choices(card, d.now))


def card_message(d: StaffStep, card: CardFact) -> sm.CardSaid:
    return replace(pages.card_said(d, card), lines=cards.lines(card))


def _card_choices(card: CardFact, now: datetime) -> Rows:
    n = card.client_id
    last = max((f.id for f in card.flags), default=0)
    flags = ((Choice("dealt_with", f"clear:{n}:{last}:{stamp(now)}"),),) if card.flags else ()
    past = ((Choice("history", f"past:{n}"),),) if card.past else ()
    if card.for_coach:
        return ((Choice("write", f"write:{n}"), Choice("thread", f"thread:{n}")), *flags, *past)
    return (
        (Choice("write", f"write:{n}"), Choice("thread", f"thread:{n}")),
        (Choice("plan", f"plan:{n}"), Choice("note", f"note:{n}")),
        (Choice("as_page", f"page:{n}"), Choice("pictures", f"picture:{n}"), Choice("export", f"export:{n}")),
        (Choice("rename", f"name:{n}"),),
        *flags,
        *past,
        (Choice("hand_over", f"hand:{n}"), Choice("end_care", f"end:{n}")),
    )


def thread(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        words = tuple((w.at, w.from_client, w.text) for w in card.thread[-THREAD:])
        d.say(sm.ThreadSaid(card.name, words), *about(card.client_id))


def history(d: StaffStep, value: str) -> None:
    """What was flagged and is over: what followed, who dealt with it and how."""
    if (card := _of(d, value)) is not None:
        d.say(sm.HistorySaid(card.name, card.past, card.units), *about(card.client_id))


def dealt_with(d: StaffStep, value: str) -> None:
    """Ask what was done about the flags that were on the card; any raised or risen again since then stay open. "17" is
    about all there are."""
    number, _, rest = value.partition(":")
    last, _, at = rest.partition(":")
    card = _of(d, number)
    if card is None:
        return
    until = stamped(at)
    meant = tuple(
        f
        for f in card.flags
        if not rest
        or (last.isdecimal() and f.id <= int(last) and (until is None or f.newest < until + timedelta(seconds=1)))
    )
    if not meant:
        show(d, card)
        return
    urgent = any(f.severity == Severity.URGENT for f in meant)
    d.ask(DealingWith(card.client_id, tuple(f.id for f in meant), urgent))
    _ask_done(d, card, meant)


def _ask_done(d: StaffStep, card: CardFact, meant: tuple[FlagFact, ...]) -> None:
    d.say(sm.AskDone(card.name, meant, card.units), *_done_rows(card.client_id))


def dealing_again(d: StaffStep, asking: DealingWith) -> None:
    card = d.card(asking.client_id)
    if card is None:
        d.ask(None)
    elif asking.reason:
        d.say(sm.AskWhyNothing(card.name), (Choice("no_keep", "cancel"),))
    else:
        _ask_done(d, card, tuple(f for f in card.flags if f.id in asking.flag_ids))


def done(d: StaffStep, value: str) -> None:
    """A button for what was done. That nothing was needed is not enough about something urgent: why not?"""
    number, _, what = value.partition(":")
    card, asking = _of(d, number), d.asking
    if card is None:
        return
    if not isinstance(asking, DealingWith) or asking.client_id != card.client_id:
        show(d, card)
    elif what not in USUAL:
        _ask_done(d, card, tuple(f for f in card.flags if f.id in asking.flag_ids))
    elif what == Done.NOTHING and asking.urgent:
        d.ask(replace(asking, reason=True))
        d.say(sm.AskWhyNothing(card.name), (Choice("no_keep", "cancel"),))
    else:
        _close(d, card, asking, Done(what), "")


def done_typed(d: StaffStep, asking: DealingWith, text: str) -> None:
    card = d.card(asking.client_id)
    if card is None:
        d.ask(None)
    else:
        _close(d, card, asking, Done.NOTHING if asking.reason else Done.OWN, " ".join(text.split())[:LONGEST_DONE])


def _close(d: StaffStep, card: CardFact, asking: DealingWith, what: Done, words: str) -> None:
    d.ask(None)
    here = {f.id for f in card.flags}
    ids = tuple(number for number in asking.flag_ids if number in here)
    if ids:
        d.do(ClearFlags(card.client_id, ids, what.value, words))
    d.say(sm.FlagsCleared(card.name, what.value, words), *about(card.client_id))


def _done_rows(client_id: int) -> Rows:
    return (
        *rows_of(*(Choice(f"done_{what.value}", f"done:{client_id}:{what.value}") for what in USUAL)),
        (Choice("no_keep", "cancel"),),
    )


def mark_flag_seen(d: StaffStep, value: str) -> None:
    """The button under an urgent flag: that flag as it was told, and no other of the person."""
    number, _, rest = value.partition(":")
    code, _, at = rest.partition(":")
    if (card := _of(d, number)) is not None:
        until = stamped(at) or d.now
        told = tuple(
            f.id
            for f in card.flags
            if (f.code == code if code else f.severity == Severity.URGENT) and f.newest < until + timedelta(seconds=1)
        )
        if told:
            d.do(MarkSeen(told, until))
        d.say(sm.SeenNoted((card.name,)), *about(card.client_id))


def into_cohort(*, yes: bool) -> Handler:
    """The buttons under the question whether a client may be counted in a cohort: "17:3" is client 17 in cohort 3."""

    def act(d: StaffStep, value: str) -> None:
        number, _, cohort = value.partition(":")
        card = _of(d, number)
        if card is not None and cohort.isdecimal() and len(cohort) < 19:
            d.do(AnswerCohort(card.client_id, int(cohort), yes))
        elif card is not None:
            d.say(KeptAsItWas())

    return act


# --- writing ----------------------------------------------------------------------------------------------------


def write(d: StaffStep, argument: str) -> None:
    """/write NAME words"""
    if not argument.strip():
        d.ask(ChoosingClient("write"))
        names = distinct_names((r.client_id, r.name, None) for r in by_need(d.facts.rows))
        if not names:
            d.ask(None)
            d.say(sm.NoClientsYet(), (Choice("invite", "invite"),))
            return
        some = list(names.items())[:SHOWN_NAMES]
        d.say(sm.AskWhom(), *rows_of(*(Choice("client", f"pick:{client}", name) for client, name in some)))
        return
    _, words = addressed(all_names(d.facts.cards), argument)
    match d.facts.cards:
        case ():
            d.say(sm.NobodyFound(argument.strip()[:64]), (Choice("caseload", "list:need:0"),))
        case (only,):
            chosen(d, "write", only, words)
        case _:
            which(d, "write", words[: writing.LONGEST_WORDS])


def pick(d: StaffStep, value: str) -> None:
    """The client was chosen; words already typed are sent now."""
    card = _of(d, value)
    if card is None:
        return
    words = d.asking.words if isinstance(d.asking, ChoosingClient) and d.asking.what == "write" else ""
    d.ask(None)
    chosen(d, "write", card, words)


def write_to(d: StaffStep, value: str) -> None:
    """A button, either under a client's card or of the digest, which names nobody."""
    if not value:
        write(d, "")
    elif (card := _of(d, value)) is not None:
        chosen(d, "write", card, "")


# --- the note ---------------------------------------------------------------------------------------------------


def note(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        d.ask(NotingOn(card.client_id))
        d.say(sm.AskNote(card.name, card.note), (Choice("no_keep", "cancel"),))


def note_typed(d: StaffStep, asking: NotingOn, text: str) -> None:
    card = d.card(asking.client_id)
    d.ask(None)
    if card is not None:
        d.do(SaveNote(card.client_id, text.strip()[:LONGEST_NOTE]))
        d.say(sm.NoteSaved(card.name), *about(card.client_id))


def sure_of_note(d: StaffStep, client_id: int, words: str) -> None:
    """Ask whether these words are the note, or something else was meant."""
    if (card := d.card(client_id)) is not None:
        d.ask(AskingSure("note", client_id, words=words[:LONGEST_NOTE]))
        d.say(tm.NoteSure(card.name, words[:LONGEST_NOTE]), (Choice("yes", f"sure:note:{client_id}"), NOT_SAVED))


def add_note(d: StaffStep, card: CardFact, words: str) -> None:
    """Add words that were said in one go to the note. Taking them back needs only the lengths: what the note said
    before is kept nowhere else."""
    before = card.note
    new = f"{before}\n{words}"[:LONGEST_NOTE] if before else words[:LONGEST_NOTE]
    if len(new) <= len(before):
        note(d, str(card.client_id))  # no room is left: show it, and ask for another
        return
    d.ask(None)
    d.do(SaveNote(card.client_id, new))
    back = Choice("take_back", f"unnote:{card.client_id}:{len(before)}:{len(new)}")
    d.say(tm.NoteKept(card.name, new), (back, Choice("open_card", f"card:{card.client_id}")))


def take_note_back(d: StaffStep, value: str) -> None:
    """ "17:0:16": the note of 16 characters was empty before; one that has changed since is left alone."""
    number, _, lengths = value.partition(":")
    before, _, after = lengths.partition(":")
    card = _of(d, number)
    if card is None:
        return
    if not before.isdecimal() or after != str(len(card.note)) or int(before) >= len(card.note):
        d.say(tm.NoteTakenBack(card.name, card.note, changed=True), *about(card.client_id))
        return
    old = card.note[: int(before)]
    d.do(SaveNote(card.client_id, old))
    d.say(tm.NoteTakenBack(card.name, old), *about(card.client_id))


def _of(d: StaffStep, value: str) -> CardFact | None:
    """The client of a button; otherwise replies only that they are not in this caseload."""
    return d.card(number_in(value))
