"""The stage without a page: what is done is a line of a tape, and what nobody could do leaves none."""

import asyncio
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime

import pytest

from core.language import LANGUAGES
from demo.player import play
from demo.rehearsal import acts
from demo.rehearsal.practices import TITLES, in_language, practice
from demo.rehearsal.stage import CannotDo, CannotRead, Stage
from demo.tape import Presses, read

ADA = """\
start 2026-03-02 07:00 Europe/London
coach Rowan
client Ada of Rowan: sex=female born=1958 height=165cm slot="Mon 07:30" measures=weight
"""


def on_stage(tape: str, scene: Callable[[Stage], Awaitable[None]]) -> Stage:
    stage = Stage()

    async def staged() -> None:
        await stage.open(tape)
        try:
            async with asyncio.timeout(60):
                await scene(stage)
        finally:
            stage.text, stage.said = stage.tape, stage.transcript  # type: ignore[attr-defined]
            await stage.close()

    asyncio.run(staged())
    return stage


def replays(stage: Stage) -> None:
    """What was saved plays again, and says the same."""
    again = play(read(stage.text))  # type: ignore[attr-defined]
    assert again.failures == []
    assert again.text == stage.said  # type: ignore[attr-defined]


async def heard(stage: Stage, name: str) -> str:
    return "\n".join(m.text for m in await stage.messages(stage.people[name]) if m.from_bot)


async def done(stage: Stage, act: str, **fields: str) -> None:
    """Act as a form of the page does."""
    await stage.do(lambda: acts.lines(act, fields, stage))


def test_what_was_played_replays_to_the_same_transcript_whatever_was_typed() -> None:
    async def scene(stage: Stage) -> None:
        ada = stage.people["Ada"].key
        await stage.go("next")
        await done(stage, "say", person=ada, text="two lines\n# and a \\n that is none\u2028 at all")
        await done(stage, "say", person=ada, text="7")
        await done(stage, "say", person=ada, text="82,4 kg")
        seen = await stage.messages(stage.people["Ada"])
        (own,) = [m for m in seen if m.text == "82,4 kg"]
        await done(stage, "say", person=ada, text="82.6 kg", mode="edit", message=str(own.message_id))
        await done(stage, "say", person=ada, text="thank you", mode="reply", message=str(seen[-1].message_id))
        await done(stage, "send", person=ada, what="photo")
        await stage.go("15s")
        await stage.go("tomorrow")
        await stage.go("monday")
        await stage.go("4weeks")

    stage = on_stage(ADA, scene)
    assert stage.tape.splitlines()[-1] == "at 2026-04-06 07:30:15"
    replays(stage)


def test_the_next_message_comes_at_its_own_instant() -> None:
    async def scene(stage: Stage) -> None:
        assert stage.due == datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
        await stage.go("next")
        assert stage.now == datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
        assert "How much energy do you have today" in await heard(stage, "Ada")

    replays(on_stage(ADA, scene))


def test_an_act_that_nobody_could_do_is_said_and_leaves_no_line() -> None:
    async def scene(stage: Stage) -> None:
        before = stage.tape
        ada = stage.people["Ada"].key
        for act, fields, said in (
            ("say", {"person": ada, "text": "  "}, "nothing written"),
            ("say", {"person": "p9", "text": "7"}, "nobody like that"),
            ("press", {"person": ada, "button": "1.0"}, "button is gone"),
            ("press", {"person": ada, "button": "x"}, "button is gone"),
            ("open", {"person": ada, "link": "1", "name": "Ben"}, "link is gone"),
            ("send", {"person": ada, "what": "money"}, "nobody can do"),
            ("fly", {"person": ada}, "nobody can do"),
            ("group", {"name": "Walkers"}, "a name and somebody"),
        ):
            with pytest.raises(CannotDo, match=said):
                await done(stage, act, **fields)
        for name in ("Ada", "bot", "two words", "Ada: hello", "x\ncoach Zoe"):
            with pytest.raises((CannotRead, CannotDo)):
                await done(stage, "newcomer", role="coach", name=name)
        with pytest.raises(CannotDo, match="another practice"):
            await stage.do(lambda: acts.lines("say", {"person": ada, "text": "7"}, stage), under=stage.run + 1)
        assert stage.tape == before

    replays(on_stage(ADA, scene))


def test_two_who_act_at_once_both_act_one_after_the_other() -> None:
    async def scene(stage: Stage) -> None:
        await stage.go("next")
        ada, rowan = stage.people["Ada"].key, stage.people["Rowan"].key
        await asyncio.gather(*(
            done(stage, "say", person=who, text=text)
            for n in range(5)
            for who, text in ((ada, f"hello {n}"), (rowan, f"/invite Guest{n}"))
        ))  # fmt: skip
        lines = stage.tape.splitlines()
        assert [line for line in lines if line.startswith("Ada: ")] == [f"Ada: hello {n}" for n in range(5)]
        assert len(stage.links("Rowan")) == 5

    replays(on_stage(ADA, scene))


def test_the_button_that_was_meant_is_pressed_though_others_are_called_the_same() -> None:
    async def scene(stage: Stage) -> None:
        await stage.act("Rowan: /invite Ben", "Rowan: /invite Chidi", "Rowan: /invite Dora")
        rowan = stage.people["Rowan"]
        seen = [m for m in await stage.messages(rowan) if "Take it back" in m.labels]
        place = [button.label for row in seen[0].buttons for button in row].index("Take it back")
        await done(stage, "press", person=rowan.key, button=f"{seen[0].message_id}.{place}")
        assert stage.lines[-1] == "Rowan presses the 3rd Take it back"
        await done(stage, "open", person=rowan.key, link="2", name="Chidi", language="pl")
        assert stage.lines[-2:] == ["person Chidi: lang=pl", "Chidi opens Rowan's 2nd invitation"]
        assert stage.people["Chidi"].role == "client"
        await done(stage, "open", person=rowan.key, link="1", name="Ben")
        assert stage.people["Ben"].role == ""

    replays(on_stage(ADA, scene))


def test_a_group_is_made_and_the_bot_is_brought_into_it_by_a_link() -> None:
    async def scene(stage: Stage) -> None:
        await stage.act("Rowan: /cohort", "Rowan: Steps", "Rowan: 2026-03-09", "Rowan presses 4 weeks")
        await stage.act(
            "Rowan presses 18:00",
            "Rowan presses Check-ins kept",
            "Rowan presses Up to 10",
            "Rowan presses Connect a group chat",
        )
        rowan, ada = stage.people["Rowan"].key, stage.people["Ada"].key
        await done(stage, "group", name="Walkers", **{f"member-{rowan}": "1", f"member-{ada}": "1"})
        walkers = stage.people["Walkers"]
        assert (walkers.role, walkers.members, walkers.has_bot) == ("group", ("Rowan", "Ada"), False)
        await done(stage, "bring", person=rowan, link="2", group=walkers.key)
        assert stage.people["Walkers"].has_bot
        await done(stage, "say", person=walkers.key, speaker=ada, text="hello")
        await done(stage, "in_group", person=walkers.key, speaker=ada, what="leaves")
        assert stage.people["Walkers"].members == ("Rowan",)
        assert "never anybody's number" in await heard(stage, "Walkers")

    replays(on_stage(ADA, scene))


def test_nothing_is_lost_while_the_messenger_fails_or_the_bot_is_killed() -> None:
    async def scene(stage: Stage) -> None:
        ada = stage.people["Ada"].key
        await done(stage, "bot", what="crashes")
        await stage.go("next")
        assert not stage.faults["runs"]
        with pytest.raises(CannotDo, match="stopped"):
            await stage.go("next")
        await done(stage, "say", person=ada, text="6")
        await done(stage, "bot", what="starts")
        assert "Thank you. Energy: 6" in await heard(stage, "Ada")
        await done(stage, "messenger", what="fails")
        await done(stage, "say", person=ada, text="82.4 kg")
        assert "82.4" not in await heard(stage, "Ada")
        await stage.go("1min")
        await done(stage, "messenger", what="works")
        assert "82.4" in await heard(stage, "Ada")

    replays(on_stage(ADA, scene))


def chart(early: bool) -> list[bytes]:
    pictures: list[bytes] = []

    async def scene(stage: Stage) -> None:
        await stage.act("at 2026-03-02 07:30", "Ada: 7", "Ada: 82.4 kg", "at 2026-03-30 07:30", "Ada: 7", "Ada: 81 kg")
        await stage.act("at 2026-04-01 07:30", *(["Ada: 69.9 kg"] if early else []), "Ada: /progress weight")
        pictures.extend(m.content for m in await stage.messages(stage.people["Ada"]) if m.kind == "photo" and m.content)

    on_stage(ADA, scene)
    return pictures


def test_an_early_weight_appears_in_no_chart() -> None:
    with_it, without = chart(early=True), chart(early=False)
    assert without
    assert with_it[-1] == without[-1]


def test_a_coachs_last_answer_is_explained_by_what_was_looked_up_for_it() -> None:
    async def scene(stage: Stage) -> None:
        await stage.act("at 2026-03-02 07:30", "Ada: 7", "Rowan: Ada")
        why = (await stage.why(stage.people["Rowan"])).why
        assert why is not None
        assert why.heard == "Ada"
        looked_up = [row.value for row in why.rules if row.name == "Looked up"]
        assert looked_up == ["Caseload", "CardsNamed (words Ada, whole True)", "MentionedIn (text Ada)"]
        assert [row.name for row in why.decided] == ["CardSaid"]

    on_stage(ADA, scene)


def test_the_last_answer_is_explained_by_the_rule_that_read_it_and_its_reference() -> None:
    async def scene(stage: Stage) -> None:
        await stage.act("at 2026-03-02 07:30", "Ada: 7", "Ada: 12 st 4")
        why = (await stage.why(stage.people["Ada"])).why
        assert why is not None
        assert why.heard == "12 st 4"
        assert why.question.startswith("Awaiting (measure weight")
        rules = {row.name: (row.value, row.note) for row in why.rules}
        assert rules["Words that call for help"] == ("nothing", "")
        assert rules["Number for weight"][0].endswith("typed in st")
        assert rules["Number for weight"][1] == "the unit was typed"
        assert any(row.name == "Record" and "12 st 4" in row.value for row in why.decided)
        knows = await stage.why(stage.people["Ada"])
        assert knows.why is not None and knows.why.references
        assert ("weight", "every 28 days") in [(row.name, row.value) for row in knows.plan]
        await stage.act("at 2026-03-03 07:30", "Ada: 77 kg", "at 2026-03-03 12:00", "Ada: I have chest pain")
        knows = await stage.why(stage.people["Ada"])
        assert any("never scored" in row.note for row in knows.readings)
        assert any(row.name.startswith("red flag") for row in knows.flags)
        assert any(row.name.startswith("Ada: red flag") for row in (await stage.why(stage.people["Rowan"])).flags)

    on_stage(ADA, scene)


def test_a_tape_that_cannot_be_read_leaves_what_is_being_played() -> None:
    async def scene(stage: Stage) -> None:
        with pytest.raises(CannotRead):
            await stage.open("start tomorrow")
        assert "Ada" in stage.people

    on_stage(ADA, scene)


def test_a_tape_that_cannot_be_played_to_its_end_is_played_as_far_as_it_goes() -> None:
    async def scene(stage: Stage) -> None:
        assert stage.trouble.startswith("Line 4 could not be played")
        assert "Ada" in stage.people

    replays(on_stage(ADA + "Ada presses Launch the rocket\nAda: 7\n", scene))


@pytest.mark.parametrize(("name", "language"), [("twelve", "ar"), ("last_day", "pl"), ("empty", "de")])
def test_a_practice_can_be_played_in_a_language_that_is_not_english(name: str, language: str) -> None:
    came = play(read(practice(name, language)))
    assert came.failures == []


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", TITLES)
def test_every_button_a_practice_presses_is_called_something_in_every_language(name: str, language: str) -> None:
    english = [step.label for step in read(practice(name, "en")).steps if isinstance(step, Presses)]
    theirs = [step.label for step in read(practice(name, language)).steps if isinstance(step, Presses)]
    assert [in_language(label, language) for label in english] == theirs
    if language != "en":
        assert all(a != b or a == "18:00" for a, b in zip(english, theirs, strict=True))


def test_a_group_on_its_last_day_hears_what_it_did_together_that_evening() -> None:
    async def scene(stage: Stage) -> None:
        await stage.go("next")
        assert "over" in (await heard(stage, "Walkers"))

    on_stage(practice("last_day", "en"), scene)


def test_twelve_clients_in_week_six_leave_a_coach_something_to_do() -> None:
    async def scene(stage: Stage) -> None:
        assert sum(person.role == "client" for person in stage.people.values()) == 12
        digest = await heard(stage, "Rowan")
        assert "Write to them" in digest.partition("6 April")[2]

    on_stage(practice("twelve", "en"), scene)
