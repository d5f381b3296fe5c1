"""Access control: every command, button and link, tried by every role, on one client of each of two coaches.

Each attempt runs in a transaction that is rolled back, on the same practice. A hole is: anything of the client's (name,
number, note, message) in what the role is told; any change to the client, or message to them; or a reply that
distinguishes another coach's client from nobody at all. The table of all attempts is printed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import time, timedelta
from decimal import Decimal
from typing import Any

import pytest
from sqlalchemy import Connection, bindparam, or_, select, true

from bot.store import (
    caseload,
    clients,
    coach_thread,
    codec,
    cohorts,
    conversations,
    deputies,
    flags,
    inbox,
    invitations,
    people,
    readings,
)
from bot.store import staff as staff_store
from bot.store.database import Database
from bot.store.inbox import NewEvent
from bot.store.invitations import InvitationKind
from bot.store.people import Role
from bot.store.schema import clients as clients_table
from bot.store.schema import cohort_members, goals, notes, outbox, slots
from bot.store.schema import flags as flags_table
from bot.store.schema import inbox as inbox_table
from bot.store.schema import readings as readings_table
from bot.store.schema import words as words_table
from bot.turns import turn
from core.care import Plan, Slot, Status
from core.dialogue.commands import CLIENT, CLIENT_BUTTONS, REQUESTED, STAFF, STAFF_BUTTONS
from core.dialogue.kit.effects import drawn
from core.dialogue.kit.events import Command, Event, Press, Text
from core.dialogue.staff import effects as fx
from core.dialogue.staff.facts import DeputyFact
from core.dialogue.staff.rows import About
from core.dialogue.staff.states import (
    AskingSure,
    ChangingSlot,
    ChoosingClient,
    ConfirmingWords,
    DealingWith,
    NamingClient,
    NamingClinician,
    NamingTemplate,
    NotingOn,
    StaffState,
    Ticking,
    Undo,
    WritingTo,
)
from core.language.lexicon import Request
from core.reading import Reading
from core.watching.cohort import Counted, Terms
from core.watching.flags import Code, flag
from tests.bot.office import steps
from tests.bot.practice import NOW, add_client, add_coach, key_of

ADA, BEN, DORA, ROWAN, SAM, KIM, OLU, ZOE = range(100, 108)
CHATS = {
    "coach": ROWAN,
    "other coach": SAM,
    "former coach": KIM,
    "organiser": OLU,
    "client": ADA,
    "other client": BEN,
    "removed": DORA,
    "stranger": ZOE,
}
NOBODY = 999_999


@dataclass(frozen=True)
class Subject:
    """A client that others may try to reach. canaries: what nobody else may be told."""

    name: str
    chat: int
    weight: str
    may: frozenset[str]
    id: int = 0

    @property
    def canaries(self) -> tuple[str, ...]:
        return (self.name, self.weight, f"note on {self.name}", f"word of {self.name}")


ADABEL = Subject("Adabel", ADA, "83.7", frozenset({"coach", "client"}))
BENNET = Subject("Bennet", BEN, "91.3", frozenset({"other coach", "other client"}))


@dataclass(frozen=True)
class Practice:
    """The contents of a database before each attempt."""

    subjects: tuple[Subject, Subject]
    tokens: Mapping[str, str]
    removed: int


def practice(conn: Connection) -> Practice:
    """Rowan coaches Adabel, whom Kim handed over; Sam coaches Bennet; Dora's care has ended."""
    rowan, sam, kim = (add_coach(conn, chat, name) for chat, name in ((ROWAN, "Rowan"), (SAM, "Sam"), (KIM, "Kim")))
    olu = people.add(conn, OLU, Role.ORGANISER, "Olu", "en", NOW)
    people.add_organiser(conn, olu, "Olu", NOW)
    found = []
    for subject, coach, first in ((ADABEL, rowan, kim), (BENNET, sam, sam)):
        number = add_client(conn, first, subject.chat, subject.name)
        reading = Reading("weight", Decimal(subject.weight), NOW - timedelta(days=2), key="k")
        readings.put(conn, [readings.row(number, "k", reading, NOW)])
        flags.raise_(conn, [(number, flag(Code.WANTS_COACH, NOW)), (number, flag(Code.PULSE_FAST, NOW))], NOW)
        coach_thread.put(conn, [(number, first, coach_thread.Direction.TO_COACH, f"word of {subject.name}")], NOW)
        one = caseload.client(conn, first, number)
        assert one is not None
        coach_thread.note(conn, one, first, f"note on {subject.name}", NOW)
        if first != coach:
            staff_store.hand_over(conn, one, first, coach)
        found.append(Subject(subject.name, subject.chat, subject.weight, subject.may, number))
    terms = Terms(NOW.date(), 4, Slot(0, time(18), "UTC"), Counted.MINUTES)  # cohort 1: their coaches were asked
    asked = cohorts.add(
        conn, NOW, organiser_id=None, coach_id=None, name="Asked", terms=terms, language="en", next_at=None
    )
    for subject in found:
        cohorts.join(conn, asked, subject.id, NOW, agreed=False)
    removed = add_client(conn, rowan, DORA, "Dora", status=Status.LEFT.value, left_at=NOW)

    def token(kind: InvitationKind, at: Any = NOW) -> str:
        return invitations.make(conn, kind, at, by_name="Rowan", for_name="Emil", coach_id=rowan)

    late = token(InvitationKind.CLIENT, NOW - timedelta(days=20))
    used, taken = token(InvitationKind.CLIENT), token(InvitationKind.CLIENT)
    invitations.use(conn, invitations.find(conn, [used], NOW)[used], NOW)
    invitations.revoke(conn, invitations.find(conn, [taken], NOW)[taken].id, rowan, NOW)
    tokens = {"new": token(InvitationKind.CLIENT), "used": used, "late": late, "taken back": taken, "forged": "A" * 22}
    for subject in found:  # everybody was told something about each of them, some time ago
        for chat in CHATS.values():
            sent = {
                "chat_id": chat, "kind": "message", "about": subject.id, "status": "sent",
                "platform_message_id": f"about {subject.id}", "due_at": NOW, "ready_at": NOW, "created_at": NOW,
            }  # fmt: skip
            conn.execute(outbox.insert(), sent)
    return Practice((found[0], found[1]), tokens, removed)


# --- every way in -----------------------------------------------------------------------------------------------

ENGLISH: dict[Request, str] = {
    Request.EXPORT: "csv", Request.PAGE: "print", Request.PICTURE: "picture of", Request.PLAN: "plan of",
    Request.NOTE: "note on", Request.HISTORY: "history of", Request.CARD: "show me", Request.WRITE: "tell",
    Request.THREAD: "messages of", Request.STAND_IN: "who stands in for", Request.INVITE: "invite somebody like",
    Request.REPORT: "practice report with", Request.NEEDS_ME: "who needs me like", Request.CASELOAD: "my clients and",
    Request.WEEK: "this week with",
    Request.CORRECT: "delete the last reading of", Request.ADD: "add blood pressure for",
    Request.DROP: "no more waist for",
    Request.PRIVATE: "hide the numbers of", Request.DAY: "change to Friday the day of", Request.PAUSE: "pause",
    Request.HAND_OVER: "transfer", Request.BASELINE: "new baseline for", Request.RENAME: "rename",
    Request.END: "delete", Request.DONE: "done with", Request.LAST: "last weight of", Request.ABOUT: "why is it about",
    Request.DONE_THEM: "rang her about", Request.DIGEST_DAY: "digest on Friday with", Request.QUIET: "mute",
}  # fmt: skip
Act = Callable[[Subject], tuple[StaffState | None, Event]]
COMMANDS = tuple(dict.fromkeys(row.name for table in (STAFF, CLIENT) for row in table))
VERBS = tuple(dict.fromkeys((*STAFF_BUTTONS, *CLIENT_BUTTONS, "consent", "e")))
OF_A_CLIENT = {verb for verb, button in STAFF_BUTTONS.items() if button.about is About.CLIENT}
# A button's data beside the client, if it acts without further questions.
VALUES = {
    "clear": ":99999", "interval": ":35", "slotday": ":3", "slothour": ":08:00", "directed": ":on", "loss": ":on",
    "numbers": ":coach_only", "bp": ":esc", "cautions": ":falls", "measures": ":hip", "hand": ":{to}",
    "coyes": ":1", "cono": ":1", "export": ":csv", "picture": ":weight",
}  # fmt: skip


UNDO = Command(NOW, "undo")


def undoable(subject: Subject, did: object, back: object) -> StaffState:
    return StaffState(undo=Undo(did, back, NOW))


def ways() -> Iterator[tuple[str, Act]]:
    """Every command, button and open question that could lead to a client, by name."""
    for name in COMMANDS:
        yield f"/{name} NAME", lambda s, n=name: (None, Command(NOW, n, s.name))
    yield "/write NAME words", lambda s: (None, Command(NOW, "write", f"{s.name} hello"))
    for asked in (
        "export NAME",
        "NAME as csv",
        "NAME's weight",
        "how is NAME",
        "page of NAME",
        "what did NAME say",
        "NAME's plan",
    ):
        yield f"typed: {asked}", lambda s, a=asked: (None, Text(NOW, a.replace("NAME", s.name)))
    for request in REQUESTED:
        yield f"typed: {request}", lambda s, r=request: (None, Text(NOW, f"{ENGLISH[r]} {s.name}"))
    yield "typed: NAME", lambda s: (None, Text(NOW, s.name))
    yield "typed: write NAME words", lambda s: (None, Text(NOW, f"write {s.name} hello"))
    for verb in VERBS:
        more = VALUES.get(verb, "").format(to=1)
        yield f"button {verb}", lambda s, v=verb, m=more: (None, Press(NOW, drawn(f"{v}:{s.id}{m}", 0)))
    for verb, asking in {
        "baseline": AskingSure("baseline"), "end": AskingSure("end"), "hand_over": AskingSure("hand_over", to=2),
        "directed": AskingSure("directed", words="Dr Marsh"),
    }.items():  # fmt: skip
        yield (
            f"yes to {verb}",
            lambda s, v=verb, a=asking: (
                StaffState(AskingSure(a.what, s.id, a.to, a.words)),
                Press(NOW, drawn(f"sure:{v}:{s.id}", 0)),
            ),
        )
    yield "words while writing", lambda s: (StaffState(WritingTo(s.id)), Text(NOW, "hello"))
    yield (
        "words that name somebody else",
        lambda s: (StaffState(WritingTo(s.id)), Text(NOW, "Adabel and Bennet, hello")),
    )
    yield "yes, to them", lambda s: (StaffState(ConfirmingWords(s.id, "hello")), Text(NOW, "yes"))
    yield (
        "the other one who was named",
        lambda s: (StaffState(ConfirmingWords(NOBODY, "hello", (s.id,))), Press(NOW, drawn(f"sendto:{s.id}", 0))),
    )
    yield "anything while it is asked to whom", lambda s: (StaffState(ConfirmingWords(s.id, "hello")), Text(NOW, "hm"))
    yield "a reply to a message about them", lambda s: (None, Text(NOW, "hello", reply_to=f"about {s.id}"))
    yield "any text while writing", lambda s: (StaffState(WritingTo(s.id)), Command(NOW, "settings"))
    yield "/undo of words", lambda s: (undoable(s, fx.WriteTo(s.id, "", "m"), fx.TakeBack(s.id, "m", NOW)), UNDO)
    yield (
        "/undo of what was dealt with",
        lambda s: (
            undoable(s, fx.ClearFlags(s.id, (1, 2, 3, 4), "rang"), fx.ReopenFlags(s.id, (1, 2, 3, 4))),
            UNDO,
        ),
    )
    yield (
        "/undo of a change",
        lambda s: (
            undoable(s, fx.ChangePlan(s.id, "slot"), fx.ChangePlan(s.id, "interval", plan=Plan(retest_days=42))),
            UNDO,
        ),
    )
    yield (
        "/undo of what was seen",
        lambda s: (
            undoable(s, fx.MarkSeen((1, 2, 3, 4), NOW), fx.MarkUnseen((1, 2, 3, 4))),
            UNDO,
        ),
    )
    yield "words while noting", lambda s: (StaffState(NotingOn(s.id)), Text(NOW, "hello"))
    yield "a name while naming", lambda s: (StaffState(NamingClient(s.id)), Text(NOW, "Knee"))
    yield "a line while dealing", lambda s: (StaffState(DealingWith(s.id, (1, 2, 3, 4), False)), Text(NOW, "rang them"))
    yield "a day while changing the slot", lambda s: (StaffState(ChangingSlot(s.id)), Text(NOW, "Friday 9:00"))
    yield "who asked for the weighing", lambda s: (StaffState(NamingClinician(s.id)), Text(NOW, "Dr Marsh"))
    yield "a name for a template", lambda s: (StaffState(NamingTemplate(s.id)), Text(NOW, "Mine"))
    yield (
        "words for whoever is chosen",
        lambda s: (StaffState(ChoosingClient("write", "hello")), Press(NOW, drawn(f"pick:{s.id}", 0))),
    )
    yield (
        "ticks made before",
        lambda s: (StaffState(Ticking("measures", s.id, ("hip",))), Press(NOW, drawn(f"measures:{s.id}:done", 0))),
    )


# --- one try ----------------------------------------------------------------------------------------------------


def about(conn: Connection, subject: Subject) -> list[Any]:
    """Everything stored about a client, and everything queued for them."""
    held: list[Any] = list(conn.execute(select(clients_table).where(clients_table.c.id == subject.id)))
    for table in (flags_table, notes, words_table, readings_table, goals, slots, cohort_members):
        held += conn.execute(select(table).where(table.c.client_id == subject.id))
    held += conn.execute(select(outbox.c.message).where(outbox.c.chat_id == subject.chat))
    held += conn.execute(select(inbox_table.c.key).where(inbox_table.c.chat_id == subject.chat))
    return [tuple(row) for row in held]


def told(conn: Connection, chat: int) -> list[str]:
    """Everything sent to a chat, with its buttons: all texts are rendered from this."""
    rows = conn.execute(select(outbox).where(outbox.c.chat_id == chat).order_by(outbox.c.id))
    return [f"{row.message} {row.choices}" for row in rows]


DECIDE = steps()


def tried(
    conn: Connection, chat: int, state: StaffState | None, event: Event, subject: Subject
) -> tuple[list[Any], bool]:
    """Let an event happen, and roll it back; return what its sender was told, and whether anything about the client
    changed."""
    before = about(conn, subject)
    point = conn.begin_nested()
    if state is not None:
        conversations.save(conn, {chat: (codec.dumps(state), NOW, key_of(conn, chat))})
    inbox.put(conn, [NewEvent("try", chat, event)], NOW)
    while turn.work_batch(conn, DECIDE, NOW):
        pass
    said, changed = told(conn, chat), about(conn, subject) != before
    if chat == subject.chat:
        changed = False  # people may change their own data
    point.rollback()
    return said, changed


def hole(conn: Connection, role: str, act: Act, subject: Subject) -> str:
    """What is wrong with one attempt, "" if nothing; for authorised roles, whether it had any effect."""
    state, event = act(subject)
    said, changed = tried(conn, CHATS[role], state, event, subject)
    typed = event.argument if isinstance(event, Command) else event.text if isinstance(event, Text) else ""
    leaks = [c for c in subject.canaries if c in str(said) and c not in typed]  # a typed name may be repeated
    if role in subject.may:
        return "yes" if leaks or changed else "-"
    if changed:
        return "HOLE: changed"
    if leaks:
        return f"HOLE: told {leaks[0]}"
    nobody = Subject(subject.name, 0, "", frozenset(), NOBODY)
    if isinstance(event, Press) and event.data.partition(":")[0] in OF_A_CLIENT:
        like_nobody, _ = tried(conn, CHATS[role], *act(nobody), subject)
        if like_nobody != said:
            return "HOLE: told apart from nobody"
    return "no"


def matrix(database: Database, roles: tuple[str, ...]) -> tuple[dict[str, dict[str, str]], list[str]]:
    """Every way in, by every role, to both clients: a table of cells, and descriptions of the holes."""
    table: dict[str, dict[str, str]] = {}
    holes = []
    with database.engine.connect() as conn, conn.begin() as all_of_it:
        there = practice(conn)
        for name, act in ways():
            for role in roles:
                cells = [hole(conn, role, act, subject) for subject in there.subjects]
                table.setdefault(name, {})[role] = next((c for c in cells if c.startswith("HOLE")), "") or (
                    "own" if "yes" in cells else "no" if "no" in cells else "-"
                )
                holes += [f"{role}: {name}: {c}" for c in cells if c.startswith("HOLE")]
        for link, token in there.tokens.items():
            for role in roles:
                cells = [_opened(conn, role, token, subject) for subject in there.subjects]
                table.setdefault(f"link: {link}", {})[role] = next((c for c in cells if c != "no"), "no")
                holes += [f"{role}: link {link}: {c}" for c in cells if c.startswith("HOLE")]
        all_of_it.rollback()
    return table, holes


def _opened(conn: Connection, role: str, token: str, subject: Subject) -> str:
    said, changed = tried(conn, CHATS[role], None, Command(NOW, "start", token), subject)
    if role in subject.may:
        return "no"
    leaks = [c for c in subject.canaries if c in str(said)]
    return f"HOLE: told {leaks[0]}" if leaks else "HOLE: changed" if changed else "no"


def shown(table: Mapping[str, Mapping[str, str]], roles: tuple[str, ...]) -> str:
    width = max(len(name) for name in table) + 2
    head = "".ljust(width) + "".join(role.ljust(14) for role in roles)
    lines = [name.ljust(width) + "".join(cells[role][:13].ljust(14) for role in roles) for name, cells in table.items()]
    return "\n".join(("", head, *lines))


# --- the tests --------------------------------------------------------------------------------------------------


@pytest.fixture
def sqlite(tmp_path: Any, sqlite_template: bytes) -> Iterator[Database]:
    path = tmp_path / "samehour.db"
    path.write_bytes(sqlite_template)
    database = Database(f"sqlite:///{path}")
    yield database
    database.close()


def test_nobody_reaches_a_client_who_is_not_theirs(sqlite: Database, capsys: pytest.CaptureFixture[str]) -> None:
    roles = tuple(CHATS)
    table, holes = matrix(sqlite, roles)
    with capsys.disabled():
        print(shown(table, roles))
        print(f"{sum(len(cells) for cells in table.values())} tries on two clients each, {len(holes)} holes")
    assert holes == []


def test_the_matrix_tries_every_command_and_button_there_is() -> None:
    tried_ways = {name for name, _ in ways()}
    assert {f"/{row.name} NAME" for table in (STAFF, CLIENT) for row in table} <= tried_ways
    assert {f"button {verb}" for verb in (*STAFF_BUTTONS, *CLIENT_BUTTONS)} <= tried_ways


def test_the_matrix_is_not_empty_where_it_should_be_full(sqlite: Database) -> None:
    """Every way in works for the client's own coach; otherwise the matrix would prove nothing."""
    table, _ = matrix(sqlite, ("coach",))
    silent = {"slotday", "sure"}  # one asks for the time and names nobody; the other fits only an open question
    assert {v for v in OF_A_CLIENT - silent if table[f"button {v}"]["coach"] != "own"} == set()
    assert table["yes to end"]["coach"] == table["words while writing"]["coach"] == "own"


# What a deputy may: read the card, write, answer, and deal with what is flagged. Plan, note, handing over, ending: no.
IN_PLACE = {
    *(f"button {verb}" for verb in ("card", "thread", "past", "saw", "clear", "done", "write", "pick")),
    "button sendto", "button unsend",
    "/undo of words", "/undo of what was dealt with",
    "words while writing", "yes, to them", "the other one who was named", "a reply to a message about them",
    "anything while it is asked to whom", "any text while writing", "words for whoever is chosen",
    "a line while dealing",
}  # fmt: skip


def reached_by_deputy(database: Database, deputy: DeputyFact, *, passed_on: bool) -> set[str]:
    """The ways in that Sam has to Adabel, whose coach Sam stands in for."""
    with database.engine.connect() as conn, conn.begin() as all_of_it:
        there = practice(conn)
        deputies.put(conn, 1, deputy)
        if passed_on:
            conn.execute(flags_table.update().where(flags_table.c.code == "pulse_fast").values(escalated_at=NOW))
        found = {name for name, act in ways() if hole(conn, "other coach", act, there.subjects[0]).startswith("HOLE")}
        all_of_it.rollback()
    return found


ALWAYS = DeputyFact(2, "Sam")
AWAY = DeputyFact(2, "Sam", NOW.date(), NOW.date())


def test_a_deputy_reaches_a_client_whose_alarm_was_passed_on_and_only_to_do_what_cannot_wait(sqlite: Database) -> None:
    assert reached_by_deputy(sqlite, ALWAYS, passed_on=True) == IN_PLACE


def test_a_deputy_reaches_nobody_whose_alarm_was_not_passed_on(sqlite: Database) -> None:
    assert reached_by_deputy(sqlite, ALWAYS, passed_on=False) == set()


def test_a_deputy_reaches_the_caseload_while_its_coach_is_away_and_not_before_or_after(sqlite: Database) -> None:
    assert reached_by_deputy(sqlite, AWAY, passed_on=False) == IN_PLACE
    for days in (-1, 1):
        other = NOW.date() + timedelta(days=days)
        assert reached_by_deputy(sqlite, replace(AWAY, begins=other, ends=other), passed_on=False) == set()


@pytest.mark.parametrize("query", ["one", "all"])
def test_without_the_coach_in_the_caseloads_query_the_matrix_finds_holes(
    sqlite: Database, monkeypatch: pytest.MonkeyPatch, query: str
) -> None:
    anybody = or_(clients_table.c.coach_id == bindparam("coach"), true())
    if query == "one":
        monkeypatch.setattr(caseload, "_ONE", clients.ALL.where(clients_table.c.id == bindparam("client"), anybody))
    else:
        monkeypatch.setattr(caseload, "_ALL", clients.ALL.where(anybody).order_by(clients_table.c.name))
    _, holes = matrix(sqlite, ("other coach", "former coach"))
    assert any(h.startswith("other coach") for h in holes) and any(h.startswith("former coach") for h in holes)
    assert len(holes) > 10


def test_whoever_opens_a_link_that_is_no_longer_good_hears_the_same_as_for_one_that_never_was(sqlite: Database) -> None:
    with sqlite.engine.connect() as conn, conn.begin() as all_of_it:
        there = practice(conn)
        for role, chat in CHATS.items():
            answers = {
                link: tried(conn, chat, None, Command(NOW, "start", there.tokens[link]), there.subjects[0])[0]
                for link in ("used", "late", "taken back", "forged")
            }
            assert len({str(answer) for answer in answers.values()}) == 1, (role, answers)
        all_of_it.rollback()
