"""Every command is one row: a half-made one is refused, a whole one does what its row says."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import MISSING, fields, replace
from datetime import date, time, timedelta
from pathlib import Path
from typing import Any

import pytest

from core.care import Slot
from core.dialogue.client.commands import ClientCommand, Stage
from core.dialogue.commands import CLIENT, CLIENT_BUTTONS, GROUP, STAFF, STAFF_BUTTONS, TABLES
from core.dialogue.engines import group, staff
from core.dialogue.kit.commands import (
    Argument,
    Chat,
    CommandRow,
    HalfMade,
    HelpLine,
    NotListed,
    OnLineOf,
    Table,
    Who,
)
from core.dialogue.kit.events import Command, GroupEvent, Press
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, OldButton
from core.dialogue.organiser.groups import GroupCommand, GroupFacts, Tied
from core.dialogue.staff.facts import Caseload, CohortFact, Cohorts, OtherCoaches, TemplateFact, Templates
from core.dialogue.staff.messages import NobodyFound, NotYours
from core.dialogue.staff.rows import About, StaffButton, StaffCommand, by_verb, nothing, templates
from core.dialogue.staff.states import FRESH_STAFF, AskingSure, StaffState
from core.language import Intent
from core.watching.cohort import Counted, Terms
from core.watching.flags import Code, flag
from tests.builders import ADA
from tests.builders import Chat as ClientChat
from tests.core.dialogue.office import LONDON, NOW, Office, card, kept, readings

STAFF_ROWS = tuple(STAFF)
TERMS = Terms(date(2026, 3, 2), 6, Slot(0, time(18), "Europe/London"), Counted.MINUTES)
NEW = replace(ADA, consented=False)
ROOT = Path(__file__).parents[3]


def a_row(**other: Any) -> StaffCommand:
    """A whole command of a coach."""
    usual: dict[str, Any] = {
        "name": "example",
        "who": Who.COACH,
        "words": (),
        "argument": Argument.NONE,
        "needs": nothing,
        "act": lambda d, _: d.say(KeptAsItWas()),
        "menu": "See the week",
        "help": (HelpLine(99, Who.COACH, "/example – the week"),),
    }
    return StaffCommand(**(usual | other))


# --- half-made rows ---------------------------------------------------------------------------------------------


@pytest.mark.parametrize("left_out", ["name", "who", "words", "argument", "needs", "act", "menu", "help"])
def test_a_row_without_one_of_its_fields_is_refused(left_out: str) -> None:
    row = a_row()
    given = {f.name: getattr(row, f.name) for f in fields(row) if f.init and f.name != left_out}
    with pytest.raises(TypeError, match=left_out):
        StaffCommand(**given)


@pytest.mark.parametrize("kind", [CommandRow, ClientCommand, StaffCommand, GroupCommand, StaffButton])
def test_nothing_about_a_row_is_left_to_a_default(kind: type) -> None:
    assert [f.name for f in fields(kind) if f.init and (f.default, f.default_factory) != (MISSING, MISSING)] == []


@pytest.mark.parametrize(
    ("other", "why"),
    [
        ({"name": "Week"}, "no name that can be typed"),
        ({"name": ""}, "no name that can be typed"),
        ({"who": Who.CLIENT}, "nobody who is client"),
        ({"act": None}, "does nothing"),
        ({"menu": " "}, "1 to 256 characters"),
        ({"menu": "x" * 257}, "1 to 256 characters"),
        ({"menu": NotListed("")}, "menu without a reason"),
        ({"help": NotListed("")}, "/help without a reason"),
        ({"help": ()}, "0 lines of /help for a coach"),
        ({"help": (HelpLine(99, Who.STAFF, "/example – the week"),)}, "1 lines of /help for a organiser"),
        ({"who": Who.STAFF}, "0 lines of /help for a organiser"),
        ({"help": (HelpLine(99, Who.COACH, "/day – the week"),)}, "begins otherwise"),
        ({"words": (Intent.PROGRESS,), "needs": templates}, "nothing but the caseload is loaded"),
        ({"argument": Argument.SPOKEN}, "not interpreted as text"),
    ],
)
def test_a_row_that_says_too_little_is_refused(other: dict[str, Any], why: str) -> None:
    with pytest.raises(HalfMade, match=why):
        a_row(**other)


@pytest.mark.parametrize(
    ("other", "why"),
    [
        ({"name": "client", "help": (HelpLine(99, Who.COACH, "/client – again"),)}, "two commands of this name"),
        ({"words": (Intent.HELP,)}, "means /example already"),
        ({"help": (HelpLine(10, Who.COACH, "/example – the week"),)}, "two lines of /help for a coach in one place"),
        ({"help": OnLineOf("digest")}, "the line of /digest in /help does not name it"),
        ({"help": OnLineOf("nowhere")}, "the line of /nowhere in /help does not name it"),
    ],
)
def test_a_row_that_contradicts_another_is_refused(other: dict[str, Any], why: str) -> None:
    with pytest.raises(HalfMade, match=why):
        Table(Chat.STAFF, (*STAFF_ROWS, a_row(**other)))


def test_a_row_stands_in_the_table_of_its_own_kind_of_chat() -> None:
    with pytest.raises(HalfMade, match="another kind of chat"):
        Table(Chat.STAFF, CLIENT)


def test_a_whole_row_is_taken_with_its_menu_and_help() -> None:
    table = Table(Chat.STAFF, (*STAFF_ROWS, a_row()))
    assert ("example", "See the week") in table.menu(Who.COACH) and "/example – the week" in table.help(Who.COACH)
    assert ("example", "See the week") not in table.menu(Who.ORGANISER)


@pytest.mark.parametrize("about", [About.CLIENT, About.COHORT])
def test_a_button_whose_client_or_cohort_is_not_loaded_is_refused(about: About) -> None:
    with pytest.raises(HalfMade, match="not loaded"):
        StaffButton(verb="example", who=Who.COACH, about=about, needs=nothing, act=lambda d, _: None, decides=1)


def test_two_buttons_of_one_verb_are_refused() -> None:
    with pytest.raises(HalfMade, match="two buttons have this verb"):
        by_verb([*STAFF_BUTTONS.values(), STAFF_BUTTONS["card"]])


# --- what the rows promise --------------------------------------------------------------------------------------


def test_every_kind_of_chat_has_its_table() -> None:
    assert set(TABLES) == set(Chat)
    assert all(len(table.rows) >= 2 for table in TABLES.values())


def rowan(state: StaffState = FRESH_STAFF, **facts: Any) -> Office:
    """A coach who is also an organiser, with some data of every kind, so that anything not loaded is noticed."""
    often = kept(3, flag(Code.WANTS_COACH, NOW - timedelta(days=1)))
    ada = card(1, "Ada", history=readings("weight", "82", "83"), flags=(often,), answered=date(2026, 3, 30))
    office = Office(ada, card(2, "Ben"), organiser_id=4, **facts)
    office.templates = (TemplateFact("Mine", ada.plan),)
    office.cohorts = (CohortFact(3, "Spring", TERMS, LONDON),)
    office.state = state
    return office


def all_loaded(state: StaffState = FRESH_STAFF) -> Office:
    """The same chat with every list loaded, needed or not."""
    office = rowan(state)
    office.also = (Caseload(), Templates(), OtherCoaches(), Cohorts())
    return office


@pytest.mark.parametrize("name", [row.name for row in STAFF])
@pytest.mark.parametrize("argument", ["", "Ada", "Ada hello", "pdf"])
def test_what_a_command_of_staff_needs_is_loaded(name: str, argument: str) -> None:
    """Its answer from what its row loads equals the answer from everything."""
    event = Command(NOW, name, argument)
    told, everything = rowan(), all_loaded()
    assert (told.gets(event).effects, told.state) == (everything.gets(event).effects, everything.state)


ASKING = {"forget": StaffState(AskingSure("forget")), "sure": StaffState(AskingSure("hand_over", 1, 8))}
VALUES = {"hand": ("1", "1:8"), "sure": ("hand_over:1",), "list": ("need:0", "name:0"), "sheet": ("", "pdf")}


def presses() -> Iterator[tuple[str, str]]:
    for verb in STAFF_BUTTONS:
        for value in VALUES.get(verb, ("1", "0", "")):
            yield verb, value


@pytest.mark.parametrize(("verb", "value"), [*presses()])
def test_what_a_button_of_staff_needs_is_loaded(verb: str, value: str) -> None:
    event = Press(NOW, f"{verb}:{value}")
    told, everything = rowan(ASKING.get(verb, FRESH_STAFF)), all_loaded(ASKING.get(verb, FRESH_STAFF))
    assert (told.gets(event).effects, told.state) == (everything.gets(event).effects, everything.state)


@pytest.mark.parametrize("name", [row.name for row in STAFF if row.who is Who.COACH])
def test_a_client_whom_a_coach_s_command_names_is_found(name: str) -> None:
    assert not any(isinstance(m, NobodyFound | NotYours) for m in rowan().commands(name, "Ada").said)


@pytest.mark.parametrize("row", STAFF.rows, ids=lambda row: row.name)
def test_a_command_of_staff_is_answered_and_only_for_whom_it_is(row: StaffCommand) -> None:
    assert not any(isinstance(m, NotForThisRole) for m in rowan().commands(row.name).said)
    organiser = Office(coach_id=None, organiser_id=4).commands(row.name)
    assert organiser.effects
    assert any(isinstance(m, NotForThisRole) for m in organiser.said) == (not row.who.includes(Who.ORGANISER))


@pytest.mark.parametrize("row", [row for row in STAFF if row.argument is not Argument.LINK], ids=lambda row: row.name)
def test_the_name_of_a_command_of_staff_alone_is_the_command(row: StaffCommand) -> None:
    assert rowan().says(row.name).effects == rowan().commands(row.name).effects


@pytest.mark.parametrize("button", [*STAFF_BUTTONS.values()], ids=lambda button: button.verb)
def test_a_button_of_staff_is_answered_and_only_for_whom_it_is(button: StaffButton) -> None:
    assert not any(isinstance(m, OldButton | NotForThisRole) for m in rowan().presses(f"{button.verb}:1").said)
    organiser = Office(coach_id=None, organiser_id=4).presses(f"{button.verb}:1")
    assert any(isinstance(m, NotForThisRole) for m in organiser.said) == (not button.who.includes(Who.ORGANISER))


@pytest.mark.parametrize("row", CLIENT.rows, ids=lambda row: row.name)
def test_a_command_of_a_client_is_answered(row: ClientCommand) -> None:
    chat = ClientChat().commands(row.name)
    assert chat.said and not any(isinstance(m, NotForThisRole) for m in chat.said)


@pytest.mark.parametrize("row", CLIENT.rows, ids=lambda row: row.name)
def test_before_consent_a_client_is_asked_for_it_whatever_the_command(row: ClientCommand) -> None:
    kinds = ClientChat(NEW).commands(row.name).kinds
    assert kinds == ClientChat(NEW).commands("start").kinds, row.stage


def test_only_what_must_work_at_once_works_before_the_first_questions_are_answered() -> None:
    assert {row.name: row.stage for row in CLIENT if row.stage is not Stage.ENROLLED} == {
        "start": Stage.ARRIVED,
        "forget": Stage.CONSENTED,
    }


@pytest.mark.parametrize("row", GROUP.rows, ids=lambda row: row.name)
def test_a_command_of_a_group_is_the_organiser_s(row: GroupCommand) -> None:
    what = row.name.partition(" ")[2]
    free = (Tied(3, "Spring", 700),)
    facts = GroupFacts(tied=free[0] if what == "unbind" else None, free=free, knows="staff")
    assert group.step(GroupEvent(NOW, what, 700), facts)
    assert not group.step(GroupEvent(NOW, what, 800), replace(facts, free=(), knows=""))
    assert group.needs(GroupEvent(NOW, what, 700)) == row.needs


def test_no_command_is_a_button_s_verb_that_does_something_else_for_somebody_else() -> None:
    """A press never does what the same word, typed, refuses."""
    for row in STAFF:
        if (button := STAFF_BUTTONS.get(row.name)) is not None:
            assert button.who is row.who, row.name


ROOMS = {"client": {*CLIENT_BUTTONS, "consent", "e"}, "staff": set(STAFF_BUTTONS), "organiser": set(STAFF_BUTTONS)}


@pytest.mark.parametrize("room", ROOMS)
def test_every_button_that_is_offered_has_a_row(room: str) -> None:
    """Consent and the first questions handle their own buttons, before any row is looked up."""
    offered = {verb for file in sorted((ROOT / "core" / "dialogue" / room).glob("*.py")) for verb in verbs_in(file)}
    assert len(offered) > 15
    assert offered - ROOMS[room] == set()


def verbs_in(file: Path) -> Iterator[str]:
    """The part before the colon in the data of every `Choice` created in a file."""
    for node in ast.walk(ast.parse(file.read_text("utf-8"))):
        if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "Choice"):
            continue
        data = node.args[1]
        if isinstance(data, ast.Call):  # cut to the length of a button
            data = data.args[0]
        first = data.values[0] if isinstance(data, ast.JoinedStr) else data
        if isinstance(first, ast.Constant):
            yield str(first.value).partition(":")[0]


def test_nothing_is_loaded_for_a_command_nobody_has() -> None:
    assert staff.needs(FRESH_STAFF, Command(NOW, "abracadabra", "Ada"), "en") == ()
    assert staff.needs(FRESH_STAFF, Press(NOW, "abracadabra:1"), "en") == ()
