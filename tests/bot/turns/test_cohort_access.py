"""Access control of cohorts: every button, command and partial answer, tried by every role, on the cohorts of two
organisers. And an organiser against their members: whatever they try, no reading, note or message of a member is
revealed.

Built on the matrix of clients; each attempt is rolled back.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, time
from typing import Any

import pytest
from sqlalchemy import Connection, select, true

from bot.store import cohorts as store
from bot.store import invitations, people
from bot.store import schema as t
from bot.store.database import Database
from bot.store.invitations import InvitationKind
from bot.store.people import Role
from core.care import Slot
from core.dialogue.kit.effects import drawn
from core.dialogue.kit.events import Command, Event, Press, Text
from core.dialogue.organiser.commands import BUTTONS
from core.dialogue.staff.cohort_states import SureOfCohort
from core.dialogue.staff.rows import About
from core.dialogue.staff.states import StaffState
from core.watching.cohort import CohortWeek, Counted, Terms
from tests.bot.practice import NOW, key_of
from tests.bot.turns.test_access import ADABEL, BENNET, CHATS, NOBODY, OLU, Subject, practice, sqlite, tried, ways

PAT = 108
ROLES = {**CHATS, "other organiser": PAT}
TERMS = Terms(date(2026, 3, 23), 6, Slot(0, time(18), "Europe/London"), Counted.MINUTES)
VERBS = tuple(button.verb for button in BUTTONS)
OF_A_COHORT = tuple(button.verb for button in BUTTONS if button.about is About.COHORT)
TABLES = (t.cohorts, t.cohort_members, t.cohort_weeks, t.groups, t.invitations)

__all__ = ["sqlite"]  # the fixture


@dataclass(frozen=True)
class Cohort:
    """A cohort that others may try to reach. member: somebody in it."""

    name: str
    organiser: str  # the role that runs it
    id: int
    member: Subject

    @property
    def canaries(self) -> tuple[str, ...]:
        return (self.name, self.member.name)


def cohorts(conn: Connection) -> tuple[tuple[Cohort, Cohort], dict[str, str]]:
    """Olu's cohort with Adabel, Pat's with Bennet, each with a group chat and one published week; and links to both."""
    there = practice(conn)
    pat = people.add(conn, PAT, Role.ORGANISER, "Pat", "en", NOW)
    people.add_organiser(conn, pat, "Pat", NOW)
    found = []
    tokens = {}
    for name, role, chat, member in (
        ("Springtide", "organiser", OLU, there.subjects[0]), ("Harvest", "other organiser", PAT, there.subjects[1]),
    ):  # fmt: skip
        who = people.staff(conn, chat)
        assert who is not None and who.organiser_id is not None
        made = store.add(
            conn, NOW, organiser_id=who.organiser_id, coach_id=None, name=name, terms=TERMS, language="en", next_at=NOW
        )
        store.join(conn, made, member.id, NOW, agreed=True)
        store.publish(conn, made, CohortWeek(0, 6, 5, None, None), NOW)
        store.tie(conn, made, -made, "en", NOW)
        tokens[name] = invitations.make(conn, InvitationKind.GROUP, NOW, cohort_id=made)
        found.append(Cohort(name, role, made, member))
    return (found[0], found[1]), tokens


def ways_to(c: Cohort) -> Iterator[tuple[str, StaffState | None, Event]]:
    """Every way that could lead to a cohort."""
    for verb in VERBS:
        for more in ("", f":{c.member.id}", ":0", ":csv"):
            yield f"button {verb}{':…' if more else ''}", None, Press(NOW, drawn(f"{verb}:{c.id}{more}", 0))
    for what, client in (("end", 0), ("remove", c.member.id)):
        state = StaffState(SureOfCohort(what, c.id, client))
        yield f"yes to {what}", state, Press(NOW, drawn(f"cosure:{what}:{c.id}:{client}", 0))
        yield f"typed yes to {what}", state, Text(NOW, "yes")
    yield "/cohort", None, Command(NOW, "cohort")
    yield "leave", None, Press(NOW, drawn(f"coleave:{c.id}", 0))


def held(conn: Connection) -> list[Any]:
    """Everything stored about cohorts, and everything queued for anybody but the person trying."""
    return [[tuple(row) for row in conn.execute(select(table))] for table in TABLES]


def cell(conn: Connection, role: str, state: StaffState | None, event: Event, c: Cohort) -> str:
    """The result of one attempt: "own", "no", or a hole."""
    before = held(conn)
    point = conn.begin_nested()
    said, _ = tried_and_kept(conn, ROLES[role], state, event, c)
    changed = held(conn) != before
    point.rollback()
    leaks = [x for x in c.canaries if x in str(said)]
    if role == c.organiser or (ROLES[role] == c.member.chat and not changed):
        return "own" if changed or leaks else "-"
    if changed:
        return "HOLE: changed"
    return f"HOLE: told {leaks[0]}" if leaks else "no"


def tried_and_kept(
    conn: Connection, chat: int, state: StaffState | None, event: Event, c: Cohort
) -> tuple[list[str], bool]:
    """Like `tried`, but not rolled back, so that the caller can inspect the changes."""
    from bot.store import codec, conversations, inbox
    from bot.turns import turn
    from tests.bot.turns.test_access import DECIDE, told

    if state is not None:
        conversations.save(conn, {chat: (codec.dumps(state), NOW, key_of(conn, chat))})
    inbox.put(conn, [inbox.NewEvent("try", chat, event)], NOW)
    while turn.work_batch(conn, DECIDE, NOW):
        pass
    return told(conn, chat), True


def matrix(conn: Connection) -> tuple[dict[str, dict[str, str]], list[str]]:
    table: dict[str, dict[str, str]] = {}
    holes = []
    both, _ = cohorts(conn)
    for c in both:
        for name, state, event in ways_to(c):
            for role in ROLES:
                found = cell(conn, role, state, event, c)
                row = table.setdefault(name, {})
                row[role] = "own" if "own" in (found, row.get(role)) else found
                if found.startswith("HOLE"):
                    holes.append(f"{role}: {name} of {c.name}: {found}")
    return table, holes


def test_nobody_reaches_a_cohort_that_is_not_theirs(sqlite: Database, capsys: pytest.CaptureFixture[str]) -> None:
    with sqlite.engine.connect() as conn, conn.begin() as all_of_it:
        table, holes = matrix(conn)
        all_of_it.rollback()
    with capsys.disabled():
        from tests.bot.turns.test_access import shown

        print(shown(table, tuple(ROLES)))
        print(f"{sum(map(len, table.values()))} tries, {len(holes)} holes")
    assert holes == []
    silent = {"coreport", "cosure"}  # have no effect before a cohort is over, or before that question is asked
    for verb in {"cohorts", *OF_A_COHORT} - silent:  # or the matrix would prove nothing
        assert "own" in {table[name]["organiser"] for name in table if name.startswith(f"button {verb}")}, verb
    assert table["yes to end"]["organiser"] == table["typed yes to remove"]["organiser"] == "own"


def test_without_the_organiser_in_its_query_the_matrix_finds_holes(
    sqlite: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = store.mine

    def everybody_s(conn: Connection, organiser_id: int) -> Any:
        every = conn.execute(select(t.organisers.c.id).where(true())).scalars().all()
        return tuple(c for one in every for c in real(conn, one))

    monkeypatch.setattr(store, "mine", everybody_s)
    with sqlite.engine.connect() as conn, conn.begin() as all_of_it:
        _, holes = matrix(conn)
        all_of_it.rollback()
    assert any(h.startswith("other organiser") for h in holes)


def test_a_cohort_of_somebody_else_is_answered_like_one_that_never_was(sqlite: Database) -> None:
    with sqlite.engine.connect() as conn, conn.begin() as all_of_it:
        (spring, _), _ = cohorts(conn)
        for verb in VERBS:
            for more in ("", f":{spring.member.id}"):
                theirs, _ = tried(conn, PAT, None, Press(NOW, drawn(f"{verb}:{spring.id}{more}", 0)), spring.member)
                nobody_s, _ = tried(conn, PAT, None, Press(NOW, drawn(f"{verb}:{NOBODY}{more}", 0)), spring.member)
                assert theirs == nobody_s, verb
        all_of_it.rollback()


@pytest.mark.parametrize("subject", [ADABEL, BENNET], ids=lambda s: s.name)
def test_an_organiser_is_told_no_reading_note_or_word_of_a_member_whatever_they_try(
    sqlite: Database, subject: Subject
) -> None:
    with sqlite.engine.connect() as conn, conn.begin() as all_of_it:
        both, _ = cohorts(conn)
        c = next(x for x in both if x.member.name == subject.name)
        chat = ROLES[c.organiser]
        tries = [(state, event) for _, act in ways() for state, event in [act(c.member)]]
        tries += [(state, event) for _, state, event in ways_to(c)]
        for state, event in tries:
            said, _ = tried(conn, chat, state, event, c.member)
            typed = getattr(event, "argument", "") + getattr(event, "text", "")
            assert not [x for x in c.member.canaries[1:] if x in str(said) and x not in typed], event
        all_of_it.rollback()


def test_a_group_s_link_lets_nobody_in(sqlite: Database) -> None:
    with sqlite.engine.connect() as conn, conn.begin() as all_of_it:
        both, tokens = cohorts(conn)
        before = held(conn)
        for role, chat in ROLES.items():
            said, changed = tried(conn, chat, None, Command(NOW, "start", tokens["Springtide"]), both[0].member)
            forged, _ = tried(conn, chat, None, Command(NOW, "start", "A" * 22), both[0].member)
            assert (said, changed) == (forged, False), role
        assert held(conn) == before
        all_of_it.rollback()
