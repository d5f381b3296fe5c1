"""A look back on some weeks, in words: glad of what was kept, honest about what cannot be told yet."""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client.week_messages import ActivityLine, LookBack

LINES: dict[str, str] = {
    "activity_minutes": N_(
        "Active minutes in a usual week: {lately}. Your first week: {start}. Health advice: {advised}."
    ),
    "strength_days": N_("Strength work in a usual week: {lately}. Your first week: {start}. Health advice: {advised}."),
}
LINE_OTHER = N_("{measure}, in a usual week: {lately}. Your first week: {start}. Health advice: {advised}.")


def activity_line(v: Voice, line: ActivityLine) -> Html:
    return v.say(
        LINES.get(line.measure, LINE_OTHER),
        measure=names.measure(v, line.measure),
        lately=v.amount(line.lately, measure=line.measure),
        start=v.amount(line.start, measure=line.measure),
        advised=v.amount(line.advised, measure=line.measure),
    )


@phrase(LookBack)
def look_back(said: LookBack, v: Voice) -> str:
    return v.lines(
        v.bold(v.say("A look back on four weeks")),
        _kept(said, v),
        _shelf(v, N_("Better, by more than chance: {measures}."), said.better),
        _shelf(v, N_("Changed, by more than chance: {measures}."), said.changed),
        _shelf(v, N_("Small steps the right way, not sure yet: {measures}."), said.steps),
        _shelf(v, N_("Moved, but now and then chance does that, too: {measures}."), said.unsure),
        _shelf(v, N_("Too close to call: {measures}."), said.same),
        _shelf(v, N_("Not as good as at the start: {measures}. Your coach can help."), said.worse),
        _shelf(v, N_("Too early to tell: {measures}."), said.early),
        *(activity_line(v, line) for line in said.activity),
    )


def _kept(said: LookBack, v: Voice) -> Html:
    if said.kept >= said.weeks:
        return v.say("You checked in every week. That is what counts. Thank you.")
    return v.say_n("You checked in {n} time. Thank you.", "You checked in {n} times. Thank you.", said.kept)


def _shelf(v: Voice, text: str, keys: tuple[str, ...]) -> Html:
    return v.say(text, measures=names.measures(v, keys)) if keys else Html("")
