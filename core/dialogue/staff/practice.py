"""The practice report: a quarter of the caseload, pooled (`core.watching.practice`)."""

from __future__ import annotations

from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import messages as sm
from core.dialogue.staff.step import StaffStep
from core.watching.practice import finished, practice


def report(d: StaffStep, words: str) -> None:
    """/report, and /report 2026q1"""
    found = d.facts.quarter
    if found is None:
        d.say(sm.WhichQuarter(), *_quarters(d))
        return
    quarter = found.quarter
    made = practice(found.people, quarter)
    d.say(sm.PracticeSaid(made, quarter.number, quarter.year), *_quarters(d))
    d.say(sm.PracticePage(made, quarter.number, quarter.year, d.facts.name))


def _quarters(d: StaffStep) -> Rows:
    return rows_of(*(Choice("quarter", f"report:{q.key}", q.key) for q in finished(d.today)))
