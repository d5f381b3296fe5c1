"""Timed counts: ready, go, stop, how many.

The rule for a pulse, stated wherever it is counted: the clock starts at any moment, and the first beat after that
counts as one. Such a count is unbiased (function.md 8.2; ours: published advice differs).
"""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.voice import N_, Voice
from core.dialogue.client import messages as m
from core.measures import MEASURES
from core.quantity import Unit

GO: dict[str, str] = {
    "resting_heart_rate": N_("Go! Count every beat. The first beat you feel is one. I write when the time is up."),
    "chair_stand_30s": N_("Go! Stand up and sit down as often as is safe. I write when the time is up."),
    "two_minute_step": N_("Go! Count each time your right knee comes up. I write when the time is up."),
    "six_minute_walk": N_("Go! Walk as far as you can. You may slow down or rest. I write when the time is up."),
    "four_stage_balance": N_("Go! Hold still. I write when the time is up."),
    "one_leg_stance": N_("Go! Lift one foot and hold. I write when the time is up."),
    "walk_mile": N_("Go! Count every beat now. The first beat you feel is one. I write when the time is up."),
}
GO_OTHER = N_("Go! I write when the time is up.")

STOP: dict[str, str] = {
    "resting_heart_rate": N_("Stop. How many beats did you count? Just send the number."),
    "chair_stand_30s": N_("Stop. How many stands was it? If you were more than half-way up, that one counts."),
    "two_minute_step": N_("Stop. How many times did your right knee come up?"),
    "six_minute_walk": N_("Stop, please, and stay where you are. How far did you get?"),
    "four_stage_balance": N_("Stop. Well held. Did you hold it all the time? Then go on to the next one."),
    "one_leg_stance": N_("Stop, that is the longest this test goes. How many seconds did you hold it?"),
    "walk_mile": N_("Stop. How many beats did you count?"),
}
STOP_OTHER = N_("Stop. How many was it?")


@phrase(m.CountReady)
def count_ready(said: m.CountReady, v: Voice) -> str:
    if said.seconds == (0,):
        return v.say("Ready? Press Start when you begin, and Stop when you are done. I keep the time.")
    known = MEASURES.get(said.measure)
    if known is not None and known.unit is Unit.BEATS_PER_MINUTE:
        return v.say(
            "Ready? Find your pulse first. Then press how long you want to count. A longer count is a better one."
        )
    return v.say("Ready? Press the time, and we start at once.")


@phrase(m.CountGo)
def count_go(said: m.CountGo, v: Voice) -> str:
    if said.seconds == 0:
        return v.say("Go! Press Stop when you are done.")
    return v.say(GO.get(said.measure, GO_OTHER))


@phrase(m.CountStop)
def count_stop(said: m.CountStop, v: Voice) -> str:
    return v.say(STOP.get(said.measure, STOP_OTHER))


@phrase(m.StopwatchRead)
def stopwatch_read(said: m.StopwatchRead, v: Voice) -> str:
    return v.say(
        "{measure}: {amount}. Shall I keep it, or do you want to go again?",
        measure=names.measure(v, said.measure),
        amount=v.amount(said.amount, measure=said.measure),
    )
