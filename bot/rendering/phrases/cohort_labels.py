"""Button labels for cohorts."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from bot.rendering.voice import N_, Voice

LABELS: dict[str, str] = {
    "cohorts": N_("Groups"),
    "my_cohorts": N_("My groups"),
    "new_cohort": N_("Start a new group"),
    "invite_organiser": N_("Invite an organiser"),
    "join_link": N_("Joining link"),
    "join_links_revoke": N_("Take links back"),
    "cohort_people": N_("Who takes part"),
    "group_tie": N_("Connect a group chat"),
    "group_untie": N_("Disconnect the chat"),
    "cohort_end": N_("End this group"),
    "cohort_end_yes": N_("Yes, end it"),
    "take_out_yes": N_("Yes, take them out"),
    "cohort_yes": N_("Yes, that is fine"),
    "cohort_no": N_("No, not in this group"),
    "no_newcomers": N_("Nobody: clients only"),
    "as_csv": N_("As a table"),
}
COUNTS: dict[str, str] = {
    "check_ins": N_("Check-ins kept"),
    "activity_minutes": N_("Active minutes"),
    "sessions": N_("Exercise sessions"),
}


def _named(v: Voice, argument: str) -> str:
    return v.name(argument)


def _take_out(v: Voice, argument: str) -> str:
    return v.plain("Take out: {name}", name=v.name(argument))


def _leave(v: Voice, argument: str) -> str:
    return v.plain("Leave: {name}", name=v.name(argument))


def _weeks(v: Voice, argument: str) -> str:
    return v.plain_n("{n} week", "{n} weeks", int(argument)) if argument.isdecimal() else argument


def _up_to(v: Voice, argument: str) -> str:
    return v.plain("Up to {n}", n=v.number(int(argument))) if argument.isdecimal() else argument


def _day(v: Voice, argument: str) -> str:
    try:
        return v.day(date.fromisoformat(argument))
    except ValueError:
        return argument


# Labels that need their argument.
ABOUT: dict[str, Callable[[Voice, str], str]] = {
    "cohort_named": _named,
    "take_out": _take_out,
    "leave_cohort": _leave,
    "in_weeks": _weeks,
    "on_day": _day,
    "up_to": _up_to,
}
