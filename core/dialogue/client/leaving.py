"""Data subject access, leaving the programme, erasure."""

from __future__ import annotations

from core.care import Status
from core.dialogue.client import check_in
from core.dialogue.client import messages as m
from core.dialogue.client.effects import (
    NEXT_MORNING,
    SIGN_UNANSWERED,
    CancelTimer,
    ChangeClient,
    LeaveCohort,
    NotifyCoach,
)
from core.dialogue.client.messages_to_coach import ClientLeft
from core.dialogue.client.states import State
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice, Erase, SendData
from core.dialogue.kit.messages import DataSent, KeptAsItWas


def my_data(d: ClientStep) -> None:
    d.say(DataSent())
    d.do(SendData())


def forget(d: ClientStep, yes: bool) -> None:
    if yes:
        d.state = State()
        d.do(NotifyCoach(ClientLeft(d.facts.name)), Erase(m.Forgotten()))
        return
    d.say(KeptAsItWas())
    check_in.close_setting(d)


def leave(d: ClientStep, yes: bool) -> None:
    if yes:
        d.state = State()
        d.do(
            ChangeClient("status", Status.LEFT),
            CancelTimer("follow_up"), CancelTimer("snooze"), CancelTimer("pressure"), CancelTimer("pressure_end"),
            CancelTimer(NEXT_MORNING), CancelTimer(SIGN_UNANSWERED),
            NotifyCoach(ClientLeft(d.facts.name)),
            *(LeaveCohort(c.cohort_id) for c in d.facts.cohorts),
        )  # fmt: skip
        d.say(m.HasLeft(d.facts.coach_name), (Choice("forget", "set:forget"),))
        return
    d.say(KeptAsItWas())
    check_in.close_setting(d)
