"""Weighing too often. Never the number, its direction or its size; never a reproach."""

from __future__ import annotations

from bot.rendering.phrases import phrase
from bot.rendering.voice import Voice
from core.dialogue.client import messages as m


@phrase(m.EarlyFirst)
def early_first(said: m.EarlyFirst, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for sending that. It is a bit early, so I do not look at the number yet."),
        v.say(
            "Weight swings from day to day, and looking often can wear you down. It says more when we wait a little."
        ),
        v.say("Next weigh-in: {day}. Would you like one of these instead?", day=v.day(said.next)),
    )


@phrase(m.EarlySecond)
def early_second(said: m.EarlySecond, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you, I put it aside. Next weigh-in: {day}.", day=v.day(said.next)),
        v.say(
            "May I ask: what made today feel like a day to check? If you tell me here, I pass it on to {coach}.",
            coach=v.coach(said.coach),
        ),
    )


@phrase(m.EarlyOften)
def early_often(said: m.EarlyOften, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for telling me. Let us leave the numbers alone for now."),
        v.say("Many people feel drawn to the scales, and it can be a strain. A talk can help."),
        v.say(
            "You could talk to {coach} or to your doctor. If food or weight is on your mind all day, a charity for"
            " eating worries can help, too.",
            coach=v.coach(said.coach),
        ),
    )


@phrase(m.EarlyTaken)
def early_taken(said: m.EarlyTaken, v: Voice) -> str:
    return v.say("That is fine, I put it right. Next weigh-in: {day}.", day=v.day(said.next))


@phrase(m.EarlyReason)
def early_reason(said: m.EarlyReason, v: Voice) -> str:
    return v.say(
        "Thank you for telling me. It makes sense that you wanted to know. If you would like to talk about it,"
        " {coach} is there for you.",
        coach=v.coach(said.coach),
    )


@phrase(m.WalkInstead)
def walk_instead(said: m.WalkInstead, v: Voice) -> str:
    return v.say("Good idea. Enjoy your walk, at your own pace. Every few minutes count.")


@phrase(m.WeightLeftOut)
def weight_left_out(said: m.WeightLeftOut, v: Voice) -> str:
    return v.say(
        "Thank you. We agreed to leave weight out, so I did not keep it. If you want it back, send /settings, or talk"
        " to your coach."
    )
