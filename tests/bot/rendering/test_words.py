"""Every message, and every key a message can have, has a text."""

from __future__ import annotations

import dataclasses
import re
from datetime import UTC, datetime
from types import ModuleType
from zoneinfo import ZoneInfo

import pytest

from bot.rendering import Reader, render
from bot.rendering.attachments import ATTACHMENTS
from bot.rendering.phrases import (
    PHRASES,
    arriving,
    asking,
    bands,
    cards,
    checkin,
    coach,
    goals,
    labels,
    load,
    names,
    results,
    safety,
    steps,
    understanding,
)
from bot.rendering.phrases.sources import all_sources
from bot.rendering.samples import CONTEXTS, LONG_NAME, LONG_TEXT, ordinary, signs
from bot.rendering.voice import voice
from core.client import Background, Caution
from core.dialogue.client import messages, messages_to_coach
from core.dialogue.client.encouragement import OPENINGS, PRAISES
from core.dialogue.client.enrolment import ANSWER
from core.dialogue.kit import messages as shared
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.messages import Together
from core.judging.goals import GoalDoubt
from core.judging.readiness import Asked
from core.measures import MEASURES
from core.measures.measure import MeasureKind, Why
from core.understanding.plausibility import DoubtKind
from core.watching.flags import RULES

ENGLISH = Reader("en", name="Ada")


def classes(module: ModuleType) -> list[type]:
    return [c for c in vars(module).values() if dataclasses.is_dataclass(c) and c.__module__ == module.__name__]


@pytest.mark.parametrize("module", [shared, messages, messages_to_coach], ids=lambda m: m.__name__)
def test_every_message_class_has_words(module: ModuleType) -> None:
    load()
    silent = [c.__name__ for c in classes(module) if c not in PHRASES and c not in ATTACHMENTS]
    assert [name for name in silent if name != "Together"] == []


def test_every_message_class_is_among_the_samples() -> None:
    shown = {type(message) for message in ordinary()}
    missing = {c for m in (shared, messages, messages_to_coach) for c in classes(m)} - shown
    assert {c.__name__ for c in missing} == {"Together", "Picture"}


ASKED = {*ANSWER, "rating", *(asked.value for asked in Asked)}  # one by one, at the start or when first needed
TABLES = {
    "measures": (names.MEASURES, MEASURES),
    "questions for a measure": (asking.ASK, {x.key for x in MEASURES.values() if x.kind is not MeasureKind.DERIVED}),
    "aspects": (names.ASPECTS, {a for x in MEASURES.values() for a in x.protocol.keep_same}),
    "preparation": (steps.PREPARE, {k for x in MEASURES.values() for k in x.protocol.prepare}),
    "technique": (steps.TECHNIQUE, {k for x in MEASURES.values() for k in x.protocol.technique}),
    "exclusions": (bands.CAUTIONS, {e.key for x in MEASURES.values() for e in x.must_not}),
    "contexts": (results.CONTEXT, CONTEXTS),
    "openings": (checkin.OPENINGS, OPENINGS),
    "praises": (checkin.PRAISES, PRAISES),
    "questions": (arriving.QUESTIONS, ASKED),
    "unclear answers": (arriving.UNCLEAR, ASKED),
    "skipped questions": (arriving.SKIPPING, ASKED),
    "why not understood": (understanding.WHY, {w.value for w in Why}),
    "doubts": (understanding.DOUBTS, {k.value for k in DoubtKind} - {"impossible", "unusual", "jump"}),
    "doubts about goals": (goals.DOUBTS, {d.value for d in GoalDoubt}),
    "signs": (safety.SIGNS, signs()),
    "flags": (coach.FLAGS, {c.value for c in RULES}),
    "cautions": (names.CAUTIONS, {c.value for c in Caution}),
    "backgrounds": (labels.BACKGROUNDS, {b.value for b in Background}),
}


@pytest.mark.parametrize("name", TABLES)
def test_every_key_has_words(name: str) -> None:
    words, keys = TABLES[name]
    assert sorted(set(keys) - set(words)) == []


def test_evidence_of_every_flag_has_a_name() -> None:
    shown = {e for rule in RULES.values() for e in rule.evidence} - {
        "systolic", "diastolic", "before_systolic", "before_diastolic",
    }  # fmt: skip
    assert sorted(shown - set(coach.EVIDENCE)) == []


def test_no_words_stand_for_keys_that_are_gone() -> None:
    """Texts that can never be shown are wasted work for five translators."""
    for name in (
        "measures",
        "questions for a measure",
        "aspects",
        "preparation",
        "technique",
        "exclusions",
        "openings",
        "praises",
        "questions",
        "signs",
        "flags",
    ):
        words, keys = TABLES[name]
        assert sorted(set(words) - set(keys)) == [], name


def test_every_reference_with_bands_is_a_source() -> None:
    assert sorted(set(bands.BANDS) - set(all_sources())) == []


def test_there_are_enough_openings_and_praises_for_eight_weeks() -> None:
    assert len(set(checkin.OPENINGS.values())) >= 12
    assert len(set(checkin.PRAISES.values())) >= 16


def test_an_unknown_key_still_says_something() -> None:
    for message in (
        messages.Context("nobody_wrote_this"),
        messages.BandSaid("weight", "new_band", "new_source"),
        messages.Praise("new", 3),
        messages.CheckInOpens("new"),
        messages.PlanNews("new"),
        messages.Emergency("new_sign", "112"),
        messages.EnrolQuestion("new"),
        messages.AskAgain("new_measure", "new", MEASURES["weight"].unit),
        messages.Card("new_measure"),
    ):
        assert len(render(message, (), ENGLISH).text) > 3, message


def test_what_people_typed_is_escaped() -> None:
    said = render(messages.CoachWrites("<b>Eve</b>", "1 < 2 & 3"), (), ENGLISH).text
    assert "&lt;b&gt;Eve&lt;/b&gt;" in said
    assert "1 &lt; 2 &amp; 3" in said


def test_a_long_text_of_somebody_is_cut_at_a_word() -> None:
    said = render(messages.CoachWrites(LONG_NAME, LONG_TEXT), (), ENGLISH).text
    assert said.endswith("…")
    assert len(said) < 4096


EARLY = ("EarlyFirst", "EarlySecond", "EarlyOften", "EarlyTaken", "EarlyReason")
DIRECTION = re.compile(r"\b(up|down|less|more|gain|gained|lost|loss|lower|higher|heavier|lighter|kg|lb)\b", re.I)


def test_an_early_weighing_is_answered_without_a_number_a_direction_or_a_size() -> None:
    for message in ordinary():
        if type(message).__name__ in EARLY:
            said = render(message, (), ENGLISH).text
            without_date = re.sub(r"\w+day, \d+ \w+", "", said)
            assert not re.search(r"\d", without_date), said
            assert not DIRECTION.search(without_date.replace("It says more", "").replace("down.", "")), said


BLAME = re.compile(
    r"\b(invalid|wrong answer|fail|failed|should have|must not|error|fat|obese|overweight|heavy)\b", re.I
)


def test_nobody_is_blamed_or_labelled() -> None:
    for message in ordinary():
        if type(message).__module__ in (shared.__name__, messages.__name__) and not isinstance(
            message, messages.SourceOf
        ):
            said = render(message, (), ENGLISH).text
            assert not BLAME.search(said), said


def test_praise_never_speaks_of_a_number_going_down() -> None:
    for words in checkin.PRAISES.values():
        assert not re.search(r"\b(less|down|lost|lower|weight|kg)\b", words), words


def test_results_are_said_in_one_breath_and_the_next_date_apart() -> None:
    weight = MEASURES["weight"]
    together = Together(
        (
            messages.KeptHidden("weight"),
            messages.Context("early_weeks"),
            messages.Praise("habit"),
            messages.CheckInDone(next(m.next for m in ordinary() if isinstance(m, messages.CheckInDone))),
        )
    )
    paragraphs = render(together, (), ENGLISH).text.split("\n\n")
    assert [len(p.splitlines()) for p in paragraphs] == [2, 2]
    assert weight.key == "weight"


def test_a_card_shows_every_step_of_its_protocol() -> None:
    v = voice(ENGLISH)
    for measure in MEASURES.values():
        card = cards.card(v, measure.key)
        wanted = len(measure.protocol.prepare) + len(measure.protocol.technique)
        assert len(re.findall(r"^\d+\. ", card, re.M)) == wanted, measure.key


@pytest.mark.parametrize("measure", ["waist", "hip"])
def test_a_girth_can_be_taken_with_string_and_ruler(measure: str) -> None:
    said = render(messages.Card(measure, ruler=True), (), ENGLISH).text
    assert "string" in said
    assert "ruler" in said


def test_every_button_of_a_clients_conversation_has_a_label() -> None:
    """Read out of the source, so that a new button cannot be forgotten."""
    from pathlib import Path

    import core.dialogue.client

    modules = Path(core.dialogue.client.__path__[0]).glob("*.py")
    source = "\n".join(p.read_text() for p in modules)
    found = set(re.findall(r'Choice\(\s*"([a-z_:]+)"', source))
    found |= set(re.findall(r'answer\("([a-z_:]+)"', source))
    assert len(found) > 30
    assert sorted(key for key in found if not labels.known(key)) == []


def test_a_label_is_short_plain_text() -> None:
    v = voice(ENGLISH)
    keys = [*labels.LABELS, *(f"{g}:{k}" for g, table in labels.GROUPS.items() for k in table)]
    for key in keys:
        said = labels.label(v, Choice(key, "x", "Rowan <b>"))
        assert 0 < len(said) <= 40, key
        assert "&lt;" not in said, key


@pytest.mark.parametrize(
    ("choice", "words"),
    [
        (Choice("word_to_coach", "word", "Rowan"), "Message Rowan"),
        (Choice("number", "n:7", "7"), "7"),
        (Choice("seconds", "count:x:30", "30"), "30 seconds"),
        (Choice("seconds", "count:x:0", "0"), "Stopwatch"),
        (Choice("weekday:0", "wd:0"), "Monday"),
        (Choice("hour", "hr:07:30", "07:30"), "07:30"),
        (Choice("aspect:time_of_day", "cond:time_of_day"), "Time of day"),
        (Choice("lang:ar", "lang:ar"), "العربية"),
        (Choice("place", "zone:Europe/Lisbon", "Europe/Lisbon"), "Lisbon (Portugal)"),
        (Choice("units:st", "units:st"), "Stones and inches"),
        (Choice("nobody:wrote_this", "x"), "Wrote this"),
    ],
    ids=lambda c: c.label if isinstance(c, Choice) else None,
)
def test_a_button_says(choice: Choice, words: str) -> None:
    assert labels.label(voice(ENGLISH), choice) == words


def test_a_client_may_type_what_stands_on_a_button() -> None:
    assert labels.labeller("en")("units:kg", "") == "Kg and cm"


def test_when_i_ask_again_is_told_on_the_readers_own_clock():
    newfoundland = Reader("en", zone=ZoneInfo("America/St_Johns"))
    at = datetime(2026, 7, 1, 13, 0, tzinfo=UTC)
    for tomorrow in (False, True):
        assert "10:30" in (render(messages.Snoozed(at, tomorrow), (), newfoundland).text or "")
