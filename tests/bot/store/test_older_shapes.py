"""What an earlier version queued is read by this one: the texts below are as that version wrote them."""

from __future__ import annotations

import json
from typing import Any

import pytest

from bot.rendering import Reader, render
from bot.store import codec
from bot.store.older_shapes import OLDER
from core.dialogue.group.messages import GroupWeek
from core.dialogue.staff.messages import DigestSaid
from core.watching.cohort import CohortWeek, TooFew


def entry(number: int, name: str, code: str, severity: str, *evidence: Any) -> dict[str, Any]:
    flag = {
        "$": "digest.FlagFact",
        "id": number,
        "code": code,
        "severity": severity,
        "measure": None,
        "evidence": list(evidence),
        "since": {"$": "datetime", "is": "2026-03-09T08:00:00+00:00"},
        "seen_at": None,
        "refreshed_at": None,
    }
    return {"$": "digest.Entry", "client_id": number, "name": name, "flags": [flag]}


def pressure(name: str, value: str) -> list[Any]:
    return [name, {"$": "decimal", "is": value}]


DIGEST = {
    "$": "digest.Digest",
    "day": {"$": "date", "is": "2026-03-09"},
    "needs": [entry(1, "Ada", "bp_severe", "urgent", pressure("systolic", "186"), pressure("diastolic", "122"))],
    "changes": [],
    "quiet": [entry(3, "Cyd", "missed_check_ins", "this_week", pressure("missed", "2"))],
    "unreachable": [entry(2, "Ben", "unreachable", "this_week")],
    "paused": [["Dora", {"$": "date", "is": "2026-04-20"}]],
    "asked": 4,
    "kept": 3,
    "often": 1,
    "rest": 1,
    "left_out": 0,
    "brief": True,
}
WEEK = {
    "$": "cohort.Week",
    "number": 2,
    "asked": 3,
    "kept": 2,
    "people": 2,
    "total": None,
}
SHARED = {"$": "cohort_messages.GroupWeek", "week": WEEK, "weeks": 8, "counts": "kilometres", "together": 40}
FEW = {"$": "cohort.TooFew", "measure": "waist", "n": 3}


def read(old: dict[str, Any]) -> object:
    return codec.loads(json.dumps(old))


def test_a_digest_that_waited_for_its_coach_during_an_upgrade_names_everybody_it_named() -> None:
    said = read({"$": "staff_messages.DigestSaid", "digest": DIGEST})
    assert isinstance(said, DigestSaid)
    text = render(said, (), Reader()).text
    for words in ("1 person needs you today", "Ada", "186/122", "Ben", "cannot be reached", "Cyd", "3 of 4 asked"):
        assert words in text
    assert "Dora (until 20 Apr)" in text


def test_a_withheld_change_no_longer_says_of_how_few() -> None:
    assert read(FEW) == TooFew("waist")


def test_the_week_of_a_group_is_told_without_what_is_withheld_today() -> None:
    week = CohortWeek(2, asked=None, kept=None, people=None, total=None)
    assert read(SHARED) == GroupWeek(week, 8, "kilometres", None)


@pytest.mark.parametrize("old", [DIGEST, FEW, SHARED], ids=lambda old: str(old["$"]))
def test_what_is_read_is_written_as_it_is_now(old: dict[str, Any]) -> None:
    text = codec.dumps(read(old))
    assert codec.dumps(codec.loads(text)) == text


@pytest.mark.parametrize("name", sorted(OLDER))
@pytest.mark.parametrize("rubbish", [{}, {"week": 7}, {"paused": 1, "needs": [[]]}, {"n": None}])
def test_rubbish_under_an_old_name_is_refused_like_any_other(name: str, rubbish: dict[str, Any]) -> None:
    with pytest.raises(codec.CodecError):
        read({"$": name, "unknown": 1, **rubbish})
