"""Labels of a coach's buttons."""

from __future__ import annotations

from collections.abc import Callable

from bot.rendering.phrases import names
from bot.rendering.phrases.coach import DONE
from bot.rendering.voice import N_, Voice

LABELS: dict[str, str] = {
    "caseload": N_("Caseload"),
    "invite": N_("Invite"),
    "invite_another": N_("Invite somebody else"),
    "revoke": N_("Take it back"),
    "digest": N_("Digest"),
    "as_pdf": N_("As a PDF"),
    "as_page": N_("As a page"),
    "by_need": N_("By need"),
    "by_name": N_("By name"),
    "page_before": N_("◀ Before"),
    "page_after": N_("More ▶"),
    "thread": N_("Messages"),
    "send_to_nobody": N_("To nobody"),
    "pictures": N_("Pictures"),
    "export": N_("Export"),
    "export_csv": N_("As a table (CSV)"),
    "export_fhir": N_("For another system (FHIR)"),
    "plan": N_("Plan"),
    "note": N_("Note"),
    "rename": N_("Rename"),
    "dealt_with": N_("Dealt with"),
    "history": N_("History"),
    **{f"done_{key}": words for key, words in DONE.items()},
    "hand_over": N_("Hand over"),
    "end_care": N_("End care"),
    "change_measures": N_("Measures"),
    "change_interval": N_("How often"),
    "change_slot": N_("Day and time"),
    "change_cautions": N_("Cautions"),
    "directed_on": N_("Directed weighing on"),
    "directed_off": N_("Directed weighing off"),
    "loss_on": N_("Loss is planned"),
    "loss_off": N_("No loss planned"),
    "numbers_hide": N_("Numbers only to me"),
    "numbers_show": N_("Show them their numbers"),
    "pressure_limits": N_("Pressure limits"),
    "pressure_nice": N_("British"),
    "pressure_aha": N_("American"),
    "pressure_esc": N_("European"),
    "programme": N_("Programme"),
    "no_end": N_("No set end"),
    "new_baseline": N_("New baseline"),
    "save_template": N_("Save as template"),
    "my_templates": N_("My templates"),
    "deputy": N_("Who stands in for me"),
    "deputy_none": N_("Nobody"),
    "deputy_always": N_("Always, for emergencies"),
    "deputy_one_week": N_("One week from today"),
    "deputy_two_weeks": N_("Two weeks from today"),
    "deputy_four_weeks": N_("Four weeks from today"),
    "night_on": N_("Quiet at night"),
    "night_off": N_("Tell me at night, too"),
    "own_zone": N_("My place"),
    "digest_slot": N_("Digest: day and time"),
    "digest_off": N_("No digest"),
    "digest_on": N_("Have a digest"),
}


def _named(v: Voice, argument: str) -> str:
    return v.name(argument)


def _sent_to(v: Voice, argument: str) -> str:
    return v.plain("To {name}", name=v.name(argument))


def _dropped(v: Voice, argument: str) -> str:
    return v.plain("Drop: {name}", name=v.name(argument))


def _days(v: Voice, argument: str) -> str:
    return v.plain_n("{n} day", "{n} days", int(argument)) if argument.isdigit() else argument


def _weeks(v: Voice, argument: str) -> str:
    return v.plain_n("{n} week", "{n} weeks", int(argument)) if argument.isdigit() else argument


def _quarter(v: Voice, argument: str) -> str:
    year, _, number = argument.partition("q")
    return v.plain("Q{number} {year}", number=number, year=v.numbers.isolate(year))


def _everybody(v: Voice, argument: str) -> str:
    return v.plain_n("All {n} ▶", "All {n} ▶", int(argument)) if argument.isdigit() else argument


def _minutes(v: Voice, argument: str) -> str:
    return v.plain_n("{n} minute", "{n} minutes", int(argument)) if argument.isdigit() else argument


def _ticked(v: Voice, argument: str) -> str:
    return f"☑ {_thing(v, argument)}"


def _not_ticked(v: Voice, argument: str) -> str:
    return f"☐ {_thing(v, argument)}"


def _thing(v: Voice, argument: str) -> str:
    """A measure or a caution."""
    if argument in names.CAUTIONS:
        return v.plain_in("caution", names.CAUTIONS[argument])
    return v.plain(names.named(names.MEASURES, argument))


# Labels that need their argument.
ABOUT: dict[str, Callable[[Voice, str], str]] = {
    "client": _named,
    "send_to": _sent_to,
    "coach_named": _named,
    "template": _named,
    "drop_template": _dropped,
    "in_days": _days,
    "in_weeks": _weeks,
    "quarter": _quarter,
    "in_minutes": _minutes,
    "everybody_named": _everybody,
    "tick_on": _not_ticked,
    "tick_off": _ticked,
}
