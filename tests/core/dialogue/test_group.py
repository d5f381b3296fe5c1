"""A group chat: which numbers are meant for us, who may link a group, and silence about everything else."""

from __future__ import annotations

import pytest

from core.dialogue.engines import group
from core.dialogue.group import messages as cm
from core.dialogue.kit.events import GroupEvent
from core.dialogue.organiser import messages as om
from core.dialogue.organiser.groups import GroupFacts, Move, Privately, Tie, Tied, Untie, UseLink
from core.language import LANGUAGES
from tests.builders import MONDAY

OLGA, ADA = 700, 100
SPRING, AUTUMN, OTHERS = Tied(3, "Spring", OLGA), Tied(4, "Autumn", OLGA), Tied(9, "Theirs", 800)


def event(what: str, by: int = OLGA, **more: object) -> GroupEvent:
    return GroupEvent(MONDAY, what, by, **more)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("82.4", "en"), ("82,4", "de"), ("7", "en"), (" 94! ", "en"), ("82.4 kg", "en"), ("12 st 4", "en"),
        ("my weight is 82.4", "en"), ("128/82", "en"), ("waist 94", "en"), ("energy 7", "en"), ("pulse 64", "en"),
        ("eighty two kilos", "en"), ("Gewicht 82,4 kg", "de"), ("peso 82,4 kg", "es"), ("tour de taille 94 cm", "fr"),
        ("waga 82,4 kg", "pl"), ("٨٢٫٤", "ar"),
    ],
)  # fmt: skip
def test_this_looks_like_a_reading(text: str, language: str) -> None:
    assert group.looks_like_a_reading(text, LANGUAGES[language])


@pytest.mark.parametrize(
    "text",
    [
        "", "hello", "see you at 7", "meet at 10:30?", "tomorrow at 18:00", "5 km in the park", "room 12, 2nd floor",
        "well done all 5 of you", "I did 120 minutes", "3 sessions this week!", "10,000 steps today", "2026",
        "call me 07700 900123", "half past six", "🎉🎉🎉",
    ],
)  # fmt: skip
def test_this_is_talk_among_themselves(text: str) -> None:
    assert not group.looks_like_a_reading(text, LANGUAGES["en"])


def test_a_number_is_answered_in_private_and_nothing_is_said_in_the_group() -> None:
    said = group.step(event("number", ADA), GroupFacts(tied=SPRING, knows="client"))
    assert said == (Privately(ADA, cm.NumberInGroup(), once="hour"),)
    said = group.step(event("number"), GroupFacts(tied=SPRING, knows="staff"))
    assert said == (Privately(OLGA, cm.NumberInGroupOfStaff(), once="hour"),)


def test_whoever_has_no_chat_with_us_hears_nothing() -> None:
    assert group.step(event("number", ADA), GroupFacts(tied=SPRING)) == ()


def test_the_organiser_s_link_ties_the_group_once() -> None:
    effects = group.step(event("start", text="token"), GroupFacts(opened=SPRING))
    assert effects[:2] == (UseLink(), Tie(3))
    assert isinstance(effects[2], Privately) and effects[2].message == om.GroupTied("Spring")


def test_a_link_in_the_hands_of_somebody_else_does_nothing() -> None:
    assert group.step(event("start", ADA, text="token"), GroupFacts(opened=SPRING)) == ()
    assert group.step(event("start", text="token"), GroupFacts()) == ()
    assert group.step(event("start", 0, text="token"), GroupFacts(opened=Tied(3, "Spring", None))) == ()


def test_a_group_tied_by_another_organiser_stays_theirs() -> None:
    effects = group.step(event("start", text="token"), GroupFacts(tied=OTHERS, opened=SPRING))
    assert not [e for e in effects if isinstance(e, Tie)]
    effects = group.step(event("bind"), GroupFacts(tied=OTHERS, free=(SPRING,), knows="staff"))
    assert effects == (Privately(OLGA, om.NothingToTie()),)


def test_the_command_ties_the_one_free_cohort_and_asks_in_private_among_several() -> None:
    assert group.step(event("bind"), GroupFacts(free=(SPRING,), knows="staff"))[0] == Tie(3)
    (asked,) = group.step(event("bind"), GroupFacts(free=(SPRING, AUTUMN), knows="staff"))
    assert isinstance(asked, Privately) and asked.message == om.TieWhich()
    assert [c.data for row in asked.choices for c in row] == ["cogroup:3", "cogroup:4"]
    (told,) = group.step(event("bind"), GroupFacts(knows="staff"))
    assert isinstance(told, Privately) and told.message == om.NothingToTie()


@pytest.mark.parametrize("knows", ["client", ""])
def test_a_client_or_a_stranger_ties_nothing(knows: str) -> None:
    assert group.step(event("bind", ADA), GroupFacts(free=(SPRING,), knows=knows)) == ()
    assert group.step(event("unbind", ADA), GroupFacts(tied=SPRING, knows=knows)) == ()


def test_the_organiser_unties_and_the_group_is_told() -> None:
    effects = group.step(event("unbind"), GroupFacts(tied=SPRING, knows="staff"))
    assert effects[0] == Untie(3, cm.GroupGoodbye("Spring"))


def test_the_bot_taken_out_is_untied_and_the_organiser_told_not_the_group() -> None:
    untied, told = group.step(event("removed", ADA), GroupFacts(tied=SPRING))
    assert untied == Untie(3)
    assert isinstance(told, Privately) and (told.chat, told.message) == (OLGA, om.GroupLost("Spring"))
    assert group.step(event("removed", ADA), GroupFacts(tied=Tied(3, "Spring", None))) == (Untie(3),)


def test_a_group_that_grew_keeps_what_it_is_tied_to() -> None:
    assert group.step(event("migrated", other_chat=-1007), GroupFacts(tied=SPRING)) == (Move(-1007),)
    assert group.step(event("migrated"), GroupFacts(tied=SPRING)) == ()


@pytest.mark.parametrize("what", ["added", "joined", "left", "text", "anything", "start", "unbind", "removed"])
def test_all_else_is_silence(what: str) -> None:
    assert group.step(event(what, ADA), GroupFacts()) == ()
